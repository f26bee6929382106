/**
 * What is left of the catalogue for a child with given allergies, diets, age and circumstances, counted so that one idea
 * served twice does not count as two: the rows of the coverage table and their minima.
 */
import type { Food } from "../../../shared/catalogue.js";
import {
  slotCode,
  type AllergenCode,
  type AllergenGroupCode,
  type DietCode,
  type FoodGroup,
  type ProteinFamily,
  type ServedForm,
  type SlotCode,
  type StarchFamily,
} from "../../../shared/codes.js";
import type { AllergyBrief, ChokingRule } from "../brief.js";
import { judgeChoking } from "../food-safety/choking.js";
import { comesHotOutOf, isCooked } from "../kitchen/heat.js";
import { dietAllows, judgeAllergies } from "./allergens.js";
import type { CatalogueIndex, DerivedDish, FlatIngredient } from "./derive.js";

/** One row of the table: what a family has to live with. */
export interface CoverageRequirement {
  readonly key: string;
  /** Shut out as ingredients; a family of allergens stands for its members. */
  readonly allergens: readonly (AllergenCode | AllergenGroupCode)[];
  readonly diets: readonly DietCode[];
  /** Completed years of the child; null where age shuts nothing out. */
  readonly ageYears: number | null;
  /** Nothing that has to be warm at noon, and nothing cooked on the morning it is packed. */
  readonly coldOnly: boolean;
}

const requirement = (key: string, rest: Partial<CoverageRequirement>): CoverageRequirement => ({
  key,
  allergens: [],
  diets: [],
  ageYears: null,
  coldOnly: false,
  ...rest,
});

/** Ages under five are judged at three: the youngest who take a box, and under every age of the choking rules. */
const UNDER_FIVE_YEARS = 3;

/** Single needs, then the combinations that families really have. */
export const coverageRequirements: readonly CoverageRequirement[] = [
  requirement("nut-free", { allergens: ["TREE_NUTS", "PEANUT"] }),
  requirement("egg-free", { allergens: ["EGG"] }),
  requirement("milk-free", { allergens: ["MILK"] }),
  requirement("gluten-free", { allergens: ["GLUTEN_CEREALS"] }),
  requirement("soy-free", { allergens: ["SOYA"] }),
  requirement("sesame-free", { allergens: ["SESAME"] }),
  requirement("fish-free", { allergens: ["FISH"] }),
  requirement("vegetarian", { diets: ["VEGETARIAN"] }),
  requirement("vegan", { diets: ["VEGAN"] }),
  requirement("halal", { diets: ["HALAL"] }),
  requirement("under-five-safe", { ageYears: UNDER_FIVE_YEARS }),
  requirement("cold-only", { coldOnly: true }),
  requirement("nut-egg-milk-free", { allergens: ["TREE_NUTS", "PEANUT", "EGG", "MILK"] }),
  requirement("gluten-milk-free", { allergens: ["GLUTEN_CEREALS", "MILK"] }),
  requirement("vegan-nut-soy-free", { allergens: ["TREE_NUTS", "PEANUT", "SOYA"], diets: ["VEGAN"] }),
  requirement("egg-fish-sesame-free", { allergens: ["EGG", "FISH", "SESAME"] }),
];

/**
 * Where a main's protein comes from. PULSE is split into the pulses a cook tells apart: by the plain tag a vegan child
 * without nuts and soya has two families, however many beans, chickpeas, lentils and peas there are.
 */
export type ProteinSource = Exclude<ProteinFamily, "NONE" | "PULSE"> | "BEAN" | "CHICKPEA" | "LENTIL" | "PEA";

/** Least numbers of each row; issue of the catalogue, not a published figure. */
export const coverageMinima = {
  distinct: { MAIN: 12, VEGETABLE: 8, FRUIT: 8, EXTRA: 8 },
  proteinSources: 4,
  starchFamilies: 4,
} as const satisfies {
  distinct: Readonly<Record<SlotCode, number>>;
  proteinSources: number;
  starchFamilies: number;
};

