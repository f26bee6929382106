/** How dear a food is beside others. Prices are invented, and so are the limits of the bands. */
import type { Food } from "../../../shared/catalogue.js";
import type { PriceBand } from "../../../shared/codes.js";

/** Minor units per kg as sold: below the first LOW, below the second MIDDLE, else HIGH. Invented with the prices. */
const priceBandLimits = { middleFrom: 400, highFrom: 1200 } as const;

/** The band of a food's pack price per kg; water, which costs nothing, is LOW. */
export function priceBandOf({ pack }: Pick<Food, "pack">): PriceBand {
  const minorPerKg = (pack.priceMinor / pack.grams) * 1000;
  if (minorPerKg < priceBandLimits.middleFrom) return "LOW";
  return minorPerKg < priceBandLimits.highFrom ? "MIDDLE" : "HIGH";
}
