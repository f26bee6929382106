/**
 * A hand-made week small enough to check on paper: two children, two school days, two bases, eleven dishes. Everything in
 * it is invented, the figures per 100 g included; round numbers so that sums can be done by eye.
 */
import type { Base, Dish, DishStep, Food } from "../../shared/catalogue.js";
import type { WeekBrief } from "../../src/domain/brief.js";
import type { BatchPlan, BoxPlan, ItemPlan, ShoppingLinePlan, TaskPlan, WeekDraft } from "../../src/domain/week.js";

export type Mutable<T> = T extends readonly (infer U)[] ? Mutable<U>[] : T extends object ? { -readonly [K in keyof T]: Mutable<T[K]> } : T;

export const monday = "2026-09-07";
export const tuesday = "2026-09-08";

const food = (key: string, rest: Partial<Food> & Pick<Food, "group">): Food => ({
  key, name: key, ndb: null, kind: key, origins: ["PLANT"], allergens: [], packaged: false,
  nutrients: { ENERC_KCAL: 100, PROCNT: 5, CHOCDF: 10, NA: 50 }, freeSugarGrams: 0, refusePercent: 0, densityGramsPerMl: null, measures: [],
  waterActivity: null, ph: null, chokingClasses: [], keepsChilledDays: 5, boughtAs: null, pack: { grams: 500, priceMinor: 200 },
  shopSection: "PRODUCE", wholeGrain: false, ...rest,
});

const foods: Food[] = [
  food("rice-raw", { group: "GRAIN", kind: "rice", pack: { grams: 1000, priceMinor: 300 } }),
  food("rice-cooked", { group: "GRAIN", kind: "rice", boughtAs: { food: "rice-raw", gramsPerGram: 0.4 } }),
  food("chickpea", { group: "PULSE", packaged: true, pack: { grams: 240, priceMinor: 90 } }),
  food("flatbread", { group: "BREAD", packaged: true, allergens: ["WHEAT"], wholeGrain: true, pack: { grams: 300, priceMinor: 150 } }),
  food("egg", { group: "EGG", origins: ["EGG"], allergens: ["EGG"], refusePercent: 20, pack: { grams: 300, priceMinor: 250 } }),
  food("cucumber", { group: "VEGETABLE_OTHER" }),
  food("carrot", { group: "VEGETABLE_RED_ORANGE", chokingClasses: ["HARD_RAW"], refusePercent: 10 }),
  food("apple", { group: "FRUIT" }),
  food("pear", { group: "FRUIT" }),
  food("grape", { group: "FRUIT", chokingClasses: ["GRAPE_LIKE"] }),
  food("yogurt", { group: "YOGURT", kind: "cow-milk", origins: ["DAIRY"], allergens: ["MILK"], packaged: true }),
  food("chicken", { group: "POULTRY", origins: ["MEAT", "POULTRY"] }),
  food("almond", { group: "NUT", allergens: ["ALMOND"], chokingClasses: ["WHOLE_NUT"] }),
  food("water", { group: "WATER", nutrients: { ENERC_KCAL: 0, PROCNT: 0, CHOCDF: 0, NA: 0 } }),
];

const bases: Base[] = [
  {
    key: "cooked-rice", name: "Cooked rice", kind: "GRAIN", batchGrams: 500,
    ingredients: [{ food: "rice-cooked", grams: 500, form: "MIXED_IN" }, { food: "water", grams: 100, form: "MIXED_IN" }],
    fixedHandsOnMinutes: 4, perBatchHandsOnMinutes: 2, passiveMinutes: 20, equipment: [{ kind: "HOB_BURNER", units: 1 }],
    equipmentMinutes: 24, maxBatches: 2, windows: ["WEEKEND", "EVENING"], keepsChilledDays: 3, keepsFrozenDays: null, storageMl: 800,
    steps: ["Cook the rice."],
  },
  {
    key: "chickpea-mash", name: "Chickpea mash", kind: "FILLING", batchGrams: 300,
    ingredients: [{ food: "chickpea", grams: 300, form: "MASHED" }],
    fixedHandsOnMinutes: 5, perBatchHandsOnMinutes: 5, passiveMinutes: 0, equipment: [],
    equipmentMinutes: 0, maxBatches: 2, windows: ["EVENING"], keepsChilledDays: 2, keepsFrozenDays: 30, storageMl: 500,
    steps: ["Mash the chickpeas."],
  },
];

