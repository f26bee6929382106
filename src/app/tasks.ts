/** Taking and finishing tasks: exactly one carer holds one. */
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { roleIn } from "./change-household.js";
import { weekHolding } from "./change-week.js";
import type { FailureOf } from "./failures.js";
import { leastRole, may } from "./may.js";
import { before, once } from "./once.js";

export interface TaskChange {
  readonly idempotencyKey: string;
  readonly taskId: string | null;
  readonly seenRevision: number;
}
export interface TaskRef {
  readonly taskId: string;
  readonly weekId: string;
}
type TaskFailure = FailureOf<
  "InvalidInput" | "NothingThere" | "NotPermitted" | "RevisionPassed" | "KeyReused" | "TaskHeld"
>;

/**
 * Other carers' tasks do not overtake each other, so the week's revision is compared but not required to be the newest:
 * what counts is that the task is still of the newest plan and still free.
 */
async function moveTask(
  app: App,
  personId: string,
  input: TaskChange,
  action: "takeTask" | "finishTask",
): Promise<Result<TaskRef, TaskFailure>> {
  const attempt = { personId, action, key: input.idempotencyKey, input };
  const known = await before<TaskRef>(app, attempt);
  if (known) return known;
  const holding = await weekHolding(app, personId, "Task", input.taskId);
  if (!holding.ok) return holding;
  const { weekId, householdId } = holding.value;
  return once<TaskRef, TaskFailure>(app, attempt, async (tx) => {
    const role = await roleIn(tx, personId, householdId);
    if (role === null) return fail({ kind: "NothingThere", what: "task" });
    if (!may(role, "workOnTasks")) return fail({ kind: "NotPermitted", neededRole: leastRole.workOnTasks });
    const week = await tx.week.findUniqueOrThrow({ where: { id: weekId }, select: { revision: true } });
    if (input.seenRevision > week.revision)
      return fail({ kind: "RevisionPassed", seenRevision: input.seenRevision, currentRevision: week.revision });
    const taskId = input.taskId!;
    const moved =
      action === "takeTask"
        ? await tx.task.updateMany({
            where: { id: taskId, OR: [{ state: "OPEN" }, { state: "TAKEN", takenById: personId }] },
            data: { state: "TAKEN", takenById: personId },
          })
        : await tx.task.updateMany({
            where: { id: taskId, OR: [{ state: "OPEN" }, { state: "TAKEN", takenById: personId }] },
            data: { state: "DONE", takenById: personId },
          });
    if (moved.count === 0) {
      const task = await tx.task.findUniqueOrThrow({ where: { id: taskId }, select: { state: true, takenById: true } });
      const holder =
        task.takenById === null
          ? null
          : await tx.person.findUnique({ where: { id: task.takenById }, select: { id: true, displayName: true } });
      return fail({ kind: "TaskHeld", holder, state: task.state });
    }
    const task = await tx.task.findUniqueOrThrow({
      where: { id: taskId },
      select: { kind: true, baseKey: true, session: true, weekPlanId: true },
    });
    if (action === "finishTask" && task.kind === "BASE" && task.baseKey !== null) {
      // The food exists now: a later replan builds on it.
      await tx.batch.updateMany({
        where: { weekPlanId: task.weekPlanId, baseKey: task.baseKey, session: task.session },
        data: { state: "DONE" },
      });
    }
    // Announces the change to the other carers.
    await tx.week.update({ where: { id: weekId }, data: { revision: { increment: 1 } }, select: { id: true } });
    return ok({ taskId, weekId });
  });
}

export const takeTask = (app: App, personId: string, input: TaskChange) => moveTask(app, personId, input, "takeTask");
export const finishTask = (app: App, personId: string, input: TaskChange) =>
  moveTask(app, personId, input, "finishTask");
