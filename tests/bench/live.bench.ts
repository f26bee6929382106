/**
 * npm run bench:live: how long it takes from a carer's request to take a task until the other carer of the household is told, with
 * many listening, over HTTP and WebSocket, through our server as `npm start` serves it; and what open subscriptions cost in memory.
 * Once the entry alone is asked for, once with the task itself, which the listener's own rights are asked for anew.
 * Options: `-- --subscribers N --households N --takes N --open N`.
 */
import { randomUUID } from "node:crypto";
import { readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { parseArgs } from "node:util";
import { createClient, type Client } from "graphql-ws";
import postgres from "postgres";
import { WebSocket } from "ws";
import { readConfig } from "../../src/config.js";
import { makeScratchDirectory } from "../../src/database/embedded.js";
import { openDatabase } from "../../src/database/start.js";
import { createRandomStream } from "../../src/domain/planner/random.js";
import { globalId } from "../../src/graphql/global-id.js";
import { createDevIssuer } from "../../src/http/dev-issuer.js";
import { prepareDatabase } from "../../src/prepare-database.js";
import { loadNow, median, printMachine, printTable, quantile } from "./machine.js";
import { freePort, post, startOurs } from "./our-server.js";

const { values: options } = parseArgs({
  options: {
    subscribers: { type: "string", default: "200" },
    households: { type: "string", default: "100" },
    takes: { type: "string", default: "400" },
    open: { type: "string", default: "1000" },
  },
});
const [subscribers, households, takes, open] = [
  Number(options.subscribers),
  Number(options.households),
  Number(options.takes),
  Number(options.open),
];
const TASKS = 20;
const random = createRandomStream(1);
const directory = makeScratchDirectory();
const stops: (() => Promise<unknown>)[] = [];

interface Carer {
  readonly subject: string;
  readonly authorization: string;
}
interface Home {
  readonly id: string;
  readonly carers: readonly Carer[];
  readonly tasks: readonly string[];
}
const SMALL =
  "subscription S($id: ID!) { changes(householdId: $id) { cursor kind subjectId fields { name before after } } }";
const WITH_TASK =
  "subscription S($id: ID!) { changes(householdId: $id) { cursor kind subjectId task { id state takenBy { displayName } } } }";
const documentOf = (verb: "takeTask" | "releaseTask") =>
  `mutation M($input: ${verb === "takeTask" ? "Take" : "Release"}TaskInput!) { ${verb}(input: $input) { __typename } }`;

/** A home with carers and a week of a few tasks. */
async function plantHome(owner: postgres.Sql, carers: readonly { id: string; carer: Carer }[]): Promise<Home> {
  const [home] = await owner<{ id: string }[]>`
    insert into household (name, time_zone, currency) values ('Bench', 'Europe/London', 'GBP') returning id`;
  for (const { id } of carers)
    await owner`insert into membership (household_id, person_id, role) values (${home!.id}, ${id}, 'HELPER')`;
  const [week] = await owner<{ id: string }[]>`
    insert into week (household_id, week_start) values (${home!.id}, '2027-01-11') returning id`;
  const [plan] = await owner<{ id: string }[]>`
    insert into week_plan (week_id, household_id, number, state, seed, steps, problem_hash, catalogue_version, wishes, cautions, ready_uses)
    values (${week!.id}, ${home!.id}, 1, 'DRAFT', 1, 1, '-', '-', '{}', '[]', '[]') returning id`;
  const tasks = await owner<{ id: string }[]>`
    insert into task (week_plan_id, household_id, key, session, kind, text, hands_on_minutes, passive_minutes, equipment, starts_at,
      hands_free_at, ends_at, latest_starts_at, carer)
    select ${plan!.id}, ${home!.id}, 'task-' || n, 'morning-2027-01-11', 'PACK', 'Pack a box', 4, 0, '[]', '07:30', '07:34', '07:34', '07:30', 0
    from generate_series(1, ${TASKS}) n returning id`;
  return {
    id: globalId("Household", home!.id),
    carers: carers.map(({ carer }) => carer),
    tasks: tasks.map(({ id }) => globalId("Task", id)),
  };
}

const resident = (pid: number) =>
  Number(/VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, "utf8"))![1]) / 1024;

