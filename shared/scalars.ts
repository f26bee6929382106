/** The schema's scalars as a client writes them; what is refused here the server refuses too. */
import { z } from "zod";
import { localTime } from "./codes.js";

const DAY_FIX = "Send a day as YYYY-MM-DD, from 1900-01-01 to 2199-12-31.";
const INSTANT_FIX = "Send date, time, seconds and offset: 2026-09-07T07:40:00Z.";

/** RFC 3339, section 5.6, without leap seconds; a fraction of any length, of which the server keeps three digits. */
const INSTANT =
  /^(\d{4}-\d{2}-\d{2})[Tt]([01]\d|2[0-3]):[0-5]\d:[0-5]\d(?:\.\d+)?(?:[Zz]|[+-](?:[01]\d|2[0-3]):[0-5]\d)$/;

/** Whether the calendar has the day; a two-digit year is never meant. */
function isDay(text: string): boolean {
  const midnight = `${text}T00:00:00.000Z`;
  const time = Date.parse(midnight);
  return !Number.isNaN(time) && new Date(time).toISOString() === midnight;
}

export const scalars = {
  ID: z.string(),
  String: z.string(),
  Boolean: z.boolean(),
  Int: z.int32("Send a whole number."),
  Float: z.number("Send a number."),
  DateTime: z.string().refine((text) => isDay(INSTANT.exec(text)?.[1] ?? "") && hasYear(text), INSTANT_FIX),
  LocalDate: z
    .string()
    .regex(/^\d{4}-\d{2}-\d{2}$/, DAY_FIX)
    .refine((text) => isDay(text) && text >= "1900-01-01" && text <= "2199-12-31", DAY_FIX),
  LocalTime: localTime,
};

/** In UTC the year has four digits: an hour's offset may carry the first or last moments of the calendar beyond it. */
function hasYear(text: string): boolean {
  const year = new Date(text.toUpperCase()).getUTCFullYear();
  return year >= 1 && year <= 9999;
}

/** Of a `@oneOf` input one field is given, and null is no value (GraphQL specification, September 2025, 3.10.1). */
export const exactlyOne = (value: Readonly<Record<string, unknown>>): boolean => {
  const given = Object.values(value).filter((field) => field !== undefined);
  return given.length === 1 && given[0] !== null;
};
