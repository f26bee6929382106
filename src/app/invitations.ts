/** Invitations: a link that makes one person a carer, or lets a child live in one more home. It works once. */
import { randomUUID } from "node:crypto";
import { expiresInHours } from "../../shared/inputs.js";
import type { Tx } from "../database/database.js";
import type { RoleCode } from "../database/household.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { livesHere, roleIn } from "./change-household.js";
import { checkInput, invalid } from "./check-input.js";
import type { FailureOf } from "./failures.js";
import { toDate, todayIn } from "./local-day.js";
import { leastRole, may, type Verb } from "./may.js";
import { once } from "./once.js";
import { digestOf, freshSecret } from "./secret.js";

const MOST_OPEN = 20;
const MOST_HOMES = 2;

interface Invite {
  readonly idempotencyKey: string;
  readonly householdId: string | null;
  /** 1 to 720. */
  readonly expiresInHours: number;
}
export interface InviteCarer extends Invite {
  readonly role: RoleCode;
}
export interface InviteHome extends Invite {
  readonly childId: string | null;
}
export interface Invited {
  readonly invitationId: string;
  /** Null when this is the answer to a request that came before: the token is told once. */
  readonly token: string | null;
}
type InviteFailure = FailureOf<"InvalidInput" | "HouseholdNotFound" | "NotPermitted" | "KeyReused">;

export const inviteCarer = (app: App, personId: string, input: InviteCarer): Promise<Result<Invited, InviteFailure>> =>
  invite<never>(app, personId, "inviteCarer", "inviteCarers", input, () =>
    Promise.resolve(ok({ role: input.role, childId: null })),
  );

export const inviteHome = (
  app: App,
  personId: string,
  input: InviteHome,
): Promise<Result<Invited, InviteFailure | FailureOf<"ChildNotFound" | "LivesInTwoHomes">>> =>
  invite<FailureOf<"ChildNotFound" | "LivesInTwoHomes">>(
    app,
    personId,
    "inviteHome",
    "inviteHomes",
    input,
    async (tx, householdId) => {
      const { childId } = input;
      if (childId === null || !(await livesHere(tx, childId, householdId))) return fail({ kind: "ChildNotFound" });
      const homes = await tx.residence.count({ where: { childId } });
      return homes < MOST_HOMES ? ok({ role: null, childId }) : fail({ kind: "LivesInTwoHomes" });
    },
  );

/** @param whom of a carer the role, of a home the child */
async function invite<E>(
  app: App,
  personId: string,
  action: "inviteCarer" | "inviteHome",
  verb: Verb,
  input: Invite,
  whom: (
    tx: Tx,
    householdId: string,
  ) => Promise<Result<{ readonly role: RoleCode | null; readonly childId: string | null }, E>>,
): Promise<Result<Invited, InviteFailure | E>> {
  const hours = checkInput(expiresInHours, input.expiresInHours, "expiresInHours");
  if (!hours.ok) return hours;
  let token = null as string | null;
  const made = await once<{ invitationId: string }, InviteFailure | E>(
    app,
    { personId, action, key: input.idempotencyKey, input, forget: () => void (token = null) },
    async (tx) => {
      const { householdId } = input;
      const role = householdId === null ? null : await roleIn(tx, personId, householdId);
      if (role === null || householdId === null) return fail({ kind: "HouseholdNotFound" });
      if (!may(role, verb)) return fail({ kind: "NotPermitted", neededRole: leastRole[verb] });
      const [open] = await tx.$queryRaw<{ count: number }[]>`
        select count(*)::int as count from invitation i
        where i.household_id = ${householdId}::uuid and app_invitation_state(i.accepted_at, i.withdrawn_at, i.expires_at) = 'OPEN'`;
      if (open!.count >= MOST_OPEN)
        return fail(
          invalid(
            "householdId",
            `has ${MOST_OPEN} open invitations`,
            "Withdraw one that nobody waits for (withdrawInvitation).",
          ),
        );
      const invited = await whom(tx, householdId);
      if (!invited.ok) return invited;
      const invitationId = randomUUID();
      const fresh = freshSecret();
      await tx.$executeRaw`
        insert into invitation (id, household_id, kind, role, child_id, token_digest, created_by_id, expires_at)
        values (${invitationId}::uuid, ${householdId}::uuid, ${invited.value.childId === null ? "CARER" : "HOME"},
          ${invited.value.role}::role, ${invited.value.childId}::uuid, ${digestOf(fresh)}, ${personId}::uuid,
          now() + make_interval(hours => ${hours.value}::int))`;
      token = fresh;
      return ok({ invitationId });
    },
  );
  return made.ok ? ok({ ...made.value, token }) : made;
}

export interface WithdrawInvitation {
  readonly idempotencyKey: string;
  readonly invitationId: string | null;
}
type NotOpen = FailureOf<"InvitationNotFound" | "InvitationClosed">;
type ClosedState = FailureOf<"InvitationClosed">["state"];

