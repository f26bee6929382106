import { z } from "zod";
import {
  allergenCode,
  allergenGroupCode,
  chokingClass,
  cutleryCode,
  foodGroup,
  localDate,
  nutrientTag,
  originCode,
  processingTag,
  proteinFamily,
  servedForm,
  slotCode,
  slug,
  spillClass,
  starchFamily,
  weekdayCode,
} from "./codes.js";

/**
 * One clause of a matcher: everything it states must hold. The ingredient fields (allergens, groups, foods, kinds, origins,
 * chokingClasses, forms) must hold together for one and the same ingredient, or, with `wholly`, for every ingredient
 * of the item. The dish fields must hold for the dish. `allergens` also matches a may-contain that is on record.
 */
export const matcherClause = z.strictObject({
  allergens: z
    .array(z.union([allergenCode, allergenGroupCode]))
    .min(1)
    .optional(),
  groups: z.array(foodGroup).min(1).optional(),
  foods: z.array(slug).min(1).optional(),
  kinds: z.array(slug).min(1).optional(),
  origins: z.array(originCode).min(1).optional(),
  chokingClasses: z.array(chokingClass).min(1).optional(),
  forms: z.array(servedForm).min(1).optional(),
  wholly: z.boolean().optional(),
  wholeGrain: z.boolean().optional(),
  dishes: z.array(slug).min(1).optional(),
  slots: z.array(slotCode).min(1).optional(),
  processing: z.array(processingTag).min(1).optional(),
  starch: z.array(starchFamily).min(1).optional(),
  protein: z.array(proteinFamily).min(1).optional(),
  cutlery: z.array(cutleryCode).min(1).optional(),
  spill: z.array(spillClass).min(1).optional(),
  cookedInFat: z.boolean().optional(),
});
export type MatcherClause = z.infer<typeof matcherClause>;

/** An item matches when any clause does. */
export const matcher = z.strictObject({ anyOf: z.array(matcherClause).min(1).max(200) });
export type Matcher = z.infer<typeof matcher>;

const common = {
  id: z.string().min(1).max(60),
  /** The sentence a family reads. */
  says: z.string().min(5).max(400),
  level: z.enum(["FORBID", "ADVISE"]),
  source: z.string().min(3).max(400),
  /** Break keys it applies at; absent: all. */
  breaks: z.array(slug).min(1).optional(),
  weekdays: z.array(weekdayCode).min(1).optional(),
  /** Age in whole years on the day of the meal: from <= age < under. */
  ages: z
    .strictObject({
      fromYears: z.number().int().min(0).max(19).optional(),
      underYears: z.number().int().min(1).max(20).optional(),
    })
    .optional(),
  /** How a week with fewer packed days is judged. */
  shortWeek: z.enum(["PRORATE", "PER_DAY", "SKIP"]).default("PRORATE"),
};
const bounds = { atLeast: z.number().min(0).optional(), atMost: z.number().min(0).optional() };

export const ruleSchema = z.discriminatedUnion("kind", [
  z.strictObject({ ...common, kind: z.literal("EXCLUDE"), matches: matcher }),
  z.strictObject({ ...common, kind: z.literal("ONLY"), matches: matcher }),
  z.strictObject({
    ...common,
    ...bounds,
    kind: z.literal("FREQUENCY"),
    matches: matcher,
    /** ITEMS counts box items, KINDS distinct food kinds among the matching ingredients, DAYS days with a matching item. */
    counts: z.enum(["ITEMS", "KINDS", "DAYS"]),
    per: z.enum(["BOX", "WEEK"]),
    /** Longer windows: 3 = once in three weeks. */
    weeks: z.number().int().min(1).max(12).default(1),
  }),
  z.strictObject({
    ...common,
    ...bounds,
    kind: z.literal("AMOUNT"),
    matches: matcher,
    unit: z.enum(["GRAMS", "CUPS", "OZ_EQ"]),
    per: z.enum(["BOX", "WEEK"]),
  }),
  z.strictObject({
    ...common,
    ...bounds,
    kind: z.literal("SHARE"),
    part: matcher,
    whole: matcher,
    unit: z.enum(["GRAMS", "OZ_EQ", "ITEMS"]),
  }),
  z.strictObject({
    ...common,
    ...bounds,
    kind: z.literal("NUTRIENT"),
    nutrient: z.union([nutrientTag, z.literal("FREE_SUGAR")]),
    per: z.enum(["ITEM", "BOX", "WEEK_MEAN"]),
    as: z.enum(["AMOUNT", "PERCENT_OF_ENERGY"]).default("AMOUNT"),
  }),
  z.strictObject({ ...common, kind: z.literal("TOGETHER"), first: matcher, second: matcher }),
  z.strictObject({
    ...common,
    kind: z.literal("SERVING"),
    noReheating: z.boolean().optional(),
    noRefrigerator: z.boolean().optional(),
    fingerFoodOnly: z.boolean().optional(),
    litterFree: z.boolean().optional(),
    noGlass: z.boolean().optional(),
    minutesToEat: z.number().int().min(5).max(90).optional(),
  }),
]);
export type Rule = z.infer<typeof ruleSchema>;
export type RuleKind = Rule["kind"];

export const ruleSetDocument = z.strictObject({
  format: z.literal("noonpail-rule-set/1"),
  key: slug,
  title: z.string().min(3).max(200),
  layer: z.enum(["JURISDICTION", "SCHOOL", "CLASS", "CHILD"]),
  jurisdiction: z.string().max(120).optional(),
  coversFoodFromHome: z.boolean(),
  language: z.string().regex(/^[a-z]{2}(-[A-Z]{2})?$/),
  version: z.number().int().min(1),
  inForceFrom: localDate,
  /** Last day in force; absent: until replaced. */
  inForceUntil: localDate.optional(),
  rules: z.array(ruleSchema).min(1).max(2000),
});
export type RuleSetDocument = z.infer<typeof ruleSetDocument>;
