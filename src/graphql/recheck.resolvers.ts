/** Allergies, facilities and days that change, the boxes they block, and how to mend them. */
import { isOwnKey } from "../../shared/own-catalogue.js";
import { recordAllergy, removeAllergy } from "../app/allergies.js";
import { mendingOffer, mendWeek } from "../app/mend-week.js";
import { sayBlock } from "../app/say.js";
import type { FailureOf } from "../app/failures.js";
import { removeSchoolDay, setFacility, setSchoolDay, type SchoolChangeFailure } from "../app/school-days.js";
import { readBoxesOfChild, type BoxRow } from "../database/week.js";
import type { Result } from "../domain/result.js";
import { requirePerson, type GraphqlContext } from "./context.js";
import { explain } from "./explain.js";
import { dishOf } from "./food.resolvers.js";
import type { Resolvers } from "./generated.js";
import { localId } from "./global-id.js";
import { changedChild, childOf, freshHousehold } from "./household.resolvers.js";
import type { NoticeOn } from "./notices.js";
import { whoSaysSo } from "./who-says-so.js";
import { namesFor, noticesAbout, weekPayload } from "./week.resolvers.js";

type Mutations = "recordAllergy" | "removeAllergy" | "mendWeek" | "setFacility" | "setSchoolDay" | "removeSchoolDay";

/** A class that is named but cannot be read is none of any school. */
const NO_CLASS = "00000000-0000-0000-0000-000000000000";
export const classOf = (id: string | null | undefined) =>
  id == null ? null : (localId("SchoolClass", id) ?? NO_CLASS);

/** The school as it is after a change. */
export async function schoolPayload<F extends SchoolChangeFailure | FailureOf<"DocumentRefused" | "NothingThere">>(
  context: GraphqlContext,
  changed: Result<{ schoolId: string }, F>,
) {
  if (!changed.ok) return explain(changed.error);
  context.reads.forget();
  const [school] = await context.reads.schools([changed.value.schoolId]);
  if (!school) throw new Error("a school just changed cannot be read");
  return { __typename: "SchoolPayload" as const, school };
}

const blocksOf = ({ blocks, childId, date }: BoxRow, householdId: string) =>
  blocks.map((row) => ({ row, childId, date, householdId }));

async function allergyPayload(context: GraphqlContext, ref: { householdId: string; childId: string }) {
  const household = await freshHousehold(context, ref.householdId);
  return { __typename: "AllergyPayload" as const, ...changedChild(household, ref.childId) };
}

export const recheckResolvers: Pick<
  Resolvers,
  "BlockReason" | "BoxVerdict" | "MendingOffer" | "MendedBox" | "MendedItem"
> & {
  Box: Pick<NonNullable<Resolvers["Box"]>, "blockedBecause">;
  Query: Pick<NonNullable<Resolvers["Query"]>, "mendingOffer">;
  Mutation: Pick<NonNullable<Resolvers["Mutation"]>, Mutations>;
  Subscription: Pick<NonNullable<Resolvers["Subscription"]>, "boxesBlocked">;
} = {
  Query: {
    mendingOffer: (_, { weekId }, context) =>
      mendingOffer(context.app, requirePerson(context), localId("Week", weekId)),
  },
  Mutation: {
    async recordAllergy(_, { input }, context) {
      const recorded = await recordAllergy(context.app, requirePerson(context), {
        ...input,
        householdId: localId("Household", input.householdId),
        childId: localId("Child", input.childId),
      });
      return recorded.ok ? allergyPayload(context, recorded.value) : explain(recorded.error);
    },
    async removeAllergy(_, { input }, context) {
      const removed = await removeAllergy(context.app, requirePerson(context), {
        ...input,
        householdId: localId("Household", input.householdId),
        childId: localId("Child", input.childId),
      });
      if (!removed.ok) return explain(removed.error);
      if ("token" in removed.value) return explain({ kind: "ConfirmationNeeded", of: "LESS_STRICT", ...removed.value });
      return allergyPayload(context, removed.value);
    },
    async mendWeek(_, { input }, context) {
      const mended = await mendWeek(context.app, requirePerson(context), {
        ...input,
        weekId: localId("Week", input.weekId),
      });
      return mended.ok ? weekPayload(context, mended.value) : explain(mended.error);
    },
    setFacility: async (_, { input }, context) =>
      schoolPayload(
        context,
        await setFacility(context.app, requirePerson(context), {
          ...input,
          schoolClassId: localId("SchoolClass", input.schoolClassId),
        }),
      ),
    setSchoolDay: async (_, { input }, context) =>
      schoolPayload(
        context,
        await setSchoolDay(context.app, requirePerson(context), {
          ...input,
          schoolId: localId("School", input.schoolId),
          schoolClassId: classOf(input.schoolClassId),
        }),
      ),
    removeSchoolDay: async (_, { input }, context) =>
      schoolPayload(
        context,
        await removeSchoolDay(context.app, requirePerson(context), {
          ...input,
          schoolId: localId("School", input.schoolId),
          schoolClassId: classOf(input.schoolClassId),
        }),
      ),
  },
  Subscription: {
    boxesBlocked: {
      subscribe: (_, { householdId }, context) => noticesAbout(context, "boxesBlocked", householdId) as never,
      /** Read with the listener's own rights at each change: either home sees what it may. */
      resolve: (async (notice: NoticeOn<"boxesBlocked">, _: unknown, { reads }: GraphqlContext) => {
        reads.forget();
        const { childId, date, householdId } = notice;
        const [row] = await reads.session().read((tx) => readBoxesOfChild(tx, childId, date, date));
        return row ? { row, householdId } : null;
      }) as never,
    },
  },
  Box: {
    blockedBecause: ({ row, householdId }) => blocksOf(row, householdId),
  },
  BlockReason: {
    kind: ({ row }) => row.note?.kind ?? row.kind,
    dish({ row }, _, context) {
      const key = row.note?.dish ?? row.dish;
      const isThere = key !== null && (isOwnKey(key) || context.app.index.dish(key) !== undefined);
      return isThere ? dishOf(context, key) : null;
    },
    allergen: ({ row }) => row.note?.allergen ?? row.allergen,
    text: async ({ row, childId, householdId }, _, context) =>
      sayBlock(row, childId, await namesFor(context, householdId, row)),
    whoSaysSo({ row, childId, date, householdId }, _, context) {
      const { ruleSet, rule, says } = row;
      const named = ruleSet === null || rule === null ? null : { childId, dates: [date], ruleSet, rule, says };
      return whoSaysSo(context, householdId, named);
    },
  },
  BoxVerdict: {
    child: ({ row, householdId }, _, context) => childOf(context, householdId, row.childId),
    date: ({ row }) => row.date,
    state: ({ row }) => row.state,
    reasons: ({ row, householdId }) => blocksOf(row, householdId),
  },
  MendingOffer: {
    changedBoxes: ({ changedBoxes, householdId }) => changedBoxes.map((row) => ({ row, householdId })),
    possible: ({ conflicts }) => conflicts === null,
    conflicts: ({ conflicts, householdId }) => (conflicts ?? []).map((row) => ({ row, householdId })),
  },
  MendedBox: {
    child: ({ row, householdId }, _, context) => childOf(context, householdId, row.childId),
    date: ({ row }) => row.date,
    items: ({ row }) => row.items,
  },
  MendedItem: { dish: ({ dish }, _, context) => dishOf(context, dish) },
};
