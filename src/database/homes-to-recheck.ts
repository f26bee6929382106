/** Which homes a change may reach. */
import type postgres from "postgres";

/** Whose boxes a change may touch. Each list may be empty. */
export interface RecheckScope {
  readonly childIds: readonly string[];
  readonly schoolIds: readonly string[];
  readonly householdIds: readonly string[];
  /** What the homes are to hear of it besides; absent where the change is in their own log already. */
  readonly news?: SchoolNews;
}

/** SCHOOL: its days or facilities are other ones. SCHOOL_RULES: what it asks of boxes. */
export interface SchoolNews {
  readonly kind: "SCHOOL" | "SCHOOL_RULES";
  readonly schoolIds: readonly string[];
}

/** A home that packs, and the member in whose name its boxes are looked at again. */
export interface HomeToRecheck {
  readonly householdId: string;
  readonly personId: string;
}

export async function readHomesToRecheck(sql: postgres.Sql, scope: RecheckScope): Promise<HomeToRecheck[]> {
  return sql<HomeToRecheck[]>`
    select household_id as "householdId", person_id as "personId" from app_homes_to_recheck(
      ${scope.childIds as string[]}::uuid[], ${scope.schoolIds as string[]}::uuid[], ${scope.householdIds as string[]}::uuid[])`;
}
