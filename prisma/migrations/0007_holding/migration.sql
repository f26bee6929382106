-- AlterTable
ALTER TABLE "box_item_note" ADD COLUMN     "holding_forecast" JSONB;

-- CreateTable
CREATE TABLE "hot_day" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "household_id" UUID NOT NULL,
    "date" DATE NOT NULL,

    CONSTRAINT "hot_day_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "hot_day_household_id_date_key" ON "hot_day"("household_id", "date");

-- AddForeignKey
ALTER TABLE "hot_day" ADD CONSTRAINT "hot_day_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- What a household expects of the weather is its own.
alter table hot_day enable row level security; alter table hot_day force row level security;
create policy hot_day_read on hot_day for select using (household_id in (select app_household_ids()));
create policy hot_day_add on hot_day for insert with check (household_id in (select app_writable_household_ids()));
create policy hot_day_remove on hot_day for delete using (household_id in (select app_writable_household_ids()));
grant select, insert, delete on hot_day to noonpail_app;

alter table box_item_note add constraint box_item_note_forecast check (holding_forecast is null or jsonb_typeof(holding_forecast) = 'object');
