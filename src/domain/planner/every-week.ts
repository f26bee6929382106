/** Every choice of a small week, tried one after the other: the only way the planner can be certain that there is none. */
import { evaluate } from "./evaluate.js";
import type { Problem, SolvedBatch } from "./problem.js";

export type EveryWeek =
  | { readonly kind: "FOUND"; readonly picks: readonly number[] }
  /** No picks, finishing times and base plan (each day's demand of a base from one session) pass every hard row. */
  | { readonly kind: "NONE" }
  /** There are more choices than were allowed. */
  | { readonly kind: "TOO_MANY" };

export interface EveryWeekLimits {
  /** Half-made weeks looked at, at most. */
  readonly nodes: number;
  /** Whole weeks whose kitchen is worked out, at most. */
  readonly kitchens: number;
}

/** Clashes that depend on when things are made, not only on what is eaten. */
const ofTheKitchen: ReadonlySet<string> = new Set(["MINUTES", "EQUIPMENT", "STORAGE", "SUPPLY"]);

interface BandRow {
  readonly measure: number;
  readonly lo: number;
  readonly hi: number;
  /** The least and the most that the places from a depth on can still bring. */
  readonly leastFrom: Float64Array;
  readonly mostFrom: Float64Array;
}

/**
 * Depth first over the places, box by box; a half-made week is given up as soon as a sum can no longer come within its limits,
 * a dish comes too often, a starch follows itself, siblings share a main or a count is out of reach.
 */
export function tryEveryWeek(problem: Problem, limits: EveryWeekLimits): EveryWeek {
  if (!problem.sharing) return { kind: "TOO_MANY" };
  const { positions, dishes } = problem;
  const choices = positions.map(({ candidates, fixed }) => (fixed >= 0 ? [fixed] : candidates.map((_, k) => k)));
  const boxSize = new Map<number, number>();
  positions.forEach(({ box }, p) => boxSize.set(box, (boxSize.get(box) ?? 1) * choices[p]!.length));
  const order = positions
    .map((_, p) => p)
    .sort((a, b) => {
      const [left, right] = [positions[a]!, positions[b]!];
      return (
        boxSize.get(left.box)! - boxSize.get(right.box)! ||
        left.box - right.box ||
        choices[a]!.length - choices[b]!.length ||
        a - b
      );
    });
  const rows = problem.bands.map(({ measure, positions: over, lo, hi }): BandRow => {
    const leastFrom = new Float64Array(order.length + 1);
    const mostFrom = new Float64Array(order.length + 1);
    const times = new Map<number, number>();
    for (const p of over) times.set(p, (times.get(p) ?? 0) + 1);
    for (let depth = order.length - 1; depth >= 0; depth -= 1) {
      const p = order[depth]!;
      const values = choices[p]!.map((k) => positions[p]!.candidates[k]!.q[measure]! * (times.get(p) ?? 0));
      leastFrom[depth] = leastFrom[depth + 1]! + Math.min(...values);
      mostFrom[depth] = mostFrom[depth + 1]! + Math.max(...values);
    }
    return { measure, lo: lo ?? -Infinity, hi: hi ?? Infinity, leastFrom, mostFrom };
  });
  const rowsOf = positions.map((_, p) =>
    problem.bands.flatMap(({ positions: over }, row) => {
      const times = over.filter((place) => place === p).length;
      return times > 0 ? [{ row, times }] : [];
    }),
  );
  const distinctOf = positions.map((_, p) =>
    problem.distinct.flatMap((rule, r) => (rule.positions.includes(p) ? [r] : [])),
  );
  const sums = new Float64Array(rows.length);
  const picks = positions.map(() => -1);
  const dishAt = (p: number): number => positions[p]!.candidates[picks[p]!]?.dish ?? -1;

  const isCountInReach = (r: number): boolean => {
    const rule = problem.distinct[r]!;
    const met = new Set<number>();
    let open = 0;
    for (const p of new Set(rule.positions)) {
      const candidate = positions[p]!.candidates[picks[p]!];
      if (candidate === undefined) open += 1;
      else if (candidate.q[rule.measure]! > 0) {
        const kind = rule.counts === "DAYS" ? positions[p]!.day : (candidate.kinds?.[r] ?? -1);
        if (kind >= 0) met.add(kind);
      }
    }
    return met.size + open >= rule.atLeast && (rule.atMost < 0 || met.size <= rule.atMost);
  };
  const isNeighbour = (one: number, other: number): boolean =>
    problem.neighbours.some(
      ([first, second]) => (first === one && second === other) || (first === other && second === one),
    );
  /** Whether the pick at a place may stand beside those made so far. */
  const mayStand = (p: number, depth: number): boolean => {
    const { child, day } = positions[p]!;
    const dish = dishAt(p);
    const { main, starch, repeatMax } = dishes[dish]!;
    for (const { row } of rowsOf[p]!) {
      const { lo, hi, leastFrom, mostFrom } = rows[row]!;
      if (sums[row]! + leastFrom[depth + 1]! > hi || sums[row]! + mostFrom[depth + 1]! < lo) return false;
    }
    let times = 0;
    for (let before = 0; before <= depth; before += 1) {
      const q = order[before]!;
      const other = positions[q]!;
      const same = dishAt(q) === dish;
      if (other.child === child) {
        if (same && !problem.relaxed.repeats.includes(other.day) && !problem.relaxed.repeats.includes(day)) times += 1;
        if (main && starch >= 0 && isNeighbour(day, other.day)) {
          const rests = problem.relaxed.starch.some((on) => on === day || on === other.day);
          const mate = dishes[dishAt(q)]!;
          if (!rests && mate.main && mate.starch === starch) return false;
        }
      } else if (main && same && other.day === day && !problem.relaxed.siblings.includes(day)) return false;
    }
    return times <= repeatMax && distinctOf[p]!.every(isCountInReach);
  };

  let nodes = 0;
  let kitchens = 0;
  let isCut = false;
  const descend = (depth: number): boolean => {
    const p = order[depth];
    if (p === undefined) {
      const broken = evaluate(problem, picks, [], []).clashes.some(({ kind }) => !ofTheKitchen.has(kind));
      if (broken) return false;
      for (const { evening, batches } of everyKitchen(problem, picks)) {
        kitchens += 1;
        if (kitchens > limits.kitchens) {
          isCut = true;
          return false;
        }
        if (evaluate(problem, picks, evening, batches).feasible) return true;
      }
      return false;
    }
    for (const k of choices[p]!) {
      nodes += 1;
      if (nodes > limits.nodes) isCut = true;
      if (isCut) return false;
      const { q } = positions[p]!.candidates[k]!;
      picks[p] = k;
      for (const { row, times } of rowsOf[p]!) sums[row]! += times * q[rows[row]!.measure]!;
      if (mayStand(p, depth) && descend(depth + 1)) return true;
      for (const { row, times } of rowsOf[p]!) sums[row]! -= times * q[rows[row]!.measure]!;
      picks[p] = -1;
    }
    return false;
  };
  if (descend(0)) return { kind: "FOUND", picks };
  return { kind: isCut ? "TOO_MANY" : "NONE" };
}

