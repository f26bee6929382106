import { recordAllergy } from "../../src/app/allergies.js";
import { recheckNow, touching, workOnRecheckJob } from "../../src/app/recheck.js";
import type { App, RecheckJob } from "../../src/app/app.js";
import { newKey } from "../support/app.js";
import {
  classId,
  localOf,
  schoolId,
  useServedApp,
  type Household,
  type Said,
  type WeekSeen,
} from "../support/served-app.js";
import { DAY, LABEL, LOAD } from "./documents.js";

const served = useServedApp({ steps: 25_000 });
const [, , , , friday] = ["2027-01-11", "2027-01-12", "2027-01-13", "2027-01-14", "2027-01-15"];

const OF_A_SCHOOL = `__typename ... on UserError { message } ... on InvalidInput { issues { field problem fix } } ... on RevisionPassed { currentRevision }`;
const REFUSALS = `${OF_A_SCHOOL} ... on NotPermitted { neededRole }`;
const RECORD = `mutation M($input: RecordAllergyInput!) { recordAllergy(input: $input) { ${REFUSALS} ... on AllergyPayload {
  child { id allergies { allergen foodKind avoid recordedHere } } household { id revision } } } }`;
const REMOVE = `mutation M($input: RemoveAllergyInput!) { removeAllergy(input: $input) { ${REFUSALS} ... on ConfirmationNeeded { token expiresAt }
  ... on AllergyPayload { child { id allergies { allergen avoid } } } } }`;
const KEEP_OUT = `mutation M($input: SetKeepsOutInput!) { setKeepsOut(input: $input) { ${REFUSALS} ... on KitchenPayload { household { keepsOut } } } }`;
const MEND = `mutation M($input: MendWeekInput!) { mendWeek(input: $input) { ${REFUSALS} ... on WeekPayload { changedBoxes { id date } week { revision plan { state } } } } }`;
const FACILITY = `mutation M($input: SetFacilityInput!) { setFacility(input: $input) { ${OF_A_SCHOOL} ... on SchoolPayload { school { revision classes { id facility } } } } }`;
const SET_DAY = `mutation M($input: SetSchoolDayInput!) { setSchoolDay(input: $input) { ${OF_A_SCHOOL} ... on SchoolPayload { school { revision days { date kind } } } } }`;
const REMOVE_DAY = `mutation M($input: RemoveSchoolDayInput!) { removeSchoolDay(input: $input) { ${OF_A_SCHOOL} ... on SchoolPayload { school { revision days { date kind } } } } }`;
const PACK = `mutation M($input: MarkPackedInput!) { markPacked(input: $input) { ${REFUSALS} ... on WeekPayload { week { revision } } } }`;
const AGREE = `mutation M($input: AgreeWeekInput!) { agreeWeek(input: $input) { ${REFUSALS} ... on WeekPayload { week { revision } } } }`;
const PIN = `mutation M($input: PinItemInput!) { pinItem(input: $input) { ${REFUSALS} ... on WeekPayload { week { revision } } } }`;
const OFFER = `query Offer($id: ID!) { mendingOffer(weekId: $id) { possible conflicts { kind } changedBoxes { date child { name } items { slot dish { key } } } } }`;
const VERDICTS = `subscription Verdicts($id: ID!) { boxesBlocked(householdId: $id) { date state child { name } reasons { kind text } } }`;
const BLOCKED = `query Boxes($id: ID!) { household(id: $id) { children { id name boxes(from: "${DAY}", to: "${friday}") { id date state packing { leaveAt }
  blockedBecause { kind allergen text dish { key } } items { slot dish { key allergens } } } } } }`;

