/**
 * Something upsets the week: a child stays home, the school closes, an oven breaks. What happened is a fact and is always recorded,
 * at 6:50 in the morning too. With it, in the same transaction, goes the week planned again: everything that can stay as it is is
 * held, so that as few boxes change as can, then the wishes decide; nothing that is pinned, packed or cooked moves. Where no such
 * week is left the fact stands alone, the boxes that no longer pass are BLOCKED, and the answer says what clashes.
 */
import { randomUUID } from "node:crypto";
import { disruptionInput } from "../../shared/inputs.js";
import {
  isOfKitchen,
  readDisruption,
  removeDisruption,
  saveDisruption,
  type DisruptionRow,
} from "../database/disruption.js";
import type { Tx } from "../database/database.js";
import type { PlanningFacts } from "../database/planning.js";
import type { PlanRow } from "../database/week.js";
import { boxKey } from "../domain/box-key.js";
import { daysBetween, isCalendarDate } from "../domain/calendar/dates.js";
import { checkWeek } from "../domain/checker/check-week.js";
import type { WeekBrief } from "../domain/brief.js";
import type { Conflict } from "../domain/planner/conflicts.js";
import { fail, ok, type Result } from "../domain/result.js";
import { differenceBetween, type WeekDifference } from "../domain/week-difference.js";
import type { App, PlanAnswer } from "./app.js";
import { roleIn } from "./change-household.js";
import { lockWeek } from "./change-week.js";
import { checkInput, invalid } from "./check-input.js";
import { draftOf } from "./draft-of.js";
import type { FailureOf } from "./failures.js";
import { judgeBoxes } from "./judge-boxes.js";
import { leastRole, may, type Verb } from "./may.js";
import { nearest } from "../domain/nearest.js";
import { before, checkRevision, once, type Attempt } from "./once.js";
import { planHolding } from "./plan-holding.js";
import { openWeek, storePlanAs, weekInfeasible } from "./plan-week.js";
import type { WeekInputs } from "./read-brief.js";
import { queueRecheck, recheckNow, touching } from "./recheck.js";

/** Exactly one of these is given. */
export interface DisruptionAsked {
  readonly childAbsent?: ChildDays | null;
  readonly schoolClosed?: ChildDays | null;
  readonly earlyFinish?: (ChildDays & { readonly endsAt: string }) | null;
  readonly tripDay?: ChildDays | null;
  readonly foodMissing?: (Days & { readonly foodKind: string }) | null;
  readonly applianceBroken?: (Days & { readonly appliance: string; readonly units: number }) | null;
  readonly shortMorning?: { readonly date: string; readonly minutes: number } | null;
}
interface Days {
  readonly date: string;
  /** Absent: that one day. */
  readonly until?: string | null;
}
interface ChildDays extends Days {
  readonly childId: string | null;
  readonly reason?: string | null;
}

export interface ReportDisruption {
  readonly idempotencyKey: string;
  readonly householdId: string | null;
  readonly disruption: DisruptionAsked;
  /** Of the week of the first day that is not over; 0 when nothing has been planned for it. */
  readonly seenRevision: number;
}
export interface WithdrawDisruption {
  readonly idempotencyKey: string;
  readonly householdId: string | null;
  readonly disruption: { readonly of: "child" | "kitchen"; readonly id: string } | null;
  readonly seenRevision: number;
}

/** Where an answer about a disruption is read again. */
export interface DisruptionRef {
  readonly householdId: string;
  readonly weekStart: string;
  /** Null when it was taken back. */
  readonly disruption: { readonly of: "child" | "kitchen"; readonly id: string } | null;
  /** Of the plan before and the one that obeys it; null when the plan stays as it is. */
  readonly plans: { readonly before: number; readonly after: number } | null;
  /** Boxes that differ, "childId@date". */
  readonly changed: readonly string[];
  /** No week was found that obeys it. */
  readonly isUnplanned: boolean;
}

type RecordFailure = FailureOf<"InvalidInput" | "HouseholdNotFound" | "NotPermitted" | "RevisionPassed" | "KeyReused">;

