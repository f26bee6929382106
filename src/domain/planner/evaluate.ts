import { UNSERVED } from "./base-plan.js";
import type { Clash, FinishLoad, Problem, Solution, SolvedBatch } from "./problem.js";
import { POINT } from "./problem-tables.js";

interface Loads {
  /** Tenths of a minute per window. */
  readonly minutes: number[];
  /** Tenths of a minute per window and equipment. */
  readonly equipment: number[][];
  /** Millilitres per night before a school day. */
  readonly refrigerator: number[];
}

/**
 * What a week costs and which hard rows it breaks, from nothing but the problem and the decisions; shares no sums with the search.
 * Objective and terms in thousandths of a point. In a clash, `name` is the row's name, or the number of the dish (REPEATS), starch
 * family (STARCH), other child (SIBLINGS), equipment (EQUIPMENT) or base (SUPPLY); child, day and window are -1 where the row has
 * none. STARCH stands at the later day, STORAGE at the day after the night.
 * @param picks candidate index per position; -1 where nothing is picked (clash EMPTY)
 * @param eveningFinish dishes finished the evening before, where dish, day and kitchen allow; entries nobody eats count for nothing
 */
export function evaluate(
  problem: Problem,
  picks: readonly number[],
  eveningFinish: readonly { readonly dish: number; readonly day: number }[],
  batches: readonly SolvedBatch[],
): Solution {
  const clashes: Clash[] = [];
  const clash = (kind: Clash["kind"], name: string, at: Partial<Clash>, excess: number): void => {
    if (excess > 0) clashes.push({ kind, name, child: -1, day: -1, window: -1, ...at, excess });
  };
  const picked = problem.positions.map((position, p) => position.candidates[picks[p]!]);
  problem.positions.forEach(({ child, day }, p) => {
    if (picked[p] === undefined) clash("EMPTY", "", { child, day }, 1);
  });
  const dishAt = (p: number): number => picked[p]?.dish ?? -1;
  const total = (measure: number, positions: readonly number[]): number =>
    positions.reduce((sum, p) => sum + (picked[p]?.q[measure] ?? 0), 0);
  const same = (values: readonly number[]): number => (new Set(values).size === 1 ? values[0]! : -1);
  const where = (positions: readonly number[]): Partial<Clash> => ({
    child: same(positions.map((p) => problem.positions[p]!.child)),
    day: same(positions.map((p) => problem.positions[p]!.day)),
  });

  for (const band of problem.bands) {
    const sum = total(band.measure, band.positions);
    if (band.lo !== null) clash("BAND", band.name, where(band.positions), band.lo - sum);
    if (band.hi !== null) clash("BAND", band.name, where(band.positions), sum - band.hi);
  }
  problem.distinct.forEach((rule, r) => {
    const met = new Set<number>();
    for (const p of new Set(rule.positions)) {
      const candidate = picked[p];
      if (candidate === undefined || candidate.q[rule.measure]! <= 0) continue;
      const key = rule.counts === "DAYS" ? problem.positions[p]!.day : (candidate.kinds?.[r] ?? -1);
      if (key >= 0) met.add(key);
    }
    clash("DISTINCT", rule.name, where(rule.positions), rule.atLeast - met.size);
    if (rule.atMost >= 0) clash("DISTINCT", rule.name, where(rule.positions), met.size - rule.atMost);
  });
  const positions = problem.positions.map((position, p) => ({ ...position, p }));
  for (const rule of problem.together) {
    for (const box of new Set(rule.boxes)) {
      const inBox = positions.filter((position) => position.box === box);
      const has = (p: number, measure: number): boolean => (picked[p]?.q[measure] ?? 0) > 0;
      const meetings = inBox.flatMap((one) =>
        inBox.filter((other) => one !== other && has(one.p, rule.first) && has(other.p, rule.second)),
      ).length;
      clash("TOGETHER", rule.name, where(inBox.map(({ p }) => p)), meetings);
    }
  }

  for (let child = 0; child < problem.children; child += 1) {
    const own = positions.filter((position) => position.child === child);
    const eaten = countBy(
      own.filter(({ day }) => !problem.relaxed.repeats.includes(day)),
      ({ p }) => dishAt(p),
    );
    for (const [dish, times] of eaten) {
      if (dish >= 0) clash("REPEATS", String(dish), { child }, times - problem.dishes[dish]!.repeatMax);
    }
    for (const [first, second] of problem.neighbours) {
      if (problem.relaxed.starch.some((day) => day === first || day === second)) continue;
      const familiesOn = (day: number): Map<number, number> =>
        countBy(
          own.filter(({ day: on, p }) => on === day && problem.dishes[dishAt(p)]?.main === true),
          ({ p }) => problem.dishes[dishAt(p)]!.starch,
        );
      const before = familiesOn(first);
      for (const [family, times] of familiesOn(second)) {
        if (family >= 0) clash("STARCH", String(family), { child, day: second }, times * (before.get(family) ?? 0));
      }
    }
    for (let sibling = child + 1; sibling < problem.children; sibling += 1) {
      for (let day = 0; day < problem.days; day += 1) {
        if (problem.relaxed.siblings.includes(day)) continue;
        const meetings = own
          .filter((position) => position.day === day)
          .flatMap((left) =>
            positions
              .filter((right) => right.child === sibling && right.day === day)
              .map((right) => ({ sameSlot: left.slot === right.slot, left: dishAt(left.p), right: dishAt(right.p) })),
          );
        const alike = meetings.filter(({ left, right }) => left === right && left >= 0);
        const common = meetings.filter(({ sameSlot }) => sameSlot).length;
        const differing = common - alike.filter(({ sameSlot }) => sameSlot).length;
        const sharedMains = alike.filter(({ left }) => problem.dishes[left]!.main).length;
        clash("SIBLINGS", String(sibling), { child, day }, sharedMains + Math.max(0, Math.min(2, common) - differing));
      }
    }
  }

  const loads: Loads = {
    minutes: problem.windows.map(() => 0),
    equipment: problem.windows.map(() => new Array<number>(problem.equipment).fill(0)),
    refrigerator: new Array<number>(problem.days).fill(0),
  };
  const finishedInEvening = finishDishes(problem, dishAt, eveningFinish, loads);
  const readyUse = takeReady(problem, picked);
  const waste = makeBatches(problem, picked, batches, readyUse, loads, clash);

  problem.windows.forEach((window, w) => {
    const at = { day: window.kind === "WEEKEND" ? -1 : window.day, window: w };
    clash("MINUTES", "", at, loads.minutes[w]! - window.minutes);
    window.equipment.forEach((budget, e) => clash("EQUIPMENT", String(e), at, loads.equipment[w]![e]! - budget));
  });
  loads.refrigerator.forEach((ml, day) => clash("STORAGE", "", { day }, ml - problem.refrigeratorMl));

  const terms = {
    picks: picked.reduce((sum, candidate) => sum + (candidate?.cost ?? 0), 0) * POINT,
    minutes: problem.windows.reduce((sum, window, w) => sum + (window.effort * loads.minutes[w]! * POINT) / 10, 0),
    waste,
    targets: problem.targets.reduce((sum, target) => {
      const missed = target.direction * (target.target - total(target.measure, target.positions));
      return sum + Math.floor((Math.max(0, missed) * target.weight * 100 * POINT) / target.target);
    }, 0),
    distance: measureDistance(problem, dishAt) * POINT,
  };
  return {
    feasible: clashes.length === 0,
    picks: [...picks],
    eveningFinish: finishedInEvening,
    batches,
    readyUse,
    objective: terms.picks + terms.minutes + terms.waste + terms.targets + terms.distance,
    terms,
    clashes,
    steps: 0,
  };
}

