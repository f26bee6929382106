/** Rules over a box or a week as rows of the planner's problem: whole-number sums and counts over the places they bind. */
import type { AmountUnit, Matcher, Rule, RuleKind } from "../../../shared/rule-set.js";
import type { ChildBrief, WeekBrief } from "../brief.js";
import { daysBetween } from "../calendar/dates.js";
import type { CompiledRuleSets, MeantHere } from "../rules/compile.js";
import { appliesAtBreak, rulesOverWeek } from "../rules/in-force.js";
import { asFraction, shareOf, weekPart, weekSpan, type Bounds } from "../rules/limits.js";
import { energyFactorOf, type NutrientIn } from "../rules/nutrient-in.js";
import type { CandidateDish, PlaceCandidates } from "./candidates.js";

/** A whole number for a dish at a place. */
export type Measure = (dish: CandidateDish, place: PlaceCandidates) => number;

/** A food kind (or several) a dish counts for under a KINDS rule; the planner keeps one per dish. */
export type KindOf = (dish: CandidateDish, place: PlaceCandidates) => string | null;

export type RuleRow = {
  readonly ruleSet: string;
  readonly rule: Rule;
  readonly childId: string;
  /** Null for a rule over the week. */
  readonly date: string | null;
  /** Indices of places, in the order of the candidates. */
  readonly positions: readonly number[];
} & (
  | { readonly row: "SUM"; readonly measure: Measure; readonly atLeast: number | null; readonly atMost: number | null }
  | {
      readonly row: "COUNT";
      readonly counts: "DAYS" | "KINDS";
      readonly measure: Measure;
      readonly kindOf: KindOf;
      readonly atLeast: number;
      readonly atMost: number | null;
    }
  | { readonly row: "TOGETHER"; readonly first: Measure; readonly second: Measure }
);

export interface UnjudgedRule {
  readonly ruleSet: string;
  readonly rule: Rule;
  readonly childId: string;
}

/** Grams, millilitres and nutrients are summed in hundredths of their unit, what is credited by steps in thousandths. */
const HUNDREDTHS = 100;
const THOUSANDTHS = 1000;

/** One rule for one child: the days it binds, and the places it binds there. */
interface Case<R extends Rule = Rule> {
  readonly ruleSet: string;
  readonly rule: R;
  readonly child: ChildBrief;
  readonly dates: readonly string[];
  /** It or its document begins or ends between the packed days. */
  readonly isSplit: boolean;
  readonly positions: readonly number[];
}

interface Context {
  readonly brief: WeekBrief;
  readonly rules: CompiledRuleSets;
  readonly places: readonly PlaceCandidates[];
  /** One 0/1 measure per matcher, shared by all rows that ask it. */
  readonly matchMeasures: Map<Matcher, Measure>;
}

/**
 * Rows for every rule that no single item decides, FORBID and ADVISE alike (`rule.level` says which), and the rules that
 * cannot be judged: a share of energy of what carries none.
 */
export function listRuleRows(input: Omit<Context, "matchMeasures">): { rows: RuleRow[]; unjudged: UnjudgedRule[] } {
  const context: Context = { ...input, matchMeasures: new Map() };
  const rows: RuleRow[] = [];
  const unjudged: UnjudgedRule[] = [];
  for (const item of findCases(context)) {
    const made = rowsOf(context, item);
    if (made === null) unjudged.push({ ruleSet: item.ruleSet, rule: item.rule, childId: item.child.id });
    else rows.push(...made);
  }
  return { rows, unjudged };
}

function findCases({ brief, places }: Context): Case[] {
  return brief.children.flatMap((child) => {
    const own = places.flatMap(({ place }, p) => (place.childId === child.id ? [{ place, p }] : []));
    return rulesOverWeek(brief.ruleSets, child).flatMap(({ ruleSet, rule, days, isSplit }): Case[] => {
      if (days.length === 0) return [];
      const dates = days.map((at) => child.days[at]!.date);
      const positions = own.flatMap(({ place, p }) =>
        dates.includes(place.date) && appliesAtBreak(rule, place.breakKey) ? [p] : [],
      );
      return [{ ruleSet: brief.ruleSets[ruleSet]?.key ?? "", rule, child, dates, isSplit, positions }];
    });
  });
}

