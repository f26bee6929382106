import { ruleSetDocument, type Rule, type RuleSetDocument } from "../../shared/rule-set.js";
import type { ChildBrief } from "../../src/domain/brief.js";
import { addDays, ageOn, weekdayOf } from "../../src/domain/calendar/dates.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { compileRuleSets } from "../../src/domain/rules/compile.js";
import {
  findDocumentClashes,
  matchCatalogue,
  type DocumentClash,
  type RuleRef,
} from "../../src/domain/rules/document-clashes.js";
import { judgeWeek, type EatenItem } from "../../src/domain/rules/judge-week.js";
import { middle, schoolDates, threeChildren } from "../support/demo-brief.js";
import { drawRuleSet } from "../support/random-rules.js";
import { head, noKiwi } from "../support/rule-documents.js";

const brief = threeChildren();
const whole = matchCatalogue(indexCatalogue(brief.catalogue));
const BREAKS = ["morning-break", "lunch"];

type RuleInput = Record<string, unknown>;
const { matches: _matches, ...plain } = noKiwi;
const document = (rules: readonly RuleInput[], change: object = {}): RuleSetDocument =>
  ruleSetDocument.parse({
    ...head,
    ...change,
    rules: rules.map((rule, at) => ({ ...plain, id: `r${at}`, ...rule })),
  });
const clashesOf = (...documents: readonly RuleSetDocument[]): DocumentClash[] =>
  findDocumentClashes(documents, whole, BREAKS);
const clashesIn = (...rules: readonly RuleInput[]): DocumentClash[] => clashesOf(document(rules));
const ref = (at: number, of = 0): RuleRef => ({ document: of, at });

const fruit = { anyOf: [{ groups: ["FRUIT"] }] };
const fruitAndDried = { anyOf: [{ groups: ["FRUIT", "DRIED_FRUIT"] }] };
const bread = { anyOf: [{ groups: ["BREAD"] }] };
const anything = { anyOf: [{}] };
const often = (change: RuleInput): RuleInput => ({
  kind: "FREQUENCY",
  counts: "ITEMS",
  per: "BOX",
  matches: fruit,
  ...change,
});
const amount = (change: RuleInput): RuleInput => ({
  kind: "AMOUNT",
  unit: "GRAMS",
  per: "BOX",
  matches: fruit,
  ...change,
});
const nutrient = (change: RuleInput): RuleInput => ({ kind: "NUTRIENT", nutrient: "NA", per: "BOX", ...change });
const shut = (matches: object, change: RuleInput = {}): RuleInput => ({ kind: "EXCLUDE", matches, ...change });
const only = (matches: object, change: RuleInput = {}): RuleInput => ({ kind: "ONLY", matches, ...change });
const apart = (change: RuleInput = {}): RuleInput => ({ kind: "TOGETHER", first: fruit, second: bread, ...change });

