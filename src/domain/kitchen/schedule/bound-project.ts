import type { Project } from "./project.js";

/**
 * A proven lower bound on the end of a project, latest starts aside: the longest chain of lags; for each resource, and for the crew, all
 * that has to be done on it, shared among its units, after the shortest way in and before the shortest way out. Throws on lags that
 * run in a circle.
 */
export function boundProject({ activities, lags, capacity, crew }: Project): number {
  const heads = activities.map(({ earliest }) => earliest);
  const tails = activities.map(({ length }) => length);
  for (let round = 0, moved = true; moved; round += 1) {
    if (round > activities.length) throw new Error("an activity waits for itself");
    moved = false;
    for (const { from, to, length } of lags) {
      if (heads[from]! + length > heads[to]!) [heads[to], moved] = [heads[from]! + length, true];
      if (length + tails[to]! > tails[from]!) [tails[from], moved] = [length + tails[to]!, true];
    }
  }
  let bound = Math.max(0, ...activities.map((_, a) => heads[a]! + tails[a]!));
  const uses = activities.flatMap((activity, a) => activity.uses.map((use) => ({ activity: a, ...use })));
  const duties = crew?.duties.map((duty) => ({ ...duty, units: 1, resource: capacity.length })) ?? [];
  const all = [...uses, ...duties];
  [...capacity, crew?.size ?? 0].forEach((units, resource) => {
    const here = all.filter((use) => use.resource === resource);
    if (here.length === 0) return;
    const load = here.reduce((sum, use) => sum + use.units * use.length, 0);
    const wayIn = Math.min(...here.map(({ activity, offset }) => heads[activity]! + offset));
    // A use may outlast its activity; then nothing has to come after it, and the project may end first.
    const wayOut = Math.min(...here.map(({ activity, offset, length }) => tails[activity]! - offset - length));
    bound = Math.max(bound, wayIn + Math.ceil(load / units) + wayOut);
  });
  return bound;
}
