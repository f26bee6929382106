/** A child's day in energy and nutrients, from published equations and tables. Estimates for planning, not dietetic advice. */
import type { ChildBrief } from "../brief.js";
import { ageOn, decimalAge } from "../calendar/dates.js";
import { fail, ok, type Result } from "../result.js";
import {
  addedSugars,
  dailyIntakes,
  dgaEnergyKcal,
  dgaFirstAge,
  energyShareMax,
  growthMedians,
  growthMonths,
  iomEquations,
  iomGrowth,
  iomToddlerEquation,
  kcalPerGram,
  nasemEquations,
  nasemGrowth,
  nasemToddlerEquations,
  proteinPerKg,
  sources,
  upperLevels,
  type Activity,
  type DailyIntake,
  type DgaLevel,
  type Sex,
  type UpperLevel,
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

/** Median height and weight at an age, between the charts' rows in a straight line; below two years the first row. */
function referenceBody(sex: Sex, ageYears: number): { heightCm: number; weightKg: number } {
  const months = Math.min(Math.max(ageYears * 12, growthMonths[0]), growthMonths.at(-1) as number);
  const next = Math.max(
    1,
    growthMonths.findIndex((at) => at >= months),
  );
  const [from, to] = [growthMonths[next - 1] as number, growthMonths[next] as number];
  const between = (column: readonly number[]): number => {
    const [low, high] = [column[next - 1] as number, column[next] as number];
    return low + ((high - low) * (months - from)) / (to - from);
  };
  return { heightCm: between(growthMedians[sex].heightCm), weightKg: between(growthMedians[sex].weightKg) };
}

/** What the needs were worked out from; what this home did not enter stands in `assumed`. */
export interface NeedsInputs {
  /** With the part of the running year. */
  readonly ageYears: number;
  /** Null where it is not known: then both sexes' figures are averaged. */
  readonly sex: Sex | null;
  readonly weightKg: number;
  readonly heightCm: number;
  readonly activity: Activity;
  readonly assumed: readonly ("sex" | "weightKg" | "heightCm")[];
}

export interface DailyNeeds extends DailyIntake {
  readonly energyKcal: number;
  /** DGA_TABLE: the child is younger or older than the equations are for. */
  readonly method: EnergyMethod | "DGA_TABLE";
  readonly inputs: NeedsInputs;
  readonly saturatedFatMaxGrams: number;
  readonly freeSugarMaxGrams: number;
  /** Added sugars are part of the free ones, which the catalogue knows: a day within the limit above is within this one too. */
  readonly addedSugarMaxGrams: number;
  readonly addedSugarMealMaxGrams: number;
  readonly upperLevels: readonly (Pick<UpperLevel, "nutrient" | "unit" | "counts"> & { readonly amount: number })[];
  readonly sources: Readonly<
    Record<
      | "energy"
      | "protein"
      | "intakes"
      | "sodium"
      | "saturatedFat"
      | "freeSugars"
      | "addedSugars"
      | "upperLevels"
      | "bodySize",
      string
    >
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
    folateDfeUg: larger("folateDfeUg"),
    sodiumMaxMg: Math.min(by.FEMALE.sodiumMaxMg, by.MALE.sodiumMaxMg),
  };
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** A size as it was entered; null where none was, or one that is taken for a slip of the pen. */
function entered(field: keyof typeof plausible, value: number | null): number | null {
  const { min, max } = plausible[field];
  return value !== null && value >= min && value <= max ? value : null;
}

/** Energy by the equation for each sex that the child may be; null outside the ages it is for. */
function energyByEquation(
  child: Pick<ChildBrief, "sex" | "activity">,
  ageYears: number,
  size: { readonly weightKg: number | null; readonly heightCm: number | null },
  method: EnergyMethod,
): number | null {
  const sexes: readonly Sex[] = child.sex === null ? ["FEMALE", "MALE"] : [child.sex];
  const needs = sexes.map((sex) => {
    const reference = referenceBody(sex, ageYears);
    return energyNeedKcal({
      sex,
      ageYears,
      weightKg: size.weightKg ?? reference.weightKg,
      heightCm: size.heightCm ?? reference.heightCm,
      activity: child.activity,
      method,
    });
  });
  const known = needs.flatMap((need) => (need.ok ? [need.value] : []));
  return known.length === needs.length ? mean(known) : null;
}

/**
 * A child's daily needs on a date: energy by the household's equation, with the median body of the age where a size was not
 * entered or is not plausible (a height typed in metres) and the mean of both sexes where that is not known; intakes by age
 * band. Outside the ages of the equation the printed table stands in. Protein goes by weight only where weight was entered.
 * Appetite is not in it. Ages above 18 take the oldest band, under 1 the youngest.
 */
export function dailyNeeds(
  child: Pick<ChildBrief, "dateOfBirth" | "sex" | "weightKg" | "heightCm" | "activity">,
  onDate: string,
  method: EnergyMethod = "NASEM_2023",
): DailyNeeds {
  const { sex, activity } = child;
  const age = ageOn(child.dateOfBirth, onDate);
  const ageYears = decimalAge(child.dateOfBirth, onDate);
  const size = { weightKg: entered("weightKg", child.weightKg), heightCm: entered("heightCm", child.heightCm) };
  const byEquation = energyByEquation(child, ageYears, size, method);
  const energyKcal = byEquation ?? tableEnergyKcal(sex, age, activity);
  const references = (sex === null ? (["FEMALE", "MALE"] as const) : [sex]).map((of) => referenceBody(of, ageYears));
  const intakes = intakesAt(sex, age);
  const shareGrams = (of: keyof typeof energyShareMax, tag: keyof typeof kcalPerGram): number =>
    (energyKcal * energyShareMax[of]) / kcalPerGram[tag];
  const equationSource = method === "NASEM_2023" ? sources.nasemEnergy : sources.iomEnergy;
  return {
    ...intakes,
    energyKcal,
    method: byEquation === null ? "DGA_TABLE" : method,
    inputs: {
      ageYears,
      sex,
      weightKg: size.weightKg ?? mean(references.map(({ weightKg }) => weightKg)),
      heightCm: size.heightCm ?? mean(references.map(({ heightCm }) => heightCm)),
      activity,
      assumed: [
        ...(sex === null ? (["sex"] as const) : []),
        ...(size.weightKg === null ? (["weightKg"] as const) : []),
        ...(size.heightCm === null ? (["heightCm"] as const) : []),
      ],
    },
    proteinGrams: proteinNeedGrams(age, size.weightKg, intakes.proteinGrams),
    saturatedFatMaxGrams: shareGrams("saturatedFat", "FASAT"),
    freeSugarMaxGrams: shareGrams("freeSugars", "FREE_SUGAR"),
    addedSugarMaxGrams: age < addedSugars.fromAge ? 0 : shareGrams("addedSugars", "FREE_SUGAR"),
    addedSugarMealMaxGrams: age < addedSugars.fromAge ? 0 : addedSugars.mealMaxGrams,
    upperLevels: upperLevels.map(({ nutrient, unit, counts, byAge }) => ({
      nutrient,
      unit,
      counts,
      amount: rowAt(byAge, age).amount,
    })),
    sources: {
      energy: byEquation === null ? sources.dgaEnergy : equationSource,
      protein: size.weightKg === null ? sources.dri : sources.proteinPerKg,
      intakes: sources.dri,
      sodium: sources.sodium,
      saturatedFat: sources.saturatedFat,
      freeSugars: sources.freeSugars,
      addedSugars: sources.addedSugars,
      upperLevels: sources.upperLevels,
      bodySize: sources.growthMedians,
    },
  };
}
