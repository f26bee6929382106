/** Every kind of rule over a week of boxes, against worked examples of published school-meal standards. */
import { describe, expect, it } from "@jest/globals";
import type { Dish, Food } from "../../shared/catalogue.js";
import type { RuleSetDocument } from "../../shared/rule-set.js";
import type { ChildBrief, WeekBrief } from "../../src/domain/brief.js";
import { addDays } from "../../src/domain/calendar/dates.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { compileRuleSets } from "../../src/domain/rules/compile.js";
import { judgeWeek, type EatenBox, type EatenItem, type RuleJudgement } from "../../src/domain/rules/judge-week.js";
import { readCatalogue, readCredits } from "./reference-rows.js";
import { sampleBrief, sampleChild, sampleDay, sampleDish, sampleFood, sampleRuleSet } from "./sample-rows.js";

type Input = Record<string, unknown>;
const MONDAY = "2026-09-07";
const catalogue = readCatalogue();

/** A dish that is one food and nothing else. */
const plain = (food: Food, over: Partial<Dish> = {}): Dish =>
  sampleDish(food.key, {
    ingredients: [{ food: food.key, grams: 100, form: "WHOLE" }],
    portion: { kind: "CONTINUOUS", grams: 100, stepGrams: 1 },
    slots: ["MAIN", "EXTRA"],
    volumeMl: 100,
    ...over,
  });

const item = (dish: string, grams: number, over: Partial<EatenItem> = {}): EatenItem => ({
  breakKey: "lunch",
  slot: "MAIN",
  position: 0,
  dish,
  grams,
  holding: { case: "CHILLED" },
  ...over,
});

interface Setting {
  /** Dishes of one food each: own ones here, or foods of the catalogue by key. */
  readonly foods?: readonly Food[];
  readonly dishes?: readonly Dish[];
  /** First school day; as many days as `boxes` has follow. */
  readonly from?: string;
  readonly child?: Partial<ChildBrief>;
  readonly history?: WeekBrief["history"];
  readonly exempt?: Readonly<Record<string, readonly string[]>>;
  readonly setsOn?: (date: string) => number[];
}

const lunch = {
  key: "lunch",
  name: "Lunch",
  startsAt: "12:00",
  minutes: 30,
  slots: ["MAIN" as const],
  energyShare: 0.3,
};

/** The boxes of one child from a Monday on, a list of items a day, under these documents. */
function judge(sets: readonly RuleSetDocument[], boxes: readonly (readonly EatenItem[])[], setting: Setting = {}) {
  const from = setting.from ?? MONDAY;
  const own = setting.foods ?? [];
  const foods = [...catalogue.foods, ...own];
  const named = new Set(boxes.flat().map(({ dish }) => dish));
  const dishes = [
    ...(setting.dishes ?? []),
    ...foods.filter(({ key }) => named.has(key)).map((food) => plain(food)),
  ].filter((dish, at, all) => all.findIndex(({ key }) => key === dish.key) === at);
  const index = indexCatalogue({ version: "test", foods, bases: [], dishes, retention: catalogue.retention });
  const child = sampleChild({
    ...setting.child,
    days: boxes.map((_, at) => {
      const date = addDays(from, at);
      return sampleDay(date, {
        breaks: [lunch],
        ruleSets: setting.setsOn?.(date) ?? sets.map((_, set) => set),
        exempt: (setting.exempt?.[date] ?? []).map((rule) => ({ ruleSet: 0, rule })),
      });
    }),
  });
  const brief = sampleBrief({ weekStart: from, children: [child], ruleSets: sets, history: setting.history ?? [] });
  const eaten: EatenBox[] = boxes.map((items, at) => ({ childId: child.id, date: addDays(from, at), items }));
  return judgeWeek(brief, compileRuleSets(sets, index, [], readCredits()), eaten);
}

const states = (judged: readonly RuleJudgement[]): string[] => judged.map(({ state }) => state);
const week = (items: readonly EatenItem[]): EatenItem[][] => Array.from({ length: 5 }, () => [...items]);
const grains = { anyOf: [{ groups: ["GRAIN", "WHOLE_GRAIN", "BREAD"] }] };

