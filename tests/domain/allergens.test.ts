import { describe, expect, it } from "@jest/globals";
import fc from "fast-check";
import {
  allergenCode,
  allergenGroupCode,
  dietCode,
  originCode,
  type AllergenCode,
  type AllergenGroupCode,
} from "../../shared/codes.js";
import type { AllergyBrief, LabelBrief } from "../../src/domain/brief.js";
import {
  dietAllows,
  expandAllergen,
  judgeAllergies,
  widenAllergy,
  type AllergyVerdict,
} from "../../src/domain/catalogue/allergens.js";
import { avoidedNames } from "../../src/domain/checker/check-safety.js";
import { isAvoided } from "../../src/domain/nutrition/given-food.js";
import { kindFamilies, mixtures } from "../../shared/food-kinds.js";
import { readCatalogue } from "./reference-rows.js";
import { deriveSample, dishOf, sampleDish, sampleFood } from "./sample-rows.js";

const avoids = (allergen: AllergenCode | AllergenGroupCode, avoid: AllergyBrief["avoid"] = "TRACES"): AllergyBrief => ({
  allergen,
  foodKind: null,
  avoid,
});
const avoidsKind = (foodKind: string, avoid: AllergyBrief["avoid"] = "TRACES"): AllergyBrief => ({
  allergen: null,
  foodKind,
  avoid,
});
const label = (food: string, contains: AllergenCode[] = [], mayContain: AllergenCode[] = []): LabelBrief => ({
  food,
  contains,
  mayContain,
  readOn: "2026-09-01",
});

const shipped = readCatalogue().foods;

/** From harmless to worst, for "never allows more". */
const severity: Record<AllergyVerdict["kind"], number> = {
  CLEAR: 0,
  CLEAR_IF_LABEL_READ: 1,
  MAY_CONTAIN: 2,
  CONTAINS: 3,
};

describe("families of allergens", () => {
  // Outside: Regulation (EU) No 1169/2011 Annex II item 8 names 8 nuts; Health Canada names 9, pine nut among them (AL-6, AL-2).
  it("count the nuts the lists count", () => {
    const nuts = expandAllergen("TREE_NUTS");
    expect(nuts).toHaveLength(9);
    expect(nuts).toContain("PINE_NUT");
    expect(nuts.filter((nut) => nut !== "PINE_NUT")).toHaveLength(8);
  });
  it("stand for their members and a single name for itself", () => {
    expect(expandAllergen("MILK")).toEqual(["MILK"]);
    expect(expandAllergen("SHELLFISH")).toEqual(["CRUSTACEAN", "MOLLUSC"]);
    for (const group of allergenGroupCode.options)
      for (const name of expandAllergen(group)) expect(allergenCode.options).toContain(name);
  });
});

