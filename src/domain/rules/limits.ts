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
 * A part of a limit, such as the share of a week with fewer days. Counts are whole: a minimum is rounded down (never more than
 * the share), a maximum up (a share of one thing is still one thing). Amounts are not rounded.
 * `shareOf({ atLeast: 3, atMost: 2 }, 0.6, true)` is `{ atLeast: 1, atMost: 2 }`, `shareOf({ atLeast: 8 }, 0.8, false)` is
 * `{ atLeast: 6.4 }`.
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

/** Of a full week's limit, what the packed days are good for; 1 above a full week. */
export const weekPart = (rule: Pick<Rule, "weekdays">, days: number): number => Math.min(1, days / fullDays(rule));

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
