import type { IncomingMessage } from "node:http";
import { afterAll, describe, expect, it } from "@jest/globals";
import { createClient } from "graphql-ws";
import { WebSocket } from "ws";
import { createRateLimits, type RateLimits } from "../../src/app/rate-limits.js";
import type { RateKind } from "../../src/config.js";
import { createAddressOf } from "../../src/http/address.js";
import { post, startServer, stopServers, type Harness } from "./harness.js";

// RFC 6585, section 4 (429), RFC 9110, sections 10.2.3 (Retry-After) and 15.6.4 (503); OWASP API Security Top 10 2023, API4
// "Unrestricted Resource Consumption" and API2 "Broken Authentication". The buckets themselves: tests/app/rate-limits.test.ts.
afterAll(stopServers);
const OFF: Record<RateKind, number> = { request: 0, mutation: 0, search: 0, stranger: 0, guess: 0, socket: 0 };

/** Buckets in this process: as many tokens as the limit says, and none ever come back. */
function fewTokens(rates: Partial<Record<RateKind, number>>): RateLimits {
  const spent = new Map<string, number>();
  return createRateLimits({
    takeRate(bucket, tokens, perMinute) {
      const before = spent.get(bucket) ?? 0;
      const granted = Math.min(tokens, perMinute - before);
      spent.set(bucket, before + granted);
      return Promise.resolve({ granted, retryAfterMs: granted > 0 ? 0 : 6_500 });
    },
    rates: { ...OFF, ...rates },
    key: new Uint8Array(32),
    clock: () => performance.now(),
    onError(error) {
      throw error;
    },
  });
}
const greeting = { query: "{ greeting }" };
const codes = async (server: Harness, times: number, body: unknown, headers: Record<string, string>) => {
  const seen: [number, unknown][] = [];
  for (let n = 0; n < times; n++) {
    const { status, body: answer } = await post(server, body, headers);
    seen.push([status, answer.errors?.[0]?.extensions["code"]]);
  }
  return seen;
};
const GOOD = [200, undefined];
const LATER = [429, "RATE_LIMITED"];

describe("a person who asks too often", () => {
  it("is answered 429 with the seconds to wait, as a GraphQL error that no cache keeps", async () => {
    const server = await startServer({ rates: fewTokens({ request: 2 }) });
    const authorization = await server.token();
    expect(await codes(server, 2, greeting, { authorization })).toEqual([GOOD, GOOD]);
    for (const accept of ["application/graphql-response+json", "application/json"]) {
      const { status, headers, body } = await post(server, greeting, { authorization, accept });
      expect([status, headers.get("retry-after"), headers.get("cache-control")]).toEqual([429, "7", "no-store"]);
      expect(headers.get("content-type")).toBe(`${accept}; charset=utf-8`);
      expect(body).toEqual({
        errors: [
          {
            message: "Too many requests. Try again in 7 s.",
            extensions: { code: "RATE_LIMITED", retryAfterSeconds: 7 },
          },
        ],
      });
    }
    // What was not let in opened nothing.
    expect(server.opened).toHaveLength(2);
  });

  it("has fewer changes than questions, and a change that is refused is not made", async () => {
    const server = await startServer({ rates: fewTokens({ request: 100, mutation: 1 }) });
    const authorization = await server.token();
    const count = { query: "mutation { count }" };
    expect(await codes(server, 3, count, { authorization })).toEqual([GOOD, LATER, LATER]);
    expect(await codes(server, 2, greeting, { authorization })).toEqual([GOOD, GOOD]);
    const { headers, body } = await post(server, count, { authorization });
    expect(headers.get("retry-after")).toBe("7");
    expect(body.errors?.[0]?.extensions).toEqual({ code: "RATE_LIMITED", retryAfterSeconds: 7 });
    const other = await startServer({ rates: fewTokens({ request: 100, mutation: 2 }) });
    const [, second] = [
      await post(other, count, { authorization: await other.token() }),
      await post(other, count, { authorization: await other.token() }),
    ];
    expect(second.body.data).toEqual({ count: 2 });
  });

  it("does not slow anybody else down", async () => {
    const people = await startServer({ rates: fewTokens({ request: 1 }) });
    const authorization = await people.token();
    expect(await codes(people, 2, greeting, { authorization })).toEqual([GOOD, LATER]);
    expect(await codes(people, 2, greeting, {})).toEqual([GOOD, GOOD]);
  });
});

