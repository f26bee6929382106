/** Everything `npm run report:food` compares, read from the seeds as they are shipped. */
import { readCatalogueFiles, readSmallFiles } from "../../database/seed.js";
import type { ChokingRule } from "../../domain/brief.js";
import { indexCatalogue, type CatalogueIndex } from "../../domain/catalogue/derive.js";
import { allergenChecks } from "./allergens.js";
import type { OutsideCheck } from "./check.js";
import { chokingChecks } from "./choking.js";
import { foodChecks } from "./foods.js";
import { holdingChecks } from "./holding.js";
import { needsChecks } from "./needs.js";
import { yieldChecks } from "./yields.js";

export interface FoodReport {
  readonly index: CatalogueIndex;
  readonly choking: readonly ChokingRule[];
  readonly checks: readonly OutsideCheck[];
}

/** Throws when a file of the seeds is missing or malformed. */
export function readFoodReport(): FoodReport {
  const catalogue = readCatalogueFiles();
  const index = indexCatalogue({ version: "seeds", ...catalogue });
  const { choking, labelLaws, holding, holdingModel } = readSmallFiles();
  if (choking === null || labelLaws === null || holding === null || holdingModel === null)
    throw new Error("seeds/reference lacks one of choking, label-laws, holding-limits and holding-model.json.");
  const checks = [
    ...needsChecks(index),
    ...yieldChecks(catalogue),
    ...foodChecks(catalogue),
    ...allergenChecks(labelLaws, index),
    ...chokingChecks(choking),
    ...holdingChecks(holdingModel, holding, index),
  ];
  return { index, choking, checks };
}
