/** One context per operation: who asks, and the read transaction that everything in it shares. */
import type { App } from "../app/app.js";
import { nameAtFirstSight } from "../app/display-name.js";
import type { ReadSession } from "../database/database.js";
import { createReads, createSearches, type GraphqlContext } from "./context.js";
import type { Notices } from "./notices.js";

/** Subjects seen before, so that a signed-in person costs no statement; bounded, and a person's row only ever goes by erasure. */
const MOST_KNOWN = 10_000;

interface Asked {
  readonly subject: string | null;
  /** The verified token's name, for whoever is seen for the first time. */
  readonly name?: string | null;
  readonly requestId: string;
  /** Absent in this very process. */
  readonly address?: string;
  readonly gone?: AbortSignal;
}

export function createContextOpener(app: App, notices: Notices) {
  const known = new Map<string, string>();
  notices.onErased((personId) => {
    for (const [subject, id] of known) if (id === personId) known.delete(subject);
  });
  const personOf = async (subject: string, name: string | null): Promise<string> => {
    const before = known.get(subject);
    if (before !== undefined) return before;
    const id = await app.db.signIn(subject, nameAtFirstSight(name, subject));
    if (known.size >= MOST_KNOWN) known.clear();
    known.set(subject, id);
    return id;
  };
  return async ({ subject, name = null, requestId, address = "here", gone }: Asked) => {
    const personId = subject === null ? null : await personOf(subject, name);
    let session: ReadSession | null = null;
    const closing: Promise<void>[] = [];
    const open = () => {
      if (personId === null) throw new Error("a read without a signed-in person");
      return (session ??= app.db.openRead(personId, "OPERATION"));
    };
    // A session sees one moment; after a write the next read wants a later one.
    const leave = () => {
      if (session) closing.push(session.close());
      session = null;
    };
    const context: GraphqlContext = {
      app,
      notices,
      requestId,
      address,
      personId,
      reads: createReads(app, open, leave),
      searches: createSearches(gone ?? new AbortController().signal),
    };
    return {
      context,
      close: async () => {
        await Promise.all([...closing, session?.close()]);
      },
    };
  };
}
