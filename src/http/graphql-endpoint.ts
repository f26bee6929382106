import { AsyncLocalStorage } from "node:async_hooks";
import type { IncomingMessage, ServerResponse } from "node:http";
import { ApolloServer, type ApolloServerPlugin, type BaseContext, type HTTPGraphQLResponse } from "@apollo/server";
import {
  ApolloServerPluginCacheControlDisabled,
  ApolloServerPluginInlineTraceDisabled,
  ApolloServerPluginLandingPageDisabled,
  ApolloServerPluginSchemaReportingDisabled,
  ApolloServerPluginUsageReportingDisabled,
} from "@apollo/server/plugin/disabled";
import { GraphQLError, type GraphQLSchema, type ValidationRule } from "graphql";
import type { Config } from "../config.js";
import type { Log } from "../log.js";
import { answer, answerJson } from "./answer.js";
import type { ResponseType } from "./media-type.js";
import { readGraphQLRequest } from "./graphql-request.js";
import { DOCUMENT_TOKENS } from "./limits.js";
import { internalError, type Mask, type OperationRecord } from "./masking.js";
import type { PersistedDocuments } from "./persisted-documents.js";
import { explainToken, type TokenFailure, type Verify } from "./tokens.js";

/** What an operation's context is opened for. */
export type ContextArgs = {
  /** The verified token's `sub`; null when no token was sent. */
  readonly subject: string | null;
  /** The verified token's `name`, for whoever is seen for the first time. */
  readonly name: string | null;
  readonly requestId: string;
  /**
   * `request`: one query or mutation. `subscription`: lives as long as the subscription, so it must hold no transaction.
   * `event`: one delivery of a subscription.
   */
  readonly kind: "request" | "subscription" | "event";
  /** Given when the asker hangs up before the answer. */
  readonly gone?: AbortSignal;
};

/**
 * Opens what one operation shares, such as its read transaction. Called before the document is parsed, so the costly part
 * is best begun at first use. `context` is copied field by field: plain values and functions, no getters, no classes.
 * `close` gets the first unforeseen error, if there was one.
 */
export type OpenContext<TContext extends BaseContext> = (
  args: ContextArgs,
) => Promise<{ readonly context: TContext; close(error?: unknown): Promise<void> }>;

type EndpointOptions<TContext extends BaseContext> = {
  readonly config: Config;
  readonly log: Log;
  readonly schema: GraphQLSchema;
  readonly rules: readonly ValidationRule[];
  readonly documents: PersistedDocuments;
  readonly mask: Mask;
  readonly verify: Verify;
  readonly openContext: OpenContext<TContext>;
};

export type GraphQLEndpoint = {
  start(): Promise<void>;
  /** Answers one request and leaves the operation's name in `record`. */
  handle(req: IncomingMessage, res: ServerResponse, url: URL, record: OperationRecord): Promise<void>;
  stop(): Promise<void>;
};

