/** Runs in a worker thread: pure planning, nothing that waits. The catalogue comes once, at the thread's start. */
import { createHash } from "node:crypto";
import type { MessagePort } from "node:worker_threads";
import type { CatalogueBrief, PlaceBrief, WeekBrief } from "../domain/brief.js";
import { indexCatalogue, type CatalogueIndex } from "../domain/catalogue/derive.js";
import { indexWithOwn, withOwnRows, type OwnRows } from "../domain/catalogue/own-rows.js";
import { alternativesFor } from "../domain/planner/alternatives.js";
import { planWeek } from "../domain/planner/plan-week.js";
import type { WeekDraft } from "../domain/week.js";

/** A brief without the catalogue that the thread already has, with what the household adds to it. */
export type LightBrief = Omit<WeekBrief, "catalogue"> & { readonly own: OwnRows | null };

export type PlannerTask =
  | {
      readonly kind: "PLAN";
      readonly brief: LightBrief;
      readonly seed: number;
      readonly steps: number;
      readonly progress: MessagePort | null;
    }
  | {
      readonly kind: "ALTERNATIVES";
      readonly brief: LightBrief;
      readonly draft: WeekDraft;
      readonly place: PlaceBrief;
    };

const hash = (text: string) => createHash("sha256").update(text).digest("hex");
/** The search reports in thousandths of a point. */
const PER_POINT = 1000;

/** @param catalogue the reference rows that every brief of this thread is planned with */
export const createRun = (catalogue: CatalogueBrief) => {
  // Kept between plans: its dishes are derived once for all of them.
  const reference = indexCatalogue(catalogue);
  return (task: PlannerTask) => run(catalogue, reference, task);
};

function run(catalogue: CatalogueBrief, reference: CatalogueIndex, task: PlannerTask) {
  const { own, ...light } = task.brief;
  const index = own === null ? reference : indexWithOwn(catalogue, reference, own);
  const brief: WeekBrief = { ...light, catalogue: own === null ? catalogue : withOwnRows(catalogue, own) };
  if (task.kind === "ALTERNATIVES") return alternativesFor(brief, task.draft, task.place, index);
  const { seed, steps, progress } = task;
  return planWeek(brief, {
    seed,
    steps,
    index,
    hash,
    onBetter: (objective, done) =>
      progress?.postMessage({
        percent: Math.min(99, Math.floor((done * 100) / steps)),
        bestPoints: Math.round(objective / PER_POINT),
      }),
  });
}
