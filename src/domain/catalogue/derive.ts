/**
 * What follows from a catalogue's rows: a dish's ingredients with its bases dissolved, and from them nutrients, allergens,
 * origins and cost. Nothing here is typed in by hand for a dish; a row that is missing is a fault, never a blank.
 */
import type { Base, Catalogue, Dish, Food, Ingredient, Retention } from "../../../shared/catalogue.js";
import {
  nutrientTag,
  type AllergenCode,
  type NutrientTag,
  type OriginCode,
  type ProcessingTag,
  type ServedForm,
} from "../../../shared/codes.js";
import type { CatalogueBrief } from "../brief.js";
import { fail, ok, type Result } from "../result.js";
import { classifyProcessing } from "./processing.js";
import { indexRetention, whole, type Cooking, type Retained } from "./retention.js";

export interface FlatIngredient {
  readonly food: Food;
  /** The row it is bought as: the raw one of a cooked row, else the food itself. Its label and allergens count too. */
  readonly bought: Food;
  /** Edible grams in one reference portion, as the composition row describes the food. */
  readonly grams: number;
  readonly form: ServedForm;
  /** How it is cooked here and what that leaves of it; null for what is eaten raw or entered as the cooked row. */
  readonly cooking: Cooking | null;
  /** The base it comes in with, null for an ingredient of the dish itself. */
  readonly viaBase: string | null;
}

export interface DerivedDish {
  readonly dish: Dish;
  /** Reference portion as served, grams. */
  readonly grams: number;
  /** Bases dissolved: each base's ingredients times grams of the base over its batch's ready grams. */
  readonly ingredients: readonly FlatIngredient[];
  /**
   * For the reference portion: the sum of what is known to be left after cooking, for minima and for show. A nutrient no
   * ingredient knows is absent.
   */
  readonly nutrients: Readonly<Partial<Record<NutrientTag, number>>>;
  /** The same sums for maxima: where no retention factor was read, cooking takes nothing. */
  readonly nutrientsAtMost: Readonly<Partial<Record<NutrientTag, number>>>;
  /** Every food and nutrient the sums above had to leave out. */
  readonly missing: readonly { readonly food: string; readonly nutrient: NutrientTag }[];
  readonly freeSugarGrams: number;
  readonly addedSugarGrams: number;
  /** Allergens its foods always have, sorted; what a brand adds is on its label. */
  readonly allergens: readonly AllergenCode[];
  /** Keys of foods sold with a label, sorted. */
  readonly packagedFoods: readonly string[];
  readonly origins: readonly OriginCode[];
  /** What its row says and what its foods bring, sorted. */
  readonly processing: readonly ProcessingTag[];
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
  | {
      readonly kind: "UnknownRetention";
      readonly of: RowKind;
      readonly key: string;
      readonly food: string;
      readonly retention: string;
    }
  | { readonly kind: "DuplicateRetention"; readonly code: string }
  /** A row that describes the cooked food is said to be cooked again: its losses would count twice. */
  | { readonly kind: "CookedTwice"; readonly of: RowKind; readonly key: string; readonly food: string }
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
export const massOutOverIn = { least: 0.55, most: 1.02 };

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
  cooking(code: string): Cooking | undefined;
}

type UnknownRow = Extract<CatalogueFault, { kind: "UnknownFood" | "UnknownBase" | "UnknownRetention" }>;

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
    const { retention, form, grams } = ingredient;
    const cooking = retention === undefined ? null : rows.cooking(retention);
    if (cooking === undefined) {
      const of = base === null ? "DISH" : "BASE";
      unknown.push({ kind: "UnknownRetention", of, key: base ?? dish.key, food: food.key, retention: retention ?? "" });
      return;
    }
    flat.push({ food, bought, grams: grams * factor, form, cooking, viaBase: base });
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
export function labelledAs({ food, bought }: Pick<FlatIngredient, "food" | "bought">): string | null {
  if (food.packaged) return food.key;
  return bought.packaged ? bought.key : null;
}

/** What cooking leaves of a nutrient of an ingredient. */
function retainedIn({ cooking }: FlatIngredient, nutrient: NutrientTag): Retained {
  return cooking === null ? whole : cooking.retained[nutrient];
}

