import { dishSchema } from "../../shared/catalogue.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { stockAfter } from "../../src/domain/shopping/shopping.js";
import { withSpareUses } from "../../src/domain/shopping/spare-uses.js";
import type { ShoppingLinePlan, SpareUse } from "../../src/domain/week.js";
import { sampleFood } from "../support/shop-foods.js";

/** Days chilled once opened and days frozen: invented, but of the size published tables give (common practice). */
const foods = [
  sampleFood("feta", { shopSection: "CHILLED", keepsChilledDays: 7 }),
  sampleFood("raspberry", { keepsChilledDays: 2 }),
  sampleFood("mince", {
    shopSection: "MEAT_FISH",
    keepsChilledDays: 1,
    keepsFrozenDays: { value: 90, source: "invented table" },
  }),
  sampleFood("flour", { shopSection: "DRY_GOODS" }),
  sampleFood("passata", { shopSection: "TINS_JARS" }),
  sampleFood("pea", { shopSection: "FROZEN", keepsChilledDays: 2 }),
  sampleFood("cumin", { shopSection: "SPICES_OILS" }),
  sampleFood("lemon", { keepsChilledDays: 14 }),
  sampleFood("pea-cooked", { shopSection: "FROZEN", boughtAs: { food: "pea", gramsPerGram: 1 } }),
];
const dish = (key: string, ...ingredients: [food: string, grams: number][]) =>
  dishSchema.parse({
    key, name: key, slots: ["EXTRA"], bases: [], ingredients: ingredients.map(([food, grams]) => ({ food, grams })),
    portion: { kind: "CONTINUOUS", grams: ingredients.reduce((sum, [, grams]) => sum + grams, 0), stepGrams: 10 },
    steps: [{ text: "Put it together.", handsOnFixedMinutes: 1, handsOnPerPortionMinutes: 1, passiveMinutes: 0, eveningBefore: false }],
    served: "COLD", goodForHours: 6, cutlery: "NONE", spill: "DRY", volumeMl: 100, starch: "NONE", protein: "NONE",
    colours: [], textures: [], flavours: [], cuisine: "home",
  }); // prettier-ignore
const index = indexCatalogue({
  version: "test",
  retention: [],
  foods,
  bases: [],
  dishes: [
    dish("feta-plain", ["feta", 30]),
    dish("feta-with-lemon", ["feta", 60], ["lemon", 10]),
    dish("feta-and-raspberries", ["feta", 90], ["raspberry", 30]),
    dish("feta-pastry", ["feta", 40], ["flour", 40]),
    dish("peas-warm", ["pea-cooked", 60]),
  ],
});

const line = (food: string, spareGrams: number, more: Partial<ShoppingLinePlan> = {}): ShoppingLinePlan => ({
  food, section: "", neededGrams: 20, fromStockGrams: 0, packs: 1, packGrams: 20 + spareGrams, spareGrams, costMinor: 100,
  readLabel: false, stockGrams: 0, ...more,
}); // prettier-ignore
const monday = "2027-01-11";
const nextWeek = "2027-01-18";

function usesOf(food: string, openedOn: string | null, spareGrams = 100, list: readonly string[] = [food]) {
  const lines = withSpareUses({
    index,
    lines: list.map((key) => line(key, spareGrams)),
    openedOn: new Map(openedOn === null ? [] : [[food, openedOn]]),
    nextWeek,
    mayHave: new Map([
      ["feta-plain", ["mina"]],
      ["feta-with-lemon", ["mina", "theo"]],
      ["feta-and-raspberries", ["theo"]],
      ["feta-pastry", ["theo"]],
      ["peas-warm", ["mina"]],
    ]),
    inStock: new Set(["flour"]),
  });
  return lines.find((row) => row.food === food);
}
const kinds = (food: string, openedOn: string | null) =>
  usesOf(food, openedOn)?.spareUses?.filter(({ kind }) => kind !== "DISHES");

