/** The typed client against the real server, over a wire that breaks. */
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { WebSocket } from "ws";
import { ClientError } from "../../shared/client-error.js";
import { createClient, type Client, type ClientOptions } from "../../shared/client.js";
import {
  Changes,
  FinishTask,
  Log,
  MyHomes,
  SetStock,
  TakeTask,
  WeekChanges,
  WeekOf,
} from "../../shared/generated/operations.js";
import { retryAfter, usualPatience, waitBefore } from "../../shared/patience.js";
import { startWire, type Wire } from "../support/cutting-proxy.js";
import { useServedApp, type Household } from "../support/served-app.js";

const DAY = "2027-01-11";
// Nothing but documents on record is run here: all that the client sends is.
const served = useServedApp({ env: { DOCUMENTS: "persisted" } });
const free = useServedApp();
let home: Household;
let wire: Wire;
const clients: Client[] = [];
const closers: (() => Promise<unknown>)[] = [];
const soon = () => new Promise<void>((resolve) => setTimeout(resolve, 5));

function clientOf(person: string, url = wire.url, given: Partial<ClientOptions> = {}): Client {
  const client = createClient({
    url: `${url}/graphql`,
    token: () => free.tokenOf(person),
    documents: "text",
    WebSocket,
    wait: soon,
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
const troubleOf = (work: Promise<unknown>) =>
  work.then(
    () => null,
    (error: unknown) => (error instanceof ClientError ? error.trouble : Promise.reject(error as Error)),
  );
const keyIn = (request: string) => /"idempotencyKey":"([^"]+)"/.exec(request)?.[1];

beforeAll(async () => {
  home = await free.household().child().carer("HELPER").planned(DAY).found();
});
beforeEach(async () => {
  wire = await startWire(free.url);
});
afterEach(async () => {
  for (const client of clients.splice(0)) client.close();
  await wire.close();
  for (const close of closers.splice(0)) await close();
});

const openTask = async (client: Client) => {
  const { week } = await client.ask(WeekOf, { householdId: home.id, day: DAY });
  return { seenRevision: week!.revision, taskId: week!.plan.tasks.find(({ state }) => state === "OPEN")!.id };
};

describe("a mutation", () => {
  it("whose answer is lost twice is sent three times with one key, and done once", async () => {
    const client = clientOf(home.coordinator);
    const before = await home.revision();
    wire.loseAnswers(2);
    const set = await client.send(SetStock, {
      householdId: home.id,
      seenRevision: before,
      entries: [{ food: "apple-raw", grams: 700 }],
    });
    expect(set.__typename).toBe("KitchenPayload");
    expect(wire.requests).toHaveLength(3);
    expect(new Set(wire.requests.map(keyIn)).size).toBe(1);
    expect(keyIn(wire.requests[0]!)).toMatch(/^[0-9a-f-]{36}$/);
    expect(await home.revision()).toBe(before + 1);
  });

  it("that finds no server is sent when there is one again", async () => {
    const client = clientOf(home.coordinator);
    const seenRevision = await home.revision();
    wire.down(true);
    let waits = 0;
    const patient = clientOf(home.coordinator, wire.url, {
      wait: () => {
        if (++waits === 3) wire.down(false);
        return soon();
      },
    });
    const input = { householdId: home.id, seenRevision, entries: [{ food: "apple-raw", grams: 600 }] };
    expect((await patient.send(SetStock, input)).__typename).toBe("KitchenPayload");
    expect(waits).toBe(3);
    wire.down(true);
    expect(await troubleOf(client.send(SetStock, input))).toEqual({ kind: "UNREACHABLE" });
  });

  it("goes on with the key of an earlier run", async () => {
    const client = clientOf(home.coordinator);
    const { taskId, seenRevision } = await openTask(client);
    const input = { idempotencyKey: "kept-from-before-the-crash", taskId, seenRevision };
    const first = await client.send(TakeTask, input);
    expect(first).toMatchObject({ __typename: "TaskPayload", task: { id: taskId, state: "TAKEN" } });
    expect(await client.send(TakeTask, input)).toEqual(first);
    expect(await client.send(FinishTask, input)).toMatchObject({ __typename: "KeyReused", usedFor: "takeTask" });
  });

  it("is refused as an answer, with its facts", async () => {
    const { taskId, seenRevision } = await openTask(clientOf(home.coordinator));
    const helper = clientOf(home.carers.HELPER!);
    await helper.send(TakeTask, { taskId, seenRevision });
    const late = await clientOf(home.coordinator).send(TakeTask, { taskId, seenRevision });
    if (late.__typename !== "TaskHeld") throw new Error(late.__typename);
    expect(late.holder?.displayName).toBe(home.carers.HELPER);
  });
});

it("sends nothing that the server would refuse for its shape or range, and says which field", async () => {
  const client = clientOf(home.coordinator);
  const entries = [{ food: "apple-raw", grams: 1.5 }];
  expect(await troubleOf(client.send(SetStock, { householdId: home.id, seenRevision: 1, entries }))).toEqual({
    kind: "VARIABLES",
    issues: [{ path: "input.entries.0.grams", fix: "Send a whole number." }],
  });
  expect(await troubleOf(client.ask(WeekOf, { householdId: home.id, day: "2027-02-30" }))).toMatchObject({
    kind: "VARIABLES",
    issues: [{ path: "day" }],
  });
  expect(() => client.follow(WeekChanges, { householdId: 7 as never }, { onEvent: () => undefined })).toThrow(
    ClientError,
  );
  expect(wire.requests).toEqual([]);
});

it("asks by hash where nothing but documents on record is run, over HTTP and WebSocket", async () => {
  const { url } = served;
  const token = () => served.tokenOf("demo:ana");
  const byHash = clientOf("", url, { documents: "hash", token });
  const { me } = await byHash.ask(MyHomes, { day: DAY });
  const following = byHash.follow(WeekChanges, { householdId: me.households[0]!.id }, { onEvent: () => undefined });
  const placed = new Promise((resolve) =>
    byHash.follow(WeekChanges, { householdId: me.households[0]!.id }, { onEvent: () => undefined, onPlaced: resolve }),
  );
  await placed;
  following.stop();
  await following.ended;

  const byText = clientOf("", url, { token });
  const codes = { errors: [{ extensions: { code: "PERSISTED_DOCUMENTS_ONLY" } }] };
  expect(await troubleOf(byText.ask(MyHomes, { day: DAY }))).toMatchObject({ kind: "REFUSED", ...codes });
  const { ended } = byText.follow(WeekChanges, { householdId: "home" }, { onEvent: () => undefined });
  expect(await troubleOf(ended)).toMatchObject({ kind: "REFUSED", ...codes });
});

it("hears of a week across a wire that was cut, and is told that it may have missed something", async () => {
  const client = clientOf(home.carers.HELPER!);
  const revisions: number[] = [];
  const placed: boolean[] = [];
  const following = client.follow(
    WeekChanges,
    { householdId: home.id },
    { onEvent: ({ weekChanged }) => revisions.push(weekChanged.revision), onPlaced: (again) => placed.push(again) },
  );
  const take = async () => {
    const { taskId, seenRevision } = await openTask(clientOf(home.coordinator));
    return clientOf(home.coordinator).send(TakeTask, { taskId, seenRevision });
  };
  const heardAfter = async (count: number) => {
    // A subscription is not acknowledged: an event that came too early is made again.
    for (let tries = 0; revisions.length < count && tries < 20; tries++) {
      await take();
      for (let waits = 0; revisions.length < count && waits < 30; waits++) await new Promise((r) => setTimeout(r, 10));
    }
    expect(revisions.length).toBeGreaterThanOrEqual(count);
  };
  await until(() => placed.length === 1);
  await heardAfter(1);
  wire.down(true);
  await new Promise((resolve) => setTimeout(resolve, 50));
  wire.down(false);
  await until(() => placed.length === 2);
  expect(placed).toEqual([false, true]);
  await heardAfter(revisions.length + 1);
  following.stop();
  await following.ended;
});

it("hears of every entry of the log once and in order, however often the wire is cut", async () => {
  const direct = clientOf(home.coordinator, free.url);
  const log = async () => (await direct.ask(Log, { householdId: home.id, first: 50 })).household!;
  const { changeCursor: begin } = await log();
  const heard: string[] = [];
  const following = clientOf(home.carers.HELPER!).follow(
    Changes,
    { householdId: home.id, after: begin },
    {
      onEvent: ({ changes }) => heard.push(changes.cursor),
      cursorOf: ({ changes }) => changes.cursor,
      withCursor: (variables, after) => ({ ...variables, after }),
    },
  );
  for (let grams = 1; grams <= 12; grams++) {
    const input = {
      householdId: home.id,
      seenRevision: await home.revision(),
      entries: [{ food: "apple-raw", grams }],
    };
    expect((await direct.send(SetStock, input)).__typename).toBe("KitchenPayload");
    if (grams % 3 === 0) wire.cut();
    if (grams % 4 === 0) await until(() => heard.length > 0);
  }
  const { changeCursor: end, log: page } = await log();
  await until(() => following.cursor() === end);
  const cursors = page.nodes.map(({ cursor }) => cursor);
  expect(heard).toEqual(cursors.slice(0, cursors.indexOf(begin)).reverse());
  expect(heard.length).toBeGreaterThanOrEqual(12);
});

/** A server that answers as it is told, one after the other. */
async function scripted(...answers: ((req: IncomingMessage, res: ServerResponse) => void)[]) {
  const tokens: (string | undefined)[] = [];
  const server = createServer((req, res) => {
    tokens.push(req.headers.authorization);
    req.resume().on("end", () => (answers.shift() ?? ((_, gone) => gone.destroy()))(req, res));
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  closers.push(() => new Promise((resolve) => server.close(resolve).closeAllConnections()));
  return { url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`, tokens };
}
const say =
  (status: number, body: unknown, headers: Record<string, string> = {}) =>
  (_: unknown, res: ServerResponse) =>
    void res.writeHead(status, headers).end(typeof body === "string" ? body : JSON.stringify(body));
const WEEK = { data: { week: null } };
const ASKED = [WeekOf, { householdId: "home", day: DAY }] as const;

describe("a server that is busy", () => {
  it("is asked again no sooner than Retry-After says, in seconds or as a date", async () => {
    const inAWhile = new Date(Date.now() + 20_000).toUTCString();
    const { url } = await scripted(
      say(429, {}, { "retry-after": "7" }),
      say(503, "", { "retry-after": inAWhile }),
      say(502, "<html>"),
      say(200, { data: null, errors: [{ message: "broke", extensions: { code: "INTERNAL" } }] }),
      say(200, WEEK),
    );
    const waits: number[] = [];
    const client = clientOf(home.coordinator, url, {
      random: () => 1,
      wait: (milliseconds) => Promise.resolve(void waits.push(milliseconds)),
    });
    expect(await client.ask(...ASKED)).toEqual(WEEK.data);
    expect(waits[0]).toBe(7_000);
    expect(waits[1]).toBeGreaterThan(15_000);
    expect(waits[1]).toBeLessThanOrEqual(20_000);
    expect(waits.slice(2)).toEqual([1_000, 2_000]);
  });

  it("is left alone when it asks for more than a minute, and after six tries", async () => {
    const far = await scripted(say(429, {}, { "retry-after": "3600" }));
    expect(await troubleOf(clientOf(home.coordinator, far.url).ask(...ASKED))).toEqual({
      kind: "BUSY",
      status: 429,
      retryAfterSeconds: 3600,
    });
    const down = await scripted(...Array.from({ length: 6 }, () => say(503, "")), say(200, WEEK));
    expect(await troubleOf(clientOf(home.coordinator, down.url).ask(...ASKED))).toEqual({
      kind: "BUSY",
      status: 503,
      retryAfterSeconds: null,
    });
    expect(down.tokens).toHaveLength(6);
  });
});

it("asks once for another token when one is refused", async () => {
  const refused = { errors: [{ message: "The token expired." }] };
  const { url, tokens } = await scripted(say(401, refused), say(200, WEEK), say(401, refused), say(401, refused));
  const client = clientOf("", url, { token: (renew) => (renew ? "new" : "old") });
  expect(await client.ask(...ASKED)).toEqual(WEEK.data);
  expect(await troubleOf(client.ask(...ASKED))).toEqual({ kind: "TOKEN", reason: "The token expired." });
  expect(tokens).toEqual(["Bearer old", "Bearer new", "Bearer old", "Bearer new"]);
});

it("tells what does not speak GraphQL from what refuses", async () => {
  const { url } = await scripted(say(404, "<html>nothing here"), say(400, { errors: [{ message: "No such field." }] }));
  const client = clientOf(home.coordinator, url);
  expect(await troubleOf(client.ask(...ASKED))).toEqual({ kind: "PROTOCOL", status: 404, reason: "Not Found" });
  expect(await troubleOf(client.ask(...ASKED))).toMatchObject({ kind: "REFUSED" });
});

describe("how long it waits", () => {
  it("doubles to a most, half of it by chance", () => {
    const waits = (random: number) => [1, 2, 3, 7, 1_000].map((tried) => waitBefore(usualPatience, tried, random));
    expect(waits(1)).toEqual([250, 500, 1_000, 15_000, 15_000]);
    expect(waits(0)).toEqual([125, 250, 500, 7_500, 7_500]);
  });

  /** The two examples of RFC 9110, section 10.2.3. */
  it("reads Retry-After as RFC 9110 has it", () => {
    expect(retryAfter("120", 0)).toBe(120_000);
    expect(retryAfter("Fri, 31 Dec 1999 23:59:59 GMT", Date.UTC(1999, 11, 31, 23, 59, 29))).toBe(30_000);
    expect(retryAfter("Fri, 31 Dec 1999 23:59:59 GMT", Date.UTC(2000, 0, 1))).toBe(0);
    for (const header of [null, "", "soon", "-5"]) expect(retryAfter(header, Date.UTC(2027, 0, 1)) ?? 0).toBe(0);
  });
});
