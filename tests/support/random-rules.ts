/**
 * Invented rules of every kind, and boxes filled without regard to any of them, drawn from a seed: for holding two judges of the same
 * boxes against each other. The same seed draws the same.
 */
import {
  allergenCode,
  allergenGroupCode,
  chokingClass,
  cutleryCode,
  foodGroup,
  originCode,
  processingTag,
  proteinFamily,
  servedForm,
  slotCode,
  starchFamily,
} from "../../shared/codes.js";
import {
  ruleSetDocument,
  type AmountUnit,
  type Rule,
  type RuleNutrient,
  type RuleSetDocument,
} from "../../shared/rule-set.js";
import type { ChildDayBrief, WeekBrief } from "../../src/domain/brief.js";
import { addDays } from "../../src/domain/calendar/dates.js";
import type { CatalogueIndex } from "../../src/domain/catalogue/derive.js";
import type { BoxPlan, HoldingCase, ItemPlan, WeekDraft } from "../../src/domain/week.js";
import { monday } from "./demo-brief.js";
import { createDice } from "./dice.js";

interface Draw {
  chance(percent: number): boolean;
  between(least: number, most: number): number;
  one<T>(of: readonly T[]): T;
  some<T>(of: readonly T[], most: number): T[];
}
function drawFrom(seed: number): Draw {
  const dice = createDice(seed);
  const draw: Draw = {
    chance: (percent) => dice(100) < percent,
    between: (least, most) => least + dice(most - least + 1),
    one: (of) => of[dice(of.length)]!,
    some: (of, most) => [...new Set(Array.from({ length: 1 + dice(most) }, () => draw.one(of)))],
  };
  return draw;
}

/** Most of what school rules speak of: a matcher that never means anything judges nothing. */
const plenty = foodGroup.options.filter((group) => !["WATER", "HERB_SPICE", "RAISING_AGENT"].includes(group));

function drawMatcher(draw: Draw) {
  const clause = () => ({
    ...(draw.chance(70) ? { groups: draw.some(plenty, 5) } : {}),
    ...(draw.chance(8) ? { wholeGrain: draw.chance(70) } : {}),
    ...(draw.chance(8) ? { origins: draw.some(originCode.options, 3) } : {}),
    ...(draw.chance(8) ? { allergens: draw.some([...allergenCode.options, ...allergenGroupCode.options], 4) } : {}),
    ...(draw.chance(6) ? { forms: draw.some(servedForm.options, 5) } : {}),
    ...(draw.chance(4) ? { chokingClasses: draw.some(chokingClass.options, 3) } : {}),
    ...(draw.chance(6) ? { wholly: true } : {}),
    ...(draw.chance(12) ? { slots: draw.some(slotCode.options, 2) } : {}),
    ...(draw.chance(4) ? { processing: draw.some(processingTag.options, 3) } : {}),
    ...(draw.chance(4) ? { starch: draw.some(starchFamily.options, 3) } : {}),
    ...(draw.chance(4) ? { protein: draw.some(proteinFamily.options, 3) } : {}),
    ...(draw.chance(4) ? { cutlery: draw.some(cutleryCode.options, 2) } : {}),
    ...(draw.chance(4) ? { cookedInFat: draw.chance(50) } : {}),
  });
  return { anyOf: Array.from({ length: draw.one([1, 1, 1, 2, 3]) }, clause) };
}

/** A minimum, a maximum or both, round about what a box or a week of five has. */
function drawBounds(draw: Draw, about: number, week: boolean) {
  const middle = (about * (week ? 5 : 1) * draw.between(2, 18)) / 10;
  const [atLeast, atMost] = [middle * 0.7, middle * 1.2].map((bound) => Math.round(bound * 100) / 100);
  return draw.one([{ atLeast }, { atMost }, { atMost }, { atLeast, atMost }]);
}

