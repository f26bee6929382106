import { randomUUID } from "node:crypto";
import type { Tx } from "../../src/database/database.js";
import { readDemoFiles } from "../../src/database/seed.js";
import { useDatabase } from "../support/database.js";

const database = useDatabase({ demo: true });
const demo = readDemoFiles();
const idOf = (rows: readonly { key: string; id: string }[], key: string) => rows.find((row) => row.key === key)!.id;
const [ana, leo, ruth] = ["ana", "leo", "ruth"].map((key) => idOf(demo.people, key)) as [string, string, string];
const [millpond, hilltop] = ["millpond", "hilltop"].map((key) => idOf(demo.homes, key)) as [string, string];
const [pia, mina, theo] = ["pia", "mina", "theo"].map((key) => idOf(demo.children, key)) as [string, string, string];

interface PlantedWeek {
  readonly weekId: string;
  readonly planId: string;
  readonly boxes: Readonly<Record<string, string>>;
  readonly items: Readonly<Record<string, string>>;
}

/** A week of one day: a box with one item for each child, one batch, one task, one shopping line. */
async function plantWeek(tx: Tx, householdId: string, childIds: readonly string[], date: string): Promise<PlantedWeek> {
  const day = new Date(`${date}T00:00:00Z`);
  const week = await tx.week.create({ data: { householdId, weekStart: new Date("2027-01-11T00:00:00Z") } });
  const plan = await tx.weekPlan.create({
    data: {
      weekId: week.id,
      householdId,
      number: 1,
      state: "DRAFT",
      seed: 1n,
      steps: 1,
      problemHash: "-",
      catalogueVersion: "-",
      wishes: {},
      cautions: [],
      readyUses: [],
    },
  });
  const boxes: Record<string, string> = {};
  const items: Record<string, string> = {};
  for (const childId of childIds) {
    const box = await tx.lunchBox.create({ data: { weekPlanId: plan.id, childId, date: day, current: true } });
    const item = await tx.boxItem.create({
      data: {
        lunchBoxId: box.id,
        childId,
        breakKey: "lunch",
        slot: "MAIN",
        place: 0,
        dishKey: "dal-and-rice",
        grams: 300,
        served: "COLD",
        energyKcal: 400,
        cuts: [],
        allergens: [],
        holdingCase: "CHILLED",
      },
    });
    await tx.boxPacking.create({
      data: { lunchBoxId: box.id, householdId, leaveAt: "08:15", coldSources: 2, flask: false },
    });
    await tx.boxItemNote.create({
      data: {
        boxItemId: item.id,
        householdId,
        reasons: [],
        holdingMinutes: 215,
        holdingLimitMinutes: 240,
        compartment: 0,
      },
    });
    boxes[childId] = box.id;
    items[childId] = item.id;
  }
  const owned = { weekPlanId: plan.id, householdId };
  await tx.batch.create({
    data: {
      ...owned,
      baseKey: "lentil-dal",
      session: "weekend-2027-01-10",
      batches: 1,
      grams: 920,
      feeds: [],
      spareGrams: 0,
    },
  });
  await tx.task.create({
    data: {
      ...owned,
      key: "pack",
      session: "morning-2027-01-11",
      kind: "PACK",
      text: "Pack",
      handsOnMinutes: 4,
      passiveMinutes: 0,
      equipment: [],
      startsAt: "07:30",
      handsFreeAt: "07:34",
      endsAt: "07:34",
      latestStartsAt: "06:30",
      carer: 1,
    },
  });
  await tx.shoppingLine.create({
    data: {
      ...owned,
      foodKey: "carrot-raw",
      section: "PRODUCE",
      neededGrams: 100,
      fromStockGrams: 100,
      packs: 0,
      packGrams: 1000,
      spareGrams: 0,
      costMinor: 0,
      readLabel: false,
    },
  });
  return { weekId: week.id, planId: plan.id, boxes, items };
}

