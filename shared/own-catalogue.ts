/**
 * Foods and dishes a household enters itself, as people have them at hand: figures per 100 g as a label prints them, amounts
 * in grams or millilitres. What no label and no recipe can say is refused here, with the line and the way out.
 */
import { z } from "zod";
import {
  chokingClass,
  colourTag,
  cutleryCode,
  equipmentKind,
  flavourTag,
  foodGroup,
  localDate,
  originCode,
  processingTag,
  proteinFamily,
  servedForm,
  servedWarmth,
  slotCode,
  slug,
  spillClass,
  starchFamily,
  textureTag,
} from "./codes.js";
import { foodSchema } from "./catalogue.js";
import { labelInput, name, number, onlyOnce, plainText, wholeNumber } from "./inputs.js";

/** Keys of a household's own rows begin with it; no row of the reference catalogue does. */
export const OWN_PREFIX = "own-";
export const isOwnKey = (key: string): boolean => key.startsWith(OWN_PREFIX);

/** Salt on a label is sodium times this: Regulation (EU) 1169/2011, Annex I, point 11. */
export const SALT_PER_SODIUM = 2.5;
/** kJ in one kcal: the thermochemical calorie; FAO Food and Nutrition Paper 77 (2003) converts by it. */
export const KJ_PER_KCAL = 4.184;
/** Pure fat has about 900 kcal in 100 g (Regulation (EU) 1169/2011, Annex XIV: 9 kcal/g); no food has more than this. */
const MOST_KCAL = 950;
/** What the parts of 100 g may add up to: 100 and what rounding on a label adds. Our estimate. */
const MOST_GRAMS_IN_100 = 105;
/** kcal and kJ of one label may differ so much by rounding, in percent and kcal. Our estimate. */
const ENERGY_ROUNDING = { percent: 4, kcal: 4 } as const;
/** Rounding of a part and of its whole, grams per 100 g: labels print tenths below 10 g and whole grams above (from memory). */
const PART_ROUNDING_GRAMS = 0.5;

const oneOf = <T extends string>(codes: { readonly options: readonly T[] }) =>
  z.enum(codes.options, `Use one of ${codes.options.join(", ")}.`);
const severalOf = <T extends string>(codes: { readonly options: readonly T[] }, least = 0) =>
  z
    .array(z.enum(codes.options, `Use ${codes.options.join(", ")}.`))
    .min(least, "Name at least one.")
    .max(codes.options.length, "Name each once.")
    .check(onlyOnce((entry) => entry));
const per100 = (most: number) => number(0, most).nullish();