interface Box {
  readonly id: string;
  readonly date: string;
  readonly state: string;
  readonly packing: unknown;
  readonly blockedBecause: readonly {
    readonly kind: string;
    readonly allergen: string | null;
    readonly text: string;
    readonly dish: { readonly key: string } | null;
  }[];
  readonly items: readonly {
    readonly slot: string;
    readonly dish: { readonly key: string; readonly allergens: string[] };
  }[];
}
const boxesOf = async (person: string, home: Household, child = 0): Promise<readonly Box[]> => {
  const { household } = await served.ask<{ household: { children: { id: string; boxes: Box[] }[] } }>(person, BLOCKED, {
    id: home.id,
  });
  return household.children.find(({ id }) => id === home.children[child])!.boxes;
};
const blockedIn = (boxes: readonly Box[]) => boxes.filter(({ state }) => state === "BLOCKED").map(({ date }) => date);

/** Ari lives in both homes; `here` packs the week, `there` only reads along. */
async function twoHomes(child: Record<string, unknown> = {}): Promise<{ here: Household; there: Household }> {
  const here = await served.household().child(child).planned(DAY).found();
  const there = await served.household().found();
  const { addHome, owner } = served.inProcess.database;
  await addHome(localOf(here.children[0]!), localOf(there.id));
  // Where no day says otherwise a child wakes in the home of longest standing: that is `here`.
  await owner`update residence set since = '2027-06-01' where household_id = ${localOf(there.id)}`;
  return { here, there };
}

/** An allergen that some boxes of the week have and others do not, and the days that have it. */
async function someAllergen(home: Household): Promise<{ allergen: string; dates: readonly string[] }> {
  const boxes = await boxesOf(home.coordinator, home);
  const all = [...new Set(boxes.flatMap(({ items }) => items.flatMap(({ dish }) => dish.allergens)))].sort();
  const found = all
    .map((allergen) => ({
      allergen,
      dates: boxes
        .filter(({ items }) => items.some(({ dish }) => dish.allergens.includes(allergen)))
        .map(({ date }) => date),
    }))
    .filter(({ dates }) => dates.length < boxes.length)
    .sort((a, b) => a.dates.length - b.dates.length || (a.allergen < b.allergen ? -1 : 1))[0];
  if (!found) throw new Error("every allergen of the week is in every box");
  return found;
}

const record = (home: Household, by: Household, input: Record<string, unknown>): Promise<Said> =>
  by.change(RECORD, { childId: home.children[0], ...input });
const weekOf = async (home: Household): Promise<WeekSeen> => (await home.week(DAY))!;
const until = async (test: () => boolean) => {
  for (let tries = 0; tries < 100 && !test(); tries += 1) await new Promise((wake) => setTimeout(wake, 30));
};
const schoolRevision = async (id: string) =>
  (
    await served.ask<{ school: { revision: number } }>(
      "demo:ruth",
      "query S($id: ID!) { school(id: $id) { revision } }",
      {
        id,
      },
    )
  ).school.revision;

