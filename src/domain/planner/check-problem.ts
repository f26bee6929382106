import { fail, ok } from "../result.js";
import type { Result } from "../result.js";
import type { FinishLoad, Problem, SearchOptions } from "./problem.js";
import { POINT } from "./problem-tables.js";

/** What is wrong with a number of the problem, and where: `place` is its path, such as `positions[3].candidates[0].cost`. */
export interface ProblemFault {
  readonly kind:
    /** A list, a part or a word is not there, or is something else; a number that is not there counts as NOT_INTEGER. */
    | "MISSING"
    | "NOT_INTEGER"
    | "NEGATIVE"
    | "OUT_OF_RANGE"
    /** A list has another length than the problem says. */
    | "WRONG_LENGTH"
    /** There are no days, children or positions. */
    | "NOTHING"
    /** The same thing is named twice where once is meant. */
    | "TWICE"
    /** A position may move on a day that has no morning window to finish its dish in. */
    | "NO_MORNING"
    /** A sum could pass 2^31 - 1 (points: 2^53 / 1000 in all). */
    | "TOO_LARGE";
  readonly place: string;
  /** NaN where there is no number to show. */
  readonly value: number;
}

const LARGEST = 2147483647;
/** The objective is kept in thousandths of a point, times a penalty weight of up to 4096, below 2^53. */
const LARGEST_POINTS = Math.floor(Number.MAX_SAFE_INTEGER / (POINT * 4096));
/** Faults listed at most: a wrong builder gets many places wrong at once. */
const MOST_FAULTS = 100;

/** What a part of a problem is made of, numbers left out. */
type Shape =
  | { readonly is: "LIST"; readonly of?: Shape }
  | { readonly is: "PART"; readonly fields: Readonly<Record<string, Shape>>; readonly orNull?: true }
  | { readonly is: "TRUTH" }
  | { readonly is: "WORD"; readonly words: readonly string[] };
const list: Shape = { is: "LIST" };
const truth: Shape = { is: "TRUTH" };
const listOf = (fields: Readonly<Record<string, Shape>>): Shape => ({ is: "LIST", of: { is: "PART", fields } });
const finishShape = { is: "PART", fields: { equipment: list } } as const;
const row = { positions: list };
const problemShape: Shape = {
  is: "PART",
  fields: {
    dishes: listOf({
      main: truth,
      morning: finishShape,
      split: { is: "PART", orNull: true, fields: { evening: finishShape, morning: finishShape } },
    }),
    bases: listOf({ equipment: list, windows: listOf({}) }),
    windows: listOf({ kind: { is: "WORD", words: ["WEEKEND", "EVENING", "MORNING"] }, equipment: list }),
    ready: listOf({}),
    positions: listOf({ candidates: listOf({ q: list, bases: listOf({}) }) }),
    bands: listOf(row),
    targets: listOf(row),
    distinct: listOf({ ...row, counts: { is: "WORD", words: ["DAYS", "KINDS"] } }),
    together: listOf({ boxes: list }),
    relaxed: { is: "PART", fields: { siblings: list, repeats: list, starch: list } },
    neighbours: { is: "LIST", of: list },
    stayClose: { is: "PART", orNull: true, fields: { dishAt: list } },
    sharing: truth,
  },
};

function findMissing(value: unknown, shape: Shape, place: string, report: (place: string) => void): void {
  switch (shape.is) {
    case "TRUTH":
      if (typeof value !== "boolean") report(place);
      return;
    case "WORD":
      if (!shape.words.some((word) => word === value)) report(place);
      return;
    case "LIST": {
      if (!Array.isArray(value)) {
        report(place);
        return;
      }
      const { of } = shape;
      if (of !== undefined) value.forEach((entry, i) => findMissing(entry, of, `${place}[${i}]`, report));
      return;
    }
    case "PART":
      if (value === null && shape.orNull === true) return;
      if (typeof value !== "object" || value === null) {
        report(place);
        return;
      }
      for (const [field, inner] of Object.entries(shape.fields))
        findMissing(
          (value as Record<string, unknown>)[field],
          inner,
          place === "" ? field : `${place}.${field}`,
          report,
        );
  }
}

