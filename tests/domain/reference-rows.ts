/** The shipped reference rows, read and parsed once per test file. */
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import { catalogueSchema, type Catalogue } from "../../shared/catalogue.js";
import { labelLawSchema, type LabelLaw } from "../../shared/label-law.js";
import { mealSharesSchema, type MealShares } from "../../shared/meal-shares.js";
import { creditTable, type CreditTable } from "../../shared/credits.js";
import { holdingModelFile, type HoldingModel } from "../../shared/holding-model.js";
import type { ChokingRule, HoldingLimits } from "../../src/domain/brief.js";

const folder = join(process.cwd(), "seeds", "reference");

function readJson(...path: string[]): Record<string, unknown> {
  return JSON.parse(readFileSync(join(folder, ...path), "utf8")) as Record<string, unknown>;
}

function readRows(subfolder: string, field: string): unknown[] {
  return readdirSync(join(folder, subfolder))
    .filter((name) => name.endsWith(".json"))
    .sort()
    .flatMap((name) => readJson(subfolder, name)[field] as unknown[]);
}

/** Parsed by the catalogue's own schema; throws with the path of the first field that is wrong. */
export function readCatalogue(): Catalogue {
  return catalogueSchema.parse({
    foods: readRows("foods", "foods"),
    bases: readJson("bases.json").bases,
    dishes: readRows("dishes", "dishes"),
    retention: readJson("retention.json").factors,
  });
}

export function readMealShares(): MealShares {
  return mealSharesSchema.parse(readJson("meal-shares.json").shares);
}

export function readCredits(): CreditTable {
  return creditTable.parse(readJson("credits.json"));
}

export function readLabelLaws(): LabelLaw[] {
  return z.array(labelLawSchema).parse(readJson("label-laws.json").laws);
}

export function readChokingRules(): ChokingRule[] {
  return readJson("choking.json").rules as ChokingRule[];
}

export function readHoldingModel(): HoldingModel {
  return holdingModelFile.parse(readJson("holding-model.json"));
}

/** The time rules alone, without the model. */
export function readHoldingLimits(): HoldingLimits {
  return readJson("holding-limits.json").limits as HoldingLimits;
}
