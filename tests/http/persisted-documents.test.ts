/**
 * Persisted documents over both transports. The form is that of the working draft of GraphQL over HTTP, appendix "Persisted
 * Documents" (graphql/graphql-over-http, spec/Appendix A); it leaves error codes and the WebSocket subprotocol to the server.
 */
import { afterAll, describe, expect, it } from "@jest/globals";
import { createClient } from "graphql-ws";
import { WebSocket } from "ws";
import { hashOf } from "../../src/cli/codegen/documents.js";
import { get, post, startServer, stopServers, type Harness } from "./harness.js";

afterAll(stopServers);

const ECHO = "query Echo($text:String!){echo(text:$text)}";
const COUNT = "mutation Count{count}";
const TICKS = "subscription Ticks{ticks}";
const TWO = "query A{greeting}query B{me}";
const persisted = new Map([ECHO, COUNT, TICKS, TWO].map((text) => [hashOf(text), text]));
const idOf = (text: string) => `sha256:${hashOf(text)}`;
const ANY = { persisted };
const ONLY = { persisted, env: { DOCUMENTS: "persisted" } };
const codeOf = ({ status, body }: { status: number; body: { errors?: { extensions: Record<string, unknown> }[] } }) => [
  status,
  body.errors?.map(({ extensions }) => extensions["code"]),
];

/** The two examples of the draft, section "SHA256 Hex Document Identifier": white space counts. */
it("makes the identifiers that the draft prints", () => {
  expect(idOf("query ($id: ID!) {\n  user(id: $id) {\n    name\n  }\n}")).toBe(
    "sha256:7dba4bd717b41f10434822356a93c32b1fb4907b983e854300ad839f84cdcd6e",
  );
  expect(idOf("query($id:ID!){user(id:$id){name}}")).toBe(
    "sha256:71f7dc5758652baac68e4a10c50be732b741c892ade2883a99358f52b555286b",
  );
});

describe("over HTTP", () => {
  it("runs by documentId what is on record, with variables, operation name and empty options", async () => {
    const server = await startServer(ANY);
    const echoed = await post(server, { documentId: idOf(ECHO), variables: { text: "hello" }, operationName: null });
    expect([echoed.status, echoed.body]).toEqual([200, { data: { echo: "hello" } }]);
    expect((await post(server, { documentId: idOf(TWO), operationName: "B" })).body).toEqual({ data: { me: null } });
    expect((await post(server, { documentId: idOf(COUNT) })).body).toEqual({ data: { count: 1 } });
    expect((await post(server, { query: ECHO, documentId: null, variables: { text: "free" } })).body.data).toBeTruthy();
  });

  it("runs it by GET too, and a mutation never: 405", async () => {
    const server = await startServer(ANY);
    const address = (documentId: string, variables = "{}") => ({ documentId, variables, operationName: "" });
    expect((await get(server, address(idOf(ECHO), '{"text":"by address"}'))).body).toEqual({
      data: { echo: "by address" },
    });
    expect((await get(server, address(idOf(COUNT)))).status).toBe(405);
    expect((await fetch(`${server.url}/graphql?documentId=a&documentId=b`)).status).toBe(400);
  });

  it("answers an unknown identifier with one typed error, and free text still", async () => {
    const server = await startServer(ANY);
    for (const documentId of [
      `sha256:${"0".repeat(64)}`,
      hashOf(ECHO),
      idOf(ECHO).toUpperCase(),
      "x-ours:1",
      "../../etc",
      "",
    ])
      expect(codeOf(await post(server, { documentId }))).toEqual([400, ["PERSISTED_DOCUMENT_NOT_FOUND"]]);
    const old = await post(server, { documentId: "sha256:00" }, { accept: "application/json" });
    expect(codeOf(old)).toEqual([200, ["PERSISTED_DOCUMENT_NOT_FOUND"]]);
    expect(old.headers.get("content-type")).toContain("application/json");
    expect((await post(server, { query: "{ greeting }" })).status).toBe(200);
  });

  it("refuses an identifier that is no text, and one beside a text", async () => {
    const server = await startServer(ANY);
    for (const body of [{ documentId: 7 }, { documentId: idOf(ECHO), query: ECHO }, { documentId: null }, {}])
      expect(codeOf(await post(server, body))).toEqual([400, ["BAD_REQUEST"]]);
  });

  it("runs nothing else where the switch says so: no free text, not even one that is on record", async () => {
    const server = await startServer(ONLY);
    expect((await post(server, { documentId: idOf(ECHO), variables: { text: "hello" } })).status).toBe(200);
    for (const query of ["{ greeting }", "{ __schema { types { name } } }", ECHO]) {
      expect(codeOf(await post(server, { query }))).toEqual([400, ["PERSISTED_DOCUMENTS_ONLY"]]);
      expect(codeOf(await get(server, { query }))).toEqual([400, ["PERSISTED_DOCUMENTS_ONLY"]]);
    }
    expect(server.opened).toHaveLength(1);
  });
});

describe("over WebSocket", () => {
  /** The subprotocol demands `query`; the identifier goes with `extensions`, which it leaves to the server. */
  async function subscribe(server: Harness, payload: { query: string; extensions?: Record<string, unknown> }) {
    const client = createClient({
      url: `${server.url.replace("http", "ws")}/graphql`,
      webSocketImpl: WebSocket,
      connectionParams: { authorization: await server.token() },
      retryAttempts: 0,
    });
    const first = new Promise<unknown>((resolve) =>
      client.subscribe(payload, { next: resolve, error: resolve, complete: () => resolve("complete") }),
    );
    for (let tries = 0; server.tickers.length === 0 && tries < 20; tries++)
      await new Promise((resolve) => setTimeout(resolve, 10));
    server.tickers[0]?.push(7);
    const heard = await first;
    await client.dispose();
    return Array.isArray(heard)
      ? (heard as { extensions: { code: string } }[]).map(({ extensions }) => extensions.code)
      : heard;
  }

  it("follows by the identifier, and says when it has no such document", async () => {
    const server = await startServer(ONLY);
    expect(await subscribe(server, { query: "", extensions: { documentId: "sha256:00" } })).toEqual([
      "PERSISTED_DOCUMENT_NOT_FOUND",
    ]);
    expect(await subscribe(server, { query: TICKS, extensions: { documentId: idOf(TICKS) } })).toEqual(["BAD_REQUEST"]);
    expect(await subscribe(server, { query: "", extensions: { documentId: idOf(TICKS) } })).toEqual({
      data: { ticks: 7 },
    });
  });

  it("follows free text unless the switch forbids it", async () => {
    expect(await subscribe(await startServer(ONLY), { query: TICKS })).toEqual(["PERSISTED_DOCUMENTS_ONLY"]);
    expect(await subscribe(await startServer(ANY), { query: TICKS })).toEqual({ data: { ticks: 7 } });
  });
});
