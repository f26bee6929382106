import type { FinishLoad, Problem } from "./problem.js";
import { reachOf } from "./reach.js";

/** All amounts of the objective are in thousandths of a point: a tenth of a minute or a unit of waste is then a whole number. */
export const POINT = 1000;

/** Penalty, in thousandths of a point at weight 1, for breaking a row by what one pick typically moves it. */
const BREACH = 2 * POINT;

const OPEN_LOW = -2147483648;
const OPEN_HIGH = 2147483647;

/** Finishing loads come in three parts per dish: all in the morning; the evening part and the morning part of the split. */
export const WHOLE_MORNING = 0;
export const SPLIT_EVENING = 1;
export const SPLIT_MORNING = 2;

/** How much there is of everything that the tables count. */
export interface TableSizes {
  positions: number;
  days: number;
  children: number;
  measures: number;
  equipment: number;
  windows: number;
  bases: number;
  dishes: number;
  boxes: number;
  candidates: number;
  /** Lots a base is planned in: 1, or one per child when sharing is off. */
  groups: number;
  /** Linear rows: bands and targets; a band and a target over the same sum share one row. */
  rows: number;
  distinctRules: number;
  /** One per rule and day or kind that can be met. */
  distinctCounters: number;
  /** One per rule and box of what may not lie together. */
  togetherRows: number;
  families: number;
  /** Pairs of siblings, a day each. */
  pairs: number;
  /** Minutes per window, equipment per window, refrigerator per night, in one list. */
  capacities: number;
  /** Where the nights begin among them. */
  firstNightCapacity: number;
  ready: number;
}

/**
 * The week in flat lists of whole numbers. Lists may be longer than `size` says (see `createRoom`): what lies beyond means nothing.
 * "Entries xStart[i] .. xStart[i + 1] - 1" of a list belong to i.
 */
export interface ProblemTables {
  problem: Problem;
  readonly size: TableSizes;
  /** The sizes that scratch lists must allow for. */
  readonly most: Readonly<TableSizes>;
  /** Positions that may move. */
  free: Int32Array;

  readonly childAt: Int32Array;
  readonly dayAt: Int32Array;
  readonly boxAt: Int32Array;

  /** Candidates of position p: candidateStart[p] .. candidateStart[p + 1] - 1 in the tables per candidate. */
  readonly candidateStart: Int32Array;
  readonly candidateDish: Int32Array;
  readonly candidateCost: Float64Array;
  readonly candidateQ: Int32Array;
  readonly candidateBaseStart: Int32Array;
  readonly candidateBase: Int32Array;
  readonly candidateAmount: Int32Array;
  /** Candidate of a dish at a position (numbered over all positions), -1 none: [position x dishes + dish]. */
  readonly candidateOfDish: Int32Array;

  readonly rowLow: Int32Array;
  readonly rowHigh: Int32Array;
  readonly rowPrice: Float64Array;
  readonly rowTarget: Int32Array;
  readonly rowDirection: Int32Array;
  /** Thousandths of a point per 100 % missed, 0 without a target. */
  readonly rowWeight: Float64Array;
  readonly rowStart: Int32Array;
  readonly rowAt: Int32Array;
  readonly rowMeasureAt: Int32Array;

  readonly distinctAtLeast: Int32Array;
  readonly distinctAtMost: Int32Array;
  /** What a candidate is counted under: entries matchStart[candidate] .. matchStart[candidate + 1] - 1. */
  readonly matchStart: Int32Array;
  readonly matchRule: Int32Array;
  readonly matchCounter: Int32Array;

  /** Rules "not together", one per rule and box, by box: entries togetherStart[box] .. of `togetherAt`. */
  readonly togetherStart: Int32Array;
  readonly togetherAt: Int32Array;
  readonly togetherFirst: Int32Array;
  readonly togetherSecond: Int32Array;

