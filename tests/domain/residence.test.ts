import fc from "fast-check";
import { addDays, daysBetween } from "../../src/domain/calendar/dates.js";
import {
  cycleOf,
  daysFrom,
  LONGEST_CYCLE,
  residenceKinds,
  wakesIn,
  type ProposalState,
  type Residence,
  type ResidencePattern,
} from "../../src/domain/calendar/residence.js";

const pattern = (starts: string, cycle: readonly string[], more: Partial<ResidencePattern> = {}): ResidencePattern => ({
  kind: "OWN_CYCLE",
  starts,
  ends: null,
  cycle,
  state: "ACCEPTED",
  ...more,
});
const of = (more: Partial<Residence>): Residence => ({ homes: ["A", "B"], patterns: [], exceptions: [], ...more });
/** One letter a day, blanks for the eye only. */
const calendar = (residence: Residence, from: string, until: string) =>
  daysFrom(from, until)
    .map((date) => wakesIn(residence, date)!.householdId)
    .join("");
const typed = (text: string) => text.replaceAll(" ", "");

/** Calendars worked out by hand, a letter a day; what each pattern is, is common practice. */
describe("patterns against calendars worked out by hand", () => {
  it("weeks in turn, over the end of the year: from Monday 21 December 2026 to Sunday 17 January 2027", () => {
    const residence = of({ patterns: [pattern("2026-12-21", cycleOf("ALTERNATE_WEEKS", "A", "B"))] });
    // 21-27 Dec, 28 Dec to 3 Jan, 4-10 Jan, 11-17 Jan.
    expect(calendar(residence, "2026-12-21", "2027-01-17")).toBe(typed("AAAAAAA BBBBBBB AAAAAAA BBBBBBB"));
  });

  it("2-2-3: from Monday 4 January 2027, four weeks, every weekend in turn", () => {
    const residence = of({ patterns: [pattern("2027-01-04", cycleOf("TWO_TWO_THREE", "A", "B"))] });
    expect(calendar(residence, "2027-01-04", "2027-01-31")).toBe(typed("AA BB AAA  BB AA BBB  AA BB AAA  BB AA BBB"));
  });

  it("2-2-5-5: from Monday 4 January 2027, four weeks, Mondays and Tuesdays always in A, Wednesdays and Thursdays in B", () => {
    const residence = of({ patterns: [pattern("2027-01-04", cycleOf("TWO_TWO_FIVE_FIVE", "A", "B"))] });
    expect(calendar(residence, "2027-01-04", "2027-01-31")).toBe(typed("AA BB AAA  AA BB BBB  AA BB AAA  AA BB BBB"));
    const weekday = (first: string) =>
      [0, 7, 14, 21, 28, 35].map((ahead) => wakesIn(residence, addDays(first, ahead))!.householdId).join("");
    expect(["2027-01-04", "2027-01-05", "2027-01-06", "2027-01-07"].map(weekday)).toEqual([
      "AAAAAA",
      "AAAAAA",
      "BBBBBB",
      "BBBBBB",
    ]);
    // Fridays, Saturdays and Sundays change over.
    expect(["2027-01-08", "2027-01-09", "2027-01-10"].map(weekday)).toEqual(["ABABAB", "ABABAB", "ABABAB"]);
  });

  it("2-2-3 through 29 February 2028, a Tuesday: the leap day is a day like any other", () => {
    const residence = of({ patterns: [pattern("2028-02-21", cycleOf("TWO_TWO_THREE", "A", "B"))] });
    // Mon 21 Feb to Sun 27 Feb, Mon 28 Feb to Sun 5 March, Mon 6 to Sun 12 March.
    expect(calendar(residence, "2028-02-21", "2028-03-12")).toBe(typed("AA BB AAA  BB AA BBB  AA BB AAA"));
    expect(wakesIn(residence, "2028-02-29")).toEqual({ householdId: "B", source: "PATTERN" });
  });

  it("a year without a leap day has none: from Friday 26 February 2027 to Wednesday 3 March", () => {
    const residence = of({ patterns: [pattern("2027-02-26", ["A", "A", "B"])] });
    expect(calendar(residence, "2027-02-26", "2027-03-03")).toBe(typed("AAB AAB"));
  });

  it("changes of the clocks move nothing: weeks in turn over 28 March and 31 October 2027, when they change in Europe", () => {
    const residence = of({ patterns: [pattern("2027-03-22", cycleOf("ALTERNATE_WEEKS", "A", "B"))] });
    expect(calendar(residence, "2027-03-22", "2027-04-04")).toBe(typed("AAAAAAA BBBBBBB"));
    // 31 weeks after 22 March is Monday 25 October, an odd week; the next Monday is 1 November.
    expect(calendar(residence, "2027-10-25", "2027-11-07")).toBe(typed("BBBBBBB AAAAAAA"));
  });

  it("an own cycle of nine days: from Wednesday 30 December 2026", () => {
    const residence = of({ patterns: [pattern("2026-12-30", [..."AAABBAABB"])] });
    expect(calendar(residence, "2026-12-30", "2027-01-16")).toBe(typed("AAABBAABB AAABBAABB"));
  });

  it("one pattern takes over from another on its first day, whichever was agreed first, and before the first the oldest home has the child", () => {
    const fromMarch = pattern("2027-03-01", ["B"], { kind: "SAME_HOME" });
    const fromJanuary = pattern("2027-01-04", cycleOf("ALTERNATE_WEEKS", "B", "A"));
    for (const patterns of [
      [fromMarch, fromJanuary],
      [fromJanuary, fromMarch],
    ]) {
      const residence = of({ patterns });
      expect(wakesIn(residence, "2027-01-03")).toEqual({ householdId: "A", source: "USUAL" });
      expect(calendar(residence, "2027-02-15", "2027-03-14")).toBe(typed("BBBBBBB AAAAAAA BBBBBBB BBBBBBB"));
    }
  });

  it("of two that begin on one day the one agreed later holds", () => {
    const residence = of({ patterns: [pattern("2027-01-04", ["A"]), pattern("2027-01-04", ["B"])] });
    expect(wakesIn(residence, "2027-01-04")!.householdId).toBe("B");
  });

  it("a pattern that has ended leaves the child in the home of longest standing, and so does one that names a home no more", () => {
    const ended = of({ patterns: [pattern("2027-01-04", ["B"], { ends: "2027-01-10" })] });
    expect(calendar(ended, "2027-01-09", "2027-01-12")).toBe("BBAA");
    const given = of({ homes: ["A"], patterns: [pattern("2027-01-04", ["A", "B"])] });
    expect(calendar(given, "2027-01-04", "2027-01-07")).toBe("AAAA");
    expect(wakesIn(given, "2027-01-05")).toEqual({ householdId: "A", source: "USUAL" });
  });

  it("a child without a home wakes nowhere", () => {
    expect(wakesIn(of({ homes: [] }), "2027-01-04")).toBeNull();
  });
});