describe("a child's allergies", () => {
  // Outside: FDA allergen guidance of January 2025: coconut is no tree nut; a child's own list may name it (AL-1).
  it("keep coconut from the child who names coconut, not from the child who avoids tree nuts", () => {
    const yoghurt = dishOf([sampleFood("coconut-yoghurt", { allergens: ["COCONUT"] })]);
    expect(judgeAllergies([avoids("TREE_NUTS")], yoghurt, [])).toEqual({ kind: "CLEAR" });
    expect(judgeAllergies([avoids("COCONUT")], yoghurt, [])).toEqual({
      kind: "CONTAINS",
      allergen: "COCONUT",
      food: "coconut-yoghurt",
    });
  });

  // Outside: US and Canada count pine nut as a tree nut, the EU does not; a family is read at its widest (AL-2).
  it("keep pesto with pine nuts from the child who avoids tree nuts", () => {
    const pesto = dishOf([sampleFood("pesto", { allergens: ["PINE_NUT", "MILK"] })]);
    expect(judgeAllergies([avoids("TREE_NUTS")], pesto, []).kind).toBe("CONTAINS");
  });

  // Outside: FDA guidance of January 2025: milk means goat and sheep too (AL-5); shipped row of soft goat cheese.
  it("keep goat cheese from the child who avoids milk", () => {
    const goat = shipped.find(({ key }) => key === "goat-cheese-soft");
    if (goat === undefined) throw new Error("no goat cheese in the catalogue");
    expect(judgeAllergies([avoids("MILK")], dishOf([goat]), [])).toEqual({
      kind: "CONTAINS",
      allergen: "MILK",
      food: "goat-cheese-soft",
    });
  });

  // Outside: Regulation (EU) No 1169/2011 Annex II item 12: sulphites above 10 mg/kg are declared (AL-4); shipped row of dried apricots.
  it("keep dried apricots from the child who avoids sulphites", () => {
    const apricots = shipped.find(({ key }) => key === "apricots-dried");
    if (apricots === undefined) throw new Error("no dried apricots in the catalogue");
    expect(judgeAllergies([avoids("SULPHITES", "INGREDIENTS")], dishOf([apricots]), []).kind).toBe("CONTAINS");
  });

  // Outside: EU list counts barley among gluten cereals; US list names wheat alone (AL-7).
  it("keep barley malt from the child who avoids gluten cereals, not from the child who avoids wheat", () => {
    const malt = dishOf([sampleFood("barley-malt", { allergens: ["BARLEY"] })]);
    expect(judgeAllergies([avoids("GLUTEN_CEREALS")], malt, []).kind).toBe("CONTAINS");
    expect(judgeAllergies([avoids("WHEAT")], malt, []).kind).toBe("CLEAR");
  });

  // Outside: EU and Canada list molluscs; US law names crustacean shellfish only (AL-8).
  it("keep mussels from the child who avoids molluscs or shellfish, not from the child who avoids crustaceans", () => {
    const paella = dishOf([sampleFood("mussels", { allergens: ["MOLLUSC"] })]);
    expect(judgeAllergies([avoids("MOLLUSC")], paella, []).kind).toBe("CONTAINS");
    expect(judgeAllergies([avoids("SHELLFISH")], paella, []).kind).toBe("CONTAINS");
    expect(judgeAllergies([avoids("CRUSTACEAN")], paella, []).kind).toBe("CLEAR");
  });

  // Outside: Regulation (EU) No 1169/2011 Annex II item 6(a): fully refined soya oil is exempt, other soya oil is not (AL-3).
  it("follow the food row: refined soya oil carries none, cold-pressed oil carries soya", () => {
    const refined = dishOf([sampleFood("soya-oil-refined", { kind: "soya-oil" })]);
    const pressed = dishOf([sampleFood("soya-oil-pressed", { kind: "soya-oil", allergens: ["SOYA"] })]);
    expect(judgeAllergies([avoids("SOYA")], refined, []).kind).toBe("CLEAR");
    expect(judgeAllergies([avoids("SOYA")], pressed, []).kind).toBe("CONTAINS");
    expect(judgeAllergies([avoidsKind("soya-oil")], refined, []).kind).toBe("CONTAINS");
  });

  it("are never taken to allow everything when one of them names nothing", () => {
    const empty: AllergyBrief = { allergen: null, foodKind: null, avoid: "TRACES" };
    expect(() => judgeAllergies([empty], dishOf([sampleFood("apple")]), [])).toThrow(RangeError);
  });

  it("name a single food no list knows", () => {
    const salad = dishOf([sampleFood("kiwi-raw", { kind: "kiwi" }), sampleFood("apple-raw", { kind: "apple" })]);
    expect(judgeAllergies([avoidsKind("kiwi")], salad, [])).toEqual({
      kind: "CONTAINS",
      allergen: "kiwi",
      food: "kiwi-raw",
    });
    expect(judgeAllergies([avoidsKind("pear")], salad, [])).toEqual({ kind: "CLEAR" });
  });
});

