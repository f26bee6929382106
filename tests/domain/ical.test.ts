import fc from "fast-check";
import { DateTime } from "luxon";
import nodeIcal from "node-ical";
import { readICalendar } from "../../src/app/read-icalendar.js";
import { calendar, event, london, newYork, sydney } from "../support/calendar-file.js";

const read = (text: string, timeZone = "America/New_York") => {
  const result = readICalendar(text, timeZone);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};
const days = (text: string, timeZone?: string) =>
  read(text, timeZone).flatMap(({ occurrences }) => occurrences.map(({ firstDay }) => firstDay));
const times = (text: string, timeZone?: string) =>
  read(text, timeZone).flatMap(({ occurrences }) => occurrences.map((one) => `${one.firstDay} ${one.startsAt}`));
const issuesOf = (text: string, timeZone = "Europe/London") => {
  const result = readICalendar(text, timeZone);
  return result.ok ? [] : result.error;
};
const inMonth = (month: string, ...dates: number[]) => dates.map((day) => `${month}-${String(day).padStart(2, "0")}`);
const all = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, at) => from + at);

describe("recurrences come out as RFC 5545 prints them (section 3.8.5.3, examples with an end within three years)", () => {
  const cases: readonly (readonly [string, string, string, readonly string[]])[] = [
    ["daily for 10 occurrences", "19970902", "FREQ=DAILY;COUNT=10", inMonth("1997-09", ...all(2, 11))],
    [
      "daily until 24 December 1997",
      "19970902",
      "FREQ=DAILY;UNTIL=19971224T000000Z",
      [
        ...inMonth("1997-09", ...all(2, 30)),
        ...inMonth("1997-10", ...all(1, 31)),
        ...inMonth("1997-11", ...all(1, 30)),
        ...inMonth("1997-12", ...all(1, 23)),
      ],
    ],
    [
      "every 10 days, 5 occurrences",
      "19970902",
      "FREQ=DAILY;INTERVAL=10;COUNT=5",
      [...inMonth("1997-09", 2, 12, 22), ...inMonth("1997-10", 2, 12)],
    ],
    [
      "weekly for 10 occurrences",
      "19970902",
      "FREQ=WEEKLY;COUNT=10",
      [...inMonth("1997-09", 2, 9, 16, 23, 30), ...inMonth("1997-10", 7, 14, 21, 28), ...inMonth("1997-11", 4)],
    ],
    [
      "every other week on Monday, Wednesday and Friday until 24 December 1997",
      "19970901",
      "FREQ=WEEKLY;INTERVAL=2;UNTIL=19971224T000000Z;WKST=SU;BYDAY=MO,WE,FR",
      [
        ...inMonth("1997-09", 1, 3, 5, 15, 17, 19, 29),
        ...inMonth("1997-10", 1, 3, 13, 15, 17, 27, 29, 31),
        ...inMonth("1997-11", 10, 12, 14, 24, 26, 28),
        ...inMonth("1997-12", 8, 10, 12, 22),
      ],
    ],
    [
      "every other week on Tuesday and Thursday, 8 occurrences",
      "19970902",
      "FREQ=WEEKLY;INTERVAL=2;COUNT=8;WKST=SU;BYDAY=TU,TH",
      [...inMonth("1997-09", 2, 4, 16, 18, 30), ...inMonth("1997-10", 2, 14, 16)],
    ],
    [
      "monthly on the first Friday for 10 occurrences",
      "19970905",
      "FREQ=MONTHLY;COUNT=10;BYDAY=1FR",
      [
        "1997-09-05",
        "1997-10-03",
        "1997-11-07",
        "1997-12-05",
        "1998-01-02",
        "1998-02-06",
        "1998-03-06",
        "1998-04-03",
        "1998-05-01",
        "1998-06-05",
      ],
    ],
    [
      "every other month on the first and last Sunday, 10 occurrences",
      "19970907",
      "FREQ=MONTHLY;INTERVAL=2;COUNT=10;BYDAY=1SU,-1SU",
      [
        ...inMonth("1997-09", 7, 28),
        ...inMonth("1997-11", 2, 30),
        ...inMonth("1998-01", 4, 25),
        ...inMonth("1998-03", 1, 29),
        ...inMonth("1998-05", 3, 31),
      ],
    ],
    [
      "monthly on the second-to-last Monday for 6 months",
      "19970922",
      "FREQ=MONTHLY;COUNT=6;BYDAY=-2MO",
      ["1997-09-22", "1997-10-20", "1997-11-17", "1997-12-22", "1998-01-19", "1998-02-16"],
    ],
    [
      "monthly on the first and last day, 10 occurrences",
      "19970930",
      "FREQ=MONTHLY;COUNT=10;BYMONTHDAY=1,-1",
      [
        ...inMonth("1997-09", 30),
        ...inMonth("1997-10", 1, 31),
        ...inMonth("1997-11", 1, 30),
        ...inMonth("1997-12", 1, 31),
        ...inMonth("1998-01", 1, 31),
        ...inMonth("1998-02", 1),
      ],
    ],
    [
      "every 18 months on the 10th to 15th, 10 occurrences",
      "19970910",
      "FREQ=MONTHLY;INTERVAL=18;COUNT=10;BYMONTHDAY=10,11,12,13,14,15",
      [...inMonth("1997-09", ...all(10, 15)), ...inMonth("1999-03", ...all(10, 13))],
    ],
    [
      "the third of Tuesday, Wednesday and Thursday in the month, 3 months",
      "19970904",
      "FREQ=MONTHLY;COUNT=3;BYDAY=TU,WE,TH;BYSETPOS=3",
      ["1997-09-04", "1997-10-07", "1997-11-06"],
    ],
    [
      "weeks that begin on Monday",
      "19970805",
      "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=MO",
      inMonth("1997-08", 5, 10, 19, 24),
    ],
    [
      "weeks that begin on Sunday",
      "19970805",
      "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=SU",
      inMonth("1997-08", 5, 17, 19, 31),
    ],
    [
      "a day that February does not have is left out",
      "20070115",
      "FREQ=MONTHLY;BYMONTHDAY=15,30;COUNT=5",
      ["2007-01-15", "2007-01-30", "2007-02-15", "2007-03-15", "2007-03-30"],
    ],
  ];
  it.each(cases)("%s", (_, start, rule, expected) => {
    const timed = ["CATEGORIES:EARLY-FINISH", `DTSTART;TZID=America/New_York:${start}T090000`, `RRULE:${rule}`];
    // 09:00 stays 09:00 over the change of the clocks in October.
    expect(times(calendar(newYork, event(...timed)))).toEqual(expected.map((date) => `${date} 09:00`));
    const until = rule.replace(/T000000Z/, "").replace("19971224", "19971223");
    const wholeDays = ["CATEGORIES:TRIP", `DTSTART;VALUE=DATE:${start}`, `RRULE:${until}`];
    expect(days(calendar(event(...wholeDays)))).toEqual(expected);
  });
});

