/** The planner behind its worker threads, so that a search never stands in the way of a request. */
import { fileURLToPath } from "node:url";
import { MessageChannel } from "node:worker_threads";
import { Piscina } from "piscina";
import type { Planner } from "../app/app.js";
import type { CatalogueBrief, WeekBrief } from "../domain/brief.js";
import { ownRowsOf } from "../domain/catalogue/own-rows.js";
import type { Alternative } from "../domain/planner/alternatives.js";
import type { AnswerTo, Question } from "../domain/planner/questions.js";
import type { WeekOutcome } from "../domain/planner/plan-week.js";
import type { LightBrief, PlannerTask } from "./planner-worker.js";

export interface PlannerPool extends Planner {
  stop(): Promise<void>;
}

interface Planned {
  readonly outcome: WeekOutcome;
  readonly problem: Uint8Array | null;
}

/** A thread that had nothing to do for so long ends. */
const IDLE_MS = 600_000;

const withoutCatalogue = ({ catalogue, ...light }: WeekBrief): LightBrief => ({ ...light, own: ownRowsOf(catalogue) });

/**
 * @param options.threads how many weeks are planned at once; more wait their turn
 * @param options.keepProblems whether a week's problem comes with it, for a bound to be proved
 * @param options.ready threads start at once, so that the first week does not wait for them; else with the first week
 */
export function startPlannerPool(
  catalogue: CatalogueBrief,
  {
    threads = 2,
    ready = true,
    keepProblems = false,
  }: { threads?: number; ready?: boolean; keepProblems?: boolean } = {},
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
  ): Promise<Planned> => {
    if (!onProgress) return (await pool.run({ ...task, progress: null })) as Planned;
    const { port1, port2 } = new MessageChannel();
    port1.on("message", ({ percent, bestPoints }: { percent: number; bestPoints: number | null }) =>
      onProgress(percent, bestPoints),
    );
    try {
      return (await pool.run({ ...task, progress: port2 }, { transferList: [port2] })) as Planned;
    } finally {
      port1.close();
    }
  };
  return {
    async plan({ brief, seed, steps, compare }, onProgress) {
      onProgress?.(0, null);
      const shared = plan(
        { kind: "PLAN", brief: withoutCatalogue(brief), seed, steps, keepProblem: keepProblems },
        onProgress,
      );
      const alone = compare
        ? plan({ kind: "PLAN", brief: withoutCatalogue({ ...brief, sharing: false }), seed, steps, keepProblem: false })
        : null;
      const [{ outcome, problem }, aloneAnswer] = await Promise.all([shared, alone]);
      onProgress?.(100, outcome.kind === "PLANNED" ? Math.round(outcome.objectivePoints) : null);
      return {
        outcome,
        compared: compare,
        aloneMinutes: aloneAnswer?.outcome.kind === "PLANNED" ? aloneAnswer.outcome.draft.wishes.handsOnMinutes : null,
        problem,
      };
    },
    async alternatives(brief, draft, place) {
      const task: PlannerTask = { kind: "ALTERNATIVES", brief: withoutCatalogue(brief), draft, place };
      return (await pool.run(task)) as readonly Alternative[];
    },
    async ask<Q extends Question>(question: Q, signal?: AbortSignal): Promise<AnswerTo<Q>> {
      const { brief, ...about } = question;
      const stop = new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT);
      signal?.throwIfAborted();
      const task = { kind: "ASK", brief: withoutCatalogue(brief), about, stop } as PlannerTask;
      // The thread is told to stop and lives on: to end it would cost the next week a start.
      const gone = new Promise<never>((_, reject) =>
        signal?.addEventListener(
          "abort",
          () => {
            Atomics.store(new Int32Array(stop), 0, 1);
            reject(signal.reason as Error);
          },
          { once: true },
        ),
      );
      return Promise.race([pool.run(task) as Promise<AnswerTo<Q>>, gone]);
    },
    stop: () => pool.destroy(),
  };
}
