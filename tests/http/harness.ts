import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { makeExecutableSchema } from "@graphql-tools/schema";
import { GraphQLError } from "graphql";
import { readConfig, type Config } from "../../src/config.js";
import { createDevIssuer, type DevIssuer } from "../../src/http/dev-issuer.js";
import type { ContextArgs } from "../../src/http/graphql-endpoint.js";
import type { Readiness } from "../../src/http/health.js";
import { createHttpServer, type HttpServer, type PrefixRoute } from "../../src/http/server.js";
import { createVerifier, type Verify } from "../../src/http/tokens.js";
import { createLog } from "../../src/log.js";

/** A small schema of the transport's own, so that these tests say nothing about lunch. */
const typeDefs = /* GraphQL */ `
  type Query {
    greeting: String!
    me: String
    whoami: String!
    echo(text: String!): String!
    broken: String
    brokenForSure: String!
    nest: Nest!
    slow(ms: Int!): String!
  }
  type Nest {
    nest: Nest!
    leaf: Int!
  }
  type Mutation {
    count: Int!
  }
  type Subscription {
    ticks(from: Int): Int!
    brokenTicks: Int!
    closedDoor: Int!
  }
`;

type Context = { readonly subject: string | null; readonly kind: ContextArgs["kind"] };

/** A source that ends only when told, as one fed by notifications does. */
class Ticker implements AsyncIterableIterator<{ ticks?: number; brokenTicks?: number }> {
  private readonly waiting: ((step: IteratorResult<{ ticks: number }>) => void)[] = [];
  private readonly ready: number[] = [];
  ended = false;

  push(n: number): void {
    const next = this.waiting.shift();
    if (next) next({ value: { ticks: n }, done: false });
    else this.ready.push(n);
  }
  next(): Promise<IteratorResult<{ ticks: number }>> {
    const n = this.ready.shift();
    if (n !== undefined) return Promise.resolve({ value: { ticks: n }, done: false });
    return new Promise((resolve) => this.waiting.push(resolve));
  }
  return(): Promise<IteratorResult<{ ticks: number }>> {
    this.ended = true;
    for (const resolve of this.waiting) resolve({ value: undefined, done: true });
    return Promise.resolve({ value: undefined, done: true });
  }
  [Symbol.asyncIterator](): this {
    return this;
  }
}

export type Harness = {
  readonly url: string;
  readonly config: Config;
  readonly server: HttpServer;
  readonly issuer: DevIssuer;
  /** Every line the server logged, parsed. */
  readonly lines: Record<string, unknown>[];
  readonly tickers: Ticker[];
  /** Contexts opened and closed, with the error each was closed with. */
  readonly opened: ContextArgs[];
  readonly closed: unknown[];
  token(subject?: string): Promise<string>;
  stop(): Promise<void>;
};

export const ANN = "demo|ann";
export const SECRET = "Wren is allergic to sesame";
const running: Harness[] = [];

