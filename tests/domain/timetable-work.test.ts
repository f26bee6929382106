import { baseSchema, dishSchema, foodSchema, type Base, type Dish } from "../../shared/catalogue.js";
import type { AllergyBrief, ChildBrief, SessionBrief, WeekBrief } from "../../src/domain/brief.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { scheduleSessions } from "../../src/domain/kitchen/timetable.js";
import { baseMinutes, finishLoad, listWork, packMinutesPerBox, type Work } from "../../src/domain/kitchen/work.js";
import type { BatchPlan, BoxPlan, ItemPlan, ReadyUse } from "../../src/domain/week.js";
import { readCredits } from "./reference-rows.js";

const food = (key: string, allergens: string[]) =>
  foodSchema.parse({
    key, name: key, ndb: null, kind: key, group: "GRAIN", origins: ["PLANT"], allergens, packaged: false, nutrients: {},
    sugarRule: "INTACT", freeSugarGrams: 0, addedSugarGrams: 0, refusePercent: 0, densityGramsPerMl: null, keepsChilledDays: null,
    pack: { grams: 500, priceMinor: 100 }, shopSection: "DRY_GOODS",
  }); // prettier-ignore

const base = (key: string, ingredient: string, more: Record<string, unknown>): Base =>
  baseSchema.parse({
    key, name: key === "rice" ? "Rice base" : "Cheese sauce", kind: "GRAIN", ingredients: [{ food: ingredient, grams: 400 }],
    batchGrams: 1000, fixedHandsOnMinutes: 2, perBatchHandsOnMinutes: 3, passiveMinutes: 25, equipment: [{ kind: "RICE_COOKER" }],
    equipmentMinutes: 25, maxBatches: 3, windows: ["EVENING", "MORNING"], keepsChilledDays: 2, keepsFrozenDays: 30,
    storageMl: 1000, steps: ["Rinse the rice.", "Cook it."], ...more,
  }); // prettier-ignore

const dish = (key: string, name: string, bases: unknown[], ingredients: unknown[], steps: unknown[]): Dish =>
  dishSchema.parse({
    key, name, slots: ["MAIN"], bases, ingredients, portion: { kind: "CONTINUOUS", grams: 150, stepGrams: 10 }, steps,
    served: "COLD", goodForHours: 6, cutlery: "NONE", spill: "DRY", volumeMl: 100, starch: "RICE", protein: "NONE",
    colours: [], textures: [], flavours: [], cuisine: "home",
  }); // prettier-ignore

const step = (text: string, fixed: number, perPortion: number, passive: number, more: Record<string, unknown> = {}) => ({
  text, handsOnFixedMinutes: fixed, handsOnPerPortionMinutes: perPortion, passiveMinutes: passive, eveningBefore: false, ...more,
}); // prettier-ignore

const patties = dish("rice-patties", "Rice patties", [{ base: "rice", grams: 120 }], [{ food: "pea", grams: 30 }], [
  step("Shape them.", 2, 1, 0, { eveningBefore: true }),
  step("Bake them.", 1, 0, 12, { equipment: [{ kind: "OVEN" }], coolMinutes: 6 }),
]); // prettier-ignore
const cakes = dish("batter-cakes", "Batter cakes", [], [{ food: "pea", grams: 150 }], [
  step("Fill the moulds and steam them.", 1, 0.5, 10, {
    equipment: [{ kind: "STEAMER" }, { kind: "CAKE_MOULD_SET" }], batchPortions: 2, coolMinutes: 5, heldWhileCooling: true,
  }),
  step("Lift them out.", 0, 0.5, 0),
]); // prettier-ignore
const gratin = dish("gratin", "Gratin", [{ base: "cheese-sauce", grams: 50 }], [{ food: "pea", grams: 100 }], [step("Stir it together.", 1, 1, 0)]); // prettier-ignore

const session = (kind: "EVENING" | "MORNING", date: string): SessionBrief => ({
  key: `${kind === "EVENING" ? "evening" : "morning"}-${date}`, kind, date, startsAt: kind === "EVENING" ? "18:30" : "06:00",
  handsOnMinutes: 90, elapsedMinutes: 120, carers: 1, effort: 1,
}); // prettier-ignore

const child = (id: string, name: string, allergies: AllergyBrief[]): ChildBrief => ({
  id, name, dateOfBirth: "2018-03-01", sex: null, weightKg: null, heightCm: null, activity: "ACTIVE", appetite: 1, diets: [],
  dislikes: [], minutesToEat: 20, allergies, box: { compartments: [], coldSources: 2, insulated: true, flask: false },
  schoolName: "Hill School", days: [],
}); // prettier-ignore

