/**
 * The independent checker: does this week keep every promise the plan makes? It shares no code with the rooms that made
 * the plan. Everything is worked out again from ingredient rows, rule documents and clock times.
 */
import type { WeekBrief } from "../brief.js";
import type { WeekDraft } from "../week.js";
import { checkCautions } from "./check-cautions.js";
import { checkCompartments } from "./check-compartments.js";
import { checkCompleteness } from "./check-completeness.js";
import { checkHolding } from "./check-holding.js";
import { checkHouseRules } from "./check-house-rules.js";
import { checkBatches } from "./check-batches.js";
import { checkRules } from "./check-rules.js";
import { checkSafety } from "./check-safety.js";
import { checkShopping } from "./check-shopping.js";
import { checkTasks } from "./check-tasks.js";
import type { Fault } from "./fault.js";
import { readWeek } from "./week-read.js";

/**
 * Every fault of a planned week, safety first; empty means the week passes. Never throws on a plan that names what does
 * not exist: that is a fault. The brief itself is taken to have passed the schemas in shared/.
 */
export function checkWeek(brief: WeekBrief, draft: WeekDraft): Fault[] {
  const week = readWeek(brief, draft);
  return [
    checkSafety,
    checkHolding,
    checkRules,
    checkCompleteness,
    checkHouseRules,
    checkCompartments,
    checkBatches,
    checkTasks,
    checkShopping,
    checkCautions,
  ].flatMap((check) => check(week));
}
