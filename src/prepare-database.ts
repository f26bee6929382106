/** What the owner puts into a migrated database before anybody serves from it: reference data and the queue of jobs. */
import { allowUseOf } from "./database/migrate.js";
import { seedReference, type ReferenceSeeding } from "./database/seed.js";
import { prepareQueue, queueRechecksOfReload } from "./jobs/queue.js";

export async function prepareDatabase(ownerUrl: string): Promise<ReferenceSeeding> {
  const seeding = await seedReference(ownerUrl);
  const { schema } = await prepareQueue(ownerUrl);
  await allowUseOf(ownerUrl, schema);
  await queueRechecksOfReload(ownerUrl, seeding.version);
  return seeding;
}
