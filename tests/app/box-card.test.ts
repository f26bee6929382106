import { boxCard } from "../../src/app/box-card.js";
import { CARD_COLUMNS, sayBoxCard } from "../../src/app/say-box-card.js";
import type { HouseholdRow } from "../../src/database/household.js";
import type { BoxItemRow, BoxRow, PlanRow } from "../../src/database/week.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import type { Caution } from "../../src/domain/week.js";
import { dishSchema } from "../../shared/catalogue.js";
import { sampleFood } from "../support/shop-foods.js";

const date = "2027-01-11";
const dish = (key: string, name: string, pieces: boolean) =>
  dishSchema.parse({
    key, name, slots: ["MAIN"], bases: [], ingredients: [{ food: "grape", grams: 100 }],
    portion: pieces ? { kind: "PIECES", gramsPerPiece: 25, pieces: 4, stepPieces: 1, pieceName: "half" } : { kind: "CONTINUOUS", grams: 100, stepGrams: 10 },
    steps: [{ text: "Put it together.", handsOnFixedMinutes: 1, handsOnPerPortionMinutes: 1, passiveMinutes: 0, eveningBefore: false }],
    served: "EITHER", goodForHours: 6, cutlery: "NONE", spill: "DRY", volumeMl: 100, starch: "NONE", protein: "NONE",
    colours: [], textures: [], flavours: [], cuisine: "home",
  }); // prettier-ignore
const index = indexCatalogue({
  version: "test",
  retention: [],
  foods: [sampleFood("grape", { name: "Grapes, raw" })],
  bases: [],
  dishes: [dish("grapes", "Grapes", true), dish("stew", "Chickpea stew", false)],
});
const names = { index, child: () => "Pia" };

const item = (breakKey: string, key: string, compartment: number, more: Partial<BoxItemRow> = {}): BoxItemRow => ({
  id: `${breakKey}/${key}`, boxId: "box", childId: "pia", date, breakKey, slot: "MAIN", place: 0, dish: key, grams: 100, pieces: null,
  served: "COLD", energyKcal: 80, carbohydrateGrams: 12.4, allergens: [], cuts: [], holdingCase: "CHILLED", pinned: false, cameBack: null, planId: "plan",
  note: { reasons: [], holdingMinutes: 200, holdingLimitMinutes: 240, holdingForecast: null, compartment, labelsToRead: [] },
  ...more,
}); // prettier-ignore
const grapes = item("lunch", "grapes", 1, {
  grams: 50,
  pieces: 2,
  cuts: [{ food: "grape", cut: "Quarter lengthways.", source: "a published table; another" }],
  note: { reasons: [], holdingMinutes: 200, holdingLimitMinutes: 240, holdingForecast: null, compartment: 1, labelsToRead: ["grape"] },
}); // prettier-ignore
const stew = item("lunch", "stew", -1, { served: "WARM", holdingCase: "FLASK" });
const early = item("snack", "grapes", 1, { grams: 25, pieces: 1 });

const box = (more: Partial<BoxRow> = {}): BoxRow => ({
  id: "box", childId: "pia", date, state: "PLANNED", packedAt: null, blocks: [], items: [stew, grapes, early],
  packing: { leaveAt: "08:15", coldSources: 2, flask: true, cutlery: ["SPOON"], packedBy: null },
  ...more,
}); // prettier-ignore
const at = { childId: "pia", date };
const cautions: Caution[] = [
  { kind: "PREHEAT_FLASK", ...at, dish: "stew" },
  { kind: "KEEP_COLD", ...at, coldSources: 2 },
  { kind: "KEEP_COLD", ...at, date: "2027-01-12", coldSources: 2 },
  { kind: "PREHEAT_FLASK", childId: "theo", date, dish: "stew" },
  { kind: "ADVICE_NOT_MET", childId: "pia", date: null, ruleSet: "school", rule: "fish" },
  { kind: "CUT_FOR_AGE", ...at, dish: "grapes", cut: "Quarter lengthways." },
  { kind: "GENERAL", about: "CHOKING" },
];
const task = (childIds: string[], forDates: string[], startsAt: string) => ({
  kind: "PACK", session: `morning-${forDates[0]}`, childIds, forDates, startsAt, endsAt: "07:30", carer: 1,
}); // prettier-ignore
const plan = {
  cautions,
  tasks: [task(["theo"], [date], "07:00"), task(["pia"], ["2027-01-12"], "07:10"), task(["pia"], [date], "07:20")],
} as unknown as PlanRow;
const household = {
  children: [
    {
      id: "pia",
      enrolments: [{ schoolId: "s", schoolClassId: "c", fromDate: "2026-09-01", untilDate: null }],
      boxKit: { compartments: [{ ml: 450, leakProof: true }, { ml: 200, leakProof: false }] },
    },
  ],
  schools: [
    { classes: [{ id: "c", breaks: [{ key: "lunch", startsAt: "11:25" }, { key: "snack", startsAt: "10:00" }] }] },
  ],
} as unknown as HouseholdRow; // prettier-ignore

