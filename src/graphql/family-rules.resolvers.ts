/** What a family sees and says of rules: who says so, its own rule sets, what rests on a clinician's note. */
import { endExemption, recordExemption } from "../app/exemptions.js";
import { todayIn } from "../app/local-day.js";
import {
  differsFromSchool,
  dropOwnRules,
  keepOwnRules,
  ownRulesOf,
  ruleNotices,
  schoolRuleSetsOf,
  type OwnRulesRef,
} from "../app/own-rules.js";
import { rulesObeyed, saidBy, sayOrigin, ruleSetsOn, originOf, type RulesOfHome } from "../app/rule-origins.js";
import type { Failure } from "../app/failures.js";
import { asksFor } from "../domain/rules/asks-for.js";
import { readRuleSet, type RuleSetRow } from "../database/school.js";
import type { Result } from "../domain/result.js";
import { requirePerson, type GraphqlContext } from "./context.js";
import { explain } from "./explain.js";
import type { Resolvers } from "./generated.js";
import { globalId, localId } from "./global-id.js";
import { changedChild, childOf, freshHousehold } from "./household.resolvers.js";

/** Whoever reads something of a household reads its rules. */
async function rulesOf({ reads }: GraphqlContext, householdId: string): Promise<RulesOfHome> {
  const home = await reads.rulesOfHome(householdId);
  if (!home) throw new Error("the rules of a household that is read cannot be read");
  return home;
}

/** A copy, its child and the rules beside it, in the reader's household that has the child; null for any other rule set. */
async function copyAtHome(copy: RuleSetRow, context: GraphqlContext) {
  if (copy.childId === null || copy.copyOfId === null) return null;
  for (const householdId of (await context.reads.me())?.householdIds ?? []) {
    const { household, rows } = await rulesOf(context, householdId);
    const child = household.children.find(({ id }) => id === copy.childId);
    if (child) return { household, rows, child, today: todayIn(household.timeZone, context.app.now()) };
  }
  return null;
}

async function ownRulesPayload<F extends Failure>(context: GraphqlContext, changed: Result<OwnRulesRef, F>) {
  if (!changed.ok) return explain(changed.error);
  const { householdId, childId, ruleSetId, unchanged } = changed.value;
  const household = await freshHousehold(context, householdId);
  const ruleSet = await context.reads.session().read((tx) => readRuleSet(tx, ruleSetId));
  if (!ruleSet) throw new Error("a rule set just kept cannot be read");
  return { __typename: "OwnRulesPayload" as const, ruleSet, unchanged, ...changedChild(household, childId) };
}

async function exemptionPayload<F extends Failure>(
  context: GraphqlContext,
  changed: Result<{ householdId: string; childId: string; exemptionId: string }, F>,
) {
  if (!changed.ok) return explain(changed.error);
  const { householdId, childId, exemptionId } = changed.value;
  const household = await freshHousehold(context, householdId);
  const row = household.children.find(({ id }) => id === childId)?.exemptions.find(({ id }) => id === exemptionId);
  return {
    __typename: "ExemptionPayload" as const,
    exemption: row ? { row, householdId } : null,
    ...changedChild(household, childId),
  };
}

export const familyRuleMutations: Pick<
  NonNullable<Resolvers["Mutation"]>,
  "keepOwnRules" | "dropOwnRules" | "recordExemption" | "endExemption"
> = {
  keepOwnRules: async (_, { input }, context) =>
    ownRulesPayload(
      context,
      await keepOwnRules(context.app, requirePerson(context), {
        ...input,
        householdId: localId("Household", input.householdId),
        childId: localId("Child", input.childId),
        copyOfSchoolId: input.copyOfSchoolId == null ? undefined : localId("School", input.copyOfSchoolId),
      }),
    ),
  dropOwnRules: async (_, { input }, context) =>
    ownRulesPayload(
      context,
      await dropOwnRules(context.app, requirePerson(context), {
        ...input,
        householdId: localId("Household", input.householdId),
        ruleSetId: localId("RuleSet", input.ruleSetId),
      }),
    ),
  recordExemption: async (_, { input }, context) =>
    exemptionPayload(
      context,
      await recordExemption(context.app, requirePerson(context), {
        ...input,
        householdId: localId("Household", input.householdId),
        childId: localId("Child", input.childId),
        ruleSetId: localId("RuleSet", input.ruleSetId),
      }),
    ),
  endExemption: async (_, { input }, context) =>
    exemptionPayload(
      context,
      await endExemption(context.app, requirePerson(context), {
        ...input,
        householdId: localId("Household", input.householdId),
        exemptionId: localId("Exemption", input.exemptionId),
      }),
    ),
};

