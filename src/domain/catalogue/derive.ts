/**
 * What follows from a catalogue's rows: a dish's ingredients with its bases dissolved, and from them nutrients, allergens,
 * origins and cost. Nothing here is typed in by hand for a dish; a row that is missing is a fault, never a blank.
 */
import type { Base, Catalogue, Dish, Food, Ingredient } from "../../../shared/catalogue.js";
import {
  nutrientTag,
  type AllergenCode,
  type NutrientTag,
  type OriginCode,
  type ServedForm,
} from "../../../shared/codes.js";
import type { CatalogueBrief } from "../brief.js";
import { fail, ok, type Result } from "../result.js";

export interface FlatIngredient {
  readonly food: Food;
  /** The row it is bought as: the raw one of a cooked row, else the food itself. Its label and allergens count too. */
  readonly bought: Food;
  /** Edible grams in one reference portion, as the composition row describes the food. */
  readonly grams: number;
  readonly form: ServedForm;
  /** The base it comes in with, null for an ingredient of the dish itself. */
  readonly viaBase: string | null;
}

export interface DerivedDish {
  readonly dish: Dish;
  /** Reference portion as served, grams. */
  readonly grams: number;
  /** Bases dissolved: each base's ingredients times grams of the base over its batch's ready grams. */
  readonly ingredients: readonly FlatIngredient[];
  /** For the reference portion: the sum of what is known. A nutrient no ingredient knows is absent. */
  readonly nutrients: Readonly<Partial<Record<NutrientTag, number>>>;
  /** Every food and nutrient the sums above had to leave out. */
  readonly missing: readonly { readonly food: string; readonly nutrient: NutrientTag }[];
  readonly freeSugarGrams: number;
  /** Allergens its foods always have, sorted; what a brand adds is on its label. */
  readonly allergens: readonly AllergenCode[];
  /** Keys of foods sold with a label, sorted. */
  readonly packagedFoods: readonly string[];
  readonly origins: readonly OriginCode[];
  /** Cost of the reference portion as bought, minor units with fractions; round only what is shown or charged. */
  readonly costMinor: number;
}

export interface CatalogueIndex {
  readonly version: string;
  readonly dishes: readonly Dish[];
  food(key: string): Food | undefined;
  base(key: string): Base | undefined;
  dish(key: string): Dish | undefined;
  /** Throws on a dish that is unknown or names an unknown food or base: the catalogue was not checked. */
  derived(dishKey: string): DerivedDish;
}

type RowKind = "FOOD" | "BASE" | "DISH";
export type CatalogueFault =
  | { readonly kind: "DuplicateKey"; readonly of: RowKind; readonly key: string }
  | { readonly kind: "DuplicateNdb"; readonly ndb: string; readonly foods: readonly string[] }
  | { readonly kind: "UnknownFood"; readonly of: RowKind; readonly key: string; readonly food: string }
  | { readonly kind: "UnknownBase"; readonly dish: string; readonly base: string }
  | { readonly kind: "BoughtAsChain"; readonly food: string; readonly boughtAs: string }
  | {
      readonly kind: "MassBalance";
      readonly of: RowKind;
      readonly key: string;
      readonly inGrams: number;
      readonly outGrams: number;
    }
  | { readonly kind: "PiecesOffStep"; readonly dish: string; readonly pieces: number; readonly stepPieces: number }
  | { readonly kind: "EmptyDish"; readonly dish: string };

/**
 * Ready mass over the mass that went in. Water is an ingredient of its own, so nothing may weigh more than its parts
 * (2 % for rounding); baking, roasting and reducing lose at most 45 % here. Our estimates, to catch slips of a digit.
 */
const massOutOverIn = { least: 0.55, most: 1.02 };

/** Grams of one reference portion as served. */
function portionGrams(dish: Dish): number {
  return dish.portion.kind === "PIECES" ? dish.portion.gramsPerPiece * dish.portion.pieces : dish.portion.grams;
}

/**
 * What is bought, and how many grams as sold, for `grams` edible of a food. A cooked row is bought as its raw row, whose
 * factor already counts refuse; any other row is divided by its edible share. Throws when `boughtAs` names an unknown food.
 */
export function asBought(
  food: Food,
  grams: number,
  foodOf: (key: string) => Food | undefined,
): { food: Food; grams: number } {
  if (food.boughtAs === null) return { food, grams: grams / (1 - food.refusePercent / 100) };
  const bought = foodOf(food.boughtAs.food);
  if (bought === undefined) throw new Error(`food ${food.key} is bought as unknown ${food.boughtAs.food}`);
  return { food: bought, grams: grams * food.boughtAs.gramsPerGram };
}

