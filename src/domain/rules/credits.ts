/** How many cups, ounce equivalents, grams or millilitres a matcher means in an item. */
import type { CreditTable } from "../../../shared/credits.js";
import type { AmountUnit } from "../../../shared/rule-set.js";
import type { DerivedDish, FlatIngredient } from "../catalogue/derive.js";
import type { Meant } from "./match.js";

/** For rules that count in nothing that is credited: a cup of anything is not known. */
export const noCredits: CreditTable = {
  note: "credits nothing",
  steps: { CUPS: 1, OZ_EQ: 1, OZ_EQ_MYPLATE: 1 },
  rows: [],
};

/** What is meant in a gram of a dish as served. */
export interface AmountPerGram {
  /** Of what is known; in the unit's own measure, before an item is rounded down. */
  readonly perGram: number;
  /** Foods meant of which nothing is known in this unit. Empty: `perGram` is all there is. */
  readonly unknown: readonly string[];
}

/** Units in one gram of an ingredient; null when that is not known. */
function unitsPerGram(unit: AmountUnit, { food, form }: FlatIngredient, credits: CreditTable): number | null {
  if (unit === "GRAMS") return 1;
  if (unit === "ML") return food.densityGramsPerMl === null ? null : 1 / food.densityGramsPerMl;
  const row = credits.rows.find(
    (candidate) =>
      candidate.unit === unit &&
      (candidate.foods === undefined || candidate.foods.includes(food.key)) &&
      (candidate.kinds === undefined || candidate.kinds.includes(food.kind)) &&
      (candidate.groups === undefined || candidate.groups.includes(food.group)) &&
      (candidate.forms === undefined || candidate.forms.includes(form)),
  );
  if (row === undefined) return null;
  return row.grams === null ? 0 : 1 / row.grams;
}

/** An item meant as a whole weighs what is served and takes the volume of its dish; a credit is always of its ingredients. */
export function amountPerGram(
  unit: AmountUnit,
  { dish, grams }: DerivedDish,
  { ingredients, wholeItem }: Meant,
  credits: CreditTable,
): AmountPerGram {
  if (wholeItem && unit === "GRAMS") return { perGram: 1, unknown: [] };
  if (wholeItem && unit === "ML") return { perGram: dish.volumeMl / grams, unknown: [] };
  let amount = 0;
  const unknown = new Set<string>();
  for (const ingredient of ingredients) {
    const units = unitsPerGram(unit, ingredient, credits);
    if (units === null) unknown.add(ingredient.food.key);
    else amount += ingredient.grams * units;
  }
  return { perGram: amount / grams, unknown: [...unknown] };
}

/** Whole steps of the unit; grams and millilitres have none. `roundCredit("OZ_EQ", 2.035, credits)` is 2 where a step is 0.25. */
export function roundCredit(unit: AmountUnit, amount: number, { steps }: CreditTable): number {
  if (unit === "GRAMS" || unit === "ML") return amount;
  const step = steps[unit];
  // Binary fractions of a step that is reached exactly fall a little short of it.
  return Math.floor(amount / step + 1e-9) * step;
}
