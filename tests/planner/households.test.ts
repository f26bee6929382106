/** Forty of the households that `npm run bench:households` draws by the thousand, in a process of their own as there. */
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { checkWeek } from "../../src/domain/checker/check-week.js";
import { planAndCheck } from "../support/judge-household.js";
import { drawHousehold } from "../support/random-household.js";

interface Told {
  readonly weeks: readonly {
    readonly planned: number;
    readonly infeasible: number;
    readonly throws: number;
    readonly faults: Readonly<Record<string, number>>;
  }[];
  readonly bugs: readonly string[];
}

test("of households of every kind, each gets a week that passes every check, or is told what stands in the way", () => {
  const bench = fileURLToPath(new URL("../bench/households.bench.ts", import.meta.url));
  // Few steps: what is asked is whether a week keeps its promises, not how good it is.
  const asked = ["--count", "40", "--seed", "2001", "--steps", "1500", "--json"];
  const ran = spawnSync(process.execPath, ["--import", "tsx", bench, ...asked], {
    encoding: "utf8",
    env: { ...process.env, NODE_OPTIONS: "" },
  });
  const { weeks, bugs } = JSON.parse(ran.stdout) as Told;
  expect(bugs).toEqual([]);
  expect(weeks).toMatchObject([
    { throws: 0, faults: {} },
    { throws: 0, faults: {} },
  ]);
  expect(ran.status).toBe(0);
  const [fresh, afterDisruption] = weeks;
  expect(fresh!.planned + fresh!.infeasible).toBe(40);
  expect(afterDisruption!.planned + afterDisruption!.infeasible).toBe(fresh!.planned);
  // Neither all nor none: households without a week are part of the question.
  expect(fresh!.planned).toBeGreaterThanOrEqual(12);
  expect(fresh!.infeasible).toBeGreaterThanOrEqual(8);
  expect(afterDisruption!.planned).toBeGreaterThanOrEqual(6);
}, 240_000);

test("the week of one household does not pass for another, where everybody avoids wheat and milk and lunch is later", () => {
  const brief = drawHousehold(2004);
  const { outcome, faults } = planAndCheck(brief, 1, 1500);
  if (outcome.kind !== "PLANNED") throw new Error("this household has a week");
  expect(faults).toEqual([]);
  const allergies = (["WHEAT", "MILK"] as const).map((allergen) => ({
    allergen,
    foodKind: null,
    avoid: "TRACES" as const,
  }));
  const children = brief.children.map((child) => ({
    ...child,
    allergies,
    days: child.days.map((day) => ({ ...day, leaveAt: "05:00" })),
  }));
  const kinds = checkWeek({ ...brief, children }, outcome.draft).map(({ kind }) => kind);
  expect(kinds).toEqual(expect.arrayContaining(["ALLERGEN", "HOLDING_MINUTES_WRONG", "LEAVE_TIME_WRONG"]));
});

test("a seed draws the same household every time, another seed another", () => {
  expect(drawHousehold(2001)).toEqual(drawHousehold(2001));
  expect(drawHousehold(2001).children).not.toEqual(drawHousehold(2002).children);
});
