/** Jobs that wait name children, households and people: erasing takes them out as well, and no recheck of others is lost. */
import { randomUUID } from "node:crypto";
import type { PlanJob, RecheckJob } from "../../src/app/app.js";
import { allowUseOf } from "../../src/database/migrate.js";
import { openQueue, prepareQueue, type JobQueue } from "../../src/jobs/queue.js";
import { useDatabase } from "../support/database.js";

const database = useDatabase();
let queue: JobQueue;
beforeAll(async () => {
  const { schema } = await prepareQueue(database.ownerUrl);
  await allowUseOf(database.ownerUrl, schema);
  queue = await openQueue(database.serverUrl);
});
afterAll(() => queue.stop());

it("a job of what was erased is gone; one that is about others too goes on without it", async () => {
  const [person, other] = [await database.newPerson("Ann"), await database.newPerson("Ben")];
  const [home, elsewhere] = [await database.newHousehold(person), await database.newHousehold(other)];
  const [child, sibling] = [await database.newChild(person, home), await database.newChild(person, home)];
  const scope = { childIds: [child, sibling], schoolIds: [], householdIds: [home, elsewhere] };
  const planOf = (personId: string, householdId: string): PlanJob => ({
    id: randomUUID(),
    personId,
    householdId,
    weekStart: "2027-01-11",
    steps: 1,
    input: { idempotencyKey: "12345678", householdId, date: "2027-01-11", seenRevision: 0, replanAgreed: false },
  });
  const recheck: RecheckJob = { id: randomUUID(), scope };
  await queue.sendRecheck(recheck, null);
  await database.db.asPerson(person, (tx) => queue.send(planOf(person, home), tx));
  await database.db.asPerson(person, (tx) => queue.send(planOf(person, elsewhere), tx));
  const kept = planOf(other, elsewhere);
  await database.db.asPerson(other, (tx) => queue.send(kept, tx));
  const waiting = async () =>
    (await database.owner<{ data: unknown }[]>`select data from noonpail_jobs.job order by name, created_on`).map(
      ({ data }) => data,
    );
  expect(await waiting()).toHaveLength(4);

  await database.db.asPerson(person, (tx) => tx.$queryRaw`select app_erase_child(${child}::uuid, ${home}::uuid)`);
  expect(await waiting()).toContainEqual({ ...recheck, scope: { ...scope, childIds: [sibling] } });
  expect(await waiting()).toHaveLength(4);

  await database.db.asPerson(person, (tx) => tx.$queryRaw`select outcome from app_erase_me(true)`);
  expect(await waiting()).toEqual([
    kept,
    { ...recheck, scope: { childIds: [], schoolIds: [], householdIds: [elsewhere] } },
  ]);
});
