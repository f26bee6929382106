/**
 * A child's allergies. Each home keeps a record of its own and the stricter of two holds, so adding one or making it stricter
 * works at once, from either home. Removing or loosening takes two steps, and never touches the other home's record.
 */
import { randomUUID } from "node:crypto";
import { allergyInput } from "../../shared/inputs.js";
import type { Tx } from "../database/database.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { changeHousehold, livesHere, roleIn, type HouseholdChangeFailure } from "./change-household.js";
import { checkInput, invalid } from "./check-input.js";
import type { FailureOf } from "./failures.js";
import { checkKind } from "./known-kind.js";
import { leastRole, may } from "./may.js";
import { once } from "./once.js";
import { queueRecheck, recheckNow, touching } from "./recheck.js";

type Avoid = "TRACES" | "INGREDIENTS";

interface AllergyChange {
  readonly idempotencyKey: string;
  readonly householdId: string | null;
  readonly seenRevision: number;
  readonly childId: string | null;
  readonly allergen?: string | null;
  readonly foodKind?: string | null;
}
export interface RecordAllergy extends AllergyChange {
  readonly avoid: Avoid;
  readonly kindUnknown?: boolean;
}
export interface RemoveAllergy extends AllergyChange {
  /** INGREDIENTS keeps it, less strictly; null removes it. */
  readonly loosenTo?: Avoid | null;
  /** What the first step answered; null asks for it. */
  readonly token?: string | null;
}

export type AllergyFailure = HouseholdChangeFailure | FailureOf<"ChildNotFound" | "NothingThere">;
type Changed = Result<{ childId: string; householdId: string }, AllergyFailure>;

const MINUTES_TO_CONFIRM = 15;
const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;

/** This home's own record. */
const ownRecord = (tx: Tx, householdId: string, input: AllergyChange) =>
  tx.allergy.findFirst({
    where: {
      childId: input.childId!,
      allergen: input.allergen ?? null,
      foodKind: input.foodKind ?? null,
      OR: [{ recordedByHouseholdId: householdId }, { recordedByHouseholdId: null }],
    },
    select: { id: true, avoid: true },
  });

const countUp = (tx: Tx, childId: string) =>
  tx.child.update({ where: { id: childId }, data: { revision: { increment: 1 } }, select: { id: true } });

export async function recordAllergy(app: App, personId: string, input: RecordAllergy): Promise<Changed> {
  const checked = checkInput(allergyInput, input);
  if (!checked.ok) return checked;
  const known = checkKind(app, input, "foodKind");
  if (!known.ok) return known;
  const recorded = await changeHousehold<{ childId: string }, AllergyFailure>(
    app,
    {
      personId,
      action: "recordAllergy",
      key: input.idempotencyKey,
      input,
      householdId: input.householdId,
      seenRevision: input.seenRevision,
      verb: "recordAllergy",
    },
    async (tx, householdId) => {
      const childId = input.childId!;
      if (!(await livesHere(tx, input.childId, householdId))) return fail({ kind: "ChildNotFound" });
      const before = await ownRecord(tx, householdId, input);
      if (before?.avoid === "TRACES" && input.avoid === "INGREDIENTS")
        return fail(
          invalid("avoid", "is less strict than what is recorded", "Loosen it with removeAllergy, which asks twice."),
        );
      if (before?.avoid !== input.avoid) {
        if (before)
          await tx.allergy.update({ where: { id: before.id }, data: { avoid: input.avoid }, select: { id: true } });
        else
          await tx.allergy.create({
            data: {
              childId,
              allergen: input.allergen ?? null,
              foodKind: input.foodKind ?? null,
              avoid: input.avoid,
              recordedByHouseholdId: householdId,
            },
            select: { id: true },
          });
        await countUp(tx, childId);
      }
      await queueRecheck(app, tx, touching({ childIds: [childId] }));
      return ok({ childId });
    },
  );
  if (recorded.ok) await recheckNow(app, touching({ childIds: [recorded.value.childId] }));
  return recorded;
}

/** The first of two steps was taken; the second sends the token back before it expires. */
export interface ConfirmationNeeded {
  readonly token: string;
  /** An instant, ISO 8601. */
  readonly expiresAt: string;
}

