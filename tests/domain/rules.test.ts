import { describe, expect, it } from "@jest/globals";
import fc from "fast-check";
import type { Matcher, Rule, RuleSetDocument } from "../../shared/rule-set.js";
import type { DerivedDish } from "../../src/domain/catalogue/derive.js";
import { createRuleTables, type RuleTables } from "../../src/domain/rules/compile.js";
import { appliesAtBreak, rulesInForce, servingLimits, type RuleInForce } from "../../src/domain/rules/in-force.js";
import { judgeItem } from "../../src/domain/rules/judge-item.js";
import { matches, matchingIngredients, type MatchItem } from "../../src/domain/rules/match.js";
import { readCredits } from "./reference-rows.js";
import {
  deriveSample,
  dishOf,
  sampleBrief,
  sampleChild,
  sampleDay,
  sampleDish,
  sampleFood,
  sampleRuleSet,
} from "./sample-rows.js";

type Input = Record<string, unknown>;

function inForce(...rules: Input[]): RuleInForce[] {
  return sampleRuleSet(rules).rules.map((rule) => ({ ruleSet: 0, rule }));
}

const item = (derived: DerivedDish, over: Partial<MatchItem> = {}): MatchItem => ({
  derived,
  slot: "EXTRA",
  labels: [],
  ...over,
});
const any = (...anyOf: Matcher["anyOf"]): Matcher => ({ anyOf });
const tablesFor = ({ labels }: MatchItem): RuleTables => createRuleTables(labels, readCredits());
const forbiddenIds = (rules: RuleInForce[], of: MatchItem, breakKey = "lunch", grams = of.derived.grams): string[] =>
  judgeItem(rules, of, breakKey, grams, tablesFor(of)).forbidden.map(({ ruleId }) => ruleId);

const apple = sampleFood("apple-raw", { kind: "apple", group: "FRUIT" });
const lemon = sampleFood("lemon-juice", { kind: "lemon", group: "JUICE" });
const cheddar = sampleFood("cheddar", {
  group: "CHEESE",
  origins: ["DAIRY"],
  allergens: ["MILK"],
  chokingClasses: ["FIRM_CHEESE"],
  packaged: true,
});
const wholeFlour = sampleFood("flour-whole", { group: "WHOLE_GRAIN", allergens: ["WHEAT"], wholeGrain: true });
const almonds = sampleFood("almonds", { group: "NUT", allergens: ["ALMOND"] });

