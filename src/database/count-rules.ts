/** Counting over every household's agreed boxes, behind a function that lets out numbers only: see migration 0019. */
import type { CountedRule, Addend } from "../domain/rules/count-tables.js";
import type { ReadTx } from "./database.js";

export interface BoundToCount extends CountedRule {
  /** The rule's id in exemptions; null for one that none can touch. */
  readonly exemptKey: string | null;
  readonly shortWeek: string;
  readonly splitWeek: string;
  readonly breaks: readonly string[] | null;
  /** 1 is Monday. */
  readonly weekdays: readonly number[] | null;
  readonly fromYears: number;
  readonly underYears: number;
  readonly firstDay: string;
  readonly lastDay: string;
}

export interface BoxesToCount {
  readonly schoolIds: readonly string[];
  readonly schoolClassId: string | null;
  readonly from: string;
  readonly until: string;
  /** For exemptions; null for a rule set that is new. */
  readonly ruleSetId: string | null;
  readonly rules: readonly BoundToCount[];
  readonly addends: readonly Addend[];
  /** Keys of dishes that addends know; a box with another is not counted. */
  readonly dishes: readonly string[];
}

/** Each null where it would be fewer than five. */
export interface RuleCounts {
  /** Index into the document's rules; null for all together. */
  readonly rule: number | null;
  readonly held: number | null;
  readonly boxes: number | null;
  readonly children: number | null;
  readonly weeks: number | null;
  readonly notCounted: number | null;
}

export async function countBoxes(tx: ReadTx, asked: BoxesToCount): Promise<RuleCounts[]> {
  const { addends } = asked;
  const rules = asked.rules.map((row, no) => ({
    no,
    rule: row.rule,
    span: row.span,
    measure: row.measure,
    sum: row.sum,
    second: row.second,
    least: row.atLeast,
    most: row.atMost,
    mean: row.mean,
    counts: row.counts,
    full_days: row.fullDays,
    short: row.shortWeek,
    split: row.splitWeek,
    breaks: row.breaks,
    weekdays: row.weekdays,
    from_years: row.fromYears,
    under_years: row.underYears,
    first_day: row.firstDay,
    last_day: row.lastDay,
    key: row.exemptKey,
  }));
  return tx<RuleCounts[]>`
    select rule, held, boxes, children, weeks, not_counted as "notCounted" from app_count_rules(
      ${asked.schoolIds as string[]}::uuid[], ${asked.schoolClassId}::uuid, ${asked.from}::date, ${asked.until}::date, ${asked.ruleSetId}::uuid,
      ${JSON.stringify(rules)}::text::jsonb, ${addends.map(({ sum }) => sum)}::int[], ${addends.map(({ dish }) => dish)}::text[],
      ${addends.map(({ slot }) => slot)}::text[], ${addends.map(({ fixed }) => fixed)}::float8[],
      ${addends.map(({ perGram }) => perGram)}::float8[], ${addends.map(({ step }) => step)}::float8[],
      ${addends.map(({ times }) => times)}::float8[], ${addends.map(({ kind }) => kind)}::text[], ${asked.dishes as string[]}::text[])`;
}
