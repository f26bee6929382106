import { foodSchema, type Food } from "../../shared/catalogue.js";

/** An invented food: shopping needs no nutrients. */
export function sampleFood(key: string, more: Record<string, unknown> = {}): Food {
  return foodSchema.parse({
    key,
    name: key,
    ndb: null,
    kind: key,
    group: "VEGETABLE_OTHER",
    origins: ["PLANT"],
    allergens: [],
    packaged: false,
    nutrients: {},
    sugarRule: "INTACT",
    freeSugarGrams: 0,
    addedSugarGrams: 0,
    refusePercent: 0,
    densityGramsPerMl: null,
    keepsChilledDays: null,
    pack: { grams: 500, priceMinor: 120 },
    shopSection: "PRODUCE",
    ...more,
  });
}
