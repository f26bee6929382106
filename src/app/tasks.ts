/** Taking tasks, letting go of them, handing them on, doing them and taking that back: exactly one carer holds one. */
import { taskMinutes } from "../../shared/inputs.js";
import { isOwnKey } from "../../shared/own-catalogue.js";
import type { Tx } from "../database/database.js";
import type { RoleCode } from "../database/household.js";
import { readOwnCatalogueIn } from "../database/own-catalogue.js";
import {
  finishIfFree,
  handTo,
  lockWeekOfTask,
  readHeldTask,
  readHolder,
  readWorkAfter,
  releaseIfHeld,
  setBatchOf,
  takeIfFree,
  undoIfDone,
  type HeldTask,
} from "../database/task.js";
import { madeWith } from "../domain/kitchen/later-work.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { roleIn } from "./change-household.js";
import { weekHolding } from "./change-week.js";
import { checkInput } from "./check-input.js";
import type { FailureOf } from "./failures.js";
import { leastRole, may } from "./may.js";
import { before, once } from "./once.js";
import { indexSeen } from "./own-rows.js";

export interface TaskChange {
  readonly idempotencyKey: string;
  readonly taskId: string | null;
  readonly seenRevision: number;
}
export interface TaskRef {
  readonly taskId: string;
  readonly weekId: string;
  /** The week's, with the change. */
  readonly revision: number;
}
type TaskFailure = FailureOf<
  "InvalidInput" | "NothingThere" | "NotPermitted" | "RevisionPassed" | "KeyReused" | "TaskHeld"
>;
type TaskResult<K extends "TaskNotHeld" | "WorkUsed" | "HelperNotFound" = never> = Promise<
  Result<TaskRef, TaskFailure | FailureOf<K>>
>;

/** Who asks, and when; the week is locked. */
interface Asking {
  readonly personId: string;
  /** Whether they decide for others too. */
  readonly decides: boolean;
  readonly householdId: string;
  readonly now: Date;
}

/**
 * Other carers' tasks do not overtake each other, so the week's revision is compared but not required to be the newest:
 * what counts is that the task is of the newest plan and as the change asks for.
 */
async function changeTask<E>(
  app: App,
  personId: string,
  action: string,
  input: TaskChange,
  work: (tx: Tx, task: HeldTask, asking: Asking) => Promise<Result<null, E>>,
): Promise<Result<TaskRef, E | TaskFailure>> {
  const attempt = { personId, action, key: input.idempotencyKey, input };
  const holding = await weekHolding(app, personId, "Task", input.taskId);
  // Sent again after its plan was replaced, the change was made all the same.
  if (!holding.ok) return (await before<TaskRef>(app, attempt)) ?? holding;
  const { weekId, householdId } = holding.value;
  const taskId = input.taskId!;
  return once<TaskRef, E | TaskFailure>(app, attempt, async (tx) => {
    const nothing = fail({ kind: "NothingThere", what: "task" } as const);
    const role: RoleCode | null = await roleIn(tx, personId, householdId);
    if (role === null) return nothing;
    if (!may(role, "workOnTasks")) return fail({ kind: "NotPermitted", neededRole: leastRole.workOnTasks });
    const week = await lockWeekOfTask(tx, weekId);
    if (!week) return nothing;
    if (input.seenRevision > week.revision)
      return fail({ kind: "RevisionPassed", seenRevision: input.seenRevision, currentRevision: week.revision });
    // The plan may have been replaced since the week was found.
    const task = await readHeldTask(tx, taskId);
    if (!task) return nothing;
    const done = await work(tx, task, { personId, decides: may(role, "workForOthers"), householdId, now: app.now() });
    if (!done.ok) return done;
    // Announces the change to the other carers.
    const { revision } = await tx.week.update({
      where: { id: weekId },
      data: { revision: { increment: 1 } },
      select: { revision: true },
    });
    return ok({ taskId, weekId, revision });
  });
}

