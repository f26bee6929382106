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

/** One allergen, or a family of them for all its members. */
const namedAllergen = z.enum([...allergenCode.options, ...allergenGroupCode.options]);

/**
 * One clause of a matcher: everything it states must hold. The ingredient fields (allergens, groups, foods, kinds, origins,
 * chokingClasses, forms) must hold together for one and the same ingredient, or, with `wholly`, for every ingredient
 * of the item. The dish fields must hold for the dish. `allergens` also matches a may-contain that is on record.
 */
export const matcherClause = z.strictObject({
  allergens: z.array(namedAllergen).min(1).optional(),
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

/** Age in whole years on the day of the meal: from <= age < under. */
const ageSpan = z.strictObject({
  fromYears: z.number().int().min(0).max(19).optional(),
  underYears: z.number().int().min(1).max(20).optional(),
});
/**
 * PRORATE: the days' share of the week's limit. PER_DAY: each day is held to one day's share. SKIP: not judged. The mean of a
 * week is taken over the days there are under either of the first two.
 */
const partOfWeek = z.enum(["PRORATE", "PER_DAY", "SKIP"]);

/**
 * How much of a food group an item brings. GRAMS and ML as served; ML of an ingredient is its grams over the density on its row,
 * of a whole item the volume of its dish. CUPS: cup equivalents of the US school meal pattern, in
 * which dried fruit counts double and raw leaves half. OZ_EQ: ounce equivalents as that programme credits grains and meat
 * alternates; OZ_EQ_MYPLATE: as its consumer guidance counts protein foods, which is another measure of the same name.
 * Cups and ounce equivalents are credited per item, rounded down; seeds/reference/credits.json says how.
 */
export const amountUnit = z.enum(["GRAMS", "ML", "CUPS", "OZ_EQ", "OZ_EQ_MYPLATE"]);
export type AmountUnit = z.infer<typeof amountUnit>;

const common = {
  id: z.string().min(1).max(60),
  /** The sentence a family reads. */
  says: z.string().min(5).max(400),
  level: z.enum(["FORBID", "ADVISE"]),
  source: z.string().min(3).max(400),
  /** Break keys it applies at; absent: all. */
  breaks: z.array(slug).min(1).optional(),
  weekdays: z.array(weekdayCode).min(1).optional(),
  ages: ageSpan.optional(),
  /** First and last day on which this rule holds, inside those of its document; absent: as long as the document. */
  inForceFrom: localDate.optional(),
  inForceUntil: localDate.optional(),
  /** How a week is judged in which fewer boxes are packed than in a full school week. */
  shortWeek: partOfWeek.default("PRORATE"),
  /**
   * How a week is judged in which the rule holds on some of the packed days only, because it or its document begins or ends
   * in that week; absent: as a short one.
   */
  splitWeek: partOfWeek.optional(),
};
/** A column of the food table, or the free sugars of WHO 2015 or the added ones of US 21 CFR 101.9, in g. */
export const ruleNutrient = z.enum([...nutrientTag.options, "FREE_SUGAR", "ADDED_SUGAR"]);
export type RuleNutrient = z.infer<typeof ruleNutrient>;

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
    unit: amountUnit,
    per: z.enum(["ITEM", "BOX", "WEEK"]),
  }),
  z.strictObject({
    ...common,
    ...bounds,
    kind: z.literal("SHARE"),
    part: matcher,
    whole: matcher,
    unit: z.enum([...amountUnit.options, "ITEMS"]),
  }),
  z.strictObject({
    ...common,
    ...bounds,
    kind: z.literal("NUTRIENT"),
    nutrient: ruleNutrient,
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

/** Every matcher that a rule states, with the field it stands in. */
export function matchersOf(rule: Rule): { readonly field: string; readonly matcher: Matcher }[] {
  switch (rule.kind) {
    case "EXCLUDE":
    case "ONLY":
    case "FREQUENCY":
    case "AMOUNT":
      return [{ field: "matches", matcher: rule.matches }];
    case "SHARE":
      return [
        { field: "part", matcher: rule.part },
        { field: "whole", matcher: rule.whole },
      ];
    case "TOGETHER":
      return [
        { field: "first", matcher: rule.first },
        { field: "second", matcher: rule.second },
      ];
    case "NUTRIENT":
    case "SERVING":
      return [];
  }
}

export const RULE_SET_FORMAT = "noonpail-rule-set/1";
export const MOST_RULES = 2000;

export const ruleSetDocument = z.strictObject({
  format: z.literal(RULE_SET_FORMAT),
  /** Names the rule set among those of its school, class, jurisdiction or child; the same in every version. */
  key: slug,
  title: z.string().min(3).max(200),
  layer: z.enum(["JURISDICTION", "SCHOOL", "CLASS", "CHILD"]),
  /** Of a JURISDICTION document: the schools that name it. */
  jurisdiction: z.string().min(1).max(120).optional(),
  /** Of a SCHOOL or CLASS document: the school's name as it is registered. Loading by ID needs neither. */
  school: z.string().min(1).max(200).optional(),
  /** Of a CLASS document: the class's name in that school. */
  schoolClass: z.string().min(1).max(120).optional(),
  coversFoodFromHome: z.boolean(),
  language: z.string().regex(/^[a-z]{2}(-[A-Z]{2})?$/, "a language as en or en-GB"),
  version: z.number().int().min(1).max(100_000),
  inForceFrom: localDate,
  /** Last day in force; absent: until replaced. */
  inForceUntil: localDate.optional(),
  /** Whom all its rules are for; a rule's own ages narrow it. */
  ages: ageSpan.optional(),
  /** From `inForceFrom` on the rule set asks for nothing any more; such a version has no rules. */
  withdrawn: z.literal(true).optional(),
  rules: z.array(ruleSchema).max(MOST_RULES),
});
export type RuleSetDocument = z.infer<typeof ruleSetDocument>;
