/** A solved problem beside the week it was made of. */
import type { WeekBrief } from "../brief.js";
import type { CatalogueIndex } from "../catalogue/derive.js";
import type { CandidateDish, PlaceCandidates } from "./candidates.js";
import type { FormulationKey } from "./formulate.js";
import type { Problem, Solution } from "./problem.js";

/** A dish at a place, by its position in the problem. */
export interface Pick {
  readonly place: PlaceCandidates;
  readonly dish: CandidateDish;
  readonly position: number;
}

/** A solution of a household's week with everything its numbers stand for. */
export interface SolvedWeek {
  readonly brief: WeekBrief;
  readonly index: CatalogueIndex;
  readonly problem: Problem;
  readonly layout: FormulationKey;
  readonly solution: Solution;
}