describe("the United States school-lunch pattern", () => {
  // Outside (SM-3): 7 CFR 210.10(c)(2)(iii)(A): at least 80 % of the week's grain ounce equivalents are whole-grain-rich.
  it("finds 7.75 of 10 ounce equivalents of grain too little whole grain", () => {
    const wholeGrain = sampleRuleSet([
      { kind: "SHARE", part: { anyOf: [{ wholeGrain: true }] }, whole: grains, unit: "OZ_EQ", atLeast: 0.8 },
    ]);
    const days = (last: number, white: number) => [
      ...Array.from({ length: 3 }, () => [item("bread-wholemeal", 56)]),
      [item("bread-wholemeal", last)],
      [item("bread-white", white)],
    ];
    const [short] = judge([wholeGrain], days(49, 63));
    expect(short).toMatchObject({ state: "NOT_MET", found: 0.775, atLeast: 0.8, unit: "SHARE", date: null });
    expect(judge([wholeGrain], days(56, 56))).toMatchObject([{ state: "MET", found: 0.8 }]);
  });

  // Outside (SM-4): 7 CFR 210.10: saturated fat under 10 % of the week's energy; 9 kcal a gram: 6.6 g of 600 kcal are 9.9 %.
  it("lets 9.9 % of energy from saturated fat pass and not 10.05 %", () => {
    const lean = sampleRuleSet([
      { kind: "NUTRIENT", nutrient: "FASAT", per: "WEEK_MEAN", as: "PERCENT_OF_ENERGY", atMost: 10 },
    ]);
    const meal = (grams: number) => [sampleFood("meal", { nutrients: { ENERC_KCAL: 600, FASAT: grams } })];
    const [passes] = judge([lean], week([item("meal", 100)]), { foods: meal(6.6) });
    expect(passes).toMatchObject({ state: "MET", unit: "PERCENT_OF_ENERGY" });
    expect(passes!.found).toBeCloseTo(9.9, 10);
    const [fails] = judge([lean], week([item("meal", 100)]), { foods: meal(6.7) });
    expect(fails!.state).toBe("NOT_MET");
    expect(fails!.found).toBeCloseTo(10.05, 10);
  });

  // Outside (SM-5): 7 CFR 210.10(c)(2)(iii)(D): a week's grains change by a fifth for each day fewer than five: 8 x 0.8 = 6.4.
  it("asks 6.4 ounce equivalents of grain of a week of four days", () => {
    const least = sampleRuleSet([{ kind: "AMOUNT", matches: grains, unit: "OZ_EQ", per: "WEEK", atLeast: 8 }]);
    const four = (last: number) => [56, 42, 42, last].map((grams) => [item("bread-white", grams)]);
    const [short] = judge([least], four(35));
    expect(short).toMatchObject({ state: "NOT_MET", found: 6.25, unit: "OZ_EQ" });
    expect(short!.atLeast).toBeCloseTo(6.4, 10);
    expect(judge([least], four(42))).toMatchObject([{ state: "MET", found: 6.5 }]);
    expect(judge([least], [...four(42), [item("bread-white", 42)]])).toMatchObject([{ atLeast: 8, found: 8 }]);
  });

  const salty = [sampleFood("meal", { nutrients: { ENERC_KCAL: 600, NA: 1000 } })];
  const sodium = (atMost: number, over: Input) => ({
    kind: "NUTRIENT",
    nutrient: "NA",
    per: "WEEK_MEAN",
    atMost,
    ...over,
  });
  const both = sampleRuleSet(
    [sodium(1110, { inForceUntil: "2027-06-30" }), sodium(935, { inForceFrom: "2027-07-01" })],
    {
      inForceFrom: "2024-07-01",
    },
  );
  // Outside (SM-8): USDA, sodium limits of the final rule of 25 April 2024, grades K-5: 1,110 mg through 30 June 2027, 935 mg from 1
  // July 2027.
  it("lets a week of 1,000 mg of sodium pass in May 2027 and not in September", () => {
    const judged = (from: string) => judge([both], week([item("meal", 100)]), { foods: salty, from });
    expect(judged("2027-05-10")).toMatchObject([
      { rule: { id: "rule-0" }, state: "MET", found: 1000, atMost: 1110, unit: "MG" },
      { rule: { id: "rule-1" }, state: "NOT_APPLICABLE", reason: "NOT_IN_FORCE" },
    ]);
    expect(judged("2027-09-06")).toMatchObject([
      { rule: { id: "rule-0" }, state: "NOT_APPLICABLE", reason: "NOT_IN_FORCE" },
      { rule: { id: "rule-1" }, state: "NOT_MET", found: 1000, atMost: 935 },
    ]);
  });
  it("holds each limit over its own days in the week of 28 June to 2 July 2027", () => {
    const meal = (key: string, mg: number) => sampleFood(key, { nutrients: { ENERC_KCAL: 600, NA: mg } });
    const foods = [meal("heavy", 1120), meal("light", 900)];
    const days = [...Array.from({ length: 3 }, () => "heavy"), "light", "light"];
    const boxes = days.map((dish) => [item(dish, 100)]);
    const judged = judge([both], boxes, { foods, from: "2027-06-28" });
    // Monday to Wednesday 1,120 mg on average, Thursday and Friday 900: over the week 1,032, which neither limit is held against.
    expect(judged).toMatchObject([
      { rule: { id: "rule-0" }, state: "NOT_MET", found: 1120, atMost: 1110, date: null },
      { rule: { id: "rule-1" }, state: "MET", found: 900, atMost: 935, date: null },
    ]);
    // The same as two versions of a document, the day saying which of them holds.
    const versions = [
      sampleRuleSet([sodium(1110, {})], { inForceFrom: "2024-07-01" }),
      sampleRuleSet([sodium(935, {})], { version: 2, inForceFrom: "2027-07-01" }),
    ];
    const setsOn = (date: string) => [date < "2027-07-01" ? 0 : 1];
    expect(judge(versions, boxes, { foods, from: "2027-06-28", setsOn })).toMatchObject([
      { ruleSet: 0, state: "NOT_MET", found: 1120, atMost: 1110 },
      { ruleSet: 1, state: "MET", found: 900, atMost: 935 },
    ]);
  });

  // Outside: 7 CFR 210.10(c)(2)(iii)(C): at most 2 ounce equivalents of grain a week come as a dessert.
  it("counts grain in desserts and leaves other grain alone", () => {
    const dessert = sampleRuleSet([
      {
        kind: "AMOUNT",
        matches: { anyOf: [{ processing: ["CAKE_OR_BISCUIT"], groups: ["GRAIN", "WHOLE_GRAIN", "CONFECTIONERY"] }] },
        unit: "OZ_EQ",
        per: "WEEK",
        atMost: 2,
      },
    ]);
    const cake = sampleDish("cake", {
      ingredients: [
        { food: "wheat-flour-white", grams: 40, form: "MIXED_IN" },
        { food: "egg-raw", grams: 40, form: "MIXED_IN" },
        { food: "sugar", grams: 20, form: "MIXED_IN" },
      ],
      portion: { kind: "CONTINUOUS", grams: 100, stepGrams: 1 },
      processing: ["CAKE_OR_BISCUIT"],
    });
    // 40 g of flour are 2.5 ounce equivalents; 80 g of cake hold 32 g and so 2.
    expect(
      judge([dessert], [[item("cake", 80), item("bread-white", 100)]], { dishes: [cake], from: MONDAY }),
    ).toMatchObject([{ found: 2, atMost: 0.4, state: "NOT_MET" }]);
    const boxes = [[item("cake", 80)], ...Array.from({ length: 4 }, () => [item("bread-white", 100)])];
    expect(judge([dessert], boxes, { dishes: [cake] })).toMatchObject([{ found: 2, atMost: 2, state: "MET" }]);
  });
});

