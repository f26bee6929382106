/** One drawn household through the product's planner and, when it has a week, through the independent checker. */
import { createHash } from "node:crypto";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { checkWeek } from "../../src/domain/checker/check-week.js";
import type { Fault } from "../../src/domain/checker/fault.js";
import type { WeekBrief } from "../../src/domain/brief.js";
import { planWeek, type WeekOutcome } from "../../src/domain/planner/plan-week.js";
import { threeChildren } from "./demo-brief.js";

export interface Judged {
  readonly outcome: WeekOutcome;
  readonly faults: readonly Fault[];
  /** Wall-clock milliseconds, the checker's not included. */
  readonly planMs: number;
  readonly checkMs: number;
}

const { catalogue } = threeChildren();
const index = indexCatalogue(catalogue);
const hash = (text: string) => createHash("sha256").update(text).digest("hex");

/** @param steps moves of the search; @throws what planner or checker throw: a bug either way */
export function planAndCheck(brief: WeekBrief, seed: number, steps: number): Judged {
  const began = performance.now();
  const outcome = planWeek(brief, { seed, steps, index, hash });
  const planned = performance.now();
  const faults = outcome.kind === "PLANNED" ? checkWeek(brief, outcome.draft) : [];
  return { outcome, faults, planMs: planned - began, checkMs: performance.now() - planned };
}
