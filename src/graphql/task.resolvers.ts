/** Who holds which task: taken, handed on, done and taken back. */
import { finishTask, handTask, releaseTask, takeTask, undoTask, type TaskChange, type TaskRef } from "../app/tasks.js";
import { requirePerson, type GraphqlContext } from "./context.js";
import { explain } from "./explain.js";
import { localId } from "./global-id.js";
import type { Resolvers } from "./generated.js";

async function taskPayload(context: GraphqlContext, { taskId, weekId, revision }: TaskRef) {
  context.reads.forget();
  const week = await context.reads.weekById(weekId);
  const row = week?.plan.tasks.find((task) => task.id === taskId);
  // The key was used for a task of a plan that has been replaced since.
  if (!week || !row) return explain({ kind: "NothingThere", what: "task" });
  const task = { row, among: week.plan.tasks, householdId: week.householdId };
  return { __typename: "TaskPayload" as const, task, revision };
}

const decoded = <I extends { readonly taskId: string }>(input: I): I & TaskChange => ({
  ...(input as I & TaskChange),
  taskId: localId("Task", input.taskId),
});

export const taskMutations: Pick<
  NonNullable<Resolvers["Mutation"]>,
  "takeTask" | "releaseTask" | "handTask" | "finishTask" | "undoTask"
> = {
  async takeTask(_, { input }, context) {
    const taken = await takeTask(context.app, requirePerson(context), decoded(input));
    return taken.ok ? taskPayload(context, taken.value) : explain(taken.error);
  },
  async releaseTask(_, { input }, context) {
    const released = await releaseTask(context.app, requirePerson(context), decoded(input));
    return released.ok ? taskPayload(context, released.value) : explain(released.error);
  },
  async handTask(_, { input }, context) {
    const personId = localId("Person", input.personId);
    const handed = await handTask(context.app, requirePerson(context), { ...decoded(input), personId });
    return handed.ok ? taskPayload(context, handed.value) : explain(handed.error);
  },
  async finishTask(_, { input }, context) {
    const finished = await finishTask(context.app, requirePerson(context), decoded(input));
    return finished.ok ? taskPayload(context, finished.value) : explain(finished.error);
  },
  async undoTask(_, { input }, context) {
    const undone = await undoTask(context.app, requirePerson(context), decoded(input));
    return undone.ok ? taskPayload(context, undone.value) : explain(undone.error);
  },
};

export const factsOfTask: Pick<NonNullable<Resolvers["Task"]>, "takenAt" | "doneAt" | "actualMinutes" | "kept"> = {
  takenAt: ({ row }) => row.takenAt,
  doneAt: ({ row }) => row.doneAt,
  actualMinutes: ({ row }) => row.actualMinutes,
  kept: ({ row }) => row.kept,
};