export const familyRuleTypes: Pick<Resolvers, "RuleOrigin" | "RuleObeyed" | "RuleNotice" | "Exemption"> = {
  RuleOrigin: {
    ruleSet: ({ row }) => row,
    jurisdiction: ({ row }) => row.jurisdiction,
    saidBy,
    confirmed: ({ row }) => row.confirmed,
    text: sayOrigin,
  },
  RuleObeyed: {
    child: ({ row, householdId }, _, context) => childOf(context, householdId, row.childId),
    whoSaysSo: ({ row }) => row.origin,
    dates: ({ row }) => row.dates,
  },
  RuleNotice: {
    child: ({ row, householdId }, _, context) => childOf(context, householdId, row.childId),
    copy: ({ row }) => row.copy,
    schoolRuleSets: ({ row }) => row.schoolRuleSets,
    from: ({ row }) => row.from,
    text({ row: { copy, schoolRuleSets, from } }) {
      const changes = differsFromSchool(copy, schoolRuleSets)?.rules.length ?? 0;
      const rest =
        changes === 0
          ? "It asks for the same, so the copy can be dropped (dropOwnRules)."
          : "differsFromSchool shows what differs. Both hold until the copy is dropped (dropOwnRules).";
      return `The school has loaded rules of its own, in force from ${from}; the family keeps its copy "${copy.document.title}". ${rest}`;
    },
  },
  Exemption: {
    id: ({ row }) => globalId("Exemption", row.id),
    async ruleSet({ row, householdId }, _, context) {
      const { rows } = await rulesOf(context, householdId);
      const known = rows.findLast(({ id }) => id === row.ruleSetId);
      const found = known ?? (await context.reads.session().read((tx) => readRuleSet(tx, row.ruleSetId)));
      if (!found) throw new Error("an exemption is from a rule set that cannot be read");
      return found;
    },
    rule: ({ row }) => row.rule,
    async says({ row, householdId }, _, context) {
      const { rows } = await rulesOf(context, householdId);
      const newest = rows.findLast(({ id }) => id === row.ruleSetId);
      return newest?.document.rules.find(({ id }) => id === row.rule)?.says ?? null;
    },
    from: ({ row }) => row.from,
    until: ({ row }) => row.until,
    note: ({ row }) => row.note,
  },
};

export const rulesOfPlan: Pick<NonNullable<Resolvers["WeekPlan"]>, "rulesObeyed"> = {
  async rulesObeyed({ row, householdId }, _, context) {
    const home = await rulesOf(context, householdId);
    return rulesObeyed(home, row.boxes, row.ruleSetVersions).map((obeyed) => ({ row: obeyed, householdId }));
  },
};

export const askersOfItem: Pick<NonNullable<Resolvers["BoxItem"]>, "askedForBy"> = {
  async askedForBy({ row, householdId }, _, context) {
    const home = await rulesOf(context, householdId);
    const child = home.household.children.find(({ id }) => id === row.childId);
    const { index } = await context.reads.own();
    if (!child || index.dish(row.dish) === undefined) return [];
    const item = {
      derived: index.derived(row.dish),
      breakKey: row.breakKey,
      slot: row.slot,
      labels: home.household.labelChecks,
    };
    return ruleSetsOn(home, child, row.date).flatMap((set) =>
      set.document.rules.filter((rule) => asksFor(rule, item)).map((rule) => originOf(home, set, rule)),
    );
  },
};

export const ownRulesOfChild: Pick<NonNullable<Resolvers["Child"]>, "ownRules" | "exemptions"> = {
  async ownRules(child, _, context) {
    const { row, household } = await child.load();
    return ownRulesOf((await rulesOf(context, household.id)).rows, row.id);
  },
  async exemptions(child) {
    const { row, household } = await child.load();
    return row.exemptions.map((exemption) => ({ row: exemption, householdId: household.id }));
  },
};

export const noticesOfHousehold: Pick<NonNullable<Resolvers["Household"]>, "ruleNotices"> = {
  async ruleNotices({ id, timeZone }, _, context) {
    const { household, rows } = await rulesOf(context, id);
    const today = todayIn(timeZone, context.app.now());
    return ruleNotices(household, rows, today).map((row) => ({ row, householdId: id }));
  },
};

export const copiesOfSchool: Pick<NonNullable<Resolvers["RuleSet"]>, "copyOf" | "differsFromSchool"> = {
  copyOf: async ({ copyOfId }, _, { reads }) =>
    copyOfId === null ? null : ((await reads.schools([copyOfId]))[0] ?? null),
  async differsFromSchool(copy, _, context) {
    const at = await copyAtHome(copy, context);
    return at && differsFromSchool(copy, schoolRuleSetsOf(copy, at.child, at.household, at.rows, at.today));
  },
};
