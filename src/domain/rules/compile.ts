/** Rule documents made fast: what a matcher means in a dish at a slot is worked out once, and judging looks it up. */
import { slotCode, type SlotCode } from "../../../shared/codes.js";
import type { CreditTable } from "../../../shared/credits.js";
import type { AmountUnit, Matcher, RuleNutrient, RuleSetDocument } from "../../../shared/rule-set.js";
import type { LabelBrief } from "../brief.js";
import type { CatalogueIndex, DerivedDish } from "../catalogue/derive.js";
import { amountPerGram, roundCredit, type AmountPerGram } from "./credits.js";
import { meantBy, type Meant } from "./match.js";
import { nutrientIn, type NutrientIn } from "./nutrient-in.js";

/** What a matcher means in one dish at one slot. */
export interface MeantHere {
  readonly meant: Meant;
  /** Food kinds among the ingredients meant, the one with most grams first. */
  readonly kinds: readonly string[];
}

/** One matcher over numbered items: a dish at a slot, see `RuleTables.numberOf`. */
export interface MatcherTable {
  /** Null when the matcher does not mean the item. */
  at(item: number): MeantHere | null;
  /** Zero and known when the matcher does not mean the item. */
  perGram(unit: AmountUnit, item: number): AmountPerGram;
  /** What a portion of so many grams brings, rounded down to the unit's steps. */
  amount(unit: AmountUnit, item: number, grams: number): number;
}

export interface RuleTables {
  readonly credits: CreditTable;
  /** The same number for the same dish and slot; dishes are told apart by their derivation, which an index keeps. */
  numberOf(derived: DerivedDish, slot: SlotCode): number;
  tableOf(matcher: Matcher): MatcherTable;
  /** Of the reference portion, whatever the slot. */
  nutrient(nutrient: RuleNutrient, item: number): NutrientIn;
}

const SLOTS = slotCode.options.length;
const slotNumber = new Map(slotCode.options.map((slot, number) => [slot, number]));
const nothing: AmountPerGram = { perGram: 0, unknown: [] };

function kindsOf({ ingredients }: Meant): string[] {
  if (ingredients.length === 1) return [ingredients[0]!.food.kind];
  const grams = new Map<string, number>();
  for (const { food, grams: amount } of ingredients) grams.set(food.kind, (grams.get(food.kind) ?? 0) + amount);
  return [...grams].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1)).map(([kind]) => kind);
}

/** @param labels those on record in the household, carried over to what is made of the labelled food */
export function createRuleTables(labels: readonly LabelBrief[], credits: CreditTable): RuleTables {
  const numbers = new Map<DerivedDish, number>();
  const dishes: DerivedDish[] = [];
  const tables = new Map<Matcher, MatcherTable>();
  const alike = new Map<string, MatcherTable>();
  const nutrients: Partial<Record<RuleNutrient, (NutrientIn | undefined)[]>> = {};
  const compileMatcher = (matcher: Matcher): MatcherTable => {
    const here: (MeantHere | null | undefined)[] = [];
    const amounts: Partial<Record<AmountUnit, (AmountPerGram | undefined)[]>> = {};
    const at = (item: number): MeantHere | null => {
      const known = here[item];
      if (known !== undefined) return known;
      const derived = dishes[Math.floor(item / SLOTS)]!;
      const meant = meantBy(matcher, { derived, slot: slotCode.options[item % SLOTS]!, labels });
      const found = meant === null ? null : { meant, kinds: kindsOf(meant) };
      here[item] = found;
      return found;
    };
    const perGram = (unit: AmountUnit, item: number): AmountPerGram => {
      const column = (amounts[unit] ??= []);
      const known = column[item];
      if (known !== undefined) return known;
      const found = at(item);
      const amount =
        found === null ? nothing : amountPerGram(unit, dishes[Math.floor(item / SLOTS)]!, found.meant, credits);
      column[item] = amount;
      return amount;
    };
    return {
      at,
      perGram,
      amount: (unit, item, grams) => roundCredit(unit, perGram(unit, item).perGram * grams, credits),
    };
  };
  return {
    credits,
    numberOf(derived, slot) {
      let number = numbers.get(derived);
      if (number === undefined) {
        number = dishes.push(derived) - 1;
        numbers.set(derived, number);
      }
      return number * SLOTS + slotNumber.get(slot)!;
    },
    tableOf(matcher) {
      const known = tables.get(matcher);
      if (known !== undefined) return known;
      // A standard says the same of each age anew; what is said alike is worked out once.
      const text = JSON.stringify(matcher);
      const table = alike.get(text) ?? compileMatcher(matcher);
      alike.set(text, table);
      tables.set(matcher, table);
      return table;
    },
    nutrient(nutrient, item) {
      const column = (nutrients[nutrient] ??= []);
      const dish = Math.floor(item / SLOTS);
      return (column[dish] ??= nutrientIn(dishes[dish]!, nutrient));
    },
  };
}

export interface CompiledRuleSets {
  readonly documents: readonly RuleSetDocument[];
  readonly index: CatalogueIndex;
  readonly tables: RuleTables;
}

/**
 * Rule sets over a catalogue. What is asked is worked out when it is first asked for and kept, so one compilation serves every
 * week judged by the same documents, labels and credits. `index` has to give the same derivation of a dish every time.
 */
export function compileRuleSets(
  documents: readonly RuleSetDocument[],
  index: CatalogueIndex,
  labels: readonly LabelBrief[],
  credits: CreditTable,
): CompiledRuleSets {
  return { documents, index, tables: createRuleTables(labels, credits) };
}
