/** What proves a bound: a tree over parts of the weeks, with a proof at every leaf. */

/** What proves a leaf: duals in whole millionths by row number, rows with a zero left out. */
export interface LeafProof {
  readonly kind: "BOUND" | "EMPTY";
  readonly rows: Int32Array;
  readonly duals: Float64Array;
}
/** A part of the weeks: proved, split in two, or (a leaf without proof) only believed by the solver to be empty. */
export type BoundTree =
  | { readonly kind: "LEAF"; readonly proof: LeafProof }
  | { readonly kind: "BELIEVED_EMPTY" }
  | { readonly kind: "SPLIT"; readonly column: number; readonly at: number; low: BoundTree; high: BoundTree };
