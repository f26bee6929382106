/** Every table is either in the copy of their data that people take away, by every column that says whose a row is, or left out for a reason. */
import { EXPORTED } from "../../src/database/export.js";
import { useDatabase } from "../support/database.js";

const database = useDatabase();

const columns = () =>
  database.owner<{ table: string; column: string }[]>`
    select c.relname as "table", a.attname as "column" from pg_class c
    join pg_attribute a on a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped
    where c.relnamespace = 'public'::regnamespace and c.relkind in ('r', 'p') order by 1, 2`;

test("somebody has decided on every table there is, and on no other", async () => {
  const tables = [...new Set((await columns()).map(({ table }) => table))];
  expect(Object.keys(EXPORTED).sort()).toEqual(tables.sort());
  for (const decision of Object.values(EXPORTED))
    if ("leftOut" in decision) expect(decision.leftOut.length).toBeGreaterThan(10);
});

test("a table with a household, a child or a person in it is in the copy by that, unless a reason stands here", async () => {
  const elsewhere = [
    // A feed is the carer's own, not the household's.
    "feed_address.household_id",
    // The server's role may not read who loaded a version, nor who took up a link.
    "invitation.accepted_by_id",
    "rule_set_version.loaded_by_id",
  ];
  const undecided = (await columns()).filter(({ table, column }) => {
    const decision = EXPORTED[table];
    if (decision === undefined || "leftOut" in decision || elsewhere.includes(`${table}.${column}`)) return false;
    if (column === "household_id" || column === "child_id") return decision.household === undefined;
    return /(^person_id|_by_id)$/.test(column) && !decision.person?.where.includes(`t.${column} `);
  });
  expect(undecided).toEqual([]);
});

test("columns that stay behind, and those that alone go, are there", async () => {
  const known = new Set((await columns()).map(({ table, column }) => `${table}.${column}`));
  for (const [table, decision] of Object.entries(EXPORTED))
    if (!("leftOut" in decision))
      for (const part of [decision.household, decision.person])
        for (const column of [...(part?.without ?? []), ...(part?.only ?? [])])
          expect(known).toContain(`${table}.${column}`);
});
