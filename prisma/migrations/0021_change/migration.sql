-- What changed, household by household: the log, the live stream and the way to catch up are one list. An entry carries keys and
-- codes and stays; what the row said before and after lies in a row of its own, which can be erased.
CREATE TABLE "change_count" (
    "household_id" UUID NOT NULL,
    "last" BIGINT NOT NULL DEFAULT 0,

    CONSTRAINT "change_count_pkey" PRIMARY KEY ("household_id")
);

CREATE TABLE "change" (
    "id" BIGSERIAL NOT NULL,
    "household_id" UUID NOT NULL,
    "seq" BIGINT,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "person_id" UUID,
    "kind" TEXT NOT NULL,
    "verb" TEXT NOT NULL,
    "subject_id" UUID NOT NULL,
    "child_id" UUID,
    "date" DATE,

    CONSTRAINT "change_pkey" PRIMARY KEY ("id")
);

CREATE TABLE "change_detail" (
    "change_id" BIGINT NOT NULL,
    "household_id" UUID NOT NULL,
    "before" JSONB NOT NULL,
    "after" JSONB NOT NULL,

    CONSTRAINT "change_detail_pkey" PRIMARY KEY ("change_id")
);

CREATE UNIQUE INDEX "change_household_id_seq_key" ON "change"("household_id", "seq");
CREATE INDEX "change_child_id_idx" ON "change"("child_id");
CREATE INDEX "change_detail_household_id_idx" ON "change_detail"("household_id");
create index change_under_way on change (household_id) where seq is null;

ALTER TABLE "change_count" ADD CONSTRAINT "change_count_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;
-- To the count and not to the household: while a household is being deleted its rows still report their going.
ALTER TABLE "change" ADD CONSTRAINT "change_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "change_count"("household_id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "change_detail" ADD CONSTRAINT "change_detail_change_id_fkey" FOREIGN KEY ("change_id") REFERENCES "change"("id") ON DELETE CASCADE ON UPDATE CASCADE;

alter table change add constraint change_kind check (kind ~ '^[A-Z][A-Z_]{1,30}$');
alter table change add constraint change_verb check (verb in ('ADDED', 'CHANGED', 'REMOVED'));

-- Read by the household; written by the functions below only. The functions run as the owner, so none of the three is forced.
alter table change_count enable row level security;
create policy change_count_read on change_count for select using (household_id in (select app_household_ids()));
grant select on change_count to noonpail_app;
alter table change enable row level security;
create policy change_read on change for select using (seq is not null and household_id in (select app_household_ids()));
grant select on change to noonpail_app;
alter table change_detail enable row level security;
create policy change_detail_read on change_detail for select using (household_id in (select app_household_ids()));
grant select on change_detail to noonpail_app;

alter table household no force row level security;
insert into change_count (household_id) select id from household;
alter table household force row level security;

create function change_counted() returns trigger language plpgsql security definer set search_path = '' as $$
begin
  insert into public.change_count (household_id) values (new.id);
  return null;
end
$$;
create trigger change_counted after insert on household for each row execute function change_counted();

-- Adds to the list of each of these homes. What one transaction does to one subject is one entry: the oldest before, the newest
-- after. Whoever did it is named to their own household only, and not at all where the server worked unattended.
create function app_record_change(homes uuid[], of_kind text, of_verb text, of_subject uuid, of_child uuid, on_day date, was jsonb, is_now jsonb)
returns void language plpgsql security definer set search_path = '' as $$
declare
  who uuid := case when current_setting('app.unattended', true) = 'on' then null else public.app_person_id() end;
  home uuid;
  entry bigint;
  verb_before text;
begin
  foreach home in array homes loop
    continue when not exists (select from public.change_count c where c.household_id = home);
    select c.id, c.verb into entry, verb_before from public.change c where c.household_id = home and c.seq is null
      and c.kind = of_kind and c.subject_id = of_subject and c.date is not distinct from on_day;
    if entry is null then
      insert into public.change (household_id, person_id, kind, verb, subject_id, child_id, date)
      values (home, case when exists (select from public.membership m where m.household_id = home and m.person_id = who) then who end,
        of_kind, of_verb, of_subject, of_child, on_day) returning id into entry;
      insert into public.change_detail (change_id, household_id, before, after) values (entry, home, was, is_now);
    elsif verb_before = 'ADDED' and of_verb = 'REMOVED' then
      delete from public.change c where c.id = entry;
    else
      update public.change c set verb = case when c.verb = 'REMOVED' and of_verb = 'ADDED' then 'CHANGED'
        when c.verb = 'ADDED' then 'ADDED' else of_verb end where c.id = entry;
      update public.change_detail d set
        before = case jsonb_typeof(was) when 'array' then d.before || was else was || d.before end,
        after = d.after || is_now where d.change_id = entry;
    end if;
  end loop;
