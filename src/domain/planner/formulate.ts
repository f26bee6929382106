/** A household's week as the planner's problem: whole numbers only, and a key that says what every number stood for. */
import type { Base, Dish } from "../../../shared/catalogue.js";
import type { EquipmentKind, NutrientTag } from "../../../shared/codes.js";
import type { ChildBrief, SessionBrief, WeekBrief } from "../brief.js";
import { addDays, daysBetween } from "../calendar/dates.js";
import type { CatalogueIndex } from "../catalogue/derive.js";
import { comesHotOutOf, isCooked } from "../kitchen/heat.js";
import { TENTHS, tenths } from "../kitchen/jobs.js";
import { hasStoodByMorning } from "../kitchen/standing.js";
import { baseMinutes, finishLoad, packMinutesPerBox, type FinishPart } from "../kitchen/work.js";
import {
  brokenIn,
  canFinishEveningBefore,
  chainMinutes,
  labelsThroughPurchase,
  missingKind,
  morningMinutes,
  type CandidateDish,
  type Candidates,
  type PlaceCandidates,
} from "./candidates.js";
import type {
  Band,
  Candidate,
  DistinctRule,
  FinishLoad,
  Position,
  Problem,
  ProblemBase,
  ProblemDish,
  ProblemWindow,
  ReadySupply,
  Target,
  TogetherRule,
} from "./problem.js";
import { compileRuleSets } from "../rules/compile.js";
import { listRuleRows, type Measure, type RuleRow, type UnjudgedRule } from "./rule-rows.js";
import { energyBand, hardFactor, wishes } from "./wishes.js";

/** What a hard row says, for telling a family why no week was found. */
export type RowMeaning =
  | { readonly kind: "ENERGY"; readonly childId: string; readonly date: string }
  | { readonly kind: "NUTRIENT"; readonly nutrient: string; readonly childId: string; readonly date: string }
  | { readonly kind: "BOX_SPACE"; readonly childId: string; readonly date: string }
  | { readonly kind: "BOX_REPEATS"; readonly childId: string; readonly date: string }
  | {
      readonly kind: "RULE";
      readonly ruleSet: string;
      readonly rule: string;
      readonly childId: string;
      readonly date: string | null;
    };

export interface ReadySource {
  readonly kind: "READY" | "MADE";
  /** Index in `brief.ready` or `brief.made`. */
  readonly index: number;
}

/** A daily need met by the boxes, summed over the child's packed days. */
export interface WeekTarget {
  readonly nutrient: string;
  readonly direction: 1 | -1;
  readonly measure: number;
  readonly positions: readonly number[];
  readonly target: number;
}

/** What the numbers of a problem stand for. */
export interface FormulationKey {
  readonly dates: readonly string[];
  /** Session key per window. */
  readonly sessions: readonly string[];
  readonly bases: readonly string[];
  readonly dishes: readonly string[];
  readonly equipment: readonly EquipmentKind[];
  readonly places: readonly PlaceCandidates[];
  /** The dishes behind `Position.candidates`, in their order. */
  readonly options: readonly (readonly CandidateDish[])[];
  readonly ready: readonly ReadySource[];
  /** By name of band, distinct or together row. */
  readonly meanings: ReadonlyMap<string, RowMeaning>;
  readonly targets: readonly WeekTarget[];
  readonly advice: readonly RuleRow[];
  readonly unjudged: readonly UnjudgedRule[];
  /** Refusal and monotony in the price of a dish at a place; points. */
  readonly refusalPoints: (dish: CandidateDish, place: PlaceCandidates) => number;
  readonly monotonyPoints: (dish: CandidateDish, place: PlaceCandidates) => number;
}

/** What an earlier attempt found out that the problem itself does not model. */
export interface Tightening {
  /** Hands-on tenths of a minute the search may use, by session key: the clock could not hold more. */
  readonly minutes: ReadonlyMap<string, number>;
  /** ml a box may take, by `childId@date`: its compartments could not be filled otherwise. */
  readonly boxMl: ReadonlyMap<string, number>;
  /** `childId@date`: wet and dry food found no compartments of their own; then the box has only one of the two. */
  readonly apart: ReadonlySet<string>;
  /** `base@session`: made there, what waits for it would end too late. */
  readonly elsewhere: ReadonlySet<string>;
}
export const noTightening: Tightening = {
  minutes: new Map(),
  boxMl: new Map(),
  apart: new Set(),
  elsewhere: new Set(),
};

const everyItem: Measure = () => 1;
const isWet: Measure = ({ inFlask, derived }) => (!inFlask && derived.dish.spill === "WET" ? 1 : 0);
const isDry: Measure = ({ inFlask, derived }) => (!inFlask && derived.dish.spill === "DRY" ? 1 : 0);
/** Base amounts are hundredths of a gram. */
export const UNITS_PER_GRAM = 100;
/** More than any session has: finishing all in the morning is not to be had. */
const NEVER = 1_000_000;
/** More than any load, `NEVER` included. */
export const NO_LIMIT = 1_000 * NEVER;

