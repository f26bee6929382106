-- Who belongs to a household: invitations by a link that works once, roles, leaving, handing over.

-- CreateTable
CREATE TABLE "invitation" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "household_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "role" "role",
    "child_id" UUID,
    "token_digest" TEXT NOT NULL,
    "created_by_id" UUID,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "accepted_at" TIMESTAMPTZ(3),
    "accepted_by_id" UUID,
    "withdrawn_at" TIMESTAMPTZ(3),

    CONSTRAINT "invitation_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "invitation_token_digest_key" ON "invitation"("token_digest");

-- CreateIndex
CREATE INDEX "invitation_household_id_idx" ON "invitation"("household_id");

-- CreateIndex
CREATE INDEX "invitation_child_id_idx" ON "invitation"("child_id");

-- CreateIndex
CREATE INDEX "invitation_created_by_id_idx" ON "invitation"("created_by_id");

-- CreateIndex
CREATE INDEX "invitation_accepted_by_id_idx" ON "invitation"("accepted_by_id");

-- AddForeignKey
ALTER TABLE "invitation" ADD CONSTRAINT "invitation_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "invitation" ADD CONSTRAINT "invitation_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "invitation" ADD CONSTRAINT "invitation_created_by_id_fkey" FOREIGN KEY ("created_by_id") REFERENCES "person"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "invitation" ADD CONSTRAINT "invitation_accepted_by_id_fkey" FOREIGN KEY ("accepted_by_id") REFERENCES "person"("id") ON DELETE SET NULL ON UPDATE CASCADE;

alter table invitation add constraint invitation_of_its_kind check (case kind
  when 'CARER' then role is not null and child_id is null
  when 'HOME' then role is null and child_id is not null
  else false end);
alter table invitation add constraint invitation_digest check (token_digest ~ '^[0-9a-f]{64}$');
-- A little more than the span that may be asked for: columns keep milliseconds, the clock more.
alter table invitation add constraint invitation_span check (
  expires_at between created_at + interval '59 minutes' and created_at + interval '30 days 1 minute');
alter table invitation add constraint invitation_ends_once check (accepted_at is null or withdrawn_at is null);

create function app_coordinated_household_ids() returns setof uuid
language sql stable security definer set search_path = ''
begin atomic
  select m.household_id from public.membership m
  where m.person_id = public.app_person_id() and m.role = 'COORDINATOR'::public.role;
end;

-- Only inside the functions below, and only for the owner they run as: who holds a link is no member yet.
create function app_by_invitation() returns boolean
language sql stable set search_path = ''
return coalesce(current_setting('app.by_invitation', true), '') = 'on';

alter table invitation enable row level security; alter table invitation force row level security;
create policy invitation_read on invitation for select using (household_id in (select app_household_ids()));
create policy invitation_add on invitation for insert with check (household_id in (select app_coordinated_household_ids())
  and created_by_id = app_person_id()
  and (child_id is null or exists (select from residence r where r.child_id = invitation.child_id and r.household_id = invitation.household_id)));
create policy invitation_change on invitation for update using (household_id in (select app_coordinated_household_ids())) with check (household_id in (select app_coordinated_household_ids()));
create policy invitation_by_link on invitation for all to current_user using (app_by_invitation()) with check (app_by_invitation());
-- Neither the digest, nor who of another home took it up; accepted_by_id is for the functions below.
grant select (id, household_id, kind, role, child_id, created_by_id, created_at, expires_at, accepted_at, withdrawn_at),
  insert (id, household_id, kind, role, child_id, token_digest, created_by_id, expires_at), update (withdrawn_at) on invitation to noonpail_app;
create policy household_by_link on household for select to current_user using (app_by_invitation());
create policy child_by_link on child for select to current_user using (app_by_invitation());

-- OPEN, or why it is none any more. One clock, the database's, whichever server is asked.
create function app_invitation_state(accepted timestamptz, withdrawn timestamptz, expires timestamptz) returns text
language sql stable set search_path = ''
return case when accepted is not null then 'USED' when withdrawn is not null then 'WITHDRAWN' when expires <= now() then 'EXPIRED' else 'OPEN' end;