function countBy<T>(items: readonly T[], key: (item: T) => number): Map<number, number> {
  const counts = new Map<number, number>();
  for (const item of items) counts.set(key(item), (counts.get(key(item)) ?? 0) + 1);
  return counts;
}

/** Loads every dish's finishing, once per dish and day when shared; returns the evening choices that hold. */
function finishDishes(
  problem: Problem,
  dishAt: (p: number) => number,
  eveningFinish: readonly { readonly dish: number; readonly day: number }[],
  loads: Loads,
): { dish: number; day: number }[] {
  const finishedInEvening: { dish: number; day: number }[] = [];
  const add = (part: FinishLoad, window: number, portions: number): void => {
    const times = problem.sharing ? 1 : portions;
    const goes = problem.sharing ? (part.portionsPerGo === 0 ? 1 : Math.ceil(portions / part.portionsPerGo)) : portions;
    loads.minutes[window]! += part.fixed * times + part.perPortion * portions;
    part.equipment.forEach((minutes, e) => {
      loads.equipment[window]![e]! += minutes * goes;
    });
  };
  for (let day = 0; day < problem.days; day += 1) {
    const morning = problem.windows.findIndex((window) => window.kind === "MORNING" && window.day === day);
    const evening = problem.windows.findIndex((window) => window.kind === "EVENING" && window.day === day);
    if (morning < 0) continue;
    const today = problem.positions.flatMap((position, p) =>
      position.day === day && dishAt(p) >= 0 ? [dishAt(p)] : [],
    );
    for (const [dish, portions] of countBy(today, (number) => number)) {
      const { morning: whole, split } = problem.dishes[dish]!;
      if (split !== null && evening >= 0 && eveningFinish.some((entry) => entry.dish === dish && entry.day === day)) {
        add(split.evening, evening, portions);
        add(split.morning, morning, portions);
        finishedInEvening.push({ dish, day });
      } else add(whole, morning, portions);
    }
  }
  return finishedInEvening;
}

type Picked = readonly (Problem["positions"][number]["candidates"][number] | undefined)[];

