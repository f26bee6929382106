import type { SolvedBatch } from "./problem.js";
import { UNSERVED_DAY, type ProblemTables } from "./problem-tables.js";

/** Up to this many days with demand every division of the days among runs is tried; beyond it only runs of consecutive ones. */
const EXACT_DAYS = 5;

/** No window: the day's demand is zero, or nothing can serve it. */
export const UNSERVED = -1;

/** What one lot (a base, for all children or for one) adds besides the capacities it loads. */
export interface LotCharge {
  /** Thousandths of a point: hands-on minutes at their effort. */
  minutes: number;
  /** Thousandths of a point. */
  waste: number;
  /** Penalty at weight 1, thousandths of a point. */
  unserved: number;
}

/** What a lot finds when it is planned. */
export interface PlanState {
  /** Capacities in use without this lot. */
  readonly loads: Float64Array;
  /** How many batches each window may still make of this base. */
  readonly batchesLeft: Int32Array;
  /** Weight of penalties against the objective. */
  weight: number;
}

export interface BasePlanner {
  /**
   * Chooses, for every day with demand, the window whose batches serve it: `serve[offset + day]`. Least cost of hands-on
   * minutes, leftovers and what budgets are overrun beyond `loads`, over all divisions of the days among runs (one window
   * serves a day; a run is one window's batches in whole numbers). Method: dynamic programming over sets of demand days
   * (over consecutive stretches, Wagner and Whitin, "Dynamic version of the economic lot size model", 1958, when there are
   * more than five).
   * @param demand net of ready supply, at `offset + day`
   */
  readonly plan: (base: number, demand: Int32Array, offset: number, state: PlanState, serve: Int32Array) => void;
  /** Adds (sign 1) or takes away (sign -1) a lot's loads, and says its charge; counts its batches off `batchesLeft` if given. */
  readonly load: (
    base: number,
    demand: Int32Array,
    offset: number,
    serve: Int32Array,
    sign: 1 | -1,
    loads: Float64Array,
    charge: LotCharge,
    batchesLeft: Int32Array | null,
  ) => void;
}

/**
 * Divides a set of days into runs at least cost, when that is known for all smaller sets: what it costs in `best`, and in `taken` the
 * run with the set's first day, the larger of two that cost the same.
 */
function divide(set: number, runCost: Float64Array, best: Float64Array, taken: Int32Array): void {
  const lowest = set & -set;
  const others = set ^ lowest;
  let least = Infinity;
  let chosen = lowest;
  for (let more = others; ; more = (more - 1) & others) {
    const run = lowest | more;
    const cost = runCost[run]! + best[set ^ run]!;
    if (cost < least) {
      least = cost;
      chosen = run;
    }
    if (more === 0) break;
  }
  best[set] = least;
  taken[set] = chosen;
}