/** Rows of a table this person sees, and how many of them there are in truth. */
async function countSeen(personId: string, table: string): Promise<{ seen: number; all: number }> {
  const session = database.db.openRead(personId);
  try {
    const [row] = await session.read((tx) => tx<{ n: number }[]>`select count(*)::int as n from ${tx(table)}`);
    const [truth] = await database.owner<{ n: number }[]>`select count(*)::int as n from ${database.owner(table)}`;
    return { seen: row!.n, all: truth!.n };
  } finally {
    await session.close();
  }
}

let week: PlantedWeek;
beforeAll(async () => {
  week = await database.db.asPerson(ana, (tx) => plantWeek(tx, millpond, [pia, mina, theo], "2027-01-11"));
  await database.db.asPerson(ana, (tx) =>
    tx.relaxation.create({ data: { householdId: millpond, rule: "DISH_REPEATS", date: new Date("2027-01-11") } }),
  );
  await database.db.asPerson(ana, (tx) =>
    tx.pin.create({
      data: {
        householdId: millpond,
        childId: mina,
        date: new Date("2027-01-11"),
        breakKey: "lunch",
        slot: "MAIN",
        place: 0,
        dishKey: "dal-and-rice",
      },
    }),
  );
  await database.db.asPerson(ana, (tx) =>
    tx.prepTimeException.create({
      data: {
        householdId: millpond,
        kind: "MORNING",
        date: new Date("2027-01-11"),
        startsAt: "06:50",
        handsOnMinutes: 10,
        elapsedMinutes: 20,
        carers: 1,
      },
    }),
  );
});