const step = (rest: Partial<DishStep> = {}): DishStep => ({
  text: "Put it together.", handsOnFixedMinutes: 1, handsOnPerPortionMinutes: 2, passiveMinutes: 0, equipment: [], batchPortions: null,
  eveningBefore: false, coolMinutes: 0, heldWhileCooling: false, ...rest,
});
const dish = (key: string, rest: Partial<Dish> & Pick<Dish, "slots" | "ingredients">): Dish => ({
  key, name: key, bases: [], portion: { kind: "CONTINUOUS", grams: 80, stepGrams: 10 }, steps: [step()], served: "COLD", goodForHours: 8,
  cutlery: "NONE", spill: "DRY", volumeMl: 100, starch: "NONE", protein: "NONE", colours: [], textures: [], flavours: [], cuisine: "home",
  processing: [], cookedInFat: false, treat: false, ...rest,
});

const dishes: Dish[] = [
  dish("chickpea-wrap", {
    slots: ["MAIN"], bases: [{ base: "chickpea-mash", grams: 80 }], ingredients: [{ food: "flatbread", grams: 60, form: "WHOLE" }],
    portion: { kind: "PIECES", gramsPerPiece: 70, pieces: 2, stepPieces: 1, pieceName: "half wrap" }, starch: "FLATBREAD", protein: "PULSE", volumeMl: 250,
  }),
  dish("rice-bowl", {
    slots: ["MAIN"], bases: [{ base: "cooked-rice", grams: 150 }], ingredients: [{ food: "cucumber", grams: 50, form: "CHOPPED_SMALL" }],
    portion: { kind: "CONTINUOUS", grams: 200, stepGrams: 10 }, served: "EITHER", cutlery: "SPOON", spill: "MOIST", starch: "RICE", volumeMl: 250,
  }),
  dish("egg-rice", {
    slots: ["MAIN"], bases: [{ base: "cooked-rice", grams: 150 }], ingredients: [{ food: "egg", grams: 50, form: "CHOPPED_SMALL" }],
    portion: { kind: "CONTINUOUS", grams: 200, stepGrams: 10 }, served: "WARM", cutlery: "FORK", spill: "MOIST", starch: "RICE", protein: "EGG", volumeMl: 250,
    steps: [step({ handsOnFixedMinutes: 2, handsOnPerPortionMinutes: 3, passiveMinutes: 5, equipment: [{ kind: "HOB_BURNER", units: 1 }] })],
  }),
  dish("chickpea-stew", {
    slots: ["MAIN"], bases: [{ base: "chickpea-mash", grams: 150 }], ingredients: [{ food: "carrot", grams: 90, form: "COOKED_SOFT" }],
    portion: { kind: "CONTINUOUS", grams: 240, stepGrams: 10 }, served: "EITHER", cutlery: "SPOON", spill: "WET", protein: "PULSE", volumeMl: 250,
    steps: [step({ eveningBefore: true, handsOnFixedMinutes: 3, coolMinutes: 20, passiveMinutes: 10, equipment: [{ kind: "HOB_BURNER", units: 1 }] })],
  }),
  dish("carrot-sticks", { slots: ["VEGETABLE"], ingredients: [{ food: "carrot", grams: 80, form: "STRIPS" }] }),
  dish("cucumber-slices", { slots: ["VEGETABLE"], ingredients: [{ food: "cucumber", grams: 80, form: "SLICED_THIN" }] }),
  dish("apple-slices", { slots: ["FRUIT"], ingredients: [{ food: "apple", grams: 80, form: "SLICED_THIN" }] }),
  dish("pear-slices", { slots: ["FRUIT"], ingredients: [{ food: "pear", grams: 80, form: "SLICED_THIN" }] }),
  dish("grapes", { slots: ["FRUIT"], ingredients: [{ food: "grape", grams: 80, form: "WHOLE" }] }),
  dish("yogurt-pot", { slots: ["FRUIT"], ingredients: [{ food: "yogurt", grams: 80, form: "MIXED_IN" }], cutlery: "SPOON", spill: "WET" }),
  dish("chicken-bites", { slots: ["VEGETABLE"], ingredients: [{ food: "chicken", grams: 80, form: "CHOPPED_SMALL" }] }),
  dish("almond-pear", { slots: ["FRUIT"], ingredients: [{ food: "pear", grams: 60, form: "SLICED_THIN" }, { food: "almond", grams: 20, form: "WHOLE" }] }),
];

