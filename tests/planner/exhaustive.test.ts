import { solve } from "../../src/domain/planner/anneal.js";
import { findBestExhaustively } from "../support/exhaustive-week.js";
import { drawTinyWeek, tinySeeds } from "../support/random-problem.js";

const weeks = tinySeeds.map((seed) => ({
  seed,
  problem: drawTinyWeek(seed),
  best: findBestExhaustively(drawTinyWeek(seed)),
}));

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
