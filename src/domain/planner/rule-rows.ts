/** Rules over a box or a week as rows of the planner's problem: whole-number sums and counts over the places they bind. */
import type { Matcher, Rule, RuleNutrient } from "../../../shared/rule-set.js";
import type { ChildBrief, LabelBrief, WeekBrief } from "../brief.js";
import { daysBetween } from "../calendar/dates.js";
import type { CatalogueIndex, DerivedDish } from "../catalogue/derive.js";
import { appliesAtBreak, rulesInForce } from "../rules/in-force.js";
import { matches, matchesIngredient, matchingIngredients, type MatchItem } from "../rules/match.js";
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

/** Days of a full school week under a rule that names no weekdays. */
const FULL_WEEK_DAYS = 5;
/** Grams and nutrients are summed in hundredths of their unit. */
const HUNDREDTHS = 100;

/** kcal per gram: general factors of Regulation (EU) No 1169/2011, Annex XIV. */
const kcalPerGram: Readonly<Record<string, number>> = {
  PROCNT: 4,
  FAT: 9,
  FASAT: 9,
  FAMS: 9,
  FAPU: 9,
  CHOCDF: 4,
  SUGAR: 4,
  FREE_SUGAR: 4,
  ADDED_SUGAR: 4,
  FIBTG: 2,
};

export interface Bounds {
  readonly atLeast?: number | undefined;
  readonly atMost?: number | undefined;
}

/**
 * A week's limit when only `days` of a week of `fullDays` are packed: the days' share of it, whole above a full week. Counts
 * are whole: a minimum is rounded down (never more than the share), a maximum up (a share of one thing is still one thing).
 * Amounts are not rounded. `prorate({ atLeast: 3, atMost: 2 }, 3, 5, true)` is `{ atLeast: 1, atMost: 2 }`.
 */
export function prorate(bounds: Bounds, days: number, fullDays: number, counts: boolean): Bounds {
  return shareOf(bounds, Math.min(1, days / fullDays), counts);
}

function shareOf({ atLeast, atMost }: Bounds, share: number, counts: boolean): Bounds {
  const least = atLeast === undefined ? undefined : atLeast * share;
  const most = atMost === undefined ? undefined : atMost * share;
  if (!counts) return { atLeast: least, atMost: most };
  return {
    atLeast: least === undefined ? undefined : Math.floor(least + 1e-9),
    atMost: most === undefined ? undefined : Math.ceil(most - 1e-9),
  };
}

/** One rule for one child: the days it is in force with a break it applies at, and the places it binds. */
interface Case<R extends Rule = Rule> {
  readonly ruleSet: string;
  readonly rule: R;
  readonly child: ChildBrief;
  readonly dates: readonly string[];
  readonly positions: readonly number[];
}

interface Context {
  readonly brief: WeekBrief;
  readonly index: CatalogueIndex;
  readonly labels: readonly LabelBrief[];
  readonly places: readonly PlaceCandidates[];
  /** One 0/1 measure per matcher, shared by all rows that ask it. */
  readonly matchMeasures: Map<Matcher, Measure>;
}

