/**
 * Which food kinds an allergy to a single food stands for beyond its own. `Food.kind` tells apart what a cook and a child tell
 * apart (tofu and edamame, sweetcorn and maize flour), for dislikes, variety and shopping; an allergy must not slip through
 * between two such names of one plant or animal. This is no table of cross-reactions: whether a child who reacts to cashews has to
 * avoid pistachios is for the clinician to say, and each is then recorded.
 */
import type { AllergenCode } from "./codes.js";

interface KindFamily {
  readonly kinds: readonly string[];
  /** What a label and a food's row call it; an allergy to one of the kinds shuts out whatever always has it. */
  readonly allergen: AllergenCode | null;
  readonly why: string;
}

const alone = (allergen: AllergenCode, kind: string): KindFamily => ({
  kinds: [kind],
  allergen,
  why: "rows and labels name it by the allergen, whatever the food is made of otherwise",
});
const species = (why: string, ...kinds: readonly string[]): KindFamily => ({ kinds, allergen: null, why });

/**
 * Species as botany counts them, from memory, unverified. Left apart: fish, crustaceans and molluscs (a family of many animals; a
 * child may avoid one), and swede and rapeseed, which share a species but stand here as a root and as refined oil.
 */
export const kindFamilies: readonly KindFamily[] = [
  {
    kinds: ["soya", "soya-bean"],
    allergen: "SOYA",
    why: "one bean, as pods and drink or as curd, paste and sauce; rows and labels name it by the allergen",
  },
  {
    kinds: ["cow-milk", "goat-milk", "sheep-milk"],
    allergen: "MILK",
    why: "US FDA guidance of January 2025: milk means goat and sheep too, and a label does not say of which animal",
  },
  alone("EGG", "hen-egg"),
  alone("PEANUT", "peanut"),
  alone("ALMOND", "almond"),
  alone("HAZELNUT", "hazelnut"),
  alone("WALNUT", "walnut"),
  alone("CASHEW", "cashew"),
  alone("PECAN", "pecan"),
  alone("BRAZIL_NUT", "brazil-nut"),
  alone("PISTACHIO", "pistachio"),
  alone("MACADAMIA", "macadamia"),
  alone("PINE_NUT", "pine-nut"),
  alone("COCONUT", "coconut"),
  alone("CHESTNUT", "chestnut"),
  alone("WHEAT", "wheat"),
  alone("RYE", "rye"),
  alone("BARLEY", "barley"),
  alone("OATS", "oat"),
  alone("SESAME", "sesame"),
  alone("MUSTARD", "mustard"),
  alone("CELERY", "celery"),
  alone("LUPIN", "lupin"),
  species("Zea mays: the cob, and meal, starch and oil of the dry grain", "maize", "sweetcorn"),
  species(
    "Phaseolus vulgaris: one bean, dry in several colours, and its green pod",
    "black-bean",
    "green-bean",
    "haricot-bean",
    "kidney-bean",
    "pinto-bean",
    "white-bean",
  ),
  species(
    "Brassica oleracea: leaf, stem, bud and flower of one plant",
    "broccoli",
    "brussels-sprout",
    "cabbage",
    "cauliflower",
    "collard",
    "kale",
    "kohlrabi",
  ),
  species("Brassica rapa: leaf and root of one plant", "chinese-cabbage", "pak-choi", "turnip"),
  species("Beta vulgaris: root and leaf of one plant", "beetroot", "chard"),
  species("Cucurbita: species that are sold under each other's names", "courgette", "pumpkin", "squash"),
  species("Capsicum annuum, fresh, dried and ground", "bell-pepper", "chilli", "paprika"),
  species("Raphanus sativus", "daikon", "radish"),
  species("Prunus persica, with and without down", "nectarine", "peach"),
  species("Musa, for cooking and for eating raw", "banana", "plantain"),
  species("mandarins and their cross, sold under each other's names", "clementine", "mandarin"),
];

/** What is in a food that is sold as a mixture, as its kind does not say. */
export const mixtures: Readonly<Record<string, { readonly of: readonly string[]; readonly source: string }>> = {
  "peas-and-carrots": { of: ["carrot", "pea"], source: "USDA, Frozen Peas and Carrots Grades and Standards" },
  "mixed-vegetables": {
    of: ["bell-pepper", "carrot", "green-bean", "lima-bean", "pea", "sweetcorn"],
    source: "US 7 CFR 52.2131 and 52.2132, frozen mixed vegetables: any of these may be in it",
  },
};
