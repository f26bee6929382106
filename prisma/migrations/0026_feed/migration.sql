-- A carer's calendar feed: the digest of its secret address, and what it has shown, so that changes are counted and what
-- vanished is called off. Both go with the membership: who has left has no feed, by no code of ours.
CREATE TABLE "feed_address" (
    "household_id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "digest" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "feed_address_pkey" PRIMARY KEY ("household_id","person_id")
);

CREATE TABLE "feed_event" (
    "household_id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "uid" UUID NOT NULL,
    "sequence" INTEGER NOT NULL,
    "fingerprint" TEXT NOT NULL,
    "starts_at" TIMESTAMPTZ(3) NOT NULL,
    "ends_at" TIMESTAMPTZ(3) NOT NULL,
    "changed_at" TIMESTAMPTZ(3) NOT NULL,
    "cancelled_at" TIMESTAMPTZ(3),

    CONSTRAINT "feed_event_pkey" PRIMARY KEY ("household_id","person_id","uid")
);

CREATE UNIQUE INDEX "feed_address_digest_key" ON "feed_address"("digest");
CREATE INDEX "feed_address_person_id_idx" ON "feed_address"("person_id");
CREATE INDEX "feed_event_person_id_idx" ON "feed_event"("person_id");

ALTER TABLE "feed_address" ADD CONSTRAINT "feed_address_household_id_person_id_fkey" FOREIGN KEY ("household_id", "person_id") REFERENCES "membership"("household_id", "person_id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "feed_event" ADD CONSTRAINT "feed_event_household_id_person_id_fkey" FOREIGN KEY ("household_id", "person_id") REFERENCES "feed_address"("household_id", "person_id") ON DELETE CASCADE ON UPDATE CASCADE;

alter table feed_address add constraint feed_address_sha_256 check (digest ~ '^[0-9a-f]{64}$');
alter table feed_event add constraint feed_event_ranges check (sequence >= 0 and ends_at > starts_at);

-- A feed is one carer's own, not the household's: nobody else sees that there is one.
alter table feed_address enable row level security; alter table feed_address force row level security;
create policy feed_address_read on feed_address for select using (person_id = app_person_id());
create policy feed_address_add on feed_address for insert with check (person_id = app_person_id() and household_id in (select app_household_ids()));
create policy feed_address_change on feed_address for update using (person_id = app_person_id()) with check (person_id = app_person_id());
create policy feed_address_remove on feed_address for delete using (person_id = app_person_id());
grant select, insert, update (digest, created_at), delete on feed_address to noonpail_app;

alter table feed_event enable row level security; alter table feed_event force row level security;
create policy feed_event_read on feed_event for select using (person_id = app_person_id());
create policy feed_event_add on feed_event for insert with check (person_id = app_person_id());
create policy feed_event_change on feed_event for update using (person_id = app_person_id()) with check (person_id = app_person_id());
create policy feed_event_remove on feed_event for delete using (person_id = app_person_id());
grant select, insert, update (sequence, fingerprint, starts_at, ends_at, changed_at, cancelled_at), delete on feed_event to noonpail_app;

-- Whose feed an address is. Who asks has signed in as nobody, and only then may the owner look past the carers' own policy. An
-- observer has no tasks, so a carer who has become one has no feed.
create policy feed_address_lookup on feed_address for select to current_user using (app_person_id() is null);
create function app_feed(of_digest text) returns table (person_id uuid, household_id uuid)
language sql stable security definer set search_path = ''
begin atomic
  select a.person_id, a.household_id from public.feed_address a
  join public.membership m on m.household_id = a.household_id and m.person_id = a.person_id
  where a.digest = of_digest and m.role <> 'OBSERVER'::public.role;
end;
revoke execute on function app_feed(text) from public;
grant execute on function app_feed(text) to noonpail_app;
