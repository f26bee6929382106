import type { App } from "../app/app.js";
import { changeKitchen } from "./kitchen-mutations.js";
import { createChild } from "../app/create-child.js";
import { createHousehold } from "../app/create-household.js";
import { enrolChild } from "../app/enrol-child.js";
import { setSchoolProvision } from "../app/set-school-provision.js";
import { enrolmentOn, weekStartOf } from "../app/assemble-brief.js";
import { dailyNeeds } from "../domain/nutrition/needs.js";
import { nutrientsGiven } from "../domain/nutrition/given-food.js";
import { shareOfBreak } from "../domain/nutrition/meal-share.js";
import { ageOn, daysBetween, weekdayOf } from "../domain/calendar/dates.js";
import { readBoxesOfChild } from "../database/week.js";
import { GraphQLError } from "graphql";
import type { ChildRow, HouseholdRow } from "../database/household.js";
import { requirePerson, type GraphqlContext } from "./context.js";
import { explain } from "./explain.js";
import { baseOf, foodOf } from "./food.resolvers.js";
import { globalId, localId } from "./global-id.js";
import { GoneSince } from "./gone-since.js";
import type { Resolvers } from "./generated.js";
import type { ChildNode } from "./rows.js";
import { verdictsOf } from "./verdicts.js";

const MOST_DAYS = 62;

/** The tree after a write; the person has just changed it, so it is theirs. */
export async function freshHousehold({ reads }: GraphqlContext, id: string): Promise<HouseholdRow> {
  reads.forget();
  const household = await reads.household(id);
  if (!household) throw new GoneSince();
  return household;
}

export const childNode = (row: ChildRow, household: HouseholdRow): ChildNode => ({
  id: row.id,
  name: row.name,
  load: () => Promise.resolve({ row, household }),
});

/** The payload of a change to one child. */
export function changedChild(household: HouseholdRow, childId: string) {
  const row = household.children.find((child) => child.id === childId);
  if (!row) throw new GoneSince();
  return { household, child: childNode(row, household) };
}

const field =
  <K extends keyof ChildRow>(key: K) =>
  async (child: ChildNode): Promise<ChildRow[K]> =>
    (await child.load()).row[key];

/** A child of a household; at once when a tree that names it has been read. */
export function childOf({ reads }: GraphqlContext, householdId: string, id: string): ChildNode | Promise<ChildNode> {
  const known = reads.childrenOf(householdId);
  if (!known) return reads.household(householdId).then(() => pick(reads.childrenOf(householdId), id));
  return pick(known, id);
}

/** The same where a plan of long ago may name a child who lives here no more: null then. */
export async function childIfHere(
  { reads }: GraphqlContext,
  householdId: string,
  id: string,
): Promise<ChildNode | null> {
  if (!reads.childrenOf(householdId)) await reads.household(householdId);
  return reads.childrenOf(householdId)?.get(id) ?? null;
}

/** Children of a household in the order given, without those who live there no more; none when it is not the reader's. */
export function childrenOf(
  { reads }: GraphqlContext,
  householdId: string,
  ids: readonly string[],
): ChildNode[] | Promise<ChildNode[]> {
  const among = (children: ReadonlyMap<string, ChildNode> | null) => ids.flatMap((id) => children?.get(id) ?? []);
  const known = reads.childrenOf(householdId);
  return known ? among(known) : reads.household(householdId).then(() => among(reads.childrenOf(householdId)));
}

function pick(children: ReadonlyMap<string, ChildNode> | null, id: string): ChildNode {
  const child = children?.get(id);
  if (!child) throw new Error("a row names a child that is not in its household");
  return child;
}

/** A child's needs as this household may know them: its own body sizes, or medians. */
function needsOf(app: App, row: ChildRow, household: HouseholdRow, on: string) {
  const body = row.body ?? { sex: null, weightKg: null, heightCm: null };
  const needs = dailyNeeds({ ...row, ...body }, on, household.energyMethod);
  const enrolment = enrolmentOn(row, on);
  const breaks = household.schools
    .flatMap(({ classes }) => classes)
    .filter(({ id }) => id === enrolment?.schoolClassId)
    .flatMap((schoolClass) => schoolClass.breaks)
    .map((pause) => ({ ...pause, ...shareOfBreak(pause, app.reference.mealShares) }));
  const day = {
    breaks: breaks.map((pause) => ({ ...pause, energyShare: pause.share })),
    given: row.provisions.filter(({ weekday }) => weekday === null || weekday === weekdayOf(on)),
  };
  return {
    ...needs,
    energyKcal: Math.round(needs.energyKcal),
    energyMethod: needs.method,
    sources: Object.entries(needs.sources).map(([figure, source]) => ({ figure, source })),
    breaks: breaks.map(({ key, share, source }) => {
      const given = nutrientsGiven(day, row.allergies, (food) => app.index.food(food), key);
      return {
        breakKey: key,
        share,
        source,
        energyKcal: Math.round(needs.energyKcal * share),
        givenKcal: Math.round(given.of("ENERC_KCAL")),
      };
    }),
  };
}

