import { remind } from "../../src/app/remind.js";
import { openQueue, prepareQueue } from "../../src/jobs/queue.js";
import { allowUseOf } from "../../src/database/migrate.js";
import { createLog } from "../../src/log.js";
import { workOnJobs } from "../../src/work-on-jobs.js";
import { localOf, useServedApp, type Household } from "../support/served-app.js";
import { DAY, TAKE } from "./documents.js";
import { documentOf } from "./every-mutation.js";

const served = useServedApp();

interface Seen {
  readonly id: string;
  readonly kind: string;
  readonly session: string;
  readonly forEverybody: boolean;
  readonly dueAt: string;
  readonly aboutAt: string;
  readonly text: string;
  readonly task: { readonly id: string; readonly text: string } | null;
}
const REMINDER = "id kind session forEverybody dueAt aboutAt text task { id text }";
const HEARD = `subscription Heard($id: ID!) { reminders(householdId: $id) { ${REMINDER} } }`;
const seenBy = async (home: Household, person: string, after = "2027-01-01T00:00:00Z") =>
  (
    await served.ask<{ household: { reminders: Seen[] } | null }>(
      person,
      `query Seen($id: ID!, $after: DateTime!) { household(id: $id) { reminders(after: $after) { ${REMINDER} } } }`,
      { id: home.id, after },
    )
  ).household?.reminders ?? null;
const lookAt = (instant: string) => remind({ ...served.inProcess.app, now: () => new Date(instant) });
const personId = async (person: string) =>
  (await served.ask<{ me: { person: { id: string } } }>(person, "{ me { person { id } } }")).me.person.id;
const settled = () => new Promise((resolve) => setTimeout(resolve, 300));

interface Task {
  readonly id: string;
  readonly text: string;
  readonly startsAt: string;
  readonly latestStartsAt: string;
}
let home: Household;
/** The tasks of Monday morning that need hands, in time order; the usual kitchen begins at 6:45. */
let tasks: readonly Task[];
beforeAll(async () => {
  home = await served.household().child().carer("HELPER").carer("COOK").carer("OBSERVER").planned(DAY).found();
  const { week } = await served.ask<{
    week: { plan: { sessions: { key: string; startsAt: string; tasks: (Task & { handsOnMinutes: number })[] }[] } };
  }>(
    home.coordinator,
    `query T($id: ID!) { week(householdId: $id, date: "${DAY}") { plan { sessions { key startsAt tasks { id text startsAt latestStartsAt handsOnMinutes } } } } }`,
    { id: home.id },
  );
  const morning = week.plan.sessions.find(({ key }) => key === `morning-${DAY}`)!;
  expect(morning.startsAt).toBe("06:45");
  tasks = morning.tasks.filter(({ handsOnMinutes }) => handsOnMinutes > 0);
  expect(tasks.length).toBeGreaterThan(1);
  await home.change(documentOf("setDuties"), {
    duties: [{ session: `morning-${DAY}`, personIds: [await personId(home.carers.HELPER!)] }],
  });
  await served.send(home.carers.COOK!, TAKE, { taskId: tasks[0]!.id, seenRevision: 0 });
});
/** London is on Greenwich time in January. */
const utc = (time: string) => `${DAY}T${time}:00.000Z`;
const earlier = (time: string, minutes: number) => new Date(Date.parse(utc(time)) - minutes * 60_000).toISOString();

it("come to whoever is on and to whoever holds the task, each once though two servers look at the same time", async () => {
  const heard = await Promise.all(
    [home.carers.HELPER!, home.carers.COOK!, home.carers.OBSERVER!].map((person) =>
      served.subscribe(person, HEARD, { id: home.id }),
    ),
  );
  expect(await lookAt(earlier("06:45", 16))).toMatchObject({ reminders: 0 });
  // The homes of the demonstration have no plan: nothing of theirs is read.
  expect((await lookAt(earlier("06:45", 15))).homes).toBe(1);
  const looks = await Promise.all([1, 2, 3].map(() => lookAt(earlier(tasks[0]!.startsAt, 9))));
  expect(looks.map(({ reminders }) => reminders).sort()).toEqual([0, 0, 1]);
  await settled();
  const [helper, cook, observer] = heard.map(({ events }) => events.map((event) => event["reminders"] as Seen));
  expect(helper).toMatchObject([
    {
      kind: "SESSION_BEGINS",
      session: `morning-${DAY}`,
      dueAt: earlier("06:45", 15),
      aboutAt: utc("06:45"),
      forEverybody: false,
      task: null,
    },
  ]);
  expect(helper![0]!.text).toBe("The morning session begins at 06:45, and you are on for it.");
  expect(cook).toMatchObject([
    {
      kind: "TASK_BEGINS",
      dueAt: earlier(tasks[0]!.startsAt, 10),
      aboutAt: utc(tasks[0]!.startsAt),
      task: { id: tasks[0]!.id },
    },
  ]);
  expect(cook![0]!.text).toBe(`Your task begins at ${tasks[0]!.startsAt}. ${tasks[0]!.text}`);
  expect(observer).toEqual([]);
  // What was heard is on record, for the same people.
  expect(await seenBy(home, home.carers.HELPER!)).toEqual(helper);
  expect(await seenBy(home, home.carers.COOK!)).toEqual(cook);
  expect(await seenBy(home, home.coordinator)).toEqual([]);
  expect(await seenBy(home, home.carers.COOK!, cook![0]!.dueAt)).toEqual([]);
});

