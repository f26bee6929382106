/** What was reported to upset a week: of a child, by child, and of a kitchen, by household. */
import type { EquipmentKind } from "../../shared/codes.js";
import type { ReadTx, Tx } from "./database.js";

/** Both days count. */
interface Reported {
  readonly id: string;
  readonly date: string;
  readonly until: string;
}
export interface ChildDisruptionRow extends Reported {
  readonly kind: "ABSENT" | "SCHOOL_CLOSED" | "EARLY_FINISH" | "TRIP";
  readonly childId: string;
  /** Of an early finish: breaks that start at or after it fall away. */
  readonly endsAt: string | null;
  readonly reason: string;
}
export interface KitchenDisruptionRow extends Reported {
  readonly kind: "FOOD_MISSING" | "APPLIANCE_BROKEN" | "SHORT_MORNING";
  readonly foodKind: string | null;
  readonly appliance: EquipmentKind | null;
  /** Of the appliance that cannot be used. */
  readonly units: number | null;
  /** There are in the morning, to the end of its session. */
  readonly minutes: number | null;
}
export type DisruptionRow = ChildDisruptionRow | KitchenDisruptionRow;

export const isOfKitchen = (row: DisruptionRow): row is KitchenDisruptionRow => !("childId" in row);

/** SQL for the columns of a disruption of a child `d`. */
const childColumns = (tx: ReadTx) =>
  tx`d.id, d.kind, d.child_id as "childId", d.date, d.until, d.ends_at as "endsAt", d.reason`;
/** SQL for the columns of a disruption of a kitchen `d`. */
const kitchenColumns = (tx: ReadTx) =>
  tx`d.id, d.kind, d.date, d.until, d.food_kind as "foodKind", d.appliance, d.units, d.minutes`;

/** SQL for those of a household's children that touch the days, as JSON. */
export const childDisruptions = (tx: ReadTx, householdId: string, from: string, until: string) => tx`
  (select coalesce(json_agg(x), '[]') from (select ${childColumns(tx)} from child_disruption d
    where d.child_id in (select r.child_id from residence r where r.household_id = ${householdId}) and d.date <= ${until}::date and d.until >= ${from}::date
    order by d.date, d.child_id, d.kind) x)`;
/** SQL for those of a household's kitchen that touch the days, as JSON. */
export const kitchenDisruptions = (tx: ReadTx, householdId: string, from: string, until: string) => tx`
  (select coalesce(json_agg(x), '[]') from (select ${kitchenColumns(tx)} from kitchen_disruption d
    where d.household_id = ${householdId} and d.date <= ${until}::date and d.until >= ${from}::date
    order by d.date, d.kind, d.food_kind, d.appliance) x)`;

/** All that touch the days, by date; those of the reader's own kitchens and children only. One statement. */
export async function readDisruptions(
  tx: ReadTx,
  householdId: string,
  from: string,
  until: string,
): Promise<DisruptionRow[]> {
  const [row] = await tx<{ child: ChildDisruptionRow[]; kitchen: KitchenDisruptionRow[] }[]>`
    select ${childDisruptions(tx, householdId, from, until)} as child, ${kitchenDisruptions(tx, householdId, from, until)} as kitchen`;
  const rows: DisruptionRow[] = [...row!.child, ...row!.kitchen];
  return rows.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}

/** Of a household, by its ID; null when there is none or it is not the reader's. */
export async function readDisruption(
  tx: ReadTx,
  householdId: string,
  of: "child" | "kitchen",
  id: string,
): Promise<DisruptionRow | null> {
  const [row] =
    of === "child"
      ? await tx<
          { tree: DisruptionRow }[]
        >`select row_to_json(x) as tree from (select ${childColumns(tx)} from child_disruption d
          where d.id = ${id} and d.child_id in (select r.child_id from residence r where r.household_id = ${householdId})) x`
      : await tx<
          { tree: DisruptionRow }[]
        >`select row_to_json(x) as tree from (select ${kitchenColumns(tx)} from kitchen_disruption d
          where d.id = ${id} and d.household_id = ${householdId}) x`;
  return row?.tree ?? null;
}

const day = (date: string) => new Date(`${date}T00:00:00Z`);

/** Writes a report; one of the same kind about the same thing from the same day on gives way. */
export async function saveDisruption(tx: Tx, householdId: string, row: DisruptionRow): Promise<void> {
  const { id, kind } = row;
  const days = { date: day(row.date), until: day(row.until) };
  if (isOfKitchen(row)) {
    const { foodKind, appliance, units, minutes } = row;
    await tx.kitchenDisruption.deleteMany({ where: { householdId, kind, date: days.date, foodKind, appliance } });
    await tx.kitchenDisruption.createMany({
      data: [{ id, householdId, kind, ...days, foodKind, appliance, units, minutes }],
    });
  } else {
    const { childId, endsAt, reason } = row;
    await tx.childDisruption.deleteMany({ where: { childId, kind, date: days.date } });
    await tx.childDisruption.createMany({ data: [{ id, childId, kind, ...days, endsAt, reason }] });
  }
}

export async function removeDisruption(tx: Tx, row: DisruptionRow): Promise<void> {
  const where = { id: row.id };
  if (isOfKitchen(row)) await tx.kitchenDisruption.deleteMany({ where });
  else await tx.childDisruption.deleteMany({ where });
}
