import fc from "fast-check";
import type { Retention } from "../../shared/catalogue.js";
import type { Rule } from "../../shared/rule-set.js";
import type { WeekBrief } from "../../src/domain/brief.js";
import { checkWeek } from "../../src/domain/checker/check-week.js";
import { completedYears, dayNumber, weekdayOn } from "../../src/domain/checker/clock.js";
import type { Fault } from "../../src/domain/checker/fault.js";
import type { WeekDraft } from "../../src/domain/week.js";
import { monday, tinyWeek, tuesday } from "../support/tiny-week.js";
import type { Mutable } from "../support/tiny-week.js";

const common = {
  says: "A rule of an invented school.",
  level: "FORBID",
  source: "invented for this test",
  shortWeek: "PRORATE",
} as const;
type Shape = Rule extends infer R
  ? R extends Rule
    ? Omit<R, "id" | "says" | "source"> & { says?: string }
    : never
  : never;
const any = (clause: object) => ({ anyOf: [clause] });
const grapes = any({ kinds: ["grape"] });

/** Faults of one rule added to the tiny week, as "childId found/limit" or "childId kind". */
function judge(
  rule: Partial<Shape> & { kind: Rule["kind"] },
  change?: (brief: Mutable<WeekBrief>, draft: Mutable<WeekDraft>) => void,
): string[] {
  const { brief, draft } = tinyWeek();
  const set = brief.ruleSets[0];
  if (!set) throw new Error("the tiny week has a rule set");
  set.rules = [{ ...common, id: "under-test", ...rule } as Mutable<Rule>];
  change?.(brief, draft);
  const show = (fault: Fault): string => {
    const round = (value: number | undefined): string =>
      value === undefined ? "" : String(Math.round(value * 1000) / 1000);
    const facts = fault.found === undefined ? (fault.dish ?? "") : `${round(fault.found)}/${round(fault.limit)}`;
    return [
      fault.childId,
      ...(fault.kind === "RULE_BROKEN" ? [] : [fault.kind]),
      ...(fault.date === undefined ? [] : [fault.date]),
      facts,
    ]
      .join(" ")
      .trim();
  };
  return checkWeek(brief, draft)
    .filter((fault) => fault.rule === "under-test" || fault.kind === "RULE_NOT_JUDGED")
    .map(show);
}

describe("when a rule is in force", () => {
  const noGrapes = { kind: "EXCLUDE", matches: grapes } as const;
  const both = [`mira ${tuesday} grapes`, `tove ${monday} grapes`];

  it.each([
    ["on every day by default", {}, both],
    ["not as advice", { level: "ADVISE" }, []],
    ["only on its weekdays", { weekdays: ["MONDAY"] }, [`tove ${monday} grapes`]],
    ["only at its breaks", { breaks: ["snack"] }, []],
    ["only below its age", { ages: { underYears: 5 } }, [`mira ${tuesday} grapes`]],
    ["only from its age", { ages: { fromYears: 5 } }, [`tove ${monday} grapes`]],
  ] as const)("holds %s", (_, part, expected) => {
    expect(judge({ ...noGrapes, ...part } as never)).toEqual(expected);
  });

  it.each([
    [
      "before its first day",
      (set: Mutable<WeekBrief["ruleSets"][number]>) => void (set.inForceFrom = tuesday),
      [`mira ${tuesday} grapes`],
    ],
    [
      "after its last day",
      (set: Mutable<WeekBrief["ruleSets"][number]>) => void (set.inForceUntil = monday),
      [`tove ${monday} grapes`],
    ],
    [
      "when it is about school meals only",
      (set: Mutable<WeekBrief["ruleSets"][number]>) => void (set.coversFoodFromHome = false),
      [],
    ],
  ])("does not hold %s", (_, change, expected) => {
    expect(judge(noGrapes, (brief) => brief.ruleSets.forEach(change))).toEqual(expected);
  });

  it("does not hold for a child whose school has another one", () => {
    expect(
      judge(noGrapes, (brief) =>
        brief.children.forEach((child) => child.id === "tove" && child.days.forEach((day) => void (day.ruleSets = []))),
      ),
    ).toEqual([`mira ${tuesday} grapes`]);
  });
});

