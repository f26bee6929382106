/** What is new in a household's log, for the listeners of one server. */
import type postgres from "postgres";

/** Values of columns, or whole rows where several of one kind are told of together. */
export type LoggedValues = Readonly<Record<string, unknown>> | readonly Readonly<Record<string, unknown>>[];

export interface ChangeRow {
  /** From 1, without gaps, in the order of commits. */
  readonly seq: number;
  readonly at: string;
  /** Null for the other home, a school, the server itself. */
  readonly personId: string | null;
  readonly kind: string;
  readonly verb: "ADDED" | "CHANGED" | "REMOVED";
  readonly subjectId: string;
  readonly childId: string | null;
  readonly date: string | null;
  /** Null once erased. */
  readonly before: LoggedValues | null;
  readonly after: LoggedValues | null;
}

export interface ChangesFor {
  /** Those of the asked persons who are carers of the household now. */
  readonly readers: readonly string[];
  readonly changes: readonly ChangeRow[];
}

export async function readChangesFor(
  sql: postgres.Sql,
  householdId: string,
  personIds: readonly string[],
  after: number,
  most: number,
): Promise<ChangesFor> {
  const [row] = await sql<{ found: ChangesFor }[]>`
    select app_changes_for(${householdId}, ${personIds as string[]}::uuid[], ${after}, ${most}) as found`;
  return row!.found;
}
