/** What to buy for a week: grams as sold, stock taken off, rounded up to packs. */
import { foodSchema, type Food } from "../../../shared/catalogue.js";
import type { LabelBrief, StockBrief } from "../brief.js";
import { asBought, type CatalogueIndex } from "../catalogue/derive.js";
import type { BatchPlan, BoxPlan, ShoppingLinePlan } from "../week.js";

export interface ShopInput {
  readonly index: CatalogueIndex;
  /** What is still to be packed: food of a packed box is bought and gone. */
  readonly boxes: readonly BoxPlan[];
  readonly batches: readonly BatchPlan[];
  /** Grams as sold, by the food that is bought. */
  readonly stock: readonly StockBrief[];
  readonly labels: readonly LabelBrief[];
}

/** Sums of scaled portions carry float noise; anything below a thousandth of a gram is noise, not food. */
const NOISE_GRAMS = 1e-3;
const SECTIONS: readonly string[] = foodSchema.shape.shopSection.options;

/**
 * Shopping lines by section of the shop, then by food key. A food that stock covers stays on the list with 0 packs.
 * Needed grams are as sold: bought for a cooked row by the food's own ratio, otherwise edible grams / (1 - refuse
 * share), rounded up to whole grams once per food. `fromStockGrams` + `packs` x `packGrams` = `neededGrams` +
 * `spareGrams`. `readLabel`: sold with a label, and none is on record or a box asks for it. Bases made already or taken
 * from leftovers and freezer need nothing. Throws on a key the catalogue lacks.
 */
export function shop(input: ShopInput): ShoppingLinePlan[] {
  const { index } = input;
  const onRecord = new Set(input.labels.map((label) => label.food));
  /** A label on record may not speak of what a child avoids; then a box asks for it again. */
  const asked = new Set(input.boxes.flatMap((box) => box.items).flatMap((item) => item.labelsToRead));
  const needed = new Map<string, { food: Food; grams: number; readLabel: boolean }>();
  const add = (foodKey: string, edibleGrams: number): void => {
    const bought = whatIsBought(index, foodKey, edibleGrams);
    if (bought === null) return;
    const { row } = bought;
    const line = needed.get(bought.food.key) ?? { food: bought.food, grams: 0, readLabel: false };
    line.grams += bought.grams;
    if ([row, bought.food].some((food) => food.packaged && (asked.has(food.key) || !onRecord.has(food.key)))) {
      line.readLabel = true;
    }
    needed.set(bought.food.key, line);
  };

  for (const item of input.boxes.flatMap((box) => box.items)) {
    const { dish, grams } = index.derived(item.dish);
    for (const ingredient of dish.ingredients) add(ingredient.food, (ingredient.grams * item.grams) / grams);
  }
  for (const batch of input.batches) {
    if (batch.made) continue;
    const base = index.base(batch.base);
    if (base === undefined) throw new Error(`no base ${batch.base} in the catalogue`);
    for (const ingredient of base.ingredients) add(ingredient.food, ingredient.grams * batch.batches);
  }

  return [...needed.values()]
    .map(({ food, grams, readLabel }): ShoppingLinePlan => {
      const stockGrams = inStock(input.stock, food.key);
      const { neededGrams, fromStockGrams, packs } = countPacks(food, grams, stockGrams);
      const packGrams = food.pack.grams;
      return {
        food: food.key,
        section: food.shopSection,
        neededGrams,
        fromStockGrams,
        packs,
        packGrams,
        spareGrams: Math.floor(fromStockGrams + packs * packGrams - neededGrams),
        costMinor: packs * food.pack.priceMinor,
        readLabel,
        stockGrams: Math.floor(stockGrams),
      };
    })
    .filter((line) => line.neededGrams > 0)
    .sort(
      (a, b) =>
        SECTIONS.indexOf(a.section) - SECTIONS.indexOf(b.section) || (a.food < b.food ? -1 : a.food > b.food ? 1 : 0),
    );
}

/**
 * Grams in the cupboard once the week is over: what was there, less what the week takes of it, and of the spare what keeps into the
 * next week (opened, from `SpareUse`). Null where it is not known what was there.
 */
export function stockAfter({ stockGrams, fromStockGrams, spareGrams, spareUses }: ShoppingLinePlan): number | null {
  if (stockGrams === undefined || stockGrams === null) return null;
  const keeps = spareUses?.some((use) => use.kind === "KEEPS_FOR_NEXT_WEEK") === true;
  return stockGrams - fromStockGrams + (keeps ? spareGrams : 0);
}

/** What is bought for edible grams of a recipe row, and grams of it as sold; null for water, which comes from the tap. */
export function whatIsBought(
  index: CatalogueIndex,
  foodKey: string,
  edibleGrams: number,
): { readonly row: Food; readonly food: Food; readonly grams: number } | null {
  const row = foodOf(index, foodKey);
  return row.group === "WATER" ? null : { row, ...asBought(row, edibleGrams, (key) => index.food(key)) };
}

/** Grams of a food in the cupboard; never below zero. */
export const inStock = (stock: readonly StockBrief[], food: string): number =>
  Math.max(
    0,
    stock.filter((row) => row.food === food).reduce((sum, row) => sum + row.grams, 0),
  );

/** Whole grams needed, whole grams of them from the cupboard, and whole packs for the rest. */
export function countPacks(
  food: Food,
  grams: number,
  stockGrams: number,
): { readonly neededGrams: number; readonly fromStockGrams: number; readonly packs: number } {
  const neededGrams = Math.max(0, Math.ceil(grams - NOISE_GRAMS));
  const fromStockGrams = Math.min(neededGrams, Math.floor(stockGrams));
  return { neededGrams, fromStockGrams, packs: Math.ceil((neededGrams - fromStockGrams) / food.pack.grams) };
}

function foodOf(index: CatalogueIndex, key: string): Food {
  const food = index.food(key);
  if (food === undefined) throw new Error(`no food ${key} in the catalogue`);
  return food;
}