/** The input names it "disruption.<case>.<field>". */
type Case = keyof DisruptionAsked;
const kinds = {
  childAbsent: "ABSENT",
  schoolClosed: "SCHOOL_CLOSED",
  earlyFinish: "EARLY_FINISH",
  tripDay: "TRIP",
  foodMissing: "FOOD_MISSING",
  applianceBroken: "APPLIANCE_BROKEN",
  shortMorning: "SHORT_MORNING",
} as const satisfies Record<Case, DisruptionRow["kind"]>;
const cases = Object.keys(kinds) as Case[];

/** Days one report may span, and how far ahead it may lie. */
const MOST_DAYS = 62;
const MOST_AHEAD = 366;

interface Opened {
  readonly inputs: WeekInputs;
  readonly row: DisruptionRow;
}
type OpenFailure = FailureOf<"InvalidInput" | "HouseholdNotFound" | "ChildNotFound" | "NotPermitted">;

/** The week of the first day that is not over, and what is to be recorded; all complaints before any search. */
async function openDisruption(
  app: App,
  personId: string,
  householdId: string | null,
  asked: DisruptionAsked,
  verb: Verb,
): Promise<Result<Opened, OpenFailure>> {
  const given = cases.filter((name) => asked[name] != null);
  const [name] = given;
  if (name === undefined || given.length > 1)
    return fail(invalid("disruption", `${given.length} things are said at once`, `Give one of ${cases.join(", ")}.`));
  const at = (field: string) => `disruption.${name}.${field}`;
  const checked = checkInput(disruptionInput, asked, "disruption");
  if (!checked.ok) return checked;
  const said = { until: null, reason: null, ...asked[name]! } as Days & Partial<ChildDays & Details>;
  const { date } = said;
  const until = said.until ?? date;
  for (const [field, day] of [
    ["date", date],
    ["until", until],
  ] as const)
    if (!isCalendarDate(day))
      return fail(invalid(at(field), `${day} is no day of the calendar`, "Send a real date as YYYY-MM-DD."));
  if (until < date)
    return fail(invalid(at("until"), `${until} is before ${date}`, "Send the last day, or leave it out."));
  if (daysBetween(date, until) > MOST_DAYS)
    return fail(
      invalid(at("until"), `that is ${daysBetween(date, until)} days after the first`, `Send at most ${MOST_DAYS}.`),
    );
  const opened = await openFrom(app, personId, householdId, date, verb);
  if (!opened.ok) return opened;
  const today = opened.value.now.date;
  if (until < today)
    return fail(invalid(at(said.until == null ? "date" : "until"), `${until} is over`, "Send a day from today on."));
  if (daysBetween(today, date) > MOST_AHEAD)
    return fail(invalid(at("date"), `${date} is more than a year ahead`, "Send a nearer day."));
  const row = rowOf(opened.value, name, at, { ...said, until });
  return row.ok ? ok({ inputs: opened.value, row: row.value }) : row;
}

/** The week of the day, or of today where the day is over. */
async function openFrom(...[app, personId, householdId, date, verb]: Parameters<typeof openWeek>) {
  const opened = await openWeek(app, personId, householdId, date, verb);
  const today = opened.ok ? opened.value.now.date : date;
  return date < today ? openWeek(app, personId, householdId, today, verb) : opened;
}

interface Details {
  readonly endsAt: string;
  readonly foodKind: string;
  readonly appliance: string;
  readonly units: number;
  readonly minutes: number;
}

