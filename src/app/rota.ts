/** Who is on for which session, when carers can help, how the work is spread, and a rota that evens it out. */
import { createHash } from "node:crypto";
import { availabilityEntries, dutyEntries } from "../../shared/inputs.js";
import type { WeekdayCode, WindowKind } from "../../shared/codes.js";
import type { Tx } from "../database/database.js";
import { readHousehold, type HouseholdRow } from "../database/household.js";
import { readMinutes, readRotaFacts, saveAvailability, saveDuties, type RotaFacts } from "../database/rota.js";
import { addDays, daysBetween, isCalendarDate, weekdayOf } from "../domain/calendar/dates.js";
import { compare } from "../domain/compare.js";
import { fail, ok, type Result } from "../domain/result.js";
import { fourWeeksBefore, type MinutesOf } from "../domain/rota/fairness.js";
import { proposeRota, type CarerToAsk } from "../domain/rota/propose.js";
import type { App } from "./app.js";
import { weekStartOf } from "./assemble-brief.js";
import { changeHousehold, roleIn, type HouseholdChangeFailure } from "./change-household.js";
import { checkInput, invalid } from "./check-input.js";
import type { FailureOf } from "./failures.js";
import { dateOfSession, kindOfSession, sessionKey } from "../domain/kitchen/session-key.js";
import type { KitchenChange } from "./change-kitchen.js";
import { clockIn } from "./local-day.js";
import { leastRole, may } from "./may.js";

/** Days that may be asked for at once. */
const MOST_ROTA_DAYS = 62;

export interface RotaSession {
  /** "morning-2027-01-11". */
  readonly key: string;
  readonly kind: WindowKind;
  readonly date: string;
  readonly startsAt: string;
  /** Pairs of hands the kitchen gives. */
  readonly carers: number;
  /** Of its tasks where its week is planned, else what the kitchen gives. */
  readonly handsOnMinutes: number;
  readonly isPlanned: boolean;
  /** What is left to do, by pair of hands; only those that have something. */
  readonly hands: readonly number[];
  readonly onDuty: readonly string[];
}

const kinds: readonly WindowKind[] = ["WEEKEND", "MORNING", "EVENING"];

/** First day of the week that a session cooks for: a weekend lies up to three days before it. */
export function weekOfSession(session: string, weekStart: WeekdayCode): string {
  const ahead = { WEEKEND: 3, EVENING: 1, MORNING: 0 }[kindOfSession(session)];
  return weekStartOf(addDays(dateOfSession(session), ahead), weekStart);
}

/** The time the kitchen gives to a session; null where it gives none. */
function timeFor(household: HouseholdRow, kind: WindowKind, date: string) {
  const special = household.prepTimeExceptions.find((time) => time.kind === kind && time.date === date);
  const time = special ?? household.prepTimes.find((row) => row.kind === kind && row.weekday === weekdayOf(date));
  return time === undefined || time.handsOnMinutes === 0 ? null : time;
}

/** Keys of the sessions of these days that the kitchen gives time to. */
const sessionsGiven = (household: HouseholdRow, dates: readonly string[]): string[] =>
  dates.flatMap((date) =>
    kinds.filter((kind) => timeFor(household, kind, date) !== null).map((kind) => sessionKey(kind, date)),
  );

/** Sessions of these days in time order: those the kitchen gives time to, and those in which a plan has something to do. */
export function sessionsBetween(household: HouseholdRow, facts: RotaFacts, from: string, to: string): RotaSession[] {
  const dates = Array.from({ length: daysBetween(from, to) + 1 }, (_, ahead) => addDays(from, ahead));
  const keys = new Set([
    ...sessionsGiven(household, dates),
    ...facts.tasks.map(({ session }) => session),
    ...facts.duties.map(({ session }) => session),
  ]);
  return [...keys]
    .map((key): RotaSession => {
      const [kind, date] = [kindOfSession(key), dateOfSession(key)];
      const time = timeFor(household, kind, date);
      const tasks = facts.tasks.filter((task) => task.session === key);
      const isPlanned = facts.plannedWeeks.includes(weekOfSession(key, household.weekStart));
      const given = time?.handsOnMinutes ?? 0;
      const carers = time?.carers ?? Math.max(1, ...tasks.map(({ carer }) => carer + 1));
      const byHand = Array.from({ length: Math.max(carers, ...tasks.map(({ carer }) => carer + 1)) }, (_, hand) =>
        tenth(sum(tasks.filter((task) => task.carer === hand && task.state !== "DONE"))),
      );
      return {
        key,
        kind,
        date,
        startsAt: tasks.map(({ startsAt }) => startsAt).sort(compare)[0] ?? time?.startsAt ?? "00:00",
        carers,
        handsOnMinutes: isPlanned ? tenth(sum(tasks)) : given,
        isPlanned,
        hands: (isPlanned ? byHand : Array.from({ length: carers }, () => tenth(given / carers))).filter(
          (minutes) => minutes > 0,
        ),
        onDuty: facts.duties.filter(({ session }) => session === key).map(({ personId }) => personId),
      };
    })
    .sort((a, b) => compare(a.date, b.date) || compare(a.startsAt, b.startsAt) || compare(a.key, b.key));
}

