-- Erasing a child, a household or a person: rows really go, and what stays are numbers without keys. Whoever did something is named
-- by a foreign key from here on, so that the name goes with the person.
CREATE TABLE "erasure_request" (
    "child_id" UUID NOT NULL,
    "household_id" UUID NOT NULL,
    "asked_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "erasure_request_pkey" PRIMARY KEY ("child_id","household_id")
);

CREATE TABLE "erasure_count" (
    "month" DATE NOT NULL,
    "kind" TEXT NOT NULL,
    "count" INTEGER NOT NULL,

    CONSTRAINT "erasure_count_pkey" PRIMARY KEY ("month","kind")
);
CREATE INDEX "erasure_request_household_id_idx" ON "erasure_request"("household_id");
CREATE INDEX "label_check_read_by_id_idx" ON "label_check"("read_by_id");
CREATE INDEX "own_food_label_read_by_id_idx" ON "own_food_label"("read_by_id");
CREATE INDEX "task_taken_by_id_idx" ON "task"("taken_by_id");
CREATE INDEX "week_plan_created_by_id_idx" ON "week_plan"("created_by_id");
ALTER TABLE "label_check" ADD CONSTRAINT "label_check_read_by_id_fkey" FOREIGN KEY ("read_by_id") REFERENCES "person"("id") ON DELETE SET NULL ON UPDATE CASCADE;
ALTER TABLE "erasure_request" ADD CONSTRAINT "erasure_request_child_id_household_id_fkey" FOREIGN KEY ("child_id", "household_id") REFERENCES "residence"("child_id", "household_id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "week_plan" ADD CONSTRAINT "week_plan_created_by_id_fkey" FOREIGN KEY ("created_by_id") REFERENCES "person"("id") ON DELETE SET NULL ON UPDATE CASCADE;
ALTER TABLE "task" ADD CONSTRAINT "task_taken_by_id_fkey" FOREIGN KEY ("taken_by_id") REFERENCES "person"("id") ON DELETE SET NULL ON UPDATE CASCADE;
ALTER TABLE "own_food_label" ADD CONSTRAINT "own_food_label_read_by_id_fkey" FOREIGN KEY ("read_by_id") REFERENCES "person"("id") ON DELETE SET NULL ON UPDATE CASCADE;

alter table erasure_count add constraint erasure_count_kind check (kind in ('CHILD', 'HOUSEHOLD', 'PERSON') and count >= 1);

-- A task that its holder's leaving frees is open again.
create function task_given_back() returns trigger language plpgsql set search_path = '' as $$
begin
  new.state := 'OPEN';
  new.taken_at := null;
  return new;
end
$$;
revoke execute on function task_given_back() from public;
create trigger task_given_back before update of taken_by_id on task for each row
  when (new.taken_by_id is null and new.state = 'TAKEN') execute function task_given_back();

-- Both homes see that one of them asks; a coordinator of that home takes it back. It is written by app_erase_child alone.
alter table erasure_request enable row level security; alter table erasure_request force row level security;
create policy erasure_request_read on erasure_request for select using (child_id in (select app_child_ids()));
create policy erasure_request_remove on erasure_request for delete using (household_id in (select m.household_id from membership m
  where m.person_id = app_person_id() and m.role = 'COORDINATOR'));
grant select, delete on erasure_request to noonpail_app;

-- Only inside the functions below, and only for the owner they run as; the server's role is another and gains nothing by the setting.
create function app_erasing() returns boolean
language sql stable set search_path = ''
return coalesce(current_setting('app.erasing', true), '') = 'on';
revoke execute on function app_erasing() from public;

-- The counts are the operator's to read.
alter table erasure_count enable row level security; alter table erasure_count force row level security;
create policy erasure_count_read on erasure_count for select to current_user using (app_person_id() is null);
grant select on erasure_count to noonpail_app;

-- FORCE binds an owner that is not a superuser. A table that a later migration adds needs the same policy.
do $$
declare name text;
begin
  for name in select c.relname from pg_class c
    where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' and c.relforcerowsecurity loop
    execute format('create policy %I on %I for all to current_user using (app_erasing()) with check (app_erasing())', name || '_erase', name);
  end loop;
end
$$;

-- A document without what is gone: out of lists go its key, texts that hold it, objects that are about it or about it alone; what
-- else names it becomes null.
create function app_without(document jsonb, gone text) returns jsonb
language plpgsql immutable set search_path = ''
as $$
begin
  if strpos(document::text, gone) = 0 then
    return document;
  elsif jsonb_typeof(document) = 'array' then
    return coalesce((select jsonb_agg(public.app_without(e.entry, gone) order by e.place)
      from jsonb_array_elements(document) with ordinality e (entry, place)
      where case jsonb_typeof(e.entry)
        when 'string' then strpos(e.entry #>> '{}', gone) = 0
        when 'object' then not exists (select from jsonb_each(e.entry) m (name, member)
          where m.member = to_jsonb(gone) or m.member = jsonb_build_array(gone))
        else true end), '[]');
  elsif jsonb_typeof(document) = 'object' then
    return coalesce((select jsonb_object_agg(m.name, public.app_without(m.member, gone))
      from jsonb_each(document) m (name, member) where strpos(m.name, gone) = 0), '{}');
  end if;
  return 'null';
end
$$;

-- Takes a key out of whatever these homes keep, column by column of the tables there are: out of lists and documents, and with
-- the row where a text holds it. The log keeps its keys.
create function app_scrub(gone uuid, homes uuid[]) returns void
language plpgsql set search_path = ''
as $$
declare
  part record;
  pattern text := '%' || gone || '%';
begin
  for part in
    select c.relname as name, a.attname as col, format_type(a.atttypid, null) as type
    from pg_catalog.pg_class c join pg_catalog.pg_attribute a on a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped
    where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' and c.relname not in ('change', 'change_count')
      and format_type(a.atttypid, null) in ('jsonb', 'uuid[]', 'text[]', 'text')
      and exists (select from pg_catalog.pg_attribute h where h.attrelid = c.oid and h.attname = 'household_id')
    order by 1, 2
  loop
    if part.type = 'text' then
      execute format('delete from public.%I where household_id = any ($1) and %I like $2', part.name, part.col) using homes, pattern;
    elsif part.type = 'jsonb' then
      execute format('update public.%1$I set %2$I = public.app_without(%2$I, $3) where household_id = any ($1) and %2$I::text like $2', part.name, part.col)
        using homes, pattern, gone::text;
    elsif part.type = 'uuid[]' then
      execute format('update public.%1$I set %2$I = array_remove(%2$I, $2) where household_id = any ($1) and $2 = any (%2$I)', part.name, part.col)
        using homes, gone;
    else
      execute format('update public.%1$I set %2$I = array(select e from unnest(%2$I) e where e not like $2) where household_id = any ($1) and %2$I::text like $2', part.name, part.col)
        using homes, pattern;
    end if;
  end loop;
end
$$;

-- Answers that were kept, first steps of confirmations, and jobs that wait, wherever they name it. A job that rechecks boxes of
-- others as well goes on without it.
create function app_forget_traces(gone uuid) returns void
language plpgsql set search_path = ''
as $$
declare pattern text := '%' || gone || '%';
begin
  delete from public.idempotency_key k where k.outcome::text like pattern;
  delete from public.confirmation c where c.about like pattern;
  update public.change_detail d set before = public.app_without(d.before, gone::text), after = public.app_without(d.after, gone::text)
    where d.before::text like pattern or d.after::text like pattern;
  if to_regclass('noonpail_jobs.job') is not null then
    execute 'delete from noonpail_jobs.job where $1 in (data ->> ''householdId'', data ->> ''personId'')' using gone::text;
    execute 'update noonpail_jobs.job set data = public.app_without(data, $2), output = public.app_without(output, $2)
      where data::text like $1 or output::text like $1' using pattern, gone::text;
    execute 'delete from noonpail_jobs.archive where data::text like $1 or output::text like $1' using pattern;
  end if;
end
$$;

-- What has to stand still while a child or a home goes, in the order in which everybody takes it: verdicts of the homes (plans are
-- stored under them), the homes, then where the children live.
create function app_hold_homes(of_homes uuid[], of_children uuid[]) returns void
language plpgsql set search_path = ''
as $$
declare held uuid;
begin
  for held in select distinct h from unnest(of_homes) h order by 1 loop
    perform pg_catalog.pg_advisory_xact_lock(pg_catalog.hashtextextended('verdicts/' || held, 0));
  end loop;
  perform from public.household h where h.id = any (of_homes) order by h.id for update;
  perform from public.residence r where r.child_id = any (of_children) order by r.id for update;
end
$$;

create function app_count_erased(of_kind text) returns void
language sql set search_path = ''
begin atomic
  insert into public.erasure_count as e (month, kind, count) values (date_trunc('month', now())::date, of_kind, 1)
  on conflict (month, kind) do update set count = e.count + 1;
end;

-- The child's own rows go by foreign key. Weeks of every home that ever packed for the child stay, without the child in them; save
-- those of a home that goes as well.
create function app_forget_child(gone uuid, going_home uuid) returns void
language plpgsql set search_path = ''
as $$
declare homes uuid[];
begin
  homes := array_remove(array(select r.household_id from public.residence r where r.child_id = gone
    union select p.household_id from public.lunch_box l join public.week_plan p on p.id = l.week_plan_id where l.child_id = gone), going_home);
  update public.week w set revision = w.revision + 1 where w.id in (select p.week_id from public.week_plan p
    join public.lunch_box l on l.week_plan_id = p.id where l.child_id = gone and l.current);
  delete from public.plan_certificate k where k.household_id = any (homes); -- it holds the whole problem
  update public.week_plan p set problem_hash = '-' where p.household_id = any (homes); -- so that a proof under way is not kept
  delete from public.task t where t.household_id = any (homes) and t.child_ids = array[gone];
  delete from public.child c where c.id = gone;
  perform public.app_scrub(gone, homes);
  delete from public.batch b where b.household_id = any (homes) and b.feeds = '[]' and b.state = 'OPEN';
  perform public.app_forget_traces(gone);
  -- Last, for the going of the rows is itself written down.
  if to_regclass('public.change_detail') is not null then
    execute 'delete from public.change_detail d using public.change c where c.id = d.change_id and c.child_id = $1' using gone;
  end if;
  perform public.app_count_erased('CHILD');
end
$$;

-- One entry in the log of every home that has to take a child out of what it shows, or knows another home no more.
create function app_tell_of_erasure(homes uuid[], of_kind text, of_verb text, child uuid) returns void
language sql set search_path = ''
begin atomic
  select public.app_record_change(homes, of_kind, of_verb, child, child, null, '{}', '{}');
end;

-- Children who live nowhere else go with the household. For those who stay nothing becomes less strict: an allergy recorded here is
-- the other home's record from now on, and a rule that rests on a note kept here holds again. Answers who stays.
create function app_forget_household(gone uuid) returns uuid[]
language plpgsql set search_path = ''
as $$
declare
  staying uuid[];
  alone uuid;
  part record;
  children uuid[] := array(select r.child_id from public.residence r where r.household_id = gone);
begin
  perform public.app_hold_homes(array(select r.household_id from public.residence r where r.child_id = any (children)) || gone, children);
  for alone in select r.child_id from public.residence r where r.household_id = gone
    and not exists (select from public.residence o where o.child_id = r.child_id and o.household_id <> gone) loop
    perform public.app_forget_child(alone, gone);
  end loop;
  staying := array(select r.child_id from public.residence r where r.household_id = gone);
  for part in
    select a.id, a.child_id, a.allergen, a.food_kind, a.avoid, (select r.household_id from public.residence r
      where r.child_id = a.child_id and r.household_id <> gone order by r.since, r.household_id limit 1) as heir
    from public.allergy a where a.recorded_by_household_id = gone
  loop
    if exists (select from public.allergy o where o.child_id = part.child_id and o.recorded_by_household_id = part.heir
        and o.allergen is not distinct from part.allergen and o.food_kind is not distinct from part.food_kind) then
      update public.allergy o set avoid = 'TRACES' where part.avoid = 'TRACES' and o.child_id = part.child_id
        and o.recorded_by_household_id = part.heir
        and o.allergen is not distinct from part.allergen and o.food_kind is not distinct from part.food_kind;
      delete from public.allergy a where a.id = part.id;
    else
      update public.allergy a set recorded_by_household_id = part.heir where a.id = part.id;
    end if;
  end loop;
  delete from public.exemption e where e.child_id = any (staying)
    and e.id in (select n.exemption_id from public.exemption_note n where n.household_id = gone);
  -- What both homes of a child keep and that names homes in a list, such as a pattern of nights, holds no longer.
  for part in
    select c.relname as name, a.attname as col
    from pg_catalog.pg_class c join pg_catalog.pg_attribute a on a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped
    where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' and format_type(a.atttypid, null) = 'uuid[]'
      and exists (select from pg_catalog.pg_attribute h where h.attrelid = c.oid and h.attname = 'child_id')
      and not exists (select from pg_catalog.pg_attribute h where h.attrelid = c.oid and h.attname = 'household_id')
  loop
    execute format('delete from public.%I where child_id = any ($1) and $2 = any (%I)', part.name, part.col) using staying, gone;
  end loop;
  perform public.app_forget_traces(gone);
  delete from public.own_dish_food f where f.household_id = gone; -- foods that dishes are made of do not go before the dishes
  delete from public.household h where h.id = gone;
  for alone in select unnest(staying) loop
    perform public.app_tell_of_erasure(public.app_homes_of(alone), 'HOME', 'CHANGED', alone);
  end loop;
  perform public.app_count_erased('HOUSEHOLD');
  return staying;
end
$$;

create function app_coordinates(home uuid) returns boolean
language sql stable set search_path = ''
begin atomic
  select exists (select from public.membership m
    where m.household_id = home and m.person_id = public.app_person_id() and m.role = 'COORDINATOR'::public.role);
end;

-- ERASED; or AGREEMENT_NEEDED where another home has not asked for the same within thirty days: then this home's asking is kept.
create function app_erase_child(gone uuid, home uuid) returns text
language plpgsql security definer set search_path = ''
as $$
declare
  agreed boolean;
  told uuid[];
begin
  if not public.app_coordinates(home) or not exists (select from public.residence r where r.child_id = gone and r.household_id = home) then
    raise exception 'not a coordinator of a home of this child' using errcode = '42501';
  end if;
  perform set_config('app.erasing', 'on', true);
  perform public.app_hold_homes(public.app_homes_of(gone), array[gone]);
  -- Two homes that ask at once wait here for each other: the second finds the first one's asking.
  perform from public.child c where c.id = gone for update;
  insert into public.erasure_request (child_id, household_id) values (gone, home)
  on conflict (child_id, household_id) do update set asked_at = now();
  agreed := not exists (select from public.residence r where r.child_id = gone and not exists (select from public.erasure_request e
    where e.child_id = gone and e.household_id = r.household_id and e.asked_at > now() - interval '30 days'));
  if agreed then
    told := public.app_homes_of(gone);
    perform public.app_forget_child(gone, null);
    perform public.app_tell_of_erasure(told, 'CHILD', 'REMOVED', gone);
  else
    perform public.app_tell_of_erasure(public.app_homes_of(gone), 'CHILD', 'CHANGED', gone);
  end if;
  perform set_config('app.erasing', '', true);
  return case when agreed then 'ERASED' else 'AGREEMENT_NEEDED' end;
end
$$;

-- Answers the children who stay in another home.
create function app_erase_household(gone uuid) returns uuid[]
language plpgsql security definer set search_path = ''
as $$
declare staying uuid[];
begin
  if not public.app_coordinates(gone) then
    raise exception 'not a coordinator of this household' using errcode = '42501';
  end if;
  perform set_config('app.erasing', 'on', true);
  -- What its carers listen to ends with it.
  perform pg_catalog.pg_notify('noonpail', pg_catalog.json_build_object('kind', 'CARER_LEFT', 'householdId', gone, 'personId', m.person_id)::text)
    from public.membership m where m.household_id = gone;
  staying := public.app_forget_household(gone);
  perform set_config('app.erasing', '', true);
  return staying;
end
$$;

-- The person of this transaction and nobody else. ERASED; or, with nothing changed, LAST_COORDINATOR of a household that others
-- belong to, LAST_ADMINISTRATOR of a jurisdiction, or HOUSEHOLDS_LEFT where they are a household's only carer and did not say that it goes too.
create function app_erase_me(with_households boolean, out outcome text, out staying uuid[], out jurisdiction text)
language plpgsql security definer set search_path = ''
as $$
#variable_conflict use_column
declare
  me uuid := public.app_person_id();
  own uuid;
  alone_in text;
begin
  staying := '{}';
  if me is null then
    raise exception 'no signed-in person' using errcode = '42501';
  end if;
  -- Two coordinators who go at once wait here for one another, and so do two administrators.
  perform from public.membership m where m.household_id in (select n.household_id from public.membership n where n.person_id = me)
    order by m.id for update;
  -- Somebody who joins one of these homes at this moment is waited for: their row holds the household's.
  perform set_config('app.erasing', 'on', true);
  perform from public.household h where h.id in (select n.household_id from public.membership n where n.person_id = me) order by h.id for update;
  perform set_config('app.erasing', '', true);
  perform from public.appointment a where a.jurisdiction in (select b.jurisdiction from public.appointment b where b.person_id = me)
    order by a.id for update;
  select min(a.jurisdiction) into alone_in from public.appointment a where a.person_id = me and a.jurisdiction is not null
    and not exists (select from public.appointment o where o.jurisdiction = a.jurisdiction and o.person_id <> me);
  if exists (select from public.membership m where m.person_id = me and m.role = 'COORDINATOR'
      and exists (select from public.membership o where o.household_id = m.household_id and o.person_id <> me)
      and not exists (select from public.membership o where o.household_id = m.household_id and o.person_id <> me and o.role = 'COORDINATOR')) then
    outcome := 'LAST_COORDINATOR';
  elsif alone_in is not null then
    outcome := 'LAST_ADMINISTRATOR';
    jurisdiction := alone_in;
  elsif not with_households and exists (select from public.membership m where m.person_id = me
      and not exists (select from public.membership o where o.household_id = m.household_id and o.person_id <> me)) then
    outcome := 'HOUSEHOLDS_LEFT';
  else
    outcome := 'ERASED';
    perform set_config('app.erasing', 'on', true);
    for own in select m.household_id from public.membership m where m.person_id = me
      and not exists (select from public.membership o where o.household_id = m.household_id and o.person_id <> me) loop
      staying := staying || public.app_forget_household(own);
    end loop;
    -- What administrators did stays listed; who did it is nobody any more.
    update public.audit_entry e set person_id = case when e.person_id = me then '00000000-0000-0000-0000-000000000000' else e.person_id end,
      details = public.app_without(e.details, me::text)
    where e.person_id = me or e.details::text like '%' || me || '%';
    perform public.app_forget_traces(me);
    -- Those who stay hear that a carer is gone and that what they held is open.
    update public.week w set revision = w.revision + 1 where w.id in (select p.week_id from public.task t join public.week_plan p on p.id = t.week_plan_id
      where t.taken_by_id = me and t.state = 'TAKEN' and p.state <> 'REPLACED');
    for own in select m.household_id from public.membership m where m.person_id = me order by 1 loop
      perform public.app_record_change(array[own], 'CARER', 'REMOVED', me, null, null, '{}', '{}');
      perform pg_catalog.pg_notify('noonpail', pg_catalog.json_build_object('kind', 'CARER_LEFT', 'householdId', own, 'personId', me)::text);
    end loop;
    update public.change c set person_id = null where c.person_id = me;
    delete from public.person p where p.id = me;
    perform public.app_count_erased('PERSON');
    perform set_config('app.erasing', '', true);
    -- Servers remember who a token's subject is.
    perform pg_catalog.pg_notify('noonpail', pg_catalog.json_build_object('kind', 'PERSON_ERASED', 'personId', me)::text);
  end if;
end
$$;

-- Nothing but who did it may leave the list, and only with that person.
create or replace function audit_entry_stays() returns trigger language plpgsql set search_path = '' as $$
begin
  if tg_op = 'UPDATE' and coalesce(current_setting('app.erasing', true), '') = 'on'
    and to_jsonb(new) - array['person_id', 'details'] = to_jsonb(old) - array['person_id', 'details'] then
    return new;
  end if;
  raise exception 'what administrators did is never changed or removed' using errcode = '42501';
end
$$;

revoke execute on function app_without(jsonb, text), app_scrub(uuid, uuid[]), app_forget_traces(uuid), app_count_erased(text),
  app_tell_of_erasure(uuid[], text, text, uuid), app_hold_homes(uuid[], uuid[]), app_forget_child(uuid, uuid), app_forget_household(uuid), app_coordinates(uuid), app_erase_child(uuid, uuid), app_erase_household(uuid),
  app_erase_me(boolean) from public;
grant execute on function app_erase_child(uuid, uuid), app_erase_household(uuid), app_erase_me(boolean) to noonpail_app;
