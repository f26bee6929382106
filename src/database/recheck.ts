/** Which weeks a change may reach, and the verdicts of a recheck as rows. */
import postgres from "postgres";
import type { ReadTx, Tx } from "./database.js";
import { saveBlocks, type BlockKind, type BlockRow, type BoxStateCode } from "./week.js";

/** The version of foods, bases and dishes in the database now; a process that read another must not judge. */
export async function readCatalogueVersion(tx: ReadTx): Promise<string | null> {
  const [row] = await tx<{ version: string }[]>`select version from reference_table where key = 'catalogue'`;
  return row?.version ?? null;
}

/** First days of the weeks in which a household has boxes not yet eaten, today's included. */
export async function readWeeksNotEaten(tx: ReadTx, householdId: string, now: Date): Promise<string[]> {
  const rows = await tx<{ weekStart: string }[]>`
    select distinct w.week_start::text as "weekStart" from household h join week w on w.household_id = h.id
    join week_plan p on p.week_id = w.id join lunch_box l on l.week_plan_id = p.id
    where h.id = ${householdId} and l.current and l.state <> 'EATEN' and l.date >= (${now}::timestamptz at time zone h.time_zone)::date
    order by 1`;
  return rows.map((row) => row.weekStart);
}

/**
 * Waits until no other recheck and no new plan of this household is being written, to the end of the transaction. What is
 * read after it has seen every change that was committed before, so the last verdict written is never an older one.
 */
export async function lockVerdicts(tx: Tx, householdId: string): Promise<void> {
  await tx.$executeRaw`select pg_advisory_xact_lock(hashtextextended(${`verdicts/${householdId}`}, 0))`;
}

export interface BoxVerdictToSave {
  readonly boxId: string;
  readonly childId: string;
  readonly date: string;
  readonly state: BoxStateCode;
  readonly blocks: readonly BlockToSave[];
}

/** A reason with everything the packing kitchen knows; what the other home may not see is split off when it is written. */
export interface BlockToSave {
  readonly kind: Exclude<BlockKind, "KITCHEN">;
  readonly dish: string | null;
  readonly food: string | null;
  readonly allergen: string | null;
  readonly diet: string | null;
  readonly ruleSet: string | null;
  readonly rule: string | null;
  /** The rule's own sentence. */
  readonly says: string | null;
}

/** Kinds that would tell the other home what this kitchen keeps out, has read or has to do without. */
const kitchenOnly: ReadonlySet<BlockKind> = new Set<BlockKind>([
  "KEPT_OUT",
  "LABEL_UNREAD",
  "FOOD_MISSING",
  "APPLIANCE_BROKEN",
  "SHORT_MORNING",
]);

/** A reason as its two homes see it. */
export function blockRowOf(block: BlockToSave): BlockRow {
  const hidden = kitchenOnly.has(block.kind);
  return {
    kind: hidden ? "KITCHEN" : block.kind,
    dish: hidden ? null : block.dish,
    allergen: hidden ? null : block.allergen,
    diet: block.diet,
    ruleSet: block.ruleSet,
    rule: block.rule,
    says: block.says,
    note:
      hidden || block.food !== null
        ? { kind: block.kind, dish: block.dish, food: block.food, allergen: block.allergen }
        : null,
  };
}

/** Writes the verdicts of boxes whose verdict has changed; the reasons before give way. */
export async function saveVerdicts(
  tx: Tx,
  householdId: string,
  verdicts: readonly BoxVerdictToSave[],
  newId: () => string,
): Promise<void> {
  const ids = verdicts.map(({ boxId }) => boxId);
  await tx.$executeRaw`update lunch_box l set state = e.state::box_state
    from unnest(${ids}::uuid[], ${verdicts.map(({ state }) => state)}::text[]) as e(id, state) where l.id = e.id`;
  await tx.boxBlock.deleteMany({ where: { lunchBoxId: { in: ids } } });
  await saveBlocks(
    tx,
    householdId,
    verdicts.map(({ boxId, childId, blocks }) => ({ boxId, childId, blocks: blocks.map(blockRowOf) })),
    newId,
  );
}

/** Tells every home of a child that a box's verdict has changed; heard when the transaction commits. */
export async function announceVerdicts(
  tx: Tx,
  boxes: readonly { readonly childId: string; readonly date: string }[],
): Promise<void> {
  if (boxes.length === 0) return;
  await tx.$executeRaw`
    select pg_notify('noonpail', json_build_object('kind', 'BOX_CHECKED', 'householdId', r.household_id, 'childId', e.child_id, 'date', e.date)::text)
    from unnest(${boxes.map(({ childId }) => childId)}::uuid[], ${boxes.map(({ date }) => date)}::text[]) as e(child_id, date)
    join residence r on r.child_id = e.child_id`;
}

/** Runs SQL on the connection of a transaction, as the queue's library asks for it. */
type SqlRunner = (text: string, values: unknown[]) => Promise<{ rows: unknown[] }>;

const LOCK = 7_306_144; // any fixed number: one process at a time queues the rechecks of a reload

/**
 * Once for each content of the reference tables, in one transaction with the note that it was done: hands over every
 * household that somebody belongs to, so that its boxes are looked at again under the new content. As the owner.
 * @returns whether this very content was still to do
 */
export async function oncePerReference(
  ownerUrl: string,
  version: string,
  work: (householdIds: readonly string[], run: SqlRunner) => Promise<void>,
): Promise<boolean> {
  const sql = postgres(ownerUrl, { max: 1, onnotice: () => undefined });
  try {
    return await sql.begin(async (tx) => {
      await tx`select pg_advisory_xact_lock(${LOCK})`;
      const done = await tx`select 1 from reference_table where key = 'rechecked' and version = ${version}`;
      if (done.length > 0) return false;
      // Row security binds the owner too, save in the tables of who belongs where: so by membership, not by box.
      const homes = await tx<{ id: string }[]>`select distinct household_id as id from membership order by 1`;
      await work(
        homes.map(({ id }) => id),
        async (text, values) => ({
          rows: [...(await tx.unsafe(text, values.map((value) => value ?? null) as never[]))],
        }),
      );
      await tx`insert into reference_table (key, version, body) values ('rechecked', ${version}, '{}')
        on conflict (key) do update set version = excluded.version`;
      return true;
    });
  } finally {
    await sql.end();
  }
}
