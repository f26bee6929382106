import { connect } from "node:net";
import { createClient } from "graphql-ws";
import { WebSocket } from "ws";
import { readConfig } from "../../src/config.js";
import { buildSchema } from "../../src/graphql/schema.js";
import { createHttpServer, type HttpServer } from "../../src/http/server.js";
import { createLog } from "../../src/log.js";
import { noRates } from "../support/no-rates.js";

// The whole schema as in production. GraphQL specification (October 2021), section 4 "Introspection"; OWASP GraphQL Cheat Sheet,
// "Introspection"; OWASP API Security Top 10 2023, API8 "Security Misconfiguration" and API4 "Unrestricted Resource Consumption".
let server: HttpServer;
let url: string;
let explorer: HttpServer;
let explorerUrl: string;
const lines: string[] = [];

const open = (env: NodeJS.ProcessEnv) =>
  createHttpServer({
    config: readConfig({
      NODE_ENV: "production",
      OIDC_ISSUER: "https://login.example.org",
      PORT: "0",
      DOCUMENTS: "any",
      ...env,
    }),
    log: createLog("info", { write: (line: string) => void lines.push(line) }),
    schema: buildSchema(),
    openContext: () => Promise.resolve({ context: {}, close: () => Promise.resolve() }),
    rates: noRates,
    verify: () =>
      Promise.resolve({
        ok: true,
        value: { subject: "somebody", name: null, expiresAt: new Date(Date.now() + 60_000) },
      }),
    issuer: null,
    isReady: () => Promise.resolve({ ready: true, checks: {} }),
    explorerQuery: "{ __typename }",
  });
beforeAll(async () => {
  server = open({});
  explorer = open({ EXPLORER: "on" });
  ({ url } = await server.start());
  ({ url: explorerUrl } = await explorer.start());
});
afterAll(async () => void (await Promise.all([server.stop(), explorer.stop()])));

const overHttp = async (query: string, variables: unknown = {}): Promise<string> => {
  const response = await fetch(`${url}/graphql`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ query, variables }),
  });
  return response.text();
};
const overSocket = async (query: string, variables: Record<string, unknown> = {}): Promise<string> => {
  const client = createClient({
    url: `${url.replace("http", "ws")}/graphql`,
    webSocketImpl: WebSocket,
    connectionParams: { authorization: "Bearer any" },
    retryAttempts: 0,
  });
  try {
    return await new Promise<string>((resolve) => {
      const tell = (answer: unknown) => resolve(JSON.stringify(answer));
      client.subscribe({ query, variables }, { next: tell, error: tell, complete: () => resolve("") });
    });
  } finally {
    await client.dispose();
  }
};

describe("the schema in production", () => {
  it.each([
    "{ __schema { types { name } } }",
    '{ __type(name: "Household") { fields { name } } }',
    "query Q { ...S } fragment S on Query { __schema { queryType { name } } }",
  ])("cannot be asked for: %s", async (query) => {
    for (const answer of [await overHttp(query), await overSocket(query)]) {
      expect(answer).toContain("introspection has been disabled");
      expect(answer).not.toContain("revision");
    }
  });

  it.each([
    // What is misspelt, and the name that must not come back.
    ["a field", "{ household(id: 1) { revison } }", "revision", {}],
    ["a field that lacks a selection", "{ household(id: 1) }", "household {", {}],
    ["an argument", "{ household(idd: 1) { revision } }", '"id"', {}],
    ["a type", "{ node(id: 1) { ... on Houshold { revision } } }", '"Household"', {}],
    ["a field of a member of a union or an interface", "{ node(id: 1) { revision } }", "inline fragment", {}],
    ["an enum value", "{ dishes(slot: MIAN) { nodes { name } } }", "MAIN", {}],
    ["an enum value in a variable", "query Q($s: Slot) { dishes(slot: $s) { nodes { name } } }", "MAIN", { s: "MIAN" }],
    [
      "an input's field in a variable",
      "mutation M($i: SetKeepsOutInput!) { setKeepsOut(input: $i) { __typename } }",
      '"allergens"',
      { i: { alergens: [] } },
    ],
    ["an input's field", "mutation { setKeepsOut(input: {alergens: []}) { __typename } }", '"allergens"', {}],
    ["a directive", "{ me @incluse(if: true) { person { id } } }", "include", {}],
  ] as const)("is not spelt out to who misspells %s", async (_, query, hidden, variables) => {
    for (const answer of [await overHttp(query, variables), await overSocket(query, variables)]) {
      expect(JSON.parse(answer)).toBeTruthy();
      expect(answer).not.toContain("Did you mean");
      // A field that must be there is named to who leaves it out; a suggestion begins behind the sentence.
      if (!/required type/.test(answer)) expect(answer).not.toContain(hidden);
    }
  });
});

