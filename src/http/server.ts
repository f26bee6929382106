import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import type { BaseContext } from "@apollo/server";
import { NoSchemaIntrospectionCustomRule, type GraphQLSchema } from "graphql";
import type { Config } from "../config.js";
import type { RateLimits } from "../app/rate-limits.js";
import { requestLog, type Log } from "../log.js";
import { createAddressOf } from "./address.js";
import { answer, answerJson, requestIdOf } from "./answer.js";
import type { DevIssuer } from "./dev-issuer.js";
import { createExplorer } from "./explorer.js";
import { answerBroken, createGraphQLEndpoint, type OpenContext } from "./graphql-endpoint.js";
import { answerLive, answerReady, type Readiness } from "./health.js";
import { createCostLimit, limitRules } from "./limits.js";
import { createMask, type OperationRecord } from "./masking.js";
import { createPersistedDocuments, readPersistedDocuments } from "./persisted-documents.js";
import { answerRate } from "./rate-gate.js";
import { createSubscriptions } from "./subscriptions.js";
import { answerToken } from "./token-endpoint.js";
import type { Verify } from "./tokens.js";

export type HttpServerOptions<TContext extends BaseContext> = {
  readonly config: Config;
  readonly log: Log;
  readonly schema: GraphQLSchema;
  readonly openContext: OpenContext<TContext>;
  readonly rates: RateLimits;
  readonly verify: Verify;
  /** The development issuer; null when tokens come from outside. */
  readonly issuer: DevIssuer | null;
  readonly isReady: () => Promise<Readiness>;
  /** Documents on record, by the hex of their SHA-256; those of shared/ when absent. */
  readonly persisted?: ReadonlyMap<string, string>;
  /** The document the explorer shows first. */
  readonly explorerQuery: string;
  /** What is served below a path, such as feeds. */
  readonly below?: readonly PrefixRoute[];
};

/** Answers every path that begins so; the log names the beginning alone, for the rest may be a secret. */
export type PrefixRoute = {
  readonly prefix: `/${string}/`;
  answer(req: IncomingMessage, res: ServerResponse, rest: string, record: OperationRecord): Promise<void>;
};

export type HttpServer = {
  /** Listens, and says where. */
  start(): Promise<{ readonly url: string }>;
  /** Takes no more, finishes what is under way (at most 10 s), says goodbye to every socket. */
  stop(): Promise<void>;
};

/**
 * Milliseconds a sender may take for headers and for all of a request, and how often that is looked at: whoever sends a byte
 * now and then holds a connection, not the server. 256 KB in 15 s are 140 kbit/s.
 */
const TIMEOUTS = {
  headersTimeout: 8_000,
  requestTimeout: 15_000,
  connectionsCheckingInterval: 2_000,
  keepAliveTimeout: 65_000,
};

/** Milliseconds that requests under way get at shutdown. */
const FINISHING = 10_000;

type Answer = (req: IncomingMessage, res: ServerResponse, url: URL, record: OperationRecord) => void | Promise<void>;

