import { nutrientTag } from "../../shared/codes.js";
import { useApp } from "../support/app.js";

const { run } = useApp();
const ana = "demo:ana";

interface Part {
  readonly food: { readonly key: string };
  readonly base: { readonly key: string } | null;
  readonly grams: number;
  readonly per100: number;
  readonly factor: number;
  readonly basis: string;
  readonly retention: { readonly code: string } | null;
  readonly amount: number;
}
interface Figures {
  readonly key: string;
  readonly nutrients: readonly { readonly tag: string; readonly amount: number }[];
  readonly carbohydrateGrams: number | null;
  readonly carbohydrateGramsPerPiece: number | null;
  readonly portionPieces: number | null;
  readonly costMinor: number;
  readonly costParts: readonly { readonly boughtGrams: number; readonly costMinor: number }[];
  readonly allergens: readonly string[];
  readonly allergenSources: readonly { readonly allergen: string; readonly foods: readonly { key: string }[] }[];
  readonly readyMadeShare: number;
  readonly derivation: {
    readonly total: number | null;
    readonly atMost: number | null;
    readonly unit: string;
    readonly parts: readonly Part[];
    readonly missing: readonly { readonly key: string }[];
  };
}

const FIGURES = `query Figures($after: String, $tag: NutrientTag!) { dishes(first: 50, after: $after) {
  pageInfo { hasNextPage endCursor }
  nodes { key nutrients { tag amount } carbohydrateGrams carbohydrateGramsPerPiece portionPieces costMinor
    costParts { food { key } base { key } bought { key } boughtGrams costMinor } allergens
    allergenSources { allergen foods { key } } readyMadeShare processing { tag foods { key } } cutlery spill volumeMl
    ingredients { grams retention { code cooked source } } bases { base { ingredients { food { key } grams } } }
    derivation(tag: $tag) { nutrient total atMost unit missing { key }
      parts { food { key } base { key } grams per100 factor basis retention { code } amount } } } } }`;

async function allDishes(tag: string): Promise<Figures[]> {
  const nodes: Figures[] = [];
  let after: string | null = null;
  do {
    const { data, errors } = await run(ana, FIGURES, { after, tag });
    expect(errors).toEqual([]);
    const page = (
      data as { dishes: { nodes: Figures[]; pageInfo: { hasNextPage: boolean; endCursor: string | null } } }
    ).dishes;
    nodes.push(...page.nodes);
    after = page.pageInfo.hasNextPage ? page.pageInfo.endCursor : null;
  } while (after !== null);
  return nodes;
}

describe("a dish's figures over the API", () => {
  it("can be added up from their parts by hand", async () => {
    for (const tag of ["VITC", "CHOCDF"]) {
      for (const { key, derivation, nutrients } of await allDishes(tag)) {
        const sum = derivation.parts.reduce(
          (total, { grams, per100, factor }) => total + (grams * per100 * factor) / 100,
          0,
        );
        expect([key, derivation.total]).toEqual([key, nutrients.find((figure) => figure.tag === tag)?.amount ?? null]);
        expect(sum).toBeCloseTo(derivation.total ?? 0, 6);
        expect(derivation.unit).toBe(tag === "VITC" ? "mg" : "g");
        expect(derivation.atMost ?? 0).toBeGreaterThanOrEqual(derivation.total ?? 0);
      }
    }
  });

  it("give carbohydrate only when every addend is known, and per piece where there are pieces", async () => {
    for (const dish of await allDishes("CHOCDF")) {
      const { missing, total } = dish.derivation;
      expect([dish.key, dish.carbohydrateGrams]).toEqual([dish.key, missing.length > 0 ? null : total]);
      const perPiece = dish.carbohydrateGramsPerPiece;
      if (dish.portionPieces === null || dish.carbohydrateGrams === null) expect(perPiece).toBeNull();
      else expect((perPiece ?? 0) * dish.portionPieces).toBeCloseTo(dish.carbohydrateGrams, 8);
    }
  });

  it("cost whole minor units, with the parts behind them, and name a food for every allergen", async () => {
    for (const dish of await allDishes("CA")) {
      const cost = dish.costParts.reduce((sum, { costMinor }) => sum + costMinor, 0);
      expect([dish.key, dish.costMinor]).toEqual([dish.key, Math.round(cost)]);
      expect(dish.allergenSources.map(({ allergen }) => allergen)).toEqual(dish.allergens);
      expect(dish.allergenSources.every(({ foods }) => foods.length > 0)).toBe(true);
      expect(dish.readyMadeShare).toBeGreaterThanOrEqual(0);
      expect(dish.readyMadeShare).toBeLessThanOrEqual(1);
    }
  });

  it("are refused for a nutrient nobody knows, and every tag of the tables can be asked for", async () => {
    const ask = (tag: string) => run(ana, `{ dishes(first: 1) { nodes { derivation(tag: ${tag}) { nutrient } } } }`);
    const wrong = await ask("VITAMIN_C");
    expect(wrong.errors.map(({ message }) => message)).toEqual([
      expect.stringContaining('Value "VITAMIN_C" does not exist in "NutrientTag" enum'),
    ]);
    for (const tag of nutrientTag.options) expect((await ask(tag)).errors).toEqual([]);
  });
});
