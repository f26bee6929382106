/**
 * The week as a linear program in integers, for a lower bound that can be checked. A relaxation: every feasible week is a point
 * of it and costs there at most what it really costs. Left out, and so only making the bound weaker: most of the distinct counts,
 * storage, "at least two slots differ", one window per day and base. Method and strengthening rows: fixed-charge lot
 * sizing with set-up rows lifted by what a set-up can supply.
 */
import type { FinishLoad, Problem } from "../problem.js";
import { reachOf } from "../reach.js";
import { openCandidates } from "./open-candidates.js";

/** Cost units in a thousandth of a point: a weekly target's price per unit is rounded down to one of these. */
export const COST_UNITS = 1000;

export interface LinearModel {
  /** In cost units (millionths of a point), whole numbers. */
  readonly cost: Float64Array;
  readonly lower: Float64Array;
  /** Finite for every column: a bound from any duals needs it. */
  readonly upper: Float64Array;
  /** Constant of the objective, cost units. */
  readonly offset: number;
  /** Sides of the rows; minus or plus Infinity where open, whole numbers elsewhere. */
  readonly rowLower: Float64Array;
  readonly rowUpper: Float64Array;
  /** Entries of row r: rowStart[r] .. rowStart[r + 1] - 1, whole numbers. */
  readonly rowStart: Int32Array;
  readonly rowColumn: Int32Array;
  readonly rowValue: Float64Array;
  /**
   * Columns that are whole in every week and worth branching on: whether a base is made, in how many windows, how many batches
   * of it in all, how many mains of a child use it, then set-ups and batches window by window.
   */
  readonly whole: Int32Array;
  /**
   * Duals in cost units, one a row, that need no solver: every place at its cheapest candidate, every leftover at its full price.
   * They prove what the picks cost at least.
   */
  readonly plainDuals: Float64Array;
  /** Columns that are whole in every week too, to branch on when all of those are: which dish, and when it is finished. */
  readonly fine: Int32Array;
  /**
   * Rows that come to the same whatever is picked. A bound may use them, a solver is better off without: the dual of such a row may be
   * anything that another row's takes back.
   */
  readonly idle: Int32Array;
}

class Builder {
  readonly cost: number[] = [];
  readonly lower: number[] = [];
  readonly upper: number[] = [];
  readonly rowLower: number[] = [];
  readonly rowUpper: number[] = [];
  readonly rowStart: number[] = [0];
  readonly rowColumn: number[] = [];
  readonly rowValue: number[] = [];
  offset = 0;

  column(cost: number, upper: number, lower = 0): number {
    this.cost.push(cost);
    this.lower.push(lower);
    this.upper.push(upper);
    return this.cost.length - 1;
  }

  /** Its number comes back. */
  row(low: number, terms: readonly (readonly [column: number, value: number])[], high: number): number {
    const sums = new Map<number, number>();
    for (const [column, value] of terms) sums.set(column, (sums.get(column) ?? 0) + value);
    for (const [column, value] of sums) {
      if (value === 0) continue;
      this.rowColumn.push(column);
      this.rowValue.push(value);
    }
    this.rowLower.push(low);
    this.rowUpper.push(high);
    return this.rowStart.push(this.rowColumn.length) - 2;
  }
}

type Term = readonly [column: number, value: number];

interface Use {
  readonly place: number;
  readonly child: number;
  readonly day: number;
  readonly dish: number;
  readonly column: number;
  readonly amount: number;
}

function push(map: Map<string, number[]>, key: string, value: number): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [value]);
  else list.push(value);
}

