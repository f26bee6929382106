import { nutrientUnits, type NutrientTag } from "../../shared/codes.js";
import { explainAllergens, explainCost, explainNutrient, type DerivedDish } from "../domain/catalogue/derive.js";
import { priceBandOf } from "../domain/catalogue/price-band.js";
import { classifyProcessing, readyMadeShare } from "../domain/catalogue/processing.js";
import type { CatalogueIndex } from "../domain/catalogue/derive.js";
import type { Food } from "../../shared/catalogue.js";
import { isOwnKey } from "../../shared/own-catalogue.js";
import { indexFor, rowsToPlanWith } from "../app/own-rows.js";
import { requirePerson, type GraphqlContext } from "./context.js";
import { globalId, localId } from "./global-id.js";
import type { Resolvers } from "./generated.js";
import { keyOf, pageOf, pageSize } from "./page.js";

const amounts = (nutrients: Partial<Record<NutrientTag, number>>) =>
  Object.entries(nutrients).map(([tag, amount]) => ({ tag, amount, unit: nutrientUnits[tag as NutrientTag] }));

/** Own rows are read once somebody asks for one; the reference catalogue is at hand. */
export const indexSeenBy = ({ app, reads }: GraphqlContext, keys: readonly string[]) =>
  keys.some(isOwnKey) ? reads.own().then(({ index }) => index) : app.index;

function foodIn(index: CatalogueIndex, key: string): Food {
  const food = index.food(key);
  if (!food) throw new Error(`food ${key} is named by a row but not in the catalogue`);
  return food;
}
export const foodOf = (context: GraphqlContext, key: string): Food | Promise<Food> =>
  isOwnKey(key) ? context.reads.own().then(({ index }) => foodIn(index, key)) : foodIn(context.app.index, key);
export const dishOf = (context: GraphqlContext, key: string): DerivedDish | Promise<DerivedDish> =>
  isOwnKey(key) ? context.reads.own().then(({ index }) => index.derived(key)) : context.app.index.derived(key);

/** The catalogue a household plans with, for one of its members; the reference catalogue for nobody's. */
async function indexOf(context: GraphqlContext, householdId: string | null | undefined): Promise<CatalogueIndex> {
  if (householdId == null) return context.app.index;
  requirePerson(context);
  const local = localId("Household", householdId);
  const household = local === null ? null : await context.reads.household(local);
  if (!household) return context.app.index;
  const { rows } = await context.reads.own();
  return indexFor(context.app, rowsToPlanWith(context.app, rows, household.id, []));
}
const byKey = (a: { readonly key: string }, b: { readonly key: string }) =>
  a.key < b.key ? -1 : a.key > b.key ? 1 : 0;
export const baseOf = ({ app }: GraphqlContext, key: string) => {
  const base = app.index.base(key);
  if (!base) throw new Error(`base ${key} is named by a row but not in the catalogue`);
  return base;
};

const viaBase = ({ viaBase: key }: { readonly viaBase: string | null }, _: unknown, context: GraphqlContext) =>
  key === null ? null : baseOf(context, key);

/**
 * Null for a dish of another household: its price is not a number where its own foods are in it (see `OwnFoodRow`), and none of its
 * steps are shown (see `OwnDishRow`), while a dish of one's own has at least one.
 */
const wholeMinor = ({ dish, costMinor }: DerivedDish): number | null =>
  Number.isFinite(costMinor) && !(isOwnKey(dish.key) && dish.steps.length === 0) ? Math.round(costMinor) : null;

/** A carbohydrate figure is used for dosing: a sum with a missing addend is unknown. */
function carbohydrateGrams(row: DerivedDish): number | null {
  const { total, missing } = explainNutrient(row, "CHOCDF");
  return missing.length > 0 ? null : total;
}

export const foodResolvers: Pick<
  Resolvers,
  | "CostPart"
  | "Dish"
  | "DishBase"
  | "DishIngredient"
  | "Food"
  | "NutrientDerivation"
  | "NutrientPart"
  | "ProcessingClass"
