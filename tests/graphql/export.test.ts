/** The copy of their data that people take away, fetched as they would. */
import { exportMe } from "../../src/app/export.js";
import { localOf, useServedApp, type Household } from "../support/served-app.js";
import { DAY, TAKE } from "./documents.js";
import { documentOf, inputNow, kitchenMutations } from "./every-mutation.js";

const served = useServedApp();
type Row = Record<string, unknown>;
interface Copy {
  readonly format: string;
  readonly of: string;
  readonly id: string;
  readonly tables: Readonly<Record<string, readonly Row[]>>;
}
const copyOf = async (person: string, path: string) => (await (await served.file(person, path)).json()) as Copy;

/** Home of two siblings with something in every cupboard; the elder lives in the other home as well. */
let here: Household;
let there: Household;
beforeAll(async () => {
  here = await served
    .household()
    .child({ name: "Ari", sex: "FEMALE", weightKg: 47.53, heightCm: 158, allergies: [{ allergen: "SESAME" }] })
    .child({ name: "Bo", dateOfBirth: "2018-02-03" }, "class-4")
    .carer("COOK")
    .carer("HELPER")
    .planned(DAY)
    .found();
  there = await served.household().carer("COOK").found();
  const { addHome, owner } = served.inProcess.database;
  await addHome(localOf(here.children[0]!), localOf(there.id));
  await owner`update residence set since = '2027-06-01' where household_id = ${localOf(there.id)}`;
  for (const field of ["setStock", "setHotDays", "recordLabel", "saveOwnFood", "keepOwnRules", "recordExemption"]) {
    const mutation = kitchenMutations.find((one) => one.field === field)!;
    const said = await here.change(documentOf(field), await inputNow(mutation, here));
    expect(said.__typename).toMatch(/Payload$/);
  }
});

describe("a household's copy", () => {
  it("is one JSON document with every row that names the household, counted in the database itself", async () => {
    const answer = await served.file(here.coordinator, `/export/household/${here.id}`);
    expect(answer.status).toBe(200);
    expect(answer.headers.get("content-type")).toBe("application/json; charset=utf-8");
    expect(answer.headers.get("cache-control")).toBe("no-store");
    expect(answer.headers.get("content-disposition")).toContain("attachment");
    const copy = (await answer.json()) as Copy;
    expect(copy).toMatchObject({ format: "noonpail-export/1", of: "household", id: localOf(here.id) });
    const { owner } = served.inProcess.database;
    const withHousehold = await owner<{ name: string }[]>`select c.relname as name from pg_class c
      join pg_attribute a on a.attrelid = c.oid and a.attname = 'household_id'
      where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' order by 1`;
    let counted = 0;
    for (const { name } of withHousehold) {
      if (name.startsWith("feed_") || name === "change_count") continue;
      const [{ rows }] = await owner<[{ rows: number }]>`
        select count(*)::int as rows from ${owner(name)} where household_id = ${localOf(here.id)}`;
      const mine = copy.tables[name]!.filter((row) => row["household_id"] === localOf(here.id));
      expect([name, mine.length]).toEqual([name, rows]);
      counted += rows;
    }
    expect(counted).toBeGreaterThan(200);
    const names = (table: string, column: string) => copy.tables[table]!.map((row) => row[column]);
    expect(names("child", "name").sort()).toEqual(["Ari", "Bo"]);
    expect(names("allergy", "allergen")).toEqual(["SESAME"]);
    expect(names("child_body", "weight_kg")).toContain(47.53);
    expect(names("rule", "says")).toEqual(["No kiwi on a Friday."]);
    expect(names("exemption_note", "clinician")).toEqual(["A. Dietitian"]);
    expect(copy.tables["box_item"]!.length).toBe(copy.tables["box_item_note"]!.length);
    // Carers are named; how they sign in is their own.
    expect(copy.tables["person"]!.map((row) => Object.keys(row).sort())).toEqual(Array(3).fill(["display_name", "id"]));
  });

  it("of the other home of a child shows the child and the boxes, and nothing of this kitchen or the sibling", async () => {
    const copy = await copyOf(there.coordinator, `/export/household/${there.id}`);
    expect(copy.tables["child"]!.map((row) => row["name"])).toEqual(["Ari"]);
    expect(copy.tables["allergy"]).toHaveLength(1);
    expect(copy.tables["lunch_box"]!.length).toBeGreaterThan(0);
    expect(copy.tables["exemption"]).toHaveLength(1);
    const ofHere = localOf(here.id);
    const rows = Object.entries(copy.tables).flatMap(([table, all]) => all.map((row) => ({ table, row })));
    // Where a child lives, and who recorded an allergy, both homes know.
    const naming = rows.filter(({ row }) => JSON.stringify(row).includes(ofHere)).map(({ table }) => table);
    expect([...new Set(naming)].sort()).toEqual(["allergy", "residence"]);
    const text = JSON.stringify(copy);
    const [cook, sibling] = [here.carers.COOK!, localOf(here.children[1]!)];
    for (const theirs of ["47.53", '"Bo"', "Dietitian", "teff", here.coordinator, cook, sibling])
      expect([theirs, text.includes(theirs)]).toEqual([theirs, false]);
    for (const table of [
      "box_item_note",
      "box_packing",
      "task",
      "batch",
      "shopping_line",
      "week",
      "week_plan",
      "stock",
    ])
      expect([table, copy.tables[table]]).toEqual([table, []]);
  });

  it("is a coordinator's, of this very household, to have", async () => {
    const path = `/export/household/${here.id}`;
    for (const person of [here.carers.COOK!, here.carers.HELPER!]) {
      const refused = await served.file(person, path);
      expect(refused.status).toBe(403);
      expect(await refused.json()).toMatchObject({ kind: "NotPermitted", neededRole: "COORDINATOR" });
    }
    const said = new Set<string>();
    for (const [person, id] of [
      [served.newcomer(), here.id],
      [there.coordinator, here.id],
      ["demo:ruth", here.id],
      [here.coordinator, "nonsense"],
      [here.coordinator, here.children[0]!],
    ] as const) {
      const answer = await served.file(person, `/export/household/${id}`);
      said.add(`${answer.status} ${await answer.text()}`);
    }
    expect([...said]).toEqual([expect.stringMatching(/^404 {"kind":"HouseholdNotFound","message":".+"}/)]);
    for (const asked of [path, "/export/me"]) {
      const answer = await served.file(null, asked);
      expect(answer.status).toBe(401);
      expect(answer.headers.get("www-authenticate")).toContain("Bearer");
      expect(await answer.json()).toMatchObject({ kind: "Unauthenticated", reason: "MissingToken" });
    }
    for (const odd of ["", "you", "household/", "household/a/b"])
      expect((await served.file(here.coordinator, `/export/${odd}`)).status).toBe(404);
    expect((await fetch(`${served.url}/export/me`, { method: "POST" })).status).toBe(405);
  });
});

