/**
 * A tree over the coarse decisions of the week (which bases, how often, how many mains of them) that raises the bound of the
 * linear program. Best bound first, strong branching; every leaf keeps the duals, or the infeasibility ray, that prove it.
 */
import type { BoundTree, LeafProof } from "./bound-tree.js";
import { boundOf, provesEmpty, roundDuals } from "./certify.js";
import { COST_UNITS, type LinearModel } from "./linear-model.js";

/** Whatever solves a linear program; nothing it says is trusted. */
export interface LinearSolver {
  /**
   * Solves with these column bounds, from a basis when one is given.
   * @param shouldStop asked every few iterations; true ends the program with the duals it has by then, status LIMIT
   * @param mostIterations ends early with what it has
   */
  solve(bounds: ColumnBounds, from: unknown, shouldStop: () => boolean, mostIterations?: number): LinearAnswer;
  /** Gives the solver's memory back; nothing may be asked of it afterwards. */
  close(): void;
}
/** INTERIOR_POINT without crossover for one solution; SIMPLEX for many, each from the basis of another. */
export type OpenSolver = (model: LinearModel, method: "INTERIOR_POINT" | "SIMPLEX") => LinearSolver;
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
  readonly basis: unknown;
}

export interface TreeResult {
  /** Thousandths of a point: the least that any leaf proves. A leaf only believed to be empty is passed over here. */
  readonly bound: number;
  readonly rootBound: number;
  readonly tree: BoundTree;
  readonly nodes: number;
  /** Leaves without proof; the bound is the solver's word when there are any. */
  readonly believed: number;
}

const CANDIDATES = 6;
const PROBE_ITERATIONS = 80;
const FRACTION = 1e-6;

interface Node {
  readonly bounds: ColumnBounds;
  readonly answer: LinearAnswer;
  /** Thousandths of a point, proved. */
  readonly bound: number;
  /** Whole millionths; what proves it. */
  readonly duals: Float64Array;
  /** Puts this node's subtree into its parent. */
  readonly put: (tree: BoundTree) => void;
}

/**
 * @param cutoff thousandths of a point of a week that is known: parts that cannot beat it are left alone
 * @param shouldStop asked before each node and within each linear program; a program that it breaks off counts with its last duals
 * or its parent's, whichever prove more
 */
