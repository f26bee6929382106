import fc from "fast-check";
import type { BoundTree } from "../../src/domain/planner/bound/bound-tree.js";
import { packProof, raiseBound } from "../../src/domain/planner/bound/branch-tree.js";
import {
  certify,
  checkCertificate,
  readCertificate,
  writeCertificate,
} from "../../src/domain/planner/bound/certificate.js";
import { boundOf, roundDuals, checkTree } from "../../src/domain/planner/bound/certify.js";
import { GrowingProgram, slackOf } from "../../src/domain/planner/bound/growing-program.js";
import { buildLinearModel, COST_UNITS, type LinearModel } from "../../src/domain/planner/bound/linear-model.js";
import { evaluate } from "../../src/domain/planner/evaluate.js";
import type { Problem } from "../../src/domain/planner/problem.js";
import { findBestExhaustively } from "../support/exhaustive-week.js";
import { openHighs } from "../../src/jobs/highs-solver.js";
import { drawProblem, drawTinyWeek, tinySeeds } from "../support/random-problem.js";

const openSolver = await openHighs();

// The oracle: trying every week. The solver: HiGHS 1.15.3 (npm `highs`); its word counts for nothing here.
const weeks = tinySeeds
  .map((seed) => ({
    seed,
    problem: drawTinyWeek(seed, seed % 3 !== 1),
  }))
  .map((week) => ({ ...week, best: findBestExhaustively(week.problem), model: buildLinearModel(week.problem)! }));
const possible = weeks.flatMap((week) => (week.best === null ? [] : [{ ...week, optimum: week.best.objective }]));

test.each(possible)("no week costs less than its checked bound (week $seed)", async ({ model, optimum }) => {
  const answer = openSolver(model, "INTERIOR_POINT").solve(model, null, () => false);
  const bound = boundOf(model, roundDuals(model, answer.duals));
  expect(bound).toBeLessThanOrEqual(optimum);
  // A bound that says nothing would pass the line above.
  expect(bound).toBeGreaterThan(0.5 * optimum);
});

test("duals that need no solver prove that every place costs its cheapest dish at least", () => {
  for (const { problem, model, optimum } of possible) {
    const least = problem.positions.reduce(
      (sum, { candidates }) => sum + candidates.reduce((low, { cost }) => Math.min(low, cost), Infinity),
      0,
    );
    const bound = boundOf(model, roundDuals(model, model.plainDuals));
    expect(bound).toBeLessThanOrEqual(optimum);
    // A weekly target counts a thousandth of a point less than it may.
    expect(bound).toBeGreaterThanOrEqual(least * 1000 - problem.targets.length);
  }
});

test("whatever the duals, right or wrong, the bound they prove is never above the best week", () => {
  for (const { model, optimum } of possible.slice(0, 6)) {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -5e5, max: 5e5, noNaN: true }), { minLength: 4, maxLength: 40 }),
        (some) => {
          const duals = Float64Array.from(model.rowLower, (_, r) => some[r % some.length]!);
          expect(boundOf(model, roundDuals(model, duals))).toBeLessThanOrEqual(optimum);
        },
      ),
      { numRuns: 40, seed: 1 },
    );
  }
});

test("duals too large for every whole number between them prove what they take from each other", () => {
  const model: LinearModel = {
    ...possible[0]!.model,
    cost: Float64Array.of(7 * COST_UNITS),
    lower: Float64Array.of(0),
    upper: Float64Array.of(2),
    offset: 0,
    rowLower: Float64Array.of(1, -Infinity),
    rowUpper: Float64Array.of(Infinity, 1),
    rowStart: Int32Array.of(0, 1, 2),
    rowColumn: Int32Array.of(0, 0),
    rowValue: Float64Array.of(1, 1),
  };
  const duals = roundDuals(model, [7 * COST_UNITS + 3e12, -3e12]);
  expect(duals[0]).toBeGreaterThan(Number.MAX_SAFE_INTEGER);
  const tree: BoundTree = { kind: "LEAF", proof: packProof("BOUND", duals) };
  const text = writeCertificate({ objective: 7, bound: 7, nodes: 1, rows: null, tree });
  expect(checkTree(model, readCertificate(text).tree)).toEqual({ bound: 7, believed: 0 });
});

