/**
 * What a resource of limited units says about the starts of those who use it. Methods: the profile of what is certainly in use,
 * explained moment by moment (Schutt, Feydy, Stuckey and Wallace 2011); for a resource of one unit also what does not fit between
 * two moments (overload checking and edge-finding: Carlier and Pinson 1989; explanations as in Vilim 2005).
 */
import type { Nogoods, Propagator } from "./nogoods.js";

/** A user holds `units` over [start + offset, start + offset + length), its start being variable `variable`. */
export interface ResourceUser {
  readonly variable: number;
  readonly units: number;
  readonly offset: number;
  readonly length: number;
}

/** Never more than `capacity` units in use at once. */
export function limitResource(nogoods: Nogoods, users: readonly ResourceUser[], capacity: number): void {
  nogoods.addPropagator(keepProfile(nogoods, users, capacity));
  if (capacity === 1) nogoods.addPropagator(keepOrder(nogoods, users));
}

const watchesOf = (users: readonly ResourceUser[]): number[] => [
  ...new Set(users.flatMap(({ variable }) => [2 * variable, 2 * variable + 1])),
];

/** Insertion: little has moved since the last time. */
function sortBy(order: Int32Array, key: Int32Array): void {
  for (let at = 1; at < order.length; at += 1) {
    const u = order[at]!;
    const value = key[u]!;
    let to = at;
    while (to > 0 && key[order[to - 1]!]! > value) {
      order[to] = order[to - 1]!;
      to -= 1;
    }
    order[to] = u;
  }
}

function keepProfile({ low, raise, failWith }: Nogoods, users: readonly ResourceUser[], capacity: number): Propagator {
  const n = users.length;
  const side = Int32Array.from(users, ({ variable }) => 2 * variable);
  const units = Int32Array.from(users, (user) => user.units);
  const offset = Int32Array.from(users, (user) => user.offset);
  const length = Int32Array.from(users, (user) => user.length);
  // Of what is certainly in use: from `certainFrom` to `certainTo`; nothing where that is not later.
  const certainFrom = new Int32Array(n);
  const certainTo = new Int32Array(n);
  // Kept from one call to the next: little has moved in between.
  const byFrom = Int32Array.from(users, (_, u) => u);
  const byTo = Int32Array.from(users, (_, u) => u);
  /** Height from each moment until the next. */
  const moments = new Int32Array(2 * n);
  const heights = new Int32Array(2 * n);
  const there: number[] = [];
  const byUnits = (a: number, b: number): number => units[b]! - units[a]! || a - b;

  /** All that is certainly in use at `moment`, but for `except`, until it is more than `spare`, the most units first. */
  const inUseAt = (moment: number, except: number, spare: number): number[] => {
    there.length = 0;
    for (let u = 0; u < n; u += 1)
      if (u !== except && certainFrom[u]! <= moment && moment < certainTo[u]!) there.push(u);
    there.sort(byUnits);
    const because: number[] = [];
    let inUse = 0;
    for (const u of there) {
      because.push(side[u]!, moment - offset[u]! - length[u]! + 1, side[u]! + 1, offset[u]! - moment);
      inUse += units[u]!;
      if (inUse > spare) break;
    }
    return because;
  };

  const propagate = (): boolean => {
    let certain = 0;
    for (let u = 0; u < n; u += 1) {
      const from = -low[side[u]! + 1]! + offset[u]!;
      const to = low[side[u]!]! + offset[u]! + length[u]!;
      certainFrom[u] = from;
      certainTo[u] = to;
      if (from < to) certain += 1;
    }
    if (certain === 0) return true;
    sortBy(byFrom, certainFrom);
    sortBy(byTo, certainTo);
    let steps = 0;
    let height = 0;
    let highest = 0;
    let begun = 0;
    let over = 0;
    for (;;) {
      while (begun < n && certainFrom[byFrom[begun]!]! >= certainTo[byFrom[begun]!]!) begun += 1;
      while (over < n && certainFrom[byTo[over]!]! >= certainTo[byTo[over]!]!) over += 1;
      if (over === n) break;
      const next = certainTo[byTo[over]!]!;
      const moment = begun < n ? Math.min(next, certainFrom[byFrom[begun]!]!) : next;
      while (over < n && certainTo[byTo[over]!]! <= moment) {
        const u = byTo[over]!;
        if (certainFrom[u]! < certainTo[u]!) height -= units[u]!;
        over += 1;
      }
      while (begun < n && certainFrom[byFrom[begun]!]! <= moment) {
        const u = byFrom[begun]!;
        if (certainFrom[u]! < certainTo[u]!) height += units[u]!;
        begun += 1;
      }
      moments[steps] = moment;
      heights[steps] = height;
      steps += 1;
      if (height > capacity) return failWith(inUseAt(moment, -1, capacity));
      if (height > highest) highest = height;
    }

    for (let u = 0; u < n; u += 1) {
      const spare = capacity - units[u]!;
      if (highest <= spare) continue;
      const at = side[u]!;
      if (low[at]! === -low[at + 1]!) continue;
      const ownFrom = certainFrom[u]!;
      const ownTo = certainTo[u]!;
      const lasts = length[u]!;
      // Forwards: the first moment at which it can begin.
      let from = low[at]! + offset[u]!;
      for (let step = 0; step + 1 < steps && moments[step]! < from + lasts; step += 1) {
        const until = moments[step + 1]!;
        if (until <= from || heights[step]! <= spare || (ownFrom <= moments[step]! && moments[step]! < ownTo)) continue;
        while (from < until) {
          const moment = Math.min(until, from + lasts) - 1;
          const because = inUseAt(moment, u, spare);
          because.push(at, moment - offset[u]! - lasts + 1);
          if (!raise(at, moment + 1 - offset[u]!, because)) return false;
          from = moment + 1;
        }
      }
      // Backwards: the last.
      let to = -low[at + 1]! + offset[u]! + lasts;
      for (let step = steps - 2; step >= 0 && moments[step + 1]! > to - lasts; step -= 1) {
        const since = moments[step]!;
        if (since >= to || heights[step]! <= spare || (ownFrom <= since && since < ownTo)) continue;
        while (to > since) {
          const moment = Math.max(since, to - lasts);
          const because = inUseAt(moment, u, spare);
          because.push(at + 1, offset[u]! - moment);
          if (!raise(at + 1, lasts + offset[u]! - moment, because)) return false;
          to = moment;
        }
      }
    }
    return true;
  };
  return { watches: watchesOf(users), propagate };
}