describe("beside another parser of iCalendar files (node-ical)", () => {
  const weekday = fc.constantFrom("MO", "TU", "WE", "TH", "FR", "SA", "SU");
  const rule = fc.oneof(
    fc.record({ freq: fc.constant("DAILY"), interval: fc.integer({ min: 1, max: 9 }), by: fc.constant("") }),
    fc.record({
      freq: fc.constant("WEEKLY"),
      interval: fc.integer({ min: 1, max: 4 }),
      by: fc.uniqueArray(weekday, { minLength: 1, maxLength: 4 }).map((list) => `;BYDAY=${list.join(",")}`),
    }),
    fc.record({
      freq: fc.constant("MONTHLY"),
      interval: fc.integer({ min: 1, max: 3 }),
      by: fc.oneof(
        fc.tuple(fc.constantFrom(1, 2, 3, 4, -1), weekday).map(([nth, day]) => `;BYDAY=${nth}${day}`),
        fc
          .uniqueArray(fc.integer({ min: 1, max: 31 }), { minLength: 1, maxLength: 3 })
          .map((list) => `;BYMONTHDAY=${[...list].sort((a, b) => a - b).join(",")}`),
      ),
    }),
  );
  const start = fc.integer({ min: 0, max: 364 }).map((days) => DateTime.utc(2026, 9, 1).plus({ days }));

  it("the days of a series, with some taken out, are the same", () => {
    fc.assert(
      fc.property(rule, start, fc.integer({ min: 30, max: 300 }), ({ freq, interval, by }, from, length) => {
        const until = from.plus({ days: length });
        const gone = from.plus({ days: 7 * interval });
        const text = calendar(
          event(
            "UID:series@school.example",
            "CATEGORIES:TRIP",
            "SUMMARY:Out",
            `DTSTART;VALUE=DATE:${from.toFormat("yyyyMMdd")}`,
            `DTEND;VALUE=DATE:${from.plus({ days: 1 }).toFormat("yyyyMMdd")}`,
            `RRULE:FREQ=${freq};INTERVAL=${interval}${by};UNTIL=${until.toFormat("yyyyMMdd")}`,
            `EXDATE;VALUE=DATE:${gone.toFormat("yyyyMMdd")}`,
          ),
        );
        const other = nodeIcal.sync.parseICS(text)["series@school.example"];
        if (other?.type !== "VEVENT") throw new Error("the other parser found no event");
        const expected = nodeIcal
          .expandRecurringEvent(other, {
            from: from.minus({ days: 2 }).toJSDate(),
            to: until.plus({ days: 2 }).toJSDate(),
          })
          .map((one) => DateTime.fromJSDate(one.start).toISODate());
        // The first day counts by itself (RFC 5545, section 3.8.5.3), also where the rule would not give it; not all agree.
        const rest = (dates: readonly (string | null)[]) =>
          [...new Set(dates)].filter((date) => date !== from.toISODate());
        expect(rest(days(text)).sort()).toEqual(rest(expected).sort());
      }),
      { numRuns: 300 },
    );
  });

  it("a whole file gives the same events, texts, categories, first and last days", () => {
    const text = calendar(
      event(
        "UID:a",
        "CATEGORIES:TERM",
        "SUMMARY:Spring\\, short",
        "DTSTART;VALUE=DATE:20270105",
        "DTEND;VALUE=DATE:20270326",
      ),
      event("UID:b", "CATEGORIES:HOLIDAY", "SUMMARY:Half-\r\n term", "DTSTART;VALUE=DATE:20270215", "DURATION:P5D"),
      event("UID:c", "CATEGORIES:TRIP,CLASS:Class 4", "SUMMARY:Museum", "DTSTART;VALUE=DATE:20270302"),
      event("UID:d", "CATEGORIES:EARLY-FINISH", "SUMMARY:Noon", "DTSTART:20270325T120000Z", "DTEND:20270325T150000Z"),
    );
    const others = Object.values(nodeIcal.sync.parseICS(text)).flatMap((one) => (one?.type === "VEVENT" ? [one] : []));
    const ours = read(text, "Europe/London");
    expect(ours).toHaveLength(others.length);
    for (const other of others) {
      const own = ours.find(({ uid }) => uid === other.uid)!;
      expect(own.title).toBe(other.summary);
      expect([own.kind.replace("_", "-"), ...own.classes.map((name) => `CLASS:${name}`)]).toEqual(other.categories);
      const zone = other.datetype === "date" ? "local" : "Europe/London";
      const first = DateTime.fromJSDate(other.start).setZone(zone);
      const end = other.end ? DateTime.fromJSDate(other.end).setZone(zone) : first.plus({ days: 1 });
      expect(own.occurrences[0]!.firstDay).toBe(first.toISODate());
      expect(own.occurrences[0]!.lastDay).toBe(end.minus({ milliseconds: 1 }).toISODate());
      expect(own.occurrences[0]!.startsAt).toBe(other.datetype === "date" ? null : first.toFormat("HH:mm"));
    }
  });
});

