import { wakesHere } from "../../src/app/assemble-brief.js";
import { readPlanningFacts } from "../../src/database/planning.js";
import { newKey } from "../support/app.js";
import { localOf, useServedApp, type Household } from "../support/served-app.js";

const served = useServedApp();
const INVITATION = "invitation { id kind state role child { name } invitedBy { displayName } createdAt expiresAt }";
const FAILURES = `__typename ... on UserError { message } ... on InvalidInput { issues { field problem fix } } ... on KeyReused { usedFor }`;
const INVITE = `mutation M($input: InviteCarerInput!) { inviteCarer(input: $input) { ${FAILURES} ... on InvitationPayload { token ${INVITATION} } } }`;
const INVITE_HOME = `mutation M($input: InviteHomeInput!) { inviteHome(input: $input) { ${FAILURES} ... on InvitationPayload { token ${INVITATION} } } }`;
const WITHDRAW = `mutation M($input: WithdrawInvitationInput!) { withdrawInvitation(input: $input) { ${FAILURES}
  ... on InvitationClosed { state } ... on WithdrawInvitationPayload { ${INVITATION} } } }`;
const ACCEPT = `mutation M($input: AcceptInvitationInput!) { acceptInvitation(input: $input) { ${FAILURES} ... on InvitationClosed { state }
  ... on AlreadyCarer { role } ... on HouseholdPayload { household { id myRole carers { person { displayName } role } invitations { id } } } } }`;
const ACCEPT_HOME = `mutation M($input: AcceptHomeInvitationInput!) { acceptHomeInvitation(input: $input) { ${FAILURES} ... on InvitationClosed { state }
  ... on NotPermitted { neededRole } ... on AcceptHomeInvitationPayload { child { id name allergies { allergen } } household { id revision children { id } } } } }`;
const OFFER = `query Offer($token: String!) { invitation(token: $token) { kind state expiresAt householdName inviterName role childFirstName } }`;
const OPEN = "query Open($id: ID!) { household(id: $id) { invitations { id kind state } } }";

const send = async (person: string, document: string, input: Record<string, unknown>) =>
  (await served.send(person, document, input)) as any;
const invite = async (home: Household, input: Record<string, unknown> = {}) =>
  send(home.coordinator, INVITE, { householdId: home.id, role: "COOK", ...input });
const inviteHome = async (home: Household, input: Record<string, unknown> = {}) =>
  send(home.coordinator, INVITE_HOME, { householdId: home.id, childId: home.children[0], ...input });
const offer = async (person: string, token: string) =>
  (await served.ask<{ invitation: any }>(person, OFFER, { token })).invitation;
const expire = (id: string) =>
  served.inProcess.database.owner`update invitation set created_at = created_at - interval '8 days',
    expires_at = expires_at - interval '8 days' where id = ${localOf(id)}`;
const aHome = () => served.household().child({ name: "Mina Lark" }, null).found();
const anotherHome = () => served.household().found();
const rename = (home: Household, name: string) =>
  served.inProcess.database.owner`update household set name = ${name} where id = ${localOf(home.id)}`;

/**
 * Lets nobody write to a table until all of these requests stand before it, or before one another: then they are as much at once as
 * requests can be.
 */
async function atOnce(table: "membership" | "residence", requests: readonly (() => Promise<any>)[]): Promise<any[]> {
  const { owner } = served.inProcess.database;
  let answers: Promise<any>[] = [];
  await owner.begin(async (tx) => {
    await tx`lock table ${tx(table)} in share mode`;
    answers = requests.map((request) => request());
    for (;;) {
      const [row] = await owner<{ waiting: number }[]>`
        select count(*)::int as waiting from pg_stat_activity where datname = current_database() and wait_event_type = 'Lock'`;
      if (row!.waiting >= requests.length) break;
      await new Promise((resolve) => setTimeout(resolve, 10));
    }
  });
  return Promise.all(answers);
}

