/** One listener per process, fanned out to the subscriptions that may hear it. */
import { EventEmitter, on } from "node:events";
import type { Database, Notice } from "../database/database.js";

export interface Notices {
  /** Notices of one kind about one household, until the consumer returns. */
  about<K extends Notice["kind"]>(
    kind: K,
    householdId: string,
  ): AsyncGenerator<Extract<Notice, { kind: K }>, void, undefined>;
  stop(): Promise<void>;
}

export async function listenForNotices(db: Database): Promise<Notices> {
  const emitter = new EventEmitter();
  // Every subscription listens on its own event; the default limit of ten is for leaks.
  emitter.setMaxListeners(0);
  const stopListening = await db.listen((notice) => emitter.emit(`${notice.kind}/${notice.householdId}`, notice));
  return {
    async *about<K extends Notice["kind"]>(kind: K, householdId: string) {
      for await (const [notice] of on(emitter, `${kind}/${householdId}`)) yield notice as Extract<Notice, { kind: K }>;
    },
    stop: stopListening,
  };
}
