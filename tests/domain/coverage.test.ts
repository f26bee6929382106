import { readFileSync } from "node:fs";
import { describe, expect, it, test } from "@jest/globals";
import type { Catalogue, Dish, Food } from "../../shared/catalogue.js";
import type { ProteinFamily, SlotCode } from "../../shared/codes.js";
import { coverageTable, readCoverageTable, replaceCoverageTable } from "../../src/cli/food-checks/coverage.js";
import {
  coverageMinima,
  coverageOf,
  coverageRequirements,
  mainIngredient,
  type CoverageRow,
} from "../../src/domain/catalogue/coverage.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { judgeChoking } from "../../src/domain/food-safety/choking.js";
import { readCatalogue, readChokingRules } from "./reference-rows.js";

const catalogue = readCatalogue();
const choking = readChokingRules();
const index = indexCatalogue({ version: "shipped", ...catalogue });
const rows = coverageOf(index, choking);
const readme = readFileSync(new URL("../../seeds/README.md", import.meta.url), "utf8");

const coverOf = (change: Partial<Catalogue>): CoverageRow[] =>
  coverageOf(indexCatalogue({ version: "changed", ...catalogue, ...change }), choking);
const rowOf = (found: readonly CoverageRow[], key: string): CoverageRow => {
  const row = found.find(({ requirement }) => requirement.key === key);
  if (row === undefined) throw new Error(`no row ${key}`);
  return row;
};
const without = (shut: (dish: Dish) => boolean): CoverageRow[] =>
  coverOf({ dishes: catalogue.dishes.filter((dish) => !shut(dish)) });
const dishOf = (key: string): Dish => {
  const dish = index.dish(key);
  if (dish === undefined) throw new Error(`no dish ${key}`);
  return dish;
};

describe("the shipped catalogue", () => {
  test.each(rows.map((row) => ({ key: row.requirement.key, row })))(
    "leaves enough, and different enough, for a child who needs it $key",
    ({ row }) => {
      expect(row.shortfalls).toEqual([]);
      for (const slot of ["MAIN", "VEGETABLE", "FRUIT", "EXTRA"] as const) {
        expect(row.distinct[slot]).toBeGreaterThanOrEqual(coverageMinima.distinct[slot]);
        expect(row.dishes[slot]).toBeGreaterThanOrEqual(row.distinct[slot]);
      }
    },
  );

  it("is counted for the twelve single needs and the four combinations that families really have", () => {
    expect(coverageRequirements.map(({ key }) => key)).toEqual([
      "nut-free",
      "egg-free",
      "milk-free",
      "gluten-free",
      "soy-free",
      "sesame-free",
      "fish-free",
      "vegetarian",
      "vegan",
      "halal",
      "under-five-safe",
      "cold-only",
      "nut-egg-milk-free",
      "gluten-milk-free",
      "vegan-nut-soy-free",
      "egg-fish-sesame-free",
    ]);
    expect(coverageMinima).toEqual({
      distinct: { MAIN: 12, VEGETABLE: 8, FRUIT: 8, EXTRA: 8 },
      proteinSources: 4,
      starchFamilies: 4,
    });
  });

  it("holds at least 48 vegetables, 38 fruits and 54 extras", () => {
    const count = (slot: SlotCode): number => catalogue.dishes.filter(({ slots }) => slots.includes(slot)).length;
    expect(count("VEGETABLE")).toBeGreaterThanOrEqual(48);
    expect(count("FRUIT")).toBeGreaterThanOrEqual(38);
    expect(count("EXTRA")).toBeGreaterThanOrEqual(54);
  });

  it("has its table in the README of the seeds, as it is today", () => {
    expect(readCoverageTable(readme)).toBe(coverageTable(rows));
    expect(replaceCoverageTable(readme, rows)).toBe(readme);
  });

  // Our own bounds, so that no tag is put on for the table's sake.
  it("tags a main with a protein family only where its foods bring 3 g and half of what the strongest source brings", () => {
    const ofMeat: Readonly<Record<string, ProteinFamily>> = { beef: "BEEF", lamb: "LAMB", pork: "PORK" };
    const belongs = ({ group, kind }: Food, family: ProteinFamily): boolean => {
      if (group === "MEAT") return ofMeat[kind] === family;
      if (group === "POULTRY") return family === "CHICKEN";
      if (group === "FISH" || group === "OILY_FISH") return family === "FISH";
      if (group === "SOYA_FOOD") return family === "TOFU";
      if (group === "CHEESE" || group === "YOGURT" || group === "MILK")
        return family === "CHEESE" || family === "YOGURT";
      return group === family;
    };
    const mains = catalogue.dishes.filter(({ slots, protein }) => slots.includes("MAIN") && protein !== "NONE");
    for (const { key, protein } of mains) {
      const d = index.derived(key);
      const grams = (of: (food: Food) => boolean): number =>
        d.ingredients
          .filter(({ food }) => of(food))
          .reduce((sum, { food, grams: mass }) => sum + (mass * (food.nutrients.PROCNT ?? 0)) / 100, 0);
      const strongest = mainIngredient(d, "MAIN");
      const most = grams(({ kind }) => kind === strongest);
      const tagged = grams((food) => belongs(food, protein));
      expect([key, protein, tagged >= 3 && tagged >= most / 2]).toEqual([key, protein, true]);
    }
  });
});

