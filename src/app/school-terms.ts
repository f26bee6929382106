/** What a school's administrator says of its terms and classes. */
import { randomUUID } from "node:crypto";
import type { FacilityCode, SlotCode } from "../../shared/codes.js";
import { schoolClassChange, schoolClassInput, termInput } from "../../shared/inputs.js";
import type { Tx } from "../database/database.js";
import { isCalendarDate, minutesOf } from "../domain/calendar/dates.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { checkInput, invalid } from "./check-input.js";
import type { FailureOf, InputIssue } from "./failures.js";
import { fromDate, toDate } from "./local-day.js";
import { changeSchool, findSchool, type SchoolChange, type SchoolChanged } from "./school-days.js";

export interface SetTerm extends SchoolChange {
  readonly schoolId: string | null;
  readonly name: string;
  readonly firstDay: string;
  readonly lastDay: string;
  /** First day of the term that it takes the place of; absent: a new one. */
  readonly replaces?: string | null | undefined;
}

/** A term set by hand: what a calendar file says of the same days gives way to it. */
export async function setTerm(app: App, personId: string, input: SetTerm): SchoolChanged {
  const checked = checkInput(termInput, input);
  if (!checked.ok) return checked;
  const { name, firstDay, lastDay, replaces } = checked.value;
  const wrong = wrongDates({ firstDay, lastDay, ...(replaces == null ? {} : { replaces }) });
  if (wrong) return fail(wrong);
  return changeSchool(
    app,
    { personId, action: "setTerm", key: input.idempotencyKey, input, seenRevision: input.seenRevision },
    findSchool(input.schoolId),
    async (tx, schoolId) => {
      const terms = await termsOf(tx, schoolId);
      const before = replaces == null ? null : (terms.find((term) => term.firstDay === replaces) ?? null);
      if (replaces != null && before === null)
        return fail(invalid("replaces", `no term begins on ${replaces}`, "Send the first day of one of its terms."));
      const other = terms.find((term) => term !== before && term.firstDay <= lastDay && firstDay <= term.lastDay);
      if (other)
        return fail(
          invalid(
            other.firstDay <= firstDay ? "firstDay" : "lastDay",
            `${name} would overlap ${other.name}, ${other.firstDay} to ${other.lastDay}`,
            "Terms follow one another; change the other one first, or send its first day as replaces.",
          ),
        );
      if (before) await tx.schoolTerm.delete({ where: { id: before.id }, select: { id: true } });
      await tx.schoolTerm.create({
        data: { schoolId, name, firstDay: toDate(firstDay), lastDay: toDate(lastDay) },
        select: { id: true },
      });
      const was = before && { name: before.name, firstDay: before.firstDay, lastDay: before.lastDay };
      return ok({ action: "CALENDAR_CHANGED", details: { term: { name, firstDay, lastDay }, before: was } });
    },
  );
}

export interface RemoveTerm extends SchoolChange {
  readonly schoolId: string | null;
  readonly firstDay: string;
}

export async function removeTerm(app: App, personId: string, input: RemoveTerm): SchoolChanged {
  const { firstDay } = input;
  const wrong = wrongDates({ firstDay });
  if (wrong) return fail(wrong);
  return changeSchool(
    app,
    { personId, action: "removeTerm", key: input.idempotencyKey, input, seenRevision: input.seenRevision },
    findSchool(input.schoolId),
    async (tx, schoolId) => {
      const term = (await termsOf(tx, schoolId)).find((entry) => entry.firstDay === firstDay);
      if (!term)
        return fail(invalid("firstDay", `no term begins on ${firstDay}`, "Send the first day of one of its terms."));
      await tx.schoolTerm.delete({ where: { id: term.id }, select: { id: true } });
      const { name, lastDay } = term;
      return ok({ action: "CALENDAR_CHANGED", details: { term: null, before: { name, firstDay, lastDay } } });
    },
  );
}

function wrongDates(dates: Readonly<Record<string, string>>): FailureOf<"InvalidInput"> | null {
  const issues = Object.entries(dates).flatMap(([field, date]): InputIssue[] =>
    isCalendarDate(date)
      ? []
      : [{ field, problem: `${date} is no day of the calendar`, fix: "Send a real date as YYYY-MM-DD." }],
  );
  return issues.length > 0 ? { kind: "InvalidInput", issues } : null;
}

async function termsOf(tx: Tx, schoolId: string) {
  const rows = await tx.schoolTerm.findMany({
    where: { schoolId },
    select: { id: true, name: true, firstDay: true, lastDay: true },
    orderBy: { firstDay: "asc" },
  });
  return rows.map((row) => ({ ...row, firstDay: fromDate(row.firstDay), lastDay: fromDate(row.lastDay) }));
}

export interface BreakEntry {
  /** Lower-case words joined by hyphens, once in a class. */
  readonly key: string;
  readonly name: string;
  /** The clock at school. */
  readonly startsAt: string;
  /** 5 to 120. */
  readonly minutes: number;
  readonly slots: readonly SlotCode[];
  /** Of the day's energy, 0 to 1; null: our usual share. */
  readonly energyShare?: number | null | undefined;
}
/** No school day is known to reach beyond these (common practice, with room for shifts). */
const SCHOOL_HOURS = { from: "06:00", until: "20:00" };

