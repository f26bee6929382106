/**
 * A tree over the coarse decisions of the week (which bases, how often, how many mains of them) that raises the bound of the
 * linear program. Best bound first; every leaf keeps the duals, or the infeasibility ray, that prove it.
 */
import type { BoundTree, LeafProof } from "./bound-tree.js";
import { boundOf, provesEmpty, roundDuals, unpackProof } from "./certify.js";
import { ExpectedGains, type Side } from "./expected-gains.js";
import type { ColumnBounds, GrowingProgram, LinearAnswer } from "./growing-program.js";
import { COST_UNITS, type LinearModel } from "./linear-model.js";

export interface TreeResult {
  /** Thousandths of a point: the least that any leaf proves. */
  readonly bound: number;
  readonly rootBound: number;
  readonly tree: BoundTree;
  readonly nodes: number;
}

/** Columns of a node whose sides are tried before it is split, at the first node and at the others. */
const FIRST_CANDIDATES = 20;
const CANDIDATES = 4;
const PROBE_ITERATIONS = 80;
/** Part of the whole time that trying sides may take at once, and of the tree's time so far that it may take besides. */
const FIRST_SHARE_OF_PROBES = 0.04;
const SHARE_OF_PROBES = 0.1;
const FRACTION = 1e-6;
/** Cost units: a side that adds less counts as this, so that the other side still tells splits apart. */
const LEAST_GAIN = 1000;

interface Node {
  readonly bounds: ColumnBounds;
  readonly answer: LinearAnswer;
  /** Thousandths of a point, proved. */
  readonly bound: number;
  readonly proof: LeafProof;
  /** Puts this node's subtree into its parent. */
  readonly put: (tree: BoundTree) => void;
}

interface Split {
  readonly column: number;
  readonly value: number;
}

/**
 * @param cutoff thousandths of a point of a week that is known: parts that cannot beat it are left alone
 * @param spent the part of the time that is gone, asked before each node and within each linear program; from 1 on the tree ends, and a
 * program that it breaks off counts with its last duals or its parent's, whichever prove more
 * @param known proves something of the whole already
 */
export function raiseBound(
  program: GrowingProgram,
  cutoff: number,
  spent: () => number,
  known: LeafProof = { kind: "BOUND", rows: new Int32Array(0), duals: new Float64Array(0) },
): TreeResult {
  const { model } = program;
  const shouldStop = (): boolean => spent() >= 1;
  const gains = new ExpectedGains(model.cost.length);
  const prober = new Prober(program, cutoff, spent, gains);
  let tree: BoundTree = { kind: "LEAF", proof: known };
  let nodes = 0;
  const open: Node[] = [];
  /** The least bound of the leaves that are closed. */
  let closed = Infinity;

  const solveNode = (bounds: ColumnBounds, from: unknown): LinearAnswer => {
    nodes += 1;
    const answer = program.solve(bounds, from, shouldStop);
    if (answer.status !== "OPTIMAL" || program.grow(answer.values) === 0) return answer;
    const tighter = program.solve(bounds, null, shouldStop);
    return tighter.status === "LIMIT" ? answer : tighter;
  };
  /** @param inherited proof of the parent, which holds for any part of it */
  const settle = (bounds: ColumnBounds, answer: LinearAnswer, inherited: LeafProof, put: Node["put"]): void => {
    const duals = roundDuals(model, answer.duals);
    if (answer.status === "INFEASIBLE" && provesEmpty(model, duals, bounds.lower, bounds.upper)) {
      put({ kind: "LEAF", proof: packProof("EMPTY", duals) });
      return;
    }
    const optimal = answer.status === "OPTIMAL";
    const own = answer.status === "INFEASIBLE" ? inherited : packProof("BOUND", duals);
    const [proof, bound] = [own, inherited]
      .map((some) => [some, boundOf(model, unpackProof(model, some), bounds.lower, bounds.upper)] as const)
      .reduce((best, other) => (other[1] > best[1] ? other : best));
    put({ kind: "LEAF", proof });
    if (bound < cutoff && optimal) open.push({ bounds, answer, bound, proof, put });
    else closed = Math.min(closed, bound);
  };

  const whole = { lower: model.lower, upper: model.upper };
  settle(whole, solveNode(whole, null), known, (root) => {
    tree = root;
  });
  const rootBound = open[0]?.bound ?? closed;
  while (open.length > 0 && !shouldStop()) {
    const at = open.reduce((best, node, index) => (node.bound < open[best]!.bound ? index : best), 0);
    // A part that nothing more is won of is the weakest by now.
    if (open[at]!.bound >= closed) break;
    const [node] = open.splice(at, 1) as [Node];
    const split = chooseSplit(model, node, gains, prober);
    if (split === null) {
      // Whole in every column that is branched on: more is not won here.
      closed = Math.min(closed, node.bound);
      continue;
    }
    const leaf: BoundTree = { kind: "LEAF", proof: node.proof };
    const parent: BoundTree = {
      kind: "SPLIT",
      column: split.column,
      at: Math.floor(split.value),
      low: leaf,
      high: leaf,
    };
    node.put(parent);
    for (const side of ["LOW", "HIGH"] as const) {
      const part = partOf(node.bounds, split, side);
      const answer = solveNode(part, node.answer.basis);
      if (answer.status !== "LIMIT") gains.note(split.column, side, gainOf(answer, node, cutoff), movedBy(split, side));
      settle(part, answer, node.proof, (subtree) => {
        if (side === "LOW") parent.low = subtree;
        else parent.high = subtree;
      });
    }
  }
  const bound = Math.min(closed, cutoff, ...open.map((node) => node.bound));
  return { bound, rootBound, tree, nodes };
}

