/**
 * Where a child wakes, as its homes agree: a pattern from a day on, or single days. One home's coordinator proposes, the other's
 * accepts or declines, and only then it holds; a child of one home needs nobody's answer. With the answer, in the same transaction,
 * boxes of days that move stop being current, so that the home that has the day now can plan it. What is over or packed does not move.
 */
import { randomUUID } from "node:crypto";
import { residencePatternInput, residenceDates } from "../../shared/inputs.js";
import type { Tx } from "../database/database.js";
import { announceVerdicts, lockVerdicts } from "../database/recheck.js";
import { readOpenProposals, readProposal, readResidence, type ProposalRow } from "../database/residence.js";
import type { BoxStateCode } from "../database/week.js";
import { addDays, isCalendarDate } from "../domain/calendar/dates.js";
import { cycleOf, wakesIn, type ResidenceKind } from "../domain/calendar/residence.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { changeHousehold, livesHere, type HouseholdChangeFailure } from "./change-household.js";
import { checkInput, invalid } from "./check-input.js";
import type { FailureOf, InputIssue } from "./failures.js";
import { toDate, todayIn } from "./local-day.js";
import type { Verb } from "./may.js";
import { queueRecheck, recheckNow, touching } from "./recheck.js";

/** Homes as either sees them. */
export type HomeSide = "THIS_HOME" | "OTHER_HOME";
export type ProposalKey = Pick<ProposalRow, "of" | "id">;

/** How far ahead something is agreed. */
const MOST_AHEAD = 366;

interface ResidenceChange {
  readonly idempotencyKey: string;
  readonly householdId: string | null;
  readonly seenRevision: number;
}
export interface SetResidencePattern extends ResidenceChange {
  readonly childId: string | null;
  readonly kind: ResidenceKind;
  readonly starts: string;
  /** Where the child wakes on the first day; of every kind but the own cycle. */
  readonly firstHome: HomeSide;
  /** Of the own cycle, a home a day. */
  readonly cycle?: readonly HomeSide[] | null;
}
export interface ProposeResidenceChange extends ResidenceChange {
  readonly childId: string | null;
  readonly dates: readonly string[];
  readonly wakesHere: boolean;
}
export interface AnswerResidenceChange extends ResidenceChange {
  readonly proposal: ProposalKey | null;
  readonly accept: boolean;
}
export interface WithdrawResidenceChange extends ResidenceChange {
  readonly proposal: ProposalKey | null;
}
export interface GiveUpHome extends ResidenceChange {
  readonly childId: string | null;
}

/** Where an answer about a child's residence is read again. */
export interface ResidenceRef {
  readonly householdId: string;
  readonly childId: string;
  /** Null: it holds without anybody's answer. */
  readonly proposal: ProposalKey | null;
  /** Days whose planned box fell away. */
  readonly movedDays: readonly string[];
}
type Changed<T, E> = Promise<Result<T & { householdId: string }, HouseholdChangeFailure | E>>;
type ProposeFailure = FailureOf<"ChildNotFound" | "ProposalOpen" | "DayClosed">;
type AnswerFailure = FailureOf<"NothingThere" | "ForTheOtherHome" | "ProposalSettled" | "DayClosed">;

/** The child's homes while nobody else changes what is agreed about the child. */
interface Homes {
  readonly here: string;
  /** Null: there is no other. */
  readonly other: string | null;
  readonly all: readonly string[];
  /** The local day here. */
  readonly today: string;
}

/** Waits until nobody else changes where the child wakes, to the end of the transaction. */
async function lockResidence(tx: Tx, childId: string): Promise<void> {
  await tx.$executeRaw`select pg_advisory_xact_lock(hashtextextended(${`residence/${childId}`}, 0))`;
}

async function homesOf(app: App, tx: Tx, childId: string, here: string): Promise<Homes> {
  await lockResidence(tx, childId);
  const rows = await tx.residence.findMany({ where: { childId }, select: { householdId: true } });
  const home = await tx.household.findUniqueOrThrow({ where: { id: here }, select: { timeZone: true } });
  const all = rows.map(({ householdId }) => householdId).sort();
  return { here, all, other: all.find((id) => id !== here) ?? null, today: todayIn(home.timeZone, app.now()) };
}

/** Who of more than two would have to agree is nothing this program can know. */
const moreThanTwo = (homes: Homes): FailureOf<"InvalidInput"> | null =>
  homes.all.length > 2
    ? invalid(
        "childId",
        `the child has ${homes.all.length} homes`,
        "Two homes agree on a pattern; let the third be given up first.",
      )
    : null;