/** Breaks stand in the order of the clock, one after the other, within the day of a school. */
function checkBreaks(breaks: readonly BreakEntry[]): Result<null, FailureOf<"InvalidInput">> {
  const issues: InputIssue[] = [];
  for (const [at, { startsAt, minutes }] of breaks.entries()) {
    const before = breaks[at - 1];
    const field = `breaks.${at}.startsAt`;
    if (
      minutesOf(startsAt) < minutesOf(SCHOOL_HOURS.from) ||
      minutesOf(startsAt) + minutes > minutesOf(SCHOOL_HOURS.until)
    )
      issues.push({
        field,
        problem: `${startsAt} for ${minutes} min is outside school hours`,
        fix: `Send breaks between ${SCHOOL_HOURS.from} and ${SCHOOL_HOURS.until}.`,
      });
    if (before && minutesOf(startsAt) < minutesOf(before.startsAt) + before.minutes)
      issues.push({
        field,
        problem: `${startsAt} is before ${before.name} is over`,
        fix: "Send the breaks in the order of the day, none within another.",
      });
  }
  const shares = breaks.reduce((sum, { energyShare }) => sum + (energyShare ?? 0), 0);
  // Shares are written with a few decimals; their sum may be off by the last bit.
  if (shares > 1 + 1e-9)
    issues.push({
      field: "breaks",
      problem: `the breaks give ${Math.round(shares * 100)} % of a day's energy`,
      fix: "Send shares that add up to at most 1.",
    });
  return issues.length > 0 ? fail({ kind: "InvalidInput", issues }) : ok(null);
}

const breakRows = (schoolClassId: string, breaks: readonly BreakEntry[]) =>
  breaks.map(({ key, name, startsAt, minutes, slots, energyShare }) => ({
    schoolClassId,
    key,
    name,
    startsAt,
    minutes,
    slots: [...slots],
    energyShare: energyShare ?? null,
  }));

/** Whether another class of the school has the name; in whatever letters, as a calendar file may write it. */
async function checkClassName(tx: Tx, schoolId: string, name: string, except: string | null) {
  const classes = await tx.schoolClass.findMany({ where: { schoolId }, select: { id: true, name: true } });
  return classes.some((entry) => entry.id !== except && entry.name.toLowerCase() === name.toLowerCase())
    ? fail(invalid("name", `there is a class "${name}" already`, "Send a name that no other class of the school has."))
    : ok(null);
}

export interface AddSchoolClass extends SchoolChange {
  readonly schoolId: string | null;
  readonly name: string;
  readonly facility: FacilityCode;
  readonly breaks: readonly BreakEntry[];
}

export async function addSchoolClass(app: App, personId: string, input: AddSchoolClass): SchoolChanged {
  const checked = checkInput(schoolClassInput, input);
  if (!checked.ok) return checked;
  const { name, breaks } = checked.value;
  const inOrder = checkBreaks(breaks);
  if (!inOrder.ok) return inOrder;
  return changeSchool(
    app,
    { personId, action: "addSchoolClass", key: input.idempotencyKey, input, seenRevision: input.seenRevision },
    findSchool(input.schoolId),
    async (tx, schoolId) => {
      const free = await checkClassName(tx, schoolId, name, null);
      if (!free.ok) return free;
      const id = randomUUID();
      const { facility } = input;
      await tx.schoolClass.create({ data: { id, schoolId, name, facility }, select: { id: true } });
      await tx.classBreak.createMany({ data: breakRows(id, breaks) });
      return ok({
        action: "SCHOOL_CHANGED",
        details: { schoolClassId: id, added: { name, facility, breaks: breaks.map(({ key }) => key) } },
      });
    },
  );
}

export interface ChangeSchoolClass extends SchoolChange {
  readonly schoolClassId: string | null;
  /** Absent: unchanged, as with the breaks. */
  readonly name?: string | null | undefined;
  readonly breaks?: readonly BreakEntry[] | null | undefined;
}

/** Another name, or other breaks in place of all it had. */
export async function changeSchoolClass(app: App, personId: string, input: ChangeSchoolClass): SchoolChanged {
  const checked = checkInput(schoolClassChange, input);
  if (!checked.ok) return checked;
  const { name, breaks } = checked.value;
  if (name == null && breaks == null)
    return fail(invalid("name", "there is nothing to change", "Send a name, breaks, or both."));
  const inOrder = checkBreaks(breaks ?? []);
  if (!inOrder.ok) return inOrder;
  return changeSchool(
    app,
    { personId, action: "changeSchoolClass", key: input.idempotencyKey, input, seenRevision: input.seenRevision },
    async (tx) =>
      input.schoolClassId === null
        ? null
        : ((await tx.schoolClass.findUnique({ where: { id: input.schoolClassId }, select: { schoolId: true } }))
            ?.schoolId ?? null),
    async (tx, schoolId) => {
      const schoolClassId = input.schoolClassId!;
      if (name != null) {
        const free = await checkClassName(tx, schoolId, name, schoolClassId);
        if (!free.ok) return free;
        await tx.schoolClass.update({ where: { id: schoolClassId }, data: { name }, select: { id: true } });
      }
      if (breaks != null) {
        await tx.classBreak.deleteMany({ where: { schoolClassId } });
        await tx.classBreak.createMany({ data: breakRows(schoolClassId, breaks) });
      }
      return ok({
        action: "SCHOOL_CHANGED",
        details: {
          schoolClassId,
          ...(name == null ? {} : { name }),
          ...(breaks == null
            ? {}
            : { breaks: breaks.map(({ key, startsAt, minutes }) => ({ key, startsAt, minutes })) }),
        },
      });
    },
  );
}
