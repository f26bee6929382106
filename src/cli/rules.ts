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
import { randomUUID } from "node:crypto";
import { readdirSync, readFileSync, statSync } from "node:fs";
import { extname, join } from "node:path";
import { parseArgs } from "node:util";
import type { RuleSetDocument } from "../../shared/rule-set.js";
import type { App } from "../app/app.js";
import { readRuleSetDocument, type RuleSetCheck } from "../app/check-rule-set.js";
import { countImpact, type RuleImpact } from "../app/count-rules.js";
import { ruleSetJsonSchema } from "../app/document-shape.js";
import { MOST_BYTES, type DocumentIssue } from "../app/document-text.js";
import { checkForTarget, loadRuleSet, type RuleTarget } from "../app/load-rule-set.js";
import { sayIssue } from "../app/say.js";
import { readConfig } from "../config.js";
import { findNamedPlace } from "../database/rule-set.js";
import { explain } from "../graphql/explain.js";
import { openApp } from "../open-app.js";

const USAGE = `Use one of
  npm run rules -- check  FILE|FOLDER --as SUBJECT [--school NAME [--class NAME] | --jurisdiction NAME]
  npm run rules -- diff   FILE|FOLDER --as SUBJECT ...
  npm run rules -- impact FILE|FOLDER --as SUBJECT ...
  npm run rules -- load   FILE|FOLDER --as SUBJECT ...
  npm run rules -- format`;
const COMMANDS = ["check", "diff", "impact", "load"] as const;
type Command = (typeof COMMANDS)[number];
const EXTENSIONS = [".json", ".yaml", ".yml"];

/** Told to the person at the keyboard as it stands. */
class Refused extends Error {}

interface Options {
  readonly school?: string | undefined;
  readonly class?: string | undefined;
  readonly jurisdiction?: string | undefined;
}

interface Source {
  readonly file: string;
  readonly text: string;
}

/** One document after another, each with what is to be said of it. */
interface Looked {
  readonly source: Source;
  readonly target: RuleTarget;
  readonly check: RuleSetCheck;
  readonly seenRevision: number;
}

function filesOf(path: string): string[] {
  const kind = statSync(path, { throwIfNoEntry: false });
  if (kind === undefined) throw new Refused(`There is no file or folder ${path}.`);
  if (!kind.isDirectory()) return [path];
  const files = readdirSync(path, { withFileTypes: true })
    .filter((entry) => entry.isFile() && EXTENSIONS.includes(extname(entry.name).toLowerCase()))
    .map((entry) => join(path, entry.name))
    .sort();
  if (files.length === 0) throw new Refused(`There is no ${EXTENSIONS.join(", ")} file in ${path}.`);
  return files;
}

function readSource(file: string): Source {
  const { size } = statSync(file);
  // Not read at all: a file of that size is no rule set.
  if (size > MOST_BYTES)
    throw new Refused(`${file} has ${size} bytes; a rule set has at most ${MOST_BYTES}. Divide it into several.`);
  return { file, text: readFileSync(file, "utf8") };
}

const lines = (issues: readonly DocumentIssue[], as: string) => issues.map((issue) => `  ${as} ${sayIssue(issue)}`);

/** Where a document is to hold: what the options say, else what it says itself. */
async function targetOf(app: App, personId: string, source: Source, options: Options): Promise<RuleTarget> {
  const read = readRuleSetDocument(source.text);
  const named: Partial<RuleSetDocument> = "document" in read ? read.document : {};
  const school = options.school ?? named.school;
  const jurisdiction = options.jurisdiction ?? (school === undefined ? named.jurisdiction : undefined);
  if (jurisdiction !== undefined && options.school === undefined) return { jurisdiction };
  const schoolClass = options.class ?? named.schoolClass;
  if (school === undefined)
    throw new Refused(
      `${source.file} says of no school or jurisdiction that it is for it; state school or jurisdiction in it, or give --school or --jurisdiction.`,
    );
  const session = app.db.openRead(personId);
  try {
    const place = await session.read((tx) => findNamedPlace(tx, school, schoolClass ?? null));
    if (place === null)
      throw new Refused(
        `${source.file}: there is no ${schoolClass === undefined ? "" : `class "${schoolClass}" in a `}school "${school}".`,
      );
    return {
      schoolId: place.schoolId,
      ...(place.schoolClassId === null ? {} : { schoolClassId: place.schoolClassId }),
    };
  } finally {
    await session.close();
  }
}