export function raiseBound(
  model: LinearModel,
  solver: LinearSolver,
  cutoff: number,
  shouldStop: () => boolean,
  onBound?: (bound: number) => void,
): TreeResult {
  let tree: BoundTree = { kind: "BELIEVED_EMPTY" };
  let believed = 0;
  let nodes = 0;
  const open: Node[] = [];
  /** The least bound of the leaves that are closed. */
  let closed = Infinity;

  /** @param inherited duals of the parent, which prove as much of any part of it */
  const settle = (bounds: ColumnBounds, answer: LinearAnswer, inherited: Float64Array, put: Node["put"]): void => {
    nodes += 1;
    let duals = roundDuals(model, answer.duals);
    if (answer.status === "INFEASIBLE") {
      if (provesEmpty(model, duals, bounds.lower, bounds.upper))
        put({ kind: "LEAF", proof: packProof("EMPTY", duals) });
      else {
        believed += 1;
        put({ kind: "BELIEVED_EMPTY" });
      }
      return;
    }
    let bound = boundOf(model, duals, bounds.lower, bounds.upper);
    const before = answer.status === "LIMIT" ? boundOf(model, inherited, bounds.lower, bounds.upper) : -Infinity;
    if (before > bound) {
      duals = inherited;
      bound = before;
    }
    put({ kind: "LEAF", proof: packProof("BOUND", duals) });
    if (bound >= cutoff || answer.status === "LIMIT") closed = Math.min(closed, bound);
    else open.push({ bounds, answer, bound, duals, put });
  };

  const whole = { lower: model.lower, upper: model.upper };
  settle(whole, solver.solve(whole, null, shouldStop), new Float64Array(model.rowLower.length), (root) => {
    tree = root;
  });
  const rootBound = open[0]?.bound ?? closed;
  let told = rootBound;
  while (open.length > 0 && !shouldStop()) {
    const at = open.reduce((best, node, index) => (node.bound < open[best]!.bound ? index : best), 0);
    const node = open[at]!;
    const split = chooseSplit(model, solver, node, cutoff, shouldStop);
    if (split === null) {
      // Whole in every column that is branched on: more is not won here.
      closed = Math.min(closed, node.bound);
      open.splice(at, 1);
      continue;
    }
    open.splice(at, 1);
    const { column, at: value } = split;
    const parent: BoundTree = {
      kind: "SPLIT",
      column,
      at: value,
      low: { kind: "BELIEVED_EMPTY" },
      high: { kind: "BELIEVED_EMPTY" },
    };
    node.put(parent);
    const low = { lower: node.bounds.lower, upper: Float64Array.from(node.bounds.upper) };
    low.upper[column] = value;
    const high = { lower: Float64Array.from(node.bounds.lower), upper: node.bounds.upper };
    high.lower[column] = value + 1;
    settle(low, solver.solve(low, node.answer.basis, shouldStop), node.duals, (leaf) => {
      parent.low = leaf;
    });
    settle(high, solver.solve(high, node.answer.basis, shouldStop), node.duals, (leaf) => {
      parent.high = leaf;
    });
    const now = Math.min(closed, ...open.map(({ bound }) => bound));
    if (now > told) {
      told = now;
      onBound?.(now);
    }
  }
  const bound = Math.min(closed, cutoff, ...open.map((node) => node.bound));
  return { bound, rootBound, tree, nodes, believed };
}

/** The split whose weaker side promises most, after a few dual simplex steps on either side. */
function chooseSplit(
  model: LinearModel,
  solver: LinearSolver,
  { bounds, answer }: Node,
  cutoff: number,
  shouldStop: () => boolean,
): { column: number; at: number } | null {
  const fractionalAmong = (columns: Int32Array) =>
    Array.from(columns)
      .map((column) => ({ column, value: answer.values[column]! }))
      .map((entry) => ({ ...entry, off: Math.abs(entry.value - Math.round(entry.value)) }))
      .filter(({ off }) => off > FRACTION)
      .sort((left, right) => right.off - left.off || left.column - right.column)
      .slice(0, CANDIDATES);
  const coarse = fractionalAmong(model.whole);
  const fractional = coarse.length > 0 ? coarse : fractionalAmong(model.fine);
  const [first] = fractional;
  if (first === undefined) return null;
  if (fractional.length === 1) return { column: first.column, at: Math.floor(first.value) };
  const most = cutoff * COST_UNITS;
  let best = { column: first.column, at: Math.floor(first.value), score: -1 };
  for (const { column, value } of fractional) {
    const at = Math.floor(value);
    const gain = (change: (to: { lower: Float64Array; upper: Float64Array }) => void): number => {
      const probe = { lower: Float64Array.from(bounds.lower), upper: Float64Array.from(bounds.upper) };
      change(probe);
      const found = solver.solve(probe, answer.basis, shouldStop, PROBE_ITERATIONS);
      if (found.status === "INFEASIBLE") return most - answer.objective;
      return Math.max(1, Math.min(found.objective, most) - answer.objective);
    };
    const low = gain((to) => (to.upper[column] = at));
    const high = gain((to) => (to.lower[column] = at + 1));
    const score = Math.min(low, high) * 6 + Math.max(low, high);
    if (score > best.score) best = { column, at, score };
  }
  return best;
}

/** Whole-millionth duals as a leaf keeps them, rows with a zero left out. */
export function packProof(kind: LeafProof["kind"], duals: Float64Array): LeafProof {
  const rows = Int32Array.from(duals.keys()).filter((r) => duals[r] !== 0);
  return { kind, rows, duals: Float64Array.from(rows, (r) => duals[r]!) };
}
