import { createRequire } from "node:module";

/** HiGHS 1.15.3 (npm `highs`), a solver of linear and mixed-integer programs in LP format: an oracle beside our own searches. */
interface Highs {
  solve: (program: string, options?: Record<string, unknown>) => { Status: string; ObjectiveValue: number };
}

export const loadHighs = createRequire(import.meta.url)("highs") as () => Promise<Highs>;
