/** A box leaves the kitchen only when every label that had to be read was read and is clear. */
import { isOwnKey } from "../../shared/own-catalogue.js";
import { readOwnCatalogueIn } from "../database/own-catalogue.js";
import type { LabelBrief } from "../domain/brief.js";
import { judgeAllergies } from "../domain/catalogue/allergens.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { changeWeek, weekHolding, type WeekChangeFailure, type WeekRef } from "./change-week.js";
import { invalid } from "./check-input.js";
import type { FailureOf } from "./failures.js";
import { fromDate } from "./local-day.js";
import { before } from "./once.js";
import { indexSeen } from "./own-rows.js";

export interface MarkPacked {
  readonly idempotencyKey: string;
  readonly boxId: string | null;
  readonly seenRevision: number;
  readonly packedAt: Date;
}

const DAY_MS = 86_400_000;

export async function markPacked(
  app: App,
  personId: string,
  input: MarkPacked,
): Promise<Result<WeekRef, WeekChangeFailure | FailureOf<"LabelsUnread" | "BoxClosed" | "BoxBlocked">>> {
  const attempt = { personId, action: "markPacked", key: input.idempotencyKey, input };
  const known = await before<WeekRef>(app, attempt);
  if (known) return known;
  const holding = await weekHolding(app, personId, "Box", input.boxId);
  if (!holding.ok) return holding;
  return changeWeek<FailureOf<"LabelsUnread" | "BoxClosed" | "BoxBlocked" | "InvalidInput">>(
    app,
    { ...attempt, weekId: holding.value.weekId, seenRevision: input.seenRevision, verb: "packBox" },
    async (tx, week) => {
      const box = await tx.lunchBox.findUniqueOrThrow({
        where: { id: input.boxId! },
        include: { items: true, child: { select: { allergies: true } } },
      });
      if (box.state === "PACKED" || box.state === "EATEN") return fail({ kind: "BoxClosed", state: box.state });
      if (box.state === "BLOCKED") return fail({ kind: "BoxBlocked" });
      const distance = Math.abs(input.packedAt.getTime() - box.date.getTime());
      if (distance > 2 * DAY_MS)
        return fail(
          invalid(
            "packedAt",
            `${input.packedAt.toISOString()} is not near the box's day ${fromDate(box.date)}`,
            "Send the moment the box was packed.",
          ),
        );
      const labels = await tx.labelCheck.findMany({
        where: { householdId: week.householdId },
        include: { food: { select: { key: true } } },
      });
      const own = box.items.some((item) => isOwnKey(item.dishKey)) ? await readOwnCatalogueIn(tx) : null;
      const index = own === null ? app.index : indexSeen(app, own);
      const ownLabels = (own?.foods ?? []).flatMap(({ label }) => label ?? []);
      const known = labels.map(
        (label) =>
          ({
            food: label.food.key,
            contains: label.contains,
            mayContain: label.mayContain,
            kinds: label.kinds,
            readOn: fromDate(label.readOn),
          }) as unknown as LabelBrief,
      );
      const verdicts = box.items.map((item) =>
        judgeAllergies(
          box.child.allergies.map(
            (allergy) =>
              ({ allergen: allergy.allergen, foodKind: allergy.foodKind, avoid: allergy.avoid }) as Parameters<
                typeof judgeAllergies
              >[0][number],
          ),
          index.derived(item.dishKey),
          [...known, ...ownLabels],
        ),
      );
      if (verdicts.some((verdict) => verdict.kind === "CONTAINS" || verdict.kind === "MAY_CONTAIN"))
        return fail({ kind: "BoxBlocked" });
      const unread = [
        ...new Set(verdicts.flatMap((verdict) => (verdict.kind === "CLEAR_IF_LABEL_READ" ? verdict.foods : []))),
      ].sort();
      if (unread.length > 0) return fail({ kind: "LabelsUnread", foods: unread });
      await tx.boxPacking.update({
        where: { lunchBoxId: box.id },
        data: { packedById: personId },
        select: { id: true },
      });
      await tx.lunchBox.update({
        where: { id: box.id },
        data: { state: "PACKED", packedAt: input.packedAt },
        select: { id: true },
      });
      return ok({ changed: [`${box.childId}@${fromDate(box.date)}`] });
    },
  );
}
