/** npm run db:migrate: applies the migrations, makes the server's role and loads the reference data. */
import { readConfig } from "../config.js";
import { prepareDatabase } from "../prepare-database.js";
import { openDatabase, prepareOutside } from "../database/start.js";

const config = readConfig();
if (config.databaseUrl !== null && config.databaseOwnerUrl === null) {
  console.error("Set DATABASE_OWNER_URL beside DATABASE_URL: the server's own role may not change tables.");
  process.exit(1);
}

const report = async (applied: readonly string[], ownerUrl: string) => {
  const reference = await prepareDatabase(ownerUrl);
  console.log(applied.length > 0 ? `Applied: ${applied.join(", ")}.` : "Every migration was applied already.");
  console.log(
    `Reference data ${reference.changed ? "loaded" : "was there already"}, version ${reference.version.slice(0, 12)}.`,
  );
};

if (config.databaseOwnerUrl !== null) {
  await report(await prepareOutside(config.databaseOwnerUrl, config.databaseUrl), config.databaseOwnerUrl);
} else {
  const opened = await openDatabase({ dataDirectory: config.dataDir });
  try {
    await report(opened.applied, opened.ownerUrl!);
  } finally {
    await opened.stop();
  }
}
