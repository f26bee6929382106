import { globalId } from "../../src/graphql/global-id.js";
import { createRandomStream } from "../../src/domain/planner/random.js";
import { replayTasks, type TaskChangeDone } from "../support/replay-tasks.js";
import { localOf, useServedApp, type Household } from "../support/served-app.js";
import { AGREE, DAY, PACK } from "./documents.js";

const served = useServedApp();

interface Task {
  readonly id: string;
  readonly kind: string;
  readonly session: string;
  readonly text: string;
  readonly state: string;
  readonly kept: boolean;
  readonly handsOnMinutes: number;
  readonly actualMinutes: number | null;
  readonly takenAt: string | null;
  readonly doneAt: string | null;
  readonly takenBy: { readonly id: string; readonly displayName: string } | null;
  readonly children: readonly { readonly id: string }[];
  readonly forDates: readonly string[];
}
interface Answer {
  readonly __typename: string;
  readonly message: string;
  readonly task: Task;
  readonly revision: number;
  readonly holder: { readonly displayName: string } | null;
  readonly state: string;
  readonly tasks: readonly string[];
  readonly boxes: readonly { readonly date: string; readonly child: { readonly name: string } }[];
  readonly issues: readonly { readonly field: string; readonly fix: string }[];
}
const TASK = `id kind session text state kept handsOnMinutes actualMinutes takenAt doneAt takenBy { id displayName } children { id } forDates`;
const refusals: Readonly<Record<string, string>> = {
  takeTask: "",
  finishTask: "",
  releaseTask: "... on TaskNotHeld { state }",
  handTask: "... on TaskNotHeld { state }",
  undoTask: "... on TaskNotHeld { state } ... on WorkUsed { tasks boxes { date child { name } } }",
};
const send = async (person: string, field: string, input: Record<string, unknown>) => {
  const document = `mutation M($input: ${field[0]!.toUpperCase()}${field.slice(1)}Input!) { ${field}(input: $input) { __typename
    ... on UserError { message } ... on InvalidInput { issues { field fix } } ... on TaskHeld { holder { displayName } state }
    ... on TaskPayload { revision task { ${TASK} } } ${refusals[field]} } }`;
  return (await served.send(person, document, { seenRevision: 0, ...input })) as unknown as Answer;
};
interface Plan {
  readonly number: number;
  readonly tasks: readonly Task[];
  readonly batches: readonly {
    readonly base: { readonly key: string };
    readonly session: string;
    readonly state: string;
  }[];
  readonly sessions: readonly { readonly tasks: readonly { readonly id: string }[] }[];
}
const planOf = async (home: Household) =>
  (
    await served.ask<{ week: { plan: Plan } }>(
      home.coordinator,
      `query Plan($id: ID!) { week(householdId: $id, date: "${DAY}") { plan { number tasks { ${TASK} }
        batches { base { key } session state } sessions { tasks { id } } } } }`,
      { id: home.id },
    )
  ).week.plan;
const personId = async (person: string) =>
  (await served.ask<{ me: { person: { id: string } } }>(person, "{ me { person { id } } }")).me.person.id;
const openTask = async (home: Household, kind: string) =>
  (await planOf(home)).tasks.find((task) => task.kind === kind && task.state === "OPEN" && !task.kept)!;

let home: Household;
let [boss, cook, helper, watcher] = ["", "", "", ""];
beforeAll(async () => {
  home = await served.household().child().carer("COOK").carer("HELPER").carer("OBSERVER").planned(DAY).found();
  [boss, cook, helper, watcher] = [home.coordinator, home.carers.COOK!, home.carers.HELPER!, home.carers.OBSERVER!];
});

