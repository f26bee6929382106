import { describe, expect, it } from "@jest/globals";
import fc from "fast-check";
import { nutrientTag } from "../../shared/codes.js";
import {
  asBought,
  checkCatalogue,
  deriveDish,
  explainAllergens,
  explainCost,
  indexCatalogue,
} from "../../src/domain/catalogue/derive.js";
import { classifyProcessing, readyMadeShare } from "../../src/domain/catalogue/processing.js";
import { readCatalogue } from "./reference-rows.js";
import { deriveSample, dishOf, sampleBase, sampleDish, sampleFood } from "./sample-rows.js";

describe("a dish's figures", () => {
  // Outside: USDA Standard Reference, per 100 g: egg, hard-boiled (01129) 155 kcal, 12.58 g protein, 50 mg calcium, 1.19 mg iron;
  // white rice, cooked (20045) 130 kcal, 2.69 g, 10 mg, 1.2 mg. Sums by hand for 150 g of rice and one egg of 50 g.
  it("are the composition table's, added up by hand", () => {
    const egg = sampleFood("egg", { nutrients: { ENERC_KCAL: 155, PROCNT: 12.58, CA: 50, FE: 1.19 } });
    const rice = sampleFood("rice", { nutrients: { ENERC_KCAL: 130, PROCNT: 2.69, CA: 10, FE: 1.2 } });
    const base = sampleBase("cooked-rice", {
      ingredients: [{ food: "rice", grams: 600, form: "MIXED_IN" }],
      batchGrams: 600,
    });
    const dish = sampleDish("rice-with-egg", {
      bases: [{ base: "cooked-rice", grams: 150 }],
      ingredients: [{ food: "egg", grams: 50, form: "SLICED_THIN" }],
      portion: { kind: "CONTINUOUS", grams: 200, stepGrams: 10 },
    });
    const derived = deriveSample(dish, [egg, rice], [base]);
    expect(derived.nutrients.ENERC_KCAL).toBeCloseTo(272.5, 10); // 195 + 77.5
    expect(derived.nutrients.PROCNT).toBeCloseTo(10.325, 10); // 4.035 + 6.29
    expect(derived.nutrients.CA).toBeCloseTo(40, 10); // 15 + 25
    expect(derived.nutrients.FE).toBeCloseTo(2.395, 10); // 1.8 + 0.595
    expect(derived.ingredients.map(({ food, grams, viaBase }) => [food.key, grams, viaBase])).toEqual([
      ["rice", 150, "cooked-rice"],
      ["egg", 50, null],
    ]);
  });

  it("take from a base what its ready mass says, not its raw mass", () => {
    const vegetable = sampleFood("courgette", { nutrients: { ENERC_KCAL: 20 } });
    const roasted = sampleBase("roasted", {
      ingredients: [{ food: "courgette", grams: 1000, form: "MIXED_IN" }],
      batchGrams: 700,
    });
    const dish = sampleDish("side", { bases: [{ base: "roasted", grams: 70 }], ingredients: [] });
    const derived = deriveSample(dish, [vegetable], [roasted]);
    expect(derived.ingredients[0]?.grams).toBeCloseTo(100, 10);
    expect(derived.nutrients.ENERC_KCAL).toBeCloseTo(20, 10);
  });

  it("leave a missing nutrient out of the sum and name it, never count it as zero", () => {
    const known = sampleFood("known", { nutrients: { ENERC_KCAL: 100, ZN: 2 } });
    const blank = sampleFood("blank", { nutrients: { ENERC_KCAL: 50 } });
    const derived = dishOf([known, blank]);
    expect(derived.nutrients.ZN).toBe(2);
    expect(derived.missing).toContainEqual({ food: "blank", nutrient: "ZN" });
    expect(derived.missing).not.toContainEqual({ food: "known", nutrient: "ZN" });
    expect("CA" in derived.nutrients).toBe(false);
    expect(derived.missing.filter(({ nutrient }) => nutrient === "CA").map(({ food }) => food)).toEqual([
      "known",
      "blank",
    ]);
  });

  it("know a true zero from a missing figure", () => {
    const derived = dishOf([sampleFood("oil", { nutrients: { ENERC_KCAL: 884, PROCNT: 0 } })]);
    expect(derived.nutrients.PROCNT).toBe(0);
    expect(derived.missing).not.toContainEqual({ food: "oil", nutrient: "PROCNT" });
  });

  it("carry every allergen, origin and packaged food of the bases too", () => {
    const flour = sampleFood("flour", { allergens: ["WHEAT"], packaged: true });
    const cheese = sampleFood("cheese", { allergens: ["MILK"], origins: ["DAIRY"], packaged: true });
    const dough = sampleBase("dough", { ingredients: [{ food: "flour", grams: 100, form: "MIXED_IN" }] });
    const dish = sampleDish("pasty", {
      bases: [{ base: "dough", grams: 60 }],
      ingredients: [{ food: "cheese", grams: 40, form: "GRATED" }],
    });
    const derived = deriveSample(dish, [flour, cheese], [dough]);
    expect(derived.allergens).toEqual(["MILK", "WHEAT"]);
    expect(derived.packagedFoods).toEqual(["cheese", "flour"]);
    expect(derived.origins).toEqual(["DAIRY", "PLANT"]);
  });

  it("lose no allergen, no energy and no cost when an ingredient is added", () => {
    const allergen = fc.constantFrom(
      "MILK" as const,
      "EGG" as const,
      "SESAME" as const,
      "PEANUT" as const,
      "WHEAT" as const,
    );
    const food = fc.record({
      allergens: fc.uniqueArray(allergen, { maxLength: 3 }),
      kcal: fc.integer({ min: 0, max: 900 }),
    });
    fc.assert(
      fc.property(fc.array(food, { minLength: 1, maxLength: 6 }), (rows) => {
        const foods = rows.map((row, i) =>
          sampleFood(`food-${i}`, { allergens: row.allergens, nutrients: { ENERC_KCAL: row.kcal } }),
        );
        const whole = dishOf(foods);
        const part = foods.length > 1 ? dishOf(foods.slice(0, -1)) : null;
        if (part === null) return;
        for (const name of part.allergens) expect(whole.allergens).toContain(name);
        expect(whole.nutrients.ENERC_KCAL ?? 0).toBeGreaterThanOrEqual(part.nutrients.ENERC_KCAL ?? 0);
        expect(whole.costMinor).toBeGreaterThan(part.costMinor);
      }),
    );
  });

  it("name the foods behind every allergen, what is bought of a cooked row included", () => {
    const shop = sampleFood("pasta-dry", { allergens: ["WHEAT", "EGG"] });
    const cooked = sampleFood("pasta", { allergens: ["WHEAT"], boughtAs: { food: "pasta-dry", gramsPerGram: 0.4 } });
    const dish = sampleDish("plain", { ingredients: [{ food: "pasta", grams: 100, form: "WHOLE" }] });
    const keys = explainAllergens(deriveSample(dish, [shop, cooked])).map(({ allergen, foods }) => [
      allergen,
      foods.map(({ key }) => key),
    ]);
    expect(keys).toEqual([
      ["EGG", ["pasta-dry"]],
      ["WHEAT", ["pasta", "pasta-dry"]],
    ]);
  });

  it("cost what their parts cost", () => {
    const derived = dishOf([sampleFood("a", { refusePercent: 20 }), sampleFood("b")]);
    const parts = explainCost(derived);
    expect(parts.map(({ bought, boughtGrams }) => [bought.key, boughtGrams])).toEqual([
      ["a", 125],
      ["b", 100],
    ]);
    expect(parts.reduce((sum, { costMinor }) => sum + costMinor, 0)).toBeCloseTo(derived.costMinor, 10);
  });

  it("say how processed it is: what its row says and what its foods are", () => {
    const sweet = sampleFood("sweet", { group: "CONFECTIONERY" });
    const crisp = sampleFood("crisp", { group: "SAVOURY_SNACK" });
    const derived = dishOf([sweet, crisp, sampleFood("pear"), sampleFood("plum")], "MIXED_IN", {
      processing: ["DEEP_FRIED", "CONFECTIONERY"],
    });
    expect(derived.processing).toEqual(["CONFECTIONERY", "DEEP_FRIED", "SAVOURY_SNACK"]);
    expect(classifyProcessing(derived.dish, [sweet, crisp])).toEqual([
      { tag: "CONFECTIONERY", foods: ["sweet"] },
      { tag: "DEEP_FRIED", foods: [] },
      { tag: "SAVOURY_SNACK", foods: ["crisp"] },
    ]);
    expect(readyMadeShare(derived.ingredients)).toBeCloseTo(0.5, 10);
  });

  it("weigh a dish in pieces by its pieces", () => {
    const dish = sampleDish("rolls", {
      portion: { kind: "PIECES", gramsPerPiece: 25, pieces: 4, stepPieces: 1, pieceName: "roll" },
    });
    expect(deriveSample(dish, [sampleFood("sample")]).grams).toBe(100);
  });
});

