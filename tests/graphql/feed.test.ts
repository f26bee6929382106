/**
 * A carer's calendar feed, read as a calendar program reads it: over HTTP, by its address, with a parser that is not ours
 * (node-ical). Section numbers are those of RFC 5545 unless another document is named.
 */
import { createHash, randomUUID } from "node:crypto";
import ical, { type VEvent } from "node-ical";
import { readFeed } from "../../src/app/feed.js";
import { nameUuid } from "../../src/app/name-uuid.js";
import { newKey } from "../support/app.js";
import { localOf, useServedApp, type Household } from "../support/served-app.js";
import { DAY, TAKE } from "./documents.js";

const served = useServedApp();
const RENEW = `mutation R($input: RenewFeedAddressInput!) { renewFeedAddress(input: $input) { __typename
  ... on FeedAddressPayload { path createdAt } ... on UserError { message } } }`;
const CLOSE = `mutation C($input: CloseFeedInput!) { closeFeed(input: $input) { __typename ... on CloseFeedPayload { wasOpen } } }`;
const FEEDS = "{ feeds { household { id } createdAt } }";

interface Renewed {
  readonly __typename: string;
  readonly path: string | null;
  readonly createdAt: string;
}
const renew = async (person: string, householdId: string, input: Record<string, unknown> = {}) =>
  (await served.send(person, RENEW, { householdId, ...input })) as unknown as Renewed;
const get = (path: string, init: RequestInit = {}) => fetch(`${served.url}${path}`, init);
const textOf = async (path: string) => (await get(path)).text();
const eventsOf = (text: string) =>
  Object.values(ical.sync.parseICS(text)).filter((part): part is VEvent => part?.type === "VEVENT");
/** Content lines, unfolded (3.1). */
const linesOf = (text: string) => text.replaceAll("\r\n ", "").split("\r\n");
const valueOf = (text: string, uid: string, name: string) => {
  const lines = linesOf(text);
  const from = lines.indexOf(`UID:${uid}`);
  return lines.slice(from, lines.indexOf("END:VEVENT", from)).find((line) => line.startsWith(`${name}:`));
};

/** Takes open tasks of the week, none of them packing unless asked for. */
async function take(home: Household, person: string, kinds: readonly string[], most = 2) {
  const { plan, revision } = (await home.week(DAY))!;
  const open = plan.tasks.filter(({ state, kind }) => state === "OPEN" && kinds.includes(kind)).slice(0, most);
  expect(open).toHaveLength(most);
  for (const { id } of open)
    expect((await served.send(person, TAKE, { taskId: id, seenRevision: revision })).__typename).toBe("TaskPayload");
  return open;
}

