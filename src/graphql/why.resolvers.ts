/** Why, and why not: prices of other dishes, and what clashes in a week that cannot be planned. */
import { pricedAlternativesOf, priceOfDish } from "../app/prices.js";
import { sayChange, sayNotOffered, sayPrice, sayRequirement } from "../app/say.js";
import type { WeekBrief } from "../domain/brief.js";
import type { InfeasibleWeek } from "../domain/planner/questions.js";
import { isFixed } from "../domain/planner/requirements.js";
import { requirePerson, type GraphqlContext } from "./context.js";
import { explain } from "./explain.js";
import { dishOf } from "./food.resolvers.js";
import type { Resolvers } from "./generated.js";
import { localId } from "./global-id.js";
import { childOf } from "./household.resolvers.js";
import { ruleOf } from "./verdicts.js";
import { namesFor } from "./week.resolvers.js";
import { whoSaysSo } from "./who-says-so.js";

/** One search for both fields of a refusal. */
const explanations = new WeakMap<WeekBrief, Promise<InfeasibleWeek>>();
function explanationOf(
  { brief, notBefore }: { readonly brief: WeekBrief; readonly notBefore: string },
  { app, searches }: GraphqlContext,
): Promise<InfeasibleWeek> {
  const known = explanations.get(brief);
  if (known !== undefined) return known;
  const asked = app.planner.ask({ kind: "INFEASIBLE_WEEK", brief, notBefore }, searches.begin());
  explanations.set(brief, asked);
  return asked;
}

export const whyOfItems: Pick<NonNullable<Resolvers["BoxItem"]>, "pricedAlternatives"> = {
  async pricedAlternatives({ row }, { first }, context) {
    // What is of the other home's kitchen carries no note here, and no search is spent on it.
    if (row.note === null) return null;
    const signal = context.searches.begin();
    const found = await pricedAlternativesOf(context.app, requirePerson(context), row.id, first, signal);
    return found?.priced.map((priced) => ({ row: priced, householdId: found.householdId })) ?? null;
  },
};

export const whyQueries: Pick<NonNullable<Resolvers["Query"]>, "priceOfDish"> = {
  async priceOfDish(_, { householdId, childId, ...about }, context) {
    const personId = requirePerson(context);
    const ids = { householdId: localId("Household", householdId), childId: localId("Child", childId) };
    const priced = await priceOfDish(context.app, personId, { ...about, ...ids }, context.searches.begin());
    if (!priced.ok) return explain(priced.error, ids.householdId);
    const { found, ruleSets, householdId: home } = priced.value;
    switch (found.kind) {
      case "PRICED":
        return { __typename: "PricedAlternative", row: found.priced, householdId: home };
      case "NOT_OFFERED": {
        const { text, source } = sayNotOffered(found.why, await namesFor(context, home, found.why));
        return {
          __typename: "DishNotOffered",
          message: text,
          kind: found.why.kind,
          rule: found.rule,
          source,
          named: ruleOf(found.why, ids.childId ?? "", about.date),
          householdId: home,
        };
      }
      case "NO_WEEK":
        return {
          __typename: "NoWeekWithDish",
          message: "It may stand there, but no week with it was found; clash says what it clashes with.",
          clash: found.clashes && { row: found.clashes, householdId: home, ruleSets },
        };
    }
  },
};

export const whyTypes: Pick<
  Resolvers,
  | "WeekInfeasible"
  | "Clash"
  | "ClashMember"
  | "DishNotOffered"
  | "Exclusion"
  | "WayOut"
  | "WayOutChange"
  | "PricedAlternative"
  | "PriceOfChange"
> = {
  WeekInfeasible: {
    async clash(node, _, context) {
      const { clashes } = await explanationOf(node, context);
      const { household, ruleSets } = node.brief;
      return clashes && { row: clashes, householdId: household.id, ruleSets };
    },
    async waysOut(node, _, context) {
      const { waysOut } = await explanationOf(node, context);
      return waysOut.map((row) => ({ row, householdId: node.brief.household.id }));
    },
  },
  Clash: {
    members: ({ row, ...told }) => row.members.map((member) => ({ row: member, ...told })),
    proof: ({ row }) => row.proof,
    irreducible: ({ row }) => row.isIrreducible,
  },
  ClashMember: {
    kind: ({ row }) => row.kind,
    child: ({ row, householdId }, _, context) => ("childId" in row ? childOf(context, householdId, row.childId) : null),
    date: ({ row }) => ("date" in row ? row.date : null),
    session: ({ row }) => ("session" in row ? row.session : null),
    fixed: ({ row }) => isFixed(row),
    text: async ({ row, householdId, ruleSets }, _, context) =>
      sayRequirement(row, ruleSets, await namesFor(context, householdId, row)),
    whoSaysSo: ({ row, householdId }, _, context) =>
      whoSaysSo(
        context,
        householdId,
        row.kind === "RULE" ? { ...row, dates: row.date === null ? [] : [row.date] } : null,
      ),
  },
  DishNotOffered: {
    whoSaysSo: ({ named, householdId }, _, context) => whoSaysSo(context, householdId, named),
  },
  Exclusion: {
    whoSaysSo: ({ named, householdId }, _, context) => whoSaysSo(context, householdId, named),
  },
  WayOut: {
    changes: ({ row, householdId }) => row.changes.map((change) => ({ row: change, householdId })),
    wishes: ({ row: { wishes } }) => ({
      ...wishes,
      nutrientShortfallPercent: Math.round(wishes.nutrientShortfallPercent),
      objectivePoints: Math.round(wishes.objectivePoints),
    }),
  },
  WayOutChange: {
    kind: ({ row }) => row.kind,
    child: ({ row, householdId }, _, context) => ("childId" in row ? childOf(context, householdId, row.childId) : null),
    date: ({ row }) => ("date" in row ? row.date : null),
    text: async ({ row, householdId }, _, context) => sayChange(row, await namesFor(context, householdId, row)),
  },
  PricedAlternative: {
    dish: ({ row }, _, context) => dishOf(context, row.dish),
    grams: ({ row }) => row.grams,
    pieces: ({ row }) => row.pieces,
    price: (node) => node,
  },
  PriceOfChange: {
    handsOnMinutes: ({ row }) => row.price.handsOnMinutes,
    costMinor: ({ row }) => row.price.costMinor,
    spareBaseGrams: ({ row }) => row.price.spareBaseGrams,
    nutrientShortfallPercent: ({ row }) => row.price.nutrientShortfallPercent,
    refusalPoints: ({ row }) => row.price.refusalPoints,
    monotonyPoints: ({ row }) => row.price.monotonyPoints,
    objectivePoints: ({ row }) => row.price.objectivePoints,
    changedItems: ({ row }) => row.price.changedItems,
    changedBoxes: ({ row, householdId }) => row.price.changedBoxes.map((box) => ({ ...box, householdId })),
    text: ({ row }) => sayPrice(row.price),
  },
};
