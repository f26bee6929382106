/** Who says so, with the reader's rights: a rule set that is not theirs to see is nobody's. */
import { findOrigin, type NamedRule, type RuleOrigin } from "../app/rule-origins.js";
import type { GraphqlContext } from "./context.js";

/** @param named null: it is no rule */
export async function whoSaysSo(
  { reads }: GraphqlContext,
  householdId: string | null,
  named: NamedRule | null,
): Promise<RuleOrigin | null> {
  if (named === null || householdId === null) return null;
  const home = await reads.rulesOfHome(householdId);
  return home && findOrigin(home, named);
}