describe("what a rule matches", () => {
  it.each([
    ["an ingredient inside a base", { foods: ["chickpea"] }, ["chickpea-wrap", "chickpea-stew"]],
    [
      "one ingredient that is all of it at once",
      { groups: ["VEGETABLE_RED_ORANGE"], forms: ["COOKED_SOFT"] },
      ["chickpea-stew"],
    ],
    ["not two ingredients that are it together", { groups: ["PULSE"], forms: ["COOKED_SOFT"] }, []],
    [
      "only dishes made wholly of it",
      { groups: ["PULSE", "VEGETABLE_RED_ORANGE"], wholly: true },
      ["carrot-sticks", "chickpea-stew", "carrot-sticks"],
    ],
    ["a may-contain on record", { allergens: ["SESAME"] }, ["chickpea-wrap"]],
    ["a family of allergens", { allergens: ["GLUTEN_CEREALS"] }, ["chickpea-wrap"]],
    ["the dish and an ingredient of it", { starch: ["RICE"], groups: ["EGG"] }, ["egg-rice"]],
    ["whole grain", { wholeGrain: true }, ["chickpea-wrap"]],
    ["the slot it is eaten in", { slots: ["MAIN"], spill: ["WET"] }, ["chickpea-stew"]],
    ["cutlery", { cutlery: ["FORK"] }, ["egg-rice"]],
    ["a choking class", { chokingClasses: ["GRAPE_LIKE"] }, ["grapes", "grapes"]],
  ])("is %s", (_, clause, dishes) => {
    const found = judge({ kind: "EXCLUDE", matches: any(clause) } as never).map((line) => line.split(" ")[2] ?? "");
    expect(found.sort()).toEqual([...dishes].sort());
  });
});

describe("how processed a dish is", () => {
  const none = { kind: "EXCLUDE", matches: any({ processing: ["CONFECTIONERY", "SAVOURY_SNACK"] }) } as const;
  it("follows from its foods, whatever stands with the dish", () => {
    expect(judge(none)).toEqual([]);
    for (const group of ["CONFECTIONERY", "SAVOURY_SNACK"] as const) {
      expect(
        judge(none, (brief) => brief.catalogue.foods.forEach((food) => food.key === "grape" && (food.group = group))),
      ).toEqual([`mira ${tuesday} grapes`, `tove ${monday} grapes`]);
    }
  });
});

