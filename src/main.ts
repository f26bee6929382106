/** npm start: database, planner and server, wired by hand. */
import { readConfig, ConfigError } from "./config.js";
import { readDemoFiles } from "./database/seed.js";
import { createContextOpener } from "./graphql/open-context.js";
import { listenForNotices } from "./graphql/notices.js";
import { buildSchema } from "./graphql/schema.js";
import { familyFiles } from "./family-files.js";
import { createDevIssuer } from "./http/dev-issuer.js";
import { createHttpServer } from "./http/server.js";
import { createVerifier, remoteKeys } from "./http/tokens.js";
import { createLog } from "./log.js";
import { openApp } from "./open-app.js";
import { workOnJobs } from "./work-on-jobs.js";

const EXPLORER_QUERY = `# Sign in with the buttons above, then run this: your homes and the demo week.
query MyWeek {
  me {
    person { displayName }
    households {
      id
      name
      week(date: "2027-01-11") {
        revision
        plan {
          state
          boxes { date child { name } items { breakKey slot dish { name } grams pieces } }
        }
      }
    }
  }
}
`;

async function serve(): Promise<void> {
  const config = readConfig();
  const log = createLog(config.logLevel);
  const { app, queue, worksAlone, stop } = await openApp(config, (line) => log.info(line));
  if (worksAlone) await workOnJobs(app, queue, log);
  const notices = await listenForNotices(app.db);
  const issuer = config.tokens.kind === "development" ? await createDevIssuer(config, readDemoFiles().people) : null;
  const verify = createVerifier(config, issuer?.keys ?? remoteKeys(config));
  const server = createHttpServer({
    config,
    log,
    schema: buildSchema(),
    openContext: createContextOpener(app, notices),
    verify,
    issuer,
    isReady: async () => {
      const reachable = await app.db.isReachable();
      return {
        ready: reachable,
        checks: { database: reachable ? { ok: true } : { ok: false, problem: "does not answer" } },
      };
    },
    explorerQuery: EXPLORER_QUERY,
    below: familyFiles(app, verify),
  });
  const { url } = await server.start();
  log.info({ url, explorer: config.explorer ? `${url}/explorer` : null }, "serving");

  let leaving = false;
  const leave = (signal: string) => {
    if (leaving) return;
    leaving = true;
    log.info({ signal }, "stopping");
    void server
      .stop()
      .then(() => notices.stop())
      .then(stop)
      .then(() => process.exit(0))
      .catch((error: unknown) => {
        log.error({ err: error }, "did not stop cleanly");
        process.exit(1);
      });
  };
  process.once("SIGTERM", () => leave("SIGTERM"));
  process.once("SIGINT", () => leave("SIGINT"));
}

serve().catch((error: unknown) => {
  process.stderr.write(
    `${error instanceof ConfigError ? error.message : String(error instanceof Error ? error.stack : error)}\n`,
  );
  process.exit(1);
});
