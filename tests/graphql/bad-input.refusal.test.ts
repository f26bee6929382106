import { globalId } from "../../src/graphql/global-id.js";
import { newKey } from "../support/app.js";
import { classId, localOf, schoolId, useServedApp, type Household, type WeekSeen } from "../support/served-app.js";
import { ABSENT, AGREE, CHILD, DAY, ENROL, FOUND, LOAD, PACK, PLAN, PREP, SWAP, TAKE } from "./documents.js";
import { documentOf } from "./every-mutation.js";

const served = useServedApp();
let home: Household;
let week: WeekSeen;
let before: string;
beforeAll(async () => {
  home = await served.household().child().planned(DAY).found();
  week = (await home.week(DAY))!;
});
beforeEach(async () => void (before = await served.everyRow()));
const nothingChanged = async () => expect(await served.everyRow()).toBe(before);

const child = {
  name: "Bo",
  dateOfBirth: "2019-02-03",
  compartments: [{ ml: 600, leakProof: true }],
  leaveAt: "08:00",
};
const morning = { kind: "MORNING", startsAt: "06:40", handsOnMinutes: 30, elapsedMinutes: 60 };

describe("input that contradicts itself or cannot be kept", () => {
  it.each([
    [
      "setStock",
      {
        entries: [
          { food: "apple-raw", grams: 1 },
          { food: "banana-raw", grams: 1 },
          { food: "apple-raw", grams: 2 },
        ],
      },
      "entries.2",
    ],
    [
      "setEquipment",
      {
        equipment: [
          { kind: "OVEN", units: 1 },
          { kind: "OVEN", units: 2 },
        ],
      },
      "equipment.1",
    ],
    [
      "setPrepTimes",
      {
        prepTimes: [
          { ...morning, weekday: "MONDAY" },
          { ...morning, weekday: "TUESDAY" },
          { ...morning, weekday: "MONDAY" },
        ],
      },
      "prepTimes.2",
    ],
    [
      "setPrepTimes",
      {
        prepTimes: [
          { ...morning, date: DAY },
          { ...morning, date: DAY },
        ],
      },
      "prepTimes.1",
    ],
    ["setPrepTimes", { prepTimes: [{ ...morning, weekday: "MONDAY", handsOnMinutes: 61 }] }, "prepTimes.0"],
    [
      "createChild",
      { ...child, allergies: [{ allergen: "EGG" }, { allergen: "EGG", avoid: "INGREDIENTS" }] },
      "allergies.1",
    ],
    [
      "recordLabel",
      {
        food: "raisins",
        contains: [],
        mayContain: [],
        readOn: "2026-11-20",
        kinds: [
          { kind: "kiwi", says: "CLEAR" },
          { kind: "kiwi", says: "CONTAINS" },
        ],
      },
      "kinds.1",
    ],
    ["recordLabel", { food: "raisins", contains: [], mayContain: [], readOn: "2026-11-27" }, "readOn"],
    ["createChild", { ...child, name: "B\u0000o" }, "name"],
    ["createChild", { ...child, name: "B\ud800o" }, "name"],
    ["enrolChild", { fromDate: "2027-02-01", untilDate: "2027-01-31" }, "untilDate"],
    ["enrolChild", { fromDate: "2026-09-01" }, "fromDate"],
    ["setStock", { idempotencyKey: "12345678\u0000", entries: [] }, "idempotencyKey"],
  ])("%s names the place", async (field, input, place) => {
    const about = field === "enrolChild" ? { childId: home.children[0], schoolClassId: classId("class-4") } : {};
    const refused = await home.change(documentOf(field), { ...about, ...input });
    expect(refused.__typename).toBe("InvalidInput");
    expect(refused.issues.map((issue) => issue.field)).toEqual([place]);
    for (const { problem, fix } of refused.issues) expect([problem.length > 0, fix.length > 5]).toEqual([true, true]);
    await nothingChanged();
  });

  it("a household's name, a reason and a rule's sentence are text that can be shown", async () => {
    const named = await served.send(home.coordinator, FOUND, { name: "\u0007", timeZone: "UTC", currency: "EUR" });
    expect(named.issues.map(({ field }) => field)).toEqual(["name"]);
    const reason = { householdId: home.id, childId: home.children[0], date: DAY, seenRevision: week.revision };
    const absent = await served.send(home.coordinator, ABSENT, { ...reason, reason: "ill\u0000" });
    expect(absent.issues.map(({ field }) => field)).toEqual(["reason"]);
    const long = await served.send(home.coordinator, ABSENT, { ...reason, reason: "x".repeat(201) });
    expect(long.issues.map(({ field }) => field)).toEqual(["reason"]);
    for (const says of ["No kiwi\u0000 today.", "No kiwi\ud800 today."]) {
      const rule = {
        id: "no-kiwi",
        kind: "EXCLUDE",
        says,
        level: "FORBID",
        source: "own rule",
        matches: { anyOf: [{ kinds: ["kiwi"] }] },
      };
      const set = {
        format: "noonpail-rule-set/1",
        key: "signs",
        title: "Signs",
        layer: "SCHOOL",
        coversFoodFromHome: true,
      };
      const document = { ...set, language: "en", version: 1, inForceFrom: "2027-06-01", rules: [rule] };
      const loaded = await served.send("demo:ruth", LOAD, {
        schoolId: schoolId("primary"),
        seenRevision: 0,
        document: JSON.stringify(document),
      });
      expect(loaded).toMatchObject({ __typename: "DocumentRefused", issues: [{ path: "", line: 1 }] });
    }
    await nothingChanged();
  });

  it("every complaint about a rule set document comes at once", async () => {
    const rule = {
      id: "same",
      kind: "EXCLUDE",
      says: "No kiwi.",
      level: "FORBID",
      source: "own rule",
      matches: { anyOf: [{ kinds: ["kiwi"] }] },
    };
    const document = {
      format: "noonpail-rule-set/1",
      key: "twice",
      title: "Twice",
      layer: "CLASS",
      coversFoodFromHome: true,
      language: "en",
      version: 1,
      inForceFrom: "2027-06-01",
      inForceUntil: "2027-05-01",
      rules: [rule, rule, { ...rule, id: "other" }, rule],
    };
    const load = (input: Record<string, unknown>) =>
      served.send("demo:ruth", LOAD, { schoolId: schoolId("primary"), seenRevision: 0, ...input });
    const refused = await load({ document: JSON.stringify(document) });
    expect(refused.__typename).toBe("DocumentRefused");
    expect(refused.issues.map(({ path }) => path)).toEqual(["layer", "inForceUntil", "rules.1.id", "rules.3.id"]);
    const good = JSON.stringify({ ...document, inForceUntil: undefined, rules: [rule] });
    // A class of another school, a class that is not there, a school that is not there.
    for (const schoolClassId of [classId("year-8"), globalId("SchoolClass", "not-a-uuid")]) {
      const elsewhere = await load({ document: good, schoolClassId });
      expect(elsewhere.issues.map(({ field }) => field)).toEqual(["schoolClassId"]);
    }
    for (const school of ["", globalId("School", "00000000-0000-4000-8000-000000000000"), home.id])
      expect(await load({ document: good, schoolId: school, schoolClassId: classId("class-4") })).toMatchObject({
        __typename: "SchoolNotFound",
      });
    expect(await load({ document: good, schoolId: schoolId("upper"), schoolClassId: classId("year-8") })).toMatchObject(
      {
        __typename: "NotAppointed",
      },
    );
    await nothingChanged();
  });

  it("days that are on no calendar or out of all reach never get as far as the kitchen", async () => {
    for (const date of ["2027-02-30", "0000-01-01", "1899-12-31", "2200-01-01", "9999-12-31", "yesterday"]) {
      const queries: [string, Record<string, unknown>][] = [
        [PLAN, { input: { idempotencyKey: newKey(), householdId: home.id, date, seenRevision: 0 } }],
        [
          "query Week($id: ID!, $date: LocalDate!) { week(householdId: $id, date: $date) { id } }",
          { id: home.id, date },
        ],
        [`query Literal($id: ID!) { household(id: $id) { children { ageYears(on: "${date}") } } }`, { id: home.id }],
      ];
      for (const [query, variables] of queries) {
        const { errors } = await served.post(home.coordinator, query, variables);
        expect(errors[0]!.extensions["code"]).toMatch(/BAD_USER_INPUT|GRAPHQL_VALIDATION_FAILED/);
        expect(errors[0]!.message).toMatch(/LocalDate|not a day/);
      }
    }
    await nothingChanged();
  });

  it("the first and last days that may be asked about are answered", async () => {
    for (const date of ["1900-01-01", "2199-12-31"]) {
      expect(await home.week(date)).toBeNull();
      expect((await home.plan(date)).__typename).toMatch(/NoSchool|OutsideTerm/);
    }
    await nothingChanged();
  });
});

