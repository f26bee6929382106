/** What the holding model expects of an item: how warm it gets, what grows, and the minute at which the model's limit is reached. */
import type { HoldingModel, Organism } from "../../../shared/holding-model.js";
import type { DerivedDish } from "../catalogue/derive.js";
import type { HoldingForecast } from "../week.js";
import { growAlong, organismRate } from "./growth.js";
import { specificHeat, temperatureCurve, type HeatSituation } from "./heat-balance.js";

/** The longest the model looks ahead; no time rule is longer than 4 hours. */
const HORIZON_MINUTES = 300;
/** Where growth starts matters only near the maximum; the USDA worked output begins here too, log10 CFU/g. */
const START_LOG10 = 2;

/** What of a dish the model asks for. */
export interface DishTraits {
  /** J/K per gram served. */
  readonly joulesPerGramKelvin: number;
  /** Those that may grow in it, in the model's order. */
  readonly organisms: readonly Organism[];
}

/** The worst corner of a mixture: the highest water activity with the highest pH of its parts; unknown is 1 and 14. */
export function worstCorner(derived: DerivedDish): { readonly waterActivity: number; readonly ph: number } {
  return {
    waterActivity: Math.max(...derived.ingredients.map(({ food }) => food.waterActivity?.value ?? 1)),
    ph: Math.max(...derived.ingredients.map(({ food }) => food.ph?.value ?? 14)),
  };
}

/** Choi and Okos by ingredient at 20 °C; what has no composition counts with the model's least; what cooked away was water. */
function heatPerGram(model: HoldingModel, derived: DerivedDish): number {
  const { leastKilojoulesPerKgKelvin: least, waterKilojoulesPerKgKelvin } = model.parameters;
  let joulesPerKelvin = 0;
  let grams = 0;
  for (const { food, grams: mass } of derived.ingredients) {
    const { WATER, PROCNT, FAT, CHOCDF, FIBTG = 0 } = food.nutrients;
    const known = WATER !== undefined && PROCNT !== undefined && FAT !== undefined && CHOCDF !== undefined;
    const specific = known
      ? specificHeat(
          {
            water: WATER / 100,
            protein: PROCNT / 100,
            fat: FAT / 100,
            carbohydrate: Math.max(0, CHOCDF - FIBTG) / 100,
            fibre: FIBTG / 100,
            ash: Math.max(0, 100 - WATER - PROCNT - FAT - CHOCDF) / 100,
          },
          20,
        )
      : least;
    joulesPerKelvin += mass * specific;
    grams += mass;
  }
  const steamed = Math.max(0, grams - derived.grams);
  return Math.max(least, (joulesPerKelvin - steamed * waterKilojoulesPerKgKelvin) / derived.grams);
}

const traits = new WeakMap<HoldingModel, WeakMap<DerivedDish, DishTraits>>();

/** Derived once per dish. */
export function traitsOf(model: HoldingModel, derived: DerivedDish): DishTraits {
  const ofModel = traits.get(model) ?? new WeakMap<DerivedDish, DishTraits>();
  traits.set(model, ofModel);
  const known = ofModel.get(derived);
  if (known !== undefined) return known;
  const { waterActivity, ph } = worstCorner(derived);
  const groups = new Set(derived.ingredients.map(({ food }) => food.group));
  const found: DishTraits = {
    joulesPerGramKelvin: heatPerGram(model, derived),
    organisms: model.organisms.filter(
      (organism) =>
        (organism.groups === null || organism.groups.some((group) => groups.has(group))) &&
        waterActivity >= organism.leastWaterActivity &&
        ph >= organism.leastPh,
    ),
  };
  ofModel.set(derived, found);
  return found;
}

interface Course {
  readonly celsius: Float64Array;
  /** Warmest so far. */
  readonly warmest: Float64Array;
  /** By organism code: log10 above the start, and the last point at which that is allowed. */
  readonly grown: ReadonlyMap<string, { readonly log10: Float64Array; readonly lastGood: number }>;
  /** The last point at which the exposure is allowed. */
  readonly lastExposed: number;
}

const courses = new WeakMap<HoldingModel, Map<string, Course>>();

/** Spores of what was heated through in the flask start with their lag; every other growth begins at once. */
const growsFrom = (organism: Organism, situation: HeatSituation) => {
  const model = organism.models.find(({ lagWork }) => lagWork !== null);
  return situation.start === "FLASK" && model !== undefined
    ? { log10: START_LOG10, lagWork: model.lagWork, mostLog10: model.mostLog10 }
    : { log10: START_LOG10, lagWork: null, mostLog10: null };
};

