/** The replan with the fewest changes after boxes were blocked: offered first, stored when a carer takes it. */
import { readWeekById, type BoxRow, type WeekRow } from "../database/week.js";
import type { PinBrief, WeekBrief } from "../domain/brief.js";
import type { Conflict } from "../domain/planner/conflicts.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { WeekDraft } from "../domain/week.js";
import type { App, PlanAnswer } from "./app.js";
import { changeWeek, type WeekChangeFailure, type WeekRef } from "./change-week.js";
import type { FailureOf } from "./failures.js";
import { toDate } from "./local-day.js";
import { leastRole, may } from "./may.js";
import { before, type Attempt } from "./once.js";
import { changedBoxes, openWeek, planWithProgress, storePlan, weekInfeasible } from "./plan-week.js";
import type { WeekInputs } from "./read-brief.js";
import { nothingToPack } from "./report-absence.js";

export interface MendWeek {
  readonly idempotencyKey: string;
  readonly weekId: string | null;
  readonly seenRevision: number;
}

export interface MendingOffer {
  readonly householdId: string;
  /** Boxes that would change, with their new items; none: the box falls away. */
  readonly changedBoxes: readonly {
    readonly childId: string;
    readonly date: string;
    readonly items: WeekDraft["boxes"][number]["items"];
  }[];
  readonly conflicts: readonly Conflict[] | null;
}

type Pin = WeekInputs["facts"]["pins"][number];
type Planned = PlanAnswer & { readonly outcome: { readonly kind: "PLANNED" } };

interface Opened {
  readonly week: WeekRow;
  readonly inputs: WeekInputs;
  readonly blocked: readonly BoxRow[];
}

const keyOf = (box: { readonly childId: string; readonly date: string }) => `${box.childId}@${box.date}`;

async function openToMend(
  app: App,
  personId: string,
  weekId: string | null,
): Promise<Result<Opened, FailureOf<"NothingThere">>> {
  const nothing = fail({ kind: "NothingThere", what: "week" } as const);
  if (weekId === null) return nothing;
  const session = app.db.openRead(personId);
  let found: WeekRow | null;
  try {
    found = await session.read((tx) => readWeekById(tx, weekId));
  } finally {
    await session.close();
  }
  if (!found) return nothing;
  const opened = await openWeek(app, personId, found.householdId, found.weekStart, "readHousehold");
  // Read again with everything else, so that plan and facts are of one moment.
  if (!opened.ok || !opened.value.before) return nothing;
  const { before: week, now } = opened.value;
  const blocked = week.plan.boxes.filter((box) => box.state === "BLOCKED" && box.date >= now.date);
  return ok({ week, inputs: opened.value, blocked });
}

/** Pins that hold what is blocked: safety and rules come before a pin. A reason without a dish is about the whole box. */
function pinsToLetGo({ inputs, blocked }: Opened): Pin[] {
  return inputs.facts.pins.filter((pin) =>
    blocked.some(
      (box) =>
        keyOf(box) === keyOf(pin) &&
        box.blocks.some((block) => {
          const dish = block.dish ?? block.note?.dish ?? null;
          return dish === null || dish === pin.dish;
        }),
    ),
  );
}

/** First with every box that passes held where it is; only when no week is left that way may others move, as few as they must. */
async function planMended(app: App, opened: Opened): Promise<PlanAnswer> {
  const { inputs, week, blocked } = opened;
  const letGo = new Set(pinsToLetGo(opened));
  const facts = { ...inputs.facts, pins: inputs.facts.pins.filter((pin) => !letGo.has(pin)) };
  const loose = inputs.assemble({ facts, stayClose: true });
  if (loose.children.length === 0) return nothingToPack;
  const held = holding(loose, week, new Set(blocked.map(keyOf)));
  const first = await planWithProgress(app, inputs, held, { compare: false });
  if (first.outcome.kind === "PLANNED")
    return { ...first, outcome: { ...first.outcome, draft: withOldReasons(first.outcome.draft, week, inputs) } };
  return planWithProgress(app, inputs, loose, { compare: false });
}

