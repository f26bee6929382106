import { leastRole, may, verbsOf, type Verb } from "../../src/app/may.js";
import { globalId } from "../../src/graphql/global-id.js";
import { createContextOpener } from "../../src/graphql/open-context.js";
import { newKey } from "../support/app.js";
import { localOf, useServedApp, type Household, type TaskSeen } from "../support/served-app.js";
import { DAY, FOUND } from "./documents.js";
import { carerMutations, documentOf, inputNow, kitchenMutations, weekMutations } from "./every-mutation.js";

const served = useServedApp();
const FAILURES = `__typename ... on UserError { message } ... on InvalidInput { issues { field problem fix } }
  ... on NotPermitted { neededRole }`;
const HOUSEHOLD = "... on HouseholdPayload { household { id myRole carers { person { id displayName } role } } }";
const ROLE = `mutation M($input: ChangeRoleInput!) { changeRole(input: $input) { ${FAILURES} ${HOUSEHOLD} } }`;
const REMOVE = `mutation M($input: RemoveCarerInput!) { removeCarer(input: $input) { ${FAILURES} ${HOUSEHOLD} } }`;
const HAND_OVER = `mutation M($input: HandOverCoordinationInput!) { handOverCoordination(input: $input) { ${FAILURES} ${HOUSEHOLD} } }`;
const LEAVE = `mutation M($input: LeaveHouseholdInput!) { leaveHousehold(input: $input) { __typename ... on UserError { message }
  ... on LeaveHouseholdPayload { me { households { id } } } } }`;
const RENAME = `mutation M($input: RenameMeInput!) { renameMe(input: $input) { __typename ... on UserError { message }
  ... on InvalidInput { issues { field fix } } ... on RenameMePayload { person { id displayName } } } }`;
const TAKE = documentOf("takeTask");
const FINISH = documentOf("finishTask");
const INVITE = `mutation M($input: InviteCarerInput!) { inviteCarer(input: $input) { __typename ... on InvitationPayload { token invitation { id } } } }`;
const ACCEPT = `mutation M($input: AcceptInvitationInput!) { acceptInvitation(input: $input) { __typename ... on InvitationClosed { state } } }`;

const send = async (person: string, document: string, input: Record<string, unknown>) =>
  (await served.send(person, document, input)) as any;
const personIds = new Map<string, string>();
async function idOf(person: string): Promise<string> {
  const known = personIds.get(person);
  if (known !== undefined) return known;
  const { me } = await served.ask<{ me: { person: { id: string } } }>(person, "{ me { person { id } } }");
  personIds.set(person, me.person.id);
  return me.person.id;
}
const remove = async (home: Household, by: string, whom: string) =>
  send(by, REMOVE, { householdId: home.id, personId: await idOf(whom) });
const give = async (home: Household, by: string, whom: string, role: string) =>
  send(by, ROLE, { householdId: home.id, personId: await idOf(whom), role });
const leave = (home: Household, person: string) => send(person, LEAVE, { householdId: home.id });
const rolesOf = async (home: Household): Promise<Record<string, string>> => {
  const rows = await served.inProcess.database.owner<{ subject: string; role: string }[]>`
    select p.subject, m.role::text from membership m join person p on p.id = m.person_id where m.household_id = ${localOf(home.id)}`;
  return Object.fromEntries(rows.map(({ subject, role }) => [subject, role]));
};
/** A second coordinator, beside the one who founded it. */
async function second(home: Household): Promise<string> {
  const first = home.coordinator;
  await home.join("COORDINATOR");
  const other = home.carers.COORDINATOR!;
  expect(other).not.toBe(first);
  return other;
}
const openTasks = async (home: Household): Promise<TaskSeen[]> =>
  (await home.week(DAY))!.plan.tasks.filter(({ state, kind }) => state === "OPEN" && kind !== "PACK");
const taskNow = async (home: Household, id: string) =>
  (await home.week(DAY))!.plan.tasks.find((task) => task.id === id)!;
const take = async (home: Household, person: string, taskId: string, document = TAKE) =>
  send(person, document, { taskId, seenRevision: (await home.week(DAY))!.revision });

