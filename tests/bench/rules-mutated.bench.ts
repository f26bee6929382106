/**
 * npm run bench:rules-mutated: ten thousand spoiled copies of the rule sets that are shipped, each checked as a loader checks it.
 * Prints how many could be loaded, how many were refused and why, and the slowest. `--copies N`, `--seed S`. Ends with 1 on a crash.
 */
import { performance } from "node:perf_hooks";
import { parseArgs } from "node:util";
import { checkRuleSet, readRuleSetDocument } from "../../src/app/check-rule-set.js";
import { place, seedWords } from "../support/rule-documents.js";
import { seedDocuments, spoil } from "../support/spoiled-documents.js";
import { printMachine } from "./machine.js";

const { values: options } = parseArgs({
  options: { copies: { type: "string", default: "10000" }, seed: { type: "string", default: "1" } },
});
const copies = Number(options.copies);
const first = Number(options.seed) * copies;
const words = seedWords();

const count = { loadable: 0, "refused for what they say": 0, "refused for how they are written": 0, crashed: 0 };
let slowest = { milliseconds: 0, of: "" };
let total = 0;
printMachine();
for (let seed = first; seed < first + copies; seed += 1) {
  const { name, text } = seedDocuments[seed % seedDocuments.length]!;
  const spoiled = spoil(text, seed);
  const layer = (JSON.parse(text) as { layer: "SCHOOL" }).layer;
  const start = performance.now();
  try {
    const { document, errors } = checkRuleSet(readRuleSetDocument(spoiled), words, { ...place, layer });
    const lines = spoiled.split("\n").length;
    if (errors.some(({ line }) => line < 1 || line > lines)) throw new Error("a complaint lies outside the text");
    if (errors.length === 0) count.loadable += 1;
    else if (document !== null || errors.some(({ path }) => path !== "")) count["refused for what they say"] += 1;
    else count["refused for how they are written"] += 1;
  } catch (error) {
    count.crashed += 1;
    console.log(`${name}, seed ${seed}: ${error instanceof Error ? error.message : String(error)}`);
  }
  const milliseconds = performance.now() - start;
  total += milliseconds;
  if (milliseconds > slowest.milliseconds) slowest = { milliseconds, of: `${name}, seed ${seed}` };
}
for (const [what, many] of Object.entries(count)) console.log(`${String(many).padStart(8)} ${what}`);
console.log(
  `${(total / copies).toFixed(1)} ms on average; the slowest ${slowest.milliseconds.toFixed(0)} ms (${slowest.of})`,
);
if (count.crashed > 0) process.exitCode = 1;
