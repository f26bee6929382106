/** What is left of the packs when the week is over, and what it is good for. */
import type { Food } from "../../../shared/catalogue.js";
import { addDays } from "../calendar/dates.js";
import type { CatalogueIndex } from "../catalogue/derive.js";
import type { ShoppingLinePlan, SpareUse } from "../week.js";
import { whatIsBought } from "./shopping.js";

export interface SpareInput {
  readonly index: CatalogueIndex;
  readonly lines: readonly ShoppingLinePlan[];
  /** Day on which each food is first taken from its pack, by the food that is bought. */
  readonly openedOn: ReadonlyMap<string, string>;
  /** First day of the week after this one. */
  readonly nextWeek: string;
  /** Which children may have a dish: it passed every rule for some place of theirs this week. */
  readonly mayHave: ReadonlyMap<string, readonly string[]>;
  /** Foods in the cupboard. */
  readonly inStock: ReadonlySet<string>;
}

/** Less than this is scraped out of the pack and not spoken of; our estimate. */
const LEAST_GRAMS = 10;
const MOST_DISHES = 3;
/** Sold dry: kept closed in a cupboard it keeps for months (common practice). A tin or a jar, once opened, does not. */
const driedSections: ReadonlySet<string> = new Set(["DRY_GOODS", "SPICES_OILS", "BAKERY"]);

/**
 * The lines with what their spare is good for, where it is worth speaking of: how long it keeps, whether it may be frozen, and up to
 * three dishes the children may have that eat of it, those first that need the least else bought, then those that take most.
 * Chilled keeping counts the day the pack is opened as the first. What nobody wrote down is said to be unknown, never guessed.
 */
export function withSpareUses(input: SpareInput): ShoppingLinePlan[] {
  const dishes = dishesByFood(input);
  return input.lines.map((line) => {
    const food = input.index.food(line.food);
    if (food === undefined || line.spareGrams < LEAST_GRAMS) return line;
    const eating = dishes.get(line.food) ?? [];
    return {
      ...line,
      spareUses: [
        keeping(food, input.openedOn.get(line.food), input.nextWeek),
        ...(food.keepsFrozenDays === null || food.shopSection === "FROZEN"
          ? []
          : [{ kind: "FREEZES" as const, days: food.keepsFrozenDays.value, source: food.keepsFrozenDays.source }]),
        ...(eating.length === 0 ? [] : [{ kind: "DISHES" as const, dishes: eating }]),
      ],
    };
  });
}

function keeping(food: Food, openedOn: string | undefined, nextWeek: string): SpareUse {
  if (food.shopSection === "FROZEN") return { kind: "KEEPS_FOR_NEXT_WEEK", where: "FREEZER", untilDate: null };
  const days = food.keepsChilledDays;
  if (days === null)
    return driedSections.has(food.shopSection)
      ? { kind: "KEEPS_FOR_NEXT_WEEK", where: "CUPBOARD", untilDate: null }
      : { kind: "KEEPING_UNKNOWN" };
  if (openedOn === undefined) return { kind: "KEEPING_UNKNOWN" };
  const untilDate = addDays(openedOn, Math.max(1, days) - 1);
  return untilDate >= nextWeek
    ? { kind: "KEEPS_FOR_NEXT_WEEK", where: "REFRIGERATOR", untilDate }
    : { kind: "EAT_BY", untilDate };
}

type EatingDish = Extract<SpareUse, { kind: "DISHES" }>["dishes"][number];

/** The best dishes for each food of the list, by the food that is bought. */
function dishesByFood({ index, lines, mayHave, inStock }: SpareInput): Map<string, EatingDish[]> {
  const listed = new Set([...lines.map((line) => line.food), ...inStock]);
  const found = new Map<string, { readonly row: EatingDish; readonly missing: number; readonly grams: number }[]>();
  for (const [dish, childIds] of mayHave) {
    const bought = new Map<string, number>();
    for (const { food, grams } of index.derived(dish).ingredients) {
      const line = whatIsBought(index, food.key, grams);
      if (line !== null) bought.set(line.food.key, (bought.get(line.food.key) ?? 0) + line.grams);
    }
    const missing = [...bought.keys()].filter((food) => !listed.has(food)).length;
    for (const [food, grams] of bought) {
      const rows = found.get(food) ?? [];
      rows.push({ row: { dish, childIds }, missing, grams });
      found.set(food, rows);
    }
  }
  return new Map(
    lines.map((line) => [
      line.food,
      (found.get(line.food) ?? [])
        .sort((a, b) => a.missing - b.missing || b.grams - a.grams || (a.row.dish < b.row.dish ? -1 : 1))
        .slice(0, MOST_DISHES)
        .map(({ row }) => row),
    ]),
  );
}
