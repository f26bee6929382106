/** The sender's own calendar feeds: their addresses. What a feed shows is served over HTTP. */
import { closeFeed, feedPath, renewFeedAddress } from "../app/feed.js";
import { readFeedAddresses } from "../database/feed.js";
import { requirePerson } from "./context.js";
import { explain } from "./explain.js";
import type { Resolvers } from "./generated.js";
import { localId } from "./global-id.js";

export const feedTypes: Pick<Resolvers, "Feed"> = {
  Feed: {
    async household({ householdId }, _, { reads }) {
      const household = await reads.household(householdId);
      if (!household) throw new Error("a feed of a household that cannot be read");
      return household;
    },
  },
};

export const feedQueries: Pick<NonNullable<Resolvers["Query"]>, "feeds"> = {
  feeds(_, __, context) {
    requirePerson(context);
    return context.reads.session().read(readFeedAddresses);
  },
};

export const feedMutations: Pick<NonNullable<Resolvers["Mutation"]>, "renewFeedAddress" | "closeFeed"> = {
  async renewFeedAddress(_, { input }, context) {
    const renewed = await renewFeedAddress(context.app, requirePerson(context), {
      ...input,
      householdId: localId("Household", input.householdId),
    });
    if (!renewed.ok) return explain(renewed.error);
    const { secret, createdAt } = renewed.value;
    return { __typename: "FeedAddressPayload", path: secret === null ? null : feedPath(secret), createdAt };
  },
  async closeFeed(_, { input }, context) {
    const closed = await closeFeed(context.app, requirePerson(context), {
      ...input,
      householdId: localId("Household", input.householdId),
    });
    return closed.ok ? { __typename: "CloseFeedPayload", ...closed.value } : explain(closed.error);
  },
};
