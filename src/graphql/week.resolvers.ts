import type { App } from "../app/app.js";
import { agreeWeek } from "../app/agree-week.js";
import type { WeekRef } from "../app/change-week.js";
import { alternativesOf, pinItem, swapItem, unpinItem } from "../app/items.js";
import { markPacked } from "../app/mark-packed.js";
import { planWeekInBackground } from "../app/plan-in-background.js";
import { planWeek } from "../app/plan-week.js";
import { reportAbsence } from "../app/report-absence.js";
import {
  type Names,
  sayCaution,
  sayConflict,
  sayCrossContact,
  sayHoldingAssumptions,
  sayHoldingMend,
  sayOrganism,
  sayReason,
  saySpareUse,
  sayWayOut,
} from "../app/say.js";
import { weekStartOf } from "../app/assemble-brief.js";
import { boxCard } from "../app/box-card.js";
import { sayBoxCard } from "../app/say-box-card.js";
import { boxKey } from "../domain/box-key.js";
import { stockAfter } from "../domain/shopping/shopping.js";
import { holdingCurve } from "../domain/food-safety/forecast.js";
import type { HouseholdRow } from "../database/household.js";
import type { CertificateRow } from "../database/week.js";
import { avoidedInSession, orderForCrossContact } from "../domain/kitchen/cross-contact.js";
import { isOwnKey } from "../../shared/own-catalogue.js";
import { requirePerson, type GraphqlContext } from "./context.js";
import { explain } from "./explain.js";
import { baseOf, dishOf, foodOf, indexSeenBy } from "./food.resolvers.js";
import { globalId, localId } from "./global-id.js";
import { GoneSince } from "./gone-since.js";
import type { Resolvers } from "./generated.js";
import { childIfHere, childOf, childrenOf } from "./household.resolvers.js";
import { mapped, nothingToHear, type NoticeOn, type Topic } from "./notices.js";
import { whoSaysSo } from "./who-says-so.js";

const holdingModelOf = (app: App) => app.reference.holding.model;

/** Minutes to a tenth: differences of binary fractions would show their tails. */
export const tenths = (minutes: number) => Math.round(minutes * 10) / 10;

/** Parts of the week's points that a better week could save at most. */
const gapOf = ({ objectivePoints, boundPoints }: CertificateRow) =>
  objectivePoints <= 0 ? 0 : (objectivePoints - boundPoints) / objectivePoints;
/** A gap of one in ten thousand counts as none. */
const PROVEN = 1e-4;

/** Keys of own rows among the facts of a row. */
const ownKeysIn = (facts: unknown): string[] =>
  typeof facts === "string"
    ? [facts].filter(isOwnKey)
    : typeof facts === "object" && facts !== null
      ? Object.values(facts).flatMap(ownKeysIn)
      : [];

/** @param facts what is going to be said: only own rows in it have to be looked up */
export async function namesFor(context: GraphqlContext, householdId: string | null, facts: unknown): Promise<Names> {
  const { reads } = context;
  const index = await indexSeenBy(context, ownKeysIn(facts));
  if (householdId !== null && reads.childrenOf(householdId) === null) await reads.household(householdId);
  const children = householdId === null ? null : reads.childrenOf(householdId);
  return { index, child: (id) => children?.get(id)?.name ?? "a child" };
}

/** The household a plan hangs on: whoever reads the plan reads it too. */
async function householdOf(reads: GraphqlContext["reads"], id: string): Promise<HouseholdRow> {
  const household = await reads.household(id);
  if (!household) throw new Error("a plan hangs on a household that cannot be read");
  return household;
}

export async function weekPayload(context: GraphqlContext, ref: WeekRef) {
  context.reads.forget();
  const week = await context.reads.week(ref.householdId, ref.weekStart);
  if (!week) throw new GoneSince();
  return { __typename: "WeekPayload" as const, week, changed: ref.changed };
}

type Types =
  | "Week"
  | "WeekPlan"
  | "PlanCertificate"
  | "Box"
  | "BoxItem"
  | "BoxItemNote"
  | "ItemHolding"
  | "Batch"
  | "BatchFeed"
  | "Task"
  | "ShoppingLine"
  | "SpareUse"
  | "SpareDish"
  | "ReadyUse"
  | "BoxCard"
  | "BoxPart"
  | "Caution"
  | "Conflict"
  | "Alternative"
  | "NoSchool"
  | "WeekPayload"
  | "LabelsUnread";
