-- When a task was taken and done and how long it took; a task of an earlier plan that was done or begun stays with the next one.
ALTER TABLE "task" ADD COLUMN "actual_minutes" DOUBLE PRECISION;
ALTER TABLE "task" ADD COLUMN "taken_at" TIMESTAMPTZ(3);
ALTER TABLE "task" ADD COLUMN "done_at" TIMESTAMPTZ(3);
ALTER TABLE "task" ADD COLUMN "kept" BOOLEAN NOT NULL DEFAULT false;

alter table task add constraint task_state_facts check (
  (state <> 'OPEN' or (taken_by_id is null and taken_at is null))
  and (state = 'DONE' or (done_at is null and actual_minutes is null))
  and actual_minutes between 0 and 600);
grant update (taken_at, done_at, actual_minutes) on task to noonpail_app;

-- Who is on for which session, and when a carer can help. A carer who leaves the household leaves both.
CREATE TABLE "duty" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "household_id" UUID NOT NULL,
    "session" TEXT NOT NULL,
    "person_id" UUID NOT NULL,

    CONSTRAINT "duty_pkey" PRIMARY KEY ("id")
);
CREATE TABLE "availability" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "household_id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "weekday" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "minutes" INTEGER NOT NULL,

    CONSTRAINT "availability_pkey" PRIMARY KEY ("id")
);
-- What carers were reminded of, each thing once, however many servers look. No person: everybody in the household.
CREATE TABLE "reminder" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "household_id" UUID NOT NULL,
    "person_id" UUID,
    "kind" TEXT NOT NULL,
    "session" TEXT NOT NULL,
    "task_key" TEXT,
    "about_at" TIMESTAMPTZ(3) NOT NULL,
    "due_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "reminder_pkey" PRIMARY KEY ("id")
);

CREATE UNIQUE INDEX "duty_household_id_session_person_id_key" ON "duty"("household_id", "session", "person_id");
CREATE INDEX "duty_household_id_person_id_idx" ON "duty"("household_id", "person_id");
CREATE UNIQUE INDEX "availability_household_id_person_id_weekday_kind_key" ON "availability"("household_id", "person_id", "weekday", "kind");
CREATE INDEX "availability_person_id_idx" ON "availability"("person_id");
CREATE INDEX "reminder_household_id_due_at_idx" ON "reminder"("household_id", "due_at");
CREATE INDEX "reminder_household_id_person_id_idx" ON "reminder"("household_id", "person_id");
CREATE INDEX "reminder_person_id_idx" ON "reminder"("person_id");
create unique index reminder_once on reminder (household_id, kind, session, coalesce(task_key, ''), coalesce(person_id::text, ''), due_at);

