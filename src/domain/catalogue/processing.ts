/** How processed a dish is: what its row says and what its foods say on their own. */
import type { Dish, Food } from "../../../shared/catalogue.js";
import type { FoodGroup, ProcessingTag } from "../../../shared/codes.js";

/** Groups that are a processing class by themselves: any amount of such a food makes the dish one. */
const impliedBy: Partial<Readonly<Record<FoodGroup, ProcessingTag>>> = {
  CONFECTIONERY: "CONFECTIONERY",
  SAVOURY_SNACK: "SAVOURY_SNACK",
};

/** Bought ready to eat or nearly so. Our own line, drawn by food group; a published scale was not applied. */
const readyMadeGroups: readonly FoodGroup[] = ["BREAD", "MEAT_PRODUCT", "CONDIMENT", "CONFECTIONERY", "SAVOURY_SNACK"];

export interface ProcessingClass {
  readonly tag: ProcessingTag;
  /** Keys of the foods that bring it; empty when it is how the dish is made. */
  readonly foods: readonly string[];
}

/** The classes of a dish, by tag; how it is made stands in its row, the rest follows from its foods. */
export function classifyProcessing(dish: Dish, foods: readonly Food[]): ProcessingClass[] {
  const byTag = new Map<ProcessingTag, string[]>(dish.processing.map((tag) => [tag, []]));
  for (const { key, group } of foods) {
    const tag = impliedBy[group];
    if (tag !== undefined) byTag.set(tag, [...new Set([...(byTag.get(tag) ?? []), key])]);
  }
  return [...byTag].map(([tag, keys]) => ({ tag, foods: keys })).sort((a, b) => (a.tag < b.tag ? -1 : 1));
}

/** Part of the mass that goes in which is bought ready made, 0 to 1. */
export function readyMadeShare(ingredients: readonly { readonly food: Food; readonly grams: number }[]): number {
  let all = 0;
  let ready = 0;
  for (const { food, grams } of ingredients) {
    all += grams;
    if (readyMadeGroups.includes(food.group)) ready += grams;
  }
  return all === 0 ? 0 : ready / all;
}
