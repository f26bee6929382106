import { globalId } from "../../src/graphql/global-id.js";
import { newKey, useApp } from "../support/app.js";
import { ABSENT, AGREE, DAY, FINISH, HOMES, LABEL, PACK, PIN, PLAN, SWAP, TAKE, UNPIN } from "./documents.js";

const { run, database } = useApp();
const ana = "demo:ana";
const home = async (person = ana): Promise<any> => (await run(person, HOMES, { day: DAY })).data.me.households[0];
const send = async (document: string, input: Record<string, unknown>, person = ana): Promise<any> => {
  const { data, errors } = await run(person, document, { input: { idempotencyKey: newKey(), ...input } });
  expect(errors).toEqual([]);
  return Object.values(data)[0];
};
const rows = async () => {
  const [row] = await database.owner<{ count: number }[]>`
    select (select count(*) from week_plan)::int + (select count(*) from lunch_box)::int + (select count(*) from pin)::int
      + (select count(*) from child_disruption)::int + (select count(*) from idempotency_key)::int as count`;
  return row!.count;
};

describe("a household's week", () => {
  it("is planned once, and a repeated request changes nothing", async () => {
    const { id } = await home();
    const input = { idempotencyKey: newKey(), householdId: id, date: DAY, seenRevision: 0 };
    const first = await send(PLAN, input);
    expect(first).toMatchObject({
      __typename: "WeekPayload",
      week: { revision: 1, plan: { number: 1, state: "DRAFT" } },
    });
    expect(first.week.plan.boxes).toHaveLength(13);
    const before = await rows();
    expect(await send(PLAN, input)).toEqual(first);
    expect(await rows()).toBe(before);
    expect(await send(PLAN, { ...input, date: "2027-01-18" })).toMatchObject({
      __typename: "KeyReused",
      usedFor: "planWeek",
    });
    expect(await rows()).toBe(before);
  });

  it("refuses a plan made on an old reading, and says which revision is current", async () => {
    const { id } = await home();
    expect(await send(PLAN, { householdId: id, date: DAY, seenRevision: 0 })).toMatchObject({
      __typename: "RevisionPassed",
      seenRevision: 0,
      currentRevision: 1,
    });
  });

  it("sends as many statements for one day as for the whole week", async () => {
    const query = (filter: string) => `{ me { households { week(date: "${DAY}") { plan {
      boxes${filter} { child { name } items { dish { name allergens } note { why } labelsToRead { name } cuts { cut } } }
      batches { base { name } feeds { children { name } } } tasks { children { name } takenBy { displayName } }
      shopping { food { name } } cautions { text child { name } } } } } } }`;
    const [day, week] = [await run(ana, query('(date: "2027-01-11")')), await run(ana, query(""))];
    expect(day.errors).toEqual([]);
    // BEGIN, the person, me, the household, the week.
    expect([day.statements, week.statements]).toEqual([5, 5]);
  });

  it("has a timetable by session, by carer and by appliance, and says how late each can begin", async () => {
    const { data, errors } = await run(
      ana,
      `{ me { households { week(date: "${DAY}") { plan { tasks { id handsOnMinutes equipment latestStartsAt } boxes { date packing { leaveAt } }
        sessions { key startsAt endsAt handsOnMinutes tasks { id startsAt endsAt latestStartsAt }
          timing { lastsMinutes leastMinutes provenShortest latestStartsAt noLaterThan }
          carers { carer handsOnMinutes tasks { id startsAt handsFreeAt } }
          appliances { kind unit uses { from until task { id } } } } } } } } }`,
    );
    expect(errors).toEqual([]);
    const { tasks, boxes, sessions } = data.me.households[0].week.plan;
    expect(sessions.flatMap((session: any) => session.tasks.map(({ id }: any) => id))).toEqual(
      tasks.map(({ id }: any) => id),
    );
    for (const session of sessions) {
      expect(session.timing).toMatchObject({ provenShortest: true, leastMinutes: session.timing.lastsMinutes });
      expect(session.timing.latestStartsAt >= session.startsAt).toBe(true);
      expect(session.timing.noLaterThan >= session.timing.latestStartsAt).toBe(true);
      // Everyone with something to do, one thing after the other.
      const byHand = session.carers.flatMap((carer: any) => carer.tasks);
      const handed = tasks.filter(({ handsOnMinutes }: any) => handsOnMinutes > 0).map(({ id }: any) => id);
      expect(byHand.map(({ id }: any) => id).sort()).toEqual(
        session.tasks
          .map(({ id }: any) => id)
          .filter((id: string) => handed.includes(id))
          .sort(),
      );
      for (const carer of session.carers)
        carer.tasks.slice(1).forEach((task: any, i: number) => {
          expect(task.startsAt >= carer.tasks[i].handsFreeAt).toBe(true);
        });
      for (const { uses } of session.appliances)
        uses.slice(1).forEach((use: any, i: number) => {
          expect(use.from >= uses[i].until).toBe(true);
        });
    }
    expect(sessions.some((session: any) => session.appliances.length > 0)).toBe(true);
    for (const session of sessions.filter(({ key }: any) => key.startsWith("morning-"))) {
      const leaves = boxes.filter(({ date }: any) => session.key.endsWith(date)).map((box: any) => box.packing.leaveAt);
      // Whoever begins at the latest moment still closes every box before the last child leaves.
      expect(session.timing.latestStartsAt < leaves.sort().at(-1)).toBe(true);
    }
  });

  it("keeps a pinned item through a new plan, and lets it go again", async () => {
    let { id, week } = await home();
    const item = week.plan.boxes[0].items.find(({ slot }: any) => slot === "MAIN");
    expect(await send(PIN, { itemId: item.id, seenRevision: week.revision })).toMatchObject({
      __typename: "WeekPayload",
    });
    ({ id, week } = await home());
    const planned = await send(PLAN, { householdId: id, date: DAY, seenRevision: week.revision });
    const same = planned.week.plan.boxes[0].items.find(({ slot }: any) => slot === "MAIN");
    expect(same).toMatchObject({ dish: { key: item.dish.key }, pinned: true });
    const free = await send(UNPIN, { itemId: same.id, seenRevision: planned.week.revision });
    expect(free.week.plan.boxes[0].items.every(({ pinned }: any) => !pinned)).toBe(true);
    // The item of the plan before is gone with it.
    expect(await send(PIN, { itemId: item.id, seenRevision: free.week.revision })).toMatchObject({
      __typename: "NothingThere",
    });
  });

  it("offers alternatives that pass, and swaps one in", async () => {
    const { week } = await home();
    const item = week.plan.boxes[0].items.find(({ slot, breakKey }: any) => slot === "FRUIT" && breakKey === "lunch");
    const { data } = await run(
      ana,
      "query Others($id: ID!) { alternatives(itemId: $id) { dish { key } pointsMore } }",
      { id: item.id },
    );
    expect(data.alternatives.length).toBeGreaterThan(0);
    const dish = data.alternatives[0].dish.key as string;
    const swapped = await send(SWAP, { itemId: item.id, dish, seenRevision: week.revision });
    expect(swapped.__typename).toBe("WeekPayload");
    const found = swapped.week.plan.boxes[0].items.find(
      ({ slot, breakKey }: any) => slot === "FRUIT" && breakKey === "lunch",
    );
    expect(found).toMatchObject({ dish: { key: dish }, pinned: true });
    expect(swapped.changedBoxes).toHaveLength(1);
  });

  it("refuses a swap to a dish that is not there or that a rule forbids, and names the way out", async () => {
    const { week } = await home();
    const before = await rows();
    const fruit = week.plan.boxes[0].items.find(({ breakKey }: any) => breakKey === "morning-break");
    const unknown = await send(SWAP, { itemId: fruit.id, dish: "orange-segmnts", seenRevision: week.revision });
    expect(unknown).toMatchObject({ __typename: "DishUnknown" });
    expect(unknown.nearest).toContain("orange-segments");
    const mina = week.plan.boxes.find(({ child }: any) => child.name === "Mina");
    const extra = mina.items.find(({ slot }: any) => slot === "EXTRA");
    const nuts = await send(SWAP, { itemId: extra.id, dish: "walnut-fig-pieces", seenRevision: week.revision });
    expect(nuts).toMatchObject({
      __typename: "SwapRefused",
      conflicts: [{ kind: "PIN_NOT_ALLOWED", child: { name: "Mina" } }],
    });
    expect(nuts.conflicts[0].text).toMatch(/this kitchen keeps out/);
    const main = mina.items.find(({ slot }: any) => slot === "MAIN");
    const wrongSlot = await send(SWAP, { itemId: main.id, dish: "orange-segments", seenRevision: week.revision });
    expect(wrongSlot).toMatchObject({
      __typename: "SwapRefused",
      conflicts: [{ kind: "PIN_NOT_ALLOWED", child: { name: "Mina" } }],
    });
    expect(wrongSlot.conflicts[0].wayOut).toMatch(/another dish/);
    expect(await rows()).toBe(before);
  });

  it("packs a box only when every label that matters was read and is clear", async () => {
    const { id } = await home();
    const boxOf = async () => {
      const now = await home();
      const box = now.week.plan.boxes.find(
        ({ child, items }: any) => child.name === "Mina" && items.some((item: any) => item.labelsToRead.length > 0),
      );
      return { now, box };
    };
    const { now, box } = await boxOf();
    const pack = { boxId: box.id, packedAt: `${box.date}T07:10:00Z` };
    const unread = await send(PACK, { ...pack, seenRevision: now.week.revision });
    expect(unread.__typename).toBe("LabelsUnread");
    let revision = now.revision as number;
    for (const { key } of unread.foods) {
      const read = await send(LABEL, {
        householdId: id,
        seenRevision: revision,
        food: key,
        contains: [],
        mayContain: [],
        readOn: "2026-11-25",
      });
      expect(read.__typename).toBe("KitchenPayload");
      revision = read.household.revision;
    }
    const packed = await send(PACK, { ...pack, seenRevision: now.week.revision }, "demo:iris");
    expect(packed.__typename).toBe("WeekPayload");
    const after = (await home()).week.plan.boxes.find(({ id: boxId }: any) => boxId === box.id);
    expect(after).toMatchObject({ state: "PACKED", packing: { packedBy: { displayName: "Iris Hallowby" } } });
    expect(await send(PACK, { ...pack, seenRevision: packed.week.revision })).toMatchObject({
      __typename: "BoxClosed",
      state: "PACKED",
    });
  });

  it("gives a task to exactly one of two carers who reach for it at once", async () => {
    const { week } = await home();
    const task = week.plan.tasks.find(({ state }: any) => state === "OPEN");
    const take = (person: string) => send(TAKE, { taskId: task.id, seenRevision: week.revision }, person);
    const answers = await Promise.all([take("demo:tom"), take("demo:iris")]);
    expect(answers.map(({ __typename }) => __typename).sort()).toEqual(["TaskHeld", "TaskPayload"]);
    const held = answers.find(({ __typename }) => __typename === "TaskHeld");
    const won = answers.find(({ __typename }) => __typename === "TaskPayload");
    expect(held.holder.displayName).toBe(won.task.takenBy.displayName);
    const winner = won.task.takenBy.displayName.startsWith("Tom") ? "demo:tom" : "demo:iris";
    expect(await send(FINISH, { taskId: task.id, seenRevision: week.revision }, winner)).toMatchObject({
      task: { state: "DONE" },
    });
    expect(await send(TAKE, { taskId: task.id, seenRevision: week.revision }, ana)).toMatchObject({
      __typename: "TaskHeld",
      state: "DONE",
    });
  });

  it("is agreed by a coordinator only, once, and then not planned afresh by accident", async () => {
    const { id, week } = await home();
    expect(await send(AGREE, { weekId: week.id, seenRevision: week.revision }, "demo:tom")).toMatchObject({
      __typename: "NotPermitted",
      neededRole: "COORDINATOR",
    });
    const agreed = await send(AGREE, { weekId: week.id, seenRevision: week.revision });
    expect(agreed.week.plan.state).toBe("AGREED");
    expect(await send(AGREE, { weekId: week.id, seenRevision: agreed.week.revision })).toMatchObject({
      __typename: "WeekAgreed",
    });
    expect(await send(PLAN, { householdId: id, date: DAY, seenRevision: agreed.week.revision })).toMatchObject({
      __typename: "WeekAgreed",
    });
  });

  it("replans an absence with few changes and never touches what is packed", async () => {
    const { id, children, week } = await home();
    const theo = children.find(({ name }: any) => name === "Theo");
    const packed = week.plan.boxes.find(({ state }: any) => state === "PACKED");
    const answer = await send(
      ABSENT,
      { householdId: id, childId: theo.id, date: "2027-01-13", seenRevision: week.revision },
      "demo:iris",
    );
    expect(answer.__typename).toBe("WeekPayload");
    const boxes = answer.week.plan.boxes;
    expect(answer.week.plan.state).toBe("AGREED");
    expect(boxes).toHaveLength(week.plan.boxes.length - 1);
    expect(boxes.some(({ date, child }: any) => date === "2027-01-13" && child.name === "Theo")).toBe(false);
    const still = boxes.find(({ date, child }: any) => date === packed.date && child.name === packed.child.name);
    expect(still.state).toBe("PACKED");
    expect(still.items.map(({ dish }: any) => dish.key)).toEqual(packed.items.map(({ dish }: any) => dish.key));
    expect(answer.changedBoxes.length).toBeLessThanOrEqual(3);
    const { week: now } = await home();
    expect(
      await send(ABSENT, {
        householdId: id,
        childId: children.find(({ name }: any) => name === packed.child.name).id,
        date: packed.date,
        seenRevision: now.revision,
      }),
    ).toMatchObject({ __typename: "BoxClosed" });
  });

  it("blocks a box whose label turns out to name what the child avoids", async () => {
    const { id, revision, week } = await home();
    const box = week.plan.boxes.find(
      ({ child, state, items }: any) =>
        child.name === "Mina" && state === "PLANNED" && items.some((item: any) => item.labelsToRead.length > 0),
    );
    const packed = new Set(
      week.plan.boxes
        .filter(({ state }: any) => state === "PACKED")
        .flatMap(({ items }: any) =>
          items.flatMap((item: any) => item.labelsToRead.map(({ key }: any) => key as string)),
        ),
    );
    const food = box.items.flatMap((item: any) => item.labelsToRead).find(({ key }: any) => !packed.has(key))
      .key as string;
    await send(LABEL, {
      householdId: id,
      seenRevision: revision,
      food,
      contains: [],
      mayContain: ["HAZELNUT"],
      readOn: "2026-11-25",
    });
    // The boxes were looked at again at once: the week has moved, and the box is blocked in it.
    const { week: now } = await home();
    expect(now.revision).toBe(week.revision + 1);
    expect(now.plan.boxes.find(({ id: boxId }: any) => boxId === box.id).state).toBe("BLOCKED");
    const refused = await send(PACK, { boxId: box.id, packedAt: `${box.date}T07:10:00Z`, seenRevision: now.revision });
    expect(refused).toMatchObject({ __typename: "BoxBlocked" });
  });

  it("is found again by the ID of any of its parts", async () => {
    const { week } = await home();
    const ids = [week.id, week.plan.id, week.plan.boxes[0].id, week.plan.boxes[0].items[0].id, week.plan.tasks[0].id];
    for (const id of ids) {
      const { data } = await run(ana, "query Any($id: ID!) { node(id: $id) { id } }", { id });
      expect(data.node).toEqual({ id });
    }
    const nobodys = globalId("Week", "00000000-0000-4000-8000-000000000000");
    for (const id of [nobodys, "not-an-id", ""]) {
      expect((await run(ana, "query Any($id: ID!) { node(id: $id) { id } }", { id })).data.node).toBeNull();
    }
  });
});
