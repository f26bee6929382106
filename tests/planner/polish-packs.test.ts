import { describe, expect, test } from "@jest/globals";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { findCandidates } from "../../src/domain/planner/candidates.js";
import { evaluate } from "../../src/domain/planner/evaluate.js";
import { formulate } from "../../src/domain/planner/formulate.js";
import { layOut } from "../../src/domain/planner/lay-out.js";
import { polishPacks } from "../../src/domain/planner/polish-packs.js";
import { solve } from "../../src/domain/planner/anneal.js";
import type { Problem, Solution } from "../../src/domain/planner/problem.js";
import { POINT } from "../../src/domain/planner/problem-tables.js";
import type { SolvedWeek } from "../../src/domain/planner/solved-week.js";
import type { WeekBrief } from "../../src/domain/brief.js";
import type { WeekDraft } from "../../src/domain/week.js";
import { sampleFood } from "../support/shop-foods.js";
import { threeChildren, twoChildren } from "../support/demo-brief.js";

const TRIES = 750;

function searched(brief: WeekBrief, seed: number): SolvedWeek {
  const index = indexCatalogue(brief.catalogue);
  const { problem, layout } = formulate(brief, index, findCandidates(brief, index));
  return { brief, index, problem, layout, solution: solve(problem, { seed, steps: 30_000 }) };
}
const laidOut = (week: SolvedWeek): WeekDraft => {
  const draft = layOut(week);
  if (!draft.ok) throw new Error(JSON.stringify(draft.error));
  return draft.value;
};
const packsOf = ({ shopping }: WeekDraft): number => shopping.reduce((sum, line) => sum + line.packs, 0);

describe("a week whose packs are looked at once more", () => {
  test.each([
    ["two children", twoChildren(), 2],
    ["two children, other dice", twoChildren(), 4],
    ["three children", threeChildren(), 3],
  ] as const)("costs less at the till, buys no more packs and keeps every rule: %s", (_, brief, seed) => {
    const week = searched(brief, seed);
    const solution = polishPacks(week, TRIES);
    expect(solution).toEqual(polishPacks(week, TRIES));
    const { picks, eveningFinish, batches, objective } = solution;
    expect(evaluate(week.problem, picks, eveningFinish, batches)).toMatchObject({ feasible: true, objective });
    expect(objective).toBeLessThanOrEqual(week.solution.objective * 1.005);
    const [before, after] = [laidOut(week), laidOut({ ...week, solution })];
    expect(after.wishes.costMinor).toBeLessThan(before.wishes.costMinor);
    expect(packsOf(after)).toBeLessThanOrEqual(packsOf(before));
    // What is lost is worth less than what is saved, at 20 minor units a point.
    expect((objective - week.solution.objective) / POINT).toBeLessThan(
      (before.wishes.costMinor - after.wishes.costMinor) / 20,
    );
  });

  test("stays the very same where no try is left", () => {
    const week = searched(twoChildren(), 2);
    expect(polishPacks(week, 0)).toBe(week.solution);
  });
});

/**
 * One child, one day, a vegetable and a fruit; 2,000 points stand elsewhere, so that 10 may be lost. Pears cost a bag of 300; apples
 * are needed for the salad anyway and a bag holds enough for both. 300 minor units are worth 15 points (common practice: arithmetic).
 */
function handMade(
  applePoints: number,
  over: {
    readonly appleStock?: number;
    readonly packed?: boolean;
    readonly fixed?: number;
    readonly bagGrams?: number;
  } = {},
): SolvedWeek {
  const candidate = (dish: number, cost: number) => ({ dish, cost, q: [], bases: [] });
  const place = { day: 0, child: 0, box: 0 };
  const problem: Problem = {
    days: 1,
    children: 1,
    measures: 0,
    equipment: 0,
    dishes: [0, 1, 2].map(() => ({
      main: false,
      repeatMax: 2,
      starch: -1,
      morning: { fixed: 0, perPortion: 0, equipment: [], portionsPerGo: 0 },
      split: null,
    })),
    bases: [],
    windows: [{ kind: "MORNING", day: 0, minutes: 100, effort: 1, equipment: [] }],
    ready: [],
    positions: [
      { ...place, slot: 0, candidates: [candidate(0, 2_000)], fixed: -1 },
      { ...place, slot: 1, candidates: [candidate(1, 0), candidate(2, applePoints)], fixed: over.fixed ?? -1 },
    ],
    bands: [],
    targets: [],
    distinct: [],
    together: [],
    relaxed: { siblings: [], repeats: [], starch: [] },
    neighbours: [],
    refrigeratorMl: 1_000,
    stayClose: null,
    sharing: true,
  };
  const solution: Solution = evaluate(problem, [0, 0], [], []);
  const foods = [
    sampleFood("apple", { pack: { grams: over.bagGrams ?? 500, priceMinor: 300 } }),
    sampleFood("pear", { pack: { grams: 500, priceMinor: 300 } }),
  ];
  const index = indexCatalogue({ version: "test", retention: [], foods, bases: [], dishes: [] });
  const option = (key: string, food: string) => ({
    derived: { dish: { key, ingredients: [{ food, grams: 200 }] }, grams: 200 },
    portion: { grams: 200 },
  });
  const layout = {
    places: [{ pin: null }, { pin: over.packed === true ? { because: "PACKED" } : null }],
    options: [[option("apple-salad", "apple")], [option("pear-slices", "pear"), option("apple-slices", "apple")]],
    bases: [],
  };
  const brief = { stock: over.appleStock === undefined ? [] : [{ food: "apple", grams: over.appleStock }] };
  // Of brief and layout no more than what money is reckoned from.
  return { brief, index, problem, layout, solution } as unknown as SolvedWeek;
}

describe("a bag that is opened anyway", () => {
  const fruitOf = (week: SolvedWeek): number => polishPacks(week, 10).picks[1]!;

  test("also gives the fruit when that loses less than the other bag is worth", () => {
    expect(fruitOf(handMade(9))).toBe(1);
  });
  test("does not when the week would lose more than one two-hundredth of its points", () => {
    expect(fruitOf(handMade(11))).toBe(0);
  });
  test("does not when a second bag of it would be needed", () => {
    expect(fruitOf(handMade(9, { bagGrams: 300 }))).toBe(0);
  });
  test("counts what lies in the cupboard", () => {
    expect(fruitOf(handMade(9, { bagGrams: 300, appleStock: 100 }))).toBe(1);
  });
  test("leaves alone what a carer pinned and what is packed and bought", () => {
    expect(fruitOf(handMade(9, { fixed: 0 }))).toBe(0);
    expect(fruitOf(handMade(9, { packed: true }))).toBe(0);
  });
});
