/**
 * Invented households drawn from a seed on the real catalogue: children, allergies, schools, boxes and kitchens of every kind a
 * brief can tell of. The same seed gives the same household. Ranges are our own; nothing in them is a real person or place.
 */
import { readdirSync, readFileSync } from "node:fs";
import {
  allergenCode,
  dietCode,
  equipmentKind,
  type AllergenCode,
  type AllergenGroupCode,
  type DietCode,
  type FacilityCode,
  type SlotCode,
} from "../../shared/codes.js";
import { ruleSetDocument, type RuleSetDocument } from "../../shared/rule-set.js";
import type {
  AllergyBrief,
  BreakBrief,
  ChildBrief,
  ChildDayBrief,
  LabelBrief,
  PinBrief,
  ReadyBaseBrief,
  SessionBrief,
  WeekBrief,
} from "../../src/domain/brief.js";
import { addDays, weekdayOf } from "../../src/domain/calendar/dates.js";
import { createRandomStream } from "../../src/domain/planner/random.js";
import type { WeekDraft } from "../../src/domain/week.js";
import { monday, ruleSets as inventedRuleSets, schoolDates, threeChildren } from "./demo-brief.js";

const folder = new URL("../../seeds/reference/rule-sets/", import.meta.url);
/** The demo's rule sets, then those of the invented briefs. */
const documents: readonly RuleSetDocument[] = [
  ...readdirSync(folder)
    .sort()
    .map((file) => ruleSetDocument.parse(JSON.parse(readFileSync(new URL(file, folder), "utf8")))),
  ...inventedRuleSets,
];
const { catalogue } = threeChildren();
const packagedFoods = catalogue.foods.filter((food) => food.packaged);
const foodKinds = [...new Set(catalogue.foods.map((food) => food.kind))].sort();

/** Allergies that go together in families, after the pairs and triples of the coverage table. */
const families: readonly (readonly (AllergenCode | AllergenGroupCode)[])[] = [
  ["TREE_NUTS", "EGG", "MILK"],
  ["GLUTEN_CEREALS", "MILK"],
  ["PEANUT", "TREE_NUTS", "SOYA"],
  ["EGG", "FISH", "SESAME"],
];
const common: readonly (AllergenCode | AllergenGroupCode)[] = [
  "MILK",
  "EGG",
  "PEANUT",
  "TREE_NUTS",
  "GLUTEN_CEREALS",
  "WHEAT",
  "SOYA",
  "SESAME",
  "FISH",
  "SHELLFISH",
];

interface Dice {
  between(least: number, most: number): number;
  chance(percent: number): boolean;
  one<T>(of: readonly T[]): T;
  some<T>(of: readonly T[], count: number): T[];
}
function diceFor(seed: number): Dice {
  const random = createRandomStream(seed);
  const dice: Dice = {
    between: (least, most) => least + random.below(most - least + 1),
    chance: (percent) => random.below(100) < percent,
    one: (of) => of[random.below(of.length)]!,
    some(of, count) {
      const left = [...of];
      return Array.from({ length: Math.min(count, left.length) }, () => left.splice(random.below(left.length), 1)[0]!);
    },
  };
  return dice;
}

