/** Energy and nutrients against what was published: the equations, the printed tables they lead to, a school's own standard. */
import type { Rule } from "../../../shared/rule-set.js";
import type { CatalogueIndex, DerivedDish } from "../../domain/catalogue/derive.js";
import { energyNeedKcal, proteinNeedGrams, tableEnergyKcal, type EnergyInput } from "../../domain/nutrition/needs.js";
import type { Activity, Sex } from "../../domain/nutrition/reference-values.js";
import { createRuleTables } from "../../domain/rules/compile.js";
import { noCredits } from "../../domain/rules/credits.js";
import { judgeItem } from "../../domain/rules/judge-item.js";
import type { OutsideCheck } from "./check.js";

const iom = "IOM 2002/2005, Dietary Reference Intakes for Energy: the equation, worked by hand";
const nasem = "NASEM 2023, Dietary Reference Intakes for Energy: the equation, worked by hand";
const printed =
  "NASEM 2023, Dietary Reference Intakes for Energy: needs at reference sizes (NHANES 2015-2018 medians), read in the UpToDate table of them";
const dga =
  "Dietary Guidelines for Americans, 2015-2020 Appendix 2 and 2020-2025 Appendix 1, and the IOM equation rounded to 200 kcal";
const protein = "IOM 2002/2005, protein RDA per kg, and National Academies, DRI summary tables";
const scotland =
  "Nutritional Requirements for Food and Drink in Schools (Scotland) Regulations 2008, schedule 3, table A, primary lunch";

const activities: readonly Activity[] = ["INACTIVE", "LOW_ACTIVE", "ACTIVE", "VERY_ACTIVE"];

/** kcal a day by completed age from 3 to 18, by level of activity in the order above. */
const printedNeeds: Readonly<Record<Sex, readonly (readonly [number, number, number, number])[]>> = {
  MALE: [
    [1078, 1220, 1216, 1245],
    [1188, 1318, 1340, 1393],
    [1318, 1437, 1488, 1567],
    [1421, 1530, 1603, 1703],
    [1578, 1678, 1785, 1918],
    [1700, 1798, 1928, 2086],
    [1803, 1898, 2047, 2224],
    [1959, 2082, 2252, 2460],
    [2134, 2267, 2467, 2712],
    [2234, 2356, 2579, 2843],
    [2482, 2626, 2889, 3205],
    [2623, 2771, 3061, 3407],
    [2744, 2924, 3226, 3596],
    [2755, 2941, 3243, 3615],
    [2859, 3072, 3384, 3777],
    [2856, 3058, 3373, 3764],
  ],
  FEMALE: [
    [1075, 1108, 1170, 1217],
    [1166, 1225, 1289, 1374],
    [1241, 1328, 1392, 1517],
    [1325, 1437, 1503, 1665],
    [1396, 1520, 1593, 1770],
    [1470, 1614, 1690, 1896],
    [1606, 1767, 1855, 2083],
    [1737, 1909, 2013, 2253],
    [1856, 2056, 2166, 2445],
    [2009, 2203, 2340, 2607],
    [2017, 2226, 2360, 2648],
    [2139, 2346, 2503, 2784],
    [2082, 2288, 2441, 2720],
    [2138, 2342, 2506, 2781],
    [2178, 2377, 2553, 2819],
    [2114, 2318, 2485, 2760],
  ],
};
const firstPrintedAge = 3;

function kcal(input: EnergyInput): number {
  const need = energyNeedKcal(input);
  if (!need.ok) throw new Error(`a check value lies outside the equation: ${JSON.stringify(need.error)}`);
  return need.value;
}

/**
 * The greatest difference, kcal, between a printed row and the equations for one height and weight. The sizes are not printed:
 * they are the two unknowns that fit the four levels best (least squares), which leaves two figures of each row to check.
 */
function misfit(sex: Sex, ageYears: number, row: readonly number[]): number {
  const at = (activity: Activity, heightCm: number, weightKg: number) =>
    kcal({ sex, ageYears, heightCm, weightKg, activity, method: "NASEM_2023" });
  // The equations are straight in height and weight: steps of one from a plausible body read their coefficients.
  const [height, weight] = [120, 40];
  const lines = activities.map((activity, level) => {
    const base = at(activity, height, weight);
    const [perCm, perKg] = [at(activity, height + 1, weight) - base, at(activity, height, weight + 1) - base];
    return { perCm, perKg, rest: (row[level] ?? 0) - base };
  });
  const sum = (of: (line: (typeof lines)[number]) => number) => lines.reduce((total, line) => total + of(line), 0);
  const [hh, hw, ww] = [sum((l) => l.perCm ** 2), sum((l) => l.perCm * l.perKg), sum((l) => l.perKg ** 2)];
  const [hr, wr] = [sum((l) => l.perCm * l.rest), sum((l) => l.perKg * l.rest)];
  const determinant = hh * ww - hw ** 2;
  const [dh, dw] = [(hr * ww - hw * wr) / determinant, (hh * wr - hw * hr) / determinant];
  return Math.max(...lines.map(({ perCm, perKg, rest }) => Math.abs(rest - perCm * dh - perKg * dw)));
}

