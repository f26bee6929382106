import { requirePerson, type GraphqlContext } from "./context.js";
import { globalId } from "./global-id.js";
import type { Resolvers } from "./generated.js";
import type { MeNode } from "./rows.js";

export async function meOf({ reads }: GraphqlContext): Promise<MeNode> {
  const me = await reads.me();
  if (!me) throw new Error("the signed-in person has no row");
  return {
    person: { id: me.id, displayName: me.displayName },
    householdIds: me.householdIds,
    schoolIds: me.schoolIds,
  };
}

export const personResolvers: Pick<Resolvers, "Me" | "Person"> & {
  Query: Pick<NonNullable<Resolvers["Query"]>, "me">;
} = {
  Query: {
    me(_, __, context) {
      requirePerson(context);
      return meOf(context);
    },
  },
  Person: { id: (person) => globalId("Person", person.id) },
  Me: {
    households: async ({ householdIds }, _, { reads }) =>
      (await Promise.all(householdIds.map((id) => reads.household(id)))).filter((household) => household !== null),
    administers: ({ schoolIds }, _, { reads }) => reads.schools(schoolIds),
  },
};
