/** Cross-contact within one kitchen: what is made first, and on what, when a session handles something a child avoids. */
import type { TaskPlan } from "../week.js";

/**
 * Where a task stands in its session. `SAFE_FIRST`: before anything avoided comes out. `CLEAN_FIRST`: safe, but something
 * avoided was on the worktop before it or is at the same time, so boards, knives and hands are washed first. `APART`: it
 * handles something avoided, on boards and with knives of its own. Null: nothing avoided is handled in the session.
 * Washing with soap and water, separate boards and safe food first are common practice.
 */
export type CrossContactOrder = "SAFE_FIRST" | "CLEAN_FIRST" | "APART";

type Timed = Pick<TaskPlan, "session" | "startsAt" | "handsOnMinutes" | "handles">;

/** @param tasks all tasks of the week; only those of the task's own session count */
export function orderForCrossContact(task: Timed, tasks: readonly Timed[]): CrossContactOrder | null {
  const handling = tasks.filter((other) => other.session === task.session && other.handles.length > 0);
  if (handling.length === 0) return null;
  if (task.handles.length > 0) return "APART";
  // A task without hands touches no board; what cools or bakes by itself needs no washing.
  if (task.handsOnMinutes === 0) return null;
  return handling.some((other) => other.startsAt <= task.startsAt) ? "CLEAN_FIRST" : "SAFE_FIRST";
}

/** What a session handles that somebody avoids, sorted. */
export function avoidedInSession(session: string, tasks: readonly Pick<TaskPlan, "session" | "handles">[]): string[] {
  return [...new Set(tasks.flatMap((task) => (task.session === session ? task.handles : [])))].sort();
}