end
$$;

-- At the end of the transaction the entries get their numbers, under a lock of the household's count: numbers are in the order of
-- commits, so whoever has read up to one number never misses a smaller one. Counts are locked in one order, so that two
-- transactions that touch the same two homes wait for each other and never both.
create function change_numbered() returns trigger language plpgsql security definer set search_path = '' as $$
declare
  home uuid;
  newest bigint;
begin
  for home in select distinct c.household_id from public.change c where c.seq is null order by 1 loop
    select c.last into newest from public.change_count c where c.household_id = home for no key update;
    update public.change c set seq = newest + n.place
    from (select u.id, row_number() over (order by u.id) as place from public.change u where u.household_id = home and u.seq is null) n
    where c.id = n.id;
    select max(c.seq) into newest from public.change c where c.household_id = home;
    update public.change_count c set last = newest where c.household_id = home;
    perform pg_catalog.pg_notify('noonpail', pg_catalog.json_build_object('kind', 'CHANGED', 'householdId', home, 'seq', newest)::text);
  end loop;
  return null;
end
$$;
create constraint trigger change_numbered after insert on change deferrable initially deferred
  for each row execute function change_numbered();

create function change_stays() returns trigger language plpgsql set search_path = '' as $$
begin
  -- Only who did it may be forgotten, when they are erased.
  if old.seq is not null and (coalesce(current_setting('app.erasing', true), '') <> 'on'
      or to_jsonb(new) - 'person_id' <> to_jsonb(old) - 'person_id' or new.person_id is not null) then
    raise exception 'what changed in a household is never rewritten' using errcode = '42501';
  end if;
  return new;
end
$$;
create trigger change_stays before update on change for each row execute function change_stays();

-- The homes a child has.
create function app_homes_of(child uuid) returns uuid[]
language sql stable security definer set search_path = ''
begin atomic
  select coalesce(array_agg(r.household_id order by r.household_id), '{}') from public.residence r where r.child_id = child;
end;

-- A row as the log keeps it: foods and bases by their keys, no other keys.
create function app_logged(logged jsonb) returns jsonb
language sql stable security definer set search_path = ''
begin atomic
  select logged - array['id', 'household_id', 'food_id', 'base_id']
    || coalesce((select jsonb_build_object('food', f.key) from public.food f where f.id = (logged ->> 'food_id')::uuid), '{}')
    || coalesce((select jsonb_build_object('food', f.key) from public.own_food f where f.id = (logged ->> 'own_food_id')::uuid), '{}')
    || coalesce((select jsonb_build_object('base', b.key) from public.base b where b.id = (logged ->> 'base_id')::uuid), '{}');
end;

-- One trigger for most tables. Arguments: kind; whose: HOUSEHOLD (column household_id), CHILD (every home of child_id), HOME (the
-- household itself); subject: a column, or HOUSEHOLD where rows of a
-- kitchen are told of together; the column of the day, or empty; columns whose values are never kept, or * for none at all.
create function record_change() returns trigger language plpgsql security definer set search_path = '' as $$
declare
  old_row jsonb := case when tg_op <> 'INSERT' then to_jsonb(old) end;
  new_row jsonb := case when tg_op <> 'DELETE' then to_jsonb(new) end;
  any_row jsonb := coalesce(new_row, old_row);
  child uuid := (any_row ->> 'child_id')::uuid;
  hidden text[] := string_to_array(tg_argv[4], ',');
  kept text[] := array(select k from jsonb_object_keys(any_row) k where k not in ('id', 'household_id', 'child_id', 'revision', 'week_plan_id')
    and (old_row is null or new_row is null or old_row -> k is distinct from new_row -> k));
  homes uuid[];
  was jsonb := '{}';
  is_now jsonb := '{}';
  together boolean := tg_argv[2] = 'HOUSEHOLD';
  -- Of a part of the subject nothing but "changed" can be said of the subject.
  part boolean := together or (tg_argv[2] = 'child_id' and tg_table_name <> 'child');