describe("a minimum above a maximum", () => {
  const above = (atLeast: number, atMost: number, minimum = 0, maximum = 1) => [
    { kind: "ABOVE_MAXIMUM", minimum: ref(minimum), maximum: ref(maximum), atLeast, atMost, by: [] as RuleRef[] },
  ];

  it.each<[string, RuleInput, RuleInput, number, number]>([
    ["in a box", often({ atLeast: 3 }), often({ atMost: 2 }), 3, 2],
    ["in a week", often({ per: "WEEK", atLeast: 3 }), often({ per: "WEEK", atMost: 2 }), 3, 2],
    ["every day against a week", often({ atLeast: 1 }), often({ per: "WEEK", atMost: 4 }), 1, 4],
    ["a week against every box", often({ per: "WEEK", atLeast: 6 }), often({ atMost: 1 }), 6, 1],
    ["of more than is limited", often({ atLeast: 2 }), often({ atMost: 1, matches: fruitAndDried }), 2, 1],
    [
      "on days of a week",
      often({ counts: "DAYS", per: "WEEK", atLeast: 3 }),
      often({ counts: "DAYS", per: "WEEK", atMost: 2 }),
      3,
      2,
    ],
    [
      "of kinds",
      often({ counts: "KINDS", per: "WEEK", atLeast: 3 }),
      often({ counts: "KINDS", per: "WEEK", atMost: 2 }),
      3,
      2,
    ],
    [
      "over three weeks",
      often({ per: "WEEK", weeks: 3, atLeast: 3 }),
      often({ per: "WEEK", weeks: 3, atMost: 2 }),
      3,
      2,
    ],
    ["of an amount in a box", amount({ atLeast: 80 }), amount({ atMost: 40 }), 80, 40],
    ["of an amount in a week", amount({ per: "WEEK", atLeast: 80 }), amount({ per: "WEEK", atMost: 40 }), 80, 40],
    ["of salt", nutrient({ atLeast: 500 }), nutrient({ atMost: 400 }), 500, 400],
    [
      "of salt over a week",
      nutrient({ per: "WEEK_MEAN", atLeast: 500 }),
      nutrient({ per: "WEEK_MEAN", atMost: 400 }),
      500,
      400,
    ],
  ])("%s", (_, minimum, maximum, atLeast, atMost) => {
    expect(clashesIn(minimum, maximum)).toEqual(above(atLeast, atMost));
    expect(clashesIn(maximum, minimum)).toEqual(above(atLeast, atMost, 1, 0));
  });

  it("in one and the same rule", () => {
    expect(clashesIn(often({ atLeast: 3, atMost: 2 }))).toEqual(above(3, 2, 0, 0));
    const share = { kind: "SHARE", part: fruit, whole: fruitAndDried, unit: "GRAMS" };
    expect(clashesIn({ ...share, atLeast: 60, atMost: 0.5 })).toEqual(
      above(0.6, 0.5, 0, 0).map((clash) => ({ ...clash, atLeast: 60 })),
    );
  });

  it("counts what is shut out as not there", () => {
    const rules = [often({ atLeast: 2, matches: fruitAndDried }), often({ atMost: 1 })];
    expect(clashesIn(...rules)).toEqual([]);
    expect(clashesIn(...rules, shut({ anyOf: [{ groups: ["DRIED_FRUIT"] }] }))).toEqual(
      above(2, 1).map((clash) => ({ ...clash, by: [ref(2)] })),
    );
  });

  it.each<[string, RuleInput, RuleInput]>([
    ["equal bounds", often({ atLeast: 2 }), often({ atMost: 2 })],
    ["one a day against five a week", often({ atLeast: 1 }), often({ per: "WEEK", atMost: 5 })],
    ["advice", often({ atLeast: 3 }), often({ atMost: 2, level: "ADVISE" })],
    ["other weekdays", often({ atLeast: 3, weekdays: ["MONDAY"] }), often({ atMost: 2, weekdays: ["TUESDAY"] })],
    [
      "a week's minimum against one day's maximum of the week",
      amount({ per: "WEEK", atLeast: 80 }),
      amount({ per: "WEEK", atMost: 40, weekdays: ["MONDAY"] }),
    ],
    [
      "means over other days",
      nutrient({ per: "WEEK_MEAN", atLeast: 500, weekdays: ["MONDAY", "TUESDAY"] }),
      nutrient({ per: "WEEK_MEAN", atMost: 400 }),
    ],
    ["weekends, on which nothing is packed", often({ atLeast: 3, weekdays: ["SATURDAY"] }), often({ atMost: 2 })],
    ["other ages", often({ atLeast: 3, ages: { underYears: 8 } }), often({ atMost: 2, ages: { fromYears: 8 } })],
    ["other dates", often({ atLeast: 3, inForceUntil: "2027-02-01" }), often({ atMost: 2, inForceFrom: "2027-02-02" })],
    [
      "dates that meet on a day that is another weekday",
      often({ atLeast: 3, inForceUntil: "2027-02-02", weekdays: ["MONDAY"] }),
      often({ atMost: 2, inForceFrom: "2027-02-02" }),
    ],
    [
      "weeks that meet in a part only",
      often({ per: "WEEK", atLeast: 3, inForceUntil: "2027-02-03" }),
      often({ per: "WEEK", atMost: 2, inForceFrom: "2027-02-02" }),
    ],
    ["other breaks", often({ atLeast: 3, breaks: ["lunch"] }), often({ atMost: 2, breaks: ["morning-break"] })],
    ["a break that is not there", often({ atLeast: 3, breaks: ["tea"] }), often({ atMost: 2 })],
    ["other measures", amount({ atLeast: 80 }), amount({ atMost: 1, unit: "CUPS" })],
    ["other food", amount({ atLeast: 80 }), amount({ atMost: 40, matches: bread })],
    ["less than is limited", often({ atLeast: 2, matches: fruitAndDried }), often({ atMost: 1 })],
    ["kinds of a box against items", often({ counts: "KINDS", atLeast: 3 }), often({ atMost: 2 })],
  ])("is none with %s", (_, minimum, maximum) => expect(clashesIn(minimum, maximum)).toEqual([]));

  it("is found where ages and dates meet at their edges", () => {
    const [minimum, maximum] = [
      often({ atLeast: 3, ages: { underYears: 8 }, inForceUntil: "2027-02-02" }),
      often({ atMost: 2, ages: { fromYears: 7 }, inForceFrom: "2027-02-02" }),
    ];
    expect(clashesIn(minimum, maximum)).toEqual(above(3, 2));
  });

  it("of the document's own ages and dates counts too", () => {
    const minimum = document([often({ atLeast: 3 })], { ages: { underYears: 8 } });
    expect(clashesOf(minimum, document([often({ atMost: 2 })], { ages: { fromYears: 8 } }))).toEqual([]);
    expect(clashesOf(minimum, document([often({ atMost: 2 })], { inForceUntil: "2027-01-11" }))).toHaveLength(1);
  });

  it("of single items or of a share is kept by a box with none of it", () => {
    expect(clashesIn(amount({ per: "ITEM", atLeast: 80 }), amount({ per: "ITEM", atMost: 40 }))).toEqual([
      { kind: "ONLY_WITHOUT", minimum: ref(0), maximum: ref(1), atLeast: 80, atMost: 40 },
    ]);
    const share = { kind: "SHARE", part: fruit, whole: fruitAndDried, unit: "GRAMS" };
    expect(clashesIn({ ...share, atLeast: 80 }, { ...share, atMost: 0.9 })).toEqual([]);
    expect(clashesIn({ ...share, atLeast: 80 }, { ...share, atMost: 0.7 })).toMatchObject([{ kind: "ONLY_WITHOUT" }]);
  });
});