function clock(minutes: number): string {
  return `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
}

function allergiesOf(dice: Dice): AllergyBrief[] {
  const named = dice.chance(12)
    ? dice.one(families)
    : dice.some(dice.chance(25) ? allergenCode.options : common, dice.one([0, 0, 0, 0, 0, 1, 1, 1, 2, 3]));
  const avoid = () => (dice.chance(55) ? "TRACES" : "INGREDIENTS");
  const kinds = dice.chance(12) ? [dice.one(foodKinds)] : [];
  return [
    ...named.map((allergen): AllergyBrief => ({ allergen, foodKind: null, avoid: avoid() })),
    ...kinds.map((foodKind): AllergyBrief => ({ allergen: null, foodKind, avoid: avoid() })),
  ];
}

/** Lunch is over within the four hours that chilled food may take, but in an odd household, where nothing may last until then. */
function breaksOf(
  dice: Dice,
  leave: number,
  rules: readonly RuleSetDocument["rules"][number][],
  isOdd: boolean,
): BreakBrief[] {
  const fruitOnly = rules.some((rule) => rule.kind === "ONLY" && rule.breaks?.includes("morning-break"));
  const full: readonly (readonly SlotCode[])[] = [
    ["MAIN", "VEGETABLE", "FRUIT", "EXTRA"],
    ["MAIN", "VEGETABLE", "FRUIT"],
    ["MAIN", "VEGETABLE", "VEGETABLE", "FRUIT"],
  ];
  // A school with rules asks for vegetables and fruit, as a rule.
  const lunchSlots = dice.one<readonly SlotCode[]>(
    rules.length > 0 && !isOdd ? full : [...full, ["MAIN", "FRUIT", "EXTRA"], ["MAIN", "VEGETABLE"]],
  );
  const morning: BreakBrief = {
    key: "morning-break",
    name: "Morning break",
    startsAt: clock(leave + dice.between(12, 24) * 5),
    minutes: dice.one([10, 15, 20]),
    // Where the rules of the school let nothing else through, hardly anybody packs anything else.
    slots: dice.one<readonly SlotCode[]>(
      fruitOnly && !(isOdd && dice.chance(30)) ? [["FRUIT"]] : [["FRUIT"], ["EXTRA"], ["EXTRA", "FRUIT"]],
    ),
    energyShare: dice.one([0.06, 0.08, 0.1]),
  };
  const lunch: BreakBrief = {
    key: "lunch",
    name: "Lunch",
    startsAt: clock(leave + dice.between(29, isOdd && dice.chance(30) ? 56 : 42) * 5),
    minutes: dice.one([20, 25, 30]),
    slots: lunchSlots,
    energyShare: dice.one([0.25, 0.3, 0.3, 0.33]),
  };
  return dice.chance(50) ? [morning, lunch] : [lunch];
}

/** The rule sets a child of this age may come under, by index. */
function ruleSetsOf(dice: Dice, age: number, diets: readonly DietCode[]): number[] {
  const at = (key: string) => documents.findIndex((document) => document.key === key);
  const school =
    age < 12
      ? dice.one([
          [],
          [at("quillbrook-primary-food-from-home")],
          [at("quillbrook-primary-food-from-home"), at("quillbrook-primary-class-4")],
          [at("primary")],
          [at("primary"), at("primary-class")],
        ])
      : dice.one([[], [at("quillbrook-upper-food-from-home")], [at("upper")]]);
  return diets.includes("VEGETARIAN") && dice.chance(40) ? [...school, at("own-vegetarian")] : school;
}

function daysOf(
  dice: Dice,
  age: number,
  diets: readonly DietCode[],
  hotDates: ReadonlySet<string>,
  isOdd: boolean,
): ChildDayBrief[] {
  const leave = dice.between(7 * 12 + 6, 8 * 12 + 9) * 5;
  const ruleSets = ruleSetsOf(dice, age, diets);
  const breaks = breaksOf(
    dice,
    leave,
    ruleSets.flatMap((at) => documents[at]!.rules),
    isOdd,
  );
  const facility = dice.one<FacilityCode>(["NEITHER", "NEITHER", "REFRIGERATOR", "REHEATING"]);
  const given = dice.chance(18)
    ? [
        {
          ...dice.one([
            { food: "milk-whole", grams: 206 },
            { food: "apple-raw", grams: 100 },
            { food: "banana-raw", grams: 90 },
          ]),
          breakKey: dice.one([null, breaks[0]!.key]),
        },
      ]
    : [];
  const dates = dice.chance(70) ? schoolDates : dice.some(schoolDates, dice.between(1, 4)).sort();
  return dates.map((date) => ({
    date,
    weekday: weekdayOf(date),
    // Now and then a day begins earlier or later.
    leaveAt: clock(leave + (dice.chance(6) ? dice.between(-6, 3) * 5 : 0)),
    breaks,
    // A day out has neither a refrigerator nor anything to heat with.
    facility: dice.chance(4) ? "NEITHER" : facility,
    ruleSets,
    ...(given.length > 0 ? { given } : {}),
    ...(hotDates.has(date) ? { hotDay: true as const } : {}),
  }));
}

function childOf(dice: Dice, at: number, hotDates: ReadonlySet<string>, isOdd: boolean): ChildBrief {
  const age = dice.between(3, 17);
  const diets = dice.chance(25) ? dice.some(dietCode.options, dice.one([1, 1, 1, 2])) : [];
  const size = 300 + age * 35;
  const leak = (part: number) => ({ ml: Math.round(size * part), leakProof: true });
  const dry = (part: number) => ({ ml: Math.round(size * part), leakProof: false });
  const isMeasured = dice.chance(50);
  return {
    id: `child-${at + 1}`,
    name: `Child ${at + 1}`,
    dateOfBirth: addDays(monday, -Math.round(age * 365.25) - dice.between(1, 360)),
    sex: dice.one(["FEMALE", "MALE", null]),
    // Near the middle of the growth charts for the age; our estimate, as are the ranges around it.
    weightKg: isMeasured ? Math.round((8 + age * 2.9) * dice.between(85, 120)) / 100 : null,
    heightCm: isMeasured ? Math.round((82 + age * 5.4) * dice.between(94, 106)) / 100 : null,
    activity: dice.one(["INACTIVE", "LOW_ACTIVE", "LOW_ACTIVE", "ACTIVE", "VERY_ACTIVE"]),
    appetite: dice.one([0.8, 0.9, 1, 1, 1, 1.1, 1.25]),
    diets,
    dislikes: [
      ...dice.some(foodKinds, dice.between(0, 3)),
      ...dice.some(catalogue.dishes, dice.between(0, 2)).map((dish) => dish.key),
    ],
    minutesToEat: dice.one([10, 15, 20, 25]),
    allergies: allergiesOf(dice),
    schoolName: "Invented school",
    box: {
      compartments: dice.one([
        [leak(1), dry(0.45), dry(0.45), leak(0.45)],
        [leak(1), dry(0.4), dry(0.4), leak(0.4), dry(0.3)],
        [leak(1.1), leak(0.5), leak(0.4), leak(0.4)],
        [leak(1), leak(0.5), dry(0.5), dry(0.4)],
        ...(isOdd ? [[dry(1), leak(0.5)]] : []),
      ]),
      // On a hot day two do not last until noon; most families know.
      coldSources:
        isOdd && dice.chance(20) ? dice.between(0, 1) : hotDates.size > 0 ? dice.one([2, 4, 5]) : dice.one([2, 2, 3]),
      insulated: !(isOdd && dice.chance(10)),
      flask: dice.chance(35),
    },
    days: daysOf(dice, age, diets, hotDates, isOdd),
  };
}

function sessionsOf(dice: Dice, dates: readonly string[], mouths: number, isOdd: boolean): SessionBrief[] {
  const isTight = dice.chance(isOdd ? 60 : 15);
  const carers = dice.one([1, 1, 2]);
  const minutes = (least: number, most: number) => dice.between(least, isTight ? Math.ceil((least + most) / 2) : most);
  const session = (
    kind: SessionBrief["kind"],
    date: string,
    startsAt: string,
    handsOnMinutes: number,
    elapsedMinutes: number,
    effort: number,
  ): SessionBrief => ({
    key: `${kind.toLowerCase()}-${date}`,
    kind,
    date,
    startsAt,
    handsOnMinutes: Math.min(handsOnMinutes, elapsedMinutes * carers),
    elapsedMinutes,
    carers,
    effort,
  });
  const weekend = dice.one([[], [-1], [-1], [-1], [-2], [-2, -1]]);
  const hasEvenings = !isOdd || dice.chance(60);
  const mornings = [8 + 4 * mouths, 30 + 8 * mouths] as const;
  const startsAt = clock(dice.between(5 * 12 + 9, 6 * 12 + 9) * 5);
  const rows = [
    ...weekend.map((back) =>
      session("WEEKEND", addDays(monday, back), "15:00", minutes(40, 120), dice.between(90, 200), dice.between(1, 4)),
    ),
    ...dates.flatMap((date) => [
      ...(hasEvenings && dice.chance(95)
        ? [session("EVENING", addDays(date, -1), "19:30", minutes(10, 45), dice.between(40, 90), dice.between(2, 6))]
        : []),
      session("MORNING", date, startsAt, minutes(...mornings), dice.between(45, 90), dice.between(4, 10)),
    ]),
  ];
  return rows.sort((one, other) => (`${one.date} ${one.startsAt}` < `${other.date} ${other.startsAt}` ? -1 : 1));
}

function readyOf(dice: Dice): ReadyBaseBrief[] {
  const leftovers = dice.some(catalogue.bases, dice.one([0, 0, 1, 2])).map((base, at): ReadyBaseBrief => {
    const cookedOn = addDays(monday, -dice.between(1, base.keepsChilledDays));
    return {
      id: `leftover-${at + 1}`,
      base: base.key,
      grams: dice.between(5, 60) * 10,
      from: "LEFTOVER",
      firstDate: addDays(cookedOn, 1),
      lastDate: addDays(cookedOn, base.keepsChilledDays),
    };
  });
  const freezable = catalogue.bases.filter((base) => base.keepsFrozenDays !== null);
  const frozen = dice.some(freezable, dice.one([0, 0, 0, 1, 2])).map((base, at): ReadyBaseBrief => {
    const frozenOn = addDays(monday, -dice.between(1, base.keepsFrozenDays!));
    return {
      id: `frozen-${at + 1}`,
      base: base.key,
      grams: dice.between(10, 60) * 10,
      from: "FREEZER",
      firstDate: addDays(frozenOn, 1),
      lastDate: addDays(frozenOn, base.keepsFrozenDays!),
    };
  });
  return [...leftovers, ...frozen];
}

function labelsOf(dice: Dice): LabelBrief[] {
  return dice.some(packagedFoods, dice.one([0, 3, 10])).map((food) => ({
    food: food.key,
    contains: [...new Set([...food.allergens, ...(dice.chance(10) ? [dice.one(allergenCode.options)] : [])])],
    mayContain: dice.chance(25) ? dice.some(allergenCode.options, dice.between(1, 2)) : [],
    readOn: "2027-01-09",
    ...(dice.chance(30)
      ? {
          kinds: dice
            .some(foodKinds, dice.between(1, 2))
            .map((kind) => ({ kind, says: dice.one(["CLEAR", "MAY_CONTAIN", "CONTAINS"] as const) })),
        }
      : {}),
  }));
}

/** Places people fix: any dish of the slot, so that some pins cannot be kept and the plan has to say so. */
function pinsOf(dice: Dice, children: readonly ChildBrief[]): PinBrief[] {
  if (!dice.chance(14)) return [];
  const child = dice.one(children);
  const day = dice.one(child.days);
  const pause = dice.one(day.breaks);
  const position = dice.between(0, pause.slots.length - 1);
  const slot = pause.slots[position]!;
  const dish = dice.one(catalogue.dishes.filter((row) => row.slots.includes(slot)));
  const place = { childId: child.id, date: day.date, breakKey: pause.key, slot, position };
  return [{ ...place, dish: dish.key, because: "PINNED" }];
}

/** The household of a seed (unsigned 32-bit), with a fresh week before it: one to six children of 3 to 17 years. */
export function drawHousehold(seed: number): WeekBrief {
  const dice = diceFor(seed);
  const isOdd = dice.chance(20);
  const hotDates = new Set(dice.chance(10) ? dice.some(schoolDates, dice.between(1, 5)) : []);
  const children = Array.from({ length: dice.one([1, 1, 2, 2, 2, 3, 3, 4, 5, 6]) }, (_, at) =>
    childOf(dice, at, hotDates, isOdd),
  );
  const dates = schoolDates.filter((date) => children.some((child) => child.days.some((day) => day.date === date)));
  const lacks = dice.chance(60)
    ? []
    : dice.some(equipmentKind.options, isOdd ? dice.between(1, 9) : dice.between(1, 3));
  const owned = equipmentKind.options.filter((kind) => !lacks.includes(kind));
  return threeChildren({
    household: {
      id: `household-${seed}`,
      name: `Household ${seed}`,
      currency: "GBP",
      keepsOut: dice.chance(12) ? [dice.one(common)] : [],
      equipment: owned.map((kind) => ({
        kind,
        units: kind === "HOB_BURNER" ? dice.between(1, 4) : dice.one([1, 1, 1, 2]),
      })),
      refrigeratorMl: dice.between(3, 40) * 1000,
      ...(dice.chance(20) ? { energyMethod: "IOM_2005" as const } : {}),
    },
    sessions: sessionsOf(dice, dates, children.length, isOdd),
    children,
    ruleSets: documents,
    stock: dice
      .some(catalogue.foods, dice.one([0, 5, 20]))
      .map((food) => ({ food: food.key, grams: dice.between(1, 80) * 10 })),
    ready: readyOf(dice),
    labels: labelsOf(dice),
    relaxations: dice.chance(10)
      ? [{ rule: dice.one(["SIBLINGS_DIFFER", "DISH_REPEATS", "STARCH_CHANGES"]), date: dice.one(dates) }]
      : [],
    pins: pinsOf(dice, children),
    outOf: dice.chance(20) ? dice.some(foodKinds, dice.between(1, 3)) : [],
    history: children.flatMap((child) =>
      dice
        .some(catalogue.dishes, dice.one([0, 0, 12]))
        .map((dish) => ({ childId: child.id, date: addDays(monday, -dice.between(3, 14)), dish: dish.key })),
    ),
  });
}

const disruptions = [
  "ABSENT",
  "SCHOOL_CLOSED",
  "TRIP_DAY",
  "OUT_OF",
  "BROKEN_APPLIANCE",
  "SHORT_MORNING",
  "ALLERGY",
] as const;
interface Disruption {
  readonly kind: (typeof disruptions)[number] | "NOTHING";
  readonly brief: WeekBrief;
}

/** The week with a day on which the kitchen lacks something. */
const onDay = (brief: WeekBrief, date: string, without: NonNullable<SessionBrief["without"]>): WeekBrief => ({
  ...brief,
  sessions: brief.sessions.map((session) => (session.date === date ? { ...session, without } : session)),
});

/**
 * The same household the night after its first school day: those boxes are packed, what was cooked until then is there, one
 * thing has happened since, and the week is to change as little as it can.
 */
export function drawDisruption(brief: WeekBrief, draft: WeekDraft, seed: number): Disruption {
  const dice = diceFor(seed ^ 0x5bd1e995);
  const [first] = draft.boxes.map(({ date }) => date).sort();
  const placesOf = (boxes: WeekDraft["boxes"]) =>
    boxes.flatMap(({ childId, date, items }) =>
      items.map(({ breakKey, slot, position, dish }) => ({ childId, date, breakKey, slot, position, dish })),
    );
  const packed = placesOf(draft.boxes.filter(({ date }) => date === first));
  const begun = new Set(brief.sessions.filter(({ date }) => date <= first!).map(({ key }) => key));
  const later: WeekBrief = {
    ...brief,
    pins: [
      ...packed.map((place): PinBrief => ({ ...place, because: "PACKED" })),
      ...brief.pins.filter(({ date }) => date !== first),
    ],
    made: draft.batches
      .filter(({ session }) => begun.has(session))
      .map(({ base, session, batches }) => ({ base, session, batches })),
    stayCloseTo: placesOf(draft.boxes),
  };
  /** The boxes of these days are no longer due. */
  const without = (isOff: (childId: string, date: string) => boolean): WeekBrief => ({
    ...later,
    children: later.children
      .map((child) => ({ ...child, days: child.days.filter(({ date }) => !isOff(child.id, date)) }))
      .filter((child) => child.days.length > 0),
    pins: later.pins.filter(({ childId, date }) => !isOff(childId, date)),
  });
  const onDate = (date: string, change: Partial<ChildDayBrief>): WeekBrief => ({
    ...later,
    children: later.children.map((child) => ({
      ...child,
      days: child.days.map((day) => (day.date === date ? { ...day, ...change } : day)),
    })),
  });
  const open = draft.boxes.filter(({ date }) => date !== first);
  if (open.length === 0) return { kind: "NOTHING", brief: later };
  const kind = dice.one(disruptions);
  const box = dice.one(open);
  switch (kind) {
    case "ABSENT":
      return { kind, brief: without((childId, date) => childId === box.childId && date === box.date) };
    case "SCHOOL_CLOSED":
      return { kind, brief: without((_, date) => date === box.date) };
    case "TRIP_DAY":
      return { kind, brief: onDate(box.date, { facility: "NEITHER" }) };
    case "OUT_OF": {
      const foodKind = dice.one(foodKinds);
      if (dice.chance(50)) return { kind, brief: onDay(later, box.date, { equipment: [], foodKinds: [foodKind] }) };
      return { kind, brief: { ...later, outOf: [...later.outOf, foodKind] } };
    }
    case "BROKEN_APPLIANCE": {
      const { equipment } = later.household;
      const broken = dice.one(equipment);
      if (dice.chance(50)) return { kind, brief: onDay(later, box.date, { equipment: [broken.kind], foodKinds: [] }) };
      const left = equipment.flatMap((row) =>
        row === broken ? (row.units > 1 ? [{ ...row, units: row.units - 1 }] : []) : [row],
      );
      return { kind, brief: { ...later, household: { ...later.household, equipment: left } } };
    }
    case "SHORT_MORNING": {
      const isShort = ({ kind: at, date }: SessionBrief) => at === "MORNING" && date === box.date;
      const sessions = later.sessions.map((row) => (isShort(row) ? { ...row, handsOnMinutes: 10 } : row));
      return { kind, brief: { ...later, sessions } };
    }
    case "ALLERGY": {
      const allergy: AllergyBrief = { allergen: dice.one(common), foodKind: null, avoid: "TRACES" };
      // What was packed before anybody knew is eaten or thrown away, and judged no more.
      const due = without((childId, date) => childId === box.childId && date === first);
      return {
        kind,
        brief: {
          ...due,
          children: due.children.map((child) =>
            child.id === box.childId ? { ...child, allergies: [...child.allergies, allergy] } : child,
          ),
        },
      };
    }
  }
}
