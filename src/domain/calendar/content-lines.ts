/**
 * The content lines of an iCalendar file (RFC 5545, section 3.1) with the line each begins on, for saying where a mistake is.
 * What the properties mean is left to a parser.
 */
export interface ContentLine {
  /** Of the file, from 1. */
  readonly line: number;
  /** In capitals: DTSTART. */
  readonly name: string;
  /** What stands after the first colon outside quotes. */
  readonly value: string;
}

/** A VEVENT or VTIMEZONE with its own properties; those of what is nested in it are left out. */
export interface ComponentLines {
  /** Of its BEGIN. */
  readonly line: number;
  readonly properties: readonly ContentLine[];
}

/** What is wrong with a calendar file. */
export interface CalendarIssue {
  /** Of the file, from 1; null where it is about the whole file. */
  readonly line: number | null;
  /** A property such as DTSTART, or FILE. */
  readonly about: string;
  readonly problem: string;
  readonly expected: string;
  /** Words that would do and look most like the one that stands there. */
  readonly nearest?: readonly string[];
}

export interface ScannedCalendar {
  readonly events: readonly ComponentLines[];
  readonly zones: readonly ComponentLines[];
  /** Lines that are none, and components that are not closed or not opened. */
  readonly issues: readonly CalendarIssue[];
}

const contentLine = /^([A-Za-z0-9-]+)((?:;[A-Za-z0-9-]+=(?:"[^"]*"|[^";:,]*)(?:,(?:"[^"]*"|[^";:,]*))*)*):(.*)$/s;

export function scanCalendar(text: string): ScannedCalendar {
  const issues: CalendarIssue[] = [];
  const events: ComponentLines[] = [];
  const zones: ComponentLines[] = [];
  const open: { readonly name: string; readonly line: number; readonly properties: ContentLine[] }[] = [];
  let calendars = 0;
  for (const { line, text: unfolded } of unfold(text)) {
    const parts = contentLine.exec(unfolded);
    if (!parts) {
      issues.push({
        line,
        about: "FILE",
        problem: `"${shown(unfolded)}" is no content line`,
        expected: "NAME:value; a line that goes on begins with a space",
      });
      continue;
    }
    const [, name = "", , value = ""] = parts;
    const property = name.toUpperCase();
    const component = value.trim().toUpperCase();
    if (property === "BEGIN") {
      if (open.length === 0) {
        calendars += 1;
        if (component !== "VCALENDAR")
          issues.push({
            line,
            about: "BEGIN",
            problem: `the file begins with ${shown(value)}`,
            expected: "BEGIN:VCALENDAR",
          });
      }
      open.push({ name: component, line, properties: [] });
    } else if (property === "END") {
      const closed = open.pop();
      if (closed?.name !== component) {
        issues.push({
          line,
          about: "END",
          problem: closed
            ? `${closed.name}, begun on line ${closed.line}, is not closed before END:${shown(value)}`
            : `END:${shown(value)} closes nothing`,
          expected: "an END for every BEGIN, the innermost first",
        });
        return { events, zones, issues };
      }
      if (open.length === 1 && component === "VEVENT") events.push(closed);
      if (open.length === 1 && component === "VTIMEZONE") zones.push(closed);
    } else {
      const inside = open.at(-1);
      if (inside) inside.properties.push({ line, name: property, value });
      else
        issues.push({
          line,
          about: property,
          problem: "stands outside the calendar",
          expected: "everything between BEGIN:VCALENDAR and END:VCALENDAR",
        });
    }
  }
  for (const { name, line } of open)
    issues.push({ line, about: "BEGIN", problem: `${name} is not closed`, expected: `END:${name}` });
  if (calendars === 0)
    issues.push({ line: null, about: "FILE", problem: "is no iCalendar file", expected: "BEGIN:VCALENDAR" });
  return { events, zones, issues };
}

/** A line that begins with a space or a tab goes on with the one before. */
function unfold(text: string): { line: number; text: string }[] {
  const lines: { line: number; text: string }[] = [];
  for (const [at, physical] of text
    .replace(/^\uFEFF/, "")
    .split(/\r\n|\n|\r/)
    .entries()) {
    const last = lines.at(-1);
    if (/^[ \t]/.test(physical) && last) last.text += physical.slice(1);
    else if (physical !== "") lines.push({ line: at + 1, text: physical });
  }
  return lines;
}

const shown = (text: string): string => (text.length > 40 ? `${text.slice(0, 40)}…` : text);