describe("a page of a list", () => {
  it("is refused with a cursor that is none, or a size out of range", async () => {
    for (const after of ["AA", "%%%", "gICA", "YXBwbGU="]) {
      for (const list of ["schools", "dishes"]) {
        const { errors } = await served.post(
          home.coordinator,
          `query Page($after: String) { ${list}(after: $after) { nodes { id } } }`,
          { after },
        );
        expect(errors).toMatchObject([{ extensions: { code: "BAD_USER_INPUT" } }]);
        expect(errors[0]!.message).toMatch(/endCursor/);
      }
    }
    for (const first of [-1, 0, 101]) {
      const { errors } = await served.post(home.coordinator, `{ schools(first: ${first}) { nodes { id } } }`);
      expect(errors[0]!.message).toMatch(/1 to 100/);
    }
  });

  it("is empty after the last row", async () => {
    const after = Buffer.from("zzz").toString("base64url");
    const page = await served.ask<Record<string, { nodes: unknown[]; pageInfo: unknown }>>(
      home.coordinator,
      "query Page($after: String) { dishes(after: $after) { nodes { key } pageInfo { hasNextPage endCursor } } }",
      { after },
    );
    expect(page["dishes"]).toEqual({ nodes: [], pageInfo: { hasNextPage: false, endCursor: null } });
  });
});

