import { describe, expect, it } from "@jest/globals";
import fc from "fast-check";
import { slotCode, type SlotCode } from "../../shared/codes.js";
import type { Dish } from "../../shared/catalogue.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { portionFor, type PortionInput } from "../../src/domain/nutrition/portion.js";
import { readCatalogue, readMealShares } from "./reference-rows.js";
import { dishOf, sampleFood } from "./sample-rows.js";

const slotShares = readMealShares().slots;
const lunch: readonly SlotCode[] = ["MAIN", "VEGETABLE", "FRUIT", "EXTRA"];
const weighed = (kcalPer100: number, stepGrams = 10) =>
  dishOf([sampleFood("food", { nutrients: { ENERC_KCAL: kcalPer100 } })], "MIXED_IN", {
    portion: { kind: "CONTINUOUS", grams: 100, stepGrams },
  });
const counted = (pieces: number, stepPieces: number, gramsPerPiece = 25, kcalPer100 = 200) =>
  dishOf([sampleFood("food", { nutrients: { ENERC_KCAL: kcalPer100 } })], "MIXED_IN", {
    ingredients: [{ food: "food", grams: pieces * gramsPerPiece, form: "MIXED_IN" }],
    portion: { kind: "PIECES", gramsPerPiece, pieces, stepPieces, pieceName: "roll" },
  });
const portion = (over: Partial<PortionInput>) =>
  portionFor({
    energyKcal: 1600,
    appetite: 1,
    breakEnergyShare: 0.3,
    slot: "MAIN",
    slots: lunch,
    slotShares,
    derived: weighed(264),
    ...over,
  });

