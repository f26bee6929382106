/** Food or milk the school gives: it counts towards what a child's boxes are for, and into what they may hold. */
import type { Food } from "../../../shared/catalogue.js";
import type { NutrientTag } from "../../../shared/codes.js";
import type { AllergyBrief, ChildDayBrief, GivenFoodBrief } from "../brief.js";
import { widenAllergy } from "../catalogue/allergens.js";

export interface GivenNutrients {
  /** Of what is known; a figure a food lacks counts as nothing, so that no minimum is thought met by it. */
  of(nutrient: NutrientTag): number;
  readonly freeSugarGrams: number;
}

/** What the school has to be able to say of a food it gives: energy, and what is held under a maximum. */
export const neededOfGivenFood = ["ENERC_KCAL", "FASAT", "NA"] as const satisfies readonly NutrientTag[];

/** Whether a food is, or always has, something the child avoids. Nobody counts on it then. */
export function isAvoided(
  food: Pick<Food, "allergens" | "kind">,
  allergies: readonly Pick<AllergyBrief, "allergen" | "foodKind">[],
): boolean {
  return allergies.some((allergy) => {
    const avoided = widenAllergy(allergy);
    return avoided.kinds.has(food.kind) || food.allergens.some((allergen) => avoided.allergens.has(allergen));
  });
}

/** Energy, nutrients and free sugars of what is given on a day, or of its part at one break: a food without a break belongs to all of them, by their shares of the day. */
export function nutrientsGiven(
  day: Pick<ChildDayBrief, "breaks" | "given">,
  allergies: readonly AllergyBrief[],
  foodOf: (key: string) => Food | undefined,
  breakKey: string | null = null,
): GivenNutrients {
  const dayShare = day.breaks.reduce((sum, pause) => sum + pause.energyShare, 0);
  const partOf = (given: GivenFoodBrief): number => {
    const at = given.breakKey ?? null;
    // A break that an early finish drops is one at which nothing is given.
    if (at !== null && !day.breaks.some((pause) => pause.key === at)) return 0;
    if (breakKey === null || at === breakKey) return 1;
    if (at !== null || dayShare === 0) return 0;
    return (day.breaks.find((pause) => pause.key === breakKey)?.energyShare ?? 0) / dayShare;
  };
  const rows = (day.given ?? []).flatMap((given) => {
    const food = foodOf(given.food);
    return food === undefined || isAvoided(food, allergies) ? [] : [{ food, grams: given.grams * partOf(given) }];
  });
  const sum = (per100: (food: Food) => number): number =>
    rows.reduce((total, { food, grams }) => total + (per100(food) * grams) / 100, 0);
  return {
    of: (nutrient) => sum((food) => food.nutrients[nutrient] ?? 0),
    freeSugarGrams: sum((food) => food.freeSugarGrams),
  };
}
