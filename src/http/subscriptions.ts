import { randomUUID } from "node:crypto";
import type { IncomingMessage } from "node:http";
import type { Duplex } from "node:stream";
import type { BaseContext } from "@apollo/server";
import {
  createSourceEventStream,
  execute,
  getOperationAST,
  GraphQLError,
  parse,
  specifiedRules,
  validate,
  type DocumentNode,
  type ExecutionArgs,
  type ExecutionResult,
  type GraphQLSchema,
  type ValidationRule,
} from "graphql";
import type { SubscribePayload } from "graphql-ws";
import { useServer } from "graphql-ws/use/ws";
import { WebSocketServer, type WebSocket } from "ws";
import type { Log } from "../log.js";
import { noticeOf, type RateLimits } from "../app/rate-limits.js";
import type { AddressOf } from "./address.js";
import { mapEvents } from "./event-stream.js";
import type { OpenContext } from "./graphql-endpoint.js";
import { BODY_BYTES, DOCUMENT_TOKENS, SUBSCRIPTIONS_PER_SOCKET, type CostLimit } from "./limits.js";
import type { Mask, OperationRecord } from "./masking.js";
import type { PersistedDocuments } from "./persisted-documents.js";
import { rateError, refusedUpgrade } from "./rate-gate.js";
import { explainToken, type Verify } from "./tokens.js";

type SubscriptionOptions<TContext extends BaseContext> = {
  readonly log: Log;
  readonly schema: GraphQLSchema;
  readonly rules: readonly ValidationRule[];
  readonly documents: PersistedDocuments;
  readonly bound: CostLimit;
  readonly rates: RateLimits;
  readonly addressOf: AddressOf;
  readonly mask: Mask;
  readonly verify: Verify;
  readonly openContext: OpenContext<TContext>;
};

export type Subscriptions = {
  /** Takes over a connection that asked to become a WebSocket. */
  upgrade(req: IncomingMessage, socket: Duplex, head: Buffer): void;
  /** Ends every subscription and closes every socket with 1001. */
  dispose(): Promise<void>;
};

/** One signed-in socket. */
type Connection = Signed & { readonly id: string; readonly timer: NodeJS.Timeout };
type Signed = { readonly subject: string; readonly name: string | null; readonly address: string };

/** One running subscription: its record, and what to do when it ends. */
type Running = { readonly record: OperationRecord; close(error?: unknown): Promise<void> };

const HEARTBEAT = 12_000; // milliseconds between pings; a socket that misses one answer is cut
const PARTING = 2_000; // milliseconds a client gets to answer a close at shutdown
const LONGEST_TIMER = 2 ** 31 - 1; // setTimeout fires at once beyond this; 24 days, when the client may come again

/**
 * Subscriptions by the graphql-transport-ws subprotocol. `connectionParams.authorization` carries `Bearer <token>`.
 * Closed with 4401 without a token, 4403 with a refused one, 4403 "Token expired" when its time is up.
 */