const cardOf = (row: BoxRow) => {
  const card = boxCard(row, plan, household);
  if (card === null) throw new Error("no card");
  return card;
};

describe("the card of a box", () => {
  it("puts what lies together together, the earlier break first and the flask last", () => {
    expect(cardOf(box()).parts).toEqual([
      { compartment: 2, ml: 200, leakProof: false, items: [early, grapes] },
      { compartment: null, ml: null, leakProof: true, items: [stew] },
    ]);
  });

  it("has its own packing time and its own cautions, no other box's", () => {
    const card = cardOf(box());
    expect(card.pack).toEqual({ session: `morning-${date}`, startsAt: "07:20", endsAt: "07:30", carer: 2 });
    expect(card.cautions).toEqual(cautions.slice(0, 2));
    expect(card.labels).toEqual(["grape"]);
  });

  it("adds carbohydrate up to a tenth, and not at all when one figure is missing", () => {
    expect(cardOf(box()).carbohydrateGrams).toBe(37.2);
    const gap = box({ items: [stew, { ...grapes, carbohydrateGrams: null }] });
    expect(cardOf(gap).carbohydrateGrams).toBeNull();
    const text = sayBoxCard(cardOf(gap), names).join("\n");
    expect(text).toContain("carb ? g");
    expect(text).toContain("carbohydrate not known");
  });

  it("has nothing to pack when it is packed, and warns of a blocked box", () => {
    expect(cardOf(box({ state: "PACKED" })).pack).toBeNull();
    expect(sayBoxCard(cardOf(box({ state: "BLOCKED" })), names)[1]).toContain("BLOCKED");
  });

  it("claims no size for a compartment that is not on record", () => {
    const stray = { ...grapes, note: { ...grapes.note!, compartment: 4 } };
    expect(cardOf(box({ items: [stray] })).parts).toMatchObject([{ compartment: 5, ml: null, leakProof: false }]);
  });

  it("is nothing for a home that does not pack it", () => {
    expect(boxCard(box({ packing: null }), plan, household)).toBeNull();
  });

  it("reads like this on a phone", () => {
    const lines = sayBoxCard(cardOf(box()), names);
    expect(lines).toEqual([
      "PIA, Mon 11 Jan, leaves 08:15",
      "Pack it 07:20-07:30, carer 2.",
      "COMPARTMENT 2, 200 ml",
      "  10:00 Grapes: 1 half (25 g), carb 12 g",
      "  11:25 Grapes: 2 halves (50 g), carb 12 g",
      "        CUT Grapes, raw: Quarter lengthways.",
      "FLASK",
      "  11:25 Chickpea stew, warm: 100 g, carb 12 g",
      "WITH IT 2 frozen cold sources, spoon",
      "IN ALL  240 kcal, carbohydrate 37 g",
      "LABELS  read before packing: Grapes, raw",
      "HOLD    eaten 200 min after leaving, at most 240",
      "        (flask)",
      "! Chickpea stew travels hot: fill the flask with",
      "  boiling water, let it stand, empty it, fill it",
      "  with food heated to 74 °C or more.",
      "! Insulated bag with 2 frozen cold sources; the",
      "  box stays in the refrigerator until it leaves.",
      "Cuts by: a published table; another.",
    ]);
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(CARD_COLUMNS);
  });
});
