/** What is not known about a food or a dish, and what that keeps from happening. Facts; the sentences are said elsewhere. */
import type { Food } from "../../../shared/catalogue.js";
import { nutrientTag, type NutrientTag } from "../../../shared/codes.js";
import { isOwnKey } from "../../../shared/own-catalogue.js";
import type { Rule, RuleSetDocument } from "../../../shared/rule-set.js";
import type { LabelBrief } from "../brief.js";
import { labelledAs, type FlatIngredient } from "./derive.js";

/** A rule that cannot be judged without the figure. */
export interface NeedingRule {
  readonly ruleSet: string;
  readonly rule: string;
  readonly level: Rule["level"];
  /** It has an upper bound: what cannot be counted is refused. */
  readonly refuses: boolean;
}

export type MissingFact =
  /** Nobody has read its label: unread for everybody who avoids anything. */
  | { readonly kind: "LABEL"; readonly foods: readonly string[] }
  | {
      readonly kind: "NUTRIENT";
      readonly foods: readonly string[];
      readonly nutrient: NutrientTag;
      readonly rules: readonly NeedingRule[];
    }
  /** No water activity or pH: the whole counts as needing cold. */
  | { readonly kind: "HOLDING"; readonly foods: readonly string[] }
  /** Added sugars are not stated: all sugars count as free. */
  | { readonly kind: "FREE_SUGAR"; readonly foods: readonly string[] }
  | { readonly kind: "DENSITY"; readonly foods: readonly string[] };

function rulesThatNeed(nutrient: NutrientTag, documents: readonly RuleSetDocument[]): NeedingRule[] {
  return documents.flatMap((set) =>
    set.rules.flatMap((rule): NeedingRule[] => {
      if (rule.kind !== "NUTRIENT") return [];
      const asked = rule.nutrient === nutrient || (rule.as === "PERCENT_OF_ENERGY" && nutrient === "ENERC_KCAL");
      if (!asked) return [];
      return [{ ruleSet: set.title, rule: rule.says, level: rule.level, refuses: rule.atMost !== undefined }];
    }),
  );
}

/** Tags that no plan, rule set of ours or label asks for by itself. */
const unasked: readonly NutrientTag[] = ["WATER", "FAMS", "FAPU"];

/**
 * What is missing in a food, or in the ingredients of a dish: labels that nobody has read, figures with the rules in force that
 * need them, what holding would need. An own food's density and free sugars are asked for, a reference row's are as they are.
 * @param documents every rule set in force for one of the household's children
 */
export function whatIsMissing(
  ingredients: readonly Pick<FlatIngredient, "food" | "bought">[],
  labels: readonly LabelBrief[],
  documents: readonly RuleSetDocument[],
): MissingFact[] {
  const foods = [...new Map(ingredients.map(({ food }) => [food.key, food])).values()];
  const keysWhere = (test: (food: Food) => boolean): string[] => foods.filter(test).map(({ key }) => key);
  const read = new Set(labels.map(({ food }) => food));
  const labelled = ingredients.flatMap((ingredient) => labelledAs(ingredient) ?? []);
  const facts: MissingFact[] = [
    { kind: "LABEL", foods: [...new Set(labelled)].filter((key) => !read.has(key)).sort() },
    ...nutrientTag.options
      .filter((nutrient) => !unasked.includes(nutrient) || rulesThatNeed(nutrient, documents).length > 0)
      .map((nutrient): MissingFact => ({
        kind: "NUTRIENT",
        nutrient,
        foods: keysWhere((food) => food.nutrients[nutrient] === undefined),
        rules: rulesThatNeed(nutrient, documents),
      })),
    { kind: "HOLDING", foods: keysWhere((food) => food.waterActivity === null && food.ph === null) },
    {
      kind: "FREE_SUGAR",
      foods: keysWhere(
        ({ key, sugarRule, freeSugarGrams }) => isOwnKey(key) && sugarRule === "ALL_FREE" && freeSugarGrams > 0,
      ),
    },
    { kind: "DENSITY", foods: keysWhere(({ key, densityGramsPerMl }) => isOwnKey(key) && densityGramsPerMl === null) },
  ];
  return facts.filter((fact) => fact.foods.length > 0);
}
