/** Plans a household's week: read, plan in the worker thread, check independently, store as a new revision. */
import type { Tx } from "../database/database.js";
import { announceVerdicts, blockRowOf, lockVerdicts } from "../database/recheck.js";
import { savePlan, type BlockRow, type BoxStateCode, type WeekRow } from "../database/week.js";
import { boxKey } from "../domain/box-key.js";
import { checkWeek } from "../domain/checker/check-week.js";
import { addDays, isCalendarDate } from "../domain/calendar/dates.js";
import { OperatorError } from "../domain/operator-error.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { WeekBrief } from "../domain/brief.js";
import type { Conflict } from "../domain/planner/conflicts.js";
import { hasBegun, takeOver } from "../domain/kitchen/kept-tasks.js";
import { changedBoxes } from "../domain/week-difference.js";
import type { BoxPlan, WeekDraft } from "../domain/week.js";
import type { App, PlanAnswer, PlanWeek } from "./app.js";
import { enrolmentOn, nextSchoolDay, wakesHere, weekDates } from "./assemble-brief.js";
import { roleIn } from "./change-household.js";
import { lockWeek, type WeekRef } from "./change-week.js";
import { invalid } from "./check-input.js";
import type { FailureOf } from "./failures.js";
import { judgeBoxes } from "./judge-boxes.js";
import { leastRole, may, type Verb } from "./may.js";
import { nothingToPack } from "./nothing-to-pack.js";
import { before, once, type Attempt } from "./once.js";
import { proveLater } from "./prove-week.js";
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
class PlanFailedCheck extends OperatorError {
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
  /** What that will make of facts read before it is committed. */
  readonly foresee?: (inputs: WeekInputs) => WeekInputs;
  /** Whether an agreed week stays agreed, by the boxes that change; always when absent. */
  readonly staysAgreed?: (changed: readonly string[]) => boolean;
}

type StoreFailure = FailureOf<"NotPermitted" | "RevisionPassed" | "KeyReused" | "InvalidInput">;

/** Checks the week independently and writes it, all in one transaction. */
export const storePlan = <Gone>(app: App, request: StoreRequest<Gone>): Promise<Result<WeekRef, Gone | StoreFailure>> =>
  storePlanAs(app, request, (ref) => ref);

/**
 * @typeParam T what is stored under the key of the attempt: keys and numbers only
 * @param outcomeOf makes it of the week and the number of the plan
 */
export async function storePlanAs<Gone, T>(
  app: App,
  request: StoreRequest<Gone>,
  outcomeOf: (ref: WeekRef, number: number) => T,
): Promise<Result<T, Gone | StoreFailure>> {
  const { inputs, brief, answer, attempt } = request;
  const faults = checkWeek(brief, answer.outcome.draft);
  if (faults.length > 0) throw new PlanFailedCheck(faults);
  const draft = { ...answer.outcome.draft, boxes: [...answer.outcome.draft.boxes, ...inputs.setAside()] };
  const old = inputs.before;
  const changed = changedBoxes(old?.plan.boxes ?? [], draft.boxes);
  const boxStates = new Map(
    (old?.plan.boxes ?? [])
      // What is blocked is made anew; what is over stays as it was.
      .filter((box) => box.state !== "BLOCKED" || box.date < inputs.now.date)
      .map((box) => [
        boxKey(box),
        {
          state: box.state,
          packedAt: box.packedAt ? new Date(box.packedAt) : null,
          packedById: box.packing?.packedBy?.id ?? null,
        },
      ]),
  );
  const householdId = inputs.household.id;
  let stored = null as { readonly weekId: string; readonly planId: string } | null;
  const number = (old?.plan.number ?? 0) + 1;
  const tried = { ...attempt, forget: () => void (stored = null) };
  const result = await once<T, Gone | FailureOf<"NotPermitted" | "RevisionPassed">>(app, tried, async (tx) => {
    // Before every other lock, as whoever changes carers expects.
    if ((await roleIn(tx, attempt.personId, householdId)) === null) return fail(request.gone);
    await lockVerdicts(tx, householdId);
    // A child who was erased, or whose home this is no longer, is in the draft; nothing of it may be stored.
    const living = new Set(
      (await tx.residence.findMany({ where: { householdId }, select: { childId: true } })).map(
        ({ childId }) => childId,
      ),
    );
    if (inputs.household.children.some(({ id }) => !living.has(id)))
      return fail({
        kind: "RevisionPassed",
        seenRevision: request.seenRevision,
        currentRevision: old?.revision ?? 0,
      });
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
    const agreed = old?.plan.state === "AGREED" && (request.staysAgreed?.(changed) ?? true);
    // What the week was planned by may have changed while it was planned: it is stored with the verdict of this moment.
    const { blocks, moved } = await verdictNow(app, attempt.personId, inputs, draft, boxStates, request.foresee);
    const planId = await savePlan(tx, {
      householdId,
      weekId,
      number,
      state: agreed ? "AGREED" : "DRAFT",
      draft: { ...draft, boxes: draft.boxes.filter((box) => !moved.has(boxKey(box))) },
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
      boxStates,
      blocks: new Map([...blocks, ...blocksOfThePast(inputs)]),
      packsTicked: new Map(
        (old?.plan.shopping ?? []).filter(({ ticked }) => ticked).map(({ food, packs }) => [food, packs]),
      ),
      takenOver: takeOver(
        old?.plan.tasks ?? [],
        draft.tasks,
        (base, session) =>
          draft.batches.some((batch) => batch.made && batch.base === base && batch.session === session),
        hasBegun(old?.plan.tasks ?? [], inputs.now),
      ),
      allergensOf: (dish) => inputs.index.derived(dish).allergens,
    });
    stored = { weekId, planId };
    const wereBlocked = (old?.plan.boxes ?? []).filter((box) => box.state === "BLOCKED" && box.date >= inputs.now.date);
    await announceVerdicts(tx, [
      ...new Map(
        [...wereBlocked, ...draft.boxes.filter((box) => blocks.has(boxKey(box)))].map((box) => [boxKey(box), box]),
      ).values(),
    ]);
    return ok(outcomeOf({ householdId, weekStart: inputs.weekStart, changed }, number));
  });
  const { problem, outcome } = answer;
  if (result.ok && stored !== null && problem !== null)
    proveLater(app, attempt.personId, {
      ...stored,
      householdId,
      weekStart: inputs.weekStart,
      problem,
      objectivePoints: outcome.objectivePoints,
    });
  return result;
}

