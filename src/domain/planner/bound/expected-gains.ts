/**
 * What a split on a column is expected to add to the bound on either side, from what earlier splits on it added per unit that the
 * column was moved: pseudo-costs (Benichou and others 1971), begun by trying both sides (Linderoth and Savelsbergh 1999; from memory).
 */
export type Side = "LOW" | "HIGH";

export class ExpectedGains {
  private readonly sums: Record<Side, Float64Array>;
  private readonly times: Record<Side, Int32Array>;

  constructor(columns: number) {
    this.sums = { LOW: new Float64Array(columns), HIGH: new Float64Array(columns) };
    this.times = { LOW: new Int32Array(columns), HIGH: new Int32Array(columns) };
  }

  /** @param gain cost units that the side added; @param moved how far its bound lies from the value the column had, above 0 */
  note(column: number, side: Side, gain: number, moved: number): void {
    this.sums[side][column]! += gain / moved;
    this.times[side][column]! += 1;
  }

  /** Whether both sides of a split on the column have been seen. */
  knows(column: number): boolean {
    return this.times.LOW[column]! > 0 && this.times.HIGH[column]! > 0;
  }

  /** Cost units per unit on a side, by column; one that was never split counts as the mean of those that were, or as `unknown`. */
  perUnit(side: Side, unknown: number): (column: number) => number {
    const sums = this.sums[side];
    const times = this.times[side];
    let total = 0;
    let seen = 0;
    for (let column = 0; column < sums.length; column += 1) {
      if (times[column] === 0) continue;
      total += sums[column]! / times[column]!;
      seen += 1;
    }
    const mean = seen === 0 ? unknown : total / seen;
    return (column) => (times[column] === 0 ? mean : sums[column]! / times[column]!);
  }
}
