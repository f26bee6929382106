/** The log, live and after a lost connection: what is told, to whom, in which order, once. */
import { connectDatabase } from "../../src/database/database.js";
import { createChangeTails } from "../../src/graphql/change-tails.js";
import { globalId } from "../../src/graphql/global-id.js";
import { listenForNotices } from "../../src/graphql/notices.js";
import { localOf, useServedApp, type Household, type WeekSeen } from "../support/served-app.js";
import { DAY } from "./documents.js";
import { documentOf } from "./every-mutation.js";

const served = useServedApp({ steps: 25_000 });

interface Entry {
  readonly cursor: string;
  readonly kind: string;
  readonly verb: string;
  readonly subjectId: string;
  readonly by: { readonly displayName: string } | null;
  readonly child: { readonly name: string } | null;
  readonly fields: readonly { readonly name: string; readonly before: string | null; readonly after: string | null }[];
}
const ENTRY = "cursor kind verb subjectId by { displayName } child { name } fields { name before after }";
const CHANGES = `subscription Changes($id: ID!, $after: String) { changes(householdId: $id, after: $after) { ${ENTRY} } }`;
const LOG = `query Log($id: ID!, $first: Int!, $after: String) { household(id: $id) { changeCursor
  log(first: $first, after: $after) { nodes { ${ENTRY} } pageInfo { endCursor hasNextPage } } } }`;

const SET_DAY =
  "mutation Day($input: SetSchoolDayInput!) { setSchoolDay(input: $input) { __typename ... on UserError { message } } }";

const RENAME = "mutation R($input: RenameMeInput!) { renameMe(input: $input) { __typename } }";

const logOf = async (home: Household, person = home.coordinator, first = 100, after: string | null = null) =>
  (
    await served.ask<{
      household: {
        changeCursor: string;
        log: { nodes: Entry[]; pageInfo: { endCursor: string | null; hasNextPage: boolean } };
      };
    }>(person, LOG, { id: home.id, first, after })
  ).household;
