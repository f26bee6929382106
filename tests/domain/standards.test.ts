import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { IANAZone } from "luxon";
import { ruleSetDocument, type Rule } from "../../shared/rule-set.js";
import { standardSchema } from "../../shared/standard.js";
import { readDemoFiles } from "../../src/database/seed.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { findDocumentClashes, matchCatalogue } from "../../src/domain/rules/document-clashes.js";
import { readCatalogue } from "./reference-rows.js";
import {
  adopted,
  documentFiles,
  everyDay,
  faultsOf,
  food,
  readDocument,
  readText,
  schoolDays,
  type Served,
} from "./standards-week.js";

const standardsFolder = join(process.cwd(), "seeds", "reference", "standards");
const standards = readdirSync(standardsFolder)
  .sort()
  .map((file) => ({
    file,
    standard: standardSchema.parse(JSON.parse(readFileSync(join(standardsFolder, file), "utf8"))),
  }));
const documents = documentFiles.map((file) => ({ file, document: readDocument(file) }));
const find = (file: string, id: string): Rule => {
  const rule = readDocument(`${file}.json`).rules.find((row) => row.id === id);
  if (!rule) throw new Error(`${file} has no rule ${id}`);
  return rule;
};

describe("the rule documents of the seeds", () => {
  it.each(documents)("$file is read and written without a change", ({ file, document }) => {
    const written: unknown = JSON.parse(readText(file));
    // Defaults are all that reading may add.
    expect(document).toMatchObject(written as object);
    const again = ruleSetDocument.parse(JSON.parse(JSON.stringify(document)));
    expect(again).toEqual(document);
    expect(JSON.stringify(again)).toBe(JSON.stringify(document));
  });

  it.each(documents)("$file names every rule once, for people and with a source", ({ document }) => {
    expect(new Set(document.rules.map(({ id }) => id)).size).toBe(document.rules.length);
    expect(new Set(document.rules.map(({ says }) => says)).size).toBe(document.rules.length);
  });

  it("no two have one key", () => {
    expect(new Set(documents.map(({ document }) => document.key)).size).toBe(documents.length);
  });
});

describe("the published standards", () => {
  const published = documents.filter(({ document }) => document.layer === "JURISDICTION");

  it("are all listed clause by clause", () => {
    expect(standards.map(({ standard }) => standard.document)).toEqual(published.map(({ document }) => document.key));
    for (const { file, standard } of standards) expect(file).toBe(`${standard.key}.json`);
  });

  it("never cover food from home by themselves", () => {
    expect(published.map(({ document }) => document.coversFoodFromHome)).toEqual(published.map(() => false));
  });

  it("name the section, schedule or page that each rule comes from", () => {
    for (const { document } of published) {
      for (const { source } of document.rules)
        expect(source).toMatch(/7 CFR 210\.10|Schedule \d|Portion sizes|Regulations 2020/);
    }
  });

  it("hold the figures of the US lunch pattern", () => {
    // 7 CFR 210.10(c), lunch pattern, current as of 13 April 2026; sodium from USDA FNS, final rule of 25 April 2024.
    const table: readonly (readonly [string, "atLeast" | "atMost", ...number[]])[] = [
      ["fruit-a-day", "atLeast", 0.5, 0.5, 1],
      ["fruit-a-week", "atLeast", 2.5, 2.5, 5],
      ["vegetables-a-day", "atLeast", 0.75, 0.75, 1],
      ["vegetables-a-week", "atLeast", 3.75, 3.75, 5],
      ["dark-green", "atLeast", 0.5, 0.5, 0.5],
      ["red-and-orange", "atLeast", 0.75, 0.75, 1.25],
      ["beans-peas-lentils", "atLeast", 0.5, 0.5, 0.5],
      ["starchy-vegetables", "atLeast", 0.5, 0.5, 0.5],
      ["other-vegetables", "atLeast", 0.5, 0.5, 0.75],
      ["grains-a-day", "atLeast", 1, 1, 2],
      ["grains-a-week", "atLeast", 8, 8, 10],
      ["grains-at-most", "atMost", 9, 10, 12],
      ["meat-or-alternate-a-day", "atLeast", 1, 1, 2],
      ["meat-or-alternate-a-week", "atLeast", 8, 9, 10],
      ["meat-or-alternate-at-most", "atMost", 10, 10, 12],
      ["energy", "atLeast", 550, 600, 750],
      ["energy", "atMost", 650, 700, 850],
      ["sodium-until-june-2027", "atMost", 1110, 1225, 1280],
      ["sodium-from-july-2027", "atMost", 935, 1035, 1080],
    ];
    for (const [stem, bound, ...figures] of table) {
      expect(
        [stem, ...["5-to-10", "11-to-13", "14-to-18"].map((band) => find("us-lunch", `${stem}-${band}`))].map((rule) =>
          typeof rule === "string" ? rule : (rule as { atLeast?: number; atMost?: number })[bound],
        ),
      ).toEqual([stem, ...figures]);
    }
    // Upper ends of the weekly ranges are printed and, from memory, not enforced: advice only.
    for (const { id, level } of adopted("us-lunch").rules)
      expect([id, level]).toEqual([id, /at-most|^milk/.test(id) && !/juice/.test(id) ? "ADVISE" : "FORBID"]);
  });
});

