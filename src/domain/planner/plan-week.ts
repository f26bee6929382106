/** One week from brief to plan: candidates, problem, search, clock. Pure: the same brief, seed and steps give the same week. */
import { boxKey } from "../box-key.js";
import type { WeekBrief } from "../brief.js";
import { indexCatalogue, type CatalogueIndex } from "../catalogue/derive.js";
import { TENTHS } from "../kitchen/jobs.js";
import type { WeekDraft } from "../week.js";
import { solve } from "./anneal.js";
import { findCandidates } from "./candidates.js";
import { explainClashes, explainLayOut, findPlaceConflicts, findReachConflicts, type Conflict } from "./conflicts.js";
import { formulate, type FormulationKey, type Tightening } from "./formulate.js";
import { layOut, type LayOutFault } from "./lay-out.js";
import { polishPacks } from "./polish-packs.js";
import type { Problem, SearchOptions, Solution } from "./problem.js";

export interface PlanOptions {
  /** Unsigned 32-bit. */
  readonly seed: number;
  /** Moves of a search; one that starts from a feasible week takes half as many. */
  readonly steps: number;
  readonly onBetter?: SearchOptions["onBetter"];
  readonly shouldStop?: SearchOptions["shouldStop"];
  /** An index of the brief's catalogue that is there already; without it one is made, and every dish derived anew. */
  readonly index?: CatalogueIndex;
  /** A stable digest of a text, such as SHA-256 in hexadecimal; names the problem in the week's certificate. */
  readonly hash: (text: string) => string;
}

export type WeekOutcome =
  | {
      readonly kind: "PLANNED";
      readonly draft: WeekDraft;
      readonly seed: number;
      /** Moves made, all searches together. */
      readonly steps: number;
      /** Digest of the problem that the week was found on. */
      readonly problemHash: string;
      readonly objectivePoints: number;
    }
  | { readonly kind: "INFEASIBLE"; readonly conflicts: readonly Conflict[] };

/** Searches after the first, each with less time or space where the week did not fit. */
export const MOST_REPEATS = 10;
/** Searches on one problem after a first that met no feasible week. */
const MOST_RESTARTS = 4;
/** One swap for fewer packs is worked out for so many moves of the search. */
const POLISHING = 40;
/** A session that overran gets this part of the hands-on minutes planned in it, a box that did not close this part of the volume put in it. */
const REDUCTION = 0.9;

/**
 * Plans a week. INFEASIBLE is an outcome, not an error: the conflicts say which requirements clash. Conflicts found before
 * the search are certain; those after it say what the best week met still breaks. Throws RangeError on a brief that
 * contradicts itself (unknown rule set index, a break that ends before the child leaves).
 */
