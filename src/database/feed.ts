/** A carer's calendar feed: its address, the tasks it shows, and what it has shown. */
import type { FeedMark } from "../domain/calendar/feed-events.js";
import type { ReadTx, Tx } from "./database.js";
import type { FeedOwner } from "./feed-owner.js";
import type { WorkStateCode } from "./week.js";

/** A task of the newest plan of its week that the carer has taken. */
export interface FeedTaskRow {
  readonly key: string;
  /** First day of the week, YYYY-MM-DD. */
  readonly weekStart: string;
  /** Kind and day: "morning-2027-01-11". */
  readonly session: string;
  readonly kind: "BASE" | "FINISH" | "COOL" | "PACK" | "DEFROST";
  readonly dish: string | null;
  readonly text: string;
  /** "HH:MM" on the household's clock. */
  readonly startsAt: string;
  readonly endsAt: string;
  readonly state: WorkStateCode;
}

/** @param from first day of the sessions, YYYY-MM-DD */
export const readFeedTasks = (tx: Tx, { personId, householdId }: FeedOwner, from: string): Promise<FeedTaskRow[]> =>
  tx.$queryRaw<FeedTaskRow[]>`
    select t.key, to_char(w.week_start, 'YYYY-MM-DD') as "weekStart", t.session, t.kind, t.dish_key as dish, t.text,
      t.starts_at as "startsAt", t.ends_at as "endsAt", t.state::text as state
    from task t join week_plan p on p.id = t.week_plan_id join week w on w.id = p.week_id
    where t.household_id = ${householdId}::uuid and t.taken_by_id = ${personId}::uuid and t.state <> 'OPEN'
      and p.state <> 'REPLACED' and right(t.session, 10) >= ${from}`;

/** A session the carer is on for, on the household's clock. */
export interface FeedDutyRow {
  readonly session: string;
  readonly startsAt: string;
  /** Of the plan's tasks; null where nothing is planned in it. */
  readonly endsAt: string | null;
  /** As long as the household gives to such a session. */
  readonly minutes: number;
}

/** As planned, else as the household's prep times have it; a session with neither is left out. */
export const readFeedDuties = (tx: Tx, { personId, householdId }: FeedOwner, from: string): Promise<FeedDutyRow[]> =>
  tx.$queryRaw<FeedDutyRow[]>`
    select d.session, coalesce(t."startsAt", e.starts_at, u.starts_at) as "startsAt", t."endsAt",
      coalesce(e.elapsed_minutes, u.elapsed_minutes, 0) as minutes
    from (select session, right(session, 10)::date as date, upper(split_part(session, '-', 1)) as kind from duty
      where household_id = ${householdId}::uuid and person_id = ${personId}::uuid and right(session, 10) >= ${from}) d
    left join lateral (select min(t.starts_at) as "startsAt", max(t.ends_at) as "endsAt" from task t join week_plan p on p.id = t.week_plan_id
      where t.household_id = ${householdId}::uuid and t.session = d.session and right(t.session, 10) = right(d.session, 10) and p.state <> 'REPLACED' and not t.kept) t on true
    left join prep_time_exception e on e.household_id = ${householdId}::uuid and e.kind = d.kind and e.date = d.date
    left join prep_time u on u.household_id = ${householdId}::uuid and u.kind = d.kind and u.weekday = trim(to_char(d.date, 'DAY'))
    where coalesce(t."startsAt", e.starts_at, u.starts_at) is not null`;

/** One reader of a feed at a time, on whichever server: what was shown is counted once. */
export async function lockFeed(tx: Tx, { personId, householdId }: FeedOwner): Promise<void> {
  await tx.$executeRaw`select pg_advisory_xact_lock(hashtextextended(${`feed/${householdId}/${personId}`}, 0))`;
}

export async function readFeedMarks(tx: Tx, { personId, householdId }: FeedOwner): Promise<FeedMark[]> {
  const rows = await tx.feedEvent.findMany({ where: { householdId, personId } });
  return rows.map((row) => ({
    uid: row.uid,
    sequence: row.sequence,
    fingerprint: row.fingerprint,
    startsAt: row.startsAt.getTime(),
    endsAt: row.endsAt.getTime(),
    changedAt: row.changedAt.getTime(),
    cancelledAt: row.cancelledAt?.getTime() ?? null,
  }));
}

/** Two statements at most. */
export async function saveFeedMarks(
  tx: Tx,
  { personId, householdId }: FeedOwner,
  changed: readonly FeedMark[],
  forgotten: readonly string[],
): Promise<void> {
  if (forgotten.length > 0)
    await tx.feedEvent.deleteMany({ where: { householdId, personId, uid: { in: [...forgotten] } } });
  if (changed.length === 0) return;
  await tx.$executeRaw`
    insert into feed_event (household_id, person_id, uid, sequence, fingerprint, starts_at, ends_at, changed_at, cancelled_at)
    select ${householdId}::uuid, ${personId}::uuid, x.uid, x.sequence, x.fingerprint, to_timestamp(x."startsAt" / 1000.0),
      to_timestamp(x."endsAt" / 1000.0), to_timestamp(x."changedAt" / 1000.0), to_timestamp(x."cancelledAt" / 1000.0)
    from jsonb_to_recordset(${JSON.stringify(changed)}::jsonb)
      as x (uid uuid, sequence int, fingerprint text, "startsAt" bigint, "endsAt" bigint, "changedAt" bigint, "cancelledAt" bigint)
    on conflict (household_id, person_id, uid) do update set sequence = excluded.sequence, fingerprint = excluded.fingerprint,
      starts_at = excluded.starts_at, ends_at = excluded.ends_at, changed_at = excluded.changed_at, cancelled_at = excluded.cancelled_at`;
}

export interface FeedAddressRow {
  readonly householdId: string;
  readonly createdAt: string;
}

/** The reader's own. */
export const readFeedAddresses = async (tx: ReadTx): Promise<FeedAddressRow[]> => {
  const rows = await tx<{ row: FeedAddressRow }[]>`
    select json_build_object('householdId', household_id, 'createdAt', created_at) as row
    from feed_address where person_id = app_person_id() order by created_at, household_id`;
  return rows.map(({ row }) => row);
};
