/** Heat: what a food takes up per degree, and how warm it gets in a bag with cold sources or in a flask. */
import type { HoldingModel } from "../../../shared/holding-model.js";

export interface Composition {
  /** Parts of the mass, 0 to 1. */
  readonly water: number;
  readonly protein: number;
  readonly fat: number;
  /** Without fibre. */
  readonly carbohydrate: number;
  readonly fibre: number;
  readonly ash: number;
}

/** Choi and Okos 1986, kJ/kg K: constant, per °C, per °C squared. */
const choiOkos: Readonly<Record<keyof Composition, readonly [number, number, number]>> = {
  water: [4.1762, -9.0864e-5, 5.4731e-6],
  protein: [2.0082, 1.2089e-3, -1.3129e-6],
  fat: [1.9842, 1.4733e-3, -4.8008e-6],
  carbohydrate: [1.5488, 1.9625e-3, -5.9399e-6],
  fibre: [1.8459, 1.8306e-3, -4.6509e-6],
  ash: [1.0926, 1.8896e-3, -3.6817e-6],
};

/** Specific heat above freezing by Choi and Okos 1986, kJ/kg K, at a temperature in °C. */
export function specificHeat(composition: Composition, celsius: number): number {
  return Object.entries(choiOkos).reduce(
    (sum, [part, [a, b, c]]) => sum + composition[part as keyof Composition] * (a + b * celsius + c * celsius ** 2),
    0,
  );
}

/**
 * How the curve begins: chilled beside cold sources; cold without them; warm from that morning's cooking; in the flask.
 */
export type HeatStart = "CHILLED" | "COLD" | "WARM" | "FLASK";

export interface HeatSituation {
  readonly start: HeatStart;
  /** In the bag; counts for CHILLED only. */
  readonly coldSources: number;
  /** A day above the hot-day temperature of the limits. */
  readonly hotDay: boolean;
  /** Of the item alone, J/K; not used for WARM, where a whole warm box is taken. */
  readonly joulesPerKelvin: number;
}

/** J of ice left when the bag is closed: what froze, less what the neighbours melt. Below 0 the packs are warmer than 0 °C. */
function iceAtStart(p: HoldingModel["parameters"], coldSources: number): number {
  const frozen = coldSources * p.coldSourceGrams * p.frozenShare * p.latentKilojoulesPerKg;
  const melted = p.neighbourGrams * p.neighbourKilojoulesPerKgKelvin * p.kitchenCelsius;
  return frozen - melted;
}

/** One body that loses or takes up heat through one wall: exact at every point. */
function relax(
  from: number,
  towards: number,
  minutes: number,
  joulesPerKelvin: number,
  wattsPerKelvin: number,
): number {
  return towards + (from - towards) * Math.exp((-minutes * 60 * wattsPerKelvin) / joulesPerKelvin);
}

/**
 * Temperature of the food in °C, every `stepMinutes` from the start, the start included. A lumped balance: the food takes the
 * bag's whole leak; cold sources take heat from the food and through the wall, at 0 °C until their ice is gone, then as melted
 * water. Each step solves the food's equation exactly for packs that stay as they are, with the packs at the middle of the
 * step.
 */
export function temperatureCurve(model: HoldingModel, situation: HeatSituation, minutes: number): Float64Array {
  const p = model.parameters;
  const step = p.stepMinutes;
  const points = Math.ceil(minutes / step) + 1;
  const curve = new Float64Array(points);
  const room = situation.hotDay ? p.hotDayCelsius : p.ambientCelsius;
  if (situation.start !== "CHILLED") {
    const own = situation.joulesPerKelvin;
    const alone = {
      COLD: { from: p.chilledStartCelsius, towards: room, holds: own, leaks: p.plainBagWattsPerKelvin },
      WARM: {
        from: p.warmStartCelsius,
        towards: room,
        holds: p.warmContentJoulesPerKelvin,
        leaks: p.insulatedBagWattsPerKelvin,
      },
      FLASK: { from: p.flaskStartCelsius, towards: p.coolRoomCelsius, holds: own, leaks: p.flaskWattsPerKelvin },
    }[situation.start];
    for (let at = 0; at < points; at += 1)
      curve[at] = relax(alone.from, alone.towards, at * step, alone.holds, alone.leaks);
    return curve;
  }
  const bag = p.insulatedBagWattsPerKelvin;
  const contact = situation.coldSources * p.coldSourceContactWattsPerKelvin;
  const wall = situation.coldSources * p.coldSourceWallWattsPerKelvin;
  const packJoulesPerKelvin = situation.coldSources * p.coldSourceGrams * p.waterKilojoulesPerKgKelvin;
  const packCelsius = (ice: number): number => (ice >= 0 ? 0 : Math.min(room, -ice / packJoulesPerKelvin));
  let food = p.chilledStartCelsius;
  let ice = iceAtStart(p, situation.coldSources);
  curve[0] = food;
  const pull = bag + contact;
  for (let at = 1; at < points; at += 1) {
    const towards = (pack: number): number => (bag * room + contact * pack) / pull;
    const now = packCelsius(ice);
    const half = relax(food, towards(now), step / 2, situation.joulesPerKelvin, pull);
    const intoPacks = (pack: number, foodThen: number): number => contact * (foodThen - pack) + wall * (room - pack);
    const middle = packCelsius(ice - intoPacks(now, (food + half) / 2) * step * 30);
    const meanFood = relax(food, towards(middle), step / 2, situation.joulesPerKelvin, pull);
    food = relax(food, towards(middle), step, situation.joulesPerKelvin, pull);
    ice -= intoPacks(middle, meanFood) * step * 60;
    curve[at] = food;
  }
  return curve;
}

/**
 * Whether food this deep in an open container cools in the refrigerator as Food Code 3-501.14 asks: to 21 °C in 2 hours and to
 * 5 °C in 6. One even temperature through the depth, heat out of the upper surface only, food as water.
 * @param depthMm depth of the food in millimetres, above 0
 */
export function coolsInTime(model: HoldingModel, depthMm: number): boolean {
  const p = model.parameters;
  // A millimetre of water is one kilogram per square metre.
  const joulesPerSquareMetreKelvin = depthMm * p.waterKilojoulesPerKgKelvin * 1000;
  const after = (minutes: number): number =>
    relax(
      p.coolingFromCelsius,
      p.refrigeratorCelsius,
      minutes,
      joulesPerSquareMetreKelvin,
      p.openSurfaceWattsPerSquareMetreKelvin,
    );
  return after(p.coolingFirstMinutes) <= p.coolingFirstCelsius && after(p.coolingTotalMinutes) <= p.coolingLastCelsius;
}
