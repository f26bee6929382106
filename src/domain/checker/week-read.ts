import type { Base, Dish, Food, Ingredient, Retention } from "../../../shared/catalogue.js";
import type { ServedForm } from "../../../shared/codes.js";
import type { BreakBrief, ChildBrief, ChildDayBrief, LabelBrief, SessionBrief, WeekBrief } from "../brief.js";
import type { BoxPlan, ItemPlan, WeekDraft } from "../week.js";

/** One ingredient of an item, bases dissolved. */
export interface Part {
  readonly food: Food;
  /** Edible grams in this item, as the composition row describes the food. */
  readonly grams: number;
  readonly form: ServedForm;
  readonly base: string | null;
  /** Retention code of what cooking does to it here; null: eaten as its row stands. */
  readonly cooked: string | null;
}

/** A box item whose child and dish exist. Day and break are absent when the plan invented them. */
export interface ItemRead {
  readonly child: ChildBrief;
  readonly day: ChildDayBrief | undefined;
  readonly atBreak: BreakBrief | undefined;
  readonly box: BoxPlan;
  readonly item: ItemPlan;
  readonly dish: Dish;
  /** Grams served over grams of the reference portion. */
  readonly scale: number;
  readonly parts: readonly Part[];
  /** Packed already: what was cooked and bought for it is gone. */
  readonly packed: boolean;
}

/** Brief and draft joined by key, once, for every check. */
export interface WeekRead {
  readonly brief: WeekBrief;
  readonly draft: WeekDraft;
  readonly foods: ReadonlyMap<string, Food>;
  readonly bases: ReadonlyMap<string, Base>;
  readonly dishes: ReadonlyMap<string, Dish>;
  /** The retention table by code. */
  readonly losses: ReadonlyMap<string, Retention>;
  readonly children: ReadonlyMap<string, ChildBrief>;
  readonly sessions: ReadonlyMap<string, SessionBrief>;
  /** Every label on record of a food; several products may stand behind one food, so all of them count. */
  readonly labels: ReadonlyMap<string, readonly LabelBrief[]>;
  readonly items: readonly ItemRead[];
}

/** Grams of the dish's reference portion. */
export function referenceGrams(dish: Dish): number {
  return dish.portion.kind === "PIECES" ? dish.portion.gramsPerPiece * dish.portion.pieces : dish.portion.grams;
}

/** The ingredients of `scale` reference portions. Foods and bases without a row are left out; they are faults of their own. */
export function partsOf(
  dish: Dish,
  scale: number,
  foods: ReadonlyMap<string, Food>,
  bases: ReadonlyMap<string, Base>,
): Part[] {
  const parts: Part[] = [];
  const add = ({ food: key, form, retention }: Ingredient, grams: number, base: string | null): void => {
    const food = foods.get(key);
    if (food) parts.push({ food, grams, form, base, cooked: retention ?? null });
  };
  for (const ingredient of dish.ingredients) add(ingredient, ingredient.grams * scale, null);
  for (const use of dish.bases) {
    const base = bases.get(use.base);
    if (!base) continue;
    for (const ingredient of base.ingredients)
      add(ingredient, (ingredient.grams * use.grams * scale) / base.batchGrams, base.key);
  }
  return parts;
}

/** A food and what is bought to make it, nearest first; a loop in the catalogue ends the walk. */
export function purchaseChain(food: Food, foods: ReadonlyMap<string, Food>): Food[] {
  const chain: Food[] = [];
  for (let next: Food | undefined = food; next && !chain.includes(next);) {
    chain.push(next);
    next = next.boughtAs ? foods.get(next.boughtAs.food) : undefined;
  }
  return chain;
}

export function groupBy<T>(rows: readonly T[], key: (row: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const row of rows) {
    const group = groups.get(key(row));
    if (group) group.push(row);
    else groups.set(key(row), [row]);
  }
  return groups;
}

export function readWeek(brief: WeekBrief, draft: WeekDraft): WeekRead {
  const foods = new Map(brief.catalogue.foods.map((row) => [row.key, row]));
  const bases = new Map(brief.catalogue.bases.map((row) => [row.key, row]));
  const dishes = new Map(brief.catalogue.dishes.map((row) => [row.key, row]));
  const children = new Map(brief.children.map((row) => [row.id, row]));
  const packed = new Set(
    brief.pins
      .filter((pin) => pin.because === "PACKED")
      .map((pin) => [pin.childId, pin.date, pin.breakKey, pin.slot, pin.position].join("|")),
  );
  const items = draft.boxes.flatMap((box) => {
    const child = children.get(box.childId);
    if (!child) return [];
    const day = child.days.find((row) => row.date === box.date);
    return box.items.flatMap((item): ItemRead[] => {
      const dish = dishes.get(item.dish);
      if (!dish) return [];
      const scale = item.grams / referenceGrams(dish);
      return [
        {
          child,
          day,
          box,
          item,
          dish,
          scale,
          atBreak: day?.breaks.find((row) => row.key === item.breakKey),
          parts: partsOf(dish, scale, foods, bases),
          packed: packed.has([child.id, box.date, item.breakKey, item.slot, item.position].join("|")),
        },
      ];
    });
  });
  return {
    brief,
    draft,
    foods,
    bases,
    dishes,
    children,
    items,
    losses: new Map(brief.catalogue.retention.map((row) => [row.code, row])),
    sessions: new Map(brief.sessions.map((row) => [row.key, row])),
    labels: groupBy(brief.labels, (label) => label.food),
  };
}

/** The facts that say where an item stands. */
export function place(read: ItemRead): {
  childId: string;
  date: string;
  breakKey: string;
  slot: string;
  position: number;
  dish: string;
} {
  const { breakKey, slot, position, dish } = read.item;
  return { childId: read.child.id, date: read.box.date, breakKey, slot, position, dish };
}
