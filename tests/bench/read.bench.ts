/**
 * npm run bench:read: one household's whole week, read through our server as `npm start` serves it and through three peers,
 * from the same database, with the same token check and row security. Every server runs in a process of its own; rounds are
 * interleaved, so that whatever else the machine does falls on all of them. Peers run with NODE_ENV=production, ours without.
 * Options: `-- --rounds N --seconds N --connections N --flags="..."`, the last for more of Node's flags on our server.
 */
import { execFileSync, fork } from "node:child_process";
import { existsSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { isDeepStrictEqual, parseArgs } from "node:util";
import { fileURLToPath } from "node:url";
import { setTimeout as wait } from "node:timers/promises";
import postgres from "postgres";
import { makeScratchDirectory } from "../../src/database/embedded.js";
import { readDemoFiles, seedDemo } from "../../src/database/seed.js";
import { prepareDatabase } from "../../src/prepare-database.js";
import { openDatabase } from "../../src/database/start.js";
import { globalId } from "../../src/graphql/global-id.js";
import type { LoadOrder, LoadReport } from "./load.js";
import { freePort, post, startOurs, stopChild } from "./our-server.js";
import { loadNow, median, printHold, printMachine, printTable, processorMs } from "./machine.js";
import { startStatementCounter } from "./statement-counter.js";

const { values: options } = parseArgs({
  options: {
    rounds: { type: "string", default: "9" },
    seconds: { type: "string", default: "3" },
    connections: { type: "string", default: "10" },
    flags: { type: "string", default: "" },
  },
});
const flags = options.flags.split(" ").filter(Boolean);
const peers = fileURLToPath(new URL("./peers", import.meta.url));
const say = (line: string) => process.stderr.write(`${line}\n`);

/** Everything of a week that all four can give; sentences made from reason codes are left out, for only ours has them. */
const QUERY = `query WholeWeek($householdId: ID!, $date: LocalDate!) {
  week(householdId: $householdId, date: $date) {
    id weekStart revision
    plan {
      id number state createdAt
      wishes { handsOnMinutes costMinor spareBaseGrams }
      boxes {
        id date state child { id name } packing { leaveAt coldSources flask cutlery }
        items {
          id breakKey slot place dish { key name } grams pieces served energyKcal carbohydrateGrams allergens
          cuts { food cut source } holdingCase pinned note { compartment holdingMinutes holdingLimitMinutes }
        }
      }
      batches { id base { key name } session batches grams spareGrams state }
      tasks {
        id session kind text forDates children { id name } handsOnMinutes passiveMinutes startsAt handsFreeAt endsAt carer
        handles state takenBy { displayName }
      }
      shopping { id food { key name } section neededGrams fromStockGrams packs packGrams spareGrams costMinor readLabel }
    }
  }
}`;

/** The same rows by the names PostGraphile derives from the tables; dishes, foods and bases are keys without a relation. */
const POSTGRAPHILE_QUERY = `query WholeWeek($householdId: UUID!, $date: Date!) {
  weekByHouseholdIdAndWeekStart(householdId: $householdId, weekStart: $date) {
    id weekStart revision
    weekPlansByWeekId(orderBy: NUMBER_DESC, first: 1) { nodes {
      id number state createdAt wishes
      lunchBoxesByWeekPlanId(condition: { current: true }, orderBy: DATE_ASC) { nodes {
        id date state childByChildId { id name } boxPackingByLunchBoxId { leaveAt coldSources flask cutlery }
        boxItemsByLunchBoxId { nodes {
          id breakKey slot place dishKey grams pieces served energyKcal carbohydrateGrams allergens cuts holdingCase
          boxItemNoteByBoxItemId { compartment holdingMinutes holdingLimitMinutes }
        } }
      } }
      batchesByWeekPlanId { nodes { id baseKey session batches grams spareGrams state } }
      tasksByWeekPlanId { nodes {
        id session kind text forDates childIds handsOnMinutes passiveMinutes startsAt handsFreeAt endsAt carer handles state
        takenById
      } }
      shoppingLinesByWeekPlanId { nodes {
        id foodKey section neededGrams fromStockGrams packs packGrams spareGrams costMinor readLabel
      } }
    } }
  }
}`;

interface Contender {
  readonly name: string;
  readonly url: string;
  readonly body: string;
  readonly pid: number;
  stop(): Promise<void>;
}

async function startPeer(name: string, file: string, path: string, body: string, settings: object): Promise<Contender> {
  const child = fork(join(peers, file), {
    cwd: peers,
    execArgv: [],
    env: { ...process.env, NODE_ENV: "production", BENCH_SETTINGS: JSON.stringify(settings) },
  });
  const port = await new Promise<number>((resolve, reject) => {
    child.once("message", (message: { port: number }) => resolve(message.port));
    child.once("exit", () => reject(new Error(`${name} did not start`)));
  });
  return { name, url: `http://127.0.0.1:${port}${path}`, body, pid: child.pid!, stop: () => stopChild(child) };
}

type Tree = Record<string, unknown>;
const GLOBAL_ID_OF = /^[A-Z][A-Za-z]+:([0-9a-f-]{36})$/;

/** Our opaque ids as the rows' own, which the peers give. */
function withRowIds(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withRowIds);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, entry]) => {
      if (key !== "id" || typeof entry !== "string") return [key, withRowIds(entry)];
      return [key, GLOBAL_ID_OF.exec(Buffer.from(entry, "base64url").toString("utf8"))?.[1] ?? entry];
    }),
  );
}

