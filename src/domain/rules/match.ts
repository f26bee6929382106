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
  if (food.allergens.length + bought.allergens.length + labels.length === 0) return false;
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
function matchesIngredient(clause: MatcherClause, ingredient: FlatIngredient, labels: readonly LabelBrief[]): boolean {
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

/** Fields that speak of ingredients; `wholly` only says of how many. */
function speaksOfIngredients(clause: MatcherClause): boolean {
  return (
    clause.allergens !== undefined ||
    clause.groups !== undefined ||
    clause.foods !== undefined ||
    clause.kinds !== undefined ||
    clause.origins !== undefined ||
    clause.chokingClasses !== undefined ||
    clause.forms !== undefined ||
    clause.wholeGrain !== undefined
  );
}

/** What a matcher means in an item. */
export interface Meant {
  /** The ingredients it fits, each once, in the dish's order. */
  readonly ingredients: readonly FlatIngredient[];
  /** A clause about the dish alone, or one that says wholly, means the item as it is served. */
  readonly wholeItem: boolean;
}

/** Null when no clause holds for the item: its dish fields for the dish, its ingredient fields for one ingredient or, wholly, for all. */
export function meantBy(matcher: Matcher, item: MatchItem): Meant | null {
  const { ingredients } = item.derived;
  const fitting: FlatIngredient[][] = [];
  let wholeItem = false;
  for (const clause of matcher.anyOf) {
    if (!matchesDish(clause, item)) continue;
    const fits = ingredients.filter((ingredient) => matchesIngredient(clause, ingredient, item.labels));
    if (clause.wholly === true ? fits.length < ingredients.length : fits.length === 0) continue;
    fitting.push(fits);
    wholeItem ||= clause.wholly === true || !speaksOfIngredients(clause);
  }
  const [first, ...more] = fitting;
  if (first === undefined) return null;
  if (more.length === 0) return { ingredients: first, wholeItem };
  const meant = new Set(fitting.flat());
  return { ingredients: ingredients.filter((ingredient) => meant.has(ingredient)), wholeItem };
}

/** True when the matcher means the item or anything in it. */
export const matches = (matcher: Matcher, item: MatchItem): boolean => meantBy(matcher, item) !== null;

/** The ingredients a matcher selects in an item, for counting kinds; empty when the item does not match. */
export const matchingIngredients = (matcher: Matcher, item: MatchItem): readonly FlatIngredient[] =>
  meantBy(matcher, item)?.ingredients ?? [];
