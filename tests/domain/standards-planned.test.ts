/** Weeks of one child of the real catalogue under each standard as a school adopts it: planned, then checked independently. */
import type { WeekBrief } from "../../src/domain/brief.js";
import { checkWeek } from "../../src/domain/checker/check-week.js";
import { threeChildren } from "../support/demo-brief.js";
import { planAndCheck } from "../support/judge-household.js";
import { adopted } from "./standards-week.js";

const lunch = {
  key: "lunch",
  name: "Lunch",
  startsAt: "11:45",
  minutes: 30,
  slots: ["MAIN", "VEGETABLE", "FRUIT", "EXTRA"] as const,
  energyShare: 0.35,
};
const steps = 6000;

/** A child of average size who eats everything, with one lunch a day from Monday 11 January 2027, under one document or none. */
function briefOf(key: string | null, bornOn: string): WeekBrief {
  const brief = threeChildren();
  const child = brief.children[1]!;
  const days = child.days.map((day) => ({ ...day, ruleSets: key === null ? [] : [0], breaks: [lunch] }));
  const unknown = { sex: null, weightKg: null, heightCm: null, allergies: [], diets: [] } as const;
  return {
    ...brief,
    ruleSets: key === null ? [] : [adopted(key)],
    children: [{ ...child, ...unknown, dateOfBirth: bornOn, days }],
  };
}

describe("a week can be planned that keeps the whole of", () => {
  it.each([
    ["us-lunch", "the US lunch pattern at eight", "2018-09-01"],
    ["us-lunch", "the US lunch pattern at eleven", "2015-09-01"],
    ["us-lunch", "the US lunch pattern at fifteen", "2011-09-01"],
    ["us-preschool-lunch", "the US preschool pattern at four", "2022-09-01"],
    ["england-2014-primary", "the English standards in a primary school", "2018-09-01"],
    ["england-2014-secondary", "the English standards in a secondary school", "2013-09-01"],
  ])("%s: %s", (key, _, bornOn) => {
    const { outcome, faults } = planAndCheck(briefOf(key, bornOn), 1, steps);
    expect(outcome.kind).toBe("PLANNED");
    expect(faults).toEqual([]);
  });

  it("and is not the week that would have been planned without it", () => {
    const free = briefOf(null, "2018-09-01");
    const { outcome } = planAndCheck(free, 1, steps);
    if (outcome.kind !== "PLANNED") throw new Error("this child has a week");
    for (const key of ["us-lunch", "england-2014-primary"]) {
      const broken = checkWeek(briefOf(key, "2018-09-01"), outcome.draft).map(({ rule }) => rule);
      expect([key, broken.filter((rule) => rule !== undefined).length > 0]).toEqual([key, true]);
    }
  });
});
