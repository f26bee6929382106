import { request } from "node:http";
import { afterAll, beforeAll, describe, expect, it } from "@jest/globals";
import { get, post, startServer, stopServers, type Harness } from "./harness.js";

// Every expectation here is a sentence of "GraphQL over HTTP" (https://graphql.github.io/graphql-over-http/draft/,
// Stage 2 draft); the describe blocks carry the titles of its sections.
const RESPONSE_JSON = "application/graphql-response+json";
const PLAIN_JSON = "application/json";
let server: Harness;
beforeAll(async () => void (server = await startServer()));
afterAll(stopServers);

/** A POST with exactly these headers, and no others that a client library would add. */
const bare = (headers: Record<string, string>, body: string) =>
  new Promise<{ status: number; type: string }>((resolve, reject) => {
    const sent = request(`${server.url}/graphql`, { method: "POST", headers }, (answer) => {
      answer.resume();
      answer.on("end", () => resolve({ status: answer.statusCode ?? 0, type: answer.headers["content-type"] ?? "" }));
    });
    sent.on("error", reject);
    sent.end(body);
  });

describe("Media Types and Accept", () => {
  it.each([
    ["application/graphql-response+json", RESPONSE_JSON],
    ["application/json", PLAIN_JSON],
    ["application/graphql-response+json; charset=utf-8, application/json; charset=utf-8", RESPONSE_JSON],
    ["application/json, application/graphql-response+json", PLAIN_JSON],
    ["application/json;q=0.5, application/graphql-response+json;q=0.9", RESPONSE_JSON],
    ["application/json;q=0.9, application/graphql-response+json;q=0.5", PLAIN_JSON],
    ["application/*;q=0.5, application/json;q=0", RESPONSE_JSON],
    ["text/html, */*;q=0.1", RESPONSE_JSON],
  ])("answers Accept %s with %s", async (accept, type) => {
    const { status, headers, body } = await post(server, { query: "{ greeting }" }, { accept });
    expect([status, headers.get("content-type"), body]).toEqual([
      200,
      `${type}; charset=utf-8`,
      { data: { greeting: "good morning" } },
    ]);
  });

  it("treats a request without Accept as one for application/graphql-response+json", async () => {
    const answer = await bare({ "content-type": PLAIN_JSON }, '{"query":"{ greeting }"}');
    expect(answer).toEqual({ status: 200, type: `${RESPONSE_JSON}; charset=utf-8` });
  });

  it.each(["text/html", "multipart/mixed", "application/json;q=0", "application/json;charset=utf-16"])(
    "answers 406 to Accept %s and does not run the operation",
    async (accept) => {
      const before = server.opened.length;
      expect((await post(server, { query: "mutation { count }" }, { accept })).status).toBe(406);
      expect(server.opened).toHaveLength(before);
    },
  );
});

describe("POST", () => {
  it("runs a query with variables, operation name and empty options", async () => {
    const query = "query A($t: String!) { echo(text: $t) } query B { greeting }";
    const a = await post(server, { query, operationName: "A", variables: { t: "Äpfel 🍏" }, extensions: null });
    expect(a.body).toEqual({ data: { echo: "Äpfel 🍏" } });
    const b = await post(server, { query, operationName: "B", variables: null, extensions: {} });
    expect(b.body).toEqual({ data: { greeting: "good morning" } });
  });

  it("assumes UTF-8 when Content-Type names no encoding, and accepts it named", async () => {
    expect(
      (await post(server, { query: "{ greeting }" }, { "content-type": "application/json; charset=UTF-8" })).status,
    ).toBe(200);
  });

  it.each(["text/plain", "application/x-www-form-urlencoded", "application/json; charset=latin1", "application/jsonx"])(
    "answers 415 to Content-Type %s",
    async (type) => expect((await post(server, { query: "{ greeting }" }, { "content-type": type })).status).toBe(415),
  );

  it("refuses a body without Content-Type with a 4xx status", async () => {
    expect((await bare({}, '{"query":"{ greeting }"}')).status).toBe(415);
  });

  it.each([
    ["NONSENSE", "JSON parsing failure"],
    ['{"query":', "JSON parsing failure"],
    ['{"qeury": "{__typename}"}', "Invalid parameters"],
    ['{"query": "query Q ($i:Int!) { q(i: $i) }", "variables": [7]}', "Invalid parameters"],
    ['{"query": 7}', "Invalid parameters"],
    ['{"query": "{ greeting }", "operationName": 7}', "Invalid parameters"],
    ['{"query": "{ greeting }", "extensions": "x"}', "Invalid parameters"],
    ["[]", "Invalid parameters"],
    ['[{"query": "{ greeting }"}]', "Invalid parameters"],
    ["null", "Invalid parameters"],
  ])("answers 400 to the body %s in both media types (%s)", async (body) => {
    for (const accept of [RESPONSE_JSON, PLAIN_JSON]) {
      const answer = await post(server, body, { accept });
      expect(answer.status).toBe(400);
      expect(answer.body.errors?.[0]?.extensions).toEqual({ code: "BAD_REQUEST" });
    }
  });
});

