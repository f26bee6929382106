/** Answers for people who may not read any more what they changed: a key sent again after they have left, or left at that moment. */
import { getNamedType, isUnionType, type GraphQLResolveInfo } from "graphql";
import type { GraphqlContext } from "./context.js";
import { explain } from "./explain.js";
import type { Resolvers } from "./generated.js";

/** Thrown where a mutation reads again what it has changed and finds nothing that is the asker's. */
export class GoneSince extends Error {
  constructor() {
    super("what was just changed cannot be read by whoever changed it");
  }
}

type Mutations = NonNullable<Resolvers["Mutation"]>;
type Resolver = (parent: unknown, args: unknown, context: unknown, info: GraphQLResolveInfo) => unknown;

/** Every mutation says of somebody else's household that it is not there; whoever has left is answered the same. */
export const answeredAfterLeaving = (mutations: Mutations): Mutations =>
  Object.fromEntries(Object.entries(mutations).map(([field, resolver]) => [field, answering(resolver as Resolver)]));

const answering =
  (resolver: Resolver): Resolver =>
  async (parent, args, context, info) => {
    // What was read for the mutation before is given back: this one reads, and waits, for itself.
    (context as GraphqlContext).reads.forget();
    try {
      return await resolver(parent, args, context, info);
    } catch (error) {
      const missing = error instanceof GoneSince ? missingIn(info) : null;
      if (missing === null) throw error;
      return missing;
    }
  };

function missingIn({ returnType }: GraphQLResolveInfo) {
  const result = getNamedType(returnType);
  const members = isUnionType(result) ? result.getTypes().map(({ name }) => name) : [];
  if (members.includes("HouseholdNotFound")) return explain({ kind: "HouseholdNotFound" as const });
  if (members.includes("NothingThere")) return explain({ kind: "NothingThere" as const, what: "week" });
  return null;
}
