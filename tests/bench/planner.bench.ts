/**
 * How near the search comes to the best known weeks, how fast, and how much of the rest a bound closes:
 * `npm run bench:planner -- FILE... [--steps N,N] [--seeds N]` prints per step budget the gap to `reference.bestObjective` over the
 * seeds, processor milliseconds, and the first feasible week. `--json FILE...` prints one JSON line a file: the best week after 5
 * processor seconds (15 for six children), the checked bound of a tree after `--bound-seconds` (30), and the best at 50 to 5000 ms.
 */
import { readFileSync } from "node:fs";
import { solve } from "../../src/domain/planner/anneal.js";
import { raiseBound } from "../../src/domain/planner/bound/branch-tree.js";
import { boundOf, checkTree, roundDuals } from "../../src/domain/planner/bound/certify.js";
import { buildLinearModel, keepRows } from "../../src/domain/planner/bound/linear-model.js";
import type { Problem, Solution } from "../../src/domain/planner/problem.js";
import { openSolver } from "../support/highs-solver.js";
import { readPlannerInstance } from "../support/read-planner-instance.js";

/** Processor milliseconds of this process: the wall clock would count other work on the machine. */
const cpuMs = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

const args = process.argv.slice(2);
const option = (name: string, fallback: string): string => {
  const at = args.indexOf(name);
  return at < 0 ? fallback : args[at + 1]!;
};
const valued = ["--steps", "--seeds", "--seed", "--bound-seconds"];
const files = args.filter((arg, i) => !arg.startsWith("--") && !valued.includes(args[i - 1] ?? ""));
const budgets = option("--steps", "20000,100000,500000").split(",").map(Number);
const seeds = Number(option("--seeds", "5"));

const asJson = args.includes("--json");
for (const file of asJson ? files : []) console.log(JSON.stringify(await measure(file)));
for (const file of asJson ? [] : files) {
  const { source, problem } = readInstance(file);
  const { reference } = source;
  if (reference === undefined) throw new RangeError(`${file}: nothing is known to compare with; ask with --json`);
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
      gaps.push((100 * (points - reference.bestObjective)) / reference.bestObjective);
      if (points < reference.lowerBound - 0.01) throw new Error(`below the proved bound: ${points}`);
    }
    const middle = (list: number[]): number => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)]!;
    const show = (value: number, digits: number): string => value.toFixed(digits);
    process.stdout.write(
      `${source.name} ${steps} steps: gap % ${gaps.map((gap) => show(gap, 2)).join(" ")}; ` +
        `${show(middle(times), 0)} ms (${show(steps / middle(times), 0)} steps/ms); first feasible ${show(middle(firsts), 0)} ms\n`,
    );
  }
}

/** One run of the search with a budget of processor time, in seeds one after the other, each with twice the steps. */
function searchFor(problem: Problem, seed: number, budgetMs: number) {
  const marks = [50, 200, 1000, 5000];
  const curve = new Map<number, number>();
  const began = cpuMs();
  const spent = () => cpuMs() - began;
  let best: Solution | null = null;
  let known = Infinity;
  const note = (objective: number) => {
    known = Math.min(known, objective);
    for (const mark of marks) if (spent() <= mark) curve.set(mark, known / 1000);
  };
  for (let run = 0, steps = 10_000; spent() < budgetMs; run += 1, steps *= 2) {
    const solution = solve(problem, {
      seed: seed + run,
      steps,
      onBetter: note,
      shouldStop: () => spent() >= budgetMs,
    });
    if (!solution.feasible) continue;
    note(solution.objective);
    if (best === null || solution.objective < best.objective) best = solution;
  }
  let least: number | null = null;
  return {
    best,
    cpuMs: spent(),
    curve: marks.map((ms) => ({ ms, objective: (least = curve.get(ms) ?? least) })),
  };
}

/** @throws RangeError naming every place that is wrong */
function readInstance(file: string) {
  const read = readPlannerInstance(readFileSync(file, "utf8"));
  if (read.ok) return read.value;
  throw new RangeError(`${file}: ${read.error.map(({ kind, place }) => `${kind} at ${place}`).join("; ")}`);
}

async function measure(file: string) {
  const { source, problem } = readInstance(file);
  const seed = Number(option("--seed", "1"));
  const found = searchFor(problem, seed, problem.children >= 6 ? 15_000 : 5000);
  if (found.best === null) throw new Error(`no feasible week for ${file}`);
  const objective = found.best.objective;

  const began = cpuMs();
  const budget = Number(option("--bound-seconds", "30")) * 1000;
  const model = buildLinearModel(problem)!;
  const first = (await openSolver(model, "ipm")).solve(model, null);
  const rootBound = boundOf(model, roundDuals(model, first.duals));
  const rootMs = cpuMs() - began;
  // Rows that carry nothing at the root are left out of the tree; a bound without them is still a bound.
  const lean = keepRows(model, (r) => Math.abs(first.duals[r]!) > 1000 || model.rowLower[r] === model.rowUpper[r]);
  const grown = raiseBound(lean, await openSolver(lean, "simplex"), objective, () => cpuMs() - began > budget);
  const checked = checkTree(lean, grown.tree);
  // What the tree's checker vouches for; a leaf without proof takes the whole tree's word away.
  const proved = checked.believed === 0 ? Math.min(checked.bound, objective) : rootBound;
  const lowerBound = Math.max(rootBound, proved);
  return {
    file: source.name,
    seed,
    cpuMs: Math.round(found.cpuMs),
    objective: objective / 1000,
    lowerBound: lowerBound / 1000,
    gapPercent: Math.round(((objective - lowerBound) / objective) * 1e4) / 100,
    boundKind: "checked",
    proven: (objective - lowerBound) / objective <= 1e-4,
    picks: found.best.picks,
    batches: found.best.batches,
    curve: found.curve,
    rootBound: rootBound / 1000,
    rootCpuMs: Math.round(rootMs),
    boundCpuMs: Math.round(cpuMs() - began),
    nodes: grown.nodes,
  };
}