interface Rows {
  food(key: string): Food | undefined;
  base(key: string): Base | undefined;
}

type UnknownRow = Extract<CatalogueFault, { kind: "UnknownFood" | "UnknownBase" }>;

function flatten(dish: Dish, rows: Rows): Result<FlatIngredient[], UnknownRow[]> {
  const flat: FlatIngredient[] = [];
  const unknown: UnknownRow[] = [];
  const add = (ingredient: Ingredient, factor: number, base: string | null): void => {
    const food = rows.food(ingredient.food);
    if (food === undefined) {
      unknown.push({
        kind: "UnknownFood",
        of: base === null ? "DISH" : "BASE",
        key: base ?? dish.key,
        food: ingredient.food,
      });
      return;
    }
    const bought = food.boughtAs === null ? food : rows.food(food.boughtAs.food);
    if (bought === undefined) {
      unknown.push({ kind: "UnknownFood", of: "FOOD", key: food.key, food: food.boughtAs?.food ?? "" });
      return;
    }
    flat.push({ food, bought, grams: ingredient.grams * factor, form: ingredient.form, viaBase: base });
  };
  for (const use of dish.bases) {
    const base = rows.base(use.base);
    if (base === undefined) {
      unknown.push({ kind: "UnknownBase", dish: dish.key, base: use.base });
      continue;
    }
    for (const ingredient of base.ingredients) add(ingredient, use.grams / base.batchGrams, base.key);
  }
  for (const ingredient of dish.ingredients) add(ingredient, 1, null);
  return unknown.length > 0 ? fail(unknown) : ok(flat);
}

function sortedUnique<T extends string>(values: readonly T[]): T[] {
  return [...new Set(values)].sort();
}

/** The key under which its label is read, null for what is sold without one: the food itself, else the row it is bought as. */
export function labelledAs({ food, bought }: FlatIngredient): string | null {
  if (food.packaged) return food.key;
  return bought.packaged ? bought.key : null;
}

/** Derives one dish from the rows; fails with every unknown food and base it names. */
export function deriveDish(dish: Dish, rows: Rows): Result<DerivedDish, UnknownRow[]> {
  const flat = flatten(dish, rows);
  if (!flat.ok) return flat;
  const ingredients = flat.value;
  const foods = [...new Map(ingredients.map((i) => [i.food.key, i.food])).values()];
  const nutrients: Partial<Record<NutrientTag, number>> = {};
  const missing: { food: string; nutrient: NutrientTag }[] = [];
  for (const nutrient of nutrientTag.options) {
    let sum: number | null = null;
    for (const { food, grams } of ingredients) {
      const per100 = food.nutrients[nutrient];
      if (per100 !== undefined) sum = (sum ?? 0) + (grams * per100) / 100;
    }
    if (sum !== null) nutrients[nutrient] = sum;
    for (const food of foods) if (food.nutrients[nutrient] === undefined) missing.push({ food: food.key, nutrient });
  }
  let freeSugarGrams = 0;
  let costMinor = 0;
  for (const { food, bought, grams } of ingredients) {
    freeSugarGrams += (grams * food.freeSugarGrams) / 100;
    costMinor += (asBought(food, grams, () => bought).grams * bought.pack.priceMinor) / bought.pack.grams;
  }
  return ok({
    dish,
    grams: portionGrams(dish),
    ingredients,
    nutrients,
    missing,
    freeSugarGrams,
    allergens: sortedUnique(ingredients.flatMap(({ food, bought }) => [...food.allergens, ...bought.allergens])),
    packagedFoods: sortedUnique(ingredients.flatMap((ingredient) => labelledAs(ingredient) ?? [])),
    origins: sortedUnique(foods.flatMap((food) => food.origins)),
    costMinor,
  });
}