begin
  -- An erasure is one entry of its own, not one for each row that goes.
  if (tg_op = 'UPDATE' and cardinality(kept) = 0) or coalesce(current_setting('app.erasing', true), '') = 'on' then
    return null;
  end if;
  homes := case tg_argv[1] when 'CHILD' then public.app_homes_of(coalesce(child, (any_row ->> 'id')::uuid))
    when 'HOME' then array[(any_row ->> 'id')::uuid]
    else array[(any_row ->> 'household_id')::uuid] end;
  if tg_argv[4] <> '*' then
    select coalesce(jsonb_object_agg(k, old_row -> k) filter (where old_row is not null), '{}'),
      coalesce(jsonb_object_agg(k, new_row -> k) filter (where new_row is not null), '{}')
    into was, is_now from unnest(kept) k where k <> all (hidden);
    if together then
      -- Whole rows: what is the same names which of them it was.
      was := case when old_row is null then '[]' else jsonb_build_array(public.app_logged(old_row) - hidden) end;
      is_now := case when new_row is null then '[]' else jsonb_build_array(public.app_logged(new_row) - hidden) end;
    end if;
  end if;
  perform public.app_record_change(homes, tg_argv[0],
    case when part then 'CHANGED' else case tg_op when 'INSERT' then 'ADDED' when 'DELETE' then 'REMOVED' else 'CHANGED' end end,
    case when together then (any_row ->> 'household_id')::uuid else (any_row ->> tg_argv[2])::uuid end,
    coalesce(child, case when tg_table_name = 'child' then (any_row ->> 'id')::uuid end),
    case when tg_argv[3] <> '' then (any_row ->> tg_argv[3])::date end, was, is_now);
  return null;
end
$$;

create trigger record_change after update on household for each row execute function record_change('KITCHEN', 'HOME', 'id', '', '');
create trigger record_change after insert or update or delete on equipment for each row execute function record_change('KITCHEN', 'HOUSEHOLD', 'HOUSEHOLD', '', '');
create trigger record_change after insert or update or delete on prep_time for each row execute function record_change('PREP_TIMES', 'HOUSEHOLD', 'HOUSEHOLD', '', '');
create trigger record_change after insert or update or delete on prep_time_exception for each row execute function record_change('PREP_TIMES', 'HOUSEHOLD', 'HOUSEHOLD', '', '');
create trigger record_change after insert or delete on hot_day for each row execute function record_change('HOT_DAYS', 'HOUSEHOLD', 'HOUSEHOLD', '', '');
create trigger record_change after insert or update or delete on stock for each row execute function record_change('STOCK', 'HOUSEHOLD', 'HOUSEHOLD', '', '');
create trigger record_change after insert or update or delete on leftover for each row execute function record_change('LEFTOVERS', 'HOUSEHOLD', 'HOUSEHOLD', '', '');
create trigger record_change after insert or update or delete on freezer_stock for each row execute function record_change('FREEZER', 'HOUSEHOLD', 'HOUSEHOLD', '', '');
create trigger record_change after insert or update or delete on label_check for each row execute function record_change('LABELS', 'HOUSEHOLD', 'HOUSEHOLD', '', 'read_by_id');
create trigger record_change after insert or update or delete on own_food_label for each row execute function record_change('LABELS', 'HOUSEHOLD', 'HOUSEHOLD', '', 'read_by_id');
create trigger record_change after insert or update or delete on own_food for each row execute function record_change('OWN_FOOD', 'HOUSEHOLD', 'id', '', 'body');
create trigger record_change after insert or update or delete on own_dish for each row execute function record_change('OWN_DISH', 'HOUSEHOLD', 'id', '', 'body');
create trigger record_change after insert or delete on relaxation for each row execute function record_change('RELAXATION', 'HOUSEHOLD', 'id', 'date', '');
create trigger record_change after insert or update or delete on pin for each row execute function record_change('PIN', 'HOUSEHOLD', 'id', 'date', '');
create trigger record_change after insert or delete on kitchen_disruption for each row execute function record_change('DISRUPTION', 'HOUSEHOLD', 'id', 'date', '');
create trigger record_change after insert or update or delete on box_kit for each row execute function record_change('BOX_KIT', 'HOUSEHOLD', 'child_id', '', '');
create trigger record_change after insert or update or delete on leave_time for each row execute function record_change('LEAVE_TIMES', 'HOUSEHOLD', 'child_id', '', '*');
-- That it changed, never the figures: a child's size has no place in a log.
create trigger record_change after insert or update or delete on child_body for each row execute function record_change('BODY', 'HOUSEHOLD', 'child_id', '', '*');
create trigger record_change after update on task for each row execute function record_change('TASK', 'HOUSEHOLD', 'id', '', '');
create trigger record_change after update on shopping_line for each row execute function record_change('SHOPPING', 'HOUSEHOLD', 'id', '', '');
create trigger record_change after insert or update or delete on membership for each row execute function record_change('CARER', 'HOUSEHOLD', 'person_id', '', 'since,person_id');

