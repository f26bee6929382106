/** From the events of a calendar file to a school's terms and days, beside what stands there already. */
import { nearest } from "../nearest.js";
import { fail, ok, type Result } from "../result.js";
import type { CalendarIssue } from "./content-lines.js";
import { addDays, daysBetween } from "./dates.js";
import type { CalendarKind } from "./school-events.js";

export type DayKind = Exclude<CalendarKind, "TERM">;

/** One time that an event takes place, in days of the school's zone. */
export interface Occurrence {
  readonly firstDay: string;
  readonly lastDay: string;
  /** The clock at school when it begins; null for whole days. */
  readonly startsAt: string | null;
}
export interface CalendarEvent {
  readonly uid: string;
  /** Of the file, from 1. */
  readonly line: number;
  readonly kind: CalendarKind;
  readonly classes: readonly string[];
  readonly title: string;
  readonly occurrences: readonly Occurrence[];
}

export interface CalendarTerm {
  /** Null: set by hand. */
  readonly eventUid: string | null;
  readonly name: string;
  readonly firstDay: string;
  readonly lastDay: string;
}
export interface CalendarDay {
  /** Null: set by hand. */
  readonly eventUid: string | null;
  /** Null: the whole school. */
  readonly schoolClassId: string | null;
  readonly date: string;
  readonly kind: DayKind;
  readonly title: string;
  /** For an early finish, the clock at school. */
  readonly endsAt: string | null;
}
export interface SchoolCalendar {
  readonly terms: readonly CalendarTerm[];
  readonly days: readonly CalendarDay[];
}

/** Something of a calendar as a clerk would list it: days in a row that say the same are one entry. */
export interface CalendarEntry {
  readonly eventUid: string | null;
  readonly kind: CalendarKind;
  readonly title: string;
  readonly firstDay: string;
  readonly lastDay: string;
  readonly endsAt: string | null;
  readonly schoolClassId: string | null;
}
export interface CalendarChange {
  readonly added: readonly CalendarEntry[];
  readonly changed: readonly { readonly before: CalendarEntry; readonly after: CalendarEntry }[];
  readonly removed: readonly CalendarEntry[];
  readonly unchanged: number;
  /** Of the file, but not loaded: what was set by hand stands there. */
  readonly setByHand: readonly CalendarEntry[];
  /** Loaded all the same; somebody should look at it. */
  readonly warnings: readonly CalendarIssue[];
}

interface Standing extends SchoolCalendar {
  readonly classes: readonly { readonly id: string; readonly name: string }[];
}
interface Settled {
  /** What the file puts in place of everything that came from a file before. */
  readonly calendar: SchoolCalendar;
  readonly change: CalendarChange;
}

const MOST_DAYS = 5_000;

/**
 * What loading the events makes of a calendar. Days and terms set by hand stay, and where one stands nothing of the file does.
 * @param today at the school
 * @returns all problems at once where there are any
 */