function rowsOf(context: Context, item: Case): RuleRow[] | null {
  const { rule } = item;
  switch (rule.kind) {
    case "EXCLUDE":
    case "ONLY":
    case "SERVING":
      return [];
    case "FREQUENCY":
      return frequencyRows(context, { ...item, rule });
    case "AMOUNT":
      return rule.per === "ITEM" ? [] : amountRows(context, { ...item, rule });
    case "SHARE":
      return shareRows(context, { ...item, rule });
    case "NUTRIENT":
      return rule.per === "ITEM" ? [] : nutrientRows(context, { ...item, rule });
    case "TOGETHER":
      return togetherRows(context, { ...item, rule });
  }
}

type RuleOf<K extends RuleKind> = Extract<Rule, { kind: K }>;

const spanOf = ({ rule, dates, isSplit }: Case) => weekSpan(rule, dates.length, isSplit);

/** The spans a week's limit is held over, by the rule's own way with a short or a split week: the week, each day, or not at all. */
function spansOf(context: Context, item: Case, bounds: Bounds, counts: boolean): Span[] {
  const { rule, dates, positions } = item;
  switch (spanOf(item)) {
    case "WHOLE":
      return [{ date: null, bounds, positions }];
    case "SKIP":
      return [];
    case "PER_DAY":
      return eachDay(context, item, shareOf(bounds, weekPart(rule, dates.length) / dates.length, counts));
    case "PRORATE":
      return [{ date: null, bounds: shareOf(bounds, weekPart(rule, dates.length), counts), positions }];
  }
}

function eachDay({ places }: Context, item: Case, bounds: Bounds): Span[] {
  return item.dates.map((date) => ({
    date,
    bounds,
    positions: item.positions.filter((p) => places[p]?.place.date === date),
  }));
}

/** What a matcher means in a dish at a place; null when it does not mean it. */
type Meaning = (dish: CandidateDish, place: PlaceCandidates) => MeantHere | null;

function meaningOf({ rules: { tables } }: Context, matcher: Matcher): Meaning {
  const table = tables.tableOf(matcher);
  return ({ derived }, { place }) => table.at(tables.numberOf(derived, place.slot));
}

function matchMeasure(context: Context, matcher: Matcher): Measure {
  const known = context.matchMeasures.get(matcher);
  if (known !== undefined) return known;
  const meaning = meaningOf(context, matcher);
  const measure: Measure = (dish, place) => (meaning(dish, place) === null ? 0 : 1);
  context.matchMeasures.set(matcher, measure);
  return measure;
}

function frequencyRows(context: Context, item: Case<RuleOf<"FREQUENCY">>): RuleRow[] {
  const { rule } = item;
  if (rule.per === "WEEK" && rule.weeks > 1) return longWindowRows(context, item);
  const spans = rule.per === "BOX" ? eachDay(context, item, rule) : spansOf(context, item, rule, true);
  return spans.flatMap(({ date, bounds, positions }) =>
    countRows(context, item, { date, bounds, positions, counted: new Set() }),
  );
}

interface CountSpan {
  readonly date: string | null;
  readonly bounds: Bounds;
  readonly positions: readonly number[];
  /** Kinds an earlier week has counted already. */
  readonly counted: ReadonlySet<string>;
}

function countRows(
  context: Context,
  item: Case<RuleOf<"FREQUENCY">>,
  { date, bounds, positions, counted }: CountSpan,
): RuleRow[] {
  const { rule, ruleSet, child } = item;
  const common = { ruleSet, rule, childId: child.id, date, positions };
  const measure = matchMeasure(context, rule.matches);
  const meaning = meaningOf(context, rule.matches);
  const atLeast = bounds.atLeast === undefined ? null : Math.ceil(bounds.atLeast - 1e-9);
  const atMost = bounds.atMost === undefined ? null : Math.floor(bounds.atMost + 1e-9);
  if (rule.counts === "ITEMS") return [{ ...common, row: "SUM", measure, atLeast, atMost }];
  const count: RuleRow = {
    ...common,
    row: "COUNT",
    counts: rule.counts,
    measure,
    // The kind with the most grams among those not yet counted; of a dish with several, one is counted.
    kindOf: (dish, place) => meaning(dish, place)?.kinds.find((kind) => !counted.has(kind)) ?? null,
    atLeast: atLeast ?? 0,
    atMost,
  };
  if (rule.counts === "DAYS" || atMost === null) return [count];
  // One kind per dish is counted, which would let a mixed dish past a maximum: under one, a dish may bring one kind only.
  const mixed: Measure = (dish, place) =>
    (meaning(dish, place)?.kinds.filter((kind) => !counted.has(kind)).length ?? 0) > 1 ? 1 : 0;
  return [count, { ...common, row: "SUM", measure: mixed, atLeast: null, atMost: 0 }];
}

