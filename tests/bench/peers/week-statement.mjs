/** The week as one statement that already has the shape of the answer; used by the hand-written server and mercurius. */
import postgres from "postgres";
import { settings } from "./sign-in.mjs";

export const sql = postgres(settings.databaseUrl, { max: 10, onnotice: () => undefined });

export async function signIn(subject) {
  const [row] = await sql`select app_sign_in(${subject}, ${subject}) as id`;
  return row.id;
}

const weekOf = (tx, householdId, date) => tx`
  json_build_object(
    'id', w.id, 'weekStart', w.week_start, 'revision', w.revision,
    'plan', json_build_object(
      'id', p.id, 'number', p.number, 'state', p.state,
      'createdAt', to_char(p.created_at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"'),
      'wishes', json_build_object('handsOnMinutes', p.wishes -> 'handsOnMinutes', 'costMinor', p.wishes -> 'costMinor', 'spareBaseGrams', p.wishes -> 'spareBaseGrams'),
      'boxes', (select coalesce(json_agg(json_build_object(
          'id', l.id, 'date', l.date, 'state', l.state, 'child', json_build_object('id', c.id, 'name', c.name),
          'packing', (select json_build_object('leaveAt', k.leave_at, 'coldSources', k.cold_sources, 'flask', k.flask, 'cutlery', k.cutlery) from box_packing k where k.lunch_box_id = l.id),
          'items', (select coalesce(json_agg(json_build_object(
              'id', i.id, 'breakKey', i.break_key, 'slot', i.slot, 'place', i.place, 'dish', json_build_object('key', d.key, 'name', d.name),
              'grams', i.grams, 'pieces', i.pieces, 'served', i.served, 'energyKcal', i.energy_kcal, 'carbohydrateGrams', i.carbohydrate_grams,
              'allergens', i.allergens, 'cuts', i.cuts, 'holdingCase', i.holding_case,
              'pinned', (n.id is not null and exists (select from pin x where x.child_id = i.child_id and x.date = l.date and x.break_key = i.break_key and x.slot = i.slot and x.place = i.place)),
              'note', case when n.id is null then null else json_build_object('compartment', n.compartment, 'holdingMinutes', n.holding_minutes, 'holdingLimitMinutes', n.holding_limit_minutes) end
            ) order by i.break_key, array_position(array['MAIN', 'VEGETABLE', 'FRUIT', 'EXTRA'], i.slot), i.place), '[]')
            from box_item i join dish d on d.key = i.dish_key left join box_item_note n on n.box_item_id = i.id where i.lunch_box_id = l.id)
        ) order by l.date, c.date_of_birth desc, c.id), '[]')
        from lunch_box l join child c on c.id = l.child_id where l.week_plan_id = p.id and l.current),
      'batches', (select coalesce(json_agg(json_build_object(
          'id', b.id, 'base', json_build_object('key', s.key, 'name', s.name), 'session', b.session, 'batches', b.batches, 'grams', b.grams, 'spareGrams', b.spare_grams, 'state', b.state
        ) order by split_part(b.session, '-', 2), split_part(b.session, '-', 3), split_part(b.session, '-', 4), b.session desc, b.base_key), '[]')
        from batch b join base s on s.key = b.base_key where b.week_plan_id = p.id),
      'tasks', (select coalesce(json_agg(json_build_object(
          'id', t.id, 'session', t.session, 'kind', t.kind, 'text', t.text, 'forDates', t.for_dates,
          'children', (select coalesce(json_agg(json_build_object('id', c.id, 'name', c.name) order by u.n), '[]') from unnest(t.child_ids) with ordinality u(id, n) join child c on c.id = u.id),
          'handsOnMinutes', t.hands_on_minutes, 'passiveMinutes', t.passive_minutes, 'startsAt', t.starts_at, 'handsFreeAt', t.hands_free_at,
          'endsAt', t.ends_at, 'carer', t.carer + 1, 'handles', t.handles, 'state', t.state,
          'takenBy', (select json_build_object('displayName', q.display_name) from person q where q.id = t.taken_by_id)
        ) order by substring(t.session from '[0-9].*'), t.session desc, t.starts_at, t.carer, t.key), '[]')
        from task t where t.week_plan_id = p.id),
      'shopping', (select coalesce(json_agg(json_build_object(
          'id', s.id, 'food', json_build_object('key', f.key, 'name', f.name), 'section', s.section, 'neededGrams', s.needed_grams, 'fromStockGrams', s.from_stock_grams,
          'packs', s.packs, 'packGrams', s.pack_grams, 'spareGrams', s.spare_grams, 'costMinor', s.cost_minor, 'readLabel', s.read_label
        ) order by s.section, s.food_key), '[]')
        from shopping_line s join food f on f.key = s.food_key where s.week_plan_id = p.id)
    )
  )::text as week
  from week w join lateral (select * from week_plan v where v.week_id = w.id order by v.number desc limit 1) p on true
  where w.household_id = ${householdId} and ${date}::date between w.week_start and w.week_start + 6`;

/** Reads as the person, in one pipelined transaction. The week is JSON text, "null" when there is none for this reader. */
export async function readWeek(personId, householdId, date) {
  const [, rows] = await sql.begin("read only", (tx) => [
    tx`select set_config('app.person_id', ${personId}, true)`,
    tx`select ${weekOf(tx, householdId, date)}`,
  ]);
  return rows[0]?.week ?? "null";
}