/** Derives one dish from the rows; fails with every unknown food, base and retention code it names. */
export function deriveDish(dish: Dish, rows: Rows): Result<DerivedDish, UnknownRow[]> {
  const flat = flatten(dish, rows);
  if (!flat.ok) return flat;
  const ingredients = flat.value;
  const foods = [...new Map(ingredients.map((i) => [i.food.key, i.food])).values()];
  const nutrients: Partial<Record<NutrientTag, number>> = {};
  const nutrientsAtMost: Partial<Record<NutrientTag, number>> = {};
  const missing: { food: string; nutrient: NutrientTag }[] = [];
  for (const nutrient of nutrientTag.options) {
    let known = false;
    let least = 0;
    let most = 0;
    for (const ingredient of ingredients) {
      const per100 = ingredient.food.nutrients[nutrient];
      if (per100 === undefined) continue;
      known = true;
      const raw = (ingredient.grams * per100) / 100;
      const { atLeast, atMost } = retainedIn(ingredient, nutrient);
      least += raw * atLeast;
      most += raw * atMost;
    }
    if (known) {
      nutrients[nutrient] = least;
      nutrientsAtMost[nutrient] = most;
    }
    for (const food of foods) if (food.nutrients[nutrient] === undefined) missing.push({ food: food.key, nutrient });
  }
  let freeSugarGrams = 0;
  let addedSugarGrams = 0;
  let costMinor = 0;
  for (const ingredient of ingredients) {
    freeSugarGrams += (ingredient.grams * ingredient.food.freeSugarGrams) / 100;
    addedSugarGrams += (ingredient.grams * ingredient.food.addedSugarGrams) / 100;
    costMinor += costPart(ingredient).costMinor;
  }
  return ok({
    dish,
    grams: portionGrams(dish),
    ingredients,
    nutrients,
    nutrientsAtMost,
    missing,
    freeSugarGrams,
    addedSugarGrams,
    allergens: sortedUnique(ingredients.flatMap(({ food, bought }) => [...food.allergens, ...bought.allergens])),
    packagedFoods: sortedUnique(ingredients.flatMap((ingredient) => labelledAs(ingredient) ?? [])),
    origins: sortedUnique(foods.flatMap((food) => food.origins)),
    processing: classifyProcessing(dish, foods).map(({ tag }) => tag),
    costMinor,
  });
}

/** One addend of a dish's figure; `amount` is what the figure counts of it, in the nutrient's unit. */
export interface NutrientPart {
  readonly food: Food;
  readonly viaBase: string | null;
  readonly grams: number;
  /** In 100 g of the food as its row describes it. */
  readonly per100: number;
  /** How it is cooked here; null for what is eaten as its row stands. */
  readonly retention: Retention | null;
  readonly retained: Retained;
  readonly amount: number;
}

export interface NutrientDerivation {
  readonly nutrient: NutrientTag;
  /** Null when no ingredient's figure is known. */
  readonly total: number | null;
  readonly atMost: number | null;
  readonly parts: readonly NutrientPart[];
  /** Keys of the foods the table has no figure for. */
  readonly missing: readonly string[];
}

/** How a dish's figure of one nutrient came about, for the reference portion: the parts add up to the total. */
export function explainNutrient(derived: DerivedDish, nutrient: NutrientTag): NutrientDerivation {
  const parts = derived.ingredients.flatMap((ingredient): NutrientPart[] => {
    const { food, grams, viaBase, cooking } = ingredient;
    const per100 = food.nutrients[nutrient];
    if (per100 === undefined) return [];
    const retained = retainedIn(ingredient, nutrient);
    const amount = ((grams * per100) / 100) * retained.atLeast;
    return [{ food, viaBase, grams, per100, retention: cooking?.row ?? null, retained, amount }];
  });
  return {
    nutrient,
    total: derived.nutrients[nutrient] ?? null,
    atMost: derived.nutrientsAtMost[nutrient] ?? null,
    parts,
    missing: derived.missing.filter((gap) => gap.nutrient === nutrient).map(({ food }) => food),
  };
}

/** One addend of a dish's cost. */
export interface CostPart {
  readonly food: Food;
  readonly viaBase: string | null;
  /** What is bought for it, and how much as sold, refuse and cooking losses counted. */
  readonly bought: Food;
  readonly boughtGrams: number;
  /** Minor units with fractions. */
  readonly costMinor: number;
}

