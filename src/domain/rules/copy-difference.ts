/** A family's copy of a school's rules beside what the school says. */
import type { Rule } from "../../../shared/rule-set.js";
import { changesOf, type DocumentDifference, type RuleChange } from "./document-difference.js";

/** What a rule asks, whatever it is called, in whichever words and on whose word: equal for equal demands. */
function demandOf(rule: Rule): string {
  const { id: _id, says: _says, source: _source, ...asked } = rule;
  return inOrder(asked);
}

/** JSON in which neither the order of fields nor that of lists counts. */
function inOrder(part: unknown): string {
  if (Array.isArray(part)) return `[${part.map(inOrder).sort().join()}]`;
  if (typeof part !== "object" || part === null) return JSON.stringify(part);
  const fields = Object.entries(part).filter(([, value]) => value !== undefined);
  return `{${fields
    .map(([name, value]) => `${name}:${inOrder(value)}`)
    .sort()
    .join()}}`;
}

/**
 * Rules that ask the same are no difference, by whatever id and in whatever words. Of the others, those with the same id were
 * changed; the rest are asked for by one side only. ADDED: the school asks, the copy does not.
 */
export function copyDifference(copy: readonly Rule[], school: readonly Rule[]): DocumentDifference {
  const asked = new Set(school.map(demandOf));
  const kept = new Set(copy.map(demandOf));
  const ours = new Map(copy.filter((rule) => !asked.has(demandOf(rule))).map((rule) => [rule.id, rule]));
  const changes = school
    .filter((rule) => !kept.has(demandOf(rule)))
    .map((rule): RuleChange => {
      const before = ours.get(rule.id);
      if (before === undefined) return { kind: "ADDED", rule };
      ours.delete(rule.id);
      return { kind: "CHANGED", rule, fields: changesOf(before, rule) };
    });
  return {
    fields: [],
    rules: [...changes, ...[...ours.values()].map((rule): RuleChange => ({ kind: "REMOVED", rule }))],
  };
}