interface Figure {
  readonly nutrient: NutrientTag | "FREE_SUGAR";
  /** Units per the nutrient's own unit. */
  readonly scale: number;
  readonly read: (dish: CandidateDish) => number;
}
const figureOf = (nutrient: NutrientTag, scale: number): Figure => ({
  nutrient,
  scale,
  read: ({ derived, portion }) => (derived.nutrients[nutrient] ?? 0) * portion.scale,
});
const energy = figureOf("ENERC_KCAL", 1);

/** Daily needs the boxes are held to, softly over the week; `hard` ones also each day within `hardFactor`. */
const needFigures: readonly {
  readonly name: keyof typeof wishes.nutrients;
  readonly figure: Figure;
  readonly direction: 1 | -1;
  readonly hard: boolean;
  readonly daily: (place: PlaceCandidates) => number;
}[] = [
  {
    name: "protein",
    figure: figureOf("PROCNT", 10),
    direction: 1,
    hard: true,
    daily: ({ needs }) => needs.proteinGrams,
  },
  {
    name: "saturated",
    figure: figureOf("FASAT", 10),
    direction: -1,
    hard: true,
    daily: ({ needs }) => needs.saturatedFatMaxGrams,
  },
  { name: "sodium", figure: figureOf("NA", 1), direction: -1, hard: true, daily: ({ needs }) => needs.sodiumMaxMg },
  { name: "fibre", figure: figureOf("FIBTG", 10), direction: 1, hard: false, daily: ({ needs }) => needs.fibreGrams },
  { name: "calcium", figure: figureOf("CA", 1), direction: 1, hard: false, daily: ({ needs }) => needs.calciumMg },
  { name: "iron", figure: figureOf("FE", 100), direction: 1, hard: false, daily: ({ needs }) => needs.ironMg },
  { name: "zinc", figure: figureOf("ZN", 100), direction: 1, hard: false, daily: ({ needs }) => needs.zincMg },
  { name: "vitaminC", figure: figureOf("VITC", 10), direction: 1, hard: false, daily: ({ needs }) => needs.vitaminCMg },
  {
    name: "vitaminA",
    figure: figureOf("VITA_RAE", 1),
    direction: 1,
    hard: false,
    daily: ({ needs }) => needs.vitaminARaeUg,
  },
  {
    name: "freeSugar",
    figure: {
      nutrient: "FREE_SUGAR",
      scale: 10,
      read: ({ derived, portion }) => derived.freeSugarGrams * portion.scale,
    },
    direction: -1,
    hard: false,
    daily: ({ needs }) => needs.freeSugarMaxGrams,
  },
];

/** Measures by the function that reads them: the same function is one measure, read only where a row asks for it. */
class Measures {
  private readonly known = new Map<Measure, { readonly number: number; readonly at: Set<number> }>();

  number(measure: Measure, positions: readonly number[]): number {
    const entry = this.known.get(measure) ?? { number: this.known.size, at: new Set<number>() };
    this.known.set(measure, entry);
    for (const position of positions) entry.at.add(position);
    return entry.number;
  }

  get count(): number {
    return this.known.size;
  }

  /** Reads every measure at one position; where no row asks for a measure it is 0. */
  readerAt(position: number): (dish: CandidateDish, place: PlaceCandidates) => number[] {
    const asked = Array.from(this.known, ([measure, { at }]) => (at.has(position) ? measure : null));
    return (dish, place) => asked.map((measure) => (measure === null ? 0 : measure(dish, place)));
  }
}

/** Everything a child's box on a day shares. */
interface BoxPlaces {
  readonly child: ChildBrief;
  readonly date: string;
  readonly positions: readonly number[];
  readonly hasMain: boolean;
  /** Of the day's energy, 0 to 1. */
  readonly share: number;
}

/**
 * Formulates a week. Every place needs at least one candidate and every pin has to be among them, or the problem has a
 * position that cannot be filled (see `findConflicts`, which asks before the search). Rounding: what a row promises holds for
 * the true sums as well.
 * @param shouldStop asked between its parts and before every place; only what it throws ends the work, as in `findCandidates`
 */