describe("what is left of a pack", () => {
  it("keeps chilled for so many days, the day it is opened counted as the first", () => {
    // Opened Monday the 11th, seven days: up to Sunday the 17th, a day short of the next week.
    expect(kinds("feta", monday)).toEqual([{ kind: "EAT_BY", untilDate: "2027-01-17" }]);
    expect(kinds("feta", "2027-01-12")).toEqual([
      { kind: "KEEPS_FOR_NEXT_WEEK", where: "REFRIGERATOR", untilDate: "2027-01-18" },
    ]);
    expect(kinds("raspberry", "2027-01-14")).toEqual([{ kind: "EAT_BY", untilDate: "2027-01-15" }]);
  });

  it("may be frozen where somebody published for how long", () => {
    expect(kinds("mince", monday)).toEqual([
      { kind: "EAT_BY", untilDate: monday },
      { kind: "FREEZES", days: 90, source: "invented table" },
    ]);
  });

  it("waits in the cupboard when it is sold dry, in the freezer when it is sold frozen", () => {
    expect(kinds("flour", monday)).toEqual([{ kind: "KEEPS_FOR_NEXT_WEEK", where: "CUPBOARD", untilDate: null }]);
    expect(kinds("cumin", monday)).toEqual([{ kind: "KEEPS_FOR_NEXT_WEEK", where: "CUPBOARD", untilDate: null }]);
    expect(kinds("pea", monday)).toEqual([{ kind: "KEEPS_FOR_NEXT_WEEK", where: "FREEZER", untilDate: null }]);
  });

  it("is never said to keep when nobody wrote down how long, or when nobody knows since when it is open", () => {
    expect(kinds("passata", monday)).toEqual([{ kind: "KEEPING_UNKNOWN" }]);
    expect(kinds("feta", null)).toEqual([{ kind: "KEEPING_UNKNOWN" }]);
  });

  it("goes into dishes the children may have: what needs nothing else bought first, then what takes most of it", () => {
    const dishes = (list: readonly string[]) =>
      usesOf("feta", monday, 100, list)?.spareUses?.flatMap((use) => (use.kind === "DISHES" ? use.dishes : []));
    // Flour is in the cupboard; lemon and raspberries would have to be bought.
    expect(dishes(["feta"])?.map((row) => row.dish)).toEqual(["feta-pastry", "feta-plain", "feta-and-raspberries"]);
    expect(dishes(["feta", "lemon"])).toEqual([
      { dish: "feta-with-lemon", childIds: ["mina", "theo"] },
      { dish: "feta-pastry", childIds: ["theo"] },
      { dish: "feta-plain", childIds: ["mina"] },
    ]);
  });

  it("is used by a dish whose recipe has it cooked", () => {
    expect(usesOf("pea", monday)?.spareUses).toContainEqual({
      kind: "DISHES",
      dishes: [{ dish: "peas-warm", childIds: ["mina"] }],
    });
  });

  it("is not spoken of when it is a scrape", () => {
    expect(usesOf("feta", monday, 9)?.spareUses).toBeUndefined();
    expect(usesOf("feta", monday, 10)?.spareUses).toBeDefined();
  });
});

describe("the cupboard after the week", () => {
  const keeps: readonly SpareUse[] = [{ kind: "KEEPS_FOR_NEXT_WEEK", where: "CUPBOARD", untilDate: null }];
  it("has what was there less what the week took, and of the spare only what keeps", () => {
    expect(stockAfter(line("flour", 180, { stockGrams: 300, fromStockGrams: 300, spareUses: keeps }))).toBe(180);
    expect(stockAfter(line("feta", 180, { spareUses: [{ kind: "EAT_BY", untilDate: monday }] }))).toBe(0);
    expect(stockAfter(line("flour", 0, { stockGrams: 900, fromStockGrams: 360, packs: 0 }))).toBe(540);
  });
  it("is not known for a week planned before it was kept", () => {
    expect(stockAfter(line("flour", 180, { stockGrams: null }))).toBeNull();
  });
});
