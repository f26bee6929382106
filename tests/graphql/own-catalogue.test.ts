import { ownKey } from "../../src/app/own-catalogue.js";
import { newKey } from "../support/app.js";
import { localOf, useServedApp, type Household } from "../support/served-app.js";
import { DAY, LABEL, PACK, PLAN, STOCK, SWAP } from "./documents.js";

// In the real threads: they hold the reference catalogue, and are sent what a household adds to it.
const served = useServedApp({ pool: true, steps: 25_000 });
const FRIDAY = "2027-01-15";

const SAID = `__typename ... on UserError { message } ... on InvalidInput { issues { field problem fix } } ... on NotPermitted { neededRole }
  ... on RevisionPassed { currentRevision }`;
const IN_USE = "... on StillInUse { dishes { key } boxes { date child { name } } }";
const MISSING = "missing { kind nutrient text rules foods { key } }";
const FOOD = `mutation Food($input: SaveOwnFoodInput!) { saveOwnFood(input: $input) { ${SAID}
  ... on SaveOwnFoodPayload { household { revision ownFoods { key } } food { key own packaged allergens nutrients { tag amount unit } } ${MISSING} } } }`;
const DISH = `mutation Dish($input: SaveOwnDishInput!) { saveOwnDish(input: $input) { ${SAID}
  ... on SaveOwnDishPayload { household { revision ownDishes { key } } dish { id key own allergens labelsToRead { key } nutrients { tag amount }
    carbohydrateGrams hazards { class } portionCostMinor portionPieces } ${MISSING} } } }`;
const DROP_FOOD = `mutation Drop($input: RemoveOwnFoodInput!) { removeOwnFood(input: $input) { ${SAID} ${IN_USE} ... on KitchenPayload { household { ownFoods { key } } } } }`;
const DROP_DISH = `mutation Drop($input: RemoveOwnDishInput!) { removeOwnDish(input: $input) { ${SAID} ${IN_USE} ... on KitchenPayload { household { ownDishes { key } } } } }`;

const mix = {
  name: "Pancake flour mix",
  kind: "flour-mix",
  group: "GRAIN",
  origins: ["PLANT"],
  nutrients: {
    energyKj: 1464.4,
    fatGrams: 1.5,
    carbohydrateGrams: 71,
    fibreGrams: 3,
    proteinGrams: 10,
    saltGrams: 0.5,
  },
  chokingClasses: [],
  pack: { grams: 500, priceMinor: 210 },
  shopSection: "DRY_GOODS",
};
const label = { contains: ["WHEAT"], mayContain: [], readOn: "2026-11-20" };
const pancake = (food: string) => ({
  name: "Grandmother's pancake",
  slots: ["MAIN"],
  ingredients: [
    { food, grams: 60 },
    { food: "egg-raw", grams: 40 },
    { food: "milk-whole", grams: 100 },
  ],
  portion: { gramsPerPiece: 80, pieces: 2, stepPieces: 1, pieceName: "pancake" },
  steps: [
    {
      text: "Fry the pancakes and fill them into the flask hot.",
      handsOnFixedMinutes: 1,
      handsOnPerPortionMinutes: 2,
    },
  ],
  served: "EITHER",
  goodForHours: 8,
  spill: "DRY",
  volumeMl: 250,
  starch: "NONE",
  protein: "NONE",
  processing: [],
  cookedInFat: true,
});

type Any = any;
const change = (home: Household, document: string, input: Record<string, unknown>, person?: string): Promise<Any> =>
  home.change(document, input, person) as Promise<Any>;
/** What is refused leaves no trace in any table. */
async function refused(home: Household, document: string, input: Record<string, unknown>): Promise<Any> {
  const before = await served.everyRow();
  const answer = await change(home, document, input);
  expect(await served.everyRow()).toBe(before);
  return answer;
}
const fieldsOf = (answer: Any) => answer.issues.map(({ field }: Any) => field);

