/** What `npm run rules` does with a file or a folder of rule set documents: look at each, then at all together, then load all or none. */
import { randomUUID } from "node:crypto";
import { readdirSync, readFileSync, statSync } from "node:fs";
import { extname, join } from "node:path";
import type { RuleSetDocument } from "../../shared/rule-set.js";
import type { App } from "../app/app.js";
import {
  checkRuleSet,
  knownWords,
  readRuleSetDocument,
  unreadable,
  type ReadRuleSet,
  type RuleSetCheck,
  type RuleSetPlace,
} from "../app/check-rule-set.js";
import { countImpact, type RuleImpact } from "../app/count-rules.js";
import { MOST_BYTES, type DocumentIssue } from "../app/document-text.js";
import { checkForTarget, loadRuleSet, type AdministeredOwner, type RuleTarget } from "../app/load-rule-set.js";
import { sayIssue } from "../app/say.js";
import { findNamedPlace } from "../database/rule-set.js";
import { sayFailure } from "./say-failure.js";

export const COMMANDS = ["check", "diff", "impact", "load"] as const;
export type Command = (typeof COMMANDS)[number];
const EXTENSIONS = [".json", ".yaml", ".yml"];

/** Told to the person at the keyboard as it stands. */
export class Refused extends Error {}

export interface Options {
  readonly school?: string | undefined;
  readonly class?: string | undefined;
  readonly jurisdiction?: string | undefined;
}

interface Source {
  readonly file: string;
  readonly text: string;
}

/** Told after each file: how many are done of how many. */
export type Progress = (done: number, of: number, what: string) => void;

/** One document after another, each with what is to be said of it. */
interface Looked {
  readonly source: Source;
  readonly target: RuleTarget;
  readonly check: RuleSetCheck;
  readonly seenRevision: number;
  /** Null where the document cannot be read. */
  readonly at: { readonly read: ReadRuleSet; readonly owner: AdministeredOwner; readonly place: RuleSetPlace } | null;
}

/** Undefined where there is none; a link that leads round in a circle leads nowhere. */
function kindOf(path: string) {
  try {
    return statSync(path, { throwIfNoEntry: false });
  } catch (error) {
    throw new Refused(`${path} cannot be opened: ${(error as NodeJS.ErrnoException).code}.`);
  }
}

function filesOf(path: string): string[] {
  const kind = kindOf(path);
  if (kind === undefined) throw new Refused(`There is no file or folder ${path}.`);
  if (!kind.isDirectory()) return [path];
  const files = readdirSync(path)
    .filter((name) => EXTENSIONS.includes(extname(name).toLowerCase()))
    .map((name) => join(path, name))
    .sort();
  if (files.length === 0) throw new Refused(`There is no ${EXTENSIONS.join(", ")} file in ${path}.`);
  return files;
}

function readSource(file: string): Source {
  const kind = kindOf(file);
  if (!kind?.isFile()) throw new Refused(`${file} is no file; take it out of the folder.`);
  const { size } = kind;
  // Not read at all: a file of that size is no rule set.
  if (size > MOST_BYTES)
    throw new Refused(`${file} has ${size} bytes; a rule set has at most ${MOST_BYTES}. Divide it into several.`);
  let bytes: Buffer;
  try {
    bytes = readFileSync(file);
  } catch (error) {
    throw new Refused(`${file} cannot be opened: ${(error as NodeJS.ErrnoException).code}.`);
  }
  try {
    return { file, text: new TextDecoder("utf-8", { fatal: true }).decode(bytes) };
  } catch {
    throw new Refused(`${file} is not written in UTF-8; save it again with that encoding.`);
  }
}

const lines = (issues: readonly DocumentIssue[], as: string) => issues.map((issue) => `  ${as} ${sayIssue(issue)}`);

/** Where a document is to hold: what the options say, else what it says itself. */
async function targetOf(
  app: App,
  personId: string,
  { file }: Source,
  named: RuleSetDocument,
  options: Options,
): Promise<RuleTarget> {
  const school = options.school ?? named.school;
  const jurisdiction = options.jurisdiction ?? (school === undefined ? named.jurisdiction : undefined);
  if (jurisdiction !== undefined && options.school === undefined) return { jurisdiction };
  const schoolClass = options.class ?? named.schoolClass;
  if (school === undefined)
    throw new Refused(
      `${file} says of no school or jurisdiction that it is for it; state school or jurisdiction in it, or give --school or --jurisdiction.`,
    );
  const place = await app.db.readAs(personId, (tx) => findNamedPlace(tx, school, schoolClass ?? null));
  if (place === null)
    throw new Refused(
      `${file}: there is no ${schoolClass === undefined ? "" : `class "${schoolClass}" in a `}school "${school}".`,
    );
  return {
    schoolId: place.schoolId,
    ...(place.schoolClassId === null ? {} : { schoolClassId: place.schoolClassId }),
  };
}

