/**
 * Puts the work of each prep session on the clock: a resource-constrained schedule with carers and appliances as
 * resources. Method: serial schedule generation over several priority rules, the best list then improved by moving one
 * task at a time. Time inside is whole tenths of a minute from midnight, durations rounded up; the clock times handed
 * out are rounded down to the minute, one way for all, so that what does not overlap in tenths does not overlap on
 * paper either.
 */
import type { EquipmentKind } from "../../../shared/codes.js";
import type { EquipmentBrief, SessionBrief } from "../brief.js";
import { minutesOf, timeOf } from "../calendar/dates.js";
import { fail, ok, type Result } from "../result.js";
import type { TaskPlan } from "../week.js";
import type { Work } from "./work.js";

export interface TimetableInput {
  /** In time order. */
  readonly sessions: readonly SessionBrief[];
  readonly equipment: readonly EquipmentBrief[];
  readonly work: readonly Work[];
}

export type TimetableFault = {
  readonly kind: "SessionTooShort";
  readonly session: string;
  /** Hands-on minutes in all, elapsed minutes of the session, or minutes from its start until a child leaves. */
  readonly limit: "HANDS_ON" | "ELAPSED" | "LEAVE_TIME";
  /** Rounded up. For ELAPSED and LEAVE_TIME what the best schedule found needs, not a proven minimum. */
  readonly neededMinutes: number;
  readonly haveMinutes: number;
  /** Whose box is late; empty for the other limits. */
  readonly childIds: readonly string[];
};

const TENTHS = 10;
const MINUTES_PER_DAY = 24 * 60;
/** Schedules tried per session after the priority rules, at most; a session at its lower bound stops at once. */
const IMPROVEMENTS = 400;

interface Hold {
  readonly kind: EquipmentKind;
  readonly units: number;
  /** Tenths, from the task's start. */
  readonly length: number;
}

