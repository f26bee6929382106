/** Small invented rows for tests of the domain; figures in them stand for nothing unless a test says so. */
import { ruleSetDocument, type RuleSetDocument } from "../../shared/rule-set.js";
import type { Base, Dish, Food, Retention } from "../../shared/catalogue.js";
import type { ChildBrief, ChildDayBrief, WeekBrief } from "../../src/domain/brief.js";
import { readCredits, readMealShares } from "./reference-rows.js";
import { deriveDish, type DerivedDish } from "../../src/domain/catalogue/derive.js";
import { indexRetention } from "../../src/domain/catalogue/retention.js";

export function sampleFood(key: string, over: Partial<Food> = {}): Food {
  return {
    key,
    name: `Sample ${key}`,
    ndb: null,
    kind: key,
    group: "VEGETABLE_OTHER",
    origins: ["PLANT"],
    allergens: [],
    packaged: false,
    nutrients: { ENERC_KCAL: 100, PROCNT: 5 },
    sugarRule: "INTACT",
    freeSugarGrams: 0,
    addedSugarGrams: 0,
    refusePercent: 0,
    densityGramsPerMl: null,
    measures: [],
    waterActivity: null,
    ph: null,
    chokingClasses: [],
    keepsChilledDays: 5,
    keepsFrozenDays: null,
    seasons: [],
    boughtAs: null,
    pack: { grams: 500, priceMinor: 100 },
    shopSection: "PRODUCE",
    wholeGrain: false,
    ...over,
  };
}

export function sampleBase(key: string, over: Partial<Base> = {}): Base {
  return {
    key,
    name: `Sample ${key}`,
    kind: "GRAIN",
    ingredients: [{ food: "sample", grams: 100, form: "MIXED_IN" }],
    batchGrams: 100,
    fixedHandsOnMinutes: 1,
    perBatchHandsOnMinutes: 1,
    passiveMinutes: 0,
    equipment: [],
    equipmentMinutes: 0,
    maxBatches: 2,
    windows: ["EVENING"],
    keepsChilledDays: 3,
    keepsFrozenDays: null,
    storageMl: 200,
    steps: ["Cook it through."],
    ...over,
  };
}

export function sampleDish(key: string, over: Partial<Dish> = {}): Dish {
  return {
    key,
    name: `Sample ${key}`,
    slots: ["MAIN"],
    bases: [],
    ingredients: [{ food: "sample", grams: 100, form: "MIXED_IN" }],
    portion: { kind: "CONTINUOUS", grams: 100, stepGrams: 10 },
    steps: [
      {
        text: "Put it in the box.",
        handsOnFixedMinutes: 1,
        handsOnPerPortionMinutes: 1,
        passiveMinutes: 0,
        equipment: [],
        batchPortions: null,
        eveningBefore: false,
        coolMinutes: 0,
        heldWhileCooling: false,
      },
    ],
    served: "COLD",
    goodForHours: 12,
    cutlery: "NONE",
    spill: "DRY",
    volumeMl: 150,
    starch: "NONE",
    protein: "NONE",
    colours: [],
    textures: [],
    flavours: [],
    cuisine: "home",
    processing: [],
    cookedInFat: false,
    treat: false,
    ...over,
  };
}

/** A dish with its foods and bases, derived; the test fails when a row is unknown. */
export function deriveSample(
  dish: Dish,
  foods: readonly Food[],
  bases: readonly Base[] = [],
  retention: readonly Retention[] = [],
): DerivedDish {
  const derived = deriveDish(dish, {
    food: (key) => foods.find((food) => food.key === key),
    base: (key) => bases.find((base) => base.key === key),
    cooking: indexRetention(retention),
  });
  if (!derived.ok) throw new Error(JSON.stringify(derived.error));
  return derived.value;
}

/** One dish made of these foods, 100 g each, in the given form. */
export function dishOf(
  foods: readonly Food[],
  form: Dish["ingredients"][number]["form"] = "MIXED_IN",
  over: Partial<Dish> = {},
): DerivedDish {
  const ingredients = foods.map((food) => ({ food: food.key, grams: 100, form }));
  const portion = { kind: "CONTINUOUS" as const, grams: 100 * foods.length, stepGrams: 10 };
  return deriveSample(sampleDish("made", { ingredients, portion, ...over }), foods);
}

export function sampleDay(date: string, over: Partial<ChildDayBrief> = {}): ChildDayBrief {
  return { date, weekday: "MONDAY", leaveAt: "08:30", breaks: [], facility: "NEITHER", ruleSets: [0], ...over };
}

export function sampleChild(over: Partial<ChildBrief> = {}): ChildBrief {
  return {
    id: "child",
    name: "Child",
    dateOfBirth: "2018-05-20",
    sex: null,
    weightKg: null,
    heightCm: null,
    activity: "LOW_ACTIVE",
    appetite: 1,
    diets: [],
    dislikes: [],
    minutesToEat: 20,
    allergies: [],
    box: { compartments: [{ ml: 900, leakProof: false }], coldSources: 2, insulated: true, flask: false },
    schoolName: "School",
    days: [],
    ...over,
  };
}

export function sampleBrief(over: Partial<WeekBrief> = {}): WeekBrief {
  return {
    format: "noonpail-brief/1",
    weekStart: "2026-09-07",
    household: { id: "home", name: "Home", currency: "EUR", keepsOut: [], equipment: [], refrigeratorMl: 20_000 },
    sessions: [],
    children: [],
    catalogue: { version: "sample", foods: [], bases: [], dishes: [], retention: [] },
    ruleSets: [],
    choking: [],
    slotShares: readMealShares().slots,
    credits: readCredits(),
    holding: {
      chilledMinutes: 240,
      coldSources: 2,
      flaskMinutes: 240,
      ambientMinutes: 120,
      hotDayAmbientMinutes: 60,
      hotDayAboveC: 32,
      source: "sample",
    },
    stock: [],
    ready: [],
    labels: [],
    relaxations: [],
    pins: [],
    made: [],
    outOf: [],
    history: [],
    stayCloseTo: [],
    sharing: true,
    ...over,
  };
}

/** Rules get the ids rule-0, rule-1, ... unless they bring their own. */
export function sampleRuleSet(
  rules: readonly Record<string, unknown>[],
  over: Record<string, unknown> = {},
): RuleSetDocument {
  return ruleSetDocument.parse({
    format: "noonpail-rule-set/1",
    key: "sample-school",
    title: "Sample school",
    layer: "SCHOOL",
    coversFoodFromHome: true,
    language: "en",
    version: 1,
    inForceFrom: "2026-01-01",
    rules: rules.map((rule, i) => ({
      id: `rule-${i}`,
      says: "A rule for a test.",
      level: "FORBID",
      source: "sample",
      ...rule,
    })),
    ...over,
  });
}
