/** Load generator, forked by read.bench.ts so that it shares no event loop with a server: one order in, one report out. */
import { Agent, request } from "node:http";
import { quantile } from "./machine.js";

export interface LoadOrder {
  readonly url: string;
  readonly authorization: string;
  readonly body: string;
  readonly seconds: number;
  readonly connections: number;
}
export interface LoadReport {
  readonly perSecond: number;
  readonly requests: number;
  readonly p50: number;
  readonly p99: number;
}

function once(agent: Agent, order: LoadOrder): Promise<{ bytes: number; status: number }> {
  return new Promise((resolve, reject) => {
    const req = request(
      order.url,
      {
        agent,
        method: "POST",
        headers: {
          authorization: order.authorization,
          accept: "application/json",
          "content-type": "application/json",
          "content-length": Buffer.byteLength(order.body),
        },
      },
      (res) => {
        let bytes = 0;
        res.on("data", (chunk: Buffer) => (bytes += chunk.byteLength));
        res.on("end", () => resolve({ bytes, status: res.statusCode ?? 0 }));
        res.on("error", reject);
      },
    );
    req.on("error", reject);
    req.end(order.body);
  });
}

async function run(order: LoadOrder): Promise<LoadReport> {
  const agent = new Agent({ keepAlive: true, maxSockets: order.connections });
  const first = await once(agent, order);
  const latencies: number[] = [];
  const began = performance.now();
  const until = began + order.seconds * 1000;
  const connection = async () => {
    while (performance.now() < until) {
      const sent = performance.now();
      const { bytes, status } = await once(agent, order);
      if (status !== 200 || bytes !== first.bytes)
        throw new Error(`an answer of ${bytes} bytes, status ${status}; the first had ${first.bytes}`);
      latencies.push(performance.now() - sent);
    }
  };
  await Promise.all(Array.from({ length: order.connections }, connection));
  const seconds = (performance.now() - began) / 1000;
  agent.destroy();
  return {
    perSecond: latencies.length / seconds,
    requests: latencies.length,
    p50: quantile(latencies, 0.5),
    p99: quantile(latencies, 0.99),
  };
}

process.on("message", (order: LoadOrder) => {
  run(order).then(
    (report) => process.send!({ report }),
    (error: unknown) => process.send!({ problem: String(error) }),
  );
});