const carrotCut = "Cut into matchsticks.";
const grapeCut = "Quarter lengthways.";
const common = { says: "A rule of an invented school.", level: "FORBID" as const, source: "invented for this test", shortWeek: "PRORATE" as const };
const group = (...groups: Food["group"][]) => ({ anyOf: [{ groups }] });

export const tinyBrief: WeekBrief = {
  format: "noonpail-brief/1",
  weekStart: monday,
  household: {
    id: "house", name: "House", currency: "EUR", keepsOut: ["TREE_NUTS"], refrigeratorMl: 3000,
    equipment: [{ kind: "HOB_BURNER", units: 1 }],
  },
  sessions: [
    { key: "weekend", kind: "WEEKEND", date: "2026-09-06", startsAt: "14:00", handsOnMinutes: 30, elapsedMinutes: 60, carers: 1, effort: 1 },
    { key: "sunday-evening", kind: "EVENING", date: "2026-09-06", startsAt: "19:00", handsOnMinutes: 30, elapsedMinutes: 60, carers: 1, effort: 1 },
    { key: "monday-morning", kind: "MORNING", date: monday, startsAt: "06:30", handsOnMinutes: 45, elapsedMinutes: 85, carers: 2, effort: 2 },
    { key: "monday-evening", kind: "EVENING", date: monday, startsAt: "19:00", handsOnMinutes: 30, elapsedMinutes: 60, carers: 1, effort: 1 },
    { key: "tuesday-morning", kind: "MORNING", date: tuesday, startsAt: "06:30", handsOnMinutes: 45, elapsedMinutes: 85, carers: 2, effort: 2 },
  ],
  children: [
    {
      id: "mira", name: "Mira", dateOfBirth: "2022-03-01", sex: "FEMALE", weightKg: null, heightCm: null, activity: "ACTIVE", appetite: 1,
      diets: ["VEGETARIAN"], dislikes: [], minutesToEat: 20, allergies: [{ allergen: "MILK", foodKind: null, avoid: "TRACES" }],
      box: { compartments: [{ ml: 400, leakProof: false }, { ml: 200, leakProof: false }, { ml: 200, leakProof: true }], coldSources: 2, insulated: true, flask: false },
      schoolName: "Invented school",
      days: [
        { date: monday, weekday: "MONDAY", leaveAt: "08:00", facility: "NEITHER", ruleSets: [0], breaks: [{ key: "lunch", name: "Lunch", startsAt: "12:00", minutes: 30, slots: ["MAIN", "VEGETABLE", "FRUIT"], energyShare: 0.35 }] },
        { date: tuesday, weekday: "TUESDAY", leaveAt: "08:00", facility: "NEITHER", ruleSets: [0], breaks: [{ key: "lunch", name: "Lunch", startsAt: "12:00", minutes: 30, slots: ["MAIN", "VEGETABLE", "FRUIT"], energyShare: 0.35 }] },
      ],
    },
    {
      id: "tove", name: "Tove", dateOfBirth: "2017-05-20", sex: "FEMALE", weightKg: null, heightCm: null, activity: "ACTIVE", appetite: 1,
      diets: [], dislikes: [], minutesToEat: 20, allergies: [],
      box: { compartments: [{ ml: 300, leakProof: true }, { ml: 250, leakProof: true }, { ml: 250, leakProof: false }], coldSources: 2, insulated: true, flask: true },
      schoolName: "Invented school",
      days: [
        {
          date: monday, weekday: "MONDAY", leaveAt: "08:00", facility: "NEITHER", ruleSets: [0],
          breaks: [
            { key: "snack", name: "Snack", startsAt: "10:00", minutes: 15, slots: ["FRUIT"], energyShare: 0.1 },
            { key: "lunch", name: "Lunch", startsAt: "12:00", minutes: 30, slots: ["MAIN", "VEGETABLE", "FRUIT"], energyShare: 0.35 },
          ],
        },
        {
          date: tuesday, weekday: "TUESDAY", leaveAt: "08:00", facility: "REHEATING", ruleSets: [0],
          breaks: [
            { key: "snack", name: "Snack", startsAt: "10:00", minutes: 15, slots: ["FRUIT"], energyShare: 0.1 },
            { key: "lunch", name: "Lunch", startsAt: "12:00", minutes: 30, slots: ["MAIN", "VEGETABLE", "FRUIT"], energyShare: 0.35 },
          ],
        },
      ],
    },
  ],
  catalogue: { version: "tiny", foods, bases, dishes },
  ruleSets: [
    {
      format: "noonpail-rule-set/1", key: "invented-school", title: "Rules of an invented school", layer: "SCHOOL", coversFoodFromHome: true,
      language: "en", version: 1, inForceFrom: "2026-08-01",
      rules: [
        { ...common, id: "no-peanut", kind: "EXCLUDE", matches: { anyOf: [{ allergens: ["PEANUT"] }] } },
        { ...common, id: "fruit-at-ten", kind: "ONLY", breaks: ["snack"], matches: { anyOf: [{ groups: ["FRUIT"], wholly: true }] } },
        { ...common, id: "vegetable-daily", kind: "FREQUENCY", matches: { anyOf: [{ slots: ["VEGETABLE"] }] }, counts: "ITEMS", per: "BOX", weeks: 1, atLeast: 1 },
        { ...common, id: "grapes-rarely", kind: "FREQUENCY", matches: { anyOf: [{ kinds: ["grape"] }] }, counts: "DAYS", per: "WEEK", weeks: 1, atMost: 2 },
        { ...common, id: "vegetable-weight", kind: "AMOUNT", matches: group("VEGETABLE_OTHER", "VEGETABLE_RED_ORANGE"), unit: "GRAMS", per: "BOX", atLeast: 50 },
        { ...common, id: "salt", kind: "NUTRIENT", nutrient: "NA", per: "BOX", as: "AMOUNT", atMost: 300 },
        { ...common, id: "meat-with-milk", kind: "TOGETHER", first: { anyOf: [{ origins: ["MEAT"] }] }, second: { anyOf: [{ origins: ["DAIRY"] }] } },
        { ...common, id: "no-reheating", kind: "SERVING", noReheating: true, weekdays: ["MONDAY"] },
      ],
    },
  ],
  choking: [
    { class: "GRAPE_LIKE", underAgeYears: 5, never: false, safeForms: ["QUARTERED_LENGTHWAYS", "SLICED_THIN"], cut: grapeCut, source: "invented" },
    { class: "HARD_RAW", underAgeYears: 5, never: false, safeForms: ["GRATED", "MATCHSTICKS", "COOKED_SOFT"], cut: carrotCut, source: "invented" },
    { class: "WHOLE_NUT", underAgeYears: 5, never: true, safeForms: ["GROUND"], cut: "None.", source: "invented" },
  ],
  holding: { chilledMinutes: 300, coldSources: 2, flaskMinutes: 360, ambientMinutes: 120, hotDayAmbientMinutes: 60, hotDayAboveC: 32, source: "invented" },
  stock: [{ food: "chickpea", grams: 100 }],
  ready: [{ id: "leftover-mash", base: "chickpea-mash", grams: 60, from: "LEFTOVER", firstDate: monday, lastDate: monday }],
  labels: [{ food: "flatbread", contains: ["WHEAT"], mayContain: ["SESAME"], readOn: "2026-09-01" }],
  relaxations: [], pins: [], made: [], outOf: [], history: [], stayCloseTo: [], sharing: true,
};