const leaving: (() => Promise<void>)[] = [];
afterEach(() => Promise.all(leaving.splice(0).map((leave) => leave())));
const follow = async (home: Household, person = home.coordinator, after: string | null = null) => {
  const heard = await served.subscribe(person, CHANGES, { id: home.id, after });
  leaving.push(heard.leave);
  return {
    ended: heard.ended,
    get entries() {
      return heard.events.map(({ changes }) => changes as Entry);
    },
  };
};
const until = async (holds: () => boolean) => {
  for (let waited = 0; !holds(); waited += 20) {
    if (waited > 5_000) throw new Error("waited 5 s in vain");
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
};
const kinds = (entries: readonly Entry[]) => entries.map(({ kind }) => kind);
const openTask = (week: WeekSeen) => week.plan.tasks.find(({ state }) => state === "OPEN")!;
const taking = (person: string, taskId: string, seenRevision: number) =>
  served.send(person, documentOf("takeTask"), { taskId, seenRevision });

let here: Household;
let there: Household;
beforeAll(async () => {
  here = await served
    .household()
    .child({ name: "Ari" })
    .child({ name: "Bo", dateOfBirth: "2018-02-03" }, "class-4")
    .carer("COOK")
    .carer("HELPER")
    .planned(DAY)
    .found();
  there = await served.household().found();
  const { addHome, owner } = served.inProcess.database;
  await addHome(localOf(here.children[0]!), localOf(there.id));
  await owner`update residence set since = '2027-06-01' where household_id = ${localOf(there.id)}`;
});

describe("what is told", () => {
  it("a task that one carer takes, to the other: who, what it was, what it is", async () => {
    const week = (await here.week(DAY))!;
    const heard = await follow(here, here.carers.HELPER);
    const task = openTask(week);
    expect((await taking(here.carers.COOK!, task.id, week.revision)).__typename).toBe("TaskPayload");
    await until(() => heard.entries.length > 0);
    const [entry] = heard.entries;
    expect(entry).toMatchObject({ kind: "TASK", verb: "CHANGED", subjectId: task.id });
    expect(entry!.by!.displayName).toBe(here.carers.COOK);
    expect(entry!.fields.find(({ name }) => name === "state")).toEqual({
      name: "state",
      before: "OPEN",
      after: "TAKEN",
    });
    expect(heard.entries).toHaveLength(1);
  });

  it("nothing of what is refused", async () => {
    const week = (await here.week(DAY))!;
    const before = await logOf(here);
    const held = week.plan.tasks.find(({ state }) => state === "TAKEN")!;
    expect((await taking(here.carers.HELPER!, held.id, week.revision)).__typename).toBe("TaskHeld");
    expect((await logOf(here)).changeCursor).toBe(before.changeCursor);
  });

  it("a cupboard of many foods as one entry, row by row in it", async () => {
    const before = await logOf(here);
    const set = await here.change(
      "mutation Stock($input: SetStockInput!) { setStock(input: $input) { __typename ... on UserError { message } } }",
      {
        entries: [
          { food: "carrot-raw", grams: 500 },
          { food: "apple-raw", grams: 900 },
        ],
      },
    );
    expect(set.__typename).toBe("KitchenPayload");
    const [entry] = (await logOf(here)).log.nodes;
    expect(entry).toMatchObject({ kind: "STOCK", verb: "CHANGED", subjectId: here.id });
    expect(entry!.fields).toEqual([
      { name: "apple-raw", before: null, after: "grams 900" },
      { name: "carrot-raw", before: null, after: "grams 500" },
    ]);
    expect((await logOf(here, here.coordinator, 100)).log.nodes[1]!.cursor).toBe(before.changeCursor);
  });

  it("a new plan as one entry, a child's size without figures, an allergy without its name", async () => {
    expect((await here.plan(DAY, { replanAgreed: true })).__typename).toBe("WeekPayload");
    expect((await logOf(here)).log.nodes[0]).toMatchObject({ kind: "PLAN", verb: "ADDED" });
    const { owner } = served.inProcess.database;
    await owner`insert into child_body (child_id, household_id, weight_kg) values (${localOf(here.children[1]!)}, ${localOf(here.id)}, 31)
      on conflict (child_id, household_id) do update set weight_kg = 31`;
    expect((await logOf(here)).log.nodes[0]).toMatchObject({ kind: "BODY", verb: "CHANGED", fields: [], by: null });
    const recorded = await here.change(documentOf("recordAllergy"), {
      childId: here.children[1],
      allergen: "MUSTARD",
    });
    expect(recorded.__typename).toBe("AllergyPayload");
    const entry = (await logOf(here)).log.nodes.find(({ kind }) => kind === "ALLERGY")!;
    expect(entry).toMatchObject({ verb: "CHANGED", child: { name: "Bo" }, fields: [] });
  });

  it("who is on for a session, by their ID, and that somebody has another name", async () => {
    const { owner, db } = served.inProcess.database;
    const helper = await db.signIn(here.carers.HELPER!, "-");
    await owner`insert into duty (household_id, session, person_id) values (${localOf(here.id)}, 'morning-2027-01-13', ${helper})`;
    const [entry] = (await logOf(here)).log.nodes;
    expect(entry).toMatchObject({ kind: "ROTA", verb: "CHANGED", subjectId: here.id });
    expect(entry!.fields).toEqual([
      { name: `morning-2027-01-13 ${globalId("Person", helper)}`, before: null, after: "yes" },
    ]);
    await served.send(here.carers.HELPER!, RENAME, { displayName: "Another name" });
    const [renamed] = (await logOf(here)).log.nodes;
    expect(renamed).toMatchObject({
      kind: "CARER",
      verb: "CHANGED",
      subjectId: globalId("Person", helper),
      fields: [],
    });
  });

  it("what is done and undone in one transaction not at all", async () => {
    const { database } = served.inProcess;
    const before = (await logOf(here)).changeCursor;
    const person = await database.db.signIn(here.coordinator, here.coordinator);
    await database.db.asPerson(person, async (tx) => {
      const rest = await tx.relaxation.create({
        data: { householdId: localOf(here.id), rule: "DISH_REPEATS", date: new Date("2027-02-01") },
      });
      await tx.relaxation.delete({ where: { id: rest.id } });
    });
    expect((await logOf(here)).changeCursor).toBe(before);
  });
});

describe("to whom", () => {
  it("an allergy to both homes, and who entered it to their own home only", async () => {
    const [ours, theirs] = [await follow(here), await follow(there)];
    const recorded = await here.change(documentOf("recordAllergy"), {
      childId: here.children[0],
      allergen: "SESAME",
    });
    expect(recorded.__typename).toBe("AllergyPayload");
    await until(() => kinds(ours.entries).includes("ALLERGY") && kinds(theirs.entries).includes("ALLERGY"));
    const of = (entries: readonly Entry[]) => entries.find(({ kind }) => kind === "ALLERGY")!;
    expect(of(ours.entries).by).toEqual({ displayName: here.coordinator });
    expect(of(theirs.entries)).toMatchObject({ by: null, child: { name: "Ari" }, verb: "CHANGED" });
  });

  it("of kitchen, tasks, shopping, plan and siblings nothing to the other home, in whatever order it asks", async () => {
    const { log } = await logOf(there);
    expect(log.nodes.length).toBeGreaterThan(0);
    expect(log.nodes.filter(({ child }) => child?.name !== "Ari" && child !== null)).toEqual([]);
    const mayHear = new Set(["HOME", "ALLERGY", "BOX", "BOXES", "CARER", "KITCHEN", "PREP_TIMES"]);
    expect(kinds(log.nodes).filter((kind) => !mayHear.has(kind))).toEqual([]);
    const theirWeek = await served.post(there.coordinator, CHANGES.replace("subscription", "query"), { id: here.id });
    expect(theirWeek.data).toBeNull();
  });

  it("to a stranger nothing: the subscription ends as for a household that is not there", async () => {
    const stranger = served.newcomer();
    for (const id of [here.id, there.id.replace(/.$/, "A"), "nonsense"]) {
      const heard = await served.subscribe(stranger, CHANGES, { id, after: null });
      await heard.ended;
      expect(heard.events).toEqual([]);
    }
  });

  it("to who is no carer any more nothing: the subscription ends", async () => {
    const home = await served.household().carer("HELPER").found();
    const heard = await follow(home, home.carers.HELPER);
    const { database } = served.inProcess;
    const person = await database.db.signIn(home.carers.HELPER!, "-");
    await database.owner`delete from membership where person_id = ${person}`;
    await heard.ended;
    expect(heard.entries).toEqual([]);
    expect(
      await served.ask(home.carers.HELPER!, "query H($id: ID!) { household(id: $id) { changeCursor } }", {
        id: home.id,
      }),
    ).toEqual({ household: null });
  });

  it("a school's news to the families of the school, once, and named as nobody's doing", async () => {
    const before = (await logOf(here)).changeCursor;
    const [school] = (
      await served.ask<{ me: { administers: { id: string; revision: number }[] } }>(
        "demo:ruth",
        "{ me { administers { id revision } } }",
      )
    ).me.administers;
    const child = await served.household().child({ name: "Cy", dateOfBirth: "2018-02-03" }, "class-4").found();
    const set = await served.send("demo:ruth", SET_DAY, {
      schoolId: school!.id,
      seenRevision: school!.revision,
      date: "2027-02-03",
      kind: "HOLIDAY",
      title: "Snow",
    });
    expect(set.__typename).toBe("SchoolPayload");
    const entries = (await logOf(child)).log.nodes.filter(({ kind }) => kind === "SCHOOL");
    expect(entries).toHaveLength(1);
    expect(entries[0]).toMatchObject({ subjectId: school!.id, by: null, fields: [] });
    expect((await logOf(here)).changeCursor).not.toBe(before);
  });
});

describe("a phone out of a tunnel", () => {
  it("hears all it missed, in order, each once, and then goes on live", async () => {
    const { changeCursor } = await logOf(here);
    const week = (await here.week(DAY))!;
    const tasks = week.plan.tasks.filter(({ state }) => state === "OPEN").slice(0, 3);
    for (const { id } of tasks) await taking(here.carers.COOK!, id, week.revision);
    const heard = await follow(here, here.carers.HELPER, changeCursor);
    await until(() => heard.entries.length === 3);
    const more = openTask((await here.week(DAY))!);
    await taking(here.carers.COOK!, more.id, week.revision);
    await until(() => heard.entries.length === 4);
    expect(heard.entries.map(({ subjectId }) => subjectId)).toEqual([...tasks.map(({ id }) => id), more.id]);
    const logged = (await logOf(here, here.coordinator, 4)).log.nodes.map(({ cursor }) => cursor).reverse();
    expect(heard.entries.map(({ cursor }) => cursor)).toEqual(logged);
  });

  it("finds in the log, page by page, the same entries", async () => {
    const all = (await logOf(here)).log.nodes;
    const first = await logOf(here, here.coordinator, 5);
    const second = await logOf(here, here.coordinator, 5, first.log.pageInfo.endCursor);
    expect([...first.log.nodes, ...second.log.nodes].map(({ cursor }) => cursor)).toEqual(
      all.slice(0, 10).map(({ cursor }) => cursor),
    );
    expect(first.log.pageInfo.hasNextPage).toBe(true);
  });

  it("is told when its cursor is none of this log", async () => {
    for (const after of [Buffer.from("change 999999").toString("base64url"), "nonsense", ""]) {
      const heard = await served.subscribe(here.coordinator, CHANGES, { id: here.id, after });
      await heard.ended;
      expect(JSON.stringify(heard.events)).toContain("after is no cursor of this");
    }
  });
});

describe("order", () => {
  it("of many who change at once: numbers without gaps, none missed by who follows", async () => {
    const { database } = served.inProcess;
    const home = await served.household().found();
    const person = await database.db.signIn(home.coordinator, "-");
    const householdId = localOf(home.id);
    const follower = await follow(home);
    const day = (n: number) => new Date(Date.UTC(2027, 4, n + 1));
    await Promise.all(
      Array.from({ length: 40 }, (_, n) =>
        database.db.asPerson(person, async (tx) => {
          await tx.relaxation.create({ data: { householdId, rule: "DISH_REPEATS", date: day(n) } });
          // The later it began the earlier it ends: numbers given at the beginning would be overtaken.
          await tx.$executeRaw`select pg_sleep(${(40 - n) / 400})`;
        }),
      ),
    );
    await until(() => follower.entries.length === 40);
    const numbers = follower.entries.map(({ cursor }) =>
      Number(Buffer.from(cursor, "base64url").toString().split(" ")[1]),
    );
    expect(numbers).toEqual(Array.from({ length: 40 }, (_, n) => numbers[0]! + n));
    const stored = await database.owner`select seq from change where household_id = ${householdId} order by seq`;
    expect(stored.map(({ seq }) => Number(seq))).toEqual(stored.map((_, at) => at + 1));
  });

  it("of two homes that change the same child at once: neither waits for the other for ever", async () => {
    const { database } = served.inProcess;
    const [a, b] = await Promise.all([here, there].map((home) => database.db.signIn(home.coordinator, "-")));
    const [child, homeA, homeB] = [here.children[0]!, here.id, there.id].map(localOf) as [string, string, string];
    const change = (person: string, own: string, n: number) =>
      database.db.asPerson(person, async (tx) => {
        await tx.hotDay.create({ data: { householdId: own, date: new Date(Date.UTC(2027, 5, n + 1)) } });
        await tx.childDisruption.create({
          data: {
            childId: child,
            kind: own === homeA ? "ABSENT" : "TRIP",
            date: new Date(Date.UTC(2027, 5, n + 1)),
            until: new Date(Date.UTC(2027, 5, n + 1)),
          },
        });
      });
    await Promise.all(Array.from({ length: 12 }, (_, n) => [change(a!, homeA, n), change(b!, homeB, n)]).flat());
    const tail = (await logOf(there)).log.nodes.filter(({ kind }) => kind === "DISRUPTION");
    expect(tail).toHaveLength(24);
  });
});

describe("another server on the same database", () => {
  it("hears the same, and goes on when the database cuts all its connections", async () => {
    const { database } = served.inProcess;
    const home = await served.household().found();
    const [householdId, person] = [localOf(home.id), await database.db.signIn(home.coordinator, "-")];
    const other = connectDatabase(database.serverUrl);
    const notices = await listenForNotices(other);
    const heard: number[] = [];
    const following = notices.changes.follow(householdId, person, 0);
    const ended = (async () => {
      for await (const { seq } of following) heard.push(seq);
    })();
    const relax = (n: number) =>
      home.change(documentOf("relaxHouseRule"), {
        rule: "DISH_REPEATS",
        date: `2027-05-${String(n).padStart(2, "0")}`,
      });
    const last = async () =>
      Number((await database.owner`select last from change_count where household_id = ${householdId}`)[0]!["last"]);
    const all = (upTo: number) => Array.from({ length: upTo }, (_, n) => n + 1);

    expect((await relax(3)).__typename).toBe("KitchenPayload");
    const before = await last();
    await until(() => heard.length === before);
    await database.owner`select pg_terminate_backend(pid) from pg_stat_activity
      where datname = current_database() and application_name = 'noonpail'`;
    // Announced while nobody listens.
    await database.owner`insert into relaxation (household_id, rule, date) values (${householdId}, 'DISH_REPEATS', '2027-05-04')`;
    await database.owner`insert into relaxation (household_id, rule, date) values (${householdId}, 'DISH_REPEATS', '2027-05-05')`;
    const after = await last();
    await until(() => heard.length >= after);
    expect(heard).toEqual(all(after));
    await following.return!();
    await ended;
    await notices.stop();
    await other.close();
  });
});

describe("the log stays", () => {
  it("nobody rewrites an entry, not even the owner; what it said can be erased", async () => {
    const { owner, db } = served.inProcess.database;
    await expect(owner`update change set kind = 'TASK' where household_id = ${localOf(here.id)}`).rejects.toThrow(
      "never rewritten",
    );
    const person = await db.signIn(here.coordinator, "-");
    await expect(db.asPerson(person, (tx) => tx.change.deleteMany())).rejects.toThrow("permission denied");
    await expect(db.asPerson(person, (tx) => tx.changeDetail.deleteMany())).rejects.toThrow("permission denied");
    const before = (await logOf(here)).log.nodes;
    await owner`delete from change_detail where household_id = ${localOf(here.id)}`;
    const after = (await logOf(here)).log.nodes;
    expect(after.map(({ cursor }) => cursor)).toEqual(before.map(({ cursor }) => cursor));
    expect(after.flatMap(({ fields }) => fields)).toEqual([]);
  });
});

describe("a database that is away for a moment", () => {
  it("costs the listener nothing but time", async () => {
    let down = true;
    const entry = { seq: 1, at: "", personId: null, kind: "KITCHEN", verb: "CHANGED" as const, subjectId: "s" };
    const tails = createChangeTails({
      changesFor: (_, people, after) =>
        down
          ? Promise.reject(new Error("away"))
          : Promise.resolve({
              readers: people,
              changes: after < 1 ? [{ ...entry, childId: null, date: null, before: null, after: null }] : [],
            }),
    });
    const heard = tails.follow("h", "p", 0);
    const first = heard.next();
    await new Promise((resolve) => setTimeout(resolve, 30));
    down = false;
    tails.lookAgain();
    expect((await first).value?.seq).toBe(1);
    const waiting = heard.next();
    await heard.return!();
    expect((await waiting).done).toBe(true);
  });
});
