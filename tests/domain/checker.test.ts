import fc from "fast-check";
import type { Rule } from "../../shared/rule-set.js";
import type { AllergyBrief, WeekBrief } from "../../src/domain/brief.js";
import { checkWeek } from "../../src/domain/checker/check-week.js";
import { faultKinds } from "../../src/domain/checker/fault.js";
import type { Fault, FaultKind } from "../../src/domain/checker/fault.js";
import type { BatchPlan, BoxPlan, ItemPlan, ShoppingLinePlan, TaskPlan, WeekDraft } from "../../src/domain/week.js";
import { monday, tinyBrief, tinyDraft, tinyWeek, tuesday } from "../support/tiny-week.js";
import type { Mutable } from "../support/tiny-week.js";
import { readHoldingModel } from "./reference-rows.js";

type Brief = Mutable<WeekBrief>;
type Draft = Mutable<WeekDraft>;

function found<T>(rows: T[], fits: (row: T) => boolean): T {
  const row = rows.find(fits);
  if (!row) throw new Error("the tiny week has no such row");
  return row;
}
const child = (brief: Brief, id: string) => found(brief.children, (row) => row.id === id);
const day = (brief: Brief, id: string, date: string) => found(child(brief, id).days, (row) => row.date === date);
const box = (draft: Draft, id: string, date: string): Mutable<BoxPlan> =>
  found(draft.boxes, (row) => row.childId === id && row.date === date);
const item = (draft: Draft, id: string, date: string, slot: string, breakKey = "lunch"): Mutable<ItemPlan> =>
  found(box(draft, id, date).items, (row) => row.slot === slot && row.breakKey === breakKey);
const task = (draft: Draft, key: string): Mutable<TaskPlan> => found(draft.tasks, (row) => row.key === key);
const batch = (draft: Draft, base: string): Mutable<BatchPlan> => found(draft.batches, (row) => row.base === base);
const line = (draft: Draft, food: string): Mutable<ShoppingLinePlan> =>
  found(draft.shopping, (row) => row.food === food);
const food = (brief: Brief, key: string) => found(brief.catalogue.foods, (row) => row.key === key);
const dish = (brief: Brief, key: string) => found(brief.catalogue.dishes, (row) => row.key === key);
const base = (brief: Brief, key: string) => found(brief.catalogue.bases, (row) => row.key === key);
const session = (brief: Brief, key: string) => found(brief.sessions, (row) => row.key === key);
const without = <T>(rows: T[], fits: (row: T) => boolean): void => {
  rows.splice(rows.findIndex(fits), 1);
};
const minuteOf = (time: string): number => Number(time.slice(0, 2)) * 60 + Number(time.slice(3));
/** What each session of the tiny week may truly say of itself: nothing in it waits. */
const timingsOf = ({ brief, draft }: { brief: Brief; draft: Draft }): Draft["sessions"] =>
  brief.sessions.flatMap(({ key, startsAt }) => {
    const here = draft.tasks.filter((row) => row.session === key);
    if (here.length === 0) return [];
    const lastsMinutes = Math.max(...here.map((row) => minuteOf(row.endsAt))) - minuteOf(startsAt);
    const latestStartsAt = here.map((row) => row.latestStartsAt).sort()[0]!;
    return [{ session: key, lastsMinutes, leastMinutes: 1, latestStartsAt, noLaterThan: latestStartsAt }];
  });
const common = {
  says: "A rule of an invented school.",
  level: "FORBID",
  source: "invented for this test",
  shortWeek: "PRORATE",
} as const;
/** The tiny week under the shipped model, with a flask that holds as long as its lunch is away unless `flask` says otherwise. */
const underModel = (brief: Brief, flaskWattsPerKelvin = 0.005): void => {
  const model = structuredClone(readHoldingModel());
  brief.holding.model = { ...model, parameters: { ...model.parameters, flaskWattsPerKelvin } };
};
const addRule = (brief: Brief, rule: Rule): void => {
  brief.ruleSets[0]?.rules.push(rule);
};

/** What a chilled item's forecast rests on here; a plant prints its own figures beside it. */
const chilledForecast = {
  start: "CHILLED",
  coldSources: 2,
  hotDay: false,
  joulesPerKelvin: 200,
  minutesBefore: 0,
  limitedBy: "RULE",
  mend: [],
} satisfies Partial<NonNullable<Mutable<ItemPlan>["holding"]["forecast"]>>;

interface Plant {
  readonly name: string;
  readonly plant: (week: { brief: Brief; draft: Draft }) => void;
  readonly expect: FaultKind;
  /** Kinds that this fault cannot come without. */
  readonly along?: readonly FaultKind[];
}

