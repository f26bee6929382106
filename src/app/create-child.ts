import { randomUUID } from "node:crypto";
import { createChildInput } from "../../shared/inputs.js";
import { isCalendarDate } from "../domain/calendar/dates.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { changeHousehold, type HouseholdChangeFailure } from "./change-household.js";
import { checkInput, invalid } from "./check-input.js";
import { checkKind } from "./known-kind.js";
import { toDate, todayIn } from "./local-day.js";

export interface CreateChild {
  readonly idempotencyKey: string;
  readonly householdId: string | null;
  readonly seenRevision: number;
  readonly name: string;
  readonly dateOfBirth: string;
  readonly sex?: string | null;
  readonly weightKg?: number | null;
  readonly heightCm?: number | null;
  readonly activity: string;
  readonly diets: readonly string[];
  readonly dislikes: readonly string[];
  readonly allergies: readonly {
    readonly allergen?: string | null;
    readonly foodKind?: string | null;
    readonly avoid: "TRACES" | "INGREDIENTS";
    readonly kindUnknown?: boolean;
  }[];
  readonly minutesToEat: number;
  readonly appetite: number;
  readonly compartments: readonly { readonly ml: number; readonly leakProof: boolean }[];
  readonly coldSources: number;
  readonly insulated: boolean;
  readonly flask: boolean;
  readonly leaveAt: string;
}

export const schoolWeekdays = ["MONDAY", "TUESDAY", "WEDNESDAY", "THURSDAY", "FRIDAY"];
const OLDEST_YEARS = 20;

/** A kind the catalogue does not know yet is kept too, for the day it does, when the sender says that it is meant. */
export async function createChild(
  app: App,
  personId: string,
  input: CreateChild,
): Promise<Result<{ childId: string; householdId: string }, HouseholdChangeFailure>> {
  const checked = checkInput(createChildInput, input);
  if (!checked.ok) return checked;
  const child = checked.value;
  for (const [at, allergy] of child.allergies.entries()) {
    const known = checkKind(app, allergy, `allergies.${at}.foodKind`);
    if (!known.ok) return known;
  }
  if (!isCalendarDate(child.dateOfBirth))
    return fail(
      invalid("dateOfBirth", `${child.dateOfBirth} is no day of the calendar`, "Send a real date as YYYY-MM-DD."),
    );
  const today = app.now().toISOString().slice(0, 10);
  if (child.dateOfBirth > today || Number(child.dateOfBirth.slice(0, 4)) < Number(today.slice(0, 4)) - OLDEST_YEARS) {
    return fail(
      invalid(
        "dateOfBirth",
        `${child.dateOfBirth} is not a school child's`,
        `Send a date of the last ${OLDEST_YEARS} years.`,
      ),
    );
  }
  return changeHousehold(
    app,
    {
      personId,
      action: "createChild",
      key: input.idempotencyKey,
      input,
      householdId: input.householdId,
      seenRevision: input.seenRevision,
      verb: "changeChildren",
    },
    async (tx, householdId) => {
      const childId = randomUUID();
      const home = await tx.household.findUniqueOrThrow({ where: { id: householdId }, select: { timeZone: true } });
      await tx.$executeRaw`select app_found_child(${childId}::uuid, ${householdId}::uuid, ${child.name}, ${toDate(child.dateOfBirth)}::date, ${toDate(todayIn(home.timeZone, app.now()))}::date)`;
      await tx.child.update({
        where: { id: childId },
        data: {
          diets: child.diets,
          dislikes: child.dislikes,
          appetite: child.appetite,
          activity: child.activity,
          minutesToEat: child.minutesToEat,
        },
        select: { id: true },
      });
      await tx.childBody.create({
        data: {
          childId,
          householdId,
          sex: child.sex ?? null,
          weightKg: child.weightKg ?? null,
          heightCm: child.heightCm ?? null,
        },
        select: { id: true },
      });
      await tx.boxKit.create({
        data: {
          childId,
          householdId,
          compartments: child.compartments.map((part) => ({ ...part })),
          coldSources: child.coldSources,
          insulated: input.insulated,
          flask: input.flask,
        },
        select: { id: true },
      });
      await tx.allergy.createMany({
        data: child.allergies.map((allergy) => ({
          childId,
          allergen: allergy.allergen ?? null,
          foodKind: allergy.foodKind ?? null,
          avoid: allergy.avoid,
          recordedByHouseholdId: householdId,
        })),
      });
      await tx.leaveTime.createMany({
        data: schoolWeekdays.map((weekday) => ({ childId, householdId, weekday, leaveAt: child.leaveAt })),
      });
      return ok({ childId });
    },
  );
}
