import fc from "fast-check";
import { addDays } from "../../src/domain/calendar/dates.js";
import {
  settleCalendar,
  type CalendarDay,
  type CalendarEntry,
  type CalendarEvent,
  type SchoolCalendar,
} from "../../src/domain/calendar/school-calendar.js";

const classes = [
  { id: "id-a", name: "Class A" },
  { id: "id-b", name: "Class B" },
];
const term: CalendarEvent = {
  uid: "term",
  line: 2,
  kind: "TERM",
  classes: [],
  title: "Term",
  occurrences: [{ firstDay: "2027-01-04", lastDay: "2027-03-31", startsAt: null }],
};
/** Events that never contradict one another: each has a kind of day and a scope to itself. */
const events = fc
  .uniqueArray(
    fc.record({
      uid: fc.constantFrom("one", "two", "three"),
      scope: fc.constantFrom("", "Class A", "class b"),
      first: fc.integer({ min: 0, max: 60 }),
      length: fc.integer({ min: 1, max: 6 }),
      again: fc.boolean(),
    }),
    { selector: ({ scope }) => scope, maxLength: 3 },
  )
  .map((drawn): CalendarEvent[] => [
    term,
    ...drawn.map(({ uid, scope, first, length, again }, at): CalendarEvent => {
      const from = addDays("2027-01-04", first);
      const until = addDays(from, length - 1);
      const once = { firstDay: from, lastDay: until, startsAt: null };
      const later = { firstDay: addDays(from, 14), lastDay: addDays(until, 14), startsAt: null };
      return {
        uid: `${uid}-${scope}`,
        line: 10 * at + 10,
        kind: "TRIP",
        classes: scope === "" ? [] : [scope],
        title: uid,
        occurrences: again ? [once, later] : [once],
      };
    }),
  ]);
const byHand = fc
  .uniqueArray(fc.tuple(fc.integer({ min: 0, max: 60 }), fc.constantFrom(null, "id-a")), {
    selector: ([at, scope]) => `${at} ${scope}`,
    maxLength: 5,
  })
  .map((days) =>
    days.map(([at, schoolClassId]): CalendarDay => ({
      eventUid: null,
      schoolClassId,
      date: addDays("2027-01-04", at),
      kind: "HOLIDAY",
      title: "By hand",
      endsAt: null,
    })),
  );

const settle = (loaded: readonly CalendarEvent[], standing: SchoolCalendar) => {
  const settled = settleCalendar(loaded, { classes, ...standing }, "2027-01-10");
  if (!settled.ok) throw new Error(JSON.stringify(settled.error));
  return settled.value;
};
const afterLoading = (loaded: readonly CalendarEvent[], standing: SchoolCalendar): SchoolCalendar => {
  const { calendar } = settle(loaded, standing);
  const own = <T extends { readonly eventUid: string | null }>(rows: readonly T[]) =>
    rows.filter(({ eventUid }) => eventUid === null);
  return {
    terms: [...own(standing.terms), ...calendar.terms],
    days: [...own(standing.days), ...calendar.days],
  };
};
/** Days of a list of entries, one text each. */
const daysOf = (entries: readonly CalendarEntry[]) =>
  entries
    .flatMap(({ firstDay, lastDay, ...rest }) => {
      const days: string[] = [];
      for (let day = firstDay; day <= lastDay; day = addDays(day, 1)) days.push(JSON.stringify({ day, ...rest }));
      return days;
    })
    .sort();

describe("what a calendar file changes", () => {
  it("a file loaded twice changes nothing the second time, and days set by hand stand where they stood", () => {
    fc.assert(
      fc.property(events, byHand, (loaded, days) => {
        const once = afterLoading(loaded, { terms: [], days });
        const { change } = settle(loaded, once);
        expect([change.added, change.changed, change.removed]).toEqual([[], [], []]);
        expect(afterLoading(loaded, once)).toEqual(once);
        for (const day of days) {
          const there = once.days.filter((one) => one.date === day.date && one.schoolClassId === day.schoolClassId);
          expect(there).toEqual([day]);
        }
      }),
    );
  });

  it("the changes take what stood to what stands, day by day", () => {
    fc.assert(
      fc.property(events, events, byHand, (first, second, days) => {
        const before = afterLoading(first, { terms: [], days });
        const { change } = settle(second, before);
        const stood = settle(first, { terms: [], days }).change.added;
        const stands = settle(second, { terms: [], days }).change.added;
        const gone = new Set(daysOf([...change.removed, ...change.changed.map((one) => one.before)]));
        const come = daysOf([...change.added, ...change.changed.map((one) => one.after)]);
        expect([...daysOf(stood).filter((day) => !gone.has(day)), ...come].sort()).toEqual(daysOf(stands));
        expect(change.unchanged + change.added.length + change.changed.length).toBe(stands.length);
      }),
    );
  });

  it("a trip may end early, a holiday is nothing else, and school ends once a day", () => {
    const on = (kind: CalendarEvent["kind"], uid: string, startsAt: string | null = null): CalendarEvent => ({
      uid,
      line: 20,
      kind,
      classes: [],
      title: uid,
      occurrences: [{ firstDay: "2027-02-02", lastDay: "2027-02-02", startsAt }],
    });
    const early = on("EARLY_FINISH", "early", "12:00");
    const nothing = { classes, terms: [], days: [] };
    const together = (...loaded: CalendarEvent[]) => settleCalendar([term, ...loaded], nothing, "2027-01-10").ok;
    expect(together(on("TRIP", "trip"), early)).toBe(true);
    expect(together(early, on("EARLY_FINISH", "again", "12:00"))).toBe(true);
    expect(together(early, on("EARLY_FINISH", "later", "12:30"))).toBe(false);
    expect(together(on("HOLIDAY", "holiday"), early)).toBe(false);
    expect(together(on("TRIP", "trip"), on("HOLIDAY", "holiday"))).toBe(false);
  });
});
