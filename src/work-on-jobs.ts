/** Takes queued plans one by one and says in the log how each ended; never whose. */
import type { App } from "./app/app.js";
import { workOnPlanJob } from "./app/plan-in-background.js";
import type { JobQueue } from "./jobs/queue.js";
import type { Log } from "./log.js";

export async function workOnJobs(app: App, queue: JobQueue, log: Log): Promise<void> {
  await queue.work(async (job) => {
    const began = performance.now();
    const done = await workOnPlanJob(app, job);
    const ms = Math.round(performance.now() - began);
    log.info({ ms, outcome: done.ok ? "planned" : done.error.kind }, "plan job");
  });
}
