import { evaluate } from "../../src/domain/planner/evaluate.js";
import type { Problem, Solution, SolvedBatch } from "../../src/domain/planner/problem.js";

/**
 * The best feasible week of a tiny problem by trying every pick, every evening finish and every window for every day's demand of
 * every base (batches follow: the fewest that cover the demand, as more only cost more); null when there is none.
 */
export function findBestExhaustively(problem: Problem): Solution | null {
  let best: Solution | null = null;
  for (const picks of everyChoice(
    problem.positions.map(({ candidates, fixed }) => (fixed < 0 ? range(candidates.length) : [fixed])),
  )) {
    const splits = problem.positions.flatMap((position, p) => {
      const { dish } = position.candidates[picks[p]!]!;
      return problem.dishes[dish]!.split === null ? [] : [{ dish, day: position.day }];
    });
    const distinctSplits = splits.filter(
      (split, i) => splits.findIndex((other) => other.dish === split.dish && other.day === split.day) === i,
    );
    // Hard rows on the picks alone do not depend on the rest: skip the windows when one is broken already.
    const picksBroken = evaluate(problem, picks, [], []).clashes.some(
      ({ kind }) => !["MINUTES", "EQUIPMENT", "STORAGE", "SUPPLY"].includes(kind),
    );
    if (picksBroken) continue;
    const plans = [...everyPlan(problem, picks)];
    for (const flags of everyChoice(distinctSplits.map(() => [0, 1]))) {
      const evening = distinctSplits.filter((_, i) => flags[i] === 1);
      for (const batches of plans) {
        const solution = evaluate(problem, picks, evening, batches);
        if (solution.feasible && (best === null || solution.objective < best.objective)) best = solution;
      }
    }
  }
  return best;
}

const range = (count: number): number[] => Array.from({ length: count }, (_, i) => i);

function* everyChoice<T>(options: readonly (readonly T[])[]): Generator<T[]> {
  if (options.length === 0) {
    yield [];
    return;
  }
  for (const first of options[0]!) for (const rest of everyChoice(options.slice(1))) yield [first, ...rest];
}

/** Every base plan that serves each day's demand of each base (of each child, without sharing) from one window. */
function* everyPlan(problem: Problem, picks: readonly number[]): Generator<SolvedBatch[]> {
  const ready = problem.ready.map(({ amount }) => amount);
  const lots: { base: number; child: number; demand: number[] }[] = [];
  const children = problem.sharing ? [-1] : range(problem.children);
  problem.bases.forEach((_, base) => {
    const demands = children.map((child) => {
      const demand = new Array<number>(problem.days).fill(0);
      problem.positions.forEach((position, p) => {
        if (child >= 0 && position.child !== child) return;
        for (const use of position.candidates[picks[p]!]!.bases)
          if (use.base === base) demand[position.day]! += use.amount;
      });
      return demand;
    });
    // Ready supply first: days in order, children in order, the first to spoil first.
    for (const day of range(problem.days)) {
      for (const demand of demands) {
        const order = range(problem.ready.length).sort(
          (a, b) => problem.ready[a]!.lastDay - problem.ready[b]!.lastDay || a - b,
        );
        for (const r of order) {
          const supply = problem.ready[r]!;
          if (supply.base !== base || day < supply.firstDay || day > supply.lastDay) continue;
          const used = Math.min(demand[day]!, ready[r]!);
          demand[day]! -= used;
          ready[r]! -= used;
        }
      }
    }
    demands.forEach((demand, i) => lots.push({ base, child: children[i]!, demand }));
  });
  const needs = lots.flatMap((lot, i) =>
    lot.demand.flatMap((amount, day) => (amount > 0 ? [{ lot: i, day, amount }] : [])),
  );
  const options = needs.map(({ lot, day }) =>
    problem.bases[lots[lot]!.base]!.windows.filter(({ firstDay, lastDay }) => firstDay <= day && day <= lastDay).map(
      ({ window }) => window,
    ),
  );
  for (const chosen of everyChoice(options)) {
    const runs = new Map<string, { base: number; child: number; window: number; supply: number[] }>();
    needs.forEach(({ lot, day, amount }, i) => {
      const { base, child } = lots[lot]!;
      const key = `${lot}:${chosen[i]!}`;
      const run = runs.get(key) ?? { base, child, window: chosen[i]!, supply: new Array<number>(problem.days).fill(0) };
      run.supply[day]! += amount;
      runs.set(key, run);
    });
    yield [...runs.values()].map((run) => ({
      ...run,
      batches: Math.ceil(run.supply.reduce((sum, amount) => sum + amount, 0) / problem.bases[run.base]!.batchAmount),
    }));
  }
}
