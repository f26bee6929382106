import type { Problem } from "../../src/domain/planner/problem.js";

/**
 * The week as a mixed-integer program in the LP file format, written straight from the model and sharing nothing with the search:
 * picks, bands, targets, repeats, starch, siblings, finishing once per dish and morning, bases from one window per day, batches,
 * minutes and equipment. Objective in thousandths of a point, weekly targets unrounded. Covers problems without evening finishing,
 * storage, ready supply, distinct counts and not-together rows.
 */
export function writeWeekProgram(problem: Problem): string {
  const rows: string[] = [];
  /** Coefficients by variable: the format takes each variable once. */
  const objective = new Map<string, number>();
  const binaries = new Set<string>();
  const integers = new Set<string>();
  const { positions, dishes, windows, bases } = problem;
  type Term = readonly [coefficient: number, variable: string];
  const sum = (terms: Iterable<Term>): string =>
    [...terms]
      .filter(([coefficient]) => coefficient !== 0)
      .map(([coefficient, variable]) => `${coefficient < 0 ? "-" : "+"} ${Math.abs(coefficient)} ${variable}`)
      .join(" ");
  const row = (terms: readonly Term[], relation: "<=" | ">=" | "=", side: number): void => {
    const left = sum(terms);
    // An empty left side is a row of its own kind: either true or the week is impossible.
    rows.push(`${left === "" ? "+ 0 nothing" : left} ${relation} ${side}`);
  };
  const cost = (coefficient: number, variable: string): void => {
    objective.set(variable, (objective.get(variable) ?? 0) + coefficient);
  };
  const x = (p: number, k: number): string => {
    binaries.add(`x_${p}_${k}`);
    return `x_${p}_${k}`;
  };
  const picksWhere = (test: (p: number, dish: number) => boolean): Term[] =>
    positions.flatMap(({ candidates }, p) =>
      candidates.flatMap(({ dish }, k): Term[] => (test(p, dish) ? [[1, x(p, k)]] : [])),
    );
  const minutes = windows.map((): Term[] => []);
  const equipment = windows.map(() => Array.from({ length: problem.equipment }, (): Term[] => []));

  positions.forEach((position, p) => {
    row(
      position.candidates.map((_, k) => [1, x(p, k)]),
      "=",
      1,
    );
    position.candidates.forEach((candidate, k) => cost(candidate.cost * 1000, x(p, k)));
  });
  const total = (measure: number, over: readonly number[]): Term[] =>
    over.flatMap((p) => positions[p]!.candidates.map((candidate, k): Term => [candidate.q[measure]!, x(p, k)]));
  for (const band of problem.bands) {
    if (band.lo !== null) row(total(band.measure, band.positions), ">=", band.lo);
    if (band.hi !== null) row(total(band.measure, band.positions), "<=", band.hi);
  }
  problem.targets.forEach((target, t) => {
    // Missed amount h >= direction x (target - sum).
    const signed = total(target.measure, target.positions).map(([q, name]): Term => [target.direction * q, name]);
    row([[1, `h_${t}`], ...signed], ">=", target.direction * target.target);
    cost((target.weight * 100_000) / target.target, `h_${t}`);
  });

  for (let child = 0; child < problem.children; child += 1) {
    dishes.forEach((dish, v) => {
      row(
        picksWhere((p, picked) => picked === v && positions[p]!.child === child),
        "<=",
        dish.repeatMax,
      );
    });
    for (const [first, second] of problem.neighbours) {
      for (const family of new Set(dishes.map(({ starch }) => starch).filter((number) => number >= 0))) {
        const mains = picksWhere(
          (p, v) =>
            positions[p]!.child === child &&
            (positions[p]!.day === first || positions[p]!.day === second) &&
            dishes[v]!.main &&
            dishes[v]!.starch === family,
        );
        row(mains, "<=", 1);
      }
    }
  }
  for (let day = 0; day < problem.days; day += 1) {
    dishes.forEach((dish, v) => {
      if (dish.main)
        row(
          picksWhere((p, picked) => picked === v && positions[p]!.day === day),
          "<=",
          1,
        );
    });
    for (let one = 0; one < problem.children; one += 1) {
      for (let other = one + 1; other < problem.children; other += 1) {
        const alike: Term[] = [];
        let common = 0;
        positions.forEach((left, p) =>
          positions.forEach((right, o) => {
            if (left.day !== day || right.day !== day || left.child !== one || right.child !== other) return;
            if (left.slot !== right.slot) return;
            common += 1;
            const name = `a_${p}_${o}`;
            alike.push([1, name]);
            binaries.add(name);
            left.candidates.forEach((candidate, k) => {
              const twin = right.candidates.findIndex(({ dish }) => dish === candidate.dish);
              // Both pick the dish: then the slot is alike.
              if (twin >= 0)
                row(
                  [
                    [1, x(p, k)],
                    [1, x(o, twin)],
                    [-1, name],
                  ],
                  "<=",
                  1,
                );
            });
          }),
        );
        if (common > 0) row(alike, "<=", common - Math.min(2, common));
      }
    }
    const morning = windows.findIndex((window) => window.kind === "MORNING" && window.day === day);
    dishes.forEach((dish, v) => {
      const portions = picksWhere((p, picked) => picked === v && positions[p]!.day === day);
      if (portions.length === 0) return;
      const made = `z_${v}_${day}`;
      binaries.add(made);
      for (const [, pick] of portions)
        row(
          [
            [1, pick],
            [-1, made],
          ],
          "<=",
          0,
        );
      minutes[morning]!.push([dish.morning.fixed, made]);
      for (const [, pick] of portions) minutes[morning]!.push([dish.morning.perPortion, pick]);
      dish.morning.equipment.forEach((tenths, e) => equipment[morning]![e]!.push([tenths, made]));
    });
  }

  bases.forEach((base, b) => {
    const usesOn = (day: number): Term[] =>
      positions.flatMap((position, p) =>
        position.day !== day
          ? []
          : position.candidates.map((candidate, k): Term => {
              const amount = candidate.bases.reduce((all, use) => all + (use.base === b ? use.amount : 0), 0);
              return [amount, x(p, k)];
            }),
      );
    const most = positions.reduce(
      (all, { candidates }) =>
        all + Math.max(...candidates.map(({ bases: uses }) => uses.reduce((n, use) => n + use.amount, 0))),
      0,
    );
    for (const { window } of base.windows) {
      const setUp = `y_${b}_${window}`;
      const count = `n_${b}_${window}`;
      binaries.add(setUp);
      integers.add(count);
      row(
        [
          [1, count],
          [-base.maxBatches, setUp],
        ],
        "<=",
        0,
      );
      minutes[window]!.push([base.fixed, setUp], [base.perBatch, count]);
      base.equipment.forEach((tenths, e) => equipment[window]![e]!.push([tenths, count]));
      cost(base.wastePerThousand * base.batchAmount, count);
    }
    for (let day = 0; day < problem.days; day += 1) {
      const fresh = base.windows.filter(({ firstDay, lastDay }) => firstDay <= day && day <= lastDay);
      const flows = fresh.map(({ window }): Term => [1, `f_${b}_${window}_${day}`]);
      row([...flows, ...usesOn(day).map(([amount, name]): Term => [-amount, name])], "=", 0);
      // One window serves the day.
      row(
        fresh.map(({ window }) => [1, `r_${b}_${window}_${day}`]),
        "<=",
        1,
      );
      for (const { window } of fresh) {
        binaries.add(`r_${b}_${window}_${day}`);
        row(
          [
            [1, `f_${b}_${window}_${day}`],
            [-most, `r_${b}_${window}_${day}`],
          ],
          "<=",
          0,
        );
        cost(-base.wastePerThousand, `f_${b}_${window}_${day}`);
      }
    }
    for (const { window, firstDay, lastDay } of base.windows) {
      const flows = Array.from({ length: lastDay - firstDay + 1 }, (_, i): Term => [
        1,
        `f_${b}_${window}_${firstDay + i}`,
      ]);
      row([...flows, [-base.batchAmount, `n_${b}_${window}`]], "<=", 0);
    }
  });

  windows.forEach((window, w) => {
    row(minutes[w]!, "<=", window.minutes);
    window.equipment.forEach((budget, e) => row(equipment[w]![e]!, "<=", budget));
    for (const [tenths, name] of minutes[w]!) cost(tenths * window.effort * 100, name);
  });
  return [
    "Minimize",
    ` obj: ${sum([...objective].map(([variable, coefficient]): Term => [coefficient, variable]))}`,
    "Subject To",
    ...rows.map((text, i) => ` c${i}: ${text}`),
    "Bounds",
    " 0 <= nothing <= 0",
    "Binary",
    ` ${[...binaries].join(" ")}`,
    "General",
    ` ${[...integers, "nothing"].join(" ")}`,
    "End",
  ].join("\n");
}
