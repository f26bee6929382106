/** The shipped foods one by one: what each row has to hold, and allergens and subgroups that are common knowledge or law. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "@jest/globals";
import type { AllergenCode, FoodGroup } from "../../shared/codes.js";
import { climateRegion } from "../../shared/codes.js";
import { foodChecks } from "../../src/cli/food-checks/foods.js";
import { checkSugars } from "../../src/domain/catalogue/sugars.js";
import { readCatalogue } from "./reference-rows.js";

const { foods } = readCatalogue();
const byKey = new Map(foods.map((food) => [food.key, food]));
const readme = readFileSync(new URL("../../seeds/README.md", import.meta.url), "utf8");
const keysOf = (rows: readonly { readonly key: string }[]) => rows.map(({ key }) => key).sort();

/**
 * Foods that always contain a substance of Annex II of Regulation (EU) No 1169/2011, by its codes; nuts, cereals, peanut and
 * the rest by the species that the annex names. Coconut and pine nut are not on it and are our own caution.
 */
const always: Readonly<Partial<Record<AllergenCode, string>>> = {
  WHEAT:
    "wheat-flour-white wheat-flour-wholemeal wheat-flour-bread semolina couscous-dry bulgur-dry bread-white pasta-dry soy-sauce-less-salt filo-pastry matzo tortilla-wheat",
  RYE: "rye-flour bread-rye crispbread-rye",
  BARLEY: "barley-pearled-raw barley-pearled-cooked",
  OATS: "rolled-oats oat-flour",
  CRUSTACEAN: "prawns-raw prawns-cooked",
  EGG: "egg-raw egg-boiled mayonnaise egg-noodles-dry",
  FISH: "cod-raw salmon-cooked mackerel-cooked tuna-tinned sardines-tinned fish-sauce",
  PEANUT: "peanuts-raw peanut-butter peanut-oil",
  SOYA: "tofu-firm tofu-soft tempeh edamame-boiled soya-drink-unsweetened soya-beans-dry miso tamari soy-sauce-less-salt",
  MILK: "milk-whole buttermilk butter ghee cheddar feta parmesan yoghurt-plain-whole cream-whipping goat-milk goat-cheese-soft",
  ALMOND: "almonds almond-butter",
  HAZELNUT: "hazelnuts",
  WALNUT: "walnuts",
  CASHEW: "cashews",
  PECAN: "pecans",
  BRAZIL_NUT: "brazil-nuts",
  PISTACHIO: "pistachios",
  MACADAMIA: "macadamias",
  CELERY: "celery-raw celeriac-raw",
  MUSTARD: "mustard-prepared mustard-seed-ground",
  SESAME: "sesame-seeds tahini sesame-oil hummus",
  LUPIN: "lupins-boiled",
  MOLLUSC: "mussels-cooked",
};

/**
 * Vegetables in the subgroups of US 7 CFR 210.10(c)(2)(iii), by the examples it and its lists name. Avocado, and green peppers
 * and beans in the pod, are among the others there.
 */
const subgroupOf: Readonly<Partial<Record<FoodGroup, string>>> = {
  VEGETABLE_DARK_GREEN:
    "broccoli-raw spinach-raw kale-raw pak-choi-raw lettuce-romaine-raw collards-raw watercress-raw",
  VEGETABLE_RED_ORANGE:
    "carrot-raw tomato-raw sweet-potato-raw pumpkin-raw butternut-squash-raw bell-pepper-red-raw tomato-passata",
  VEGETABLE_STARCHY:
    "potato-raw potato-boiled sweetcorn-frozen peas-frozen cassava-raw plantain-raw water-chestnuts-tinned",
  VEGETABLE_OTHER:
    "cucumber-raw cauliflower-raw onion-raw mushroom-raw courgette-raw celery-raw avocado-raw bell-pepper-green-raw green-beans-raw beetroot-raw lettuce-iceberg-raw",
  PULSE: "chickpeas-boiled lentils-boiled kidney-beans-boiled black-beans-boiled split-peas-dry black-eyed-peas-boiled",
};