-- What somebody with the link is invited to; no row for a digest that fits none. Names only while it is open.
create function app_invitation(digest text)
returns table (kind text, state text, role public.role, expires_at timestamptz, household_name text, inviter text, child_name text)
language plpgsql volatile security definer set search_path = ''
as $$
#variable_conflict use_column
begin
  if public.app_person_id() is null then
    raise exception 'no signed-in person' using errcode = '42501';
  end if;
  perform set_config('app.by_invitation', 'on', true);
  return query
  select i.kind, i.state, i.role, i.expires_at,
    case when i.state = 'OPEN' then h.name end, case when i.state = 'OPEN' then p.display_name end, case when i.state = 'OPEN' then c.name end
  from (select v.*, public.app_invitation_state(v.accepted_at, v.withdrawn_at, v.expires_at) as state from public.invitation v where v.token_digest = digest) i
  join public.household h on h.id = i.household_id
  left join public.person p on p.id = i.created_by_id
  left join public.child c on c.id = i.child_id;
  perform set_config('app.by_invitation', '', true);
end
$$;

-- ACCEPTED; UNKNOWN, OTHER_KIND, ALREADY with the role the person has, or the state it is in: then nothing has changed. Of two who
-- accept at once the second waits for the first and finds it used.
create function app_accept_invitation(digest text, out outcome text, out home uuid, out as_role public.role)
language plpgsql security definer set search_path = ''
as $$
declare offer public.invitation;
begin
  if public.app_person_id() is null then
    raise exception 'no signed-in person' using errcode = '42501';
  end if;
  perform set_config('app.by_invitation', 'on', true);
  select * into offer from public.invitation i where i.token_digest = digest for update;
  if not found then
    outcome := 'UNKNOWN';
  elsif offer.kind <> 'CARER' then
    outcome := 'OTHER_KIND';
  else
    home := offer.household_id;
    select m.role into as_role from public.membership m where m.household_id = home and m.person_id = public.app_person_id();
    outcome := case when as_role is not null then 'ALREADY'
      else public.app_invitation_state(offer.accepted_at, offer.withdrawn_at, offer.expires_at) end;
    if outcome = 'OPEN' then
      -- By another link at the same moment the person may have just become one.
      insert into public.membership (household_id, person_id, role) values (home, public.app_person_id(), offer.role)
      on conflict (household_id, person_id) do nothing;
      if found then
        update public.invitation i set accepted_at = now(), accepted_by_id = public.app_person_id() where i.id = offer.id;
        outcome := 'ACCEPTED';
        as_role := offer.role;
      else
        outcome := 'ALREADY';
        select m.role into as_role from public.membership m where m.household_id = home and m.person_id = public.app_person_id();
      end if;
    end if;
  end if;
  perform set_config('app.by_invitation', '', true);
end
$$;

-- ACCEPTED; UNKNOWN, OTHER_KIND, LIVES_HERE, TWO_HOMES, or the state it is in: then nothing has changed.
create function app_accept_home_invitation(digest text, accepting uuid, lives_since date, out outcome text, out child uuid)
language plpgsql security definer set search_path = ''
as $$
declare offer public.invitation;
begin
  if accepting is null or accepting not in (select public.app_coordinated_household_ids()) then
    raise exception 'not a household that this person coordinates' using errcode = '42501';
  end if;
  perform set_config('app.by_invitation', 'on', true);
  select * into offer from public.invitation i where i.token_digest = digest for update;
  if not found then
    outcome := 'UNKNOWN';
  elsif offer.kind <> 'HOME' then
    outcome := 'OTHER_KIND';
  else
    child := offer.child_id;
    -- Two links for one child, taken up at once, follow one another here.
    perform from public.residence r where r.child_id = child order by r.id for update;
    outcome := case
      when exists (select from public.residence r where r.child_id = child and r.household_id = accepting) then 'LIVES_HERE'
      -- A home that the child has left invites to nothing.
      when not exists (select from public.residence r where r.child_id = child and r.household_id = offer.household_id) then 'WITHDRAWN'
      else public.app_invitation_state(offer.accepted_at, offer.withdrawn_at, offer.expires_at) end;
    if outcome = 'OPEN' and (select count(*) from public.residence r where r.child_id = child) >= 2 then
      outcome := 'TWO_HOMES';
    end if;
    if outcome = 'OPEN' then
      -- Days that nobody has spoken of are the oldest home's: later than it, also where both begin on one day or the zones differ.
      insert into public.residence (child_id, household_id, since)
      select child, accepting, greatest(lives_since, max(r.since) + 1) from public.residence r where r.child_id = child;
      update public.invitation i set accepted_at = now(), accepted_by_id = public.app_person_id() where i.id = offer.id;
      outcome := 'ACCEPTED';
    end if;
  end if;
  perform set_config('app.by_invitation', '', true);