export function planWeek(brief: WeekBrief, options: PlanOptions): WeekOutcome {
  const index = options.index ?? indexCatalogue(brief.catalogue);
  const candidates = findCandidates(brief, index, options.shouldStop);
  const early = findPlaceConflicts(brief, index, candidates);
  if (early.length > 0) return { kind: "INFEASIBLE", conflicts: early };

  const tightening = noLessons();
  let steps = 0;
  let searches = 0;
  let picks: readonly number[] | undefined;
  let isMiss = false;
  const search = (problem: Problem): Solution => {
    const solution = solve(problem, {
      seed: (options.seed + searches) >>> 0,
      steps: searches === 0 || isMiss ? options.steps : Math.ceil(options.steps / 2),
      ...(picks === undefined ? {} : { start: picks }),
      ...(options.onBetter === undefined ? {} : { onBetter: options.onBetter }),
      ...(options.shouldStop === undefined ? {} : { shouldStop: options.shouldStop }),
    });
    searches += 1;
    steps += solution.steps;
    picks = solution.picks;
    isMiss = !solution.feasible;
    return solution;
  };

  let faults: readonly LayOutFault[] = [];
  for (let repeat = 0; repeat <= MOST_REPEATS; repeat += 1) {
    const { problem, layout } = formulate(brief, index, candidates, tightening, options.shouldStop);
    if (repeat === 0) {
      options.shouldStop?.();
      const unreachable = findReachConflicts(problem, layout);
      if (unreachable.length > 0) return { kind: "INFEASIBLE", conflicts: unreachable };
      picks = agreedPicks(problem);
    }
    let solution = search(problem);
    // A search that ends without a week proves nothing: it goes on from the nearest miss with other dice, and when it has to
    // stay close to a week, every other time first looks for any week at all.
    for (let again = 1; again <= MOST_RESTARTS && !solution.feasible; again += 1) {
      if (options.shouldStop?.() === true) break;
      if (again % 2 === 0 && problem.stayClose !== null) search({ ...problem, stayClose: null });
      solution = search(problem);
    }
    if (!solution.feasible) {
      // In a problem tightened by guess the clock's own complaint is the truer answer.
      const conflicts = faults.length > 0 ? explainLayOut(faults) : explainClashes(brief, layout, solution.clashes);
      return { kind: "INFEASIBLE", conflicts };
    }
    options.shouldStop?.();
    const found = { brief, index, problem, layout, solution };
    // A week that has to stay near another keeps its boxes, whatever the packs.
    const polished = problem.stayClose === null ? polishPacks(found, Math.ceil(options.steps / POLISHING)) : solution;
    let draft = layOut({ ...found, solution: polished });
    // Fewer packs are no reason to overrun a session.
    if (!draft.ok && polished !== solution) draft = layOut(found);
    if (draft.ok) {
      const problemHash = options.hash(JSON.stringify(problem));
      const objectivePoints = draft.value.wishes.objectivePoints;
      return { kind: "PLANNED", draft: draft.value, seed: options.seed, steps, problemHash, objectivePoints };
    }
    faults = draft.error;
    tighten(tightening, faults, problem, layout);
  }
  return { kind: "INFEASIBLE", conflicts: explainLayOut(faults) };
}

/** The week to stay close to, as far as it is still allowed; undefined when there is none. */
export function agreedPicks({ stayClose, positions }: Problem): number[] | undefined {
  if (stayClose === null) return undefined;
  return positions.map(({ candidates }, p) =>
    Math.max(
      0,
      candidates.findIndex((candidate) => candidate.dish === stayClose.dishAt[p]),
    ),
  );
}

/** What the searches so far have taught, written down as they go. */
interface Lessons extends Tightening {
  readonly minutes: Map<string, number>;
  readonly boxMl: Map<string, number>;
  readonly apart: Set<string>;
  readonly elsewhere: Set<string>;
}

export const noLessons = (): Lessons => ({
  minutes: new Map(),
  boxMl: new Map(),
  apart: new Set(),
  elsewhere: new Set(),
});

/**
 * Keeps wet or dry food out of the boxes that would mix them, takes millilitres off the others that did not close and hands-on
 * minutes off the sessions that overran. One that overran before is long for what waits in it, not for its work: then its longest
 * base goes elsewhere.
 */
export function tighten(
  tightening: Lessons,
  faults: readonly LayOutFault[],
  problem: Problem,
  layout: FormulationKey,
): void {
  for (const fault of faults) {
    if (fault.kind === "BoxDoesNotClose") {
      const box = boxKey(fault);
      if (fault.mixes) tightening.apart.add(box);
      else tightening.boxMl.set(box, Math.floor(fault.ml * REDUCTION));
      continue;
    }
    if (fault.longestBase !== null && tightening.minutes.has(fault.session)) {
      tightening.elsewhere.add(`${fault.longestBase}@${fault.session}`);
      continue;
    }
    const budget = problem.windows[layout.sessions.indexOf(fault.session)]?.minutes ?? 0;
    // Of what was planned, not of what might have been: a limit above that changes nothing.
    const planned = Math.min(budget, fault.plannedMinutes * TENTHS);
    tightening.minutes.set(fault.session, Math.floor(planned * REDUCTION));
  }
}
