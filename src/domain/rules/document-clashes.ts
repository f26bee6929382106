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
import { addDays, weekdayOf } from "../calendar/dates.js";
import type { CatalogueIndex } from "../catalogue/derive.js";
import { asFraction } from "./limits.js";
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
      /** Rules that shut out what would count for the minimum alone. */
      readonly by: readonly RuleRef[];
    }
  /** The same of what is asked of single items or of a share: kept only where there is none of it, which is no fault by itself. */
  | {
      readonly kind: "ONLY_WITHOUT";
      readonly minimum: RuleRef;
      readonly maximum: RuleRef;
      readonly atLeast: number;
      readonly atMost: number;
    }
  /** More days, kinds or items are asked for than there are. */
  | {
      readonly kind: "MORE_THAN_THERE_ARE";
      readonly minimum: RuleRef;
      readonly atLeast: number;
      readonly left: number;
      /** Rules that shut out the others. */
      readonly by: readonly RuleRef[];
    }
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
const refOf = ({ ref }: Scoped): RuleRef => ref;
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
  const all = documents.flatMap(scopedRules);
  const named = breakKeys.length > 0 ? breakKeys : [...new Set(all.flatMap(({ rule }) => rule.breaks ?? []))];
  const breaks = named.length > 0 ? named : [""];
  // A rule for breaks that are not there asks nothing.
  const rules = all.filter(({ rule }) => rule.breaks === undefined || rule.breaks.some((key) => breaks.includes(key)));
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

const daysOf = ({ weekdays }: Rule): readonly WeekdayCode[] =>
  weekdays === undefined ? SCHOOL_DAYS : SCHOOL_DAYS.filter((day) => weekdays.includes(day));

/** Is there a day on which all of them hold or, of limits over a week, a whole week. */
function holdTogether(rules: readonly Scoped[], over: "BOX" | "WEEK"): boolean {
  const days = SCHOOL_DAYS.filter((day) => rules.every(({ rule }) => daysOf(rule).includes(day)));
  const from = rules.map((rule) => rule.from).reduce((a, b) => (a > b ? a : b));
  const until = rules.map((rule) => rule.until).reduce((a, b) => (a < b ? a : b));
  if (days.length === 0 || until < from) return false;
  const dates = Array.from({ length: 7 }, (_, at) => addDays(from, at));
  return over === "BOX"
    ? dates.some((date) => date <= until && days.includes(weekdayOf(date)))
    : dates.some((date) => weekdayOf(date) === "MONDAY" && addDays(date, 4) <= until);
}

/** Does the second hold wherever the first does. */
const coversDays = (first: Rule, second: Rule) => daysOf(first).every((day) => daysOf(second).includes(day));
const breaksOf = (rule: Rule, breaks: readonly string[]) =>
  rule.breaks === undefined ? breaks : breaks.filter((key) => rule.breaks!.includes(key));
const coversBreaks = (first: Rule, second: Rule, breaks: readonly string[]) =>
  second.breaks === undefined || breaksOf(first, breaks).every((key) => second.breaks!.includes(key));

/** Kept for the next document; a process sees more matchers than it can keep. */
const MOST_MATCHERS = 5000;

