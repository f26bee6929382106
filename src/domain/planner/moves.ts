import { WHOLE_MORNING, type ProblemTables } from "./problem-tables.js";
import type { RandomStream } from "./random.js";
import type { WeekState } from "./week-state.js";

/**
 * Makes one random change between `begin` and `settle`; false when the draws led to no change (nothing was touched then).
 * Single picks that cannot stay below a total of `most` are not even tried.
 */
export type MoveProposer = (most: number) => boolean;

/** Draws for each kind of move, in the order of the list in `createMoveProposer`. */
const SHARES = [24, 4, 2, 16, 1, 1, 6, 20, 2, 2, 2, 1, 1];

/** Draws for bases to be planned anew in one move. */
const MOST_REPLANNED = 3;

/** How often a kind is drawn anew before a draw counts as no move. */
const TRIES = 2;

/** Candidates looked at for each place that must give up a base; twice as many for a base that is taken up. */
const SAMPLE = 6;

/** Set-ups of a base come to so many fifths of one for each that eats of it. */
const FIFTHS_OF_SET_UP = 3;

/**
 * What each candidate costs by estimate, thousandths of a point: its own cost, its finishing in the morning, and of each base the
 * batches it takes and a part of a set-up, at the easiest window that serves its day.
 */
function estimateCosts(tables: ProblemTables): Float64Array {
  const { candidateStart, candidateDish, candidateCost, candidateBaseStart, candidateBase, candidateAmount } = tables;
  const { baseFixed, basePerBatch, baseBatch, baseWindowStart, baseWindow, baseFirstDay, baseLastDay, effort } = tables;
  const costs = Float64Array.from(candidateCost);
  for (let position = 0; position < tables.positions; position += 1) {
    const day = tables.dayAt[position]!;
    const morning = tables.morningOf[day]!;
    for (let candidate = candidateStart[position]!; candidate < candidateStart[position + 1]!; candidate += 1) {
      const part = candidateDish[candidate]! * 3 + WHOLE_MORNING;
      if (morning >= 0)
        costs[candidate]! += effort[morning]! * (tables.finishFixed[part]! + tables.finishPerPortion[part]!);
      for (let use = candidateBaseStart[candidate]!; use < candidateBaseStart[candidate + 1]!; use += 1) {
        const base = candidateBase[use]!;
        let easiest = Infinity;
        for (let entry = baseWindowStart[base]!; entry < baseWindowStart[base + 1]!; entry += 1) {
          if (baseFirstDay[entry]! <= day && baseLastDay[entry]! >= day)
            easiest = Math.min(easiest, effort[baseWindow[entry]!]!);
        }
        // No window serves the day: it lives on what is ready, which costs nothing.
        if (easiest === Infinity) continue;
        const batches = Math.floor((basePerBatch[base]! * candidateAmount[use]!) / baseBatch[base]!);
        costs[candidate]! += easiest * (Math.floor((FIFTHS_OF_SET_UP * baseFixed[base]!) / 5) + batches);
      }
    }
  }
  return costs;
}

/**
 * The moves of the search: one pick; two picks of a box; two picks of a child's slot; two days of a child's slot swapped; two
 * days of a child's boxes swapped; two days of all boxes swapped; a sibling's dish copied; a pick redirected to bases in use;
 * a base given up by all its eaters, each for a good dish among a few;
 * a new base taken up where it serves best; finishing moved to the evening or back;
 * bases planned anew in random order; one day of a base made in another window. Swaps go by dish, and only where the other day's list has it.
 */
