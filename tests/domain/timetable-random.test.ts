import type { EquipmentKind } from "../../shared/codes.js";
import type { EquipmentBrief, SessionBrief } from "../../src/domain/brief.js";
import { boundSession, scheduleSessions } from "../../src/domain/kitchen/timetable.js";
import type { Work } from "../../src/domain/kitchen/work.js";
import type { TaskPlan } from "../../src/domain/week.js";

/** Lehmer generator (Park and Miller 1988): a fixed seed gives the same kitchens on any machine. */
function generator(seed: number): (below: number) => number {
  let state = (seed % 2147483646) + 1;
  return (below) => {
    state = (state * 48271) % 2147483647;
    return state % below;
  };
}

const KINDS: readonly EquipmentKind[] = ["OVEN", "HOB_BURNER", "CAKE_MOULD_SET"];

interface Kitchen {
  readonly session: SessionBrief;
  readonly equipment: readonly EquipmentBrief[];
  readonly work: readonly Work[];
}

/** Whole minutes only, so that the clock on paper is the clock inside. */
function inventKitchen(seed: number, mostTasks: number, withAllergens: boolean): Kitchen {
  const pick = generator(seed);
  const session: SessionBrief = {
    key: "weekend-2026-09-06",
    kind: "WEEKEND",
    date: "2026-09-06",
    startsAt: "06:00",
    handsOnMinutes: 1000,
    elapsedMinutes: 1000,
    carers: 1 + pick(2),
    effort: 1,
  };
  const equipment = KINDS.map((kind) => ({ kind, units: 1 + pick(2) }));
  const tasks = 2 + pick(mostTasks - 1);
  const work = Array.from({ length: tasks }, (_, j): Work => {
    const handsOnMinutes = pick(8);
    const passiveMinutes = handsOnMinutes === 0 ? 1 + pick(12) : pick(3) * pick(10);
    const own = equipment[pick(5)];
    const cooling = own?.kind === "CAKE_MOULD_SET" ? pick(6) : 0;
    return {
      key: `task-${j}`,
      session: session.key,
      kind: "FINISH",
      base: null,
      dish: null,
      text: "",
      childIds: [],
      forDates: [],
      handsOnMinutes,
      passiveMinutes,
      equipment:
        own === undefined
          ? []
          : [
              {
                kind: own.kind,
                units: 1 + pick(own.units),
                minutes: handsOnMinutes + passiveMinutes + cooling,
              },
            ],
      after: Array.from({ length: j }, (_, i) => `task-${i}`).filter(() => pick(4) === 0),
      handles: withAllergens && pick(3) === 0 ? ["SESAME"] : [],
      mustEndBy: null,
    };
  });
  return { session, equipment, work };
}

const minute = (time: string): number => Number(time.slice(0, 2)) * 60 + Number(time.slice(3));
const OPENS = 360;