export function matchCatalogue(index: CatalogueIndex): MatchedCatalogue {
  const items = index.dishes.flatMap((dish) => dish.slots.map((slot) => ({ dish: dish.key, slot })));
  const known = new Map<string, ItemSet>();
  const asItem = (at: number) => ({ derived: index.derived(items[at]!.dish), slot: items[at]!.slot, labels: [] });
  const setOf = (matcher: Matcher): ItemSet => {
    const key = textOf(matcher);
    if (known.size >= MOST_MATCHERS) known.clear();
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
function irreducible(rules: readonly Scoped[], tooMany: (some: readonly Scoped[]) => boolean): readonly Scoped[] {
  let kept = [...rules];
  for (const rule of rules) {
    const without = kept.filter((other) => other !== rule);
    if (tooMany(without)) kept = without;
  }
  return kept;
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
      const over = rule.per;
      const wanted = catalogue.setOf(rule.matches);
      const shutters = shuttersOf(minimum, rules).filter((other) => holdTogether([minimum, other], over));
      const emptied = groupEmptied(minimum, over, wanted, shutters, catalogue, breaks);
      if (emptied.length > 0) return emptied;
      const most = (some: readonly Scoped[]) =>
        mostThereAre(rule, catalogue, leftAnywhere(wanted, breaksOf(rule, breaks), some, catalogue));
      if (wanted.size > 0 && most(shutters) < rule.atLeast) {
        const by = irreducible(shutters, (some) => most(some) < rule.atLeast!);
        if (holdTogether([minimum, ...by], over))
          return [
            { kind: "MORE_THAN_THERE_ARE", minimum: ref, atLeast: rule.atLeast, left: most(by), by: by.map(refOf) },
          ];
      }
      return maximaBelow(minimum, rule.atLeast, rules, (other) =>
        other.rule.kind === "FREQUENCY" && other.rule.atMost !== undefined
          ? frequencyPair(minimum, other as Scoped<RuleOf<"FREQUENCY">>, other.rule.atMost, rules, catalogue, breaks)
          : null,
      );
    }
    case "AMOUNT": {
      if (rule.atLeast === undefined || rule.atLeast <= 0) return [];
      const over = rule.per === "WEEK" ? "WEEK" : "BOX";
      const shutters = shuttersOf(minimum, rules).filter((other) => holdTogether([minimum, other], over));
      const emptied =
        rule.per === "ITEM"
          ? []
          : groupEmptied(minimum, over, catalogue.setOf(rule.matches), shutters, catalogue, breaks);
      if (emptied.length > 0) return emptied;
      return maximaBelow(minimum, rule.atLeast, rules, (other) =>
        other.rule.kind === "AMOUNT" &&
        other.rule.unit === rule.unit &&
        other.rule.per === rule.per &&
        other.rule.atMost !== undefined &&
        (rule.per !== "WEEK" || coversDays(rule, other.rule)) &&
        coversBreaks(rule, other.rule, breaks) &&
        textOf(other.rule.matches) === textOf(rule.matches)
          ? { atLeast: rule.atLeast!, atMost: other.rule.atMost, over, onlyWithout: rule.per === "ITEM" }
          : null,
      );
    }
    case "SHARE":
      if (rule.atLeast === undefined) return [];
      return maximaBelow(minimum, rule.atLeast, rules, (other) =>
        other.rule.kind === "SHARE" &&
        other.rule.unit === rule.unit &&
        other.rule.atMost !== undefined &&
        sameDays(rule, other.rule) &&
        sameBreaks(rule, other.rule, breaks) &&
        textOf(other.rule.part) === textOf(rule.part) &&
        textOf(other.rule.whole) === textOf(rule.whole)
          ? {
              atLeast: asFraction(rule.atLeast)!,
              atMost: asFraction(other.rule.atMost)!,
              over: "WEEK",
              onlyWithout: true,
            }
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
        (rule.per !== "WEEK_MEAN" || sameDays(rule, other.rule)) &&
        sameBreaks(rule, other.rule, breaks)
          ? { atLeast: rule.atLeast!, atMost: other.rule.atMost, over: rule.per === "WEEK_MEAN" ? "WEEK" : "BOX" }
          : null,
      );
    case "EXCLUDE":
    case "ONLY":
    case "TOGETHER":
    case "SERVING":
      return [];
  }
}

function groupEmptied(
  minimum: Scoped,
  over: "BOX" | "WEEK",
  wanted: ItemSet,
  shutters: readonly Scoped[],
  catalogue: MatchedCatalogue,
  breaks: readonly string[],
): DocumentClash[] {
  const at = breaksOf(minimum.rule, breaks);
  const isEmptied = (some: readonly Scoped[]) => leftAnywhere(wanted, at, some, catalogue).size === 0;
  if (wanted.size === 0 || !isEmptied(shutters)) return [];
  const by = irreducible(shutters, isEmptied);
  return holdTogether([minimum, ...by], over)
    ? [{ kind: "GROUP_EMPTIED", minimum: minimum.ref, by: by.map(refOf) }]
    : [];
}