async function look(app: App, personId: string, source: Source, options: Options): Promise<Looked> {
  const read = readRuleSetDocument(source.text);
  if (!("document" in read)) return { source, target: {}, check: unreadable(read), seenRevision: 0, at: null };
  const target = await targetOf(app, personId, source, read.document, options);
  const checked = await app.db.readAs(personId, (tx) => checkForTarget(app, tx, target, read));
  if (!checked.ok) throw new Refused(`${source.file}: ${sayFailure(checked.error).join(" ")}`);
  const { check, owner, place } = checked.value;
  return { source, target, check, seenRevision: check.against ?? 0, at: { read, owner, place } };
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

/** Does a document of the first place hold wherever one of the second does. */
function holdsOver(one: AdministeredOwner, document: RuleSetDocument, other: NonNullable<Looked["at"]>): boolean {
  switch (one.layer) {
    case "JURISDICTION":
      return document.coversFoodFromHome && one.jurisdiction === other.place.jurisdiction;
    case "SCHOOL":
      return other.owner.layer !== "JURISDICTION" && other.owner.schoolId === one.schoolId;
    case "CLASS":
      return other.owner.layer === "CLASS" && other.owner.schoolClassId === one.schoolClassId;
  }
}

/** Each document again, beside what the others in the folder will have put in force: what clashes then must not be half loaded. */
function checkTogether(app: App, looked: readonly Looked[]): Looked[] {
  return looked.map((one): Looked => {
    const { at, check } = one;
    if (at === null || check.document === null || check.errors.length > 0) return one;
    const beside = looked.flatMap((other) =>
      other !== one && other.at && other.check.document && holdsOver(other.at.owner, other.check.document, at)
        ? [other.check.document]
        : [],
    );
    if (beside.length === 0) return one;
    const replaced = (document: RuleSetDocument) =>
      beside.some(({ key, layer }) => key === document.key && layer === document.layer);
    const classes = at.place.classes.map(({ breakKeys, others }) => ({
      breakKeys,
      others: [...others.filter((document) => !replaced(document)), ...beside],
    }));
    return { ...one, check: checkRuleSet(at.read, knownWords(app), { ...at.place, classes }) };
  });
}

/** @returns what is to be said, and whether all went well */
export async function runRules(
  app: App,
  command: Command,
  path: string,
  subject: string,
  options: Options,
  show: Progress = () => undefined,
): Promise<{ readonly report: readonly string[]; readonly done: boolean }> {
  const files = filesOf(path);
  const personId = await app.db.knownPerson(subject);
  if (personId === null) throw new Refused(`Nobody has signed in as "${subject}" yet.`);
  const report: string[] = [];
  const alone: Looked[] = [];
  let broken = 0;
  for (const [at, file] of files.entries()) {
    try {
      alone.push(await look(app, personId, readSource(file), options));
    } catch (error) {
      if (!(error instanceof Refused)) throw error;
      broken += 1;
      report.push(error.message);
    }
    show(at + 1, files.length, "checked");
  }
  const looked = checkTogether(app, alone);
  for (const one of looked) {
    const { errors, warnings, document } = one.check;
    broken += errors.length > 0 ? 1 : 0;
    const title = document
      ? `${document.key} version ${document.version}, from ${document.inForceFrom}`
      : "cannot be read";
    if (files.length === 1 || errors.length + warnings.length > 0 || command === "diff")
      report.push(`${one.source.file}: ${title}`, ...lines(errors, "wrong:"), ...lines(warnings, "odd:"));
    if (command === "diff") report.push(...sayDifference(one));
  }
  const twice = checkTwice(looked);
  report.push(...twice);
  if (broken + twice.length > 0) {
    report.push(`${broken + twice.length} of ${files.length} cannot be loaded. Nothing was loaded.`);
    return { report, done: false };
  }
  if (command === "impact") report.push(...(await impactOf(app, personId, looked, show)));
  if (command === "load") report.push(...(await loadAll(app, personId, looked, show)));
  if (command === "check") report.push(`${files.length === 1 ? "It" : `All ${files.length}`} can be loaded.`);
  return { report, done: true };
}

async function impactOf(app: App, personId: string, looked: readonly Looked[], show: Progress): Promise<string[]> {
  const report: string[] = [];
  for (const [at, { source, target }] of looked.entries()) {
    const counted = await countImpact(app, personId, {
      ...target,
      idempotencyKey: randomUUID(),
      document: source.text,
    });
    report.push(source.file, ...(counted.ok ? sayImpact(counted.value) : sayFailure(counted.error)));
    show(at + 1, looked.length, "counted");
  }
  return report;
}

async function loadAll(app: App, personId: string, looked: readonly Looked[], show: Progress): Promise<string[]> {
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
        `${source.file}: ${sayFailure(done.error).join(" ")} ${at} before it are loaded; repeat the command.`,
      );
    counts[done.value.unchanged ? "unchanged" : "loaded"] += 1;
    show(at + 1, looked.length, "loaded");
  }
  return [`${counts.loaded} loaded, ${counts.unchanged} there already.`];
}
