/** What cooking leaves of a nutrient: true retention, as a part of all that was in the raw food. */
import type { Retention } from "../../../shared/catalogue.js";
import { nutrientTag, type NutrientTag } from "../../../shared/codes.js";

/**
 * Where a part comes from. TABLE: a published factor. FLOOR: none was read for this food and method, so a minimum counts the
 * least that any row leaves and a maximum counts all of it. WHOLE: cooking takes none.
 */
export type RetentionBasis = "TABLE" | "FLOOR" | "WHOLE";

/** Parts of one, 0 to 1: what a minimum may count and what a maximum has to. */
export interface Retained {
  readonly basis: RetentionBasis;
  readonly atLeast: number;
  readonly atMost: number;
}

export interface Cooking {
  readonly row: Retention;
  readonly retained: Readonly<Record<NutrientTag, Retained>>;
}

export const whole: Retained = { basis: "WHOLE", atLeast: 1, atMost: 1 };

/** Cooking changes these; sodium is a mineral too, but none of it is taken off: its limit has to count all. */
const minerals: readonly NutrientTag[] = ["CA", "FE", "MG", "P", "K", "ZN"];
const vitamins: readonly NutrientTag[] = ["VITA_RAE", "VITC", "VITB12", "FOLDFE", "VITD"];

type Percent = Partial<Readonly<Record<NutrientTag, number>>>;

/**
 * The least of a nutrient that any row leaves; where no row states one, the least of any mineral or any vitamin. Our estimate,
 * on the low side: the published table is longer than what was read of it.
 */
function floorOf(rows: readonly Retention[], nutrient: NutrientTag): number {
  const readOf = (tag: NutrientTag): number[] => rows.flatMap(({ percent }) => (percent as Percent)[tag] ?? []);
  const own = readOf(nutrient);
  const read = own.length > 0 ? own : (minerals.includes(nutrient) ? minerals : vitamins).flatMap(readOf);
  return read.length > 0 ? Math.min(...read) / 100 : 0;
}

/** Look-up by code over the rows of the retention table; undefined for a code it does not have. */
export function indexRetention(rows: readonly Retention[]): (code: string) => Cooking | undefined {
  const floors = new Map([...minerals, ...vitamins].map((nutrient) => [nutrient, floorOf(rows, nutrient)]));
  const cookings = new Map(
    rows.map((row): [string, Cooking] => {
      const percent: Percent = row.percent;
      const retain = (nutrient: NutrientTag): Retained => {
        const floor = floors.get(nutrient);
        if (floor === undefined) return whole;
        const read = percent[nutrient];
        if (read === undefined) return { basis: "FLOOR", atLeast: floor, atMost: 1 };
        return { basis: "TABLE", atLeast: read / 100, atMost: read / 100 };
      };
      const retained = Object.fromEntries(nutrientTag.options.map((nutrient) => [nutrient, retain(nutrient)]));
      return [row.code, { row, retained: retained as Record<NutrientTag, Retained> }];
    }),
  );
  return (code) => cookings.get(code);
}
