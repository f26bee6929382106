/**
 * Stigler's diet problem: the cheapest purchases of 77 foods that meet nine daily minima, as printed in 1945 (data and source in
 * diet-problem.json). The bound's product code gets it twice: as a week whose one place is filled by parts of dishes, which is what
 * the linear program of a week allows, and as a plain linear model for the variants.
 */
import { readFileSync } from "node:fs";
import { raiseBound } from "../../src/domain/planner/bound/branch-tree.js";
import { boundOf, checkTree, roundDuals } from "../../src/domain/planner/bound/certify.js";
import { GrowingProgram } from "../../src/domain/planner/bound/growing-program.js";
import { buildLinearModel, COST_UNITS, type LinearModel } from "../../src/domain/planner/bound/linear-model.js";
import { checkProblem } from "../../src/domain/planner/check-problem.js";
import type { Problem } from "../../src/domain/planner/problem.js";
import { openHighs } from "../../src/jobs/highs-solver.js";

const openSolver = await openHighs();

const { foods, dailyMinima } = JSON.parse(readFileSync(new URL("diet-problem.json", import.meta.url), "utf8")) as {
  foods: { food: string; perDollar: number[] }[];
  dailyMinima: number[];
};
const at = (name: string): number => foods.findIndex(({ food }) => food === name);
/** Every figure has one decimal at most: in tenths all are whole. */
const tenths = (value: number): number => Math.round(value * 10);

/** Dollars a year of 365.25 days: Stigler (1945), solved exactly since; quoted as 39.69, here in full by HiGHS 1.15.3. */
const OPTIMUM = 39.6889;
const YEAR = 365.25;
/** Stigler's own diet, found by trial (1945): dollars a year of 365 days by food, 39.93 in all. */
const byTrial: Readonly<Record<string, number>> = {
  "Wheat Flour (Enriched)": 13.33,
  "Evaporated Milk (can)": 3.84,
  Cabbage: 4.11,
  Spinach: 1.85,
  "Navy Beans, Dried": 16.8,
};

const POINTS_PER_DOLLAR = 1_000_000;
/** One place: a dollar spent on one food, or nothing bought. A part of a candidate is a part of a dollar. */
const nothing = { dish: foods.length, cost: 0, q: dailyMinima.map(() => 0), bases: [] };
const work = { fixed: 0, perPortion: 0, equipment: [], portionsPerGo: 0 };
const dayOfFood: Problem = {
  days: 1,
  children: 1,
  measures: dailyMinima.length,
  equipment: 0,
  dishes: [...foods, nothing].map(() => ({ main: false, repeatMax: 1, starch: -1, morning: work, split: null })),
  bases: [],
  windows: [{ kind: "MORNING", day: 0, minutes: 0, effort: 0, equipment: [] }],
  ready: [],
  positions: [
    {
      child: 0,
      day: 0,
      box: 0,
      slot: 0,
      fixed: -1,
      candidates: [
        ...foods.map(({ perDollar }, dish) => ({ dish, cost: POINTS_PER_DOLLAR, q: perDollar.map(tenths), bases: [] })),
        nothing,
      ],
    },
  ],
  bands: dailyMinima.map((least, n) => ({ name: `${n}`, measure: n, positions: [0], lo: tenths(least), hi: null })),
  targets: [],
  distinct: [],
  together: [],
  relaxed: { siblings: [], repeats: [], starch: [] },
  neighbours: [],
  refrigeratorMl: 0,
  stayClose: null,
  sharing: true,
};
/** Thousandths of a point for one day, as dollars a year. */
const dollarsAYear = (bound: number): number => (bound / 1000 / POINTS_PER_DOLLAR) * YEAR;

test("the data are those of the published optimum: its diet by trial meets every minimum for 39.93 dollars", () => {
  expect(foods).toHaveLength(77);
  const spent = Object.values(byTrial).reduce((sum, dollars) => sum + dollars, 0);
  expect(spent).toBeCloseTo(39.93, 2);
  dailyMinima.forEach((least, n) => {
    const bought = Object.entries(byTrial).reduce(
      (sum, [food, dollars]) => sum + foods[at(food)]!.perDollar[n]! * dollars,
      0,
    );
    // The diet is printed to the cent.
    expect(bought / 365).toBeGreaterThan(0.995 * least);
  });
});

test("the checked bound of the cheapest diet is the published optimum, to the cent and from below", async () => {
  expect(checkProblem(dayOfFood).ok).toBe(true);
  const model = buildLinearModel(dayOfFood)!;
  const answer = openSolver(model, "SIMPLEX").solve(model, null, () => false);
  const bound = dollarsAYear(boundOf(model, roundDuals(model, answer.duals)));
  expect(bound).toBeLessThanOrEqual(OPTIMUM + 5e-5);
  expect(bound).toBeGreaterThan(OPTIMUM - 5e-5);
  expect(bound.toFixed(2)).toBe("39.69");
});