create trigger record_change after update on child for each row execute function record_change('CHILD', 'CHILD', 'id', '', '');
create trigger record_change after insert or update or delete on allergy for each row execute function record_change('ALLERGY', 'CHILD', 'child_id', '', '*');
create trigger record_change after insert or update on enrolment for each row execute function record_change('ENROLMENT', 'CHILD', 'id', '', '');
create trigger record_change after insert or delete on school_meal_day for each row execute function record_change('SCHOOL_MEALS', 'CHILD', 'child_id', '', '*');
create trigger record_change after insert or update or delete on school_provision for each row execute function record_change('SCHOOL_MEALS', 'CHILD', 'child_id', '', '*');
create trigger record_change after insert or delete on child_disruption for each row execute function record_change('DISRUPTION', 'CHILD', 'id', 'date', '');
create trigger record_change after insert or update or delete on exemption for each row execute function record_change('EXEMPTION', 'CHILD', 'id', 'from_date', '');

-- A child comes to a household or leaves it; its other homes hear that its homes are others.
create function record_home() returns trigger language plpgsql security definer set search_path = '' as $$
declare
  home uuid := case tg_op when 'INSERT' then new.household_id else old.household_id end;
  child uuid := case tg_op when 'INSERT' then new.child_id else old.child_id end;
begin
  if coalesce(current_setting('app.erasing', true), '') = 'on' then
    return null;
  end if;
  perform public.app_record_change(array[home], 'HOME', case tg_op when 'INSERT' then 'ADDED' else 'REMOVED' end, child, child, null, '{}', '{}');
  perform public.app_record_change(array_remove(public.app_homes_of(child), home), 'HOME', 'CHANGED', child, child, null, '{}', '{}');
  return null;
end
$$;
create trigger record_change after insert or delete on residence for each row execute function record_home();

-- A plan is told of as a whole; what is done with it, piece by piece by the triggers above.
create function record_plan() returns trigger language plpgsql security definer set search_path = '' as $$
begin
  if tg_op = 'INSERT' or (new.state <> old.state and new.state <> 'REPLACED') then
    perform public.app_record_change(array[new.household_id], 'PLAN', case tg_op when 'INSERT' then 'ADDED' else 'CHANGED' end, new.week_id, null,
      null, case tg_op when 'UPDATE' then jsonb_build_object('state', old.state) else '{}' end,
      jsonb_build_object('number', new.number, 'state', new.state));
  end if;
  return null;
end
$$;
create trigger record_change after insert or update on week_plan for each row execute function record_plan();

-- Boxes: a state both homes are told of; that other boxes stand on a child's days only the home that did not plan them, because
-- the one that did has been told of the plan.
create function record_box() returns trigger language plpgsql security definer set search_path = '' as $$
declare packs uuid;
begin
  if tg_op = 'UPDATE' and (new.state, new.packed_at) is distinct from (old.state, old.packed_at) and new.current then
    perform public.app_record_change(public.app_homes_of(new.child_id), 'BOX', 'CHANGED', new.id, new.child_id, new.date,
      jsonb_build_object('state', old.state), jsonb_build_object('state', new.state));
  end if;
  if tg_op = 'INSERT' or new.current <> old.current then
    select p.household_id into packs from public.week_plan p where p.id = new.week_plan_id;
    perform public.app_record_change(array(select h from unnest(public.app_homes_of(new.child_id)) h where h is distinct from packs),
      'BOXES', 'CHANGED', new.child_id, new.child_id, null, '{}', '{}');
  end if;
  return null;
