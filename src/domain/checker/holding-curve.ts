/**
 * The checker's own account of heat and growth. It takes the same figures of the reference table and solves the same balance in
 * closed form, where the planner takes steps; growth by Simpson's rule, the lag in closed form and no maximum.
 */
import type { FoodGroup } from "../../../shared/codes.js";
import type { GrowthModel, HoldingModel, Organism } from "../../../shared/holding-model.js";
import type { Part } from "./week-read.js";

type Figures = HoldingModel["parameters"];
/** °C after so many minutes. */
type Curve = (minute: number) => number;

export type Carried =
  | { readonly way: "CHILLED"; readonly coldSources: number; readonly hotDay: boolean }
  | { readonly way: "COLD"; readonly hotDay: boolean }
  | { readonly way: "WARM" }
  | { readonly way: "FLASK" };

const perMinute = (watts: number, joulesPerKelvin: number): number => (60 * watts) / joulesPerKelvin;

/** A body that drifts towards a temperature. */
const drift =
  (from: number, to: number, rate: number): Curve =>
  (minute) =>
    to - (to - from) * Math.exp(-rate * minute);

/**
 * J/K of an item: water at 4.18 kJ/kg K, protein and fat at 2.0, whatever else is in it at 1.55. Food without a full analysis
 * has the least the table allows; what a recipe weighs more than is served was water that boiled away.
 */
export function heldHeat(figures: Figures, parts: readonly Part[], servedGrams: number): number {
  const ofOne = ({ food: { nutrients: n } }: Part): number => {
    if (n.WATER === undefined || n.PROCNT === undefined || n.FAT === undefined || n.CHOCDF === undefined)
      return figures.leastKilojoulesPerKgKelvin;
    const rest = Math.max(0, 100 - n.WATER - n.PROCNT - n.FAT);
    return (4.18 * n.WATER + 2 * (n.PROCNT + n.FAT) + 1.55 * rest) / 100;
  };
  const weighed = parts.reduce((sum, part) => sum + part.grams, 0);
  const all = parts.reduce((sum, part) => sum + part.grams * ofOne(part), 0);
  return Math.max(
    all - figures.waterKilojoulesPerKgKelvin * Math.max(0, weighed - servedGrams),
    figures.leastKilojoulesPerKgKelvin * servedGrams,
  );
}

/** Food beside packs: an exponential while there is ice, then two bodies that warm together. */
function besidePacks(figures: Figures, packs: number, room: number, food: number): Curve {
  const touch = packs * figures.coldSourceContactWattsPerKelvin;
  const through = packs * figures.coldSourceWallWattsPerKelvin;
  const bag = figures.insulatedBagWattsPerKelvin;
  const water = packs * figures.coldSourceGrams * figures.waterKilojoulesPerKgKelvin;
  const store =
    packs * figures.coldSourceGrams * figures.frozenShare * figures.latentKilojoulesPerKg -
    figures.neighbourGrams * figures.neighbourKilojoulesPerKgKelvin * figures.kitchenCelsius;
  const start = figures.chilledStartCelsius;
  // While there is ice.
  const rate = perMinute(bag + touch, food);
  const steady = (bag * room) / (bag + touch);
  const iced = drift(start, steady, rate);
  /** J that have gone into the ice after so many minutes. */
  const taken = (minute: number): number =>
    60 *
    (touch * (steady * minute + ((start - steady) * (1 - Math.exp(-rate * minute))) / rate) + through * room * minute);
  let gone = 0;
  let packCelsius = 0;
  if (store <= 0) packCelsius = Math.min(room, -store / water);
  else {
    let early = 0;
    let late = 1;
    while (taken(late) < store) late *= 2;
    for (let halving = 0; halving < 50; halving += 1) {
      const middle = (early + late) / 2;
      if (taken(middle) < store) early = middle;
      else late = middle;
    }
    gone = late;
  }
  // After it: f' = -a f + b p, p' = c f - d p, both counted from the room.
  const a = perMinute(bag + touch, food);
  const b = perMinute(touch, food);
  const c = perMinute(touch, water);
  const d = perMinute(touch + through, water);
  const spread = Math.sqrt((a - d) ** 2 + 4 * b * c);
  const slow = (-(a + d) + spread) / 2;
  const fast = (-(a + d) - spread) / 2;
  const foodThen = iced(gone) - room;
  const change = -a * foodThen + b * (packCelsius - room);
  const slowPart = (change - fast * foodThen) / (slow - fast);
  const fastPart = foodThen - slowPart;
  return (minute) =>
    minute <= gone
      ? iced(minute)
      : room + slowPart * Math.exp(slow * (minute - gone)) + fastPart * Math.exp(fast * (minute - gone));
}

