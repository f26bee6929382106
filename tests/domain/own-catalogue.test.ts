import { ownDishInput, ownFoodInput, type OwnDishInput, type OwnFoodInput } from "../../shared/own-catalogue.js";
import type { RuleSetDocument } from "../../shared/rule-set.js";
import { judgeAllergies } from "../../src/domain/catalogue/allergens.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { dishFromInput } from "../../src/domain/catalogue/own-dish.js";
import { allergensOfKind, foodFromInput, nutrientsFromLabel } from "../../src/domain/catalogue/own-food.js";
import { indexWithOwn, ownRowsOf, withOwnRows } from "../../src/domain/catalogue/own-rows.js";
import { whatIsMissing } from "../../src/domain/catalogue/what-is-missing.js";
import { tinyBrief } from "../support/tiny-week.js";

const { catalogue } = tinyBrief;

const mix: OwnFoodInput = {
  name: "Pancake flour mix",
  kind: "flour-mix",
  group: "GRAIN",
  origins: ["PLANT"],
  nutrients: {
    energyKcal: 350,
    fatGrams: 1.5,
    carbohydrateGrams: 71,
    fibreGrams: 3,
    proteinGrams: 10,
    saltGrams: 1.25,
  },
  label: { contains: ["WHEAT"], mayContain: ["SOYA"], kinds: [], readOn: "2026-09-01" },
  packaged: true,
  refusePercent: 0,
  chokingClasses: [],
  pack: { grams: 500, priceMinor: 210 },
  shopSection: "DRY_GOODS",
  wholeGrain: false,
};
const pancake: OwnDishInput = {
  name: "Grandmother's pancake",
  slots: ["MAIN"],
  bases: [],
  ingredients: [
    { food: "own-mix", grams: 50, form: "MIXED_IN" },
    { food: "egg", grams: 30, form: "MIXED_IN" },
    { food: "water", grams: 60, form: "MIXED_IN" },
  ],
  portion: { gramsPerPiece: 60, pieces: 2, stepPieces: 1, pieceName: "pancake" },
  steps: [
    {
      text: "Fry the pancakes.",
      handsOnFixedMinutes: 3,
      handsOnPerPortionMinutes: 4,
      passiveMinutes: 0,
      equipment: [],
      eveningBefore: true,
      coolMinutes: 10,
      heldWhileCooling: false,
    },
  ],
  served: "COLD",
  goodForHours: 6,
  cutlery: "NONE",
  spill: "DRY",
  volumeMl: 220,
  starch: "BATTER_CAKE",
  protein: "EGG",
  colours: [],
  textures: [],
  flavours: [],
  cuisine: "home",
  processing: [],
  cookedInFat: true,
  treat: false,
};
const mixRow = (change: Partial<OwnFoodInput> = {}) => foodFromInput("own-mix", { ...mix, ...change }, []);
const withMix = (change: Partial<OwnFoodInput> = {}) =>
  withOwnRows(catalogue, { version: "tiny+own", foods: [mixRow(change)], dishes: [] });
const fieldsOf = (parsed: ReturnType<typeof ownFoodInput.safeParse> | ReturnType<typeof ownDishInput.safeParse>) =>
  parsed.error?.issues.map(({ path }) => path.join(".")) ?? [];
const figures = (nutrients: OwnFoodInput["nutrients"]) => fieldsOf(ownFoodInput.safeParse({ ...mix, nutrients }));
const dishFields = (change: Record<string, unknown>) => fieldsOf(ownDishInput.safeParse({ ...pancake, ...change }));
const faults = (change: Partial<OwnDishInput>, catalogueOf = withMix()) => {
  const made = dishFromInput("own-pancake", { ...pancake, ...change }, catalogueOf);
  return made.ok ? [] : made.error;
};

