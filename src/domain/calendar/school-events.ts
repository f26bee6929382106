/**
 * What an event of a school's calendar file says before anybody looks at the clock: its kind, its classes, its title.
 * RFC 5545 leaves the words of CATEGORIES free; ours are TERM, HOLIDAY, EARLY-FINISH, TRIP and CLASS:name.
 */
import { nearest } from "../nearest.js";
import type { CalendarIssue, ComponentLines, ContentLine } from "./content-lines.js";
import { isCalendarDate } from "./dates.js";

export type CalendarKind = "TERM" | "HOLIDAY" | "EARLY_FINISH" | "TRIP";

export interface EventHead {
  readonly component: ComponentLines;
  readonly uid: string;
  /** Null only where it changes one day of a series and says nothing else of it. */
  readonly kind: CalendarKind | null;
  /** Names of classes; empty for the whole school. */
  readonly classes: readonly string[];
  /** Null where none is given. */
  readonly title: string | null;
  readonly cancelled: boolean;
}

const kinds: Readonly<Record<string, CalendarKind>> = {
  TERM: "TERM",
  HOLIDAY: "HOLIDAY",
  "EARLY-FINISH": "EARLY_FINISH",
  TRIP: "TRIP",
};
export const USUAL_TITLES: Readonly<Record<CalendarKind, string>> = {
  TERM: "Term",
  HOLIDAY: "Holiday",
  EARLY_FINISH: "School ends early",
  TRIP: "Trip",
};
const KIND_KEYS = Object.keys(kinds).map((word) => word.toLowerCase());
const KIND_WORDS = Object.keys(kinds).join(", ");
const CLASS = /^CLASS:(.*)$/is;
const LONGEST_TITLE = 80;
const LONGEST_UID = 255;
const FIRST_YEAR = 1970;
const LAST_YEAR = 2100;

const dateOrTime = /^(\d{4})(\d{2})(\d{2})(?:T([01]\d|2[0-3])([0-5]\d)([0-5]\d|60)Z?)?$/;
const duration = /^[+-]?P(?:\d{1,4}W|(?=[\dT])(?:\d{1,5}D)?(?:T(?=\d)(?:\d{1,6}H)?(?:\d{1,6}M)?(?:\d{1,6}S)?)?)$/;
const DATED = ["DTSTART", "DTEND", "RECURRENCE-ID", "EXDATE", "RDATE"];
const ONLY_ONCE = ["UID", "DTSTART", "DTEND", "DURATION", "SUMMARY", "STATUS", "RRULE", "RECURRENCE-ID"];

export const propertiesOf = (component: ComponentLines, name: string): readonly ContentLine[] =>
  component.properties.filter((property) => property.name === name);
/** The line a property stands on, else that of the event's BEGIN. */
export const lineOf = (component: ComponentLines, name: string): number =>
  propertiesOf(component, name)[0]?.line ?? component.line;

