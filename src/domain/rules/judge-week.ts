/**
 * What every rule says of a child's boxes in a week, of planned and of typed-in ones alike: met, not met, not applicable or not
 * known, with the figure found and the limit. All layers are asked; nothing is weighed against anything else.
 */
import type { SlotCode } from "../../../shared/codes.js";
import type { AmountUnit, Rule, RuleKind, RuleNutrient } from "../../../shared/rule-set.js";
import type { ChildBrief, WeekBrief } from "../brief.js";
import { daysBetween } from "../calendar/dates.js";
import type { DerivedDish } from "../catalogue/derive.js";
import type { HoldingCase } from "../week.js";
import type { CompiledRuleSets, MatcherTable } from "./compile.js";
import { roundCredit } from "./credits.js";
import { rulesOverWeek, type RuleOverWeek, type RuleRests } from "./in-force.js";
import { asFraction, shareOf, weekPart, weekSpan, type Bounds } from "./limits.js";
import { energyFactorOf, nutrientUnitOf, type NutrientUnit } from "./nutrient-in.js";

/** A dish in a box; an item of a `BoxPlan` is one. */
export interface EatenItem {
  readonly breakKey: string;
  readonly slot: SlotCode;
  /** Position of the slot inside its break, from 0. */
  readonly position: number;
  readonly dish: string;
  readonly grams: number;
  /** Absent where nobody planned how it is kept. */
  readonly holding?: { readonly case: HoldingCase };
}
export interface EatenBox {
  readonly childId: string;
  readonly date: string;
  readonly items: readonly EatenItem[];
}

export type RuleState = "MET" | "NOT_MET" | "NOT_APPLICABLE" | "NOT_KNOWN";
export type RuleReason =
  | RuleRests
  /** The rule does not judge a week of so few days, or one in which it begins or ends. */
  | "SHORT_WEEK"
  | "SPLIT_WEEK"
  /** Nothing of what the rule measures is in the boxes. */
  | "NOTHING_TO_MEASURE"
  /** A food has no figure in the unit: see `foods`. */
  | "FIGURE_MISSING"
  /** A dish is not in the catalogue (any more). */
  | "DISH_UNKNOWN"
  /** The weeks before, which the rule counts too, are not all on record. */
  | "EARLIER_WEEKS"
  /** Packaging, cooling at school and minutes at table do not stand in a box's list of dishes. */
  | "NOT_IN_THE_BOX"
  /** A share of energy of something that carries none. */
  | "NO_ENERGY";
export type JudgedUnit = AmountUnit | NutrientUnit | "ITEMS" | "KINDS" | "DAYS" | "SHARE" | "PERCENT_OF_ENERGY";

export interface RulePlace {
  readonly breakKey: string;
  readonly slot: SlotCode;
  readonly position: number;
  readonly dish: string;
}

/** One rule for one child over the week, a day or a place. */
export interface RuleJudgement {
  /** Index into the documents compiled. */
  readonly ruleSet: number;
  readonly rule: Rule;
  readonly childId: string;
  /** Null: over the week. */
  readonly date: string | null;
  /** Null: over the box or the week. */
  readonly place: RulePlace | null;
  readonly state: RuleState;
  /** Null when the state is MET or NOT_MET. */
  readonly reason: RuleReason | null;
  /** Foods whose figures are missing; empty otherwise. */
  readonly foods: readonly string[];
  /**
   * What there is, in `unit`: where a maximum is broken all there may be, else what is known. Null where the rule has no figure or
   * nothing was measured.
   */
  readonly found: number | null;
  /** Limits as they hold here: a short week's share, a share as a fraction. */
  readonly atLeast: number | null;
  readonly atMost: number | null;
  readonly unit: JudgedUnit | null;
}

type RuleOf<K extends RuleKind> = Extract<Rule, { kind: K }>;