/** @param food J/K of the item */
export function carriedCurve(figures: Figures, carried: Carried, food: number): Curve {
  switch (carried.way) {
    case "CHILLED":
      return besidePacks(
        figures,
        carried.coldSources,
        carried.hotDay ? figures.hotDayCelsius : figures.ambientCelsius,
        food,
      );
    case "COLD":
      return drift(
        figures.chilledStartCelsius,
        carried.hotDay ? figures.hotDayCelsius : figures.ambientCelsius,
        perMinute(figures.plainBagWattsPerKelvin, food),
      );
    case "WARM":
      return drift(
        figures.warmStartCelsius,
        figures.ambientCelsius,
        perMinute(figures.insulatedBagWattsPerKelvin, figures.warmContentJoulesPerKelvin),
      );
    case "FLASK":
      return drift(figures.flaskStartCelsius, figures.coolRoomCelsius, perMinute(figures.flaskWattsPerKelvin, food));
  }
}

/** Natural-log units of growth per minute. */
function speed(model: GrowthModel, celsius: number): number {
  const t = Math.min(celsius, model.toCelsius);
  if (t <= model.fromCelsius || t <= model.leastCelsius) return 0;
  let inItsUnit: number;
  if (model.shape === "SQUARE_ROOT") {
    const root = model.factor * (t - model.leastCelsius);
    inItsUnit = root * root;
  } else if (t >= model.mostCelsius) inItsUnit = 0;
  else if (model.shape === "SQUARE_WITH_UPPER_END") {
    const below = t - model.leastCelsius;
    inItsUnit = -model.factor * below * below * Math.expm1(model.upperFactor * (t - model.mostCelsius));
  } else {
    const { leastCelsius: min, optimumCelsius: opt, mostCelsius: max } = model;
    const numerator = (max - t) * (t - min) * (t - min);
    const denominator = (opt - min) * ((opt - max) * (opt + min - 2 * t) - (opt - min) * (t - opt));
    inItsUnit = (model.optimumRate * numerator) / denominator;
  }
  const lnPerHour = { LN_PER_HOUR: 1, LOG10_PER_HOUR: Math.log(10), LOG10_PER_DAY: Math.log(10) / 24 }[model.rate];
  return (inItsUnit * lnPerHour) / 60;
}

const fastest = (organism: Organism, celsius: number): number =>
  Math.max(...organism.models.map((model) => speed(model, celsius)));

/** Those that may grow in these foods: looked for in a group that is there, and not held down by the worst acid or dryness. */
export function growsIn(model: HoldingModel, parts: readonly Part[]): Organism[] {
  let wettest = 0;
  let leastAcid = 0;
  const groups = new Set<FoodGroup>();
  for (const { food } of parts) {
    groups.add(food.group);
    wettest = Math.max(wettest, food.waterActivity === null ? 1 : food.waterActivity.value);
    leastAcid = Math.max(leastAcid, food.ph === null ? 14 : food.ph.value);
  }
  return model.organisms.filter(
    ({ groups: sought, leastPh, leastWaterActivity }) =>
      leastAcid >= leastPh && wettest >= leastWaterActivity && (!sought || sought.some((group) => groups.has(group))),
  );
}

export interface OwnAnswer {
  /** Last whole minute of the curve at which all is within the limits, up to the minutes asked about. */
  readonly goodUntil: number;
  /** log10 of the organism that has grown most, by minute from 0. */
  readonly grown: readonly number[];
  /** Warmest so far, by minute from 0. */
  readonly warmest: readonly number[];
}

/** Heat and growth minute by minute over the minutes asked about. */
export function followItem(
  model: HoldingModel,
  carried: Carried,
  food: number,
  organisms: readonly Organism[],
  minutes: number,
): OwnAnswer {
  const figures = model.parameters;
  const at = carriedCurve(figures, carried, food);
  const flask = carried.way === "FLASK";
  const living = organisms.filter((organism) => !flask || organism.sporesSurviveCooking);
  const halves = Array.from({ length: 2 * minutes + 1 }, (_, half) => at(half / 2));
  const speeds = living.map((organism) => halves.map((celsius) => fastest(organism, celsius)));
  const work = living.map(() => 0);
  const lags = living.map(({ models }) => (flask ? (models.find((row) => row.lagWork !== null)?.lagWork ?? 0) : 0));
  const grown = [0];
  const warmest = [at(0)];
  let exposed = 0;
  let goodUntil = 0;
  let good = true;
  for (let minute = 1; minute <= minutes; minute += 1) {
    const middle = 2 * minute - 1;
    let most = 0;
    speeds.forEach((speedAt, i) => {
      const panel = ((speedAt[middle - 1] ?? 0) + 4 * (speedAt[middle] ?? 0) + (speedAt[middle + 1] ?? 0)) / 6;
      work[i] = (work[i] ?? 0) + panel;
      // With q0 = 1 / (e^h0 - 1), the share q0 / (1 + q0) of the cells that grow at once is e^-h0.
      most = Math.max(most, Math.log1p(Math.exp(-(lags[i] ?? 0)) * Math.expm1(work[i])) / Math.LN10);
    });
    grown.push(most);
    warmest.push(Math.max(warmest[minute - 1] ?? 0, halves[middle + 1] ?? 0));
    const celsius = halves[middle] ?? 0;
    if (celsius < figures.exposureBelowCelsius && (flask || celsius > figures.exposureAboveCelsius)) exposed += 1;
    good = good && most <= figures.allowedGrowthLog10 && exposed <= figures.exposureMinutes;
    if (good) goodUntil = minute;
  }
  return { goodUntil, grown, warmest };
}
