/** What a new plan of a week takes over of the work of the one before: who holds what, what is done, and what was begun. */
import { dateOfSession } from "./session-key.js";
import type { TaskPlan } from "../week.js";

/** A task of the plan before. */
export interface TaskBefore extends TaskPlan {
  readonly state: "OPEN" | "TAKEN" | "DONE";
  /** It was taken over from an earlier plan itself. */
  readonly kept: boolean;
}
export interface TakenOver<T extends TaskBefore> {
  /** By the new plan's keys: tasks whose state goes on. */
  readonly goOn: ReadonlyMap<string, T>;
  /** Rows of the plan before that stay on record beside the new plan's own, each with a key that is free there. */
  readonly kept: readonly { readonly key: string; readonly task: T }[];
}

/**
 * A task that is held is held under the same key. One that is done is done in the new plan too when that asks for no more than was
 * made; where it asks for more, the new one is open and the old one stays on record. A base is cooked once: a task of the new plan with
 * the key of one that is done is for another batch. What has no task any more stays when it is done, and when its session has begun
 * and somebody holds it or a base of it counts as cooked; other work that nobody needs falls away.
 * @param madeThere whether the new plan counts a base of a session as cooked
 * @param hasBegun whether a session has begun by now
 */
export function takeOver<T extends TaskBefore>(
  before: readonly T[],
  tasks: readonly TaskPlan[],
  madeThere: (base: string, session: string) => boolean,
  hasBegun: (session: string) => boolean,
): TakenOver<T> {
  const byKey = new Map(tasks.map((task) => [task.key, task]));
  const goOn = new Map<string, T>();
  const stays: T[] = [];
  for (const old of before) {
    const now = old.kept ? undefined : byKey.get(old.key);
    if (now !== undefined && (old.state !== "DONE" || covers(old, now))) {
      goOn.set(now.key, old);
    } else if (
      old.state === "DONE" ||
      (now === undefined &&
        hasBegun(old.session) &&
        (old.state === "TAKEN" || (old.base !== null && old.kind === "BASE" && madeThere(old.base, old.session))))
    ) {
      stays.push(old);
    }
  }
  const taken = new Set(byKey.keys());
  const kept = stays.map((task) => {
    const stem = task.key.replace(/~\d+$/, "");
    let key = task.key;
    for (let n = 1; taken.has(key); n += 1) key = `${stem}~${n}`;
    taken.add(key);
    return { key, task };
  });
  return { goOn, kept };
}

/** Whether what was made is all the new task asks for. Minutes to a tenth: they are sums of tenths. */
function covers(done: TaskPlan, asked: TaskPlan): boolean {
  if (asked.kind === "BASE") return false;
  // What is packed or thawed is in the words, grams and dishes alike.
  if (asked.kind === "PACK" || asked.kind === "DEFROST") return asked.text === done.text;
  return (
    asked.childIds.every((childId) => done.childIds.includes(childId)) &&
    Math.round(asked.handsOnMinutes * 10) <= Math.round(done.handsOnMinutes * 10)
  );
}

/** Whether a session has begun by its first task: its key ends with its day, "evening-2027-01-11". */
export function hasBegun(
  tasks: readonly TaskPlan[],
  now: { readonly date: string; readonly time: string },
): (session: string) => boolean {
  const first = new Map<string, string>();
  for (const { session, startsAt } of tasks) {
    const known = first.get(session);
    if (known === undefined || startsAt < known) first.set(session, startsAt);
  }
  return (session) => {
    const date = dateOfSession(session);
    return date < now.date || (date === now.date && (first.get(session) ?? "24:00") <= now.time);
  };
}
