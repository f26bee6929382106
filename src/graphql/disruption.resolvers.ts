/** What upsets a week, what it changes, and one plan of a week beside another. */
import { GraphQLError } from "graphql";
import {
  clashesOf,
  differenceOfPlans,
  disruptionOffer,
  reportDisruption,
  withdrawDisruption,
  type DisruptionAsked,
} from "../app/report-disruption.js";
import { sayDisruption } from "../app/say.js";
import { isOfKitchen, readDisruption, readDisruptions, type DisruptionRow } from "../database/disruption.js";
import { readPlanBeside } from "../database/week.js";
import { boxKey } from "../domain/box-key.js";
import { daysBetween } from "../domain/calendar/dates.js";
import { requirePerson } from "./context.js";
import { explain } from "./explain.js";
import { baseOf, dishOf, foodOf } from "./food.resolvers.js";
import { globalId, localId } from "./global-id.js";
import type { DisruptionInput, Resolvers } from "./generated.js";
import { childOf, childrenOf, freshHousehold } from "./household.resolvers.js";
import { namesFor } from "./week.resolvers.js";

const MOST_DAYS = 62;

/** The input with the child's ID decoded. */
function askedBy(input: DisruptionInput): DisruptionAsked {
  const { childAbsent, schoolClosed, earlyFinish, tripDay, ...ofKitchen } = input as {
    [K in keyof DisruptionAsked]: K extends keyof DisruptionInput ? DisruptionInput[K] : never;
  };
  const of = <T extends { readonly childId: string }>(days: T | null | undefined) =>
    days == null ? null : { ...days, childId: localId("Child", days.childId) };
  return {
    childAbsent: of(childAbsent),
    schoolClosed: of(schoolClosed),
    earlyFinish: of(earlyFinish),
    tripDay: of(tripDay),
    ...ofKitchen,
  };
}

const idOf = (row: DisruptionRow): string =>
  globalId(isOfKitchen(row) ? "KitchenDisruption" : "ChildDisruption", row.id);

export const disruptionsOfHousehold: Pick<NonNullable<Resolvers["Household"]>, "disruptions"> = {
  async disruptions({ id }, { from, to }, { reads }) {
    const days = daysBetween(from, to);
    if (days < 0 || days > MOST_DAYS)
      throw new GraphQLError(`Ask for 0 to ${MOST_DAYS} days from one day to a later one.`, {
        extensions: { code: "BAD_USER_INPUT" },
      });
    const rows = await reads.session().read((tx) => readDisruptions(tx, id, from, to));
    return rows.map((row) => ({ row, householdId: id }));
  },
};

export const differencesOfPlan: Pick<NonNullable<Resolvers["WeekPlan"]>, "differenceFrom"> = {
  async differenceFrom({ row, householdId }, { number }, { reads }) {
    const other = await reads.session().read((tx) => readPlanBeside(tx, row.id, number));
    return other && { row: differenceOfPlans(other, row), householdId };
  },
};

export const disruptionQueries: Pick<NonNullable<Resolvers["Query"]>, "disruptionOffer"> = {
  async disruptionOffer(_, { householdId, disruption }, context) {
    const personId = requirePerson(context);
    const home = localId("Household", householdId);
    const signal = context.searches.begin();
    const offered = await disruptionOffer(context.app, personId, home, askedBy(disruption), signal);
    return offered.ok ? { __typename: "DisruptionOffer", ...offered.value } : explain(offered.error, home);
  },
};

export const disruptionMutations: Pick<
  NonNullable<Resolvers["Mutation"]>,
  "reportDisruption" | "withdrawDisruption"
> = {
  async reportDisruption(_, { input }, context) {
    const householdId = localId("Household", input.householdId);
    const reported = await reportDisruption(context.app, requirePerson(context), {
      ...input,
      householdId,
      disruption: askedBy(input.disruption),
    });
    if (!reported.ok) return explain(reported.error, householdId);
    await freshHousehold(context, reported.value.householdId);
    return { __typename: "DisruptionPayload", ...reported.value };
  },
  async withdrawDisruption(_, { input }, context) {
    const child = localId("ChildDisruption", input.disruptionId);
    const kitchen = localId("KitchenDisruption", input.disruptionId);
    const { idempotencyKey, seenRevision } = input;
    const householdId = localId("Household", input.householdId);
    const withdrawn = await withdrawDisruption(context.app, requirePerson(context), {
      idempotencyKey,
      seenRevision,
      householdId,
      disruption:
        child !== null ? { of: "child", id: child } : kitchen !== null ? { of: "kitchen", id: kitchen } : null,
    });
    if (!withdrawn.ok) return explain(withdrawn.error, householdId);
    await freshHousehold(context, withdrawn.value.householdId);
    return { __typename: "DisruptionPayload", ...withdrawn.value };
  },
};

