import type { EquipmentKind } from "../../shared/codes.js";
import type { EquipmentBrief, SessionBrief } from "../../src/domain/brief.js";
import { scheduleSessions, type Timetable } from "../../src/domain/kitchen/timetable.js";
import type { Work } from "../../src/domain/kitchen/work.js";
import type { TaskPlan } from "../../src/domain/week.js";
import { createDice } from "../support/dice.js";

const KINDS: readonly EquipmentKind[] = ["OVEN", "HOB_BURNER", "CAKE_MOULD_SET"];

interface Kitchen {
  readonly session: SessionBrief;
  readonly equipment: readonly EquipmentBrief[];
  readonly work: readonly Work[];
}

/** Whole minutes only, so that the clock on paper is the clock inside. */
function inventKitchen(seed: number, mostTasks: number, withAllergens: boolean): Kitchen {
  const pick = createDice(seed);
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

function schedule(kitchen: Kitchen): Timetable {
  const result = scheduleSessions({ sessions: [kitchen.session], equipment: kitchen.equipment, work: kitchen.work });
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

const plan = (kitchen: Kitchen): readonly TaskPlan[] => schedule(kitchen).tasks;
const leastOf = (kitchen: Kitchen): number => schedule(kitchen).sessions[0]!.leastMinutes;
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

/** What a timetable does wrong, looked for minute by minute. */
function faultsOf(kitchen: Kitchen, tasks: readonly TaskPlan[]): string[] {
  const faults: string[] = [];
  const closes = OPENS + kitchen.session.elapsedMinutes;
  const limits = new Map(kitchen.work.map((work) => [work.key, work.mustEndBy]));
  const byKey = new Map(tasks.map((task) => [task.key, task]));
  for (const task of tasks) {
    const limit = limits.get(task.key);
    if (minute(task.endsAt) > Math.min(closes, limit == null ? closes : minute(limit))) faults.push(`${task.key} late`);
    for (const key of task.after)
      if ((byKey.get(key)?.endsAt ?? "99:99") > task.startsAt) faults.push(`${task.key} before ${key}`);
    for (const other of tasks)
      if (
        task.key < other.key &&
        task.carer === other.carer &&
        Math.min(task.handsOnMinutes, other.handsOnMinutes) > 0 &&
        task.handsFreeAt > other.startsAt &&
        other.handsFreeAt > task.startsAt
      )
        faults.push(`${task.key} with ${other.key}`);
  }
  for (const { kind, units } of kitchen.equipment) {
    const spans = spansOf(tasks, kind);
    for (const { from } of spans) {
      const inUse = spans.filter((span) => span.from <= from && from < span.to);
      if (inUse.reduce((sum, span) => sum + span.units, 0) > units) faults.push(`${kind} at ${from}`);
    }
  }
  return faults;
}

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
    for (const { kitchen, tasks } of planned) expect(lengthOf(tasks)).toBeGreaterThanOrEqual(leastOf(kitchen));
  });

  it("gives the same timetable for the same work", () => {
    for (const { kitchen, tasks } of planned.slice(0, 20)) expect(plan(kitchen)).toEqual(tasks);
  });
});

/**
 * The shortest session, by trying every order of starts and everyone's hands for each task: each task starts at the first minute, not
 * before the start of the one before it, when everything allows it. A shortest schedule shifted to the left is among these. On one
 * carer's list nothing safe comes after what is not. Minute by minute and shares nothing with the product's search.
 */