export function createMoveProposer(
  tables: ProblemTables,
  week: WeekState,
  random: RandomStream,
  free: Int32Array = tables.free,
): MoveProposer {
  const { candidateStart, candidateDish, candidateOfDish, dishes, days, bases } = tables;
  const { candidateBaseStart, candidateBase, baseWindowStart } = tables;
  const { childAt, dayAt, boxAt } = tables;
  const isFree = new Uint8Array(tables.positions);
  for (const position of free) isFree[position] = 1;

  const sameBox = freePeers(tables, (p, o) => boxAt[p] === boxAt[o]);
  const slotOf = tables.problem.positions.map((position) => position.slot);
  const sameSlot = freePeers(
    tables,
    (p, o) => childAt[p] === childAt[o] && slotOf[p] === slotOf[o] && dayAt[p] !== dayAt[o],
  );
  const siblings = tables.sameSlotPeers;
  const boxPairs = swapPairs(tables, true);
  const dayPairs = swapPairs(tables, false);
  const splitPossible = tables.canSplit.some((can) => can === 1) && tables.eveningOf.some((w) => w >= 0);

  // Candidates of each position by what they may come to; ties by number, so that the order is the same everywhere.
  const byCost = Int32Array.from(candidateDish.keys());
  const roughly = estimateCosts(tables);
  for (let position = 0; position < tables.positions; position += 1) {
    byCost
      .subarray(candidateStart[position], candidateStart[position + 1])
      .sort((left, right) => roughly[left]! - roughly[right]! || left - right);
  }

  const positionOf = new Int32Array(candidateDish.length);
  const placesOf = Array.from({ length: bases }, (): number[] => []);
  for (const position of free) {
    for (let candidate = candidateStart[position]!; candidate < candidateStart[position + 1]!; candidate += 1) {
      positionOf[candidate] = position;
      for (let use = candidateBaseStart[candidate]!; use < candidateBaseStart[candidate + 1]!; use += 1) {
        placesOf[candidateBase[use]!]!.push(candidate);
      }
    }
  }

  const drawFree = (): number => free[random.below(free.length)]!;
  /** Another candidate, of two draws the one that costs less by estimate. */
  const drawOther = (position: number): number => {
    const start = candidateStart[position]!;
    const others = candidateStart[position + 1]! - start - 1;
    const rank = Math.min(random.below(others), random.below(others));
    const chosen = byCost[start + rank]!;
    return chosen === week.picks[position] ? byCost[start + others]! : chosen;
  };
  /** Another candidate that needs no base but those in use, or -1 when a few draws find none. */
  const drawCovered = (position: number, without: number): number => {
    for (let attempt = 0; attempt < 8; attempt += 1) {
      const candidate = drawOther(position);
      let covered = true;
      for (let use = candidateBaseStart[candidate]!; covered && use < candidateBaseStart[candidate + 1]!; use += 1) {
        const base = candidateBase[use]!;
        covered = base !== without && week.usesBase(base);
      }
      if (covered) return candidate;
    }
    return -1;
  };

  const pickIfHopeful = (position: number, candidate: number, most: number): boolean => {
    if (candidate < 0 || candidate === week.picks[position] || week.isHopeless(position, candidate, most)) return false;
    week.pick(position, candidate);
    return true;
  };
  const changeOne = (most: number): boolean => {
    const position = drawFree();
    return pickIfHopeful(position, drawOther(position), most);
  };
  const changeTwo = (peers: readonly Int32Array[]) => (): boolean => {
    const position = drawFree();
    const others = peers[position]!;
    if (others.length === 0) return false;
    const other = others[random.below(others.length)]!;
    week.pick(position, drawOther(position));
    week.pick(other, drawOther(other));
    return true;
  };
  const exchange = (left: number, right: number): boolean => {
    const toLeft = candidateOfDish[left * dishes + candidateDish[week.picks[right]!]!]!;
    const toRight = candidateOfDish[right * dishes + candidateDish[week.picks[left]!]!]!;
    if (toLeft < 0 || toRight < 0 || toLeft === week.picks[left]) return false;
    week.pick(left, toLeft);
    week.pick(right, toRight);
    return true;
  };
  const swapSlot = (): boolean => {
    const position = drawFree();
    const others = sameSlot[position]!;
    return others.length > 0 && exchange(position, others[random.below(others.length)]!);
  };
  const swapMany = (pairs: readonly Int32Array[]) => (): boolean => {
    if (pairs.length === 0) return false;
    const pair = pairs[random.below(pairs.length)]!;
    for (let index = 0; index < pair.length; index += 2) {
      const left = pair[index]!;
      const right = pair[index + 1]!;
      if (candidateOfDish[left * dishes + candidateDish[week.picks[right]!]!]! < 0) return false;
      if (candidateOfDish[right * dishes + candidateDish[week.picks[left]!]!]! < 0) return false;
    }
    let changed = false;
    for (let index = 0; index < pair.length; index += 2) changed = exchange(pair[index]!, pair[index + 1]!) || changed;
    return changed;
  };
  const copySibling = (most: number): boolean => {
    const position = drawFree();
    const others = siblings[position]!;
    if (others.length === 0) return false;
    const dish = candidateDish[week.picks[others[random.below(others.length)]!]!]!;
    return pickIfHopeful(position, candidateOfDish[position * dishes + dish]!, most);
  };
  const redirect = (most: number): boolean => {
    const position = drawFree();
    return pickIfHopeful(position, drawCovered(position, -1), most);
  };
  /** The best there of a few candidates that do without a base, after the picks of this move so far; -1 when there is none. */
  const drawGood = (position: number, without: number): number => {
    let least = Infinity;
    let chosen = -1;
    const start = candidateStart[position]!;
    const count = candidateStart[position + 1]! - start;
    for (let draw = 0; draw < Math.min(count, SAMPLE); draw += 1) {
      const rank = count <= SAMPLE ? draw : Math.min(random.below(count), random.below(count));
      const candidate = byCost[start + rank]!;
      if (usesBase(candidate, without)) continue;
      const changed = week.change(position, candidate, least);
      if (changed < least) {
        least = changed;
        chosen = candidate;
      }
    }
    return chosen;
  };
  const giveUpBase = (): boolean => {
    const position = drawFree();
    const pick = week.picks[position]!;
    const uses = candidateBaseStart[pick + 1]! - candidateBaseStart[pick]!;
    if (uses === 0) return false;
    const base = candidateBase[candidateBaseStart[pick]! + random.below(uses)]!;
    let changed = false;
    for (const other of free) {
      if (!usesBase(week.picks[other]!, base)) continue;
      const candidate = drawGood(other, base);
      if (candidate < 0) continue;
      week.pick(other, candidate);
      changed = true;
    }
    return changed;
  };
  const takeUpBase = (): boolean => {
    if (bases === 0) return false;
    const base = random.below(bases);
    const places = placesOf[base]!;
    if (places.length === 0 || week.usesBase(base)) return false;
    let least = Infinity;
    let first = -1;
    for (let draw = 0; draw < 2 * SAMPLE; draw += 1) {
      const candidate = places[random.below(places.length)]!;
      const changed = week.change(positionOf[candidate]!, candidate, least);
      if (changed < least) {
        least = changed;
        first = candidate;
      }
    }
    if (first < 0) return false;
    week.pick(positionOf[first]!, first);
    for (let draw = 0; draw < 2 * SAMPLE; draw += 1) {
      const candidate = places[random.below(places.length)]!;
      const position = positionOf[candidate]!;
      if (candidate !== week.picks[position] && week.change(position, candidate, 0) < 0) week.pick(position, candidate);
    }
    return true;
  };
  const usesBase = (candidate: number, base: number): boolean => {
    for (let use = candidateBaseStart[candidate]!; use < candidateBaseStart[candidate + 1]!; use += 1) {
      if (candidateBase[use] === base) return true;
    }
    return false;
  };
  const toggleEvening = (): boolean => {
    if (!splitPossible) return false;
    const position = random.below(tables.positions);
    return week.toggleEvening(candidateDish[week.picks[position]!]!, dayAt[position]!);
  };
  const replanBases = (): boolean => {
    if (bases === 0) return false;
    let changed = false;
    for (let draw = 0; draw < MOST_REPLANNED; draw += 1) {
      const base = random.below(bases);
      if (!week.usesBase(base)) continue;
      week.replan(base);
      changed = true;
    }
    return changed;
  };
  const moveLot = (): boolean => {
    const position = random.below(tables.positions);
    const pick = week.picks[position]!;
    const uses = candidateBaseStart[pick + 1]! - candidateBaseStart[pick]!;
    if (uses === 0) return false;
    const base = candidateBase[candidateBaseStart[pick]! + random.below(uses)]!;
    const entries = baseWindowStart[base + 1]! - baseWindowStart[base]!;
    if (entries < 2) return false;
    return week.moveLot(base, childAt[position]!, dayAt[position]!, baseWindowStart[base]! + random.below(entries));
  };

  const kinds: readonly MoveProposer[] = [
    changeOne,
    changeTwo(sameBox),
    changeTwo(sameSlot),
    swapSlot,
    swapMany(boxPairs),
    swapMany(dayPairs),
    copySibling,
    redirect,
    giveUpBase,
    takeUpBase,
    toggleEvening,
    replanBases,
    moveLot,
  ];
  const wheel = SHARES.flatMap((share, kind) =>
    kinds[kind] === toggleEvening && !splitPossible ? [] : new Array<MoveProposer>(share).fill(kinds[kind]!),
  );
  const frozen: readonly MoveProposer[] = [toggleEvening, replanBases, moveLot];
  return (most) => {
    for (let attempt = 0; attempt < TRIES; attempt += 1) {
      const propose = free.length === 0 ? frozen[random.below(frozen.length)]! : wheel[random.below(wheel.length)]!;
      if (propose(most)) return true;
    }
    return false;
  };

  function freePeers(of: ProblemTables, related: (p: number, o: number) => boolean): Int32Array[] {
    return Array.from({ length: of.positions }, (_, p) =>
      Int32Array.from(free.filter((o) => o !== p && isFree[p] === 1 && related(p, o))),
    );
  }

  /** Position pairs (left, right, left, right, ...) that a swap of two days exchanges, for one child each or for all. */
  function swapPairs(of: ProblemTables, perChild: boolean): Int32Array[] {
    const pairs: Int32Array[] = [];
    for (let first = 0; first < days; first += 1) {
      for (let second = first + 1; second < days; second += 1) {
        for (let child = 0; child < (perChild ? of.children : 1); child += 1) {
          const pair: number[] = [];
          for (const left of free) {
            if (dayAt[left] !== first || (perChild && childAt[left] !== child)) continue;
            for (const right of sameSlot[left]!) if (dayAt[right] === second) pair.push(left, right);
          }
          if (pair.length > 2) pairs.push(Int32Array.from(pair));
        }
      }
    }
    return pairs;
  }
}
