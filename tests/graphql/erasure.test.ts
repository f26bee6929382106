/** Erasing a child, a household, a person: who may, what it takes, and that nothing is left, looked for in every column there is. */
import { gunzipSync, gzipSync } from "node:zlib";
import { newKey } from "../support/app.js";
import { localOf, useServedApp, type Household, type Said } from "../support/served-app.js";
import { DAY, TAKE } from "./documents.js";
import { documentOf, inputNow, kitchenMutations, weekMutations } from "./every-mutation.js";

const served = useServedApp();
const REFUSALS = `__typename ... on UserError { message } ... on ConfirmationNeeded { token } ... on ErasedPayload { erasedAt }
  ... on InvalidInput { issues { field } } ... on KeyReused { usedFor }`;
const ROLE = "... on NotPermitted { neededRole }";
const CHILD = `mutation E($input: EraseChildInput!) { eraseChild(input: $input) { ${REFUSALS} ${ROLE} } }`;
const WITHDRAW = `mutation W($input: WithdrawErasureInput!) { withdrawErasure(input: $input) { __typename
  ... on UserError { message } ... on WithdrawErasurePayload { child { erasureAsked { askedHere } } } } }`;
const HOUSEHOLD = `mutation E($input: EraseHouseholdInput!) { eraseHousehold(input: $input) { ${REFUSALS} ${ROLE} } }`;
const ME = `mutation E($input: EraseMeInput!) { eraseMe(input: $input) { ${REFUSALS} ... on LastAdministrator { jurisdiction } } }`;
const ASKED = "query A($id: ID!) { node(id: $id) { ... on Child { erasureAsked { askedHere } } } }";

const first = async (person: string, mutation: string, input: Record<string, unknown>) => {
  const said = (await served.send(person, mutation, input)) as Said & { token: string };
  expect(said.__typename).toBe("ConfirmationNeeded");
  return said.token;
};
const both = async (person: string, mutation: string, input: Record<string, unknown>) =>
  served.send(person, mutation, { ...input, token: await first(person, mutation, input) });
const personOf = (subject: string) => served.inProcess.database.db.signIn(subject, subject);

/** Tables with a row in which a text stands, in any column, compressed ones too. */
async function tablesWith(text: string): Promise<string[]> {
  const { owner } = served.inProcess.database;
  const tables = await owner<{ schema: string; name: string; bytes: string[] }[]>`
    select n.nspname as schema, c.relname as name, array(select a.attname::text from pg_attribute a
      where a.attrelid = c.oid and a.atttypid = 'bytea'::regtype and a.attnum > 0) as bytes
    from pg_class c join pg_namespace n on n.oid = c.relnamespace
    where n.nspname in ('public', 'noonpail_jobs') and c.relkind = 'r'
      -- The log keeps keys, which name nothing any more; what else it said is in a table of its own.
      and not (c.relname = 'change' and ${/^[0-9a-f-]{36}$/.test(text)}) order by 1, 2`;
  const found: string[] = [];
  for (const { schema, name, bytes } of tables) {
    const table = owner(`${schema}.${name}`);
    let there = (await owner`select 1 from ${table} t where t::text ilike ${`%${text}%`} limit 1`).length > 0;
    for (const column of bytes)
      for (const { packed } of await owner<{ packed: Buffer }[]>`select ${owner(column)} as packed from ${table}`)
        there ||= gunzipSync(packed).toString("utf8").includes(text);
    if (there) found.push(name);
  }
  return found;
}

