import { createHash } from "node:crypto";
import { describe, expect, test } from "@jest/globals";
import type { WeekBrief } from "../../src/domain/brief.js";
import { addDays } from "../../src/domain/calendar/dates.js";
import { expandAllergen } from "../../src/domain/catalogue/allergens.js";
import { coverageRequirements } from "../../src/domain/catalogue/coverage.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { checkWeek } from "../../src/domain/checker/check-week.js";
import { planWeek } from "../../src/domain/planner/plan-week.js";
import type { WeekDraft } from "../../src/domain/week.js";
import { monday } from "../support/demo-brief.js";
import { historyOf, weekFor } from "../support/two-weeks.js";

const STEPS = 20_000;
const hash = (text: string): string => createHash("sha256").update(text).digest("hex");

function planned(brief: WeekBrief): WeekDraft {
  const outcome = planWeek(brief, { seed: 1, steps: STEPS, hash });
  if (outcome.kind !== "PLANNED") throw new Error(JSON.stringify(outcome.conflicts));
  return outcome.draft;
}

/** The pairs and triples; a row of one need is wider than each of them. */
const combined = coverageRequirements.filter(({ allergens, diets }) => {
  const families = new Set(allergens.map((allergen) => (allergen === "PEANUT" ? "TREE_NUTS" : allergen)));
  return families.size + diets.length > 1;
});

describe("a family with several needs at once", () => {
  test("stands in the table in four combinations", () => {
    expect(combined.map(({ key }) => key)).toEqual([
      "nut-egg-milk-free",
      "gluten-milk-free",
      "vegan-nut-soy-free",
      "egg-fish-sesame-free",
    ]);
  });

  test.each(combined)("gets two weeks that pass the independent checker: $key", (row) => {
    const first = weekFor(row);
    const firstDraft = planned(first);
    expect(checkWeek(first, firstDraft)).toEqual([]);

    const second = weekFor(row, addDays(monday, 7), historyOf(firstDraft));
    const secondDraft = planned(second);
    expect(checkWeek(second, secondDraft)).toEqual([]);

    const index = indexCatalogue(first.catalogue);
    const avoided = row.allergens.flatMap((allergen) => expandAllergen(allergen));
    const boxes = [...firstDraft.boxes, ...secondDraft.boxes];
    expect(boxes).toHaveLength(10);
    const dishes = boxes.flatMap(({ items }) => items.map(({ dish }) => index.derived(dish)));
    expect(dishes).toHaveLength(50);
    for (const { allergens } of dishes) expect(allergens.filter((allergen) => avoided.includes(allergen))).toEqual([]);
  });
});
