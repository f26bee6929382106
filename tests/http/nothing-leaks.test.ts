import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { jest } from "@jest/globals";
import { createClient } from "graphql-ws";
import { WebSocket } from "ws";
import type { App, Planner } from "../../src/app/app.js";
import { readConfig } from "../../src/config.js";
import { createContextOpener } from "../../src/graphql/open-context.js";
import { createDevIssuer } from "../../src/http/dev-issuer.js";
import { createHttpServer, type HttpServer } from "../../src/http/server.js";
import { createVerifier } from "../../src/http/tokens.js";
import type { JobHandlers, JobQueue } from "../../src/jobs/queue.js";
import { createLog } from "../../src/log.js";
import { workOnJobs } from "../../src/work-on-jobs.js";
import { CHILD, DAY, ENROL, FOUND, HOMES, PLAN, STOCK, SWAP } from "../graphql/documents.js";
import { newKey, useApp } from "../support/app.js";
import { classId, localOf } from "../support/served-app.js";

// OWASP API Security Top 10 2023, API3 "Broken Object Property Level Authorization" and API8 "Security Misconfiguration" (error
// messages with details); OWASP Logging Cheat Sheet, "Data to exclude"; RFC 6750, section 5.3, of tokens.
const parts = useApp();
const directory = mkdtempSync(join(tmpdir(), "noonpail-leaks-"));

/** Each stands for something that must not get out; none is part of any word of ours. */
const MARK = {
  child: "Zyxchild",
  home: "Zyxhome",
  person: "zyx-person",
  note: "Zyxnote",
  dish: "zyx-dish",
} as const;
const MARKED = /zyx/i;
const STRANGER = "somebody-else";

const lines: string[] = [];
const printed: string[] = [];
const log = createLog("trace", { write: (line: string) => void lines.push(line) });

/** What breaks next: each writes a row's content into its error, as drivers and parsers do. */
type Breakage = "write" | "unique" | "read" | "sign-in" | "planner" | "json" | null;
let broken: Breakage = null;

let server: HttpServer;
let app: App;
let url: string;
const tokens = new Map<string, string>();

beforeAll(async () => {
  for (const stream of [process.stdout, process.stderr])
    jest.spyOn(stream, "write").mockImplementation((chunk: unknown) => {
      printed.push(String(chunk));
      return true;
    });
  for (const method of ["log", "info", "warn", "error", "debug"] as const)
    jest
      .spyOn(console, method)
      .mockImplementation((...words: unknown[]) => void printed.push(words.map(String).join(" ")));
  const { db, planner } = parts.app;
  app = {
    ...parts.app,
    db: {
      ...db,
      asPerson: (person, work) =>
        db.asPerson(person, async (tx) => {
          if (broken === "write") await tx.$executeRawUnsafe(`select '${MARK.child}'::uuid`);
          if (broken === "unique")
            await tx.household.create({ data: { name: MARK.home, timeZone: MARK.note, currency: "GBP" } });
          return work(tx);
        }),
      openRead(person) {
        const session = db.openRead(person);
        return broken === "read"
          ? { ...session, read: () => session.read((tx) => tx`select ${MARK.child}::uuid`) as never }
          : session;
      },
      signIn: (subject, name) =>
        broken === "sign-in"
          ? Promise.reject(new Error(`person ${MARK.person} cannot be read`))
          : db.signIn(subject, name),
    },
    planner: {
      ...planner,
      plan(request, ...rest) {
        if (broken === "planner") return Promise.reject(new TypeError(`${MARK.child} avoids ${MARK.note}`));
        if (broken === "json") return Promise.resolve().then(() => JSON.parse(`${MARK.child} eats`) as never);
        return planner.plan(request, ...rest);
      },
    } satisfies Planner,
  };
  const config = readConfig({ PORT: "0", DATA_DIR: directory, NODE_ENV: "test", LOG_LEVEL: "trace" });
  const issuer = await createDevIssuer(
    config,
    [MARK.person, STRANGER].map((subject) => ({ subject, name: subject, about: "of this test" })),
  );
  server = createHttpServer({
    config,
    log,
    schema: parts.schema,
    openContext: createContextOpener(app, parts.notices),
    rates: app.rates,
    verify: createVerifier(config, issuer.keys),
    issuer,
    isReady: () =>
      broken === "read" ? Promise.reject(new Error(MARK.home)) : Promise.resolve({ ready: true, checks: {} }),
    explorerQuery: "{ __typename }",
  });
  ({ url } = await server.start());
  for (const person of [MARK.person, STRANGER]) {
    const token = await issuer.issueToken(person);
    if (token.ok) tokens.set(person, token.value.access_token);
  }
});
afterAll(async () => {
  await server.stop();
  jest.restoreAllMocks();
  rmSync(directory, { recursive: true, force: true });
});

