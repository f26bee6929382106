/** A food as a household enters it from the product in hand, turned into a row of the catalogue. */
import type { Food } from "../../../shared/catalogue.js";
import type { AllergenCode, ChokingClass, NutrientTag } from "../../../shared/codes.js";
import { KJ_PER_KCAL, SALT_PER_SODIUM, type LabelNutrients, type OwnFoodInput } from "../../../shared/own-catalogue.js";

/** Label fields that only change their name: same unit, per 100 g. */
const sameUnit = {
  fatGrams: "FAT",
  saturatedFatGrams: "FASAT",
  fibreGrams: "FIBTG",
  sugarsGrams: "SUGAR",
  proteinGrams: "PROCNT",
  calciumMg: "CA",
  ironMg: "FE",
  magnesiumMg: "MG",
  phosphorusMg: "P",
  potassiumMg: "K",
  zincMg: "ZN",
  vitaminAMicrograms: "VITA_RAE",
  vitaminCMg: "VITC",
  vitaminDMicrograms: "VITD",
  vitaminB12Micrograms: "VITB12",
  folateMicrograms: "FOLDFE",
} as const satisfies Partial<Record<keyof LabelNutrients, NutrientTag>>;

const MG_PER_GRAM = 1000;

/**
 * A label's figures under INFOODS tag names. Sodium from salt by the label law's factor, kcal from kJ. Total carbohydrate is
 * the carbohydrate of a European label plus its fibre; where that label gives no fibre the total stays missing.
 */
export function nutrientsFromLabel(label: LabelNutrients): Food["nutrients"] {
  const nutrients: Partial<Record<NutrientTag, number>> = {};
  for (const [field, tag] of Object.entries(sameUnit)) {
    const figure = label[field as keyof typeof sameUnit];
    if (figure != null) nutrients[tag] = figure;
  }
  if (label.energyKcal != null) nutrients.ENERC_KCAL = label.energyKcal;
  else if (label.energyKj != null) nutrients.ENERC_KCAL = label.energyKj / KJ_PER_KCAL;
  if (label.sodiumMg != null) nutrients.NA = label.sodiumMg;
  else if (label.saltGrams != null) nutrients.NA = (label.saltGrams / SALT_PER_SODIUM) * MG_PER_GRAM;
  if (label.totalCarbohydrateGrams != null) nutrients.CHOCDF = label.totalCarbohydrateGrams;
  else if (label.carbohydrateGrams != null && label.fibreGrams != null)
    nutrients.CHOCDF = label.carbohydrateGrams + label.fibreGrams;
  return nutrients;
}

/**
 * Free and added sugars, g per 100 g, never too few: added sugars where the label has them, else all sugars, else all
 * carbohydrate, else whatever fat and protein leave of 100 g.
 */
function sugarsFromLabel(label: LabelNutrients): Pick<Food, "sugarRule" | "freeSugarGrams" | "addedSugarGrams"> {
  const { addedSugarsGrams: added } = label;
  if (added != null) return { sugarRule: "ADDED_PART", freeSugarGrams: added, addedSugarGrams: added };
  const all =
    label.sugarsGrams ??
    label.carbohydrateGrams ??
    label.totalCarbohydrateGrams ??
    Math.max(0, 100 - (label.fatGrams ?? 0) - (label.proteinGrams ?? 0));
  return { sugarRule: "ALL_FREE", freeSugarGrams: all, addedSugarGrams: all };
}

/**
 * The row of the catalogue. A food whose allergens nobody has stated counts as sold with a label, so that it is unread for
 * everybody who avoids anything, and has what every food of its kind has. Choking classes of reference foods of the same kind are added to those stated. Water activity
 * and pH are not known in a kitchen: it needs cold.
 */
export function foodFromInput(key: string, input: OwnFoodInput, sameKind: readonly Food[]): Food {
  const choking = new Set<ChokingClass>([
    ...input.chokingClasses,
    ...sameKind.flatMap(({ chokingClasses }) => chokingClasses),
  ]);
  return {
    key,
    name: input.name,
    ndb: null,
    kind: input.kind,
    group: input.group,
    origins: input.origins,
    allergens: [...(input.label?.contains ?? allergensOfKind(sameKind))],
    packaged: input.packaged || input.label == null,
    nutrients: nutrientsFromLabel(input.nutrients),
    ...sugarsFromLabel(input.nutrients),
    refusePercent: input.refusePercent,
    densityGramsPerMl: input.densityGramsPerMl ?? null,
    measures: [],
    waterActivity: null,
    ph: null,
    chokingClasses: [...choking].sort(),
    keepsChilledDays: input.keepsChilledDays ?? null,
    keepsFrozenDays: null,
    seasons: [],
    boughtAs: null,
    pack: input.pack,
    shopSection: input.shopSection,
    wholeGrain: input.wholeGrain,
  };
}

/** Allergens that every reference food of a kind has, sorted: a label that has none of them is another food's. */
export function allergensOfKind(sameKind: readonly Food[]): AllergenCode[] {
  const [first, ...others] = sameKind;
  return (first?.allergens ?? [])
    .filter((allergen) => others.every(({ allergens }) => allergens.includes(allergen)))
    .sort();
}
