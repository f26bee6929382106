/** Between instants and the household's own days. */
import { DateTime, IANAZone } from "luxon";

export const toDate = (date: string): Date => new Date(`${date}T00:00:00Z`);
export const fromDate = (date: Date): string => date.toISOString().slice(0, 10);
export const todayIn = (timeZone: string, now: Date): string =>
  DateTime.fromJSDate(now, { zone: timeZone }).toISODate() ?? fromDate(now);
/**
 * What a clock in one zone shows when one in another shows this. Where it shows another day, that day's nearest end: a time after
 * midnight counts as the last minute of the day, one before it as the first.
 */
export function clockElsewhere(date: string, time: string, fromZone: string, toZone: string): string {
  if (fromZone === toZone) return time;
  const there = DateTime.fromISO(`${date}T${time}`, { zone: fromZone }).setZone(toZone);
  const day = there.toISODate() ?? date;
  if (day !== date) return day > date ? "23:59" : "00:00";
  return there.toFormat("HH:mm");
}
export const clockIn = (timeZone: string, now: Date): { date: string; time: string } => ({
  date: todayIn(timeZone, now),
  time: DateTime.fromJSDate(now, { zone: timeZone }).toFormat("HH:mm"),
});

const DAY_MS = 86_400_000;
/**
 * The instant at which a clock shows a time, in milliseconds since 1970. A time that comes twice is its first; one that is skipped is
 * read with the offset before the gap (RFC 5545, 3.3.5). The library alone would choose by what the clock shows today.
 */
export function instantAt(timeZone: string, date: string, time: string): number {
  const zone = IANAZone.create(timeZone);
  const shown = DateTime.fromISO(`${date}T${time}`, { zone: "utc" }).toMillis();
  const [before, after] = [-DAY_MS, DAY_MS].map((aside) => shown - zone.offset(shown + aside) * 60_000) as [
    number,
    number,
  ];
  const shows = [before, after].filter((instant) => instant + zone.offset(instant) * 60_000 === shown);
  return shows.length > 0 ? Math.min(...shows) : before;
}
