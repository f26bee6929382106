/** The functions that erase; each asks itself whether the person of the transaction may. */
import type { ReadTx, Tx } from "./database.js";

/** @returns false where another home of the child has to ask too; then this one's asking is kept */
export async function eraseChildRows(tx: Tx, childId: string, householdId: string): Promise<boolean> {
  const [row] = await tx.$queryRaw<{ outcome: "ERASED" | "AGREEMENT_NEEDED" }[]>`
    select app_erase_child(${childId}::uuid, ${householdId}::uuid) as outcome`;
  return row!.outcome === "ERASED";
}

/** @returns children who stay, in their other home */
export async function eraseHouseholdRows(tx: Tx, householdId: string): Promise<readonly string[]> {
  const [row] = await tx.$queryRaw<{ staying: string[] }[]>`
    select app_erase_household(${householdId}::uuid) as staying`;
  return row!.staying;
}

export interface ErasedPerson {
  readonly outcome: "ERASED" | "LAST_COORDINATOR" | "LAST_ADMINISTRATOR" | "HOUSEHOLDS_LEFT";
  readonly staying: readonly string[];
  /** Of LAST_ADMINISTRATOR. */
  readonly jurisdiction: string | null;
}

/** The person of the transaction. */
export async function eraseMyRows(tx: Tx, withHouseholds: boolean): Promise<ErasedPerson> {
  const [row] = await tx.$queryRaw<ErasedPerson[]>`
    select outcome, staying, jurisdiction from app_erase_me(${withHouseholds})`;
  return row!;
}

export interface ErasureAskedRow {
  readonly childId: string;
  readonly householdId: string;
  readonly askedAt: string;
}

/** Of every child the reader may see. */
export async function readErasuresAsked(tx: ReadTx): Promise<ErasureAskedRow[]> {
  const rows = await tx<{ row: ErasureAskedRow }[]>`
    select json_build_object('childId', child_id, 'householdId', household_id, 'askedAt', asked_at) as row
    from erasure_request where asked_at > now() - interval '30 days' order by asked_at`;
  return rows.map(({ row }) => row);
}
