import { z } from "zod";
import {
  allergenCode,
  chokingClass,
  climateRegion,
  colourTag,
  cutleryCode,
  equipmentKind,
  flavourTag,
  foodGroup,
  nutrientTag,
  originCode,
  processingTag,
  proteinFamily,
  servedForm,
  servedWarmth,
  slotCode,
  slug,
  spillClass,
  starchFamily,
  sugarRule,
  textureTag,
  windowKind,
} from "./codes.js";

const grams = z.number().positive().max(20_000);
const minutes = z
  .number()
  .min(0)
  .max(24 * 60);

/** A figure and where it was published; a figure without a source is not loaded. */
const sourced = z.strictObject({ value: z.number(), source: z.string().min(3) });

/** Months, 1 to 12, in rising order, in which a fresh food is gathered in a region, and who says so. */
const seasonSchema = z.strictObject({
  region: climateRegion,
  months: z
    .array(z.number().int().min(1).max(12))
    .min(1)
    .refine((months) => months.every((month, i) => i === 0 || month > months[i - 1]!), "months rise, each once"),
  source: z.string().min(3),
});
export type Season = z.infer<typeof seasonSchema>;

/**
 * One row of a composition table, per 100 g edible. A nutrient that is absent is missing, never zero.
 *
 * Sugars. Free sugars are those of the WHO guideline of 2015 (added by maker, cook or eater, and all of honey, syrup and
 * fruit juice); added sugars those of US 21 CFR 101.9(c)(6)(iii) (put in, syrup and honey included; a juice's own are not).
 * `sugarRule` says how both follow from SUGAR, the table's total:
 * - INTACT: the food's own, in its cells or from its flour and malt, none put in: free 0, added 0. Dried, tinned and mashed
 *   fruit with nothing added counts here.
 * - MILK_SUGAR: lactose of milk, plain yoghurt, cheese, butter: free 0, added 0.
 * - JUICE: all of SUGAR is free, none of it added. Tinned fruit weighed with its juice counts here, an upper bound.
 * - ALL_FREE: all of SUGAR is free and added: sugar, syrup, honey, and made foods whose added part nobody published, there
 *   as an upper bound.
 * - ADDED_PART: a part was added; `addedSugarGrams` states it, free is the same figure, SUGAR is at least that where known.
 */
export const foodSchema = z.strictObject({
  key: slug,
  name: z.string().min(2),
  /** USDA Standard Reference number, five digits; null for water and household-entered foods. */
  ndb: z
    .string()
    .regex(/^\d{5}$/)
    .nullable(),
  /**
   * The plant or animal it is, for allergies to one food, dislikes and "we are out of": "kiwi", "chickpea", "cow-milk". Which
   * kinds an allergy takes together stands in food-kinds.ts.
   */
  kind: slug,
  group: foodGroup,
  origins: z.array(originCode).min(1),
  allergens: z.array(allergenCode),
  /** Sold with a label that a person who avoids traces has to read before packing. Fresh produce and raw staples are false. */
  packaged: z.boolean(),
  nutrients: z.partialRecord(nutrientTag, z.number().min(0)),
  sugarRule,
  /** g per 100 g; follows from the rule. */
  freeSugarGrams: z.number().min(0).max(100),
  /** g per 100 g; follows from the rule, stated under ADDED_PART. */
  addedSugarGrams: z.number().min(0).max(100),
  refusePercent: z.number().min(0).max(95),
  densityGramsPerMl: z.number().positive().max(5).nullable(),
  /** USDA household measures that help a packer: "1 medium", "1 cup". */
  measures: z.array(z.strictObject({ measure: z.string(), grams: grams })).default([]),
  /**
   * Of the food as this row describes it, the highest published figure. Null is unknown and counts as 1: a dish is judged by
   * its wettest part, so a figure here can only loosen.
   */
  waterActivity: sourced.nullable().default(null),
  /** Of the food as this row describes it, the highest published figure. Null is unknown and counts as 14. */
  ph: sourced.nullable().default(null),
  chokingClasses: z.array(chokingClass).default([]),
  keepsChilledDays: z.number().int().min(0).max(365).nullable(),
  /** Days at -18 C, the shortest published; for quality, as frozen food stays safe. Null where no source was read. */
  keepsFrozenDays: sourced.nullable().default(null),
  /** Fresh produce only; a region that is absent is unknown, and a stored or year-round food has none. */
  seasons: z.array(seasonSchema).default([]),
  /** When a recipe row is a cooked one: which food is bought, and grams bought (as sold, with refuse) for 1 g of this. */
  boughtAs: z
    .strictObject({ food: slug, gramsPerGram: z.number().positive().max(20) })
    .nullable()
    .default(null),
  /** How it is sold. The price is invented. */
  pack: z.strictObject({ grams: grams, priceMinor: z.number().int().min(0) }),
  /** Where it stands in a shop. */
  shopSection: z.enum(["PRODUCE", "CHILLED", "MEAT_FISH", "BAKERY", "DRY_GOODS", "TINS_JARS", "FROZEN", "SPICES_OILS"]),
  wholeGrain: z.boolean().default(false),
});
export type Food = z.infer<typeof foodSchema>;

export const ingredientSchema = z.strictObject({
  food: slug,
  /** Edible grams that go in, as the composition row describes it (raw row: raw grams). */
  grams: grams,
  form: servedForm.default("MIXED_IN"),
  /**
   * How a raw row is cooked here: a code of seeds/reference/retention.json, which says what part of each nutrient stays, or
   * 0000 where no factor was read. Absent for what is eaten raw and for rows that describe the cooked food.
   */
  retention: z
    .string()
    .regex(/^\d{4}$/)
    .optional(),
});
export type Ingredient = z.infer<typeof ingredientSchema>;

