/** The work of one prep session in whole tenths of a minute, durations rounded up. */
import type { EquipmentKind } from "../../../shared/codes.js";
import { minutesOf } from "../calendar/dates.js";
import type { Work } from "./work.js";

export const TENTHS = 10;

export interface Hold {
  readonly kind: EquipmentKind;
  readonly units: number;
  /** Tenths, from the task's start. */
  readonly length: number;
}

export interface Job {
  readonly work: Work;
  readonly hands: number;
  readonly length: number;
  readonly holds: readonly Hold[];
  readonly before: readonly number[];
  readonly after: readonly number[];
  /** Tenths from the midnight before the session. */
  readonly due: number;
  /** Handles an avoided allergen, or waits for something that does. */
  readonly late: boolean;
}

/** Whole tenths of a minute, rounded up. */
export const tenths = (minutes: number): number => Math.ceil(minutes * TENTHS - 1e-6);

/** Jobs with all that limits them. */
export interface Session {
  readonly jobs: readonly Job[];
  /** Tenths from midnight. */
  readonly opens: number;
  readonly closes: number;
  /** Pairs of hands. */
  readonly carers: number;
  readonly units: ReadonlyMap<EquipmentKind, number>;
  /** On one carer's list, safe things come before those that handle an avoided allergen. */
  readonly safeFirst: boolean;
  /** Dead ends that a search for a shorter timetable may learn from. */
  readonly deadEnds: number;
}

/** Jobs in an order in which everything stands after what it waits for. */
export function listJobs(work: readonly Work[]): Job[] {
  const inSession = new Map(work.map((task) => [task.key, task]));
  const order: Work[] = [];
  const state = new Map<string, "OPEN" | "DONE">();
  const visit = (task: Work): void => {
    if (state.get(task.key) === "DONE") return;
    if (state.get(task.key) === "OPEN") throw new Error(`${task.key} waits for itself`);
    state.set(task.key, "OPEN");
    for (const key of task.after) {
      const earlier = inSession.get(key);
      if (earlier !== undefined) visit(earlier);
    }
    state.set(task.key, "DONE");
    order.push(task);
  };
  for (const task of work) visit(task);

  const position = new Map(order.map((task, j) => [task.key, j]));
  const before = order.map((task) => task.after.flatMap((key) => position.get(key) ?? []));
  const after: number[][] = order.map(() => []);
  before.forEach((earlier, j) => earlier.forEach((i) => at(after, i).push(j)));
  const late: boolean[] = [];
  return order.map((task, j) => {
    const hands = tenths(task.handsOnMinutes);
    const isLate = task.handles.length > 0 || at(before, j).some((i) => at(late, i));
    late.push(isLate);
    return {
      work: task,
      hands,
      length: hands + tenths(task.passiveMinutes),
      holds: task.equipment.map((use) => ({ kind: use.kind, units: use.units, length: tenths(use.minutes) })),
      before: at(before, j),
      after: at(after, j),
      due: task.mustEndBy === null ? Infinity : minutesOf(task.mustEndBy) * TENTHS,
      late: isLate,
    };
  });
}

/** Longest way, in tenths, from the start of each job to the end of everything that waits for it, itself included. */
export function longestTails(jobs: readonly Job[]): number[] {
  const tails: number[] = jobs.map(() => 0);
  for (let j = jobs.length - 1; j >= 0; j -= 1) {
    const job = at(jobs, j);
    tails[j] = job.length + Math.max(0, ...job.after.map((k) => at(tails, k)));
  }
  return tails;
}

/** Element `i`, which the caller knows to exist. */
export function at<T>(row: readonly T[], i: number): T {
  const value = row[i];
  if (value === undefined) throw new Error(`no element ${i}`);
  return value;
}
