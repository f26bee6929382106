/** Ticking lines of the shopping list: two who shop at once both may. */
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { roleIn } from "./change-household.js";
import { weekHolding } from "./change-week.js";
import type { FailureOf } from "./failures.js";
import { leastRole, may } from "./may.js";
import { before, once } from "./once.js";

export interface TickShoppingLine {
  readonly idempotencyKey: string;
  readonly lineId: string | null;
  readonly seenRevision: number;
  readonly ticked: boolean;
}
export interface ShoppingLineRef {
  readonly lineId: string;
  readonly weekId: string;
}
type TickFailure = FailureOf<"InvalidInput" | "NothingThere" | "NotPermitted" | "RevisionPassed" | "KeyReused">;

/** As with tasks, the week may have moved on since it was seen; the line must be of its newest plan. */
export async function tickShoppingLine(
  app: App,
  personId: string,
  input: TickShoppingLine,
): Promise<Result<ShoppingLineRef, TickFailure>> {
  const attempt = { personId, action: "tickShoppingLine", key: input.idempotencyKey, input };
  const known = await before<ShoppingLineRef>(app, attempt);
  if (known) return known;
  const holding = await weekHolding(app, personId, "ShoppingLine", input.lineId);
  if (!holding.ok) return holding;
  const { weekId, householdId } = holding.value;
  return once<ShoppingLineRef, TickFailure>(app, attempt, async (tx) => {
    const role = await roleIn(tx, personId, householdId);
    if (role === null) return fail({ kind: "NothingThere", what: "line" });
    if (!may(role, "tickShopping")) return fail({ kind: "NotPermitted", neededRole: leastRole.tickShopping });
    const week = await tx.week.findUniqueOrThrow({ where: { id: weekId }, select: { revision: true } });
    if (input.seenRevision > week.revision)
      return fail({ kind: "RevisionPassed", seenRevision: input.seenRevision, currentRevision: week.revision });
    const lineId = input.lineId!;
    const moved = await tx.shoppingLine.updateMany({
      where: { id: lineId, ticked: !input.ticked, plan: { state: { not: "REPLACED" } } },
      data: { ticked: input.ticked },
    });
    if (moved.count > 0)
      await tx.week.update({ where: { id: weekId }, data: { revision: { increment: 1 } }, select: { id: true } });
    return ok({ lineId, weekId });
  });
}