describe("a link for a carer", () => {
  it("makes whoever opens it a carer in the role it names, once", async () => {
    const home = await aHome();
    await rename(home, "Lark kitchen");
    const made = await invite(home);
    expect(made).toMatchObject({
      __typename: "InvitationPayload",
      invitation: {
        kind: "CARER",
        state: "OPEN",
        role: "COOK",
        child: null,
        invitedBy: { displayName: home.coordinator },
      },
    });
    // 256 random bits in base64url (RFC 4648, section 5) are 43 characters without padding.
    expect(made.token).toMatch(/^[A-Za-z0-9_-]{43}$/);
    const span = Date.parse(made.invitation.expiresAt) - Date.parse(made.invitation.createdAt);
    expect(Math.round(span / 3_600_000)).toBe(7 * 24);

    const guest = served.newcomer();
    expect(await offer(guest, made.token)).toMatchObject({
      kind: "CARER",
      state: "OPEN",
      householdName: "Lark kitchen",
      inviterName: home.coordinator,
      role: "COOK",
      childFirstName: null,
    });
    const joined = await send(guest, ACCEPT, { token: made.token });
    expect(joined.household).toMatchObject({ id: home.id, myRole: "COOK", invitations: null });
    expect(joined.household.carers.map(({ role }: any) => role)).toEqual(["COORDINATOR", "COOK"]);
    expect(await served.ask(home.coordinator, OPEN, { id: home.id })).toEqual({ household: { invitations: [] } });

    const late = served.newcomer();
    expect(await send(late, ACCEPT, { token: made.token })).toMatchObject({
      __typename: "InvitationClosed",
      state: "USED",
    });
    // A used link tells no names any more.
    expect(await offer(late, made.token)).toMatchObject({
      state: "USED",
      householdName: null,
      inviterName: null,
      childFirstName: null,
    });
  });

  it("is sent again by the same key without its token: that was told once", async () => {
    const home = await aHome();
    const input = { idempotencyKey: newKey(), householdId: home.id, role: "HELPER" };
    const answers = await Promise.all([1, 2, 3].map(() => send(home.coordinator, INVITE, input)));
    expect(new Set(answers.map(({ invitation }) => invitation.id)).size).toBe(1);
    expect(answers.filter(({ token }) => token !== null)).toHaveLength(1);
    expect((await send(home.coordinator, INVITE, input)).token).toBeNull();
  });

  it("is kept as a digest only: no row of the database holds the token", async () => {
    const home = await aHome();
    const { token } = await invite(home);
    await send(served.newcomer(), ACCEPT, { token });
    const { owner } = served.inProcess.database;
    const tables = await owner<{ name: string }[]>`
      select c.relname as name from pg_class c where c.relnamespace = 'public'::regnamespace and c.relkind = 'r'`;
    for (const { name } of tables) {
      const [row] = await owner<{ n: number }[]>`
        select count(*)::int as n from ${owner(name)} t where strpos(t::text, ${token}) > 0`;
      expect([name, row!.n]).toEqual([name, 0]);
    }
    const [{ n }] = (await owner<{ n: number }[]>`select count(*)::int as n from invitation
      where token_digest = encode(sha256(${token}::bytea), 'hex')`) as unknown as [{ n: number }];
    expect(n).toBe(1);
  });

  it("that has expired or was taken back works for nobody, and says so", async () => {
    const home = await aHome();
    const [expired, withdrawn] = [await invite(home), await invite(home)];
    await expire(expired.invitation.id);
    const done = await send(home.coordinator, WITHDRAW, { invitationId: withdrawn.invitation.id });
    expect(done).toMatchObject({ __typename: "WithdrawInvitationPayload", invitation: { state: "WITHDRAWN" } });
    const guest = served.newcomer();
    await served.ask(guest, "{ me { person { id } } }");
    const before = await served.everyRow();
    expect(await send(guest, ACCEPT, { token: expired.token })).toMatchObject({ state: "EXPIRED" });
    expect(await send(guest, ACCEPT, { token: withdrawn.token })).toMatchObject({ state: "WITHDRAWN" });
    for (const { token } of [expired, withdrawn]) expect((await offer(guest, token)).householdName).toBeNull();
    for (const { invitation } of [expired, withdrawn])
      expect((await send(home.coordinator, WITHDRAW, { invitationId: invitation.id })).__typename).toBe(
        "InvitationClosed",
      );
    expect(await served.everyRow()).toBe(before);
  });

  it("that is none and one that cannot be read answer alike, and tell of no household", async () => {
    const guest = served.newcomer();
    const home = await aHome();
    const { token } = await invite(home);
    await served.ask(guest, "{ me { person { id } } }");
    const before = await served.everyRow();
    const said = new Set<string>();
    const flipped = `${token.startsWith("A") ? "B" : "A"}${token.slice(1)}`;
    for (const none of [
      "x".repeat(43),
      "",
      "x",
      `${token}=`,
      ` ${token}`,
      token.slice(0, 42),
      flipped,
      "' or 1=1 --",
      "\u0000".repeat(43),
    ]) {
      const refused = await send(guest, ACCEPT, { token: none });
      expect(refused.__typename).toBe("InvitationNotFound");
      said.add(refused.message);
      expect(await offer(guest, none)).toBeNull();
    }
    expect(said.size).toBe(1);
    expect(await served.everyRow()).toBe(before);
  });

  it("is not used up by somebody who is a carer already", async () => {
    const home = await served.household().carer("HELPER").found();
    const { token } = await invite(home, { role: "COORDINATOR" });
    expect(await send(home.carers.HELPER!, ACCEPT, { token })).toMatchObject({
      __typename: "AlreadyCarer",
      role: "HELPER",
    });
    expect(await send(home.coordinator, ACCEPT, { token })).toMatchObject({
      __typename: "AlreadyCarer",
      role: "COORDINATOR",
    });
    expect((await send(served.newcomer(), ACCEPT, { token })).household.myRole).toBe("COORDINATOR");
  });

  it("opened by many at once lets exactly one in", async () => {
    const home = await aHome();
    const { token } = await invite(home);
    const guests = Array.from({ length: 6 }, () => served.newcomer());
    // People are known from the first request they send.
    for (const guest of guests) await offer(guest, token);
    const answers = await atOnce(
      "membership",
      guests.map((guest) => () => send(guest, ACCEPT, { token })),
    );
    expect(answers.filter(({ __typename }) => __typename === "HouseholdPayload")).toHaveLength(1);
    expect(answers.filter(({ state }) => state === "USED")).toHaveLength(5);
    const { node } = {
      node: await home.ask<any>(
        "query C($id: ID!) { node(id: $id) { ... on Household { carers { role } } } }",
        home.id,
      ),
    };
    expect(node.carers).toHaveLength(2);
  });

  it("and another, opened by one person at once, make them a carer once and leave the other link good", async () => {
    const home = await aHome();
    const links = [await invite(home), await invite(home)];
    const guest = served.newcomer();
    await offer(guest, links[0].token);
    const answers = await atOnce(
      "membership",
      links.map(
        ({ token }) =>
          () =>
            send(guest, ACCEPT, { token }),
      ),
    );
    expect(answers.map(({ __typename }) => __typename).sort()).toEqual(["AlreadyCarer", "HouseholdPayload"]);
    expect((await served.ask<any>(home.coordinator, OPEN, { id: home.id })).household.invitations).toHaveLength(1);
  });

  it("taken back and opened at the same moment ends one way", async () => {
    const home = await aHome();
    for (let round = 0; round < 5; round++) {
      const made = await invite(home);
      const [withdrawn, accepted] = await Promise.all([
        send(home.coordinator, WITHDRAW, { invitationId: made.invitation.id }),
        send(served.newcomer(), ACCEPT, { token: made.token }),
      ]);
      expect([
        ["WithdrawInvitationPayload", "InvitationClosed"],
        ["InvitationClosed", "HouseholdPayload"],
      ]).toContainEqual([withdrawn.__typename, accepted.__typename]);
    }
  });

  it("opened twice by the same request is answered twice, also to somebody who has left since", async () => {
    const home = await aHome();
    const { token } = await invite(home);
    const guest = served.newcomer();
    const input = { idempotencyKey: newKey(), token };
    const first = await send(guest, ACCEPT, input);
    expect(await send(guest, ACCEPT, input)).toEqual(first);
    expect(await send(guest, ACCEPT, { ...input, token: "y".repeat(43) })).toMatchObject({
      __typename: "KeyReused",
      usedFor: "acceptInvitation",
    });
    const leave = "mutation L($input: LeaveHouseholdInput!) { leaveHousehold(input: $input) { __typename } }";
    await send(guest, leave, { householdId: home.id });
    expect((await send(guest, ACCEPT, input)).__typename).toBe("HouseholdNotFound");
  });

  it("asks for a span of an hour to 30 days, and for a twenty-first open one asks to take one back", async () => {
    const home = await aHome();
    for (const expiresInHours of [0, -1, 721, 2_000_000])
      expect((await invite(home, { expiresInHours })).issues).toMatchObject([{ field: "expiresInHours" }]);
    for (const [at, expiresInHours] of [1, 720].entries()) {
      const { createdAt, expiresAt } = (await invite(home, { expiresInHours })).invitation;
      expect(Math.round((Date.parse(expiresAt) - Date.parse(createdAt)) / 3_600_000)).toBe([1, 720][at]);
    }
    for (let n = 2; n < 20; n++) expect((await invite(home)).__typename).toBe("InvitationPayload");
    const before = await served.everyRow();
    const refused = await invite(home);
    expect(refused.issues).toMatchObject([{ field: "householdId" }]);
    expect(refused.message).toContain("withdrawInvitation");
    expect(await served.everyRow()).toBe(before);
  });

  it("is listed for coordinators, and for nobody else, however they are related", async () => {
    const home = await served.household().child({}, null).carer("COOK").found();
    const made = await invite(home);
    const ids = async (person: string) =>
      (await served.ask<any>(person, OPEN, { id: home.id })).household?.invitations?.map(({ id }: any) => id);
    expect(await ids(home.coordinator)).toEqual([made.invitation.id]);
    expect(await ids(home.carers.COOK!)).toBeUndefined();
    const other = await anotherHome();
    await served.inProcess.database.addHome(localOf(home.children[0]!), localOf(other.id));
    expect(await ids(other.coordinator)).toBeUndefined();
    const stranger = await send(other.coordinator, WITHDRAW, { invitationId: made.invitation.id });
    expect(stranger.__typename).toBe("InvitationNotFound");
  });

  it("needs somebody who has signed in", async () => {
    for (const [document, variables] of [
      [ACCEPT, { input: { idempotencyKey: newKey(), token: "x".repeat(43) } }],
      [ACCEPT_HOME, { input: { idempotencyKey: newKey(), token: "x".repeat(43), householdId: "x" } }],
      [OFFER, { token: "x".repeat(43) }],
    ] as const) {
      const { errors } = await served.post(null, document, variables);
      expect(errors).toMatchObject([{ extensions: { code: "UNAUTHENTICATED" } }]);
    }
  });
});