/**
 * Rows for every rule that no single item decides, FORBID and ADVISE alike (`rule.level` says which), and the rules that
 * cannot be judged: cups and ounce equivalents need crediting tables the brief does not carry.
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
  const cases: Case[] = [];
  for (const child of brief.children) {
    const dates = new Map<string, { ruleSet: string; rule: Rule; dates: string[] }>();
    for (const day of child.days) {
      for (const { ruleSet, rule } of rulesInForce(brief, child, day)) {
        if (!day.breaks.some((pause) => appliesAtBreak(rule, pause.key))) continue;
        const key = `${ruleSet}/${rule.id}`;
        const known = dates.get(key) ?? { ruleSet: brief.ruleSets[ruleSet]?.key ?? "", rule, dates: [] };
        known.dates.push(day.date);
        dates.set(key, known);
      }
    }
    for (const { ruleSet, rule, dates: inForce } of dates.values()) {
      const positions = places.flatMap(({ place }, p) =>
        place.childId === child.id && inForce.includes(place.date) && appliesAtBreak(rule, place.breakKey) ? [p] : [],
      );
      cases.push({ ruleSet, rule, child, dates: inForce, positions });
    }
  }
  return cases;
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
      return rule.unit === "GRAMS" ? amountRows(context, { ...item, rule }) : null;
    case "SHARE":
      return rule.unit === "OZ_EQ" ? null : shareRows(context, { ...item, rule });
    case "NUTRIENT":
      return rule.per === "ITEM" ? [] : nutrientRows(context, { ...item, rule });
    case "TOGETHER":
      return togetherRows(context, { ...item, rule });
  }
}

type RuleOf<K extends Rule["kind"]> = Extract<Rule, { kind: K }>;

const fullDays = (rule: Rule): number => rule.weekdays?.length ?? FULL_WEEK_DAYS;
const isShort = ({ rule, dates }: Case): boolean => dates.length < fullDays(rule);

/** The spans a week's limit is held over, by the rule's own way with a short week: the week, each day, or not at all. */
function spansOf(context: Context, item: Case, bounds: Bounds, counts: boolean): Span[] {
  if (!isShort(item)) return [{ date: null, bounds, positions: item.positions }];
  switch (item.rule.shortWeek) {
    case "SKIP":
      return [];
    case "PER_DAY":
      return eachDay(context, item, shareOf(bounds, 1 / fullDays(item.rule), counts));
    case "PRORATE":
      return [
        {
          date: null,
          bounds: prorate(bounds, item.dates.length, fullDays(item.rule), counts),
          positions: item.positions,
        },
      ];
  }
}

function eachDay({ places }: Context, item: Case, bounds: Bounds): Span[] {
  return item.dates.map((date) => ({
    date,
    bounds,
    positions: item.positions.filter((p) => places[p]?.place.date === date),
  }));
}

const asItem = (context: Context, dish: CandidateDish, place: PlaceCandidates): MatchItem => ({
  derived: dish.derived,
  slot: place.place.slot,
  labels: context.labels,
});