test("a tree raises the bound, never above the best week, and every leaf can be checked again", async () => {
  let raised = 0;
  for (const { model, optimum } of possible) {
    const program = new GrowingProgram(model, openSolver);
    let asked = 0;
    const result = raiseBound(program, optimum, () => (asked += 1) / 200);
    expect(result.bound).toBeLessThanOrEqual(optimum);
    expect(result.bound).toBeGreaterThanOrEqual(result.rootBound);
    const checked = checkTree(model, result.tree);
    expect(checked.believed).toBe(0);
    expect(Math.min(checked.bound, optimum)).toBe(result.bound);
    if (result.bound > result.rootBound) raised += 1;
  }
  expect(raised).toBeGreaterThan(3);
});

test("a proof that is told to stop ends with what it has, and that proves no more than is true", () => {
  const { problem, optimum } = possible[0]!;
  let last = -Infinity;
  for (const most of [0, 1, 2, 4, 8, 16, 32, 64]) {
    let asked = 0;
    const proof = certify(problem, optimum, openSolver, () => (asked += 1) / (most + 1))!;
    // The program under way asks as well; once told to stop it is not long in ending.
    expect(asked).toBeLessThan(most + 40);
    expect(proof.bound).toBeLessThanOrEqual(optimum);
    expect(checkCertificate(problem, proof)).toBe(proof.bound);
    last = Math.max(last, proof.bound);
  }
  expect(last).toBeGreaterThan(0.5 * optimum);
});

test("simplex broken off in its midst hands over duals that prove something", () => {
  const { model, optimum } = possible.reduce((most, week) =>
    week.model.rowLower.length > most.model.rowLower.length ? week : most,
  );
  const solver = openSolver(model, "SIMPLEX");
  const { status, duals } = solver.solve(model, null, () => true);
  const whole = solver.solve(model, null, () => false);
  solver.close();
  expect(status).toBe("LIMIT");
  const bound = boundOf(model, roundDuals(model, duals));
  expect(bound).toBeGreaterThan(boundOf(model, new Float64Array(model.rowLower.length)));
  expect(bound).toBeLessThan(boundOf(model, roundDuals(model, whole.duals)));
  expect(bound).toBeLessThanOrEqual(optimum);
});

test("a tree with a leaf cut off, or with another leaf's duals, does not check", async () => {
  const { model, optimum } = possible.find(({ seed }) => seed === 2) ?? possible[0]!;
  let asked = 0;
  const { tree, bound } = raiseBound(new GrowingProgram(model, openSolver), optimum, () => (asked += 1) / 60);
  expect(checkTree(model, tree).believed).toBe(0);
  const cut: BoundTree =
    tree.kind === "SPLIT" ? { ...tree, low: { kind: "BELIEVED_EMPTY" } } : { kind: "BELIEVED_EMPTY" };
  expect(checkTree(model, cut).believed).toBe(1);
  const emptied: BoundTree = {
    kind: "LEAF",
    proof: { kind: "BOUND", rows: new Int32Array(0), duals: new Float64Array(0) },
  };
  expect(checkTree(model, emptied).bound).toBeLessThan(bound);
});