describe("a link for a second home", () => {
  it("lets the child live in both; each home sees the child and nothing of the other's kitchen", async () => {
    const home = await served
      .household()
      .child({ name: "Mina Lark", allergies: [{ allergen: "SESAME" }] }, null)
      .found();
    const other = await anotherHome();
    const { owner } = served.inProcess.database;
    await owner`update residence set since = '2024-01-01' where household_id = ${localOf(home.id)}`;
    const made = await inviteHome(home);
    expect(made.invitation).toMatchObject({ kind: "HOME", role: null, child: { name: "Mina Lark" } });
    expect(await offer(other.coordinator, made.token)).toMatchObject({
      kind: "HOME",
      householdName: "Test kitchen",
      role: null,
      childFirstName: "Mina",
    });
    const seen = await other.revision();
    const joined = await send(other.coordinator, ACCEPT_HOME, { token: made.token, householdId: other.id });
    expect(joined).toMatchObject({
      __typename: "AcceptHomeInvitationPayload",
      child: { id: home.children[0], name: "Mina Lark", allergies: [{ allergen: "SESAME" }] },
      household: { id: other.id, revision: seen + 1, children: [{ id: home.children[0] }] },
    });
    const rows = await owner<{ home: string; since: string }[]>`
      select household_id as home, since::text from residence where child_id = ${localOf(home.children[0]!)} order by since`;
    expect(rows.map((row) => row.home).sort()).toEqual([localOf(home.id), localOf(other.id)].sort());
    // From today of the household that took the child in, by the server's clock.
    expect(rows.find((row) => row.home === localOf(other.id))!.since).toBe("2026-11-25");
    const theirs = await served.ask<any>(
      other.coordinator,
      "query T($id: ID!) { household(id: $id) { name } me { households { id } } }",
      { id: home.id },
    );
    expect(theirs).toEqual({ household: null, me: { households: [{ id: other.id }] } });
    expect(await send(other.coordinator, ACCEPT_HOME, { token: made.token, householdId: other.id })).toMatchObject({
      __typename: "LivesHereAlready",
    });
  });

  it("moves no day from the first home to the second, though the child is entered and taken in on one day", async () => {
    for (let round = 0; round < 5; round++) {
      const home = await served.household().child({}, null).found();
      const other = await anotherHome();
      const { token } = await inviteHome(home);
      await send(other.coordinator, ACCEPT_HOME, { token, householdId: other.id });
      const { db } = served.inProcess.database;
      for (const { id, coordinator } of [home, other]) {
        const reader = await db.signIn(coordinator, "-");
        const facts = await db.readAs(reader, (tx) => readPlanningFacts(tx, localOf(id), "2027-01-11", "2027-01-17"));
        const child = localOf(home.children[0]!);
        expect(wakesHere(facts, localOf(home.id), child, "2027-01-12")).toBe(true);
        expect(wakesHere(facts, localOf(other.id), child, "2027-01-12")).toBe(false);
      }
    }
  });

  it("is for coordinators of another household; the link stays good for them", async () => {
    const home = await served.household().child({}, null).carer("COOK").found();
    const other = await served.household().carer("COOK").found();
    const { token } = await inviteHome(home);
    const before = await served.everyRow();
    const accept = (person: string, householdId: string) => send(person, ACCEPT_HOME, { token, householdId });
    expect(await accept(other.carers.COOK!, other.id)).toMatchObject({
      __typename: "NotPermitted",
      neededRole: "COORDINATOR",
    });
    // Somebody else's household, its own, and one that is not there.
    expect((await accept(other.coordinator, home.id)).__typename).toBe("HouseholdNotFound");
    expect((await accept(other.coordinator, "nothing")).__typename).toBe("HouseholdNotFound");
    expect((await accept(home.coordinator, home.id)).__typename).toBe("LivesHereAlready");
    for (const none of ["x".repeat(43), ""]) {
      const refused = await send(other.coordinator, ACCEPT_HOME, { token: none, householdId: other.id });
      expect(refused.__typename).toBe("InvitationNotFound");
    }
    expect(await served.everyRow()).toBe(before);
    expect((await accept(other.coordinator, other.id)).__typename).toBe("AcceptHomeInvitationPayload");
  });

  it("opened by two households at once lets the child into one; a third home cannot join", async () => {
    const home = await served.household().child({}, null).found();
    const [one, two] = [await anotherHome(), await anotherHome()];
    const [first, second] = [await inviteHome(home), await inviteHome(home)];
    const accept = ({ coordinator, id }: Household, token: string) =>
      send(coordinator, ACCEPT_HOME, { token, householdId: id });
    const same = await atOnce("residence", [() => accept(one, first.token), () => accept(two, first.token)]);
    expect(same.map(({ __typename }) => __typename).sort()).toEqual([
      "AcceptHomeInvitationPayload",
      "InvitationClosed",
    ]);
    const loser = same[0].__typename === "InvitationClosed" ? one : two;
    expect((await accept(loser, second.token)).__typename).toBe("LivesInTwoHomes");
    expect((await inviteHome(home)).__typename).toBe("LivesInTwoHomes");
  });

  it("of two for one child, opened by two households at once, one lets the child in", async () => {
    const home = await served.household().child({}, null).found();
    const homes = [await anotherHome(), await anotherHome()];
    const links = [await inviteHome(home), await inviteHome(home)];
    const answers = await atOnce(
      "residence",
      homes.map(
        ({ coordinator, id }, at) =>
          () =>
            send(coordinator, ACCEPT_HOME, { token: links[at].token, householdId: id }),
      ),
    );
    expect(answers.map(({ __typename }) => __typename).sort()).toEqual([
      "AcceptHomeInvitationPayload",
      "LivesInTwoHomes",
    ]);
  });

  it("that has expired, was used or taken back says so, and one of the other kind names the way", async () => {
    const home = await served.household().child({}, null).found();
    const other = await anotherHome();
    const [expired, withdrawn, good, ofCarer] = [
      await inviteHome(home),
      await inviteHome(home),
      await inviteHome(home),
      await invite(home),
    ];
    await expire(expired.invitation.id);
    await send(home.coordinator, WITHDRAW, { invitationId: withdrawn.invitation.id });
    const accept = (token: string) => send(other.coordinator, ACCEPT_HOME, { token, householdId: other.id });
    expect(await accept(expired.token)).toMatchObject({ state: "EXPIRED" });
    expect(await accept(withdrawn.token)).toMatchObject({ state: "WITHDRAWN" });
    expect((await accept(ofCarer.token)).issues).toMatchObject([
      { field: "token", fix: "Send it with acceptInvitation." },
    ]);
    expect((await send(other.coordinator, ACCEPT, { token: good.token })).issues).toMatchObject([
      { field: "token", fix: "Send it with acceptHomeInvitation." },
    ]);
    expect((await accept(good.token)).__typename).toBe("AcceptHomeInvitationPayload");
  });

  it("is made for a child of the household only", async () => {
    const [home, other] = [await aHome(), await aHome()];
    for (const childId of [other.children[0], "nothing", home.id])
      expect((await inviteHome(home, { childId })).__typename).toBe("ChildNotFound");
  });
});