export interface CoverageShortfall {
  readonly of: SlotCode | "PROTEIN_SOURCES" | "STARCH_FAMILIES";
  readonly has: number;
  readonly needs: number;
}

export interface CoverageRow {
  readonly requirement: CoverageRequirement;
  /** Dishes that pass, those counted once that share main ingredient and form. */
  readonly distinct: Readonly<Record<SlotCode, number>>;
  /** Dishes that pass, all of them. */
  readonly dishes: Readonly<Record<SlotCode, number>>;
  /** Of the mains, sorted. */
  readonly proteinSources: readonly ProteinSource[];
  /** Of the mains, sorted. */
  readonly starchFamilies: readonly Exclude<StarchFamily, "NONE">[];
  /** Empty when the row holds. */
  readonly shortfalls: readonly CoverageShortfall[];
}

/** What seasons, binds or sweetens a dish and never is what it is known by. */
const seasoning: ReadonlySet<FoodGroup> = new Set<FoodGroup>([
  "WATER",
  "FAT_OIL",
  "HERB_SPICE",
  "CONDIMENT",
  "SUGAR_SYRUP",
  "RAISING_AGENT",
]);
/** What fills: a main is told apart by what stands beside it. */
const filling: ReadonlySet<FoodGroup> = new Set<FoodGroup>([
  "GRAIN",
  "WHOLE_GRAIN",
  "BREAD",
  "VEGETABLE_STARCHY",
  "SAVOURY_SNACK",
]);

/** Sums `amount` over ingredients of one kind and returns the kind with the most; at a tie the first in alphabetical order. */
function kindWithMost(
  ingredients: readonly FlatIngredient[],
  amount: (ingredient: FlatIngredient) => number,
): string | null {
  const sums = new Map<string, number>();
  for (const ingredient of ingredients)
    sums.set(ingredient.food.kind, (sums.get(ingredient.food.kind) ?? 0) + amount(ingredient));
  const [first] = [...sums].sort(([a, x], [b, y]) => y - x || (a < b ? -1 : 1));
  return first === undefined ? null : first[0];
}

const proteinGrams = ({ food, grams }: FlatIngredient): number => (grams * (food.nutrients.PROCNT ?? 0)) / 100;

/**
 * The food kind a dish is known by. In a main the kind that brings the most protein, what fills left aside (rice with
 * chicken is chicken); in anything else the heaviest kind. Seasoning counts only where there is nothing else.
 */
export function mainIngredient(d: DerivedDish, slot: SlotCode): string {
  const body = d.ingredients.filter(({ food }) => !seasoning.has(food.group));
  const counted = body.length > 0 ? body : d.ingredients;
  if (slot === "MAIN") {
    const beside = counted.filter(({ food }) => !filling.has(food.group));
    return kindWithMost(beside.length > 0 ? beside : counted, proteinGrams) ?? "";
  }
  return kindWithMost(counted, ({ grams }) => grams) ?? "";
}

/** The form of the heaviest ingredient of a kind. */
function formOf(d: DerivedDish, kind: string): ServedForm {
  const [heaviest] = d.ingredients.filter(({ food }) => food.kind === kind).sort((a, b) => b.grams - a.grams);
  return heaviest?.form ?? "MIXED_IN";
}

/**
 * Two dishes with the same answer count once: the same main ingredient in the same form. The form of a main is what it is
 * built on (its starch family: in bread, with rice, in a flatbread); of anything else the cut in which its main ingredient
 * reaches the box, and what that sits in. Herbs, dressings and what lies beside make no other dish of it.
 */
function countsAs(d: DerivedDish, slot: SlotCode): string {
  const kind = mainIngredient(d, slot);
  return slot === "MAIN" ? `${kind} ${d.dish.starch}` : `${kind} ${formOf(d, kind)} ${d.dish.starch}`;
}

/** Pulses by food kind; every other pulse is a bean. */
const pulseSources: Readonly<Record<string, ProteinSource>> = { chickpea: "CHICKPEA", lentil: "LENTIL", pea: "PEA" };

