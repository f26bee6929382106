/**
 * A rule set as plain figures, for counting in the database over many households' boxes at once: each rule a bound on a sum,
 * and for each dish at a slot what it adds. Household labels and own dishes are not in it.
 */
import type { SlotCode } from "../../../shared/codes.js";
import type { CreditTable } from "../../../shared/credits.js";
import type { AmountUnit, Matcher, Rule, RuleSetDocument } from "../../../shared/rule-set.js";
import type { CatalogueIndex } from "../catalogue/derive.js";
import { createRuleTables, type RuleTables } from "./compile.js";
import { asFraction, fullDays } from "./limits.js";
import { energyFactorOf } from "./nutrient-in.js";

/** A bound on what items add up to. */
export interface CountedRule {
  /** Index into the document's rules; a rule with a minimum and a maximum of different sums stands twice. */
  readonly rule: number;
  readonly span: "ITEM" | "BOX" | "WEEK";
  /** TOGETHER: a box has something of both sums. REHEATED: items planned to be heated at school, whatever they are. */
  readonly measure: "SUM" | "DAYS" | "KINDS" | "TOGETHER" | "REHEATED";
  readonly sum: number;
  readonly second: number | null;
  readonly atLeast: number | null;
  readonly atMost: number | null;
  /** Over a week: divided by its days, so that no share of the limit is taken. */
  readonly mean: boolean;
  /** Limits are whole, and a share of one is rounded in the rule's favour. */
  readonly counts: boolean;
  readonly fullDays: number;
}

/** What a dish at a slot adds to a sum: something fixed, and so much for every gram, rounded down to whole steps, some times over. */
export interface Addend {
  readonly sum: number;
  readonly dish: string;
  readonly slot: SlotCode;
  readonly fixed: number;
  readonly perGram: number;
  /** 0: not rounded. */
  readonly step: number;
  readonly times: number;
  /** Only of sums that count kinds. */
  readonly kind: string | null;
}

export interface CountTables {
  readonly rules: readonly CountedRule[];
  readonly addends: readonly Addend[];
  /** Indices of rules that are not counted: they advise, look back further than a week, or speak of what no box lists. */
  readonly notCounted: readonly number[];
}

interface Portion {
  readonly fixed: number;
  readonly perGram: number;
  readonly step?: number;
  readonly times?: number;
}

