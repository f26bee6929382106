import { localOf, useServedApp, type Household } from "../support/served-app.js";
import { DAY, STOCK } from "./documents.js";

const served = useServedApp({ steps: 25_000 });

interface Item {
  readonly breakKey: string;
  readonly grams: number;
  readonly pieces: number | null;
  readonly carbohydrateGrams: number | null;
  readonly energyKcal: number;
  readonly dish: { readonly spill: string; readonly volumeMl: number };
  readonly cuts: readonly { readonly cut: string; readonly source: string }[];
  readonly labelsToRead: readonly { readonly key: string }[];
}
interface Card {
  readonly leaveAt: string;
  readonly packing: {
    readonly session: string;
    readonly startsAt: string;
    readonly endsAt: string;
    readonly carer: number;
  };
  readonly parts: readonly {
    readonly compartment: number | null;
    readonly ml: number | null;
    readonly leakProof: boolean;
    readonly items: readonly Item[];
  }[];
  readonly energyKcal: number;
  readonly carbohydrateGrams: number | null;
  readonly coldSources: number;
  readonly labels: readonly { readonly key: string }[];
  readonly cautions: readonly string[];
  readonly lines: readonly string[];
}
interface Box {
  readonly id: string;
  readonly date: string;
  readonly child: { readonly name: string };
  readonly items: readonly Item[];
  readonly card: Card;
}
interface Line {
  readonly food: { readonly key: string };
  readonly section: string;
  readonly packs: number;
  readonly neededGrams: number;
  readonly fromStockGrams: number;
  readonly spareGrams: number;
  readonly costMinor: number;
  readonly cupboardAfterGrams: number;
  readonly spareUses: readonly {
    readonly kind: string;
    readonly keptIn: string | null;
    readonly untilDate: string | null;
    readonly text: string;
    readonly dishes: readonly {
      readonly dish: { readonly key: string };
      readonly children: readonly { readonly name: string }[];
    }[];
  }[];
}

const ITEM =
  "breakKey grams pieces carbohydrateGrams energyKcal dish { spill volumeMl } cuts { cut source } labelsToRead { key }";
const CARD = `card { leaveAt packing { session startsAt endsAt carer } parts { compartment ml leakProof items { ${ITEM} } }
  energyKcal carbohydrateGrams coldSources labels { key } cautions lines }`;
const CARDS = `query Cards($id: ID!, $day: LocalDate!) { week(householdId: $id, date: $day) { plan { boxes { id date child { name } items { ${ITEM} } ${CARD} } } } }`;
const LIST = `query List($id: ID!, $day: LocalDate!) { week(householdId: $id, date: $day) { plan {
  estimatedCost { minor currency } wishes { costMinor } readyUses { base { key } date grams }
  shopping { food { key } section packs neededGrams fromStockGrams spareGrams costMinor cupboardAfterGrams
    spareUses { kind keptIn untilDate days source text dishes { dish { key } children { name } } } } } } }`;

let home: Household;
let boxes: readonly Box[];
beforeAll(async () => {
  home = await served
    .household()
    .child({ allergies: [{ allergen: "TREE_NUTS" }] })
    .child({ name: "Cleo", dateOfBirth: "2022-11-30", flask: false }, "reception")
    .planned(DAY)
    .found();
  boxes = (await served.ask<{ week: { plan: { boxes: Box[] } } }>(home.coordinator, CARDS, { id: home.id, day: DAY }))
    .week.plan.boxes;
});