export function formulate(
  brief: WeekBrief,
  index: CatalogueIndex,
  candidates: Candidates,
  tightening: Tightening = noTightening,
  shouldStop?: () => boolean,
): { problem: Problem; layout: FormulationKey } {
  const { places } = candidates;
  const dates = [...new Set(brief.children.flatMap((child) => child.days.map((day) => day.date)))].sort();
  const equipment = [...new Set(brief.household.equipment.map((owned) => owned.kind))];
  const dishes = [...new Set(places.flatMap((place) => place.dishes.map(({ derived }) => derived.dish.key)))];
  const bases = [...new Set(dishes.flatMap((key) => index.dish(key)?.bases.map((use) => use.base) ?? []))];
  const dishNumber = new Map(dishes.map((key, number) => [key, number]));
  const baseNumber = new Map(bases.map((key, number) => [key, number]));
  const boxes = listBoxes(brief, places);
  const windows = listWindows(brief, boxes, dates, equipment, tightening);
  const dishRows = dishes.map((key) => index.dish(key)).filter((dish): dish is Dish => dish !== undefined);
  const kitchen = planKitchen({
    brief,
    index,
    places,
    dates,
    equipment,
    windows,
    dishes: dishRows,
    bases,
    elsewhere: tightening.elsewhere,
  });

  shouldStop?.();
  const measures = new Measures();
  const meanings = new Map<string, RowMeaning>();
  const bands: Band[] = [];
  const addBand = (
    meaning: RowMeaning,
    measure: Measure,
    positions: readonly number[],
    lo: number | null,
    hi: number | null,
  ): void => {
    const name = `band-${bands.length}`;
    meanings.set(name, meaning);
    bands.push({ name, measure: measures.number(measure, positions), positions, lo, hi });
  };
  boundBoxes(boxes, places, tightening, addBand);
  const targets: (WeekTarget & { readonly weight: number })[] = aimForNeeds(brief, places, boxes, measures);
  boundNeeds(boxes, places, addBand);

  shouldStop?.();
  const { rows, unjudged } = listRuleRows({
    brief,
    rules: compileRuleSets(brief.ruleSets, index, labelsThroughPurchase(brief), brief.credits),
    places,
  });
  const binding = rows.filter(({ rule }) => rule.level === "FORBID");
  const distinct: DistinctRule[] = [];
  const together: TogetherRule[] = [];
  const counts: Extract<RuleRow, { row: "COUNT" }>[] = [];
  for (const row of binding) {
    const meaning: RowMeaning = {
      kind: "RULE",
      ruleSet: row.ruleSet,
      rule: row.rule.id,
      childId: row.childId,
      date: row.date,
    };
    if (row.row === "SUM") addBand(meaning, row.measure, row.positions, row.atLeast, row.atMost);
    else if (row.row === "COUNT") {
      const name = `distinct-${distinct.length}`;
      meanings.set(name, meaning);
      const measure = measures.number(row.measure, row.positions);
      const { atLeast, atMost } = row;
      distinct.push({ name, counts: row.counts, measure, positions: row.positions, atLeast, atMost: atMost ?? -1 });
      counts.push(row);
    } else {
      const name = `together-${together.length}`;
      meanings.set(name, meaning);
      const first = measures.number(row.first, row.positions);
      const second = measures.number(row.second, row.positions);
      together.push({
        name,
        first,
        second,
        boxes: boxes.flatMap(({ positions }, box) => (positions.some((p) => row.positions.includes(p)) ? [box] : [])),
      });
    }
  }
  for (const [box, { child, date, positions }] of boxes.entries()) {
    // Wet and dry food never lie together; several compartments mostly leave room for both.
    if (child.box.compartments.length > 1 && !tightening.apart.has(`${child.id}@${date}`)) continue;
    const name = `together-${together.length}`;
    meanings.set(name, { kind: "BOX_SPACE", childId: child.id, date });
    const [first, second] = [measures.number(isWet, positions), measures.number(isDry, positions)];
    together.push({ name, first, second, boxes: [box] });
  }
  for (const { child, date, positions } of boxes) {
    const name = `distinct-${distinct.length}`;
    meanings.set(name, { kind: "BOX_REPEATS", childId: child.id, date });
    const measure = measures.number(everyItem, positions);
    distinct.push({ name, counts: "KINDS", measure, positions, atLeast: positions.length, atMost: -1 });
  }
  const advice = rows.filter(({ rule }) => rule.level === "ADVISE");
  const advised = advice.flatMap((row): (Target & { name: string })[] => {
    if (row.row !== "SUM" || row.positions.length === 0) return [];
    const wish = (target: number | null, direction: 1 | -1): Target[] =>
      target === null || target <= 0
        ? []
        : [
            {
              name: `advice-${row.rule.id}`,
              measure: measures.number(row.measure, row.positions),
              positions: row.positions,
              target,
              direction,
              weight: wishes.sumAgainstAdvice,
            },
          ];
    return [...wish(row.atLeast, 1), ...wish(row.atMost, -1)];
  });

  const prices = priceDishes(brief);
  const boxOf = new Map(boxes.flatMap(({ positions }, box) => positions.map((p): [number, number] => [p, box])));
  const slots = new Map<string, number>();
  const kindNumbers = counts.map(() => new Map<string, number>());
  const kindsAt = (dish: CandidateDish, place: PlaceCandidates, p: number): number[] =>
    counts.map((row, r) => {
      const numbers = kindNumbers[r];
      const kind = row.counts === "KINDS" && row.positions.includes(p) ? row.kindOf(dish, place) : null;
      if (kind === null || numbers === undefined) return -1;
      const number = numbers.get(kind) ?? numbers.size;
      numbers.set(kind, number);
      return number;
    });
  /** One more KINDS row per box, whose kinds are the dishes themselves: nothing comes twice in one box. */
  const kindsOf = (dish: CandidateDish, place: PlaceCandidates, p: number): number[] => [
    ...kindsAt(dish, place, p),
    ...boxes.map((_, box) => (boxOf.get(p) === box ? (dishNumber.get(dish.derived.dish.key) ?? -1) : -1)),
  ];
  const positions = places.map((place, p): Position => {
    shouldStop?.();
    const { breakKey, slot, position } = place.place;
    const readMeasures = measures.readerAt(p);
    const slotKey = `${breakKey}/${slot}/${position}`;
    if (!slots.has(slotKey)) slots.set(slotKey, slots.size);
    return {
      child: brief.children.indexOf(place.child),
      day: dates.indexOf(place.place.date),
      box: boxOf.get(p) ?? 0,
      slot: slots.get(slotKey) ?? 0,
      candidates: place.dishes.map((dish): Candidate => ({
        dish: dishNumber.get(dish.derived.dish.key) ?? -1,
        cost: prices.total(dish, place),
        q: readMeasures(dish, place),
        bases: dish.derived.dish.bases.map((use) => ({
          base: baseNumber.get(use.base) ?? -1,
          amount: baseAmount(use.grams, dish.portion.scale),
        })),
        kinds: kindsOf(dish, place, p),
      })),
      fixed: place.pin === null ? -1 : place.dishes.findIndex(({ derived }) => derived.dish.key === place.pin?.dish),
    };
  });

  const relaxed = (rule: string): number[] =>
    brief.relaxations
      .filter((row) => row.rule === rule)
      .map((row) => dates.indexOf(row.date))
      .filter((day) => day >= 0);
  const ready = listReady(brief, index, dates, baseNumber);
  const madeStorage = brief.made.reduce((sum, made) => sum + made.batches * (index.base(made.base)?.storageMl ?? 0), 0);
  const problem: Problem = {
    days: dates.length,
    children: brief.children.length,
    measures: measures.count,
    equipment: equipment.length,
    dishes: kitchen.dishes,
    bases: kitchen.bases,
    windows: windows.map(({ window }) => window),
    ready: ready.map(({ supply }) => supply),
    positions,
    bands,
    targets: [
      ...targets.map(({ nutrient, measure, positions: at, target, direction, weight }) => ({
        name: nutrient,
        measure,
        positions: at,
        target,
        direction,
        weight,
      })),
      ...advised,
    ],
    distinct,
    together,
    relaxed: {
      siblings: relaxed("SIBLINGS_DIFFER"),
      repeats: relaxed("DISH_REPEATS"),
      starch: relaxed("STARCH_CHANGES"),
    },
    neighbours: dates.flatMap((date, day) => {
      const next = dates.indexOf(addDays(date, 1));
      return next < 0 ? [] : [[day, next] as const];
    }),
    refrigeratorMl: Math.max(0, brief.household.refrigeratorMl - madeStorage),
    stayClose: stayClose(brief, places, dishNumber),
    sharing: brief.sharing,
  };
  return {
    problem,
    layout: {
      dates,
      sessions: windows.map(({ session }) => session.key),
      bases,
      dishes,
      equipment,
      places,
      options: places.map((place) => place.dishes),
      ready: ready.map(({ source }) => source),
      meanings,
      targets,
      advice,
      unjudged,
      refusalPoints: prices.refusal,
      monotonyPoints: prices.monotony,
    },
  };
}