/**
 * Whether the search can work with the problem (and the options): whole numbers in range, indices that exist, lists of the length
 * they should have, sums that fit. An empty candidate list is no fault: `solve` reports it as clash EMPTY. Lists at most 100 faults.
 */
export function checkProblem(problem: Problem, options?: SearchOptions): Result<void, ProblemFault[]> {
  const faults: ProblemFault[] = [];
  const report = (kind: ProblemFault["kind"], place: string, value: number): void => {
    if (faults.length < MOST_FAULTS) faults.push({ kind, place, value });
  };
  const whole = (place: string, value: number, least = 0, most = LARGEST): boolean => {
    if (!Number.isInteger(value)) report("NOT_INTEGER", place, value);
    else if (value < least) report(least === 0 ? "NEGATIVE" : "OUT_OF_RANGE", place, value);
    else if (value > most) report(most === LARGEST ? "TOO_LARGE" : "OUT_OF_RANGE", place, value);
    else return true;
    return false;
  };
  const index = (place: string, value: number, count: number): boolean => {
    if (Number.isInteger(value) && value >= 0 && value < count) return true;
    report(Number.isInteger(value) ? "OUT_OF_RANGE" : "NOT_INTEGER", place, value);
    return false;
  };
  const length = (place: string, list: readonly unknown[], count: number): boolean => {
    if (list.length === count) return true;
    report("WRONG_LENGTH", place, list.length);
    return false;
  };
  const indices = (place: string, list: readonly number[], count: number): void => {
    list.forEach((value, i) => index(`${place}[${i}]`, value, count));
  };
  const once = (place: string, list: readonly number[]): void => {
    const seen = new Set<number>();
    list.forEach((value, i) => {
      if (seen.has(value)) report("TWICE", `${place}[${i}]`, value);
      seen.add(value);
    });
  };

  // Nothing is asked of a part that is not there.
  findMissing(problem, problemShape, "", (place) => report("MISSING", place, Number.NaN));
  if (faults.length > 0) return fail(faults);
  for (const field of ["days", "children", "measures", "equipment"] as const) whole(field, problem[field]);
  if (problem.days === 0) report("NOTHING", "days", 0);
  if (problem.children === 0) report("NOTHING", "children", 0);
  if (problem.positions.length === 0) report("NOTHING", "positions", 0);
  whole("refrigeratorMl", problem.refrigeratorMl);
  if (faults.length > 0) return fail(faults);

  const equipmentList = (place: string, list: readonly number[]): void => {
    length(place, list, problem.equipment);
    list.forEach((minutes, e) => whole(`${place}[${e}]`, minutes));
  };
  const finish = (place: string, part: FinishLoad): void => {
    whole(`${place}.fixed`, part.fixed);
    whole(`${place}.perPortion`, part.perPortion);
    whole(`${place}.portionsPerGo`, part.portionsPerGo);
    equipmentList(`${place}.equipment`, part.equipment);
  };
  problem.dishes.forEach((dish, v) => {
    whole(`dishes[${v}].repeatMax`, dish.repeatMax);
    whole(`dishes[${v}].starch`, dish.starch, -1, 1023);
    finish(`dishes[${v}].morning`, dish.morning);
    if (dish.split === null) return;
    finish(`dishes[${v}].split.evening`, dish.split.evening);
    finish(`dishes[${v}].split.morning`, dish.split.morning);
  });
  problem.windows.forEach((window, w) => {
    index(`windows[${w}].day`, window.day, problem.days);
    whole(`windows[${w}].minutes`, window.minutes);
    whole(`windows[${w}].effort`, window.effort);
    equipmentList(`windows[${w}].equipment`, window.equipment);
  });
  for (const kind of ["EVENING", "MORNING"] as const) {
    const days = problem.windows.map((window, w) => (window.kind === kind ? window.day : -1 - w));
    once("windows", days);
  }
  problem.bases.forEach((base, b) => {
    const place = `bases[${b}]`;
    whole(`${place}.fixed`, base.fixed);
    whole(`${place}.perBatch`, base.perBatch);
    whole(`${place}.batchAmount`, base.batchAmount, 1);
    whole(`${place}.maxBatches`, base.maxBatches);
    whole(`${place}.wastePerThousand`, base.wastePerThousand);
    whole(`${place}.storageMl`, base.storageMl);
    equipmentList(`${place}.equipment`, base.equipment);
    base.windows.forEach((entry, i) => {
      index(`${place}.windows[${i}].window`, entry.window, problem.windows.length);
      index(`${place}.windows[${i}].firstDay`, entry.firstDay, problem.days);
      index(`${place}.windows[${i}].lastDay`, entry.lastDay, problem.days);
    });
    once(
      `${place}.windows`,
      base.windows.map((entry) => entry.window),
    );
  });
  problem.ready.forEach((supply, r) => {
    index(`ready[${r}].base`, supply.base, problem.bases.length);
    whole(`ready[${r}].amount`, supply.amount);
    index(`ready[${r}].firstDay`, supply.firstDay, problem.days);
    index(`ready[${r}].lastDay`, supply.lastDay, problem.days);
  });
  const mornings = new Set(problem.windows.flatMap((window) => (window.kind === "MORNING" ? [window.day] : [])));
  const boxOf = new Map<number, string>();
  problem.positions.forEach((position, p) => {
    const place = `positions[${p}]`;
    index(`${place}.child`, position.child, problem.children);
    index(`${place}.day`, position.day, problem.days);
    whole(`${place}.box`, position.box, 0, 65535);
    whole(`${place}.slot`, position.slot);
    if (position.fixed !== -1) index(`${place}.fixed`, position.fixed, position.candidates.length);
    else if (!mornings.has(position.day)) report("NO_MORNING", `${place}.day`, position.day);
    const owner = `${position.child}:${position.day}`;
    if ((boxOf.get(position.box) ?? owner) !== owner) report("TWICE", `${place}.box`, position.box);
    boxOf.set(position.box, owner);
    position.candidates.forEach((candidate, k) => {
      const at = `${place}.candidates[${k}]`;
      index(`${at}.dish`, candidate.dish, problem.dishes.length);
      whole(`${at}.cost`, candidate.cost, -LARGEST);
      length(`${at}.q`, candidate.q, problem.measures);
      candidate.q.forEach((amount, m) => whole(`${at}.q[${m}]`, amount, -LARGEST));
      candidate.kinds?.forEach((kind, r) => whole(`${at}.kinds[${r}]`, kind, -LARGEST));
      candidate.bases.forEach((use, i) => {
        index(`${at}.bases[${i}].base`, use.base, problem.bases.length);
        whole(`${at}.bases[${i}].amount`, use.amount);
      });
    });
  });
  const covered = (place: string, row: { measure: number; positions: readonly number[] }): void => {
    index(`${place}.measure`, row.measure, problem.measures);
    indices(`${place}.positions`, row.positions, problem.positions.length);
    once(`${place}.positions`, row.positions);
  };
  problem.bands.forEach((band, i) => {
    covered(`bands[${i}]`, band);
    // The two ends of the 32-bit range stand for an open side in the tables.
    if (band.lo !== null) whole(`bands[${i}].lo`, band.lo, -LARGEST);
    if (band.hi !== null) whole(`bands[${i}].hi`, band.hi, -LARGEST);
  });
  problem.targets.forEach((target, i) => {
    covered(`targets[${i}]`, target);
    whole(`targets[${i}].target`, target.target, 1);
    whole(`targets[${i}].weight`, target.weight);
    if (target.direction !== 1 && target.direction !== -1)
      report("OUT_OF_RANGE", `targets[${i}].direction`, target.direction);
  });
  problem.distinct.forEach((rule, i) => {
    covered(`distinct[${i}]`, rule);
    whole(`distinct[${i}].atLeast`, rule.atLeast);
    whole(`distinct[${i}].atMost`, rule.atMost, -1);
  });
  problem.together.forEach((rule, i) => {
    index(`together[${i}].first`, rule.first, problem.measures);
    index(`together[${i}].second`, rule.second, problem.measures);
    rule.boxes.forEach((box, j) => {
      if (!boxOf.has(box)) report("OUT_OF_RANGE", `together[${i}].boxes[${j}]`, box);
    });
  });
  for (const rule of ["siblings", "repeats", "starch"] as const) {
    indices(`relaxed.${rule}`, problem.relaxed[rule], problem.days);
  }
  problem.neighbours.forEach((pair, i) => {
    indices(`neighbours[${i}]`, pair, problem.days);
    once(`neighbours[${i}]`, pair);
  });
  if (problem.stayClose !== null) {
    length("stayClose.dishAt", problem.stayClose.dishAt, problem.positions.length);
    problem.stayClose.dishAt.forEach((dish, p) => whole(`stayClose.dishAt[${p}]`, dish, -1, problem.dishes.length - 1));
    whole("stayClose.pointsPerBox", problem.stayClose.pointsPerBox);
    whole("stayClose.pointsPerItem", problem.stayClose.pointsPerItem);
  }
  if (options !== undefined) {
    whole("options.seed", options.seed, 0, 4294967295);
    whole("options.steps", options.steps);
    if (options.start !== undefined && length("options.start", options.start, problem.positions.length)) {
      options.start.forEach((candidate, p) => {
        const { candidates } = problem.positions[p]!;
        if (candidates.length > 0) index(`options.start[${p}]`, candidate, candidates.length);
      });
    }
  }
  if (faults.length === 0) checkSums(problem, report);
  return faults.length === 0 ? ok(undefined) : fail(faults);
}