describe("a task", () => {
  it("is taken and released by one carer, and free for the next", async () => {
    const { id } = await openTask(home, "FINISH");
    const taken = await send(helper, "takeTask", { taskId: id });
    expect(taken.task).toMatchObject({ state: "TAKEN", takenAt: "2026-11-25T12:00:00.000Z", doneAt: null });
    const held = await send(cook, "releaseTask", { taskId: id });
    expect(held).toMatchObject({ __typename: "TaskHeld", state: "TAKEN", holder: { displayName: helper } });
    const released = await send(helper, "releaseTask", { taskId: id });
    expect(released.task).toMatchObject({ state: "OPEN", takenBy: null, takenAt: null });
    expect(released.revision).toBe(taken.revision + 1);
    expect(await send(helper, "releaseTask", { taskId: id })).toMatchObject({
      __typename: "TaskNotHeld",
      state: "OPEN",
    });
    expect((await send(cook, "takeTask", { taskId: id })).task.takenBy!.displayName).toBe(cook);
    // A coordinator decides for others.
    expect((await send(boss, "releaseTask", { taskId: id })).task.state).toBe("OPEN");
  });

  it("is handed on by whoever holds it and by a coordinator, to somebody who helps", async () => {
    const { id } = await openTask(home, "FINISH");
    const [theirs, cooks, watchers] = await Promise.all([helper, cook, watcher].map(personId));
    const hand = (person: string, to: string | undefined) => send(person, "handTask", { taskId: id, personId: to });
    expect(await hand(helper, cooks)).toMatchObject({ __typename: "TaskNotHeld", state: "OPEN" });
    expect((await hand(boss, theirs)).task).toMatchObject({ state: "TAKEN", takenBy: { displayName: helper } });
    expect(await hand(cook, cooks)).toMatchObject({ __typename: "TaskHeld", holder: { displayName: helper } });
    expect((await hand(helper, cooks)).task.takenBy!.displayName).toBe(cook);
    const said = new Set<string>();
    for (const nobody of [
      watchers,
      await personId("demo:leo"),
      globalId("Person", "00000000-0000-4000-8000-000000000000"),
      id,
      "",
    ]) {
      const refused = await hand(boss, nobody);
      expect(refused.__typename).toBe("HelperNotFound");
      said.add(refused.message);
    }
    expect(said.size).toBe(1);
    await send(boss, "releaseTask", { taskId: id });
  });

  it("is done with the minutes it took, and that is taken back by whoever did it", async () => {
    const { id } = await openTask(home, "FINISH");
    for (const minutes of [-0.1, 600.1, 3.25]) {
      const refused = await send(helper, "finishTask", { taskId: id, minutes });
      expect(refused.issues).toEqual([{ field: "minutes", fix: expect.stringMatching(/^Send/) as unknown }]);
    }
    const done = await send(helper, "finishTask", { taskId: id, minutes: 7.3 });
    expect(done.task).toMatchObject({ state: "DONE", actualMinutes: 7.3, doneAt: "2026-11-25T12:00:00.000Z" });
    for (const field of ["takeTask", "finishTask", "releaseTask", "undoTask"]) {
      const refused = await send(cook, field, { taskId: id });
      expect([field, refused.__typename, refused.state]).toEqual([field, "TaskHeld", "DONE"]);
      expect(refused.message).toBe(`${helper} has done this task.`);
    }
    const undone = await send(helper, "undoTask", { taskId: id });
    expect(undone.task).toMatchObject({
      state: "TAKEN",
      takenBy: { displayName: helper },
      doneAt: null,
      actualMinutes: null,
    });
    expect(undone.task.takenAt).toBe("2026-11-25T12:00:00.000Z");
    expect(await send(helper, "undoTask", { taskId: id })).toMatchObject({ __typename: "TaskNotHeld", state: "TAKEN" });
    expect((await send(helper, "finishTask", { taskId: id, minutes: 600 })).task.actualMinutes).toBe(600);
    expect((await send(boss, "undoTask", { taskId: id })).task.takenBy!.displayName).toBe(helper);
  });

  it("is taken by one of two at once; the other is told who", async () => {
    for (let round = 0; round < 5; round += 1) {
      const { id } = await openTask(home, "FINISH");
      const answers = await Promise.all([helper, cook].map((person) => send(person, "takeTask", { taskId: id })));
      const [won] = answers.filter(({ __typename }) => __typename === "TaskPayload");
      const [lost] = answers.filter(({ __typename }) => __typename === "TaskHeld");
      expect(lost!.holder!.displayName).toBe(won!.task.takenBy!.displayName);
    }
  });

  it("never has two holders, whatever three carers do to three tasks at once", async () => {
    const crowd = await served.household().child().carer("HELPER").carer("COOK").planned(DAY).found();
    const third = served.newcomer();
    const { addCarer, db } = served.inProcess.database;
    await addCarer(await db.signIn(third, third), localOf(crowd.id), "HELPER");
    const people = [third, crowd.carers.HELPER!, crowd.carers.COOK!];
    const tasks = (await planOf(crowd)).tasks.filter(({ kind }) => kind === "PACK").slice(0, 3);
    const { revision } = (await crowd.week(DAY))!;
    const random = createRandomStream(7);
    const pick = <T>(among: readonly T[]) => among[random.below(among.length)]!;
    const done: TaskChangeDone[] = [];
    for (let round = 0; round < 12; round += 1)
      await Promise.all(
        Array.from({ length: 6 }, async () => {
          const [carer, task] = [pick(people), pick(tasks).id];
          const verb = pick(["takeTask", "takeTask", "releaseTask", "finishTask", "undoTask"] as const);
          const said = await send(carer, verb, { taskId: task });
          if (said.__typename === "TaskPayload") done.push({ verb, carer, task, revision: said.revision });
          else expect(said.__typename).toMatch(/^Task(Not)?Held$/);
        }),
      );
    const played = replayTasks(done, revision);
    expect(played.faults).toEqual([]);
    expect(done.length).toBeGreaterThan(10);
    for (const { id, state, takenBy } of (await planOf(crowd)).tasks.filter((task) =>
      tasks.some(({ id }) => id === task.id),
    ))
      expect(`${state} ${takenBy?.displayName ?? "-"}`).toBe(played.tasks.get(id) ?? "OPEN -");
  });

  it("may be set free in the database when its carer leaves", async () => {
    const { id } = await openTask(home, "FINISH");
    await send(helper, "takeTask", { taskId: id });
    await served.inProcess.database
      .owner`update task set state = 'OPEN', taken_by_id = null, taken_at = null where id = ${localOf(id)}`;
    expect((await send(cook, "takeTask", { taskId: id })).task.takenBy!.displayName).toBe(cook);
  });

  it("is nothing to a stranger, to the child's other home, or to an observer's hands", async () => {
    const other = await served.household().found();
    await served.inProcess.database.addHome(localOf(home.children[0]!), localOf(other.id));
    const { id } = await openTask(home, "FINISH");
    const before = await served.everyRow();
    for (const field of Object.keys(refusals)) {
      const input = field === "handTask" ? { taskId: id, personId: await personId(boss) } : { taskId: id };
      for (const person of [served.newcomer(), other.coordinator])
        expect((await send(person, field, input)).__typename).toBe("NothingThere");
      expect(await send(watcher, field, input)).toMatchObject({ __typename: "NotPermitted" });
    }
    expect(await served.everyRow()).toBe(before);
    await served.inProcess.database.owner`delete from residence where household_id = ${localOf(other.id)}`;
  });
});

