-- Who may see and change which row. Two walls: by household for what belongs to a kitchen, by child for what both homes of
-- a child see. The server connects as a member of noonpail_app, which owns nothing and cannot bypass row security.

do $$
begin
  if not exists (select from pg_roles where rolname = 'noonpail_app') then
    create role noonpail_app nologin nosuperuser nobypassrls;
  end if;
end
$$;
grant usage on schema public to noonpail_app;

-- The signed-in person of this transaction; null outside one. A pooled connection reads '' after a transaction ends.
create function app_person_id() returns uuid
language sql stable set search_path = ''
return nullif(current_setting('app.person_id', true), '')::uuid;

create function app_household_ids() returns setof uuid
language sql stable security definer set search_path = ''
begin atomic
  select m.household_id from public.membership m where m.person_id = public.app_person_id();
end;

-- Households where the person may change things, not only read.
create function app_writable_household_ids() returns setof uuid
language sql stable security definer set search_path = ''
begin atomic
  select m.household_id from public.membership m
  where m.person_id = public.app_person_id() and m.role <> 'OBSERVER'::public.role;
end;

create function app_child_ids() returns setof uuid
language sql stable security definer set search_path = ''
begin atomic
  select r.child_id from public.residence r
  join public.membership m on m.household_id = r.household_id
  where m.person_id = public.app_person_id();
end;

create function app_writable_child_ids() returns setof uuid
language sql stable security definer set search_path = ''
begin atomic
  select r.child_id from public.residence r
  join public.membership m on m.household_id = r.household_id
  where m.person_id = public.app_person_id() and m.role <> 'OBSERVER'::public.role;
end;

-- Only carers of one's own households are seen by name, never those of a child's other home.
create function app_visible_person_ids() returns setof uuid
language sql stable security definer set search_path = ''
begin atomic
  select public.app_person_id()
  union
  select other.person_id from public.membership mine
  join public.membership other on other.household_id = mine.household_id
  where mine.person_id = public.app_person_id();
end;

create function app_appointed_school_ids() returns setof uuid
language sql stable security definer set search_path = ''
begin atomic
  select a.school_id from public.appointment a where a.person_id = public.app_person_id() and a.school_id is not null
  union
  select s.id from public.school s
  join public.appointment a on a.jurisdiction = s.jurisdiction
  where a.person_id = public.app_person_id();
end;

create function app_appointed_jurisdictions() returns setof text
language sql stable security definer set search_path = ''
begin atomic
  select a.jurisdiction from public.appointment a where a.person_id = public.app_person_id() and a.jurisdiction is not null;
end;

-- The one way in: the person behind a verified token, made on first sight.
create function app_sign_in(token_subject text, name text) returns uuid
language plpgsql security definer set search_path = ''
as $$
declare found uuid;
begin
  select p.id into found from public.person p where p.subject = token_subject;
  if found is null then
    insert into public.person (subject, display_name) values (token_subject, name)
    on conflict (subject) do update set subject = excluded.subject returning id into found;
  end if;
  return found;
end
$$;

-- A household has no member before its first, so no policy could admit the insert.
create function app_found_household(new_id uuid, new_name text, new_time_zone text, new_currency text) returns void
language plpgsql security definer set search_path = ''
as $$
begin
  if public.app_person_id() is null then
    raise exception 'no signed-in person' using errcode = '42501';
  end if;
  insert into public.household (id, name, time_zone, currency) values (new_id, new_name, new_time_zone, new_currency);
  insert into public.membership (household_id, person_id, role) values (new_id, public.app_person_id(), 'COORDINATOR');
end
$$;

-- Likewise a child has no home before its first residence.
create function app_found_child(new_id uuid, home uuid, new_name text, born date, lives_since date) returns void
language plpgsql security definer set search_path = ''
as $$
begin
  if home not in (select public.app_writable_household_ids()) then
    raise exception 'not a household of this person' using errcode = '42501';
  end if;
  insert into public.child (id, name, date_of_birth) values (new_id, new_name, born);
  insert into public.residence (child_id, household_id, since) values (new_id, home, lives_since);