describe("a new allergy", () => {
  it("recorded in one home blocks the other home's boxes that hold it, and tells both", async () => {
    const { here, there } = await twoHomes();
    const { allergen, dates } = await someAllergen(here);
    const before = await weekOf(here);
    const heard = [
      await served.subscribe(here.coordinator, VERDICTS, { id: here.id }),
      await served.subscribe(there.coordinator, VERDICTS, { id: there.id }),
    ];
    expect((await record(here, there, { allergen })).__typename).toBe("AllergyPayload");
    const own = await boxesOf(here.coordinator, here);
    expect(blockedIn(own)).toEqual(dates);
    for (const box of own.filter(({ state }) => state === "BLOCKED")) {
      const reason = box.blockedBecause.find(({ kind }) => kind === "ALLERGEN")!;
      expect(reason).toMatchObject({ allergen });
      expect(box.items.map(({ dish }) => dish.key)).toContain(reason.dish!.key);
      expect(reason.text).toMatch(/contains .*, which Ari avoids/);
    }
    expect((await weekOf(here)).revision).toBe(before.revision + 1);
    for (const { events } of heard) {
      await until(() => events.length >= dates.length);
      const told = events.map(
        (event) => event["boxesBlocked"] as { date: string; state: string; child: { name: string } },
      );
      expect(told.map(({ date }) => date).sort()).toEqual(dates);
      for (const { state, child } of told) expect([state, child.name]).toEqual(["BLOCKED", "Ari"]);
    }
    const box = own.find(({ state }) => state === "BLOCKED")!;
    const packed = await served.send(here.coordinator, PACK, {
      boxId: box.id,
      packedAt: `${box.date}T07:10:00Z`,
      seenRevision: before.revision + 1,
    });
    expect(packed.__typename).toBe("BoxBlocked");
  });

  it("recorded twice changes nothing the second time", async () => {
    const { here } = await twoHomes();
    const { allergen } = await someAllergen(here);
    await record(here, here, { allergen });
    const { revision } = await weekOf(here);
    const boxes = await boxesOf(here.coordinator, here);
    const { childIds } = touching({ childIds: [localOf(here.children[0]!)] });
    await recheckNow(served.inProcess.app, touching({ childIds }));
    expect((await record(here, here, { allergen })).__typename).toBe("AllergyPayload");
    expect((await weekOf(here)).revision).toBe(revision);
    expect(await boxesOf(here.coordinator, here)).toEqual(boxes);
  });

  it("is not loosened by recording it less strictly, and the stricter of two homes' records holds", async () => {
    const { here, there } = await twoHomes();
    expect((await record(here, here, { allergen: "SESAME" })).__typename).toBe("AllergyPayload");
    const looser = await record(here, here, { allergen: "SESAME", avoid: "INGREDIENTS" });
    expect(looser.issues.map(({ field }) => field)).toEqual(["avoid"]);
    const theirs = (await record(here, there, { allergen: "SESAME", avoid: "INGREDIENTS" })) as unknown as {
      child: { allergies: unknown[] };
    };
    expect(theirs.child.allergies).toEqual([
      { allergen: "SESAME", foodKind: null, avoid: "TRACES", recordedHere: true },
    ]);
  });
});

describe("taking an allergy back", () => {
  it("needs a second confirmation; then the boxes pass again", async () => {
    const { here } = await twoHomes();
    const { allergen, dates } = await someAllergen(here);
    await record(here, here, { allergen });
    const input = { childId: here.children[0], allergen };
    const first = (await here.change(REMOVE, input)) as Said & { token: string; expiresAt: string };
    expect(first.__typename).toBe("ConfirmationNeeded");
    expect(new Date(first.expiresAt).getTime()).toBeGreaterThan(served.inProcess.app.now().getTime());
    expect(blockedIn(await boxesOf(here.coordinator, here))).toEqual(dates);
    // The token is for this very thing.
    const other = await here.change(REMOVE, { ...input, loosenTo: "INGREDIENTS", token: first.token });
    expect(other.issues.map(({ field }) => field)).toEqual(["token"]);
    const done = (await here.change(REMOVE, { ...input, token: first.token })) as unknown as {
      __typename: string;
      child: { allergies: unknown[] };
    };
    expect(done.__typename).toBe("AllergyPayload");
    expect(done.child.allergies).toEqual([]);
    expect(blockedIn(await boxesOf(here.coordinator, here))).toEqual([]);
    const again = await here.change(REMOVE, { ...input, token: first.token });
    expect(again.issues.map(({ field }) => field)).toEqual(["token"]);
  });

  it("an expired token is worth nothing", async () => {
    const { here } = await twoHomes();
    await record(here, here, { allergen: "SESAME" });
    const input = { childId: here.children[0], allergen: "SESAME" };
    const { token } = (await here.change(REMOVE, input)) as Said & { token: string };
    await served.inProcess.database
      .owner`update confirmation set expires_at = '2026-11-25T11:59:00Z' where id = ${token}`;
    expect((await here.change(REMOVE, { ...input, token })).issues.map(({ field }) => field)).toEqual(["token"]);
  });

  it("loosening counts as removing, and a home takes back its own record only", async () => {
    const { here, there } = await twoHomes();
    await record(here, here, { allergen: "SESAME" });
    const input = { childId: here.children[0], allergen: "SESAME" };
    expect((await there.change(REMOVE, input)).__typename).toBe("NothingThere");
    const loosen = { ...input, loosenTo: "INGREDIENTS" };
    const { token } = (await here.change(REMOVE, loosen)) as Said & { token: string };
    const done = (await here.change(REMOVE, { ...loosen, token })) as unknown as { child: { allergies: unknown[] } };
    expect(done.child.allergies).toEqual([{ allergen: "SESAME", avoid: "INGREDIENTS" }]);
  });
});

