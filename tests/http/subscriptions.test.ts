import { afterAll, afterEach, describe, expect, it } from "@jest/globals";
import { SignJWT, generateKeyPair } from "jose";
import { createClient, type Client } from "graphql-ws";
import { WebSocket } from "ws";
import type { Verify } from "../../src/http/tokens.js";
import { ANN, SECRET, startServer, stopServers, type Harness } from "./harness.js";

const clients: Client[] = [];
afterEach(() => void clients.splice(0).map((client) => client.dispose()));
afterAll(stopServers);

type Closed = { readonly code: number; readonly reason: string };

/** A client that tells how its socket was closed. */
function connect(
  { url }: Harness,
  connectionParams: Record<string, unknown>,
): { client: Client; closed: Promise<Closed> } {
  let tell: (closed: Closed) => void;
  const closed = new Promise<Closed>((resolve) => (tell = resolve));
  const client = createClient({
    url: `${url.replace("http", "ws")}/graphql`,
    webSocketImpl: WebSocket,
    connectionParams,
    retryAttempts: 0,
    on: { closed: (event) => tell(event as Closed) },
    onNonLazyError: () => undefined,
  });
  clients.push(client);
  return { client, closed };
}

const signedIn = async (server: Harness) => connect(server, { authorization: await server.token() });

/** Runs an operation until it ends; gives what came, or the errors it was refused with. */
const all = (client: Client, query: string) =>
  new Promise<unknown>((resolve) => {
    const came: unknown[] = [];
    client.subscribe({ query }, { next: (result) => came.push(result), error: resolve, complete: () => resolve(came) });
  });

