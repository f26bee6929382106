import { describe, expect, it } from "@jest/globals";
import fc from "fast-check";
import type { Dish } from "../../shared/catalogue.js";
import {
  isControlled,
  judgeHolding,
  type HoldingInput,
  type HoldingVerdict,
} from "../../src/domain/food-safety/holding.js";
import { timeOf } from "../../src/domain/calendar/dates.js";
import { readHoldingLimits } from "./reference-rows.js";
import { dishOf, sampleChild, sampleFood } from "./sample-rows.js";

const limits = readHoldingLimits();
const { box } = sampleChild();
const bare = { ...box, coldSources: 0, insulated: false };
const flask = { ...bare, flask: true };

function judge(over: Partial<HoldingInput> & { served?: Dish["served"]; goodForHours?: number } = {}): HoldingVerdict {
  const { served = "COLD", goodForHours = 12, ...input } = over;
  const derived = input.derived ?? dishOf([sampleFood("rice")], "MIXED_IN", { served, goodForHours });
  return judgeHolding({
    dish: derived.dish,
    derived,
    leaveAt: "08:30",
    breakStartsAt: "12:00",
    breakMinutes: 30,
    facility: "NEITHER",
    reheatingAllowed: true,
    box,
    limits,
    coldByMorning: true,
    ...input,
  });
}

// Outside: FDA Food Code 1-201.10, Tables A and B. PA, "product assessment", is treated as controlled. One row per cell, at its edges.
describe("time and temperature control by water activity and pH", () => {
  const free = false;
  const controlled = true;
  it.each([
    [0.92, 6.5, free],
    [0.93, 5.6, free],
    [0.95, 4.6, free],
    [0.95, 5.61, controlled],
    [0.96, 4.6, free],
    [0.96, 4.61, controlled],
    [0.99, 6.0, controlled],
  ])("heat-treated and packaged: aw %p, pH %p (Table A)", (aw, ph, expected) => {
    expect(isControlled(aw, ph, true)).toBe(expected);
  });
  it.each([
    [0.87, 7.0, free],
    [0.88, 5.0, free],
    [0.9, 5.01, controlled],
    [0.91, 4.6, free],
    [0.92, 4.61, controlled],
    [0.93, 4.19, free],
    [0.93, 4.2, controlled],
    [0.99, 4.5, controlled],
    [0.99, 7.0, controlled],
  ])("not packaged after heating: aw %p, pH %p (Table B)", (aw, ph, expected) => {
    expect(isControlled(aw, ph, false)).toBe(expected);
  });

  // Outside: Table B, cooked rice in an open box, pH 6.5, aw 0.98 (FS-8).
  it("cooked rice in an open box is controlled", () => {
    expect(isControlled(0.98, 6.5, false)).toBe(true);
  });

  it("an unknown figure counts as controlled unless the other one decides alone", () => {
    expect(isControlled(null, null, false)).toBe(true);
    expect(isControlled(null, 4.5, false)).toBe(true);
    expect(isControlled(0.91, null, false)).toBe(true);
    expect(isControlled(null, 3.5, false)).toBe(false);
    expect(isControlled(0.5, null, false)).toBe(false);
  });

  it("never becomes free by getting wetter or less acid", () => {
    const aw = fc.double({ min: 0.5, max: 1, noNaN: true });
    const ph = fc.double({ min: 2, max: 9, noNaN: true });
    fc.assert(
      fc.property(aw, aw, ph, ph, fc.boolean(), (a, b, p, q, packaged) => {
        if (isControlled(Math.min(a, b), Math.min(p, q), packaged))
          expect(isControlled(Math.max(a, b), Math.max(p, q), packaged)).toBe(true);
      }),
    );
  });
});

