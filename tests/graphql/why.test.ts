import { startPlannerPool } from "../../src/jobs/planner-pool.js";
import { threeChildren } from "../support/demo-brief.js";
import { localOf, useServedApp, type Household, type WeekSeen } from "../support/served-app.js";
import { DAY, PREP } from "./documents.js";

/** With the planner's threads, as in production. */
const served = useServedApp({ pool: true, steps: 25_000 });
/** A week with a morning in it that is given no time to pack in. */
const SHORT_DAY = "2027-01-18";

const PRICE = `price { handsOnMinutes costMinor spareBaseGrams nutrientShortfallPercent refusalPoints monotonyPoints objectivePoints
  changedItems changedBoxes { child { name } date } text }`;
const CLASH = "clash { proof irreducible members { kind fixed text date session child { name } } }";
const PRICES = `query Prices($id: ID!, $first: Int!) { node(id: $id) { ... on BoxItem { dish { key } pricedAlternatives(first: $first) { dish { key } grams pieces ${PRICE} } } } }`;
const DISH = `query Dish($home: ID!, $child: ID!, $date: LocalDate!, $break: String!, $slot: Slot!, $place: Int!, $dish: String!) {
  priceOfDish(householdId: $home, childId: $child, date: $date, breakKey: $break, slot: $slot, place: $place, dish: $dish) {
    __typename ... on UserError { message } ... on PricedAlternative { dish { key } grams ${PRICE} }
    ... on DishNotOffered { kind rule source } ... on NoWeekWithDish { ${CLASH} }
    ... on DishUnknown { nearest } ... on InvalidInput { issues { field problem fix } } ... on OutsideTerm { nextSchoolDay } } }`;
const PLAN = `mutation Plan($input: PlanWeekInput!) { planWeek(input: $input) { __typename ... on WeekInfeasible { message conflicts { kind }
  ${CLASH} waysOut { changes { kind text date child { name } } wishes { handsOnMinutes costMinor objectivePoints } } } } }`;

let home: Household;
let week: WeekSeen;
beforeAll(async () => {
  home = await served
    .household()
    .child({ name: "Ari", allergies: [{ allergen: "MILK" }] })
    .carer("OBSERVER")
    .planned(DAY)
    .found();
  week = (await home.week(DAY))!;
});
const itemIn = (slot: string) => week.plan.boxes[0]!.items.find((item) => item.slot === slot)!;

interface Priced {
  readonly dish: { readonly key: string };
  readonly grams: number;
  readonly price: Record<string, unknown> & { readonly objectivePoints: number; readonly text: string };
}
async function priced(person: string, id: string, first = 2): Promise<readonly Priced[] | null> {
  const { node } = await served.ask<{ node: { pricedAlternatives: readonly Priced[] | null } | null }>(person, PRICES, {
    id,
    first,
  });
  return node?.pricedAlternatives ?? null;
}
async function priceOf(person: string, about: Record<string, unknown>): Promise<any> {
  const main = itemIn("MAIN");
  const variables = {
    home: home.id,
    child: home.children[0],
    date: week.plan.boxes[0]!.date,
    break: main.breakKey,
    slot: "MAIN",
    place: 0,
    dish: main.dish.key,
    ...about,
  };
  return (await served.ask<{ priceOfDish: unknown }>(person, DISH, variables)).priceOfDish;
}

