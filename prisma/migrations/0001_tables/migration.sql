-- CreateEnum
CREATE TYPE "role" AS ENUM ('COORDINATOR', 'COOK', 'HELPER', 'OBSERVER');

-- CreateEnum
CREATE TYPE "plan_state" AS ENUM ('DRAFT', 'AGREED', 'REPLACED');

-- CreateEnum
CREATE TYPE "box_state" AS ENUM ('PLANNED', 'PACKED', 'EATEN', 'BLOCKED');

-- CreateEnum
CREATE TYPE "work_state" AS ENUM ('OPEN', 'TAKEN', 'DONE');

-- CreateEnum
CREATE TYPE "facility" AS ENUM ('REFRIGERATOR', 'REHEATING', 'NEITHER');

-- CreateEnum
CREATE TYPE "rule_layer" AS ENUM ('JURISDICTION', 'SCHOOL', 'CLASS', 'CHILD');

-- CreateEnum
CREATE TYPE "avoid" AS ENUM ('TRACES', 'INGREDIENTS');

-- CreateEnum
CREATE TYPE "school_day_kind" AS ENUM ('HOLIDAY', 'EARLY_FINISH', 'TRIP');

-- CreateEnum
CREATE TYPE "house_rule" AS ENUM ('SIBLINGS_DIFFER', 'DISH_REPEATS', 'STARCH_CHANGES');

