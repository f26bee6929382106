/** May one dish or one food stand in one child's box on one day, and if not, what shuts it out there. */
import type { Dish, Food } from "../../../shared/catalogue.js";
import { slotCode, type ServedForm, type SlotCode } from "../../../shared/codes.js";
import type { WeekBrief } from "../brief.js";
import { indexCatalogue, type CatalogueIndex } from "../catalogue/derive.js";
import { findCandidates, type CandidateDish, type ExclusionCause } from "./candidates.js";

export interface PlaceVerdict {
  readonly breakKey: string;
  readonly slot: SlotCode;
  /** The position of the slot in its break, from 0. */
  readonly position: number;
  /** As the child would get it there; null when it may not stand there. */
  readonly candidate: CandidateDish | null;
  /** The first cause that shuts it out, in the order of `findCandidates`; null when it may stand there. */
  readonly why: ExclusionCause | null;
}

/** Verdicts for every place of the child's day that the dish is for; none when no box is packed here for that day. */
export function judgeDish(
  brief: WeekBrief,
  index: CatalogueIndex,
  at: { readonly childId: string; readonly date: string },
  dish: Dish,
): PlaceVerdict[] {
  const children = brief.children
    .filter((child) => child.id === at.childId)
    .map((child) => ({ ...child, days: child.days.filter((day) => day.date === at.date) }));
  const { places, exclusions } = findCandidates({ ...brief, children }, { ...index, dishes: [dish] });
  return places
    .filter(({ place }) => dish.slots.includes(place.slot))
    .map(({ place, dishes }) => ({
      breakKey: place.breakKey,
      slot: place.slot,
      position: place.position,
      candidate: dishes[0] ?? null,
      why: exclusions.find((row) => row.breakKey === place.breakKey && row.slot === place.slot)?.why ?? null,
    }));
}

/** Grams of a food that stands on its own. */
const PROBE_GRAMS = 50;

/**
 * A food on its own as a dish: cold, without any work, a portion of 50 g. It belongs to no family of starch or protein, asks for
 * no cutlery and is dry, because no row says otherwise: who asks about those has to know that nobody knows.
 */
export const servedAlone = (food: Food, form: ServedForm): Dish => ({
  key: `food-${food.key}-${form.toLowerCase().replaceAll("_", "-")}`,
  name: food.name,
  slots: slotCode.options,
  bases: [],
  ingredients: [{ food: food.key, grams: PROBE_GRAMS, form }],
  portion: { kind: "CONTINUOUS", grams: PROBE_GRAMS, stepGrams: PROBE_GRAMS },
  steps: [],
  served: "COLD",
  goodForHours: 24,
  cutlery: "NONE",
  spill: "DRY",
  volumeMl: Math.round(PROBE_GRAMS / (food.densityGramsPerMl ?? 1)),
  starch: "NONE",
  protein: "NONE",
  colours: [],
  textures: [],
  flavours: [],
  cuisine: "none",
  processing: [],
  cookedInFat: false,
  treat: false,
});

/**
 * The same for a food on its own, as it comes: whole, cold, without any work. What is said of it holds for every dish it goes
 * into, except that a cut or cooking may make a dish safe that the whole food is not.
 */
export function judgeFood(
  brief: WeekBrief,
  at: { readonly childId: string; readonly date: string },
  food: Food,
): PlaceVerdict[] {
  const probe = servedAlone(food, "WHOLE");
  return judgeDish(brief, indexCatalogue({ ...brief.catalogue, dishes: [probe] }), at, probe);
}
