/** A door between a server and its PostgreSQL that counts what passes: statements are counted where they are sent. */
import { connect, createServer, type AddressInfo, type Socket } from "node:net";

export interface StatementCounter {
  /** The database's address through this door. */
  readonly url: string;
  /** Statements since the last call. */
  take(): number;
  stop(): Promise<void>;
}

/** Message types of the frontend that run a statement: Execute and simple Query (PostgreSQL protocol 3.0, "Message Formats"). */
const RUNS = new Set([0x45, 0x51]);

/**
 * Counts in a stream of messages: a startup packet without a type byte, then type byte and length each. Only connections
 * whose startup packet names the application count, so that queues and listeners beside it do not.
 */
function createCount(application: string, onStatement: () => void): (chunk: Buffer) => void {
  let rest = Buffer.alloc(0);
  let started = false;
  let counts = false;
  return (chunk) => {
    rest = Buffer.concat([rest, chunk]);
    for (;;) {
      const at = started ? 1 : 0;
      if (rest.length < at + 4) return;
      const size = at + rest.readUInt32BE(at);
      if (rest.length < size) return;
      if (!started) counts = rest.toString("latin1", 0, size).split("\0").includes(application);
      else if (counts && RUNS.has(rest[0]!)) onStatement();
      started = true;
      rest = rest.subarray(size);
    }
  };
}

/** @param application the `application_name` of the connections to count */
export async function startStatementCounter(databaseUrl: string, application: string): Promise<StatementCounter> {
  const target = new URL(databaseUrl);
  const open = new Set<Socket>();
  let statements = 0;
  const server = createServer((near) => {
    const far = connect(Number(target.port), target.hostname);
    const count = createCount(application, () => (statements += 1));
    near.on("data", count);
    near.pipe(far).pipe(near);
    for (const socket of [near, far]) {
      open.add(socket);
      socket.on("error", () => [near, far].forEach((end) => end.destroy()));
      socket.on("close", () => open.delete(socket));
    }
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const url = new URL(databaseUrl);
  url.port = String((server.address() as AddressInfo).port);
  return {
    url: url.href,
    take() {
      const taken = statements;
      statements = 0;
      return taken;
    },
    stop() {
      open.forEach((socket) => socket.destroy());
      return new Promise((resolve) => server.close(() => resolve()));
    },
  };
}
