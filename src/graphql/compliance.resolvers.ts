/** How boxes keep the rules: of a plan, of one box, of a box that was typed in. */
import { weekStartOf } from "../app/assemble-brief.js";
import {
  checkTypedBox,
  eatenBox,
  judgeBoxesByRules,
  ofOneBox,
  totalsOf,
  type Compliance,
  type Judged,
} from "../app/compliance.js";
import { sayBoxCautions, sayFinding } from "../app/say-compliance.js";
import { readPlanningFacts } from "../database/planning.js";
import { readBoxesOfChild, type BoxRow } from "../database/week.js";
import { addDays, isCalendarDate } from "../domain/calendar/dates.js";
import { requirePerson, type GraphqlContext } from "./context.js";
import { explain } from "./explain.js";
import { foodOf } from "./food.resolvers.js";
import type { Resolvers } from "./generated.js";
import { localId } from "./global-id.js";
import { childOf } from "./household.resolvers.js";

/** What the boxes around a date are judged by; null when the household is not the reader's. */
async function judgedBy({ app, reads }: GraphqlContext, householdId: string, date: string): Promise<Judged | null> {
  const home = await reads.rulesOfHome(householdId);
  if (!home) return null;
  const weekStart = weekStartOf(date, home.household.weekStart);
  const { history } = await reads
    .session()
    .read((tx) => readPlanningFacts(tx, householdId, weekStart, addDays(weekStart, 6)));
  const { index } = await reads.own();
  return { app, home, index, history };
}

async function ofReader(context: GraphqlContext, householdId: string, date: string): Promise<Judged> {
  const judged = await judgedBy(context, householdId, date);
  if (!judged) throw new Error("a box hangs on a household that cannot be read");
  return judged;
}

/** Boxes that the same home packs for the child with this one; either home may read them. */
async function packedWith(row: BoxRow, { reads }: GraphqlContext): Promise<readonly BoxRow[]> {
  const planId = row.items[0]?.planId;
  const near = await reads
    .session()
    .read((tx) => readBoxesOfChild(tx, row.childId, addDays(row.date, -6), addDays(row.date, 6)));
  const others = near.filter(({ id, items }) => id !== row.id && items[0]?.planId === planId);
  return [row, ...others];
}

export const complianceQueries: Pick<NonNullable<Resolvers["Query"]>, "boxCheck"> = {
  async boxCheck(_, { householdId, childId, date, items }, context) {
    requirePerson(context);
    const local = localId("Household", householdId);
    const judged = local === null ? null : await judgedBy(context, local, isCalendarDate(date) ? date : "2000-01-01");
    if (!judged) return explain({ kind: "HouseholdNotFound" });
    const week = isCalendarDate(date) ? await context.reads.weekOfDay(judged.home.household.id, date) : null;
    const box = { childId: localId("Child", childId), date, items };
    const checked = checkTypedBox(judged, box, week?.plan.boxes.map(eatenBox) ?? []);
    if (!checked.ok) return explain(checked.error);
    const { compliance, avoided } = checked.value;
    const child = judged.home.household.children.find(({ id }) => id === box.childId)!;
    return {
      __typename: "BoxCheck",
      compliance,
      cautions: sayBoxCautions(avoided, child.name, compliance.index),
    };
  },
};

export const complianceOfPlan: Pick<NonNullable<Resolvers["WeekPlan"]>, "compliance"> = {
  async compliance({ row, householdId }, _, context): Promise<Compliance> {
    const first = row.boxes.map(({ date }) => date).sort()[0];
    const judged = await ofReader(context, householdId, first ?? row.createdAt.slice(0, 10));
    return judgeBoxesByRules(judged, row.boxes.map(eatenBox));
  },
};

export const complianceOfBox: Pick<NonNullable<Resolvers["Box"]>, "compliance"> = {
  async compliance({ row, householdId }, _, context): Promise<Compliance> {
    const judged = await ofReader(context, householdId, row.date);
    const together = judgeBoxesByRules(judged, (await packedWith(row, context)).map(eatenBox));
    return ofOneBox(together, row.childId, row.date);
  },
};

export const complianceTypes: Pick<Resolvers, "Compliance" | "RuleFinding"> = {
  Compliance: {
    totals: totalsOf,
    rules: ({ findings, index, householdId }, { state }) =>
      findings.filter((row) => state == null || row.state === state).map((row) => ({ row, index, householdId })),
    dates: ({ dates }) => dates,
  },
  RuleFinding: {
    child: ({ row, householdId }, _, context) => childOf(context, householdId, row.childId),
    whoSaysSo: ({ row }) => row.origin,
    state: ({ row }) => row.state,
    date: ({ row }) => row.date,
    place: ({ row: { place }, index }) =>
      place && {
        breakKey: place.breakKey,
        slot: place.slot,
        place: place.position,
        name: index.dish(place.dish)?.name ?? place.dish,
      },
    found: ({ row }) => row.found,
    atLeast: ({ row }) => row.atLeast,
    atMost: ({ row }) => row.atMost,
    unit: ({ row }) => row.unit,
    foods: ({ row }, _, context) => row.foods.map((key) => foodOf(context, key)),
    text: ({ row, index }) => sayFinding(row, index),
  },
};
