/** What came back in the boxes, and the note for the other home. */
import { reportReturned } from "../app/report-returned.js";
import { handoverWeek, whereaboutsFor, writeHandover } from "../app/write-handover.js";
import { readHandover } from "../database/handover.js";
import { readBoxesOfChild } from "../database/week.js";
import { isCalendarDate } from "../domain/calendar/dates.js";
import { requirePerson, type GraphqlContext } from "./context.js";
import { explain } from "./explain.js";
import { dishOf } from "./food.resolvers.js";
import type { Resolvers } from "./generated.js";
import { localId } from "./global-id.js";
import { childNode, freshHousehold } from "./household.resolvers.js";
import type { HandoverNode } from "./rows.js";

/** Null where the child is not one of the household's. */
async function noteOf(
  { reads }: GraphqlContext,
  householdId: string | null,
  childId: string | null,
  weekStart: string,
): Promise<HandoverNode | null> {
  const household = householdId === null ? null : await reads.household(householdId);
  const row = household?.children.find(({ id }) => id === childId);
  if (!household || !row) return null;
  const note = await reads.session().read((tx) => readHandover(tx, row.id, weekStart));
  return { row, household, note };
}

export const returnedOfItem: Pick<NonNullable<Resolvers["BoxItem"]>, "cameBack"> = {
  cameBack: ({ row }) => row.cameBack,
};

export const handoverQueries: Pick<NonNullable<Resolvers["Query"]>, "handover"> = {
  async handover(_, { householdId, childId, date }, context) {
    requirePerson(context);
    if (!isCalendarDate(date)) return null;
    return noteOf(context, localId("Household", householdId), localId("Child", childId), handoverWeek(date));
  },
};

export const handoverMutations: Pick<NonNullable<Resolvers["Mutation"]>, "reportReturned" | "writeHandover"> = {
  async reportReturned(_, { input }, context) {
    const householdId = localId("Household", input.householdId);
    const done = await reportReturned(context.app, requirePerson(context), {
      ...input,
      householdId,
      boxId: localId("Box", input.boxId),
      entries: input.entries.map(({ itemId, cameBack }) => ({ itemId: localId("BoxItem", itemId), cameBack })),
    });
    if (!done.ok) return explain(done.error, householdId);
    await freshHousehold(context, done.value.householdId);
    return { __typename: "ReturnedPayload", ...done.value };
  },
  async writeHandover(_, { input }, context) {
    const householdId = localId("Household", input.householdId);
    const done = await writeHandover(context.app, requirePerson(context), {
      ...input,
      householdId,
      childId: localId("Child", input.childId),
    });
    if (!done.ok) return explain(done.error, householdId);
    await freshHousehold(context, done.value.householdId);
    return { __typename: "HandoverPayload", ...done.value };
  },
};

export const handoverTypes: Pick<Resolvers, "Handover" | "HandoverPayload" | "DishReturned" | "ReturnedPayload"> = {
  Handover: {
    child: ({ row, household }) => childNode(row, household),
    weekStart: ({ note }) => note.weekStart,
    revision: ({ note }) => note.revision,
    allergies: ({ row }) => row.allergies,
    cameBack: ({ note }) =>
      [...new Set(note.cameBack.map(({ dish }) => dish))].map((dish) => ({
        dish,
        days: note.cameBack.filter((entry) => entry.dish === dish),
      })),
    repeat: ({ note }) => note.repeat,
    avoid: ({ note }) => note.avoid,
    note: ({ note }) => note.note,
    box: ({ note, household }) => whereaboutsFor(household.id, note.box),
    icePacks: ({ note, household }) => whereaboutsFor(household.id, note.icePacks),
    flask: ({ note, household }) => whereaboutsFor(household.id, note.flask),
  },
  HandoverPayload: {
    async handover({ householdId, childId, weekStart }, _, context) {
      const note = await noteOf(context, householdId, childId, weekStart);
      if (!note) throw new Error("a note just written cannot be read");
      return note;
    },
  },
  DishReturned: { dish: ({ dish }, _, context) => dishOf(context, dish) },
  ReturnedPayload: {
    async box({ householdId, childId, date }, _, { reads }) {
      const [row] = await reads.session().read((tx) => readBoxesOfChild(tx, childId, date, date));
      if (!row) throw new Error("a box just reported on cannot be read");
      return { row, householdId };
    },
    async household({ householdId }, _, { reads }) {
      const household = await reads.household(householdId);
      if (!household) throw new Error("a household just changed cannot be read");
      return household;
    },
  },
};
