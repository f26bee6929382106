-- Administrators: who appoints whom, schools they register, and how they read what was done.

alter table appointment add constraint appointment_to_one check (num_nonnulls(school_id, jurisdiction) = 1);
alter table school add constraint school_ranges check (length(name) between 1 and 80
  and (jurisdiction is null or length(jurisdiction) between 1 and 80) and revision >= 1);
alter table school_class add constraint school_class_name check (length(name) between 1 and 80);
alter table school_day add constraint school_day_end check ((kind = 'EARLY_FINISH') = (ends_at is not null)
  and (ends_at is null or ends_at ~ '^([01]\d|2[0-3]):[0-5]\d$'));

-- Somebody who has signed in before; unlike app_sign_in it makes nobody.
create function app_known_person(token_subject text) returns uuid
language sql stable security definer set search_path = ''
begin atomic
  select p.id from public.person p where p.subject = token_subject;
end;

-- A school has no administrator of its own before its first, so no policy could admit the insert. False: the name is taken.
create function app_register_school(new_id uuid, new_name text, new_time_zone text, of_jurisdiction text) returns boolean
language plpgsql security definer set search_path = ''
as $$
begin
  if of_jurisdiction is null or of_jurisdiction not in (select public.app_appointed_jurisdictions()) then
    raise exception 'not an administrator of this jurisdiction' using errcode = '42501';
  end if;
  insert into public.school (id, name, time_zone, jurisdiction) values (new_id, new_name, new_time_zone, of_jurisdiction)
  on conflict (name) do nothing;
  return found;
end
$$;

-- Whether the person may appoint and dismiss there: only who administers the jurisdiction, for it and its schools.
create function app_appoints_to(of_school uuid, of_jurisdiction text) returns boolean
language sql stable security definer set search_path = ''
begin atomic
  select case
    when num_nonnulls(of_school, of_jurisdiction) <> 1 then false
    when of_jurisdiction is not null then of_jurisdiction in (select public.app_appointed_jurisdictions())
    else exists (select from public.school s
      where s.id = of_school and s.jurisdiction in (select public.app_appointed_jurisdictions()))
  end;
end;

-- False: the person is appointed there already.
create function app_appoint(appointed uuid, of_school uuid, of_jurisdiction text) returns boolean
language plpgsql security definer set search_path = ''
as $$
begin
  if not public.app_appoints_to(of_school, of_jurisdiction) then
    raise exception 'not an administrator of this jurisdiction' using errcode = '42501';
  end if;
  insert into public.appointment (person_id, school_id, jurisdiction) values (appointed, of_school, of_jurisdiction)
  on conflict do nothing;
  return found;
end
$$;

-- DISMISSED, ABSENT where the person is not appointed there, or LAST where nobody would administer the jurisdiction any more.
create function app_dismiss(dismissed uuid, of_school uuid, of_jurisdiction text) returns text
language plpgsql security definer set search_path = ''
as $$
declare others integer;
begin
  if not public.app_appoints_to(of_school, of_jurisdiction) then
    raise exception 'not an administrator of this jurisdiction' using errcode = '42501';
  end if;
  -- Two who dismiss each other at once wait here for one another; rows the first has removed are gone for the second.
  perform from public.appointment a where a.jurisdiction = of_jurisdiction order by a.id for update;
  if not exists (select from public.appointment a where a.person_id = dismissed
      and a.school_id is not distinct from of_school and a.jurisdiction is not distinct from of_jurisdiction) then
    return 'ABSENT';
  end if;
  select count(*) into others from public.appointment a where a.jurisdiction = of_jurisdiction and a.person_id <> dismissed;
  if of_jurisdiction is not null and others = 0 then
    return 'LAST';
  end if;
  delete from public.appointment a where a.person_id = dismissed
    and a.school_id is not distinct from of_school and a.jurisdiction is not distinct from of_jurisdiction;
  return 'DISMISSED';
end
$$;

-- Who administers a school (its own and its jurisdiction's administrators) or a jurisdiction, by name, for those who do themselves.
create function app_appointments(of_school uuid, of_jurisdiction text)
returns table (person_id uuid, display_name text, school_id uuid, jurisdiction text, since timestamptz)
language sql stable security definer set search_path = ''
begin atomic
  select a.person_id, p.display_name, a.school_id, a.jurisdiction, a.since
  from public.appointment a join public.person p on p.id = a.person_id
  where (of_school in (select public.app_appointed_school_ids())
      and (a.school_id = of_school or a.jurisdiction = (select s.jurisdiction from public.school s where s.id = of_school)))
    or (a.jurisdiction = of_jurisdiction and of_jurisdiction in (select public.app_appointed_jurisdictions()))
  order by a.since, a.person_id;
end;

-- What was done at a school, or in a jurisdiction and its schools, newest first, for those who administer the same. Names are
-- read past the persons' own policy, by this function only.
create function app_audit(of_school uuid, of_jurisdiction text, before_at timestamptz, before_id uuid, most integer)
returns table (id uuid, at timestamptz, action text, person_id uuid, person_name text, about_id uuid, about_name text,
  school_id uuid, jurisdiction text, details jsonb)
language sql stable security definer set search_path = ''
begin atomic
  select e.id, e.at, e.action, p.id, p.display_name, o.id, o.display_name, e.school_id, e.jurisdiction, e.details
  from public.audit_entry e
  left join public.person p on p.id = e.person_id
  left join public.person o on e.action in ('APPOINTED', 'DISMISSED') and o.id::text = e.details ->> 'personId'
  where ((e.school_id = of_school and of_school in (select public.app_appointed_school_ids()))
      or (of_jurisdiction in (select public.app_appointed_jurisdictions()) and (e.jurisdiction = of_jurisdiction
        or e.school_id in (select s.id from public.school s where s.jurisdiction = of_jurisdiction))))
    and (before_at is null or (e.at, e.id) < (before_at, before_id))
  order by e.at desc, e.id desc
  limit most;
end;

-- The operator appoints the first administrator on the owner's connection, in nobody's name.
create policy audit_entry_by_operator on audit_entry for insert to current_user
  with check (person_id is null and app_person_id() is null);

revoke execute on function app_known_person(text), app_register_school(uuid, text, text, text), app_appoints_to(uuid, text),
  app_appoint(uuid, uuid, text), app_dismiss(uuid, uuid, text), app_appointments(uuid, text),
  app_audit(uuid, text, timestamptz, uuid, integer) from public;
grant execute on function app_known_person(text), app_register_school(uuid, text, text, text), app_appoints_to(uuid, text),
  app_appoint(uuid, uuid, text), app_dismiss(uuid, uuid, text), app_appointments(uuid, text),
  app_audit(uuid, text, timestamptz, uuid, integer) to noonpail_app;
