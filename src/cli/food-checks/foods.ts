/** The foods against what was published about them: energy, mass, densities, sugars, school-meal groups. */
import type { Catalogue, Food } from "../../../shared/catalogue.js";
import type { FoodGroup } from "../../../shared/codes.js";
import { isEnergyExplained } from "../../domain/catalogue/energy.js";
import { checkSugars } from "../../domain/catalogue/sugars.js";
import type { OutsideCheck } from "./check.js";

const release28 = "USDA National Nutrient Database for Standard Reference, Release 28, household weights";

const pulses = "the table's factors for pulses; most of its fibre is not counted at 2 kcal";
const spices = "the table's factors for spices are lower";
const acetic = "energy of acetic acid";

/**
 * Foods whose printed energy the general factors miss, and why: USDA uses factors of each food, and counts what is no protein,
 * fat or carbohydrate.
 */
export const energyExceptions: Readonly<Record<string, string>> = {
  "lentils-dry": pulses,
  "split-peas-dry": pulses,
  "split-peas-boiled": pulses,
  "broad-beans-dry": pulses,
  "haricot-beans-dry": pulses,
  "haricot-beans-boiled": pulses,
  "mung-beans-boiled": pulses,
  papad: pulses,
  "black-beans-boiled": "the table's factors for pulses: fibre counted like other carbohydrate",
  "tomato-ketchup": "the table's factor for tomato and vinegar solids is lower",
  "vinegar-cider": acetic,
  "vinegar-distilled": acetic,
  "vinegar-red-wine": acetic,
  "vinegar-balsamic": acetic,
  "cumin-seed": spices,
  "coriander-seed": spices,
  paprika: spices,
  "black-pepper": spices,
  allspice: spices,
  "bay-leaf": spices,
  cayenne: spices,
  "chilli-powder": spices,
  "cloves-ground": spices,
  saffron: spices,
  "lemongrass-raw": "the table prints no fibre for it, so the factors take all of it for starch and sugar",
  "carob-powder": "the table's factors for carob are lower, as for cocoa",
  "millet-puffed": "the table prints less than its own protein, fat and starch give; carried as printed",
  "baking-powder": "the mineral part is counted as carbohydrate by difference and carries no energy",
  "vanilla-extract": "energy of alcohol",
  "cocoa-powder": "the table's factors for cocoa are far lower",
};

const ash = "ash, which the rows leave out";
const salted = "salt and other ash, which the rows leave out";
const acid = "acetic acid, which is neither of the four";

/** Foods whose water, protein, fat and carbohydrate do not make 95 to 105 g in 100 g, and what the rest is. */
const massExceptions: Readonly<Record<string, string>> = {
  ...Object.fromEntries(
    [
      "basil-dried",
      "black-pepper",
      "caraway-seed",
      "cardamom",
      "cayenne",
      "chilli-powder",
      "cloves-ground",
      "cocoa-powder",
      "coriander-seed",
      "cumin-seed",
      "curry-powder",
      "fennel-seed",
      "ginger-ground",
      "oregano-dried",
      "paprika",
      "poppy-seed",
      "saffron",
      "sunflower-seed-flour",
      "thyme-dried",
      "turmeric",
      "yeast-dried",
    ].map((key) => [key, ash]),
  ),
  ...Object.fromEntries(
    [
      "capers",
      "feta",
      "fish-sauce",
      "miso",
      "papad",
      "parmesan",
      "salt",
      "soy-sauce-less-salt",
      "tamari",
      "tomato-sun-dried",
    ].map((key) => [key, salted]),
  ),
  ...Object.fromEntries(
    ["vinegar-balsamic", "vinegar-cider", "vinegar-distilled", "vinegar-red-wine"].map((key) => [key, acid]),
  ),
  "baking-powder": "mineral salts",
  "baking-soda": "mineral salts",
  "cream-of-tartar": "the potassium of the salt",
  "mackerel-cooked": "ash, and a row of the table that sums to 94.9 g",
  "vanilla-extract": "alcohol",
};

/** g per ml that the cup or spoon of the published household weights gives. */
const densities: Readonly<Record<string, number>> = {
  "rice-white-raw": 0.782,
  "rice-white-cooked": 0.668,
  "quinoa-cooked": 0.782,
  "couscous-cooked": 0.664,
  "bulgur-cooked": 0.769,
  "wheat-flour-wholemeal": 0.507,
  "wheat-flour-white": 0.528,
  "lentils-boiled": 0.837,
  "kidney-beans-boiled": 0.748,
  "black-beans-boiled": 0.727,
  hummus: 1.04,
  raisins: 0.613,
  "apple-puree-unsweetened": 1.031,
  "yoghurt-plain-whole": 1.036,
  "cottage-cheese": 0.951,
  "sunflower-seeds": 0.592,
  "olive-oil": 0.913,
  sugar: 0.845,
  "tofu-firm": 1.065,
};

