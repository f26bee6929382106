/** Where a child wakes: what is agreed, what is proposed, and the mutations of both homes. */
import { GraphQLError } from "graphql";
import {
  answerResidenceChange,
  giveUpHome,
  proposeResidenceChange,
  setResidencePattern,
  withdrawResidenceChange,
  type HomeSide,
  type ProposalKey,
  type ResidenceRef,
} from "../app/residence.js";
import { setBoxKit } from "../app/set-box-kit.js";
import { readOpenProposals, readProposal, readResidence } from "../database/residence.js";
import { daysBetween, isCalendarDate } from "../domain/calendar/dates.js";
import { daysFrom, patternOn, wakesIn, type Residence } from "../domain/calendar/residence.js";
import type { Result } from "../domain/result.js";
import type { Failure } from "../app/failures.js";
import { requirePerson, type GraphqlContext } from "./context.js";
import { explain, proposalId } from "./explain.js";
import type { Resolvers } from "./generated.js";
import { localId } from "./global-id.js";
import { changedChild, freshHousehold } from "./household.resolvers.js";

const MOST_DAYS = 62;

const sideOf = (householdId: string, home: string | null): HomeSide =>
  home === householdId ? "THIS_HOME" : "OTHER_HOME";

function proposalOf(id: string): ProposalKey | null {
  const [pattern, days] = [localId("ResidencePattern", id), localId("ResidenceChange", id)];
  if (pattern !== null) return { of: "PATTERN", id: pattern };
  return days === null ? null : { of: "DAYS", id: days };
}

/** What is agreed about the child for these days. */
async function residence({ reads }: GraphqlContext, childId: string, from: string, to: string): Promise<Residence> {
  const found = await reads.session().read((tx) => readResidence(tx, childId, from, to));
  return found ?? { homes: [], patterns: [], exceptions: [] };
}

export const residenceOfChild: Pick<
  NonNullable<Resolvers["Child"]>,
  "residenceDays" | "residencePattern" | "residenceProposals"
> = {
  async residenceDays(child, { from, to }, context) {
    const span = isCalendarDate(from) && isCalendarDate(to) ? daysBetween(from, to) : -1;
    if (span < 0 || span > MOST_DAYS)
      throw new GraphQLError(`Ask for 0 to ${MOST_DAYS} days from one day to a later one.`, {
        extensions: { code: "BAD_USER_INPUT" },
      });
    const { row, household } = await child.load();
    const agreed = await residence(context, row.id, from, to);
    return daysFrom(from, to).flatMap((date) => {
      const waking = wakesIn(agreed, date);
      return waking ? { date, here: waking.householdId === household.id, source: waking.source } : [];
    });
  },
  async residencePattern(child, { on }, context) {
    if (!isCalendarDate(on)) return null;
    const { row, household } = await child.load();
    const { patterns } = await residence(context, row.id, on, on);
    const found = patternOn(patterns, on);
    return found && { row: found.pattern, householdId: household.id };
  },
  async residenceProposals(child, _, { reads }) {
    const { row, household } = await child.load();
    const open = await reads.session().read((tx) => readOpenProposals(tx, row.id));
    return open.map((proposal) => ({ row: proposal, householdId: household.id }));
  },
};

const answered = async <F extends Failure>(
  done: Result<ResidenceRef, F>,
  householdId: string | null,
  context: GraphqlContext,
) => {
  if (!done.ok) return explain(done.error, householdId);
  await freshHousehold(context, done.value.householdId);
  return { __typename: "ResidencePayload" as const, ...done.value };
};

type Mutations =
  | "setResidencePattern"
  | "proposeResidenceChange"
  | "answerResidenceChange"
  | "withdrawResidenceChange"
  | "setBoxKit"
  | "giveUpHome";

export const residenceMutations: Pick<NonNullable<Resolvers["Mutation"]>, Mutations> = {
  async setResidencePattern(_, { input }, context) {
    const householdId = localId("Household", input.householdId);
    const childId = localId("Child", input.childId);
    const done = await setResidencePattern(context.app, requirePerson(context), { ...input, householdId, childId });
    return answered(done, householdId, context);
  },
  async proposeResidenceChange(_, { input }, context) {
    const householdId = localId("Household", input.householdId);
    const childId = localId("Child", input.childId);
    const done = await proposeResidenceChange(context.app, requirePerson(context), { ...input, householdId, childId });
    return answered(done, householdId, context);
  },
  async answerResidenceChange(_, { input: { proposalId: id, ...input } }, context) {
    const householdId = localId("Household", input.householdId);
    const asked = { ...input, householdId, proposal: proposalOf(id) };
    return answered(await answerResidenceChange(context.app, requirePerson(context), asked), householdId, context);
  },
  async withdrawResidenceChange(_, { input: { proposalId: id, ...input } }, context) {
    const householdId = localId("Household", input.householdId);
    const asked = { ...input, householdId, proposal: proposalOf(id) };
    return answered(await withdrawResidenceChange(context.app, requirePerson(context), asked), householdId, context);
  },
  async setBoxKit(_, { input }, context) {
    const done = await setBoxKit(context.app, requirePerson(context), {
      ...input,
      householdId: localId("Household", input.householdId),
      childId: localId("Child", input.childId),
    });
    if (!done.ok) return explain(done.error);
    const household = await freshHousehold(context, done.value.householdId);
    return { __typename: "BoxKitPayload", ...changedChild(household, done.value.childId) };
  },
  async giveUpHome(_, { input }, context) {
    const done = await giveUpHome(context.app, requirePerson(context), {
      ...input,
      householdId: localId("Household", input.householdId),
      childId: localId("Child", input.childId),
    });
    if (!done.ok) return explain(done.error);
    return { __typename: "KitchenPayload", household: await freshHousehold(context, done.value.householdId) };
  },
};

export const residenceTypes: Pick<Resolvers, "ResidencePattern" | "ResidenceProposal" | "ResidencePayload"> = {
  ResidencePattern: {
    kind: ({ row }) => row.kind,
    starts: ({ row }) => row.starts,
    ends: ({ row }) => row.ends,
    cycle: ({ row, householdId }) => row.cycle.map((home) => sideOf(householdId, home)),
  },
  ResidenceProposal: {
    id: ({ row }) => proposalId(row),
    state: ({ row }) => row.state,
    proposedBy: ({ row, householdId }) => sideOf(householdId, row.proposedBy),
    proposedAt: ({ row }) => row.proposedAt,
    pattern: ({ row, householdId }) => row.pattern && { row: row.pattern, householdId },
    days: ({ row, householdId }) => row.days.map((day) => ({ date: day.date, here: day.householdId === householdId })),
  },
  ResidencePayload: {
    async child({ householdId, childId }, _, context) {
      return changedChild(await householdOf(context, householdId), childId).child;
    },
    household: ({ householdId }, _, context) => householdOf(context, householdId),
    async proposal({ proposal, householdId }, _, { reads }) {
      if (proposal === null) return null;
      const row = await reads.session().read((tx) => readProposal(tx, proposal.of, proposal.id));
      return row && { row, householdId };
    },
    movedDays: ({ movedDays }) => movedDays,
  },
};

async function householdOf({ reads }: GraphqlContext, id: string) {
  const household = await reads.household(id);
  if (!household) throw new Error("a household just changed cannot be read");
  return household;
}
