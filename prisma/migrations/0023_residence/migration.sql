-- Two homes: where a child wakes by agreed patterns and days, what came back from the boxes, and the week's handover note.
CREATE TABLE "residence_pattern" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "child_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "starts" DATE NOT NULL,
    "ends" DATE,
    "cycle" UUID[],
    "state" TEXT NOT NULL,
    "proposed_by_household_id" UUID,
    "proposed_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "answered_at" TIMESTAMPTZ(6),

    CONSTRAINT "residence_pattern_pkey" PRIMARY KEY ("id")
);

CREATE TABLE "residence_exception" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "change_id" UUID NOT NULL,
    "child_id" UUID NOT NULL,
    "date" DATE NOT NULL,
    "household_id" UUID NOT NULL,
    "state" TEXT NOT NULL,
    "proposed_by_household_id" UUID,
    "proposed_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "answered_at" TIMESTAMPTZ(6),

    CONSTRAINT "residence_exception_pkey" PRIMARY KEY ("id")
);

CREATE TABLE "box_return" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "child_id" UUID NOT NULL,
    "date" DATE NOT NULL,
    "break_key" TEXT NOT NULL,
    "slot" TEXT NOT NULL,
    "place" INTEGER NOT NULL,
    "dish_key" TEXT NOT NULL,
    "came_back" TEXT NOT NULL,
    "reported_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "box_return_pkey" PRIMARY KEY ("id")
);

CREATE TABLE "handover" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "child_id" UUID NOT NULL,
    "week_start" DATE NOT NULL,
    "repeat" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "avoid" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "note" TEXT NOT NULL DEFAULT '',
    "box_place" TEXT,
    "box_home_id" UUID,
    "ice_packs_place" TEXT,
    "ice_packs_home_id" UUID,
    "flask_place" TEXT,
    "flask_home_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "handover_pkey" PRIMARY KEY ("id")
);

CREATE INDEX "residence_pattern_child_id_starts_idx" ON "residence_pattern"("child_id", "starts");
CREATE INDEX "residence_pattern_proposed_by_household_id_idx" ON "residence_pattern"("proposed_by_household_id");
CREATE INDEX "residence_exception_child_id_date_idx" ON "residence_exception"("child_id", "date");
CREATE INDEX "residence_exception_change_id_idx" ON "residence_exception"("change_id");
CREATE INDEX "residence_exception_household_id_idx" ON "residence_exception"("household_id");
CREATE INDEX "residence_exception_proposed_by_household_id_idx" ON "residence_exception"("proposed_by_household_id");
CREATE UNIQUE INDEX "box_return_child_id_date_break_key_slot_place_key" ON "box_return"("child_id", "date", "break_key", "slot", "place");
CREATE UNIQUE INDEX "handover_child_id_week_start_key" ON "handover"("child_id", "week_start");
CREATE INDEX "handover_box_home_id_idx" ON "handover"("box_home_id");
CREATE INDEX "handover_ice_packs_home_id_idx" ON "handover"("ice_packs_home_id");
CREATE INDEX "handover_flask_home_id_idx" ON "handover"("flask_home_id");

ALTER TABLE "residence_pattern" ADD CONSTRAINT "residence_pattern_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "residence_pattern" ADD CONSTRAINT "residence_pattern_proposed_by_household_id_fkey" FOREIGN KEY ("proposed_by_household_id") REFERENCES "household"("id") ON DELETE SET NULL ON UPDATE CASCADE;
ALTER TABLE "residence_exception" ADD CONSTRAINT "residence_exception_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "residence_exception" ADD CONSTRAINT "residence_exception_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "residence_exception" ADD CONSTRAINT "residence_exception_proposed_by_household_id_fkey" FOREIGN KEY ("proposed_by_household_id") REFERENCES "household"("id") ON DELETE SET NULL ON UPDATE CASCADE;
ALTER TABLE "box_return" ADD CONSTRAINT "box_return_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "handover" ADD CONSTRAINT "handover_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "handover" ADD CONSTRAINT "handover_box_home_id_fkey" FOREIGN KEY ("box_home_id") REFERENCES "household"("id") ON DELETE SET NULL ON UPDATE CASCADE;
ALTER TABLE "handover" ADD CONSTRAINT "handover_ice_packs_home_id_fkey" FOREIGN KEY ("ice_packs_home_id") REFERENCES "household"("id") ON DELETE SET NULL ON UPDATE CASCADE;
ALTER TABLE "handover" ADD CONSTRAINT "handover_flask_home_id_fkey" FOREIGN KEY ("flask_home_id") REFERENCES "household"("id") ON DELETE SET NULL ON UPDATE CASCADE;

