/**
 * Three households with a row in every table, for asking of each row who may do what to it: a home, the other home of one of its
 * children, and a household that has nothing to do with either.
 */
import { createHash, randomUUID } from "node:crypto";
import type postgres from "postgres";

export interface Homes {
  readonly here: string;
  readonly there: string;
  readonly far: string;
  /** Lives here and there. */
  readonly shared: string;
  /** Children who live in one of the three only. */
  readonly ownChild: string;
  readonly otherChild: string;
  readonly farChild: string;
  /** Persons: carers of this home by role, the coordinators of the other two, an administrator. */
  readonly people: Readonly<
    Record<"COORDINATOR" | "COOK" | "HELPER" | "OBSERVER" | "OTHER_HOME" | "STRANGER" | "ADMINISTRATOR", string>
  >;
  readonly school: string;
}

const DAY = "2027-01-11";

const digestOf = (text: string) => createHash("sha256").update(text).digest("hex");

type Values = Readonly<Record<string, unknown>>;
/** Inserts one row as the owner; lists become arrays, objects JSON. Answers its id, where it has one. */
async function put(sql: postgres.Sql, table: string, values: Values): Promise<string> {
  const record = JSON.stringify(values);
  const columns = Object.keys(values);
  const [row] = await sql.unsafe<{ id?: string }[]>(
    `insert into ${table} (${columns.join(", ")}) select ${columns.join(", ")} from jsonb_populate_record(null::${table}, $1::text::jsonb) on conflict do nothing returning *`,
    [record],
  );
  return row?.id ?? "";
}

async function plantKitchen(sql: postgres.Sql, home: string, person: string, tag: string): Promise<void> {
  const of = { household_id: home };
  const [food] = await sql<{ id: string }[]>`select id from food order by key limit 1`;
  const [base] = await sql<{ id: string }[]>`select id from base order by key limit 1`;
  await put(sql, "equipment", { ...of, kind: "OVEN", units: 1 });
  await put(sql, "prep_time", {
    ...of,
    kind: "MORNING",
    weekday: "MONDAY",
    starts_at: "06:30",
    hands_on_minutes: 30,
    elapsed_minutes: 60,
    carers: 1,
    effort: 10,
  });
  await put(sql, "prep_time_exception", {
    ...of,
    kind: "MORNING",
    date: DAY,
    starts_at: "06:30",
    hands_on_minutes: 30,
    elapsed_minutes: 60,
    carers: 1,
  });
  await put(sql, "hot_day", { ...of, date: DAY });
  await put(sql, "stock", { ...of, food_id: food!.id, grams: 100 });
  await put(sql, "leftover", { ...of, base_id: base!.id, grams: 100, cooked_on: DAY, last_safe_day: DAY });
  await put(sql, "freezer_stock", { ...of, base_id: base!.id, grams: 100, frozen_on: DAY, use_by: DAY });
  await put(sql, "label_check", { ...of, food_id: food!.id, contains: [], may_contain: [], kinds: [], read_on: DAY });
  await put(sql, "kitchen_disruption", { ...of, kind: "SHORT_MORNING", date: DAY, until: DAY, minutes: 9 });
  await put(sql, "relaxation", { ...of, rule: "DISH_REPEATS", date: DAY });
  for (const name of ["shown", "kept"]) {
    const own_food_id = await put(sql, "own_food", { ...of, key: `own-${tag}-food-${name}`, body: {} });
    await put(sql, "own_food_shelf", {
      ...of,
      own_food_id,
      pack_grams: 100,
      price_minor: 100,
      shop_section: "DRY_GOODS",
    });
    await put(sql, "own_food_label", { ...of, own_food_id, contains: [], may_contain: [], kinds: [], read_on: DAY });
    const own_dish_id = await put(sql, "own_dish", { ...of, key: `own-${tag}-${name}`, body: {} });
    await put(sql, "own_dish_work", { ...of, own_dish_id, steps: [] });
    await put(sql, "own_dish_food", { ...of, own_dish_id, own_food_id });
  }
  const feed = { ...of, person_id: person };
  await put(sql, "feed_address", { ...feed, digest: digestOf(`${tag} feed`), created_at: `${DAY}T06:00:00Z` });
  await put(sql, "feed_event", {
    ...feed,
    uid: randomUUID(),
    sequence: 0,
    fingerprint: digestOf("-"),
    starts_at: `${DAY}T06:00:00Z`,
    ends_at: `${DAY}T06:10:00Z`,
    changed_at: `${DAY}T06:00:00Z`,
  });
  await put(sql, "invitation", {
    ...of,
    kind: "CARER",
    role: "COOK",
    token_digest: digestOf(`${tag} carer`),
    created_by_id: person,
    expires_at: new Date(Date.now() + 86_400_000).toISOString(),
  });
  await put(sql, "confirmation", { person_id: person, about: "a first yes", expires_at: "2027-01-12T00:00:00Z" });
  await put(sql, "idempotency_key", { person_id: person, key: `key-of-${tag}`, action: "setStock", fingerprint: "-" });
}

