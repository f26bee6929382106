/** One listener per process, fanned out to the subscriptions that may hear it. */
import { EventEmitter, on } from "node:events";
import type { Database, Notice } from "../database/database.js";

/** The subscription that tells of each kind of notice. */
const toldBy = {
  PLAN_CHANGED: "weekChanged",
  PLAN_PROGRESS: "planProgress",
  PLAN_FAILED: "planProgress",
  BOX_CHECKED: "boxesBlocked",
  REMINDER: "reminders",
} as const satisfies Record<Notice["kind"], string>;
export type Topic = (typeof toldBy)[Notice["kind"]];
export type NoticeOn<T extends Topic> = Extract<
  Notice,
  { kind: { [K in Notice["kind"]]: (typeof toldBy)[K] extends T ? K : never }[Notice["kind"]] }
>;

export interface Notices {
  /** Notices on one topic about one household. Ends at once when the consumer returns, also while it waits. */
  about<T extends Topic>(topic: T, householdId: string): AsyncIterableIterator<NoticeOn<T>>;
  stop(): Promise<void>;
}

export async function listenForNotices(db: Database): Promise<Notices> {
  const emitter = new EventEmitter();
  // Every subscription listens on its own event; the default limit of ten is for leaks.
  emitter.setMaxListeners(0);
  const stopListening = await db.listen((notice) =>
    emitter.emit(`${toldBy[notice.kind]}/${notice.householdId}`, notice),
  );
  return {
    about<T extends Topic>(topic: T, householdId: string) {
      const source = on(emitter, `${topic}/${householdId}`);
      return mapped(source, ([notice]) => notice as NoticeOn<T>);
    },
    stop: stopListening,
  };
}

/** Passes on what may be passed on, looking at one event after the other. No generator, for the reason below. */
export function filtered<T>(
  source: AsyncIterator<T>,
  isWanted: (value: T) => boolean | Promise<boolean>,
): AsyncIterableIterator<T> {
  return {
    async next() {
      for (;;) {
        const step = await source.next();
        if (step.done || (await isWanted(step.value))) return step;
      }
    },
    async return() {
      await source.return?.();
      return { done: true, value: undefined };
    },
    [Symbol.asyncIterator]() {
      return this;
    },
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