alter table residence_pattern add constraint residence_pattern_ranges check (
  kind in ('SAME_HOME', 'ALTERNATE_WEEKS', 'TWO_TWO_THREE', 'TWO_TWO_FIVE_FIVE', 'OWN_CYCLE')
  and state in ('PROPOSED', 'ACCEPTED', 'DECLINED', 'WITHDRAWN') and (state = 'PROPOSED') = (answered_at is null)
  and cardinality(cycle) between 1 and 56 and array_position(cycle, null::uuid) is null and (ends is null or ends >= starts));
alter table residence_exception add constraint residence_exception_states check (
  state in ('PROPOSED', 'ACCEPTED', 'DECLINED', 'WITHDRAWN') and (state = 'PROPOSED') = (answered_at is null));
alter table box_return add constraint box_return_ranges check (came_back in ('ALL', 'SOME', 'NONE', 'TRADED') and place >= 0);
-- Weeks begin on a Monday here, whatever the homes' own do: both read and write the same note.
alter table handover add constraint handover_ranges check (extract(isodow from week_start) = 1 and length(note) <= 500
  and cardinality(repeat) <= 20 and cardinality(avoid) <= 20 and revision >= 1
  and box_place in ('HOME', 'AT_SCHOOL', 'WITH_CHILD', 'LOST') and (box_place = 'HOME' or box_home_id is null)
  and ice_packs_place in ('HOME', 'AT_SCHOOL', 'WITH_CHILD', 'LOST') and (ice_packs_place = 'HOME' or ice_packs_home_id is null)
  and flask_place in ('HOME', 'AT_SCHOOL', 'WITH_CHILD', 'LOST') and (flask_place = 'HOME' or flask_home_id is null));
-- Both homes may propose at once: one proposal stands open, the second is told of it.
create unique index residence_pattern_one_open on residence_pattern (child_id, starts) where state = 'PROPOSED';
create unique index residence_exception_one_open on residence_exception (child_id, date) where state = 'PROPOSED';

-- The dated list was in force as it stood. FORCE would hide its rows from an owner that is not a superuser.
alter table residence_day no force row level security;
insert into residence_exception (change_id, child_id, date, household_id, state, proposed_by_household_id, answered_at)
  select id, child_id, date, household_id, 'ACCEPTED', household_id, current_timestamp from residence_day;
drop table residence_day;

-- A home's coordinator proposes for its own children and among their homes; a coordinator of another home of the child accepts
-- or declines. What has one home needs nobody else. What is answered stays as it is.
alter table residence_pattern enable row level security; alter table residence_pattern force row level security;
create policy residence_pattern_read on residence_pattern for select using (child_id in (select app_child_ids()));
create policy residence_pattern_propose on residence_pattern for insert with check (
  proposed_by_household_id in (select app_coordinated_household_ids())
  and proposed_by_household_id in (select r.household_id from residence r where r.child_id = residence_pattern.child_id)
  and cycle <@ array(select r.household_id from residence r where r.child_id = residence_pattern.child_id)
  and (state = 'PROPOSED' or (state = 'ACCEPTED' and not exists (select from residence r
    where r.child_id = residence_pattern.child_id and r.household_id <> residence_pattern.proposed_by_household_id))));
create policy residence_pattern_answer on residence_pattern for update
  using (state = 'PROPOSED' and child_id in (select app_child_ids()))
  with check ((state = 'WITHDRAWN' and proposed_by_household_id in (select app_coordinated_household_ids()))
    or (state in ('ACCEPTED', 'DECLINED') and exists (select from residence r where r.child_id = residence_pattern.child_id
      and r.household_id in (select app_coordinated_household_ids()) and r.household_id <> residence_pattern.proposed_by_household_id)));
grant select, insert, update (state, answered_at) on residence_pattern to noonpail_app;

alter table residence_exception enable row level security; alter table residence_exception force row level security;
create policy residence_exception_read on residence_exception for select using (child_id in (select app_child_ids()));
create policy residence_exception_propose on residence_exception for insert with check (state = 'PROPOSED'
  and proposed_by_household_id in (select app_coordinated_household_ids())
  and proposed_by_household_id in (select r.household_id from residence r where r.child_id = residence_exception.child_id)
  and household_id in (select r.household_id from residence r where r.child_id = residence_exception.child_id));
create policy residence_exception_answer on residence_exception for update
  using (state = 'PROPOSED' and child_id in (select app_child_ids()))
  with check ((state = 'WITHDRAWN' and proposed_by_household_id in (select app_coordinated_household_ids()))
    or (state in ('ACCEPTED', 'DECLINED') and exists (select from residence r where r.child_id = residence_exception.child_id
      and r.household_id in (select app_coordinated_household_ids()) and r.household_id <> residence_exception.proposed_by_household_id)));
grant select, insert, update (state, answered_at) on residence_exception to noonpail_app;

