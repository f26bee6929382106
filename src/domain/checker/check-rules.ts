import {
  matchersOf,
  type Matcher,
  type Rule,
  type RuleNutrient,
  type RuleSetDocument,
} from "../../../shared/rule-set.js";
import type { BreakBrief, ChildBrief, ChildDayBrief } from "../brief.js";
import { completedYears, dayNumber, weekdayOn } from "./clock.js";
import { leftOf } from "./cooking-losses.js";
import type { Fault } from "./fault.js";
import { matchSubject } from "./matching.js";
import { matchItem, measure } from "./measuring.js";
import type { Measured } from "./measuring.js";
import { partsOf, place, referenceGrams } from "./week-read.js";
import type { ItemRead, Part, WeekRead } from "./week-read.js";

type RuleOf<K extends Rule["kind"]> = Extract<Rule, { kind: K }>;

/** One forbidding rule for one child, with the days of this week on which it is in force and what is eaten under it. */
interface Case<R extends Rule = Rule> {
  readonly week: WeekRead;
  readonly child: ChildBrief;
  readonly document: RuleSetDocument;
  readonly rule: R;
  readonly dates: readonly string[];
  readonly items: readonly ItemRead[];
  /** On other packed days it would be asked of this child too, but it or its document had not begun or was over. */
  readonly split: boolean;
}

/** Days of a full school week, when the rule itself names none. */
const fullWeekDays = 5;

const appliesAt = (rule: Rule, atBreak: BreakBrief): boolean => !rule.breaks || rule.breaks.includes(atBreak.key);

/** Has begun on that date and is not over. */
function holdsOn(
  dated: { inForceFrom?: string | undefined; inForceUntil?: string | undefined },
  date: string,
): boolean {
  const { inForceFrom, inForceUntil } = dated;
  return (inForceFrom === undefined || date >= inForceFrom) && (inForceUntil === undefined || date <= inForceUntil);
}

/** On the weekdays it names, at a break of that day. */
function isAskedOn(rule: Rule, day: ChildDayBrief): boolean {
  const weekday = weekdayOn(day.date);
  if (rule.weekdays && !(weekday && rule.weekdays.includes(weekday))) return false;
  return day.breaks.some((atBreak) => appliesAt(rule, atBreak));
}

function isOfAge(ages: Rule["ages"], child: ChildBrief, date: string): boolean {
  const age = completedYears(child.dateOfBirth, date);
  return age >= (ages?.fromYears ?? 0) && age < (ages?.underYears ?? Number.POSITIVE_INFINITY);
}

export const namesAllergen = (rule: Rule): boolean =>
  matchersOf(rule).some(({ matcher }) => matcher.anyOf.some((clause) => clause.allergens !== undefined));

/** A clinician's note lets a rule rest for a child that day; never one that names an allergen. */
function restsOn(day: ChildDayBrief, ruleSet: number, rule: Rule): boolean {
  const exempt = day.exempt?.some((row) => row.ruleSet === ruleSet && row.rule === rule.id) ?? false;
  return exempt && !namesAllergen(rule);
}

function findCases(week: WeekRead): Case[] {
  return week.brief.children.flatMap((child) =>
    week.brief.ruleSets.flatMap((document, index) =>
      document.rules.flatMap((rule): Case[] => {
        if (!document.coversFoodFromHome || document.withdrawn === true || rule.level !== "FORBID") return [];
        const asked = child.days.filter((day) => isAskedOn(rule, day));
        const inForce = asked.filter(
          (day) => day.ruleSets.includes(index) && holdsOn(document, day.date) && holdsOn(rule, day.date),
        );
        const dates = inForce
          .filter(
            (day) =>
              isOfAge(document.ages, child, day.date) &&
              isOfAge(rule.ages, child, day.date) &&
              !restsOn(day, index, rule),
          )
          .map((day) => day.date);
        if (dates.length === 0) return [];
        const items = week.items.filter(
          (read) =>
            read.child === child &&
            dates.includes(read.box.date) &&
            read.atBreak !== undefined &&
            appliesAt(rule, read.atBreak),
        );
        return [{ week, child, document, rule, dates, items, split: inForce.length < asked.length }];
      }),
    ),
  );
}

