/** What changes from one plan of a week to the next. */
import { boxKey } from "./box-key.js";
import { compare } from "./compare.js";
import { dateOfSession } from "./kitchen/session-key.js";
import type { BatchPlan, BoxPlan, ItemPlan, ShoppingLinePlan, TaskPlan, WeekDraft, WishTotals } from "./week.js";

export interface BoxChange {
  readonly childId: string;
  readonly date: string;
  /** Empty: there was no box. */
  readonly before: readonly ItemPlan[];
  /** Empty: there is no box any more. */
  readonly after: readonly ItemPlan[];
}
export interface BatchChange {
  readonly base: string;
  readonly session: string;
  /** Null: not made before. */
  readonly before: Pick<BatchPlan, "batches" | "grams"> | null;
  /** Null: no longer made. */
  readonly after: Pick<BatchPlan, "batches" | "grams"> | null;
}
/** The work of one session; what only moves on the clock is not listed. */
export interface SessionChange {
  readonly session: string;
  readonly goes: readonly TaskPlan[];
  readonly comes: readonly TaskPlan[];
  /** The same task for other children, or with other minutes. */
  readonly changes: readonly { readonly before: TaskPlan; readonly after: TaskPlan }[];
  /** Hands-on minutes of all these, more or less; a tenth is the smallest step. */
  readonly handsOnMinutesMore: number;
}
export interface ShoppingChange {
  readonly food: string;
  /** 1 or more. */
  readonly packs: number;
  readonly packGrams: number;
  readonly costMinor: number;
}
export interface WeekDifference {
  /** By date and child. */
  readonly boxes: readonly BoxChange[];
  /** By day of the session. */
  readonly batches: readonly BatchChange[];
  /** By day of the session. */
  readonly sessions: readonly SessionChange[];
  readonly toBuy: readonly ShoppingChange[];
  /** Packs the plan before needed and this one does not: who has bought them already has them left over. */
  readonly notNeeded: readonly ShoppingChange[];
  /** Each wish in its own unit; negative where there is less of it. */
  readonly more: WishTotals;
}

/**
 * @param isSettled boxes that are packed, eaten or of days gone by: their work was done, and that no plan lists it any more is no
 *   change. Neither is the work of a batch that was cooked meanwhile.
 */
export function differenceBetween(
  before: WeekDraft,
  after: WeekDraft,
  isSettled: (box: { readonly childId: string; readonly date: string }) => boolean,
): WeekDifference {
  return {
    boxes: boxChanges(before.boxes, after.boxes),
    batches: batchChanges(before.batches, after.batches),
    sessions: sessionChanges(
      before.tasks.filter((task) => !isOver(task, after.batches, isSettled)),
      after.tasks,
    ),
    ...shoppingChanges(before.shopping, after.shopping),
    more: wishesMore(before.wishes, after.wishes),
  };
}

type Content = Pick<ItemPlan, "breakKey" | "slot" | "dish" | "grams">;
interface Filled<I extends Content> {
  readonly childId: string;
  readonly date: string;
  readonly items: readonly I[];
}

/** What is in a box, wherever in it it lies. */
const contentOf = (items: readonly Content[]): string =>
  items
    .map(({ breakKey, slot, dish, grams }) => JSON.stringify([breakKey, slot, dish, grams]))
    .sort()
    .join();

/** Every key of either list once, with what each list has under it. */
function pairs<T>(
  before: readonly T[],
  after: readonly T[],
  keyOf: (row: T) => string,
): (readonly [T | null, T | null])[] {
  const was = new Map(before.map((row) => [keyOf(row), row]));
  const is = new Map(after.map((row) => [keyOf(row), row]));
  return [...new Set([...was.keys(), ...is.keys()])].map((key) => [was.get(key) ?? null, is.get(key) ?? null]);
}

/** Boxes with other dishes or amounts, those that come and those that go. */
const changedPairs = <I extends Content>(before: readonly Filled<I>[], after: readonly Filled<I>[]) =>
  pairs(before, after, boxKey).filter(([was, is]) => contentOf(was?.items ?? []) !== contentOf(is?.items ?? []));

/** Boxes that differ between two plans, "childId@date" (`boxKey`), sorted. */
export const changedBoxes = (before: readonly Filled<Content>[], after: readonly Filled<Content>[]): string[] =>
  changedPairs(before, after)
    .map(([was, is]) => boxKey((was ?? is)!))
    .sort();

function boxChanges(before: readonly BoxPlan[], after: readonly BoxPlan[]): BoxChange[] {
  return changedPairs(before, after)
    .map(([was, is]) => {
      const { childId, date } = (was ?? is)!;
      return { childId, date, before: was?.items ?? [], after: is?.items ?? [] };
    })
    .sort((a, b) => compare(a.date, b.date) || compare(a.childId, b.childId));
}

