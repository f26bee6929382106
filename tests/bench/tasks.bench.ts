/**
 * npm run bench:tasks: carers of one household who take, release, do and take back the same tasks at random, over HTTP, through our
 * server as `npm start` serves it. Every change says which revision of the week it made, so that all of them can be put in the order
 * in which the database did them and played again: no task may ever have two holders, and nothing may be refused without a type.
 * Exit 1 when one is. Options: `-- --carers N --tasks N --seconds N --seed N`.
 */
import { randomUUID } from "node:crypto";
import { rmSync } from "node:fs";
import { Agent, request } from "node:http";
import { join } from "node:path";
import { parseArgs } from "node:util";
import postgres from "postgres";
import { readConfig } from "../../src/config.js";
import { makeScratchDirectory } from "../../src/database/embedded.js";
import { readDemoFiles, seedDemo } from "../../src/database/seed.js";
import { openDatabase } from "../../src/database/start.js";
import { createRandomStream } from "../../src/domain/planner/random.js";
import { globalId } from "../../src/graphql/global-id.js";
import { createDevIssuer } from "../../src/http/dev-issuer.js";
import { prepareDatabase } from "../../src/prepare-database.js";
import { replayTasks, type TaskChangeDone, type TaskVerb } from "../support/replay-tasks.js";
import { loadNow, median, printMachine, printTable, quantile } from "./machine.js";
import { freePort, post, startOurs } from "./our-server.js";

const { values: options } = parseArgs({
  options: {
    carers: { type: "string", default: "50" },
    tasks: { type: "string", default: "20" },
    seconds: { type: "string", default: "30" },
    seed: { type: "string", default: "1" },
  },
});
const [carers, taskCount, seconds] = [Number(options.carers), Number(options.tasks), Number(options.seconds)];
const random = createRandomStream(Number(options.seed));

/** The mutations and how often of ten each is tried. */
const verbs: Readonly<Record<TaskVerb, number>> = { takeTask: 4, releaseTask: 2, finishTask: 2, undoTask: 2 };
const draw = Object.entries(verbs).flatMap(([verb, times]) => Array<TaskVerb>(times).fill(verb as TaskVerb));
const documentOf = (verb: TaskVerb) =>
  `mutation M($input: ${verb[0]!.toUpperCase()}${verb.slice(1)}Input!) { ${verb}(input: $input) { __typename
    ... on UserError { message } ... on TaskPayload { revision task { state takenBy { id } } } } }`;

interface Said {
  readonly __typename: string;
  readonly revision: number;
  readonly task: { readonly state: string; readonly takenBy: { readonly id: string } | null };
}

const agent = new Agent({ keepAlive: true, maxSockets: carers });
/** The answer's body, whatever its status. */
const send = (url: string, authorization: string, body: string): Promise<string> =>
  new Promise((resolve, reject) => {
    const headers = {
      authorization,
      accept: "application/json",
      "content-type": "application/json",
      "content-length": Buffer.byteLength(body),
    };
    const req = request(url, { agent, method: "POST", headers }, (res) => {
      let text = "";
      res.setEncoding("utf8");
      res.on("data", (chunk: string) => (text += chunk));
      res.on("end", () => resolve(text));
      res.on("error", reject);
    });
    req.on("error", reject);
    req.end(body);
  });

const directory = makeScratchDirectory();
const stops: (() => Promise<unknown>)[] = [];