function plan(kitchen: Kitchen): TaskPlan[] {
  const result = scheduleSessions({ sessions: [kitchen.session], equipment: kitchen.equipment, work: kitchen.work });
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

const lengthOf = (tasks: readonly TaskPlan[]): number => Math.max(...tasks.map((task) => minute(task.endsAt))) - OPENS;

interface Span {
  from: number;
  to: number;
  units: number;
}
const spansOf = (tasks: readonly TaskPlan[], kind: EquipmentKind): Span[] =>
  tasks.flatMap((task) =>
    task.equipment
      .filter((use) => use.kind === kind)
      .map((use) => {
        const from = minute(task.startsAt);
        return { from, to: from + use.minutes, units: use.units };
      }),
  );

describe("any kitchen, by three hundred invented work lists", () => {
  const kitchens = Array.from({ length: 300 }, (_, seed) => inventKitchen(seed + 1, 14, true));
  const planned = kitchens.map((kitchen) => ({ kitchen, tasks: plan(kitchen) }));

  it("schedules every task once, for its own minutes", () => {
    for (const { kitchen, tasks } of planned) {
      expect(tasks.map((task) => task.key).sort()).toEqual(kitchen.work.map((work) => work.key).sort());
      const hasOwnMinutes = (task: TaskPlan): boolean =>
        minute(task.handsFreeAt) - minute(task.startsAt) === task.handsOnMinutes &&
        minute(task.endsAt) - minute(task.handsFreeAt) === task.passiveMinutes;
      expect(tasks.filter((task) => !hasOwnMinutes(task))).toEqual([]);
    }
  });

  it("never gives a carer two things to do with their hands at once", () => {
    for (const { kitchen, tasks } of planned) {
      const busy = tasks.filter((task) => task.handsOnMinutes > 0);
      expect(busy.filter((task) => task.carer < 0 || task.carer >= kitchen.session.carers)).toEqual([]);
      const clashes = busy.flatMap((a) =>
        busy.filter(
          (b) => a.key < b.key && a.carer === b.carer && a.handsFreeAt > b.startsAt && b.handsFreeAt > a.startsAt,
        ),
      );
      expect(clashes).toEqual([]);
    }
  });

  it("never uses more of an appliance than the kitchen has", () => {
    for (const { kitchen, tasks } of planned) {
      for (const { kind, units } of kitchen.equipment) {
        const spans = spansOf(tasks, kind);
        const inUse = (moment: number): number =>
          spans.filter((span) => span.from <= moment && moment < span.to).reduce((sum, span) => sum + span.units, 0);
        expect(Math.max(0, ...spans.map((span) => inUse(span.from)))).toBeLessThanOrEqual(units);
      }
    }
  });

  it("never starts a task before what it waits for has ended", () => {
    for (const { tasks } of planned) {
      const endsAt = new Map(tasks.map((task) => [task.key, task.endsAt]));
      const tooEarly = tasks.filter((task) => task.after.some((key) => (endsAt.get(key) ?? "99:99") > task.startsAt));
      expect(tooEarly).toEqual([]);
    }
  });

  it("keeps each carer's safe tasks before those that handle an allergen", () => {
    for (const { tasks } of planned) {
      const touched = new Set<string>();
      for (const task of tasks)
        if (task.handles.length > 0 || task.after.some((key) => touched.has(key))) touched.add(task.key);
      const busy = tasks.filter((task) => task.handsOnMinutes > 0);
      const overtaken = busy
        .filter((task) => !touched.has(task.key))
        .filter((safe) =>
          busy.some(
            (other) => touched.has(other.key) && other.carer === safe.carer && other.startsAt < safe.handsFreeAt,
          ),
        );
      expect(overtaken).toEqual([]);
    }
  });

  it("never beats the bound", () => {
    for (const { kitchen, tasks } of planned) expect(lengthOf(tasks)).toBeGreaterThanOrEqual(boundSession(kitchen));
  });

  it("gives the same timetable for the same work", () => {
    for (const { kitchen, tasks } of planned.slice(0, 20)) expect(plan(kitchen)).toEqual(tasks);
  });
});

/**
 * The shortest session, by trying every order of starts: each task starts at the first minute, not before the start of the one
 * before it, when everything allows it. A shortest schedule shifted to the left is among these. Minute by minute and shares
 * nothing with the product's search.
 */
function shortestByTryingAll({ session, equipment, work }: Kitchen): number {
  let best = Infinity;
  const horizon = work.reduce((sum, task) => sum + task.handsOnMinutes + task.passiveMinutes + 20, 0);
  const tryRest = (placed: { task: Work; start: number }[]): void => {
    const ends = placed.map(({ task, start }) => start + task.handsOnMinutes + task.passiveMinutes);
    if (placed.length === work.length) {
      best = Math.min(best, Math.max(...ends));
      return;
    }
    for (const task of work) {
      if (placed.some((other) => other.task === task)) continue;
      const before = task.after.map((key) => placed.findIndex((other) => other.task.key === key));
      if (before.includes(-1)) continue;
      let start = Math.max(0, placed.at(-1)?.start ?? 0, ...before.map((p) => ends[p] ?? Infinity));
      while (start < horizon && !canStart(task, start, placed)) start += 1;
      tryRest([...placed, { task, start }]);
    }
  };
  const canStart = (task: Work, start: number, placed: { task: Work; start: number }[]): boolean => {
    const all = [...placed, { task, start }];
    // Nothing placed starts later, so hands and appliances are busiest at the very start.
    const hands = all.filter((one) => one.start <= start && start < one.start + one.task.handsOnMinutes).length;
    if (hands > session.carers && task.handsOnMinutes > 0) return false;
    for (const { kind, units } of equipment) {
      let inUse = 0;
      for (const one of all) {
        for (const use of one.task.equipment) {
          if (use.kind === kind && one.start <= start && start < one.start + use.minutes) inUse += use.units;
        }
      }
      if (inUse > units) return false;
    }
    return true;
  };
  tryRest([]);
  return best;
}

describe("small kitchens, against trying every order", () => {
  it("never claims less than the shortest session, and finds it in every one of two hundred kitchens", () => {
    let found = 0;
    const seeds = 200;
    for (let seed = 1; seed <= seeds; seed += 1) {
      const kitchen = inventKitchen(5000 + seed, 5, false);
      const shortest = shortestByTryingAll(kitchen);
      const ours = lengthOf(plan(kitchen));
      const bound = boundSession(kitchen);
      expect(ours).toBeGreaterThanOrEqual(shortest);
      expect(bound).toBeLessThanOrEqual(shortest);
      if (ours === shortest) found += 1;
    }
    expect(found).toBe(seeds);
  });
});