const sum = (tasks: RotaFacts["tasks"]): number => tasks.reduce((minutes, task) => minutes + task.handsOnMinutes, 0);
const tenth = (minutes: number): number => Math.round(minutes * 10) / 10;

export interface ProposedRota {
  readonly sessions: readonly {
    readonly session: RotaSession;
    readonly onDuty: readonly string[];
    /** Pairs of hands that nobody can take. */
    readonly openHands: number;
  }[];
  /** Of each carer who helps: done in the four weeks that end with the last day, and to come. */
  readonly minutes: readonly { readonly personId: string; readonly minutes: number }[];
  readonly isFairest: boolean;
  /** Names just this proposal. */
  readonly token: string;
}

/**
 * Sessions that have not begun and that nobody is on for. Where somebody is, that stays, and the work of the session counts for those
 * who are on, in equal parts.
 * @param minutes of the four weeks that end with the last day
 */
export function proposalFor(
  household: HouseholdRow,
  facts: RotaFacts,
  minutes: readonly MinutesOf[],
  from: string,
  to: string,
  now: { readonly date: string; readonly time: string },
): ProposedRota {
  const ahead = sessionsBetween(household, facts, from, to).filter(
    ({ date, startsAt, hands }) => hands.length > 0 && (date > now.date || (date === now.date && startsAt > now.time)),
  );
  const free = ahead.filter(({ onDuty }) => onDuty.length === 0);
  const already = (personId: string): number =>
    minutes.filter((row) => row.personId === personId).reduce((all, { done }) => all + done, 0) +
    ahead
      .filter(({ onDuty }) => onDuty.includes(personId))
      .reduce((all, { hands, onDuty }) => all + hands.reduce((a, b) => a + b, 0) / onDuty.length, 0);
  const carers = household.carers
    .filter(({ role }) => may(role, "workOnTasks"))
    .map(({ person }): CarerToAsk => ({
      id: person.id,
      minutes: tenth(already(person.id)),
      mostMinutes: (session) =>
        facts.availability.find(
          (row) =>
            row.personId === person.id &&
            row.kind === kindOfSession(session) &&
            row.weekday === weekdayOf(dateOfSession(session)),
        )?.minutes ?? Number.POSITIVE_INFINITY,
    }))
    .sort((a, b) => compare(a.id, b.id));
  const rota = proposeRota(
    free.map(({ key, hands }) => ({ session: key, hands })),
    carers,
  );
  const sessions = free.map((session, at) => {
    const given = rota.sessions[at]?.carers ?? [];
    const onDuty = given.filter((id) => id !== null);
    return { session, onDuty, openHands: given.length - onDuty.length };
  });
  const content = sessions.map(({ session, onDuty }) => [session.key, [...onDuty].sort(compare)]);
  return {
    sessions,
    minutes: [...rota.minutes].map(([personId, all]) => ({ personId, minutes: all })),
    isFairest: rota.isFairest,
    token: createHash("sha256")
      .update(JSON.stringify([household.id, from, to, content]))
      .digest("base64url"),
  };
}

/** The same for a reader, read in a transaction of its own; null: no such household of theirs. */
async function readProposal(
  app: App,
  personId: string,
  householdId: string,
  from: string,
  to: string,
): Promise<ProposedRota | null> {
  const session = app.db.openRead(personId);
  try {
    const household = await session.read((tx) => readHousehold(tx, householdId));
    if (!household) return null;
    const facts = await session.read((tx) => readRotaFacts(tx, householdId, from, to));
    const minutes = await session.read((tx) => readMinutes(tx, householdId, fourWeeksBefore(to), to));
    return proposalFor(household, facts, minutes, from, to, clockIn(household.timeZone, app.now()));
  } finally {
    await session.close();
  }
}

type Changed<K extends "HelperNotFound" | "ProposalMoved" = never> = Promise<
  Result<{ householdId: string }, HouseholdChangeFailure | FailureOf<K>>
>;
const attempt = (personId: string, action: string, input: KitchenChange) => ({
  personId,
  action,
  key: input.idempotencyKey,
  input,
  householdId: input.householdId,
  seenRevision: input.seenRevision,
});

/** The first of these persons who is no carer that helps; undefined when all are. */
async function noHelper(tx: Tx, householdId: string, personIds: readonly string[]): Promise<string | undefined> {
  const rows = await tx.membership.findMany({
    where: { householdId, personId: { in: [...personIds] } },
    select: { personId: true, role: true },
  });
  return personIds.find((id) => !rows.some(({ personId, role }) => personId === id && may(role, "workOnTasks")));
}