describe("the English school food standards", () => {
  const fried = (key: string) =>
    plain(sampleFood(key, { group: "VEGETABLE_STARCHY" }), { starch: "POTATO", cookedInFat: true });
  const dishes = [fried("chips"), fried("roast-potatoes")];
  const foods = dishes.map(({ key }) => sampleFood(key, { group: "VEGETABLE_STARCHY" }));

  // Outside (SM-6): SI 2014/1603, Schedule 3, paragraph 1: starchy food cooked in fat or oil on no more than two days a week.
  it("finds chips on Monday and Thursday and roast potatoes on Friday a day too many", () => {
    const starchy = sampleRuleSet([
      {
        kind: "FREQUENCY",
        matches: { anyOf: [{ cookedInFat: true, starch: ["POTATO"] }] },
        counts: "DAYS",
        per: "WEEK",
        atMost: 2,
      },
    ]);
    const plainDay = [item("bread-white", 60)];
    const days = [[item("chips", 100), item("roast-potatoes", 80)], plainDay, plainDay, [item("chips", 100)]];
    expect(judge([starchy], [...days, [item("roast-potatoes", 100)]], { dishes, foods })).toMatchObject([
      { state: "NOT_MET", found: 3, atMost: 2, unit: "DAYS" },
    ]);
    expect(judge([starchy], [...days, plainDay], { dishes, foods })).toMatchObject([{ state: "MET", found: 2 }]);
  });

  // Outside (SM-7): SI 2014/1603, Schedule 3, paragraph 2: a meat product at most once a week in primary, twice in secondary school.
  it("finds two days with sausage too many in primary school and not in secondary school", () => {
    const sausage = (atMost: number) => [
      {
        kind: "FREQUENCY",
        matches: { anyOf: [{ groups: ["MEAT_PRODUCT"] }] },
        counts: "ITEMS",
        per: "WEEK",
        atMost,
      },
    ];
    const schools = [
      sampleRuleSet(sausage(1), { key: "primary", ages: { underYears: 11 } }),
      sampleRuleSet(sausage(2), { key: "secondary", ages: { fromYears: 11 } }),
    ];
    const [sausages, bread] = [[item("frankfurter-beef", 50)], [item("bread-white", 60)]];
    const boxes = [sausages, bread, sausages, bread, bread];
    const aged = (dateOfBirth: string) => judge(schools, boxes, { child: { dateOfBirth } });
    expect(aged("2018-05-20")).toMatchObject([
      { ruleSet: 0, state: "NOT_MET", found: 2, atMost: 1 },
      { ruleSet: 1, state: "NOT_APPLICABLE", reason: "OTHER_AGE" },
    ]);
    expect(aged("2014-05-20")).toMatchObject([
      { ruleSet: 0, state: "NOT_APPLICABLE", reason: "OTHER_AGE" },
      { ruleSet: 1, state: "MET", found: 2, atMost: 2 },
    ]);
  });

  // Outside: SI 2014/1603, Schedule 1: a portion of fruit juice is at most 150 ml; 1.048 g a ml by the table's cup of 248 g.
  it("measures a portion of juice in millilitres", () => {
    const portion = sampleRuleSet([
      { kind: "AMOUNT", matches: { anyOf: [{ groups: ["JUICE"] }] }, unit: "ML", per: "ITEM", atMost: 150 },
    ]);
    expect(judge([portion], [[item("orange-juice", 157)]])).toMatchObject([{ state: "MET" }]);
    expect(judge([portion], [[item("orange-juice", 158), item("bread-white", 400)]])).toMatchObject([
      { state: "NOT_MET", place: { dish: "orange-juice" }, atMost: 150, unit: "ML", date: MONDAY },
    ]);
    expect(judge([portion], [[item("bread-white", 400)]])).toMatchObject([
      { state: "NOT_APPLICABLE", reason: "NOTHING_TO_MEASURE" },
    ]);
  });
});

