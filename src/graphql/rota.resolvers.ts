/** Who is on for which session, how the work is spread, and what carers are reminded of. */
import { GraphQLError } from "graphql";
import type { HouseholdChangeFailure } from "../app/change-household.js";
import {
  acceptRota,
  checkDays,
  proposalFor,
  sessionsBetween,
  setAvailability,
  setDuties,
  weekOfSession,
} from "../app/rota.js";
import { clockIn } from "../app/local-day.js";
import { may } from "../app/may.js";
import { sayReminder } from "../app/say-reminder.js";
import type { HouseholdRow, PersonRow } from "../database/household.js";
import {
  readAvailability,
  readMinutes,
  readReminder,
  readReminders,
  readRotaFacts,
  type ReminderRow,
} from "../database/rota.js";
import { fourWeeksBefore, shareOut } from "../domain/rota/fairness.js";
import type { Result } from "../domain/result.js";
import type { FailureOf } from "../app/failures.js";
import { requirePerson, type GraphqlContext } from "./context.js";
import { explain } from "./explain.js";
import { freshHousehold } from "./household.resolvers.js";
import { globalId, localId } from "./global-id.js";
import type { Resolvers } from "./generated.js";
import { filtered } from "./notices.js";
import { noticesAbout } from "./week.resolvers.js";

const MOST_REMINDERS = 200;

const peopleOf = ({ carers }: HouseholdRow, ids: readonly string[]): PersonRow[] =>
  carers.map(({ person }) => person).filter(({ id }) => ids.includes(id));
const personOf = (household: HouseholdRow, id: string): PersonRow =>
  peopleOf(household, [id])[0] ?? { id, displayName: "a carer" };

function askedDays(from: string, to: string): void {
  const days = checkDays(from, to);
  if (days.ok) return;
  const [issue] = days.error.issues;
  throw new GraphQLError(`${issue!.field}: ${issue!.problem}. ${issue!.fix}`, {
    extensions: { code: "BAD_USER_INPUT" },
  });
}

export const rotaOfHousehold: Pick<
  NonNullable<Resolvers["Household"]>,
  "rota" | "fairness" | "rotaProposal" | "availability" | "reminders"
> = {
  async rota(household, { from, to }, { reads }) {
    askedDays(from, to);
    const facts = await reads.session().read((tx) => readRotaFacts(tx, household.id, from, to));
    return sessionsBetween(household, facts, from, to).map((row) => ({ row, household }));
  },
  async fairness(household, { asOf }, { reads }) {
    const from = fourWeeksBefore(asOf);
    const minutes = await reads.session().read((tx) => readMinutes(tx, household.id, from, asOf));
    const helpers = household.carers.filter(({ role }) => may(role, "workOnTasks")).map(({ person }) => person.id);
    const { carers, othersMinutes } = shareOut(helpers, minutes);
    return {
      from,
      asOf,
      othersMinutes,
      carers: carers.map(({ personId, ...share }) => ({ person: personOf(household, personId), ...share })),
    };
  },
  async rotaProposal(household, { from, to }, { app, reads, searches }) {
    askedDays(from, to);
    searches.begin();
    const session = reads.session();
    const facts = await session.read((tx) => readRotaFacts(tx, household.id, from, to));
    const minutes = await session.read((tx) => readMinutes(tx, household.id, fourWeeksBefore(to), to));
    const now = clockIn(household.timeZone, app.now());
    return { row: proposalFor(household, facts, minutes, from, to, now), household };
  },
  async availability(household, _, { reads }) {
    const rows = await reads.session().read((tx) => readAvailability(tx, household.id));
    return rows.map(({ personId, ...entry }) => ({ person: personOf(household, personId), ...entry }));
  },
  async reminders(household, { after }, { reads }) {
    return reads.session().read((tx) => readReminders(tx, household.id, after, MOST_REMINDERS));
  },
};

async function rotaPayload<K extends "HelperNotFound" | "ProposalMoved">(
  context: GraphqlContext,
  changed: Result<{ householdId: string }, HouseholdChangeFailure | FailureOf<K>>,
) {
  if (!changed.ok) return explain(changed.error);
  return { __typename: "RotaPayload" as const, household: await freshHousehold(context, changed.value.householdId) };
}

