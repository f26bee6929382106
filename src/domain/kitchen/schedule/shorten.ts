/** The shortest end of a project, proven where the budget allows. */
import { boundProject } from "./bound-project.js";
import { createNogoods, type Nogoods } from "./nogoods.js";
import type { Project } from "./project.js";
import { limitResource } from "./resources.js";

export interface ShortenInput {
  readonly project: Project;
  /** The shortest end known so far; Infinity when none is. Only a shorter one is looked for. */
  readonly knownEnd: number;
  /** No end is shorter than this. */
  readonly leastEnd: number;
  /** Dead ends to learn from, at most. */
  readonly deadEnds: number;
  /** Asked once a dead end. */
  readonly shouldStop: () => boolean;
}

export interface Shortened {
  /** Null when nothing shorter than what was known was found. */
  readonly starts: readonly number[] | null;
  /** Who does each duty, from 0; empty without a crew. */
  readonly people: readonly number[];
  readonly end: number;
  /** Proven: no end is shorter. */
  readonly leastEnd: number;
  readonly deadEnds: number;
}

/** Dead ends before the first restart; later ones follow the sequence of Luby, Sinclair and Zuckerman (1993). */
const RESTART_AFTER = 60;

/**
 * Searches below the known end, learning from every dead end, until nothing is left (then the end is the shortest) or the budget is
 * spent. Throws on a project whose indices are out of range. Where no schedule meets the latest starts, `starts` is null and
 * `leastEnd` Infinity.
 */
export function shortenProject({ project, knownEnd, leastEnd, deadEnds, shouldStop }: ShortenInput): Shortened {
  const { activities } = project;
  let best: number[] | null = null;
  let people: number[] = [];
  let end = knownEnd;
  let used = 0;
  const answer = (least: number): Shortened => ({
    starts: best,
    people,
    end,
    leastEnd: Math.max(leastEnd, Math.min(end, least)),
    deadEnds: used,
  });
  const model = pose(project);
  if (model === null) return answer(Infinity);
  const { nogoods, isSettled } = model;
  /** Ends below the best, for all that follows. */
  const cut = (): boolean => activities.every((activity, a) => nogoods.impose(2 * a + 1, -(end - 1 - activity.length)));
  if (Number.isFinite(end) && !cut()) return answer(Infinity);

  let restarts = 0;
  let untilRestart = RESTART_AFTER;
  for (;;) {
    if (!nogoods.propagate()) {
      used += 1;
      if (!nogoods.learn()) return answer(Infinity);
      if (used >= deadEnds || shouldStop()) return answer(boundEnd(project, leastEnd, end));
      untilRestart -= 1;
      if (untilRestart === 0) {
        restarts += 1;
        untilRestart = RESTART_AFTER * luby(restarts + 1);
        nogoods.restart();
      }
      continue;
    }
    if (isSettled()) {
      best = activities.map((_, a) => nogoods.low[2 * a]!);
      people = model.people();
      end = Math.max(0, ...activities.map(({ length }, a) => best![a]! + length));
      if (end <= leastEnd) return answer(leastEnd);
      nogoods.restart();
      if (!cut()) return answer(Infinity);
      continue;
    }
    const disputed = restarts > 0 ? nogoods.mostDisputed() : null;
    if (disputed !== null) {
      // Towards the best schedule so far, from which a shorter one is often not far.
      const { variable, bound } = disputed;
      const own = best?.[variable];
      if (own !== undefined && own >= bound) nogoods.decide(2 * variable, bound);
      else nogoods.decide(2 * variable + 1, 1 - bound);
    } else model.decideEarliest();
  }
}

/**
 * A proven lower bound on the end, where the search was given up: an end that leads to a contradiction without a single decision is
 * too short. `leastEnd` is known to be none too long, `end` to be possible.
 */
function boundEnd(project: Project, leastEnd: number, end: number): number {
  const { activities } = project;
  const isTooShort = (tried: number): boolean => {
    const model = pose(project);
    if (model === null) return true;
    const { nogoods } = model;
    return !activities.every(({ length }, a) => nogoods.impose(2 * a + 1, length - tried)) || !nogoods.propagate();
  };
  const horizon = Math.max(0, ...activities.map(({ latest, length }) => latest + length));
  let low = Math.max(leastEnd, Math.min(end, boundProject(project)));
  let high = Math.min(end, horizon);
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (isTooShort(middle)) low = middle + 1;
    else high = middle;
  }
  return low;
}