function rowOf(
  { household, asStored }: WeekInputs,
  name: Case,
  at: (field: string) => string,
  said: { readonly date: string; readonly until: string } & Partial<Omit<ChildDays, "until"> & Details>,
): Result<DisruptionRow, OpenFailure> {
  const { date, until } = said;
  const common = { id: randomUUID(), date, until };
  const kind = kinds[name];
  const ofKitchen = { ...common, foodKind: null, appliance: null, units: null, minutes: null };
  switch (kind) {
    case "FOOD_MISSING": {
      const foodKind = said.foodKind ?? "";
      const known = [...new Set(asStored().catalogue.foods.map((food) => food.kind))].sort();
      if (!known.includes(foodKind))
        return fail(
          invalid(
            at("foodKind"),
            `no food of the catalogue is of the kind "${foodKind}"`,
            `Did you mean ${nearest(foodKind, known).join(", ")}?`,
          ),
        );
      return ok({ ...ofKitchen, kind, foodKind });
    }
    case "APPLIANCE_BROKEN": {
      const owned = household.equipment.filter((row) => row.units > 0);
      const appliance = owned.find((row) => row.kind === said.appliance);
      if (!appliance)
        return fail(
          invalid(
            at("appliance"),
            `this kitchen has no ${said.appliance ?? ""} on record`,
            `Send one of ${owned.map((row) => row.kind).join(", ")}.`,
          ),
        );
      return ok({ ...ofKitchen, kind, appliance: appliance.kind, units: Math.min(said.units ?? 1, appliance.units) });
    }
    case "SHORT_MORNING":
      return ok({ ...ofKitchen, kind, minutes: said.minutes ?? 0 });
    case "ABSENT":
    case "SCHOOL_CLOSED":
    case "EARLY_FINISH":
    case "TRIP": {
      const childId = said.childId ?? null;
      if (childId === null || !household.children.some((child) => child.id === childId))
        return fail({ kind: "ChildNotFound" });
      return ok({ ...common, kind, childId, endsAt: said.endsAt ?? null, reason: said.reason ?? "" });
    }
  }
}

/** The facts with a report, as saving it will leave them: it takes the place of one of its kind about the same from the same day. */
function adding(facts: PlanningFacts, row: DisruptionRow): PlanningFacts {
  if (isOfKitchen(row)) {
    const others = facts.kitchenDisruptions.filter(
      ({ kind, date, foodKind, appliance }) =>
        !(kind === row.kind && date === row.date && foodKind === row.foodKind && appliance === row.appliance),
    );
    return { ...facts, kitchenDisruptions: [...others, row] };
  }
  const others = facts.childDisruptions.filter(
    ({ kind, date, childId }) => !(kind === row.kind && date === row.date && childId === row.childId),
  );
  return { ...facts, childDisruptions: [...others, row] };
}

const without = (facts: PlanningFacts, { id }: DisruptionRow): PlanningFacts => ({
  ...facts,
  childDisruptions: facts.childDisruptions.filter((row) => row.id !== id),
  kitchenDisruptions: facts.kitchenDisruptions.filter((row) => row.id !== id),
});

type Replanned =
  /** Nothing is planned, or the plan passes as it is. */
  | { readonly kind: "STANDS" }
  | {
      readonly kind: "PLANNED";
      readonly brief: WeekBrief;
      readonly answer: PlanAnswer & { readonly outcome: { readonly kind: "PLANNED" } };
    }
  | { readonly kind: "INFEASIBLE"; readonly brief: WeekBrief; readonly conflicts: readonly Conflict[] };

/** @param later the inputs with the facts as they will be */
async function replanFor(app: App, later: WeekInputs, signal?: AbortSignal): Promise<Replanned> {
  const week = later.before;
  if (!week) return { kind: "STANDS" };
  const draft = draftOf(week.plan);
  const aside = new Set(later.setAside().map(boxKey));
  const brief = later.assemble({ stayClose: true });
  const boxes = draft.boxes.filter((box) => !aside.has(boxKey(box)));
  if (checkWeek(brief, { ...draft, boxes }).length === 0) return { kind: "STANDS" };
  const open = week.plan.boxes.filter((box) => box.state !== "EATEN" && box.date >= later.now.date);
  const packed = new Set(open.filter((box) => box.state === "PACKED").map(boxKey));
  const { index, household, upset } = later;
  const fallen = judgeBoxes(index, household, later.asStored(), draft, new Set(open.map(boxKey)), packed, upset);
  const answer = await planHolding(app, later, week, brief, new Set(fallen.keys()), signal);
  const { outcome } = answer;
  return outcome.kind === "PLANNED"
    ? { kind: "PLANNED", brief, answer: { ...answer, outcome } }
    : { kind: "INFEASIBLE", brief, conflicts: outcome.conflicts };
}