const about: Readonly<Record<AmountUnit, number>> = { GRAMS: 60, ML: 60, CUPS: 0.5, OZ_EQ: 1, OZ_EQ_MYPLATE: 1 };
const units = Object.keys(about) as AmountUnit[];
const nutrients: readonly (readonly [RuleNutrient, number])[] = [
  ["ENERC_KCAL", 500],
  ["PROCNT", 15],
  ["FASAT", 5],
  ["NA", 600],
  ["FIBTG", 6],
  ["FREE_SUGAR", 5],
  ["ADDED_SUGAR", 5],
  ["VITD", 1],
];

function drawRule(draw: Draw, id: string): object {
  const date = () => addDays(monday, draw.between(-1, 5));
  const common = {
    id,
    says: "An invented rule.",
    level: "FORBID",
    source: "invented for this test",
    ...(draw.chance(15) ? { breaks: draw.one([["lunch"], ["morning-break"]]) } : {}),
    ...(draw.chance(12) ? { weekdays: draw.some(["MONDAY", "TUESDAY", "THURSDAY", "FRIDAY"], 3) } : {}),
    ...(draw.chance(12)
      ? { ages: draw.one([{ underYears: 11 }, { fromYears: 6 }, { fromYears: 5, underYears: 14 }]) }
      : {}),
    ...(draw.chance(15) ? { inForceFrom: date() } : {}),
    ...(draw.chance(15) ? { inForceUntil: date() } : {}),
    shortWeek: draw.one(["PRORATE", "PRORATE", "PER_DAY", "SKIP"]),
    ...(draw.chance(30) ? { splitWeek: draw.one(["PRORATE", "PER_DAY", "SKIP"]) } : {}),
  };
  const matches = drawMatcher(draw);
  const kind = draw.one<Rule["kind"]>([
    "EXCLUDE",
    "ONLY",
    "FREQUENCY",
    "FREQUENCY",
    "AMOUNT",
    "AMOUNT",
    "AMOUNT",
    "SHARE",
    "SHARE",
    "NUTRIENT",
    "NUTRIENT",
    "TOGETHER",
    "SERVING",
  ]);
  switch (kind) {
    case "EXCLUDE":
    case "ONLY":
      return { ...common, kind, matches };
    case "FREQUENCY": {
      const per = draw.one(["BOX", "WEEK", "WEEK"]);
      const least = draw.between(0, per === "BOX" ? 2 : 5);
      const bounds = draw.one([{ atLeast: least }, { atMost: least }, { atLeast: least, atMost: least + 1 }]);
      const weeks = per === "WEEK" && draw.chance(25) ? draw.between(2, 3) : 1;
      return { ...common, kind, matches, per, weeks, counts: draw.one(["ITEMS", "KINDS", "DAYS"]), ...bounds };
    }
    case "AMOUNT": {
      const unit = draw.one(units);
      const per = draw.one(["ITEM", "BOX", "WEEK"]);
      return { ...common, kind, matches, unit, per, ...drawBounds(draw, about[unit], per === "WEEK") };
    }
    case "SHARE": {
      const bound = draw.between(5, 95) / 100;
      const bounds = draw.one([{ atLeast: bound }, { atMost: bound }, { atMost: bound * 100 }]);
      return {
        ...common,
        kind,
        part: matches,
        whole: drawMatcher(draw),
        unit: draw.one([...units, "ITEMS"]),
        ...bounds,
      };
    }
    case "NUTRIENT": {
      const [nutrient, amount] = draw.one(nutrients);
      const per = draw.one(["ITEM", "BOX", "WEEK_MEAN", "WEEK_MEAN"]);
      const isPercent = ["PROCNT", "FASAT", "FREE_SUGAR", "ADDED_SUGAR"].includes(nutrient) && draw.chance(40);
      const as = isPercent ? "PERCENT_OF_ENERGY" : "AMOUNT";
      const bounds = drawBounds(draw, isPercent ? 10 : per === "ITEM" ? amount / 3 : amount, false);
      return { ...common, kind, nutrient, per, as, ...bounds };
    }
    case "TOGETHER":
      return { ...common, kind, first: matches, second: drawMatcher(draw) };
    case "SERVING":
      return { ...common, kind, ...draw.one([{ noReheating: true }, { fingerFoodOnly: true }]) };
  }
}

