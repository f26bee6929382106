/** The note one home of a child leaves the other for a week: one for both, which either may write. Nothing of a kitchen is in it. */
import { handoverInput } from "../../shared/inputs.js";
import type { PlaceCode, ThingPlace } from "../database/handover.js";
import { addDays, isCalendarDate } from "../domain/calendar/dates.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { weekStartOf } from "./assemble-brief.js";
import { livesHere, roleIn } from "./change-household.js";
import { checkInput, invalid } from "./check-input.js";
import type { FailureOf } from "./failures.js";
import { toDate, todayIn } from "./local-day.js";
import { leastRole, may } from "./may.js";
import { once } from "./once.js";

/** As the reader's home sees it. */
export type Whereabouts = "THIS_HOME" | "OTHER_HOME" | Exclude<PlaceCode, "HOME">;

export interface WriteHandover {
  readonly idempotencyKey: string;
  readonly householdId: string | null;
  /** Of the note; 0 when nothing has been written. */
  readonly seenRevision: number;
  readonly childId: string | null;
  /** Any day of the week. */
  readonly date: string;
  readonly repeat: readonly string[];
  readonly avoid: readonly string[];
  readonly note: string;
  readonly box?: Whereabouts | null;
  readonly icePacks?: Whereabouts | null;
  readonly flask?: Whereabouts | null;
}
export interface HandoverRef {
  readonly householdId: string;
  readonly childId: string;
  readonly weekStart: string;
}

/** How far from today a note is written. */
const MOST_DAYS = 62;

/** Weeks of a note begin on a Monday (ISO 8601), whatever the homes' own do: both read the same one. */
export const handoverWeek = (date: string): string => weekStartOf(date, "MONDAY");

export function whereaboutsFor(householdId: string, thing: ThingPlace | null): Whereabouts | null {
  if (thing === null || (thing.place === "HOME" && thing.homeId === null)) return null;
  if (thing.place !== "HOME") return thing.place;
  return thing.homeId === householdId ? "THIS_HOME" : "OTHER_HOME";
}

function placeOf(said: Whereabouts | null | undefined, here: string, other: string | null): ThingPlace | null {
  if (said == null) return null;
  if (said === "THIS_HOME") return { place: "HOME", homeId: here };
  return said === "OTHER_HOME" ? { place: "HOME", homeId: other } : { place: said, homeId: null };
}

type Failed = FailureOf<
  "InvalidInput" | "HouseholdNotFound" | "ChildNotFound" | "NotPermitted" | "RevisionPassed" | "KeyReused"
>;

export async function writeHandover(
  app: App,
  personId: string,
  input: WriteHandover,
): Promise<Result<HandoverRef, Failed>> {
  const { date, childId, householdId, seenRevision } = input;
  const checked = checkInput(handoverInput, input);
  if (!checked.ok) return checked;
  if (!isCalendarDate(date))
    return fail(invalid("date", `${date} is no day of the calendar`, "Send a real date as YYYY-MM-DD."));
  const attempt = { personId, action: "writeHandover", key: input.idempotencyKey, input };
  return once<HandoverRef, Failed>(app, attempt, async (tx) => {
    const role = householdId === null ? null : await roleIn(tx, personId, householdId);
    if (role === null || householdId === null) return fail({ kind: "HouseholdNotFound" });
    if (!may(role, "writeHandover")) return fail({ kind: "NotPermitted", neededRole: leastRole.writeHandover });
    if (childId === null || !(await livesHere(tx, childId, householdId))) return fail({ kind: "ChildNotFound" });
    const home = await tx.household.findUniqueOrThrow({ where: { id: householdId }, select: { timeZone: true } });
    const today = todayIn(home.timeZone, app.now());
    if (date < addDays(today, -MOST_DAYS) || date > addDays(today, MOST_DAYS))
      return fail(invalid("date", `${date} is not near today`, `Send a day within ${MOST_DAYS} days.`));
    const others = await tx.residence.findMany({
      where: { childId, householdId: { not: householdId } },
      orderBy: [{ since: "asc" }, { householdId: "asc" }],
      select: { householdId: true },
    });
    const other = others[0]?.householdId ?? null;
    const elsewhere = (["box", "icePacks", "flask"] as const).find((thing) => input[thing] === "OTHER_HOME");
    if (elsewhere && other === null)
      return fail(invalid(elsewhere, "the child has no other home", "Send THIS_HOME, or another place."));
    const [box, icePacks, flask] = [input.box, input.icePacks, input.flask].map((said) =>
      placeOf(said, householdId, other),
    );
    const { repeat, avoid, note } = checked.value;
    const said = {
      repeat,
      avoid,
      note,
      boxPlace: box?.place ?? null,
      boxHomeId: box?.homeId ?? null,
      icePacksPlace: icePacks?.place ?? null,
      icePacksHomeId: icePacks?.homeId ?? null,
      flaskPlace: flask?.place ?? null,
      flaskHomeId: flask?.homeId ?? null,
    };
    const week = { childId, weekStart: toDate(handoverWeek(date)) };
    // Two homes that write the first note at once: the second finds it written.
    const added =
      seenRevision === 0
        ? (await tx.handover.createMany({ data: [{ ...week, ...said }], skipDuplicates: true })).count
        : 0;
    const moved =
      added > 0
        ? added
        : (
            await tx.handover.updateMany({
              where: { ...week, revision: seenRevision },
              data: { ...said, revision: { increment: 1 } },
            })
          ).count;
    if (moved === 0) {
      const now = await tx.handover.findUnique({ where: { childId_weekStart: week }, select: { revision: true } });
      return fail({ kind: "RevisionPassed", seenRevision, currentRevision: now?.revision ?? 0 });
    }
    return ok({ householdId, childId, weekStart: handoverWeek(date) });
  });
}