describe("a week with fewer days, or one in which a rule begins", () => {
  const bread = { anyOf: [{ groups: ["BREAD"] }] };
  const atMost3 = { kind: "FREQUENCY", matches: bread, counts: "DAYS", per: "WEEK", atMost: 3 };
  const three = Array.from({ length: 3 }, () => [item("bread-white", 50)]);
  it("is judged by the rule's own way: a share, each day, or not at all", () => {
    expect(judge([sampleRuleSet([atMost3])], three)).toMatchObject([{ found: 3, atMost: 2, state: "NOT_MET" }]);
    const perDay = judge([sampleRuleSet([{ ...atMost3, shortWeek: "PER_DAY" }])], three);
    expect(perDay).toMatchObject(
      three.map((_, at) => ({ date: addDays(MONDAY, at), found: 1, atMost: 1, state: "MET" })),
    );
    expect(judge([sampleRuleSet([{ ...atMost3, shortWeek: "SKIP" }])], three)).toMatchObject([
      { state: "NOT_APPLICABLE", reason: "SHORT_WEEK", found: null },
    ]);
  });
  it("goes by its way with a split week where it has one, and by the one with a short week where not", () => {
    const five = week([item("bread-white", 50)]);
    const begins = (over: Input) => [sampleRuleSet([{ ...atMost3, inForceFrom: "2026-09-09", ...over }])];
    expect(judge(begins({ splitWeek: "SKIP" }), five)).toMatchObject([
      { state: "NOT_APPLICABLE", reason: "SPLIT_WEEK" },
    ]);
    expect(judge(begins({ shortWeek: "SKIP", splitWeek: "PRORATE" }), five)).toMatchObject([
      { found: 3, atMost: 2, state: "NOT_MET" },
    ]);
    expect(judge(begins({}), five)).toMatchObject([{ found: 3, atMost: 2, state: "NOT_MET" }]);
    // Days it would not be asked on do not split a week.
    const thursdays = begins({ weekdays: ["THURSDAY"], splitWeek: "SKIP" });
    expect(judge(thursdays, five)).toMatchObject([{ found: 1, atMost: 3, state: "MET" }]);
  });
  it("looks back over the weeks of a longer window, and does not call a minimum broken on half a record", () => {
    const oily = {
      kind: "FREQUENCY",
      matches: { anyOf: [{ groups: ["OILY_FISH"] }] },
      counts: "ITEMS",
      per: "WEEK",
      weeks: 3,
      atLeast: 1,
    };
    const five = week([item("bread-white", 50)]);
    const sardines = plain(catalogue.foods.find(({ key }) => key === "sardines-tinned")!);
    const back = (dish: string, days: number) => ({ childId: "child", date: addDays(MONDAY, -days), dish });
    const judged = (history: WeekBrief["history"]) =>
      judge([sampleRuleSet([oily])], five, { history, dishes: [sardines] });
    expect(judged([back("sardines-tinned", 14)])).toMatchObject([{ state: "MET", found: 1 }]);
    expect(judged([back("bread-white", 14), back("bread-white", 7)])).toMatchObject([{ state: "NOT_MET", found: 0 }]);
    expect(judged([back("bread-white", 7)])).toMatchObject([{ state: "NOT_KNOWN", reason: "EARLIER_WEEKS", found: 0 }]);
  });
});