type Mutations =
  | "createHousehold"
  | "createChild"
  | "enrolChild"
  | "setStock"
  | "setLeftovers"
  | "setPrepTimes"
  | "setHotDays"
  | "setEquipment"
  | "setEnergyMethod"
  | "setSchoolProvision"
  | "recordLabel"
  | "setKeepsOut"
  | "relaxHouseRule";

export const householdResolvers: Pick<
  Resolvers,
  | "Household"
  | "Kitchen"
  | "Stock"
  | "Leftover"
  | "FreezerStock"
  | "LabelCheck"
  | "Child"
  | "Enrolment"
  | "SchoolProvision"
> & {
  Query: Pick<NonNullable<Resolvers["Query"]>, "household">;
  Mutation: Pick<NonNullable<Resolvers["Mutation"]>, Mutations>;
} = {
  Query: {
    household(_, { id }, context) {
      requirePerson(context);
      const local = localId("Household", id);
      return local === null ? null : context.reads.household(local);
    },
  },
  Mutation: {
    async createHousehold(_, { input }, context) {
      const made = await createHousehold(context.app, requirePerson(context), input);
      return made.ok
        ? { __typename: "CreateHouseholdPayload", household: await freshHousehold(context, made.value.householdId) }
        : explain(made.error);
    },
    async createChild(_, { input }, context) {
      const made = await createChild(context.app, requirePerson(context), {
        ...input,
        householdId: localId("Household", input.householdId),
      });
      if (!made.ok) return explain(made.error);
      const household = await freshHousehold(context, made.value.householdId);
      return { __typename: "CreateChildPayload", ...changedChild(household, made.value.childId) };
    },
    async enrolChild(_, { input }, context) {
      const made = await enrolChild(context.app, requirePerson(context), {
        ...input,
        householdId: localId("Household", input.householdId),
        childId: localId("Child", input.childId),
        schoolClassId: localId("SchoolClass", input.schoolClassId),
      });
      if (!made.ok) return explain(made.error);
      const household = await freshHousehold(context, made.value.householdId);
      return { __typename: "EnrolChildPayload", ...changedChild(household, made.value.childId) };
    },
    async setSchoolProvision(_, { input }, context) {
      const made = await setSchoolProvision(context.app, requirePerson(context), {
        ...input,
        householdId: localId("Household", input.householdId),
        childId: localId("Child", input.childId),
      });
      if (!made.ok) return explain(made.error);
      const household = await freshHousehold(context, made.value.householdId);
      return { __typename: "SetSchoolProvisionPayload", ...changedChild(household, made.value.childId) };
    },
    ...changeKitchen,
  },
  Household: {
    id: (household) => globalId("Household", household.id),
    children: (household) => household.children.map((row) => childNode(row, household)),
    kitchen: (household) => household,
    week: (household, { date }, { reads }) => reads.week(household.id, weekStartOf(date, household.weekStart)),
  },
  Stock: { food: ({ food }, _, context) => foodOf(context, food) },
  Leftover: { id: (row) => globalId("Leftover", row.id), base: ({ base }, _, context) => baseOf(context, base) },
  FreezerStock: {
    id: (row) => globalId("FreezerStock", row.id),
    base: ({ base }, _, context) => baseOf(context, base),
  },
  LabelCheck: { food: ({ food }, _, context) => foodOf(context, food) },
  Child: {
    id: ({ id }) => globalId("Child", id),
    name: ({ name }) => name,
    dateOfBirth: field("dateOfBirth"),
    ageYears: async (child, { on }) => ageOn((await child.load()).row.dateOfBirth, on),
    diets: field("diets"),
    dislikes: field("dislikes"),
    appetite: field("appetite"),
    minutesToEat: field("minutesToEat"),
    allergies: field("allergies"),
    provisions: field("provisions"),
    async enrolments(child) {
      const { row, household } = await child.load();
      return row.enrolments.map((enrolment) => ({ row: enrolment, household }));
    },
    async dailyNeeds(child, { on }, { app }) {
      const { row, household } = await child.load();
      return needsOf(app, row, household, on);
    },
    verdicts: verdictsOf,
    async boxes(child, { from, to }, { reads }) {
      const days = daysBetween(from, to);
      if (days < 0 || days > MOST_DAYS)
        throw new GraphQLError(`Ask for 0 to ${MOST_DAYS} days from one day to a later one.`, {
          extensions: { code: "BAD_USER_INPUT" },
        });
      const { row, household } = await child.load();
      const boxes = await reads.session().read((tx) => readBoxesOfChild(tx, row.id, from, to));
      return boxes.map((box) => ({ row: box, householdId: household.id }));
    },
  },
  SchoolProvision: { food: ({ food }, _, context) => foodOf(context, food) },
  Enrolment: {
    school: ({ row, household }) => household.schools.find((school) => school.id === row.schoolId)!,
    schoolClass: ({ row, household }) =>
      household.schools.flatMap((school) => school.classes).find((entry) => entry.id === row.schoolClassId)!,
    fromDate: ({ row }) => row.fromDate,
    untilDate: ({ row }) => row.untilDate,
  },
};
