import { createHash } from "node:crypto";
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import postgres from "postgres";

const LOCK = 7_306_142; // any fixed number: one migration at a time in a database

export interface MigrationReport {
  readonly applied: readonly string[];
  readonly alreadyThere: number;
}

/**
 * Applies prisma/migrations/<name>/migration.sql in order, each in a transaction, and keeps Prisma's own bookkeeping table.
 * Throws when a migration that was applied has been edited since.
 * @param ownerUrl a role that owns the schema (and may create roles the first time)
 */
export async function migrate(ownerUrl: string, directory = "prisma/migrations"): Promise<MigrationReport> {
  const sql = postgres(ownerUrl, { max: 1, onnotice: () => undefined });
  try {
    return await sql.begin(async (tx) => {
      await tx`select pg_advisory_xact_lock(${LOCK})`;
      await tx`create table if not exists _prisma_migrations (
        id varchar(36) primary key, checksum varchar(64) not null, finished_at timestamptz, migration_name varchar(255) not null,
        logs text, rolled_back_at timestamptz, started_at timestamptz not null default now(), applied_steps_count integer not null default 0)`;
      const known = new Map(
        (
          await tx<
            { migration_name: string; checksum: string }[]
          >`select migration_name, checksum from _prisma_migrations where finished_at is not null`
        ).map((row) => [row.migration_name, row.checksum]),
      );
      const names = readdirSync(directory, { withFileTypes: true })
        .filter((entry) => entry.isDirectory())
        .map((entry) => entry.name)
        .sort();
      const applied: string[] = [];
      for (const name of names) {
        const text = readFileSync(join(directory, name, "migration.sql"), "utf8");
        const checksum = createHash("sha256").update(text).digest("hex");
        const before = known.get(name);
        if (before !== undefined) {
          if (before !== checksum)
            throw new Error(`Migration ${name} was edited after it had been applied; add a new one instead.`);
          continue;
        }
        await tx.unsafe(text);
        await tx`insert into _prisma_migrations (id, checksum, finished_at, migration_name, applied_steps_count)
          values (gen_random_uuid()::text, ${checksum}, now(), ${name}, 1)`;
        applied.push(name);
      }
      return { applied, alreadyThere: names.length - applied.length };
    });
  } finally {
    await sql.end();
  }
}

/**
 * The login role of the server: a member of noonpail_app, without any right of its own. A role that is there already only
 * becomes a member; its password changes when `renewPassword` asks for it.
 */
export async function ensureServerRole(
  ownerUrl: string,
  role: { name: string; password: string },
  options: { renewPassword?: boolean } = {},
): Promise<void> {
  const sql = postgres(ownerUrl, { max: 1, onnotice: () => undefined });
  // Role statements take no parameters; format() quotes.
  const run = async (template: string, ...parts: string[]) => {
    const [row] = await sql<
      { statement: string }[]
    >`select format(${template}, variadic ${parts}::text[]) as statement`;
    await sql.unsafe(row!.statement);
  };
  try {
    const [known] = await sql<{ member: boolean }[]>`
      select pg_has_role(oid, 'noonpail_app', 'usage') as member from pg_roles where rolname = ${role.name}`;
    if (!known)
      await run(
        "create role %I login password %L nosuperuser nobypassrls in role noonpail_app",
        role.name,
        role.password,
      );
    if (known && !known.member) await run("grant noonpail_app to %I", role.name);
    if (known && options.renewPassword) await run("alter role %I password %L", role.name, role.password);
  } finally {
    await sql.end();
  }
}

/** Lets the server use the tables of a schema that a library keeps for itself, now and later ones. */
export async function allowUseOf(ownerUrl: string, schema: string): Promise<void> {
  const sql = postgres(ownerUrl, { max: 1, onnotice: () => undefined });
  try {
    await sql`grant usage on schema ${sql(schema)} to noonpail_app`;
    await sql`grant select, insert, update, delete on all tables in schema ${sql(schema)} to noonpail_app`;
    await sql`grant usage on all sequences in schema ${sql(schema)} to noonpail_app`;
    await sql`grant execute on all functions in schema ${sql(schema)} to noonpail_app`;
  } finally {
    await sql.end();
  }
}