const holding = { case: "CHILLED", minutes: 270, limitMinutes: 300 } as const;
const item = (slot: ItemPlan["slot"], position: number, key: string, grams: number, compartment: number, rest: Partial<ItemPlan> = {}): ItemPlan => ({
  breakKey: "lunch", slot, position, dish: key, grams, pieces: null, served: "COLD", energyKcal: grams, carbohydrateGrams: grams / 10, compartment,
  cuts: [], holding, labelsToRead: [], pinned: false, why: [], ...rest,
});
const snack = (key: string): ItemPlan => item("FRUIT", 0, key, 80, 2, { breakKey: "snack", holding: { case: "CHILLED", minutes: 135, limitMinutes: 300 } });

const boxes: BoxPlan[] = [
  {
    childId: "mira", date: monday, leaveAt: "08:00", coldSources: 2, flask: false, cutlery: [],
    items: [
      item("MAIN", 0, "chickpea-wrap", 140, 0, { pieces: 2, labelsToRead: ["chickpea"] }),
      item("VEGETABLE", 1, "carrot-sticks", 80, 1, { cuts: [{ food: "carrot", cut: carrotCut, source: "invented" }] }),
      item("FRUIT", 2, "apple-slices", 80, 2),
    ],
  },
  {
    childId: "tove", date: monday, leaveAt: "08:00", coldSources: 2, flask: true, cutlery: ["FORK"],
    items: [
      snack("pear-slices"),
      // Base water is no energy: 150 g of 500 g rice with 100 g water weigh 150, and 50 g egg.
      item("MAIN", 0, "egg-rice", 200, -1, { served: "WARM", holding: { case: "FLASK", minutes: 270, limitMinutes: 360 } }),
      item("VEGETABLE", 1, "cucumber-slices", 80, 0),
      item("FRUIT", 2, "grapes", 80, 1),
    ],
  },
  {
    childId: "mira", date: tuesday, leaveAt: "08:00", coldSources: 2, flask: false, cutlery: ["SPOON"],
    items: [
      item("MAIN", 0, "rice-bowl", 200, 0),
      item("VEGETABLE", 1, "cucumber-slices", 80, 1),
      item("FRUIT", 2, "grapes", 80, 2, { cuts: [{ food: "grape", cut: grapeCut, source: "invented" }] }),
    ],
  },
  {
    childId: "tove", date: tuesday, leaveAt: "08:00", coldSources: 2, flask: false, cutlery: ["SPOON"],
    items: [
      snack("apple-slices"),
      item("MAIN", 0, "chickpea-stew", 240, 0),
      item("VEGETABLE", 1, "carrot-sticks", 80, 2),
      item("FRUIT", 2, "yogurt-pot", 80, 1),
    ],
  },
];

