import { describe, expect, test } from "@jest/globals";
import type { WeekBrief } from "../../src/domain/brief.js";
import { addDays } from "../../src/domain/calendar/dates.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { findCandidates } from "../../src/domain/planner/candidates.js";
import { checkProblem } from "../../src/domain/planner/check-problem.js";
import { formulate, noTightening } from "../../src/domain/planner/formulate.js";
import { packBox } from "../../src/domain/planner/lay-out.js";
import { shareOf, weekPart, type Bounds } from "../../src/domain/rules/limits.js";
import {
  eldest,
  middle,
  monday,
  schoolDates,
  sessions,
  threeChildren,
  twoChildren,
  youngest,
} from "../support/demo-brief.js";

/** The share of a limit of a week of five days. */
const prorate = (bounds: Bounds, days: number, counts: boolean): Bounds => shareOf(bounds, weekPart({}, days), counts);

const build = (brief: WeekBrief) => {
  const index = indexCatalogue(brief.catalogue);
  return formulate(brief, index, findCandidates(brief, index));
};
const whole = build(threeChildren());

/** Windows of a base by session key, with the dates its product serves. */
const windowsOf = (
  { problem, layout }: ReturnType<typeof build>,
  base: string,
): Record<string, (string | undefined)[]> =>
  Object.fromEntries(
    (problem.bases[layout.bases.indexOf(base)]?.windows ?? []).map(({ window, firstDay, lastDay }) => [
      layout.sessions[window] ?? "",
      [layout.dates[firstDay], layout.dates[lastDay]],
    ]),
  );

