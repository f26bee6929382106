/**
 * Published reference values for children, as data. Each table names its publisher and edition; ages are completed years.
 * They describe groups: none of them is a target or a deficit to show for one child.
 */

export type Sex = "FEMALE" | "MALE";
export type Activity = "INACTIVE" | "LOW_ACTIVE" | "ACTIVE" | "VERY_ACTIVE";

export const sources = {
  nasemEnergy: "NASEM 2023, Dietary Reference Intakes for Energy, estimated energy requirement equations",
  iomEnergy: "IOM 2002/2005, Dietary Reference Intakes for Energy, estimated energy requirement equations",
  dgaEnergy: "Dietary Guidelines for Americans, 2015-2020 Appendix 2 and 2020-2025 Appendix 1, estimated calorie needs",
  growthMedians: "CDC growth charts (2000): median stature and weight for age, 2 to 20 years",
  dri: "National Academies, DRI summary tables (RDA, AI), editions to 2011",
  upperLevels: "National Academies, DRI summary tables (tolerable upper intake levels), editions to 2011",
  proteinPerKg: "IOM 2002/2005, protein RDA in g per kg of body weight",
  sodium: "NASEM 2019, Dietary Reference Intakes for Sodium and Potassium, chronic disease risk reduction intake",
  saturatedFat: "WHO 2023, guideline on saturated and trans-fatty acids: at most 10 % of energy from 2 years",
  freeSugars: "WHO 2015, guideline on sugars intake: less than 10 % of energy",
  addedSugars:
    "Dietary Guidelines for Americans 2020-2025: less than 10 % of energy from 2 years, none before; the 2025-2030 edition (read in a secondary page) advises none before 10 years and no meal above 10 g",
} as const;

/**
 * kcal/d = constant + perYear * age in years + perCm * height in CENTIMETRES + perKg * weight, 3 to 18 years. NASEM 2023. Two
 * printings of the coefficients agree, and the publication's own table of needs at reference sizes follows from them to the
 * kilocalorie (tests/domain/needs.test.ts). Each level was fitted by itself: for a boy of three the level "active" comes out
 * a few kcal under "low active", in the printed table too.
 */
export const nasemEquations: Readonly<
  Record<
    Sex,
    Readonly<
      Record<
        Activity,
        { readonly constant: number; readonly perYear: number; readonly perCm: number; readonly perKg: number }
      >
    >
  >
> = {
  MALE: {
    INACTIVE: { constant: -447.51, perYear: 3.68, perCm: 13.01, perKg: 13.15 },
    LOW_ACTIVE: { constant: 19.12, perYear: 3.68, perCm: 8.62, perKg: 20.28 },
    ACTIVE: { constant: -388.19, perYear: 3.68, perCm: 12.66, perKg: 20.46 },
    VERY_ACTIVE: { constant: -671.75, perYear: 3.68, perCm: 15.38, perKg: 23.25 },
  },
  FEMALE: {
    INACTIVE: { constant: 55.59, perYear: -22.25, perCm: 8.43, perKg: 17.07 },
    LOW_ACTIVE: { constant: -297.54, perYear: -22.25, perCm: 12.77, perKg: 14.73 },
    ACTIVE: { constant: -189.55, perYear: -22.25, perCm: 11.74, perKg: 18.34 },
    VERY_ACTIVE: { constant: -709.59, perYear: -22.25, perCm: 18.22, perKg: 14.25 },
  },
};

/** The same form for 1 to under 3 years, one equation for all activity. NASEM 2023. */
export const nasemToddlerEquations: Readonly<
  Record<Sex, { readonly constant: number; readonly perYear: number; readonly perCm: number; readonly perKg: number }>
> = {
  MALE: { constant: -716.45, perYear: -1.0, perCm: 17.82, perKg: 15.06 },
  FEMALE: { constant: -69.15, perYear: 80.0, perCm: 2.65, perKg: 54.15 },
};

/** Energy of growth, kcal/d, by the youngest completed age of each band. NASEM 2023. */
export const nasemGrowth: readonly { readonly fromAge: number; readonly kcal: Readonly<Record<Sex, number>> }[] = [
  { fromAge: 1, kcal: { MALE: 20, FEMALE: 15 } },
  { fromAge: 3, kcal: { MALE: 20, FEMALE: 15 } },
  { fromAge: 4, kcal: { MALE: 15, FEMALE: 15 } },
  { fromAge: 9, kcal: { MALE: 25, FEMALE: 30 } },
  { fromAge: 14, kcal: { MALE: 20, FEMALE: 20 } },
];

/** kcal/d = constant - perYear * age + activity * (perKg * weight + perMetre * height in METRES) + growth, 3 to 18 years. IOM 2002/2005. */
export const iomEquations: Readonly<
  Record<
    Sex,
    {
      readonly constant: number;
      readonly perYear: number;
      readonly perKg: number;
      readonly perMetre: number;
      readonly activity: Readonly<Record<Activity, number>>;
    }
  >
