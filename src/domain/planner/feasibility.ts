/** Whether a problem has a week at all, whatever it costs: proof against, a week, or a search that found none. */
import { solve } from "./anneal.js";
import { tryEveryWeek } from "./every-week.js";
import type { Clash, Problem } from "./problem.js";
import { reachOf } from "./reach.js";

/** CERTAIN: no week can be, as a row is out of reach or every choice was tried. SEARCHED: a search of a fixed length met none. */
export type Proof = "CERTAIN" | "SEARCHED";

export type Plannability =
  | { readonly kind: "PLANNABLE"; readonly picks: readonly number[] }
  | {
      readonly kind: "UNPLANNABLE";
      readonly proof: Proof;
      /** What the nearest miss of the search still breaks; empty where no search was needed. */
      readonly clashes: readonly Clash[];
    };

export interface FeasibilityOptions {
  /** Unsigned 32-bit. */
  readonly seed: number;
  /** Moves of the search at most; a small problem takes fewer. */
  readonly steps: number;
  /** How much longer than a short look it may take, 1 for a short one. */
  readonly patience?: number;
  /** Whether every choice is tried when the search met nothing; true when absent. */
  readonly triesAll?: boolean;
  readonly start?: readonly number[];
  readonly shouldStop?: () => boolean;
}

/** Moves that a problem is given per candidate of its free places, and at least. */
const STEPS_A_CANDIDATE = 25;
const LEAST_STEPS = 400;
/** Half-made weeks that the exhaustive try may look at, and whole kitchens. */
const NODES = 6_000;
const KITCHENS = 40;
/** Weeks of more choices than this are not begun on in a short look. */
const CHOICES = 3_000;

/** The problem with every hard row and no wish: all weeks cost the same. */
function withoutWishes(problem: Problem): Problem {
  return {
    ...problem,
    positions: problem.positions.map((position) => ({
      ...position,
      candidates: position.candidates.map((candidate) => ({ ...candidate, cost: 0 })),
    })),
    targets: [],
    windows: problem.windows.map((window) => ({ ...window, effort: 0 })),
    bases: problem.bases.map((base) => ({ ...base, wastePerThousand: 0 })),
    stayClose: null,
  };
}

const choicesOf = ({ candidates, fixed }: Problem["positions"][number]): number =>
  fixed >= 0 ? Math.min(1, candidates.length) : candidates.length;

/** Sums and counts that no choice brings within their limits, where every place has one. */
export function outOfReach(problem: Problem): { readonly name: string; readonly positions: readonly number[] }[] {
  const isEmpty = (p: number): boolean => choicesOf(problem.positions[p]!) === 0;
  const sums = problem.bands.filter(({ measure, positions, lo, hi }) => {
    if (positions.some(isEmpty)) return false;
    const { least, most } = reachOf(problem, measure, positions);
    return (lo !== null && most < lo) || (hi !== null && least > hi);
  });
  const counts = problem.distinct.filter(({ atLeast }, r) => countInReach(problem, r) < atLeast);
  return [...sums, ...counts];
}

/** The most different days or kinds that a count could come to, each place on its own. */
function countInReach({ positions, distinct }: Problem, r: number): number {
  const { counts, measure, positions: over } = distinct[r]!;
  const found = new Set<number>();
  for (const p of over) {
    for (const { q, kinds } of positions[p]!.candidates) {
      if (q[measure]! > 0) found.add(counts === "DAYS" ? positions[p]!.day : (kinds?.[r] ?? -1));
    }
  }
  found.delete(-1);
  return Math.min(found.size, over.length);
}

/** Looks for any week: first what is out of reach, then a search that stops at its first week, then, if small, every choice. */
export function judgePlannability(problem: Problem, options: FeasibilityOptions): Plannability {
  const certain: Plannability = { kind: "UNPLANNABLE", proof: "CERTAIN", clashes: [] };
  if (problem.positions.some((position) => choicesOf(position) === 0)) return certain;
  if (outOfReach(problem).length > 0) return certain;
  if (problem.positions.length === 0) return { kind: "PLANNABLE", picks: [] };
  const bare = withoutWishes(problem);
  const sweep = bare.positions.reduce((sum, position) => sum + (choicesOf(position) > 1 ? choicesOf(position) : 0), 0);
  let isMet = false;
  const found = solve(bare, {
    seed: options.seed,
    steps: Math.min(options.steps, LEAST_STEPS + STEPS_A_CANDIDATE * sweep * (options.patience ?? 1)),
    ...(options.start === undefined ? {} : { start: options.start }),
    onBetter: () => {
      isMet = true;
    },
    shouldStop: () => isMet || options.shouldStop?.() === true,
  });
  if (found.feasible) return { kind: "PLANNABLE", picks: found.picks };
  const searched: Plannability = { kind: "UNPLANNABLE", proof: "SEARCHED", clashes: found.clashes };
  const patience = options.patience ?? 1;
  const choices = bare.positions.reduce((product, position) => product * choicesOf(position), 1);
  if (patience === 1 && choices > CHOICES) return searched;
  if (options.triesAll === false || options.shouldStop?.() === true) return searched;
  const tried = tryEveryWeek(bare, {
    nodes: NODES * patience,
    kitchens: KITCHENS * patience,
  });
  if (tried.kind === "FOUND") return { kind: "PLANNABLE", picks: tried.picks };
  return tried.kind === "NONE" ? certain : searched;
}