describe("roles", () => {
  it("are given by a coordinator, and reach at once what the table says", async () => {
    const home = await served.household().carer("HELPER").found();
    const helper = home.carers.HELPER!;
    const stock = async () =>
      (await home.change(documentOf("setStock"), { entries: [{ food: "apple-raw", grams: 5 }] }, helper)).__typename;
    expect(await stock()).toBe("NotPermitted");
    const changed = await give(home, home.coordinator, helper, "COOK");
    expect(changed.household.carers.map(({ role }: any) => role)).toEqual(["COORDINATOR", "COOK"]);
    expect(await stock()).toBe("KitchenPayload");
    await give(home, home.coordinator, helper, "OBSERVER");
    expect(await stock()).toBe("NotPermitted");
  });

  it("name no carer who is none, alike for strangers and for IDs of nothing", async () => {
    const home = await served.household().found();
    const stranger = served.newcomer();
    const said = new Set<string>();
    for (const personId of [await idOf(stranger), globalId("Person", localOf(home.id)), home.id, ""])
      for (const [document, input] of [
        [ROLE, { role: "COOK" }],
        [REMOVE, {}],
        [HAND_OVER, { role: "COOK" }],
      ] as const) {
        const refused = await send(home.coordinator, document, { householdId: home.id, personId, ...input });
        expect(refused.__typename).toBe("CarerNotFound");
        said.add(refused.message);
      }
    expect(said.size).toBe(1);
  });

  it("the role table: each role has the verbs of the one below, and what each may do is what is shown", async () => {
    const order = ["OBSERVER", "HELPER", "COOK", "COORDINATOR"] as const;
    for (const [at, role] of order.entries()) {
      const below = at === 0 ? [] : verbsOf(order[at - 1]!);
      expect(verbsOf(role)).toEqual(expect.arrayContaining([...below]));
      expect(verbsOf(role)).toEqual(Object.keys(leastRole).filter((verb) => may(role, verb as Verb)));
    }
    // Who joins, who goes and who may do what is a coordinator's matter alone; whoever is there may go.
    for (const verb of ["inviteCarers", "changeCarers", "inviteHomes", "joinChildren", "seeInvitations"] as const)
      expect(leastRole[verb]).toBe("COORDINATOR");
    expect(verbsOf("OBSERVER")).toEqual(["readHousehold", "leaveHousehold"]);
    const home = await served.household().carer("OBSERVER").carer("HELPER").carer("COOK").found();
    for (const role of order) {
      const { household } = await served.ask<any>(
        home.carers[role]!,
        "query May($id: ID!) { household(id: $id) { mayDo myRole } }",
        { id: home.id },
      );
      expect(household).toEqual({ mayDo: verbsOf(role), myRole: role });
    }
  });
});

