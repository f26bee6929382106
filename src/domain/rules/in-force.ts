/** Which rules bind a child's box on a day. All layers hold at once; the strictest wins because every one is asked. */
import type { Rule } from "../../../shared/rule-set.js";
import type { ChildBrief, ChildDayBrief, WeekBrief } from "../brief.js";
import { ageOn, weekdayOf } from "../calendar/dates.js";

export interface RuleInForce {
  /** Index into `WeekBrief.ruleSets`. */
  readonly ruleSet: number;
  readonly rule: Rule;
}

/**
 * The rules of the day's rule sets that are in force on its date, meant for the child's age and the weekday, in the order
 * the day lists them. The day lists the sets that bind this child's box: whether a jurisdiction's set covers food from home or
 * the school adopted it is settled there. Breaks are not looked at: see `appliesAtBreak`. Throws RangeError on an index
 * without a rule set.
 */
export function rulesInForce(brief: WeekBrief, child: ChildBrief, day: ChildDayBrief): RuleInForce[] {
  const age = ageOn(child.dateOfBirth, day.date);
  const weekday = weekdayOf(day.date);
  return day.ruleSets.flatMap((index) => {
    const set = brief.ruleSets[index];
    if (set === undefined) throw new RangeError(`no rule set ${index} in the brief`);
    const started = set.inForceFrom <= day.date;
    const ended = set.inForceUntil !== undefined && set.inForceUntil < day.date;
    if (!started || ended) return [];
    return set.rules
      .filter(({ ages, weekdays }) => {
        const oldEnough = ages?.fromYears === undefined || ages.fromYears <= age;
        const youngEnough = ages?.underYears === undefined || age < ages.underYears;
        return oldEnough && youngEnough && (weekdays === undefined || weekdays.includes(weekday));
      })
      .map((rule) => ({ ruleSet: index, rule }));
  });
}

/** True when the rule names this break or none. */
export function appliesAtBreak(rule: Rule, breakKey: string): boolean {
  return rule.breaks === undefined || rule.breaks.includes(breakKey);
}

export interface ServingLimits {
  readonly reheatingAllowed: boolean;
  /** The shortest time to eat any rule states; null when none does. */
  readonly minutesToEat: number | null;
}

/**
 * What the place allows at one break by the SERVING rules that forbid. Without reheating, a warm dish comes in a flask or not
 * at all; a missing refrigerator changes nothing, since holding never counts on one. Finger food is judged by `judgeItem`.
 */
export function servingLimits(rules: readonly RuleInForce[], breakKey: string): ServingLimits {
  let reheatingAllowed = true;
  let minutesToEat: number | null = null;
  for (const { rule } of rules) {
    if (rule.kind !== "SERVING" || rule.level !== "FORBID" || !appliesAtBreak(rule, breakKey)) continue;
    if (rule.noReheating === true) reheatingAllowed = false;
    if (rule.minutesToEat !== undefined) minutesToEat = Math.min(minutesToEat ?? rule.minutesToEat, rule.minutesToEat);
  }
  return { reheatingAllowed, minutesToEat };
}
