/** Between instants and the household's own days. */
import { DateTime } from "luxon";

export const toDate = (date: string): Date => new Date(`${date}T00:00:00Z`);
export const fromDate = (date: Date): string => date.toISOString().slice(0, 10);
export const todayIn = (timeZone: string, now: Date): string =>
  DateTime.fromJSDate(now, { zone: timeZone }).toISODate() ?? fromDate(now);
export const clockIn = (timeZone: string, now: Date): { date: string; time: string } => ({
  date: todayIn(timeZone, now),
  time: DateTime.fromJSDate(now, { zone: timeZone }).toFormat("HH:mm"),
});