end
$$;

revoke execute on all functions in schema public from public;
grant execute on function app_person_id(), app_household_ids(), app_writable_household_ids(), app_child_ids(),
  app_writable_child_ids(), app_visible_person_ids(), app_appointed_school_ids(), app_appointed_jurisdictions(),
  app_sign_in(text, text), app_found_household(uuid, text, text, text), app_found_child(uuid, uuid, text, date, date)
  to noonpail_app;

-- Reference data: everyone reads, nobody but the owner writes.
grant select on food, base, base_ingredient, dish, dish_base, dish_ingredient, dish_step, reference_table to noonpail_app;

-- The tables these functions read are not FORCEd: an owner that is not a superuser would otherwise call them through themselves.

-- Kitchen: by household.
alter table household enable row level security; alter table household force row level security;
-- FORCE binds an owner that is not a superuser, and app_found_household runs as the owner.
create policy household_found on household for insert to current_user with check (true);
create policy household_read on household for select using (id in (select app_household_ids()));
create policy household_change on household for update using (id in (select app_writable_household_ids())) with check (id in (select app_writable_household_ids()));
grant select, update (name, time_zone, week_start, unit_system, currency, keeps_out, refrigerator_ml, freezer_ml, revision) on household to noonpail_app;

alter table equipment enable row level security; alter table equipment force row level security;
create policy equipment_read on equipment for select using (household_id in (select app_household_ids()));
create policy equipment_add on equipment for insert with check (household_id in (select app_writable_household_ids()));
create policy equipment_change on equipment for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
create policy equipment_remove on equipment for delete using (household_id in (select app_writable_household_ids()));
grant select, insert, update (units), delete on equipment to noonpail_app;

alter table prep_time enable row level security; alter table prep_time force row level security;
create policy prep_time_read on prep_time for select using (household_id in (select app_household_ids()));
create policy prep_time_add on prep_time for insert with check (household_id in (select app_writable_household_ids()));
create policy prep_time_change on prep_time for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
create policy prep_time_remove on prep_time for delete using (household_id in (select app_writable_household_ids()));
grant select, insert, update (starts_at, hands_on_minutes, elapsed_minutes, carers, effort), delete on prep_time to noonpail_app;

alter table prep_time_exception enable row level security; alter table prep_time_exception force row level security;
create policy prep_time_exception_read on prep_time_exception for select using (household_id in (select app_household_ids()));
create policy prep_time_exception_add on prep_time_exception for insert with check (household_id in (select app_writable_household_ids()));
create policy prep_time_exception_change on prep_time_exception for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
create policy prep_time_exception_remove on prep_time_exception for delete using (household_id in (select app_writable_household_ids()));
grant select, insert, update (starts_at, hands_on_minutes, elapsed_minutes, carers), delete on prep_time_exception to noonpail_app;

alter table stock enable row level security; alter table stock force row level security;
create policy stock_read on stock for select using (household_id in (select app_household_ids()));
create policy stock_add on stock for insert with check (household_id in (select app_writable_household_ids()));
create policy stock_change on stock for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
create policy stock_remove on stock for delete using (household_id in (select app_writable_household_ids()));
grant select, insert, update (grams), delete on stock to noonpail_app;

alter table leftover enable row level security; alter table leftover force row level security;
create policy leftover_read on leftover for select using (household_id in (select app_household_ids()));
create policy leftover_add on leftover for insert with check (household_id in (select app_writable_household_ids()));
create policy leftover_change on leftover for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
create policy leftover_remove on leftover for delete using (household_id in (select app_writable_household_ids()));
grant select, insert, update (grams), delete on leftover to noonpail_app;