describe("the list of what documents must be able to state without code", () => {
  it.each([
    ["a nut- and sesame-free class", "wrenhollow-kindergarten", "no-nuts-no-sesame", "EXCLUDE"],
    ["fruit only at the morning break", "quillbrook-primary", "fruit-only-in-the-morning", "ONLY"],
    ["no reheating, no refrigerator, 20 minutes to eat", "wrenhollow-food-from-home", "cold-and-quick", "SERVING"],
    ["finger food only", "wrenhollow-kindergarten", "finger-food", "SERVING"],
    ["litter-free", "tern-bay-food-from-home", "litter-free", "SERVING"],
    ["no sweets", "quillbrook-primary", "no-sweets", "EXCLUDE"],
    ["no fizzy drinks", "quillbrook-primary", "no-fizzy-drinks", "EXCLUDE"],
    ["no crisps", "quillbrook-primary", "no-crisps", "EXCLUDE"],
    ["no whole grapes under five", "quillbrook-primary", "small-round-fruit", "EXCLUDE"],
    ["not meat with milk", "tern-bay-food-from-home", "not-meat-with-milk", "TOGETHER"],
    ["weekly cups", "us-lunch", "fruit-a-week-5-to-10", "AMOUNT"],
    ["vegetable subgroups", "us-lunch", "dark-green-11-to-13", "AMOUNT"],
    ["ounce equivalents", "us-lunch", "grains-a-week-14-to-18", "AMOUNT"],
    ["a share of whole grain", "us-lunch", "whole-grain-share", "SHARE"],
    ["a band of energy", "us-lunch", "energy-5-to-10", "NUTRIENT"],
    ["saturated fat in percent of energy", "us-lunch", "saturated-fat", "NUTRIENT"],
    ["sodium with the day on which it changes", "us-lunch", "sodium-from-july-2027-5-to-10", "NUTRIENT"],
    ["added sugars from a day on", "us-lunch", "added-sugars", "NUTRIENT"],
    ["how often in a week", "england-2014-primary", "fried-or-coated", "FREQUENCY"],
    ["once in three weeks", "england-2014-secondary", "oily-fish", "FREQUENCY"],
    ["foods high in fat, sugar or salt on Indian school premises", "india-2020", "high-in-fat-sugar-salt", "EXCLUDE"],
  ] as const)("has %s", (_, file, id, kind) => {
    expect(find(file, id).kind).toBe(kind);
  });

  it("says so in the fields that count", () => {
    expect(find("wrenhollow-food-from-home", "cold-and-quick")).toMatchObject({
      noReheating: true,
      noRefrigerator: true,
      minutesToEat: 20,
    });
    expect(find("wrenhollow-kindergarten", "finger-food")).toMatchObject({ fingerFoodOnly: true, level: "FORBID" });
    expect(find("tern-bay-food-from-home", "litter-free")).toMatchObject({ litterFree: true, level: "FORBID" });
    expect(find("quillbrook-primary", "small-round-fruit")).toMatchObject({ ages: { underYears: 5 } });
    expect(find("us-lunch", "added-sugars")).toMatchObject({ nutrient: "ADDED_SUGAR", inForceFrom: "2027-07-01" });
  });
});

