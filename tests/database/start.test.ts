import { spawn, type ChildProcess } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { makeScratchDirectory } from "../../src/database/embedded.js";
import { openDatabase, type OpenedDatabase } from "../../src/database/start.js";
import { useDatabase } from "../support/database.js";

const outside = useDatabase();

/** Another Noonpail that opens the folder's database and keeps it; resolves once it has it. */
function openElsewhere(directory: string): Promise<ChildProcess> {
  const script = `import { openDatabase } from "./src/database/start.ts";
    await openDatabase({ dataDirectory: process.argv[1] }); process.stdout.write("open"); setInterval(() => undefined, 1_000);`;
  const child = spawn(process.execPath, ["--import", "tsx", "--input-type=module", "--eval", script, directory], {
    stdio: ["ignore", "pipe", "pipe"],
  });
  return new Promise((done, reject) => {
    let complaint = "";
    child.stderr.on("data", (text) => (complaint += String(text)));
    child.stdout.once("data", () => done(child));
    child.once("exit", (code) => reject(new Error(`left with ${code}: ${complaint}`)));
  });
}

/** As a power cut would: no handler runs, so its PostgreSQL is left over. */
async function kill(child: ChildProcess): Promise<void> {
  const gone = new Promise((done) => child.once("exit", done));
  child.kill("SIGKILL");
  await gone;
}

const serverProcess = (directory: string) =>
  Number(readFileSync(join(directory, "postgres", "postmaster.pid"), "utf8").split("\n")[0]);
const isAlive = (pid: number) => {
  try {
    return process.kill(pid, 0);
  } catch {
    return false;
  }
};

describe("the embedded database", () => {
  const directory = makeScratchDirectory();
  let opened: OpenedDatabase | undefined;
  let other: ChildProcess | undefined;
  const open = async () => (opened = await openDatabase({ dataDirectory: directory }));

  afterEach(async () => {
    await opened?.stop();
    if (other?.exitCode === null && other.signalCode === null) await kill(other);
    opened = other = undefined;
  });
  afterAll(async () => {
    // Stops what a killed process left over.
    await (await open()).stop();
    opened = undefined;
    rmSync(directory, { recursive: true, force: true });
  });

  test("a first start migrates and keeps its secrets where only their owner reads them", async () => {
    const { db, applied } = await open();
    expect(applied.length).toBeGreaterThan(0);
    expect(await db.isReachable()).toBe(true);
    for (const secret of ["owner-password", "server-password"])
      expect(statSync(join(directory, secret)).mode & 0o777).toBe(0o600);
  });

  test("the next start finds everything, the people included", async () => {
    const person = await (await open()).db.signIn("test:returns", "Returns");
    await opened!.stop();
    const { db, applied } = await open();
    expect(applied).toEqual([]);
    expect(await db.signIn("test:returns", "Returns")).toBe(person);
  });

  test("a lost password file only means a new password", async () => {
    rmSync(join(directory, "server-password"));
    expect(await (await open()).db.isReachable()).toBe(true);
  });

  test("stopping leaves no server and no lock", async () => {
    await open();
    const pid = serverProcess(directory);
    await opened!.stop();
    expect(isAlive(pid)).toBe(false);
    expect(existsSync(join(directory, "process-id"))).toBe(false);
  });

  test("a folder that a living Noonpail uses is refused, naming that process; its database goes on", async () => {
    other = await openElsewhere(directory);
    const pid = serverProcess(directory);
    await expect(open()).rejects.toThrow(`Another Noonpail (process ${other.pid}) uses the data folder`);
    expect(isAlive(pid)).toBe(true);
  });

  test("the server of a killed Noonpail is stopped, and nothing that was saved is lost", async () => {
    const person = await (await open()).db.signIn("test:saved", "Saved");
    await opened!.stop();
    other = await openElsewhere(directory);
    const leftOver = serverProcess(directory);
    await kill(other);
    expect(isAlive(leftOver)).toBe(true);
    const { db } = await open();
    // PostgreSQL lets one server at a time have a folder, so another one there means the first has let go.
    expect(serverProcess(directory)).not.toBe(leftOver);
    expect(await db.signIn("test:saved", "Saved")).toBe(person);
  });

  test("a lock file that names a process of another program is taken away", async () => {
    await (await open()).stop();
    // This very test run lives, and is no PostgreSQL.
    writeFileSync(join(directory, "postgres", "postmaster.pid"), `${process.pid}\n${directory}\n0\n1\n`);
    expect(await (await open()).db.isReachable()).toBe(true);
  });

  test("a first start that was cut short is begun again", async () => {
    const cut = makeScratchDirectory();
    try {
      writeFileSync(join(cut, "owner-password"), "kept", { mode: 0o600 });
      const half = join(cut, "postgres");
      mkdirSync(half);
      writeFileSync(join(half, "postgresql.conf"), "");
      opened = await openDatabase({ dataDirectory: cut });
      expect(await opened.db.isReachable()).toBe(true);
      await opened.stop();
    } finally {
      rmSync(cut, { recursive: true, force: true });
    }
  });
});

describe("a server outside", () => {
  test("is used as it is, with no owner and no migration", async () => {
    const { db, ownerUrl, applied, stop } = await openDatabase({
      databaseUrl: outside.serverUrl,
      dataDirectory: "/nowhere",
    });
    expect([ownerUrl, applied, await db.isReachable()]).toEqual([null, [], true]);
    await stop();
  });

  test("with an owner's URL the server's role is made, and may sign people in", async () => {
    const serverUrl = new URL(outside.serverUrl);
    Object.assign(serverUrl, { username: "test_made", password: encodeURIComponent("50% 'q' \"d\" @") });
    const { db, stop } = await openDatabase({
      databaseUrl: serverUrl.href,
      ownerUrl: outside.ownerUrl,
      dataDirectory: "/nowhere",
    });
    expect(await db.signIn("test:made", "Made")).toMatch(/^[0-9a-f-]{36}$/);
    await stop();
    await outside.owner`drop role test_made`;
  });

  test("is refused with the owner's own role", async () => {
    await expect(openDatabase({ databaseUrl: outside.ownerUrl, dataDirectory: "/nowhere" })).rejects.toThrow(
      "row security would not hold",
    );
  });
});
