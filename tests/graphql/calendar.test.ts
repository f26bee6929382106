import { readWeekInputs } from "../../src/app/read-brief.js";
import { appointByOperator } from "../../src/database/appoint-by-operator.js";
import { calendar, event, london } from "../support/calendar-file.js";
import { newKey } from "../support/app.js";
import { classId, localOf, schoolId, useServedApp, type Household } from "../support/served-app.js";
import { DAY, ENROL } from "./documents.js";

const served = useServedApp();
const ISSUES = "... on DocumentRefused { issues { line path problem expected nearest } }";
const SCHOOL = `__typename ... on UserError { message } ... on InvalidInput { issues { field problem fix } }
  ... on SchoolPayload { school { id name revision terms { name firstDay lastDay } days { date kind title endsAt } classes { id name facility breaks { key startsAt minutes slots energyShare } } } }`;
const mutation = (field: string, more = "") => {
  const input = `${field[0]!.toUpperCase()}${field.slice(1)}Input`;
  return `mutation M($input: ${input}!) { ${field}(input: $input) { ${SCHOOL} ${more} } }`;
};
const LOAD_CALENDAR = mutation("loadCalendar", ISSUES);
const ENTRY = "{ kind title firstDay lastDay endsAt schoolClass { name } }";
const CHANGE = `query Change($schoolId: ID!, $calendar: String!) { calendarChange(schoolId: $schoolId, calendar: $calendar) { __typename
  ... on UserError { message } ${ISSUES} ... on CalendarChange { seenRevision added ${ENTRY} changed { before ${ENTRY} after ${ENTRY} } removed ${ENTRY}
  unchanged setByHand ${ENTRY} warnings { line path problem expected } } } }`;

let admin: string;
const JURISDICTION = "Calendar county";
beforeAll(async () => {
  admin = served.newcomer();
  await served.ask(admin, "{ me { person { id } } }");
  const done = await appointByOperator(served.inProcess.database.ownerUrl, admin, { jurisdiction: JURISDICTION });
  expect(done.kind).toBe("APPOINTED");
});

const send = async (person: string, document: string, input: Record<string, unknown>) =>
  (await served.send(person, document, input)) as any;
const lunch = { key: "lunch", name: "Lunch", startsAt: "12:30", minutes: 30, slots: ["MAIN", "VEGETABLE", "FRUIT"] };
const snack = { key: "snack", name: "Morning break", startsAt: "10:15", minutes: 15, slots: ["FRUIT"] };

/** A school of the county with one class that heats food at lunch. */
async function aSchool(timeZone = "Europe/London") {
  const made = await send(admin, mutation("registerSchool"), {
    name: `School ${newKey()}`,
    timeZone,
    jurisdiction: JURISDICTION,
  });
  expect(made.__typename).toBe("SchoolPayload");
  const id: string = made.school.id;
  const withClass = await send(admin, mutation("addSchoolClass"), {
    schoolId: id,
    seenRevision: 1,
    name: "Year 8",
    facility: "REHEATING",
    breaks: [snack, lunch],
  });
  expect(withClass.__typename).toBe("SchoolPayload");
  const revision = async () =>
    (
      await served.ask<{ school: { revision: number } }>(admin, "query R($id: ID!) { school(id: $id) { revision } }", {
        id,
      })
    ).school.revision;
  return {
    id,
    classId: withClass.school.classes[0].id as string,
    revision,
    load: async (text: string, change: Record<string, unknown> = {}) =>
      send(admin, LOAD_CALENDAR, { schoolId: id, seenRevision: await revision(), calendar: text, ...change }),
    change: async (text: string, person = admin) =>
      (await served.ask<any>(person, CHANGE, { schoolId: id, calendar: text })).calendarChange,
    send: async (field: string, input: Record<string, unknown>, person = admin) =>
      send(person, mutation(field), { schoolId: id, seenRevision: await revision(), ...input }),
  };
}