describe("the invented schools", () => {
  const { schools, ruleSets, children } = readDemoFiles();

  it("are four, each in a zone of the time-zone database", () => {
    expect(schools).toHaveLength(4);
    expect(schools.filter(({ timeZone }) => !IANAZone.isValidZone(timeZone))).toEqual([]);
    expect(new Set(schools.map(({ jurisdiction }) => jurisdiction)).size).toBe(3);
  });
  it("come with their rules, and one adopts a published standard at the break it calls lunch", () => {
    const adopting = ruleSets.flatMap(({ document, adoptedBy = [] }) => adoptedBy.map((key) => [key, document]));
    expect(adopting).toEqual([["wrenhollow", "us-lunch.json"]]);
    for (const { key } of schools) expect(ruleSets.some(({ school }) => school === key)).toBe(true);
    const wrenhollow = schools.find(({ key }) => key === "wrenhollow")!;
    for (const { breaks } of wrenhollow.classes) expect(breaks.map(({ key }) => key)).toContain("lunch");
    expect(wrenhollow.jurisdiction).toBe(readDocument("us-lunch.json").jurisdiction);
  });
  it("load every published standard, so that a school can adopt it", () => {
    const loaded = ruleSets.map(({ document }) => document);
    for (const { standard } of standards) expect(loaded).toContain(`${standard.document}.json`);
  });
  it("ask nothing in one class that their rule sets cannot keep together", () => {
    const catalogue = matchCatalogue(indexCatalogue({ version: "seeds", ...readCatalogue() }));
    const read = (sets: typeof ruleSets) => sets.map(({ document }) => readDocument(document));
    for (const { key, classes } of schools) {
      const ofSchool = ruleSets.filter((set) => set.school === key || set.adoptedBy?.includes(key));
      for (const one of classes) {
        const all = read([...ofSchool, ...ruleSets.filter((set) => set.class === one.key)]);
        const breakKeys = one.breaks.map((at) => at.key);
        expect([one.key, findDocumentClashes(all, catalogue, breakKeys)]).toEqual([one.key, []]);
        for (const rule of all.flatMap(({ rules }) => rules))
          for (const at of rule.breaks ?? [])
            expect([one.key, rule.id, breakKeys]).toEqual([one.key, rule.id, expect.arrayContaining([at])]);
      }
    }
  });
  it("leave the children of the demonstration where they are", () => {
    expect(children.map(({ key, enrolment }) => [key, enrolment.school, enrolment.class])).toEqual([
      ["pia", "primary", "reception"],
      ["mina", "primary", "class-4"],
      ["theo", "upper", "year-8"],
    ]);
  });
});

// Worked examples of school-meal standards: 7 CFR 210.10 and SI 2014/1603, with figures computed from them.
const source = "Exhibit A, group B: 28 g of bread are one ounce equivalent";
const credits = {
  note: source,
  steps: { CUPS: 0.125, OZ_EQ: 0.25, OZ_EQ_MYPLATE: 0.25 },
  rows: [{ unit: "OZ_EQ" as const, groups: ["BREAD" as const], grams: 28, source }],
};
const bread = food("bread", { group: "BREAD" });
const wholemeal = food("wholemeal", { group: "BREAD", wholeGrain: true });
/** 28 g a piece. */
const slices = (of: string, count: number): Served => ({ grams: { [of]: count * 28 } });
const eightYears = "2018-09-01";