describe("the address", () => {
  let home: Household;
  beforeAll(async () => {
    home = await served.household().child().carer("OBSERVER").carer("HELPER").found();
  });

  it("is 256 random bits, told once and kept as a digest alone", async () => {
    const input = { idempotencyKey: newKey() };
    const first = await renew(home.coordinator, home.id, input);
    expect(first.path).toMatch(/^\/feed\/[\w-]{43}\.ics$/);
    const secret = first.path!.slice(6, -4);
    expect(Buffer.from(secret, "base64url")).toHaveLength(32);
    const again = await renew(home.coordinator, home.id, input);
    expect(again).toEqual({ ...first, path: null });
    expect((await get(first.path!)).status).toBe(200);

    const { owner } = served.inProcess.database;
    const [{ digest }] = await owner<[{ digest: string }]>`select digest from feed_address
      where household_id = ${localOf(home.id)}`;
    expect(digest).toBe(createHash("sha256").update(secret).digest("hex"));
    const tables = await owner<{ name: string }[]>`select relname as name from pg_class
      where relnamespace = 'public'::regnamespace and relkind = 'r'`;
    for (const { name } of tables)
      expect([name, ...(await owner`select 1 from ${owner(name)} t where t::text like ${`%${secret}%`}`)]).toEqual([
        name,
      ]);
    expect(await served.ask(home.coordinator, FEEDS)).toEqual({
      feeds: [{ household: { id: home.id }, createdAt: expect.any(String) as string }],
    });
    expect(await served.ask(home.carers.HELPER!, FEEDS)).toEqual({ feeds: [] });
  });

  it("that is unknown, renewed, closed or no address at all answers word for word the same", async () => {
    const old = (await renew(home.carers.HELPER!, home.id)).path!;
    const now = (await renew(home.carers.HELPER!, home.id)).path!;
    expect((await get(now)).status).toBe(200);
    const closed = (await renew(home.coordinator, home.id)).path!;
    expect(await served.send(home.coordinator, CLOSE, { householdId: home.id })).toMatchObject({ wasOpen: true });
    expect(await served.send(home.coordinator, CLOSE, { householdId: home.id })).toMatchObject({ wasOpen: false });
    const said = new Set<string>();
    for (const path of [old, closed, `/feed/${"A".repeat(43)}.ics`, "/feed/", "/feed/x.ics", now.slice(0, -4)]) {
      const answer = await get(path);
      said.add(`${answer.status} ${answer.headers.get("content-type")} ${await answer.text()}`);
    }
    expect([...said]).toEqual([expect.stringMatching(/^404 application\/json/)]);
  });

  it("dies with the membership, and with the role that takes tasks", async () => {
    const { owner } = served.inProcess.database;
    const helper = home.carers.HELPER!;
    const { path } = await renew(helper, home.id);
    const id = await served.inProcess.database.db.signIn(helper, helper);
    await owner`update membership set role = 'OBSERVER' where person_id = ${id}`;
    expect((await get(path!)).status).toBe(404);
    await owner`update membership set role = 'HELPER' where person_id = ${id}`;
    expect((await get(path!)).status).toBe(200);
    await owner`delete from membership where person_id = ${id}`;
    expect((await get(path!)).status).toBe(404);
    expect(await owner`select 1 from feed_address where person_id = ${id}`).toHaveLength(0);
    await served.inProcess.database.addCarer(id, localOf(home.id), "HELPER");
    expect((await get(path!)).status).toBe(404);
  });

  it("is nobody else's to see, make or close", async () => {
    await renew(home.coordinator, home.id);
    const stranger = served.newcomer();
    expect((await renew(stranger, home.id)).__typename).toBe("HouseholdNotFound");
    expect((await renew(home.carers.OBSERVER!, home.id)).__typename).toBe("NotPermitted");
    const { db } = served.inProcess.database;
    const other = await db.signIn(stranger, stranger);
    expect(await db.asPerson(other, (tx) => tx.feedAddress.count())).toBe(0);
    const [me, household] = [await db.signIn(home.coordinator, home.coordinator), localOf(home.id)];
    const theirs = { householdId: household, digest: "0".repeat(64), createdAt: new Date() };
    // As SQL, with the server's own rights: another's name on the row, or a household that is not one's own.
    await expect(
      db.asPerson(other, (tx) => tx.feedAddress.create({ data: { ...theirs, personId: me } })),
    ).rejects.toThrow();
    await expect(
      db.asPerson(other, (tx) => tx.feedAddress.create({ data: { ...theirs, personId: other } })),
    ).rejects.toThrow();
    expect(await db.asPerson(other, (tx) => tx.feedAddress.deleteMany({}))).toEqual({ count: 0 });
  });
});

describe("over HTTP (RFC 9110)", () => {
  let path: string;
  let home: Household;
  beforeAll(async () => {
    home = await served.household().child().planned(DAY).found();
    await take(home, home.coordinator, ["BASE", "FINISH"]);
    path = (await renew(home.coordinator, home.id)).path!;
  });

  it("is text/calendar in UTF-8 for this reader only (8.1)", async () => {
    const answer = await get(path);
    expect(answer.status).toBe(200);
    expect(answer.headers.get("content-type")).toBe("text/calendar; charset=utf-8");
    expect(answer.headers.get("cache-control")).toBe("private, no-cache");
    expect(answer.headers.get("referrer-policy")).toBe("no-referrer");
    const head = await get(path, { method: "HEAD" });
    expect([head.status, await head.text()]).toEqual([200, ""]);
    expect(head.headers.get("etag")).toBe(answer.headers.get("etag"));
    expect(head.headers.get("content-length")).toBe(String(Buffer.byteLength(await answer.text())));
    const sent = await get(path, { method: "POST" });
    expect([sent.status, sent.headers.get("allow")]).toEqual([405, "GET, HEAD"]);
  });

  it("answers 304 while nothing changed, and the new text when something did (13.1.2)", async () => {
    const etag = (await get(path)).headers.get("etag")!;
    for (const known of [etag, `W/${etag}`, `"other", ${etag}`, "*"]) {
      const same = await get(path, { headers: { "if-none-match": known } });
      expect([known, same.status, await same.text(), same.headers.get("etag")]).toEqual([known, 304, "", etag]);
    }
    expect((await get(path, { headers: { "if-none-match": '"other"' } })).status).toBe(200);
    await take(home, home.coordinator, ["FINISH"], 1);
    const changed = await get(path, { headers: { "if-none-match": etag } });
    expect(changed.status).toBe(200);
    expect(changed.headers.get("etag")).not.toBe(etag);
  });
});