  readonly main: Uint8Array;
  readonly repeatMax: Int32Array;
  readonly starch: Int32Array;
  readonly countsRepeat: Uint8Array;
  /** Days on which a main of the family of a day's own would be too near. */
  readonly neighbourStart: Int32Array;
  readonly neighbourDay: Int32Array;

  /** Positions of the siblings' boxes that day with the same slot number, and the number of the pair and day. */
  readonly peerStart: Int32Array;
  readonly peerAt: Int32Array;
  readonly peerPair: Int32Array;
  /** Positions of the siblings' boxes that day that can hold a main. */
  readonly rivalStart: Int32Array;
  readonly rivalAt: Int32Array;
  readonly pairCommon: Int32Array;

  /** [3 x dish + part]; equipment [(3 x dish + part) x equipment + e]. */
  readonly finishFixed: Int32Array;
  readonly finishPerPortion: Int32Array;
  readonly finishEquipment: Int32Array;
  readonly finishPortionsPerGo: Int32Array;
  /**
   * Per dish and day, [dish x days + day]: whether its finishing may move between the morning and the evening before. Not where one of
   * the two fits no session, even for one portion.
   */
  readonly isMovable: Uint8Array;
  /** Whether it begins in the evening before: where it must, and where that is less trouble for one portion. */
  readonly eveningFirst: Uint8Array;
  readonly morningOf: Int32Array;
  readonly eveningOf: Int32Array;

  readonly capacityBudget: Float64Array;
  readonly capacityPrice: Float64Array;
  /** Thousandths of a point per tenth of a minute, per window. */
  readonly effort: Float64Array;

  readonly baseFixed: Int32Array;
  readonly basePerBatch: Int32Array;
  readonly baseBatch: Int32Array;
  readonly baseMaxBatches: Int32Array;
  readonly baseUsesEquipment: Uint8Array;
  readonly baseEquipment: Int32Array;
  readonly baseWaste: Float64Array;
  readonly baseStorage: Int32Array;
  readonly baseWindowStart: Int32Array;
  readonly baseWindow: Int32Array;
  readonly baseFirstDay: Int32Array;
  readonly baseLastDay: Int32Array;
  /** Penalty per unit for a day left without supply, besides `UNSERVED_DAY`. */
  readonly unservedUnit: Float64Array;
  /** Ready supplies of a base, the first to spoil first. */
  readonly readyStart: Int32Array;
  readonly readyAt: Int32Array;
  /** First night (before the school day of that number) a product made in the window spends in the refrigerator. */
  readonly firstNight: Int32Array;
}

const priceOfBreach = (typical: number): number => Math.max(1, Math.floor(BREACH / Math.max(1, typical)));
export const REPEAT_PRICE = BREACH;
export const STARCH_PRICE = BREACH;
export const SIBLING_PRICE = BREACH;
export const TOGETHER_PRICE = BREACH;
export const DISTINCT_PRICE = BREACH;
export const UNSERVED_DAY = 4 * BREACH;

/** Lists of different lengths one after the other, and where each begins. */
function pack(lists: readonly (readonly number[])[]): { readonly start: Int32Array; readonly entries: Int32Array } {
  const start = new Int32Array(lists.length + 1);
  lists.forEach((list, at) => {
    start[at + 1] = start[at]! + list.length;
  });
  return { start, entries: Int32Array.from(lists.flat()) };
}

