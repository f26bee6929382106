import { localOf, useServedApp, type Household, type WeekSeen } from "../support/served-app.js";
import { DAY } from "./documents.js";
import { documentOf } from "./every-mutation.js";

const served = useServedApp({ steps: 25_000 });
const [monday, friday] = [DAY, "2027-01-15"];

/** Home of two siblings; the elder lives in the other home as well, which packs nothing this week. */
let here: Household;
let there: Household;
let week: WeekSeen;
beforeAll(async () => {
  here = await served
    .household()
    .child({
      name: "Ari",
      sex: "FEMALE",
      weightKg: 47,
      heightCm: 158,
      allergies: [{ allergen: "SESAME" }],
      dislikes: ["celery"],
    })
    .child({ name: "Bo", dateOfBirth: "2018-02-03" }, "class-4")
    .planned(DAY)
    .found();
  there = await served.household().found();
  const { addHome, owner } = served.inProcess.database;
  await addHome(localOf(here.children[0]!), localOf(there.id));
  // A child wakes in the home of longest standing where no day says otherwise: boxes of the other one would not be due.
  await owner`update residence set since = '2027-06-01' where household_id = ${localOf(there.id)}`;
  week = (await here.week(DAY))!;
});

const seenBy = async (home: Household) =>
  (
    await served.ask<{
      household: {
        children: {
          name: string;
          allergies: unknown[];
          dailyNeeds: {
            energyKcal: number;
            inputs: { sex: string | null; weightKg: number; heightCm: number; assumed: string[] };
          };
          provisions: unknown[];
          boxes: { id: string; date: string; state: string; packing: unknown; items: Record<string, unknown>[] }[];
        }[];
      };
    }>(
      home.coordinator,
      `query Seen($id: ID!) { household(id: $id) { children { name allergies { allergen avoid } provisions { food { key } grams } dailyNeeds(on: "${monday}") { energyKcal inputs { sex weightKg heightCm assumed } }
        boxes(from: "${monday}", to: "${friday}") { id date state packing { leaveAt packedBy { displayName } }
          items { id breakKey slot dish { key } grams pieces cuts { cut } allergens pinned labelsToRead { key } note { why } holdingCurve { minute } } } } } }`,
      { id: home.id },
    )
  ).household.children;