describe("a rule that does not bind", () => {
  const noBread = { id: "no-bread", kind: "EXCLUDE", matches: { anyOf: [{ groups: ["BREAD"] }] } };
  const boxes = [[item("bread-white", 50)], [item("bread-white", 50)]];
  it("on a clinician's note says so, that day only", () => {
    const judged = judge([sampleRuleSet([noBread])], boxes, { exempt: { [MONDAY]: ["no-bread"] } });
    expect(judged).toMatchObject([
      { state: "NOT_MET", date: "2026-09-08", place: { dish: "bread-white", breakKey: "lunch" } },
      { state: "NOT_APPLICABLE", reason: "EXEMPT", date: MONDAY },
    ]);
  });
  it("is never one that names an allergen, whatever the note says", () => {
    const noNuts = { id: "no-nuts", kind: "EXCLUDE", matches: { anyOf: [{ allergens: ["TREE_NUTS"] }] } };
    const judged = judge([sampleRuleSet([noNuts])], [[item("almonds", 20)]], { exempt: { [MONDAY]: ["no-nuts"] } });
    expect(judged).toMatchObject([{ state: "NOT_MET", date: MONDAY }]);
  });
  it("says why: its dates, the weekday, the break", () => {
    const rules = [
      { ...noBread, id: "later", inForceFrom: "2026-10-01" },
      { ...noBread, id: "fridays", weekdays: ["FRIDAY"] },
      { ...noBread, id: "snack", breaks: ["snack"] },
    ];
    expect(judge([sampleRuleSet(rules)], boxes).map(({ rule, state, reason }) => [rule.id, state, reason])).toEqual([
      ["later", "NOT_APPLICABLE", "NOT_IN_FORCE"],
      ["fridays", "NOT_APPLICABLE", "OTHER_WEEKDAY"],
      ["snack", "NOT_APPLICABLE", "OTHER_BREAK"],
    ]);
  });
  it("is none at all in a version that was withdrawn", () => {
    expect(judge([sampleRuleSet([], { withdrawn: true })], boxes)).toEqual([]);
  });
});