describe("more than there are", () => {
  it("days of a week, of some weekdays, of a box", () => {
    const days = (change: RuleInput) => clashesIn(often({ counts: "DAYS", per: "WEEK", ...change }));
    expect(days({ atLeast: 6 })).toEqual([
      { kind: "MORE_THAN_THERE_ARE", minimum: ref(0), atLeast: 6, left: 5, by: [] },
    ]);
    expect(days({ atLeast: 2, weekdays: ["FRIDAY"] })).toMatchObject([{ left: 1 }]);
    expect(days({ atLeast: 2, per: "BOX" })).toMatchObject([{ left: 1 }]);
    expect(days({ atLeast: 10, weeks: 2 })).toEqual([]);
    expect(days({ atLeast: 5 })).toEqual([]);
  });

  it("kinds that are left when others are shut out", () => {
    const kinds = often({ counts: "KINDS", per: "WEEK", atLeast: 3 });
    const left = only({
      anyOf: [
        { kinds: ["apple", "pear"], wholly: true },
        { groups: ["BREAD"], wholly: true },
      ],
    });
    expect(clashesIn(kinds)).toEqual([]);
    expect(clashesIn(kinds, left)).toMatchObject([{ kind: "MORE_THAN_THERE_ARE", atLeast: 3 }]);
    expect(clashesIn(kinds, { ...left, weekdays: ["MONDAY"] })).toEqual([]);
  });
});

describe("a required group that is emptied", () => {
  const emptied = (by: readonly RuleRef[], minimum = ref(0)) => [{ kind: "GROUP_EMPTIED", minimum, by }];

  it.each<[string, RuleInput]>([
    ["asked for in every box", often({ atLeast: 1 })],
    ["asked for in a week", often({ per: "WEEK", atLeast: 1 })],
    ["asked for by amount", amount({ atLeast: 40 })],
    ["asked for by cups a week", amount({ per: "WEEK", unit: "CUPS", atLeast: 2.5 })],
  ])("%s", (_, minimum) => expect(clashesIn(minimum, shut(fruit))).toEqual(emptied([ref(1)])));

  it("by several rules together, and by none that could be left out", () => {
    expect(clashesIn(often({ atLeast: 1 }), shut(bread), shut(fruit), shut(anything, { level: "ADVISE" }))).toEqual(
      emptied([ref(2)]),
    );
    const apples = { anyOf: [{ kinds: ["apple", "pear"] }] };
    expect(
      clashesIn(
        often({ atLeast: 1, matches: apples }),
        shut({ anyOf: [{ kinds: ["apple"] }] }),
        shut(bread),
        shut({ anyOf: [{ kinds: ["pear"] }] }),
      ),
    ).toEqual(emptied([ref(1), ref(3)]));
  });

  it("by another layer: school, class and the jurisdiction's that it adopted", () => {
    const [county, school, class4] = [
      document([often({ atLeast: 1 })], { layer: "JURISDICTION", jurisdiction: "England", key: "county" }),
      document([shut(bread)], { key: "school" }),
      document([shut(fruit)], { layer: "CLASS", key: "class" }),
    ];
    expect(clashesOf(class4, school)).toEqual([]);
    expect(clashesOf(class4, school, county)).toEqual(emptied([ref(0)], ref(0, 2)));
  });

  it.each<[string, RuleInput, RuleInput]>([
    ["on some days only", often({ per: "WEEK", atLeast: 1 }), shut(fruit, { weekdays: ["MONDAY", "TUESDAY"] })],
    ["at one break only", often({ atLeast: 1 }), shut(fruit, { breaks: ["lunch"] })],
    ["for other ages", often({ atLeast: 1, ages: { underYears: 5 } }), shut(fruit, { ages: { fromYears: 5 } })],
    [
      "before it is asked for",
      often({ atLeast: 1, inForceFrom: "2027-03-01" }),
      shut(fruit, { inForceUntil: "2027-02-28" }),
    ],
    ["when it is only advised", often({ atLeast: 1, level: "ADVISE" }), shut(fruit)],
    ["when nothing is asked for", often({ atLeast: 0 }), shut(fruit)],
    [
      "when there is none in the catalogue anyway",
      often({ atLeast: 1, matches: { anyOf: [{ groups: ["FRUIT"], origins: ["FISH"] }] } }),
      shut(fruit),
    ],
    ["of items, which may be none", amount({ per: "ITEM", atLeast: 40 }), shut(fruit)],
  ])("is none %s", (_, minimum, shutter) => expect(clashesIn(minimum, shutter)).toEqual([]));

  it("at the only break at which it is asked for", () => {
    expect(
      clashesIn(often({ atLeast: 1, breaks: ["morning-break"] }), shut(fruit, { breaks: ["morning-break"] })),
    ).toEqual(emptied([ref(1)]));
  });
});

