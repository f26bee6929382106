/** The replan with the fewest changes after boxes were blocked: offered first, stored when a carer takes it. */
import { readWeekById, type BoxRow, type WeekRow } from "../database/week.js";
import { boxKey } from "../domain/box-key.js";
import type { Conflict } from "../domain/planner/conflicts.js";
import { fail, ok, type Result } from "../domain/result.js";
import { changedBoxes } from "../domain/week-difference.js";
import type { WeekDraft } from "../domain/week.js";
import type { App, PlanAnswer } from "./app.js";
import { changeWeek, type WeekChangeFailure, type WeekRef } from "./change-week.js";
import type { FailureOf } from "./failures.js";
import { toDate } from "./local-day.js";
import { leastRole, may } from "./may.js";
import { before, checkRevision, type Attempt } from "./once.js";
import { planHolding } from "./plan-holding.js";
import { openWeek, storePlan, weekInfeasible } from "./plan-week.js";
import type { WeekInputs } from "./read-brief.js";

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

async function openToMend(
  app: App,
  personId: string,
  weekId: string | null,
): Promise<Result<Opened, FailureOf<"NothingThere">>> {
  const nothing = fail({ kind: "NothingThere", what: "week" } as const);
  if (weekId === null) return nothing;
  const found = await app.db.readAs(personId, (tx) => readWeekById(tx, weekId));
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
        boxKey(box) === boxKey(pin) &&
        box.blocks.some((block) => {
          const dish = block.dish ?? block.note?.dish ?? null;
          return dish === null || dish === pin.dish;
        }),
    ),
  );
}

function planMended(app: App, opened: Opened): Promise<PlanAnswer> {
  const { inputs, week, blocked } = opened;
  const letGo = new Set(pinsToLetGo(opened));
  const facts = { ...inputs.facts, pins: inputs.facts.pins.filter((pin) => !letGo.has(pin)) };
  return planHolding(app, inputs, week, inputs.assemble({ facts, stayClose: true }), new Set(blocked.map(boxKey)));
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
    changedBoxes: changedBoxes(week.plan.boxes, boxes).map((key) => {
      const [childId, date] = key.split("@") as [string, string];
      return { childId, date, items: boxes.find((box) => boxKey(box) === key)?.items ?? [] };
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
  const passed = await checkRevision<WeekRef>(app, attempt, input.seenRevision, week.revision);
  if (passed) return passed;
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
  const wereBlocked = new Set(blocked.map(boxKey));
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