describe("cold food", () => {
  // Outside: FDA Food Code 3-501.19: out of the refrigerator at 07:30, eaten by 12:15, 4 h 45 min: the 4 hour rule fails, a 6 hour one passes (FS-7).
  it("out of the refrigerator for 4 h 45 min breaks the 4 hour rule and would keep a 6 hour one", () => {
    const times = { leaveAt: "07:30", breakStartsAt: "11:45", breakMinutes: 30 };
    expect(judge(times)).toEqual({
      ok: false,
      error: { kind: "TooLongWithoutCold", minutes: 285, limitMinutes: 240, mend: ["OTHER_DISH", "LESS_TIME"] },
    });
    expect(judge({ ...times, limits: { ...limits, chilledMinutes: 360 } })).toMatchObject({ ok: true });
  });

  // Outside: USDA, insulated bag with at least two cold sources; Food Code 3-501.19(B), 4 hours.
  it("with two cold sources in an insulated bag lasts four hours to the minute", () => {
    expect(judge({ breakStartsAt: "12:00" })).toEqual({
      ok: true,
      value: { case: "CHILLED", minutes: 240, limitMinutes: 240, served: "COLD" },
    });
    expect(judge({ breakStartsAt: "12:01" })).toMatchObject({ ok: false, error: { minutes: 241 } });
  });

  // Outside: USDA FSIS, 2 hours at room temperature.
  it("without cold sources lasts two hours, and says what would mend it", () => {
    const one = { ...box, coldSources: 1 };
    const soft = { ...box, insulated: false };
    for (const poor of [bare, one, soft]) {
      expect(judge({ box: poor, breakStartsAt: "10:15", breakMinutes: 15 })).toMatchObject({
        ok: true,
        value: { case: "AMBIENT", minutes: 120, limitMinutes: 120 },
      });
      expect(judge({ box: poor })).toEqual({
        ok: false,
        error: {
          kind: "TooLongWithoutCold",
          minutes: 240,
          limitMinutes: 120,
          mend: ["COLD_SOURCES", "OTHER_DISH", "LESS_TIME"],
          coldSourcesNeeded: 2,
        },
      });
    }
  });

  it("that is dry enough needs no cold, but still has to be good to eat", () => {
    const dry = (hours: number) =>
      dishOf([sampleFood("crispbread", { waterActivity: { value: 0.3, source: "sample" } })], "WHOLE", {
        goodForHours: hours,
      });
    expect(judge({ derived: dry(10), box: bare, leaveAt: "07:00", breakStartsAt: "14:00" })).toMatchObject({
      ok: true,
      value: { case: "NOT_CONTROLLED", minutes: 450 },
    });
    expect(judge({ derived: dry(4), box: bare, leaveAt: "07:00", breakStartsAt: "14:00" })).toEqual({
      ok: false,
      error: { kind: "GoodForTooShort", minutes: 450, limitMinutes: 240, mend: ["OTHER_DISH", "LESS_TIME"] },
    });
  });

  it("mixed of a dry and an acid part is judged at the worse of both figures", () => {
    const dry = sampleFood("cracker", {
      waterActivity: { value: 0.3, source: "sample" },
      ph: { value: 6.5, source: "sample" },
    });
    const acid = sampleFood("pickle", {
      waterActivity: { value: 0.98, source: "sample" },
      ph: { value: 3.5, source: "sample" },
    });
    for (const alone of [dry, acid])
      expect(judge({ derived: dishOf([alone]) })).toMatchObject({ value: { case: "NOT_CONTROLLED" } });
    expect(judge({ derived: dishOf([dry, acid]) })).toMatchObject({ value: { case: "CHILLED" } });
  });

  it("counts to the end of the break, not to its start", () => {
    expect(judge({ breakStartsAt: "12:00", breakMinutes: 30 }).ok).toBe(true);
    expect(judge({ breakStartsAt: "12:00", breakMinutes: 40 }).ok).toBe(false);
  });
});

