/**
 * What is kept with a week to show how good it is for sure: a bound that no week of its problem falls below, and everything needed
 * to work it out again without a solver.
 */
import type { Problem } from "../problem.js";
import type { BoundTree, LeafProof } from "./bound-tree.js";
import { packProof, raiseBound, type OpenSolver } from "./branch-tree.js";
import { boundOf, checkTree, roundDuals } from "./certify.js";
import { buildLinearModel, keepRows, type LinearModel } from "./linear-model.js";

export interface Certificate {
  /** Thousandths of a point: the week it was made for. */
  readonly objective: number;
  /** Thousandths of a point, at most the objective. Every leaf of the tree was checked in exact integers. */
  readonly bound: number;
  /** Linear programs solved for it. */
  readonly nodes: number;
  /** Rows of the linear model that the tree speaks of; null: all of them. */
  readonly rows: readonly number[] | null;
  readonly tree: BoundTree;
}

/** Above this dual a row carries something at the root, cost units. */
const CARRIES = 1_000;

/**
 * Proves a bound: first by the linear program as a whole, then by a tree until `shouldStop` says so. Of the two the better one
 * whose every leaf can be checked is kept. The time and the bound depend on the machine, what the certificate says does not.
 * Null for a problem with sharing switched off.
 */
export function certify(
  problem: Problem,
  objective: number,
  openSolver: OpenSolver,
  shouldStop: () => boolean,
): Certificate | null {
  const model = buildLinearModel(problem);
  if (model === null) return null;
  const first = openSolver(model, "INTERIOR_POINT").solve(model, null);
  const duals = roundDuals(model, first.duals);
  const root: Certificate = {
    objective,
    bound: Math.min(objective, boundOf(model, duals)),
    nodes: 1,
    rows: null,
    tree: { kind: "LEAF", proof: packProof("BOUND", duals) },
  };
  if (root.bound >= objective || shouldStop()) return root;
  // Rows that carry nothing at the root are left out of the tree; a bound without them is still a bound.
  const rows = Array.from(model.rowLower.keys()).filter(
    (row) => Math.abs(first.duals[row]!) > CARRIES || model.rowLower[row] === model.rowUpper[row],
  );
  const lean = pick(model, rows);
  const grown = raiseBound(lean, openSolver(lean, "SIMPLEX"), objective, shouldStop);
  const checked = checkTree(lean, grown.tree);
  const bound = Math.min(objective, checked.bound);
  return checked.believed > 0 || bound <= root.bound
    ? { ...root, nodes: 1 + grown.nodes }
    : { objective, bound, nodes: 1 + grown.nodes, rows, tree: grown.tree };
}

/**
 * The bound that a certificate proves for a problem, in thousandths of a point, worked out from nothing but the two; null when it
 * proves none: a leaf without proof, or a row that the problem does not have.
 */
export function checkCertificate(problem: Problem, { objective, rows, tree }: Certificate): number | null {
  const model = buildLinearModel(problem);
  if (model === null || (rows !== null && rows.some((row) => !(row in model.rowLower)))) return null;
  const { bound, believed } = checkTree(rows === null ? model : pick(model, rows), tree);
  return believed > 0 ? null : Math.min(objective, bound);
}

function pick(model: LinearModel, rows: readonly number[]): LinearModel {
  const wanted = new Set(rows);
  return keepRows(model, (row) => wanted.has(row));
}

/** A certificate as text; `readCertificate` gives it back. */
export const writeCertificate = (certificate: Certificate): string =>
  JSON.stringify(certificate, (_, value: unknown) =>
    value instanceof Int32Array || value instanceof Float64Array ? Array.from(value) : value,
  );

/** @throws SyntaxError on a text that is no JSON; what it proves is for `checkCertificate` to say */
export function readCertificate(text: string): Certificate {
  return JSON.parse(text, (key, value: unknown) =>
    key === "proof" && typeof value === "object" && value !== null ? packed(value as PlainProof) : value,
  ) as Certificate;
}

interface PlainProof {
  readonly kind: LeafProof["kind"];
  readonly rows: readonly number[];
  readonly duals: readonly number[];
}
const packed = ({ kind, rows, duals }: PlainProof): LeafProof => ({
  kind,
  rows: Int32Array.from(rows),
  duals: Float64Array.from(duals),
});
