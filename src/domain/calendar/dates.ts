/**
 * Local-date and wall-clock arithmetic on ISO strings. No Date object: a school day has no zone, and a zone would move it.
 * Day numbers follow the proleptic Gregorian calendar (ISO 8601), counted from 1970-01-01 = 0.
 */
import type { WeekdayCode } from "../../../shared/codes.js";

const weekdays: readonly WeekdayCode[] = ["MONDAY", "TUESDAY", "WEDNESDAY", "THURSDAY", "FRIDAY", "SATURDAY", "SUNDAY"];
const datePattern = /^(\d{4})-(\d{2})-(\d{2})$/;
const timePattern = /^([01]\d|2[0-3]):([0-5]\d)$/;
const minutesPerDay = 24 * 60;

interface CivilDate {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

function isLeapYear(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

function daysInMonth(year: number, month: number): number {
  if (month === 2) return isLeapYear(year) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

function readDate(date: string): CivilDate | null {
  const parts = datePattern.exec(date);
  if (parts === null) return null;
  const year = Number(parts[1]);
  const month = Number(parts[2]);
  const day = Number(parts[3]);
  if (month < 1 || month > 12 || day < 1 || day > daysInMonth(year, month)) return null;
  return { year, month, day };
}

function civilDate(date: string): CivilDate {
  const read = readDate(date);
  if (read === null) throw new RangeError(`not a calendar date: ${date}`);
  return read;
}

/** The year is counted from March, so that the leap day comes last and month lengths follow one formula. */
function dayNumber({ year, month, day }: CivilDate): number {
  const marchYear = month > 2 ? year : year - 1;
  const marchMonth = (month + 9) % 12;
  const leapDays = Math.floor(marchYear / 4) - Math.floor(marchYear / 100) + Math.floor(marchYear / 400);
  return 365 * marchYear + leapDays + Math.floor((153 * marchMonth + 2) / 5) + day - 1 - 719468;
}

function dateOfDayNumber(days: number): string {
  const fromMarch0 = days + 719468;
  const era = Math.floor(fromMarch0 / 146097);
  const dayOfEra = fromMarch0 - era * 146097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) / 365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const day = dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1;
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return `${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}

/** True for a day that is on the calendar: "2026-02-30" is not. */
export function isCalendarDate(date: string): boolean {
  return readDate(date) !== null;
}

/** The date `days` whole days later (earlier when negative). Throws RangeError on a text that is no calendar date. */
export function addDays(date: string, days: number): string {
  return dateOfDayNumber(dayNumber(civilDate(date)) + days);
}

/** Whole days from `from` to `to`; negative when `to` is earlier. Throws RangeError on a text that is no calendar date. */
export function daysBetween(from: string, to: string): number {
  return dayNumber(civilDate(to)) - dayNumber(civilDate(from));
}

/** Day of the week. Throws RangeError on a text that is no calendar date. */
export function weekdayOf(date: string): WeekdayCode {
  // Day 0, 1970-01-01, was a Thursday: index 3.
  const index = (((dayNumber(civilDate(date)) + 3) % 7) + 7) % 7;
  return weekdays[index] as WeekdayCode;
}

/**
 * Completed years on `date`; negative before birth. Born on 29 February: a year older on 1 March of a common year, which
 * keeps a rule for younger children one day longer rather than one day shorter.
 */
export function ageOn(dateOfBirth: string, date: string): number {
  const born = civilDate(dateOfBirth);
  const on = civilDate(date);
  const hadBirthday = on.month > born.month || (on.month === born.month && on.day >= born.day);
  return on.year - born.year - (hadBirthday ? 0 : 1);
}

/** Age in years with the part of the running year, for growth and energy equations. */
export function decimalAge(dateOfBirth: string, date: string): number {
  const years = ageOn(dateOfBirth, date);
  const born = civilDate(dateOfBirth);
  const birthdayIn = (year: number): number =>
    born.month === 2 && born.day === 29 && !isLeapYear(year)
      ? dayNumber({ year, month: 3, day: 1 })
      : dayNumber({ ...born, year });
  const last = birthdayIn(born.year + years);
  const next = birthdayIn(born.year + years + 1);
  return years + (dayNumber(civilDate(date)) - last) / (next - last);
}

/** Minutes since midnight of "HH:MM", 0 to 1439. Throws RangeError on any other text. */
export function minutesOf(time: string): number {
  const parts = timePattern.exec(time);
  if (parts === null) throw new RangeError(`not a time of day: ${time}`);
  return Number(parts[1]) * 60 + Number(parts[2]);
}

/** "HH:MM" of minutes since midnight; parts of a minute are cut off. Throws RangeError outside one day. */
export function timeOf(minutes: number): string {
  const whole = Math.floor(minutes);
  if (!(whole >= 0 && whole < minutesPerDay)) throw new RangeError(`not within one day: ${minutes} min`);
  return `${String(Math.floor(whole / 60)).padStart(2, "0")}:${String(whole % 60).padStart(2, "0")}`;
}
