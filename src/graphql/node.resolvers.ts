/** Anything by its ID, with the reader's rights; what cannot be found by itself is found in its week. */
import type { HouseholdRow } from "../database/household.js";
import { findSchoolOfClass, readRuleSet } from "../database/school.js";
import { requirePerson, type GraphqlContext, type Reads } from "./context.js";
import { localId } from "./global-id.js";
import { childNode } from "./household.resolvers.js";
import type { Resolvers, ResolversTypes } from "./generated.js";

type NodeValue = Awaited<ResolversTypes["Node"]> | null;

/** The first of the reader's households that has it. */
async function inMyHouseholds(
  reads: Reads,
  find: (household: HouseholdRow) => NodeValue | undefined,
): Promise<NodeValue> {
  for (const householdId of (await reads.me())?.householdIds ?? []) {
    const household = await reads.household(householdId);
    const found = household && find(household);
    if (found) return found;
  }
  return null;
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
  async WeekPlan(id, { reads }) {
    const week = await reads.weekAround("WeekPlan", id);
    return week && { __typename: "WeekPlan", row: week.plan, householdId: week.householdId };
  },
  async Box(id, { reads }) {
    const week = await reads.weekAround("Box", id);
    const row = week?.plan.boxes.find((box) => box.id === id);
    return week && row ? { __typename: "Box", row, householdId: week.householdId } : null;
  },
  async BoxItem(id, { reads }) {
    const week = await reads.weekAround("BoxItem", id);
    const row = week?.plan.boxes.flatMap((box) => box.items).find((item) => item.id === id);
    return week && row ? { __typename: "BoxItem", row, householdId: week.householdId } : null;
  },
  async Task(id, { reads }) {
    const week = await reads.weekAround("Task", id);
    const row = week?.plan.tasks.find((task) => task.id === id);
    return week && row ? { __typename: "Task", row, among: week.plan.tasks, householdId: week.householdId } : null;
  },
  async Batch(id, { reads }) {
    const week = await reads.weekAround("Batch", id);
    const row = week?.plan.batches.find((batch) => batch.id === id);
    return week && row ? { __typename: "Batch", row, householdId: week.householdId } : null;
  },
  async ShoppingLine(id, { reads }) {
    const week = await reads.weekAround("ShoppingLine", id);
    const row = week?.plan.shopping.find((line) => line.id === id);
    return week && row ? { __typename: "ShoppingLine", row, householdId: week.householdId } : null;
  },
  Child: (id, { reads }) =>
    inMyHouseholds(reads, (household) => {
      const row = household.children.find((child) => child.id === id);
      return row && { __typename: "Child", ...childNode(row, household) };
    }),
  Leftover: (id, { reads }) =>
    inMyHouseholds(reads, ({ leftovers }) => {
      const row = leftovers.find((entry) => entry.id === id);
      return row && { __typename: "Leftover", ...row };
    }),
  FreezerStock: (id, { reads }) =>
    inMyHouseholds(reads, ({ freezerStock }) => {
      const row = freezerStock.find((entry) => entry.id === id);
      return row && { __typename: "FreezerStock", ...row };
    }),
  async Person(id, { reads }) {
    const me = await reads.me();
    if (me?.id === id) return { __typename: "Person", id, displayName: me.displayName };
    return inMyHouseholds(reads, ({ carers }) => {
      const row = carers.find(({ person }) => person.id === id)?.person;
      return row && { __typename: "Person", ...row };
    });
  },
  async SchoolClass(id, { reads }) {
    const schoolId = await reads.session().read((tx) => findSchoolOfClass(tx, id));
    const row = schoolId === null ? undefined : (await reads.schools([schoolId]))[0]?.classes.find((k) => k.id === id);
    return row ? { __typename: "SchoolClass", ...row } : null;
  },
  async RuleSet(id, { reads }) {
    const row = await reads.session().read((tx) => readRuleSet(tx, id));
    return row && { __typename: "RuleSet", ...row };
  },
  async Dish(id, { app, reads }) {
    const key = [...app.reference.dishIds].find(([, dishId]) => dishId === id)?.[0];
    if (key !== undefined) return { __typename: "Dish", ...app.index.derived(key) };
    const { rows, index } = await reads.own();
    const own = rows.dishes.find((row) => row.id === id);
    return own ? { __typename: "Dish", ...index.derived(own.dish.key) } : null;
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
