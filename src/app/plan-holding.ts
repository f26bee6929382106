/** A week planned again from one that stands, with everything held that can stay as it is. */
import type { WeekRow } from "../database/week.js";
import { boxKey } from "../domain/box-key.js";
import type { PinBrief, WeekBrief } from "../domain/brief.js";
import type { WeekDraft } from "../domain/week.js";
import type { App, PlanAnswer } from "./app.js";
import { nothingToPack } from "./nothing-to-pack.js";
import { planWithProgress } from "./plan-week.js";
import type { WeekInputs } from "./read-brief.js";

/** Only the free boxes are searched, so a part of an ordinary search is enough; one that meets no week goes on four times. */
const MOST_PLACES_ARE_HELD = 4;

/**
 * First with every box but the free ones held where it is: when the free ones are those that cannot stay, no week changes fewer
 * boxes. Only when no week is left that way may others move, as few as they must.
 * @param loose the brief to plan by, staying close to the week
 * @param free boxes "childId@date"
 */
export async function planHolding(
  app: App,
  inputs: WeekInputs,
  week: WeekRow,
  loose: WeekBrief,
  free: ReadonlySet<string>,
  signal?: AbortSignal,
): Promise<PlanAnswer> {
  if (loose.children.length === 0) return nothingToPack;
  const held = holding(loose, week, free);
  const first = await planWithProgress(app, inputs, held, {
    compare: false,
    steps: Math.ceil(app.planSteps / MOST_PLACES_ARE_HELD),
    signal,
  });
  if (first.outcome.kind === "PLANNED")
    return { ...first, outcome: { ...first.outcome, draft: withOldReasons(first.outcome.draft, week, inputs) } };
  return planWithProgress(app, inputs, loose, { compare: false, signal });
}

function holding(brief: WeekBrief, week: WeekRow, free: ReadonlySet<string>): WeekBrief {
  const breakOf = (box: { readonly childId: string; readonly date: string }, breakKey: string) =>
    `${boxKey(box)}/${breakKey}`;
  const due = new Set(
    brief.children.flatMap(({ id, days }) =>
      days.flatMap((day) => day.breaks.map(({ key }) => breakOf({ childId: id, date: day.date }, key))),
    ),
  );
  const placeOf = (pin: Omit<PinBrief, "dish" | "because">) =>
    [pin.childId, pin.date, pin.breakKey, pin.slot, pin.position].join("|");
  const there = new Set(brief.pins.map(placeOf));
  const more = week.plan.boxes
    .filter((box) => !free.has(boxKey(box)))
    .flatMap((box) =>
      box.items
        .filter((item) => due.has(breakOf(box, item.breakKey)))
        .map((item): PinBrief => ({
          childId: box.childId,
          date: box.date,
          breakKey: item.breakKey,
          slot: item.slot,
          position: item.place,
          dish: item.dish,
          because: "PINNED",
        })),
    )
    .filter((pin) => !there.has(placeOf(pin)));
  return { ...brief, pins: [...brief.pins, ...more] };
}

/** What was only held for this plan was not pinned by a carer: it keeps the reasons it had. */
function withOldReasons(draft: WeekDraft, week: WeekRow, inputs: WeekInputs): WeekDraft {
  const old = new Map(week.plan.boxes.map((box) => [boxKey(box), box]));
  return {
    ...draft,
    boxes: draft.boxes.map((box) => ({
      ...box,
      items: box.items.map((item) => {
        const was = old
          .get(boxKey(box))
          ?.items.find(
            (row) =>
              row.breakKey === item.breakKey &&
              row.slot === item.slot &&
              row.place === item.position &&
              row.dish === item.dish,
          );
        const pinned = inputs.facts.pins.some(
          (pin) =>
            boxKey(pin) === boxKey(box) &&
            pin.breakKey === item.breakKey &&
            pin.slot === item.slot &&
            pin.place === item.position,
        );
        return was?.note && !pinned ? { ...item, pinned, why: was.note.reasons } : item;
      }),
    })),
  };
}
