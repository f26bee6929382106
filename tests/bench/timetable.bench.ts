/**
 * npm run bench:timetable: drawn mornings of six dishes, and projects of the literature where files are given, each proven shortest
 * where the time allows, beside HiGHS alone on the time-indexed model. `-- FILE...` reads PSPLIB single-mode projects; with `--json`
 * one line of JSON a file and nothing else, 1 s each. `--mornings N --seed S`, `--no-highs`.
 */
import { readFileSync } from "node:fs";
import { basename } from "node:path";
import { parseArgs } from "node:util";
import { scheduleSessions } from "../../src/domain/kitchen/timetable.js";
import { shortenProject } from "../../src/domain/kitchen/schedule/shorten.js";
import { writeProjectProgram } from "../support/project-program.js";
import { drawMorning } from "../support/random-morning.js";
import { readProject, toProject } from "../support/read-project.js";
import { askHighsAlone } from "./highs-alone.js";
import { cpuMs, loadNow, median, printHold, printMachine, printTable, quantile } from "./machine.js";

const { values: options, positionals: files } = parseArgs({
  allowPositionals: true,
  options: {
    json: { type: "boolean", default: false },
    mornings: { type: "string", default: "1000" },
    seed: { type: "string", default: "1" },
    "no-highs": { type: "boolean", default: false },
  },
});
const PROJECT_MS = 1000;
const MORNING_MS = 50;

interface ProjectRow {
  readonly file: string;
  readonly makespan: number | null;
  readonly lowerBound: number;
  readonly proven: boolean;
  readonly ms: number;
}

const projectOf = (file: string) => toProject(readProject(readFileSync(file, "utf8")));

function proveProject(file: string): ProjectRow {
  const project = projectOf(file);
  const began = cpuMs();
  const { end, leastEnd } = shortenProject({
    project,
    knownEnd: Infinity,
    leastEnd: 0,
    deadEnds: Infinity,
    shouldStop: () => cpuMs() - began > PROJECT_MS,
  });
  return {
    file: basename(file),
    makespan: Number.isFinite(end) ? end : null,
    lowerBound: leastEnd,
    proven: leastEnd >= end,
    ms: Math.round(cpuMs() - began),
  };
}

function benchMornings(count: number, firstSeed: number): void {
  const rows = (
    [
      ["one carer", 1, false],
      ["one carer, things a child avoids", 1, true],
      ["two carers", 2, false],
      ["two carers, things a child avoids", 2, true],
    ] as const
  ).map(([name, carers, avoided]) => {
    const times: number[] = [];
    let inTime = 0;
    let proven = 0;
    for (let seed = firstSeed; seed < firstSeed + count; seed += 1) {
      const { session, equipment, work } = drawMorning(seed, 6, carers, avoided);
      const began = cpuMs();
      const result = scheduleSessions({ sessions: [session], equipment, work });
      const ms = cpuMs() - began;
      if (!result.ok) throw new Error(`morning ${seed}: ${JSON.stringify(result.error)}`);
      const timing = result.value.sessions[0]!;
      const isProven = timing.leastMinutes >= timing.lastsMinutes;
      if (isProven) proven += 1;
      if (isProven && ms <= MORNING_MS) inTime += 1;
      times.push(ms);
    }
    return { name, count, inTime, proven, times };
  });
  printTable(
    ["six dishes, three boxes", "mornings", "proven in 50 ms", "proven", "median ms", "99 %", "worst"],
    rows.map(({ name, inTime, proven, times }) => [
      name,
      String(count),
      `${((100 * inTime) / count).toFixed(1)} %`,
      `${((100 * proven) / count).toFixed(1)} %`,
      median(times).toFixed(1),
      quantile(times, 0.99).toFixed(1),
      Math.max(...times).toFixed(1),
    ]),
  );
  const all = rows.reduce((sum, row) => sum + row.inTime, 0) / rows.reduce((sum, row) => sum + row.count, 0);
  printHold("mornings of six dishes proven shortest in 50 ms", Math.round(1000 * all) / 10, { atLeast: 98 }, " %");
}

function main(): void {
  if (options.json) {
    for (const file of files) console.log(JSON.stringify(proveProject(file)));
    return;
  }
  printMachine();
  benchMornings(Number(options.mornings), Number(options.seed));
  if (files.length === 0) return;
  const rows = files.map((file) => ({
    ours: proveProject(file),
    highs: options["no-highs"] ? null : askHighsAlone(writeProjectProgram(projectOf(file)), PROJECT_MS / 1000),
  }));
  console.log(`\nprojects of 30 tasks, ${PROJECT_MS} ms each; HiGHS on the time-indexed model for as long`);
  printTable(
    ["file", "shortest found", "at least", "proven", "ms", "HiGHS", ""],
    rows.map(({ ours, highs }) => [
      ours.file,
      String(ours.makespan ?? "none"),
      String(ours.lowerBound),
      ours.proven ? "yes" : "no",
      String(ours.ms),
      highs === null ? "" : String(highs.objective ?? "none"),
      highs?.status ?? "",
    ]),
  );
  printHold("projects proven in 1 s", rows.filter(({ ours }) => ours.proven).length, { atLeast: 26 });
  console.log(`load at the end: ${loadNow()}`);
}

main();
