-- What upsets a week: of a child, known in both homes, and of a kitchen, which stays behind the wall. A child who stays home was
-- the first of these and had a table of its own; it moves in with the others.
CREATE TABLE "child_disruption" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "child_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "date" DATE NOT NULL,
    "until" DATE NOT NULL,
    "ends_at" TEXT,
    "reason" TEXT NOT NULL DEFAULT '',
    "reported_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "child_disruption_pkey" PRIMARY KEY ("id")
);

CREATE TABLE "kitchen_disruption" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "household_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "date" DATE NOT NULL,
    "until" DATE NOT NULL,
    "food_kind" TEXT,
    "appliance" TEXT,
    "units" INTEGER,
    "minutes" INTEGER,
    "reported_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "kitchen_disruption_pkey" PRIMARY KEY ("id")
);

CREATE UNIQUE INDEX "child_disruption_child_id_kind_date_key" ON "child_disruption"("child_id", "kind", "date");
CREATE INDEX "kitchen_disruption_household_id_date_idx" ON "kitchen_disruption"("household_id", "date");

ALTER TABLE "child_disruption" ADD CONSTRAINT "child_disruption_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "kitchen_disruption" ADD CONSTRAINT "kitchen_disruption_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

alter table child_disruption add constraint child_disruption_kind_check check (kind in ('ABSENT', 'SCHOOL_CLOSED', 'EARLY_FINISH', 'TRIP'));
alter table child_disruption add constraint child_disruption_span_check check (date <= until);
alter table child_disruption add constraint child_disruption_ends_at_check check ((kind = 'EARLY_FINISH') = (ends_at is not null) and ends_at ~ '^([01][0-9]|2[0-3]):[0-5][0-9]$');
alter table kitchen_disruption add constraint kitchen_disruption_kind_check check (kind in ('FOOD_MISSING', 'APPLIANCE_BROKEN', 'SHORT_MORNING'));
alter table kitchen_disruption add constraint kitchen_disruption_span_check check (date <= until);
alter table kitchen_disruption add constraint kitchen_disruption_facts_check check (
  (kind = 'FOOD_MISSING') = (food_kind is not null) and (kind = 'APPLIANCE_BROKEN') = (appliance is not null)
  and (kind = 'APPLIANCE_BROKEN') = (units is not null) and (kind = 'SHORT_MORNING') = (minutes is not null)
  and coalesce(units, 1) > 0 and coalesce(minutes, 0) >= 0);
create unique index kitchen_disruption_once on kitchen_disruption (household_id, kind, date, coalesce(food_kind, ''), coalesce(appliance, ''));

-- FORCE would hide the rows from an owner that is not a superuser.
alter table absence no force row level security;
insert into child_disruption (child_id, kind, date, until, reason) select child_id, 'ABSENT', date, date, reason from absence;
drop table absence;

alter table child_disruption enable row level security; alter table child_disruption force row level security;
create policy child_disruption_read on child_disruption for select using (child_id in (select app_child_ids()));
create policy child_disruption_add on child_disruption for insert with check (child_id in (select app_writable_child_ids()));
create policy child_disruption_remove on child_disruption for delete using (child_id in (select app_writable_child_ids()));
grant select, insert, delete on child_disruption to noonpail_app;

alter table kitchen_disruption enable row level security; alter table kitchen_disruption force row level security;
create policy kitchen_disruption_read on kitchen_disruption for select using (household_id in (select app_household_ids()));
create policy kitchen_disruption_add on kitchen_disruption for insert with check (household_id in (select app_writable_household_ids()));
create policy kitchen_disruption_remove on kitchen_disruption for delete using (household_id in (select app_writable_household_ids()));
grant select, insert, delete on kitchen_disruption to noonpail_app;
