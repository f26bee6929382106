/** Erasing a child, a household, oneself. */
import { eraseChild, eraseHousehold, eraseMe, withdrawErasure } from "../app/erase.js";
import { requirePerson } from "./context.js";
import { explain } from "./explain.js";
import type { Resolvers } from "./generated.js";
import { localId } from "./global-id.js";
import { changedChild, freshHousehold } from "./household.resolvers.js";

export const erasureOfChild: Pick<NonNullable<Resolvers["Child"]>, "erasureAsked"> = {
  async erasureAsked({ id, load }, _, { reads }) {
    const [asked, { household }] = await Promise.all([reads.erasuresAsked(), load()]);
    return asked
      .filter(({ childId }) => childId === id)
      .map(({ askedAt, householdId }) => ({ askedAt, askedHere: householdId === household.id }));
  },
};

export const erasureMutations: Pick<
  NonNullable<Resolvers["Mutation"]>,
  "eraseChild" | "withdrawErasure" | "eraseHousehold" | "eraseMe"
> = {
  async eraseChild(_, { input }, context) {
    const erased = await eraseChild(context.app, requirePerson(context), {
      ...input,
      householdId: localId("Household", input.householdId),
      childId: localId("Child", input.childId),
    });
    if (!erased.ok) return explain(erased.error);
    if ("agreed" in erased.value) return explain({ kind: "AgreementNeeded" });
    return answerOf(erased.value);
  },
  async withdrawErasure(_, { input }, context) {
    const withdrawn = await withdrawErasure(context.app, requirePerson(context), {
      ...input,
      householdId: localId("Household", input.householdId),
      childId: localId("Child", input.childId),
    });
    if (!withdrawn.ok) return explain(withdrawn.error);
    const { householdId, childId } = withdrawn.value;
    const { child } = changedChild(await freshHousehold(context, householdId), childId);
    return { __typename: "WithdrawErasurePayload", child };
  },
  async eraseHousehold(_, { input }, context) {
    const erased = await eraseHousehold(context.app, requirePerson(context), {
      ...input,
      householdId: localId("Household", input.householdId),
    });
    return erased.ok ? answerOf(erased.value) : explain(erased.error);
  },
  async eraseMe(_, { input }, context) {
    const personId = requirePerson(context);
    const erased = await eraseMe(context.app, personId, input);
    if (erased.ok && "erasedAt" in erased.value) context.notices.erased(personId);
    return erased.ok ? answerOf(erased.value) : explain(erased.error);
  },
};

const answerOf = (done: { readonly erasedAt: string } | { readonly token: string; readonly expiresAt: string }) =>
  "token" in done
    ? explain({ kind: "ConfirmationNeeded", of: "ERASURE", ...done })
    : { __typename: "ErasedPayload" as const, ...done };