export function settleCalendar(
  events: readonly CalendarEvent[],
  standing: Standing,
  today: string,
): Result<Settled, readonly CalendarIssue[]> {
  const issues: CalendarIssue[] = [];
  const warnings: CalendarIssue[] = [];
  const byHand = {
    terms: standing.terms.filter(({ eventUid }) => eventUid === null),
    days: standing.days.filter(({ eventUid }) => eventUid === null),
  };
  const { terms, behind } = settleTerms(events, byHand.terms, issues, warnings);
  const inSomeTerm = (from: string, until: string) =>
    [...terms, ...byHand.terms].some((term) => term.firstDay <= until && from <= term.lastDay);
  const classIds = new Map(standing.classes.map(({ id, name }) => [name.toLowerCase(), id]));

  const days = new Map<string, CalendarDay & { readonly line: number }>();
  const hidden: CalendarDay[] = [];
  for (const event of events) {
    if (event.kind === "TERM") continue;
    const { kind, uid: eventUid, title, line } = event;
    const scopes: (string | null)[] = event.classes.length === 0 ? [null] : [];
    for (const name of event.classes) {
      const id = classIds.get(name.toLowerCase());
      if (id !== undefined) scopes.push(id);
      else
        issues.push({
          line,
          about: "CATEGORIES",
          problem: `there is no class "${name}" at this school`,
          expected: standing.classes.map((entry) => entry.name).join(", ") || "no class: the school has none yet",
          nearest: nearest(name, [...classIds.keys()]).flatMap((key) =>
            standing.classes.flatMap((entry) => (entry.name.toLowerCase() === key ? [entry.name] : [])),
          ),
        });
    }
    for (const { firstDay, lastDay, startsAt } of event.occurrences) {
      if (!inSomeTerm(firstDay, lastDay)) {
        const problem = `${spanOf(firstDay, lastDay)} lies in no term`;
        const out = { line, about: "DTSTART", problem };
        if (kind === "HOLIDAY") warnings.push({ ...out, expected: "days of a term; no box depends on this one" });
        else issues.push({ ...out, expected: "a day within one of the terms" });
      }
      for (const schoolClassId of scopes)
        for (let date = firstDay; date <= lastDay; date = addDays(date, 1)) {
          const day = { eventUid, schoolClassId, date, kind, title, endsAt: kind === "EARLY_FINISH" ? startsAt : null };
          const place = `${schoolClassId ?? ""}@${date}`;
          if (byHand.days.some((one) => one.date === date && one.schoolClassId === schoolClassId)) {
            hidden.push(day);
            continue;
          }
          const other = (["HOLIDAY", "EARLY_FINISH", "TRIP"] as const)
            .map((one) => days.get(`${place}@${one}`))
            .find((one) => one !== undefined && contradicts(one, day));
          if (other)
            issues.push({
              line,
              about: "DTSTART",
              problem: `${date} is said to be something else by the event on line ${other.line}`,
              expected: "one of the two for that day",
            });
          else if (!days.has(`${place}@${kind}`)) days.set(`${place}@${kind}`, { ...day, line });
          if (days.size > MOST_DAYS) {
            issues.push({
              line,
              about: "FILE",
              problem: `gives more than ${MOST_DAYS} days`,
              expected: "one school year",
            });
            return fail(inOrder(issues));
          }
        }
    }
  }
  if (issues.length > 0) return fail(inOrder(issues));

  const calendar: SchoolCalendar = {
    terms,
    days: [...days.values()].map(({ line: _line, ...day }) => day),
  };
  const gone = standing.terms.find(
    ({ eventUid, firstDay, lastDay }) => eventUid !== null && firstDay <= today && today <= lastDay,
  );
  if (gone && !inSomeTerm(today, today))
    warnings.push({
      line: null,
      about: "FILE",
      problem: `the running term ${gone.name} is not in it and goes`,
      expected: "the whole calendar, the running term with it, unless it is over",
    });
  const before = entriesOf({
    terms: standing.terms.filter(({ eventUid }) => eventUid !== null),
    days: standing.days.filter(({ eventUid }) => eventUid !== null),
  });
  return ok({
    calendar,
    change: {
      ...differenceOf(before, entriesOf(calendar)),
      setByHand: entriesOf({ terms: behind, days: hidden }),
      warnings: inOrder(warnings),
    },
  });
}

/** A holiday is nothing else as well, and school ends once a day; a trip may end early. */
const contradicts = (a: CalendarDay, b: CalendarDay): boolean =>
  a.kind === b.kind ? a.endsAt !== b.endsAt : a.kind === "HOLIDAY" || b.kind === "HOLIDAY";

