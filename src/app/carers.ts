/** Who cares for a household: roles, leaving, handing over. The last coordinator stays, however many go at once. */
import { displayName } from "../../shared/inputs.js";
import { announceIn, type Tx } from "../database/database.js";
import type { RoleCode } from "../database/household.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { checkInput, invalid } from "./check-input.js";
import type { FailureOf } from "./failures.js";
import { leastRole, may, type Verb } from "./may.js";
import { once } from "./once.js";

interface AboutHousehold {
  readonly idempotencyKey: string;
  readonly householdId: string | null;
}
interface AboutCarer extends AboutHousehold {
  readonly personId: string | null;
}
export interface ChangeRole extends AboutCarer {
  readonly role: RoleCode;
}
export interface HouseholdRef {
  readonly householdId: string;
}
type HeldFailure = FailureOf<"HouseholdNotFound" | "NotPermitted">;
type CarerFailure = HeldFailure | FailureOf<"InvalidInput" | "KeyReused" | "CarerNotFound">;

interface Held {
  readonly householdId: string;
  readonly roles: ReadonlyMap<string, RoleCode>;
}

/** Holds all carers still until the transaction ends: another change of who they are waits, and so does a task being taken. */
async function hold(
  tx: Tx,
  personId: string,
  householdId: string | null,
  verb: Verb,
): Promise<Result<Held, HeldFailure>> {
  if (householdId === null) return fail({ kind: "HouseholdNotFound" });
  const rows = await tx.$queryRaw<{ personId: string; role: RoleCode }[]>`
    select person_id as "personId", role::text as role from app_hold_carers(${householdId}::uuid)`;
  const roles = new Map(rows.map((row) => [row.personId, row.role]));
  const mine = roles.get(personId);
  if (mine === undefined) return fail({ kind: "HouseholdNotFound" });
  return may(mine, verb) ? ok({ householdId, roles }) : fail({ kind: "NotPermitted", neededRole: leastRole[verb] });
}

/** @param role null: out of the household */
async function give(
  tx: Tx,
  { householdId, roles }: Held,
  carerId: string | null,
  role: RoleCode | null,
): Promise<Result<null, FailureOf<"CarerNotFound" | "LastCoordinator">>> {
  const before = carerId === null ? undefined : roles.get(carerId);
  if (carerId === null || before === undefined) return fail({ kind: "CarerNotFound" });
  const coordinators = [...roles.values()].filter((each) => each === "COORDINATOR").length;
  if (before === "COORDINATOR" && role !== "COORDINATOR" && coordinators === 1)
    return fail({ kind: "LastCoordinator" });
  // First, so that whoever goes hears nothing of what follows.
  if (role === null) await announceIn(tx, { kind: "CARER_LEFT", householdId, personId: carerId });
  if (role === null || !may(role, "workOnTasks")) await releaseTasks(tx, householdId, carerId);
  await tx.$executeRaw`select app_change_carer(${householdId}::uuid, ${carerId}::uuid, ${role}::role)`;
  return ok(null);
}

/** What a carer has taken is open again; what they have done stays theirs. */
async function releaseTasks(tx: Tx, householdId: string, carerId: string): Promise<void> {
  const taken = await tx.task.findMany({
    where: { householdId, takenById: carerId, state: "TAKEN", plan: { state: { not: "REPLACED" } } },
    select: { id: true, plan: { select: { weekId: true } } },
  });
  if (taken.length === 0) return;
  await tx.task.updateMany({
    where: { id: { in: taken.map(({ id }) => id) } },
    data: { state: "OPEN", takenById: null, takenAt: null },
  });
  // Announces the change to the other carers, and has a plan that was made before it made again.
  await tx.week.updateMany({
    where: { id: { in: taken.map(({ plan }) => plan.weekId) } },
    data: { revision: { increment: 1 } },
  });
}