test("a program that begins with a few rows takes in what its solutions break, until none is broken", () => {
  let taken = 0;
  for (const { model } of possible) {
    const whole = openSolver(model, "SIMPLEX").solve(model, null, () => false).objective;
    const few = Array.from(model.rowLower.keys()).filter((row) => model.rowLower[row] === model.rowUpper[row]);
    const program = new GrowingProgram(model, openSolver, "CROSSOVER", few);
    let answer = program.solve(model, null, () => false);
    for (let more = program.grow(answer.values); more > 0; more = program.grow(answer.values)) {
      taken += more;
      answer = program.solve(model, null, () => false);
      // Duals are told by the model's own row numbers, so they prove as much of the model.
      expect(boundOf(model, roundDuals(model, answer.duals))).toBeLessThanOrEqual(Math.ceil(whole / COST_UNITS) + 1);
    }
    expect(answer.objective / whole).toBeCloseTo(1, 2);
    program.close();
  }
  expect(taken).toBeGreaterThan(100);
});

/** Rules that the drawn weeks have seldom: so many different kinds in a box and days of a class in a week, pins, an agreed week. */
function withMoreRules(problem: Problem, seed: number): Problem {
  const boxes = [...new Set(problem.positions.map(({ box }) => box))];
  const inBox = (box: number) => problem.positions.flatMap((position, p) => (position.box === box ? [p] : []));
  const more = [
    ...boxes.map((box) => ({
      name: `different in ${box}`,
      counts: "KINDS" as const,
      measure: 0,
      positions: inBox(box),
      atLeast: inBox(box).length - (seed % 5 === 0 ? 1 : 0),
      atMost: -1,
    })),
    {
      name: "days",
      counts: "DAYS" as const,
      measure: 2,
      positions: problem.positions.flatMap(({ child }, p) => (child === 0 ? [p] : [])),
      atLeast: 1 + (seed % 2),
      atMost: -1,
    },
  ];
  const kindsOf = (dish: number): number[] => [0, dish % 3, ...boxes.map(() => dish % (2 + (seed % 3))), 0];
  // In half of the weeks a dish may be had at two places of a box, where no rule stands in the way.
  const twice = seed % 4 > 1;
  return {
    ...problem,
    distinct: [...problem.distinct, ...more],
    dishes: problem.dishes.map((dish) => (twice ? { ...dish, main: false, repeatMax: 2 } : dish)),
    positions: problem.positions.map((position, p) => {
      const before = problem.positions[p - 1];
      const lent = twice && before?.box === position.box ? before.candidates.slice(0, 1) : [];
      return {
        ...position,
        fixed: seed % 4 === 1 && p === 0 ? 1 : -1,
        candidates: [...position.candidates, ...lent].map((candidate) => ({
          ...candidate,
          kinds: kindsOf(candidate.dish),
        })),
      };
    }),
    stayClose:
      seed % 3 === 0
        ? { dishAt: problem.positions.map(({ candidates }) => candidates[0]!.dish), pointsPerBox: 20, pointsPerItem: 5 }
        : null,
  };
}

test("no week that keeps the rules breaks a row over its picks or has a dish that was closed", () => {
  let rows = 0;
  let kept = 0;
  let closed = 0;
  for (let seed = 1; seed <= 30; seed += 1) {
    const shape = {
      children: 1 + (seed % 2),
      days: 2,
      slots: 2,
      choices: 3,
      bases: 1,
      everything: true,
      tightness: 100,
    };
    const problem = withMoreRules(drawProblem(seed, shape), seed);
    const model = buildLinearModel(problem)!;
    const firstOf = problem.positions.map((_, p) =>
      problem.positions.slice(0, p).reduce((sum, { candidates }) => sum + candidates.length, 0),
    );
    const picksEnd = problem.positions.reduce((sum, { candidates }) => sum + candidates.length, 0);
    const overPicks = Array.from(model.rowLower.keys()).filter((row) =>
      model.rowColumn.slice(model.rowStart[row], model.rowStart[row + 1]).every((column) => column < picksEnd),
    );
    rows += overPicks.length;
    closed += model.upper.slice(0, picksEnd).filter((most) => most === 0).length;
    for (const picks of everyWeek(problem)) {
      const broken = evaluate(problem, picks, [], []).clashes.some(
        ({ kind }) => !["MINUTES", "EQUIPMENT", "STORAGE", "SUPPLY"].includes(kind),
      );
      if (broken) continue;
      kept += 1;
      const values = new Float64Array(model.cost.length);
      picks.forEach((k, p) => {
        values[firstOf[p]! + k] = 1;
      });
      expect(values.every((value, column) => value <= model.upper[column]!)).toBe(true);
      expect(overPicks.filter((row) => slackOf(model, row, values) < 0)).toEqual([]);
    }
  }
  expect(rows).toBeGreaterThan(500);
  expect(kept).toBeGreaterThan(500);
  expect(closed).toBeGreaterThan(20);
});

