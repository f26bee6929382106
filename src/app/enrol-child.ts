import { isCalendarDate } from "../domain/calendar/dates.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { changeHousehold, livesHere, type HouseholdChangeFailure } from "./change-household.js";
import { invalid } from "./check-input.js";
import type { FailureOf } from "./failures.js";
import { toDate } from "./local-day.js";
import { queueRecheck, recheckNow, touching } from "./recheck.js";

export interface EnrolChild {
  readonly idempotencyKey: string;
  readonly householdId: string | null;
  readonly seenRevision: number;
  readonly childId: string | null;
  readonly schoolClassId: string | null;
  readonly fromDate: string;
  readonly untilDate?: string | null;
}

/** From `fromDate` on the child goes to that class; an enrolment that was still open ends the day before. */
export async function enrolChild(
  app: App,
  personId: string,
  input: EnrolChild,
): Promise<
  Result<
    { childId: string; householdId: string },
    HouseholdChangeFailure | FailureOf<"ChildNotFound" | "SchoolNotFound">
  >
> {
  const { childId, schoolClassId, fromDate } = input;
  const untilDate = input.untilDate ?? null;
  for (const [field, date] of [
    ["fromDate", fromDate],
    ["untilDate", untilDate],
  ] as const) {
    if (date !== null && !isCalendarDate(date))
      return fail(invalid(field, `${date} is no day of the calendar`, "Send a real date as YYYY-MM-DD."));
  }
  if (untilDate !== null && untilDate < fromDate)
    return fail(
      invalid("untilDate", `${untilDate} lies before fromDate`, "Send a day on or after fromDate, or leave it out."),
    );
  const enrolled = await changeHousehold<
    { childId: string },
    FailureOf<"ChildNotFound" | "SchoolNotFound" | "InvalidInput">
  >(
    app,
    {
      personId,
      action: "enrolChild",
      key: input.idempotencyKey,
      input,
      householdId: input.householdId,
      seenRevision: input.seenRevision,
      verb: "changeChildren",
    },
    async (tx, householdId) => {
      if (childId === null || !(await livesHere(tx, childId, householdId))) return fail({ kind: "ChildNotFound" });
      const schoolClass =
        schoolClassId === null
          ? null
          : await tx.schoolClass.findUnique({ where: { id: schoolClassId }, select: { id: true, schoolId: true } });
      if (!schoolClass) return fail({ kind: "SchoolNotFound" });
      const dayBefore = new Date(toDate(fromDate).getTime() - 86_400_000);
      const overlapping = await tx.enrolment.findMany({
        where: { childId, OR: [{ untilDate: null }, { untilDate: { gte: toDate(fromDate) } }] },
      });
      const blocking = overlapping.find((entry) => entry.fromDate >= toDate(fromDate));
      if (blocking) {
        return fail(
          invalid(
            "fromDate",
            "the child is already enrolled from that day or later",
            "Choose a day after the last enrolment began.",
          ),
        );
      }
      await tx.enrolment.updateMany({
        where: { id: { in: overlapping.map((entry) => entry.id) } },
        data: { untilDate: dayBefore },
      });
      await tx.enrolment.create({
        data: {
          childId,
          schoolId: schoolClass.schoolId,
          schoolClassId: schoolClass.id,
          fromDate: toDate(fromDate),
          untilDate: untilDate === null ? null : toDate(untilDate),
        },
        select: { id: true },
      });
      await queueRecheck(app, tx, touching({ childIds: [childId] }));
      return ok({ childId });
    },
  );
  if (enrolled.ok) await recheckNow(app, touching({ childIds: [enrolled.value.childId] }));
  return enrolled;
}