/** The two children of the worked values EN-1 to EN-5. */
export const boy8: EnergyInput = {
  sex: "MALE",
  ageYears: 8,
  weightKg: 25.6,
  heightCm: 128,
  activity: "LOW_ACTIVE",
  method: "IOM_2005",
};
export const girl10: EnergyInput = {
  sex: "FEMALE",
  ageYears: 10,
  weightKg: 33,
  heightCm: 138,
  activity: "ACTIVE",
  method: "IOM_2005",
};
const toddler: EnergyInput = {
  sex: "FEMALE",
  ageYears: 2,
  weightKg: 12.5,
  heightCm: 86,
  activity: "ACTIVE",
  method: "IOM_2005",
};

/** The Scottish lunch as rules of an item: energy within 10 % of 557 kcal, fat at most 21.7 g. */
const scottishLunch: readonly Extract<Rule, { kind: "NUTRIENT" }>[] = [
  { nutrient: "ENERC_KCAL" as const, atLeast: 501.3, atMost: 612.7 },
  { nutrient: "FAT" as const, atMost: 21.7 },
].map((band) => ({
  ...band,
  id: band.nutrient.toLowerCase().replaceAll("_", "-"),
  kind: "NUTRIENT",
  says: "An average primary lunch.",
  level: "FORBID",
  source: scotland,
  per: "ITEM",
  as: "AMOUNT",
  shortWeek: "PRORATE",
}));

/** @param index any dish of it lends its form to the lunch of EN-8 */
export function needsChecks(index: CatalogueIndex): OutsideCheck[] {
  const [form] = index.dishes;
  if (form === undefined) throw new Error("a catalogue without dishes cannot be checked");
  const figures = { ENERC_KCAL: 600, FAT: 22 };
  const lunch: DerivedDish = {
    ...index.derived(form.key),
    nutrients: figures,
    nutrientsAtMost: figures,
    missing: [],
  };
  const broken = judgeItem(
    scottishLunch.map((rule) => ({ ruleSet: 0, rule })),
    { derived: lunch, slot: "MAIN", labels: [] },
    "lunch",
    lunch.grams,
    createRuleTables([], noCredits),
  ).forbidden.map(({ ruleId }) => ruleId);
  return [
    {
      id: "EN-1",
      about: "energy of a boy of 8, 25.6 kg, 1.28 m, low active, kcal a day",
      source: iom,
      expected: 1691.78,
      tolerance: 0.5,
      found: kcal(boy8),
    },
    {
      id: "EN-2",
      about: "energy of a girl of 10, 33 kg, 1.38 m, active, kcal a day",
      source: iom,
      expected: 1973.09,
      tolerance: 0.5,
      found: kcal(girl10),
    },
    {
      id: "EN-3",
      about: "energy of a child of 24 months, 12.5 kg, kcal a day",
      source: iom,
      expected: 1032.5,
      tolerance: 0.1,
      found: kcal(toddler),
    },
    {
      id: "EN-4",
      about: "energy of the boy of EN-1 by the later equation, kcal a day",
      source: nasem,
      expected: 1686.09,
      tolerance: 0.5,
      found: kcal({ ...boy8, method: "NASEM_2023" }),
    },
    {
      id: "EN-5",
      about: "energy of the girl of EN-2 by the later equation, kcal a day",
      source: nasem,
      expected: 1843.29,
      tolerance: 0.5,
      found: kcal({ ...girl10, method: "NASEM_2023" }),
    },
    ...(
      [
        ["a", "boy of 8, moderately active", boy8, 1600],
        ["b", "girl of 10, active", girl10, 2000],
      ] as const
    ).flatMap(([letter, who, input, expected]): OutsideCheck[] => [
      {
        id: `EN-6${letter}`,
        about: `${who}: the equation rounded to 200 kcal is the printed cell`,
        source: dga,
        expected,
        tolerance: 0,
        found: Math.round(kcal(input) / 200) * 200,
      },
      {
        id: `EN-6${letter}-table`,
        about: `${who}: the table's cell, kcal a day`,
        source: dga,
        expected,
        tolerance: 0,
        found: tableEnergyKcal(input.sex, input.ageYears, input.activity),
      },
    ]),
    {
      id: "EN-7",
      about: "protein of a child of 6 with 20 kg, by weight as by the day, g",
      source: protein,
      expected: 19,
      tolerance: 1e-9,
      found: proteinNeedGrams(6, 20, 0),
    },
    {
      id: "EN-8",
      about: "a primary lunch of 600 kcal and 22.0 g fat: rules broken",
      source: scotland,
      expected: "fat",
      tolerance: 0,
      found: broken.join(", "),
    },
    ...(["MALE", "FEMALE"] as const).flatMap((sex) =>
      printedNeeds[sex].map((row, at): OutsideCheck => {
        const ageYears = firstPrintedAge + at;
        return {
          id: `EN-P-${sex}-${ageYears}`,
          about: `${sex === "MALE" ? "boys" : "girls"} of ${ageYears}: greatest difference to the printed needs of four levels at one body size, kcal`,
          source: printed,
          expected: 0,
          // The table rounds to whole kcal.
          tolerance: 0.55,
          found: misfit(sex, ageYears, row),
        };
      }),
    ),
  ];
}