-- CreateTable
CREATE TABLE "food" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "key" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "ndb" TEXT,
    "kind" TEXT NOT NULL,
    "food_group" TEXT NOT NULL,
    "origins" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "allergens" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "packaged" BOOLEAN NOT NULL,
    "nutrients" JSONB NOT NULL,
    "free_sugar_grams" DOUBLE PRECISION NOT NULL,
    "refuse_percent" DOUBLE PRECISION NOT NULL,
    "density_grams_per_ml" DOUBLE PRECISION,
    "measures" JSONB NOT NULL,
    "water_activity" JSONB,
    "ph" JSONB,
    "choking_classes" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "keeps_chilled_days" INTEGER,
    "bought_as" JSONB,
    "pack_grams" DOUBLE PRECISION NOT NULL,
    "price_minor" INTEGER NOT NULL,
    "shop_section" TEXT NOT NULL,
    "whole_grain" BOOLEAN NOT NULL,

    CONSTRAINT "food_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "base" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "key" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "batch_grams" DOUBLE PRECISION NOT NULL,
    "fixed_hands_on_minutes" DOUBLE PRECISION NOT NULL,
    "per_batch_hands_on_minutes" DOUBLE PRECISION NOT NULL,
    "passive_minutes" DOUBLE PRECISION NOT NULL,
    "equipment" JSONB NOT NULL,
    "equipment_minutes" DOUBLE PRECISION NOT NULL,
    "max_batches" INTEGER NOT NULL,
    "windows" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "keeps_chilled_days" INTEGER NOT NULL,
    "keeps_frozen_days" INTEGER,
    "storage_ml" INTEGER NOT NULL,
    "steps" TEXT[] DEFAULT ARRAY[]::TEXT[],

    CONSTRAINT "base_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "base_ingredient" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "base_id" UUID NOT NULL,
    "place" INTEGER NOT NULL,
    "food_id" UUID NOT NULL,
    "grams" DOUBLE PRECISION NOT NULL,
    "form" TEXT NOT NULL,

    CONSTRAINT "base_ingredient_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "dish" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "key" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "slots" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "portion" JSONB NOT NULL,
    "served" TEXT NOT NULL,
    "good_for_hours" DOUBLE PRECISION NOT NULL,
    "cutlery" TEXT NOT NULL,
    "spill" TEXT NOT NULL,
    "volume_ml" DOUBLE PRECISION NOT NULL,
    "starch" TEXT NOT NULL,
    "protein" TEXT NOT NULL,
    "colours" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "textures" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "flavours" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "cuisine" TEXT NOT NULL,
    "processing" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "cooked_in_fat" BOOLEAN NOT NULL,
    "treat" BOOLEAN NOT NULL,

    CONSTRAINT "dish_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "dish_base" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "dish_id" UUID NOT NULL,
    "place" INTEGER NOT NULL,
    "base_id" UUID NOT NULL,
    "grams" DOUBLE PRECISION NOT NULL,

    CONSTRAINT "dish_base_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "dish_ingredient" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "dish_id" UUID NOT NULL,
    "place" INTEGER NOT NULL,
    "food_id" UUID NOT NULL,
    "grams" DOUBLE PRECISION NOT NULL,
    "form" TEXT NOT NULL,

    CONSTRAINT "dish_ingredient_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "dish_step" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "dish_id" UUID NOT NULL,
    "place" INTEGER NOT NULL,
    "text" TEXT NOT NULL,
    "hands_on_fixed_minutes" DOUBLE PRECISION NOT NULL,
    "hands_on_per_portion_minutes" DOUBLE PRECISION NOT NULL,
    "passive_minutes" DOUBLE PRECISION NOT NULL,
    "equipment" JSONB NOT NULL,
    "batch_portions" INTEGER,
    "evening_before" BOOLEAN NOT NULL,
    "cool_minutes" DOUBLE PRECISION NOT NULL,
    "held_while_cooling" BOOLEAN NOT NULL,

    CONSTRAINT "dish_step_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "reference_table" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "key" TEXT NOT NULL,
    "version" TEXT NOT NULL,
    "body" JSONB NOT NULL,

    CONSTRAINT "reference_table_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "school" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "name" TEXT NOT NULL,
    "time_zone" TEXT NOT NULL,
    "jurisdiction" TEXT,

    CONSTRAINT "school_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "school_class" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "school_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "facility" "facility" NOT NULL,

    CONSTRAINT "school_class_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "class_break" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "school_class_id" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "starts_at" TEXT NOT NULL,
    "minutes" INTEGER NOT NULL,
    "slots" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "energy_share" DOUBLE PRECISION NOT NULL,

    CONSTRAINT "class_break_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "school_term" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "school_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "first_day" DATE NOT NULL,
    "last_day" DATE NOT NULL,

    CONSTRAINT "school_term_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "school_day" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "school_id" UUID NOT NULL,
    "school_class_id" UUID,
    "date" DATE NOT NULL,
    "kind" "school_day_kind" NOT NULL,
    "title" TEXT NOT NULL,
    "ends_at" TEXT,

    CONSTRAINT "school_day_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "rule_set" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "key" TEXT NOT NULL,
    "layer" "rule_layer" NOT NULL,
    "school_id" UUID,
    "school_class_id" UUID,
    "child_id" UUID,
    "jurisdiction" TEXT,
    "confirmed" BOOLEAN NOT NULL DEFAULT true,

    CONSTRAINT "rule_set_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "rule_set_version" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "rule_set_id" UUID NOT NULL,
    "version" INTEGER NOT NULL,
    "title" TEXT NOT NULL,
    "language" TEXT NOT NULL,
    "covers_food_from_home" BOOLEAN NOT NULL,
    "in_force_from" DATE NOT NULL,
    "in_force_until" DATE,
    "loaded_by_id" UUID,
    "loaded_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "rule_set_version_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "rule" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "rule_set_version_id" UUID NOT NULL,
    "place" INTEGER NOT NULL,
    "rule_key" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "level" TEXT NOT NULL,
    "says" TEXT NOT NULL,
    "source" TEXT NOT NULL,
    "body" JSONB NOT NULL,

    CONSTRAINT "rule_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "rule_set_adoption" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "school_id" UUID NOT NULL,
    "rule_set_id" UUID NOT NULL,

    CONSTRAINT "rule_set_adoption_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "person" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "subject" TEXT NOT NULL,
    "display_name" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "person_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "membership" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "household_id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "role" "role" NOT NULL,
    "since" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "membership_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "appointment" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "person_id" UUID NOT NULL,
    "school_id" UUID,
    "jurisdiction" TEXT,

    CONSTRAINT "appointment_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "idempotency_key" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "person_id" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "action" TEXT NOT NULL,
    "fingerprint" TEXT NOT NULL,
    "outcome" JSONB,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "idempotency_key_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "household" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "name" TEXT NOT NULL,
    "time_zone" TEXT NOT NULL,
    "week_start" TEXT NOT NULL DEFAULT 'MONDAY',
    "unit_system" TEXT NOT NULL DEFAULT 'METRIC',
    "currency" TEXT NOT NULL,
    "keeps_out" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "refrigerator_ml" INTEGER NOT NULL DEFAULT 20000,
    "freezer_ml" INTEGER NOT NULL DEFAULT 20000,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "household_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "equipment" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "household_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "units" INTEGER NOT NULL,

    CONSTRAINT "equipment_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "prep_time" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "household_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "weekday" TEXT NOT NULL,
    "starts_at" TEXT NOT NULL,
    "hands_on_minutes" INTEGER NOT NULL,
    "elapsed_minutes" INTEGER NOT NULL,
    "carers" INTEGER NOT NULL,
    "effort" INTEGER NOT NULL,

    CONSTRAINT "prep_time_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "prep_time_exception" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "household_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "date" DATE NOT NULL,
    "starts_at" TEXT NOT NULL,
    "hands_on_minutes" INTEGER NOT NULL,
    "elapsed_minutes" INTEGER NOT NULL,
    "carers" INTEGER NOT NULL,

    CONSTRAINT "prep_time_exception_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "stock" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "household_id" UUID NOT NULL,
    "food_id" UUID NOT NULL,
    "grams" INTEGER NOT NULL,

    CONSTRAINT "stock_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "leftover" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "household_id" UUID NOT NULL,
    "base_id" UUID NOT NULL,
    "grams" INTEGER NOT NULL,
    "cooked_on" DATE NOT NULL,
    "last_safe_day" DATE NOT NULL,

    CONSTRAINT "leftover_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "freezer_stock" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "household_id" UUID NOT NULL,
    "base_id" UUID NOT NULL,
    "grams" INTEGER NOT NULL,
    "frozen_on" DATE NOT NULL,
    "use_by" DATE NOT NULL,

    CONSTRAINT "freezer_stock_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "label_check" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "household_id" UUID NOT NULL,
    "food_id" UUID NOT NULL,
    "contains" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "may_contain" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "kinds" JSONB NOT NULL DEFAULT '[]',
    "read_on" DATE NOT NULL,
    "read_by_id" UUID,

    CONSTRAINT "label_check_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "child" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "name" TEXT NOT NULL,
    "date_of_birth" DATE NOT NULL,
    "diets" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "dislikes" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "appetite" DOUBLE PRECISION NOT NULL DEFAULT 1,
    "activity" TEXT NOT NULL DEFAULT 'LOW_ACTIVE',
    "minutes_to_eat" INTEGER NOT NULL DEFAULT 20,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "child_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "allergy" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "child_id" UUID NOT NULL,
    "allergen" TEXT,
    "food_kind" TEXT,
    "avoid" "avoid" NOT NULL DEFAULT 'TRACES',
    "recorded_by_household_id" UUID,

    CONSTRAINT "allergy_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "residence" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "child_id" UUID NOT NULL,
    "household_id" UUID NOT NULL,
    "since" DATE NOT NULL,

    CONSTRAINT "residence_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "residence_day" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "child_id" UUID NOT NULL,
    "date" DATE NOT NULL,
    "household_id" UUID NOT NULL,

    CONSTRAINT "residence_day_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "child_body" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "child_id" UUID NOT NULL,
    "household_id" UUID NOT NULL,
    "sex" TEXT,
    "weight_kg" DOUBLE PRECISION,
    "height_cm" DOUBLE PRECISION,

    CONSTRAINT "child_body_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "box_kit" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "child_id" UUID NOT NULL,
    "household_id" UUID NOT NULL,
    "compartments" JSONB NOT NULL,
    "cold_sources" INTEGER NOT NULL,
    "insulated" BOOLEAN NOT NULL,
    "flask" BOOLEAN NOT NULL,

    CONSTRAINT "box_kit_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "leave_time" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "child_id" UUID NOT NULL,
    "household_id" UUID NOT NULL,
    "weekday" TEXT NOT NULL,
    "leave_at" TEXT NOT NULL,

    CONSTRAINT "leave_time_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "enrolment" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "child_id" UUID NOT NULL,
    "school_id" UUID NOT NULL,
    "school_class_id" UUID NOT NULL,
    "from_date" DATE NOT NULL,
    "until_date" DATE,

    CONSTRAINT "enrolment_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "school_meal_day" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "child_id" UUID NOT NULL,
    "weekday" TEXT NOT NULL,

    CONSTRAINT "school_meal_day_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "absence" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "child_id" UUID NOT NULL,
    "date" DATE NOT NULL,
    "reason" TEXT NOT NULL,

    CONSTRAINT "absence_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "week" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "household_id" UUID NOT NULL,
    "week_start" DATE NOT NULL,
    "revision" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "week_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "week_plan" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "week_id" UUID NOT NULL,
    "household_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "state" "plan_state" NOT NULL,
    "seed" BIGINT NOT NULL,
    "steps" INTEGER NOT NULL,
    "problem_hash" TEXT NOT NULL,
    "catalogue_version" TEXT NOT NULL,
    "rule_set_versions" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "wishes" JSONB NOT NULL,
    "cautions" JSONB NOT NULL,
    "ready_uses" JSONB NOT NULL,
    "comparison" JSONB,
    "created_by_id" UUID,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "agreed_at" TIMESTAMPTZ(3),

    CONSTRAINT "week_plan_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "lunch_box" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "week_plan_id" UUID NOT NULL,
    "child_id" UUID NOT NULL,
    "date" DATE NOT NULL,
    "state" "box_state" NOT NULL DEFAULT 'PLANNED',
    "packed_at" TIMESTAMPTZ(3),
    "current" BOOLEAN NOT NULL,

    CONSTRAINT "lunch_box_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "box_item" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "lunch_box_id" UUID NOT NULL,
    "child_id" UUID NOT NULL,
    "break_key" TEXT NOT NULL,
    "slot" TEXT NOT NULL,
    "place" INTEGER NOT NULL,
    "dish_key" TEXT NOT NULL,
    "grams" DOUBLE PRECISION NOT NULL,
    "pieces" DOUBLE PRECISION,
    "served" TEXT NOT NULL,
    "energy_kcal" DOUBLE PRECISION NOT NULL,
    "carbohydrate_grams" DOUBLE PRECISION,
    "cuts" JSONB NOT NULL,
    "allergens" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "holding_case" TEXT NOT NULL,

    CONSTRAINT "box_item_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "box_packing" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "lunch_box_id" UUID NOT NULL,
    "household_id" UUID NOT NULL,
    "leave_at" TEXT NOT NULL,
    "cold_sources" INTEGER NOT NULL,
    "flask" BOOLEAN NOT NULL,
    "cutlery" TEXT[] DEFAULT ARRAY[]::TEXT[],

    CONSTRAINT "box_packing_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "box_item_note" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "box_item_id" UUID NOT NULL,
    "household_id" UUID NOT NULL,
    "reasons" JSONB NOT NULL,
    "holding_minutes" INTEGER NOT NULL,
    "holding_limit_minutes" INTEGER NOT NULL,
    "labels_to_read" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "compartment" INTEGER NOT NULL,

    CONSTRAINT "box_item_note_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "batch" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "week_plan_id" UUID NOT NULL,
    "household_id" UUID NOT NULL,
    "base_key" TEXT NOT NULL,
    "session" TEXT NOT NULL,
    "batches" INTEGER NOT NULL,
    "grams" INTEGER NOT NULL,
    "feeds" JSONB NOT NULL,
    "spare_grams" INTEGER NOT NULL,
    "state" "work_state" NOT NULL DEFAULT 'OPEN',

    CONSTRAINT "batch_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "task" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "week_plan_id" UUID NOT NULL,
    "household_id" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "session" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "base_key" TEXT,
    "dish_key" TEXT,
    "text" TEXT NOT NULL,
    "child_ids" UUID[] DEFAULT ARRAY[]::UUID[],
    "for_dates" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "hands_on_minutes" DOUBLE PRECISION NOT NULL,
    "passive_minutes" DOUBLE PRECISION NOT NULL,
    "equipment" JSONB NOT NULL,
    "starts_at" TEXT NOT NULL,
    "hands_free_at" TEXT NOT NULL,
    "ends_at" TEXT NOT NULL,
    "carer" INTEGER NOT NULL,
    "after" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "handles" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "state" "work_state" NOT NULL DEFAULT 'OPEN',
    "taken_by_id" UUID,

    CONSTRAINT "task_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "shopping_line" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "week_plan_id" UUID NOT NULL,
    "household_id" UUID NOT NULL,
    "food_key" TEXT NOT NULL,
    "section" TEXT NOT NULL,
    "needed_grams" INTEGER NOT NULL,
    "from_stock_grams" INTEGER NOT NULL,
    "packs" INTEGER NOT NULL,
    "pack_grams" INTEGER NOT NULL,
    "spare_grams" INTEGER NOT NULL,
    "cost_minor" INTEGER NOT NULL,
    "read_label" BOOLEAN NOT NULL,
    "ticked" BOOLEAN NOT NULL DEFAULT false,

    CONSTRAINT "shopping_line_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "relaxation" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "household_id" UUID NOT NULL,
    "rule" "house_rule" NOT NULL,
    "date" DATE NOT NULL,

    CONSTRAINT "relaxation_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "pin" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "household_id" UUID NOT NULL,
    "child_id" UUID NOT NULL,
    "date" DATE NOT NULL,
    "break_key" TEXT NOT NULL,
    "slot" TEXT NOT NULL,
    "place" INTEGER NOT NULL,
    "dish_key" TEXT NOT NULL,

    CONSTRAINT "pin_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "food_key_key" ON "food"("key");

