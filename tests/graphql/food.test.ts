import { useApp } from "../support/app.js";

const { run } = useApp();

const FOOD = `query Food($key: String!) { food(key: $key) { key ndb group kind packaged allergens nutrients { tag amount unit }
  sugarRule freeSugarGrams addedSugarGrams refusePercent measures { measure grams } densityGramsPerMl
  waterActivity { value source } ph { value source } chokingClasses keepsChilledDays keepsFrozenDays { value source }
  seasons { region months source } priceBand own } }`;

const food = async (key: string) => {
  const { data, errors } = await run(null, FOOD, { key });
  expect(errors).toEqual([]);
  return data.food;
};

describe("a food over the API", () => {
  it("is read without signing in, with its figures as the table prints them", async () => {
    const carrot = await food("carrot-raw");
    // USDA Standard Reference, release 26, NDB 11124: 41 kcal, 0.93 g protein, 33 mg calcium; 11 % refuse; a cup grated 110 g.
    expect(carrot).toMatchObject({ ndb: "11124", group: "VEGETABLE_RED_ORANGE", refusePercent: 11, own: false });
    const amounts = Object.fromEntries(
      carrot.nutrients.map(({ tag, amount, unit }: { tag: string; amount: number; unit: string }) => [
        tag,
        [amount, unit],
      ]),
    );
    expect(amounts).toMatchObject({ ENERC_KCAL: [41, "kcal"], PROCNT: [0.93, "g"], CA: [33, "mg"] });
    expect(carrot.measures).toContainEqual({ measure: expect.stringContaining("grated"), grams: 110 });
    expect(carrot.chokingClasses).toContain("HARD_RAW");
    expect(carrot).toMatchObject({ sugarRule: "INTACT", freeSugarGrams: 0, addedSugarGrams: 0 });
  });

  it("has a source beside every figure that could loosen how it is kept, and none where nobody published one", async () => {
    const honey = await food("honey");
    expect(honey).toMatchObject({ sugarRule: "ALL_FREE" });
    expect(honey.freeSugarGrams).toBe(honey.addedSugarGrams);
    for (const figure of [honey.waterActivity, honey.ph].filter(Boolean))
      expect(figure.source.length).toBeGreaterThan(5);
    expect(await food("rice-white-cooked")).toMatchObject({ waterActivity: null });
    expect(["LOW", "MIDDLE", "HIGH"]).toContain(honey.priceBand);
  });

  it("is null for a key that no food has", async () => {
    expect(await food("no-such-food")).toBeNull();
  });
});
