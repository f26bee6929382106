import type { Dish } from "../../../shared/catalogue.js";
import type { ProcessingTag, SlotCode } from "../../../shared/codes.js";
import type { Matcher, MatcherClause } from "../../../shared/rule-set.js";
import { membersOf } from "./check-safety.js";
import { purchaseChain } from "./week-read.js";
import type { Part, WeekRead } from "./week-read.js";

/** What a matcher is held against: a box item, or a dish of an earlier week whose slot is not on record. */
export interface Subject {
  readonly dish: Dish;
  readonly slots: readonly SlotCode[];
  readonly grams: number;
  readonly parts: readonly Part[];
}

/** A match: the ingredients meant, and how many grams they (or, for a clause about the whole dish, the item) weigh. */
export interface Match {
  readonly parts: readonly Part[];
  readonly grams: number;
  /** A clause means the item as it is served. */
  readonly wholeItem: boolean;
}

/** What is on record of foods. */
export type Records = Pick<WeekRead, "foods" | "labels">;

/** Absent field: no demand. */
const among = <T>(wanted: readonly T[] | undefined, found: readonly T[]): boolean =>
  !wanted || found.some((value) => wanted.includes(value));

/** How it is made stands with the dish; sweets and bagged snacks among its ingredients make it one whatever stands there. */
function processingOf({ dish, parts }: Subject): ProcessingTag[] {
  const bringing = parts.flatMap(({ food: { group } }): ProcessingTag[] =>
    group === "CONFECTIONERY" || group === "SAVOURY_SNACK" ? [group] : [],
  );
  return [...dish.processing, ...bringing];
}

function dishFits(clause: MatcherClause, subject: Subject): boolean {
  const { dish, slots } = subject;
  return (
    among(clause.dishes, [dish.key]) &&
    among(clause.slots, slots) &&
    among(clause.processing, processingOf(subject)) &&
    among(clause.starch, [dish.starch]) &&
    among(clause.protein, [dish.protein]) &&
    among(clause.cutlery, [dish.cutlery]) &&
    among(clause.spill, [dish.spill]) &&
    (clause.cookedInFat === undefined || clause.cookedInFat === dish.cookedInFat)
  );
}

function statesIngredient(clause: MatcherClause): boolean {
  return [
    clause.allergens,
    clause.groups,
    clause.foods,
    clause.kinds,
    clause.origins,
    clause.chokingClasses,
    clause.forms,
    clause.wholeGrain,
  ].some((field) => field !== undefined);
}

/** A rule that names an allergen means what the food always has, what a label declares and a may-contain on record. */
function bringsAllergen(week: Records, { food }: Part, allergens: NonNullable<MatcherClause["allergens"]>): boolean {
  const named = allergens.flatMap(membersOf);
  return purchaseChain(food, week.foods).some(
    (row) =>
      among(named, row.allergens) ||
      (week.labels.get(row.key) ?? []).some((label) => among(named, label.contains) || among(named, label.mayContain)),
  );
}

function partFits(week: Records, clause: MatcherClause, part: Part): boolean {
  const { food, form } = part;
  return (
    among(clause.groups, [food.group]) &&
    among(clause.foods, [food.key]) &&
    among(clause.kinds, [food.kind]) &&
    among(clause.origins, food.origins) &&
    among(clause.chokingClasses, food.chokingClasses) &&
    among(clause.forms, [form]) &&
    (clause.wholeGrain === undefined || clause.wholeGrain === food.wholeGrain) &&
    (clause.allergens === undefined || bringsAllergen(week, part, clause.allergens))
  );
}

/**
 * Holds a matcher against an item; null: no clause matches. Ingredient fields must hold together for one ingredient, with
 * `wholly` for every one. A clause without ingredient fields, and a `wholly` one, mean the item as it is served; any other
 * means the ingredients it matched, each counted once over all clauses.
 */
export function matchSubject(week: Records, matcher: Matcher, subject: Subject): Match | null {
  const meant = new Set<Part>();
  let matched = false;
  let wholeItem = false;
  for (const clause of matcher.anyOf) {
    if (!dishFits(clause, subject)) continue;
    const aboutParts = statesIngredient(clause);
    const fitting = aboutParts ? subject.parts.filter((part) => partFits(week, clause, part)) : subject.parts;
    const wholly = clause.wholly === true;
    if (aboutParts && (fitting.length === 0 || (wholly && fitting.length < subject.parts.length))) continue;
    matched = true;
    wholeItem ||= !aboutParts || wholly;
    for (const part of fitting) meant.add(part);
  }
  if (!matched) return null;
  const parts = [...meant];
  return { parts, wholeItem, grams: wholeItem ? subject.grams : parts.reduce((sum, part) => sum + part.grams, 0) };
}
