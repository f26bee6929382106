/** Anything by its ID, with the reader's rights; what cannot be found by itself is found in its week. */
import { findWeekOf, type WeekRow } from "../database/week.js";
import { requirePerson, type GraphqlContext } from "./context.js";
import { localId } from "./global-id.js";
import { childNode } from "./household.resolvers.js";
import type { Resolvers, ResolversTypes } from "./generated.js";

type NodeValue = Awaited<ResolversTypes["Node"]> | null;

async function weekAround(
  context: GraphqlContext,
  kind: "BoxItem" | "Box" | "Task" | "WeekPlan",
  id: string,
): Promise<WeekRow | null> {
  const found = await context.reads.session().read((tx) => findWeekOf(tx, kind, id));
  return found ? context.reads.weekById(found.weekId) : null;
}

const finders: Readonly<Record<string, (id: string, context: GraphqlContext) => Promise<NodeValue> | NodeValue>> = {
  async Household(id, { reads }) {
    const row = await reads.household(id);
    return row && { __typename: "Household", ...row };
  },
  async School(id, { reads }) {
    const row = (await reads.schools([id]))[0];
    return row ? { __typename: "School", ...row } : null;
  },
  async Week(id, { reads }) {
    const row = await reads.weekById(id);
    return row && { __typename: "Week", ...row };
  },
  async WeekPlan(id, context) {
    const week = await weekAround(context, "WeekPlan", id);
    return week && { __typename: "WeekPlan", row: week.plan, householdId: week.householdId };
  },
  async Box(id, context) {
    const week = await weekAround(context, "Box", id);
    const row = week?.plan.boxes.find((box) => box.id === id);
    return week && row ? { __typename: "Box", row, householdId: week.householdId } : null;
  },
  async BoxItem(id, context) {
    const week = await weekAround(context, "BoxItem", id);
    const row = week?.plan.boxes.flatMap((box) => box.items).find((item) => item.id === id);
    return week && row ? { __typename: "BoxItem", row, householdId: week.householdId } : null;
  },
  async Task(id, context) {
    const week = await weekAround(context, "Task", id);
    const row = week?.plan.tasks.find((task) => task.id === id);
    return week && row ? { __typename: "Task", row, householdId: week.householdId } : null;
  },
  async Child(id, { reads }) {
    const me = await reads.me();
    for (const householdId of me?.householdIds ?? []) {
      const household = await reads.household(householdId);
      const row = household?.children.find((child) => child.id === id);
      if (household && row) return { __typename: "Child", ...childNode(row, household) };
    }
    return null;
  },
  Dish(id, { app }) {
    const key = [...app.reference.dishIds].find(([, dishId]) => dishId === id)?.[0];
    return key === undefined ? null : { __typename: "Dish", ...app.index.derived(key) };
  },
};

export const nodeResolvers: { Query: Pick<NonNullable<Resolvers["Query"]>, "node"> } & Pick<
  Resolvers,
  "Node" | "UserError"
> = {
  Query: {
    async node(_, { id }, context) {
      requirePerson(context);
      for (const [type, find] of Object.entries(finders)) {
        const local = localId(type, id);
        if (local !== null) return await find(local, context);
      }
      return null;
    },
  },
  Node: { __resolveType: (value) => (value as { __typename: string }).__typename as never },
  UserError: { __resolveType: (value) => (value as { __typename: string }).__typename as never },
};