const onDate = (items: readonly ItemRead[], date: string): ItemRead[] => items.filter((read) => read.box.date === date);

function broken({ child, document, rule }: Case, facts: Omit<Fault, "kind"> = {}): Fault {
  return { kind: "RULE_BROKEN", childId: child.id, ruleSet: document.key, rule: rule.id, ...facts };
}

interface Bounds {
  readonly atLeast?: number | undefined;
  readonly atMost?: number | undefined;
}

/** Room for the last bits of a floating sum, never for a real difference. */
const slack = (limit: number): number => 1e-6 * Math.max(1, Math.abs(limit));

function judgeBounds(
  subject: Case,
  found: number,
  { atLeast, atMost }: Bounds,
  facts: Omit<Fault, "kind"> = {},
): Fault[] {
  const faults: Fault[] = [];
  if (atLeast !== undefined && !(found >= atLeast - slack(atLeast)))
    faults.push(broken(subject, { ...facts, found, limit: atLeast }));
  if (atMost !== undefined && !(found <= atMost + slack(atMost)))
    faults.push(broken(subject, { ...facts, found, limit: atMost }));
  return faults;
}

/**
 * A share of a week's limit. Counts: a minimum is rounded down (never more than the share), a maximum up (a share of one
 * thing is still one thing). Amounts are not rounded.
 */
function shareOf({ atLeast, atMost }: Bounds, part: number, whole: boolean): Bounds {
  return {
    atLeast: atLeast === undefined ? undefined : whole ? Math.floor(atLeast * part + 1e-9) : atLeast * part,
    atMost: atMost === undefined ? undefined : whole ? Math.ceil(atMost * part - 1e-9) : atMost * part,
  };
}

/** Days packed over the days of a full week under this rule, at most 1. */
function weekPart({ rule, dates }: Case): number {
  return Math.min(1, dates.length / (rule.weekdays?.length ?? fullWeekDays));
}

/** How the rule wants this week judged: as a whole one, or in its own way as a short or a split one. */
function wayOf(subject: Case): "WHOLE" | Rule["shortWeek"] {
  const { rule, split } = subject;
  if (split) return rule.splitWeek ?? rule.shortWeek;
  return weekPart(subject) < 1 ? rule.shortWeek : "WHOLE";
}

type JudgeSome = (items: readonly ItemRead[], bounds: Bounds, facts: Omit<Fault, "kind">) => Fault[];

/**
 * Judges a week's limit the way the rule says: PRORATE takes the packed days' share of it, PER_DAY holds each packed day to one
 * day's share, SKIP does not judge.
 */
function judgeWeek(subject: Case, bounds: Bounds, whole: boolean, judgeSome: JudgeSome): Fault[] {
  const { dates, items } = subject;
  const part = weekPart(subject);
  switch (wayOf(subject)) {
    case "SKIP":
      return [];
    case "PER_DAY": {
      const perDay = shareOf(bounds, part / dates.length, whole);
      return dates.flatMap((date) => judgeSome(onDate(items, date), perDay, { date }));
    }
    case "PRORATE":
    case "WHOLE":
      return judgeSome(items, shareOf(bounds, part, whole), {});
  }
}

interface Sighting {
  readonly date: string;
  readonly parts: readonly Part[];
}

function countSightings(sightings: readonly Sighting[], counts: RuleOf<"FREQUENCY">["counts"]): number {
  switch (counts) {
    case "ITEMS":
      return sightings.length;
    case "DAYS":
      return new Set(sightings.map(({ date }) => date)).size;
    case "KINDS":
      return new Set(sightings.flatMap(({ parts }) => parts.map(({ food }) => food.kind))).size;
  }
}

function sightingsIn({ week, rule }: Case<RuleOf<"FREQUENCY">>, items: readonly ItemRead[]): Sighting[] {
  return items.flatMap((read) => {
    const match = matchItem(week, rule.matches, read);
    return match ? [{ date: read.box.date, parts: match.parts }] : [];
  });
}