/** The problem as flat integer tables. The problem must have passed `checkProblem` and have a candidate at every position. */
export function buildTables(problem: Problem): ProblemTables {
  const { days, children, measures, equipment } = problem;
  const positions = problem.positions.length;
  const windows = problem.windows.length;
  const bases = problem.bases.length;
  const dishes = problem.dishes.length;
  const groups = problem.sharing ? 1 : children;

  const childAt = Int32Array.from(problem.positions, (position) => position.child);
  const dayAt = Int32Array.from(problem.positions, (position) => position.day);
  const boxAt = Int32Array.from(problem.positions, (position) => position.box);
  const boxes = problem.positions.reduce((most, position) => Math.max(most, position.box + 1), 0);
  const free = Int32Array.from(
    problem.positions.flatMap(({ fixed, candidates }, p) => (fixed < 0 && candidates.length > 1 ? [p] : [])),
  );

  const candidateStart = new Int32Array(positions + 1);
  problem.positions.forEach((position, p) => {
    candidateStart[p + 1] = candidateStart[p]! + position.candidates.length;
  });
  const all = problem.positions.flatMap((position) => position.candidates);
  const candidateDish = Int32Array.from(all, (candidate) => candidate.dish);
  const candidateCost = Float64Array.from(all, (candidate) => candidate.cost * POINT);
  const candidateQ = new Int32Array(all.length * measures);
  const candidateBaseStart = new Int32Array(all.length + 1);
  const candidateBase: number[] = [];
  const candidateAmount: number[] = [];
  all.forEach((candidate, k) => {
    candidateQ.set(candidate.q, k * measures);
    for (const { base, amount } of candidate.bases) {
      if (amount === 0) continue;
      candidateBase.push(base);
      candidateAmount.push(amount);
    }
    candidateBaseStart[k + 1] = candidateBase.length;
  });
  const candidateOfDish = new Int32Array(positions * dishes).fill(-1);
  for (let p = 0; p < positions; p += 1) {
    for (let k = candidateStart[p + 1]! - 1; k >= candidateStart[p]!; k -= 1) {
      candidateOfDish[p * dishes + candidateDish[k]!] = k;
    }
  }

  const rows = buildRows(problem);
  const distinct = buildDistinct(problem, all.length);
  const together = buildTogether(problem, boxes);
  const siblings = buildSiblings(problem);

  const relaxedRepeats = new Set(problem.relaxed.repeats);
  const relaxedStarch = new Set(problem.relaxed.starch);
  const neighbours = pack(
    Array.from({ length: days }, (_, day) =>
      problem.neighbours.flatMap(([first, second]) => {
        if (relaxedStarch.has(first) || relaxedStarch.has(second)) return [];
        return first === day ? [second] : second === day ? [first] : [];
      }),
    ),
  );
  const ready = pack(
    problem.bases.map((_, b) =>
      problem.ready
        .flatMap((supply, r) => (supply.base === b ? [r] : []))
        .sort((left, right) => problem.ready[left]!.lastDay - problem.ready[right]!.lastDay || left - right),
    ),
  );

  const idle: FinishLoad = {
    fixed: 0,
    perPortion: 0,
    equipment: new Array<number>(equipment).fill(0),
    portionsPerGo: 0,
  };
  const parts = problem.dishes.flatMap((dish) => [
    dish.morning,
    dish.split?.evening ?? idle,
    dish.split?.morning ?? idle,
  ]);
  const morningOf = new Int32Array(days).fill(-1);
  const eveningOf = new Int32Array(days).fill(-1);
  problem.windows.forEach((window, w) => {
    if (window.kind === "MORNING") morningOf[window.day] = w;
    if (window.kind === "EVENING") eveningOf[window.day] = w;
  });

  const firstNightCapacity = windows * (1 + equipment);
  const capacities = firstNightCapacity + days;
  const capacityBudget = new Float64Array(capacities).fill(problem.refrigeratorMl);
  const capacityPrice = new Float64Array(capacities);
  problem.windows.forEach((window, w) => {
    capacityBudget[w] = window.minutes;
    capacityPrice[w] = priceOfBreach(40);
    window.equipment.forEach((minutes, e) => {
      capacityBudget[windows + w * equipment + e] = minutes;
      capacityPrice[windows + w * equipment + e] = priceOfBreach(60);
    });
  });
  const storage = problem.bases.filter((base) => base.storageMl > 0);
  const typicalMl = storage.length === 0 ? 1 : storage.reduce((sum, base) => sum + base.storageMl, 0) / storage.length;
  capacityPrice.fill(priceOfBreach(Math.floor(typicalMl)), firstNightCapacity);

  const baseWindowStart = new Int32Array(bases + 1);
  problem.bases.forEach((base, b) => {
    baseWindowStart[b + 1] = baseWindowStart[b]! + base.windows.length;
  });
  const baseWindows = problem.bases.flatMap((base) => base.windows);
  const size: TableSizes = {
    positions,
    days,
    children,
    measures,
    equipment,
    windows,
    bases,
    dishes,
    boxes,
    candidates: all.length,
    groups,
    rows: rows.count,
    distinctRules: problem.distinct.length,
    distinctCounters: distinct.counters,
    togetherRows: together.togetherFirst.length,
    families: problem.dishes.reduce((most, dish) => Math.max(most, dish.starch + 1), 0),
    pairs: siblings.pairCommon.length,
    capacities,
    firstNightCapacity,
    ready: problem.ready.length,
  };
  return {
    problem,
    size,
    most: size,
    free,
    childAt,
    dayAt,
    boxAt,
    candidateStart,
    candidateDish,
    candidateCost,
    candidateQ,
    candidateBaseStart,
    candidateBase: Int32Array.from(candidateBase),
    candidateAmount: Int32Array.from(candidateAmount),
    candidateOfDish,
    ...rows.lists,
    ...distinct.lists,
    ...together,
    main: Uint8Array.from(problem.dishes, (dish) => (dish.main ? 1 : 0)),
    repeatMax: Int32Array.from(problem.dishes, (dish) => dish.repeatMax),
    starch: Int32Array.from(problem.dishes, (dish) => (dish.main ? dish.starch : -1)),
    countsRepeat: Uint8Array.from(problem.positions, (position) => (relaxedRepeats.has(position.day) ? 0 : 1)),
    neighbourStart: neighbours.start,
    neighbourDay: neighbours.entries,
    ...siblings,
    finishFixed: Int32Array.from(parts, (part) => part.fixed),
    finishPerPortion: Int32Array.from(parts, (part) => part.perPortion),
    finishEquipment: Int32Array.from(parts.flatMap((part) => part.equipment)),
    finishPortionsPerGo: Int32Array.from(parts, (part) => part.portionsPerGo),
    ...buildFinishing(problem, morningOf, eveningOf),
    morningOf,
    eveningOf,
    capacityBudget,
    capacityPrice,
    effort: Float64Array.from(problem.windows, (window) => (window.effort * POINT) / 10),
    baseFixed: Int32Array.from(problem.bases, (base) => base.fixed),
    basePerBatch: Int32Array.from(problem.bases, (base) => base.perBatch),
    baseBatch: Int32Array.from(problem.bases, (base) => base.batchAmount),
    baseMaxBatches: Int32Array.from(problem.bases, (base) => base.maxBatches),
    baseUsesEquipment: Uint8Array.from(problem.bases, (base) =>
      base.equipment.some((minutes) => minutes > 0) ? 1 : 0,
    ),
    baseEquipment: Int32Array.from(problem.bases.flatMap((base) => base.equipment)),
    baseWaste: Float64Array.from(problem.bases, (base) => (base.wastePerThousand * POINT) / 1000),
    baseStorage: Int32Array.from(problem.bases, (base) => base.storageMl),
    baseWindowStart,
    baseWindow: Int32Array.from(baseWindows, (entry) => entry.window),
    baseFirstDay: Int32Array.from(baseWindows, (entry) => entry.firstDay),
    baseLastDay: Int32Array.from(baseWindows, (entry) => entry.lastDay),
    unservedUnit: Float64Array.from(problem.bases, (base) => priceOfBreach(Math.floor(base.batchAmount / 4))),
    readyStart: ready.start,
    readyAt: ready.entries,
    firstNight: Int32Array.from(problem.windows, (window) => (window.kind === "MORNING" ? window.day + 1 : window.day)),
  };
}