-- CreateIndex
CREATE UNIQUE INDEX "food_ndb_key" ON "food"("ndb");

-- CreateIndex
CREATE UNIQUE INDEX "base_key_key" ON "base"("key");

-- CreateIndex
CREATE INDEX "base_ingredient_food_id_idx" ON "base_ingredient"("food_id");

-- CreateIndex
CREATE UNIQUE INDEX "base_ingredient_base_id_place_key" ON "base_ingredient"("base_id", "place");

-- CreateIndex
CREATE UNIQUE INDEX "dish_key_key" ON "dish"("key");

-- CreateIndex
CREATE INDEX "dish_base_base_id_idx" ON "dish_base"("base_id");

-- CreateIndex
CREATE UNIQUE INDEX "dish_base_dish_id_place_key" ON "dish_base"("dish_id", "place");

-- CreateIndex
CREATE INDEX "dish_ingredient_food_id_idx" ON "dish_ingredient"("food_id");

-- CreateIndex
CREATE UNIQUE INDEX "dish_ingredient_dish_id_place_key" ON "dish_ingredient"("dish_id", "place");

-- CreateIndex
CREATE UNIQUE INDEX "dish_step_dish_id_place_key" ON "dish_step"("dish_id", "place");

-- CreateIndex
CREATE UNIQUE INDEX "reference_table_key_key" ON "reference_table"("key");

