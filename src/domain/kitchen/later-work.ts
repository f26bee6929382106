/** What was made with the work of a task: while it is there, the task cannot be said not to be done. */
import type { TaskPlan } from "../week.js";

type Work = Pick<TaskPlan, "key" | "kind" | "base" | "dish" | "childIds" | "forDates">;
/** A task that is done. */
export type WorkDone = Pick<TaskPlan, "key" | "text" | "kind" | "dish" | "childIds" | "forDates" | "after">;
export interface BoxOfWork {
  readonly childId: string;
  readonly date: string;
  readonly isPacked: boolean;
  /** Keys. */
  readonly dishes: readonly string[];
}

const meet = (some: readonly string[], others: readonly string[]): boolean => some.some((one) => others.includes(one));

/**
 * Tasks done that come after it in its session, or finish a dish of its base on one of its days, and packed boxes that hold what it
 * made. A base is looked for in every box of its children and days, whichever batch fed it: too many boxes rather than too few.
 * @param done of the same plan, the task itself left out
 * @param basesOf keys of the bases a dish is made of
 */
export function madeWith(
  task: Work,
  done: readonly WorkDone[],
  boxes: readonly BoxOfWork[],
  basesOf: (dish: string) => readonly string[],
): { readonly tasks: readonly WorkDone[]; readonly boxes: readonly BoxOfWork[] } {
  const holds = (dish: string): boolean =>
    task.kind === "PACK" ||
    (task.dish === null ? task.base !== null && basesOf(dish).includes(task.base) : dish === task.dish);
  return {
    tasks: done.filter(
      (later) =>
        later.after.includes(task.key) ||
        (task.dish === null &&
          task.base !== null &&
          later.kind === "FINISH" &&
          later.dish !== null &&
          basesOf(later.dish).includes(task.base) &&
          meet(later.forDates, task.forDates) &&
          meet(later.childIds, task.childIds)),
    ),
    boxes: boxes.filter(
      (box) =>
        box.isPacked &&
        task.childIds.includes(box.childId) &&
        task.forDates.includes(box.date) &&
        box.dishes.some(holds),
    ),
  };
}