/** Look-ups over a catalogue that passed `checkCatalogue`; a dish is derived when first asked for and kept. */
export function indexCatalogue(catalogue: CatalogueBrief): CatalogueIndex {
  const foods = new Map(catalogue.foods.map((food) => [food.key, food]));
  const bases = new Map(catalogue.bases.map((base) => [base.key, base]));
  const dishes = new Map(catalogue.dishes.map((dish) => [dish.key, dish]));
  const derived = new Map<string, DerivedDish>();
  const rows: Rows = { food: (key) => foods.get(key), base: (key) => bases.get(key) };
  return {
    version: catalogue.version,
    dishes: catalogue.dishes,
    food: rows.food,
    base: rows.base,
    dish: (key) => dishes.get(key),
    derived: (dishKey) => {
      const known = derived.get(dishKey);
      if (known !== undefined) return known;
      const dish = dishes.get(dishKey);
      if (dish === undefined) throw new Error(`unknown dish ${dishKey}`);
      const result = deriveDish(dish, rows);
      if (!result.ok) throw new Error(`dish ${dishKey} names unknown rows: ${JSON.stringify(result.error)}`);
      derived.set(dishKey, result.value);
      return result.value;
    },
  };
}

function findDuplicateKeys(of: RowKind, rows: readonly { readonly key: string }[]): CatalogueFault[] {
  const seen = new Set<string>();
  const twice = new Set<string>();
  for (const { key } of rows) (seen.has(key) ? twice : seen).add(key);
  return [...twice].map((key) => ({ kind: "DuplicateKey", of, key }));
}

function findDuplicateNdbs(foods: readonly Food[]): CatalogueFault[] {
  const byNdb = new Map<string, string[]>();
  for (const food of foods) if (food.ndb !== null) byNdb.set(food.ndb, [...(byNdb.get(food.ndb) ?? []), food.key]);
  return [...byNdb]
    .filter(([, keys]) => keys.length > 1)
    .map(([ndb, keys]) => ({ kind: "DuplicateNdb", ndb, foods: keys }));
}

function checkMass(of: RowKind, key: string, inGrams: number, outGrams: number): CatalogueFault[] {
  const share = outGrams / inGrams;
  if (share >= massOutOverIn.least && share <= massOutOverIn.most) return [];
  return [{ kind: "MassBalance", of, key, inGrams, outGrams }];
}

function sumGrams(parts: readonly { readonly grams: number }[]): number {
  return parts.reduce((sum, part) => sum + part.grams, 0);
}

/** Checks a whole catalogue and reports every fault, in the order foods, bases, dishes. */
export function checkCatalogue(catalogue: Catalogue): Result<void, CatalogueFault[]> {
  const foods = new Map(catalogue.foods.map((food) => [food.key, food]));
  const bases = new Map(catalogue.bases.map((base) => [base.key, base]));
  const faults: CatalogueFault[] = [
    ...findDuplicateKeys("FOOD", catalogue.foods),
    ...findDuplicateKeys("BASE", catalogue.bases),
    ...findDuplicateKeys("DISH", catalogue.dishes),
    ...findDuplicateNdbs(catalogue.foods),
  ];
  for (const food of catalogue.foods) {
    if (food.boughtAs === null) continue;
    const bought = foods.get(food.boughtAs.food);
    if (bought === undefined) {
      faults.push({ kind: "UnknownFood", of: "FOOD", key: food.key, food: food.boughtAs.food });
    } else if (bought.boughtAs !== null) {
      faults.push({ kind: "BoughtAsChain", food: food.key, boughtAs: bought.key });
    }
  }
  for (const base of catalogue.bases) {
    for (const { food } of base.ingredients) {
      if (!foods.has(food)) faults.push({ kind: "UnknownFood", of: "BASE", key: base.key, food });
    }
    faults.push(...checkMass("BASE", base.key, sumGrams(base.ingredients), base.batchGrams));
  }
  for (const dish of catalogue.dishes) {
    for (const { food } of dish.ingredients) {
      if (!foods.has(food)) faults.push({ kind: "UnknownFood", of: "DISH", key: dish.key, food });
    }
    for (const { base } of dish.bases) {
      if (!bases.has(base)) faults.push({ kind: "UnknownBase", dish: dish.key, base });
    }
    const inGrams = sumGrams(dish.bases) + sumGrams(dish.ingredients);
    if (inGrams === 0) faults.push({ kind: "EmptyDish", dish: dish.key });
    else faults.push(...checkMass("DISH", dish.key, inGrams, portionGrams(dish)));
    if (dish.portion.kind === "PIECES") {
      const { pieces, stepPieces } = dish.portion;
      const steps = pieces / stepPieces;
      if (Math.abs(steps - Math.round(steps)) > 1e-9)
        faults.push({ kind: "PiecesOffStep", dish: dish.key, pieces, stepPieces });
    }
  }
  return faults.length > 0 ? fail(faults) : ok(undefined);
}