-- CreateIndex
CREATE UNIQUE INDEX "school_name_key" ON "school"("name");

-- CreateIndex
CREATE UNIQUE INDEX "school_class_school_id_name_key" ON "school_class"("school_id", "name");

-- CreateIndex
CREATE UNIQUE INDEX "class_break_school_class_id_key_key" ON "class_break"("school_class_id", "key");

-- CreateIndex
CREATE INDEX "school_term_school_id_idx" ON "school_term"("school_id");

-- CreateIndex
CREATE INDEX "school_day_school_id_date_idx" ON "school_day"("school_id", "date");

-- CreateIndex
CREATE INDEX "school_day_school_class_id_idx" ON "school_day"("school_class_id");

-- CreateIndex
CREATE INDEX "rule_set_key_idx" ON "rule_set"("key");

-- CreateIndex
CREATE INDEX "rule_set_school_id_idx" ON "rule_set"("school_id");

-- CreateIndex
CREATE INDEX "rule_set_school_class_id_idx" ON "rule_set"("school_class_id");

-- CreateIndex
CREATE INDEX "rule_set_child_id_idx" ON "rule_set"("child_id");

-- CreateIndex
CREATE INDEX "rule_set_version_loaded_by_id_idx" ON "rule_set_version"("loaded_by_id");