describe("the shipped foods", () => {
  it("are at least 280, each once and each with its number in the composition table", () => {
    expect(foods.length).toBeGreaterThanOrEqual(280);
    expect(byKey.size).toBe(foods.length);
    expect(keysOf(foods.filter(({ ndb }) => ndb === null))).toEqual([]);
  });

  it("have water, protein, fat and carbohydrate that make 95 to 105 g, but for those the report names with a reason", () => {
    const mass = foodChecks({ foods }).find(({ id }) => id === "FD-mass");
    expect(mass?.found).toBe("");
    // A row that loses its water is named.
    const dried = foods.map((food) =>
      food.key === "carrot-raw" ? { ...food, nutrients: { ...food.nutrients, WATER: 8 } } : food,
    );
    expect(foodChecks({ foods: dried }).find(({ id }) => id === "FD-mass")?.found).toBe("carrot-raw");
  });

  it("have the free and added sugars of their stated rule, and never more added than free", () => {
    expect(foods.filter((food) => !checkSugars(food).ok).map(({ key }) => key)).toEqual([]);
    expect(keysOf(foods.filter((food) => food.addedSugarGrams > food.freeSugarGrams))).toEqual([]);
    // WHO 2015: honey and juice are free sugars, whole fruit and milk are not.
    expect(byKey.get("honey")).toMatchObject({ sugarRule: "ALL_FREE", freeSugarGrams: 82.12 });
    expect(byKey.get("orange-juice")).toMatchObject({ sugarRule: "JUICE", addedSugarGrams: 0 });
    expect(byKey.get("orange-juice")?.freeSugarGrams).toBe(byKey.get("orange-juice")?.nutrients.SUGAR);
    expect(byKey.get("apple-raw")).toMatchObject({ sugarRule: "INTACT", freeSugarGrams: 0 });
    expect(byKey.get("milk-whole")).toMatchObject({ sugarRule: "MILK_SUGAR", freeSugarGrams: 0 });
  });

  it("refuse a food whose sugars are not those of its rule", () => {
    expect(checkSugars({ ...byKey.get("honey")!, freeSugarGrams: 0 })).toMatchObject({
      ok: false,
      error: { kind: "SugarsOffRule" },
    });
  });

  it("have seasons of real months in known regions, one entry a region, for fresh produce only and with a source", () => {
    const seasonal = foods.filter(({ seasons }) => seasons.length > 0);
    expect(seasonal.length).toBeGreaterThanOrEqual(60);
    for (const { key, group, seasons } of seasonal) {
      expect([key, /^(VEGETABLE|FRUIT|HERB|PULSE|NUT)/.test(group)]).toEqual([key, true]);
      expect([key, new Set(seasons.map(({ region }) => region)).size]).toEqual([key, seasons.length]);
      for (const { region, months, source } of seasons) {
        expect(climateRegion.options).toContain(region);
        expect([key, months.every((month) => Number.isInteger(month) && month >= 1 && month <= 12)]).toEqual([
          key,
          true,
        ]);
        expect([key, source.length > 5]).toEqual([key, true]);
      }
    }
  });

  it("have a water activity of 0 to 1 and a pH of 0 to 14, each with its source", () => {
    const figures = (of: "waterActivity" | "ph") =>
      foods.flatMap((food) => (food[of] ? [{ key: food.key, ...food[of] }] : []));
    expect(keysOf(figures("waterActivity").filter(({ value }) => value <= 0 || value > 1))).toEqual([]);
    expect(keysOf(figures("ph").filter(({ value }) => value < 0 || value > 14))).toEqual([]);
    for (const { key, source } of [...figures("waterActivity"), ...figures("ph")])
      expect([key, source.length > 20]).toEqual([key, true]);
  });

  // US Food Code 1-201.10, time/temperature control: cooked plant food, cut melon, cut leafy greens and cooked meat need it.
  it("claim no water activity of 0.92 or less for what is more than half water, and no pH of 4.6 or less for meat or starch", () => {
    const wet = foods.filter(
      ({ nutrients, waterActivity }) => (nutrients.WATER ?? 0) > 50 && (waterActivity?.value ?? 1) <= 0.92,
    );
    expect(keysOf(wet)).toEqual([]);
    const groups: readonly FoodGroup[] = ["MEAT", "POULTRY", "FISH", "OILY_FISH", "SEAFOOD", "EGG", "GRAIN", "PULSE"];
    const sour = foods.filter(({ group, ph }) => groups.includes(group) && (ph?.value ?? 14) <= 4.6);
    expect(keysOf(sour)).toEqual([]);
    for (const key of [
      "rice-white-cooked",
      "chicken-breast-cooked",
      "egg-boiled",
      "potato-boiled",
      "melon-cantaloupe-raw",
    ]) {
      const { waterActivity = null, ph = null } = byKey.get(key)!;
      expect([key, (waterActivity?.value ?? 1) <= 0.92 || (ph?.value ?? 14) <= 4.6]).toEqual([key, false]);
    }
  });

  // No figure was read for this much water; the group's name says "dried fruits" and means drier ones.
  it("claim no water activity for moist dried fruit, a quarter water or more, that would free it from cold", () => {
    const moist = foods.filter(({ group, nutrients }) => group === "DRIED_FRUIT" && (nutrients.WATER ?? 100) >= 25);
    expect(keysOf(moist)).toEqual([
      "apple-dried",
      "apricots-dried",
      "figs-dried",
      "peaches-dried",
      "pears-dried",
      "prunes",
    ]);
    expect(keysOf(moist.filter(({ waterActivity }) => (waterActivity?.value ?? 1) <= 0.92))).toEqual([]);
  });

  // USDA Standard Reference, Release 26: "enriched" and "with added vitamins" beside rows of the same food without.
  it("are the rows without added vitamins and iron wherever the table has one", () => {
    const plain = {
      "rice-white-raw": "20444",
      "rice-white-cooked": "20445",
      "rice-short-raw": "20452",
      "rice-short-cooked": "20453",
      "maize-flour-masa": "20019",
      "tortilla-maize": "18363",
      "pita-white": "18413",
      pretzels: "19812",
      "wheat-flour-white": "20481",
      "wheat-flour-bread": "20129",
      semolina: "20466",
      "pasta-dry": "20499",
      "pasta-cooked": "20400",
      "egg-noodles-dry": "20409",
      "egg-noodles-cooked": "20410",
      "polenta-dry": "20422",
      "bagel-plain": "18408",
      "muffin-english": "18438",
      "milk-whole": "01211",
      "milk-reduced-fat": "01174",
      "milk-skimmed": "01151",
    };
    expect(Object.fromEntries(Object.keys(plain).map((key) => [key, byKey.get(key)?.ndb]))).toEqual(plain);
    expect(byKey.get("rice-white-cooked")?.nutrients).toMatchObject({ FE: 0.2, FOLDFE: 3 });
    expect(byKey.get("milk-whole")?.nutrients).toMatchObject({ VITD: 0.1, CA: 113 });
  });

  // Folate over 100 ug per 100 g is added: the table's flours without it have 26 to 83. The README of the seeds names these.
  it("have the folate of enriched flour or meal only where the table has no other row", () => {
    const enriched = foods.filter(
      ({ kind, group, nutrients }) =>
        ["wheat", "rye", "maize", "rice"].includes(kind) &&
        ["GRAIN", "WHOLE_GRAIN", "BREAD", "SAVOURY_SNACK", "CONFECTIONERY"].includes(group) &&
        (nutrients.FOLDFE ?? 0) > 100,
    );
    expect(keysOf(enriched)).toEqual([
      "baguette",
      "biscuits-shortbread",
      "bread-rye",
      "bread-white",
      "breadcrumbs-dry",
      "breadsticks",
      "crackers-plain",
      "filo-pastry",
      "taco-shells",
      "tortilla-wheat",
      "wonton-wrappers",
    ]);
    for (const { key } of enriched) expect([key, readme.includes(`\`${key}\``)]).toEqual([key, true]);
  });

  it("name what Annex II of Regulation (EU) No 1169/2011 names in the foods that always have it", () => {
    const without = Object.entries(always).flatMap(([code, keys]) =>
      keys
        .split(" ")
        .filter((key) => !byKey.get(key)?.allergens.includes(code as AllergenCode))
        .map((key) => `${key} without ${code}`),
    );
    expect(without).toEqual([]);
  });

  it("claim no allergen for plain rice, oil-free produce and pulses that have none", () => {
    for (const key of [
      "rice-white-raw",
      "potato-raw",
      "carrot-raw",
      "apple-raw",
      "chickpeas-dry",
      "quinoa-raw",
      "maize-flour-masa",
    ])
      expect([key, byKey.get(key)?.allergens]).toEqual([key, []]);
  });

  it("count vegetables in the school-meal subgroup of US 7 CFR 210.10", () => {
    const off = Object.entries(subgroupOf).flatMap(([group, keys]) =>
      keys
        .split(" ")
        .filter((key) => byKey.get(key)?.group !== group)
        .map((key) => `${key} is ${byKey.get(key)?.group ?? "missing"}, not ${group}`),
    );
    expect(off).toEqual([]);
  });
});
