import { readFileSync } from "node:fs";
import { reverseProject, type Project } from "../../src/domain/kitchen/schedule/project.js";
import { shortenProject, type Shortened } from "../../src/domain/kitchen/schedule/shorten.js";
import { createDice } from "../support/dice.js";
import { loadHighs } from "../support/highs.js";
import { writeProjectProgram } from "../support/project-program.js";
import { toProject, type ProjectRows } from "../support/read-project.js";

const shorten = (project: Project, deadEnds = 20_000): Shortened =>
  shortenProject({ project, knownEnd: Infinity, leastEnd: 0, deadEnds, shouldStop: () => false });

/** Whether starts keep every bound, lag and resource, moment by moment. */
function isKept({ activities, lags, capacity }: Project, starts: readonly number[]): boolean {
  const inTime = activities.every(({ earliest, latest }, a) => earliest <= starts[a]! && starts[a]! <= latest);
  const inOrder = lags.every(({ from, to, length }) => starts[to]! >= starts[from]! + length);
  const moments = activities.flatMap(({ uses }, a) => uses.map((use) => starts[a]! + use.offset));
  const within = capacity.every((units, resource) =>
    moments.every((moment) => {
      const inUse = activities.flatMap(({ uses }, a) =>
        uses.filter((use) => {
          const from = starts[a]! + use.offset;
          return use.resource === resource && from <= moment && moment < from + use.length;
        }),
      );
      return inUse.reduce((sum, use) => sum + use.units, 0) <= units;
    }),
  );
  return inTime && inOrder && within;
}

// Source: beside the figures, in the file.
const { projects } = JSON.parse(readFileSync(new URL("./psplib-projects.json", import.meta.url), "utf8")) as {
  projects: (ProjectRows & { name: string; makespan: number })[];
};

describe("projects of the literature, 30 tasks on four resources", () => {
  it.each(projects)("proves the published shortest end of $name", (rows) => {
    const project = toProject(rows);
    const { starts, end, leastEnd } = shorten(project);
    expect([end, leastEnd]).toEqual([rows.makespan, rows.makespan]);
    expect(isKept(project, starts!)).toBe(true);
  });

  it.each(projects.slice(0, 4))("takes as long backwards as forwards ($name)", (rows) => {
    const horizon = rows.durations.reduce((sum, duration) => sum + duration, 0);
    const backwards = reverseProject(toProject(rows), horizon);
    const { starts, end, leastEnd } = shorten(backwards);
    expect([end, leastEnd]).toEqual([rows.makespan, rows.makespan]);
    expect(isKept(backwards, starts!)).toBe(true);
  });
});

// Checked against: HiGHS 1.15.3, a MILP solver, on the time-indexed model of Pritsker, Watters and Wolfe (1969).
/** Small projects in which uses are longer and shorter than their tasks, start before and after them, and lags may be negative. */
function drawProject(seed: number): Project {
  const pick = createDice(seed * 7919);
  for (let warm = 0; warm < 3; warm += 1) pick(7);
  const capacity = [1, 1 + pick(3), 2];
  const tasks = 5 + pick(3);
  const lengths = Array.from({ length: tasks }, () => 1 + pick(4));
  const horizon = 18;
  return {
    activities: lengths.map((length) => {
      const earliest = pick(4) === 0 ? pick(3) : 0;
      return {
        earliest,
        latest: (pick(4) === 0 ? 8 + pick(4) : horizon) - length,
        length,
        uses: capacity.flatMap((units, resource) =>
          pick(2) === 0 ? [] : [{ resource, units: 1 + pick(units), offset: pick(3) - 1, length: 1 + pick(4) }],
        ),
      };
    }),
    lags: lengths.flatMap((length, from) =>
      lengths.flatMap((_, to) =>
        to > from && pick(4) === 0 ? [{ from, to, length: pick(5) === 0 ? -1 : length }] : [],
      ),
    ),
    capacity,
    crew: null,
  };
}

it("agrees with a mixed-integer solver on sixty small projects, on those that cannot be done too", async () => {
  const highs = await loadHighs();
  let impossible = 0;
  for (let seed = 1; seed <= 60; seed += 1) {
    const project = drawProject(seed);
    const proved = highs.solve(writeProjectProgram(project));
    const { starts, end, leastEnd } = shorten(project);
    if (proved.Status === "Infeasible") {
      impossible += 1;
      expect([seed, starts, leastEnd]).toEqual([seed, null, Infinity]);
      continue;
    }
    expect([seed, proved.Status, end, leastEnd]).toEqual([
      seed,
      "Optimal",
      Math.round(proved.ObjectiveValue),
      Math.round(proved.ObjectiveValue),
    ]);
    expect(isKept(project, starts!)).toBe(true);
  }
  expect(impossible).toBeGreaterThan(0);
  expect(impossible).toBeLessThan(30);
});

/** Days of the longest chain of tasks that follow each other. */
function longestChain({ durations, successors }: ProjectRows): number {
  const tails = durations.map(() => 0);
  for (let job = durations.length - 1; job >= 0; job -= 1)
    tails[job] = durations[job]! + Math.max(0, ...successors[job]!.map((to) => tails[to - 1]!));
  return Math.max(...tails);
}

it("never states more than it has ruled out when the budget is spent", () => {
  const rows = projects.find(({ name }) => name === "j3041_2")!;
  for (const deadEnds of [1, 10, 40, 100]) {
    const { starts, end, leastEnd } = shorten(toProject(rows), deadEnds);
    expect(leastEnd).toBeLessThanOrEqual(rows.makespan);
    // Without a single decision it is clear that a chain of tasks takes as long as its tasks.
    expect(leastEnd).toBeGreaterThanOrEqual(longestChain(rows));
    expect(end).toBeGreaterThanOrEqual(rows.makespan);
    if (starts !== null) expect(isKept(toProject(rows), starts)).toBe(true);
  }
});

it("looks only for what is shorter than what is known", () => {
  const rows = projects[0]!;
  const ask = (knownEnd: number) =>
    shortenProject({ project: toProject(rows), knownEnd, leastEnd: 0, deadEnds: 20_000, shouldStop: () => false });
  expect(ask(rows.makespan)).toMatchObject({ starts: null, end: rows.makespan, leastEnd: rows.makespan });
  expect(ask(rows.makespan + 1)).toMatchObject({ end: rows.makespan, leastEnd: rows.makespan });
});
