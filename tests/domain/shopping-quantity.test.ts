import Qty from "js-quantities";
import {
  GRAMS_PER_OUNCE,
  GRAMS_PER_POUND,
  ML_PER_CUP,
  formatMass,
  formatVolume,
} from "../../src/domain/shopping/quantity.js";

/** What js-quantities 1.8.0, a units library, reads from the text, in grams or millilitres. It keeps nine digits. */
const read = (text: string, unit: "g" | "ml"): number =>
  (text.match(/[\d.]+ [a-z]+/g) ?? []).map((part) => Qty(part).to(unit).scalar).reduce((sum, part) => sum + part, 0);

describe("amounts in household units, read back by a units library", () => {
  it("knows the pound, the ounce and the cup", () => {
    // NIST Handbook 44, Appendix C: exact values.
    expect([GRAMS_PER_POUND, ML_PER_CUP]).toEqual([453.59237, 236.5882365]);
    expect(GRAMS_PER_POUND / Qty("1 lb").to("g").scalar).toBeCloseTo(1, 7);
    expect(GRAMS_PER_OUNCE / Qty("1 oz").to("g").scalar).toBeCloseTo(1, 7);
    expect(ML_PER_CUP / Qty("1 cup").to("ml").scalar).toBeCloseTo(1, 7);
  });

  it.each([
    [0, "0 g", "0 oz"],
    [28, "28 g", "1 oz"],
    [99.2, "100 g", "3.5 oz"],
    [101, "105 g", "3.75 oz"],
    [453, "455 g", "1 lb"],
    [500, "500 g", "1 lb 2 oz"],
    [996, "1 kg", "2 lb 4 oz"],
    [1234, "1.24 kg", "2 lb 12 oz"],
  ])("writes %d g as %s or %s", (grams, metric, customary) => {
    expect(formatMass(grams, "METRIC")).toBe(metric);
    expect(formatMass(grams, "US_CUSTOMARY")).toBe(customary);
  });

  it("never writes less than is needed, and at most one step more", () => {
    for (let grams = 1; grams <= 5000; grams += grams < 1000 ? 1 : 7) {
      const metric = read(formatMass(grams, "METRIC"), "g") - grams;
      expect(metric).toBeGreaterThan(-1e-3);
      expect(metric).toBeLessThan(grams < 100 ? 1 : grams <= 995 ? 5 : 10);
      const customary = read(formatMass(grams, "US_CUSTOMARY"), "g") - grams;
      expect(customary).toBeGreaterThan(-1e-3);
      expect(customary).toBeLessThan(grams < 446 ? 7.1 : 28.4);
    }
  });

  it("measures by volume to the nearest mark of the jug or cup", () => {
    // Density 1.03 g/ml: milk, from memory.
    for (let grams = 2; grams <= 2000; grams += grams < 500 ? 1 : 7) {
      const ml = Qty(`${grams} g`).div(Qty("1.03 g/ml")).to("ml").scalar;
      const metric = formatVolume(grams, 1.03, "METRIC");
      expect(Math.abs(read(metric, "ml") - ml)).toBeLessThanOrEqual(ml < 995 ? 2.6 : 27.6);
      const customary = formatVolume(grams, 1.03, "US_CUSTOMARY");
      const halfMark =
        ml >= ML_PER_CUP / 4 ? ML_PER_CUP / 8 : ml >= ML_PER_CUP / 16 ? ML_PER_CUP / 32 : ML_PER_CUP / 384;
      expect(Math.abs(read(customary, "ml") - ml)).toBeLessThanOrEqual(halfMark + 0.01);
    }
  });

  it("writes a cup of water as one cup", () => {
    expect(formatVolume(237, 1, "US_CUSTOMARY")).toBe("1 cup");
    expect(formatVolume(15, 1, "US_CUSTOMARY")).toBe("1 tbsp");
    expect(formatVolume(5, 1, "US_CUSTOMARY")).toBe("1 tsp");
    expect(formatVolume(1000, 1, "METRIC")).toBe("1 l");
  });
});
