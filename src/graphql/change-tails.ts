/** Households' logs as they grow: one read for all listeners of a household, each entry handed to each of them once, in order. */
import type { ChangeRow } from "../database/changes-for.js";
import type { Database } from "../database/database.js";

/** Entries read at a time. */
const PAGE = 200;
/** Entries that may wait for a listener who is slow; the rest waits in the database. */
const MOST_WAITING = 400;
/** Milliseconds until a read that failed is tried again. */
const AGAIN = 1_000;

export interface ChangeTails {
  /**
   * Entries after one, for as long as this person is a carer of the household; ends when they are not.
   * @param after number of the last entry that was heard
   */
  follow(householdId: string, personId: string, after: number): AsyncIterableIterator<ChangeRow>;
  /** The household's log has grown. */
  grown(householdId: string): void;
  /** Notices may have been missed: every household is looked at. */
  lookAgain(): void;
}

interface Listener {
  readonly personId: string;
  after: number;
  ended: boolean;
  readonly waiting: ChangeRow[];
  /** Set while the consumer waits. */
  wake: (() => void) | null;
}
interface Tail {
  readonly householdId: string;
  readonly listeners: Set<Listener>;
  reading: boolean;
  /** Something may have come since the read under way began. */
  more: boolean;
  retry: NodeJS.Timeout | null;
}

export function createChangeTails(db: Pick<Database, "changesFor">): ChangeTails {
  const tails = new Map<string, Tail>();

  async function read(tail: Tail): Promise<void> {
    if (tail.reading) {
      tail.more = true;
      return;
    }
    tail.reading = true;
    try {
      do {
        tail.more = false;
        tail.more = (await readPage(tail)) || tail.more;
      } while (tail.more);
    } catch {
      // The database is away. Whoever listens waits; what was announced meanwhile is in the log.
      tail.retry ??= setTimeout(() => {
        tail.retry = null;
        void read(tail);
      }, AGAIN).unref();
    } finally {
      tail.reading = false;
    }
  }

  /** @returns whether there may be more */
  async function readPage(tail: Tail): Promise<boolean> {
    const hungry = [...tail.listeners].filter(({ waiting }) => waiting.length < MOST_WAITING);
    if (hungry.length === 0) return false;
    const after = hungry.reduce((least, listener) => Math.min(least, listener.after), Number.MAX_SAFE_INTEGER);
    const people = [...new Set(hungry.map(({ personId }) => personId))];
    const { readers, changes } = await db.changesFor(tail.householdId, people, after, PAGE);
    const may = new Set(readers);
    for (const listener of hungry) {
      if (!may.has(listener.personId)) {
        listener.ended = true;
        tail.listeners.delete(listener);
      } else {
        for (const change of changes) {
          if (change.seq <= listener.after) continue;
          listener.waiting.push(change);
          listener.after = change.seq;
        }
      }
      listener.wake?.();
    }
    if (tail.listeners.size === 0 && tails.get(tail.householdId) === tail) tails.delete(tail.householdId);
    return changes.length === PAGE;
  }

  return {
    follow(householdId, personId, after) {
      const tail: Tail = tails.get(householdId) ?? {
        householdId,
        listeners: new Set(),
        reading: false,
        more: false,
        retry: null,
      };
      tails.set(householdId, tail);
      const listener: Listener = { personId, after, ended: false, waiting: [], wake: null };
      tail.listeners.add(listener);
      void read(tail);
      return {
        async next() {
          for (;;) {
            const change = listener.waiting.shift();
            if (change) {
              if (listener.waiting.length === 0) void read(tail);
              return { done: false, value: change };
            }
            if (listener.ended) return { done: true, value: undefined };
            await new Promise<void>((resolve) => (listener.wake = resolve));
            listener.wake = null;
          }
        },
        async return() {
          listener.ended = true;
          listener.waiting.length = 0;
          tail.listeners.delete(listener);
          if (tail.listeners.size === 0 && tails.get(householdId) === tail) tails.delete(householdId);
          listener.wake?.();
          return { done: true, value: undefined };
        },
        [Symbol.asyncIterator]() {
          return this;
        },
      };
    },
    grown(householdId) {
      const tail = tails.get(householdId);
      if (tail) void read(tail);
    },
    lookAgain() {
      for (const tail of tails.values()) void read(tail);
    },
  };
}