/** GraphQL over HTTP (Stage 2 draft) on Apollo Server, without a web framework between. */
export function createGraphQLEndpoint<TContext extends BaseContext>(
  options: EndpointOptions<TContext>,
): GraphQLEndpoint {
  const { config, log, verify, mask, openContext } = options;
  const records = new AsyncLocalStorage<OperationRecord>();
  const apollo = new ApolloServer<TContext>({
    schema: options.schema,
    logger: log,
    nodeEnv: config.nodeEnv,
    introspection: !config.production,
    parseOptions: { maxTokens: DOCUMENT_TOKENS },
    validationRules: [...options.rules],
    includeStacktraceInErrorResponses: false,
    persistedQueries: false,
    allowBatchedHttpRequests: false,
    stopOnTerminationSignals: false,
    // Forgery across sites rides on cookies. We have none: a page elsewhere cannot add the Authorization header, JSON
    // bodies make its browser ask first, GET runs no mutation. So GET stays as the specification has it.
    csrfPrevention: false,
    formatError: (formatted, error) => mask(formatted, error, records.getStore() ?? unknownRecord()),
    plugins: [
      operationWatch<TContext>(records),
      ApolloServerPluginCacheControlDisabled(),
      ApolloServerPluginLandingPageDisabled(),
      ApolloServerPluginInlineTraceDisabled(),
      ApolloServerPluginSchemaReportingDisabled(),
      ApolloServerPluginUsageReportingDisabled(),
    ],
  });

  async function handle(req: IncomingMessage, res: ServerResponse, url: URL, record: OperationRecord): Promise<void> {
    const read = await readGraphQLRequest(req, url, options.documents);
    if (!read.ok) {
      const { status, code, message, headers } = read.error;
      if (status === 413) res.shouldKeepAlive = false;
      return answerJson(res, status, { errors: [{ message, extensions: { code } }] }, headers);
    }
    const { request, responseType } = read.value;
    const contentType = { "content-type": `${responseType}; charset=utf-8` };

    const token = await verify(req.headers.authorization);
    if (!token.ok && token.error.kind !== "MissingToken") {
      return answerJson(res, 401, unauthenticated(token.error), { ...contentType, ...challenge(token.error) });
    }
    const { subject, name } = token.ok ? token.value : { subject: null, name: null };
    const hungUp = new AbortController();
    res.once("close", () => {
      if (!res.writableFinished) hungUp.abort(gone());
    });
    let close: ((error?: unknown) => Promise<void>) | null = null;
    const response = await records.run(record, () =>
      apollo.executeHTTPGraphQLRequest({
        httpGraphQLRequest: request,
        context: async () => {
          const opened = await openContext({
            subject,
            name,
            requestId: record.requestId,
            kind: "request",
            gone: hungUp.signal,
          });
          close = (error) => opened.close(error);
          return opened.context;
        },
      }),
    );
    // The answer waits for this: what it says was done must be kept before anybody reads it.
    await (close as ((error?: unknown) => Promise<void>) | null)?.(record.unexpected);
    const { "content-type": _ours, ...headers } = Object.fromEntries(response.headers);
    answer(res, statusOf(response, responseType), wholeBody(response), { ...headers, ...contentType });
  }

  return { start: () => apollo.start(), handle, stop: () => apollo.stop() };
}

/** Nobody reads it; it keeps a search that was given up from looking like a fault. */
const gone = () => new GraphQLError("The asker hung up.", { extensions: { code: "BAD_REQUEST" } });

/** Refuses subscriptions here and notes the operation's name. */
const operationWatch = <TContext extends BaseContext>(
  records: AsyncLocalStorage<OperationRecord>,
): ApolloServerPlugin<TContext> => ({
  async requestDidStart() {
    return {
      async didResolveOperation({ operation, operationName }) {
        const record = records.getStore();
        if (record) record.operationName = operationName?.slice(0, 64) ?? null;
        if (operation?.operation === "subscription")
          throw new GraphQLError(
            "Subscriptions are served over WebSocket at this address, subprotocol graphql-transport-ws.",
            {
              extensions: { code: "BAD_REQUEST", http: { status: 400 } },
            },
          );
      },
    };
  },
});

/**
 * "Status Codes": with `application/json` a well-formed request is answered 200 whatever became of it, because a client
 * cannot tell our 4xx from a proxy's; with `application/graphql-response+json` the status speaks.
 */
const statusOf = (response: HTTPGraphQLResponse, type: ResponseType): number =>
  response.status === 400 && type === "application/json" ? 200 : (response.status ?? 200);

function wholeBody({ body }: HTTPGraphQLResponse): string {
  if (body.kind === "complete") return body.string;
  throw new Error("An answer in parts was not asked for.");
}

const unauthenticated = (failure: TokenFailure) => ({
  errors: [{ message: explainToken(failure), extensions: { code: "UNAUTHENTICATED", reason: failure.kind } }],
});

/** RFC 6750, section 3. */
const challenge = (failure: TokenFailure) => ({
  "www-authenticate": `Bearer realm="noonpail", error="invalid_token", error_description="${explainToken(failure)}"`,
});

/** For an error outside any request; Apollo itself raises none, but its types allow it. */
const unknownRecord = (): OperationRecord => ({ requestId: "unknown", operationName: null, unexpected: undefined });

/** The answer when something broke outside GraphQL: verifying, opening or closing. */
export function answerBroken(res: ServerResponse, requestId: string): void {
  if (res.headersSent) res.destroy();
  else answerJson(res, 500, { errors: [internalError(requestId)] });
}
