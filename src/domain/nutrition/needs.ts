/** A child's day in energy and nutrients, from published equations and tables. Estimates for planning, not dietetic advice. */
import type { ChildBrief } from "../brief.js";
import { ageOn, decimalAge } from "../calendar/dates.js";
import { fail, ok, type Result } from "../result.js";
import {
  dailyIntakes,
  dgaEnergyKcal,
  dgaFirstAge,
  energyShareMax,
  iomEquations,
  iomGrowth,
  iomToddlerEquation,
  kcalPerGram,
  nasemEquations,
  nasemGrowth,
  nasemToddlerEquations,
  proteinPerKg,
  sources,
  type Activity,
  type DailyIntake,
  type DgaLevel,
  type Sex,
} from "./reference-values.js";

export type EnergyMethod = "NASEM_2023" | "IOM_2005";
export interface EnergyInput {
  readonly sex: Sex;
  /** Years, with or without a fraction. */
  readonly ageYears: number;
  readonly weightKg: number;
  readonly heightCm: number;
  readonly activity: Activity;
  readonly method: EnergyMethod;
}
export type OutOfRange = {
  readonly kind: "OutOfRange";
  readonly field: "ageYears" | "weightKg" | "heightCm";
  readonly min: number;
  readonly max: number;
};

/** Body sizes outside these are taken for slips of the pen. Our limits: wider than any growth chart from 1 to 18 years. */
const plausible = { weightKg: { min: 5, max: 200 }, heightCm: { min: 60, max: 220 } } as const;
/** The equations hold below 19 years; IOM's toddler equation starts at 13 months, NASEM's at one year. */
const ageRange: Readonly<Record<EnergyMethod, { min: number; max: number }>> = {
  NASEM_2023: { min: 1, max: 19 },
  IOM_2005: { min: 13 / 12, max: 19 },
};

/** The last row whose age is reached; the first one below it. */
function rowAt<T extends { readonly fromAge: number }>(rows: readonly T[], ageYears: number): T {
  return rows.findLast((row) => row.fromAge <= ageYears) ?? (rows[0] as T);
}

function nasemEnergy({ sex, ageYears, weightKg, heightCm, activity }: EnergyInput): number {
  const row = ageYears < 3 ? nasemToddlerEquations[sex] : nasemEquations[sex][activity];
  const growth = rowAt(nasemGrowth, ageYears).kcal[sex];
  return row.constant + row.perYear * ageYears + row.perCm * heightCm + row.perKg * weightKg + growth;
}

function iomEnergy({ sex, ageYears, weightKg, heightCm, activity }: EnergyInput): number {
  if (ageYears < 3) return iomToddlerEquation.perKg * weightKg - iomToddlerEquation.less + iomToddlerEquation.growth;
  const row = iomEquations[sex];
  const metres = heightCm / 100;
  const growth = ageYears < 9 ? iomGrowth.underNine : iomGrowth.fromNine;
  return (
    row.constant -
    row.perYear * ageYears +
    row.activity[activity] * (row.perKg * weightKg + row.perMetre * metres) +
    growth
  );
}

/**
 * Estimated energy requirement, kcal per day, unrounded. Activity names are each method's own scale (IOM calls the first one
 * sedentary); an IOM coefficient is never used in a NASEM equation. Fails outside the ages of the method (maximum not
 * included) or on an implausible body size.
 */
export function energyNeedKcal(input: EnergyInput): Result<number, OutOfRange> {
  const { min, max } = ageRange[input.method];
  if (!(input.ageYears >= min && input.ageYears < max))
    return fail({ kind: "OutOfRange", field: "ageYears", min, max });
  for (const field of ["weightKg", "heightCm"] as const) {
    const limits = plausible[field];
    if (!(input[field] >= limits.min && input[field] <= limits.max))
      return fail({ kind: "OutOfRange", field, ...limits });
  }
  return ok(input.method === "NASEM_2023" ? nasemEnergy(input) : iomEnergy(input));
}

/** The table knows three levels: its "moderately active" is the low-active one of the equations. */
const dgaLevel: Readonly<Record<Activity, DgaLevel>> = {
  INACTIVE: "SEDENTARY",
  LOW_ACTIVE: "MODERATE",
  ACTIVE: "ACTIVE",
  VERY_ACTIVE: "ACTIVE",
};