/** Everything that a household's mutations write, about its first child where they are about a child. */
async function live(home: Household): Promise<void> {
  // What takes away again what the others wrote, only plans once more, or hangs on what was planned.
  const skipped = [
    "removeAllergy",
    "createChild",
    "enrolChild",
    "dropOwnRules",
    "endExemption",
    "removeOwnFood",
    "removeOwnDish",
    // About a child of two homes, which they make.
    "setBoxKit",
    "setResidencePattern",
    "proposeResidenceChange",
    "answerResidenceChange",
    "withdrawResidenceChange",
    "giveUpHome",
    // Need a day that has been, and a plan of its week.
    "reportReturned",
  ];
  const replanning = [
    "planWeek",
    "mendWeek",
    "swapItem",
    "markPacked",
    "agreeWeek",
    "reportDisruption",
    "withdrawDisruption",
  ];
  for (const mutation of [...kitchenMutations, ...weekMutations]) {
    if ([...skipped, ...replanning].includes(mutation.field)) continue;
    const said = await served.send(home.coordinator, documentOf(mutation.field), await inputNow(mutation, home));
    expect([mutation.field, said.__typename]).toEqual([mutation.field, expect.stringMatching(/Payload$/)]);
  }
}
const gzip = (value: unknown) => gzipSync(JSON.stringify(value));
const named = (name: string) => ({
  name,
  sex: "FEMALE",
  weightKg: 47,
  heightCm: 158,
  allergies: [{ allergen: "SESAME" }],
});

describe("a child with one home", () => {
  it("goes for good, from every column of every table, and the sibling's week stays", async () => {
    const home = await served
      .household()
      .child(named("Zebedee"))
      .child({ name: "Bo", dateOfBirth: "2018-02-03" }, "class-4")
      .planned(DAY)
      .found();
    await live(home);
    expect((await home.plan(DAY)).__typename).toBe("WeekPayload");
    const { database } = served.inProcess;
    const [gone, stays] = [localOf(home.children[0]!), localOf(home.children[1]!)];
    // The bound's certificate and a job name children too.
    const [{ id: plan }] = await database.owner<[{ id: string }]>`
      select id from week_plan where household_id = ${localOf(home.id)} and state <> 'REPLACED'`;
    await database.owner`insert into plan_certificate (week_plan_id, household_id, objective_points, bound_points, nodes, milliseconds, problem, certificate)
      values (${plan}, ${localOf(home.id)}, 2, 1, 1, 1, ${gzip({ child: gone })}, ${gzip({})})`;
    const before = await tablesWith(gone);
    for (const table of ["child", "box_item", "batch", "task", "week_plan", "idempotency_key", "plan_certificate"])
      expect(before).toContain(table);
    expect(await tablesWith("Zebedee")).toEqual(expect.arrayContaining(["child", "task"]));
    const siblings = (await home.week(DAY))!.plan.boxes.filter(({ child }) => child.name === "Bo");

    expect(await both(home.coordinator, CHILD, { householdId: home.id, childId: home.children[0] })).toMatchObject({
      __typename: "ErasedPayload",
    });
    expect(await tablesWith(gone)).toEqual([]);
    expect(await tablesWith("Zebedee")).toEqual([]);
    expect(
      await served.ask(home.coordinator, "query C($id: ID!) { node(id: $id) { id } }", { id: home.children[0] }),
    ).toEqual({
      node: null,
    });
    // The week is there for the one who stays, whole, and can be planned again.
    const after = (await home.week(DAY))!;
    expect(after.plan.boxes).toEqual(siblings);
    expect(
      await served.inProcess.database.owner`select 1 from batch b, jsonb_array_elements(b.feeds) f
      where b.household_id = ${localOf(home.id)} and not f -> 'childIds' ? ${stays}`,
    ).toHaveLength(0);
    expect((await home.plan(DAY)).__typename).toBe("WeekPayload");
    expect(await tablesWith(gone)).toEqual([]);
  });

  it("needs the second step of this very request, by its sender, and repeats as it was answered", async () => {
    const home = await served.household().child().child({ name: "Bo" }).found();
    const about = { householdId: home.id, childId: home.children[0] };
    const token = await first(home.coordinator, CHILD, about);
    const before = await served.everyRow();
    for (const [mutation, input] of [
      [CHILD, { ...about, childId: home.children[1], token }],
      [CHILD, { ...about, token: newKey() }],
      [CHILD, { ...about, token: "nonsense" }],
      [HOUSEHOLD, { householdId: home.id, token }],
      [ME, { token }],
    ] as const)
      expect((await served.send(home.coordinator, mutation, input)).issues).toEqual([{ field: "token" }]);
    expect(await served.everyRow()).toBe(before);
    const input = { ...about, token, idempotencyKey: newKey() };
    const together = await Promise.all([1, 2, 3].map(() => served.send(home.coordinator, CHILD, input)));
    expect(together.map(({ __typename }) => __typename)).toEqual(Array(3).fill("ErasedPayload"));
    expect(await served.send(home.coordinator, CHILD, input)).toEqual(together[0]);
    expect(await served.send(home.coordinator, CHILD, { ...input, childId: home.children[1] })).toMatchObject({
      __typename: "KeyReused",
      usedFor: "eraseChild",
    });
    expect((await served.send(home.coordinator, CHILD, about)).__typename).toBe("ChildNotFound");
  });
});

