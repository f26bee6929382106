import { baseSchema, dishSchema } from "../../shared/catalogue.js";
import { indexCatalogue, type CatalogueIndex } from "../../src/domain/catalogue/derive.js";
import { shop } from "../../src/domain/shopping/shopping.js";
import type { BatchPlan, BoxPlan, ItemPlan } from "../../src/domain/week.js";
import { sampleFood as food } from "../support/shop-foods.js";

const foods = [
  food("banana", { refusePercent: 36, pack: { grams: 1000, priceMinor: 180 } }),
  food("rice-raw", { shopSection: "DRY_GOODS", pack: { grams: 500, priceMinor: 150 } }),
  food("rice-cooked", {
    boughtAs: { food: "rice-raw", gramsPerGram: 0.36 },
    refusePercent: 10,
    shopSection: "DRY_GOODS",
  }),
  food("tahini", { packaged: true, shopSection: "TINS_JARS", pack: { grams: 300, priceMinor: 399 } }),
  food("water", { group: "WATER" }),
  food("peas", { shopSection: "FROZEN", pack: { grams: 400, priceMinor: 99 } }),
];

const step = {
  text: "Put it together.",
  handsOnFixedMinutes: 1,
  handsOnPerPortionMinutes: 1,
  passiveMinutes: 0,
  eveningBefore: false,
};
const dish = (key: string, grams: number, bases: unknown[], ingredients: unknown[]) =>
  dishSchema.parse({
    key, name: key, slots: ["MAIN"], bases, ingredients, portion: { kind: "CONTINUOUS", grams, stepGrams: 10 }, steps: [step],
    served: "COLD", goodForHours: 6, cutlery: "NONE", spill: "DRY", volumeMl: 100, starch: "NONE", protein: "NONE",
    colours: [], textures: [], flavours: [], cuisine: "home",
  }); // prettier-ignore

const index: CatalogueIndex = indexCatalogue({
  version: "test",
  retention: [],
  foods,
  bases: [
    baseSchema.parse({
      key: "rice-base", name: "Rice base", kind: "GRAIN", ingredients: [{ food: "rice-raw", grams: 360 }, { food: "water", grams: 640 }],
      batchGrams: 1000, fixedHandsOnMinutes: 2, perBatchHandsOnMinutes: 2, passiveMinutes: 25, equipment: [], equipmentMinutes: 0,
      maxBatches: 3, windows: ["EVENING"], keepsChilledDays: 2, keepsFrozenDays: null, storageMl: 1500, steps: ["Rinse and cook it."],
    }), // prettier-ignore
  ],
  dishes: [
    dish("banana-plain", 64, [], [{ food: "banana", grams: 64 }]),
    dish(
      "rice-and-peas",
      200,
      [{ base: "rice-base", grams: 150 }],
      [
        { food: "peas", grams: 40 },
        { food: "tahini", grams: 10 },
      ],
    ),
    dish("rice-salad", 100, [], [{ food: "rice-cooked", grams: 100 }]),
  ],
});

const item = (dishKey: string, grams: number): ItemPlan => ({
  breakKey: "lunch", slot: "MAIN", position: 0, dish: dishKey, grams, pieces: null, served: "COLD", energyKcal: 0,
  carbohydrateGrams: null, compartment: 0, cuts: [], holding: { case: "CHILLED", minutes: 1, limitMinutes: 2 },
  labelsToRead: [], pinned: false, why: [],
}); // prettier-ignore
const box = (...items: ItemPlan[]): BoxPlan => ({
  childId: "mina", date: "2026-09-07", leaveAt: "07:40", coldSources: 2, flask: false, cutlery: [], items,
}); // prettier-ignore
const batch = (batches: number, made: boolean): BatchPlan => ({
  base: "rice-base", session: "evening-2026-09-06", batches, grams: 1000 * batches, feeds: [], spareGrams: 1000 * batches, made,
}); // prettier-ignore

const buy = (boxes: BoxPlan[], batches: BatchPlan[] = [], stock: { food: string; grams: number }[] = [], labels: string[] = []) =>
  shop({
    index, boxes, batches, stock,
    labels: labels.map((key) => ({ food: key, contains: [], mayContain: [], readOn: "2026-09-01" })),
  }); // prettier-ignore