/** Printed energy need, kcal per day, for a completed age; ages outside 2 to 18 take the nearest row. Sex unknown: the mean of both. */
export function tableEnergyKcal(sex: Sex | null, ageYears: number, activity: Activity): number {
  const read = (of: Sex): number => {
    const column = dgaEnergyKcal[of][dgaLevel[activity]];
    const row = Math.min(column.length - 1, Math.max(0, Math.floor(ageYears) - dgaFirstAge));
    return column[row] as number;
  };
  return sex === null ? (read("FEMALE") + read("MALE")) / 2 : read(sex);
}

/** Recommended protein, g per day: by body weight when it is known, else the printed daily amount. */
export function proteinNeedGrams(ageYears: number, weightKg: number | null, tableGrams: number): number {
  return weightKg === null ? tableGrams : rowAt(proteinPerKg, ageYears).grams * weightKg;
}

export interface DailyNeeds {
  readonly energyKcal: number;
  readonly method: "NASEM_2023" | "DGA_TABLE";
  readonly proteinGrams: number;
  readonly fibreGrams: number;
  readonly calciumMg: number;
  readonly ironMg: number;
  readonly zincMg: number;
  readonly vitaminARaeUg: number;
  readonly vitaminCMg: number;
  readonly sodiumMaxMg: number;
  readonly saturatedFatMaxGrams: number;
  readonly freeSugarMaxGrams: number;
  readonly sources: Readonly<
    Record<"energy" | "protein" | "intakes" | "sodium" | "saturatedFat" | "freeSugars", string>
  >;
}

/** Sex unknown: the larger recommendation, which serves either; the sodium ceiling is the same for both. */
function intakesAt(sex: Sex | null, ageYears: number): DailyIntake {
  const { by } = rowAt(dailyIntakes, ageYears);
  if (sex !== null) return by[sex];
  const larger = (field: keyof DailyIntake): number => Math.max(by.FEMALE[field], by.MALE[field]);
  return {
    proteinGrams: larger("proteinGrams"),
    fibreGrams: larger("fibreGrams"),
    calciumMg: larger("calciumMg"),
    ironMg: larger("ironMg"),
    zincMg: larger("zincMg"),
    vitaminARaeUg: larger("vitaminARaeUg"),
    vitaminCMg: larger("vitaminCMg"),
    sodiumMaxMg: Math.min(by.FEMALE.sodiumMaxMg, by.MALE.sodiumMaxMg),
  };
}

/**
 * A child's daily needs on a date: energy by the NASEM equation where sex and body size are known and plausible, else from
 * the printed table; intakes by age band. Appetite is not in it. Ages above 18 take the oldest band, under 1 the youngest.
 */
export function dailyNeeds(
  child: Pick<ChildBrief, "dateOfBirth" | "sex" | "weightKg" | "heightCm" | "activity">,
  onDate: string,
): DailyNeeds {
  const { sex, weightKg, heightCm, activity } = child;
  const ageYears = ageOn(child.dateOfBirth, onDate);
  const equation =
    sex !== null && weightKg !== null && heightCm !== null
      ? energyNeedKcal({
          sex,
          weightKg,
          heightCm,
          activity,
          ageYears: decimalAge(child.dateOfBirth, onDate),
          method: "NASEM_2023",
        })
      : null;
  const measured = equation?.ok === true;
  const energyKcal = measured ? equation.value : tableEnergyKcal(sex, ageYears, activity);
  const { min, max } = plausible.weightKg;
  const plausibleWeight = weightKg !== null && weightKg >= min && weightKg <= max ? weightKg : null;
  const intakes = intakesAt(sex, ageYears);
  return {
    ...intakes,
    energyKcal,
    method: measured ? "NASEM_2023" : "DGA_TABLE",
    proteinGrams: proteinNeedGrams(ageYears, plausibleWeight, intakes.proteinGrams),
    saturatedFatMaxGrams: (energyKcal * energyShareMax.saturatedFat) / kcalPerGram.FASAT,
    freeSugarMaxGrams: (energyKcal * energyShareMax.freeSugars) / kcalPerGram.FREE_SUGAR,
    sources: {
      energy: measured ? sources.nasemEnergy : sources.dgaEnergy,
      protein: plausibleWeight === null ? sources.dri : sources.proteinPerKg,
      intakes: sources.dri,
      sodium: sources.sodium,
      saturatedFat: sources.saturatedFat,
      freeSugars: sources.freeSugars,
    },
  };
}