const batches: BatchPlan[] = [
  {
    base: "cooked-rice", session: "weekend", batches: 1, grams: 500, spareGrams: 200, made: false,
    feeds: [{ date: monday, childIds: ["tove"], grams: 150 }, { date: tuesday, childIds: ["mira"], grams: 150 }],
  },
  {
    base: "chickpea-mash", session: "sunday-evening", batches: 1, grams: 300, spareGrams: 110, made: false,
    feeds: [{ date: monday, childIds: ["mira"], grams: 40 }, { date: tuesday, childIds: ["tove"], grams: 150 }],
  },
];

const task = (
  key: string, session: string, kind: TaskPlan["kind"], what: string | null, forDates: string[], childIds: string[],
  times: [string, string, string], minutes: [number, number], rest: Partial<TaskPlan> = {},
): TaskPlan => ({
  key, session, kind, base: kind === "BASE" ? what : null, dish: kind === "FINISH" || kind === "COOL" ? what : null, text: key, childIds, forDates,
  startsAt: times[0], handsFreeAt: times[1], endsAt: times[2], handsOnMinutes: minutes[0], passiveMinutes: minutes[1], equipment: [], carer: 0,
  after: [], handles: [], ...rest,
});
const hob = (minutes: number): TaskPlan["equipment"] => [{ kind: "HOB_BURNER", units: 1, minutes }];