describe("what the US lunch pattern credits, by the shipped foods and the shipped table", () => {
  const { foods } = readCatalogue();
  const document = adopted("us-lunch");
  /** What one rule finds in a box, when it asks for more than there is. */
  const credited = (id: string, key: string, grams: number): number => {
    const asked = { ...document.rules.find((rule) => rule.id === id), atLeast: 9 } as Rule;
    const week = { document: { ...document, rules: [asked] }, bornOn: eightYears, foods };
    const [found] = faultsOf(id, {
      ...week,
      boxes: everyDay(schoolDays("2027-05-03", 1), { grams: { [key]: grams } }),
    });
    return Number(found?.split("/")[0]);
  };
  it("57 g of an English muffin are 2 ounce equivalents, rounded down from 2.035", () => {
    // USDA Exhibit A, group B: 28 g an ounce equivalent.
    expect(credited("grains-a-day-5-to-10", "muffin-english", 57)).toBe(2);
  });
  it("1 cup of raw romaine is half a cup of dark green vegetable, 1/4 cup of raisins half a cup of fruit", () => {
    // 7 CFR 210.10(c): leaves count half, dried fruit double. A cup is 47 g (SR26 11251) and 145 g (SR26 09298).
    expect([
      credited("dark-green-5-to-10", "lettuce-romaine-raw", 47),
      credited("fruit-a-day-5-to-10", "raisins", 145 / 4),
    ]).toEqual([0.5, 0.5]);
  });
});

describe("grains of the US lunch pattern, ages 5 to 10", () => {
  const week = (whole: readonly number[], white: readonly number[]) => {
    const dates = schoolDays("2027-05-03", whole.length);
    const boxes = Object.fromEntries(
      dates.map((date, day) => [
        date,
        [slices("wholemeal", whole[day]!), slices("bread", white[day]!)].filter(
          ({ grams }) => Object.values(grams)[0]! > 0,
        ),
      ]),
    );
    return { document: adopted("us-lunch"), bornOn: eightYears, foods: [bread, wholemeal], boxes, credits };
  };

  it("7.75 of 10 ounce equivalents whole grain are 77.5 % and fail 80 %; 8 pass", () => {
    // 7 CFR 210.10(c)(2)(iii).
    expect([
      faultsOf("whole-grain-share", week([2, 2, 2, 1.75, 0], [0, 0, 0, 0.25, 2])),
      faultsOf("whole-grain-share", week([2, 2, 2, 2, 0], [0, 0, 0, 0, 2])),
    ]).toEqual([["0.775/0.8"], []]);
  });
  it("a week of four days owes 8 x 0.8 = 6.4 ounce equivalents", () => {
    // 7 CFR 210.10(c)(2)(iii)(D).
    expect([
      faultsOf("grains-a-week-5-to-10", week([2, 2, 1, 1.25], [0, 0, 0, 0])),
      faultsOf("grains-a-week-5-to-10", week([2, 2, 1, 1.5], [0, 0, 0, 0])),
      faultsOf("grains-a-week-5-to-10", week([2, 2, 1, 1.5, 1.25], [0, 0, 0, 0, 0])),
    ]).toEqual([["6.25/6.4"], [], ["7.75/8"]]);
  });
});