/** Starts a server of its own on a free port of 127.0.0.1. */
export async function startServer(
  given: {
    env?: NodeJS.ProcessEnv;
    persisted?: ReadonlyMap<string, string>;
    isReady?: () => Promise<Readiness>;
    verify?: (own: Verify) => Verify;
    open?: (args: ContextArgs) => Promise<void>;
    close?: (args: ContextArgs) => Promise<void>;
    below?: readonly PrefixRoute[];
  } = {},
): Promise<Harness> {
  const dataDir = await mkdtemp(join(tmpdir(), "noonpail-http-"));
  const development = readConfig({ DATA_DIR: dataDir, PORT: "0" });
  const issuer = await createDevIssuer(development, [{ subject: ANN, name: "Ann", about: "packs on school days" }]);
  const config = readConfig({ DATA_DIR: dataDir, PORT: "0", ...given.env });
  const lines: Record<string, unknown>[] = [];
  const log = createLog("info", {
    write: (line: string) => void lines.push(JSON.parse(line) as Record<string, unknown>),
  });
  const tickers: Ticker[] = [];
  const opened: ContextArgs[] = [];
  const closed: unknown[] = [];
  let counted = 0;
  const ticker = () => {
    const made = new Ticker();
    tickers.push(made);
    return made;
  };
  const nest = { leaf: 1, nest: () => nest };
  const schema = makeExecutableSchema<Context>({
    typeDefs,
    resolvers: {
      Query: {
        greeting: () => "good morning",
        me: (_: unknown, __: unknown, { subject }: Context) => subject,
        whoami(_: unknown, __: unknown, { subject }: Context) {
          if (subject === null) throw new GraphQLError("Sign in first.", { extensions: { code: "UNAUTHENTICATED" } });
          return subject;
        },
        echo: (_: unknown, { text }: { text: string }) => text,
        broken: () => {
          throw new Error(SECRET);
        },
        brokenForSure: () => null,
        nest: () => nest,
        slow: (_: unknown, { ms }: { ms: number }) => new Promise((resolve) => setTimeout(() => resolve("done"), ms)),
      },
      Mutation: { count: () => ++counted },
      Subscription: {
        ticks: {
          subscribe: ticker,
          resolve: (event: { ticks: number }, _: unknown, { kind }: Context) => (kind === "event" ? event.ticks : -1),
        },
        brokenTicks: {
          subscribe: ticker,
          resolve: () => {
            throw new Error(SECRET);
          },
        },
        closedDoor: {
          subscribe: () => {
            throw new Error(SECRET);
          },
        },
      },
    },
  });
  const own = createVerifier(development, issuer.keys);
  const server = createHttpServer<Context>({
    config,
    log,
    schema,
    verify: given.verify ? given.verify(own) : own,
    ...(given.persisted && { persisted: given.persisted }),
    issuer: config.production ? null : issuer,
    isReady: given.isReady ?? (() => Promise.resolve({ ready: true, checks: { database: { ok: true } } })),
    explorerQuery: "# Sign in above, then run this.\n{ greeting }",
    below: given.below ?? [],
    async openContext(args) {
      await given.open?.(args);
      opened.push(args);
      return {
        context: { subject: args.subject, kind: args.kind },
        async close(error) {
          await given.close?.(args);
          closed.push(error);
        },
      };
    },
  });
  const { url } = await server.start().catch(async (error: unknown) => {
    await rm(dataDir, { recursive: true, force: true });
    throw error;
  });
  const harness: Harness = {
    url,
    config,
    server,
    issuer,
    lines,
    tickers,
    opened,
    closed,
    async token(subject = ANN) {
      const token = await issuer.issueToken(subject);
      if (!token.ok) throw new Error(`nobody called ${subject}`);
      return `Bearer ${token.value.access_token}`;
    },
    async stop() {
      await server.stop();
      await rm(dataDir, { recursive: true, force: true });
    },
  };
  running.push(harness);
  return harness;
}

/** Stops every server this file started. */
export async function stopServers(): Promise<void> {
  await Promise.all(running.splice(0).map((harness) => harness.stop()));
}

export type Answered = {
  readonly status: number;
  readonly headers: Headers;
  readonly body: {
    data?: Record<string, unknown> | null;
    errors?: { message: string; path?: unknown; extensions: Record<string, unknown> }[];
  };
};

export async function post(
  { url }: Pick<Harness, "url">,
  body: unknown,
  headers: Record<string, string> = {},
): Promise<Answered> {
  const text = typeof body === "string" ? body : JSON.stringify(body);
  return read(
    await fetch(`${url}/graphql`, {
      method: "POST",
      headers: { "content-type": "application/json", accept: "application/graphql-response+json", ...headers },
      body: text,
    }),
  );
}

export async function get(
  { url }: Pick<Harness, "url">,
  parameters: Record<string, string>,
  headers: Record<string, string> = {},
): Promise<Answered> {
  return read(
    await fetch(`${url}/graphql?${new URLSearchParams(parameters)}`, {
      headers: { accept: "application/graphql-response+json", ...headers },
    }),
  );
}

async function read(answer: Response): Promise<Answered> {
  return { status: answer.status, headers: answer.headers, body: (await answer.json()) as Answered["body"] };
}
