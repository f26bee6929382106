/** The shape of every change to a household: known, allowed, not overtaken, then one more revision. */
import type { Tx } from "../database/database.js";
import type { RoleCode } from "../database/household.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import type { FailureOf } from "./failures.js";
import { leastRole, may, type Verb } from "./may.js";
import { once, type Attempt } from "./once.js";

export type HouseholdChangeFailure = FailureOf<
  "HouseholdNotFound" | "NotPermitted" | "RevisionPassed" | "InvalidInput" | "KeyReused"
>;

/**
 * The role of a person in a household; null when there is none of theirs, or the signed-in person is not of it. Nobody takes the role
 * away before the transaction ends, so it is asked before anything else is locked.
 */
export async function roleIn(tx: Tx, personId: string, householdId: string): Promise<RoleCode | null> {
  const [row] = await tx.$queryRaw<
    { role: RoleCode | null }[]
  >`select app_role_in(${householdId}::uuid, ${personId}::uuid)::text as role`;
  return row!.role;
}

/** @param householdId null stands for an ID that could not be read: it finds nothing */
export function changeHousehold<T extends object, E>(
  app: App,
  attempt: Attempt & { readonly householdId: string | null; readonly seenRevision: number; readonly verb: Verb },
  work: (tx: Tx, householdId: string) => Promise<Result<T, E>>,
): Promise<Result<T & { householdId: string }, E | HouseholdChangeFailure>> {
  return once<T & { householdId: string }, E | HouseholdChangeFailure>(app, attempt, async (tx) => {
    const { householdId } = attempt;
    const role = householdId === null ? null : await roleIn(tx, attempt.personId, householdId);
    if (role === null || householdId === null) return fail({ kind: "HouseholdNotFound" });
    if (!may(role, attempt.verb)) return fail({ kind: "NotPermitted", neededRole: leastRole[attempt.verb] });
    const moved = await tx.household.updateMany({
      where: { id: householdId, revision: attempt.seenRevision },
      data: { revision: { increment: 1 } },
    });
    if (moved.count === 0) {
      const current = await tx.household.findUniqueOrThrow({ where: { id: householdId }, select: { revision: true } });
      return fail({ kind: "RevisionPassed", seenRevision: attempt.seenRevision, currentRevision: current.revision });
    }
    const done = await work(tx, householdId);
    return done.ok ? ok({ ...done.value, householdId }) : done;
  });
}

/** Whether the household is one of the child's homes; a child that is not there or not the person's lives nowhere. */
export const livesHere = async (tx: Tx, childId: string | null, householdId: string): Promise<boolean> =>
  childId !== null &&
  (await tx.residence.findUnique({
    where: { childId_householdId: { childId, householdId } },
    select: { id: true },
  })) !== null;