describe("an unknown row", () => {
  it("is a fault and never reads as free of allergens", () => {
    const dish = sampleDish("mystery", {
      bases: [{ base: "no-base", grams: 50 }],
      ingredients: [{ food: "no-food", grams: 50, form: "MIXED_IN" }],
    });
    expect(deriveDish(dish, { food: () => undefined, base: () => undefined, cooking: () => undefined })).toEqual({
      ok: false,
      error: [
        { kind: "UnknownBase", dish: "mystery", base: "no-base" },
        { kind: "UnknownFood", of: "DISH", key: "mystery", food: "no-food" },
      ],
    });
    const cooked = sampleFood("cooked", { boughtAs: { food: "no-raw", gramsPerGram: 0.4 } });
    const rows = {
      food: (key: string) => (key === "cooked" ? cooked : undefined),
      base: () => undefined,
      cooking: () => undefined,
    };
    expect(
      deriveDish(sampleDish("made", { ingredients: [{ food: "cooked", grams: 9, form: "MASHED" }] }), rows),
    ).toEqual({
      ok: false,
      error: [{ kind: "UnknownFood", of: "FOOD", key: "cooked", food: "no-raw" }],
    });
    const index = indexCatalogue({ version: "1", foods: [], bases: [], dishes: [dish], retention: [] });
    expect(() => index.derived("mystery")).toThrow(/no-food/);
    expect(() => index.derived("never-heard-of")).toThrow(/never-heard-of/);
  });
});

