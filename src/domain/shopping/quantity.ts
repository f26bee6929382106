/** Amounts as people read them. Inside, mass is grams and volume millilitres; only text is in household units. */

export type UnitSystem = "METRIC" | "US_CUSTOMARY";

/**
 * International avoirdupois pound, exactly 453.59237 g, 16 ounces (NIST Handbook 44, Appendix C). US cup: 8 US fluid
 * ounces, 1/16 of the US gallon of 231 cubic inches, exactly 236.5882365 ml (same); 16 tablespoons, 48 teaspoons.
 */
export const GRAMS_PER_POUND = 453.59237;
export const GRAMS_PER_OUNCE = GRAMS_PER_POUND / 16;
export const ML_PER_CUP = 236.5882365;

/** Noise of earlier sums; it must not push an amount up by a whole step. */
const NOISE = 1e-9;

const roundUp = (value: number, step: number): number => Math.ceil(value / step - NOISE) * step;
/** At most two decimals, none that are zero. */
const plain = (value: number): string => String(Math.round(value * 100) / 100);

/**
 * Mass for a shopping list, rounded up so that nobody buys too little: metric to 1 g, from 100 g to 5 g, from 1 kg to
 * 0.01 kg; US customary to 0.25 oz, from 1 lb to pounds and whole ounces. `grams`: 0 or more.
 */
export function formatMass(grams: number, system: UnitSystem): string {
  if (system === "METRIC") {
    const fine = roundUp(grams, grams < 100 ? 1 : 5);
    return fine < 1000 ? `${plain(fine)} g` : `${plain(roundUp(grams, 10) / 1000)} kg`;
  }
  const ounces = roundUp(grams / GRAMS_PER_OUNCE, 0.25);
  if (ounces < 16) return `${plain(ounces)} oz`;
  const whole = roundUp(grams / GRAMS_PER_OUNCE, 1);
  const pounds = Math.floor(whole / 16);
  return whole % 16 === 0 ? `${pounds} lb` : `${pounds} lb ${whole % 16} oz`;
}

/**
 * Volume of `grams` of a food of known density (g/ml, above 0) for a measuring jug or cup, rounded to the nearest:
 * metric to 5 ml, from 1 l to 0.05 l; US customary to 0.25 cup, below that to whole tablespoons, below one of those to
 * 0.25 teaspoon.
 */
export function formatVolume(grams: number, densityGramsPerMl: number, system: UnitSystem): string {
  const ml = grams / densityGramsPerMl;
  if (system === "METRIC") {
    const fine = Math.round(ml / 5) * 5;
    return fine < 1000 ? `${fine} ml` : `${plain(Math.round(ml / 50) / 20)} l`;
  }
  const quarters = Math.round((ml / ML_PER_CUP) * 4);
  if (ml >= ML_PER_CUP / 4) return `${plain(quarters / 4)} cup`;
  const tablespoons = Math.round((ml / ML_PER_CUP) * 16);
  if (ml >= ML_PER_CUP / 16) return `${tablespoons} tbsp`;
  return `${plain(Math.round((ml / ML_PER_CUP) * 48 * 4) / 4)} tsp`;
}
