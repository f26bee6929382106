import { describe, expect, test } from "@jest/globals";
import type { PinBrief, ReadyBaseBrief, WeekBrief } from "../../src/domain/brief.js";
import { addDays } from "../../src/domain/calendar/dates.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { checkWeek } from "../../src/domain/checker/check-week.js";
import { solve } from "../../src/domain/planner/anneal.js";
import { findCandidates } from "../../src/domain/planner/candidates.js";
import { planWeek } from "../../src/domain/planner/plan-week.js";
import type { Problem, ReadySupply } from "../../src/domain/planner/problem.js";
import { formulate } from "../../src/domain/planner/formulate.js";
import type { WeekDraft } from "../../src/domain/week.js";
import { monday, threeChildren } from "../support/demo-brief.js";

/** One child who eats 60 units of one base on each of four days, made in the morning when nothing is ready (worked by hand). */
function fourDays(ready: readonly Omit<ReadySupply, "base">[]): Problem {
  const days = [0, 1, 2, 3];
  const none = { fixed: 0, perPortion: 0, equipment: [], portionsPerGo: 0 };
  return {
    days: 4,
    children: 1,
    measures: 0,
    equipment: 0,
    dishes: days.map(() => ({ main: true, repeatMax: 1, starch: -1, morning: none, split: null })),
    bases: [
      {
        fixed: 50,
        perBatch: 10,
        batchAmount: 60,
        maxBatches: 5,
        equipment: [],
        windows: days.map((day) => ({ window: day, firstDay: day, lastDay: day })),
        wastePerThousand: 1000,
        storageMl: 0,
      },
    ],
    windows: days.map((day) => ({ kind: "MORNING" as const, day, minutes: 1_000, effort: 1, equipment: [] })),
    ready: ready.map((supply) => ({ base: 0, ...supply })),
    positions: days.map((day) => ({
      child: 0,
      day,
      box: day,
      slot: 0,
      candidates: [{ dish: day, cost: 0, q: [], bases: [{ base: 0, amount: 60 }] }],
      fixed: -1,
    })),
    bands: [],
    targets: [],
    distinct: [],
    together: [],
    relaxed: { siblings: [], repeats: [], starch: [] },
    neighbours: [],
    refrigeratorMl: 1_000,
    stayClose: null,
    sharing: true,
  };
}
const eaten = (ready: readonly Omit<ReadySupply, "base">[]) => {
  const { readyUse, batches, feasible } = solve(fourDays(ready), { seed: 1, steps: 100 });
  expect(feasible).toBe(true);
  return {
    uses: readyUse.map((use) => [use.day, use.ready, use.amount]),
    made: batches.map((batch) => [batch.window, batch.batches]),
  };
};

describe("what is ready already", () => {
  test("is eaten before anything is made, the first to spoil first", () => {
    const soon = { amount: 50, firstDay: 0, lastDay: 1 };
    const later = { amount: 100, firstDay: 0, lastDay: 3 };
    const frozen = { amount: 100, firstDay: 0, lastDay: 3 };
    // Day 0: all 50 of what spoils tomorrow and 10 of the next. Day 1: 60 of that. Day 2: its last 30, and 30 frozen. Day 3: 60.
    const uses = [
      [0, 0, 50],
      [0, 1, 10],
      [1, 1, 60],
      [2, 1, 30],
      [2, 2, 30],
      [3, 2, 60],
    ];
    expect(eaten([soon, later, frozen])).toEqual({ uses, made: [] });
    // Written down in another order it is still eaten in the order it spoils.
    expect(eaten([later, frozen, soon])).toMatchObject({
      uses: [
        [0, 2, 50],
        [0, 0, 10],
        [1, 0, 60],
        [2, 0, 30],
        [2, 1, 30],
        [3, 1, 60],
      ],
    });
  });

  test("is not waited for, and not eaten after its last day", () => {
    const thawed = { amount: 100, firstDay: 2, lastDay: 3 };
    const gone = { amount: 500, firstDay: 0, lastDay: 0 };
    // Day 0 eats 60 of the 500, the rest is lost; day 1 is cooked; day 2 thaws 60, day 3 the other 40 and cooks for 20.
    expect(eaten([gone, thawed])).toEqual({
      uses: [
        [0, 0, 60],
        [2, 1, 60],
        [3, 1, 40],
      ],
      made: [
        [1, 1],
        [3, 1],
      ],
    });
  });
});

const BASE = "chickpea-spread";
const spread = (id: string, from: ReadyBaseBrief["from"], grams: number, lastDay: number): ReadyBaseBrief => ({
  id,
  base: BASE,
  grams,
  from,
  firstDate: monday,
  lastDate: addDays(monday, lastDay),
});

/** Chickpea spread for somebody on each of the days, pinned by a carer. */
function withSpreadOn(days: readonly number[], change: Partial<WeekBrief>): WeekBrief {
  const brief = threeChildren({ ...change, relaxations: [] });
  const { places } = findCandidates(brief, indexCatalogue(brief.catalogue));
  const used = new Set<string>();
  const pins = days.flatMap((day): PinBrief[] => {
    for (const { place, dishes } of places) {
      if (place.date !== addDays(monday, day) || place.slot === "FRUIT") continue;
      const dish = dishes
        .map(({ derived }) => derived.dish)
        .find((row) => row.bases.length > 0 && row.bases.every(({ base }) => base === BASE) && !used.has(row.key));
      if (dish === undefined) continue;
      used.add(dish.key);
      const { childId, date, breakKey, slot, position } = place;
      return [{ childId, date, breakKey, slot, position, dish: dish.key, because: "PINNED" }];
    }
    return [];
  });
  expect(pins).toHaveLength(days.length);
  return { ...brief, pins };
}
const planned = (brief: WeekBrief): WeekDraft => {
  const outcome = planWeek(brief, { seed: 1, steps: 15_000, hash: () => "" });
  if (outcome.kind !== "PLANNED") throw new Error(JSON.stringify(outcome.conflicts));
  expect(checkWeek(brief, outcome.draft)).toEqual([]);
  return outcome.draft;
};

