/**
 * `npm run check`: every script of package.json whose name begins with `check:`, two at a time, one line each with its
 * seconds, then the output of those that failed. `npm run check -- lint types` runs only these. Exit 1 if any failed.
 */
import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";

interface Outcome {
  readonly name: string;
  readonly passed: boolean;
  readonly output: string;
}

const prefix = "check:";
const { scripts } = JSON.parse(readFileSync("package.json", "utf8")) as { scripts: Record<string, string> };
const known = new Map(
  Object.entries(scripts).flatMap(([name, command]) =>
    name.startsWith(prefix) ? [[name.slice(prefix.length), command] as const] : [],
  ),
);
const wanted = process.argv.length > 2 ? process.argv.slice(2) : [...known.keys()];
const unknown = wanted.filter((name) => !known.has(name));
if (unknown.length > 0) {
  console.log(`No check named ${unknown.join(", ")}. There are: ${[...known.keys()].join(", ")}`);
  process.exit(1);
}

const waiting = [...wanted];
const outcomes: Outcome[] = [];
const workers = Array.from({ length: 2 }, async () => {
  for (let name = waiting.shift(); name !== undefined; name = waiting.shift())
    outcomes.push(await runCheck(name, known.get(name) ?? ""));
});
await Promise.all(workers);

const failed = outcomes.filter(({ passed }) => !passed);
for (const { name, output } of failed) console.log(`\n--- ${name}: ${known.get(name)}\n${output.trim()}`);
console.log(`\nChecks: ${outcomes.length - failed.length} passed, ${failed.length} failed`);
if (failed.length > 0) process.exitCode = 1;

/** Runs one script through the shell; npm has put node_modules/.bin on the path. Standard output and error are one text. */
async function runCheck(name: string, command: string): Promise<Outcome> {
  const started = performance.now();
  const child = spawn(command, { shell: true, stdio: ["ignore", "pipe", "pipe"] });
  let output = "";
  child.stdout.on("data", (chunk: Buffer) => (output += chunk.toString()));
  child.stderr.on("data", (chunk: Buffer) => (output += chunk.toString()));
  const passed = await new Promise<boolean>((resolve) => child.on("close", (code) => resolve(code === 0)));
  const seconds = ((performance.now() - started) / 1000).toFixed(1).padStart(6);
  // A check that passes ends with what it found: how many modules, which version it compared with.
  const finding = passed && output.trim() !== "" ? `  ${(output.trim().split("\n").at(-1) ?? "").slice(0, 90)}` : "";
  console.log(`${passed ? "ok    " : "FAILED"} ${name.padEnd(12)}${seconds} s${finding}`);
  return { name, passed, output };
}
