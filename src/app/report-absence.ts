/** A child stays home: the day's box falls away and the rest is replanned with as few changes as possible. */
import { absenceReason } from "../../shared/inputs.js";
import { saveDisruption, type ChildDisruptionRow } from "../database/disruption.js";
import { addDays, isCalendarDate } from "../domain/calendar/dates.js";
import { fail, type Result } from "../domain/result.js";
import { randomUUID } from "node:crypto";
import type { App } from "./app.js";
import { nextSchoolDay } from "./assemble-brief.js";
import { checkInput, invalid } from "./check-input.js";
import type { WeekRef } from "./change-week.js";
import type { FailureOf } from "./failures.js";
import { before, checkRevision, type Attempt } from "./once.js";
import { nothingToPack } from "./nothing-to-pack.js";
import { openWeek, planWithProgress, storePlan, weekInfeasible } from "./plan-week.js";

export interface ReportAbsence {
  readonly idempotencyKey: string;
  readonly householdId: string | null;
  readonly childId: string | null;
  readonly date: string;
  readonly reason: string;
  readonly seenRevision: number;
}

export async function reportAbsence(
  app: App,
  personId: string,
  input: ReportAbsence,
): Promise<
  Result<
    WeekRef,
    FailureOf<
      | "InvalidInput"
      | "HouseholdNotFound"
      | "ChildNotFound"
      | "NotPermitted"
      | "RevisionPassed"
      | "KeyReused"
      | "OutsideTerm"
      | "BoxClosed"
      | "WeekInfeasible"
    >
  >
> {
  const { date, childId } = input;
  if (!isCalendarDate(date))
    return fail(invalid("date", `${date} is no day of the calendar`, "Send a real date as YYYY-MM-DD."));
  const reason = checkInput(absenceReason, input.reason, "reason");
  if (!reason.ok) return reason;
  const attempt: Attempt = { personId, action: "reportAbsence", key: input.idempotencyKey, input };
  const known = await before<WeekRef>(app, attempt);
  if (known) return known;
  const opened = await openWeek(app, personId, input.householdId, date, "reportAbsence");
  if (!opened.ok) return opened;
  const inputs = opened.value;
  const { before: old, household, facts, weekStart } = inputs;
  if (childId === null || !household.children.some((child) => child.id === childId))
    return fail({ kind: "ChildNotFound" });
  const passed = await checkRevision<WeekRef>(app, attempt, input.seenRevision, old?.revision ?? 0);
  if (passed) return passed;
  const box = old?.plan.boxes.find((entry) => entry.childId === childId && entry.date === date);
  if (!old || !box)
    return fail({ kind: "OutsideTerm", weekStart, nextSchoolDay: nextSchoolDay(household, addDays(date, 1)) });
  if (box.state === "PACKED" || box.state === "EATEN") return fail({ kind: "BoxClosed", state: box.state });
  const absence: ChildDisruptionRow = {
    id: randomUUID(),
    kind: "ABSENT",
    childId,
    date,
    until: date,
    endsAt: null,
    reason: input.reason,
  };
  const brief = inputs.assemble({
    facts: { ...facts, childDisruptions: [...facts.childDisruptions, absence] },
    stayClose: true,
  });
  const answer =
    brief.children.length === 0 ? nothingToPack : await planWithProgress(app, inputs, brief, { compare: false });
  if (answer.outcome.kind === "INFEASIBLE") return weekInfeasible(answer.outcome.conflicts, brief, inputs);
  return storePlan(app, {
    gone: { kind: "HouseholdNotFound" } as const,
    attempt,
    verb: "reportAbsence",
    seenRevision: input.seenRevision,
    inputs,
    brief,
    answer: { ...answer, outcome: answer.outcome },
    also: (tx) => saveDisruption(tx, household.id, absence),
  });
}