describe("a label's figures", () => {
  it("give sodium as salt over 2.5, Regulation (EU) 1169/2011, Annex I, point 11", () => {
    expect(nutrientsFromLabel({ saltGrams: 1.25 })).toEqual({ NA: 500 });
    expect(nutrientsFromLabel({ sodiumMg: 400 })).toEqual({ NA: 400 });
  });
  it("give kcal from kJ by 4.184, the thermochemical calorie", () => {
    expect(nutrientsFromLabel({ energyKj: 1464.4 }).ENERC_KCAL).toBeCloseTo(350, 10);
    expect(nutrientsFromLabel({ energyKcal: 350, energyKj: 1464 }).ENERC_KCAL).toBe(350);
  });
  it("add fibre to the carbohydrate of a European label, and know no total where that label gives none", () => {
    expect(nutrientsFromLabel({ carbohydrateGrams: 71, fibreGrams: 3 })).toMatchObject({ CHOCDF: 74, FIBTG: 3 });
    expect(nutrientsFromLabel({ carbohydrateGrams: 71 })).toEqual({});
    expect(nutrientsFromLabel({ totalCarbohydrateGrams: 74, fibreGrams: 3 })).toMatchObject({ CHOCDF: 74 });
  });
  it("that are absent stay missing", () => {
    expect(nutrientsFromLabel({ proteinGrams: 0, calciumMg: null })).toEqual({ PROCNT: 0 });
  });
  it("count all sugars as free unless the label has the added ones", () => {
    const free = (nutrients: OwnFoodInput["nutrients"]) => mixRow({ nutrients }).freeSugarGrams;
    expect(free({ sugarsGrams: 12, addedSugarsGrams: 4 })).toBe(4);
    expect(free({ sugarsGrams: 12 })).toBe(12);
    expect(free({ carbohydrateGrams: 30 })).toBe(30);
    expect(free({ fatGrams: 40, proteinGrams: 10 })).toBe(50);
  });
  it("that no label can have are refused on their own line", () => {
    expect(figures({ energyKcal: 951 })).toEqual(["nutrients.energyKcal"]);
    expect(figures({ energyKcal: 902, fatGrams: 100 })).toEqual([]);
    expect(figures({ fatGrams: -1 })).toEqual(["nutrients.fatGrams"]);
    expect(figures({ fatGrams: 5, saturatedFatGrams: 6 })).toEqual(["nutrients.saturatedFatGrams"]);
    expect(figures({ carbohydrateGrams: 20, sugarsGrams: 21 })).toEqual(["nutrients.sugarsGrams"]);
    expect(figures({ sugarsGrams: 20, addedSugarsGrams: 21 })).toEqual(["nutrients.addedSugarsGrams"]);
    expect(figures({ totalCarbohydrateGrams: 5, fibreGrams: 8 })).toEqual(["nutrients.fibreGrams"]);
    expect(figures({ fatGrams: 40, carbohydrateGrams: 50, proteinGrams: 16 })).toEqual(["nutrients.fatGrams"]);
    expect(figures({ fatGrams: 40, carbohydrateGrams: 50, proteinGrams: 15 })).toEqual([]);
    expect(figures({ energyKcal: 350, energyKj: 350 })).toEqual(["nutrients.energyKj"]);
    expect(figures({ saltGrams: 1, sodiumMg: 400 })).toEqual(["nutrients.sodiumMg"]);
    expect(figures({ carbohydrateGrams: 10, totalCarbohydrateGrams: 12 })).toEqual([
      "nutrients.totalCarbohydrateGrams",
    ]);
  });
  it("of a label read before the product was as it is are refused", () => {
    const sold = (productSince: string) => fieldsOf(ownFoodInput.safeParse({ ...mix, productSince }));
    expect(sold("2026-09-02")).toEqual(["label.readOn"]);
    expect(sold("2026-09-01")).toEqual([]);
  });
});

