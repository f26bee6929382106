/** Foods and dishes that households entered themselves: every row the reader may see, by one statement. */
import type { Dish, Food } from "../../shared/catalogue.js";
import type { AllergenCode } from "../../shared/codes.js";
import type { LabelBrief } from "../domain/brief.js";
import type { ReadTx, Tx } from "./database.js";

/** As it lies in own_food.body: what is eaten. */
export type OwnFoodBody = Omit<Food, "key" | "pack" | "shopSection">;
/** As it lies in own_dish.body. */
export type OwnDishBody = Omit<Dish, "key" | "steps">;

export interface OwnFoodRow {
  readonly id: string;
  readonly householdId: string;
  /** Where the reader is no member of its household, pack and price are not theirs to know: the price is NaN. */
  readonly food: Food;
  readonly removed: boolean;
  /** Null where nobody has read it, and for a reader from another household. */
  readonly label: LabelBrief | null;
  readonly productSince: string | null;
}
export interface OwnDishRow {
  readonly id: string;
  readonly householdId: string;
  /** Without steps where the reader is no member of its household. */
  readonly dish: Dish;
  readonly removed: boolean;
}
export interface OwnCatalogueRows {
  readonly foods: readonly OwnFoodRow[];
  readonly dishes: readonly OwnDishRow[];
}

interface StoredFood {
  readonly id: string;
  readonly householdId: string;
  readonly key: string;
  readonly body: OwnFoodBody;
  readonly removed: boolean;
  readonly shelf: {
    readonly packGrams: number;
    readonly priceMinor: number;
    readonly shopSection: Food["shopSection"];
    readonly productSince: string | null;
  } | null;
  readonly label: {
    readonly contains: readonly AllergenCode[];
    readonly mayContain: readonly AllergenCode[];
    readonly kinds: NonNullable<LabelBrief["kinds"]>;
    readonly readOn: string;
  } | null;
}
interface StoredDish {
  readonly id: string;
  readonly householdId: string;
  readonly key: string;
  readonly body: OwnDishBody;
  readonly removed: boolean;
  readonly steps: Dish["steps"] | null;
}
interface Stored {
  readonly foods: readonly StoredFood[];
  readonly dishes: readonly StoredDish[];
}

/** One text for both clients: row security decides what is in it. */
const STATEMENT = `select
  (select coalesce(json_agg(json_build_object('id', f.id, 'householdId', f.household_id, 'key', f.key, 'body', f.body, 'removed', f.removed,
      'shelf', (select json_build_object('packGrams', s.pack_grams, 'priceMinor', s.price_minor, 'shopSection', s.shop_section, 'productSince', s.product_since)
        from own_food_shelf s where s.own_food_id = f.id),
      'label', (select json_build_object('contains', l.contains, 'mayContain', l.may_contain, 'kinds', l.kinds, 'readOn', l.read_on)
        from own_food_label l where l.own_food_id = f.id)) order by f.key), '[]') from own_food f) as foods,
  (select coalesce(json_agg(json_build_object('id', d.id, 'householdId', d.household_id, 'key', d.key, 'body', d.body, 'removed', d.removed,
      'steps', (select w.steps from own_dish_work w where w.own_dish_id = d.id)) order by d.key), '[]') from own_dish d) as dishes`;

/** A price that is another household's business. */
const unknownPack: Food["pack"] = { grams: 1, priceMinor: Number.NaN };

function toRows({ foods, dishes }: Stored): OwnCatalogueRows {
  return {
    foods: foods.map(({ id, householdId, key, body, removed, shelf, label }) => ({
      id,
      householdId,
      removed,
      food: {
        ...body,
        key,
        pack: shelf === null ? unknownPack : { grams: shelf.packGrams, priceMinor: shelf.priceMinor },
        shopSection: shelf?.shopSection ?? "DRY_GOODS",
      },
      label: label === null ? null : { food: key, ...label },
      productSince: shelf?.productSince ?? null,
    })),
    dishes: dishes.map(({ id, householdId, key, body, removed, steps }) => ({
      id,
      householdId,
      removed,
      dish: { ...body, key, steps: steps ?? [] },
    })),
  };
}

/** With the rights of the reader of this transaction: their households' rows, and those in boxes of a child they share. */
export async function readOwnCatalogue(tx: ReadTx): Promise<OwnCatalogueRows> {
  const [row] = await tx.unsafe<Stored[]>(STATEMENT, [], { prepare: true });
  return toRows(row!);
}

/** The same inside a write transaction, which sees what it has written. */
export async function readOwnCatalogueIn(tx: Tx): Promise<OwnCatalogueRows> {
  const [row] = await tx.$queryRawUnsafe<Stored[]>(STATEMENT);
  return toRows(row!);
}
