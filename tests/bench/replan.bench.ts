/**
 * npm run bench:replan -- FILE: how long a week takes to be planned again, close to the week agreed, after one disruption: a dish that
 * is eaten is gone, a base that is used is gone, a child is away for a day. Processor milliseconds of the search alone, over every
 * such disruption of `--weeks N` agreed weeks. Options: `--steps N` moves of a search.
 */
import { readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { solve } from "../../src/domain/planner/anneal.js";
import type { Problem, Solution } from "../../src/domain/planner/problem.js";
import { searchNear } from "../../src/domain/planner/replan.js";
import { PLAN_STEPS } from "../../src/plan-steps.js";
import { readPlannerInstance } from "../support/read-planner-instance.js";
import { cpuMs, loadNow, median, printHold, printMachine, printTable } from "./machine.js";

const { values: options, positionals } = parseArgs({
  allowPositionals: true,
  options: { weeks: { type: "string", default: "3" }, steps: { type: "string", default: String(PLAN_STEPS) } },
});
const steps = Number(options.steps);

const POINTS_PER_BOX = 100_000;
const POINTS_PER_ITEM = 100;

/** The problem without the dishes that `gone` names, near the week's picks. */
function without(problem: Problem, { picks }: Solution, gone: (dish: number, bases: readonly number[]) => boolean) {
  const dishAt = problem.positions.map(({ candidates }, p) => candidates[picks[p]!]!.dish);
  const positions = problem.positions.map((position) => ({
    ...position,
    candidates: position.candidates.filter(
      ({ dish, bases }) =>
        !gone(
          dish,
          bases.map(({ base }) => base),
        ),
    ),
  }));
  return near({ ...problem, positions }, dishAt);
}
const near = (problem: Problem, dishAt: readonly number[]): Problem => ({
  ...problem,
  stayClose: { dishAt, pointsPerBox: POINTS_PER_BOX, pointsPerItem: POINTS_PER_ITEM },
});

/** The problem without a child's box of one day: nothing stands there any more, and what was asked of the child's week goes too. */
function withoutBox(problem: Problem, { picks }: Solution, box: number): Problem {
  const kept = [...problem.positions.keys()].filter((p) => problem.positions[p]!.box !== box);
  const numberOf = new Map(kept.map((p, at) => [p, at]));
  const whole = ({ positions }: { readonly positions: readonly number[] }) => positions.every((p) => numberOf.has(p));
  const renumber = <T extends { readonly positions: readonly number[] }>(rows: readonly T[]): T[] =>
    rows.filter(whole).map((row) => ({ ...row, positions: row.positions.map((p) => numberOf.get(p)!) }));
  return near(
    {
      ...problem,
      positions: kept.map((p) => problem.positions[p]!),
      bands: renumber(problem.bands),
      targets: renumber(problem.targets),
    },
    kept.map((p) => problem.positions[p]!.candidates[picks[p]!]!.dish),
  );
}

for (const file of positionals) {
  const read = readPlannerInstance(readFileSync(file, "utf8"));
  if (!read.ok)
    throw new RangeError(`${file}: ${read.error.map(({ kind, place }) => `${kind} at ${place}`).join("; ")}`);
  const { problem } = read.value;
  const spent = new Map<string, { ms: number; feasible: boolean; what: string; steps: number }[]>();
  for (let week = 1; week <= Number(options.weeks); week += 1) {
    const agreed = solve(problem, { seed: week, steps: 4 * PLAN_STEPS });
    const eaten = agreed.picks.map((pick, p) => problem.positions[p]!.candidates[pick]!);
    const disruptions: [kind: string, number: number, changed: Problem][] = [
      ...[...new Set(eaten.map(({ dish }) => dish))].map((dish): [string, number, Problem] => [
        "a dish gone",
        dish,
        without(problem, agreed, (other) => other === dish),
      ]),
      ...[...new Set(agreed.batches.map(({ base }) => base))].map((base): [string, number, Problem] => [
        "a base gone",
        base,
        without(problem, agreed, (_, bases) => bases.includes(base)),
      ]),
      ...[...new Set(problem.positions.map(({ box }) => box))].map((box): [string, number, Problem] => [
        "a child away for a day",
        box,
        withoutBox(problem, agreed, box),
      ]),
    ];
    for (const [kind, number, changed] of disruptions) {
      if (changed.positions.some(({ candidates }) => candidates.length === 0)) continue;
      const began = cpuMs();
      const found = searchNear(changed, { seed: week, steps });
      const row = {
        ms: cpuMs() - began,
        feasible: found.feasible,
        what: `${number} of week ${week}`,
        steps: found.steps,
      };
      spent.set(kind, [...(spent.get(kind) ?? []), row]);
    }
  }
  printMachine();
  const rows = [...spent].map(([kind, found]) => {
    const worst = found.reduce((most, row) => (row.ms > most.ms ? row : most));
    return [
      kind,
      String(found.length),
      median(found.map(({ ms }) => ms)).toFixed(0),
      worst.ms.toFixed(0),
      worst.what,
      String(found.filter(({ feasible }) => !feasible).length),
    ];
  });
  printTable(["disruption", "replanned", "median ms", "worst", "which", "without a week"], rows);
  const all = [...spent.values()].flat().map(({ ms }) => ms);
  printHold(`replan after one disruption, load ${loadNow()}`, median(all), { atMost: 150 }, " ms");
}