describe("an allergy to a single food", () => {
  const row = (key: string) => {
    const food = shipped.find((one) => one.key === key);
    if (food === undefined) throw new Error(`no ${key} in the catalogue`);
    return food;
  };
  const madeOf = (key: string) =>
    deriveSample(sampleDish("made", { ingredients: [{ food: key, grams: 100, form: "MIXED_IN" }] }), shipped);
  const shutOut = (kind: string, key: string): boolean =>
    judgeAllergies([avoidsKind(kind, "INGREDIENTS")], madeOf(key), []).kind === "CONTAINS";

  it("to one form of soya shuts out every form of it, and what has soya in it", () => {
    for (const kind of ["soya", "soya-bean"])
      for (const key of [
        "tofu-firm",
        "edamame-boiled",
        "soya-drink-unsweetened",
        "miso",
        "tamari",
        "chocolate-dark-sweet",
      ])
        expect([kind, key, shutOut(kind, key)]).toEqual([kind, key, true]);
  });

  it.each([
    ["maize", "sweetcorn-boiled"],
    ["sweetcorn", "polenta-dry"],
    ["wheat", "soba-cooked"],
    ["wheat", "bread-rye"],
    ["hen-egg", "egg-noodles-cooked"],
    ["cow-milk", "feta"],
    ["cow-milk", "naan"],
    ["sesame", "hummus"],
    ["chickpea", "hummus"],
    ["chickpea", "chickpea-flour"],
    ["pea", "peas-carrots-boiled"],
    ["carrot", "vegetables-mixed-boiled"],
    ["maize", "vegetables-mixed-boiled"],
    ["kidney-bean", "white-beans-boiled"],
    ["peach", "nectarine-raw"],
    ["paprika", "bell-pepper-red-raw"],
    ["rice", "rice-noodles-cooked"],
    ["oat", "oat-flour"],
    ["kiwi", "kiwi-gold-raw"],
    ["mustard", "mustard-prepared"],
    ["coconut", "coconut-milk-tinned"],
    ["lentil", "lentils-red-dry"],
    ["potato", "potato-boiled"],
  ])("%s shuts out %s", (kind, key) => {
    expect(shutOut(kind, key)).toBe(true);
    expect(isAvoided(row(key), [{ allergen: null, foodKind: kind }])).toBe(true);
  });

  it("leaves what is another plant or animal: lentils beside chickpeas, carrots beside peas, tuna beside cod", () => {
    for (const [kind, key] of [
      ["chickpea", "lentils-boiled"],
      ["pea", "carrot-boiled"],
      ["cod", "tuna-tinned"],
      ["potato", "sweet-potato-boiled"],
      ["buckwheat", "bread-white"],
      ["almond", "hazelnuts"],
    ] as const)
      expect([kind, key, shutOut(kind, key)]).toEqual([kind, key, false]);
  });

  it("is shut out by a label that names the allergen, and is unread on one that was not searched for it", () => {
    const bread = dishOf([sampleFood("bread", { kind: "bread", packaged: true })]);
    expect(judgeAllergies([avoidsKind("soya-bean")], bread, [label("bread", ["SOYA"])])).toEqual({
      kind: "CONTAINS",
      allergen: "soya-bean",
      food: "bread",
    });
    expect(judgeAllergies([avoidsKind("soya-bean")], bread, [label("bread", [], ["SOYA"])]).kind).toBe("MAY_CONTAIN");
    const other = { ...label("bread"), kinds: [{ kind: "soya", says: "CLEAR" as const }] };
    expect(judgeAllergies([avoidsKind("soya-bean")], bread, [other]).kind).toBe("CLEAR_IF_LABEL_READ");
    const found = { ...label("bread"), kinds: [{ kind: "soya", says: "CONTAINS" as const }] };
    expect(judgeAllergies([avoidsKind("soya-bean")], bread, [found]).kind).toBe("CONTAINS");
  });

  it("means the same to planner and independent checker, for every kind there is", () => {
    const kinds = new Set([...shipped.map(({ kind }) => kind), ...Object.keys(mixtures), "no-such-kind"]);
    for (const foodKind of kinds) {
      const allergy = avoidsKind(foodKind);
      const { allergens, kinds: widened } = widenAllergy(allergy);
      const checker = avoidedNames(allergy);
      expect([foodKind, [...allergens].sort(), [...widened].sort()]).toEqual([
        foodKind,
        [...new Set(checker.codes)].sort(),
        [...new Set(checker.kinds)].sort(),
      ]);
      expect([foodKind, widened.has(foodKind)]).toEqual([foodKind, true]);
    }
  });

  it("finds its food under every name: whichever kind of a family is recorded, the others are meant", () => {
    for (const { kinds } of kindFamilies)
      for (const one of kinds)
        for (const other of kinds)
          expect([one, other, widenAllergy(avoidsKind(one)).kinds.has(other)]).toEqual([one, other, true]);
  });

  // A kind that is forgotten in the table fails here: all its rows have an allergen of one plant or animal, and it is not of that family.
  it("knows the allergen of every kind whose foods all have it, and every kind it names", () => {
    const manyAnimals: readonly AllergenCode[] = ["FISH", "CRUSTACEAN", "MOLLUSC", "SULPHITES"];
    const kinds = [...new Set(shipped.map(({ kind }) => kind))];
    const forgotten = kinds.flatMap((kind) => {
      const rows = shipped.filter((food) => food.kind === kind);
      return allergenCode.options
        .filter((code) => !manyAnimals.includes(code) && rows.every(({ allergens }) => allergens.includes(code)))
        .filter((code) => !widenAllergy(avoidsKind(kind)).allergens.has(code))
        .map((code) => `${kind} without ${code}`);
    });
    expect(forgotten).toEqual([]);
    const named = [
      ...kindFamilies.flatMap((family) => family.kinds),
      ...Object.values(mixtures).flatMap(({ of }) => of),
    ];
    expect(named.filter((kind) => !kinds.includes(kind))).toEqual([]);
    for (const { why } of kindFamilies) expect(why.length).toBeGreaterThan(10);
  });

  it("does not make one food of tofu and edamame for a child who only dislikes one of them", () => {
    expect(row("tofu-firm").kind).not.toBe(row("edamame-boiled").kind);
    expect(row("sweetcorn-boiled").kind).not.toBe(row("polenta-dry").kind);
  });
});