async function plantPlan(sql: postgres.Sql, home: string): Promise<string> {
  const week_id = await put(sql, "week", { household_id: home, week_start: DAY });
  const plan = await put(sql, "week_plan", {
    week_id,
    household_id: home,
    number: 1,
    state: "DRAFT",
    seed: 1,
    steps: 1,
    problem_hash: "-",
    catalogue_version: "-",
    wishes: {},
    cautions: [],
    ready_uses: [],
  });
  const of = { week_plan_id: plan, household_id: home };
  await put(sql, "batch", { ...of, base_key: "dal", session: "-", batches: 1, grams: 9, feeds: [], spare_grams: 0 });
  await put(sql, "task", {
    ...of,
    key: "pack",
    session: `morning-${DAY}`,
    kind: "PACK",
    text: "Pack",
    hands_on_minutes: 4,
    passive_minutes: 0,
    equipment: [],
    starts_at: "07:30",
    hands_free_at: "07:34",
    ends_at: "07:34",
    latest_starts_at: "07:30",
    carer: 1,
  });
  await put(sql, "shopping_line", {
    ...of,
    food_key: "carrot-raw",
    section: "PRODUCE",
    needed_grams: 1,
    from_stock_grams: 0,
    packs: 1,
    pack_grams: 1,
    spare_grams: 0,
    cost_minor: 1,
    read_label: false,
  });
  await sql`insert into plan_certificate (week_plan_id, household_id, objective_points, bound_points, nodes, milliseconds, problem, certificate)
    values (${plan}, ${home}, 1, 1, 1, 1, '', '')`;
  return plan;
}

/** What a home keeps about a child who lives there, and the child's box in its plan. */
async function plantChildAt(
  sql: postgres.Sql,
  home: string,
  child: string,
  plan: string,
  person: string,
  tag: string,
  date: string,
): Promise<void> {
  const of = { household_id: home, child_id: child };
  await put(sql, "residence", { ...of, since: "2024-01-01" });
  await put(sql, "residence_pattern", {
    child_id: child,
    kind: "SAME_HOME",
    starts: date,
    cycle: [home],
    state: "PROPOSED",
    proposed_by_household_id: home,
  });
  await put(sql, "residence_exception", {
    ...of,
    change_id: randomUUID(),
    date,
    state: "PROPOSED",
    proposed_by_household_id: home,
  });
  await put(sql, "box_return", {
    child_id: child,
    date,
    break_key: "lunch",
    slot: "MAIN",
    place: 0,
    dish_key: "-",
    came_back: "SOME",
  });
  await sql`insert into handover (child_id, week_start) values (${child}, date_trunc('week', ${date}::date)) on conflict do nothing`;
  await put(sql, "child_body", { ...of, weight_kg: 30 });
  await put(sql, "box_kit", { ...of, compartments: [], cold_sources: 2, insulated: true, flask: false });
  await put(sql, "leave_time", { ...of, weekday: "MONDAY", leave_at: "08:00" });
  await put(sql, "pin", { ...of, date, break_key: "lunch", slot: "MAIN", place: 0, dish_key: "-" });
  await put(sql, "invitation", {
    ...of,
    kind: "HOME",
    created_by_id: person,
    token_digest: digestOf(`${tag} ${child}`),
    expires_at: new Date(Date.now() + 86_400_000).toISOString(),
  });
  await put(sql, "allergy", { child_id: child, food_kind: `kind-of-${tag}`, recorded_by_household_id: home });
  const lunch_box_id = await put(sql, "lunch_box", { week_plan_id: plan, child_id: child, date, current: true });
  const box_item_id = await put(sql, "box_item", {
    lunch_box_id,
    child_id: child,
    break_key: "lunch",
    slot: "MAIN",
    place: 0,
    dish_key: `own-${tag}-shown`,
    grams: 100,
    served: "COLD",
    energy_kcal: 100,
    cuts: [],
    allergens: [],
    holding_case: "CHILLED",
  });
  await put(sql, "box_packing", { lunch_box_id, household_id: home, leave_at: "08:00", cold_sources: 2, flask: false });
  await put(sql, "box_item_note", {
    box_item_id,
    household_id: home,
    reasons: [],
    holding_minutes: 1,
    holding_limit_minutes: 1,
    compartment: 0,
  });
  const box_block_id = await put(sql, "box_block", { lunch_box_id, child_id: child, place: 0, kind: "KITCHEN" });
  await put(sql, "box_block_note", { box_block_id, household_id: home, kind: "KEPT_OUT" });
}

