import { provisionEntries } from "../../shared/inputs.js";
import type { AllergyBrief } from "../domain/brief.js";
import { isAvoided, neededOfGivenFood } from "../domain/nutrition/given-food.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { changeHousehold, livesHere, type HouseholdChangeFailure } from "./change-household.js";
import { checkInput, invalid } from "./check-input.js";
import type { FailureOf } from "./failures.js";
import { nearest } from "../domain/nearest.js";

export interface SetSchoolProvision {
  readonly idempotencyKey: string;
  readonly householdId: string | null;
  readonly seenRevision: number;
  readonly childId: string | null;
  readonly entries: readonly {
    readonly food: string;
    readonly grams: number;
    readonly weekday?: string | null;
    readonly breakKey?: string | null;
  }[];
}

/** The column holds codes only; `createChild` checks them. */
type Avoided = Pick<AllergyBrief, "allergen" | "foodKind">;

/**
 * Says what food or milk the school gives a child; replaces the list. Boxes are planned for the rest of the day's need. A food
 * the child avoids is refused, and one of which too little is known to count it under the maxima.
 */
export async function setSchoolProvision(
  app: App,
  personId: string,
  input: SetSchoolProvision,
): Promise<Result<{ childId: string; householdId: string }, HouseholdChangeFailure | FailureOf<"ChildNotFound">>> {
  const checked = checkInput(provisionEntries, input.entries, "entries");
  if (!checked.ok) return checked;
  const entries = checked.value;
  const foods = entries.map(({ food }) => app.index.food(food));
  const stranger = foods.indexOf(undefined);
  if (stranger >= 0) {
    const key = entries[stranger]!.food;
    const keys = app.reference.catalogue.foods.map((food) => food.key);
    const near = nearest(key, keys).join(", ");
    return fail(invalid(`entries.${stranger}.food`, `"${key}" is no food of the catalogue`, `Did you mean ${near}?`));
  }
  const unknown = foods.findIndex((food) => neededOfGivenFood.some((tag) => food?.nutrients[tag] === undefined));
  if (unknown >= 0) {
    const problem = `of "${entries[unknown]!.food}" the energy, saturated fat or sodium is not known`;
    return fail(invalid(`entries.${unknown}.food`, problem, "Choose the nearest food of which they are known."));
  }
  const { childId } = input;
  return changeHousehold<{ childId: string }, FailureOf<"ChildNotFound" | "InvalidInput">>(
    app,
    {
      personId,
      action: "setSchoolProvision",
      key: input.idempotencyKey,
      input,
      householdId: input.householdId,
      seenRevision: input.seenRevision,
      verb: "changeChildren",
    },
    async (tx, householdId) => {
      if (childId === null || !(await livesHere(tx, childId, householdId))) return fail({ kind: "ChildNotFound" });
      const allergies = await tx.allergy.findMany({ where: { childId }, select: { allergen: true, foodKind: true } });
      const avoided = foods.findIndex((food) => food !== undefined && isAvoided(food, allergies as Avoided[]));
      if (avoided >= 0) {
        const problem = `the child avoids "${entries[avoided]!.food}"`;
        const fix = "Tell the school, and leave it out: nobody may count on the child eating it.";
        return fail(invalid(`entries.${avoided}.food`, problem, fix));
      }
      await tx.schoolProvision.deleteMany({ where: { childId } });
      const rows = await tx.food.findMany({
        where: { key: { in: entries.map(({ food }) => food) } },
        select: { id: true, key: true },
      });
      const idOf = new Map(rows.map(({ key, id }) => [key, id]));
      await tx.schoolProvision.createMany({
        data: entries.map(({ food, grams, weekday, breakKey }) => ({
          childId,
          foodId: idOf.get(food)!,
          grams,
          weekday: weekday ?? null,
          breakKey: breakKey ?? null,
        })),
      });
      return ok({ childId });
    },
  );
}
