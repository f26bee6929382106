/** Runs in a worker thread: pure planning, nothing that waits. The catalogue comes once, at the thread's start. */
import { createHash } from "node:crypto";
import { gzipSync } from "node:zlib";
import type { MessagePort } from "node:worker_threads";
import type { CatalogueBrief, PlaceBrief, WeekBrief } from "../domain/brief.js";
import { indexCatalogue, type CatalogueIndex } from "../domain/catalogue/derive.js";
import { indexWithOwn, withOwnRows, type OwnRows } from "../domain/catalogue/own-rows.js";
import { alternativesFor } from "../domain/planner/alternatives.js";
import { planWeek } from "../domain/planner/plan-week.js";
import { answerQuestion, type Question } from "../domain/planner/questions.js";
import type { WeekDraft } from "../domain/week.js";
import { POINT } from "../domain/planner/problem-tables.js";

/** A brief without the catalogue that the thread already has, with what the household adds to it. */
export type LightBrief = Omit<WeekBrief, "catalogue"> & { readonly own: OwnRows | null };

/** One number, set to 1 by the asker who no longer wants the answer. */
type StopSign = SharedArrayBuffer;

export type PlannerTask =
  | {
      readonly kind: "PLAN";
      readonly brief: LightBrief;
      readonly seed: number;
      readonly steps: number;
      /** Whether the problem comes back with the week. */
      readonly keepProblem: boolean;
      readonly progress: MessagePort | null;
      readonly stop: StopSign;
    }
  | {
      readonly kind: "ALTERNATIVES";
      readonly brief: LightBrief;
      readonly draft: WeekDraft;
      readonly place: PlaceBrief;
      readonly stop: StopSign;
    }
  | {
      readonly kind: "ASK";
      readonly brief: LightBrief;
      /** The question but for its brief. */
      readonly about: About;
      readonly stop: StopSign;
    };

type About = Question extends infer Q ? (Q extends Question ? Omit<Q, "brief"> : never) : never;

/** Thrown through whatever the thread is at, so that it is free at once. */
class Unwanted extends Error {}

const hash = (text: string) => createHash("sha256").update(text).digest("hex");

/** @param catalogue the reference rows that every brief of this thread is planned with */
export const createRun = (catalogue: CatalogueBrief) => {
  // Kept between plans: its dishes are derived once for all of them.
  const reference = indexCatalogue(catalogue);
  return (task: PlannerTask) => {
    const sign = new Int32Array(task.stop);
    const shouldStop = (): boolean => {
      if (Atomics.load(sign, 0) === 1) throw new Unwanted();
      return false;
    };
    try {
      shouldStop();
      return run(catalogue, reference, task, shouldStop);
    } catch (error) {
      // Nobody waits for it.
      if (error instanceof Unwanted) return null;
      throw error;
    }
  };
};

function run(catalogue: CatalogueBrief, reference: CatalogueIndex, task: PlannerTask, shouldStop: () => boolean) {
  const { own, ...light } = task.brief;
  const index = own === null ? reference : indexWithOwn(catalogue, reference, own);
  const brief: WeekBrief = { ...light, catalogue: own === null ? catalogue : withOwnRows(catalogue, own) };
  if (task.kind === "ALTERNATIVES") return alternativesFor(brief, task.draft, task.place, index, { shouldStop });
  if (task.kind === "ASK") return answerQuestion({ ...task.about, brief }, index, shouldStop);
  const { seed, steps, progress } = task;
  // A search that starts again counts from zero; who listens does not go back with it.
  let percent = 0;
  let problem = "";
  const outcome = planWeek(brief, {
    seed,
    steps,
    index,
    shouldStop,
    hash: (text) => {
      problem = text;
      return hash(text);
    },
    onBetter: (objective, done) =>
      progress?.postMessage({
        percent: (percent = Math.max(percent, Math.min(99, Math.floor((done * 100) / steps)))),
        bestPoints: Math.round(objective / POINT),
      }),
  });
  return { outcome, problem: outcome.kind === "PLANNED" && task.keepProblem ? gzipSync(problem) : null };
}