function settleTerms(
  events: readonly CalendarEvent[],
  byHand: readonly CalendarTerm[],
  issues: CalendarIssue[],
  warnings: CalendarIssue[],
) {
  const terms: (CalendarTerm & { readonly line: number })[] = [];
  const behind: CalendarTerm[] = [];
  for (const { kind, uid: eventUid, line, title, occurrences } of events) {
    if (kind !== "TERM") continue;
    for (const { firstDay, lastDay } of occurrences) {
      const term = { eventUid, name: title, firstDay, lastDay };
      const overlaps = (other: CalendarTerm) => other.firstDay <= lastDay && firstDay <= other.lastDay;
      const own = byHand.find(overlaps);
      const other = terms.find(overlaps);
      if (own) {
        behind.push(term);
        if (own.firstDay !== firstDay || own.lastDay !== lastDay)
          warnings.push({
            line,
            about: "DTSTART",
            problem: `${title} is left out: ${own.name}, ${spanOf(own.firstDay, own.lastDay)}, was set by hand`,
            expected: "no term set by hand at that time (removeTerm), if the file is to say it",
          });
      } else if (other)
        issues.push({
          line,
          about: "DTSTART",
          problem: `${title} overlaps ${other.name}, ${spanOf(other.firstDay, other.lastDay)}, of line ${other.line}`,
          expected: "terms one after the other; DTEND is the day after the last one",
        });
      else terms.push({ ...term, line });
    }
  }
  return { terms: terms.map(({ line: _line, ...term }) => term), behind };
}

/** Days in a row that say the same become one entry; in order of their first days. */
function entriesOf({ terms, days }: SchoolCalendar): CalendarEntry[] {
  const entries: CalendarEntry[] = terms.map(({ eventUid, name, firstDay, lastDay }) => ({
    eventUid,
    kind: "TERM",
    title: name,
    firstDay,
    lastDay,
    endsAt: null,
    schoolClassId: null,
  }));
  const running = new Map<string, CalendarEntry>();
  for (const { eventUid, schoolClassId, date, kind, title, endsAt } of [...days].sort((a, b) =>
    a.date < b.date ? -1 : a.date > b.date ? 1 : 0,
  )) {
    const key = JSON.stringify([eventUid, schoolClassId, kind, title, endsAt]);
    const before = running.get(key);
    if (before && daysBetween(before.lastDay, date) <= 1) running.set(key, { ...before, lastDay: date });
    else {
      if (before) entries.push(before);
      running.set(key, { eventUid, kind, title, firstDay: date, lastDay: date, endsAt, schoolClassId });
    }
  }
  entries.push(...running.values());
  return entries.sort((a, b) => (keyOf(a) < keyOf(b) ? -1 : 1));
}

const keyOf = (entry: CalendarEntry) =>
  [entry.firstDay, entry.kind, entry.schoolClassId, entry.eventUid, entry.lastDay, entry.endsAt, entry.title].join("|");

/** Entries of one event that differ are one that changed; the rest came or went. */
function differenceOf(before: readonly CalendarEntry[], after: readonly CalendarEntry[]) {
  const same = new Set(before.map(keyOf));
  const left = new Map<string, CalendarEntry[]>();
  const afterKeys = new Set(after.map(keyOf));
  const eventOf = ({ eventUid, schoolClassId }: CalendarEntry) => JSON.stringify([eventUid, schoolClassId]);
  for (const entry of before)
    if (!afterKeys.has(keyOf(entry))) left.set(eventOf(entry), [...(left.get(eventOf(entry)) ?? []), entry]);
  const added: CalendarEntry[] = [];
  const changed: { before: CalendarEntry; after: CalendarEntry }[] = [];
  for (const entry of after) {
    if (same.has(keyOf(entry))) continue;
    const was = left.get(eventOf(entry))?.shift();
    if (was) changed.push({ before: was, after: entry });
    else added.push(entry);
  }
  return {
    added,
    changed,
    removed: [...left.values()].flat().sort((a, b) => (keyOf(a) < keyOf(b) ? -1 : 1)),
    unchanged: after.filter((entry) => same.has(keyOf(entry))).length,
  };
}

const spanOf = (firstDay: string, lastDay: string) => (firstDay === lastDay ? firstDay : `${firstDay} to ${lastDay}`);
const inOrder = (issues: readonly CalendarIssue[]) => [...issues].sort((a, b) => (a.line ?? 0) - (b.line ?? 0));