/**
 * A window of several weeks ends with this one. What earlier weeks had is taken off the limit; it is known by dish only, so
 * a rule for certain breaks does not use it. A minimum is held only when every earlier week of the window has something on
 * record. A short week shortens the window by its missing days.
 */
function longWindowRows(context: Context, item: Case<RuleOf<"FREQUENCY">>): RuleRow[] {
  const { brief, rules } = context;
  const { rule, child } = item;
  if (spanOf(item) === "SKIP") return [];
  const table = rules.tables.tableOf(rule.matches);
  const weeksBack = (date: string): number => Math.ceil(daysBetween(date, brief.weekStart) / 7);
  const earlier = rule.breaks
    ? []
    : brief.history.filter(
        (row) => row.childId === child.id && weeksBack(row.date) >= 1 && weeksBack(row.date) < rule.weeks,
      );
  const sightings = earlier.flatMap((row) => {
    const dish = rules.index.dish(row.dish);
    if (dish === undefined) return [];
    const derived = rules.index.derived(dish.key);
    const seen = dish.slots.flatMap((slot) => table.at(rules.tables.numberOf(derived, slot)) ?? []);
    return seen.length === 0 ? [] : [{ date: row.date, kinds: seen.flatMap(({ kinds }) => kinds) }];
  });
  const counted = new Set(rule.counts === "KINDS" ? sightings.flatMap((sighting) => sighting.kinds) : []);
  const before = {
    ITEMS: sightings.length,
    DAYS: new Set(sightings.map((sighting) => sighting.date)).size,
    KINDS: counted.size,
  }[rule.counts];
  const complete = new Set(earlier.map((row) => weeksBack(row.date))).size === rule.weeks - 1;
  const part = weekPart(rule, item.dates.length);
  const window = shareOf(
    { atLeast: complete ? rule.atLeast : undefined, atMost: rule.atMost },
    (rule.weeks - 1 + part) / rule.weeks,
    true,
  );
  const bounds: Bounds = {
    atLeast: window.atLeast === undefined ? undefined : Math.max(0, window.atLeast - before),
    atMost: window.atMost === undefined ? undefined : Math.max(0, window.atMost - before),
  };
  return countRows(context, item, { date: null, bounds, positions: item.positions, counted });
}

interface Span {
  readonly bounds: Bounds;
  readonly date: string | null;
  readonly positions: readonly number[];
}

/**
 * A minimum is summed in figures rounded down, a maximum in figures rounded up: what the row says holds for the true sum.
 * `most` is what a maximum counts, where that is more than a minimum may.
 */
function sumRows(
  item: Case,
  spans: readonly Span[],
  amount: Measure,
  { most = amount, scale = HUNDREDTHS }: { most?: Measure; scale?: number } = {},
): RuleRow[] {
  const down: Measure = (dish, place) => Math.floor(amount(dish, place) * scale + 1e-6);
  const up: Measure = (dish, place) => Math.ceil(most(dish, place) * scale - 1e-6);
  return spans.flatMap(({ bounds: { atLeast, atMost }, date, positions }): RuleRow[] => {
    const common = {
      ruleSet: item.ruleSet,
      rule: item.rule,
      childId: item.child.id,
      date,
      positions,
      row: "SUM",
    } as const;
    return [
      ...(atLeast === undefined
        ? []
        : [{ ...common, measure: down, atLeast: Math.ceil(atLeast * scale - 1e-6), atMost: null }]),
      ...(atMost === undefined
        ? []
        : [{ ...common, measure: up, atLeast: null, atMost: Math.floor(atMost * scale + 1e-6) }]),
    ];
  });
}

/** Of what is known; an item under a maximum that lacks a figure is no candidate. */
function amountMeasure({ rules: { tables } }: Context, unit: AmountUnit, matcher: Matcher): Measure {
  const table = tables.tableOf(matcher);
  return ({ derived, portion }, { place }) => table.amount(unit, tables.numberOf(derived, place.slot), portion.grams);
}

/** Steps of a credit are eighths and quarters: thousandths hold them exactly. */
const scaleOf = (unit: AmountUnit | "ITEMS"): number =>
  unit === "GRAMS" || unit === "ML" || unit === "ITEMS" ? HUNDREDTHS : THOUSANDTHS;

