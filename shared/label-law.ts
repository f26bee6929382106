/** Which allergens a law makes a label name: seeds/reference/label-laws.json. It never says what a child may eat. */
import { z } from "zod";
import { allergenCode, localDate, slug } from "./codes.js";

const source = z.string().min(10);

/** One food that counts under a class of a law: an allergen of ours, or a food kind where there is none for it. */
const lawMemberSchema = z
  .strictObject({
    name: z.string().min(2),
    allergen: allergenCode.optional(),
    kind: slug.optional(),
    /** First day it no longer counts. */
    until: localDate.optional(),
    source,
  })
  .refine((member) => (member.allergen === undefined) !== (member.kind === undefined), "either an allergen or a kind");

const lawClassSchema = z.strictObject({
  /** The law's own class: TREE_NUTS, GLUTEN_CEREALS, MILK. */
  code: z.string().regex(/^[A-Z]+(_[A-Z]+)*$/),
  /** GLUTEN_SOURCE: named on labels as a source of gluten, outside the law's list of allergens. */
  as: z.enum(["ALLERGEN", "GLUTEN_SOURCE"]),
  /** First day it has to be named; absent where it was on the list before any date that matters here. */
  since: localDate.optional(),
  /** Named only from this much in the ready food, mg per kg. */
  fromMgPerKg: z.number().positive().optional(),
  members: z.array(lawMemberSchema).min(1),
  note: z.string().min(5).optional(),
  source,
});

const exemptionSchema = z.strictObject({
  /** What a recipe or a label calls it, as a key: "soya-oil-fully-refined". */
  derivative: slug,
  allergens: z.array(allergenCode).min(1),
  about: z.string().min(5),
  source,
});

export const labelLawSchema = z
  .strictObject({
    key: slug,
    title: z.string().min(2),
    /** The list was read in part only: what is not on it may still have to be named. */
    incomplete: z.boolean(),
    classes: z.array(lawClassSchema).min(1),
    exempt: z.array(exemptionSchema),
    source,
  })
  .refine((law) => new Set(law.classes.map(({ code }) => code)).size === law.classes.length, "every class once");
export type LabelLaw = z.infer<typeof labelLawSchema>;