describe("a child or class that is not one's own", () => {
  it("is not found, whoever's it is", async () => {
    const theirs = await served.household().child().found();
    before = await served.everyRow();
    const enrol = { schoolClassId: classId("year-8"), fromDate: "2027-04-12" };
    const absent = { householdId: home.id, date: DAY, seenRevision: week.revision };
    const said = new Set<string>();
    for (const childId of [
      theirs.children[0],
      globalId("Child", "00000000-0000-4000-8000-000000000000"),
      "",
      home.id,
    ]) {
      for (const refused of [
        await home.change(ENROL, { ...enrol, childId }),
        await served.send(home.coordinator, ABSENT, { ...absent, childId }),
      ]) {
        expect(refused.__typename).toBe("ChildNotFound");
        said.add(refused.message);
      }
    }
    expect(said.size).toBe(1);
    for (const schoolClassId of [
      "",
      schoolId("primary"),
      globalId("SchoolClass", "00000000-0000-4000-8000-000000000000"),
    ])
      expect(await home.change(ENROL, { ...enrol, childId: home.children[0], schoolClassId })).toMatchObject({
        __typename: "SchoolNotFound",
      });
    await nothingChanged();
  });

  it("a child without a school stops the plan, and the answer says how to go on", async () => {
    const waiting = await served.household().child().child({ name: "Kit" }, null).found();
    before = await served.everyRow();
    const refused = await waiting.plan(DAY);
    expect(refused).toMatchObject({ __typename: "NoSchool", children: [{ name: "Kit" }] });
    expect(refused.message).toMatch(/enrolChild/);
    await nothingChanged();
  });
});

