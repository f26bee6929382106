import { randomUUID } from "node:crypto";
import { execFile } from "node:child_process";
import { appendFileSync, cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { connectDatabase } from "../../src/database/database.js";
import { ensureServerRole, migrate } from "../../src/database/migrate.js";
import { seedDemo, seedReference } from "../../src/database/seed.js";
import { useDatabase } from "../support/database.js";
import { databaseOn } from "../support/test-server.js";

const database = useDatabase();

/** In a process of its own: inside Jest's sandbox the engine's WebAssembly meets objects of another realm and panics. */
async function diffSchema(url: string): Promise<string> {
  const script =
    'import { diffSchema } from "./src/database/schema-diff.ts"; process.stdout.write(await diffSchema(process.argv[1])); process.exit();';
  const { stdout } = await promisify(execFile)(process.execPath, [
    "--import",
    "tsx",
    "--input-type=module",
    "--eval",
    script,
    url,
  ]);
  return stdout;
}

const copies: string[] = [];
afterAll(() => copies.forEach((directory) => rmSync(directory, { recursive: true })));

function copyMigrations(): string {
  const directory = mkdtempSync(join(tmpdir(), "noonpail-migrations-"));
  copies.push(directory);
  cpSync("prisma/migrations", directory, { recursive: true });
  return directory;
}

test("migrating a migrated database changes nothing", async () => {
  const { applied, alreadyThere } = await migrate(database.ownerUrl);
  expect(applied).toEqual([]);
  expect(alreadyThere).toBeGreaterThan(0);
});

test("a migration that was edited after it had been applied is refused", async () => {
  const directory = copyMigrations();
  appendFileSync(join(directory, "0001_tables/migration.sql"), "\n-- one more thought\n");
  await expect(migrate(database.ownerUrl, directory)).rejects.toThrow("0001_tables was edited");
});

test("a migration that fails leaves nothing behind, not even those before it", async () => {
  const directory = copyMigrations();
  for (const [name, sql] of [
    ["9001_good", "create table left_behind ()"],
    ["9002_bad", "select * from no_such_table"],
  ] as const) {
    mkdirSync(join(directory, name));
    writeFileSync(join(directory, name, "migration.sql"), sql);
  }
  await expect(migrate(database.ownerUrl, directory)).rejects.toThrow("no_such_table");
  expect(await database.owner`select to_regclass('left_behind') as found`).toEqual([{ found: null }]);
  expect((await migrate(database.ownerUrl)).applied).toEqual([]);
});

test("two servers that migrate at the same time do not trip over each other", async () => {
  const directory = copyMigrations();
  mkdirSync(join(directory, "9003_together"));
  writeFileSync(
    join(directory, "9003_together", "migration.sql"),
    "create table made_together (); drop table made_together",
  );
  const reports = await Promise.all([migrate(database.ownerUrl, directory), migrate(database.ownerUrl, directory)]);
  expect(reports.flatMap(({ applied }) => applied)).toEqual(["9003_together"]);
});

test("the migrations make exactly the tables that prisma/schema.prisma describes, and a missing column shows", async () => {
  expect(await diffSchema(database.ownerUrl)).toBe("");
  await database.owner`alter table child_disruption drop column reason`;
  expect(await diffSchema(database.ownerUrl)).toContain(
    'ALTER TABLE "child_disruption" ADD COLUMN     "reason" TEXT NOT NULL',
  );
});

describe("an owner that is not a superuser", () => {
  const role = { name: "test_plain_owner", password: "p" };
  const server = { name: "test_plain_server", password: 'it\'s 100% "odd"' };
  const name = `plain_${process.pid}`;
  let ownerUrl: string;

  beforeAll(async () => {
    await database.owner`create role test_plain_owner login password 'p' createrole`;
    await database.owner`create database ${database.owner(name)} owner test_plain_owner`;
    ownerUrl = databaseOn(database.ownerUrl, name, role);
    await migrate(ownerUrl);
    // Membership in noonpail_app is given by whoever administers it; here another owner made that role.
    // PostgreSQL before 16 has no word for a membership that is not inherited.
    const [{ recent }] = await database.owner<[{ recent: boolean }]>`
      select current_setting('server_version_num')::int >= 160000 as recent`;
    await database.owner.unsafe(
      `grant noonpail_app to test_plain_owner with admin option${recent ? ", inherit false" : ""}`,
    );
    await ensureServerRole(ownerUrl, server);
  });
  afterAll(async () => {
    await database.owner`drop database ${database.owner(name)} with (force)`;
    await database.owner`drop role test_plain_server`;
    await database.owner`drop role test_plain_owner`;
  });

  test("loads the reference data, and lets people found households and children, but sees no family's rows", async () => {
    expect((await seedReference(ownerUrl)).changed).toBe(true);
    const db = connectDatabase(databaseOn(database.ownerUrl, name, server), { writers: 1, readers: 1 });
    const plain = connectDatabase(ownerUrl, { writers: 1, readers: 1 });
    try {
      await db.refusePowerfulRole();
      const person = await db.signIn("test:founder", "Founder");
      const [home, child] = ["5f0c3a52-d0a7-4b0f-8d6e-1a2b3c4d5e6f", "6f0c3a52-d0a7-4b0f-8d6e-1a2b3c4d5e6f"];
      await db.asPerson(
        person,
        (tx) => tx.$executeRaw`select app_found_household(${home}::uuid, 'Home', 'Europe/London', 'GBP')`,
      );
      await db.asPerson(
        person,
        (tx) =>
          tx.$executeRaw`select app_found_child(${child}::uuid, ${home}::uuid, 'Ari', date '2018-03-01', date '2024-01-01')`,
      );
      expect(await db.asPerson(person, (tx) => tx.child.findMany({ select: { id: true } }))).toEqual([{ id: child }]);
      expect(await plain.asPerson("", (tx) => tx.household.count())).toBe(0);
      // The owner's function finds the homes with work all the same, and only it does.
      await db.asPerson(person, async (tx) => {
        const householdId = home;
        const week = await tx.week.create({ data: { householdId, weekStart: new Date("2027-01-11T00:00:00Z") } });
        const made = {
          seed: 0n,
          steps: 0,
          problemHash: "",
          catalogueVersion: "",
          wishes: {},
          cautions: {},
          readyUses: {},
        };
        const plan = await tx.weekPlan.create({
          data: { weekId: week.id, householdId, number: 1, state: "DRAFT", ...made },
        });
        const clock = { startsAt: "06:50", handsFreeAt: "06:54", endsAt: "06:54", latestStartsAt: "07:00" };
        const work = { kind: "PACK", text: "Pack.", handsOnMinutes: 4, passiveMinutes: 0, equipment: [], carer: 0 };
        await tx.task.createMany({
          data: [{ weekPlanId: plan.id, householdId, key: "pack", session: "morning-2027-01-11", ...work, ...clock }],
        });
      });
      const look = (time: string) => {
        const at = new Date(`2027-01-11T${time}:00Z`);
        return db.homesToRemind(at, at);
      };
      expect(await look("06:55")).toEqual([{ householdId: home, personId: person }]);
      expect(await look("09:00")).toEqual([]);
      expect(await plain.asPerson("", (tx) => tx.task.count())).toBe(0);
      // Erasing as well, though row security binds this owner: everything in one transaction of its coordinator.
      const other = "7f0c3a52-d0a7-4b0f-8d6e-1a2b3c4d5e6f";
      await db.asPerson(
        person,
        (tx) =>
          tx.$executeRaw`select app_found_child(${other}::uuid, ${home}::uuid, 'Bo', date '2018-03-01', date '2024-01-01')`,
      );
      await db.asPerson(person, (tx) => tx.$executeRaw`select app_erase_child(${other}::uuid, ${home}::uuid)`);
      expect(await db.asPerson(person, (tx) => tx.child.findMany({ select: { id: true } }))).toEqual([{ id: child }]);
      await db.asPerson(person, (tx) => tx.$executeRaw`select app_erase_me(true)`);
      expect(await db.knownPerson("test:founder")).toBeNull();
      expect(await plain.asPerson("", (tx) => tx.membership.count())).toBe(0);
      const counts = await plain.asPerson(
        "00000000-0000-0000-0000-000000000000",
        (tx) => tx.$queryRaw`select app_erasing() as on, (select count(*)::int from erasure_count) as seen`,
      );
      expect(counts).toEqual([{ on: false, seen: 0 }]);
    } finally {
      await Promise.all([db.close(), plain.close()]);
    }
  });

  test("lets people join by a link and leave again, whose rows it cannot read otherwise", async () => {
    const db = connectDatabase(databaseOn(database.ownerUrl, name, server), { writers: 1, readers: 1 });
    try {
      const [sender, guest] = [await db.signIn("test:sender", "Sender"), await db.signIn("test:guest", "Guest")];
      const [home, second, child] = [randomUUID(), randomUUID(), randomUUID()];
      const found = (person: string, id: string) =>
        db.asPerson(
          person,
          (tx) => tx.$executeRaw`select app_found_household(${id}::uuid, 'Home', 'Europe/London', 'GBP')`,
        );
      await found(sender, home);
      await found(guest, second);
      const digests = ["a", "b"].map((letter) => letter.repeat(64)) as [string, string];
      await db.asPerson(sender, async (tx) => {
        await tx.$executeRaw`select app_found_child(${child}::uuid, ${home}::uuid, 'Ari', date '2018-03-01', date '2024-01-01')`;
        await tx.$executeRaw`insert into invitation (household_id, kind, role, child_id, token_digest, created_by_id, expires_at)
          values (${home}::uuid, 'CARER', 'COOK', null, ${digests[0]}, ${sender}::uuid, now() + interval '2 hours'),
            (${home}::uuid, 'HOME', null, ${child}::uuid, ${digests[1]}, ${sender}::uuid, now() + interval '2 hours')`;
      });
      const offered = await db.readAs(
        guest,
        (tx) => tx`select state, household_name, child_name from app_invitation(${digests[1]})`,
      );
      expect([...offered]).toEqual([{ state: "OPEN", household_name: "Home", child_name: "Ari" }]);
      const homeAccepted = await db.asPerson(
        guest,
        (tx) =>
          tx.$queryRaw`select outcome from app_accept_home_invitation(${digests[1]}, ${second}::uuid, current_date)`,
      );
      expect(homeAccepted).toEqual([{ outcome: "ACCEPTED" }]);
      expect(await db.asPerson(guest, (tx) => tx.household.count())).toBe(1);
      const accepted = await db.asPerson(
        guest,
        (tx) => tx.$queryRaw`select outcome from app_accept_invitation(${digests[0]})`,
      );
      expect(accepted).toEqual([{ outcome: "ACCEPTED" }]);
      expect(await db.asPerson(guest, (tx) => tx.household.count())).toBe(2);
      const change = (as: string, carer: string, role: string | null) =>
        db.asPerson(as, (tx) => tx.$executeRaw`select app_change_carer(${home}::uuid, ${carer}::uuid, ${role}::role)`);
      await change(sender, guest, "COORDINATOR");
      await db.asPerson(
        sender,
        (
          tx,
        ) => tx.$executeRaw`insert into invitation (household_id, kind, role, token_digest, created_by_id, expires_at)
          values (${home}::uuid, 'CARER', 'COOK', ${"c".repeat(64)}, ${sender}::uuid, now() + interval '2 hours')`,
      );
      await change(sender, sender, null);
      const ended = await db.readAs(guest, (tx) => tx`select state from app_invitation(${"c".repeat(64)})`);
      expect([...ended]).toEqual([{ state: "WITHDRAWN" }]);
    } finally {
      await db.close();
    }
  });

  test("lets an answer move boxes in both homes of a child, and a home be given up, whose rows it cannot read otherwise", async () => {
    const db = connectDatabase(databaseOn(database.ownerUrl, name, server), { writers: 1, readers: 1 });
    const day = (date: string) => new Date(`${date}T00:00:00Z`);
    try {
      const [one, two] = [await db.signIn("test:one", "One"), await db.signIn("test:two", "Two")];
      const [home, other, child] = [randomUUID(), randomUUID(), randomUUID()];
      const digest = "d".repeat(64);
      for (const [person, id] of [
        [one, home],
        [two, other],
      ] as const)
        await db.asPerson(
          person,
          (tx) => tx.$executeRaw`select app_found_household(${id}::uuid, 'Home', 'Europe/London', 'GBP')`,
        );
      const boxes = await db.asPerson(one, async (tx) => {
        await tx.$executeRaw`select app_found_child(${child}::uuid, ${home}::uuid, 'Ari', date '2018-03-01', date '2024-01-01')`;
        await tx.$executeRaw`insert into invitation (household_id, kind, child_id, token_digest, created_by_id, expires_at)
          values (${home}::uuid, 'HOME', ${child}::uuid, ${digest}, ${one}::uuid, now() + interval '2 hours')`;
        const week = await tx.week.create({ data: { householdId: home, weekStart: day("2027-01-11") } });
        const plan = await tx.weekPlan.create({
          data: {
            weekId: week.id, householdId: home, number: 1, state: "DRAFT", seed: 1n, steps: 1, problemHash: "-",
            catalogueVersion: "-", wishes: {}, cautions: [], readyUses: [],
          },
        }); // prettier-ignore
        const ids: string[] = [];
        for (const date of ["2027-01-11", "2027-01-12"])
          ids.push(
            (
              await tx.lunchBox.create({
                data: { weekPlanId: plan.id, childId: child, date: day(date), current: true },
                select: { id: true },
              })
            ).id,
          );
        return ids;
      });
      await db.asPerson(
        two,
        (tx) => tx.$executeRaw`select app_accept_home_invitation(${digest}, ${other}::uuid, current_date)`,
      );
      const { id } = await db.asPerson(two, (tx) =>
        tx.residenceException.create({
          data: {
            changeId: randomUUID(), childId: child, date: day("2027-01-12"), householdId: other, state: "PROPOSED",
            proposedByHouseholdId: other,
          },
        }),
      ); // prettier-ignore
      const answered = await db.asPerson(one, (tx) =>
        tx.residenceException.updateMany({
          where: { id },
          data: { state: "ACCEPTED", answeredAt: day("2026-11-25") },
        }),
      );
      expect(answered).toEqual({ count: 1 });
      // Asked for by the home that packs nothing: boxes and week are the other one's.
      const moved = await db.asPerson(
        two,
        (tx) => tx.$queryRaw`select day::text, standing, closed from app_move_boxes(${child}::uuid, date '2027-01-01')`,
      );
      expect(moved).toEqual([{ day: "2027-01-12", standing: "PLANNED", closed: false }]);
      const eaten = await db.asPerson(two, (tx) => tx.$queryRaw`select app_box_eaten(${boxes[0]}::uuid) as eaten`);
      expect(eaten).toEqual([{ eaten: true }]);
      const seen = await db.asPerson(one, (tx) =>
        tx.lunchBox.findMany({ select: { current: true, state: true }, orderBy: { date: "asc" } }),
      );
      expect(seen).toEqual([
        { current: true, state: "EATEN" },
        { current: false, state: "PLANNED" },
      ]);
      expect(await db.asPerson(one, (tx) => tx.week.findFirstOrThrow({ select: { revision: true } }))).toEqual({
        revision: 2,
      });
      const given = await db.asPerson(
        two,
        (tx) => tx.$queryRaw`select app_give_up_home(${child}::uuid, ${other}::uuid, date '2026-11-25') as given`,
      );
      expect(given).toEqual([{ given: true }]);
      expect(await db.asPerson(two, (tx) => tx.child.count())).toBe(0);
      expect(await db.asPerson(one, (tx) => tx.residenceException.findMany({ select: { state: true } }))).toEqual([
        { state: "WITHDRAWN" },
      ]);
    } finally {
      await db.close();
    }
  });

  test("cannot write the demonstration, and is told why", async () => {
    await expect(seedDemo(ownerUrl)).rejects.toThrow("BYPASSRLS");
  });
});
