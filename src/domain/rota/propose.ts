/**
 * Who could be on for which session, so that the minutes of four weeks even out. It is the scheduling of independent jobs on
 * parallel machines that begin with unequal loads, some of which may not take some jobs; two jobs of one session go to two carers.
 * The sum of squares of the minutes is made smallest, which for a given total is the same as making their variance smallest.
 */
import { compare } from "../compare.js";

export interface SessionToStaff {
  /** "evening-2027-01-11". */
  readonly session: string;
  /** Hands-on minutes of each pair of hands that has something to do. Tenths count. */
  readonly hands: readonly number[];
}
export interface CarerToAsk {
  readonly id: string;
  /** Counted already. */
  readonly minutes: number;
  /** Most minutes they can give to a session; 0: cannot help in it. */
  readonly mostMinutes: (session: string) => number;
}
export interface StaffedSession {
  readonly session: string;
  /** In the order of `hands`; null: nobody can. */
  readonly carers: readonly (string | null)[];
}
export interface RotaProposal {
  readonly sessions: readonly StaffedSession[];
  /** By carer, with what they would have then. */
  readonly minutes: ReadonlyMap<string, number>;
  /** No other rota leaves fewer hands open, and of those none fewer minutes, and of those none is fairer: every one was ruled out. */
  readonly isFairest: boolean;
}

/** Branches the search may look at. Steps, not time: the same household gets the same proposal on any machine. */
const STEPS = 50_000;

/** One pair of hands. Minutes in whole tenths, so that sums and squares are exact. */
interface Job {
  readonly session: number;
  readonly hand: number;
  readonly tenths: number;
}
interface Found {
  readonly openTenths: number;
  readonly squares: number;
  /** Carer by job; -1: open. */
  readonly given: readonly number[];
}

/**
 * Branch and bound over the jobs, the longest first, each tried with the carer of fewest minutes first: what it finds first is the
 * longest-first list schedule (Graham, Bounds on multiprocessing timing anomalies, SIAM J. Appl. Math. 17, 1969). Where the steps run
 * out, what was found is improved by moving and exchanging single jobs until neither helps.
 * @param carers in the order in which they are asked where minutes are equal
 */
export function proposeRota(
  sessions: readonly SessionToStaff[],
  carers: readonly CarerToAsk[],
  steps = STEPS,
): RotaProposal {
  const jobs = sessions
    .flatMap(({ hands }, session) => hands.map((minutes, hand): Job => ({ session, hand, tenths: toTenths(minutes) })))
    .filter(({ tenths }) => tenths > 0)
    .sort((a, b) => b.tenths - a.tenths || a.session - b.session || a.hand - b.hand);
  const most = sessions.map(({ session }) => carers.map((carer) => toTenths(carer.mostMinutes(session))));
  const start = carers.map(({ minutes }) => toTenths(minutes));
  const open = sessions.map((_, session) => handsLeftOpen(jobs, session, most[session] ?? []));
  const { found, isDone } = search(jobs, start, most, open, steps);
  const given = isDone ? found.given : improve(jobs, start, most, found.given);
  const minutes = [...start];
  jobs.forEach(({ tenths }, j) => {
    const carer = given[j] ?? -1;
    if (carer >= 0) minutes[carer]! += tenths;
  });
  return {
    sessions: sessions.map(({ session, hands }, s) => ({
      session,
      carers: hands.map((_, hand) => {
        const at = jobs.findIndex((job) => job.session === s && job.hand === hand);
        return carers[given[at] ?? -1]?.id ?? null;
      }),
    })),
    minutes: new Map(carers.map(({ id }, c) => [id, (minutes[c] ?? 0) / 10])),
    isFairest: isDone,
  };
}

const toTenths = (minutes: number): number =>
  minutes === Number.POSITIVE_INFINITY ? minutes : Math.round(minutes * 10);

/**
 * How many pairs of hands of a session nobody can take, at best: carers from the one with least time on, each with the shortest work
 * that is left.
 */
function handsLeftOpen(jobs: readonly Job[], session: number, most: readonly number[]): number {
  const tenths = jobs.filter((job) => job.session === session).map((job) => job.tenths);
  tenths.sort((a, b) => a - b);
  let next = 0;
  for (const limit of [...most].sort(compare)) if (next < tenths.length && (tenths[next] ?? 0) <= limit) next += 1;
  return tenths.length - next;
}