/** Vegetables by the subgroup they count in, as far as the published list names them. */
const subgroups: Readonly<Partial<Record<FoodGroup, string>>> = {
  VEGETABLE_DARK_GREEN:
    "rocket pak-choi broccoli lettuce-butterhead chard collards lettuce-romaine kale spinach watercress",
  VEGETABLE_RED_ORANGE: "butternut-squash carrot bell-pepper-red pumpkin sweet-potato tomato",
  VEGETABLE_STARCHY: "cassava sweetcorn peas jicama parsnip plantain taro water-chestnuts potato yam hominy",
  PULSE:
    "black-beans black-eyed-peas chickpeas kidney-beans lentils butter-beans broad-beans mung-beans haricot-beans pinto-beans split-peas white-beans",
};

/** Names that begin like a listed vegetable and are another food. */
const notListed: readonly string[] = [
  "tomato-ketchup",
  "tomato-yellow-raw",
  "peas-carrots-boiled",
  "broad-beans-young-boiled",
  "pumpkin-seeds",
  "pumpkin-seeds-roasted",
];

function findOffGroup(foods: readonly Food[]): string[] {
  return Object.entries(subgroups).flatMap(([group, names]) =>
    names.split(" ").flatMap((name) => {
      const named = foods.filter(({ key }) => key === name || key.startsWith(`${name}-`));
      const off = named.filter((food) => food.group !== group && !notListed.includes(food.key)).map(({ key }) => key);
      return named.length === 0 ? [`${name} is missing`] : off;
    }),
  );
}

/** Keys of foods whose four parts are all known and do not make 95 to 105 g. */
function findOffMass(foods: readonly Food[]): string[] {
  return foods
    .filter(({ nutrients: { WATER, PROCNT, FAT, CHOCDF } }) => {
      if (WATER === undefined || PROCNT === undefined || FAT === undefined || CHOCDF === undefined) return false;
      const parts = WATER + PROCNT + FAT + CHOCDF;
      return parts < 95 || parts > 105;
    })
    .map(({ key }) => key);
}

const findOffEnergy = (foods: readonly Food[]): string[] =>
  foods.filter((food) => !isEnergyExplained(food)).map(({ key }) => key);

/** Which foods miss and are not named, and which are named and fit; either is a change somebody has to look at. */
function difference(found: readonly string[], named: Readonly<Record<string, string>>): string {
  const unnamed = found.filter((key) => named[key] === undefined);
  const fitting = Object.keys(named).filter((key) => !found.includes(key));
  return [...unnamed, ...fitting.map((key) => `${key} fits`)].sort().join(", ");
}

/** Checks of the foods against publications. A food that a check names and the catalogue lacks is found as NaN or by name. */
export function foodChecks({ foods }: Pick<Catalogue, "foods">): OutsideCheck[] {
  const byKey = new Map(foods.map((food) => [food.key, food]));
  return [
    {
      id: "FD-energy",
      about:
        "foods whose energy protein, fat, carbohydrate and fibre miss by over 10 % and 12 kcal, but for those named",
      source: "general Atwater factors 4-9-4, fibre 2 (common practice), against USDA Standard Reference, Release 26",
      expected: "",
      tolerance: 0,
      found: difference(findOffEnergy(foods), energyExceptions),
    },
    {
      id: "FD-mass",
      about: "foods whose water, protein, fat and carbohydrate make no 95 to 105 g, but for those named",
      source: "mass balance (common practice) of USDA Standard Reference, Release 26",
      expected: "",
      tolerance: 0,
      found: difference(findOffMass(foods), massExceptions),
    },
    {
      id: "FD-sugars",
      about: "foods whose free or added sugars are not those of their stated rule",
      source: "WHO 2015, Sugars intake for adults and children; US 21 CFR 101.9(c)(6)(iii)",
      expected: "",
      tolerance: 0,
      found: foods
        .filter((food) => !checkSugars(food).ok)
        .map(({ key }) => key)
        .join(", "),
    },
    {
      id: "FD-subgroups",
      about: "vegetables in another school-meal subgroup than the published list puts them",
      source:
        "California Department of Education, The Vegetable Subgroup List; Vegetable Subgroups in the National School Lunch Program",
      expected: "",
      tolerance: 0,
      found: findOffGroup(foods).join(", "),
    },
    {
      id: "OD-5",
      about: "energy of 100 g groundnut oil, kcal",
      source: "computed in kJ at 37 per g of fat from IFCT 2017 (T005), which stores none; 4.184 kJ a kcal",
      expected: 884,
      tolerance: 1,
      found: byKey.get("peanut-oil")?.nutrients.ENERC_KCAL ?? Number.NaN,
    },
    ...Object.entries(densities).map(([key, expected]): OutsideCheck => ({
      id: `FD-density ${key}`,
      about: "g per ml by its household measure",
      source: release28,
      expected,
      tolerance: 0.002,
      found: byKey.get(key)?.densityGramsPerMl ?? Number.NaN,
    })),
  ];
}
