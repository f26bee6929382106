/** Which own foods and dishes count for whom, and the catalogue with them. */
import { createHash } from "node:crypto";
import { isOwnKey } from "../../shared/own-catalogue.js";
import type { OwnCatalogueRows } from "../database/own-catalogue.js";
import type { CatalogueIndex } from "../domain/catalogue/derive.js";
import { indexWithOwn, type OwnRows } from "../domain/catalogue/own-rows.js";
import type { App } from "./app.js";

function ownRows(app: App, foods: OwnRows["foods"], dishes: OwnRows["dishes"]): OwnRows | null {
  if (foods.length + dishes.length === 0) return null;
  const digest = createHash("sha256")
    .update(JSON.stringify([foods, dishes]))
    .digest("hex");
  return { version: `${app.index.version}+own-${digest.slice(0, 16)}`, foods, dishes };
}

/**
 * What a household plans with: the foods and dishes on its list, and of those removed from it the dishes that still stand in
 * the plan at hand, with what goes into them. Null when it has none.
 * @param standing dish keys of the plan and of its pins
 */
export function rowsToPlanWith(
  app: App,
  seen: OwnCatalogueRows,
  householdId: string,
  standing: readonly string[],
): OwnRows | null {
  const kept = new Set(standing.filter(isOwnKey));
  const dishes = seen.dishes
    .filter((row) => row.householdId === householdId && (!row.removed || kept.has(row.dish.key)))
    .map(({ dish }) => dish);
  const needed = new Set(dishes.flatMap(({ ingredients }) => ingredients.map(({ food }) => food)));
  const foods = seen.foods
    .filter((row) => row.householdId === householdId && (!row.removed || needed.has(row.food.key)))
    .map(({ food }) => food);
  return ownRows(app, foods, dishes);
}

/** The index a household plans with. */
export const indexFor = (app: App, own: OwnRows | null): CatalogueIndex =>
  own === null ? app.index : indexWithOwn(app.reference.catalogue, app.index, own);

/** Everything the reader may see by name: removed rows and those of a child's other home included. For showing, never for planning. */
export function indexSeen(app: App, seen: OwnCatalogueRows): CatalogueIndex {
  const foods = seen.foods.map(({ food }) => food);
  return indexFor(
    app,
    ownRows(
      app,
      foods,
      seen.dishes.map(({ dish }) => dish),
    ),
  );
}