> & {
  Query: Pick<NonNullable<Resolvers["Query"]>, "dish" | "dishes" | "food">;
} = {
  Query: {
    async food(_, { key, householdId }, context) {
      return (await indexOf(context, householdId)).food(key) ?? null;
    },
    async dish(_, { key, householdId }, context) {
      const index = await indexOf(context, householdId);
      return index.dish(key) ? index.derived(key) : null;
    },
    async dishes(_, { slot, householdId, first, after }, context) {
      const size = pageSize(first);
      const from = keyOf(after);
      const index = await indexOf(context, householdId);
      const rows = [...index.dishes]
        .sort(byKey)
        .filter((dish) => (slot == null || dish.slots.includes(slot)) && (from === null || dish.key > from))
        .slice(0, size + 1);
      return pageOf(
        rows.map((dish) => index.derived(dish.key)),
        size,
        (row) => row.dish.key,
      );
    },
  },
  Food: {
    own: ({ key }) => isOwnKey(key),
    nutrients: (food) => amounts(food.nutrients),
    priceBand: (food) => (Number.isFinite(food.pack.priceMinor) ? priceBandOf(food) : null),
  },
  Dish: {
    id: ({ dish: { key } }, _, { app, reads }) =>
      isOwnKey(key)
        ? reads.own().then(({ dishIds }) => globalId("Dish", dishIds.get(key)!))
        : globalId("Dish", app.reference.dishIds.get(key)!),
    key: ({ dish }) => dish.key,
    name: ({ dish }) => dish.name,
    slots: ({ dish }) => dish.slots,
    cuisine: ({ dish }) => dish.cuisine,
    portionGrams: (row) => row.grams,
    portionPieces: ({ dish }) => (dish.portion.kind === "PIECES" ? dish.portion.pieces : null),
    pieceName: ({ dish }) => (dish.portion.kind === "PIECES" ? dish.portion.pieceName : null),
    bases: ({ dish }, _, context) => dish.bases.map(({ base, grams }) => ({ base: baseOf(context, base), grams })),
    ingredients: ({ dish }) => dish.ingredients,
    steps: ({ dish }) => dish.steps,
    served: ({ dish }) => dish.served,
    goodForHours: ({ dish }) => dish.goodForHours,
    cutlery: ({ dish }) => dish.cutlery,
    spill: ({ dish }) => dish.spill,
    volumeMl: ({ dish }) => dish.volumeMl,
    labelsToRead: ({ packagedFoods }, _, context) => packagedFoods.map((key) => foodOf(context, key)),
    nutrients: ({ nutrients }) => amounts(nutrients),
    carbohydrateGrams,
    carbohydrateGramsPerPiece(row) {
      const { portion } = row.dish;
      const grams = carbohydrateGrams(row);
      return grams === null || portion.kind !== "PIECES" ? null : grams / portion.pieces;
    },
    derivation: (row, { tag }) => explainNutrient(row, tag),
    allergenSources: (row) => explainAllergens(row),
    processing: ({ dish, ingredients }) =>
      classifyProcessing(
        dish,
        ingredients.map(({ food }) => food),
      ),
    readyMadeShare: ({ ingredients }) => readyMadeShare(ingredients),
    own: ({ dish }) => isOwnKey(dish.key),
    portionCostMinor: wholeMinor,
    costMinor: (row) => wholeMinor(row) ?? 0,
    costParts: (row) => (wholeMinor(row) === null ? [] : explainCost(row)),
    hazards: ({ ingredients }, _, { app }) => {
      const rows = ingredients.flatMap(({ food }) =>
        app.reference.choking
          .filter((rule) => food.chokingClasses.includes(rule.class))
          .map((rule) => ({ food: food.key, ...rule })),
      );
      return [...new Map(rows.map((row) => [`${row.food}/${row.class}`, row])).values()];
    },
  },
  DishIngredient: {
    food: ({ food }, _, context) => foodOf(context, food),
    retention: ({ retention }, _, { app }) =>
      app.reference.catalogue.retention.find(({ code }) => code === retention) ?? null,
  },
  NutrientDerivation: {
    unit: ({ nutrient }) => nutrientUnits[nutrient],
    missing: ({ missing }, _, context) => missing.map((key) => foodOf(context, key)),
  },
  NutrientPart: {
    base: viaBase,
    factor: ({ retained }) => retained.atLeast,
    basis: ({ retained }) => retained.basis,
  },
  ProcessingClass: { foods: ({ foods }, _, context) => foods.map((key) => foodOf(context, key)) },
  CostPart: { base: viaBase },
};