/** Whether every choice of candidates keeps the band. */
function holdsAlways(problem: Problem, { measure, positions, lo, hi }: Problem["bands"][number]): boolean {
  const { least, most } = reachOf(problem, measure, positions);
  return (lo === null || least >= lo) && (hi === null || most <= hi);
}

function buildRows(problem: Problem) {
  interface Row {
    readonly measure: number;
    readonly positions: readonly number[];
    low: number;
    high: number;
    target: number;
    direction: number;
    weight: number;
  }
  const rows: Row[] = [];
  const bandRow = new Map<string, Row>();
  const open = (measure: number, positions: readonly number[]): Row => {
    const row: Row = { measure, positions, low: OPEN_LOW, high: OPEN_HIGH, target: 0, direction: 1, weight: 0 };
    rows.push(row);
    return row;
  };
  for (const band of problem.bands) {
    // What no choice can break needs no watching: most rows of a real week.
    if (holdsAlways(problem, band)) continue;
    const row = open(band.measure, band.positions);
    row.low = band.lo ?? OPEN_LOW;
    row.high = band.hi ?? OPEN_HIGH;
    bandRow.set(`${band.measure}:${[...band.positions].sort((a, b) => a - b).join(",")}`, row);
  }
  for (const target of problem.targets) {
    const key = `${target.measure}:${[...target.positions].sort((a, b) => a - b).join(",")}`;
    const shared = bandRow.get(key);
    const row = shared ?? open(target.measure, target.positions);
    bandRow.delete(key);
    row.target = target.target;
    row.direction = target.direction;
    row.weight = target.weight * 100 * POINT;
  }
  const at: { row: number; measure: number }[][] = problem.positions.map(() => []);
  const price = new Float64Array(rows.length);
  rows.forEach((row, r) => {
    for (const p of row.positions) at[p]!.push({ row: r, measure: row.measure });
    const { least, most } = reachOf(problem, row.measure, row.positions);
    // A third of the range is about what a change of one pick moves.
    price[r] = priceOfBreach(Math.floor((most - least) / (3 * Math.max(1, row.positions.length))));
  });
  const entries = pack(at.map((list) => list.map((entry) => entry.row)));
  const lists = {
    rowLow: Int32Array.from(rows, (row) => row.low),
    rowHigh: Int32Array.from(rows, (row) => row.high),
    rowPrice: price,
    rowTarget: Int32Array.from(rows, (row) => row.target),
    rowDirection: Int32Array.from(rows, (row) => row.direction),
    rowWeight: Float64Array.from(rows, (row) => row.weight),
    rowStart: entries.start,
    rowAt: entries.entries,
    rowMeasureAt: Int32Array.from(at.flat(), (entry) => entry.measure),
  };
  return { count: rows.length, lists };
}

