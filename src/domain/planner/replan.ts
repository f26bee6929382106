/** A week planned again from a week that is known, for what a change costs: one search, laid out, tightened where it did not fit. */
import type { PlaceBrief, WeekBrief } from "../brief.js";
import type { CatalogueIndex } from "../catalogue/derive.js";
import { fail, ok, type Result } from "../result.js";
import type { WeekDraft } from "../week.js";
import { solve } from "./anneal.js";
import { isAt, type Candidates } from "./candidates.js";
import { formulate, type Tightening } from "./formulate.js";
import { layOut } from "./lay-out.js";
import { agreedPicks, MOST_REPEATS, noLessons, tighten } from "./plan-week.js";
import type { Problem, Solution } from "./problem.js";
import { POINT } from "./problem-tables.js";

export interface ReplanOptions {
  /** Unsigned 32-bit. */
  readonly seed: number;
  /** Moves of each search. */
  readonly steps: number;
  /** One dish that has to stand at one place. */
  readonly fixed?: { readonly place: PlaceBrief; readonly dish: string };
  /** Candidate index per place to begin with; absent: the week to stay close to, if the brief has one. */
  readonly start?: readonly number[];
  readonly shouldStop?: () => boolean;
}

export interface Replanned {
  readonly draft: WeekDraft;
  /** Points of the wishes alone, without the distance from the week to stay close to. */
  readonly wishPoints: number;
}

/**
 * A second search, with other dice, begins anew in a small week and else where the first ended. Where both met no week a third looks
 * for any week at all and starts there: from a week that the change has broken in several places the near ones may all be out of
 * reach.
 */
const SEARCHES = 3;
const STEPS_A_CHOICE = 100;

/** A week, or what was taken off sessions and boxes before no week was met any more: nothing, when the search met none at all. */
export function replan(
  brief: WeekBrief,
  index: CatalogueIndex,
  candidates: Candidates,
  options: ReplanOptions,
): Result<Replanned, Tightening> {
  const tightening = noLessons();
  for (let repeat = 0; repeat <= MOST_REPEATS; repeat += 1) {
    const { problem, layout } = formulate(brief, index, candidates, tightening, options.shouldStop);
    const { fixed } = options;
    const held = fixed === undefined ? problem : holding(problem, layout.places, layout.options, fixed);
    if (held === null) return fail(tightening);
    const solution = searchNear(held, options);
    if (!solution.feasible) return fail(tightening);
    options.shouldStop?.();
    const laidOut = layOut({ brief, index, problem: held, layout, solution });
    if (laidOut.ok)
      return ok({ draft: laidOut.value, wishPoints: (solution.objective - solution.terms.distance) / POINT });
    tighten(tightening, laidOut.error, held, layout);
  }
  return fail(tightening);
}

/** Small enough for a search of so many steps to begin from several ends. */
const isSmall = ({ positions }: Problem, steps: number): boolean =>
  positions.reduce((sum, { candidates, fixed }) => sum + (fixed < 0 ? candidates.length : 0), 0) * STEPS_A_CHOICE <
  steps;

/** The best week met near the start; exported for weeks that have no household behind them. */
export function searchNear(problem: Problem, options: Omit<ReplanOptions, "fixed">): Solution {
  const { seed, steps, shouldStop } = options;
  const stop = shouldStop === undefined ? {} : { shouldStop };
  const start = options.start ?? agreedPicks(problem);
  let best = solve(problem, { seed, steps, ...(start === undefined ? {} : { start }), ...stop });
  for (let again = 1; again < SEARCHES && shouldStop?.() !== true; again += 1) {
    const dice = (seed + again) >>> 0;
    const isLast = again === SEARCHES - 1;
    if (best.feasible && isLast) break;
    const fresh = !isLast && isSmall(problem, steps);
    const any = isLast ? solve({ ...problem, stayClose: null }, { seed: dice, steps, ...stop }) : best;
    const found = solve(problem, { seed: dice, steps, ...(fresh ? {} : { start: any.picks }), ...stop });
    if (!best.feasible || (found.feasible && found.objective < best.objective)) best = found;
  }
  return best;
}

function holding(
  problem: Problem,
  places: readonly { readonly place: PlaceBrief }[],
  options: readonly (readonly { readonly derived: { readonly dish: { readonly key: string } } }[])[],
  { place, dish }: NonNullable<ReplanOptions["fixed"]>,
): Problem | null {
  const at = places.findIndex((row) => isAt(row.place, place));
  const option = options[at]?.findIndex(({ derived }) => derived.dish.key === dish) ?? -1;
  if (option < 0) return null;
  return {
    ...problem,
    positions: problem.positions.map((position, p) => (p === at ? { ...position, fixed: option } : position)),
  };
}
