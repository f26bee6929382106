import type { ReminderRow } from "../database/rota.js";
import { kindOfSession } from "../domain/kitchen/session-key.js";
import { clockIn } from "./local-day.js";

/** @param task what the task says; null where the plan has it no more */
export function sayReminder(row: ReminderRow, task: string | null, timeZone: string): string {
  const { time } = clockIn(timeZone, new Date(row.aboutAt));
  const session = kindOfSession(row.session).toLowerCase();
  const what = task === null ? "" : ` ${task}`;
  switch (row.kind) {
    case "SESSION_BEGINS":
      return `The ${session} session begins at ${time}, and you are on for it.`;
    case "TASK_BEGINS":
      return `Your task begins at ${time}.${what}`;
    case "TASK_GETS_LATE":
      return `Nobody has taken this task, and it can begin no later than ${time}.${what}`;
  }
}
