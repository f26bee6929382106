/** What labels must name under four laws, and that no law narrows a child's own list. */
import type { AllergenCode } from "../../../shared/codes.js";
import type { LabelLaw } from "../../../shared/label-law.js";
import { judgeAllergies } from "../../domain/catalogue/allergens.js";
import type { CatalogueIndex } from "../../domain/catalogue/derive.js";
import { classesInForce, declaredUnder, type LabelledFood } from "../../domain/catalogue/label-law.js";
import type { OutsideCheck } from "./check.js";

const eu = "Regulation (EU) No 1169/2011, Annex II";
const us =
  "Food and Drug Administration, questions and answers on food allergen labelling (5th edition, 6 January 2025)";
const canada = "Health Canada, food allergen and gluten sources labelling";

/** The day of the questions and answers, and the day before. */
const since = "2025-01-06";
const before = "2025-01-05";

/** @param index any dish of it lends its form to the child's lunch of AL-1 and AL-5 */
export function allergenChecks(laws: readonly LabelLaw[], index: CatalogueIndex): OutsideCheck[] {
  const lawOf = (key: string): LabelLaw => {
    const law = laws.find((row) => row.key === key);
    if (law === undefined) throw new Error(`no label law ${key} was loaded`);
    return law;
  };
  /** "MOLLUSC as MOLLUSC", or "nothing". */
  const named = (law: string, food: LabelledFood, on = since): string =>
    declaredUnder(lawOf(law), food, on)
      .filter(({ status }) => status === "NAMED")
      .map(({ subject, class: of }) => `${subject} as ${of}`)
      .join(", ") || "nothing";
  const food = (kind: string, ...allergens: AllergenCode[]): LabelledFood => ({ kind, allergens });
  const countOf = (law: string, of?: string): number => {
    const classes = classesInForce(lawOf(law), since);
    if (of !== undefined) return classes.find(({ code }) => code === of)?.members.length ?? 0;
    return classes.filter(({ as }) => as === "ALLERGEN").length;
  };
  /** What becomes of a dish of one food for a child who avoids the allergen. */
  const forChild = (avoids: AllergenCode, { kind, allergens }: LabelledFood): string => {
    const [form] = index.dishes;
    const row = form === undefined ? undefined : index.derived(form.key).ingredients[0];
    if (form === undefined || row === undefined) throw new Error("a catalogue without dishes cannot be checked");
    const of = { ...row.food, kind, allergens: [...allergens], packaged: false };
    const dish = { ...index.derived(form.key), ingredients: [{ ...row, food: of, bought: of }] };
    return judgeAllergies([{ allergen: avoids, foodKind: null, avoid: "INGREDIENTS" }], dish, []).kind;
  };
  const coconut = food("coconut", "COCONUT");
  const pineNut = food("pine-nut", "PINE_NUT");
  const soyaOil = food("soya", "SOYA");
  const apricot = food("apricot", "SULPHITES");
  const check = (
    id: string,
    about: string,
    source: string,
    expected: string | number,
    found: string | number,
  ): OutsideCheck => ({
    id,
    about,
    source,
    expected,
    tolerance: 0,
    found,
  });
  return [
    check(
      "AL-1a",
      "coconut yoghurt, United States from 6 January 2025: named on labels",
      us,
      "nothing",
      named("us", coconut),
    ),
    check(
      "AL-1b",
      "coconut yoghurt, United States the day before",
      us,
      "COCONUT as TREE_NUTS",
      named("us", coconut, before),
    ),
    check("AL-1c", "coconut yoghurt for a child who avoids coconut", us, "CONTAINS", forChild("COCONUT", coconut)),
    check("AL-2a", "pesto with pine nuts, European Union", eu, "nothing", named("eu", pineNut)),
    check("AL-2b", "pesto with pine nuts, United States", us, "PINE_NUT as TREE_NUTS", named("us", pineNut)),
    check("AL-2c", "pesto with pine nuts, Canada", canada, "PINE_NUT as TREE_NUTS", named("ca", pineNut)),
    check(
      "AL-3a",
      "fully refined soya oil, European Union",
      eu,
      "nothing",
      named("eu", { ...soyaOil, derivative: "soya-oil-fully-refined" }),
    ),
    check(
      "AL-3b",
      "cold-pressed soya oil, European Union",
      eu,
      "SOYA as SOYA",
      named("eu", { ...soyaOil, derivative: "soya-oil-cold-pressed" }),
    ),
    check(
      "AL-4",
      "dried apricots with 1500 mg sulphur dioxide per kg, European Union",
      eu,
      "SULPHITES as SULPHITES",
      named("eu", { ...apricot, sulphitesMgPerKg: 1500 }),
    ),
    check("AL-5a", "goat's cheese, United States", us, "MILK as MILK", named("us", food("goat-cheese", "MILK"))),
    check(
      "AL-5b",
      "goat's cheese for a child who avoids milk",
      us,
      "CONTAINS",
      forChild("MILK", food("goat-cheese", "MILK")),
    ),
    check("AL-6a", "allergens on the list of the European Union", eu, 14, countOf("eu")),
    check("AL-6b", "allergens on the list of the United States", us, 9, countOf("us")),
    check("AL-6c", "tree nuts, United States from 6 January 2025", us, 12, countOf("us", "TREE_NUTS")),
    check("AL-6d", "nuts, European Union", eu, 8, countOf("eu", "TREE_NUTS")),
    check("AL-6e", "tree nuts, Canada", canada, 9, countOf("ca", "TREE_NUTS")),
    check("AL-7a", "barley malt drink, United States", us, "nothing", named("us", food("barley", "BARLEY"))),
    check(
      "AL-7b",
      "barley malt drink, European Union",
      eu,
      "BARLEY as GLUTEN_CEREALS",
      named("eu", food("barley", "BARLEY")),
    ),
    check("AL-8a", "mussels, United States", us, "nothing", named("us", food("mussel", "MOLLUSC"))),
    check("AL-8b", "mussels, European Union", eu, "MOLLUSC as MOLLUSC", named("eu", food("mussel", "MOLLUSC"))),
    check("AL-8c", "mussels, Canada", canada, "MOLLUSC as MOLLUSC", named("ca", food("mussel", "MOLLUSC"))),
  ];
}