describe("somebody without a token", () => {
  it("is counted by address, and what they write into X-Forwarded-For changes nothing", async () => {
    const server = await startServer({ rates: fewTokens({ stranger: 2 }) });
    expect(await codes(server, 2, greeting, { "x-forwarded-for": "192.0.2.1" })).toEqual([GOOD, GOOD]);
    expect(await codes(server, 2, greeting, { "x-forwarded-for": "192.0.2.2" })).toEqual([LATER, LATER]);
  });

  it("is counted by the address a trusted proxy saw", async () => {
    const env = { TRUSTED_PROXIES: "127.0.0.1, ::1" };
    const server = await startServer({ rates: fewTokens({ stranger: 1 }), env });
    for (const [forwarded, expected] of [
      ["192.0.2.1", GOOD],
      ["192.0.2.1", LATER],
      ["192.0.2.2", GOOD],
      // Only the last entry is the proxy's; the first ones came with the request.
      ["192.0.2.3, 192.0.2.2", LATER],
    ] as const)
      expect(await codes(server, 1, greeting, { "x-forwarded-for": forwarded })).toEqual([expected]);
  });

  it("may try few tokens; a token that holds gets in from the same address all the while", async () => {
    const server = await startServer({ rates: fewTokens({ guess: 2 }) });
    const bad = { authorization: "Bearer a.b.c" };
    const REFUSED = [401, "UNAUTHENTICATED"];
    expect(await codes(server, 4, greeting, bad)).toEqual([REFUSED, REFUSED, LATER, LATER]);
    expect(await codes(server, 1, greeting, { authorization: await server.token() })).toEqual([GOOD]);
  });
});

describe("over WebSocket", () => {
  const open = (server: Harness, authorization: string) =>
    createClient({
      url: `${server.url.replace("http", "ws")}/graphql`,
      webSocketImpl: WebSocket,
      connectionParams: { authorization },
      retryAttempts: 0,
      onNonLazyError: () => undefined,
    });
  const refusal = (client: ReturnType<typeof open>) =>
    new Promise<unknown>((resolve) =>
      client.subscribe(
        { query: "subscription { ticks }" },
        { next: () => undefined, error: resolve, complete: () => resolve(null) },
      ),
    );

  it("an address that opens too many sockets is answered 429 instead of one", async () => {
    const server = await startServer({ rates: fewTokens({ socket: 1 }) });
    const connect = () =>
      new Promise<string>((resolve) => {
        const socket = new WebSocket(`${server.url.replace("http", "ws")}/graphql`, "graphql-transport-ws");
        socket.on("open", () => (socket.close(), resolve("open")));
        socket.on("unexpected-response", (_, answer) =>
          resolve(`${answer.statusCode} ${answer.headers["retry-after"]}`),
        );
        socket.on("error", () => undefined);
      });
    expect([await connect(), await connect()]).toEqual(["open", "429 7"]);
  });

  it("a subscription too many is answered with an error of the protocol, and the socket stays", async () => {
    const server = await startServer({ rates: fewTokens({ request: 1 }) });
    const client = open(server, await server.token());
    client.subscribe(
      { query: "subscription { ticks }" },
      { next: () => undefined, error: () => undefined, complete: () => undefined },
    );
    for (let tries = 0; server.tickers.length === 0 && tries < 400; tries++)
      await new Promise((resolve) => setTimeout(resolve, 10));
    expect(await refusal(client)).toEqual([
      { message: "Too many requests. Try again in 7 s.", extensions: { code: "RATE_LIMITED", retryAfterSeconds: 7 } },
    ]);
    expect(server.tickers).toHaveLength(1);
    expect(server.tickers[0]!.ended).toBe(false);
    await client.dispose();
  });

  it("is closed with the wait as reason after too many tokens that do not hold", async () => {
    const server = await startServer({ rates: fewTokens({ guess: 1 }) });
    const reasons: string[] = [];
    for (let n = 0; n < 2; n++) {
      const client = open(server, "Bearer a.b.c");
      const closed = (await refusal(client)) as { code: number; reason: string };
      reasons.push(`${closed.code} ${closed.reason.slice(0, 17)}`);
    }
    expect(reasons).toEqual(["4403 The token cannot ", "4403 Too many requests"].map((text) => text.slice(0, 22)));
  });

  it("a socket that never says who it is is closed", async () => {
    const server = await startServer();
    const socket = new WebSocket(`${server.url.replace("http", "ws")}/graphql`, "graphql-transport-ws");
    // graphql-transport-ws, "ConnectionInit": 4408 when the client takes too long.
    expect(await new Promise((resolve) => socket.on("close", resolve))).toBe(4408);
  });
});