alter table box_return enable row level security; alter table box_return force row level security;
create policy box_return_read on box_return for select using (child_id in (select app_child_ids()));
create policy box_return_add on box_return for insert with check (child_id in (select app_writable_child_ids()));
create policy box_return_change on box_return for update using (child_id in (select app_writable_child_ids())) with check (child_id in (select app_writable_child_ids()));
grant select, insert, update (dish_key, came_back, reported_at) on box_return to noonpail_app;

alter table handover enable row level security; alter table handover force row level security;
create policy handover_read on handover for select using (child_id in (select app_child_ids()));
create policy handover_add on handover for insert with check (child_id in (select app_writable_child_ids())
  and array_remove(array[box_home_id, ice_packs_home_id, flask_home_id], null) <@ array(select r.household_id from residence r where r.child_id = handover.child_id));
create policy handover_change on handover for update using (child_id in (select app_writable_child_ids())) with check (child_id in (select app_writable_child_ids())
  and array_remove(array[box_home_id, ice_packs_home_id, flask_home_id], null) <@ array(select r.household_id from residence r where r.child_id = handover.child_id));
grant select, insert, update (repeat, avoid, note, box_place, box_home_id, ice_packs_place, ice_packs_home_id, flask_place, flask_home_id, revision) on handover to noonpail_app;

-- Where a child wakes, as src/domain/calendar/residence.ts has it, for what has to be decided within the database. The caller's
-- rights: to anybody else the child has no home.
create function app_wakes_in(of_child uuid, on_day date) returns uuid
language sql stable set search_path = ''
begin atomic
  select coalesce(
    (select e.household_id from public.residence_exception e
      join public.residence r on r.child_id = e.child_id and r.household_id = e.household_id
      where e.child_id = of_child and e.date = on_day and e.state = 'ACCEPTED' order by e.answered_at desc, e.id desc limit 1),
    (select r.household_id from (select p.starts, p.ends, p.cycle from public.residence_pattern p
        where p.child_id = of_child and p.state = 'ACCEPTED' and p.starts <= on_day
        order by p.starts desc, p.answered_at desc, p.id desc limit 1) p
      join public.residence r on r.child_id = of_child and r.household_id = p.cycle[1 + (on_day - p.starts) % cardinality(p.cycle)]
      where p.ends is null or p.ends >= on_day),
    (select r.household_id from public.residence r where r.child_id = of_child order by r.since, r.household_id limit 1));
end;

-- The functions below act on both homes of a child, as the owner, whom FORCE binds: these policies are for nobody else.
create policy lunch_box_of_both_homes on lunch_box for update to current_user
  using (child_id in (select app_writable_child_ids())) with check (child_id in (select app_writable_child_ids()));
create policy week_plan_of_both_homes on week_plan for select to current_user
  using (household_id in (select r.household_id from residence r where r.child_id in (select app_writable_child_ids())));
create policy week_of_both_homes on week for select to current_user
  using (household_id in (select r.household_id from residence r where r.child_id in (select app_writable_child_ids())));
create policy week_revision_of_both_homes on week for update to current_user
  using (household_id in (select r.household_id from residence r where r.child_id in (select app_writable_child_ids())))
  with check (household_id in (select r.household_id from residence r where r.child_id in (select app_writable_child_ids())));
create policy residence_pattern_of_both_homes on residence_pattern for update to current_user
  using (child_id in (select app_writable_child_ids())) with check (child_id in (select app_writable_child_ids()));
create policy residence_exception_of_both_homes on residence_exception for update to current_user
  using (child_id in (select app_writable_child_ids())) with check (child_id in (select app_writable_child_ids()));

-- Boxes of a home in which the child does not wake that day any more are no longer current, from a day on: the home that has the
-- day now can plan it. The weeks that lose one go up by a revision. Answers with those boxes; `closed` ones, packed or eaten, are
-- left as they are, and the caller refuses the change.
create function app_move_boxes(of_child uuid, from_day date) returns table (day date, standing text, closed boolean)
language plpgsql security definer set search_path = ''
as $$
begin
  if of_child not in (select public.app_writable_child_ids()) then
    raise exception 'not a child of this person' using errcode = '42501';
  end if;
  -- First, so that whoever packs one of them at this moment is waited for.
  update public.week w set revision = w.revision + 1 where w.id in (
    select p.week_id from public.lunch_box l join public.week_plan p on p.id = l.week_plan_id
    where l.child_id = of_child and l.current and l.date >= from_day and p.household_id <> public.app_wakes_in(of_child, l.date));
  return query select l.date, l.state::text, l.state in ('PACKED'::public.box_state, 'EATEN'::public.box_state)
    from public.lunch_box l join public.week_plan p on p.id = l.week_plan_id
    where l.child_id = of_child and l.current and l.date >= from_day and p.household_id <> public.app_wakes_in(of_child, l.date)
    order by l.date;
  update public.lunch_box l set current = false from public.week_plan p
  where p.id = l.week_plan_id and l.child_id = of_child and l.current and l.date >= from_day
    and l.state not in ('PACKED'::public.box_state, 'EATEN'::public.box_state) and p.household_id <> public.app_wakes_in(of_child, l.date);
