/** What is left of a limit in a week of fewer days, and how a share and a percentage are written. */
import type { Rule } from "../../../shared/rule-set.js";

export interface Bounds {
  readonly atLeast?: number | undefined;
  readonly atMost?: number | undefined;
}

/** Days of a full school week under a rule that names no weekdays. */
const FULL_WEEK_DAYS = 5;

/** Days of a full week under a rule. */
export const fullDays = ({ weekdays }: Pick<Rule, "weekdays">): number => weekdays?.length ?? FULL_WEEK_DAYS;

/**
 * A part of a limit. Counts are whole: a minimum is rounded down (never more than the share), a maximum up (a share of one
 * thing is still one thing). Amounts are not rounded. `shareOf({ atLeast: 8 }, 0.8, false)` is `{ atLeast: 6.4 }`.
 */
export function shareOf({ atLeast, atMost }: Bounds, share: number, counts: boolean): Bounds {
  const least = atLeast === undefined ? undefined : atLeast * share;
  const most = atMost === undefined ? undefined : atMost * share;
  if (!counts) return { atLeast: least, atMost: most };
  return {
    atLeast: least === undefined ? undefined : Math.floor(least + 1e-9),
    atMost: most === undefined ? undefined : Math.ceil(most - 1e-9),
  };
}

/**
 * A week's limit when only `days` of a week of `full` are packed: the days' share of it, whole above a full week.
 * `prorate({ atLeast: 3, atMost: 2 }, 3, 5, true)` is `{ atLeast: 1, atMost: 2 }`.
 */
export function prorate(bounds: Bounds, days: number, full: number, counts: boolean): Bounds {
  return shareOf(bounds, Math.min(1, days / full), counts);
}

/** How a rule's week is judged over the days it binds. */
export type WeekSpan = "WHOLE" | "PRORATE" | "PER_DAY" | "SKIP";

/** @param days packed days the rule binds  @param isSplit it begins or ends between the packed days */
export function weekSpan(rule: Rule, days: number, isSplit: boolean): WeekSpan {
  if (isSplit) return rule.splitWeek ?? rule.shortWeek;
  return days < fullDays(rule) ? rule.shortWeek : "WHOLE";
}

/** A share as a fraction: a bound above 1 can only be percent. */
export const asFraction = (bound: number | undefined): number | undefined =>
  bound !== undefined && bound > 1 ? bound / 100 : bound;
