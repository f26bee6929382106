import type { RuleSetDocument } from "../../../shared/rule-set.js";

/** The version that follows the newest and asks for nothing, from a day on. */
export function withdrawnFrom(newest: RuleSetDocument, from: string): RuleSetDocument {
  const { inForceUntil: _until, ...rest } = newest;
  return { ...rest, version: newest.version + 1, inForceFrom: from, withdrawn: true, rules: [] };
}
