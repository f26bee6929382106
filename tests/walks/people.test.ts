import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createClient } from "graphql-ws";
import WebSocket from "ws";
import { readConfig } from "../../src/config.js";
import { readDemoFiles } from "../../src/database/seed.js";
import { createContextOpener } from "../../src/graphql/open-context.js";
import { createDevIssuer } from "../../src/http/dev-issuer.js";
import { createHttpServer, type HttpServer } from "../../src/http/server.js";
import { createVerifier } from "../../src/http/tokens.js";
import { createLog } from "../../src/log.js";
import { ABSENT, AGREE, DAY, HOMES, LABEL, LOAD, PACK, PLAN, SWAP, TAKE } from "../graphql/documents.js";
import { newKey, useApp } from "../support/app.js";

const parts = useApp();
const directory = mkdtempSync(join(tmpdir(), "noonpail-walk-"));
let server: HttpServer;
let url: string;

beforeAll(async () => {
  const config = readConfig({ PORT: "0", DATA_DIR: directory, NODE_ENV: "test", LOG_LEVEL: "silent" });
  const issuer = await createDevIssuer(config, readDemoFiles().people);
  server = createHttpServer({
    config,
    log: createLog(config.logLevel),
    schema: parts.schema,
    openContext: createContextOpener(parts.app, parts.notices),
    rates: parts.app.rates,
    verify: createVerifier(config, issuer.keys),
    issuer,
    isReady: () => Promise.resolve({ ready: true, checks: {} }),
    explorerQuery: "{ me { person { displayName } } }",
  });
  ({ url } = await server.start());
});
afterAll(async () => {
  await server.stop();
  rmSync(directory, { recursive: true, force: true });
});

type Client = <T>(query: string, variables?: Record<string, unknown>) => Promise<T>;

/** A person with a token, who asks in words of their own. */
async function signIn(person: string): Promise<Client> {
  const send = (path: string, body: unknown, headers: Record<string, string> = {}) =>
    fetch(url + path, {
      method: "POST",
      headers: { "content-type": "application/json", ...headers },
      body: JSON.stringify(body),
    });
  const { access_token: token } = (await (await send("/dev/token", { person })).json()) as { access_token: string };
  return async <T>(query: string, variables = {}) => {
    const answer: any = await (
      await send("/graphql", { query, variables }, { authorization: `Bearer ${token}` })
    ).json();
    expect(answer.errors).toBeUndefined();
    return answer.data as T;
  };
}

const send = async (client: Client, document: string, input: Record<string, unknown>): Promise<any> =>
  Object.values(await client<Record<string, unknown>>(document, { input: { idempotencyKey: newKey(), ...input } }))[0];
const home = async (client: Client): Promise<any> => (await client<any>(HOMES, { day: DAY })).me.households[0];

/** The first `count` events of a subscription, and a way to wait for them. */
async function listen(person: string, query: string, variables: Record<string, unknown>, count: number) {
  const token = (await (
    await fetch(`${url}/dev/token`, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ person }),
    })
  ).json()) as { access_token: string };
  const client = createClient({
    url: `${url.replace("http", "ws")}/graphql`,
    webSocketImpl: WebSocket,
    connectionParams: { authorization: `Bearer ${token.access_token}` },
  });
  const events: any[] = [];
  const done = new Promise<any[]>((resolve, reject) => {
    const stop = client.subscribe(
      { query, variables },
      {
        next: ({ data }) => {
          events.push(data);
          if (events.length === count) {
            resolve(events);
            stop();
          }
        },
        error: reject,
        complete: () => resolve(events),
      },
    );
  });
  // The subscription is in place once the socket has answered; there is no acknowledgement of one operation.
  await new Promise((resolve) => setTimeout(resolve, 300));
  return { done, dispose: () => client.dispose() };
}