/** Boxes of days that are another home's by now fall away; where one is closed the change is refused. */
async function moveBoxes(
  app: App,
  tx: Tx,
  childId: string,
  homes: Homes,
): Promise<Result<readonly string[], FailureOf<"DayClosed">>> {
  for (const household of homes.all) await lockVerdicts(tx, household);
  const rows = await tx.$queryRaw<{ day: string; standing: BoxStateCode; closed: boolean }[]>`
    select day::text as day, standing, closed from app_move_boxes(${childId}::uuid, ${homes.today}::date)`;
  const closed = rows.find((row) => row.closed);
  if (closed) return fail({ kind: "DayClosed", date: closed.day, boxState: closed.standing });
  await announceVerdicts(
    tx,
    rows.map(({ day }) => ({ childId, date: day })),
  );
  await queueRecheck(app, tx, touching({ childIds: [childId] }));
  return ok(rows.map(({ day }) => day));
}

/** An open proposal about the same, of whichever home. */
async function openProposal(
  app: App,
  personId: string,
  childId: string,
  homes: Homes,
  isSame: (proposal: ProposalRow) => boolean,
): Promise<FailureOf<"ProposalOpen"> | null> {
  const open = (await app.db.readAs(personId, (read) => readOpenProposals(read, childId))).find(isSame);
  if (!open) return null;
  const { of, id, days } = open;
  return {
    kind: "ProposalOpen",
    proposal: { of, id },
    madeHere: open.proposedBy === homes.here,
    dates: days.map(({ date }) => date),
  };
}

/** Complaints about days that cannot be changed any more, or not yet. */
function checkDays(days: readonly (readonly [field: string, date: string])[], today: string): InputIssue[] {
  return days.flatMap(([field, date]): InputIssue[] => {
    if (!isCalendarDate(date))
      return [{ field, problem: `${date} is no day of the calendar`, fix: "Send a real date as YYYY-MM-DD." }];
    if (date < today) return [{ field, problem: `${date} is over`, fix: `Send ${today} or later.` }];
    const last = addDays(today, MOST_AHEAD);
    return date > last ? [{ field, problem: `${date} is too far ahead`, fix: `Send ${last} or earlier.` }] : [];
  });
}

const attemptOf = <I extends ResidenceChange>(personId: string, action: string, input: I, verb: Verb) => ({
  personId,
  action,
  key: input.idempotencyKey,
  input,
  householdId: input.householdId,
  seenRevision: input.seenRevision,
  verb,
});

/** Holds at once for a child of one home; else it is proposed to the other. */
export async function setResidencePattern(
  app: App,
  personId: string,
  input: SetResidencePattern,
): Changed<ResidenceRef, ProposeFailure> {
  const checked = checkInput(residencePatternInput, input);
  if (!checked.ok) return checked;
  const { kind, starts, firstHome } = input;
  const attempt = attemptOf(personId, "setResidencePattern", input, "arrangeResidence");
  const done = await changeHousehold<ResidenceRef, HouseholdChangeFailure | ProposeFailure>(
    app,
    attempt,
    async (tx, householdId) => {
      const { childId } = input;
      if (childId === null || !(await livesHere(tx, childId, householdId))) return fail({ kind: "ChildNotFound" });
      const homes = await homesOf(app, tx, childId, householdId);
      const tooMany = moreThanTwo(homes);
      if (tooMany) return fail(tooMany);
      const days = checkDays([["starts", starts]], homes.today);
      if (days.length > 0) return fail({ kind: "InvalidInput", issues: days });
      const turned: HomeSide = firstHome === "THIS_HOME" ? "OTHER_HOME" : "THIS_HOME";
      const sides = kind === "OWN_CYCLE" ? (input.cycle ?? []) : cycleOf(kind, firstHome, turned);
      if (homes.other === null && sides.includes("OTHER_HOME"))
        return fail(invalid("kind", "the child has no other home", "Send SAME_HOME, beginning in this home."));
      const cycle = sides.map((side) => (side === "THIS_HOME" ? householdId : homes.other!));
      const open = await openProposal(app, personId, childId, homes, ({ of }) => of === "PATTERN");
      if (open) return fail(open);
      const id = randomUUID();
      const alone = homes.other === null;
      await tx.$executeRaw`insert into residence_pattern (id, child_id, kind, starts, cycle, state, proposed_by_household_id, proposed_at, answered_at)
        values (${id}::uuid, ${childId}::uuid, ${kind}, ${starts}::date, ${cycle}::uuid[], ${alone ? "ACCEPTED" : "PROPOSED"}, ${householdId}::uuid, clock_timestamp(),
          case when ${alone} then clock_timestamp() end)`;
      if (!alone) return ok({ householdId, childId, proposal: { of: "PATTERN" as const, id }, movedDays: [] });
      const moved = await moveBoxes(app, tx, childId, homes);
      return moved.ok ? ok({ householdId, childId, proposal: null, movedDays: moved.value }) : moved;
    },
  );
  if (done.ok && done.value.proposal === null) await recheckNow(app, touching({ childIds: [done.value.childId] }));
  return done;
}

