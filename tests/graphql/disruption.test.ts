import { localOf, useServedApp, type Household, type Said } from "../support/served-app.js";
import { DAY, FINISH, PACK, PIN } from "./documents.js";

const served = useServedApp({ steps: 25_000 });
const [monday, tuesday, wednesday, thursday, friday] = [
  "2027-01-11",
  "2027-01-12",
  "2027-01-13",
  "2027-01-14",
  "2027-01-15",
] as const;

const DIFFERENCE = `{ boxes { child { id } date before { slot dish { key } } after { slot dish { key } } }
  batches { base { key } session before { batches } after { batches } } sessions { session goes { kind text } comes { kind text } changes { kind } handsOnMinutesMore }
  toBuy { food { key kind } packs costMinor } notNeeded { food { key } packs } more { handsOnMinutes costMinor objectivePoints } }`;
const REFUSALS = `__typename ... on UserError { message } ... on InvalidInput { issues { field problem fix } } ... on NotPermitted { neededRole } ... on RevisionPassed { currentRevision }`;
const PAYLOAD = `... on DisruptionPayload { disruption { id kind date until text child { id } } changedBoxes { date child { id } }
  week { revision plan { number state } } difference ${DIFFERENCE} infeasible { message conflicts { kind date session } } }`;
const REPORT = `mutation Report($input: ReportDisruptionInput!) { reportDisruption(input: $input) { ${REFUSALS} ${PAYLOAD} } }`;
const WITHDRAW = `mutation Withdraw($input: WithdrawDisruptionInput!) { withdrawDisruption(input: $input) { ${REFUSALS} ${PAYLOAD} } }`;
const OFFER = `query Offer($home: ID!, $disruption: DisruptionInput!) { disruptionOffer(householdId: $home, disruption: $disruption) { __typename ... on InvalidInput { issues { field } }
  ... on DisruptionOffer { difference ${DIFFERENCE} } ... on WeekInfeasible { conflicts { kind } } } }`;
const LIST = `query List($id: ID!) { household(id: $id) { disruptions(from: "2027-01-01", to: "2027-01-31") { id kind date until text foodKind appliance units minutes endsAt reason child { id } } } }`;
const WEEK = `query Week($id: ID!) { week(householdId: $id, date: "${DAY}") { id revision plan { id number state
  boxes { id date state child { id } blockedBecause { kind text } items { id breakKey slot place pinned grams dish { key ingredients { food { kind } } } } }
  batches { base { key } session batches state } tasks { id key: kind kind session state } } } }`;
const SEEN_BOXES = `query Boxes($id: ID!) { household(id: $id) { children { id boxes(from: "${monday}", to: "${friday}") { date state blockedBecause { kind text } } } } }`;

interface Box {
  readonly id: string;
  readonly date: string;
  readonly state: string;
  readonly child: { readonly id: string };
  readonly blockedBecause: readonly { readonly kind: string; readonly text: string }[];
  readonly items: readonly {
    readonly id: string;
    readonly breakKey: string;
    readonly slot: string;
    readonly place: number;
    readonly pinned: boolean;
    readonly grams: number;
    readonly dish: {
      readonly key: string;
      readonly ingredients: readonly { readonly food: { readonly kind: string } }[];
    };
  }[];
}
interface Week {
  readonly id: string;
  readonly revision: number;
  readonly plan: {
    readonly id: string;
    readonly number: number;
    readonly state: string;
    readonly boxes: readonly Box[];
    readonly batches: readonly {
      readonly base: { readonly key: string };
      readonly session: string;
      readonly batches: number;
      readonly state: string;
    }[];
    readonly tasks: readonly { readonly id: string; readonly kind: string; readonly session: string }[];
  };
}
interface Difference {
  readonly boxes: readonly {
    readonly child: { readonly id: string };
    readonly date: string;
    readonly before: readonly { readonly dish: { readonly key: string } }[];
    readonly after: readonly { readonly dish: { readonly key: string } }[];
  }[];
  readonly sessions: readonly {
    readonly goes: readonly { readonly kind: string }[];
    readonly handsOnMinutesMore: number;
  }[];
  readonly toBuy: readonly { readonly food: { readonly kind: string } }[];
  readonly more: { readonly handsOnMinutes: number };
}
interface Reported extends Said {
  readonly disruption: { readonly id: string; readonly kind: string; readonly text: string } | null;
  readonly difference: Difference | null;
  readonly infeasible: { readonly conflicts: readonly { readonly kind: string }[] } | null;
}
interface Listed {
  readonly id: string;
  readonly kind: string;
  readonly date: string;
  readonly until: string;
}

