/**
 * What is kept with a week to show how good it is for sure: a bound that no week of its problem falls below, and everything needed
 * to work it out again without a solver.
 */
import type { Problem } from "../problem.js";
import type { BoundTree, LeafProof } from "./bound-tree.js";
import { packProof, raiseBound } from "./branch-tree.js";
import { boundOf, checkTree, roundDuals } from "./certify.js";
import { GrowingProgram, lengthsOfRows, slackOf, type LinearAnswer, type OpenSolver } from "./growing-program.js";
import { buildLinearModel, keepRows, type LinearModel } from "./linear-model.js";

export interface Certificate {
  /** Thousandths of a point: the week it was made for. */
  readonly objective: number;
  /** Thousandths of a point, at most the objective. Every leaf of the tree was checked in exact integers. */
  readonly bound: number;
  /** Linear programs solved for it. */
  readonly nodes: number;
  /** Rows of the linear model by which the tree numbers them; null: all, as in every certificate made today. */
  readonly rows: readonly number[] | null;
  readonly tree: BoundTree;
}

/** Where the program as a whole is not solved within this part of the time, another method has the rest. */
const SHARE_OF_INTERIOR_POINT = 0.85;

/** Above this dual a row carries something at the root, cost units. */
const CARRIES = 1_000;
/** Euclidean distance within which a solution touches a row. */
const TOUCHES = 0.001;

/**
 * Proves a bound: first by the linear program as a whole, then by a tree. Of the two the better one whose every leaf can be checked is
 * kept. The time and the bound depend on the machine, what the certificate says does not. Null for a problem with sharing switched off.
 * @param spent the part of its time that is gone; from 1 on the proof ends, a program under way included
 * @param isBrief the program as a whole is enough: no tree
 */
export function certify(
  problem: Problem,
  objective: number,
  openSolver: OpenSolver,
  spent: () => number,
  isBrief = false,
): Certificate | null {
  const model = buildLinearModel(problem);
  if (model === null) return null;
  const shouldStop = (): boolean => spent() >= 1;
  let first = solveOnce(model, openSolver, "INTERIOR_POINT", () => spent() >= SHARE_OF_INTERIOR_POINT);
  // Broken off in its midst an interior point proves next to nothing, the simplex method all that it has reached.
  if (first.status === "LIMIT") first = solveOnce(model, openSolver, "SIMPLEX", shouldStop);
  const [duals, rootBound] = [first.duals, model.plainDuals]
    .map((some) => roundDuals(model, some))
    .map((some) => [some, boundOf(model, some)] as const)
    .reduce((best, other) => (other[1] > best[1] ? other : best));
  const root: Certificate = {
    objective,
    bound: Math.min(objective, rootBound),
    nodes: 1,
    rows: null,
    tree: { kind: "LEAF", proof: packProof("BOUND", duals) },
  };
  if (isBrief || root.bound >= objective || shouldStop()) return root;
  const program = new GrowingProgram(model, openSolver, "CROSSOVER", rowsInUse(model, first));
  const grown = raiseBound(program, objective, spent, packProof("BOUND", duals));
  program.close();
  return grown.bound <= root.bound
    ? { ...root, nodes: 1 + grown.nodes }
    : { objective, bound: grown.bound, nodes: 1 + grown.nodes, rows: null, tree: grown.tree };
}

/** Rows that carry something in a solution or that it touches; the tree begins with them. */
function rowsInUse(model: LinearModel, { duals, values }: LinearAnswer): number[] {
  const lengths = lengthsOfRows(model);
  return rowsForSolver(model).filter(
    (row) =>
      model.rowLower[row] === model.rowUpper[row] ||
      Math.abs(duals[row]!) > CARRIES ||
      slackOf(model, row, values) < TOUCHES * lengths[row]!,
  );
}

function rowsForSolver(model: LinearModel): number[] {
  const idle = new Set(model.idle);
  return Array.from(model.rowLower.keys()).filter((row) => !idle.has(row));
}

function solveOnce(
  model: LinearModel,
  openSolver: OpenSolver,
  method: "INTERIOR_POINT" | "SIMPLEX",
  shouldStop: () => boolean,
): LinearAnswer {
  const program = new GrowingProgram(model, openSolver, method, rowsForSolver(model));
  const answer = program.solve(model, null, shouldStop);
  program.close();
  return answer;
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