async function until(holds: () => boolean): Promise<void> {
  for (let tries = 0; !holds(); tries++) {
    if (tries > 400) throw new Error("waited 4 s in vain");
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}

describe("a subscription", () => {
  it("delivers each event in a context of its own, in order, and is let go when the client leaves", async () => {
    const server = await startServer();
    const { client } = await signedIn(server);
    const events = client.iterate({ query: "subscription Watch { ticks }" });
    const first = events.next();
    await until(() => server.tickers.length === 1);
    const ticker = server.tickers[0];
    ticker?.push(1);
    expect((await first).value).toEqual({ data: { ticks: 1 } });
    ticker?.push(2);
    ticker?.push(3);
    expect((await events.next()).value).toEqual({ data: { ticks: 2 } });
    expect((await events.next()).value).toEqual({ data: { ticks: 3 } });
    expect(server.opened.map(({ kind, subject }) => `${kind} ${subject}`)).toEqual([
      `subscription ${ANN}`,
      ...Array<string>(3).fill(`event ${ANN}`),
    ]);
    expect(server.closed).toHaveLength(3);
    await events.return?.();
    await until(() => ticker?.ended === true && server.closed.length === 4);
  });

  it("is let go when the socket is cut", async () => {
    const server = await startServer();
    const { client } = await signedIn(server);
    client.subscribe(
      { query: "subscription { ticks }" },
      { next: () => undefined, error: () => undefined, complete: () => undefined },
    );
    await until(() => server.tickers.length === 1);
    client.terminate();
    await until(() => server.tickers[0]?.ended === true && server.closed.length === 1);
  });

  it("hides an error nobody foresaw, in an event or at the start, and goes on after one in an event", async () => {
    const server = await startServer();
    const { client } = await signedIn(server);
    const internal = {
      message: expect.stringMatching(/^Something went wrong on our side\. Quote request /),
      extensions: { code: "INTERNAL", requestId: expect.any(String) },
    };
    const events = client.iterate({ query: "subscription { brokenTicks }" });
    const first = events.next();
    await until(() => server.tickers.length === 1);
    server.tickers[0]?.push(1);
    expect((await first).value).toMatchObject({ data: null, errors: [internal] });
    server.tickers[0]?.push(2);
    expect((await events.next()).value).toMatchObject({ errors: [internal] });
    await events.return?.();
    expect(await all(client, "subscription { closedDoor }")).toMatchObject([{ errors: [internal] }]);
    expect(server.lines.filter((line) => line["msg"] === "unexpected error")).toHaveLength(3);
    await until(() => server.closed.length === server.opened.length);
    expect(server.closed.filter((error) => error instanceof Error && error.message === SECRET)).toHaveLength(3);
  });

  it("is held to the same limits as a query, and only subscriptions are served here", async () => {
    const server = await startServer();
    const { client } = await signedIn(server);
    const refused = async (query: string) =>
      ((await all(client, query)) as { extensions: { code: string } }[])[0]?.extensions.code;
    const aliases = Array.from({ length: 31 }, (_, n) => `a${n}: greeting`).join(" ");
    expect(await refused("subscription { nothingSuch }")).toBe("GRAPHQL_VALIDATION_FAILED");
    expect(await refused("subscription {")).toBe("GRAPHQL_PARSE_FAILED");
    expect(await refused(`query { ${aliases} }`)).toBe("QUERY_LIMIT");
    expect(await refused(`subscription { ticks ${"ticks ".repeat(2000)} }`)).toBe("GRAPHQL_PARSE_FAILED");
    expect(await refused(`query { ${"nest { ".repeat(13)} leaf ${"}".repeat(13)} }`)).toBe("QUERY_LIMIT");
    expect(await refused("mutation { count }")).toBe("BAD_REQUEST");
    expect(server.opened).toHaveLength(0);
  });

  it("is refused with the reason when its variables do not fit", async () => {
    const server = await startServer();
    const { client } = await signedIn(server);
    const came = new Promise<unknown>((resolve) => {
      const query = "subscription ($from: Int) { ticks(from: $from) }";
      client.subscribe(
        { query, variables: { from: "soon" } },
        { next: resolve, error: resolve, complete: () => undefined },
      );
    });
    expect(await came).toMatchObject({
      errors: [{ message: expect.stringContaining('"$from"'), extensions: { code: "BAD_USER_INPUT" } }],
    });
    await until(() => server.closed.length === 1);
  });

  it("is refused without details when its context cannot be opened, at the start or for an event", async () => {
    let opens = 0;
    const server = await startServer({
      open: () => (++opens === 2 ? Promise.resolve() : Promise.reject(new Error(SECRET))),
    });
    const { client } = await signedIn(server);
    expect(await all(client, "subscription { ticks }")).toMatchObject([{ extensions: { code: "INTERNAL" } }]);
    const second = all(client, "subscription { ticks }");
    await until(() => server.tickers.length === 1);
    server.tickers[0]?.push(1);
    expect(await second).toMatchObject([{ extensions: { code: "INTERNAL" } }]);
    await until(() => server.tickers[0]?.ended === true && server.closed.length === 1);
  });

  it("is one of at most twenty on a socket", async () => {
    const server = await startServer();
    const { client } = await signedIn(server);
    const ignore = { next: () => undefined, error: () => undefined, complete: () => undefined };
    for (let n = 0; n < 20; n++) client.subscribe({ query: "subscription { ticks }" }, ignore);
    await until(() => server.tickers.length === 20);
    expect(await all(client, "subscription { ticks }")).toMatchObject([
      { message: expect.stringContaining("at most 20") },
    ]);
  });
});

describe("a socket", () => {
  it("is closed with 4401 without a token and with 4403 and the reason when the token is refused", async () => {
    const server = await startServer();
    const { privateKey } = await generateKeyPair("ES256");
    const { issuer, audience } = server.config.tokens;
    const forged = await new SignJWT()
      .setProtectedHeader({ alg: "ES256" })
      .setIssuer(issuer)
      .setAudience(audience)
      .setSubject(ANN)
      .setExpirationTime("1h")
      .sign(privateKey);
    for (const [params, expected] of [
      [{}, { code: 4401, reason: expect.stringContaining("connectionParams") }],
      [{ authorization: 7 }, { code: 4401 }],
      [{ authorization: "Bearer a.b.c" }, { code: 4403, reason: expect.stringContaining("cannot be read") }],
      [{ authorization: `Bearer ${forged}` }, { code: 4403, reason: expect.stringContaining("signature") }],
    ] as const) {
      const { client, closed } = connect(server, params);
      client.subscribe(
        { query: "subscription { ticks }" },
        { next: () => undefined, error: () => undefined, complete: () => undefined },
      );
      expect(await closed).toMatchObject(expected);
    }
    expect(server.opened).toHaveLength(0);
  });

  it("is closed with 4403 when its token expires", async () => {
    const short =
      (own: Verify): Verify =>
      async (authorization) => {
        const token = await own(authorization);
        return token.ok ? { ok: true, value: { ...token.value, expiresAt: new Date(Date.now() + 300) } } : token;
      };
    const server = await startServer({ verify: short });
    const { client, closed } = await signedIn(server);
    client.subscribe(
      { query: "subscription { ticks }" },
      { next: () => undefined, error: () => undefined, complete: () => undefined },
    );
    await until(() => server.tickers.length === 1);
    expect(await closed).toMatchObject({ code: 4403, reason: "Token expired" });
    await until(() => server.tickers[0]?.ended === true);
  });

  it("is not opened at another address", async () => {
    const server = await startServer();
    const socket = new WebSocket(`${server.url.replace("http", "ws")}/elsewhere`, "graphql-transport-ws");
    expect(await new Promise<string>((resolve) => socket.on("error", (error) => resolve(error.message)))).toContain(
      "404",
    );
  });

  it("is told goodbye with 1001 at shutdown, and its subscriptions are let go", async () => {
    const server = await startServer();
    const { client, closed } = await signedIn(server);
    client.subscribe(
      { query: "subscription { ticks }" },
      { next: () => undefined, error: () => undefined, complete: () => undefined },
    );
    await until(() => server.tickers.length === 1);
    await server.server.stop();
    expect(await closed).toMatchObject({ code: 1001 });
    expect(server.tickers[0]?.ended).toBe(true);
    expect(server.closed).toHaveLength(1);
  });
});