/** Single days on which the child is to wake elsewhere than agreed. */
export async function proposeResidenceChange(
  app: App,
  personId: string,
  input: ProposeResidenceChange,
): Changed<ResidenceRef, ProposeFailure> {
  const checked = checkInput(residenceDates, input.dates, "dates");
  if (!checked.ok) return checked;
  const dates = [...checked.value].sort();
  return changeHousehold<ResidenceRef, HouseholdChangeFailure | ProposeFailure>(
    app,
    attemptOf(personId, "proposeResidenceChange", input, "arrangeResidence"),
    async (tx, householdId) => {
      const { childId, wakesHere } = input;
      if (childId === null || !(await livesHere(tx, childId, householdId))) return fail({ kind: "ChildNotFound" });
      const homes = await homesOf(app, tx, childId, householdId);
      const tooMany = moreThanTwo(homes);
      if (tooMany) return fail(tooMany);
      if (homes.other === null)
        return fail(
          invalid("childId", "the child has no other home", "Nothing is to be agreed: the child wakes here."),
        );
      const issues = checkDays(
        input.dates.map((date, at) => [`dates.${at}`, date] as const),
        homes.today,
      );
      if (issues.length > 0) return fail({ kind: "InvalidInput", issues });
      const open = await openProposal(app, personId, childId, homes, ({ days }) =>
        days.some(({ date }) => dates.includes(date)),
      );
      if (open) return fail(open);
      const wanted = wakesHere ? householdId : homes.other;
      const residence = await app.db.readAs(personId, (read) => readResidence(read, childId, dates[0]!, dates.at(-1)!));
      const same = input.dates.flatMap((date, at): InputIssue[] =>
        residence && wakesIn(residence, date)?.householdId === wanted
          ? [
              {
                field: `dates.${at}`,
                problem: `the child wakes ${wakesHere ? "here" : "in the other home"} on ${date} already`,
                fix: "Leave the day out.",
              },
            ]
          : [],
      );
      if (same.length > 0) return fail({ kind: "InvalidInput", issues: same });
      const closed = await tx.lunchBox.findFirst({
        where: { childId, current: true, date: { in: dates.map(toDate) }, state: { in: ["PACKED", "EATEN"] } },
        orderBy: { date: "asc" },
        select: { date: true, state: true },
      });
      if (closed)
        return fail({ kind: "DayClosed", date: closed.date.toISOString().slice(0, 10), boxState: closed.state });
      const id = randomUUID();
      await tx.$executeRaw`insert into residence_exception (change_id, child_id, date, household_id, state, proposed_by_household_id, proposed_at)
        select ${id}::uuid, ${childId}::uuid, d, ${wanted}::uuid, 'PROPOSED', ${householdId}::uuid, clock_timestamp() from unnest(${dates}::date[]) d`;
      return ok({ householdId, childId, proposal: { of: "DAYS" as const, id }, movedDays: [] });
    },
  );
}

interface Found {
  readonly proposal: ProposalRow;
  readonly homes: Homes;
  readonly madeHere: boolean;
}

/** A proposal about a child of this home, while nobody else answers it. */
async function findProposal(
  app: App,
  tx: Tx,
  personId: string,
  householdId: string,
  key: ProposalKey | null,
): Promise<Result<Found, FailureOf<"NothingThere" | "ProposalSettled">>> {
  const nothing = fail({ kind: "NothingThere", what: "proposal" } as const);
  if (key === null) return nothing;
  const read = () => app.db.readAs(personId, (session) => readProposal(session, key.of, key.id));
  const seen = await read();
  if (!seen || !(await livesHere(tx, seen.childId, householdId))) return nothing;
  const homes = await homesOf(app, tx, seen.childId, householdId);
  // Read again now that nobody else can answer it.
  const proposal = await read();
  if (!proposal) return nothing;
  if (proposal.state !== "PROPOSED") return fail({ kind: "ProposalSettled", state: proposal.state });
  return ok({ proposal, homes, madeHere: proposal.proposedBy === householdId });
}