const pick = (row: Tree, fields: string): unknown[] => fields.split(" ").map((field) => row[field]);
const ITEM = "id breakKey slot place grams pieces served energyKcal carbohydrateGrams allergens holdingCase";
const BATCH = "id session batches grams spareGrams state";
const TASK = "id session kind text forDates handsOnMinutes passiveMinutes startsAt handsFreeAt endsAt handles state";
const LINE = "id section neededGrams fromStockGrams packs packGrams spareGrams costMinor readLabel";
const cutsOf = (item: Tree) => (item["cuts"] as Tree[]).map((cut) => pick(cut, "food cut source"));

/** What all four have in common, as sorted lines: PostGraphile names and orders things its own way. */
function figuresOf(rows: Record<"boxes" | "items" | "batches" | "tasks" | "shopping", unknown[]>): typeof rows {
  const sorted = (list: unknown[]) => list.map((row) => JSON.stringify(row)).sort();
  const { boxes, items, batches, tasks, shopping } = rows;
  return {
    boxes: sorted(boxes),
    items: sorted(items),
    batches: sorted(batches),
    tasks: sorted(tasks),
    shopping: sorted(shopping),
  };
}

function figuresOfOurs(data: unknown) {
  const { plan } = (withRowIds(data) as { week: { plan: Record<string, Tree[]> } }).week;
  const key = (entry: unknown) => (entry as Tree)["key"];
  return figuresOf({
    boxes: plan["boxes"]!.map((box) => pick(box, "id date state child packing")),
    items: plan["boxes"]!.flatMap((box) =>
      (box["items"] as Tree[]).map((item) => [...pick(item, ITEM), key(item["dish"]), item["note"], cutsOf(item)]),
    ),
    batches: plan["batches"]!.map((batch) => [...pick(batch, BATCH), key(batch["base"])]),
    tasks: plan["tasks"]!.map((task) => [
      ...pick(task, TASK),
      (task["children"] as Tree[]).map((child) => child["id"]),
      task["carer"],
    ]),
    shopping: plan["shopping"]!.map((entry) => [...pick(entry, LINE), key(entry["food"])]),
  });
}

function figuresOfPostgraphile(data: unknown) {
  const nodes = (connection: unknown) => (connection as { nodes: Tree[] }).nodes;
  const week = (data as { weekByHouseholdIdAndWeekStart: Tree }).weekByHouseholdIdAndWeekStart;
  const plan = nodes(week["weekPlansByWeekId"])[0]!;
  const boxes = nodes(plan["lunchBoxesByWeekPlanId"]);
  return figuresOf({
    boxes: boxes.map((box) => pick(box, "id date state childByChildId boxPackingByLunchBoxId")),
    items: boxes.flatMap((box) =>
      nodes(box["boxItemsByLunchBoxId"]).map((item) => [
        ...pick(item, ITEM),
        item["dishKey"],
        item["boxItemNoteByBoxItemId"],
        cutsOf(item),
      ]),
    ),
    batches: nodes(plan["batchesByWeekPlanId"]).map((batch) => pick(batch, `${BATCH} baseKey`)),
    tasks: nodes(plan["tasksByWeekPlanId"]).map((task) => [
      ...pick(task, `${TASK} childIds`),
      (task["carer"] as number) + 1,
    ]),
    shopping: nodes(plan["shoppingLinesByWeekPlanId"]).map((entry) => pick(entry, `${LINE} foodKey`)),
  });
}

/**
 * PostGraphile's own remarks on tables, so that it is measured at its best: it knows unique constraints but not our unique
 * indexes, and would name an input of dish and one of dish_base alike.
 */
async function remarkForPostgraphile(ownerUrl: string): Promise<void> {
  const sql = postgres(ownerUrl, { max: 1 });
  await sql`comment on table dish_base is '@name baseOfDish'`;
  await sql`comment on table week is '@unique household_id,week_start'`;
  await sql`comment on table box_packing is '@unique lunch_box_id'`;
  await sql`comment on table box_item_note is '@unique box_item_id'`;
  await sql.end();
}

