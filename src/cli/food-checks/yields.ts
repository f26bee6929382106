/** Yields, edible shares and retention against what USDA published: the check values of yields and portions, and cooked rows. */
import type { Base, Catalogue, Dish, Food } from "../../../shared/catalogue.js";
import { nutrientTag, type NutrientTag } from "../../../shared/codes.js";
import { asBought, checkCatalogue, indexCatalogue, type DerivedDish } from "../../domain/catalogue/derive.js";
import type { OutsideCheck } from "./check.js";

const standardReference = "USDA National Nutrient Database for Standard Reference, Release 28";
/** The catalogue's rows, raw and cooked. */
const release26 = "USDA National Nutrient Database for Standard Reference, Release 26";
const release6 = "USDA Table of Nutrient Retention Factors, Release 6 (2007)";

/** Cooked over raw grams as weighed for the household portions of the Standard Reference: same number, both weights. */
const weighed: Readonly<Record<string, { readonly rawGrams: number; readonly cookedGrams: number }>> = {
  "beef-mince-cooked": { rawGrams: 226.8, cookedGrams: 154 },
  "turkey-mince-cooked": { rawGrams: 453.6, cookedGrams: 330 },
  "lamb-mince-cooked": { rawGrams: 453.6, cookedGrams: 313 },
  "couscous-cooked": { rawGrams: 28.3, cookedGrams: 86 },
};

/** Refuse in percent of what is bought, by number. */
const refuse: Readonly<Record<string, number>> = {
  "09040": 36,
  "09003": 10,
  "09200": 27,
  "09176": 29,
  "09266": 49,
  "09181": 49,
  "09326": 48,
  "09132": 4,
  "09316": 6,
  "09050": 5,
  "09037": 26,
  "11124": 11,
  "11090": 39,
  "11457": 28,
  "11251": 6,
  "11205": 3,
  "11529": 9,
  "11821": 18,
  "11143": 11,
  "11109": 20,
  "01129": 12,
};

/**
 * The retention row nearest to how the table's row was cooked: vegetables boiled under water and drained, leafy greens, peeled
 * potatoes, pulses. Beans boil longer than 75 minutes; the rows for that were not read. What is not named here has no
 * row that was read, and only what cooking leaves whole is compared.
 */
const cookedBy: Readonly<Record<string, string>> = {
  ...codes("3775", [
    "carrot-boiled",
    "broccoli-boiled",
    "peas-boiled",
    "green-beans-boiled",
    "cauliflower-boiled",
    "cabbage-boiled",
    "sweetcorn-boiled",
    "courgette-boiled",
    "aubergine-boiled",
    "okra-boiled",
    "pumpkin-boiled",
    "brussels-sprouts-boiled",
    "bell-pepper-red-boiled",
    "beetroot-boiled",
    "parsnip-boiled",
    "swede-boiled",
    "turnip-boiled",
    "yam-boiled",
    "sweet-potato-boiled",
  ]),
  ...codes("3005", ["spinach-boiled", "kale-boiled", "pak-choi-boiled"]),
  ...codes("3308", ["potato-boiled"]),
  ...codes("0501", ["lentils-boiled"]),
  ...codes("0521", [
    "chickpeas-boiled",
    "black-beans-boiled",
    "kidney-beans-boiled",
    "white-beans-boiled",
    "pinto-beans-boiled",
    "haricot-beans-boiled",
    "butter-beans-boiled",
    "adzuki-beans-boiled",
    "broad-beans-boiled",
    "mung-beans-boiled",
    "urad-boiled",
    "split-peas-boiled",
    "black-eyed-peas-boiled",
    "pigeon-peas-boiled",
  ]),
  ...codes("0105", ["egg-boiled"]),
};

function codes(code: string, keys: readonly string[]): Record<string, string> {
  return Object.fromEntries(keys.map((key) => [key, code]));
}

/** Compared when a row says how it is cooked; without one, those of the first line. Our choice of difference that counts as none, per 100 g. */
const allowance: Partial<Readonly<Record<NutrientTag, number>>> = {
  ENERC_KCAL: 10,
  PROCNT: 0.5,
  CHOCDF: 1.5,
  FIBTG: 1,
  CA: 5,
  FE: 0.2,
  MG: 4,
  P: 10,
  K: 30,
  ZN: 0.1,
  VITA_RAE: 5,
  VITC: 2,
  FOLDFE: 5,
  VITB12: 0.1,
};
const leftWhole: readonly NutrientTag[] = ["ENERC_KCAL", "PROCNT", "CHOCDF", "FIBTG"];
/** Raw and cooked rows of the table are other plants from other fields: a quarter either way is no misfit. Our choice. */
const tolerance = 0.25;