interface Posed {
  readonly nogoods: Nogoods;
  readonly isSettled: () => boolean;
  readonly people: () => number[];
  /** The activity that can begin first begins then; of several, the one that has to. */
  readonly decideEarliest: () => void;
}

function pose({ activities, lags, capacity, crew }: Project): Posed | null {
  const duties = crew?.duties ?? [];
  const pairs = duties.flatMap((_, i) => duties.slice(i + 1).map((_, k) => [i, i + 1 + k] as const));
  const person = (duty: number): number => activities.length + duty;
  /** For each pair two yes-or-no variables: the first before the second, the second before the first. */
  const before = (pair: number): number => activities.length + duties.length + 2 * pair;
  const nogoods = createNogoods([
    ...activities.map(({ earliest, latest }) => ({ lowest: earliest, highest: latest })),
    // Nobody is told apart from anybody: the first duty is the first person's, the second the first two's.
    ...duties.map((_, duty) => ({ lowest: 0, highest: Math.min((crew?.size ?? 1) - 1, duty) })),
    ...pairs.flatMap(() => [
      { lowest: 0, highest: 1 },
      { lowest: 0, highest: 1 },
    ]),
  ]);
  if (activities.some(({ earliest, latest }) => earliest > latest)) return null;
  for (const { from, to, length } of lags) if (!nogoods.addLag(2 * from, 2 * to, length, -1)) return null;
  for (let resource = 0; resource < capacity.length; resource += 1) {
    const users = activities.flatMap(({ uses }, variable) =>
      uses.filter((use) => use.resource === resource).map((use) => ({ variable, ...use })),
    );
    if (users.some(({ units }) => units > capacity[resource]!)) return null;
    limitResource(nogoods, users, capacity[resource]!);
  }
  if (crew !== null) {
    limitResource(
      nogoods,
      duties.map(({ activity, offset, length }) => ({ variable: activity, units: 1, offset, length })),
      crew.size,
    );
    const mustFollow = new Set(crew.orders.map(({ first, then }) => `${first}<${then}`));
    for (let pair = 0; pair < pairs.length; pair += 1) {
      const [i, j] = pairs[pair]!;
      const order = (first: number, then: number, condition: number): boolean =>
        nogoods.addLag(
          2 * duties[first]!.activity,
          2 * duties[then]!.activity,
          duties[first]!.offset + duties[first]!.length - duties[then]!.offset,
          condition,
        );
      const ij = 2 * before(pair);
      const ji = 2 * (before(pair) + 1);
      if (!order(i, j, ij) || !order(j, i, ji)) return null;
      for (let one = 0; one < crew.size; one += 1) {
        const both = [2 * person(i), one, 2 * person(i) + 1, -one, 2 * person(j), one, 2 * person(j) + 1, -one];
        if (!nogoods.addNogood([...both, ij + 1, 0, ji + 1, 0])) return null;
        if (mustFollow.has(`${i}<${j}`) && !nogoods.addNogood([...both, ij + 1, 0])) return null;
        if (mustFollow.has(`${j}<${i}`) && !nogoods.addNogood([...both, ji + 1, 0])) return null;
      }
    }
  }

  const { low } = nogoods;
  const starts = activities.length;
  const variables = starts + duties.length;
  const isFixed = (variable: number): boolean => low[2 * variable]! === -low[2 * variable + 1]!;
  return {
    nogoods,
    isSettled: () => {
      for (let variable = 0; variable < variables; variable += 1) if (!isFixed(variable)) return false;
      return true;
    },
    people: () => duties.map((_, duty) => low[2 * person(duty)]!),
    decideEarliest: () => {
      let next = -1;
      for (let a = 0; a < starts; a += 1) {
        if (isFixed(a)) continue;
        if (
          next < 0 ||
          low[2 * a]! < low[2 * next]! ||
          (low[2 * a] === low[2 * next] && low[2 * a + 1]! > low[2 * next + 1]!)
        )
          next = a;
      }
      for (let duty = 0; next < 0; duty += 1) if (!isFixed(person(duty))) next = person(duty);
      nogoods.decide(2 * next + 1, -low[2 * next]!);
    },
  };
}

/** 1, 1, 2, 1, 1, 2, 4, ...: the `nth`, from 1. */
function luby(nth: number): number {
  let size = 1;
  while (size < nth) size = 2 * size + 1;
  let left = nth;
  while (size !== left) {
    size = (size - 1) / 2;
    if (left > size) left -= size;
  }
  return (size + 1) / 2;
}
