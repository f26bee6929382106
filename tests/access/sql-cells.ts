/** Asks the database itself, as the server's role in the name of each person: may they do this to such a row? */
import type postgres from "postgres";
import type { Homes } from "./homes.js";
import { bookkeeping, tables, type Scope, type TableRule } from "./tables.js";

const verbs = ["SELECT", "INSERT", "UPDATE", "DELETE"] as const;
export type Actor = keyof Homes["people"] | "NOBODY";
export const actors: readonly Actor[] = [
  "OBSERVER",
  "HELPER",
  "COOK",
  "COORDINATOR",
  "OTHER_HOME",
  "STRANGER",
  "ADMINISTRATOR",
  "NOBODY",
];

export interface Cell {
  /** What is asked about: a table or a mutation. */
  readonly what: string;
  readonly verb: string;
  readonly scope: string;
  readonly actor: Actor;
  readonly expected: boolean;
  readonly got: boolean;
}

const rank = { O: 0, H: 1, K: 2, C: 3 } as const;
const roleRank = { OBSERVER: 0, HELPER: 1, COOK: 2, COORDINATOR: 3, OTHER_HOME: 3, STRANGER: 3 } as const;

/** Whether a letter of the table lets this actor through; households' letters hold for who is a carer of the row's own side. */
function lets(letter: string, actor: Actor): boolean {
  if (letter === "-") return false;
  if (letter === "+") return true;
  if (letter === "*") return actor !== "NOBODY";
  if (letter === "A") return actor === "ADMINISTRATOR";
  return actor !== "ADMINISTRATOR" && actor !== "NOBODY" && roleRank[actor] >= rank[letter as keyof typeof rank];
}

interface Belonging {
  readonly id: string;
  readonly home: string | null;
  readonly child: string | null;
  readonly school: string | null;
}

/** Where a row stands, seen from where the actor lives. */
function scopeFor(actor: Actor, row: Belonging, homes: Homes): Scope {
  const { here, there, far, shared, ownChild, otherChild, farChild } = homes;
  const childHomes = new Map([
    [shared, [here, there]],
    [ownChild, [here]],
    [otherChild, [there]],
    [farChild, [far]],
  ]);
  if (row.child === null && row.home === null) return row.school === homes.school ? "SCHOOL" : "PUBLIC";
  const mine = { OTHER_HOME: there, STRANGER: far, ADMINISTRATOR: null, NOBODY: null }[actor as string];
  const home = mine === undefined ? here : mine;
  const living = row.child === null ? [] : (childHomes.get(row.child) ?? []);
  if (row.child !== null && living.length > 1 && home !== null && living.includes(home))
    return row.home === null || row.home === home ? "SHARED" : "ACROSS";
  if (home !== null && (row.home === home || (row.home === null && living.includes(home)))) return "OWN";
  const neighbours = home === here ? there : home === there ? here : null;
  return neighbours !== null && (row.home === neighbours || living.includes(neighbours)) ? "OTHER" : "FOREIGN";
}

/** Tries one thing and takes it back. */
const ATTEMPT = `create or replace function pg_temp.attempt(actor text, tab text, verb text, pk text, id text, col text, cols text) returns text
language plpgsql as $$
declare
  n integer;
  was jsonb;
begin
  begin
    if verb = 'INSERT' then
      execute format('select to_jsonb(t) from %I t where %s = $1', tab, pk) into was using id;
      set local session_replication_role = replica;
      execute format('delete from %I where %s = $1', tab, pk) using id;
      set local session_replication_role = origin;
    end if;
    perform set_config('app.person_id', actor, true);
    set local role noonpail_app;
    case verb
      when 'SELECT' then execute format('select count(*) from %I where %s = $1', tab, pk) into n using id;
      when 'INSERT' then execute format('insert into %I (%s) select %s from jsonb_populate_record(null::%I, $1)', tab, cols, cols, tab) using was;
        get diagnostics n = row_count;
      when 'UPDATE' then execute format('update %I set %I = %I where %s = $1', tab, col, col, pk) using id;
        get diagnostics n = row_count;
      when 'DELETE' then execute format('delete from %I where %s = $1', tab, pk) using id;
        get diagnostics n = row_count;
    end case;
    raise exception using errcode = 'P9999', message = case when n > 0 then 'yes' else 'no' end;
  exception
    when insufficient_privilege then return 'no';
    when sqlstate 'P9999' then return sqlerrm;
    when others then return sqlstate || ' ' || sqlerrm;
  end;
end
$$`;

/** Tables of the schema that nobody has said anything about, and lines about tables that are not there. */
export async function unspoken(owner: postgres.ISql): Promise<string[]> {
  const found = await owner<{ name: string }[]>`
    select relname as name from pg_class where relnamespace = 'public'::regnamespace and relkind in ('r', 'p') order by 1`;
  const there = new Set(found.map(({ name }) => name));
  return [
    ...[...there].filter((name) => tables[name] === undefined && !bookkeeping.includes(name)),
    ...Object.keys(tables).filter((name) => !there.has(name)),
  ];
}

/** Rows of one kind that are read, and that are written to. */
const READ = 30;
const WRITTEN = 3;

