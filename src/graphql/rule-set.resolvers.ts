/** Rule sets: read, looked at before loading, loaded, withdrawn, taken over. */
import { plainText } from "../../shared/inputs.js";
import {
  adoptRuleSet,
  checkForTarget,
  loadRuleSet,
  withdrawRuleSet,
  type LoadedRuleSet,
} from "../app/load-rule-set.js";
import { countCompliance, countImpact } from "../app/count-rules.js";
import { readRuleSetDocument } from "../app/check-rule-set.js";
import { ruleSetJsonSchema } from "../app/document-shape.js";
import type { Failure } from "../app/failures.js";
import { readRuleSet, readRuleSetsOfJurisdiction, readVersions } from "../database/school.js";
import { documentDifference } from "../domain/rules/document-difference.js";
import type { Result } from "../domain/result.js";
import { requirePerson, type GraphqlContext } from "./context.js";
import { explain } from "./explain.js";
import { globalId, localId } from "./global-id.js";
import type { Resolvers } from "./generated.js";
import { classOf, schoolPayload } from "./recheck.resolvers.js";

/** Where a document is to hold: absent stays absent, what is no ID of that kind names nothing. */
const targetOf = (input: {
  readonly schoolId?: string | null;
  readonly schoolClassId?: string | null;
  readonly jurisdiction?: string | null;
}) => ({
  schoolId: input.schoolId == null ? null : localId("School", input.schoolId),
  schoolClassId: classOf(input.schoolClassId),
  jurisdiction: input.jurisdiction ?? null,
});

const agesOf = ({
  ages,
}: {
  readonly ages?: { fromYears?: number | undefined; underYears?: number | undefined } | undefined;
}) => (ages ? { fromYears: ages.fromYears ?? null, underYears: ages.underYears ?? null } : null);

async function loadedPayload<F extends Failure>(context: GraphqlContext, loaded: Result<LoadedRuleSet, F>) {
  if (!loaded.ok) return explain(loaded.error);
  context.reads.forget();
  const { ruleSetId, unchanged } = loaded.value;
  const ruleSet = await context.reads.session().read((tx) => readRuleSet(tx, ruleSetId));
  if (!ruleSet) throw new Error("a rule set just loaded cannot be read");
  return { __typename: "LoadRuleSetPayload" as const, ruleSet, unchanged };
}

export const ruleSetTypes: Pick<
  Resolvers,
  "RuleSet" | "Rule" | "RuleSetVersion" | "RuleSetCheck" | "RuleSetCounts" | "RuleChange"
> = {
  RuleSet: {
    id: (row) => globalId("RuleSet", row.id),
    key: ({ document }) => document.key,
    layer: ({ document }) => document.layer,
    title: ({ document }) => document.title,
    version: ({ document }) => document.version,
    inForceFrom: ({ document }) => document.inForceFrom,
    inForceUntil: ({ document }) => document.inForceUntil ?? null,
    withdrawn: ({ document }) => document.withdrawn ?? false,
    coversFoodFromHome: ({ document }) => document.coversFoodFromHome,
    ages: ({ document }) => agesOf(document),
    rules: ({ document }) => document.rules,
    document: ({ document }) => JSON.stringify(document, null, 2),
    async versions(row, _, { reads }) {
      const documents = await reads.session().read((tx) => readVersions(tx, row.id));
      return documents.map((document, at) => ({ document, before: documents[at - 1] ?? null })).reverse();
    },
  },
  Rule: {
    key: (rule) => rule.id,
    breaks: (rule) => rule.breaks ?? null,
    weekdays: (rule) => rule.weekdays ?? null,
    ages: agesOf,
    inForceFrom: (rule) => rule.inForceFrom ?? null,
    inForceUntil: (rule) => rule.inForceUntil ?? null,
  },
  RuleSetVersion: {
    version: ({ document }) => document.version,
    title: ({ document }) => document.title,
    inForceFrom: ({ document }) => document.inForceFrom,
    inForceUntil: ({ document }) => document.inForceUntil ?? null,
    withdrawn: ({ document }) => document.withdrawn ?? false,
    rules: ({ document }) => document.rules,
    difference: ({ document, before }) => documentDifference(before, document),
  },
  RuleSetCheck: { comparedWith: ({ against }) => against },
  RuleSetCounts: {
    all: ({ counts }) =>
      counts.find(({ rule }) => rule === null) ?? { rule: null, held: null, boxes: null, children: null, weeks: null },
    rules: ({ counts }) => counts.filter(({ rule }) => rule !== null),
  },
  RuleChange: { fields: (change) => (change.kind === "CHANGED" ? change.fields : []) },
};

export const ruleSetQueries: Pick<
  NonNullable<Resolvers["Query"]>,
  "ruleSetCheck" | "ruleSetFormat" | "jurisdictionRuleSets"
> = {
  async ruleSetCheck(_, { input }, context) {
    requirePerson(context);
    const { reads, app } = context;
    const sent = readRuleSetDocument(input.document);
    const checked = await reads.session().read((tx) => checkForTarget(app, tx, targetOf(input), sent));
    return checked.ok ? { __typename: "RuleSetCheck", ...checked.value.check } : explain(checked.error);
  },
  ruleSetFormat: (_, __, context) => {
    requirePerson(context);
    return JSON.stringify(ruleSetJsonSchema(), null, 2);
  },
  async jurisdictionRuleSets(_, { jurisdiction }, context) {
    requirePerson(context);
    if (!plainText.test(jurisdiction)) return [];
    return context.reads.session().read((tx) => readRuleSetsOfJurisdiction(tx, jurisdiction));
  },
};

export const ruleSetMutations: Pick<
  NonNullable<Resolvers["Mutation"]>,
  "loadRuleSet" | "withdrawRuleSet" | "adoptRuleSet" | "countRuleSetImpact" | "countRuleSetCompliance"
> = {
  loadRuleSet: async (_, { input }, context) =>
    loadedPayload(context, await loadRuleSet(context.app, requirePerson(context), { ...input, ...targetOf(input) })),
  withdrawRuleSet: async (_, { input }, context) =>
    loadedPayload(
      context,
      await withdrawRuleSet(context.app, requirePerson(context), {
        ...input,
        ruleSetId: localId("RuleSet", input.ruleSetId),
      }),
    ),
  async countRuleSetImpact(_, { input }, context) {
    const counted = await countImpact(context.app, requirePerson(context), { ...input, ...targetOf(input) });
    return counted.ok ? { __typename: "RuleSetCounts", ...counted.value } : explain(counted.error);
  },
  async countRuleSetCompliance(_, { input }, context) {
    const counted = await countCompliance(context.app, requirePerson(context), {
      ...input,
      ruleSetId: localId("RuleSet", input.ruleSetId),
    });
    return counted.ok ? { __typename: "RuleSetCounts", ...counted.value } : explain(counted.error);
  },
  async adoptRuleSet(_, { input }, context) {
    const adopted = await adoptRuleSet(context.app, requirePerson(context), {
      ...input,
      schoolId: localId("School", input.schoolId),
      ruleSetId: localId("RuleSet", input.ruleSetId),
    });
    return schoolPayload(context, adopted);
  },
};
