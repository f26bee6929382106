/** What one version of a rule set says that another does not. */
import type { Rule, RuleSetDocument } from "../../../shared/rule-set.js";

export interface FieldChange {
  readonly field: string;
  /** JSON; null where it was or is not stated. */
  readonly before: string | null;
  readonly after: string | null;
}

export type RuleChange =
  | { readonly kind: "ADDED"; readonly rule: Rule }
  | { readonly kind: "REMOVED"; readonly rule: Rule }
  | { readonly kind: "CHANGED"; readonly rule: Rule; readonly fields: readonly FieldChange[] };

export interface DocumentDifference {
  /** Of the document itself: title, dates, ages, language and the like; never its version. */
  readonly fields: readonly FieldChange[];
  /** Rules of the newer in its order, then those only the older has. Their order alone is no difference. */
  readonly rules: readonly RuleChange[];
}

/** Which school it is for is said by where it is loaded, and its version by its place. */
const HEAD = [
  "title",
  "layer",
  "jurisdiction",
  "coversFoodFromHome",
  "language",
  "inForceFrom",
  "inForceUntil",
  "ages",
  "withdrawn",
] as const satisfies readonly (keyof RuleSetDocument)[];

/** @param before null: nothing was in force, so that every rule is added */
export function documentDifference(before: RuleSetDocument | null, after: RuleSetDocument): DocumentDifference {
  const known = new Map((before?.rules ?? []).map((rule) => [rule.id, rule]));
  const kept = new Set(after.rules.map(({ id }) => id));
  return {
    fields: before === null ? [] : changesOf(before, after, HEAD),
    rules: [
      ...after.rules.flatMap((rule): RuleChange[] => {
        const old = known.get(rule.id);
        if (old === undefined) return [{ kind: "ADDED", rule }];
        const fields = changesOf(old, rule);
        return fields.length > 0 ? [{ kind: "CHANGED", rule, fields }] : [];
      }),
      ...(before?.rules ?? []).flatMap((rule): RuleChange[] => (kept.has(rule.id) ? [] : [{ kind: "REMOVED", rule }])),
    ],
  };
}

/** @param fields those to compare; absent: every one that either states */
export function changesOf(
  before: object,
  after: object,
  fields: readonly string[] = [...new Set([...Object.keys(before), ...Object.keys(after)])],
): FieldChange[] {
  const text = (from: object, field: string) => canonical((from as Record<string, unknown>)[field]);
  return fields.flatMap((field) => {
    const change = { field, before: text(before, field), after: text(after, field) };
    return change.before === change.after ? [] : [change];
  });
}

/** JSON with the keys of every object in order, so that writing the same thing otherwise is no difference; null for nothing. */
function canonical(value: unknown): string | null {
  if (value === undefined) return null;
  return JSON.stringify(value, (_, part: unknown) =>
    typeof part === "object" && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );
}

/** Everything a document says but its version and where it belongs, as one text: equal for equal content. */
export function contentOf(document: RuleSetDocument): string {
  const { version: _version, school: _school, schoolClass: _schoolClass, ...content } = document;
  return canonical(content)!;
}