alter table freezer_stock enable row level security; alter table freezer_stock force row level security;
create policy freezer_stock_read on freezer_stock for select using (household_id in (select app_household_ids()));
create policy freezer_stock_add on freezer_stock for insert with check (household_id in (select app_writable_household_ids()));
create policy freezer_stock_change on freezer_stock for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
create policy freezer_stock_remove on freezer_stock for delete using (household_id in (select app_writable_household_ids()));
grant select, insert, update (grams), delete on freezer_stock to noonpail_app;

alter table label_check enable row level security; alter table label_check force row level security;
create policy label_check_read on label_check for select using (household_id in (select app_household_ids()));
create policy label_check_add on label_check for insert with check (household_id in (select app_writable_household_ids()));
create policy label_check_change on label_check for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
create policy label_check_remove on label_check for delete using (household_id in (select app_writable_household_ids()));
grant select, insert, update (contains, may_contain, kinds, read_on, read_by_id), delete on label_check to noonpail_app;

alter table child_body enable row level security; alter table child_body force row level security;
create policy child_body_read on child_body for select using (household_id in (select app_household_ids()));
create policy child_body_add on child_body for insert with check (household_id in (select app_writable_household_ids()) and child_id in (select app_child_ids()));
create policy child_body_change on child_body for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
create policy child_body_remove on child_body for delete using (household_id in (select app_writable_household_ids()));
grant select, insert, update (sex, weight_kg, height_cm), delete on child_body to noonpail_app;

alter table box_kit enable row level security; alter table box_kit force row level security;
create policy box_kit_read on box_kit for select using (household_id in (select app_household_ids()));
create policy box_kit_add on box_kit for insert with check (household_id in (select app_writable_household_ids()) and child_id in (select app_child_ids()));
create policy box_kit_change on box_kit for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
create policy box_kit_remove on box_kit for delete using (household_id in (select app_writable_household_ids()));
grant select, insert, update (compartments, cold_sources, insulated, flask), delete on box_kit to noonpail_app;

alter table leave_time enable row level security; alter table leave_time force row level security;
create policy leave_time_read on leave_time for select using (household_id in (select app_household_ids()));
create policy leave_time_add on leave_time for insert with check (household_id in (select app_writable_household_ids()) and child_id in (select app_child_ids()));
create policy leave_time_change on leave_time for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
create policy leave_time_remove on leave_time for delete using (household_id in (select app_writable_household_ids()));
grant select, insert, update (leave_at), delete on leave_time to noonpail_app;

alter table week enable row level security; alter table week force row level security;
create policy week_read on week for select using (household_id in (select app_household_ids()));
create policy week_add on week for insert with check (household_id in (select app_writable_household_ids()));
create policy week_change on week for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
grant select, insert, update (revision) on week to noonpail_app;

alter table week_plan enable row level security; alter table week_plan force row level security;
create policy week_plan_read on week_plan for select using (household_id in (select app_household_ids()));
create policy week_plan_add on week_plan for insert with check (household_id in (select app_writable_household_ids())
  and exists (select from week w where w.id = week_plan.week_id and w.household_id = week_plan.household_id));
create policy week_plan_change on week_plan for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
grant select, insert, update (state, agreed_at, comparison) on week_plan to noonpail_app;

alter table batch enable row level security; alter table batch force row level security;
create policy batch_read on batch for select using (household_id in (select app_household_ids()));
create policy batch_add on batch for insert with check (household_id in (select app_writable_household_ids())
  and exists (select from week_plan p where p.id = batch.week_plan_id and p.household_id = batch.household_id));
create policy batch_change on batch for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
grant select, insert, update (state) on batch to noonpail_app;

alter table task enable row level security; alter table task force row level security;
create policy task_read on task for select using (household_id in (select app_household_ids()));
create policy task_add on task for insert with check (household_id in (select app_writable_household_ids())
  and exists (select from week_plan p where p.id = task.week_plan_id and p.household_id = task.household_id));
create policy task_change on task for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
grant select, insert, update (state, taken_by_id) on task to noonpail_app;