interface ItemRead {
  readonly item: EatenItem;
  readonly derived: DerivedDish;
  /** See `RuleTables.numberOf`. */
  readonly number: number;
  /** Grams served over grams of the reference portion. */
  readonly scale: number;
}
/** A box, or the part of it a rule asks about. */
interface DayRead {
  readonly date: string;
  readonly items: readonly ItemRead[];
  /** Items whose dish has no row. */
  readonly unknown: readonly EatenItem[];
}
interface Case {
  readonly rules: CompiledRuleSets;
  readonly week: Pick<WeekBrief, "weekStart" | "history">;
  readonly child: ChildBrief;
  readonly over: RuleOverWeek;
  /** The days it binds. */
  readonly days: readonly DayRead[];
}
/** What a limit is held over. */
interface Span {
  readonly date: string | null;
  readonly days: readonly DayRead[];
  readonly bounds: Bounds;
}

const none: readonly string[] = [];

/** All fields in one order, so that every judgement has the same shape. */
function judgement({ over, child }: Case, facts: Partial<RuleJudgement> & { state: RuleState }): RuleJudgement {
  return {
    ruleSet: over.ruleSet,
    rule: over.rule,
    childId: child.id,
    date: facts.date ?? null,
    place: facts.place ?? null,
    state: facts.state,
    reason: facts.reason ?? null,
    foods: facts.foods ?? none,
    found: facts.found ?? null,
    atLeast: facts.atLeast ?? null,
    atMost: facts.atMost ?? null,
    unit: facts.unit ?? null,
  };
}

const limitsOf = ({ atLeast, atMost }: Bounds): { atLeast: number | null; atMost: number | null } => ({
  atLeast: atLeast ?? null,
  atMost: atMost ?? null,
});

const placeOf = ({ breakKey, slot, position, dish }: EatenItem): RulePlace => ({ breakKey, slot, position, dish });

const itemsOf = (days: readonly DayRead[]): readonly ItemRead[] =>
  days.length === 1 ? days[0]!.items : days.flatMap(({ items }) => items);

/** Room for the last bits of a floating sum, never for a real difference. */
const slack = (limit: number): number => 1e-6 * Math.max(1, Math.abs(limit));
const isUnder = (found: number, atLeast: number | undefined): boolean =>
  atLeast !== undefined && found < atLeast - slack(atLeast);
const isOver = (found: number, atMost: number | undefined): boolean =>
  atMost !== undefined && found > atMost + slack(atMost);

interface Measured {
  readonly known: number;
  /** All there may be; absent where that is the same. */
  readonly most?: number;
  /** Foods without which a minimum, or a maximum, cannot be said to be kept. */
  readonly unsureLeast?: readonly string[];
  readonly unsureMost?: readonly string[];
}

/** Foods without whose figures these limits cannot be said to be kept. */
function unsureFoods({ atLeast, atMost }: Bounds, m: Pick<Measured, "unsureLeast" | "unsureMost">): readonly string[] {
  const least = atLeast === undefined ? none : (m.unsureLeast ?? none);
  const most = atMost === undefined ? none : (m.unsureMost ?? none);
  return least.length + most.length === 0 ? none : [...new Set([...least, ...most])];
}

/** Where a figure was measured. */
interface Where {
  readonly date: string | null;
  readonly place: RulePlace | null;
}
const overWeek: Where = { date: null, place: null };

/** A figure against its limits. What breaks a limit whatever the missing figures are is NOT_MET. */
function holdAgainst(
  { over, child }: Case,
  { date, place }: Where,
  bounds: Bounds,
  unit: JudgedUnit,
  m: Measured,
): RuleJudgement {
  const most = m.most ?? m.known;
  const tooLittle = isUnder(m.known, bounds.atLeast);
  const tooMuch = !tooLittle && isOver(most, bounds.atMost);
  const foods = tooLittle || tooMuch ? none : unsureFoods(bounds, m);
  return {
    ruleSet: over.ruleSet,
    rule: over.rule,
    childId: child.id,
    date,
    place,
    state: tooLittle || tooMuch ? "NOT_MET" : foods.length > 0 ? "NOT_KNOWN" : "MET",
    reason: foods.length > 0 ? "FIGURE_MISSING" : null,
    foods,
    found: tooMuch ? most : m.known,
    atLeast: bounds.atLeast ?? null,
    atMost: bounds.atMost ?? null,
    unit,
  };
}