describe("how often", () => {
  const often = { kind: "FREQUENCY", counts: "ITEMS", per: "WEEK", weeks: 1 } as const;
  const fruit = any({ slots: ["FRUIT"] });

  it("prorates a minimum down: two packed days of five owe three of nine pieces of fruit", () => {
    expect([judge({ ...often, matches: fruit, atLeast: 9 }), judge({ ...often, matches: fruit, atLeast: 7 })]).toEqual([
      ["mira 2/3"],
      [],
    ]);
  });
  it("prorates a maximum up: two days of five of two a week is one", () => {
    expect([judge({ ...often, matches: fruit, atMost: 2 }), judge({ ...often, matches: fruit, atMost: 8 })]).toEqual([
      ["mira 2/1", "tove 4/1"],
      [],
    ]);
  });
  it("does not prorate a rule about exactly the weekdays that are packed", () => {
    expect(judge({ ...often, matches: fruit, atLeast: 3, weekdays: ["MONDAY", "TUESDAY"] })).toEqual(["mira 2/3"]);
  });
  it("holds each day to a fifth of the week when the rule says per day", () => {
    expect(judge({ ...often, matches: fruit, atMost: 5, shortWeek: "PER_DAY" })).toEqual([
      `tove ${monday} 2/1`,
      `tove ${tuesday} 2/1`,
    ]);
  });
  it("leaves a short week alone when the rule says skip", () => {
    expect(judge({ ...often, matches: fruit, atMost: 0, shortWeek: "SKIP" })).toEqual([]);
  });
  it("counts days once however many items match", () => {
    expect(judge({ ...often, matches: fruit, counts: "DAYS", atMost: 2 })).toEqual(["mira 2/1", "tove 2/1"]);
  });
  it("counts kinds, not items", () => {
    expect(judge({ ...often, matches: any({ groups: ["FRUIT"] }), counts: "KINDS", atLeast: 8 })).toEqual(["mira 2/3"]);
  });
  it("judges every box by itself", () => {
    expect(judge({ ...often, per: "BOX", matches: grapes, atLeast: 1 })).toEqual([
      `mira ${monday} 0/1`,
      `tove ${tuesday} 0/1`,
    ]);
  });

  const rarely = { ...often, weeks: 3, matches: grapes, atMost: 1 } as const;
  it("looks back over the weeks of a longer window", () => {
    const eaten = (date: string) => (brief: Mutable<WeekBrief>) =>
      void brief.history.push({ childId: "mira", date, dish: "grapes" });
    // Third week back ends on Sunday 2026-08-23, one day before the window opens.
    expect([judge(rarely), judge(rarely, eaten("2026-08-24")), judge(rarely, eaten("2026-08-23"))]).toEqual([
      [],
      ["mira 2/1"],
      [],
    ]);
  });
  it("asks a longer minimum only when every earlier week is on record", () => {
    const dishes =
      (...dates: string[]) =>
      (brief: Mutable<WeekBrief>) =>
        dates.forEach((date) => brief.history.push({ childId: "tove", date, dish: "apple-slices" }));
    const yogurt = { ...often, weeks: 3, matches: any({ groups: ["YOGURT"] }), atLeast: 3 } as const;
    // Three in three weeks, this one with two days of five: 3 x (2 + 2/5) / 3, rounded down.
    expect([judge(yogurt, dishes("2026-09-01")), judge(yogurt, dishes("2026-09-01", "2026-08-27"))]).toEqual([
      [],
      ["tove 1/2"],
    ]);
  });
});

describe("how much", () => {
  it("weighs the ingredients a rule names, not the dish around them", () => {
    expect(
      judge({ kind: "AMOUNT", unit: "GRAMS", per: "BOX", matches: any({ groups: ["PULSE"] }), atMost: 79 }),
    ).toEqual([`mira ${monday} 80/79`, `tove ${tuesday} 150/79`]);
  });
  it("prorates a week's amount without rounding", () => {
    expect(
      judge({ kind: "AMOUNT", unit: "GRAMS", per: "WEEK", matches: any({ groups: ["YOGURT"] }), atMost: 199 }),
    ).toEqual(["tove 80/79.6"]);
  });
  it.each(["CUPS", "OZ_EQ"] as const)("says that it cannot judge %s", (unit) => {
    expect(judge({ kind: "AMOUNT", unit, per: "BOX", matches: grapes, atLeast: 1 })).toEqual([
      "mira RULE_NOT_JUDGED",
      "tove RULE_NOT_JUDGED",
    ]);
  });
  it("divides a part by its whole, in grams or items, as a fraction or in percent", () => {
    const share = { kind: "SHARE", part: any({ kinds: ["grape"] }), whole: any({ groups: ["FRUIT"] }) } as const;
    expect([
      judge({ ...share, unit: "GRAMS", atMost: 0.4 }),
      judge({ ...share, unit: "ITEMS", atMost: 40 }),
      judge({ ...share, unit: "ITEMS", atMost: 50 }),
    ]).toEqual([["mira 0.5/0.4"], ["mira 0.5/0.4"], []]);
  });
});