const catalogue = {
  version: "test",
  foods: [food("rice-raw", []), food("cheese", ["MILK"]), food("pea", [])],
  bases: [base("rice", "rice-raw", {}), base("cheese-sauce", "cheese", { equipment: [{ kind: "HOB_BURNER" }], equipmentMinutes: 10, passiveMinutes: 4 })],
  dishes: [patties, cakes, gratin],
  retention: [],
}; // prettier-ignore
const index = indexCatalogue(catalogue);

const brief: WeekBrief = {
  format: "noonpail-brief/1", weekStart: "2026-09-07",
  household: {
    id: "home", name: "Home", currency: "EUR", keepsOut: [], refrigeratorMl: 50_000,
    equipment: [
      { kind: "RICE_COOKER", units: 1 }, { kind: "OVEN", units: 1 }, { kind: "STEAMER", units: 1 },
      { kind: "CAKE_MOULD_SET", units: 1 }, { kind: "HOB_BURNER", units: 4 },
    ],
  },
  sessions: [session("EVENING", "2026-09-06"), session("MORNING", "2026-09-07")],
  children: [child("mina", "Mina", []), child("teo", "Teo", [{ allergen: "MILK", foodKind: null, avoid: "TRACES" }])],
  catalogue, ruleSets: [], choking: [], slotShares: [], credits: readCredits(),
  holding: { chilledMinutes: 300, coldSources: 2, flaskMinutes: 300, ambientMinutes: 120, hotDayAmbientMinutes: 60, hotDayAboveC: 32, source: "test" },
  stock: [], ready: [{ id: "frozen-rice", base: "rice", grams: 300, from: "FREEZER", firstDate: "2026-09-07", lastDate: "2026-09-11" }],
  labels: [], relaxations: [], pins: [], made: [], outOf: [], history: [], stayCloseTo: [], sharing: true,
}; // prettier-ignore

const item = (dishKey: string): ItemPlan => ({
  breakKey: "lunch", slot: "MAIN", position: 0, dish: dishKey, grams: 150, pieces: null, served: "COLD", energyKcal: 0,
  carbohydrateGrams: null, compartment: 0, cuts: [], holding: { case: "CHILLED", minutes: 1, limitMinutes: 2 },
  labelsToRead: [], pinned: false, why: [],
}); // prettier-ignore
const box = (childId: string, leaveAt: string, ...dishes: string[]): BoxPlan => ({
  childId, date: "2026-09-07", leaveAt, coldSources: 2, flask: false, cutlery: [], items: dishes.map(item),
}); // prettier-ignore
const batch = (of: string, sessionKey: string, batches: number, childIds: string[], made = false): BatchPlan => ({
  base: of, session: sessionKey, batches, grams: 1000 * batches, feeds: [{ date: "2026-09-07", childIds, grams: 240 }],
  spareGrams: 1000 * batches - 240, made,
}); // prettier-ignore

function work(options: {
  boxes: BoxPlan[];
  batches?: BatchPlan[];
  evening?: string[];
  readyUses?: ReadyUse[];
  sharing?: boolean;
  labels?: WeekBrief["labels"];
  children?: WeekBrief["children"];
}): Map<string, Work> {
  const { labels = brief.labels, children = brief.children, sharing = true } = options;
  const list = listWork({
    brief: { ...brief, labels, children, sharing },
    index,
    boxes: options.boxes,
    batches: options.batches ?? [],
    readyUses: options.readyUses ?? [],
    eveningFinish: new Set(options.evening ?? []),
  });
  return new Map(list.map((one) => [one.key, one]));
}
const handsOn = (list: Map<string, Work>, sessionKey: string): number =>
  [...list.values()].filter((one) => one.session === sessionKey).reduce((sum, one) => sum + one.handsOnMinutes, 0);

const bothPatties = [box("mina", "07:30", "rice-patties"), box("teo", "07:10", "rice-patties")];

