/**
 * Invented households on the real catalogue: the planner's briefs without a database. A week of five school days from
 * Monday 11 January 2027; nothing in it is a real person, school or price.
 */
import { readdirSync, readFileSync } from "node:fs";
import { z } from "zod";
import { baseSchema, dishSchema, foodSchema, retentionSchema } from "../../shared/catalogue.js";
import type { EquipmentKind, WeekdayCode } from "../../shared/codes.js";
import { creditTable } from "../../shared/credits.js";
import { mealSharesSchema } from "../../shared/meal-shares.js";
import { holdingModelFile } from "../../shared/holding-model.js";
import { ruleSetDocument, type RuleSetDocument } from "../../shared/rule-set.js";
import type {
  BreakBrief,
  CatalogueBrief,
  ChildBrief,
  ChokingRule,
  CompartmentBrief,
  HoldingLimits,
  SessionBrief,
  WeekBrief,
} from "../../src/domain/brief.js";
import { addDays } from "../../src/domain/calendar/dates.js";

const seeds = new URL("../../seeds/reference/", import.meta.url);
const read = (path: string): unknown => JSON.parse(readFileSync(new URL(path, seeds), "utf8"));
const filesIn = (folder: string): string[] =>
  readdirSync(new URL(folder, seeds))
    .filter((name) => name.endsWith(".json"))
    .sort()
    .map((name) => `${folder}${name}`);

let catalogue: CatalogueBrief | null = null;
/** The catalogue the project ships. */
function seedCatalogue(): CatalogueBrief {
  catalogue ??= {
    version: "seeds",
    foods: filesIn("foods/").flatMap((file) => z.object({ foods: z.array(foodSchema) }).parse(read(file)).foods),
    bases: z.object({ bases: z.array(baseSchema) }).parse(read("bases.json")).bases,
    dishes: filesIn("dishes/").flatMap((file) => z.object({ dishes: z.array(dishSchema) }).parse(read(file)).dishes),
    retention: z.object({ factors: z.array(retentionSchema) }).parse(read("retention.json")).factors,
  };
  return catalogue;
}

const seedChoking = (): ChokingRule[] => (read("choking.json") as { rules: ChokingRule[] }).rules;
const seedSlotShares = () => z.object({ shares: mealSharesSchema }).parse(read("meal-shares.json")).shares.slots;
const seedHolding = (): HoldingLimits => ({
  ...(read("holding-limits.json") as { limits: HoldingLimits }).limits,
  model: holdingModelFile.parse(read("holding-model.json")),
});

export const monday = "2027-01-11";
const weekdays: readonly WeekdayCode[] = ["MONDAY", "TUESDAY", "WEDNESDAY", "THURSDAY", "FRIDAY"];
export const schoolDates: readonly string[] = weekdays.map((_, day) => addDays(monday, day));

const document = (key: string, layer: RuleSetDocument["layer"], rules: readonly unknown[]): RuleSetDocument =>
  ruleSetDocument.parse({
    format: "noonpail-rule-set/1",
    key,
    title: key,
    layer,
    coversFoodFromHome: true,
    language: "en-GB",
    version: 1,
    inForceFrom: "2026-09-01",
    rules,
  });
const own = { level: "FORBID", says: "An invented rule.", source: "own rule of an invented school" };