describe("a box card", () => {
  it("says where everything in the box lies, and every item once", () => {
    expect(boxes.length).toBeGreaterThan(5);
    for (const { items, card } of boxes) {
      const packed = card.parts.flatMap((part) => part.items);
      expect(packed).toHaveLength(items.length);
      expect(packed).toEqual(expect.arrayContaining([...items]));
      for (const { compartment, ml, leakProof, items: inside } of card.parts) {
        if (compartment === null) continue;
        const spills = inside.map(({ dish }) => dish.spill);
        expect(spills.includes("WET") && !leakProof).toBe(false);
        expect(spills.includes("WET") && spills.includes("DRY")).toBe(false);
        expect(ml).toBeGreaterThanOrEqual(250);
      }
    }
  });

  it("says when the box is packed, by whom, and by when it has to be ready", () => {
    for (const { date, card } of boxes) {
      expect(card.packing).toMatchObject({ session: `morning-${date}` });
      expect(card.packing.carer).toBeGreaterThanOrEqual(1);
      expect(card.packing.startsAt < card.packing.endsAt && card.packing.endsAt <= card.leaveAt).toBe(true);
    }
  });

  it("adds up carbohydrate over the box, and does not when a figure is missing", () => {
    for (const { items, card } of boxes) {
      const figures = items.map(({ carbohydrateGrams }) => carbohydrateGrams);
      const sum = figures.reduce<number>((total, figure) => total + (figure ?? 0), 0);
      if (figures.includes(null)) expect(card.carbohydrateGrams).toBeNull();
      else expect(card.carbohydrateGrams).toBeCloseTo(sum, 5);
    }
  });

  it("names the labels, the cuts with their source and the cautions of this box and of no other", () => {
    const cuts = boxes.flatMap(({ items, card }) =>
      items.flatMap((item) => item.cuts.map((cut) => ({ ...cut, lines: card.lines.join(" ").replace(/\s+/g, " ") }))),
    );
    for (const { cut, source, lines } of cuts) {
      expect(lines).toContain(cut.replace(/\.$/, ""));
      for (const part of source.split("; ")) expect(lines).toContain(part);
    }
    for (const { items, card, child } of boxes) {
      const labels = [...new Set(items.flatMap((item) => item.labelsToRead.map(({ key }) => key)))].sort();
      expect(card.labels.map(({ key }) => key)).toEqual(labels);
      if (child.name === "Cleo") expect(labels).toEqual([]);
      const cold = card.cautions.filter((text) => text.includes("frozen cold sources"));
      expect(cold).toHaveLength(card.coldSources > 0 ? 1 : 0);
      expect(card.cautions.length).toBeLessThanOrEqual(1 + items.length * 2);
    }
  });

  it("fits a phone held upright", () => {
    for (const { card } of boxes) {
      expect(Math.max(...card.lines.map((line) => line.length))).toBeLessThanOrEqual(48);
      expect(card.lines[0]).toContain(card.leaveAt);
      const text = card.lines.join(" ").replace(/\s+/g, " ");
      expect(text).toContain(`Pack it ${card.packing.startsAt}-${card.packing.endsAt}, carer ${card.packing.carer}.`);
      for (const { pieces, grams } of card.parts.flatMap(({ items }) => items))
        expect(text).toContain(pieces === null ? `: ${Math.round(grams)} g` : `(${Math.round(grams)} g)`);
    }
  });

  it("costs one statement more for the whole week, whichever way the boxes are reached", async () => {
    const statements = async (query: string, variables: Record<string, unknown>) => {
      const answer = await served.inProcess.run(home.coordinator, query, variables);
      expect(answer.errors).toEqual([]);
      return answer.statements;
    };
    // BEGIN, the person, the week, the household.
    expect(await statements(CARDS, { id: home.id, day: DAY })).toBe(4);
    const byChild = `query Mine($id: ID!) { household(id: $id) { children { boxes(from: "${DAY}", to: "2027-01-15") { id ${CARD} } } } }`;
    const one = await served.inProcess.run(home.coordinator, byChild, { id: home.id });
    const cards = one.data as { household: { children: { boxes: { id: string; card: Card }[] }[] } };
    const seen = cards.household.children.flatMap((child) => child.boxes);
    expect(new Map(seen.map(({ id, card }) => [id, card]))).toEqual(new Map(boxes.map(({ id, card }) => [id, card])));
    // BEGIN, the person, the household, boxes of each of two children, the week once.
    expect(one.statements).toBe(6);
  });

  it("is not for the child's other home", async () => {
    const there = await served.household().found();
    const { addHome, owner } = served.inProcess.database;
    await addHome(localOf(home.children[0]!), localOf(there.id));
    await owner`update residence set since = '2027-06-01' where household_id = ${localOf(there.id)}`;
    const { household } = await served.ask<{
      household: { children: { boxes: { card: null }[] }[] };
    }>(
      there.coordinator,
      `query Theirs($id: ID!) { household(id: $id) { children { boxes(from: "${DAY}", to: "2027-01-15") { ${CARD} } } } }`,
      { id: there.id },
    );
    const seen = household.children.flatMap((child) => child.boxes);
    expect(seen.length).toBeGreaterThan(0);
    expect(seen.every(({ card }) => card === null)).toBe(true);
  });
});