describe("what is not known", () => {
  const pulses = { anyOf: [{ groups: ["PULSE"] }] };
  const flour = [[item("chickpea-flour", 100)]];
  it("counts as nothing towards a minimum and leaves a maximum open, by name", () => {
    const least = { kind: "AMOUNT", matches: pulses, unit: "OZ_EQ", per: "BOX", atLeast: 1 };
    expect(judge([sampleRuleSet([least])], flour)).toMatchObject([{ state: "NOT_MET", found: 0, atLeast: 1 }]);
    const most = { kind: "AMOUNT", matches: pulses, unit: "OZ_EQ", per: "BOX", atMost: 1 };
    expect(judge([sampleRuleSet([most])], flour)).toMatchObject([
      { state: "NOT_KNOWN", reason: "FIGURE_MISSING", foods: ["chickpea-flour"], found: 0 },
    ]);
    // What is known is over the limit by itself.
    expect(judge([sampleRuleSet([most])], [[item("chickpea-flour", 100), item("lentils-boiled", 150)]])).toMatchObject([
      { state: "NOT_MET", found: 3 },
    ]);
  });
  it("leaves open a maximum of a nutrient of which a food has no figure", () => {
    const foods = [sampleFood("blank", { nutrients: { ENERC_KCAL: 100 } })];
    const salt = { kind: "NUTRIENT", nutrient: "NA", per: "BOX", atMost: 500 };
    expect(judge([sampleRuleSet([salt])], [[item("blank", 100)]], { foods })).toMatchObject([
      { state: "NOT_KNOWN", reason: "FIGURE_MISSING", foods: ["blank"] },
    ]);
  });
  it("is what is wrapped, and how long eating takes; and how a box is kept that nobody planned", () => {
    const place = (over: Input) => sampleRuleSet([{ kind: "SERVING", ...over }]);
    const planned = [[item("bread-white", 50)]];
    const typedIn: EatenItem[][] = [[{ breakKey: "lunch", slot: "MAIN", position: 0, dish: "bread-white", grams: 50 }]];
    for (const unseen of [{ litterFree: true }, { noGlass: true }, { minutesToEat: 20 }])
      expect(judge([place(unseen)], planned)).toMatchObject([{ state: "NOT_KNOWN", reason: "NOT_IN_THE_BOX" }]);
    const cold = place({ noReheating: true, noRefrigerator: true });
    expect(states(judge([cold], planned))).toEqual(["MET"]);
    expect(states(judge([cold], typedIn))).toEqual(["NOT_KNOWN"]);
    expect(judge([cold], [[item("bread-white", 50, { holding: { case: "REHEATED_AT_SCHOOL" } })]])).toMatchObject([
      { state: "NOT_MET", place: { dish: "bread-white" } },
    ]);
    expect(states(judge([place({ fingerFoodOnly: true })], typedIn))).toEqual(["MET"]);
    const soup = plain(sampleFood("soup"), { cutlery: "SPOON" });
    const fingers = judge([place({ fingerFoodOnly: true, litterFree: true })], [[item("soup", 100)]], {
      foods: [sampleFood("soup")],
      dishes: [soup],
    });
    expect(fingers).toMatchObject([{ state: "NOT_MET", place: { dish: "soup" } }]);
  });
  it("is every rule of a box with a dish that is no longer there", () => {
    const rules = [
      { kind: "EXCLUDE", matches: pulses },
      { kind: "FREQUENCY", matches: pulses, counts: "ITEMS", per: "WEEK", atMost: 1 },
      { kind: "TOGETHER", first: pulses, second: grains },
    ];
    const judged = judge([sampleRuleSet(rules)], [[item("gone", 100)], [item("bread-white", 50)]]);
    expect(judged.map(({ date, state, reason }) => [date, state, reason])).toEqual([
      [MONDAY, "NOT_KNOWN", "DISH_UNKNOWN"],
      ["2026-09-08", "MET", null],
      [null, "NOT_KNOWN", "DISH_UNKNOWN"],
      [MONDAY, "NOT_KNOWN", "DISH_UNKNOWN"],
      ["2026-09-08", "MET", null],
    ]);
  });
  it("is a share of energy of what carries none; and a share of nothing is not asked for", () => {
    const salt = { kind: "NUTRIENT", nutrient: "NA", per: "BOX", as: "PERCENT_OF_ENERGY", atMost: 1 };
    expect(judge([sampleRuleSet([salt])], [[item("bread-white", 50)]])).toMatchObject([
      { state: "NOT_KNOWN", reason: "NO_ENERGY" },
    ]);
    const share = { kind: "SHARE", part: pulses, whole: pulses, unit: "GRAMS", atLeast: 0.5 };
    expect(judge([sampleRuleSet([share])], [[item("bread-white", 50)]])).toMatchObject([
      { state: "NOT_APPLICABLE", reason: "NOTHING_TO_MEASURE" },
    ]);
  });
});

