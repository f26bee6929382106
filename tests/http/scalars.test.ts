import { describe, expect, it } from "@jest/globals";
import { parseValue } from "graphql";
import { globalId, localId } from "../../src/graphql/global-id.js";
import { DateTime, LocalDate, LocalTime } from "../../src/graphql/scalars.js";

describe("a DateTime", () => {
  // The first four are the examples of RFC 3339, section 5.8 (https://www.rfc-editor.org/rfc/rfc3339#section-5.8), with the
  // UTC equivalents it states.
  it.each([
    ["1985-04-12T23:20:50.52Z", "1985-04-12T23:20:50.520Z"],
    ["1996-12-19T16:39:57-08:00", "1996-12-20T00:39:57.000Z"],
    ["1937-01-01T12:00:27.87+00:20", "1937-01-01T11:40:27.870Z"],
    ["1990-12-31T23:59:59Z", "1990-12-31T23:59:59.000Z"],
    ["2026-09-07t07:40:00z", "2026-09-07T07:40:00.000Z"],
    ["2024-02-29T23:59:59.9999+02:00", "2024-02-29T21:59:59.999Z"],
    ["2026-03-01T00:10:00+00:30", "2026-02-28T23:40:00.000Z"],
    ["0050-01-01T00:00:00Z", "0050-01-01T00:00:00.000Z"],
  ])("%s is %s", (text, utc) => {
    expect(DateTime.serialize(DateTime.parseValue(text))).toBe(utc);
    expect(DateTime.parseLiteral(parseValue(JSON.stringify(text)), {}).toISOString()).toBe(utc);
  });

  it.each([
    ["2026-09-07T07:40:00", /offset/],
    ["2026-09-07 07:40:00Z", /needs date, time, seconds and offset/],
    ["2026-09-07", /needs date, time, seconds and offset/],
    ["2026-02-29T07:40:00Z", /days 01 to 28/],
    ["2026-13-01T07:40:00Z", /months run from 01 to 12/],
    ["2026-09-07T24:00:00Z", /00 to 23/],
    ["2026-09-07T07:60:00Z", /00 to 59/],
    ["2026-09-07T07:40:00+24:00", /00 to 23/],
    ["1990-12-31T23:59:60Z", /use second 59/],
    [1_788_000_000, /needs date/],
    [null, /needs date/],
  ])("is not %s, and the message says why", (value, message) => {
    expect(() => DateTime.parseValue(value)).toThrow(message);
  });

  it("leaves the database's spelling and a Date alike in UTC", () => {
    expect(DateTime.serialize("2026-09-07T07:40:00.123456+02:00")).toBe("2026-09-07T05:40:00.123Z");
    expect(DateTime.serialize(new Date(Date.UTC(2026, 8, 7, 5, 40)))).toBe("2026-09-07T05:40:00.000Z");
    expect(() => DateTime.serialize(new Date(NaN))).toThrow();
    expect(() => DateTime.parseLiteral(parseValue("7"), {})).toThrow(/needs date/);
  });
});

describe("a LocalDate", () => {
  it("is a day of the calendar", () => {
    for (const day of ["2026-09-07", "2024-02-29", "2000-02-29"]) expect(LocalDate.parseValue(day)).toBe(day);
    for (const day of [
      "2026-02-29",
      "1900-02-29",
      "2026-04-31",
      "2026-00-10",
      "2026-9-7",
      "07.09.2026",
      "2026-09-07T00:00:00Z",
      20260907,
    ])
      expect(() => LocalDate.parseValue(day)).toThrow(/LocalDate|not a day/);
    expect(LocalDate.serialize(new Date("2026-09-07T00:00:00Z"))).toBe("2026-09-07");
    expect(() => LocalDate.serialize(new Date("2026-09-06T22:00:00Z"))).toThrow(/no time of day/);
  });
});

describe("a LocalTime", () => {
  it("is hours and minutes", () => {
    for (const time of ["00:00", "07:40", "23:59"]) expect(LocalTime.parseValue(time)).toBe(time);
    for (const time of ["24:00", "7:40", "07:60", "07:40:00", "0740", 740, null])
      expect(() => LocalTime.parseValue(time)).toThrow(/00:00 to 23:59, such as 07:40/);
    expect(LocalTime.serialize("07:40:00")).toBe("07:40");
    expect(LocalTime.serialize("07:00")).toBe("07:00");
    expect(() => LocalTime.serialize("07:40:30")).toThrow();
  });
});

describe("a global id", () => {
  const uuid = "3f2b8c1e-0000-4000-8000-000000000001";

  it("leads back to the row of its own type only", () => {
    expect(localId("Box", globalId("Box", uuid))).toBe(uuid);
    expect(localId("Child", globalId("Box", uuid))).toBeNull();
    expect(globalId("Box", uuid)).toMatch(/^[\w-]+$/);
  });

  it("finds nothing when malformed", () => {
    const id = globalId("Box", uuid);
    for (const bad of [
      "",
      "Box",
      uuid,
      `Box:${uuid}`,
      `${id}=`,
      `${id} `,
      id.slice(0, -1),
      id.slice(4),
      globalId("Box", "1"),
      globalId("Box", uuid.toUpperCase()),
      globalId("Box:Box", uuid),
    ])
      expect([bad, localId("Box", bad)]).toEqual([bad, null]);
  });
});
