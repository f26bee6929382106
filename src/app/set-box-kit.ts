/**
 * What a home packs a child's box in and when the child leaves it on a school day. A home that took a child in by a link has neither:
 * until it has said so no box is due there.
 */
import { boxKitInput } from "../../shared/inputs.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { changeHousehold, livesHere, type HouseholdChangeFailure } from "./change-household.js";
import { checkInput } from "./check-input.js";
import { schoolWeekdays } from "./create-child.js";
import type { FailureOf } from "./failures.js";
import { queueRecheck, recheckNow, touching } from "./recheck.js";

export interface SetBoxKit {
  readonly idempotencyKey: string;
  readonly householdId: string | null;
  readonly seenRevision: number;
  readonly childId: string | null;
  readonly compartments: readonly { readonly ml: number; readonly leakProof: boolean }[];
  readonly coldSources: number;
  readonly insulated: boolean;
  readonly flask: boolean;
  readonly leaveAt: string;
}
type Failed = HouseholdChangeFailure | FailureOf<"ChildNotFound">;

export async function setBoxKit(
  app: App,
  personId: string,
  input: SetBoxKit,
): Promise<Result<{ childId: string; householdId: string }, Failed>> {
  const checked = checkInput(boxKitInput, input);
  if (!checked.ok) return checked;
  const done = await changeHousehold<{ childId: string }, Failed>(
    app,
    {
      personId,
      action: "setBoxKit",
      key: input.idempotencyKey,
      input,
      householdId: input.householdId,
      seenRevision: input.seenRevision,
      verb: "changeChildren",
    },
    async (tx, householdId) => {
      const { childId, insulated, flask } = input;
      if (childId === null || !(await livesHere(tx, childId, householdId))) return fail({ kind: "ChildNotFound" });
      const { coldSources, leaveAt } = checked.value;
      const compartments = checked.value.compartments.map((part) => ({ ...part }));
      await tx.boxKit.deleteMany({ where: { childId, householdId } });
      await tx.boxKit.createMany({ data: [{ childId, householdId, compartments, coldSources, insulated, flask }] });
      await tx.leaveTime.deleteMany({ where: { childId, householdId } });
      await tx.leaveTime.createMany({
        data: schoolWeekdays.map((weekday) => ({ childId, householdId, weekday, leaveAt })),
      });
      await queueRecheck(app, tx, touching({ householdIds: [householdId] }));
      return ok({ childId });
    },
  );
  if (done.ok) await recheckNow(app, touching({ householdIds: [done.value.householdId] }));
  return done;
}