alter table shopping_line enable row level security; alter table shopping_line force row level security;
create policy shopping_line_read on shopping_line for select using (household_id in (select app_household_ids()));
create policy shopping_line_add on shopping_line for insert with check (household_id in (select app_writable_household_ids())
  and exists (select from week_plan p where p.id = shopping_line.week_plan_id and p.household_id = shopping_line.household_id));
create policy shopping_line_change on shopping_line for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
grant select, insert, update (ticked) on shopping_line to noonpail_app;

alter table relaxation enable row level security; alter table relaxation force row level security;
create policy relaxation_read on relaxation for select using (household_id in (select app_household_ids()));
create policy relaxation_add on relaxation for insert with check (household_id in (select app_writable_household_ids()));
create policy relaxation_remove on relaxation for delete using (household_id in (select app_writable_household_ids()));
grant select, insert, delete on relaxation to noonpail_app;

alter table pin enable row level security; alter table pin force row level security;
create policy pin_read on pin for select using (household_id in (select app_household_ids()));
create policy pin_add on pin for insert with check (household_id in (select app_writable_household_ids()) and child_id in (select app_child_ids()));
create policy pin_change on pin for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
create policy pin_remove on pin for delete using (household_id in (select app_writable_household_ids()));
grant select, insert, update (dish_key), delete on pin to noonpail_app;

alter table box_packing enable row level security; alter table box_packing force row level security;
create policy box_packing_read on box_packing for select using (household_id in (select app_household_ids()));
create policy box_packing_add on box_packing for insert with check (household_id in (select app_writable_household_ids())
  and exists (select from lunch_box l join week_plan p on p.id = l.week_plan_id where l.id = box_packing.lunch_box_id and p.household_id = box_packing.household_id));
grant select, insert on box_packing to noonpail_app;

alter table box_item_note enable row level security; alter table box_item_note force row level security;
create policy box_item_note_read on box_item_note for select using (household_id in (select app_household_ids()));
create policy box_item_note_add on box_item_note for insert with check (household_id in (select app_writable_household_ids())
  and exists (select from box_item i join lunch_box l on l.id = i.lunch_box_id join week_plan p on p.id = l.week_plan_id
    where i.id = box_item_note.box_item_id and p.household_id = box_item_note.household_id));
grant select, insert on box_item_note to noonpail_app;

-- Child: both homes see; a box is changed by the home that packs it.
alter table child enable row level security; alter table child force row level security;
-- As for a household: app_found_child runs as the owner.
create policy child_found on child for insert to current_user with check (true);
create policy child_read on child for select using (id in (select app_child_ids()));
create policy child_change on child for update using (id in (select app_writable_child_ids())) with check (id in (select app_writable_child_ids()));
grant select, update (name, date_of_birth, diets, dislikes, appetite, activity, minutes_to_eat, revision) on child to noonpail_app;

alter table allergy enable row level security; alter table allergy force row level security;
create policy allergy_read on allergy for select using (child_id in (select app_child_ids()));
create policy allergy_add on allergy for insert with check (child_id in (select app_writable_child_ids()));
create policy allergy_change on allergy for update using (child_id in (select app_writable_child_ids())) with check (child_id in (select app_writable_child_ids()));
create policy allergy_remove on allergy for delete using (child_id in (select app_writable_child_ids()));
grant select, insert, update (avoid), delete on allergy to noonpail_app;

alter table residence_day enable row level security; alter table residence_day force row level security;
create policy residence_day_read on residence_day for select using (child_id in (select app_child_ids()));
create policy residence_day_add on residence_day for insert with check (child_id in (select app_writable_child_ids())
  and exists (select from residence r where r.child_id = residence_day.child_id and r.household_id = residence_day.household_id));
create policy residence_day_change on residence_day for update using (child_id in (select app_writable_child_ids())) with check (child_id in (select app_writable_child_ids())
  and exists (select from residence r where r.child_id = residence_day.child_id and r.household_id = residence_day.household_id));
