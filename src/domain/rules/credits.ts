/** How many cups, ounce equivalents, grams or millilitres a matcher means in an item. */
import type { CreditRow, CreditTable } from "../../../shared/credits.js";
import type { AmountUnit } from "../../../shared/rule-set.js";
import type { DerivedDish, FlatIngredient } from "../catalogue/derive.js";
import type { Meant } from "./match.js";

/** For rules that count in nothing that is credited: a cup of anything is not known. */
export const noCredits: CreditTable = {
  note: "credits nothing",
  steps: { CUPS: 1, OZ_EQ: 1, OZ_EQ_MYPLATE: 1 },
  rows: [],
};

/** What is meant in a gram of a dish as served. */
export interface AmountPerGram {
  /** Of what is known; in the unit's own measure, before an item is rounded down. */
  readonly perGram: number;
  /** Foods meant of which nothing is known in this unit. Empty: `perGram` is all there is. */
  readonly unknown: readonly string[];
}

interface ReadCredits {
  /** Numbers of the rows that name a food, by food, and of those that name none; in the table's order. */
  readonly named: ReadonlyMap<string, readonly number[]>;
  readonly general: readonly number[];
}
/** A table is read once, however many weeks are judged by it. */
const known = new WeakMap<CreditTable, ReadCredits>();

function readRows(table: CreditTable): ReadCredits {
  const before = known.get(table);
  if (before !== undefined) return before;
  const named = new Map<string, number[]>();
  const general: number[] = [];
  table.rows.forEach(({ foods }, at) => {
    if (foods === undefined) general.push(at);
    for (const food of foods ?? []) {
      const rows = named.get(food);
      if (rows === undefined) named.set(food, [at]);
      else rows.push(at);
    }
  });
  const read = { named, general };
  known.set(table, read);
  return read;
}

const states = <T>(stated: readonly T[] | undefined, value: T): boolean =>
  stated === undefined || stated.includes(value);

const fits = (row: CreditRow, unit: AmountUnit, { food, form }: FlatIngredient): boolean =>
  row.unit === unit && states(row.kinds, food.kind) && states(row.groups, food.group) && states(row.forms, form);

/** Units in one gram of an ingredient; null when that is not known. The first row that fits counts, by name or by group. */
function unitsPerGram(unit: AmountUnit, ingredient: FlatIngredient, credits: CreditTable): number | null {
  const { food } = ingredient;
  if (unit === "GRAMS") return 1;
  if (unit === "ML") return food.densityGramsPerMl === null ? null : 1 / food.densityGramsPerMl;
  const { named, general } = readRows(credits);
  const { rows } = credits;
  const byName = named.get(food.key)?.find((at) => fits(rows[at]!, unit, ingredient));
  const byGroup = general.find((at) => fits(rows[at]!, unit, ingredient));
  if (byName === undefined && byGroup === undefined) return null;
  const { grams } = rows[Math.min(byName ?? rows.length, byGroup ?? rows.length)]!;
  return grams === null ? 0 : 1 / grams;
}

/** An item meant as a whole weighs what is served and takes the volume of its dish; a credit is always of its ingredients. */
export function amountPerGram(
  unit: AmountUnit,
  { dish, grams }: DerivedDish,
  { ingredients, wholeItem }: Meant,
  credits: CreditTable,
): AmountPerGram {
  if (wholeItem && unit === "GRAMS") return { perGram: 1, unknown: [] };
  if (wholeItem && unit === "ML") return { perGram: dish.volumeMl / grams, unknown: [] };
  let amount = 0;
  const unknown = new Set<string>();
  for (const ingredient of ingredients) {
    const units = unitsPerGram(unit, ingredient, credits);
    if (units === null) unknown.add(ingredient.food.key);
    else amount += ingredient.grams * units;
  }
  return { perGram: amount / grams, unknown: [...unknown] };
}

/** Whole steps of the unit; grams and millilitres have none. `roundCredit("OZ_EQ", 2.035, credits)` is 2 where a step is 0.25. */
export function roundCredit(unit: AmountUnit, amount: number, { steps }: CreditTable): number {
  if (unit === "GRAMS" || unit === "ML") return amount;
  const step = steps[unit];
  // Binary fractions of a step that is reached exactly fall a little short of it.
  return Math.floor(amount / step + 1e-9) * step;
}
