/** One PostgreSQL for a whole test run, and the template every test file copies: migrated, with reference data. */
import postgres from "postgres";
import { makeScratchDirectory, startEmbedded } from "../../src/database/embedded.js";
import { ensureServerRole, migrate } from "../../src/database/migrate.js";
import { seedReference } from "../../src/database/seed.js";

export const TEMPLATE = "noonpail_template";
export const SERVER_ROLE = { name: "noonpail_server", password: "only-for-tests" };

export interface TestServer {
  readonly ownerUrl: string;
  stop(): Promise<unknown>;
}

async function startContainer(): Promise<TestServer> {
  const { PostgreSqlContainer } = await import("@testcontainers/postgresql");
  const { Wait } = await import("testcontainers");
  const image = process.env["TEST_DATABASE_IMAGE"] ?? "postgres:18-alpine";
  const container = await new PostgreSqlContainer(image).withWaitStrategy(Wait.forListeningPorts()).start();
  const ownerUrl = container.getConnectionUri();
  await untilItAnswers(ownerUrl);
  return { ownerUrl, stop: () => container.stop() };
}

/** The image's entry point listens, restarts, and listens again. */
async function untilItAnswers(ownerUrl: string): Promise<void> {
  for (let attempt = 1; ; attempt += 1) {
    const sql = postgres(ownerUrl, { max: 1, connect_timeout: 2 });
    try {
      await sql`select 1`;
      return;
    } catch (error) {
      if (attempt === 60) throw error;
      await new Promise((done) => setTimeout(done, 250));
    } finally {
      await sql.end({ timeout: 1 });
    }
  }
}

async function prepareTemplate(ownerUrl: string): Promise<void> {
  const templateUrl = databaseOn(ownerUrl, TEMPLATE);
  const sql = postgres(ownerUrl, { max: 1, onnotice: () => undefined });
  try {
    await sql`create database ${sql(TEMPLATE)}`;
    await migrate(templateUrl);
    await seedReference(templateUrl);
    await ensureServerRole(templateUrl, SERVER_ROLE);
    // Copying needs a template that nobody is connected to.
    await sql`alter database ${sql(TEMPLATE)} with is_template true allow_connections false`;
  } finally {
    await sql.end();
  }
}

export function databaseOn(serverUrl: string, database: string, role?: { name: string; password: string }): string {
  const url = new URL(serverUrl);
  url.pathname = `/${database}`;
  if (role) Object.assign(url, { username: role.name, password: encodeURIComponent(role.password) });
  return url.href;
}

/** @param kind "container" takes the image named by TEST_DATABASE_IMAGE through whatever container engine there is */
export async function startTestServer(kind: "embedded" | "container"): Promise<TestServer> {
  const server =
    kind === "container" ? await startContainer() : await startEmbedded(makeScratchDirectory(), { keep: false });
  try {
    await prepareTemplate(server.ownerUrl);
    return server;
  } catch (error) {
    await server.stop();
    throw error;
  }
}