/** The raw text of an answer: whatever is in it. */
async function send(person: string | null, body: unknown, more: Record<string, string> = {}): Promise<string> {
  const authorization: Record<string, string> =
    person === null ? {} : { authorization: `Bearer ${tokens.get(person)}` };
  const response = await fetch(`${url}/graphql`, {
    method: "POST",
    headers: { "content-type": "application/json", ...authorization, ...more },
    body: typeof body === "string" ? body : JSON.stringify(body),
  });
  return `${JSON.stringify([...response.headers])} ${await response.text()}`;
}
const dataOf = (answer: string) =>
  Object.values(
    (JSON.parse(answer.slice(answer.indexOf("] {") + 2)) as { data: Record<string, Record<string, unknown>> }).data,
  )[0]!;
const mutate = (person: string, query: string, input: Record<string, unknown>) =>
  send(person, { query, variables: { input: { idempotencyKey: newKey(), ...input } } });

/** No marker and no token in the log, nor in anything the process printed. */
function expectSilence(): void {
  const everything = [...lines, ...printed].join("\n");
  expect(everything.match(/.{0,80}zyx.{0,40}/gi) ?? []).toEqual([]);
  for (const token of tokens.values()) expect(everything).not.toContain(token.split(".")[2]);
}

let homeId: string;
let childId: string;
let revision = 1;

it("a family that is founded and planned leaves its names to nobody but itself", async () => {
  const home = dataOf(
    await mutate(MARK.person, FOUND, { name: MARK.home, timeZone: "Europe/London", currency: "GBP" }),
  );
  homeId = (home["household"] as { id: string }).id;
  const kitchen = { householdId: homeId };
  const child = await mutate(MARK.person, CHILD, {
    ...kitchen,
    seenRevision: revision++,
    name: MARK.child,
    dateOfBirth: "2013-05-20",
    compartments: [
      { ml: 850, leakProof: true },
      { ml: 300, leakProof: false },
      { ml: 300, leakProof: true },
    ],
    leaveAt: "08:10",
    allergies: [{ allergen: "EGG", avoid: "TRACES" }],
  });
  expect(child).toContain(MARK.child);
  childId = (dataOf(child)["child"] as { id: string }).id;
  await mutate(MARK.person, ENROL, {
    ...kitchen,
    seenRevision: revision++,
    childId,
    schoolClassId: classId("year-8"),
    fromDate: "2026-09-01",
  });
  await mutate(MARK.person, PLAN, { ...kitchen, date: DAY, seenRevision: 0 });
  expect(await send(MARK.person, { query: HOMES, variables: { day: DAY } })).toContain(MARK.child);
  expectSilence();
});

it("what is refused is told to the sender alone", async () => {
  const kitchen = { householdId: homeId, seenRevision: revision };
  const answers = [
    await mutate(STRANGER, CHILD, {
      ...kitchen,
      name: "Bo",
      dateOfBirth: "2019-02-03",
      compartments: [{ ml: 600, leakProof: true }],
      leaveAt: "08:00",
    }),
    await mutate(STRANGER, STOCK, { ...kitchen, entries: [{ food: "apple-raw", grams: 1 }] }),
    await mutate(STRANGER, PLAN, { householdId: homeId, date: DAY, seenRevision: 1 }),
    await mutate(STRANGER, SWAP, { itemId: homeId, dish: "apple-raw", seenRevision: 1 }),
    await send(STRANGER, {
      query: "query Q($id: ID!) { household(id: $id) { name } node(id: $id) { id } }",
      variables: { id: homeId },
    }),
    await send(STRANGER, {
      query: "query Q($id: ID!) { node(id: $id) { id ... on Child { name } } }",
      variables: { id: childId },
    }),
    await send(STRANGER, { query: HOMES, variables: { day: DAY } }),
  ];
  for (const answer of answers) expect(answer).not.toMatch(MARKED);
  await mutate(MARK.person, CHILD, {
    ...kitchen,
    name: `${MARK.child}${"x".repeat(100)}`,
    dateOfBirth: "soon",
    compartments: [],
    leaveAt: MARK.note,
  });
  await mutate(MARK.person, SWAP, { itemId: MARK.note, dish: MARK.dish, seenRevision: 1 });
  await mutate(MARK.person, STOCK, {
    householdId: homeId,
    seenRevision: revision,
    entries: [{ food: MARK.dish, grams: -1 }],
  });
  expectSilence();
});