/** Each day of the rule under the same bounds. */
const eachDay = ({ days }: Case, bounds: Bounds): Span[] =>
  days.map((day) => ({ date: day.date, days: [day], bounds }));

/** The spans a week's limit is held over by the rule's own way with a short or a split week; null: not at all. */
function weekSpans(subject: Case, bounds: Bounds, counts: boolean): Span[] | null {
  const { over, days } = subject;
  const { rule } = over;
  switch (weekSpan(rule, days.length, over.isSplit)) {
    case "WHOLE":
      return [{ date: null, days, bounds }];
    case "PRORATE":
      return [{ date: null, days, bounds: shareOf(bounds, weekPart(rule, days.length), counts) }];
    case "PER_DAY":
      return eachDay(subject, shareOf(bounds, weekPart(rule, days.length) / days.length, counts));
    case "SKIP":
      return null;
  }
}

const skipped = (subject: Case): RuleJudgement[] => [
  judgement(subject, { state: "NOT_APPLICABLE", reason: subject.over.isSplit ? "SPLIT_WEEK" : "SHORT_WEEK" }),
];

/** Judges spans; one with a dish nobody knows cannot be judged. */
function judgeSpans(
  subject: Case,
  spans: readonly Span[] | null,
  unit: JudgedUnit,
  judge: (span: Span, items: readonly ItemRead[]) => RuleJudgement,
): RuleJudgement[] {
  if (spans === null) return skipped(subject);
  return spans.map((span) =>
    span.days.some(hasUnknown)
      ? judgement(subject, {
          date: span.date,
          state: "NOT_KNOWN",
          reason: "DISH_UNKNOWN",
          unit,
          ...limitsOf(span.bounds),
        })
      : judge(span, itemsOf(span.days)),
  );
}
const hasUnknown = ({ unknown }: DayRead): boolean => unknown.length > 0;

/**
 * Rules about single items: a judgement for each item that breaks it or of which that is not known, else one for the box. `judge`
 * answers MET for an item that keeps the rule and null for one it does not speak of.
 */
function judgeItems(
  subject: Case,
  judge: (read: ItemRead, date: string) => RuleJudgement | "MET" | null,
): RuleJudgement[] {
  const judged: RuleJudgement[] = [];
  for (const { date, items, unknown } of subject.days) {
    let asked = false;
    const before = judged.length;
    for (const read of items) {
      const found = judge(read, date);
      if (found !== null) asked = true;
      if (found !== null && found !== "MET") judged.push(found);
    }
    for (const item of unknown)
      judged.push(judgement(subject, { state: "NOT_KNOWN", reason: "DISH_UNKNOWN", date, place: placeOf(item) }));
    if (judged.length > before) continue;
    judged.push(
      asked
        ? judgement(subject, { state: "MET", date })
        : judgement(subject, { state: "NOT_APPLICABLE", reason: "NOTHING_TO_MEASURE", date }),
    );
  }
  return judged;
}

/** An item's figure, as `judgeItems` wants it. */
const unlessMet = (found: RuleJudgement): RuleJudgement | "MET" => (found.state === "MET" ? "MET" : found);

function judgeMeaning(subject: Case, rule: RuleOf<"EXCLUDE" | "ONLY">): RuleJudgement[] {
  const table = subject.rules.tables.tableOf(rule.matches);
  const isWrong = rule.kind === "EXCLUDE";
  return judgeItems(subject, ({ number, item }, date) =>
    (table.at(number) !== null) === isWrong
      ? judgement(subject, { state: "NOT_MET", date, place: placeOf(item) })
      : "MET",
  );
}