/** A matcher is asked once per dish and slot. */
function rememberMatch<T>(
  context: Context,
  judge: (item: MatchItem) => T,
): (dish: CandidateDish, place: PlaceCandidates) => T {
  const known = new Map<string, T>();
  return (dish, place) => {
    const key = `${dish.derived.dish.key}/${place.place.slot}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    const value = judge(asItem(context, dish, place));
    known.set(key, value);
    return value;
  };
}

function matchMeasure(context: Context, matcher: Matcher): Measure {
  const known = context.matchMeasures.get(matcher);
  if (known !== undefined) return known;
  const measure: Measure = rememberMatch(context, (item) => (matches(matcher, item) ? 1 : 0));
  context.matchMeasures.set(matcher, measure);
  return measure;
}

const kindsIn = (matcher: Matcher, item: MatchItem): string[] => [
  ...new Set(matchingIngredients(matcher, item).map(({ food }) => food.kind)),
];

/** The kind with the most grams among the matching ones not yet counted; of a dish with several, one is counted. */
function kindMeasure(context: Context, matcher: Matcher, counted: ReadonlySet<string>): KindOf {
  return rememberMatch(context, (item) => {
    const grams = new Map<string, number>();
    for (const { food, grams: amount } of matchingIngredients(matcher, item)) {
      if (!counted.has(food.kind)) grams.set(food.kind, (grams.get(food.kind) ?? 0) + amount);
    }
    const [first] = [...grams].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
    return first?.[0] ?? null;
  });
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
  const atLeast = bounds.atLeast === undefined ? null : Math.ceil(bounds.atLeast - 1e-9);
  const atMost = bounds.atMost === undefined ? null : Math.floor(bounds.atMost + 1e-9);
  if (rule.counts === "ITEMS") return [{ ...common, row: "SUM", measure, atLeast, atMost }];
  const count: RuleRow = {
    ...common,
    row: "COUNT",
    counts: rule.counts,
    measure,
    kindOf: kindMeasure(context, rule.matches, counted),
    atLeast: atLeast ?? 0,
    atMost,
  };
  if (rule.counts === "DAYS" || atMost === null) return [count];
  // One kind per dish is counted, which would let a mixed dish past a maximum: under one, a dish may bring one kind only.
  const mixed = rememberMatch(context, (matched) =>
    kindsIn(rule.matches, matched).filter((kind) => !counted.has(kind)).length > 1 ? 1 : 0,
  );
  return [count, { ...common, row: "SUM", measure: mixed, atLeast: null, atMost: 0 }];
}

/**
 * A window of several weeks ends with this one. What earlier weeks had is taken off the limit; it is known by dish only, so
 * a rule for certain breaks does not use it. A minimum is held only when every earlier week of the window has something on
 * record. A short week shortens the window by its missing days.
 */
function longWindowRows(context: Context, item: Case<RuleOf<"FREQUENCY">>): RuleRow[] {
  const { brief, index, labels } = context;
  const { rule, child } = item;
  if (isShort(item) && rule.shortWeek === "SKIP") return [];
  const weeksBack = (date: string): number => Math.ceil(daysBetween(date, brief.weekStart) / 7);
  const earlier = rule.breaks
    ? []
    : brief.history.filter(
        (row) => row.childId === child.id && weeksBack(row.date) >= 1 && weeksBack(row.date) < rule.weeks,
      );
  const sightings = earlier.flatMap((row) => {
    const dish = index.dish(row.dish);
    if (dish === undefined) return [];
    const derived = index.derived(dish.key);
    const seen = dish.slots
      .map((slot) => ({ derived, slot, labels }))
      .filter((asSlot) => matches(rule.matches, asSlot));
    return seen.length === 0
      ? []
      : [{ date: row.date, kinds: seen.flatMap((asSlot) => kindsIn(rule.matches, asSlot)) }];
  });
  const counted = new Set(rule.counts === "KINDS" ? sightings.flatMap((sighting) => sighting.kinds) : []);
  const before = {
    ITEMS: sightings.length,
    DAYS: new Set(sightings.map((sighting) => sighting.date)).size,
    KINDS: counted.size,
  }[rule.counts];
  const complete = new Set(earlier.map((row) => weeksBack(row.date))).size === rule.weeks - 1;
  const part = Math.min(1, item.dates.length / fullDays(rule));
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

/** Grams a matcher means in the item: the item as served for a clause about the whole dish, else its matching ingredients. */
function gramsMeant(matcher: Matcher, item: MatchItem, portionGrams: number): number {
  const clauses = matcher.anyOf.filter((clause) => matches({ anyOf: [clause] }, item));
  if (clauses.length === 0) return 0;
  const wholeItem = clauses.some((clause) => clause.wholly === true || !speaksOfIngredients(clause));
  if (wholeItem) return portionGrams;
  const scale = portionGrams / item.derived.grams;
  return item.derived.ingredients
    .filter((ingredient) => clauses.some((clause) => matchesIngredient(clause, ingredient, item.labels)))
    .reduce((sum, ingredient) => sum + ingredient.grams * scale, 0);
}

function speaksOfIngredients(clause: Matcher["anyOf"][number]): boolean {
  const fields = [
    clause.allergens,
    clause.groups,
    clause.foods,
    clause.kinds,
    clause.origins,
    clause.chokingClasses,
    clause.forms,
    clause.wholeGrain,
  ];
  return fields.some((field) => field !== undefined);
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
function sumRows(item: Case, spans: readonly Span[], amount: Measure, most: Measure = amount): RuleRow[] {
  const down: Measure = (dish, place) => Math.floor(amount(dish, place) * HUNDREDTHS + 1e-6);
  const up: Measure = (dish, place) => Math.ceil(most(dish, place) * HUNDREDTHS - 1e-6);
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
        : [{ ...common, measure: down, atLeast: Math.ceil(atLeast * HUNDREDTHS - 1e-6), atMost: null }]),
      ...(atMost === undefined
        ? []
        : [{ ...common, measure: up, atLeast: null, atMost: Math.floor(atMost * HUNDREDTHS + 1e-6) }]),
    ];
  });
}

function amountRows(context: Context, item: Case<RuleOf<"AMOUNT">>): RuleRow[] {
  const { rule } = item;
  const amount: Measure = (dish, place) => gramsMeant(rule.matches, asItem(context, dish, place), dish.portion.grams);
  const spans = rule.per === "BOX" ? eachDay(context, item, rule) : spansOf(context, item, rule, false);
  return sumRows(item, spans, amount);
}

/** A bound above 1 can only be percent. */
const fraction = (bound: number | undefined): number | undefined =>
  bound !== undefined && bound > 1 ? bound / 100 : bound;

/** part / whole >= r as part - r x whole >= 0 over the week; only items of the whole count. */
function shareRows(context: Context, item: Case<RuleOf<"SHARE">>): RuleRow[] {
  const { rule, positions } = item;
  if (isShort(item) && rule.shortWeek === "SKIP") return [];
  const isWhole = matchMeasure(context, rule.whole);
  const measure = (matcher: Matcher): Measure => {
    if (rule.unit === "ITEMS") {
      const matched = matchMeasure(context, matcher);
      return (dish, place) => matched(dish, place) * isWhole(dish, place);
    }
    return (dish, place) =>
      isWhole(dish, place) === 0 ? 0 : gramsMeant(matcher, asItem(context, dish, place), dish.portion.grams);
  };
  const part = measure(rule.part);
  const whole = measure(rule.whole);
  const over =
    (share: number): Measure =>
    (dish, place) =>
      part(dish, place) - share * whole(dish, place);
  const least = fraction(rule.atLeast);
  const most = fraction(rule.atMost);
  return [
    ...(least === undefined ? [] : sumRows(item, [{ bounds: { atLeast: 0 }, date: null, positions }], over(least))),
    ...(most === undefined ? [] : sumRows(item, [{ bounds: { atMost: 0 }, date: null, positions }], over(most))),
  ];
}

function amountOf(derived: DerivedDish, figures: "nutrients" | "nutrientsAtMost", nutrient: RuleNutrient): number {
  if (nutrient === "FREE_SUGAR") return derived.freeSugarGrams;
  return nutrient === "ADDED_SUGAR" ? derived.addedSugarGrams : (derived[figures][nutrient] ?? 0);
}

/** Null when the rule asks for a percentage of energy of something that has none. */
function nutrientRows(context: Context, item: Case<RuleOf<"NUTRIENT">>): RuleRow[] | null {
  const { rule, dates } = item;
  if (rule.per === "WEEK_MEAN" && isShort(item) && rule.shortWeek === "SKIP") return [];
  const counted =
    (figures: "nutrients" | "nutrientsAtMost"): Measure =>
    ({ derived, portion }) =>
      amountOf(derived, figures, rule.nutrient) * portion.scale;
  const known = counted("nutrients");
  const most = counted("nutrientsAtMost");
  const spans: Span[] =
    rule.per === "BOX" ? eachDay(context, item, rule) : [{ date: null, bounds: rule, positions: item.positions }];
  if (rule.as === "AMOUNT") {
    const totals = spans.map((span) => ({
      ...span,
      bounds: shareOf(span.bounds, span.date === null ? dates.length : 1, false),
    }));
    return sumRows(item, totals, known, most);
  }
  const factor = kcalPerGram[rule.nutrient];
  if (factor === undefined) return null;
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
