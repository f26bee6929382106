import type { EquipmentBrief, SessionBrief } from "../../src/domain/brief.js";
import { scheduleSessions } from "../../src/domain/kitchen/timetable.js";
import type { Work } from "../../src/domain/kitchen/work.js";
import type { TaskPlan } from "../../src/domain/week.js";

const morning: SessionBrief = {
  key: "morning-2026-09-07",
  kind: "MORNING",
  date: "2026-09-07",
  startsAt: "06:30",
  handsOnMinutes: 60,
  elapsedMinutes: 90,
  carers: 1,
  effort: 2,
};

function task(key: string, handsOnMinutes: number, passiveMinutes: number, more: Partial<Work> = {}): Work {
  return {
    key,
    session: morning.key,
    kind: "FINISH",
    base: null,
    dish: "a-dish",
    text: key,
    childIds: ["mina"],
    forDates: [morning.date],
    handsOnMinutes,
    passiveMinutes,
    equipment: [],
    after: [],
    handles: [],
    mustEndBy: null,
    ...more,
  };
}

function timetable(work: Work[], session = morning, equipment: EquipmentBrief[] = []): Map<string, TaskPlan> {
  const result = scheduleSessions({ sessions: [session], equipment, work });
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return new Map(result.value.tasks.map((plan) => [plan.key, plan]));
}

const clock = (plans: Map<string, TaskPlan>, key: string): string[] => {
  const plan = plans.get(key);
  return plan === undefined ? [] : [plan.startsAt, plan.handsFreeAt, plan.endsAt];
};