describe("as the server's own role in SQL", () => {
  it("digests cannot be read, and a link is made only by a coordinator in their own name", async () => {
    const home = await served.household().child({}, null).carer("COOK").found();
    await invite(home);
    const { db, owner } = served.inProcess.database;
    const [cook, chief] = [await db.signIn(home.carers.COOK!, "-"), await db.signIn(home.coordinator, "-")];
    await expect(db.readAs(chief, (tx) => tx`select token_digest from invitation`)).rejects.toThrow(
      "permission denied",
    );
    await expect(db.readAs(chief, (tx) => tx`select accepted_by_id from invitation`)).rejects.toThrow(
      "permission denied",
    );
    expect(
      await db.readAs(chief, (tx) => tx`select id from invitation where household_id = ${localOf(home.id)}`),
    ).toHaveLength(1);
    const add = (as: string, by: string, child: string | null) =>
      db.asPerson(
        as,
        (
          tx,
        ) => tx.$executeRaw`insert into invitation (household_id, kind, role, child_id, token_digest, created_by_id, expires_at)
          values (${localOf(home.id)}::uuid, ${child ? "HOME" : "CARER"}, ${child ? null : "COORDINATOR"}::role, ${child}::uuid,
            md5(random()::text) || md5(random()::text), ${by}::uuid, now() + interval '2 hours')`,
      );
    const [foreign] = await owner<
      { id: string }[]
    >`select id from child where id <> ${localOf(home.children[0]!)} limit 1`;
    await expect(add(cook, cook, null)).rejects.toThrow("row-level security");
    await expect(add(cook, chief, null)).rejects.toThrow("row-level security");
    await expect(add(chief, cook, null)).rejects.toThrow("row-level security");
    await expect(add(chief, chief, foreign!.id)).rejects.toThrow("row-level security");
    expect(await add(chief, chief, localOf(home.children[0]!))).toBe(1);
    const touched = await db.asPerson(
      cook,
      (tx) => tx.$executeRaw`update invitation set withdrawn_at = now() where household_id = ${localOf(home.id)}::uuid`,
    );
    expect(touched).toBe(0);
  });

  it("the setting that the functions use among themselves opens nothing to it", async () => {
    const home = await aHome();
    await invite(home);
    const { db } = served.inProcess.database;
    const stranger = await db.signIn(served.newcomer(), "-");
    const seen = await db.asPerson(stranger, async (tx) => {
      await tx.$executeRaw`select set_config('app.by_invitation', 'on', true)`;
      return [await tx.invitation.count(), await tx.household.count(), await tx.child.count()];
    });
    expect(seen).toEqual([0, 0, 0]);
  });

  it("a home is not joined for a household that one does not coordinate", async () => {
    const home = await served.household().carer("COOK").found();
    const { db } = served.inProcess.database;
    const cook = await db.signIn(home.carers.COOK!, "-");
    const join = db.asPerson(
      cook,
      (tx) =>
        tx.$queryRaw`select outcome from app_accept_home_invitation('x', ${localOf(home.id)}::uuid, current_date)`,
    );
    await expect(join).rejects.toThrow("not a household that this person coordinates");
  });
});