const weekOf = async (home: Household): Promise<Week> =>
  (await served.ask<{ week: Week }>(home.coordinator, WEEK, { id: home.id })).week;
const listed = async (home: Household, person = home.coordinator): Promise<readonly Listed[]> =>
  (await served.ask<{ household: { disruptions: Listed[] } }>(person, LIST, { id: home.id })).household.disruptions;
const report = async (
  home: Household,
  disruption: object,
  person = home.coordinator,
  change = {},
): Promise<Reported> => {
  const seenRevision = (await home.week(DAY))?.revision ?? 0;
  return (await served.send(person, REPORT, { householdId: home.id, seenRevision, disruption, ...change })) as Reported;
};
const withdraw = async (home: Household, disruptionId: string, person = home.coordinator): Promise<Reported> => {
  const seenRevision = (await home.week(DAY))?.revision ?? 0;
  return (await served.send(person, WITHDRAW, { householdId: home.id, seenRevision, disruptionId })) as Reported;
};
const offer = async (home: Household, disruption: object, person = home.coordinator) =>
  (
    await served.ask<{ disruptionOffer: { __typename: string; difference: Difference | null } }>(person, OFFER, {
      home: home.id,
      disruption,
    })
  ).disruptionOffer;

/** What a box holds, wherever it lies in it. */
const contents = ({ plan }: Week): ReadonlyMap<string, string> =>
  new Map(
    plan.boxes.map(({ child, date, items }) => [
      `${child.id}@${date}`,
      items.map(({ breakKey, slot, place, dish, grams }) => `${breakKey} ${slot} ${place} ${dish.key} ${grams}`).join(),
    ]),
  );
const changedBetween = (before: Week, after: Week): string[] => {
  const [was, is] = [contents(before), contents(after)];
  return [...new Set([...was.keys(), ...is.keys()])].filter((key) => was.get(key) !== is.get(key)).sort();
};
const placesOf = (boxes: Difference["boxes"]) => boxes.map(({ child, date }) => `${child.id}@${date}`).sort();
const holds = (box: Box, kind: string) =>
  box.items.some(({ dish }) => dish.ingredients.some(({ food }) => food.kind === kind));
/** A kind of food that some boxes of the week hold and others do not. */
function someKind({ plan }: Week, among: (box: Box) => boolean = () => true): string {
  const boxes = plan.boxes.filter(among);
  const kinds = [
    ...new Set(
      boxes.flatMap(({ items }) => items.flatMap(({ dish }) => dish.ingredients.map(({ food }) => food.kind))),
    ),
  ];
  const found = kinds
    .map((kind) => ({ kind, count: plan.boxes.filter((box) => holds(box, kind)).length }))
    .filter(({ count }) => count <= 2)
    .sort((a, b) => a.count - b.count || (a.kind < b.kind ? -1 : 1))[0];
  if (!found) throw new Error("every food is in many boxes");
  return found.kind;
}

const siblings = () =>
  served
    .household()
    .child()
    .child({ name: "Bo", dateOfBirth: "2018-02-03" }, "class-4")
    .carer("HELPER")
    .carer("OBSERVER");

const oneChild = () => served.household().child().carer("HELPER").carer("OBSERVER");

/** The first child lives in both homes; `here` packs the week, `there` has a kitchen of its own. */
async function twoHomes(): Promise<{ here: Household; there: Household }> {
  const here = await served.household().child().planned(DAY).found();
  const there = await served.household().found();
  const { addHome, owner } = served.inProcess.database;
  await addHome(localOf(here.children[0]!), localOf(there.id));
  // Where no day says otherwise a child wakes in the home of longest standing: that is `here`.
  await owner`update residence set since = '2027-06-01' where household_id = ${localOf(there.id)}`;
  return { here, there };
}

