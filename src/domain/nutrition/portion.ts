/** How much of a dish a child gets: the slot's part of the break's part of the day's energy, in steps a packer can weigh or count. */
import type { SlotCode } from "../../../shared/codes.js";
import { slotShareOf, type SlotShare } from "../../../shared/meal-shares.js";
import type { DerivedDish } from "../catalogue/derive.js";

export interface PortionInput {
  /** Energy of the child's whole day, kcal. */
  readonly energyKcal: number;
  /** The child's own factor, 1 = as expected. */
  readonly appetite: number;
  /** The break's share of the day, 0 to 1. */
  readonly breakEnergyShare: number;
  readonly slot: SlotCode;
  /** Every slot of the break, this one included; a slot that stands twice counts twice. */
  readonly slots: readonly SlotCode[];
  /** Part of a break by slot, and how far a portion may leave the reference one. */
  readonly slotShares: readonly SlotShare[];
  /** Energy the school gives at the break, kcal: it is not packed again. */
  readonly givenKcal?: number;
  readonly derived: DerivedDish;
}

export interface Portion {
  readonly grams: number;
  /** Null for a dish that is weighed. */
  readonly pieces: number | null;
  /** Grams over the reference portion's, after rounding. */
  readonly scale: number;
}

/** Steps nearest to the wished scale and inside the range where some whole number of steps is; at least one. */
function countSteps(reference: number, step: number, wished: number, { leastScale, mostScale }: SlotShare): number {
  const most = Math.floor((mostScale * reference) / step + 1e-9);
  const least = Math.ceil((leastScale * reference) / step - 1e-9);
  const nearest = Math.round((wished * reference) / step);
  return Math.max(1, least <= most ? Math.min(most, Math.max(least, nearest)) : nearest);
}

/** The portion for one child, break and slot. A dish whose energy is not known, or is none, keeps its reference size. */
export function portionFor(input: PortionInput): Portion {
  const { derived, slot } = input;
  const { portion } = derived.dish;
  const row = slotShareOf(input.slotShares, slot);
  const weights = input.slots.reduce((sum, other) => sum + slotShareOf(input.slotShares, other).energyWeight, 0);
  const breakKcal = input.energyKcal * input.appetite * input.breakEnergyShare - (input.givenKcal ?? 0);
  const targetKcal = breakKcal * (row.energyWeight / weights);
  const referenceKcal = derived.nutrients.ENERC_KCAL ?? 0;
  const energyKnown = referenceKcal > 0 && !derived.missing.some((gap) => gap.nutrient === "ENERC_KCAL");
  const wished = energyKnown ? Math.min(row.mostScale, Math.max(row.leastScale, targetKcal / referenceKcal)) : 1;
  if (portion.kind === "CONTINUOUS") {
    const grams = countSteps(portion.grams, portion.stepGrams, wished, row) * portion.stepGrams;
    return { grams, pieces: null, scale: grams / derived.grams };
  }
  // Thousandths: steps such as 0.1 do not add up exactly in binary.
  const pieces =
    Math.round(countSteps(portion.pieces, portion.stepPieces, wished, row) * portion.stepPieces * 1000) / 1000;
  // Tenths of a gram: binary fractions of a piece would print as 319.20000000000005.
  const grams = Math.round(pieces * portion.gramsPerPiece * 10) / 10;
  return { grams, pieces, scale: grams / derived.grams };
}
