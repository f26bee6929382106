/** Pinning, unpinning and swapping single items of a week. */
import { readWeekById, type BoxItemRow, type BoxRow, type WeekRow } from "../database/week.js";
import type { PinBrief, PlaceBrief, WeekBrief } from "../domain/brief.js";
import type { Alternative } from "../domain/planner/alternatives.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { changeWeek, weekHolding, type WeekChangeFailure, type WeekRef } from "./change-week.js";
import { draftOf } from "./draft-of.js";
import type { FailureOf } from "./failures.js";
import { toDate } from "./local-day.js";
import { nearest } from "../domain/nearest.js";
import { before, type Attempt } from "./once.js";
import { openWeek, planWithProgress, storePlan } from "./plan-week.js";
import type { WeekInputs } from "./read-brief.js";

export interface ItemChange {
  readonly idempotencyKey: string;
  readonly itemId: string | null;
  readonly seenRevision: number;
}

export const placeOf = (item: BoxItemRow): PlaceBrief => ({
  childId: item.childId,
  date: item.date,
  breakKey: item.breakKey,
  slot: item.slot,
  position: item.place,
});
const samePlace = (a: PlaceBrief, b: PlaceBrief) =>
  a.childId === b.childId &&
  a.date === b.date &&
  a.breakKey === b.breakKey &&
  a.slot === b.slot &&
  a.position === b.position;

function findItem(week: WeekRow | null, itemId: string): { item: BoxItemRow; box: BoxRow } | null {
  for (const box of week?.plan.boxes ?? []) {
    const item = box.items.find((entry) => entry.id === itemId);
    if (item) return { item, box };
  }
  return null;
}

async function setPin(
  app: App,
  personId: string,
  input: ItemChange,
  pinned: boolean,
): Promise<Result<WeekRef, WeekChangeFailure>> {
  const attempt = { personId, action: pinned ? "pinItem" : "unpinItem", key: input.idempotencyKey, input };
  const known = await before<WeekRef>(app, attempt);
  if (known) return known;
  const holding = await weekHolding(app, personId, "BoxItem", input.itemId);
  if (!holding.ok) return holding;
  return changeWeek<never>(
    app,
    { ...attempt, weekId: holding.value.weekId, seenRevision: input.seenRevision, verb: "changeItems" },
    async (tx, week) => {
      const item = await tx.boxItem.findUniqueOrThrow({
        where: { id: input.itemId! },
        select: {
          childId: true,
          breakKey: true,
          slot: true,
          place: true,
          dishKey: true,
          box: { select: { date: true } },
        },
      });
      const where = {
        householdId: week.householdId,
        childId: item.childId,
        date: item.box.date,
        breakKey: item.breakKey,
        slot: item.slot,
        place: item.place,
      };
      if (pinned) await tx.pin.createMany({ data: [{ ...where, dishKey: item.dishKey }], skipDuplicates: true });
      else await tx.pin.deleteMany({ where });
      return ok({ changed: [] });
    },
  );
}

export const pinItem = (app: App, personId: string, input: ItemChange) => setPin(app, personId, input, true);
export const unpinItem = (app: App, personId: string, input: ItemChange) => setPin(app, personId, input, false);

/** Every item but one stays where it is; that one becomes `dish`. What is blocked cannot stay: the planner may move it. */
function withOneChanged(brief: WeekBrief, week: WeekRow, place: PlaceBrief, dish: string): WeekBrief {
  const kept = week.plan.boxes
    .flatMap((box) => box.items.filter((item) => box.state !== "BLOCKED" || samePlace(placeOf(item), place)))
    .map((item): PinBrief => {
      const here = placeOf(item);
      const pin = brief.pins.find((entry) => samePlace(entry, here));
      return { ...here, dish: samePlace(here, place) ? dish : item.dish, because: pin?.because ?? "PINNED" };
    });
  return { ...brief, pins: kept };
}

