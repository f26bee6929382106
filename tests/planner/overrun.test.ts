/** A session can overrun by the clock while its hands-on minutes are few: then less is planned in it, not just less allowed. */
import { expect, test } from "@jest/globals";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { findCandidates } from "../../src/domain/planner/candidates.js";
import { formulate } from "../../src/domain/planner/formulate.js";
import { noLessons, tighten } from "../../src/domain/planner/plan-week.js";
import { twoChildren } from "../support/demo-brief.js";

const brief = twoChildren();
const index = indexCatalogue(brief.catalogue);
const { problem, layout } = formulate(brief, index, findCandidates(brief, index));
const [, evening] = layout.sessions as [string, string];
const budget = problem.windows[1]!.minutes;

test.each([
  { planned: 12, left: 108 },
  { planned: budget / 10 + 30, left: Math.floor(budget * 0.9) },
])("a session that overran with $planned min planned in it may hold $left tenths next time", ({ planned, left }) => {
  const tightening = noLessons();
  tighten(
    tightening,
    [
      {
        kind: "SessionTooShort",
        session: evening,
        limit: "ELAPSED",
        neededMinutes: 53,
        haveMinutes: 48,
        childIds: [],
        plannedMinutes: planned,
        longestBase: null,
      },
    ],
    problem,
    layout,
  );
  expect(tightening.minutes.get(evening)).toBe(left);
  expect(left).toBeLessThan(budget);
});

test("a session that overruns again lets its longest base go elsewhere", () => {
  const lessons = noLessons();
  const base = layout.bases[problem.bases.findIndex(({ windows }) => windows.some(({ window }) => window === 1))]!;
  const fault = {
    kind: "SessionTooShort",
    session: evening,
    limit: "ELAPSED",
    neededMinutes: 68,
    haveMinutes: 60,
    childIds: [],
    plannedMinutes: 20,
    longestBase: base,
  } as const;
  tighten(lessons, [fault], problem, layout);
  expect([...lessons.elsewhere]).toEqual([]);
  tighten(lessons, [fault], problem, layout);
  expect([...lessons.elsewhere]).toEqual([`${base}@${evening}`]);
  const next = formulate(brief, index, findCandidates(brief, index), lessons);
  const windows = next.problem.bases[next.layout.bases.indexOf(base)]!.windows.map(({ window }) => window);
  expect(windows.length).toBeGreaterThan(0);
  expect(windows).not.toContain(1);
});