describe("a carer who goes", () => {
  it("holds no task any more: what was taken is open, what was done stays done", async () => {
    const home = await served.household().child().carer("HELPER").planned(DAY).found();
    const helper = home.carers.HELPER!;
    const [taken, done] = await openTasks(home);
    await take(home, helper, taken!.id);
    await take(home, helper, done!.id, FINISH);
    expect((await taskNow(home, taken!.id)).state).toBe("TAKEN");
    const { revision } = (await home.week(DAY))!;
    expect((await remove(home, home.coordinator, helper)).household.carers).toHaveLength(1);
    expect(await taskNow(home, taken!.id)).toMatchObject({ state: "OPEN", takenBy: null });
    expect(await taskNow(home, done!.id)).toMatchObject({ state: "DONE" });
    // Whoever looks at the week hears of it.
    expect((await home.week(DAY))!.revision).toBe(revision + 1);
    expect((await take(home, home.coordinator, taken!.id)).__typename).toBe("TaskPayload");
  });

  it("by themselves, and one who only observes from now on, hold none either", async () => {
    const home = await served.household().child().carer("HELPER").carer("COOK").planned(DAY).found();
    const [one, two] = await openTasks(home);
    await take(home, home.carers.HELPER!, one!.id);
    await take(home, home.carers.COOK!, two!.id);
    // A cook who helps from now on still works on tasks.
    await give(home, home.coordinator, home.carers.COOK!, "HELPER");
    expect((await taskNow(home, two!.id)).state).toBe("TAKEN");
    expect(await leave(home, home.carers.HELPER!)).toEqual({
      __typename: "LeaveHouseholdPayload",
      me: { households: [] },
    });
    await give(home, home.coordinator, home.carers.COOK!, "OBSERVER");
    for (const { id } of [one!, two!]) expect(await taskNow(home, id)).toMatchObject({ state: "OPEN", takenBy: null });
  });

  it("at the moment they take a task never keeps it", async () => {
    const home = await served.household().child().carer("HELPER").planned(DAY).found();
    for (let round = 0; round < 6; round++) {
      const [task] = await openTasks(home);
      const helper = home.carers.HELPER!;
      const [took, went] = await Promise.all([
        take(home, helper, task!.id),
        round % 2 === 0 ? remove(home, home.coordinator, helper) : leave(home, helper),
      ]);
      expect(["TaskPayload", "NothingThere"]).toContain(took.__typename);
      expect(went.__typename).toMatch(/Payload$/);
      expect(await taskNow(home, task!.id)).toMatchObject({ state: "OPEN", takenBy: null });
      await home.join("HELPER");
    }
  });

  it("reads nothing from that moment on, and hears nothing in what they listen to", async () => {
    const home = await served.household().child().carer("HELPER").planned(DAY).found();
    const helper = home.carers.HELPER!;
    const listen = (person: string) =>
      served.subscribe(person, "subscription S($id: ID!) { weekChanged(householdId: $id) { revision } }", {
        id: home.id,
      });
    const [theirs, ours] = [await listen(helper), await listen(home.coordinator)];
    const [one, two] = await openTasks(home);
    await take(home, helper, one!.id);
    await remove(home, home.coordinator, helper);
    await theirs.ended;
    await take(home, home.coordinator, two!.id);
    while (ours.events.length < 3) await new Promise((resolve) => setTimeout(resolve, 20));
    expect(theirs.events).toHaveLength(1);
    const query = `query T($id: ID!, $day: LocalDate!, $child: ID!) { me { households { id } } household(id: $id) { id }
      week(householdId: $id, date: $day) { id } node(id: $child) { id } }`;
    expect(await served.ask(helper, query, { id: home.id, day: DAY, child: home.children[0] })).toEqual({
      me: { households: [] },
      household: null,
      week: null,
      node: null,
    });
    expect((await take(home, helper, two!.id)).__typename).toBe("NothingThere");
  });

  it("is answered that nothing is there when they repeat what they once did, whatever it was", async () => {
    const home = await served.household().child().planned(DAY).found();
    const other = await second(home);
    const repeats: (() => Promise<any>)[] = [];
    // The week first: a child without a school, added among the others, would stop it.
    for (const mutation of [...weekMutations, ...kitchenMutations, ...carerMutations]) {
      // What takes the sender's own rights away is asked elsewhere.
      if (mutation.field === "handOverCoordination") continue;
      const input = { ...(await inputNow(mutation, home)), idempotencyKey: newKey() };
      const repeat = () => send(home.coordinator, documentOf(mutation.field), input);
      expect([mutation.field, (await repeat()).__typename]).toEqual([
        mutation.field,
        expect.stringMatching(/Payload$/),
      ]);
      repeats.push(async () => [mutation.field, (await repeat()).__typename]);
    }
    await remove(home, other, home.coordinator);
    const before = await served.everyRow();
    for (const repeat of repeats)
      expect(await repeat()).toEqual([expect.any(String), expect.stringMatching(/^(HouseholdNotFound|NothingThere)$/)]);
    expect(await served.everyRow()).toBe(before);
    // Every mutation there is, with a plan or two among them.
  }, 180_000);

  it("has no way back by a link they made themselves", async () => {
    const home = await served.household().found();
    const other = await second(home);
    const links: any[] = [];
    for (const person of [other, other, home.coordinator])
      links.push(await send(person, INVITE, { householdId: home.id, role: "COORDINATOR" }));
    await remove(home, home.coordinator, other);
    const accept = async (person: string, at: number) => send(person, ACCEPT, { token: links[at].token });
    expect(await accept(other, 0)).toMatchObject({ __typename: "InvitationClosed", state: "WITHDRAWN" });
    expect(await accept(served.newcomer(), 1)).toMatchObject({ state: "WITHDRAWN" });
    expect((await accept(served.newcomer(), 2)).__typename).toBe("HouseholdPayload");
  });

  it("is somebody else: oneself leaves", async () => {
    const home = await served.household().found();
    const refused = await remove(home, home.coordinator, home.coordinator);
    expect(refused.issues).toMatchObject([{ field: "personId", fix: expect.stringContaining("leaveHousehold") }]);
  });

  it("leaves once, and only where they belong", async () => {
    const home = await served.household().carer("OBSERVER").found();
    const input = { idempotencyKey: newKey(), householdId: home.id };
    const before = await rolesOf(home);
    for (const person of [served.newcomer()]) expect((await leave(home, person)).__typename).toBe("HouseholdNotFound");
    expect((await send(home.coordinator, LEAVE, { householdId: "nothing" })).__typename).toBe("HouseholdNotFound");
    expect(await rolesOf(home)).toEqual(before);
    const answers = await Promise.all([1, 2, 3].map(() => send(home.carers.OBSERVER!, LEAVE, input)));
    expect(new Set(answers.map(({ __typename }) => __typename))).toEqual(new Set(["LeaveHouseholdPayload"]));
    expect((await leave(home, home.carers.OBSERVER!)).__typename).toBe("HouseholdNotFound");
  });
});

