/** One context per operation: who asks, and the read transaction that everything in it shares. */
import type { App } from "../app/app.js";
import type { ReadSession } from "../database/database.js";
import { createReads, createSearches, type GraphqlContext } from "./context.js";
import type { Notices } from "./notices.js";

/** Subjects seen before, so that a signed-in person costs no statement; bounded, and a person's row never moves. */
const MOST_KNOWN = 10_000;

interface Asked {
  readonly subject: string | null;
  readonly requestId: string;
  /** Absent in this very process. */
  readonly address?: string;
  readonly gone?: AbortSignal;
}

export function createContextOpener(app: App, notices: Notices) {
  const known = new Map<string, string>();
  const personOf = async (subject: string): Promise<string> => {
    const before = known.get(subject);
    if (before !== undefined) return before;
    const id = await app.db.signIn(subject, subject);
    if (known.size >= MOST_KNOWN) known.clear();
    known.set(subject, id);
    return id;
  };
  return async ({ subject, requestId, address = "here", gone }: Asked) => {
    const personId = subject === null ? null : await personOf(subject);
    let session: ReadSession | null = null;
    const open = () => {
      if (personId === null) throw new Error("a read without a signed-in person");
      return (session ??= app.db.openRead(personId));
    };
    const context: GraphqlContext = {
      app,
      notices,
      requestId,
      address,
      personId,
      reads: createReads(app, open),
      searches: createSearches(gone ?? new AbortController().signal),
    };
    return {
      context,
      close: async () => {
        await session?.close();
      },
    };
  };
}
