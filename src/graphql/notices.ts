/** One listener per process, fanned out to the subscriptions that may hear it. */
import { EventEmitter, on } from "node:events";
import type { Database, Notice } from "../database/database.js";
import { createChangeTails, type ChangeTails } from "./change-tails.js";

type Told = Exclude<Notice, { kind: "CARER_LEFT" | "CHANGED" | "PERSON_ERASED" }>;
/** The subscription that tells of each kind of notice. */
const toldBy = {
  PLAN_CHANGED: "weekChanged",
  PLAN_PROGRESS: "planProgress",
  PLAN_FAILED: "planProgress",
  BOX_CHECKED: "boxesBlocked",
  REMINDER: "reminders",
} as const satisfies Record<Told["kind"], string>;
export type Topic = (typeof toldBy)[Told["kind"]];
export type NoticeOn<T extends Topic> = Extract<
  Told,
  { kind: { [K in Told["kind"]]: (typeof toldBy)[K] extends T ? K : never }[Told["kind"]] }
>;

export interface Notices {
  /**
   * Notices on one topic about one household, for one of its carers. Ends at once when the consumer returns, also while it waits, and
   * when the person is no carer there any more.
   */
  about<T extends Topic>(topic: T, householdId: string, personId: string): AsyncIterableIterator<NoticeOn<T>>;
  /** A household's log from an entry on, as it grows. */
  readonly changes: Pick<ChangeTails, "follow">;
  /** Is told of every person who was erased, on whichever server; those of this one before they have their answer. */
  onErased(forget: (personId: string) => void): void;
  erased(personId: string): void;
  stop(): Promise<void>;
}

export async function listenForNotices(db: Database): Promise<Notices> {
  const emitter = new EventEmitter();
  // Every subscription listens on its own event; the default limit of ten is for leaks.
  emitter.setMaxListeners(0);
  const changes = createChangeTails(db);
  const left = (householdId: string, personId: string) => `left/${householdId}/${personId}`;
  const tell = (notice: Notice): void => {
    switch (notice.kind) {
      case "CHANGED":
        return changes.grown(notice.householdId);
      case "CARER_LEFT":
        changes.grown(notice.householdId); // looks who is a carer still
        return void emitter.emit(left(notice.householdId, notice.personId));
      case "PERSON_ERASED":
        return void emitter.emit("erased", notice.personId);
      case "PLAN_CHANGED":
      case "PLAN_PROGRESS":
      case "PLAN_FAILED":
      case "BOX_CHECKED":
      case "REMINDER":
        emitter.emit(`${toldBy[notice.kind]}/${notice.householdId}`, notice);
    }
  };
  const stopListening = await db.listen(tell, changes.lookAgain);
  return {
    changes,
    about<T extends Topic>(topic: T, householdId: string, personId: string) {
      const source = on(emitter, `${topic}/${householdId}`, { close: [left(householdId, personId)] });
      return mapped(source, ([notice]) => notice as NoticeOn<T>);
    },
    onErased: (forget) => void emitter.on("erased", forget),
    erased: (personId) => void emitter.emit("erased", personId),
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

/** Ends at once. */
export const nothingToHear = (): AsyncIterableIterator<never> =>
  mapped<never, never>({ next: () => Promise.resolve({ done: true, value: undefined }) }, (never) => never);
