/**
 * Rules that no box can keep together, found before anybody is planned against them: a minimum above a maximum, and what is
 * left of a required group when everything excluded is gone. Only rules that forbid are looked at, each pair where its breaks,
 * weekdays, ages and dates meet. What is found is certain for the catalogue given; that nothing is found promises no week.
 *
 * More rules only make things worse, and a rule joins those that hold at its first age and on its first date. So it is enough to
 * look at every pair of a first age and a first date, each with the rules that hold there.
 */
import type { SlotCode, WeekdayCode } from "../../../shared/codes.js";
import type { Matcher, Rule, RuleSetDocument } from "../../../shared/rule-set.js";
import type { CatalogueIndex } from "../catalogue/derive.js";
import { matches, matchingIngredients } from "./match.js";

/** One rule of one of the documents looked at. */
export interface RuleRef {
  /** Index into the documents. */
  readonly document: number;
  /** Index into its rules. */
  readonly at: number;
}

export type DocumentClash =
  /** A minimum of one rule lies above its own or another's maximum over the same days. */
  | {
      readonly kind: "ABOVE_MAXIMUM";
      readonly minimum: RuleRef;
      readonly maximum: RuleRef;
      readonly atLeast: number;
      readonly atMost: number;
    }
  /** More days, kinds or items are asked for than there are. */
  | { readonly kind: "MORE_THAN_THERE_ARE"; readonly minimum: RuleRef; readonly atLeast: number; readonly left: number }
  /** Dishes that would meet the minimum are there, and these rules together shut out every one. */
  | { readonly kind: "GROUP_EMPTIED"; readonly minimum: RuleRef; readonly by: readonly RuleRef[] }
  /** Nothing at all may be eaten at a break. */
  | { readonly kind: "NOTHING_LEFT"; readonly breakKey: string; readonly by: readonly RuleRef[] }
  /** Two things that have to be in every box may not be in one. */
  | {
      readonly kind: "APART_AND_TOGETHER";
      readonly first: RuleRef;
      readonly second: RuleRef;
      readonly apart: RuleRef;
    };

interface Scoped<R extends Rule = Rule> {
  readonly ref: RuleRef;
  readonly rule: R;
  readonly fromYears: number;
  readonly underYears: number;
  readonly from: string;
  readonly until: string;
}
type RuleOf<K extends Rule["kind"]> = Extract<Rule, { kind: K }>;

/** Days of a school week for a rule that names none. */
const SCHOOL_DAYS: readonly WeekdayCode[] = ["MONDAY", "TUESDAY", "WEDNESDAY", "THURSDAY", "FRIDAY"];
const FOREVER = "9999-12-31";

/** A dish in one of its slots, by its place in the list of all. */
type ItemSet = ReadonlySet<number>;

const texts = new WeakMap<Matcher, string>();
/** Equal for matchers that are written alike. */
function textOf(matcher: Matcher): string {
  const text = texts.get(matcher) ?? JSON.stringify(matcher);
  texts.set(matcher, text);
  return text;
}

/** The catalogue as matchers see it: every dish in each of its slots. A matcher is held against it once, however often it is asked. */
export interface MatchedCatalogue {
  readonly items: readonly { readonly dish: string; readonly slot: SlotCode }[];
  /** Items the matcher means, whatever labels may add. */
  readonly setOf: (matcher: Matcher) => ItemSet;
  /** Different kinds of food it means in some items. */
  readonly kindsOf: (matcher: Matcher, among: ItemSet) => number;
}

/**
 * @param breakKeys of the class or classes the documents are for; empty where unknown: rules then meet at the breaks they name
 * @returns the clashes in the order of the rules whose minimum is out of reach
 */
export function findDocumentClashes(
  documents: readonly RuleSetDocument[],
  catalogue: MatchedCatalogue,
  breakKeys: readonly string[],
): DocumentClash[] {
  const rules = documents.flatMap(scopedRules);
  const named = new Set([...breakKeys, ...rules.flatMap(({ rule }) => rule.breaks ?? [])]);
  const breaks = named.size > 0 ? [...named] : [""];
  const found = new Map<string, DocumentClash>();
  for (const holding of togetherInForce(rules)) {
    const clashes = [
      ...holding.flatMap((minimum) => clashesOfMinimum(minimum, holding, catalogue, breaks)),
      ...nothingLeft(holding, catalogue, breaks),
      ...apartAndTogether(holding, catalogue, breaks),
    ];
    for (const clash of clashes) found.set(JSON.stringify(clash), clash);
  }
  return [...found.values()];
}

