/**
 * The week as the search sees it: integers only, no names. Time in tenths of a minute, base amounts in hundredths of a gram
 * (one common scale for all bases), measures as the formulation rounded them, cost in points.
 * Method: multi-choice assignment with fixed-charge, perishable, integer-batch lot sizing.
 */

export interface Candidate {
  /** Index into `Problem.dishes`. */
  readonly dish: number;
  /** Points: expected refusal, monotony, ingredient cost, rhythm. */
  readonly cost: number;
  /** One integer per measure (nutrients, ml, grams of a group, 0/1 for membership of a class). */
  readonly q: readonly number[];
  readonly bases: readonly { readonly base: number; readonly amount: number }[];
  /** Kinds for KINDS rules: bit set per rule is not needed; the list of kind numbers per `DistinctRule`. */
  readonly kinds?: readonly number[];
}

export interface FinishLoad {
  /** Tenths of a minute, once per dish and morning (or evening), whoever eats it. */
  readonly fixed: number;
  readonly perPortion: number;
  /** Equipment minutes (tenths) per dish and day, one per equipment index. */
  readonly equipment: readonly number[];
  /** Portions one go of the equipment takes; 0: no limit. Equipment minutes repeat per go. */
  readonly portionsPerGo: number;
}

export interface ProblemDish {
  readonly main: boolean;
  /** Most times a week for one child (house rule), 1 for a main, 2 otherwise. */
  readonly repeatMax: number;
  /** Starch family number, -1 none. Only mains count. */
  readonly starch: number;
  /** All work in the morning. */
  readonly morning: FinishLoad;
  /** The split when the steps that allow it are done the evening before; null when none allows it. */
  readonly split: { readonly evening: FinishLoad; readonly morning: FinishLoad } | null;
}

export interface ProblemWindow {
  readonly kind: "WEEKEND" | "EVENING" | "MORNING";
  /** The school day (index) before or on whose morning it lies; 0 for the weekend. */
  readonly day: number;
  /** Hard hands-on budget, tenths. */
  readonly minutes: number;
  /** Points per minute (not per tenth). */
  readonly effort: number;
  /** Hard equipment budget, tenths, per equipment index. */
  readonly equipment: readonly number[];
}

export interface ProblemBase {
  readonly fixed: number;
  readonly perBatch: number;
  readonly batchAmount: number;
  readonly maxBatches: number;
  /** Equipment tenths per batch. */
  readonly equipment: readonly number[];
  /** Where it can be made and which school days (inclusive) that product serves. */
  readonly windows: readonly { readonly window: number; readonly firstDay: number; readonly lastDay: number }[];
  /** Points per unit amount times 1000 left over. */
  readonly wastePerThousand: number;
  /** Refrigerator ml per batch kept over a night. */
  readonly storageMl: number;
}

/** Made already: used without set-up, on its days, cheapest first. */
export interface ReadySupply {
  readonly base: number;
  readonly amount: number;
  readonly firstDay: number;
  readonly lastDay: number;
}

export interface Position {
  readonly child: number;
  readonly day: number;
  /** Same number for all positions of one child's box on one day. */
  readonly box: number;
  /** Which kind of slot, for the sibling rule: positions of two children with the same number are compared. */
  readonly slot: number;
  readonly candidates: readonly Candidate[];
  /** Index into `candidates` that must stay, or -1. */
  readonly fixed: number;
}

/** lo <= sum of q[measure] over `positions` <= hi; a null side is open. */
export interface Band {
  readonly name: string;
  readonly measure: number;
  readonly positions: readonly number[];
  readonly lo: number | null;
  readonly hi: number | null;
}

/** Soft weekly target: points per 1 % of the target missed (below when direction is 1, above when -1). */
export interface Target {
  readonly name: string;
  readonly measure: number;
  readonly positions: readonly number[];
  readonly target: number;
  readonly direction: 1 | -1;
  readonly weight: number;
}