describe("a grandmother's pancake from a bought flour mix", () => {
  let home: Household;
  let food: string;
  let dish: string;
  beforeAll(async () => {
    home = await served
      .household()
      .child({ allergies: [{ allergen: "SESAME" }] })
      .planned(DAY)
      .found();
  });
  const mainOf = async () => {
    const week = (await home.week(DAY))!;
    const box = week.plan.boxes[0]!;
    return { week, box, item: box.items.find(({ slot }) => slot === "MAIN")! };
  };

  it("begins with the mix as its label prints it, and says what is not known and what that prevents", async () => {
    const saved = await change(home, FOOD, { food: mix });
    food = saved.food.key;
    expect(food).toBe(ownKey(mix.name, localOf(home.id)));
    expect(saved.food).toMatchObject({ own: true, packaged: true, allergens: [] });
    const amounts = Object.fromEntries(saved.food.nutrients.map(({ tag, amount }: Any) => [tag, amount]));
    expect(amounts).toMatchObject({ NA: 200, CHOCDF: 74, FIBTG: 3 });
    expect(amounts["ENERC_KCAL"]).toBeCloseTo(350, 6);
    const missing = (kind: string) => saved.missing.find((fact: Any) => fact.kind === kind);
    expect(missing("LABEL").text).toContain("unread for everybody who avoids anything");
    expect(missing("HOLDING").text).toContain("needing cold");
    // A school's rule on saturated fat is in force for the child, and the label does not say how much there is.
    const fat = saved.missing.find(({ nutrient }: Any) => nutrient === "FASAT");
    expect(fat.foods).toEqual([{ key: food }]);
    expect(saved.missing.some(({ nutrient }: Any) => nutrient === "NA")).toBe(false);
  });

  it("is derived and checked at once", async () => {
    const saved = await change(home, DISH, { dish: pancake(food) });
    dish = saved.dish.key;
    expect(saved.dish).toMatchObject({ own: true, allergens: ["EGG", "MILK"], portionPieces: 2 });
    expect(saved.dish.labelsToRead.map(({ key }: Any) => key)).toContain(food);
    expect(saved.dish.carbohydrateGrams).toBeGreaterThan(44.4);
    expect(saved.dish.portionCostMinor).toBeGreaterThan(25);
    expect(saved.missing.find(({ kind }: Any) => kind === "LABEL").foods).toContainEqual({ key: food });
    expect(saved.household.ownDishes).toEqual([{ key: dish }]);
    expect(
      await served.ask(home.coordinator, "query Any($id: ID!) { node(id: $id) { id } }", { id: saved.dish.id }),
    ).toEqual({ node: { id: saved.dish.id } });
  });

  it("is found among the household's dishes, and among nobody else's", async () => {
    const query = `query Find($key: String!, $home: ID) { dish(key: $key, householdId: $home) { name }
      dishes(slot: MAIN, householdId: $home, first: 100, after: "${Buffer.from("own-").toString("base64url")}") { nodes { key } } }`;
    const found = await served.ask<Any>(home.coordinator, query, { key: dish, home: home.id });
    expect(found.dish).toEqual({ name: "Grandmother's pancake" });
    expect(found.dishes.nodes).toContainEqual({ key: dish });
    const stranger = served.newcomer();
    for (const [person, variables] of [
      [home.coordinator, { key: dish }],
      [stranger, { key: dish }],
      [stranger, { key: dish, home: home.id }],
    ] as const) {
      const none = await served.ask<Any>(person, query, variables);
      expect(none.dish).toBeNull();
      expect(none.dishes.nodes).not.toContainEqual({ key: dish });
    }
  });

  it("goes into a box, is bought, and is another catalogue than before", async () => {
    const { week, item } = await mainOf();
    const before = await served.ask<Any>(home.coordinator, WEEK, { id: home.id, day: DAY });
    const swapped = await served.send(home.coordinator, SWAP, { itemId: item.id, dish, seenRevision: week.revision });
    expect([swapped.__typename, swapped.message, swapped.conflicts]).toEqual(["WeekPayload", undefined, undefined]);
    const after = await served.ask<Any>(home.coordinator, WEEK, { id: home.id, day: DAY });
    expect(after.week.plan.shopping.map((line: Any) => line.food)).toContainEqual({ key: food, name: mix.name });
    expect(after.week.plan.origin.catalogueVersion).not.toBe(before.week.plan.origin.catalogueVersion);
    expect(after.week.plan.tasks.some(({ text }: Any) => text.includes("pancakes"))).toBe(true);
    expect(after.week.plan.cautions.some(({ text }: Any) => text.includes(mix.name))).toBe(true);
  });

  it("asks for one statement more in a week that has it, and for none where it stands alone", async () => {
    const run = (query: string) => served.inProcess.run(home.coordinator, query, { id: home.id, day: DAY });
    const { statements, errors } = await run(WEEK);
    expect(errors).toEqual([]);
    // BEGIN, the person, the week, the own rows.
    expect(statements).toBe(4);
  });

  it("stays in the household's stock and labels under its own key", async () => {
    const stocked = await change(home, STOCK, {
      entries: [
        { food, grams: 300 },
        { food: "apple-raw", grams: 200 },
      ],
    });
    expect(stocked.household.kitchen.stock).toEqual([
      { food: { key: "apple-raw" }, grams: 200 },
      { food: { key: food }, grams: 300 },
    ]);
    expect(fieldsOf(await refused(home, STOCK, { entries: [{ food: "own-nothing", grams: 1 }] }))).toEqual([
      "entries.0.food",
    ]);
  });

  it("cannot be packed before the mix's label is read and clear", async () => {
    const { box, week } = await mainOf();
    const pack = async () =>
      served.send(home.coordinator, PACK, {
        boxId: box.id,
        packedAt: `${box.date}T07:10:00Z`,
        seenRevision: (await home.week(DAY))!.revision,
      });
    const unread = await pack();
    expect(unread.__typename).toBe("LabelsUnread");
    expect(unread.foods).toContainEqual({ key: food });
    expect(week.plan.boxes[0]!.items.flatMap(({ labelsToRead }) => labelsToRead ?? [])).toContainEqual({ key: food });
    const seeds = { ...label, food, mayContain: ["SESAME"] };
    expect((await change(home, LABEL, seeds)).__typename).toBe("KitchenPayload");
    // The box is looked at again as soon as the label is on record.
    expect((await mainOf()).box.state).toBe("BLOCKED");
    for (const { key } of [{ key: food }, ...unread.foods])
      expect((await change(home, LABEL, { ...label, food: key, contains: [] })).__typename).toBe("KitchenPayload");
    expect((await mainOf()).box.state).toBe("PLANNED");
    expect((await pack()).__typename).toBe("WeekPayload");
  });

  it("cannot be taken off the list while it stands in a box, nor the mix while it is made of it", async () => {
    const stands = await refused(home, DROP_DISH, { key: dish });
    expect(stands).toMatchObject({ __typename: "StillInUse", boxes: [{ child: { name: "Ari" } }], dishes: [] });
    expect(stands.message).toContain(stands.boxes[0].date);
    expect(await refused(home, DROP_FOOD, { key: food })).toMatchObject({
      __typename: "StillInUse",
      dishes: [{ key: dish }],
      boxes: [],
    });
  });
});