export function createBasePlanner(tables: ProblemTables): BasePlanner {
  const { size, most, capacityBudget, capacityPrice, effort } = tables;
  const { baseFixed, basePerBatch, baseBatch, baseUsesEquipment, baseEquipment, baseWaste, baseStorage } = tables;
  const { baseWindowStart, baseWindow, baseFirstDay, baseLastDay, firstNight, unservedUnit } = tables;
  const dayOf = new Int32Array(most.days);
  const amountOf = new Int32Array(most.days);
  const sum = new Int32Array(1 << EXACT_DAYS);
  const costOf = new Float64Array(1 << EXACT_DAYS);
  const windowOf = new Int32Array(1 << EXACT_DAYS);
  const best = new Float64Array(Math.max(1 << EXACT_DAYS, most.days + 1));
  const taken = new Int32Array(1 << EXACT_DAYS);
  const cutAt = new Int32Array(most.days + 1);
  const cutWindow = new Int32Array(most.days + 1);

  /** Cost of one run from the window of `entry`; Infinity when its product is not in date or it cannot make as much. */
  const priceEntry = (
    entry: number,
    base: number,
    first: number,
    last: number,
    amount: number,
    state: PlanState,
  ): number => {
    if (baseFirstDay[entry]! > first || baseLastDay[entry]! < last) return Infinity;
    const w = baseWindow[entry]!;
    const batchAmount = baseBatch[base]!;
    const batches = Math.ceil(amount / batchAmount);
    if (state.batchesLeft[w]! < batches) return Infinity;
    const minutes = baseFixed[base]! + basePerBatch[base]! * batches;
    let cost = effort[w]! * minutes + baseWaste[base]! * (batches * batchAmount - amount) + overrun(w, minutes, state);
    if (baseUsesEquipment[base] === 1) {
      const { windows, equipment } = size;
      for (let e = 0; e < equipment; e += 1) {
        cost += overrun(windows + w * equipment + e, baseEquipment[base * equipment + e]! * batches, state);
      }
    }
    const storage = baseStorage[base]! * batches;
    if (storage > 0) {
      for (let night = firstNight[w]!; night <= last; night += 1)
        cost += overrun(size.firstNightCapacity + night, storage, state);
    }
    return cost;
  };
  let runWindow = UNSERVED;
  /** Least cost of one run for `amount` from `first` to `last`; its window in `runWindow`. A single day may stay unserved. */
  const priceRun = (base: number, first: number, last: number, amount: number, state: PlanState): number => {
    let least = first === last ? unservedCost(base, amount, state.weight) : Infinity;
    runWindow = UNSERVED;
    for (let entry = baseWindowStart[base]!; entry < baseWindowStart[base + 1]!; entry += 1) {
      const cost = priceEntry(entry, base, first, last, amount, state);
      if (cost < least) {
        least = cost;
        runWindow = baseWindow[entry]!;
      }
    }
    return least;
  };
  const unservedCost = (base: number, amount: number, weight: number): number =>
    weight * (UNSERVED_DAY + unservedUnit[base]! * amount);
  const overrun = (capacity: number, more: number, { loads, weight }: PlanState): number => {
    const slack = capacityBudget[capacity]! - loads[capacity]!;
    const over = slack > 0 ? more - slack : more;
    return over > 0 ? weight * capacityPrice[capacity]! * over : 0;
  };

  /** Divides the days into runs as if no two came from one window; false when two do, for then they are one run. */
  const planApart = (base: number, count: number, offset: number, state: PlanState, serve: Int32Array): boolean => {
    const full = (1 << count) - 1;
    best[0] = 0;
    for (let set = 1; set <= full; set += 1) {
      const lowest = 31 - Math.clz32(set & -set);
      const highest = 31 - Math.clz32(set);
      const rest = set & (set - 1);
      const amount = (rest === 0 ? 0 : sum[rest]!) + amountOf[lowest]!;
      sum[set] = amount;
      costOf[set] = priceRun(base, dayOf[lowest]!, dayOf[highest]!, amount, state);
      windowOf[set] = runWindow;
    }
    for (let set = 1; set <= full; set += 1) divide(set, costOf, best, taken);
    for (let set = full; set > 0; set ^= taken[set]!) {
      const w = windowOf[taken[set]!]!;
      for (let index = 0; index < count; index += 1) {
        const day = offset + dayOf[index]!;
        if ((taken[set]! & (1 << index)) !== 0) serve[day] = w;
        else if (w !== UNSERVED && (set & (1 << index)) === 0 && serve[day] === w) return false;
      }
    }
    return true;
  };

  /** The same, window by window: each takes one set of the days that the windows before it left. */
  const planByWindow = (base: number, count: number, offset: number, state: PlanState, serve: Int32Array): void => {
    const full = (1 << count) - 1;
    for (let set = 1; set <= full; set += 1) {
      const lowest = 31 - Math.clz32(set & -set);
      best[set] = best[set & (set - 1)]! + unservedCost(base, amountOf[lowest]!, state.weight);
    }
    const entries = baseWindowStart[base + 1]! - baseWindowStart[base]!;
    const takenBy: Int32Array[] = [];
    for (let index = 0; index < entries; index += 1) {
      const entry = baseWindowStart[base]! + index;
      for (let set = 1; set <= full; set += 1) {
        const lowest = 31 - Math.clz32(set & -set);
        costOf[set] = priceEntry(entry, base, dayOf[lowest]!, dayOf[31 - Math.clz32(set)]!, sum[set]!, state);
      }
      const chosenOf = new Int32Array(full + 1);
      // Downwards, so that the smaller sets still hold what the windows before left.
      for (let set = full; set > 0; set -= 1) {
        for (let run = set; run > 0; run = (run - 1) & set) {
          const cost = costOf[run]! + best[set ^ run]!;
          if (cost < best[set]!) {
            best[set] = cost;
            chosenOf[set] = run;
          }
        }
      }
      takenBy.push(chosenOf);
    }
    for (let index = 0; index < count; index += 1) serve[offset + dayOf[index]!] = UNSERVED;
    let set = full;
    for (let index = entries - 1; index >= 0; index -= 1) {
      const run = takenBy[index]![set]!;
      for (let day = 0; day < count; day += 1) {
        if ((run & (1 << day)) !== 0) serve[offset + dayOf[day]!] = baseWindow[baseWindowStart[base]! + index]!;
      }
      set ^= run;
    }
  };

  const planConsecutively = (
    base: number,
    count: number,
    offset: number,
    state: PlanState,
    serve: Int32Array,
  ): void => {
    best[0] = 0;
    for (let end = 1; end <= count; end += 1) {
      best[end] = Infinity;
      let amount = 0;
      for (let start = end; start >= 1; start -= 1) {
        amount += amountOf[start - 1]!;
        const cost = priceRun(base, dayOf[start - 1]!, dayOf[end - 1]!, amount, state);
        if (best[start - 1]! + cost < best[end]!) {
          best[end] = best[start - 1]! + cost;
          cutAt[end] = start - 1;
          cutWindow[end] = runWindow;
        }
      }
    }
    for (let end = count; end > 0; end = cutAt[end]!) {
      for (let index = cutAt[end]!; index < end; index += 1) serve[offset + dayOf[index]!] = cutWindow[end]!;
    }
    // Two stretches may have chosen one window and together ask more than it can make: the later days go unserved.
    for (let index = 0; index < count; index += 1) {
      const w = serve[offset + dayOf[index]!]!;
      if (w === UNSERVED) continue;
      runAmount[w]! += amountOf[index]!;
      if (Math.ceil(runAmount[w]! / baseBatch[base]!) > state.batchesLeft[w]!) {
        runAmount[w]! -= amountOf[index]!;
        serve[offset + dayOf[index]!] = UNSERVED;
      }
    }
    runAmount.fill(0);
  };

  const runAmount = new Int32Array(most.windows);
  const runLast = new Int32Array(most.windows);
  const runs = new Int32Array(most.days);
  const plan: BasePlanner["plan"] = (base, demand, offset, state, serve) => {
    const { days } = size;
    let count = 0;
    for (let day = 0; day < days; day += 1) {
      serve[offset + day] = UNSERVED;
      if (demand[offset + day]! > 0) {
        dayOf[count] = day;
        amountOf[count] = demand[offset + day]!;
        count += 1;
      }
    }
    if (count === 0) return;
    if (count > EXACT_DAYS) planConsecutively(base, count, offset, state, serve);
    else if (!planApart(base, count, offset, state, serve)) planByWindow(base, count, offset, state, serve);
  };

  const load: BasePlanner["load"] = (base, demand, offset, serve, sign, loads, charge, batchesLeft) => {
    const { days, windows, equipment, firstNightCapacity } = size;
    let count = 0;
    charge.minutes = 0;
    charge.waste = 0;
    charge.unserved = 0;
    for (let day = 0; day < days; day += 1) {
      const amount = demand[offset + day]!;
      if (amount <= 0) continue;
      const w = serve[offset + day]!;
      if (w === UNSERVED) {
        charge.unserved += UNSERVED_DAY + unservedUnit[base]! * amount;
        continue;
      }
      if (runAmount[w] === 0) {
        runs[count] = w;
        count += 1;
      }
      runAmount[w]! += amount;
      runLast[w] = day;
    }
    for (let run = 0; run < count; run += 1) {
      const w = runs[run]!;
      const batches = Math.ceil(runAmount[w]! / baseBatch[base]!);
      charge.waste += baseWaste[base]! * (batches * baseBatch[base]! - runAmount[w]!);
      const minutes = baseFixed[base]! + basePerBatch[base]! * batches;
      charge.minutes += effort[w]! * minutes;
      loads[w]! += sign * minutes;
      if (baseUsesEquipment[base] === 1) {
        for (let e = 0; e < equipment; e += 1) {
          loads[windows + w * equipment + e]! += sign * baseEquipment[base * equipment + e]! * batches;
        }
      }
      const storage = sign * baseStorage[base]! * batches;
      if (storage !== 0) {
        for (let night = firstNight[w]!; night <= runLast[w]!; night += 1)
          loads[firstNightCapacity + night]! += storage;
      }
      if (batchesLeft !== null) batchesLeft[w]! -= batches;
      runAmount[w] = 0;
    }
  };

  return { plan, load };
}

