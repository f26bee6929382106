/**
 * What of every table goes into the copy of their data that a household or a person takes away. The copy is read as the person who
 * asks, through row security, so the wall between two homes holds in it as it does everywhere; the conditions here only say what
 * belongs to it. tests/database/export-tables.test.ts fails for a table that nobody has decided on.
 */
import type { ReadTx } from "./database.js";

export type ExportOf = "household" | "person";

interface Part {
  /** Which rows `t`; $1 is the household's or the person's ID. */
  readonly where: string;
  /** Columns that stay behind; absent: none. */
  readonly without?: readonly string[];
  /** The only columns that go; absent: all. */
  readonly only?: readonly string[];
}
type Decision = { readonly [K in ExportOf]?: Part } | { readonly leftOut: string };

const household: Part = { where: "t.household_id = $1" };
const children = "select r.child_id from residence r where r.household_id = $1";
const child: Part = { where: `t.child_id in (${children})` };
/** The home's own boxes with their past, and what the children carry now when the other home packs. */
const boxes = `select l.id from lunch_box l where l.week_plan_id in (select p.id from week_plan p where p.household_id = $1)
  or (l.current and l.child_id in (${children}))`;
const ofBoxes: Part = { where: `t.lunch_box_id in (${boxes})` };
const ownRules = `select s.id from rule_set s where s.child_id in (${children})`;
const reference = { leftOut: "reference data, the same for everybody" };
const school = { leftOut: "a school's, the same for everybody who looks" };

export const EXPORTED: Readonly<Record<string, Decision>> = {
  household: { household: { where: "t.id = $1" } },
  membership: { household, person: { where: "t.person_id = $1" } },
  person: {
    household: {
      where: "t.id in (select m.person_id from membership m where m.household_id = $1)",
      only: ["id", "display_name"],
    },
    person: { where: "t.id = $1" },
  },
  appointment: { person: { where: "t.person_id = $1" } },
  audit_entry: { person: { where: "t.person_id = $1" } },
  invitation: {
    household,
    person: { where: "t.created_by_id = $1", only: ["id", "household_id", "kind", "role", "created_at"] },
  },
  feed_address: { person: { where: "t.person_id = $1", without: ["digest"] } },
  feed_event: { leftOut: "worked out of the tasks" },
  idempotency_key: { leftOut: "answers already given, kept for a request that is sent again" },
  confirmation: { leftOut: "good for minutes" },

  equipment: { household },
  prep_time: { household },
  prep_time_exception: { household },
  hot_day: { household },
  kitchen_disruption: { household },
  stock: { household },
  leftover: { household },
  freezer_stock: { household },
  label_check: { household, person: { where: "t.read_by_id = $1" } },
  own_food: { household },
  own_food_shelf: { household },
  own_food_label: { household, person: { where: "t.read_by_id = $1" } },
  own_dish: { household },
  own_dish_work: { household },
  own_dish_food: { household },

  child: { household: { where: `t.id in (${children})` } },
  allergy: { household: child },
  residence: { household: child },
  residence_pattern: { household: child },
  residence_exception: { household: child },
  handover: { household: child },
  enrolment: { household: child },
  school_meal_day: { household: child },
  school_provision: { household: child },
  child_disruption: { household: child },
  erasure_request: { household: child },
  exemption: { household: child },
  exemption_note: { household },
  child_body: { household },
  box_kit: { household },
  leave_time: { household },
  rule_set: { household: child },
  rule_set_version: { household: { where: `t.rule_set_id in (${ownRules})` } },
  rule: {
    household: {
      where: `t.rule_set_version_id in (select v.id from rule_set_version v where v.rule_set_id in (${ownRules}))`,
    },
  },

  week: { household },
  week_plan: {
    household,
    person: { where: "t.created_by_id = $1", only: ["id", "household_id", "number", "created_at"] },
  },
  plan_certificate: { household: { ...household, without: ["problem", "certificate"] } },
  lunch_box: { household: { where: `t.id in (${boxes})` } },
  box_item: { household: ofBoxes },
  box_block: { household: ofBoxes },
  box_return: { household: child },
  box_packing: { household, person: { where: "t.packed_by_id = $1" } },
  box_item_note: { household },
  box_block_note: { household },
  batch: { household },
  task: { household, person: { where: "t.taken_by_id = $1" } },
  shopping_line: { household },
  relaxation: { household },
  pin: { household },

  change: { household, person: { where: "t.person_id = $1" } },
  change_detail: { household },
  change_count: { leftOut: "how far the log goes: its last entry says the same" },

  school,
  school_class: school,
  class_break: school,
  school_term: school,
  school_day: school,
  rule_set_adoption: school,
  food: reference,
  base: reference,
  base_ingredient: reference,
  dish: reference,
  dish_base: reference,
  dish_ingredient: reference,
  dish_step: reference,
  reference_table: reference,
  erasure_count: { leftOut: "numbers about nobody" },
  _prisma_migrations: { leftOut: "bookkeeping of the tables themselves" },
};

const ROWS_AT_ONCE = 200;

/**
 * Reads table by table and row by row, so that a copy of years needs no more memory than one of a week.
 * @param take is handed a table's name and some of its rows as JSON texts, and awaited; a table without rows is handed over once
 */
export async function readExport(
  tx: ReadTx,
  of: ExportOf,
  id: string,
  take: (table: string, rows: readonly string[]) => Promise<void>,
): Promise<void> {
  const readable = await readableColumns(tx);
  for (const [table, decision] of Object.entries(EXPORTED)) {
    const part = "leftOut" in decision ? undefined : decision[of];
    if (part === undefined) continue;
    const columns = (readable.get(table) ?? []).filter(
      (name) => (part.only?.includes(name) ?? true) && !part.without?.includes(name),
    );
    const list = columns.map((name) => `t."${name}"`).join(", ");
    const query = `select to_jsonb(x)::text as row from (select ${list} from "${table}" t where ${part.where} order by 1) x`;
    await take(table, []);
    for await (const rows of tx.unsafe<{ row: string }[]>(query, [id]).cursor(ROWS_AT_ONCE))
      await take(
        table,
        rows.map(({ row }) => row),
      );
  }
}

/** Columns the server may read at all. */
async function readableColumns(tx: ReadTx): Promise<ReadonlyMap<string, readonly string[]>> {
  const rows = await tx<{ name: string; columns: string[] }[]>`
    select c.relname as name, array_agg(a.attname::text order by a.attnum) as columns
    from pg_class c join pg_attribute a on a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped
    where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' and has_column_privilege(c.oid, a.attnum, 'select')
    group by c.relname`;
  return new Map(rows.map(({ name, columns }) => [name, columns]));
}
