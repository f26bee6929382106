/** A thorough plan as a job: asked for now, worked on by whoever has time, heard of through the subscriptions. */
import { randomUUID } from "node:crypto";
import { fail, ok, type Result } from "../domain/result.js";
import type { App, PlanJob, PlanWeek } from "./app.js";
import { invalid } from "./check-input.js";
import { before, once } from "./once.js";
import { checkPlanRequest, planAttempt, planWeek, type PlanWeekFailure } from "./plan-week.js";

/** Moves of a thorough search against those of an ordinary one. */
const THOROUGH = 10;

export interface Queued {
  readonly householdId: string;
  readonly weekStart: string;
  /** Moves the job's search will make. */
  readonly steps: number;
}

/** Why a job ended without a plan. `GaveUp`: every attempt broke off, by a fault or with its worker. */
export type PlanJobFailure = PlanWeekFailure | { readonly kind: "GaveUp" };

/** Puts a failure into a sentence for everybody in the household. */
type Say = (failure: PlanJobFailure) => string;

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
  // Its twin, sent at the same time, may be planned already: then that one's outcome is the answer.
  if (!checked.ok) return (await before<Queued>(app, attempt)) ?? checked;
  const { household, weekStart } = checked.value;
  const { queue } = app;
  if (queue === null) return fail(invalid("", "this server has no queue", "Use planWeek."));
  const queued = { householdId: household.id, weekStart, steps: app.planSteps * THOROUGH };
  // Key and job are written together or not at all.
  return once<Queued, never>(app, attempt, async (tx) => {
    await queue.send({ ...queued, id: randomUUID(), personId, input }, tx);
    return ok(queued);
  });
}

/** The key of the request stands for the request; the plan it leads to has one of its own, the same at every attempt. */
const inputOf = (job: PlanJob): PlanWeek => ({ ...job.input, idempotencyKey: `job-${job.id}` });

/**
 * What a worker does with a job. A refusal is announced, not thrown: trying again would not help.
 * @throws when the plan broke off; the job may come again
 */
export async function workOnPlanJob(app: App, job: PlanJob, say: Say): Promise<Result<null, PlanWeekFailure>> {
  const planned = await planWeek(app, job.personId, inputOf(job), job.steps);
  if (planned.ok) return ok(null);
  await announceFailure(app, job, say(planned.error));
  return planned;
}

/** Announces a job that will not come again, unless one of its attempts did leave a plan. */
export async function giveUpPlanJob(app: App, job: PlanJob, say: Say): Promise<Result<null, PlanJobFailure>> {
  if (await before(app, planAttempt(job.personId, inputOf(job)))) return ok(null);
  const failure: PlanJobFailure = { kind: "GaveUp" };
  await announceFailure(app, job, say(failure));
  return fail(failure);
}

const announceFailure = (app: App, { householdId, weekStart }: PlanJob, failure: string) =>
  app.db.announce({ kind: "PLAN_FAILED", householdId, weekStart, failure });