/** Distinct counts: DAYS with at least one matching pick, or different KINDS among matching picks. */
export interface DistinctRule {
  readonly name: string;
  readonly counts: "DAYS" | "KINDS";
  /** A 0/1 measure that says which picks match. */
  readonly measure: number;
  readonly positions: readonly number[];
  readonly atLeast: number;
  /** -1: no upper limit. */
  readonly atMost: number;
}

/** Not in one box: a pick with q[first] > 0 and another with q[second] > 0. */
export interface TogetherRule {
  readonly name: string;
  readonly first: number;
  readonly second: number;
  readonly boxes: readonly number[];
}

export interface Problem {
  readonly days: number;
  readonly children: number;
  readonly measures: number;
  readonly equipment: number;
  readonly dishes: readonly ProblemDish[];
  readonly bases: readonly ProblemBase[];
  readonly windows: readonly ProblemWindow[];
  readonly ready: readonly ReadySupply[];
  readonly positions: readonly Position[];
  readonly bands: readonly Band[];
  readonly targets: readonly Target[];
  readonly distinct: readonly DistinctRule[];
  readonly together: readonly TogetherRule[];
  /** Days on which a house rule is relaxed. */
  readonly relaxed: {
    readonly siblings: readonly number[];
    readonly repeats: readonly number[];
    readonly starch: readonly number[];
  };
  /** Consecutive-day pairs for the starch rule, by day index (calendar neighbours only). */
  readonly neighbours: readonly (readonly [number, number])[];
  readonly refrigeratorMl: number;
  /** Points added per position whose dish differs from this one (replanning); -1 free. */
  readonly stayClose: {
    readonly dishAt: readonly number[];
    readonly pointsPerBox: number;
    readonly pointsPerItem: number;
  } | null;
  /** False: every child's portion is finished on its own and bases are not shared between children (comparison only). */
  readonly sharing: boolean;
}

export interface SolvedBatch {
  readonly base: number;
  readonly window: number;
  readonly batches: number;
  /** Amount used per day index. */ readonly supply: readonly number[];
  /** Child the batch is for when sharing is off, else -1. */ readonly child: number;
}

export interface Clash {
  readonly kind:
    | "BAND"
    | "DISTINCT"
    | "TOGETHER"
    | "REPEATS"
    | "STARCH"
    | "SIBLINGS"
    | "MINUTES"
    | "EQUIPMENT"
    | "STORAGE"
    | "SUPPLY"
    | "EMPTY";
  readonly name: string;
  readonly child: number;
  readonly day: number;
  readonly window: number;
  /** By how much, in the unit of the row. */ readonly excess: number;
}

export interface Solution {
  readonly feasible: boolean;
  /** Candidate index per position. */
  readonly picks: readonly number[];
  /** Per dish and day index finished the evening before. */
  readonly eveningFinish: readonly { readonly dish: number; readonly day: number }[];
  readonly batches: readonly SolvedBatch[];
  readonly readyUse: readonly { readonly ready: number; readonly day: number; readonly amount: number }[];
  readonly objective: number;
  readonly terms: {
    readonly picks: number;
    readonly minutes: number;
    readonly waste: number;
    readonly targets: number;
    readonly distance: number;
  };
  readonly clashes: readonly Clash[];
  readonly steps: number;
}

export interface SearchOptions {
  /** Unsigned 32-bit. Same problem, seed and steps: same solution on any machine. */
  readonly seed: number;
  /** Proposed moves in all. */
  readonly steps: number;
  /** A known starting week (candidate index per position), e.g. the agreed one. */
  readonly start?: readonly number[];
  /** Called with each better feasible week, at most once per 1 % of the steps. */
  readonly onBetter?: (objective: number, stepsDone: number) => void;
  /** Asked every few hundred steps; true ends the search with the best so far. */
  readonly shouldStop?: () => boolean;
}