> = {
  MALE: {
    constant: 88.5,
    perYear: 61.9,
    perKg: 26.7,
    perMetre: 903,
    activity: { INACTIVE: 1.0, LOW_ACTIVE: 1.13, ACTIVE: 1.26, VERY_ACTIVE: 1.42 },
  },
  FEMALE: {
    constant: 135.3,
    perYear: 30.8,
    perKg: 10.0,
    perMetre: 934,
    activity: { INACTIVE: 1.0, LOW_ACTIVE: 1.16, ACTIVE: 1.31, VERY_ACTIVE: 1.56 },
  },
};
/** kcal/d of growth, IOM 2002/2005: 3 to 8 and 9 to 18 years. */
export const iomGrowth = { underNine: 20, fromNine: 25 } as const;
/** kcal/d = perKg * weight - less + growth, 13 to 35 months, both sexes, no activity. IOM 2002/2005. */
export const iomToddlerEquation = { perKg: 89, less: 100, growth: 20 } as const;

/** Ages in months of the medians below: two years, then half a month after each birthday, as the charts' files list them. */
export const growthMonths = [
  24, 36.5, 48.5, 60.5, 72.5, 84.5, 96.5, 108.5, 120.5, 132.5, 144.5, 156.5, 168.5, 180.5, 192.5, 204.5, 216.5, 228.5,
] as const;
/** Median stature (cm) and weight (kg) for age, to a tenth. CDC growth charts, 2000. A median, not a goal. */
export const growthMedians: Readonly<
  Record<Sex, { readonly heightCm: readonly number[]; readonly weightKg: readonly number[] }>
> = {
  MALE: {
    heightCm: [
      86.5, 95.3, 102.5, 109.2, 115.7, 122.0, 128.1, 133.7, 138.8, 143.7, 149.3, 156.4, 164.1, 170.1, 173.6, 175.3,
      176.2, 176.6,
    ],
    weightKg: [
      12.7, 14.4, 16.3, 18.5, 20.8, 23.2, 25.8, 28.7, 32.1, 36.1, 40.7, 45.8, 51.2, 56.5, 61.1, 64.7, 67.3, 69.2,
    ],
  },
  FEMALE: {
    heightCm: [
      85.0, 94.2, 101.0, 108.0, 115.0, 121.8, 127.8, 133.1, 138.2, 144.3, 151.5, 157.3, 160.5, 161.9, 162.6, 162.9,
      163.1, 163.3,
    ],
    weightKg: [
      12.1, 13.9, 15.9, 18.0, 20.3, 22.9, 25.8, 29.1, 33.1, 37.4, 41.8, 46.0, 49.5, 52.1, 53.9, 55.2, 56.2, 57.4,
    ],
  },
};

/** Columns of the table below. */
export type DgaLevel = "SEDENTARY" | "MODERATE" | "ACTIVE";
/** Rows from 2 to 18 completed years, kcal/d, rounded to 200 by the publisher. Dietary Guidelines for Americans. */
export const dgaFirstAge = 2;
export const dgaEnergyKcal: Readonly<Record<Sex, Readonly<Record<DgaLevel, readonly number[]>>>> = {
  MALE: {
    SEDENTARY: [1000, 1000, 1200, 1200, 1400, 1400, 1400, 1600, 1600, 1800, 1800, 2000, 2000, 2200, 2400, 2400, 2400],
    MODERATE: [1000, 1400, 1400, 1400, 1600, 1600, 1600, 1800, 1800, 2000, 2200, 2200, 2400, 2600, 2800, 2800, 2800],
    ACTIVE: [1000, 1400, 1600, 1600, 1800, 1800, 2000, 2000, 2200, 2200, 2400, 2600, 2800, 3000, 3200, 3200, 3200],
  },
  FEMALE: {
    SEDENTARY: [1000, 1000, 1200, 1200, 1200, 1200, 1400, 1400, 1400, 1600, 1600, 1600, 1800, 1800, 1800, 1800, 1800],
    MODERATE: [1000, 1200, 1400, 1400, 1400, 1600, 1600, 1600, 1800, 1800, 2000, 2000, 2000, 2000, 2000, 2000, 2000],
    ACTIVE: [1000, 1400, 1400, 1600, 1600, 1800, 1800, 1800, 2000, 2000, 2200, 2200, 2400, 2400, 2400, 2400, 2400],
  },
};

export interface DailyIntake {
  readonly proteinGrams: number;
  readonly fibreGrams: number;
  readonly calciumMg: number;
  readonly ironMg: number;
  readonly zincMg: number;
  readonly vitaminARaeUg: number;
  readonly vitaminCMg: number;
  /** Dietary folate equivalents. */
  readonly folateDfeUg: number;
  /** Reduce intake if above. */
  readonly sodiumMaxMg: number;
}