const spring = event(
  "UID:spring",
  "CATEGORIES:TERM",
  "SUMMARY:Spring",
  "DTSTART;VALUE=DATE:20270105",
  "DTEND;VALUE=DATE:20270326",
);
const halfTerm = event(
  "UID:half",
  "CATEGORIES:HOLIDAY",
  "SUMMARY:Half-term",
  "DTSTART;VALUE=DATE:20270215",
  "DURATION:P5D",
);
const museum = (day: string) =>
  event("UID:museum", "CATEGORIES:TRIP,CLASS:year 8", "SUMMARY:Museum", `DTSTART;VALUE=DATE:${day}`);
const concert = event(
  "UID:concert",
  "CATEGORIES:EARLY-FINISH",
  "SUMMARY:Concert",
  "DTSTART;TZID=Europe/London:20270312T120000",
);
const file = (...events: string[]) => calendar(london, ...events);

describe("a calendar file", () => {
  it("becomes terms and days of the school, after a look at what it changes", async () => {
    const school = await aSchool();
    const text = file(spring, halfTerm, museum("20270302"), concert);
    const offer = await school.change(text);
    expect(offer).toMatchObject({ __typename: "CalendarChange", changed: [], removed: [], unchanged: 0, warnings: [] });
    expect(offer.added).toEqual([
      { kind: "TERM", title: "Spring", firstDay: "2027-01-05", lastDay: "2027-03-25", endsAt: null, schoolClass: null },
      {
        kind: "HOLIDAY",
        title: "Half-term",
        firstDay: "2027-02-15",
        lastDay: "2027-02-19",
        endsAt: null,
        schoolClass: null,
      },
      {
        kind: "TRIP",
        title: "Museum",
        firstDay: "2027-03-02",
        lastDay: "2027-03-02",
        endsAt: null,
        schoolClass: { name: "Year 8" },
      },
      {
        kind: "EARLY_FINISH",
        title: "Concert",
        firstDay: "2027-03-12",
        lastDay: "2027-03-12",
        endsAt: "12:00",
        schoolClass: null,
      },
    ]);
    const before = await school.revision();
    const loaded = await school.load(text, { seenRevision: offer.seenRevision });
    expect(loaded.school).toMatchObject({
      revision: before + 1,
      terms: [{ name: "Spring", firstDay: "2027-01-05", lastDay: "2027-03-25" }],
    });
    expect(loaded.school.days.map((day: any) => `${day.date} ${day.kind} ${day.endsAt}`)).toEqual([
      ...["15", "16", "17", "18", "19"].map((day) => `2027-02-${day} HOLIDAY null`),
      "2027-03-02 TRIP null",
      "2027-03-12 EARLY_FINISH 12:00",
    ]);
    // Once more it changes nothing.
    expect(await school.change(text)).toMatchObject({ added: [], changed: [], removed: [], unchanged: 4 });
  });

  it("loaded again, changes events of the same UID and takes away those that are gone", async () => {
    const school = await aSchool();
    await school.load(file(spring, halfTerm, museum("20270302"), concert));
    const text = file(spring, museum("20270309"), concert.replace("T120000", "T113000"));
    const offer = await school.change(text);
    expect(offer.changed.map(({ before, after }: any) => [before.firstDay, after.firstDay, after.endsAt])).toEqual([
      ["2027-03-02", "2027-03-09", null],
      ["2027-03-12", "2027-03-12", "11:30"],
    ]);
    expect(offer.removed.map(({ title }: any) => title)).toEqual(["Half-term"]);
    expect(offer).toMatchObject({ added: [], unchanged: 1 });
    const { school: after } = await school.load(text);
    expect(after.days.map((day: any) => `${day.date} ${day.kind} ${day.endsAt}`)).toEqual([
      "2027-03-09 TRIP null",
      "2027-03-12 EARLY_FINISH 11:30",
    ]);
  });

  it("gives way to what was set by hand, and leaves that alone", async () => {
    const school = await aSchool();
    await school.send("setTerm", { name: "Summer", firstDay: "2027-04-12", lastDay: "2027-07-20" });
    await school.load(file(spring, halfTerm));
    await school.send("setSchoolDay", { date: "2027-02-17", kind: "TRIP", title: "Woods, by hand" });
    const summer = event(
      "UID:summer",
      "CATEGORIES:TERM",
      "SUMMARY:Summer",
      "DTSTART;VALUE=DATE:20270419",
      "DTEND;VALUE=DATE:20270721",
    );
    const text = file(spring, halfTerm, summer);
    const offer = await school.change(text);
    expect(offer).toMatchObject({ added: [], removed: [], changed: [] });
    expect(offer.setByHand.map(({ title, firstDay }: any) => [title, firstDay])).toEqual([
      ["Half-term", "2027-02-17"],
      ["Summer", "2027-04-19"],
    ]);
    expect(offer.warnings.map(({ problem }: any) => problem)).toEqual([
      "Summer is left out: Summer, 2027-04-12 to 2027-07-20, was set by hand",
    ]);
    const { school: after } = await school.load(text);
    expect(after.terms.map(({ firstDay }: any) => firstDay)).toEqual(["2027-01-05", "2027-04-12"]);
    expect(after.days.filter(({ date }: any) => date === "2027-02-17")).toEqual([
      { date: "2027-02-17", kind: "TRIP", title: "Woods, by hand", endsAt: null },
    ]);
    // An empty file takes away what files brought, and nothing else.
    const emptied = await school.load(
      calendar(event("CATEGORIES:TRIP", "STATUS:CANCELLED", "DTSTART:20270302T090000")),
    );
    expect(emptied.school.terms.map(({ name }: any) => name)).toEqual(["Summer"]);
    expect(emptied.school.days.map(({ title }: any) => title)).toEqual(["Woods, by hand"]);
  });

  it("warns when the term that is running goes, and of holidays outside terms", async () => {
    const school = await aSchool();
    // The tests' clock stands at 25 November 2026.
    const autumn = event("UID:autumn", "CATEGORIES:TERM", "DTSTART;VALUE=DATE:20260901", "DTEND;VALUE=DATE:20261219");
    await school.load(file(autumn));
    const away = event("CATEGORIES:HOLIDAY", "DTSTART;VALUE=DATE:20270401");
    const { warnings } = await school.change(file(spring, away));
    expect(warnings.map(({ line, problem }: any) => [line > 1, problem])).toEqual([
      [false, "the running term Term is not in it and goes"],
      [true, "2027-04-01 lies in no term"],
    ]);
  });

  const wrong: readonly (readonly [string, () => string, readonly string[]])[] = [
    ["that is broken", () => file(spring).replace("END:VCALENDAR", ""), ["VCALENDAR is not closed"]],
    [
      "with a day outside every term",
      () => file(spring, event("CATEGORIES:TRIP", "DTSTART;VALUE=DATE:20270401")),
      ["2027-04-01 lies in no term"],
    ],
    [
      "with overlapping terms",
      () => file(spring, event("CATEGORIES:TERM", "DTSTART;VALUE=DATE:20270322", "DTEND;VALUE=DATE:20270701")),
      ["Term overlaps Spring, 2027-01-05 to 2027-03-25, of line 19"],
    ],
    [
      "with a class of another school",
      () => file(spring, museum("20270302").replace("year 8", "Class 4")),
      ['there is no class "Class 4" at this school'],
    ],
    [
      "that says two things of one day",
      () => file(spring, halfTerm, event("CATEGORIES:TRIP", "DTSTART;VALUE=DATE:20270216")),
      ["2027-02-16 is said to be something else by the event on line 27"],
    ],
    [
      "with many mistakes",
      () =>
        file(
          event("CATEGORIES:INSET", "DTSTART;VALUE=DATE:20270104"),
          event("CATEGORIES:EARLY-FINISH", "DTSTART;VALUE=DATE:20270230"),
        ),
      ['"INSET" is unknown', "20270230 is no day of the calendar"],
    ],
    ["of 200 kB", () => "X".repeat(200_001), ["has 200001 characters"]],
  ];
  it.each(wrong)("%s is refused whole, with lines, and nothing is written", async (_, text, problems) => {
    const school = await aSchool();
    await school.load(file(spring, museum("20270302")));
    const before = await served.everyRow();
    const refused = await school.load(text());
    expect(refused.__typename).toBe("DocumentRefused");
    expect(refused.issues.map(({ problem }: any) => problem)).toEqual(problems);
    for (const { line, expected } of refused.issues) {
      expect(line).toBeGreaterThan(0);
      expect(expected.length).toBeGreaterThan(5);
    }
    expect((await school.change(text())).issues).toEqual(refused.issues);
    expect(await served.everyRow()).toBe(before);
  });

  it("names the nearest word for a category and a class", async () => {
    const school = await aSchool();
    const refused = await school.load(file(spring, event("CATEGORIES:HOLIDAYS", "DTSTART;VALUE=DATE:20270215")));
    expect(refused.issues[0]).toMatchObject({ path: "CATEGORIES" });
    expect(refused.issues[0].nearest[0]).toBe("HOLIDAY");
    const other = await school.load(file(spring, museum("20270302").replace("year 8", "Year 9")));
    expect(other.issues[0].nearest).toEqual(["Year 8"]);
  });

  it("of 50 MB is refused with the body that brings it", async () => {
    const school = await aSchool();
    const response = await fetch(`${served.url}/graphql`, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ query: CHANGE, variables: { schoolId: school.id, calendar: "X".repeat(50_000_000) } }),
    }).catch(() => null);
    // The server may hang up before all of it was sent.
    expect(response === null || response.status === 413).toBe(true);
  });

  it("of another school, or from somebody who administers none, is refused", async () => {
    const school = await aSchool();
    const text = file(spring);
    for (const person of ["demo:ruth", "demo:ana", served.newcomer()]) {
      const input = { schoolId: school.id, seenRevision: await school.revision(), calendar: text };
      expect((await send(person, LOAD_CALENDAR, input)).__typename).toBe("NotAppointed");
      expect((await school.change(text, person)).__typename).toBe("NotAppointed");
    }
    const offer = await served.ask<any>(admin, CHANGE, { schoolId: schoolId("primary"), calendar: text });
    expect(offer.calendarChange.__typename).toBe("NotAppointed");
  });

  it("loaded twice at once on the same reading is loaded once", async () => {
    const school = await aSchool();
    const seenRevision = await school.revision();
    const answers = await Promise.all(
      [file(spring, halfTerm), file(spring)].map((text) => school.load(text, { seenRevision })),
    );
    expect(answers.map(({ __typename }) => __typename).sort()).toEqual(["RevisionPassed", "SchoolPayload"]);
  });
});