-- CreateIndex
CREATE UNIQUE INDEX "rule_set_version_rule_set_id_version_key" ON "rule_set_version"("rule_set_id", "version");

-- CreateIndex
CREATE UNIQUE INDEX "rule_rule_set_version_id_place_key" ON "rule"("rule_set_version_id", "place");

-- CreateIndex
CREATE INDEX "rule_set_adoption_rule_set_id_idx" ON "rule_set_adoption"("rule_set_id");

-- CreateIndex
CREATE UNIQUE INDEX "rule_set_adoption_school_id_rule_set_id_key" ON "rule_set_adoption"("school_id", "rule_set_id");

-- CreateIndex
CREATE UNIQUE INDEX "person_subject_key" ON "person"("subject");

-- CreateIndex
CREATE INDEX "membership_person_id_idx" ON "membership"("person_id");

-- CreateIndex
CREATE UNIQUE INDEX "membership_household_id_person_id_key" ON "membership"("household_id", "person_id");

-- CreateIndex
CREATE INDEX "appointment_school_id_idx" ON "appointment"("school_id");

-- CreateIndex
CREATE UNIQUE INDEX "appointment_person_id_school_id_key" ON "appointment"("person_id", "school_id");

-- CreateIndex
CREATE UNIQUE INDEX "idempotency_key_person_id_key_key" ON "idempotency_key"("person_id", "key");

-- CreateIndex
CREATE UNIQUE INDEX "equipment_household_id_kind_key" ON "equipment"("household_id", "kind");