describe("a child of two homes", () => {
  const asLeo = <T>(work: (tx: Tx) => Promise<T>) => database.db.asPerson(leo, work);

  test("the other home sees the child, with allergies, school and days", async () => {
    const children = await asLeo((tx) =>
      tx.child.findMany({ include: { allergies: true, enrolments: true, residencePatterns: true } }),
    );
    expect(children.map(({ id }) => id)).toEqual([mina]);
    expect(children[0]!.allergies.map(({ allergen }) => allergen).sort()).toEqual(["PEANUT", "TREE_NUTS"]);
    expect(children[0]!.enrolments).toHaveLength(1);
    expect(new Set(children[0]!.residencePatterns.flatMap(({ cycle }) => cycle))).toEqual(new Set([millpond, hilltop]));
  });

  test("the other home sees the child's boxes and what is in them, and no other child's", async () => {
    const boxes = await asLeo((tx) => tx.lunchBox.findMany({ include: { items: true } }));
    expect(boxes.map(({ id }) => id)).toEqual([week.boxes[mina]]);
    expect(boxes[0]!.items.map(({ id }) => id)).toEqual([week.items[mina]]);
    expect(await countSeen(leo, "box_item")).toEqual({ seen: 1, all: 3 });
  });

  test.each([
    "week",
    "week_plan",
    "batch",
    "task",
    "shopping_line",
    "box_packing",
    "box_item_note",
    "child_body",
    "relaxation",
    "pin",
    "prep_time_exception",
    "leftover",
    "freezer_stock",
  ])("the other home sees nothing of %s", async (table) => {
    const { seen, all } = await countSeen(leo, table);
    expect(all).toBeGreaterThan(0);
    expect(seen).toBe(0);
  });

  test.each(["household", "membership", "equipment", "prep_time", "stock", "label_check", "box_kit", "leave_time"])(
    "of %s the other home sees its own rows only",
    async (table) => {
      const { seen, all } = await countSeen(leo, table);
      const [own] = await database.owner<{ n: number }[]>`
        select count(*)::int as n from ${database.owner(table)} where ${database.owner(table === "household" ? "id" : "household_id")} = ${hilltop}`;
      expect(own!.n).toBeGreaterThan(0);
      expect(seen).toBe(own!.n);
      expect(all).toBeGreaterThan(seen);
    },
  );

  test("the other home's people are not seen, nor the child's siblings", async () => {
    expect((await asLeo((tx) => tx.person.findMany())).map(({ id }) => id)).toEqual([leo]);
    expect(await countSeen(leo, "residence")).toEqual({ seen: 2, all: 4 });
  });

  test("carers of one home see each other", async () => {
    const people = await database.db.asPerson(ana, (tx) => tx.person.findMany({ orderBy: { subject: "asc" } }));
    expect(people.map(({ subject }) => subject)).toEqual(["demo:ana", "demo:iris", "demo:tom"]);
  });

  test("the other home cannot change a box it did not pack: nothing happens", async () => {
    expect(
      await asLeo((tx) => tx.lunchBox.updateMany({ where: { id: week.boxes[mina]! }, data: { state: "BLOCKED" } })),
    ).toEqual({ count: 0 });
    const [box] = await database.owner`select state from lunch_box where id = ${week.boxes[mina]!}`;
    expect(box).toEqual({ state: "PLANNED" });
  });

  test("the other home learns nothing by adding rows to this home's plan", async () => {
    // Both plans name carrots: an answer about uniqueness would tell what the other home buys.
    const line = {
      weekPlanId: week.planId,
      householdId: hilltop,
      section: "PRODUCE",
      neededGrams: 1,
      fromStockGrams: 0,
      packs: 1,
      packGrams: 1,
      spareGrams: 0,
      costMinor: 0,
      readLabel: false,
    };
    for (const foodKey of ["carrot-raw", "celery-raw"]) {
      await expect(asLeo((tx) => tx.shoppingLine.create({ data: { ...line, foodKey } }))).rejects.toThrow(
        "row-level security",
      );
    }
    const task = {
      weekPlanId: week.planId,
      householdId: hilltop,
      session: "-",
      kind: "PACK",
      text: "-",
      handsOnMinutes: 1,
      passiveMinutes: 0,
      equipment: [],
      startsAt: "07:00",
      handsFreeAt: "07:00",
      endsAt: "07:00",
      latestStartsAt: "06:30",
      carer: 1,
    };
    for (const key of ["pack", "unheard-of"])
      await expect(asLeo((tx) => tx.task.create({ data: { ...task, key } }))).rejects.toThrow("row-level security");
    await expect(
      asLeo((tx) =>
        tx.batch.create({
          data: {
            weekPlanId: week.planId,
            householdId: hilltop,
            baseKey: "-",
            session: "-",
            batches: 1,
            grams: 1,
            feeds: [],
            spareGrams: 0,
          },
        }),
      ),
    ).rejects.toThrow("row-level security");
    await expect(
      asLeo((tx) =>
        tx.weekPlan.create({
          data: {
            weekId: week.weekId,
            householdId: hilltop,
            number: 9,
            state: "DRAFT",
            seed: 1n,
            steps: 1,
            problemHash: "-",
            catalogueVersion: "-",
            wishes: {},
            cautions: [],
            readyUses: [],
          },
        }),
      ),
    ).rejects.toThrow("row-level security");
  });

  test("the other home cannot put itself beside this home's box", async () => {
    await expect(
      asLeo((tx) =>
        tx.boxPacking.create({
          data: { lunchBoxId: week.boxes[mina]!, householdId: hilltop, leaveAt: "08:00", coldSources: 0, flask: false },
        }),
      ),
    ).rejects.toThrow("row-level security");
    await expect(
      asLeo((tx) =>
        tx.boxItemNote.create({
          data: {
            boxItemId: week.items[mina]!,
            householdId: hilltop,
            reasons: [],
            holdingMinutes: 1,
            holdingLimitMinutes: 1,
            compartment: 0,
          },
        }),
      ),
    ).rejects.toThrow("row-level security");
    await expect(
      asLeo((tx) =>
        tx.boxItem.create({
          data: {
            lunchBoxId: week.boxes[mina]!,
            childId: mina,
            breakKey: "lunch",
            slot: "EXTRA",
            place: 0,
            dishKey: "-",
            grams: 1,
            served: "COLD",
            energyKcal: 1,
            cuts: [],
            holdingCase: "-",
          },
        }),
      ),
    ).rejects.toThrow("row-level security");
  });

  test("an item never carries another child's name than its box: it would show in the wrong home", async () => {
    await expect(
      database.db.asPerson(ana, (tx) =>
        tx.boxItem.create({
          data: {
            lunchBoxId: week.boxes[theo]!,
            childId: mina,
            breakKey: "lunch",
            slot: "EXTRA",
            place: 0,
            dishKey: "-",
            grams: 1,
            served: "COLD",
            energyKcal: 1,
            cuts: [],
            holdingCase: "-",
          },
        }),
      ),
    ).rejects.toThrow("row-level security");
  });

  test("each home packs its own days into its own plan", async () => {
    const own = await asLeo((tx) => plantWeek(tx, hilltop, [mina], "2027-01-13"));
    const seenByAna = await database.db.asPerson(ana, (tx) =>
      tx.lunchBox.findMany({ where: { childId: mina }, include: { packing: true }, orderBy: { date: "asc" } }),
    );
    expect(seenByAna.map(({ id, packing }) => [id, packing !== null])).toEqual([
      [week.boxes[mina], true],
      [own.boxes[mina], false],
    ]);
  });

  test("a child never has two boxes to carry on a day", async () => {
    const other = await asLeo((tx) => tx.weekPlan.findFirstOrThrow());
    await expect(
      asLeo((tx) =>
        tx.lunchBox.create({
          data: { weekPlanId: other.id, childId: mina, date: new Date("2027-01-11"), current: true },
        }),
      ),
    ).rejects.toThrow("Unique constraint");
  });
});