describe("a household's leftovers", () => {
  test("go into boxes before the freezer is opened and before a fresh batch is made, and what no box eats is said with its last day", () => {
    const ready = [
      spread("freezer", "FREEZER", 100, 60),
      spread("leftover", "LEFTOVER", 70, 1),
      spread("next", "LEFTOVER", 40, 3),
    ];
    const brief = withSpreadOn([1, 3], { ready });
    const draft = planned(brief);
    const taken = (id: string, until: string): number =>
      draft.readyUses.filter((use) => use.readyId === id && use.date <= until).reduce((sum, use) => sum + use.grams, 0);
    const used = draft.readyUses.filter(({ base }) => base === BASE);
    expect(used.length).toBeGreaterThan(0);
    const cooked = draft.batches
      .filter(({ base, made }) => base === BASE && !made)
      .flatMap(({ feeds }) => feeds.map(({ date }) => ({ date, after: ready })));
    const thawed = used
      .filter(({ readyId }) => readyId === "freezer")
      .map(({ date }) => ({ date, after: ready.filter(({ from }) => from === "LEFTOVER") }));
    for (const { date, after } of [...cooked, ...thawed])
      for (const { id, grams, lastDate } of after) if (lastDate >= date) expect(taken(id, date)).toBe(grams);
    const end = addDays(monday, 6);
    for (const { id, grams, lastDate } of ready.filter(({ from }) => from === "LEFTOVER")) {
      const left = grams - taken(id, end);
      const said = draft.cautions.filter((row) => row.kind === "READY_UNUSED" && row.readyId === id);
      expect(said).toEqual(
        left < 1 ? [] : [{ kind: "READY_UNUSED", readyId: id, base: BASE, from: "LEFTOVER", grams: left, lastDate }],
      );
    }
    // Frozen for two months: no need to speak of it this week.
    expect(draft.cautions.some((row) => row.kind === "READY_UNUSED" && row.readyId === "freezer")).toBe(false);
  });

  test("that last the whole week are still taken in the order they spoil, the freezer last", () => {
    const ready = [
      spread("frozen", "FREEZER", 100, 9),
      spread("young", "LEFTOVER", 100, 9),
      spread("old", "LEFTOVER", 100, 8),
    ];
    const brief = threeChildren({ ready });
    const index = indexCatalogue(brief.catalogue);
    const { layout } = formulate(brief, index, findCandidates(brief, index));
    expect(layout.ready.map((source) => ready[source.index]?.id)).toEqual(["old", "young", "frozen"]);
  });

  test("of something no dish is made of are said to be eaten otherwise", () => {
    const pot: ReadyBaseBrief = { ...spread("pot", "LEFTOVER", 250, 2), base: "nobody-eats-this" };
    const draft = planned(threeChildren({ ready: [pot] }));
    expect(draft.cautions).toContainEqual({
      kind: "READY_UNUSED",
      readyId: "pot",
      base: "nobody-eats-this",
      from: "LEFTOVER",
      grams: 250,
      lastDate: pot.lastDate,
    });
  });
});

describe("a leftover of the family meal", () => {
  const shares = (ready: readonly ReadyBaseBrief[]) => {
    const brief = threeChildren({ ready });
    const index = indexCatalogue(brief.catalogue);
    const { problem, layout } = formulate(brief, index, findCandidates(brief, index));
    return layout.places.flatMap(({ place }, p) =>
      (layout.options[p] ?? []).flatMap(({ derived, portion }, o) => {
        const grams = derived.dish.bases.reduce((sum, { base, grams: of }) => sum + (base === BASE ? of : 0), 0);
        const points = problem.positions[p]?.candidates[o]?.cost ?? 0;
        return [
          {
            key: `${place.childId}/${place.date}/${place.position}/${derived.dish.key}`,
            date: place.date,
            grams: grams * portion.scale,
            points,
          },
        ];
      }),
    );
  };
  test("makes every portion that can eat of it welcome, by a point for 10 g, until its last day, and a frozen one does not", () => {
    const plain = new Map(shares([]).map(({ key, points }) => [key, points]));
    const welcome = (ready: ReadyBaseBrief) =>
      shares([ready]).map((row) => ({ ...row, gained: (plain.get(row.key) ?? 0) - row.points }));
    const rows = welcome(spread("leftover", "LEFTOVER", 60, 1));
    for (const { date, grams, gained } of rows) {
      const eaten = date <= addDays(monday, 1) ? Math.min(60, grams) : 0;
      // Points of a pick are whole.
      expect(Math.abs(gained - eaten / 10)).toBeLessThanOrEqual(1);
    }
    expect(rows.some(({ gained }) => gained > 3)).toBe(true);
    expect(welcome(spread("frozen", "FREEZER", 60, 1)).every(({ gained }) => gained === 0)).toBe(true);
  });
});