end
$$;

-- A box whose leavings were reported was eaten, whichever home packed it. False: there is no such box to report on.
create function app_box_eaten(of_box uuid) returns boolean
language plpgsql security definer set search_path = ''
as $$
declare week_of uuid;
begin
  select p.week_id into week_of from public.lunch_box l join public.week_plan p on p.id = l.week_plan_id
    where l.id = of_box and l.current and l.child_id in (select public.app_writable_child_ids());
  if week_of is null then
    return false;
  end if;
  update public.week w set revision = w.revision + 1 where w.id = week_of;
  update public.lunch_box l set state = 'EATEN'::public.box_state where l.id = of_box and l.current;
  return found;
end
$$;

-- A home stops being one of a child's homes, from a day on. False: it is the only one. What it kept of the child for its own use
-- goes; what it recorded of the child's allergies stays, and the homes that are left answer for it.
create function app_give_up_home(of_child uuid, home uuid, from_day date) returns boolean
language plpgsql security definer set search_path = ''
as $$
begin
  if home not in (select public.app_coordinated_household_ids())
    or not exists (select from public.residence r where r.child_id = of_child and r.household_id = home) then
    raise exception 'not a home of this child that the person coordinates' using errcode = '42501';
  end if;
  -- Two homes that give up the same child at once wait here for one another.
  perform from public.residence r where r.child_id = of_child order by r.id for update;
  if not exists (select from public.residence r where r.child_id = of_child and r.household_id <> home) then
    return false;
  end if;
  update public.week w set revision = w.revision + 1 where w.household_id = home and w.id in (
    select p.week_id from public.lunch_box l join public.week_plan p on p.id = l.week_plan_id
    where l.child_id = of_child and l.current and l.date >= from_day);
  update public.lunch_box l set current = false from public.week_plan p
  where p.id = l.week_plan_id and p.household_id = home and l.child_id = of_child and l.current and l.date >= from_day
    and l.state not in ('PACKED'::public.box_state, 'EATEN'::public.box_state);
  update public.residence_exception e set state = 'WITHDRAWN', answered_at = coalesce(e.answered_at, pg_catalog.clock_timestamp())
  where e.child_id = of_child and ((e.state = 'PROPOSED' and (e.household_id = home or e.proposed_by_household_id = home))
    or (e.state = 'ACCEPTED' and e.household_id = home and e.date >= from_day));
  update public.residence_pattern p set state = 'WITHDRAWN', answered_at = coalesce(p.answered_at, pg_catalog.clock_timestamp())
  where p.child_id = of_child and ((p.state = 'PROPOSED' and (home = any (p.cycle) or p.proposed_by_household_id = home))
    or (p.state = 'ACCEPTED' and home = any (p.cycle) and p.starts >= from_day));
  update public.residence_pattern p set ends = from_day - 1
  where p.child_id = of_child and p.state = 'ACCEPTED' and home = any (p.cycle) and p.starts < from_day and (p.ends is null or p.ends >= from_day);
  delete from public.pin x where x.child_id = of_child and x.household_id = home;
  delete from public.child_body x where x.child_id = of_child and x.household_id = home;
  delete from public.box_kit x where x.child_id = of_child and x.household_id = home;
  delete from public.leave_time x where x.child_id = of_child and x.household_id = home;
  -- The stricter holds, and a record of no single home can be taken back by those that are left.
  update public.allergy a set avoid = 'TRACES'::public.avoid where a.child_id = of_child and a.recorded_by_household_id is null
    and exists (select from public.allergy y where y.child_id = of_child and y.recorded_by_household_id = home and y.avoid = 'TRACES'::public.avoid
      and y.allergen is not distinct from a.allergen and y.food_kind is not distinct from a.food_kind);
  delete from public.allergy y where y.child_id = of_child and y.recorded_by_household_id = home
    and exists (select from public.allergy a where a.child_id = of_child and a.recorded_by_household_id is null
      and a.allergen is not distinct from y.allergen and a.food_kind is not distinct from y.food_kind);
  update public.allergy a set recorded_by_household_id = null where a.child_id = of_child and a.recorded_by_household_id = home;
  delete from public.residence r where r.child_id = of_child and r.household_id = home;
  return true;
end
$$;

revoke execute on function app_wakes_in(uuid, date), app_move_boxes(uuid, date), app_box_eaten(uuid),
  app_give_up_home(uuid, uuid, date) from public;
grant execute on function app_wakes_in(uuid, date), app_move_boxes(uuid, date), app_box_eaten(uuid),
  app_give_up_home(uuid, uuid, date) to noonpail_app;
