/** A household's own foods and dishes beside the reference catalogue. Their keys never collide: see `isOwnKey`. */
import type { Dish, Food } from "../../../shared/catalogue.js";
import { isOwnKey } from "../../../shared/own-catalogue.js";
import type { CatalogueBrief } from "../brief.js";
import { deriveDish, type CatalogueIndex, type DerivedDish } from "./derive.js";
import { indexRetention } from "./retention.js";

export interface OwnRows {
  /** Of the reference catalogue and these rows together; another one whenever either changes. */
  readonly version: string;
  readonly foods: readonly Food[];
  readonly dishes: readonly Dish[];
}

/** The catalogue one household plans with: the reference rows first, its own after them. */
export function withOwnRows(reference: CatalogueBrief, own: OwnRows): CatalogueBrief {
  return {
    ...reference,
    version: own.version,
    foods: [...reference.foods, ...own.foods],
    dishes: [...reference.dishes, ...own.dishes],
  };
}

/** What `withOwnRows` added; null for a catalogue that has nothing of a household's own. */
export function ownRowsOf(catalogue: CatalogueBrief): OwnRows | null {
  const foods = catalogue.foods.filter(({ key }) => isOwnKey(key));
  const dishes = catalogue.dishes.filter(({ key }) => isOwnKey(key));
  return foods.length + dishes.length === 0 ? null : { version: catalogue.version, foods, dishes };
}

/**
 * The index of `withOwnRows(reference, own)` without deriving the reference dishes again. Throws, when asked for it, on an own
 * dish that names an unknown food or base.
 */
export function indexWithOwn(reference: CatalogueBrief, index: CatalogueIndex, own: OwnRows): CatalogueIndex {
  const foods = new Map(own.foods.map((food) => [food.key, food]));
  const dishes = new Map(own.dishes.map((dish) => [dish.key, dish]));
  const derived = new Map<string, DerivedDish>();
  const rows = {
    food: (key: string) => foods.get(key) ?? index.food(key),
    base: index.base,
    cooking: indexRetention(reference.retention),
  };
  return {
    version: own.version,
    dishes: [...index.dishes, ...own.dishes],
    food: rows.food,
    base: index.base,
    dish: (key) => dishes.get(key) ?? index.dish(key),
    derived(key) {
      const dish = dishes.get(key);
      if (dish === undefined) return index.derived(key);
      const known = derived.get(key);
      if (known !== undefined) return known;
      const result = deriveDish(dish, rows);
      if (!result.ok) throw new Error(`dish ${key} names unknown rows: ${JSON.stringify(result.error)}`);
      derived.set(key, result.value);
      return result.value;
    },
  };
}
