import { GraphQLError, type GraphQLFormattedError } from "graphql";
import type { Log } from "../log.js";
import { QUERY_LIMIT } from "./limits.js";

/** What one operation leaves behind for the log and for whoever closes its context. */
export type OperationRecord = {
  readonly requestId: string;
  operationName: string | null;
  /** The verified token's `sub`, once there is one. */
  subject: string | null;
  /** The first error nobody foresaw, if any. */
  unexpected: unknown;
};

/** Errors raised on purpose. Anything else is a bug or an outage, and its words stay in the log. */
const FORESEEN = new Set([
  "UNAUTHENTICATED",
  "GRAPHQL_PARSE_FAILED",
  "GRAPHQL_VALIDATION_FAILED",
  "OPERATION_RESOLUTION_FAILURE",
  "BAD_USER_INPUT",
  "BAD_REQUEST",
  "PERSISTED_QUERY_NOT_SUPPORTED",
  "PERSISTED_DOCUMENT_NOT_FOUND",
  "PERSISTED_DOCUMENTS_ONLY",
  "RATE_LIMITED",
  "UNAVAILABLE",
]);

/** What graphql-js adds as the fifty-first, without a code. */
const TOO_MANY = "Too many errors processing variables, error limit reached. Execution aborted.";

export type Mask = (formatted: GraphQLFormattedError, error: unknown, record: OperationRecord) => GraphQLFormattedError;

/** Makes the one gate through which every GraphQL error leaves, over HTTP and WebSocket. */
export function createMask(log: Log, production: boolean): Mask {
  return (given, error, record) => {
    const cause = rootOf(error);
    const formatted = withoutStatus(given);
    if (cause instanceof GraphQLError && cause.extensions["code"] === QUERY_LIMIT)
      return { ...formatted, extensions: { ...formatted.extensions, code: QUERY_LIMIT } }; // Apollo says just "invalid"
    if (cause instanceof GraphQLError && cause.message === TOO_MANY)
      return { ...formatted, extensions: { ...formatted.extensions, code: "BAD_USER_INPUT" } };
    if (FORESEEN.has(String(formatted.extensions?.["code"])))
      return production ? withoutSuggestions(formatted) : formatted;
    record.unexpected ??= cause;
    log.error(
      { requestId: record.requestId, operationName: record.operationName, path: formatted.path, err: cause },
      "unexpected error",
    );
    return { ...formatted, ...internalError(record.requestId) };
  };
}

/** What a stranger is told when something broke. */
export const internalError = (requestId: string): GraphQLFormattedError => ({
  message: `Something went wrong on our side. Quote request ${requestId}.`,
  extensions: { code: "INTERNAL", requestId },
});

/** The status is the transport's; what it was to be is nobody else's business. */
function withoutStatus(error: GraphQLFormattedError): GraphQLFormattedError {
  if (error.extensions?.["http"] === undefined) return error;
  const { http: _http, ...extensions } = error.extensions;
  return { ...error, extensions };
}

/** graphql-js offers names it knows ("Did you mean ..."), which would list a schema that introspection hides. */
const withoutSuggestions = (error: GraphQLFormattedError): GraphQLFormattedError => ({
  ...error,
  message: error.message.replace(/ ?Did you mean .+\?/g, ""),
});

function rootOf(error: unknown): unknown {
  return error instanceof GraphQLError && error.originalError !== undefined ? rootOf(error.originalError) : error;
}
