/** The bound's worker thread: one proof at a time, beside the planner's threads and never in front of a request. */
import { fileURLToPath } from "node:url";
import { Piscina } from "piscina";
import type { Prover } from "../app/app.js";
import type { BoundAnswer, BoundTask } from "./bound-worker.js";

export interface BoundPool extends Prover {
  stop(): Promise<void>;
}

/** The thread holds the solver's memory; it ends when it had nothing to do for so long. */
const IDLE_MS = 60_000;
/** Why a proof ends early: a later one about the same thing, or the end of the process. */
const GIVEN_UP = "given up";

/**
 * @param options.seconds how long a proof may grow
 * @param options.isBrief a proof ends with the linear program as a whole, sooner and with less to show
 * @param options.onError hears of proofs that broke off by a fault
 */
export function startBoundPool(options: {
  seconds: number;
  isBrief?: boolean;
  onError: (error: unknown) => void;
}): BoundPool {
  const pool = new Piscina({
    filename: fileURLToPath(new URL("./bound-thread.mjs", import.meta.url)),
    execArgv: [],
    minThreads: 0,
    maxThreads: 1,
    idleTimeout: IDLE_MS,
  });
  const underWay = new Map<string, AbortController>();
  const running = new Set<Promise<void>>();
  return {
    prove({ about, problem, objective }, keep) {
      underWay.get(about)?.abort(GIVEN_UP);
      const controller = new AbortController();
      underWay.set(about, controller);
      const task: BoundTask = {
        problem,
        objective,
        milliseconds: options.seconds * 1000,
        isBrief: options.isBrief ?? false,
      };
      const work = async (): Promise<void> => {
        try {
          // Only the end of the thread stops a linear program that is being solved.
          const answer = (await pool.run(task, { signal: controller.signal })) as BoundAnswer | null;
          if (answer !== null && !controller.signal.aborted) await keep(answer);
        } catch (error) {
          if (!controller.signal.aborted) options.onError(error);
        } finally {
          if (underWay.get(about) === controller) underWay.delete(about);
        }
      };
      const proof: Promise<void> = work().finally(() => running.delete(proof));
      running.add(proof);
    },
    async settled() {
      while (running.size > 0) await Promise.all(running);
    },
    async stop() {
      for (const controller of underWay.values()) controller.abort(GIVEN_UP);
      await Promise.all(running);
      await pool.destroy();
    },
  };
}
