/** Which rules bind a child's box on a day. All layers hold at once; the strictest wins because every one is asked. */
import type { WeekdayCode } from "../../../shared/codes.js";
import { matchersOf, type Rule, type RuleSetDocument } from "../../../shared/rule-set.js";
import type { ChildBrief, ChildDayBrief, WeekBrief } from "../brief.js";
import { ageOn, weekdayOf } from "../calendar/dates.js";

export interface RuleInForce {
  /** Index into `WeekBrief.ruleSets`. */
  readonly ruleSet: number;
  readonly rule: Rule;
}

/** Why a rule of a child's rule sets does not bind a day's box. */
export type RuleRests = "NOT_IN_FORCE" | "OTHER_AGE" | "OTHER_WEEKDAY" | "OTHER_BREAK" | "EXEMPT";

/** A day with what its rules are asked by; worked out once for all of them. */
interface DayFacts {
  readonly day: ChildDayBrief;
  readonly age: number;
  readonly weekday: WeekdayCode;
}

const factsOf = (child: ChildBrief, day: ChildDayBrief): DayFacts => ({
  day,
  age: ageOn(child.dateOfBirth, day.date),
  weekday: weekdayOf(day.date),
});

const isWithin = (
  { inForceFrom, inForceUntil }: { inForceFrom?: string | undefined; inForceUntil?: string | undefined },
  date: string,
): boolean => (inForceFrom ?? date) <= date && date <= (inForceUntil ?? date);

const isOfAge = ({ ages }: Pick<Rule, "ages">, age: number): boolean =>
  (ages?.fromYears ?? age) <= age && (ages?.underYears ?? age + 1) > age;

/** Null when the rule binds that day; breaks and exemptions are not looked at. */
function restsOn(set: RuleSetDocument, rule: Rule, { day, age, weekday }: DayFacts): RuleRests | null {
  if (set.withdrawn === true || !isWithin(set, day.date) || !isWithin(rule, day.date)) return "NOT_IN_FORCE";
  if (!isOfAge(set, age) || !isOfAge(rule, age)) return "OTHER_AGE";
  return rule.weekdays === undefined || rule.weekdays.includes(weekday) ? null : "OTHER_WEEKDAY";
}

/** No note lets a rule rest that names an allergen. */
export const namesAllergen = (rule: Rule): boolean =>
  matchersOf(rule).some(({ matcher }) => matcher.anyOf.some(({ allergens }) => allergens !== undefined));

const isExempt = ({ exempt }: ChildDayBrief, ruleSet: number, rule: Rule): boolean =>
  exempt !== undefined && exempt.some((row) => row.ruleSet === ruleSet && row.rule === rule.id) && !namesAllergen(rule);

const isAtABreak = (rule: Rule, { breaks }: ChildDayBrief): boolean =>
  breaks.some(({ key }) => appliesAtBreak(rule, key));

function setAt(documents: readonly RuleSetDocument[], index: number): RuleSetDocument {
  const set = documents[index];
  if (set === undefined) throw new RangeError(`no rule set ${index} in the brief`);
  return set;
}

/**
 * The rules of the day's rule sets that are in force on its date, meant for the child's age and the weekday, and not resting
 * for this child, in the order the day lists them. The day lists the sets that bind this child's box: whether a jurisdiction's
 * set covers food from home or the school adopted it is settled there. Breaks are not looked at: see `appliesAtBreak`. Throws
 * RangeError on an index without a rule set.
 */
export function rulesInForce(brief: Pick<WeekBrief, "ruleSets">, child: ChildBrief, day: ChildDayBrief): RuleInForce[] {
  const facts = factsOf(child, day);
  return day.ruleSets.flatMap((index) => {
    const set = setAt(brief.ruleSets, index);
    return set.rules
      .filter((rule) => restsOn(set, rule, facts) === null && !isExempt(day, index, rule))
      .map((rule) => ({ ruleSet: index, rule }));
  });
}

/** True when the rule names this break or none. */
export function appliesAtBreak(rule: Rule, breakKey: string): boolean {
  return rule.breaks === undefined || rule.breaks.includes(breakKey);
}

/** A rule over a child's packed days of a week. */
export interface RuleOverWeek extends RuleInForce {
  /** Indices into `ChildBrief.days`: those it binds, at a break it applies at. */
  readonly days: readonly number[];
  /** Indices of the days on which it rests for this child on a clinician's note. */
  readonly exemptDays: readonly number[];
  /** It or its document begins or ends between the packed days. */
  readonly isSplit: boolean;
  /** Why it binds no day; null when it binds one, or would but for the exemption. */
  readonly rests: RuleRests | null;
}

/** Every rule of the rule sets that any of the child's days lists, by the order of the sets. Throws RangeError as `rulesInForce`. */
export function rulesOverWeek(documents: readonly RuleSetDocument[], child: ChildBrief): RuleOverWeek[] {
  const facts = child.days.map((day) => factsOf(child, day));
  const listed = [...new Set(child.days.flatMap(({ ruleSets }) => ruleSets))].sort((a, b) => a - b);
  return listed.flatMap((index) => {
    const set = setAt(documents, index);
    const isListed = child.days.map((day) => day.ruleSets.includes(index));
    return set.rules.map((rule): RuleOverWeek => {
      const days: number[] = [];
      const exemptDays: number[] = [];
      let outside = false;
      let rests: RuleRests | null = null;
      facts.forEach((fact, at) => {
        const why = isListed[at] === true ? restsOn(set, rule, fact) : "NOT_IN_FORCE";
        if (why === "NOT_IN_FORCE") {
          // A day it would not bind anyway does not make the week a split one.
          const isItsDay = rule.weekdays === undefined || rule.weekdays.includes(fact.weekday);
          outside ||= isItsDay && isAtABreak(rule, fact.day);
          rests ??= why;
        } else if (why !== null) rests = why;
        else if (!isAtABreak(rule, fact.day)) rests = "OTHER_BREAK";
        else if (isExempt(fact.day, index, rule)) exemptDays.push(at);
        else days.push(at);
      });
      const binds = days.length + exemptDays.length > 0;
      return { ruleSet: index, rule, days, exemptDays, isSplit: binds && outside, rests: binds ? null : rests };
    });
  });
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
