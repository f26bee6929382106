/** How much of a published standard its rule document states: one part of `npm run report:rules`. */
import type { RuleSetDocument } from "../../../shared/rule-set.js";
import type { Standard } from "../../../shared/standard.js";

/** What loading a document would warn of, by the rule it is about. */
export interface RuleWarning {
  readonly rule: string;
  readonly says: string;
}

export interface StandardReport {
  readonly key: string;
  readonly title: string;
  readonly document: string;
  /** 0 where the document is missing. */
  readonly rules: number;
  readonly clauses: number;
  readonly stated: number;
  /** What the document cannot state, and why. */
  readonly cannot: readonly { readonly clause: string; readonly because: string }[];
  /** Where its rules go beyond a clause or fall short of it. */
  readonly notes: readonly { readonly clause: string; readonly note: string }[];
  /** Rules that nothing in the catalogue fits today, with the reason why they stand there. */
  readonly warnings: readonly string[];
  /** Empty when standard, document and catalogue hold together. */
  readonly faults: readonly string[];
}

/**
 * @param document null: there is none of that key
 * @param found what loading it would warn of; the standard gives the reason
 */
export function reportOnStandard(
  standard: Standard,
  document: RuleSetDocument | null,
  found: readonly RuleWarning[],
): StandardReport {
  const { clauses } = standard;
  const rules = document?.rules ?? [];
  const ids = new Set(rules.map(({ id }) => id));
  const named = new Set(clauses.flatMap(({ statedBy }) => statedBy ?? []));
  const reasons = new Map(standard.idle.map(({ rule, because }) => [rule, because]));
  return {
    key: standard.key,
    title: standard.title,
    document: standard.document,
    rules: rules.length,
    clauses: clauses.length,
    stated: clauses.filter(({ statedBy }) => statedBy !== undefined).length,
    cannot: clauses.flatMap(({ clause, cannot }) => (cannot === undefined ? [] : [{ clause, because: cannot }])),
    notes: clauses.flatMap(({ clause, note }) => (note === undefined ? [] : [{ clause, note }])),
    warnings: found.flatMap(({ rule, says }) => {
      const because = reasons.get(rule);
      return because === undefined ? [] : [`rule ${rule} ${says}: ${because}`];
    }),
    faults: [
      ...(document === null ? [`there is no document ${standard.document}`] : []),
      ...clauses.flatMap(({ clause, statedBy = [] }) =>
        statedBy.filter((id) => !ids.has(id)).map((id) => `${clause} names the rule ${id}, which is not there`),
      ),
      ...rules.filter(({ id }) => !named.has(id)).map(({ id }) => `rule ${id} belongs to no clause`),
      ...found
        .filter(({ rule }) => !reasons.has(rule))
        .map(({ rule, says }) => `rule ${rule} ${says}, and no reason is given`),
      ...[...reasons.keys()]
        .filter((id) => !found.some(({ rule }) => rule === id))
        .map((id) => `a reason is given for the rule ${id}, of which nothing has to be said`),
    ],
  };
}
