/** What can be asked about a week besides planning it. One door, so that every place that runs searches runs these alike. */
import type { PlaceBrief, WeekBrief } from "../brief.js";
import type { CatalogueIndex } from "../catalogue/derive.js";
import type { WeekDraft } from "../week.js";
import { findClashes, type ClashSet } from "./clashes.js";
import { priceAlternatives, priceDish, type DishPrice, type PricedDish, type SlotOfDay } from "./price.js";
import { findWaysOut, type VerifiedWayOut } from "./ways-out.js";

/** Why a week cannot be planned, and what would make it possible. */
export interface InfeasibleWeek {
  /** Null when a week was found after all: the search that failed had missed it. */
  readonly clashes: ClashSet | null;
  readonly waysOut: readonly VerifiedWayOut[];
}

export type Question =
  | {
      readonly kind: "PRICE_ALTERNATIVES";
      readonly brief: WeekBrief;
      readonly draft: WeekDraft;
      readonly place: PlaceBrief;
      readonly first: number;
    }
  | {
      readonly kind: "PRICE_DISH";
      readonly brief: WeekBrief;
      readonly draft: WeekDraft;
      readonly at: SlotOfDay;
      /** Key of a dish of the brief's catalogue. */
      readonly dish: string;
    }
  /** Days before `notBefore` are over. */
  | { readonly kind: "INFEASIBLE_WEEK"; readonly brief: WeekBrief; readonly notBefore: string };

export interface Answers {
  readonly PRICE_ALTERNATIVES: readonly PricedDish[];
  readonly PRICE_DISH: DishPrice;
  readonly INFEASIBLE_WEEK: InfeasibleWeek;
}
export type AnswerTo<Q extends Question> = Answers[Q["kind"]];

const SEED = 1;
/** Moves of one of the many small searches behind an explanation. */
const STEPS = 12_000;

/**
 * Answers by searching again, with a fixed number of moves: the same question has the same answer on any machine. Stopped, it
 * answers with what it has. Throws RangeError on an unknown dish or a brief that contradicts itself.
 */
export function answerQuestion<Q extends Question>(
  question: Q,
  index: CatalogueIndex,
  shouldStop: () => boolean = () => false,
): AnswerTo<Q> {
  // Each case answers its own kind; the compiler cannot follow that through a union.
  return answer(question, index, shouldStop) as AnswerTo<Q>;
}

function answer(question: Question, index: CatalogueIndex, shouldStop: () => boolean): Answers[Question["kind"]] {
  switch (question.kind) {
    case "PRICE_ALTERNATIVES": {
      const { brief, draft, place, first } = question;
      return priceAlternatives(brief, draft, place, first, index, { shouldStop });
    }
    case "PRICE_DISH": {
      const dish = index.dish(question.dish);
      if (dish === undefined) throw new RangeError(`no dish ${question.dish} in the brief's catalogue`);
      return priceDish(question.brief, question.draft, question.at, dish, index, { shouldStop });
    }
    case "INFEASIBLE_WEEK": {
      const { brief, notBefore } = question;
      const options = { seed: SEED, steps: STEPS, shouldStop };
      const clashes = findClashes(brief, index, options);
      return {
        clashes,
        waysOut: clashes === null ? [] : findWaysOut(brief, index, clashes, { ...options, notBefore }),
      };
    }
  }
}