const sameDays = (a: Rule, b: Rule) => coversDays(a, b) && coversDays(b, a);
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

interface Pair {
  /** Over one span. */
  readonly atLeast: number;
  readonly atMost: number;
  readonly over: "BOX" | "WEEK";
  readonly onlyWithout?: boolean;
  /** Rules without which the two would not meet. */
  readonly by?: readonly Scoped[];
}

function maximaBelow(
  minimum: Scoped,
  atLeast: number,
  rules: readonly Scoped[],
  pair: (other: Scoped) => Pair | null,
): DocumentClash[] {
  return rules.flatMap((other): DocumentClash[] => {
    const found = pair(other);
    if (found === null || found.atLeast <= found.atMost) return [];
    if (!holdTogether([minimum, other, ...(found.by ?? [])], found.over)) return [];
    // Nobody writes one rule that contradicts itself to say that there shall be none of it.
    const atMost = (other.rule as { readonly atMost?: number }).atMost!;
    const pairOf = { minimum: minimum.ref, maximum: other.ref, atLeast, atMost };
    return found.onlyWithout && other !== minimum
      ? [{ kind: "ONLY_WITHOUT", ...pairOf }]
      : [{ kind: "ABOVE_MAXIMUM", ...pairOf, by: (found.by ?? []).map(refOf) }];
  });
}

/**
 * Both bounds over the same span, where everything that can meet the minimum counts for the maximum too: a box's minimum five
 * times over for a week's maximum, a week's minimum against a box's maximum five times over.
 */
function frequencyPair(
  minimum: Scoped,
  maximum: Scoped<RuleOf<"FREQUENCY">>,
  atMost: number,
  rules: readonly Scoped[],
  catalogue: MatchedCatalogue,
  breaks: readonly string[],
): Pair | null {
  const rule = minimum.rule as RuleOf<"FREQUENCY">;
  const other = maximum.rule;
  const atLeast = rule.atLeast!;
  if (rule.counts !== other.counts || !coversBreaks(rule, other, breaks) || !coversDays(rule, other)) return null;
  const same = rule.per === other.per && (rule.per === "BOX" || rule.weeks === other.weeks);
  const over = rule.per === "BOX" && other.per === "BOX" ? "BOX" : "WEEK";
  // A kind counts once a week however often it comes, so that only like spans and like matchers compare.
  if (rule.counts === "KINDS")
    return same && textOf(rule.matches) === textOf(other.matches) ? { atLeast, atMost, over } : null;
  const counted = catalogue.setOf(other.matches);
  const shutters = shuttersOf(minimum, rules).filter((by) => holdTogether([minimum, maximum, by], over));
  const isCounted = (some: readonly Scoped[]) =>
    [...leftAnywhere(catalogue.setOf(rule.matches), breaksOf(rule, breaks), some, catalogue)].every((item) =>
      counted.has(item),
    );
  if (!isCounted(shutters)) return null;
  const by = irreducible(shutters, isCounted);
  const days = daysOf(rule).length;
  if (same) return { atLeast, atMost, over, by };
  if (rule.per === "BOX" && other.weeks === 1) return { atLeast: atLeast * days, atMost, over, by };
  if (other.per === "BOX" && rule.weeks === 1) return { atLeast, atMost: atMost * days, over, by };
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
      if (!isEmpty(shutters)) continue;
      const by = irreducible(shutters, isEmpty);
      if (holdTogether(by, "BOX")) return [{ kind: "NOTHING_LEFT", breakKey, by: by.map(refOf) }];
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
    const firsts = needed.filter((entry) => isWithin(entry, rule.first, rule));
    const seconds = needed.filter((entry) => isWithin(entry, rule.second, rule));
    return firsts.flatMap((first) =>
      seconds
        .filter((second) => holdTogether([first, second, apart], "BOX"))
        .map((second) => ({
          kind: "APART_AND_TOGETHER" as const,
          first: first.ref,
          second: second.ref,
          apart: apart.ref,
        })),
    );
  });
}