interface Opened {
  readonly inputs: WeekInputs;
  readonly week: WeekRow;
  readonly item: BoxItemRow;
  readonly box: BoxRow;
}

/** The week around an item of the newest plan. */
export async function openItem(
  app: App,
  personId: string,
  itemId: string | null,
  verb: "changeItems" | "readHousehold",
): Promise<Result<Opened, FailureOf<"NothingThere" | "NotPermitted">>> {
  const holding = await weekHolding(app, personId, "BoxItem", itemId);
  if (!holding.ok) return holding;
  const week = await app.db.readAs(personId, (tx) => readWeekById(tx, holding.value.weekId));
  const found = findItem(week, itemId!);
  if (!week || !found) return fail({ kind: "NothingThere", what: "item" });
  const opened = await openWeek(app, personId, week.householdId, week.weekStart, verb);
  if (!opened.ok)
    return opened.error.kind === "NotPermitted" ? fail(opened.error) : fail({ kind: "NothingThere", what: "item" });
  return ok({ inputs: opened.value, week, ...found });
}

export interface SwapItem extends ItemChange {
  readonly dish: string;
}

/** Puts another dish in an item's place, keeps it there, and lays batches, tasks and shopping out again. */
export async function swapItem(
  app: App,
  personId: string,
  input: SwapItem,
): Promise<Result<WeekRef, WeekChangeFailure | FailureOf<"DishUnknown" | "SwapRefused" | "BoxClosed">>> {
  const attempt: Attempt = { personId, action: "swapItem", key: input.idempotencyKey, input };
  const known = await before<WeekRef>(app, attempt);
  if (known) return known;
  const opened = await openItem(app, personId, input.itemId, "changeItems");
  // Its twin, sent at the same time, may have done it since: then that one's outcome is the answer.
  if (!opened.ok) return (await before<WeekRef>(app, attempt)) ?? opened;
  const { inputs, week, item, box } = opened.value;
  if (week.revision !== input.seenRevision)
    return fail({ kind: "RevisionPassed", seenRevision: input.seenRevision, currentRevision: week.revision });
  if (box.state === "PACKED" || box.state === "EATEN") return fail({ kind: "BoxClosed", state: box.state });
  if (!inputs.index.dish(input.dish))
    return fail({
      kind: "DishUnknown",
      dish: input.dish,
      nearest: nearest(
        input.dish,
        inputs.index.dishes.map((dish) => dish.key),
      ),
    });
  const brief = withOneChanged(inputs.assemble(), week, placeOf(item), input.dish);
  const answer = await planWithProgress(app, inputs, brief, { compare: false });
  if (answer.outcome.kind === "INFEASIBLE")
    return fail({ kind: "SwapRefused", conflicts: answer.outcome.conflicts, householdId: week.householdId });
  return storePlan(app, {
    gone: { kind: "NothingThere", what: "item" } as const,
    attempt,
    verb: "changeItems",
    seenRevision: input.seenRevision,
    inputs: { ...inputs, before: week },
    brief,
    answer: { ...answer, outcome: answer.outcome },
    also: async (tx) => {
      const where = {
        householdId: week.householdId,
        childId: item.childId,
        date: toDate(item.date),
        breakKey: item.breakKey,
        slot: item.slot,
        place: item.place,
      };
      await tx.pin.deleteMany({ where });
      await tx.pin.createMany({ data: [{ ...where, dishKey: input.dish }] });
    },
  });
}

/** Dishes that could stand in the item's place, best first; each was replanned, not estimated. Null: no such item of the reader's. */
export async function alternativesOf(
  app: App,
  personId: string,
  itemId: string | null,
): Promise<readonly Alternative[] | null> {
  const opened = await openItem(app, personId, itemId, "readHousehold");
  if (!opened.ok) return null;
  const { inputs, week, item } = opened.value;
  return app.planner.alternatives(inputs.assemble(), draftOf(week.plan), placeOf(item));
}
