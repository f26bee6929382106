-- How good a week is for sure, with everything it takes to work that out again.
CREATE TABLE "plan_certificate" (
    "week_plan_id" UUID NOT NULL,
    "household_id" UUID NOT NULL,
    "objective_points" DOUBLE PRECISION NOT NULL,
    "bound_points" DOUBLE PRECISION NOT NULL,
    "nodes" INTEGER NOT NULL,
    "milliseconds" INTEGER NOT NULL,
    "problem" BYTEA NOT NULL,
    "certificate" BYTEA NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "plan_certificate_pkey" PRIMARY KEY ("week_plan_id")
);

CREATE INDEX "plan_certificate_household_id_idx" ON "plan_certificate"("household_id");

ALTER TABLE "plan_certificate" ADD CONSTRAINT "plan_certificate_week_plan_id_fkey" FOREIGN KEY ("week_plan_id") REFERENCES "week_plan"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "plan_certificate" ADD CONSTRAINT "plan_certificate_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

alter table plan_certificate add constraint plan_certificate_bound_check check (bound_points <= objective_points and nodes > 0 and milliseconds >= 0);

-- A plan's points are its kitchen's; so is what is known about them.
alter table plan_certificate enable row level security; alter table plan_certificate force row level security;
create policy plan_certificate_read on plan_certificate for select using (household_id in (select app_household_ids()));
create policy plan_certificate_add on plan_certificate for insert with check (household_id in (select app_writable_household_ids())
  and exists (select from week_plan p where p.id = plan_certificate.week_plan_id and p.household_id = plan_certificate.household_id));
create policy plan_certificate_remove on plan_certificate for delete using (household_id in (select app_writable_household_ids()));
grant select, insert, delete on plan_certificate to noonpail_app;
