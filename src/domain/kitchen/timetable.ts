/**
 * Puts the work of each prep session on the clock: a resource-constrained schedule with carers and appliances as
 * resources. Method: serial schedule generation over several priority rules, the best list then improved, and where that is longer
 * than the work must be, a search that learns from its dead ends until nothing shorter is left. Time inside is whole tenths of a minute from midnight, durations rounded up; the clock times handed
 * out are rounded down to the minute, one way for all, so that what does not overlap in tenths does not overlap on
 * paper either.
 */
import type { EquipmentBrief, SessionBrief } from "../brief.js";
import { minutesOf, timeOf } from "../calendar/dates.js";
import { compare } from "../compare.js";
import { fail, ok, type Result } from "../result.js";
import type { SessionPlan, TaskPlan } from "../week.js";
import { at, listJobs, TENTHS, type Job, type Session } from "./jobs.js";
import { latestShifts } from "./latest-starts.js";
import { findSchedule, isBetter, type Placed } from "./place-jobs.js";
import { boundSession, boundStart, shortenSession } from "./shorten-session.js";
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

const MINUTES_PER_DAY = 24 * 60;
/** Dead ends that the search for a shorter session may learn from, at most, and times its tasks: one costs more where there are more. */
const DEAD_ENDS = 2000;
const DEAD_ENDS_BY_TASKS = 60_000;

export interface Timetable {
  readonly tasks: readonly TaskPlan[];
  /** Those with work, in time order. */
  readonly sessions: readonly SessionPlan[];
}

/**
 * Clock times and a carer for every task, sorted by session, start and key, and how long each session takes at least. Rules that
 * always hold: a carer does one hands-on task at a time and is free during passive minutes; an appliance is held from the task's
 * start for the use's own `minutes`; a task starts when everything in `after` has ended; all tasks lie inside the session and before
 * `mustEndBy`; hands-on minutes stay inside the session's. On one carer's list, cooking and finishing of safe things come before
 * cooking and finishing that handles an avoided allergen, and safe boxes before the others; only a session in which no timetable
 * with that order was found drops it. Throws on a task that waits for an unknown or later task, for itself, or for an appliance the
 * kitchen does not have.
 */
export function scheduleSessions(input: TimetableInput): Result<Timetable, TimetableFault[]> {
  checkReferences(input);
  const faults: TimetableFault[] = [];
  const tasks: TaskPlan[] = [];
  const sessions: SessionPlan[] = [];
  const known = new Set(input.sessions.map((session) => session.key));
  for (const key of new Set(input.work.map((work) => work.session))) {
    if (known.has(key)) continue;
    const hands = input.work.filter((work) => work.session === key).reduce((sum, work) => sum + work.handsOnMinutes, 0);
    faults.push(tooShort(key, "HANDS_ON", hands, 0));
  }
  const units = new Map(input.equipment.map((row) => [row.kind, row.units]));
  for (const { key, carers, startsAt, handsOnMinutes, elapsedMinutes } of input.sessions) {
    const work = input.work.filter((candidate) => candidate.session === key);
    if (work.length === 0) continue;
    const handsOn = work.reduce((sum, task) => sum + task.handsOnMinutes, 0);
    const isTooMuch = carers > 0 && handsOn > handsOnMinutes + 1e-6;
    if (isTooMuch) faults.push(tooShort(key, "HANDS_ON", handsOn, handsOnMinutes));

    const jobs = listJobs(work);
    if (carers < 1 && jobs.some((job) => job.hands > 0)) {
      faults.push(tooShort(key, "HANDS_ON", handsOn, 0));
      continue;
    }
    const opens = minutesOf(startsAt) * TENTHS;
    const closes = opens + elapsedMinutes * TENTHS;
    // A session that is refused all the same needs no proof.
    const deadEnds = isTooMuch ? 0 : Math.min(DEAD_ENDS, Math.ceil(DEAD_ENDS_BY_TASKS / jobs.length));
    const { placed, leastEnd, session } = findShortest({
      jobs,
      opens,
      closes,
      carers,
      units,
      safeFirst: true,
      deadEnds,
    });
    if (placed.end > closes) faults.push(tooShort(key, "ELAPSED", (placed.end - opens) / TENTHS, elapsedMinutes));
    const lateJobs = jobs
      .map((job, j) => ({ job, end: at(placed.starts, j) + job.length }))
      .filter(({ job, end }) => end > job.due);
    const [latest] = lateJobs.sort((a, b) => b.end - b.job.due - (a.end - a.job.due));
    if (latest !== undefined) {
      faults.push({
        ...tooShort(key, "LEAVE_TIME", (latest.end - opens) / TENTHS, (latest.job.due - opens) / TENTHS),
        childIds: latest.job.work.childIds,
      });
    }
    if (faults.length > 0) continue;
    const shifts = latestShifts(jobs, placed, closes);
    tasks.push(...writeTasks(jobs, placed, shifts));
    const latestStart = Math.min(...jobs.map((_, j) => at(placed.starts, j) + at(shifts, j) * TENTHS));
    sessions.push({
      session: key,
      lastsMinutes: (placed.end - opens) / TENTHS,
      leastMinutes: leastEnd / TENTHS,
      latestStartsAt: clock(latestStart),
      noLaterThan: clock(boundStart(session, leastEnd, latestStart)),
    });
  }
  return faults.length === 0 ? ok({ tasks, sessions }) : fail(faults);
}

/** The shortest timetable found and the session it was found for: with the safe order, without it where that does not fit. */
function findShortest(asked: Session): { placed: Placed; leastEnd: number; session: Session } {
  let best: Placed | null = null;
  for (const safeFirst of [true, false]) {
    const session = { ...asked, safeFirst };
    const { opens, closes } = session;
    const bound = boundSession(session);
    let placed = findSchedule(session, bound);
    let leastEnd = bound;
    const fits = placed.lateness === 0 && placed.end <= closes;
    if ((!fits || placed.end - opens > bound) && session.deadEnds > 0) {
      const shorter = shortenSession(session, fits ? placed.end - opens : Infinity, bound);
      placed = shorter.placed ?? placed;
      leastEnd = shorter.leastEnd;
    }
    if (placed.lateness === 0 && placed.end <= closes) return { placed, leastEnd, session };
    if (best === null || isBetter(placed, best)) best = placed;
  }
  if (best === null) throw new Error("no timetable was tried");
  return { placed: best, leastEnd: 0, session: asked };
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

const clock = (tenthsOfDay: number): string => timeOf(Math.floor(tenthsOfDay / TENTHS) % MINUTES_PER_DAY);

function writeTasks(jobs: readonly Job[], placed: Placed, shifts: readonly number[]): TaskPlan[] {
  return jobs
    .map((job, j) => ({ job, start: at(placed.starts, j), carer: at(placed.carers, j), shift: at(shifts, j) }))
    .sort((a, b) => a.start - b.start || a.job.length - b.job.length || compare(a.job.work.key, b.job.work.key))
    .map(({ job, start, carer, shift }): TaskPlan => {
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
        latestStartsAt: clock(start + shift * TENTHS),
        carer,
      };
    });
}