/** Demand per day of a base, of one child or (child -1) of all. */
function demandOf(problem: Problem, picked: Picked, base: number, child: number): number[] {
  const demand = new Array<number>(problem.days).fill(0);
  problem.positions.forEach((position, p) => {
    if (child >= 0 && position.child !== child) return;
    for (const use of picked[p]?.bases ?? []) if (use.base === base) demand[position.day]! += use.amount;
  });
  return demand;
}

/** Ready supply goes first: days in order, of a base's supplies the first to spoil. Says nothing of who eats it. */
function takeReady(problem: Problem, picked: Picked): { ready: number; day: number; amount: number }[] {
  const uses: { ready: number; day: number; amount: number }[] = [];
  problem.bases.forEach((_, base) => {
    const supplies = problem.ready
      .map((supply, ready) => ({ ...supply, ready }))
      .filter((supply) => supply.base === base)
      .sort((left, right) => left.lastDay - right.lastDay || left.ready - right.ready);
    demandOf(problem, picked, base, -1).forEach((demand, day) => {
      let open = demand;
      for (const supply of supplies) {
        if (day < supply.firstDay || day > supply.lastDay) continue;
        const amount = Math.min(open, supply.amount);
        if (amount === 0) continue;
        uses.push({ ready: supply.ready, day, amount });
        supply.amount -= amount;
        open -= amount;
      }
    });
  });
  return uses;
}

/** Loads the batches, says what stays over in thousandths of a point, and complains of all that a batch may not do. */
function makeBatches(
  problem: Problem,
  picked: Picked,
  plan: readonly SolvedBatch[],
  readyUse: readonly { readonly ready: number; readonly day: number; readonly amount: number }[],
  loads: Loads,
  clash: (kind: Clash["kind"], name: string, at: Partial<Clash>, excess: number) => void,
): number {
  let waste = 0;
  problem.bases.forEach((base, b) => {
    const name = String(b);
    const runs = plan.filter((run) => run.base === b);
    const madeIn = new Map<number, number>();
    for (const run of runs) {
      const window = problem.windows[run.window]!;
      const served = run.supply.reduce((sum, amount) => sum + amount, 0);
      const inDate = base.windows.find((entry) => entry.window === run.window);
      run.supply.forEach((amount, day) => {
        const fresh = inDate !== undefined && day >= inDate.firstDay && day <= inDate.lastDay;
        if (!fresh) clash("SUPPLY", name, { child: run.child, day, window: run.window }, amount);
      });
      clash("SUPPLY", name, { child: run.child, window: run.window }, served - run.batches * base.batchAmount);
      waste += Math.max(0, run.batches * base.batchAmount - served) * base.wastePerThousand;
      madeIn.set(run.window, (madeIn.get(run.window) ?? 0) + run.batches);
      loads.minutes[run.window]! += base.fixed + base.perBatch * run.batches;
      base.equipment.forEach((minutes, e) => {
        loads.equipment[run.window]![e]! += minutes * run.batches;
      });
      const firstNight = window.kind === "MORNING" ? window.day + 1 : window.day;
      const lastDay = run.supply.reduce((last, amount, day) => (amount > 0 ? day : last), UNSERVED);
      for (let night = firstNight; night <= lastDay; night += 1)
        loads.refrigerator[night]! += base.storageMl * run.batches;
    }
    for (const [window, batches] of madeIn)
      clash("SUPPLY", name, { window }, (batches - base.maxBatches) * base.batchAmount);

    const ready = new Array<number>(problem.days).fill(0);
    for (const use of readyUse) if (problem.ready[use.ready]!.base === b) ready[use.day]! += use.amount;
    const suppliedTo = (child: number): number[] =>
      ready.map((_, day) => runs.reduce((sum, run) => sum + (run.child === child ? run.supply[day]! : 0), 0));
    if (problem.sharing) {
      const supplied = suppliedTo(-1);
      demandOf(problem, picked, b, -1).forEach((demand, day) =>
        clash("SUPPLY", name, { day }, demand - ready[day]! - supplied[day]!),
      );
      return;
    }
    // Children in order eat of what is ready; the rest of a child's demand must come from batches of its own.
    for (let child = 0; child < problem.children; child += 1) {
      const supplied = suppliedTo(child);
      demandOf(problem, picked, b, child).forEach((demand, day) => {
        const fromReady = Math.min(demand, ready[day]!);
        ready[day]! -= fromReady;
        clash("SUPPLY", name, { child, day }, demand - fromReady - supplied[day]!);
      });
    }
  });
  return waste;
}

function measureDistance(problem: Problem, dishAt: (p: number) => number): number {
  const { stayClose } = problem;
  if (stayClose === null) return 0;
  const changed = problem.positions.flatMap((position, p) => {
    const agreed = stayClose.dishAt[p]!;
    return agreed >= 0 && agreed !== dishAt(p) ? [position.box] : [];
  });
  return changed.length * stayClose.pointsPerItem + new Set(changed).size * stayClose.pointsPerBox;
}
