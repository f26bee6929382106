/** What erasing relies on in the tables themselves, for tables that do not exist yet. */
import { useDatabase } from "../support/database.js";

const database = useDatabase();

test("a column that names a child, a household or a person lets go of them: the row goes, or the name", async () => {
  const loose = await database.owner<{ column: string }[]>`
    select c.relname || '.' || a.attname as "column" from pg_class c
    join pg_attribute a on a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped and a.atttypid = 'uuid'::regtype
    where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' and a.attname ~ '(child|household|home|person|_by)_id$'
      and not exists (select from pg_constraint k where k.conrelid = c.oid and k.contype = 'f' and a.attnum = any (k.conkey)
        and k.confdeltype in ('c', 'n'))
    order by 1`;
  expect(loose.map(({ column }) => column)).toEqual([
    // Handed to the child's other home.
    "allergy.recorded_by_household_id",
    // What administrators did stays listed; the key is overwritten.
    "audit_entry.person_id",
    // The log keeps the key of a child who is gone, and loses who did something with them.
    "change.child_id",
    "change.person_id",
    // It goes with its entry.
    "change_detail.household_id",
  ]);
});

test("a list or a document stands in a table that is cleared or goes with its row", async () => {
  const elsewhere = await database.owner<{ name: string }[]>`
    select distinct c.relname as name from pg_class c
    join pg_attribute a on a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped
      and format_type(a.atttypid, null) in ('jsonb', 'uuid[]', 'text[]', 'bytea')
    where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' and not exists (select from pg_attribute o
      where o.attrelid = c.oid and o.attname in ('household_id', 'child_id')) order by 1`;
  expect(elsewhere.map(({ name }) => name)).toEqual([
    "audit_entry", // no family's data; an administrator's own key is taken out
    "base",
    "child", // the child itself
    "class_break",
    "dish",
    "dish_step",
    "food",
    "household", // the household itself
    "idempotency_key", // outcomes that name it are deleted
    "reference_table",
    "rule", // a child's own go with the child
    "rule_set_version",
  ]);
});

test("the owner may erase in every table that binds it", async () => {
  const bound = await database.owner<{ name: string }[]>`
    select c.relname as name from pg_class c where c.relnamespace = 'public'::regnamespace and c.relkind = 'r'
      and c.relforcerowsecurity and not exists (select from pg_policy p where p.polrelid = c.oid and p.polcmd = '*'
        and pg_get_expr(p.polqual, p.polrelid) = 'app_erasing()') order by 1`;
  expect([...bound]).toEqual([]);
});
