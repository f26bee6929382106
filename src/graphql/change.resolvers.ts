/** A household's log: read backwards in pages, followed live, caught up with after a lost connection. */
import { GraphQLError } from "graphql";
import { tickShoppingLine } from "../app/tick-shopping.js";
import { readLastChange, readLog } from "../database/change.js";
import type { ChangeRow } from "../database/changes-for.js";
import { requirePerson } from "./context.js";
import { explain } from "./explain.js";
import type { ChangeKind, Resolvers } from "./generated.js";
import { globalId, localId } from "./global-id.js";
import { childNode } from "./household.resolvers.js";
import { loggedFields } from "./logged-fields.js";
import { cursorOf, keyOf, pageOf, pageSize } from "./page.js";
import type { ChangeNode } from "./rows.js";
import { mapped, nothingToHear } from "./notices.js";

/** What the subject of each kind of entry is an ID of. */
const subjectType = {
  KITCHEN: "Household",
  PREP_TIMES: "Household",
  HOT_DAYS: "Household",
  STOCK: "Household",
  LEFTOVERS: "Household",
  FREEZER: "Household",
  LABELS: "Household",
  OWN_FOOD: "OwnFood",
  OWN_DISH: "OwnDish",
  RELAXATION: "Relaxation",
  PIN: "Pin",
  DISRUPTION: "Disruption",
  BOX_KIT: "Child",
  LEAVE_TIMES: "Child",
  BODY: "Child",
  PLAN: "Week",
  TASK: "Task",
  SHOPPING: "ShoppingLine",
  BOX: "Box",
  BOXES: "Child",
  CARER: "Person",
  CHILD: "Child",
  ALLERGY: "Child",
  HOME: "Child",
  RESIDENCE: "Child",
  CAME_BACK: "Child",
  HANDOVER: "Child",
  INVITATION: "Invitation",
  ROTA: "Household",
  AVAILABILITY: "Household",
  ENROLMENT: "Enrolment",
  SCHOOL_MEALS: "Child",
  EXEMPTION: "Exemption",
  RULES: "RuleSet",
  SCHOOL: "School",
  SCHOOL_RULES: "School",
} as const satisfies Record<ChangeKind, string>;

const keyOfEntry = ({ seq }: ChangeRow) => `change ${seq}`;
function numberOf(cursor: string | null | undefined): number | null {
  const key = keyOf(cursor);
  if (key === null) return null;
  const number = /^change (\d{1,15})$/.exec(key)?.[1];
  if (number !== undefined) return Number(number);
  throw notOfThisLog();
}
const notOfThisLog = () =>
  new GraphQLError("after is no cursor of this household's log; read changeCursor anew.", {
    extensions: { code: "BAD_USER_INPUT" },
  });

export const changeMutations: Pick<NonNullable<Resolvers["Mutation"]>, "tickShoppingLine"> = {
  async tickShoppingLine(_, { input }, context) {
    const ticked = await tickShoppingLine(context.app, requirePerson(context), {
      ...input,
      lineId: localId("ShoppingLine", input.lineId),
    });
    if (!ticked.ok) return explain(ticked.error);
    context.reads.forget();
    const week = await context.reads.weekById(ticked.value.weekId);
    const row = week?.plan.shopping.find(({ id }) => id === ticked.value.lineId);
    // The key was used for a line of a plan that has been replaced since.
    if (!week || !row) return explain({ kind: "NothingThere", what: "line" });
    return { __typename: "ShoppingLinePayload", line: { row, householdId: week.householdId } };
  },
};

export const changeSubscriptions: Pick<NonNullable<Resolvers["Subscription"]>, "changes"> = {
  changes: {
    async subscribe(_, { householdId, after }, context) {
      const personId = requirePerson(context);
      const from = numberOf(after);
      const local = localId("Household", householdId);
      const last = local === null ? null : await context.app.db.readAs(personId, (tx) => readLastChange(tx, local));
      // A stranger's ends at once, like one of a household that is not there.
      if (local === null || last === null) return nothingToHear();
      if (from !== null && from > last) throw notOfThisLog();
      return mapped(context.notices.changes.follow(local, personId, from ?? last), (row) => ({
        changes: { row, householdId: local },
      }));
    },
  },
};

export const logOfHousehold: Pick<NonNullable<Resolvers["Household"]>, "changeCursor" | "log"> = {
  changeCursor: async ({ id }, _, { reads }) => cursorOf(`change ${await reads.lastChange(id)}`),
  async log({ id }, { first, after }, { reads }) {
    const size = pageSize(first);
    const before = numberOf(after);
    const rows = await reads.session().read((tx) => readLog(tx, id, before, size + 1));
    const { nodes, pageInfo } = pageOf(rows, size, keyOfEntry);
    return { nodes: nodes.map((row) => ({ row, householdId: id })), pageInfo };
  },
};

export const tickOfLine: Pick<NonNullable<Resolvers["ShoppingLine"]>, "ticked"> = { ticked: ({ row }) => row.ticked };

const about = (node: ChangeNode, kind: ChangeKind) => node.row.kind === kind && node.row.verb !== "REMOVED";

export const changeTypes: Pick<Resolvers, "Change"> = {
  Change: {
    cursor: ({ row }) => cursorOf(keyOfEntry(row)),
    at: ({ row }) => row.at,
    by: async ({ row, householdId }, _, { reads }) =>
      row.personId === null
        ? null
        : ((await reads.household(householdId))?.carers.find(({ person }) => person.id === row.personId)?.person ??
          null),
    kind: ({ row }) => row.kind as ChangeKind,
    verb: ({ row }) => row.verb,
    subjectId: ({ row }) => globalId(subjectType[row.kind as ChangeKind], row.subjectId),
    async child({ row, householdId }, _, { reads }) {
      if (row.childId === null) return null;
      const household = await reads.household(householdId);
      const child = household?.children.find(({ id }) => id === row.childId);
      return household && child ? childNode(child, household) : null;
    },
    date: ({ row }) => row.date,
    fields: ({ row }) => loggedFields(row),
    async task(node, _, { reads }) {
      const week = about(node, "TASK") ? await reads.weekAround("Task", node.row.subjectId) : null;
      const row = week?.plan.tasks.find(({ id }) => id === node.row.subjectId);
      return week && row ? { row, among: week.plan.tasks, householdId: week.householdId } : null;
    },
    async box(node, _, { reads }) {
      const week = about(node, "BOX") ? await reads.weekAround("Box", node.row.subjectId) : null;
      const row = week?.plan.boxes.find(({ id }) => id === node.row.subjectId);
      return week && row ? { row, householdId: week.householdId } : null;
    },
    week: (node, _, { reads }) => (about(node, "PLAN") ? reads.weekById(node.row.subjectId) : null),
    async shoppingLine(node, _, { reads }) {
      const week = about(node, "SHOPPING") ? await reads.weekAround("ShoppingLine", node.row.subjectId) : null;
      const row = week?.plan.shopping.find(({ id }) => id === node.row.subjectId);
      return week && row ? { row, householdId: week.householdId } : null;
    },
  },
};