export const disruptionTypes: Pick<
  Resolvers,
  | "Disruption"
  | "DisruptionOffer"
  | "DisruptionPayload"
  | "WeekDifference"
  | "BoxDifference"
  | "ItemDifference"
  | "BatchDifference"
  | "SessionDifference"
  | "TaskDifference"
  | "ShoppingDifference"
> = {
  Disruption: {
    id: ({ row }) => idOf(row),
    kind: ({ row }) => row.kind,
    date: ({ row }) => row.date,
    until: ({ row }) => row.until,
    child: ({ row, householdId }, _, context) => (isOfKitchen(row) ? null : childOf(context, householdId, row.childId)),
    endsAt: ({ row }) => (isOfKitchen(row) ? null : row.endsAt),
    reason: ({ row }) => (isOfKitchen(row) || row.reason === "" ? null : row.reason),
    foodKind: ({ row }) => (isOfKitchen(row) ? row.foodKind : null),
    appliance: ({ row }) => (isOfKitchen(row) ? row.appliance : null),
    units: ({ row }) => (isOfKitchen(row) ? row.units : null),
    minutes: ({ row }) => (isOfKitchen(row) ? row.minutes : null),
    text: async ({ row, householdId }, _, context) => sayDisruption(row, await namesFor(context, householdId, row)),
  },
  DisruptionOffer: {
    difference: ({ difference, householdId }) => difference && { row: difference, householdId },
  },
  DisruptionPayload: {
    async disruption({ disruption, householdId }, _, { reads }) {
      if (disruption === null) return null;
      const { of, id } = disruption;
      const row = await reads.session().read((tx) => readDisruption(tx, householdId, of, id));
      return row && { row, householdId };
    },
    week: ({ householdId, weekStart }, _, { reads }) => reads.week(householdId, weekStart),
    async changedBoxes({ householdId, weekStart, changed }, _, { reads }) {
      const week = await reads.week(householdId, weekStart);
      return (week?.plan.boxes ?? [])
        .filter((box) => changed.includes(boxKey(box)))
        .map((row) => ({ row, householdId }));
    },
    async difference({ householdId, weekStart, plans }, _, { reads }) {
      const week = plans && (await reads.week(householdId, weekStart));
      if (!week) return null;
      const { plan } = week;
      const read = (number: number) => reads.session().read((tx) => readPlanBeside(tx, plan.id, number));
      const to = plans.after === plan.number ? plan : await read(plans.after);
      const from = await read(plans.before);
      return from && to && { row: differenceOfPlans(from, to), householdId };
    },
    async infeasible({ householdId, weekStart, isUnplanned }, _, context) {
      if (!isUnplanned) return null;
      const signal = context.searches.begin();
      const failure = await clashesOf(context.app, requirePerson(context), householdId, weekStart, signal);
      return failure && explain(failure, householdId);
    },
  },
  WeekDifference: {
    boxes: ({ row, householdId }) => row.boxes.map((box) => ({ row: box, householdId })),
    batches: ({ row }) => row.batches,
    sessions: ({ row, householdId }) => row.sessions.map((session) => ({ row: session, householdId })),
    toBuy: ({ row }) => row.toBuy,
    notNeeded: ({ row }) => row.notNeeded,
    more: ({ row: { more } }) => ({
      ...more,
      spareBaseGrams: Math.round(more.spareBaseGrams),
      nutrientShortfallPercent: Math.round(more.nutrientShortfallPercent),
      refusalPoints: Math.round(more.refusalPoints),
      monotonyPoints: Math.round(more.monotonyPoints),
      objectivePoints: Math.round(more.objectivePoints),
    }),
  },
  BoxDifference: {
    child: ({ row, householdId }, _, context) => childOf(context, householdId, row.childId),
    date: ({ row }) => row.date,
    before: ({ row }) => row.before,
    after: ({ row }) => row.after,
  },
  ItemDifference: { dish: ({ dish }, _, context) => dishOf(context, dish) },
  BatchDifference: {
    base: ({ base }, _, context) => baseOf(context, base),
    before: ({ before }) => before && { batches: before.batches, grams: Math.round(before.grams) },
    after: ({ after }) => after && { batches: after.batches, grams: Math.round(after.grams) },
  },
  SessionDifference: {
    session: ({ row }) => row.session,
    goes: ({ row, householdId }) => row.goes.map((task) => ({ row: task, householdId })),
    comes: ({ row, householdId }) => row.comes.map((task) => ({ row: task, householdId })),
    changes: ({ row, householdId }) => row.changes.map(({ after }) => ({ row: after, householdId })),
    handsOnMinutesMore: ({ row }) => row.handsOnMinutesMore,
  },
  TaskDifference: {
    kind: ({ row }) => row.kind,
    text: ({ row }) => row.text,
    children: ({ row, householdId }, _, context) => childrenOf(context, householdId, row.childIds),
    handsOnMinutes: ({ row }) => row.handsOnMinutes,
    startsAt: ({ row }) => row.startsAt,
  },
  ShoppingDifference: { food: ({ food }, _, context) => foodOf(context, food) },
};
