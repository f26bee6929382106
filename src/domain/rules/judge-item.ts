/**
 * Rules that one item can break on its own: EXCLUDE, ONLY, AMOUNT and NUTRIENT per item, SERVING. Counts and sums over a box or
 * a week are judged elsewhere.
 */
import type { AmountUnit, Matcher, Rule, RuleKind } from "../../../shared/rule-set.js";
import type { DerivedDish } from "../catalogue/derive.js";
import type { RuleTables } from "./compile.js";
import { appliesAtBreak, type RuleInForce } from "./in-force.js";
import type { MatchItem } from "./match.js";
import { energyFactorOf, nutrientIn } from "./nutrient-in.js";

export type ItemRuleFailure = { readonly ruleSet: number; readonly ruleId: string; readonly kind: RuleKind };

type RuleOf<K extends RuleKind> = Extract<Rule, { kind: K }>;

/** A minimum counts what is known to be left; a maximum counts all there may be and cannot be met by a missing figure. */
function breaksNutrientRule(rule: RuleOf<"NUTRIENT">, derived: DerivedDish, portionGrams: number): boolean {
  const scale = portionGrams / derived.grams;
  const { known, most, missing } = nutrientIn(derived, rule.nutrient);
  let [least, highest] = [known * scale, most * scale];
  let certain = missing.length === 0;
  if (rule.as === "PERCENT_OF_ENERGY") {
    const factor = energyFactorOf(rule.nutrient);
    const energy = nutrientIn(derived, "ENERC_KCAL");
    if (factor === null || energy.known === 0) return true;
    [least, highest] = [(100 * factor * known) / energy.known, (100 * factor * most) / energy.known];
    certain &&= energy.missing.length === 0;
  }
  if (rule.atLeast !== undefined && least < rule.atLeast) return true;
  return rule.atMost !== undefined && (highest > rule.atMost || !certain);
}

/** An amount per item is asked of the items it means; a maximum cannot be met by a food of which the unit is not known. */
function breaksAmountRule(rule: RuleOf<"AMOUNT">, item: MatchItem, portionGrams: number, tables: RuleTables): boolean {
  const table = tables.tableOf(rule.matches);
  const number = tables.numberOf(item.derived, item.slot);
  if (table.at(number) === null) return false;
  const amount = table.amount(rule.unit, number, portionGrams);
  if (rule.atLeast !== undefined && amount < rule.atLeast - 1e-9) return true;
  if (rule.atMost === undefined) return false;
  return amount > rule.atMost + 1e-9 || table.perGram(rule.unit, number).unknown.length > 0;
}

function breaksRule(rule: Rule, item: MatchItem, portionGrams: number, tables: RuleTables): boolean {
  switch (rule.kind) {
    case "EXCLUDE":
      return isMeant(rule.matches, item, tables);
    case "ONLY":
      return !isMeant(rule.matches, item, tables);
    case "NUTRIENT":
      return rule.per === "ITEM" && breaksNutrientRule(rule, item.derived, portionGrams);
    case "AMOUNT":
      return rule.per === "ITEM" && breaksAmountRule(rule, item, portionGrams, tables);
    case "SERVING":
      // Litter and glass are about packaging and minutes about the child: no dish breaks them.
      return rule.fingerFoodOnly === true && item.derived.dish.cutlery !== "NONE";
    case "FREQUENCY":
    case "SHARE":
    case "TOGETHER":
      return false;
  }
}

const isMeant = (matcher: Matcher, { derived, slot }: MatchItem, tables: RuleTables): boolean =>
  tables.tableOf(matcher).at(tables.numberOf(derived, slot)) !== null;

/**
 * The rules an item breaks on its own at a break, those that forbid apart from those that advise, in the order given.
 * `portionGrams` is the mass this child gets; the labels that count are those of `tables`.
 */
export function judgeItem(
  rules: readonly RuleInForce[],
  item: MatchItem,
  breakKey: string,
  portionGrams: number,
  tables: RuleTables,
): { forbidden: ItemRuleFailure[]; advised: ItemRuleFailure[] } {
  const forbidden: ItemRuleFailure[] = [];
  const advised: ItemRuleFailure[] = [];
  for (const { ruleSet, rule } of rules) {
    if (!appliesAtBreak(rule, breakKey) || !breaksRule(rule, item, portionGrams, tables)) continue;
    (rule.level === "FORBID" ? forbidden : advised).push({ ruleSet, ruleId: rule.id, kind: rule.kind });
  }
  return { forbidden, advised };
}

/** Whether a rule can shut out an item by itself: by what it is, or by a figure of it that is missing. */
export function canShutOutItem(rule: Rule): boolean {
  switch (rule.kind) {
    case "EXCLUDE":
    case "ONLY":
    case "NUTRIENT":
    case "SERVING":
      return true;
    case "AMOUNT":
      return rule.per === "ITEM" || (rule.unit !== "GRAMS" && rule.atMost !== undefined);
    case "SHARE":
      return rule.unit !== "GRAMS" && rule.unit !== "ITEMS";
    case "FREQUENCY":
    case "TOGETHER":
      return false;
  }
}

/** Whether no week with the item could be held to a rule over a box or a week, for want of a figure. */
function lacksFigure(rule: Rule, item: MatchItem, tables: RuleTables): boolean {
  const unknownOf = (unit: AmountUnit, matcher: Matcher): readonly string[] =>
    tables.tableOf(matcher).perGram(unit, tables.numberOf(item.derived, item.slot)).unknown;
  switch (rule.kind) {
    case "NUTRIENT":
      // A maximum needs every figure of every item, and so does the energy that a minimum share is divided by.
      return item.derived.missing.some(
        ({ nutrient }) =>
          (rule.atMost !== undefined && nutrient === rule.nutrient) ||
          (rule.atLeast !== undefined && rule.as === "PERCENT_OF_ENERGY" && nutrient === "ENERC_KCAL"),
      );
    case "AMOUNT":
      return rule.atMost !== undefined && unknownOf(rule.unit, rule.matches).length > 0;
    case "SHARE": {
      const { unit } = rule;
      if (unit === "ITEMS" || !isMeant(rule.whole, item, tables)) return false;
      // Unknown in the whole it can lower the share, unknown in the part raise it.
      return (
        (rule.atLeast !== undefined && unknownOf(unit, rule.whole).length > 0) ||
        (rule.atMost !== undefined && unknownOf(unit, rule.part).length > 0)
      );
    }
    case "EXCLUDE":
    case "ONLY":
    case "FREQUENCY":
    case "TOGETHER":
    case "SERVING":
      return false;
  }
}

/** The first forbidding rule over a box or a week that nobody could hold this item to. */
export function findUnknownFigure(
  rules: readonly RuleInForce[],
  item: MatchItem,
  breakKey: string,
  tables: RuleTables,
): ItemRuleFailure | undefined {
  for (const { ruleSet, rule } of rules) {
    if (rule.level !== "FORBID" || !appliesAtBreak(rule, breakKey)) continue;
    if ((rule.kind === "NUTRIENT" || rule.kind === "AMOUNT") && rule.per === "ITEM") continue;
    if (lacksFigure(rule, item, tables)) return { ruleSet, ruleId: rule.id, kind: rule.kind };
  }
  return undefined;
}