/** Hundredths of a gram of a base in a portion, rounded up to whole grams: what is fed can be weighed. */
function baseAmount(gramsPerPortion: number, scale: number): number {
  return Math.ceil(gramsPerPortion * scale - 1e-6) * UNITS_PER_GRAM;
}

function listBoxes(brief: WeekBrief, places: readonly PlaceCandidates[]): BoxPlaces[] {
  return brief.children.flatMap((child) =>
    child.days.map((day): BoxPlaces => {
      const positions = places.flatMap(({ place }, p) =>
        place.childId === child.id && place.date === day.date ? [p] : [],
      );
      const slots = day.breaks.flatMap((pause) => pause.slots);
      const share = day.breaks.reduce((sum, pause) => sum + pause.energyShare, 0);
      return { child, date: day.date, positions, hasMain: slots.includes("MAIN"), share };
    }),
  );
}

interface WindowRow {
  readonly session: SessionBrief;
  readonly window: ProblemWindow;
  /** First and last school day (index) a base serves when made here. */
  readonly serves: (base: Base) => { readonly firstDay: number; readonly lastDay: number } | null;
}

interface Packed {
  /** `childId@date` of boxes with every item packed. */
  readonly boxes: ReadonlySet<string>;
  /** Dates on which every box is packed. */
  readonly wholeDates: ReadonlySet<string>;
  readonly lastDate: string | null;
}

function listPacked(brief: WeekBrief): Packed {
  const pins = brief.pins.filter((pin) => pin.because === "PACKED");
  const boxes = new Set<string>();
  const open = new Set<string>();
  for (const { id, days } of brief.children) {
    for (const { date, breaks } of days) {
      const items = breaks.reduce((sum, pause) => sum + pause.slots.length, 0);
      const packed = pins.filter((pin) => pin.childId === id && pin.date === date).length;
      if (packed > 0 && packed >= items) boxes.add(`${id}@${date}`);
      else open.add(date);
    }
  }
  const dates = [...new Set([...boxes].map((key) => key.slice(key.indexOf("@") + 1)))].sort();
  return { boxes, wholeDates: new Set(dates.filter((date) => !open.has(date))), lastDate: dates.at(-1) ?? null };
}

/**
 * Sessions that serve a school day. A morning's pack minutes are taken off its budget: packing cannot be planned away. A
 * morning whose boxes are all packed has no limit left: its work is done.
 */