/** Null for a dish without a protein family. */
function proteinSourceOf(d: DerivedDish): ProteinSource | null {
  const { protein } = d.dish;
  if (protein === "NONE") return null;
  if (protein !== "PULSE") return protein;
  const pulses = d.ingredients.filter(({ food }: { food: Food }) => food.group === "PULSE");
  return pulseSources[kindWithMost(pulses, proteinGrams) ?? ""] ?? "BEAN";
}

/** Cold when the box leaves: not meant to be warm, no heat in the steps of that morning, no base that is cooked only then. */
function isPackedCold(d: DerivedDish, index: CatalogueIndex): boolean {
  if (d.dish.served === "WARM" || comesHotOutOf(d.dish, "MORNING_REST")) return false;
  return d.dish.bases.every((use) => {
    const base = index.base(use.base);
    return base === undefined || !isCooked(base) || base.windows.some((window) => window !== "MORNING");
  });
}

/**
 * Whether a dish is open to a family. Labels are taken as unread: a packaged food that does not always have the allergen
 * counts, and its label still has to be read before the box is packed. A cut that makes a dish safe is taken as done.
 */
function passes(
  { allergens, diets, ageYears, coldOnly }: CoverageRequirement,
  d: DerivedDish,
  index: CatalogueIndex,
  choking: readonly ChokingRule[],
): boolean {
  const allergies = allergens.map((allergen): AllergyBrief => ({ allergen, foodKind: null, avoid: "INGREDIENTS" }));
  if (judgeAllergies(allergies, d, []).kind === "CONTAINS" || !dietAllows(diets, d.origins)) return false;
  if (ageYears !== null && !judgeChoking(ageYears, d, choking).allowed) return false;
  return !coldOnly || isPackedCold(d, index);
}

const bySlot = (count: (slot: SlotCode) => number): Record<SlotCode, number> => ({
  MAIN: count("MAIN"),
  VEGETABLE: count("VEGETABLE"),
  FRUIT: count("FRUIT"),
  EXTRA: count("EXTRA"),
});

function findShortfalls({ distinct, proteinSources, starchFamilies }: Omit<CoverageRow, "shortfalls">) {
  const rows: CoverageShortfall[] = [
    ...slotCode.options.map((of) => ({ of, has: distinct[of], needs: coverageMinima.distinct[of] })),
    { of: "PROTEIN_SOURCES", has: proteinSources.length, needs: coverageMinima.proteinSources },
    { of: "STARCH_FAMILIES", has: starchFamilies.length, needs: coverageMinima.starchFamilies },
  ];
  return rows.filter(({ has, needs }) => has < needs);
}

function coverageRow(row: CoverageRequirement, index: CatalogueIndex, choking: readonly ChokingRule[]): CoverageRow {
  const open = index.dishes.map(({ key }) => index.derived(key)).filter((d) => passes(row, d, index, choking));
  const inSlot = (slot: SlotCode): DerivedDish[] => open.filter(({ dish }) => dish.slots.includes(slot));
  const mains = inSlot("MAIN");
  const counted = {
    requirement: row,
    distinct: bySlot((slot) => new Set(inSlot(slot).map((d) => countsAs(d, slot))).size),
    dishes: bySlot((slot) => inSlot(slot).length),
    proteinSources: [...new Set(mains.flatMap((d) => proteinSourceOf(d) ?? []))].sort(),
    starchFamilies: [...new Set(mains.flatMap(({ dish }) => (dish.starch === "NONE" ? [] : dish.starch)))].sort(),
  };
  return { ...counted, shortfalls: findShortfalls(counted) };
}

/** Every row of `coverageRequirements` over a checked catalogue, in that order. Throws where a dish cannot be derived. */
export function coverageOf(index: CatalogueIndex, choking: readonly ChokingRule[]): CoverageRow[] {
  return coverageRequirements.map((row) => coverageRow(row, index, choking));
}
