/** A prep session as a project: its shortest timetable, and the latest moment it can begin. */
import { at, type Job, type Session } from "./jobs.js";
import { placeJobs, type Placed } from "./place-jobs.js";
import { boundProject } from "./schedule/bound-project.js";
import { reverseProject, type Crew, type Lag, type Project } from "./schedule/project.js";
import { shortenProject } from "./schedule/shorten.js";
import { giveUnits } from "./units.js";

export interface ShortSession {
  /** Null when nothing shorter was found. */
  readonly placed: Placed | null;
  /** No timetable of the session ends sooner, in tenths from its start; Infinity when none fits at all. */
  readonly leastEnd: number;
}

/** A proven lower bound on the session's end, tenths from its start, without a search. */
export const boundSession = (session: Session): number => boundProject(poseSession(session));

const never = (): boolean => false;

/**
 * Looks for a timetable that fits the session and every leave time and ends before `knownEnd`; none is known to end before
 * `leastEnd`. Both in tenths from the start.
 */
export function shortenSession(session: Session, knownEnd: number, leastEnd: number): ShortSession {
  const { jobs, deadEnds } = session;
  const project = poseSession(session);
  const found = shortenProject({ project, knownEnd, leastEnd, deadEnds, shouldStop: never });
  if (found.starts === null) return { placed: null, leastEnd: found.leastEnd };
  const { starts, people } = found;
  const carerOf = project.crew === null ? shareHands(jobs, starts) : jobs.map(() => 0);
  project.crew?.duties.forEach(({ activity }, duty) => (carerOf[activity] = at(people, duty)));
  // In the order of their starts, each as early as it can: nothing begins later than it was found to.
  const list = jobs.map((_, j) => j).sort((a, b) => at(starts, a) - at(starts, b) || a - b);
  return { placed: placeJobs(session, list, carerOf), leastEnd: found.leastEnd };
}

/**
 * No timetable that begins after this moment, tenths from midnight, keeps every leave time and the session's own end. For a session
 * that fits: `leastEnd` is what it takes at least, `latest` a start that is known to keep them.
 */
export function boundStart(session: Session, leastEnd: number, latest: number): number {
  const { jobs, opens, closes, deadEnds } = session;
  // With one end for all, the shortest timetable is also the one that can begin last.
  const isOneEnd = jobs.every((job) => job.due >= closes);
  if (isOneEnd || closes - latest <= leastEnd) return closes - leastEnd;
  const project = reverseProject(poseSession(session), closes - opens);
  const knownEnd = closes - latest;
  return closes - shortenProject({ project, knownEnd, leastEnd, deadEnds, shouldStop: never }).leastEnd;
}

function poseSession({ jobs, opens, closes, carers, units, safeFirst }: Session): Project {
  const kinds = [...units.keys()];
  const handed = jobs.flatMap((job, j) => (job.hands > 0 ? [j] : []));
  const lags: Lag[] = jobs.flatMap((job, j) => job.before.map((i) => ({ from: i, to: j, length: at(jobs, i).length })));
  const orders = handed.flatMap((first) =>
    handed
      .filter((then) => !at(jobs, first).late && at(jobs, then).late && isBox(jobs, first) === isBox(jobs, then))
      .map((then) => ({ first, then })),
  );
  let crew: Crew | null = null;
  if (safeFirst && orders.length > 0 && carers === 1) {
    lags.push(...orders.map(({ first, then }) => ({ from: first, to: then, length: at(jobs, first).hands })));
  } else if (safeFirst && orders.length > 0) {
    crew = {
      size: carers,
      duties: handed.map((j) => ({ activity: j, offset: 0, length: at(jobs, j).hands })),
      orders: orders.map(({ first, then }) => ({ first: handed.indexOf(first), then: handed.indexOf(then) })),
    };
  }
  // Of two tasks that are the same in everything, the first comes first.
  const alike = new Map<string, number>();
  jobs.forEach(({ hands, length, holds, before, after, due, late }, j) => {
    const likeness = JSON.stringify([hands, length, holds, before, after, due, late, isBox(jobs, j)]);
    const twin = alike.get(likeness);
    if (twin !== undefined) lags.push({ from: twin, to: j, length: 0 });
    alike.set(likeness, j);
  });
  const hands = kinds.length;
  return {
    activities: jobs.map((job) => ({
      earliest: 0,
      latest: Math.min(job.due, closes) - opens - job.length,
      length: job.length,
      uses: [
        ...job.holds.map((hold) => ({ resource: kinds.indexOf(hold.kind), ...hold, offset: 0 })),
        ...(crew === null ? [{ resource: hands, units: 1, offset: 0, length: job.hands }] : []),
      ].filter(({ length }) => length > 0),
    })),
    lags,
    capacity: [...units.values(), carers],
    crew,
  };
}

const isBox = (jobs: readonly Job[], j: number): boolean => at(jobs, j).work.kind === "PACK";

/** Who does what, where never more tasks than carers need hands at once. */
const shareHands = (jobs: readonly Job[], starts: readonly number[]): number[] =>
  giveUnits(jobs.map(({ hands }, j) => ({ from: at(starts, j), to: at(starts, j) + hands, units: 1 }))).map(
    ([carer]) => carer ?? 0,
  );
