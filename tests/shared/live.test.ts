/**
 * Following across whatever happens to a socket. Beside our own server stands the reference implementation of the
 * graphql-transport-ws protocol (package graphql-ws), and for its edges a server of a few lines.
 */
import { createServer, type AddressInfo } from "node:net";
import { afterEach, afterAll, describe, expect, it } from "@jest/globals";
import { makeExecutableSchema } from "@graphql-tools/schema";
import * as fc from "fast-check";
import { useServer } from "graphql-ws/use/ws";
import { WebSocket, WebSocketServer } from "ws";
import { z } from "zod";
import { ClientError } from "../../shared/client-error.js";
import { createClient, type Client, type ClientOptions } from "../../shared/client.js";
import type { Document } from "../../shared/document.js";
import { startWire } from "../support/cutting-proxy.js";
import { startServer, stopServers, type Harness } from "../http/harness.js";

const clients: Client[] = [];
const closers: (() => Promise<unknown>)[] = [];
afterEach(async () => {
  for (const client of clients.splice(0)) client.close();
  for (const close of closers.splice(0).reverse()) await close();
});
afterAll(stopServers);

const soon = () => new Promise<void>((resolve) => setTimeout(resolve, 2));
function clientAt(url: string, given: Partial<ClientOptions> = {}): Client {
  const client = createClient({
    ...{ url: `${url}/graphql`, token: () => "token", documents: "text", WebSocket, wait: soon, random: () => 0.5 },
    ...given,
  });
  clients.push(client);
  return client;
}
async function until(holds: () => boolean): Promise<void> {
  for (let tries = 0; !holds(); tries++) {
    if (tries > 1_000) throw new Error("waited 10 s in vain");
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}
const troubleOf = (ended: Promise<void>) =>
  ended.then(
    () => null,
    (error: unknown) => (error instanceof ClientError ? error.trouble : error),
  );

interface Tick {
  readonly ticks: number;
}
const Ticks: Document<Tick, object> = {
  ...{ name: "Ticks", kind: "subscription", id: "sha256:none", text: "subscription Ticks { ticks }" },
  variables: () => z.strictObject({}),
};
interface Entry {
  readonly changes: { readonly cursor: string };
}
const Changes: Document<Entry, { readonly after?: string }> = {
  ...{ name: "Changes", kind: "subscription", id: "sha256:none" },
  text: "subscription Changes($after: String) { changes(after: $after) { cursor } }",
  variables: () => z.strictObject({ after: z.string().optional() }),
};

describe("our server", () => {
  const follow = (client: Client) => {
    const heard: number[] = [];
    const placed: boolean[] = [];
    const following = client.follow(
      Ticks,
      {},
      { onEvent: ({ ticks }) => heard.push(ticks), onPlaced: (again) => placed.push(again) },
    );
    return { heard, placed, following };
  };
  const bare = async (server: Harness) => (await server.token()).replace("Bearer ", "");

  it("that closes for an expired token is gone back to with a fresh one, after the shortest wait", async () => {
    let signedIn = 0;
    const server = await startServer({
      verify: (own) => async (authorization) => {
        const token = await own(authorization);
        if (!token.ok) return token;
        const lives = ++signedIn === 1 ? 150 : 3_600_000;
        return { ok: true, value: { ...token.value, expiresAt: new Date(Date.now() + lives) } };
      },
    });
    const renewals: boolean[] = [];
    const waits: number[] = [];
    const client = clientAt(server.url, {
      token: async (renew) => (renewals.push(renew), bare(server)),
      wait: async (milliseconds) => void waits.push(milliseconds),
    });
    const { heard, placed } = follow(client);
    await until(() => server.tickers.length === 1);
    server.tickers[0]!.push(1);
    await until(() => server.tickers.length === 2);
    server.tickers[1]!.push(2);
    await until(() => heard.length === 2);
    expect({ heard, placed, renewals, waits }).toEqual({
      ...{ heard: [1, 2], placed: [false, true], renewals: [false, true], waits: [187.5] },
    });
  });

  it("that refuses the token twice is not asked a third time", async () => {
    const server = await startServer();
    const renewals: boolean[] = [];
    const client = clientAt(server.url, { token: (renew) => (renewals.push(renew), "no token of anybody") });
    expect(await troubleOf(follow(client).following.ended)).toMatchObject({ kind: "TOKEN" });
    expect(renewals).toEqual([false, true]);
  });

  it("that restarts at its address is found again", async () => {
    const first = await startServer();
    const port = new URL(first.url).port;
    const token = await bare(first);
    const client = clientAt(first.url, { token: () => current });
    let current = token;
    const { heard, placed } = follow(client);
    await until(() => first.tickers.length === 1);
    first.tickers[0]!.push(1);
    await until(() => heard.length === 1);
    await first.stop();
    const second = await startServer({ env: { PORT: port, OIDC_ISSUER: undefined } });
    current = await bare(second);
    await until(() => second.tickers.length === 1);
    second.tickers[0]!.push(2);
    await until(() => heard.length === 2);
    expect(placed).toEqual([false, true]);
  });

  it("hears that a follower left, and loses the socket with the last of them", async () => {
    const server = await startServer();
    const client = clientAt(server.url, { token: () => bare(server) });
    const [one, other] = [follow(client), follow(client)];
    await until(() => server.tickers.length === 2);
    one.following.stop();
    await one.following.ended;
    await until(() => server.tickers.filter(({ ended }) => ended).length === 1);
    expect(server.lines.filter(({ msg }) => msg === "socket closed")).toEqual([]);
    other.following.stop();
    await until(() => server.lines.some(({ msg, code }) => msg === "socket closed" && code === 1000));
  });

  it("that refuses the document is believed, and one that breaks is asked again, not for ever", async () => {
    const server = await startServer();
    const client = clientAt(server.url, { token: () => bare(server), patience: { first: 1, most: 1, tries: 3 } });
    const nonsense = { ...Ticks, text: "subscription Ticks { tocks }" };
    expect(await troubleOf(client.follow(nonsense, {}, { onEvent: () => undefined }).ended)).toMatchObject({
      kind: "REFUSED",
      errors: [{ extensions: { code: "GRAPHQL_VALIDATION_FAILED" } }],
    });
    let placed = 0;
    const broken = { ...Ticks, text: "subscription Ticks { closedDoor }" };
    const { ended } = client.follow(broken, {}, { onEvent: () => undefined, onPlaced: () => placed++ });
    expect(await troubleOf(ended)).toMatchObject({ kind: "REFUSED", errors: [{ extensions: { code: "INTERNAL" } }] });
    expect(placed).toBe(3);
  });
});

/** A log that is told from a cursor on, and sometimes tells an entry again, as at-least-once delivery does. */
async function logServer() {
  const log: string[] = [];
  const wakers = new Set<() => void>();
  const after: (string | null)[] = [];
  const schema = makeExecutableSchema({
    typeDefs:
      "type Query { no: Int } type Entry { cursor: String! } type Subscription { changes(after: String): Entry! }",
    resolvers: {
      Subscription: {
        changes: {
          async *subscribe(_: unknown, args: { after?: string }) {
            after.push(args.after ?? null);
            const from = args.after === undefined ? 0 : log.indexOf(args.after);
            for (let at = from; ; at++) {
              while (at >= log.length) await new Promise<void>((resolve) => wakers.add(resolve));
              yield { changes: { cursor: log[at]! } };
            }
          },
        },
      },
    },
  });
  const sockets = new WebSocketServer({ port: 0, host: "127.0.0.1", path: "/graphql" });
  const server = useServer({ schema }, sockets);
  await new Promise((resolve) => sockets.once("listening", resolve));
  closers.push(async () => {
    sockets.clients.forEach((socket) => socket.terminate());
    await server.dispose();
  });
  return {
    url: `http://127.0.0.1:${(sockets.address() as AddressInfo).port}`,
    after,
    write(entry: string) {
      log.push(entry);
      wakers.forEach((wake) => wake());
      wakers.clear();
    },
  };
}

describe("with a cursor", () => {
  const byCursor = {
    cursorOf: ({ changes }: Entry) => changes.cursor,
    withCursor: (variables: object, cursor: string) => ({ ...variables, after: cursor }),
  };

  it("each entry is heard once and in order, wherever the wire is cut", async () => {
    const server = await logServer();
    let written = 0;
    await fc.assert(
      fc.asyncProperty(fc.array(fc.constantFrom("write", "cut", "breathe"), { maxLength: 30 }), async (steps) => {
        const wire = await startWire(server.url);
        const heard: string[] = [];
        const client = clientAt(wire.url);
        const begin = written;
        server.write(`entry ${written++}`);
        const following = client.follow(
          Changes,
          {},
          {
            ...byCursor,
            ...(begin > 0 && { cursor: `entry ${begin - 1}` }),
            onEvent: ({ changes }) => heard.push(changes.cursor),
          },
        );
        for (const step of steps) {
          if (step === "write") server.write(`entry ${written++}`);
          if (step === "cut") wire.cut();
          if (step === "breathe") await new Promise((resolve) => setTimeout(resolve, 5));
        }
        await until(() => following.cursor() === `entry ${written - 1}`);
        expect(heard).toEqual(Array.from({ length: written - begin }, (_, at) => `entry ${begin + at}`));
        following.stop();
        await following.ended;
        await wire.close();
      }),
      { numRuns: 25 },
    );
    expect(server.after.length).toBeGreaterThan(25); // it was cut, and resumed
  });

  it("an entry whose listener throws ends the subscription and is not seen", async () => {
    const server = await logServer();
    const following = clientAt(server.url).follow(
      Changes,
      {},
      {
        ...byCursor,
        onEvent: ({ changes }) => {
          if (changes.cursor === "two") throw new Error("cannot show two");
        },
      },
    );
    server.write("one");
    server.write("two");
    await expect(following.ended).rejects.toThrow("cannot show two");
    expect(following.cursor()).toBe("one");
  });
});

interface Word {
  readonly type: string;
  readonly id?: string;
  readonly payload?: unknown;
}
/** A server that says what the test wants. */
async function rawServer(onMessage: (socket: WebSocket, message: Word) => void) {
  const sockets = new WebSocketServer({
    ...{ port: 0, host: "127.0.0.1", path: "/graphql" },
    handleProtocols: (offered) => (offered.has("graphql-transport-ws") ? "graphql-transport-ws" : false),
  });
  const protocols: string[] = [];
  sockets.on("connection", (socket) => {
    protocols.push(socket.protocol);
    socket.on("message", (data: Buffer) => onMessage(socket, JSON.parse(data.toString()) as Word));
  });
  await new Promise((resolve) => sockets.once("listening", resolve));
  closers.push(() => {
    sockets.clients.forEach((socket) => socket.terminate());
    return new Promise((resolve) => sockets.close(resolve));
  });
  return { url: `http://127.0.0.1:${(sockets.address() as AddressInfo).port}`, protocols };
}
const say = (socket: WebSocket, message: object) => socket.send(JSON.stringify(message));

/** The messages of the protocol as its document states them (graphql-ws, PROTOCOL.md). */
describe("the subprotocol", () => {
  it("is asked for by name, begins with connection_init, answers a ping, and ignores what comes late", async () => {
    const words: Word[] = [];
    const server = await rawServer((socket, message) => {
      words.push(message);
      if (message.type === "connection_init") {
        say(socket, { type: "ping" });
        say(socket, { type: "connection_ack" });
      }
      if (message.type === "subscribe") {
        say(socket, { type: "next", id: "nobody's", payload: { data: { ticks: 0 } } });
        say(socket, { type: "next", id: message.id, payload: { data: { ticks: 1 } } });
        say(socket, { type: "complete", id: message.id });
        say(socket, { type: "next", id: message.id, payload: { data: { ticks: 2 } } });
      }
    });
    const heard: number[] = [];
    await clientAt(server.url).follow(Ticks, {}, { onEvent: ({ ticks }) => heard.push(ticks) }).ended;
    expect(heard).toEqual([1]);
    expect(server.protocols).toEqual(["graphql-transport-ws"]);
    expect(words.map(({ type }) => type).slice(0, 3)).toEqual(["connection_init", "pong", "subscribe"]);
    expect(words[0]!.payload).toEqual({ authorization: "Bearer token" });
    expect(words[2]!.payload).toEqual({ query: Ticks.text, operationName: "Ticks", variables: {} });
  });

  it("a server that falls silent is pinged, and left when it does not answer", async () => {
    let connections = 0;
    let pings = 0;
    const server = await rawServer((socket, { type, id }) => {
      if (type === "connection_init") {
        connections++;
        say(socket, { type: "connection_ack" });
      }
      // The first connection is dead from now on, as on a phone that went into a tunnel; the second lives.
      if (type === "ping") {
        pings++;
        if (connections > 1) say(socket, { type: "pong" });
      }
      if (type === "subscribe" && connections > 1) say(socket, { type: "next", id, payload: { data: { ticks: 1 } } });
    });
    const heard: number[] = [];
    clientAt(server.url, { silence: 40 }).follow(Ticks, {}, { onEvent: ({ ticks }) => heard.push(ticks) });
    await until(() => heard.length === 1);
    const before = pings;
    await until(() => pings > before + 3);
    expect(connections).toBe(2);
  });

  it("a close that no second try mends ends all, any other is tried again", async () => {
    let code = 4400;
    let connections = 0;
    const server = await rawServer((socket) => {
      connections++;
      if (connections > 3) code = 4409;
      socket.close(code, "no more");
    });
    const follow = () => clientAt(server.url).follow(Ticks, {}, { onEvent: () => undefined }).ended;
    expect(await troubleOf(follow())).toEqual({ kind: "PROTOCOL", status: 4400, reason: "no more" });
    expect(connections).toBe(1);
    code = 1011;
    expect(await troubleOf(follow())).toEqual({ kind: "PROTOCOL", status: 4409, reason: "no more" });
    expect(connections).toBe(4);
  });

  it("waits longer each time while nobody listens, and stops trying when nobody follows", async () => {
    const nobody = createServer();
    await new Promise<void>((resolve) => nobody.listen(0, "127.0.0.1", resolve));
    const { port } = nobody.address() as AddressInfo;
    await new Promise((resolve) => nobody.close(resolve));
    const waits: number[] = [];
    const client = clientAt(`http://127.0.0.1:${port}`, {
      random: () => 1,
      wait: async (milliseconds) => (waits.push(milliseconds), soon()),
    });
    const following = client.follow(Ticks, {}, { onEvent: () => undefined });
    await until(() => waits.length >= 8);
    expect(waits.slice(0, 8)).toEqual([250, 500, 1_000, 2_000, 4_000, 8_000, 15_000, 15_000]);
    following.stop();
    await following.ended;
    const tried = waits.length;
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(waits.length).toBeLessThanOrEqual(tried + 1);
  });
});
