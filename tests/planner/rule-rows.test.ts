/** School rules as the planner holds to them: credited units, limits per item, weeks in which a rule begins or rests. */
import { createHash } from "node:crypto";
import { describe, expect, test } from "@jest/globals";
import { ruleSetDocument, type RuleSetDocument } from "../../shared/rule-set.js";
import type { WeekBrief } from "../../src/domain/brief.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { checkWeek } from "../../src/domain/checker/check-week.js";
import { findCandidates } from "../../src/domain/planner/candidates.js";
import { planWeek, type WeekOutcome } from "../../src/domain/planner/plan-week.js";
import { listRuleRows } from "../../src/domain/planner/rule-rows.js";
import { compileRuleSets } from "../../src/domain/rules/compile.js";
import { judgeWeek, type RuleJudgement } from "../../src/domain/rules/judge-week.js";
import type { WeekDraft } from "../../src/domain/week.js";
import { middle, monday, schoolDates, threeChildren } from "../support/demo-brief.js";
import { drawHousehold } from "../support/random-household.js";
import { drawRuleSet } from "../support/random-rules.js";

const { catalogue } = threeChildren();
const index = indexCatalogue(catalogue);
const hash = (text: string): string => createHash("sha256").update(text).digest("hex");
const [, tuesday, wednesday] = schoolDates as [string, string, string];

const ruleSet = (rules: readonly object[]): RuleSetDocument =>
  ruleSetDocument.parse({
    format: "noonpail-rule-set/1",
    key: "extra",
    title: "Extra",
    layer: "SCHOOL",
    coversFoodFromHome: true,
    language: "en-GB",
    version: 1,
    inForceFrom: "2026-09-01",
    rules: rules.map((rule, at) => ({
      id: `rule-${at}`,
      level: "FORBID",
      says: "An invented rule.",
      source: "own rule of an invented school",
      ...rule,
    })),
  });

/** One child of the demo under these rules alone, with what rests by day. */
function under(rules: readonly object[], exempt: Readonly<Record<string, readonly string[]>> = {}): WeekBrief {
  const days = middle.days.map((day) => ({
    ...day,
    ruleSets: [0],
    exempt: (exempt[day.date] ?? []).map((rule) => ({ ruleSet: 0, rule })),
  }));
  return threeChildren({ ruleSets: [ruleSet(rules)], children: [{ ...middle, days }] });
}

const plan = (brief: WeekBrief, steps = 8000): WeekOutcome => planWeek(brief, { seed: 1, steps, hash, index });
function draftOf(brief: WeekBrief): WeekDraft {
  const outcome = plan(brief);
  if (outcome.kind !== "PLANNED") throw new Error(JSON.stringify(outcome.conflicts));
  return outcome.draft;
}
const judge = (brief: WeekBrief, { boxes }: WeekDraft): RuleJudgement[] =>
  judgeWeek(brief, compileRuleSets(brief.ruleSets, index, brief.labels, brief.credits), boxes);

function rowsOf(brief: WeekBrief) {
  const { places } = findCandidates(brief, index);
  const rules = compileRuleSets(brief.ruleSets, index, brief.labels, brief.credits);
  const { rows, unjudged } = listRuleRows({ brief, rules, places });
  expect(unjudged).toEqual([]);
  return rows.map((row) => ({
    rule: row.rule.id,
    date: row.date,
    dates: [...new Set(row.positions.map((p) => places[p]!.place.date))],
    ...(row.row === "SUM" ? { atLeast: row.atLeast, atMost: row.atMost } : {}),
  }));
}