/** What the token is good for, and nothing else. */
const subjectOf = (householdId: string, input: RemoveAllergy) =>
  JSON.stringify([
    "removeAllergy",
    householdId,
    input.childId,
    input.allergen ?? null,
    input.foodKind ?? null,
    input.loosenTo ?? null,
  ]);

export async function removeAllergy(
  app: App,
  personId: string,
  input: RemoveAllergy,
): Promise<Result<{ childId: string; householdId: string } | ConfirmationNeeded, AllergyFailure>> {
  const checked = checkInput(allergyInput, { ...input, avoid: "TRACES" });
  if (!checked.ok) return checked;
  if (input.loosenTo === "TRACES")
    return fail(
      invalid("loosenTo", "TRACES is the strictest there is", "Send INGREDIENTS, or leave it out to remove."),
    );
  if (input.token == null) return askForConfirmation(app, personId, input);
  const { token } = input;
  const removed = await changeHousehold<{ childId: string }, AllergyFailure>(
    app,
    {
      personId,
      action: "removeAllergy",
      key: input.idempotencyKey,
      input,
      householdId: input.householdId,
      seenRevision: input.seenRevision,
      verb: "removeAllergy",
    },
    async (tx, householdId) => {
      const childId = input.childId!;
      if (!(await livesHere(tx, input.childId, householdId))) return fail({ kind: "ChildNotFound" });
      const good = UUID.test(token)
        ? await tx.confirmation.deleteMany({
            where: { id: token, about: subjectOf(householdId, input), expiresAt: { gt: app.now() } },
          })
        : { count: 0 };
      if (good.count === 0)
        return fail(
          invalid("token", "was not given for this, was used, or has expired", "Ask again without a token first."),
        );
      const before = await ownRecord(tx, householdId, input);
      if (!before) return fail({ kind: "NothingThere", what: "allergy recorded by this home" });
      if (input.loosenTo == null) await tx.allergy.delete({ where: { id: before.id }, select: { id: true } });
      else await tx.allergy.update({ where: { id: before.id }, data: { avoid: input.loosenTo }, select: { id: true } });
      await countUp(tx, childId);
      await queueRecheck(app, tx, touching({ childIds: [childId] }));
      return ok({ childId });
    },
  );
  if (removed.ok) await recheckNow(app, touching({ childIds: [removed.value.childId] }));
  return removed;
}

/** Changes nothing but the list of first steps; the household's revision stays. */
function askForConfirmation(
  app: App,
  personId: string,
  input: RemoveAllergy,
): Promise<Result<ConfirmationNeeded, AllergyFailure>> {
  const attempt = { personId, action: "removeAllergy", key: input.idempotencyKey, input };
  return once<ConfirmationNeeded, AllergyFailure>(app, attempt, async (tx) => {
    const { householdId } = input;
    const role = householdId === null ? null : await roleIn(tx, personId, householdId);
    if (role === null || householdId === null) return fail({ kind: "HouseholdNotFound" });
    if (!may(role, "removeAllergy")) return fail({ kind: "NotPermitted", neededRole: leastRole.removeAllergy });
    const { revision } = await tx.household.findUniqueOrThrow({
      where: { id: householdId },
      select: { revision: true },
    });
    if (revision !== input.seenRevision)
      return fail({ kind: "RevisionPassed", seenRevision: input.seenRevision, currentRevision: revision });
    if (!(await livesHere(tx, input.childId, householdId))) return fail({ kind: "ChildNotFound" });
    if (!(await ownRecord(tx, householdId, input)))
      return fail({ kind: "NothingThere", what: "allergy recorded by this home" });
    const token = randomUUID();
    const expiresAt = new Date(app.now().getTime() + MINUTES_TO_CONFIRM * 60_000);
    await tx.confirmation.deleteMany({ where: { expiresAt: { lte: app.now() } } });
    await tx.confirmation.create({
      data: { id: token, personId, about: subjectOf(householdId, input), expiresAt },
      select: { id: true },
    });
    return ok({ token, expiresAt: expiresAt.toISOString() });
  });
}