/** How often: items, days with one, or different food kinds. */
function countIn(table: MatcherTable, counts: RuleOf<"FREQUENCY">["counts"], days: readonly DayRead[]): number {
  let count = 0;
  const kinds = counts === "KINDS" ? new Set<string>() : null;
  for (const { items } of days) {
    for (const { number } of items) {
      const here = table.at(number);
      if (here === null) continue;
      if (kinds !== null) for (const kind of here.kinds) kinds.add(kind);
      else {
        count += 1;
        if (counts === "DAYS") break;
      }
    }
  }
  return kinds?.size ?? count;
}

function judgeFrequency(subject: Case, rule: RuleOf<"FREQUENCY">): RuleJudgement[] {
  if (rule.per === "WEEK" && rule.weeks > 1) return judgeLongWindow(subject, rule);
  const table = subject.rules.tables.tableOf(rule.matches);
  const spans = rule.per === "BOX" ? eachDay(subject, rule) : weekSpans(subject, rule, true);
  return judgeSpans(subject, spans, rule.counts, (span) =>
    holdAgainst(subject, { date: span.date, place: null }, span.bounds, rule.counts, {
      known: countIn(table, rule.counts, span.days),
    }),
  );
}

/**
 * A window of several weeks ends with this one. What earlier weeks had is known by dish only, so a rule for certain breaks does not
 * use it. A minimum can be said to be broken only when every earlier week of the window has something on record; a maximum is
 * judged on what is known. A short week shortens the window by its missing days.
 */
function judgeLongWindow(subject: Case, rule: RuleOf<"FREQUENCY">): RuleJudgement[] {
  const { rules, week, child, days, over } = subject;
  if (weekSpan(rule, days.length, over.isSplit) === "SKIP") return skipped(subject);
  const table = rules.tables.tableOf(rule.matches);
  const weeksBack = (date: string): number => Math.ceil(daysBetween(date, week.weekStart) / 7);
  const earlier = rule.breaks
    ? []
    : week.history.filter(
        (row) => row.childId === child.id && weeksBack(row.date) >= 1 && weeksBack(row.date) < rule.weeks,
      );
  const sightings = earlier.flatMap(({ date, dish: key }) => {
    const dish = rules.index.dish(key);
    if (dish === undefined) return [];
    const derived = rules.index.derived(key);
    const here = dish.slots.flatMap((slot) => table.at(rules.tables.numberOf(derived, slot)) ?? []);
    return here.length === 0 ? [] : [{ date, kinds: here.flatMap(({ kinds }) => kinds) }];
  });
  const isComplete = new Set(earlier.map(({ date }) => weeksBack(date))).size === rule.weeks - 1;
  const part = weekPart(rule, days.length);
  const bounds = shareOf(rule, (rule.weeks - 1 + part) / rule.weeks, true);
  return judgeSpans(subject, [{ date: null, days, bounds }], rule.counts, (span) => {
    const now = countIn(table, rule.counts, span.days);
    const kindsNow = (): string[] => itemsOf(span.days).flatMap(({ number }) => [...(table.at(number)?.kinds ?? [])]);
    const known = {
      ITEMS: () => sightings.length + now,
      DAYS: () => new Set(sightings.map(({ date }) => date)).size + now,
      KINDS: () => new Set([...sightings.flatMap(({ kinds }) => kinds), ...kindsNow()]).size,
    }[rule.counts]();
    const isOpen = !isComplete && isUnder(known, bounds.atLeast) && !isOver(known, bounds.atMost);
    if (!isOpen) return holdAgainst(subject, overWeek, bounds, rule.counts, { known });
    const facts = { unit: rule.counts, found: known, ...limitsOf(bounds) };
    return judgement(subject, { ...facts, state: "NOT_KNOWN", reason: "EARLIER_WEEKS" });
  });
}

interface Sum {
  readonly amount: number;
  readonly unknown: readonly string[];
}
function sumAmounts(
  { rules: { tables } }: Case,
  table: MatcherTable,
  unit: AmountUnit,
  items: readonly ItemRead[],
): Sum {
  let amount = 0;
  let unknown = none;
  for (const { number, item } of items) {
    const here = table.perGram(unit, number);
    amount += roundCredit(unit, here.perGram * item.grams, tables.credits);
    if (here.unknown.length > 0) unknown = [...unknown, ...here.unknown];
  }
  return { amount, unknown };
}

