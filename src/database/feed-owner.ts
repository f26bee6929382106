/** Whose calendar feed an address is. */
import type postgres from "postgres";

export interface FeedOwner {
  readonly personId: string;
  readonly householdId: string;
}

/** @param digest SHA-256 of the address's secret, hex */
export async function readFeedOwner(sql: postgres.Sql, digest: string): Promise<FeedOwner | null> {
  const [owner] = await sql<FeedOwner[]>`
    select person_id as "personId", household_id as "householdId" from app_feed(${digest})`;
  return owner ?? null;
}