create policy residence_day_remove on residence_day for delete using (child_id in (select app_writable_child_ids()));
grant select, insert, update (household_id), delete on residence_day to noonpail_app;

alter table enrolment enable row level security; alter table enrolment force row level security;
create policy enrolment_read on enrolment for select using (child_id in (select app_child_ids()));
create policy enrolment_add on enrolment for insert with check (child_id in (select app_writable_child_ids()));
create policy enrolment_change on enrolment for update using (child_id in (select app_writable_child_ids())) with check (child_id in (select app_writable_child_ids()));
grant select, insert, update (until_date) on enrolment to noonpail_app;

alter table school_meal_day enable row level security; alter table school_meal_day force row level security;
create policy school_meal_day_read on school_meal_day for select using (child_id in (select app_child_ids()));
create policy school_meal_day_add on school_meal_day for insert with check (child_id in (select app_writable_child_ids()));
create policy school_meal_day_remove on school_meal_day for delete using (child_id in (select app_writable_child_ids()));
grant select, insert, delete on school_meal_day to noonpail_app;

alter table absence enable row level security; alter table absence force row level security;
create policy absence_read on absence for select using (child_id in (select app_child_ids()));
create policy absence_add on absence for insert with check (child_id in (select app_writable_child_ids()));
create policy absence_change on absence for update using (child_id in (select app_writable_child_ids())) with check (child_id in (select app_writable_child_ids()));
create policy absence_remove on absence for delete using (child_id in (select app_writable_child_ids()));
grant select, insert, update (reason), delete on absence to noonpail_app;

alter table lunch_box enable row level security; alter table lunch_box force row level security;
create policy lunch_box_read on lunch_box for select using (child_id in (select app_child_ids()));
create policy lunch_box_add on lunch_box for insert with check (child_id in (select app_writable_child_ids())
  and exists (select from week_plan p where p.id = lunch_box.week_plan_id and p.household_id in (select app_writable_household_ids())));
create policy lunch_box_change on lunch_box for update using (exists (select from week_plan p where p.id = lunch_box.week_plan_id and p.household_id in (select app_writable_household_ids())))
  with check (child_id in (select app_writable_child_ids()) and exists (select from week_plan p where p.id = lunch_box.week_plan_id and p.household_id in (select app_writable_household_ids())));
grant select, insert, update (state, packed_at, current) on lunch_box to noonpail_app;

alter table box_item enable row level security; alter table box_item force row level security;
create policy box_item_read on box_item for select using (child_id in (select app_child_ids()));
create policy box_item_add on box_item for insert with check (exists (select from lunch_box l join week_plan p on p.id = l.week_plan_id
  where l.id = box_item.lunch_box_id and l.child_id = box_item.child_id and p.household_id in (select app_writable_household_ids())));
grant select, insert on box_item to noonpail_app;

-- Tables the functions above read.
alter table membership enable row level security;
create policy membership_read on membership for select using (household_id in (select app_household_ids()));
grant select on membership to noonpail_app;

alter table residence enable row level security;
create policy residence_read on residence for select using (child_id in (select app_child_ids()));
grant select on residence to noonpail_app;

alter table appointment enable row level security;
create policy appointment_read on appointment for select using (person_id = app_person_id());
grant select on appointment to noonpail_app;

alter table person enable row level security;
create policy person_read on person for select using (id in (select app_visible_person_ids()));
create policy person_change on person for update using (id = app_person_id()) with check (id = app_person_id());
grant select, update (display_name) on person to noonpail_app;

-- Schools: every signed-in person reads; the appointed administrator writes.
alter table school enable row level security;
create policy school_read on school for select using (app_person_id() is not null);
create policy school_change on school for update using (id in (select app_appointed_school_ids())) with check (id in (select app_appointed_school_ids()));
grant select, update (name, time_zone) on school to noonpail_app;

