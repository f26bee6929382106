/** Bases that stand for hours before anything can be made of them: when they are ready, and for which session. */
import type { Base } from "../../../shared/catalogue.js";
import type { SessionBrief } from "../brief.js";
import { addDays, minutesOf, timeOf } from "../calendar/dates.js";

const MINUTES_PER_DAY = 24 * 60;

/** A moment on the household's clock as "YYYY-MM-DDTHH:MM", so that moments compare as texts. */
const momentOf = (date: string, minutes: number): string =>
  `${addDays(date, Math.floor(minutes / MINUTES_PER_DAY))}T${timeOf(minutes % MINUTES_PER_DAY)}`;

/**
 * Whether what stands since a session is ready when another begins. Counted from the end of the session: the work in it is not on
 * the clock yet. True for whatever need not stand.
 */
export function hasStood(base: Base, made: SessionBrief, used: SessionBrief): boolean {
  if (base.restMinutes == null) return true;
  const ready = minutesOf(made.startsAt) + made.elapsedMinutes + base.restMinutes;
  return momentOf(made.date, ready) <= momentOf(used.date, minutesOf(used.startsAt));
}

/** Whether what stands since a session can be finished on the morning of a date. */
export function hasStoodByMorning(
  sessions: readonly SessionBrief[],
  base: Base,
  made: SessionBrief,
  date: string,
): boolean {
  if (base.restMinutes == null) return true;
  const morning = sessions.find((session) => session.kind === "MORNING" && session.date === date);
  return morning !== undefined && hasStood(base, made, morning);
}