type Mutations =
  | "planWeek"
  | "planWeekInBackground"
  | "pinItem"
  | "unpinItem"
  | "swapItem"
  | "agreeWeek"
  | "markPacked"
  | "reportAbsence";

export const weekResolvers: Pick<Resolvers, Types> & {
  Query: Pick<NonNullable<Resolvers["Query"]>, "week" | "alternatives">;
  Mutation: Pick<NonNullable<Resolvers["Mutation"]>, Mutations>;
  Subscription: Pick<NonNullable<Resolvers["Subscription"]>, "planProgress" | "weekChanged">;
} = {
  Query: {
    week(_, { householdId, date }, context) {
      requirePerson(context);
      const local = localId("Household", householdId);
      return local === null ? null : context.reads.weekOfDay(local, date);
    },
    alternatives: async (_, { itemId }, context) =>
      (await alternativesOf(context.app, requirePerson(context), localId("BoxItem", itemId))) ?? [],
  },
  Mutation: {
    async planWeek(_, { input }, context) {
      const householdId = localId("Household", input.householdId);
      const planned = await planWeek(context.app, requirePerson(context), { ...input, householdId });
      return planned.ok ? weekPayload(context, planned.value) : explain(planned.error, householdId);
    },
    async planWeekInBackground(_, { input }, context) {
      const householdId = localId("Household", input.householdId);
      const queued = await planWeekInBackground(context.app, requirePerson(context), { ...input, householdId });
      return queued.ok ? { __typename: "PlanQueued", ...queued.value } : explain(queued.error, householdId);
    },
    async pinItem(_, { input }, context) {
      const pinned = await pinItem(context.app, requirePerson(context), {
        ...input,
        itemId: localId("BoxItem", input.itemId),
      });
      return pinned.ok ? weekPayload(context, pinned.value) : explain(pinned.error);
    },
    async unpinItem(_, { input }, context) {
      const unpinned = await unpinItem(context.app, requirePerson(context), {
        ...input,
        itemId: localId("BoxItem", input.itemId),
      });
      return unpinned.ok ? weekPayload(context, unpinned.value) : explain(unpinned.error);
    },
    async swapItem(_, { input }, context) {
      const swapped = await swapItem(context.app, requirePerson(context), {
        ...input,
        itemId: localId("BoxItem", input.itemId),
      });
      return swapped.ok ? weekPayload(context, swapped.value) : explain(swapped.error);
    },
    async agreeWeek(_, { input }, context) {
      const agreed = await agreeWeek(context.app, requirePerson(context), {
        ...input,
        weekId: localId("Week", input.weekId),
      });
      return agreed.ok ? weekPayload(context, agreed.value) : explain(agreed.error);
    },
    async markPacked(_, { input }, context) {
      const packed = await markPacked(context.app, requirePerson(context), {
        ...input,
        boxId: localId("Box", input.boxId),
      });
      return packed.ok ? weekPayload(context, packed.value) : explain(packed.error);
    },
    async reportAbsence(_, { input }, context) {
      const householdId = localId("Household", input.householdId);
      const reported = await reportAbsence(context.app, requirePerson(context), {
        ...input,
        householdId,
        childId: localId("Child", input.childId),
      });
      return reported.ok ? weekPayload(context, reported.value) : explain(reported.error, householdId);
    },
  },
  Subscription: {
    planProgress: {
      subscribe: async (_, { householdId }, context) =>
        mapped(await noticesAbout(context, "planProgress", householdId), (notice) => ({
          planProgress:
            notice.kind === "PLAN_FAILED"
              ? { weekStart: notice.weekStart, percent: 100, bestPoints: null, failure: notice.failure }
              : { weekStart: notice.weekStart, percent: notice.percent, bestPoints: notice.bestPoints, failure: null },
        })),
    },
    weekChanged: {
      subscribe: (_, { householdId }, context) => noticesAbout(context, "weekChanged", householdId) as never,
      /** Read with the listener's own rights at each change, in a transaction of its own. */
      resolve: (async (notice: { householdId: string; weekStart: string }, _: unknown, { reads }: GraphqlContext) => {
        reads.forget();
        return reads.week(notice.householdId, notice.weekStart);
      }) as never,
    },
  },
  Week: {
    id: (week) => globalId("Week", week.id),
    plan: (week) => ({ row: week.plan, householdId: week.householdId }),
  },
  WeekPlan: {
    id: ({ row }) => globalId("WeekPlan", row.id),
    number: ({ row }) => row.number,
    state: ({ row }) => row.state,
    createdAt: ({ row }) => row.createdAt,
    agreedAt: ({ row }) => row.agreedAt,
    boxes: ({ row, householdId }, { date }) =>
      row.boxes.filter((box) => date == null || box.date === date).map((box) => ({ row: box, plan: row, householdId })),
    batches: ({ row, householdId }) => row.batches.map((batch) => ({ row: batch, householdId })),
    tasks: ({ row, householdId }) => row.tasks.map((task) => ({ row: task, among: row.tasks, householdId })),
    shopping: ({ row, householdId }) => row.shopping.map((line) => ({ row: line, householdId })),
    estimatedCost: async ({ row, householdId }, _, { reads }) => ({
      minor: row.shopping.reduce((sum, line) => sum + line.costMinor, 0),
      currency: (await householdOf(reads, householdId)).currency,
    }),
    readyUses: ({ row }) => row.readyUses,
    cautions: ({ row, householdId }) => {
      const dates = [...new Set(row.boxes.map(({ date }) => date))];
      return row.cautions.map((caution) => ({ row: caution, dates, householdId }));
    },
    wishes: ({ row }) => ({ ...row.wishes, objectivePoints: Math.round(row.wishes.objectivePoints) }),
    sharing: ({ row }) =>
      row.comparison && {
        ...row.comparison,
        savedMinutes:
          row.comparison.handsOnMinutesAlone === null
            ? null
            : tenths(row.comparison.handsOnMinutesAlone - row.comparison.handsOnMinutesShared),
      },
    certificate: ({ row }) => row.certificate,
    origin: ({ row }) => row,
  },
  PlanCertificate: {
    gapPercent: (row) => Math.ceil(gapOf(row) * 10_000) / 100,
    provenOptimal: (row) => gapOf(row) <= PROVEN,
    seconds: (row) => tenths(row.milliseconds / 1000),
  },
  Box: {
    id: ({ row }) => globalId("Box", row.id),
    child: ({ row, householdId }, _, context) => childOf(context, householdId, row.childId),
    date: ({ row }) => row.date,
    state: ({ row }) => row.state,
    packedAt: ({ row }) => row.packedAt,
    packing: ({ row }) => row.packing,
    async card({ row, plan, householdId }, _, { reads }) {
      // Before anything is read: whoever does not pack it has no plan with it.
      if (row.packing === null) return null;
      const household = await householdOf(reads, householdId);
      const its = plan ?? (await reads.week(householdId, weekStartOf(row.date, household.weekStart)))?.plan;
      const card = its?.boxes.some(({ id }) => id === row.id) ? boxCard(row, its, household) : null;
      return card && { card, householdId };
    },
    items: ({ row, householdId }) => row.items.map((item) => ({ row: item, householdId })),
  },
  BoxCard: {
    leaveAt: ({ card }) => card.box.packing.leaveAt,
    packing: ({ card }) => card.pack,
    parts: ({ card, householdId }) => card.parts.map((part) => ({ part, householdId })),
    energyKcal: ({ card }) => card.energyKcal,
    carbohydrateGrams: ({ card }) => card.carbohydrateGrams,
    coldSources: ({ card }) => card.box.packing.coldSources,
    flask: ({ card }) => card.box.packing.flask,
    cutlery: ({ card }) => card.box.packing.cutlery,
    labels: ({ card }, _, context) => card.labels.map((key) => foodOf(context, key)),
    async cautions({ card, householdId }, _, context) {
      const names = await namesFor(context, householdId, card.cautions);
      return card.cautions.map((caution) => sayCaution(caution, names));
    },
    lines: async ({ card, householdId }, _, context) =>
      sayBoxCard(card, await namesFor(context, householdId, [card.box.items, card.labels, card.cautions])),
  },
  BoxPart: {
    compartment: ({ part }) => part.compartment,
    ml: ({ part }) => part.ml,
    leakProof: ({ part }) => part.leakProof,
    items: ({ part, householdId }) => part.items.map((row) => ({ row, householdId })),
  },
  BoxItem: {
    id: ({ row }) => globalId("BoxItem", row.id),
    breakKey: ({ row }) => row.breakKey,
    slot: ({ row }) => row.slot,
    place: ({ row }) => row.place,
    dish: ({ row }, _, context) => dishOf(context, row.dish),
    grams: ({ row }) => row.grams,
    pieces: ({ row }) => row.pieces,
    served: ({ row }) => row.served,
    energyKcal: ({ row }) => row.energyKcal,
    carbohydrateGrams: ({ row }) => row.carbohydrateGrams,
    allergens: ({ row }) => row.allergens,
    cuts: ({ row }) => row.cuts,
    holdingCase: ({ row }) => row.holdingCase,
    labelsToRead: ({ row }, _, context) => row.note?.labelsToRead.map((key) => foodOf(context, key)) ?? null,
    pinned: ({ row }) => row.pinned,
    note: (node) => (node.row.note === null ? null : node),
    holdingCurve({ row: { note } }, _, { app }) {
      if (note === null) return null;
      if (note.holdingForecast === null) return [];
      return holdingCurve(holdingModelOf(app), note.holdingForecast, note.holdingMinutes);
    },
  },
  BoxItemNote: {
    compartment: ({ row }) => row.note!.compartment,
    holdingMinutes: ({ row }) => row.note!.holdingMinutes,
    holdingLimitMinutes: ({ row }) => row.note!.holdingLimitMinutes,
    holding: (node) => node,
    why: async ({ row, householdId }, _, context) => {
      const names = await namesFor(context, householdId, row.note!.reasons);
      return row.note!.reasons.map((reason) => sayReason(reason, names));
    },
  },
  ItemHolding: {
    case: ({ row }) => row.holdingCase,
    minutes: ({ row }) => row.note!.holdingMinutes,
    limitMinutes: ({ row }) => row.note!.holdingLimitMinutes,
    limitedBy: ({ row }) => row.note!.holdingForecast?.limitedBy ?? null,
    mostCelsius: ({ row }) => row.note!.holdingForecast?.mostCelsius ?? null,
    endCelsius: ({ row }) => row.note!.holdingForecast?.endCelsius ?? null,
    growthLog10: ({ row }) => row.note!.holdingForecast?.growthLog10 ?? null,
    organism: ({ row }) => sayOrganism(row.note!.holdingForecast?.organism ?? null),
    assumptions: ({ row }, _, { app }) => sayHoldingAssumptions(row.note!.holdingForecast, holdingModelOf(app)),
    mend: ({ row }) => row.note!.holdingForecast?.mend.map(sayHoldingMend) ?? [],
  },
  Batch: {
    id: ({ row }) => globalId("Batch", row.id),
    base: ({ row }, _, context) => baseOf(context, row.base),
    session: ({ row }) => row.session,
    batches: ({ row }) => row.batches,
    grams: ({ row }) => row.grams,
    feeds: ({ row, householdId }) => row.feeds.map((feed) => ({ row: feed, householdId })),
    spareGrams: ({ row }) => row.spareGrams,
    state: ({ row }) => row.state,
  },
  BatchFeed: {
    date: ({ row }) => row.date,
    children: ({ row, householdId }, _, context) => childrenOf(context, householdId, row.childIds),
    grams: ({ row }) => row.grams,
  },
  Task: {
    id: ({ row }) => globalId("Task", row.id),
    session: ({ row }) => row.session,
    kind: ({ row }) => row.kind,
    text: ({ row }) => row.text,
    children: ({ row, householdId }, _, context) => childrenOf(context, householdId, row.childIds),
    forDates: ({ row }) => row.forDates,
    handsOnMinutes: ({ row }) => row.handsOnMinutes,
    passiveMinutes: ({ row }) => row.passiveMinutes,
    equipment: ({ row }) => row.equipment.map((use) => (use.units === 1 ? use.kind : `${use.units} x ${use.kind}`)),
    startsAt: ({ row }) => row.startsAt,
    handsFreeAt: ({ row }) => row.handsFreeAt,
    endsAt: ({ row }) => row.endsAt,
    carer: ({ row }) => row.carer + 1,
    handles: ({ row }) => row.handles,
    crossContact({ row, among }) {
      const order = orderForCrossContact(row, among);
      return (
        order && {
          order,
          text: sayCrossContact(order, row.handles.length > 0 ? row.handles : avoidedInSession(row.session, among)),
        }
      );
    },
    state: ({ row }) => row.state,
    takenBy: ({ row }) => row.takenBy,
  },
  ShoppingLine: {
    id: ({ row }) => globalId("ShoppingLine", row.id),
    food: ({ row }, _, context) => foodOf(context, row.food),
    section: ({ row }) => row.section,
    neededGrams: ({ row }) => row.neededGrams,
    fromStockGrams: ({ row }) => row.fromStockGrams,
    packs: ({ row }) => row.packs,
    packGrams: ({ row }) => row.packGrams,
    spareGrams: ({ row }) => row.spareGrams,
    spareUses: ({ row, householdId }) => row.spareUses.map((use) => ({ row: use, householdId })),
    cupboardAfterGrams: ({ row }) => stockAfter(row),
    costMinor: ({ row }) => row.costMinor,
    readLabel: ({ row }) => row.readLabel,
  },
  SpareUse: {
    kind: ({ row }) => row.kind,
    keptIn: ({ row }) => (row.kind === "KEEPS_FOR_NEXT_WEEK" ? row.where : null),
    untilDate: ({ row }) => ("untilDate" in row ? row.untilDate : null),
    days: ({ row }) => (row.kind === "FREEZES" ? row.days : null),
    source: ({ row }) => (row.kind === "FREEZES" ? row.source : null),
    dishes: ({ row, householdId }) =>
      row.kind === "DISHES" ? row.dishes.map((dish) => ({ row: dish, householdId })) : [],
    text: async ({ row, householdId }, _, context) => saySpareUse(row, await namesFor(context, householdId, row)),
  },
  SpareDish: {
    dish: ({ row }, _, context) => dishOf(context, row.dish),
    children: ({ row, householdId }, _, context) => childrenOf(context, householdId, row.childIds),
  },
  ReadyUse: {
    base: ({ base }, _, context) => baseOf(context, base),
  },
  Caution: {
    kind: ({ row }) => row.kind,
    child: ({ row, householdId }, _, context) =>
      "childId" in row ? childIfHere(context, householdId, row.childId) : null,
    date: ({ row }) => ("date" in row ? row.date : null),
    text: async ({ row, householdId }, _, context) => sayCaution(row, await namesFor(context, householdId, row)),
    whoSaysSo({ row, dates, householdId }, _, context) {
      if (row.kind === "RULE_RESTS") return whoSaysSo(context, householdId, row);
      if (row.kind !== "ADVICE_NOT_MET") return null;
      return whoSaysSo(context, householdId, { ...row, dates: row.date === null ? dates : [row.date] });
    },
  },
  Conflict: {
    kind: ({ row }) => row.kind,
    child: ({ row, householdId }, _, context) =>
      row.childId === null || householdId === null ? null : childOf(context, householdId, row.childId),
    date: ({ row }) => row.date,
    session: ({ row }) => row.session,
    text: async ({ row, householdId }, _, context) => sayConflict(row, await namesFor(context, householdId, row)),
    wayOut: ({ row }) => row.wayOut.map(sayWayOut).join(" "),
    whoSaysSo({ row: { childId, date, facts }, householdId }, _, context) {
      const { ruleSet, rule } = facts;
      if (childId === null || typeof ruleSet !== "string" || typeof rule !== "string") return null;
      return whoSaysSo(context, householdId, { childId, dates: date === null ? [] : [date], ruleSet, rule });
    },
  },
  Alternative: {
    dish: ({ dish }, _, context) => dishOf(context, dish),
    pointsMore: ({ objectiveDelta }) => Math.round(objectiveDelta),
  },
  NoSchool: { children: ({ childIds, householdId }, _, context) => childrenOf(context, householdId, childIds) },
  WeekPayload: {
    changedBoxes: ({ week, changed }) =>
      week.plan.boxes
        .filter((box) => changed.includes(boxKey(box)))
        .map((row) => ({ row, householdId: week.householdId })),
  },
  LabelsUnread: { foods: ({ foods }, _, context) => foods.map((key) => foodOf(context, key)) },
};

/** Notices for members of the household only; a stranger's subscription ends at once, like a household that is not there. */
export async function noticesAbout<T extends Topic>(
  context: GraphqlContext,
  topic: T,
  householdId: string,
): Promise<AsyncIterableIterator<NoticeOn<T>>> {
  const personId = requirePerson(context);
  const local = localId("Household", householdId);
  const household = local === null ? null : await context.reads.household(local);
  if (local !== null && household) {
    // A subscription lives long; it must not hold the transaction that let it in.
    await context.reads.session().close();
    return context.notices.about(topic, local, personId);
  }
  return nothingToHear();
}
