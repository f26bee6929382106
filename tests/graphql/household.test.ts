import { globalId } from "../../src/graphql/global-id.js";
import { newKey, useApp } from "../support/app.js";
import {
  CHILD,
  DAY,
  ENROL,
  EQUIP,
  FOUND,
  HOMES,
  LABEL,
  LEFTOVERS,
  LOAD,
  PLAN,
  PREP,
  RELAX,
  STOCK,
  SWAP,
} from "./documents.js";

const { run, database } = useApp();
const send = async (person: string, document: string, input: Record<string, unknown>): Promise<any> => {
  const { data, errors } = await run(person, document, { input: { idempotencyKey: newKey(), ...input } });
  expect(errors).toEqual([]);
  return Object.values(data)[0];
};
const homeOf = async (person: string): Promise<any> => (await run(person, HOMES, { day: DAY })).data.me.households[0];
const count = async (table: string) =>
  (await database.owner<{ n: number }[]>`select count(*)::int as n from ${database.owner(table)}`)[0]!.n;

const child = {
  name: "Oda",
  dateOfBirth: "2019-04-02",
  compartments: [
    { ml: 700, leakProof: true },
    { ml: 300, leakProof: true },
    { ml: 250, leakProof: false },
  ],
  leaveAt: "08:10",
  allergies: [{ allergen: "EGG" }],
};

