import { SPLIT_EVENING, SPLIT_MORNING, WHOLE_MORNING, type ProblemTables } from "./problem-tables.js";
import { createRandomStream, type RandomStream } from "./random.js";
import type { WeekState } from "./week-state.js";

/**
 * Makes one random change between `begin` and `settle`; false when the draws led to no change (nothing was touched then).
 * Single picks that cannot stay below a total of `most` are not even tried.
 */
type Move = (most: number) => boolean;

export interface Moves {
  /** Before the first move of a week: where the draws come from and which positions may change. */
  aim(random: RandomStream, free: Int32Array): void;
  readonly propose: Move;
}

/** Draws for each kind of move, in the order of the list in `createMoves`. */
const SHARES = [24, 4, 2, 16, 1, 1, 6, 20, 2, 2, 2, 1, 1];

/** The same where no pick may change: finishing and bases alone. */
const WITHOUT_PICKS = [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1];

/** Draws for bases to be planned anew in one move. */
const MOST_REPLANNED = 3;

/** How often a kind is drawn anew before a draw counts as no move. */
const TRIES = 2;

/** Candidates looked at for each place that must give up a base; twice as many for a base that is taken up. */
const SAMPLE = 6;

/** Set-ups of a base come to so many fifths of one for each that eats of it. */
const FIFTHS_OF_SET_UP = 3;

/**
 * Writes what each candidate costs by estimate, thousandths of a point: its own cost, its finishing where that begins, and of each base
 * the batches it takes and a part of a set-up, at the easiest window that serves its day.
 */