/** Temperatures and growth of a situation, worked out once: boxes of a week share a handful of situations. */
function courseOf(model: HoldingModel, situation: HeatSituation): Course {
  const ofModel = courses.get(model) ?? new Map<string, Course>();
  courses.set(model, ofModel);
  const key = [situation.start, situation.coldSources, situation.hotDay, situation.joulesPerKelvin].join("/");
  const known = ofModel.get(key);
  if (known !== undefined) return known;
  const { stepMinutes, exposureAboveCelsius, exposureBelowCelsius, exposureMinutes, allowedGrowthLog10 } =
    model.parameters;
  const celsius = temperatureCurve(model, situation, HORIZON_MINUTES);
  const warmest = celsius.slice();
  let exposed = 0;
  let lastExposed = celsius.length - 1;
  for (let at = 1; at < celsius.length; at += 1) {
    warmest[at] = Math.max(warmest[at - 1] ?? 0, celsius[at] ?? 0);
    const mean = ((celsius[at - 1] ?? 0) + (celsius[at] ?? 0)) / 2;
    // Once a flask is no longer hot its time runs, however cold it gets: it must not pass for having cooled fast.
    const counts = mean < exposureBelowCelsius && (situation.start === "FLASK" || mean > exposureAboveCelsius);
    if (counts) exposed += stepMinutes;
    if (exposed > exposureMinutes) lastExposed = Math.min(lastExposed, at - 1);
  }
  const grown = new Map(
    model.organisms
      // What was just heated through holds no living cells, only spores.
      .filter(({ sporesSurviveCooking }) => situation.start !== "FLASK" || sporesSurviveCooking)
      .map((organism) => {
        const rates = celsius.map((at) => organismRate(organism, at));
        const log10 = growAlong(rates, stepMinutes / 60, growsFrom(organism, situation));
        const over = log10.findIndex((value) => value > allowedGrowthLog10);
        return [organism.code, { log10, lastGood: over < 0 ? celsius.length - 1 : over - 1 }];
      }),
  );
  const course = { celsius, warmest, grown, lastExposed };
  ofModel.set(key, course);
  return course;
}

export interface ForecastInput {
  readonly start: HeatSituation["start"];
  readonly coldSources: number;
  readonly hotDay: boolean;
  /** Served grams of the item. */
  readonly grams: number;
  readonly traits: DishTraits;
  /** Minutes from leaving home to the end of the break. */
  readonly minutes: number;
  /** Minutes the curve began before leaving: warm food is out of the heat since it was cooked. */
  readonly minutesBefore: number;
}

export interface ModelAnswer {
  /** The whole minutes from leaving at which the model's limit is reached, 0 at the least; not above the horizon. */
  readonly limitMinutes: number;
  readonly limitedBy: "GROWTH" | "EXPOSURE";
  readonly forecast: Omit<HoldingForecast, "limitedBy" | "mend">;
}

/** Rounded so that what is printed is never better than what was worked out. */
const roundUp = (value: number, digits: number): number =>
  Math.max(0, Math.ceil(value * 10 ** digits - 1e-6)) / 10 ** digits;

function heatSituation(model: HoldingModel, input: ForecastInput): HeatSituation {
  const steps = model.heatCapacityStepsJoulesPerKelvin;
  const own = input.grams * input.traits.joulesPerGramKelvin;
  return {
    start: input.start,
    coldSources: input.start === "CHILLED" ? input.coldSources : 0,
    // Hot food is worse off in the cooler room: it comes down sooner to where things grow.
    hotDay: input.hotDay && (input.start === "CHILLED" || input.start === "COLD"),
    joulesPerKelvin:
      input.start === "WARM"
        ? model.parameters.warmContentJoulesPerKelvin
        : steps.reduce((best, step) => (step <= own ? step : best), steps[0] ?? own),
  };
}

/** What the model says of an item carried one way. */
export function forecastHolding(model: HoldingModel, input: ForecastInput): ModelAnswer {
  const { stepMinutes } = model.parameters;
  const situation = heatSituation(model, input);
  const course = courseOf(model, situation);
  const at = Math.min(course.celsius.length - 1, Math.ceil((input.minutesBefore + input.minutes) / stepMinutes));
  let lastGrown = course.celsius.length - 1;
  let organism: HoldingForecast["organism"] = null;
  let growth = 0;
  for (const { code } of input.traits.organisms) {
    const grown = course.grown.get(code);
    if (grown === undefined) continue;
    lastGrown = Math.min(lastGrown, grown.lastGood);
    const log10 = grown.log10[at] ?? 0;
    if (log10 > growth) [organism, growth] = [code, log10];
  }
  const last = Math.min(lastGrown, course.lastExposed);
  return {
    limitMinutes: Math.max(0, Math.floor(last * stepMinutes) - input.minutesBefore),
    limitedBy: course.lastExposed < lastGrown ? "EXPOSURE" : "GROWTH",
    forecast: {
      start: situation.start,
      coldSources: situation.coldSources,
      hotDay: situation.hotDay,
      joulesPerKelvin: situation.joulesPerKelvin,
      minutesBefore: input.minutesBefore,
      mostCelsius: roundUp(course.warmest[at] ?? 0, 1),
      endCelsius: Math.round((course.celsius[at] ?? 0) * 10) / 10,
      growthLog10: roundUp(growth, 3),
      organism,
    },
  };
}

export interface HoldingPoint {
  /** From leaving home. */
  readonly minute: number;
  readonly celsius: number;
  /** Growth of the governing organism since the curve began, log10. */
  readonly log10: number;
}

/**
 * The curve behind a stored forecast, for a plot: a point every `everyMinutes` and one at the end of the break.
 * @param minutes from leaving home to the end of the break
 */
export function holdingCurve(
  model: HoldingModel,
  forecast: Omit<HoldingForecast, "limitedBy" | "mend">,
  minutes: number,
  everyMinutes = 15,
): HoldingPoint[] {
  const course = courseOf(model, forecast);
  const grown = forecast.organism === null ? undefined : course.grown.get(forecast.organism);
  const clock: number[] = [];
  for (let minute = 0; minute < minutes; minute += everyMinutes) clock.push(minute);
  clock.push(minutes);
  return clock.map((minute) => {
    const at = Math.min(
      course.celsius.length - 1,
      Math.round((forecast.minutesBefore + minute) / model.parameters.stepMinutes),
    );
    return {
      minute,
      celsius: Math.round((course.celsius[at] ?? 0) * 10) / 10,
      log10: roundUp(grown?.log10[at] ?? 0, 3),
    };
  });
}