describe("a new household", () => {
  const person = "test:new-parent";

  it("starts with a usual kitchen, takes a child, enrols her and gets a week without what she may not eat", async () => {
    const made = await send(person, FOUND, { name: "Quay flat", timeZone: "Europe/London", currency: "GBP" });
    expect(made.household).toMatchObject({ revision: 1, myRole: "COORDINATOR" });
    expect(made.household.kitchen.prepTimes.length).toBe(11);
    const householdId = made.household.id as string;
    const oda = await send(person, CHILD, { householdId, seenRevision: 1, ...child });
    expect(oda.child).toMatchObject({
      name: "Oda",
      ageYears: 7,
      allergies: [{ allergen: "EGG", avoid: "TRACES" }],
      dailyNeeds: { energyMethod: "NASEM_2023" },
    });
    const unschooled = await send(person, PLAN, { householdId, date: DAY, seenRevision: 0 });
    expect(unschooled).toMatchObject({ __typename: "NoSchool", children: [{ name: "Oda" }] });
    const { data } = await run(
      person,
      "{ schools(first: 1) { nodes { name classes { id name } } pageInfo { hasNextPage endCursor } } }",
    );
    expect(data.schools.pageInfo.hasNextPage).toBe(true);
    const next = await run(
      person,
      "query More($after: String) { schools(first: 3, after: $after) { nodes { name } pageInfo { hasNextPage } } }",
      { after: data.schools.pageInfo.endCursor },
    );
    expect(next.data.schools).toMatchObject({ pageInfo: { hasNextPage: false } });
    const schoolClassId = data.schools.nodes[0].classes[0].id as string;
    const enrolled = await send(person, ENROL, {
      householdId,
      seenRevision: 2,
      childId: oda.child.id,
      schoolClassId,
      fromDate: "2026-11-01",
    });
    expect(enrolled.child.enrolments).toMatchObject([{ fromDate: "2026-11-01" }]);
    const planned = await send(person, PLAN, { householdId, date: DAY, seenRevision: 0 });
    expect(planned.__typename).toBe("WeekPayload");
    expect(planned.week.plan.boxes).toHaveLength(5);
    const eaten = await run(
      person,
      `{ me { households { week(date: "${DAY}") { plan { boxes { items { allergens } } } } } } }`,
    );
    const allergens = eaten.data.me.households[0].week.plan.boxes.flatMap((box: any) =>
      box.items.flatMap((item: any) => item.allergens),
    );
    expect(allergens).not.toContain("EGG");
  });

  it("is told when no box is due, and when the next school day is", async () => {
    const { id } = await homeOf(person);
    expect(await send(person, PLAN, { householdId: id, date: "2027-02-17", seenRevision: 0 })).toMatchObject({
      __typename: "OutsideTerm",
      weekStart: "2027-02-15",
      nextSchoolDay: "2027-02-22",
    });
  });

  it("with a kitchen that gives no minutes is told which sessions are too short", async () => {
    const { id, revision } = await homeOf(person);
    const mornings = ["MONDAY", "TUESDAY", "WEDNESDAY", "THURSDAY", "FRIDAY"].map((weekday) => ({
      kind: "MORNING",
      weekday,
      startsAt: "07:00",
      handsOnMinutes: 0,
      elapsedMinutes: 60,
    }));
    expect(
      (await send(person, PREP, { householdId: id, seenRevision: revision, prepTimes: mornings })).__typename,
    ).toBe("KitchenPayload");
    const before = await count("week_plan");
    const refused = await send(person, PLAN, { householdId: id, date: "2027-01-18", seenRevision: 0 });
    expect(refused.__typename).toBe("WeekInfeasible");
    expect(refused.conflicts[0]).toMatchObject({ kind: "SESSION_TOO_SHORT", session: "morning-2027-01-18" });
    expect(refused.conflicts[0].wayOut).toMatch(/more minutes/);
    expect(await count("week_plan")).toBe(before);
  });

  it("is asked again when an allergy names a food that no food is: a slip of the pen would shut out nothing", async () => {
    const { id, revision } = await homeOf(person);
    const withAllergy = (allergy: object) =>
      send(person, CHILD, { householdId: id, seenRevision: revision, ...child, allergies: [allergy] });
    const refused = await withAllergy({ foodKind: "soy" });
    expect(refused.__typename).toBe("InvalidInput");
    expect(refused.issues[0].field).toBe("allergies.0.foodKind");
    expect(refused.issues[0].fix).toMatch(/soya/);
    expect(refused.issues[0].fix).toMatch(/kindUnknown/);
    expect((await withAllergy({ foodKind: "soy", kindUnknown: true })).__typename).toBe("CreateChildPayload");
  });

  it("hears every complaint about its input at once, and nothing is saved", async () => {
    const { id, revision } = await homeOf(person);
    const before = [await count("child"), await count("household"), await count("idempotency_key")];
    const badChild = await send(person, CHILD, {
      householdId: id,
      seenRevision: revision,
      ...child,
      name: " ",
      appetite: 9,
      allergies: [{ allergen: "NUTS" }, { allergen: "EGG", foodKind: "kiwi" }],
      compartments: [],
    });
    expect(badChild.__typename).toBe("InvalidInput");
    expect(badChild.issues.map(({ field }: any) => field)).toEqual(
      expect.arrayContaining(["name", "appetite", "allergies.0.allergen", "allergies.1", "compartments"]),
    );
    expect(badChild.issues.every(({ fix }: any) => fix.length > 5)).toBe(true);
    for (const dateOfBirth of ["2031-01-01", "1980-01-01"]) {
      expect(
        (await send(person, CHILD, { householdId: id, seenRevision: revision, ...child, dateOfBirth })).__typename,
      ).toBe("InvalidInput");
    }
    const nowhere = await send(person, FOUND, { name: "", timeZone: "Mars/Olympus", currency: "pounds" });
    expect(nowhere.issues.map(({ field }: any) => field)).toEqual(["name", "timeZone", "currency"]);
    const short = await run(person, FOUND, {
      input: { idempotencyKey: "x", name: "A", timeZone: "UTC", currency: "EUR" },
    });
    expect(short.data.createHousehold.issues[0].field).toBe("idempotencyKey");
    expect([await count("child"), await count("household"), await count("idempotency_key")]).toEqual(before);
  });

  it("makes one household for one key, however often it is sent", async () => {
    const input = { idempotencyKey: newKey(), name: "Twice", timeZone: "UTC", currency: "EUR" };
    const before = await count("household");
    const answers = await Promise.all([1, 2, 3].map(() => send(person, FOUND, input)));
    expect(new Set(answers.map(({ household }) => household.id)).size).toBe(1);
    expect(await count("household")).toBe(before + 1);
    expect(await send(person, FOUND, { ...input, name: "Other" })).toMatchObject({
      __typename: "KeyReused",
      usedFor: "createHousehold",
    });
  });
});