describe("what is bought", () => {
  const catalogue = readCatalogue();
  const foods = new Map(catalogue.foods.map((food) => [food.key, food]));
  const bought = (key: string, grams: number): { food: string; grams: number } => {
    const food = foods.get(key);
    if (food === undefined) throw new Error(`no food ${key}`);
    const line = asBought(food, grams, (other) => foods.get(other));
    return { food: line.food.key, grams: line.grams };
  };

  // Outside: USDA Standard Reference, banana 36 % refuse: 200 g with skin are 128 g to eat (YP-1).
  it("for 128 g of peeled banana is 200 g with the skin", () => {
    expect(bought("banana-raw", 128)).toEqual({ food: "banana-raw", grams: 200 });
  });

  // Outside: USDA Standard Reference, couscous: 28.3 g dry give 86 g cooked, so 100 g give 303 g (YP-3, within 1 g).
  it("for 303 g of cooked couscous is 100 g dry", () => {
    const line = bought("couscous-cooked", 303);
    expect(line.food).toBe("couscous-dry");
    expect((line.grams * 303) / 100).toBeGreaterThan(302);
    expect((line.grams * 303) / 100).toBeLessThan(304);
  });

  // Outside: USDA Standard Reference household measures: 1/2 cup boiled chickpeas 82 g; 1 cup whole milk 244 g, 1.031 g/ml (YP-4).
  it("has the table's household measures and density", () => {
    const cup = (key: string): number =>
      foods.get(key)?.measures.find(({ measure }) => measure === "1 cup")?.grams ?? Number.NaN;
    expect(cup("chickpeas-boiled") / 2).toBeCloseTo(82, 6);
    expect(cup("milk-whole")).toBe(244);
    expect(Math.abs((foods.get("milk-whole")?.densityGramsPerMl ?? 0) - 1.031)).toBeLessThanOrEqual(0.002);
  });

  it("costs what the pack costs by weight, refuse paid for", () => {
    const melon = sampleFood("melon", { refusePercent: 50, pack: { grams: 1000, priceMinor: 300 } });
    expect(dishOf([melon]).costMinor).toBeCloseTo(60, 10); // 200 g bought of 1 kg at 3.00
  });
});