const fruit = { anyOf: [{ groups: ["FRUIT", "DRIED_FRUIT"] }] };
const vegetables = {
  anyOf: [{ groups: ["VEGETABLE_DARK_GREEN", "VEGETABLE_RED_ORANGE", "VEGETABLE_STARCHY", "VEGETABLE_OTHER"] }],
};
const grains = { anyOf: [{ groups: ["GRAIN", "WHOLE_GRAIN", "BREAD"] }] };
const protein = {
  anyOf: [{ groups: ["EGG", "MEAT", "POULTRY", "FISH", "OILY_FISH", "PULSE", "CHEESE", "SOYA_FOOD"] }],
};

describe("a week planned under a rule", () => {
  const rules = {
    "in cups a box": [{ kind: "AMOUNT", matches: vegetables, unit: "CUPS", per: "BOX", atLeast: 0.5 }],
    "in cups a week": [{ kind: "AMOUNT", matches: fruit, unit: "CUPS", per: "WEEK", atLeast: 3.5 }],
    "in ounce equivalents, at least and at most": [
      { kind: "AMOUNT", matches: grains, unit: "OZ_EQ", per: "WEEK", atLeast: 7, atMost: 9 },
    ],
    "in ounce equivalents as the consumer counts them": [
      { kind: "AMOUNT", matches: protein, unit: "OZ_EQ_MYPLATE", per: "WEEK", atLeast: 5 },
    ],
    "on the share of whole grain": [
      {
        kind: "SHARE",
        part: { anyOf: [{ groups: ["GRAIN", "WHOLE_GRAIN", "BREAD"], wholeGrain: true }] },
        whole: grains,
        unit: "OZ_EQ",
        atLeast: 0.8,
      },
    ],
    "on grams of each item": [{ kind: "AMOUNT", matches: vegetables, unit: "GRAMS", per: "ITEM", atMost: 70 }],
    "in millilitres a box": [
      { kind: "AMOUNT", matches: { anyOf: [{ groups: ["MILK"] }] }, unit: "ML", per: "BOX", atMost: 40 },
    ],
    "that changes within the week": [
      { kind: "NUTRIENT", nutrient: "NA", per: "WEEK_MEAN", atMost: 900, inForceUntil: tuesday },
      { kind: "NUTRIENT", nutrient: "NA", per: "WEEK_MEAN", atMost: 500, inForceFrom: wednesday },
    ],
  };
  test.each(Object.entries(rules))("keeps it, by the engine's word and the checker's: %s", (_, stated) => {
    const brief = under(stated);
    const draft = draftOf(brief);
    expect(new Set(judge(brief, draft).map(({ state }) => state))).toEqual(new Set(["MET"]));
    expect(checkWeek(brief, draft)).toEqual([]);
  });
});

describe("the rows of a rule", () => {
  test("hold each limit over its own days in the week in which it changes", () => {
    const sodium = { kind: "NUTRIENT", nutrient: "NA", per: "WEEK_MEAN" };
    const brief = under([
      { ...sodium, atMost: 1110, inForceUntil: tuesday },
      { ...sodium, atMost: 935, inForceFrom: wednesday },
    ]);
    // Two days of 1,110 mg and three of 935, in hundredths of a mg.
    expect(rowsOf(brief)).toEqual([
      { rule: "rule-0", date: null, dates: schoolDates.slice(0, 2), atLeast: null, atMost: 222_000 },
      { rule: "rule-1", date: null, dates: schoolDates.slice(2), atLeast: null, atMost: 280_500 },
    ]);
  });
  test("go by the way with a split week, in thousandths of a cup", () => {
    const cups = { kind: "AMOUNT", matches: fruit, unit: "CUPS", per: "WEEK", atLeast: 2.5, inForceFrom: wednesday };
    const own = schoolDates.slice(2);
    expect(rowsOf(under([{ ...cups, splitWeek: "PRORATE" }]))).toEqual([
      { rule: "rule-0", date: null, dates: own, atLeast: 1500, atMost: null },
    ]);
    expect(rowsOf(under([{ ...cups, splitWeek: "PER_DAY" }]))).toEqual(
      own.map((date) => ({ rule: "rule-0", date, dates: [date], atLeast: 500, atMost: null })),
    );
    expect(rowsOf(under([{ ...cups, splitWeek: "SKIP" }]))).toEqual([]);
  });
  test("leave out the day on which the rule rests", () => {
    const cups = { id: "fruit", kind: "AMOUNT", matches: fruit, unit: "CUPS", per: "BOX", atLeast: 0.5 };
    expect(rowsOf(under([cups], { [tuesday]: ["fruit"] })).map(({ date }) => date)).toEqual(
      schoolDates.filter((date) => date !== tuesday),
    );
  });
});

