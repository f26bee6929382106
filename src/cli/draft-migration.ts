/** npm run db:draft -- add_something: writes the SQL that prisma/schema.prisma asks for as the next migration, to be read and signed. */
import { mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { diffMigrations } from "../database/schema-diff.js";

const directory = "prisma/migrations";
const name = process.argv[2];
if (name === undefined || !/^[a-z][a-z0-9_]{2,60}$/.test(name)) {
  console.error("Give the migration a name in lower case with underscores: npm run db:draft -- add_season");
  process.exit(1);
}
const sql = await diffMigrations();
if (sql === "") {
  console.log("The migrations already make what prisma/schema.prisma describes: nothing to draft.");
} else {
  const last = Math.max(
    0,
    ...readdirSync(directory)
      .map((entry) => Number.parseInt(entry, 10))
      .filter(Number.isFinite),
  );
  const path = join(directory, `${String(last + 1).padStart(4, "0")}_${name}`);
  mkdirSync(path);
  writeFileSync(join(path, "migration.sql"), `${sql}\n`);
  console.log(`${sql}\n\nWritten to ${path}/migration.sql. Policies, grants, checks and functions are yours to add.`);
}