describe("an answer", () => {
  it.each([
    ["/graphql?query=%7B__typename%7D", "no-store"],
    ["/graphql", "no-store"],
    ["/health/ready", "no-store"],
    ["/health/live", "no-store"],
    ["/nothing/here", "no-store"],
  ])("%s is not to be kept, sniffed, framed or told of elsewhere", async (path, cache) => {
    const { headers } = await fetch(`${url}${path}`);
    // RFC 9111, section 5.2.2.5; Fetch, "X-Content-Type-Options"; Referrer Policy, section 3.1.
    expect(headers.get("cache-control")).toBe(cache);
    expect(headers.get("x-content-type-options")).toBe("nosniff");
    expect(headers.get("referrer-policy")).toBe("no-referrer");
    expect(headers.get("cross-origin-resource-policy")).toBe("same-origin");
    expect(headers.get("x-frame-options")).toBe("DENY");
    expect(headers.get("content-security-policy")).toBe("default-src 'none'; frame-ancestors 'none'");
    expect(headers.get("access-control-allow-origin")).toBeNull();
    expect(headers.get("server")).toBeNull();
    expect(headers.get("x-powered-by")).toBeNull();
  });

  it("of the explorer has a policy that runs its own scripts and asks its own host", async () => {
    const { headers } = await fetch(`${explorerUrl}/explorer`);
    const policy = headers.get("content-security-policy") ?? "";
    expect(policy).toMatch(/^default-src 'none'; script-src 'sha256-/);
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).not.toMatch(/unsafe-eval|script-src[^;]*unsafe-inline|\*/);
    expect(headers.get("x-content-type-options")).toBe("nosniff");
  });
});

describe("a sender who takes their time", () => {
  /** What comes back on a plain connection, until the server closes it. */
  const slowly = (first: string, then = "") =>
    new Promise<{ answer: string; seconds: number }>((resolve) => {
      const began = performance.now();
      const socket = connect(Number(new URL(url).port), "127.0.0.1", () => socket.write(first));
      const dripping = setInterval(() => then !== "" && socket.writable && socket.write(then), 500);
      let answer = "";
      socket.on("data", (chunk) => (answer += chunk.toString()));
      socket.on("error", () => undefined);
      socket.on("close", () => {
        clearInterval(dripping);
        resolve({ answer, seconds: (performance.now() - began) / 1_000 });
      });
    });

  it("over headers or a body is cut off with 408, and everybody else is answered meanwhile", async () => {
    const head = "POST /graphql HTTP/1.1\r\nhost: x\r\n";
    const slow = Promise.all([
      slowly(`${head}x-slow: `, "a"),
      slowly(`${head}content-type: application/json\r\ncontent-length: 1000\r\n\r\n{"query":`, " "),
    ]);
    expect(await overHttp("{ __typename }")).toContain("Query");
    for (const { answer } of await slow) expect(answer).toMatch(/^(HTTP\/1\.1 408 |HTTP\/1\.1 400 )/);
  });
});
