/** Which reminders come due between two instants. Clock times are of the household; what instant they are is the caller's to say. */
import { addDays, minutesOf } from "../calendar/dates.js";
import { compare } from "../compare.js";
import { dateOfSession } from "../kitchen/session-key.js";
import type { TaskPlan } from "../week.js";

export interface TaskToRemind extends Pick<
  TaskPlan,
  "key" | "session" | "startsAt" | "latestStartsAt" | "handsOnMinutes"
> {
  readonly state: "OPEN" | "TAKEN" | "DONE";
  readonly takenById: string | null;
}
export interface ReminderDue {
  readonly kind: "SESSION_BEGINS" | "TASK_BEGINS" | "TASK_GETS_LATE";
  readonly session: string;
  /** Null for a session. */
  readonly taskKey: string | null;
  /** Null: everybody in the household. */
  readonly personId: string | null;
  /** Milliseconds since 1970: of what it is about, and of the reminder. */
  readonly aboutAt: number;
  readonly dueAt: number;
}

const MINUTE = 60_000;
/** Our own choice, no standard's: time to come to the kitchen, and to put down what one holds. */
const BEFORE_SESSION = 15 * MINUTE;
const BEFORE_TASK = 10 * MINUTE;
const HALF_A_DAY = 12 * 60;

/**
 * Those on for a session are told a quarter of an hour before its first task, while something in it is left to do; who holds a task,
 * ten minutes before it begins; and everybody, that a task which nobody holds can begin no later. Tasks that need no hands remind
 * nobody. A time before the session's first task is of the next day.
 * @param onDuty persons by session
 * @param instantOf milliseconds since 1970 of a clock time of the household
 * @param since itself not included
 * @param until itself included
 */
export function dueReminders(
  tasks: readonly TaskToRemind[],
  onDuty: ReadonlyMap<string, readonly string[]>,
  instantOf: (date: string, time: string) => number,
  since: number,
  until: number,
): ReminderDue[] {
  const bySession = new Map<string, TaskToRemind[]>();
  for (const task of tasks) bySession.set(task.session, [...(bySession.get(task.session) ?? []), task]);
  const due: ReminderDue[] = [];
  for (const [session, its] of bySession) {
    const left = its.filter((task) => task.state !== "DONE" && task.handsOnMinutes > 0);
    if (left.length === 0) continue;
    const first = firstOf(its.map(({ startsAt }) => startsAt));
    const date = dateOfSession(session);
    const at = (time: string): number => instantOf(time < first ? addDays(date, 1) : date, time);
    for (const personId of onDuty.get(session) ?? [])
      due.push({
        kind: "SESSION_BEGINS",
        session,
        taskKey: null,
        personId,
        aboutAt: at(first),
        dueAt: at(first) - BEFORE_SESSION,
      });
    for (const { key, state, takenById, startsAt, latestStartsAt } of left) {
      if (state === "TAKEN" && takenById !== null)
        due.push({
          kind: "TASK_BEGINS",
          session,
          taskKey: key,
          personId: takenById,
          aboutAt: at(startsAt),
          dueAt: at(startsAt) - BEFORE_TASK,
        });
      if (state === "OPEN") {
        const aboutAt = at(latestStartsAt);
        due.push({ kind: "TASK_GETS_LATE", session, taskKey: key, personId: null, aboutAt, dueAt: aboutAt });
      }
    }
  }
  return due
    .filter(({ dueAt }) => dueAt > since && dueAt <= until)
    .sort((a, b) => a.dueAt - b.dueAt || compare(a.session, b.session));
}

/** The time at which a session begins. None lasts longer than half a day, so times further apart lie on both sides of midnight. */
function firstOf(times: readonly string[]): string {
  const sorted = [...times].sort();
  const [earliest, latest] = [sorted[0]!, sorted.at(-1)!];
  if (minutesOf(latest) - minutesOf(earliest) <= HALF_A_DAY) return earliest;
  return sorted.find((time) => minutesOf(time) - minutesOf(earliest) > HALF_A_DAY) ?? earliest;
}