const day = fc.integer({ min: 0, max: 20_000 }).map((days) => addDays("2020-01-01", days));
const home = fc.constantFrom("A", "B");
const state = fc.constantFrom<ProposalState>("PROPOSED", "ACCEPTED", "DECLINED", "WITHDRAWN");
const anyPattern = fc
  .record({ starts: day, cycle: fc.array(home, { minLength: 1, maxLength: LONGEST_CYCLE }), state })
  .map(({ starts, cycle, state: of }) => pattern(starts, cycle, { state: of }));
const anyResidence = fc
  .record({
    patterns: fc.array(anyPattern, { maxLength: 5 }),
    exceptions: fc.array(fc.record({ date: day, householdId: home, state }), { maxLength: 5 }),
  })
  .map(of);

describe("whatever was agreed", () => {
  it("every day belongs to exactly one home of the child", () => {
    fc.assert(
      fc.property(anyResidence, day, (residence, date) => {
        const waking = residence.homes.filter((household) => wakesIn(residence, date)!.householdId === household);
        expect(waking).toHaveLength(1);
      }),
    );
  });

  it("an exception that was accepted wins; one that is proposed, declined or withdrawn changes nothing", () => {
    fc.assert(
      fc.property(anyResidence, day, home, state, (residence, date, householdId, said) => {
        const asked = { ...residence, exceptions: [...residence.exceptions, { date, householdId, state: said }] };
        if (said === "ACCEPTED") expect(wakesIn(asked, date)).toEqual({ householdId, source: "EXCEPTION" });
        else expect(wakesIn(asked, date)).toEqual(wakesIn(residence, date));
        // Nor does it touch the day after.
        expect(wakesIn(asked, addDays(date, 1))).toEqual(wakesIn(residence, addDays(date, 1)));
      }),
    );
  });

  it("a pattern that nobody accepted changes nothing", () => {
    fc.assert(
      fc.property(anyResidence, anyPattern, day, (residence, proposed, date) => {
        fc.pre(proposed.state !== "ACCEPTED");
        expect(wakesIn({ ...residence, patterns: [...residence.patterns, proposed] }, date)).toEqual(
          wakesIn(residence, date),
        );
      }),
    );
  });

  it("a pattern alone comes round after its cycle, and gives each home its days of it", () => {
    fc.assert(
      fc.property(
        day,
        fc.array(home, { minLength: 1, maxLength: LONGEST_CYCLE }),
        fc.nat(2_000),
        (starts, cycle, at) => {
          const residence = of({ patterns: [pattern(starts, cycle)] });
          const date = addDays(starts, at);
          expect(wakesIn(residence, addDays(date, cycle.length))).toEqual(wakesIn(residence, date));
          const round = daysFrom(date, addDays(date, cycle.length - 1));
          expect(round).toHaveLength(cycle.length);
          const inA = round.filter((one) => wakesIn(residence, one)!.householdId === "A");
          expect(inA).toHaveLength(cycle.filter((household) => household === "A").length);
        },
      ),
    );
  });

  it("every kind gives two homes the same number of nights in its cycle, but the one that keeps the child in one home", () => {
    for (const kind of residenceKinds) {
      if (kind === "OWN_CYCLE") continue;
      const cycle = cycleOf(kind, "A", "B");
      const inA = cycle.filter((household) => household === "A").length;
      expect([kind, cycle.length, inA]).toEqual(kind === "SAME_HOME" ? [kind, 1, 1] : [kind, 14, 7]);
    }
  });
});

it("days from one to another are counted with both ends", () => {
  const days = daysFrom("2028-02-27", "2028-03-02");
  expect(days).toEqual(["2028-02-27", "2028-02-28", "2028-02-29", "2028-03-01", "2028-03-02"]);
  expect(daysBetween(days[0]!, days.at(-1)!)).toBe(4);
});