describe("what another dish would cost", () => {
  it("is told for the best of them, in minutes, money, leftovers and needs, the cheapest first", async () => {
    const found = (await priced(home.coordinator, itemIn("MAIN").id))!;
    expect(found).toHaveLength(2);
    for (const { dish, grams, price } of found) {
      expect(dish.key).not.toBe(itemIn("MAIN").dish.key);
      expect(grams).toBeGreaterThan(0);
      expect(price["changedItems"]).toBeGreaterThanOrEqual(1);
      expect(price["changedBoxes"]).toContainEqual({ child: { name: "Ari" }, date: week.plan.boxes[0]!.date });
      expect(price.text).toMatch(/^The week would /);
    }
    expect(found[0]!.price.objectivePoints).toBeLessThanOrEqual(found[1]!.price.objectivePoints);
  });

  it("is the same for a dish asked for by name, and nothing for the one that is there", async () => {
    const [first] = (await priced(home.coordinator, itemIn("MAIN").id, 1))!;
    const asked = await priceOf(home.coordinator, { dish: first!.dish.key });
    expect(asked).toEqual({ __typename: "PricedAlternative", ...first, pieces: undefined });
    const there = await priceOf(home.coordinator, {});
    expect(there.price).toMatchObject({ objectivePoints: 0, changedItems: 0, text: "The week would be as it is." });
  });

  it("is a reason with where it is laid down for a dish that is not offered", async () => {
    const other = await priceOf(home.coordinator, { dish: "orange-segments" });
    expect(other).toMatchObject({
      __typename: "DishNotOffered",
      kind: "OTHER_SLOT",
      source: "The dish's own entry.",
    });
    const { index } = served.inProcess.app;
    const withMilk = index.dishes.find(
      ({ key, slots }) => slots.includes("MAIN") && index.derived(key).allergens.includes("MILK"),
    )!;
    expect(await priceOf(home.coordinator, { dish: withMilk.key })).toMatchObject({
      __typename: "DishNotOffered",
      kind: "ALLERGEN",
      message: expect.stringMatching(/^Contains milk \(.+\), which this child avoids\.$/),
      source: expect.stringContaining("allergies on record"),
    });
  });

  it("may be read by an observer", async () => {
    expect(await priced(home.carers.OBSERVER!, itemIn("MAIN").id, 1)).toHaveLength(1);
  });
});

describe("asked for what is not there", () => {
  it("names the place, the dish, the day and the week that are missing, each in its own way", async () => {
    expect(await priceOf(home.coordinator, { break: "supper" })).toMatchObject({
      __typename: "InvalidInput",
      issues: [{ field: "breakKey", fix: expect.stringContaining("lunch") }],
    });
    expect(await priceOf(home.coordinator, { place: 7 })).toMatchObject({ __typename: "InvalidInput" });
    const dish = itemIn("MAIN").dish.key;
    expect(await priceOf(home.coordinator, { dish: `${dish}x` })).toMatchObject({
      __typename: "DishUnknown",
      nearest: expect.arrayContaining([dish]),
    });
    expect((await priceOf(home.coordinator, { date: "2027-01-16" })).__typename).toBe("OutsideTerm");
    expect((await priceOf(home.coordinator, { date: "2027-01-20" })).__typename).toBe("NothingThere");
    expect((await priceOf(home.coordinator, { child: home.id })).__typename).toBe("ChildNotFound");
    expect(await priced(home.coordinator, itemIn("MAIN").id, 0)).toEqual([]);
  });

  it("begins no more than four searches for one question", async () => {
    const whole = `query Whole($home: ID!, $day: LocalDate!) { week(householdId: $home, date: $day) { plan { boxes { items { pricedAlternatives { grams } } } } } }`;
    const { errors: refused } = await served.post(home.coordinator, whole, { home: home.id, day: DAY });
    expect(new Set(refused.map(({ extensions }) => extensions["code"]))).toEqual(new Set(["QUERY_LIMIT"]));
    expect(refused[0]!.message).toBe("One operation may begin 4 searches. Ask for the rest in a second query.");
    const items = week.plan.boxes.flatMap((box) => box.items).length;
    expect(refused).toHaveLength(items - 4);
  });
});

describe("a week that cannot be planned", () => {
  let refused: any;
  beforeAll(async () => {
    const mornings = ["MONDAY", "TUESDAY", "WEDNESDAY", "THURSDAY", "FRIDAY"].map((weekday) => ({
      kind: "MORNING",
      weekday,
      startsAt: "07:00",
      handsOnMinutes: weekday === "TUESDAY" ? 1 : 40,
      elapsedMinutes: 60,
    }));
    expect((await home.change(PREP, { prepTimes: mornings })).__typename).toBe("KitchenPayload");
    const input = { idempotencyKey: "why-short-morning-1", householdId: home.id, date: SHORT_DAY, seenRevision: 0 };
    refused = (await served.ask<{ planWeek: unknown }>(home.coordinator, PLAN, { input })).planWeek;
  });

  it("says what clashes, per child and day, and that nothing of it could be left out", () => {
    expect(refused).toMatchObject({ __typename: "WeekInfeasible", clash: { irreducible: true } });
    const { members } = refused.clash;
    expect(members).toContainEqual(
      expect.objectContaining({
        kind: "BOX",
        child: { name: "Ari" },
        date: "2027-01-19",
        text: "Ari takes a whole box on 2027-01-19.",
      }),
    );
    expect(members).toContainEqual(
      expect.objectContaining({
        kind: "SESSION",
        fixed: false,
        session: "morning-2027-01-19",
        text: "The morning of 2027-01-19 has no more minutes than it has.",
      }),
    );
  });

  it("lists the smallest changes that make it possible, each with the week it brings", () => {
    const [first] = refused.waysOut;
    expect(first.changes).toMatchObject([{ kind: "MORE_MINUTES", date: "2027-01-19" }]);
    expect(first.changes[0].text).toMatch(/^Begin the morning of 2027-01-19 \d+ minutes earlier\.$/);
    expect(first.wishes.handsOnMinutes).toBeGreaterThan(0);
    const kinds = refused.waysOut.flatMap(({ changes }: any) => changes.map(({ kind }: any) => kind));
    for (const never of ["ALLERGY", "RULE", "HOLDING", "CHOKING", "DIET"]) expect(kinds).not.toContain(never);
  });
});