/**
 * Figures of cooked rows that their raw row, the yield and the retention factor do not give. Named one by one, so that one
 * that fits again is noticed: mostly fibre (other methods of analysis), iron (soil and pots), folate and vitamin C (other
 * plants), and vegetables that give more to the water than the factor of their group says.
 */
const misfits: Readonly<Record<string, string>> = {
  "adzuki-beans-boiled": "FIBTG, CA, FE, MG, K",
  "aubergine-boiled": "FIBTG, CA, MG, K, FOLDFE",
  "barley-pearled-cooked": "PROCNT, FIBTG",
  "bell-pepper-red-boiled": "ZN, VITC, FOLDFE",
  "black-beans-boiled": "FIBTG, CA, FE, MG",
  "black-eyed-peas-boiled": "FIBTG, ZN",
  "broad-beans-boiled": "FIBTG, CA",
  "broccoli-boiled": "VITA_RAE, FOLDFE",
  "brussels-sprouts-boiled": "FIBTG, FOLDFE",
  "butter-beans-boiled": "CA, K",
  "butternut-squash-baked": "FIBTG",
  "cabbage-boiled": "CA, FE, K, VITC",
  "cauliflower-boiled": "MG, K",
  "chickpeas-boiled": "FE",
  "courgette-boiled": "VITA_RAE, FOLDFE",
  "egg-boiled": "FE",
  "green-beans-boiled": "FE, MG, K, FOLDFE",
  "haricot-beans-boiled": "CA, FE",
  "kale-boiled": "ENERC_KCAL, PROCNT, CHOCDF, FIBTG, CA, FE, MG, P, K, ZN, VITA_RAE, VITC, FOLDFE",
  "kidney-beans-boiled": "FIBTG, FE",
  "lamb-mince-cooked": "ENERC_KCAL",
  "lentils-boiled": "FE, K, FOLDFE",
  "millet-cooked": "FIBTG",
  "mung-beans-boiled": "FIBTG",
  "okra-boiled": "ENERC_KCAL, CHOCDF, FE, MG, P, K, VITA_RAE",
  "pak-choi-boiled": "FE, K",
  "parsnip-boiled": "FIBTG, ZN, FOLDFE",
  "peas-boiled": "VITC, FOLDFE",
  "pigeon-peas-boiled": "FIBTG",
  "pinto-beans-boiled": "FIBTG",
  "plantain-cooked": "PROCNT",
  "pork-mince-cooked": "ENERC_KCAL",
  "potato-baked": "FIBTG",
  "potato-boiled": "FE, VITC",
  "pumpkin-boiled": "VITC",
  "spinach-boiled": "CA, FE, ZN, VITC",
  "split-peas-boiled": "K",
  "swede-boiled": "CA, FE, MG, ZN",
  "sweet-potato-boiled": "FE, VITA_RAE, VITC",
  "sweetcorn-boiled": "MG, ZN, FOLDFE",
  "taro-cooked": "PROCNT",
  "turnip-boiled": "ZN, VITC",
  "urad-boiled": "CA, P, FOLDFE",
};

/** Cooked rows whose yield is neither weighed nor the solids balance within 3 %, and why. */
const yieldMisfits: Readonly<Record<string, string>> = {
  "sweet-potato-boiled": "takes the balance as it is, though a boiled root hardly gains",
  "egg-boiled": "boiled in its shell it weighs what it weighed",
  "pork-mince-cooked": "fat drips off, which the balance counts as water gained",
  "salmon-cooked": "fat and juice drip off, which the balance counts as water gained",
};

function rowOf(catalogue: Catalogue, key: string): Food {
  const food = catalogue.foods.find((row) => row.key === key);
  if (food === undefined) throw new Error(`the catalogue has no ${key}`);
  return food;
}

/** Grams cooked from 1 g of the edible part of the raw row, as the catalogue has it. */
function yieldOf(catalogue: Catalogue, cooked: Food): number {
  const bought = asBought(cooked, 1, (key) => rowOf(catalogue, key));
  return 1 / (bought.grams * (1 - bought.food.refusePercent / 100));
}

