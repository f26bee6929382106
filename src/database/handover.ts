/** What came back from a child's boxes, and the note one home leaves the other for a week. */
import type { ReadTx, Tx } from "./database.js";
import type { CameBackCode } from "./week.js";

/** Where a thing is; HOME with the household beside it. */
export type PlaceCode = "HOME" | "AT_SCHOOL" | "WITH_CHILD" | "LOST";
export interface ThingPlace {
  readonly place: PlaceCode;
  /** Null elsewhere, and for a home that is gone. */
  readonly homeId: string | null;
}
export interface HandoverRow {
  /** A Monday. */
  readonly weekStart: string;
  /** 0: nothing has been written. */
  readonly revision: number;
  readonly repeat: readonly string[];
  readonly avoid: readonly string[];
  readonly note: string;
  readonly box: ThingPlace | null;
  readonly icePacks: ThingPlace | null;
  readonly flask: ThingPlace | null;
  /** Of the week, by dish and date. */
  readonly cameBack: readonly { readonly dish: string; readonly date: string; readonly cameBack: CameBackCode }[];
}

/** The note of a child and week with what came back in it; empty where nobody wrote anything. */
export async function readHandover(tx: ReadTx, childId: string, weekStart: string): Promise<HandoverRow> {
  const place = (thing: string) =>
    tx`case when h.${tx(`${thing}_place`)} is not null then json_build_object('place', h.${tx(`${thing}_place`)}, 'homeId', h.${tx(`${thing}_home_id`)}) end`;
  const [row] = await tx<{ tree: HandoverRow }[]>`
    select json_build_object('weekStart', d.monday, 'revision', coalesce(h.revision, 0), 'repeat', coalesce(h.repeat, '{}'), 'avoid', coalesce(h.avoid, '{}'),
      'note', coalesce(h.note, ''), 'box', ${place("box")}, 'icePacks', ${place("ice_packs")}, 'flask', ${place("flask")},
      'cameBack', (select coalesce(json_agg(json_build_object('dish', b.dish_key, 'date', b.date, 'cameBack', b.came_back) order by b.dish_key, b.date, b.break_key, b.slot, b.place), '[]')
        from box_return b where b.child_id = ${childId} and b.date between d.monday and d.monday + 6)) as tree
    from (select ${weekStart}::date as monday) d left join handover h on h.child_id = ${childId} and h.week_start = d.monday`;
  return row!.tree;
}

export interface ReturnToSave {
  readonly breakKey: string;
  readonly slot: string;
  readonly place: number;
  readonly dishKey: string;
  readonly cameBack: CameBackCode;
}

/** Keeps what came back of a day's box; said again, the last word holds. */
export async function saveReturns(
  tx: Tx,
  { childId, date, reportedAt }: { readonly childId: string; readonly date: string; readonly reportedAt: Date },
  entries: readonly ReturnToSave[],
): Promise<void> {
  await tx.$executeRaw`insert into box_return (child_id, date, break_key, slot, place, dish_key, came_back, reported_at)
    select ${childId}::uuid, ${date}::date, e.break_key, e.slot, e.place, e.dish_key, e.came_back, ${reportedAt}
    from unnest(${entries.map(({ breakKey }) => breakKey)}::text[], ${entries.map(({ slot }) => slot)}::text[], ${entries.map(({ place }) => place)}::int[],
      ${entries.map(({ dishKey }) => dishKey)}::text[], ${entries.map(({ cameBack }) => cameBack)}::text[]) as e(break_key, slot, place, dish_key, came_back)
    on conflict (child_id, date, break_key, slot, place) do update set dish_key = excluded.dish_key, came_back = excluded.came_back, reported_at = excluded.reported_at`;
}