/** Ages and dates looked at; only a document written to be large has more. */
const MOST_CELLS = 100;

/** The rules that hold for a child of some age on some date, for every first age and first date of a rule. */
function togetherInForce(rules: readonly Scoped[]): Scoped[][] {
  const ages = [...new Set(rules.map(({ fromYears }) => fromYears))];
  const dates = [...new Set(rules.map(({ from }) => from))];
  const cells = ages.flatMap((age) => dates.map((date) => ({ age, date }))).slice(0, MOST_CELLS);
  return cells.map(({ age, date }) =>
    rules.filter(
      ({ fromYears, underYears, from, until }) => fromYears <= age && age < underYears && from <= date && date <= until,
    ),
  );
}

function scopedRules(document: RuleSetDocument, at: number): Scoped[] {
  return document.rules.flatMap((rule, place): Scoped[] =>
    rule.level === "ADVISE"
      ? []
      : [
          {
            ref: { document: at, at: place },
            rule,
            fromYears: Math.max(rule.ages?.fromYears ?? 0, document.ages?.fromYears ?? 0),
            underYears: Math.min(rule.ages?.underYears ?? 100, document.ages?.underYears ?? 100),
            from: later(rule.inForceFrom, document.inForceFrom),
            until: earlier(rule.inForceUntil, document.inForceUntil),
          },
        ],
  );
}
const later = (a: string | undefined, b: string) => (a !== undefined && a > b ? a : b);
const earlier = (a = FOREVER, b = FOREVER) => (a < b ? a : b);

const meet = (a: Scoped, b: Scoped): boolean => daysOf(a.rule).some((day) => daysOf(b.rule).includes(day));
const daysOf = (rule: Rule): readonly WeekdayCode[] => rule.weekdays ?? SCHOOL_DAYS;

/** Does the second hold wherever the first does. */
const coversDays = (first: Rule, second: Rule) => daysOf(first).every((day) => daysOf(second).includes(day));
const coversBreaks = (first: Rule, second: Rule, breaks: readonly string[]) =>
  second.breaks === undefined || (first.breaks ?? breaks).every((key) => second.breaks!.includes(key));

export function matchCatalogue(index: CatalogueIndex): MatchedCatalogue {
  const items = index.dishes.flatMap((dish) => dish.slots.map((slot) => ({ dish: dish.key, slot })));
  const known = new Map<string, ItemSet>();
  const asItem = (at: number) => ({ derived: index.derived(items[at]!.dish), slot: items[at]!.slot, labels: [] });
  const setOf = (matcher: Matcher): ItemSet => {
    const key = textOf(matcher);
    const set = known.get(key) ?? new Set(items.flatMap((_, at) => (matches(matcher, asItem(at)) ? [at] : [])));
    known.set(key, set);
    return set;
  };
  return {
    items,
    setOf,
    kindsOf: (matcher, among) =>
      new Set([...among].flatMap((at) => matchingIngredients(matcher, asItem(at)).map(({ food }) => food.kind))).size,
  };
}

/** What the rules shut out at one break: what is excluded, and what is not among what alone may be there. */
function allowedAt(breakKey: string, rules: readonly Scoped[], catalogue: MatchedCatalogue): (item: number) => boolean {
  const tests = rules.flatMap(({ rule }): ((item: number) => boolean)[] => {
    if (rule.breaks !== undefined && !rule.breaks.includes(breakKey)) return [];
    if (rule.kind === "EXCLUDE") {
      const out = catalogue.setOf(rule.matches);
      return [(item) => !out.has(item)];
    }
    if (rule.kind === "ONLY") {
      const only = catalogue.setOf(rule.matches);
      return [(item) => only.has(item)];
    }
    return [];
  });
  return (item) => tests.every((test) => test(item));
}

const leftAnywhere = (
  wanted: ItemSet,
  at: readonly string[],
  rules: readonly Scoped[],
  catalogue: MatchedCatalogue,
): ItemSet => {
  const allowed = at.map((key) => allowedAt(key, rules, catalogue));
  return new Set([...wanted].filter((item) => allowed.some((test) => test(item))));
};

