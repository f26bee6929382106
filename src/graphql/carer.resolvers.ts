/** Who cares for a household, and the links by which carers and homes join. */
import { changeRole, handOverCoordination, leaveHousehold, removeCarer, renameMe } from "../app/carers.js";
import {
  acceptHomeInvitation,
  acceptInvitation,
  inviteCarer,
  inviteHome,
  withdrawInvitation,
  type Invited,
} from "../app/invitations.js";
import { may, verbsOf } from "../app/may.js";
import { digestOf } from "../app/secret.js";
import { readInvitation, readInvitationOffer } from "../database/invitation.js";
import { requirePerson, type GraphqlContext } from "./context.js";
import { explain } from "./explain.js";
import { globalId, localId } from "./global-id.js";
import { GoneSince } from "./gone-since.js";
import { changedChild, childNode, freshHousehold } from "./household.resolvers.js";
import type { Resolvers } from "./generated.js";
import { meOf } from "./person.resolvers.js";
import { refuseGuessing } from "./refuse-guessing.js";

const householdPayload = async (context: GraphqlContext, id: string) => ({
  __typename: "HouseholdPayload" as const,
  household: await freshHousehold(context, id),
});

function meNow(context: GraphqlContext) {
  context.reads.forget();
  return meOf(context);
}

async function freshInvitation({ reads }: GraphqlContext, id: string) {
  reads.forget();
  const invitation = await reads.session().read((tx) => readInvitation(tx, id));
  if (!invitation) throw new GoneSince();
  return invitation;
}

const invitationPayload = async (context: GraphqlContext, { invitationId, token }: Invited) => ({
  __typename: "InvitationPayload" as const,
  invitation: await freshInvitation(context, invitationId),
  token,
});

/** The ID's household and carer, as the actions know them. */
const local = <T extends { readonly householdId: string; readonly personId: string }>(input: T) => ({
  ...input,
  householdId: localId("Household", input.householdId),
  personId: localId("Person", input.personId),
});

export const carersOfHousehold: Pick<NonNullable<Resolvers["Household"]>, "mayDo" | "invitations"> = {
  mayDo: ({ myRole }) => verbsOf(myRole),
  invitations: async ({ id, myRole }, _, { reads }) =>
    may(myRole, "seeInvitations")
      ? (await reads.openInvitations()).filter(({ householdId }) => householdId === id)
      : null,
};

export const carerTypes: Pick<Resolvers, "Invitation" | "InvitationOffer"> = {
  Invitation: {
    id: ({ id }) => globalId("Invitation", id),
    async child({ householdId, childId }, _, { reads }) {
      const household = childId === null ? null : await reads.household(householdId);
      const row = household?.children.find(({ id }) => id === childId);
      return household && row ? childNode(row, household) : null;
    },
  },
  InvitationOffer: { childFirstName: ({ childName }) => childName?.trim().split(/\s+/u)[0] ?? null },
};

export const carerQueries: Pick<NonNullable<Resolvers["Query"]>, "invitation"> = {
  async invitation(_, { token }, context) {
    requirePerson(context);
    await refuseGuessing(context, "invitation");
    const digest = digestOf(token);
    return digest === null ? null : context.reads.session().read((tx) => readInvitationOffer(tx, digest));
  },
};

export const carerMutations: Pick<
  NonNullable<Resolvers["Mutation"]>,
  | "inviteCarer"
  | "inviteHome"
  | "withdrawInvitation"
  | "acceptInvitation"
  | "acceptHomeInvitation"
  | "changeRole"
  | "removeCarer"
  | "leaveHousehold"
  | "handOverCoordination"
  | "renameMe"
> = {
  async inviteCarer(_, { input }, context) {
    const householdId = localId("Household", input.householdId);
    const made = await inviteCarer(context.app, requirePerson(context), { ...input, householdId });
    return made.ok ? invitationPayload(context, made.value) : explain(made.error);
  },
  async inviteHome(_, { input }, context) {
    const made = await inviteHome(context.app, requirePerson(context), {
      ...input,
      householdId: localId("Household", input.householdId),
      childId: localId("Child", input.childId),
    });
    return made.ok ? invitationPayload(context, made.value) : explain(made.error);
  },
  async withdrawInvitation(_, { input }, context) {
    const invitationId = localId("Invitation", input.invitationId);
    const done = await withdrawInvitation(context.app, requirePerson(context), { ...input, invitationId });
    if (!done.ok) return explain(done.error);
    const invitation = await freshInvitation(context, done.value.invitationId);
    return { __typename: "WithdrawInvitationPayload", invitation };
  },
  async acceptInvitation(_, { input }, context) {
    const personId = requirePerson(context);
    await refuseGuessing(context, "invitation");
    const done = await acceptInvitation(context.app, personId, input);
    return done.ok ? householdPayload(context, done.value.householdId) : explain(done.error);
  },
  async acceptHomeInvitation(_, { input }, context) {
    const personId = requirePerson(context);
    await refuseGuessing(context, "invitation");
    const householdId = localId("Household", input.householdId);
    const done = await acceptHomeInvitation(context.app, personId, { ...input, householdId });
    if (!done.ok) return explain(done.error);
    const household = await freshHousehold(context, done.value.householdId);
    return { __typename: "AcceptHomeInvitationPayload", ...changedChild(household, done.value.childId) };
  },
  async changeRole(_, { input }, context) {
    const done = await changeRole(context.app, requirePerson(context), local(input));
    return done.ok ? householdPayload(context, done.value.householdId) : explain(done.error);
  },
  async removeCarer(_, { input }, context) {
    const done = await removeCarer(context.app, requirePerson(context), local(input));
    return done.ok ? householdPayload(context, done.value.householdId) : explain(done.error);
  },
  async leaveHousehold(_, { input }, context) {
    const householdId = localId("Household", input.householdId);
    const done = await leaveHousehold(context.app, requirePerson(context), { ...input, householdId });
    if (!done.ok) return explain(done.error);
    return { __typename: "LeaveHouseholdPayload", me: await meNow(context) };
  },
  async handOverCoordination(_, { input }, context) {
    const done = await handOverCoordination(context.app, requirePerson(context), local(input));
    return done.ok ? householdPayload(context, done.value.householdId) : explain(done.error);
  },
  async renameMe(_, { input }, context) {
    const done = await renameMe(context.app, requirePerson(context), input);
    if (!done.ok) return explain(done.error);
    return { __typename: "RenameMePayload", person: (await meNow(context)).person };
  },
};