describe("a child with two homes", () => {
  let here: Household;
  let there: Household;
  beforeEach(async () => {
    here = await served.household().child(named("Zebedee")).carer("COOK").carer("HELPER").carer("OBSERVER").found();
    there = await served.household().carer("COOK").found();
    await served.inProcess.database.addHome(localOf(here.children[0]!), localOf(there.id));
  });
  const asked = async (home: Household) =>
    (
      await served.ask<{ node: { erasureAsked: readonly { askedHere: boolean }[] } }>(home.coordinator, ASKED, {
        id: here.children[0],
      })
    ).node.erasureAsked;

  it("goes when both homes' coordinators ask, in whichever order, and not before", async () => {
    const childId = here.children[0];
    const gone = localOf(childId!);
    expect((await both(here.coordinator, CHILD, { householdId: here.id, childId })).__typename).toBe("AgreementNeeded");
    // Asking twice is asking once: one home's yes does not count for both.
    expect((await both(here.coordinator, CHILD, { householdId: here.id, childId })).__typename).toBe("AgreementNeeded");
    expect(await asked(here)).toEqual([{ askedHere: true }]);
    expect(await asked(there)).toEqual([{ askedHere: false }]);
    expect(await tablesWith("Zebedee")).toContain("child");
    expect((await both(there.coordinator, CHILD, { householdId: there.id, childId })).__typename).toBe("ErasedPayload");
    expect(await tablesWith(gone)).toEqual([]);
    expect(await tablesWith("Zebedee")).toEqual([]);
  });

  it("stays when the first home takes its asking back, and when thirty days have passed", async () => {
    const childId = here.children[0];
    await both(here.coordinator, CHILD, { householdId: here.id, childId });
    // The other home cannot take it back.
    await served.send(there.coordinator, WITHDRAW, { householdId: there.id, childId });
    expect(await asked(there)).toEqual([{ askedHere: false }]);
    expect(await served.send(here.coordinator, WITHDRAW, { householdId: here.id, childId })).toMatchObject({
      __typename: "WithdrawErasurePayload",
      child: { erasureAsked: [] },
    });
    expect((await both(there.coordinator, CHILD, { householdId: there.id, childId })).__typename).toBe(
      "AgreementNeeded",
    );
    await served.inProcess.database.owner`update erasure_request set asked_at = now() - interval '31 days'`;
    expect(await asked(here)).toEqual([]);
    expect((await both(here.coordinator, CHILD, { householdId: here.id, childId })).__typename).toBe("AgreementNeeded");
    expect(await tablesWith("Zebedee")).toContain("child");
  });

  it("goes once when both homes ask at the same moment", async () => {
    const childId = here.children[0];
    const homes = [here, there];
    const tokens = await Promise.all(
      homes.map((home) => first(home.coordinator, CHILD, { householdId: home.id, childId })),
    );
    const said = await Promise.all(
      homes.map((home, at) =>
        served.send(home.coordinator, CHILD, { householdId: home.id, childId, token: tokens[at] }),
      ),
    );
    expect(said.map(({ __typename }) => __typename).sort()).toEqual(["AgreementNeeded", "ErasedPayload"]);
    expect(await tablesWith(localOf(childId!))).toEqual([]);
  });

  it("is out of reach of everybody else, over the API and in the database itself", async () => {
    const childId = here.children[0]!;
    const { db } = served.inProcess.database;
    await both(here.coordinator, CHILD, { householdId: here.id, childId });
    const stranger = await served.household().found();
    const before = await served.everyRow();
    for (const person of [stranger.coordinator, served.newcomer(), "demo:ruth"])
      expect((await served.send(person, CHILD, { householdId: there.id, childId })).__typename).toBe(
        "HouseholdNotFound",
      );
    expect((await served.send(stranger.coordinator, CHILD, { householdId: stranger.id, childId })).__typename).toBe(
      "ChildNotFound",
    );
    for (const role of ["COOK", "HELPER", "OBSERVER"] as const)
      expect(await served.send(here.carers[role]!, CHILD, { householdId: here.id, childId })).toMatchObject({
        __typename: "NotPermitted",
        neededRole: "COORDINATOR",
      });
    const people = [
      stranger.coordinator,
      "demo:ruth",
      ...(["COOK", "HELPER", "OBSERVER"] as const).map((role) => here.carers[role]!),
      there.carers.COOK!,
      // Coordinator of one home, in the other's name.
      here.coordinator,
    ];
    for (const subject of people) {
      const person = await personOf(subject);
      const [child, home] = [localOf(childId), localOf(there.id)];
      await expect(
        db.asPerson(person, (tx) => tx.$queryRaw`select app_erase_child(${child}::uuid, ${home}::uuid)`),
      ).rejects.toThrow("42501");
      await expect(
        db.asPerson(person, (tx) => tx.$queryRaw`select app_erase_household(${home}::uuid)`),
      ).rejects.toThrow("42501");
      // Neither the setting nor the parts of the work are any use to the server's role.
      for (const attempt of [
        `select app_forget_child('${child}', null)`,
        `select app_forget_household('${home}')`,
        `select app_scrub('${child}', array['${home}']::uuid[])`,
        `select app_forget_traces('${child}')`,
        `delete from child where id = '${child}'`,
        `delete from household where id = '${home}'`,
        `insert into erasure_request (child_id, household_id) values ('${child}', '${home}')`,
        "select app_erasing()",
      ])
        await expect(
          db.asPerson(person, async (tx) => {
            await tx.$executeRaw`select set_config('app.erasing', 'on', true)`;
            await tx.$executeRawUnsafe(attempt);
          }),
        ).rejects.toThrow("42501");
      expect(
        await db.asPerson(person, async (tx) => {
          await tx.$executeRaw`select set_config('app.erasing', 'on', true)`;
          return tx.erasureRequest.deleteMany({ where: { householdId: home } });
        }),
      ).toEqual({ count: 0 });
    }
    expect(await served.everyRow()).toBe(before);
  });
});