alter table school_class enable row level security; alter table school_class force row level security;
create policy school_class_read on school_class for select using (app_person_id() is not null);
create policy school_class_add on school_class for insert with check (school_id in (select app_appointed_school_ids()));
create policy school_class_change on school_class for update using (school_id in (select app_appointed_school_ids())) with check (school_id in (select app_appointed_school_ids()));
grant select, insert, update (name, facility) on school_class to noonpail_app;

alter table class_break enable row level security; alter table class_break force row level security;
create policy class_break_read on class_break for select using (app_person_id() is not null);
create policy class_break_add on class_break for insert with check (school_class_id in (select c.id from school_class c where c.school_id in (select app_appointed_school_ids())));
create policy class_break_change on class_break for update using (school_class_id in (select c.id from school_class c where c.school_id in (select app_appointed_school_ids()))) with check (school_class_id in (select c.id from school_class c where c.school_id in (select app_appointed_school_ids())));
create policy class_break_remove on class_break for delete using (school_class_id in (select c.id from school_class c where c.school_id in (select app_appointed_school_ids())));
grant select, insert, update (name, starts_at, minutes, slots, energy_share), delete on class_break to noonpail_app;

alter table school_term enable row level security; alter table school_term force row level security;
create policy school_term_read on school_term for select using (app_person_id() is not null);
create policy school_term_add on school_term for insert with check (school_id in (select app_appointed_school_ids()));
create policy school_term_change on school_term for update using (school_id in (select app_appointed_school_ids())) with check (school_id in (select app_appointed_school_ids()));
create policy school_term_remove on school_term for delete using (school_id in (select app_appointed_school_ids()));
grant select, insert, update (name, first_day, last_day), delete on school_term to noonpail_app;

alter table school_day enable row level security; alter table school_day force row level security;
create policy school_day_read on school_day for select using (app_person_id() is not null);
create policy school_day_add on school_day for insert with check (school_id in (select app_appointed_school_ids()));
create policy school_day_change on school_day for update using (school_id in (select app_appointed_school_ids())) with check (school_id in (select app_appointed_school_ids()));
create policy school_day_remove on school_day for delete using (school_id in (select app_appointed_school_ids()));
grant select, insert, update (kind, title, ends_at), delete on school_day to noonpail_app;

alter table rule_set enable row level security; alter table rule_set force row level security;
create policy rule_set_read on rule_set for select using ((layer <> 'CHILD' and app_person_id() is not null) or child_id in (select app_child_ids()));
create policy rule_set_add on rule_set for insert with check ((school_id in (select app_appointed_school_ids()))
    or (school_class_id in (select c.id from school_class c where c.school_id in (select app_appointed_school_ids())))
    or (jurisdiction in (select app_appointed_jurisdictions()))
    or (child_id in (select app_writable_child_ids())));
create policy rule_set_change on rule_set for update using ((school_id in (select app_appointed_school_ids()))
    or (school_class_id in (select c.id from school_class c where c.school_id in (select app_appointed_school_ids())))
    or (jurisdiction in (select app_appointed_jurisdictions()))
    or (child_id in (select app_writable_child_ids()))) with check ((school_id in (select app_appointed_school_ids()))
    or (school_class_id in (select c.id from school_class c where c.school_id in (select app_appointed_school_ids())))
    or (jurisdiction in (select app_appointed_jurisdictions()))
    or (child_id in (select app_writable_child_ids())));
grant select, insert, update (confirmed) on rule_set to noonpail_app;

alter table rule_set_version enable row level security; alter table rule_set_version force row level security;
create policy rule_set_version_read on rule_set_version for select using (rule_set_id in (select id from rule_set));
create policy rule_set_version_add on rule_set_version for insert with check (rule_set_id in (select r.id from rule_set r where (school_id in (select app_appointed_school_ids()))
    or (school_class_id in (select c.id from school_class c where c.school_id in (select app_appointed_school_ids())))
    or (jurisdiction in (select app_appointed_jurisdictions()))
    or (child_id in (select app_writable_child_ids()))));