async function measure(): Promise<void> {
  const opened = await openDatabase({ dataDirectory: directory });
  stops.push(opened.stop);
  await prepareDatabase(opened.ownerUrl!);
  const owner = postgres(opened.ownerUrl!, { max: 1, onnotice: () => undefined });
  stops.push(() => owner.end());
  const dataDir = join(directory, "server");
  const port = await freePort();
  // A thousand phones have a thousand addresses; here all have one.
  process.env["RATE_SOCKETS"] = "0";
  const server = await startOurs(opened.serverUrl, dataDir, port);
  stops.push(server.stop);
  const subjects = Array.from({ length: Math.max(subscribers, open) }, (_, n) => `bench:live-${n}`);
  const config = readConfig({ NODE_ENV: "development", DATA_DIR: dataDir, PORT: String(port) });
  const issuer = await createDevIssuer(
    config,
    subjects.map((subject) => ({ subject, name: subject, about: "A carer of this benchmark" })),
  );
  const people: { id: string; carer: Carer }[] = [];
  for (const subject of subjects) {
    const token = await issuer.issueToken(subject);
    if (!token.ok) throw new Error("no token for a carer of this benchmark");
    const id = await opened.db.signIn(subject, subject);
    people.push({ id, carer: { subject, authorization: `Bearer ${token.value.access_token}` } });
  }
  const each = Math.ceil(subscribers / households);
  const homes: Home[] = [];
  for (let n = 0; n < Math.ceil(people.length / each); n += 1)
    homes.push(await plantHome(owner, people.slice(n * each, (n + 1) * each)));

  const told = new Map<string, (at: number) => void>();
  const listen = (home: Home, carer: Carer, query: string): Client => {
    const client = createClient({
      url: `${server.url.replace("http", "ws")}/graphql`,
      webSocketImpl: WebSocket,
      connectionParams: { authorization: carer.authorization },
      retryAttempts: 0,
      lazy: false,
      onNonLazyError: () => undefined,
    });
    client.subscribe<{ changes: { subjectId: string } }>(
      { query, variables: { id: home.id } },
      {
        next: ({ data, errors }) => {
          if (errors || !data) throw new Error(JSON.stringify(errors));
          told.get(`${carer.subject} ${data.changes.subjectId}`)?.(performance.now());
        },
        error: (error) => {
          throw new Error(JSON.stringify(error));
        },
        complete: () => undefined,
      },
    );
    return client;
  };

  /** One request after the other, each told to another carer of the same home. */
  async function latencies(query: string): Promise<number[]> {
    const listening = homes
      .flatMap((home) => home.carers.map((carer) => [home, carer] as const))
      .slice(0, subscribers)
      .map(([home, carer]) => listen(home, carer, query));
    await wait(3_000);
    const took: number[] = [];
    const held = new Map<string, Carer>();
    for (let n = 0; n < takes; n += 1) {
      const home = homes[random.below(households)]!;
      const task = home.tasks[random.below(TASKS)]!;
      const holder = held.get(task);
      const actor = holder ?? home.carers[random.below(home.carers.length)]!;
      const verb = holder ? "releaseTask" : "takeTask";
      const others = home.carers.filter((carer) => carer !== actor);
      const other = others[random.below(others.length)]!;
      const key = `${other.subject} ${task}`;
      const heard = new Promise<number>((resolve) => told.set(key, resolve));
      const began = performance.now();
      const answered = post<Record<string, { __typename: string }>>(
        `${server.url}/graphql`,
        actor.authorization,
        JSON.stringify({
          query: documentOf(verb),
          variables: { input: { idempotencyKey: randomUUID(), taskId: task, seenRevision: 0 } },
        }),
      );
      took.push((await heard) - began);
      told.delete(key);
      const said = (await answered)[verb]!.__typename;
      if (said !== "TaskPayload") throw new Error(`${verb}: ${said}`);
      if (holder) held.delete(task);
      else held.set(task, actor);
    }
    for (const [task, holder] of held)
      await post(
        `${server.url}/graphql`,
        holder.authorization,
        JSON.stringify({
          query: documentOf("releaseTask"),
          variables: { input: { idempotencyKey: randomUUID(), taskId: task, seenRevision: 0 } },
        }),
      );
    for (const client of listening) await client.dispose();
    return took;
  }

  printMachine();
  const rows: string[][] = [];
  for (const [name, query] of [
    ["the entry alone", SMALL],
    ["with the task read as the listener", WITH_TASK],
  ] as const) {
    const took = await latencies(query);
    rows.push([
      name,
      ...[median(took), quantile(took, 0.95), Math.max(...took)].map((ms) => `${ms.toFixed(1)} ms`),
      loadNow(),
    ]);
  }
  console.log(
    `a task taken or released until another carer is told, ${subscribers} subscribers in ${households} homes, ${takes} each:`,
  );
  printTable(["asked for", "median", "p95", "worst", "load"], rows);

  await wait(2_000);
  const before = resident(server.pid);
  const opening = homes.flatMap((home) => home.carers.map((carer) => [home, carer] as const)).slice(0, open);
  const clients: Client[] = [];
  for (const [home, carer] of opening) {
    clients.push(listen(home, carer, SMALL));
    if (clients.length % 50 === 0) await wait(200);
  }
  await wait(5_000);
  const after = resident(server.pid);
  console.log(
    `${clients.length} open subscriptions, a socket each: ${(after - before).toFixed(0)} MB more, ${after.toFixed(0)} MB resident in all`,
  );
  for (const client of clients) void client.dispose();
  await wait(500);
}

try {
  await measure();
} finally {
  for (const stop of stops.reverse()) await stop();
  rmSync(directory, { recursive: true, force: true });
}