-- CreateIndex
CREATE UNIQUE INDEX "prep_time_household_id_kind_weekday_key" ON "prep_time"("household_id", "kind", "weekday");

-- CreateIndex
CREATE UNIQUE INDEX "prep_time_exception_household_id_kind_date_key" ON "prep_time_exception"("household_id", "kind", "date");

-- CreateIndex
CREATE INDEX "stock_food_id_idx" ON "stock"("food_id");

-- CreateIndex
CREATE UNIQUE INDEX "stock_household_id_food_id_key" ON "stock"("household_id", "food_id");

-- CreateIndex
CREATE INDEX "leftover_household_id_idx" ON "leftover"("household_id");

-- CreateIndex
CREATE INDEX "leftover_base_id_idx" ON "leftover"("base_id");

-- CreateIndex
CREATE INDEX "freezer_stock_household_id_idx" ON "freezer_stock"("household_id");

-- CreateIndex
CREATE INDEX "freezer_stock_base_id_idx" ON "freezer_stock"("base_id");

-- CreateIndex
CREATE INDEX "label_check_food_id_idx" ON "label_check"("food_id");

-- CreateIndex
CREATE UNIQUE INDEX "label_check_household_id_food_id_key" ON "label_check"("household_id", "food_id");

-- CreateIndex
CREATE INDEX "allergy_child_id_idx" ON "allergy"("child_id");

-- CreateIndex
CREATE INDEX "residence_household_id_idx" ON "residence"("household_id");

-- CreateIndex
CREATE UNIQUE INDEX "residence_child_id_household_id_key" ON "residence"("child_id", "household_id");

-- CreateIndex
CREATE INDEX "residence_day_household_id_date_idx" ON "residence_day"("household_id", "date");

-- CreateIndex
CREATE UNIQUE INDEX "residence_day_child_id_date_key" ON "residence_day"("child_id", "date");

-- CreateIndex
CREATE INDEX "child_body_household_id_idx" ON "child_body"("household_id");

-- CreateIndex
CREATE UNIQUE INDEX "child_body_child_id_household_id_key" ON "child_body"("child_id", "household_id");

-- CreateIndex
CREATE INDEX "box_kit_household_id_idx" ON "box_kit"("household_id");

-- CreateIndex
CREATE UNIQUE INDEX "box_kit_child_id_household_id_key" ON "box_kit"("child_id", "household_id");

-- CreateIndex
CREATE INDEX "leave_time_household_id_idx" ON "leave_time"("household_id");

-- CreateIndex
CREATE UNIQUE INDEX "leave_time_child_id_household_id_weekday_key" ON "leave_time"("child_id", "household_id", "weekday");

-- CreateIndex
CREATE INDEX "enrolment_child_id_idx" ON "enrolment"("child_id");

-- CreateIndex
CREATE INDEX "enrolment_school_id_idx" ON "enrolment"("school_id");

-- CreateIndex
CREATE INDEX "enrolment_school_class_id_idx" ON "enrolment"("school_class_id");

-- CreateIndex
CREATE UNIQUE INDEX "school_meal_day_child_id_weekday_key" ON "school_meal_day"("child_id", "weekday");

-- CreateIndex
CREATE UNIQUE INDEX "absence_child_id_date_key" ON "absence"("child_id", "date");

-- CreateIndex
CREATE UNIQUE INDEX "week_household_id_week_start_key" ON "week"("household_id", "week_start");

-- CreateIndex
CREATE INDEX "week_plan_household_id_idx" ON "week_plan"("household_id");

-- CreateIndex
CREATE UNIQUE INDEX "week_plan_week_id_number_key" ON "week_plan"("week_id", "number");

-- CreateIndex
CREATE INDEX "lunch_box_child_id_date_idx" ON "lunch_box"("child_id", "date");

-- CreateIndex
CREATE UNIQUE INDEX "lunch_box_week_plan_id_child_id_date_key" ON "lunch_box"("week_plan_id", "child_id", "date");

-- CreateIndex
CREATE INDEX "box_item_child_id_idx" ON "box_item"("child_id");

-- CreateIndex
CREATE UNIQUE INDEX "box_item_lunch_box_id_break_key_slot_place_key" ON "box_item"("lunch_box_id", "break_key", "slot", "place");

-- CreateIndex
CREATE UNIQUE INDEX "box_packing_lunch_box_id_key" ON "box_packing"("lunch_box_id");