describe("labels", () => {
  const bread = sampleFood("bread", { allergens: ["WHEAT"], packaged: true });
  const dish = dishOf([bread, sampleFood("apple")]);

  it("that are not on record have to be read before packing", () => {
    expect(judgeAllergies([avoids("SESAME")], dish, [])).toEqual({ kind: "CLEAR_IF_LABEL_READ", foods: ["bread"] });
    expect(judgeAllergies([avoids("SESAME", "INGREDIENTS")], dish, [])).toEqual({
      kind: "CLEAR_IF_LABEL_READ",
      foods: ["bread"],
    });
    expect(judgeAllergies([avoids("SESAME")], dish, [label("cheese")]).kind).toBe("CLEAR_IF_LABEL_READ");
  });
  it("on record and clear settle it", () => {
    expect(judgeAllergies([avoids("SESAME")], dish, [label("bread", ["WHEAT"])])).toEqual({ kind: "CLEAR" });
  });
  it("that say contains shut the food out for everyone who avoids it", () => {
    for (const avoid of ["TRACES", "INGREDIENTS"] as const) {
      expect(judgeAllergies([avoids("SESAME", avoid)], dish, [label("bread", ["WHEAT", "SESAME"])])).toEqual({
        kind: "CONTAINS",
        allergen: "SESAME",
        food: "bread",
      });
    }
  });
  it("that say may contain shut the food out only for the child who avoids traces", () => {
    const labels = [label("bread", ["WHEAT"], ["SESAME", "HAZELNUT"])];
    expect(judgeAllergies([avoids("TREE_NUTS")], dish, labels)).toEqual({
      kind: "MAY_CONTAIN",
      allergen: "TREE_NUTS",
      food: "bread",
    });
    expect(judgeAllergies([avoids("TREE_NUTS", "INGREDIENTS")], dish, labels)).toEqual({ kind: "CLEAR" });
  });
  it("of two products of one food: the worse one stands", () => {
    expect(judgeAllergies([avoids("SESAME")], dish, [label("bread"), label("bread", [], ["SESAME"])]).kind).toBe(
      "MAY_CONTAIN",
    );
  });
  it("that do not speak of a single food have to be read for it", () => {
    const read = { ...label("bread", ["WHEAT"]), kinds: [{ kind: "kiwi", says: "CLEAR" as const }] };
    expect(judgeAllergies([avoidsKind("kiwi")], dish, [label("bread", ["WHEAT"])]).kind).toBe("CLEAR_IF_LABEL_READ");
    expect(judgeAllergies([avoidsKind("kiwi")], dish, [read]).kind).toBe("CLEAR");
    const found = { ...read, kinds: [{ kind: "kiwi", says: "CONTAINS" as const }] };
    expect(judgeAllergies([avoidsKind("kiwi")], dish, [found]).kind).toBe("CONTAINS");
  });
  it("of dry pulses speak for the cooked ones made of them", () => {
    const dry = sampleFood("lentils-dry", { kind: "lentil", packaged: true, allergens: ["LUPIN"] });
    const cooked = sampleFood("lentils-cooked", {
      kind: "lentil-cooked",
      boughtAs: { food: "lentils-dry", gramsPerGram: 0.4 },
    });
    const made = sampleDish("lentils", { ingredients: [{ food: "lentils-cooked", grams: 100, form: "MIXED_IN" }] });
    const lentils = deriveSample(made, [cooked, dry]);
    expect(lentils.allergens).toEqual(["LUPIN"]);
    expect(lentils.packagedFoods).toEqual(["lentils-dry"]);
    expect(judgeAllergies([avoids("LUPIN")], lentils, []).kind).toBe("CONTAINS");
    expect(judgeAllergies([avoidsKind("lentil")], lentils, []).kind).toBe("CONTAINS");
    expect(judgeAllergies([avoids("WHEAT")], lentils, [])).toEqual({
      kind: "CLEAR_IF_LABEL_READ",
      foods: ["lentils-dry"],
    });
    expect(judgeAllergies([avoids("WHEAT")], lentils, [label("lentils-dry")])).toEqual({ kind: "CLEAR" });
    expect(judgeAllergies([avoids("WHEAT")], lentils, [label("lentils-dry", [], ["WHEAT"])]).kind).toBe("MAY_CONTAIN");
  });
  it("do not matter to a child without allergies", () => {
    expect(judgeAllergies([], dish, [label("bread", ["SESAME"])])).toEqual({ kind: "CLEAR" });
  });
});