/** What a label prints per 100 g. Absent is not known; it is never taken as none. */
const labelNutrients = z
  .object({
    energyKcal: per100(MOST_KCAL),
    energyKj: per100(Math.floor(MOST_KCAL * KJ_PER_KCAL)),
    fatGrams: per100(100),
    saturatedFatGrams: per100(100),
    /** Without fibre, as labels in Europe print it. */
    carbohydrateGrams: per100(100),
    /** With fibre, as labels in America print it. */
    totalCarbohydrateGrams: per100(100),
    sugarsGrams: per100(100),
    addedSugarsGrams: per100(100),
    fibreGrams: per100(100),
    proteinGrams: per100(100),
    saltGrams: per100(100),
    sodiumMg: per100(40_000),
    calciumMg: per100(40_000),
    ironMg: per100(1_000),
    magnesiumMg: per100(10_000),
    phosphorusMg: per100(20_000),
    potassiumMg: per100(50_000),
    zincMg: per100(1_000),
    vitaminAMicrograms: per100(50_000),
    vitaminCMg: per100(20_000),
    vitaminDMicrograms: per100(1_000),
    vitaminB12Micrograms: per100(1_000),
    folateMicrograms: per100(20_000),
  })
  .check(({ value, issues }) => {
    const refuse = (field: keyof typeof value, message: string) =>
      issues.push({ code: "custom", input: value[field], path: [field], message });
    const { carbohydrateGrams, totalCarbohydrateGrams } = value;
    const fibre = value.fibreGrams ?? 0;
    const carbohydrate = totalCarbohydrateGrams ?? (carbohydrateGrams == null ? null : carbohydrateGrams + fibre);
    const partOf = (part: keyof typeof value, whole: number | null | undefined, named: string) => {
      const grams = value[part];
      if (grams != null && whole != null && grams > whole + PART_ROUNDING_GRAMS)
        refuse(part, `It is a part of the ${named}, ${whole} g: send no more than that.`);
    };
    if (carbohydrateGrams != null && totalCarbohydrateGrams != null)
      refuse("totalCarbohydrateGrams", "Send carbohydrateGrams (without fibre) or totalCarbohydrateGrams, not both.");
    if (value.saltGrams != null && value.sodiumMg != null) refuse("sodiumMg", "Send saltGrams or sodiumMg, not both.");
    partOf("saturatedFatGrams", value.fatGrams, "fat");
    partOf("sugarsGrams", carbohydrateGrams ?? totalCarbohydrateGrams, "carbohydrate");
    partOf(
      "addedSugarsGrams",
      value.sugarsGrams ?? carbohydrate,
      value.sugarsGrams == null ? "carbohydrate" : "sugars",
    );
    partOf("fibreGrams", totalCarbohydrateGrams, "total carbohydrate");
    const salt = value.saltGrams ?? ((value.sodiumMg ?? 0) * SALT_PER_SODIUM) / 1000;
    const together = (value.fatGrams ?? 0) + (carbohydrate ?? fibre) + (value.proteinGrams ?? 0) + salt;
    if (together > MOST_GRAMS_IN_100)
      refuse(
        "fatGrams",
        `Fat, carbohydrate, fibre, protein and salt add up to ${Math.round(together)} g in 100 g: send each per 100 g.`,
      );
    if (value.energyKcal != null && value.energyKj != null) {
      const fromKj = value.energyKj / KJ_PER_KCAL;
      const rounding = Math.max(ENERGY_ROUNDING.kcal, (value.energyKcal * ENERGY_ROUNDING.percent) / 100);
      if (Math.abs(fromKj - value.energyKcal) > rounding)
        refuse(
          "energyKj",
          `${value.energyKj} kJ are ${Math.round(fromKj)} kcal, not ${value.energyKcal}: read both again, or send one.`,
        );
    }
  });
export type LabelNutrients = z.infer<typeof labelNutrients>;

/** What was read on the product: the same facts as a label check. */
const ownLabel = labelInput.omit({ food: true });

export const ownFoodInput = z
  .object({
    name,
    kind: slug,
    group: oneOf(foodGroup),
    origins: severalOf(originCode, 1),
    nutrients: labelNutrients,
    /** Null: nobody has read it, and it counts as unread for everybody who avoids anything. */
    label: ownLabel.nullish(),
    packaged: z.boolean(),
    /** The day from which the product is as entered here. */
    productSince: localDate.nullish(),
    refusePercent: number(0, 95),
    densityGramsPerMl: number(0.05, 5).nullish(),
    chokingClasses: severalOf(chokingClass),
    keepsChilledDays: wholeNumber(0, 365).nullish(),
    pack: z.object({ grams: number(1, 20_000), priceMinor: wholeNumber(0, 1_000_000) }),
    shopSection: oneOf(foodSchema.shape.shopSection),
    wholeGrain: z.boolean(),
  })
  .check(({ value, issues }) => {
    const { label, productSince } = value;
    if (label != null && productSince != null && label.readOn < productSince)
      issues.push({
        code: "custom",
        input: label.readOn,
        path: ["label", "readOn"],
        message: `The product is so since ${productSince}: read the label it has now, or leave the label out.`,
      });
  });
export type OwnFoodInput = z.infer<typeof ownFoodInput>;

/** Grams of one food or base in one portion, and of the portion itself. Nobody packs more; a slip of a digit does. */
const MOST_GRAMS = 5_000;
const MOST_PORTION_GRAMS = 1_000;
const amount = number(0.1, MOST_GRAMS);
const minutes = number(0, 24 * 60);
const text = z
  .string()
  .trim()
  .regex(plainText, "Send text without control characters.")
  .min(5, "Say it in 5 to 300 characters.")
  .max(300, "Say it in 5 to 300 characters.");

