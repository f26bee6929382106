import { describe, expect, test } from "@jest/globals";
import type { WeekBrief } from "../../src/domain/brief.js";
import { addDays } from "../../src/domain/calendar/dates.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { findCandidates, type Candidates, type ExclusionCause } from "../../src/domain/planner/candidates.js";
import {
  eldest,
  eldestLeavingAtNine,
  middle,
  monday,
  schoolDates,
  sessions,
  threeChildren,
  youngest,
} from "../support/demo-brief.js";

const find = (brief: WeekBrief): Candidates => findCandidates(brief, indexCatalogue(brief.catalogue));
const brief = threeChildren();
const index = indexCatalogue(brief.catalogue);
const found = find(brief);
const dishesOf = (candidates: Candidates, childId: string) =>
  candidates.places.filter(({ place }) => place.childId === childId).flatMap(({ dishes }) => dishes);
const causesOf = (candidates: Candidates, childId: string, dish: string): ExclusionCause[] =>
  candidates.exclusions.filter((row) => row.childId === childId && row.dish === dish).map((row) => row.why);

describe("candidates", () => {
  test("every dish of a slot is either offered or shut out for a reason, at every place", () => {
    for (const { place, dishes } of found.places) {
      const shutOut = found.exclusions.filter(
        (row) =>
          row.childId === place.childId &&
          row.date === place.date &&
          row.breakKey === place.breakKey &&
          row.slot === place.slot,
      );
      const inSlot = brief.catalogue.dishes.filter((dish) => dish.slots.includes(place.slot)).map((dish) => dish.key);
      const named = [...dishes.map(({ derived }) => derived.dish.key), ...shutOut.map((row) => row.dish)];
      expect(named.sort()).toEqual(inSlot.sort());
    }
    expect(found.places).toHaveLength(3 * 5 * 5);
  });

  test("never offers a child who avoids nuts a dish with one, and says which food it was", () => {
    const nuts = [
      "ALMOND",
      "HAZELNUT",
      "WALNUT",
      "CASHEW",
      "PECAN",
      "BRAZIL_NUT",
      "PISTACHIO",
      "MACADAMIA",
      "PINE_NUT",
      "PEANUT",
    ];
    for (const { derived } of dishesOf(found, middle.id)) {
      for (const allergen of derived.allergens) expect(nuts).not.toContain(allergen);
    }
    expect(causesOf(found, middle.id, "walnut-fig-pieces")[0]).toEqual({
      kind: "ALLERGEN",
      allergen: "WALNUT",
      food: "walnuts",
    });
    expect(dishesOf(found, eldest.id).some(({ derived }) => derived.dish.key === "walnut-fig-pieces")).toBe(true);
  });

  test("a may-contain on a label shuts out the child who avoids traces, and everyone at a nut-free school, but no one else", () => {
    const dish = "cheddar-strips-and-apple";
    const labelled = find(
      threeChildren({
        labels: [{ food: "cheddar", contains: ["MILK"], mayContain: ["HAZELNUT"], readOn: "2027-01-09" }],
      }),
    );
    expect(dishesOf(found, middle.id).some(({ derived }) => derived.dish.key === dish)).toBe(true);
    expect(causesOf(labelled, middle.id, dish)[0]).toMatchObject({ kind: "MAY_CONTAIN", food: "cheddar" });
    expect(causesOf(labelled, youngest.id, dish)[0]).toMatchObject({ kind: "RULE", rule: "no-nuts" });
    expect(causesOf(labelled, eldest.id, dish)).toEqual([]);
  });

  test("a packaged food whose label nobody has read is offered with the label to read", () => {
    const withLabels = dishesOf(found, middle.id).filter(({ labelsToRead }) => labelsToRead.length > 0);
    expect(withLabels.length).toBeGreaterThan(0);
    expect(dishesOf(found, youngest.id).every(({ labelsToRead }) => labelsToRead.length === 0)).toBe(true);
  });

  test("a label of the food that is bought speaks for the cooked row made of it", () => {
    const cooked = brief.catalogue.foods.find((food) => food.boughtAs !== null && food.key.startsWith("pasta"));
    const bought = cooked?.boughtAs?.food ?? "";
    const labelled = find(
      threeChildren({
        labels: [{ food: bought, contains: ["WHEAT"], mayContain: ["HAZELNUT"], readOn: "2027-01-09" }],
      }),
    );
    const eaters = brief.catalogue.dishes.filter((dish) =>
      index.derived(dish.key).ingredients.some(({ food }) => food.key === cooked?.key),
    );
    expect(dishesOf(found, middle.id).some(({ derived }) => eaters.includes(derived.dish))).toBe(true);
    for (const dish of eaters)
      expect(dishesOf(labelled, middle.id).some(({ derived }) => derived.dish === dish)).toBe(false);
  });

  test("a vegetarian child is offered no meat and no fish", () => {
    for (const { derived } of dishesOf(found, eldest.id)) {
      for (const origin of derived.origins)
        expect(["MEAT", "PORK", "BEEF", "POULTRY", "FISH", "SEAFOOD", "GELATINE"]).not.toContain(origin);
    }
    expect(causesOf(found, eldest.id, "sandwich-tuna-sweetcorn")[0]).toMatchObject({
      kind: "DIET",
      diet: "VEGETARIAN",
    });
  });

  test("a fruit-only break offers fruit alone, and names the rule that shut the rest out", () => {
    const morning = found.places.filter(
      ({ place, child }) => place.breakKey === "morning-break" && child.schoolName === "Elder Lane",
    );
    expect(morning.length).toBe(10);
    for (const { derived } of morning.flatMap(({ dishes }) => dishes)) {
      for (const { food } of derived.ingredients) expect(food.group).toBe("FRUIT");
    }
    const why = found.exclusions.find(
      (row) => row.breakKey === "morning-break" && row.dish === "dried-apricots-and-raisins",
    )?.why;
    expect(why).toMatchObject({
      kind: "RULE",
      ruleSet: "primary",
      rule: "fruit-only",
      source: "own rule of an invented school",
    });
  });

  test("a four-year-old gets grapes with the cut that makes them safe; whole popcorn not at all", () => {
    const grapes = dishesOf(found, youngest.id).find(({ derived }) => derived.dish.key === "grapes-on-the-stem");
    expect(grapes?.cuts[0]?.cut).toMatch(/lengthways/);
    expect(dishesOf(found, eldest.id).find(({ derived }) => derived.dish.key === "grapes-on-the-stem")?.cuts).toEqual(
      [],
    );
    expect(causesOf(found, youngest.id, "plain-popcorn")[0]).toMatchObject({ kind: "CHOKING", class: "POPCORN" });
  });

  test("without a flask or reheating nothing that is eaten warm is offered", () => {
    expect(dishesOf(found, youngest.id).every(({ derived }) => derived.dish.served !== "WARM")).toBe(true);
    expect(causesOf(found, youngest.id, "macaroni-cheese-cauliflower")[0]).toMatchObject({
      kind: "FACILITY",
      facility: "NEITHER",
    });
    const near = find(threeChildren({ children: [eldestLeavingAtNine] }));
    expect(dishesOf(near, eldest.id).some(({ served }) => served === "WARM")).toBe(true);
  });

  test("a flask that has cooled by lunch offers nothing warm, and says when its time is up", () => {
    expect(dishesOf(found, eldest.id).every(({ holding }) => holding.case !== "FLASK")).toBe(true);
    const [why] = causesOf(found, eldest.id, "dal-and-rice");
    expect(why).toMatchObject({ kind: "HOLDING", minutes: 235, mend: ["OTHER_DISH", "LESS_TIME"] });
    expect(why?.kind === "HOLDING" && why.limitMinutes).toBeLessThan(235);
  });

  test("with one cold source too few, chilled food is not carried for hours", () => {
    const warmBag = find(threeChildren({ children: [{ ...youngest, box: { ...youngest.box, coldSources: 1 } }] }));
    const lunch = warmBag.places.filter(({ place }) => place.breakKey === "lunch").flatMap(({ dishes }) => dishes);
    expect(lunch.every(({ holding }) => holding.case === "NOT_CONTROLLED")).toBe(true);
    expect(causesOf(warmBag, youngest.id, "sandwich-egg-chive")[0]).toMatchObject({
      kind: "HOLDING",
      fault: "TooLongWithoutCold",
    });
  });

  test("what the household keeps out or is out of is offered to nobody", () => {
    const bare = find(
      threeChildren({
        household: { ...brief.household, keepsOut: ["PEANUT", "SESAME"] },
        outOf: ["carrot"],
        ready: [],
      }),
    );
    for (const { derived } of bare.places.flatMap(({ dishes }) => dishes)) {
      expect(derived.allergens).not.toContain("SESAME");
      expect(derived.ingredients.some(({ food }) => food.kind === "carrot")).toBe(false);
    }
    expect(causesOf(bare, eldest.id, "carrot-sticks")[0]).toEqual({ kind: "OUT_OF", foodKind: "carrot" });
  });

  test("a base cooked before may hold what the household is out of now", () => {
    const carrots = brief.catalogue.bases
      .find((base) => base.key === "tomato-sauce")
      ?.ingredients.map((row) => row.food);
    expect(carrots).toContain("carrot-raw");
    const usesSauce = (candidates: Candidates): boolean =>
      dishesOf(candidates, eldest.id).some(({ derived }) =>
        derived.dish.bases.some((use) => use.base === "tomato-sauce"),
      );
    expect(usesSauce(find(threeChildren({ outOf: ["carrot"] })))).toBe(true);
    expect(usesSauce(find(threeChildren({ outOf: ["carrot"], ready: [] })))).toBe(false);
  });

  test("a dish that needs an appliance the kitchen lacks is out, and so is one whose base does", () => {
    const noOven = find(
      threeChildren({ household: { ...brief.household, equipment: [{ kind: "HOB_BURNER", units: 2 }] } }),
    );
    expect(causesOf(noOven, youngest.id, "roasted-sweet-potato-fingers")[0]).toEqual({
      kind: "EQUIPMENT",
      equipment: "OVEN",
      neededUnits: 1,
      haveUnits: 0,
    });
    expect(causesOf(noOven, youngest.id, "roasted-vegetable-mix")[0]).toMatchObject({
      kind: "EQUIPMENT",
      equipment: "OVEN",
    });
  });

  test("a base no session can make shuts its dishes out, unless some of it is ready", () => {
    const mornings = sessions.filter((session) => session.kind === "MORNING");
    const without = find(threeChildren({ sessions: mornings, ready: [] }));
    expect(causesOf(without, youngest.id, "roasted-vegetable-mix")[0]).toEqual({
      kind: "NO_SESSION",
      base: "roasted-vegetables",
    });
    const ready = [
      {
        id: "left",
        base: "roasted-vegetables",
        grams: 300,
        from: "LEFTOVER",
        firstDate: monday,
        lastDate: addDays(monday, 1),
      } as const,
    ];
    expect(
      dishesOf(find(threeChildren({ sessions: mornings, ready })), youngest.id).some(
        ({ derived }) => derived.dish.key === "roasted-vegetable-mix",
      ),
    ).toBe(true);
  });

  test("a dish whose morning steps outlast the morning is out on that day alone", () => {
    const [first] = schoolDates;
    const hurried = find(
      threeChildren({
        sessions: sessions.map((row) => (row.key === `morning-${first}` ? { ...row, elapsedMinutes: 12 } : row)),
        children: [eldestLeavingAtNine],
      }),
    );
    const offered = (date: string | undefined) =>
      hurried.places.find(({ place }) => place.childId === eldest.id && place.date === date && place.slot === "MAIN")
        ?.dishes ?? [];
    expect(offered(first).length).toBeLessThan(offered(schoolDates[1]).length);
    const why = hurried.exclusions.find((row) => row.date === first && row.why.kind === "MORNING_TOO_SHORT")?.why;
    expect(why).toMatchObject({ session: `morning-${first}`, haveMinutes: 12 });
  });

  test("a dish larger than the largest compartment it may lie in is out", () => {
    const small = find(
      threeChildren({
        children: [
          {
            ...youngest,
            box: {
              ...youngest.box,
              compartments: [
                { ml: 130, leakProof: false },
                { ml: 60, leakProof: true },
              ],
            },
          },
        ],
      }),
    );
    for (const { volumeMl, derived } of dishesOf(small, youngest.id)) {
      expect(volumeMl).toBeLessThanOrEqual(derived.dish.spill === "WET" ? 60 : 130);
    }
    expect(small.exclusions.some((row) => row.why.kind === "VOLUME" && row.why.compartmentMl === 60)).toBe(true);
  });

  test("a dislike shuts nothing out", () => {
    expect(dishesOf(found, youngest.id).some(({ derived }) => derived.dish.key === "red-cabbage-apple-slaw")).toBe(
      true,
    );
  });
});