/** Index 0: a primary school without nuts, refrigerator or reheating. 1: a class without sesame. 2: an upper school. */
export const ruleSets: readonly RuleSetDocument[] = [
  document("primary", "SCHOOL", [
    { ...own, id: "no-nuts", kind: "EXCLUDE", matches: { anyOf: [{ allergens: ["PEANUT", "TREE_NUTS"] }] } },
    {
      ...own,
      id: "no-sweets",
      kind: "EXCLUDE",
      matches: { anyOf: [{ processing: ["CONFECTIONERY"] }, { groups: ["CONFECTIONERY"] }] },
    },
    {
      ...own,
      id: "fruit-only",
      kind: "ONLY",
      breaks: ["morning-break"],
      matches: { anyOf: [{ groups: ["FRUIT"], wholly: true }] },
    },
    {
      ...own,
      id: "fruit-daily",
      kind: "FREQUENCY",
      counts: "ITEMS",
      per: "BOX",
      atLeast: 1,
      matches: { anyOf: [{ groups: ["FRUIT", "DRIED_FRUIT"] }] },
    },
    {
      ...own,
      id: "pastry",
      kind: "FREQUENCY",
      counts: "ITEMS",
      per: "WEEK",
      atMost: 2,
      matches: { anyOf: [{ processing: ["PASTRY"] }] },
    },
    {
      ...own,
      id: "vegetable-kinds",
      kind: "FREQUENCY",
      counts: "KINDS",
      per: "WEEK",
      atLeast: 3,
      matches: {
        anyOf: [{ groups: ["VEGETABLE_DARK_GREEN", "VEGETABLE_RED_ORANGE", "VEGETABLE_OTHER"], slots: ["VEGETABLE"] }],
      },
    },
    { ...own, id: "place", kind: "SERVING", noReheating: true, noRefrigerator: true },
  ]),
  document("primary-class", "CLASS", [
    { ...own, id: "no-sesame", kind: "EXCLUDE", matches: { anyOf: [{ allergens: ["SESAME"] }] } },
  ]),
  document("upper", "SCHOOL", [
    {
      ...own,
      id: "pulse-days",
      kind: "FREQUENCY",
      counts: "DAYS",
      per: "WEEK",
      atLeast: 2,
      matches: { anyOf: [{ groups: ["PULSE", "SOYA_FOOD"] }] },
    },
    {
      ...own,
      id: "lean-box",
      kind: "NUTRIENT",
      nutrient: "FASAT",
      per: "WEEK_MEAN",
      as: "PERCENT_OF_ENERGY",
      atMost: 12,
    },
    {
      ...own,
      id: "starch-kinds",
      level: "ADVISE",
      kind: "FREQUENCY",
      counts: "KINDS",
      per: "WEEK",
      atLeast: 3,
      matches: { anyOf: [{ groups: ["GRAIN", "WHOLE_GRAIN", "BREAD"], slots: ["MAIN"] }] },
    },
  ]),
];

const primaryBreaks: readonly BreakBrief[] = [
  { key: "morning-break", name: "Morning break", startsAt: "10:00", minutes: 15, slots: ["FRUIT"], energyShare: 0.08 },
  {
    key: "lunch",
    name: "Lunch",
    startsAt: "11:25",
    minutes: 25,
    slots: ["MAIN", "VEGETABLE", "FRUIT", "EXTRA"],
    energyShare: 0.3,
  },
];
const upperBreaks: readonly BreakBrief[] = [
  {
    key: "morning-break",
    name: "Morning break",
    startsAt: "10:30",
    minutes: 15,
    slots: ["EXTRA", "FRUIT"],
    energyShare: 0.1,
  },
  {
    key: "lunch",
    name: "Lunch",
    startsAt: "11:45",
    minutes: 25,
    slots: ["MAIN", "VEGETABLE", "FRUIT"],
    energyShare: 0.3,
  },
];

const daysAt = (school: "PRIMARY" | "UPPER", sets: readonly number[], leaveAt: string): ChildBrief["days"] =>
  schoolDates.map((date, day) => ({
    date,
    weekday: weekdays[day] ?? "MONDAY",
    leaveAt,
    breaks: school === "PRIMARY" ? primaryBreaks : upperBreaks,
    facility: school === "PRIMARY" ? "NEITHER" : "REHEATING",
    ruleSets: sets,
  }));

const leak = (ml: number): CompartmentBrief => ({ ml, leakProof: true });
const dry = (ml: number): CompartmentBrief => ({ ml, leakProof: false });
const cold = { coldSources: 2, insulated: true } as const;

/** Four years, no allergy: choking forms matter. */
export const youngest: ChildBrief = {
  id: "lotte",
  name: "Lotte",
  dateOfBirth: "2022-03-19",
  sex: "FEMALE",
  weightKg: 16.5,
  heightCm: 103,
  activity: "LOW_ACTIVE",
  appetite: 1,
  diets: [],
  dislikes: ["mushroom", "red-cabbage-apple-slaw"],
  minutesToEat: 25,
  allergies: [],
  schoolName: "Elder Lane",
  box: { compartments: [leak(450), dry(200), dry(200), leak(200)], ...cold, flask: false },
  days: daysAt("PRIMARY", [0], "08:15"),
};

/** Eight years, avoids every trace of nuts and peanuts. */
export const middle: ChildBrief = {
  id: "arun",
  name: "Arun",
  dateOfBirth: "2018-05-07",
  sex: null,
  weightKg: null,
  heightCm: null,
  activity: "ACTIVE",
  appetite: 1,
  diets: [],
  dislikes: ["olive"],
  minutesToEat: 20,
  schoolName: "Elder Lane",
  allergies: [
    { allergen: "TREE_NUTS", foodKind: null, avoid: "TRACES" },
    { allergen: "PEANUT", foodKind: null, avoid: "TRACES" },
  ],
  box: { compartments: [leak(550), dry(220), dry(220), leak(220), dry(150)], ...cold, flask: false },
  days: daysAt("PRIMARY", [0, 1], "08:15"),
};

