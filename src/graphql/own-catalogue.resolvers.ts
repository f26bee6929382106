/** A household's own foods and dishes: its lists, the changes to them, and what is not known. */
import type { App } from "../app/app.js";
import type { HouseholdChangeFailure } from "../app/change-household.js";
import type { FailureOf } from "../app/failures.js";
import { missingIn, removeOwnDish, removeOwnFood, saveOwnDish, saveOwnFood } from "../app/own-catalogue.js";
import { sayMissing } from "../app/say.js";
import { readRuleSets } from "../database/school.js";
import type { Result } from "../domain/result.js";
import { requirePerson, type GraphqlContext } from "./context.js";
import { explain } from "./explain.js";
import { dishOf, foodOf, indexSeenBy } from "./food.resolvers.js";
import type { Resolvers } from "./generated.js";
import { localId } from "./global-id.js";
import { GoneSince } from "./gone-since.js";
import { childOf } from "./household.resolvers.js";

/** Everything a payload says is read again: the answer to a repeated request is about the rows as they are. */
async function freshAround(context: GraphqlContext, householdId: string) {
  context.reads.forget();
  const [household, { index }] = await Promise.all([context.reads.household(householdId), context.reads.own()]);
  if (!household) throw new GoneSince();
  return { household, index };
}

async function saved(context: GraphqlContext, householdId: string, of: { food: string } | { dish: string }) {
  const { household, index } = await freshAround(context, householdId);
  const ruleSets = await context.reads.session().read((tx) =>
    readRuleSets(
      tx,
      household.schools.map(({ id }) => id),
      household.children.map(({ id }) => id),
    ),
  );
  return { household, index, missing: missingIn(context.app, household, ruleSets, index, of) };
}

interface OwnInput {
  readonly householdId: string;
}

const removal =
  <I extends OwnInput>(
    act: (
      app: App,
      personId: string,
      input: Omit<I, "householdId"> & { householdId: string | null },
    ) => Promise<Result<{ householdId: string }, HouseholdChangeFailure | FailureOf<"StillInUse">>>,
  ) =>
  async (_: unknown, { input }: { input: I }, context: GraphqlContext) => {
    const done = await act(context.app, requirePerson(context), {
      ...input,
      householdId: localId("Household", input.householdId),
    });
    if (!done.ok) return explain(done.error);
    const { household } = await freshAround(context, done.value.householdId);
    return { __typename: "KitchenPayload" as const, household };
  };

type Mutations = "saveOwnFood" | "removeOwnFood" | "saveOwnDish" | "removeOwnDish";

export const ownMutations: Pick<NonNullable<Resolvers["Mutation"]>, Mutations> = {
  async saveOwnFood(_, { input }, context) {
    const done = await saveOwnFood(context.app, requirePerson(context), {
      ...input,
      householdId: localId("Household", input.householdId),
    });
    if (!done.ok) return explain(done.error);
    const { householdId, key } = done.value;
    const { household, index, missing } = await saved(context, householdId, { food: key });
    const food = index.food(key);
    if (!food) throw new Error("a food just saved cannot be read");
    return { __typename: "SaveOwnFoodPayload", household, food, missing };
  },
  async saveOwnDish(_, { input }, context) {
    const done = await saveOwnDish(context.app, requirePerson(context), {
      ...input,
      householdId: localId("Household", input.householdId),
    });
    if (!done.ok) return explain(done.error);
    const { householdId, key } = done.value;
    const { household, index, missing } = await saved(context, householdId, { dish: key });
    return { __typename: "SaveOwnDishPayload", household, dish: index.derived(key), missing };
  },
  removeOwnFood: removal(removeOwnFood),
  removeOwnDish: removal(removeOwnDish),
};

export const ownLists: Pick<NonNullable<Resolvers["Household"]>, "ownFoods" | "ownDishes"> = {
  async ownFoods(household, _, { reads }) {
    const { rows } = await reads.own();
    return rows.foods.filter((row) => row.householdId === household.id && !row.removed).map(({ food }) => food);
  },
  async ownDishes(household, _, { reads }) {
    const { rows, index } = await reads.own();
    return rows.dishes
      .filter((row) => row.householdId === household.id && !row.removed)
      .map(({ dish }) => index.derived(dish.key));
  },
};

export const ownTypes: Pick<Resolvers, "BoxPlace" | "MissingFact" | "StillInUse"> = {
  BoxPlace: { child: ({ childId, householdId }, _, context) => childOf(context, householdId, childId) },
  StillInUse: { dishes: ({ dishes }, _, context) => dishes.map((key) => dishOf(context, key)) },
  MissingFact: {
    foods: ({ foods }, _, context) => foods.map((key) => foodOf(context, key)),
    nutrient: (fact) => (fact.kind === "NUTRIENT" ? fact.nutrient : null),
    rules: (fact) => (fact.kind === "NUTRIENT" ? fact.rules.map(({ rule }) => rule) : []),
    text: async (fact, _, context) => sayMissing(fact, { index: await indexSeenBy(context, fact.foods) }),
  },
};