describe("a stricter list", () => {
  const code = fc.constantFrom(...allergenCode.options);
  const codes = fc.uniqueArray(code, { maxLength: 3 });
  const foods = fc.array(fc.record({ allergens: codes, packaged: fc.boolean() }), { minLength: 1, maxLength: 4 });
  const someLabels = fc.array(fc.record({ food: fc.integer({ min: 0, max: 3 }), contains: codes, mayContain: codes }), {
    maxLength: 3,
  });
  const names = fc.uniqueArray(fc.constantFrom(...allergenCode.options, ...allergenGroupCode.options), {
    minLength: 1,
    maxLength: 3,
  });
  const judge = (
    allergies: AllergyBrief[],
    rows: { allergens: AllergenCode[]; packaged: boolean }[],
    labels: LabelBrief[],
  ): number =>
    severity[judgeAllergies(allergies, dishOf(rows.map((row, i) => sampleFood(`food-${i}`, row))), labels).kind];

  it("never allows more: traces instead of ingredients, one more allergy, one more ingredient, one more label", () => {
    fc.assert(
      fc.property(foods, someLabels, names, code, (rows, labelled, list, extra) => {
        const labels = labelled.map(({ food, contains, mayContain }) => label(`food-${food}`, contains, mayContain));
        const loose = list.map((name) => avoids(name, "INGREDIENTS"));
        const strict = list.map((name) => avoids(name, "TRACES"));
        expect(judge(strict, rows, labels)).toBeGreaterThanOrEqual(judge(loose, rows, labels));
        expect(judge([...strict, avoids(extra)], rows, labels)).toBeGreaterThanOrEqual(judge(strict, rows, labels));
        expect(judge(strict, [...rows, { allergens: [extra], packaged: false }], labels)).toBeGreaterThanOrEqual(
          judge(strict, rows, labels),
        );
        const labelledFood = labels[0];
        if (labelledFood !== undefined) {
          expect(judge(strict, rows, [...labels, label(labelledFood.food, [extra])])).toBeGreaterThanOrEqual(
            judge(strict, rows, labels),
          );
        }
      }),
    );
  });

  it("by family never allows what a member of it shuts out", () => {
    fc.assert(
      fc.property(foods, fc.constantFrom(...allergenGroupCode.options), (rows, group) => {
        const byFamily = judge([avoids(group)], rows, []);
        for (const member of expandAllergen(group))
          expect(byFamily).toBeGreaterThanOrEqual(judge([avoids(member)], rows, []));
      }),
    );
  });
});