it("who founded a household and left it is told, when the founding is repeated, that it is not theirs", async () => {
  const founder = served.newcomer();
  const input = { idempotencyKey: newKey(), name: "Lark kitchen", timeZone: "Europe/London", currency: "GBP" };
  const { household } = await send(founder, FOUND, input);
  const next = await served.inProcess.database.db.signIn(served.newcomer(), "-");
  await served.inProcess.database.addCarer(next, localOf(household.id), "COORDINATOR");
  await send(founder, LEAVE, { householdId: household.id });
  expect((await send(founder, FOUND, input)).__typename).toBe("HouseholdNotFound");
});

describe("the last coordinator", () => {
  it("cannot leave, nor take another role, and is told the way out", async () => {
    const home = await served.household().carer("COOK").found();
    const before = await rolesOf(home);
    for (const refused of [
      await leave(home, home.coordinator),
      await give(home, home.coordinator, home.coordinator, "COOK"),
    ]) {
      expect(refused.__typename).toBe("LastCoordinator");
      expect(refused.message).toContain("handOverCoordination");
    }
    expect(await rolesOf(home)).toEqual(before);
    // With a second one there, the first may go.
    await give(home, home.coordinator, home.carers.COOK!, "COORDINATOR");
    expect((await leave(home, home.coordinator)).__typename).toBe("LeaveHouseholdPayload");
    expect(await rolesOf(home)).toEqual({ [home.carers.COOK!]: "COORDINATOR" });
  });

  const ways: Record<string, (home: Household, one: string, other: string) => Promise<any>> = {
    leave: (home, one) => leave(home, one),
    "take another role": (home, one) => give(home, one, one, "OBSERVER"),
    "demote each other": (home, one, other) => give(home, one, other, "COOK"),
    "remove each other": (home, one, other) => remove(home, one, other),
  };
  it.each(Object.keys(ways))("is never lost when two coordinators %s at the same moment", async (way) => {
    for (let round = 0; round < 4; round++) {
      const home = await served.household().found();
      const pair = [home.coordinator, await second(home)] as const;
      await Promise.all(pair.map(idOf));
      const answers = await Promise.all([ways[way]!(home, pair[0], pair[1]), ways[way]!(home, pair[1], pair[0])]);
      const kinds = answers.map(({ __typename }) => __typename as string).sort();
      expect(kinds.filter((kind) => kind.endsWith("Payload"))).toHaveLength(1);
      expect(["LastCoordinator", "NotPermitted", "HouseholdNotFound"]).toContain(
        kinds.find((kind) => !kind.endsWith("Payload")),
      );
      expect(Object.values(await rolesOf(home)).filter((role) => role === "COORDINATOR")).toHaveLength(1);
    }
  });

  it("is never lost in the database either, whatever the server asks", async () => {
    const home = await served.household().carer("COOK").found();
    const { db } = served.inProcess.database;
    const [chief, cook] = [await db.signIn(home.coordinator, "-"), await db.signIn(home.carers.COOK!, "-")];
    const change = (as: string, carer: string, role: string | null) =>
      db.asPerson(
        as,
        (tx) => tx.$executeRaw`select app_change_carer(${localOf(home.id)}::uuid, ${carer}::uuid, ${role}::role)`,
      );
    await expect(change(chief, chief, null)).rejects.toThrow("the last coordinator of a household stays");
    await expect(change(chief, chief, "COOK")).rejects.toThrow("the last coordinator of a household stays");
    const stranger = await db.signIn(served.newcomer(), "-");
    for (const [as, carer, role] of [
      [cook, cook, "COORDINATOR"],
      [cook, chief, null],
      [stranger, stranger, "COORDINATOR"],
      [stranger, cook, null],
    ] as const)
      await expect(change(as, carer, role)).rejects.toThrow("not a household that this person coordinates");
    const held = await db.asPerson(
      stranger,
      (tx) => tx.$queryRaw`select * from app_hold_carers(${localOf(home.id)}::uuid)`,
    );
    expect(held).toEqual([]);
    const role = await db.asPerson(
      stranger,
      (tx) => tx.$queryRaw`select app_role_in(${localOf(home.id)}::uuid, ${chief}::uuid)::text as role`,
    );
    expect(role).toEqual([{ role: null }]);
  });
});