-- CreateIndex
CREATE INDEX "box_packing_household_id_idx" ON "box_packing"("household_id");

-- CreateIndex
CREATE UNIQUE INDEX "box_item_note_box_item_id_key" ON "box_item_note"("box_item_id");

-- CreateIndex
CREATE INDEX "box_item_note_household_id_idx" ON "box_item_note"("household_id");

-- CreateIndex
CREATE INDEX "batch_week_plan_id_idx" ON "batch"("week_plan_id");

-- CreateIndex
CREATE INDEX "batch_household_id_idx" ON "batch"("household_id");

-- CreateIndex
CREATE INDEX "task_household_id_idx" ON "task"("household_id");

-- CreateIndex
CREATE UNIQUE INDEX "task_week_plan_id_key_key" ON "task"("week_plan_id", "key");

-- CreateIndex
CREATE INDEX "shopping_line_household_id_idx" ON "shopping_line"("household_id");

-- CreateIndex
CREATE UNIQUE INDEX "shopping_line_week_plan_id_food_key_key" ON "shopping_line"("week_plan_id", "food_key");

-- CreateIndex
CREATE UNIQUE INDEX "relaxation_household_id_rule_date_key" ON "relaxation"("household_id", "rule", "date");

-- CreateIndex
CREATE INDEX "pin_child_id_idx" ON "pin"("child_id");

-- CreateIndex
CREATE UNIQUE INDEX "pin_household_id_child_id_date_break_key_slot_place_key" ON "pin"("household_id", "child_id", "date", "break_key", "slot", "place");