const WEEK = `query Week($id: ID!, $day: LocalDate!) { week(householdId: $id, date: $day) { plan { origin { catalogueVersion }
  boxes { items { dish { key name } note { why } } } tasks { text } cautions { text } shopping { food { key name } packs } } } }`;

describe("what no label and no recipe can say", () => {
  let home: Household;
  let food: string;
  beforeAll(async () => {
    home = await served.household().child().carer("HELPER").found();
    food = (await change(home, FOOD, { food: { ...mix, label } })).food.key;
  });

  it.each([
    ["too much energy", { nutrients: { energyKcal: 951 } }, "food.nutrients.energyKcal"],
    ["a negative figure", { nutrients: { proteinGrams: -1 } }, "food.nutrients.proteinGrams"],
    [
      "more than 105 g in 100 g",
      { nutrients: { fatGrams: 60, carbohydrateGrams: 40, proteinGrams: 6 } },
      "food.nutrients.fatGrams",
    ],
    [
      "more sugar than carbohydrate",
      { nutrients: { carbohydrateGrams: 5, sugarsGrams: 6 } },
      "food.nutrients.sugarsGrams",
    ],
    [
      "more saturated fat than fat",
      { nutrients: { fatGrams: 5, saturatedFatGrams: 6 } },
      "food.nutrients.saturatedFatGrams",
    ],
    ["a label older than its product", { label, productSince: "2026-11-21" }, "food.label.readOn"],
    ["a label that has not been read yet", { label: { ...label, readOn: "2026-11-27" } }, "food.label.readOn"],
    ["milk without milk on its label", { kind: "cow-milk", label }, "food.label.contains"],
    ["an unknown group", { group: "PANCAKES" }, "food.group"],
    ["an unknown choking class", { chokingClasses: ["CRUMBS"] }, "food.chokingClasses.0"],
    ["no origin", { origins: [] }, "food.origins"],
  ])("%s is refused on its line, and nothing is saved", async (_, part, field) => {
    const answer = await refused(home, FOOD, { food: { ...mix, name: "Another mix", ...part } });
    expect(answer.__typename).toBe("InvalidInput");
    expect(fieldsOf(answer)).toEqual([field]);
    expect(answer.issues[0].fix).not.toBe("");
  });

  const [, egg, milk] = pancake("").ingredients;
  it.each([
    [
      "an unknown food",
      (key: string) => ({ ingredients: [{ food: `${key}s`, grams: 60 }, egg, milk] }),
      "ingredients.0.food",
    ],
    ["an unknown base", () => ({ bases: [{ base: "tomato-sauces", grams: 20 }] }), "bases.0.base"],
    [
      "a negative amount",
      (key: string) => ({ ingredients: [{ food: key, grams: -60 }, egg, milk] }),
      "ingredients.0.grams",
    ],
    [
      "five kilograms and more",
      (key: string) => ({ ingredients: [{ food: key, grams: 5001 }] }),
      "ingredients.0.grams",
    ],
    [
      "millilitres without a density",
      (key: string) => ({ ingredients: [{ food: key, ml: 60 }, egg, milk] }),
      "ingredients.0.ml",
    ],
    ["pieces of a weighed portion", () => ({ portion: { grams: 160, stepGrams: 10, pieces: 2 } }), "portion.pieces"],
    ["a portion heavier than what goes in", () => ({ portion: { grams: 260, stepGrams: 10 } }), "portion.grams"],
    [
      "an unknown way of cooking",
      (key: string) => ({ ingredients: [{ food: key, grams: 60 }, egg, { ...milk, retention: "9999" }] }),
      "ingredients.2.retention",
    ],
    ["no step", () => ({ steps: [] }), "steps"],
    ["an unknown starch", () => ({ starch: "CLOUDS" }), "starch"],
  ])("%s is refused on its line, and nothing is saved", async (_, part, field) => {
    const answer = await refused(home, DISH, { dish: { ...pancake(food), ...part(food) } });
    expect(answer.__typename).toBe("InvalidInput");
    expect(fieldsOf(answer)).toEqual([`dish.${field}`]);
    expect(answer.message).toContain("Nothing was saved");
  });

  it("names the foods that an unknown one may have meant, the household's own among them", async () => {
    const answer = await refused(home, DISH, { dish: pancake(`${food}s`) });
    expect(answer.issues[0].fix).toContain(food);
  });

  it("one name is on the list once; its key changes it", async () => {
    expect(fieldsOf(await refused(home, FOOD, { food: mix }))).toEqual(["food.name"]);
    expect(fieldsOf(await refused(home, FOOD, { food: mix, key: "own-nobodys" }))).toEqual(["key"]);
    const changed = await change(home, FOOD, { food: { ...mix, name: "Plain mix", label }, key: food });
    expect(changed.food).toMatchObject({ key: food, allergens: ["WHEAT"] });
  });

  it("a label of an own food is never put back by an older one, nor by one from before the product", async () => {
    const since = { ...mix, name: "Dated mix", label, productSince: "2026-11-10" };
    const { key } = (await change(home, FOOD, { food: since })).food;
    for (const readOn of ["2026-11-09", "2026-11-19"])
      expect(fieldsOf(await refused(home, LABEL, { ...label, food: key, readOn }))).toEqual(["readOn"]);
    expect(fieldsOf(await refused(home, LABEL, { ...label, food: "own-nobodys" }))).toEqual(["food"]);
    expect((await change(home, LABEL, { ...label, food: key, readOn: "2026-11-24" })).__typename).toBe(
      "KitchenPayload",
    );
  });

  it("a food entered anew without its label is unread again", async () => {
    const { key } = (await change(home, FOOD, { food: { ...mix, name: "Changed mix", label } })).food;
    const again = await change(home, FOOD, { key, food: { ...mix, name: "Changed mix" } });
    expect(again.missing.map(({ kind }: Any) => kind)).toContain("LABEL");
  });

  it("a food and a dish taken off the list can be entered again", async () => {
    const { key } = (await change(home, FOOD, { food: { ...mix, name: "Passing mix", label } })).food;
    const made = await change(home, DISH, { dish: { ...pancake(key), name: "Passing pancake" } });
    expect((await change(home, DROP_DISH, { key: made.dish.key })).household.ownDishes).toEqual([]);
    expect((await change(home, DROP_FOOD, { key })).household.ownFoods).not.toContainEqual({ key });
    expect(fieldsOf(await refused(home, DROP_FOOD, { key }))).toEqual(["key"]);
    expect(fieldsOf(await refused(home, DISH, { dish: pancake(key) }))).toEqual(["dish.ingredients.0.food"]);
    expect((await change(home, FOOD, { food: { ...mix, name: "Passing mix", label } })).food.key).toBe(key);
  });

  it("a request sent again is answered as before and done once", async () => {
    const idempotencyKey = newKey();
    const seenRevision = await home.revision();
    const input = { idempotencyKey, seenRevision, food: { ...mix, name: "Mix of one request" } };
    const first = await change(home, FOOD, input);
    expect(await change(home, FOOD, input)).toEqual(first);
    expect(await home.revision()).toBe(seenRevision + 1);
  });

  it("helpers read the list and do not change it", async () => {
    const answer = await change(home, FOOD, { food: { ...mix, name: "A helper's mix" } }, home.carers.HELPER);
    expect(answer).toMatchObject({ __typename: "NotPermitted", neededRole: "COOK" });
    const list = await served.ask<Any>(
      home.carers.HELPER!,
      "query List($id: ID!) { household(id: $id) { ownFoods { key } } }",
      {
        id: home.id,
      },
    );
    expect(list.household.ownFoods).toContainEqual({ key: food });
  });
});