async function measure(): Promise<void> {
  const opened = await openDatabase({ dataDirectory: directory });
  stops.push(opened.stop);
  await prepareDatabase(opened.ownerUrl!);
  await seedDemo(opened.ownerUrl!);
  const demo = readDemoFiles();
  const home = demo.homes[0]!;
  const date = demo.residence.demoWeek;
  const owner = postgres(opened.ownerUrl!, { max: 1, onnotice: () => undefined });
  stops.push(() => owner.end());
  const dataDir = join(directory, "server");
  const port = await freePort();
  const server = await startOurs(opened.serverUrl, dataDir, port);
  stops.push(server.stop);

  // The server's issuer knows the demonstration's people only; its key, which lies in the data folder, signs for the others too.
  const subjects = Array.from({ length: carers }, (_, n) => `bench:carer-${n}`);
  const config = readConfig({ NODE_ENV: "development", DATA_DIR: dataDir, PORT: String(port) });
  const issuer = await createDevIssuer(
    config,
    subjects.map((subject) => ({ subject, name: subject, about: "A carer of this benchmark" })),
  );
  const people: { readonly id: string; readonly authorization: string }[] = [];
  for (const subject of subjects) {
    const token = await issuer.issueToken(subject);
    if (!token.ok) throw new Error("no token for a carer of this benchmark");
    const id = await opened.db.signIn(subject, subject);
    await owner`insert into membership (household_id, person_id, role) values (${home.id}, ${id}, 'HELPER')`;
    people.push({ id: globalId("Person", id), authorization: `Bearer ${token.value.access_token}` });
  }
  const householdId = globalId("Household", home.id);
  const boss = await server.token("demo:ana");
  await post(
    `${server.url}/graphql`,
    boss,
    JSON.stringify({
      query: "mutation P($input: PlanWeekInput!) { planWeek(input: $input) { __typename } }",
      variables: { input: { idempotencyKey: randomUUID(), householdId, date, seenRevision: 0 } },
    }),
  );
  const readWeek = async () =>
    (
      await server.ask<{
        week: { revision: number; plan: { tasks: { id: string; state: string; takenBy: { id: string } | null }[] } };
      }>(
        boss,
        "query W($householdId: ID!, $date: LocalDate!) { week(householdId: $householdId, date: $date) { revision plan { tasks { id state takenBy { id } } } } }",
        { householdId, date },
      )
    ).week;
  const week = await readWeek();
  const tasks = week.plan.tasks.slice(0, taskCount).map(({ id }) => id);

  const done: TaskChangeDone[] = [];
  const refused = new Map<string, number>();
  const untyped: string[] = [];
  const faults: string[] = [];
  const took: number[] = [];
  const until = performance.now() + seconds * 1000;
  await Promise.all(
    people.map(async ({ id: carer, authorization }) => {
      // What they hold or have done, as far as they know: every other request is about one of these.
      const own = new Set<string>();
      while (performance.now() < until) {
        const verb = draw[random.below(draw.length)]!;
        const among = own.size > 0 && random.below(2) === 0 ? [...own] : tasks;
        const task = among[random.below(among.length)]!;
        const input = { idempotencyKey: randomUUID(), taskId: task, seenRevision: 0 };
        const began = performance.now();
        const text = await send(
          `${server.url}/graphql`,
          authorization,
          JSON.stringify({ query: documentOf(verb), variables: { input } }),
        );
        took.push(performance.now() - began);
        const said = (JSON.parse(text) as { data?: Record<string, Said> | null }).data?.[verb];
        if (!said) untyped.push(text.slice(0, 300));
        else if (said.__typename === "TaskPayload") {
          done.push({ verb, carer, task, revision: said.revision });
          if (verb === "releaseTask") own.delete(task);
          else own.add(task);
          const holder = said.task.takenBy?.id ?? null;
          // Read after it was done: by then the next carer may hold it, but never somebody who did not say so.
          if (holder !== null && !people.some(({ id }) => id === holder)) faults.push(`${verb}: held by a stranger`);
        } else refused.set(`${verb} ${said.__typename}`, (refused.get(`${verb} ${said.__typename}`) ?? 0) + 1);
      }
    }),
  );
  const played = replayTasks(done, week.revision);
  const after = await readWeek();
  for (const { id, state, takenBy } of after.plan.tasks.filter((task) => tasks.includes(task.id))) {
    const expected = played.tasks.get(id) ?? "OPEN -";
    if (expected !== `${state} ${takenBy?.id ?? "-"}`)
      faults.push(`a task is ${state} and not, as played, ${expected}`);
  }
  if (after.revision !== week.revision + done.length) faults.push("the week has changed more often than was answered");

  printMachine();
  console.log(
    `${carers} carers, ${tasks.length} tasks, ${seconds} s: ${took.length} requests, ${(took.length / seconds).toFixed(0)} a second, ` +
      `median ${median(took).toFixed(0)} ms, p95 ${quantile(took, 0.95).toFixed(0)} ms, worst ${Math.max(...took).toFixed(0)} ms, load ${loadNow()} at the end`,
  );
  printTable(
    ["answer", "times"],
    [
      ...Object.keys(verbs).map((verb) => [`${verb} done`, String(done.filter((one) => one.verb === verb).length)]),
      ...[...refused].sort().map(([what, times]) => [what, String(times)]),
    ],
  );
  const wrong = [...played.faults, ...faults];
  for (const fault of [...wrong, ...untyped].slice(0, 20)) console.log(fault);
  console.log(
    `${wrong.length === 0 ? "holds" : "BROKEN"}: never two holders (${wrong.length} faults in ${done.length} changes)`,
  );
  console.log(`${untyped.length === 0 ? "holds" : "BROKEN"}: no error without a type (${untyped.length})`);
  if (wrong.length + untyped.length > 0) process.exitCode = 1;
}

try {
  await measure();
} finally {
  agent.destroy();
  for (const stop of stops.reverse()) await stop();
  rmSync(directory, { recursive: true, force: true });
}