describe("terms and classes over the API", () => {
  it("terms follow one another; one takes the place of another or goes", async () => {
    const school = await aSchool();
    const term = (firstDay: string, lastDay: string, more = {}) =>
      school.send("setTerm", { name: "T", firstDay, lastDay, ...more });
    expect((await term("2027-01-05", "2027-03-25")).school.terms).toHaveLength(1);
    const overlap = await term("2027-03-25", "2027-07-20");
    expect(overlap.issues).toMatchObject([{ field: "firstDay", problem: expect.stringContaining("would overlap T") }]);
    expect((await term("2026-12-01", "2027-01-05")).issues).toMatchObject([{ field: "lastDay" }]);
    expect((await term("2027-04-12", "2027-04-11")).issues).toMatchObject([{ field: "lastDay" }]);
    expect((await term("2027-01-05", "2027-03-24", { replaces: "2027-01-06" })).issues).toMatchObject([
      { field: "replaces" },
    ]);
    const changed = await term("2027-01-06", "2027-03-24", { replaces: "2027-01-05" });
    expect(changed.school.terms).toEqual([{ name: "T", firstDay: "2027-01-06", lastDay: "2027-03-24" }]);
    expect((await school.send("removeTerm", { firstDay: "2027-01-05" })).issues).toMatchObject([{ field: "firstDay" }]);
    expect((await school.send("removeTerm", { firstDay: "2027-01-06" })).school.terms).toEqual([]);
  });

  const breaks: readonly (readonly [string, readonly object[], string])[] = [
    ["none", [], "breaks"],
    ["out of order", [lunch, snack], "breaks.1.startsAt"],
    ["one within another", [snack, { ...lunch, startsAt: "10:20" }], "breaks.1.startsAt"],
    ["before school", [{ ...snack, startsAt: "05:30" }], "breaks.0.startsAt"],
    ["after school", [{ ...lunch, startsAt: "19:45" }], "breaks.0.startsAt"],
    ["of two minutes", [{ ...lunch, minutes: 2 }], "breaks.0.minutes"],
    ["with nothing to eat", [{ ...lunch, slots: [] }], "breaks.0.slots"],
    ["with one key twice", [snack, { ...lunch, key: "snack" }], "breaks.1"],
    ["with a key that is none", [{ ...lunch, key: "The Lunch" }], "breaks.0.key"],
    [
      "of more than a day's energy",
      [
        { ...snack, energyShare: 0.6 },
        { ...lunch, energyShare: 0.6 },
      ],
      "breaks",
    ],
  ];
  it.each(breaks)("breaks %s are refused, for a new class and a known one", async (_, list, field) => {
    const school = await aSchool();
    const before = await served.everyRow();
    const added = await school.send("addSchoolClass", { name: "Year 9", facility: "NEITHER", breaks: list });
    expect(added.issues.map((issue: any) => issue.field)).toEqual([field]);
    const { id: _school, ...ofClass } = {
      id: "",
      schoolClassId: school.classId,
      seenRevision: await school.revision(),
    };
    const changed = await send(admin, mutation("changeSchoolClass"), { ...ofClass, breaks: list });
    expect(changed.issues.map((issue: any) => issue.field)).toEqual([field]);
    expect(await served.everyRow()).toBe(before);
  });

  it("a class gets another name or other breaks; two of one school never have the same", async () => {
    const school = await aSchool();
    const change = async (input: Record<string, unknown>) =>
      send(admin, mutation("changeSchoolClass"), {
        schoolClassId: school.classId,
        seenRevision: await school.revision(),
        ...input,
      });
    const later = { ...lunch, startsAt: "12:45", energyShare: 0.3 };
    const { school: after } = await change({ breaks: [later] });
    expect(after.classes).toMatchObject([
      {
        name: "Year 8",
        facility: "REHEATING",
        breaks: [{ key: "lunch", startsAt: "12:45", minutes: 30, energyShare: 0.3 }],
      },
    ]);
    await school.send("addSchoolClass", { name: "Year 9", facility: "NEITHER", breaks: [lunch] });
    expect((await change({ name: "year 9" })).issues).toMatchObject([{ field: "name" }]);
    expect((await change({})).issues).toMatchObject([{ field: "name", problem: "there is nothing to change" }]);
    expect((await change({ name: "Year 8b" })).school.classes.map(({ name }: any) => name)).toEqual([
      "Year 8b",
      "Year 9",
    ]);
    const again = await school.send("addSchoolClass", { name: "YEAR 9", facility: "NEITHER", breaks: [lunch] });
    expect(again.issues).toMatchObject([{ field: "name" }]);
  });

  it.each(["Europe/Londn", "Mars/Base", "", "+01:00", "GMT+25", "Europe/London; drop table school"])(
    "a school in the zone %p is not registered",
    async (timeZone) => {
      const before = await served.everyRow();
      const name = `School ${newKey()}`;
      const refused = await send(admin, mutation("registerSchool"), { name, timeZone, jurisdiction: JURISDICTION });
      expect(refused.issues).toMatchObject([{ field: "timeZone" }]);
      expect(await served.everyRow()).toBe(before);
    },
  );

  it("two schools never have the same name", async () => {
    const input = { name: "Quillbrook Primary School", timeZone: "Europe/London", jurisdiction: JURISDICTION };
    expect((await send(admin, mutation("registerSchool"), input)).issues).toMatchObject([{ field: "name" }]);
    const name = `School ${newKey()}`;
    const twins = await Promise.all([1, 2].map(() => send(admin, mutation("registerSchool"), { ...input, name })));
    expect(twins.map(({ __typename }) => __typename).sort()).toEqual(["InvalidInput", "SchoolPayload"]);
  });
});