describe("GET", () => {
  it("runs a query with JSON variables from the address", async () => {
    const query = "query A($t: String!) { echo(text: $t) }";
    expect((await get(server, { query, variables: '{"t":"a&b"}', operationName: "A" })).body).toEqual({
      data: { echo: "a&b" },
    });
    expect((await get(server, { query, variables: '{"t":"a"}', operationName: "" })).status).toBe(200);
  });

  it("answers 405 to a mutation, says POST, and does not run it", async () => {
    const first = Number((await post(server, { query: "mutation { count }" })).body.data?.["count"]);
    for (const accept of [RESPONSE_JSON, PLAIN_JSON]) {
      const answer = await get(server, { query: "mutation { count }" }, { accept });
      expect([answer.status, answer.headers.get("allow")]).toEqual([405, "POST"]);
    }
    const second = await post(server, { query: "mutation { count }" });
    expect(second.body.data?.["count"]).toBe(first + 1);
  });

  it("answers 400 without a query and with variables that are not JSON", async () => {
    expect((await get(server, {})).status).toBe(400);
    expect((await get(server, { query: "{ greeting }", variables: "{" })).status).toBe(400);
    expect((await get(server, { query: "{ greeting }", variables: "[1]" })).status).toBe(400);
  });

  it.each(["PUT", "DELETE", "PATCH", "OPTIONS"])("answers 405 to %s and names what is allowed", async (method) => {
    const answer = await fetch(`${server.url}/graphql`, { method });
    expect([answer.status, answer.headers.get("allow")]).toEqual([405, "GET, POST"]);
  });
});

describe("Status Codes", () => {
  it.each([
    ["Document parsing failure", { query: "{" }],
    ["Document validation failure", { query: "{ nothingSuch }" }],
    ["Operation cannot be determined", { query: "query A { greeting } query B { greeting }" }],
    ["Operation cannot be determined", { query: "query A { greeting }", operationName: "Z" }],
    ["Variable coercion failure", { query: "query ($t: String!) { echo(text: $t) }", variables: { t: 7 } }],
  ])("%s: 400 in application/graphql-response+json, 200 in application/json, never data", async (_section, body) => {
    const spoken = await post(server, body, { accept: RESPONSE_JSON });
    expect(spoken.status).toBe(400);
    const silent = await post(server, body, { accept: PLAIN_JSON });
    expect(silent.status).toBe(200);
    for (const answer of [spoken, silent]) {
      expect(answer.body).not.toHaveProperty("data");
      expect(answer.body.errors?.[0]?.message).toBeTruthy();
    }
  });

  it.each([RESPONSE_JSON, PLAIN_JSON])("Field errors encountered during execution: 200 in %s", async (accept) => {
    const partial = await post(server, { query: "{ greeting broken }" }, { accept });
    expect([partial.status, partial.body.data]).toEqual([200, { greeting: "good morning", broken: null }]);
    const nothing = await post(server, { query: "{ brokenForSure }" }, { accept });
    expect([nothing.status, nothing.body.data]).toEqual([200, null]);
  });
});

it("sends subscriptions to WebSocket instead of running them", async () => {
  const answer = await post(server, { query: "subscription { ticks }" });
  expect(answer.status).toBe(400);
  expect(answer.body.errors?.[0]?.message).toContain("graphql-transport-ws");
});