function holding(brief: WeekBrief, week: WeekRow, blocked: ReadonlySet<string>): WeekBrief {
  const due = new Set(
    brief.children.flatMap((child) => child.days.map((day) => keyOf({ childId: child.id, date: day.date }))),
  );
  const placeOf = (pin: Omit<PinBrief, "dish" | "because">) =>
    [pin.childId, pin.date, pin.breakKey, pin.slot, pin.position].join("|");
  const there = new Set(brief.pins.map(placeOf));
  const more = week.plan.boxes
    .filter((box) => due.has(keyOf(box)) && !blocked.has(keyOf(box)))
    .flatMap((box) =>
      box.items.map((item): PinBrief => ({
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
  const old = new Map(week.plan.boxes.map((box) => [keyOf(box), box]));
  return {
    ...draft,
    boxes: draft.boxes.map((box) => ({
      ...box,
      items: box.items.map((item) => {
        const was = old
          .get(keyOf(box))
          ?.items.find(
            (row) =>
              row.breakKey === item.breakKey &&
              row.slot === item.slot &&
              row.place === item.position &&
              row.dish === item.dish,
          );
        const pinned = inputs.facts.pins.some(
          (pin) =>
            keyOf(pin) === keyOf(box) &&
            pin.breakKey === item.breakKey &&
            pin.slot === item.slot &&
            pin.place === item.position,
        );
        return was?.note && !pinned ? { ...item, pinned, why: was.note.reasons } : item;
      }),
    })),
  };
}

/** Null: no such week of the reader's. */
export async function mendingOffer(app: App, personId: string, weekId: string | null): Promise<MendingOffer | null> {
  const opened = await openToMend(app, personId, weekId);
  if (!opened.ok) return null;
  const { week, inputs, blocked } = opened.value;
  const nothing = { householdId: week.householdId, changedBoxes: [], conflicts: null };
  if (blocked.length === 0) return nothing;
  const { outcome } = await planMended(app, opened.value);
  if (outcome.kind === "INFEASIBLE") return { ...nothing, conflicts: outcome.conflicts };
  const boxes = [...outcome.draft.boxes, ...inputs.setAside()];
  return {
    ...nothing,
    changedBoxes: changedBoxes(week, { ...outcome.draft, boxes }).map((key) => {
      const [childId, date] = key.split("@") as [string, string];
      return { childId, date, items: boxes.find((box) => keyOf(box) === key)?.items ?? [] };
    }),
  };
}

export async function mendWeek(
  app: App,
  personId: string,
  input: MendWeek,
): Promise<Result<WeekRef, WeekChangeFailure | FailureOf<"WeekInfeasible">>> {
  const attempt: Attempt = { personId, action: "mendWeek", key: input.idempotencyKey, input };
  const known = await before<WeekRef>(app, attempt);
  if (known) return known;
  const opened = await openToMend(app, personId, input.weekId);
  if (!opened.ok) return opened;
  const { week, inputs, blocked } = opened.value;
  if (!may(inputs.household.myRole, "planWeek")) return fail({ kind: "NotPermitted", neededRole: leastRole.planWeek });
  if (week.revision !== input.seenRevision) {
    // Its twin, sent at the same time, may have done it since: then that one's outcome is the answer.
    const twin = await before<WeekRef>(app, attempt);
    return twin ?? fail({ kind: "RevisionPassed", seenRevision: input.seenRevision, currentRevision: week.revision });
  }
  if (blocked.length === 0)
    return changeWeek<never>(
      app,
      { ...attempt, weekId: week.id, seenRevision: input.seenRevision, verb: "planWeek" },
      () => Promise.resolve(ok({ changed: [] })),
    );
  const letGo = pinsToLetGo(opened.value);
  const brief = inputs.assemble({
    facts: { ...inputs.facts, pins: inputs.facts.pins.filter((pin) => !letGo.includes(pin)) },
    stayClose: true,
  });
  const answer = await planMended(app, opened.value);
  if (answer.outcome.kind === "INFEASIBLE") return weekInfeasible(answer.outcome.conflicts, brief, inputs);
  const wereBlocked = new Set(blocked.map(keyOf));
  return storePlan(app, {
    gone: { kind: "NothingThere", what: "week" } as const,
    attempt,
    verb: "planWeek",
    seenRevision: input.seenRevision,
    inputs,
    brief,
    answer: answer as Planned,
    staysAgreed: (changed) => changed.every((key) => wereBlocked.has(key)),
    also: async (tx) => {
      for (const pin of letGo)
        await tx.pin.deleteMany({
          where: {
            householdId: week.householdId,
            childId: pin.childId,
            date: toDate(pin.date),
            breakKey: pin.breakKey,
            slot: pin.slot,
            place: pin.place,
          },
        });
    },
  });
}