describe("a label", () => {
  /** Reads every label of a box as clear and packs it. */
  async function packFirst(home: Household) {
    const { plan } = await weekOf(home);
    const box = plan.boxes.find(({ items }) => items.some(({ labelsToRead }) => (labelsToRead ?? []).length > 0))!;
    const foods = [...new Set(box.items.flatMap(({ labelsToRead }) => (labelsToRead ?? []).map(({ key }) => key)))];
    for (const food of foods) await home.change(LABEL, { food, contains: [], mayContain: [], readOn: "2026-11-20" });
    const { revision } = await weekOf(home);
    const packed = await served.send(home.coordinator, PACK, {
      boxId: box.id,
      packedAt: `${box.date}T07:10:00Z`,
      seenRevision: revision,
    });
    expect(packed.__typename).toBe("WeekPayload");
    return { box, food: foods[0]! };
  }

  it("that names the allergen blocks a packed box; one that clears it again gives the packed box back", async () => {
    const { here, there } = await twoHomes({ allergies: [{ allergen: "SESAME" }] });
    const { box, food } = await packFirst(here);
    await here.change(LABEL, { food, contains: [], mayContain: ["SESAME"], readOn: "2026-11-24" });
    const own = (await boxesOf(here.coordinator, here)).find(({ date }) => date === box.date)!;
    expect(own.state).toBe("BLOCKED");
    expect(own.blockedBecause[0]).toMatchObject({ kind: "MAY_CONTAIN", allergen: "SESAME" });
    // The reason tells the other home of the child's allergen, not of this kitchen's products.
    const [theirs] = (await boxesOf(there.coordinator, { ...there, children: here.children })).filter(
      ({ date }) => date === box.date,
    );
    expect(theirs).toMatchObject({ state: "BLOCKED", packing: null });
    expect(theirs!.blockedBecause[0]!.kind).toBe("MAY_CONTAIN");
    expect(own.blockedBecause[0]!.text).not.toBe(theirs!.blockedBecause[0]!.text);
    await here.change(LABEL, { food, contains: [], mayContain: [], readOn: "2026-11-25" });
    const after = (await boxesOf(here.coordinator, here)).find(({ date }) => date === box.date)!;
    expect(after).toMatchObject({ state: "PACKED", blockedBecause: [] });
  });

  it("older than the one on record is refused, naming the day", async () => {
    const { here } = await twoHomes();
    const label = { food: "raisins", contains: [], mayContain: [] };
    await here.change(LABEL, { ...label, readOn: "2026-11-24" });
    const older = await here.change(LABEL, { ...label, readOn: "2026-11-23" });
    expect(older.issues.map(({ field }) => field)).toEqual(["readOn"]);
  });

  it("that was never read for a new allergy blocks what is packed, not what is only planned", async () => {
    const { here, there } = await twoHomes({ allergies: [{ allergen: "SESAME" }] });
    const { box } = await packFirst(here);
    const { owner } = served.inProcess.database;
    await owner`delete from label_check where household_id = ${localOf(here.id)}`;
    await recheckNow(served.inProcess.app, touching({ householdIds: [localOf(here.id)] }));
    const own = await boxesOf(here.coordinator, here);
    expect(blockedIn(own)).toEqual([box.date]);
    expect(own.find(({ date }) => date === box.date)!.blockedBecause[0]!.kind).toBe("LABEL_UNREAD");
    const theirs = await boxesOf(there.coordinator, { ...there, children: here.children });
    const reasons = theirs.find(({ date }) => date === box.date)!.blockedBecause;
    expect(new Set(reasons.map(({ kind }) => kind))).toEqual(new Set(["KITCHEN"]));
    for (const { dish, allergen } of reasons) expect([dish, allergen]).toEqual([null, null]);
  });
});