/** A document of so many rules, r0, r1, ..., over the demo's week; now and then it begins or ends within it, or is for some ages. */
export function drawRuleSet(seed: number, key: string, rules: number): RuleSetDocument {
  const draw = drawFrom(seed);
  return ruleSetDocument.parse({
    format: "noonpail-rule-set/1",
    key,
    title: key,
    layer: "SCHOOL",
    coversFoodFromHome: true,
    language: "en-GB",
    version: 1,
    inForceFrom: draw.chance(20) ? addDays(monday, draw.between(1, 3)) : "2026-09-01",
    ...(draw.chance(20) ? { inForceUntil: addDays(monday, draw.between(2, 4)) } : {}),
    ...(draw.chance(15) ? { ages: draw.one([{ underYears: 12 }, { fromYears: 8 }]) } : {}),
    rules: Array.from({ length: rules }, (_, at) => drawRule(draw, `r${at}`)),
  });
}

/** The household under these documents and no others, with a note for a rule here and there. */
export function underRuleSets(brief: WeekBrief, ruleSets: readonly RuleSetDocument[], seed: number): WeekBrief {
  const draw = drawFrom(seed);
  const onDay = (day: ChildDayBrief): ChildDayBrief => ({
    ...day,
    ruleSets: ruleSets.map((_, set) => set),
    exempt: ruleSets.flatMap(({ rules }, ruleSet) =>
      rules.filter(() => draw.chance(2)).map(({ id }) => ({ ruleSet, rule: id })),
    ),
  });
  return {
    ...brief,
    ruleSets,
    children: brief.children.map((child) => ({ ...child, days: child.days.map(onDay) })),
  };
}

const cases: readonly HoldingCase[] = ["CHILLED", "CHILLED", "AMBIENT", "FLASK", "REHEATED_AT_SCHOOL"];

/** Boxes of dishes drawn for their slots alone, half to twice their portion; nothing else of the week is filled in. */
export function drawBoxes(brief: WeekBrief, index: CatalogueIndex, seed: number): WeekDraft {
  const draw = drawFrom(seed);
  const boxes = brief.children.flatMap((child) =>
    child.days.map((day): BoxPlan => ({
      childId: child.id,
      date: day.date,
      leaveAt: day.leaveAt,
      coldSources: 0,
      flask: false,
      cutlery: [],
      items: day.breaks.flatMap((pause) =>
        pause.slots.map((slot, position): ItemPlan => {
          const dish = draw.one(index.dishes.filter((row) => row.slots.includes(slot))).key;
          return {
            breakKey: pause.key,
            slot,
            position,
            dish,
            grams: Math.max(1, Math.round((index.derived(dish).grams * draw.between(5, 20)) / 10)),
            pieces: null,
            served: "COLD",
            energyKcal: 0,
            carbohydrateGrams: null,
            compartment: 0,
            cuts: [],
            holding: { case: draw.one(cases), minutes: 0, limitMinutes: 0 },
            labelsToRead: [],
            pinned: false,
            why: [],
          };
        }),
      ),
    })),
  );
  return {
    boxes,
    batches: [],
    readyUses: [],
    tasks: [],
    sessions: [],
    shopping: [],
    cautions: [],
    wishes: {
      handsOnMinutes: 0,
      costMinor: 0,
      spareBaseGrams: 0,
      nutrientShortfallPercent: 0,
      refusalPoints: 0,
      monotonyPoints: 0,
      objectivePoints: 0,
    },
  };
}
