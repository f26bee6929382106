-- Rule sets as administrators load them: layers, withdrawal, a family's copy, exemptions, and who did what.
-- AlterTable
ALTER TABLE "appointment" ADD COLUMN     "since" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP;

-- AlterTable
ALTER TABLE "rule_set" ADD COLUMN     "copy_of_id" UUID;

-- AlterTable
ALTER TABLE "rule_set_version" ADD COLUMN     "ages" JSONB,
ADD COLUMN     "digest" TEXT NOT NULL DEFAULT '',
ADD COLUMN     "withdrawn" BOOLEAN NOT NULL DEFAULT false;

-- AlterTable
ALTER TABLE "school_day" ADD COLUMN     "event_uid" TEXT;

-- AlterTable
ALTER TABLE "school_term" ADD COLUMN     "event_uid" TEXT;

-- CreateTable
CREATE TABLE "exemption" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "child_id" UUID NOT NULL,
    "rule_set_id" UUID NOT NULL,
    "rule_key" TEXT NOT NULL,
    "from_date" DATE NOT NULL,
    "until_date" DATE NOT NULL,

    CONSTRAINT "exemption_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "exemption_note" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "exemption_id" UUID NOT NULL,
    "household_id" UUID NOT NULL,
    "clinician" TEXT NOT NULL,
    "note" TEXT NOT NULL,

    CONSTRAINT "exemption_note_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "audit_entry" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "person_id" UUID,
    "action" TEXT NOT NULL,
    "school_id" UUID,
    "jurisdiction" TEXT,
    "details" JSONB NOT NULL,

    CONSTRAINT "audit_entry_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "exemption_rule_set_id_idx" ON "exemption"("rule_set_id");

-- CreateIndex
CREATE UNIQUE INDEX "exemption_child_id_rule_set_id_rule_key_from_date_key" ON "exemption"("child_id", "rule_set_id", "rule_key", "from_date");

-- CreateIndex
CREATE UNIQUE INDEX "exemption_note_exemption_id_key" ON "exemption_note"("exemption_id");

-- CreateIndex
CREATE INDEX "exemption_note_household_id_idx" ON "exemption_note"("household_id");

-- CreateIndex
CREATE INDEX "audit_entry_school_id_at_idx" ON "audit_entry"("school_id", "at");

-- CreateIndex
CREATE INDEX "audit_entry_jurisdiction_at_idx" ON "audit_entry"("jurisdiction", "at");

-- CreateIndex
CREATE INDEX "rule_set_copy_of_id_idx" ON "rule_set"("copy_of_id");

-- AddForeignKey
ALTER TABLE "rule_set" ADD CONSTRAINT "rule_set_copy_of_id_fkey" FOREIGN KEY ("copy_of_id") REFERENCES "school"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "exemption" ADD CONSTRAINT "exemption_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "child"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "exemption" ADD CONSTRAINT "exemption_rule_set_id_fkey" FOREIGN KEY ("rule_set_id") REFERENCES "rule_set"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "exemption_note" ADD CONSTRAINT "exemption_note_exemption_id_fkey" FOREIGN KEY ("exemption_id") REFERENCES "exemption"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "exemption_note" ADD CONSTRAINT "exemption_note_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

alter table rule_set add constraint rule_set_copy_is_a_childs check (copy_of_id is null or layer = 'CHILD');
alter table exemption add constraint exemption_order check (until_date >= from_date);
alter table audit_entry add constraint audit_entry_action check (action in ('RULE_SET_LOADED', 'RULE_SET_WITHDRAWN', 'IMPACT_COUNTED',
  'ADOPTED', 'ADOPTION_ENDED', 'CALENDAR_CHANGED', 'SCHOOL_CHANGED', 'APPOINTED', 'DISMISSED'));
alter table audit_entry add constraint audit_entry_about check (num_nonnulls(school_id, jurisdiction) >= 1);
create unique index appointment_once_per_jurisdiction on appointment (person_id, jurisdiction) where jurisdiction is not null;
create index school_jurisdiction_idx on school (jurisdiction);
create index appointment_jurisdiction_idx on appointment (jurisdiction);

-- Both homes of a child know which rule rests for it; what the clinician wrote stays with the home that entered it.
alter table exemption enable row level security; alter table exemption force row level security;
create policy exemption_read on exemption for select using (child_id in (select app_child_ids()));
create policy exemption_add on exemption for insert with check (child_id in (select app_writable_child_ids()));
create policy exemption_remove on exemption for delete using (child_id in (select app_writable_child_ids()));
grant select, insert, delete on exemption to noonpail_app;

alter table exemption_note enable row level security; alter table exemption_note force row level security;
create policy exemption_note_read on exemption_note for select using (household_id in (select app_household_ids()));
create policy exemption_note_add on exemption_note for insert with check (household_id in (select app_writable_household_ids())
  and exemption_id in (select id from exemption));
grant select, insert on exemption_note to noonpail_app;

-- What administrators did is read by those who administer the same, added to in one's own name, and changed by nobody.
alter table audit_entry enable row level security; alter table audit_entry force row level security;
create policy audit_entry_read on audit_entry for select using (school_id in (select app_appointed_school_ids())
  or jurisdiction in (select app_appointed_jurisdictions()));
create policy audit_entry_add on audit_entry for insert with check (person_id = app_person_id()
  and (school_id is null or school_id in (select app_appointed_school_ids()))
  and (jurisdiction is null or jurisdiction in (select app_appointed_jurisdictions())));
grant select, insert on audit_entry to noonpail_app;
create index audit_entry_person_id_idx on audit_entry (person_id);

create function audit_entry_stays() returns trigger language plpgsql set search_path = '' as $$
begin
  raise exception 'what administrators did is never changed or removed' using errcode = '42501';
end
$$;
revoke execute on function audit_entry_stays() from public;
create trigger audit_entry_stays before update or delete on audit_entry for each row execute function audit_entry_stays();
create trigger audit_entry_stays_whole before truncate on audit_entry for each statement execute function audit_entry_stays();

-- The columns of a version are granted one by one: who loaded it is not everybody's business.
grant select (ages, withdrawn, digest) on rule_set_version to noonpail_app;