describe("nutrients", () => {
  it("judges an item, a box and the week's mean", () => {
    const energy = { kind: "NUTRIENT", nutrient: "ENERC_KCAL", as: "AMOUNT" } as const;
    // Mira: 140 + 80 + 80 and 200 + 80 + 80; Tove: 440 and 480.
    expect([
      judge({ ...energy, per: "ITEM", atMost: 230 }),
      judge({ ...energy, per: "BOX", atLeast: 301 }),
      judge({ ...energy, per: "WEEK_MEAN", atMost: 450 }),
    ]).toEqual([[`tove ${tuesday} 240/230`], [`mira ${monday} 300/301`], ["tove 460/450"]]);
  });
  it("takes percent of energy with the factors of the EU label regulation", () => {
    // 5 g protein at 4 kcal per 100 kcal (Regulation (EU) No 1169/2011, Annex XIV).
    expect(
      judge({ kind: "NUTRIENT", nutrient: "PROCNT", as: "PERCENT_OF_ENERGY", per: "WEEK_MEAN", atMost: 19.9 }),
    ).toEqual(["mira 20/19.9", "tove 20/19.9"]);
  });
  it("counts what is known for a minimum and refuses to guess for a maximum", () => {
    const forget = (brief: Mutable<WeekBrief>): void =>
      brief.catalogue.foods.forEach((food) => food.key === "pear" && delete food.nutrients["NA"]);
    const salt = { kind: "NUTRIENT", nutrient: "NA", per: "BOX", as: "AMOUNT" } as const;
    // Tove's Monday: 440 g at 50 mg, 80 g of it pear.
    expect([
      judge({ ...salt, atLeast: 181, weekdays: ["MONDAY"] }, forget)[1],
      judge({ ...salt, atMost: 300 }, forget),
      judge({ ...salt, atMost: 179, weekdays: ["MONDAY"] }, forget),
    ]).toEqual([`tove ${monday} 180/181`, [`tove NOT_KNOWN ${monday}`], [`tove ${monday} 180/179`]]);
  });
  it("counts for a minimum what cooking surely leaves and for a maximum what it may leave", () => {
    // 100 mg in 100 g of raw carrot, in nothing else. In the stew it is boiled; the sticks are raw.
    const boil =
      (percent: Retention["percent"]) =>
      (brief: Mutable<WeekBrief>): void => {
        for (const food of brief.catalogue.foods) food.nutrients["VITC"] = food.key === "carrot" ? 100 : 0;
        const stew = brief.catalogue.dishes.find((dish) => dish.key === "chickpea-stew");
        for (const ingredient of stew?.ingredients ?? []) ingredient.retention = "3775";
        brief.catalogue.retention.push({ code: "3775", cooked: "Vegetables, boiled", percent, source: "invented" });
        brief.catalogue.retention.push({
          code: "0001",
          cooked: "Something else",
          percent: { VITB12: 60 },
          source: "invented",
        });
      };
    const vitamin = { kind: "NUTRIENT", nutrient: "VITC", as: "AMOUNT", per: "WEEK_MEAN" } as const;
    const week = (change?: (brief: Mutable<WeekBrief>) => void): string[][] => [
      judge({ ...vitamin, atLeast: 1000 }, change),
      judge({ ...vitamin, atMost: 1 }, change),
    ];
    const mg = (rows: string[]): number[] => rows.map((row) => Number(/ ([\d.]+)\//.exec(row)?.[1]));
    const [least, most] = week(boil({ VITC: 75 })).map(mg);
    expect(least).toEqual(most);
    const [floorLeast, floorMost] = week(boil({})).map(mg);
    const [rawLeast] = week((brief) => {
      boil({})(brief);
      for (const dish of brief.catalogue.dishes) for (const ingredient of dish.ingredients) delete ingredient.retention;
    }).map(mg);
    // No factor for it: the worst of its kind on record (vitamin B12, 60 %) for a minimum, all of it for a maximum.
    expect(floorMost).toEqual(rawLeast);
    const stewMg = rawLeast!.map((all, child) => (all - least![child]!) / 0.25);
    expect(stewMg.some((amount) => amount > 0)).toBe(true);
    floorLeast!.forEach((found, child) => expect(found).toBeCloseTo(rawLeast![child]! - 0.4 * stewMg[child]!, 2));
  });
  it("never takes anything off sodium, cooked or not", () => {
    const salt = { kind: "NUTRIENT", nutrient: "NA", per: "WEEK_MEAN", as: "AMOUNT", atMost: 1 } as const;
    const boiled = (brief: Mutable<WeekBrief>): void => {
      brief.catalogue.retention.push({ code: "3775", cooked: "Vegetables, boiled", percent: {}, source: "invented" });
      for (const dish of brief.catalogue.dishes)
        for (const ingredient of dish.ingredients) ingredient.retention = "3775";
    };
    expect(judge(salt, boiled)).toEqual(judge(salt));
  });
  it("cannot take a vitamin in percent of energy", () => {
    expect(judge({ kind: "NUTRIENT", nutrient: "VITC", as: "PERCENT_OF_ENERGY", per: "BOX", atMost: 10 })).toEqual([
      "mira RULE_NOT_JUDGED",
      "tove RULE_NOT_JUDGED",
    ]);
  });
});

describe("what does not go together, and what a place allows", () => {
  it("keeps two things out of one box, not out of one week", () => {
    const apart = { kind: "TOGETHER", first: any({ groups: ["YOGURT"] }) } as const;
    expect([
      judge({ ...apart, second: any({ groups: ["EGG"] }) }),
      judge({ ...apart, second: any({ groups: ["PULSE"] }) }),
    ]).toEqual([[], [`tove ${tuesday}`]]);
  });
  it("counts one item that is both", () => {
    expect(judge({ kind: "TOGETHER", first: any({ groups: ["EGG"] }), second: any({ kinds: ["rice"] }) })).toEqual([
      `tove ${monday}`,
    ]);
  });
  it("lets nothing through that needs cutlery where fingers are all there is", () => {
    expect(judge({ kind: "SERVING", fingerFoodOnly: true, weekdays: ["MONDAY"] })).toEqual([`tove ${monday} egg-rice`]);
  });
});

describe("reheating", () => {
  const reheat = (brief: Mutable<WeekBrief>, draft: Mutable<WeekDraft>): void => {
    brief.children.forEach((child) => child.days.forEach((day) => void (day.facility = "REHEATING")));
    draft.boxes.forEach((box) =>
      box.items.forEach(
        (item) =>
          item.dish === "chickpea-stew" &&
          Object.assign(item, {
            served: "WARM",
            holding: { case: "REHEATED_AT_SCHOOL", minutes: 270, limitMinutes: 300 },
          }),
      ),
    );
  };
  it("is not planned where a rule forbids it, microwave or not", () => {
    expect([
      judge({ kind: "SERVING", noReheating: true }, reheat),
      judge({ kind: "SERVING", noReheating: true, breaks: ["snack"] }, reheat),
    ]).toEqual([[`tove ${tuesday} chickpea-stew`], []]);
  });
});

describe("dates", () => {
  it("counts days and weekdays like the calendar of ECMAScript", () => {
    const dates = fc.date({
      min: new Date("1900-01-01T00:00:00Z"),
      max: new Date("2199-12-31T00:00:00Z"),
      noInvalidDate: true,
    });
    fc.assert(
      fc.property(dates, (instant) => {
        const date = instant.toISOString().slice(0, 10);
        const utc = Date.parse(`${date}T00:00:00Z`);
        expect(dayNumber(date)).toBe(utc / 86_400_000);
        expect(weekdayOn(date)).toBe(
          new Intl.DateTimeFormat("en", { weekday: "long", timeZone: "UTC" }).format(utc).toUpperCase(),
        );
      }),
      { numRuns: 100, seed: 3 },
    );
  });
  it("adds a year of age on the birthday itself", () => {
    expect([
      completedYears("2021-09-08", monday),
      completedYears("2021-09-08", tuesday),
      completedYears("2020-02-29", "2025-02-28"),
    ]).toEqual([4, 5, 4]);
  });
});