it("requests that are broken themselves are not repeated in the log", async () => {
  const query = "query Q($id: ID!) { node(id: $id) { id } }";
  for (const body of [
    `{"query": "{ ${MARK.child}`,
    { query: `{ node(id: "${MARK.child}" }` },
    { query: `{ ${MARK.dish.replace("-", "")} }` },
    { query, variables: { id: { name: MARK.child } } },
    { query: "query Q($d: LocalDate!) { labelLaws(on: $d) { law } }", variables: { d: MARK.note } },
    { query: `{ labelLaws(on: "${MARK.note}") { law } }` },
    { query, operationName: MARK.child, variables: { id: "x" } },
    { query: "query Q($s: Slot) { dishes(slot: $s) { nodes { name } } }", variables: { s: MARK.dish } },
    { query, variables: { id: "x" }, extensions: { persistedQuery: { version: 1, sha256Hash: MARK.note } } },
    { query, variables: { id: "x", list: Array(1_001).fill(MARK.child) } },
    { query, variables: [MARK.child] },
    MARK.child.repeat(60_000),
  ])
    await send(MARK.person, body);
  await send(null, { query, variables: { id: MARK.child } });
  await send(null, { query: "{ __typename }" }, { authorization: `Bearer ${MARK.person}.${MARK.note}.${MARK.child}` });
  await send(
    MARK.person,
    { query: "{ __typename }" },
    { "x-request-id": `${MARK.child}, ${MARK.child}`, accept: `application/${MARK.note}` },
  );
  await fetch(`${url}/children/${MARK.child}?name=${MARK.child}`);
  await fetch(`${url}/graphql?query=${encodeURIComponent(`{ node(id: "${MARK.child}") { id } }`)}`);
  await fetch(`${url}/dev/token`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ person: MARK.note }),
  });
  expectSilence();
});

it("neither are those of a socket", async () => {
  const talk = (
    connectionParams: Record<string, unknown>,
    payload: { query: string; variables?: Record<string, unknown> },
    act?: () => Promise<unknown>,
  ) =>
    new Promise<void>((resolve) => {
      const client = createClient({
        url: `${url.replace("http", "ws")}/graphql`,
        webSocketImpl: WebSocket,
        connectionParams,
        retryAttempts: 0,
        onNonLazyError: () => undefined,
      });
      const end = () => void Promise.resolve(client.dispose()).then(() => resolve());
      client.subscribe(payload, { next: end, error: end, complete: end });
      if (act) setTimeout(() => void act(), 500);
    });
  const query = "subscription S($id: ID!) { weekChanged(householdId: $id) { id plan { boxes { child { name } } } } }";
  const authorization = `Bearer ${tokens.get(MARK.person)}`;
  await talk({ authorization: `Bearer ${MARK.person}.x.y`, name: MARK.child }, { query });
  await talk({ authorization }, { query, variables: { id: { name: MARK.child } } });
  await talk({ authorization }, { query: `subscription { ${MARK.child} }` });
  await talk({ authorization }, { query: `subscription { ${MARK.child}` });
  await talk({ authorization }, { query, variables: { id: MARK.note } });
  await talk({ authorization: `Bearer ${tokens.get(STRANGER)}` }, { query, variables: { id: homeId } });
  await talk({ authorization }, { query, variables: { id: homeId } }, async () => {
    await mutate(MARK.person, PLAN, { householdId: homeId, date: DAY, seenRevision: 1 });
  });
  broken = "read";
  await talk({ authorization }, { query, variables: { id: homeId } });
  broken = null;
  expectSilence();
});