/** 100 g of what 100 g raw become when cooked so, derived as any base of a dish is. */
function cook(catalogue: Catalogue, raw: Food, cookedOverRaw: number, retention: string | undefined): DerivedDish {
  const [base, dish] = [catalogue.bases[0], catalogue.dishes[0]];
  if (base === undefined || dish === undefined) throw new Error("the catalogue is empty");
  const ingredient = { food: raw.key, grams: 100, form: "MIXED_IN" as const };
  const pot: Base = {
    ...base,
    key: "pot",
    batchGrams: 100 * cookedOverRaw,
    ingredients: [retention === undefined ? ingredient : { ...ingredient, retention }],
  };
  const plate: Dish = {
    ...dish,
    key: "plate",
    bases: [{ base: pot.key, grams: 100 }],
    ingredients: [],
    portion: { kind: "CONTINUOUS", grams: 100, stepGrams: 10 },
  };
  return indexCatalogue({ ...catalogue, version: "check", bases: [pot], dishes: [plate] }).derived(plate.key);
}

const listed = (names: readonly string[]): string => (names.length === 0 ? "none" : names.join(", "));

function cookedRowChecks(catalogue: Catalogue): OutsideCheck[] {
  return catalogue.foods.flatMap((cooked): OutsideCheck[] => {
    if (cooked.boughtAs === null || cooked.ndb === null) return [];
    const raw = rowOf(catalogue, cooked.boughtAs.food);
    const code = cookedBy[cooked.key];
    const cookedOverRaw = yieldOf(catalogue, cooked);
    const derived = cook(catalogue, raw, cookedOverRaw, code);
    const off = nutrientTag.options.filter((tag) => {
      const allowed = allowance[tag];
      if (allowed === undefined || (code === undefined && !leftWhole.includes(tag))) return false;
      const [printed, least, most] = [cooked.nutrients[tag], derived.nutrients[tag], derived.nutrientsAtMost[tag]];
      if (printed === undefined || least === undefined || most === undefined) return false;
      return (
        printed < least - Math.max(allowed, tolerance * least) || printed > most + Math.max(allowed, tolerance * most)
      );
    });
    const method = code === undefined ? "no retention row read" : `retention ${code}`;
    return [
      {
        id: `CR-${cooked.key}`,
        about: `${cooked.key} from ${raw.key}, yield ${cookedOverRaw.toFixed(2)}, ${method}: figures off by more than 25 %`,
        source: `${release26}, rows ${raw.ndb ?? "?"} and ${cooked.ndb}; ${release6}`,
        expected: misfits[cooked.key] ?? "none",
        tolerance: 0,
        found: listed(off),
      },
    ];
  });
}

/**
 * Yields against weighed portions, else against the balance of solids (nothing but water comes or goes). Only grains and
 * pulses take up water to keep; of anything else that gains by the balance, the solids went into the water: it counts as 1.
 */
function yieldMisfitsOf(catalogue: Catalogue): string[] {
  return catalogue.foods.flatMap((cooked) => {
    if (cooked.boughtAs === null) return [];
    const raw = rowOf(catalogue, cooked.boughtAs.food);
    const [before, after] = [raw.nutrients.WATER, cooked.nutrients.WATER];
    if (before === undefined || after === undefined) return [];
    const balance = (100 - before) / (100 - after);
    const swells = ["GRAIN", "WHOLE_GRAIN", "PULSE"].includes(cooked.group);
    const scale = weighed[cooked.key];
    const published =
      scale === undefined ? (swells ? balance : Math.min(1, balance)) : scale.cookedGrams / scale.rawGrams;
    return Math.abs(yieldOf(catalogue, cooked) / published - 1) <= 0.03 ? [] : [cooked.key];
  });
}

/**
 * YP-1 to YP-7 but for YP-6 (a whole chicken with its bones is no food of the catalogue), edible shares, weighed yields, solids
 * balance, cooked rows and the mass balance of every base and dish.
 */
