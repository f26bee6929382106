/** Wires database, reference data and planner into an app; main, worker and the command line all start here. */
import type { App } from "./app/app.js";
import { createRateLimits, rateKey } from "./app/rate-limits.js";
import type { Config } from "./config.js";
import { seedDemo } from "./database/seed.js";
import { openDatabase } from "./database/start.js";
import { indexCatalogue } from "./domain/catalogue/derive.js";
import { startBoundPool } from "./jobs/bound-pool.js";
import { openQueue, type JobQueue } from "./jobs/queue.js";
import { startPlannerPool } from "./jobs/planner-pool.js";
import { briefly } from "./log.js";
import { PLAN_STEPS } from "./plan-steps.js";
import { prepareDatabase } from "./prepare-database.js";

export interface OpenedApp {
  readonly app: App;
  readonly queue: JobQueue;
  /** No other process can reach the database, so this one works on the jobs too. */
  readonly worksAlone: boolean;
  /** Closes planner and database; safe to call once. */
  stop(): Promise<void>;
}

/**
 * Migrates and seeds where an owner's URL is known, refuses a role that could see past row security.
 * @param options.ready planner threads start at once, else with the first week
 * @param options.join see `DatabaseChoice`
 * @param options.briefProofs see `startBoundPool`
 */
export async function openApp(
  config: Config,
  say: (line: string) => void = () => undefined,
  { ready, join, briefProofs }: { ready: boolean; join?: boolean; briefProofs?: boolean } = { ready: true },
): Promise<OpenedApp> {
  const opened = await openDatabase({
    databaseUrl: config.databaseUrl,
    ownerUrl: config.databaseOwnerUrl,
    dataDirectory: config.dataDir,
    join: join ?? false,
  });
  try {
    if (opened.ownerUrl !== null) {
      const reference = await prepareDatabase(opened.ownerUrl);
      if (reference.changed) say("loaded foods, bases and dishes");
      // Demo people exist only where nobody else could sign in as them.
      if (!config.production && config.databaseUrl === null && (await seedDemo(opened.ownerUrl)))
        say("loaded the demo homes and schools");
    }
    const reference = await opened.db.readReference();
    const queue = await openQueue(opened.serverUrl, {
      onError: (error) => say(`the queue of plans: ${briefly(error)}`),
    });
    const prover =
      config.boundSeconds > 0
        ? startBoundPool({
            seconds: config.boundSeconds,
            isBrief: briefProofs ?? false,
            onError: (error) => say(`the proof of a bound: ${briefly(error)}`),
          })
        : null;
    const planner = startPlannerPool(reference.catalogue, { ready, keepProblems: prover !== null });
    return {
      app: {
        db: opened.db,
        reference,
        index: indexCatalogue(reference.catalogue),
        planner,
        prover,
        queue,
        rates: createRateLimits({
          takeRate: opened.db.takeRate,
          rates: config.rates,
          key: rateKey(opened.serverUrl),
          clock: () => performance.now(),
          onError: (error) => say(`the rate limits cannot be counted: ${briefly(error)}`),
        }),
        now: () => new Date(),
        planSteps: config.planSteps ?? PLAN_STEPS,
      },
      queue,
      worksAlone: config.databaseUrl === null,
      async stop() {
        await queue.stop();
        await planner.stop();
        await prover?.stop();
        await opened.stop();
      },
    };
  } catch (error) {
    await opened.stop();
    throw error;
  }
}