describe("something that upsets the week", () => {
  it("is shown as a difference before anything is stored, and stored as it was shown", async () => {
    const home = await oneChild().planned(DAY).found();
    const before = await weekOf(home);
    const ill = { childAbsent: { childId: home.children[0], date: wednesday, reason: "a cold" } };
    const rows = await served.everyRow();
    const offered = await offer(home, ill, home.carers.OBSERVER);
    expect(offered.__typename).toBe("DisruptionOffer");
    expect(await served.everyRow()).toBe(rows);
    const gone = offered.difference!.boxes.filter(({ after }) => after.length === 0);
    expect(placesOf(gone)).toEqual([`${home.children[0]}@${wednesday}`]);
    expect(offered.difference!.sessions.flatMap(({ goes }) => goes.map(({ kind }) => kind))).toContain("PACK");
    expect(offered.difference!.more.handsOnMinutes).toBeLessThan(0);

    const done = await report(home, ill, home.carers.HELPER);
    expect(done).toMatchObject({
      __typename: "DisruptionPayload",
      infeasible: null,
      disruption: { kind: "ABSENT", text: `Ari stays home on ${wednesday} (a cold).` },
      week: { plan: { number: before.plan.number + 1 } },
    });
    expect(done.difference).toEqual(offered.difference);
    expect(placesOf(done.difference!.boxes)).toEqual(changedBetween(before, await weekOf(home)));
    // No box but the one that falls away.
    expect(placesOf(done.difference!.boxes)).toEqual([`${home.children[0]}@${wednesday}`]);
    const again = await served.ask<{ week: { plan: { differenceFrom: unknown; none: unknown } } }>(
      home.coordinator,
      `query D($id: ID!) { week(householdId: $id, date: "${DAY}") { plan { differenceFrom(number: ${before.plan.number}) ${DIFFERENCE} none: differenceFrom(number: 99) { toBuy { packs } } } } }`,
      { id: home.id },
    );
    expect(again.week.plan).toEqual({ differenceFrom: done.difference, none: null });
    // Every later plan obeys it too.
    expect((await home.plan(DAY)).__typename).toBe("WeekPayload");
    expect([...contents(await weekOf(home)).keys()]).not.toContain(`${home.children[0]}@${wednesday}`);

    // Taken back, the child's box is planned again.
    const back = await withdraw(home, done.disruption!.id);
    expect(back).toMatchObject({ __typename: "DisruptionPayload", disruption: null });
    expect(placesOf(back.difference!.boxes)).toEqual([`${home.children[0]}@${wednesday}`]);
    expect(await listed(home)).toEqual([]);
  });

  it("a food that is not to be had changes the boxes that hold it, and no other", async () => {
    const home = await oneChild().planned(DAY).found();
    const before = await weekOf(home);
    const kind = someKind(before);
    const had = before.plan.boxes.filter((box) => holds(box, kind)).map(({ child, date }) => `${child.id}@${date}`);
    const done = await report(home, { foodMissing: { foodKind: kind, date: monday, until: friday } });
    expect(done).toMatchObject({ __typename: "DisruptionPayload", infeasible: null });
    const after = await weekOf(home);
    expect(after.plan.boxes.filter((box) => holds(box, kind))).toEqual([]);
    // A box that holds it cannot stay: fewer changes than these there are not.
    expect(changedBetween(before, after)).toEqual(had.sort());
    expect(done.difference!.toBuy.map(({ food }) => food.kind)).not.toContain(kind);
  });

  it("leaves alone what is packed, pinned and cooked", async () => {
    const home = await siblings().planned(DAY).found();
    const first = await weekOf(home);
    const packed = first.plan.boxes.find(({ date, child }) => date === monday && child.id === home.children[0])!;
    expect(
      (
        await served.send(home.coordinator, PACK, {
          boxId: packed.id,
          packedAt: `${monday}T07:10:00Z`,
          seenRevision: first.revision,
        })
      ).__typename,
    ).toBe("WeekPayload");
    const item = first.plan.boxes
      .find(({ date, child }) => date === tuesday && child.id === home.children[1])!
      .items.find(({ slot }) => slot === "MAIN")!;
    const base = first.plan.tasks.find((task) => task.kind === "BASE")!;
    const now = async () => (await weekOf(home)).revision;
    expect((await served.send(home.coordinator, PIN, { itemId: item.id, seenRevision: await now() })).__typename).toBe(
      "WeekPayload",
    );
    expect(
      (await served.send(home.coordinator, FINISH, { taskId: base.id, seenRevision: await now() })).__typename,
    ).toBe("TaskPayload");
    const before = await weekOf(home);
    const cooked = before.plan.batches.filter(({ state }) => state === "DONE");
    expect(cooked).toHaveLength(1);
    const kind = someKind(before, ({ id }) => id !== packed.id);
    for (const disruption of [
      { foodMissing: { foodKind: kind, date: monday, until: friday } },
      { schoolClosed: { childId: home.children[1], date: monday } },
      { childAbsent: { childId: home.children[0], date: tuesday, until: friday } },
    ]) {
      const done = await report(home, disruption);
      expect(done).toMatchObject({ __typename: "DisruptionPayload", infeasible: null });
      const after = await weekOf(home);
      expect(after.plan.batches.filter(({ state }) => state === "DONE")).toEqual(cooked);
      const same = after.plan.boxes.find(({ date, child }) => date === monday && child.id === home.children[0])!;
      expect(same.state).toBe("PACKED");
      expect(contents(after).get(`${home.children[0]}@${monday}`)).toBe(
        contents(before).get(`${home.children[0]}@${monday}`),
      );
      const pinned = after.plan.boxes.flatMap(({ items }) => items).filter((one) => one.pinned);
      expect(pinned.map(({ dish }) => dish.key)).toEqual([item.dish.key]);
    }
  });

  it("a packed box that is no longer right keeps everything in it, is blocked, and waits to be mended", async () => {
    const home = await oneChild().planned(DAY).found();
    const first = await weekOf(home);
    const packed = first.plan.boxes.find(({ date, child }) => date === friday && child.id === home.children[0])!;
    await served.send(home.coordinator, PACK, {
      boxId: packed.id,
      packedAt: `${friday}T07:10:00Z`,
      seenRevision: first.revision,
    });
    const done = await report(home, { earlyFinish: { childId: home.children[0], date: friday, endsAt: "11:00" } });
    expect(done).toMatchObject({ __typename: "DisruptionPayload", infeasible: null });
    const after = await weekOf(home);
    const box = after.plan.boxes.find(({ date, child }) => date === friday && child.id === home.children[0])!;
    expect(box.state).toBe("BLOCKED");
    expect(new Set(box.blockedBecause.map(({ kind }) => kind))).toEqual(new Set(["BREAKS_CHANGED"]));
    expect(contents(after).get(`${home.children[0]}@${friday}`)).toBe(
      contents(first).get(`${home.children[0]}@${friday}`),
    );
  });

  it("an early finish takes the later breaks out of the box, a trip what needs the school's refrigerator or heating", async () => {
    const home = await oneChild().planned(DAY).found();
    const early = await report(home, { earlyFinish: { childId: home.children[0], date: thursday, endsAt: "11:00" } });
    expect(early).toMatchObject({ __typename: "DisruptionPayload", infeasible: null });
    const week = await weekOf(home);
    const box = week.plan.boxes.find(({ date, child }) => date === thursday && child.id === home.children[0])!;
    expect(box.state).toBe("PLANNED");
    const usual = week.plan.boxes.find(({ date, child }) => date === wednesday && child.id === home.children[0])!;
    const breaks = ({ items }: Box) => new Set(items.map(({ breakKey }) => breakKey)).size;
    expect(breaks(box)).toBeLessThan(breaks(usual));
    const trip = await report(home, { tripDay: { childId: home.children[0], date: tuesday } });
    expect(trip.__typename).toBe("DisruptionPayload");
    const states = (await weekOf(home)).plan.boxes.map(({ state }) => state);
    if (trip.infeasible === null) expect(new Set(states)).toEqual(new Set(["PLANNED"]));
    else expect(states).toContain("BLOCKED");
  });

  it("is recorded even when no week is left: the boxes that cannot be made are blocked, and taken back they are not", async () => {
    const home = await oneChild().planned(DAY).found();
    const before = await weekOf(home);
    const none = { shortMorning: { date: thursday, minutes: 0 } };
    expect((await offer(home, none)).__typename).toBe("WeekInfeasible");
    const done = await report(home, none);
    expect(done).toMatchObject({
      __typename: "DisruptionPayload",
      difference: null,
      changedBoxes: [],
      week: { plan: { number: before.plan.number } },
    });
    expect(done.infeasible!.conflicts.length).toBeGreaterThan(0);
    const blocked = (await weekOf(home)).plan.boxes.filter(({ state }) => state === "BLOCKED");
    expect([...new Set(blocked.map(({ date }) => date))]).toEqual([thursday]);
    expect(blocked).toHaveLength(1);
    for (const { blockedBecause } of blocked) expect(blockedBecause.map(({ kind }) => kind)).toEqual(["SHORT_MORNING"]);
    expect((await listed(home)).map(({ kind }) => kind)).toEqual(["SHORT_MORNING"]);
    expect((await withdraw(home, done.disruption!.id)).__typename).toBe("DisruptionPayload");
    const after = await weekOf(home);
    expect(new Set(after.plan.boxes.map(({ state }) => state))).toEqual(new Set(["PLANNED"]));
    expect(changedBetween(before, after)).toEqual([]);
  });

  it("a broken appliance is used by nothing that is made on its days", async () => {
    const home = await oneChild().planned(DAY).found();
    const USES = `query Uses($id: ID!) {
      week(householdId: $id, date: "${DAY}") { plan { tasks { equipment session } } }
    }`;
    type Answer = { week: { plan: { tasks: { equipment: string[]; session: string }[] } } };
    const used = async () =>
      (await served.ask<Answer>(home.coordinator, USES, { id: home.id })).week.plan.tasks.flatMap(
        ({ equipment, session }) =>
          equipment.map((use) => ({ kind: use.replace(/^\d+ x /, ""), date: session.slice(-10) })),
      );
    const appliance = (await used())[0]!.kind;
    const done = await report(home, { applianceBroken: { appliance, units: 12, date: monday, until: friday } });
    expect(done.__typename).toBe("DisruptionPayload");
    const states = (await weekOf(home)).plan.boxes.map(({ state }) => state);
    const then = (await used()).filter(({ kind, date }) => kind === appliance && date >= monday);
    if (done.infeasible === null) expect(then).toEqual([]);
    else expect(states).toContain("BLOCKED");
  });

  it("of a week that is not planned yet is obeyed when it is", async () => {
    const home = await oneChild().found();
    const done = await report(home, { schoolClosed: { childId: home.children[0], date: monday, until: tuesday } });
    expect(done).toMatchObject({ __typename: "DisruptionPayload", week: null, difference: null, infeasible: null });
    expect((await home.plan(DAY)).__typename).toBe("WeekPayload");
    const dates = (await weekOf(home)).plan.boxes
      .filter(({ child }) => child.id === home.children[0])
      .map(({ date }) => date);
    expect(dates).toEqual([wednesday, thursday, friday]);
  });

  it("that the plan passes all the same leaves the plan as it is", async () => {
    const home = await oneChild().planned(DAY).found();
    const before = await weekOf(home);
    const done = await report(home, { shortMorning: { date: tuesday, minutes: 600 } });
    expect(done).toMatchObject({ __typename: "DisruptionPayload", difference: null, infeasible: null });
    const after = await weekOf(home);
    expect([after.plan.id, after.revision]).toEqual([before.plan.id, before.revision + 1]);
  });

  it("reported twice is one report, the second one's", async () => {
    const home = await oneChild().found();
    await report(home, { childAbsent: { childId: home.children[0], date: monday } });
    await report(home, { childAbsent: { childId: home.children[0], date: monday, until: tuesday } });
    expect(await listed(home)).toMatchObject([{ kind: "ABSENT", date: monday, until: tuesday }]);
  });
});