describe("a matcher", () => {
  it("wants what it says about ingredients from one and the same ingredient", () => {
    const both = item(dishOf([apple, cheddar], "CUBED"));
    expect(matches(any({ groups: ["CHEESE"], origins: ["DAIRY"], forms: ["CUBED"] }), both)).toBe(true);
    expect(matches(any({ groups: ["FRUIT"], origins: ["DAIRY"] }), both)).toBe(false);
    expect(matches(any({ groups: ["FRUIT"] }, { origins: ["DAIRY"] }), both)).toBe(true);
    expect(
      matches(
        any({ groups: ["CHEESE"], chokingClasses: ["FIRM_CHEESE"], kinds: ["cheddar"], foods: ["cheddar"] }),
        both,
      ),
    ).toBe(true);
    expect(matches(any({ groups: ["WHOLE_GRAIN"], wholeGrain: true }), item(dishOf([wholeFlour])))).toBe(true);
    expect(matches(any({ wholeGrain: true }), both)).toBe(false);
  });
  it("that says wholly wants it from every ingredient", () => {
    const fruitOnly = any({ groups: ["FRUIT"], wholly: true });
    expect(matches(fruitOnly, item(dishOf([apple])))).toBe(true);
    expect(matches(fruitOnly, item(dishOf([apple, cheddar])))).toBe(false);
    expect(matches(any({ groups: ["FRUIT", "JUICE"], wholly: true }), item(dishOf([apple, lemon])))).toBe(true);
  });
  it("that excludes sweets or bagged snacks finds them by their foods, too", () => {
    const sweets = any({ processing: ["CONFECTIONERY"] });
    const snacks = any({ processing: ["SAVOURY_SNACK"] });
    const chocolate = item(dishOf([apple, sampleFood("chocolate", { group: "CONFECTIONERY" })]));
    const crackers = item(dishOf([sampleFood("crackers", { group: "SAVOURY_SNACK" })], "MIXED_IN", { processing: [] }));
    expect([matches(sweets, chocolate), matches(snacks, chocolate)]).toEqual([true, false]);
    expect([matches(sweets, crackers), matches(snacks, crackers)]).toEqual([false, true]);
    expect(matches(sweets, item(dishOf([apple])))).toBe(false);
  });
  it("wants what it says about the dish from the dish", () => {
    const coated = item(
      dishOf([apple], "MIXED_IN", {
        processing: ["COATED"],
        starch: "RICE",
        protein: "EGG",
        cutlery: "FORK",
        spill: "WET",
        cookedInFat: true,
      }),
    );
    expect(matches(any({ processing: ["COATED", "DEEP_FRIED"], starch: ["RICE"], protein: ["EGG"] }), coated)).toBe(
      true,
    );
    expect(
      matches(
        any({ cutlery: ["FORK"], spill: ["WET"], cookedInFat: true, slots: ["EXTRA"], dishes: ["made"] }),
        coated,
      ),
    ).toBe(true);
    for (const clause of [
      { cookedInFat: false },
      { processing: ["PASTRY"] },
      { slots: ["MAIN"] },
      { dishes: ["other"] },
      { spill: ["DRY"] },
    ] as Matcher["anyOf"]) {
      expect(matches(any(clause), coated)).toBe(false);
    }
    expect(matches(any({ processing: ["COATED"], groups: ["CHEESE"] }), coated)).toBe(false);
  });
  it("about an allergen means a may-contain on record too", () => {
    const nuts = any({ allergens: ["TREE_NUTS", "PEANUT"] });
    expect(matches(nuts, item(dishOf([almonds])))).toBe(true);
    expect(matches(nuts, item(dishOf([cheddar])))).toBe(false);
    const labels = [{ food: "cheddar", contains: [], mayContain: ["HAZELNUT" as const], readOn: "2026-09-01" }];
    expect(matches(nuts, item(dishOf([cheddar]), { labels }))).toBe(true);
    expect(matches(nuts, item(dishOf([apple]), { labels }))).toBe(false);
  });
  it("about an allergen means the raw food a cooked one is bought as, and its label", () => {
    const dry = sampleFood("pasta-dry", { allergens: ["WHEAT"], packaged: true });
    const cooked = sampleFood("pasta-cooked", { boughtAs: { food: "pasta-dry", gramsPerGram: 0.4 } });
    const made = sampleDish("pasta", { ingredients: [{ food: "pasta-cooked", grams: 100, form: "MIXED_IN" }] });
    const pasta = item(deriveSample(made, [cooked, dry]));
    expect(matches(any({ allergens: ["GLUTEN_CEREALS"] }), pasta)).toBe(true);
    const labels = [{ food: "pasta-dry", contains: [], mayContain: ["EGG" as const], readOn: "2026-09-01" }];
    expect(matches(any({ allergens: ["EGG"] }), { ...pasta, labels })).toBe(true);
    expect(matches(any({ allergens: ["EGG"] }), pasta)).toBe(false);
  });
  it("selects the ingredients it means, none when the dish is not meant", () => {
    const dish = item(dishOf([apple, cheddar]));
    expect(
      matchingIngredients(any({ groups: ["FRUIT"] }, { origins: ["DAIRY"] }), dish).map(({ food }) => food.key),
    ).toEqual(["apple-raw", "cheddar"]);
    expect(matchingIngredients(any({ groups: ["FRUIT"], slots: ["MAIN"] }), dish)).toEqual([]);
  });
  it("never matches less with a clause more, nor more with a field more", () => {
    const clause = fc.record(
      {
        groups: fc.subarray(["FRUIT" as const, "CHEESE" as const], { minLength: 1 }),
        origins: fc.subarray(["PLANT" as const, "DAIRY" as const], { minLength: 1 }),
        wholly: fc.boolean(),
        slots: fc.subarray(["MAIN" as const, "EXTRA" as const], { minLength: 1 }),
      },
      { requiredKeys: [] },
    );
    const foods = fc.subarray([apple, cheddar, lemon, almonds], { minLength: 1 });
    fc.assert(
      fc.property(clause, clause, foods, (one, other, of) => {
        const dish = item(dishOf(of));
        if (matches(any(one), dish)) {
          expect(matches(any(one, other), dish)).toBe(true);
          expect(matchingIngredients(any(one), dish).length).toBeGreaterThan(0);
        }
        if (matches(any({ ...one, allergens: ["MILK"] }), dish)) expect(matches(any(one), dish)).toBe(true);
      }),
    );
  });
});

