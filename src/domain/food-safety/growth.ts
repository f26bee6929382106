/** How fast the organisms of seeds/reference/holding-model.json grow, and how far along a temperature curve. */
import type { GrowthModel, Organism } from "../../../shared/holding-model.js";

const NEPER_PER_DECADE = Math.LN10;

/** Cardinal temperature model with inflection, Rosso et al. 1993; 0 outside its ends. */
function cardinalRate(model: Extract<GrowthModel, { shape: "CARDINAL" }>, celsius: number): number {
  const { optimumRate, leastCelsius: least, optimumCelsius: optimum, mostCelsius: most } = model;
  if (celsius <= least || celsius >= most) return 0;
  const above = (celsius - most) * (celsius - least) ** 2;
  const below =
    (optimum - least) * ((optimum - least) * (celsius - optimum) - (optimum - most) * (optimum + least - 2 * celsius));
  return (optimumRate * above) / below;
}

/** In the model's own unit. Above its range the rate at the range's upper end is kept. */
function ownRate(model: GrowthModel, celsius: number): number {
  if (celsius <= model.fromCelsius) return 0;
  const at = Math.min(celsius, model.toCelsius);
  switch (model.shape) {
    case "SQUARE_WITH_UPPER_END":
      return Math.max(
        0,
        model.factor * (at - model.leastCelsius) ** 2 * (1 - Math.exp(model.upperFactor * (at - model.mostCelsius))),
      );
    case "SQUARE_ROOT":
      return (model.factor * (at - model.leastCelsius)) ** 2;
    case "CARDINAL":
      return cardinalRate(model, at);
  }
}

/** Specific growth rate, 1/h (natural logarithm), at a temperature in °C. */
export function growthRate(model: GrowthModel, celsius: number): number {
  const rate = ownRate(model, celsius);
  switch (model.rate) {
    case "LN_PER_HOUR":
      return rate;
    case "LOG10_PER_HOUR":
      return rate * NEPER_PER_DECADE;
    case "LOG10_PER_DAY":
      return (rate * NEPER_PER_DECADE) / 24;
  }
}

/** The fastest of the organism's models, 1/h. */
export const organismRate = (organism: Organism, celsius: number): number =>
  organism.models.reduce((most, model) => Math.max(most, growthRate(model, celsius)), 0);

export interface GrowthStart {
  /** log10 CFU/g at the start; counts only where the model has a maximum. */
  readonly log10: number;
  /** h0 of Baranyi and Roberts, null: growth begins at once. */
  readonly lagWork: number | null;
  readonly mostLog10: number | null;
}

/** As many cells as leave room to grow: no maximum slows them, which lets more grow. */
const AT_ONCE: GrowthStart = { log10: 0, lagWork: null, mostLog10: null };

/**
 * Growth along a curve of temperatures, log10 above the start at each of its points: the model of Baranyi and Roberts 1994,
 * dq/dt = mu q, d(ln y)/dt = mu q/(1+q) (1 - y/y_max), solved by the classic Runge-Kutta method with the rate taken as linear
 * between points. Without `lagWork` q/(1+q) is 1.
 * @param rates 1/h at each point
 * @param hoursApart hours from one point to the next, above 0
 */
export function growAlong(rates: ArrayLike<number>, hoursApart: number, start: GrowthStart = AT_ONCE): Float64Array {
  const grown = new Float64Array(rates.length);
  if (start.lagWork === null && start.mostLog10 === null) {
    // Nothing holds it back: growth is the integral of the rate.
    for (let at = 1; at < rates.length; at += 1)
      grown[at] =
        (grown[at - 1] ?? 0) + (((rates[at - 1] ?? 0) + (rates[at] ?? 0)) * hoursApart) / (2 * NEPER_PER_DECADE);
    return grown;
  }
  const room = start.mostLog10 === null ? null : (start.mostLog10 - start.log10) * NEPER_PER_DECADE;
  let y = 0;
  // ln q, so that a long growth does not overflow.
  let lnQ = start.lagWork === null ? Number.POSITIVE_INFINITY : -Math.log(Math.expm1(start.lagWork));
  const slope = (rate: number, lnQNow: number, yNow: number): number =>
    rate * (1 / (1 + Math.exp(-lnQNow))) * (room === null ? 1 : 1 - Math.exp(yNow - room));
  for (let at = 1; at < rates.length; at += 1) {
    const from = rates[at - 1] ?? 0;
    const to = rates[at] ?? 0;
    const middle = (from + to) / 2;
    const h = hoursApart;
    // ln q is the integral of a linear rate: exact.
    const lnQMiddle = lnQ + (h * (from + middle)) / 4;
    const lnQEnd = lnQ + h * middle;
    const k1 = slope(from, lnQ, y);
    const k2 = slope(middle, lnQMiddle, y + (h / 2) * k1);
    const k3 = slope(middle, lnQMiddle, y + (h / 2) * k2);
    const k4 = slope(to, lnQEnd, y + h * k3);
    y += (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
    lnQ = lnQEnd;
    grown[at] = y / NEPER_PER_DECADE;
  }
  return grown;
}