describe("the count", () => {
  it("falls short in every row when a slot runs out, and says by how much", () => {
    for (const [slot, least] of Object.entries(coverageMinima.distinct) as [SlotCode, number][]) {
      for (const row of without(({ slots }) => slots.includes(slot))) {
        expect(row.shortfalls).toContainEqual({ of: slot, has: 0, needs: least });
      }
    }
  });

  it("falls short only where the dishes that were taken away had counted", () => {
    const vegan = rowOf(rows, "vegan");
    expect(vegan.shortfalls.filter(({ of }) => of === "EXTRA")).toEqual([]);
    const fewer = without(({ key, slots }) => slots.includes("EXTRA") && !index.derived(key).origins.includes("DAIRY"));
    expect(rowOf(fewer, "vegan").shortfalls).toContainEqual({ of: "EXTRA", has: 0, needs: 8 });
    expect(rowOf(fewer, "milk-free").distinct.EXTRA).toBe(0);
    expect(rowOf(fewer, "vegetarian").distinct.EXTRA).toBeGreaterThan(0);
  });

  it("falls short when the mains all rest on rice, or all on chicken", () => {
    const rice = rowOf(
      without(({ slots, starch }) => slots.includes("MAIN") && starch !== "RICE"),
      "halal",
    );
    expect(rice.starchFamilies).toEqual(["RICE"]);
    expect(rice.shortfalls).toContainEqual({ of: "STARCH_FAMILIES", has: 1, needs: 4 });
    const chicken = rowOf(
      without(({ slots, protein }) => slots.includes("MAIN") && protein !== "CHICKEN"),
      "halal",
    );
    expect(chicken.shortfalls).toContainEqual({ of: "PROTEIN_SOURCES", has: 1, needs: 4 });
  });

  it("takes dishes of one main ingredient in one form for one, whatever they are called", () => {
    const copies = ["apple-wedges", "carrot-sticks", "egg-fried-rice", "plain-popcorn"].map((key) => ({
      ...dishOf(key),
      key: `${key}-again`,
      name: "Another name",
    }));
    const more = coverOf({ dishes: [...catalogue.dishes, ...copies] });
    for (const [at, row] of rows.entries()) expect(more[at]?.distinct).toEqual(row.distinct);
    const all = rowOf(more, "cold-only").dishes;
    expect(all.FRUIT).toBe(rowOf(rows, "cold-only").dishes.FRUIT + 1);
  });

  it("tells the same ingredient in another cut, and the same filling in another bread, apart", () => {
    const only = (...keys: string[]): CoverageRow =>
      rowOf(
        without(({ key }) => !keys.includes(key)),
        "nut-free",
      );
    expect(only("carrot-sticks", "carrot-matchsticks").distinct.VEGETABLE).toBe(2);
    expect(only("carrot-matchsticks", "carrot-orange-matchsticks").distinct.VEGETABLE).toBe(1);
    expect(only("sandwich-tofu-crumble", "wrap-tofu-crumble").distinct.MAIN).toBe(2);
    expect(only("turmeric-rice-yoghurt-chicken", "tomato-rice-chicken").distinct.MAIN).toBe(1);
    expect(only("soft-green-beans-lemon", "green-beans-herb-sauce").distinct.VEGETABLE).toBe(1);
  });

  it("counts nothing that always has the allergen, by name or by family, nor what a diet shuts out", () => {
    const gluten = rowOf(rows, "gluten-free").dishes.MAIN;
    const contains = (key: string, allergens: readonly string[]): boolean =>
      index.derived(key).allergens.some((allergen) => allergens.includes(allergen));
    const mains = catalogue.dishes.filter(({ slots }) => slots.includes("MAIN"));
    expect(gluten).toBe(mains.filter(({ key }) => !contains(key, ["WHEAT", "RYE", "BARLEY", "OATS"])).length);
    const animal = ["MEAT", "PORK", "BEEF", "POULTRY", "FISH", "SEAFOOD", "GELATINE"];
    expect(rowOf(rows, "vegetarian").dishes.MAIN).toBe(
      mains.filter(({ key }) => !index.derived(key).origins.some((origin) => animal.includes(origin))).length,
    );
    const milky = coverOf({
      foods: catalogue.foods.map((food) =>
        food.kind === "wheat" || food.kind === "rice" ? { ...food, allergens: [...food.allergens, "MILK"] } : food,
      ),
    });
    expect(rowOf(milky, "milk-free").dishes.MAIN).toBeLessThan(rowOf(rows, "milk-free").dishes.MAIN);
  });

  it("leaves out for a child of three what no cut makes safe, and keeps what a cut does", () => {
    const popcorn = without(({ key }) => key !== "plain-popcorn");
    expect(rowOf(popcorn, "under-five-safe").dishes.EXTRA).toBe(0);
    expect(rowOf(popcorn, "cold-only").dishes.EXTRA).toBe(1);
    expect(
      rowOf(
        without(({ key }) => key !== "small-tomatoes"),
        "under-five-safe",
      ).dishes.VEGETABLE,
    ).toBe(1);
  });

  it("leaves out of a cold box what is eaten warm and what is cooked on the morning", () => {
    const only = (dish: Dish): number => rowOf(coverOf({ dishes: [dish] }), "cold-only").dishes.MAIN;
    expect(only(dishOf("dal-and-rice"))).toBe(0);
    const sandwich = dishOf("sandwich-tofu-crumble");
    expect(only(sandwich)).toBe(1);
    const toasted: Dish = {
      ...sandwich,
      steps: sandwich.steps.map((step) => ({
        ...step,
        eveningBefore: false,
        equipment: [{ kind: "TOASTER", units: 1 }],
      })),
    };
    expect(only(toasted)).toBe(0);
  });
});

