import { localOf, useServedApp, type Household, type WeekSeen } from "../support/served-app.js";

const served = useServedApp({ steps: 25_000 });
/** The test's clock stands at noon of this Wednesday. */
const [today, monday] = ["2026-11-25", "2026-11-23"];

const REPORT = `mutation Report($input: ReportReturnedInput!) { reportReturned(input: $input) { __typename ... on UserError { message } ... on InvalidInput { issues { field problem fix } }
  ... on NotPermitted { neededRole } ... on ReturnedPayload { box { id state items { id cameBack dish { key } } } } } }`;
const NOTE = `child { name } weekStart revision allergies { foodKind allergen avoid } cameBack { dish { key } days { date cameBack } } repeat avoid note box icePacks flask`;
const WRITE = `mutation Write($input: WriteHandoverInput!) { writeHandover(input: $input) { __typename ... on UserError { message } ... on InvalidInput { issues { field problem fix } }
  ... on RevisionPassed { seenRevision currentRevision } ... on HandoverPayload { handover { ${NOTE} } } } }`;
const READ = `query Read($home: ID!, $child: ID!, $date: LocalDate!) { handover(householdId: $home, childId: $child, date: $date) { ${NOTE} } }`;

interface Returned {
  readonly __typename: string;
  readonly issues: readonly { readonly field: string }[];
  readonly box: {
    readonly state: string;
    readonly items: readonly {
      readonly id: string;
      readonly cameBack: string | null;
      readonly dish: { readonly key: string };
    }[];
  };
  readonly handover: Record<string, unknown>;
  readonly currentRevision: number;
}
const change = async (home: Household, mutation: string, input: Record<string, unknown>, person?: string) =>
  (await home.change(mutation, input, person)) as unknown as Returned;
const noteOf = async (home: Household, child: string, date = today) =>
  (
    await served.ask<{ handover: Record<string, unknown> | null }>(home.coordinator, READ, {
      home: home.id,
      child,
      date,
    })
  ).handover;

let here: Household;
let there: Household;
let ari: string;
let week: WeekSeen;
beforeAll(async () => {
  here = await served.household().child({ dislikes: [] }).carer("HELPER").carer("OBSERVER").planned(today).found();
  ari = here.children[0]!;
  there = await here.otherHome(ari);
  week = (await here.week(today))!;
});
const boxOn = (date: string) => week.plan.boxes.find((box) => box.date === date)!;