describe("rules in force", () => {
  const exclude = { kind: "EXCLUDE", matches: { anyOf: [{ groups: ["NUT"] }] } };
  const idsOn = (date: string, sets: RuleSetDocument[], dateOfBirth = "2018-05-20"): string[] => {
    const brief = sampleBrief({ ruleSets: sets });
    const day = sampleDay(date, { ruleSets: sets.map((_, i) => i) });
    return rulesInForce(brief, sampleChild({ dateOfBirth }), day).map(({ ruleSet: set, rule }) => `${set}:${rule.id}`);
  };

  it("hold from the first to the last day of their set", () => {
    const term = [sampleRuleSet([exclude], { inForceFrom: "2026-09-01", inForceUntil: "2026-12-18" })];
    expect(idsOn("2026-08-31", term)).toEqual([]);
    expect(idsOn("2026-09-01", term)).toEqual(["0:rule-0"]);
    expect(idsOn("2026-12-18", term)).toEqual(["0:rule-0"]);
    expect(idsOn("2026-12-19", term)).toEqual([]);
  });
  it("are for the ages they name, by completed years on the day", () => {
    const young = [
      sampleRuleSet([
        { ...exclude, ages: { underYears: 5 } },
        { ...exclude, ages: { fromYears: 5 } },
      ]),
    ];
    expect(idsOn("2026-09-07", young, "2021-09-08")).toEqual(["0:rule-0"]);
    expect(idsOn("2026-09-08", young, "2021-09-08")).toEqual(["0:rule-1"]);
  });
  it("are for the weekdays they name", () => {
    const fridays = [sampleRuleSet([{ ...exclude, weekdays: ["FRIDAY"] }])];
    expect(idsOn("2026-09-11", fridays)).toEqual(["0:rule-0"]);
    expect(idsOn("2026-09-10", fridays)).toEqual([]);
  });
  it("of every layer hold at once, an adopted set that was not made for food from home too", () => {
    const layers = (["JURISDICTION", "SCHOOL", "CLASS", "CHILD"] as const).map((layer) =>
      sampleRuleSet([exclude], { layer, key: layer.toLowerCase() }),
    );
    expect(idsOn("2026-09-07", layers)).toEqual(["0:rule-0", "1:rule-0", "2:rule-0", "3:rule-0"]);
    const adopted = sampleRuleSet([exclude], { layer: "JURISDICTION", coversFoodFromHome: false });
    expect(idsOn("2026-09-07", [adopted])).toEqual(["0:rule-0"]);
  });
  it("are those of the child's day and no others", () => {
    const brief = sampleBrief({ ruleSets: [sampleRuleSet([exclude]), sampleRuleSet([exclude])] });
    expect(rulesInForce(brief, sampleChild(), sampleDay("2026-09-07", { ruleSets: [1] }))).toMatchObject([
      { ruleSet: 1 },
    ]);
    expect(() => rulesInForce(brief, sampleChild(), sampleDay("2026-09-07", { ruleSets: [2] }))).toThrow(RangeError);
  });
  it("apply at every break unless they name some", () => {
    const [everywhere, snack] = sampleRuleSet([exclude, { ...exclude, breaks: ["snack"] }]).rules as [Rule, Rule];
    expect(appliesAtBreak(everywhere, "lunch")).toBe(true);
    expect(appliesAtBreak(snack, "snack")).toBe(true);
    expect(appliesAtBreak(snack, "lunch")).toBe(false);
  });

  // Outside: 7 CFR 210.10(f)(3), grades K-5: sodium at most 1,110 mg up to 30 June 2027 and 935 mg from 1 July 2027 (SM-8).
  it("change with the date: a week of 1,000 mg of sodium keeps the limit of May 2027 and breaks that of September", () => {
    const sodium = (atMost: number) => ({ kind: "NUTRIENT", nutrient: "NA", per: "ITEM", atMost });
    const sets = [
      sampleRuleSet([sodium(1110)], { inForceFrom: "2024-07-01", inForceUntil: "2027-06-30" }),
      sampleRuleSet([sodium(935)], { inForceFrom: "2027-07-01" }),
    ];
    const meal = item(dishOf([sampleFood("meal", { nutrients: { ENERC_KCAL: 600, NA: 1000 } })]));
    const brief = sampleBrief({ ruleSets: sets });
    const judgeOn = (date: string) =>
      judgeItem(
        rulesInForce(brief, sampleChild(), sampleDay(date, { ruleSets: [0, 1] })),
        meal,
        "lunch",
        100,
        tablesFor(meal),
      );
    expect(judgeOn("2027-05-10").forbidden).toEqual([]);
    expect(judgeOn("2027-09-06").forbidden).toEqual([{ ruleSet: 1, ruleId: "rule-0", kind: "NUTRIENT" }]);
  });
});