describe("what was made and is used", () => {
  it("cannot be said not to be made: neither with later work done nor in a packed box", async () => {
    const kitchen = await served.household().child().planned(DAY).found();
    const { coordinator } = kitchen;
    const { tasks } = await planOf(kitchen);
    const base = tasks.find(({ kind }) => kind === "BASE")!;
    await send(coordinator, "finishTask", { taskId: base.id });
    const made = () => planOf(kitchen).then(({ batches }) => batches.filter(({ state }) => state === "DONE"));
    expect(await made()).toHaveLength(1);
    expect((await send(coordinator, "undoTask", { taskId: base.id })).task.state).toBe("TAKEN");
    expect(await made()).toEqual([]);
    await send(coordinator, "finishTask", { taskId: base.id });
    const later = tasks.filter(
      ({ kind, forDates }) => kind === "FINISH" && forDates.some((date) => base.forDates.includes(date)),
    );
    for (const { id } of later) await send(coordinator, "finishTask", { taskId: id });
    const refused = await send(coordinator, "undoTask", { taskId: base.id });
    expect(refused.__typename).toBe("WorkUsed");
    expect(refused.tasks.length).toBeGreaterThan(0);
    expect(later.map(({ text }) => text)).toEqual(expect.arrayContaining([...refused.tasks]));
    // Taken back from the last on, as it was made.
    for (const { id } of [...later].reverse())
      expect((await send(coordinator, "undoTask", { taskId: id })).task.state).toBe("TAKEN");
    const week = (await kitchen.week(DAY))!;
    for (const date of base.forDates) {
      const box = week.plan.boxes.find((entry) => entry.date === date)!;
      const { revision } = (await kitchen.week(DAY))!;
      const packed = await served.send(coordinator, PACK, {
        boxId: box.id,
        packedAt: `${date}T07:10:00Z`,
        seenRevision: revision,
      });
      expect(packed.__typename).toBe("WeekPayload");
    }
    const packed = await send(coordinator, "undoTask", { taskId: base.id });
    expect(packed).toMatchObject({ __typename: "WorkUsed", tasks: [] });
    expect(packed.boxes.map(({ date }) => date)).toEqual([...base.forDates].sort());
    expect(packed.message).toMatch(/packed box/);
    expect(await made()).toHaveLength(1);
  });
});

