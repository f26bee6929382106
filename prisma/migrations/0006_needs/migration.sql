-- AlterTable
ALTER TABLE "class_break" ALTER COLUMN "energy_share" DROP NOT NULL;

-- AlterTable
ALTER TABLE "household" ADD COLUMN     "energy_method" TEXT NOT NULL DEFAULT 'NASEM_2023';

-- CreateTable
CREATE TABLE "school_provision" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "child_id" UUID NOT NULL,
    "weekday" TEXT,
    "break_key" TEXT,
    "food_id" UUID NOT NULL,
    "grams" INTEGER NOT NULL,

    CONSTRAINT "school_provision_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "school_provision_child_id_idx" ON "school_provision"("child_id");

-- CreateIndex
CREATE INDEX "school_provision_food_id_idx" ON "school_provision"("food_id");

-- AddForeignKey
ALTER TABLE "school_provision" ADD CONSTRAINT "school_provision_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "school_provision" ADD CONSTRAINT "school_provision_food_id_fkey" FOREIGN KEY ("food_id") REFERENCES "food"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What the school gives a child is a fact about the child: both homes see it, as with days on school meals.
alter table school_provision enable row level security; alter table school_provision force row level security;
create policy school_provision_read on school_provision for select using (child_id in (select app_child_ids()));
create policy school_provision_add on school_provision for insert with check (child_id in (select app_writable_child_ids()));
create policy school_provision_remove on school_provision for delete using (child_id in (select app_writable_child_ids()));
grant select, insert, delete on school_provision to noonpail_app;

alter table school_provision add constraint school_provision_ranges check (grams between 1 and 1000
  and (weekday is null or weekday in ('MONDAY', 'TUESDAY', 'WEDNESDAY', 'THURSDAY', 'FRIDAY', 'SATURDAY', 'SUNDAY')));
create unique index school_provision_once on school_provision (child_id, food_id, coalesce(weekday, ''), coalesce(break_key, ''));

-- Which equation a household's energy figures come from.
alter table household add constraint household_energy_method check (energy_method in ('NASEM_2023', 'IOM_2005'));
grant update (energy_method) on household to noonpail_app;