it("a family app plans a week, hears of it, changes a fruit and settles it", async () => {
  const ana = await signIn("demo:ana");
  const { id } = await home(ana);
  const progress = await listen(
    "demo:tom",
    "subscription Progress($id: ID!) { planProgress(householdId: $id) { weekStart percent bestPoints } }",
    { id },
    2,
  );
  const changed = await listen(
    "demo:iris",
    "subscription Changed($id: ID!) { weekChanged(householdId: $id) { revision plan { boxes { date } } } }",
    { id },
    1,
  );
  const planned = await send(ana, PLAN, { householdId: id, date: DAY, seenRevision: 0 });
  expect(planned.__typename).toBe("WeekPayload");
  const heard = await progress.done;
  expect(heard.map(({ planProgress }) => planProgress.percent)).toEqual([0, 100]);
  const [event] = await changed.done;
  expect(event.weekChanged).toMatchObject({ revision: 1 });
  expect(event.weekChanged.plan.boxes).toHaveLength(13);
  await Promise.all([progress.dispose(), changed.dispose()]);

  const fruit = planned.week.plan.boxes[0].items.find(({ slot }: any) => slot === "FRUIT");
  const { alternatives } = await ana<any>("query Others($id: ID!) { alternatives(itemId: $id) { dish { key } } }", {
    id: fruit.id,
  });
  const swapped = await send(ana, SWAP, { itemId: fruit.id, dish: alternatives[0].dish.key, seenRevision: 1 });
  expect(swapped.week.revision).toBe(2);
  const { week } = await home(ana);
  expect((await send(ana, AGREE, { weekId: week.id, seenRevision: 2 })).week.plan.state).toBe("AGREED");
});

it("two carers share the morning: one task each, labels read, a box packed, a sick child", async () => {
  const [tom, iris] = [await signIn("demo:tom"), await signIn("demo:iris")];
  const { id, revision, children, week } = await home(tom);
  const task = week.plan.tasks.find(({ state }: any) => state === "OPEN");
  const taken = await Promise.all(
    [tom, iris].map((carer) => send(carer, TAKE, { taskId: task.id, seenRevision: week.revision })),
  );
  expect(taken.map(({ __typename }) => __typename).sort()).toEqual(["TaskHeld", "TaskPayload"]);

  const box = week.plan.boxes.find(({ child: { name } }: any) => name === "Mina");
  const pack = async () =>
    send(iris, PACK, {
      boxId: box.id,
      packedAt: `${box.date}T07:12:00Z`,
      seenRevision: (await home(iris)).week.revision,
    });
  const unread = await pack();
  expect(unread.__typename).toBe("LabelsUnread");
  let seenRevision = revision as number;
  for (const { key } of unread.foods) {
    const read = await send(iris, LABEL, {
      householdId: id,
      seenRevision,
      food: key,
      contains: [],
      mayContain: [],
      readOn: "2026-11-25",
    });
    seenRevision = read.household.revision;
  }
  expect((await pack()).__typename).toBe("WeekPayload");
  const pia = children.find(({ name }: any) => name === "Pia");
  const replanned = await send(iris, ABSENT, {
    householdId: id,
    childId: pia.id,
    date: "2027-01-14",
    seenRevision: (await home(iris)).week.revision,
  });
  expect(replanned.__typename).toBe("WeekPayload");
  expect(replanned.week.plan.boxes).toHaveLength(12);
});

it("an administrator loads a rule set and sees it in force", async () => {
  const ruth = await signIn("demo:ruth");
  const [school] = (await ruth<any>(HOMES, { day: DAY })).me.administers;
  const document = {
    format: "noonpail-rule-set/1",
    key: "walk-kiwi",
    title: "Kiwi",
    layer: "SCHOOL",
    coversFoodFromHome: true,
    language: "en",
    version: 1,
    inForceFrom: "2027-01-04",
    rules: [
      {
        id: "no-kiwi",
        kind: "EXCLUDE",
        says: "No kiwi this term.",
        level: "FORBID",
        source: "own rule of an invented school",
        matches: { anyOf: [{ kinds: ["kiwi"] }] },
      },
    ],
  };
  const broken = await send(ruth, LOAD, {
    schoolId: school.id,
    seenRevision: 0,
    document: JSON.stringify({ ...document, version: 0 }),
  });
  expect(broken.issues[0]).toMatchObject({ path: "version", line: 1 });
  const loaded = await send(ruth, LOAD, { schoolId: school.id, seenRevision: 0, document: JSON.stringify(document) });
  expect(loaded.ruleSet).toMatchObject({ key: "walk-kiwi", version: 1 });
  const [after] = (await ruth<any>(HOMES, { day: DAY })).me.administers;
  expect(after.ruleSets).toContainEqual({ key: "walk-kiwi", version: 1 });
});

it("a stranger's subscription ends without a word", async () => {
  const { id } = await home(await signIn("demo:ana"));
  const heard = await listen(
    "demo:leo",
    "subscription Changed($id: ID!) { weekChanged(householdId: $id) { revision } }",
    { id },
    1,
  );
  expect(await heard.done).toEqual([]);
  await heard.dispose();
});