function listWindows(
  brief: WeekBrief,
  boxes: readonly BoxPlaces[],
  dates: readonly string[],
  equipment: readonly EquipmentKind[],
  tightening: Tightening,
): WindowRow[] {
  const packed = listPacked(brief);
  return brief.sessions.flatMap((session): WindowRow[] => {
    const next = dates.findIndex((date) => (session.kind === "MORNING" ? date >= session.date : date > session.date));
    if (next < 0) return [];
    if (session.kind === "MORNING" && dates[next] !== session.date) return [];
    const packing =
      session.kind === "MORNING"
        ? boxes
            .filter((box) => box.date === session.date && !packed.boxes.has(`${box.child.id}@${box.date}`))
            .reduce((sum, box) => sum + packMinutesPerBox(box.positions.length), 0)
        : 0;
    // A session before the last packed box is over: it can have made what is packed and nothing for later.
    const isOver =
      packed.lastDate !== null &&
      (session.date < packed.lastDate || (session.date === packed.lastDate && session.kind === "MORNING"));
    const isDone = packed.lastDate !== null && session.kind === "MORNING" && packed.wholeDates.has(session.date);
    const hands = Math.min(session.handsOnMinutes, session.elapsedMinutes * session.carers) - packing;
    const minutes = Math.max(0, Math.floor(hands * TENTHS + 1e-6));
    // Only the evening right before a school day can finish that day's dishes; any other one makes bases, as a weekend does.
    const eve = session.kind === "EVENING" && dates[next] === addDays(session.date, 1);
    const kind = session.kind === "EVENING" && !eve ? "WEEKEND" : session.kind;
    const made = session.kind === "EVENING" ? addDays(session.date, 1) : session.date;
    return [
      {
        session,
        window: {
          kind,
          day: kind === "WEEKEND" && session.kind === "WEEKEND" ? 0 : next,
          minutes: isDone ? NO_LIMIT : Math.min(minutes, tightening.minutes.get(session.key) ?? minutes),
          effort: Math.max(0, Math.round(session.effort)),
          equipment: equipment.map((of) =>
            isDone ? NO_LIMIT : unitsIn(brief, session, of) * session.elapsedMinutes * TENTHS,
          ),
        },
        serves: (base) => {
          // A weekend's product is for later days; keeping counts from the day it is made all the same.
          const firstDay = dates.findIndex(
            (date) =>
              (session.kind === "WEEKEND" ? date > made : date >= made) &&
              hasStoodByMorning(brief.sessions, base, session, date),
          );
          const until = addDays(made, base.keepsChilledDays - 1);
          const last = isOver && packed.lastDate !== null && packed.lastDate < until ? packed.lastDate : until;
          const lastDay = dates.findLastIndex((date) => date <= last);
          return firstDay < 0 || lastDay < firstDay ? null : { firstDay, lastDay };
        },
      },
    ];
  });
}

const unitsIn = (brief: WeekBrief, session: SessionBrief, kind: EquipmentKind): number =>
  brokenIn(session, [{ kind }]) === null ? ownedUnits(brief, kind) : 0;

const ownedUnits = (brief: WeekBrief, kind: EquipmentKind): number =>
  brief.household.equipment.filter((owned) => owned.kind === kind).reduce((sum, owned) => sum + owned.units, 0);

interface KitchenInput {
  readonly brief: WeekBrief;
  readonly index: CatalogueIndex;
  readonly places: readonly PlaceCandidates[];
  readonly dates: readonly string[];
  readonly equipment: readonly EquipmentKind[];
  readonly windows: readonly WindowRow[];
  readonly dishes: readonly Dish[];
  readonly bases: readonly string[];
  readonly elsewhere: ReadonlySet<string>;
}

/**
 * Finishing loads of dishes and windows of bases. A dish that may be finished the evening before cannot wait for a base made
 * that morning: such bases leave the mornings, unless mornings are all they have; then their dishes stay in the morning too.
 */
