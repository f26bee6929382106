/** What else could stand at one place, with the whole week still passing. Each answer was replanned, none is estimated. */
import type { PlaceBrief, WeekBrief } from "../brief.js";
import { indexCatalogue, type CatalogueIndex } from "../catalogue/derive.js";
import type { WeekDraft } from "../week.js";
import { solve } from "./anneal.js";
import { findCandidates, isAt, type PlaceCandidates } from "./candidates.js";
import { formulate } from "./formulate.js";
import { layOut } from "./lay-out.js";
import type { Problem, Solution } from "./problem.js";
import { POINT } from "./problem-tables.js";

export interface Alternative {
  /** Key of the dish. */
  readonly dish: string;
  readonly grams: number;
  /** Null for a dish that is weighed. */
  readonly pieces: number | null;
  /** Points the week loses by it; negative when it gains. */
  readonly objectiveDelta: number;
}

/** Only evenings and base windows are left to choose, so few moves suffice. */
const STEPS = 400;
const MOST = 5;
const SEED = 1;

/**
 * The best dishes (at most five) that may replace the item at `place` while every other item of the draft stays, cheapest
 * first; bases and evenings may be arranged anew. A dish is listed only when a week with it was found feasible and its
 * sessions and boxes hold. Empty when the place is packed, or when it or another of the draft's dishes is no longer allowed.
 */
export function alternativesFor(
  brief: WeekBrief,
  draft: WeekDraft,
  place: PlaceBrief,
  index: CatalogueIndex = indexCatalogue(brief.catalogue),
  { shouldStop }: { readonly shouldStop?: () => boolean } = {},
): Alternative[] {
  if (brief.pins.some((pin) => pin.because === "PACKED" && isAt(pin, place))) return [];
  const candidates = findCandidates(brief, index, shouldStop);
  // Every other place keeps one dish, which makes the problem small.
  const places = candidates.places.map((row): PlaceCandidates => {
    if (isAt(row.place, place)) return { ...row, pin: null };
    const eaten = dishAt(draft, row.place);
    return { ...row, dishes: row.dishes.filter(({ derived }) => derived.dish.key === eaten) };
  });
  const at = places.findIndex((row) => isAt(row.place, place));
  if (at < 0 || places.some((row) => row.dishes.length === 0)) return [];
  const around = { ...brief, stayCloseTo: [] };
  const { problem, layout } = formulate(around, index, { places, exclusions: [] }, undefined, shouldStop);
  const options = layout.options[at] ?? [];
  const stop = shouldStop === undefined ? {} : { shouldStop };
  const weekWith = (option: number): { fixed: Problem; solution: Solution } => {
    const positions = problem.positions.map((position, p) => ({ ...position, fixed: p === at ? option : 0 }));
    const fixed = { ...problem, positions };
    return { fixed, solution: solve(fixed, { seed: SEED, steps: STEPS, ...stop }) };
  };
  const current = options.findIndex(({ derived }) => derived.dish.key === dishAt(draft, place));
  if (current < 0) return [];
  const today = weekWith(current).solution.objective;
  const ranked = options
    .flatMap((option, number) =>
      number === current || shouldStop?.() === true ? [] : [{ option, ...weekWith(number) }],
    )
    .filter(({ solution }) => solution.feasible)
    .sort((a, b) => a.solution.objective - b.solution.objective);

  const found: Alternative[] = [];
  for (const { option, fixed, solution } of ranked) {
    if (found.length === MOST) break;
    shouldStop?.();
    if (!layOut({ brief: around, index, problem: fixed, layout, solution }).ok) continue;
    found.push({
      dish: option.derived.dish.key,
      grams: option.portion.grams,
      pieces: option.portion.pieces,
      objectiveDelta: (solution.objective - today) / POINT,
    });
  }
  return found;
}

function dishAt(draft: WeekDraft, place: PlaceBrief): string | undefined {
  const box = draft.boxes.find((plan) => plan.childId === place.childId && plan.date === place.date);
  return box?.items.find((item) => item.breakKey === place.breakKey && item.position === place.position)?.dish;
}
