import { expect, test } from "@jest/globals";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { findCandidates } from "../../src/domain/planner/candidates.js";
import { formulate } from "../../src/domain/planner/formulate.js";
import { planWeek } from "../../src/domain/planner/plan-week.js";
import { startPlannerPool } from "../../src/jobs/planner-pool.js";
import { twoChildren } from "../support/demo-brief.js";

const brief = twoChildren();
const index = indexCatalogue(brief.catalogue);
const candidates = findCandidates(brief, index);
const places = candidates.places.length;
const plan = { seed: 1, steps: 2_000, index, hash: (text: string) => text };

/** Wants no answer any more when it has been asked so often. */
const leaveAfter = (most: number) => {
  const asked = { times: 0 };
  const shouldStop = (): boolean => {
    asked.times += 1;
    if (asked.times > most) throw new Error("gone");
    return false;
  };
  return { asked, shouldStop };
};

test("before every place of the week it is asked whether anybody still waits", () => {
  const sought = leaveAfter(Infinity);
  findCandidates(brief, index, sought.shouldStop);
  expect(sought.asked.times).toBeGreaterThanOrEqual(places);
  const formulated = leaveAfter(Infinity);
  formulate(brief, index, candidates, undefined, formulated.shouldStop);
  expect(formulated.asked.times).toBeGreaterThanOrEqual(places);
});

test("while it searches it is asked at least once in 64 moves", () => {
  const { asked, shouldStop } = leaveAfter(Infinity);
  const outcome = planWeek(brief, { ...plan, shouldStop });
  expect(outcome.kind).toBe("PLANNED");
  const moves = outcome.kind === "PLANNED" ? outcome.steps : NaN;
  expect(asked.times).toBeGreaterThanOrEqual(2 * places + Math.floor(moves / 64));
});

test("wherever the plan has got to, who leaves is heeded at the next question", () => {
  for (const most of [0, 1, places - 1, places, 2 * places - 1, 2 * places, 2 * places + 3]) {
    const { asked, shouldStop } = leaveAfter(most);
    expect(() => planWeek(brief, { ...plan, shouldStop })).toThrow("gone");
    expect(asked.times).toBe(most + 1);
  }
});

test("a plan that is cancelled says so, and the thread goes on to the next", async () => {
  const pool = startPlannerPool(brief.catalogue, { threads: 1 });
  try {
    const unwanted = new AbortController();
    // Far more moves than anybody waits for.
    const left = pool.plan({ brief, seed: 1, steps: 50_000_000, compare: true }, undefined, unwanted.signal);
    unwanted.abort(new Error("gone"));
    await expect(left).rejects.toThrow("gone");
    const { outcome } = await pool.plan({ brief, seed: 1, steps: 2_000, compare: false });
    expect(outcome.kind).toBe("PLANNED");
    const already = AbortSignal.abort(new Error("gone"));
    await expect(pool.plan({ brief, seed: 1, steps: 100, compare: false }, undefined, already)).rejects.toThrow("gone");
  } finally {
    await pool.stop();
  }
});
