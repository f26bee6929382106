/** Rules that one item can break on its own: EXCLUDE, ONLY, NUTRIENT per item, SERVING. Counts and sums over a box or week are judged elsewhere. */
import type { Rule, RuleKind, RuleNutrient } from "../../../shared/rule-set.js";
import type { DerivedDish } from "../catalogue/derive.js";
import { kcalPerGram } from "../nutrition/reference-values.js";
import { appliesAtBreak, type RuleInForce } from "./in-force.js";
import { matches, type MatchItem } from "./match.js";

export type ItemRuleFailure = { readonly ruleSet: number; readonly ruleId: string; readonly kind: RuleKind };

type NutrientRule = Extract<Rule, { kind: "NUTRIENT" }>;

/** Only what carries energy can be a share of it. */
const energyFactor: Partial<Record<RuleNutrient, number>> = kcalPerGram;

/** Amount in a portion for a minimum and for a maximum, and whether every ingredient's figure was there. */
function amountIn(
  derived: DerivedDish,
  nutrient: RuleNutrient,
  scale: number,
): { known: number; most: number; complete: boolean } {
  if (nutrient === "FREE_SUGAR" || nutrient === "ADDED_SUGAR") {
    const grams = (nutrient === "FREE_SUGAR" ? derived.freeSugarGrams : derived.addedSugarGrams) * scale;
    return { known: grams, most: grams, complete: true };
  }
  return {
    known: (derived.nutrients[nutrient] ?? 0) * scale,
    most: (derived.nutrientsAtMost[nutrient] ?? 0) * scale,
    complete: !derived.missing.some((gap) => gap.nutrient === nutrient),
  };
}

/** A minimum counts what is known to be left; a maximum counts all there may be and cannot be met by a missing figure. */
function breaksNutrientRule(rule: NutrientRule, derived: DerivedDish, portionGrams: number): boolean {
  const scale = portionGrams / derived.grams;
  const { known, most, complete } = amountIn(derived, rule.nutrient, scale);
  let [least, highest] = [known, most];
  let certain = complete;
  if (rule.as === "PERCENT_OF_ENERGY") {
    const factor = energyFactor[rule.nutrient];
    const energy = amountIn(derived, "ENERC_KCAL", scale);
    if (factor === undefined || energy.known === 0) return true;
    [least, highest] = [(100 * factor * known) / energy.known, (100 * factor * most) / energy.known];
    certain = complete && energy.complete;
  }
  if (rule.atLeast !== undefined && least < rule.atLeast) return true;
  return rule.atMost !== undefined && (highest > rule.atMost || !certain);
}

function breaksRule(rule: Rule, item: MatchItem, portionGrams: number): boolean {
  switch (rule.kind) {
    case "EXCLUDE":
      return matches(rule.matches, item);
    case "ONLY":
      return !matches(rule.matches, item);
    case "NUTRIENT":
      return rule.per === "ITEM" && breaksNutrientRule(rule, item.derived, portionGrams);
    case "SERVING":
      // Litter and glass are about packaging and minutes about the child: no dish breaks them.
      return rule.fingerFoodOnly === true && item.derived.dish.cutlery !== "NONE";
    case "FREQUENCY":
    case "AMOUNT":
    case "SHARE":
    case "TOGETHER":
      return false;
  }
}

/**
 * The rules an item breaks on its own at a break, those that forbid apart from those that advise, in the order given.
 * `portionGrams` is the mass this child gets.
 */
export function judgeItem(
  rules: readonly RuleInForce[],
  item: MatchItem,
  breakKey: string,
  portionGrams: number,
): { forbidden: ItemRuleFailure[]; advised: ItemRuleFailure[] } {
  const forbidden: ItemRuleFailure[] = [];
  const advised: ItemRuleFailure[] = [];
  for (const { ruleSet, rule } of rules) {
    if (!appliesAtBreak(rule, breakKey) || !breaksRule(rule, item, portionGrams)) continue;
    (rule.level === "FORBID" ? forbidden : advised).push({ ruleSet, ruleId: rule.id, kind: rule.kind });
  }
  return { forbidden, advised };
}