describe("diets", () => {
  // Common practice: what the diets are taken to mean.
  it("allow and shut out by origin", () => {
    expect(dietAllows([], ["PORK", "ALCOHOL"])).toBe(true);
    expect(dietAllows(["VEGETARIAN"], ["PLANT", "EGG", "DAIRY", "HONEY"])).toBe(true);
    expect(dietAllows(["VEGETARIAN"], ["PLANT", "GELATINE"])).toBe(false);
    expect(dietAllows(["VEGETARIAN"], ["FISH"])).toBe(false);
    expect(dietAllows(["VEGAN"], ["PLANT", "HONEY"])).toBe(false);
    expect(dietAllows(["PESCATARIAN"], ["FISH", "SEAFOOD", "DAIRY"])).toBe(true);
    expect(dietAllows(["PESCATARIAN"], ["POULTRY"])).toBe(false);
    expect(dietAllows(["HALAL"], ["MEAT", "BEEF", "POULTRY"])).toBe(true);
    expect(dietAllows(["HALAL"], ["GELATINE"])).toBe(false);
    expect(dietAllows(["HALAL"], ["ALCOHOL"])).toBe(false);
    expect(dietAllows(["NO_PORK"], ["MEAT", "PORK"])).toBe(false);
    expect(dietAllows(["NO_BEEF"], ["MEAT", "BEEF"])).toBe(false);
    expect(dietAllows(["NO_BEEF"], ["POULTRY"])).toBe(true);
  });
  it("together allow no more than each alone, and vegan no more than vegetarian", () => {
    const diets = fc.uniqueArray(fc.constantFrom(...dietCode.options));
    const origins = fc.uniqueArray(fc.constantFrom(...originCode.options), { minLength: 1 });
    fc.assert(
      fc.property(diets, origins, (both, of) => {
        expect(dietAllows(both, of)).toBe(both.every((diet) => dietAllows([diet], of)));
        if (dietAllows(["VEGAN"], of)) expect(dietAllows(["VEGETARIAN", "PESCATARIAN"], of)).toBe(true);
      }),
    );
  });
});