function batchChanges(before: readonly BatchPlan[], after: readonly BatchPlan[]): BatchChange[] {
  const sizeOf = (batch: BatchPlan | null) => batch && { batches: batch.batches, grams: batch.grams };
  return pairs(before, after, ({ base, session }) => JSON.stringify([base, session]))
    .filter(([was, is]) => was?.batches !== is?.batches || was?.grams !== is?.grams)
    .map(([was, is]) => {
      const { base, session } = (was ?? is)!;
      return { base, session, before: sizeOf(was), after: sizeOf(is) };
    })
    .sort((a, b) => compareSessions(a.session, b.session) || compare(a.base, b.base));
}

/** "evening-2027-01-11": by its day, the morning before the evening. */
const compareSessions = (a: string, b: string): number => compare(dateOfSession(a), dateOfSession(b)) || compare(b, a);

function isOver(
  task: TaskPlan,
  batches: readonly BatchPlan[],
  isSettled: (box: { readonly childId: string; readonly date: string }) => boolean,
): boolean {
  if (task.kind === "BASE")
    return batches.some(({ made, base, session }) => made && base === task.base && session === task.session);
  return task.childIds.every((childId) => task.forDates.every((date) => isSettled({ childId, date })));
}

function sessionChanges(before: readonly TaskPlan[], after: readonly TaskPlan[]): SessionChange[] {
  const workOf = ({ session, childIds, forDates, handsOnMinutes, passiveMinutes }: TaskPlan): string =>
    JSON.stringify([session, [...childIds].sort(), [...forDates].sort(), handsOnMinutes, passiveMinutes]);
  const bySession = new Map<
    string,
    { goes: TaskPlan[]; comes: TaskPlan[]; changes: SessionChange["changes"][number][] }
  >();
  const at = (session: string) => {
    const known = bySession.get(session) ?? { goes: [], comes: [], changes: [] };
    bySession.set(session, known);
    return known;
  };
  // A task that moves to another session goes from the one and comes to the other.
  for (const [was, is] of pairs(before, after, ({ key, session }) => JSON.stringify([key, session]))) {
    if (was === null) at(is!.session).comes.push(is!);
    else if (is === null) at(was.session).goes.push(was);
    else if (workOf(was) !== workOf(is)) at(was.session).changes.push({ before: was, after: is });
  }
  const minutes = (tasks: readonly TaskPlan[]) => tasks.reduce((sum, task) => sum + task.handsOnMinutes, 0);
  return [...bySession]
    .map(([session, { goes, comes, changes }]) => ({
      session,
      goes,
      comes,
      changes,
      handsOnMinutesMore: tenth(
        minutes(comes) -
          minutes(goes) +
          minutes(changes.map((change) => change.after)) -
          minutes(changes.map((change) => change.before)),
      ),
    }))
    .sort((a, b) => compareSessions(a.session, b.session));
}

function shoppingChanges(
  before: readonly ShoppingLinePlan[],
  after: readonly ShoppingLinePlan[],
): Pick<WeekDifference, "toBuy" | "notNeeded"> {
  const toBuy: ShoppingChange[] = [];
  const notNeeded: ShoppingChange[] = [];
  for (const [was, is] of pairs(before, after, ({ food }) => food)) {
    const more = (is?.packs ?? 0) - (was?.packs ?? 0);
    if (more === 0) continue;
    const { food, packGrams } = (is ?? was)!;
    const packs = Math.abs(more);
    const costMinor = Math.abs((is?.costMinor ?? 0) - (was?.costMinor ?? 0));
    (more > 0 ? toBuy : notNeeded).push({ food, packs, packGrams, costMinor });
  }
  const byFood = (a: ShoppingChange, b: ShoppingChange) => compare(a.food, b.food);
  return { toBuy: toBuy.sort(byFood), notNeeded: notNeeded.sort(byFood) };
}

function wishesMore(before: WishTotals, after: WishTotals): WishTotals {
  return {
    handsOnMinutes: tenth(after.handsOnMinutes - before.handsOnMinutes),
    costMinor: after.costMinor - before.costMinor,
    spareBaseGrams: tenth(after.spareBaseGrams - before.spareBaseGrams),
    nutrientShortfallPercent: tenth(after.nutrientShortfallPercent - before.nutrientShortfallPercent),
    refusalPoints: tenth(after.refusalPoints - before.refusalPoints),
    monotonyPoints: tenth(after.monotonyPoints - before.monotonyPoints),
    objectivePoints: tenth(after.objectivePoints - before.objectivePoints),
  };
}

/** Differences of binary fractions would show their tails; never -0. */
const tenth = (figure: number): number => Math.round(figure * 10) / 10 || 0;
