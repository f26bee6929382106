/** What comes hot out of a step: food that goes into a chilled box has to be cold by then, so it is cooked the evening before. */
import type { Base, Dish, DishStep } from "../../../shared/catalogue.js";
import type { EquipmentKind } from "../../../shared/codes.js";
import { finishSteps, type FinishPart } from "./work.js";

/** Appliances that food comes hot out of. */
export const heaters: ReadonlySet<EquipmentKind> = new Set<EquipmentKind>([
  "HOB_BURNER",
  "OVEN",
  "STEAMER",
  "MICROWAVE",
  "TOASTER",
  "RICE_COOKER",
  "WAFFLE_IRON",
  "PRESSURE_COOKER",
]);

/** A step that has to cool counts as hot even where its heat is only boiling water from the kettle. */
const isHot = (step: DishStep): boolean => step.coolMinutes > 0 || step.equipment.some((use) => heaters.has(use.kind));

export const comesHotOutOf = (dish: Dish, part: FinishPart): boolean => finishSteps(dish, part).some(isHot);

export const isCooked = (base: Base): boolean => base.equipment.some((use) => heaters.has(use.kind));
