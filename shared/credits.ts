import { z } from "zod";
import { foodGroup, servedForm, slug } from "./codes.js";
import { amountUnit } from "./rule-set.js";

/** Units that are credited by a table of foods; grams and millilitres need none. */
export const creditUnit = amountUnit.extract(["CUPS", "OZ_EQ", "OZ_EQ_MYPLATE"]);
export type CreditUnit = z.infer<typeof creditUnit>;

/**
 * How many grams of an ingredient, edible and as it reaches the box, are credited as one cup or one ounce equivalent; null: it is
 * known to bring nothing (coconut as a meat alternate). What a row states has to hold together. Of the rows that fit an ingredient
 * the first counts; an ingredient that none fits is not known: nothing towards a minimum, and a maximum cannot be judged with it.
 * What an item brings is the sum over the ingredients that the rule's matcher means, rounded down once.
 */
export const creditRow = z
  .strictObject({
    unit: creditUnit,
    foods: z.array(slug).min(1).optional(),
    kinds: z.array(slug).min(1).optional(),
    groups: z.array(foodGroup).min(1).optional(),
    forms: z.array(servedForm).min(1).optional(),
    grams: z.number().positive().max(2000).nullable(),
    source: z.string().min(3),
  })
  .refine(({ foods, kinds, groups }) => foods ?? kinds ?? groups, "name foods, kinds or groups");
export type CreditRow = z.infer<typeof creditRow>;

/** seeds/reference/credits.json. */
export const creditTable = z.strictObject({
  note: z.string(),
  /** What an item brings is rounded down to whole steps of this; less than one step is nothing. */
  steps: z.record(creditUnit, z.number().positive()),
  rows: z.array(creditRow).min(1),
});
export type CreditTable = z.infer<typeof creditTable>;