/** An amount per item is asked of the items it means. */
function judgeAmount(subject: Case, rule: RuleOf<"AMOUNT">): RuleJudgement[] {
  const { unit } = rule;
  const table = subject.rules.tables.tableOf(rule.matches);
  if (rule.per === "ITEM") {
    return judgeItems(subject, (read, date) => {
      if (table.at(read.number) === null) return null;
      const { amount, unknown } = sumAmounts(subject, table, unit, [read]);
      const where = { date, place: placeOf(read.item) };
      return unlessMet(holdAgainst(subject, where, rule, unit, { known: amount, unsureMost: unknown }));
    });
  }
  const spans = rule.per === "BOX" ? eachDay(subject, rule) : weekSpans(subject, rule, false);
  return judgeSpans(subject, spans, unit, ({ date, bounds }, items) => {
    const { amount, unknown } = sumAmounts(subject, table, unit, items);
    return holdAgainst(subject, { date, place: null }, bounds, unit, { known: amount, unsureMost: unknown });
  });
}

const countMeant = (table: MatcherTable, items: readonly ItemRead[]): Sum => ({
  amount: items.filter(({ number }) => table.at(number) !== null).length,
  unknown: none,
});

/** Over all days of the rule; only items of the whole count. Nothing of the whole means nothing to divide. */
function judgeShare(subject: Case, rule: RuleOf<"SHARE">): RuleJudgement[] {
  const { rules, days, over } = subject;
  if (weekSpan(rule, days.length, over.isSplit) === "SKIP") return skipped(subject);
  const partTable = rules.tables.tableOf(rule.part);
  const wholeTable = rules.tables.tableOf(rule.whole);
  const bounds: Bounds = { atLeast: asFraction(rule.atLeast), atMost: asFraction(rule.atMost) };
  const { unit } = rule;
  return judgeSpans(subject, [{ date: null, days, bounds }], "SHARE", (_, items) => {
    const wholes = items.filter(({ number }) => wholeTable.at(number) !== null);
    const [part, whole] =
      unit === "ITEMS"
        ? [countMeant(partTable, wholes), countMeant(wholeTable, wholes)]
        : [sumAmounts(subject, partTable, unit, wholes), sumAmounts(subject, wholeTable, unit, wholes)];
    // Unknown in the whole it can lower the share, in part and whole alike too: rounded down, an item may gain in the whole alone.
    const unsureLeast = whole.unknown;
    const unsureMost = part.unknown;
    if (whole.amount > 0) {
      const known = part.amount / whole.amount;
      return holdAgainst(subject, overWeek, bounds, "SHARE", { known, unsureLeast, unsureMost });
    }
    const facts = { unit: "SHARE", ...limitsOf(bounds) } as const;
    const foods = unsureFoods(bounds, { unsureLeast, unsureMost });
    return foods.length > 0
      ? judgement(subject, { ...facts, state: "NOT_KNOWN", reason: "FIGURE_MISSING", foods })
      : judgement(subject, { ...facts, state: "NOT_APPLICABLE", reason: "NOTHING_TO_MEASURE" });
  });
}

interface NutrientSum {
  readonly known: number;
  readonly most: number;
  readonly missing: readonly string[];
}
function sumNutrient({ rules: { tables } }: Case, nutrient: RuleNutrient, items: readonly ItemRead[]): NutrientSum {
  let known = 0;
  let most = 0;
  let missing = none;
  for (const { number, scale } of items) {
    const has = tables.nutrient(nutrient, number);
    known += has.known * scale;
    most += has.most * scale;
    if (has.missing.length > 0) missing = [...missing, ...has.missing];
  }
  return { known, most, missing };
}

