/**
 * In which home a child wakes on a day: patterns that repeat, days agreed apart from them, and the home of longest standing where
 * nothing is agreed. Whole local dates only, so a change of the clocks moves nothing.
 */
import { addDays, daysBetween } from "./dates.js";

export const residenceKinds = [
  "SAME_HOME",
  "ALTERNATE_WEEKS",
  "TWO_TWO_THREE",
  "TWO_TWO_FIVE_FIVE",
  "OWN_CYCLE",
] as const;
export type ResidenceKind = (typeof residenceKinds)[number];
export type ProposalState = "PROPOSED" | "ACCEPTED" | "DECLINED" | "WITHDRAWN";

/** Days of the longest cycle: four times a fortnight. */
export const LONGEST_CYCLE = 56;

export interface ResidencePattern {
  readonly kind: ResidenceKind;
  /** First day of the cycle and of the pattern. */
  readonly starts: string;
  /** Last day; null: until another pattern begins. */
  readonly ends: string | null;
  /** The household of each day of the cycle, 1 to 56. */
  readonly cycle: readonly string[];
  readonly state: ProposalState;
}
export interface ResidenceException {
  readonly date: string;
  readonly householdId: string;
  readonly state: ProposalState;
}
export interface Residence {
  /** Households, the one of longest standing first. */
  readonly homes: readonly string[];
  /** In the order in which they were agreed. */
  readonly patterns: readonly ResidencePattern[];
  /** In the order in which they were agreed. */
  readonly exceptions: readonly ResidenceException[];
}
export interface WakingPlace {
  readonly householdId: string;
  readonly source: "EXCEPTION" | "PATTERN" | "USUAL";
}

/**
 * The cycle of a kind that begins in one home, as family courts and mediators write it (common practice): weeks in turn are seven
 * days each; 2-2-3 is A A B B A A A and then the same with the homes changed over; 2-2-5-5 is A A B B A A A A A B B B B B, so that
 * each home has the same two weekdays every week. One day long for the same home.
 */
export function cycleOf<T>(kind: Exclude<ResidenceKind, "OWN_CYCLE">, first: T, other: T): readonly T[] {
  const inTurn = (...lengths: readonly number[]): T[] =>
    lengths.flatMap((days, at) => Array.from({ length: days }, () => (at % 2 === 0 ? first : other)));
  switch (kind) {
    case "SAME_HOME":
      return [first];
    case "ALTERNATE_WEEKS":
      return inTurn(7, 7);
    case "TWO_TWO_THREE":
      return inTurn(2, 2, 3, 2, 2, 3);
    case "TWO_TWO_FIVE_FIVE":
      return inTurn(2, 2, 5, 5);
  }
}

/**
 * Where the child wakes. Only what was accepted counts: an exception for the day, else the pattern that began last (of two that
 * begin on one day the one agreed later), else the home of longest standing. A home that is none of the child's any more counts
 * for nothing. Null: the child has no home.
 */
export function wakesIn({ homes, patterns, exceptions }: Residence, date: string): WakingPlace | null {
  const apart = exceptions.findLast(
    (entry) => entry.state === "ACCEPTED" && entry.date === date && homes.includes(entry.householdId),
  );
  if (apart) return { householdId: apart.householdId, source: "EXCEPTION" };
  const householdId = patternOn(patterns, date)?.household;
  if (householdId !== undefined && homes.includes(householdId)) return { householdId, source: "PATTERN" };
  const usual = homes[0];
  return usual === undefined ? null : { householdId: usual, source: "USUAL" };
}

/** The pattern that holds on a day, and the home it names for it; null where none does. */
export function patternOn<P extends ResidencePattern>(
  patterns: readonly P[],
  date: string,
): { readonly pattern: P; readonly household: string } | null {
  let last: P | null = null;
  for (const pattern of patterns)
    if (pattern.state === "ACCEPTED" && pattern.starts <= date && (last === null || pattern.starts >= last.starts))
      last = pattern;
  if (last === null || (last.ends !== null && last.ends < date)) return null;
  return { pattern: last, household: last.cycle[daysBetween(last.starts, date) % last.cycle.length]! };
}

/** Days from the first to the last, both included. */
export function daysFrom(first: string, last: string): string[] {
  const days: string[] = [];
  for (let date = first; date <= last; date = addDays(date, 1)) days.push(date);
  return days;
}