describe("facts of the trade, common practice", () => {
  it("gives a single microwave biscuit one minute in bursts of 30 seconds, one at a time, and 15 to 20 minutes to stand", () => {
    const heated = dishOf("microwave-buckwheat-biscuit").steps.find(({ equipment }) =>
      equipment.some(({ kind }) => kind === "MICROWAVE"),
    );
    expect(heated).toMatchObject({ passiveMinutes: 1, batchPortions: 1 });
    expect(heated?.text).toMatch(/two bursts of 30 seconds/);
    expect(heated?.coolMinutes).toBeGreaterThanOrEqual(15);
    expect(heated?.coolMinutes).toBeLessThanOrEqual(20);
  });

  it("keeps thin-cut vegetables in the pan for three to four minutes", () => {
    for (const key of ["pan-crisp-cabbage", "stir-fried-pak-choi", "courgette-ribbons"]) {
      const step = dishOf(key).steps.find(({ equipment }) => equipment.some(({ kind }) => kind === "HOB_BURNER"));
      const minutes = Math.max(step?.passiveMinutes ?? 0, step?.handsOnFixedMinutes ?? 0);
      expect([key, minutes >= 3 && minutes <= 4]).toEqual([key, true]);
    }
  });

  it("steams small batter cakes four moulds at a time for ten minutes and lets them cool before they leave the mould", () => {
    const cakes = dishOf("steamed-banana-rice-cakes");
    const steamed = cakes.steps.find(({ equipment }) => equipment.some(({ kind }) => kind === "STEAMER"));
    expect(steamed).toMatchObject({ passiveMinutes: 10, heldWhileCooling: true });
    expect(steamed?.coolMinutes).toBeGreaterThan(0);
    expect((steamed?.batchPortions ?? 0) * (cakes.portion.kind === "PIECES" ? cakes.portion.pieces : 0)).toBe(4);
  });

  it("offers every stone fruit pitted and cut, so that nothing is left to cut for a child of three", () => {
    for (const kind of ["peach", "nectarine", "plum", "apricot", "cherry"]) {
      const ready = catalogue.dishes
        .filter(({ slots }) => slots.includes("FRUIT"))
        .map(({ key }) => index.derived(key))
        .filter((d) => mainIngredient(d, "FRUIT") === kind)
        .filter((d) => {
          const verdict = judgeChoking(3, d, choking);
          return verdict.allowed && verdict.cuts.length === 0;
        });
      expect([kind, ready.length > 0]).toEqual([kind, true]);
    }
    for (const key of ["peach-slices", "nectarine-slices", "stoned-plum-halves", "stoned-cherry-quarters"]) {
      expect(dishOf(key).steps[0]?.text).toMatch(/ston/i);
    }
  });
});
