import fc from "fast-check";
import type { BoundTree } from "../../src/domain/planner/bound/bound-tree.js";
import { raiseBound } from "../../src/domain/planner/bound/branch-tree.js";
import { certify, checkCertificate } from "../../src/domain/planner/bound/certificate.js";
import { boundOf, roundDuals, checkTree } from "../../src/domain/planner/bound/certify.js";
import { GrowingProgram } from "../../src/domain/planner/bound/growing-program.js";
import { buildLinearModel, COST_UNITS } from "../../src/domain/planner/bound/linear-model.js";
import { findBestExhaustively } from "../support/exhaustive-week.js";
import { openHighs } from "../../src/jobs/highs-solver.js";
import { drawTinyWeek, tinySeeds } from "../support/random-problem.js";

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