function planKitchen(input: KitchenInput): { dishes: ProblemDish[]; bases: ProblemBase[] } {
  const { brief, index, places, dates, equipment, windows, dishes } = input;
  const starches: string[] = [...new Set(dishes.map((dish) => dish.starch).filter((family) => family !== "NONE"))];
  /** The shortest morning a dish may be finished in, minutes before its box is packed. */
  const shortest = new Map<string, number>();
  for (const { dishes: here, day } of places) {
    const items = day.breaks.reduce((sum, pause) => sum + pause.slots.length, 0);
    const minutes = (morningMinutes(brief.sessions, day) ?? 0) - packMinutesPerBox(items);
    for (const { derived } of here) {
      shortest.set(derived.dish.key, Math.min(minutes, shortest.get(derived.dish.key) ?? minutes));
    }
  }
  const maySplit = (dish: Dish): boolean => dates.some((date) => canFinishEveningBefore(brief.sessions, dish, date));
  const allWindows = input.bases.map((key) => {
    const base = index.base(key);
    return base === undefined ? [] : windowsOf(brief, index, base, windows, input.elsewhere);
  });
  const isMorning = (window: number): boolean => windows[window]?.session.kind === "MORNING";
  const morningOnly = new Set(
    input.bases.filter(
      (_, b) => (allWindows[b] ?? []).length > 0 && (allWindows[b] ?? []).every(({ window }) => isMorning(window)),
    ),
  );
  const splits = new Set(
    dishes
      .filter((dish) => maySplit(dish) && !dish.bases.some((use) => morningOnly.has(use.base)))
      .map((dish) => dish.key),
  );
  /** Judged as cold when it leaves, and something in it is cooked: then it is cooked the evening before. */
  const cooksEarly = new Set(
    places.flatMap(({ dishes: here }) =>
      here
        .filter(
          ({ holding }) =>
            holding.case === "CHILLED" || holding.case === "REHEATED_AT_SCHOOL" || holding.forecast?.start === "COLD",
        )
        .filter(({ derived }) => comesHotOutOf(derived.dish, "EVENING"))
        .map(({ derived }) => derived.dish.key),
    ),
  );
  const load = (dish: Dish, part: FinishPart): FinishLoad => {
    const minutes = finishLoad(dish, part, brief.children.length);
    return {
      fixed: tenths(minutes.fixed),
      perPortion: tenths(minutes.perPortion),
      equipment: equipment.map((kind) => tenths(minutes.equipment.find((use) => use.kind === kind)?.minutes ?? 0)),
      portionsPerGo: minutes.portionsPerGo,
    };
  };
  return {
    dishes: dishes.map((dish): ProblemDish => {
      const main = dish.slots.includes("MAIN");
      const split = splits.has(dish.key);
      const morning = load(dish, "ALL");
      return {
        main,
        repeatMax: main ? 1 : 2,
        starch: main ? starches.indexOf(dish.starch) : -1,
        morning:
          cooksEarly.has(dish.key) || (split && chainMinutes(dish, "ALL") > (shortest.get(dish.key) ?? 0))
            ? { ...morning, fixed: NEVER }
            : morning,
        split: split ? { evening: load(dish, "EVENING"), morning: load(dish, "MORNING_REST") } : null,
      };
    }),
    bases: input.bases.map((key, b): ProblemBase => {
      const base = index.base(key);
      if (base === undefined) throw new Error(`no base ${key} in the catalogue`);
      const feedsEvening = dishes.some((dish) => splits.has(dish.key) && dish.bases.some((use) => use.base === key));
      const one = baseMinutes(base, 1, brief.household.equipment);
      return {
        fixed: tenths(base.fixedHandsOnMinutes),
        perBatch: tenths(base.perBatchHandsOnMinutes),
        batchAmount: Math.floor(base.batchGrams) * UNITS_PER_GRAM,
        maxBatches: base.maxBatches,
        equipment: equipment.map((kind) =>
          tenths(
            one.equipment.filter((use) => use.kind === kind).reduce((sum, use) => sum + use.units * use.minutes, 0),
          ),
        ),
        windows: (allWindows[b] ?? []).filter(({ window }) => !feedsEvening || !isMorning(window)),
        wastePerThousand: wishes.sparePerTenGrams,
        storageMl: base.storageMl,
      };
    }),
  };
}

/** Where a base can be made: a session of a kind it allows, long enough for one batch, whose product is still good on a school day. */
function windowsOf(
  brief: WeekBrief,
  index: CatalogueIndex,
  base: Base,
  windows: readonly WindowRow[],
  elsewhere: ReadonlySet<string>,
): ProblemBase["windows"][number][] {
  const one = baseMinutes(base, 1, brief.household.equipment);
  return windows.flatMap(({ session, serves }, window) => {
    const days = serves(base);
    const lacks =
      missingKind(brief, index, base, session) !== null ||
      base.equipment.some((use) => use.units > unitsIn(brief, session, use.kind));
    const fits = one.handsOn <= session.handsOnMinutes && one.handsOn + one.passive <= session.elapsedMinutes;
    // Cooked that morning it would still be hot when the box is closed.
    const hot = session.kind === "MORNING" && isCooked(base);
    if (elsewhere.has(`${base.key}@${session.key}`)) return [];
    return days === null || lacks || !fits || hot || !base.windows.includes(session.kind) ? [] : [{ window, ...days }];
  });
}

function listReady(
  brief: WeekBrief,
  index: CatalogueIndex,
  dates: readonly string[],
  baseNumber: ReadonlyMap<string, number>,
): { supply: ReadySupply; source: ReadySource }[] {
  const row = (key: string, grams: number, first: string, last: string, source: ReadySource) => {
    const base = baseNumber.get(key);
    const firstDay = dates.findIndex((date) => date >= first);
    const lastDay = dates.findLastIndex((date) => date <= last);
    if (base === undefined || firstDay < 0 || lastDay < firstDay) return [];
    return [{ supply: { base, amount: Math.floor(grams) * UNITS_PER_GRAM, firstDay, lastDay }, source }];
  };
  // Of what lasts the whole week, too, the first to spoil comes first, and what thaws comes last.
  const inOrder = brief.ready
    .map((ready, r) => ({ ...ready, r }))
    .sort((a, b) =>
      a.lastDate === b.lastDate
        ? Number(a.from === "FREEZER") - Number(b.from === "FREEZER") || a.r - b.r
        : a.lastDate < b.lastDate
          ? -1
          : 1,
    );
  return [
    ...inOrder.flatMap(({ base, grams, firstDate, lastDate, r }) =>
      row(base, grams, firstDate, lastDate, { kind: "READY", index: r }),
    ),
    ...brief.made.flatMap((made, m) => {
      const base = index.base(made.base);
      const session = brief.sessions.find((candidate) => candidate.key === made.session);
      if (base === undefined || session === undefined) return [];
      const first = session.kind === "EVENING" ? addDays(session.date, 1) : session.date;
      const last = addDays(first, base.keepsChilledDays - 1);
      const ready = dates.find((date) => date >= first && hasStoodByMorning(brief.sessions, base, session, date));
      if (ready === undefined) return [];
      return row(made.base, made.batches * Math.floor(base.batchGrams), ready, last, { kind: "MADE", index: m });
    }),
  ];
}

