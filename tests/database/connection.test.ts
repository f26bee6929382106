import { connectDatabase, type Notice } from "../../src/database/database.js";
import { databaseOn } from "../support/test-server.js";
import { useDatabase } from "../support/database.js";

const database = useDatabase();

async function refusal(url: string): Promise<string | null> {
  const db = connectDatabase(url, { writers: 1, readers: 1 });
  try {
    await db.refusePowerfulRole();
    return null;
  } catch (error) {
    return (error as Error).message;
  } finally {
    await db.close();
  }
}

describe("the role the server connects with", () => {
  const roles = ["test_bypasser", "test_owner", "test_heir", "test_hidden_heir"];
  const as = (name: string) =>
    databaseOn(database.ownerUrl, new URL(database.ownerUrl).pathname.slice(1), { name, password: "p" });

  beforeAll(async () => {
    const { owner } = database;
    await owner`create role test_bypasser login password 'p' bypassrls in role noonpail_app`;
    await owner`create role test_owner login password 'p' in role noonpail_app`;
    await owner`create role test_heir login password 'p' in role noonpail_app, test_owner`;
    await owner`create role test_hidden_heir login password 'p' noinherit in role noonpail_app, test_owner`;
    await owner`grant create on schema public to test_owner`;
    await owner`alter table relaxation owner to test_owner`;
  });
  afterAll(async () => {
    await database.owner`reassign owned by test_owner to current_user`;
    await database.owner`revoke all on schema public from test_owner`;
    for (const role of roles) await database.owner`drop role ${database.owner(role)}`;
  });

  test("a plain member of noonpail_app is accepted", async () => {
    expect(await refusal(database.serverUrl)).toBeNull();
  });
  test("a superuser is refused", async () => {
    expect(await refusal(database.ownerUrl)).toContain("is a superuser");
  });
  test("a role that bypasses row security is refused", async () => {
    expect(await refusal(as("test_bypasser"))).toContain("BYPASSRLS");
  });
  test("the owner of a table is refused", async () => {
    expect(await refusal(as("test_owner"))).toContain("owns tables");
  });
  test("a role that could act as the owner is refused, inheriting or not", async () => {
    expect(await refusal(as("test_heir"))).toContain("owns tables");
    expect(await refusal(as("test_hidden_heir"))).toContain("owns tables");
  });
});

describe("one person's transaction", () => {
  const whoAmI = (run: <T>(query: string) => Promise<T[]>) =>
    run<{ id: string | null }>("select app_person_id() as id").then(([row]) => row!.id);

  test("leaves nobody signed in on the connection it used", async () => {
    const person = await database.newPerson("Ada");
    const db = connectDatabase(database.serverUrl, { writers: 1, readers: 1 });
    try {
      expect(await db.asPerson(person, (tx) => whoAmI((query) => tx.$queryRawUnsafe(query)))).toBe(person);
      await expect(db.asPerson(person, () => Promise.reject(new Error("halfway")))).rejects.toThrow("halfway");
      // The only connection of the pool again, now with a person who is nobody.
      expect(await db.asPerson("", (tx) => whoAmI((query) => tx.$queryRawUnsafe(query)))).toBeNull();
      const session = db.openRead(person);
      expect(await session.read((tx) => whoAmI((query) => tx.unsafe(query) as never))).toBe(person);
      await session.close();
      const [after] = await db.openRead("").read((tx) => tx<{ id: string | null }[]>`select app_person_id() as id`);
      expect(after!.id).toBeNull();
    } finally {
      await db.close();
    }
  });

  test("is never mixed up with another that runs at the same time", async () => {
    const people = await Promise.all(Array.from({ length: 12 }, (_, n) => database.newPerson(`Person ${n}`)));
    const seen = await Promise.all(
      people.map(async (person) => {
        const session = database.db.openRead(person);
        const read = await session.read((tx) => whoAmI((query) => tx.unsafe(query) as never));
        await session.close();
        const written = await database.db.asPerson(person, (tx) => whoAmI((query) => tx.$queryRawUnsafe(query)));
        return [read, written];
      }),
    );
    expect(seen).toEqual(people.map((person) => [person, person]));
  });

  test("cannot be opened inside another: it would wait for a connection the outer one holds", async () => {
    const person = await database.newPerson("Ada");
    await expect(
      database.db.asPerson(person, () => database.db.asPerson(person, () => Promise.resolve(1))),
    ).rejects.toThrow("asPerson inside asPerson");
    expect(await database.db.asPerson(person, () => Promise.resolve(1))).toBe(1);
  });

  test("that fails leaves nothing behind", async () => {
    const person = await database.newPerson("Ada");
    const home = await database.newHousehold(person);
    await expect(
      database.db.asPerson(person, async (tx) => {
        await tx.household.update({ where: { id: home }, data: { name: "Half done" } });
        throw new Error("halfway");
      }),
    ).rejects.toThrow("halfway");
    expect(
      await database.db.asPerson(person, (tx) => tx.household.findUniqueOrThrow({ where: { id: home } })),
    ).toMatchObject({ name: "Test kitchen" });
  });
});

describe("reading", () => {
  test("cannot write, counts what it sends, and sends nothing when nothing was read", async () => {
    const person = await database.newPerson("Ada");
    await database.newHousehold(person);
    const session = database.db.openRead(person);
    expect(session.statements()).toBe(0);
    await session.read((tx) => tx`select 1`);
    await session.read((tx) => tx`select 1`);
    expect(session.statements()).toBe(4);
    await expect(session.read((tx) => tx`update household set name = 'x'`)).rejects.toThrow("read-only transaction");
    await session.close();
    const idle = database.db.openRead(person);
    await idle.close();
    expect(idle.statements()).toBe(0);
  });

  test("the same token is always the same person, made once", async () => {
    const ids = await Promise.all(Array.from({ length: 8 }, () => database.db.signIn("test:same", "Same")));
    expect(new Set(ids).size).toBe(1);
    expect(await database.owner`select display_name from person where subject = 'test:same'`).toEqual([
      { display_name: "Same" },
    ]);
  });
});

test("a changed week is announced after it is saved, a failed change is not", async () => {
  const person = await database.newPerson("Ada");
  const householdId = await database.newHousehold(person);
  const heard: Notice[] = [];
  const stop = await database.db.listen(
    (notice) => heard.push(notice),
    () => undefined,
  );
  // The row alone is no news: a week is announced when a plan, or another change, moves its revision.
  const week = await database.db.asPerson(person, (tx) =>
    tx.week.create({ data: { householdId, weekStart: new Date("2027-01-11") } }),
  );
  const move = { where: { id: week.id }, data: { revision: { increment: 1 } } };
  await expect(
    database.db.asPerson(person, async (tx) => {
      await tx.week.update(move);
      throw new Error("halfway");
    }),
  ).rejects.toThrow("halfway");
  await database.db.asPerson(person, (tx) => tx.week.update(move));
  const progress: Notice = { kind: "PLAN_PROGRESS", householdId, weekStart: "2027-01-11", percent: 50, bestPoints: 12 };
  await database.db.announce(progress);
  for (let waited = 0; heard.length < 2 && waited < 5_000; waited += 20)
    await new Promise((done) => setTimeout(done, 20));
  expect(heard).toEqual([
    { kind: "PLAN_CHANGED", householdId, weekId: week.id, weekStart: "2027-01-11", revision: 1 },
    progress,
  ]);
  await stop();
});