describe("handing coordination over", () => {
  it("is one step: the other coordinates, the sender has the role they name", async () => {
    const home = await served.household().carer("HELPER").found();
    const link = await send(home.coordinator, INVITE, { householdId: home.id, role: "COOK" });
    const input = {
      idempotencyKey: newKey(),
      householdId: home.id,
      personId: await idOf(home.carers.HELPER!),
      role: "COOK",
    };
    const answers = await Promise.all([1, 2, 3].map(() => send(home.coordinator, HAND_OVER, input)));
    expect(new Set(answers.map(({ __typename }) => __typename))).toEqual(new Set(["HouseholdPayload"]));
    expect(answers[0].household.myRole).toBe("COOK");
    expect(await rolesOf(home)).toEqual({ [home.coordinator]: "COOK", [home.carers.HELPER!]: "COORDINATOR" });
    // Links of whoever does not coordinate any more end.
    expect(await send(served.newcomer(), ACCEPT, { token: link.token })).toMatchObject({ state: "WITHDRAWN" });
    expect(await give(home, home.coordinator, home.carers.HELPER!, "COOK")).toMatchObject({
      __typename: "NotPermitted",
    });
  });

  it("to nobody, to oneself or for nothing changes nothing", async () => {
    const home = await served.household().carer("HELPER").found();
    const before = await rolesOf(home);
    const hand = async (personId: string, role: string) =>
      send(home.coordinator, HAND_OVER, { householdId: home.id, personId, role });
    expect((await hand(await idOf(home.coordinator), "COOK")).issues).toMatchObject([{ field: "personId" }]);
    expect((await hand(await idOf(home.carers.HELPER!), "COORDINATOR")).issues).toMatchObject([{ field: "role" }]);
    expect((await hand(await idOf(served.newcomer()), "COOK")).__typename).toBe("CarerNotFound");
    expect(await rolesOf(home)).toEqual(before);
  });
});

describe("a person's name", () => {
  it("is theirs to change, and what other carers see", async () => {
    const home = await served.household().carer("COOK").found();
    const cook = home.carers.COOK!;
    const input = { idempotencyKey: newKey(), displayName: "  Noor Ó Súilleabháin " };
    const renamed = await send(cook, RENAME, input);
    expect(renamed.person).toEqual({ id: await idOf(cook), displayName: "Noor Ó Súilleabháin" });
    expect(await send(cook, RENAME, input)).toEqual(renamed);
    expect((await send(cook, RENAME, { ...input, displayName: "Other" })).__typename).toBe("KeyReused");
    const { carers } = await home.ask<any>(
      "query C($id: ID!) { node(id: $id) { ... on Household { carers { person { displayName } } } } }",
      home.id,
    );
    expect(carers.map(({ person }: any) => person.displayName)).toContain("Noor Ó Súilleabháin");
    const { errors } = await served.post(null, RENAME, { input });
    expect(errors).toMatchObject([{ extensions: { code: "UNAUTHENTICATED" } }]);
  });

  it("is the token's when they are first seen, and no later token changes it", async () => {
    const { db } = served.inProcess.database;
    const open = createContextOpener(served.inProcess.app, served.inProcess.notices);
    const subject = served.newcomer();
    const first = await open({ subject, name: " Wren\u0000 Lark ", requestId: "-" });
    const again = await createContextOpener(
      served.inProcess.app,
      served.inProcess.notices,
    )({
      subject,
      name: "Another",
      requestId: "-",
    });
    expect(again.context.personId).toBe(first.context.personId);
    const personId = first.context.personId!;
    const [row] = await db.readAs(personId, (tx) => tx`select display_name as name from person where id = ${personId}`);
    expect(row).toEqual({ name: "Wren Lark" });
    // Over HTTP: the built-in issuer's tokens carry a name (RFC 9068, section 2.2.2).
    const { me } = await served.ask<any>(served.newcomer({ name: "Jay Lark" }), "{ me { person { displayName } } }");
    expect(me.person.displayName).toBe("Jay Lark");
  });

  it("has 1 to 80 characters, none of them hidden", async () => {
    const person = served.newcomer();
    await idOf(person);
    const before = await served.everyRow();
    for (const displayName of ["", "   ", "x".repeat(81), "a\u0000b", "a\nb", "\ud800", "Ana \u202egro"])
      expect((await send(person, RENAME, { displayName })).issues).toMatchObject([{ field: "displayName" }]);
    expect(await served.everyRow()).toBe(before);
  });
});