describe("the end of a school day on the school's clock, beside luxon's zones", () => {
  const zones = { london, newYork, sydney };
  const written = { london: "Europe/London", newYork: "America/New_York", sydney: "Australia/Sydney" } as const;
  const schools = ["Europe/London", "Australia/Sydney", "America/New_York", "Asia/Kolkata", "America/Santiago"];
  const cases = (Object.keys(zones) as (keyof typeof zones)[]).flatMap((from) =>
    schools.map((school) => [written[from], school, zones[from]] as const),
  );

  it.each(cases)("written in %s for a school in %s, every week of two years", (tzid, school, zone) => {
    const text = calendar(
      zone,
      event("CATEGORIES:EARLY-FINISH", `DTSTART;TZID=${tzid}:20260901T121500`, "RRULE:FREQ=WEEKLY;COUNT=104"),
    );
    const expected = Array.from({ length: 104 }, (_, weeks) =>
      DateTime.fromISO("2026-09-01T12:15", { zone: tzid }).plus({ weeks }).setZone(school).toFormat("yyyy-MM-dd HH:mm"),
    );
    expect(times(text, school)).toEqual(expected);
  });

  it("written in UTC it moves on the school's clock when that changes, written floating it does not", () => {
    const weekly = (start: string) =>
      times(
        calendar(event("CATEGORIES:EARLY-FINISH", `DTSTART:${start}`, "RRULE:FREQ=WEEKLY;COUNT=3")),
        "Europe/London",
      );
    // 28 March 2027 is the last Sunday of March.
    expect(weekly("20270319T121500Z")).toEqual(["2027-03-19 12:15", "2027-03-26 12:15", "2027-04-02 13:15"]);
    expect(weekly("20270319T121500")).toEqual(["2027-03-19 12:15", "2027-03-26 12:15", "2027-04-02 12:15"]);
  });

  it("a time that the clocks leap over is read with the offset before (RFC 5545, section 3.3.5)", () => {
    const text = calendar(event("CATEGORIES:EARLY-FINISH", "DTSTART:20270328T013000"));
    expect(times(text, "Europe/London")).toEqual(["2027-03-28 02:30"]);
  });

  it("a trip by the clock covers the school's days it touches", () => {
    const trip = (end: string) =>
      read(calendar(event("CATEGORIES:TRIP", "DTSTART:20270302T090000", end)), "Europe/London")[0]!.occurrences;
    expect(trip("DTEND:20270303T150000")).toEqual([{ firstDay: "2027-03-02", lastDay: "2027-03-03", startsAt: null }]);
    expect(trip("DTEND:20270303T000000")).toEqual([{ firstDay: "2027-03-02", lastDay: "2027-03-02", startsAt: null }]);
    expect(trip("DURATION:PT6H")).toEqual([{ firstDay: "2027-03-02", lastDay: "2027-03-02", startsAt: null }]);
    expect(trip("DESCRIPTION:no end")).toEqual([{ firstDay: "2027-03-02", lastDay: "2027-03-02", startsAt: null }]);
  });
});

