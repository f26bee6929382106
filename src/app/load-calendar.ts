/** A school's calendar from an iCalendar file (RFC 5545): what it would change, and the change itself. */
import type { Tx } from "../database/database.js";
import type { CalendarIssue } from "../domain/calendar/content-lines.js";
import {
  settleCalendar,
  type CalendarChange,
  type CalendarEntry,
  type SchoolCalendar,
} from "../domain/calendar/school-calendar.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import type { DocumentIssue } from "./document-text.js";
import type { FailureOf } from "./failures.js";
import { fromDate, toDate, todayIn } from "./local-day.js";
import { readICalendar } from "./read-icalendar.js";
import { administers, changeSchool, findSchool, type SchoolChange, type SchoolChanged } from "./school-days.js";

export interface LoadCalendar extends SchoolChange {
  readonly schoolId: string | null;
  /** The text of the file. */
  readonly calendar: string;
}
/** What loading a file would do, and the school as it stands. */
export interface CalendarOffer extends Omit<CalendarChange, "warnings"> {
  readonly warnings: readonly DocumentIssue[];
  readonly schoolId: string;
  readonly classes: readonly { readonly id: string; readonly name: string }[];
  /** To load the file with. */
  readonly seenRevision: number;
}

/** Nothing is stored. */
export async function calendarChange(
  app: App,
  personId: string,
  { schoolId, calendar }: Pick<LoadCalendar, "schoolId" | "calendar">,
): Promise<Result<CalendarOffer, FailureOf<"DocumentRefused" | "SchoolNotFound" | "NotAppointed">>> {
  return app.db.asPerson(personId, async (tx) => {
    const found = await findSchool(schoolId)(tx);
    if (found === null) return fail({ kind: "SchoolNotFound" });
    if (!(await administers(tx, found))) return fail({ kind: "NotAppointed" });
    const { revision } = await tx.school.findUniqueOrThrow({ where: { id: found }, select: { revision: true } });
    const judged = await judgeFile(app, tx, found, calendar);
    if (!judged.ok) return judged;
    const { change, classes } = judged.value;
    return ok({
      ...change,
      schoolId: found,
      classes,
      seenRevision: revision,
      warnings: change.warnings.map(asDocumentIssue),
    });
  });
}

/** Puts the file in place of whatever came from a file before; what was set by hand stays. */
export const loadCalendar = (
  app: App,
  personId: string,
  input: LoadCalendar,
): SchoolChanged<FailureOf<"DocumentRefused">> =>
  changeSchool(
    app,
    { personId, action: "loadCalendar", key: input.idempotencyKey, input, seenRevision: input.seenRevision },
    findSchool(input.schoolId),
    async (tx, schoolId) => {
      const judged = await judgeFile(app, tx, schoolId, input.calendar);
      if (!judged.ok) return judged;
      const { calendar, change } = judged.value;
      await replaceLoaded(tx, schoolId, calendar);
      const { added, changed, removed, unchanged, setByHand } = change;
      return ok({
        action: "CALENDAR_CHANGED",
        details: {
          counts: {
            added: added.length,
            changed: changed.length,
            removed: removed.length,
            unchanged,
            setByHand: setByHand.length,
          },
          added: added.map(asDetail),
          changed: changed.map(({ before, after }) => ({ before: asDetail(before), after: asDetail(after) })),
          removed: removed.map(asDetail),
        },
      });
    },
  );

const asDetail = ({ eventUid: _eventUid, ...entry }: CalendarEntry) => ({ ...entry });

async function judgeFile(app: App, tx: Tx, schoolId: string, text: string) {
  // One after the other: a transaction has one connection.
  const { timeZone } = await tx.school.findUniqueOrThrow({ where: { id: schoolId }, select: { timeZone: true } });
  const classes = await tx.schoolClass.findMany({
    where: { schoolId },
    select: { id: true, name: true },
    orderBy: { name: "asc" },
  });
  const terms = await tx.schoolTerm.findMany({
    where: { schoolId },
    select: { eventUid: true, name: true, firstDay: true, lastDay: true },
  });
  const days = await tx.schoolDay.findMany({
    where: { schoolId },
    select: { eventUid: true, schoolClassId: true, date: true, kind: true, title: true, endsAt: true },
  });
  const events = readICalendar(text, timeZone);
  if (!events.ok) return fail(refused(events.error));
  const settled = settleCalendar(
    events.value,
    {
      classes,
      terms: terms.map((term) => ({ ...term, firstDay: fromDate(term.firstDay), lastDay: fromDate(term.lastDay) })),
      days: days.map((day) => ({ ...day, date: fromDate(day.date) })),
    },
    todayIn(timeZone, app.now()),
  );
  return settled.ok ? ok({ ...settled.value, classes }) : fail(refused(settled.error));
}

async function replaceLoaded(tx: Tx, schoolId: string, { terms, days }: SchoolCalendar): Promise<void> {
  const loaded = { schoolId, eventUid: { not: null } };
  await tx.schoolTerm.deleteMany({ where: loaded });
  await tx.schoolDay.deleteMany({ where: loaded });
  await tx.schoolTerm.createMany({
    data: terms.map((term) => ({
      ...term,
      schoolId,
      firstDay: toDate(term.firstDay),
      lastDay: toDate(term.lastDay),
    })),
  });
  await tx.schoolDay.createMany({ data: days.map((day) => ({ ...day, schoolId, date: toDate(day.date) })) });
}

const refused = (issues: readonly CalendarIssue[]): FailureOf<"DocumentRefused"> => ({
  kind: "DocumentRefused",
  issues: issues.map(asDocumentIssue),
  warnings: [],
});
/** A property stands where a document has its path; what is about the whole file stands on its first line. */
const asDocumentIssue = ({ line, about, problem, expected, nearest }: CalendarIssue): DocumentIssue => ({
  path: about === "FILE" ? "" : about,
  line: line ?? 1,
  problem,
  expected,
  nearest: nearest ?? [],
});