describe("nutrients of the US lunch pattern", () => {
  /** 100 g a day of a food with these figures per 100 g, from a Monday on. */
  const week = (
    nutrients: Readonly<Record<string, number>>,
    monday: string,
    bornOn = eightYears,
    addedSugarGrams = 0,
  ) => ({
    document: adopted("us-lunch"),
    bornOn,
    foods: [food("plate", { nutrients: { ENERC_KCAL: 600, FASAT: 0, NA: 0, ...nutrients }, addedSugarGrams })],
    boxes: everyDay(schoolDays(monday), { grams: { plate: 100 } }),
  });

  it("6.6 g of saturated fat in 600 kcal are 9.9 % and pass, 6.7 g are 10.05 % and fail", () => {
    // 7 CFR 210.10(c); 9 kcal/g.
    expect([
      faultsOf("saturated-fat", week({ FASAT: 6.6 }, "2027-05-03")),
      faultsOf("saturated-fat", week({ FASAT: 6.7 }, "2027-05-03")),
    ]).toEqual([[], ["10.05/9.99"]]);
  });

  const sodium = (band: string, mg: number, monday: string, bornOn = eightYears): string[] => [
    ...faultsOf(`sodium-until-june-2027-${band}`, week({ NA: mg }, monday, bornOn)),
    ...faultsOf(`sodium-from-july-2027-${band}`, week({ NA: mg }, monday, bornOn)),
  ];
  it("1000 mg of sodium pass in May 2027 and fail in September 2027", () => {
    // USDA FNS, final rule of 25 April 2024: 1110 mg through 30 June 2027, 935 mg from 1 July 2027.
    expect([sodium("5-to-10", 1000, "2027-05-03"), sodium("5-to-10", 1000, "2027-09-13")]).toEqual([[], ["1000/935"]]);
  });
  it.each([
    ["5-to-10", "2018-09-01", 1110, 935],
    ["11-to-13", "2014-09-01", 1225, 1035],
    ["14-to-18", "2011-09-01", 1280, 1080],
  ])("the limits of ages %s are the printed ones to the milligram", (band, bornOn, before, after) => {
    expect([
      sodium(band, before, "2027-05-03", bornOn),
      sodium(band, before + 1, "2027-05-03", bornOn),
      sodium(band, after, "2027-09-13", bornOn),
      sodium(band, after + 1, "2027-09-13", bornOn),
    ]).toEqual([[], [`${before + 1}/${before}`], [], [`${after + 1}/${after}`]]);
  });

  describe("in the week in which the limit changes, 28 June to 2 July 2027", () => {
    const days = schoolDays("2027-06-28");
    /** Milligrams until Wednesday the 30th, and from Thursday the 1st. */
    const changing = (before: number, after: number): string[] => {
      const salted = (mg: number) => food(`plate-${mg}`, { nutrients: { ENERC_KCAL: 600, FASAT: 0, NA: mg } });
      const boxes = Object.fromEntries(
        days.map((date) => [date, [{ grams: { [`plate-${date < "2027-07-01" ? before : after}`]: 100 } }]]),
      );
      const split = {
        document: adopted("us-lunch"),
        bornOn: eightYears,
        foods: [salted(before), salted(after)],
        boxes,
      };
      return [
        ...faultsOf("sodium-until-june-2027-5-to-10", split),
        ...faultsOf("sodium-from-july-2027-5-to-10", split),
      ];
    };
    it.each([
      [1000, 1000, ["1000/935"]],
      [1110, 935, []],
      // The mean of the whole week, 1080 mg, would have hidden three days above the old limit.
      [1200, 900, ["1200/1110"]],
      [1200, 1000, ["1200/1110", "1000/935"]],
    ])("%d mg on three days and %d mg on two are each held to their own limit", (before, after, expected) => {
      expect(changing(before, after)).toEqual(expected);
    });
  });

  it("added sugars count from 1 July 2027", () => {
    // 7 CFR 210.10(c): below 10 % of energy; 15 g of 4 kcal in 600 kcal are 10 %.
    expect([
      faultsOf("added-sugars", week({}, "2027-05-03", eightYears, 16)),
      faultsOf("added-sugars", week({}, "2027-09-13", eightYears, 15)),
      faultsOf("added-sugars", week({}, "2027-09-13", eightYears, 14.9)),
    ]).toEqual([[], ["10/9.99"], []]);
  });
  it("holds a child of eleven to the pattern of ages 11 to 13 from the birthday on", () => {
    const energy = (bornOn: string) => [
      ...faultsOf("energy-5-to-10", week({ ENERC_KCAL: 590 }, "2027-05-03", bornOn)),
      ...faultsOf("energy-11-to-13", week({ ENERC_KCAL: 590 }, "2027-05-03", bornOn)),
    ];
    expect([energy("2016-05-08"), energy("2016-05-03")]).toEqual([[], ["590/600"]]);
  });
});