describe("the kitchen", () => {
  const ana = "demo:ana";

  it("takes stock, leftovers, equipment and prep times, and counts its revisions", async () => {
    const { id, ...read } = await homeOf(ana);
    let revision = read.revision as number;
    const step = async (document: string, input: object) => {
      const answer = await send(ana, document, { householdId: id, seenRevision: revision, ...input });
      expect(answer.__typename).toBe("KitchenPayload");
      expect(answer.household.revision).toBe(revision + 1);
      revision += 1;
      return answer.household.kitchen;
    };
    const stocked = await step(STOCK, {
      entries: [
        { food: "apple-raw", grams: 0 },
        { food: "banana-raw", grams: 250 },
      ],
    });
    expect(stocked.stock.map(({ food }: any) => food.key)).not.toContain("apple-raw");
    expect(stocked.stock).toContainEqual({ food: { key: "banana-raw" }, grams: 250 });
    const { leftovers } = await step(LEFTOVERS, {
      leftovers: [{ base: "tomato-sauce", grams: 300, cookedOn: "2027-01-10" }],
    });
    // Kept chilled for four days, the day of cooking counted.
    expect(leftovers).toEqual([
      { base: { key: "tomato-sauce" }, grams: 300, cookedOn: "2027-01-10", lastSafeDay: "2027-01-13" },
    ]);
    const { equipment } = await step(EQUIP, { equipment: [{ kind: "OVEN", units: 2 }] });
    expect(equipment).toContainEqual({ kind: "OVEN", units: 2 });
    const { prepTimes } = await step(PREP, {
      prepTimes: [
        { kind: "MORNING", weekday: "MONDAY", startsAt: "06:40", handsOnMinutes: 33, elapsedMinutes: 60 },
        { kind: "EVENING", date: "2027-01-12", startsAt: "20:00", handsOnMinutes: 5, elapsedMinutes: 20 },
      ],
    });
    expect(prepTimes).toContainEqual({ kind: "MORNING", weekday: "MONDAY", handsOnMinutes: 33 });
    await step(RELAX, { rule: "STARCH_CHANGES", date: "2027-01-13" });
    await step(LABEL, { food: "raisins", contains: [], mayContain: ["SULPHITES"], readOn: "2026-11-20" });
  });

  it("refuses foods, bases and equipment it does not know, and names what is near", async () => {
    const { id, revision } = await homeOf(ana);
    const at = { householdId: id, seenRevision: revision };
    const food = await send(ana, STOCK, {
      ...at,
      entries: [
        { food: "banana-raw", grams: 5 },
        { food: "bananna-raw", grams: 5 },
      ],
    });
    expect(food.issues[0]).toMatchObject({ field: "entries.1.food" });
    expect(food.issues[0].fix).toMatch(/banana-raw/);
    const base = await send(ana, LEFTOVERS, {
      ...at,
      leftovers: [{ base: "tomatosauce", grams: 5, cookedOn: "2027-01-10" }],
    });
    expect(base.issues[0].fix).toMatch(/tomato-sauce/);
    expect((await send(ana, EQUIP, { ...at, equipment: [{ kind: "TANDOOR", units: 1 }] })).issues[0].field).toBe(
      "equipment.0.kind",
    );
    expect(
      (
        await send(ana, PREP, {
          ...at,
          prepTimes: [{ kind: "MORNING", startsAt: "06:00", handsOnMinutes: 10, elapsedMinutes: 20 }],
        })
      ).issues[0].fix,
    ).toMatch(/weekday or date/);
    expect(
      (await send(ana, LABEL, { ...at, food: "raisins", contains: ["NUTS"], mayContain: [], readOn: "2026-11-20" }))
        .issues[0].field,
    ).toBe("contains.0");
    expect((await homeOf(ana)).revision).toBe(revision);
  });
});

