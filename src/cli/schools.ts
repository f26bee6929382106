/**
 * npm run schools -- appoint SUBJECT --jurisdiction NAME | --school NAME
 *   the operator appoints the first administrator, on the owner's connection
 * npm run schools -- calendar FILE --school NAME --as SUBJECT [--check]
 *   an administrator loads a school's iCalendar file; with --check it only says what would change
 */
import { randomUUID } from "node:crypto";
import { readFileSync, statSync } from "node:fs";
import { parseArgs } from "node:util";
import type { App } from "../app/app.js";
import { calendarChange, loadCalendar, type CalendarOffer } from "../app/load-calendar.js";
import { MOST_CALENDAR_CHARACTERS } from "../app/read-icalendar.js";
import { sayIssue } from "../app/say.js";
import { readConfig } from "../config.js";
import { appointByOperator } from "../database/appoint-by-operator.js";
import { findSchoolByName } from "../database/school.js";
import { openDatabase } from "../database/start.js";
import type { CalendarEntry } from "../domain/calendar/school-calendar.js";
import { openApp } from "../open-app.js";
import { sayFailure } from "./say-failure.js";

const USAGE = `Use one of
  npm run schools -- appoint SUBJECT --jurisdiction NAME | --school NAME
  npm run schools -- calendar FILE --school NAME --as SUBJECT [--check]`;
/** A character of UTF-8 takes at most four bytes. */
const MOST_BYTES = 4 * MOST_CALENDAR_CHARACTERS;

/** Told to the person at the keyboard as it stands. */
class Refused extends Error {}

async function appoint(subject: string, to: { readonly schoolName: string } | { readonly jurisdiction: string }) {
  const config = readConfig();
  if (config.databaseUrl !== null && config.databaseOwnerUrl === null)
    throw new Refused("Set DATABASE_OWNER_URL beside DATABASE_URL: the server's own role may not appoint.");
  const opened = await openDatabase({
    databaseUrl: config.databaseUrl,
    ownerUrl: config.databaseOwnerUrl,
    dataDirectory: config.dataDir,
  });
  try {
    const done = await appointByOperator(opened.ownerUrl!, subject, to);
    const place = "schoolName" in to ? to.schoolName : to.jurisdiction;
    switch (done.kind) {
      case "APPOINTED":
        return console.log(`${done.displayName} (${subject}) now administers ${place}.`);
      case "APPOINTED_BEFORE":
        return console.log(`${done.displayName} (${subject}) was appointed to ${place} before.`);
      case "NO_SUCH_PERSON":
        throw new Refused(`Nobody has signed in as "${subject}" yet. Let the person sign in once, then repeat this.`);
      case "NO_SUCH_SCHOOL":
        throw new Refused(`There is no school "${place}". A jurisdiction's administrator adds it with registerSchool.`);
    }
  } finally {
    await opened.stop();
  }
}

interface CalendarFile {
  readonly file: string;
  readonly schoolName: string;
  readonly subject: string;
  readonly check: boolean;
}

async function loadFile({ file, schoolName, subject, check }: CalendarFile) {
  const calendar = textOf(file);
  const { app, stop } = await openApp({ ...readConfig(), boundSeconds: 0 }, undefined, { ready: false, join: true });
  try {
    const personId = await app.db.knownPerson(subject);
    if (personId === null) throw new Refused(`Nobody has signed in as "${subject}" yet.`);
    const schoolId = await idOfSchool(app, personId, schoolName);
    const offer = await calendarChange(app, personId, { schoolId, calendar });
    if (!offer.ok) throw new Refused(sayFailure(offer.error).join("\n"));
    const lines = sayChange(offer.value);
    if (check) {
      console.log([...lines, "Nothing was stored. Leave --check out to load it."].join("\n"));
      return;
    }
    const { seenRevision } = offer.value;
    const loaded = await loadCalendar(app, personId, {
      idempotencyKey: randomUUID(),
      schoolId,
      seenRevision,
      calendar,
    });
    if (!loaded.ok) throw new Refused(sayFailure(loaded.error).join("\n"));
    console.log([...lines, `Loaded for ${schoolName}; boxes that are not eaten yet were checked again.`].join("\n"));
  } finally {
    await stop();
  }
}

/** A file that is too large is not even opened. */
function textOf(file: string): string {
  const found = statSync(file, { throwIfNoEntry: false });
  if (!found?.isFile()) throw new Refused(`There is no file ${file}.`);
  if (found.size > MOST_BYTES)
    throw new Refused(
      `${file} has ${found.size} bytes; a calendar has at most ${MOST_CALENDAR_CHARACTERS} characters.`,
    );
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(readFileSync(file));
  } catch {
    throw new Refused(`${file} is not UTF-8 text.`);
  }
}

async function idOfSchool(app: App, personId: string, name: string): Promise<string> {
  const found = await app.db.readAs(personId, (tx) => findSchoolByName(tx, name));
  if (found === null) throw new Refused(`There is no school "${name}".`);
  return found;
}

function sayChange({ classes, added, changed, removed, unchanged, setByHand, warnings }: CalendarOffer): string[] {
  const sayEntry = ({ kind, title, firstDay, lastDay, endsAt, schoolClassId }: CalendarEntry): string =>
    [
      kind.toLowerCase().replace("_", " "),
      firstDay === lastDay ? firstDay : `${firstDay} to ${lastDay}`,
      ...(endsAt === null ? [] : [`at ${endsAt}`]),
      title,
      ...classes.flatMap(({ id, name }) => (id === schoolClassId ? [`(${name})`] : [])),
    ].join(" ");
  const list = (title: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : [`${title} (${lines.length})`, ...lines.map((line) => `  ${line}`)];
  return [
    ...list("Added", added.map(sayEntry)),
    ...list(
      "Changed",
      changed.map(({ before, after }) => `${sayEntry(before)} -> ${sayEntry(after)}`),
    ),
    ...list("Removed", removed.map(sayEntry)),
    ...list("Left as set by hand", setByHand.map(sayEntry)),
    ...list("Look at", warnings.map(sayIssue)),
    `${unchanged} unchanged.`,
  ];
}

async function run(): Promise<void> {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      jurisdiction: { type: "string" },
      school: { type: "string" },
      as: { type: "string" },
      check: { type: "boolean", default: false },
    },
  });
  const [command, what] = positionals;
  const { jurisdiction, school, as: subject, check } = values;
  if (command === "appoint" && what !== undefined && (jurisdiction === undefined) !== (school === undefined))
    return appoint(what, school === undefined ? { jurisdiction: jurisdiction! } : { schoolName: school });
  if (command === "calendar" && what !== undefined && school !== undefined && subject !== undefined)
    return loadFile({ file: what, schoolName: school, subject, check });
  throw new Refused(USAGE);
}

run().catch((error: unknown) => {
  const plain = error instanceof Refused || (error instanceof TypeError && "code" in error);
  console.error(plain ? error.message : error);
  process.exitCode = 1;
});