const plants: readonly Plant[] = [
  // Rows that do not exist
  {
    name: "a box for a child nobody knows",
    plant: ({ draft }) => void draft.boxes.push({ ...box(draft, "tove", monday), childId: "nobody" }),
    expect: "CHILD_UNKNOWN",
  },
  {
    name: "a dish the catalogue does not have",
    plant: ({ draft }) => void (item(draft, "tove", monday, "FRUIT").dish = "moon-dust"),
    expect: "DISH_UNKNOWN",
    along: ["NEEDED_GRAMS_WRONG"],
  },
  {
    name: "a dish on a base the catalogue does not have",
    plant: ({ brief }) => void dish(brief, "yogurt-pot").bases.push({ base: "no-base", grams: 10 }),
    expect: "BASE_UNKNOWN",
    along: ["BASE_SHORT"],
  },
  {
    name: "an ingredient without a composition row",
    plant: ({ brief }) =>
      void dish(brief, "yogurt-pot").ingredients.push({ food: "no-food", grams: 10, form: "MIXED_IN" }),
    expect: "FOOD_UNKNOWN",
  },
  {
    name: "a food bought as something nobody sells",
    plant: ({ brief }) => void (food(brief, "grape").boughtAs = { food: "no-food", gramsPerGram: 1 }),
    expect: "FOOD_UNKNOWN",
    along: ["BOUGHT_FOR_NOTHING"],
  },
  {
    name: "a task in a session that does not exist",
    plant: ({ draft }) => void (task(draft, "cool-stew").session = "midnight"),
    expect: "SESSION_UNKNOWN",
  },
  {
    name: "an item at a break the day does not have",
    plant: ({ draft }) => void (item(draft, "tove", monday, "FRUIT").breakKey = "tea"),
    expect: "BREAK_UNKNOWN",
    along: ["PLACE_EMPTY"],
  },
  {
    name: "a day under a rule set the brief does not carry",
    plant: ({ brief }) => void day(brief, "tove", monday).ruleSets.push(9),
    expect: "RULE_SET_UNKNOWN",
  },

  // Allergies and labels
  {
    name: "milk for the child who avoids it",
    plant: ({ brief }) => food(brief, "apple").allergens.push("MILK"),
    expect: "ALLERGEN",
    along: ["ALLERGEN_NOT_LISTED"],
  },
  {
    name: "an allergen hidden inside a base",
    plant: ({ brief }) =>
      void (
        child(brief, "mira").allergies.push({ allergen: "CELERY", foodKind: null, avoid: "INGREDIENTS" }),
        food(brief, "chickpea").allergens.push("CELERY")
      ),
    expect: "ALLERGEN",
    along: ["ALLERGEN_NOT_LISTED"],
  },
  {
    name: "an allergen only in the food that is bought for it",
    plant: ({ brief }) =>
      void (
        child(brief, "tove").allergies.push({ allergen: "SULPHITES", foodKind: null, avoid: "INGREDIENTS" }),
        food(brief, "rice-raw").allergens.push("SULPHITES")
      ),
    expect: "ALLERGEN",
    along: ["ALLERGEN_NOT_LISTED"],
  },
  {
    name: "a member of an avoided family",
    plant: ({ brief }) =>
      void child(brief, "mira").allergies.push({ allergen: "GLUTEN_CEREALS", foodKind: null, avoid: "INGREDIENTS" }),
    expect: "ALLERGEN",
    along: ["ALLERGEN_NOT_LISTED"],
  },
  {
    name: "the single food a child avoids",
    plant: ({ brief }) =>
      void child(brief, "mira").allergies.push({ allergen: null, foodKind: "grape", avoid: "INGREDIENTS" }),
    expect: "ALLERGEN",
    along: ["ALLERGEN_NOT_LISTED"],
  },
  {
    name: "the single food a child avoids, under another name of the plant",
    plant: ({ brief }) =>
      void (
        child(brief, "mira").allergies.push({ allergen: null, foodKind: "peach", avoid: "INGREDIENTS" }),
        (food(brief, "apple").kind = "nectarine")
      ),
    expect: "ALLERGEN",
    along: ["ALLERGEN_NOT_LISTED"],
  },
  {
    name: "the single food a child avoids, inside a food of another kind that always has it",
    plant: ({ brief }) =>
      void (
        child(brief, "mira").allergies.push({ allergen: null, foodKind: "soya-bean", avoid: "INGREDIENTS" }),
        food(brief, "apple").allergens.push("SOYA")
      ),
    expect: "ALLERGEN",
    along: ["ALLERGEN_NOT_LISTED"],
  },
  {
    name: "the single food a child avoids, found on a label that was searched for it",
    plant: ({ brief }) =>
      void (
        child(brief, "mira").allergies.push({ allergen: null, foodKind: "kiwi", avoid: "INGREDIENTS" }),
        brief.labels.push({
          food: "flatbread",
          contains: [],
          mayContain: [],
          kinds: [{ kind: "kiwi", says: "CONTAINS" }],
          readOn: "2026-09-02",
        })
      ),
    expect: "ALLERGEN",
    along: ["ALLERGEN_NOT_LISTED"],
  },
  {
    name: "an allergen only the label declares",
    plant: ({ brief }) =>
      void brief.labels.push({ food: "flatbread", contains: ["MILK"], mayContain: [], readOn: "2026-09-02" }),
    expect: "ALLERGEN",
    along: ["ALLERGEN_NOT_LISTED"],
  },
  {
    name: "a may-contain for a child who avoids traces",
    plant: ({ brief }) =>
      void brief.labels.push({ food: "flatbread", contains: [], mayContain: ["MILK"], readOn: "2026-09-02" }),
    expect: "MAY_CONTAIN",
    along: ["ALLERGEN_NOT_LISTED"],
  },
  {
    name: "an unread label that is not listed",
    plant: ({ draft }) => void (item(draft, "mira", monday, "MAIN").labelsToRead = []),
    expect: "LABEL_NOT_LISTED",
  },
  {
    name: "a nut the household keeps out",
    plant: ({ brief }) => void dish(brief, "yogurt-pot").ingredients.push({ food: "almond", grams: 1, form: "GROUND" }),
    expect: "KEPT_OUT",
    along: ["NOT_BOUGHT"],
  },
  { name: "a food the household is out of", plant: ({ brief }) => void brief.outOf.push("pear"), expect: "OUT_OF" },
  {
    name: "a base cooked from a food the household is out of",
    plant: ({ brief }) => void brief.outOf.push("rice"),
    expect: "OUT_OF",
  },
  {
    name: "a food the household is out of that morning",
    plant: ({ brief }) => {
      for (const session of brief.sessions)
        if (session.kind === "MORNING") session.without = { equipment: [], foodKinds: ["pear"] };
    },
    expect: "OUT_OF",
  },
  {
    name: "a base cooked in a session without one of its foods",
    plant: ({ brief, draft }) => {
      const cooked = draft.batches.find((batch) => batch.base === "cooked-rice");
      for (const session of brief.sessions)
        if (session.key === cooked?.session) session.without = { equipment: [], foodKinds: ["rice"] };
    },
    expect: "OUT_OF",
  },
  { name: "egg for a vegan", plant: ({ brief }) => void child(brief, "tove").diets.push("VEGAN"), expect: "DIET" },

  // Choking
  {
    name: "a whole nut below the age at which it is safe",
    plant: ({ brief }) => void food(brief, "apple").chokingClasses.push("WHOLE_NUT"),
    expect: "CHOKING",
  },
  {
    name: "whole grapes for a four-year-old without the cut",
    plant: ({ draft }) => void (item(draft, "mira", tuesday, "FRUIT").cuts = []),
    expect: "CUT_NOT_PRINTED",
  },
  {
    name: "a cut that is not the rule's",
    plant: ({ draft }) =>
      void (item(draft, "mira", monday, "VEGETABLE").cuts = [{ food: "carrot", cut: "Halve.", source: "invented" }]),
    expect: "CUT_NOT_PRINTED",
  },
  {
    name: "a birthday that is one day after the box",
    plant: ({ brief }) => void (child(brief, "tove").dateOfBirth = "2021-09-08"),
    expect: "CUT_NOT_PRINTED",
    along: ["CAUTION_MISSING"],
  },

  // Holding
  {
    name: "holding counted to the start of the break",
    plant: ({ draft }) => void (item(draft, "tove", tuesday, "MAIN").holding.minutes = 240),
    expect: "HOLDING_MINUTES_WRONG",
  },
  {
    name: "a limit shorter than the way to lunch",
    plant: ({ brief }) => void (brief.holding = { ...brief.holding, flaskMinutes: 269 }),
    expect: "HOLDING_TOO_LONG",
  },
  {
    name: "a limit looser than the table",
    plant: ({ draft }) => void (item(draft, "tove", tuesday, "MAIN").holding.limitMinutes = 480),
    expect: "HOLDING_TOO_LONG",
  },
  {
    name: "an hour without cold stretched to two on a hot day",
    plant: ({ brief, draft }) =>
      void (
        (day(brief, "tove", monday).hotDay = true),
        (item(draft, "tove", monday, "FRUIT", "snack").holding = { case: "AMBIENT", minutes: 135, limitMinutes: 135 }),
        (brief.holding.ambientMinutes = 135)
      ),
    expect: "HOLDING_TOO_LONG",
  },
  {
    name: "a hot day that the cold sources do not last",
    plant: ({ brief }) => void (underModel(brief), (day(brief, "mira", monday).hotDay = true)),
    expect: "HOLDING_MODEL_EXCEEDED",
    along: ["HOLDING_LIMIT_LOOSE"],
  },
  {
    name: "a flask that lets its food cool for hours before lunch",
    plant: ({ brief }) => void underModel(brief, readHoldingModel().parameters.flaskWattsPerKelvin),
    expect: "HOLDING_MODEL_EXCEEDED",
    along: ["HOLDING_LIMIT_LOOSE"],
  },
  {
    name: "one cold source printed as two, with the limit and the warmth that two would give",
    plant: ({ brief, draft }) =>
      void (
        underModel(brief),
        (child(brief, "mira").box.coldSources = 1),
        (item(draft, "mira", monday, "FRUIT").holding.forecast = {
          ...chilledForecast,
          mostCelsius: 21.5,
          endCelsius: 21.5,
          growthLog10: 0.55,
          organism: "SALMONELLA",
        })
      ),
    expect: "HOLDING_FORECAST_MILD",
    along: ["COLD_SOURCES_MISSING", "HOLDING_MODEL_EXCEEDED", "HOLDING_LIMIT_LOOSE"],
  },
  {
    name: "a limit later than the model's",
    plant: ({ brief, draft }) =>
      void (
        underModel(brief),
        (brief.holding.chilledMinutes = 420),
        (item(draft, "mira", monday, "FRUIT").holding.limitMinutes = 420)
      ),
    expect: "HOLDING_LIMIT_LOOSE",
  },
  {
    name: "growth printed as none",
    plant: ({ brief, draft }) =>
      void (
        underModel(brief),
        (item(draft, "mira", monday, "FRUIT").holding.forecast = {
          ...chilledForecast,
          mostCelsius: 30,
          endCelsius: 25,
          growthLog10: 0,
          organism: null,
        })
      ),
    expect: "HOLDING_FORECAST_MILD",
  },
  {
    name: "a warm box printed as a cold one",
    plant: ({ brief, draft }) =>
      void (
        underModel(brief),
        (item(draft, "mira", monday, "FRUIT").holding.forecast = {
          ...chilledForecast,
          mostCelsius: 6,
          endCelsius: 6,
          growthLog10: 1,
          organism: "SALMONELLA",
        })
      ),
    expect: "HOLDING_FORECAST_MILD",
  },
  {
    name: "yogurt carried without cold",
    plant: ({ draft }) =>
      void (item(draft, "tove", tuesday, "FRUIT").holding = { case: "AMBIENT", minutes: 270, limitMinutes: 120 }),
    expect: "HOLDING_TOO_LONG",
  },
  {
    name: "yogurt declared shelf-stable",
    plant: ({ draft }) =>
      void (item(draft, "tove", tuesday, "FRUIT").holding = {
        case: "NOT_CONTROLLED",
        minutes: 270,
        limitMinutes: 480,
      }),
    expect: "HOLDING_CASE_WRONG",
  },
  {
    name: "a dish eaten cold that is only good warm",
    plant: ({ brief }) => void (dish(brief, "rice-bowl").served = "WARM"),
    expect: "HOLDING_CASE_WRONG",
  },
  {
    name: "one cold source where two are needed",
    plant: ({ draft }) => void (box(draft, "mira", monday).coldSources = 1),
    expect: "COLD_SOURCES_MISSING",
  },
  {
    name: "more cold sources than the child owns",
    plant: ({ brief }) => void (child(brief, "tove").box.coldSources = 1),
    expect: "COLD_SOURCES_MISSING",
  },
  {
    name: "a box that is not insulated",
    plant: ({ brief }) => void (child(brief, "tove").box.insulated = false),
    expect: "NOT_INSULATED",
  },
  {
    name: "a warm dish without a flask",
    plant: ({ draft }) => void (box(draft, "tove", monday).flask = false),
    expect: "FLASK_MISSING",
  },
  {
    name: "reheating at a school that has no microwave",
    expect: "NO_REHEATING",
    plant: ({ brief, draft }) => {
      day(brief, "tove", tuesday).facility = "REFRIGERATOR";
      Object.assign(item(draft, "tove", tuesday, "MAIN"), {
        served: "WARM",
        holding: { case: "REHEATED_AT_SCHOOL", minutes: 270, limitMinutes: 300 },
      });
      draft.cautions.push({ kind: "REHEAT_THROUGH", childId: "tove", date: tuesday, dish: "chickpea-stew" });
    },
  },
  {
    name: "a dish that wilts before lunch",
    plant: ({ brief }) => void (dish(brief, "rice-bowl").goodForHours = 4),
    expect: "GOOD_FOR_TOO_SHORT",
  },

  // Rules
  {
    name: "an excluded allergen that is only a may-contain on record",
    plant: ({ brief }) =>
      void brief.labels.push({ food: "yogurt", contains: [], mayContain: ["PEANUT"], readOn: "2026-09-01" }),
    expect: "RULE_BROKEN",
  },
  {
    name: "something that is not fruit at the fruit break",
    plant: ({ brief }) => void (food(brief, "pear").group = "CONFECTIONERY"),
    expect: "RULE_BROKEN",
  },
  {
    name: "a box short of what a rule asks of every box",
    plant: ({ brief }) =>
      addRule(brief, {
        ...common,
        id: "two",
        kind: "FREQUENCY",
        matches: { anyOf: [{ slots: ["VEGETABLE"] }] },
        counts: "ITEMS",
        per: "BOX",
        weeks: 1,
        atLeast: 2,
      }),
    expect: "RULE_BROKEN",
  },
  {
    name: "more salt in a box than a rule allows",
    plant: ({ brief }) => void (food(brief, "egg").nutrients["NA"] = 900),
    expect: "RULE_BROKEN",
  },
  {
    name: "meat with milk in one box",
    plant: ({ brief }) => void (food(brief, "carrot").origins = ["MEAT"]),
    expect: "RULE_BROKEN",
    along: ["DIET"],
  },
  {
    name: "a maximum over a food whose salt nobody knows",
    plant: ({ brief }) => void delete food(brief, "pear").nutrients["NA"],
    expect: "NOT_KNOWN",
  },
  {
    name: "a vitamin in percent of energy",
    plant: ({ brief }) =>
      addRule(brief, {
        ...common,
        id: "vitamin",
        kind: "NUTRIENT",
        nutrient: "VITC",
        per: "BOX",
        as: "PERCENT_OF_ENERGY",
        atLeast: 0.5,
      }),
    expect: "RULE_NOT_JUDGED",
  },
  {
    name: "an exemption from a rule about an allergen",
    plant: ({ brief }) => void (day(brief, "tove", monday).exempt = [{ ruleSet: 0, rule: "no-peanut" }]),
    expect: "EXEMPT_FROM_ALLERGEN_RULE",
  },

  // Completeness
  {
    name: "a day without its box",
    plant: ({ draft }) => without(draft.boxes, (row) => row.childId === "tove" && row.date === tuesday),
    expect: "BOX_MISSING",
    along: ["RULE_BROKEN", "SUPPLY_UNUSED", "BOUGHT_FOR_NOTHING", "NEEDED_GRAMS_WRONG"],
  },
  {
    name: "two boxes for one child",
    plant: ({ draft }) => void draft.boxes.push({ ...box(draft, "tove", monday), items: [] }),
    expect: "BOX_TWICE",
  },
  {
    name: "a box on a day without school",
    plant: ({ draft }) => void draft.boxes.push({ ...box(draft, "tove", monday), date: "2026-09-09", items: [] }),
    expect: "BOX_WITHOUT_DAY",
  },
  {
    name: "a leave time that is not the day's",
    plant: ({ draft }) => void (box(draft, "tove", monday).leaveAt = "07:30"),
    expect: "LEAVE_TIME_WRONG",
  },
  {
    name: "an empty place",
    plant: ({ draft }) => without(box(draft, "mira", tuesday).items, (row) => row.slot === "FRUIT"),
    expect: "PLACE_EMPTY",
    along: ["NEEDED_GRAMS_WRONG"],
  },
  {
    name: "a place filled twice",
    plant: ({ draft }) =>
      void box(draft, "tove", monday).items.push({
        ...item(draft, "tove", monday, "VEGETABLE"),
        grams: 20,
        energyKcal: 20,
        carbohydrateGrams: 2,
      }),
    expect: "PLACE_FILLED_TWICE",
    along: ["HANDS_ON_UNDERSTATED", "NEEDED_GRAMS_WRONG", "TWICE_IN_ONE_BOX"],
  },
  {
    name: "an item in a place the break does not have",
    plant: ({ draft }) => void (item(draft, "tove", monday, "VEGETABLE").position = 5),
    expect: "PLACE_UNKNOWN",
    along: ["PLACE_EMPTY"],
  },
  {
    name: "a dish in a slot it does not fill",
    plant: ({ brief }) => void (dish(brief, "yogurt-pot").slots = ["EXTRA"]),
    expect: "SLOT_NOT_FILLED_BY_DISH",
  },
  {
    name: "an item that weighs nothing",
    plant: ({ draft }) =>
      void Object.assign(item(draft, "tove", monday, "FRUIT"), { grams: 0, energyKcal: 0, carbohydrateGrams: 0 }),
    expect: "GRAMS_WRONG",
    along: ["NEEDED_GRAMS_WRONG"],
  },
  {
    name: "pieces that do not weigh what is printed",
    plant: ({ draft }) => void (item(draft, "mira", monday, "MAIN").pieces = 3),
    expect: "PIECES_WRONG",
  },
  {
    name: "half a piece where only whole ones are cut",
    plant: ({ draft }) =>
      void Object.assign(item(draft, "mira", monday, "MAIN"), {
        pieces: 2.5,
        grams: 175,
        energyKcal: 175,
        carbohydrateGrams: 17.5,
      }),
    expect: "PIECES_WRONG",
    along: ["BASE_SHORT", "NEEDED_GRAMS_WRONG"],
  },
  {
    name: "energy that is not the ingredients'",
    plant: ({ draft }) => void (item(draft, "tove", monday, "FRUIT").energyKcal = 120),
    expect: "ENERGY_WRONG",
  },
  {
    name: "carbohydrate that is not the ingredients'",
    plant: ({ draft }) => void (item(draft, "tove", monday, "FRUIT").carbohydrateGrams = 4),
    expect: "CARBOHYDRATE_WRONG",
  },
  {
    name: "carbohydrate printed although a figure is missing",
    plant: ({ brief }) => void delete food(brief, "pear").nutrients["CHOCDF"],
    expect: "CARBOHYDRATE_WRONG",
  },
  {
    name: "a fork forgotten",
    plant: ({ draft }) => void (box(draft, "tove", monday).cutlery = []),
    expect: "CUTLERY_MISSING",
  },
  {
    name: "a pinned dish moved",
    plant: ({ brief }) =>
      void brief.pins.push({
        childId: "tove",
        date: monday,
        breakKey: "lunch",
        slot: "FRUIT",
        position: 2,
        dish: "pear-slices",
        because: "PINNED",
      }),
    expect: "PIN_MOVED",
  },

  // House rules
  {
    name: "one sibling pair with two equal places of three",
    expect: "SIBLINGS_ALIKE",
    along: ["FINISH_TASK_MISSING", "NEEDED_GRAMS_WRONG", "DISH_REPEATED", "BOUGHT_FOR_NOTHING", "TWICE_IN_ONE_BOX"],
    plant: ({ draft }) => {
      item(draft, "tove", monday, "FRUIT").dish = "apple-slices";
      Object.assign(item(draft, "tove", monday, "VEGETABLE"), { dish: "carrot-sticks" });
      item(draft, "tove", monday, "FRUIT", "snack").dish = "apple-slices";
    },
  },
  {
    name: "the same main for both siblings",
    expect: "SIBLINGS_ALIKE",
    along: ["STARCH_REPEATED", "FINISH_TASK_MISSING", "BASE_SHORT", "SUPPLY_UNUSED", "NEEDED_GRAMS_WRONG"],
    plant: ({ draft }) =>
      void Object.assign(item(draft, "tove", tuesday, "MAIN"), {
        dish: "rice-bowl",
        grams: 200,
        energyKcal: 200,
        carbohydrateGrams: 20,
      }),
  },
  {
    name: "a main twice in a child's week",
    expect: "DISH_REPEATED",
    along: [
      "CUTLERY_MISSING",
      "BOUGHT_FOR_NOTHING",
      "STARCH_REPEATED",
      "FINISH_TASK_MISSING",
      "BASE_SHORT",
      "SUPPLY_UNUSED",
      "NEEDED_GRAMS_WRONG",
    ],
    plant: ({ draft }) =>
      void Object.assign(item(draft, "mira", monday, "MAIN"), {
        dish: "rice-bowl",
        grams: 200,
        pieces: null,
        energyKcal: 200,
        carbohydrateGrams: 20,
        labelsToRead: [],
      }),
  },
  {
    name: "the same fruit at the break and at lunch",
    plant: ({ draft }) =>
      void (item(draft, "tove", monday, "FRUIT", "snack").dish = item(draft, "tove", monday, "FRUIT").dish),
    expect: "TWICE_IN_ONE_BOX",
    along: ["HANDS_ON_UNDERSTATED", "NEEDED_GRAMS_WRONG", "BOUGHT_FOR_NOTHING"],
  },
  {
    name: "rice on two days running",
    plant: ({ brief }) => void (dish(brief, "chickpea-stew").starch = "RICE"),
    expect: "STARCH_REPEATED",
  },

  // Compartments
  {
    name: "a compartment the box does not have",
    plant: ({ draft }) => void (item(draft, "tove", monday, "FRUIT").compartment = 7),
    expect: "COMPARTMENT_UNKNOWN",
  },
  {
    name: "more food than a compartment holds",
    plant: ({ brief }) => void (dish(brief, "rice-bowl").volumeMl = 450),
    expect: "COMPARTMENT_TOO_FULL",
  },
  {
    name: "stew where it can leak",
    plant: ({ brief }) => void (dish(brief, "carrot-sticks").spill = "WET"),
    expect: "WET_NOT_LEAKPROOF",
    // Something dry lies beside it.
    along: ["WET_WITH_DRY"],
  },
  {
    name: "dry sticks beside a wet pot",
    plant: ({ draft }) => void (item(draft, "tove", tuesday, "VEGETABLE").compartment = 1),
    expect: "WET_WITH_DRY",
  },
  {
    name: "warm food outside the flask",
    plant: ({ draft }) =>
      void (
        (item(draft, "tove", monday, "MAIN").compartment = 2),
        (item(draft, "tove", monday, "FRUIT", "snack").compartment = 0)
      ),
    expect: "FLASK_MISUSED",
  },

  // Batches
  {
    name: "a batch that weighs more than its recipe",
    plant: ({ draft }) => void Object.assign(batch(draft, "cooked-rice"), { grams: 600, spareGrams: 300 }),
    expect: "BATCH_GRAMS_WRONG",
  },
  {
    name: "half a batch",
    plant: ({ draft }) =>
      void Object.assign(batch(draft, "cooked-rice"), { batches: 0.8, grams: 400, spareGrams: 100 }),
    expect: "BATCH_GRAMS_WRONG",
    along: ["NEEDED_GRAMS_WRONG"],
  },
  {
    name: "feeds that do not add up",
    plant: ({ draft }) => void (batch(draft, "cooked-rice").spareGrams = 100),
    expect: "FEEDS_DO_NOT_ADD_UP",
  },
  {
    name: "rice eaten after its last day",
    plant: ({ brief }) => void (base(brief, "cooked-rice").keepsChilledDays = 2),
    expect: "FED_OUT_OF_DATE",
  },
  {
    name: "an evening product one day too old",
    plant: ({ brief }) => void (base(brief, "chickpea-mash").keepsChilledDays = 1),
    expect: "FED_OUT_OF_DATE",
  },
  {
    name: "rice cooked in the evening after it is eaten",
    expect: "FED_BEFORE_MADE",
    along: ["TASK_OUT_OF_ORDER"],
    plant: ({ draft }) => {
      batch(draft, "cooked-rice").session = "monday-evening";
      Object.assign(task(draft, "rice"), {
        session: "monday-evening",
        startsAt: "19:20",
        latestStartsAt: "19:20",
        handsFreeAt: "19:26",
        endsAt: "19:46",
      });
    },
  },
  {
    name: "a base used before it has stood its time",
    // From Sunday 14:26, when the rice is done, a day is Monday 14:26: after Monday's finishing, before Tuesday's.
    plant: ({ brief }) => void (base(brief, "cooked-rice").restMinutes = 1_440),
    expect: "USED_BEFORE_STOOD",
  },
  {
    name: "a base in a window its row does not allow",
    plant: ({ brief }) => void (base(brief, "cooked-rice").windows = ["MORNING"]),
    expect: "WINDOW_NOT_ALLOWED",
  },
  {
    name: "more batches than one window takes",
    plant: ({ draft }) =>
      void (
        Object.assign(batch(draft, "cooked-rice"), { batches: 3, grams: 1500, spareGrams: 1200 }),
        Object.assign(task(draft, "rice"), { handsOnMinutes: 10, handsFreeAt: "14:10", endsAt: "14:30" }),
        Object.assign(line(draft, "rice-raw"), { neededGrams: 600, spareGrams: 400 })
      ),
    expect: "TOO_MANY_BATCHES",
  },
  {
    name: "less base than the dishes take",
    plant: ({ draft }) => void (draft.readyUses = []),
    expect: "BASE_SHORT",
    along: ["CAUTION_MISSING"],
  },
  {
    name: "base fed to a date that eats none",
    plant: ({ draft }) =>
      void (
        batch(draft, "cooked-rice").feeds.push({ date: monday, childIds: ["mira"], grams: 50 }),
        (batch(draft, "cooked-rice").spareGrams = 150)
      ),
    expect: "SUPPLY_UNUSED",
  },
  {
    name: "a leftover nobody has",
    plant: ({ draft }) => void (found(draft.readyUses, () => true).readyId = "dream"),
    expect: "READY_UNKNOWN",
    along: ["CAUTION_MISSING"],
  },
  {
    name: "a leftover after its last day",
    plant: ({ brief }) =>
      void Object.assign(
        found(brief.ready, () => true),
        { firstDate: "2026-09-05", lastDate: "2026-09-06" },
      ),
    expect: "READY_OUT_OF_DATE",
    along: ["CAUTION_MISSING"],
  },
  {
    name: "more leftover than there is",
    plant: ({ brief }) => void (found(brief.ready, () => true).grams = 30),
    expect: "READY_OVERDRAWN",
  },
  {
    name: "a cooked batch dropped from the plan",
    plant: ({ brief }) => void brief.made.push({ base: "cooked-rice", session: "weekend", batches: 1 }),
    expect: "MADE_BATCH_MISSING",
  },
  {
    name: "a batch called cooked that is not",
    plant: ({ draft }) => void (batch(draft, "cooked-rice").made = true),
    expect: "BATCH_NOT_MADE",
    along: ["BOUGHT_FOR_NOTHING"],
  },
  {
    name: "a refrigerator too small for the night",
    plant: ({ brief }) => void (brief.household.refrigeratorMl = 1299),
    expect: "REFRIGERATOR_TOO_FULL",
  },

  // Tasks
  {
    name: "a batch nobody cooks",
    plant: ({ draft }) => without(draft.tasks, (row) => row.key === "rice"),
    expect: "BASE_TASK_MISSING",
  },
  {
    name: "a dish nobody finishes",
    plant: ({ draft }) => without(draft.tasks, (row) => row.key === "yogurt"),
    expect: "FINISH_TASK_MISSING",
  },
  {
    name: "a box nobody packs",
    plant: ({ draft }) => without(draft.tasks, (row) => row.key === "pack-mira-tuesday"),
    expect: "PACK_TASK_MISSING",
  },
  {
    name: "an evening finish of a step that must wait for the morning",
    plant: ({ brief }) => void (found(dish(brief, "chickpea-stew").steps, () => true).eveningBefore = false),
    expect: "FINISHED_TOO_EARLY",
  },
  {
    name: "two tasks under one key",
    plant: ({ draft }) => void (task(draft, "cool-stew").key = "rice-bowl"),
    expect: "TASK_KEY_TWICE",
  },
  {
    name: "a task after one that does not exist",
    plant: ({ draft }) => void (task(draft, "cool-stew").after = ["ghost"]),
    expect: "TASK_AFTER_UNKNOWN",
  },
  {
    name: "a task before the one it follows",
    plant: ({ draft }) => void (task(draft, "grapes-tuesday").after = ["yogurt"]),
    expect: "TASK_OUT_OF_ORDER",
  },
  {
    name: "a box packed before its dish is finished",
    plant: ({ draft }) =>
      void Object.assign(task(draft, "yogurt"), {
        startsAt: "06:53",
        latestStartsAt: "06:53",
        handsFreeAt: "06:56",
        endsAt: "06:56",
      }),
    expect: "TASK_OUT_OF_ORDER",
  },
  {
    name: "a lid closed on warm food",
    expect: "NOT_COOLED",
    along: ["HOT_WHEN_PACKED"],
    plant: ({ draft }) => {
      without(draft.tasks, (row) => row.key === "cool-stew");
      Object.assign(task(draft, "stew"), {
        session: "tuesday-morning",
        startsAt: "06:33",
        latestStartsAt: "06:33",
        handsFreeAt: "06:38",
        endsAt: "06:48",
        carer: 1,
      });
    },
  },
  {
    name: "a task after its session has ended",
    plant: ({ brief }) => void (session(brief, "weekend").elapsedMinutes = 25),
    expect: "TASK_OUTSIDE_SESSION",
  },
  {
    name: "a box packed after the child has left",
    plant: ({ brief, draft }) =>
      void (
        (day(brief, "mira", tuesday).leaveAt = "06:43"),
        (box(draft, "mira", tuesday).leaveAt = "06:43"),
        (brief.holding = { ...brief.holding, chilledMinutes: 400 }),
        box(draft, "mira", tuesday).items.forEach(
          (row) => void (row.holding = { case: "CHILLED", minutes: 347, limitMinutes: 400 }),
        )
      ),
    expect: "TASK_TOO_LATE",
  },
  {
    name: "clock times shorter than the work",
    plant: ({ draft }) => void (task(draft, "egg-rice").handsFreeAt = "06:32"),
    expect: "TASK_TIMES_WRONG",
  },
  {
    name: "a task said to wait until its session is over",
    plant: ({ draft }) => void (task(draft, "rice").latestStartsAt = "23:00"),
    expect: "WAITS_TOO_LONG",
  },
  {
    name: "a task said to begin late before it begins",
    plant: ({ draft }) => void (task(draft, "wrap").latestStartsAt = "06:34"),
    expect: "WAITS_TOO_LONG",
  },
  {
    name: "a session that takes longer than it says",
    plant: (week) => {
      const timings = timingsOf(week);
      timings[0]!.lastsMinutes -= 1;
      week.draft.sessions = timings;
    },
    expect: "SESSION_TIMES_WRONG",
  },
  {
    name: "a carer the session does not have",
    plant: ({ draft }) => void (task(draft, "rice").carer = 1),
    expect: "CARER_UNKNOWN",
  },
  {
    name: "one carer at two things at once",
    plant: ({ draft }) => void (task(draft, "grapes-monday").carer = 0),
    expect: "CARER_DOUBLE_BOOKED",
  },
  {
    name: "a base that takes longer than its task says",
    plant: ({ draft }) => void (task(draft, "rice").handsOnMinutes = 3),
    expect: "HANDS_ON_UNDERSTATED",
  },
  {
    name: "a dish that takes longer than its task says",
    plant: ({ draft }) => void (task(draft, "egg-rice").handsOnMinutes = 2),
    expect: "HANDS_ON_UNDERSTATED",
  },
  {
    name: "a morning with more work than minutes",
    plant: ({ brief }) => void (session(brief, "monday-morning").handsOnMinutes = 20),
    expect: "SESSION_OVER_MINUTES",
  },
  {
    name: "an appliance that cannot be used that evening",
    plant: ({ brief, draft }) => {
      const { session: key, equipment } = draft.tasks.find((row) => row.equipment.length > 0)!;
      const without = { equipment: equipment.map(({ kind }) => kind), foodKinds: [] };
      session(brief, key).without = without;
    },
    expect: "EQUIPMENT_NOT_OWNED",
  },
  {
    name: "an appliance the kitchen does not have",
    plant: ({ draft }) => void task(draft, "wrap").equipment.push({ kind: "OVEN", units: 1, minutes: 5 }),
    expect: "EQUIPMENT_NOT_OWNED",
    along: ["HOT_WHEN_PACKED"],
  },
  {
    name: "a bowl fried in the morning that is meant to travel at 5 °C",
    plant: ({ draft }) => void task(draft, "rice-bowl").equipment.push({ kind: "HOB_BURNER", units: 1, minutes: 3 }),
    expect: "HOT_WHEN_PACKED",
  },
  {
    name: "two pans on one burner",
    plant: ({ draft }) => void task(draft, "wrap").equipment.push({ kind: "HOB_BURNER", units: 1, minutes: 5 }),
    expect: "EQUIPMENT_OVERBOOKED",
    along: ["HOT_WHEN_PACKED"],
  },
  {
    name: "rice cooked without a burner",
    plant: ({ draft }) => void (task(draft, "rice").equipment = []),
    expect: "EQUIPMENT_NOT_LISTED",
  },
  {
    name: "a task that hides the allergen it handles",
    plant: ({ draft }) => void (task(draft, "yogurt").handles = []),
    expect: "ALLERGEN_NOT_LISTED",
  },

  {
    name: "a task that hides what the label of its egg may contain",
    plant: ({ brief }) =>
      void brief.labels.push({ food: "egg", contains: [], mayContain: ["MILK"], readOn: "2026-09-01" }),
    expect: "ALLERGEN_NOT_LISTED",
  },
  {
    name: "a task that hides the one food a sibling may not touch",
    plant: ({ brief }) =>
      void child(brief, "mira").allergies.push({ allergen: null, foodKind: "pear", avoid: "TRACES" }),
    expect: "ALLERGEN_NOT_LISTED",
  },

  // Shopping
  {
    name: "a food nobody bought",
    plant: ({ draft }) => without(draft.shopping, (row) => row.food === "egg"),
    expect: "NOT_BOUGHT",
  },
  {
    name: "a food on two lines",
    plant: ({ draft }) => void draft.shopping.push({ ...line(draft, "egg") }),
    expect: "BOUGHT_TWICE",
  },
  {
    name: "a food bought for nothing",
    plant: ({ draft }) => void draft.shopping.push({ ...line(draft, "egg"), food: "chicken" }),
    expect: "BOUGHT_FOR_NOTHING",
  },
  {
    name: "refuse forgotten",
    plant: ({ draft }) => void Object.assign(line(draft, "egg"), { neededGrams: 50, spareGrams: 250 }),
    expect: "NEEDED_GRAMS_WRONG",
  },
  {
    name: "too few packs",
    plant: ({ draft }) => void Object.assign(line(draft, "chickpea"), { fromStockGrams: 50, spareGrams: -10 }),
    expect: "TOO_LITTLE_BOUGHT",
  },
  {
    name: "a pack too many",
    plant: ({ draft }) => void Object.assign(line(draft, "pear"), { packs: 2, costMinor: 400, spareGrams: 920 }),
    expect: "TOO_MUCH_BOUGHT",
  },
  {
    name: "stock left aside and bought anew",
    plant: ({ brief }) => void brief.stock.push({ food: "pear", grams: 100 }),
    expect: "TOO_MUCH_BOUGHT",
  },
  {
    name: "a pack size the food is not sold in",
    plant: ({ draft }) => void Object.assign(line(draft, "pear"), { packGrams: 400, spareGrams: 320 }),
    expect: "PACK_WRONG",
  },
  {
    name: "a price that is not the packs'",
    plant: ({ draft }) => void (line(draft, "pear").costMinor = 199),
    expect: "COST_WRONG",
  },
  {
    name: "a remainder that is not what is left",
    plant: ({ draft }) => void (line(draft, "pear").spareGrams = 100),
    expect: "SPARE_WRONG",
  },
  {
    name: "more from stock than there is",
    plant: ({ draft }) =>
      void Object.assign(line(draft, "chickpea"), { fromStockGrams: 300, packs: 0, spareGrams: 0, costMinor: 0 }),
    expect: "STOCK_OVERDRAWN",
  },
  {
    name: "a pack whose label must be read and is not marked",
    plant: ({ draft }) => void (line(draft, "chickpea").readLabel = false),
    expect: "LABEL_NOT_FLAGGED",
  },

  // Cautions
  ...(["GENERAL", "READ_LABEL", "CUT_FOR_AGE", "KEEP_COLD", "PREHEAT_FLASK", "READY_UNUSED"] as const).map(
    (kind): Plant => ({
      name: `a week without its ${kind} caution`,
      plant: ({ draft }) => without(draft.cautions, (row) => row.kind === kind),
      expect: "CAUTION_MISSING",
    }),
  ),
];