/** Of rules that are too many together, some of which none can be left out. */
function irreducible(rules: readonly Scoped[], tooMany: (some: readonly Scoped[]) => boolean): RuleRef[] {
  let kept = [...rules];
  for (const rule of rules) {
    const without = kept.filter((other) => other !== rule);
    if (tooMany(without)) kept = without;
  }
  return kept.map(({ ref }) => ref);
}

function shuttersOf(minimum: Scoped, rules: readonly Scoped[]): Scoped[] {
  return rules.filter(
    ({ rule }) => (rule.kind === "EXCLUDE" || rule.kind === "ONLY") && coversDays(minimum.rule, rule),
  );
}

function clashesOfMinimum(
  minimum: Scoped,
  rules: readonly Scoped[],
  catalogue: MatchedCatalogue,
  breaks: readonly string[],
): DocumentClash[] {
  const { rule, ref } = minimum;
  switch (rule.kind) {
    case "FREQUENCY": {
      if (rule.atLeast === undefined || rule.atLeast <= 0) return [];
      const wanted = catalogue.setOf(rule.matches);
      const shutters = shuttersOf(minimum, rules);
      const at = rule.breaks ?? breaks;
      const left = (some: readonly Scoped[]) => leftAnywhere(wanted, at, some, catalogue);
      if (wanted.size > 0 && left(shutters).size === 0)
        return [{ kind: "GROUP_EMPTIED", minimum: ref, by: irreducible(shutters, (some) => left(some).size === 0) }];
      const most = mostThereAre(rule, catalogue, left(shutters));
      if (wanted.size > 0 && most < rule.atLeast)
        return [{ kind: "MORE_THAN_THERE_ARE", minimum: ref, atLeast: rule.atLeast, left: most }];
      return maximaBelow(minimum, rule.atLeast, rules, (other) =>
        other.rule.kind === "FREQUENCY" && other.rule.atMost !== undefined
          ? frequencyPair(rule, other.rule, other.rule.atMost, left(shutters), catalogue, breaks)
          : null,
      );
    }
    case "AMOUNT":
      if (rule.atLeast === undefined || rule.atLeast <= 0) return [];
      return maximaBelow(minimum, rule.atLeast, rules, (other) =>
        other.rule.kind === "AMOUNT" &&
        other.rule.unit === rule.unit &&
        other.rule.per === rule.per &&
        other.rule.atMost !== undefined &&
        sameBreaks(rule, other.rule, breaks) &&
        textOf(other.rule.matches) === textOf(rule.matches)
          ? { atLeast: rule.atLeast!, atMost: other.rule.atMost }
          : null,
      );
    case "SHARE":
      if (rule.atLeast === undefined) return [];
      return maximaBelow(minimum, rule.atLeast, rules, (other) =>
        other.rule.kind === "SHARE" &&
        other.rule.unit === rule.unit &&
        other.rule.atMost !== undefined &&
        sameBreaks(rule, other.rule, breaks) &&
        textOf(other.rule.part) === textOf(rule.part) &&
        textOf(other.rule.whole) === textOf(rule.whole)
          ? { atLeast: rule.atLeast!, atMost: other.rule.atMost }
          : null,
      );
    case "NUTRIENT":
      if (rule.atLeast === undefined) return [];
      return maximaBelow(minimum, rule.atLeast, rules, (other) =>
        other.rule.kind === "NUTRIENT" &&
        other.rule.nutrient === rule.nutrient &&
        other.rule.per === rule.per &&
        other.rule.as === rule.as &&
        other.rule.atMost !== undefined &&
        sameBreaks(rule, other.rule, breaks)
          ? { atLeast: rule.atLeast!, atMost: other.rule.atMost }
          : null,
      );
    case "EXCLUDE":
    case "ONLY":
    case "TOGETHER":
    case "SERVING":
      return [];
  }
}

const sameBreaks = (a: Rule, b: Rule, breaks: readonly string[]) =>
  coversBreaks(a, b, breaks) && coversBreaks(b, a, breaks);

/** The most a rule's count can reach with what is left. Items are cooked as often as is liked. */
function mostThereAre(rule: RuleOf<"FREQUENCY">, catalogue: MatchedCatalogue, left: ItemSet): number {
  switch (rule.counts) {
    case "ITEMS":
      return Infinity;
    case "DAYS":
      return rule.per === "BOX" ? 1 : daysOf(rule).length * rule.weeks;
    case "KINDS":
      return catalogue.kindsOf(rule.matches, left);
  }
}