create policy rule_set_version_change on rule_set_version for update using (rule_set_id in (select r.id from rule_set r where (school_id in (select app_appointed_school_ids()))
    or (school_class_id in (select c.id from school_class c where c.school_id in (select app_appointed_school_ids())))
    or (jurisdiction in (select app_appointed_jurisdictions()))
    or (child_id in (select app_writable_child_ids())))) with check (rule_set_id in (select r.id from rule_set r where (school_id in (select app_appointed_school_ids()))
    or (school_class_id in (select c.id from school_class c where c.school_id in (select app_appointed_school_ids())))
    or (jurisdiction in (select app_appointed_jurisdictions()))
    or (child_id in (select app_writable_child_ids()))));
-- Who loaded a child's own rules is the loading home's business.
grant select (id, rule_set_id, version, title, language, covers_food_from_home, in_force_from, in_force_until, loaded_at), insert, update (in_force_until) on rule_set_version to noonpail_app;

alter table rule enable row level security; alter table rule force row level security;
create policy rule_read on rule for select using (rule_set_version_id in (select id from rule_set_version));
create policy rule_add on rule for insert with check (rule_set_version_id in (select v.id from rule_set_version v join rule_set r on r.id = v.rule_set_id where (school_id in (select app_appointed_school_ids()))
    or (school_class_id in (select c.id from school_class c where c.school_id in (select app_appointed_school_ids())))
    or (jurisdiction in (select app_appointed_jurisdictions()))
    or (child_id in (select app_writable_child_ids()))));
grant select, insert on rule to noonpail_app;

alter table rule_set_adoption enable row level security; alter table rule_set_adoption force row level security;
create policy rule_set_adoption_read on rule_set_adoption for select using (app_person_id() is not null);
create policy rule_set_adoption_add on rule_set_adoption for insert with check (school_id in (select app_appointed_school_ids()));
create policy rule_set_adoption_remove on rule_set_adoption for delete using (school_id in (select app_appointed_school_ids()));
grant select, insert, delete on rule_set_adoption to noonpail_app;

-- Answers kept for repeated requests: each person sees their own.
alter table idempotency_key enable row level security; alter table idempotency_key force row level security;
create policy idempotency_key_read on idempotency_key for select using (person_id = app_person_id());
create policy idempotency_key_add on idempotency_key for insert with check (person_id = app_person_id());
create policy idempotency_key_change on idempotency_key for update using (person_id = app_person_id()) with check (person_id = app_person_id());
grant select, insert, update (outcome) on idempotency_key to noonpail_app;

-- Ranges. A value outside is a bug of the server, which checks first and answers with a typed refusal.
alter table child add constraint child_ranges check (appetite between 0.5 and 2 and minutes_to_eat between 5 and 90 and length(name) between 1 and 80
  and activity in ('INACTIVE', 'LOW_ACTIVE', 'ACTIVE', 'VERY_ACTIVE') and revision >= 1);
alter table child_body add constraint child_body_ranges check ((sex is null or sex in ('FEMALE', 'MALE'))
  and (weight_kg is null or weight_kg between 5 and 200) and (height_cm is null or height_cm between 50 and 220));
alter table allergy add constraint allergy_names_one check (num_nonnulls(allergen, food_kind) = 1);
create unique index allergy_once on allergy (child_id, coalesce(allergen, ''), coalesce(food_kind, ''));
alter table household add constraint household_ranges check (length(name) between 1 and 80 and currency ~ '^[A-Z]{3}$'
  and refrigerator_ml between 0 and 1000000 and freezer_ml between 0 and 1000000 and revision >= 1
  and week_start in ('MONDAY', 'SUNDAY', 'SATURDAY') and unit_system in ('METRIC', 'US_CUSTOMARY'));
alter table equipment add constraint equipment_units check (units between 0 and 12);
alter table prep_time add constraint prep_time_ranges check (kind in ('WEEKEND', 'EVENING', 'MORNING') and hands_on_minutes between 0 and 600
  and elapsed_minutes between 0 and 720 and carers between 1 and 6 and effort between 0 and 1000 and starts_at ~ '^([01]\d|2[0-3]):[0-5]\d$');
