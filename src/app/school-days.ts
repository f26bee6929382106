/** What a school's administrator says of its days and of what there is to keep or heat food with. */
import { schoolDayInput } from "../../shared/inputs.js";
import type { FacilityCode } from "../../shared/codes.js";
import type { Tx } from "../database/database.js";
import { isCalendarDate } from "../domain/calendar/dates.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { audit, type Audited } from "./audit.js";
import { checkInput, invalid } from "./check-input.js";
import type { FailureOf } from "./failures.js";
import { toDate } from "./local-day.js";
import { once, type Attempt } from "./once.js";
import { queueRecheck, recheckNow, touching } from "./recheck.js";

export type SchoolChangeFailure = FailureOf<
  "InvalidInput" | "SchoolNotFound" | "NotAppointed" | "RevisionPassed" | "KeyReused"
>;
export type SchoolChanged<E = never> = Promise<Result<{ schoolId: string }, SchoolChangeFailure | E>>;

export interface SchoolChange {
  readonly idempotencyKey: string;
  readonly seenRevision: number;
}

/** Whether the person was appointed to the school or its jurisdiction. */
export async function administers(tx: Tx, schoolId: string): Promise<boolean> {
  const rows = await tx.$queryRaw<unknown[]>`select 1 from app_appointed_school_ids() a where a = ${schoolId}::uuid`;
  return rows.length > 0;
}

const ofSchool = (schoolId: string) =>
  touching({ schoolIds: [schoolId], news: { kind: "SCHOOL", schoolIds: [schoolId] } });

/** The shape of every change to a school: known, appointed, not overtaken, then one more revision and its boxes rechecked. */
export async function changeSchool<E = never>(
  app: App,
  attempt: Attempt & { readonly seenRevision: number },
  find: (tx: Tx) => Promise<string | null>,
  work: (tx: Tx, schoolId: string) => Promise<Result<Pick<Audited, "action" | "details">, SchoolChangeFailure | E>>,
): SchoolChanged<E> {
  const changed = await once<{ schoolId: string }, SchoolChangeFailure | E>(app, attempt, async (tx) => {
    const schoolId = await find(tx);
    if (schoolId === null) return fail({ kind: "SchoolNotFound" });
    if (!(await administers(tx, schoolId))) return fail({ kind: "NotAppointed" });
    const moved = await tx.school.updateMany({
      where: { id: schoolId, revision: attempt.seenRevision },
      data: { revision: { increment: 1 } },
    });
    if (moved.count === 0) {
      const current = await tx.school.findUniqueOrThrow({ where: { id: schoolId }, select: { revision: true } });
      return fail({ kind: "RevisionPassed", seenRevision: attempt.seenRevision, currentRevision: current.revision });
    }
    const done = await work(tx, schoolId);
    if (!done.ok) return done;
    await audit(tx, attempt.personId, { ...done.value, schoolId });
    await queueRecheck(app, tx, ofSchool(schoolId));
    return ok({ schoolId });
  });
  if (changed.ok) await recheckNow(app, ofSchool(changed.value.schoolId));
  return changed;
}

export interface SetFacility extends SchoolChange {
  readonly schoolClassId: string | null;
  readonly facility: FacilityCode;
}

export const setFacility = (app: App, personId: string, input: SetFacility): SchoolChanged =>
  changeSchool(
    app,
    { personId, action: "setFacility", key: input.idempotencyKey, input, seenRevision: input.seenRevision },
    async (tx) => {
      if (input.schoolClassId === null) return null;
      const found = await tx.schoolClass.findUnique({ where: { id: input.schoolClassId }, select: { schoolId: true } });
      return found?.schoolId ?? null;
    },
    async (tx) => {
      await tx.schoolClass.update({
        where: { id: input.schoolClassId! },
        data: { facility: input.facility },
        select: { id: true },
      });
      const details = { schoolClassId: input.schoolClassId, facility: input.facility };
      return ok({ action: "SCHOOL_CHANGED", details });
    },
  );

export interface SchoolDayRef extends SchoolChange {
  readonly schoolId: string | null;
  /** Null: the whole school. */
  readonly schoolClassId: string | null;
  readonly date: string;
}
export interface SetSchoolDay extends SchoolDayRef {
  readonly kind: "HOLIDAY" | "EARLY_FINISH" | "TRIP";
  readonly title: string;
  readonly endsAt?: string | null;
}

export const findSchool = (schoolId: string | null) => async (tx: Tx) =>
  schoolId === null
    ? null
    : ((await tx.school.findUnique({ where: { id: schoolId }, select: { id: true } }))?.id ?? null);

/** Absent, or a class of the school. */
async function checkClass(tx: Tx, schoolId: string, schoolClassId: string | null) {
  if (schoolClassId === null) return ok(null);
  const found = await tx.schoolClass.findUnique({ where: { id: schoolClassId }, select: { schoolId: true } });
  return found?.schoolId === schoolId
    ? ok(null)
    : fail(invalid("schoolClassId", "is no class of this school", "Send the ID of one of its classes."));
}

/** Says what one day is like, for the school or one class; takes the place of what was said of it before. */
export async function setSchoolDay(app: App, personId: string, input: SetSchoolDay): SchoolChanged {
  const checked = checkInput(schoolDayInput, input);
  if (!checked.ok) return checked;
  const { date, kind, title, endsAt } = checked.value;
  if (!isCalendarDate(date))
    return fail(invalid("date", `${date} is no day of the calendar`, "Send a real date as YYYY-MM-DD."));
  return changeSchool(
    app,
    { personId, action: "setSchoolDay", key: input.idempotencyKey, input, seenRevision: input.seenRevision },
    findSchool(input.schoolId),
    async (tx, schoolId) => {
      const { schoolClassId } = input;
      const known = await checkClass(tx, schoolId, schoolClassId);
      if (!known.ok) return known;
      await tx.schoolDay.deleteMany({ where: { schoolId, schoolClassId, date: toDate(date) } });
      await tx.schoolDay.create({
        data: { schoolId, schoolClassId, date: toDate(date), kind, title, endsAt: endsAt ?? null },
        select: { id: true },
      });
      const details = { set: [{ schoolClassId, date, kind, title, endsAt: endsAt ?? null }] };
      return ok({ action: "CALENDAR_CHANGED", details });
    },
  );
}

export async function removeSchoolDay(app: App, personId: string, input: SchoolDayRef): SchoolChanged {
  const { date, schoolClassId } = input;
  if (!isCalendarDate(date))
    return fail(invalid("date", `${date} is no day of the calendar`, "Send a real date as YYYY-MM-DD."));
  return changeSchool(
    app,
    { personId, action: "removeSchoolDay", key: input.idempotencyKey, input, seenRevision: input.seenRevision },
    findSchool(input.schoolId),
    async (tx, schoolId) => {
      const known = await checkClass(tx, schoolId, schoolClassId);
      if (!known.ok) return known;
      const removed = await tx.schoolDay.deleteMany({ where: { schoolId, schoolClassId, date: toDate(date) } });
      return removed.count > 0
        ? ok({ action: "CALENDAR_CHANGED", details: { removed: [{ schoolClassId, date }] } })
        : fail(invalid("date", `nothing is said of ${date}`, "Send a day of the school's list."));
    },
  );
}