describe("what came back", () => {
  it("is said by a helper, item by item, and the box was eaten; both homes read it", async () => {
    const [first, second] = boxOn(today).items;
    const entries = [
      { itemId: first!.id, cameBack: "ALL" },
      { itemId: second!.id, cameBack: "NONE" },
    ];
    const said = await change(here, REPORT, { boxId: boxOn(today).id, entries }, here.carers.HELPER);
    expect(said).toMatchObject({ __typename: "ReturnedPayload", box: { state: "EATEN" } });
    const back = (items: Returned["box"]["items"]) =>
      items.flatMap(({ id, cameBack }) => (cameBack ? [[id, cameBack]] : []));
    expect(new Map(back(said.box.items) as [string, string][])).toEqual(
      new Map([
        [first!.id, "ALL"],
        [second!.id, "NONE"],
      ]),
    );
    const seen = await there.ask<{ boxes: Returned["box"][] }>(
      `query Seen($id: ID!) { node(id: $id) { ... on Child { boxes(from: "${today}", to: "${today}") { state items { id cameBack dish { key } } } } } }`,
      ari,
    );
    expect(seen.boxes).toEqual([{ state: "EATEN", items: said.box.items.map((item) => ({ ...item })) }]);
  });

  it("may be put right by the other home, whose word is then the last", async () => {
    const [first] = boxOn(today).items;
    const said = await change(there, REPORT, {
      boxId: boxOn(today).id,
      entries: [{ itemId: first!.id, cameBack: "TRADED" }],
    });
    expect(said.box.items.find(({ id }) => id === first!.id)!.cameBack).toBe("TRADED");
  });

  it("is said by the other home of a box it did not pack: the packing home's week goes on a revision", async () => {
    const { revision } = (await here.week(today))!;
    const box = boxOn(monday);
    const said = await change(there, REPORT, {
      boxId: box.id,
      entries: [{ itemId: box.items[0]!.id, cameBack: "SOME" }],
    });
    expect(said).toMatchObject({ __typename: "ReturnedPayload", box: { state: "EATEN" } });
    const after = (await here.week(today))!;
    expect(after.revision).toBe(revision + 1);
    expect(after.plan.boxes.find(({ date }) => date === monday)!.state).toBe("EATEN");
  });

  it("stays with the day when the week is planned again", async () => {
    expect((await here.plan(today)).__typename).toBe("WeekPayload");
    const again = await here.ask<{ boxes: (Returned["box"] & { date: string })[] }>(
      `query Seen($id: ID!) { node(id: $id) { ... on Child { boxes(from: "${monday}", to: "${today}") { date state items { id cameBack dish { key } } } } } }`,
      ari,
    );
    const told = again.boxes.map(({ date, items }) => [date, items.flatMap(({ cameBack }) => cameBack ?? []).sort()]);
    expect(new Map(told as [string, string[]][])).toEqual(
      new Map([
        [monday, ["SOME"]],
        ["2026-11-24", []],
        [today, ["NONE", "TRADED"]],
      ]),
    );
    expect(again.boxes.find(({ date }) => date === monday)!.state).toBe("EATEN");
    week = (await here.week(today))!;
  });

  it("is said of a box that has had its day, of its own items, once each, by who may", async () => {
    const before = await served.everyRow();
    const friday = boxOn("2026-11-27");
    const box = boxOn(today);
    const item = (id: string) => ({ itemId: id, cameBack: "ALL" });
    const refusals: readonly (readonly [Record<string, unknown>, string])[] = [
      [{ boxId: friday.id, entries: [item(friday.items[0]!.id)] }, "boxId"],
      [{ boxId: box.id, entries: [] }, "entries"],
      [{ boxId: box.id, entries: [item(friday.items[0]!.id)] }, "entries.0.itemId"],
      [{ boxId: box.id, entries: [item(box.items[0]!.id), item(box.items[0]!.id)] }, "entries.1.itemId"],
    ];
    for (const [input, field] of refusals)
      expect(await change(here, REPORT, input)).toMatchObject({ __typename: "InvalidInput", issues: [{ field }] });
    const entries = [item(box.items[0]!.id)];
    expect(await change(here, REPORT, { boxId: box.id, entries }, here.carers.OBSERVER)).toMatchObject({
      __typename: "NotPermitted",
      neededRole: "HELPER",
    });
    const family = await served.household().found();
    const calm = await served.everyRow();
    expect(await change(family, REPORT, { boxId: box.id, entries })).toMatchObject({ __typename: "NothingThere" });
    expect(await served.everyRow()).toBe(calm);
    expect(before).not.toBe("");
  });

  it("a box that was blocked and never packed did not come back", async () => {
    const box = boxOn("2026-11-24");
    await served.inProcess.database.owner`update lunch_box set state = 'BLOCKED' where id = ${localOf(box.id)}`;
    const entries = [{ itemId: box.items[0]!.id, cameBack: "ALL" }];
    expect(await change(here, REPORT, { boxId: box.id, entries })).toMatchObject({ __typename: "BoxBlocked" });
    await served.inProcess.database.owner`update lunch_box set state = 'PLANNED' where id = ${localOf(box.id)}`;
  });
});