describe("the other home of a shared child", () => {
  let here: Household;
  let there: Household;
  let dish: string;
  let food: string;
  const SEEN = `query Seen($id: ID!) { household(id: $id) { ownFoods { key } ownDishes { key } children { boxes(from: "${DAY}", to: "${FRIDAY}") {
    items { dish { id key name own allergens ingredients { food { key name allergens } grams } steps { text } costMinor portionCostMinor costParts { costMinor } } } } } } }`;
  const seenBy = async (home: Household) => (await served.ask<Any>(home.coordinator, SEEN, { id: home.id })).household;
  const dishSeen = async (home: Household, which = dish) =>
    (await seenBy(home)).children[0].boxes
      .flatMap(({ items }: Any) => items.map((item: Any) => item.dish))
      .find(({ key }: Any) => key === which);
  const rowsOf = (person: string) =>
    served.inProcess.app.db.signIn(person, person).then((id) =>
      served.inProcess.app.db.asPerson(id, async (tx) => ({
        foods: await tx.ownFood.count(),
        dishes: await tx.ownDish.count(),
        shelves: await tx.ownFoodShelf.count(),
        labels: await tx.ownFoodLabel.count(),
        work: await tx.ownDishWork.count(),
      })),
    );
  beforeAll(async () => {
    here = await served.household().child().planned(DAY).found();
    there = await served.household().found();
    // The younger home: where no dated list says otherwise the child wakes in the elder.
    await served.inProcess.database
      .owner`insert into residence (child_id, household_id, since) values (${localOf(here.children[0]!)}, ${localOf(there.id)}, '2027-01-01')`;
    food = (await change(here, FOOD, { food: { ...mix, label } })).food.key;
    dish = (await change(here, DISH, { dish: pancake(food) })).dish.key;
  });

  it("sees nothing of what is only on the list", async () => {
    expect(await rowsOf(here.coordinator)).toEqual({ foods: 1, dishes: 1, shelves: 1, labels: 1, work: 1 });
    expect(await rowsOf(there.coordinator)).toEqual({ foods: 0, dishes: 0, shelves: 0, labels: 0, work: 0 });
    expect(await rowsOf(served.newcomer())).toEqual({ foods: 0, dishes: 0, shelves: 0, labels: 0, work: 0 });
  });

  it("sees what the child eats once it stands in a box: what is in it, not what it costs or how it is made", async () => {
    const week = (await here.week(DAY))!;
    const item = week.plan.boxes[0]!.items.find(({ slot }) => slot === "MAIN")!;
    const swapped = await served.send(here.coordinator, SWAP, { itemId: item.id, dish, seenRevision: week.revision });
    expect(swapped.__typename).toBe("WeekPayload");
    expect(await rowsOf(there.coordinator)).toEqual({ foods: 1, dishes: 1, shelves: 0, labels: 0, work: 0 });
    expect(await rowsOf(served.newcomer())).toMatchObject({ foods: 0, dishes: 0 });
    const own = await dishSeen(here);
    const theirs = await dishSeen(there);
    expect(own.steps).toHaveLength(1);
    expect(own.portionCostMinor).toBeGreaterThan(0);
    expect(theirs).toEqual({ ...own, steps: [], costMinor: 0, portionCostMinor: null, costParts: [] });
    expect(theirs).toMatchObject({ name: "Grandmother's pancake", allergens: ["EGG", "MILK", "WHEAT"] });
    expect(await seenBy(there)).toMatchObject({ ownFoods: [], ownDishes: [] });
  });
  it("is told no price of a dish that is made of the catalogue's foods alone", async () => {
    const apple = {
      ...pancake(food),
      name: "Apple the way we cut it",
      slots: ["FRUIT"],
      ingredients: [{ food: "apple-raw", grams: 90, form: "SLICED_THIN" }],
      portion: { grams: 90, stepGrams: 10 },
    };
    const plain = (await change(here, DISH, { dish: apple })).dish.key;
    const week = (await here.week(DAY))!;
    const item = week.plan.boxes[0]!.items.find(({ slot }) => slot === "FRUIT")!;
    const input = { itemId: item.id, dish: plain, seenRevision: week.revision };
    expect((await served.send(here.coordinator, SWAP, input)).__typename).toBe("WeekPayload");
    expect((await dishSeen(here, plain)).portionCostMinor).toBeGreaterThan(0);
    expect(await dishSeen(there, plain)).toMatchObject({ steps: [], portionCostMinor: null, costParts: [] });
    const now = (await here.week(DAY))!;
    const swapped = now.plan.boxes[0]!.items.find((one) => one.dish.key === plain)!;
    const back = { itemId: swapped.id, dish: item.dish.key, seenRevision: now.revision };
    expect((await served.send(here.coordinator, SWAP, back)).__typename).toBe("WeekPayload");
    await change(here, DROP_DISH, { key: plain });
  });

  it("does not plan with it, cook with it or change it", async () => {
    for (const [document, input] of [
      [FOOD, { key: food, food: { ...mix, label } }],
      [DISH, { key: dish, dish: { ...pancake("egg-raw") } }],
      [DROP_DISH, { key: dish }],
      [DROP_FOOD, { key: food }],
    ] as const)
      expect(fieldsOf(await refused(there, document, input))).toEqual(["key"]);
    expect(fieldsOf(await refused(there, DISH, { dish: pancake(food) }))).toEqual(["dish.ingredients.0.food"]);
    const query = "query Find($key: String!, $home: ID) { dish(key: $key, householdId: $home) { name } }";
    expect(await served.ask(there.coordinator, query, { key: dish, home: there.id })).toEqual({ dish: null });
  });

  it("may call a food by the same name: its key is another", async () => {
    const theirs = (await change(there, FOOD, { food: { ...mix, label } })).food.key;
    expect(theirs).not.toBe(food);
    expect((await seenBy(there)).ownFoods).toEqual([{ key: theirs }]);
    expect((await seenBy(here)).ownFoods).toEqual([{ key: food }]);
  });

  it("sees it no longer when it stands in no box", async () => {
    const week = (await here.week(DAY))!;
    const planned = await served.send(here.coordinator, PLAN, {
      householdId: here.id,
      date: DAY,
      seenRevision: week.revision,
    });
    expect(planned.__typename).toBe("WeekPayload");
    const after = (await here.week(DAY))!;
    const item = after.plan.boxes[0]!.items.find((entry) => entry.dish.key === dish);
    const other = await served.ask<Any>(
      here.coordinator,
      "query Other($id: ID!) { alternatives(itemId: $id) { dish { key } } }",
      {
        id: item!.id,
      },
    );
    const swapped = await served.send(here.coordinator, SWAP, {
      itemId: item!.id,
      dish: other.alternatives.map((entry: Any) => entry.dish.key).find((key: string) => key !== dish),
      seenRevision: after.revision,
    });
    expect(swapped.__typename).toBe("WeekPayload");
    expect(await rowsOf(there.coordinator)).toMatchObject({ dishes: 0, foods: 1, work: 0 });
    expect((await change(here, DROP_DISH, { key: dish })).household.ownDishes).toEqual([]);
  });
});
