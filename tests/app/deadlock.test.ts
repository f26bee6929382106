/** Two changes that wait for each other: the database ends one (PostgreSQL, "Deadlocks"), and nobody is told of it. */
import type { App } from "../../src/app/app.js";
import { allOrNothing } from "../../src/app/once.js";
import type { Tx } from "../../src/database/database.js";
import { ok } from "../../src/domain/result.js";
import { useDatabase } from "../support/database.js";

const database = useDatabase();

it.each([
  [
    "by the ORM's own queries",
    (tx: Tx, id: string) => tx.household.updateMany({ where: { id }, data: { revision: { increment: 1 } } }),
  ],
  [
    "by raw SQL",
    (tx: Tx, id: string) => tx.$executeRaw`update household set revision = revision + 1 where id = ${id}::uuid`,
  ],
])("both are done, %s", async (_, raise) => {
  const person = await database.newPerson("Ada");
  const [one, two] = [await database.newHousehold(person), await database.newHousehold(person)] as [string, string];
  const app = { db: database.db } as App;
  let runs = 0;
  let arrived = 0;
  let open: () => void = () => undefined;
  const both = new Promise<void>((resolve) => (open = resolve));
  const change = (first: string, second: string) =>
    allOrNothing<null, never>(app, person, async (tx) => {
      runs += 1;
      await raise(tx, first);
      arrived += 1;
      if (arrived === 2) open();
      await both;
      await raise(tx, second);
      return ok(null);
    });
  expect(await Promise.all([change(one, two), change(two, one)])).toEqual([ok(null), ok(null)]);
  expect(runs).toBeGreaterThan(2);
  const rows = await database.owner`select revision from household where id in ${database.owner([one, two])}`;
  expect(rows.map(({ revision }) => Number(revision))).toEqual([3, 3]);
});