describe("an own food", () => {
  const avoids = [{ allergen: "SESAME" as const, foodKind: null, avoid: "INGREDIENTS" as const }];
  const judged = (change: Partial<OwnFoodInput>) => {
    const rows = withMix(change);
    const made = dishFromInput("own-pancake", pancake, rows);
    if (!made.ok) throw new Error("the pancake does not pass");
    const index = indexCatalogue({ ...rows, dishes: [made.value] });
    return judgeAllergies(avoids, index.derived("own-pancake"), []);
  };
  it("whose allergens nobody stated is unread for everybody who avoids anything, sold with a label or not", () => {
    for (const packaged of [true, false])
      expect(judged({ label: null, packaged })).toEqual({ kind: "CLEAR_IF_LABEL_READ", foods: ["own-mix"] });
  });
  it("has what every food of its kind has, before anybody reads a label", () => {
    const yogurts = catalogue.foods.filter(({ kind }) => kind === "cow-milk");
    expect(allergensOfKind(yogurts)).toEqual(["MILK"]);
    expect(foodFromInput("own-milk", { ...mix, label: null }, yogurts).allergens).toEqual(["MILK"]);
    expect(allergensOfKind([])).toEqual([]);
  });
  it("is as dangerous to a small throat as other foods of its kind", () => {
    const grapes = catalogue.foods.filter(({ key }) => key === "grape");
    expect(foodFromInput("own-grape", { ...mix, chokingClasses: [] }, grapes).chokingClasses).toEqual(["GRAPE_LIKE"]);
  });
  it("is never taken to keep without cold: no kitchen measures water activity or pH", () => {
    expect(mixRow()).toMatchObject({ waterActivity: null, ph: null });
  });
});

describe("an own dish", () => {
  it("is derived from the household's own foods and the catalogue's", () => {
    const made = dishFromInput("own-pancake", pancake, withMix());
    if (!made.ok) throw new Error(JSON.stringify(made.error));
    const own = { version: "tiny+own", foods: [mixRow()], dishes: [made.value] };
    const reference = indexCatalogue(catalogue);
    const derived = indexWithOwn(catalogue, reference, own).derived("own-pancake");
    expect(derived.allergens).toEqual(["EGG", "WHEAT"]);
    expect(derived.packagedFoods).toEqual(["own-mix"]);
    // 50 g at 350 kcal and 30 g of the invented egg at 100.
    expect(derived.nutrients.ENERC_KCAL).toBeCloseTo(205, 10);
    // 50 g of a pack of 500 g at 2.10, and 30 g of egg, a fifth of it shell, from 300 g at 2.50; the invented water is sold too.
    expect(derived.costMinor).toBeCloseTo(21 + ((30 / 0.8) * 250) / 300 + (60 * 200) / 500, 10);
    expect(derived).toEqual(indexCatalogue(withOwnRows(catalogue, own)).derived("own-pancake"));
  });
  it("stands beside a reference catalogue that stays as it was", () => {
    const own = { version: "tiny+own", foods: [mixRow()], dishes: [] };
    const merged = withOwnRows(catalogue, own);
    expect(ownRowsOf(merged)).toEqual(own);
    expect(ownRowsOf(catalogue)).toBeNull();
    const reference = indexCatalogue(catalogue);
    const index = indexWithOwn(catalogue, reference, own);
    expect(index.derived("chickpea-wrap")).toBe(reference.derived("chickpea-wrap"));
    expect(index.version).toBe("tiny+own");
  });
  it("weighs millilitres by density, and refuses them where none is known", () => {
    const [first, ...others] = pancake.ingredients;
    const inMl = { ingredients: [{ ...first!, grams: null, ml: 100 }, ...others] };
    expect(faults(inMl)).toMatchObject([{ kind: "NoDensity", at: ["ingredients", 0, "ml"], food: "own-mix" }]);
    expect(faults(inMl, withMix({ densityGramsPerMl: 0.5 }))).toEqual([]);
    const much = { ingredients: [{ ...first!, grams: null, ml: 4000 }, ...others] };
    expect(faults(much, withMix({ densityGramsPerMl: 2 }))).toMatchObject([{ kind: "TooMuch", grams: 8000 }]);
  });
  it("that does not weigh up against its ingredients is refused with what would", () => {
    const portion = { gramsPerPiece: 60, pieces: 3, stepPieces: 1, pieceName: "pancake" };
    expect(faults({ portion })).toMatchObject([
      { kind: "MassBalance", at: ["portion", "gramsPerPiece"], inGrams: 140, outGrams: 180 },
    ]);
    expect(faults({ portion: { grams: 70, stepGrams: 10 } })).toMatchObject([{ at: ["portion", "grams"] }]);
    expect(faults({ portion: { grams: 140, stepGrams: 10 } })).toEqual([]);
  });
  it("names every line that is wrong at once", () => {
    const odd = {
      bases: [{ base: "no-such-base", grams: 20 }],
      ingredients: [...pancake.ingredients, { food: "no-such-food", grams: 1, form: "MIXED_IN" as const }],
    };
    expect(faults(odd).map(({ kind, at }) => `${kind} ${at.join(".")}`)).toEqual([
      "UnknownFood ingredients.3.food",
      "UnknownBase bases.0.base",
    ]);
    expect(faults({ ingredients: [] })).toMatchObject([{ kind: "Empty", at: ["ingredients"] }]);
    const half = { gramsPerPiece: 60, pieces: 2, stepPieces: 1.5, pieceName: "pancake" };
    expect(faults({ portion: half })).toMatchObject([{ kind: "PiecesOffStep", at: ["portion", "pieces"] }]);
  });
  it("cannot hold negative or absurd amounts, nor pieces in a weighed portion", () => {
    const grams = (amount: number) => dishFields({ ingredients: [{ food: "egg", grams: amount, form: "MIXED_IN" }] });
    for (const amount of [-5, 0, 5001, Number.NaN]) expect(grams(amount)).toEqual(["ingredients.0.grams"]);
    expect(grams(30)).toEqual([]);
    expect(dishFields({ portion: { grams: 100, stepGrams: 10, pieces: 2 } })).toEqual(["portion.pieces"]);
    expect(dishFields({ portion: { pieces: 2 } })).toEqual([
      "portion.gramsPerPiece",
      "portion.stepPieces",
      "portion.pieceName",
    ]);
    expect(dishFields({ portion: {} })).toEqual(["portion.grams"]);
    expect(dishFields({ ingredients: [{ food: "egg", grams: 3, ml: 3, form: "MIXED_IN" }] })).toEqual([
      "ingredients.0",
    ]);
  });
});