it("come to everybody when a task that nobody holds can begin no later, and to nobody else", async () => {
  const late = tasks.at(-1)!;
  const stranger = await served.subscribe(served.newcomer(), HEARD, { id: home.id });
  await stranger.ended;
  const other = await served.household().found();
  await served.inProcess.database.addHome(localOf(home.children[0]!), localOf(other.id));
  const otherHome = await served.subscribe(other.coordinator, HEARD, { id: home.id });
  await otherHome.ended;
  const observer = await served.subscribe(home.carers.OBSERVER!, HEARD, { id: home.id });
  await lookAt(utc(late.latestStartsAt));
  await settled();
  const events = observer.events.map((event) => event["reminders"] as Seen);
  expect(events.map(({ task }) => task!.id)).toContain(late.id);
  for (const event of events) expect(event).toMatchObject({ kind: "TASK_GETS_LATE", forEverybody: true });
  expect(events.map(({ task }) => task!.id)).not.toContain(tasks[0]!.id);
  const told = events.find(({ task }) => task!.id === late.id)!;
  expect(told).toMatchObject({ dueAt: utc(late.latestStartsAt), aboutAt: utc(late.latestStartsAt) });
  expect(told.text).toBe(
    `Nobody has taken this task, and it can begin no later than ${late.latestStartsAt}. ${late.text}`,
  );
  expect(stranger.events).toEqual([]);
  expect(otherHome.events).toEqual([]);
  expect(await seenBy(home, other.coordinator)).toBeNull();
  for (const person of [home.coordinator, home.carers.HELPER!, home.carers.OBSERVER!])
    expect((await seenBy(home, person))!.map(({ id }) => id)).toEqual(
      expect.arrayContaining(events.map(({ id }) => id)),
    );
  await served.inProcess.database.owner`delete from residence where household_id = ${localOf(other.id)}`;
});

it("are not told hours later by a server that slept", async () => {
  const before = (await seenBy(home, home.coordinator))!.length;
  await lookAt(`${DAY}T12:00:00.000Z`);
  expect(await seenBy(home, home.coordinator)).toHaveLength(before);
});

it("go with the carer who leaves", async () => {
  const { database } = served.inProcess;
  const cook = localOf(await personId(home.carers.COOK!));
  const count = async () =>
    (await database.owner<{ n: number }[]>`select count(*)::int as n from reminder where person_id = ${cook}`)[0]!.n;
  expect(await count()).toBe(1);
  await database.owner`delete from membership where person_id = ${cook}`;
  expect(await count()).toBe(0);
  // The task is still theirs on paper until it is set free; no reminder is written for somebody who is gone.
  await lookAt(earlier(tasks[0]!.startsAt, 9));
  expect(await count()).toBe(0);
});

it("are looked for by whoever works on jobs, at once and until it stops", async () => {
  const { database, app } = served.inProcess;
  const { schema } = await prepareQueue(database.ownerUrl);
  await allowUseOf(database.ownerUrl, schema);
  await database.owner`delete from reminder`;
  const queue = await openQueue(database.serverUrl, { lookSeconds: 1 });
  await workOnJobs(
    { ...app, queue, now: () => new Date(utc(tasks.at(-1)!.latestStartsAt)) },
    queue,
    createLog("silent"),
  );
  await queue.stop();
  expect((await seenBy(home, home.coordinator))!.length).toBeGreaterThan(0);
});

it("let the owner of the database look past the members' wall only while they are looked for", async () => {
  const [row] = await served.inProcess.database.owner<{ policies: string[] }[]>`
    select array_agg(pg_get_expr(polqual, polrelid) order by polname) as policies from pg_policy where polname like '%\_remind'`;
  expect(row!.policies).toHaveLength(3);
  for (const policy of row!.policies)
    expect(policy).toMatch(/app_person_id\(\) IS NULL.*current_setting\('app\.reminding'::text, true\) = 'on'::text/);
});