/** The whole transport: GraphQL over HTTP and WebSocket, health, explorer, development sign-in. */
export function createHttpServer<TContext extends BaseContext>(options: HttpServerOptions<TContext>): HttpServer {
  const { config, log, issuer } = options;
  let stopping = false;
  const underWay = new Set<ServerResponse>();
  const gate = {
    ...options,
    documents: createPersistedDocuments(config.documents, options.persisted ?? readPersistedDocuments()),
    rules: [...limitRules(), ...(config.production ? [NoSchemaIntrospectionCustomRule] : [])],
    bound: createCostLimit(options.schema),
    addressOf: createAddressOf(config.trustedProxies),
    mask: createMask(log, config.production),
  };
  const graphql = createGraphQLEndpoint(gate);
  const subscriptions = createSubscriptions(gate);

  const routes = new Map<string, Answer>([
    ["/graphql", (req, res, url, record) => graphql.handle(req, res, url, record)],
    ["/health/live", reading((_req, res) => answerLive(res))],
    ["/health/ready", reading((_req, res) => answerReady(res, options.isReady, stopping, log))],
  ]);
  if (config.explorer) {
    routes.set(
      "/",
      reading((_req, res) => answer(res, 302, "", { location: "/explorer" })),
    );
    routes.set(
      "/explorer",
      reading(createExplorer({ defaultQuery: options.explorerQuery, people: issuer?.people ?? [] })),
    );
  }
  if (issuer !== null) {
    routes.set(
      "/.well-known/openid-configuration",
      reading((_req, res) => answerJson(res, 200, issuer.configuration)),
    );
    routes.set(
      "/dev/jwks.json",
      reading((_req, res) => answerJson(res, 200, issuer.jwks)),
    );
    routes.set("/dev/token", (req, res) => answerToken(req, res, issuer));
  }

  async function handle(req: IncomingMessage, res: ServerResponse): Promise<void> {
    const started = performance.now();
    const requestId = requestIdOf(req);
    const record: OperationRecord = { requestId, operationName: null, subject: null, unexpected: undefined };
    const path = (req.url ?? "/").split("?", 1)[0] ?? "/";
    const known = routes.get(path);
    const below = known ? undefined : options.below?.find(({ prefix }) => path.startsWith(prefix));
    res.setHeader("x-request-id", requestId);
    if (stopping) res.shouldKeepAlive = false;
    underWay.add(res);
    res.on("close", () => {
      underWay.delete(res);
      const ms = Math.round((performance.now() - started) * 10) / 10;
      const status = res.writableFinished ? res.statusCode : 499; // the caller left before the answer
      // An address we do not serve may hold anything, so it is not repeated.
      const line = {
        method: req.method,
        path: known ? path : (below?.prefix.slice(0, -1) ?? "unknown"),
        status,
        ms,
        operationName: record.operationName,
      };
      requestLog(log, requestId).info(line, "request");
    });
    try {
      if (known) await known(req, res, new URL(req.url ?? "/", "http://localhost"), record);
      else if (below) {
        // Calendar programs sign in as nobody, and those of many families may ask from one address.
        const may = await options.rates.take("stranger", gate.addressOf(req));
        if (may.ok) await below.answer(req, res, path.slice(below.prefix.length), record);
        else answerRate(res, may.error, {});
      } else answerJson(res, 404, { message: `Nothing is served here. Try ${[...routes.keys()].join(", ")}.` });
    } catch (error) {
      requestLog(log, requestId).error({ err: error }, "unexpected error");
      answerBroken(res, requestId);
    }
  }

  const server = createServer(TIMEOUTS, (req, res) => {
    void handle(req, res);
  });
  server.on("upgrade", (req, socket, head) => {
    if (!stopping && (req.url ?? "").split("?", 1)[0] === "/graphql") return subscriptions.upgrade(req, socket, head);
    socket.on("error", () => socket.destroy()); // Node takes its own listener away before this
    socket.end(`HTTP/1.1 ${stopping ? "503 Service Unavailable" : "404 Not Found"}\r\nConnection: close\r\n\r\n`);
  });

  async function finishAndClose(): Promise<void> {
    stopping = true;
    for (const res of underWay) res.shouldKeepAlive = false; // or their connections would linger after the answer
    const closed = new Promise<void>((resolve) => server.close(() => resolve()));
    const impatience = setTimeout(() => server.closeAllConnections(), FINISHING);
    await Promise.all([closed, subscriptions.dispose()]);
    clearTimeout(impatience);
    await graphql.stop();
    log.info("server stopped");
  }

  let stopped: Promise<void> | null = null;
  return {
    async start() {
      await graphql.start();
      const url = await listen(server, config);
      log.info({ url }, "server started");
      return { url };
    },
    stop: () => (stopped ??= finishAndClose()),
  };
}

/** Restricts a route to GET and HEAD. */
const reading =
  (next: (req: IncomingMessage, res: ServerResponse) => void | Promise<void>): Answer =>
  (req, res) =>
    req.method === "GET" || req.method === "HEAD"
      ? next(req, res)
      : answerJson(res, 405, { message: "Use GET." }, { allow: "GET, HEAD" });

function listen(server: ReturnType<typeof createServer>, { host, port }: Config): Promise<string> {
  return new Promise((resolve, reject) => {
    server.once("error", (error: NodeJS.ErrnoException) => {
      reject(
        error.code === "EADDRINUSE"
          ? new Error(`Port ${port} on ${host} is taken. Set PORT to a free one.`, { cause: error })
          : error,
      );
    });
    server.listen(port, host, () => {
      const shown = host === "0.0.0.0" ? "127.0.0.1" : host.includes(":") ? `[${host}]` : host;
      resolve(`http://${shown}:${(server.address() as AddressInfo).port}`);
    });
  });
}
