import { randomUUID } from "node:crypto";
import fc from "fast-check";
import type { Tx } from "../../src/database/database.js";
import { readResidence } from "../../src/database/residence.js";
import { readDemoFiles } from "../../src/database/seed.js";
import { addDays } from "../../src/domain/calendar/dates.js";
import { daysFrom, wakesIn } from "../../src/domain/calendar/residence.js";
import { useDatabase } from "../support/database.js";

const database = useDatabase({ demo: true });
const demo = readDemoFiles();
const idOf = (rows: readonly { key: string; id: string }[], key: string) => rows.find((row) => row.key === key)!.id;
const [ana, tom, leo, ruth] = ["ana", "tom", "leo", "ruth"].map((key) => idOf(demo.people, key)) as [
  string,
  string,
  string,
  string,
];
const [millpond, hilltop] = ["millpond", "hilltop"].map((key) => idOf(demo.homes, key)) as [string, string];
const [pia, mina] = ["pia", "mina"].map((key) => idOf(demo.children, key)) as [string, string];

const as = <T>(person: string, work: (tx: Tx) => Promise<T>) => database.db.asPerson(person, work);
const pattern = (childId: string, by: string, more: Record<string, unknown> = {}) => ({
  id: randomUUID(),
  childId,
  kind: "OWN_CYCLE",
  starts: new Date("2027-06-01"),
  cycle: [millpond, hilltop],
  state: "PROPOSED",
  proposedByHouseholdId: by,
  ...more,
});
const day = (childId: string, by: string, more: Record<string, unknown> = {}) => ({
  id: randomUUID(),
  changeId: randomUUID(),
  childId,
  date: new Date("2027-06-10"),
  householdId: hilltop,
  state: "PROPOSED",
  proposedByHouseholdId: by,
  ...more,
});
const answer = (state: string) => ({ state, answeredAt: new Date("2026-11-25T12:00:00Z") });
const refused = (work: Promise<unknown>) => expect(work).rejects.toThrow("row-level security");

let stranger: string;
let theirHome: string;
let observer: string;
beforeAll(async () => {
  stranger = await database.newPerson("Stranger");
  theirHome = await database.newHousehold(stranger);
  observer = await database.newPerson("Observer");
  await database.addCarer(observer, millpond, "OBSERVER");
});
afterEach(async () => {
  await database.owner`delete from residence_pattern where state <> 'ACCEPTED' or starts > '2027-01-01'`;
  await database.owner`delete from residence_exception`;
  await database.owner`delete from box_return`;
  await database.owner`delete from handover`;
});