describe("a person's copy", () => {
  it("has what is theirs in any household, and nobody else", async () => {
    const cook = here.carers.COOK!;
    const { plan, revision } = (await here.week(DAY))!;
    const task = plan.tasks.find(({ state }) => state === "OPEN")!;
    await served.send(cook, TAKE, { taskId: task.id, seenRevision: revision });
    const copy = await copyOf(cook, "/export/me");
    expect(copy.tables["person"]).toEqual([expect.objectContaining({ id: copy.id, subject: cook })]);
    expect(copy.tables["membership"]!.map((row) => [row["household_id"], row["role"]])).toEqual([
      [localOf(here.id), "COOK"],
    ]);
    expect(copy.tables["task"]!.map((row) => row["id"])).toEqual([localOf(task.id)]);
    expect(copy.tables["child"]).toBeUndefined();
    expect(JSON.stringify(copy)).not.toContain(here.coordinator);
    const ruth = await copyOf("demo:ruth", "/export/me");
    expect(ruth.tables["appointment"]).toHaveLength(1);
  });

  it("of somebody new is empty but for their name", async () => {
    const { tables } = await copyOf(served.newcomer(), "/export/me");
    expect(Object.entries(tables).flatMap(([table, rows]) => rows.map(() => table))).toEqual(["person"]);
  });
});

describe("a copy in pieces", () => {
  it("gives its connection back when its reader hangs up", async () => {
    for (let times = 0; times < 12; times += 1) {
      const answer = await served.file(here.coordinator, `/export/household/${here.id}`);
      expect([200, 503]).toContain(answer.status);
      await answer.body?.cancel();
    }
    const waited = async (tries: number): Promise<number> => {
      const { status } = await served.file(here.coordinator, "/export/me");
      if (status !== 503 || tries === 0) return status;
      await new Promise((resolve) => setTimeout(resolve, 100));
      return waited(tries - 1);
    };
    expect(await waited(50)).toBe(200);
  });

  it("stops reading when what it is written to breaks", async () => {
    const { app, database } = served.inProcess;
    const person = await database.db.signIn(here.coordinator, here.coordinator);
    let pieces = 0;
    const broken = exportMe(
      app,
      person,
    )(async () => {
      pieces += 1;
      if (pieces === 3) throw new Error("full");
    });
    await expect(broken).rejects.toThrow("full");
    expect(pieces).toBe(3);
    // Its transaction is over: every connection of the pool can be had.
    await Promise.all(Array.from({ length: 12 }, () => database.db.readAs(person, (tx) => tx`select 1`)));
  });
});