describe("a morning on the clock", () => {
  // Common practice: small steamed batter cakes take 10 minutes a go, four moulds at a time, and cool before they leave the mould.
  it("fills the one mould set again only when the first cakes have cooled in it", () => {
    const mould = { kind: "CAKE_MOULD_SET", units: 1, minutes: 18 } as const;
    const steamer = { kind: "STEAMER", units: 1, minutes: 13 } as const;
    const cakes = (go: number): Work[] => [
      task(`cakes.${go}`, 3, 10, { equipment: [steamer, mould] }),
      task(`cakes.${go}/cool`, 0, 5, { kind: "COOL", after: [`cakes.${go}`] }),
    ];
    const pack = task("pack", 2, 0, { kind: "PACK", after: ["cakes.1/cool", "cakes.2/cool"], mustEndBy: "07:30" });
    const work = [...cakes(1), ...cakes(2), pack];
    const one = timetable(work, morning, [
      { kind: "CAKE_MOULD_SET", units: 1 },
      { kind: "STEAMER", units: 1 },
    ]);
    expect(clock(one, "cakes.1")).toEqual(["06:30", "06:33", "06:43"]);
    expect(clock(one, "cakes.1/cool")).toEqual(["06:43", "06:43", "06:48"]);
    expect(clock(one, "cakes.2")).toEqual(["06:48", "06:51", "07:01"]);
    expect(clock(one, "pack")).toEqual(["07:06", "07:08", "07:08"]);

    // With a second mould set only the steamer limits: it is free at 06:43.
    const two = timetable(work, morning, [
      { kind: "CAKE_MOULD_SET", units: 2 },
      { kind: "STEAMER", units: 1 },
    ]);
    expect(clock(two, "cakes.2")).toEqual(["06:43", "06:46", "06:56"]);
    expect(clock(two, "pack")).toEqual(["07:01", "07:03", "07:03"]);
  });

  // Common practice: a microwave biscuit cooks for one minute and stands 15 to 20 minutes, while the main is made.
  it("makes the main while the microwave biscuit stands", () => {
    const work = [
      task("main", 14, 0),
      task("biscuit", 4, 1, { equipment: [{ kind: "MICROWAVE", units: 1, minutes: 5 }] }),
      task("biscuit/cool", 0, 15, { kind: "COOL", after: ["biscuit"] }),
      task("pack", 3, 0, { kind: "PACK", after: ["main", "biscuit/cool"] }),
    ];
    const plans = timetable(work, morning, [{ kind: "MICROWAVE", units: 1 }]);
    expect(clock(plans, "biscuit")).toEqual(["06:30", "06:34", "06:35"]);
    expect(clock(plans, "main")).toEqual(["06:34", "06:48", "06:48"]);
    expect(clock(plans, "pack")).toEqual(["06:50", "06:53", "06:53"]);
  });

  it("does safe things before things that handle an allergen, and packs the safe box first", () => {
    const plans = timetable([
      task("cheese", 5, 10, { handles: ["MILK"] }),
      task("carrots", 4, 0),
      task("grapes", 2, 0),
      task("pack-cheese", 2, 0, { kind: "PACK", after: ["cheese"], handles: ["MILK"] }),
      task("pack-plain", 2, 0, { kind: "PACK", after: ["carrots", "grapes"] }),
    ]);
    const order = [...plans.values()].map((plan) => plan.key);
    expect(order.indexOf("cheese")).toBeGreaterThan(order.indexOf("carrots"));
    expect(order.indexOf("cheese")).toBeGreaterThan(order.indexOf("grapes"));
    expect(order.indexOf("pack-cheese")).toBeGreaterThan(order.indexOf("pack-plain"));
  });

  it("gives up the safe-first order only when a child would otherwise leave without the box", () => {
    const work = (leaveAt: string): Work[] => [
      task("porridge", 2, 20, { handles: ["MILK"] }),
      task("carrots", 10, 0),
      task("pack-porridge", 2, 0, { kind: "PACK", after: ["porridge"], handles: ["MILK"], mustEndBy: leaveAt }),
    ];
    // Safe first: 10 + 22 + 2 = 34 minutes. Porridge first: 24 minutes.
    expect(clock(timetable(work("07:04")), "carrots")).toEqual(["06:30", "06:40", "06:40"]);
    expect(clock(timetable(work("06:54")), "porridge")).toEqual(["06:30", "06:32", "06:52"]);
  });

  it("gives two carers two things at once, and one carer one after the other", () => {
    const work = [task("rolls", 6, 0), task("salad", 6, 0)];
    expect(clock(timetable(work), "salad")).toEqual(["06:36", "06:42", "06:42"]);
    const both = timetable(work, { ...morning, carers: 2 });
    expect([clock(both, "rolls"), clock(both, "salad")]).toEqual([
      ["06:30", "06:36", "06:36"],
      ["06:30", "06:36", "06:36"],
    ]);
    expect(both.get("rolls")?.carer).not.toBe(both.get("salad")?.carer);
  });

  it("packs first the box of the child who leaves first", () => {
    const plans = timetable([
      task("pack-late", 4, 0, { kind: "PACK", mustEndBy: "08:00" }),
      task("pack-early", 4, 0, { kind: "PACK", mustEndBy: "06:34" }),
    ]);
    expect(clock(plans, "pack-early")).toEqual(["06:30", "06:34", "06:34"]);
  });

  it("keeps times on paper free of overlaps when minutes have tenths", () => {
    const plans = timetable([task("a", 0.5, 0), task("b", 1.7, 0), task("c", 2.3, 0), task("d", 0.5, 0)]);
    const rows = [...plans.values()];
    rows.slice(1).forEach((row, r) => expect(row.startsAt >= (rows[r]?.handsFreeAt ?? "")).toBe(true));
    expect(rows.at(-1)?.endsAt).toBe("06:35");
  });

  it("writes an appliance's minutes so that the next use starts on paper when it is free", () => {
    const oven = (minutes: number) => [{ kind: "OVEN" as const, units: 1, minutes }];
    const plans = timetable(
      [task("a", 0.4, 0), task("b", 1, 9.4, { equipment: oven(10.4) }), task("c", 1, 9.4, { equipment: oven(10.4) })],
      morning,
      [{ kind: "OVEN", units: 1 }],
    );
    const [first, second] = [...plans.values()].filter((plan) => plan.equipment.length > 0);
    const minute = (time = "") => Number(time.slice(3));
    expect(minute(first?.startsAt) + (first?.equipment[0]?.minutes ?? 0)).toBeLessThanOrEqual(minute(second?.startsAt));
  });

  it("lets a late evening run past midnight", () => {
    const late = timetable([task("dough", 10, 60)], { ...morning, startsAt: "23:30" });
    expect(clock(late, "dough")).toEqual(["23:30", "23:40", "00:40"]);
  });

  it("starts with what an earlier session left, without waiting for it", () => {
    const evening: SessionBrief = {
      ...morning,
      key: "evening-2026-09-06",
      kind: "EVENING",
      date: "2026-09-06",
      startsAt: "19:00",
    };
    const result = scheduleSessions({
      sessions: [evening, morning],
      equipment: [],
      work: [task("fill", 5, 0, { after: ["dough"] }), task("dough", 8, 30, { session: evening.key })],
    });
    expect(result.ok && result.value.tasks.map((plan) => [plan.key, plan.startsAt])).toEqual([
      ["dough", "19:00"],
      ["fill", "06:30"],
    ]);
  });
});