test("a certificate of a week with pins, an agreed week and rules of variety never proves more than the best week costs", () => {
  let proved = 0;
  for (const seed of tinySeeds) {
    const problem = withMoreRules(drawTinyWeek(seed), seed);
    const best = findBestExhaustively(problem);
    if (best === null) continue;
    let asked = 0;
    // The week that is said to be known costs more than the best, so the bound may not stop at it.
    const certificate = certify(problem, best.objective + 50_000, openSolver, () => (asked += 1) / 400)!;
    expect(certificate.bound).toBeLessThanOrEqual(best.objective);
    expect(checkCertificate(problem, readCertificate(writeCertificate(certificate)))).toBe(certificate.bound);
    if (certificate.bound > 0.9 * best.objective) proved += 1;
  }
  expect(proved).toBeGreaterThan(3);
});

test("half a dish at two places of a box is finished whole only where the box may not have it twice", () => {
  const work = { fixed: 100, perPortion: 0, equipment: [], portionsPerGo: 0 };
  const week = (different: boolean): Problem => ({
    days: 1,
    children: 1,
    measures: 1,
    equipment: 0,
    dishes: [0, 1].map(() => ({ main: false, repeatMax: 2, starch: -1, morning: work, split: null })),
    bases: [],
    windows: [{ kind: "MORNING", day: 0, minutes: 200, effort: 5, equipment: [] }],
    ready: [],
    positions: [0, 1].map((slot) => ({
      child: 0,
      day: 0,
      box: 0,
      slot,
      fixed: -1,
      candidates: [0, 1].map((dish) => ({ dish, cost: 0, q: [1], bases: [], kinds: [dish] })),
    })),
    bands: [],
    targets: [],
    distinct: different
      ? [{ name: "different", counts: "KINDS", measure: 0, positions: [0, 1], atLeast: 2, atMost: -1 }]
      : [],
    together: [],
    relaxed: { siblings: [], repeats: [], starch: [] },
    neighbours: [],
    refrigeratorMl: 0,
    stayClose: null,
    sharing: true,
  });
  // Ten minutes at five points each: the same dish twice is finished once.
  for (const [different, points] of [
    [false, 50],
    [true, 100],
  ] as const) {
    expect(findBestExhaustively(week(different))!.objective).toBe(points * 1000);
    const model = buildLinearModel(week(different))!;
    const { duals } = openSolver(model, "SIMPLEX").solve(model, null, () => false);
    expect(boundOf(model, roundDuals(model, duals))).toBe(points * 1000);
    expect(certify(week(different), 1_000_000, openSolver, () => 0)!.bound).toBe(points * 1000);
  }
});

function* everyWeek(problem: Problem): Generator<number[]> {
  const picks = problem.positions.map(({ fixed }) => Math.max(0, fixed));
  for (;;) {
    yield [...picks];
    let p = 0;
    while (
      p < picks.length &&
      (problem.positions[p]!.fixed >= 0 || picks[p] === problem.positions[p]!.candidates.length - 1)
    ) {
      picks[p] = Math.max(0, problem.positions[p]!.fixed);
      p += 1;
    }
    if (p === picks.length) return;
    picks[p]! += 1;
  }
}