describe("what is missing", () => {
  const lowSalt: RuleSetDocument = {
    format: "noonpail-rule-set/1",
    key: "low-salt",
    title: "Little salt",
    layer: "SCHOOL",
    coversFoodFromHome: true,
    language: "en",
    version: 1,
    inForceFrom: "2026-09-01",
    rules: [
      {
        id: "sodium",
        kind: "NUTRIENT",
        says: "At most 400 mg of sodium in an item.",
        level: "FORBID",
        source: "own rule of an invented school",
        shortWeek: "PRORATE",
        nutrient: "NA",
        per: "ITEM",
        as: "AMOUNT",
        atMost: 400,
      },
    ],
  };
  const about = (change: Partial<OwnFoodInput>, labels: Parameters<typeof whatIsMissing>[1] = []) => {
    const food = mixRow(change);
    return whatIsMissing([{ food, bought: food }], labels, [lowSalt]);
  };
  it("names the figure and the rule that cannot be judged without it", () => {
    const sodium = about({ nutrients: {} }).find((fact) => fact.kind === "NUTRIENT" && fact.nutrient === "NA");
    expect(sodium).toMatchObject({ foods: ["own-mix"], rules: [{ ruleSet: "Little salt", refuses: true }] });
    expect(about({}).some((fact) => fact.kind === "NUTRIENT" && fact.nutrient === "NA")).toBe(false);
  });
  it("says of a food without a label that nobody has read it, until somebody has", () => {
    const kinds = (facts: ReturnType<typeof about>) => facts.map(({ kind }) => kind);
    expect(kinds(about({ label: null }))).toContain("LABEL");
    const read = { food: "own-mix", contains: [], mayContain: [], readOn: "2026-09-01" };
    expect(kinds(about({ label: null }, [read]))).not.toContain("LABEL");
    expect(kinds(about({}))).toEqual(expect.arrayContaining(["HOLDING", "DENSITY"]));
    expect(kinds(about({ densityGramsPerMl: 0.6 }))).not.toContain("DENSITY");
  });
});