function* everyChoice<T>(options: readonly (readonly T[])[]): Generator<T[]> {
  const [first, ...rest] = options;
  if (first === undefined) yield [];
  else for (const one of first) for (const others of everyChoice(rest)) yield [one, ...others];
}

type Kitchen = {
  readonly evening: readonly { readonly dish: number; readonly day: number }[];
  readonly batches: readonly SolvedBatch[];
};

/** Every finishing time and every base plan for these picks; batches are the fewest that cover what they serve. */
function* everyKitchen(problem: Problem, picks: readonly number[]): Generator<Kitchen> {
  const splits = new Map<string, { dish: number; day: number }>();
  const needs = new Map<string, { readonly base: number; readonly day: number; amount: number }>();
  problem.positions.forEach(({ day, candidates }, p) => {
    const { dish, bases } = candidates[picks[p]!]!;
    if (problem.dishes[dish]!.split !== null) splits.set(`${dish}/${day}`, { dish, day });
    for (const { base, amount } of bases) {
      const need = needs.get(`${base}/${day}`) ?? { base, day, amount: 0 };
      need.amount += amount;
      needs.set(`${base}/${day}`, need);
    }
  });
  // What is ready goes first, as everywhere.
  for (const { ready, day, amount } of evaluate(problem, picks, [], []).readyUse) {
    const need = needs.get(`${problem.ready[ready]!.base}/${day}`);
    if (need !== undefined) need.amount -= amount;
  }
  const open = [...needs.values()].filter(({ amount }) => amount > 0);
  const offered = open.map(({ base, day }) =>
    problem.bases[base]!.windows.filter(({ firstDay, lastDay }) => firstDay <= day && day <= lastDay).map(
      ({ window }) => window,
    ),
  );
  for (const chosen of everyChoice(offered)) {
    const runs = new Map<string, { base: number; window: number; supply: number[] }>();
    open.forEach(({ base, day, amount }, i) => {
      const window = chosen[i]!;
      const run = runs.get(`${base}/${window}`) ?? { base, window, supply: new Array<number>(problem.days).fill(0) };
      run.supply[day]! += amount;
      runs.set(`${base}/${window}`, run);
    });
    const batches = [...runs.values()].map((run): SolvedBatch => {
      const served = run.supply.reduce((sum, amount) => sum + amount, 0);
      return { ...run, child: -1, batches: Math.ceil(served / problem.bases[run.base]!.batchAmount) };
    });
    for (const flags of everyChoice([...splits.values()].map((split) => [null, split])))
      yield { evening: flags.flatMap((split) => (split === null ? [] : [split])), batches };
  }
}