interface Job {
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

interface Placed {
  readonly starts: readonly number[];
  readonly carers: readonly number[];
  /** Tenths by which boxes miss their leave time, summed. */
  readonly lateness: number;
  readonly end: number;
  readonly sumOfEnds: number;
}

/**
 * Clock times and a carer for every task, sorted by session, start and key. Rules that always hold: a carer does one
 * hands-on task at a time and is free during passive minutes; an appliance is held from the task's start for the use's
 * own `minutes`; a task starts when everything in `after` has ended; all tasks lie inside the session and before
 * `mustEndBy`; hands-on minutes stay inside the session's. On one carer's list, cooking and finishing of safe things
 * come before cooking and finishing that handles an avoided allergen, and safe boxes before the others; only a session
 * that cannot hold that order drops it. Throws on a task that waits for an unknown or later task, for itself, or for an
 * appliance the kitchen does not have.
 */
export function scheduleSessions(input: TimetableInput): Result<TaskPlan[], TimetableFault[]> {
  checkReferences(input);
  const faults: TimetableFault[] = [];
  const tasks: TaskPlan[] = [];
  const known = new Set(input.sessions.map((session) => session.key));
  for (const key of new Set(input.work.map((work) => work.session))) {
    if (known.has(key)) continue;
    const hands = input.work.filter((work) => work.session === key).reduce((sum, work) => sum + work.handsOnMinutes, 0);
    faults.push(tooShort(key, "HANDS_ON", hands, 0));
  }
  for (const session of input.sessions) {
    const work = input.work.filter((candidate) => candidate.session === session.key);
    if (work.length === 0) continue;
    const handsOn = work.reduce((sum, task) => sum + task.handsOnMinutes, 0);
    if (session.carers > 0 && handsOn > session.handsOnMinutes + 1e-6)
      faults.push(tooShort(session.key, "HANDS_ON", handsOn, session.handsOnMinutes));

    const jobs = listJobs(work);
    if (session.carers < 1 && jobs.some((job) => job.hands > 0)) {
      faults.push(tooShort(session.key, "HANDS_ON", handsOn, 0));
      continue;
    }
    const opens = minutesOf(session.startsAt) * TENTHS;
    const units = new Map(input.equipment.map((row) => [row.kind, row.units]));
    const closes = opens + session.elapsedMinutes * TENTHS;
    const bound = boundJobs(jobs, session.carers, units);
    const fits = (placed: Placed): boolean => placed.lateness === 0 && placed.end <= closes;

    let best = findSchedule(jobs, opens, session.carers, units, bound, true);
    if (!fits(best)) {
      const anyOrder = findSchedule(jobs, opens, session.carers, units, bound, false);
      if (isBetter(anyOrder, best)) best = anyOrder;
    }
    if (best.end > closes) {
      faults.push(tooShort(session.key, "ELAPSED", (best.end - opens) / TENTHS, session.elapsedMinutes));
    }
    const lateJobs = jobs
      .map((job, j) => ({ job, end: at(best.starts, j) + job.length }))
      .filter(({ job, end }) => end > job.due);
    const latest = lateJobs.sort((a, b) => b.end - b.job.due - (a.end - a.job.due))[0];
    if (latest !== undefined) {
      faults.push({
        ...tooShort(session.key, "LEAVE_TIME", (latest.end - opens) / TENTHS, (latest.job.due - opens) / TENTHS),
        childIds: latest.job.work.childIds,
      });
    }
    tasks.push(...writeTasks(jobs, best));
  }
  return faults.length === 0 ? ok(tasks) : fail(faults);
}

/**
 * A proven lower bound, in minutes, on how long the session's work takes from its start: the longest chain of tasks
 * that wait for each other; all hands-on minutes shared among the carers, after the shortest way in and before the
 * shortest way out; the same for each appliance's units.
 */
export function boundSession(input: {
  readonly session: SessionBrief;
  readonly equipment: readonly EquipmentBrief[];
  readonly work: readonly Work[];
}): number {
  const jobs = listJobs(input.work.filter((work) => work.session === input.session.key));
  return boundJobs(jobs, input.session.carers, new Map(input.equipment.map((row) => [row.kind, row.units]))) / TENTHS;
}

function tooShort(session: string, limit: TimetableFault["limit"], needed: number, have: number): TimetableFault {
  return {
    kind: "SessionTooShort",
    session,
    limit,
    neededMinutes: Math.ceil(needed - 1e-6),
    haveMinutes: have,
    childIds: [],
  };
}

function checkReferences(input: TimetableInput): void {
  const sessionOrder = new Map(input.sessions.map((session, s) => [session.key, s]));
  const sessionOf = new Map(input.work.map((work) => [work.key, work.session]));
  if (sessionOf.size !== input.work.length) throw new Error("two tasks share a key");
  for (const work of input.work) {
    for (const key of work.after) {
      const earlier = sessionOf.get(key);
      if (earlier === undefined) throw new Error(`${work.key} waits for the unknown task ${key}`);
      if ((sessionOrder.get(earlier) ?? -1) > (sessionOrder.get(work.session) ?? Infinity)) {
        throw new Error(`${work.key} waits for ${key}, which lies in a later session`);
      }
    }
    for (const use of work.equipment) {
      const owned = input.equipment.find((row) => row.kind === use.kind)?.units ?? 0;
      if (use.units > owned) throw new Error(`${work.key} needs ${use.units} ${use.kind}, the kitchen has ${owned}`);
    }
  }
}

const tenths = (minutes: number): number => Math.ceil(minutes * TENTHS - 1e-6);

/** Jobs in an order in which everything stands after what it waits for. */
function listJobs(work: readonly Work[]): Job[] {
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
function longestTails(jobs: readonly Job[]): number[] {
  const tails: number[] = jobs.map(() => 0);
  for (let j = jobs.length - 1; j >= 0; j -= 1) {
    const job = at(jobs, j);
    tails[j] = job.length + Math.max(0, ...job.after.map((k) => at(tails, k)));
  }
  return tails;
}

function longestHeads(jobs: readonly Job[]): number[] {
  const heads: number[] = [];
  for (const job of jobs) heads.push(Math.max(0, ...job.before.map((i) => at(heads, i) + at(jobs, i).length)));
  return heads;
}

function boundJobs(jobs: readonly Job[], carers: number, units: ReadonlyMap<EquipmentKind, number>): number {
  const heads = longestHeads(jobs);
  const tails = longestTails(jobs);
  let bound = Math.max(0, ...jobs.map((_, j) => at(heads, j) + at(tails, j)));
  /** Uses of one resource: earliest begin, work in unit-tenths, least time left after the use. */
  const share = (
    uses: { readonly head: number; readonly load: number; readonly tail: number }[],
    capacity: number,
  ): void => {
    if (uses.length === 0) return;
    const load = uses.reduce((sum, use) => sum + use.load, 0);
    const wayIn = Math.min(...uses.map((use) => use.head));
    const wayOut = Math.min(...uses.map((use) => use.tail));
    bound = Math.max(bound, wayIn + Math.ceil(load / capacity) + wayOut);
  };
  share(
    jobs.flatMap((job, j) =>
      job.hands > 0 ? [{ head: at(heads, j), load: job.hands, tail: at(tails, j) - job.hands }] : [],
    ),
    carers,
  );
  for (const [kind, capacity] of units) {
    share(
      jobs.flatMap((job, j) =>
        job.holds
          .filter((hold) => hold.kind === kind && hold.length > 0)
          // A hold may outlast its task (a mould set aside); then nothing has to come after it, and the session may end
          // first.
          .map((hold) => ({
            head: at(heads, j),
            load: hold.units * hold.length,
            tail: at(tails, j) - hold.length,
          })),
      ),
      capacity,
    );
  }
  return bound;
}

function isBetter(a: Placed, b: Placed): boolean {
  if (a.lateness !== b.lateness) return a.lateness < b.lateness;
  if (a.end !== b.end) return a.end < b.end;
  return a.sumOfEnds < b.sumOfEnds;
}

/** Best schedule over the priority rules, then over lists with one pair of ranks exchanged, in a fixed order. */
function findSchedule(
  jobs: readonly Job[],
  opens: number,
  carers: number,
  units: ReadonlyMap<EquipmentKind, number>,
  bound: number,
  safeFirst: boolean,
): Placed {
  const tails = longestTails(jobs);
  /** Latest end that still lets every later box leave in time. */
  const latestEnds: number[] = jobs.map(() => Infinity);
  for (let j = jobs.length - 1; j >= 0; j -= 1) {
    const job = at(jobs, j);
    latestEnds[j] = Math.min(job.due, ...job.after.map((k) => at(latestEnds, k) - at(jobs, k).length));
  }
  // Lower comes first. Boxes all wait for much, so by tail alone they come last of themselves.
  const rules: ((j: number) => number)[] = [
    (j) => -at(tails, j),
    (j) => at(latestEnds, j),
    (j) => -(at(tails, j) - at(jobs, j).hands),
    (j) => -(at(jobs, j).length - at(jobs, j).hands),
    (j) => -at(jobs, j).after.length,
    (j) => at(jobs, j).hands,
    (j) => -at(jobs, j).holds.reduce((sum, hold) => sum + hold.units * hold.length, 0),
  ];
  const place = (ranks: readonly number[]): Placed =>
    placeJobs(jobs, listByRank(jobs, ranks, safeFirst), opens, carers, units, safeFirst);
  const isProvenBest = (placed: Placed): boolean => placed.lateness === 0 && placed.end - opens <= bound;

  let bestRanks: number[] = [];
  let best: Placed | null = null;
  for (const rule of rules) {
    const values = jobs.map((_, j) => rule(j));
    const sorted = jobs
      .map((_, j) => j)
      .sort((a, b) => compare(at(values, a), at(values, b)) || compare(-at(tails, a), -at(tails, b)) || a - b);
    const ranks: number[] = jobs.map(() => 0);
    sorted.forEach((j, rank) => (ranks[j] = rank));
    const placed = place(ranks);
    if (best === null || isBetter(placed, best)) [best, bestRanks] = [placed, ranks];
    if (isProvenBest(best)) return best;
  }
  if (best === null) throw new Error("no priority rule");

  let bestList = listByRank(jobs, bestRanks, safeFirst);
  let tried = 0;
  for (let distance = 1; distance < jobs.length && tried < IMPROVEMENTS; distance += 1) {
    let improved = false;
    for (let rank = 0; rank + distance < jobs.length && tried < IMPROVEMENTS; rank += 1) {
      const ranks = bestRanks.map((own) => (own === rank ? rank + distance : own === rank + distance ? rank : own));
      const list = listByRank(jobs, ranks, safeFirst);
      if (list.every((j, l) => j === bestList[l])) continue;
      const placed = placeJobs(jobs, list, opens, carers, units, safeFirst);
      tried += 1;
      if (!isBetter(placed, best)) continue;
      [best, bestRanks, bestList, improved] = [placed, ranks, list, true];
      if (isProvenBest(best)) return best;
    }
    if (improved) distance = 0;
  }
  return best;
}

/**
 * The jobs in rank order as far as waiting allows; with `safeFirst`, all that touches no avoided allergen stands first.
 */
function listByRank(jobs: readonly Job[], ranks: readonly number[], safeFirst: boolean): number[] {
  const open = jobs.map((job) => job.before.length);
  const ready = jobs.flatMap((job, j) => (job.before.length === 0 ? [j] : []));
  const list: number[] = [];
  const key = (j: number): number => at(ranks, j) + (safeFirst && at(jobs, j).late ? jobs.length : 0);
  while (ready.length > 0) {
    let first = 0;
    for (let r = 1; r < ready.length; r += 1) if (key(at(ready, r)) < key(at(ready, first))) first = r;
    const j = at(ready, first);
    ready.splice(first, 1);
    list.push(j);
    for (const k of at(jobs, j).after) {
      open[k] = at(open, k) - 1;
      if (open[k] === 0) ready.push(k);
    }
  }
  return list;
}

/** Serial schedule generation: each job of the list at its earliest start that carers and appliances allow. */
function placeJobs(
  jobs: readonly Job[],
  list: readonly number[],
  opens: number,
  carers: number,
  units: ReadonlyMap<EquipmentKind, number>,
  safeFirst: boolean,
): Placed {
  const starts: number[] = jobs.map(() => opens);
  const carerOf: number[] = jobs.map(() => 0);
  const everyone = Array.from({ length: carers }, (_, carer) => carer);
  const hands: { from: number; to: number }[][] = Array.from({ length: carers }, () => []);
  const held = new Map<EquipmentKind, { from: number; to: number; units: number }[]>();
  /** Per carer, when the safe cooking and the safe boxes are done. */
  const safeUntil = Array.from({ length: carers }, () => ({ cooking: opens, boxes: opens }));
  let lateness = 0;
  let end = opens;
  let sumOfEnds = 0;

  /**
   * The first time at or after `time` when a hold of the job would no longer clash with the clash found; `time` if
   * none.
   */
  const afterClash = (job: Job, time: number, carer: number): number => {
    if (job.hands > 0) {
      for (const busy of at(hands, carer)) if (busy.from < time + job.hands && time < busy.to) return busy.to;
    }
    for (const hold of job.holds) {
      const to = time + hold.length;
      const others = held.get(hold.kind) ?? [];
      const spare = (units.get(hold.kind) ?? 0) - hold.units;
      let firstFree = Infinity;
      let crowded = false;
      for (const other of others) {
        if (other.from >= to || time >= other.to) continue;
        firstFree = Math.min(firstFree, other.to);
        // Use only grows where a hold begins, so the busiest moment is one of these.
        const moment = Math.max(time, other.from);
        let inUse = 0;
        for (const third of others) if (third.from <= moment && moment < third.to) inUse += third.units;
        crowded ||= inUse > spare;
      }
      if (crowded) return firstFree;
    }
    return time;
  };

  for (const j of list) {
    const job = at(jobs, j);
    const isBox = job.work.kind === "PACK";
    const ready = Math.max(opens, ...job.before.map((i) => at(starts, i) + at(jobs, i).length));
    let start = Infinity;
    let carer = 0;
    // Without hands any carer will do: the one who did the task before it watches it.
    const choices = job.hands > 0 ? everyone : [job.before.length > 0 ? at(carerOf, at(job.before, 0)) : 0];
    for (const choice of choices) {
      const safe = at(safeUntil, choice);
      let time = safeFirst && job.late && job.hands > 0 ? Math.max(ready, isBox ? safe.boxes : safe.cooking) : ready;
      for (let next = afterClash(job, time, choice); next > time; next = afterClash(job, time, choice)) time = next;
      if (time < start) [start, carer] = [time, choice];
    }
    starts[j] = start;
    carerOf[j] = carer;
    if (job.hands > 0) {
      at(hands, carer).push({ from: start, to: start + job.hands });
      const safe = at(safeUntil, carer);
      if (!job.late && isBox) safe.boxes = Math.max(safe.boxes, start + job.hands);
      if (!job.late && !isBox) safe.cooking = Math.max(safe.cooking, start + job.hands);
    }
    for (const hold of job.holds) {
      if (hold.length === 0) continue;
      const row = held.get(hold.kind) ?? [];
      row.push({ from: start, to: start + hold.length, units: hold.units });
      held.set(hold.kind, row);
    }
    const ends = start + job.length;
    lateness += Math.max(0, ends - job.due);
    end = Math.max(end, ends);
    sumOfEnds += ends;
  }
  return { starts, carers: carerOf, lateness, end, sumOfEnds };
}

function writeTasks(jobs: readonly Job[], placed: Placed): TaskPlan[] {
  const clock = (tenthsOfDay: number): string => timeOf(Math.floor(tenthsOfDay / TENTHS) % MINUTES_PER_DAY);
  return jobs
    .map((job, j) => ({ job, start: at(placed.starts, j), carer: at(placed.carers, j) }))
    .sort((a, b) => a.start - b.start || a.job.length - b.job.length || compare(a.job.work.key, b.job.work.key))
    .map(({ job, start, carer }): TaskPlan => {
      const { mustEndBy: _mustEndBy, ...task } = job.work;
      return {
        ...task,
        // Minutes on the clock, so that the printed start plus these is the printed end of the hold.
        equipment: task.equipment.map((use, u) => ({
          ...use,
          minutes: Math.floor((start + at(job.holds, u).length) / TENTHS) - Math.floor(start / TENTHS),
        })),
        startsAt: clock(start),
        handsFreeAt: clock(start + job.hands),
        endsAt: clock(start + job.length),
        carer,
      };
    });
}

const compare = <T extends number | string>(a: T, b: T): number => (a < b ? -1 : a > b ? 1 : 0);

/** Element `i`, which the caller knows to exist. */
function at<T>(row: readonly T[], i: number): T {
  const value = row[i];
  if (value === undefined) throw new Error(`no element ${i}`);
  return value;
}
