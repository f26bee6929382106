/**
 * The events of a school's calendar file (iCalendar, RFC 5545) in days and clock times of the school's zone. What the words of the
 * file mean is in domain/calendar; here a library reads the times, zones and recurrences.
 */
import ICAL from "ical.js";
import { DateTime } from "luxon";
import { scanCalendar, type CalendarIssue, type ComponentLines } from "../domain/calendar/content-lines.js";
import { addDays, daysBetween } from "../domain/calendar/dates.js";
import type { CalendarEvent, Occurrence } from "../domain/calendar/school-calendar.js";
import {
  lineOf,
  propertiesOf,
  readEventHead,
  USUAL_TITLES,
  type CalendarKind,
  type EventHead,
} from "../domain/calendar/school-events.js";
import { fail, ok, type Result } from "../domain/result.js";

/** The text of a file, under the limit of a request's body. */
export const MOST_CALENDAR_CHARACTERS = 200_000;
/** A recurrence ends within this many years of its first day. */
const MOST_YEARS = 3;
const MOST_OCCURRENCES = 5_000;
/** One event lasts at most a school year. */
const MOST_DAYS = 366;
const FREQUENCIES = ["DAILY", "WEEKLY", "MONTHLY", "YEARLY"];
/** What our days cannot tell apart, or the library does not heed with these frequencies. */
const PARTS_NOT_READ = ["BYSECOND", "BYMINUTE", "BYHOUR"];

/** A mistake in one event: thrown while it is read, listed with all the others. */
class Mistake extends Error {
  constructor(
    readonly about: string,
    readonly problem: string,
    readonly expected: string,
    readonly line?: number,
  ) {
    super(problem);
  }
}

/** The rule would go on past the years it is read for. */
class Endless extends Error {}

interface ReadEvent {
  readonly head: EventHead;
  readonly component: ICAL.Component;
}

/** @param timeZone of the school: where no zone is named, its clock is meant */
export function readICalendar(text: string, timeZone: string): Result<CalendarEvent[], readonly CalendarIssue[]> {
  if (text.length > MOST_CALENDAR_CHARACTERS)
    return fail([
      {
        line: null,
        about: "FILE",
        problem: `has ${text.length} characters`,
        expected: `at most ${MOST_CALENDAR_CHARACTERS}: one school year`,
      },
    ]);
  const scanned = scanCalendar(text);
  const heads = scanned.events.map(readEventHead);
  const issues: CalendarIssue[] = [
    ...scanned.issues,
    ...heads.flatMap((event) => event.issues),
    ...scanned.events.flatMap(issuesOfRules),
    ...(scanned.issues.length === 0 && scanned.events.length === 0
      ? [{ line: null, about: "FILE", problem: "holds no event", expected: "a VEVENT for each term and special day" }]
      : []),
  ];
  if (issues.length > 0) return fail(inOrder(issues));
  const parsed = parseEvents(text);
  if (typeof parsed === "string" || parsed.length !== heads.length)
    return fail([
      {
        line: null,
        about: "FILE",
        problem: `cannot be read${typeof parsed === "string" ? `: ${parsed}` : ""}`,
        expected: "an iCalendar file (RFC 5545), such as a calendar program exports",
      },
    ]);
  const series = new Map<string, ReadEvent[]>();
  for (const [at, { head }] of heads.entries())
    series.set(head.uid, [...(series.get(head.uid) ?? []), { head, component: parsed[at]! }]);
  const events: CalendarEvent[] = [];
  let count = 0;
  for (const members of series.values()) {
    const read = readSeries(members, timeZone, issues);
    count += read.reduce((sum, { occurrences }) => sum + occurrences.length, 0);
    events.push(...read);
    if (count > MOST_OCCURRENCES) {
      issues.push({
        line: null,
        about: "FILE",
        problem: `has more than ${MOST_OCCURRENCES} occurrences`,
        expected: "one school year",
      });
      break;
    }
  }
  return issues.length > 0 ? fail(inOrder(issues)) : ok(events.sort((a, b) => a.line - b.line));
}

