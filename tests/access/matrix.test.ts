/** The access matrix of rows: cells from the database, answers by hand; and leaks planted to see it catch them. */
import type postgres from "postgres";
import { useDatabase } from "../support/database.js";
import { plantHomes, type Homes } from "./homes.js";
import { functions } from "./functions.js";
import { keep } from "./report-cells.js";
import { sqlCells, strangeColumns, unspoken, type Cell } from "./sql-cells.js";
import { acrossTheWall } from "./tables.js";

const database = useDatabase({ demo: true });
let homes: Homes;
beforeAll(async () => {
  homes = await plantHomes(database.owner);
});
const named = ({ what, verb, scope, actor, got }: Cell) =>
  `${actor} ${got ? "may" : "may not"} ${verb} ${what}, ${scope}`;

class TakenBack extends Error {}
/** Runs on the database and takes back whatever was done. */
async function within<T>(work: (sql: postgres.TransactionSql) => Promise<T>): Promise<T> {
  let found: T | undefined;
  await database.owner
    .begin(async (sql) => {
      found = await work(sql);
      throw new TakenBack();
    })
    .catch((error: unknown) => {
      if (!(error instanceof TakenBack)) throw error;
    });
  return found as T;
}

describe("rows, asked as the server's role", () => {
  let cells: Cell[];
  beforeAll(async () => {
    cells = await within((sql) => sqlCells(sql, homes));
    keep("rows", cells);
  });
  it("every table has its line", async () => expect(await unspoken(database.owner)).toEqual([]));
  it("nobody reads or writes what they should not", () =>
    expect(cells.filter(({ expected, got }) => got && !expected).map(named)).toEqual([]));
  it("everybody may do what is theirs to do", () =>
    expect(cells.filter(({ expected, got }) => expected && !got).map(named)).toEqual([]));
  it("every column that the other home reads is named", async () =>
    expect(await strangeColumns(database.owner, acrossTheWall)).toEqual([]));
});

describe("functions with the owner's rights", () => {
  const granted = () =>
    database.owner<{ name: string }[]>`
      select p.proname as name from pg_proc p where p.pronamespace = 'public'::regnamespace and p.prosecdef
        and has_function_privilege('noonpail_app', p.oid, 'execute') order by 1`;
  /** What a stranger gets of a call about a household that is not theirs. */
  async function gets(sql: postgres.TransactionSql, call: string): Promise<unknown> {
    const [box] = await sql<{ id: string }[]>`select l.id from lunch_box l join week_plan p on p.id = l.week_plan_id
      where p.household_id = ${homes.here} and l.child_id = ${homes.ownChild}`;
    const text = Object.entries({
      $here: homes.here,
      $child: homes.ownChild,
      $helper: homes.people.HELPER,
      $box: box!.id,
      $school: homes.school,
      $me: homes.people.STRANGER,
    }).reduce((said, [name, value]) => said.replaceAll(name, value), call);
    await sql`select set_config('app.person_id', ${homes.people.STRANGER}, true)`;
    await sql`set local role noonpail_app`;
    const rows = await sql.unsafe<Record<string, unknown>[]>(text);
    return rows
      .flatMap((row) => Object.values(row))
      .filter((value) => value !== null && value !== false && value !== "");
  }
  it("each is spoken about", async () =>
    expect(Object.keys(functions).sort()).toEqual((await granted()).map(({ name }) => name)));

  it.each(Object.entries(functions).filter((entry): entry is [string, string] => typeof entry[1] === "string"))(
    "%s gives a stranger nothing",
    async (_, call) => {
      const got = await within((sql) =>
        gets(sql, call).catch((error: unknown) => (error as { code?: string }).code ?? String(error)),
      );
      expect(Array.isArray(got) ? got : [got]).toEqual(got === "42501" ? ["42501"] : []);
    },
  );

  it("a planted one that forgets to ask is caught", async () => {
    const got = await within(async (sql) => {
      await sql.unsafe(`create or replace function app_role_in(home uuid, carer uuid) returns public.role language sql volatile security definer
        set search_path = '' begin atomic select m.role from public.membership m where m.household_id = home and m.person_id = carer; end`);
      return gets(sql, functions["app_role_in"] as string);
    });
    expect(got).toEqual(["HELPER"]);
  });
});

