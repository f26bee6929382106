import type { NutrientTag } from "../../../shared/codes.js";
import type { Part, WeekRead } from "./week-read.js";

/** Nutrients that cooking may take from a food, by kind. Of sodium and of all that carries energy nothing is taken off. */
const mayBeLost: readonly (readonly NutrientTag[])[] = [
  ["VITC", "FOLDFE", "VITB12", "VITA_RAE", "VITD"],
  ["CA", "FE", "MG", "P", "K", "ZN"],
];

/** Every percentage on record for one of these nutrients. */
function percentagesOf({ losses }: WeekRead, nutrients: readonly NutrientTag[]): number[] {
  return [...losses.values()].flatMap((row) =>
    Object.entries(row.percent)
      .filter(([tag]) => nutrients.some((nutrient) => nutrient === tag))
      .map(([, percent]) => percent),
  );
}

/**
 * The part of a nutrient that is left in a part of an item, 0 to 1: what a minimum may count on and what a maximum has to
 * reckon with. A printed factor is both. Without one, a minimum gets the worst factor printed for that nutrient, or for its
 * kind if there is none, and a maximum gets everything.
 */
export function leftOf(week: WeekRead, { cooked }: Part, nutrient: NutrientTag): { sure: number; possible: number } {
  const kind = mayBeLost.find((nutrients) => nutrients.includes(nutrient));
  if (cooked === null || !kind) return { sure: 1, possible: 1 };
  const printed = Object.entries(week.losses.get(cooked)?.percent ?? {}).find(([tag]) => tag === nutrient)?.[1];
  if (printed !== undefined) return { sure: printed / 100, possible: printed / 100 };
  const own = percentagesOf(week, [nutrient]);
  const worst = own.length > 0 ? own : percentagesOf(week, kind);
  return { sure: worst.length > 0 ? Math.min(...worst) / 100 : 0, possible: 1 };
}
