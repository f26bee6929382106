/**
 * How near the search comes to the best known weeks, and how fast: `npx tsx tests/bench/planner.bench.ts FILE... [--steps N,N] [--seeds N]`.
 * Prints per step budget the gap to `reference.bestObjective` over the seeds, processor milliseconds, and the first feasible week.
 */
import { readFileSync } from "node:fs";
import { solve } from "../../src/domain/planner/anneal.js";
import { problemFromInstance } from "../support/planner-instance.js";
import type { PlannerInstance } from "../support/planner-instance.js";

/** Processor milliseconds of this process: the wall clock would count other work on the machine. */
const cpuMs = (): number => process.cpuUsage().user / 1000;

const args = process.argv.slice(2);
const option = (name: string, fallback: string): string => {
  const at = args.indexOf(name);
  return at < 0 ? fallback : args[at + 1]!;
};
const files = args.filter((arg, i) => !arg.startsWith("--") && !(args[i - 1] ?? "").startsWith("--"));
const budgets = option("--steps", "20000,100000,500000").split(",").map(Number);
const seeds = Number(option("--seeds", "5"));

for (const file of files) {
  const source = JSON.parse(readFileSync(file, "utf8")) as PlannerInstance;
  const problem = problemFromInstance(source);
  solve(problem, { seed: 999, steps: 20000 });
  for (const steps of budgets) {
    const gaps: number[] = [];
    const times: number[] = [];
    const firsts: number[] = [];
    for (let seed = 1; seed <= seeds; seed += 1) {
      let first = Infinity;
      const began = cpuMs();
      const solution = solve(problem, {
        seed,
        steps,
        onBetter: () => {
          first = Math.min(first, cpuMs() - began);
        },
      });
      times.push(cpuMs() - began);
      firsts.push(first);
      const points = solution.feasible ? solution.objective / 1000 : Infinity;
      gaps.push((100 * (points - source.reference.bestObjective)) / source.reference.bestObjective);
      if (points < source.reference.lowerBound - 0.01) throw new Error(`below the proved bound: ${points}`);
    }
    const middle = (list: number[]): number => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)]!;
    const show = (value: number, digits: number): string => value.toFixed(digits);
    process.stdout.write(
      `${source.name} ${steps} steps: gap % ${gaps.map((gap) => show(gap, 2)).join(" ")}; ` +
        `${show(middle(times), 0)} ms (${show(steps / middle(times), 0)} steps/ms); first feasible ${show(middle(firsts), 0)} ms\n`,
    );
  }
}
