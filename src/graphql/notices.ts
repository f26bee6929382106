/** One listener per process, fanned out to the subscriptions that may hear it. */
import { EventEmitter, on } from "node:events";
import type { Database, Notice } from "../database/database.js";

/** The subscription that tells of each kind of notice. */
const toldBy = {
  PLAN_CHANGED: "weekChanged",
  PLAN_PROGRESS: "planProgress",
  PLAN_FAILED: "planProgress",
  BOX_CHECKED: "boxesBlocked",
} as const satisfies Record<Told, string>;
type Told = Exclude<Notice["kind"], "PERSON_ERASED">;
export type Topic = (typeof toldBy)[Told];
export type NoticeOn<T extends Topic> = Extract<
  Notice,
  { kind: { [K in Told]: (typeof toldBy)[K] extends T ? K : never }[Told] }
>;

export interface Notices {
  /** Notices on one topic about one household. Ends at once when the consumer returns, also while it waits. */
  about<T extends Topic>(topic: T, householdId: string): AsyncIterableIterator<NoticeOn<T>>;
  /** Is told of every person who was erased, on whichever server; those of this one before they have their answer. */
  onErased(forget: (personId: string) => void): void;
  erased(personId: string): void;
  stop(): Promise<void>;
}

export async function listenForNotices(db: Database): Promise<Notices> {
  const emitter = new EventEmitter();
  // Every subscription listens on its own event; the default limit of ten is for leaks.
  emitter.setMaxListeners(0);
  const stopListening = await db.listen((notice) => {
    if (notice.kind === "PERSON_ERASED") emitter.emit("erased", notice.personId);
    else emitter.emit(`${toldBy[notice.kind]}/${notice.householdId}`, notice);
  });
  return {
    about<T extends Topic>(topic: T, householdId: string) {
      const source = on(emitter, `${topic}/${householdId}`);
      return mapped(source, ([notice]) => notice as NoticeOn<T>);
    },
    onErased: (forget) => void emitter.on("erased", forget),
    erased: (personId) => void emitter.emit("erased", personId),
    stop: stopListening,
  };
}

/** Maps event by event. No generator: one that waits for its source would not hear `return` before the next event. */
export function mapped<T, U>(source: AsyncIterator<T>, change: (value: T) => U): AsyncIterableIterator<U> {
  const ended: IteratorResult<U> = { done: true, value: undefined };
  return {
    async next() {
      const step = await source.next();
      return step.done ? ended : { done: false, value: change(step.value) };
    },
    async return() {
      await source.return?.();
      return ended;
    },
    [Symbol.asyncIterator]() {
      return this;
    },
  };
}
