import { describe, expect, it } from "@jest/globals";
import fc from "fast-check";
import {
  addDays,
  ageOn,
  daysBetween,
  decimalAge,
  isCalendarDate,
  minutesOf,
  timeOf,
  weekdayOf,
} from "../../src/domain/calendar/dates.js";

const anyDate = fc.integer({ min: -40_000, max: 60_000 }).map((days) => addDays("1970-01-01", days));

describe("local dates", () => {
  // Outside: ISO 8601 names 1985-04-12 with its ordinal day 102, 1985-102; 2000-02-29 exists and 1900-02-29 does not (Gregorian rule).
  it("counts the days of a year as the standard's own example does", () => {
    expect(daysBetween("1985-01-01", "1985-04-12") + 1).toBe(102);
    expect(isCalendarDate("2000-02-29")).toBe(true);
    expect(isCalendarDate("1900-02-29")).toBe(false);
  });

  // Outside: the Date object of the language (ECMA-262), used in the test only, in UTC.
  it("agrees with the language's own calendar on every weekday and date over 270 years", () => {
    const names = ["SUNDAY", "MONDAY", "TUESDAY", "WEDNESDAY", "THURSDAY", "FRIDAY", "SATURDAY"];
    for (let day = -40_000; day < 60_000; day += 37) {
      const there = new Date(day * 86_400_000);
      const here = addDays("1970-01-01", day);
      expect(here).toBe(there.toISOString().slice(0, 10));
      expect(weekdayOf(here)).toBe(names[there.getUTCDay()]);
    }
  });

  it("comes back to the same day after going there and back", () => {
    fc.assert(
      fc.property(anyDate, fc.integer({ min: -5000, max: 5000 }), (date, days) => {
        expect(addDays(addDays(date, days), -days)).toBe(date);
        expect(daysBetween(date, addDays(date, days))).toBe(days);
      }),
    );
  });

  it("sorts by time when sorted as text", () => {
    fc.assert(
      fc.property(anyDate, anyDate, (a, b) => Math.sign(daysBetween(a, b)) === Math.sign(a < b ? 1 : a > b ? -1 : 0)),
    );
  });

  it("refuses a day that is not on the calendar", () => {
    for (const text of ["2026-02-30", "2026-13-01", "2026-00-10", "26-01-01", "2026-1-1", "", "2026-01-01T00:00"]) {
      expect(isCalendarDate(text)).toBe(false);
      expect(() => weekdayOf(text)).toThrow(RangeError);
    }
  });
});

describe("age", () => {
  it("turns on the birthday and not a day earlier", () => {
    expect(ageOn("2021-09-08", "2026-09-07")).toBe(4);
    expect(ageOn("2021-09-08", "2026-09-08")).toBe(5);
  });

  it("lets a child born on a leap day turn five on the first of March", () => {
    expect(ageOn("2020-02-29", "2025-02-28")).toBe(4);
    expect(ageOn("2020-02-29", "2025-03-01")).toBe(5);
    expect(ageOn("2020-02-29", "2024-02-29")).toBe(4);
  });

  it("is a half at the middle of a year", () => {
    expect(decimalAge("2018-01-01", "2026-01-01")).toBe(8);
    expect(decimalAge("2018-07-02", "2026-01-01")).toBeCloseTo(7.5, 2);
  });

  it("never runs backwards and stays within the completed year", () => {
    fc.assert(
      fc.property(anyDate, fc.integer({ min: 0, max: 7000 }), (born, days) => {
        const on = addDays(born, days);
        expect(Math.floor(decimalAge(born, on))).toBe(ageOn(born, on));
        expect(decimalAge(born, addDays(on, 1))).toBeGreaterThan(decimalAge(born, on));
      }),
    );
  });
});

describe("times of day", () => {
  it("goes to minutes and back for every minute of the day", () => {
    for (let minute = 0; minute < 1440; minute++) expect(minutesOf(timeOf(minute))).toBe(minute);
    expect(minutesOf("06:50")).toBe(410);
  });

  it("cuts off parts of a minute, so that a start is never shown late", () => {
    expect(timeOf(410.9)).toBe("06:50");
  });

  it("refuses times outside the day", () => {
    expect(() => timeOf(1440)).toThrow(RangeError);
    expect(() => timeOf(-1)).toThrow(RangeError);
    expect(() => minutesOf("24:00")).toThrow(RangeError);
    expect(() => minutesOf("7:30")).toThrow(RangeError);
  });
});