export function countTables(document: RuleSetDocument, index: CatalogueIndex, credits: CreditTable): CountTables {
  const tables = createRuleTables([], credits);
  const items = index.dishes.flatMap((dish) => {
    const derived = index.derived(dish.key);
    return dish.slots.map((slot) => ({ derived, slot, number: tables.numberOf(derived, slot) }));
  });
  type Item = (typeof items)[number];
  const addends: Addend[] = [];
  const sums = new Map<string, number>();
  /** One sum for rules that ask the same. Over single items nothing is something: a minimum is asked of each. */
  const sumOf = (
    about: string,
    add: (item: Item) => readonly (Portion & { kind?: string })[],
    span?: CountedRule["span"],
  ): number => {
    const name = `${about} ${span === "ITEM" ? "each" : ""}`;
    const known = sums.get(name);
    if (known !== undefined) return known;
    const sum = sums.size;
    sums.set(name, sum);
    for (const item of items)
      for (const { fixed, perGram, step, times, kind } of add(item))
        if (fixed !== 0 || perGram !== 0 || span === "ITEM")
          addends.push({
            sum,
            dish: item.derived.dish.key,
            slot: item.slot,
            fixed,
            perGram,
            step: step ?? 0,
            times: times ?? 1,
            kind: kind ?? null,
          });
    return sum;
  };
  const one = [{ fixed: 1, perGram: 0 }];
  const meant = (matcher: Matcher) =>
    sumOf(`meant ${JSON.stringify(matcher)}`, ({ number }) => (tables.tableOf(matcher).at(number) === null ? [] : one));
  const notMeant = (matcher: Matcher) =>
    sumOf(`not ${JSON.stringify(matcher)}`, ({ number }) => (tables.tableOf(matcher).at(number) === null ? one : []));
  const kinds = (matcher: Matcher) =>
    sumOf(`kinds ${JSON.stringify(matcher)}`, ({ number }) =>
      (tables.tableOf(matcher).at(number)?.kinds ?? []).map((kind) => ({ fixed: 1, perGram: 0, kind })),
    );

  const counted = (rule: Rule): Omit<CountedRule, "rule" | "fullDays">[] | null => {
    if (rule.level === "ADVISE") return null;
    const plain = { second: null, mean: false, counts: true, atLeast: null, atMost: null } as const;
    const bounds = (from: { atLeast?: number | undefined; atMost?: number | undefined }) => ({
      atLeast: from.atLeast ?? null,
      atMost: from.atMost ?? null,
    });
    switch (rule.kind) {
      case "EXCLUDE":
        return [{ ...plain, span: "BOX", measure: "SUM", sum: meant(rule.matches), atMost: 0 }];
      case "ONLY":
        return [{ ...plain, span: "BOX", measure: "SUM", sum: notMeant(rule.matches), atMost: 0 }];
      case "FREQUENCY": {
        if (rule.per === "WEEK" && rule.weeks > 1) return null;
        const measure = rule.counts === "ITEMS" ? "SUM" : rule.counts;
        const sum = rule.counts === "KINDS" ? kinds(rule.matches) : meant(rule.matches);
        return [{ ...plain, span: rule.per, measure, sum, ...bounds(rule) }];
      }
      case "AMOUNT": {
        const { unit, matches } = rule;
        const add = ({ number }: Item) => {
          const table = tables.tableOf(matches);
          if (table.at(number) === null) return [];
          return [{ fixed: 0, perGram: table.perGram(unit, number).perGram, step: stepOf(unit, credits) }];
        };
        const sum = sumOf(`${unit} ${JSON.stringify(matches)}`, add, rule.per);
        return [{ ...plain, counts: false, span: rule.per, measure: "SUM", sum, ...bounds(rule) }];
      }
      case "SHARE":
        return shareSums(rule, tables).map(({ name, add, ...limits }) => ({
          ...plain,
          ...limits,
          counts: false,
          // A share is the same of any number of days.
          mean: true,
          span: "WEEK" as const,
          measure: "SUM" as const,
          sum: sumOf(name, add),
        }));
      case "NUTRIENT": {
        const span: CountedRule["span"] = rule.per === "WEEK_MEAN" ? "WEEK" : rule.per;
        const limits = [
          { atLeast: rule.atLeast ?? null, atMost: null },
          { atLeast: null, atMost: rule.atMost ?? null },
        ].filter(({ atLeast, atMost }) => atLeast !== null || atMost !== null);
        const made = limits.map(({ atLeast, atMost }) => {
          const figure = atLeast === null ? "most" : "known";
          const name = `${rule.nutrient} ${figure} ${rule.as} ${rule.as === "AMOUNT" ? "" : (atLeast ?? atMost)}`;
          const factor = energyFactorOf(rule.nutrient);
          if (rule.as === "PERCENT_OF_ENERGY" && factor === null) return null;
          const add = ({ derived, number }: Item) => {
            const amount = tables.nutrient(rule.nutrient, number)[figure];
            if (rule.as === "AMOUNT") return [{ fixed: 0, perGram: amount / derived.grams }];
            const energy = tables.nutrient("ENERC_KCAL", number).known;
            return [{ fixed: 0, perGram: (factor! * amount - ((atLeast ?? atMost)! / 100) * energy) / derived.grams }];
          };
          const sum = sumOf(name, add, span);
          const asPercent = rule.as === "PERCENT_OF_ENERGY";
          return {
            ...plain,
            counts: false,
            mean: span === "WEEK",
            span,
            measure: "SUM" as const,
            sum,
            atLeast: asPercent && atLeast !== null ? 0 : atLeast,
            atMost: asPercent && atMost !== null ? 0 : atMost,
          };
        });
        return made.every((row) => row !== null) ? made : null;
      }
      case "TOGETHER":
        return [
          { ...plain, span: "BOX", measure: "TOGETHER", sum: meant(rule.first), second: meant(rule.second), atMost: 0 },
        ];
      case "SERVING": {
        const rows: Omit<CountedRule, "rule" | "fullDays">[] = [];
        if (rule.fingerFoodOnly === true) {
          const sum = sumOf("cutlery", ({ derived }) => (derived.dish.cutlery === "NONE" ? [] : one));
          rows.push({ ...plain, span: "BOX", measure: "SUM", sum, atMost: 0 });
        }
        if (rule.noReheating === true)
          rows.push({ ...plain, span: "BOX", measure: "REHEATED", sum: sumOf("reheated", () => []), atMost: 0 });
        return rows.length > 0 ? rows : null;
      }
    }
  };

  const rules: CountedRule[] = [];
  const notCounted: number[] = [];
  for (const [at, rule] of document.rules.entries()) {
    const rows = counted(rule);
    if (rows === null) notCounted.push(at);
    else rules.push(...rows.map((row) => ({ ...row, rule: at, fullDays: fullDays(rule) })));
  }
  return { rules, addends, notCounted };
}

const stepOf = (unit: AmountUnit, { steps }: CreditTable): number =>
  unit === "GRAMS" || unit === "ML" ? 0 : steps[unit];

type ShareRule = Extract<Rule, { kind: "SHARE" }>;

/** part / whole >= r as part - r x whole >= 0; only items of the whole count. Credits are rounded down before they are shared. */
function shareSums(rule: ShareRule, tables: RuleTables) {
  const { unit, part, whole } = rule;
  const text = JSON.stringify([unit, part, whole]);
  const shares = [
    { share: asFraction(rule.atLeast), atLeast: 0, atMost: null },
    { share: asFraction(rule.atMost), atLeast: null, atMost: 0 },
  ];
  return shares.flatMap(({ share, ...limits }) =>
    share === undefined
      ? []
      : [
          {
            ...limits,
            name: `share ${share} ${text}`,
            add: ({ number }: { readonly number: number }): readonly Portion[] => {
              const all = tables.tableOf(whole);
              const some = tables.tableOf(part);
              if (all.at(number) === null) return [];
              if (unit === "ITEMS") return [{ fixed: (some.at(number) === null ? 0 : 1) - share, perGram: 0 }];
              const step = stepOf(unit, tables.credits);
              return [
                { fixed: 0, perGram: some.perGram(unit, number).perGram, step },
                { fixed: 0, perGram: all.perGram(unit, number).perGram, step, times: -share },
              ];
            },
          },
        ],
  );
}
