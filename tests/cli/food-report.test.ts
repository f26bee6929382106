import { isMet } from "../../src/cli/food-checks/check.js";
import { readFoodReport } from "../../src/cli/food-checks/report.js";

describe("the report on food", () => {
  const { checks } = readFoodReport();

  it("compares figures of every kind with what was published, and each of them holds", () => {
    for (const kind of ["EN-", "YP-", "AL-", "CH-"]) {
      expect(checks.filter(({ id }) => id.startsWith(kind)).length).toBeGreaterThanOrEqual(5);
    }
    expect(checks.filter((check) => !isMet(check))).toEqual([]);
  });

  it("names a source beside every figure, and no two figures by one name", () => {
    for (const { source } of checks) expect(source.length).toBeGreaterThan(5);
    expect(new Set(checks.map(({ id }) => id)).size).toBe(checks.length);
  });

  it("calls a figure off when it leaves the tolerance, or differs where equality is asked", () => {
    const check = {
      id: "X-1",
      about: "a figure",
      source: "invented for this test",
      expected: 10,
      tolerance: 0.5,
      found: 10.5,
    };
    expect(isMet(check)).toBe(true);
    expect(isMet({ ...check, found: 10.6 })).toBe(false);
    expect(isMet({ ...check, tolerance: 0, found: 10.5 })).toBe(false);
    expect(isMet({ ...check, expected: "yes", found: "no" })).toBe(false);
  });
});