describe("the shopping list", () => {
  const list = async () =>
    (
      await served.ask<{
        week: {
          plan: { estimatedCost: { minor: number; currency: string }; wishes: { costMinor: number }; shopping: Line[] };
        };
      }>(home.coordinator, LIST, { id: home.id, day: DAY })
    ).week.plan;

  it("adds up to an estimate in the household's currency", async () => {
    const { estimatedCost, wishes, shopping } = await list();
    expect(estimatedCost).toEqual({
      minor: shopping.reduce((sum, line) => sum + line.costMinor, 0),
      currency: "GBP",
    });
    expect(wishes.costMinor).toBe(estimatedCost.minor);
  });

  it("is walked section by section, fresh things first", async () => {
    const walk = ["PRODUCE", "CHILLED", "MEAT_FISH", "BAKERY", "DRY_GOODS", "TINS_JARS", "FROZEN", "SPICES_OILS"];
    const places = (await list()).shopping.map(({ section }) => walk.indexOf(section));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(new Set(places).size).toBeGreaterThan(3);
  });

  it("says what every larger spare is good for, and what keeps is stock for the next week", async () => {
    const { shopping } = await list();
    for (const { spareGrams, spareUses } of shopping) {
      expect(spareUses.length > 0).toBe(spareGrams >= 10);
      for (const { text } of spareUses) expect(text).not.toMatch(/undefined|null/);
    }
    const kept = shopping.filter(({ spareUses }) => spareUses.some(({ kind }) => kind === "KEEPS_FOR_NEXT_WEEK"));
    expect(kept.length).toBeGreaterThan(0);
    for (const line of shopping) expect(line.cupboardAfterGrams).toBe(kept.includes(line) ? line.spareGrams : 0);
    const flowing = shopping.flatMap(({ spareUses }) => spareUses.flatMap(({ dishes }) => dishes));
    expect(flowing.every(({ children }) => children.length > 0)).toBe(true);

    // The cupboard filled with it, the next week buys less.
    const nextDay = "2027-01-18";
    const next = async () => {
      expect((await home.plan(nextDay)).__typename).toBe("WeekPayload");
      const { week } = await served.ask<{ week: { plan: { shopping: Line[] } } }>(home.coordinator, LIST, {
        id: home.id,
        day: nextDay,
      });
      return week.plan.shopping;
    };
    const entries = shopping.map(({ food, cupboardAfterGrams }) => ({ food: food.key, grams: cupboardAfterGrams }));
    for (const attempt of [1, 2])
      expect([attempt, (await home.change(STOCK, { entries })).__typename]).toEqual([attempt, "KitchenPayload"]);
    const drawn = (await next()).filter(({ fromStockGrams }) => fromStockGrams > 0);
    expect(drawn.length).toBeGreaterThan(0);
    for (const { food, fromStockGrams } of drawn)
      expect(fromStockGrams).toBeLessThanOrEqual(entries.find((entry) => entry.food === food.key)?.grams ?? 0);
  });
});
