import type { PlanRow } from "../database/week.js";
import type { WeekDraft } from "../domain/week.js";

/** A stored plan as the planner and the checker read it. */
export const draftOf = (plan: PlanRow): WeekDraft => ({
  boxes: plan.boxes.map((box) => ({
    childId: box.childId,
    date: box.date,
    leaveAt: box.packing?.leaveAt ?? "00:00",
    coldSources: box.packing?.coldSources ?? 0,
    flask: box.packing?.flask ?? false,
    cutlery: box.packing?.cutlery ?? [],
    items: box.items.map((item) => ({
      breakKey: item.breakKey,
      slot: item.slot,
      position: item.place,
      dish: item.dish,
      grams: item.grams,
      pieces: item.pieces,
      served: item.served,
      energyKcal: item.energyKcal,
      carbohydrateGrams: item.carbohydrateGrams,
      compartment: item.note?.compartment ?? 0,
      cuts: item.cuts,
      holding: {
        case: item.holdingCase,
        minutes: item.note?.holdingMinutes ?? 0,
        limitMinutes: item.note?.holdingLimitMinutes ?? 0,
        ...(item.note?.holdingForecast ? { forecast: item.note.holdingForecast } : {}),
      },
      labelsToRead: item.note?.labelsToRead ?? [],
      pinned: item.pinned,
      why: item.note?.reasons ?? [],
    })),
  })),
  batches: plan.batches.map((batch) => ({
    base: batch.base,
    session: batch.session,
    batches: batch.batches,
    grams: batch.grams,
    feeds: batch.feeds,
    spareGrams: batch.spareGrams,
    made: batch.state === "DONE",
  })),
  readyUses: plan.readyUses,
  // What an earlier plan left on record is none of its work.
  tasks: plan.tasks.filter(({ kept }) => !kept),
  sessions: plan.sessions,
  shopping: plan.shopping,
  cautions: plan.cautions,
  wishes: plan.wishes,
});
