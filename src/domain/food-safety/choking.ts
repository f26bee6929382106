/** Choking form by age on the day of the meal. Supports supervision; it does not replace it. */
import type { ServedForm } from "../../../shared/codes.js";
import type { ChokingRule } from "../brief.js";
import type { Food } from "../../../shared/catalogue.js";
import type { CutPlan } from "../week.js";

/** As much of a dish as form and class ask for. */
export interface ChokingSubject {
  readonly ingredients: readonly {
    readonly food: Pick<Food, "key" | "chokingClasses">;
    readonly form: ServedForm;
  }[];
}

export type ChokingVerdict =
  | { readonly allowed: true; readonly cuts: CutPlan[] }
  | { readonly allowed: false; readonly food: string; readonly rule: ChokingRule };

/** No piece of the food is left in these. A never-class is held to its own list all the same: chopped nuts get mixed in. */
const withoutPieces: readonly ServedForm[] = ["MIXED_IN", "GROUND", "MASHED"];

function isSafeForm(rule: ChokingRule, form: ServedForm): boolean {
  return rule.safeForms.includes(form) || (!rule.never && withoutPieces.includes(form));
}

/**
 * Judges a dish for a child of `ageYears` completed years. A rule applies below its age. An ingredient in a form its rule
 * does not call safe is allowed with the rule's cut, done when the box is packed; where no cut helps, the dish is out.
 * A class without a rule limits nothing. Cuts come one per food and instruction, in ingredient order.
 */
export function judgeChoking(ageYears: number, d: ChokingSubject, rules: readonly ChokingRule[]): ChokingVerdict {
  const cuts: CutPlan[] = [];
  for (const { food, form } of d.ingredients) {
    for (const rule of rules) {
      if (ageYears >= rule.underAgeYears || !food.chokingClasses.includes(rule.class) || isSafeForm(rule, form))
        continue;
      if (rule.never) return { allowed: false, food: food.key, rule };
      const known = cuts.some((cut) => cut.food === food.key && cut.cut === rule.cut);
      if (!known) cuts.push({ food: food.key, cut: rule.cut, source: rule.source });
    }
  }
  return { allowed: true, cuts };
}
