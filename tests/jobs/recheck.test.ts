import type { App, RecheckJob } from "../../src/app/app.js";
import { recordAllergy } from "../../src/app/allergies.js";
import { allowUseOf } from "../../src/database/migrate.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { openQueue, prepareQueue, queueRechecksOfReload, type JobQueue } from "../../src/jobs/queue.js";
import { createLog } from "../../src/log.js";
import { workOnJobs } from "../../src/work-on-jobs.js";
import { DAY, HOMES, PLAN } from "../graphql/documents.js";
import { newKey, useApp } from "../support/app.js";
import { localOf } from "../support/served-app.js";

const parts = useApp();
let queue: JobQueue;
const quiet = createLog("silent");

interface StoredBox {
  readonly childId: string;
  readonly date: string;
  readonly state: string;
  readonly allergens: readonly string[];
}
const boxes = () => parts.database.owner<StoredBox[]>`
  select l.child_id as "childId", l.date::text as date, l.state::text as state,
    (select coalesce(array_agg(distinct x), '{}') from box_item i, unnest(i.allergens) x where i.lunch_box_id = l.id) as allergens
  from lunch_box l where l.current order by 1, 2`;
const jobs = () => parts.database.owner<{ state: string; data: RecheckJob }[]>`
  select state::text, data from noonpail_jobs.job where name = 'recheck-boxes' order by created_on`;

/** Works on jobs in this process until every one is done. */
async function workUntilDone(app: App): Promise<void> {
  const own = await openQueue(parts.database.serverUrl, { lookSeconds: 1 });
  try {
    await workOnJobs(app, own, quiet);
    for (let tries = 0; tries < 200; tries += 1) {
      if ((await jobs()).every(({ state }) => state === "completed")) return;
      await new Promise((wake) => setTimeout(wake, 100));
    }
    throw new Error(`the jobs are not done: ${JSON.stringify(await jobs())}`);
  } finally {
    await own.stop();
  }
}

beforeAll(async () => {
  const { schema } = await prepareQueue(parts.database.ownerUrl);
  await allowUseOf(parts.database.ownerUrl, schema);
  queue = await openQueue(parts.database.serverUrl, { lookSeconds: 1 });
  const { data } = await parts.run("demo:ana", HOMES, { day: DAY });
  const home = data.me.households[0] as { id: string; revision: number };
  const planned = await parts.run("demo:ana", PLAN, {
    input: { idempotencyKey: newKey(), householdId: home.id, date: DAY, seenRevision: 0 },
  });
  expect(planned.errors).toEqual([]);
  expect(planned.data.planWeek.__typename).toBe("WeekPayload");
});
beforeEach(() => parts.database.owner`delete from noonpail_jobs.job`);
afterAll(() => queue.stop());

it("a change is committed with the job that looks at its boxes, and a worker heals what a crash left undone", async () => {
  const home = (await parts.run("demo:ana", HOMES, { day: DAY })).data.me.households[0] as {
    id: string;
    revision: number;
  };
  const all = await boxes();
  // An allergen in a box of a child who does not avoid it yet.
  const box = all.find(({ allergens }) => allergens.length > 0)!;
  const allergen = [...box.allergens].sort()[0]!;
  const dying: App = {
    ...parts.app,
    queue,
    db: { ...parts.app.db, homesToRecheck: () => Promise.reject(new Error("the server has died")) },
  };
  const ana = await parts.database.db.signIn("demo:ana", "Ana");
  const input = {
    idempotencyKey: newKey(),
    householdId: localOf(home.id),
    seenRevision: home.revision,
    childId: box.childId,
    allergen,
    avoid: "TRACES" as const,
  };
  // Refused: no job either.
  expect((await recordAllergy(dying, ana, { ...input, seenRevision: 99 })).ok).toBe(false);
  expect(await jobs()).toEqual([]);
  expect((await recordAllergy(dying, ana, input)).ok).toBe(true);
  expect(await boxes()).toEqual(all);
  expect(await jobs()).toMatchObject([{ state: "created", data: { scope: { childIds: [box.childId] } } }]);
  await workUntilDone({ ...parts.app, queue });
  for (const now of await boxes()) {
    if (now.childId === box.childId && now.allergens.includes(allergen)) expect(now.state).toBe("BLOCKED");
    if (now.childId !== box.childId) expect(now.state).toBe("PLANNED");
  }
});

it("foods reloaded with other content send every household's boxes to be looked at again, once", async () => {
  const { owner, ownerUrl, db } = parts.database;
  await queueRechecksOfReload(ownerUrl, parts.app.reference.catalogue.version);
  const homes = await owner<{ id: string }[]>`select distinct household_id as id from membership order by 1`;
  const first = await jobs();
  expect(first.flatMap(({ data }) => data.scope.householdIds).sort()).toEqual(homes.map(({ id }) => id));
  await queueRechecksOfReload(ownerUrl, parts.app.reference.catalogue.version);
  expect(await jobs()).toHaveLength(first.length);
  await owner`delete from noonpail_jobs.job`;

  // The new edition says that a food in a planned box has what the child avoids.
  const before = await boxes();
  const [avoids] = await owner<{ childId: string; allergen: string }[]>`
    select a.child_id as "childId", coalesce(a.allergen, '') as allergen from allergy a join lunch_box l on l.child_id = a.child_id
    where a.allergen = 'PEANUT' and l.current and l.state = 'PLANNED' limit 1`;
  const [eaten] = await owner<{ dish: string; date: string }[]>`
    select i.dish_key as dish, l.date::text as date from box_item i join lunch_box l on l.id = i.lunch_box_id
    where l.child_id = ${avoids!.childId} and l.current and l.state = 'PLANNED' order by l.date, i.dish_key limit 1`;
  const food = parts.app.index.derived(eaten!.dish).ingredients[0]!.food.key;
  await owner`update food set allergens = array_append(allergens, 'PEANUT') where key = ${food}`;
  await owner`update reference_table set version = 'next-edition' where key = 'catalogue'`;
  await queueRechecksOfReload(ownerUrl, "next-edition");
  const reference = await db.readReference();
  await workUntilDone({ ...parts.app, queue, reference, index: indexCatalogue(reference.catalogue) });
  const blocked = (await boxes()).filter(
    ({ childId, state }, at) => childId === avoids!.childId && state === "BLOCKED" && before[at]!.state === "PLANNED",
  );
  expect(blocked.map(({ date }) => date)).toContain(eaten!.date);
});