describe("when the database cannot count", () => {
  it("nobody is let through uncounted: 503 with a code and a wait, and the server stays up", async () => {
    const errors: unknown[] = [];
    let up = false;
    const rates = createRateLimits({
      takeRate: () =>
        up ? Promise.resolve({ granted: 1, retryAfterMs: 0 }) : Promise.reject(new Error("connection refused")),
      rates: { ...OFF, request: 60, stranger: 60, socket: 60 },
      key: new Uint8Array(32),
      clock: () => performance.now(),
      onError: (error) => errors.push(error),
    });
    const server = await startServer({ rates });
    const authorization = await server.token();
    for (const headers of [{}, { authorization }]) {
      const { status, headers: answered, body } = await post(server, greeting, headers);
      expect([status, answered.get("retry-after")]).toEqual([503, "1"]);
      expect(body).toEqual({
        errors: [
          {
            message: "The service cannot answer just now. Try again in 1 s.",
            extensions: { code: "UNAVAILABLE", retryAfterSeconds: 1 },
          },
        ],
      });
    }
    expect(server.opened).toHaveLength(0);
    expect((await fetch(`${server.url}/health/live`)).status).toBe(200);
    const socket = new WebSocket(`${server.url.replace("http", "ws")}/graphql`, "graphql-transport-ws");
    socket.on("error", () => undefined);
    expect(
      await new Promise((resolve) => socket.on("unexpected-response", (_, answer) => resolve(answer.statusCode))),
    ).toBe(503);
    up = true;
    await new Promise((resolve) => setTimeout(resolve, 1_100));
    expect((await post(server, greeting, { authorization })).status).toBe(200);
    expect(errors.length).toBeGreaterThan(0);
  });
});

describe("whom a request comes from", () => {
  const from = (remoteAddress: string, forwarded?: string | string[]) =>
    ({
      socket: { remoteAddress },
      headers: forwarded === undefined ? {} : { "x-forwarded-for": forwarded },
    }) as unknown as IncomingMessage;

  it.each([
    [[], "203.0.113.9", "192.0.2.1", "203.0.113.9"],
    [["10.0.0.0/8"], "10.1.2.3", "192.0.2.1", "192.0.2.1"],
    [["10.0.0.0/8"], "10.1.2.3", "192.0.2.7, 192.0.2.1", "192.0.2.1"],
    [["10.0.0.0/8"], "10.1.2.3", "192.0.2.7, 10.9.9.9", "192.0.2.7"],
    [["10.0.0.0/8"], "11.1.2.3", "192.0.2.7", "11.1.2.3"],
    [["10.0.0.0/8"], "10.1.2.3", "not an address", "10.1.2.3"],
    [["10.0.0.0/8"], "10.1.2.3", undefined, "10.1.2.3"],
    [["10.0.0.1"], "::ffff:10.0.0.1", "::ffff:192.0.2.1", "192.0.2.1"],
    // The documentation prefix of RFC 3849; the first 64 bits are one customer's at least (RFC 6177).
    [[], "2001:db8:1:2:3:4:5:6", undefined, "2001:db8:1:2::/64"],
    [[], "2001:db8::1", undefined, "2001:db8:0:0::/64"],
    [[], "2001:0db8:0001:0002::9", undefined, "2001:db8:1:2::/64"],
    [["fd00::/8"], "fd12::1", "2001:db8:a::5", "2001:db8:a:0::/64"],
  ])("trusting %p, %s with %s is %s", (trusted, remote, forwarded, expected) => {
    expect(createAddressOf(trusted)(from(remote, forwarded))).toBe(expected);
  });
});