function maximaBelow(
  minimum: Scoped,
  atLeast: number,
  rules: readonly Scoped[],
  pair: (other: Scoped) => { readonly atLeast: number; readonly atMost: number } | null,
): DocumentClash[] {
  return rules.flatMap((other): DocumentClash[] => {
    if (!meet(minimum, other)) return [];
    const bounds = pair(other);
    if (bounds === null || bounds.atLeast <= bounds.atMost) return [];
    return [{ kind: "ABOVE_MAXIMUM", minimum: minimum.ref, maximum: other.ref, atLeast, atMost: bounds.atMost }];
  });
}

/**
 * Both bounds over the same span, where everything that can meet the minimum counts for the maximum too: a box's minimum five
 * times over for a week's maximum, a week's minimum against a box's maximum five times over.
 */
function frequencyPair(
  rule: RuleOf<"FREQUENCY">,
  other: RuleOf<"FREQUENCY">,
  atMost: number,
  left: ItemSet,
  catalogue: MatchedCatalogue,
  breaks: readonly string[],
): { atLeast: number; atMost: number } | null {
  const counted = catalogue.setOf(other.matches);
  if (rule.counts !== other.counts || !coversBreaks(rule, other, breaks)) return null;
  if (![...left].every((item) => counted.has(item))) return null;
  const same = rule.per === other.per && (rule.per === "BOX" || rule.weeks === other.weeks);
  if (rule.counts === "KINDS") {
    // A kind counts once a week however often it comes, so that only like spans and like matchers compare.
    return same && textOf(rule.matches) === textOf(other.matches) ? { atLeast: rule.atLeast!, atMost } : null;
  }
  if (same) return coversDays(rule, other) ? { atLeast: rule.atLeast!, atMost } : null;
  if (rule.per === "BOX" && other.weeks === 1 && coversDays(rule, other))
    return { atLeast: rule.atLeast! * daysOf(rule).length, atMost };
  if (other.per === "BOX" && rule.weeks === 1 && coversDays(rule, other))
    return { atLeast: rule.atLeast!, atMost: atMost * daysOf(rule).length };
  return null;
}

function nothingLeft(
  rules: readonly Scoped[],
  catalogue: MatchedCatalogue,
  breaks: readonly string[],
): DocumentClash[] {
  if (catalogue.items.length === 0) return [];
  const all: ItemSet = new Set(catalogue.items.keys());
  return breaks.flatMap((breakKey): DocumentClash[] => {
    const isEmpty = (some: readonly Scoped[]) => leftAnywhere(all, [breakKey], some, catalogue).size === 0;
    for (const day of SCHOOL_DAYS) {
      const shutters = rules.filter(
        ({ rule }) =>
          (rule.kind === "EXCLUDE" || rule.kind === "ONLY") &&
          (rule.breaks === undefined || rule.breaks.includes(breakKey)) &&
          daysOf(rule).includes(day),
      );
      if (isEmpty(shutters)) return [{ kind: "NOTHING_LEFT", breakKey, by: irreducible(shutters, isEmpty) }];
    }
    return [];
  });
}

function apartAndTogether(
  rules: readonly Scoped[],
  catalogue: MatchedCatalogue,
  breaks: readonly string[],
): DocumentClash[] {
  const needed = rules.filter(
    (entry): entry is Scoped<RuleOf<"FREQUENCY">> =>
      entry.rule.kind === "FREQUENCY" && entry.rule.per === "BOX" && (entry.rule.atLeast ?? 0) >= 1,
  );
  const isWithin = (entry: Scoped<RuleOf<"FREQUENCY">>, matcher: Matcher, apart: Rule) => {
    const wanted = catalogue.setOf(entry.rule.matches);
    const set = catalogue.setOf(matcher);
    return wanted.size > 0 && [...wanted].every((item) => set.has(item)) && coversBreaks(entry.rule, apart, breaks);
  };
  return rules.flatMap((apart): DocumentClash[] => {
    const { rule } = apart;
    if (rule.kind !== "TOGETHER") return [];
    const firsts = needed.filter((entry) => meet(entry, apart) && isWithin(entry, rule.first, rule));
    const seconds = needed.filter((entry) => meet(entry, apart) && isWithin(entry, rule.second, rule));
    return firsts.flatMap((first) =>
      seconds
        .filter((second) => meet(first, second))
        .map((second) => ({
          kind: "APART_AND_TOGETHER" as const,
          first: first.ref,
          second: second.ref,
          apart: apart.ref,
        })),
    );
  });
}
