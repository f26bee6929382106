/** Plans a household's week: read, plan in the worker thread, check independently, store as a new revision. */
import type { Tx } from "../database/database.js";
import { savePlan, type WeekRow } from "../database/week.js";
import { checkWeek } from "../domain/checker/check-week.js";

import { addDays, isCalendarDate } from "../domain/calendar/dates.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { WeekBrief } from "../domain/brief.js";
import type { WeekDraft } from "../domain/week.js";
import type { App, PlanAnswer, PlanWeek } from "./app.js";
import { enrolmentOn, nextSchoolDay, wakesHere, weekDates } from "./assemble-brief.js";
import { lockWeek, type WeekRef } from "./change-week.js";
import { invalid } from "./check-input.js";
import type { FailureOf } from "./failures.js";
import { leastRole, may, type Verb } from "./may.js";
import { before, once, type Attempt } from "./once.js";
import { readWeekInputs, type WeekInputs } from "./read-brief.js";

export type PlanWeekFailure = FailureOf<
  | "InvalidInput"
  | "HouseholdNotFound"
  | "NotPermitted"
  | "RevisionPassed"
  | "KeyReused"
  | "WeekAgreed"
  | "OutsideTerm"
  | "NoSchool"
  | "WeekInfeasible"
>;

/** A plan that the independent checker refuses is a bug of the planner: loud, never stored, never shown. */
class PlanFailedCheck extends Error {
  constructor(readonly faults: readonly { readonly kind: string }[]) {
    super(
      `The planner's week failed the independent check: ${[...new Set(faults.map((fault) => fault.kind))].join(", ")}`,
    );
  }
}

const DEFAULT_SEED = 20_260_907;

/** Children who wake here on a weekday of that week and have no school on it. */
function childrenWithoutSchool(inputs: WeekInputs): string[] {
  const { household, facts, weekStart } = inputs;
  const weekdays = weekDates(weekStart);
  return household.children
    .filter(
      (child) =>
        weekdays.some((date) => wakesHere(facts, household.id, child.id, date)) &&
        weekdays.every((date) => enrolmentOn(child, date) === null),
    )
    .map((child) => child.id);
}

/** Boxes that differ between two plans, as "childId@date". */
function changedBoxes(old: WeekRow | null, draft: WeekDraft): string[] {
  const line = (items: readonly { breakKey: string; slot: string; dish: string; grams: number }[]) =>
    items
      .map((item) => `${item.breakKey}/${item.slot}/${item.dish}/${item.grams}`)
      .sort()
      .join("|");
  const was = new Map((old?.plan.boxes ?? []).map((box) => [`${box.childId}@${box.date}`, line(box.items)]));
  const is = new Map(draft.boxes.map((box) => [`${box.childId}@${box.date}`, line(box.items)]));
  return [...new Set([...was.keys(), ...is.keys()])].filter((key) => was.get(key) !== is.get(key)).sort();
}

export interface StoreRequest<Gone> {
  readonly attempt: Attempt;
  readonly verb: Verb;
  readonly seenRevision: number;
  /** What to answer when the household stopped being the person's while the week was planned. */
  readonly gone: Gone;
  readonly inputs: WeekInputs;
  readonly brief: WeekBrief;
  readonly answer: PlanAnswer & { readonly outcome: { readonly kind: "PLANNED" } };
  /** More to write in the same transaction, before the plan. */
  readonly also?: (tx: Tx) => Promise<void>;
}

/** Checks the week independently and writes it, all in one transaction. */
export function storePlan<Gone>(
  app: App,
  request: StoreRequest<Gone>,
): Promise<Result<WeekRef, Gone | FailureOf<"NotPermitted" | "RevisionPassed" | "KeyReused" | "InvalidInput">>> {
  const { inputs, brief, answer, attempt } = request;
  const { draft } = answer.outcome;
  const faults = checkWeek(brief, draft);
  if (faults.length > 0) throw new PlanFailedCheck(faults);
  const old = inputs.before;
  return once<WeekRef, Gone | FailureOf<"NotPermitted" | "RevisionPassed">>(app, attempt, async (tx) => {
    const householdId = inputs.household.id;
    let weekId = old?.id;
    if (weekId === undefined) {
      // Two people planning a week for the first time at once: one makes the row, the other finds its revision moved.
      await tx.$executeRaw`insert into week (household_id, week_start) values (${householdId}::uuid, ${inputs.weekStart}::date) on conflict (household_id, week_start) do nothing`;
      const row = await tx.week.findUniqueOrThrow({
        where: { householdId_weekStart: { householdId, weekStart: new Date(`${inputs.weekStart}T00:00:00Z`) } },
        select: { id: true },
      });
      weekId = row.id;
    }
    const locked = await lockWeek(tx, attempt.personId, weekId, request.seenRevision, request.verb);
    if (!locked.ok) return fail(locked.error.kind === "NothingThere" ? request.gone : locked.error);
    await request.also?.(tx);
    const agreed = old?.plan.state === "AGREED";
    await savePlan(tx, {
      householdId,
      weekId,
      number: (old?.plan.number ?? 0) + 1,
      state: agreed ? "AGREED" : "DRAFT",
      draft,
      seed: answer.outcome.seed,
      steps: answer.outcome.steps,
      problemHash: answer.outcome.problemHash,
      catalogueVersion: brief.catalogue.version,
      ruleSetVersions: brief.ruleSets.map((set) => `${set.key}@${set.version}`),
      comparison: answer.compared
        ? { handsOnMinutesShared: draft.wishes.handsOnMinutes, handsOnMinutesAlone: answer.aloneMinutes }
        : (old?.plan.comparison ?? null),
      createdById: attempt.personId,
      agreedAt: agreed && old.plan.agreedAt ? new Date(old.plan.agreedAt) : null,
      boxStates: new Map(
        (old?.plan.boxes ?? [])
          .filter((box) => box.state !== "BLOCKED")
          .map((box) => [
            `${box.childId}@${box.date}`,
            {
              state: box.state,
              packedAt: box.packedAt ? new Date(box.packedAt) : null,
              packedById: box.packing?.packedBy?.id ?? null,
            },
          ]),
      ),
      taskStates: new Map(
        (old?.plan.tasks ?? []).map((task) => [task.key, { state: task.state, takenById: task.takenBy?.id ?? null }]),
      ),
      allergensOf: (dish) => app.index.derived(dish).allergens,
    });
    return ok({ householdId, weekStart: inputs.weekStart, changed: changedBoxes(old, draft) });
  });
}

