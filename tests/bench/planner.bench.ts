/**
 * How near the search comes to the best known weeks, how fast, and how much of the rest a bound closes:
 * `npm run bench:planner -- FILE... [--steps N,N] [--seeds N]` prints per step budget the gap to `reference.bestObjective` over the
 * seeds, processor milliseconds, and the first feasible week. `--json FILE...` prints one JSON line a file: the best week after 5
 * processor seconds (15 for six children), the checked bound of a tree after `--bound-seconds` (30), and the best at 50 to 5000 ms.
 * Without `--json` HiGHS alone gets the same week as a mixed-integer program, for `--highs-seconds` (30; 0: not at all) in a process
 * of its own.
 */
import { readFileSync } from "node:fs";
import { solve } from "../../src/domain/planner/anneal.js";
import { certify, checkCertificate } from "../../src/domain/planner/bound/certificate.js";
import type { Problem, Solution } from "../../src/domain/planner/problem.js";
import { openHighs } from "../../src/jobs/highs-solver.js";
import { readPlannerInstance } from "../support/read-planner-instance.js";
import { writeWeekProgram } from "../support/week-program.js";
import { askHighsAlone } from "./highs-alone.js";
import { cpuMs } from "./machine.js";

const openSolver = await openHighs();

const args = process.argv.slice(2);
const option = (name: string, fallback: string): string => {
  const at = args.indexOf(name);
  return at < 0 ? fallback : args[at + 1]!;
};
const valued = ["--steps", "--seeds", "--seed", "--bound-seconds", "--highs-seconds"];
const files = args.filter((arg, i) => !arg.startsWith("--") && !valued.includes(args[i - 1] ?? ""));
const budgets = option("--steps", "20000,100000,500000").split(",").map(Number);
const seeds = Number(option("--seeds", "5"));

/** A search before any is timed, so that the engine has compiled it; its week is thrown away. */
const WARM_SEED = 999;
const WARM_STEPS = 20_000;
/** The engine goes on compiling, on threads of its own whose time counts too, for about so many; the pace is taken after them. */
const COMPILE_STEPS = 600_000;
const PACE_STEPS = 400_000;
/** Processor milliseconds at which a search should end, besides the last; between them a search's own better weeks are counted. */
const ENDS = [50, 1000];
/** Part of the time to the next end that a search is planned to take: what is left over is too short for another. */
const FILL = 0.93;

const asJson = args.includes("--json");
for (const file of asJson ? files : []) console.log(JSON.stringify(await measure(file)));
for (const file of asJson ? [] : files) {
  const { source, problem } = readInstance(file);
  const { reference } = source;
  if (reference === undefined) throw new RangeError(`${file}: nothing is known to compare with; ask with --json`);
  solve(problem, { seed: WARM_SEED, steps: WARM_STEPS });
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
  const highsSeconds = Number(option("--highs-seconds", "30"));
  if (highsSeconds > 0) {
    const { status, objective, seconds } = askHighsAlone(writeWeekProgram(problem), highsSeconds);
    const found = objective === null ? "no week" : (objective / 1000).toFixed(1);
    console.log(
      `${source.name}, HiGHS alone: ${found} after ${seconds.toFixed(1)} s (${status}); best known ${reference.bestObjective}`,
    );
  }
}

/**
 * The search with a budget of processor time: one search after the other, each with another seed and with as many steps as the pace
 * so far lets it finish at the next of `ENDS`. A printed run is repeated by its seeds and steps, not by its time.
 */
function searchFor(problem: Problem, seed: number, budgetMs: number, firstPace: number) {
  const marks = [50, 200, 1000, 5000];
  const curve = new Map<number, number>();
  const searches: { seed: number; steps: number }[] = [];
  const began = cpuMs();
  const spent = () => cpuMs() - began;
  let best: Solution | null = null;
  let known = Infinity;
  let pace = firstPace;
  let longest = WARM_STEPS;
  const note = (objective: number) => {
    known = Math.min(known, objective);
    for (const mark of marks) if (spent() <= mark) curve.set(mark, known / 1000);
  };
  for (const end of [...ENDS, budgetMs]) {
    while (spent() < FILL * end) {
      const steps = Math.max(1000, Math.floor(pace * FILL * (end - spent())));
      const search = { seed: seed + searches.length, steps };
      const from = spent();
      const solution = solve(problem, { ...search, onBetter: note, shouldStop: () => spent() >= budgetMs });
      // A search mostly sets up its tables at first, and refuses most moves at last: a longer one says more of the pace.
      if (steps >= longest) {
        pace = solution.steps / (spent() - from);
        longest = steps;
      }
      searches.push(search);
      if (!solution.feasible) continue;
      note(solution.objective);
      if (best === null || solution.objective < best.objective) best = solution;
    }
  }
  let least: number | null = null;
  return {
    best,
    cpuMs: spent(),
    searches,
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
  solve(problem, { seed: WARM_SEED, steps: COMPILE_STEPS });
  const warming = cpuMs();
  const { steps } = solve(problem, { seed: WARM_SEED, steps: PACE_STEPS });
  const pace = steps / (cpuMs() - warming);
  const found = searchFor(problem, seed, problem.children >= 6 ? 15_000 : 5000, pace);
  if (found.best === null) throw new Error(`no feasible week for ${file}`);
  const objective = found.best.objective;

  const began = cpuMs();
  const budget = Number(option("--bound-seconds", "30")) * 1000;
  const proof = certify(problem, objective, openSolver, () => (cpuMs() - began) / budget)!;
  const lowerBound = proof.bound;
  // The time to go over the proof again belongs to it.
  if (checkCertificate(problem, proof) !== lowerBound) throw new Error(`the certificate of ${file} does not check`);
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
    searches: found.searches,
    boundCpuMs: Math.round(cpuMs() - began),
    nodes: proof.nodes,
  };
}
