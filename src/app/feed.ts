/**
 * A carer's calendar feed, one for each of their households: its secret address, and what it shows. Whoever has the address reads
 * the feed without signing in, and people hand it to calendar services, so it names no child and nothing of a child's health:
 * packing says only that a box is packed, and a household's own dish, whose name and steps are free text, says only that it is one.
 */
import { createHash } from "node:crypto";
import { isOwnKey } from "../../shared/own-catalogue.js";
import {
  lockFeed,
  readFeedDuties,
  readFeedMarks,
  readFeedTasks,
  saveFeedMarks,
  type FeedDutyRow,
  type FeedTaskRow,
} from "../database/feed.js";
import type { FeedOwner } from "../database/feed-owner.js";
import { addDays } from "../domain/calendar/dates.js";
import { FEED_KEEPS_MS, nextFeed, type FeedEntry } from "../domain/calendar/feed-events.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { roleIn } from "./change-household.js";
import type { FailureOf } from "./failures.js";
import { writeFeed } from "./feed-calendar.js";
import { instantAt } from "./local-day.js";
import { leastRole, may } from "./may.js";
import { dateOfSession, kindOfSession } from "../domain/kitchen/session-key.js";
import { nameUuid } from "./name-uuid.js";
import { once } from "./once.js";
import { digestOf, freshSecret } from "./secret.js";

export interface FeedChange {
  readonly idempotencyKey: string;
  readonly householdId: string | null;
}
export interface FeedAddress {
  /** 256 random bits, base64url. Null when the request was answered before: the secret is kept nowhere. */
  readonly secret: string | null;
  /** An instant, ISO 8601. */
  readonly createdAt: string;
}
type FeedFailure = FailureOf<"HouseholdNotFound" | "NotPermitted" | "InvalidInput" | "KeyReused">;

export const feedPath = (secret: string): string => `/feed/${secret}.ics`;

/** A new address of the person's own feed; the one before is unknown from then on. What was shown is still remembered. */
export async function renewFeedAddress(
  app: App,
  personId: string,
  input: FeedChange,
): Promise<Result<FeedAddress, FeedFailure>> {
  let secret: string | null = null;
  const attempt = {
    personId,
    action: "renewFeedAddress",
    key: input.idempotencyKey,
    input,
    forget: () => void (secret = null),
  };
  const renewed = await once<Pick<FeedAddress, "createdAt">, FeedFailure>(app, attempt, async (tx) => {
    const { householdId } = input;
    const role = householdId === null ? null : await roleIn(tx, personId, householdId);
    if (role === null || householdId === null) return fail({ kind: "HouseholdNotFound" });
    if (!may(role, "haveFeed")) return fail({ kind: "NotPermitted", neededRole: leastRole.haveFeed });
    const createdAt = app.now();
    secret = freshSecret();
    const address = { digest: digestOf(secret)!, createdAt };
    await tx.feedAddress.upsert({
      where: { householdId_personId: { householdId, personId } },
      create: { householdId, personId, ...address },
      update: address,
      select: { createdAt: true },
    });
    return ok({ createdAt: createdAt.toISOString() });
  });
  return renewed.ok ? ok({ ...renewed.value, secret }) : renewed;
}

/** Ends the person's own feed and forgets what it has shown. */
export const closeFeed = (
  app: App,
  personId: string,
  input: FeedChange,
): Promise<Result<{ readonly wasOpen: boolean }, FeedFailure>> =>
  once<{ wasOpen: boolean }, FeedFailure>(
    app,
    { personId, action: "closeFeed", key: input.idempotencyKey, input },
    async (tx) => {
      const { householdId } = input;
      const role = householdId === null ? null : await roleIn(tx, personId, householdId);
      if (role === null || householdId === null) return fail({ kind: "HouseholdNotFound" });
      if (!may(role, "haveFeed")) return fail({ kind: "NotPermitted", neededRole: leastRole.haveFeed });
      const { count } = await tx.feedAddress.deleteMany({ where: { householdId, personId } });
      return ok({ wasOpen: count > 0 });
    },
  );

/**
 * The feed behind an address as iCalendar text; null for an address that is unknown, renewed or closed, or whose carer has left.
 * Reading it is when changes are counted: whoever reads next, on whichever server, sees the same numbers.
 */
export async function readFeed(app: App, secret: string): Promise<string | null> {
  const digest = digestOf(secret);
  const owner = digest === null ? null : await app.db.feedOwner(digest);
  if (owner === null) return null;
  return app.db.asPerson(owner.personId, async (tx) => {
    await lockFeed(tx, owner);
    const household = await tx.household.findUnique({ where: { id: owner.householdId }, select: { timeZone: true } });
    if (household === null) return null;
    const now = app.now().getTime();
    // A day more on either side of the border: the household's clock is not UTC.
    const from = new Date(now - FEED_KEEPS_MS - 86_400_000).toISOString().slice(0, 10);
    const tasks = await readFeedTasks(tx, owner, from);
    const duties = await readFeedDuties(tx, owner, from);
    const entries = [
      ...tasks.map((task) => entryOfTask(task, owner, household.timeZone)),
      ...duties.map((duty) => entryOfDuty(duty, owner, household.timeZone)),
    ];
    const step = nextFeed(entries, await readFeedMarks(tx, owner), now, fingerprintOf);
    await saveFeedMarks(tx, owner, step.changed, step.forgotten);
    return writeFeed(step.events);
  });
}

const fingerprintOf = (entry: FeedEntry) => createHash("sha256").update(JSON.stringify(entry)).digest("hex");

function entryOfTask(task: FeedTaskRow, { householdId }: FeedOwner, timeZone: string): FeedEntry {
  const date = dateOfSession(task.session);
  const startsAt = instantAt(timeZone, date, task.startsAt);
  const end = instantAt(timeZone, date, task.endsAt);
  const endsAt = end < startsAt ? instantAt(timeZone, addDays(date, 1), task.endsAt) : end;
  const { summary, description } = textOf(task);
  return {
    uid: nameUuid(householdId, `${task.weekStart}/${task.key}`),
    startsAt,
    // RFC 5545, 3.8.2.2: an end is later than its start; a task may take less than a minute.
    endsAt: Math.max(endsAt, startsAt + 60_000),
    summary,
    description,
    reminds: task.state === "TAKEN",
  };
}

const WHEN = { WEEKEND: "at the weekend", EVENING: "this evening", MORNING: "this morning" } as const;

function entryOfDuty(duty: FeedDutyRow, { householdId }: FeedOwner, timeZone: string): FeedEntry {
  const date = dateOfSession(duty.session);
  const startsAt = instantAt(timeZone, date, duty.startsAt);
  const planned = duty.endsAt === null ? startsAt + duty.minutes * 60_000 : instantAt(timeZone, date, duty.endsAt);
  return {
    uid: nameUuid(householdId, `duty/${duty.session}`),
    startsAt,
    endsAt: Math.max(planned, startsAt + 60_000),
    summary: `On for the kitchen ${WHEN[kindOfSession(duty.session)]}`,
    description: "What is to be done is in the plan.",
    reminds: true,
  };
}

function textOf({ kind, dish, text }: FeedTaskRow): Pick<FeedEntry, "summary" | "description"> {
  if (kind === "PACK")
    return { summary: "Pack a box", description: "Whose box it is and what goes in is in the plan." };
  if (dish !== null && isOwnKey(dish))
    return { summary: "Finish a dish of your own", description: "Which one and how is in the plan." };
  return { summary: text.split(":", 1)[0]!, description: text };
}
