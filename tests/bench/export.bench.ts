/**
 * npm run bench:export: the copy of a household that has planned for two years, three revisions of every week, as a coordinator
 * fetches it; and how long it takes to erase the household. The demo's week is planned once and copied. `-- --weeks N`.
 */
import { parseArgs } from "node:util";
import postgres from "postgres";
import type { App } from "../../src/app/app.js";
import { exportHousehold } from "../../src/app/export.js";
import { planWeek } from "../../src/app/plan-week.js";
import type { Tx } from "../../src/database/database.js";
import { makeScratchDirectory } from "../../src/database/embedded.js";
import { seedDemo } from "../../src/database/seed.js";
import { openDatabase } from "../../src/database/start.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { startPlannerPool } from "../../src/jobs/planner-pool.js";
import { prepareDatabase } from "../../src/prepare-database.js";
import { loadNow, printMachine } from "./machine.js";
import { noRates } from "../support/no-rates.js";

const { values: options } = parseArgs({ options: { weeks: { type: "string", default: "104" } } });
const weeks = Number(options.weeks);
const REVISIONS = 3;

/** Columns that name a row that is copied too. */
const COPIED: Readonly<Record<string, readonly string[]>> = {
  week: ["id"],
  week_plan: ["id", "week_id"],
  lunch_box: ["id", "week_plan_id"],
  box_item: ["id", "lunch_box_id"],
  box_item_note: ["id", "box_item_id"],
  box_packing: ["id", "lunch_box_id"],
  batch: ["id", "week_plan_id"],
  task: ["id", "week_plan_id"],
  shopping_line: ["id", "week_plan_id"],
};

async function copyWeek(owner: postgres.Sql, week: number, revision: number): Promise<void> {
  for (const [table, keys] of Object.entries(COPIED)) {
    if (table === "week" && revision > 0) continue;
    const columns = await owner<{ name: string }[]>`select a.attname as name from pg_attribute a
      where a.attrelid = ${table}::regclass and a.attnum > 0 and not a.attisdropped order by a.attnum`;
    const copy = (name: string) =>
      keys.includes(name)
        ? `md5(t.${name}::text || '${week}${table === "week" || name === "week_id" ? "" : `/${revision}`}')::uuid`
        : name === "week_start" || (name === "date" && table === "lunch_box")
          ? `t.${name} - ${7 * week}`
          : name === "current"
            ? "false"
            : name === "number"
              ? `t.number + ${revision}`
              : `t.${name}`;
    await owner.unsafe(`insert into ${table} (${columns.map(({ name }) => name).join(", ")})
      select ${columns.map(({ name }) => copy(name)).join(", ")} from bench_${table} t`);
  }
}

printMachine();
const opened = await openDatabase({ dataDirectory: makeScratchDirectory() });
const owner = postgres(opened.ownerUrl!, { max: 1, onnotice: () => undefined });
try {
  await prepareDatabase(opened.ownerUrl!);
  await seedDemo(opened.ownerUrl!);
  const reference = await opened.db.readReference();
  const planner = startPlannerPool(reference.catalogue, { threads: 1 });
  const app: App = {
    db: opened.db,
    reference,
    index: indexCatalogue(reference.catalogue),
    planner,
    prover: null,
    queue: null,
    rates: noRates,
    now: () => new Date("2026-11-25T12:00:00Z"),
    planSteps: 30_000,
  };
  const person = await app.db.signIn("demo:ana", "demo:ana");
  const [home] = await app.db.readAs(person, (tx) => tx<{ id: string }[]>`select id from household`);
  const planned = await planWeek(app, person, {
    idempotencyKey: "bench-export",
    householdId: home!.id,
    date: "2027-01-11",
    seenRevision: 0,
    replanAgreed: false,
  });
  await planner.stop();
  if (!planned.ok) throw new Error(planned.error.kind);
  for (const table of Object.keys(COPIED))
    await owner.unsafe(`create temp table bench_${table} as select * from ${table}`);
  for (let week = 1; week < weeks; week += 1)
    for (let revision = 0; revision < REVISIONS; revision += 1) await copyWeek(owner, week, revision);
  await owner`analyze`;

  const made = await exportHousehold(app, person, home!.id);
  if (!made.ok) throw new Error(made.error.kind);
  const load = loadNow();
  const before = process.memoryUsage().rss;
  let [bytes, largest, most] = [0, 0, before];
  const began = performance.now();
  await made.value((text) => {
    bytes += Buffer.byteLength(text);
    largest = Math.max(largest, text.length);
    most = Math.max(most, process.memoryUsage().rss);
    return Promise.resolve();
  });
  const seconds = (performance.now() - began) / 1000;
  console.log(
    `${weeks} weeks of ${REVISIONS} revisions: ${(bytes / 1e6).toFixed(1)} MB in ${seconds.toFixed(1)} s, largest piece ` +
      `${(largest / 1e3).toFixed(0)} kB, memory ${((most - before) / 1e6).toFixed(0)} MB more than before; load ${load}`,
  );

  for (const [what, erase] of [
    ["a child of one home", (tx: Tx) => eraseOnlyChild(tx, home!.id)],
    ["the household", (tx: Tx) => tx.$queryRaw`select app_erase_household(${home!.id}::uuid)`],
  ] as const) {
    const start = performance.now();
    await app.db.asPerson(person, erase);
    console.log(`erasing ${what}: ${((performance.now() - start) / 1000).toFixed(1)} s`);
  }
} finally {
  await owner.end();
  await opened.stop();
}

function eraseOnlyChild(tx: Tx, householdId: string) {
  return tx.$queryRaw`select app_erase_child(r.child_id, r.household_id) from residence r where r.household_id = ${householdId}::uuid
    and not exists (select from residence o where o.child_id = r.child_id and o.household_id <> r.household_id) limit 1`;
}