async function look(app: App, personId: string, source: Source, options: Options): Promise<Looked> {
  const read = readRuleSetDocument(source.text);
  if (!("document" in read)) {
    const check: RuleSetCheck = {
      document: null,
      errors: read,
      warnings: [],
      against: null,
      difference: null,
      unchanged: false,
    };
    return { source, target: {}, check, seenRevision: 0 };
  }
  const target = await targetOf(app, personId, source, options);
  const session = app.db.openRead(personId);
  try {
    const checked = await session.read((tx) => checkForTarget(app, tx, target, source.text));
    if (!checked.ok) throw new Refused(`${source.file}: ${explain(checked.error).message}`);
    const { check } = checked.value;
    return { source, target, check, seenRevision: check.against ?? 0 };
  } finally {
    await session.close();
  }
}

/** A bar where somebody looks on, nothing in a log. */
function progress(of: number): (done: number, what: string) => void {
  if (!process.stderr.isTTY || of < 2) return () => undefined;
  const width = 30;
  return (done, what) => {
    const full = Math.round((width * done) / of);
    process.stderr.write(`\r[${"#".repeat(full)}${".".repeat(width - full)}] ${done} of ${of} ${what}   `);
    if (done === of) process.stderr.write("\n");
  };
}

function sayDifference({ check }: Looked): string[] {
  const { difference, against, unchanged, document } = check;
  if (!difference || !document) return [];
  if (unchanged) return ["  says what is loaded already"];
  return [
    against === null ? "  new here" : `  compared with version ${against}:`,
    ...difference.fields.map(
      ({ field, before, after }) => `    ${field}: ${before ?? "nothing"} -> ${after ?? "nothing"}`,
    ),
    ...difference.rules.flatMap((change) => {
      const mark = { ADDED: "+", REMOVED: "-", CHANGED: "~" }[change.kind];
      const head = `    ${mark} ${change.rule.id}: ${change.rule.says}`;
      return change.kind === "CHANGED"
        ? [
            head,
            ...change.fields.map(
              ({ field, before, after }) => `        ${field}: ${before ?? "nothing"} -> ${after ?? "nothing"}`,
            ),
          ]
        : [head];
    }),
  ];
}

const few = (count: number | null) => (count === null ? "fewer than 5" : String(count));

function sayImpact(impact: RuleImpact): string[] {
  const all = impact.counts.find(({ rule }) => rule === null);
  return [
    `  agreed weeks from ${impact.from} to ${impact.until}: of ${few(all?.held ?? null)} boxes ${few(all?.boxes ?? null)} would break it, of ${few(all?.children ?? null)} children in ${few(all?.weeks ?? null)} weeks`,
    ...impact.counts.flatMap(({ rule, boxes, children }) =>
      rule === null || boxes === null ? [] : [`    ${rule}: ${boxes} boxes of ${few(children)} children`],
    ),
    ...(impact.notCounted.length > 0 ? [`    not counted: ${impact.notCounted.join(", ")}`] : []),
  ];
}

/** Twice the same document in one folder is a mistake of whoever filled it. */
function checkTwice(looked: readonly Looked[]): string[] {
  const first = new Map<string, string>();
  return looked.flatMap(({ source, target, check }) => {
    if (check.document === null) return [];
    const name = JSON.stringify([target, check.document.key]);
    const before = first.get(name);
    first.set(name, before ?? source.file);
    return before === undefined ? [] : [`${source.file} is for the same rule set as ${before}.`];
  });
}

