/**
 * Reads every import under src/ and shared/ of the current folder and holds it against .dependency-cruiser.cjs.
 * Exit 1 for a broken rule, and also when a source file was not read: without a usable TypeScript the cruiser reads
 * nothing at all and finds nothing wrong with it.
 */
import { existsSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { cruise } from "dependency-cruiser";
import type { ICruiseResult } from "dependency-cruiser";
import extractRules from "dependency-cruiser/config-utl/extract-depcruise-config";

const rules = await extractRules(fileURLToPath(new URL("../../.dependency-cruiser.cjs", import.meta.url)));
const rooms = ["src", "shared"].filter((room) => existsSync(room));
const sources = rooms.flatMap((room) =>
  readdirSync(room, { recursive: true, encoding: "utf8" })
    .map((file) => `${room}/${file}`)
    .filter((file) => file.endsWith(".ts") && !file.startsWith("src/database/generated/")),
);

const { output } = await cruise(rooms, { ...rules.options, validate: true, ruleSet: rules });
if (typeof output === "string") throw new Error(`The cruiser answered with text: ${output.slice(0, 200)}`);
const broken = report(output);
if (broken > 0) process.exitCode = 1;

/** Prints what is wrong and how much was read; answers how many complaints there were. */
function report({ modules, summary }: ICruiseResult): number {
  const read = new Set(modules.map(({ source }) => source));
  const unread = sources.filter((source) => !read.has(source));
  for (const { rule, from, to, cycle } of summary.violations)
    console.log(`${rule.name}: ${[from, ...(cycle?.map(({ name }) => name) ?? [to])].join(" -> ")}`);
  for (const source of unread) console.log(`not read: ${source}`);
  const count = sources.length - unread.length;
  if (count === 0) console.log("No module was read, so nothing was checked. Is TypeScript 6 installed?");
  console.log(`${count} of ${sources.length} modules read, ${summary.violations.length} broken rules`);
  return summary.violations.length + unread.length + (count === 0 ? 1 : 0);
}
