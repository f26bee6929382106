/**
 * Jobs on the clock by serial schedule generation over several priority rules, the best list then improved by exchanging two ranks
 * at a time.
 */
import type { EquipmentKind } from "../../../shared/codes.js";
import { compare } from "../compare.js";
import { at, longestTails, type Job, type Session } from "./jobs.js";

/** Schedules tried per session after the priority rules, at most; a session at its lower bound stops at once. */
const IMPROVEMENTS = 30;

export interface Placed {
  readonly starts: readonly number[];
  readonly carers: readonly number[];
  /** Tenths by which boxes miss their leave time, summed. */
  readonly lateness: number;
  readonly end: number;
  readonly sumOfEnds: number;
}

export function isBetter(a: Placed, b: Placed): boolean {
  if (a.lateness !== b.lateness) return a.lateness < b.lateness;
  if (a.end !== b.end) return a.end < b.end;
  return a.sumOfEnds < b.sumOfEnds;
}

/** Best schedule over the priority rules, then over lists with one pair of ranks exchanged, in a fixed order. */
export function findSchedule(session: Session, bound: number): Placed {
  const { jobs, opens, safeFirst } = session;
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
  const place = (ranks: readonly number[]): Placed => placeJobs(session, listByRank(jobs, ranks, safeFirst));
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
      const placed = placeJobs(session, list);
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

/**
 * Serial schedule generation: each job of the list at its earliest start that carers and appliances allow, by the carer given or by
 * whoever is free first.
 */
export function placeJobs(
  { jobs, opens, carers, units, safeFirst }: Session,
  list: readonly number[],
  carersGiven: readonly number[] | null = null,
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
    const choices =
      job.hands > 0
        ? carersGiven === null
          ? everyone
          : [at(carersGiven, j)]
        : [job.before.length > 0 ? at(carerOf, at(job.before, 0)) : 0];
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
