/** Who is on for which session, when carers can help, what they have done, and what they were reminded of. */
import type { WeekdayCode, WindowKind } from "../../shared/codes.js";
import type { MinutesOf } from "../domain/rota/fairness.js";
import type { ReminderDue, TaskToRemind } from "../domain/rota/reminders.js";
import type { ReadTx, Tx } from "./database.js";
import type { TaskRow } from "./week.js";

export interface AvailabilityRow {
  readonly personId: string;
  readonly weekday: WeekdayCode;
  readonly kind: WindowKind;
  /** Most they can give to such a session; 0: cannot help then. */
  readonly minutes: number;
}
export interface RotaFacts {
  readonly duties: readonly { readonly session: string; readonly personId: string }[];
  readonly availability: readonly AvailabilityRow[];
  /** First days of the weeks that are planned, of those whose sessions may be asked for. */
  readonly plannedWeeks: readonly string[];
  /** Of the current plans; what an earlier plan left on record is not among them. */
  readonly tasks: readonly Pick<TaskRow, "session" | "startsAt" | "handsOnMinutes" | "carer" | "state">[];
}

/** SQL for the day of a session. */
const dayOf = (tx: ReadTx, session: ReturnType<ReadTx>) =>
  tx`substring(${session} from '[0-9]{4}-[0-9]{2}-[0-9]{2}')::date`;
/** A week's sessions lie between the third day before it and its last. */
const weeksAround = (tx: ReadTx, from: string, to: string) => tx`between ${from}::date - 8 and ${to}::date + 4`;

export async function readRotaFacts(tx: ReadTx, householdId: string, from: string, to: string): Promise<RotaFacts> {
  const [row] = await tx<{ tree: RotaFacts }[]>`
    with plan as (select p.id, w.week_start from week w join week_plan p on p.week_id = w.id and p.state <> 'REPLACED'
      where w.household_id = ${householdId} and w.week_start ${weeksAround(tx, from, to)})
    select json_build_object(
      'duties', (select coalesce(json_agg(json_build_object('session', d.session, 'personId', d.person_id) order by d.session, d.person_id), '[]')
        from duty d where d.household_id = ${householdId} and ${dayOf(tx, tx`d.session`)} between ${from} and ${to}),
      'availability', ${availabilityOf(tx, householdId)},
      'plannedWeeks', (select coalesce(json_agg(week_start order by week_start), '[]') from plan),
      'tasks', (select coalesce(json_agg(json_build_object('session', t.session, 'startsAt', t.starts_at, 'handsOnMinutes', t.hands_on_minutes,
          'carer', t.carer, 'state', t.state) order by t.session, t.carer, t.key), '[]')
        from task t where t.week_plan_id in (select id from plan) and not t.kept and ${dayOf(tx, tx`t.session`)} between ${from} and ${to})
    ) as tree`;
  return row!.tree;
}

const availabilityOf = (tx: ReadTx, householdId: string) => tx`
  (select coalesce(json_agg(x), '[]') from (select a.person_id as "personId", a.weekday, a.kind, a.minutes from availability a
    where a.household_id = ${householdId} order by a.person_id, a.weekday, a.kind) x)`;

export async function readAvailability(tx: ReadTx, householdId: string): Promise<readonly AvailabilityRow[]> {
  const [row] = await tx<{ rows: AvailabilityRow[] }[]>`select ${availabilityOf(tx, householdId)} as rows`;
  return row!.rows;
}

/**
 * Minutes of tasks done in sessions of these days by who did them, as long as they took or else by estimate, and of tasks taken in
 * sessions from the last of them on.
 */
export async function readMinutes(
  tx: ReadTx,
  householdId: string,
  from: string,
  to: string,
): Promise<readonly MinutesOf[]> {
  const rows = await tx<MinutesOf[]>`
    select t.taken_by_id as "personId",
      coalesce(sum(coalesce(t.actual_minutes, t.hands_on_minutes)) filter (where t.state = 'DONE' and t.day between ${from} and ${to}), 0) as done,
      coalesce(sum(t.hands_on_minutes) filter (where t.state = 'TAKEN' and t.day >= ${to}), 0) as ahead
    from (select t.*, ${dayOf(tx, tx`t.session`)} as day from week w join week_plan p on p.week_id = w.id and p.state <> 'REPLACED'
      join task t on t.week_plan_id = p.id and t.state <> 'OPEN'
      where w.household_id = ${householdId} and w.week_start >= ${from}::date - 8) t
    group by t.taken_by_id order by t.taken_by_id`;
  return rows.map(({ personId, done, ahead }) => ({ personId, done: Number(done), ahead: Number(ahead) }));
}