export const rotaMutations: Pick<NonNullable<Resolvers["Mutation"]>, "setDuties" | "acceptRota" | "setAvailability"> = {
  async setDuties(_, { input }, context) {
    const duties = input.duties.map(({ session, personIds }) => ({
      session,
      personIds: personIds.map((id) => localId("Person", id)),
    }));
    const householdId = localId("Household", input.householdId);
    return rotaPayload(
      context,
      await setDuties(context.app, requirePerson(context), { ...input, householdId, duties }),
    );
  },
  async acceptRota(_, { input }, context) {
    const householdId = localId("Household", input.householdId);
    return rotaPayload(context, await acceptRota(context.app, requirePerson(context), { ...input, householdId }));
  },
  async setAvailability(_, { input }, context) {
    const householdId = localId("Household", input.householdId);
    const personId = input.personId == null ? undefined : localId("Person", input.personId);
    const said = await setAvailability(context.app, requirePerson(context), { ...input, householdId, personId });
    return rotaPayload(context, said);
  },
};

export const rotaSubscriptions: Pick<NonNullable<Resolvers["Subscription"]>, "reminders"> = {
  reminders: {
    async subscribe(_, { householdId }, context) {
      const personId = requirePerson(context);
      const notices = await noticesAbout(context, "reminders", householdId);
      // Whoever has left the household since hears no more of it.
      return filtered(
        notices,
        async (notice) =>
          (notice.personId === null || notice.personId === personId) &&
          (await context.app.db.readAs(personId, (tx) => readReminder(tx, notice.reminderId))) !== null,
      ) as never;
    },
    resolve: (({ reminderId }: { reminderId: string }, _: unknown, { reads }: GraphqlContext) => {
      reads.forget();
      return reads.session().read((tx) => readReminder(tx, reminderId));
    }) as never,
  },
};

/** The task a reminder is about, as the plan has it now. */
async function taskOf({ householdId, session, taskKey }: ReminderRow, { reads }: GraphqlContext) {
  const household = taskKey === null ? null : await reads.household(householdId);
  const week = household && (await reads.week(householdId, weekOfSession(session, household.weekStart)));
  const row = week?.plan.tasks.find(({ key, kept }) => key === taskKey && !kept);
  return week && row ? { row, among: week.plan.tasks, householdId } : null;
}

export const rotaTypes: Pick<
  Resolvers,
  "RotaSession" | "RotaProposal" | "ProposedSession" | "ProposedMinutes" | "Reminder"
> = {
  RotaSession: {
    key: ({ row }) => row.key,
    kind: ({ row }) => row.kind,
    date: ({ row }) => row.date,
    startsAt: ({ row }) => row.startsAt,
    carers: ({ row }) => row.carers,
    handsOnMinutes: ({ row }) => row.handsOnMinutes,
    isPlanned: ({ row }) => row.isPlanned,
    onDuty: ({ row, household }) => peopleOf(household, row.onDuty),
  },
  RotaProposal: {
    sessions: ({ row, household }) => row.sessions.map((session) => ({ row: session, household })),
    minutes: ({ row, household }) => row.minutes.map((minutes) => ({ row: minutes, household })),
    isFairest: ({ row }) => row.isFairest,
    token: ({ row }) => row.token,
  },
  ProposedSession: {
    session: ({ row, household }) => ({ row: row.session, household }),
    onDuty: ({ row, household }) => peopleOf(household, row.onDuty),
    openHands: ({ row }) => row.openHands,
  },
  ProposedMinutes: {
    person: ({ row, household }) => personOf(household, row.personId),
    minutes: ({ row }) => row.minutes,
  },
  Reminder: {
    id: ({ id }) => globalId("Reminder", id),
    task: (row, _, context) => taskOf(row, context),
    forEverybody: ({ personId }) => personId === null,
    async text(row, _, context) {
      const household = await context.reads.household(row.householdId);
      if (!household) throw new Error("a reminder hangs on a household that cannot be read");
      return sayReminder(row, (await taskOf(row, context))?.row.text ?? null, household.timeZone);
    },
  },
};