describe("the other home of a shared child", () => {
  it("sees the child, her allergies and what is in her boxes, and not her sibling", async () => {
    const [[ari], mine] = [await seenBy(there), await seenBy(here)];
    const own = mine.find(({ name }) => name === "Ari")!;
    expect((await seenBy(there)).map(({ name }) => name)).toEqual(["Ari"]);
    expect(ari!.allergies).toEqual([{ allergen: "SESAME", avoid: "TRACES" }]);
    expect(ari!.boxes.map(({ date }) => date)).toEqual(own.boxes.map(({ date }) => date));
    const plainItems = (boxes: typeof own.boxes) =>
      boxes.map(({ items }) =>
        items.map(({ note: _note, labelsToRead: _labels, pinned: _pinned, holdingCurve: _curve, ...rest }) => rest),
      );
    expect(plainItems(ari!.boxes)).toEqual(plainItems(own.boxes));
  });

  it("sees nothing of the kitchen that packs: no packing, no notes, no holding curve, no labels, no pins", async () => {
    const pinned = week.plan.boxes.find(({ child }) => child.name === "Ari")!.items[0]!;
    const pin = await served.send(here.coordinator, documentOf("pinItem"), {
      itemId: pinned.id,
      seenRevision: week.revision,
    });
    expect(pin.__typename).toBe("WeekPayload");
    const own = (await seenBy(here)).find(({ name }) => name === "Ari")!;
    expect(own.boxes.flatMap(({ items }) => items).filter((item) => item["pinned"])).toHaveLength(1);
    expect(own.boxes[0]).toMatchObject({ packing: { leaveAt: "08:10", packedBy: null } });
    expect(own.boxes[0]!.items[0]!["note"]).not.toBeNull();
    const [ari] = await seenBy(there);
    for (const box of ari!.boxes) {
      expect(box.packing).toBeNull();
      for (const item of box.items)
        expect(item).toMatchObject({ note: null, holdingCurve: null, labelsToRead: null, pinned: false });
    }
  });

  it("does not learn the child's body size: it stays with the home that entered it", async () => {
    const own = (await seenBy(here)).find(({ name }) => name === "Ari")!;
    expect(own.dailyNeeds.inputs).toEqual({ sex: "FEMALE", weightKg: 47, heightCm: 158, assumed: [] });
    const seen = (await seenBy(there))[0]!.dailyNeeds;
    // Nothing but the date of birth and the activity that both homes see: a median child of either sex.
    expect(seen.inputs).toMatchObject({ sex: null, assumed: ["sex", "weightKg", "heightCm"] });
    expect([seen.inputs.weightKg, seen.inputs.heightCm]).not.toEqual([47, 158]);
    expect(seen.energyKcal).not.toBe(own.dailyNeeds.energyKcal);
  });

  it("sees what the school gives the child, which is the child's and no kitchen's", async () => {
    const entries = [{ food: "milk-whole", grams: 206 }];
    const said = await here.change(documentOf("setSchoolProvision"), { childId: here.children[0], entries });
    expect(said.__typename).toBe("SetSchoolProvisionPayload");
    expect((await seenBy(there))[0]!.provisions).toEqual([{ food: { key: "milk-whole" }, grams: 206 }]);
    await here.change(documentOf("setSchoolProvision"), { childId: here.children[0], entries: [] });
  });

  it("cannot ask for the packing home's things by their IDs", async () => {
    const { plan, id } = week;
    const [box] = plan.boxes;
    for (const theirs of [here.id, id, plan.id, box!.id, box!.items[0]!.id, plan.tasks[0]!.id, here.children[1]!])
      expect(
        await served.ask(there.coordinator, "query Any($id: ID!) { node(id: $id) { id } }", { id: theirs }),
      ).toEqual({ node: null });
    expect(
      await served.ask(there.coordinator, "query Any($id: ID!) { node(id: $id) { id } }", { id: here.children[0]! }),
    ).toEqual({ node: { id: here.children[0] } });
  });

  it("cannot pack, swap or report anything in the packing home's week", async () => {
    const before = await served.everyRow();
    const { revision, plan } = (await here.week(DAY))!;
    const box = plan.boxes.find(({ child }) => child.name === "Ari")!;
    const seenRevision = revision;
    const refusals = [
      ["markPacked", { boxId: box.id, packedAt: `${box.date}T07:10:00Z`, seenRevision }, "NothingThere"],
      ["swapItem", { itemId: box.items[0]!.id, dish: "orange-segments", seenRevision }, "NothingThere"],
      ["pinItem", { itemId: box.items[0]!.id, seenRevision }, "NothingThere"],
      ["agreeWeek", { weekId: week.id, seenRevision }, "NothingThere"],
      ["takeTask", { taskId: plan.tasks[0]!.id, seenRevision }, "NothingThere"],
      ["planWeek", { householdId: here.id, date: DAY, seenRevision }, "HouseholdNotFound"],
      [
        "reportAbsence",
        { householdId: here.id, childId: here.children[0], date: friday, seenRevision },
        "HouseholdNotFound",
      ],
    ] as const;
    for (const [field, input, kind] of refusals)
      expect([field, (await served.send(there.coordinator, documentOf(field), input)).__typename]).toEqual([
        field,
        kind,
      ]);
    expect(await served.everyRow()).toBe(before);
  });

  it("is told when a box is packed, and not by whom", async () => {
    const { revision, plan } = (await here.week(DAY))!;
    const box = plan.boxes.find(({ child }) => child.name === "Ari")!;
    const foods = [...new Set(box.items.flatMap(({ labelsToRead }) => (labelsToRead ?? []).map(({ key }) => key)))];
    for (const food of foods) {
      const label = { food, contains: [], mayContain: [], readOn: "2026-11-25" };
      expect((await here.change(documentOf("recordLabel"), label)).__typename).toBe("KitchenPayload");
    }
    const packed = await served.send(here.coordinator, documentOf("markPacked"), {
      boxId: box.id,
      packedAt: `${box.date}T07:10:00Z`,
      seenRevision: revision,
    });
    expect(packed.__typename).toBe("WeekPayload");
    const seen = (await seenBy(there))[0]!.boxes.find(({ date }) => date === box.date)!;
    expect(seen).toMatchObject({ state: "PACKED", packing: null });
    expect(JSON.stringify(seen)).not.toContain(here.coordinator);
  });
});
