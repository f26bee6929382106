import { describe, expect, it } from "@jest/globals";
import fc from "fast-check";
import type { Dish } from "../../shared/catalogue.js";
import type { CreditUnit } from "../../shared/credits.js";
import { creditUnit } from "../../shared/credits.js";
import type { AmountUnit, Matcher } from "../../shared/rule-set.js";
import { createRuleTables } from "../../src/domain/rules/compile.js";
import { roundCredit } from "../../src/domain/rules/credits.js";
import { readCatalogue, readCredits } from "./reference-rows.js";
import { deriveSample, sampleDish, sampleFood } from "./sample-rows.js";

const { foods, bases, dishes } = readCatalogue();
const credits = readCredits();
const every: Matcher = {
  anyOf: [{ groups: foods.map(({ group }) => group).filter((g, at, all) => all.indexOf(g) === at) }],
};

/** What grams of one food of the catalogue bring. */
function credited(
  unit: AmountUnit,
  food: string,
  grams: number,
  form: Dish["ingredients"][number]["form"] = "MIXED_IN",
) {
  const derived = deriveSample(
    sampleDish("one", {
      ingredients: [{ food, grams: 100, form }],
      portion: { kind: "CONTINUOUS", grams: 100, stepGrams: 1 },
    }),
    foods,
  );
  const tables = createRuleTables([], credits);
  const number = tables.numberOf(derived, "MAIN");
  return tables.tableOf(every).amount(unit, number, grams);
}