/** The same in dollars a year of 365 days, bought in ten-thousandths, at most 100 dollars of a food. */
const PARTS = 10_000;
/** A bound is told in this part of a ten-thousandth: duals are rounded to millionths, and so it costs nothing here. */
const FINE = 1000;
const MOST = 100 * PARTS;
function annualModel(): LinearModel {
  const rowStart = [0];
  const rowColumn: number[] = [];
  const rowValue: number[] = [];
  dailyMinima.forEach((_, n) => {
    foods.forEach(({ perDollar }, column) => {
      if (perDollar[n] === 0) return;
      rowColumn.push(column);
      rowValue.push(tenths(perDollar[n]!));
    });
    rowStart.push(rowColumn.length);
  });
  return {
    cost: new Float64Array(foods.length).fill(FINE * COST_UNITS),
    lower: new Float64Array(foods.length),
    upper: new Float64Array(foods.length).fill(MOST),
    offset: 0,
    rowLower: Float64Array.from(dailyMinima, (least) => tenths(least) * 365 * PARTS),
    rowUpper: new Float64Array(dailyMinima.length).fill(Infinity),
    rowStart: Int32Array.from(rowStart),
    rowColumn: Int32Array.from(rowColumn),
    rowValue: Float64Array.from(rowValue),
    plainDuals: new Float64Array(dailyMinima.length),
    whole: new Int32Array(0),
    fine: new Int32Array(0),
    idle: new Int32Array(0),
  };
}
const dollars = (bound: number): number => bound / FINE / PARTS;

/** Dollars a year by unit of each nutrient and day, as the shadow prices of the optimum were worked out to five digits. */
const shadowPrices = [0.0087651, 0, 0.0317377, 0, 0.00040023, 0, 0.016358, 0, 0.00014412];

test("shadow prices written down by hand prove nearly all of it without a solver", () => {
  const model = annualModel();
  const duals = shadowPrices.map((price) => (price * FINE * COST_UNITS) / 10);
  const bound = dollars(boundOf(model, roundDuals(model, duals)));
  expect(bound).toBeLessThanOrEqual(39.66173);
  expect(bound).toBeGreaterThan(39.6);
  // Prices that are too high prove no more: the foods they make too cheap take it back.
  const greedy = duals.map((dual) => dual * 1.01);
  expect(dollars(boundOf(model, roundDuals(model, greedy)))).toBeLessThan(39.66173);
});

// Optima of the variants: worked out with HiGHS 1.15.3 and SciPy's solver, not published; dollars a year of 365 days.
const variants: readonly { name: string; optimum: number; narrow: (model: LinearModel) => Float64Array }[] = [
  { name: "as printed", optimum: 39.66173, narrow: (model) => model.upper },
  {
    name: "without beef liver",
    optimum: 39.7987,
    narrow: (model) => Float64Array.from(model.upper, (most, food) => (food === at("Liver (Beef)") ? 0 : most)),
  },
  {
    name: "at most five dollars for any food",
    optimum: 50.0828,
    narrow: (model) => Float64Array.from(model.upper, () => 5 * PARTS),
  },
];
test.each(variants)(
  "narrower purchases are proved dearer by as much as they are ($name)",
  async ({ optimum, narrow }) => {
    const model = annualModel();
    const upper = narrow(model);
    const answer = openSolver(model, "SIMPLEX").solve({ lower: model.lower, upper }, null, () => false);
    const bound = dollars(boundOf(model, roundDuals(model, answer.duals), model.lower, upper));
    // The optima were written down to four digits.
    expect(bound).toBeLessThanOrEqual(optimum + 5e-5);
    expect(bound).toBeGreaterThan(optimum - 6e-5);
  },
);

test("at least ten different foods, each for three tenths of a cent a day or more: a tree proves the optimum, leaf by leaf", async () => {
  // 0.3 cent a day is 1.095 dollars a year.
  const least = 1.095 * PARTS;
  const plain = annualModel();
  const count = foods.length;
  const rows = foods.flatMap((_, food) => [
    {
      low: 0,
      high: Infinity,
      terms: [
        [food, 1],
        [count + food, -least],
      ],
    },
    {
      low: -Infinity,
      high: 0,
      terms: [
        [food, 1],
        [count + food, -MOST],
      ],
    },
  ]);
  const all = [...rows, { low: 10, high: Infinity, terms: foods.map((_, food) => [count + food, 1]) }];
  const starts = [...plain.rowStart];
  for (const { terms } of all) starts.push(starts.at(-1)! + terms.length);
  const model: LinearModel = {
    cost: Float64Array.from([...plain.cost, ...foods.map(() => 0)]),
    lower: new Float64Array(2 * count),
    upper: Float64Array.from([...plain.upper, ...foods.map(() => 1)]),
    offset: 0,
    rowLower: Float64Array.from([...plain.rowLower, ...all.map(({ low }) => low)]),
    rowUpper: Float64Array.from([...plain.rowUpper, ...all.map(({ high }) => high)]),
    rowStart: Int32Array.from(starts),
    rowColumn: Int32Array.from([...plain.rowColumn, ...all.flatMap(({ terms }) => terms.map(([column]) => column!))]),
    rowValue: Float64Array.from([...plain.rowValue, ...all.flatMap(({ terms }) => terms.map(([, value]) => value!))]),
    plainDuals: new Float64Array(plain.rowLower.length + all.length),
    whole: Int32Array.from(foods, (_, food) => count + food),
    fine: new Int32Array(0),
    idle: new Int32Array(0),
  };
  // Worked out with HiGHS 1.15.3, not published.
  const optimum = 41.1303;
  let asked = 0;
  const cutoff = Math.ceil((optimum + 0.01) * PARTS * FINE);
  const result = raiseBound(new GrowingProgram(model, openSolver), cutoff, () => (asked += 1) / 2000);
  const checked = checkTree(model, result.tree);
  expect(checked.believed).toBe(0);
  expect(dollars(result.rootBound)).toBeLessThan(optimum - 0.01);
  expect(dollars(checked.bound)).toBeLessThanOrEqual(optimum + 5e-5);
  expect(dollars(checked.bound)).toBeGreaterThan(optimum - 6e-5);
});