async function settle(tx: Tx, { of, id }: ProposalKey, state: "ACCEPTED" | "DECLINED" | "WITHDRAWN"): Promise<void> {
  if (of === "PATTERN")
    await tx.$executeRaw`update residence_pattern set state = ${state}, answered_at = clock_timestamp() where id = ${id}::uuid and state = 'PROPOSED'`;
  else
    await tx.$executeRaw`update residence_exception set state = ${state}, answered_at = clock_timestamp() where change_id = ${id}::uuid and state = 'PROPOSED'`;
}

export async function answerResidenceChange(
  app: App,
  personId: string,
  input: AnswerResidenceChange,
): Changed<ResidenceRef, AnswerFailure> {
  const attempt = attemptOf(personId, "answerResidenceChange", input, "arrangeResidence");
  const done = await changeHousehold<ResidenceRef, HouseholdChangeFailure | AnswerFailure>(
    app,
    attempt,
    async (tx, householdId) => {
      const found = await findProposal(app, tx, personId, householdId, input.proposal);
      if (!found.ok) return found;
      const { proposal, homes, madeHere } = found.value;
      const { childId, of, id } = proposal;
      if (madeHere) return fail({ kind: "ForTheOtherHome", madeHere });
      const ref = { householdId, childId, proposal: { of, id } };
      if (!input.accept) {
        await settle(tx, proposal, "DECLINED");
        return ok({ ...ref, movedDays: [] });
      }
      const first = proposal.pattern?.starts ?? proposal.days[0]!.date;
      if (first < homes.today) return fail({ kind: "DayClosed", date: first, boxState: null });
      await settle(tx, proposal, "ACCEPTED");
      const moved = await moveBoxes(app, tx, childId, homes);
      return moved.ok ? ok({ ...ref, movedDays: moved.value }) : moved;
    },
  );
  if (done.ok && input.accept) await recheckNow(app, touching({ childIds: [done.value.childId] }));
  return done;
}

export const withdrawResidenceChange = (
  app: App,
  personId: string,
  input: WithdrawResidenceChange,
): Changed<ResidenceRef, Exclude<AnswerFailure, FailureOf<"DayClosed">>> =>
  changeHousehold<ResidenceRef, HouseholdChangeFailure | Exclude<AnswerFailure, FailureOf<"DayClosed">>>(
    app,
    attemptOf(personId, "withdrawResidenceChange", input, "arrangeResidence"),
    async (tx, householdId) => {
      const found = await findProposal(app, tx, personId, householdId, input.proposal);
      if (!found.ok) return found;
      const { proposal, madeHere } = found.value;
      if (!madeHere) return fail({ kind: "ForTheOtherHome", madeHere });
      await settle(tx, proposal, "WITHDRAWN");
      const { childId, of, id } = proposal;
      return ok({ householdId, childId, proposal: { of, id }, movedDays: [] });
    },
  );

/**
 * The household stops being one of the child's homes from today on. Its boxes of the child fall away but those that are packed, what
 * was agreed in its name ends, and what it kept of the child for its own use is gone.
 */
export async function giveUpHome(
  app: App,
  personId: string,
  input: GiveUpHome,
): Changed<{ childId: string }, FailureOf<"ChildNotFound" | "OnlyHome">> {
  const scopeOf = (childId: string, householdId: string) =>
    touching({ childIds: [childId], householdIds: [householdId] });
  const attempt = attemptOf(personId, "giveUpHome", input, "giveUpHome");
  const done = await changeHousehold<
    { childId: string },
    HouseholdChangeFailure | FailureOf<"ChildNotFound" | "OnlyHome">
  >(app, attempt, async (tx, householdId) => {
    const { childId } = input;
    if (childId === null || !(await livesHere(tx, childId, householdId))) return fail({ kind: "ChildNotFound" });
    const { today, all } = await homesOf(app, tx, childId, householdId);
    for (const household of all) await lockVerdicts(tx, household);
    const [row] = await tx.$queryRaw<{ given: boolean }[]>`
        select app_give_up_home(${childId}::uuid, ${householdId}::uuid, ${today}::date) as given`;
    if (!row!.given) return fail({ kind: "OnlyHome" });
    await queueRecheck(app, tx, scopeOf(childId, householdId));
    return ok({ childId });
  });
  if (done.ok) await recheckNow(app, scopeOf(done.value.childId, done.value.householdId));
  return done;
}