export async function reportDisruption(
  app: App,
  personId: string,
  input: ReportDisruption,
): Promise<Result<DisruptionRef, RecordFailure | FailureOf<"ChildNotFound">>> {
  const attempt: Attempt = { personId, action: "reportDisruption", key: input.idempotencyKey, input };
  const known = await before<DisruptionRef>(app, attempt);
  if (known) return known;
  const opened = await openDisruption(app, personId, input.householdId, input.disruption, "reportDisruption");
  if (!opened.ok) return (await before<DisruptionRef>(app, attempt)) ?? opened;
  const { inputs, row } = opened.value;
  return record(app, attempt, {
    inputs,
    row,
    seenRevision: input.seenRevision,
    foresee: (read) => read.withFacts(adding(read.facts, row)),
    write: (tx) => saveDisruption(tx, inputs.household.id, row),
    kept: { of: isOfKitchen(row) ? "kitchen" : "child", id: row.id },
  });
}

export async function withdrawDisruption(
  app: App,
  personId: string,
  input: WithdrawDisruption,
): Promise<Result<DisruptionRef, RecordFailure | FailureOf<"NothingThere">>> {
  const attempt: Attempt = { personId, action: "withdrawDisruption", key: input.idempotencyKey, input };
  const known = await before<DisruptionRef>(app, attempt);
  if (known) return known;
  const { householdId, disruption } = input;
  const nothing = fail({ kind: "NothingThere", what: "disruption" } as const);
  if (householdId === null) return fail({ kind: "HouseholdNotFound" });
  const row = await readRow(app, personId, householdId, disruption);
  // Without a row any day does: whose household it is comes before what is in it.
  const date = row?.date ?? app.now().toISOString().slice(0, 10);
  const opened = await openFrom(app, personId, householdId, date, "reportDisruption");
  if (!opened.ok) return opened;
  if (!row) return (await before<DisruptionRef>(app, attempt)) ?? nothing;
  return record(app, attempt, {
    inputs: opened.value,
    row,
    seenRevision: input.seenRevision,
    foresee: (read) => read.withFacts(without(read.facts, row)),
    write: (tx) => removeDisruption(tx, row),
    kept: null,
  });
}

async function readRow(
  app: App,
  personId: string,
  householdId: string,
  disruption: WithdrawDisruption["disruption"],
): Promise<DisruptionRow | null> {
  if (disruption === null) return null;
  return app.db.readAs(personId, (tx) => readDisruption(tx, householdId, disruption.of, disruption.id));
}

interface ToRecord {
  readonly inputs: WeekInputs;
  readonly row: DisruptionRow;
  readonly seenRevision: number;
  readonly foresee: (inputs: WeekInputs) => WeekInputs;
  readonly write: (tx: Tx) => Promise<void>;
  readonly kept: DisruptionRef["disruption"];
}