/** Says who is on for these sessions, and nobody else: two statements. */
export async function saveDuties(
  tx: Tx,
  householdId: string,
  duties: readonly { readonly session: string; readonly personIds: readonly string[] }[],
): Promise<void> {
  await tx.duty.deleteMany({ where: { householdId, session: { in: duties.map(({ session }) => session) } } });
  await tx.duty.createMany({
    data: duties.flatMap(({ session, personIds }) => personIds.map((personId) => ({ householdId, session, personId }))),
  });
}

/** Replaces what a carer has said. */
export async function saveAvailability(
  tx: Tx,
  householdId: string,
  personId: string,
  entries: readonly Omit<AvailabilityRow, "personId">[],
): Promise<void> {
  await tx.availability.deleteMany({ where: { householdId, personId } });
  await tx.availability.createMany({ data: entries.map((entry) => ({ householdId, personId, ...entry })) });
}

export interface ReminderRow {
  readonly id: string;
  readonly householdId: string;
  readonly kind: ReminderDue["kind"];
  readonly session: string;
  readonly taskKey: string | null;
  /** Null: everybody. */
  readonly personId: string | null;
  readonly aboutAt: string;
  readonly dueAt: string;
}
const reminderColumns = (tx: ReadTx) =>
  tx`r.id, r.household_id as "householdId", r.kind, r.session, r.task_key as "taskKey", r.person_id as "personId", r.about_at as "aboutAt", r.due_at as "dueAt"`;

/** The reader's own and everybody's, due after an instant, the first of them first. */
export async function readReminders(
  tx: ReadTx,
  householdId: string,
  after: Date,
  most: number,
): Promise<readonly ReminderRow[]> {
  return tx<ReminderRow[]>`select ${reminderColumns(tx)} from reminder r
    where r.household_id = ${householdId} and r.due_at > ${after} order by r.due_at, r.kind, r.task_key, r.id limit ${most}`;
}

/** Null: none, or not the reader's. */
export async function readReminder(tx: ReadTx, id: string): Promise<ReminderRow | null> {
  const [row] = await tx<ReminderRow[]>`select ${reminderColumns(tx)} from reminder r where r.id = ${id}`;
  return row ?? null;
}

/** What reminders of a household are made of: tasks of the sessions of these days, in its own time zone, and who is on for them. */
export async function readWorkToRemind(
  tx: ReadTx,
  householdId: string,
  from: string,
  to: string,
): Promise<{
  readonly timeZone: string;
  readonly tasks: readonly TaskToRemind[];
  readonly duties: RotaFacts["duties"];
} | null> {
  const [row] = await tx<{ tree: NonNullable<Awaited<ReturnType<typeof readWorkToRemind>>> }[]>`
    select json_build_object('timeZone', h.time_zone,
      'tasks', (select coalesce(json_agg(json_build_object('key', t.key, 'session', t.session, 'startsAt', t.starts_at, 'latestStartsAt', t.latest_starts_at,
          'handsOnMinutes', t.hands_on_minutes, 'state', t.state, 'takenById', t.taken_by_id) order by t.session, t.starts_at, t.key), '[]')
        from week w join week_plan p on p.week_id = w.id and p.state <> 'REPLACED' join task t on t.week_plan_id = p.id
        where w.household_id = h.id and w.week_start ${weeksAround(tx, from, to)} and not t.kept and ${dayOf(tx, tx`t.session`)} between ${from} and ${to}),
      'duties', (select coalesce(json_agg(json_build_object('session', d.session, 'personId', d.person_id) order by d.session, d.person_id), '[]')
        from duty d join membership m on m.household_id = d.household_id and m.person_id = d.person_id and m.role <> 'OBSERVER'
        where d.household_id = h.id and ${dayOf(tx, tx`d.session`)} between ${from} and ${to})) as tree
    from household h where h.id = ${householdId}`;
  return row?.tree ?? null;
}

/** Writes what is not there yet, for carers who are still of the household; answers how many were new. */
export async function saveReminders(tx: Tx, householdId: string, due: readonly ReminderDue[]): Promise<number> {
  if (due.length === 0) return 0;
  const rows = due.map(({ kind, session, taskKey, personId, aboutAt, dueAt }) => ({
    kind,
    session,
    task_key: taskKey,
    person_id: personId,
    about_at: new Date(aboutAt).toISOString(),
    due_at: new Date(dueAt).toISOString(),
  }));
  return tx.$executeRaw`insert into reminder (household_id, person_id, kind, session, task_key, about_at, due_at)
    select ${householdId}::uuid, r.person_id, r.kind, r.session, r.task_key, r.about_at, r.due_at
    from jsonb_to_recordset(${JSON.stringify(rows)}::jsonb)
      as r(person_id uuid, kind text, session text, task_key text, about_at timestamptz, due_at timestamptz)
    where r.person_id is null or exists (select from membership m where m.household_id = ${householdId}::uuid and m.person_id = r.person_id)
    on conflict do nothing`;
}
