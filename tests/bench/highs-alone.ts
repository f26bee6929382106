/**
 * HiGHS alone on a mixed-integer program, in a process of its own: it may need more memory than a process has, and then ends without
 * an answer. Run as a program it reads the program from standard input and takes the seconds as its argument.
 */
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { loadHighs } from "../support/highs.js";
import { cpuMs } from "./machine.js";

interface HighsAnswer {
  readonly status: string;
  /** Null when no solution was met. */
  readonly objective: number | null;
  /** Of processor time. */
  readonly seconds: number;
}

const self = fileURLToPath(import.meta.url);

/** @param program in LP format */
export function askHighsAlone(program: string, seconds: number): HighsAnswer {
  const { stdout } = spawnSync(process.execPath, [...process.execArgv, self, String(seconds)], {
    encoding: "utf8",
    input: program,
  });
  return stdout.startsWith("{")
    ? (JSON.parse(stdout) as HighsAnswer)
    : { status: "ended without an answer", objective: null, seconds };
}

if (process.argv[1] === self) {
  const highs = await loadHighs();
  const program = readFileSync(0, "utf8");
  const began = cpuMs();
  const { Status, ObjectiveValue } = highs.solve(program, { time_limit: Number(process.argv[2]) });
  const objective = Number.isFinite(ObjectiveValue) ? ObjectiveValue : null;
  process.stdout.write(JSON.stringify({ status: Status, objective, seconds: (cpuMs() - began) / 1000 }));
}