describe("a household", () => {
  it("goes with the children who live nowhere else; who has another home stays there, no less protected", async () => {
    const here = await served
      .household()
      .child(named("Zebedee"))
      .child({ ...named("Quentin"), name: "Quentin", dateOfBirth: "2014-02-03" })
      .carer("COOK")
      .planned(DAY)
      .found();
    await live(here);
    const there = await served.household().found();
    const { addHome, owner } = served.inProcess.database;
    const [shared, alone] = here.children.map(localOf) as [string, string];
    await addHome(shared, localOf(there.id));
    await owner`update membership set role = 'COORDINATOR' where person_id = ${await personOf(here.carers.COOK!)}`;
    // The other home has recorded the same, less strictly.
    await owner`insert into allergy (child_id, allergen, avoid, recorded_by_household_id) values (${shared}, 'SESAME', 'INGREDIENTS', ${localOf(there.id)})`;
    const strict = async () => [
      ...(await owner`select distinct allergen, food_kind, avoid from allergy a where child_id = ${shared}
        and avoid = (select max(b.avoid::text) from allergy b where b.child_id = a.child_id
          and b.allergen is not distinct from a.allergen and b.food_kind is not distinct from a.food_kind)::avoid order by 1, 2`),
    ];
    const [{ notes }] = await owner<
      [{ notes: number }]
    >`select count(*)::int as notes from exemption where child_id = ${shared}`;
    expect(notes).toBeGreaterThan(0);
    const avoided = await strict();
    expect(avoided.length).toBeGreaterThan(1);

    expect((await both(here.coordinator, HOUSEHOLD, { householdId: here.id })).__typename).toBe("ErasedPayload");
    expect(await tablesWith(localOf(here.id))).toEqual([]);
    expect(await tablesWith(alone)).toEqual([]);
    expect(await tablesWith("Quentin")).toEqual([]);
    // The carers are people still, of no household.
    expect(await served.ask(here.carers.COOK!, "{ me { households { id } } }")).toEqual({ me: { households: [] } });
    expect(await strict()).toEqual(avoided);
    expect(
      await owner`select 1 from allergy where child_id = ${shared} and recorded_by_household_id is distinct from ${localOf(there.id)}`,
    ).toHaveLength(0);
    // The clinician's note is gone, so the rule holds again.
    expect(await owner`select 1 from exemption where child_id = ${shared}`).toHaveLength(0);
    expect(
      await served.ask(there.coordinator, "query H($id: ID!) { household(id: $id) { children { name } } }", {
        id: there.id,
      }),
    ).toEqual({ household: { children: [{ name: "Zebedee" }] } });
    expect((await served.send(here.coordinator, HOUSEHOLD, { householdId: here.id })).__typename).toBe(
      "HouseholdNotFound",
    );
  });
});