/** The week's inputs with the reader's rights, and whether the person may do this; read before the long work. */
export async function openWeek(
  app: App,
  personId: string,
  householdId: string | null,
  date: string,
  verb: Verb,
): Promise<Result<WeekInputs, FailureOf<"HouseholdNotFound" | "NotPermitted">>> {
  if (householdId === null) return fail({ kind: "HouseholdNotFound" });
  const session = app.db.openRead(personId);
  try {
    const inputs = await session.read((tx) => readWeekInputs(app, tx, householdId, date));
    if (!inputs) return fail({ kind: "HouseholdNotFound" });
    if (!may(inputs.household.myRole, verb)) return fail({ kind: "NotPermitted", neededRole: leastRole[verb] });
    return ok(inputs);
  } finally {
    await session.close();
  }
}

/** Plans in the worker and tells who listens how far it is. */
export async function planWithProgress(
  app: App,
  inputs: WeekInputs,
  brief: WeekBrief,
  options: { compare: boolean; seed?: number; steps?: number },
): Promise<PlanAnswer> {
  // One after the other: sent side by side they would arrive in any order.
  let told: Promise<void> = Promise.resolve();
  const announce = (percent: number, bestPoints: number | null) => {
    const { weekStart, household } = inputs;
    told = told
      .then(() => app.db.announce({ kind: "PLAN_PROGRESS", householdId: household.id, weekStart, percent, bestPoints }))
      // Nobody waits for a progress report, and a plan does not fail for want of one.
      .catch(() => undefined);
  };
  const answer = await app.planner.plan(
    { brief, seed: options.seed ?? DEFAULT_SEED, steps: options.steps ?? app.planSteps, compare: options.compare },
    announce,
  );
  await told;
  return answer;
}

/** Whether a week can be planned at all, before any search: whose it is, which revision, which school. */
export async function checkPlanRequest(
  app: App,
  personId: string,
  input: PlanWeek,
): Promise<Result<WeekInputs & { readonly brief: WeekBrief }, PlanWeekFailure>> {
  if (!isCalendarDate(input.date))
    return fail(invalid("date", `${input.date} is no day of the calendar`, "Send a real date as YYYY-MM-DD."));
  const opened = await openWeek(app, personId, input.householdId, input.date, "planWeek");
  if (!opened.ok) return opened;
  const inputs = opened.value;
  const { before: old, weekStart, household } = inputs;
  const currentRevision = old?.revision ?? 0;
  if (currentRevision !== input.seenRevision)
    return fail({ kind: "RevisionPassed", seenRevision: input.seenRevision, currentRevision });
  if (old?.plan.state === "AGREED" && !input.replanAgreed)
    return fail({ kind: "WeekAgreed", agreedAt: old.plan.agreedAt ?? old.plan.createdAt });
  const homeless = childrenWithoutSchool(inputs);
  if (homeless.length > 0) return fail({ kind: "NoSchool", childIds: homeless });
  const brief = inputs.assemble({ stayClose: old?.plan.state === "AGREED" });
  if (brief.children.length === 0)
    return fail({ kind: "OutsideTerm", weekStart, nextSchoolDay: nextSchoolDay(household, addDays(weekStart, 7)) });
  return ok({ ...inputs, brief });
}

/** What a plan is remembered by. */
export const planAttempt = (personId: string, input: PlanWeek): Attempt => ({
  personId,
  action: "planWeek",
  key: input.idempotencyKey,
  input,
});

/** @param steps moves of the search; absent: the app's usual number */
export async function planWeek(
  app: App,
  personId: string,
  input: PlanWeek,
  steps?: number,
): Promise<Result<WeekRef, PlanWeekFailure>> {
  const attempt = planAttempt(personId, input);
  const known = await before<WeekRef>(app, attempt);
  if (known) return known;
  const checked = await checkPlanRequest(app, personId, input);
  // Its twin, sent at the same time, may have done it since: then that one's outcome is the answer.
  if (!checked.ok) return (await before<WeekRef>(app, attempt)) ?? checked;
  const { brief, ...inputs } = checked.value;
  const answer = await planWithProgress(app, inputs, brief, {
    compare: true,
    ...(steps === undefined ? {} : { steps }),
  });
  if (answer.outcome.kind === "INFEASIBLE")
    return fail({ kind: "WeekInfeasible", conflicts: answer.outcome.conflicts });
  return storePlan(app, {
    gone: { kind: "HouseholdNotFound" } as const,
    attempt,
    verb: "planWeek",
    seenRevision: input.seenRevision,
    inputs,
    brief,
    answer: { ...answer, outcome: answer.outcome },
  });
}