type AddBand = (
  meaning: RowMeaning,
  measure: Measure,
  positions: readonly number[],
  lo: number | null,
  hi: number | null,
) => void;

/** Energy of the day, space in the box, one dish in the flask. */
function boundBoxes(
  boxes: readonly BoxPlaces[],
  places: readonly PlaceCandidates[],
  tightening: Tightening,
  addBand: AddBand,
): void {
  const kcal: Measure = (dish) => Math.round(energy.read(dish));
  const volume: Measure = (dish) => (dish.inFlask ? 0 : dish.volumeMl);
  const wetVolume: Measure = (dish) => (dish.inFlask || dish.derived.dish.spill !== "WET" ? 0 : dish.volumeMl);
  const flask: Measure = (dish) => (dish.inFlask ? 1 : 0);
  const larger = new Map<string, Measure>();
  /** Whether a dish takes more than `ml`, so that a compartment holds few of its size; or how much it then takes. */
  const largerThan = (ml: number, wet: boolean, inMl: boolean): Measure => {
    const key = `${ml}/${wet}/${inMl}`;
    const of = wet ? wetVolume : volume;
    const measure: Measure =
      larger.get(key) ??
      ((dish, place) => {
        const taken = of(dish, place);
        return taken <= ml ? 0 : inMl ? taken : 1;
      });
    larger.set(key, measure);
    return measure;
  };
  for (const { child, date, positions, hasMain, share } of boxes) {
    const [first] = positions;
    const place = first === undefined ? undefined : places[first];
    if (place === undefined) continue;
    const at = { childId: child.id, date };
    const wished = place.needs.energyKcal * child.appetite * share;
    // What the school gives is inside the band. A break for a fruit keeps room for the fruit beside the milk.
    const given = hasMain ? place.given.of("ENERC_KCAL") : 0;
    // Half a unit of rounding per item stays outside the band.
    const rounding = positions.length / 2;
    const least = hasMain ? Math.max(0, Math.ceil(energyBand.least * wished - given + rounding)) : null;
    const most = Math.max(0, Math.floor(energyBand.most * wished - given - rounding));
    addBand({ kind: "ENERGY", ...at }, kcal, positions, least, most);
    addBand({ kind: "BOX_SPACE", ...at }, flask, positions, null, 1);
    const space: RowMeaning = { kind: "BOX_SPACE", ...at };
    for (const wet of [false, true]) {
      const compartments = child.box.compartments.filter((compartment) => !wet || compartment.leakProof);
      const total = compartments.reduce((sum, compartment) => sum + compartment.ml, 0);
      const most = wet ? total : Math.min(total, tightening.boxMl.get(`${child.id}@${date}`) ?? total);
      addBand(space, wet ? wetVolume : volume, positions, null, most);
      const sizes = new Set(compartments.flatMap(({ ml }) => [ml, Math.floor(ml / 2)]));
      for (const size of sizes) {
        const fit = compartments.reduce((sum, { ml }) => sum + Math.floor(ml / (size + 1)), 0);
        if (fit < positions.length) addBand(space, largerThan(size, wet, false), positions, null, fit);
        // What is too large for the smaller compartments has to share the larger ones.
        const room = compartments.reduce((sum, { ml }) => sum + (ml > size ? ml : 0), 0);
        if (fit > 1 && room < total) addBand(space, largerThan(size, wet, true), positions, null, room);
      }
    }
  }
}

const needMeasures = new Map<string, Measure>(
  needFigures.map(({ name, figure }) => [name, (dish) => Math.round(figure.read(dish) * figure.scale)]),
);
const measureOf = (name: string): Measure => needMeasures.get(name) ?? (() => 0);

/** What the school gives that day of what a figure counts, in the nutrient's own unit. */
const givenOf = ({ nutrient }: Figure, { given }: PlaceCandidates): number =>
  nutrient === "FREE_SUGAR" ? given.freeSugarGrams : given.of(nutrient);

/**
 * Each day's protein, saturated fat and sodium, wide of the daily figure's share by the hard factor; what the school gives
 * counts like what is packed.
 */
