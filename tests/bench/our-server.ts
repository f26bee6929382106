/** Our server as `npm start` serves it, in a process of its own. */
import { spawn, type ChildProcess } from "node:child_process";
import { readFileSync } from "node:fs";
import { createServer, type AddressInfo } from "node:net";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));

export function stopChild(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((resolve) => {
    child.once("exit", () => resolve());
    child.kill("SIGTERM");
  });
}

export function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const probe = createServer();
    probe.listen(0, "127.0.0.1", () => {
      const { port } = probe.address() as AddressInfo;
      probe.close(() => resolve(port));
    });
  });
}

export interface OurServer {
  readonly url: string;
  readonly pid: number;
  token(subject: string): Promise<string>;
  ask<T>(authorization: string, query: string, variables: object): Promise<T>;
  stop(): Promise<void>;
}

/** Node's arguments in `npm start`, which is "tsx" with them: started without the loader's own process between. */
function startArguments(): string[] {
  const { scripts } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { scripts: { start: string } };
  const [command, ...rest] = scripts.start.split(" ");
  if (command !== "tsx") throw new Error(`npm start is not what this benchmark starts: ${scripts.start}`);
  return ["--import", "tsx", ...rest];
}

/** The command of `npm start`, on the given database. @param flags more of Node's */
export async function startOurs(
  databaseUrl: string,
  dataDir: string,
  port: number,
  flags: readonly string[] = [],
): Promise<OurServer> {
  const child = spawn(process.execPath, [...flags, ...startArguments()], {
    cwd: root,
    env: {
      ...process.env,
      BOUND_SECONDS: "0",
      DATABASE_URL: databaseUrl,
      DATA_DIR: dataDir,
      HOST: "127.0.0.1",
      PORT: String(port),
      NODE_ENV: "development",
    },
    stdio: ["ignore", "ignore", "inherit"],
  });
  const url = `http://127.0.0.1:${port}`;
  const patience = performance.now() + 60_000;
  for (;;) {
    const ready = await fetch(`${url}/health/ready`).catch(() => null);
    if (ready?.ok) break;
    if (child.exitCode !== null || performance.now() > patience) throw new Error("our server did not start");
    await wait(100);
  }
  return {
    url,
    pid: child.pid!,
    async token(subject) {
      const answer = await fetch(`${url}/dev/token`, {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify({ person: subject }),
      });
      return `Bearer ${((await answer.json()) as { access_token: string }).access_token}`;
    },
    ask: (authorization, query, variables) =>
      post(`${url}/graphql`, authorization, JSON.stringify({ query, variables })),
    stop: () => stopChild(child),
  };
}

export async function post<T>(url: string, authorization: string, body: string): Promise<T> {
  const answer = await fetch(url, {
    method: "POST",
    headers: { authorization, "content-type": "application/json", accept: "application/json" },
    body,
  });
  const text = await answer.text();
  const read = JSON.parse(text) as { data?: T; errors?: unknown };
  if (!answer.ok || !read.data || read.errors)
    throw new Error(`${url} answered ${answer.status}: ${text.slice(0, 600)}`);
  return read.data;
}
