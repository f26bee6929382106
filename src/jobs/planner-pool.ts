/** The planner behind its worker threads, so that a search never stands in the way of a request. */
import { fileURLToPath } from "node:url";
import { MessageChannel } from "node:worker_threads";
import { Piscina } from "piscina";
import type { Planner } from "../app/app.js";
import type { CatalogueBrief, WeekBrief } from "../domain/brief.js";
import { ownRowsOf } from "../domain/catalogue/own-rows.js";
import type { Alternative } from "../domain/planner/alternatives.js";
import type { WeekOutcome } from "../domain/planner/plan-week.js";
import type { LightBrief, PlannerTask } from "./planner-worker.js";

export interface PlannerPool extends Planner {
  stop(): Promise<void>;
}

/** A thread that had nothing to do for so long ends. */
const IDLE_MS = 600_000;

const withoutCatalogue = ({ catalogue, ...light }: WeekBrief): LightBrief => ({ ...light, own: ownRowsOf(catalogue) });

/**
 * @param options.threads how many weeks are planned at once; more wait their turn
 * @param options.ready threads start at once, so that the first week does not wait for them; else with the first week
 */
export function startPlannerPool(
  catalogue: CatalogueBrief,
  { threads = 2, ready = true }: { threads?: number; ready?: boolean } = {},
): PlannerPool {
  const pool = new Piscina({
    filename: fileURLToPath(new URL("./planner-thread.mjs", import.meta.url)),
    // The thread brings its own loader; flags of the parent, such as a test runner's, are not for it.
    execArgv: [],
    workerData: catalogue,
    minThreads: ready ? threads : 0,
    idleTimeout: IDLE_MS,
    maxThreads: threads,
  });
  const plan = async (
    task: Omit<Extract<PlannerTask, { kind: "PLAN" }>, "progress">,
    onProgress?: (percent: number, bestPoints: number | null) => void,
  ): Promise<WeekOutcome> => {
    if (!onProgress) return (await pool.run({ ...task, progress: null })) as WeekOutcome;
    const { port1, port2 } = new MessageChannel();
    port1.on("message", ({ percent, bestPoints }: { percent: number; bestPoints: number | null }) =>
      onProgress(percent, bestPoints),
    );
    try {
      return (await pool.run({ ...task, progress: port2 }, { transferList: [port2] })) as WeekOutcome;
    } finally {
      port1.close();
    }
  };
  return {
    async plan({ brief, seed, steps, compare }, onProgress) {
      onProgress?.(0, null);
      const shared = plan({ kind: "PLAN", brief: withoutCatalogue(brief), seed, steps }, onProgress);
      const alone = compare
        ? plan({ kind: "PLAN", brief: withoutCatalogue({ ...brief, sharing: false }), seed, steps })
        : null;
      const [outcome, aloneOutcome] = await Promise.all([shared, alone]);
      onProgress?.(100, outcome.kind === "PLANNED" ? Math.round(outcome.objectivePoints) : null);
      return {
        outcome,
        compared: compare,
        aloneMinutes: aloneOutcome?.kind === "PLANNED" ? aloneOutcome.draft.wishes.handsOnMinutes : null,
      };
    },
    async alternatives(brief, draft, place) {
      const task: PlannerTask = { kind: "ALTERNATIVES", brief: withoutCatalogue(brief), draft, place };
      return (await pool.run(task)) as readonly Alternative[];
    },
    stop: () => pool.destroy(),
  };
}