describe("a week", () => {
  it("outside every term is not planned, and the answer names the next school day", async () => {
    expect(await home.plan("2026-12-28")).toMatchObject({
      __typename: "OutsideTerm",
      weekStart: "2026-12-28",
      nextSchoolDay: "2027-01-05",
    });
    expect(await home.plan("2028-06-01")).toMatchObject({ __typename: "OutsideTerm", nextSchoolDay: null });
    await nothingChanged();
  });

  it("has no absence on a day without a box; the answer names the next school day", async () => {
    const input = { householdId: home.id, childId: home.children[0], seenRevision: week.revision };
    const refused = await served.send(home.coordinator, ABSENT, { ...input, date: "2027-01-16" });
    expect(refused.__typename).toBe("OutsideTerm");
    expect(refused.message).toContain("2027-01-18");
    await nothingChanged();
  });

  it("in a kitchen without any minutes names a session and more minutes as the way out", async () => {
    const idle = await served.household().child().found();
    const { household } = await served.ask<{
      household: { kitchen: { prepTimes: { kind: string; weekday: string; startsAt: string }[] } };
    }>(
      idle.coordinator,
      "query Times($id: ID!) { household(id: $id) { kitchen { prepTimes { kind weekday startsAt } } } }",
      { id: idle.id },
    );
    const none = household.kitchen.prepTimes.map((time) => ({ ...time, handsOnMinutes: 0, elapsedMinutes: 0 }));
    expect((await idle.change(PREP, { prepTimes: none })).__typename).toBe("KitchenPayload");
    before = await served.everyRow();
    const refused = await idle.plan(DAY);
    expect(refused.__typename).toBe("WeekInfeasible");
    const short = refused.conflicts.find(({ session }) => session !== null);
    expect(short?.session).toMatch(/^(weekend|evening|morning)-2027-01-1\d$/);
    expect(short?.wayOut).toMatch(/more minutes/);
    await nothingChanged();
  });

  it("refuses a swap to a dish that is not there and offers names that look like it", async () => {
    const main = week.plan.boxes[0]!.items.find(({ slot }) => slot === "MAIN")!;
    const swap = (dish: string) =>
      served.send(home.coordinator, SWAP, { itemId: main.id, dish, seenRevision: week.revision });
    for (const dish of ["orange-segmnts", "Orange-Segments", "orange segments"])
      expect((await swap(dish)).nearest).toContain("orange-segments");
    for (const dish of ["", "\u0000", "x".repeat(5_000), "__proto__", "'; drop table dish; --"]) {
      const refused = await swap(dish);
      expect(refused.__typename).toBe("DishUnknown");
      expect(refused.nearest).toHaveLength(3);
    }
    await nothingChanged();
  });

  it("refuses a swap that breaks a safety, school or house rule, and names it", async () => {
    const nutFree = await served
      .household()
      .child({ name: "Rae", dateOfBirth: "2018-05-07", allergies: [{ allergen: "TREE_NUTS" }] }, "class-4")
      .planned(DAY)
      .found();
    const { plan, revision } = (await nutFree.week(DAY))!;
    before = await served.everyRow();
    const swap = (slot: string, breakKey: string, dish: string, box = 0) => {
      const item = plan.boxes[box]!.items.find((entry) => entry.slot === slot && entry.breakKey === breakKey)!;
      return served.send(nutFree.coordinator, SWAP, { itemId: item.id, dish, seenRevision: revision });
    };
    const nuts = await swap("EXTRA", "lunch", "walnut-fig-pieces");
    expect(nuts).toMatchObject({
      __typename: "SwapRefused",
      conflicts: [{ kind: "PIN_NOT_ALLOWED", child: { name: "Rae" } }],
    });
    expect(nuts.conflicts[0]!.text).toMatch(/allergen/);
    // Fruit and nothing else at the morning break.
    const dried = await swap("FRUIT", "morning-break", "dried-apricots-and-raisins");
    expect(dried).toMatchObject({ __typename: "SwapRefused", conflicts: [{ kind: "PIN_NOT_ALLOWED" }] });
    expect(dried.conflicts[0]!.text).toMatch(/school rule/);
    // A main comes once a week. A second time may break a nutrient's limit as well; what is named first is then that.
    const kinds: string[] = [];
    for (const other of [0, 1, 2, 4]) {
      const main = plan.boxes[other]!.items.find(({ slot }) => slot === "MAIN")!.dish.key;
      const again = await swap("MAIN", "lunch", main, 3);
      expect(again.__typename).toBe("SwapRefused");
      expect(again.conflicts[0]!.wayOut).toMatch(/./);
      kinds.push(...again.conflicts.map(({ kind }) => kind));
    }
    expect(kinds).toContain("DISH_REPEATS");
    await nothingChanged();
  });

  it("that is agreed is neither agreed nor planned again by accident, and can be on purpose", async () => {
    const settled = await served.household().child().planned(DAY).found();
    const drafted = (await settled.week(DAY))!;
    const agree = { weekId: drafted.id, seenRevision: drafted.revision };
    expect((await served.send(settled.coordinator, AGREE, agree)).week.plan.state).toBe("AGREED");
    before = await served.everyRow();
    const twice = await served.send(settled.coordinator, AGREE, { ...agree, seenRevision: drafted.revision + 1 });
    expect(twice).toMatchObject({ __typename: "WeekAgreed" });
    const planned = await settled.plan(DAY);
    expect(planned).toMatchObject({ __typename: "WeekAgreed", agreedAt: "2026-11-25T12:00:00.000Z" });
    expect(planned.message).toMatch(/replanAgreed: true/);
    await nothingChanged();
    const meant = await settled.plan(DAY, { replanAgreed: true });
    expect(meant.week.plan).toMatchObject({ number: 2, state: "AGREED" });
    // Nothing else has changed, so no box need change.
    expect(meant.changedBoxes).toEqual([]);
  });

  it("whose plan was replaced no longer answers to its old parts", async () => {
    const moved = await served.household().child().planned(DAY).found();
    const old = (await moved.week(DAY))!;
    const { week: now } = await moved.plan(DAY);
    before = await served.everyRow();
    const seenRevision = now.revision;
    const [box] = old.plan.boxes;
    for (const [document, input] of [
      [SWAP, { itemId: box!.items[0]!.id, dish: "orange-segments" }],
      [PACK, { boxId: box!.id, packedAt: `${DAY}T07:10:00Z` }],
      [TAKE, { taskId: old.plan.tasks[0]!.id }],
      [documentOf("pinItem"), { itemId: box!.items[0]!.id }],
      [documentOf("finishTask"), { taskId: old.plan.tasks[0]!.id }],
    ] as const)
      expect((await served.send(moved.coordinator, document, { ...input, seenRevision })).__typename).toBe(
        "NothingThere",
      );
    for (const id of [box!.id, box!.items[0]!.id, old.plan.tasks[0]!.id, old.plan.id])
      expect(await served.ask(moved.coordinator, "query Any($id: ID!) { node(id: $id) { id } }", { id })).toEqual({
        node: null,
      });
    await nothingChanged();
  });
});

