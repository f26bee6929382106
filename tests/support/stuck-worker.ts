/** A worker process that takes a job and never finishes it, for a test that kills it. */
import { openQueue } from "../../src/jobs/queue.js";

const queue = await openQueue(process.argv[2]!, { lookSeconds: 1, expireSeconds: 2 });
await queue.work(() => {
  process.stdout.write("taken\n");
  return new Promise(() => undefined);
});
