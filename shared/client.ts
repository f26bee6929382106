/**
 * A typed client of a few lines for browsers and Node: it checks variables before it sends them, repeats what was lost with the
 * same idempotency key, so that nothing is done twice, and follows subscriptions across lost connections.
 */
import { ClientError, mayPass, type ErrorSeen, type Trouble } from "./client-error.js";
import type { Document, SomeDocument } from "./document.js";
import { createLive, type Follow, type Following, type Live, type SocketClass } from "./live.js";
import { retryAfter, usualPatience, waitBefore, type Patience } from "./patience.js";

export interface ClientOptions {
  /** Of the endpoint: http://127.0.0.1:4000/graphql. Sockets open at the same address. */
  readonly url: string;
  /** A bearer token without the word Bearer; asked for each time. `renew`: the last one was refused or ran out. */
  readonly token: (renew: boolean) => Promise<string> | string;
  /** `hash` sends the name of a document the server has on record, `text` the document itself, as any server takes it. */
  readonly documents: "text" | "hash";
  readonly fetch?: typeof fetch;
  /** Node has one of its own from 22 on; before, that of the package ws does. */
  readonly WebSocket?: SocketClass;
  readonly patience?: Patience;
  /** Milliseconds one try may take. */
  readonly timeout?: number;
  /** Milliseconds of silence after which a socket is pinged, and given up when that changes nothing. */
  readonly silence?: number;
  /** From 0 to 1. */
  readonly random?: () => number;
  readonly wait?: (milliseconds: number) => Promise<void>;
}

/** What the one field of a mutation answers. */
type Answer<Result> = Result[keyof Result];

export interface Client {
  /** @throws ClientError */
  ask<Result, Variables>(document: Document<Result, Variables>, variables: Variables): Promise<Result>;
  /**
   * One mutation. The key is made here and stays the same however often it has to be sent; give one to go on with an attempt of
   * an earlier run.
   * @throws ClientError
   */
  send<Result extends object, Input extends { readonly idempotencyKey: string }>(
    document: Document<Result, { input: Input }>,
    input: Omit<Input, "idempotencyKey"> & { readonly idempotencyKey?: string },
  ): Promise<Answer<Result>>;
  /** @throws ClientError for variables; whatever comes later is told by `ended` */
  follow<Result, Variables>(
    document: Document<Result, Variables>,
    variables: Variables,
    options: Follow<Result, Variables>,
  ): Following;
  /** Stops every subscription. */
  close(): void;
}

const later = (milliseconds: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, milliseconds));
/** Nobody waits longer for one answer; a server that asks for more is told of at once. */
const LONGEST_WAIT = 60_000;

/** What became of one try. `passing`: another may do. */
type Tried =
  | { readonly data: unknown }
  | { readonly trouble: Trouble; readonly passing: boolean; readonly after?: number | null; readonly cause?: unknown };

export function createClient(options: ClientOptions): Client {
  const {
    documents,
    fetch: send = fetch,
    patience = usualPatience,
    timeout = 60_000,
    silence = 15_000,
    random = Math.random,
    wait = later,
  } = options;
  let live: Live | null = null;

  async function attempt(body: string, renew: boolean): Promise<Tried> {
    let response: Response;
    let text: string;
    try {
      const token = await options.token(renew);
      response = await send(options.url, {
        method: "POST",
        headers: {
          "content-type": "application/json",
          accept: "application/graphql-response+json",
          authorization: `Bearer ${token}`,
        },
        body,
        signal: AbortSignal.timeout(timeout),
      });
      text = await response.text();
    } catch (cause) {
      return { trouble: { kind: "UNREACHABLE" }, passing: true, cause };
    }
    const { status } = response;
    const { data, errors } = readAnswer(text);
    if (status === 401) return { trouble: { kind: "TOKEN", reason: errors?.[0]?.message ?? "" }, passing: !renew };
    const after = retryAfter(response.headers.get("retry-after"), Date.now());
    const soonEnough = (after ?? 0) <= LONGEST_WAIT;
    if (status === 429 || status >= 500) {
      const retryAfterSeconds = after === null ? null : Math.ceil(after / 1000);
      return { trouble: { kind: "BUSY", status, retryAfterSeconds }, passing: soonEnough, after };
    }
    if (errors?.length) return { trouble: { kind: "REFUSED", errors }, passing: mayPass(errors) && soonEnough, after };
    if (data == null) return { trouble: { kind: "PROTOCOL", status, reason: response.statusText }, passing: false };
    return { data };
  }

  async function ask<Result, Variables>(document: Document<Result, Variables>, variables: Variables): Promise<Result> {
    check(document, variables);
    const body = JSON.stringify({
      ...(documents === "hash" ? { documentId: document.id } : { query: document.text }),
      operationName: document.name,
      variables,
    });
    let renew = false;
    for (let tried = 1; ; tried++) {
      const outcome = await attempt(body, renew);
      if ("data" in outcome) return outcome.data as Result;
      const { trouble, passing, after, cause } = outcome;
      if (!passing || tried >= patience.tries) throw new ClientError(trouble, cause);
      renew = trouble.kind === "TOKEN";
      if (!renew) await wait(Math.max(after ?? 0, waitBefore(patience, tried, random())));
    }
  }

  return {
    ask,
    async send<Result extends object, Input>(
      document: Document<Result, { input: Input }>,
      input: Omit<Input, "idempotencyKey"> & { readonly idempotencyKey?: string },
    ) {
      const keyed = { ...input, idempotencyKey: input.idempotencyKey ?? newKey() } as Input;
      const data = await ask(document, { input: keyed });
      return Object.values(data)[0] as Answer<Result>;
    },
    follow(document, variables, follow) {
      check(document, variables);
      const Socket = options.WebSocket ?? (globalThis as { WebSocket?: SocketClass }).WebSocket;
      if (!Socket) throw new Error("There is no WebSocket here. Pass one, such as that of the package ws.");
      live ??= createLive({
        url: options.url.replace(/^http/, "ws"),
        token: options.token,
        // The subprotocol has a place for texts only; the server looks for the name among the extensions.
        payloadOf: ({ id, text }) =>
          documents === "hash" ? { query: "", extensions: { documentId: id } } : { query: text },
        Socket,
        random,
        wait,
        patience,
        silence,
      });
      return live.follow(document, variables, follow);
    },
    close: () => live?.close(),
  };
}

/** New for every attempt; the same when the same attempt is repeated. */
export const newKey = (): string => crypto.randomUUID();

function check(document: SomeDocument, variables: unknown): void {
  const found = document.variables().safeParse(variables);
  if (found.success) return;
  const issues = found.error.issues.map(({ path, message }) => ({ path: path.join("."), fix: message }));
  throw new ClientError({ kind: "VARIABLES", issues });
}

function readAnswer(text: string): { data?: unknown; errors?: readonly ErrorSeen[] } {
  try {
    return JSON.parse(text) as ReturnType<typeof readAnswer>;
  } catch {
    return {};
  }
}
