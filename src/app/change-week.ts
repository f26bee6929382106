/** The shape of every change to a week that already has a plan: known, allowed, not overtaken, then one more revision. */
import type { Tx } from "../database/database.js";
import { findWeekOf } from "../database/week.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { roleIn } from "./change-household.js";
import type { FailureOf } from "./failures.js";
import { leastRole, may, type Verb } from "./may.js";
import { once, type Attempt } from "./once.js";

export type WeekChangeFailure = FailureOf<
  "NothingThere" | "NotPermitted" | "RevisionPassed" | "InvalidInput" | "KeyReused"
>;

/** Where an answer about a week is read again. `changed` names boxes as "childId@date". */
export interface WeekRef {
  readonly householdId: string;
  readonly weekStart: string;
  readonly changed: readonly string[];
}

export interface LockedWeek {
  readonly weekId: string;
  readonly householdId: string;
  readonly weekStart: string;
}

/** Locks the week row, so that changes of one week follow one another, and counts the revision up. */
export async function lockWeek(
  tx: Tx,
  personId: string,
  weekId: string,
  seenRevision: number,
  verb: Verb,
): Promise<Result<LockedWeek, FailureOf<"NothingThere" | "NotPermitted" | "RevisionPassed">>> {
  const [week] = await tx.$queryRaw<{ householdId: string; weekStart: string; revision: number }[]>`
    select household_id as "householdId", week_start::text as "weekStart", revision from week where id = ${weekId}::uuid`;
  const role = week ? await roleIn(tx, personId, week.householdId) : null;
  if (!week || role === null) return fail({ kind: "NothingThere", what: "week" });
  if (!may(role, verb)) return fail({ kind: "NotPermitted", neededRole: leastRole[verb] });
  const moved = await tx.week.updateMany({
    where: { id: weekId, revision: seenRevision },
    data: { revision: { increment: 1 } },
  });
  if (moved.count === 0) {
    const now = await tx.week.findUniqueOrThrow({ where: { id: weekId }, select: { revision: true } });
    return fail({ kind: "RevisionPassed", seenRevision, currentRevision: now.revision });
  }
  return ok({ weekId, householdId: week.householdId, weekStart: week.weekStart });
}

/** The week that holds an item, box, task or shopping line of the newest plan; what is not there and what is not yours answer alike. */
export async function weekHolding(
  app: App,
  personId: string,
  kind: "BoxItem" | "Box" | "Task" | "ShoppingLine",
  id: string | null,
): Promise<Result<{ weekId: string; householdId: string }, FailureOf<"NothingThere">>> {
  const what = { BoxItem: "item", Box: "box", Task: "task", ShoppingLine: "line" }[kind];
  if (id === null) return fail({ kind: "NothingThere", what });
  const found = await app.db.readAs(personId, (tx) => findWeekOf(tx, kind, id));
  return found ? ok(found) : fail({ kind: "NothingThere", what });
}

export function changeWeek<E>(
  app: App,
  attempt: Attempt & { readonly weekId: string; readonly seenRevision: number; readonly verb: Verb },
  work: (tx: Tx, week: LockedWeek) => Promise<Result<{ changed: readonly string[] }, E>>,
): Promise<Result<WeekRef, E | WeekChangeFailure>> {
  return once<WeekRef, E | WeekChangeFailure>(app, attempt, async (tx) => {
    const locked = await lockWeek(tx, attempt.personId, attempt.weekId, attempt.seenRevision, attempt.verb);
    if (!locked.ok) return locked;
    const done = await work(tx, locked.value);
    return done.ok
      ? ok({ householdId: locked.value.householdId, weekStart: locked.value.weekStart, changed: done.value.changed })
      : done;
  });
}