/** What of a dish's finishing is free on each day, and where it begins. */
function buildFinishing(problem: Problem, morningOf: Int32Array, eveningOf: Int32Array) {
  const { dishes, days, windows } = problem;
  const isMovable = new Uint8Array(dishes.length * days);
  const eveningFirst = new Uint8Array(dishes.length * days);
  const minutesOf = (part: FinishLoad): number => part.fixed + part.perPortion;
  const fits = (part: FinishLoad, w: number): boolean =>
    minutesOf(part) <= windows[w]!.minutes && part.equipment.every((tenths, e) => tenths <= windows[w]!.equipment[e]!);
  const trouble = (part: FinishLoad, w: number): number => windows[w]!.effort * minutesOf(part);
  dishes.forEach(({ morning: whole, split }, dish) => {
    for (let day = 0; day < days; day += 1) {
      const morning = morningOf[day]!;
      const evening = eveningOf[day]!;
      if (split === null || morning < 0 || evening < 0) continue;
      const fitsWhole = fits(whole, morning);
      const fitsSplit = fits(split.evening, evening) && fits(split.morning, morning);
      const splitTrouble = trouble(split.evening, evening) + trouble(split.morning, morning);
      const index = dish * days + day;
      isMovable[index] = fitsWhole === fitsSplit ? 1 : 0;
      eveningFirst[index] = fitsSplit && (!fitsWhole || splitTrouble < trouble(whole, morning)) ? 1 : 0;
    }
  });
  return { isMovable, eveningFirst };
}

