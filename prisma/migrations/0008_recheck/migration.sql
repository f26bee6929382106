-- Boxes that no longer pass: why, for both homes, and what only the packing kitchen may know about it.
CREATE TABLE "box_block" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "lunch_box_id" UUID NOT NULL,
    "child_id" UUID NOT NULL,
    "place" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "dish_key" TEXT,
    "allergen" TEXT,
    "diet" TEXT,
    "rule_set" TEXT,
    "rule" TEXT,
    "says" TEXT,

    CONSTRAINT "box_block_pkey" PRIMARY KEY ("id")
);

CREATE TABLE "box_block_note" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "box_block_id" UUID NOT NULL,
    "household_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "dish_key" TEXT,
    "food_key" TEXT,
    "allergen" TEXT,

    CONSTRAINT "box_block_note_pkey" PRIMARY KEY ("id")
);

-- A first yes to something that takes two; its id is the token of the second.
CREATE TABLE "confirmation" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "person_id" UUID NOT NULL,
    "about" TEXT NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "confirmation_pkey" PRIMARY KEY ("id")
);

ALTER TABLE "school" ADD COLUMN     "revision" INTEGER NOT NULL DEFAULT 1;

CREATE UNIQUE INDEX "box_block_lunch_box_id_place_key" ON "box_block"("lunch_box_id", "place");
CREATE INDEX "box_block_child_id_idx" ON "box_block"("child_id");
CREATE UNIQUE INDEX "box_block_note_box_block_id_key" ON "box_block_note"("box_block_id");
CREATE INDEX "box_block_note_household_id_idx" ON "box_block_note"("household_id");
CREATE INDEX "confirmation_person_id_idx" ON "confirmation"("person_id");
CREATE INDEX "allergy_recorded_by_household_id_idx" ON "allergy"("recorded_by_household_id");

ALTER TABLE "box_block" ADD CONSTRAINT "box_block_lunch_box_id_fkey" FOREIGN KEY ("lunch_box_id") REFERENCES "lunch_box"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "box_block" ADD CONSTRAINT "box_block_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "box_block_note" ADD CONSTRAINT "box_block_note_box_block_id_fkey" FOREIGN KEY ("box_block_id") REFERENCES "box_block"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "box_block_note" ADD CONSTRAINT "box_block_note_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "confirmation" ADD CONSTRAINT "confirmation_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- Both homes see why a child's box is blocked; the home that packs it says so and takes it back.
alter table box_block enable row level security; alter table box_block force row level security;
create policy box_block_read on box_block for select using (child_id in (select app_child_ids()));
create policy box_block_add on box_block for insert with check (exists (select from lunch_box l join week_plan p on p.id = l.week_plan_id
  where l.id = box_block.lunch_box_id and l.child_id = box_block.child_id and p.household_id in (select app_writable_household_ids())));
create policy box_block_remove on box_block for delete using (exists (select from lunch_box l join week_plan p on p.id = l.week_plan_id
  where l.id = box_block.lunch_box_id and p.household_id in (select app_writable_household_ids())));
grant select, insert, delete on box_block to noonpail_app;

-- Labels, stock and what a kitchen keeps out stay behind the wall. Rows go with the reason they belong to.
alter table box_block_note enable row level security; alter table box_block_note force row level security;
create policy box_block_note_read on box_block_note for select using (household_id in (select app_household_ids()));
create policy box_block_note_add on box_block_note for insert with check (household_id in (select app_writable_household_ids())
  and exists (select from box_block k join lunch_box l on l.id = k.lunch_box_id join week_plan p on p.id = l.week_plan_id
    where k.id = box_block_note.box_block_id and p.household_id = box_block_note.household_id));
grant select, insert on box_block_note to noonpail_app;

alter table confirmation enable row level security; alter table confirmation force row level security;
create policy confirmation_read on confirmation for select using (person_id = app_person_id());
create policy confirmation_add on confirmation for insert with check (person_id = app_person_id());
create policy confirmation_remove on confirmation for delete using (person_id = app_person_id());
grant select, insert, delete on confirmation to noonpail_app;

grant update (revision) on school to noonpail_app;

-- Each home keeps its own record of an allergy, and only its own: the stricter of two holds, so no home can loosen another's.
drop index allergy_once;
create unique index allergy_once on allergy (child_id, coalesce(allergen, ''), coalesce(food_kind, ''), coalesce(recorded_by_household_id::text, ''));
drop policy allergy_add on allergy;
drop policy allergy_change on allergy;
drop policy allergy_remove on allergy;
create policy allergy_add on allergy for insert with check (child_id in (select app_writable_child_ids())
  and (recorded_by_household_id is null or recorded_by_household_id in (select app_writable_household_ids())));
create policy allergy_change on allergy for update using (child_id in (select app_writable_child_ids())
    and (recorded_by_household_id is null or recorded_by_household_id in (select app_writable_household_ids())))
  with check (child_id in (select app_writable_child_ids())
    and (recorded_by_household_id is null or recorded_by_household_id in (select app_writable_household_ids())));
create policy allergy_remove on allergy for delete using (child_id in (select app_writable_child_ids())
  and (recorded_by_household_id is null or recorded_by_household_id in (select app_writable_household_ids())));

-- For rechecks only: every home that packs for these children, for the children of these schools, or named itself, each with
-- the member in whose name its boxes are looked at again (coordinators first). It is asked outside any person's transaction,
-- and only then may the owner read enrolments past the carers' own policy.
create policy enrolment_recheck on enrolment for select to current_user using (app_person_id() is null);
create function app_homes_to_recheck(of_children uuid[], of_schools uuid[], of_households uuid[])
returns table (household_id uuid, person_id uuid)
language sql stable security definer set search_path = ''
begin atomic
  select distinct on (m.household_id) m.household_id, m.person_id from public.membership m
  where m.role <> 'OBSERVER'::public.role and (m.household_id = any (of_households) or m.household_id in (
    select r.household_id from public.residence r where r.child_id = any (of_children) or r.child_id in (
      select e.child_id from public.enrolment e where e.school_id = any (of_schools)
        and (e.until_date is null or e.until_date >= current_date - 1))))
  order by m.household_id, m.role, m.since, m.person_id;
end;
revoke execute on function app_homes_to_recheck(uuid[], uuid[], uuid[]) from public;
grant execute on function app_homes_to_recheck(uuid[], uuid[], uuid[]) to noonpail_app;