async function run(command: Command, path: string, subject: string, options: Options): Promise<boolean> {
  const files = filesOf(path);
  const { app, stop } = await openApp({ ...readConfig(), boundSeconds: 0 }, undefined, { ready: false, join: true });
  try {
    const personId = await app.db.knownPerson(subject);
    if (personId === null) throw new Refused(`Nobody has signed in as "${subject}" yet.`);
    const report: string[] = [];
    const looked: Looked[] = [];
    let broken = 0;
    const show = progress(files.length);
    for (const [at, file] of files.entries()) {
      try {
        const one = await look(app, personId, readSource(file), options);
        looked.push(one);
        const { errors, warnings, document } = one.check;
        broken += errors.length > 0 ? 1 : 0;
        const title = document
          ? `${document.key} version ${document.version}, from ${document.inForceFrom}`
          : "cannot be read";
        if (files.length === 1 || errors.length + warnings.length > 0 || command === "diff")
          report.push(`${file}: ${title}`, ...lines(errors, "wrong:"), ...lines(warnings, "odd:"));
        if (command === "diff") report.push(...sayDifference(one));
      } catch (error) {
        if (!(error instanceof Refused)) throw error;
        broken += 1;
        report.push(error.message);
      }
      show(at + 1, "checked");
    }
    const twice = checkTwice(looked);
    report.push(...twice);
    if (broken + twice.length > 0) {
      report.push(`${broken + twice.length} of ${files.length} cannot be loaded. Nothing was loaded.`);
      console.log(report.join("\n"));
      return false;
    }
    if (command === "impact") report.push(...(await impactOf(app, personId, looked)));
    if (command === "load") report.push(...(await loadAll(app, personId, looked)));
    if (command === "check") report.push(`${files.length === 1 ? "It" : `All ${files.length}`} can be loaded.`);
    console.log(report.join("\n"));
    return true;
  } finally {
    await stop();
  }
}

async function impactOf(app: App, personId: string, looked: readonly Looked[]): Promise<string[]> {
  const report: string[] = [];
  const show = progress(looked.length);
  for (const [at, { source, target }] of looked.entries()) {
    const counted = await countImpact(app, personId, {
      ...target,
      idempotencyKey: randomUUID(),
      document: source.text,
    });
    report.push(source.file, ...(counted.ok ? sayImpact(counted.value) : [`  ${explain(counted.error).message}`]));
    show(at + 1, "counted");
  }
  return report;
}

async function loadAll(app: App, personId: string, looked: readonly Looked[]): Promise<string[]> {
  const show = progress(looked.length);
  const counts = { loaded: 0, unchanged: 0 };
  for (const [at, { source, target, seenRevision }] of looked.entries()) {
    const done = await loadRuleSet(app, personId, {
      ...target,
      idempotencyKey: randomUUID(),
      seenRevision,
      document: source.text,
    });
    // Only somebody who loads the same at the same time comes in between; what was loaded before it stands and is skipped next time.
    if (!done.ok)
      throw new Refused(
        `${source.file}: ${explain(done.error).message} ${at} before it are loaded; repeat the command.`,
      );
    counts[done.value.unchanged ? "unchanged" : "loaded"] += 1;
    show(at + 1, "loaded");
  }
  return [`${counts.loaded} loaded, ${counts.unchanged} there already.`];
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
  if (!(await run(known, path, values.as, values))) process.exitCode = 1;
}

try {
  await main();
} catch (error) {
  const isUsage = error instanceof TypeError && (error as NodeJS.ErrnoException).code?.startsWith("ERR_PARSE_ARGS");
  if (!(error instanceof Refused) && !isUsage) throw error;
  console.error(isUsage ? `${error.message}\n${USAGE}` : error.message);
  process.exitCode = 1;
}
