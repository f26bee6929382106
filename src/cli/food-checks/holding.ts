import type { HoldingModel } from "../../../shared/holding-model.js";
import type { HoldingLimits } from "../../domain/brief.js";
import type { CatalogueIndex } from "../../domain/catalogue/derive.js";
import { growAlong, growthRate } from "../../domain/food-safety/growth.js";
import { specificHeat } from "../../domain/food-safety/heat-balance.js";
import { isControlled, judgeHolding } from "../../domain/food-safety/holding.js";
import type { OutsideCheck } from "./check.js";

/** USDA ARS worked output of cooling cooked rice: °C at each full hour. */
const riceCelsius = [54.59, 45.99, 38.94, 32.92, 27.86, 23.43, 19.89, 16.71, 14.14, 11.94, 10.13, 8.48, 7.21];
const workedOutput =
  "USDA ARS Pathogen Modeling Program Online, B. cereus during cooling of cooked rice, worked output (model: Juneja et al. 2019, IJFM 290:49-58)";
const stepsPerHour = 60;

/** Between the hours the temperature is taken as linear. */
function riceAt(hour: number): number {
  const from = Math.min(Math.floor(hour), riceCelsius.length - 2);
  const [cold, warm] = [riceCelsius[from + 1] ?? 0, riceCelsius[from] ?? 0];
  return warm + (cold - warm) * (hour - from);
}

function modelNamed(model: HoldingModel, id: string) {
  const found = model.organisms.flatMap(({ models }) => models).find((row) => row.id === id);
  if (found === undefined) throw new Error(`holding-model.json has no growth model ${id}`);
  return found;
}

/** Growth, heat and time limits as published, asked of the planner's own model. */
export function holdingChecks(model: HoldingModel, limits: HoldingLimits, index: CatalogueIndex): OutsideCheck[] {
  const rate = (id: string, celsius: number): number => growthRate(modelNamed(model, id), celsius);
  const bc1 = modelNamed(model, "BC-1");
  const rice = growAlong(
    Array.from({ length: 12 * stepsPerHour + 1 }, (_, at) => growthRate(bc1, riceAt(at / stepsPerHour))),
    1 / stepsPerHour,
    { log10: 2, lagWork: bc1.lagWork, mostLog10: bc1.mostLog10 },
  );
  const sandwich = index.derived("sandwich-egg-chive");
  const eatenIn = (chilledMinutes: number): boolean =>
    judgeHolding({
      dish: { ...sandwich.dish, goodForHours: 24 },
      derived: sandwich,
      leaveAt: "07:30",
      breakStartsAt: "11:45",
      breakMinutes: 30,
      facility: "NEITHER",
      reheatingAllowed: false,
      box: { compartments: [], coldSources: limits.coldSources, insulated: true, flask: false },
      limits: { ...limits, chilledMinutes },
      coldByMorning: true,
    }).ok;
  const foodCode = "FDA Food Code 3-501.19(B) and (C)";
  return [
    {
      id: "FS-1",
      about: "B. cereus in rice at 38.94 °C, log10 per hour",
      source: workedOutput,
      expected: 0.93,
      tolerance: 0.01,
      found: rate("BC-1", 38.94) / Math.LN10,
    },
    ...[
      [1, 2.0],
      [2, 2.06],
      [3, 2.33],
      [12, 3.78],
    ].map(([hour = 0, expected = 0]) => ({
      id: `FS-2 ${hour} h`,
      about: `B. cereus after ${hour} h of cooling rice, log10 CFU/g`,
      source: workedOutput,
      expected,
      tolerance: 0.02,
      found: 2 + (rice[hour * stepsPerHour] ?? 0),
    })),
    {
      id: "FS-3 milk",
      about: "S. aureus at 30 °C, 1/h",
      source:
        "Fujikawa and Morozumi 2006, Food Microbiol. 23:260-267 (GroPIN 256); the figure worked out from its formula",
      expected: 1.182,
      tolerance: 0.005,
      found: rate("SA-1", 30),
    },
    {
      id: "FS-3 broth",
      about: "S. aureus 2064 at 30 °C, 1/h",
      source: "Medvedova et al., cardinal values; the figure worked out from its formula",
      expected: 1.184,
      tolerance: 0.005,
      found: rate("SA-2", 30),
    },
    {
      id: "FS-4",
      about: "Salmonella in cooked chicken at 25 °C, log10 per hour",
      source: "Oscar 2002, IJFM 76:177-190 (GroPIN 1450); the figure worked out from its formula",
      expected: 0.348,
      tolerance: 0.005,
      found: rate("SM-1", 25) / Math.LN10,
    },
    {
      id: "FS-5",
      about: "Listeria in cooked ham at 5 °C, log10 per day",
      source: "Mataragas et al. 2006, J. Food Prot. 69:1312-1321 (GroPIN 253); the figure worked out from its formula",
      expected: 0.1223,
      tolerance: 0.0005,
      found: (rate("LM-1", 5) * 24) / Math.LN10,
    },
    {
      id: "FS-6",
      about: "E. coli in broth at 25 °C, 1/h",
      source: "Rosso et al. 1993, J. Theor. Biol. 162:447-463 (GroPIN 387; its unit from memory)",
      expected: 0.605,
      tolerance: 0.003,
      found: rate("EC-1", 25),
    },
    {
      id: "FS-7 4 h",
      about: "a chilled sandwich from 07:30 to 12:15 keeps the 4 hour rule",
      source: foodCode,
      expected: false,
      tolerance: 0,
      found: eatenIn(240),
    },
    {
      id: "FS-7 6 h",
      about: "the same sandwich would keep a 6 hour rule",
      source: foodCode,
      expected: true,
      tolerance: 0,
      found: eatenIn(360),
    },
    {
      id: "FS-8",
      about: "cooked rice in an open box (aw 0.98, pH 6.5) needs time or temperature control",
      source: "FDA Food Code 1-201.10, Table B: product assessment, treated as controlled",
      expected: true,
      tolerance: 0,
      found: isControlled(0.98, 6.5, false),
    },
    {
      id: "FS-9",
      about: "specific heat of raw carrot with 88.2 % water at 20 °C, kJ/kg K",
      source: "Geankoplis, Transport Processes, Appendix A.4-1: measured 3.81 to 3.94",
      expected: 3.875,
      tolerance: 0.065,
      found: specificHeat(
        { water: 0.882, protein: 0.0093, fat: 0.0024, carbohydrate: 0.068, fibre: 0.028, ash: 0.0103 },
        20,
      ),
    },
    {
      id: "FS-10",
      about: "specific heat of whole milk at 25 °C, kJ/kg K",
      source: "Geankoplis, Transport Processes, Appendix A.4-1: measured 3.85; by Choi and Okos 1986 3.895",
      expected: 3.895,
      tolerance: 0.005,
      found: specificHeat(
        { water: 0.8813, protein: 0.0315, fat: 0.0325, carbohydrate: 0.048, fibre: 0, ash: 0.0067 },
        25,
      ),
    },
  ];
}