describe("nothing left to eat", () => {
  it("at a break, by rules that leave nothing between them", () => {
    expect(clashesIn(only(fruit, { breaks: ["lunch"] }), shut(fruit))).toEqual([
      { kind: "NOTHING_LEFT", breakKey: "lunch", by: [ref(0), ref(1)] },
    ]);
    expect(clashesIn(shut(anything, { weekdays: ["FRIDAY"], breaks: ["lunch"] }))).toMatchObject([
      { kind: "NOTHING_LEFT", breakKey: "lunch" },
    ]);
    expect(findDocumentClashes([document([shut(anything)])], whole, [])).toMatchObject([
      { kind: "NOTHING_LEFT", breakKey: "" },
    ]);
  });

  it("is none at different breaks, days or ages, or at a break that is not there", () => {
    expect(clashesIn(only(fruit, { breaks: ["lunch"] }), shut(fruit, { breaks: ["morning-break"] }))).toEqual([]);
    expect(clashesIn(only(fruit, { weekdays: ["MONDAY"] }), shut(fruit, { weekdays: ["TUESDAY"] }))).toEqual([]);
    expect(clashesIn(only(fruit, { ages: { underYears: 5 } }), shut(fruit, { ages: { fromYears: 5 } }))).toEqual([]);
    expect(clashesIn(shut(anything, { breaks: ["tea"] }))).toEqual([]);
  });
});

describe("apart and together", () => {
  const fruitAndBread = [often({ atLeast: 1 }), often({ atLeast: 1, matches: bread })];

  it("two things that every box has to have may not be in one", () => {
    expect(clashesIn(...fruitAndBread, apart())).toEqual([
      { kind: "APART_AND_TOGETHER", first: ref(0), second: ref(1), apart: ref(2) },
    ]);
  });

  it("is none where the three never hold on one day, or at one break, or one is wanted in the week only", () => {
    const on = (rule: RuleInput, ...weekdays: readonly string[]) => ({ ...rule, weekdays });
    const [first, second] = fruitAndBread as [RuleInput, RuleInput];
    expect(
      clashesIn(on(first, "MONDAY", "TUESDAY"), on(second, "MONDAY", "WEDNESDAY"), on(apart(), "TUESDAY", "WEDNESDAY")),
    ).toEqual([]);
    expect(clashesIn(first, second, apart({ breaks: ["lunch"] }))).toEqual([]);
    expect(clashesIn(first, { ...second, per: "WEEK" }, apart())).toEqual([]);
    expect(clashesIn(first, second, apart({ level: "ADVISE" }))).toEqual([]);
  });
});