function costPart({ food, bought, grams, viaBase }: FlatIngredient): CostPart {
  const boughtGrams = asBought(food, grams, () => bought).grams;
  return { food, viaBase, bought, boughtGrams, costMinor: (boughtGrams * bought.pack.priceMinor) / bought.pack.grams };
}

/** How a dish's cost came about, for the reference portion: the parts add up to it. */
export function explainCost(derived: DerivedDish): CostPart[] {
  return derived.ingredients.map(costPart);
}

/** Which foods bring each of a dish's allergens: the food itself or the row it is bought as. */
export function explainAllergens(derived: DerivedDish): { allergen: AllergenCode; foods: Food[] }[] {
  const rows = new Map(derived.ingredients.flatMap(({ food, bought }) => [food, bought]).map((row) => [row.key, row]));
  return derived.allergens.map((allergen) => ({
    allergen,
    foods: [...rows.values()].filter(({ allergens }) => allergens.includes(allergen)),
  }));
}

/** Look-ups over a catalogue that passed `checkCatalogue`; a dish is derived when first asked for and kept. */
export function indexCatalogue(catalogue: CatalogueBrief): CatalogueIndex {
  const foods = new Map(catalogue.foods.map((food) => [food.key, food]));
  const bases = new Map(catalogue.bases.map((base) => [base.key, base]));
  const dishes = new Map(catalogue.dishes.map((dish) => [dish.key, dish]));
  const derived = new Map<string, DerivedDish>();
  const rows: Rows = {
    food: (key) => foods.get(key),
    base: (key) => bases.get(key),
    cooking: indexRetention(catalogue.retention),
  };
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

function checkCooking(
  of: RowKind,
  { key, ingredients }: { readonly key: string; readonly ingredients: readonly Ingredient[] },
  foods: ReadonlyMap<string, Food>,
  codes: ReadonlySet<string>,
): CatalogueFault[] {
  return ingredients.flatMap(({ food, retention }): CatalogueFault[] => {
    if (retention === undefined) return [];
    if (!codes.has(retention)) return [{ kind: "UnknownRetention", of, key, food, retention }];
    return foods.get(food)?.boughtAs == null ? [] : [{ kind: "CookedTwice", of, key, food }];
  });
}

function checkMass(of: RowKind, key: string, inGrams: number, outGrams: number): CatalogueFault[] {
  const share = outGrams / inGrams;
  if (share >= massOutOverIn.least && share <= massOutOverIn.most) return [];
  return [{ kind: "MassBalance", of, key, inGrams, outGrams }];
}

function sumGrams(parts: readonly { readonly grams: number }[]): number {
  return parts.reduce((sum, part) => sum + part.grams, 0);
}

/** Checks a whole catalogue and reports every fault, in the order keys, foods, bases, dishes. */
export function checkCatalogue(catalogue: Catalogue): Result<void, CatalogueFault[]> {
  const foods = new Map(catalogue.foods.map((food) => [food.key, food]));
  const bases = new Map(catalogue.bases.map((base) => [base.key, base]));
  const codes = catalogue.retention.map(({ code }) => code);
  const known = new Set(codes);
  const faults: CatalogueFault[] = [...new Set(codes.filter((code, at) => codes.indexOf(code) !== at))].map((code) => ({
    kind: "DuplicateRetention",
    code,
  }));
  faults.push(
    ...findDuplicateKeys("FOOD", catalogue.foods),
    ...findDuplicateKeys("BASE", catalogue.bases),
    ...findDuplicateKeys("DISH", catalogue.dishes),
    ...findDuplicateNdbs(catalogue.foods),
  );
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
    faults.push(...checkCooking("BASE", base, foods, known));
    faults.push(...checkMass("BASE", base.key, sumGrams(base.ingredients), base.batchGrams));
  }
  for (const dish of catalogue.dishes) {
    for (const { food } of dish.ingredients) {
      if (!foods.has(food)) faults.push({ kind: "UnknownFood", of: "DISH", key: dish.key, food });
    }
    for (const { base } of dish.bases) {
      if (!bases.has(base)) faults.push({ kind: "UnknownBase", dish: dish.key, base });
    }
    faults.push(...checkCooking("DISH", dish, foods, known));
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
