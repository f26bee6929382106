import { solve } from "../../src/domain/planner/anneal.js";
import type { Problem } from "../../src/domain/planner/problem.js";
import { findBestExhaustively } from "../support/exhaustive-week.js";
import { drawProblem } from "../support/random-problem.js";

/** Weeks small enough to try everything, some tight. */
const tinyWeek = (seed: number): Problem =>
  drawProblem(seed, {
    children: 1 + (seed % 2),
    days: 2 + (seed % 3 === 0 ? 1 : 0),
    slots: seed % 2 === 0 ? 2 : 1,
    choices: 2 + (seed % 2),
    bases: 2,
    everything: true,
    tightness: seed % 4 === 0 ? 45 : 90,
  });
const seeds = Array.from({ length: 24 }, (_, i) => i + 1);
const weeks = seeds.map((seed) => ({ seed, problem: tinyWeek(seed), best: findBestExhaustively(tinyWeek(seed)) }));

test("some of the tiny weeks can be planned and some cannot", () => {
  const feasible = weeks.filter(({ best }) => best !== null).length;
  expect(feasible).toBeGreaterThanOrEqual(12);
  expect(feasible).toBeLessThan(weeks.length);
});

test.each(weeks)("finds the best week there is, as trying every week does (week $seed)", ({ problem, best }) => {
  const found = solve(problem, { seed: 7, steps: 4000 });
  expect(found.feasible).toBe(best !== null);
  if (best !== null) expect(found.objective).toBe(best.objective);
});

test("dropping a limit never makes the best week worse", () => {
  for (const { problem, best } of weeks.filter((week) => week.best !== null).slice(0, 8)) {
    problem.bands.slice(0, 3).forEach((_, dropped) => {
      const relaxed = findBestExhaustively({ ...problem, bands: problem.bands.filter((__, b) => b !== dropped) });
      expect(relaxed!.objective).toBeLessThanOrEqual(best!.objective);
    });
  }
});

test("cooking apart for each child never beats cooking for all at once", () => {
  let dearer = 0;
  for (const { problem, best } of weeks) {
    const apart = findBestExhaustively({ ...problem, sharing: false });
    if (apart === null) continue;
    expect(best).not.toBeNull();
    expect(best!.objective).toBeLessThanOrEqual(apart.objective);
    if (best!.objective < apart.objective) dearer += 1;
    const found = solve({ ...problem, sharing: false }, { seed: 3, steps: 4000 });
    expect(found.feasible).toBe(true);
    expect(found.objective).toBeGreaterThanOrEqual(apart.objective);
  }
  expect(dearer).toBeGreaterThan(0);
});