describe("on random documents and a small catalogue", () => {
  // A dish for each of a few slots, different groups: few enough to pack every box there is.
  const slots = ["MAIN", "VEGETABLE", "FRUIT"] as const;
  const dishes = slots.flatMap((slot) =>
    brief.catalogue.dishes
      .filter((dish) => dish.slots.includes(slot))
      .filter((_, at) => at % 40 === 3)
      .slice(0, 3),
  );
  const small = { ...brief.catalogue, dishes: [...new Set(dishes)] };
  const index = indexCatalogue(small);
  const catalogue = matchCatalogue(index);
  const { items } = catalogue;
  // Rules drawn for one week may meet in another only.
  const dates = [-7, 0, 7].flatMap((days) => schoolDates.map((date) => addDays(date, days)));

  /** Every box of up to one item a break and slot, at the two breaks. */
  function everyBox(): EatenItem[][] {
    const places = [
      { breakKey: "morning-break", slot: "FRUIT" as const },
      ...slots.map((slot) => ({ breakKey: "lunch", slot })),
    ];
    return places.reduce<EatenItem[][]>(
      (boxes, place) =>
        boxes.flatMap((box) => [
          box,
          ...items
            .filter(({ slot }) => slot === place.slot)
            .map(({ dish }) => [...box, { ...place, position: 0, dish, grams: index.derived(dish).grams }]),
        ]),
      [[]],
    );
  }
  const boxes = everyBox().filter((box) => box.length > 0);

  const mondayOf = (date: string) =>
    [0, 1, 2, 3, 4].map((days) => addDays(date, -days)).find((day) => weekdayOf(day) === "MONDAY")!;

  /** Of a box rule: the box breaks it, on its own day. */
  const rulesOfABox = (rule: Rule): boolean => !("per" in rule) || rule.per === "BOX" || rule.per === "ITEM";

  it("a clash of one box is one that no box escapes, on any day and at any age at which its rules hold", () => {
    let claimed = 0;
    for (let seed = 1; seed <= 500; seed += 1) {
      const drawn = drawRuleSet(seed, "drawn", 14);
      for (const clash of findDocumentClashes([drawn], catalogue, BREAKS)) {
        const members = refsOf(clash).map(({ at }) => drawn.rules[at]!);
        if (clash.kind === "ONLY_WITHOUT" || clash.kind === "NOTHING_LEFT" || !members.every(rulesOfABox)) continue;
        const alone = { ...drawn, rules: members };
        const meetings = meetingsOf(alone);
        // They meet at all.
        expect([seed, clash.kind, meetings.length > 0]).toEqual([seed, clash.kind, true]);
        claimed += 1;
        for (const { date, born } of meetings.slice(0, 2)) {
          const compiled = compileRuleSets([alone], index, [], brief.credits);
          const child: ChildBrief = {
            ...middle,
            dateOfBirth: born,
            days: middle.days.slice(0, 1).map((day) => ({
              ...day,
              date,
              ruleSets: [0],
              exempt: [],
              breaks: BREAKS.map((key) => ({ ...day.breaks[0]!, key })),
            })),
          };
          for (const box of boxes) {
            const said = judgeWeek({ weekStart: mondayOf(date), children: [child], history: [] }, compiled, [
              { childId: child.id, date, items: box },
            ]);
            if (said.every(({ state }) => state !== "NOT_MET"))
              throw new Error(`seed ${seed}: ${JSON.stringify({ clash, box, members })}`);
          }
        }
      }
    }
    expect(claimed).toBeGreaterThan(20);
  });

  function refsOf(clash: DocumentClash): RuleRef[] {
    switch (clash.kind) {
      case "ABOVE_MAXIMUM":
      case "ONLY_WITHOUT":
        return [clash.minimum, clash.maximum, ...("by" in clash ? clash.by : [])];
      case "MORE_THAN_THERE_ARE":
      case "GROUP_EMPTIED":
        return [clash.minimum, ...clash.by];
      case "NOTHING_LEFT":
        return [...clash.by];
      case "APART_AND_TOGETHER":
        return [clash.first, clash.second, clash.apart];
    }
  }
  /** Days of the week and births at which all rules of a document hold. */
  function meetingsOf({ rules, ...set }: RuleSetDocument): { date: string; born: string }[] {
    const births = ["2023-05-20", "2020-05-20", "2018-05-20", "2014-05-20", "2011-05-20"];
    const isIn = (part: Pick<Rule, "inForceFrom" | "inForceUntil">, date: string) =>
      (part.inForceFrom ?? date) <= date && date <= (part.inForceUntil ?? date);
    return dates.flatMap((date) =>
      births.flatMap((born) => {
        const age = ageOn(born, date);
        const weekday = weekdayOf(date);
        const holds = [set, ...rules].every(
          (part) => isIn(part, date) && (part.ages?.fromYears ?? 0) <= age && age < (part.ages?.underYears ?? 99),
        );
        return holds && rules.every(({ weekdays }) => weekdays?.includes(weekday) ?? true) ? [{ date, born }] : [];
      }),
    );
  }
});