describe("proposals in the database", () => {
  test("a coordinator proposes for a child of the home, in the home's own name and among the child's homes", async () => {
    await as(ana, (tx) => tx.residencePattern.create({ data: pattern(mina, millpond) }));
    await as(leo, (tx) => tx.residenceException.create({ data: day(mina, hilltop) }));
    await refused(as(ana, (tx) => tx.residenceException.create({ data: day(mina, hilltop) })));
    await refused(as(tom, (tx) => tx.residenceException.create({ data: day(mina, millpond) })));
    await refused(as(observer, (tx) => tx.residenceException.create({ data: day(mina, millpond) })));
    await refused(as(stranger, (tx) => tx.residenceException.create({ data: day(mina, theirHome) })));
    await refused(as(ruth, (tx) => tx.residenceException.create({ data: day(mina, millpond) })));
    await refused(as(leo, (tx) => tx.residenceException.create({ data: day(pia, hilltop) })));
    await refused(
      as(ana, (tx) => tx.residenceException.create({ data: day(mina, millpond, { householdId: theirHome }) })),
    );
    await refused(
      as(ana, (tx) => tx.residencePattern.create({ data: pattern(mina, millpond, { cycle: [theirHome] }) })),
    );
    await refused(as(ana, (tx) => tx.residencePattern.create({ data: pattern(pia, millpond) })));
  });

  test("nothing between two homes begins as agreed; what has one home does", async () => {
    const agreed = answer("ACCEPTED");
    await refused(as(ana, (tx) => tx.residencePattern.create({ data: pattern(mina, millpond, agreed) })));
    await refused(as(ana, (tx) => tx.residenceException.create({ data: day(mina, millpond, agreed) })));
    await as(ana, (tx) =>
      tx.residencePattern.create({ data: pattern(pia, millpond, { cycle: [millpond], ...agreed }) }),
    );
  });

  test("nobody accepts or declines for the home that proposed, nor withdraws for the other, and only coordinators do either", async () => {
    const { id } = await as(leo, (tx) => tx.residenceException.create({ data: day(mina, hilltop) }));
    const set = (person: string, state: string) =>
      as(person, (tx) => tx.residenceException.updateMany({ where: { id }, data: answer(state) }));
    for (const state of ["ACCEPTED", "DECLINED"]) await refused(set(leo, state));
    await refused(set(ana, "WITHDRAWN"));
    for (const person of [tom, observer]) await refused(set(person, "ACCEPTED"));
    // To a stranger the row is not there.
    expect(await set(stranger, "ACCEPTED")).toEqual({ count: 0 });
    expect(await set(ana, "ACCEPTED")).toEqual({ count: 1 });
    // What is answered stays answered.
    for (const [person, state] of [
      [ana, "DECLINED"],
      [leo, "WITHDRAWN"],
    ] as const)
      expect(await set(person, state)).toEqual({ count: 0 });
  });

  test("the same of a pattern", async () => {
    const { id } = await as(ana, (tx) => tx.residencePattern.create({ data: pattern(mina, millpond) }));
    const set = (person: string, state: string) =>
      as(person, (tx) => tx.residencePattern.updateMany({ where: { id }, data: answer(state) }));
    await refused(set(ana, "ACCEPTED"));
    await refused(set(leo, "WITHDRAWN"));
    await refused(set(tom, "WITHDRAWN"));
    expect(await set(stranger, "ACCEPTED")).toEqual({ count: 0 });
    expect(await set(leo, "DECLINED")).toEqual({ count: 1 });
  });

  test("what was proposed cannot be changed into something else, nor removed", async () => {
    const { id } = await as(leo, (tx) => tx.residenceException.create({ data: day(mina, hilltop) }));
    for (const data of [
      { householdId: millpond },
      { date: new Date("2027-06-11") },
      { proposedByHouseholdId: millpond },
    ])
      await expect(as(leo, (tx) => tx.residenceException.updateMany({ where: { id }, data }))).rejects.toThrow(
        "permission denied",
      );
    await expect(as(leo, (tx) => tx.residenceException.deleteMany())).rejects.toThrow("permission denied");
    await expect(as(leo, (tx) => tx.residencePattern.deleteMany())).rejects.toThrow("permission denied");
  });

  test("one proposal stands open for a child and day, and one pattern", async () => {
    await as(leo, (tx) => tx.residenceException.create({ data: day(mina, hilltop) }));
    await expect(as(ana, (tx) => tx.residenceException.create({ data: day(mina, millpond) }))).rejects.toThrow(
      "Unique constraint",
    );
    await as(leo, (tx) => tx.residencePattern.create({ data: pattern(mina, hilltop) }));
    await expect(as(ana, (tx) => tx.residencePattern.create({ data: pattern(mina, millpond) }))).rejects.toThrow(
      "Unique constraint",
    );
  });

  test("other families, schools and people signed out see none of it", async () => {
    await as(leo, (tx) => tx.residenceException.create({ data: day(mina, hilltop) }));
    await as(leo, (tx) => tx.handover.create({ data: { childId: mina, weekStart: new Date("2027-01-11") } }));
    for (const person of [stranger, ruth])
      expect(
        await as(person, async (tx) => [
          await tx.residencePattern.count(),
          await tx.residenceException.count(),
          await tx.boxReturn.count(),
          await tx.handover.count(),
        ]),
      ).toEqual([0, 0, 0, 0]);
    expect(await as(leo, (tx) => tx.residencePattern.findMany({ select: { childId: true } }))).toEqual([
      { childId: mina },
    ]);
  });
});

