import { describe, expect, it } from "@jest/globals";
import { nutrientTag, type NutrientTag } from "../../shared/codes.js";
import type { Dish, Retention } from "../../shared/catalogue.js";
import { isMet } from "../../src/cli/food-checks/check.js";
import { yieldChecks } from "../../src/cli/food-checks/yields.js";
import { checkCatalogue, deriveDish, explainNutrient, indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { indexRetention } from "../../src/domain/catalogue/retention.js";
import { createRuleTables } from "../../src/domain/rules/compile.js";
import { judgeItem } from "../../src/domain/rules/judge-item.js";
import { ruleSchema, type Rule } from "../../shared/rule-set.js";
import { readCatalogue, readCredits } from "./reference-rows.js";
import { deriveSample, sampleBase, sampleDish, sampleFood } from "./sample-rows.js";

const catalogue = readCatalogue();
const cookingOf = indexRetention(catalogue.retention);
const retained = (code: string, nutrient: NutrientTag) => {
  const cooking = cookingOf(code);
  if (cooking === undefined) throw new Error(`no retention row ${code}`);
  return cooking.retained[nutrient];
};

const full = Object.fromEntries(nutrientTag.options.map((tag) => [tag, 100]));
const raw = sampleFood("greens", { nutrients: full });
/** 100 g of a food with 100 of every nutrient per 100 g. */
const boiled = (retention: string | undefined, over: Partial<Dish> = {}) =>
  deriveSample(
    sampleDish("boiled", {
      ingredients: [
        { food: "greens", grams: 100, form: "COOKED_SOFT", ...(retention === undefined ? {} : { retention }) },
      ],
      ...over,
    }),
    [raw],
    [],
    catalogue.retention,
  );

describe("what cooking leaves", () => {
  // Outside: USDA Table of Nutrient Retention Factors, Release 6 (2007), codes 3775, 0521 and 2152.
  it.each([
    ["3775", "VITC", 0.75],
    ["3775", "K", 0.9],
    ["3775", "FOLDFE", 0.65],
    ["0521", "MG", 0.75],
    ["0521", "FE", 0.8],
    ["2152", "VITB12", 0.55],
  ] as const)("by code %s is the published part of %s", (code, nutrient, part) => {
    expect(retained(code, nutrient)).toEqual({ basis: "TABLE", atLeast: part, atMost: part });
    expect(boiled(code).nutrients[nutrient]).toBeCloseTo(100 * part, 10);
    expect(boiled(code).nutrientsAtMost[nutrient]).toBeCloseTo(100 * part, 10);
  });

  it("is all of energy, of what carries it, and of sodium, whatever the method", () => {
    const untouched: NutrientTag[] = [
      "ENERC_KCAL",
      "PROCNT",
      "FAT",
      "FASAT",
      "FAMS",
      "FAPU",
      "CHOCDF",
      "FIBTG",
      "SUGAR",
      "NA",
    ];
    for (const { code } of catalogue.retention) {
      for (const nutrient of untouched) {
        expect([code, nutrient, boiled(code).nutrients[nutrient]]).toEqual([code, nutrient, 100]);
        expect(boiled(code).nutrientsAtMost[nutrient]).toBe(100);
      }
    }
  });

  it("where no factor was read is the least any row leaves for a minimum, and everything for a maximum", () => {
    // Stir-fried vegetables: of calcium no factor was read. The least any row leaves of it is 85 % (pulses).
    expect(retained("3785", "CA")).toEqual({ basis: "FLOOR", atLeast: 0.85, atMost: 1 });
    // Of phosphorus and vitamin D no row has one: the least of any mineral (potassium 70 %) and any vitamin (55 %).
    expect(retained("3785", "P")).toEqual({ basis: "FLOOR", atLeast: 0.7, atMost: 1 });
    expect(retained("3785", "VITD")).toEqual({ basis: "FLOOR", atLeast: 0.55, atMost: 1 });
    expect([boiled("3785").nutrients.CA, boiled("3785").nutrientsAtMost.CA]).toEqual([85, 100]);
  });

  it("is never more than there was, and a minimum never counts more than a maximum", () => {
    for (const { code } of catalogue.retention) {
      for (const nutrient of nutrientTag.options) {
        const { atLeast, atMost } = retained(code, nutrient);
        expect(atLeast).toBeGreaterThan(0);
        expect(atLeast).toBeLessThanOrEqual(atMost);
        expect(atMost).toBeLessThanOrEqual(1);
      }
    }
  });

  it("is everything of what is eaten raw", () => {
    expect(boiled(undefined).nutrients).toEqual(full);
    expect(boiled(undefined).nutrientsAtMost).toEqual(full);
  });

  it("is counted in bases as in dishes, per gram of the ready base", () => {
    const base = sampleBase("pot", {
      ingredients: [{ food: "greens", grams: 200, form: "MIXED_IN", retention: "3775" }],
      batchGrams: 160,
    });
    const dish = sampleDish("side", { bases: [{ base: "pot", grams: 80 }], ingredients: [] });
    // Half the batch: 100 g raw, of which 75 % of the vitamin C is left.
    expect(deriveSample(dish, [raw], [base], catalogue.retention).nutrients.VITC).toBeCloseTo(75, 10);
  });

  it("of a table without rows is nothing a minimum could count", () => {
    const one: Retention = { code: "9999", cooked: "Anything, anyhow", percent: {}, source: "invented" };
    expect(indexRetention([one])("9999")?.retained.CA).toEqual({ basis: "FLOOR", atLeast: 0, atMost: 1 });
  });
});

describe("a limit or a minimum of a school", () => {
  const broken = (bounds: { atLeast?: number; atMost?: number }): boolean => {
    const rule: Rule = ruleSchema.parse({
      id: "calcium",
      kind: "NUTRIENT",
      level: "FORBID",
      says: "An invented rule.",
      source: "invented",
      nutrient: "CA",
      as: "AMOUNT",
      per: "ITEM",
      ...bounds,
    });
    const item = { derived: boiled("3785"), slot: "MAIN", labels: [] } as const;
    return (
      judgeItem([{ ruleSet: 0, rule }], item, "lunch", 100, createRuleTables([], readCredits())).forbidden.length > 0
    );
  };

  it("holds a minimum against what surely is left and a maximum against what may be", () => {
    expect([broken({ atLeast: 85 }), broken({ atLeast: 86 })]).toEqual([false, true]);
    expect([broken({ atMost: 100 }), broken({ atMost: 99 })]).toEqual([false, true]);
  });
});

describe("a figure's derivation", () => {
  it("adds up to the figure, addend by addend, for every dish and nutrient of the catalogue", () => {
    const index = indexCatalogue({ version: "shipped", ...catalogue });
    for (const { key } of catalogue.dishes) {
      const derived = index.derived(key);
      for (const nutrient of nutrientTag.options) {
        const { total, atMost, parts, missing } = explainNutrient(derived, nutrient);
        const byHand = parts.reduce(
          (sum, { grams, per100, retained: { atLeast } }) => sum + (grams * per100 * atLeast) / 100,
          0,
        );
        expect(total ?? 0).toBeCloseTo(byHand, 8);
        expect(parts.reduce((sum, { amount }) => sum + amount, 0)).toBeCloseTo(total ?? 0, 8);
        expect(atMost ?? 0).toBeGreaterThanOrEqual(total ?? 0);
        expect(parts.length + derived.ingredients.filter(({ food }) => missing.includes(food.key)).length).toBe(
          derived.ingredients.length,
        );
      }
    }
  });

  it("names the row of the table and says when there was no factor in it", () => {
    expect(explainNutrient(boiled("3785"), "CA")).toMatchObject({
      total: 85,
      atMost: 100,
      parts: [{ grams: 100, per100: 100, retention: { code: "3785" }, retained: { basis: "FLOOR" }, amount: 85 }],
      missing: [],
    });
  });
});

describe("a catalogue", () => {
  const faultsOf = (ingredient: Dish["ingredients"][number], foods = [raw]): unknown => {
    const dish = sampleDish("dish", { ingredients: [ingredient] });
    const result = checkCatalogue({ foods, bases: [], dishes: [dish], retention: catalogue.retention });
    return result.ok ? [] : result.error;
  };

  it("with a retention code that the table lacks is at fault, and the dish is not derived", () => {
    const ingredient = { food: "greens", grams: 100, form: "MIXED_IN", retention: "9999" } as const;
    const fault = { kind: "UnknownRetention", of: "DISH", key: "dish", food: "greens", retention: "9999" };
    expect(faultsOf(ingredient)).toEqual([fault]);
    const rows = { food: () => raw, base: () => undefined, cooking: cookingOf };
    expect(deriveDish(sampleDish("dish", { ingredients: [ingredient] }), rows)).toEqual({ ok: false, error: [fault] });
  });

  it("that cooks a cooked row again is at fault: its losses would count twice", () => {
    const cooked = sampleFood("boiled-greens", { boughtAs: { food: "greens", gramsPerGram: 1 } });
    expect(faultsOf({ food: "boiled-greens", grams: 100, form: "MIXED_IN", retention: "3775" }, [raw, cooked])).toEqual(
      [{ kind: "CookedTwice", of: "DISH", key: "dish", food: "boiled-greens" }],
    );
  });

  it("with two rows of one code is at fault", () => {
    const [first] = catalogue.retention;
    if (first === undefined) throw new Error("the retention table is empty");
    expect(checkCatalogue({ foods: [], bases: [], dishes: [], retention: [first, first] })).toEqual({
      ok: false,
      error: [{ kind: "DuplicateRetention", code: first.code }],
    });
  });
});

describe("published yields, edible shares and cooked rows", () => {
  const checks = yieldChecks(catalogue);

  // Outside: the source of each line; the misfits among cooked rows are part of what is expected.
  it.each(checks.map((check) => [check.id, check] as const))("%s comes out as published", (_, check) => {
    expect({ ...check, met: isMet(check) }).toEqual({ ...check, met: true });
  });

  it("compare at least two dozen cooked rows with a factor, each with its raw one", () => {
    const compared = checks.filter(({ id, about }) => id.startsWith("CR-") && about.includes("retention "));
    expect(compared.filter(({ about }) => !about.includes("no retention")).length).toBeGreaterThanOrEqual(24);
  });

  it("can fail: a yield a tenth off, a vitamin doubled and a banana without skin are noticed", () => {
    const changed = catalogue.foods.map((food) =>
      food.key === "banana-raw"
        ? { ...food, refusePercent: 0 }
        : food.key === "carrot-boiled"
          ? { ...food, nutrients: { ...food.nutrients, VITC: 12 } }
          : food.key === "rice-white-cooked" && food.boughtAs !== null
            ? { ...food, boughtAs: { ...food.boughtAs, gramsPerGram: food.boughtAs.gramsPerGram * 1.1 } }
            : food,
    );
    const failed = yieldChecks({ ...catalogue, foods: changed }).filter((check) => !isMet(check));
    expect(failed.map(({ id }) => id).sort()).toEqual(["CR-carrot-boiled", "YP-1", "YP-refuse", "YP-solids"]);
  });
});