/** Null when the problem has sharing switched off, which only the comparison has. */
export function buildLinearModel(problem: Problem): LinearModel | null {
  if (!problem.sharing) return null;
  const { positions, dishes, bases, windows, days, children } = problem;
  const to = new Builder();
  const load = windows.map((): Term[] => []);
  const busy = windows.map(() => Array.from({ length: problem.equipment }, (): Term[] => []));
  const morningOf = (day: number) => windows.findIndex((window) => window.kind === "MORNING" && window.day === day);
  const eveningOf = (day: number) => windows.findIndex((window) => window.kind === "EVENING" && window.day === day);
  /** Cost units of a tenth of a minute. */
  const effort = windows.map((window) => window.effort * 100 * COST_UNITS);

  // Picks.
  const open = openCandidates(problem);
  const pick = positions.map((position, p) =>
    position.candidates.map((candidate, k) => to.column(candidate.cost * 1000 * COST_UNITS, open[p]![k]! ? 1 : 0)),
  );
  const chosen = positions.map((_, p) =>
    to.row(
      1,
      pick[p]!.map((column): Term => [column, 1]),
      1,
    ),
  );
  /** Rows by which a base gives no more than is made of it, and the price of what is left over. */
  const made: (readonly [row: number, waste: number])[] = [];
  const ones = (columns: readonly number[]): Term[] => columns.map((column) => [column, 1]);

  const total = (measure: number, over: readonly number[]): Term[] =>
    over.flatMap((p) => positions[p]!.candidates.map((candidate, k): Term => [pick[p]![k]!, candidate.q[measure]!]));
  const same = (left: readonly number[], right: readonly number[]): boolean =>
    left.length === right.length && new Set([...left, ...right]).size === new Set(left).size;
  const idle: number[] = [];
  for (const { measure, positions: over, lo, hi } of problem.bands) {
    if (lo === null && hi === null) continue;
    const row = to.row(lo ?? -Infinity, total(measure, over), hi ?? Infinity);
    const constant = over.every((p) => {
      const amounts = positions[p]!.candidates.flatMap(({ q }, k) => (open[p]![k]! ? [q[measure]!] : []));
      return amounts.every((amount) => amount === amounts[0]);
    });
    if (constant) idle.push(row);
  }
  for (const { measure, positions: over, target, direction, weight } of problem.targets) {
    const band = problem.bands.find((row) => row.measure === measure && same(row.positions, over));
    const reach = reachOf(problem, measure, over).most;
    const most =
      direction === 1
        ? target - Math.min(target, Math.max(0, band?.lo ?? 0))
        : Math.max(0, Math.min(reach, band?.hi ?? Infinity) - target);
    const missed = to.column(Math.floor((weight * 100 * 1000 * COST_UNITS) / target), most);
    if (direction === 1) to.row(target, [...total(measure, over), [missed, 1]], Infinity);
    else to.row(-Infinity, [...total(measure, over), [missed, -1]], target);
    // The week's own price is rounded down to a whole thousandth of a point.
    to.offset -= COST_UNITS;
  }

  // A child's repeats, starch from day to day, siblings' mains.
  const counted = new Set(Array.from({ length: days }, (_, day) => day));
  for (const day of problem.relaxed.repeats) counted.delete(day);
  const noRepeatRelaxed = problem.relaxed.repeats.length === 0;
  const byChildDish = new Map<string, number[]>();
  positions.forEach(({ child, day, candidates }, p) =>
    candidates.forEach(({ dish }, k) => {
      if (!counted.has(day)) return;
      const key = `${child}:${dish}`;
      push(byChildDish, key, pick[p]![k]!);
    }),
  );
  for (const [key, columns] of byChildDish) {
    const { repeatMax } = dishes[Number(key.split(":")[1])]!;
    if (columns.length > repeatMax) to.row(-Infinity, ones(columns), repeatMax);
  }
  const starchRests = new Set(problem.relaxed.starch);
  const families = [...new Set(dishes.flatMap(({ main, starch }) => (main && starch >= 0 ? [starch] : [])))];
  /** Mains of a starch family that a child may have on a day, all of them or (by base) those that use it. */
  const mains = new Map<string, number[]>();
  /** Picks that use a base, by base. */
  const usesOf = bases.map((): Use[] => []);
  positions.forEach(({ child, day, candidates }, p) =>
    candidates.forEach(({ dish, bases: uses }, k) => {
      const { main, starch } = dishes[dish]!;
      const column = pick[p]![k]!;
      const isMain = main && starch >= 0;
      if (isMain) push(mains, `${child}/${starch}/${day}`, column);
      for (const base of new Set(uses.flatMap((use) => (use.amount > 0 ? [use.base] : [])))) {
        const amount = uses.reduce((sum, use) => sum + (use.base === base ? use.amount : 0), 0);
        usesOf[base]!.push({ place: p, child, day, dish, column, amount });
        if (isMain) push(mains, `${child}/${starch}/${day}/${base}`, column);
      }
    }),
  );
  const mainPlaces = (child: number, day: number): number =>
    positions.filter(
      (position) =>
        position.child === child && position.day === day && position.candidates.some(({ dish }) => dishes[dish]!.main),
    ).length;
  const mainsOn = (child: number, family: number, on: readonly number[], base?: number): number[] =>
    on.flatMap((day) => mains.get(`${child}/${family}/${day}${base === undefined ? "" : `/${base}`}`) ?? []);
  for (let child = 0; child < children; child += 1) {
    for (const [first, second] of problem.neighbours) {
      if (starchRests.has(first) || starchRests.has(second)) continue;
      for (const family of families) {
        const columns = mainsOn(child, family, [first, second]);
        // Where a day has one main, two of a family on two days are one too many.
        if (columns.length > 1 && mainPlaces(child, first) === 1 && mainPlaces(child, second) === 1)
          to.row(-Infinity, ones(columns), 1);
      }
    }
  }
  const siblingsRest = new Set(problem.relaxed.siblings);
  const dishDays = new Map<
    string,
    { dish: number; day: number; columns: number[]; children: Set<number>; byChild: Map<number, number[]> }
  >();
  positions.forEach(({ child, day, candidates }, p) =>
    candidates.forEach(({ dish }, k) => {
      const key = `${dish}@${day}`;
      const entry = dishDays.get(key) ?? {
        dish,
        day,
        columns: [],
        children: new Set<number>(),
        byChild: new Map<number, number[]>(),
      };
      entry.columns.push(pick[p]![k]!);
      entry.children.add(child);
      entry.byChild.set(child, [...(entry.byChild.get(child) ?? []), pick[p]![k]!]);
      dishDays.set(key, entry);
    }),
  );

  // Finishing: once per dish and day, in the morning or split.
  const finishing: number[] = [];
  /** Picks of one dish by a child that have it at several places of a day, and the ways to finish it. */
  const severalPlaces: { readonly own: readonly number[]; readonly ways: readonly Term[] }[] = [];
  for (const { dish: number, day, columns, children: eaters, byChild } of dishDays.values()) {
    const dish = dishes[number]!;
    const alone = dish.main && !siblingsRest.has(day);
    if (alone && eaters.size > 1) to.row(-Infinity, ones(columns), 1);
    const morning = morningOf(day);
    if (morning < 0) continue;
    const evening = eveningOf(day);
    const { split } = dish;
    const splits = split !== null && evening >= 0 ? split : null;
    // At most one portion a day: then the portion's own minutes are known with the way it is finished.
    const single = columns.length === 1 || (alone && [...byChild.values()].every((own) => own.length === 1));
    const minutesOf = (part: FinishLoad): number => part.fixed + (single ? part.perPortion : 0);
    const fitsIn = (part: FinishLoad, window: number): boolean =>
      minutesOf(part) <= windows[window]!.minutes &&
      part.equipment.every((tenths, e) => tenths <= windows[window]!.equipment[e]!);
    /** A column for a way to finish; one that no session has room for stays at zero, and its figures out of the program. */
    const wayOf = (parts: readonly (readonly [part: FinishLoad, window: number])[]): number => {
      const fits = parts.every(([part, window]) => fitsIn(part, window));
      const column = to.column(0, fits ? 1 : 0);
      finishing.push(column);
      for (const [part, window] of fits ? parts : []) {
        to.cost[column]! += minutesOf(part) * effort[window]!;
        load[window]!.push([column, minutesOf(part)]);
        part.equipment.forEach((tenths, e) => busy[window]![e]!.push([column, tenths]));
      }
      return column;
    };
    const whole = wayOf([[dish.morning, morning]]);
    const ways: Term[] = [[whole, -1]];
    if (splits !== null) {
      const parted = wayOf([
        [splits.evening, evening],
        [splits.morning, morning],
      ]);
      ways.push([parted, -1]);
      to.row(
        -Infinity,
        [
          [whole, 1],
          [parted, 1],
        ],
        1,
      );
    }
    if (single) {
      to.row(-Infinity, [...ones(columns), ...ways], 0);
      continue;
    }
    for (const own of byChild.values()) {
      // Once a week means once a day; else each place by itself.
      const once = dish.repeatMax === 1 && counted.has(day);
      for (const group of once ? [own] : own.map((column) => [column])) to.row(-Infinity, [...ones(group), ...ways], 0);
      if (!once && own.length > 1) severalPlaces.push({ own, ways });
    }
    const perPortion =
      splits === null
        ? dish.morning.perPortion * effort[morning]!
        : Math.min(
            dish.morning.perPortion * effort[morning]!,
            splits.evening.perPortion * effort[evening]! + splits.morning.perPortion * effort[morning]!,
          );
    const inMorning =
      splits === null ? dish.morning.perPortion : Math.min(dish.morning.perPortion, splits.morning.perPortion);
    for (const column of columns) {
      to.cost[column]! += perPortion;
      load[morning]!.push([column, inMorning]);
    }
  }

  // Bases: set-ups, batches, what they give to which day.
  const whole: number[] = [];
  /** A column that counts others, so that a branch may decide a sum before its parts. */
  const count = (of: readonly number[], most: number): void => {
    if (of.length < 2) return;
    const column = to.column(0, most);
    whole.push(column);
    to.row(0, [...ones(of), [column, -1]], 0);
  };
  bases.forEach((base, b) => {
    const uses = usesOf[b]!;
    if (uses.length === 0) return;
    const demand = Array.from({ length: days }, (): Term[] => []);
    const most = positions.map(() => 0);
    for (const { place, day, column, amount } of uses) {
      demand[day]!.push([column, amount]);
      most[place] = Math.max(most[place]!, amount);
    }
    const mostOn = Array.from({ length: days }, () => 0);
    positions.forEach(({ day }, place) => {
      mostOn[day]! += most[place]!;
    });
    const waste = base.wastePerThousand * COST_UNITS;
    const ready = problem.ready.filter((supply) => supply.base === b);
    const flows = Array.from({ length: days }, (): Term[] => []);
    const windowsOf = base.windows.map((entry) => {
      const y = to.column(base.fixed * effort[entry.window]!, 1);
      const n = to.column(base.perBatch * effort[entry.window]! + base.batchAmount * waste, base.maxBatches);
      whole.push(y, n);
      load[entry.window]!.push([y, base.fixed], [n, base.perBatch]);
      base.equipment.forEach((tenths, e) => busy[entry.window]![e]!.push([n, tenths]));
      const given: Term[] = [];
      for (let day = entry.firstDay; day <= entry.lastDay; day += 1) {
        const reach = mostOn[day]!;
        if (reach === 0) continue;
        const f = to.column(-waste, reach);
        given.push([f, 1]);
        flows[day]!.push([f, 1]);
        to.row(
          -Infinity,
          [
            [f, 1],
            [y, -reach],
          ],
          0,
        );
      }
      made.push([to.row(-Infinity, [...given, [n, -base.batchAmount]], 0), waste]);
      to.row(
        -Infinity,
        [
          [n, 1],
          [y, -base.maxBatches],
        ],
        0,
      );
      to.row(
        -Infinity,
        [
          [y, 1],
          [n, -1],
        ],
        0,
      );
      return { ...entry, y, n };
    });
    for (const supply of ready) {
      const given: Term[] = [];
      for (let day = supply.firstDay; day <= supply.lastDay; day += 1) {
        const r = to.column(0, Math.min(supply.amount, mostOn[day]!));
        given.push([r, 1]);
        flows[day]!.push([r, 1]);
      }
      to.row(-Infinity, given, supply.amount);
    }
    for (let day = 0; day < days; day += 1) {
      if (demand[day]!.length > 0)
        to.row(0, [...flows[day]!, ...demand[day]!.map(([column, amount]): Term => [column, -amount])], 0);
    }
    const y = to.column(0, 1);
    whole.push(y);
    count(
      windowsOf.map((entry) => entry.y),
      windowsOf.length,
    );
    count(
      windowsOf.map((entry) => entry.n),
      windowsOf.length * base.maxBatches,
    );
    for (let child = 0; child < children; child += 1) {
      const own = uses.filter((use) => use.child === child && dishes[use.dish]!.main);
      count(
        own.map((use) => use.column),
        new Set(own.map((use) => use.place)).size,
      );
    }
    for (const entry of windowsOf)
      to.row(
        -Infinity,
        [
          [entry.y, 1],
          [y, -1],
        ],
        0,
      );
    to.row(-Infinity, [[y, 1], ...windowsOf.map((entry): Term => [entry.y, -1])], 0);
    // What follows says "no set-up, no dish of it", which is untrue where food is ready without one.
    if (ready.length > 0) return;

    const reaching = (first: number, last: number) =>
      windowsOf.filter((entry) => entry.firstDay <= last && entry.lastDay >= first);
    const groups = new Map<string, number[]>();
    for (const { place, child, day, dish, column } of uses) {
      push(groups, `place/${place}`, column);
      if (noRepeatRelaxed) push(groups, `week/${child}/${dish}`, column);
      if (dishes[dish]!.main && !siblingsRest.has(day)) push(groups, `main/${day}/${dish}`, column);
    }
    for (const [key, columns] of groups) {
      const [kind, first, second] = key.split("/");
      if (kind === "week") to.row(-Infinity, [...ones(columns), [y, -dishes[Number(second)]!.repeatMax]], 0);
      else {
        const day = kind === "place" ? positions[Number(first)]!.day : Number(first);
        to.row(-Infinity, [...ones(columns), ...reaching(day, day).map((entry): Term => [entry.y, -1])], 0);
      }
    }
    // A run of days of one window gives a child a main of one starch family at most every other day.
    for (let child = 0; child < children; child += 1) {
      for (const family of families) {
        for (let first = 0; first < days; first += 1) {
          for (let last = first + 1; last < days; last += 1) {
            const run = Array.from({ length: last - first + 1 }, (_, at) => first + at);
            const linked = run
              .slice(1)
              .every((day) => problem.neighbours.some(([one, other]) => one === day - 1 && other === day));
            if (!linked || run.some((day) => starchRests.has(day))) break;
            const columns = mainsOn(child, family, run, b);
            if (columns.length < 2) continue;
            const supply = reaching(first, last).map((entry): Term => {
              const reach = Math.min(last, entry.lastDay) - Math.max(first, entry.firstDay) + 1;
              return [entry.y, -Math.ceil(reach / 2)];
            });
            to.row(-Infinity, [...ones(columns), ...supply], 0);
            if (run.length % 2 === 1) to.row(-Infinity, [...ones(columns), [y, -Math.ceil(run.length / 2)]], 0);
          }
        }
      }
    }
  });

  windows.forEach((window, w) => {
    if (load[w]!.length > 0) to.row(-Infinity, load[w]!, window.minutes);
    window.equipment.forEach((budget, e) => {
      if (busy[w]![e]!.some(([, value]) => value > 0)) to.row(-Infinity, busy[w]![e]!, budget);
    });
  });

  // Staying close: per item that differs, and once per box.
  const { stayClose } = problem;
  if (stayClose !== null) {
    const perItem = stayClose.pointsPerItem * 1000 * COST_UNITS;
    const boxes = new Map<number, number>();
    positions.forEach(({ box, candidates }, p) => {
      const agreed = stayClose.dishAt[p]!;
      if (agreed < 0) return;
      const others = candidates.flatMap(({ dish }, k) => (dish === agreed ? [] : [pick[p]![k]!]));
      for (const column of others) to.cost[column]! += perItem;
      const changed = boxes.get(box) ?? to.column(stayClose.pointsPerBox * 1000 * COST_UNITS, 1);
      boxes.set(box, changed);
      to.row(-Infinity, [...ones(others), [changed, -1]], 0);
    });
  }

  // Different kinds or days: one pick a place, so those of one kind and those of none leave enough places to the other kinds.
  /** Of picks with a mark in common only one is had: every place of a rule needs a kind of its own. */
  const marks = new Map<number, string[]>();
  problem.distinct.forEach(({ counts, measure, positions: listed, atLeast }, rule) => {
    if (atLeast <= 0) return;
    const over = [...new Set(listed)];
    const byKey = new Map<number, number[]>();
    const placesOf = new Map<number, Set<number>>();
    const none: number[] = [];
    for (const p of over) {
      positions[p]!.candidates.forEach((candidate, k) => {
        const key = counts === "DAYS" ? positions[p]!.day : (candidate.kinds?.[rule] ?? -1);
        const column = pick[p]![k]!;
        if (candidate.q[measure]! <= 0 || key < 0) none.push(column);
        else {
          byKey.set(key, [...(byKey.get(key) ?? []), column]);
          placesOf.set(key, (placesOf.get(key) ?? new Set()).add(p));
        }
      });
    }
    if (none.length > 0) to.row(-Infinity, ones(none), over.length - atLeast);
    for (const [key, columns] of byKey) {
      if (placesOf.get(key)!.size > 1) to.row(-Infinity, ones([...columns, ...none]), over.length - atLeast + 1);
      if (over.length === atLeast)
        for (const column of columns) marks.set(column, [...(marks.get(column) ?? []), `${rule}/${key}`]);
      // As many kinds as there can be: each of them.
      if (byKey.size === atLeast) to.row(1, ones(columns), Infinity);
    }
  });
  // A dish that a child has once a day at most needs its finishing whole, however it is spread over the day's places.
  for (const { own, ways } of severalPlaces) {
    const common = own.map((column) => marks.get(column) ?? []);
    if (common[0]!.some((mark) => common.every((some) => some.includes(mark))))
      to.row(-Infinity, [...ones(own), ...ways], 0);
  }
  for (const { first, second, boxes } of problem.together) {
    for (const box of new Set(boxes)) {
      const inBox = positions.flatMap((position, p) => (position.box === box ? [p] : []));
      const having = (p: number, measure: number): number[] =>
        positions[p]!.candidates.flatMap(({ q }, k) => (q[measure]! > 0 ? [pick[p]![k]!] : []));
      for (const one of inBox) {
        for (const other of inBox) {
          const left = having(one, first);
          const right = having(other, second);
          if (one !== other && left.length > 0 && right.length > 0) to.row(-Infinity, ones([...left, ...right]), 1);
        }
      }
    }
  }

  const plainDuals = new Float64Array(to.rowLower.length);
  for (const [row, waste] of made) plainDuals[row] = -waste;
  chosen.forEach((row, p) => {
    plainDuals[row] = pick[p]!.reduce((least, column) => Math.min(least, to.cost[column]!), Infinity);
  });
  return {
    cost: Float64Array.from(to.cost),
    lower: Float64Array.from(to.lower),
    upper: Float64Array.from(to.upper),
    offset: to.offset,
    rowLower: Float64Array.from(to.rowLower),
    rowUpper: Float64Array.from(to.rowUpper),
    rowStart: Int32Array.from(to.rowStart),
    rowColumn: Int32Array.from(to.rowColumn),
    rowValue: Float64Array.from(to.rowValue),
    plainDuals,
    whole: Int32Array.from(whole),
    fine: Int32Array.from([...pick.flat(), ...finishing]),
    idle: Int32Array.from(idle),
  };
}

/** The same program with some of its rows only: a relaxation, whatever rows are left out. */
export function keepRows(model: LinearModel, wanted: (row: number) => boolean): LinearModel {
  const kept = Array.from(model.rowLower.keys()).filter(wanted);
  const rowStart = [0];
  const entries: number[] = [];
  for (const row of kept) {
    for (let entry = model.rowStart[row]!; entry < model.rowStart[row + 1]!; entry += 1) entries.push(entry);
    rowStart.push(entries.length);
  }
  return {
    ...model,
    rowLower: Float64Array.from(kept, (row) => model.rowLower[row]!),
    rowUpper: Float64Array.from(kept, (row) => model.rowUpper[row]!),
    rowStart: Int32Array.from(rowStart),
    rowColumn: Int32Array.from(entries, (entry) => model.rowColumn[entry]!),
    rowValue: Float64Array.from(entries, (entry) => model.rowValue[entry]!),
    plainDuals: Float64Array.from(kept, (row) => model.plainDuals[row]!),
  };
}