alter table prep_time_exception add constraint prep_time_exception_ranges check (kind in ('WEEKEND', 'EVENING', 'MORNING')
  and hands_on_minutes between 0 and 600 and elapsed_minutes between 0 and 720 and carers between 1 and 6 and starts_at ~ '^([01]\d|2[0-3]):[0-5]\d$');
alter table stock add constraint stock_grams check (grams between 0 and 100000);
alter table leftover add constraint leftover_ranges check (grams between 1 and 20000 and last_safe_day >= cooked_on);
alter table freezer_stock add constraint freezer_stock_ranges check (grams between 1 and 50000 and use_by >= frozen_on);
alter table box_kit add constraint box_kit_ranges check (cold_sources between 0 and 6);
alter table leave_time add constraint leave_time_clock check (leave_at ~ '^([01]\d|2[0-3]):[0-5]\d$');
alter table class_break add constraint class_break_ranges check (minutes between 5 and 120 and energy_share between 0 and 1 and starts_at ~ '^([01]\d|2[0-3]):[0-5]\d$');
alter table school_term add constraint school_term_order check (last_day >= first_day);
alter table enrolment add constraint enrolment_order check (until_date is null or until_date >= from_date);
alter table rule_set add constraint rule_set_one_owner check (case layer
  when 'SCHOOL' then num_nonnulls(school_id) = 1 and num_nonnulls(school_class_id, child_id, jurisdiction) = 0
  when 'CLASS' then num_nonnulls(school_class_id) = 1 and num_nonnulls(school_id, child_id, jurisdiction) = 0
  when 'CHILD' then num_nonnulls(child_id) = 1 and num_nonnulls(school_id, school_class_id, jurisdiction) = 0
  else num_nonnulls(jurisdiction) = 1 and num_nonnulls(school_id, school_class_id, child_id) = 0 end);
alter table rule_set_version add constraint rule_set_version_ranges check (version >= 1 and (in_force_until is null or in_force_until >= in_force_from));
alter table rule add constraint rule_level check (level in ('FORBID', 'ADVISE'));
alter table week add constraint week_revision check (revision >= 0);
alter table week_plan add constraint week_plan_ranges check (number >= 1 and steps >= 0 and seed between 0 and 4294967295);
alter table box_item add constraint box_item_ranges check (grams > 0 and grams <= 2000 and (pieces is null or pieces > 0) and place >= 0);
alter table batch add constraint batch_ranges check (batches between 1 and 10 and grams > 0 and spare_grams >= 0);
alter table task add constraint task_ranges check (hands_on_minutes >= 0 and passive_minutes >= 0 and carer >= 0);
alter table shopping_line add constraint shopping_line_ranges check (needed_grams >= 0 and from_stock_grams >= 0 and packs >= 0 and pack_grams > 0 and spare_grams >= 0 and cost_minor >= 0);
alter table idempotency_key add constraint idempotency_key_length check (length(key) between 8 and 100);
-- One current box per child and day in each home's week; a child never has two boxes to carry.
-- Keys are unique per owner: two families may both call their copy "own-rules".
create unique index rule_set_key_per_owner on rule_set (key, coalesce(school_id::text, school_class_id::text, child_id::text, jurisdiction));
create unique index lunch_box_one_current on lunch_box (child_id, date) where current;

-- Announcements: what changed, as keys only; each server asks again with the reader's own rights.
create function announce_week_plan() returns trigger
language plpgsql set search_path = ''
as $$
begin
  perform pg_catalog.pg_notify('noonpail', pg_catalog.json_build_object('kind', 'PLAN_CHANGED', 'householdId', new.household_id, 'weekId', new.id, 'weekStart', new.week_start, 'revision', new.revision)::text);
  return new;
end
$$;
create trigger week_announce after update on week for each row execute function announce_week_plan();
revoke execute on function announce_week_plan() from public;