describe("a portion", () => {
  it("of the main carries 55 of 100 parts of the lunch's energy", () => {
    // 1600 x 0.3 x 0.55 = 264 kcal: the reference portion as it stands.
    expect(portion({})).toEqual({ grams: 100, pieces: null, scale: 1 });
    expect(portion({ energyKcal: 2000 })).toEqual({ grams: 130, pieces: null, scale: 1.3 }); // 330 kcal = 125 g, to the next 10 g
  });
  it("shares the break among the slots that are there", () => {
    // Only fruit: the whole of a break of 10 %: 160 kcal.
    expect(portion({ breakEnergyShare: 0.1, slot: "FRUIT", slots: ["FRUIT"], derived: weighed(160, 1) }).grams).toBe(
      100,
    );
    expect(
      portion({ breakEnergyShare: 0.1, slot: "FRUIT", slots: ["FRUIT", "FRUIT"], derived: weighed(80, 1) }).grams,
    ).toBe(100);
  });
  it("stays between half and one and three quarters of a main, less for vegetables and fruit", () => {
    expect(portion({ derived: weighed(2000) }).scale).toBe(0.5);
    expect(portion({ derived: weighed(20, 5) }).scale).toBe(1.75);
    expect(portion({ slot: "VEGETABLE", derived: weighed(2) }).scale).toBe(1.4);
    expect(portion({ slot: "FRUIT", derived: weighed(900) }).scale).toBe(0.6);
  });
  it("in pieces is whole steps of pieces and never none", () => {
    expect(portion({ derived: counted(4, 1) })).toEqual({ grams: 125, pieces: 5, scale: 1.25 }); // 264 of 200 kcal is 1.32: 5.28 rolls
    expect(portion({ derived: counted(1, 1, 100, 2000) })).toEqual({ grams: 100, pieces: 1, scale: 1 });
    expect(portion({ derived: counted(1, 0.5, 100, 900) }).pieces).toBe(0.5);
  });
  it("is smaller by what the school gives at that break", () => {
    // 1600 x 0.3 = 480 kcal, less 120: 360 x 0.55 = 198 of 264 kcal, 75 g, to the next 10 g.
    expect(portion({ givenKcal: 120 }).grams).toBe(80);
    expect(portion({ givenKcal: 5000 }).scale).toBe(0.5);
  });
  it("of a dish whose energy is not known stays as the recipe says", () => {
    expect(portion({ derived: dishOf([sampleFood("water", { nutrients: {} })]) }).scale).toBe(1);
  });

  const anyDish = fc.oneof(
    fc
      .record({ kcal: fc.integer({ min: 5, max: 700 }), step: fc.integer({ min: 1, max: 50 }) })
      .map(({ kcal, step }) => weighed(kcal, step)),
    fc
      .record({
        steps: fc.integer({ min: 1, max: 12 }),
        step: fc.constantFrom(0.25, 0.5, 1, 2),
        kcal: fc.integer({ min: 20, max: 500 }),
      })
      .map(({ steps, step, kcal }) => counted(steps * step, step, 30, kcal)),
  );
  const anyInput = fc.record({
    energyKcal: fc.integer({ min: 900, max: 3200 }),
    appetite: fc.double({ min: 0.5, max: 1.5, noNaN: true }),
    breakEnergyShare: fc.double({ min: 0.05, max: 0.5, noNaN: true }),
    slot: fc.constantFrom(...slotCode.options),
    derived: anyDish,
  });

  it("is always a whole number of steps, above none, inside its range where a step lies in it, and never less for more appetite", () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const slots = lunch;
        const given = portionFor({ ...input, slots, slotShares });
        const of: Dish["portion"] = input.derived.dish.portion;
        const [amount, reference, step] =
          of.kind === "PIECES" ? [given.pieces ?? 0, of.pieces, of.stepPieces] : [given.grams, of.grams, of.stepGrams];
        expect(amount).toBeGreaterThan(0);
        expect(Math.abs(amount / step - Math.round(amount / step))).toBeLessThan(1e-6);
        expect(given.scale).toBeCloseTo(given.grams / input.derived.grams, 12);
        const narrow = input.slot === "VEGETABLE" || input.slot === "FRUIT";
        const [least, most] = narrow ? [0.6, 1.4] : [0.5, 1.75];
        if (Math.floor((most * reference) / step + 1e-9) >= Math.ceil((least * reference) / step - 1e-9)) {
          expect(given.scale).toBeGreaterThanOrEqual(least - 1e-9);
          expect(given.scale).toBeLessThanOrEqual(most + 1e-9);
        }
        expect(
          portionFor({ ...input, slots, slotShares, appetite: input.appetite * 1.2 }).grams,
        ).toBeGreaterThanOrEqual(given.grams);
        expect(portionFor({ ...input, slots, slotShares })).toEqual(given);
      }),
    );
  });
});

/**
 * Outside: portions of English school meals for 4 to 10 years (BMJ Open, table 1): vegetables 40 to 60 g, fruit 40 to 60 g,
 * cheese 20 to 30 g. They are served beside a cooked meal; a dish's own mix and a break's energy share move ours, so the wider
 * half and double of the range is asked for, of most dishes.
 */
describe("portions of the shipped dishes for a child of seven", () => {
  const index = indexCatalogue({ version: "seeds", ...readCatalogue() });
  const grams = (slot: SlotCode) =>
    index.dishes
      .filter((dish) => dish.slots.includes(slot))
      .map(
        (dish) =>
          portionFor({
            energyKcal: 1600,
            appetite: 1,
            breakEnergyShare: 0.3,
            slot,
            slots: lunch,
            slotShares,
            derived: index.derived(dish.key),
          }).grams,
      )
      .sort((a, b) => a - b);
  it.each([
    ["VEGETABLE", 40, 60],
    ["FRUIT", 40, 60],
  ] as const)("of the slot %s lie for the most part between half of %i g and double of %i g", (slot, least, most) => {
    const all = grams(slot);
    expect(all.length).toBeGreaterThan(10);
    const within = all.filter((portion) => portion >= least / 2 && portion <= most * 2);
    expect(within.length / all.length).toBeGreaterThan(0.8);
  });
});
