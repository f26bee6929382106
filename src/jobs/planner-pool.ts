/** The planner behind its worker threads, so that a search never stands in the way of a request. */
import { fileURLToPath } from "node:url";
import { MessageChannel, type MessagePort } from "node:worker_threads";
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

/** A task but for the sign that stops it. */
type Unstopped = PlannerTask extends infer T ? (T extends PlannerTask ? Omit<T, "stop"> : never) : never;

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
  /**
   * The thread's answer, or the signal's reason as soon as it is given. The thread is told to stop and lives on: to end it would cost
   * the next week a start.
   */
  const run = async <T extends Unstopped>(
    task: T,
    signal?: AbortSignal,
    ports: MessagePort[] = [],
  ): Promise<unknown> => {
    signal?.throwIfAborted();
    const stop = new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT);
    const answer = pool.run({ ...task, stop }, { transferList: ports }) as Promise<unknown>;
    if (signal === undefined) return answer;
    let leave = (): void => undefined;
    const gone = new Promise<never>((_, reject) => {
      leave = () => {
        Atomics.store(new Int32Array(stop), 0, 1);
        reject(signal.reason as Error);
      };
      signal.addEventListener("abort", leave, { once: true });
    });
    return Promise.race([answer, gone]).finally(() => signal.removeEventListener("abort", leave));
  };
  const plan = async (
    task: Omit<Extract<Unstopped, { kind: "PLAN" }>, "progress">,
    onProgress?: (percent: number, bestPoints: number | null) => void,
    signal?: AbortSignal,
  ): Promise<Planned> => {
    if (!onProgress) return (await run({ ...task, progress: null }, signal)) as Planned;
    const { port1, port2 } = new MessageChannel();
    port1.on("message", ({ percent, bestPoints }: { percent: number; bestPoints: number | null }) =>
      onProgress(percent, bestPoints),
    );
    try {
      return (await run({ ...task, progress: port2 }, signal, [port2])) as Planned;
    } finally {
      port1.close();
    }
  };
  return {
    async plan({ brief, seed, steps, compare }, onProgress, signal) {
      onProgress?.(0, null);
      const shared = plan(
        { kind: "PLAN", brief: withoutCatalogue(brief), seed, steps, keepProblem: keepProblems },
        onProgress,
        signal,
      );
      const alone = compare
        ? plan(
            { kind: "PLAN", brief: withoutCatalogue({ ...brief, sharing: false }), seed, steps, keepProblem: false },
            undefined,
            signal,
          )
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
      const task = { kind: "ALTERNATIVES", brief: withoutCatalogue(brief), draft, place } as const;
      return (await run(task)) as readonly Alternative[];
    },
    async ask<Q extends Question>(question: Q, signal?: AbortSignal): Promise<AnswerTo<Q>> {
      const { brief, ...about } = question;
      const task = { kind: "ASK", brief: withoutCatalogue(brief), about } as Unstopped;
      return (await run(task, signal)) as AnswerTo<Q>;
    },
    stop: () => pool.destroy(),
  };
}