/** What is known of a child in every home of theirs. */
async function plantChild(
  sql: postgres.Sql,
  home: string,
  child: string,
  school: { id: string; classId: string; ruleSet: string },
): Promise<void> {
  const of = { child_id: child };
  const [food] = await sql<{ id: string }[]>`select id from food order by key limit 1`;
  await put(sql, "enrolment", {
    ...of,
    school_id: school.id,
    school_class_id: school.classId,
    from_date: "2026-09-01",
  });
  await put(sql, "school_meal_day", { ...of, weekday: "FRIDAY" });
  await put(sql, "school_provision", { ...of, food_id: food!.id, grams: 100 });
  await put(sql, "child_disruption", { ...of, kind: "ABSENT", date: "2027-02-01", until: "2027-02-01" });
  const exemption_id = await put(sql, "exemption", {
    ...of,
    rule_set_id: school.ruleSet,
    rule_key: "pastry",
    from_date: "2027-02-01",
    until_date: "2027-03-01",
  });
  await put(sql, "exemption_note", { exemption_id, household_id: home, clinician: "A.", note: "-" });
  const rule_set_id = await put(sql, "rule_set", { ...of, key: `own-of-${child}`, layer: "CHILD" });
  const rule_set_version_id = await put(sql, "rule_set_version", {
    rule_set_id,
    version: 1,
    title: "-",
    language: "en",
    covers_food_from_home: true,
    in_force_from: "2027-01-01",
  });
  await put(sql, "rule", {
    rule_set_version_id,
    place: 0,
    rule_key: "none",
    kind: "EXCLUDE",
    level: "FORBID",
    says: "-",
    source: "-",
    body: {},
  });
}

/** @param sql the owner's hand on a database with the demo's schools */
export async function plantHomes(sql: postgres.Sql): Promise<Homes> {
  const person = async (name: string) =>
    put(sql, "person", { subject: `access:${name}:${randomUUID()}`, display_name: name });
  const household = async (name: string) => {
    const id = randomUUID();
    await sql`insert into household (id, name, time_zone, currency) values (${id}, ${name}, 'Europe/London', 'GBP')`;
    return id;
  };
  const childOf = async (name: string) => put(sql, "child", { name, date_of_birth: "2018-01-01" });
  const [here, there, far] = [await household("Here"), await household("There"), await household("Far")];
  const [shared, ownChild] = [await childOf("Shared"), await childOf("Own")];
  const [otherChild, farChild] = [await childOf("Other"), await childOf("Far")];
  const [admin] = await sql<{ id: string; school: string }[]>`
    select p.id, a.school_id as school from appointment a join person p on p.id = a.person_id where a.school_id is not null limit 1`;
  const people = {
    COORDINATOR: await person("coordinator"),
    COOK: await person("cook"),
    HELPER: await person("helper"),
    OBSERVER: await person("observer"),
    OTHER_HOME: await person("other home"),
    STRANGER: await person("stranger"),
    ADMINISTRATOR: admin!.id,
  };
  const join = (household_id: string, person_id: string, role: string) =>
    put(sql, "membership", { household_id, person_id, role });
  for (const role of ["COORDINATOR", "COOK", "HELPER", "OBSERVER"] as const) await join(here, people[role], role);
  await join(there, people.OTHER_HOME, "COORDINATOR");
  await join(far, people.STRANGER, "COORDINATOR");
  const [place] = await sql<{ id: string; classId: string; ruleSet: string }[]>`
    select s.id, c.id as "classId", r.id as "ruleSet" from school s join school_class c on c.school_id = s.id join rule_set r on r.school_id = s.id
    where s.id = ${admin!.school} order by c.name limit 1`;
  const kitchens = [
    { home: here, who: people.COORDINATOR, tag: "here", children: [ownChild, shared] },
    { home: there, who: people.OTHER_HOME, tag: "there", children: [otherChild, shared] },
    { home: far, who: people.STRANGER, tag: "far", children: [farChild] },
  ];
  for (const { home, who, tag, children } of kitchens) {
    await plantKitchen(sql, home, who, tag);
    const plan = await plantPlan(sql, home);
    for (const child of children)
      await plantChildAt(sql, home, child, plan, who, tag, child === shared && home === there ? "2027-01-12" : DAY);
  }
  for (const { home, child } of [
    { home: here, child: ownChild },
    { home: here, child: shared },
    { home: there, child: otherChild },
    { home: far, child: farChild },
  ])
    await plantChild(sql, home, child, place!);
  const [standard] = await sql<
    { id: string }[]
  >`select id from rule_set where layer = 'JURISDICTION' order by key limit 1`;
  await put(sql, "rule_set_adoption", { school_id: place!.id, rule_set_id: standard!.id });
  await sql`insert into audit_entry (person_id, action, school_id, details) values (${people.ADMINISTRATOR}, 'SCHOOL_CHANGED', ${place!.id}, '{}')`;
  return { here, there, far, shared, ownChild, otherChild, farChild, people, school: place!.id };
}
