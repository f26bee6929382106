/** Foods, bases, dishes and the small tables: the same for everybody, read once per process by one statement. */
import type postgres from "postgres";
import type { CreditTable } from "../../shared/credits.js";
import type { HoldingModel } from "../../shared/holding-model.js";
import type { LabelLaw } from "../../shared/label-law.js";
import type { MealShares } from "../../shared/meal-shares.js";
import type { CatalogueBrief, ChokingRule, HoldingLimits } from "../domain/brief.js";

export interface Reference {
  readonly catalogue: CatalogueBrief;
  readonly choking: readonly ChokingRule[];
  readonly mealShares: MealShares;
  readonly credits: CreditTable;
  readonly labelLaws: readonly LabelLaw[];
  /** With the model of heat and growth. */
  readonly holding: HoldingLimits & { readonly model: HoldingModel };
  /** Row ID of each dish by key. */
  readonly dishIds: ReadonlyMap<string, string>;
}

/** Throws when the reference seeds were never loaded: without them nothing can be planned safely. */
export async function readReference(sql: postgres.Sql): Promise<Reference> {
  const [row] = await sql<
    {
      version: string | null;
      retention: CatalogueBrief["retention"] | null;
      choking: readonly ChokingRule[] | null;
      mealShares: MealShares | null;
      credits: CreditTable | null;
      labelLaws: readonly LabelLaw[] | null;
      holding: HoldingLimits | null;
      holdingModel: HoldingModel | null;
      foods: CatalogueBrief["foods"];
      bases: CatalogueBrief["bases"];
      dishes: CatalogueBrief["dishes"];
      dishIds: Record<string, string>;
    }[]
  >`
    select
      (select version from reference_table where key = 'catalogue') as version,
      (select body from reference_table where key = 'retention') as retention,
      (select body from reference_table where key = 'choking') as choking,
      (select body from reference_table where key = 'mealShares') as "mealShares",
      (select body from reference_table where key = 'credits') as credits,
      (select body from reference_table where key = 'labelLaws') as "labelLaws",
      (select body from reference_table where key = 'holding') as holding,
      (select body from reference_table where key = 'holdingModel') as "holdingModel",
      (select coalesce(json_agg(json_build_object(
          'key', f.key, 'name', f.name, 'ndb', f.ndb, 'kind', f.kind, 'group', f.food_group, 'origins', f.origins, 'allergens', f.allergens,
          'packaged', f.packaged, 'nutrients', f.nutrients, 'sugarRule', f.sugar_rule, 'freeSugarGrams', f.free_sugar_grams,
          'addedSugarGrams', f.added_sugar_grams, 'refusePercent', f.refuse_percent,
          'densityGramsPerMl', f.density_grams_per_ml, 'measures', f.measures, 'waterActivity', f.water_activity, 'ph', f.ph,
          'chokingClasses', f.choking_classes, 'keepsChilledDays', f.keeps_chilled_days, 'keepsFrozenDays', f.keeps_frozen_days,
          'seasons', f.seasons, 'boughtAs', f.bought_as,
          'pack', json_build_object('grams', f.pack_grams, 'priceMinor', f.price_minor), 'shopSection', f.shop_section, 'wholeGrain', f.whole_grain
        ) order by f.key), '[]') from food f) as foods,
      (select coalesce(json_agg(json_build_object(
          'key', b.key, 'name', b.name, 'kind', b.kind, 'batchGrams', b.batch_grams, 'fixedHandsOnMinutes', b.fixed_hands_on_minutes,
          'perBatchHandsOnMinutes', b.per_batch_hands_on_minutes, 'passiveMinutes', b.passive_minutes, 'equipment', b.equipment,
          'equipmentMinutes', b.equipment_minutes, 'maxBatches', b.max_batches, 'windows', b.windows, 'keepsChilledDays', b.keeps_chilled_days,
          'keepsFrozenDays', b.keeps_frozen_days, 'storageMl', b.storage_ml, 'steps', b.steps,
          'restMinutes', b.rest_minutes,
          'ingredients', (select coalesce(json_agg(json_strip_nulls(json_build_object('food', f.key, 'grams', i.grams, 'form', i.form,
              'retention', i.retention)) order by i.place), '[]')
            from base_ingredient i join food f on f.id = i.food_id where i.base_id = b.id)
        ) order by b.key), '[]') from base b) as bases,
      (select json_object_agg(d.key, d.id) from dish d) as "dishIds",
      (select coalesce(json_agg(json_build_object(
          'key', d.key, 'name', d.name, 'slots', d.slots, 'portion', d.portion, 'served', d.served, 'goodForHours', d.good_for_hours,
          'cutlery', d.cutlery, 'spill', d.spill, 'volumeMl', d.volume_ml, 'starch', d.starch, 'protein', d.protein, 'colours', d.colours,
          'textures', d.textures, 'flavours', d.flavours, 'cuisine', d.cuisine, 'processing', d.processing, 'cookedInFat', d.cooked_in_fat, 'treat', d.treat,
          'bases', (select coalesce(json_agg(json_build_object('base', b.key, 'grams', x.grams) order by x.place), '[]')
            from dish_base x join base b on b.id = x.base_id where x.dish_id = d.id),
          'ingredients', (select coalesce(json_agg(json_strip_nulls(json_build_object('food', f.key, 'grams', i.grams, 'form', i.form,
              'retention', i.retention)) order by i.place), '[]')
            from dish_ingredient i join food f on f.id = i.food_id where i.dish_id = d.id),
          'steps', (select coalesce(json_agg(json_build_object('text', s.text, 'handsOnFixedMinutes', s.hands_on_fixed_minutes,
              'handsOnPerPortionMinutes', s.hands_on_per_portion_minutes, 'passiveMinutes', s.passive_minutes, 'equipment', s.equipment,
              'batchPortions', s.batch_portions, 'eveningBefore', s.evening_before, 'coolMinutes', s.cool_minutes, 'heldWhileCooling', s.held_while_cooling)
              order by s.place), '[]') from dish_step s where s.dish_id = d.id)
        ) order by d.key), '[]') from dish d) as dishes`;
  if (
    !row?.version ||
    !row.retention ||
    !row.choking ||
    !row.mealShares ||
    !row.credits ||
    !row.labelLaws ||
    !row.holding ||
    !row.holdingModel
  ) {
    throw new Error("The reference tables are empty: run npm run db:migrate, which loads seeds/reference.");
  }
  return {
    catalogue: {
      version: row.version,
      foods: row.foods,
      // Absent is absent here too: what need not stand has no such figure.
      bases: row.bases.map(({ restMinutes, ...base }) => (restMinutes == null ? base : { ...base, restMinutes })),
      dishes: row.dishes,
      retention: row.retention,
    },
    choking: row.choking,
    mealShares: row.mealShares,
    credits: row.credits,
    labelLaws: row.labelLaws,
    holding: { ...row.holding, model: row.holdingModel },
    dishIds: new Map(Object.entries(row.dishIds)),
  };
}