/** @param input.duties sessions not named stay as they are; a person of null is none of the schema's */
export async function setDuties(
  app: App,
  personId: string,
  input: KitchenChange & {
    readonly duties: readonly { readonly session: string; readonly personIds: readonly (string | null)[] }[];
  },
): Changed<"HelperNotFound"> {
  const checked = checkInput(dutyEntries, input.duties, "duties");
  if (!checked.ok) return checked;
  const duties = checked.value;
  const offCalendar = duties.findIndex(({ session }) => !isCalendarDate(dateOfSession(session)));
  if (offCalendar >= 0)
    return fail(
      invalid(
        `duties.${offCalendar}.session`,
        `${duties[offCalendar]!.session} names no day of the calendar`,
        "Send a session of a real date, as in morning-2027-01-11.",
      ),
    );
  return changeHousehold<object, FailureOf<"InvalidInput" | "HelperNotFound">>(
    app,
    { ...attempt(personId, "setDuties", input), verb: "setDuties" },
    async (tx, householdId) => {
      const read = await readSessionsOf(
        app,
        personId,
        householdId,
        duties.map(({ session }) => dateOfSession(session)),
      );
      const unknown = duties.findIndex(({ session, personIds }) => personIds.length > 0 && !read.has(session));
      if (unknown >= 0)
        return fail(
          invalid(
            `duties.${unknown}.session`,
            `the kitchen gives no time to ${duties[unknown]!.session}`,
            "Send a session of the rota, or give it time first (setPrepTimes).",
          ),
        );
      const people = duties.flatMap(({ personIds }) => personIds);
      const named = people.filter((id) => id !== null);
      if (named.length < people.length || (await noHelper(tx, householdId, named)) !== undefined)
        return fail({ kind: "HelperNotFound" });
      await saveDuties(
        tx,
        householdId,
        duties.map(({ session, personIds }) => ({ session, personIds: personIds.filter((id) => id !== null) })),
      );
      return ok({});
    },
  );
}

/** Keys of the sessions there are on these days. */
async function readSessionsOf(
  app: App,
  personId: string,
  householdId: string,
  dates: readonly string[],
): Promise<ReadonlySet<string>> {
  const session = app.db.openRead(personId);
  try {
    const household = await session.read((tx) => readHousehold(tx, householdId));
    if (!household) return new Set();
    const [from, to] = [[...dates].sort(compare)[0]!, [...dates].sort(compare).at(-1)!];
    const facts = await session.read((tx) => readRotaFacts(tx, householdId, from, to));
    const planned = facts.tasks.map(({ session }) => session);
    return new Set([...planned, ...sessionsGiven(household, dates)]);
  } finally {
    await session.close();
  }
}

export async function acceptRota(
  app: App,
  personId: string,
  input: KitchenChange & { readonly from: string; readonly to: string; readonly proposal: string },
): Changed<"ProposalMoved"> {
  const days = checkDays(input.from, input.to);
  if (!days.ok) return days;
  return changeHousehold<object, FailureOf<"ProposalMoved">>(
    app,
    { ...attempt(personId, "acceptRota", input), verb: "setDuties" },
    async (tx, householdId) => {
      const proposal = await readProposal(app, personId, householdId, input.from, input.to);
      if (proposal?.token !== input.proposal) return fail({ kind: "ProposalMoved" });
      await saveDuties(
        tx,
        householdId,
        proposal.sessions.map(({ session, onDuty }) => ({ session: session.key, personIds: onDuty })),
      );
      return ok({});
    },
  );
}

/** Days of a rota that may be asked for. */
export function checkDays(from: string, to: string): Result<null, FailureOf<"InvalidInput">> {
  const wrong = [from, to].findIndex((date) => !isCalendarDate(date));
  if (wrong >= 0)
    return fail(
      invalid(
        ["from", "to"][wrong]!,
        `${[from, to][wrong]} is no day of the calendar`,
        "Send a real date as YYYY-MM-DD.",
      ),
    );
  const days = daysBetween(from, to);
  if (days < 0 || days >= MOST_ROTA_DAYS)
    return fail(
      invalid("to", `${to} is ${days < 0 ? "before" : "too long after"} ${from}`, `Send 1 to ${MOST_ROTA_DAYS} days.`),
    );
  return ok(null);
}

/** @param input.personId absent: the sender; null: no person of the schema's */
export async function setAvailability(
  app: App,
  personId: string,
  input: KitchenChange & {
    readonly personId: string | null | undefined;
    readonly entries: readonly { readonly weekday: WeekdayCode; readonly kind: WindowKind; readonly minutes: number }[];
  },
): Changed<"HelperNotFound"> {
  const checked = checkInput(availabilityEntries, input.entries, "entries");
  if (!checked.ok) return checked;
  const whose = input.personId === undefined ? personId : input.personId;
  return changeHousehold<object, FailureOf<"NotPermitted" | "HelperNotFound">>(
    app,
    { ...attempt(personId, "setAvailability", input), verb: "setAvailability" },
    async (tx, householdId) => {
      const mine = await roleIn(tx, personId, householdId);
      if (whose !== personId && mine !== null && !may(mine, "setAvailabilityOfOthers"))
        return fail({ kind: "NotPermitted", neededRole: leastRole.setAvailabilityOfOthers });
      if (whose === null || (await noHelper(tx, householdId, [whose])) !== undefined)
        return fail({ kind: "HelperNotFound" });
      await saveAvailability(tx, householdId, whose, checked.value);
      return ok({});
    },
  );
}