const kindsOf = (faults: readonly Fault[]): FaultKind[] => [...new Set(faults.map((fault) => fault.kind))].sort();

describe("the checker", () => {
  it("finds nothing wrong with a week that is right", () => {
    expect(checkWeek(tinyBrief, tinyDraft)).toEqual([]);
  });

  it.each(plants)("catches $name", ({ plant, expect: expected, along = [] }) => {
    const week = tinyWeek();
    plant(week);
    expect(kindsOf(checkWeek(week.brief, week.draft))).toEqual([expected, ...along].sort());
  });

  it("accepts sessions that say what their tasks take", () => {
    const week = tinyWeek();
    week.draft.sessions = timingsOf(week);
    expect(week.draft.sessions).toHaveLength(5);
    expect(checkWeek(week.brief, week.draft)).toEqual([]);
  });

  it("has been seen to raise every kind of fault it knows", () => {
    expect([...new Set(plants.map((row) => row.expect))].sort()).toEqual([...faultKinds].sort());
  });

  it("names the child, the day, the dish, the food and the allergen of a dangerous item", () => {
    const { brief, draft } = tinyWeek();
    food(brief, "chickpea").allergens.push("MILK");
    expect(checkWeek(brief, draft)[0]).toEqual({
      kind: "ALLERGEN",
      childId: "mira",
      date: monday,
      breakKey: "lunch",
      slot: "MAIN",
      position: 0,
      dish: "chickpea-wrap",
      food: "chickpea",
      allergen: "MILK",
    });
  });

  it.each([
    ["SIBLINGS_DIFFER", ({ brief }) => void (dish(brief, "rice-bowl").starch = "NONE")],
    ["STARCH_CHANGES", ({ brief }) => void (dish(brief, "chickpea-stew").starch = "RICE")],
  ] as const satisfies readonly (readonly [string, Plant["plant"]])[])(
    "keeps silent about %s on the day it is relaxed",
    (rule, plant) => {
      const week = tinyWeek();
      plant(week);
      if (rule === "SIBLINGS_DIFFER") item(week.draft, "tove", tuesday, "MAIN").dish = "rice-bowl";
      const house: readonly FaultKind[] = ["SIBLINGS_ALIKE", "STARCH_REPEATED"];
      const strict = kindsOf(checkWeek(week.brief, week.draft)).filter((kind) => house.includes(kind));
      week.brief.relaxations.push({ rule, date: tuesday });
      const relaxed = kindsOf(checkWeek(week.brief, week.draft)).filter((kind) => house.includes(kind));
      expect({ strict, relaxed }).toEqual({
        strict: [rule === "SIBLINGS_DIFFER" ? "SIBLINGS_ALIKE" : "STARCH_REPEATED"],
        relaxed: [],
      });
    },
  );

  it("accepts a packed box without tasks and without shopping for it", () => {
    const { brief, draft } = tinyWeek();
    for (const { breakKey, slot, position, dish: key } of box(draft, "tove", tuesday).items) {
      brief.pins.push({ childId: "tove", date: tuesday, breakKey, slot, position, dish: key, because: "PACKED" });
    }
    draft.tasks = draft.tasks.filter(
      (row) => !(row.forDates.includes(tuesday) && row.childIds.includes("tove") && row.kind !== "BASE"),
    );
    without(draft.shopping, (row) => row.food === "yogurt");
    expect(checkWeek(brief, draft)).toEqual([]);
  });

  it("never finds more wrong when an allergy is taken away", () => {
    const allergy: fc.Arbitrary<AllergyBrief> = fc.oneof(
      fc.record({
        allergen: fc.constantFrom("MILK", "EGG", "WHEAT", "SESAME", "TREE_NUTS", "GLUTEN_CEREALS"),
        foodKind: fc.constant(null),
        avoid: fc.constantFrom("TRACES", "INGREDIENTS"),
      } as const),
      fc.record({
        allergen: fc.constant(null),
        foodKind: fc.constantFrom("grape", "pear", "rice", "cow-milk"),
        avoid: fc.constantFrom("TRACES", "INGREDIENTS"),
      } as const),
    );
    fc.assert(
      fc.property(
        fc.array(allergy, { minLength: 1, maxLength: 4 }),
        fc.array(allergy, { maxLength: 3 }),
        fc.nat(),
        fc.integer({ min: 0, max: plants.length - 1 }),
        (ofMira, ofTove, pick, planted) => {
          const week = tinyWeek();
          plants[planted]?.plant(week);
          child(week.brief, "mira").allergies = ofMira;
          child(week.brief, "tove").allergies = ofTove;
          const before = new Set(checkWeek(week.brief, week.draft).map((fault) => JSON.stringify(fault)));
          child(week.brief, "mira").allergies = ofMira.filter((_, index) => index !== pick % ofMira.length);
          const after = checkWeek(week.brief, week.draft).map((fault) => JSON.stringify(fault));
          expect(after.filter((fault) => !before.has(fault))).toEqual([]);
        },
      ),
      { numRuns: 60, seed: 7 },
    );
  });
});
