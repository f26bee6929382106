import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { changeWeek, type WeekChangeFailure, type WeekRef } from "./change-week.js";
import type { FailureOf } from "./failures.js";

export interface AgreeWeek {
  readonly idempotencyKey: string;
  readonly weekId: string | null;
  readonly seenRevision: number;
}

export async function agreeWeek(
  app: App,
  personId: string,
  input: AgreeWeek,
): Promise<Result<WeekRef, WeekChangeFailure | FailureOf<"WeekAgreed">>> {
  if (input.weekId === null) return fail({ kind: "NothingThere", what: "week" });
  return changeWeek<FailureOf<"WeekAgreed" | "NothingThere">>(
    app,
    {
      personId,
      action: "agreeWeek",
      key: input.idempotencyKey,
      input,
      weekId: input.weekId,
      seenRevision: input.seenRevision,
      verb: "agreeWeek",
    },
    async (tx, week) => {
      const plan = await tx.weekPlan.findFirst({
        where: { weekId: week.weekId, state: { not: "REPLACED" } },
        select: { id: true, state: true, agreedAt: true, createdAt: true },
      });
      if (!plan) return fail({ kind: "NothingThere", what: "plan" });
      if (plan.state === "AGREED")
        return fail({ kind: "WeekAgreed", agreedAt: (plan.agreedAt ?? plan.createdAt).toISOString() });
      await tx.weekPlan.update({
        where: { id: plan.id },
        data: { state: "AGREED", agreedAt: app.now() },
        select: { id: true },
      });
      return ok({ changed: [] });
    },
  );
}
