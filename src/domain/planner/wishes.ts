/**
 * What the planner weighs against each other, in points. One point is about half a minute of a carer's evening; every weight
 * is our own estimate, to be changed here and nowhere else. A household's rhythm comes with its sessions (points per minute).
 */
import type { WeekdayCode } from "../../../shared/codes.js";

export const wishes = {
  refusal: {
    /** Per item the child dislikes by name: likely to come back. */
    dislikedDish: 60,
    /** Per item with an ingredient of a kind the child dislikes. */
    dislikedKind: 25,
  },
  monotony: {
    /** Per item the child had in the seven days before the week. */
    eatenLastWeek: 10,
    /** Per item the child had in the seven days before those. */
    eatenWeekBefore: 4,
  },
  newness: {
    /** A main the child has not had in the remembered weeks may come back; counted only once something is remembered. */
    newMain: 3,
    /** A new taste in a small slot beside a known main is welcome. */
    newSide: -1,
  },
  /** Points per minor unit of ingredients in the portion: 20 minor units weigh one point. */
  costPerMinorUnit: 0.05,
  /** Per 10 g of a leftover of the family meal that a portion can eat: as much as 10 g left over of a fresh batch. */
  leftoverPerTenGrams: -1,
  /** Points per treat by weekday: a light start, something festive at the end. Days not named weigh nothing. */
  treat: { MONDAY: 8, TUESDAY: 4, WEDNESDAY: 4, THURSDAY: 2, FRIDAY: -8 } as Readonly<
    Partial<Record<WeekdayCode, number>>
  >,
  /** Per item that goes against an item rule of level ADVISE. */
  itemAgainstAdvice: 12,
  /** Points per 1 % by which a sum misses a rule of level ADVISE; whole. */
  sumAgainstAdvice: 1,
  /** Points per 1000 hundredths of a gram (10 g) of a base left over; whole. */
  sparePerTenGrams: 1,
  /** Points per 1 % by which a child's week misses a target; whole. */
  nutrients: {
    protein: 1,
    saturated: 1,
    sodium: 1,
    fibre: 2,
    calcium: 2,
    iron: 2,
    zinc: 1,
    vitaminC: 1,
    vitaminA: 1,
    freeSugar: 1,
  },
  /**
   * Replanning: a changed box outweighs what one box could gain, then fewer changed items count. Much higher figures would
   * hold the search back from the change that makes the week possible.
   */
  distance: { changedBox: 300, changedItem: 30 },
} as const;

/** A box with a main gives its breaks' share of the day's energy within this band. Our estimate. */
export const energyBand = { least: 0.8, most: 1.25 } as const;

/**
 * A day's protein, saturated fat and sodium may miss the boxes' share of the daily figure by this factor and no more; inside
 * it the week's sum is a soft target. Our estimate.
 */
export const hardFactor = 1.35;
