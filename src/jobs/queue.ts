/** Long plans as jobs in PostgreSQL: they survive a killed worker and run as the person who asked. */
import PgBoss from "pg-boss";
import type { PlanJob, PlanQueue } from "../app/app.js";

const QUEUE = "plan-week";
const SCHEMA = "noonpail_jobs";

/** A job whose worker has died is given to another after this long. Planning itself takes far less. */
const EXPIRE_SECONDS = 60;
const RETRIES = 3;

export interface JobQueue extends PlanQueue {
  /** Takes jobs one by one until the queue stops. A job whose handler throws comes again, at most three times. */
  work(handle: (job: PlanJob) => Promise<void>): Promise<void>;
  stop(): Promise<void>;
}

/** Makes schema and queue, as the owner. */
export async function prepareQueue(ownerUrl: string): Promise<{ schema: string }> {
  const boss = new PgBoss({ connectionString: ownerUrl, schema: SCHEMA, supervise: false, schedule: false, max: 1 });
  await boss.start();
  await boss.createQueue(QUEUE, {
    name: QUEUE,
    policy: "standard",
    retryLimit: RETRIES,
    expireInSeconds: EXPIRE_SECONDS,
  });
  await boss.stop({ graceful: false, wait: true });
  return { schema: SCHEMA };
}

/** @param options.lookSeconds how often the table is looked at for jobs and for jobs whose worker has died */
export async function openQueue(
  serverUrl: string,
  options: { lookSeconds?: number; expireSeconds?: number; onError?: (error: Error) => void } = {},
): Promise<JobQueue> {
  const { lookSeconds = 5, expireSeconds = EXPIRE_SECONDS, onError = () => undefined } = options;
  const boss = new PgBoss({
    connectionString: serverUrl,
    schema: SCHEMA,
    // The server's role may use the tables, not change them.
    migrate: false,
    schedule: false,
    maintenanceIntervalSeconds: lookSeconds,
    max: 2,
  });
  boss.on("error", onError);
  try {
    await boss.start();
  } catch (error) {
    const missing = error instanceof Error && error.message.includes("not installed");
    throw missing
      ? new Error("The queue of plans is not in this database: run npm run db:migrate.", { cause: error })
      : error;
  }
  return {
    async send(job) {
      await boss.send(QUEUE, job, {
        singletonKey: job.input.idempotencyKey,
        retryLimit: RETRIES,
        expireInSeconds: expireSeconds,
      });
    },
    async work(handle) {
      await boss.work<PlanJob>(
        QUEUE,
        { pollingIntervalSeconds: Math.min(2, lookSeconds), batchSize: 1 },
        async ([job]) => {
          if (job) await handle(job.data);
        },
      );
    },
    stop: () => boss.stop({ graceful: true, wait: true, timeout: 10_000 }),
  };
}