function shortestByTryingAll({ session, equipment, work }: Kitchen): number {
  let best = Infinity;
  const horizon = work.reduce((sum, task) => sum + task.handsOnMinutes + task.passiveMinutes + 20, 0);
  const touched = new Set<string>();
  for (const task of work)
    if (task.handles.length > 0 || task.after.some((key) => touched.has(key))) touched.add(task.key);
  interface Done {
    readonly task: Work;
    readonly start: number;
    readonly carer: number;
  }
  const tryRest = (placed: readonly Done[]): void => {
    const ends = placed.map(({ task, start }) => start + task.handsOnMinutes + task.passiveMinutes);
    if (placed.length === work.length) {
      best = Math.min(best, Math.max(...ends));
      return;
    }
    for (const task of work) {
      if (placed.some((other) => other.task === task)) continue;
      const before = task.after.map((key) => placed.findIndex((other) => other.task.key === key));
      if (before.includes(-1)) continue;
      const carers = task.handsOnMinutes === 0 ? [-1] : Array.from({ length: session.carers }, (_, carer) => carer);
      for (const carer of carers) {
        if (
          carer >= 0 &&
          !touched.has(task.key) &&
          placed.some((one) => one.carer === carer && touched.has(one.task.key))
        )
          continue;
        let start = Math.max(0, placed.at(-1)?.start ?? 0, ...before.map((p) => ends[p] ?? Infinity));
        while (start < horizon && !canStart({ task, start, carer }, placed)) start += 1;
        tryRest([...placed, { task, start, carer }]);
      }
    }
  };
  const canStart = (next: Done, placed: readonly Done[]): boolean => {
    const all = [...placed, next];
    const { start } = next;
    // Nothing placed starts later, so hands and appliances are busiest at the very start.
    if (
      next.carer >= 0 &&
      placed.some((one) => one.carer === next.carer && start < one.start + one.task.handsOnMinutes)
    )
      return false;
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
  it("finds the shortest session and proves it, safe things first, in every one of two hundred kitchens", () => {
    for (let seed = 1; seed <= 200; seed += 1) {
      const kitchen = inventKitchen(5000 + seed, 5, seed % 2 === 0);
      const shortest = shortestByTryingAll(kitchen);
      const { tasks, sessions } = schedule(kitchen);
      const timing = sessions[0]!;
      expect([lengthOf(tasks), timing.lastsMinutes, timing.leastMinutes]).toEqual([shortest, shortest, shortest]);
      // With one end for all, whoever begins later than that by the shortest session is late.
      expect(minute(timing.noLaterThan)).toBe(OPENS + kitchen.session.elapsedMinutes - shortest);
    }
  });
});

describe("how long a task can wait", () => {
  // Some boxes leave early, so that not everything can wait as long as the session's end.
  const kitchens = Array.from({ length: 100 }, (_, seed): Kitchen => {
    const kitchen = inventKitchen(9000 + seed, 12, true);
    const lasts = schedule(kitchen).sessions[0]!.lastsMinutes;
    const leaves = OPENS + Math.ceil(lasts) + (seed % 30);
    const mustEndBy = `${String(Math.floor(leaves / 60)).padStart(2, "0")}:${String(leaves % 60).padStart(2, "0")}`;
    return { ...kitchen, work: kitchen.work.map((work, w) => (w % 3 === 0 ? { ...work, mustEndBy } : work)) };
  });

  it("keeps everything in time and in order when every task waits as long as it can", () => {
    const later = (time: string, minutes: number): string => {
      const at = minute(time) + minutes;
      return `${String(Math.floor(at / 60)).padStart(2, "0")}:${String(at % 60).padStart(2, "0")}`;
    };
    let waited = 0;
    for (const kitchen of kitchens) {
      const { tasks, sessions } = schedule(kitchen);
      const waiting = tasks.map((task) => {
        const by = minute(task.latestStartsAt) - minute(task.startsAt);
        expect(by).toBeGreaterThanOrEqual(0);
        waited += by;
        return {
          ...task,
          startsAt: task.latestStartsAt,
          handsFreeAt: later(task.handsFreeAt, by),
          endsAt: later(task.endsAt, by),
        };
      });
      expect(faultsOf(kitchen, waiting)).toEqual([]);
      expect(waiting.map((task) => task.startsAt).sort()[0]).toBe(sessions[0]!.latestStartsAt);
      expect(sessions[0]!.latestStartsAt <= sessions[0]!.noLaterThan).toBe(true);
    }
    expect(waited).toBeGreaterThan(0);
  });
});