const ownIngredient = z
  .object({
    food: slug,
    grams: amount.nullish(),
    /** Only for a food whose density is known. */
    ml: amount.nullish(),
    form: oneOf(servedForm),
    retention: z
      .string()
      .regex(/^\d{4}$/, "Send the four-digit code of a cooking method, or leave it out.")
      .nullish(),
  })
  .refine((entry) => (entry.grams == null) !== (entry.ml == null), "Give either grams or ml.");

const ownPortion = z
  .object({
    grams: number(1, MOST_PORTION_GRAMS).nullish(),
    stepGrams: wholeNumber(1, 50).nullish(),
    gramsPerPiece: number(0.5, MOST_PORTION_GRAMS).nullish(),
    pieces: number(0.1, 40).nullish(),
    stepPieces: number(0.1, 4).nullish(),
    pieceName: name.nullish(),
  })
  .check(({ value, issues }) => {
    const refuse = (field: keyof typeof value, message: string) =>
      issues.push({ code: "custom", input: value[field], path: [field], message });
    const counted = ["gramsPerPiece", "pieces", "stepPieces", "pieceName"] as const;
    if (value.grams != null) {
      for (const field of counted)
        if (value[field] != null) refuse(field, "A weighed portion has no pieces: leave it out, or send no grams.");
      if (value.stepGrams == null) refuse("stepGrams", "Say in which steps of whole grams the portion may be weighed.");
      return;
    }
    if (value.stepGrams != null)
      refuse("stepGrams", "A portion in pieces is not weighed: leave it out, or send grams.");
    const absent = counted.filter((field) => value[field] == null);
    if (absent.length === counted.length)
      refuse("grams", "Send grams and stepGrams, or gramsPerPiece, pieces, stepPieces and pieceName.");
    else for (const field of absent) refuse(field, "A portion in pieces needs it.");
    if (value.gramsPerPiece != null && value.pieces != null && value.gramsPerPiece * value.pieces > MOST_PORTION_GRAMS)
      refuse("gramsPerPiece", `The portion would weigh more than ${MOST_PORTION_GRAMS} g.`);
  });

const ownStep = z.object({
  text,
  handsOnFixedMinutes: minutes,
  handsOnPerPortionMinutes: minutes,
  passiveMinutes: minutes,
  equipment: z
    .array(z.object({ kind: oneOf(equipmentKind), units: wholeNumber(1, 6) }))
    .max(equipmentKind.options.length, "Name each once.")
    .check(onlyOnce((entry) => entry.kind)),
  batchPortions: wholeNumber(1, 100).nullish(),
  eveningBefore: z.boolean(),
  coolMinutes: minutes,
  heldWhileCooling: z.boolean(),
});

export const ownDishInput = z.object({
  name,
  slots: severalOf(slotCode, 1),
  bases: z
    .array(z.object({ base: slug, grams: amount }))
    .max(20, "Send at most 20 bases.")
    .check(onlyOnce((entry) => entry.base)),
  ingredients: z.array(ownIngredient).max(60, "Send at most 60 ingredients."),
  portion: ownPortion,
  steps: z.array(ownStep).min(1, "Send at least one step.").max(30, "Send at most 30 steps."),
  served: oneOf(servedWarmth),
  goodForHours: number(1, 24),
  cutlery: oneOf(cutleryCode),
  spill: oneOf(spillClass),
  volumeMl: number(5, 1200),
  starch: oneOf(starchFamily),
  protein: oneOf(proteinFamily),
  colours: severalOf(colourTag),
  textures: severalOf(textureTag),
  flavours: severalOf(flavourTag),
  cuisine: name,
  processing: severalOf(processingTag),
  cookedInFat: z.boolean(),
  treat: z.boolean(),
});
export type OwnDishInput = z.infer<typeof ownDishInput>;
