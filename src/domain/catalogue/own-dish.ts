/** A dish as a household enters it, turned into a row of the catalogue and checked against the rows it names. */
import type { Dish, Food, Ingredient } from "../../../shared/catalogue.js";
import type { OwnDishInput } from "../../../shared/own-catalogue.js";
import type { CatalogueBrief } from "../brief.js";
import { fail, ok, type Result } from "../result.js";
import { checkCatalogue, massOutOverIn } from "./derive.js";

/** Where it is in the input, as a path: ingredients, 2, ml. */
type Line = readonly (string | number)[];
export type OwnDishFault =
  | { readonly kind: "UnknownFood"; readonly at: Line; readonly food: string }
  | { readonly kind: "UnknownBase"; readonly at: Line; readonly base: string }
  | { readonly kind: "UnknownRetention"; readonly at: Line; readonly retention: string }
  | { readonly kind: "CookedTwice"; readonly at: Line; readonly food: string }
  | { readonly kind: "NoDensity"; readonly at: Line; readonly food: string; readonly ml: number }
  | { readonly kind: "TooMuch"; readonly at: Line; readonly grams: number; readonly mostGrams: number }
  | { readonly kind: "Empty"; readonly at: Line }
  | {
      readonly kind: "MassBalance";
      readonly at: Line;
      readonly inGrams: number;
      readonly outGrams: number;
      readonly leastGrams: number;
      readonly mostGrams: number;
    }
  | { readonly kind: "PiecesOffStep"; readonly at: Line; readonly pieces: number; readonly stepPieces: number };

/** Nobody packs more of one thing in one portion. */
const MOST_GRAMS = 5_000;

function portionOf({ portion }: OwnDishInput): Dish["portion"] {
  if (portion.grams != null) return { kind: "CONTINUOUS", grams: portion.grams, stepGrams: portion.stepGrams ?? 1 };
  return {
    kind: "PIECES",
    gramsPerPiece: portion.gramsPerPiece ?? 0,
    pieces: portion.pieces ?? 0,
    stepPieces: portion.stepPieces ?? 1,
    pieceName: portion.pieceName ?? "",
  };
}

function weigh(
  { food: key, grams, ml, form, retention }: OwnDishInput["ingredients"][number],
  place: number,
  foods: ReadonlyMap<string, Food>,
): Result<Ingredient, OwnDishFault> {
  const food = foods.get(key);
  if (food === undefined) return fail({ kind: "UnknownFood", at: ["ingredients", place, "food"], food: key });
  const density = food.densityGramsPerMl;
  if (ml != null && density === null)
    return fail({ kind: "NoDensity", at: ["ingredients", place, "ml"], food: key, ml });
  const weight = grams ?? (ml ?? 0) * (density ?? 0);
  if (weight > MOST_GRAMS)
    return fail({ kind: "TooMuch", at: ["ingredients", place, "ml"], grams: weight, mostGrams: MOST_GRAMS });
  return ok({ food: key, grams: weight, form, ...(retention == null ? {} : { retention }) });
}

/**
 * The row, or every fault with the line it is on: unknown foods, bases and cooking codes, millilitres of a food without
 * density, a portion that its ingredients do not add up to (`massOutOverIn`), pieces that are no whole number of steps.
 */
export function dishFromInput(
  key: string,
  input: OwnDishInput,
  catalogue: CatalogueBrief,
): Result<Dish, OwnDishFault[]> {
  const foods = new Map(catalogue.foods.map((food) => [food.key, food]));
  const faults: OwnDishFault[] = [];
  const ingredients: Ingredient[] = [];
  input.ingredients.forEach((entry, place) => {
    const weighed = weigh(entry, place, foods);
    if (weighed.ok) ingredients.push(weighed.value);
    else faults.push(weighed.error);
  });
  input.bases.forEach(({ base }, place) => {
    if (!catalogue.bases.some((row) => row.key === base))
      faults.push({ kind: "UnknownBase", at: ["bases", place, "base"], base });
  });
  if (faults.length > 0) return fail(faults);
  const { portion: _asEntered, ingredients: _unweighed, steps, ...plain } = input;
  const dish: Dish = {
    ...plain,
    key,
    ingredients,
    portion: portionOf(input),
    steps: steps.map((step) => ({ ...step, batchPortions: step.batchPortions ?? null })),
  };
  const checked = checkCatalogue({
    foods: [...catalogue.foods],
    bases: [...catalogue.bases],
    dishes: [dish],
    retention: [...catalogue.retention],
  });
  if (checked.ok) return ok(dish);
  const lineOf = (food: string) => dish.ingredients.findIndex((entry) => entry.food === food);
  for (const fault of checked.error) {
    switch (fault.kind) {
      case "EmptyDish":
        faults.push({ kind: "Empty", at: ["ingredients"] });
        break;
      case "MassBalance":
        faults.push({
          kind: "MassBalance",
          at: ["portion", dish.portion.kind === "PIECES" ? "gramsPerPiece" : "grams"],
          inGrams: fault.inGrams,
          outGrams: fault.outGrams,
          leastGrams: fault.inGrams * massOutOverIn.least,
          mostGrams: fault.inGrams * massOutOverIn.most,
        });
        break;
      case "PiecesOffStep":
        faults.push({ ...fault, at: ["portion", "pieces"] });
        break;
      case "UnknownRetention":
        faults.push({ ...fault, at: ["ingredients", lineOf(fault.food), "retention"] });
        break;
      case "CookedTwice":
        faults.push({ ...fault, at: ["ingredients", lineOf(fault.food), "retention"] });
        break;
      case "UnknownFood":
      case "UnknownBase":
      case "DuplicateKey":
      case "DuplicateNdb":
      case "DuplicateRetention":
      case "BoughtAsChain":
        // Of the rows that were there before: those passed the same check when they were loaded.
        throw new Error(`the catalogue beside an own dish is faulty: ${JSON.stringify(fault)}`);
    }
  }
  return fail(faults);
}
