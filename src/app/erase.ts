/**
 * Erasing a child, a household or oneself. Functions of the database do it, as the owner, and ask themselves whether the person may;
 * here it takes two steps, and whoever stays is looked after. What is kept of an erasure for a repeated request holds no key.
 */
import { randomUUID } from "node:crypto";
import type { Tx } from "../database/database.js";
import { eraseChildRows, eraseHouseholdRows, eraseMyRows } from "../database/erase.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { ConfirmationNeeded } from "./allergies.js";
import type { App } from "./app.js";
import { livesHere, roleIn } from "./change-household.js";
import { invalid } from "./check-input.js";
import type { FailureOf } from "./failures.js";
import { leastRole, may } from "./may.js";
import { allOrNothing, before, once } from "./once.js";
import { queueRecheck, recheckNow, touching } from "./recheck.js";

export interface EraseHousehold {
  readonly idempotencyKey: string;
  readonly householdId: string | null;
  /** What the first step answered; null asks for it. */
  readonly token?: string | null;
}
export interface EraseChild extends EraseHousehold {
  readonly childId: string | null;
}
export interface EraseMe {
  readonly idempotencyKey: string;
  readonly withHouseholds: boolean;
  readonly token?: string | null;
}
export interface Erased {
  /** An instant, ISO 8601. */
  readonly erasedAt: string;
}
type Repeated = FailureOf<"InvalidInput" | "KeyReused">;
type OfHousehold = Repeated | FailureOf<"HouseholdNotFound" | "NotPermitted">;
type OfChild = OfHousehold | FailureOf<"ChildNotFound">;

const MINUTES_TO_CONFIRM = 15;
/** Years of weeks are gone through; on a busy machine that takes a while. */
const PATIENCE_MS = 120_000;
const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;

async function firstStep(app: App, tx: Tx, personId: string, about: string): Promise<ConfirmationNeeded> {
  const token = randomUUID();
  const expiresAt = new Date(app.now().getTime() + MINUTES_TO_CONFIRM * 60_000);
  await tx.confirmation.deleteMany({ where: { expiresAt: { lte: app.now() } } });
  await tx.confirmation.create({ data: { id: token, personId, about, expiresAt }, select: { id: true } });
  return { token, expiresAt: expiresAt.toISOString() };
}

/** Uses the token up; null when it was good for this. */
async function secondStep(app: App, tx: Tx, about: string, token: string): Promise<FailureOf<"InvalidInput"> | null> {
  const used = UUID.test(token)
    ? await tx.confirmation.deleteMany({ where: { id: token, about, expiresAt: { gt: app.now() } } })
    : { count: 0 };
  return used.count > 0
    ? null
    : invalid("token", "was not given for this, was used, or has expired", "Ask again without a token first.");
}

async function coordinated(
  tx: Tx,
  personId: string,
  householdId: string | null,
): Promise<Result<string, FailureOf<"HouseholdNotFound" | "NotPermitted">>> {
  const role = householdId === null ? null : await roleIn(tx, personId, householdId);
  if (role === null || householdId === null) return fail({ kind: "HouseholdNotFound" });
  return may(role, "erase") ? ok(householdId) : fail({ kind: "NotPermitted", neededRole: leastRole.erase });
}

async function childHere(
  tx: Tx,
  personId: string,
  { householdId, childId }: Pick<EraseChild, "householdId" | "childId">,
): Promise<
  Result<{ householdId: string; childId: string }, FailureOf<"HouseholdNotFound" | "NotPermitted" | "ChildNotFound">>
> {
  const home = await coordinated(tx, personId, householdId);
  if (!home.ok) return home;
  if (childId === null || !(await livesHere(tx, childId, home.value))) return fail({ kind: "ChildNotFound" });
  return ok({ householdId: home.value, childId });
}