describe("functions that reach into both homes", () => {
  const move = (person: string, child = mina) =>
    as(
      person,
      (tx) => tx.$queryRaw`select day::text, standing, closed from app_move_boxes(${child}::uuid, date '2027-01-01')`,
    );
  const giveUp = (person: string, home: string, child = mina) =>
    as(person, (tx) => tx.$queryRaw`select app_give_up_home(${child}::uuid, ${home}::uuid, date '2027-01-01')`);

  test("answer to nobody who is not a carer of the child, and to an observer neither", async () => {
    for (const person of [stranger, ruth, observer])
      await expect(move(person)).rejects.toThrow("not a child of this person");
    for (const [person, home] of [
      [stranger, theirHome],
      [stranger, millpond],
      [leo, millpond],
      [tom, millpond],
      [observer, millpond],
    ] as const)
      await expect(giveUp(person, home)).rejects.toThrow("not a home of this child");
  });

  test("move no box where the child wakes as it was planned, and only those where not", async () => {
    const planned = await as(ana, async (tx) => {
      const week = await tx.week.create({ data: { householdId: millpond, weekStart: new Date("2027-01-11") } });
      const { id } = await tx.weekPlan.create({
        data: {
          weekId: week.id, householdId: millpond, number: 1, state: "DRAFT", seed: 1n, steps: 1, problemHash: "-",
          catalogueVersion: "-", wishes: {}, cautions: [], readyUses: [],
        },
      }); // prettier-ignore
      // A Monday, which is Millpond's, and a Wednesday, which is Hilltop's.
      for (const date of ["2027-01-11", "2027-01-13"])
        await tx.lunchBox.create({ data: { weekPlanId: id, childId: mina, date: new Date(date), current: true } });
      return week;
    });
    expect(await move(leo)).toEqual([{ day: "2027-01-13", standing: "PLANNED", closed: false }]);
    expect(await move(leo)).toEqual([]);
    const boxes = await database.owner<{ date: string; current: boolean }[]>`
      select date::text, current from lunch_box where child_id = ${mina} order by date`;
    expect([...boxes]).toEqual([
      { date: "2027-01-11", current: true },
      { date: "2027-01-13", current: false },
    ]);
    const [week] = await database.owner`select revision from week where id = ${planned.id}`;
    expect(week).toEqual({ revision: planned.revision + 1 });
  });

  test("a box is eaten on the word of either home, and of nobody else", async () => {
    const [box] = await database.owner<{ id: string }[]>`select id from lunch_box where child_id = ${mina} and current`;
    const eaten = (person: string) =>
      as(person, (tx) => tx.$queryRaw<{ eaten: boolean }[]>`select app_box_eaten(${box!.id}::uuid) as eaten`);
    for (const person of [stranger, ruth, observer]) expect(await eaten(person)).toEqual([{ eaten: false }]);
    expect(await eaten(leo)).toEqual([{ eaten: true }]);
    const [row] = await database.owner`select state, current from lunch_box where id = ${box!.id}`;
    expect(row).toEqual({ state: "EATEN", current: true });
    // Still no home changes the other's box otherwise.
    expect(await as(leo, (tx) => tx.lunchBox.updateMany({ where: { id: box!.id }, data: { current: false } }))).toEqual(
      { count: 0 },
    );
  });
});