/**
 * A window of several weeks ends with this one. The earlier weeks come from the history, which names dishes without break
 * or grams: it is used when the rule asks for no break. A minimum is judged only when every earlier week of the window has
 * something on record; a maximum always, on what is known.
 */
function judgeLongWindow(subject: Case<RuleOf<"FREQUENCY">>): Fault[] {
  const { week, child, rule, items } = subject;
  const { brief, dishes, foods, bases } = week;
  const start = dayNumber(brief.weekStart);
  const weeksBack = (date: string): number => Math.ceil((start - dayNumber(date)) / 7);
  const earlier = rule.breaks
    ? []
    : brief.history.filter(
        (row) => row.childId === child.id && weeksBack(row.date) >= 1 && weeksBack(row.date) < rule.weeks,
      );
  const before = earlier.flatMap((row): Sighting[] => {
    const dish = dishes.get(row.dish);
    const match =
      dish &&
      matchSubject(week, rule.matches, {
        dish,
        slots: dish.slots,
        grams: referenceGrams(dish),
        parts: partsOf(dish, 1, foods, bases),
      });
    return match ? [{ date: row.date, parts: match.parts }] : [];
  });
  const part = weekPart(subject);
  if (wayOf(subject) === "SKIP") return [];
  const complete = new Set(earlier.map((row) => weeksBack(row.date))).size === rule.weeks - 1;
  const bounds = shareOf(
    { atLeast: complete ? rule.atLeast : undefined, atMost: rule.atMost },
    (rule.weeks - 1 + part) / rule.weeks,
    true,
  );
  return judgeBounds(subject, countSightings([...before, ...sightingsIn(subject, items)], rule.counts), bounds);
}

function judgeFrequency(subject: Case<RuleOf<"FREQUENCY">>): Fault[] {
  const { rule, dates, items } = subject;
  const count = (some: readonly ItemRead[]): number => countSightings(sightingsIn(subject, some), rule.counts);
  if (rule.per === "BOX")
    return dates.flatMap((date) => judgeBounds(subject, count(onDate(items, date)), rule, { date }));
  if (rule.weeks > 1) return judgeLongWindow(subject);
  return judgeWeek(subject, rule, true, (some, bounds, facts) => judgeBounds(subject, count(some), bounds, facts));
}

const notJudged = ({ child, document, rule }: Case): Fault[] => [
  { kind: "RULE_NOT_JUDGED", childId: child.id, ruleSet: document.key, rule: rule.id },
];

const notKnown = ({ child, document, rule }: Case, foods: Iterable<Food>, facts: Omit<Fault, "kind">): Fault[] =>
  [...foods].map((food) => ({
    kind: "NOT_KNOWN",
    childId: child.id,
    ruleSet: document.key,
    rule: rule.id,
    ...facts,
    food: food.key,
  }));

/** A minimum counts what is known; a maximum that is kept so far needs to know the rest. */
function judgeMeasured(
  subject: Case,
  { known, missing }: Measured,
  bounds: Bounds,
  facts: Omit<Fault, "kind">,
): Fault[] {
  const wrong = judgeBounds(subject, known, bounds, facts);
  return wrong.length > 0 || bounds.atMost === undefined ? wrong : notKnown(subject, missing, facts);
}

/** An item is held to a limit where it has something of what the rule means: no portion of it is no portion too small. */
function judgeAmount(subject: Case<RuleOf<"AMOUNT">>): Fault[] {
  const { week, rule, dates, items } = subject;
  const judgeSome: JudgeSome = (some, bounds, facts) =>
    judgeMeasured(subject, measure(week, rule.unit, rule.matches, some), bounds, facts);
  switch (rule.per) {
    case "ITEM":
      return items
        .filter((read) => matchItem(week, rule.matches, read))
        .flatMap((read) => judgeSome([read], rule, place(read)));
    case "BOX":
      return dates.flatMap((date) => judgeSome(onDate(items, date), rule, { date }));
    case "WEEK":
      return judgeWeek(subject, rule, false, judgeSome);
  }
}

