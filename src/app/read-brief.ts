/** Reads everything a plan needs in one shared read transaction and assembles the brief. */
import type { ReadTx } from "../database/database.js";
import { readOwnCatalogue } from "../database/own-catalogue.js";
import { readHousehold, type HouseholdRow } from "../database/household.js";
import { readPlanningFacts, type PlanningFacts } from "../database/planning.js";
import { readRuleSets } from "../database/school.js";
import { readWeek, type BoxRow, type WeekRow } from "../database/week.js";
import { boxKey } from "../domain/box-key.js";
import type { WeekBrief } from "../domain/brief.js";
import type { CatalogueIndex } from "../domain/catalogue/derive.js";
import type { BoxPlan } from "../domain/week.js";
import { addDays } from "../domain/calendar/dates.js";
import type { App } from "./app.js";
import { assembleBrief, kitchenUpset, weekStartOf, type BriefParts, type KitchenUpset } from "./assemble-brief.js";
import { draftOf } from "./draft-of.js";
import { judgeBoxes } from "./judge-boxes.js";
import { clockIn } from "./local-day.js";
import { indexFor, indexSeen, rowsToPlanWith } from "./own-rows.js";

export interface WeekInputs {
  readonly household: HouseholdRow;
  readonly weekStart: string;
  readonly before: WeekRow | null;
  readonly facts: PlanningFacts;
  /** The reference catalogue with the household's own foods and dishes. */
  readonly index: CatalogueIndex;
  /** The household's local day and minute when it was read. */
  readonly now: BriefParts["now"];
  /**
   * The brief to plan by, with changes to the facts, e.g. a child who stays home. Boxes that are over and would not pass
   * today are no part of it: nothing can be done about them, and they must not stand in the way of the rest.
   */
  assemble(changes?: Partial<BriefParts>): WeekBrief;
  /** The brief with every box of the plan before, to judge them by. */
  asStored(): WeekBrief;
  /** The boxes that are no part of the brief to plan by, as they were; a new plan takes them over. */
  setAside(): readonly BoxPlan[];
  /** What the kitchen has to do without. */
  readonly upset: KitchenUpset;
  /** The same as if these were the facts. */
  withFacts(facts: PlanningFacts): WeekInputs;
}

/** Boxes packed, eaten or of days gone by that the facts of today would block: nothing takes anything out of a closed box. */
function boxesToSetAside(
  index: CatalogueIndex,
  household: HouseholdRow,
  before: WeekRow | null,
  today: string,
  asStored: () => WeekBrief,
): readonly BoxPlan[] {
  const isOver = (box: BoxRow) => box.state === "EATEN" || box.state === "PACKED" || box.date < today;
  if (!before?.plan.boxes.some(isOver)) return [];
  const draft = draftOf(before.plan);
  const over = new Set(before.plan.boxes.filter(isOver).map(boxKey));
  const packed = new Set(before.plan.boxes.filter((box) => box.state === "PACKED" && box.date >= today).map(boxKey));
  const blocks = judgeBoxes(index, household, asStored(), draft, over, packed, null);
  return draft.boxes.filter((box) => blocks.has(boxKey(box)));
}

/** Null: no such household, or not the reader's. */
export async function readWeekInputs(
  app: App,
  tx: ReadTx,
  householdId: string,
  date: string,
): Promise<WeekInputs | null> {
  const household = await readHousehold(tx, householdId);
  if (!household) return null;
  const weekStart = weekStartOf(date, household.weekStart);
  // Sent together: they do not depend on one another.
  const [facts, ruleSets, before, seen] = await Promise.all([
    readPlanningFacts(tx, householdId, weekStart, addDays(weekStart, 6)),
    readRuleSets(
      tx,
      household.schools.map((school) => school.id),
      household.children.map((child) => child.id),
    ),
    readWeek(tx, householdId, weekStart),
    readOwnCatalogue(tx),
  ]);
  const own = rowsToPlanWith(app, seen, householdId, [
    ...(before?.plan.boxes ?? []).flatMap((box) => box.items.map((item) => item.dish)),
    ...facts.pins.map((pin) => pin.dish),
  ]);
  const index = indexFor(app, own);
  return inputsOf(
    {
      household,
      facts,
      ruleSets,
      reference: app.reference,
      own,
      // What a child eats from the other home's boxes counts here, own dishes of that home too.
      index: indexSeen(app, seen),
      weekStart,
      before,
      now: clockIn(household.timeZone, app.now()),
      stayClose: false,
    },
    index,
  );
}

/** @param index the reference catalogue with the household's own foods and dishes */
function inputsOf(parts: BriefParts, index: CatalogueIndex): WeekInputs {
  const { household, weekStart, before, facts, now } = parts;
  const asStored = () => assembleBrief(parts);
  let aside: readonly BoxPlan[] | null = null;
  const setAside = () => (aside ??= boxesToSetAside(index, household, before, now.date, asStored));
  return {
    household,
    weekStart,
    before,
    facts,
    index,
    now,
    asStored,
    setAside,
    upset: kitchenUpset(facts, weekStart, now),
    assemble: (changes) => assembleBrief({ ...parts, setAside: new Set(setAside().map(boxKey)), ...changes }),
    withFacts: (changed) => inputsOf({ ...parts, facts: changed }, index),
  };
}
