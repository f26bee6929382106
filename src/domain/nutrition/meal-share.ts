/** What part of a child's day a break is for: the school's own figure, or the usual one with its source. */
import type { SlotCode } from "../../../shared/codes.js";
import type { MealShares } from "../../../shared/meal-shares.js";

export interface BreakShare {
  /** Of the day's energy, 0 to 1. */
  readonly share: number;
  readonly source: string;
}

/** A break with a main is a lunch. @param pause `energyShare` null: the school gives none */
export function shareOfBreak(
  pause: { readonly slots: readonly SlotCode[]; readonly energyShare: number | null },
  { usual }: MealShares,
): BreakShare {
  if (pause.energyShare !== null) return { share: pause.energyShare, source: "given by the school" };
  const { energyShare: share, source } = pause.slots.includes("MAIN") ? usual.lunch : usual.snack;
  return { share, source };
}
