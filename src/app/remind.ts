/** Reminders as they come due, each written once however many servers look. */
import type { HomeToRecheck } from "../database/homes-to-recheck.js";
import { readWorkToRemind, saveReminders } from "../database/rota.js";
import { addDays } from "../domain/calendar/dates.js";
import { dueReminders } from "../domain/rota/reminders.js";
import type { App } from "./app.js";
import { instantAt, todayIn } from "./local-day.js";

/** How far back a look reaches: what came due while no server looked is told late, but not later than this. */
const LOOK_BACK_MS = 5 * 60_000;

/** @returns how many homes were looked at, how many reminders were new, and what went wrong in homes that got none */
export async function remind(app: App): Promise<{ homes: number; reminders: number; failed: readonly unknown[] }> {
  const until = app.now();
  const since = new Date(until.getTime() - LOOK_BACK_MS);
  const homes = await app.db.homesToRemind(since, until);
  let reminders = 0;
  const failed: unknown[] = [];
  for (const home of homes) {
    // One home's trouble is not the next one's.
    try {
      reminders += await remindHome(app, home, since, until);
    } catch (error) {
      failed.push(error);
    }
  }
  return { homes: homes.length, reminders, failed };
}

async function remindHome(
  app: App,
  { householdId, personId }: HomeToRecheck,
  since: Date,
  until: Date,
): Promise<number> {
  const today = todayIn("UTC", until);
  // A zone may be a day ahead or behind, a session may run past midnight, and a reminder comes before what it is about.
  const work = await app.db.readAs(personId, (tx) =>
    readWorkToRemind(tx, householdId, addDays(today, -2), addDays(today, 2)),
  );
  if (!work) return 0;
  const onDuty = new Map<string, string[]>();
  for (const duty of work.duties) onDuty.set(duty.session, [...(onDuty.get(duty.session) ?? []), duty.personId]);
  const due = dueReminders(
    work.tasks,
    onDuty,
    (date, time) => instantAt(work.timeZone, date, time),
    since.getTime(),
    until.getTime(),
  );
  return due.length === 0 ? 0 : app.db.asPerson(personId, (tx) => saveReminders(tx, householdId, due));
}