/** Best plans of a base by its demand alone, were no budget short: what any plan costs at least, and often the plan itself. */
export interface PlanMemory {
  /** Number of the entry for the demand (one per day at `offset`, net of ready supply) of a base. Holds until the next call. */
  readonly find: (base: number, demand: Int32Array, offset: number) => number;
  /** Thousandths of a point, minutes and leftovers; Infinity when no windows serve every day. */
  readonly costOf: Float64Array;
  /** Windows as `BasePlanner.plan` writes them, [entry x days + day]. */
  readonly serveOf: Int32Array;
  /** 1 where the windows are a plan of that cost; elsewhere the cost is only a floor. */
  readonly isPlan: Uint8Array;
  /** Forgets everything: the tables are another week's now. */
  readonly clear: () => void;
}

/** Entries; a newer demand takes the place of an older one of the same number. */
const ENTRIES = 1 << 14;

export function createPlanMemory(tables: ProblemTables): PlanMemory {
  const { size, most, effort, baseFixed, basePerBatch, baseBatch, baseWaste, baseMaxBatches } = tables;
  const { baseWindowStart, baseWindow, baseFirstDay, baseLastDay } = tables;
  const costOf = new Float64Array(ENTRIES);
  const serveOf = new Int32Array(ENTRIES * most.days);
  const baseOf = new Int32Array(ENTRIES);
  const demandOf = new Int32Array(ENTRIES * most.days);
  const isPlan = new Uint8Array(ENTRIES);
  // The easiest window of a base whose product is in date from one day to another.
  const easiest = new Int32Array(most.bases * most.days * most.days);
  const clear = (): void => {
    const { bases, days } = size;
    baseOf.fill(-1);
    easiest.fill(UNSERVED, 0, bases * days * days);
    for (let base = 0; base < bases; base += 1) {
      for (let entry = baseWindowStart[base]!; entry < baseWindowStart[base + 1]!; entry += 1) {
        const w = baseWindow[entry]!;
        for (let first = baseFirstDay[entry]!; first <= baseLastDay[entry]!; first += 1) {
          for (let last = first; last <= baseLastDay[entry]!; last += 1) {
            const at = (base * days + first) * days + last;
            if (easiest[at] === UNSERVED || effort[w]! < effort[easiest[at]!]!) easiest[at] = w;
          }
        }
      }
    }
  };
  clear();
  const dayOf = new Int32Array(most.days);
  const sum = new Int32Array(1 << EXACT_DAYS);
  const runCost = new Float64Array(1 << EXACT_DAYS);
  const best = new Float64Array(1 << EXACT_DAYS);
  const taken = new Int32Array(1 << EXACT_DAYS);
  const windowFor = (base: number, set: number): number =>
    easiest[(base * size.days + dayOf[31 - Math.clz32(set & -set)]!) * size.days + dayOf[31 - Math.clz32(set)]!]!;

  const plan = (entry: number, base: number): void => {
    const { days } = size;
    const lot = entry * days;
    let count = 0;
    for (let day = 0; day < days; day += 1) {
      serveOf[lot + day] = UNSERVED;
      if (demandOf[lot + day]! > 0) {
        if (count < EXACT_DAYS) dayOf[count] = day;
        count += 1;
      }
    }
    costOf[entry] = 0;
    isPlan[entry] = 1;
    if (count === 0) return;
    if (count > EXACT_DAYS) {
      isPlan[entry] = 0;
      return;
    }
    const full = (1 << count) - 1;
    const batch = baseBatch[base]!;
    for (let set = 1; set <= full; set += 1) {
      const lowest = set & -set;
      const amount = sum[set ^ lowest]! + demandOf[lot + dayOf[31 - Math.clz32(lowest)]!]!;
      sum[set] = amount;
      const w = windowFor(base, set);
      const batches = Math.ceil(amount / batch);
      runCost[set] =
        w === UNSERVED || batches > baseMaxBatches[base]!
          ? Infinity
          : effort[w]! * (baseFixed[base]! + basePerBatch[base]! * batches) +
            baseWaste[base]! * (batches * batch - amount);
      divide(set, runCost, best, taken);
    }
    costOf[entry] = best[full]!;
    if (best[full] === Infinity) {
      isPlan[entry] = 0;
      return;
    }
    for (let set = full; set > 0; set ^= taken[set]!) {
      const run = taken[set]!;
      const w = windowFor(base, run);
      for (let index = 0; index < count; index += 1) {
        const at = lot + dayOf[index]!;
        if ((run & (1 << index)) !== 0) serveOf[at] = w;
        // Two runs of one window are one, and together may be more than it can make.
        else if ((set & (1 << index)) === 0 && serveOf[at] === w) isPlan[entry] = 0;
      }
    }
  };
  const find: PlanMemory["find"] = (base, demand, offset) => {
    const { days } = size;
    let hash = Math.imul(base + 1, 0x9e3779b1);
    for (let day = 0; day < days; day += 1) {
      hash = Math.imul(hash ^ demand[offset + day]!, 0x85ebca6b);
      hash ^= hash >>> 15;
    }
    const entry = hash & (ENTRIES - 1);
    const at = entry * days;
    let known = baseOf[entry] === base;
    for (let day = 0; known && day < days; day += 1) known = demandOf[at + day] === demand[offset + day];
    if (known) return entry;
    baseOf[entry] = base;
    for (let day = 0; day < days; day += 1) demandOf[at + day] = demand[offset + day]!;
    plan(entry, base);
    return entry;
  };
  return { find, costOf, serveOf, isPlan, clear };
}