describe("a child's needs", () => {
  const NEEDS = `query Needs($id: ID!) { household(id: $id) { energyMethod children { name provisions { food { key } grams weekday breakKey }
    dailyNeeds(on: "${DAY}") { energyKcal energyMethod folateDfeUg addedSugarMealMaxGrams inputs { sex weightKg heightCm assumed }
      sources { figure source } upperLevels { nutrient amount unit } breaks { breakKey share source energyKcal givenKcal } } } } }`;
  const METHOD = `mutation Method($input: SetEnergyMethodInput!) { setEnergyMethod(input: $input) { __typename } }`;
  const GIVE = `mutation Give($input: SetSchoolProvisionInput!) { setSchoolProvision(input: $input) { __typename ... on InvalidInput { issues { field problem } }
    ... on SetSchoolProvisionPayload { child { provisions { food { key } grams } } } } }`;
  const person = "test:needs-parent";
  let householdId: string;
  let childId: string;
  const revision = async () => (await homeOf(person)).revision as number;
  const childNow = async () => (await run(person, NEEDS, { id: householdId })).data.household.children[0];

  beforeAll(async () => {
    householdId = (await send(person, FOUND, { name: "Mill lane", timeZone: "Europe/London", currency: "GBP" }))
      .household.id;
    const made = await send(person, CHILD, {
      householdId,
      seenRevision: 1,
      ...child,
      sex: "FEMALE",
      weightKg: 24,
      allergies: [{ allergen: "EGG" }],
    });
    childId = made.child.id;
    const { data } = await run(person, "{ schools(first: 10) { nodes { name classes { id name } } } }");
    const schoolClassId = data.schools.nodes
      .flatMap(({ classes }: any) => classes)
      .find(({ name }: any) => name === "Class 4").id;
    await send(person, ENROL, { householdId, seenRevision: 2, childId, schoolClassId, fromDate: "2026-11-01" });
  });

  it("say what they were worked out from, what was assumed, where each figure stands, and what each break is for", async () => {
    const { dailyNeeds } = await childNow();
    expect(dailyNeeds).toMatchObject({
      energyMethod: "NASEM_2023",
      folateDfeUg: 200,
      addedSugarMealMaxGrams: 10,
      inputs: { sex: "FEMALE", weightKg: 24, assumed: ["heightCm"] },
    });
    expect(dailyNeeds.sources.map(({ figure }: any) => figure)).toEqual(
      expect.arrayContaining(["energy", "intakes", "sodium", "saturatedFat", "freeSugars", "addedSugars", "bodySize"]),
    );
    expect(dailyNeeds.upperLevels).toContainEqual({ nutrient: "CA", amount: 2500, unit: "mg" });
    expect(dailyNeeds.breaks).toEqual([
      expect.objectContaining({
        breakKey: "morning-break",
        share: 0.08,
        source: expect.stringMatching(/our estimate/),
      }),
      expect.objectContaining({ breakKey: "lunch", share: 0.3, energyKcal: Math.round(dailyNeeds.energyKcal * 0.3) }),
    ]);
  });

  it("change with the equation the household chooses", async () => {
    const before = (await childNow()).dailyNeeds;
    const chosen = await send(person, METHOD, { householdId, seenRevision: await revision(), method: "IOM_2005" });
    expect(chosen.__typename).toBe("KitchenPayload");
    const after = (await childNow()).dailyNeeds;
    expect(after.energyMethod).toBe("IOM_2005");
    expect(after.energyKcal).not.toBe(before.energyKcal);
  });

  it("count what the school gives, once it is said", async () => {
    const give = async (entries: object[]) =>
      send(person, GIVE, { householdId, seenRevision: await revision(), childId, entries });
    const given = await give([{ food: "milk-whole", grams: 206, breakKey: "morning-break" }]);
    expect(given.child.provisions).toEqual([{ food: { key: "milk-whole" }, grams: 206 }]);
    const { breaks } = (await childNow()).dailyNeeds;
    expect(breaks.map(({ givenKcal }: any) => givenKcal)).toEqual([126, 0]);
    // The list is replaced.
    expect((await give([{ food: "milk-whole", grams: 100, weekday: "TUESDAY" }])).child.provisions).toHaveLength(1);
    expect((await childNow()).dailyNeeds.breaks.map(({ givenKcal }: any) => givenKcal)).toEqual([0, 0]);
  });

  it("never count on a food the child avoids: the school is to be told", async () => {
    const input = { householdId, seenRevision: await revision(), childId };
    const refused = await send(person, GIVE, { ...input, entries: [{ food: "egg-boiled", grams: 50 }] });
    expect(refused).toMatchObject({ __typename: "InvalidInput", issues: [{ field: "entries.0.food" }] });
    expect((await childNow()).provisions).toHaveLength(1);
    const unknown = await send(person, GIVE, { ...input, entries: [{ food: "milk-hole", grams: 50 }] });
    expect(unknown.issues[0].problem).toMatch(/no food of the catalogue/);
    const twice = [1, 2].map(() => ({ food: "milk-whole", grams: 100 }));
    expect((await send(person, GIVE, { ...input, entries: twice })).issues[0].field).toBe("entries.1");
    const other = await send(person, GIVE, {
      ...input,
      childId: globalId("Child", "00000000-0000-4000-8000-000000000000"),
      entries: [],
    });
    expect(other.__typename).toBe("ChildNotFound");
  });

  it("and label laws are there to read, with the caution that they are about labels", async () => {
    const { data } = await run(
      null,
      `{ labelLaws(on: "2026-11-25") { key incomplete caution allergens { code since members { name allergen } } }
        dish(key: "carrot-sticks") { ingredients { food { labelDeclarations(law: "eu", on: "2026-11-25") { status } } } } }`,
    );
    expect(data.labelLaws.map(({ key, incomplete }: any) => [key, incomplete])).toEqual([
      ["eu", false],
      ["us", false],
      ["ca", false],
      ["in", true],
    ]);
    expect(data.labelLaws[0].allergens).toHaveLength(14);
    for (const { caution } of data.labelLaws) expect(caution).toMatch(/not what a child may eat/);
    expect(data.dish.ingredients[0].food.labelDeclarations).toEqual([]);
  });
});