describe("the other home", () => {
  it("learns that the kitchen blocked a box, not what that kitchen keeps out", async () => {
    const { here, there } = await twoHomes();
    const { allergen, dates } = await someAllergen(here);
    expect((await here.change(KEEP_OUT, { allergens: [allergen] })).__typename).toBe("KitchenPayload");
    const own = await boxesOf(here.coordinator, here);
    expect(blockedIn(own)).toEqual(dates);
    const mine = own.find(({ state }) => state === "BLOCKED")!.blockedBecause;
    expect(mine[0]).toMatchObject({ kind: "KEPT_OUT", allergen });
    const theirs = await boxesOf(there.coordinator, { ...there, children: here.children });
    expect(blockedIn(theirs)).toEqual(dates);
    for (const box of theirs.filter(({ state }) => state === "BLOCKED")) {
      for (const reason of box.blockedBecause) {
        expect(reason).toMatchObject({ kind: "KITCHEN", allergen: null, dish: null });
        expect(reason.text.toLowerCase()).not.toContain(allergen.toLowerCase().replaceAll("_", " "));
      }
    }
    const member = await served.inProcess.database.db.signIn(there.coordinator, there.coordinator);
    const session = served.inProcess.database.db.openRead(member);
    const seen = await session.read(async (tx) => [
      ...(await tx`select * from box_block_note`),
      ...(await tx`select * from label_check where household_id = ${localOf(here.id)}`),
    ]);
    await session.close();
    expect(seen).toEqual([]);
  });

  it("cannot write or take away the packing home's verdicts", async () => {
    const { here, there } = await twoHomes();
    const { allergen } = await someAllergen(here);
    await record(here, here, { allergen });
    const { db, owner } = served.inProcess.database;
    const member = await db.signIn(there.coordinator, there.coordinator);
    const child = localOf(here.children[0]!);
    const taken = await db.asPerson(member, (tx) => tx.boxBlock.deleteMany({ where: { childId: child } }));
    expect(taken.count).toBe(0);
    const [box] = await owner<{ id: string }[]>`select id from lunch_box where child_id = ${child} and current limit 1`;
    await expect(
      db.asPerson(member, (tx) =>
        tx.boxBlock.create({ data: { lunchBoxId: box!.id, childId: child, place: 99, kind: "ALLERGEN" } }),
      ),
    ).rejects.toThrow(/row-level security/);
    // Nor loosen or remove the record of the home that made it.
    const gone = await db.asPerson(member, (tx) => tx.allergy.deleteMany({ where: { childId: child } }));
    expect(gone.count).toBe(0);
  });
});

/** In the class whose school the demo's administrator runs. */
const younger = { dateOfBirth: "2018-05-07" };