describe("what the meal pattern credits", () => {
  // Outside (SM-1): USDA Exhibit A, group B, 28 g; an English muffin of 57 g is 2.035 ounce equivalents and credits 2.00.
  it("rounds a muffin of 57 g down to two ounce equivalents of grain", () => {
    expect(credited("OZ_EQ", "muffin-english", 57)).toBe(2);
    expect(credited("OZ_EQ", "muffin-english", 55.9)).toBe(1.75);
    expect(credited("OZ_EQ", "muffin-english", 56)).toBe(2);
  });
  // Outside (SM-2): 7 CFR 210.10(c)(2)(ii) and (iii): dried fruit counts twice its volume, raw leafy greens half of it. The
  // weight of a cup is the table's own: romaine shredded 47 g (11251), raisins not packed 145 g (09298).
  it("takes a cup of raw romaine for half a cup and a quarter cup of raisins for half a cup", () => {
    expect(credited("CUPS", "lettuce-romaine-raw", 47, "STRIPS")).toBe(0.5);
    expect(credited("CUPS", "raisins", 145 / 4)).toBe(0.5);
  });
  // Outside: 7 CFR 210.10: fruit and vegetables credit from 1/8 cup on, grains and meat alternates from 1/4 ounce equivalent on.
  it("counts nothing below the smallest creditable amount", () => {
    expect([credited("CUPS", "grapes-raw", 18), credited("CUPS", "grapes-raw", 19)]).toEqual([0, 0.125]);
    expect([credited("OZ_EQ", "bread-wholemeal", 6.9), credited("OZ_EQ", "bread-wholemeal", 7)]).toEqual([0, 0.25]);
  });
  // Outside: CDSS, Crediting Grains Using Ounce Equivalents: 16 g of flour, 28 g of dry rice, half a cup of cooked rice (158 g a cup,
  // 20445) are one ounce equivalent each.
  it("credits flour, dry and cooked grain by their own weights", () => {
    expect(credited("OZ_EQ", "wheat-flour-wholemeal", 16)).toBe(1);
    expect(credited("OZ_EQ", "rice-white-raw", 28)).toBe(1);
    expect(credited("OZ_EQ", "rice-white-cooked", 79)).toBe(1);
  });
  // Outside: MyPlate, What counts as an ounce-equivalent of protein foods: one egg, 1 tablespoon of nut butter, half an ounce of nuts.
  // The programme's credits, half an egg and 2 tablespoons, are from memory.
  it("keeps the programme's ounce equivalent apart from the consumer's", () => {
    expect([credited("OZ_EQ", "egg-boiled", 50), credited("OZ_EQ_MYPLATE", "egg-boiled", 50)]).toEqual([2, 1]);
    expect([credited("OZ_EQ", "peanut-butter", 32), credited("OZ_EQ_MYPLATE", "peanut-butter", 32)]).toEqual([1, 2]);
    expect([credited("OZ_EQ", "almonds", 28.35), credited("OZ_EQ_MYPLATE", "almonds", 28.35)]).toEqual([1, 2]);
  });
  // Outside: 7 CFR 210.10(c)(2)(iv): 4 oz of yogurt is one ounce equivalent; acorns, chestnuts and coconut do not credit.
  it("takes four ounces of yogurt for one and coconut for none", () => {
    expect(credited("OZ_EQ", "yoghurt-plain-whole", 113.4)).toBe(1);
    expect(credited("OZ_EQ", "coconut-desiccated", 200)).toBe(0);
  });
  // Outside: the household measures of the composition table, 8 fl oz of milk and of orange juice.
  it("counts milk and juice by the cup", () => {
    expect(credited("CUPS", "milk-whole", 244)).toBe(1);
    expect(credited("CUPS", "orange-juice", 248)).toBe(1);
  });
  it("adds up what the ingredients of an item bring before it rounds", () => {
    const half = (food: string) => ({ food, grams: 18, form: "MIXED_IN" as const });
    const derived = deriveSample(
      sampleDish("two", {
        ingredients: [half("bread-wholemeal"), half("bread-rye")],
        portion: { kind: "CONTINUOUS", grams: 36, stepGrams: 1 },
      }),
      foods,
    );
    const tables = createRuleTables([], credits);
    // 18 g are 0.64 and round to 0.5 each; 36 g are 1.29 and round to 1.25.
    expect(tables.tableOf(every).amount("OZ_EQ", tables.numberOf(derived, "MAIN"), 36)).toBe(1.25);
  });
  it("says which foods it knows nothing of, and counts them as nothing", () => {
    const puffed = sampleFood("own-crisp-thing", { group: "PULSE", kind: "something-new" });
    const derived = deriveSample(
      sampleDish("new", {
        ingredients: [{ food: "own-crisp-thing", grams: 100, form: "WHOLE" }],
        portion: { kind: "CONTINUOUS", grams: 100, stepGrams: 1 },
      }),
      [puffed],
    );
    const tables = createRuleTables([], credits);
    const number = tables.numberOf(derived, "MAIN");
    const pulses = tables.tableOf({ anyOf: [{ groups: ["PULSE"] }] });
    expect(pulses.perGram("OZ_EQ", number)).toEqual({ perGram: 0, unknown: ["own-crisp-thing"] });
    // A matcher that does not mean it has nothing to know of it.
    expect(tables.tableOf({ anyOf: [{ groups: ["FRUIT"] }] }).perGram("OZ_EQ", number).unknown).toEqual([]);
  });
  it("never credits more than there is, loses less than a step, and grows with the portion", () =>
    fc.assert(
      fc.property(
        fc.constantFrom<CreditUnit>(...creditUnit.options),
        fc.double({ min: 0, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (unit, amount, more) => {
          const found = roundCredit(unit, amount, credits);
          expect(found).toBeLessThanOrEqual(amount + 1e-8);
          expect(amount - found).toBeLessThan(credits.steps[unit]);
          expect(roundCredit(unit, amount + more, credits)).toBeGreaterThanOrEqual(found);
        },
      ),
    ));
});

describe("the crediting table", () => {
  it("names only foods there are, and no row that another before it hides", () => {
    const known = new Set(foods.map(({ key }) => key));
    for (const { foods: named = [] } of credits.rows) expect(named.filter((key) => !known.has(key))).toEqual([]);
    const seen = new Set<string>();
    for (const { unit, foods: named = [], forms } of credits.rows) {
      for (const key of named) {
        expect(seen).not.toContain(`${unit}/${key}`);
        if (forms === undefined) seen.add(`${unit}/${key}`);
      }
    }
  });
  it("says of every row where it is from, and of what is from memory that it is unverified", () => {
    const loose = credits.rows.filter(({ source }) => /memory/.test(source) && !/unverified/.test(source));
    expect(loose).toEqual([]);
  });
  it("knows what every food of the dishes brings, but for the few named here", () => {
    const used = new Set([...bases, ...dishes].flatMap(({ ingredients }) => ingredients.map(({ food }) => food)));
    const tables = createRuleTables([], credits);
    const unknown = (unit: CreditUnit): string[] =>
      foods
        .filter(({ key }) => used.has(key))
        .filter(({ key }) => {
          const derived = deriveSample(
            sampleDish(key, { ingredients: [{ food: key, grams: 100, form: "MIXED_IN" }] }),
            foods,
          );
          return tables.tableOf(every).perGram(unit, tables.numberOf(derived, "MAIN")).unknown.length > 0;
        })
        .map(({ key }) => key);
    // No household measure of a cup of figs, and no source read on what flour of pulses credits as.
    expect(unknown("CUPS").sort()).toEqual(["chickpea-flour", "fig-raw"]);
    expect(unknown("OZ_EQ")).toEqual(["chickpea-flour"]);
    expect(unknown("OZ_EQ_MYPLATE")).toEqual(["chickpea-flour"]);
  });
});
