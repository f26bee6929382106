import type { IncomingMessage } from "node:http";
import { HeaderMap, type HTTPGraphQLRequest } from "@apollo/server";
import { fail, ok, type Result } from "../domain/result.js";
import { readJsonBody } from "./body.js";
import { chooseResponseType, type ResponseType } from "./media-type.js";
import type { DocumentRefusal, PersistedDocuments } from "./persisted-documents.js";

/** A request that cannot be a GraphQL request at all, or whose document is not to be had. */
export type RequestRefusal = {
  readonly status: number;
  readonly code: DocumentRefusal["code"];
  readonly message: string;
  readonly headers?: Readonly<Record<string, string>>;
};

export type ReadRequest = { readonly request: HTTPGraphQLRequest; readonly responseType: ResponseType };

/**
 * Reads a GraphQL-over-HTTP request (Stage 2 draft, "Request") from POST or GET. What passes is well-formed in the
 * draft's sense; the document in it may still be nonsense.
 */
export async function readGraphQLRequest(
  req: IncomingMessage,
  url: URL,
  documents: PersistedDocuments,
): Promise<Result<ReadRequest, RequestRefusal>> {
  if (req.method !== "GET" && req.method !== "POST")
    return refuse(405, "GraphQL is served over POST, and GET for queries.", { allow: "GET, POST" });
  const responseType = chooseResponseType(req.headers.accept);
  if (responseType === null)
    return refuse(406, "Accept application/graphql-response+json or application/json; nothing else is served here.");
  const parameters = req.method === "GET" ? readSearch(url) : await readPost(req);
  if (!parameters.ok) return parameters;
  const misfit = misfitIn(parameters.value);
  if (misfit !== null) return refuse(400, misfit);
  const { documentId, ...value } = parameters.value;
  const text = documents.textOf({ query: value["query"], documentId });
  if (!text.ok) {
    const { code, message } = text.error;
    if (code === "BAD_REQUEST") return refuse(400, message);
    // Well-formed, so the media type decides whether the status may say it.
    const status = responseType === "application/json" ? 200 : 400;
    return fail({ status, code, message, headers: { "content-type": `${responseType}; charset=utf-8` } });
  }
  // The server under us chooses a media type too: it is offered only ours.
  const headers = new HeaderMap([["accept", responseType]]);
  if (req.method === "POST")
    return ok({
      responseType,
      request: { method: "POST", headers, search: "", body: { ...value, query: text.value } },
    });
  if (documentId !== undefined) url.searchParams.set("query", text.value);
  return ok({ responseType, request: { method: "GET", headers, search: url.search, body: undefined } });
}

function readSearch(url: URL): Result<Record<string, unknown>, RequestRefusal> {
  const parameters: Record<string, unknown> = {};
  // "GET": an empty operationName is the same as none.
  if (url.searchParams.get("operationName") === "") url.searchParams.delete("operationName");
  for (const name of ["query", "documentId", "operationName", "variables", "extensions"]) {
    const [text, ...more] = url.searchParams.getAll(name);
    if (more.length > 0) return refuse(400, `Give ${name} once in the address.`);
    if (text === undefined) continue;
    try {
      parameters[name] = name === "variables" || name === "extensions" ? (JSON.parse(text) as unknown) : text;
    } catch {
      return refuse(400, `${name} in the address must be a JSON object.`);
    }
  }
  return ok(parameters);
}

async function readPost(req: IncomingMessage): Promise<Result<Record<string, unknown>, RequestRefusal>> {
  const body = await readJsonBody(req);
  if (body.ok)
    return isMap(body.value)
      ? ok(body.value)
      : refuse(400, 'The body must be one JSON object such as {"query": "{ __typename }"}.');
  switch (body.error.kind) {
    case "NotJson":
      return refuse(415, "Send the header Content-Type: application/json, and the body as JSON in UTF-8.");
    case "Compressed":
      return refuse(415, "Send the body without Content-Encoding.", { "accept-encoding": "identity" });
    case "TooLarge":
      return refuse(413, `The body is larger than ${body.error.limitBytes / 1024} KB. Send less at a time.`);
    case "BadJson":
      return refuse(400, "The body is not valid JSON in UTF-8.");
    case "CutOff":
      return refuse(400, "The body ended early.");
  }
}

function misfitIn({ operationName, variables, extensions }: Record<string, unknown>): string | null {
  if (operationName != null && typeof operationName !== "string") return "operationName must be text.";
  if (variables != null && !isMap(variables)) return "variables must be a JSON object.";
  if (extensions != null && !isMap(extensions)) return "extensions must be a JSON object.";
  return null;
}

const isMap = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const refuse = (status: number, message: string, headers: Record<string, string> = {}): Result<never, RequestRefusal> =>
  fail({ status, code: "BAD_REQUEST", message, headers });