interface VerdictNow {
  /** By box "childId@date". */
  readonly blocks: ReadonlyMap<string, readonly BlockRow[]>;
  /** Boxes of days on which the child wakes in another home by now. */
  readonly moved: ReadonlySet<string>;
}

/**
 * Why boxes of a week about to be stored would not pass, by everything that is committed by now, and which are another home's to
 * pack; boxes of the past stay out.
 */
async function verdictNow(
  app: App,
  personId: string,
  planned: WeekInputs,
  draft: WeekDraft,
  boxStates: ReadonlyMap<string, { readonly state: BoxStateCode }>,
  foresee: (inputs: WeekInputs) => WeekInputs = (inputs) => inputs,
): Promise<VerdictNow> {
  const read = await app.db.readAs(personId, (tx) => readWeekInputs(app, tx, planned.household.id, planned.weekStart));
  if (!read) return { blocks: new Map(), moved: new Set() };
  const inputs = foresee(read);
  const open = draft.boxes.filter((box) => box.date >= inputs.now.date);
  const isIn = (box: BoxPlan, state: BoxStateCode) => boxStates.get(boxKey(box))?.state === state;
  // What is packed or eaten moves to no other home.
  const moved = new Set(
    open
      .filter((box) => !isIn(box, "PACKED") && !isIn(box, "EATEN"))
      .filter((box) => !wakesHere(inputs.facts, inputs.household.id, box.childId, box.date))
      .map(boxKey),
  );
  const keys = open.map(boxKey).filter((key) => !moved.has(key));
  const of = (state: BoxStateCode) => new Set(keys.filter((key) => boxStates.get(key)?.state === state));
  const eaten = of("EATEN");
  const judged = new Set(keys.filter((key) => !eaten.has(key)));
  const { index, household, upset } = inputs;
  const blocks = judgeBoxes(index, household, inputs.asStored(), draft, judged, of("PACKED"), upset);
  return { blocks: new Map([...blocks].map(([key, reasons]) => [key, reasons.map(blockRowOf)])), moved };
}

/** Reasons of blocked boxes of days gone by: they stay on record with their boxes. */
const blocksOfThePast = ({ before, now }: WeekInputs): [string, readonly BlockRow[]][] =>
  (before?.plan.boxes ?? [])
    .filter((box) => box.state === "BLOCKED" && box.date < now.date)
    .map((box) => [boxKey(box), box.blocks]);

/** The week's inputs with the reader's rights, and whether the person may do this; read before the long work. */
export async function openWeek(
  app: App,
  personId: string,
  householdId: string | null,
  date: string,
  verb: Verb,
): Promise<Result<WeekInputs, FailureOf<"HouseholdNotFound" | "NotPermitted">>> {
  if (householdId === null) return fail({ kind: "HouseholdNotFound" });
  const inputs = await app.db.readAs(personId, (tx) => readWeekInputs(app, tx, householdId, date));
  if (!inputs) return fail({ kind: "HouseholdNotFound" });
  if (!may(inputs.household.myRole, verb)) return fail({ kind: "NotPermitted", neededRole: leastRole[verb] });
  return ok(inputs);
}

/** Plans in the worker and tells who listens how far it is. */
export async function planWithProgress(
  app: App,
  inputs: WeekInputs,
  brief: WeekBrief,
  options: { compare: boolean; seed?: number; steps?: number; signal?: AbortSignal | undefined },
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
    options.signal,
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
  if (brief.children.length === 0 && !isLeftOver(old))
    return fail({ kind: "OutsideTerm", weekStart, nextSchoolDay: nextSchoolDay(household, addDays(weekStart, 7)) });
  return ok({ ...inputs, brief });
}

/** A week whose last box has moved to another home, with the work for it still on the list. */
const isLeftOver = (week: WeekRow | null): boolean =>
  week !== null && week.plan.boxes.length === 0 && week.plan.tasks.length > 0;

/** The refusal, with all it takes to ask why. */
export const weekInfeasible = (conflicts: readonly Conflict[], brief: WeekBrief, { now }: WeekInputs) =>
  fail({ kind: "WeekInfeasible", conflicts, brief, notBefore: now.date } as const);

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
  const answer =
    brief.children.length === 0
      ? nothingToPack
      : await planWithProgress(app, inputs, brief, {
          compare: true,
          ...(steps === undefined ? {} : { steps }),
        });
  if (answer.outcome.kind === "INFEASIBLE") return weekInfeasible(answer.outcome.conflicts, brief, inputs);
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
