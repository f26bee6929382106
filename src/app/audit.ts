/** What administrators did, in the transaction that does it. */
import type { Tx } from "../database/database.js";
import type { Prisma } from "../database/generated/client.js";

export interface Audited {
  readonly action:
    | "RULE_SET_LOADED"
    | "RULE_SET_WITHDRAWN"
    | "IMPACT_COUNTED"
    | "ADOPTED"
    | "ADOPTION_ENDED"
    | "CALENDAR_CHANGED"
    | "SCHOOL_CHANGED"
    | "APPOINTED"
    | "DISMISSED";
  /** At least one of the two; both, where a jurisdiction's administrator acts on one of its schools. */
  readonly schoolId?: string | null;
  readonly jurisdiction?: string | null;
  /** Keys, codes and counts of what changed; never anything of a family's. */
  readonly details: Prisma.InputJsonObject;
}

/** Adds to the list that nothing is ever taken from; a transaction that is rolled back leaves no entry. */
export async function audit(tx: Tx, personId: string, entry: Audited): Promise<void> {
  const { action, schoolId, jurisdiction, details } = entry;
  // Several rows at once is the only insert that does not read back, which not every writer may.
  await tx.auditEntry.createMany({
    data: [{ personId, action, schoolId: schoolId ?? null, jurisdiction: jurisdiction ?? null, details }],
  });
}