describe("a box", () => {
  it("is packed near its own day, once, and does not move afterwards", async () => {
    const packing = await served.household().child().planned(DAY).found();
    const { plan, revision } = (await packing.week(DAY))!;
    const [box] = plan.boxes;
    const pack = (change: Record<string, unknown>) =>
      served.send(packing.coordinator, PACK, {
        boxId: box!.id,
        packedAt: `${DAY}T07:10:00+00:00`,
        seenRevision: revision,
        ...change,
      });
    const early = await pack({ packedAt: "2027-01-01T07:00:00Z" });
    expect(early.issues.map(({ field }) => field)).toEqual(["packedAt"]);
    expect((await pack({})).__typename).toBe("WeekPayload");
    before = await served.everyRow();
    const now = { seenRevision: revision + 1 };
    expect(await pack(now)).toMatchObject({ __typename: "BoxClosed", state: "PACKED" });
    expect(
      await served.send(packing.coordinator, SWAP, { itemId: box!.items[0]!.id, dish: "orange-segments", ...now }),
    ).toMatchObject({ __typename: "BoxClosed", state: "PACKED" });
    const absent = { householdId: packing.id, childId: packing.children[0], date: DAY, ...now };
    expect(await served.send(packing.coordinator, ABSENT, absent)).toMatchObject({ __typename: "BoxClosed" });
    await nothingChanged();
  });

  it("that is blocked is not packed before the week is planned again", async () => {
    const blocked = await served.household().child().planned(DAY).found();
    const { plan, revision } = (await blocked.week(DAY))!;
    const [box] = plan.boxes;
    await served.inProcess.database.owner`update lunch_box set state = 'BLOCKED' where id = ${localOf(box!.id)}`;
    const input = { boxId: box!.id, packedAt: `${DAY}T07:10:00Z`, seenRevision: revision };
    const refused = await served.send(blocked.coordinator, PACK, input);
    expect(refused.__typename).toBe("BoxBlocked");
    expect(refused.message).toMatch(/Plan the week again/);
    const { week: again } = await blocked.plan(DAY);
    expect(again.plan.boxes.map(({ state }) => state)).toEqual(Array(5).fill("PLANNED"));
  });
});

describe("the last box of a week", () => {
  it("may fall away too when a child stays home", async () => {
    const ill = await served.household().child().planned(DAY).found();
    for (const date of ["2027-01-11", "2027-01-12", "2027-01-13", "2027-01-14", "2027-01-15"]) {
      const { revision } = (await ill.week(DAY))!;
      const input = { householdId: ill.id, childId: ill.children[0], date, seenRevision: revision };
      expect([date, (await served.send(ill.coordinator, ABSENT, input)).__typename]).toEqual([date, "WeekPayload"]);
    }
    const { plan } = (await ill.week(DAY))!;
    expect([plan.boxes, plan.tasks]).toEqual([[], []]);
    expect(await ill.plan(DAY)).toMatchObject({ __typename: "OutsideTerm", nextSchoolDay: "2027-01-18" });
  });
});

describe("a new child", () => {
  it("is refused with every complaint at once", async () => {
    const refused = await home.change(CHILD, {
      ...child,
      name: "",
      sex: "UNKNOWN",
      weightKg: 1,
      heightCm: 500,
      activity: "LAZY",
      diets: ["CARNIVORE"],
      minutesToEat: 1,
      appetite: 0,
      coldSources: 7,
      compartments: [{ ml: 49, leakProof: true }],
      allergies: [{}],
    });
    expect(refused.issues.map(({ field }) => field).sort()).toEqual(
      [
        "activity",
        "allergies.0",
        "appetite",
        "coldSources",
        "compartments.0.ml",
        "diets.0",
        "heightCm",
        "minutesToEat",
        "name",
        "sex",
        "weightKg",
      ].sort(),
    );
    await nothingChanged();
  });
});