describe("the handover note", () => {
  it("is there before anybody writes: the stricter of both homes' allergies, and what came back by dish", async () => {
    const allergy = "mutation A($input: RecordAllergyInput!) { recordAllergy(input: $input) { __typename } }";
    await here.change(allergy, { childId: ari, allergen: "SESAME", avoid: "INGREDIENTS" });
    await there.change(allergy, { childId: ari, allergen: "SESAME", avoid: "TRACES" });
    await there.change(allergy, { childId: ari, foodKind: "kiwi" });
    const [mine, theirs] = [await noteOf(here, ari), await noteOf(there, ari)];
    expect(mine).toEqual(theirs);
    expect(mine).toMatchObject({
      child: { name: "Ari" },
      weekStart: monday,
      revision: 0,
      repeat: [],
      avoid: [],
      note: "",
      box: null,
      icePacks: null,
      flask: null,
    });
    expect(mine!["allergies"]).toEqual(
      expect.arrayContaining([
        { allergen: "SESAME", foodKind: null, avoid: "TRACES" },
        { allergen: null, foodKind: "kiwi", avoid: "TRACES" },
      ]),
    );
    const returned = (
      mine!["cameBack"] as { dish: { key: string }; days: { date: string; cameBack: string }[] }[]
    ).flatMap(({ days }) => days.map(({ date, cameBack }) => `${date} ${cameBack}`));
    expect(returned.sort()).toEqual([`${monday} SOME`, `${today} NONE`, `${today} TRADED`]);
  });

  it("is written by either home, and where things are is told as the reader sees it", async () => {
    const helper = here.carers.HELPER!;
    const first = await change(
      here,
      WRITE,
      {
        childId: ari,
        date: today,
        seenRevision: 0,
        repeat: ["pancakes"],
        avoid: ["olive"],
        note: "A cold; soft things please.",
        box: "THIS_HOME",
        icePacks: "OTHER_HOME",
        flask: "AT_SCHOOL",
      },
      helper,
    );
    expect(first).toMatchObject({
      __typename: "HandoverPayload",
      handover: { revision: 1, box: "THIS_HOME", icePacks: "OTHER_HOME", flask: "AT_SCHOOL" },
    });
    // Any day of the week reads the same note, a Sunday too.
    const seen = await noteOf(there, ari, "2026-11-29");
    expect(seen).toMatchObject({
      revision: 1,
      repeat: ["pancakes"],
      avoid: ["olive"],
      note: "A cold; soft things please.",
      box: "OTHER_HOME",
      icePacks: "THIS_HOME",
      flask: "AT_SCHOOL",
    });
    for (const name of [helper, here.coordinator, here.id, localOf(here.id), "Test kitchen"])
      expect(JSON.stringify(seen)).not.toContain(name);
    const second = await change(there, WRITE, {
      childId: ari,
      date: monday,
      seenRevision: 1,
      note: "Better.",
      flask: "LOST",
    });
    expect(second).toMatchObject({ handover: { revision: 2, note: "Better.", repeat: [], box: null, flask: "LOST" } });
    expect(await noteOf(here, ari, "2026-11-30")).toMatchObject({ weekStart: "2026-11-30", revision: 0 });
  });

  it("written over an older reading it is refused, and by two homes at once it is written by one", async () => {
    const stale = await change(here, WRITE, { childId: ari, date: today, seenRevision: 1, note: "Mine." });
    expect(stale).toMatchObject({ __typename: "RevisionPassed", currentRevision: 2 });
    const next = { childId: ari, date: "2026-12-02", seenRevision: 0 };
    const both = await Promise.all([
      change(here, WRITE, { ...next, note: "Here." }),
      change(there, WRITE, { ...next, note: "There." }),
    ]);
    expect(both.map(({ __typename }) => __typename).sort()).toEqual(["HandoverPayload", "RevisionPassed"]);
    const won = both[0].__typename === "HandoverPayload" ? "Here." : "There.";
    expect(await noteOf(here, ari, "2026-12-02")).toMatchObject({ revision: 1, note: won });
  });

  it("says what cannot be written and how, and leaves nothing behind", async () => {
    const alone = await served.household().child().found();
    const before = await served.everyRow();
    const about = { childId: ari, date: today, seenRevision: 2 };
    const refusals: readonly (readonly [Household, Record<string, unknown>, string])[] = [
      [here, { ...about, note: "x".repeat(501) }, "note"],
      [here, { ...about, repeat: Array(21).fill("soup") }, "repeat"],
      [here, { ...about, avoid: [""] }, "avoid.0"],
      [here, { ...about, avoid: ["x".repeat(81)] }, "avoid.0"],
      [here, { ...about, date: "2027-11-25" }, "date"],
      [alone, { childId: alone.children[0], date: today, seenRevision: 0, flask: "OTHER_HOME" }, "flask"],
    ];
    for (const [home, input, field] of refusals)
      expect(await change(home, WRITE, input)).toMatchObject({ __typename: "InvalidInput", issues: [{ field }] });
    expect(await change(here, WRITE, { ...about, note: "Hm." }, here.carers.OBSERVER)).toMatchObject({
      __typename: "NotPermitted",
    });
    expect(await change(alone, WRITE, { ...about, note: "Hm." })).toMatchObject({ __typename: "ChildNotFound" });
    expect(await noteOf(alone, ari)).toBeNull();
    expect(
      (await served.ask<{ handover: unknown }>(alone.coordinator, READ, { home: here.id, child: ari, date: today }))
        .handover,
    ).toBeNull();
    expect(await served.everyRow()).toBe(before);
  });
});
