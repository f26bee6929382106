/** A thorough plan as a job: asked for now, worked on by whoever has time, heard of through the subscriptions. */
import { fail, ok, type Result } from "../domain/result.js";
import type { App, PlanJob, PlanWeek } from "./app.js";
import type { FailureOf } from "./failures.js";
import { checkPlanRequest, planWeek, type PlanWeekFailure } from "./plan-week.js";
import { before, once } from "./once.js";

/** Moves of a thorough search against those of an ordinary one. */
const THOROUGH = 10;

export interface Queued {
  readonly householdId: string;
  readonly weekStart: string;
  readonly steps: number;
}

/** Looks at the request as planWeek would, then queues it. The same key queues once. */
export async function planWeekInBackground(
  app: App,
  personId: string,
  input: PlanWeek,
): Promise<Result<Queued, PlanWeekFailure>> {
  const attempt = { personId, action: "planWeekInBackground", key: input.idempotencyKey, input };
  const known = await before<Queued>(app, attempt);
  if (known) return known;
  const checked = await checkPlanRequest(app, personId, input);
  if (!checked.ok) return checked;
  const { household, weekStart } = checked.value;
  const { queue } = app;
  if (queue === null)
    return fail({
      kind: "InvalidInput",
      issues: [{ field: "", problem: "this server has no queue", fix: "Use planWeek." }],
    });
  const queued = { householdId: household.id, weekStart, steps: app.planSteps * THOROUGH };
  // First the job, then the key: a crash between the two leaves a job that a second one finds done.
  await queue.send({ personId, input });
  return once<Queued, FailureOf<"InvalidInput" | "KeyReused">>(app, attempt, () => Promise.resolve(ok(queued)));
}

/** What a worker does with a job. A refusal is announced, not thrown: trying again would not help. */
export async function workOnPlanJob(app: App, { personId, input }: PlanJob): Promise<Result<null, PlanWeekFailure>> {
  // The key of the request stands for the request; the plan it leads to has one of its own.
  const planned = await planWeek(
    app,
    personId,
    { ...input, idempotencyKey: `job-${input.idempotencyKey}`.slice(0, 100) },
    app.planSteps * THOROUGH,
  );
  if (planned.ok) return ok(null);
  const { householdId, date } = input;
  if (householdId !== null) {
    await app.db.announce({
      kind: "PLAN_PROGRESS",
      householdId,
      weekStart: date,
      percent: 100,
      bestPoints: null,
      failure: planned.error.kind,
    });
  }
  return planned;
}