function search(
  jobs: readonly Job[],
  start: readonly number[],
  most: readonly (readonly number[])[],
  open: readonly number[],
  steps: number,
): { readonly found: Found; readonly isDone: boolean } {
  /** Tenths that somebody will take for sure, from each job on. */
  const sure = jobs.map(() => 0);
  for (let j = jobs.length - 1; j >= 0; j -= 1) {
    const { session, tenths } = jobs[j]!;
    sure[j] = (sure[j + 1] ?? 0) + (open[session] === 0 ? tenths : 0);
  }
  const loads = [...start];
  const given: number[] = jobs.map(() => -1);
  const mayStayOpen = [...open];
  const busy = most.map((row) => row.map(() => false));
  let best: Found | null = null;
  let left = steps;

  const isWorse = (openTenths: number, squares: number): boolean =>
    best !== null && (openTenths > best.openTenths || (openTenths === best.openTenths && squares >= best.squares));

  const visit = (j: number, openTenths: number): void => {
    const job = jobs[j];
    if (job === undefined) {
      const squares = sumOfSquares(loads);
      if (!isWorse(openTenths, squares)) best = { openTenths, squares, given: [...given] };
      return;
    }
    if (isWorse(openTenths, leastSquares(loads, sure[j] ?? 0))) return;
    const { session, tenths } = job;
    const able = loads
      .map((load, carer) => ({ load, carer }))
      .filter(({ carer }) => !busy[session]![carer] && tenths <= (most[session]![carer] ?? 0))
      .sort((a, b) => a.load - b.load || a.carer - b.carer);
    for (const { carer } of able) {
      // The first rota is found whatever it takes: only then may the steps run out.
      if (best !== null && left <= 0) return;
      left -= 1;
      loads[carer]! += tenths;
      busy[session]![carer] = true;
      given[j] = carer;
      visit(j + 1, openTenths);
      loads[carer]! -= tenths;
      busy[session]![carer] = false;
    }
    given[j] = -1;
    if ((mayStayOpen[session] ?? 0) > 0) {
      mayStayOpen[session]! -= 1;
      visit(j + 1, openTenths + tenths);
      mayStayOpen[session]! += 1;
    }
  };
  visit(0, 0);
  return { found: best ?? { openTenths: 0, squares: 0, given }, isDone: left > 0 };
}

const sumOfSquares = (loads: readonly number[]): number => loads.reduce((sum, load) => sum + load * load, 0);

/** The least sum of squares when so much more is spread over the loads in any parts: the lowest are filled up to one level. */
function leastSquares(loads: readonly number[], more: number): number {
  const sorted = [...loads].sort((a, b) => a - b);
  let filled = 0;
  let sum = 0;
  while (filled < sorted.length && (filled === 0 || (sum + more) / filled > sorted[filled]!)) {
    sum += sorted[filled]!;
    filled += 1;
  }
  if (filled === 0) return 0;
  const level = (sum + more) / filled;
  return filled * level * level + sumOfSquares(sorted.slice(filled));
}

/** Moves one job to another carer, or exchanges the carers of two, as long as the sum of squares falls. */
function improve(
  jobs: readonly Job[],
  start: readonly number[],
  most: readonly (readonly number[])[],
  before: readonly number[],
): readonly number[] {
  const given = [...before];
  const loads = [...start];
  jobs.forEach(({ tenths }, j) => {
    if (given[j]! >= 0) loads[given[j]!]! += tenths;
  });
  const isThere = (session: number, carer: number, but: readonly number[]): boolean =>
    jobs.some((job, j) => job.session === session && given[j] === carer && !but.includes(j));
  const can = (j: number, carer: number, but: readonly number[]): boolean =>
    jobs[j]!.tenths <= (most[jobs[j]!.session]![carer] ?? 0) && !isThere(jobs[j]!.session, carer, but);
  /** By how much the sum of squares falls when so much goes from one carer to another. */
  const gain = (from: number, to: number, tenths: number): number => tenths * (loads[from]! - loads[to]! - tenths);
  const shift = (from: number, to: number, tenths: number): void => {
    loads[from]! -= tenths;
    loads[to]! += tenths;
  };
  for (let moved = true; moved;) {
    moved = false;
    for (let j = 0; j < jobs.length; j += 1) {
      const from = given[j]!;
      if (from < 0) continue;
      for (let to = 0; to < loads.length; to += 1) {
        const here = given[j]!;
        if (to === here || gain(here, to, jobs[j]!.tenths) <= 0 || !can(j, to, [j])) continue;
        shift(here, to, jobs[j]!.tenths);
        given[j] = to;
        moved = true;
      }
      for (let k = 0; k < jobs.length; k += 1) {
        const [mine, theirs] = [given[j]!, given[k]!];
        const more = jobs[j]!.tenths - jobs[k]!.tenths;
        if (theirs < 0 || mine === theirs || more <= 0 || gain(mine, theirs, more) <= 0) continue;
        if (!can(j, theirs, [j, k]) || !can(k, mine, [j, k])) continue;
        shift(mine, theirs, more);
        given[j] = theirs;
        given[k] = mine;
        moved = true;
      }
    }
  }
  return given;
}