export const withdrawInvitation = (
  app: App,
  personId: string,
  input: WithdrawInvitation,
): Promise<Result<{ invitationId: string }, FailureOf<"InvalidInput" | "NotPermitted" | "KeyReused"> | NotOpen>> =>
  once<{ invitationId: string }, FailureOf<"NotPermitted"> | NotOpen>(
    app,
    { personId, action: "withdrawInvitation", key: input.idempotencyKey, input },
    async (tx) => {
      const { invitationId } = input;
      const found =
        invitationId === null
          ? null
          : await tx.invitation.findUnique({ where: { id: invitationId }, select: { householdId: true } });
      const role = found && (await roleIn(tx, personId, found.householdId));
      if (invitationId === null || !role) return fail({ kind: "InvitationNotFound" });
      if (!may(role, "inviteCarers")) return fail({ kind: "NotPermitted", neededRole: leastRole.inviteCarers });
      // In one statement: somebody may take it up at this moment.
      const withdrawn = await tx.$executeRaw`update invitation i set withdrawn_at = now()
        where i.id = ${invitationId}::uuid and app_invitation_state(i.accepted_at, i.withdrawn_at, i.expires_at) = 'OPEN'`;
      if (withdrawn === 1) return ok({ invitationId });
      const [row] = await tx.$queryRaw<{ state: ClosedState }[]>`
        select app_invitation_state(i.accepted_at, i.withdrawn_at, i.expires_at) as state from invitation i where i.id = ${invitationId}::uuid`;
      return row ? fail({ kind: "InvitationClosed", state: row.state }) : fail({ kind: "InvitationNotFound" });
    },
  );

export interface AcceptInvitation {
  readonly idempotencyKey: string;
  readonly token: string;
}
const ofOtherKind = (is: string, mutation: string) =>
  invalid("token", `is of a link for ${is}`, `Send it with ${mutation}.`);

export async function acceptInvitation(
  app: App,
  personId: string,
  input: AcceptInvitation,
): Promise<Result<{ householdId: string }, FailureOf<"InvalidInput" | "AlreadyCarer" | "KeyReused"> | NotOpen>> {
  const digest = digestOf(input.token);
  return once<{ householdId: string }, FailureOf<"InvalidInput" | "AlreadyCarer"> | NotOpen>(
    app,
    { personId, action: "acceptInvitation", key: input.idempotencyKey, input: { digest } },
    async (tx) => {
      if (digest === null) return fail({ kind: "InvitationNotFound" });
      const [row] = await tx.$queryRaw<
        { outcome: "ACCEPTED" | "UNKNOWN" | "OTHER_KIND" | "ALREADY" | ClosedState; home: string; role: RoleCode }[]
      >`select outcome, home, as_role::text as role from app_accept_invitation(${digest})`;
      const { outcome, home, role } = row!;
      switch (outcome) {
        case "ACCEPTED":
          return ok({ householdId: home });
        case "UNKNOWN":
          return fail({ kind: "InvitationNotFound" });
        case "OTHER_KIND":
          return fail(ofOtherKind("a child's other home", "acceptHomeInvitation"));
        case "ALREADY":
          return fail({ kind: "AlreadyCarer", role });
        case "USED":
        case "WITHDRAWN":
        case "EXPIRED":
          return fail({ kind: "InvitationClosed", state: outcome });
      }
    },
  );
}

export interface AcceptHomeInvitation extends AcceptInvitation {
  readonly householdId: string | null;
}
type AcceptHomeFailure =
  NotOpen | FailureOf<"InvalidInput" | "HouseholdNotFound" | "NotPermitted" | "LivesHereAlready" | "LivesInTwoHomes">;

/** The child lives there too from today of that household on; which days is the matter of both homes' residence. */
export async function acceptHomeInvitation(
  app: App,
  personId: string,
  input: AcceptHomeInvitation,
): Promise<Result<{ householdId: string; childId: string }, AcceptHomeFailure | FailureOf<"KeyReused">>> {
  const digest = digestOf(input.token);
  const { householdId } = input;
  return once<{ householdId: string; childId: string }, AcceptHomeFailure>(
    app,
    { personId, action: "acceptHomeInvitation", key: input.idempotencyKey, input: { digest, householdId } },
    async (tx) => {
      const role = householdId === null ? null : await roleIn(tx, personId, householdId);
      if (role === null || householdId === null) return fail({ kind: "HouseholdNotFound" });
      if (!may(role, "joinChildren")) return fail({ kind: "NotPermitted", neededRole: leastRole.joinChildren });
      if (digest === null) return fail({ kind: "InvitationNotFound" });
      const home = await tx.household.findUniqueOrThrow({ where: { id: householdId }, select: { timeZone: true } });
      const today = toDate(todayIn(home.timeZone, app.now()));
      const [row] = await tx.$queryRaw<
        {
          outcome: "ACCEPTED" | "UNKNOWN" | "OTHER_KIND" | "LIVES_HERE" | "TWO_HOMES" | ClosedState;
          child: string;
        }[]
      >`select outcome, child from app_accept_home_invitation(${digest}, ${householdId}::uuid, ${today}::date)`;
      const { outcome, child } = row!;
      switch (outcome) {
        case "ACCEPTED":
          await tx.household.update({
            where: { id: householdId },
            data: { revision: { increment: 1 } },
            select: { id: true },
          });
          return ok({ householdId, childId: child });
        case "UNKNOWN":
          return fail({ kind: "InvitationNotFound" });
        case "OTHER_KIND":
          return fail(ofOtherKind("a carer", "acceptInvitation"));
        case "LIVES_HERE":
          return fail({ kind: "LivesHereAlready" });
        case "TWO_HOMES":
          return fail({ kind: "LivesInTwoHomes" });
        case "USED":
        case "WITHDRAWN":
        case "EXPIRED":
          return fail({ kind: "InvitationClosed", state: outcome });
      }
    },
  );
}
