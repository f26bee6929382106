import { energyExceptions } from "../../src/cli/food-checks/foods.js";
import { describe, expect, it } from "@jest/globals";
import { chokingClass } from "../../shared/codes.js";
import { checkCatalogue, indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { kcalPerGram } from "../../src/domain/nutrition/reference-values.js";
import { readCatalogue, readChokingRules } from "./reference-rows.js";

const catalogue = readCatalogue();
const index = indexCatalogue({ version: "shipped", ...catalogue });

describe("the shipped catalogue", () => {
  it("passes its own check", () => {
    expect(checkCatalogue(catalogue)).toEqual({ ok: true, value: undefined });
  });

  it("holds at least 120 foods, 20 bases and 80 dishes, some for every slot", () => {
    expect(catalogue.foods.length).toBeGreaterThanOrEqual(120);
    expect(catalogue.bases.length).toBeGreaterThanOrEqual(20);
    expect(catalogue.dishes.length).toBeGreaterThanOrEqual(80);
    for (const slot of ["MAIN", "VEGETABLE", "FRUIT", "EXTRA"] as const) {
      expect(catalogue.dishes.filter(({ slots }) => slots.includes(slot)).length).toBeGreaterThanOrEqual(10);
    }
  });

  it("knows the energy, protein and fat of every food", () => {
    for (const { key, nutrients } of catalogue.foods) {
      expect(
        [key, nutrients.ENERC_KCAL, nutrients.PROCNT, nutrients.FAT].filter((figure) => figure === undefined),
      ).toEqual([]);
    }
  });

  it("has parts of a food that do not weigh more than the food", () => {
    // Ash is not in the rows, so the parts fall short of 100 g; the table rounds each of them.
    for (const { key, nutrients: n } of catalogue.foods) {
      const parts = (n.WATER ?? 0) + (n.PROCNT ?? 0) + (n.FAT ?? 0) + (n.CHOCDF ?? 0);
      expect([key, parts > 101]).toEqual([key, false]);
      expect([key, (n.FASAT ?? 0) + (n.FAMS ?? 0) + (n.FAPU ?? 0) > (n.FAT ?? 0) + 0.5]).toEqual([key, false]);
    }
    // These two stand so in the table itself: sugars measured, carbohydrate by difference and lower.
    const sweeter = catalogue.foods.filter(({ nutrients: n }) => (n.SUGAR ?? 0) > (n.CHOCDF ?? 0) + 0.5);
    expect(sweeter.map(({ key }) => key).sort()).toEqual(["goat-cheese-soft", "maple-syrup"]);
  });

  // Outside: USDA Standard Reference energy against the general factors 4-9-4, fibre 2 (common practice).
  it("gives energy that its protein, fat and carbohydrate explain within 10 % or 12 kcal, but for known exceptions", () => {
    const off = catalogue.foods
      .filter(({ nutrients: n }) => {
        const fibre = n.FIBTG ?? 0;
        const explained =
          (n.PROCNT ?? 0) * kcalPerGram.PROCNT +
          (n.FAT ?? 0) * kcalPerGram.FAT +
          ((n.CHOCDF ?? 0) - fibre) * kcalPerGram.CHOCDF +
          fibre * kcalPerGram.FIBTG;
        const table = n.ENERC_KCAL ?? Number.NaN;
        return !(Math.abs(explained - table) <= Math.max(12, 0.1 * table));
      })
      .map(({ key }) => key);
    expect(off.sort()).toEqual(Object.keys(energyExceptions).sort());
    for (const why of Object.values(energyExceptions)) expect(why.length).toBeGreaterThan(10);
  });

  it("derives between 5 and 700 kcal for every dish, a few sticks of cucumber being the least", () => {
    for (const { key } of catalogue.dishes) {
      const kcal = index.derived(key).nutrients.ENERC_KCAL ?? Number.NaN;
      expect([key, kcal >= 5 && kcal <= 700]).toEqual([key, true]);
    }
  });

  it("derives at least 15 kcal for everything that is not a vegetable", () => {
    for (const { key, slots } of catalogue.dishes) {
      if (slots.includes("VEGETABLE")) continue;
      expect([key, (index.derived(key).nutrients.ENERC_KCAL ?? Number.NaN) >= 15]).toEqual([key, true]);
    }
  });

  it("derives a price for every dish, in whole currency between nothing and ten", () => {
    for (const { key } of catalogue.dishes) {
      const cost = index.derived(key).costMinor;
      expect([key, cost > 0 && cost < 1000]).toEqual([key, true]);
    }
  });

  // Outside: USDA Standard Reference per 100 g: chickpeas, boiled (16057) 164 kcal, 8.86 g protein, 2.89 mg iron, 7.6 g fibre; sunflower
  // oil (04506) 884 kcal; paprika (02028) 282 kcal, 14.14 g, 21.14 mg, 34.9 g. For 70 g, 4 g and 0.4 g, by hand; of the paprika's iron
  // 80 % count: it is roasted, no factor was read for it, and no row of the retention table leaves less.
  it("derives for roasted chickpeas what the table gives by hand", () => {
    const { nutrients, allergens } = index.derived("crisp-roasted-chickpeas");
    expect(nutrients.ENERC_KCAL).toBeCloseTo(114.8 + 35.36 + 1.128, 6);
    expect(nutrients.PROCNT).toBeCloseTo(6.202 + 0.05656, 6);
    expect(nutrients.FE).toBeCloseTo(2.023 + 0.8 * 0.08456, 6);
    expect(nutrients.FIBTG).toBeCloseTo(5.32 + 0.1396, 6);
    expect(allergens).toEqual([]);
  });

  // Our own keeping days; a base's first day is the day it is made, or the day after an evening, so the strict one holds for both.
  it("keeps no base longer than the strictest of the rows that go into it as they stand, cooked grain among them", () => {
    const longer = ({ key, keepsChilledDays, ingredients }: (typeof catalogue.bases)[number]): string[] =>
      ingredients
        .filter(({ food, retention }) => {
          const keeps = index.food(food)?.keepsChilledDays ?? null;
          return retention === undefined && keeps !== null && keeps < keepsChilledDays;
        })
        .map(({ food }) => `${key} longer than ${food}`);
    expect(catalogue.bases.flatMap(longer)).toEqual([]);
    const rice = catalogue.bases.find(({ key }) => key === "cooked-rice")!;
    expect(rice.keepsChilledDays).toBe(1);
    expect(longer({ ...rice, keepsChilledDays: 2 })).toEqual(["cooked-rice longer than rice-white-cooked"]);
  });

  it("has a choking rule for every class a food carries", () => {
    const ruled = new Set(readChokingRules().map((rule) => rule.class));
    const carried = new Set(catalogue.foods.flatMap((food) => food.chokingClasses));
    expect(chokingClass.options.filter((of) => carried.has(of) && !ruled.has(of))).toEqual([]);
  });

  it("names milk, egg, fish, wheat, soya, sesame and nuts in the rows that always have them", () => {
    const having = (kindOrGroup: (food: (typeof catalogue.foods)[number]) => boolean) =>
      catalogue.foods.filter(kindOrGroup);
    for (const food of having(({ group }) => group === "CHEESE" || group === "YOGURT")) {
      if (food.origins.includes("DAIRY"))
        expect([food.key, food.allergens]).toEqual([food.key, expect.arrayContaining(["MILK"])]);
    }
    for (const food of having(({ group }) => group === "EGG"))
      expect([food.key, food.allergens]).toEqual([food.key, expect.arrayContaining(["EGG"])]);
    for (const food of having(({ group }) => group === "FISH" || group === "OILY_FISH")) {
      expect([food.key, food.allergens]).toEqual([food.key, expect.arrayContaining(["FISH"])]);
    }
    for (const food of having(({ group }) => group === "NUT"))
      expect([food.key, food.allergens.length > 0]).toEqual([food.key, true]);
    for (const food of having(({ origins }) => origins.includes("DAIRY"))) {
      expect([food.key, food.allergens]).toEqual([food.key, expect.arrayContaining(["MILK"])]);
    }
    for (const food of having(({ key }) => /sesame|tahini/.test(key)))
      expect([food.key, food.allergens]).toEqual([food.key, expect.arrayContaining(["SESAME"])]);
    for (const food of having(({ key }) => /^(soy|tofu|tempeh|edamame)/.test(key))) {
      expect([food.key, food.allergens]).toEqual([food.key, expect.arrayContaining(["SOYA"])]);
    }
  });
});