end
$$;

-- A carer's role in a household of the caller's, held still until the transaction ends: who takes a task or stores a plan is a carer
-- until that is done.
create function app_role_in(home uuid, carer uuid) returns public.role
language sql volatile security definer set search_path = ''
begin atomic
  select m.role from public.membership m
  where m.household_id = home and m.person_id = carer and home in (select public.app_household_ids()) for share;
end;

-- All carers of a household of the caller's, held still until the transaction ends, so that changes of who they are follow one
-- another and what a carer has begun is over. Nobody where the caller is none of them.
create function app_hold_carers(home uuid) returns table (person_id uuid, role public.role)
language plpgsql volatile security definer set search_path = ''
as $$
#variable_conflict use_column
begin
  if home in (select public.app_household_ids()) then
    return query select m.person_id, m.role from public.membership m where m.household_id = home order by m.id for update;
  end if;
end
$$;

-- Gives a carer another role, or with none takes them out. By a coordinator; anybody may go themselves. Invitations of whoever does
-- not coordinate any more end: nobody comes back by a link of their own.
create function app_change_carer(home uuid, carer uuid, new_role public.role) returns void
language plpgsql security definer set search_path = ''
as $$
declare old_role public.role;
begin
  perform from public.membership m where m.household_id = home order by m.id for update;
  if home not in (select public.app_coordinated_household_ids()) and not (new_role is null and carer = public.app_person_id()) then
    raise exception 'not a household that this person coordinates' using errcode = '42501';
  end if;
  select m.role into strict old_role from public.membership m where m.household_id = home and m.person_id = carer;
  if old_role = 'COORDINATOR' and new_role is distinct from 'COORDINATOR' then
    if not exists (select from public.membership m where m.household_id = home and m.role = 'COORDINATOR' and m.person_id <> carer) then
      raise exception 'the last coordinator of a household stays' using errcode = '23514';
    end if;
    perform set_config('app.by_invitation', 'on', true);
    update public.invitation i set withdrawn_at = now()
    where i.household_id = home and i.created_by_id = carer and i.accepted_at is null and i.withdrawn_at is null;
    perform set_config('app.by_invitation', '', true);
  end if;
  if new_role is null then
    delete from public.membership m where m.household_id = home and m.person_id = carer;
  else
    update public.membership m set role = new_role where m.household_id = home and m.person_id = carer;
  end if;
end
$$;

revoke execute on function app_coordinated_household_ids(), app_by_invitation(), app_invitation_state(timestamptz, timestamptz, timestamptz),
  app_invitation(text), app_accept_invitation(text), app_accept_home_invitation(text, uuid, date), app_role_in(uuid, uuid),
  app_hold_carers(uuid), app_change_carer(uuid, uuid, public.role) from public;
grant execute on function app_coordinated_household_ids(), app_invitation_state(timestamptz, timestamptz, timestamptz),
  app_invitation(text), app_accept_invitation(text), app_accept_home_invitation(text, uuid, date), app_role_in(uuid, uuid),
  app_hold_carers(uuid), app_change_carer(uuid, uuid, public.role) to noonpail_app;
