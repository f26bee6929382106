import { createBasePlanner, createPlanMemory, takeReadySupply, UNSERVED } from "./base-plan.js";
import type { LotCharge, PlanState } from "./base-plan.js";
import type { ProblemTables } from "./problem-tables.js";
import {
  DISTINCT_PRICE,
  POINT,
  REPEAT_PRICE,
  SIBLING_PRICE,
  SPLIT_EVENING,
  SPLIT_MORNING,
  STARCH_PRICE,
  TOGETHER_PRICE,
  UNSERVED_DAY,
  WHOLE_MORNING,
} from "./problem-tables.js";

/** A week's decisions, enough to restore it. */
export interface Snapshot {
  readonly picks: Int32Array;
  readonly evening: Uint8Array;
  readonly serve: Int32Array;
}

/**
 * One week under change: picks, finishing choices and base plan with every sum they move, kept up to date move by move.
 * A move is `begin`, any of `pick`, `toggleEvening` and `replan`, then `settle`; `undo` takes the whole move back.
 */
export interface WeekState {
  /** Candidate per position, numbered over all positions. */
  readonly picks: Int32Array;
  readonly begin: () => void;
  readonly pick: (position: number, candidate: number) => void;
  /**
   * Whether one pick's own cost, linear rows and repeats already rule a change out, against a total of `most` and an estimate of
   * all that the old pick's bases and finishing could save. Cheap, changes nothing, and may be wrong in rare cases: it only
   * spares proposals.
   */
  readonly isHopeless: (position: number, candidate: number, most: number) => boolean;
  /**
   * What one pick more would change in objective + weight x penalty, after the picks of this move so far, were every base planned
   * as if no budget were short; any number above `most` when it is more than that.
   */
  readonly change: (position: number, candidate: number, most: number) => number;
  /** Moves the finishing of a dish on a day to the evening before or back; false when it cannot be. */
  readonly toggleEvening: (dish: number, day: number) => boolean;
  /** Plans a base anew against the loads as they are. */
  readonly replan: (base: number) => void;
  /**
   * Has one day's demand of a base made in one of its windows (`entry` in `baseWindow`), the rest of the base as it stands: a base plan that
   * is best alone may stand in the way of another's. False when the window cannot serve the day, cannot make as much, or does already.
   */
  readonly moveLot: (base: number, child: number, day: number, entry: number) => boolean;
  /**
   * A lower bound on objective + weight x penalty after `settle`, known before any base is planned: the bases that the move
   * touches stand with the least their demand can cost.
   */
  readonly leastTotal: (most?: number) => number;
  readonly settle: () => void;
  readonly undo: () => void;
  /** Thousandths of a point. */
  readonly objective: () => number;
  /** Zero exactly when every hard row holds; thousandths of a point at weight 1. */
  readonly penalty: () => number;
  readonly setWeight: (weight: number) => void;
  readonly portions: (dish: number, day: number) => number;
  readonly usesBase: (base: number) => boolean;
  readonly save: (into: Snapshot) => void;
  readonly restore: (from: Snapshot) => void;
  /** An empty week again, of what the tables hold now. */
  readonly clear: () => void;
}

/** A snapshot of the right size: no base planned, all finishing where it begins. */
export function createSnapshot(tables: ProblemTables): Snapshot {
  const { positions, dishes, bases, groups, days } = tables.size;
  return {
    picks: new Int32Array(positions),
    evening: tables.eveningFirst.slice(0, dishes * days),
    serve: new Int32Array(bases * groups * days).fill(UNSERVED),
  };
}

/** In this order a changed pick reaches the sums: the linear rows, the rules that count, finishing and bases. */
const ROWS = 0;
const COUNTS = 1;
const SUPPLY = 2;

/** Picks that a move may change again, besides one of every position. */
const MORE_CHANGES = 32;
/** Changes of finishing in one move. */
const MOST_TOGGLES = 8;

