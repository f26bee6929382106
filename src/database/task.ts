/** Tasks of the current plans as they are taken, handed on, done and taken back. Times are the caller's. */
import type { BoxOfWork, WorkDone } from "../domain/kitchen/later-work.js";
import type { Tx } from "./database.js";
import type { PersonRow } from "./household.js";
import type { TaskRow, WorkStateCode } from "./week.js";

/** A task of a plan that holds, with what it takes to decide about it. */
export interface HeldTask {
  readonly id: string;
  readonly planId: string;
  readonly key: string;
  readonly kind: TaskRow["kind"];
  readonly session: string;
  readonly base: string | null;
  readonly dish: string | null;
  readonly childIds: readonly string[];
  readonly forDates: readonly string[];
  readonly state: WorkStateCode;
  readonly takenById: string | null;
}

/** Locks the week, so that changes of its tasks follow one another and none is made to a plan that is being replaced. */
export async function lockWeekOfTask(tx: Tx, weekId: string): Promise<{ readonly revision: number } | null> {
  const [row] = await tx.$queryRaw<
    { revision: number }[]
  >`select revision from week where id = ${weekId}::uuid for update`;
  return row ?? null;
}

/** Null: of a plan that was replaced. */
export async function readHeldTask(tx: Tx, taskId: string): Promise<HeldTask | null> {
  const [row] = await tx.$queryRaw<HeldTask[]>`
    select t.id, t.week_plan_id as "planId", t.key, t.kind, t.session, t.base_key as base, t.dish_key as dish, t.child_ids as "childIds",
      t.for_dates as "forDates", t.state::text as state, t.taken_by_id as "takenById"
    from task t join week_plan p on p.id = t.week_plan_id where t.id = ${taskId}::uuid and p.state <> 'REPLACED'`;
  return row ?? null;
}

/** The carer's name; null where the reader may not see it any more. */
export const readHolder = (tx: Tx, personId: string | null): Promise<PersonRow | null> =>
  personId === null
    ? Promise.resolve(null)
    : tx.person.findUnique({ where: { id: personId }, select: { id: true, displayName: true } });

/** Each answers whether it changed the task: false where it was not, or no longer, as the change asks for. */
export const takeIfFree = async (tx: Tx, taskId: string, personId: string, now: Date): Promise<boolean> =>
  (await tx.$executeRaw`update task set state = 'TAKEN', taken_by_id = ${personId}::uuid, taken_at = coalesce(taken_at, ${now}::timestamptz)
    where id = ${taskId}::uuid and (state = 'OPEN' or (state = 'TAKEN' and taken_by_id = ${personId}::uuid))`) > 0;

/** @param holderId who must hold it; null: whoever does, or nobody */
export const handTo = async (
  tx: Tx,
  taskId: string,
  holderId: string | null,
  personId: string,
  now: Date,
): Promise<boolean> =>
  (await tx.$executeRaw`update task set state = 'TAKEN', taken_by_id = ${personId}::uuid,
      taken_at = case when taken_by_id = ${personId}::uuid then taken_at else ${now}::timestamptz end
    where id = ${taskId}::uuid and state <> 'DONE' and (${holderId}::uuid is null or (state = 'TAKEN' and taken_by_id = ${holderId}::uuid))`) >
  0;

/** @param holderId who must hold it; null: whoever does */
export const releaseIfHeld = async (tx: Tx, taskId: string, holderId: string | null): Promise<boolean> =>
  (await tx.$executeRaw`update task set state = 'OPEN', taken_by_id = null, taken_at = null
    where id = ${taskId}::uuid and state = 'TAKEN' and (${holderId}::uuid is null or taken_by_id = ${holderId}::uuid)`) >
  0;

export const finishIfFree = async (
  tx: Tx,
  taskId: string,
  personId: string,
  minutes: number | null,
  now: Date,
): Promise<boolean> =>
  (await tx.$executeRaw`update task set state = 'DONE', taken_by_id = ${personId}::uuid, taken_at = coalesce(taken_at, ${now}::timestamptz),
      done_at = ${now}::timestamptz, actual_minutes = ${minutes}::float8
    where id = ${taskId}::uuid and (state = 'OPEN' or (state = 'TAKEN' and taken_by_id = ${personId}::uuid))`) > 0;

/** @param doerId who must have done it; null: whoever has. Where that person was erased it is free again. */
export const undoIfDone = async (tx: Tx, taskId: string, doerId: string | null): Promise<boolean> =>
  (await tx.$executeRaw`update task set state = case when taken_by_id is null then 'OPEN' else 'TAKEN' end::work_state,
      taken_at = case when taken_by_id is null then null else taken_at end, done_at = null, actual_minutes = null
    where id = ${taskId}::uuid and state = 'DONE' and (${doerId}::uuid is null or taken_by_id = ${doerId}::uuid)`) > 0;

/**
 * Sets the batch that a BASE task makes. Of several batches of one base in one session it is the one that feeds the same boxes.
 * A session's second batch of a base is rare; where none feeds just these, all of them are meant.
 */
export async function setBatchOf(tx: Tx, task: HeldTask, state: "OPEN" | "DONE"): Promise<void> {
  if (task.kind !== "BASE" || task.base === null) return;
  const batches = await tx.batch.findMany({
    where: { weekPlanId: task.planId, baseKey: task.base, session: task.session },
    select: { id: true, feeds: true },
  });
  const fedBy = (feeds: unknown): string => {
    const rows = feeds as readonly { readonly date: string; readonly childIds: readonly string[] }[];
    return JSON.stringify([
      [...new Set(rows.map(({ date }) => date))].sort(),
      [...new Set(rows.flatMap(({ childIds }) => childIds))].sort(),
    ]);
  };
  const meant = JSON.stringify([[...task.forDates].sort(), [...task.childIds].sort()]);
  const its = batches.filter(({ feeds }) => fedBy(feeds) === meant);
  const ids = (its.length > 0 ? its : batches).map(({ id }) => id);
  await tx.batch.updateMany({ where: { id: { in: ids } }, data: { state } });
}

/** What may come after a task: everything done in its plan, and the boxes of its days. */
export async function readWorkAfter(
  tx: Tx,
  task: HeldTask,
): Promise<{
  readonly done: readonly WorkDone[];
  readonly boxes: readonly BoxOfWork[];
}> {
  const done = await tx.$queryRaw<WorkDone[]>`
    select t.key, t.text, t.kind, t.dish_key as dish, t.child_ids as "childIds", t.for_dates as "forDates", t.after
    from task t where t.week_plan_id = ${task.planId}::uuid and t.state = 'DONE' and t.id <> ${task.id}::uuid order by t.key`;
  const boxes = await tx.$queryRaw<BoxOfWork[]>`
    select l.child_id as "childId", l.date::text as date, (l.packed_at is not null or l.state in ('PACKED', 'EATEN')) as "isPacked",
      array(select i.dish_key from box_item i where i.lunch_box_id = l.id order by i.dish_key) as dishes
    from lunch_box l where l.week_plan_id = ${task.planId}::uuid and l.current order by l.date, l.child_id`;
  return { done, boxes };
}