async function rowsOf(owner: postgres.TransactionSql, name: string, rule: TableRule, pk: string, homes: Homes) {
  const found = await owner<{ name: string; addable: boolean }[]>`
    select attname as name, has_column_privilege('noonpail_app', attrelid, attnum, 'INSERT') as addable
    from pg_attribute where attrelid = ${name}::regclass and attnum > 0 and not attisdropped`;
  const columns = new Set(found.map((column) => column.name));
  // Where only some columns may be written, the rest is left to its defaults; where none may, all are tried.
  const addable = found.filter((column) => column.addable).map((column) => column.name);
  const filled = (text: string) =>
    text
      .replaceAll("$shared", homes.shared)
      .replaceAll(
        "$coordinators",
        [homes.people.COORDINATOR, homes.people.OTHER_HOME, homes.people.STRANGER].map((id) => `'${id}'`).join(", "),
      );
  const part = (given: string | undefined, column: string) =>
    filled(given ?? (columns.has(column) ? `t.${column}` : "null::uuid"));
  const rows = await owner.unsafe<Belonging[]>(
    `select ${pk} as id, ${part(rule.home, "household_id")}::text as home, ${part(rule.child, "child_id")}::text as child,
      ${part(rule.school, "school_id")}::text as school from ${name} t where ${filled(rule.where ?? "true")} order by 1`,
  );
  const known = new Set([homes.here, homes.there, homes.far]);
  // The demo's own households are no part of the question.
  return {
    columns: addable.length > 0 ? addable : [...columns],
    rows: rows.filter(({ home }) => home === null || known.has(home)),
  };
}

/** Every cell of these tables x verbs x scopes x actors, of all when none is named. Throws where an answer is neither yes nor no, or a kind of row is missing. */
export async function sqlCells(
  sql: postgres.TransactionSql,
  homes: Homes,
  names = Object.keys(tables),
): Promise<Cell[]> {
  await sql.unsafe(ATTEMPT);
  const cells: Cell[] = [];
  const faults: string[] = [];
  for (const name of names) {
    const rule = tables[name]!;
    const [key] = await sql<{ pk: string; changeable: string }[]>`
        select (select 'concat_ws('' '', ' || string_agg(quote_ident(k.attname), ', ' order by k.attnum) || ')' from pg_attribute k
            where k.attrelid = i.indrelid and k.attnum = any (i.indkey::int2[])) as pk, coalesce((select u.attname from pg_attribute u where u.attrelid = i.indrelid and u.attnum > 0 and not u.attisdropped
          and has_column_privilege('noonpail_app', i.indrelid, u.attnum, 'UPDATE') order by u.attnum limit 1), a.attname) as changeable
        from pg_index i join pg_attribute a on a.attrelid = i.indrelid and a.attnum = i.indkey[0]
        where i.indrelid = ${name}::regclass and i.indisprimary`;
    const { columns, rows } = await rowsOf(sql, name, rule, key!.pk, homes);
    for (const actor of actors) {
      const byScope = new Map<Scope, Belonging[]>();
      for (const row of rows) {
        const scope = scopeFor(actor, row, homes);
        byScope.set(scope, [...(byScope.get(scope) ?? []), row]);
      }
      if (actor === "COORDINATOR")
        for (const scope of Object.keys(rule.may) as Scope[])
          if (!byScope.has(scope)) faults.push(`no row of ${name} stands ${scope}: plant one, or take the line out`);
      for (const [scope, standing] of byScope) {
        const letters = (rule.may[scope] ?? "- - - -").split(" ");
        for (const [at, verb] of verbs.entries()) {
          const expected = lets(letters[at]!, actor);
          const answers = new Set<string>();
          for (const row of standing.slice(0, verb === "SELECT" ? READ : WRITTEN)) {
            const person = actor === "NOBODY" ? "" : homes.people[actor];
            const [answer] = await sql<{ said: string }[]>`
                select pg_temp.attempt(${person}, ${name}, ${verb}, ${key!.pk}, ${row.id}, ${key!.changeable}, ${columns.join(", ")}) as said`;
            answers.add(answer!.said);
          }
          const odd = [...answers].find((said) => said !== "yes" && said !== "no");
          if (odd !== undefined) faults.push(`${verb} ${name} ${scope} as ${actor}: ${odd}`);
          // One row of several that lets through is a leak; one that does not is a gap.
          cells.push({
            what: name,
            verb,
            scope,
            actor,
            expected,
            got: expected ? !answers.has("no") : answers.has("yes"),
          });
        }
      }
    }
  }
  if (faults.length > 0) throw new Error(faults.join("\n"));
  return cells;
}

/** Columns of tables that are seen across the wall, as the server's role may read them, where they are not those named by hand. */
export async function strangeColumns(
  owner: postgres.ISql,
  expected: Readonly<Record<string, string>>,
): Promise<string[]> {
  const across = Object.entries(tables)
    .filter(([, { may }]) => /^[^-]/.test(may.ACROSS ?? "-") || (may.SHARED !== undefined && may.ACROSS === undefined))
    .map(([name]) => name);
  const found = await owner<{ table: string; column: string }[]>`
    select c.relname as table, a.attname as column from pg_class c join pg_attribute a on a.attrelid = c.oid
    where c.relname in ${owner(across)} and c.relnamespace = 'public'::regnamespace and a.attnum > 0 and not a.attisdropped
      and has_column_privilege('noonpail_app', c.oid, a.attnum, 'SELECT')`;
  const readable = found.map(({ table, column }) => `${table}.${column}`);
  const named = Object.entries(expected).flatMap(([table, columns]) =>
    columns.split(" ").map((column) => `${table}.${column}`),
  );
  const behind = new Set(across.filter((name) => expected[name] === undefined));
  return [
    ...readable.filter((column) => !behind.has(column.split(".")[0]!) && !named.includes(column)),
    ...named.filter((column) => !readable.includes(column)),
    // What is shown across the wall has its columns named; what is not must hide its rows there.
    ...[...behind].filter((name) => tables[name]!.may.ACROSS !== undefined),
  ].sort();
}
