/** A lower bound that needs no trust in the solver: any duals give one, worked out in exact integers. */
import type { BoundTree, LeafProof } from "./bound-tree.js";
import { COST_UNITS, type LinearModel } from "./linear-model.js";

/** Duals are rounded to millionths. */
const DUAL_UNITS = 1_000_000;

/**
 * Duals as whole millionths; those of the wrong sign for an open side, and those that are no number, count as 0. However large: a whole
 * number in floating point is one exactly, only that its neighbours are then more than one apart.
 */
export function roundDuals(model: LinearModel, duals: ArrayLike<number>): Float64Array {
  return Float64Array.from(model.rowLower, (low, r) => {
    const rounded = Math.round((duals[r] ?? 0) * DUAL_UNITS);
    if (!Number.isFinite(rounded)) return 0;
    if (rounded > 0) return low === -Infinity ? 0 : rounded;
    return model.rowUpper[r] === Infinity ? 0 : rounded;
  });
}

/**
 * The bound that whole-millionth duals prove, in thousandths of a point, rounded down: the sum over rows of the side each dual
 * pushes against, plus for every column the cheaper end of its range at its reduced cost. Exact: all sums are big integers.
 * `lower` and `upper` may be narrower than the model's, for a part of the weeks.
 */
export function boundOf(
  model: LinearModel,
  duals: ArrayLike<number>,
  lower: ArrayLike<number> = model.lower,
  upper: ArrayLike<number> = model.upper,
): number {
  const sum = sumOfSides(model, duals, lower, upper, true) + BigInt(model.offset) * BigInt(DUAL_UNITS);
  const whole = BigInt(DUAL_UNITS) * BigInt(COST_UNITS);
  return Number(sum >= 0n ? sum / whole : -((-sum + whole - 1n) / whole));
}

/** Whether a ray proves that no point lies within these bounds: at no cost at all the least would still be above zero. */
export function provesEmpty(
  model: LinearModel,
  ray: ArrayLike<number>,
  lower: ArrayLike<number>,
  upper: ArrayLike<number>,
): boolean {
  return sumOfSides(model, ray, lower, upper, false) > 0n;
}

/**
 * Goes over a tree again, leaf by leaf, with nothing but the model: the least bound of its leaves in thousandths of a point
 * (Infinity when every leaf is empty), and how many leaves have no proof. Leaves whose proof of emptiness fails count as such.
 */
export function checkTree(
  model: LinearModel,
  tree: BoundTree,
  lower: Float64Array = model.lower,
  upper: Float64Array = model.upper,
): { readonly bound: number; readonly believed: number } {
  if (tree.kind === "BELIEVED_EMPTY") return { bound: Infinity, believed: 1 };
  if (tree.kind === "LEAF") {
    const duals = unpackProof(model, tree.proof);
    if (tree.proof.kind === "BOUND") return { bound: boundOf(model, duals, lower, upper), believed: 0 };
    return { bound: Infinity, believed: provesEmpty(model, duals, lower, upper) ? 0 : 1 };
  }
  const below = Float64Array.from(upper);
  below[tree.column] = tree.at;
  const above = Float64Array.from(lower);
  above[tree.column] = tree.at + 1;
  const low = checkTree(model, tree.low, lower, below);
  const high = checkTree(model, tree.high, above, upper);
  return { bound: Math.min(low.bound, high.bound), believed: low.believed + high.believed };
}

/** A leaf's duals, one a row of the model. */
export function unpackProof(model: LinearModel, { rows, duals }: LeafProof): Float64Array {
  const all = new Float64Array(model.rowLower.length);
  rows.forEach((row, at) => {
    all[row] = duals[at]!;
  });
  return all;
}

function sumOfSides(
  model: LinearModel,
  duals: ArrayLike<number>,
  lower: ArrayLike<number>,
  upper: ArrayLike<number>,
  priced: boolean,
): bigint {
  const unit = BigInt(DUAL_UNITS);
  const reduced = Array.from(model.cost, (cost) => (priced ? BigInt(cost) * unit : 0n));
  let sum = 0n;
  for (let r = 0; r < model.rowLower.length; r += 1) {
    const dual = duals[r]!;
    if (dual === 0) continue;
    const side = dual > 0 ? model.rowLower[r]! : model.rowUpper[r]!;
    if (!Number.isFinite(side)) throw new RangeError(`dual ${dual} pushes against an open side of row ${r}`);
    const exact = BigInt(dual);
    sum += BigInt(side) * exact;
    for (let entry = model.rowStart[r]!; entry < model.rowStart[r + 1]!; entry += 1) {
      reduced[model.rowColumn[entry]!]! -= BigInt(model.rowValue[entry]!) * exact;
    }
  }
  reduced.forEach((cost, column) => {
    sum += cost * BigInt(cost > 0n ? lower[column]! : upper[column]!);
  });
  return sum;
}