describe("who may do what", () => {
  it("nothing is answered without a signed-in person but the catalogue", async () => {
    const { errors } = await run(null, "{ me { person { id } } }");
    expect(errors[0]!.extensions).toMatchObject({ code: "UNAUTHENTICATED" });
    const { data } = await run(
      null,
      '{ dish(key: "carrot-sticks") { key name allergens hazards { class underAgeYears cut } nutrients { tag amount unit } } }',
    );
    expect(data.dish).toMatchObject({ key: "carrot-sticks", allergens: [] });
    expect(data.dish.hazards[0]).toMatchObject({ class: "HARD_RAW", underAgeYears: 5 });
  });

  it("pages through all dishes of a slot, each once", async () => {
    const seen: string[] = [];
    let after: string | null = null;
    do {
      const { data }: { data: any } = await run(
        null,
        "query Dishes($after: String) { dishes(slot: FRUIT, first: 10, after: $after) { nodes { key slots } pageInfo { hasNextPage endCursor } } }",
        { after },
      );
      seen.push(...data.dishes.nodes.map(({ key }: any) => key as string));
      after = data.dishes.pageInfo.hasNextPage ? (data.dishes.pageInfo.endCursor as string) : null;
    } while (after !== null);
    expect(new Set(seen).size).toBe(seen.length);
    expect(seen.length).toBeGreaterThanOrEqual(30);
    const { errors } = await run(null, "{ dishes(first: 1000) { nodes { key } } }");
    expect(errors[0]!.message).toMatch(/1 to 100/);
  });

  it("a stranger's, a malformed and an unknown household look alike, and nothing happens", async () => {
    const anas = (await homeOf("demo:ana")).id as string;
    const before = await count("week_plan");
    const messages = new Set<string>();
    for (const householdId of [
      anas,
      globalId("Household", "00000000-0000-4000-8000-000000000000"),
      "nonsense",
      globalId("Child", "00000000-0000-4000-8000-000000000000"),
    ]) {
      expect(
        (await run("test:stranger", "query Home($id: ID!) { household(id: $id) { id } }", { id: householdId })).data
          .household,
      ).toBeNull();
      const refused = await send("test:stranger", PLAN, { householdId, date: DAY, seenRevision: 0 });
      expect(refused.__typename).toBe("HouseholdNotFound");
      messages.add(refused.message as string);
    }
    expect(messages.size).toBe(1);
    expect(await count("week_plan")).toBe(before);
  });

  it("a helper may not change the kitchen or the children, and is told whom to ask", async () => {
    const { id, revision } = await homeOf("demo:iris");
    const at = { householdId: id, seenRevision: revision };
    expect(await send("demo:iris", STOCK, { ...at, entries: [] })).toMatchObject({
      __typename: "NotPermitted",
      neededRole: "COOK",
    });
    expect(await send("demo:iris", CHILD, { ...at, ...child })).toMatchObject({ __typename: "NotPermitted" });
    expect((await send("demo:iris", PLAN, { householdId: id, date: DAY, seenRevision: 0 })).message).toMatch(
      /ask a cook/,
    );
  });

  it("the other home of a shared child sees her boxes and nothing of this kitchen", async () => {
    const { id } = await homeOf("demo:ana");
    const planned = await send("demo:ana", PLAN, { householdId: id, date: DAY, seenRevision: 0 });
    expect(planned.__typename).toBe("WeekPayload");
    const { data } = await run(
      "demo:leo",
      `{ me { households { name children { name boxes(from: "${DAY}", to: "2027-01-15") { id date packing { leaveAt } items { id slot dish { name } grams allergens cuts { cut } labelsToRead { key } pinned note { why } } } } } } }`,
    );
    const [home] = data.me.households;
    expect(home.children.map(({ name }: any) => name)).toEqual(["Mina"]);
    const boxes = home.children[0].boxes;
    expect(boxes.map(({ date }: any) => date)).toEqual(["2027-01-11", "2027-01-12", "2027-01-15"]);
    for (const box of boxes) {
      expect(box.packing).toBeNull();
      for (const item of box.items) expect(item).toMatchObject({ note: null, labelsToRead: null, pinned: false });
    }
    const theirs = [planned.week.id, planned.week.plan.boxes[0].id, boxes[0].id, boxes[0].items[0].id];
    for (const nodeId of theirs) {
      expect(
        (await run("demo:leo", "query Any($id: ID!) { node(id: $id) { id } }", { id: nodeId })).data.node,
      ).toBeNull();
    }
    expect(
      await send("demo:leo", SWAP, { itemId: boxes[0].items[0].id, dish: "orange-segments", seenRevision: 1 }),
    ).toMatchObject({ __typename: "NothingThere" });
  });

  it("what a child eats in one home is not her main in the other that week", async () => {
    const { id } = await homeOf("demo:leo");
    const planned = await send("demo:leo", PLAN, { householdId: id, date: DAY, seenRevision: 0 });
    expect(planned.__typename).toBe("WeekPayload");
    const { data } = await run(
      "demo:leo",
      `{ me { households { children { boxes(from: "${DAY}", to: "2027-01-15") { date items { slot dish { key } } } } } } }`,
    );
    const mains = data.me.households[0].children[0].boxes.flatMap(({ items }: any) =>
      items.filter(({ slot }: any) => slot === "MAIN").map(({ dish }: any) => dish.key as string),
    );
    expect(mains).toHaveLength(5);
    expect(new Set(mains).size).toBe(5);
  });
});

