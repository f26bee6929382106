/** Whether a box item is meant by a rule's matcher. */
import type { SlotCode } from "../../../shared/codes.js";
import type { Matcher, MatcherClause } from "../../../shared/rule-set.js";
import type { LabelBrief } from "../brief.js";
import { expandAllergen } from "../catalogue/allergens.js";
import type { DerivedDish, FlatIngredient } from "../catalogue/derive.js";

export interface MatchItem {
  readonly derived: DerivedDish;
  readonly slot: SlotCode;
  readonly labels: readonly LabelBrief[];
}

function isStatedIn<T>(stated: readonly T[] | undefined, value: T): boolean {
  return stated === undefined || stated.includes(value);
}

function sharesOne<T>(stated: readonly T[] | undefined, values: readonly T[]): boolean {
  return stated === undefined || values.some((value) => stated.includes(value));
}

/** A rule about an allergen means the food, what it is bought as, their labels and a may-contain on record alike. */
function hasAllergen(clause: MatcherClause, { food, bought }: FlatIngredient, labels: readonly LabelBrief[]): boolean {
  if (clause.allergens === undefined) return true;
  const meant = clause.allergens.flatMap((allergen) => expandAllergen(allergen));
  const onLabels = labels
    .filter((label) => label.food === food.key || label.food === bought.key)
    .flatMap((label) => [...label.contains, ...label.mayContain]);
  return [...food.allergens, ...bought.allergens, ...onLabels].some((allergen) => meant.includes(allergen));
}

/**
 * Whether one ingredient fits everything the clause says about ingredients: allergens, groups, foods, kinds, origins, choking
 * classes, forms, whole grain. A clause that says nothing about ingredients fits every one.
 */
export function matchesIngredient(
  clause: MatcherClause,
  ingredient: FlatIngredient,
  labels: readonly LabelBrief[],
): boolean {
  const { food, form } = ingredient;
  return (
    isStatedIn(clause.groups, food.group) &&
    isStatedIn(clause.foods, food.key) &&
    isStatedIn(clause.kinds, food.kind) &&
    sharesOne(clause.origins, food.origins) &&
    sharesOne(clause.chokingClasses, food.chokingClasses) &&
    isStatedIn(clause.forms, form) &&
    (clause.wholeGrain === undefined || clause.wholeGrain === food.wholeGrain) &&
    hasAllergen(clause, ingredient, labels)
  );
}

function matchesDish(clause: MatcherClause, { derived: { dish, processing }, slot }: MatchItem): boolean {
  return (
    isStatedIn(clause.dishes, dish.key) &&
    isStatedIn(clause.slots, slot) &&
    sharesOne(clause.processing, processing) &&
    isStatedIn(clause.starch, dish.starch) &&
    isStatedIn(clause.protein, dish.protein) &&
    isStatedIn(clause.cutlery, dish.cutlery) &&
    isStatedIn(clause.spill, dish.spill) &&
    (clause.cookedInFat === undefined || clause.cookedInFat === dish.cookedInFat)
  );
}

/** True when any clause holds for the item: its dish fields for the dish, its ingredient fields for one ingredient or, wholly, for all. */
export function matches(matcher: Matcher, item: MatchItem): boolean {
  const { ingredients } = item.derived;
  return matcher.anyOf.some((clause) => {
    const fits = (ingredient: FlatIngredient): boolean => matchesIngredient(clause, ingredient, item.labels);
    return matchesDish(clause, item) && (clause.wholly === true ? ingredients.every(fits) : ingredients.some(fits));
  });
}

/** The ingredients a matcher selects in an item, for amounts and for counting kinds; empty when the item does not match. */
export function matchingIngredients(matcher: Matcher, item: MatchItem): FlatIngredient[] {
  const { ingredients } = item.derived;
  const clauses = matcher.anyOf.filter((clause) => matches({ anyOf: [clause] }, item));
  return ingredients.filter((ingredient) =>
    clauses.some((clause) => matchesIngredient(clause, ingredient, item.labels)),
  );
}
