import type { Food } from "../../../shared/catalogue.js";
import type { CreditRow, CreditTable, CreditUnit } from "../../../shared/credits.js";
import type { AmountUnit, Matcher } from "../../../shared/rule-set.js";
import { matchSubject } from "./matching.js";
import type { Match, Subject } from "./matching.js";
import type { ItemRead, Part, WeekRead } from "./week-read.js";

/** How much of what a matcher means: what is surely there, and the foods meant of which nobody knows how much they bring. */
export interface Measured {
  readonly known: number;
  readonly missing: ReadonlySet<Food>;
}

const subjectOf = (read: ItemRead): Subject => ({
  dish: read.dish,
  slots: [read.item.slot],
  grams: read.item.grams,
  parts: read.parts,
});
export const matchItem = (week: WeekRead, matcher: Matcher, read: ItemRead): Match | null =>
  matchSubject(week, matcher, subjectOf(read));

/** Room for the last bits of a floating sum before it is rounded down. */
const lastBits = 1e-9;

const states = <T>(stated: readonly T[] | undefined, value: T): boolean => !stated || stated.includes(value);

/** Of the rows that fit an ingredient the first counts. */
function rowFor({ rows }: CreditTable, unit: CreditUnit, { food, form }: Part): CreditRow | undefined {
  return rows.find(
    (row) =>
      row.unit === unit &&
      states(row.foods, food.key) &&
      states(row.kinds, food.kind) &&
      states(row.groups, food.group) &&
      states(row.forms, form),
  );
}

function sumParts(parts: readonly Part[], amountOf: (part: Part) => number | undefined): Measured {
  let known = 0;
  const missing = new Set<Food>();
  for (const part of parts) {
    const amount = amountOf(part);
    if (amount === undefined) missing.add(part.food);
    else known += amount;
  }
  return { known, missing };
}

/** ml of the ingredients meant, by the density on record. */
const millilitres = (parts: readonly Part[]): Measured =>
  sumParts(parts, ({ food, grams }) => (food.densityGramsPerMl === null ? undefined : grams / food.densityGramsPerMl));

/** Cups or ounce equivalents of one item: the ingredients meant, added up, then rounded down to a whole step. */
function credited(table: CreditTable, unit: CreditUnit, parts: readonly Part[]): Measured {
  const { known, missing } = sumParts(parts, (part) => {
    const row = rowFor(table, unit, part);
    if (!row) return undefined;
    return row.grams === null ? 0 : part.grams / row.grams;
  });
  const step = table.steps[unit];
  return { known: Math.floor(known / step + lastBits) * step, missing };
}

/** What one matching item brings, in a unit. */
function measureOne({ brief: { credits } }: WeekRead, unit: AmountUnit, match: Match, read: ItemRead): Measured {
  switch (unit) {
    case "GRAMS":
      return { known: match.grams, missing: new Set() };
    case "ML":
      return match.wholeItem
        ? { known: read.dish.volumeMl * read.scale, missing: new Set() }
        : millilitres(match.parts);
    case "CUPS":
    case "OZ_EQ":
    case "OZ_EQ_MYPLATE":
      return credited(credits, unit, match.parts);
  }
}

/**
 * What a matcher means in some items, in a unit. Where a clause means the item as a whole, grams are those served and millilitres
 * the volume of its dish.
 */
export function measure(week: WeekRead, unit: AmountUnit, matcher: Matcher, items: readonly ItemRead[]): Measured {
  let known = 0;
  const missing = new Set<Food>();
  for (const read of items) {
    const match = matchItem(week, matcher, read);
    if (!match) continue;
    const one = measureOne(week, unit, match, read);
    known += one.known;
    for (const food of one.missing) missing.add(food);
  }
  return { known, missing };
}