export function eraseChild(
  app: App,
  personId: string,
  input: EraseChild,
): Promise<Result<Erased | ConfirmationNeeded | { readonly agreed: false }, OfChild>> {
  const attempt = { personId, action: "eraseChild", key: input.idempotencyKey, input, patienceMs: PATIENCE_MS };
  return once<Erased | ConfirmationNeeded | { readonly agreed: false }, OfChild>(app, attempt, async (tx) => {
    const here = await childHere(tx, personId, input);
    if (!here.ok) return here;
    const { householdId, childId } = here.value;
    const about = JSON.stringify(["eraseChild", householdId, childId]);
    if (input.token == null) return ok(await firstStep(app, tx, personId, about));
    const refused = await secondStep(app, tx, about, input.token);
    if (refused) return fail(refused);
    const erased = await eraseChildRows(tx, childId, householdId);
    return ok(erased ? { erasedAt: app.now().toISOString() } : { agreed: false });
  });
}

export function withdrawErasure(
  app: App,
  personId: string,
  input: Omit<EraseChild, "token">,
): Promise<Result<{ readonly householdId: string; readonly childId: string }, OfChild>> {
  const attempt = { personId, action: "withdrawErasure", key: input.idempotencyKey, input };
  return once<{ householdId: string; childId: string }, OfChild>(app, attempt, async (tx) => {
    const here = await childHere(tx, personId, input);
    if (here.ok) await tx.erasureRequest.deleteMany({ where: here.value });
    return here;
  });
}

export async function eraseHousehold(
  app: App,
  personId: string,
  input: EraseHousehold,
): Promise<Result<Erased | ConfirmationNeeded, OfHousehold>> {
  let staying: readonly string[] = [];
  const attempt = {
    personId,
    action: "eraseHousehold",
    key: input.idempotencyKey,
    input,
    patienceMs: PATIENCE_MS,
    forget: () => void (staying = []),
  };
  const erased = await once<Erased | ConfirmationNeeded, OfHousehold>(app, attempt, async (tx) => {
    const home = await coordinated(tx, personId, input.householdId);
    if (!home.ok) return home;
    const about = JSON.stringify(["eraseHousehold", home.value]);
    if (input.token == null) return ok(await firstStep(app, tx, personId, about));
    const refused = await secondStep(app, tx, about, input.token);
    if (refused) return fail(refused);
    staying = await eraseHouseholdRows(tx, home.value);
    if (staying.length > 0) await queueRecheck(app, tx, touching({ childIds: staying }));
    return ok({ erasedAt: app.now().toISOString() });
  });
  if (staying.length > 0) await recheckNow(app, touching({ childIds: staying }));
  return erased;
}

type OfMe = Repeated | FailureOf<"LastCoordinator" | "LastAdministrator" | "HouseholdsLeft">;

/** Nothing of the person is left to know a repeated request by: sent again, it finds its token used. */
export async function eraseMe(
  app: App,
  personId: string,
  input: EraseMe,
): Promise<Result<Erased | ConfirmationNeeded, OfMe>> {
  const attempt = { personId, action: "eraseMe", key: input.idempotencyKey, input };
  const about = JSON.stringify(["eraseMe", input.withHouseholds]);
  const { token } = input;
  if (token == null)
    return once<ConfirmationNeeded, OfMe>(app, attempt, async (tx) => ok(await firstStep(app, tx, personId, about)));
  const known = await before<ConfirmationNeeded>(app, attempt);
  if (known) return known;
  let staying: readonly string[] = [];
  const erased = await allOrNothing<Erased, OfMe>(
    app,
    personId,
    async (tx) => {
      staying = [];
      const refused = await secondStep(app, tx, about, token);
      if (refused) return fail(refused);
      const done = await eraseMyRows(tx, input.withHouseholds);
      switch (done.outcome) {
        case "LAST_COORDINATOR":
          return fail({ kind: "LastCoordinator" });
        case "LAST_ADMINISTRATOR":
          return fail({ kind: "LastAdministrator", jurisdiction: done.jurisdiction! });
        case "HOUSEHOLDS_LEFT":
          return fail({ kind: "HouseholdsLeft" });
        case "ERASED":
          staying = done.staying;
          if (staying.length > 0) await queueRecheck(app, tx, touching({ childIds: staying }));
          return ok({ erasedAt: app.now().toISOString() });
      }
    },
    PATIENCE_MS,
  );
  if (staying.length > 0) await recheckNow(app, touching({ childIds: staying }));
  return erased;
}