function partOf({ lower, upper }: ColumnBounds, { column, value }: Split, side: Side): ColumnBounds {
  const part = { lower: Float64Array.from(lower), upper: Float64Array.from(upper) };
  if (side === "LOW") part.upper[column] = Math.floor(value);
  else part.lower[column] = Math.floor(value) + 1;
  return part;
}

const movedBy = ({ value }: Split, side: Side): number =>
  side === "LOW" ? value - Math.floor(value) : Math.floor(value) + 1 - value;

/** Cost units that a side adds to the bound of its parent, at most what is missing to the cutoff. */
function gainOf(side: LinearAnswer, { answer }: Node, cutoff: number): number {
  const missing = Math.max(0, cutoff * COST_UNITS - answer.objective);
  return side.status === "INFEASIBLE" ? missing : Math.min(missing, Math.max(0, side.objective - answer.objective));
}

/** Tries both sides of a split with a few dual simplex steps each, as long as that takes no more than its part of the time. */
class Prober {
  private taken = 0;
  private readonly began: number;
  private first = true;

  constructor(
    private readonly program: GrowingProgram,
    private readonly cutoff: number,
    private readonly spent: () => number,
    private readonly gains: ExpectedGains,
  ) {
    this.began = spent();
  }

  probe(node: Node, splits: readonly Split[]): void {
    const most = this.first ? FIRST_CANDIDATES : CANDIDATES;
    this.first = false;
    for (const split of splits.filter(({ column }) => !this.gains.knows(column)).slice(0, most)) {
      const from = this.spent();
      if (from >= 1 || this.taken > FIRST_SHARE_OF_PROBES + SHARE_OF_PROBES * (from - this.began)) return;
      for (const side of ["LOW", "HIGH"] as const) {
        const part = partOf(node.bounds, split, side);
        const found = this.program.solve(part, node.answer.basis, () => this.spent() >= 1, PROBE_ITERATIONS);
        this.gains.note(split.column, side, gainOf(found, node, this.cutoff), movedBy(split, side));
      }
      this.taken += this.spent() - from;
    }
  }
}

/** The split that promises most on both sides; null where every column that is branched on is whole. */
function chooseSplit(model: LinearModel, node: Node, gains: ExpectedGains, prober: Prober): Split | null {
  const fractionalAmong = (columns: Int32Array): Split[] =>
    Array.from(columns, (column) => ({ column, value: node.answer.values[column]! })).filter(
      ({ value }) => Math.abs(value - Math.round(value)) > FRACTION,
    );
  const coarse = fractionalAmong(model.whole);
  const fractional = coarse.length > 0 ? coarse : fractionalAmong(model.fine);
  const ranked = (): Split[] => {
    const low = gains.perUnit("LOW", COST_UNITS * 1000);
    const high = gains.perUnit("HIGH", COST_UNITS * 1000);
    const score = (split: Split): number =>
      Math.max(LEAST_GAIN, low(split.column) * movedBy(split, "LOW")) *
      Math.max(LEAST_GAIN, high(split.column) * movedBy(split, "HIGH"));
    return fractional
      .map((split) => ({ split, score: score(split) }))
      .sort((left, right) => right.score - left.score || left.split.column - right.split.column)
      .map(({ split }) => split);
  };
  if (fractional.length > 1) prober.probe(node, ranked());
  return ranked()[0] ?? null;
}

/** Whole-millionth duals as a leaf keeps them, rows with a zero left out. */
export function packProof(kind: LeafProof["kind"], duals: Float64Array): LeafProof {
  const rows = Int32Array.from(duals.keys()).filter((r) => duals[r] !== 0);
  return { kind, rows, duals: Float64Array.from(rows, (r) => duals[r]!) };
}