describe("plans follow the calendar", () => {
  /** Days of the brief of the week: date, breaks, facility. */
  async function briefOf(home: Household, date: string): Promise<string[]> {
    const { app, database } = served.inProcess;
    const session = database.db.openRead(await database.db.signIn(home.coordinator, "x"));
    try {
      const inputs = await session.read((tx) => readWeekInputs(app, tx, localOf(home.id), date));
      return inputs!
        .assemble()
        .children.flatMap(({ days }) =>
          days.map((day) => `${day.date} ${day.breaks.map(({ key }) => key).join("+")} ${day.facility}`),
        );
    } finally {
      await session.close();
    }
  }

  /**
   * Two weeks around the change of the clocks of each zone. Written in UTC, both early finishes mean 12:15 at school: `before` in
   * the first week, `after` in the second. The offsets are those of the IANA time zone database.
   */
  const places = [
    {
      zone: "Europe/London",
      // An hour ahead, before and after.
      neighbour: "Europe/Paris",
      // To summer time on Sunday 28 March 2027: +00:00, then +01:00.
      monday: ["2027-03-22", "2027-03-29"],
      before: "20270326T121500Z",
      after: "20270402T111500Z",
      term: ["20270301", "20270401"],
      last: "2027-04-01",
      dates: ["2027-03-22", "2027-03-24", "2027-03-26", "2027-03-29", "2027-03-30", "2027-03-31", "2027-04-01"],
    },
    {
      zone: "Australia/Sydney",
      // Without summer time: an hour behind before, the same after.
      neighbour: "Australia/Brisbane",
      // To standard time on Sunday 4 April 2027: +11:00, then +10:00.
      monday: ["2027-03-29", "2027-04-05"],
      before: "20270402T011500Z",
      after: "20270409T021500Z",
      term: ["20270127", "20270408"],
      last: "2027-04-08",
      dates: ["2027-03-29", "2027-03-31", "2027-04-02", "2027-04-05", "2027-04-06", "2027-04-07", "2027-04-08"],
    },
  ] as const;
  const cases = places.flatMap((place) =>
    [place.zone, place.neighbour].map((household) => [place.zone, household, place] as const),
  );

  it.each(cases)("school in %s, household in %s", async (zone, household, place) => {
    const school = await aSchool(zone);
    const home = await served.household().child({}, null).found();
    await served.inProcess.database.owner`update household set time_zone = ${household} where id = ${localOf(home.id)}`;
    const enrolled = await home.change(ENROL, {
      childId: home.children[0],
      schoolClassId: school.classId,
      fromDate: "2026-09-01",
    });
    expect(enrolled.__typename).toBe("EnrolChildPayload");
    const [first, second] = place.monday;
    const dayAfter = (days: number, monday: string) =>
      new Date(Date.parse(`${monday}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
    expect(await briefOf(home, first)).toEqual([]);

    const whole = (date: string) => date.replaceAll("-", "");
    const term = (until: string) =>
      event(
        "UID:term",
        "CATEGORIES:TERM",
        `DTSTART;VALUE=DATE:${place.term[0]}`,
        `DTEND;VALUE=DATE:${whole(dayAfter(1, until))}`,
      );
    const days = [
      event("UID:holiday", "CATEGORIES:HOLIDAY", `DTSTART;VALUE=DATE:${whole(dayAfter(1, first))}`),
      event("UID:trip", "CATEGORIES:TRIP,CLASS:Year 8", `DTSTART;VALUE=DATE:${whole(dayAfter(2, first))}`),
      event("UID:half-day", "CATEGORIES:HOLIDAY", `DTSTART;VALUE=DATE:${whole(dayAfter(3, first))}`),
      event("UID:early", "CATEGORIES:EARLY-FINISH", `DTSTART:${place.before}`),
    ];
    const usual = "snack+lunch REHEATING";
    expect(
      (
        await school.load(
          calendar(
            term(dayAfter(4, second)),
            ...days,
            event("UID:early-2", "CATEGORIES:EARLY-FINISH", `DTSTART:${place.after}`),
          ),
        )
      ).__typename,
    ).toBe("SchoolPayload");
    expect(await briefOf(home, first)).toEqual([
      `${dayAfter(0, first)} ${usual}`,
      `${dayAfter(2, first)} snack+lunch NEITHER`,
      // 12:15 on the school's clock, before lunch at 12:30; an hour off it would fall away or stay.
      `${dayAfter(4, first)} snack REHEATING`,
    ]);
    expect(await briefOf(home, second)).toEqual([
      ...[0, 1, 2, 3].map((day) => `${dayAfter(day, second)} ${usual}`),
      `${dayAfter(4, second)} snack REHEATING`,
    ]);

    // The term ends on Thursday, and what was special about the first week is gone.
    expect((await school.load(calendar(term(place.last)))).__typename).toBe("SchoolPayload");
    expect(await briefOf(home, first)).toEqual([0, 1, 2, 3, 4].map((day) => `${dayAfter(day, first)} ${usual}`));
    expect(await briefOf(home, second)).toEqual([0, 1, 2, 3].map((day) => `${dayAfter(day, second)} ${usual}`));
  });

  it("a holiday in a planned week blocks its box, and lets it go when the file no longer has it", async () => {
    const home = await served.household().child({}, "class-4").planned(DAY).found();
    const states = async () => (await home.week(DAY))!.plan.boxes.map(({ date, state }) => `${date} ${state}`);
    const planned = await states();
    expect(planned).toContain("2027-01-13 PLANNED");
    const load = async (...events: string[]) => {
      const { school } = await served.ask<any>("demo:ruth", "query R($id: ID!) { school(id: $id) { revision } }", {
        id: schoolId("primary"),
      });
      const input = { schoolId: schoolId("primary"), seenRevision: school.revision, calendar: calendar(...events) };
      expect((await send("demo:ruth", LOAD_CALENDAR, input)).__typename).toBe("SchoolPayload");
    };
    await load(event("CATEGORIES:HOLIDAY,CLASS:Class 4", "DTSTART;VALUE=DATE:20270113"));
    expect(await states()).toEqual(planned.map((box) => box.replace("2027-01-13 PLANNED", "2027-01-13 BLOCKED")));
    await load(event("CATEGORIES:HOLIDAY,CLASS:Class 4", "DTSTART;VALUE=DATE:20270120"));
    expect(await states()).toEqual(planned);
  });

  it("a break that a class no longer has blocks the boxes planned for it", async () => {
    const home = await served.household().child({}, "reception").planned(DAY).found();
    const query =
      "query R($id: ID!) { school(id: $id) { revision classes { id breaks { key name startsAt minutes slots } } } }";
    const ofReception = async () => {
      const { school } = await served.ask<any>("demo:ruth", query, { id: schoolId("primary") });
      const { breaks } = school.classes.find(({ id }: any) => id === classId("reception"));
      return { revision: school.revision as number, breaks: breaks as { key: string }[] };
    };
    const change = async (breaks: readonly object[]) => {
      const seenRevision = (await ofReception()).revision;
      const input = { schoolClassId: classId("reception"), seenRevision, breaks };
      expect((await send("demo:ruth", mutation("changeSchoolClass"), input)).__typename).toBe("SchoolPayload");
    };
    const states = async () => [...new Set((await home.week(DAY))!.plan.boxes.map(({ state }) => state))];
    const { breaks } = await ofReception();
    expect(breaks.map(({ key }) => key)).toEqual(["morning-break", "lunch"]);
    expect(await states()).toEqual(["PLANNED"]);
    await change(breaks.filter(({ key }) => key === "lunch"));
    expect(await states()).toEqual(["BLOCKED"]);
    await change(breaks);
    expect(await states()).toEqual(["PLANNED"]);
  });

  it("a term set shorter by hand blocks what lies behind its end", async () => {
    const home = await served.household().child({}, "class-4").planned(DAY).found();
    const ruth = async (field: string, input: Record<string, unknown>) => {
      const { school } = await served.ask<any>("demo:ruth", "query R($id: ID!) { school(id: $id) { revision } }", {
        id: schoolId("primary"),
      });
      const done = await send("demo:ruth", mutation(field), {
        schoolId: schoolId("primary"),
        seenRevision: school.revision,
        ...input,
      });
      expect(done.__typename).toBe("SchoolPayload");
    };
    const blocked = async () =>
      (await home.week(DAY))!.plan.boxes.filter(({ state }) => state === "BLOCKED").map(({ date }) => date);
    const term = { name: "Spring", firstDay: "2027-01-05", replaces: "2027-01-05" };
    await ruth("setTerm", { ...term, lastDay: "2027-01-13" });
    expect(await blocked()).toEqual(["2027-01-14", "2027-01-15"]);
    await ruth("setTerm", { ...term, lastDay: "2027-03-25" });
    expect(await blocked()).toEqual([]);
  });
});