export function yieldChecks(catalogue: Catalogue): OutsideCheck[] {
  const food = (key: string): Food => rowOf(catalogue, key);
  const cooked = (key: string, rawGrams: number): number => rawGrams * yieldOf(catalogue, food(key));
  const measure = (key: string, name: string): number =>
    food(key).measures.find((row) => row.measure === name)?.grams ?? Number.NaN;
  const kept = (code: string, nutrient: NutrientTag, raw: number): number => {
    const sample: Food = { ...food("cauliflower-raw"), key: "sample", nutrients: { [nutrient]: raw } };
    const derived = cook({ ...catalogue, foods: [sample] }, sample, 1, code);
    return derived.nutrients[nutrient] ?? Number.NaN;
  };
  const checked = checkCatalogue(catalogue);
  const wrongRefuse = catalogue.foods.filter((row) => {
    const published = row.ndb === null ? undefined : refuse[row.ndb];
    // A cooked row has its refuse where it is bought: an egg's shell.
    return published !== undefined && published !== asBought(row, 1, food).food.refusePercent;
  });
  return [
    {
      id: "YP-1",
      about: "edible grams of a banana of 200 g with its skin",
      source: `${standardReference}, row 09040: 36 % refuse`,
      expected: 128,
      tolerance: 1e-9,
      found: 200 / asBought(food("banana-raw"), 1, food).grams,
    },
    {
      id: "YP-2",
      about: "grams from 500 g of beef mince (10 % fat), browned in a pan",
      source: `${standardReference}, portions of row 23565: 226.8 g raw, 154 g cooked`,
      expected: 339.5,
      tolerance: 1,
      found: cooked("beef-mince-cooked", 500),
    },
    {
      id: "YP-3",
      about: "grams of cooked couscous from 100 g dry",
      source: `${standardReference}, portions of row 20029: 28.3 g dry, 86 g cooked`,
      expected: 303,
      tolerance: 1,
      found: cooked("couscous-cooked", 100),
    },
    {
      id: "YP-4 pulses",
      about: "grams of half a cup of boiled chickpeas",
      source: `${standardReference}, measures of row 16057`,
      expected: 82,
      tolerance: 0.5,
      found: measure("chickpeas-boiled", "1 cup") / 2,
    },
    {
      id: "YP-4 milk",
      about: "grams per millilitre of whole milk",
      source: `${release26}, measures of row 01211: 244 g a cup of 236.588 ml`,
      expected: 1.031,
      tolerance: 0.002,
      found: food("milk-whole").densityGramsPerMl ?? Number.NaN,
    },
    {
      id: "YP-5",
      about: "mg of vitamin C left of 48 in a vegetable boiled under water and drained",
      source: `${release6}, code 3775`,
      expected: 36,
      tolerance: 1e-9,
      found: kept("3775", "VITC", 48),
    },
    {
      id: "YP-7",
      about: "percent of vitamin B12 left in milk heated 10 and 30 minutes",
      source: `${release6}, codes 2151 and 2152`,
      expected: "80, 55",
      tolerance: 0,
      found: ["2151", "2152"].map((code) => Math.round(kept(code, "VITB12", 100))).join(", "),
    },
    {
      id: "YP-refuse",
      about: "foods of the catalogue with another refuse than the published one",
      source: `${standardReference}, refuse of ${Object.keys(refuse).length} foods`,
      expected: "none",
      tolerance: 0,
      found: listed(wrongRefuse.map(({ key }) => key)),
    },
    ...Object.entries(weighed).map(([key, { rawGrams, cookedGrams }]): OutsideCheck => {
      const row = food(key);
      return {
        id: `YP-weighed ${key}`,
        about: `grams of ${key} from ${rawGrams} g raw`,
        source: `${standardReference}, portions of row ${row.ndb ?? "?"}`,
        expected: cookedGrams,
        tolerance: 0.01 * cookedGrams,
        found: cooked(key, rawGrams),
      };
    }),
    {
      id: "YP-solids",
      about: "cooked rows whose yield is neither weighed nor the balance of solids within 3 %",
      source: `${release26}, water of raw and cooked rows`,
      expected: listed(Object.keys(yieldMisfits).sort()),
      tolerance: 0,
      found: listed(yieldMisfitsOf(catalogue).sort()),
    },
    {
      id: "YP-mass",
      about: "bases and dishes that do not weigh what goes into them, water lost in the pan allowed for",
      source: "common practice",
      expected: "none",
      tolerance: 0,
      found: listed(
        checked.ok ? [] : checked.error.flatMap((fault) => (fault.kind === "MassBalance" ? [fault.key] : [])),
      ),
    },
    ...cookedRowChecks(catalogue),
  ];
}