describe("a school that changes", () => {
  it("a facility that no longer reheats blocks the box that was to be heated", async () => {
    const home = await served.household().child(younger, "class-4").planned(DAY).found();
    const { owner } = served.inProcess.database;
    // One item is to be heated at school: arranged by hand, as which dishes the planner chooses is its own business.
    const child = localOf(home.children[0]!);
    const [item] = await owner<{ id: string }[]>`select i.id from box_item i join lunch_box l on l.id = i.lunch_box_id
      where l.child_id = ${child} and l.current and l.date = ${friday} and i.slot = 'MAIN' limit 1`;
    await owner`update box_item set holding_case = 'REHEATED_AT_SCHOOL', served = 'WARM' where id = ${item!.id}`;
    const set = async (facility: string) =>
      served.send("demo:ruth", FACILITY, {
        schoolClassId: classId("class-4"),
        facility,
        seenRevision: await schoolRevision(schoolId("primary")),
      });
    const [{ facility }] = (await owner<{ facility: string }[]>`
      select facility::text as facility from school_class where id = ${localOf(classId("class-4"))}`) as unknown as [
      { facility: string },
    ];
    try {
      expect((await set("REHEATING")).__typename).toBe("SchoolPayload");
      const withHeat = (await boxesOf(home.coordinator, home)).find(({ date }) => date === friday)!;
      expect(withHeat.blockedBecause.map(({ kind }) => kind)).not.toContain("NO_REHEATING");
      expect((await set("NEITHER")).__typename).toBe("SchoolPayload");
      const without = (await boxesOf(home.coordinator, home)).find(({ date }) => date === friday)!;
      expect(without.state).toBe("BLOCKED");
      expect(without.blockedBecause.map(({ kind }) => kind)).toContain("NO_REHEATING");
    } finally {
      await set(facility);
    }
  });

  it("a holiday blocks the box of the day with no school, and taken back lets it pass", async () => {
    const home = await served.household().child(younger, "class-4").planned(DAY).found();
    const day = { schoolId: schoolId("primary"), date: friday };
    const seen = () => schoolRevision(schoolId("primary"));
    const holiday = await served.send("demo:ruth", SET_DAY, {
      ...day,
      kind: "HOLIDAY",
      title: "Snow day",
      seenRevision: await seen(),
    });
    expect(holiday.__typename).toBe("SchoolPayload");
    const boxes = await boxesOf(home.coordinator, home);
    expect(blockedIn(boxes)).toEqual([friday]);
    expect(boxes.at(-1)!.blockedBecause).toMatchObject([{ kind: "NO_SCHOOL", text: "Ari has no school on this day." }]);
    const back = await served.send("demo:ruth", REMOVE_DAY, { ...day, seenRevision: await seen() });
    expect(back.__typename).toBe("SchoolPayload");
    expect(blockedIn(await boxesOf(home.coordinator, home))).toEqual([]);
  });

  it("an early finish is told with its time, a trip without one, and only by the administrator", async () => {
    const day = { schoolId: schoolId("primary"), date: "2027-03-02", title: "Out" };
    const seenRevision = await schoolRevision(schoolId("primary"));
    const send = (person: string, input: Record<string, unknown>) =>
      served.send(person, SET_DAY, { ...day, seenRevision, ...input });
    expect((await send("demo:ruth", { kind: "EARLY_FINISH" })).__typename).toBe("InvalidInput");
    expect((await send("demo:ruth", { kind: "TRIP", endsAt: "12:00" })).__typename).toBe("InvalidInput");
    expect((await send("demo:ruth", { kind: "TRIP", schoolClassId: classId("year-8") })).__typename).toBe(
      "InvalidInput",
    );
    expect((await send("demo:ruth", { kind: "TRIP", seenRevision: seenRevision + 1 })).__typename).toBe(
      "RevisionPassed",
    );
    expect((await send("demo:ruth", { kind: "TRIP", schoolId: "nonsense" })).__typename).toBe("SchoolNotFound");
    const stranger = served.newcomer();
    expect((await send(stranger, { kind: "TRIP" })).__typename).toBe("NotAppointed");
    const facility = { schoolClassId: classId("class-4"), facility: "NEITHER", seenRevision };
    expect((await served.send(stranger, FACILITY, facility)).__typename).toBe("NotAppointed");
    expect((await served.send(stranger, REMOVE_DAY, { ...day, title: undefined, seenRevision })).__typename).toBe(
      "NotAppointed",
    );
    expect((await served.send("demo:ruth", REMOVE_DAY, { ...day, title: undefined, seenRevision })).__typename).toBe(
      "InvalidInput",
    );
    const idempotencyKey = newKey();
    const trip = () => send("demo:ruth", { kind: "TRIP", idempotencyKey });
    expect((await trip()).__typename).toBe("SchoolPayload");
    expect((await trip()).__typename).toBe("SchoolPayload");
    expect(await schoolRevision(schoolId("primary"))).toBe(seenRevision + 1);
  });

  it("a rule set that shuts out what is planned blocks it, in the rule's own words", async () => {
    const home = await served.household().child(younger, "class-4").planned(DAY).found();
    const [box] = await boxesOf(home.coordinator, home);
    const dish = box!.items.find(({ slot }) => slot === "MAIN")!.dish.key;
    const document = JSON.stringify({
      format: "noonpail-rule-set/1",
      key: `no-such-main-${newKey().slice(0, 8)}`,
      title: "Not this main",
      layer: "CLASS",
      coversFoodFromHome: true,
      language: "en",
      version: 1,
      inForceFrom: "2026-09-01",
      inForceUntil: "2027-02-01",
      rules: [
        {
          id: "not-this",
          kind: "EXCLUDE",
          says: "Not this main, please.",
          level: "FORBID",
          source: "own rule of an invented school",
          matches: { anyOf: [{ dishes: [dish] }] },
        },
      ],
    });
    const loaded = await served.send("demo:ruth", LOAD, {
      schoolId: schoolId("primary"),
      schoolClassId: classId("class-4"),
      seenRevision: 0,
      document,
    });
    expect(loaded.__typename).toBe("LoadRuleSetPayload");
    const blocked = (await boxesOf(home.coordinator, home)).filter(({ state }) => state === "BLOCKED");
    expect(blocked.map(({ date }) => date)).toEqual([box!.date]);
    expect(blocked[0]!.blockedBecause[0]!.text).toContain("Not this main, please.");
  });
});