/** Plans, then writes report and plan together; then looks at every other box it may touch, in the child's other home too. */
async function record(
  app: App,
  attempt: Attempt,
  { inputs, row, seenRevision, foresee, write, kept }: ToRecord,
): Promise<Result<DisruptionRef, RecordFailure>> {
  const week = inputs.before;
  const passed = await checkRevision<DisruptionRef>(app, attempt, seenRevision, week?.revision ?? 0);
  if (passed) return passed;
  const householdId = inputs.household.id;
  const scope = touching(isOfKitchen(row) ? { householdIds: [householdId] } : { childIds: [row.childId] });
  const later = foresee(inputs);
  const replanned = await replanFor(app, later);
  const ref = { householdId, weekStart: inputs.weekStart, disruption: kept };
  const recordIt = async (tx: Tx) => {
    await write(tx);
    await queueRecheck(app, tx, scope);
  };
  const done =
    replanned.kind === "PLANNED"
      ? await storePlanAs(
          app,
          {
            gone: { kind: "HouseholdNotFound" } as const,
            attempt,
            verb: "reportDisruption",
            seenRevision,
            inputs: later,
            brief: replanned.brief,
            answer: replanned.answer,
            also: recordIt,
            foresee,
          },
          ({ changed }, after): DisruptionRef => ({
            ...ref,
            plans: { before: after - 1, after },
            changed,
            isUnplanned: false,
          }),
        )
      : await once<DisruptionRef, RecordFailure>(app, attempt, async (tx) => {
          const role = await roleIn(tx, attempt.personId, householdId);
          if (role === null) return fail({ kind: "HouseholdNotFound" });
          if (!may(role, "reportDisruption"))
            return fail({ kind: "NotPermitted", neededRole: leastRole.reportDisruption });
          const locked = week && (await lockWeek(tx, attempt.personId, week.id, seenRevision, "reportDisruption"));
          if (locked && !locked.ok)
            return fail(locked.error.kind === "NothingThere" ? { kind: "HouseholdNotFound" } : locked.error);
          await recordIt(tx);
          return ok({ ...ref, plans: null, changed: [], isUnplanned: replanned.kind === "INFEASIBLE" });
        });
  if (done.ok) await recheckNow(app, scope);
  return done;
}

export interface DisruptionOffer {
  readonly householdId: string;
  readonly weekStart: string;
  /** Null when the plan stays as it is, or there is none. */
  readonly difference: WeekDifference | null;
}

/** What reporting it would change; nothing is stored. Given up with the signal. */
export async function disruptionOffer(
  app: App,
  personId: string,
  householdId: string | null,
  asked: DisruptionAsked,
  signal?: AbortSignal,
): Promise<Result<DisruptionOffer, OpenFailure | FailureOf<"WeekInfeasible">>> {
  const opened = await openDisruption(app, personId, householdId, asked, "readHousehold");
  if (!opened.ok) return opened;
  const { inputs, row } = opened.value;
  const later = inputs.withFacts(adding(inputs.facts, row));
  const replanned = await replanFor(app, later, signal);
  const ref = { householdId: inputs.household.id, weekStart: inputs.weekStart };
  if (replanned.kind === "STANDS") return ok({ ...ref, difference: null });
  if (replanned.kind === "INFEASIBLE") return weekInfeasible(replanned.conflicts, replanned.brief, inputs);
  const { draft } = replanned.answer.outcome;
  const after = { ...draft, boxes: [...draft.boxes, ...later.setAside()] };
  const { plan } = inputs.before!;
  return ok({ ...ref, difference: differenceBetween(draftOf(plan), after, settledIn(plan, inputs.now.date)) });
}

/** Boxes of a plan whose work is done on a day. */
function settledIn(
  plan: PlanRow,
  today: string,
): (box: { readonly childId: string; readonly date: string }) => boolean {
  const settled = plan.boxes.filter((box) => box.state === "PACKED" || box.state === "EATEN" || box.date < today);
  const keys = new Set(settled.map(boxKey));
  return (box) => keys.has(boxKey(box));
}

/** What one stored plan of a week changed from another. */
export const differenceOfPlans = (from: PlanRow, to: PlanRow): WeekDifference =>
  differenceBetween(draftOf(from), draftOf(to), settledIn(to, to.createdAt.slice(0, 10)));

/** What clashes in a week that could not be planned with what was reported; null when it can be by now. */
export async function clashesOf(
  app: App,
  personId: string,
  householdId: string,
  weekStart: string,
  signal: AbortSignal,
): Promise<FailureOf<"WeekInfeasible"> | null> {
  const opened = await openWeek(app, personId, householdId, weekStart, "readHousehold");
  if (!opened.ok) return null;
  const replanned = await replanFor(app, opened.value, signal);
  if (replanned.kind !== "INFEASIBLE") return null;
  const { conflicts, brief } = replanned;
  return { kind: "WeekInfeasible", conflicts, brief, notBefore: opened.value.now.date };
}