ALTER TABLE "duty" ADD CONSTRAINT "duty_household_id_person_id_fkey" FOREIGN KEY ("household_id", "person_id") REFERENCES "membership"("household_id", "person_id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "availability" ADD CONSTRAINT "availability_household_id_person_id_fkey" FOREIGN KEY ("household_id", "person_id") REFERENCES "membership"("household_id", "person_id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "reminder" ADD CONSTRAINT "reminder_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "reminder" ADD CONSTRAINT "reminder_household_id_person_id_fkey" FOREIGN KEY ("household_id", "person_id") REFERENCES "membership"("household_id", "person_id") ON DELETE CASCADE ON UPDATE CASCADE;

alter table duty add constraint duty_session_check check (session ~ '^(weekend|evening|morning)-\d{4}-\d{2}-\d{2}$');
alter table availability add constraint availability_ranges check (kind in ('WEEKEND', 'EVENING', 'MORNING') and minutes between 0 and 600
  and weekday in ('MONDAY', 'TUESDAY', 'WEDNESDAY', 'THURSDAY', 'FRIDAY', 'SATURDAY', 'SUNDAY'));
alter table reminder add constraint reminder_kind_check check (kind in ('SESSION_BEGINS', 'TASK_BEGINS', 'TASK_GETS_LATE')
  and (kind = 'SESSION_BEGINS') = (task_key is null) and (kind = 'TASK_GETS_LATE') = (person_id is null));

alter table duty enable row level security; alter table duty force row level security;
create policy duty_read on duty for select using (household_id in (select app_household_ids()));
create policy duty_add on duty for insert with check (household_id in (select app_writable_household_ids()));
create policy duty_remove on duty for delete using (household_id in (select app_writable_household_ids()));
grant select, insert, delete on duty to noonpail_app;

-- A carer says it for themselves, a coordinator for anybody.
alter table availability enable row level security; alter table availability force row level security;
create policy availability_read on availability for select using (household_id in (select app_household_ids()));
create policy availability_add on availability for insert with check (household_id in (select app_writable_household_ids())
  and (person_id = app_person_id() or exists (select from membership m
    where m.household_id = availability.household_id and m.person_id = app_person_id() and m.role = 'COORDINATOR')));
create policy availability_remove on availability for delete using (household_id in (select app_writable_household_ids())
  and (person_id = app_person_id() or exists (select from membership m
    where m.household_id = availability.household_id and m.person_id = app_person_id() and m.role = 'COORDINATOR')));
grant select, insert, delete on availability to noonpail_app;

-- A reminder to one person is read by that person only.
alter table reminder enable row level security; alter table reminder force row level security;
create policy reminder_read on reminder for select using (household_id in (select app_household_ids()) and (person_id is null or person_id = app_person_id()));
create policy reminder_add on reminder for insert with check (household_id in (select app_writable_household_ids()));
grant select, insert on reminder to noonpail_app;

create function announce_reminder() returns trigger
language plpgsql set search_path = ''
as $$
begin
  perform pg_catalog.pg_notify('noonpail', pg_catalog.json_build_object('kind', 'REMINDER', 'householdId', new.household_id,
    'reminderId', new.id, 'personId', new.person_id)::text);
  return new;
end
$$;
create trigger reminder_announce after insert on reminder for each row execute function announce_reminder();
revoke execute on function announce_reminder() from public;

-- For reminders only: homes in which a task of the current plan begins or gets late between two instants, each with the member in
-- whose name its tasks are read (coordinators first). It is asked outside any person's transaction, and only inside it may the
-- owner read plans past the members' own policy. A task on the clock after midnight is of the day after: both days count.
create index task_day on task (right(session, 10));
create policy household_remind on household for select to current_user using (app_person_id() is null and current_setting('app.reminding', true) = 'on');
create policy week_plan_remind on week_plan for select to current_user using (app_person_id() is null and current_setting('app.reminding', true) = 'on');
create policy task_remind on task for select to current_user using (app_person_id() is null and current_setting('app.reminding', true) = 'on');
create function app_homes_to_remind(after_at timestamptz, until_at timestamptz)
returns table (household_id uuid, person_id uuid)
language plpgsql security definer set search_path = ''
as $$
declare
  -- A zone may be a day ahead or behind.
  near text[] := array(select pg_catalog.to_char(day, 'YYYY-MM-DD') from pg_catalog.generate_series(
    (after_at at time zone 'UTC')::date - 2, (until_at at time zone 'UTC')::date + 1, interval '1 day') as day);
begin
  perform pg_catalog.set_config('app.reminding', 'on', true);
  return query
    select distinct on (m.household_id) m.household_id, m.person_id from public.membership m
    where m.role <> 'OBSERVER'::public.role and m.household_id in (
      select p.household_id from public.task t
      join public.week_plan p on p.id = t.week_plan_id and p.state <> 'REPLACED'::public.plan_state
      join public.household h on h.id = p.household_id
      cross join lateral (values (0), (1)) as later (days)
      cross join lateral (values (t.starts_at), (t.latest_starts_at)) as clock (at)
      where t.state <> 'DONE'::public.work_state and pg_catalog.right(t.session, 10) = any (near)
        and (pg_catalog.right(t.session, 10)::date + later.days + clock.at::time) at time zone h.time_zone
          between after_at - interval '1 hour' and until_at + interval '1 hour')
    order by m.household_id, m.role, m.since, m.person_id;
  perform pg_catalog.set_config('app.reminding', '', true);
end
$$;
revoke execute on function app_homes_to_remind(timestamptz, timestamptz) from public;
grant execute on function app_homes_to_remind(timestamptz, timestamptz) to noonpail_app;
