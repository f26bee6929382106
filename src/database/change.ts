/** A household's log: what changed, in the order of commits. */
import type { ChangeRow } from "./changes-for.js";
import type { ReadTx, Tx } from "./database.js";
import type { SchoolNews } from "./homes-to-recheck.js";

/** How far the log goes; null when the household is not the reader's. */
export async function readLastChange(tx: ReadTx, householdId: string): Promise<number | null> {
  const [row] = await tx<{ last: number }[]>`
    select last::float8 as last from change_count where household_id = ${householdId}`;
  return row?.last ?? null;
}

/** Entries of a household's log before one, the newest first. */
export async function readLog(
  tx: ReadTx,
  householdId: string,
  before: number | null,
  most: number,
): Promise<readonly ChangeRow[]> {
  return tx<ChangeRow[]>`
    select c.seq::float8 as seq, c.at, c.person_id as "personId", c.kind, c.verb, c.subject_id as "subjectId", c.child_id as "childId",
      c.date::text as date, d.before, d.after
    from change c left join change_detail d on d.change_id = c.id
    where c.household_id = ${householdId} and c.seq < ${before ?? Number.MAX_SAFE_INTEGER} order by c.seq desc limit ${most}`;
}

/** Puts into a home's log that its children's schools ask for other things or have other days; what it knows already is not repeated. */
export const tellOfSchools = (tx: Tx, householdId: string, { kind, schoolIds }: SchoolNews) =>
  tx.$executeRaw`select app_tell_of_schools(${householdId}::uuid, ${kind}, ${schoolIds as string[]}::uuid[])`;
