import { useDatabase } from "../support/database.js";

const database = useDatabase();

const REFERENCE = [
  "food",
  "base",
  "base_ingredient",
  "dish",
  "dish_base",
  "dish_ingredient",
  "dish_step",
  "reference_table",
];
const BOOKKEEPING = ["_prisma_migrations"];
/** The functions behind the policies read these; FORCE would make an owner's function call itself. The log is written by functions only. */
const NOT_FORCED = [
  "appointment",
  "change",
  "change_count",
  "change_detail",
  "membership",
  "person",
  "residence",
  "school",
];

const tables = async () =>
  database.owner<{ name: string; secured: boolean; forced: boolean }[]>`
    select c.relname as name, c.relrowsecurity as secured, c.relforcerowsecurity as forced from pg_class c
    where c.relnamespace = 'public'::regnamespace and c.relkind in ('r', 'p') order by c.relname`;

/** What noonpail_app may do, whole tables and single columns apart. */
const grants = async () =>
  database.owner<{ name: string; right: string }[]>`
    select c.relname as name, a.privilege_type as right from pg_class c, aclexplode(c.relacl) a
    where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' and a.grantee = 'noonpail_app'::regrole order by 1, 2`;

test("every table but the reference tables is behind row security", async () => {
  const open = (await tables()).filter(({ secured }) => !secured).map(({ name }) => name);
  expect(open.sort()).toEqual([...REFERENCE, ...BOOKKEEPING].sort());
});

test("row security binds the owner too, save where the policies' own functions read", async () => {
  const unforced = (await tables()).filter(({ secured, forced }) => secured && !forced).map(({ name }) => name);
  expect(unforced).toEqual(NOT_FORCED);
});

test("every table behind row security has a policy that lets someone read", async () => {
  const unreadable =
    await database.owner`select c.relname from pg_class c where c.relnamespace = 'public'::regnamespace and c.relrowsecurity
    and not exists (select from pg_policy p where p.polrelid = c.oid and p.polcmd in ('r', '*'))`;
  expect([...unreadable]).toEqual([]);
});

test("no policy admits everybody: only the owner, who founds households and children, is unconditional", async () => {
  const open = await database.owner<{ name: string; to: string[] }[]>`
    select polname as name, array(select rolname::text from pg_roles r where r.oid = any(polroles)) as to from pg_policy
    where pg_get_expr(coalesce(polqual, polwithcheck), polrelid) = 'true' or pg_get_expr(polwithcheck, polrelid) = 'true' order by polname`;
  const [{ owner }] = (await database.owner<
    { owner: string }[]
  >`select relowner::regrole::text as owner from pg_class where oid = 'household'::regclass`) as unknown as [
    { owner: string },
  ];
  expect([...open]).toEqual([
    { name: "child_found", to: [owner] },
    { name: "household_found", to: [owner] },
  ]);
});

test("every foreign key has an index that begins with its columns", async () => {
  const bare = await database.owner`
    select k.conrelid::regclass::text as "table", k.conname as key from pg_constraint k
    where k.contype = 'f' and k.connamespace = 'public'::regnamespace and not exists (
      select from pg_index i where i.indrelid = k.conrelid and i.indpred is null and (i.indkey::int2[])[0:cardinality(k.conkey) - 1] = k.conkey)`;
  expect([...bare]).toEqual([]);
});

test("every column a policy of its own table reads begins an index", async () => {
  const bare = await database.owner<{ column: string }[]>`
    select distinct c.relname || '.' || a.attname as "column" from pg_policy p
    join pg_depend d on d.classid = 'pg_policy'::regclass and d.objid = p.oid and d.refclassid = 'pg_class'::regclass and d.refobjid = p.polrelid and d.refobjsubid > 0
    join pg_class c on c.oid = p.polrelid join pg_attribute a on a.attrelid = c.oid and a.attnum = d.refobjsubid
    where not exists (select from pg_index i where i.indrelid = c.oid and i.indpred is null and i.indkey[0] = a.attnum) order by 1`;
  // Four values each, what is read only when a row is written, and one looked at beside the household.
  expect(bare.map(({ column }) => column)).toEqual([
    "change.seq",
    "residence_exception.state",
    "residence_pattern.cycle",
    "residence_pattern.state",
    "rule_set.jurisdiction",
    "rule_set.layer",
  ]);
});