describe("whole days and series (RFC 5545)", () => {
  const spans = (...lines: string[]) =>
    read(calendar(event("CATEGORIES:HOLIDAY", ...lines))).flatMap(({ occurrences }) =>
      occurrences.map(({ firstDay, lastDay }) => `${firstDay} ${lastDay}`),
    );

  it("DTEND is the day after the last; DURATION counts days; with neither it is one day (sections 3.6.1, 3.8.2.2)", () => {
    expect(spans("DTSTART;VALUE=DATE:20270215", "DTEND;VALUE=DATE:20270220")).toEqual(["2027-02-15 2027-02-19"]);
    expect(spans("DTSTART;VALUE=DATE:20270215", "DURATION:P5D")).toEqual(["2027-02-15 2027-02-19"]);
    expect(spans("DTSTART;VALUE=DATE:20270215", "DURATION:P1W")).toEqual(["2027-02-15 2027-02-21"]);
    expect(spans("DTSTART;VALUE=DATE:20270503")).toEqual(["2027-05-03 2027-05-03"]);
  });

  it("days are added by RDATE and taken out by EXDATE, with or without a rule", () => {
    const rdate = ["DTSTART;VALUE=DATE:20270104", "RDATE;VALUE=DATE:20270201,20270301"];
    expect(spans(...rdate)).toEqual(["2027-01-04 2027-01-04", "2027-02-01 2027-02-01", "2027-03-01 2027-03-01"]);
    expect(spans(...rdate, "EXDATE;VALUE=DATE:20270104", "EXDATE;VALUE=DATE:20270301")).toEqual([
      "2027-02-01 2027-02-01",
    ]);
  });

  it("one day of a series is moved, retitled or called off by an event of its own", () => {
    const series = ["UID:fridays", "CATEGORIES:EARLY-FINISH", "SUMMARY:Friday", "DTSTART:20270108T130000"];
    const text = calendar(
      event(...series, "RRULE:FREQ=WEEKLY;COUNT=4"),
      event("UID:fridays", "RECURRENCE-ID:20270115T130000", "SUMMARY:Concert", "DTSTART:20270114T110000"),
      event("UID:fridays", "RECURRENCE-ID:20270122T130000Z", "STATUS:CANCELLED", "DTSTART:20270122T130000"),
    );
    const events = read(text, "Europe/London");
    expect(
      events.flatMap(({ title, kind, occurrences }) =>
        occurrences.map((one) => [title, kind, one.firstDay, one.startsAt]),
      ),
    ).toEqual([
      ["Friday", "EARLY_FINISH", "2027-01-08", "13:00"],
      ["Friday", "EARLY_FINISH", "2027-01-29", "13:00"],
      ["Concert", "EARLY_FINISH", "2027-01-14", "11:00"],
    ]);
  });

  it("an event that was called off takes no place", () => {
    expect(days(calendar(event("CATEGORIES:TRIP", "DTSTART;VALUE=DATE:20270302", "STATUS:CANCELLED")))).toEqual([]);
  });

  it("alarms, other components, folded lines and any line ending are no hindrance", () => {
    const text = calendar(
      "BEGIN:VTODO\r\nUID:x\r\nSUMMARY:Buy chalk\r\nEND:VTODO",
      event(
        "CATEGORIES:HOL\r\n IDAY",
        "DTSTART;VALUE=DATE:2027\r\n\t0503",
        "BEGIN:VALARM\r\nACTION:DISPLAY\r\nDTSTART:never\r\nTRIGGER:-PT15M\r\nEND:VALARM",
      ),
    );
    for (const ending of ["\r\n", "\n"]) expect(days(text.replaceAll("\r\n", ending))).toEqual(["2027-05-03"]);
  });
});