function refuseDifference(name: string, theirs: unknown, ours: unknown): void {
  if (!isDeepStrictEqual(theirs, ours)) throw new Error(`${name} answers another week than ours`);
}

interface Measured extends LoadReport {
  readonly serverMs: number | null;
  readonly databaseMs: number | null;
}

const directory = makeScratchDirectory();
const stops: (() => Promise<unknown>)[] = [];

/** Plans the demonstration's weeks through the API and says how many statements the read of each home costs. */
async function planAndCount(serverUrl: string, dataDir: string) {
  const demo = readDemoFiles();
  const counter = await startStatementCounter(serverUrl, "noonpail");
  const ours = await startOurs(counter.url, dataDir, await freePort(), flags);
  const counts: string[] = [];
  try {
    for (const home of demo.homes) {
      const coordinator = home.members.find((member) => member.role === "COORDINATOR");
      const person = demo.people.find((entry) => entry.key === coordinator?.person)!;
      const authorization = await ours.token(person.subject);
      const householdId = globalId("Household", home.id);
      const date = demo.residence.demoWeek;
      const { planWeek } = await ours.ask<{ planWeek: { __typename: string } }>(
        authorization,
        `mutation Plan($input: PlanWeekInput!) { planWeek(input: $input) { __typename ... on UserError { message } } }`,
        { input: { idempotencyKey: `bench-read-${home.key}`, householdId, date, seenRevision: 0 } },
      );
      if (planWeek.__typename !== "WeekPayload") throw new Error(`no plan to read: ${JSON.stringify(planWeek)}`);
      const taken: number[] = [];
      let rows = 0;
      for (let read = 0; read < 3; read += 1) {
        counter.take();
        const { week } = await ours.ask<{ week: { plan: Record<string, unknown[]> } }>(authorization, QUERY, {
          householdId,
          date,
        });
        // The transaction's end may pass just after the answer.
        await wait(50);
        taken.push(counter.take());
        rows = week.plan["boxes"]!.flatMap((box) => (box as { items: unknown[] }).items).length;
      }
      counts.push(`${home.name} ${[...new Set(taken)].join(" or ")} statements for ${rows} items`);
    }
  } finally {
    await ours.stop();
    await counter.stop();
  }
  return counts;
}

