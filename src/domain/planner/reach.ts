import type { Problem } from "./problem.js";

/** The least and the most that any choice of candidates makes of a measure over these positions. */
export function reachOf(
  { positions }: Problem,
  measure: number,
  over: readonly number[],
): { readonly least: number; readonly most: number } {
  let least = 0;
  let most = 0;
  for (const p of over) {
    let low = Infinity;
    let high = -Infinity;
    for (const { q } of positions[p]!.candidates) {
      const value = q[measure]!;
      if (value < low) low = value;
      if (value > high) high = value;
    }
    least += low;
    most += high;
  }
  return { least, most };
}
