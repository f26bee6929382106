/** A school's calendar, terms and classes as its administrator sets them. */
import { calendarChange, loadCalendar } from "../app/load-calendar.js";
import { addSchoolClass, changeSchoolClass, removeTerm, setTerm } from "../app/school-terms.js";
import { requirePerson } from "./context.js";
import { explain } from "./explain.js";
import { localId } from "./global-id.js";
import type { Resolvers } from "./generated.js";
import { schoolPayload } from "./recheck.resolvers.js";

export const calendarTypes: Pick<Resolvers, "CalendarChange" | "CalendarEntry"> = {
  CalendarChange: {
    added: ({ added, schoolId }) => added.map((row) => ({ row, schoolId })),
    changed: ({ changed, schoolId }) =>
      changed.map(({ before, after }) => ({ before: { row: before, schoolId }, after: { row: after, schoolId } })),
    removed: ({ removed, schoolId }) => removed.map((row) => ({ row, schoolId })),
    setByHand: ({ setByHand, schoolId }) => setByHand.map((row) => ({ row, schoolId })),
  },
  CalendarEntry: {
    kind: ({ row }) => row.kind,
    title: ({ row }) => row.title,
    firstDay: ({ row }) => row.firstDay,
    lastDay: ({ row }) => row.lastDay,
    endsAt: ({ row }) => row.endsAt,
    async schoolClass({ row, schoolId }, _, { reads }) {
      if (row.schoolClassId === null) return null;
      const [school] = await reads.schools([schoolId]);
      return school?.classes.find(({ id }) => id === row.schoolClassId) ?? null;
    },
  },
};

export const calendarQueries: Pick<NonNullable<Resolvers["Query"]>, "calendarChange"> = {
  async calendarChange(_, { schoolId, calendar }, context) {
    const offered = await calendarChange(context.app, requirePerson(context), {
      schoolId: localId("School", schoolId),
      calendar,
    });
    return offered.ok ? { __typename: "CalendarChange", ...offered.value } : explain(offered.error);
  },
};

export const calendarMutations: Pick<
  NonNullable<Resolvers["Mutation"]>,
  "loadCalendar" | "setTerm" | "removeTerm" | "addSchoolClass" | "changeSchoolClass"
> = {
  loadCalendar: async (_, { input }, context) =>
    schoolPayload(
      context,
      await loadCalendar(context.app, requirePerson(context), {
        ...input,
        schoolId: localId("School", input.schoolId),
      }),
    ),
  setTerm: async (_, { input }, context) =>
    schoolPayload(
      context,
      await setTerm(context.app, requirePerson(context), { ...input, schoolId: localId("School", input.schoolId) }),
    ),
  removeTerm: async (_, { input }, context) =>
    schoolPayload(
      context,
      await removeTerm(context.app, requirePerson(context), { ...input, schoolId: localId("School", input.schoolId) }),
    ),
  addSchoolClass: async (_, { input }, context) =>
    schoolPayload(
      context,
      await addSchoolClass(context.app, requirePerson(context), {
        ...input,
        schoolId: localId("School", input.schoolId),
      }),
    ),
  changeSchoolClass: async (_, { input }, context) =>
    schoolPayload(
      context,
      await changeSchoolClass(context.app, requirePerson(context), {
        ...input,
        schoolClassId: localId("SchoolClass", input.schoolClassId),
      }),
    ),
};
