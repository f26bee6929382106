/** Invitations as the household's carers see them, and as somebody with the link does. */
import type { ReadTx } from "./database.js";
import type { PersonRow, RoleCode } from "./household.js";

export type InvitationStateCode = "OPEN" | "USED" | "WITHDRAWN" | "EXPIRED";

export interface InvitationRow {
  readonly id: string;
  readonly householdId: string;
  readonly kind: "CARER" | "HOME";
  readonly state: InvitationStateCode;
  readonly role: RoleCode | null;
  readonly childId: string | null;
  readonly invitedBy: PersonRow | null;
  readonly createdAt: Date;
  readonly expiresAt: Date;
}

const columns = (tx: ReadTx) => tx`i.id, i.household_id as "householdId", i.kind, i.role, i.child_id as "childId",
  i.created_at as "createdAt", i.expires_at as "expiresAt", app_invitation_state(i.accepted_at, i.withdrawn_at, i.expires_at) as state,
  (select json_build_object('id', p.id, 'displayName', p.display_name) from person p where p.id = i.created_by_id) as "invitedBy"`;

/** Open ones of all the reader's households, the newest first. */
export async function readOpenInvitations(tx: ReadTx): Promise<readonly InvitationRow[]> {
  return tx<InvitationRow[]>`select ${columns(tx)} from invitation i
    where app_invitation_state(i.accepted_at, i.withdrawn_at, i.expires_at) = 'OPEN' order by i.created_at desc, i.id`;
}

/** In whatever state; null when there is none or it is not the reader's to see. */
export async function readInvitation(tx: ReadTx, id: string): Promise<InvitationRow | null> {
  const [row] = await tx<InvitationRow[]>`select ${columns(tx)} from invitation i where i.id = ${id}`;
  return row ?? null;
}

export interface InvitationOfferRow {
  readonly kind: "CARER" | "HOME";
  readonly state: InvitationStateCode;
  readonly role: RoleCode | null;
  readonly expiresAt: Date;
  /** Names only while it is open. */
  readonly householdName: string | null;
  readonly inviterName: string | null;
  readonly childName: string | null;
}

/** @param digest of the token that the reader has; null when it is none of an invitation */
export async function readInvitationOffer(tx: ReadTx, digest: string): Promise<InvitationOfferRow | null> {
  const [row] = await tx<InvitationOfferRow[]>`
    select kind, state, role, expires_at as "expiresAt", household_name as "householdName", inviter as "inviterName", child_name as "childName"
    from app_invitation(${digest})`;
  return row ?? null;
}
