/**
 * What every rule says of a child's boxes in a week, of planned and of typed-in ones alike: met, not met, not applicable or not
 * known, with the figure found and the limit. All layers are asked; nothing is weighed against anything else.
 */
import type { SlotCode } from "../../../shared/codes.js";
import type { AmountUnit, Matcher, Rule, RuleKind } from "../../../shared/rule-set.js";
import type { ChildBrief, WeekBrief } from "../brief.js";
import { daysBetween } from "../calendar/dates.js";
import type { DerivedDish } from "../catalogue/derive.js";
import type { HoldingCase } from "../week.js";
import type { CompiledRuleSets, MatcherTable } from "./compile.js";
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
interface Case<R extends Rule = Rule> {
  readonly rules: CompiledRuleSets;
  readonly week: Pick<WeekBrief, "weekStart" | "history">;
  readonly child: ChildBrief;
  readonly over: RuleOverWeek;
  readonly rule: R;
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

function judgement({ over, rule, child }: Case, facts: Partial<RuleJudgement> & { state: RuleState }): RuleJudgement {
  return {
    ruleSet: over.ruleSet,
    rule,
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

/** A figure against its limits. What breaks a limit whatever the missing figures are is NOT_MET. */
function holdAgainst(subject: Case, { date, bounds }: Omit<Span, "days">, unit: JudgedUnit, m: Measured) {
  const most = m.most ?? m.known;
  const facts = { date, unit, ...limitsOf(bounds) };
  if (isUnder(m.known, bounds.atLeast)) return judgement(subject, { ...facts, state: "NOT_MET", found: m.known });
  if (isOver(most, bounds.atMost)) return judgement(subject, { ...facts, state: "NOT_MET", found: most });
  const foods = unsureFoods(bounds, m);
  if (foods.length === 0) return judgement(subject, { ...facts, state: "MET", found: m.known });
  return judgement(subject, {
    ...facts,
    state: "NOT_KNOWN",
    reason: "FIGURE_MISSING",
    foods,
    found: m.known,
  });
}

/** Each day of the rule under the same bounds. */
const eachDay = ({ days }: Case, bounds: Bounds): Span[] =>
  days.map((day) => ({ date: day.date, days: [day], bounds }));

/** The spans a week's limit is held over by the rule's own way with a short or a split week; null: not at all. */
function weekSpans(subject: Case, bounds: Bounds, counts: boolean): Span[] | null {
  const { rule, over, days } = subject;
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
    span.days.some(({ unknown }) => unknown.length > 0)
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

/**
 * Rules about single items: a judgement for each item that breaks it or of which that is not known, else one for the box. `judge`
 * answers null for an item the rule does not speak of.
 */
function judgeItems(
  subject: Case,
  judge: (read: ItemRead) => Omit<RuleJudgement, "ruleSet" | "rule" | "childId" | "date" | "place"> | null,
): RuleJudgement[] {
  return subject.days.flatMap(({ date, items, unknown }) => {
    const asked = items.flatMap((read) => {
      const found = judge(read);
      return found === null ? [] : [{ ...found, place: placeOf(read.item) }];
    });
    const wrong = asked.filter(({ state }) => state !== "MET").map((found) => judgement(subject, { ...found, date }));
    const unread = unknown.map((item) =>
      judgement(subject, { state: "NOT_KNOWN", reason: "DISH_UNKNOWN", date, place: placeOf(item) }),
    );
    if (wrong.length + unread.length > 0) return [...wrong, ...unread];
    return [
      asked.length > 0
        ? judgement(subject, { state: "MET", date })
        : judgement(subject, { state: "NOT_APPLICABLE", reason: "NOTHING_TO_MEASURE", date }),
    ];
  });
}

const plain = { reason: null, foods: none, found: null, atLeast: null, atMost: null, unit: null };

function judgeMeaning(subject: Case<RuleOf<"EXCLUDE" | "ONLY">>): RuleJudgement[] {
  const table = subject.rules.tables.tableOf(subject.rule.matches);
  const isWrong = subject.rule.kind === "EXCLUDE";
  return judgeItems(subject, ({ number }) => ({
    ...plain,
    state: (table.at(number) !== null) === isWrong ? "NOT_MET" : "MET",
  }));
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

function judgeFrequency(subject: Case<RuleOf<"FREQUENCY">>): RuleJudgement[] {
  const { rule, rules } = subject;
  if (rule.per === "WEEK" && rule.weeks > 1) return judgeLongWindow(subject);
  const table = rules.tables.tableOf(rule.matches);
  const spans = rule.per === "BOX" ? eachDay(subject, rule) : weekSpans(subject, rule, true);
  return judgeSpans(subject, spans, rule.counts, (span) =>
    holdAgainst(subject, span, rule.counts, { known: countIn(table, rule.counts, span.days) }),
  );
}

/**
 * A window of several weeks ends with this one. What earlier weeks had is known by dish only, so a rule for certain breaks does not
 * use it. A minimum can be said to be broken only when every earlier week of the window has something on record; a maximum is
 * judged on what is known. A short week shortens the window by its missing days.
 */
function judgeLongWindow(subject: Case<RuleOf<"FREQUENCY">>): RuleJudgement[] {
  const { rules, week, child, rule, days, over } = subject;
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
    if (!isOpen) return holdAgainst(subject, span, rule.counts, { known });
    const facts = { unit: rule.counts, found: known, ...limitsOf(bounds) };
    return judgement(subject, { ...facts, state: "NOT_KNOWN", reason: "EARLIER_WEEKS" });
  });
}

interface Sum {
  readonly amount: number;
  readonly unknown: readonly string[];
}
function sumAmounts(table: MatcherTable, unit: AmountUnit, items: readonly ItemRead[]): Sum {
  let amount = 0;
  let unknown = none;
  for (const { number, item } of items) {
    amount += table.amount(unit, number, item.grams);
    const lacking = table.perGram(unit, number).unknown;
    if (lacking.length > 0) unknown = [...unknown, ...lacking];
  }
  return { amount, unknown };
}

function judgeAmount(subject: Case<RuleOf<"AMOUNT">>): RuleJudgement[] {
  const { rule, rules } = subject;
  const { unit } = rule;
  const table = rules.tables.tableOf(rule.matches);
  const measure = (items: readonly ItemRead[]): Measured => {
    const { amount, unknown } = sumAmounts(table, unit, items);
    return { known: amount, unsureMost: unknown };
  };
  if (rule.per === "ITEM") {
    return judgeItems(subject, (read) =>
      table.at(read.number) === null ? null : holdAgainst(subject, { date: null, bounds: rule }, unit, measure([read])),
    );
  }
  const spans = rule.per === "BOX" ? eachDay(subject, rule) : weekSpans(subject, rule, false);
  return judgeSpans(subject, spans, unit, (span, items) => holdAgainst(subject, span, unit, measure(items)));
}

/** Over all days of the rule; only items of the whole count. Nothing of the whole means nothing to divide. */
function judgeShare(subject: Case<RuleOf<"SHARE">>): RuleJudgement[] {
  const { rule, rules, days, over } = subject;
  if (weekSpan(rule, days.length, over.isSplit) === "SKIP") return skipped(subject);
  const partTable = rules.tables.tableOf(rule.part);
  const wholeTable = rules.tables.tableOf(rule.whole);
  const bounds: Bounds = { atLeast: asFraction(rule.atLeast), atMost: asFraction(rule.atMost) };
  const { unit } = rule;
  return judgeSpans(subject, [{ date: null, days, bounds }], "SHARE", (span, items) => {
    const wholes = items.filter(({ number }) => wholeTable.at(number) !== null);
    const sum = (table: MatcherTable): Sum =>
      unit === "ITEMS"
        ? { amount: wholes.filter(({ number }) => table.at(number) !== null).length, unknown: none }
        : sumAmounts(table, unit, wholes);
    const part = sum(partTable);
    const whole = sum(wholeTable);
    // Unknown in the whole it can lower the share, in part and whole alike too: rounded down, an item may gain in the whole alone.
    const unsureLeast = whole.unknown;
    const unsureMost = part.unknown;
    if (whole.amount > 0) {
      return holdAgainst(subject, span, "SHARE", { known: part.amount / whole.amount, unsureLeast, unsureMost });
    }
    const facts = { unit: "SHARE", ...limitsOf(bounds) } as const;
    const foods = unsureFoods(bounds, { unsureLeast, unsureMost });
    return foods.length > 0
      ? judgement(subject, { ...facts, state: "NOT_KNOWN", reason: "FIGURE_MISSING", foods })
      : judgement(subject, { ...facts, state: "NOT_APPLICABLE", reason: "NOTHING_TO_MEASURE" });
  });
}

function judgeNutrient(subject: Case<RuleOf<"NUTRIENT">>): RuleJudgement[] {
  const { rule, rules, days, over } = subject;
  const factor = energyFactorOf(rule.nutrient);
  const isPercent = rule.as === "PERCENT_OF_ENERGY";
  const unit = isPercent ? "PERCENT_OF_ENERGY" : nutrientUnitOf(rule.nutrient);
  const sum = (items: readonly ItemRead[], nutrient: typeof rule.nutrient) => {
    let known = 0;
    let most = 0;
    let missing = none;
    for (const { number, scale } of items) {
      const has = rules.tables.nutrient(nutrient, number);
      known += has.known * scale;
      most += has.most * scale;
      if (has.missing.length > 0) missing = [...missing, ...has.missing];
    }
    return { known, most, missing };
  };
  /** @param over how many days the amount is the mean of */
  const judge = (items: readonly ItemRead[], meanOf: number, date: string | null): RuleJudgement => {
    const span = { date, bounds: rule };
    const facts = { date, unit, ...limitsOf(rule) } as const;
    const { known, most, missing } = sum(items, rule.nutrient);
    if (!isPercent) {
      return holdAgainst(subject, span, unit, { known: known / meanOf, most: most / meanOf, unsureMost: missing });
    }
    if (factor === null) return judgement(subject, { ...facts, state: "NOT_KNOWN", reason: "NO_ENERGY" });
    const energy = sum(items, "ENERC_KCAL");
    if (energy.known <= 0) {
      const nothing = { state: "NOT_APPLICABLE", reason: "NOTHING_TO_MEASURE" } as const;
      const lacking = { state: "NOT_KNOWN", reason: "FIGURE_MISSING", foods: [...new Set(energy.missing)] } as const;
      return judgement(subject, { ...facts, ...(energy.missing.length > 0 ? lacking : nothing) });
    }
    const percent = (grams: number): number => (100 * factor * grams) / energy.known;
    return holdAgainst(subject, span, unit, {
      known: percent(known),
      most: percent(most),
      unsureLeast: energy.missing,
      unsureMost: missing,
    });
  };
  switch (rule.per) {
    case "ITEM":
      return judgeItems(subject, (read) => judge([read], 1, null));
    case "BOX":
      return judgeSpans(subject, eachDay(subject, rule), unit, ({ date }, items) => judge(items, 1, date));
    case "WEEK_MEAN":
      if (weekSpan(rule, days.length, over.isSplit) === "SKIP") return skipped(subject);
      return judgeSpans(subject, [{ date: null, days, bounds: rule }], unit, (_, items) =>
        judge(items, days.length, null),
      );
  }
}

function judgeTogether(subject: Case<RuleOf<"TOGETHER">>): RuleJudgement[] {
  const { rule, rules } = subject;
  return subject.days.map(({ date, items, unknown }) => {
    // One item that is both already brings the two together.
    const has = (matcher: Matcher): boolean => {
      const table = rules.tables.tableOf(matcher);
      return items.some(({ number }) => table.at(number) !== null);
    };
    if (has(rule.first) && has(rule.second)) return judgement(subject, { date, state: "NOT_MET" });
    return unknown.length > 0
      ? judgement(subject, { date, state: "NOT_KNOWN", reason: "DISH_UNKNOWN" })
      : judgement(subject, { date, state: "MET" });
  });
}

/**
 * What a list of dishes can break: reheating and cutlery. How an item is kept is known of a planned one only, and there it never
 * counts on a refrigerator; wrapping, glass and the time there is to eat are not in a box.
 */
function judgeServing(subject: Case<RuleOf<"SERVING">>): RuleJudgement[] {
  const { rule } = subject;
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
  const { rule } = subject;
  switch (rule.kind) {
    case "EXCLUDE":
    case "ONLY":
      return judgeMeaning({ ...subject, rule });
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
  const isMeant = ({ breakKey }: EatenItem): boolean => breaks.includes(breakKey);
  return {
    date: day.date,
    items: day.items.filter(({ item }) => isMeant(item)),
    unknown: day.unknown.filter(isMeant),
  };
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
      const subject: Case = { rules, week: brief, child, over, rule, days };
      const exempt = over.exemptDays.map((at) =>
        judgement(subject, { state: "NOT_APPLICABLE", reason: "EXEMPT", date: reads[at]!.date }),
      );
      if (days.length > 0) return [...judgeRule(subject), ...exempt];
      if (exempt.length > 0) return exempt;
      return [judgement(subject, { state: "NOT_APPLICABLE", reason: over.rests ?? "NOT_IN_FORCE" })];
    });
  });
}