describe("a person", () => {
  it("goes with name, sign-in and what names them; what they did stays, done by nobody", async () => {
    const home = await served.household().child().carer("COOK").planned(DAY).found();
    const cook = home.carers.COOK!;
    const { owner } = served.inProcess.database;
    const { plan, revision } = (await home.week(DAY))!;
    const task = plan.tasks.find(({ state }) => state === "OPEN")!;
    await served.send(cook, TAKE, { taskId: task.id, seenRevision: revision });
    const label = { food: "raisins", contains: [], mayContain: [], readOn: "2026-11-20" };
    expect((await home.change(documentOf("recordLabel"), label, cook)).__typename).toBe("KitchenPayload");
    const renew = "mutation R($input: RenewFeedAddressInput!) { renewFeedAddress(input: $input) { __typename } }";
    await served.send(cook, renew, { householdId: home.id });
    const person = await personOf(cook);
    const before = await tablesWith(person);
    expect(before).toEqual(
      expect.arrayContaining(["person", "membership", "task", "label_check", "feed_address", "idempotency_key"]),
    );

    expect((await both(cook, ME, {})).__typename).toBe("ErasedPayload");
    expect(await tablesWith(person)).toEqual([]);
    expect(await tablesWith(cook)).toEqual([]);
    // What they held is open again.
    expect((await home.week(DAY))!.plan.tasks.find(({ id }) => id === task.id)).toMatchObject({
      state: "OPEN",
      takenBy: null,
    });
    expect(await owner`select 1 from label_check where household_id = ${localOf(home.id)}`).toHaveLength(1);
    // The same sign-in is somebody new, who belongs to nothing, on a server that knew the old one.
    expect(await served.ask(cook, "{ me { households { id } } }")).toEqual({ me: { households: [] } });
  });

  it("does not leave a household without a coordinator, or without anybody unless told to", async () => {
    const shared = await served.household().carer("COOK").found();
    const before = await served.everyRow();
    const token = await first(shared.coordinator, ME, {});
    const withHouseholds = await first(shared.coordinator, ME, { withHouseholds: true });
    expect((await served.send(shared.coordinator, ME, { token })).__typename).toBe("LastCoordinator");
    // Others belong to it: it is not the coordinator's alone to take along.
    const along = { withHouseholds: true, token: withHouseholds };
    expect((await served.send(shared.coordinator, ME, along)).__typename).toBe("LastCoordinator");
    expect((await served.everyRow()).split("\n").filter((row) => !before.includes(row))).toEqual([
      expect.stringMatching(/^confirmation /),
      expect.stringMatching(/^idempotency_key /),
    ]);

    const own = await served.household().child(named("Wilhelmina")).found();
    expect((await both(own.coordinator, ME, {})).__typename).toBe("HouseholdsLeft");
    // What was agreed to is what is done: a yes to less is none to more.
    const less = await first(own.coordinator, ME, {});
    expect((await served.send(own.coordinator, ME, { withHouseholds: true, token: less })).issues).toEqual([
      { field: "token" },
    ]);
    const person = await personOf(own.coordinator);
    expect((await both(own.coordinator, ME, { withHouseholds: true })).__typename).toBe("ErasedPayload");
    for (const key of [person, own.coordinator, localOf(own.id), localOf(own.children[0]!), "Wilhelmina"])
      expect([key, await tablesWith(key)]).toEqual([key, []]);
  });

  it("who administers is taken out of what was done there, and is not the last of a jurisdiction", async () => {
    const { owner } = served.inProcess.database;
    const [one, two] = [served.newcomer(), served.newcomer()];
    const [first_, second] = [await personOf(one), await personOf(two)];
    await owner`insert into appointment (person_id, jurisdiction) values (${first_}, 'Erewhon')`;
    expect(await both(one, ME, {})).toMatchObject({ __typename: "LastAdministrator", jurisdiction: "Erewhon" });
    const appoint = "mutation A($input: AppointInput!) { appoint(input: $input) { __typename } }";
    expect((await served.send(one, appoint, { subject: two, jurisdiction: "Erewhon" })).__typename).toBe(
      "AppointmentsPayload",
    );
    await owner`insert into audit_entry (person_id, action, jurisdiction, details) values (${second}, 'APPOINTED', 'Erewhon', ${owner.json({ personId: first_ })})`;
    expect((await both(one, ME, {})).__typename).toBe("ErasedPayload");
    expect(await tablesWith(first_)).toEqual([]);
    const audit = await served.ask<{ jurisdictionAudit: unknown }>(
      two,
      '{ jurisdictionAudit(jurisdiction: "Erewhon") { nodes { action person { displayName } about { displayName } } } }',
    );
    expect(audit).toMatchObject({
      jurisdictionAudit: {
        nodes: [
          { action: "APPOINTED", person: { displayName: two }, about: null },
          { action: "APPOINTED", person: null, about: { displayName: two } },
        ],
      },
    });
    await expect(owner`update audit_entry set person_id = null`).rejects.toThrow("never changed");
  });

  it("of two coordinators who go at once, none leaves a household without anybody", async () => {
    const home = await served.household().carer("COOK").found();
    const { owner } = served.inProcess.database;
    await owner`update membership set role = 'COORDINATOR' where household_id = ${localOf(home.id)}`;
    const people = [home.coordinator, home.carers.COOK!];
    const tokens = await Promise.all(people.map((person) => first(person, ME, { withHouseholds: true })));
    const said = await Promise.all(
      people.map((person, at) => served.send(person, ME, { withHouseholds: true, token: tokens[at] })),
    );
    // Who comes second is alone there by then, and takes the household along, as agreed.
    expect(said.map(({ __typename }) => __typename)).toEqual(["ErasedPayload", "ErasedPayload"]);
    expect(await tablesWith(localOf(home.id))).toEqual([]);
  });

  it("without a token is asked to sign in", async () => {
    const { errors } = await served.post(null, ME, { input: { idempotencyKey: newKey() } });
    expect(errors).toMatchObject([{ extensions: { code: "UNAUTHENTICATED" } }]);
  });
});

it("what stays is numbers: how many, in which month, and no key", async () => {
  const { owner } = served.inProcess.database;
  const rows = await owner<{ kind: string; count: number }[]>`select * from erasure_count order by kind`;
  expect(rows.map(({ kind }) => kind)).toEqual(["CHILD", "HOUSEHOLD", "PERSON"]);
  for (const row of rows) expect([Object.keys(row), row.count > 0]).toEqual([["month", "kind", "count"], true]);
});