/**
 * What ready supply leaves to be made: the first to spoil first, days in order, children in order. Writes demand minus ready
 * supply to `net`; demand of child group g and day d stands at `offset + g x days + d`. Ready supply costs nothing, and what
 * stays of it is not counted as leftover: it was there anyway.
 * @param left scratch, one number per ready supply
 */
export function takeReadySupply(
  tables: ProblemTables,
  base: number,
  demand: Int32Array,
  offset: number,
  net: Int32Array,
  left: Int32Array,
  onUse?: (ready: number, day: number, amount: number) => void,
): void {
  const { days, groups } = tables.size;
  const first = tables.readyStart[base]!;
  const last = tables.readyStart[base + 1]!;
  for (let index = offset; index < offset + groups * days; index += 1) net[index] = demand[index]!;
  if (first === last) return;
  const ready = tables.readyAt.subarray(first, last);
  for (const r of ready) left[r] = tables.problem.ready[r]!.amount;
  for (let day = 0; day < days; day += 1) {
    for (let group = 0; group < groups; group += 1) {
      const index = offset + group * days + day;
      for (const r of ready) {
        if (net[index] === 0) break;
        const supply = tables.problem.ready[r]!;
        if (day < supply.firstDay || day > supply.lastDay) continue;
        const used = Math.min(net[index]!, left[r]!);
        if (used === 0) continue;
        net[index]! -= used;
        left[r]! -= used;
        onUse?.(r, day, used);
      }
    }
  }
}