/** The largest any sum can become, from the largest candidate at every position. */
function checkSums(problem: Problem, report: (kind: "TOO_LARGE", place: string, value: number) => void): void {
  const largest = <T>(items: readonly T[], of: (item: T) => number): number =>
    items.reduce((most, item) => Math.max(most, Math.abs(of(item))), 0);
  const fits = (place: string, value: number, most = LARGEST): void => {
    if (value > most) report("TOO_LARGE", place, value);
  };
  const rowSum = (row: { measure: number; positions: readonly number[] }): number =>
    row.positions.reduce((sum, p) => sum + largest(problem.positions[p]!.candidates, (c) => c.q[row.measure]!), 0);
  problem.bands.forEach((band, i) =>
    fits(`bands[${i}]`, rowSum(band) + Math.max(Math.abs(band.lo ?? 0), Math.abs(band.hi ?? 0))),
  );
  let points = 0;
  problem.targets.forEach((target, i) => {
    const missed = rowSum(target) + target.target;
    fits(`targets[${i}]`, missed);
    fits(`targets[${i}].weight`, missed * target.weight * 100, Number.MAX_SAFE_INTEGER / POINT);
    points += (missed * target.weight * 100) / target.target;
  });
  let minutes = 0;
  const equipment = new Array<number>(problem.equipment).fill(0);
  problem.bases.forEach((base, b) => {
    const demand = problem.positions.reduce(
      (sum, position) =>
        sum +
        largest(position.candidates, (c) => c.bases.reduce((used, use) => used + (use.base === b ? use.amount : 0), 0)),
      0,
    );
    fits(`bases[${b}].batchAmount`, demand + base.batchAmount * problem.days * problem.children);
    // Each day and child can at worst be served by a run of its own.
    const runs = problem.days * problem.children;
    const batches = Math.ceil(demand / base.batchAmount) + runs;
    minutes += base.fixed * runs + base.perBatch * batches;
    base.equipment.forEach((tenths, e) => {
      equipment[e]! += tenths * batches;
    });
    fits(`bases[${b}].storageMl`, base.storageMl * batches * problem.bases.length);
    points += (base.wastePerThousand * base.batchAmount * runs) / 1000;
  });
  const parts = problem.dishes.flatMap((dish) => [
    dish.morning,
    ...(dish.split === null ? [] : [dish.split.evening, dish.split.morning]),
  ]);
  const portions = problem.positions.length;
  minutes += 2 * portions * (largest(parts, (part) => part.fixed) + largest(parts, (part) => part.perPortion));
  equipment.forEach((tenths, e) =>
    fits(`equipment ${e}`, tenths + 2 * portions * largest(parts, (part) => part.equipment[e]!)),
  );
  fits("minutes", minutes);
  points += (minutes / 10) * largest(problem.windows, (window) => window.effort);
  points += problem.positions.reduce((sum, position) => sum + largest(position.candidates, (c) => c.cost), 0);
  if (problem.stayClose !== null)
    points += portions * (problem.stayClose.pointsPerBox + problem.stayClose.pointsPerItem);
  fits("points", points, LARGEST_POINTS);
}
