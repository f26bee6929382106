/** Erasing while others are at work: nobody is brought back, and no child is left without a home and without an end. */
import { randomUUID } from "node:crypto";
import type { Planner } from "../../src/app/app.js";
import { planWeek } from "../../src/app/plan-week.js";
import type { Tx } from "../../src/database/database.js";
import { readDemoFiles } from "../../src/database/seed.js";
import { newKey, useApp } from "../support/app.js";

const parts = useApp();
const demo = readDemoFiles();
const idOf = (rows: readonly { key: string; id: string }[], key: string) => rows.find((row) => row.key === key)!.id;

const eraseChild = (tx: Tx, child: string, home: string) =>
  tx.$queryRaw<{ said: string }[]>`select app_erase_child(${child}::uuid, ${home}::uuid) as said`;
const eraseHousehold = (tx: Tx, home: string) => tx.$executeRaw`select app_erase_household(${home}::uuid)`;
const eraseMe = (tx: Tx) => tx.$executeRaw`select app_erase_me(true)`;

it("a week planned for the first time while a child of it is erased is not stored, and nothing of the child comes back", async () => {
  const { database, app } = parts;
  const [ana, home, theo] = [idOf(demo.people, "ana"), idOf(demo.homes, "millpond"), idOf(demo.children, "theo")];
  const planner: Planner = {
    ...app.planner,
    async plan(...asked) {
      const answer = await app.planner.plan(...asked);
      const [done] = await database.db.asPerson(ana, (tx) => eraseChild(tx, theo, home));
      expect(done!.said).toBe("ERASED");
      return answer;
    },
  };
  const input = {
    idempotencyKey: newKey(),
    householdId: home,
    date: "2027-01-25",
    seenRevision: 0,
    replanAgreed: false,
  };
  const planned = await planWeek({ ...app, planner }, ana, input);
  expect(planned.ok ? planned.value : planned.error.kind).toBe("RevisionPassed");
  for (const table of ["week_plan", "task", "batch", "shopping_line", "box_item_note", "plan_certificate"])
    expect([
      table,
      ...(await database.owner`select 1 from ${database.owner(table)} t where t::text like ${`%${theo}%`}`),
    ]).toEqual([table]);
  // Asked again it is planned for those who are there.
  const again = await planWeek(app, ana, { ...input, idempotencyKey: newKey() });
  expect(again.ok).toBe(true);
});

describe("two homes of one child that go at the same moment", () => {
  /** Both begin before either ends. */
  async function atOnce(first: [string, (tx: Tx) => Promise<unknown>], second: [string, (tx: Tx) => Promise<unknown>]) {
    let begun: () => void = () => undefined;
    const underWay = new Promise<void>((resolve) => (begun = resolve));
    const one = parts.database.db.asPerson(first[0], async (tx) => {
      await first[1](tx);
      begun();
      await tx.$executeRaw`select pg_sleep(0.4)`;
    });
    await underWay;
    const two = parts.database.db.asPerson(second[0], second[1]);
    return Promise.allSettled([one, two]);
  }
  async function family() {
    const { database } = parts;
    const [a, b] = [await database.newPerson("A"), await database.newPerson("B")];
    const [homeA, homeB] = [await database.newHousehold(a), await database.newHousehold(b)];
    const child = await database.newChild(a, homeA);
    await database.addHome(child, homeB);
    return { a, b, homeA, homeB, child };
  }
  const left = async (child: string) => {
    const [row] = await parts.database.owner<{ children: number; homes: number }[]>`
      select (select count(*)::int from child where id = ${child}) as children,
        (select count(*)::int from residence where child_id = ${child}) as homes`;
    return row!;
  };
  type Family = Awaited<ReturnType<typeof family>>;
  const giveUp = (tx: Tx, child: string, home: string) =>
    tx.$executeRaw`select app_give_up_home(${child}::uuid, ${home}::uuid, date '2027-01-01')`;

  it.each<[string, (f: Family) => [string, (tx: Tx) => Promise<unknown>][]]>([
    [
      "both households erased",
      ({ a, b, homeA, homeB }) => [
        [a, (tx) => eraseHousehold(tx, homeA)],
        [b, (tx) => eraseHousehold(tx, homeB)],
      ],
    ],
    [
      "both sole carers erased",
      ({ a, b }) => [
        [a, eraseMe],
        [b, eraseMe],
      ],
    ],
    [
      "one gives the child up, one is erased",
      ({ a, b, homeA, homeB, child }) => [
        [a, (tx) => giveUp(tx, child, homeA)],
        [b, (tx) => eraseHousehold(tx, homeB)],
      ],
    ],
  ])("leave nothing of the child: %s", async (_, of) => {
    const made = await family();
    const [first, second] = of(made);
    const outcomes = await atOnce(first!, second!);
    expect(outcomes.map(({ status }) => status)).toEqual(["fulfilled", "fulfilled"]);
    expect(await left(made.child)).toEqual({ children: 0, homes: 0 });
  });

  it("let a child stay who is just taken in by another home", async () => {
    const { database } = parts;
    const [a, b] = [await database.newPerson("A"), await database.newPerson("B")];
    const [homeA, homeB] = [await database.newHousehold(a), await database.newHousehold(b)];
    const child = await database.newChild(a, homeA);
    const digest = randomUUID().replaceAll("-", "").repeat(2);
    await database.owner`insert into invitation (household_id, kind, child_id, token_digest, created_by_id, expires_at)
      values (${homeA}, 'HOME', ${child}, ${digest}, ${a}, now() + interval '1 day')`;
    const outcomes = await atOnce(
      [b, (tx) => tx.$executeRaw`select app_accept_home_invitation(${digest}, ${homeB}::uuid, date '2027-01-01')`],
      [a, (tx) => eraseHousehold(tx, homeA)],
    );
    expect(outcomes.map(({ status }) => status)).toEqual(["fulfilled", "fulfilled"]);
    expect(await left(child)).toEqual({ children: 1, homes: 1 });
  });

  it("nobody who has just joined is lost with a household", async () => {
    const { database } = parts;
    const [a, joining] = [await database.newPerson("A"), await database.newPerson("Joining")];
    const home = await database.newHousehold(a);
    const digest = randomUUID().replaceAll("-", "").repeat(2);
    await database.owner`insert into invitation (household_id, kind, role, token_digest, created_by_id, expires_at)
      values (${home}, 'CARER', 'COORDINATOR', ${digest}, ${a}, now() + interval '1 day')`;
    await atOnce([joining, (tx) => tx.$executeRaw`select app_accept_invitation(${digest})`], [a, eraseMe]);
    const [row] = await database.owner<{ homes: number; carers: number }[]>`
      select (select count(*)::int from household where id = ${home}) as homes,
        (select count(*)::int from membership where household_id = ${home}) as carers`;
    expect(row).toEqual({ homes: 1, carers: 1 });
  });
});

it("those who stay hear that a carer was erased and that what they held is open", async () => {
  const { database } = parts;
  const [boss, gone] = [await database.newPerson("Boss"), await database.newPerson("Gone")];
  const home = await database.newHousehold(boss);
  await database.addCarer(gone, home, "HELPER");
  await database.db.asPerson(gone, eraseMe);
  const entries =
    await database.owner`select kind, verb, person_id from change where household_id = ${home} order by seq desc limit 1`;
  expect([...entries]).toEqual([{ kind: "CARER", verb: "REMOVED", person_id: null }]);
});
