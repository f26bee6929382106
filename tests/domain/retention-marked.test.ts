/** Nothing raw is cooked without saying so: a row that goes onto the heat names how, or that no factor was read. */
import { describe, expect, it } from "@jest/globals";
import type { Base, Catalogue, Dish, Food, Ingredient } from "../../shared/catalogue.js";
import { nutrientTag, type NutrientTag } from "../../shared/codes.js";
import { explainNutrient, indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { indexRetention } from "../../src/domain/catalogue/retention.js";
import { leftOf } from "../../src/domain/checker/cooking-losses.js";
import type { Part, WeekRead } from "../../src/domain/checker/week-read.js";
import { heaters } from "../../src/domain/kitchen/heat.js";
import { readCatalogue } from "./reference-rows.js";

const catalogue = readCatalogue();

/** What heat takes; minerals go with the water that is poured off, and such rows stand as boiled rows of the table. */
const vitamins: readonly NutrientTag[] = ["VITA_RAE", "VITC", "VITB12", "FOLDFE", "VITD"];
/** What a step without equipment does on the heat all the same: "scald", "pour boiling water"; "boiled potatoes" are no doing. */
const hotWords = /\b(?:toast|scald|boil|boiling|fry|bake|roast|simmer|steam|stew|soften|poach|heat)\b/i;
/** From these words on a step speaks of what no longer stands on the heat. */
const offTheHeat =
  /\b(?:rinsed? cold|cool(?:s|ed)?|chill(?:ed)?|drain(?:ed)?|press dry|then dress|finish with|off the heat)\b/i;

/** The row describes something raw, and heat takes something from it. */
function isRaw({ key, group, boughtAs, nutrients }: Food): boolean {
  const ready = boughtAs !== null || ["BREAD", "SAVOURY_SNACK", "CONFECTIONERY", "MEAT_PRODUCT"].includes(group);
  const cooked =
    /-(boiled|cooked|baked|roasted|toasted|pickled)$/.test(key) ||
    /^(tuna|salmon|sardines|chickpeas|kidney-beans)-tinned$/.test(key);
  return !ready && !cooked && vitamins.some((tag) => (nutrients[tag] ?? 0) > 0);
}

/** Names under which a step may speak of a food. */
function wordsFor({ key, kind, group }: Food): RegExp {
  const named = [...key.split("-"), ...kind.split("-")].filter(
    (word) =>
      !/^(raw|fresh|dried|tinned|frozen|plain|whole|green|red|yellow|white|leaf|less|butter|ground|young|cow|hen)$/.test(
        word,
      ),
  );
  const general = ["everything", "the rest(?! of)"];
  if (group.startsWith("VEGETABLE")) general.push("vegetable", "greens");
  if (group === "FRUIT") general.push("fruit");
  if (group === "SEED" || group === "NUT") general.push("seed");
  if (group === "HERB_SPICE") general.push("herb", "spice", "seasoning");
  return new RegExp(`\\b(?:${[...named.map((word) => word.replace(/(?:es|s)$/, "")), ...general].join("|")})`, "i");
}

interface Clause {
  readonly text: string;
  readonly hot: boolean;
}

function clausesOf(steps: readonly { readonly text: string; readonly hot: boolean }[]): Clause[] {
  return steps.flatMap(({ text, hot }) => {
    const at = hot ? text.search(offTheHeat) : -1;
    return at < 0
      ? [{ text, hot }]
      : [
          { text: text.slice(0, at), hot },
          { text: text.slice(at), hot: false },
        ];
  });
}

/** The last the steps say of it is said in the cold, with nothing hot to come. */
function staysRaw(food: Food, clauses: readonly Clause[]): boolean {
  const lastHot = clauses.findLastIndex(({ hot }) => hot);
  return clauses
    .slice(lastHot + 1)
    .some(({ text }) => wordsFor(food).test(text.normalize("NFD").replace(/\p{M}/gu, "")));
}

type Rows = Pick<Catalogue, "foods" | "bases" | "dishes">;

const uncoded = (ingredients: readonly Ingredient[], foods: ReadonlyMap<string, Food>): Food[] =>
  ingredients.flatMap(({ food, retention }) => {
    const row = foods.get(food);
    return row !== undefined && retention === undefined && isRaw(row) ? [row] : [];
  });

/** A dish's raw rows that its steps put on the heat, or never take out of the way of it, and that name no code. */
function unmarkedInDish(dish: Dish, foods: ReadonlyMap<string, Food>): string[] {
  const clauses = clausesOf(
    dish.steps.map(({ text, equipment }) => ({
      text,
      hot: equipment.some(({ kind }) => heaters.has(kind)) || hotWords.test(text),
    })),
  );
  if (!clauses.some(({ hot }) => hot)) return [];
  return uncoded(dish.ingredients, foods)
    .filter((food) => !staysRaw(food, clauses))
    .map(({ key }) => `${dish.key}: ${key}`);
}

/** Doughs, batters and marinades are cooked in every dish that takes them; of another base its own steps decide. */
function unmarkedInBase(base: Base, foods: ReadonlyMap<string, Food>): string[] {
  const always = ["DOUGH", "BATTER", "MARINADE"].includes(base.kind);
  const hotSteps = base.steps.map((text) => ({ text, hot: hotWords.test(text) }));
  const heated = always || hotSteps.some(({ hot }) => hot);
  if (!heated) return [];
  return uncoded(base.ingredients, foods)
    .filter((food) => always || !staysRaw(food, clausesOf(hotSteps)))
    .map(({ key }) => `${base.key}: ${key}`);
}

function unmarked({ foods, bases, dishes }: Rows): string[] {
  const byKey = new Map(foods.map((food) => [food.key, food]));
  return [
    ...bases.flatMap((base) => unmarkedInBase(base, byKey)),
    ...dishes.flatMap((dish) => unmarkedInDish(dish, byKey)),
  ];
}

describe("a raw row that is cooked", () => {
  it("names how it is cooked, or that no factor was read, in every base and dish", () => {
    expect(unmarked(catalogue)).toEqual([]);
  });

  it("is found when a code is taken away: the egg of a muffin, a roasted floret, the yeast of a dough", () => {
    const bare = <T extends Base | Dish>(rows: readonly T[], key: string, food: string): T[] =>
      rows.map((row) =>
        row.key !== key
          ? row
          : {
              ...row,
              ingredients: row.ingredients.map(({ retention, ...ingredient }) =>
                ingredient.food === food || retention === undefined ? ingredient : { ...ingredient, retention },
              ),
            },
      );
    const { foods, bases, dishes } = catalogue;
    const before = unmarked(catalogue);
    const found = (change: Partial<Rows>): string[] =>
      unmarked({ foods, bases, dishes, ...change }).filter((name) => !before.includes(name));
    expect(found({ dishes: bare(dishes, "wholemeal-banana-muffins", "egg-raw") })).toEqual([
      "wholemeal-banana-muffins: egg-raw",
    ]);
    expect(found({ dishes: bare(dishes, "turmeric-cauliflower", "cauliflower-raw") })).toEqual([
      "turmeric-cauliflower: cauliflower-raw",
    ]);
    expect(found({ bases: bare(bases, "bread-roll-dough", "yeast-dried") })).toEqual(["bread-roll-dough: yeast-dried"]);
    expect(found({ bases: bare(bases, "roasted-vegetables", "courgette-raw") })).toEqual([
      "roasted-vegetables: courgette-raw",
    ]);
  });

  it("is told from what is laid on cold, stirred in off the heat, salt and water", () => {
    const found = unmarked(catalogue).map((name) => name.split(": ")[0]);
    for (const key of [
      "flatbread-pulled-chicken",
      "minted-peas",
      "lemon-asparagus",
      "white-bean-spread",
      "carrot-sticks",
    ])
      expect([key, found.includes(key)]).toEqual([key, false]);
  });
});

describe("the mark of a raw row for whose cooking no factor was read", () => {
  const mark = "0000";
  const losses = new Map(catalogue.retention.map((row) => [row.code, row]));

  it("states no factor and says that it is ours", () => {
    expect(losses.get(mark)).toMatchObject({ percent: {}, source: expect.stringContaining("our own") });
  });

  // By hand from seeds/reference/retention.json: least of vitamin C 55 (3005), folate 60 (0501), B12 55 (0001), vitamin A 85 (0305), iron 80 (0521), calcium 85 (0501).
  it("leaves a minimum the least that any row leaves, and a maximum everything", () => {
    const left = indexRetention(catalogue.retention)(mark)?.retained;
    for (const [nutrient, atLeast] of [
      ["VITC", 0.55],
      ["FOLDFE", 0.6],
      ["VITB12", 0.55],
      ["VITA_RAE", 0.85],
      ["FE", 0.8],
      ["CA", 0.85],
    ] as const)
      expect([nutrient, left?.[nutrient]]).toEqual([nutrient, { basis: "FLOOR", atLeast, atMost: 1 }]);
    expect(left?.ENERC_KCAL).toEqual({ basis: "WHOLE", atLeast: 1, atMost: 1 });
    expect(left?.NA).toEqual({ basis: "WHOLE", atLeast: 1, atMost: 1 });
  });

  // By hand: 75 g of raw cauliflower (11135) with 48.2 mg vitamin C per 100 g; turmeric (02043) 0.4 g with 0.7 mg, cumin seed (02014) 0.3 g with 7.7.
  it("takes from roasted cauliflower what it must not promise", () => {
    const derived = indexCatalogue({ version: "shipped", ...catalogue }).derived("turmeric-cauliflower");
    const raw = 0.75 * 48.2 + 0.004 * 0.7 + 0.003 * 7.7;
    expect(derived.nutrients.VITC).toBeCloseTo(0.55 * raw, 6);
    expect(derived.nutrientsAtMost.VITC).toBeCloseTo(raw, 6);
    expect(explainNutrient(derived, "VITC").parts.map(({ retained }) => retained.basis)).toEqual(
      expect.arrayContaining(["FLOOR"]),
    );
  });

  it("is read the same by the independent checker, as is every code, for every nutrient", () => {
    const week = { losses } as unknown as WeekRead;
    const cookingOf = indexRetention(catalogue.retention);
    for (const code of losses.keys()) {
      for (const nutrient of nutrientTag.options) {
        const { atLeast, atMost } = cookingOf(code)!.retained[nutrient];
        expect([code, nutrient, leftOf(week, { cooked: code } as Part, nutrient)]).toEqual([
          code,
          nutrient,
          { sure: atLeast, possible: atMost },
        ]);
      }
    }
  });
});
