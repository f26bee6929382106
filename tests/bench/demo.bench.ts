/**
 * npm run bench:demo: `npm run demo` on an empty data folder and again on the same one. With `-- --clone` also what a newcomer
 * waits for: clone, `npm ci` and the printed week; that takes a minute or two and writes to the package cache.
 */
import { execFileSync, spawn } from "node:child_process";
import { rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { makeScratchDirectory } from "../../src/database/embedded.js";
import { loadNow, median, printHold, printMachine } from "./machine.js";

const root = fileURLToPath(new URL("../..", import.meta.url));
const say = (line: string) => process.stderr.write(`${line}\n`);
const seconds = (since: number) => (performance.now() - since) / 1000;
const clone = process.argv.includes("--clone");
const TIMES = 3;

/** Runs `npm run demo` and returns its seconds; progress passes through. @throws when it prints no week of two homes */
async function timeDemo(project: string, dataDir: string): Promise<number> {
  const began = performance.now();
  const child = spawn("npm", ["run", "-s", "demo"], {
    cwd: project,
    env: { ...process.env, DATA_DIR: dataDir },
    stdio: ["ignore", "pipe", "inherit"],
  });
  let printed = "";
  child.stdout.setEncoding("utf8").on("data", (text: string) => (printed += text));
  const code = await new Promise<number | null>((resolve) => child.once("close", resolve));
  const took = seconds(began);
  if (code !== 0 || !printed.includes("SEE IT SERVED"))
    throw new Error(`the demo ended with ${code}:\n${printed.slice(-500)}`);
  return took;
}

const scratch = makeScratchDirectory();
try {
  const first: number[] = [];
  const second: number[] = [];
  for (let time = 1; time <= TIMES; time += 1) {
    const dataDir = join(scratch, `data-${time}`);
    first.push(await timeDemo(root, dataDir));
    second.push(await timeDemo(root, dataDir));
    say(`${time} of ${TIMES}: ${first.at(-1)!.toFixed(1)} s, then ${second.at(-1)!.toFixed(1)} s; load ${loadNow()}`);
  }
  let fresh: { cloned: number; installed: number; printed: number } | null = null;
  if (clone) {
    const project = join(scratch, "clone");
    const began = performance.now();
    execFileSync("git", ["clone", "--quiet", root, project], { stdio: ["ignore", 2, 2] });
    const cloned = seconds(began);
    execFileSync("npm", ["ci", "--no-audit", "--no-fund", "--loglevel=error"], {
      cwd: project,
      stdio: ["ignore", 2, 2],
    });
    const installed = seconds(began);
    await timeDemo(project, join(scratch, "clone-data"));
    fresh = { cloned, installed, printed: seconds(began) };
  }
  printMachine();
  printHold(`npm run demo on an empty data folder, median of ${TIMES}:`, median(first), { atMost: 12 }, " s");
  printHold(`npm run demo again, median of ${TIMES}:`, median(second), { atMost: 5 }, " s");
  if (fresh) {
    console.log(`cloned after ${fresh.cloned.toFixed(1)} s, installed after ${fresh.installed.toFixed(1)} s`);
    printHold("from clone to the printed week", fresh.printed, { atMost: 150 }, " s");
  }
} finally {
  rmSync(scratch, { recursive: true, force: true });
}