describe("the other home", () => {
  it("hears what is about the child at once: its boxes are blocked, both list it, either takes it back", async () => {
    const { here, there } = await twoHomes();
    const before = await weekOf(here);
    const child = here.children[0];
    const done = await report(there, { childAbsent: { childId: child, date: tuesday } }, there.coordinator, {
      seenRevision: 0,
    });
    expect(done).toMatchObject({ __typename: "DisruptionPayload", week: null });
    const blocked = (await weekOf(here)).plan.boxes.filter(({ state }) => state === "BLOCKED");
    expect(blocked.map(({ date }) => date)).toEqual([tuesday]);
    expect((await listed(here)).map(({ id }) => id)).toEqual((await listed(there)).map(({ id }) => id));
    const back = await withdraw(here, done.disruption!.id);
    expect(back.__typename).toBe("DisruptionPayload");
    const after = await weekOf(here);
    expect(after.plan.boxes.map(({ state }) => state)).toEqual(before.plan.boxes.map(() => "PLANNED"));
    expect(changedBetween(before, after)).toEqual([]);
  });

  it("learns nothing of the kitchen: neither what is missing in it nor why a box is blocked", async () => {
    const { here, there } = await twoHomes();
    const done = await report(here, { shortMorning: { date: monday, minutes: 0 } });
    expect(done.infeasible).not.toBeNull();
    expect(await listed(there)).toEqual([]);
    const { household } = await served.ask<{ household: { children: { boxes: Box[] }[] } }>(
      there.coordinator,
      SEEN_BOXES,
      { id: there.id },
    );
    const box = household.children[0]!.boxes.find(({ date }) => date === monday)!;
    expect([box.state, box.blockedBecause.map(({ kind }) => kind)]).toEqual(["BLOCKED", ["KITCHEN"]]);
    expect(await withdraw(there, done.disruption!.id)).toMatchObject({ __typename: "NothingThere" });
    expect((await listed(here)).map(({ kind }) => kind)).toEqual(["SHORT_MORNING"]);
    const { db, owner } = served.inProcess.database;
    const member = await db.signIn(there.coordinator, there.coordinator);
    expect(await db.asPerson(member, (tx) => tx.kitchenDisruption.findMany())).toEqual([]);
    expect((await db.asPerson(member, (tx) => tx.kitchenDisruption.deleteMany())).count).toBe(0);
    await expect(
      db.asPerson(member, (tx) =>
        tx.kitchenDisruption.create({
          data: {
            householdId: localOf(here.id),
            kind: "SHORT_MORNING",
            date: new Date(monday),
            until: new Date(monday),
            minutes: 1,
          },
        }),
      ),
    ).rejects.toThrow(/row-level security/);
    expect(await owner`select 1 from kitchen_disruption where household_id = ${localOf(here.id)}`).toHaveLength(1);
  });

  it("cannot report of a child that is not its own, nor a stranger anything", async () => {
    const { here, there } = await twoHomes();
    const other = await served.household().child().found();
    const ill = { childAbsent: { childId: other.children[0], date: monday } };
    expect((await report(there, ill, there.coordinator, { seenRevision: 0 })).__typename).toBe("ChildNotFound");
    const asStranger = await report(here, { tripDay: { childId: here.children[0], date: monday } }, served.newcomer());
    expect(asStranger.__typename).toBe("HouseholdNotFound");
    expect((await offer(here, ill, served.newcomer())).__typename).toBe("HouseholdNotFound");
  });
});