test("the server's role reads every table but the bookkeeping, and never empties or rules one", async () => {
  const rows = await grants();
  const readable = rows.filter(({ right }) => right === "SELECT").map(({ name }) => name);
  const all = (await tables()).map(({ name }) => name).filter((name) => !BOOKKEEPING.includes(name));
  const columnsNotRead = async (table: string) => {
    const rows = await database.owner<{ column: string }[]>`
      select a.attname::text as column from pg_attribute a where a.attrelid = ${table}::regclass and a.attnum > 0 and not a.attisdropped
        and not has_column_privilege('noonpail_app', a.attrelid, a.attnum, 'select') order by 1`;
    return rows.map(({ column }) => column);
  };
  // Who loaded a rule set's version is the loading home's business.
  expect(await columnsNotRead("rule_set_version")).toEqual(["loaded_by_id"]);
  // What a token is held against, and who of another home took a child in.
  expect(await columnsNotRead("invitation")).toEqual(["accepted_by_id", "token_digest"]);
  expect([...readable, "rule_set_version", "invitation"].sort()).toEqual([...all].sort());
  expect([...new Set(rows.map(({ right }) => right))].sort()).toEqual(["DELETE", "INSERT", "SELECT"]);
});

test("the server's role writes no reference data, members, homes, appointments, persons or schools as rows of its own", async () => {
  const writable = (await grants()).filter(({ right }) => right !== "SELECT").map(({ name }) => name);
  for (const name of [...REFERENCE, ...NOT_FORCED, "household", "child"]) expect(writable).not.toContain(name);
});

test("a plan's past cannot be rewritten: boxes, items, plans and rules have no column to change but their state and who did it", async () => {
  const changeable = await database.owner<{ name: string; columns: string[] }[]>`
    select c.relname as name, array_agg(a.attname::text order by a.attname) as columns from pg_class c join pg_attribute a on a.attrelid = c.oid, aclexplode(a.attacl) g
    where c.relnamespace = 'public'::regnamespace and g.grantee = 'noonpail_app'::regrole and g.privilege_type = 'UPDATE'
      and c.relname in ('lunch_box', 'box_item', 'box_packing', 'box_item_note', 'week_plan', 'rule', 'rule_set_version', 'week', 'batch', 'task', 'shopping_line')
    group by 1 order by 1`;
  expect(Object.fromEntries(changeable.map(({ name, columns }) => [name, columns]))).toEqual({
    batch: ["state"],
    box_packing: ["packed_by_id"],
    lunch_box: ["current", "packed_at", "state"],
    rule_set_version: ["in_force_until"],
    shopping_line: ["ticked"],
    task: ["actual_minutes", "done_at", "state", "taken_at", "taken_by_id"],
    week: ["revision"],
    week_plan: ["agreed_at", "comparison", "state"],
  });
  const removable = (await grants()).filter(({ right }) => right === "DELETE").map(({ name }) => name);
  for (const name of ["lunch_box", "box_item", "week_plan", "rule", "rule_set_version"])
    expect(removable).not.toContain(name);
});

test("nobody may change which row a key names, nor move a row to another household or child", async () => {
  const movable = await database.owner<{ column: string }[]>`
    select c.relname || '.' || a.attname as "column" from pg_class c join pg_attribute a on a.attrelid = c.oid, aclexplode(a.attacl) g
    where c.relnamespace = 'public'::regnamespace and g.grantee = 'noonpail_app'::regrole and g.privilege_type = 'UPDATE'
      and a.attname in ('id', 'household_id', 'child_id', 'person_id', 'school_id', 'week_plan_id', 'lunch_box_id') order by 1`;
  expect(movable.map(({ column }) => column)).toEqual([]);
});

test("noonpail_app owns nothing, cannot sign in, and has no power that looks past row security", async () => {
  const [role] =
    await database.owner`select rolsuper, rolbypassrls, rolcreaterole, rolcreatedb, rolreplication, rolcanlogin from pg_roles where rolname = 'noonpail_app'`;
  expect(role).toEqual({
    rolsuper: false,
    rolbypassrls: false,
    rolcreaterole: false,
    rolcreatedb: false,
    rolreplication: false,
    rolcanlogin: false,
  });
  const owned = await database.owner`
    select relname as name from pg_class where relowner = 'noonpail_app'::regrole union all select proname from pg_proc where proowner = 'noonpail_app'::regrole
    union all select nspname from pg_namespace where nspowner = 'noonpail_app'::regrole`;
  expect([...owned]).toEqual([]);
});

test("no function of ours can be called by just anyone, and those with the owner's rights look nothing up by search path", async () => {
  const functions = await database.owner<{ name: string; open: boolean; definer: boolean; path: string | null }[]>`
    select p.proname as name, p.prosecdef as definer, array_to_string(p.proconfig, ',') as path,
      p.proacl is null or exists (select from aclexplode(p.proacl) a where a.grantee = 0) as open
    from pg_proc p where p.pronamespace = 'public'::regnamespace order by 1`;
  expect(functions.length).toBeGreaterThan(0);
  expect(functions.filter(({ open }) => open).map(({ name }) => name)).toEqual([]);
  expect(
    functions
      .filter(({ definer, path }) => definer && path?.split(",").includes('search_path=""') !== true)
      .map(({ name }) => name),
  ).toEqual([]);
});