describe("warm food", () => {
  it("goes in the flask within its hours", () => {
    expect(judge({ served: "WARM", box: flask })).toEqual({
      ok: true,
      value: { case: "FLASK", minutes: 240, limitMinutes: 240, served: "WARM" },
    });
    expect(judge({ served: "WARM", box: flask, breakStartsAt: "12:30" })).toEqual({
      ok: false,
      error: { kind: "NeedsReheating", minutes: 270, limitMinutes: 240, mend: ["OTHER_DISH", "LESS_TIME"] },
    });
  });
  it("without a flask and a place that reheats is out, and a flask would mend it", () => {
    expect(judge({ served: "WARM" })).toEqual({
      ok: false,
      error: { kind: "NeedsFlask", minutes: 240, limitMinutes: 240, mend: ["FLASK", "OTHER_DISH"] },
    });
  });
  it("is reheated at school only where that is there, allowed, and the way there was cold", () => {
    const way = { served: "WARM", facility: "REHEATING" } as const;
    expect(judge(way)).toMatchObject({
      ok: true,
      value: { case: "REHEATED_AT_SCHOOL", served: "WARM", limitMinutes: 240 },
    });
    expect(judge({ ...way, reheatingAllowed: false })).toMatchObject({ ok: false, error: { kind: "NeedsFlask" } });
    expect(judge({ ...way, box: bare })).toEqual({
      ok: false,
      error: {
        kind: "TooLongWithoutCold",
        minutes: 240,
        limitMinutes: 0,
        mend: ["COLD_SOURCES", "FLASK", "OTHER_DISH"],
        coldSourcesNeeded: 2,
      },
    });
    expect(judge({ ...way, box: bare, breakStartsAt: "09:00", breakMinutes: 10 }).ok).toBe(false);
    expect(judge({ ...way, breakStartsAt: "13:00" })).toMatchObject({
      ok: false,
      error: { kind: "TooLongWithoutCold", minutes: 300 },
    });
  });
  it("that is as good cold goes cold when it can and warm when it cannot", () => {
    expect(judge({ served: "EITHER", box: { ...box, flask: true } })).toMatchObject({
      value: { case: "CHILLED", served: "COLD" },
    });
    expect(judge({ served: "EITHER", box: flask })).toMatchObject({ value: { case: "FLASK", served: "WARM" } });
    expect(judge({ served: "EITHER", box: bare })).toMatchObject({
      error: { mend: ["COLD_SOURCES", "FLASK", "OTHER_DISH", "LESS_TIME"] },
    });
  });
});

describe("holding", () => {
  const input = fc.record({
    served: fc.constantFrom("COLD" as const, "WARM" as const, "EITHER" as const),
    leave: fc.integer({ min: 360, max: 600 }),
    wait: fc.integer({ min: 0, max: 420 }),
    coldSources: fc.integer({ min: 0, max: 3 }),
    insulated: fc.boolean(),
    hasFlask: fc.boolean(),
    facility: fc.constantFrom("REFRIGERATOR" as const, "REHEATING" as const, "NEITHER" as const),
    reheatingAllowed: fc.boolean(),
  });
  const run = (
    x: typeof input extends fc.Arbitrary<infer T> ? T : never,
    over: Partial<HoldingInput> = {},
  ): HoldingVerdict =>
    judge({
      served: x.served,
      leaveAt: timeOf(x.leave),
      breakStartsAt: timeOf(x.leave + x.wait),
      breakMinutes: 15,
      facility: x.facility,
      reheatingAllowed: x.reheatingAllowed,
      box: { compartments: [], coldSources: x.coldSources, insulated: x.insulated, flask: x.hasFlask },
      ...over,
    });

  it("never passes beyond its own limit, and leaving later never makes it worse", () => {
    fc.assert(
      fc.property(input, (x) => {
        const verdict = run(x);
        if (!verdict.ok) return;
        expect(verdict.value.minutes).toBeLessThanOrEqual(verdict.value.limitMinutes);
        if (x.wait > 0) expect(run({ ...x, leave: x.leave + 1, wait: x.wait - 1 }).ok).toBe(true);
      }),
    );
  });
  it("never gets stricter with a better box or longer limits, and each mend it names for the box does mend it", () => {
    fc.assert(
      fc.property(input, (x) => {
        const verdict = run(x);
        if (verdict.ok) {
          expect(run({ ...x, coldSources: x.coldSources + 1, insulated: true, hasFlask: true }).ok).toBe(true);
          return;
        }
        if (verdict.error.mend.includes("COLD_SOURCES"))
          expect(run({ ...x, coldSources: 2, insulated: true }).ok).toBe(true);
        if (verdict.error.mend.includes("FLASK")) expect(run({ ...x, hasFlask: true }).ok).toBe(true);
      }),
    );
  });
  it("refuses to judge a break that is over before the child leaves", () => {
    expect(() => judge({ leaveAt: "13:00", breakStartsAt: "10:00" })).toThrow(RangeError);
    expect(() => judge({ leaveAt: "10:30", breakStartsAt: "10:00", breakMinutes: 30 })).toThrow(RangeError);
  });
  it("has limits with a published source, none longer than the Food Code's four hours", () => {
    expect(limits.source).toMatch(/3-501\.19/);
    for (const minutes of [limits.chilledMinutes, limits.flaskMinutes]) expect(minutes).toBeLessThanOrEqual(240);
    expect(limits.ambientMinutes).toBe(120);
    expect(limits.hotDayAmbientMinutes).toBe(60);
    expect(limits.coldSources).toBe(2);
  });
});
