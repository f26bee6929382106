import type { Project } from "../../src/domain/kitchen/schedule/project.js";

/**
 * A project as a time-indexed program in LP format: x(j,t) = 1 where activity j starts at t; least end. Pritsker, Watters and Wolfe
 * (1969), "Multiproject scheduling with limited resources".
 */
export function writeProjectProgram({ activities, lags, capacity }: Project): string {
  const name = (a: number, t: number): string => `x${a}_${t}`;
  const starts = activities.map(({ earliest, latest }) =>
    Array.from({ length: latest - earliest + 1 }, (_, i) => earliest + i),
  );
  const sum = (terms: readonly (readonly [number, string])[]): string =>
    terms.map(([factor, variable]) => `${factor < 0 ? "-" : "+"} ${Math.abs(factor)} ${variable}`).join(" ");
  const start = (a: number, by: number) => starts[a]!.filter((t) => t > 0).map((t) => [by * t, name(a, t)] as const);
  const rows: string[] = [];
  activities.forEach(({ length }, a) => {
    rows.push(`${sum(starts[a]!.map((t) => [1, name(a, t)]))} = 1`);
    rows.push(`${sum([[1, "finish"], ...start(a, -1)])} >= ${length}`);
  });
  for (const { from, to, length } of lags) {
    const terms = [...start(to, 1), ...start(from, -1)];
    if (terms.length > 0) rows.push(`${sum(terms)} >= ${length}`);
  }
  const horizon = Math.max(...activities.map(({ latest, length }) => latest + length));
  capacity.forEach((units, resource) => {
    // A use may begin before its activity and outlast it.
    const uses = activities.flatMap((activity) => activity.uses.map((use) => ({ ...activity, use })));
    const first = Math.min(...uses.map(({ earliest, use }) => earliest + use.offset));
    const last = Math.max(...uses.map(({ latest, use }) => latest + use.offset + use.length));
    for (let moment = first; moment < last; moment += 1) {
      const terms = activities.flatMap(({ uses }, a) =>
        uses
          .filter((use) => use.resource === resource)
          .flatMap((use) =>
            starts[a]!.filter((t) => t + use.offset <= moment && moment < t + use.offset + use.length).map(
              (t) => [use.units, name(a, t)] as const,
            ),
          ),
      );
      if (terms.length > 0) rows.push(`${sum(terms)} <= ${units}`);
    }
  });
  return [
    "Minimize",
    " finish",
    "Subject To",
    ...rows.map((row, r) => ` r${r}: ${row}`),
    "Bounds",
    ` 0 <= finish <= ${horizon}`,
    "Binary",
    ` ${starts.flatMap((times, a) => times.map((t) => name(a, t))).join(" ")}`,
    "End",
  ].join("\n");
}