describe("the formulation", () => {
  test.each([
    ["three children", threeChildren()],
    ["two children", twoChildren()],
    ["without sharing", threeChildren({ sharing: false })],
    ["a short week", threeChildren({ children: [{ ...youngest, days: youngest.days.slice(1, 3) }] })],
  ])("gives the search whole numbers it accepts: %s", (_, brief) => {
    expect(checkProblem(build(brief).problem)).toEqual({ ok: true, value: undefined });
  });

  test("a base counts the day it is made, an evening's from the next day", () => {
    const { catalogue } = threeChildren();
    const keeps = catalogue.bases.find((base) => base.key === "tomato-sauce")?.keepsChilledDays ?? 0;
    expect(keeps).toBe(4);
    const windows = windowsOf(whole, "tomato-sauce");
    const sunday = addDays(monday, -1);
    expect(windows[`weekend-${sunday}`]).toEqual([monday, addDays(sunday, 3)]);
    expect(windows[`evening-${sunday}`]).toEqual([monday, addDays(monday, 3)]);
    expect(windows[`evening-${schoolDates[3]}`]).toEqual([schoolDates[4], schoolDates[4]]);
  });

  test("a base that waits longer than a session lasts is not made in it", () => {
    expect(Object.keys(windowsOf(whole, "boiled-chickpeas"))).toEqual([]);
    const long = build(
      threeChildren({
        sessions: sessions.map((row) => (row.kind === "WEEKEND" ? { ...row, elapsedMinutes: 720 } : row)),
      }),
    );
    expect(Object.keys(windowsOf(long, "boiled-chickpeas"))).toEqual([`weekend-${addDays(monday, -1)}`]);
  });

  test("a base for dishes that may be finished the evening before is not left to the morning", () => {
    const kinds = Object.keys(windowsOf(whole, "tuna-mix")).map((key) => key.split("-")[0]);
    expect(new Set(kinds)).toEqual(new Set(["weekend", "evening"]));
    const onlyMornings = build(
      threeChildren({ sessions: sessions.filter((row) => row.kind === "MORNING"), ready: [] }),
    );
    const left = Object.keys(windowsOf(onlyMornings, "tuna-mix")).map((key) => key.split("-")[0]);
    expect(new Set(left)).toEqual(new Set(["morning"]));
    for (const dish of onlyMornings.problem.dishes) expect(dish.split).toBeNull();
  });

  test("a dish cooked for a chilled box cannot be cooked that morning", () => {
    const dish = whole.problem.dishes[whole.layout.dishes.indexOf("spinach-cheese-pancakes")];
    expect(dish?.split).not.toBeNull();
    expect(dish?.morning.fixed).toBeGreaterThan(Math.max(...whole.problem.windows.map((window) => window.minutes)));
  });

  test("packing is taken off a morning's minutes before anything is planned into it", () => {
    const window = whole.problem.windows[whole.layout.sessions.indexOf(`morning-${monday}`)];
    // 28 minutes less three boxes of five items: 3 x (1.5 + 5 x 0.5) = 12 minutes.
    expect(window?.minutes).toBe((28 - 12) * 10);
  });

  test("pieces of a portion stay whole and bases are drawn in whole grams", () => {
    for (const candidate of whole.problem.positions.flatMap((position) => position.candidates)) {
      for (const { amount } of candidate.bases) expect(amount % 100).toBe(0);
    }
    for (const { portion, derived } of whole.layout.options.flat()) {
      if (derived.dish.portion.kind !== "PIECES") continue;
      expect(((portion.pieces ?? 0.5) / derived.dish.portion.stepPieces) % 1).toBeCloseTo(0);
    }
  });

  test("leftovers and batches made are supply on their own days", () => {
    const made = [{ base: "tomato-sauce", session: `evening-${monday}`, batches: 1 }];
    const { problem, layout } = build(threeChildren({ made }));
    expect(layout.ready).toEqual([
      { kind: "READY", index: 0 },
      { kind: "MADE", index: 0 },
    ]);
    expect(problem.ready[0]).toMatchObject({ amount: 30_000, firstDay: 0, lastDay: 2 });
    expect(problem.ready[1]).toMatchObject({ amount: 66_000, firstDay: 1, lastDay: 4 });
  });

  test("a treat is welcome on Friday and dear on Monday, a disliked dish dear on every day", () => {
    // Nothing is left over that the pizza could eat up on Monday.
    const { problem, layout } = build(threeChildren({ ready: [] }));
    const costOf = (childId: string, date: string, dish: string) =>
      layout.places.flatMap(({ place, dishes }, p) => {
        if (place.childId !== childId || place.date !== date) return [];
        const c = dishes.findIndex(({ derived }) => derived.dish.key === dish);
        return c < 0 ? [] : [problem.positions[p]?.candidates[c]?.cost ?? 0];
      })[0];
    const [first = "", , , , last = ""] = schoolDates;
    const treat = "mini-pizza-roasted-vegetables";
    expect(costOf(eldest.id, first, treat)).toBe((costOf(eldest.id, last, treat) ?? 0) + 16);
    const slaw = "red-cabbage-apple-slaw";
    expect(costOf(youngest.id, first, slaw)).toBeGreaterThan((costOf(middle.id, first, slaw) ?? 0) + 50);
  });

  test("what a child had last week costs more than what it had the week before", () => {
    const dish = "carrot-sticks";
    const costAfter = (date: string) => {
      const { problem, layout } = build(threeChildren({ history: [{ childId: middle.id, date, dish }] }));
      const p = layout.places.findIndex(({ place }) => place.childId === middle.id && place.slot === "VEGETABLE");
      return (
        problem.positions[p]?.candidates[layout.options[p]?.findIndex(({ derived }) => derived.dish.key === dish) ?? -1]
          ?.cost ?? 0
      );
    };
    expect(costAfter(addDays(monday, -3)) - costAfter(addDays(monday, -10))).toBe(6);
  });
});

describe("a week's limit in a short week", () => {
  test("a minimum is rounded down, a maximum up", () => {
    expect(prorate({ atLeast: 3, atMost: 2 }, 3, true)).toEqual({ atLeast: 1, atMost: 2 });
    expect(prorate({ atLeast: 2, atMost: 1 }, 2, true)).toEqual({ atLeast: 0, atMost: 1 });
  });
  test("a full week and a longer one keep the limit as written", () => {
    expect(prorate({ atLeast: 3, atMost: 2 }, 5, true)).toEqual({ atLeast: 3, atMost: 2 });
    expect(prorate({ atLeast: 3 }, 6, true)).toEqual({ atLeast: 3, atMost: undefined });
  });
  test("grams are shared without rounding", () => {
    expect(prorate({ atMost: 100 }, 2, false)).toEqual({ atLeast: undefined, atMost: 40 });
  });
});

