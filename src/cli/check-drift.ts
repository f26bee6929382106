/** Fails when prisma/schema.prisma describes other tables than the migrations make, and shows the difference as SQL. */
import { diffMigrations } from "../database/schema-diff.js";

const sql = await diffMigrations();
if (sql !== "") {
  console.error(`prisma/schema.prisma and the migrations differ. This SQL is missing from the migrations:\n\n${sql}`);
  process.exit(1);
}
console.log("prisma/schema.prisma and the migrations agree.");