/** VEVENTs in the order of the file, or what the library says of a file it cannot read. */
function parseEvents(text: string): ICAL.Component[] | string {
  try {
    const calendars = ICAL.parse(text.replace(/^\uFEFF/, "")) as unknown[];
    // A stream of several calendars is a list of them, one calendar a list that begins with its name.
    const all = typeof calendars[0] === "string" ? [calendars] : calendars;
    return all.flatMap((calendar) => new ICAL.Component(calendar as unknown[]).getAllSubcomponents("vevent"));
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

/** The library refuses a whole file for one bad rule: each is tried alone first, so that all are named with their lines. */
function issuesOfRules(component: ComponentLines): CalendarIssue[] {
  return propertiesOf(component, "RRULE").flatMap(({ line, value }): CalendarIssue[] => {
    const wrong = whatIsWrongWithRule(value.trim());
    return wrong === null ? [] : [{ line, about: "RRULE", ...wrong }];
  });
}

function whatIsWrongWithRule(value: string): { problem: string; expected: string } | null {
  const expected = "a rule of RFC 5545 by day, week, month or year, with UNTIL or COUNT";
  let rule: ICAL.Recur;
  try {
    rule = ICAL.Recur.fromString(value);
  } catch (error) {
    return { problem: `cannot be read: ${(error as Error).message}`, expected };
  }
  if (!FREQUENCIES.includes(rule.freq)) return { problem: `repeats ${String(rule.freq ?? "never")}`, expected };
  const parts = Object.keys(rule.parts);
  const unread = parts.filter(
    (part) =>
      PARTS_NOT_READ.includes(part) || (part === "BYSETPOS" && (rule.freq === "DAILY" || rule.freq === "WEEKLY")),
  );
  if (unread.length > 0) return { problem: `${unread.join(", ")} is not read with ${rule.freq}`, expected };
  if (!(rule.interval >= 1 && rule.interval <= MOST_DAYS)) return { problem: `INTERVAL is ${rule.interval}`, expected };
  if (rule.count === null && rule.until === null)
    return { problem: "repeats without an end", expected: `UNTIL or COUNT, within ${MOST_YEARS} years` };
  return null;
}

/** One UID: an event, and the single days of its series that another event changes. */
function readSeries(members: readonly ReadEvent[], timeZone: string, issues: CalendarIssue[]): CalendarEvent[] {
  const clock = clockOf(timeZone);
  const attempt = <T>({ head }: ReadEvent, work: () => T): T | null => {
    try {
      return work();
    } catch (error) {
      const { about, problem, expected, line } =
        error instanceof Mistake
          ? error
          : new Mistake(
              "VEVENT",
              `cannot be read: ${(error as Error).message}`,
              "an event such as a calendar program exports",
            );
      issues.push({ line: line ?? lineOf(head.component, about), about, problem, expected });
      return null;
    }
  };
  const masters = members.filter(({ component }) => !component.hasProperty("recurrence-id"));
  const [master, again] = masters;
  if (again) {
    issues.push({
      line: again.head.component.line,
      about: "UID",
      problem: `${again.head.uid} was given to the event on line ${master!.head.component.line} already`,
      expected: "a UID for each event, and RECURRENCE-ID for a changed day of a series",
    });
    return [];
  }
  const times = new Map(
    (master === undefined ? [] : (attempt(master, () => timesOf(master, clock)) ?? [])).map((time) => [time.key, time]),
  );
  const events: CalendarEvent[] = [];
  for (const member of members) {
    if (member === master) continue;
    attempt(member, () => {
      const { head, component } = member;
      const id = component.getFirstProperty("recurrence-id")!;
      if (id.getFirstParameter("range"))
        throw new Mistake("RECURRENCE-ID", "changes all days from one on", "an event for each changed day");
      const key = clock.read(component, "recurrence-id", id.getFirstValue() as ICAL.Time).key;
      if (master !== undefined && !times.delete(key))
        throw new Mistake(
          "RECURRENCE-ID",
          "is no day of the series",
          "the beginning of one of its occurrences, as the series has it",
        );
      if (head.cancelled) return;
      const kind = head.kind ?? master?.head.kind ?? null;
      if (kind === null)
        throw new Mistake("CATEGORIES", "does not say what the event is", "one of TERM, HOLIDAY, EARLY-FINISH, TRIP");
      const saysClasses = head.kind !== null || head.classes.length > 0;
      events.push({
        uid: head.uid,
        line: head.component.line,
        kind,
        classes: saysClasses ? head.classes : (master?.head.classes ?? []),
        title: head.title ?? master?.head.title ?? USUAL_TITLES[kind],
        occurrences: timesOf(member, clock).map((time) => occurrenceOf(member, kind, time, clock)),
      });
    });
  }
  if (master && !master.head.cancelled && master.head.kind !== null) {
    const { uid, component, kind, classes, title } = master.head;
    const occurrences = attempt(master, () =>
      [...times.values()].map((time) => occurrenceOf(master, kind, time, clock)),
    );
    events.push({
      uid,
      line: component.line,
      kind,
      classes,
      title: title ?? USUAL_TITLES[kind],
      occurrences: occurrences ?? [],
    });
  }
  return events;
}

/** A day, or an instant; the key says which, so that the same one is found again whatever zone it is written in. */
interface ReadTime {
  readonly key: string;
  /** As it is written in the file. */
  readonly date: string;
  /** Milliseconds since 1970; null for a day. */
  readonly instant: number | null;
}
type Clock = ReturnType<typeof clockOf>;

/** Reads times by the zone they name: UTC, one the file defines, or the school's own. */
function clockOf(timeZone: string) {
  const instantOf = (time: ICAL.Time): number => {
    if (time.zone === ICAL.Timezone.localTimezone || time.zone.tzid === "floating") {
      const { year, month, day, hour, minute, second } = time;
      return DateTime.fromObject(
        { year, month, day, hour, minute, second: Math.min(second, 59) },
        { zone: timeZone },
      ).toMillis();
    }
    return time.toUnixTime() * 1000;
  };
  return {
    /** @throws Mistake where the zone is not defined in the file */
    read(component: ICAL.Component, property: string, time: ICAL.Time): ReadTime {
      const date = `${pad(time.year, 4)}-${pad(time.month)}-${pad(time.day)}`;
      if (time.isDate) return { key: date, date, instant: null };
      for (const one of component.getAllProperties(property)) {
        const tzid = one.getFirstParameter("tzid");
        if (tzid) checkZone(component, property, tzid);
      }
      const instant = instantOf(time);
      return { key: `at ${instant}`, date, instant };
    },
    /** The school's own day and clock. */
    atSchool(instant: number): { date: string; time: string } {
      const local = DateTime.fromMillis(instant, { zone: timeZone });
      return { date: local.toISODate()!, time: local.toFormat("HH:mm") };
    },
  };
}

const pad = (value: number, digits = 2) => String(value).padStart(digits, "0");

/** A zone that repeats by anything but the year has no end that could be looked for. */
function checkZone(component: ICAL.Component, property: string, tzid: string): void {
  const about = property.toUpperCase();
  const zone = component.getTimeZoneByID(tzid);
  if (!zone)
    throw new Mistake(
      about,
      `is written in the zone ${tzid}, which the file does not define`,
      "a VTIMEZONE for it, or a time in UTC",
    );
  const changes = [
    ...zone.component.getAllSubcomponents("standard"),
    ...zone.component.getAllSubcomponents("daylight"),
  ];
  for (const change of changes)
    for (const rule of change.getAllProperties("rrule"))
      if ((rule.getFirstValue() as ICAL.Recur).freq !== "YEARLY")
        throw new Mistake(about, `the zone ${tzid} does not change by the year`, "a VTIMEZONE whose RRULEs are YEARLY");
  if (changes.length === 0) throw new Mistake(about, `the zone ${tzid} has no offset`, "STANDARD with TZOFFSETTO");
}

/** The recurrence set of one event: DTSTART, RRULE and RDATE without EXDATE (RFC 5545, section 3.8.5). */
function timesOf({ head, component }: ReadEvent, clock: Clock): ReadTime[] {
  const start = component.getFirstPropertyValue("dtstart") as ICAL.Time;
  const first = clock.read(component, "dtstart", start);
  const times = new Map<string, ReadTime>([[first.key, first]]);
  const add = (time: ReadTime, about: string) => {
    times.set(time.key, time);
    if (times.size > MOST_OCCURRENCES)
      throw new Mistake(about, `gives more than ${MOST_OCCURRENCES} occurrences`, "one school year");
  };
  for (const property of component.getAllProperties("rrule"))
    for (const time of expand(property.getFirstValue() as ICAL.Recur, start))
      add(clock.read(component, "dtstart", time), "RRULE");
  for (const property of component.getAllProperties("rdate"))
    for (const time of property.getValues() as unknown[]) {
      if (!(time instanceof ICAL.Time))
        throw new Mistake("RDATE", "names a period", "the days on which it takes place as well");
      if (time.isDate !== start.isDate)
        throw new Mistake("RDATE", "is not written as DTSTART is", "both as days, or both with a time");
      add(clock.read(component, "rdate", time), "RDATE");
    }
  for (const property of component.getAllProperties("exdate"))
    for (const time of property.getValues() as ICAL.Time[]) {
      const gone = clock.read(component, "exdate", time);
      times.delete(gone.key);
      // A day taken out of a series of times is often written without the time.
      if (gone.instant === null)
        for (const [key, { instant, date }] of times) if (instant !== null && date === gone.date) times.delete(key);
    }
  const last = addDays(first.date, Math.ceil(MOST_YEARS * 365.25));
  const late = [...times.values()].find(({ date }) => date > last);
  if (late)
    throw new Mistake(
      propertiesOf(head.component, "RRULE").length > 0 ? "RRULE" : "RDATE",
      `goes on until ${late.date} or later`,
      `an end within ${MOST_YEARS} years of ${first.date}`,
    );
  return [...times.values()];
}

/** Every time of a rule. @throws Mistake when it goes on too long or has none */
function expand(rule: ICAL.Recur, start: ICAL.Time): ICAL.Time[] {
  const iterator = rule.iterator(start);
  const months = (rule.parts.BYMONTH ?? []).map(Number);
  const found: ICAL.Time[] = [];
  // Where no day ever meets the rule the library looks for one without end: it asks this at every step.
  const meets = iterator.check_contracting_rules.bind(iterator);
  iterator.check_contracting_rules = () => {
    if (iterator.last.year > start.year + MOST_YEARS + 1) throw new Endless();
    return meets();
  };
  try {
    for (let time = iterator.next(); time && found.length <= MOST_OCCURRENCES; time = iterator.next())
      // A day that a month does not have is none of the next month's (RFC 5545, section 3.3.10).
      if (months.length === 0 || months.includes(time.month)) found.push(time.clone());
    return found;
  } catch (error) {
    if (!(error instanceof Endless)) throw error;
    throw new Mistake(
      "RRULE",
      found.length === 0 ? "is met by no day" : `goes on for more than ${MOST_YEARS} years`,
      `UNTIL or COUNT that end it within ${MOST_YEARS} years of DTSTART`,
    );
  }
}

/** What one time of an event means for a school of this zone. */
function occurrenceOf({ component }: ReadEvent, kind: CalendarKind, begins: ReadTime, clock: Clock): Occurrence {
  const start = component.getFirstPropertyValue("dtstart") as ICAL.Time;
  const end = component.getFirstPropertyValue("dtend") as ICAL.Time | null;
  const lasts = component.getFirstPropertyValue("duration") as ICAL.Duration | null;
  if (end && end.isDate !== start.isDate)
    throw new Mistake("DTEND", "is not written as DTSTART is", "both as days, or both with a time");
  if (begins.instant === null) {
    if (kind === "EARLY_FINISH") throw new Mistake("DTSTART", "gives no time", "the time when school ends");
    const seconds = lasts?.toSeconds() ?? 0;
    if (seconds % 86_400 !== 0)
      throw new Mistake("DURATION", "is not whole days", "days or weeks, as DTSTART is a day");
    const first = clock.read(component, "dtstart", start).date;
    const days = end ? daysBetween(first, clock.read(component, "dtend", end).date) : lasts ? seconds / 86_400 : 1;
    if (days < 1)
      throw new Mistake(
        end ? "DTEND" : "DURATION",
        end ? "is not after DTSTART" : "is less than a day",
        "the day after the last one; nothing for a single day",
      );
    if (days > MOST_DAYS)
      throw new Mistake(end ? "DTEND" : "DURATION", `makes it ${days} days long`, `at most ${MOST_DAYS} days`);
    return { firstDay: begins.date, lastDay: addDays(begins.date, days - 1), startsAt: null };
  }
  if (kind === "TERM" || kind === "HOLIDAY")
    throw new Mistake(
      "DTSTART",
      "gives a time",
      kind === "TERM"
        ? "whole days: DTSTART;VALUE=DATE:YYYYMMDD"
        : "whole days, DTSTART;VALUE=DATE:YYYYMMDD, or EARLY-FINISH where school only ends earlier",
    );
  const began = clock.read(component, "dtstart", start).instant ?? 0;
  const milliseconds = end
    ? (clock.read(component, "dtend", end).instant ?? 0) - began
    : (lasts?.toSeconds() ?? 0) * 1000;
  if (milliseconds < 0) throw new Mistake("DTEND", "is before DTSTART", "an end after the beginning");
  if (milliseconds > MOST_DAYS * 86_400_000)
    throw new Mistake(end ? "DTEND" : "DURATION", "makes it longer than a year", `at most ${MOST_DAYS} days`);
  const { date, time } = clock.atSchool(begins.instant);
  // An early finish begins when school ends; how long it lasts says nothing.
  if (kind === "EARLY_FINISH") return { firstDay: date, lastDay: date, startsAt: time };
  const until = clock.atSchool(begins.instant + Math.max(0, milliseconds - 1)).date;
  return { firstDay: date, lastDay: until, startsAt: null };
}

const inOrder = (issues: readonly CalendarIssue[]) => [...issues].sort((a, b) => (a.line ?? 0) - (b.line ?? 0));