function amountRows(context: Context, item: Case<RuleOf<"AMOUNT">>): RuleRow[] {
  const { rule } = item;
  const spans = rule.per === "BOX" ? eachDay(context, item, rule) : spansOf(context, item, rule, false);
  return sumRows(item, spans, amountMeasure(context, rule.unit, rule.matches), { scale: scaleOf(rule.unit) });
}

/** part / whole >= r as part - r x whole >= 0 over the week; only items of the whole count. */
function shareRows(context: Context, item: Case<RuleOf<"SHARE">>): RuleRow[] {
  const { rule, positions } = item;
  if (spanOf(item) === "SKIP") return [];
  const { unit } = rule;
  const isWhole = matchMeasure(context, rule.whole);
  const measure = (matcher: Matcher): Measure => {
    const of = unit === "ITEMS" ? matchMeasure(context, matcher) : amountMeasure(context, unit, matcher);
    return (dish, place) => (isWhole(dish, place) === 0 ? 0 : of(dish, place));
  };
  const part = measure(rule.part);
  const whole = measure(rule.whole);
  const over =
    (share: number): Measure =>
    (dish, place) =>
      part(dish, place) - share * whole(dish, place);
  const least = asFraction(rule.atLeast);
  const most = asFraction(rule.atMost);
  const held = (bounds: Bounds): Span[] => [{ bounds, date: null, positions }];
  const scale = scaleOf(unit);
  return [
    ...(least === undefined ? [] : sumRows(item, held({ atLeast: 0 }), over(least), { scale })),
    ...(most === undefined ? [] : sumRows(item, held({ atMost: 0 }), over(most), { scale })),
  ];
}

/** Null when the rule asks for a percentage of energy of something that has none. */
function nutrientRows(context: Context, item: Case<RuleOf<"NUTRIENT">>): RuleRow[] | null {
  const { rule, dates } = item;
  const { tables } = context.rules;
  if (rule.per === "WEEK_MEAN" && spanOf(item) === "SKIP") return [];
  const counted =
    (figure: (has: NutrientIn) => number): Measure =>
    ({ derived, portion }, { place }) =>
      figure(tables.nutrient(rule.nutrient, tables.numberOf(derived, place.slot))) * portion.scale;
  const known = counted((has) => has.known);
  const most = counted((has) => has.most);
  const spans: Span[] =
    rule.per === "BOX" ? eachDay(context, item, rule) : [{ date: null, bounds: rule, positions: item.positions }];
  if (rule.as === "AMOUNT") {
    const totals = spans.map((span) => ({
      ...span,
      bounds: shareOf(span.bounds, span.date === null ? dates.length : 1, false),
    }));
    return sumRows(item, totals, known, { most });
  }
  const factor = energyFactorOf(rule.nutrient);
  if (factor === null) return null;
  const over =
    (amount: Measure, percent: number): Measure =>
    (dish, place) =>
      factor * amount(dish, place) - (percent / 100) * (dish.derived.nutrients.ENERC_KCAL ?? 0) * dish.portion.scale;
  const held = (bounds: Bounds): Span[] => spans.map((span) => ({ ...span, bounds }));
  return [
    ...(rule.atLeast === undefined ? [] : sumRows(item, held({ atLeast: 0 }), over(known, rule.atLeast))),
    ...(rule.atMost === undefined ? [] : sumRows(item, held({ atMost: 0 }), over(most, rule.atMost))),
  ];
}

function togetherRows(context: Context, item: Case<RuleOf<"TOGETHER">>): RuleRow[] {
  const { rule, ruleSet, child } = item;
  const bound = new Set(item.positions.map((p) => context.places[p]));
  const first = matchMeasure(context, rule.first);
  const second = matchMeasure(context, rule.second);
  const inside =
    (measure: Measure): Measure =>
    (dish, place) =>
      bound.has(place) ? measure(dish, place) : 0;
  const firstInside = inside(first);
  const secondInside = inside(second);
  const both: Measure = (dish, place) => first(dish, place) * second(dish, place);
  return eachDay(context, item, {}).flatMap(({ date, positions }): RuleRow[] => {
    const common = { ruleSet, rule, childId: child.id, date, positions };
    return [
      { ...common, row: "TOGETHER", first: firstInside, second: secondInside },
      // A dish that is both brings the two together on its own.
      { ...common, row: "SUM", measure: both, atLeast: null, atMost: 0 },
    ];
  });
}