describe("the English standards", () => {
  const days = schoolDays("2027-01-11");
  const potato = food("potato", { group: "VEGETABLE_STARCHY", kind: "potato" });
  const sausage = food("sausage", { group: "MEAT_PRODUCT", origins: ["MEAT"] });
  const chips: Served = { grams: { potato: 120 }, dish: { starch: "POTATO", cookedInFat: true } };
  const boiled: Served = { grams: { potato: 120 }, dish: { starch: "POTATO" } };
  const on = (what: Served, ...which: readonly number[]) =>
    Object.fromEntries(days.map((date, day) => [date, [which.includes(day) ? what : boiled]]));
  const week = (kind: string, boxes: Readonly<Record<string, readonly Served[]>>) => ({
    document: adopted(`england-2014-${kind}`),
    bornOn: eightYears,
    foods: [potato, sausage],
    boxes,
  });

  it("chips on Monday and Thursday and potatoes roast in oil on Friday are one day too many", () => {
    // SI 2014/1603, Schedule 3, paragraph 1: two days a week.
    expect([
      faultsOf("starchy-cooked-in-fat", week("primary", on(chips, 0, 3, 4))),
      faultsOf("starchy-cooked-in-fat", week("primary", on(chips, 0, 3))),
    ]).toEqual([["3/2"], []]);
  });
  it("two sausage days a week are too many in a primary school and not in a secondary one", () => {
    // SI 2014/1603, Schedule 3, paragraph 2.
    const twice = on({ grams: { sausage: 60 } }, 1, 3);
    const thrice = on({ grams: { sausage: 60 } }, 1, 3, 4);
    expect([
      faultsOf("meat-products", week("primary", twice)),
      faultsOf("meat-products", week("secondary", twice)),
      faultsOf("meat-products", week("secondary", thrice)),
    ]).toEqual([["2/1"], [], ["3/2"]]);
  });
  it("a portion of juice is at most 150 ml, and lemon juice in a salad is no portion", () => {
    // SI 2014/1603, Schedule 1.
    const juice = food("juice", { group: "JUICE" });
    const drink = (volumeMl: number): Served => ({ grams: { juice: 155 }, dish: { volumeMl } });
    const served = (what: Served) => ({ ...week("primary", on(what, 0)), foods: [potato, juice] });
    expect([
      faultsOf("juice-portion", served(drink(150))),
      faultsOf("juice-portion", served(drink(200))),
      faultsOf("juice-portion", served({ grams: { juice: 5, potato: 100 }, dish: { volumeMl: 300 } })),
    ]).toEqual([[], ["200/150"], []]);
  });
});

describe("the Scottish example", () => {
  it("allows deep-fried food three times a week, and holds no longer than the Regulations it comes from", () => {
    // SSI 2008/265, Schedule 1, paragraph 7; the end of the Regulations from memory.
    const fried = (monday: string, times: number) => ({
      document: adopted("scotland-2008"),
      bornOn: eightYears,
      foods: [food("fish", { group: "FISH" })],
      boxes: Object.fromEntries(
        schoolDays(monday).map((date, day): [string, Served[]] => [
          date,
          [{ grams: { fish: 80 }, dish: { processing: day < times ? ["DEEP_FRIED"] : [] } }],
        ]),
      ),
    });
    expect([
      faultsOf("deep-fried", fried("2019-11-04", 3)),
      faultsOf("deep-fried", fried("2019-11-04", 4)),
      faultsOf("deep-fried", fried("2027-01-11", 5)),
    ]).toEqual([[], ["4/3"], []]);
  });
});
