/** One figure that a publication prints and the product works out: the lines of `npm run report:food`. */
export interface OutsideCheck {
  /** Unique in the report: "EN-4". */
  readonly id: string;
  readonly about: string;
  /** Where the expected answer was published, or "common practice", or "from memory". */
  readonly source: string;
  readonly expected: number | string | boolean;
  /** Largest difference that still counts as the same; 0 asks for equality. */
  readonly tolerance: number;
  /** What product code answers. */
  readonly found: number | string | boolean;
}

export function isMet({ expected, tolerance, found }: OutsideCheck): boolean {
  if (typeof expected === "number" && typeof found === "number") return Math.abs(found - expected) <= tolerance;
  return found === expected;
}