-- AddForeignKey
ALTER TABLE "base_ingredient" ADD CONSTRAINT "base_ingredient_base_id_fkey" FOREIGN KEY ("base_id") REFERENCES "base"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "base_ingredient" ADD CONSTRAINT "base_ingredient_food_id_fkey" FOREIGN KEY ("food_id") REFERENCES "food"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "dish_base" ADD CONSTRAINT "dish_base_dish_id_fkey" FOREIGN KEY ("dish_id") REFERENCES "dish"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "dish_base" ADD CONSTRAINT "dish_base_base_id_fkey" FOREIGN KEY ("base_id") REFERENCES "base"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "dish_ingredient" ADD CONSTRAINT "dish_ingredient_dish_id_fkey" FOREIGN KEY ("dish_id") REFERENCES "dish"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "dish_ingredient" ADD CONSTRAINT "dish_ingredient_food_id_fkey" FOREIGN KEY ("food_id") REFERENCES "food"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "dish_step" ADD CONSTRAINT "dish_step_dish_id_fkey" FOREIGN KEY ("dish_id") REFERENCES "dish"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "school_class" ADD CONSTRAINT "school_class_school_id_fkey" FOREIGN KEY ("school_id") REFERENCES "school"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "class_break" ADD CONSTRAINT "class_break_school_class_id_fkey" FOREIGN KEY ("school_class_id") REFERENCES "school_class"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "school_term" ADD CONSTRAINT "school_term_school_id_fkey" FOREIGN KEY ("school_id") REFERENCES "school"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "school_day" ADD CONSTRAINT "school_day_school_id_fkey" FOREIGN KEY ("school_id") REFERENCES "school"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "school_day" ADD CONSTRAINT "school_day_school_class_id_fkey" FOREIGN KEY ("school_class_id") REFERENCES "school_class"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "rule_set" ADD CONSTRAINT "rule_set_school_id_fkey" FOREIGN KEY ("school_id") REFERENCES "school"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "rule_set" ADD CONSTRAINT "rule_set_school_class_id_fkey" FOREIGN KEY ("school_class_id") REFERENCES "school_class"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "rule_set" ADD CONSTRAINT "rule_set_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "rule_set_version" ADD CONSTRAINT "rule_set_version_rule_set_id_fkey" FOREIGN KEY ("rule_set_id") REFERENCES "rule_set"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "rule_set_version" ADD CONSTRAINT "rule_set_version_loaded_by_id_fkey" FOREIGN KEY ("loaded_by_id") REFERENCES "person"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "rule" ADD CONSTRAINT "rule_rule_set_version_id_fkey" FOREIGN KEY ("rule_set_version_id") REFERENCES "rule_set_version"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "rule_set_adoption" ADD CONSTRAINT "rule_set_adoption_school_id_fkey" FOREIGN KEY ("school_id") REFERENCES "school"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "rule_set_adoption" ADD CONSTRAINT "rule_set_adoption_rule_set_id_fkey" FOREIGN KEY ("rule_set_id") REFERENCES "rule_set"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "membership" ADD CONSTRAINT "membership_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "membership" ADD CONSTRAINT "membership_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "appointment" ADD CONSTRAINT "appointment_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "appointment" ADD CONSTRAINT "appointment_school_id_fkey" FOREIGN KEY ("school_id") REFERENCES "school"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "idempotency_key" ADD CONSTRAINT "idempotency_key_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "equipment" ADD CONSTRAINT "equipment_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "prep_time" ADD CONSTRAINT "prep_time_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "prep_time_exception" ADD CONSTRAINT "prep_time_exception_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stock" ADD CONSTRAINT "stock_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stock" ADD CONSTRAINT "stock_food_id_fkey" FOREIGN KEY ("food_id") REFERENCES "food"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "leftover" ADD CONSTRAINT "leftover_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "leftover" ADD CONSTRAINT "leftover_base_id_fkey" FOREIGN KEY ("base_id") REFERENCES "base"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "freezer_stock" ADD CONSTRAINT "freezer_stock_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "freezer_stock" ADD CONSTRAINT "freezer_stock_base_id_fkey" FOREIGN KEY ("base_id") REFERENCES "base"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "label_check" ADD CONSTRAINT "label_check_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "label_check" ADD CONSTRAINT "label_check_food_id_fkey" FOREIGN KEY ("food_id") REFERENCES "food"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "allergy" ADD CONSTRAINT "allergy_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "residence" ADD CONSTRAINT "residence_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "residence" ADD CONSTRAINT "residence_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "residence_day" ADD CONSTRAINT "residence_day_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "residence_day" ADD CONSTRAINT "residence_day_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "child_body" ADD CONSTRAINT "child_body_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "child_body" ADD CONSTRAINT "child_body_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "box_kit" ADD CONSTRAINT "box_kit_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "box_kit" ADD CONSTRAINT "box_kit_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "leave_time" ADD CONSTRAINT "leave_time_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "leave_time" ADD CONSTRAINT "leave_time_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "enrolment" ADD CONSTRAINT "enrolment_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "enrolment" ADD CONSTRAINT "enrolment_school_id_fkey" FOREIGN KEY ("school_id") REFERENCES "school"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "enrolment" ADD CONSTRAINT "enrolment_school_class_id_fkey" FOREIGN KEY ("school_class_id") REFERENCES "school_class"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "school_meal_day" ADD CONSTRAINT "school_meal_day_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "absence" ADD CONSTRAINT "absence_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "week" ADD CONSTRAINT "week_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "week_plan" ADD CONSTRAINT "week_plan_week_id_fkey" FOREIGN KEY ("week_id") REFERENCES "week"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "week_plan" ADD CONSTRAINT "week_plan_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "lunch_box" ADD CONSTRAINT "lunch_box_week_plan_id_fkey" FOREIGN KEY ("week_plan_id") REFERENCES "week_plan"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "lunch_box" ADD CONSTRAINT "lunch_box_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "box_item" ADD CONSTRAINT "box_item_lunch_box_id_fkey" FOREIGN KEY ("lunch_box_id") REFERENCES "lunch_box"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "box_item" ADD CONSTRAINT "box_item_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "box_packing" ADD CONSTRAINT "box_packing_lunch_box_id_fkey" FOREIGN KEY ("lunch_box_id") REFERENCES "lunch_box"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "box_packing" ADD CONSTRAINT "box_packing_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "box_item_note" ADD CONSTRAINT "box_item_note_box_item_id_fkey" FOREIGN KEY ("box_item_id") REFERENCES "box_item"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "box_item_note" ADD CONSTRAINT "box_item_note_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "batch" ADD CONSTRAINT "batch_week_plan_id_fkey" FOREIGN KEY ("week_plan_id") REFERENCES "week_plan"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "batch" ADD CONSTRAINT "batch_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "task" ADD CONSTRAINT "task_week_plan_id_fkey" FOREIGN KEY ("week_plan_id") REFERENCES "week_plan"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "task" ADD CONSTRAINT "task_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "shopping_line" ADD CONSTRAINT "shopping_line_week_plan_id_fkey" FOREIGN KEY ("week_plan_id") REFERENCES "week_plan"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "shopping_line" ADD CONSTRAINT "shopping_line_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "relaxation" ADD CONSTRAINT "relaxation_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "pin" ADD CONSTRAINT "pin_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "pin" ADD CONSTRAINT "pin_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;
