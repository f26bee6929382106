/** Where children wake, as it was agreed or is proposed: patterns, days apart from them, and the proposals that stand open. */
import type { ProposalState, Residence, ResidenceException, ResidencePattern } from "../domain/calendar/residence.js";
import type { ReadTx } from "./database.js";

/** SQL for accepted patterns `p` as JSON, in the order in which they were agreed. @param until those that begin later stay out */
export const acceptedPatterns = (tx: ReadTx, whose: ReturnType<ReadTx>, until: string) => tx`
  (select coalesce(json_agg(x order by x."answeredAt", x.id), '[]') from (select p.child_id as "childId", p.kind, p.starts, p.ends, p.cycle, p.state, p.answered_at as "answeredAt", p.id
    from residence_pattern p where ${whose} and p.state = 'ACCEPTED' and p.starts <= ${until}::date) x)`;
/** SQL for accepted exceptions `e` of some days as JSON, in the order in which they were agreed. */
export const acceptedExceptions = (tx: ReadTx, whose: ReturnType<ReadTx>, from: string, until: string) => tx`
  (select coalesce(json_agg(x order by x."answeredAt", x.id), '[]') from (select e.child_id as "childId", e.date, e.household_id as "householdId", e.state, e.answered_at as "answeredAt", e.id
    from residence_exception e where ${whose} and e.state = 'ACCEPTED' and e.date between ${from}::date and ${until}::date) x)`;

/** A proposal as both homes see it: a pattern, or days. */
export interface ProposalRow {
  /** Of the pattern, or of the days that were proposed together. */
  readonly id: string;
  readonly of: "PATTERN" | "DAYS";
  readonly childId: string;
  readonly state: ProposalState;
  /** Null: a home that is gone. */
  readonly proposedBy: string | null;
  readonly proposedAt: string;
  readonly pattern: ResidencePattern | null;
  /** By date; empty for a pattern. */
  readonly days: readonly Pick<ResidenceException, "date" | "householdId">[];
}

const proposals = (tx: ReadTx, pattern: ReturnType<ReadTx>, days: ReturnType<ReadTx>) => tx`
  (select coalesce(json_agg(x order by x."proposedAt", x.id), '[]') from (
    select p.id, 'PATTERN' as of, p.child_id as "childId", p.state, p.proposed_by_household_id as "proposedBy", p.proposed_at as "proposedAt",
      json_build_object('kind', p.kind, 'starts', p.starts, 'ends', p.ends, 'cycle', p.cycle, 'state', p.state) as pattern, '[]'::json as days
    from residence_pattern p where ${pattern}
    union all
    select e.change_id, 'DAYS', e.child_id, min(e.state), min(e.proposed_by_household_id::text)::uuid, min(e.proposed_at), null,
      json_agg(json_build_object('date', e.date, 'householdId', e.household_id) order by e.date)
    from residence_exception e where ${days} group by e.change_id, e.child_id) x)`;

/** What is agreed about a child for these days. Null: no child of the reader's. */
export async function readResidence(
  tx: ReadTx,
  childId: string,
  from: string,
  until: string,
): Promise<Residence | null> {
  const [row] = await tx<{ tree: Residence }[]>`
    select json_build_object(
      'homes', (select coalesce(json_agg(r.household_id order by r.since, r.household_id), '[]') from residence r where r.child_id = ${childId}),
      'patterns', ${acceptedPatterns(tx, tx`p.child_id = ${childId}`, until)},
      'exceptions', ${acceptedExceptions(tx, tx`e.child_id = ${childId}`, from, until)}) as tree`;
  return row!.tree.homes.length === 0 ? null : row!.tree;
}

/** Proposals about a child that nobody has answered, the oldest first. */
export async function readOpenProposals(tx: ReadTx, childId: string): Promise<readonly ProposalRow[]> {
  const [row] = await tx<{ tree: readonly ProposalRow[] }[]>`
    select ${proposals(tx, tx`p.child_id = ${childId} and p.state = 'PROPOSED'`, tx`e.child_id = ${childId} and e.state = 'PROPOSED'`)} as tree`;
  return row!.tree;
}

/** One proposal in whatever state; null when there is none or it is about no child of the reader's. */
export async function readProposal(tx: ReadTx, of: ProposalRow["of"], id: string): Promise<ProposalRow | null> {
  const [row] = await tx<{ tree: readonly ProposalRow[] }[]>`select ${
    of === "PATTERN" ? proposals(tx, tx`p.id = ${id}`, tx`false`) : proposals(tx, tx`false`, tx`e.change_id = ${id}`)
  } as tree`;
  return row!.tree[0] ?? null;
}
