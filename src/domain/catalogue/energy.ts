/** Energy of a food by the general Atwater factors, to hold against the energy its table prints. */
import type { Food } from "../../../shared/catalogue.js";
import { kcalPerGram } from "../nutrition/reference-values.js";

/**
 * kcal per 100 g from protein, fat, carbohydrate and fibre at 4, 9, 4 and 2. Carbohydrate is by difference and holds the fibre,
 * as in the USDA table; what is missing counts as none. Alcohol, acids and minerals are not seen, and USDA itself uses factors
 * of each food, so a table's figure may differ with reason.
 */
function explainedKcal({ PROCNT = 0, FAT = 0, CHOCDF = 0, FIBTG = 0 }: Food["nutrients"]): number {
  return (
    PROCNT * kcalPerGram.PROCNT +
    FAT * kcalPerGram.FAT +
    (CHOCDF - FIBTG) * kcalPerGram.CHOCDF +
    FIBTG * kcalPerGram.FIBTG
  );
}

/** Whether the factors come within 10 % or 12 kcal of the table, whichever is more; false where the table has no energy. */
export function isEnergyExplained({ nutrients }: Pick<Food, "nutrients">): boolean {
  const table = nutrients.ENERC_KCAL;
  return table !== undefined && Math.abs(explainedKcal(nutrients) - table) <= Math.max(12, 0.1 * table);
}