describe("packing a box", () => {
  const [sample] = whole.layout.options.flat();
  const item = (volumeMl: number, spill: "DRY" | "MOIST" | "WET" = "DRY", inFlask = false) => {
    if (sample === undefined) throw new Error("no dish");
    return { ...sample, volumeMl, inFlask, derived: { ...sample.derived, dish: { ...sample.derived.dish, spill } } };
  };
  const box = [
    { ml: 300, leakProof: false },
    { ml: 200, leakProof: true },
  ];

  test("puts wet food only where nothing leaks", () => {
    expect(packBox(box, [item(150, "WET"), item(250)])).toEqual([1, 0]);
    expect(packBox(box, [item(250, "WET")])).toBeNull();
  });
  test("finds the one way that fits even when the first choice does not", () => {
    expect(packBox(box, [item(160), item(140), item(110), item(90)])).toEqual(expect.arrayContaining([0, 1]));
    expect(
      packBox(
        [
          { ml: 10, leakProof: false },
          { ml: 9, leakProof: false },
        ],
        [item(5), item(5), item(3), item(3), item(3)],
      ),
    ).toEqual([0, 0, 1, 1, 1]);
  });
  test("the flask takes no compartment", () => {
    expect(packBox(box, [item(900, "WET", true), item(300)])).toEqual([-1, 0]);
  });
  test("never lays wet food beside dry, though moist may lie with either", () => {
    const one = [{ ml: 300, leakProof: true }];
    expect(packBox(one, [item(100, "WET"), item(100)])).toBeNull();
    expect(packBox(one, [item(100, "WET"), item(100)], true)).toEqual([0, 0]);
    expect(packBox(one, [item(100, "WET"), item(100, "MOIST")])).toEqual([0, 0]);
    expect(packBox(one, [item(100, "DRY"), item(100, "MOIST")])).toEqual([0, 0]);
  });
  test("closes a box exactly when one of all the ways to fill it is right", () => {
    let state = 20_270_111;
    const below = (most: number): number => (state = (state * 48_271) % 2_147_483_647) % most;
    const spills = ["DRY", "MOIST", "WET"] as const;
    let closed = 0;
    for (let round = 0; round < 400; round += 1) {
      const kit = Array.from({ length: 1 + below(4) }, () => ({ ml: 100 + below(300), leakProof: below(2) === 0 }));
      const food = Array.from({ length: 1 + below(5) }, () => item(50 + below(150), spills[below(3)], below(8) === 0));
      const isRight = (at: readonly number[]): boolean =>
        food.every(({ inFlask }, i) => inFlask === (at[i] === -1)) &&
        kit.every(({ ml, leakProof }, c) => {
          const inside = food.filter((_, i) => at[i] === c);
          const wet = inside.some(({ derived }) => derived.dish.spill === "WET");
          const dry = inside.some(({ derived }) => derived.dish.spill === "DRY");
          return inside.reduce((sum, { volumeMl }) => sum + volumeMl, 0) <= ml && (!wet || (leakProof && !dry));
        });
      const choices = kit.length + 1;
      const exists = Array.from({ length: choices ** food.length }, (_, way) =>
        food.map((__, i) => (Math.floor(way / choices ** i) % choices) - 1),
      ).some(isRight);
      const found = packBox(kit, food);
      expect(found !== null).toBe(exists);
      if (found !== null) expect(isRight(found)).toBe(true);
      closed += Number(exists);
    }
    expect(closed).toBeGreaterThan(50);
    expect(closed).toBeLessThan(350);
  });
  test("a box of one compartment, and one that would have mixed, has wet food or dry, not both", () => {
    const [child] = threeChildren().children;
    if (child === undefined) throw new Error("no child");
    const rowsOf = (compartments: (typeof child)["box"]["compartments"], apart: readonly string[]) => {
      const alone = threeChildren({ children: [{ ...child, box: { ...child.box, compartments } }] });
      const index = indexCatalogue(alone.catalogue);
      const lessons = { ...noTightening, apart: new Set(apart) };
      const { problem, layout } = formulate(alone, index, findCandidates(alone, index), lessons);
      return problem.together.filter(({ name }) => layout.meanings.get(name)?.kind === "BOX_SPACE").length;
    };
    const compartments = [
      { ml: 900, leakProof: true },
      { ml: 900, leakProof: false },
    ];
    const [day] = child.days;
    expect(rowsOf(compartments.slice(0, 1), [])).toBe(child.days.length);
    expect(rowsOf(compartments, [])).toBe(0);
    expect(rowsOf(compartments, [`${child.id}@${day?.date}`])).toBe(1);
  });
  test("says so when the sum fits and the pieces do not", () => {
    expect(packBox(box, [item(210), item(210)])).toBeNull();
  });
});
