/** What every action is given: the database, the reference data, the planner in its thread, and the clock. */
import type { Database, Tx } from "../database/database.js";
import type { RecheckScope } from "../database/homes-to-recheck.js";
import type { Reference } from "../database/reference.js";
import type { PlaceBrief, WeekBrief } from "../domain/brief.js";
import type { CatalogueIndex } from "../domain/catalogue/derive.js";
import type { Alternative } from "../domain/planner/alternatives.js";
import type { AnswerTo, Question } from "../domain/planner/questions.js";
import type { WeekOutcome } from "../domain/planner/plan-week.js";
import type { WeekDraft } from "../domain/week.js";
import type { RateLimits } from "./rate-limits.js";

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
  /** The problem the week was found on, JSON, gzip: what its bound is proved for. Null for no week, or when nobody proves bounds. */
  readonly problem: Uint8Array | null;
}

/** The planner behind its worker thread. */
export interface Planner {
  /** As `ask` with a signal. */
  plan(
    request: PlanRequest,
    onProgress?: (percent: number, bestPoints: number | null) => void,
    signal?: AbortSignal,
  ): Promise<PlanAnswer>;
  alternatives(brief: WeekBrief, draft: WeekDraft, place: PlaceBrief): Promise<readonly Alternative[]>;
  /** Rejects with the signal's reason as soon as it is given; the search ends soon after. */
  ask<Q extends Question>(question: Q, signal?: AbortSignal): Promise<AnswerTo<Q>>;
}

/** Proves how good a week is for sure, behind a worker thread of its own. */
export interface Prover {
  /**
   * Answers at once and hands over the proof when there is one. A later proof about the same thing ends this one; so does a fault,
   * which is told to whoever opened the prover.
   * @param request.objective thousandths of a point of the week found
   */
  prove(
    request: { readonly about: string; readonly problem: Uint8Array; readonly objective: number },
    keep: (proof: Proof) => Promise<void>,
  ): void;
  /** Resolves when no proof is under way. */
  settled(): Promise<void>;
}
export interface Proof {
  /** Thousandths of a point. */
  readonly bound: number;
  /** Linear programs solved. */
  readonly nodes: number;
  readonly milliseconds: number;
  /** What it takes to work the bound out again: JSON, gzip. */
  readonly certificate: Uint8Array;
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
  /** Null where no bounds are proved. */
  readonly prover: Prover | null;
  /** Null where nothing works on jobs. */
  readonly queue: Queue | null;
  /** How fast a person or an address may ask. */
  readonly rates: RateLimits;
  readonly now: () => Date;
  /** Steps of the search; the same seed and steps give the same week on any machine. */
  readonly planSteps: number;
}
