/** Reads everything a plan needs in one shared read transaction and assembles the brief. */
import type { ReadTx } from "../database/database.js";
import { readHousehold, type HouseholdRow } from "../database/household.js";
import { readPlanningFacts, type PlanningFacts } from "../database/planning.js";
import { readRuleSets } from "../database/school.js";
import { readWeek, type WeekRow } from "../database/week.js";
import type { WeekBrief } from "../domain/brief.js";
import { addDays } from "../domain/calendar/dates.js";
import type { App } from "./app.js";
import { assembleBrief, weekStartOf, type BriefParts } from "./assemble-brief.js";
import { clockIn } from "./local-day.js";

export interface WeekInputs {
  readonly household: HouseholdRow;
  readonly weekStart: string;
  readonly before: WeekRow | null;
  readonly facts: PlanningFacts;
  /** The brief with changes to the facts, e.g. a child who stays home. */
  assemble(changes?: Partial<BriefParts>): WeekBrief;
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
  const [facts, ruleSets, before] = await Promise.all([
    readPlanningFacts(tx, householdId, weekStart, addDays(weekStart, 6)),
    readRuleSets(
      tx,
      household.schools.map((school) => school.id),
      household.children.map((child) => child.id),
    ),
    readWeek(tx, householdId, weekStart),
  ]);
  const parts: BriefParts = {
    household,
    facts,
    ruleSets,
    reference: app.reference,
    index: app.index,
    weekStart,
    before,
    now: clockIn(household.timeZone, app.now()),
    stayClose: false,
  };
  return { household, weekStart, before, facts, assemble: (changes) => assembleBrief({ ...parts, ...changes }) };
}
