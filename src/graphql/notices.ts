/** One listener per process, fanned out to the subscriptions that may hear it. */
import { EventEmitter, on } from "node:events";
import type { Database, Notice } from "../database/database.js";

export interface Notices {
  /** Notices of one kind about one household. Ends at once when the consumer returns, also while it waits. */
  about<K extends Notice["kind"]>(kind: K, householdId: string): AsyncIterableIterator<Extract<Notice, { kind: K }>>;
  stop(): Promise<void>;
}

export async function listenForNotices(db: Database): Promise<Notices> {
  const emitter = new EventEmitter();
  // Every subscription listens on its own event; the default limit of ten is for leaks.
  emitter.setMaxListeners(0);
  const stopListening = await db.listen((notice) => emitter.emit(`${notice.kind}/${notice.householdId}`, notice));
  return {
    about<K extends Notice["kind"]>(kind: K, householdId: string) {
      const source = on(emitter, `${kind}/${householdId}`);
      return mapped(source, ([notice]) => notice as Extract<Notice, { kind: K }>);
    },
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
