/** Free and added sugars of a food by its stated rule; the rules are explained at `foodSchema` in shared/catalogue.ts. */
import type { Food } from "../../../shared/catalogue.js";
import type { SugarRule } from "../../../shared/codes.js";
import { fail, ok, type Result } from "../result.js";

/** g per 100 g. */
interface Sugars {
  readonly freeSugarGrams: number;
  readonly addedSugarGrams: number;
}

export type SugarFault =
  /** The rule takes all sugars, and the table does not print them. */
  | { readonly kind: "SugarsUnknown"; readonly rule: SugarRule }
  /** More was stated as added than the table prints as all sugars. */
  | { readonly kind: "AddedAboveAll"; readonly addedGrams: number; readonly allGrams: number }
  | { readonly kind: "SugarsOffRule"; readonly rule: SugarRule; readonly stated: Sugars; readonly byRule: Sugars };

type Stated = Pick<Food, "sugarRule" | "freeSugarGrams" | "addedSugarGrams"> & {
  readonly nutrients: Pick<Food["nutrients"], "SUGAR">;
};

/** What the rule makes of the table's sugars; under ADDED_PART the stated added grams. */
function sugarsByRule({ sugarRule, addedSugarGrams, nutrients }: Stated): Result<Sugars, SugarFault> {
  const all = nutrients.SUGAR;
  switch (sugarRule) {
    case "INTACT":
    case "MILK_SUGAR":
      return ok({ freeSugarGrams: 0, addedSugarGrams: 0 });
    case "JUICE":
      return all === undefined
        ? fail({ kind: "SugarsUnknown", rule: sugarRule })
        : ok({ freeSugarGrams: all, addedSugarGrams: 0 });
    case "ALL_FREE":
      return all === undefined
        ? fail({ kind: "SugarsUnknown", rule: sugarRule })
        : ok({ freeSugarGrams: all, addedSugarGrams: all });
    case "ADDED_PART":
      return all !== undefined && addedSugarGrams > all
        ? fail({ kind: "AddedAboveAll", addedGrams: addedSugarGrams, allGrams: all })
        : ok({ freeSugarGrams: addedSugarGrams, addedSugarGrams });
  }
}

/** Whether a food's stated free and added sugars are those its rule gives. */
export function checkSugars(food: Stated): Result<void, SugarFault> {
  const byRule = sugarsByRule(food);
  if (!byRule.ok) return byRule;
  const { freeSugarGrams, addedSugarGrams } = food;
  const same = byRule.value.freeSugarGrams === freeSugarGrams && byRule.value.addedSugarGrams === addedSugarGrams;
  if (same) return ok(undefined);
  const stated = { freeSugarGrams, addedSugarGrams };
  return fail({ kind: "SugarsOffRule", rule: food.sugarRule, stated, byRule: byRule.value });
}