describe("the catalogue check", () => {
  const foods = [sampleFood("sample")];
  const faultsOf = (rows: Partial<Parameters<typeof checkCatalogue>[0]>): unknown => {
    const result = checkCatalogue({ foods, bases: [], dishes: [], retention: [], ...rows });
    return result.ok ? [] : result.error;
  };

  it("passes sound rows", () => {
    expect(faultsOf({ bases: [sampleBase("base")], dishes: [sampleDish("dish")] })).toEqual([]);
  });

  it("finds a key used twice and a table number used twice", () => {
    expect(faultsOf({ foods: [...foods, ...foods] })).toEqual([{ kind: "DuplicateKey", of: "FOOD", key: "sample" }]);
    expect(faultsOf({ foods: [sampleFood("a", { ndb: "01001" }), sampleFood("b", { ndb: "01001" })] })).toEqual([
      { kind: "DuplicateNdb", ndb: "01001", foods: ["a", "b"] },
    ]);
  });

  it("finds foods and bases that are not there", () => {
    expect(
      faultsOf({ bases: [sampleBase("base", { ingredients: [{ food: "gone", grams: 100, form: "MIXED_IN" }] })] }),
    ).toEqual([{ kind: "UnknownFood", of: "BASE", key: "base", food: "gone" }]);
    expect(
      faultsOf({ dishes: [sampleDish("dish", { bases: [{ base: "gone", grams: 100 }], ingredients: [] })] }),
    ).toEqual([{ kind: "UnknownBase", dish: "dish", base: "gone" }]);
    expect(
      faultsOf({ foods: [...foods, sampleFood("cooked", { boughtAs: { food: "gone", gramsPerGram: 0.4 } })] }),
    ).toEqual([{ kind: "UnknownFood", of: "FOOD", key: "cooked", food: "gone" }]);
  });

  it("finds a food that is bought as one that is itself bought as another", () => {
    const loop = [
      sampleFood("a", { boughtAs: { food: "b", gramsPerGram: 1 } }),
      sampleFood("b", { boughtAs: { food: "a", gramsPerGram: 1 } }),
    ];
    expect(faultsOf({ foods: loop })).toEqual([
      { kind: "BoughtAsChain", food: "a", boughtAs: "b" },
      { kind: "BoughtAsChain", food: "b", boughtAs: "a" },
    ]);
  });

  it("finds mass that appears from nowhere or vanishes", () => {
    expect(faultsOf({ bases: [sampleBase("base", { batchGrams: 150 })] })).toEqual([
      { kind: "MassBalance", of: "BASE", key: "base", inGrams: 100, outGrams: 150 },
    ]);
    expect(
      faultsOf({ dishes: [sampleDish("dish", { portion: { kind: "CONTINUOUS", grams: 10, stepGrams: 1 } })] }),
    ).toEqual([{ kind: "MassBalance", of: "DISH", key: "dish", inGrams: 100, outGrams: 10 }]);
    expect(faultsOf({ dishes: [sampleDish("air", { ingredients: [] })] })).toEqual([
      { kind: "EmptyDish", dish: "air" },
    ]);
  });

  it("finds pieces that the step cannot make", () => {
    const portion = { kind: "PIECES", gramsPerPiece: 40, pieces: 2.5, stepPieces: 1, pieceName: "roll" } as const;
    expect(faultsOf({ dishes: [sampleDish("dish", { portion })] })).toEqual([
      { kind: "PiecesOffStep", dish: "dish", pieces: 2.5, stepPieces: 1 },
    ]);
  });

  it("sums every nutrient tag there is", () => {
    const all = Object.fromEntries(nutrientTag.options.map((tag) => [tag, 7]));
    const derived = dishOf([sampleFood("full", { nutrients: all })]);
    expect(derived.missing).toEqual([]);
    for (const tag of nutrientTag.options) expect(derived.nutrients[tag]).toBe(7);
  });
});