describe("a report that cannot be used", () => {
  it("names the field and the way out, and nothing is stored", async () => {
    const home = await oneChild().found();
    const [childId] = home.children;
    const cases: readonly (readonly [object, string])[] = [
      [{ childAbsent: { childId, date: friday, until: monday } }, "disruption.childAbsent.until"],
      [{ childAbsent: { childId, date: "2026-11-01" } }, "disruption.childAbsent.date"],
      [{ schoolClosed: { childId, date: monday, until: "2027-09-01" } }, "disruption.schoolClosed.until"],
      [{ tripDay: { childId, date: "2029-01-01" } }, "disruption.tripDay.date"],
      [{ foodMissing: { foodKind: "brocoli", date: monday } }, "disruption.foodMissing.foodKind"],
      [{ applianceBroken: { appliance: "TANDOOR", date: monday } }, "disruption.applianceBroken.appliance"],
      [{ applianceBroken: { appliance: "OVEN", units: 0, date: monday } }, "disruption.applianceBroken.units"],
      [{ shortMorning: { date: monday, minutes: -1 } }, "disruption.shortMorning.minutes"],
      [{ childAbsent: { childId, date: monday, reason: "x".repeat(300) } }, "disruption.childAbsent.reason"],
    ];
    const rows = await served.everyRow();
    for (const [disruption, field] of cases) {
      const refused = await report(home, disruption);
      expect(refused).toMatchObject({ __typename: "InvalidInput", issues: [{ field }] });
      expect(refused.issues[0]!.fix.length).toBeGreaterThan(10);
      expect((await offer(home, disruption)).__typename).toBe("InvalidInput");
    }
    expect((await report(home, { tripDay: { childId: "nonsense", date: monday } })).__typename).toBe("ChildNotFound");
    expect(await served.everyRow()).toBe(rows);
  });

  it("says one thing at a time", async () => {
    const home = await oneChild().found();
    const two = { shortMorning: { date: monday, minutes: 10 }, foodMissing: { foodKind: "egg", date: monday } };
    const { errors } = await served.post(home.coordinator, REPORT, {
      input: { idempotencyKey: "two-things-at-once", householdId: home.id, seenRevision: 0, disruption: two },
    });
    expect(errors).toHaveLength(1);
    expect(errors[0]!.message).toContain("DisruptionInput");
  });

  it("by who only reads is refused, and so is one that has not seen the newest week", async () => {
    const home = await oneChild().planned(DAY).found();
    const short = { shortMorning: { date: monday, minutes: 30 } };
    expect(await report(home, short, home.carers.OBSERVER)).toMatchObject({
      __typename: "NotPermitted",
      neededRole: "HELPER",
    });
    expect(await report(home, short, home.coordinator, { seenRevision: 0 })).toMatchObject({
      __typename: "RevisionPassed",
    });
    expect(await listed(home)).toEqual([]);
  });
});