const tasks: TaskPlan[] = [
  task("rice", "weekend", "BASE", "cooked-rice", [monday, tuesday], ["mira", "tove"], ["14:00", "14:06", "14:26"], [6, 20], { equipment: hob(26) }),
  task("mash", "sunday-evening", "BASE", "chickpea-mash", [monday, tuesday], ["mira", "tove"], ["19:00", "19:10", "19:10"], [10, 0]),
  task("egg-rice", "monday-morning", "FINISH", "egg-rice", [monday], ["tove"], ["06:30", "06:35", "06:40"], [5, 5], { equipment: hob(10) }),
  task("wrap", "monday-morning", "FINISH", "chickpea-wrap", [monday], ["mira"], ["06:35", "06:38", "06:38"], [3, 0]),
  task("carrots-monday", "monday-morning", "FINISH", "carrot-sticks", [monday], ["mira"], ["06:40", "06:43", "06:43"], [3, 0]),
  task("apples-monday", "monday-morning", "FINISH", "apple-slices", [monday], ["mira"], ["06:43", "06:46", "06:46"], [3, 0]),
  task("cucumber-monday", "monday-morning", "FINISH", "cucumber-slices", [monday], ["tove"], ["06:30", "06:33", "06:33"], [3, 0], { carer: 1 }),
  task("grapes-monday", "monday-morning", "FINISH", "grapes", [monday], ["tove"], ["06:33", "06:36", "06:36"], [3, 0], { carer: 1 }),
  task("pears-monday", "monday-morning", "FINISH", "pear-slices", [monday], ["tove"], ["06:36", "06:39", "06:39"], [3, 0], { carer: 1 }),
  task("pack-mira-monday", "monday-morning", "PACK", null, [monday], ["mira"], ["06:50", "06:52", "06:52"], [2, 0], { after: ["wrap", "carrots-monday", "apples-monday"] }),
  task("pack-tove-monday", "monday-morning", "PACK", null, [monday], ["tove"], ["06:50", "06:52", "06:52"], [2, 0], { carer: 1, after: ["egg-rice"] }),
  task("stew", "monday-evening", "FINISH", "chickpea-stew", [tuesday], ["tove"], ["19:00", "19:05", "19:15"], [5, 10], { equipment: hob(15) }),
  task("cool-stew", "monday-evening", "COOL", "chickpea-stew", [tuesday], ["tove"], ["19:15", "19:15", "19:35"], [0, 20], { after: ["stew"] }),
  task("rice-bowl", "tuesday-morning", "FINISH", "rice-bowl", [tuesday], ["mira"], ["06:30", "06:33", "06:33"], [3, 0]),
  task("cucumber-tuesday", "tuesday-morning", "FINISH", "cucumber-slices", [tuesday], ["mira"], ["06:33", "06:36", "06:36"], [3, 0]),
  task("grapes-tuesday", "tuesday-morning", "FINISH", "grapes", [tuesday], ["mira"], ["06:36", "06:39", "06:39"], [3, 0]),
  task("apples-tuesday", "tuesday-morning", "FINISH", "apple-slices", [tuesday], ["tove"], ["06:39", "06:42", "06:42"], [3, 0]),
  task("carrots-tuesday", "tuesday-morning", "FINISH", "carrot-sticks", [tuesday], ["tove"], ["06:30", "06:33", "06:33"], [3, 0], { carer: 1 }),
  task("yogurt", "tuesday-morning", "FINISH", "yogurt-pot", [tuesday], ["tove"], ["06:45", "06:48", "06:48"], [3, 0], { carer: 1, handles: ["MILK"] }),
  task("pack-mira-tuesday", "tuesday-morning", "PACK", null, [tuesday], ["mira"], ["06:42", "06:44", "06:44"], [2, 0]),
  task("pack-tove-tuesday", "tuesday-morning", "PACK", null, [tuesday], ["tove"], ["06:50", "06:52", "06:52"], [2, 0]),
];

