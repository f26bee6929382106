import { createHash } from "node:crypto";
import { describe, expect, test } from "@jest/globals";
import type { ChildBrief, GivenFoodBrief, WeekBrief } from "../../src/domain/brief.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { checkWeek } from "../../src/domain/checker/check-week.js";
import { dailyNeeds } from "../../src/domain/nutrition/needs.js";
import { findCandidates } from "../../src/domain/planner/candidates.js";
import { formulate } from "../../src/domain/planner/formulate.js";
import { planWeek } from "../../src/domain/planner/plan-week.js";
import { energyBand } from "../../src/domain/planner/wishes.js";
import { middle, threeChildren } from "../support/demo-brief.js";

/** A glass of 200 ml: 206 g. */
const glass: GivenFoodBrief = { food: "milk-whole", grams: 206 };
const givenTo = (child: ChildBrief, given: readonly GivenFoodBrief[]): ChildBrief => ({
  ...child,
  days: child.days.map((day) => ({ ...day, given })),
});
/** A child who may drink milk. */
const drinker: ChildBrief = { ...middle, allergies: [] };
const weekOf = (given: readonly GivenFoodBrief[], child = drinker): WeekBrief =>
  threeChildren({ children: [givenTo(child, given)] });
const targetsOf = (brief: WeekBrief) => {
  const index = indexCatalogue(brief.catalogue);
  const { problem, layout } = formulate(brief, index, findCandidates(brief, index));
  return {
    targets: new Map(layout.targets.map(({ nutrient, target }) => [nutrient, target])),
    energy: problem.bands.filter(({ name }) => layout.meanings.get(name)?.kind === "ENERGY"),
  };
};
const milk = threeChildren().catalogue.foods.find(({ key }) => key === glass.food)!;
const inGlass = (tag: "ENERC_KCAL" | "CA" | "NA" | "FASAT") => ((milk.nutrients[tag] ?? 0) * glass.grams) / 100;
const days = drinker.days.length;

describe("milk the school gives", () => {
  const [without, beside] = [targetsOf(weekOf([])), targetsOf(weekOf([glass]))];

  test("lowers the week's calcium target by exactly its calcium", () => {
    const fall = without.targets.get("CA")! - beside.targets.get("CA")!;
    // Both targets are rounded to whole milligrams.
    expect(Math.abs(fall - days * inGlass("CA"))).toBeLessThanOrEqual(1);
    expect(inGlass("CA")).toBeGreaterThan(200);
  });

  test("counts under what the boxes may hold of sodium and saturated fat, and inside their energy", () => {
    expect(Math.abs(without.targets.get("NA")! - beside.targets.get("NA")! - days * inGlass("NA"))).toBeLessThanOrEqual(
      1,
    );
    // Tenths of a gram.
    const saturated = without.targets.get("FASAT")! - beside.targets.get("FASAT")!;
    expect(Math.abs(saturated - 10 * days * inGlass("FASAT"))).toBeLessThanOrEqual(1);
    for (const side of ["lo", "hi"] as const) {
      const fall = without.energy[0]![side]! - beside.energy[0]![side]!;
      expect(Math.abs(fall - inGlass("ENERC_KCAL"))).toBeLessThanOrEqual(1);
    }
  });

  test("leaves the targets alone on days it is not given, and for a child who avoids milk", () => {
    const never = targetsOf(weekOf([{ ...glass, breakKey: "after-school-club" }]));
    expect([...never.targets]).toEqual([...without.targets]);
    const allergic: ChildBrief = {
      ...drinker,
      allergies: [{ allergen: "MILK", foodKind: null, avoid: "INGREDIENTS" }],
    };
    expect([...targetsOf(weekOf([glass], allergic)).targets]).toEqual([...targetsOf(weekOf([], allergic)).targets]);
  });

  test("does not make a maximum disappear when it uses it up", () => {
    const salted = targetsOf(weekOf([{ food: "cheddar", grams: 900 }]));
    expect(salted.targets.get("NA")).toBe(1);
  });

  test("stands beside a week that passes the independent check, with box and milk within the energy of the breaks", () => {
    const brief = weekOf([glass]);
    const hash = (text: string) => createHash("sha256").update(text).digest("hex");
    const outcome = planWeek(brief, { seed: 1, steps: 30_000, hash });
    if (outcome.kind !== "PLANNED") throw new Error(JSON.stringify(outcome.conflicts));
    expect(checkWeek(brief, outcome.draft)).toEqual([]);
    const [child] = brief.children;
    const needs = dailyNeeds(child!, child!.days[0]!.date);
    for (const box of outcome.draft.boxes) {
      const day = child!.days.find(({ date }) => date === box.date)!;
      const share = day.breaks.reduce((sum, pause) => sum + pause.energyShare, 0);
      const wished = needs.energyKcal * child!.appetite * share;
      const total = box.items.reduce((sum, item) => sum + item.energyKcal, 0) + inGlass("ENERC_KCAL");
      expect(total).toBeGreaterThanOrEqual(energyBand.least * wished);
      expect(total).toBeLessThanOrEqual(energyBand.most * wished);
    }
  });
});