describe("a planted leak is caught", () => {
  const leaks: Record<string, { plant: string; tables: string[]; caught: string }> = {
    "row security of a table switched off": {
      plant: "alter table stock disable row level security",
      tables: ["stock"],
      caught: "STRANGER may SELECT stock, FOREIGN",
    },
    "a policy that admits everybody": {
      plant: "create policy task_open on task for select using (true)",
      tables: ["task"],
      caught: "OTHER_HOME may SELECT task, OTHER",
    },
    "a kitchen's row selected by child": {
      plant: "create policy body_by_child on child_body for select using (child_id in (select app_child_ids()))",
      tables: ["child_body"],
      caught: "OTHER_HOME may SELECT child_body, ACROSS",
    },
    "a write open to who only reads": {
      plant:
        "create policy shopping_tick on shopping_line for update using (household_id in (select app_household_ids()))",
      tables: ["shopping_line"],
      caught: "OBSERVER may UPDATE shopping_line, OWN",
    },
    "members added as rows": {
      plant:
        "grant insert on membership to noonpail_app; create policy membership_add on membership for insert with check (household_id in (select app_household_ids()))",
      tables: ["membership"],
      caught: "HELPER may INSERT membership, OWN",
    },
    "a function that answers with every child": {
      plant:
        "create or replace function app_child_ids() returns setof uuid language sql stable security definer set search_path = '' begin atomic select c.id from public.child c; end",
      tables: ["child", "allergy"],
      caught: "STRANGER may SELECT child, FOREIGN",
    },
    "the other home's record of an allergy loosened": {
      plant:
        "create policy allergy_loosen on allergy for update using (child_id in (select app_writable_child_ids())) with check (true)",
      tables: ["allergy"],
      caught: "HELPER may UPDATE allergy, ACROSS",
    },
    "the log told by child": {
      plant: "create policy change_by_child on change for select using (child_id in (select app_child_ids()))",
      tables: ["change"],
      caught: "COORDINATOR may SELECT change, OTHER",
    },
    "an administrator who sees families": {
      plant:
        "create policy enrolment_of_school on enrolment for select using (school_id in (select app_appointed_school_ids()))",
      tables: ["enrolment"],
      caught: "ADMINISTRATOR may SELECT enrolment, FOREIGN",
    },
    "the past of a plan rewritten": {
      plant:
        "grant update (grams) on box_item to noonpail_app; create policy box_item_change on box_item for update using (child_id in (select app_writable_child_ids()))",
      tables: ["box_item"],
      caught: "HELPER may UPDATE box_item, OWN",
    },
  };
  it.each(Object.entries(leaks))("%s", async (_, { plant, tables, caught }) => {
    const found = await within(async (sql) => {
      await sql.unsafe(plant);
      return (await sqlCells(sql, homes, tables)).filter(({ expected, got }) => got && !expected).map(named);
    });
    expect(found).toContain(caught);
  });

  it("a column moved across the wall", async () => {
    const found = await within(async (sql) => {
      await sql.unsafe("alter table lunch_box add column leave_at text");
      return strangeColumns(sql, acrossTheWall);
    });
    expect(found).toEqual(["lunch_box.leave_at"]);
  });

  it("a column granted that was kept back", async () => {
    const found = await within(async (sql) => {
      await sql.unsafe("grant select (loaded_by_id) on rule_set_version to noonpail_app");
      return strangeColumns(sql, acrossTheWall);
    });
    expect(found).toEqual(["rule_set_version.loaded_by_id"]);
  });

  it("a table that nobody has spoken about", async () => {
    const found = await within(async (sql) => {
      await sql.unsafe("create table diary (id uuid primary key)");
      return unspoken(sql);
    });
    expect(found).toEqual(["diary"]);
  });
});
