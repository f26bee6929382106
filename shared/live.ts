/**
 * Subscriptions by the graphql-transport-ws subprotocol, as a browser or Node speaks it: one socket for all of them, opened at
 * the first and closed after the last. A lost socket is opened again, with another token where the old one ran out, and every
 * subscription is placed again, after its cursor where it has one.
 */
import { ClientError, mayPass, type ErrorSeen, type Trouble } from "./client-error.js";
import type { Document, SomeDocument } from "./document.js";
import { waitBefore, type Patience } from "./patience.js";

/** What this needs of a WebSocket: those of browsers, of Node from 22 on and of the package ws have it. */
export interface SocketLike {
  addEventListener(
    type: "open" | "message" | "close" | "error",
    listener: (event: {
      readonly type: string;
      readonly data?: unknown;
      readonly code?: number;
      readonly reason?: string;
    }) => void,
  ): void;
  send(text: string): void;
  close(code?: number, reason?: string): void;
}
export type SocketClass = new (url: string, subprotocol: string) => SocketLike;

export interface Follow<Result, Variables> {
  /** Called for each event, in order. An event counts as seen once this returns; throwing ends the subscription. */
  readonly onEvent: (event: Result) => void;
  /** Called each time the subscription is placed. Without a cursor, what happened before the second time went unheard: ask again. */
  readonly onPlaced?: (again: boolean) => void;
  /** With `withCursor`: catches up after a lost connection, and hands each event over once. */
  readonly cursorOf?: (event: Result) => string;
  readonly withCursor?: (variables: Variables, cursor: string) => Variables;
  /** Where to begin; what was kept from an earlier run. */
  readonly cursor?: string;
}
export interface Following {
  /** Resolves when the server ended the subscription or it was stopped; rejects with a `ClientError`, or what `onEvent` threw. */
  readonly ended: Promise<void>;
  /** Of the last event that was seen. */
  cursor(): string | null;
  stop(): void;
}

interface LiveOptions {
  readonly url: string;
  readonly token: (renew: boolean) => Promise<string> | string;
  readonly payloadOf: (document: SomeDocument) => Readonly<Record<string, unknown>>;
  readonly Socket: SocketClass;
  readonly random: () => number;
  readonly wait: (milliseconds: number) => Promise<void>;
  readonly patience: Patience;
  /** Milliseconds of silence after which the server is pinged; as long again without a word and the socket is given up. */
  readonly silence: number;
}
export interface Live {
  follow<Result, Variables>(
    document: Document<Result, Variables>,
    variables: Variables,
    options: Follow<Result, Variables>,
  ): Following;
  /** Stops every subscription. */
  close(): void;
}

interface Message {
  readonly type?: string;
  readonly id?: string;
  readonly payload?: unknown;
}
interface Follower {
  readonly payload: () => Readonly<Record<string, unknown>>;
  readonly take: (data: unknown) => void;
  readonly onPlaced: (again: boolean) => void;
  readonly end: (error?: unknown) => void;
  placed: boolean;
  /** Answers in a row that could not be read. */
  failures: number;
}
interface Connection {
  readonly send: (message: Message) => void;
  readonly close: () => void;
  /** By the id of the operation on this socket. */
  readonly placed: Map<string, Follower>;
  acknowledged: boolean;
  readonly since: number;
}

/** Cursors that are remembered, to drop what comes twice: more than a server sends again. */
const REMEMBERED = 1_000;
/** Milliseconds after which a socket was a good one, and the next loss is the first again. */
const STEADY = 10_000;
const NORMAL = 1000;
/** The close codes of the subprotocol that no second try mends: bad message, no such subprotocol, twice the same id, two inits. */
const HOPELESS = new Set([4400, 4406, 4409, 4429]);
const UNAUTHORIZED = 4401;
const FORBIDDEN = 4403;