describe("a plan that takes over from another", () => {
  it("keeps who holds what, what is done, its minutes and its times; what was cooked stays cooked", async () => {
    const kitchen = await served.household().child().carer("HELPER").planned(DAY).found();
    const hands = kitchen.carers.HELPER!;
    const first = await planOf(kitchen);
    const base = first.tasks.find(({ kind }) => kind === "BASE")!;
    const [one, two] = first.tasks.filter(({ kind }) => kind === "FINISH");
    await send(hands, "finishTask", { taskId: base.id, minutes: 21.5 });
    await send(hands, "finishTask", { taskId: one!.id, minutes: 3 });
    await send(kitchen.coordinator, "takeTask", { taskId: two!.id });
    const facts = ({ kind, text, state, takenAt, doneAt, actualMinutes, takenBy }: Task) => ({
      kind,
      text,
      state,
      takenAt,
      doneAt,
      actualMinutes,
      takenBy: takenBy?.displayName,
    });
    const before = (await planOf(kitchen)).tasks.filter(({ state }) => state !== "OPEN").map(facts);
    expect(before).toHaveLength(3);
    // An agreed week is planned again near what it is: else what was cooked might make other boxes the better ones.
    const drafted = (await kitchen.week(DAY))!;
    await served.send(kitchen.coordinator, AGREE, { weekId: drafted.id, seenRevision: drafted.revision });
    const again = () => kitchen.plan(DAY, { replanAgreed: true });
    for (const number of [2, 3]) {
      expect((await again()).__typename).toBe("WeekPayload");
      const now = await planOf(kitchen);
      expect(now.number).toBe(number);
      const held = now.tasks.filter(({ state }) => state !== "OPEN");
      // Every key is there but the cooked base's, which is no more work.
      expect(held.map(facts)).toEqual(expect.arrayContaining(before));
      expect(held).toHaveLength(before.length);
      expect(held.filter(({ kept }) => kept).map(({ kind }) => kind)).toEqual(["BASE"]);
      expect(now.batches.filter(({ state }) => state === "DONE")).toHaveLength(1);
      const onTheClock = now.sessions.flatMap(({ tasks }) => tasks.map(({ id }) => id));
      expect(onTheClock).not.toContain(held.find(({ kept }) => kept)!.id);
    }
    // Taken back, it is to be cooked by whoever said it was; the next plan reckons with it anew.
    const kept = (await planOf(kitchen)).tasks.find((task) => task.kept)!;
    expect((await send(hands, "undoTask", { taskId: kept.id })).task.state).toBe("TAKEN");
    expect((await planOf(kitchen)).batches.filter(({ state }) => state === "DONE")).toEqual([]);
    expect((await again()).__typename).toBe("WeekPayload");
    const after = await planOf(kitchen);
    expect(after.tasks.filter((task) => task.kept)).toEqual([]);
  });

  it("is not written to by a carer who read the one before", async () => {
    const kitchen = await served.household().child().planned(DAY).found();
    const { id } = await openTask(kitchen, "FINISH");
    const { revision } = (await kitchen.week(DAY))!;
    await kitchen.plan(DAY);
    for (const field of Object.keys(refusals)) {
      const input = field === "handTask" ? { personId: await personId(kitchen.coordinator) } : {};
      const refused = await send(kitchen.coordinator, field, { taskId: id, seenRevision: revision, ...input });
      expect([field, refused.__typename]).toEqual([field, "NothingThere"]);
    }
  });
});
