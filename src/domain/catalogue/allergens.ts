/** Allergies and diets against what a dish is made of. Where something is not known, the answer is the careful one. */
import {
  allergenGroups,
  type AllergenCode,
  type AllergenGroupCode,
  type DietCode,
  type OriginCode,
} from "../../../shared/codes.js";
import { kindFamilies, mixtures } from "../../../shared/food-kinds.js";
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

/** What an allergy is about: allergens by code, and food kinds. */
interface Avoided {
  readonly allergens: ReadonlySet<AllergenCode>;
  readonly kinds: ReadonlySet<string>;
}

/**
 * All that an entry of a child's list means: of an allergen its members; of a single food every kind of its family, the
 * allergen that rows and labels call it by, and the mixtures it is in. An entry that names nothing means nothing.
 */
export function widenAllergy({ allergen, foodKind }: Pick<AllergyBrief, "allergen" | "foodKind">): Avoided {
  if (allergen !== null) return { allergens: new Set(expandAllergen(allergen)), kinds: new Set() };
  if (foodKind === null) return { allergens: new Set(), kinds: new Set() };
  const named = [foodKind, ...(mixtures[foodKind]?.of ?? [])];
  const families = kindFamilies.filter(({ kinds }) => kinds.some((kind) => named.includes(kind)));
  const kinds = new Set([...named, ...families.flatMap((family) => family.kinds)]);
  for (const [mixture, { of }] of Object.entries(mixtures)) if (of.some((kind) => kinds.has(kind))) kinds.add(mixture);
  return { allergens: new Set(families.flatMap((family) => family.allergen ?? [])), kinds };
}

type LabelFinding = "CONTAINS" | "MAY_CONTAIN" | "UNREAD" | "CLEAR";
const worstFirst: readonly LabelFinding[] = ["CONTAINS", "MAY_CONTAIN", "UNREAD", "CLEAR"];

/**
 * Labels of the food and of what it is bought as; the worst finding stands. For a single food a label that was not searched for
 * that very kind is unread, unless it names the kind's family.
 */
function readLabels(
  allergy: AllergyBrief,
  avoided: Avoided,
  { food, bought }: FlatIngredient,
  labels: readonly LabelBrief[],
): LabelFinding {
  const findings = labels
    .filter((label) => label.food === food.key || label.food === bought.key)
    .map((label): LabelFinding => {
      const found = (label.kinds ?? []).filter(({ kind }) => avoided.kinds.has(kind));
      const says = (what: LabelFinding): boolean => found.some((one) => one.says === what);
      if (says("CONTAINS") || label.contains.some((allergen) => avoided.allergens.has(allergen))) return "CONTAINS";
      if (says("MAY_CONTAIN") || label.mayContain.some((allergen) => avoided.allergens.has(allergen)))
        return "MAY_CONTAIN";
      return allergy.foodKind === null || found.some(({ kind }) => kind === allergy.foodKind) ? "CLEAR" : "UNREAD";
    });
  return worstFirst.find((finding) => findings.includes(finding)) ?? "UNREAD";
}

/**
 * Judges one dish for a child's whole list. An allergen is matched by name, a food kind by the kind of each ingredient and by its
 * family (`widenAllergy`), both also on the raw row that a cooked one is bought as. A may-contain on a label shuts out only the child who avoids traces.
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
    const avoided = widenAllergy(allergy);
    const named = allergy.allergen ?? allergy.foodKind ?? "";
    for (const ingredient of d.ingredients) {
      const { food, bought } = ingredient;
      const always = [...food.allergens, ...bought.allergens].find((allergen) => avoided.allergens.has(allergen));
      if (always !== undefined) return { kind: "CONTAINS", allergen: allergy.foodKind ?? always, food: food.key };
      if (avoided.kinds.has(food.kind) || avoided.kinds.has(bought.kind))
        return { kind: "CONTAINS", allergen: named, food: food.key };
      const finding = readLabels(allergy, avoided, ingredient, labels);
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
