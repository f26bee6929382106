import { describe, expect, it } from "@jest/globals";
import fc from "fast-check";
import { chokingClass, servedForm, type ChokingClass, type ServedForm } from "../../shared/codes.js";
import { isMet } from "../../src/cli/food-checks/check.js";
import { chokingChecks } from "../../src/cli/food-checks/choking.js";
import { ageOn } from "../../src/domain/calendar/dates.js";
import type { DerivedDish } from "../../src/domain/catalogue/derive.js";
import { judgeChoking } from "../../src/domain/food-safety/choking.js";
import { readChokingRules } from "./reference-rows.js";
import { dishOf, sampleFood } from "./sample-rows.js";

const rules = readChokingRules();
const served = (key: string, choking: ChokingClass, form: ServedForm): DerivedDish =>
  dishOf([sampleFood(key, { chokingClasses: [choking] })], form);

describe("published advice", () => {
  it.each(chokingChecks(rules).map((check) => [check.id, check] as const))("%s is followed", (_, check) => {
    expect([check, isMet(check)]).toEqual([check, true]);
  });
  it("has a rule for every class, each with a source, and a size wherever a size was published", () => {
    expect(chokingClass.options.filter((of) => rules.filter((rule) => rule.class === of).length !== 1)).toEqual([]);
    for (const rule of rules) {
      expect(rule.source.length).toBeGreaterThan(10);
      // A cut that is no rule of publishers says so.
      if (rule.class === "ROUND_EGG") expect(rule.source).toMatch(/^our estimate/);
      if (rule.largestPieceMm != null) expect(rule.source).toMatch(/half an inch/);
    }
  });
  it("never calls a form safe of a food that no cut makes safe, but ground or spread thin", () => {
    for (const rule of rules.filter(({ never }) => never))
      expect(rule.safeForms.filter((form) => form !== "GROUND" && form !== "SPREAD_THIN")).toEqual([]);
  });
});

