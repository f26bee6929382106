/** seeds/reference/holding-model.json: heat and growth parameters, each with its source, and the plain numbers the domain takes. */
import { z } from "zod";
import { foodGroup } from "./codes.js";

export const organismCode = z.enum([
  "BACILLUS_CEREUS",
  "STAPHYLOCOCCUS_AUREUS",
  "SALMONELLA",
  "LISTERIA_MONOCYTOGENES",
  "ESCHERICHIA_COLI",
]);
export type OrganismCode = z.infer<typeof organismCode>;

const figure = z
  .strictObject({
    value: z.number(),
    unit: z.string().min(1),
    source: z.string().min(3),
    /** Why it is on the safe side, or what it is for. */
    why: z.string().min(3),
  })
  .transform(({ value }) => value);

/** The names of the parameters; what each is and where it comes from stands in the file. */
const parameters = z.strictObject({
  ambientCelsius: figure,
  hotDayCelsius: figure,
  coolRoomCelsius: figure,
  kitchenCelsius: figure,
  insulatedBagWattsPerKelvin: figure,
  plainBagWattsPerKelvin: figure,
  coldSourceGrams: figure,
  frozenShare: figure,
  latentKilojoulesPerKg: figure,
  waterKilojoulesPerKgKelvin: figure,
  coldSourceContactWattsPerKelvin: figure,
  coldSourceWallWattsPerKelvin: figure,
  neighbourGrams: figure,
  neighbourKilojoulesPerKgKelvin: figure,
  chilledStartCelsius: figure,
  warmStartCelsius: figure,
  flaskStartCelsius: figure,
  warmContentJoulesPerKelvin: figure,
  flaskWattsPerKelvin: figure,
  leastKilojoulesPerKgKelvin: figure,
  allowedGrowthLog10: figure,
  exposureAboveCelsius: figure,
  exposureBelowCelsius: figure,
  exposureMinutes: figure,
  stepMinutes: figure,
  coolingFromCelsius: figure,
  coolingFirstCelsius: figure,
  coolingFirstMinutes: figure,
  coolingLastCelsius: figure,
  coolingTotalMinutes: figure,
  refrigeratorCelsius: figure,
  openSurfaceWattsPerSquareMetreKelvin: figure,
});

const rateFacts = {
  id: z.string().min(2),
  rate: z.enum(["LN_PER_HOUR", "LOG10_PER_HOUR", "LOG10_PER_DAY"]),
  /** No growth below; above, the rate at the upper end is kept. */
  fromCelsius: z.number(),
  toCelsius: z.number(),
  /** h0 of Baranyi and Roberts: work done before growth begins, rate times lag; null: no lag is counted. */
  lagWork: z.number().positive().nullable(),
  mostLog10: z.number().positive().nullable(),
  source: z.string().min(3),
  note: z.string(),
};

const growthModel = z.discriminatedUnion("shape", [
  /** factor (T - least)^2 (1 - exp(upperFactor (T - most))). */
  z.strictObject({
    ...rateFacts,
    shape: z.literal("SQUARE_WITH_UPPER_END"),
    factor: z.number().positive(),
    leastCelsius: z.number(),
    upperFactor: z.number().positive(),
    mostCelsius: z.number(),
  }),
  /** (factor (T - least))^2. */
  z.strictObject({
    ...rateFacts,
    shape: z.literal("SQUARE_ROOT"),
    factor: z.number().positive(),
    leastCelsius: z.number(),
  }),
  /** Cardinal temperatures, Rosso et al. 1993. */
  z.strictObject({
    ...rateFacts,
    shape: z.literal("CARDINAL"),
    optimumRate: z.number().positive(),
    leastCelsius: z.number(),
    optimumCelsius: z.number(),
    mostCelsius: z.number(),
  }),
]);
export type GrowthModel = z.infer<typeof growthModel>;

const organism = z.strictObject({
  code: organismCode,
  name: z.string().min(3),
  /** Food groups it is looked for in; null: in every food. */
  groups: z.array(foodGroup).min(1).nullable(),
  sporesSurviveCooking: z.boolean(),
  /** It does not grow below these, USDA ARS from ICMSF 1996. */
  leastPh: z.number(),
  leastWaterActivity: z.number(),
  /** The fastest at a temperature counts. */
  models: z.array(growthModel).min(1),
});
export type Organism = z.infer<typeof organism>;

const holdingModelSchema = z.strictObject({
  parameters,
  /** An item's heat capacity is rounded down to one of these, J/K, rising. */
  heatCapacityStepsJoulesPerKelvin: z.array(z.number().positive()).min(1),
  organisms: z.array(organism).min(1),
});
export type HoldingModel = z.infer<typeof holdingModelSchema>;

/** The whole file; `parse` leaves plain numbers under their names. */
export const holdingModelFile = holdingModelSchema
  .extend({ source: z.record(z.string(), z.string()), limitsOfGrowthSource: z.string() })
  .transform(({ parameters: figures, heatCapacityStepsJoulesPerKelvin, organisms }): HoldingModel => ({
    parameters: figures,
    heatCapacityStepsJoulesPerKelvin,
    organisms,
  }));