export function createSubscriptions<TContext extends BaseContext>(
  options: SubscriptionOptions<TContext>,
): Subscriptions {
  const { log, schema, bound, rates, addressOf, mask, verify, openContext } = options;
  const rules = [...specifiedRules, ...options.rules];
  const connections = new WeakMap<WebSocket, Connection>();
  const running = new WeakMap<WebSocket, Map<string, Running>>();
  const sockets = new WebSocketServer({ noServer: true, maxPayload: BODY_BYTES, clientTracking: true });

  async function admit(socket: WebSocket, address: string, authorization: unknown): Promise<boolean> {
    const token = await verify(typeof authorization === "string" ? authorization : undefined);
    if (!token.ok) {
      const missing = token.error.kind === "MissingToken";
      const may = missing ? { ok: true as const } : await rates.take("guess", address);
      const reason = !may.ok
        ? noticeOf(may.error).message
        : missing
          ? 'Send connectionParams {authorization: "Bearer <token>"}'
          : explainToken(token.error);
      socket.close(missing ? 4401 : 4403, reason.slice(0, 120)); // RFC 6455, 5.5: a reason holds 123 bytes
      return false;
    }
    if (socket.readyState !== socket.OPEN) return false; // gone meanwhile: nobody would clear its timer
    const { subject, name, expiresAt } = token.value;
    const left = Math.min(Math.max(expiresAt.getTime() - Date.now(), 0), LONGEST_TIMER);
    const timer = setTimeout(() => socket.close(4403, "Token expired"), left).unref();
    connections.set(socket, { id: randomUUID(), subject, name, address, timer });
    running.set(socket, new Map());
    return true;
  }

  /** The subscription's document, or what is wrong with it. */
  function read(payload: SubscribePayload): DocumentNode | readonly GraphQLError[] {
    // The subprotocol has no documentId and demands query: it is sent empty, the id among the extensions.
    const text = options.documents.textOf({ query: payload.query, documentId: payload.extensions?.["documentId"] });
    if (!text.ok) return [refusal(text.error.message, text.error.code)];
    let document: DocumentNode;
    try {
      document = parse(text.value, { maxTokens: DOCUMENT_TOKENS });
    } catch (error) {
      return [coded(error, "GRAPHQL_PARSE_FAILED")];
    }
    const errors = validate(schema, document, rules);
    if (errors.length > 0) return errors.map((error) => coded(error, "GRAPHQL_VALIDATION_FAILED"));
    const operation = getOperationAST(document, payload.operationName);
    if (!operation) return [refusal("Name the operation to run in operationName.")];
    if (operation.operation !== "subscription")
      return [refusal("Only subscriptions are served over WebSocket. Send queries and mutations over HTTP POST.")];
    try {
      bound({ document, operation, variables: payload.variables ?? {} });
    } catch (error) {
      return [coded(error, "GRAPHQL_VALIDATION_FAILED")];
    }
    return document;
  }

  async function begin(socket: WebSocket, id: string, payload: SubscribePayload) {
    const connection = connections.get(socket);
    const subscriptions = running.get(socket);
    if (!connection || !subscriptions) return [refusal("Send connection_init first.")];
    const may = await rates.take("request", connection.subject);
    if (!may.ok) return [rateError(may.error)];
    if (subscriptions.size >= SUBSCRIPTIONS_PER_SOCKET)
      return [refusal(`One connection holds at most ${SUBSCRIPTIONS_PER_SOCKET} subscriptions. Complete one first.`)];
    const document = read(payload);
    if (!("kind" in document)) return document;
    const operationName = getOperationAST(document, payload.operationName)?.name?.value.slice(0, 64) ?? null;
    const record: OperationRecord = {
      requestId: randomUUID(),
      operationName,
      subject: connection.subject,
      unexpected: undefined,
    };
    // Nothing is awaited between the look and taking the place, or many requests at once would all find room.
    subscriptions.set(id, { record, close: () => Promise.resolve() });
    const { subject, name, address } = connection;
    const opened = await openContext({ subject, name, requestId: record.requestId, address, kind: "subscription" });
    subscriptions.set(id, { record, close: (error) => opened.close(error) });
    log.info({ requestId: record.requestId, connection: connection.id, operationName }, "subscription started");
    return {
      schema,
      document,
      operationName: payload.operationName ?? null,
      variableValues: payload.variables ?? null,
      contextValue: { subject, name, address, record, context: opened.context } satisfies Begun<TContext>,
    };
  }

  /** The source resolver runs in the subscription's own context; every event is resolved in a fresh one. */
  async function follow(args: ExecutionArgs) {
    const { subject, name, address, record, context } = args.contextValue as Begun<TContext>;
    const source = await createSourceEventStream({ ...args, contextValue: context });
    if (!(Symbol.asyncIterator in source)) {
      // An error without a path came before any resolver: the variables do not fit.
      const errors = source.errors?.map((error) => (error.path ? error : coded(error, "BAD_USER_INPUT")));
      return errors ? { ...source, errors } : source;
    }
    return mapEvents(source, async (event): Promise<ExecutionResult> => {
      const opened = await openContext({ subject, name, requestId: record.requestId, address, kind: "event" });
      const once: OperationRecord = { ...record, unexpected: undefined };
      try {
        const result = await execute({ ...args, rootValue: event, contextValue: opened.context });
        const errors = result.errors?.map((error) => written(error, once));
        return errors ? { ...result, errors } : result;
      } finally {
        await opened.close(once.unexpected);
      }
    });
  }

  /** Passes an error through the gate, once. */
  function written(error: GraphQLError, record: OperationRecord): GraphQLError {
    if (error.extensions["code"] === "INTERNAL") return error;
    const { message, extensions } = mask(error.toJSON(), error, record);
    return reworded(error, message, extensions ?? {});
  }

  async function finish(socket: WebSocket, id: string): Promise<void> {
    const ended = running.get(socket)?.get(id);
    if (!ended) return;
    running.get(socket)?.delete(id);
    await ended.close(ended.record.unexpected).catch((error: unknown) => {
      log.error({ err: error, requestId: ended.record.requestId }, "closing a subscription failed");
    });
  }

  const recordOf = (socket: WebSocket, id: string): OperationRecord =>
    running.get(socket)?.get(id)?.record ?? {
      requestId: randomUUID(),
      operationName: null,
      subject: null,
      unexpected: undefined,
    };

  const server = useServer(
    {
      onConnect: ({ extra, connectionParams }) =>
        admitOrClose(extra.socket, addressOf(extra.request), connectionParams?.["authorization"]),
      onSubscribe: ({ extra }, id, payload) => beginOrRefuse(extra.socket, id, payload),
      subscribe: follow,
      onNext({ extra }, id, _payload, _args, { data, errors }) {
        const record = recordOf(extra.socket, id);
        return {
          ...(data !== undefined && { data }),
          ...(errors && { errors: errors.map((error) => written(error, record).toJSON()) }),
        };
      },
      onError: ({ extra }, id, _payload, errors) => {
        const record = recordOf(extra.socket, id);
        return errors.map((error) => written(error, record).toJSON());
      },
      onComplete: ({ extra }, id) => finish(extra.socket, id),
      async onClose({ extra: { socket } }, code) {
        const connection = connections.get(socket);
        if (!connection) return;
        clearTimeout(connection.timer);
        await Promise.all([...(running.get(socket)?.keys() ?? [])].map((id) => finish(socket, id)));
        log.info({ connection: connection.id, code }, "socket closed");
      },
      isProd: true, // the library's own words about an error go nowhere
    },
    sockets,
    HEARTBEAT,
  );

  async function admitOrClose(socket: WebSocket, address: string, authorization: unknown): Promise<boolean> {
    try {
      return await admit(socket, address, authorization);
    } catch (error) {
      log.error({ err: error }, "sign-in over WebSocket failed");
      socket.close(4500, "Something went wrong on our side");
      return false;
    }
  }

  async function beginOrRefuse(socket: WebSocket, id: string, payload: SubscribePayload) {
    try {
      return await begin(socket, id, payload);
    } catch (error) {
      const record = recordOf(socket, id);
      running.get(socket)?.delete(id);
      return [written(new GraphQLError("", { originalError: asError(error) }), record)];
    }
  }

  async function upgrade(req: IncomingMessage, socket: Duplex, head: Buffer): Promise<void> {
    // Whoever leaves while the limit is asked for, or resets a refused connection, is no fault of anybody's.
    const left = () => socket.destroy();
    socket.on("error", left);
    const may = await rates.take("socket", addressOf(req));
    if (socket.destroyed) return;
    if (!may.ok) return void socket.end(refusedUpgrade(may.error));
    socket.off("error", left); // from here on the library listens
    sockets.handleUpgrade(req, socket, head, (opened) => sockets.emit("connection", opened, req));
  }

  return {
    upgrade: (req, socket, head) => void upgrade(req, socket, head),
    async dispose() {
      const impatience = setTimeout(() => sockets.clients.forEach((client) => client.terminate()), PARTING);
      await server.dispose();
      clearTimeout(impatience);
    },
  };
}

type Begun<TContext> = Signed & { readonly record: OperationRecord; readonly context: TContext };

function coded(error: unknown, code: string): GraphQLError {
  if (!(error instanceof GraphQLError)) throw error;
  return reworded(error, error.message, { code, ...error.extensions });
}

/** The same error at the same place, in other words. */
const reworded = (error: GraphQLError, message: string, extensions: Record<string, unknown>): GraphQLError =>
  new GraphQLError(message, {
    nodes: error.nodes ?? null,
    source: error.source,
    positions: error.positions,
    path: error.path,
    extensions,
  });

const asError = (thrown: unknown): Error => (thrown instanceof Error ? thrown : new Error(String(thrown)));

const refusal = (message: string, code = "BAD_REQUEST"): GraphQLError =>
  new GraphQLError(message, { extensions: { code } });
