/** Allergies and diets against what a dish is made of. Where something is not known, the answer is the careful one. */
import {
  allergenGroups,
  type AllergenCode,
  type AllergenGroupCode,
  type DietCode,
  type OriginCode,
} from "../../../shared/codes.js";
import type { AllergyBrief, LabelBrief } from "../brief.js";
import { labelledAs, type DerivedDish, type FlatIngredient } from "./derive.js";

export type AllergyVerdict =
  | { readonly kind: "CLEAR" }
  | { readonly kind: "CLEAR_IF_LABEL_READ"; readonly foods: string[] }
  | { readonly kind: "CONTAINS"; readonly allergen: string; readonly food: string }
  | { readonly kind: "MAY_CONTAIN"; readonly allergen: string; readonly food: string };

/** The allergens a name stands for: itself, or the members of a family. */
export function expandAllergen(allergen: AllergenCode | AllergenGroupCode): readonly AllergenCode[] {
  return Object.hasOwn(allergenGroups, allergen)
    ? allergenGroups[allergen as AllergenGroupCode]
    : [allergen as AllergenCode];
}

type LabelFinding = "CONTAINS" | "MAY_CONTAIN" | "UNREAD" | "CLEAR";
const worstFirst: readonly LabelFinding[] = ["CONTAINS", "MAY_CONTAIN", "UNREAD", "CLEAR"];

/**
 * Labels of the food and of what it is bought as; the worst finding stands. A label that does not speak of a food kind is unread.
 */
function readLabels(
  allergy: AllergyBrief,
  avoided: readonly AllergenCode[],
  { food, bought }: FlatIngredient,
  labels: readonly LabelBrief[],
): LabelFinding {
  const findings = labels
    .filter((label) => label.food === food.key || label.food === bought.key)
    .map((label): LabelFinding => {
      if (allergy.foodKind !== null)
        return label.kinds?.find((found) => found.kind === allergy.foodKind)?.says ?? "UNREAD";
      if (label.contains.some((allergen) => avoided.includes(allergen))) return "CONTAINS";
      return label.mayContain.some((allergen) => avoided.includes(allergen)) ? "MAY_CONTAIN" : "CLEAR";
    });
  return worstFirst.find((finding) => findings.includes(finding)) ?? "UNREAD";
}

/**
 * Judges one dish for a child's whole list. An allergen is matched by name, a food kind by the kind of each ingredient, both
 * also on the raw row that a cooked one is bought as. A may-contain on a label shuts out only the child who avoids traces.
 * A packaged food whose label is not on record is plannable and must be read before packing, for every allergy: a brand may
 * add as an ingredient what the generic food does not have. The worst finding is returned: CONTAINS, then MAY_CONTAIN, then
 * the labels to read, sorted by key. Throws RangeError on an allergy that names nothing: it would pass everything.
 */
export function judgeAllergies(
  allergies: readonly AllergyBrief[],
  d: DerivedDish,
  labels: readonly LabelBrief[],
): AllergyVerdict {
  const toRead = new Set<string>();
  let mayContain: AllergyVerdict | null = null;
  for (const allergy of allergies) {
    if (allergy.allergen === null && allergy.foodKind === null) throw new RangeError("an allergy names nothing");
    const avoided = allergy.allergen === null ? [] : expandAllergen(allergy.allergen);
    for (const ingredient of d.ingredients) {
      const { food, bought } = ingredient;
      const always = [...food.allergens, ...bought.allergens].find((allergen) => avoided.includes(allergen));
      if (always !== undefined) return { kind: "CONTAINS", allergen: always, food: food.key };
      if (allergy.foodKind !== null && (food.kind === allergy.foodKind || bought.kind === allergy.foodKind)) {
        return { kind: "CONTAINS", allergen: allergy.foodKind, food: food.key };
      }
      const finding = readLabels(allergy, avoided, ingredient, labels);
      const named = allergy.allergen ?? allergy.foodKind ?? "";
      if (finding === "CONTAINS") return { kind: "CONTAINS", allergen: named, food: food.key };
      if (finding === "MAY_CONTAIN" && allergy.avoid === "TRACES") {
        mayContain ??= { kind: "MAY_CONTAIN", allergen: named, food: food.key };
      }
      const labelled = labelledAs(ingredient);
      if (finding === "UNREAD" && labelled !== null) toRead.add(labelled);
    }
  }
  if (mayContain !== null) return mayContain;
  return toRead.size > 0 ? { kind: "CLEAR_IF_LABEL_READ", foods: [...toRead].sort() } : { kind: "CLEAR" };
}

const fleshOrigins: readonly OriginCode[] = ["MEAT", "PORK", "BEEF", "POULTRY"];

/** Gelatine is shut out wherever the animal it may come from is: the rows do not say which animal that was. */
const shutOut: Readonly<Record<DietCode, readonly OriginCode[]>> = {
  VEGETARIAN: [...fleshOrigins, "FISH", "SEAFOOD", "GELATINE"],
  VEGAN: [...fleshOrigins, "FISH", "SEAFOOD", "GELATINE", "EGG", "DAIRY", "HONEY"],
  PESCATARIAN: [...fleshOrigins, "GELATINE"],
  HALAL: ["PORK", "ALCOHOL", "GELATINE"],
  NO_PORK: ["PORK", "GELATINE"],
  NO_BEEF: ["BEEF", "GELATINE"],
};

/**
 * True when none of the origins is shut out by any of the diets. HALAL shuts out pork, alcohol and gelatine; meat, beef and
 * poultry pass on the understanding that the household buys halal meat, which the rows cannot know.
 */
export function dietAllows(diets: readonly DietCode[], origins: readonly OriginCode[]): boolean {
  return diets.every((diet) => origins.every((origin) => !shutOut[diet].includes(origin)));
}
