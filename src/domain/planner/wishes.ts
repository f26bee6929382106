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
  /** Points per treat by weekday: a light start, something festive at the end. Days not named weigh nothing. */
  treat: { MONDAY: 8, TUESDAY: 4, WEDNESDAY: 4, THURSDAY: 2, FRIDAY: -8 } as Readonly<
    Partial<Record<WeekdayCode, number>>
  >,
  /** Per item that goes against an item rule of level ADVISE. */
  itemAgainstAdvice: 12,
  /** Points per 1 % by which a sum misses a rule of level ADVISE. */
  sumAgainstAdvice: 0.3,
  /** Points per 1000 hundredths of a gram (10 g) of a base left over. */
  sparePerTenGrams: 1,
  /** Points per 1 % by which a child's week misses a target. */
  nutrients: {
    protein: 0.6,
    saturated: 0.4,
    sodium: 0.6,
    fibre: 0.6,
    calcium: 0.5,
    iron: 0.6,
    zinc: 0.4,
    vitaminC: 0.3,
    vitaminA: 0.3,
    freeSugar: 0.6,
  },
  /** Replanning: a changed box outweighs any gain inside it, then fewer changed items count. */
  distance: { changedBox: 10_000, changedItem: 1_000 },
} as const;

/** A box with a main gives its breaks' share of the day's energy within this band. Our estimate. */
export const energyBand = { least: 0.8, most: 1.25 } as const;

/**
 * A day's protein, saturated fat and sodium may miss the boxes' share of the daily figure by this factor and no more; inside
 * it the week's sum is a soft target. Our estimate.
 */
export const hardFactor = 1.35;
