import { nutrientUnits, type NutrientTag } from "../../shared/codes.js";
import type { GraphqlContext } from "./context.js";
import { globalId } from "./global-id.js";
import type { Resolvers } from "./generated.js";
import { keyOf, pageOf, pageSize } from "./page.js";

const amounts = (nutrients: Partial<Record<NutrientTag, number>>) =>
  Object.entries(nutrients).map(([tag, amount]) => ({ tag, amount, unit: nutrientUnits[tag as NutrientTag] }));

export const foodOf = ({ app }: GraphqlContext, key: string) => {
  const food = app.index.food(key);
  if (!food) throw new Error(`food ${key} is named by a row but not in the catalogue`);
  return food;
};
export const baseOf = ({ app }: GraphqlContext, key: string) => {
  const base = app.index.base(key);
  if (!base) throw new Error(`base ${key} is named by a row but not in the catalogue`);
  return base;
};

export const foodResolvers: Pick<Resolvers, "Dish" | "DishBase" | "DishIngredient" | "Food"> & {
  Query: Pick<NonNullable<Resolvers["Query"]>, "dish" | "dishes">;
} = {
  Query: {
    dish: (_, { key }, { app }) => (app.index.dish(key) ? app.index.derived(key) : null),
    dishes(_, { slot, first, after }, { app }) {
      const size = pageSize(first);
      const from = keyOf(after);
      const rows = app.index.dishes
        .filter((dish) => (slot == null || dish.slots.includes(slot)) && (from === null || dish.key > from))
        .slice(0, size + 1);
      return pageOf(
        rows.map((dish) => app.index.derived(dish.key)),
        size,
        (row) => row.dish.key,
      );
    },
  },
  Food: { nutrients: (food) => amounts(food.nutrients) },
  Dish: {
    id: ({ dish }, _, { app }) => globalId("Dish", app.reference.dishIds.get(dish.key)!),
    key: ({ dish }) => dish.key,
    name: ({ dish }) => dish.name,
    slots: ({ dish }) => dish.slots,
    cuisine: ({ dish }) => dish.cuisine,
    portionGrams: (row) => row.grams,
    portionPieces: ({ dish }) => (dish.portion.kind === "PIECES" ? dish.portion.pieces : null),
    pieceName: ({ dish }) => (dish.portion.kind === "PIECES" ? dish.portion.pieceName : null),
    bases: ({ dish }, _, context) => dish.bases.map(({ base, grams }) => ({ base: baseOf(context, base), grams })),
    ingredients: ({ dish }, _, context) =>
      dish.ingredients.map(({ food, grams, form }) => ({ food: foodOf(context, food), grams, form })),
    steps: ({ dish }) => dish.steps,
    served: ({ dish }) => dish.served,
    goodForHours: ({ dish }) => dish.goodForHours,
    labelsToRead: ({ packagedFoods }, _, context) => packagedFoods.map((key) => foodOf(context, key)),
    nutrients: ({ nutrients }) => amounts(nutrients),
    hazards: ({ ingredients }, _, { app }) => {
      const rows = ingredients.flatMap(({ food }) =>
        app.reference.choking
          .filter((rule) => food.chokingClasses.includes(rule.class))
          .map((rule) => ({ food: food.key, ...rule })),
      );
      return [...new Map(rows.map((row) => [`${row.food}/${row.class}`, row])).values()];
    },
  },
};