describe("for whom it is not", () => {
  it("a stranger learns nothing of the week, the child or the dish", async () => {
    const stranger = served.newcomer();
    expect(await priced(stranger, itemIn("MAIN").id)).toBeNull();
    expect(await priceOf(stranger, {})).toEqual({
      __typename: "HouseholdNotFound",
      message: "There is no such household among yours.",
    });
  });

  it("without a token it asks to sign in", async () => {
    const { errors } = await served.post(null, DISH, {
      home: home.id,
      child: home.children[0],
      date: DAY,
      break: "lunch",
      slot: "MAIN",
      place: 0,
      dish: "orange-segments",
    });
    expect(errors).toMatchObject([{ extensions: { code: "UNAUTHENTICATED" } }]);
  });

  it("the child's other home sees the item, and neither prices nor a search about the kitchen that packs it", async () => {
    const there = await served.household().found();
    const { addHome, owner } = served.inProcess.database;
    await addHome(localOf(home.children[0]!), localOf(there.id));
    await owner`update residence set since = '2027-06-01' where household_id = ${localOf(there.id)}`;
    const seen = await served.ask<{ household: { children: { boxes: { items: Record<string, unknown>[] }[] }[] } }>(
      there.coordinator,
      `query Seen($id: ID!) { household(id: $id) { children { boxes(from: "${DAY}", to: "2027-01-15") { items { dish { key } pricedAlternatives { grams } } } } } }`,
      { id: there.id },
    );
    const items = seen.household.children[0]!.boxes.flatMap((box) => box.items);
    expect(items.length).toBeGreaterThan(10);
    for (const item of items) expect(item["pricedAlternatives"]).toBeNull();
    expect((await priceOf(there.coordinator, {})).__typename).toBe("HouseholdNotFound");
    expect((await priceOf(there.coordinator, { home: there.id })).__typename).toBe("NothingThere");
  });
});

describe("a search nobody waits for", () => {
  it("is answered at once, and soon the thread works on the next question", async () => {
    const { catalogue } = served.inProcess.app.reference;
    const pool = startPlannerPool(catalogue, { threads: 1 });
    const demo = threeChildren({ catalogue });
    // Half an explanation would take seconds: nine minutes are too few on any morning.
    const sessions = demo.sessions.map((row) => (row.kind === "MORNING" ? { ...row, handsOnMinutes: 9 } : row));
    const question = { kind: "INFEASIBLE_WEEK", brief: { ...demo, sessions }, notBefore: "" } as const;
    const giveUpAfter = async (ms: number): Promise<number> => {
      const waiting = new AbortController();
      let hungUp = 0;
      setTimeout(() => {
        hungUp = performance.now();
        waiting.abort(new Error("hung up"));
      }, ms);
      await expect(pool.ask(question, waiting.signal)).rejects.toThrow("hung up");
      return performance.now() - hungUp;
    };
    try {
      // The thread has to be there and warm before the clock counts.
      await giveUpAfter(4_000);
      expect(await giveUpAfter(600)).toBeLessThan(50);
      const from = performance.now();
      await giveUpAfter(1);
      // A week without children has nothing that clashes, and no search is needed to say so.
      const empty = await pool.ask({ ...question, brief: { ...demo, children: [] } });
      expect(empty).toEqual({ clashes: null, waysOut: [] });
      expect(performance.now() - from).toBeLessThan(5_000);
    } finally {
      await pool.stop();
    }
  });
});