const heldBy = async (tx: Tx, task: HeldTask): Promise<Result<null, FailureOf<"TaskHeld">>> =>
  fail({ kind: "TaskHeld", holder: await readHolder(tx, task.takenById), state: task.state });

export const takeTask = (app: App, personId: string, input: TaskChange): TaskResult =>
  changeTask<FailureOf<"TaskHeld">>(app, personId, "takeTask", input, async (tx, task, { now }) =>
    (await takeIfFree(tx, task.id, personId, now)) ? ok(null) : heldBy(tx, task),
  );

/** The refusal of a task that nobody holds, or somebody else, by what it is. */
const notHeld = async (tx: Tx, task: HeldTask): Promise<Result<null, FailureOf<"TaskHeld" | "TaskNotHeld">>> =>
  task.state === "OPEN" ? fail({ kind: "TaskNotHeld", state: task.state }) : heldBy(tx, task);

export const releaseTask = (app: App, personId: string, input: TaskChange): TaskResult<"TaskNotHeld"> =>
  changeTask<FailureOf<"TaskHeld" | "TaskNotHeld">>(
    app,
    personId,
    "releaseTask",
    input,
    async (tx, task, { decides }) =>
      (await releaseIfHeld(tx, task.id, decides ? null : personId)) ? ok(null) : notHeld(tx, task),
  );

export const handTask = (
  app: App,
  personId: string,
  /** `personId` null: no person of the schema's. */
  input: TaskChange & { readonly personId: string | null },
): TaskResult<"TaskNotHeld" | "HelperNotFound"> =>
  changeTask<FailureOf<"TaskHeld" | "TaskNotHeld" | "HelperNotFound">>(
    app,
    personId,
    "handTask",
    input,
    async (tx, task, { decides, householdId, now }) => {
      const to = input.personId;
      const theirs = to === null ? null : await roleIn(tx, to, householdId);
      if (to === null || theirs === null || !may(theirs, "workOnTasks")) return fail({ kind: "HelperNotFound" });
      return (await handTo(tx, task.id, decides ? null : personId, to, now)) ? ok(null) : notHeld(tx, task);
    },
  );

export async function finishTask(
  app: App,
  personId: string,
  input: TaskChange & { readonly minutes?: number | null | undefined },
): TaskResult {
  const minutes = checkInput(taskMinutes, input.minutes, "minutes");
  if (!minutes.ok) return minutes;
  return changeTask<FailureOf<"TaskHeld">>(app, personId, "finishTask", input, async (tx, task, { now }) => {
    if (!(await finishIfFree(tx, task.id, personId, minutes.value ?? null, now))) return heldBy(tx, task);
    // The food exists now: a later replan builds on it.
    await setBatchOf(tx, task, "DONE");
    return ok(null);
  });
}

export const undoTask = (app: App, personId: string, input: TaskChange): TaskResult<"TaskNotHeld" | "WorkUsed"> =>
  changeTask<FailureOf<"TaskHeld" | "TaskNotHeld" | "WorkUsed">>(
    app,
    personId,
    "undoTask",
    input,
    async (tx, task, { decides, householdId }) => {
      if (task.state !== "DONE") return fail({ kind: "TaskNotHeld", state: task.state });
      const { done, boxes } = await readWorkAfter(tx, task);
      const isOwn = [...done.flatMap(({ dish }) => dish ?? []), ...boxes.flatMap(({ dishes }) => dishes)].some(
        isOwnKey,
      );
      const index = isOwn ? indexSeen(app, await readOwnCatalogueIn(tx)) : app.index;
      const used = madeWith(task, done, boxes, (dish) => index.dish(dish)?.bases.map(({ base }) => base) ?? []);
      if (used.tasks.length > 0 || used.boxes.length > 0)
        return fail({
          kind: "WorkUsed",
          tasks: used.tasks.map(({ text }) => text),
          boxes: used.boxes.map(({ childId, date }) => ({ childId, date, householdId })),
        });
      if (!(await undoIfDone(tx, task.id, decides ? null : personId))) return heldBy(tx, task);
      await setBatchOf(tx, task, "OPEN");
      return ok(null);
    },
  );
