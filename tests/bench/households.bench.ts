/**
 * npm run bench:households: plans the week of drawn households, then the same week again after something happened, and holds
 * every planned week against the independent checker. Options: `-- --count N --seed S --steps N`, `--json` for one line of JSON.
 * A fault, a throw or a refusal without a reason is a bug: it is printed with the seed of the household, and the exit code is 1.
 */
import { parseArgs } from "node:util";
import type { WeekBrief } from "../../src/domain/brief.js";
import { planAndCheck, type Judged } from "../support/judge-household.js";
import { drawDisruption, drawHousehold } from "../support/random-household.js";
import { loadNow, median, printMachine, printTable, quantile } from "./machine.js";

const { values: options } = parseArgs({
  options: {
    count: { type: "string", default: "2000" },
    seed: { type: "string", default: "1" },
    steps: { type: "string", default: "8000" },
    json: { type: "boolean", default: false },
  },
});
const [count, firstSeed, steps] = ([options.count, options.seed, options.steps] as const).map((text) => {
  const value = Number(text);
  if (!Number.isInteger(value) || value < 0) throw new RangeError(`not a whole number: ${text}`);
  return value;
}) as [number, number, number];

interface Tally {
  readonly name: string;
  readonly planned: Judged[];
  readonly infeasible: Judged[];
  /** Weeks in which a kind of conflict, or of fault, comes up. */
  readonly reasons: Map<string, number>;
  readonly faults: Map<string, number>;
  throws: number;
}
const tallyOf = (name: string): Tally => ({
  name,
  planned: [],
  infeasible: [],
  reasons: new Map(),
  faults: new Map(),
  throws: 0,
});
const fresh = tallyOf("a fresh week");
const again = tallyOf("after a disruption");
const addOnce = (counts: Map<string, number>, keys: readonly string[]) => {
  for (const key of new Set(keys)) counts.set(key, (counts.get(key) ?? 0) + 1);
};
/** What went wrong, with the seed that shows it again. */
const bugs: string[] = [];

/** @param about what the household has met, for the reasons; "" for a fresh week */
function judge(tally: Tally, brief: WeekBrief, seed: number, about: string): Judged | null {
  const bug = (what: string) => {
    bugs.push(`household ${seed}, ${tally.name}: ${what}`);
    process.stderr.write(`${bugs.at(-1)!}\n`);
  };
  let judged: Judged;
  try {
    judged = planAndCheck(brief, seed, steps);
  } catch (error) {
    tally.throws += 1;
    bug(error instanceof Error ? (error.stack ?? error.message) : String(error));
    return null;
  }
  const { outcome, faults } = judged;
  if (outcome.kind === "INFEASIBLE") {
    tally.infeasible.push(judged);
    const kinds = outcome.conflicts.map(({ kind }) => kind);
    addOnce(
      tally.reasons,
      kinds.map((kind) => `${about}${kind}`),
    );
    if (kinds.length === 0) bug("no week, and no reason named");
    return judged;
  }
  tally.planned.push(judged);
  const kinds = faults.map(({ kind }) => kind);
  addOnce(tally.faults, kinds);
  if (kinds.length > 0) bug(`${new Set(kinds).size} kinds of fault, first ${JSON.stringify(faults.slice(0, 3))}`);
  return judged;
}

/** How often each thing happened. */
const met = new Map<string, number>();
const began = performance.now();
for (let at = 0; at < count; at += 1) {
  const seed = (firstSeed + at) >>> 0;
  const brief = drawHousehold(seed);
  const judged = judge(fresh, brief, seed, "");
  if (judged?.outcome.kind === "PLANNED") {
    const { kind, brief: later } = drawDisruption(brief, judged.outcome.draft, seed);
    addOnce(met, [kind]);
    judge(again, later, seed, `${kind}: `);
  }
  if ((at + 1) % 100 === 0)
    process.stderr.write(`${at + 1} households after ${((performance.now() - began) / 1000).toFixed(0)} s\n`);
}

const tallies = [fresh, again];
if (options.json) {
  const rows = tallies.map(({ name, planned, infeasible, throws, reasons, faults }) => ({
    name,
    planned: planned.length,
    infeasible: infeasible.length,
    throws,
    reasons: Object.fromEntries(reasons),
    faults: Object.fromEntries(faults),
  }));
  console.log(JSON.stringify({ count, firstSeed, steps, weeks: rows, bugs }));
} else printReport();
process.exitCode = bugs.length > 0 ? 1 : 0;

function printReport(): void {
  printMachine();
  console.log(`${count} households from seed ${firstSeed}, ${steps} steps a search, load ${loadNow()} at the end`);
  printTable(
    ["week", "planned", "no week", "throws", "with faults", "plan ms median", "p95", "slowest", "check ms median"],
    tallies.map((tally) => {
      const ms = [...tally.planned, ...tally.infeasible].map((one) => one.planMs);
      return [
        tally.name,
        String(tally.planned.length),
        String(tally.infeasible.length),
        String(tally.throws),
        String(tally.planned.filter((one) => one.faults.length > 0).length),
        median(ms).toFixed(0),
        quantile(ms, 0.95).toFixed(0),
        quantile(ms, 1).toFixed(0),
        median(tally.planned.map((one) => one.checkMs)).toFixed(1),
      ];
    }),
  );
  const sorted = (counts: Map<string, number>) => [...counts].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  const kinds = tallies.flatMap((tally) => [
    ...sorted(tally.reasons).map(([kind, weeks]) => [`${tally.name}, no week: ${kind}`, String(weeks)]),
    ...sorted(tally.faults).map(([kind, weeks]) => [`${tally.name}, FAULT: ${kind}`, String(weeks)]),
  ]);
  printTable(["a week may name several", "weeks"], kinds);
  console.log(
    `happened: ${sorted(met)
      .map(([kind, times]) => `${kind} ${times}`)
      .join(", ")}`,
  );
}
