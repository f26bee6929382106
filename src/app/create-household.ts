import { randomUUID } from "node:crypto";
import { createHouseholdInput } from "../../shared/inputs.js";
import { ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { checkInput } from "./check-input.js";
import type { FailureOf } from "./failures.js";
import { once } from "./once.js";
import { usualEquipment, usualPrepTimes } from "./usual-kitchen.js";

export interface CreateHousehold {
  readonly idempotencyKey: string;
  readonly name: string;
  readonly timeZone: string;
  readonly currency: string;
}

/** A household with a usual kitchen; the person becomes its coordinator. */
export function createHousehold(
  app: App,
  personId: string,
  input: CreateHousehold,
): Promise<Result<{ householdId: string }, FailureOf<"InvalidInput" | "KeyReused">>> {
  const checked = checkInput(createHouseholdInput, input);
  if (!checked.ok) return Promise.resolve(checked);
  return once(app, { personId, action: "createHousehold", key: input.idempotencyKey, input }, async (tx) => {
    const householdId = randomUUID();
    await tx.$executeRaw`select app_found_household(${householdId}::uuid, ${checked.value.name}, ${checked.value.timeZone}, ${checked.value.currency})`;
    await tx.equipment.createMany({ data: usualEquipment.map((entry) => ({ householdId, ...entry })) });
    await tx.prepTime.createMany({ data: usualPrepTimes.map((entry) => ({ householdId, ...entry })) });
    return ok({ householdId });
  });
}