describe("households apart", () => {
  test("another household's rows are not there: an update touches nothing", async () => {
    const stranger = await database.newPerson("Stranger");
    await database.newHousehold(stranger);
    const touched = await database.db.asPerson(stranger, async (tx) => [
      await tx.stock.updateMany({ data: { grams: 1 } }),
      await tx.household.updateMany({ where: { id: millpond }, data: { name: "Mine" } }),
      await tx.child.updateMany({ data: { name: "Mine" } }),
      await tx.task.updateMany({ data: { state: "DONE" } }),
      await tx.stock.deleteMany({ where: { householdId: millpond } }),
    ]);
    expect(touched).toEqual(Array.from({ length: 5 }, () => ({ count: 0 })));
  });

  test("a row cannot be added in another household's name", async () => {
    const stranger = await database.newPerson("Stranger");
    await expect(
      database.db.asPerson(stranger, (tx) =>
        tx.relaxation.create({ data: { householdId: millpond, rule: "DISH_REPEATS", date: new Date("2027-01-12") } }),
      ),
    ).rejects.toThrow("row-level security");
  });

  test("a household keeps no kit, leave time or body size for a child who does not live there", async () => {
    const stranger = await database.newPerson("Stranger");
    const home = await database.newHousehold(stranger);
    const asStranger = (work: (tx: Tx) => Promise<unknown>) =>
      expect(database.db.asPerson(stranger, work)).rejects.toThrow("row-level security");
    await asStranger((tx) => tx.childBody.create({ data: { childId: mina, householdId: home } }));
    await asStranger((tx) =>
      tx.leaveTime.create({ data: { childId: mina, householdId: home, weekday: "MONDAY", leaveAt: "08:00" } }),
    );
    await asStranger((tx) =>
      tx.boxKit.create({
        data: { childId: mina, householdId: home, compartments: [], coldSources: 0, insulated: false, flask: false },
      }),
    );
  });

  test("an observer reads everything of the household and changes nothing", async () => {
    const observer = await database.newPerson("Observer");
    await database.addCarer(observer, millpond, "OBSERVER");
    const asObserver = <T>(work: (tx: Tx) => Promise<T>) => database.db.asPerson(observer, work);
    expect(await asObserver((tx) => tx.task.count())).toBe(1);
    expect(await asObserver((tx) => tx.child.count())).toBe(3);
    const touched = await asObserver(async (tx) => [
      await tx.stock.updateMany({ data: { grams: 1 } }),
      await tx.child.updateMany({ data: { name: "Mine" } }),
      await tx.task.updateMany({ data: { state: "DONE" } }),
      await tx.lunchBox.updateMany({ data: { state: "PACKED" } }),
      await tx.allergy.deleteMany(),
      await tx.stock.deleteMany(),
    ]);
    expect(touched).toEqual(Array.from({ length: 6 }, () => ({ count: 0 })));
    await expect(
      asObserver((tx) =>
        tx.relaxation.create({ data: { householdId: millpond, rule: "DISH_REPEATS", date: new Date("2027-01-12") } }),
      ),
    ).rejects.toThrow("row-level security");
    await expect(database.newChild(observer, millpond)).rejects.toThrow("not a household of this person");
  });

  test("who only watches in one home changes none of its boxes, though a cook in the child's other home", async () => {
    const both = await database.newPerson("Both");
    await database.addCarer(both, millpond, "OBSERVER");
    await database.addCarer(both, hilltop, "COOK");
    expect(
      await database.db.asPerson(both, (tx) =>
        tx.lunchBox.updateMany({ where: { id: week.boxes[mina]! }, data: { state: "PACKED" } }),
      ),
    ).toEqual({ count: 0 });
  });

  test("outside a person's transaction nothing of a family is there", async () => {
    for (const table of [
      "household",
      "child",
      "person",
      "membership",
      "residence",
      "lunch_box",
      "rule_set",
      "school",
    ]) {
      const nobody = await countSeen("", table);
      expect([table, nobody.seen, nobody.all > 0]).toEqual([table, 0, true]);
    }
  });
});