function boundNeeds(boxes: readonly BoxPlaces[], places: readonly PlaceCandidates[], addBand: AddBand): void {
  for (const { child, date, positions, hasMain, share } of boxes) {
    const [first] = positions;
    const place = first === undefined ? undefined : places[first];
    if (place === undefined || !hasMain) continue;
    for (const { name, figure, direction, hard, daily } of needFigures) {
      if (!hard) continue;
      const wished = daily(place) * share * figure.scale;
      const given = givenOf(figure, place) * figure.scale;
      const meaning: RowMeaning = { kind: "NUTRIENT", nutrient: figure.nutrient, childId: child.id, date };
      const least = Math.max(0, Math.floor(wished / hardFactor - given));
      const most = Math.max(0, Math.ceil(wished * hardFactor - given));
      if (direction === 1) addBand(meaning, measureOf(name), positions, least, null);
      else addBand(meaning, measureOf(name), positions, null, most);
    }
  }
}

/** A child's week against the boxes' share of its daily needs, less what the school gives. */
function aimForNeeds(
  brief: WeekBrief,
  places: readonly PlaceCandidates[],
  boxes: readonly BoxPlaces[],
  measures: Measures,
): (WeekTarget & { weight: number })[] {
  return brief.children.flatMap((child) => {
    const own = boxes.filter((box) => box.child === child);
    const positions = own.flatMap((box) => box.positions);
    return needFigures.flatMap(({ name, figure, direction, daily }) => {
      const total = own.reduce((sum, { positions: [first], share }) => {
        const place = first === undefined ? undefined : places[first];
        return place === undefined ? sum : sum + daily(place) * share - givenOf(figure, place);
      }, 0);
      const rest = Math.round(total * figure.scale);
      // A minimum that is met already asks for nothing; a maximum that is used up still holds against every item.
      const target = direction === -1 && own.length > 0 ? Math.max(1, rest) : rest;
      if (target <= 0) return [];
      const measure = measures.number(measureOf(name), positions);
      return [{ nutrient: figure.nutrient, direction, measure, positions, target, weight: wishes.nutrients[name] }];
    });
  });
}

/** Whole points of a dish at a place, by wish. */
function priceDishes(brief: WeekBrief) {
  const eaten = new Map<string, number>();
  const remembered = new Set(brief.history.map((row) => row.childId));
  for (const { childId, date, dish } of brief.history) {
    const back = daysBetween(date, brief.weekStart);
    if (back <= 0) continue;
    const points = back <= 7 ? wishes.monotony.eatenLastWeek : wishes.monotony.eatenWeekBefore;
    eaten.set(`${childId}/${dish}`, (eaten.get(`${childId}/${dish}`) ?? 0) + points);
  }
  const refusal = ({ derived }: CandidateDish, { child }: PlaceCandidates): number => {
    if (child.dislikes.includes(derived.dish.key)) return wishes.refusal.dislikedDish;
    const disliked = derived.ingredients.some(({ food }) => child.dislikes.includes(food.kind));
    return disliked ? wishes.refusal.dislikedKind : 0;
  };
  const monotony = ({ derived }: CandidateDish, { child }: PlaceCandidates): number =>
    eaten.get(`${child.id}/${derived.dish.key}`) ?? 0;
  const newness = ({ derived }: CandidateDish, { child, place }: PlaceCandidates): number => {
    if (!remembered.has(child.id) || eaten.has(`${child.id}/${derived.dish.key}`)) return 0;
    return place.slot === "MAIN" ? wishes.newness.newMain : wishes.newness.newSide;
  };
  // Each portion by itself: the search finds out which of them the leftover is enough for.
  const leftover = ({ derived, portion }: CandidateDish, { place }: PlaceCandidates): number =>
    derived.dish.bases.reduce((sum, use) => {
      const there = brief.ready.reduce(
        (grams, { base, from, grams: left, firstDate, lastDate }) =>
          base === use.base && from === "LEFTOVER" && firstDate <= place.date && place.date <= lastDate
            ? grams + left
            : grams,
        0,
      );
      return sum + (Math.min(use.grams * portion.scale, there) / 10) * wishes.leftoverPerTenGrams;
    }, 0);
  const total = (dish: CandidateDish, place: PlaceCandidates): number => {
    const cost = dish.derived.costMinor * dish.portion.scale * wishes.costPerMinorUnit;
    const treat = dish.derived.dish.treat ? (wishes.treat[place.day.weekday] ?? 0) : 0;
    const advice = dish.advised.length * wishes.itemAgainstAdvice;
    const eatsUp = leftover(dish, place);
    return Math.round(
      refusal(dish, place) + monotony(dish, place) + newness(dish, place) + cost + treat + advice + eatsUp,
    );
  };
  return { refusal, monotony, total };
}

function stayClose(
  brief: WeekBrief,
  places: readonly PlaceCandidates[],
  dishNumber: ReadonlyMap<string, number>,
): Problem["stayClose"] {
  if (brief.stayCloseTo.length === 0) return null;
  const agreed = new Map(brief.stayCloseTo.map((row) => [placeKey(row), row.dish]));
  return {
    dishAt: places.map(({ place }) => dishNumber.get(agreed.get(placeKey(place)) ?? "") ?? -1),
    pointsPerBox: wishes.distance.changedBox,
    pointsPerItem: wishes.distance.changedItem,
  };
}

const placeKey = (place: { childId: string; date: string; breakKey: string; position: number }): string =>
  `${place.childId}/${place.date}/${place.breakKey}/${place.position}`;