describe("single items", () => {
  it("are told by their places, and a box without a wrong one in one row", () => {
    const rules = [
      { kind: "ONLY", matches: { anyOf: [{ groups: ["BREAD"] }] } },
      { kind: "EXCLUDE", level: "ADVISE", matches: { anyOf: [{ groups: ["PULSE"] }] } },
    ];
    const box = [item("bread-white", 50), item("lentils-boiled", 50, { slot: "EXTRA", position: 1 })];
    const judged = judge([sampleRuleSet(rules)], [box, [item("bread-white", 50)]]);
    const place = { breakKey: "lunch", slot: "EXTRA", position: 1, dish: "lentils-boiled" };
    expect(judged.map(({ rule, state, date, place: at }) => [rule.id, state, date, at])).toEqual([
      ["rule-0", "NOT_MET", MONDAY, place],
      ["rule-0", "MET", "2026-09-08", null],
      ["rule-1", "NOT_MET", MONDAY, place],
      ["rule-1", "MET", "2026-09-08", null],
    ]);
  });
  it("bring two things together on their own, or with another of the same box", () => {
    const meat = { anyOf: [{ origins: ["MEAT", "BEEF"] }] };
    const milk = { anyOf: [{ origins: ["DAIRY"] }] };
    const apart = [sampleRuleSet([{ kind: "TOGETHER", first: meat, second: milk }])];
    const boxes = [
      [item("frankfurter-beef", 50), item("cheddar", 20)],
      [item("frankfurter-beef", 50)],
      [item("cheddar", 20)],
    ];
    expect(states(judge(apart, boxes))).toEqual(["NOT_MET", "MET", "MET"]);
  });
});