describe("what a place allows", () => {
  it("takes every forbidding rule of the break together and leaves advice aside", () => {
    const rules = inForce(
      { kind: "SERVING", minutesToEat: 25 },
      { kind: "SERVING", minutesToEat: 20, breaks: ["lunch"] },
      { kind: "SERVING", noReheating: true, breaks: ["lunch"] },
      { kind: "SERVING", minutesToEat: 5, level: "ADVISE" },
    );
    expect(servingLimits(rules, "lunch")).toEqual({ reheatingAllowed: false, minutesToEat: 20 });
    expect(servingLimits(rules, "snack")).toEqual({ reheatingAllowed: true, minutesToEat: 25 });
    expect(servingLimits([], "lunch")).toEqual({ reheatingAllowed: true, minutesToEat: null });
  });
});

describe("one item against the rules", () => {
  it("is out when a rule excludes it", () => {
    const nutFree = inForce({ kind: "EXCLUDE", matches: { anyOf: [{ allergens: ["TREE_NUTS", "PEANUT"] }] } });
    expect(forbiddenIds(nutFree, item(dishOf([apple, almonds])))).toEqual(["rule-0"]);
    expect(forbiddenIds(nutFree, item(dishOf([apple])))).toEqual([]);
  });
  it("is out at a break that takes only something else", () => {
    const fruitOnly = inForce({
      kind: "ONLY",
      breaks: ["snack"],
      matches: { anyOf: [{ groups: ["FRUIT"], wholly: true }] },
    });
    expect(forbiddenIds(fruitOnly, item(dishOf([cheddar])), "snack")).toEqual(["rule-0"]);
    expect(forbiddenIds(fruitOnly, item(dishOf([apple])), "snack")).toEqual([]);
    expect(forbiddenIds(fruitOnly, item(dishOf([cheddar])), "lunch")).toEqual([]);
  });
  it("needs no cutlery where only finger food is allowed", () => {
    const fingers = inForce({ kind: "SERVING", fingerFoodOnly: true });
    expect(forbiddenIds(fingers, item(dishOf([apple], "WHOLE", { cutlery: "SPOON" })))).toEqual(["rule-0"]);
    expect(forbiddenIds(fingers, item(dishOf([apple], "WHOLE")))).toEqual([]);
    expect(
      forbiddenIds(
        inForce({ kind: "SERVING", litterFree: true, noGlass: true, noReheating: true, noRefrigerator: true }),
        item(dishOf([apple], "WHOLE", { cutlery: "SPOON" })),
      ),
    ).toEqual([]);
  });
  it("that goes against advice is reported apart", () => {
    const advice = inForce({ kind: "EXCLUDE", level: "ADVISE", matches: { anyOf: [{ groups: ["CHEESE"] }] } });
    expect(judgeItem(advice, item(dishOf([cheddar])), "lunch", 100, createRuleTables([], readCredits()))).toEqual({
      forbidden: [],
      advised: [{ ruleSet: 0, ruleId: "rule-0", kind: "EXCLUDE" }],
    });
  });
  it("is not judged by rules that count over a box or a week", () => {
    const nuts = { anyOf: [{ groups: ["NUT"] }] };
    const rules = inForce(
      { kind: "FREQUENCY", matches: nuts, counts: "ITEMS", per: "WEEK", atMost: 0 },
      { kind: "AMOUNT", matches: nuts, unit: "GRAMS", per: "BOX", atMost: 0 },
      { kind: "SHARE", part: nuts, whole: nuts, unit: "GRAMS", atMost: 0 },
      { kind: "TOGETHER", first: nuts, second: nuts },
      { kind: "NUTRIENT", nutrient: "ENERC_KCAL", per: "BOX", atMost: 1 },
    );
    expect(judgeItem(rules, item(dishOf([almonds])), "lunch", 100, createRuleTables([], readCredits()))).toEqual({
      forbidden: [],
      advised: [],
    });
  });

  // Outside: Scotland, SSI 2008/265 Sch. 3: primary lunch 557 kcal within 10 %, fat at most 21.7 g (EN-8).
  it("of 600 kcal with 22.0 g of fat keeps the Scottish energy band and breaks the fat limit", () => {
    const lunch = item(dishOf([sampleFood("lunch", { nutrients: { ENERC_KCAL: 600, FAT: 22.0 } })]));
    const rules = inForce(
      { id: "energy", kind: "NUTRIENT", nutrient: "ENERC_KCAL", per: "ITEM", atLeast: 557 * 0.9, atMost: 557 * 1.1 },
      { id: "fat", kind: "NUTRIENT", nutrient: "FAT", per: "ITEM", atMost: 21.7 },
    );
    expect(forbiddenIds(rules, lunch)).toEqual(["fat"]);
    const kcalOf = (kcal: number) => item(dishOf([sampleFood("lunch", { nutrients: { ENERC_KCAL: kcal, FAT: 20 } })]));
    expect([501.2, 501.4, 612.6, 612.8].map((kcal) => forbiddenIds(rules, kcalOf(kcal)).length)).toEqual([1, 0, 0, 1]);
  });

  // Outside: 7 CFR 210.10: saturated fat below 10 % of energy, 9 kcal/g (SM-4).
  it("of 600 kcal may have 6.6 g of saturated fat under 10 % of energy and not 6.7 g", () => {
    const rules = inForce({ kind: "NUTRIENT", nutrient: "FASAT", per: "ITEM", as: "PERCENT_OF_ENERGY", atMost: 10 });
    const meal = (grams: number) =>
      item(dishOf([sampleFood("meal", { nutrients: { ENERC_KCAL: 600, FASAT: grams } })]));
    expect(forbiddenIds(rules, meal(6.6))).toEqual([]);
    expect(forbiddenIds(rules, meal(6.7))).toEqual(["rule-0"]);
  });

  it("is judged by the child's own portion", () => {
    const rules = inForce({ kind: "NUTRIENT", nutrient: "FREE_SUGAR", per: "ITEM", atMost: 10 });
    const cake = item(dishOf([sampleFood("cake", { freeSugarGrams: 16 })]));
    expect(forbiddenIds(rules, cake, "lunch", 60)).toEqual([]);
    expect(forbiddenIds(rules, cake, "lunch", 70)).toEqual(["rule-0"]);
  });
  it("with a figure missing counts what is known for a minimum and cannot keep a maximum", () => {
    const known = sampleFood("known", { nutrients: { ENERC_KCAL: 100, NA: 5 } });
    const blank = sampleFood("blank", { nutrients: { ENERC_KCAL: 100 } });
    const most = inForce({ kind: "NUTRIENT", nutrient: "NA", per: "ITEM", atMost: 100 });
    const least = inForce({ kind: "NUTRIENT", nutrient: "NA", per: "ITEM", atLeast: 5 });
    expect(forbiddenIds(most, item(dishOf([known])))).toEqual([]);
    expect(forbiddenIds(most, item(dishOf([known, blank])))).toEqual(["rule-0"]);
    expect(forbiddenIds(least, item(dishOf([known, blank])))).toEqual([]);
    expect(forbiddenIds(least, item(dishOf([blank])))).toEqual(["rule-0"]);
  });
  it("cannot be a share of energy by a nutrient that carries none", () => {
    const rules = inForce({ kind: "NUTRIENT", nutrient: "NA", per: "ITEM", as: "PERCENT_OF_ENERGY", atMost: 100 });
    expect(
      forbiddenIds(rules, item(dishOf([sampleFood("salted", { nutrients: { ENERC_KCAL: 100, NA: 1 } })]))),
    ).toEqual(["rule-0"]);
  });
  it("is never freed by a rule more", () => {
    const clause = fc.constantFrom("NUT" as const, "FRUIT" as const, "CHEESE" as const);
    const kinds = fc.constantFrom("EXCLUDE", "ONLY");
    const rules = fc.array(fc.record({ kind: kinds, group: clause }), { maxLength: 4 });
    fc.assert(
      fc.property(rules, fc.subarray([apple, cheddar, almonds], { minLength: 1 }), (list, foods) => {
        if (list.length === 0) return;
        const all = inForce(...list.map(({ kind, group }) => ({ kind, matches: { anyOf: [{ groups: [group] }] } })));
        const dish = item(dishOf(foods));
        const byAll = forbiddenIds(all, dish);
        for (const id of forbiddenIds(all.slice(0, -1), dish)) expect(byAll).toContain(id);
      }),
    );
  });
});