describe("an administrator", () => {
  const ruth = "demo:ruth";
  const rule = {
    id: "no-bananas",
    kind: "EXCLUDE",
    says: "No bananas this term.",
    level: "FORBID",
    source: "own rule of an invented school",
    matches: { anyOf: [{ kinds: ["banana"] }] },
  };
  const document = {
    format: "noonpail-rule-set/1",
    key: "test-bananas",
    title: "Bananas",
    layer: "SCHOOL",
    coversFoodFromHome: true,
    language: "en",
    version: 1,
    inForceFrom: "2027-01-04",
    rules: [rule],
  };

  it("sees every mistake of a document with its place and the way out, and nothing is loaded", async () => {
    const school = (await run(ruth, HOMES, { day: DAY })).data.me.administers[0];
    const load = (value: unknown) =>
      send(ruth, LOAD, {
        schoolId: school.id,
        seenRevision: 0,
        document: typeof value === "string" ? value : JSON.stringify(value),
      });
    const before = [await count("rule_set"), await count("rule_set_version"), await count("rule")];
    expect((await load("{ not json")).issues[0].problem).toMatch(/opened and not closed/);
    const broken = await load({
      ...document,
      inForceFrom: "4 January",
      language: "English",
      rules: [
        { ...rule, level: "MAYBE" },
        { ...rule, kind: "BAN" },
      ],
    });
    expect(broken.issues.map(({ path }: any) => path).sort()).toEqual([
      "inForceFrom",
      "language",
      "rules.0.level",
      // Both rules have the same id.
      "rules.1.id",
      "rules.1.kind",
    ]);
    expect((await load({ ...document, rules: [rule, rule] })).issues[0].path).toBe("rules.1.id");
    expect((await load({ ...document, layer: "CHILD" })).issues[0].path).toBe("layer");
    expect((await load({ ...document, version: 3 })).issues[0].expected).toMatch(/^1: /);
    expect((await load({ ...document, inForceUntil: "2026-01-01" })).issues[0].path).toBe("inForceUntil");
    expect((await load("x".repeat(1_000_001))).issues[0].problem).toMatch(/1000001 bytes/);
    expect([await count("rule_set"), await count("rule_set_version"), await count("rule")]).toEqual(before);
    const stranger = await send("demo:ana", LOAD, {
      schoolId: school.id,
      seenRevision: 0,
      document: JSON.stringify(document),
    });
    expect(stranger.__typename).toBe("NotAppointed");
  });

  it("loads a rule set that the next plan of a family obeys", async () => {
    const school = (await run(ruth, HOMES, { day: DAY })).data.me.administers[0];
    const loaded = await send(ruth, LOAD, { schoolId: school.id, seenRevision: 0, document: JSON.stringify(document) });
    expect(loaded.ruleSet).toMatchObject({ key: "test-bananas", version: 1, rules: [{ key: "no-bananas" }] });
    expect(
      await send(ruth, LOAD, { schoolId: school.id, seenRevision: 0, document: JSON.stringify(document) }),
    ).toMatchObject({ __typename: "RevisionPassed", currentRevision: 1 });
    const { id, week } = await homeOf("demo:ana");
    const planned = await send("demo:ana", PLAN, { householdId: id, date: DAY, seenRevision: week.revision });
    expect(planned).toMatchObject({ __typename: "WeekPayload" });
    const dishes = planned.week.plan.boxes
      .filter(({ child: { name } }: any) => name !== "Theo")
      .flatMap(({ items }: any) => items.map(({ dish }: any) => dish.key as string));
    expect(dishes.length).toBeGreaterThan(20);
    expect(dishes.filter((key: string) => key.includes("banana"))).toEqual([]);
    const origin = await run(
      "demo:ana",
      `{ me { households { week(date: "${DAY}") { plan { origin { ruleSetVersions } } } } } }`,
    );
    expect(origin.data.me.households[0].week.plan.origin.ruleSetVersions).toContain("test-bananas@1");
  });
});