describe("the work of a week", () => {
  it("cooks the base once for both children, then finishes, cools and packs", () => {
    const list = work({ boxes: bothPatties, batches: [batch("rice", "morning-2026-09-07", 1, ["mina", "teo"])] });
    const after = (key: string) => list.get(key)?.after;
    expect([...list.keys()]).toEqual([
      "base:rice@morning-2026-09-07",
      "finish:rice-patties@2026-09-07#1",
      "finish:rice-patties@2026-09-07#2",
      "finish:rice-patties@2026-09-07#2/cool",
      "pack:mina@2026-09-07",
      "pack:teo@2026-09-07",
    ]);
    expect(list.get("base:rice@morning-2026-09-07")?.text).toBe("Rice base, 1 batch: Rinse the rice. Cook it.");
    expect(list.get("finish:rice-patties@2026-09-07#1")).toMatchObject({
      handsOnMinutes: 4,
      childIds: ["mina", "teo"],
    });
    expect(after("finish:rice-patties@2026-09-07#1")).toEqual(["base:rice@morning-2026-09-07"]);
    expect(after("finish:rice-patties@2026-09-07#2")).toEqual(["finish:rice-patties@2026-09-07#1"]);
    expect(after("pack:teo@2026-09-07")).toContain("finish:rice-patties@2026-09-07#2/cool");
    expect(list.get("pack:teo@2026-09-07")).toMatchObject({ mustEndBy: "07:10", handsOnMinutes: 2 });
  });

  it("counts the very minutes that the planner counts", () => {
    const list = work({
      boxes: bothPatties,
      batches: [batch("rice", "evening-2026-09-06", 2, ["mina", "teo"])],
      evening: ["rice-patties@2026-09-07"],
    });
    const [evening, rest, all] = [
      finishLoad(patties, "EVENING"),
      finishLoad(patties, "MORNING_REST"),
      finishLoad(patties, "ALL"),
    ];
    expect(handsOn(list, "evening-2026-09-06")).toBeCloseTo(2 + 2 * 3 + evening.fixed + 2 * evening.perPortion, 9);
    expect(handsOn(list, "morning-2026-09-07")).toBeCloseTo(
      rest.fixed + 2 * rest.perPortion + 2 * packMinutesPerBox(1),
      9,
    );
    expect(evening.fixed + rest.fixed).toBe(all.fixed);
    expect(all).toEqual({ fixed: 3, perPortion: 1, equipment: [{ kind: "OVEN", minutes: 13 }], portionsPerGo: 0 });
  });

  it("cooks every portion on its own when the household does not share", () => {
    const shared = work({ boxes: bothPatties });
    const alone = work({ boxes: bothPatties, sharing: false });
    const each = finishLoad(patties, "ALL");
    expect(handsOn(alone, "morning-2026-09-07") - handsOn(shared, "morning-2026-09-07")).toBeCloseTo(each.fixed, 9);
    expect(alone.get("finish:rice-patties@2026-09-07/teo#1")?.childIds).toEqual(["teo"]);
  });

  it("steams in goes, keeps the mould while the cakes cool in it, and lets the steamer go", () => {
    const list = work({
      boxes: [box("mina", "07:30", "batter-cakes", "batter-cakes"), box("teo", "07:30", "batter-cakes")],
    });
    expect(list.get("finish:batter-cakes@2026-09-07#1.1")).toMatchObject({
      handsOnMinutes: 2,
      equipment: [
        { kind: "STEAMER", units: 1, minutes: 12 },
        { kind: "CAKE_MOULD_SET", units: 1, minutes: 17 },
      ],
    });
    expect(list.get("finish:batter-cakes@2026-09-07#1.2")?.handsOnMinutes).toBe(0.5);
    expect(list.get("finish:batter-cakes@2026-09-07#2")?.after).toEqual([
      "finish:batter-cakes@2026-09-07#1.1/cool",
      "finish:batter-cakes@2026-09-07#1.2/cool",
    ]);
    expect(finishLoad(cakes, "ALL", 3)).toMatchObject({
      portionsPerGo: 2,
      equipment: [
        { kind: "STEAMER", minutes: 12 },
        { kind: "CAKE_MOULD_SET", minutes: 17 },
      ],
    });
  });

  it("cooks two batches in one rice cooker one after the other, in two cookers side by side", () => {
    const rice = base("rice", "rice-raw", {});
    expect(baseMinutes(rice, 2, [{ kind: "RICE_COOKER", units: 1 }])).toEqual({
      handsOn: 8, passive: 50, equipment: [{ kind: "RICE_COOKER", units: 1, minutes: 58 }],
    }); // prettier-ignore
    expect(baseMinutes(rice, 2, [{ kind: "RICE_COOKER", units: 2 }])).toEqual({
      handsOn: 8, passive: 25, equipment: [{ kind: "RICE_COOKER", units: 2, minutes: 33 }],
    }); // prettier-ignore
  });

  it("moves a frozen base to the refrigerator the evening before, and cooks nothing twice", () => {
    const list = work({
      boxes: bothPatties,
      batches: [batch("rice", "evening-2026-09-06", 1, ["mina"], true)],
      readyUses: [{ readyId: "frozen-rice", base: "rice", date: "2026-09-07", grams: 240 }],
    });
    expect([...list.values()].filter((one) => one.kind === "BASE")).toEqual([]);
    expect(list.get("defrost:frozen-rice@2026-09-07")).toMatchObject({
      session: "evening-2026-09-06", kind: "DEFROST", handsOnMinutes: 0.5, childIds: ["mina", "teo"],
      text: "Move 240 g of Rice base from the freezer to the refrigerator.",
    }); // prettier-ignore
  });

  it("names an allergen only where a child of this household avoids it", () => {
    const list = work({
      boxes: [box("mina", "07:30", "gratin"), box("teo", "07:30", "batter-cakes")],
      batches: [batch("cheese-sauce", "morning-2026-09-07", 1, ["mina"])],
    });
    const handles = (key: string) => list.get(key)?.handles;
    expect(handles("base:cheese-sauce@morning-2026-09-07")).toEqual(["MILK"]);
    expect(handles("finish:gratin@2026-09-07#1")).toEqual(["MILK"]);
    expect(handles("pack:mina@2026-09-07")).toEqual(["MILK"]);
    expect(handles("pack:teo@2026-09-07")).toEqual([]);
    expect(handles("finish:batter-cakes@2026-09-07#1")).toEqual([]);
  });

  it("names what a label on record says of a food, and the one food a child avoids", () => {
    const list = work({
      boxes: [box("mina", "07:30", "rice-patties"), box("teo", "07:30", "batter-cakes")],
      batches: [batch("rice", "morning-2026-09-07", 1, ["mina"])],
      labels: [{ food: "rice-raw", contains: ["SOYA"], mayContain: ["MILK"], readOn: "2026-09-01" }],
      children: [...brief.children, child("ada", "Ada", [{ allergen: null, foodKind: "pea", avoid: "TRACES" }])],
    });
    const handles = (key: string) => list.get(key)?.handles;
    expect(handles("base:rice@morning-2026-09-07")).toEqual(["MILK"]);
    expect(handles("finish:rice-patties@2026-09-07#1")).toEqual(["MILK", "pea"]);
    expect(handles("pack:teo@2026-09-07")).toEqual(["pea"]);
  });

  it("lets nothing cool that goes hot into the flask, and lets the cold portion of the same dish cool", () => {
    const hot = (childId: string): BoxPlan => {
      const cold = box(childId, "07:30", "rice-patties");
      const holding = { case: "FLASK", minutes: 1, limitMinutes: 2 } as const;
      return { ...cold, flask: true, items: cold.items.map((row) => ({ ...row, served: "WARM", holding })) };
    };
    const alone = work({ boxes: [hot("mina")] });
    expect([...alone.values()].filter((one) => one.kind === "COOL")).toEqual([]);
    expect(alone.get("pack:mina@2026-09-07")?.after).toEqual(["finish:rice-patties@2026-09-07#2"]);
    const both = work({ boxes: [hot("mina"), box("teo", "07:30", "rice-patties")] });
    expect(both.get("pack:mina@2026-09-07")?.after).toEqual(["finish:rice-patties@2026-09-07#2"]);
    expect(both.get("pack:teo@2026-09-07")?.after).toContain("finish:rice-patties@2026-09-07#2/cool");
  });

  it("fits on the clock: cheese after the safe cakes, every box before its child leaves", () => {
    const list = work({
      boxes: [box("mina", "07:30", "gratin", "rice-patties"), box("teo", "07:10", "batter-cakes", "rice-patties")],
      batches: [
        batch("cheese-sauce", "morning-2026-09-07", 1, ["mina"]),
        batch("rice", "evening-2026-09-06", 1, ["mina", "teo"]),
      ],
      evening: ["rice-patties@2026-09-07"],
    });
    const result = scheduleSessions({
      sessions: brief.sessions,
      equipment: brief.household.equipment,
      work: [...list.values()],
    });
    if (!result.ok) throw new Error(JSON.stringify(result.error));
    const at = (key: string) => result.value.tasks.find((task) => task.key === key);
    expect((at("pack:teo@2026-09-07")?.endsAt ?? "") <= "07:10").toBe(true);
    expect((at("pack:mina@2026-09-07")?.endsAt ?? "") <= "07:30").toBe(true);
    expect(
      (at("base:cheese-sauce@morning-2026-09-07")?.startsAt ?? "") >=
        (at("finish:batter-cakes@2026-09-07#2")?.handsFreeAt ?? "99"),
    ).toBe(true);
    expect(at("finish:rice-patties@2026-09-07#1")?.session).toBe("evening-2026-09-06");
  });
});
