/**
 * npm run bench:plan: a week of three children on five days, planned in the worker threads as a request does it, without and
 * with the comparison (the same week with sharing switched off). Options: `-- --seeds N --steps N`.
 */
import { monitorEventLoopDelay } from "node:perf_hooks";
import { parseArgs } from "node:util";
import { startPlannerPool } from "../../src/jobs/planner-pool.js";
import { PLAN_STEPS } from "../../src/plan-steps.js";
import { threeChildren } from "../support/demo-brief.js";
import { loadNow, median, printHold, printMachine, printTable, quantile } from "./machine.js";

const { values: options } = parseArgs({
  options: { seeds: { type: "string", default: "10" }, steps: { type: "string", default: String(PLAN_STEPS) } },
});
const seeds = Number(options.seeds);
const steps = Number(options.steps);

/** Milliseconds between looks at the event loop; a delay counts from the planned moment of the look, so it is part of it. */
const LOOK_EVERY = 5;

interface Measured {
  readonly ms: number;
  readonly firstMs: number;
  readonly points: number;
}

const brief = threeChildren();
const pool = startPlannerPool(brief.catalogue);

async function plan(seed: number, compare: boolean): Promise<Measured> {
  const began = performance.now();
  let firstMs = Number.NaN;
  const { outcome } = await pool.plan({ brief, seed, steps, compare }, (_, bestPoints) => {
    if (bestPoints !== null && Number.isNaN(firstMs)) firstMs = performance.now() - began;
  });
  if (outcome.kind !== "PLANNED") throw new Error(`seed ${seed} gives no plan`);
  return { ms: performance.now() - began, firstMs, points: outcome.objectivePoints };
}

async function measure(compare: boolean) {
  // Both threads must have compiled what they run.
  await Promise.all([plan(901, compare), plan(902, compare)]);
  const delay = monitorEventLoopDelay({ resolution: LOOK_EVERY });
  delay.enable();
  const measured: Measured[] = [];
  for (let seed = 1; seed <= seeds; seed += 1) measured.push(await plan(seed, compare));
  delay.disable();
  return { measured, delayP99: delay.percentile(99) / 1e6, delayMax: delay.max / 1e6 };
}

try {
  const without = await measure(false);
  const withComparison = await measure(true);
  printMachine();
  console.log(
    `${brief.children.length} children, ${brief.children.reduce((sum, child) => sum + child.days.length, 0)} boxes, ` +
      `${brief.catalogue.dishes.length} dishes, ${steps} steps, ${seeds} seeds one after another, load ${loadNow()} at the end`,
  );
  printTable(
    ["plan", "median ms", "fastest", "slowest", "first feasible ms", "points", "loop delay p99 ms", "longest"],
    [["one search", without] as const, ["with the comparison", withComparison] as const].map(
      ([name, { measured, delayP99, delayMax }]) => [
        name,
        median(measured.map((one) => one.ms)).toFixed(0),
        quantile(
          measured.map((one) => one.ms),
          0,
        ).toFixed(0),
        quantile(
          measured.map((one) => one.ms),
          1,
        ).toFixed(0),
        median(measured.map((one) => one.firstMs)).toFixed(0),
        median(measured.map((one) => one.points)).toFixed(0),
        delayP99.toFixed(1),
        delayMax.toFixed(1),
      ],
    ),
  );
  printHold("one search", median(without.measured.map((one) => one.ms)), { atMost: 1000 }, " ms");
  printHold("with the comparison", median(withComparison.measured.map((one) => one.ms)), { atMost: 1000 }, " ms");
  printHold(
    "event loop delay p99 while planning",
    Math.max(without.delayP99, withComparison.delayP99),
    { atMost: 30 },
    " ms",
  );
} finally {
  await pool.stop();
}