/** Rules write a share as a fraction (0.8) or in percent (80); above 1 it can only be percent. */
const fraction = (bound: number | undefined): number | undefined =>
  bound !== undefined && bound > 1 ? bound / 100 : bound;

/**
 * Over the whole packed week; nothing of the whole means nothing to divide. `part` counts only in items of the whole. What is
 * unknown in the whole lowers the share, in part and whole alike too: rounded down, an item may gain in the whole alone. What is
 * unknown in the part raises it.
 */
function judgeShare(subject: Case<RuleOf<"SHARE">>): Fault[] {
  const { week, rule, items } = subject;
  const wholes = items.filter((read) => matchItem(week, rule.whole, read));
  const measureShare = (matcher: Matcher): Measured =>
    rule.unit === "ITEMS"
      ? { known: wholes.filter((read) => matchItem(week, matcher, read)).length, missing: new Set() }
      : measure(week, rule.unit, matcher, wholes);
  const part = measureShare(rule.part);
  const whole = measureShare(rule.whole);
  if (wayOf(subject) === "SKIP") return [];
  const wrong =
    whole.known > 0
      ? judgeBounds(subject, part.known / whole.known, {
          atLeast: fraction(rule.atLeast),
          atMost: fraction(rule.atMost),
        })
      : [];
  if (wrong.length > 0) return wrong;
  const lowering = rule.atLeast === undefined ? [] : whole.missing;
  const raising = rule.atMost === undefined ? [] : part.missing;
  return notKnown(subject, new Set([...lowering, ...raising]), {});
}

/** kcal per gram, Regulation (EU) No 1169/2011, Annex XIV; sugars of every kind as carbohydrate, saturates as fat. */
const energyPerGram: Partial<Record<RuleNutrient, number>> = {
  PROCNT: 4,
  CHOCDF: 4,
  SUGAR: 4,
  FREE_SUGAR: 4,
  ADDED_SUGAR: 4,
  FAT: 9,
  FASAT: 9,
  FAMS: 9,
  FAPU: 9,
  FIBTG: 2,
};

interface Sum {
  /** What is surely there, for a minimum. */
  readonly known: number;
  /** What may be there, for a maximum. */
  readonly possible: number;
  readonly missing: Food[];
}
type Food = Part["food"];

function tableFigure(food: Food, nutrient: RuleNutrient): number | undefined {
  if (nutrient === "FREE_SUGAR") return food.freeSugarGrams;
  return nutrient === "ADDED_SUGAR" ? food.addedSugarGrams : food.nutrients[nutrient];
}

function sumNutrient(week: WeekRead, items: readonly ItemRead[], nutrient: RuleNutrient): Sum {
  let known = 0;
  let possible = 0;
  const missing = new Set<Food>();
  for (const part of items.flatMap((read) => read.parts)) {
    const { food, grams } = part;
    const per100 = tableFigure(food, nutrient);
    if (per100 === undefined) {
      missing.add(food);
      continue;
    }
    const isSugar = nutrient === "FREE_SUGAR" || nutrient === "ADDED_SUGAR";
    const left = isSugar ? { sure: 1, possible: 1 } : leftOf(week, part, nutrient);
    known += (per100 * grams * left.sure) / 100;
    possible += (per100 * grams * left.possible) / 100;
  }
  return { known, possible, missing: [...missing] };
}