describe("mending", () => {
  interface Offer {
    readonly mendingOffer: {
      readonly possible: boolean;
      readonly changedBoxes: readonly { readonly date: string; readonly items: readonly { dish: { key: string } }[] }[];
    } | null;
  }

  it("offers to change only what it must; taken, nothing is blocked and an agreed week stays agreed", async () => {
    const { here, there } = await twoHomes();
    const agreed = await served.send(here.coordinator, AGREE, {
      weekId: (await weekOf(here)).id,
      seenRevision: (await weekOf(here)).revision,
    });
    expect(agreed.__typename).toBe("WeekPayload");
    const { allergen, dates } = await someAllergen(here);
    const before = await boxesOf(here.coordinator, here);
    // Safety comes before a pin: what is pinned and blocked is let go.
    const bad = before
      .find(({ date }) => date === dates[0])!
      .items.find(({ dish }) => dish.allergens.includes(allergen))!;
    const { plan, revision: seen } = await weekOf(here);
    const item = plan.boxes.find(({ date }) => date === dates[0])!.items.find(({ dish }) => dish.key === bad.dish.key)!;
    await served.send(here.coordinator, PIN, { itemId: item.id, seenRevision: seen });
    await record(here, there, { allergen });
    const { id, revision } = await weekOf(here);
    const { mendingOffer } = await served.ask<Offer>(here.coordinator, OFFER, { id });
    expect(mendingOffer!.possible).toBe(true);
    expect(mendingOffer!.changedBoxes.map(({ date }) => date)).toEqual(dates);
    // An offer stores nothing.
    expect((await weekOf(here)).revision).toBe(revision);
    expect(await served.ask(there.coordinator, OFFER, { id })).toEqual({ mendingOffer: null });
    const mended = await served.send(here.coordinator, MEND, { weekId: id, seenRevision: revision });
    expect(mended).toMatchObject({ __typename: "WeekPayload", week: { plan: { state: "AGREED" } } });
    const after = await boxesOf(here.coordinator, here);
    expect(after.map(({ state }) => state)).toEqual(after.map(() => "PLANNED"));
    for (const box of after) {
      const keys = (one: Box) => one.items.map(({ dish }) => dish.key);
      const was = before.find(({ date }) => date === box.date)!;
      if (dates.includes(box.date)) expect(box.items.flatMap(({ dish }) => dish.allergens)).not.toContain(allergen);
      else expect(keys(box)).toEqual(keys(was));
    }
    const offered = mendingOffer!.changedBoxes.map(({ items }) => items.map(({ dish }) => dish.key).sort());
    expect(
      after.filter(({ date }) => dates.includes(date)).map((box) => box.items.map(({ dish }) => dish.key).sort()),
    ).toEqual(offered);
  });

  it("a packed box that is blocked is made anew and has to be packed again", async () => {
    const { here } = await twoHomes();
    const { allergen, dates } = await someAllergen(here);
    const [date] = dates;
    const { plan, revision } = await weekOf(here);
    const box = plan.boxes.find((one) => one.date === date)!;
    await served.send(here.coordinator, PACK, {
      boxId: box.id,
      packedAt: `${date!}T07:10:00Z`,
      seenRevision: revision,
    });
    await record(here, here, { allergen });
    expect((await boxesOf(here.coordinator, here)).find((one) => one.date === date)!.state).toBe("BLOCKED");
    const { id, revision: now } = await weekOf(here);
    expect((await served.send(here.coordinator, MEND, { weekId: id, seenRevision: now })).__typename).toBe(
      "WeekPayload",
    );
    const after = (await boxesOf(here.coordinator, here)).find((one) => one.date === date)!;
    expect(after.state).toBe("PLANNED");
    expect(after.items.flatMap(({ dish }) => dish.allergens)).not.toContain(allergen);
  });

  it("a box that is not due any more falls away", async () => {
    const { here } = await twoHomes();
    await served.inProcess.database
      .owner`update enrolment set until_date = '2027-01-14' where child_id = ${localOf(here.children[0]!)}`;
    await recheckNow(served.inProcess.app, touching({ childIds: [localOf(here.children[0]!)] }));
    expect(blockedIn(await boxesOf(here.coordinator, here))).toEqual([friday]);
    const { id, revision } = await weekOf(here);
    const { mendingOffer } = await served.ask<Offer>(here.coordinator, OFFER, { id });
    expect(mendingOffer!.changedBoxes).toMatchObject([{ date: friday, items: [] }]);
    await served.send(here.coordinator, MEND, { weekId: id, seenRevision: revision });
    expect((await boxesOf(here.coordinator, here)).map(({ date }) => date)).not.toContain(friday);
  });
});