end
$$;
create trigger record_change after insert or update on lunch_box for each row execute function record_box();

-- A child's own rules. What a school asks for reaches homes with the recheck it causes (app_tell_of_schools).
create function record_rules() returns trigger language plpgsql security definer set search_path = '' as $$
declare child uuid;
begin
  select s.child_id into child from public.rule_set s where s.id = new.rule_set_id;
  if child is not null then
    perform public.app_record_change(public.app_homes_of(child), 'RULES', case tg_op when 'INSERT' then 'ADDED' else 'CHANGED' end,
      new.rule_set_id, child, new.in_force_from, '{}', jsonb_build_object('version', new.version));
  end if;
  return null;
end
$$;
create trigger record_change after insert or update on rule_set_version for each row execute function record_rules();

-- A home hears, once, that the rules or the days of its children's schools are other ones: the answer that made the change and the
-- job that follows it come by with the same news, which is told apart by a mark of how things stand.
create function app_tell_of_schools(of_household uuid, of_kind text, of_schools uuid[]) returns void
language plpgsql security definer set search_path = '' as $$
declare
  told uuid;
  mark text;
begin
  if of_household not in (select public.app_household_ids()) or of_kind not in ('SCHOOL', 'SCHOOL_RULES') then
    raise exception 'not a household of this person' using errcode = '42501';
  end if;
  for told in select distinct e.school_id from public.enrolment e join public.residence r on r.child_id = e.child_id
    where r.household_id = of_household and e.school_id = any (of_schools) order by 1
  loop
    select case of_kind when 'SCHOOL' then s.revision::text
      else (select concat(max(v.loaded_at), ' ', count(*), ' ', max(v.in_force_until)) from public.rule_set_version v join public.rule_set t on t.id = v.rule_set_id
        where t.school_id = s.id or t.jurisdiction = s.jurisdiction or t.school_class_id in (select k.id from public.school_class k where k.school_id = s.id))
        || ' ' || (select count(*) from public.rule_set_adoption a where a.school_id = s.id) end
    into mark from public.school s where s.id = told;
    continue when mark is not distinct from (select d.after ->> 'mark' from public.change c join public.change_detail d on d.change_id = c.id
      where c.household_id = of_household and c.kind = of_kind and c.subject_id = told order by c.id desc limit 1);
    perform public.app_record_change(array[of_household], of_kind, 'CHANGED', told, null, null, '{}', jsonb_build_object('mark', mark));
  end loop;
end
$$;
create index change_subject_idx on change (household_id, kind, subject_id);

-- For one server's listeners of one household, read once for all of them: who of these may hear it, and what came after a number.
-- Nobody who is not a member is handed anything.
create function app_changes_for(of_household uuid, readers uuid[], after_seq bigint, most integer) returns json
language sql stable security definer set search_path = ''
begin atomic
  select json_build_object(
    'readers', coalesce((select json_agg(m.person_id) from public.membership m
      where m.household_id = of_household and m.person_id = any (readers)), '[]'::json),
    'changes', coalesce((select json_agg(x order by x.seq) from (
      select c.seq, c.at, c.person_id as "personId", c.kind, c.verb, c.subject_id as "subjectId", c.child_id as "childId", c.date::text as date,
        d.before, d.after
      from public.change c left join public.change_detail d on d.change_id = c.id
      where c.household_id = of_household and c.seq > after_seq
        and exists (select from public.membership m where m.household_id = of_household and m.person_id = any (readers))
      order by c.seq limit most) x), '[]'::json));
end;

revoke execute on function change_counted(), app_record_change(uuid[], text, text, uuid, uuid, date, jsonb, jsonb), change_numbered(), change_stays(),
  app_homes_of(uuid), app_logged(jsonb), record_change(), record_home(), record_plan(), record_box(), record_rules(), app_tell_of_schools(uuid, text, uuid[]),
  app_changes_for(uuid, uuid[], bigint, integer) from public;
grant execute on function app_tell_of_schools(uuid, text, uuid[]), app_changes_for(uuid, uuid[], bigint, integer) to noonpail_app;
