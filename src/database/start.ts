/** Opens the database the way the configuration asks for, ready to serve: migrated, and with the server's own weak role. */
import { join, resolve } from "node:path";
import { connectDatabase, type Database } from "./database.js";
import { keepSecret, startEmbedded, type Embedded } from "./embedded.js";
import { ensureServerRole, migrate } from "./migrate.js";

export interface OpenedDatabase {
  readonly db: Database;
  /** For seeds; null when the configuration names no owner. */
  readonly ownerUrl: string | null;
  /** The server's own role; worker processes connect with it. */
  readonly serverUrl: string;
  /** Migrations applied just now. */
  readonly applied: readonly string[];
  /** Closes the connections, then the embedded server. Signals are the caller's business: call this before leaving. */
  stop(): Promise<void>;
}

export interface DatabaseChoice {
  /** Connects to a server outside. Absent: an embedded one in `dataDirectory`. */
  readonly databaseUrl?: string | null;
  /** Migrates the server outside first and makes the role that `databaseUrl` names, when it is missing. */
  readonly ownerUrl?: string | null;
  readonly dataDirectory: string;
  /** Use the embedded server of a Noonpail that runs on the folder instead of refusing; it is neither migrated nor stopped. */
  readonly join?: boolean;
}

const DATABASE = "noonpail";
const SERVER_ROLE = "noonpail_server";

/** @throws when the role could see past row security, when a migration was edited, or when the embedded folder is in use */
export async function openDatabase(choice: DatabaseChoice): Promise<OpenedDatabase> {
  return choice.databaseUrl
    ? openOutside(choice.databaseUrl, choice.ownerUrl ?? null)
    : openEmbedded(choice.dataDirectory, choice.join ?? false);
}

async function openOutside(serverUrl: string, ownerUrl: string | null): Promise<OpenedDatabase> {
  const applied = ownerUrl ? await prepareOutside(ownerUrl, serverUrl) : [];
  const db = await connectWeakly(serverUrl);
  return { db, ownerUrl, serverUrl, applied, stop: () => db.close() };
}

/**
 * Migrates a server outside and makes the login role that the server's URL names, with the password it names.
 * @returns the migrations applied
 */
export async function prepareOutside(ownerUrl: string, serverUrl: string | null): Promise<readonly string[]> {
  const { applied } = await migrate(ownerUrl);
  const owner = new URL(ownerUrl).username;
  const { username, password } = new URL(serverUrl ?? ownerUrl);
  if (username !== owner)
    await ensureServerRole(ownerUrl, { name: decodeURIComponent(username), password: decodeURIComponent(password) });
  return applied;
}

async function openEmbedded(dataDirectory: string, mayJoin: boolean): Promise<OpenedDatabase> {
  const embedded = await startEmbedded(dataDirectory, { keep: true, join: mayJoin });
  try {
    if (embedded.joined) return await joinEmbedded(embedded, dataDirectory);
    await embedded.createDatabase(DATABASE);
    const ownerUrl = embedded.url(DATABASE);
    const { applied } = await migrate(ownerUrl);
    const { secret: password, made } = keepSecret(join(resolve(dataDirectory), "server-password"));
    const role = { name: SERVER_ROLE, password };
    await ensureServerRole(ownerUrl, role, { renewPassword: made });
    const serverUrl = embedded.url(DATABASE, role);
    const db = await connectWeakly(serverUrl);
    return {
      db,
      ownerUrl,
      serverUrl,
      applied,
      async stop() {
        await db.close();
        await embedded.stop();
      },
    };
  } catch (error) {
    await embedded.stop();
    throw error;
  }
}

async function joinEmbedded(embedded: Embedded, dataDirectory: string): Promise<OpenedDatabase> {
  const { secret: password } = keepSecret(join(resolve(dataDirectory), "server-password"));
  const serverUrl = embedded.url(DATABASE, { name: SERVER_ROLE, password });
  const db = await connectWeakly(serverUrl);
  // No owner: what runs there has migrated and seeded it.
  return { db, ownerUrl: null, serverUrl, applied: [], stop: () => db.close() };
}

async function connectWeakly(url: string): Promise<Database> {
  const db = connectDatabase(url);
  try {
    await db.refusePowerfulRole();
    return db;
  } catch (error) {
    await db.close();
    throw error;
  }
}