const equipmentUse = z.strictObject({ kind: equipmentKind, units: z.number().int().min(1).max(6).default(1) });

export const baseSchema = z.strictObject({
  key: slug,
  name: z.string().min(2),
  kind: z.enum(["DOUGH", "BATTER", "GRAIN", "PULSE", "VEGETABLE", "SAUCE", "MARINADE", "FILLING", "PROTEIN"]),
  /** For one batch. */
  ingredients: z.array(ingredientSchema).min(1),
  /** Ready mass of one batch in grams, after cooking gain or loss. */
  batchGrams: grams,
  /** Set-up once per window, whatever the number of batches. */
  fixedHandsOnMinutes: minutes,
  perBatchHandsOnMinutes: minutes,
  /** Cooking, resting, fermenting; the carer is free. */
  passiveMinutes: minutes,
  /**
   * Minutes it stands unwatched after that before anything can be made of it (fermenting overnight). It holds no appliance, the
   * session may be over meanwhile. Absent or null: ready at once.
   */
  restMinutes: z.number().int().min(1).max(2_880).nullish(),
  equipment: z.array(equipmentUse),
  /** Minutes one batch holds its equipment. */
  equipmentMinutes: minutes,
  maxBatches: z.number().int().min(1).max(10),
  windows: z.array(windowKind).min(1),
  /** Days it may be eaten, the day it is made included: 1 = that day only (an evening's product counts from the next day). */
  keepsChilledDays: z.number().int().min(1).max(5),
  keepsFrozenDays: z.number().int().min(1).max(180).nullable(),
  /** ml one batch takes in the refrigerator. */
  storageMl: z.number().int().min(50).max(20_000),
  steps: z.array(z.string().min(5)).min(1),
});
export type Base = z.infer<typeof baseSchema>;

export const dishStepSchema = z.strictObject({
  text: z.string().min(5),
  handsOnFixedMinutes: minutes,
  handsOnPerPortionMinutes: minutes,
  passiveMinutes: minutes,
  equipment: z.array(equipmentUse).default([]),
  /** Portions one go of the equipment takes; null when it does not limit. */
  batchPortions: z.number().int().min(1).nullable().default(null),
  /** May this step be done the evening before? */
  eveningBefore: z.boolean(),
  /** Minutes to cool after it before the lid may close; no hands needed. */
  coolMinutes: minutes.default(0),
  /** The equipment stays occupied while it cools (a mould). */
  heldWhileCooling: z.boolean().default(false),
});
export type DishStep = z.infer<typeof dishStepSchema>;

export const dishSchema = z.strictObject({
  key: slug,
  name: z.string().min(2),
  slots: z.array(slotCode).min(1),
  /** Everything below is for one reference portion. */
  bases: z.array(z.strictObject({ base: slug, grams: grams })),
  ingredients: z.array(ingredientSchema),
  portion: z.discriminatedUnion("kind", [
    z.strictObject({ kind: z.literal("CONTINUOUS"), grams: grams, stepGrams: z.number().int().min(1).max(50) }),
    z.strictObject({
      kind: z.literal("PIECES"),
      gramsPerPiece: grams,
      pieces: z.number().positive().max(40),
      stepPieces: z.number().positive().max(4),
      pieceName: z.string(),
    }),
  ]),
  steps: z.array(dishStepSchema).min(1),
  served: servedWarmth,
  /** Hours it stays good to eat in the box (quality, not safety). */
  goodForHours: z.number().min(1).max(24),
  cutlery: cutleryCode,
  spill: spillClass,
  /** Space of one reference portion in the box. */
  volumeMl: z.number().min(5).max(1200),
  starch: starchFamily,
  protein: proteinFamily,
  colours: z.array(colourTag),
  textures: z.array(textureTag),
  flavours: z.array(flavourTag),
  cuisine: z.string().min(2),
  processing: z.array(processingTag).default([]),
  /** Cooked in fat or oil (England's EN-A4). */
  cookedInFat: z.boolean().default(false),
  /** A small festive thing for the end of the week. */
  treat: z.boolean().default(false),
});
export type Dish = z.infer<typeof dishSchema>;

/**
 * The nutrients of which a retention factor may be stated. Energy, protein, fat, carbohydrate and fibre have none in the
 * published table; sodium is left out on purpose, because a limit on it has to count all of it.
 */
const retainedNutrient = nutrientTag.extract(["CA", "FE", "MG", "K", "ZN", "VITA_RAE", "VITC", "FOLDFE", "VITB12"]);

/** One row of seeds/reference/retention.json: what cooking one kind of food one way leaves of it. */
export const retentionSchema = z.strictObject({
  code: z.string().regex(/^\d{4}$/),
  /** The food and the method, for people. */
  cooked: z.string().min(5),
  /** Percent that stays in the whole cooked amount. A nutrient that is absent was not read; it does not mean 100. */
  percent: z.partialRecord(retainedNutrient, z.number().int().min(1).max(100)),
  source: z.string().min(3),
});
export type Retention = z.infer<typeof retentionSchema>;

export const catalogueSchema = z.strictObject({
  foods: z.array(foodSchema),
  bases: z.array(baseSchema),
  dishes: z.array(dishSchema),
  retention: z.array(retentionSchema),
});
export type Catalogue = z.infer<typeof catalogueSchema>;