/** Energy, a nutrient or a share of energy of these items. @param meanOf days the amount is the mean of */
function measureNutrient(
  subject: Case,
  rule: RuleOf<"NUTRIENT">,
  where: Where,
  items: readonly ItemRead[],
  meanOf: number,
): RuleJudgement {
  const { known, most, missing } = sumNutrient(subject, rule.nutrient, items);
  if (rule.as === "AMOUNT") {
    const means = { known: known / meanOf, most: most / meanOf, unsureMost: missing };
    return holdAgainst(subject, where, rule, nutrientUnitOf(rule.nutrient), means);
  }
  const unit = "PERCENT_OF_ENERGY";
  const facts = { ...where, unit, ...limitsOf(rule) } as const;
  const factor = energyFactorOf(rule.nutrient);
  if (factor === null) return judgement(subject, { ...facts, state: "NOT_KNOWN", reason: "NO_ENERGY" });
  const energy = sumNutrient(subject, "ENERC_KCAL", items);
  if (energy.known <= 0) {
    const nothing = { state: "NOT_APPLICABLE", reason: "NOTHING_TO_MEASURE" } as const;
    const lacking = { state: "NOT_KNOWN", reason: "FIGURE_MISSING", foods: [...new Set(energy.missing)] } as const;
    return judgement(subject, { ...facts, ...(energy.missing.length > 0 ? lacking : nothing) });
  }
  return holdAgainst(subject, where, rule, unit, {
    known: (100 * factor * known) / energy.known,
    most: (100 * factor * most) / energy.known,
    unsureLeast: energy.missing,
    unsureMost: missing,
  });
}

function judgeNutrient(subject: Case, rule: RuleOf<"NUTRIENT">): RuleJudgement[] {
  const { days, over } = subject;
  const unit = rule.as === "AMOUNT" ? nutrientUnitOf(rule.nutrient) : "PERCENT_OF_ENERGY";
  switch (rule.per) {
    case "ITEM":
      return judgeItems(subject, (read, date) =>
        unlessMet(measureNutrient(subject, rule, { date, place: placeOf(read.item) }, [read], 1)),
      );
    case "BOX":
      return judgeSpans(subject, eachDay(subject, rule), unit, ({ date }, items) =>
        measureNutrient(subject, rule, { date, place: null }, items, 1),
      );
    case "WEEK_MEAN":
      if (weekSpan(rule, days.length, over.isSplit) === "SKIP") return skipped(subject);
      return judgeSpans(subject, [{ date: null, days, bounds: rule }], unit, (_, items) =>
        measureNutrient(subject, rule, overWeek, items, days.length),
      );
  }
}

const hasMeant = (table: MatcherTable, items: readonly ItemRead[]): boolean =>
  items.some(({ number }) => table.at(number) !== null);

/** One item that is both already brings the two together. */
function judgeTogether(subject: Case, rule: RuleOf<"TOGETHER">): RuleJudgement[] {
  const first = subject.rules.tables.tableOf(rule.first);
  const second = subject.rules.tables.tableOf(rule.second);
  return subject.days.map(({ date, items, unknown }) => {
    if (hasMeant(first, items) && hasMeant(second, items)) return judgement(subject, { date, state: "NOT_MET" });
    return unknown.length > 0
      ? judgement(subject, { date, state: "NOT_KNOWN", reason: "DISH_UNKNOWN" })
      : judgement(subject, { date, state: "MET" });
  });
}

/**
 * What a list of dishes can break: reheating and cutlery. How an item is kept is known of a planned one only, and there it never
 * counts on a refrigerator; wrapping, glass and the time there is to eat are not in a box.
 */