function buildDistinct(problem: Problem, candidates: number) {
  let counters = 0;
  const matches = Array.from({ length: candidates }, (): { rule: number; counter: number }[] => []);
  problem.distinct.forEach((rule, r) => {
    const numberOf = new Map<number, number>();
    const covered = new Set(rule.positions);
    let k = 0;
    problem.positions.forEach((position, p) => {
      for (const candidate of position.candidates) {
        const key = rule.counts === "DAYS" ? position.day : (candidate.kinds?.[r] ?? -1);
        if (covered.has(p) && candidate.q[rule.measure]! > 0 && key >= 0) {
          const known = numberOf.get(key) ?? numberOf.size;
          numberOf.set(key, known);
          matches[k]!.push({ rule: r, counter: counters + known });
        }
        k += 1;
      }
    });
    counters += numberOf.size;
  });
  const rules = pack(matches.map((list) => list.map((match) => match.rule)));
  const lists = {
    distinctAtLeast: Int32Array.from(problem.distinct, (rule) => rule.atLeast),
    distinctAtMost: Int32Array.from(problem.distinct, (rule) => (rule.atMost < 0 ? OPEN_HIGH : rule.atMost)),
    matchStart: rules.start,
    matchRule: rules.entries,
    matchCounter: Int32Array.from(matches.flat(), (match) => match.counter),
  };
  return { counters, lists };
}

function buildTogether(problem: Problem, boxes: number) {
  const entities = problem.together.flatMap((rule) =>
    [...new Set(rule.boxes)].map((box) => ({ box, first: rule.first, second: rule.second })),
  );
  const ofBox = pack(
    Array.from({ length: boxes }, (_, box) => entities.flatMap((entity, t) => (entity.box === box ? [t] : []))),
  );
  return {
    togetherStart: ofBox.start,
    togetherAt: ofBox.entries,
    togetherFirst: Int32Array.from(entities, (entity) => entity.first),
    togetherSecond: Int32Array.from(entities, (entity) => entity.second),
  };
}

function buildSiblings(problem: Problem) {
  const relaxed = new Set(problem.relaxed.siblings);
  const canBeMain = problem.positions.map((position) =>
    position.candidates.some((candidate) => problem.dishes[candidate.dish]!.main),
  );
  const pairNumber = new Map<string, number>();
  const common: number[] = [];
  const peers = problem.positions.map((): number[] => []);
  const pairs = problem.positions.map((): number[] => []);
  const rivals = problem.positions.map((): number[] => []);
  problem.positions.forEach((left, p) => {
    if (relaxed.has(left.day)) return;
    problem.positions.forEach((right, o) => {
      if (right.day !== left.day || right.child === left.child) return;
      if (canBeMain[p] && canBeMain[o]) rivals[p]!.push(o);
      if (right.slot !== left.slot) return;
      const low = Math.min(left.child, right.child);
      const high = Math.max(left.child, right.child);
      const key = `${low}:${high}:${left.day}`;
      const known = pairNumber.get(key);
      const pair = known ?? common.length;
      if (known === undefined) {
        pairNumber.set(key, pair);
        common.push(0);
      }
      if (p < o) common[pair]! += 1;
      peers[p]!.push(o);
      pairs[p]!.push(pair);
    });
  });
  const ofPeers = pack(peers);
  const ofRivals = pack(rivals);
  return {
    peerStart: ofPeers.start,
    peerAt: ofPeers.entries,
    peerPair: pack(pairs).entries,
    rivalStart: ofRivals.start,
    rivalAt: ofRivals.entries,
    pairCommon: Int32Array.from(common),
  };
}