describe("rule sets", () => {
  const keysSeenBy = async (personId: string) =>
    (await database.db.asPerson(personId, (tx) => tx.ruleSet.findMany())).map(({ key }) => key).sort();
  const publicKeys = [
    "england-2014-primary",
    "england-2014-secondary",
    "india-2020",
    "quillbrook-primary-class-4",
    "quillbrook-primary-food-from-home",
    "quillbrook-upper-food-from-home",
    "scotland-2008",
    "tern-bay-food-from-home",
    "us-lunch",
    "us-preschool-lunch",
    "wrenhollow-food-from-home",
    "wrenhollow-kindergarten",
  ];

  test("published standards and a school's rules are open to every person signed in; a child's own only to the child's homes", async () => {
    expect(await keysSeenBy(ana)).toEqual(["own-vegetarian", ...publicKeys].sort());
    expect(await keysSeenBy(leo)).toEqual(publicKeys);
    expect(await keysSeenBy(await database.newPerson("Stranger"))).toEqual(publicKeys);
  });

  test("an administrator never sees a child's own rules, nor any child", async () => {
    expect(await keysSeenBy(ruth)).toEqual(publicKeys);
    expect(await countSeen(ruth, "rule")).toMatchObject({ seen: (await countSeen(leo, "rule")).seen });
    expect((await countSeen(ruth, "child")).seen).toBe(0);
    expect((await countSeen(ruth, "enrolment")).seen).toBe(0);
  });

  test("the administrator loads rules for their own school only, a parent for no school", async () => {
    const [primary, upper] = ["primary", "upper"].map((key) => idOf(demo.schools, key)) as [string, string];
    const add = (personId: string, schoolId: string) =>
      database.db.asPerson(personId, (tx) =>
        tx.ruleSet.create({ data: { key: `test-${randomUUID()}`, layer: "SCHOOL", schoolId } }),
      );
    const made = await add(ruth, primary);
    expect(made.schoolId).toBe(primary);
    await expect(add(ruth, upper)).rejects.toThrow("row-level security");
    await expect(add(ana, primary)).rejects.toThrow("row-level security");
    await database.owner`delete from rule_set where id = ${made.id}`;
  });
});