/** One at a time: what does not fit between two moments, and who has to come after or before all of it. */
function keepOrder({ low, raise, failWith }: Nogoods, users: readonly ResourceUser[]): Propagator {
  const n = users.length;

  const early = new Int32Array(n);
  const late = new Int32Array(n);
  const shift = new Int32Array(n);
  const byEnd = Int32Array.from(users, (_, u) => u);
  const inside: number[] = [];
  /** By place in `byEnd`: the longest use from there on. */
  const longestAfter = new Int32Array(n + 1);

  /** That all inside lie between the two moments. */
  const between = (from: number, until: number, direction: 0 | 1): number[] => {
    const because: number[] = [];
    for (const u of inside) {
      const side = 2 * users[u]!.variable + direction;
      because.push(side, from - shift[u]!, side ^ 1, users[u]!.length + shift[u]! - until);
    }
    return because;
  };

  /** `direction` 0 looks at time as it runs, 1 at time run backwards, where ends are starts. */
  const look = (direction: 0 | 1): boolean => {
    for (let u = 0; u < n; u += 1) {
      const { variable, offset, length } = users[u]!;
      const side = 2 * variable + direction;
      // Begin of the use on the axis looked along: start + offset, or -(start + offset + length).
      shift[u] = direction === 0 ? offset : -offset - length;
      early[u] = low[side]! + shift[u]!;
      late[u] = -low[side ^ 1]! + shift[u]! + length;
    }
    sortBy(byEnd, late);
    longestAfter[n] = 0;
    for (let at = n - 1; at >= 0; at -= 1)
      longestAfter[at] = Math.max(longestAfter[at + 1]!, users[byEnd[at]!]!.length);
    for (let a = 0; a < n; a += 1) {
      const from = early[a]!;
      if (early.indexOf(from) < a) continue;
      // Users at or after `from`, by their latest end: the load that must lie before that end.
      let load = 0;
      inside.length = 0;
      for (let at = 0; at < n; at += 1) {
        const u = byEnd[at]!;
        if (early[u]! < from) continue;
        load += users[u]!.length;
        inside.push(u);
        const until = late[u]!;
        const room = until - from;
        if (load > room) return failWith(between(from, until, direction));
        if (load + longestAfter[at + 1]! <= room) continue;
        for (let other = at + 1; other < n; other += 1) {
          const j = byEnd[other]!;
          if (early[j]! < from || load + users[j]!.length <= room) continue;
          // j cannot end among them: it begins when the last of them, at the earliest, is over.
          const side = 2 * users[j]!.variable + direction;
          const bound = from + load - shift[j]!;
          if (bound <= low[side]!) continue;
          const because = between(from, until, direction);
          because.push(side, from - shift[j]!);
          if (!raise(side, bound, because)) return false;
          early[j] = low[side]! + shift[j]!;
        }
      }
    }
    return true;
  };
  return { watches: watchesOf(users), propagate: () => look(0) && look(1) };
}
