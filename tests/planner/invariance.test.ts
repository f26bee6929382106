/** What must hold of the best week whatever the week is: asked of weeks small enough to try every one, and of the search. */
import { solve } from "../../src/domain/planner/anneal.js";
import type { Problem } from "../../src/domain/planner/problem.js";
import { createRandomStream } from "../../src/domain/planner/random.js";
import { findBestExhaustively } from "../support/exhaustive-week.js";
import { drawTinyWeek, tinySeeds } from "../support/random-problem.js";

const weeks = tinySeeds
  .map((seed) => ({
    seed,
    problem: drawTinyWeek(seed),
  }))
  .map((week) => ({ ...week, best: findBestExhaustively(week.problem)?.objective ?? Infinity }));

/** More than any of these weeks can use. */
const PLENTY = 1_000_000;
const everyDay = ({ days }: Problem): number[] => Array.from({ length: days }, (_, day) => day);
const without = <T>(list: readonly T[], at: number): T[] => list.filter((_, i) => i !== at);

/** The problem without one of its rules, in every way there is. */
function* lessStrict(problem: Problem): Generator<{ rule: string; problem: Problem }> {
  const less = (rule: string, change: Partial<Problem>) => ({ rule, problem: { ...problem, ...change } });
  for (const at of problem.bands.keys()) yield less(`band ${at}`, { bands: without(problem.bands, at) });
  for (const at of problem.targets.keys()) yield less(`target ${at}`, { targets: without(problem.targets, at) });
  // A count that asks nothing, for a candidate's kinds go by the number of the row.
  for (const at of problem.distinct.keys())
    yield less(`count ${at}`, {
      distinct: problem.distinct.map((rule, r) => (r === at ? { ...rule, atLeast: 0, atMost: -1 } : rule)),
    });
  for (const at of problem.together.keys()) yield less(`apart ${at}`, { together: without(problem.together, at) });
  for (const rule of ["siblings", "repeats", "starch"] as const)
    yield less(rule, { relaxed: { ...problem.relaxed, [rule]: everyDay(problem) } });
  for (const at of problem.windows.keys()) {
    const freed = (change: Partial<Problem["windows"][number]>) =>
      problem.windows.map((window, w) => (w === at ? { ...window, ...change } : window));
    yield less(`minutes of window ${at}`, { windows: freed({ minutes: PLENTY }) });
    yield less(`equipment of window ${at}`, { windows: freed({ equipment: [PLENTY] }) });
  }
  yield less("refrigerator", { refrigeratorMl: PLENTY });
  for (const at of problem.bases.keys())
    yield less(`batches of base ${at}`, {
      bases: problem.bases.map((base, b) => (b === at ? { ...base, maxBatches: base.maxBatches + 3 } : base)),
    });
}

test("without one of its rules the best week is never dearer, and some rule costs something", () => {
  const cheaper = new Set<string>();
  const possible = new Set<string>();
  for (const { problem, best } of weeks.filter(({ seed }) => seed % 2 === 0)) {
    for (const less of lessStrict(problem)) {
      const freed = findBestExhaustively(less.problem)?.objective ?? Infinity;
      expect({ rule: less.rule, freed: Math.min(freed, best) }).toEqual({ rule: less.rule, freed });
      if (freed < best) (best === Infinity ? possible : cheaper).add(less.rule.replace(/\d+/g, ""));
    }
  }
  // A check that no rule can fail would say nothing.
  expect(cheaper.size).toBeGreaterThanOrEqual(4);
  expect(possible.size).toBeGreaterThanOrEqual(1);
});

/** Numbers 0 .. count - 1 in another order; entry i is the new number of the old i. */
function shuffled(count: number, seed: number): number[] {
  const random = createRandomStream(seed);
  const order = Array.from({ length: count }, (_, i) => i);
  for (let i = count - 1; i > 0; i -= 1) {
    const j = random.below(i + 1);
    [order[i], order[j]] = [order[j]!, order[i]!];
  }
  return order;
}
/** The list with every entry at its new number. */
function placed<T>(list: readonly T[], order: readonly number[]): T[] {
  const result = [...list];
  list.forEach((entry, old) => (result[order[old]!] = entry));
  return result;
}

/** The same week with children, dishes, bases, places, candidates and rows named and listed in another order. */
function renamed(problem: Problem, seed: number): Problem {
  const childAt = shuffled(problem.children, seed);
  const dishAt = shuffled(problem.dishes.length, seed + 1);
  const baseAt = shuffled(problem.bases.length, seed + 2);
  const placeAt = shuffled(problem.positions.length, seed + 3);
  const boxAt = (box: number) => childAt[Math.floor(box / problem.days)]! * problem.days + (box % problem.days);
  const positions = problem.positions.map((position, p) => ({
    ...position,
    child: childAt[position.child]!,
    box: boxAt(position.box),
    candidates: placed(
      position.candidates.map((candidate) => ({
        ...candidate,
        dish: dishAt[candidate.dish]!,
        ...(candidate.kinds === undefined ? {} : { kinds: [...candidate.kinds].reverse() }),
        bases: candidate.bases.map((use) => ({ ...use, base: baseAt[use.base]! })),
      })),
      shuffled(position.candidates.length, seed + 4 + p),
    ),
  }));
  const moved = <T extends { readonly positions: readonly number[] }>(rows: readonly T[]): T[] =>
    rows.map((row) => ({ ...row, positions: row.positions.map((p) => placeAt[p]!) })).reverse();
  return {
    ...problem,
    dishes: placed(problem.dishes, dishAt),
    bases: placed(problem.bases, baseAt),
    ready: problem.ready.map((supply) => ({ ...supply, base: baseAt[supply.base]! })),
    positions: placed(positions, placeAt),
    bands: moved(problem.bands),
    targets: moved(problem.targets),
    distinct: moved(problem.distinct),
    together: problem.together.map((rule) => ({ ...rule, boxes: rule.boxes.map(boxAt) })),
  };
}

test.each(weeks)(
  "the order of children, dishes and places does not change the best week (week $seed)",
  ({ problem, best, seed }) => {
    for (const order of [1, 2]) {
      const other = renamed(problem, 100 * seed + 10 * order);
      if (order === 1) expect(findBestExhaustively(other)?.objective ?? Infinity).toBe(best);
      const found = solve(other, { seed: 7, steps: 4000 });
      expect(found.feasible ? found.objective : Infinity).toBe(best);
    }
  },
);
