/**
 * A linear program that holds some rows of a model and takes in others where a solution breaks them: a smaller program is solved
 * sooner, and what proves its bound proves the same for the whole model. Duals come and go by the model's row numbers.
 */
import { keepRows, type LinearModel } from "./linear-model.js";

/** Whatever solves a linear program; nothing it says is trusted. */
export interface LinearSolver {
  /**
   * Solves with these column bounds, from a basis when one is given, else from where it stands.
   * @param shouldStop asked every few iterations; true ends the program with the duals it has by then, status LIMIT
   * @param mostIterations ends early with what it has
   */
  solve(bounds: ColumnBounds, from: unknown, shouldStop: () => boolean, mostIterations?: number): LinearAnswer;
  /** Puts the rows of a model with the same columns behind its own; bases from before go on counting. */
  addRows(rows: LinearModel): void;
  /** Gives the solver's memory back; nothing may be asked of it afterwards. */
  close(): void;
}
/**
 * INTERIOR_POINT without crossover for one solution; SIMPLEX for many, each from the basis of another; CROSSOVER for many as well,
 * the first by an interior point that ends at a basis, which is sooner for a large program.
 */
export type SolvingMethod = "INTERIOR_POINT" | "SIMPLEX" | "CROSSOVER";
export type OpenSolver = (model: LinearModel, method: SolvingMethod) => LinearSolver;
export interface ColumnBounds {
  readonly lower: Float64Array;
  readonly upper: Float64Array;
}
export interface LinearAnswer {
  readonly status: "OPTIMAL" | "INFEASIBLE" | "LIMIT";
  /** Cost units, without the model's offset; only a hint. */
  readonly objective: number;
  readonly values: Float64Array;
  /** Duals; for INFEASIBLE a ray, all zero when the solver has none. */
  readonly duals: Float64Array;
  /** Null where the solver ended at none. */
  readonly basis: unknown;
}

/** Rows taken in at once, the most broken first. */
const ROWS_AT_ONCE = 50;
/** Euclidean distance from a row beyond which a solution breaks it. */
const BROKEN = 0.02;

export class GrowingProgram {
  private readonly solver: LinearSolver;
  private readonly order: number[];
  private readonly held: Uint8Array;
  private readonly lengths: Float64Array;

  /** @param rows numbers of the model's rows to begin with; all when not given */
  constructor(
    readonly model: LinearModel,
    openSolver: OpenSolver,
    method: SolvingMethod = "SIMPLEX",
    rows: readonly number[] = Array.from(model.rowLower.keys()),
  ) {
    this.held = new Uint8Array(model.rowLower.length);
    for (const row of rows) this.held[row] = 1;
    this.order = Array.from(this.held.keys()).filter((row) => this.held[row] === 1);
    this.lengths = lengthsOfRows(model);
    this.solver = openSolver(
      keepRows(model, (row) => this.held[row] === 1),
      method,
    );
  }

  solve(bounds: ColumnBounds, from: unknown, shouldStop: () => boolean, mostIterations?: number): LinearAnswer {
    const answer = this.solver.solve(bounds, from, shouldStop, mostIterations);
    const duals = new Float64Array(this.held.length);
    this.order.forEach((row, at) => {
      duals[row] = answer.duals[at]!;
    });
    return { ...answer, duals };
  }

  /** Takes in rows that these values break; how many. */
  grow(values: Float64Array): number {
    const broken: { row: number; by: number }[] = [];
    for (let row = 0; row < this.held.length; row += 1) {
      if (this.held[row] === 1) continue;
      const by = -slackOf(this.model, row, values) / this.lengths[row]!;
      if (by > BROKEN) broken.push({ row, by });
    }
    const taken = new Set(
      broken
        .sort((left, right) => right.by - left.by || left.row - right.row)
        .slice(0, ROWS_AT_ONCE)
        .map(({ row }) => row),
    );
    if (taken.size === 0) return 0;
    this.solver.addRows(keepRows(this.model, (row) => taken.has(row)));
    for (const row of [...taken].sort((left, right) => left - right)) {
      this.held[row] = 1;
      this.order.push(row);
    }
    return taken.size;
  }

  close(): void {
    this.solver.close();
  }
}

/** How far a row's sum is from its nearer side, in the row's own unit; below zero where the values break it. */
export function slackOf(model: LinearModel, row: number, values: Float64Array): number {
  let sum = 0;
  for (let entry = model.rowStart[row]!; entry < model.rowStart[row + 1]!; entry += 1)
    sum += model.rowValue[entry]! * values[model.rowColumn[entry]!]!;
  return Math.min(model.rowUpper[row]! - sum, sum - model.rowLower[row]!);
}

/** Euclidean, 1 for a row without entries. */
export function lengthsOfRows(model: LinearModel): Float64Array {
  return Float64Array.from(model.rowLower, (_, row) => {
    let squares = 0;
    for (let entry = model.rowStart[row]!; entry < model.rowStart[row + 1]!; entry += 1)
      squares += model.rowValue[entry]! ** 2;
    return squares === 0 ? 1 : Math.sqrt(squares);
  });
}
