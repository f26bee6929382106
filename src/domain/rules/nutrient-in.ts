/** What a dish brings of what NUTRIENT rules speak of. */
import { nutrientUnits } from "../../../shared/codes.js";
import type { RuleNutrient } from "../../../shared/rule-set.js";
import type { DerivedDish } from "../catalogue/derive.js";
import { kcalPerGram } from "../nutrition/reference-values.js";

export interface NutrientIn {
  /** In the reference portion, of what is known to be left after cooking: for minima. */
  readonly known: number;
  /** All there may be: for maxima. */
  readonly most: number;
  /** Foods whose figure is missing; they are in neither sum. */
  readonly missing: readonly string[];
}

const none: readonly string[] = [];

/** Sugars come from the food's own figures and always have one. */
export function nutrientIn(derived: DerivedDish, nutrient: RuleNutrient): NutrientIn {
  if (nutrient === "FREE_SUGAR" || nutrient === "ADDED_SUGAR") {
    const grams = nutrient === "FREE_SUGAR" ? derived.freeSugarGrams : derived.addedSugarGrams;
    return { known: grams, most: grams, missing: none };
  }
  const missing = derived.missing.filter((gap) => gap.nutrient === nutrient).map(({ food }) => food);
  return {
    known: derived.nutrients[nutrient] ?? 0,
    most: derived.nutrientsAtMost[nutrient] ?? 0,
    missing: missing.length === 0 ? none : missing,
  };
}

const factors: Partial<Record<RuleNutrient, number>> = kcalPerGram;

/** kcal in a gram (general factors of Regulation (EU) No 1169/2011, Annex XIV); null for what is no share of energy. */
export const energyFactorOf = (nutrient: RuleNutrient): number | null => factors[nutrient] ?? null;

export type NutrientUnit = "KCAL" | "G" | "MG" | "UG";
const unitNames = { kcal: "KCAL", g: "G", mg: "MG", ug: "UG" } as const;
export const nutrientUnitOf = (nutrient: RuleNutrient): NutrientUnit =>
  nutrient === "FREE_SUGAR" || nutrient === "ADDED_SUGAR" ? "G" : unitNames[nutrientUnits[nutrient]];