const toddler: DailyIntake = {
  proteinGrams: 13,
  fibreGrams: 19,
  calciumMg: 700,
  ironMg: 7,
  zincMg: 3,
  vitaminARaeUg: 300,
  vitaminCMg: 15,
  folateDfeUg: 150,
  sodiumMaxMg: 1200,
};
const fourToEight: DailyIntake = {
  proteinGrams: 19,
  fibreGrams: 25,
  calciumMg: 1000,
  ironMg: 10,
  zincMg: 5,
  vitaminARaeUg: 400,
  vitaminCMg: 25,
  folateDfeUg: 200,
  sodiumMaxMg: 1500,
};
const nineToThirteen: DailyIntake = {
  proteinGrams: 34,
  fibreGrams: 31,
  calciumMg: 1300,
  ironMg: 8,
  zincMg: 8,
  vitaminARaeUg: 600,
  vitaminCMg: 45,
  folateDfeUg: 300,
  sodiumMaxMg: 1800,
};

/** Recommended (RDA) or adequate (AI: fibre) daily intakes by the youngest age of each band; sodium: CDRR 2019. National Academies. */
export const dailyIntakes: readonly { readonly fromAge: number; readonly by: Readonly<Record<Sex, DailyIntake>> }[] = [
  { fromAge: 1, by: { MALE: toddler, FEMALE: toddler } },
  { fromAge: 4, by: { MALE: fourToEight, FEMALE: fourToEight } },
  { fromAge: 9, by: { MALE: nineToThirteen, FEMALE: { ...nineToThirteen, fibreGrams: 26 } } },
  {
    fromAge: 14,
    by: {
      MALE: {
        proteinGrams: 52,
        fibreGrams: 38,
        calciumMg: 1300,
        ironMg: 11,
        zincMg: 11,
        vitaminARaeUg: 900,
        vitaminCMg: 75,
        folateDfeUg: 400,
        sodiumMaxMg: 2300,
      },
      FEMALE: {
        proteinGrams: 46,
        fibreGrams: 26,
        calciumMg: 1300,
        ironMg: 15,
        zincMg: 9,
        vitaminARaeUg: 700,
        vitaminCMg: 65,
        folateDfeUg: 400,
        sodiumMaxMg: 2300,
      },
    },
  },
];

/** A tolerable upper level: the most of a day that is thought to harm almost nobody. No goal, and no limit on one box. */
export interface UpperLevel {
  readonly nutrient: "CA" | "FE" | "ZN" | "RETINOL" | "FOLIC_ACID";
  readonly unit: "mg" | "ug";
  /** By the youngest completed age of each band, both sexes. */
  readonly byAge: readonly { readonly fromAge: number; readonly amount: number }[];
  /** What of a day's intake it is about. */
  readonly counts: string;
}

const byBand = (toddlers: number, fourToEightYears: number, nineToThirteenYears: number, teens: number) => [
  { fromAge: 1, amount: toddlers },
  { fromAge: 4, amount: fourToEightYears },
  { fromAge: 9, amount: nineToThirteenYears },
  { fromAge: 14, amount: teens },
];
/** National Academies. */
export const upperLevels: readonly UpperLevel[] = [
  { nutrient: "CA", unit: "mg", byAge: byBand(2500, 2500, 3000, 3000), counts: "calcium from food and supplements" },
  { nutrient: "FE", unit: "mg", byAge: byBand(40, 40, 40, 45), counts: "iron from food and supplements" },
  { nutrient: "ZN", unit: "mg", byAge: byBand(7, 12, 23, 34), counts: "zinc from food and supplements" },
  {
    nutrient: "RETINOL",
    unit: "ug",
    byAge: byBand(600, 900, 1700, 2800),
    counts: "preformed vitamin A (retinol) only; carotenoids of plants do not count",
  },
  {
    nutrient: "FOLIC_ACID",
    unit: "ug",
    byAge: byBand(300, 400, 600, 800),
    counts:
      "synthetic folic acid only (that restriction from memory, unverified); folate of plain foods does not count",
  },
];

/** Protein RDA, g per kg and day, by the youngest age of each band, both sexes. IOM 2002/2005. */
export const proteinPerKg: readonly { readonly fromAge: number; readonly grams: number }[] = [
  { fromAge: 1, grams: 1.05 },
  { fromAge: 4, grams: 0.95 },
  { fromAge: 14, grams: 0.85 },
];

/** Most energy from saturated fat (WHO 2023), free sugars (WHO 2015) and added sugars (DGA 2020-2025), as a share of the day's. */
export const energyShareMax = { saturatedFat: 0.1, freeSugars: 0.1, addedSugars: 0.1 } as const;
/** Dietary Guidelines for Americans: no added sugars below this age, in years; grams in one meal, at most. */
export const addedSugars = { fromAge: 2, mealMaxGrams: 10 } as const;
/** kcal in a gram, the general factors 4, 9, 4 and 2 for fibre. Common practice; a composition table may use factors of each food. */
export const kcalPerGram = {
  PROCNT: 4,
  FAT: 9,
  FASAT: 9,
  FAMS: 9,
  FAPU: 9,
  CHOCDF: 4,
  SUGAR: 4,
  FREE_SUGAR: 4,
  ADDED_SUGAR: 4,
  FIBTG: 2,
} as const;