/** Thirteen years, vegetarian, with a flask, at a school that reheats. */
export const eldest: ChildBrief = {
  id: "signe",
  name: "Signe",
  dateOfBirth: "2013-10-02",
  sex: "FEMALE",
  weightKg: 47,
  heightCm: 158,
  activity: "ACTIVE",
  appetite: 1.1,
  diets: ["VEGETARIAN"],
  dislikes: ["celery"],
  minutesToEat: 20,
  allergies: [],
  schoolName: "Harbour",
  box: { compartments: [leak(850), dry(300), dry(300), leak(300), dry(250)], ...cold, flask: true },
  days: daysAt("UPPER", [2], "08:15"),
};

/** Three hours and ten minutes before the end of lunch, which a flask holds; from a quarter past eight it does not. */
export const eldestLeavingAtNine: ChildBrief = {
  ...eldest,
  days: eldest.days.map((day) => ({ ...day, leaveAt: "09:00" })),
};

const session = (
  key: SessionBrief["kind"],
  date: string,
  startsAt: string,
  rest: Omit<SessionBrief, "key" | "kind" | "date" | "startsAt">,
): SessionBrief => ({
  key: `${key.toLowerCase()}-${date}`,
  kind: key,
  date,
  startsAt,
  ...rest,
});

/** A weekend afternoon, an evening before and a morning of each school day; effort in points per hands-on minute. */
export const sessions: readonly SessionBrief[] = [
  session("WEEKEND", addDays(monday, -1), "16:00", { handsOnMinutes: 75, elapsedMinutes: 150, carers: 1, effort: 1 }),
  ...schoolDates.flatMap((date, day) => [
    session("EVENING", addDays(date, -1), "19:30", {
      handsOnMinutes: 25,
      elapsedMinutes: 60,
      carers: 1,
      effort: day < 2 ? 3 : 2,
    }),
    session("MORNING", date, "06:50", {
      handsOnMinutes: 28,
      elapsedMinutes: 55,
      carers: day < 3 ? 1 : 2,
      effort: day < 2 ? 6 : 4,
    }),
  ]),
];

const kitchen = (units: Partial<Record<EquipmentKind, number>>): WeekBrief["household"]["equipment"] =>
  Object.entries(units).map(([kind, count]) => ({ kind: kind as EquipmentKind, units: count }));

/** A household's week on the seed catalogue; `change` replaces any part of it. */
function demoBrief(change: Partial<WeekBrief> = {}): WeekBrief {
  return {
    format: "noonpail-brief/1",
    weekStart: monday,
    household: {
      id: "millrace",
      name: "Millrace kitchen",
      currency: "GBP",
      keepsOut: ["PEANUT"],
      refrigeratorMl: 30_000,
      equipment: kitchen({ HOB_BURNER: 2, OVEN: 1, TOASTER: 1, STEAMER: 1, BLENDER: 1, MICROWAVE: 1, MUFFIN_TRAY: 1 }),
    },
    sessions,
    children: [youngest, middle, eldest],
    catalogue: seedCatalogue(),
    ruleSets,
    choking: seedChoking(),
    slotShares: seedSlotShares(),
    credits: creditTable.parse(read("credits.json")),
    holding: seedHolding(),
    stock: [
      { food: "carrot-raw", grams: 500 },
      { food: "cheddar", grams: 200 },
    ],
    ready: [
      {
        id: "sauce-left",
        base: "tomato-sauce",
        grams: 300,
        from: "LEFTOVER",
        firstDate: monday,
        lastDate: addDays(monday, 2),
      },
    ],
    labels: [{ food: "cheddar", contains: ["MILK"], mayContain: [], readOn: "2027-01-09" }],
    relaxations: [],
    pins: [],
    made: [],
    outOf: [],
    history: [],
    stayCloseTo: [],
    sharing: true,
    ...change,
  };
}

/** Three children of 4, 8 and 13 years. */
export const threeChildren = (change: Partial<WeekBrief> = {}): WeekBrief => demoBrief(change);

/** Two children of 4 and 8 years in a smaller kitchen with less time. */
export const twoChildren = (change: Partial<WeekBrief> = {}): WeekBrief => {
  const brief = demoBrief();
  return demoBrief({
    children: [youngest, middle],
    household: {
      ...brief.household,
      id: "quay",
      name: "Quay kitchen",
      refrigeratorMl: 12_000,
      equipment: kitchen({ HOB_BURNER: 2, OVEN: 1, MICROWAVE: 1, TOASTER: 1, BLENDER: 1 }),
    },
    sessions: sessions.map((row) => ({ ...row, handsOnMinutes: Math.min(row.handsOnMinutes, 40), carers: 1 })),
    ready: [],
    ...change,
  });
};