export function createLive(options: LiveOptions): Live {
  const { patience, random, wait, silence } = options;
  const followers = new Set<Follower>();
  let connection: Connection | null = null;
  let opening = false;
  let renew = false;
  /** Sockets in a row on which nothing was heard but refusals. */
  let lost = 0;
  let refused = 0;
  let operations = 0;

  function endAll(trouble: Trouble): void {
    const all = [...followers];
    followers.clear();
    for (const follower of all) follower.end(new ClientError(trouble));
  }

  /** Null: the issuer may be out of reach like the server. */
  async function tokenOrNull(): Promise<string | null> {
    try {
      return await options.token(renew);
    } catch {
      lost++;
      return null;
    }
  }

  /** Opens a socket unless there is one, or nobody needs one. */
  async function open(): Promise<void> {
    if (opening || connection !== null) return;
    opening = true;
    let token: string | null = null;
    while (token === null && followers.size > 0) {
      if (lost > 0) await wait(waitBefore(patience, lost, random()));
      if (followers.size > 0) token = await tokenOrNull();
    }
    opening = false;
    if (token === null || followers.size === 0) return;
    try {
      connection = connect(token);
    } catch (error) {
      endAll({ kind: "PROTOCOL", status: 0, reason: String(error) }); // no address of a socket
    }
  }

  function connect(token: string): Connection {
    const socket = new options.Socket(options.url, "graphql-transport-ws");
    let heard = true;
    const watch = setInterval(() => {
      if (!heard) return leave(4408, "");
      heard = false;
      if (made.acknowledged) made.send({ type: "ping" });
    }, silence);
    const made: Connection = {
      send: (message) => socket.send(JSON.stringify(message)),
      close: () => leave(NORMAL, ""),
      placed: new Map(),
      acknowledged: false,
      since: Date.now(),
    };
    /** Once: whatever the socket says afterwards comes from a connection that is given up. */
    function leave(code: number, reason: string): void {
      if (connection !== made) return;
      clearInterval(watch);
      connection = null;
      socket.close(NORMAL);
      closed(made, code, reason);
    }
    socket.addEventListener("open", () => {
      if (connection === made) made.send({ type: "connection_init", payload: { authorization: `Bearer ${token}` } });
    });
    socket.addEventListener("message", ({ data }) => {
      if (connection !== made) return;
      heard = true;
      const message = readMessage(data);
      if (message === null) return leave(4400, "what came is no message");
      hear(made, message);
    });
    socket.addEventListener("close", ({ code, reason }) => leave(code ?? 1006, reason ?? ""));
    socket.addEventListener("error", () => undefined); // a close follows
    return made;
  }

  function closed(made: Connection, code: number, reason: string): void {
    if (followers.size === 0) return;
    if (HOPELESS.has(code)) return endAll({ kind: "PROTOCOL", status: code, reason });
    if (code === UNAUTHORIZED || code === FORBIDDEN) {
      renew = true;
      // A token that opened the socket ran out; one that did not, after another that did not, is not the token's age.
      if (!made.acknowledged && ++refused > 1) return endAll({ kind: "TOKEN", reason });
    }
    lost = made.acknowledged && Date.now() - made.since >= STEADY ? 1 : lost + 1;
    void open();
  }

  function hear(made: Connection, { type = "", id = "", payload }: Message): void {
    const follower = made.placed.get(id);
    switch (type) {
      case "connection_ack":
        made.acknowledged = true;
        renew = false;
        refused = 0;
        for (const waiting of followers) place(made, waiting);
        return;
      case "ping":
        return made.send({ type: "pong" });
      case "next": {
        lost = 0;
        if (!follower) return; // stopped while it was on its way
        const { data, errors = [] } = payload as { data?: unknown; errors?: readonly ErrorSeen[] };
        if (errors.length > 0 || data == null) return fail(made, id, follower, errors);
        follower.failures = 0;
        try {
          follower.take(data);
        } catch (error) {
          finish(made, id, follower, error);
        }
        return;
      }
      case "error":
        made.placed.delete(id);
        if (follower) fail(made, id, follower, payload as readonly ErrorSeen[]);
        return;
      case "complete":
        if (!follower) return;
        made.placed.delete(id);
        followers.delete(follower);
        follower.end();
        if (followers.size === 0) made.close();
        return;
      default: // a pong, or a word of a later version of the subprotocol
    }
  }

  function place(made: Connection, follower: Follower): void {
    const id = String(++operations);
    made.placed.set(id, follower);
    made.send({ type: "subscribe", id, payload: follower.payload() });
    const again = follower.placed;
    follower.placed = true;
    follower.onPlaced(again);
  }

  /** An event that could not be read is not passed over: the subscription is placed again, after the last that was seen. */
  function fail(made: Connection, id: string, follower: Follower, errors: readonly ErrorSeen[]): void {
    if (!mayPass(errors) || ++follower.failures >= patience.tries)
      return finish(made, id, follower, new ClientError({ kind: "REFUSED", errors }));
    if (made.placed.delete(id)) made.send({ type: "complete", id });
    void wait(waitBefore(patience, follower.failures, random())).then(() => {
      // Another socket has placed it already.
      if (connection === made && followers.has(follower)) place(made, follower);
    });
  }

  function finish(made: Connection, id: string, follower: Follower, error?: unknown): void {
    if (made.placed.delete(id) && made.acknowledged) made.send({ type: "complete", id });
    followers.delete(follower);
    follower.end(error);
    if (followers.size === 0) made.close();
  }

  return {
    follow(document, variables, { onEvent, onPlaced, cursorOf, withCursor, cursor: kept }) {
      type Event = Parameters<typeof onEvent>[0];
      let cursor = kept ?? null;
      const seen = new Set<string>(kept === undefined ? [] : [kept]);
      let end: Follower["end"] = () => undefined;
      const ended = new Promise<void>((resolve, reject) => {
        // eslint-disable-next-line @typescript-eslint/prefer-promise-reject-errors -- what onEvent threw is handed on as it is
        end = (error) => (error === undefined ? resolve() : reject(error));
      });
      ended.catch(() => undefined); // nobody has to wait for it
      const follower: Follower = {
        payload: () => ({
          ...options.payloadOf(document),
          operationName: document.name,
          variables: cursor !== null && withCursor ? withCursor(variables, cursor) : variables,
        }),
        take(data) {
          const event = data as Event;
          const at = cursorOf?.(event);
          if (at !== undefined && seen.has(at)) return;
          onEvent(event);
          if (at === undefined) return;
          cursor = at;
          seen.add(at);
          if (seen.size > REMEMBERED) for (const oldest of seen) if (seen.delete(oldest)) break;
        },
        onPlaced: (again) => onPlaced?.(again),
        end: (error) => end(error),
        placed: false,
        failures: 0,
      };
      followers.add(follower);
      if (connection?.acknowledged) place(connection, follower);
      else void open();
      return {
        ended,
        cursor: () => cursor,
        stop() {
          const [id] = [...(connection?.placed ?? [])].find(([, other]) => other === follower) ?? [""];
          if (connection) finish(connection, id, follower);
          else if (followers.delete(follower)) follower.end();
        },
      };
    },
    close() {
      const all = [...followers];
      followers.clear();
      connection?.close();
      for (const follower of all) follower.end();
    },
  };
}

function readMessage(data: unknown): Message | null {
  try {
    const message: unknown = JSON.parse(String(data));
    return typeof message === "object" && message !== null ? message : null;
  } catch {
    return null;
  }
}
