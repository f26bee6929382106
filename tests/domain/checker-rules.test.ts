import fc from "fast-check";
import type { Retention } from "../../shared/catalogue.js";
import type { CreditTable } from "../../shared/credits.js";
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
    .filter((fault) => fault.rule === "under-test")
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
    ["only from its own first day", { inForceFrom: tuesday }, [`mira ${tuesday} grapes`]],
    ["only until its own last day", { inForceUntil: monday }, [`tove ${monday} grapes`]],
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
      "for children its document is not for",
      (set: Mutable<WeekBrief["ruleSets"][number]>) => void (set.ages = { fromYears: 5, underYears: 10 }),
      [`tove ${monday} grapes`],
    ],
    ["when it is withdrawn", (set: Mutable<WeekBrief["ruleSets"][number]>) => void (set.withdrawn = true), []],
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

describe("an exemption", () => {
  const noGrapes = { kind: "EXCLUDE", matches: grapes } as const;
  const exempt =
    (childId: string, date: string, ruleSet = 0, rule = "under-test") =>
    (brief: Mutable<WeekBrief>, draft: Mutable<WeekDraft>): void => {
      for (const child of brief.children)
        for (const day of child.days) if (child.id === childId && day.date === date) day.exempt = [{ ruleSet, rule }];
      const set = brief.ruleSets[ruleSet]?.key ?? "";
      draft.cautions.push({ kind: "RULE_RESTS", childId, dates: [date], ruleSet: set, rule });
    };

  it("is told with the plan, with its day", () => {
    const rests = exempt("tove", monday);
    const silent = judge(noGrapes, (brief, draft) => rests(brief, { ...draft, cautions: [] }));
    expect(silent).toContain(`tove CAUTION_MISSING ${monday}`);
    const otherDay = judge(noGrapes, (brief, draft) => {
      rests(brief, draft);
      for (const row of draft.cautions) if (row.kind === "RULE_RESTS") row.dates = [tuesday];
    });
    expect(otherDay).toContain(`tove CAUTION_MISSING ${monday}`);
  });

  it.each([
    ["lets the rule rest for that child that day", exempt("tove", monday), [`mira ${tuesday} grapes`]],
    ["not on another day", exempt("tove", tuesday), [`mira ${tuesday} grapes`, `tove ${monday} grapes`]],
    ["not another rule", exempt("tove", monday, 0, "fruit"), [`mira ${tuesday} grapes`, `tove ${monday} grapes`]],
    ["not a rule of another set", exempt("tove", monday, 1), [`mira ${tuesday} grapes`, `tove ${monday} grapes`]],
  ])("%s", (_, change, expected) => {
    expect(judge(noGrapes, change)).toEqual(expected);
  });

  it("takes its days out of a week's limit", () => {
    const fruit = {
      kind: "FREQUENCY",
      matches: any({ slots: ["FRUIT"] }),
      counts: "ITEMS",
      per: "WEEK",
      weeks: 1,
    } as const;
    // One day of five of five a week is one; two pieces of fruit a day.
    expect(judge({ ...fruit, atMost: 5 }, exempt("tove", monday))).toEqual(["tove 2/1"]);
  });

  it.each([
    ["EXCLUDE", { kind: "EXCLUDE", matches: { anyOf: [{ kinds: ["grape"] }, { allergens: ["PEANUT"] }] } }, true],
    ["ONLY", { kind: "ONLY", matches: any({ groups: ["FRUIT"], allergens: ["PEANUT"] }) }, true],
    ["TOGETHER", { kind: "TOGETHER", first: grapes, second: any({ allergens: ["EGG"] }) }, true],
    ["TOGETHER, of no allergen", { kind: "TOGETHER", first: grapes, second: any({ groups: ["EGG"] }) }, false],
    [
      "SHARE",
      { kind: "SHARE", unit: "ITEMS", part: any({ allergens: ["EGG"] }), whole: any({ slots: ["MAIN"] }), atMost: 0 },
      true,
    ],
  ] as const)("never touches a rule that names an allergen: %s", (_, rule, named) => {
    const before = judge(rule as never);
    const after = judge(rule as never, exempt("tove", monday));
    expect(before.some((line) => line.startsWith("tove"))).toBe(true);
    expect(after).toEqual(
      named
        ? [`tove EXEMPT_FROM_ALLERGEN_RULE ${monday}`, ...before]
        : before.filter((line) => !line.startsWith("tove")),
    );
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

describe("a week in which a rule begins or ends", () => {
  const fruit = {
    kind: "FREQUENCY",
    matches: any({ slots: ["FRUIT"] }),
    counts: "ITEMS",
    per: "WEEK",
    weeks: 1,
  } as const;
  const fromTuesday = { ...fruit, atMost: 2, inForceFrom: tuesday } as const;

  it.each([
    ["as a short one, if it does not say", { shortWeek: "PRORATE" }, ["tove 2/1"]],
    ["as a short one that is skipped", { shortWeek: "SKIP" }, []],
    ["not at all", { splitWeek: "SKIP" }, []],
    ["by the days' share, though a short one is skipped", { shortWeek: "SKIP", splitWeek: "PRORATE" }, ["tove 2/1"]],
    ["day by day", { shortWeek: "SKIP", splitWeek: "PER_DAY" }, [`tove ${tuesday} 2/1`]],
  ] as const)("is judged %s", (_, part, expected) => {
    expect(judge({ ...fromTuesday, ...part })).toEqual(expected);
  });
  it("is the week in which its document begins or ends as well", () => {
    const skipped = { ...fruit, atMost: 0, splitWeek: "SKIP" } as const;
    const sets = (change: (set: Mutable<WeekBrief["ruleSets"][number]>) => void) => (brief: Mutable<WeekBrief>) =>
      brief.ruleSets.forEach(change);
    expect([
      judge(skipped),
      judge(
        skipped,
        sets((set) => void (set.inForceFrom = tuesday)),
      ),
      judge(
        skipped,
        sets((set) => void (set.inForceUntil = monday)),
      ),
    ]).toEqual([["mira 2/0", "tove 4/0"], [], []]);
  });
  it("is the week in which a newer version takes its place, and both hold on their days", () => {
    const renewed = (brief: Mutable<WeekBrief>): void => {
      brief.ruleSets.push({ ...structuredClone(brief.ruleSets[0]!), version: 2, inForceFrom: tuesday });
      brief.children.forEach((child) => child.days.forEach((day) => day.date === tuesday && void (day.ruleSets = [1])));
    };
    expect([
      judge({ ...fruit, atMost: 2 }, renewed),
      judge({ ...fruit, atMost: 2, splitWeek: "SKIP" }, renewed),
    ]).toEqual([["tove 2/1", "tove 2/1"], []]);
  });
  it("is not one in which the child is away, has no such break, or has a birthday", () => {
    const short = { ...fruit, atMost: 2, splitWeek: "SKIP" } as const;
    const away = (brief: Mutable<WeekBrief>): void => brief.children.forEach((child) => void child.days.pop());
    const noSnack = (brief: Mutable<WeekBrief>): void =>
      brief.children.forEach((child) => child.days.forEach((day) => day.date === tuesday && void day.breaks.shift()));
    const birthday = (brief: Mutable<WeekBrief>): void =>
      brief.children.forEach((child) => void (child.dateOfBirth = "2017-09-08"));
    expect([
      judge(short, away),
      judge({ ...short, breaks: ["snack"], atMost: 0 }, noSnack),
      judge({ ...short, ages: { fromYears: 9 } }, birthday),
    ]).toEqual([["tove 2/1"], ["tove 1/0"], ["tove 2/1"]]);
  });
  it("takes the mean of the days there are", () => {
    const energy = { kind: "NUTRIENT", nutrient: "ENERC_KCAL", as: "AMOUNT", per: "WEEK_MEAN" } as const;
    // Tove: 440 kcal on Monday, 480 on Tuesday.
    expect([
      judge({ ...energy, atMost: 439, inForceUntil: monday }),
      judge({ ...energy, atMost: 439, inForceFrom: tuesday, splitWeek: "PER_DAY" }),
      judge({ ...energy, atMost: 439, inForceFrom: tuesday, splitWeek: "SKIP" }),
    ]).toEqual([["tove 440/439"], ["tove 480/439"], []]);
  });
  it("shortens a longer window by the days the rule was not there", () => {
    const grapesRarely = { ...fruit, weeks: 3, matches: grapes, atMost: 0, inForceUntil: monday } as const;
    expect([judge(grapesRarely), judge({ ...grapesRarely, splitWeek: "SKIP" })]).toEqual([["tove 1/0"], []]);
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
  it("holds every item that has some of it to an item's limits, and no other", () => {
    const grapesEach = { kind: "AMOUNT", unit: "GRAMS", per: "ITEM", matches: any({ groups: ["PULSE"] }) } as const;
    expect([judge({ ...grapesEach, atLeast: 100 }), judge({ ...grapesEach, atMost: 100 })]).toEqual([
      [`mira ${monday} 80/100`],
      [`tove ${tuesday} 150/100`],
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

describe("how many millilitres", () => {
  const matches = any({ groups: ["YOGURT"] });
  const yogurt = {
    kind: "AMOUNT" as const,
    unit: "ML" as const,
    per: "BOX" as const,
    matches,
    weekdays: ["TUESDAY" as const],
  };
  const weighs =
    (gramsPerMl: number) =>
    (brief: Mutable<WeekBrief>): void =>
      brief.catalogue.foods.forEach((food) => food.key === "yogurt" && void (food.densityGramsPerMl = gramsPerMl));

  it("follows from the density of the food", () => {
    // 80 g at 1.25 g/ml are 64 ml.
    expect([judge({ ...yogurt, atMost: 63 }, weighs(1.25)), judge({ ...yogurt, atMost: 64 }, weighs(1.25))]).toEqual([
      [`tove ${tuesday} 64/63`],
      [],
    ]);
  });
  it("is not known without one: nothing for a minimum, no answer for a maximum", () => {
    expect([judge({ ...yogurt, atLeast: 1 })[1], judge({ ...yogurt, atMost: 1000 })]).toEqual([
      `tove ${tuesday} 0/1`,
      [`tove NOT_KNOWN ${tuesday}`],
    ]);
  });
  it("of a whole item is the volume of its dish", () => {
    const pot = { ...yogurt, matches: any({ dishes: ["yogurt-pot"] }) };
    const wholly = { ...yogurt, matches: any({ groups: ["YOGURT"], wholly: true }) };
    expect([judge({ ...pot, atMost: 99 }), judge({ ...wholly, atMost: 99 })]).toEqual([
      [`tove ${tuesday} 100/99`],
      [`tove ${tuesday} 100/99`],
    ]);
  });
});

describe("cups and ounce equivalents", () => {
  const source = "invented for this test";
  const table: CreditTable = {
    note: "invented",
    steps: { CUPS: 0.125, OZ_EQ: 0.25, OZ_EQ_MYPLATE: 0.25 },
    rows: [
      { unit: "CUPS", foods: ["grape"], grams: 150, source },
      { unit: "CUPS", groups: ["FRUIT"], forms: ["SLICED_THIN"], grams: 100, source },
      { unit: "CUPS", kinds: ["cow-milk"], grams: null, source },
      { unit: "OZ_EQ", groups: ["BREAD"], grams: 28, source },
      { unit: "OZ_EQ", foods: ["rice-cooked"], grams: 80, source },
      { unit: "OZ_EQ_MYPLATE", groups: ["PULSE"], grams: 40, source },
    ],
  };
  const under = (rule: Parameters<typeof judge>[0], rows = table.rows): string[] =>
    judge(rule, (brief) => void (brief.credits = structuredClone({ ...table, rows })));
  const fruit = any({ groups: ["FRUIT", "YOGURT"] });
  const cups = { kind: "AMOUNT", unit: "CUPS", per: "BOX", matches: fruit } as const;
  const onMonday = { ...cups, weekdays: ["MONDAY" as const] };

  it.each(["CUPS", "OZ_EQ", "OZ_EQ_MYPLATE"] as const)("are not known of anything by an empty table: %s", (unit) => {
    expect([
      under({ kind: "AMOUNT", unit, per: "WEEK", matches: grapes, atMost: 1 }, []),
      under({ kind: "SHARE", unit, part: grapes, whole: fruit, atMost: 1 }, []),
    ]).toEqual([
      ["mira NOT_KNOWN", "tove NOT_KNOWN"],
      ["mira NOT_KNOWN", "tove NOT_KNOWN"],
    ]);
  });
  it("are rounded down to a step item by item, not over the box", () => {
    // 80 g of pear are 0.8 cup and count 0.75, 80 g of grapes are 0.53 and count 0.5; 80 g of pulses are 2 and 150 g are 3.75.
    const pulses = { ...cups, matches: any({ groups: ["PULSE"] }), unit: "OZ_EQ_MYPLATE", per: "ITEM" } as const;
    expect([under({ ...onMonday, atLeast: 1.3 }), under({ ...pulses, atMost: 1 })]).toEqual([
      [`mira ${monday} 0.75/1.3`, `tove ${monday} 1.25/1.3`],
      [`mira ${monday} 2/1`, `tove ${tuesday} 3.75/1`],
    ]);
    // Two items of 80 g at 129 g a cup: 0.6202 each counts 0.5, together 1; 1.2403 over the box would have counted 1.125.
    const rows = [{ ...table.rows[0]!, foods: ["grape", "pear"], grams: 129 }];
    expect(under({ ...onMonday, atLeast: 1.1 }, rows)[1]).toEqual(`tove ${monday} 1/1.1`);
  });
  it("add up the ingredients of one item before it is rounded", () => {
    // The stew: 150 g at 40 g are 3.75, and 90 g of carrot at 360 g a quarter.
    const rows: CreditTable["rows"] = [...table.rows, { unit: "OZ_EQ_MYPLATE", foods: ["carrot"], grams: 360, source }];
    const both = any({ groups: ["PULSE", "VEGETABLE_RED_ORANGE"] });
    expect(under({ ...cups, unit: "OZ_EQ_MYPLATE", per: "ITEM", matches: both, atMost: 3.9 }, rows)).toEqual([
      `tove ${tuesday} 4/3.9`,
    ]);
  });
  it("take the first row that fits, by food, kind, group and form", () => {
    const turned = [
      table.rows[1]!,
      { ...table.rows[0]!, groups: ["FRUIT"] as const, forms: ["WHOLE"] as const, grams: 50 },
      table.rows[0]!,
    ];
    expect(under({ ...cups, atMost: 0.9 }, turned as never).slice(0, 2)).toEqual([
      `mira ${tuesday} 1.5/0.9`,
      `tove ${monday} 2.25/0.9`,
    ]);
  });
  it("count an ingredient without a row as nothing towards a minimum and know no answer for a maximum", () => {
    const eggs = { ...cups, matches: any({ groups: ["EGG", "FRUIT"] }), per: "WEEK" } as const;
    // Tove: pear 0.75, grapes 0.5, apple 0.75 in two days of five; nobody knows about the egg.
    expect([
      under({ ...eggs, atLeast: 10 })[1],
      under({ ...eggs, atMost: 10 }),
      under({ ...eggs, atMost: 4 })[0],
    ]).toEqual(["tove 2/4", ["tove NOT_KNOWN"], "tove 2/1.6"]);
  });
  it("know of some foods that they bring nothing", () => {
    expect(under({ ...cups, matches: any({ groups: ["YOGURT"] }), atMost: 0.1 })).toEqual([]);
  });
  it("prorate a week without rounding its limit", () => {
    // 150 g of rice at 80 g are 1.875 and count 1.75; 60 g of bread count 2. Two days of five of eight are 3.2.
    const grains = any({ groups: ["GRAIN", "BREAD"] });
    expect(under({ ...cups, unit: "OZ_EQ", per: "WEEK", matches: grains, atLeast: 8 })).toEqual(["tove 1.75/3.2"]);
  });

  const share = {
    kind: "SHARE",
    unit: "OZ_EQ",
    part: any({ wholeGrain: true }),
    whole: any({ groups: ["GRAIN", "BREAD"] }),
  } as const;
  it("divide part by whole", () => {
    // Mira: 2 of whole-grain bread, 1.75 of rice.
    expect([under({ ...share, atLeast: 0.54 }), under({ ...share, atMost: 53 })]).toEqual([
      ["mira 0.533/0.54", "tove 0/0.54"],
      ["mira 0.533/0.53"],
    ]);
  });
  it("know no share when what is unknown could turn it", () => {
    const [bread, rice] = [table.rows[3]!, table.rows[4]!];
    expect([
      // Unknown rice lowers the share of whole grain, and all that Tove has is unknown.
      under({ ...share, atLeast: 0.5 }, [bread]),
      under({ ...share, atMost: 1 }, [bread]),
      // Unknown whole grain raises it, or lowers it where only the whole gains a step.
      under({ ...share, atLeast: 0 }, [rice]),
      under({ ...share, atMost: 1 }, [rice]),
    ]).toEqual([["mira NOT_KNOWN", "tove NOT_KNOWN"], [], ["mira NOT_KNOWN"], ["mira NOT_KNOWN"]]);
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
  it("tells added sugar from free sugar, and takes both in percent of energy at 4 kcal/g", () => {
    const sweet = (brief: Mutable<WeekBrief>): void =>
      brief.catalogue.foods.forEach(
        (food) => food.key === "yogurt" && void Object.assign(food, { freeSugarGrams: 12, addedSugarGrams: 6 }),
      );
    const tuesdays = { kind: "NUTRIENT", per: "BOX", as: "AMOUNT", atMost: 4 } as const;
    // 80 g of yogurt hold 4.8 g and 9.6 g; over two days of 920 kcal that is 2.087 %.
    expect([
      judge({ ...tuesdays, nutrient: "ADDED_SUGAR" }, sweet),
      judge({ ...tuesdays, nutrient: "FREE_SUGAR" }, sweet),
      judge({ kind: "NUTRIENT", nutrient: "ADDED_SUGAR", per: "WEEK_MEAN", as: "PERCENT_OF_ENERGY", atMost: 2 }, sweet),
    ]).toEqual([[`tove ${tuesday} 4.8/4`], [`tove ${tuesday} 9.6/4`], ["tove 2.087/2"]]);
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
