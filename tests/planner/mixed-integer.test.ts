import { solve } from "../../src/domain/planner/anneal.js";
import { loadHighs } from "../support/highs.js";
import { drawProblem } from "../support/random-problem.js";
import { writeWeekProgram } from "../support/week-program.js";

// Checked against: HiGHS 1.15.3, a MILP solver, as oracle (npm `highs`).
const seeds = [1, 2, 3, 4, 5, 6, 7, 8];

test.each(seeds)("finds the week that a mixed-integer solver proves best (week %i)", async (seed) => {
  const problem = drawProblem(seed, {
    children: 2,
    days: 3,
    slots: 3,
    choices: 4,
    bases: 3,
    everything: false,
    tightness: seed % 2 === 0 ? 100 : 65,
  });
  const highs = await loadHighs();
  const proved = highs.solve(writeWeekProgram(problem), { mip_rel_gap: 0, mip_abs_gap: 0.5 });
  // The search promises no optimum: the best of four runs has to reach it.
  const runs = [11, 12, 13, 14].map((run) => solve(problem, { seed: run, steps: 20000 }));
  const found = runs.reduce((best, run) =>
    run.feasible && (!best.feasible || run.objective < best.objective) ? run : best,
  );
  expect(["Optimal", "Infeasible"]).toContain(proved.Status);
  expect(found.feasible).toBe(proved.Status === "Optimal");
  if (proved.Status !== "Optimal") return;
  // Each weekly target is rounded down to a thousandth of a point here and not there; the solver stops within half of one.
  expect(found.objective).toBeGreaterThanOrEqual(proved.ObjectiveValue - problem.targets.length - 1);
  expect(found.objective).toBeLessThanOrEqual(proved.ObjectiveValue + 1);
});