function estimateCosts(tables: ProblemTables, costs: Float64Array): void {
  const { candidateStart, candidateDish, candidateCost, candidateBaseStart, candidateBase, candidateAmount } = tables;
  const { baseFixed, basePerBatch, baseBatch, baseWindowStart, baseWindow, baseFirstDay, baseLastDay, effort } = tables;
  for (let position = 0; position < tables.size.positions; position += 1) {
    const day = tables.dayAt[position]!;
    const morning = tables.morningOf[day]!;
    for (let candidate = candidateStart[position]!; candidate < candidateStart[position + 1]!; candidate += 1) {
      const dish = candidateDish[candidate]!;
      const minutes = (part: number): number =>
        tables.finishFixed[dish * 3 + part]! + tables.finishPerPortion[dish * 3 + part]!;
      costs[candidate] = candidateCost[candidate]!;
      if (tables.eveningFirst[dish * tables.size.days + day] === 1) {
        const evening = tables.eveningOf[day]!;
        costs[candidate]! += effort[evening]! * minutes(SPLIT_EVENING) + effort[morning]! * minutes(SPLIT_MORNING);
      } else if (morning >= 0) costs[candidate]! += effort[morning]! * minutes(WHOLE_MORNING);
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
}

/**
 * The moves of the search: one pick; two picks of a box; two picks of a child's slot; two days of a child's slot swapped; two
 * days of a child's boxes swapped; two days of all boxes swapped; a sibling's dish copied; a pick redirected to bases in use;
 * a base given up by all its eaters, each for a good dish among a few;
 * a new base taken up where it serves best; finishing moved to the evening or back;
 * bases planned anew in random order; one day of a base made in another window. Swaps go by dish, and only where the other day's list has it.
 */
export function createMoves(tables: ProblemTables, week: WeekState): Moves {
  const { size, most: largest, candidateStart, candidateDish, candidateOfDish } = tables;
  const { candidateBaseStart, candidateBase, baseWindowStart } = tables;
  const { childAt, dayAt, boxAt, peerStart, peerAt } = tables;
  const roughly = new Float64Array(largest.candidates);
  /** Candidates of each position by what they may come to; ties by number, so that the order is the same everywhere. */
  const byCost = new Int32Array(largest.candidates);
  const positionOf = new Int32Array(largest.candidates);
  let random: RandomStream = createRandomStream(0);
  let free = tables.free;
  let sameBox: readonly Int32Array[] = [];
  let sameSlot: readonly Int32Array[] = [];
  let boxPairs: readonly Int32Array[] = [];
  let dayPairs: readonly Int32Array[] = [];
  let placesOf: readonly (readonly number[])[] = [];
  let wheel: readonly Move[] = [];

  const aim: Moves["aim"] = (stream, places) => {
    random = stream;
    if (free === places && wheel.length > 0) return;
    free = places;
    const { positions } = tables.problem;
    sameBox = freePeers((p, o) => boxAt[p] === boxAt[o]);
    sameSlot = freePeers(
      (p, o) => childAt[p] === childAt[o] && positions[p]!.slot === positions[o]!.slot && dayAt[p] !== dayAt[o],
    );
    boxPairs = swapPairs(true);
    dayPairs = swapPairs(false);
    estimateCosts(tables, roughly);
    for (let candidate = 0; candidate < size.candidates; candidate += 1) byCost[candidate] = candidate;
    for (let position = 0; position < size.positions; position += 1) {
      byCost
        .subarray(candidateStart[position], candidateStart[position + 1])
        .sort((left, right) => roughly[left]! - roughly[right]! || left - right);
    }
    const eaters = Array.from({ length: size.bases }, (): number[] => []);
    for (const position of free) {
      for (let candidate = candidateStart[position]!; candidate < candidateStart[position + 1]!; candidate += 1) {
        positionOf[candidate] = position;
        for (let use = candidateBaseStart[candidate]!; use < candidateBaseStart[candidate + 1]!; use += 1) {
          eaters[candidateBase[use]!]!.push(candidate);
        }
      }
    }
    placesOf = eaters;
    const canSplit =
      tables.problem.dishes.some(({ split }) => split !== null) &&
      tables.problem.windows.some(({ kind }) => kind === "EVENING");
    wheel = (free.length === 0 ? WITHOUT_PICKS : SHARES).flatMap((share, kind) =>
      kinds[kind] === toggleEvening && !canSplit ? [] : new Array<Move>(share).fill(kinds[kind]!),
    );
  };

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
  const changeTwo = (peers: readonly Int32Array[]): boolean => {
    const position = drawFree();
    const others = peers[position]!;
    if (others.length === 0) return false;
    const other = others[random.below(others.length)]!;
    week.pick(position, drawOther(position));
    week.pick(other, drawOther(other));
    return true;
  };
  const exchange = (left: number, right: number): boolean => {
    const { dishes } = size;
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
  const swapMany = (pairs: readonly Int32Array[]): boolean => {
    const { dishes } = size;
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
    const first = peerStart[position]!;
    const others = peerStart[position + 1]! - first;
    if (others === 0) return false;
    const dish = candidateDish[week.picks[peerAt[first + random.below(others)]!]!]!;
    return pickIfHopeful(position, candidateOfDish[position * size.dishes + dish]!, most);
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
    if (size.bases === 0) return false;
    const base = random.below(size.bases);
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
    const position = random.below(size.positions);
    return week.toggleEvening(candidateDish[week.picks[position]!]!, dayAt[position]!);
  };
  const replanBases = (): boolean => {
    if (size.bases === 0) return false;
    let changed = false;
    for (let draw = 0; draw < MOST_REPLANNED; draw += 1) {
      const base = random.below(size.bases);
      if (!week.usesBase(base)) continue;
      week.replan(base);
      changed = true;
    }
    return changed;
  };
  const moveLot = (): boolean => {
    const position = random.below(size.positions);
    const pick = week.picks[position]!;
    const uses = candidateBaseStart[pick + 1]! - candidateBaseStart[pick]!;
    if (uses === 0) return false;
    const base = candidateBase[candidateBaseStart[pick]! + random.below(uses)]!;
    const entries = baseWindowStart[base + 1]! - baseWindowStart[base]!;
    if (entries < 2) return false;
    return week.moveLot(base, childAt[position]!, dayAt[position]!, baseWindowStart[base]! + random.below(entries));
  };

  const kinds: readonly Move[] = [
    changeOne,
    () => changeTwo(sameBox),
    () => changeTwo(sameSlot),
    swapSlot,
    () => swapMany(boxPairs),
    () => swapMany(dayPairs),
    copySibling,
    redirect,
    giveUpBase,
    takeUpBase,
    toggleEvening,
    replanBases,
    moveLot,
  ];
  const propose: Move = (most) => {
    for (let attempt = 0; attempt < TRIES; attempt += 1) {
      if (wheel[random.below(wheel.length)]!(most)) return true;
    }
    return false;
  };
  return { aim, propose };

  /** For each position the free ones that are related to it; none where it is not free itself. */
  function freePeers(related: (p: number, o: number) => boolean): Int32Array[] {
    const peers = Array.from({ length: size.positions }, () => new Int32Array(0));
    for (const p of free) peers[p] = free.filter((o) => o !== p && related(p, o));
    return peers;
  }

  /** Position pairs (left, right, left, right, ...) that a swap of two days exchanges, for one child each or for all. */
  function swapPairs(perChild: boolean): Int32Array[] {
    const pairs: Int32Array[] = [];
    for (let first = 0; first < size.days; first += 1) {
      for (let second = first + 1; second < size.days; second += 1) {
        for (let child = 0; child < (perChild ? size.children : 1); child += 1) {
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