function judgeServing(subject: Case, rule: RuleOf<"SERVING">): RuleJudgement[] {
  const isBeyondBox = rule.litterFree === true || rule.noGlass === true || rule.minutesToEat !== undefined;
  const asksKeeping = rule.noReheating === true || rule.noRefrigerator === true;
  return subject.days.flatMap(({ date, items, unknown }) => {
    const wrong = items.filter(
      ({ item, derived: { dish } }) =>
        (rule.noReheating === true && item.holding?.case === "REHEATED_AT_SCHOOL") ||
        (rule.fingerFoodOnly === true && dish.cutlery !== "NONE"),
    );
    if (wrong.length > 0)
      return wrong.map(({ item }) => judgement(subject, { state: "NOT_MET", date, place: placeOf(item) }));
    if (unknown.length > 0) return [judgement(subject, { state: "NOT_KNOWN", reason: "DISH_UNKNOWN", date })];
    const isKept = items.every(({ item }) => item.holding !== undefined);
    if (isBeyondBox || (asksKeeping && !isKept))
      return [judgement(subject, { state: "NOT_KNOWN", reason: "NOT_IN_THE_BOX", date })];
    return [judgement(subject, { state: "MET", date })];
  });
}

function judgeRule(subject: Case): RuleJudgement[] {
  const { rule } = subject.over;
  switch (rule.kind) {
    case "EXCLUDE":
    case "ONLY":
      return judgeMeaning(subject, rule);
    case "FREQUENCY":
      return judgeFrequency(subject, rule);
    case "AMOUNT":
      return judgeAmount(subject, rule);
    case "SHARE":
      return judgeShare(subject, rule);
    case "NUTRIENT":
      return judgeNutrient(subject, rule);
    case "TOGETHER":
      return judgeTogether(subject, rule);
    case "SERVING":
      return judgeServing(subject, rule);
  }
}

function readDays({ index, tables }: CompiledRuleSets, child: ChildBrief, boxes: readonly EatenBox[]): DayRead[] {
  return child.days.map(({ date }) => {
    const items: ItemRead[] = [];
    const unknown: EatenItem[] = [];
    for (const box of boxes) {
      if (box.childId !== child.id || box.date !== date) continue;
      for (const item of box.items) {
        if (index.dish(item.dish) === undefined) {
          unknown.push(item);
          continue;
        }
        const derived = index.derived(item.dish);
        const number = tables.numberOf(derived, item.slot);
        items.push({ item, derived, number, scale: item.grams / derived.grams });
      }
    }
    return { date, items, unknown };
  });
}

/** What a rule for certain breaks is asked of. */
function atBreaks({ breaks }: Rule, day: DayRead): DayRead {
  if (breaks === undefined) return day;
  const { date, items, unknown } = day;
  const here = items.filter(({ item }) => breaks.includes(item.breakKey));
  if (here.length === items.length && unknown.length === 0) return day;
  return { date, items: here, unknown: unknown.filter(({ breakKey }) => breaks.includes(breakKey)) };
}

/**
 * Every rule of the rule sets that a child's days list, for every child, at least one judgement each: by child, rule set and
 * rule, then by date. A rule that no day comes under is NOT_APPLICABLE with the reason, and so is each day it rests on a
 * clinician's note. The days are those of the brief: to judge one box, hand over a brief with that day only. A day without a box
 * is one on which nothing is eaten. Throws RangeError on a day that lists a rule set without a document.
 */
export function judgeWeek(
  brief: Pick<WeekBrief, "weekStart" | "children" | "history">,
  rules: CompiledRuleSets,
  boxes: readonly EatenBox[],
): RuleJudgement[] {
  return brief.children.flatMap((child) => {
    const reads = readDays(rules, child, boxes);
    return rulesOverWeek(rules.documents, child).flatMap((over) => {
      const { rule } = over;
      const days = over.days.map((at) => atBreaks(rule, reads[at]!));
      const subject: Case = { rules, week: brief, child, over, days };
      const exempt = over.exemptDays.map((at) =>
        judgement(subject, { state: "NOT_APPLICABLE", reason: "EXEMPT", date: reads[at]!.date }),
      );
      if (days.length > 0) return [...judgeRule(subject), ...exempt];
      if (exempt.length > 0) return exempt;
      return [judgement(subject, { state: "NOT_APPLICABLE", reason: over.rests ?? "NOT_IN_FORCE" })];
    });
  });
}
