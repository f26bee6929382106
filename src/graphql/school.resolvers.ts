import { loadRuleSet } from "../app/load-rule-set.js";
import { readSchoolPage } from "../database/school.js";
import { shareOfBreak } from "../domain/nutrition/meal-share.js";
import { requirePerson } from "./context.js";
import { explain } from "./explain.js";
import { globalId, localId } from "./global-id.js";
import type { Resolvers } from "./generated.js";
import { keyOf, pageOf, pageSize } from "./page.js";

export const schoolResolvers: Pick<Resolvers, "School" | "SchoolClass" | "ClassBreak" | "RuleSet" | "Rule"> & {
  Query: Pick<NonNullable<Resolvers["Query"]>, "school" | "schools">;
  Mutation: Pick<NonNullable<Resolvers["Mutation"]>, "loadRuleSet">;
} = {
  Query: {
    async school(_, { id }, context) {
      requirePerson(context);
      const local = localId("School", id);
      return local === null ? null : ((await context.reads.schools([local]))[0] ?? null);
    },
    async schools(_, { first, after }, context) {
      requirePerson(context);
      const size = pageSize(first);
      const rows = await context.reads.session().read((tx) => readSchoolPage(tx, size + 1, keyOf(after)));
      return pageOf(rows, size, (school) => school.name);
    },
  },
  Mutation: {
    async loadRuleSet(_, { input }, context) {
      const loaded = await loadRuleSet(context.app, requirePerson(context), {
        ...input,
        schoolId: localId("School", input.schoolId),
        ...(input.schoolClassId == null
          ? {}
          : { schoolClassId: localId("SchoolClass", input.schoolClassId) ?? "00000000-0000-0000-0000-000000000000" }),
      });
      if (!loaded.ok) return explain(loaded.error);
      context.reads.forget();
      const ruleSets = await context.reads.ruleSets(loaded.value.schoolId);
      const ruleSet = ruleSets.filter((row) => row.id === loaded.value.ruleSetId).at(-1);
      if (!ruleSet) throw new Error("a rule set just loaded cannot be read");
      return { __typename: "LoadRuleSetPayload", ruleSet };
    },
  },
  School: {
    id: (school) => globalId("School", school.id),
    async ruleSets(school, _, context) {
      const rows = await context.reads.ruleSets(school.id);
      return [...new Map(rows.map((row) => [row.id, row])).values()];
    },
  },
  SchoolClass: { id: (schoolClass) => globalId("SchoolClass", schoolClass.id) },
  ClassBreak: {
    energyShare: (pause, _, { app }) => shareOfBreak(pause, app.reference.mealShares).share,
    energyShareSource: (pause, _, { app }) => shareOfBreak(pause, app.reference.mealShares).source,
  },
  RuleSet: {
    id: (row) => globalId("RuleSet", row.id),
    key: ({ document }) => document.key,
    layer: ({ document }) => document.layer,
    title: ({ document }) => document.title,
    version: ({ document }) => document.version,
    inForceFrom: ({ document }) => document.inForceFrom,
    inForceUntil: ({ document }) => document.inForceUntil ?? null,
    rules: ({ document }) => document.rules,
  },
  Rule: { key: (rule) => rule.id },
};
