/** A database of its own for a test file: a copy of the migrated template with the reference data. */
import { randomUUID } from "node:crypto";
import postgres from "postgres";
import { connectDatabase, type Database } from "../../src/database/database.js";
import { seedDemo } from "../../src/database/seed.js";
import { databaseOn, SERVER_ROLE, TEMPLATE } from "./test-server.js";

export interface TestDatabase {
  /** As the server sees it: a member of noonpail_app that owns nothing. */
  readonly db: Database;
  /** The superuser's URL of this copy. */
  readonly ownerUrl: string;
  /** The server's URL of this copy. */
  readonly serverUrl: string;
  /** The superuser's hand, for arranging and looking behind the wall. */
  readonly owner: postgres.Sql;
  /** A person who has signed in; answers their id. */
  newPerson(name: string): Promise<string>;
  /** A household whose coordinator is this person; answers its id. */
  newHousehold(personId: string, name?: string): Promise<string>;
  /** A child who lives in the household; answers its id. */
  newChild(personId: string, householdId: string, name?: string): Promise<string>;
  /** Lets a child live in a second home, or a person join one. */
  addHome(childId: string, householdId: string): Promise<void>;
  addCarer(personId: string, householdId: string, role: "COORDINATOR" | "COOK" | "HELPER" | "OBSERVER"): Promise<void>;
}

/** Call at the top of a test file. The parts may be used from the first `beforeAll` after it on. */
export function useDatabase(options: { demo?: boolean } = {}): TestDatabase {
  let ready: { db: Database; owner: postgres.Sql; ownerUrl: string; serverUrl: string } | undefined;
  const name = `t_${randomUUID().replaceAll("-", "")}`;
  const parts = () => {
    if (!ready) throw new Error("The test database is there from beforeAll on.");
    return ready;
  };

  beforeAll(async () => {
    const server = process.env["NOONPAIL_TEST_SERVER"];
    if (server === undefined)
      throw new Error("This run has no database: unset NO_DATABASE, and name no folder of pure tests alone.");
    await onServer(server, (sql) => sql`create database ${sql(name)} template ${sql(TEMPLATE)} strategy = file_copy`);
    const ownerUrl = databaseOn(server, name);
    const serverUrl = databaseOn(server, name, SERVER_ROLE);
    if (options.demo) await seedDemo(ownerUrl);
    ready = {
      db: connectDatabase(serverUrl),
      owner: postgres(ownerUrl, { max: 2, onnotice: () => undefined }),
      ownerUrl,
      serverUrl,
    };
  });

  afterAll(async () => {
    if (!ready) return;
    const { db, owner, ownerUrl } = ready;
    await Promise.all([db.close(), owner.end()]);
    await onServer(ownerUrl.replace(name, "postgres"), (sql) => sql`drop database ${sql(name)} with (force)`);
  });

  return {
    get db() {
      return parts().db;
    },
    get owner() {
      return parts().owner;
    },
    get ownerUrl() {
      return parts().ownerUrl;
    },
    get serverUrl() {
      return parts().serverUrl;
    },
    newPerson: (displayName) => parts().db.signIn(`test:${randomUUID()}`, displayName),
    async newHousehold(personId, householdName = "Test kitchen") {
      const id = randomUUID();
      await parts().db.asPerson(
        personId,
        (tx) => tx.$executeRaw`select app_found_household(${id}::uuid, ${householdName}, 'Europe/London', 'GBP')`,
      );
      return id;
    },
    async newChild(personId, householdId, childName = "Ari") {
      const id = randomUUID();
      await parts().db.asPerson(
        personId,
        (tx) =>
          tx.$executeRaw`select app_found_child(${id}::uuid, ${householdId}::uuid, ${childName}, date '2018-03-01', date '2024-01-01')`,
      );
      return id;
    },
    async addHome(childId, householdId) {
      await parts()
        .owner`insert into residence (child_id, household_id, since) values (${childId}, ${householdId}, '2024-01-01')`;
    },
    async addCarer(personId, householdId, role) {
      await parts()
        .owner`insert into membership (household_id, person_id, role) values (${householdId}, ${personId}, ${role})`;
    },
  };
}

async function onServer(url: string, run: (sql: postgres.Sql) => Promise<unknown>): Promise<void> {
  const sql = postgres(url, { max: 1, onnotice: () => undefined });
  try {
    await run(sql);
  } finally {
    await sql.end();
  }
}
