import { GraphQLError, GraphQLScalarType, Kind, type ValueNode } from "graphql";

const DATE = /^(\d{4})-(\d{2})-(\d{2})$/;
const DATE_TIME = /^(\d{4}-\d{2}-\d{2})[Tt](\d{2}):(\d{2}):(\d{2})(?:\.(\d+))?([Zz]|[+-]\d{2}:\d{2})$/;
const TIME = /^([01]\d|2[0-3]):[0-5]\d$/;

/** A point in time. In: RFC 3339 section 5.6 with an offset. Out: UTC with `Z`, to the millisecond. */
export const DateTime = new GraphQLScalarType<Date, string>({
  name: "DateTime",
  description:
    "A point in time, RFC 3339 with an offset: 2026-09-07T07:40:00+02:00. Answers are in UTC, to the millisecond.",
  specifiedByURL: "https://www.rfc-editor.org/rfc/rfc3339#section-5.6",
  parseValue: readInstant,
  parseLiteral: (node) => readInstant(textOf(node)),
  // Rows read as JSON carry times as text, rows read by the ORM as Date: both leave in one spelling.
  serialize: (value) => (value instanceof Date ? value : readInstant(value)).toISOString(),
});

/** A calendar day at the school or in the kitchen, `YYYY-MM-DD`, with no time zone of its own. */
export const LocalDate = new GraphQLScalarType<string, string>({
  name: "LocalDate",
  description: "A calendar day where the child goes to school, without a time zone: 2026-09-07.",
  specifiedByURL: "https://www.rfc-editor.org/rfc/rfc3339#section-5.6",
  parseValue: readSchoolDay,
  parseLiteral: (node) => readSchoolDay(textOf(node)),
  serialize: (value) => readDay(value instanceof Date ? dayOf(value) : value),
});

/** A clock time, `HH:MM` on the 24-hour clock, in the zone of the school or kitchen it belongs to. */
export const LocalTime = new GraphQLScalarType<string, string>({
  name: "LocalTime",
  description: "A clock time on the 24-hour clock, to the minute, in the zone of the school or kitchen: 07:40.",
  parseValue: readClock,
  parseLiteral: (node) => readClock(textOf(node)),
  // PostgreSQL writes a time column with seconds; ours are always whole minutes.
  serialize: (value) =>
    readClock(typeof value === "string" ? value.replace(/:00$/, (tail, at: number) => (at === 5 ? "" : tail)) : value),
});

function readInstant(value: unknown): Date {
  const match = typeof value === "string" ? DATE_TIME.exec(value) : null;
  if (!match) {
    throw refuse(
      `A DateTime needs date, time, seconds and offset, such as 2026-09-07T07:40:00Z or 2026-09-07T07:40:00+02:00; got ${shown(value)}.`,
    );
  }
  const [, day = "", hour = "", minute = "", second = "", fraction = "", offset = ""] = match;
  readDay(day);
  if (second === "60") throw refuse("A DateTime with second 60 (a leap second) is not kept; use second 59.");
  const [offsetHour = 0, offsetMinute = 0] = offset.toUpperCase() === "Z" ? [] : offset.slice(1).split(":").map(Number);
  if (Number(hour) > 23 || Number(minute) > 59 || Number(second) > 59 || offsetHour > 23 || offsetMinute > 59)
    throw refuse(
      `A DateTime has hours 00 to 23, minutes and seconds 00 to 59, in the offset too; got ${shown(value)}.`,
    );
  // Finer than a millisecond is cut off, never rounded up into the next one.
  const milliseconds = fraction.slice(0, 3).padEnd(3, "0");
  const local = Date.parse(`${day}T${hour}:${minute}:${second}.${milliseconds}Z`);
  const sign = offset.startsWith("-") ? -1 : 1;
  const instant = new Date(local - sign * (offsetHour * 60 + offsetMinute) * 60_000);
  // What lies outside is spelled with a sign, which neither RFC 3339 nor the database reads.
  if (instant.getUTCFullYear() < 1 || instant.getUTCFullYear() > 9999)
    throw refuse(`A DateTime lies between the years 0001 and 9999 in UTC; got ${shown(value)}.`);
  return instant;
}

function readDay(value: unknown): string {
  const match = typeof value === "string" ? DATE.exec(value) : null;
  if (!match) throw refuse(`A LocalDate is written year-month-day, such as 2026-09-07; got ${shown(value)}.`);
  const [text, year = "", month = "", day = ""] = match;
  if (Number(month) < 1 || Number(month) > 12) throw refuse(`${text} is not a day: months run from 01 to 12.`);
  const days = daysInMonth(Number(year), Number(month));
  if (Number(day) < 1 || Number(day) > days) throw refuse(`${text} is not a day: that month has days 01 to ${days}.`);
  return text;
}

/** Days far outside a lifetime are slips of a key; the weeks around the ends of the calendar cannot be stored. */
function readSchoolDay(value: unknown): string {
  const day = readDay(value);
  if (day < "1900-01-01" || day > "2199-12-31")
    throw refuse(`A LocalDate lies between 1900-01-01 and 2199-12-31; got ${shown(value)}.`);
  return day;
}

function readClock(value: unknown): string {
  if (typeof value === "string" && TIME.test(value)) return value;
  throw refuse(
    `A LocalTime is hours and minutes on the 24-hour clock, 00:00 to 23:59, such as 07:40; got ${shown(value)}.`,
  );
}

/** A `date` column read by the ORM is midnight UTC of that day; anything else is not a day. */
function dayOf(value: Date): string {
  const text = value.toISOString();
  if (!text.endsWith("T00:00:00.000Z")) throw refuse(`A LocalDate has no time of day; got ${text}.`);
  return text.slice(0, 10);
}

function daysInMonth(year: number, month: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

const textOf = (node: ValueNode): unknown => (node.kind === Kind.STRING ? node.value : node.kind);

const shown = (value: unknown): string =>
  JSON.stringify(typeof value === "string" ? value.slice(0, 60) : value) ?? "nothing";

const refuse = (message: string): GraphQLError => new GraphQLError(message);
