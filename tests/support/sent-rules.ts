/** Documents of invented schools and families, as they are sent. */
import type { RuleSetDocument } from "../../shared/rule-set.js";

type Sent = Record<string, unknown>;

/** A rule set with one rule or more; whatever is not stated is the usual. */
export const sentDocument = (change: Partial<Omit<RuleSetDocument, "rules">> & { readonly rules: readonly Sent[] }) =>
  JSON.stringify({
    format: "noonpail-rule-set/1",
    key: "test-rules",
    title: "Rules of a test",
    layer: "SCHOOL",
    coversFoodFromHome: true,
    language: "en",
    version: 1,
    inForceFrom: "2026-09-01",
    ...change,
  });

/** A rule that shuts something out. */
export const shutsOut = (id: string, clause: Sent, change: Sent = {}): Sent => ({
  id,
  kind: "EXCLUDE",
  says: `Not in the box: ${id}.`,
  level: "FORBID",
  source: "own rule of an invented school",
  matches: { anyOf: [clause] },
  ...change,
});