/** Demand of every base by child group and day, [(base x groups + group) x days + day], summed from the picks. */
function sumDemand(tables: ProblemTables, picks: readonly number[]): Int32Array {
  const { days, groups, bases } = tables.size;
  const demand = new Int32Array(bases * groups * days);
  tables.problem.positions.forEach((position, p) => {
    for (const { base, amount } of position.candidates[picks[p]!]?.bases ?? []) {
      demand[(base * groups + (groups === 1 ? 0 : position.child)) * days + position.day]! += amount;
    }
  });
  return demand;
}

/** The batches a base plan means: one entry per base, window and, when sharing is off, child. */
export function listBatches(tables: ProblemTables, picks: readonly number[], serve: Int32Array): SolvedBatch[] {
  const { days, groups } = tables.size;
  const demand = sumDemand(tables, picks);
  const net = new Int32Array(demand.length);
  const left = new Int32Array(tables.problem.ready.length);
  return tables.problem.bases.flatMap((base, b) => {
    takeReadySupply(tables, b, demand, b * groups * days, net, left);
    return Array.from({ length: groups }, (_, group) =>
      tables.problem.windows.flatMap((__, window): SolvedBatch[] => {
        const offset = (b * groups + group) * days;
        const supply = Array.from({ length: days }, (___, day) =>
          serve[offset + day] === window ? net[offset + day]! : 0,
        );
        const amount = supply.reduce((sum, used) => sum + used, 0);
        if (amount === 0) return [];
        const batches = Math.ceil(amount / base.batchAmount);
        return [{ base: b, window, batches, supply, child: tables.problem.sharing ? -1 : group }];
      }),
    ).flat();
  });
}
