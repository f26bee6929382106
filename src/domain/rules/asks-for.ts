/** Which rules ask for an item: that there be some of it, or nothing else where it stands. */
import type { SlotCode } from "../../../shared/codes.js";
import type { Rule } from "../../../shared/rule-set.js";
import type { LabelBrief } from "../brief.js";
import type { DerivedDish } from "../catalogue/derive.js";
import { appliesAtBreak } from "./in-force.js";
import { matches } from "./match.js";

export interface AskedItem {
  readonly derived: DerivedDish;
  readonly breakKey: string;
  readonly slot: SlotCode;
  readonly labels: readonly LabelBrief[];
}

/** True for a minimum the item counts towards, and for ONLY at its break; a limit from above asks for nothing. */
export function asksFor(rule: Rule, item: AskedItem): boolean {
  if (!appliesAtBreak(rule, item.breakKey)) return false;
  switch (rule.kind) {
    case "ONLY":
      return matches(rule.matches, item);
    case "FREQUENCY":
    case "AMOUNT":
      return (rule.atLeast ?? 0) > 0 && matches(rule.matches, item);
    case "SHARE":
      return (rule.atLeast ?? 0) > 0 && matches(rule.part, item);
    case "EXCLUDE":
    case "NUTRIENT":
    case "TOGETHER":
    case "SERVING":
      return false;
  }
}
