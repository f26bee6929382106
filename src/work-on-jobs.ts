/** Takes queued plans and rechecks one by one, looks what carers are to be reminded of, and says in the log how it went; never whose. */
import type { App } from "./app/app.js";
import { giveUpPlanJob, workOnPlanJob } from "./app/plan-in-background.js";
import { workOnRecheckJob } from "./app/recheck.js";
import { remind } from "./app/remind.js";
import { explainPlanJob } from "./graphql/explain.js";
import type { JobQueue } from "./jobs/queue.js";
import type { Log } from "./log.js";

/** A reminder is told within so many seconds of its minute. */
const REMIND_SECONDS = 20;

export async function workOnJobs(app: App, queue: JobQueue, log: Log): Promise<void> {
  await queue.work({
    async work(job) {
      const began = performance.now();
      const ms = () => Math.round(performance.now() - began);
      try {
        const done = await workOnPlanJob(app, job, explainPlanJob);
        log.info({ jobId: job.id, ms: ms(), outcome: done.ok ? "planned" : done.error.kind }, "plan job");
      } catch (error) {
        log.error({ jobId: job.id, ms: ms(), err: error }, "plan job broke off");
        throw error;
      }
    },
    async giveUp(job) {
      const ended = await giveUpPlanJob(app, job, explainPlanJob);
      log.error({ jobId: job.id, outcome: ended.ok ? "planned" : ended.error.kind }, "plan job given up");
    },
    async recheck(job) {
      try {
        log.info({ jobId: job.id, ...(await workOnRecheckJob(app, job)) }, "recheck job");
      } catch (error) {
        log.error({ jobId: job.id, err: error }, "recheck job broke off");
        throw error;
      }
    },
  });
  queue.every(REMIND_SECONDS, async () => {
    try {
      const { homes, reminders, failed } = await remind(app);
      if (reminders > 0) log.info({ homes, reminders }, "reminders");
      for (const error of failed) log.error({ err: error }, "reminders of a home broke off");
    } catch (error) {
      log.error({ err: error }, "reminders broke off");
    }
  });
}