export const changeRole = (
  app: App,
  personId: string,
  input: ChangeRole,
): Promise<Result<HouseholdRef, CarerFailure | FailureOf<"LastCoordinator">>> =>
  once<HouseholdRef, CarerFailure | FailureOf<"LastCoordinator">>(
    app,
    { personId, action: "changeRole", key: input.idempotencyKey, input },
    async (tx) => {
      const held = await hold(tx, personId, input.householdId, "changeCarers");
      if (!held.ok) return held;
      const given = await give(tx, held.value, input.personId, input.role);
      return given.ok ? ok({ householdId: held.value.householdId }) : given;
    },
  );

export const removeCarer = (
  app: App,
  personId: string,
  input: AboutCarer,
): Promise<Result<HouseholdRef, CarerFailure | FailureOf<"LastCoordinator">>> =>
  once<HouseholdRef, CarerFailure | FailureOf<"LastCoordinator">>(
    app,
    { personId, action: "removeCarer", key: input.idempotencyKey, input },
    async (tx) => {
      const held = await hold(tx, personId, input.householdId, "changeCarers");
      if (!held.ok) return held;
      if (input.personId === personId)
        return fail(invalid("personId", "is yourself", "Leave with leaveHousehold, or send another carer."));
      const given = await give(tx, held.value, input.personId, null);
      return given.ok ? ok({ householdId: held.value.householdId }) : given;
    },
  );

export const leaveHousehold = (
  app: App,
  personId: string,
  input: AboutHousehold,
): Promise<Result<HouseholdRef, FailureOf<"InvalidInput" | "KeyReused" | "HouseholdNotFound" | "LastCoordinator">>> =>
  once<HouseholdRef, FailureOf<"HouseholdNotFound" | "LastCoordinator">>(
    app,
    { personId, action: "leaveHousehold", key: input.idempotencyKey, input },
    async (tx) => {
      const held = await hold(tx, personId, input.householdId, "leaveHousehold");
      if (!held.ok) return fail({ kind: "HouseholdNotFound" });
      const given = await give(tx, held.value, personId, null);
      if (given.ok) return ok({ householdId: held.value.householdId });
      return fail({ kind: given.error.kind === "CarerNotFound" ? "HouseholdNotFound" : given.error.kind });
    },
  );

/** @param input.role the sender's from now on */
export async function handOverCoordination(
  app: App,
  personId: string,
  input: ChangeRole,
): Promise<Result<HouseholdRef, CarerFailure>> {
  if (input.role === "COORDINATOR")
    return fail(
      invalid(
        "role",
        "COORDINATOR hands nothing over",
        "Send COOK, HELPER or OBSERVER; changeRole adds a second coordinator.",
      ),
    );
  return once<HouseholdRef, CarerFailure>(
    app,
    { personId, action: "handOverCoordination", key: input.idempotencyKey, input },
    async (tx) => {
      const held = await hold(tx, personId, input.householdId, "changeCarers");
      if (!held.ok) return held;
      const { householdId, roles } = held.value;
      if (input.personId === personId)
        return fail(invalid("personId", "is yourself", "Send the carer who coordinates from now on."));
      const other = await give(tx, held.value, input.personId, "COORDINATOR");
      if (!other.ok) return fail({ kind: "CarerNotFound" });
      const own = await give(
        tx,
        { householdId, roles: new Map(roles).set(input.personId!, "COORDINATOR") },
        personId,
        input.role,
      );
      if (!own.ok) throw new Error(`coordination handed over, yet ${own.error.kind}`);
      return ok({ householdId });
    },
  );
}

export interface RenameMe {
  readonly idempotencyKey: string;
  readonly displayName: string;
}

export async function renameMe(
  app: App,
  personId: string,
  input: RenameMe,
): Promise<Result<{ personId: string }, FailureOf<"InvalidInput" | "KeyReused">>> {
  const checked = checkInput(displayName, input.displayName, "displayName");
  if (!checked.ok) return checked;
  return once<{ personId: string }, never>(
    app,
    { personId, action: "renameMe", key: input.idempotencyKey, input },
    async (tx) => {
      await tx.person.update({ where: { id: personId }, data: { displayName: checked.value }, select: { id: true } });
      return ok({ personId });
    },
  );
}