describe("the dishes at a place", () => {
  const offered = (brief: WeekBrief) =>
    findCandidates(brief, index).places.map(({ place, dishes }) => ({
      date: place.date,
      dishes: dishes.map(({ derived }) => derived),
    }));
  const hasPulse = ({ ingredients }: { ingredients: readonly { food: { group: string } }[] }): boolean =>
    ingredients.some(({ food }) => food.group === "PULSE");

  test("come back on the day on which a rule rests, and only there", () => {
    const noPulses = { id: "no-pulses", kind: "EXCLUDE", matches: { anyOf: [{ groups: ["PULSE"] }] } };
    const days = offered(under([noPulses], { [monday]: ["no-pulses"] }));
    const withPulses = days.filter(({ dishes }) => dishes.some(hasPulse)).map(({ date }) => date);
    expect(new Set(withPulses)).toEqual(new Set([monday]));
  });
  test("are none that a maximum in ounce equivalents could not count, and all of them where it only advises", () => {
    const pulses = { anyOf: [{ groups: ["PULSE"] }] };
    const most = { kind: "AMOUNT", matches: pulses, unit: "OZ_EQ", per: "WEEK", atMost: 20 };
    const unknown = (brief: WeekBrief) =>
      offered(brief)
        .flatMap(({ dishes }) => dishes)
        .filter(({ ingredients }) => ingredients.some(({ food }) => food.key === "chickpea-flour")).length;
    expect(unknown(under([most]))).toBe(0);
    expect(unknown(under([{ ...most, level: "ADVISE" }]))).toBeGreaterThan(0);
    expect(unknown(under([{ ...most, atMost: undefined, atLeast: 0 }]))).toBeGreaterThan(0);
  });
});

test("no week that is planned under drawn rules breaks one of them, or leaves one open for want of a figure", () => {
  let planned = 0;
  let binding = 0;
  for (let seed = 3001; seed <= 3030; seed += 1) {
    const drawn = drawHousehold(seed);
    const ruleSets = [...drawn.ruleSets, drawRuleSet(seed, "drawn", 2)];
    const children = drawn.children.slice(0, 2).map((child) => ({
      ...child,
      days: child.days.map((day) => ({ ...day, ruleSets: [...day.ruleSets, ruleSets.length - 1] })),
    }));
    const ids = new Set(children.map(({ id }) => id));
    const brief: WeekBrief = {
      ...drawn,
      ruleSets,
      children,
      pins: drawn.pins.filter(({ childId }) => ids.has(childId)),
    };
    const outcome = plan(brief, 1200);
    if (outcome.kind !== "PLANNED") continue;
    planned += 1;
    const hard = judge(brief, outcome.draft).filter(({ rule }) => rule.level === "FORBID");
    binding += hard.filter(({ ruleSet, state }) => ruleSet === ruleSets.length - 1 && state === "MET").length;
    const wrong = hard.filter(({ state, reason }) => state === "NOT_MET" || reason === "FIGURE_MISSING");
    expect({ seed, wrong }).toEqual({ seed, wrong: [] });
    expect({ seed, faults: checkWeek(brief, outcome.draft) }).toEqual({ seed, faults: [] });
  }
  expect(planned).toBeGreaterThanOrEqual(6);
  expect(binding).toBeGreaterThanOrEqual(10);
});