function judgeNutrient(subject: Case<RuleOf<"NUTRIENT">>): Fault[] {
  const { week, rule, dates, items } = subject;
  const kcal = energyPerGram[rule.nutrient];
  const asPercent = rule.as === "PERCENT_OF_ENERGY";
  if (asPercent && kcal === undefined) return notJudged(subject);

  const judge = (some: readonly ItemRead[], days: number, facts: Omit<Fault, "kind">): Fault[] => {
    const sum = sumNutrient(week, some, rule.nutrient);
    const energy = asPercent ? sumNutrient(week, some, "ENERC_KCAL") : { known: 0, missing: [] };
    if (asPercent && energy.known <= 0 && energy.missing.length === 0) return [];
    const found = (amount: number): number => (asPercent ? (100 * amount * (kcal ?? 0)) / energy.known : amount / days);
    const at = { ...facts, nutrient: rule.nutrient };
    const wrong = [
      ...judgeBounds(subject, found(sum.known), { atLeast: rule.atLeast }, at),
      ...judgeBounds(subject, found(sum.possible), { atMost: rule.atMost }, at),
    ];
    if (wrong.length > 0) return wrong;
    // A minimum counts what is known; a maximum needs every figure, and a share with an unknown divisor is no lower bound.
    const unknown = [
      ...(rule.atMost === undefined ? [] : sum.missing),
      ...(rule.atLeast === undefined ? [] : energy.missing),
    ];
    return notKnown(subject, new Set(unknown), at);
  };

  switch (rule.per) {
    case "ITEM":
      return items.flatMap((read) => judge([read], 1, place(read)));
    case "BOX":
      return dates.flatMap((date) => judge(onDate(items, date), 1, { date }));
    case "WEEK_MEAN":
      return wayOf(subject) === "SKIP" ? [] : judge(items, dates.length, {});
  }
}

function judgeTogether(subject: Case<RuleOf<"TOGETHER">>): Fault[] {
  const { week, rule, dates, items } = subject;
  return dates.flatMap((date) => {
    const inBox = onDate(items, date);
    // One item that is both already brings the two together.
    const has = (matcher: Matcher): boolean => inBox.some((read) => matchItem(week, matcher, read) !== null);
    return has(rule.first) && has(rule.second) ? [broken(subject, { date })] : [];
  });
}

/**
 * What a plan can break: reheating and cutlery. No item's holding ever counts on a school's refrigerator, and wrapping,
 * glass and the length of the break are not in the plan.
 */
function judgeServing(subject: Case<RuleOf<"SERVING">>): Fault[] {
  const { rule, items } = subject;
  return items
    .filter(
      ({ item, dish }) =>
        (rule.noReheating === true && item.holding.case === "REHEATED_AT_SCHOOL") ||
        (rule.fingerFoodOnly === true && dish.cutlery !== "NONE"),
    )
    .map((read) => broken(subject, place(read)));
}

function judge(subject: Case): Fault[] {
  const { week, rule, items } = subject;
  switch (rule.kind) {
    case "EXCLUDE":
      return items.filter((read) => matchItem(week, rule.matches, read)).map((read) => broken(subject, place(read)));
    case "ONLY":
      return items.filter((read) => !matchItem(week, rule.matches, read)).map((read) => broken(subject, place(read)));
    case "FREQUENCY":
      return judgeFrequency({ ...subject, rule });
    case "AMOUNT":
      return judgeAmount({ ...subject, rule });
    case "SHARE":
      return judgeShare({ ...subject, rule });
    case "NUTRIENT":
      return judgeNutrient({ ...subject, rule });
    case "TOGETHER":
      return judgeTogether({ ...subject, rule });
    case "SERVING":
      return judgeServing({ ...subject, rule });
  }
}

/** Exemptions that nobody may give: from a rule that names an allergen. */
function checkExemptions({ brief }: WeekRead): Fault[] {
  return brief.children.flatMap((child) =>
    child.days.flatMap(({ date, exempt = [] }) =>
      exempt.flatMap(({ ruleSet, rule: id }): Fault[] => {
        const document = brief.ruleSets[ruleSet];
        const rule = document?.rules.find((row) => row.id === id);
        if (!document || !rule || !namesAllergen(rule)) return [];
        return [{ kind: "EXEMPT_FROM_ALLERGEN_RULE", childId: child.id, date, ruleSet: document.key, rule: id }];
      }),
    ),
  );
}

/** Every forbidding rule of every rule set in force, for every child: all layers hold at once. */
export function checkRules(week: WeekRead): Fault[] {
  return [...checkExemptions(week), ...findCases(week).flatMap(judge)];
}