describe("a file that cannot be taken", () => {
  const good = ["CATEGORIES:HOLIDAY", "DTSTART;VALUE=DATE:20270503"];
  const cases: readonly (readonly [string, string, readonly (readonly [number | null, string])[]])[] = [
    [
      "no calendar at all",
      "hello",
      [
        [null, "FILE"],
        [1, "FILE"],
      ],
    ],
    ["nothing", "", [[null, "FILE"]]],
    ["an empty calendar", calendar(), [[null, "FILE"]]],
    ["an event that is not closed", calendar(event(...good)).replace("END:VEVENT\r\n", ""), [[9, "END"]]],
    ["a line that is none", calendar(event(...good, "HOLIDAY 3 MAY")), [[9, "FILE"]]],
    ["no UID", calendar(event("UID:", ...good)), [[6, "UID"]]],
    ["no DTSTART", calendar(event("CATEGORIES:HOLIDAY")), [[4, "DTSTART"]]],
    ["an unknown category", calendar(event("CATEGORIES:INSET", good[1]!)), [[7, "CATEGORIES"]]],
    ["no category", calendar(event("DTSTART;VALUE=DATE:20270503")), [[4, "CATEGORIES"]]],
    ["two kinds at once", calendar(event("CATEGORIES:TRIP,HOLIDAY", good[1]!)), [[7, "CATEGORIES"]]],
    ["a term of a class", calendar(event("CATEGORIES:TERM,CLASS:4", good[1]!)), [[7, "CATEGORIES"]]],
    ["30 February", calendar(event(good[0]!, "DTSTART;VALUE=DATE:20270230")), [[8, "DTSTART"]]],
    ["the year 9999", calendar(event(good[0]!, "DTSTART;VALUE=DATE:99991231")), [[8, "DTSTART"]]],
    ["an end before the beginning", calendar(event(...good, "DTEND;VALUE=DATE:20270501")), [[9, "DTEND"]]],
    ["an end on the first day", calendar(event(...good, "DTEND;VALUE=DATE:20270503")), [[9, "DTEND"]]],
    ["DTEND and DURATION", calendar(event(...good, "DTEND;VALUE=DATE:20270504", "DURATION:P1D")), [[10, "DURATION"]]],
    ["a duration of hours for whole days", calendar(event(...good, "DURATION:PT5H")), [[9, "DURATION"]]],
    ["a negative duration", calendar(event(...good, "DURATION:-P5D")), [[9, "DURATION"]]],
    ["a holiday of two years", calendar(event(...good, "DURATION:P730D")), [[9, "DURATION"]]],
    ["a rule without an end", calendar(event(...good, "RRULE:FREQ=WEEKLY")), [[9, "RRULE"]]],
    ["a rule over three years", calendar(event(...good, "RRULE:FREQ=YEARLY;COUNT=9")), [[9, "RRULE"]]],
    ["a rule by the minute", calendar(event(...good, "RRULE:FREQ=MINUTELY;COUNT=9")), [[9, "RRULE"]]],
    [
      "a rule no day meets",
      calendar(event(...good, "RRULE:FREQ=DAILY;BYMONTH=2;BYMONTHDAY=30;COUNT=2")),
      [[9, "RRULE"]],
    ],
    ["a rule that is none", calendar(event(...good, "RRULE:EVERY FRIDAY")), [[9, "RRULE"]]],
    ["an endless step", calendar(event(...good, "RRULE:FREQ=DAILY;INTERVAL=1000000000;COUNT=2")), [[9, "RRULE"]]],
    ["a period", calendar(event(...good, "RDATE;VALUE=PERIOD:20270504T090000Z/PT1H")), [[9, "RDATE"]]],
    ["an early finish without a time", calendar(event("CATEGORIES:EARLY-FINISH", good[1]!)), [[8, "DTSTART"]]],
    ["a holiday with a time", calendar(event("CATEGORIES:HOLIDAY", "DTSTART:20270503T120000")), [[8, "DTSTART"]]],
    [
      "a zone the file does not define",
      calendar(event("CATEGORIES:EARLY-FINISH", "DTSTART;TZID=Europe/London:20270503T120000")),
      [[8, "DTSTART"]],
    ],
    ["one UID for two events", calendar(event("UID:a", ...good), event("UID:a", ...good)), [[10, "UID"]]],
    [
      "a change of a day the series does not have",
      calendar(event("UID:a", ...good), event("UID:a", "RECURRENCE-ID;VALUE=DATE:20270504", ...good)),
      [[13, "RECURRENCE-ID"]],
    ],
  ];
  it.each(cases)("%s", (_, text, expected) => {
    const issues = issuesOf(text);
    expect(issues.map(({ line, about }) => [line, about])).toEqual(expected);
    for (const { problem, expected: instead } of issues) {
      expect(problem.length).toBeGreaterThan(5);
      expect(instead.length).toBeGreaterThan(5);
    }
  });

  it("all its mistakes are named at once, in the order of the file", () => {
    const text = calendar(
      event("CATEGORIES:INSET", "DTSTART;VALUE=DATE:20270230"),
      event(...good),
      event("DTSTART;VALUE=DATE:20270504", "RRULE:FREQ=DAILY"),
    );
    expect(issuesOf(text).map(({ about }) => about)).toEqual(["CATEGORIES", "DTSTART", "CATEGORIES", "RRULE"]);
  });

  it("50 MB are refused unread", () => {
    const issues = issuesOf(`BEGIN:VCALENDAR\r\n${"X".repeat(50_000_000)}`);
    expect(issues.map(({ about }) => about)).toEqual(["FILE"]);
    expect(issues[0]!.problem).toContain("50000017 characters");
  });

  it("a changed copy of a good file is read or refused, never a crash", () => {
    const file = calendar(
      london,
      event("CATEGORIES:TERM", "SUMMARY:Spring", "DTSTART;VALUE=DATE:20270105", "DTEND;VALUE=DATE:20270326"),
      event(
        "UID:f",
        "CATEGORIES:EARLY-FINISH",
        "DTSTART;TZID=Europe/London:20270108T130000",
        "RRULE:FREQ=WEEKLY;COUNT=4",
      ),
      event("UID:f", "RECURRENCE-ID;TZID=Europe/London:20270115T130000", "DTSTART;TZID=Europe/London:20270114T110000"),
      event("CATEGORIES:HOLIDAY", "DTSTART;VALUE=DATE:20270215", "DURATION:P5D", "EXDATE;VALUE=DATE:20270216"),
    );
    const lines = file.split("\r\n");
    const change = fc.oneof(
      fc.nat(lines.length - 1).map((at) => lines.filter((_, line) => line !== at).join("\r\n")),
      fc
        .tuple(fc.nat(lines.length - 1), fc.nat(lines.length - 1))
        .map(([a, b]) => lines.map((line, at) => (at === a ? lines[b] : at === b ? lines[a] : line)).join("\r\n")),
      fc
        .tuple(
          fc.nat(file.length - 1),
          fc.constantFrom("0", "9", "Z", ";", ":", ",", "=", "\\", "\r\n", "\0", "-", '"'),
        )
        .map(([at, put]) => file.slice(0, at) + put + file.slice(at + 1)),
      fc.nat(file.length).map((at) => file.slice(0, at)),
    );
    fc.assert(
      fc.property(change, (text) => {
        const result = readICalendar(text, "Europe/London");
        return result.ok || result.error.length > 0;
      }),
      { numRuns: 600 },
    );
  });
});