describe("what it shows", () => {
  it("is the carer's own tasks at their own time, each with an alarm, and no child by name", async () => {
    const home = await served.household().child({ name: "Zebedee" }).carer("COOK").planned(DAY).found();
    await take(home, home.coordinator, ["BASE", "FINISH"], 3);
    await take(home, home.coordinator, ["PACK"], 1);
    await take(home, home.carers.COOK!, ["FINISH"], 1);
    const text = await textOf((await renew(home.coordinator, home.id)).path!);
    const mine = await served.inProcess.database.owner<
      { key: string; session: string; starts_at: string; ends_at: string; kind: string; text: string }[]
    >`select key, session, starts_at, ends_at, kind, text from task t
      join person p on p.id = t.taken_by_id where p.subject = ${home.coordinator}`;
    expect(mine).toHaveLength(4);
    const events = eventsOf(text);
    expect(events).toHaveLength(4);
    for (const task of mine) {
      // Europe/London keeps UTC in January.
      const startsAt = `${task.session.slice(-10)}T${task.starts_at}:00.000Z`;
      const summary = task.kind === "PACK" ? "Pack a box" : task.text.split(":")[0];
      const event = events.find(({ start, summary: said }) => start.toISOString() === startsAt && said === summary)!;
      expect(event).toMatchObject({ status: "CONFIRMED", sequence: 0 });
      const ends = `${task.session.slice(-10)}T${task.ends_at}:00.000Z`;
      expect(event.end!.getTime()).toBe(Math.max(Date.parse(ends), Date.parse(startsAt) + 60_000));
      if (task.kind !== "PACK") expect(event.description).toBe(task.text);
      // 3.6.6: ACTION, TRIGGER and, for DISPLAY, DESCRIPTION; a duration before the start (3.8.6.3).
      expect(event.alarms).toEqual([
        expect.objectContaining({ action: "DISPLAY", trigger: "-PT10M", description: summary }),
      ]);
      // 3.8.4.7 and RFC 7986, 5.3: globally unique, a UUID.
      expect(event.uid).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    }
    expect(text).not.toContain("Zebedee");
    expect(text).not.toContain(home.coordinator);
    expect(text).not.toContain(localOf(home.children[0]!));
  });

  it("is well formed: version, lines of 75 octets at most, escaped text, one stamp an event", async () => {
    const home = await served.household().child().planned(DAY).found();
    const { id } = (await take(home, home.coordinator, ["FINISH"], 1))[0]!;
    const odd = "Käse; Brot, Öl \\ Ei\nund 燒賣🥟".repeat(9);
    await served.inProcess.database.owner`update task set text = ${odd} where id = ${localOf(id)}`;
    const text = await textOf((await renew(home.coordinator, home.id)).path!);
    expect(text.endsWith("END:VCALENDAR\r\n")).toBe(true);
    // 3.1: 75 octets without the break, the space that begins a continued line among them; no bare line feed.
    for (const line of text.split("\r\n")) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
    expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
    // 3.3.11: backslash, semicolon, comma and line break are escaped.
    expect(linesOf(text)).toContain(`DESCRIPTION:${"Käse\\; Brot\\, Öl \\\\ Ei\\nund 燒賣🥟".repeat(9)}`);
    expect(eventsOf(text)[0]!.description).toBe(odd);
    const lines = linesOf(text);
    expect(lines.slice(0, 3)).toEqual(["BEGIN:VCALENDAR", "VERSION:2.0", expect.stringMatching(/^PRODID:-\/\//)]);
    // RFC 7986, 5.1 and 5.7.
    expect(lines).toContain("NAME:Lunch box tasks");
    expect(lines).toContain("REFRESH-INTERVAL;VALUE=DURATION:PT30M");
    // 3.6.1: UID, DTSTAMP and DTSTART once in every event; 3.8.7.2 and 3.8.7.3: both in UTC, the same without METHOD.
    for (const name of ["UID:", "DTSTAMP:", "DTSTART:", "DTEND:", "LAST-MODIFIED:", "SEQUENCE:"])
      expect([name, lines.filter((line) => line.startsWith(name)).length]).toEqual([name, 1]);
    expect(lines.find((line) => line.startsWith("DTSTAMP:"))).toMatch(/^DTSTAMP:\d{8}T\d{6}Z$/);
  });
});

/** A household in a zone with one taken task for each time, planned by hand. */
async function tasksAt(timeZone: string, times: readonly { date: string; startsAt: string; endsAt: string }[]) {
  const { database } = served.inProcess;
  const person = await database.newPerson("Somebody");
  const household = await database.newHousehold(person);
  const { owner } = database;
  await owner`update household set time_zone = ${timeZone} where id = ${household}`;
  const [week, plan] = [randomUUID(), randomUUID()];
  await owner`insert into week (id, household_id, week_start) values (${week}, ${household}, ${times[0]!.date})`;
  await owner`insert into week_plan (id, week_id, household_id, number, state, seed, steps, problem_hash, catalogue_version, wishes, cautions, ready_uses)
    values (${plan}, ${week}, ${household}, 1, 'DRAFT', 1, 1, '', '', '{}', '[]', '[]')`;
  for (const [at, { date, startsAt, endsAt }] of times.entries())
    await owner`insert into task (week_plan_id, household_id, key, session, kind, text, hands_on_minutes, passive_minutes, equipment,
        starts_at, hands_free_at, ends_at, latest_starts_at, carer, state, taken_by_id)
      values (${plan}, ${household}, ${`task-${at}`}, ${`evening-${date}`}, 'BASE', 'Rice: cook.', 5, 0, '[]',
        ${startsAt}, ${endsAt}, ${endsAt}, ${startsAt}, 0, 'TAKEN', ${person})`;
  const [feed] = [randomUUID().replaceAll("-", "").padEnd(43, "A")];
  await owner`insert into feed_address (household_id, person_id, digest, created_at)
    values (${household}, ${person}, ${createHash("sha256").update(feed).digest("hex")}, now())`;
  return { household, person, week, plan, secret: feed };
}
const at = (now: string) => ({ ...served.inProcess.app, now: () => new Date(now) });
const spans = (text: string) => eventsOf(text).map(({ start, end }) => [start.toISOString(), end!.toISOString()]);

describe("across clock changes", () => {
  // Summer time in the United Kingdom: from 01:00 GMT on the last Sunday of March to 01:00 GMT on the last Sunday of October
  // (Summer Time Act 1972 as amended by the Summer Time Order 2002): in 2027 on 28 March and 31 October.
  it.each([
    [
      "Europe/London",
      "2027-03-20T12:00:00Z",
      [
        ["2027-03-27", "18:00", "18:30", "2027-03-27T18:00:00.000Z", "2027-03-27T18:30:00.000Z"],
        // Skipped by the clock, read with the offset before (3.3.5); half an hour later it is 03:00.
        ["2027-03-28", "01:30", "03:00", "2027-03-28T01:30:00.000Z", "2027-03-28T02:00:00.000Z"],
        ["2027-03-28", "18:00", "18:30", "2027-03-28T17:00:00.000Z", "2027-03-28T17:30:00.000Z"],
      ],
    ],
    [
      "Europe/London",
      "2027-10-25T12:00:00Z",
      [
        ["2027-10-30", "18:00", "18:30", "2027-10-30T17:00:00.000Z", "2027-10-30T17:30:00.000Z"],
        // Twice on the clock: the first of the two is meant (3.3.5).
        ["2027-10-31", "01:30", "02:30", "2027-10-31T00:30:00.000Z", "2027-10-31T02:30:00.000Z"],
        ["2027-10-31", "18:00", "18:30", "2027-10-31T18:00:00.000Z", "2027-10-31T18:30:00.000Z"],
      ],
    ],
    // UTC+05:30 all year (IANA time zone database), and past midnight.
    [
      "Asia/Kolkata",
      "2027-03-20T12:00:00Z",
      [["2027-03-28", "23:50", "00:20", "2027-03-28T18:20:00.000Z", "2027-03-28T18:50:00.000Z"]],
    ],
    // UTC+10:30, in summer UTC+11: half an hour, to 2 a.m. on the first Sunday of April (IANA time zone database).
    [
      "Australia/Lord_Howe",
      "2027-03-20T12:00:00Z",
      [
        ["2027-04-03", "18:00", "18:30", "2027-04-03T07:00:00.000Z", "2027-04-03T07:30:00.000Z"],
        ["2027-04-04", "18:00", "18:30", "2027-04-04T07:30:00.000Z", "2027-04-04T08:00:00.000Z"],
      ],
    ],
  ] as const)("%s from %s on: every task is at the instant its kitchen's clock shows", async (zone, now, rows) => {
    const { secret } = await tasksAt(
      zone,
      rows.map(([date, startsAt, endsAt]) => ({ date, startsAt, endsAt })),
    );
    expect(spans((await readFeed(at(now), secret))!)).toEqual(rows.map(([, , , start, end]) => [start, end]));
  });
});

describe("changes", () => {
  const evening = { date: "2027-01-12", startsAt: "18:00", endsAt: "18:30" };

  it("count up and keep their UID; what is released is called off, and comes back when taken again", async () => {
    const { owner } = served.inProcess.database;
    const { plan, secret, person } = await tasksAt("Europe/London", [evening]);
    const first = (await readFeed(at("2027-01-11T10:00:00Z"), secret))!;
    const [{ uid }] = eventsOf(first) as [VEvent];
    const seen = (text: string) => ["SEQUENCE", "STATUS", "DTSTART", "LAST-MODIFIED"].map((n) => valueOf(text, uid, n));
    expect(seen(first)).toEqual([
      "SEQUENCE:0",
      "STATUS:CONFIRMED",
      "DTSTART:20270112T180000Z",
      "LAST-MODIFIED:20270111T100000Z",
    ]);
    // Read again, later: the same text to the letter.
    expect(await readFeed(at("2027-01-11T11:00:00Z"), secret)).toBe(first);

    // 3.8.7.4: one more with each change; 3.8.7.3: when it was.
    await owner`update task set starts_at = '17:30' where week_plan_id = ${plan}`;
    const moved = (await readFeed(at("2027-01-11T12:00:00Z"), secret))!;
    expect(seen(moved)).toEqual([
      "SEQUENCE:1",
      "STATUS:CONFIRMED",
      "DTSTART:20270112T173000Z",
      "LAST-MODIFIED:20270111T120000Z",
    ]);

    await owner`update task set state = 'OPEN', taken_by_id = null where week_plan_id = ${plan}`;
    const released = (await readFeed(at("2027-01-11T13:00:00Z"), secret))!;
    // 3.8.1.11: CANCELLED; it keeps its time and nothing of its text.
    expect(seen(released)).toEqual([
      "SEQUENCE:2",
      "STATUS:CANCELLED",
      "DTSTART:20270112T173000Z",
      "LAST-MODIFIED:20270111T130000Z",
    ]);
    expect(released).not.toContain("Rice");
    expect(eventsOf(released)[0]!.alarms).toBeUndefined();
    expect(await readFeed(at("2027-01-12T13:00:00Z"), secret)).toBe(released);

    await owner`update task set state = 'TAKEN', taken_by_id = ${person} where week_plan_id = ${plan}`;
    expect(seen((await readFeed(at("2027-01-12T14:00:00Z"), secret))!).slice(0, 2)).toEqual([
      "SEQUENCE:3",
      "STATUS:CONFIRMED",
    ]);
    await owner`update task set state = 'DONE' where week_plan_id = ${plan}`;
    const done = (await readFeed(at("2027-01-12T15:00:00Z"), secret))!;
    expect(seen(done).slice(0, 2)).toEqual(["SEQUENCE:4", "STATUS:CONFIRMED"]);
    expect(done).not.toContain("VALARM");
  });

  it("are repeated for four weeks and then forgotten", async () => {
    const { owner } = served.inProcess.database;
    const { plan, secret, household } = await tasksAt("Europe/London", [evening]);
    await readFeed(at("2027-01-11T10:00:00Z"), secret);
    await owner`delete from task where week_plan_id = ${plan}`;
    expect(await readFeed(at("2027-01-11T11:00:00Z"), secret)).toContain("STATUS:CANCELLED");
    expect(await readFeed(at("2027-02-08T10:00:00Z"), secret)).toContain("STATUS:CANCELLED");
    expect(await readFeed(at("2027-02-09T19:00:00Z"), secret)).not.toContain("VEVENT");
    expect(await owner`select 1 from feed_event where household_id = ${household}`).toHaveLength(0);
  });

  it("are counted once when several servers are asked at the same time", async () => {
    const { owner } = served.inProcess.database;
    const { plan, secret } = await tasksAt("Europe/London", [evening]);
    for (const [round, startsAt] of ["18:00", "17:00", "16:00"].entries()) {
      await owner`update task set starts_at = ${startsAt} where week_plan_id = ${plan}`;
      const texts = await Promise.all([1, 2, 3, 4].map(() => readFeed(at("2027-01-11T10:00:00Z"), secret)));
      expect(new Set(texts).size).toBe(1);
      expect(texts[0]).toContain(`SEQUENCE:${round}\r\n`);
    }
  });

  it("by a new plan keep the UID of the same work, and call off what is no longer in it", async () => {
    const home = await served.household().child().planned(DAY).found();
    await take(home, home.coordinator, ["FINISH"], 4);
    const path = (await renew(home.coordinator, home.id)).path!;
    const before = eventsOf(await textOf(path));
    expect((await home.plan(DAY)).__typename).toBe("WeekPayload");
    // The new address of a feed goes on where the old one stopped.
    const text = await textOf((await renew(home.coordinator, home.id)).path!);
    const after = eventsOf(text);
    expect(after.map(({ uid }) => uid).sort()).toEqual(before.map(({ uid }) => uid).sort());
    const { plan } = (await home.week(DAY))!;
    const held = plan.tasks.filter(({ state }) => state === "TAKEN").length;
    expect(after.filter(({ status }) => status === "CONFIRMED")).toHaveLength(held);
    for (const { uid, status } of after)
      if (status === "CANCELLED") expect(valueOf(text, uid, "SEQUENCE")).toBe("SEQUENCE:1");
  });
});

it("shows the sessions the carer is on for, at the time the household gives to them, until they are not", async () => {
  const home = await served.household().found();
  const { owner, db } = served.inProcess.database;
  const person = await db.signIn(home.coordinator, "-");
  const householdId = localOf(home.id);
  // Winter, so that the household's clock in London is UTC.
  await owner`insert into prep_time_exception (household_id, kind, date, starts_at, hands_on_minutes, elapsed_minutes, carers)
    values (${householdId}, 'MORNING', '2027-01-12', '06:20', 20, 45, 1)`;
  await owner`insert into duty (household_id, session, person_id) values (${householdId}, 'morning-2027-01-12', ${person})`;
  const path = (await renew(home.coordinator, home.id)).path!;
  const [event] = eventsOf(await textOf(path));
  expect(event).toMatchObject({ summary: "On for the kitchen this morning", status: "CONFIRMED" });
  expect([event!.start, event!.end].map((time) => new Date(time as Date).toISOString())).toEqual([
    "2027-01-12T06:20:00.000Z",
    "2027-01-12T07:05:00.000Z",
  ]);
  expect(await textOf(path)).toContain("BEGIN:VALARM");
  await owner`delete from duty where household_id = ${householdId}`;
  expect(eventsOf(await textOf(path))).toMatchObject([{ uid: event!.uid, status: "CANCELLED" }]);
});

it("names are made into UUIDs as RFC 9562 shows (appendix A.4)", () => {
  expect(nameUuid("6ba7b810-9dad-11d1-80b4-00c04fd430c8", "www.example.com")).toBe(
    "2ed6657d-e927-568b-95e1-2665a8aea6a2",
  );
});