describe("the shopping list", () => {
  // USDA Standard Reference refuse share of a banana (peel): 36 %. 64 g edible / 0.64 = 100 g as sold.
  it("buys the peel with the banana", () => {
    expect(buy([box(item("banana-plain", 64)), box(item("banana-plain", 96))])).toEqual([
      {
        food: "banana", section: "PRODUCE", neededGrams: 250, fromStockGrams: 0, packs: 1, packGrams: 1000, spareGrams: 750,
        costMinor: 180, readLabel: false, stockGrams: 0,
      },
    ]); // prettier-ignore
  });

  it("buys cooked rice as raw rice, without taking refuse off twice", () => {
    expect(buy([box(item("rice-salad", 250))])).toMatchObject([
      { food: "rice-raw", neededGrams: 90, packs: 1, spareGrams: 410 },
    ]);
  });

  it("buys a base by its batches, not by the portions, and no water", () => {
    const lines = buy([box(item("rice-and-peas", 100))], [batch(2, false)]);
    expect(lines.map((line) => [line.food, line.neededGrams, line.packs])).toEqual([
      ["rice-raw", 720, 2],
      ["tahini", 5, 1],
      ["peas", 20, 1],
    ]);
  });

  it("buys nothing for a batch that is cooked already", () => {
    expect(buy([], [batch(2, true)])).toEqual([]);
  });

  it("takes what is in the cupboard first and still lists the food", () => {
    const [line] = buy([], [batch(2, false)], [{ food: "rice-raw", grams: 220 }]);
    expect(line).toMatchObject({ neededGrams: 720, fromStockGrams: 220, packs: 1, spareGrams: 0, costMinor: 150 });
    const [covered] = buy([], [batch(1, false)], [{ food: "rice-raw", grams: 900 }]);
    expect(covered).toMatchObject({ neededGrams: 360, fromStockGrams: 360, packs: 0, spareGrams: 0, costMinor: 0 });
  });

  it("asks for the label of packaged food until it is on record and says what a child needs to know", () => {
    const readLabel = (labels: string[]): boolean[] =>
      buy([box(item("rice-and-peas", 200))], [], [], labels).map((line) => line.readLabel);
    expect(readLabel([])).toEqual([true, false]);
    expect(readLabel(["tahini"])).toEqual([false, false]);
    const asking = { ...item("rice-and-peas", 200), labelsToRead: ["tahini"] };
    expect(buy([box(asking)], [], [], ["tahini"]).map((line) => line.readLabel)).toEqual([true, false]);
  });

  it("walks the shop section by section", () => {
    const lines = buy([box(item("rice-and-peas", 200), item("rice-salad", 100), item("banana-plain", 64))]);
    expect(lines.map((line) => line.section)).toEqual(["PRODUCE", "DRY_GOODS", "TINS_JARS", "FROZEN"]);
  });

  it("refuses a dish or base the catalogue does not have", () => {
    expect(() => buy([box(item("ghost", 100))])).toThrow(/ghost/);
    expect(() => buy([], [{ ...batch(1, false), base: "ghost" }])).toThrow(/ghost/);
  });

  it("always buys enough, never a pack too many, whatever the week and the cupboard", () => {
    let state = 20260907;
    const pick = (below: number): number => (state = (state * 48271) % 2147483647) % below;
    const dishes = ["banana-plain", "rice-and-peas", "rice-salad"];
    for (let week = 0; week < 300; week += 1) {
      const boxes = Array.from({ length: 1 + pick(15) }, () => box(item(dishes[pick(3)] ?? "", 10 + pick(400))));
      const batches = [batch(1 + pick(3), pick(3) === 0)];
      const stock = foods.filter(() => pick(2) === 0).map((row) => ({ food: row.key, grams: pick(1500) }));
      const total = (dishKey: string): number =>
        boxes.flatMap((one) => one.items).filter((one) => one.dish === dishKey).reduce((sum, one) => sum + one.grams, 0); // prettier-ignore
      const edible: Record<string, number> = {
        banana: total("banana-plain") / 0.64,
        "rice-raw": total("rice-salad") * 0.36 + (batches[0]?.made === false ? 360 * batches[0].batches : 0),
        tahini: total("rice-and-peas") / 20,
        peas: total("rice-and-peas") / 5,
      };
      const lines = buy(boxes, batches, stock);
      expect(lines.map((line) => line.food).sort()).toEqual(
        Object.keys(edible)
          .filter((key) => (edible[key] ?? 0) > 0)
          .sort(),
      );
      for (const line of lines) {
        const needed = edible[line.food] ?? 0;
        expect(line.neededGrams).toBeGreaterThanOrEqual(needed - 0.01);
        expect(line.neededGrams).toBeLessThan(needed + 1);
        expect(line.fromStockGrams).toBeLessThanOrEqual(stock.find((row) => row.food === line.food)?.grams ?? 0);
        expect(line.fromStockGrams + line.packs * line.packGrams).toBe(line.neededGrams + line.spareGrams);
        expect(line.spareGrams).toBeGreaterThanOrEqual(0);
        expect(line.packs === 0 || line.spareGrams < line.packGrams).toBe(true);
        expect(Object.values(line).filter((figure) => typeof figure === "number" && !Number.isInteger(figure))).toEqual(
          [],
        );
      }
    }
  });
});
