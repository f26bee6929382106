/** Has the bound of a week that was just stored proved, beside everything else, and keeps what comes of it. */
import { lockVerdicts } from "../database/recheck.js";
import { saveCertificate } from "../database/week.js";
import { POINT } from "../domain/planner/problem-tables.js";
import type { App } from "./app.js";

interface StoredWeek {
  readonly householdId: string;
  readonly weekId: string;
  readonly weekStart: string;
  readonly planId: string;
  readonly problem: Uint8Array;
  readonly objectivePoints: number;
}

/** Answers at once. A newer plan of the week ends the proof of the one before; the plan stands with or without its certificate. */
export function proveLater(app: App, personId: string, week: StoredWeek): void {
  const { householdId, weekId, weekStart, planId, problem, objectivePoints } = week;
  const objective = Math.round(objectivePoints * POINT);
  app.prover?.prove({ about: weekId, problem, objective }, async (proof) => {
    const revision = await app.db.asPerson(personId, async (tx) => {
      await lockVerdicts(tx, householdId); // an erasure holds it too
      return saveCertificate(tx, {
        householdId,
        weekId,
        planId,
        objectivePoints: objective / POINT,
        boundPoints: proof.bound / POINT,
        nodes: proof.nodes,
        milliseconds: proof.milliseconds,
        problem,
        certificate: proof.certificate,
      });
    });
    if (revision !== null) await app.db.announce({ kind: "PLAN_CHANGED", householdId, weekId, weekStart, revision });
  });
}
