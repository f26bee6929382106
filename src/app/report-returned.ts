/** What came back in the box, by item, said in either home of the child: the box was eaten, whichever home packed it. */
import { saveReturns } from "../database/handover.js";
import type { CameBackCode } from "../database/week.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { changeHousehold, livesHere, type HouseholdChangeFailure } from "./change-household.js";
import type { FailureOf, InputIssue } from "./failures.js";
import { invalid } from "./check-input.js";
import { fromDate, todayIn } from "./local-day.js";

export interface ReportReturned {
  readonly idempotencyKey: string;
  readonly householdId: string | null;
  readonly seenRevision: number;
  readonly boxId: string | null;
  readonly entries: readonly { readonly itemId: string | null; readonly cameBack: CameBackCode }[];
}
/** Where an answer is read again. */
export interface ReturnedRef {
  readonly householdId: string;
  readonly childId: string;
  readonly date: string;
}

const MOST_ENTRIES = 40;

export async function reportReturned(
  app: App,
  personId: string,
  input: ReportReturned,
): Promise<Result<ReturnedRef, HouseholdChangeFailure | FailureOf<"NothingThere" | "BoxBlocked">>> {
  const { entries, boxId } = input;
  if (entries.length === 0 || entries.length > MOST_ENTRIES)
    return fail(invalid("entries", `${entries.length} items cannot be a box`, `Send 1 to ${MOST_ENTRIES}.`));
  return changeHousehold<ReturnedRef, HouseholdChangeFailure | FailureOf<"NothingThere" | "BoxBlocked">>(
    app,
    {
      personId,
      action: "reportReturned",
      key: input.idempotencyKey,
      input,
      householdId: input.householdId,
      seenRevision: input.seenRevision,
      verb: "reportReturned",
    },
    async (tx, householdId) => {
      const box =
        boxId === null
          ? null
          : await tx.lunchBox.findFirst({ where: { id: boxId, current: true }, include: { items: true } });
      if (!box || !(await livesHere(tx, box.childId, householdId))) return fail({ kind: "NothingThere", what: "box" });
      const date = fromDate(box.date);
      const home = await tx.household.findUniqueOrThrow({ where: { id: householdId }, select: { timeZone: true } });
      const today = todayIn(home.timeZone, app.now());
      if (date > today)
        return fail(invalid("boxId", `the box is for ${date}`, "Say what came back when the day has come."));
      // Blocked before it was packed: it has never left the kitchen.
      if (box.state === "BLOCKED" && box.packedAt === null) return fail({ kind: "BoxBlocked" });
      const issues = entries.flatMap(({ itemId }, at): InputIssue[] => {
        const field = `entries.${at}.itemId`;
        if (entries.findIndex((entry) => entry.itemId === itemId) < at)
          return [{ field, problem: "the item is named twice", fix: "Say once what came back of it." }];
        return box.items.some(({ id }) => id === itemId)
          ? []
          : [
              {
                field,
                problem: "no such item is in the box",
                fix: "Read the box again and send the IDs of its items.",
              },
            ];
      });
      if (issues.length > 0) return fail({ kind: "InvalidInput", issues });
      await saveReturns(
        tx,
        { childId: box.childId, date, reportedAt: app.now() },
        entries.map(({ itemId, cameBack }) => {
          const { breakKey, slot, place, dishKey } = box.items.find(({ id }) => id === itemId)!;
          return { breakKey, slot, place, dishKey, cameBack };
        }),
      );
      if (box.state !== "EATEN") {
        const [row] = await tx.$queryRaw<{ eaten: boolean }[]>`select app_box_eaten(${box.id}::uuid) as eaten`;
        // The week was planned again meanwhile, and the box is another row by now.
        if (!row!.eaten) return fail({ kind: "NothingThere", what: "box" });
      }
      return ok({ householdId, childId: box.childId, date });
    },
  );
}
