/** npm run worker: works on queued plans beside an outside database; the server only sends them. */
import { ConfigError, readConfig } from "./config.js";
import { createLog, endOnFault } from "./log.js";
import { openApp } from "./open-app.js";
import { workOnJobs } from "./work-on-jobs.js";

async function work(): Promise<void> {
  const config = readConfig();
  const log = createLog(config.logLevel);
  endOnFault(log);
  if (config.databaseUrl === null) {
    throw new Error("The worker needs DATABASE_URL: with the embedded database the server works on its jobs itself.");
  }
  const { app, queue, stop } = await openApp(config, (line) => log.info(line));
  await workOnJobs(app, queue, log);
  log.info("working");
  const leave = (signal: string) => {
    log.info({ signal }, "stopping");
    void stop().then(
      () => process.exit(0),
      (error: unknown) => {
        log.error({ err: error }, "did not stop cleanly");
        process.exit(1);
      },
    );
  };
  process.once("SIGTERM", () => leave("SIGTERM"));
  process.once("SIGINT", () => leave("SIGINT"));
}

work().catch((error: unknown) => {
  process.stderr.write(
    `${error instanceof ConfigError ? error.message : String(error instanceof Error ? error.stack : error)}\n`,
  );
  process.exit(1);
});
