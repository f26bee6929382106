/**
 * npm run rules -- check|diff|impact|load FILE|FOLDER --as SUBJECT [--school NAME [--class NAME] | --jurisdiction NAME]
 *   check   every complaint about the document, with its line
 *   diff    what it changes in the version that is there
 *   impact  what agreed weeks would break from the day it begins, as numbers
 *   load    check, then load as a new version; of a folder all or none
 * npm run rules -- format    the format as JSON Schema
 * A document names its own school, class or jurisdiction, or the options do. Runs beside a server on the same data folder too.
 * Ends with 1 when something was wrong.
 */
import { parseArgs } from "node:util";
import { ruleSetJsonSchema } from "../app/document-shape.js";
import { readConfig } from "../config.js";
import { openApp } from "../open-app.js";
import { COMMANDS, Refused, runRules } from "./rule-files.js";

const USAGE = `Use one of
  npm run rules -- check  FILE|FOLDER --as SUBJECT [--school NAME [--class NAME] | --jurisdiction NAME]
  npm run rules -- diff   FILE|FOLDER --as SUBJECT ...
  npm run rules -- impact FILE|FOLDER --as SUBJECT ...
  npm run rules -- load   FILE|FOLDER --as SUBJECT ...
  npm run rules -- format`;

const WIDTH = 30;
/** A bar where somebody looks on, nothing in a log. */
function showBar(done: number, of: number, what: string): void {
  if (!process.stderr.isTTY || of < 2) return;
  const full = Math.round((WIDTH * done) / of);
  process.stderr.write(`\r[${"#".repeat(full)}${".".repeat(WIDTH - full)}] ${done} of ${of} ${what}   `);
  if (done === of) process.stderr.write("\n");
}

async function main(): Promise<void> {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      as: { type: "string" },
      school: { type: "string" },
      class: { type: "string" },
      jurisdiction: { type: "string" },
    },
  });
  const [command, path, ...rest] = positionals;
  if (command === "format") return console.log(JSON.stringify(ruleSetJsonSchema(), null, 2));
  const known = COMMANDS.find((name) => name === command);
  if (known === undefined || path === undefined || rest.length > 0 || values.as === undefined) throw new Refused(USAGE);
  const { app, stop } = await openApp({ ...readConfig(), boundSeconds: 0 }, undefined, { ready: false, join: true });
  try {
    const { report, done } = await runRules(app, known, path, values.as, values, showBar);
    console.log(report.join("\n"));
    if (!done) process.exitCode = 1;
  } finally {
    await stop();
  }
}

try {
  await main();
} catch (error) {
  const isUsage = error instanceof TypeError && (error as NodeJS.ErrnoException).code?.startsWith("ERR_PARSE_ARGS");
  if (!(error instanceof Refused) && !isUsage) throw error;
  console.error(isUsage ? `${error.message}\n${USAGE}` : error.message);
  process.exitCode = 1;
}