export function createWeekState(tables: ProblemTables): WeekState {
  const { size, most } = tables;
  const { childAt, dayAt, boxAt, candidateDish, candidateCost, candidateQ } = tables;
  const { candidateBaseStart, candidateBase, candidateAmount } = tables;
  const { rowLow, rowHigh, rowPrice, rowTarget, rowDirection, rowWeight, rowStart, rowAt, rowMeasureAt } = tables;
  const { distinctAtLeast, distinctAtMost, matchStart, matchRule, matchCounter } = tables;
  const { togetherStart, togetherAt, togetherFirst, togetherSecond } = tables;
  const { main, repeatMax, starch, countsRepeat, neighbourStart, neighbourDay } = tables;
  const { peerStart, peerAt, peerPair, rivalStart, rivalAt, pairCommon } = tables;
  const { finishFixed, finishPerPortion, finishEquipment, finishPortionsPerGo, isMovable, morningOf, eveningOf } =
    tables;
  const { capacityBudget, capacityPrice, effort, baseMaxBatches, baseBatch, readyStart } = tables;
  const planner = createBasePlanner(tables);
  const memory = createPlanMemory(tables);
  const mostLots = most.bases * most.groups * most.days;

  const picks = new Int32Array(most.positions);
  const evening = new Uint8Array(most.dishes * most.days);
  const demand = new Int32Array(mostLots);
  const usersOf = new Int32Array(most.bases);
  /** Per base: minutes at their effort and leftovers, as it is planned now. */
  const lotCost = new Float64Array(most.bases);
  const net = new Int32Array(mostLots);
  const serve = new Int32Array(mostLots);
  const loads = new Float64Array(most.capacities);
  const trial = new Int32Array(most.days);

  const rowSum = new Int32Array(most.rows);
  const distinctCount = new Int32Array(most.distinctCounters);
  const distinctTotal = new Int32Array(most.distinctRules);
  const together = new Int32Array(most.togetherRows * 3);
  const repeats = new Int32Array(most.children * most.dishes);
  const mainsOfFamily = new Int32Array(most.children * most.days * most.families);
  const pairEqual = new Int32Array(most.pairs);
  const portionsOf = new Int32Array(most.dishes * most.days);
  const changedInBox = new Int32Array(most.boxes);

  let { stayClose, sharing } = tables.problem;
  let lotSize = 0;

  let picksCost = 0;
  let targetsCost = 0;
  let distanceCost = 0;
  let wasteCost = 0;
  let minutesCost = 0;
  let rowPenalty = 0;
  let countPenalty = 0;
  /** The part of it that `leastAfter` does not follow: distinct counts and what may not lie together. */
  let loosePenalty = 0;
  let unservedPenalty = 0;
  let capacityPenalty = 0;

  // What `undo` needs.
  const savedScalars = new Float64Array(10);
  const savedLoads = new Float64Array(most.capacities);
  const touchedBases = new Int32Array(most.bases);
  const isTouched = new Uint8Array(most.bases);
  const isSeen = new Uint8Array(most.bases);
  const seenBases = new Int32Array(most.bases);
  let seen = 0;
  const savedDemand = new Int32Array(mostLots);
  const savedNet = new Int32Array(mostLots);
  const savedServe = new Int32Array(mostLots);
  const savedLotCost = new Float64Array(most.bases);
  let touched = 0;
  const changedPositions = new Int32Array(most.positions + MORE_CHANGES);
  const changedFrom = new Int32Array(most.positions + MORE_CHANGES);
  const changedTo = new Int32Array(most.positions + MORE_CHANGES);
  let changes = 0;
  // How many of the changed picks the sums have followed so far.
  let rowsFollowed = 0;
  let countsFollowed = 0;
  let supplyFollowed = 0;
  let hasLoadsKept = false;
  /** Dish and day of the finishing that the move has changed. */
  const toggled = new Int32Array(MOST_TOGGLES);
  let toggles = 0;

  const charge: LotCharge = { minutes: 0, waste: 0, unserved: 0 };
  const readyLeft = new Int32Array(most.ready);
  const state: PlanState = { loads, batchesLeft: new Int32Array(most.windows), weight: 1 };

  /** The base whose windows this move has set itself, or -1. */
  let kept = -1;
  const begin = (): void => {
    savedScalars[0] = picksCost;
    savedScalars[1] = targetsCost;
    savedScalars[2] = distanceCost;
    savedScalars[3] = wasteCost;
    savedScalars[4] = minutesCost;
    savedScalars[5] = rowPenalty;
    savedScalars[6] = countPenalty;
    savedScalars[7] = unservedPenalty;
    savedScalars[8] = capacityPenalty;
    savedScalars[9] = loosePenalty;
    for (let index = 0; index < touched; index += 1) isTouched[touchedBases[index]!] = 0;
    touched = 0;
    changes = 0;
    rowsFollowed = 0;
    countsFollowed = 0;
    supplyFollowed = 0;
    toggles = 0;
    kept = -1;
    hasLoadsKept = false;
  };
  const keepLoads = (): void => {
    if (hasLoadsKept) return;
    hasLoadsKept = true;
    const { capacities } = size;
    for (let index = 0; index < capacities; index += 1) savedLoads[index] = loads[index]!;
  };

  /** Takes a base's lots out of the loads, once per move, and remembers them. */
  const touch = (base: number): void => {
    if (isTouched[base] === 1) return;
    keepLoads();
    isTouched[base] = 1;
    touchedBases[touched] = base;
    touched += 1;
    savedLotCost[base] = lotCost[base]!;
    const offset = base * lotSize;
    for (let index = offset; index < offset + lotSize; index += 1) {
      savedDemand[index] = demand[index]!;
      savedNet[index] = net[index]!;
      savedServe[index] = serve[index]!;
    }
    const { groups, days } = size;
    for (let group = 0; group < groups; group += 1) {
      planner.load(base, net, offset + group * days, serve, -1, loads, charge, null);
      wasteCost -= charge.waste;
      unservedPenalty -= charge.unserved;
    }
  };

  const finish = (dish: number, day: number, portions: number, sign: number): void => {
    if (portions === 0 || morningOf[day] === -1) return;
    if (evening[dish * size.days + day] === 0) finishPart(dish * 3 + WHOLE_MORNING, morningOf[day]!, portions, sign);
    else {
      finishPart(dish * 3 + SPLIT_EVENING, eveningOf[day]!, portions, sign);
      finishPart(dish * 3 + SPLIT_MORNING, morningOf[day]!, portions, sign);
    }
  };
  const finishPart = (part: number, window: number, portions: number, sign: number): void => {
    const times = sharing ? 1 : portions;
    loads[window]! += sign * (finishFixed[part]! * times + finishPerPortion[part]! * portions);
    const perGo = finishPortionsPerGo[part]!;
    const goes = !sharing ? portions : perGo === 0 ? 1 : Math.ceil(portions / perGo);
    const { windows, equipment } = size;
    for (let e = 0; e < equipment; e += 1) {
      const minutes = finishEquipment[part * equipment + e]!;
      if (minutes !== 0) loads[windows + window * equipment + e]! += sign * minutes * goes;
    }
  };
  const changePortions = (dish: number, day: number, by: 1 | -1): void => {
    const index = dish * size.days + day;
    finish(dish, day, portionsOf[index]!, -1);
    portionsOf[index]! += by;
    finish(dish, day, portionsOf[index]!, 1);
  };

  const targetCost = (row: number, sum: number): number => {
    const missed = rowDirection[row]! * (rowTarget[row]! - sum);
    return missed > 0 ? Math.floor((missed * rowWeight[row]!) / rowTarget[row]!) : 0;
  };
  const distinctExcess = (rule: number): number => {
    const total = distinctTotal[rule]!;
    if (total < distinctAtLeast[rule]!) return distinctAtLeast[rule]! - total;
    return total > distinctAtMost[rule]! ? total - distinctAtMost[rule]! : 0;
  };
  const pairMissing = (pair: number): number => {
    const common = pairCommon[pair]!;
    const missing = (common < 2 ? common : 2) - (common - pairEqual[pair]!);
    return missing > 0 ? missing : 0;
  };

  /** Adds (1) or takes away (-1) what a pick costs by itself and means for the rules that count. */
  const count = (position: number, candidate: number, by: 1 | -1): void => {
    const { days, dishes, measures, families } = size;
    const dish = candidateDish[candidate]!;
    const child = childAt[position]!;
    const day = dayAt[position]!;
    picksCost += by * candidateCost[candidate]!;

    // Counted loops here and below: this runs some hundred thousand times a plan.
    const lastMatch = matchStart[candidate + 1]!;
    for (let match = matchStart[candidate]!; match < lastMatch; match += 1) {
      const rule = matchRule[match]!;
      const counter = matchCounter[match]!;
      const before = distinctExcess(rule);
      if (by === 1 && distinctCount[counter] === 0) distinctTotal[rule]! += 1;
      distinctCount[counter]! += by;
      if (by === -1 && distinctCount[counter] === 0) distinctTotal[rule]! -= 1;
      loosePenalty += DISTINCT_PRICE * (distinctExcess(rule) - before);
    }

    const lastTogether = togetherStart[boxAt[position]! + 1]!;
    for (let index = togetherStart[boxAt[position]!]!; index < lastTogether; index += 1) {
      const entity = togetherAt[index]!;
      const first = candidateQ[candidate * measures + togetherFirst[entity]!]! > 0 ? by : 0;
      const second = candidateQ[candidate * measures + togetherSecond[entity]!]! > 0 ? by : 0;
      if (first === 0 && second === 0) continue;
      const at = entity * 3;
      // Pairs of one pick with the first and another with the second.
      const before = together[at]! * together[at + 1]! - together[at + 2]!;
      together[at]! += first;
      together[at + 1]! += second;
      if (first !== 0 && second !== 0) together[at + 2]! += by;
      loosePenalty += TOGETHER_PRICE * (together[at]! * together[at + 1]! - together[at + 2]! - before);
    }

    if (countsRepeat[position] === 1) {
      const index = child * dishes + dish;
      const more = by === 1 ? repeats[index]! : repeats[index]! - 1;
      if (more >= repeatMax[dish]!) countPenalty += by * REPEAT_PRICE;
      repeats[index]! += by;
    }

    const family = starch[dish]!;
    if (family >= 0) {
      for (let index = neighbourStart[day]!; index < neighbourStart[day + 1]!; index += 1) {
        countPenalty += by * STARCH_PRICE * mainsOfFamily[(child * days + neighbourDay[index]!) * families + family]!;
      }
      mainsOfFamily[(child * days + day) * families + family]! += by;
    }

    const lastPeer = peerStart[position + 1]!;
    for (let index = peerStart[position]!; index < lastPeer; index += 1) {
      const other = picks[peerAt[index]!]!;
      if (other < 0 || candidateDish[other] !== dish) continue;
      const pair = peerPair[index]!;
      const before = pairMissing(pair);
      pairEqual[pair]! += by;
      countPenalty += SIBLING_PRICE * (pairMissing(pair) - before);
    }
    if (main[dish] === 1) {
      const lastRival = rivalStart[position + 1]!;
      for (let index = rivalStart[position]!; index < lastRival; index += 1) {
        const other = picks[rivalAt[index]!]!;
        if (other >= 0 && candidateDish[other] === dish) countPenalty += by * SIBLING_PRICE;
      }
    }

    if (stayClose !== null) {
      const agreed = stayClose.dishAt[position]!;
      if (agreed >= 0 && agreed !== dish) {
        const box = boxAt[position]!;
        distanceCost += by * stayClose.pointsPerItem * POINT;
        if (changedInBox[box] === (by === 1 ? 0 : 1)) distanceCost += by * stayClose.pointsPerBox * POINT;
        changedInBox[box]! += by;
      }
    }
  };

  /** Adds (1) or takes away (-1) the finishing of a pick and its demand of bases. */
  const supply = (position: number, candidate: number, by: 1 | -1): void => {
    changePortions(candidateDish[candidate]!, dayAt[position]!, by);
    const shift = (size.groups === 1 ? 0 : childAt[position]! * size.days) + dayAt[position]!;
    for (let use = candidateBaseStart[candidate]!; use < candidateBaseStart[candidate + 1]!; use += 1) {
      const base = candidateBase[use]!;
      touch(base);
      demand[base * lotSize + shift]! += by * candidateAmount[use]!;
      usersOf[base]! += by;
    }
  };

  const moveRows = (position: number, from: number, to: number): void => {
    const { measures } = size;
    for (let index = rowStart[position]!; index < rowStart[position + 1]!; index += 1) {
      const measure = rowMeasureAt[index]!;
      const row = rowAt[index]!;
      const before = rowSum[row]!;
      const after =
        before + candidateQ[to * measures + measure]! - (from < 0 ? 0 : candidateQ[from * measures + measure]!);
      if (after === before) continue;
      rowSum[row] = after;
      const low = rowLow[row]!;
      const high = rowHigh[row]!;
      let breach = 0;
      if (after < low) breach = low - after;
      else if (after > high) breach = after - high;
      if (before < low) breach -= low - before;
      else if (before > high) breach -= before - high;
      if (breach !== 0) rowPenalty += breach * rowPrice[row]!;
      if (rowWeight[row]! > 0) targetsCost += targetCost(row, after) - targetCost(row, before);
    }
  };

  const change = (position: number, candidate: number, most: number): number => {
    const { measures, dishes, days, families, groups } = size;
    const from = picks[position]!;
    let breaches = 0;
    let cost = candidateCost[candidate]! - candidateCost[from]!;
    for (let index = rowStart[position]!; index < rowStart[position + 1]!; index += 1) {
      const measure = rowMeasureAt[index]!;
      const row = rowAt[index]!;
      const before = rowSum[row]!;
      const after = before + candidateQ[candidate * measures + measure]! - candidateQ[from * measures + measure]!;
      if (after === before) continue;
      const low = rowLow[row]!;
      const high = rowHigh[row]!;
      let breach = 0;
      if (after < low) breach = low - after;
      else if (after > high) breach = after - high;
      if (before < low) breach -= low - before;
      else if (before > high) breach -= before - high;
      if (breach !== 0) breaches += breach * rowPrice[row]!;
      if (rowWeight[row]! > 0) cost += targetCost(row, after) - targetCost(row, before);
    }
    const dish = candidateDish[candidate]!;
    const left = candidateDish[from]!;
    const child = childAt[position]!;
    const day = dayAt[position]!;
    if (dish !== left) {
      if (countsRepeat[position] === 1) {
        if (repeats[child * dishes + dish]! >= repeatMax[dish]!) breaches += REPEAT_PRICE;
        if (repeats[child * dishes + left]! > repeatMax[left]!) breaches -= REPEAT_PRICE;
      }
      const family = starch[dish]!;
      const before = starch[left]!;
      if (family !== before) {
        for (let index = neighbourStart[day]!; index < neighbourStart[day + 1]!; index += 1) {
          const at = (child * days + neighbourDay[index]!) * families;
          if (family >= 0) breaches += STARCH_PRICE * mainsOfFamily[at + family]!;
          if (before >= 0) breaches -= STARCH_PRICE * mainsOfFamily[at + before]!;
        }
      }
      const lastPeer = peerStart[position + 1]!;
      for (let index = peerStart[position]!; index < lastPeer; index += 1) {
        const other = candidateDish[picks[peerAt[index]!]!]!;
        if (other !== dish && other !== left) continue;
        const pair = peerPair[index]!;
        const missing = pairMissing(pair);
        const by = other === dish ? 1 : -1;
        pairEqual[pair]! += by;
        breaches += SIBLING_PRICE * (pairMissing(pair) - missing);
        pairEqual[pair]! -= by;
      }
      if (main[dish] === 1 || main[left] === 1) {
        const lastRival = rivalStart[position + 1]!;
        for (let index = rivalStart[position]!; index < lastRival; index += 1) {
          const other = candidateDish[picks[rivalAt[index]!]!]!;
          if (other === dish && main[dish] === 1) breaches += SIBLING_PRICE;
          else if (other === left && main[left] === 1) breaches -= SIBLING_PRICE;
        }
      }
      if (stayClose !== null) {
        const agreed = stayClose.dishAt[position]!;
        if (agreed >= 0) {
          const changed = changedInBox[boxAt[position]!]!;
          if (left === agreed) cost += (stayClose.pointsPerItem + (changed === 0 ? stayClose.pointsPerBox : 0)) * POINT;
          else if (dish === agreed) {
            cost -= (stayClose.pointsPerItem + (changed === 1 ? stayClose.pointsPerBox : 0)) * POINT;
          }
        }
      }
      cost += finishChange(dish, day, 1) + finishChange(left, day, -1);
    }
    let least = cost + state.weight * breaches;
    const firstOld = candidateBaseStart[from]!;
    const lastOld = candidateBaseStart[from + 1]!;
    const firstNew = candidateBaseStart[candidate]!;
    const lastNew = candidateBaseStart[candidate + 1]!;
    // The bases of both stand with nothing, until each has the least it can then cost.
    for (let use = firstOld; use < lastOld; use += 1) least -= costOfLot(candidateBase[use]!);
    for (let use = firstNew; use < lastNew; use += 1) {
      if (amountIn(from, candidateBase[use]!) === 0) least -= costOfLot(candidateBase[use]!);
    }
    if (least > most || groups > 1) return least;
    for (let use = firstNew; use < lastNew; use += 1) {
      const base = candidateBase[use]!;
      least += leastLot(base, day, candidateAmount[use]! - amountIn(from, base));
      if (least > most) return least;
    }
    for (let use = firstOld; use < lastOld; use += 1) {
      const base = candidateBase[use]!;
      if (amountIn(candidate, base) === 0) least += leastLot(base, day, -candidateAmount[use]!);
    }
    return least;
  };
  const isHopeless = (position: number, candidate: number, most: number): boolean => {
    // What the move could mend elsewhere: all that is wrong outside what `change` follows.
    const now = objective() + state.weight * (rowPenalty + countPenalty);
    return now + change(position, candidate, most - now) > most;
  };
  /** What a base costs: as planned, or in the midst of a move at least. */
  const costOfLot = (base: number): number => (isTouched[base] === 1 ? leastLot(base, 0, 0) : lotCost[base]!);
  const amountIn = (candidate: number, base: number): number => {
    for (let use = candidateBaseStart[candidate]!; use < candidateBaseStart[candidate + 1]!; use += 1) {
      if (candidateBase[use] === base) return candidateAmount[use]!;
    }
    return 0;
  };
  const hasReady = (base: number): boolean => readyStart[base + 1]! > readyStart[base]!;
  /** The least that a base costs when its demand on a day changes: were no budget short, or the day left unserved. */
  const leastLot = (base: number, day: number, by: number): number => {
    if (hasReady(base)) return 0;
    const { days } = size;
    const lot = base * lotSize;
    let total = 0;
    for (let at = 0; at < days; at += 1) total += trial[at] = demand[lot + at]!;
    trial[day]! += by;
    if (total + by === 0) return 0;
    const made = memory.costOf[memory.find(base, trial, 0)]!;
    const unserved = state.weight * UNSERVED_DAY;
    return made < unserved ? made : unserved;
  };
  // Beside the function that asks: the loader names every function where it is made, and that took a fifth of the search.
  const costOfPart = (part: number, w: number, once: 0 | 1): number =>
    effort[w]! * (finishFixed[part]! * once + finishPerPortion[part]!);
  /** What one portion more or less of a dish changes in the minutes of finishing, at their effort. */
  const finishChange = (dish: number, day: number, by: 1 | -1): number => {
    if (morningOf[day] === -1) return 0;
    const index = dish * size.days + day;
    const portions = portionsOf[index]!;
    const once = !sharing || portions === (by === 1 ? 0 : 1) ? 1 : 0;
    if (evening[index] === 0) return by * costOfPart(dish * 3 + WHOLE_MORNING, morningOf[day]!, once);
    return (
      by *
      (costOfPart(dish * 3 + SPLIT_EVENING, eveningOf[day]!, once) +
        costOfPart(dish * 3 + SPLIT_MORNING, morningOf[day]!, once))
    );
  };

  const moveLot = (base: number, child: number, day: number, entry: number): boolean => {
    const { groups, days } = size;
    const window = tables.baseWindow[entry]!;
    const offset = base * lotSize;
    const moved = offset + (groups === 1 ? 0 : child * days) + day;
    if (tables.baseFirstDay[entry]! > day || tables.baseLastDay[entry]! < day) return false;
    if (net[moved]! === 0 || serve[moved] === window) return false;
    let batches = 0;
    for (let lot = offset; lot < offset + lotSize; lot += days) {
      let amount = 0;
      for (let at = lot; at < lot + days; at += 1) if (serve[at] === window || at === moved) amount += net[at]!;
      batches += Math.ceil(amount / baseBatch[base]!);
    }
    if (batches > baseMaxBatches[base]!) return false;
    touch(base);
    serve[moved] = window;
    kept = base;
    return true;
  };

  const pick = (position: number, candidate: number): void => {
    for (let index = countsFollowed; index < changes; index += 1) {
      if (changedPositions[index] === position) follow(COUNTS);
    }
    if (picks[position] === candidate) return;
    changedPositions[changes] = position;
    changedFrom[changes] = picks[position]!;
    changedTo[changes] = candidate;
    changes += 1;
  };

  /** Brings the sums up to date with the picks that were changed, as far as `until`. */
  const follow = (until: number): void => {
    for (; rowsFollowed < changes; rowsFollowed += 1) {
      moveRows(changedPositions[rowsFollowed]!, changedFrom[rowsFollowed]!, changedTo[rowsFollowed]!);
    }
    if (until < COUNTS) return;
    for (; countsFollowed < changes; countsFollowed += 1) {
      const position = changedPositions[countsFollowed]!;
      const from = changedFrom[countsFollowed]!;
      if (from >= 0) count(position, from, -1);
      count(position, changedTo[countsFollowed]!, 1);
      picks[position] = changedTo[countsFollowed]!;
    }
    if (until < SUPPLY) return;
    if (supplyFollowed < changes) keepLoads();
    for (; supplyFollowed < changes; supplyFollowed += 1) {
      const position = changedPositions[supplyFollowed]!;
      const from = changedFrom[supplyFollowed]!;
      if (from >= 0) supply(position, from, -1);
      supply(position, changedTo[supplyFollowed]!, 1);
    }
  };

  const toggleEvening = (dish: number, day: number): boolean => {
    const index = dish * size.days + day;
    if (isMovable[index] === 0) return false;
    keepLoads();
    finish(dish, day, portionsOf[index]!, -1);
    evening[index] = 1 - evening[index]!;
    finish(dish, day, portionsOf[index]!, 1);
    toggled[toggles] = index;
    toggles += 1;
    return true;
  };

  const measureCapacities = (): void => {
    const { windows, capacities } = size;
    minutesCost = 0;
    capacityPenalty = 0;
    for (let w = 0; w < windows; w += 1) minutesCost += effort[w]! * loads[w]!;
    for (let index = 0; index < capacities; index += 1) {
      const over = loads[index]! - capacityBudget[index]!;
      if (over > 0) capacityPenalty += over * capacityPrice[index]!;
    }
  };

  const objective = (): number => picksCost + minutesCost + wasteCost + targetsCost + distanceCost;
  const penalty = (): number => rowPenalty + countPenalty + loosePenalty + unservedPenalty + capacityPenalty;

  /** What a candidate's bases cost now, each told once. */
  const takeLots = (candidate: number): number => {
    let cost = 0;
    for (let use = candidateBaseStart[candidate]!; use < candidateBaseStart[candidate + 1]!; use += 1) {
      const base = candidateBase[use]!;
      if (isSeen[base] === 1) continue;
      isSeen[base] = 1;
      seenBases[seen] = base;
      seen += 1;
      cost += lotCost[base]!;
    }
    return cost;
  };
  /** What the finishing of the picks that go, and the bases of all that are changed, can cost at most: what a move can save there. */
  const mostSaved = (): number => {
    const { days } = size;
    let saved = 0;
    for (let index = 0; index < changes; index += 1) {
      const from = changedFrom[index]!;
      const dish = candidateDish[from]!;
      const day = dayAt[changedPositions[index]!]!;
      if (morningOf[day] !== -1) {
        const first = dish * 3 + (evening[dish * days + day] === 0 ? WHOLE_MORNING : SPLIT_MORNING);
        saved += effort[morningOf[day]!]! * (finishFixed[first]! + finishPerPortion[first]!);
        if (evening[dish * days + day] === 1) {
          saved +=
            effort[eveningOf[day]!]! *
            (finishFixed[dish * 3 + SPLIT_EVENING]! + finishPerPortion[dish * 3 + SPLIT_EVENING]!);
        }
      }
      saved += takeLots(from) + takeLots(changedTo[index]!);
    }
    for (let index = 0; index < seen; index += 1) isSeen[seenBases[index]!] = 0;
    seen = 0;
    return saved;
  };

  const leastTotal = (most = Infinity): number => {
    if (changes > 0 && rowsFollowed === 0 && most < Infinity) {
      const saved = mostSaved();
      let least = -saved;
      for (let index = 0; index < changes; index += 1) {
        least += candidateCost[changedTo[index]!]! - candidateCost[changedFrom[index]!]!;
      }
      follow(ROWS);
      const ofRows = least + objective() + state.weight * rowPenalty;
      if (ofRows > most) return ofRows;
      follow(COUNTS);
      const ofCounts = objective() - saved + state.weight * (rowPenalty + countPenalty + loosePenalty);
      if (ofCounts > most) return ofCounts;
    }
    follow(SUPPLY);
    measureCapacities();
    let least = objective() + state.weight * penalty();
    for (let index = 0; index < touched; index += 1) {
      const base = touchedBases[index]!;
      // What is ready may cover all of the demand.
      if (hasReady(base)) continue;
      if (usersOf[base] === 0 || size.groups > 1) continue;
      const made = memory.costOf[memory.find(base, demand, base * lotSize)]!;
      const unserved = state.weight * UNSERVED_DAY;
      least += made < unserved ? made : unserved;
    }
    return least;
  };

  /** Loads the plan that would be best if no budget were short; false, with nothing loaded, when one is. */
  const planFreely = (base: number, lot: number): boolean => {
    const { days } = size;
    const entry = memory.find(base, net, lot);
    if (memory.isPlan[entry] === 0) return false;
    for (let day = 0; day < days; day += 1) serve[lot + day] = memory.serveOf[entry * days + day]!;
    planner.load(base, net, lot, serve, 1, loads, charge, null);
    for (let day = 0; day < days; day += 1) {
      const w = serve[lot + day]!;
      if (w === UNSERVED || !isShort(base, w)) continue;
      planner.load(base, net, lot, serve, -1, loads, charge, null);
      return false;
    }
    lotCost[base] = charge.minutes + charge.waste;
    wasteCost += charge.waste;
    return true;
  };
  const isShort = (base: number, w: number): boolean => {
    const { windows, equipment, capacities, firstNightCapacity } = size;
    if (loads[w]! > capacityBudget[w]!) return true;
    if (tables.baseUsesEquipment[base] === 1) {
      for (let index = windows + w * equipment; index < windows + (w + 1) * equipment; index += 1) {
        if (loads[index]! > capacityBudget[index]!) return true;
      }
    }
    if (tables.baseStorage[base]! > 0) {
      for (let index = firstNightCapacity; index < capacities; index += 1) {
        if (loads[index]! > capacityBudget[index]!) return true;
      }
    }
    return false;
  };

  const settle = (): void => {
    const { groups, days } = size;
    follow(SUPPLY);
    for (let index = 0; index < touched; index += 1) {
      const base = touchedBases[index]!;
      const offset = base * lotSize;
      takeReadySupply(tables, base, demand, offset, net, readyLeft);
      lotCost[base] = 0;
      if (base !== kept && groups === 1 && planFreely(base, offset)) continue;
      state.batchesLeft.fill(baseMaxBatches[base]!);
      for (let group = 0; group < groups; group += 1) {
        const lot = offset + group * days;
        if (base !== kept) planner.plan(base, net, lot, state, serve);
        planner.load(base, net, lot, serve, 1, loads, charge, state.batchesLeft);
        lotCost[base] += charge.minutes + charge.waste;
        wasteCost += charge.waste;
        unservedPenalty += charge.unserved;
      }
    }
    measureCapacities();
  };

  const undo = (): void => {
    const { measures, days, capacities } = size;
    for (let index = rowsFollowed - 1; index >= 0; index -= 1) {
      const position = changedPositions[index]!;
      const from = changedFrom[index]!;
      const to = changedTo[index]!;
      for (let entry = rowStart[position]!; entry < rowStart[position + 1]!; entry += 1) {
        const measure = rowMeasureAt[entry]!;
        rowSum[rowAt[entry]!]! += candidateQ[from * measures + measure]! - candidateQ[to * measures + measure]!;
      }
      if (index < countsFollowed) {
        count(position, to, -1);
        count(position, from, 1);
        picks[position] = from;
      }
      if (index < supplyFollowed) {
        const day = dayAt[position]!;
        portionsOf[candidateDish[to]! * days + day]! -= 1;
        portionsOf[candidateDish[from]! * days + day]! += 1;
        for (let use = candidateBaseStart[to]!; use < candidateBaseStart[to + 1]!; use += 1)
          usersOf[candidateBase[use]!]! -= 1;
        for (let use = candidateBaseStart[from]!; use < candidateBaseStart[from + 1]!; use += 1)
          usersOf[candidateBase[use]!]! += 1;
      }
    }
    for (let toggle = 0; toggle < toggles; toggle += 1) evening[toggled[toggle]!] = 1 - evening[toggled[toggle]!]!;
    for (let index = 0; index < touched; index += 1) {
      const base = touchedBases[index]!;
      lotCost[base] = savedLotCost[base]!;
      const offset = base * lotSize;
      for (let at = offset; at < offset + lotSize; at += 1) {
        demand[at] = savedDemand[at]!;
        net[at] = savedNet[at]!;
        serve[at] = savedServe[at]!;
      }
    }
    if (hasLoadsKept) for (let index = 0; index < capacities; index += 1) loads[index] = savedLoads[index]!;
    picksCost = savedScalars[0]!;
    targetsCost = savedScalars[1]!;
    distanceCost = savedScalars[2]!;
    wasteCost = savedScalars[3]!;
    minutesCost = savedScalars[4]!;
    rowPenalty = savedScalars[5]!;
    countPenalty = savedScalars[6]!;
    unservedPenalty = savedScalars[7]!;
    capacityPenalty = savedScalars[8]!;
    loosePenalty = savedScalars[9]!;
  };

  const save = (into: Snapshot): void => {
    const { positions, dishes, days, bases } = size;
    into.picks.set(picks.subarray(0, positions));
    into.evening.set(evening.subarray(0, dishes * days));
    into.serve.set(serve.subarray(0, bases * lotSize));
  };

  const restore = (from: Snapshot): void => {
    const { positions, dishes, days, bases, groups } = size;
    begin();
    for (let position = 0; position < positions; position += 1) pick(position, from.picks[position]!);
    follow(SUPPLY);
    keepLoads();
    for (let index = 0; index < dishes * days; index += 1) {
      if (evening[index] === from.evening[index]) continue;
      const dish = Math.floor(index / days);
      const day = index % days;
      finish(dish, day, portionsOf[index]!, -1);
      evening[index] = from.evening[index]!;
      finish(dish, day, portionsOf[index]!, 1);
    }
    for (let base = 0; base < bases; base += 1) {
      touch(base);
      const offset = base * lotSize;
      takeReadySupply(tables, base, demand, offset, net, readyLeft);
      for (let index = offset; index < offset + lotSize; index += 1) serve[index] = from.serve[index]!;
      lotCost[base] = 0;
      for (let group = 0; group < groups; group += 1) {
        planner.load(base, net, offset + group * days, serve, 1, loads, charge, null);
        lotCost[base]! += charge.minutes + charge.waste;
        wasteCost += charge.waste;
        unservedPenalty += charge.unserved;
      }
    }
    measureCapacities();
    begin();
  };

  const clear = (): void => {
    const { positions, days, children, dishes, bases, groups, families } = size;
    ({ stayClose, sharing } = tables.problem);
    lotSize = groups * days;
    memory.clear();
    picks.fill(-1, 0, positions);
    evening.set(tables.eveningFirst.subarray(0, dishes * days));
    serve.fill(UNSERVED, 0, bases * lotSize);
    const toEmpty: readonly (readonly [list: Int32Array | Float64Array | Uint8Array, length: number])[] = [
      [demand, bases * lotSize],
      [net, bases * lotSize],
      [usersOf, bases],
      [lotCost, bases],
      [isTouched, bases],
      [loads, size.capacities],
      [rowSum, size.rows],
      [distinctCount, size.distinctCounters],
      [distinctTotal, size.distinctRules],
      [together, size.togetherRows * 3],
      [repeats, children * dishes],
      [mainsOfFamily, children * days * families],
      [pairEqual, size.pairs],
      [portionsOf, dishes * days],
      [changedInBox, size.boxes],
    ];
    for (const [list, length] of toEmpty) list.fill(0, 0, length);
    picksCost = targetsCost = distanceCost = wasteCost = minutesCost = 0;
    rowPenalty = countPenalty = loosePenalty = unservedPenalty = capacityPenalty = 0;
    touched = 0;
    // The rows start from an empty week: what their lower sides miss, and what the targets miss, counts from the first pick on.
    for (let row = 0; row < size.rows; row += 1) {
      if (rowLow[row]! > 0) rowPenalty += rowLow[row]! * rowPrice[row]!;
      if (rowHigh[row]! < 0) rowPenalty -= rowHigh[row]! * rowPrice[row]!;
      if (rowWeight[row]! > 0) targetsCost += targetCost(row, 0);
    }
    for (let rule = 0; rule < size.distinctRules; rule += 1) loosePenalty += DISTINCT_PRICE * distinctExcess(rule);
    begin();
  };
  clear();

  return {
    picks,
    begin,
    pick,
    isHopeless,
    change: (position, candidate, most) => {
      follow(SUPPLY);
      return change(position, candidate, most);
    },
    toggleEvening,
    replan: touch,
    moveLot,
    leastTotal,
    settle,
    undo,
    objective,
    penalty,
    setWeight: (weight) => {
      state.weight = weight;
    },
    portions: (dish, day) => portionsOf[dish * size.days + day]!,
    usesBase: (base) => usersOf[base]! > 0,
    save,
    restore,
    clear,
  };
}