describe("a crash", () => {
  it("between the change and the recheck is healed by the job that was queued with the change", async () => {
    const { here, there } = await twoHomes();
    const { allergen, dates } = await someAllergen(here);
    const { app, database } = served.inProcess;
    const queued: RecheckJob[] = [];
    const dying: App = {
      ...app,
      queue: {
        send: () => Promise.resolve(),
        sendRecheck: (job) => Promise.resolve(void queued.push(job)),
      },
      db: {
        ...app.db,
        homesToRecheck: () => Promise.reject(new Error("the server has died")),
      },
    };
    const person = await database.db.signIn(there.coordinator, there.coordinator);
    const done = await recordAllergy(dying, person, {
      idempotencyKey: newKey(),
      householdId: localOf(there.id),
      seenRevision: await there.revision(),
      childId: localOf(here.children[0]!),
      allergen,
      avoid: "TRACES",
    });
    expect(done.ok).toBe(true);
    expect(blockedIn(await boxesOf(here.coordinator, here))).toEqual([]);
    expect(queued).toHaveLength(1);
    expect(await workOnRecheckJob(app, queued[0]!)).toEqual({ homes: 2, boxes: dates.length });
    expect(blockedIn(await boxesOf(here.coordinator, here))).toEqual(dates);
    // The job of a change whose recheck was done finds nothing to do.
    expect(await workOnRecheckJob(app, queued[0]!)).toEqual({ homes: 2, boxes: 0 });
  });

  it("a process that read an older catalogue does not judge", async () => {
    const { here } = await twoHomes();
    const { app } = served.inProcess;
    const old: App = {
      ...app,
      reference: { ...app.reference, catalogue: { ...app.reference.catalogue, version: "yesterday" } },
    };
    const job = { id: newKey(), scope: touching({ householdIds: [localOf(here.id)] }) };
    await expect(workOnRecheckJob(old, job)).rejects.toThrow(/catalogue was reloaded/);
  });
});