/** Reads the texts of one event and complains of everything in it that can be seen without a clock. */
export function readEventHead(component: ComponentLines): { head: EventHead; issues: readonly CalendarIssue[] } {
  const issues: CalendarIssue[] = [];
  const complain = (about: string, problem: string, expected: string, line = lineOf(component, about)) =>
    issues.push({ line, about, problem, expected });
  const text = (name: string) => {
    const [property] = propertiesOf(component, name);
    return property === undefined ? null : plainTextOf(property.value);
  };
  for (const name of ONLY_ONCE)
    for (const again of propertiesOf(component, name).slice(1))
      complain(name, "comes twice in one event", "one of them", again.line);

  const uid = text("UID") ?? "";
  if (uid === "") complain("UID", "is missing", "a UID of its own that never changes");
  else if (uid.length > LONGEST_UID) complain("UID", `has ${uid.length} characters`, `at most ${LONGEST_UID}`);
  if (propertiesOf(component, "DTSTART").length === 0)
    complain("DTSTART", "is missing", "the day or time at which it begins");
  if (propertiesOf(component, "DTEND").length > 0 && propertiesOf(component, "DURATION").length > 0)
    complain("DURATION", "stands beside DTEND", "one of them");
  for (const name of DATED)
    for (const property of propertiesOf(component, name))
      for (const value of property.value.split(",")) {
        const wrong = whatIsWrongWithDate(value.trim());
        if (wrong !== null) complain(name, wrong, "YYYYMMDD or YYYYMMDDTHHMMSS", property.line);
      }
  for (const { value, line } of propertiesOf(component, "DURATION")) {
    if (!duration.test(value.trim()))
      complain("DURATION", `"${value}" is no duration`, "one such as P5D or PT6H", line);
    else if (value.startsWith("-")) complain("DURATION", "is negative", "how long it lasts", line);
  }
  for (const { line, value } of propertiesOf(component, "RECURRENCE-ID"))
    if (value.includes(",")) complain("RECURRENCE-ID", "names several days", "an event for each changed day", line);

  const title = text("SUMMARY")?.replace(/\s+/g, " ").trim() ?? "";
  if (title.length > LONGEST_TITLE) complain("SUMMARY", `has ${title.length} characters`, `at most ${LONGEST_TITLE}`);
  if (/[\p{Cc}\p{Cs}]/u.test(title + uid))
    complain("SUMMARY", "holds control characters", "text without them in SUMMARY and UID");

  const words = propertiesOf(component, "CATEGORIES").flatMap(({ value, line }) =>
    textsOf(value).map((word) => ({ word, line })),
  );
  const classes: string[] = [];
  const said: CalendarKind[] = [];
  for (const { word, line } of words) {
    const ofClass = CLASS.exec(word);
    const kind = kinds[word.toUpperCase()];
    if (ofClass) classes.push((ofClass[1] ?? "").trim());
    else if (kind !== undefined) said.push(kind);
    else
      issues.push({
        line,
        about: "CATEGORIES",
        problem: `"${word}" is unknown`,
        expected: `${KIND_WORDS}, or CLASS:name for a class`,
        nearest: nearest(word, KIND_KEYS).map((key) => key.toUpperCase()),
      });
  }
  const kind = said[0] ?? null;
  const changesOneDay = propertiesOf(component, "RECURRENCE-ID").length > 0;
  if (new Set(said).size > 1) complain("CATEGORIES", `says ${said.join(" and ")}`, `one of ${KIND_WORDS}`);
  if (kind === null && !(changesOneDay && words.length === 0) && !words.some(({ word }) => !CLASS.test(word)))
    complain("CATEGORIES", "does not say what the event is", `one of ${KIND_WORDS}`);
  if (kind === "TERM" && classes.length > 0)
    complain("CATEGORIES", "gives a term to a class", "no CLASS: terms are the whole school's");
  return {
    head: {
      component,
      uid,
      kind,
      classes: [...new Set(classes)],
      title: title === "" ? null : title,
      cancelled: text("STATUS")?.toUpperCase() === "CANCELLED",
    },
    issues,
  };
}

function whatIsWrongWithDate(value: string): string | null {
  const parts = dateOrTime.exec(value);
  if (!parts) return `"${value.slice(0, 40)}" is no date or time`;
  if (!isCalendarDate(`${parts[1]}-${parts[2]}-${parts[3]}`)) return `${value} is no day of the calendar`;
  const year = Number(parts[1]);
  return year < FIRST_YEAR || year > LAST_YEAR ? `${value} is not between ${FIRST_YEAR} and ${LAST_YEAR}` : null;
}

/** Values of a list of texts: a comma within one is written \, (RFC 5545, section 3.3.11). */
const textsOf = (value: string): string[] =>
  (value.match(/(?:\\.|[^\\,])+/gs) ?? []).map((part) => plainTextOf(part).trim()).filter((part) => part !== "");
const plainTextOf = (value: string): string =>
  value.replace(/\\(.)/gs, (_, escaped: string) => (escaped === "n" || escaped === "N" ? "\n" : escaped)).trim();
