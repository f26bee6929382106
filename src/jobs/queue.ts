/** Long plans and rechecks as jobs in PostgreSQL: they survive a killed worker. A plan runs as the person who asked. */
import { randomUUID } from "node:crypto";
import PgBoss from "pg-boss";
import type { PlanJob, Queue, RecheckJob } from "../app/app.js";
import type { Tx } from "../database/database.js";
import { oncePerReference } from "../database/recheck.js";

const QUEUE = "plan-week";
const RECHECK = "recheck-boxes";
/** Where the library puts a job that has failed or lost its worker once too often. */
const GIVEN_UP = "plan-week-given-up";
const SCHEMA = "noonpail_jobs";

/** A job whose worker has died is given to another after this long. Planning itself takes far less. */
const EXPIRE_SECONDS = 60;
const RETRIES = 3;
/** A recheck is never given up within a day: a worker of yesterday's catalogue hands it on until one of today's comes. */
const RECHECK_RETRIES = 5_000;
const RECHECK_DELAY_SECONDS = 20;

export interface JobHandlers {
  /** Works on a job. When it throws, or its worker dies, the job comes again, at most three times. */
  work(job: PlanJob): Promise<void>;
  /** Is told of a job that will not come again. */
  giveUp(job: PlanJob): Promise<void>;
  /** Looks at boxes again. When it throws, the job comes again after a while. */
  recheck(job: RecheckJob): Promise<void>;
}

export interface JobQueue extends Queue {
  /** Takes jobs of each kind one by one until the queue stops. */
  work(handlers: JobHandlers): Promise<void>;
  /** Runs something at once and again and again until the queue stops; a run that takes longer leaves the next ones out. */
  every(seconds: number, run: () => Promise<void>): void;
  /** Lets the job in hand end, for ten seconds; after that it goes to another worker. */
  stop(): Promise<void>;
}

export interface QueueOptions {
  /** Seconds between looks for jobs whose worker has died; for new jobs the same, at most two. At least 1. */
  readonly lookSeconds?: number;
  /** Seconds after which a job that was taken and has not ended is given to another worker. */
  readonly expireSeconds?: number;
  /** Hears what goes wrong between the queue and its database, such as a lost connection. */
  readonly onError?: (error: Error) => void;
}

/** Makes schema and queues, as the owner; safe to repeat. The server's rights are granted apart, on the schema's name. */
export async function prepareQueue(ownerUrl: string): Promise<{ schema: string }> {
  const boss = new PgBoss({ connectionString: ownerUrl, schema: SCHEMA, supervise: false, schedule: false, max: 1 });
  await boss.start();
  for (const name of [QUEUE, GIVEN_UP, RECHECK]) await boss.createQueue(name, { name, policy: "standard" });
  await boss.stop({ graceful: false, wait: true });
  return { schema: SCHEMA };
}

const recheckOptions = {
  retryLimit: RECHECK_RETRIES,
  retryDelay: RECHECK_DELAY_SECONDS,
  expireInSeconds: EXPIRE_SECONDS,
};

/**
 * Queues a recheck of every household, once for each content of the reference data, together with the note that it was done.
 * As the owner, on a prepared queue; whoever works on jobs next does them.
 */
export async function queueRechecksOfReload(ownerUrl: string, version: string): Promise<void> {
  await oncePerReference(ownerUrl, version, async (householdIds, executeSql) => {
    if (householdIds.length === 0) return;
    const boss = new PgBoss({ connectionString: ownerUrl, schema: SCHEMA, supervise: false, schedule: false, max: 1 });
    await boss.start();
    try {
      for (const householdId of householdIds) {
        const job: RecheckJob = {
          id: randomUUID(),
          scope: { childIds: [], schoolIds: [], householdIds: [householdId] },
        };
        await boss.send(RECHECK, job, { id: job.id, ...recheckOptions, db: { executeSql } });
      }
    } finally {
      await boss.stop({ graceful: false, wait: true });
    }
  });
}

/** @throws when the owner has not prepared the queue in this database */
export async function openQueue(serverUrl: string, options: QueueOptions = {}): Promise<JobQueue> {
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
  // In the asker's transaction, on its connection.
  const within = (tx: Tx) => ({
    // What the library leaves out is null in SQL, and data is JSON.
    executeSql: async (text: string, values: unknown[]) => ({
      rows: await tx.$queryRawUnsafe<unknown[]>(
        text,
        ...values.map((value) =>
          typeof value === "object" && value !== null ? JSON.stringify(value) : (value ?? null),
        ),
      ),
    }),
  });
  const take = <J extends object>(name: string, handle: (job: J) => Promise<void>) =>
    boss.work<J>(name, { pollingIntervalSeconds: Math.min(2, lookSeconds), batchSize: 1 }, async ([job]) => {
      if (job) await handle(job.data);
    });
  const timers: NodeJS.Timeout[] = [];
  const inHand = new Set<Promise<void>>();
  return {
    async send(job, tx) {
      await boss.send(QUEUE, job, {
        id: job.id,
        retryLimit: RETRIES,
        expireInSeconds: expireSeconds,
        deadLetter: GIVEN_UP,
        db: within(tx),
      });
    },
    async sendRecheck(job, tx) {
      await boss.send(RECHECK, job, { id: job.id, ...recheckOptions, ...(tx === null ? {} : { db: within(tx) }) });
    },
    async work({ work, giveUp, recheck }) {
      await take(QUEUE, work);
      await take(GIVEN_UP, giveUp);
      await take(RECHECK, recheck);
    },
    every(seconds, run) {
      let isRunning = false;
      const once = () => {
        if (isRunning) return;
        isRunning = true;
        const done: Promise<void> = run()
          .catch((error: unknown) => onError(error instanceof Error ? error : new Error(String(error))))
          .finally(() => {
            isRunning = false;
            inHand.delete(done);
          });
        inHand.add(done);
      };
      once();
      timers.push(setInterval(once, seconds * 1000));
    },
    async stop() {
      timers.splice(0).forEach(clearInterval);
      await Promise.all(inHand);
      await boss.stop({ graceful: true, wait: true, timeout: 10_000 });
    },
  };
}
