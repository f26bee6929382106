/** Local dates and times as whole numbers, so that order and distance are plain arithmetic. */

const weekdays = ["MONDAY", "TUESDAY", "WEDNESDAY", "THURSDAY", "FRIDAY", "SATURDAY", "SUNDAY"] as const;

/** Days since 1970-01-01 of an ISO local date (proleptic Gregorian calendar, counted in 400-year eras of 146 097 days). */
export function dayNumber(date: string): number {
  const year = Number(date.slice(0, 4));
  const month = Number(date.slice(5, 7));
  const day = Number(date.slice(8));
  // The year is taken to begin in March, so that the leap day is its last.
  const marchYear = month <= 2 ? year - 1 : year;
  const era = Math.floor(marchYear / 400);
  const yearOfEra = marchYear - era * 400;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  return (
    era * 146_097 + yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear - 719_468
  );
}

/** Weekday of an ISO local date; 1970-01-01 was a Thursday. */
export function weekdayOn(date: string): (typeof weekdays)[number] | undefined {
  return weekdays[(((dayNumber(date) + 3) % 7) + 7) % 7];
}

/** Age in completed years on a date. Somebody born on 29 February turns a year older on 1 March of a common year. */
export function completedYears(dateOfBirth: string, on: string): number {
  const years = Number(on.slice(0, 4)) - Number(dateOfBirth.slice(0, 4));
  return on.slice(5) < dateOfBirth.slice(5) ? years - 1 : years;
}

/** Minutes after midnight of "HH:MM". */
export function minuteOfDay(time: string): number {
  return Number(time.slice(0, 2)) * 60 + Number(time.slice(3));
}

/** Minutes since 1970-01-01T00:00 on the household's wall clock; a summer-time change on the way is not seen. */
export function instant(date: string, time: string): number {
  return dayNumber(date) * 1440 + minuteOfDay(time);
}