describe("choking form", () => {
  // Outside: England, Help for early years providers, food safety (DfE 2023) (CH-1).
  it("never lets whole grapes into the box of a child of four: they are quartered lengthways when packed", () => {
    const grapes = served("grapes", "GRAPE_LIKE", "WHOLE");
    const verdict = judgeChoking(4, grapes, rules);
    expect(verdict).toMatchObject({
      allowed: true,
      cuts: [{ food: "grapes", cut: expect.stringMatching(/lengthways into quarters/i) }],
    });
    expect(judgeChoking(4, served("grapes", "GRAPE_LIKE", "QUARTERED_LENGTHWAYS"), rules)).toEqual({
      allowed: true,
      cuts: [],
    });
    expect(judgeChoking(4, served("grapes", "GRAPE_LIKE", "HALVED"), rules)).toMatchObject({
      cuts: [{ food: "grapes" }],
    });
  });

  // Outside: the same guidance, whole nuts under 5, by the date of the meal (CH-2).
  it("keeps whole almonds out the day before the fifth birthday and lets them in on it", () => {
    const almonds = served("almonds", "WHOLE_NUT", "WHOLE");
    expect(judgeChoking(ageOn("2021-09-08", "2026-09-07"), almonds, rules)).toMatchObject({
      allowed: false,
      food: "almonds",
      rule: { class: "WHOLE_NUT" },
    });
    expect(judgeChoking(ageOn("2021-09-08", "2026-09-08"), almonds, rules)).toEqual({ allowed: true, cuts: [] });
  });

  // Outside: Caring for Our Children and AAP list (CH-3).
  it("keeps popcorn out at three in every form", () => {
    for (const form of servedForm.options)
      expect(judgeChoking(3, served("popcorn", "POPCORN", form), rules).allowed).toBe(false);
  });

  // Outside: USDA FNS choking guidance: slices, not chunks, half an inch at most (CH-4).
  it("does not pass apple in chunks or cubes as it is at three", () => {
    for (const form of ["CHUNKS", "CUBED"] as const) {
      expect(judgeChoking(3, served("apple", "HARD_RAW", form), rules)).toMatchObject({
        allowed: true,
        cuts: [{ food: "apple" }],
      });
    }
    expect(judgeChoking(3, served("apple", "HARD_RAW", "SLICED_THIN"), rules)).toEqual({ allowed: true, cuts: [] });
  });

  // Outside: England, food safety guidance: cheese in strips or grated, not cubes (CH-5).
  it("does not pass cheddar in cubes as it is at three, but grated or in strips", () => {
    expect(judgeChoking(3, served("cheddar", "FIRM_CHEESE", "CUBED"), rules)).toMatchObject({
      cuts: [{ food: "cheddar" }],
    });
    for (const form of ["GRATED", "STRIPS"] as const) {
      expect(judgeChoking(3, served("cheddar", "FIRM_CHEESE", form), rules)).toEqual({ allowed: true, cuts: [] });
    }
  });

  // Outside: USDA MyPlate for preschoolers; Caring for Our Children (CH-6).
  it("does not pass a frankfurter in rounds as it is at four, but in strips", () => {
    expect(judgeChoking(4, served("frankfurter", "SAUSAGE", "ROUNDS"), rules)).toMatchObject({
      cuts: [{ food: "frankfurter" }],
    });
    expect(judgeChoking(4, served("frankfurter", "SAUSAGE", "STRIPS"), rules)).toEqual({ allowed: true, cuts: [] });
  });

  it("keeps nuts out that are only mixed in, and lets them in ground", () => {
    expect(judgeChoking(4, served("walnuts", "WHOLE_NUT", "MIXED_IN"), rules).allowed).toBe(false);
    expect(judgeChoking(4, served("walnuts", "WHOLE_NUT", "CHOPPED_SMALL"), rules).allowed).toBe(false);
    expect(judgeChoking(4, served("walnuts", "WHOLE_NUT", "GROUND"), rules).allowed).toBe(true);
  });

  it("names each cut once, with its source, however often the food comes in", () => {
    const grapes = sampleFood("grapes", { chokingClasses: ["GRAPE_LIKE"] });
    const verdict = judgeChoking(4, dishOf([grapes, sampleFood("rice"), grapes], "WHOLE"), rules);
    if (!verdict.allowed) throw new Error("grapes can be cut");
    expect(verdict.cuts).toHaveLength(1);
    expect(verdict.cuts[0]?.source).toMatch(/England/);
  });

  it("never shuts out or cuts more as a child grows", () => {
    const food = fc.record({
      classes: fc.uniqueArray(fc.constantFrom(...chokingClass.options), { maxLength: 3 }),
      form: fc.constantFrom(...servedForm.options),
    });
    fc.assert(
      fc.property(food, fc.integer({ min: 1, max: 18 }), ({ classes, form }, age) => {
        const dish = dishOf([sampleFood("food", { chokingClasses: classes })], form);
        const younger = judgeChoking(age, dish, rules);
        const older = judgeChoking(age + 1, dish, rules);
        if (younger.allowed) {
          if (!older.allowed) throw new Error("older children are not shut out");
          for (const cut of older.cuts) expect(younger.cuts).toContainEqual(cut);
        }
      }),
    );
  });

  it("never lets a rule more make a dish safer", () => {
    fc.assert(
      fc.property(
        fc.subarray(rules),
        fc.constantFrom(...chokingClass.options),
        fc.constantFrom(...servedForm.options),
        (some, of, form) => {
          const dish = served("food", of, form);
          const bySome = judgeChoking(4, dish, some);
          const byAll = judgeChoking(4, dish, rules);
          if (!bySome.allowed) expect(byAll.allowed).toBe(false);
          else if (byAll.allowed) expect(byAll.cuts.length).toBeGreaterThanOrEqual(bySome.cuts.length);
        },
      ),
    );
  });
});