const line = (key: string, neededGrams: number, packs: number, packGrams: number, costMinor: number, rest: Partial<ShoppingLinePlan> = {}): ShoppingLinePlan => ({
  food: key, section: "PRODUCE", neededGrams, fromStockGrams: 0, packs, packGrams, spareGrams: packs * packGrams - neededGrams, costMinor, readLabel: false, ...rest,
});

const shopping: ShoppingLinePlan[] = [
  // 500 g cooked at 0.4 g bought for 1 g.
  line("rice-raw", 200, 1, 1000, 300),
  // 300 g, 100 g of it in stock.
  line("chickpea", 300, 1, 240, 90, { fromStockGrams: 100, spareGrams: 40, readLabel: true }),
  line("flatbread", 60, 1, 300, 150),
  // 50 g edible at 20 % shell.
  line("egg", 62.5, 1, 300, 250),
  // 80 + 80 + 50 g.
  line("cucumber", 210, 1, 500, 200),
  // 80 + 80 + 90 g at 10 % refuse, rounded up.
  line("carrot", 278, 1, 500, 200),
  line("apple", 160, 1, 500, 200),
  line("pear", 80, 1, 500, 200),
  line("grape", 160, 1, 500, 200),
  line("yogurt", 80, 1, 500, 200),
];

export const tinyDraft: WeekDraft = {
  boxes, batches, tasks, shopping,
  readyUses: [{ readyId: "leftover-mash", base: "chickpea-mash", date: monday, grams: 40 }],
  cautions: [
    { kind: "GENERAL", about: "LABELS" }, { kind: "GENERAL", about: "CHOKING" }, { kind: "GENERAL", about: "HOLDING" }, { kind: "GENERAL", about: "NUTRITION" },
    { kind: "READ_LABEL", childId: "mira", food: "chickpea", allergens: ["MILK"] },
    { kind: "CUT_FOR_AGE", childId: "mira", date: monday, dish: "carrot-sticks", cut: carrotCut },
    { kind: "CUT_FOR_AGE", childId: "mira", date: tuesday, dish: "grapes", cut: grapeCut },
    { kind: "KEEP_COLD", childId: "mira", date: monday, coldSources: 2 },
    { kind: "KEEP_COLD", childId: "tove", date: monday, coldSources: 2 },
    { kind: "KEEP_COLD", childId: "mira", date: tuesday, coldSources: 2 },
    { kind: "KEEP_COLD", childId: "tove", date: tuesday, coldSources: 2 },
    { kind: "PREHEAT_FLASK", childId: "tove", date: monday, dish: "egg-rice" },
  ],
  wishes: { handsOnMinutes: 0, costMinor: 0, spareBaseGrams: 0, nutrientShortfallPercent: 0, refusalPoints: 0, monotonyPoints: 0, objectivePoints: 0 },
};

/** A week of one's own to spoil. */
export function tinyWeek(): { brief: Mutable<WeekBrief>; draft: Mutable<WeekDraft> } {
  return structuredClone({ brief: tinyBrief, draft: tinyDraft }) as { brief: Mutable<WeekBrief>; draft: Mutable<WeekDraft> };
}