describe("how long a session takes and how late it can begin", () => {
  // Worked by hand. Rice 2 + 20 minutes on the one burner, then 10 to cool; eggs 1 + 9 on the same burner; two boxes, 3 minutes each.
  const burner = (minutes: number) => [{ kind: "HOB_BURNER", units: 1, minutes } as const];
  const work = [
    task("rice", 2, 20, { equipment: burner(22) }),
    task("rice/cool", 0, 10, { kind: "COOL", after: ["rice"] }),
    task("eggs", 1, 9, { equipment: burner(10) }),
    task("pack-rice", 3, 0, { kind: "PACK", after: ["rice/cool"], mustEndBy: "07:30" }),
    task("pack-eggs", 3, 0, { kind: "PACK", after: ["eggs"], mustEndBy: "07:40" }),
  ];
  const result = scheduleSessions({ sessions: [morning], equipment: [{ kind: "HOB_BURNER", units: 1 }], work });
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  const { tasks, sessions } = result.value;
  const plans = new Map(tasks.map((plan) => [plan.key, plan]));

  it("cooks the rice first, because it has to cool, and proves that nothing is shorter", () => {
    // Rice first: 22 to cook, eggs from 22 to 32 while it cools, both boxes from 32: 38. Eggs first: 10 + 22 + 10 + 3 = 45.
    expect(clock(plans, "rice")).toEqual(["06:30", "06:32", "06:52"]);
    expect(clock(plans, "eggs")).toEqual(["06:52", "06:53", "07:02"]);
    expect(sessions[0]).toMatchObject({ lastsMinutes: 38, leastMinutes: 38 });
  });

  it("says how late each task can begin for boxes that leave at 07:30 and 07:40", () => {
    // The rice's box: 07:27, cooling from 07:17, cooking from 06:55. The eggs' box: 07:37, and hands are free for the rice's box at
    // 07:27, so a minute before that the eggs are put on.
    const latest = Object.fromEntries(tasks.map((plan) => [plan.key, plan.latestStartsAt]));
    expect(latest).toMatchObject({ rice: "06:55", "rice/cool": "07:17", "pack-rice": "07:27", "pack-eggs": "07:37" });
    expect(latest.eggs).toBe("07:26");
    expect(sessions[0]).toMatchObject({ latestStartsAt: "06:55", noLaterThan: "06:55" });
  });
});

describe("a session that is too short", () => {
  const faults = (work: Work[], session = morning) => {
    const result = scheduleSessions({ sessions: [session], equipment: [], work });
    return result.ok ? [] : result.error;
  };

  it("says how many hands-on minutes are needed and how many there are", () => {
    expect(faults([task("a", 40, 0), task("b", 20.2, 0)])).toEqual([
      {
        kind: "SessionTooShort",
        session: morning.key,
        limit: "HANDS_ON",
        neededMinutes: 61,
        haveMinutes: 60,
        childIds: [],
      },
    ]);
  });

  it("says when an oven dish outlasts the session", () => {
    expect(faults([task("bake", 5, 90)])).toEqual([
      {
        kind: "SessionTooShort",
        session: morning.key,
        limit: "ELAPSED",
        neededMinutes: 95,
        haveMinutes: 90,
        childIds: [],
      },
    ]);
  });

  it("names the child whose box is not ready when it leaves", () => {
    const pack = task("pack", 3, 0, { kind: "PACK", after: ["rice"], mustEndBy: "06:50", childIds: ["teo"] });
    expect(faults([task("rice", 2, 20), pack])).toEqual([
      {
        kind: "SessionTooShort",
        session: morning.key,
        limit: "LEAVE_TIME",
        neededMinutes: 25,
        haveMinutes: 20,
        childIds: ["teo"],
      },
    ]);
  });

  it("counts work without a session, or with nobody in it, as a session of no minutes", () => {
    expect(faults([task("a", 4, 0, { session: "morning-2026-09-08" })])).toMatchObject([
      { haveMinutes: 0, neededMinutes: 4 },
    ]);
    expect(faults([task("a", 4, 0)], { ...morning, carers: 0 })).toMatchObject([{ haveMinutes: 0, neededMinutes: 4 }]);
  });

  it("refuses work that waits for itself, for nothing known, or for an appliance nobody owns", () => {
    expect(() => faults([task("a", 1, 0, { after: ["b"] }), task("b", 1, 0, { after: ["a"] })])).toThrow(
      /waits for itself/,
    );
    expect(() => faults([task("a", 1, 0, { after: ["ghost"] })])).toThrow(/ghost/);
    expect(() => faults([task("a", 1, 5, { equipment: [{ kind: "OVEN", units: 1, minutes: 5 }] })])).toThrow(/OVEN/);
  });
});