it.each<Exclude<Breakage, null>>(["write", "unique", "read", "planner", "json"])(
  "a fault that quotes a row is logged by its kind and place, and answered with a number: %s",
  async (what) => {
    const before = lines.length;
    broken = what;
    try {
      const answers = [
        await mutate(MARK.person, PLAN, { householdId: homeId, date: DAY, seenRevision: 9, replanAgreed: true }),
        // A week nobody has planned, so that the planner is asked.
        await mutate(MARK.person, PLAN, {
          householdId: homeId,
          date: "2027-01-18",
          seenRevision: what === "read" ? 9 : 0,
        }),
        await mutate(STRANGER, FOUND, { name: "Elsewhere", timeZone: "Europe/London", currency: "GBP" }),
        await send(STRANGER, { query: HOMES, variables: { day: DAY } }),
        await (await fetch(`${url}/health/ready`)).text(),
      ];
      expect(answers.filter((answer) => MARKED.test(answer))).toEqual([]);
    } finally {
      broken = null;
    }
    const faults = lines.slice(before).filter((line) => line.includes('"level":"error"'));
    expect(faults.length).toBeGreaterThan(0);
    expect(faults.join("\n")).toMatch(/"stack":"at .+:\d+:\d+/);
    expectSilence();
  },
);

it("a sign-in that fails says nothing of whose it was", async () => {
  broken = "sign-in";
  try {
    const opener = createContextOpener(app, parts.notices);
    await expect(opener({ subject: MARK.person, requestId: "x" })).rejects.toThrow();
    // Nobody has been seen by a server that has just started.
    const config = readConfig({ PORT: "0", DATA_DIR: directory, NODE_ENV: "test" });
    const issuer = await createDevIssuer(config, [{ subject: MARK.person, name: "x", about: "x" }]);
    const second = createHttpServer({
      config,
      log,
      schema: parts.schema,
      openContext: opener,
      rates: app.rates,
      verify: createVerifier(config, issuer.keys),
      issuer,
      isReady: () => Promise.resolve({ ready: true, checks: {} }),
      explorerQuery: "{ __typename }",
    });
    const started = await second.start();
    const token = await issuer.issueToken(MARK.person);
    const response = await fetch(`${started.url}/graphql`, {
      method: "POST",
      headers: {
        "content-type": "application/json",
        authorization: `Bearer ${token.ok ? token.value.access_token : ""}`,
      },
      body: JSON.stringify({ query: "{ me { person { displayName } } }" }),
    });
    expect(await response.text()).not.toMatch(MARKED);
    await second.stop();
  } finally {
    broken = null;
  }
  expectSilence();
});

it("a job that breaks off is logged by its number alone", async () => {
  let handlers: JobHandlers | undefined;
  await workOnJobs(
    app,
    {
      work: (given: JobHandlers) => Promise.resolve(void (handlers = given)),
      every: () => undefined,
    } as unknown as JobQueue,
    log,
  );
  const job = {
    id: newKey(),
    personId: await app.db.signIn(MARK.person, MARK.person),
    householdId: localOf(homeId),
    weekStart: "2027-01-25",
    steps: 1_000,
    input: {
      idempotencyKey: newKey(),
      householdId: localOf(homeId),
      date: "2027-01-25",
      seenRevision: 0,
      replanAgreed: false,
    },
  };
  broken = "planner";
  await expect(handlers!.work(job)).rejects.toThrow(TypeError);
  broken = null;
  expect(lines.some((line) => line.includes("plan job broke off") && line.includes(job.id))).toBe(true);
  expectSilence();
});

it("the log says enough to find a fault: kind, code of the database, place in the source", () => {
  const errors = lines
    .map((line) => JSON.parse(line) as { err?: { type: string; code?: string; stack: string } })
    .flatMap(({ err }) => err ?? []);
  expect(new Set(errors.map(({ type }) => type)).size).toBeGreaterThan(2);
  // invalid_text_representation, PostgreSQL documentation, appendix A.
  expect(errors.some(({ code }) => code === "22P02")).toBe(true);
  expect(errors.every(({ stack }) => stack === "" || /^at /.test(stack))).toBe(true);
});