async function measure(): Promise<void> {
  for (const folder of [peers, join(peers, "postgraphile")]) {
    if (existsSync(join(folder, "node_modules"))) continue;
    say("installing peers");
    execFileSync("npm", ["ci", "--no-audit", "--no-fund", "--loglevel=error"], {
      cwd: folder,
      stdio: ["ignore", 2, 2],
    });
  }
  say("preparing the database");
  const opened = await openDatabase({ dataDirectory: directory });
  stops.push(opened.stop);
  await prepareDatabase(opened.ownerUrl!);
  await seedDemo(opened.ownerUrl!);
  await remarkForPostgraphile(opened.ownerUrl!);
  const postmaster = Number(readFileSync(join(directory, "postgres", "postmaster.pid"), "utf8").split("\n")[0]);
  const dataDir = join(directory, "server");
  say("planning the demo weeks");
  const counts = await planAndCount(opened.serverUrl, dataDir);

  say("starting the servers");
  const demo = readDemoFiles();
  const home = demo.homes[0]!;
  const date = demo.residence.demoWeek;
  const port = await freePort();
  const ours = await startOurs(opened.serverUrl, dataDir, port, flags);
  stops.push(ours.stop);
  const settings = {
    databaseUrl: opened.serverUrl,
    jwks: (await (await fetch(`${ours.url}/dev/jwks.json`)).json()) as unknown,
    issuer: ours.url,
    audience: "noonpail",
  };
  const plain = JSON.stringify({ householdId: home.id, date });
  const throughGraphql = (query: string) => JSON.stringify({ query, variables: { householdId: home.id, date } });
  const contenders: Contender[] = [
    {
      name: "ours",
      url: `${ours.url}/graphql`,
      body: JSON.stringify({ query: QUERY, variables: { householdId: globalId("Household", home.id), date } }),
      pid: ours.pid,
      stop: ours.stop,
    },
    await startPeer("hand-written node:http", "hand-written.mjs", "/", plain, settings),
    await startPeer(
      "PostGraphile 4.14.1",
      "postgraphile/server.mjs",
      "/graphql",
      throughGraphql(POSTGRAPHILE_QUERY),
      settings,
    ),
    await startPeer(
      "mercurius 16.10.1",
      "mercurius.mjs",
      "/graphql",
      throughGraphql(QUERY.replace("LocalDate!", "String!")),
      settings,
    ),
  ];
  stops.push(...contenders.map((contender) => contender.stop));
  const authorization = await ours.token("demo:ana");
  const stranger = await ours.token("demo:ruth");

  const answers = await Promise.all(contenders.map(({ url, body }) => post<unknown>(url, authorization, body)));
  const whole = withRowIds(answers[0]);
  refuseDifference("the hand-written server", answers[1], whole);
  refuseDifference("mercurius", answers[3], whole);
  const figures = figuresOfOurs(answers[0]);
  refuseDifference("PostGraphile", figuresOfPostgraphile(answers[2]), figures);
  for (const { name, url, body } of contenders) {
    const [seen] = Object.values(await post<Record<string, unknown>>(url, stranger, body));
    if (seen !== null) throw new Error(`${name} shows the week to a stranger`);
  }
  say(
    `equal answers: ${Object.entries(figures)
      .map(([what, rows]) => `${rows.length} ${what}`)
      .join(", ")}; a stranger sees none`,
  );

  const generator = fork(fileURLToPath(new URL("./load.ts", import.meta.url)), { execArgv: ["--import", "tsx"] });
  stops.push(() => stopChild(generator));
  const drive = (order: LoadOrder): Promise<LoadReport> =>
    new Promise((resolve, reject) => {
      generator.once("message", ({ report, problem }: { report?: LoadReport; problem?: string }) =>
        report ? resolve(report) : reject(new Error(problem)),
      );
      generator.send(order);
    });
  const connections = Number(options.connections);
  const measured = contenders.map((): Measured[] => []);
  for (const { url, body } of contenders) await drive({ url, body, authorization, seconds: 2, connections });
  const rounds = Number(options.rounds);
  for (let round = 1; round <= rounds; round += 1) {
    // There and back again: a drift of the machine favours nobody.
    const order = contenders.map((_, at) => (round % 2 === 1 ? at : contenders.length - 1 - at));
    for (const at of order) {
      const { url, body, pid } = contenders[at]!;
      const server = processorMs(pid);
      const database = processorMs(postmaster);
      const report = await drive({ url, body, authorization, seconds: Number(options.seconds), connections });
      const perRequest = (before: number | null, after: number | null) =>
        before === null || after === null ? null : (after - before) / report.requests;
      measured[at]!.push({
        ...report,
        serverMs: perRequest(server, processorMs(pid)),
        databaseMs: perRequest(database, processorMs(postmaster)),
      });
    }
    say(
      `round ${round} of ${rounds}: ${measured.map((of) => of.at(-1)!.perSecond.toFixed(0)).join(" / ")} per second, load ${loadNow()}`,
    );
  }

  printMachine();
  console.log(
    `${rounds} interleaved rounds of ${options.seconds} s, ${connections} connections; generator, servers and database share the machine; medians`,
  );
  console.log(`ours per read: ${counts.join("; ")}`);
  const bytes = answers.map((answer) => (JSON.stringify(answer).length / 1024).toFixed(1));
  const cell = (value: number | null | undefined, digits: number) => (value == null ? "-" : value.toFixed(digits));
  const middle = (of: Measured[], pick: (one: Measured) => number | null) => {
    const values = of.map(pick).filter((value) => value !== null);
    return values.length === 0 ? null : median(values);
  };
  printTable(
    ["server", "req/s", "lowest", "highest", "p50 ms", "p99 ms", "server CPU ms", "database CPU ms", "KiB"],
    contenders.map(({ name }, at) => {
      const of = measured[at]!;
      return [
        name,
        cell(
          middle(of, (one) => one.perSecond),
          0,
        ),
        cell(Math.min(...of.map((one) => one.perSecond)), 0),
        cell(Math.max(...of.map((one) => one.perSecond)), 0),
        cell(
          middle(of, (one) => one.p50),
          1,
        ),
        cell(
          middle(of, (one) => one.p99),
          1,
        ),
        cell(
          middle(of, (one) => one.serverMs),
          2,
        ),
        cell(
          middle(of, (one) => one.databaseMs),
          2,
        ),
        bytes[at]!,
      ];
    }),
  );
  const ratio = (at: number) =>
    median(measured[0]!.map((one, round) => one.perSecond / measured[at]![round]!.perSecond));
  console.log("ratios of requests per second, the median over rounds:");
  printHold("ours / PostGraphile", ratio(2), { atLeast: 0.9 });
  console.log(`aim 1.0: ours / hand-written ${ratio(1).toFixed(2)}; beside it ours / mercurius ${ratio(3).toFixed(2)}`);
}

try {
  await measure();
} finally {
  for (const stop of stops.reverse()) await stop().catch((error: unknown) => say(String(error)));
  rmSync(directory, { recursive: true, force: true });
}