describe("what both homes write", () => {
  const returned = (childId: string) => ({
    childId, date: new Date("2027-01-11"), breakKey: "lunch", slot: "MAIN", place: 0, dishKey: "dal-and-rice", cameBack: "SOME",
  }); // prettier-ignore

  test("what came back: by carers of either home, never by observers or for another family's child", async () => {
    await as(leo, (tx) => tx.boxReturn.create({ data: returned(mina) }));
    expect(await as(ana, (tx) => tx.boxReturn.updateMany({ data: { cameBack: "ALL" } }))).toEqual({ count: 1 });
    await refused(as(observer, (tx) => tx.boxReturn.create({ data: returned(pia) })));
    await refused(as(leo, (tx) => tx.boxReturn.create({ data: returned(pia) })));
    await refused(as(stranger, (tx) => tx.boxReturn.create({ data: returned(mina) })));
    expect(await as(observer, (tx) => tx.boxReturn.updateMany({ data: { cameBack: "NONE" } }))).toEqual({ count: 0 });
    expect(await as(observer, (tx) => tx.boxReturn.count())).toBe(1);
  });

  test("the handover: for a Monday, with things in a home of the child only", async () => {
    const note = { childId: mina, weekStart: new Date("2027-01-11"), boxPlace: "HOME", boxHomeId: hilltop };
    await as(ana, (tx) => tx.handover.create({ data: note }));
    expect(await as(leo, (tx) => tx.handover.updateMany({ data: { note: "Soft things.", revision: 2 } }))).toEqual({
      count: 1,
    });
    await refused(as(leo, (tx) => tx.handover.updateMany({ data: { boxHomeId: theirHome } })));
    await refused(as(observer, (tx) => tx.handover.create({ data: { ...note, weekStart: new Date("2027-01-18") } })));
    await refused(
      as(stranger, (tx) => tx.handover.create({ data: { childId: mina, weekStart: new Date("2027-01-18") } })),
    );
    await expect(
      as(ana, (tx) => tx.handover.create({ data: { childId: mina, weekStart: new Date("2027-01-19") } })),
    ).rejects.toThrow("handover_ranges");
  });
});

test("the database has a child wake where the program does, whatever was agreed", async () => {
  const person = await database.newPerson("Both");
  const [one, two] = [await database.newHousehold(person), await database.newHousehold(person)];
  const child = await database.newChild(person, one);
  await database.addHome(child, two);
  const home = fc.constantFrom(one, two, theirHome);
  const date = fc.integer({ min: 0, max: 60 }).map((days) => addDays("2028-01-20", days));
  const state = fc.constantFrom("ACCEPTED", "ACCEPTED", "ACCEPTED", "DECLINED", "WITHDRAWN");
  const patterns = fc.array(
    fc.record({
      starts: date,
      lasts: fc.option(fc.nat(30)),
      cycle: fc.array(home, { minLength: 1, maxLength: 14 }),
      state,
    }),
    { maxLength: 4 },
  );
  const exceptions = fc.array(fc.record({ date, householdId: home, state }), { maxLength: 6 });
  await fc.assert(
    fc.asyncProperty(patterns, exceptions, async (agreed, apart) => {
      const { owner } = database;
      await owner`delete from residence_pattern where child_id = ${child}`;
      await owner`delete from residence_exception where child_id = ${child}`;
      for (const [at, { starts, lasts, cycle, state: said }] of agreed.entries())
        await owner`insert into residence_pattern (child_id, kind, starts, ends, cycle, state, answered_at)
          values (${child}, 'OWN_CYCLE', ${starts}, ${lasts === null ? null : addDays(starts, lasts)}, ${cycle}, ${said}, ${new Date(Date.UTC(2027, 0, 1, at))})`;
      for (const [at, { date: on, householdId, state: said }] of apart.entries())
        await owner`insert into residence_exception (change_id, child_id, date, household_id, state, answered_at)
          values (${randomUUID()}, ${child}, ${on}, ${householdId}, ${said}, ${new Date(Date.UTC(2027, 0, 1, at))})`;
      const days = daysFrom("2028-01-15", "2028-04-05");
      const [read, there] = await database.db.readAs(person, async (tx) => [
        await readResidence(tx, child, days[0]!, days.at(-1)!),
        await tx<
          { home: string }[]
        >`select app_wakes_in(${child}, d) as home from unnest(${days}::date[]) d order by d`,
      ]);
      expect(there.map((row) => row.home)).toEqual(days.map((on) => wakesIn(read!, on)!.householdId));
    }),
    { numRuns: 40 },
  );
});
