import type { Food } from "../../../shared/catalogue.js";
import type { ShoppingLinePlan } from "../week.js";
import { labelsNeeded } from "./check-safety.js";
import type { Fault } from "./fault.js";
import { groupBy, purchaseChain } from "./week-read.js";
import type { WeekRead } from "./week-read.js";

/** Grams as bought. `least` leaves out what packed boxes took: that food is bought and gone. */
interface Need {
  least: number;
  most: number;
}

/** The food to buy and grams of it, as sold, for some edible grams of a recipe row; null when a row is unknown. */
function toBuy(food: Food, grams: number, foods: ReadonlyMap<string, Food>): { food: Food; grams: number } | null {
  const chain = purchaseChain(food, foods);
  const bought = chain.at(-1);
  if (!bought || bought.boughtAs) return null;
  // `gramsPerGram` already counts the refuse of what is sold; a row bought as it stands still has its own.
  const factor =
    chain.length === 1
      ? 1 / (1 - food.refusePercent / 100)
      : chain.reduce((product, row) => product * (row.boughtAs?.gramsPerGram ?? 1), 1);
  return { food: bought, grams: grams * factor };
}

function findNeeds(week: WeekRead): Map<string, Need> {
  const needs = new Map<string, Need>();
  const add = (food: Food | undefined, grams: number, packed: boolean): void => {
    const buy = food && toBuy(food, grams, week.foods);
    // Water comes from the tap.
    if (!buy || buy.food.group === "WATER") return;
    const need = needs.get(buy.food.key) ?? { least: 0, most: 0 };
    need.most += buy.grams;
    if (!packed) need.least += buy.grams;
    needs.set(buy.food.key, need);
  };
  for (const { parts, packed } of week.items)
    for (const part of parts) if (part.base === null) add(part.food, part.grams, packed);
  for (const batch of week.draft.batches) {
    if (batch.made) continue;
    for (const { food, grams } of week.bases.get(batch.base)?.ingredients ?? [])
      add(week.foods.get(food), grams * batch.batches, false);
  }
  return needs;
}

function checkLine(week: WeekRead, line: ShoppingLinePlan, food: Food, need: Need): Fault[] {
  const at = { food: line.food };
  const faults: Fault[] = [];
  const { neededGrams, fromStockGrams, packs, packGrams } = line;
  // A line may be rounded up to the next gram.
  const rounding = 1;
  if (!(neededGrams >= need.least - rounding && neededGrams <= need.most + rounding))
    faults.push({ kind: "NEEDED_GRAMS_WRONG", ...at, found: neededGrams, limit: need.least });
  const stock = week.brief.stock.filter((row) => row.food === line.food).reduce((sum, row) => sum + row.grams, 0);
  if (!(fromStockGrams >= 0 && fromStockGrams <= stock + rounding / 2))
    faults.push({ kind: "STOCK_OVERDRAWN", ...at, found: fromStockGrams, limit: stock });
  if (packGrams !== food.pack.grams || !Number.isInteger(packs) || packs < 0)
    faults.push({ kind: "PACK_WRONG", ...at, found: packGrams, limit: food.pack.grams });
  const have = fromStockGrams + packs * packGrams;
  // Held against the checker's own need, not only the line's: a rounded line must still buy enough.
  if (!(have >= Math.max(neededGrams, need.least) - rounding / 2))
    faults.push({ kind: "TOO_LITTLE_BOUGHT", ...at, found: have, limit: neededGrams });
  const fewest = Math.max(0, Math.ceil((neededGrams - Math.min(stock, neededGrams)) / food.pack.grams - 1e-6));
  if (packs > fewest) faults.push({ kind: "TOO_MUCH_BOUGHT", ...at, found: packs, limit: fewest });
  if (line.costMinor !== packs * food.pack.priceMinor)
    faults.push({ kind: "COST_WRONG", ...at, found: line.costMinor, limit: packs * food.pack.priceMinor });
  if (!(Math.abs(line.spareGrams - (have - neededGrams)) <= rounding))
    faults.push({ kind: "SPARE_WRONG", ...at, found: line.spareGrams, limit: have - neededGrams });
  return faults;
}

/** Everything needed is in stock or bought, in the fewest packs, at the price of the packs, with labels to read marked. */
export function checkShopping(week: WeekRead): Fault[] {
  const needs = findNeeds(week);
  const lines = groupBy(week.draft.shopping, (line) => line.food);
  const faults: Fault[] = [];
  for (const [food, need] of needs) {
    if (!lines.has(food) && need.least > 1e-6) faults.push({ kind: "NOT_BOUGHT", food, found: 0, limit: need.least });
  }
  for (const food of new Set(week.items.flatMap(({ parts }) => parts.map((part) => part.food)))) {
    // A row that says it is bought as something the catalogue does not sell cannot be shopped for.
    if (!toBuy(food, 1, week.foods)) faults.push({ kind: "FOOD_UNKNOWN", food: food.boughtAs?.food ?? food.key });
  }
  for (const [key, same] of lines) {
    const [line] = same;
    const food = week.foods.get(key);
    if (!line || !food) continue;
    if (same.length > 1) faults.push({ kind: "BOUGHT_TWICE", food: key });
    const need = needs.get(key);
    if (need) faults.push(...checkLine(week, line, food, need));
    else if (line.packs > 0 && food.group !== "WATER")
      faults.push({ kind: "BOUGHT_FOR_NOTHING", food: key, found: line.packs, limit: 0 });
  }
  const unread = new Set(week.items.flatMap((read) => labelsNeeded(week, read)));
  for (const key of unread) {
    const food = week.foods.get(key);
    const bought = food && toBuy(food, 1, week.foods)?.food.key;
    if (bought !== undefined && lines.get(bought)?.some((line) => !line.readLabel))
      faults.push({ kind: "LABEL_NOT_FLAGGED", food: bought });
  }
  return faults;
}
