/** What every action is given: the database, the reference data, the planner in its thread, and the clock. */
import type { Database, Tx } from "../database/database.js";
import type { RecheckScope } from "../database/homes-to-recheck.js";
import type { Reference } from "../database/reference.js";
import type { PlaceBrief, WeekBrief } from "../domain/brief.js";
import type { CatalogueIndex } from "../domain/catalogue/derive.js";
import type { Alternative } from "../domain/planner/alternatives.js";
import type { WeekOutcome } from "../domain/planner/plan-week.js";
import type { WeekDraft } from "../domain/week.js";

export interface PlanRequest {
  readonly brief: WeekBrief;
  readonly seed: number;
  readonly steps: number;
  /** Also plan with sharing switched off, to say what sharing saves. */
  readonly compare: boolean;
}

export interface PlanAnswer {
  readonly outcome: WeekOutcome;
  /** Hands-on minutes of the best week found without sharing; null when there is none or it was not asked for. */
  readonly aloneMinutes: number | null;
  readonly compared: boolean;
}

/** The planner behind its worker thread. */
export interface Planner {
  plan(request: PlanRequest, onProgress?: (percent: number, bestPoints: number | null) => void): Promise<PlanAnswer>;
  alternatives(brief: WeekBrief, draft: WeekDraft, place: PlaceBrief): Promise<readonly Alternative[]>;
}

/** What a person sends to have a week planned. */
export interface PlanWeek {
  readonly idempotencyKey: string;
  readonly householdId: string | null;
  readonly date: string;
  readonly seenRevision: number;
  readonly replanAgreed: boolean;
}

/** A plan asked for, to be worked on as the person who asked. */
export interface PlanJob {
  readonly id: string;
  readonly personId: string;
  readonly householdId: string;
  readonly weekStart: string;
  /** Moves the search makes. */
  readonly steps: number;
  readonly input: PlanWeek;
}

/** Boxes to look at again after a change. */
export interface RecheckJob {
  readonly id: string;
  readonly scope: RecheckScope;
}

export interface Queue {
  /** Queues a job with the transaction: it is there when the transaction commits, and only then. */
  send(job: PlanJob, tx: Tx): Promise<void>;
  /** The same for a recheck; without a transaction it is queued at once. */
  sendRecheck(job: RecheckJob, tx: Tx | null): Promise<void>;
}

export interface App {
  readonly db: Database;
  readonly reference: Reference;
  readonly index: CatalogueIndex;
  readonly planner: Planner;
  /** Null where nothing works on jobs. */
  readonly queue: Queue | null;
  readonly now: () => Date;
  /** Steps of the search; the same seed and steps give the same week on any machine. */
  readonly planSteps: number;
}
