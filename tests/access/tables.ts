/**
 * Who may do what to which rows, written by hand and from the domain's wall, not from the policies. One line per table; a table or
 * a kind of row that is not here fails the matrix. Four letters, for reading, adding, changing and removing: the least role that
 * may (O observer, H helper, K cook, C coordinator, A administrator of the school, * everybody signed in, + anybody, - nobody).
 *
 * The server's role is what is asked. What is "-" for it can still happen through a function that checks for itself, such as
 * founding a household; those are asked in `functions.ts`.
 */

/**
 * OWN: this home, and children who live here only. SHARED: of a child of two homes, this home's rows and those of no home. ACROSS:
 * the other home's rows about that child. OTHER: the other home's own business. FOREIGN: another family. SCHOOL: of the school that
 * the administrator was appointed to. PUBLIC: of no family.
 */
export const scopes = ["OWN", "SHARED", "ACROSS", "OTHER", "FOREIGN", "SCHOOL", "PUBLIC"] as const;
export type Scope = (typeof scopes)[number];

export interface TableRule {
  /** SQL for the household of a row `t`, where it is not the column household_id. */
  readonly home?: string;
  /** SQL for the child of a row `t`, where it is not the column child_id. */
  readonly child?: string;
  /** SQL for the school of a row `t`, where it is not the column school_id. */
  readonly school?: string;
  /** SQL condition for the rows that are asked about, where it is not all. */
  readonly where?: string;
  readonly may: Readonly<Partial<Record<Scope, string>>>;
}

const BOX_HOME = "(select p.household_id from week_plan p join lunch_box l on l.week_plan_id = p.id where l.id = ";

/** A kitchen's rows: its carers', whoever the child is. */
const kitchen = (may: string): TableRule => ({ may: { OWN: may } });
/** A kitchen's rows about a child: behind the wall, though the child lives in both. */
const kitchenOfChild = (may: string): TableRule => ({ may: { OWN: may, SHARED: may } });
/** Known in every home of the child, and each home's carers may change it. */
const child = (may: string): TableRule => ({ may: { OWN: may, SHARED: may } });
const asSchool = (may: string, reads = "*"): TableRule => ({ may: { SCHOOL: may, PUBLIC: `${reads} - - -` } });
const ofPerson =
  "(select m.household_id from membership m where m.person_id = t.person_id order by m.since, m.household_id limit 1)";

export const tables: Readonly<Record<string, TableRule>> = {
  // Reference data: everybody reads, the owner writes.
  base: { may: { PUBLIC: "+ - - -" } },
  base_ingredient: { may: { PUBLIC: "+ - - -" } },
  dish: { may: { PUBLIC: "+ - - -" } },
  dish_base: { may: { PUBLIC: "+ - - -" } },
  dish_ingredient: { may: { PUBLIC: "+ - - -" } },
  dish_step: { may: { PUBLIC: "+ - - -" } },
  food: { may: { PUBLIC: "+ - - -" } },
  reference_table: { may: { PUBLIC: "+ - - -" } },

  // A kitchen and its business.
  household: { home: "t.id", may: { OWN: "O - H -" } },
  equipment: kitchen("O H H H"),
  prep_time: kitchen("O H H H"),
  prep_time_exception: kitchen("O H H H"),
  hot_day: kitchen("O H - H"),
  stock: kitchen("O H H H"),
  leftover: kitchen("O H H H"),
  freezer_stock: kitchen("O H H H"),
  label_check: kitchen("O H H H"),
  kitchen_disruption: kitchen("O H - H"),
  relaxation: kitchen("O H - H"),
  week: kitchen("O H H -"),
  week_plan: kitchen("O H H -"),
  plan_certificate: kitchen("O H - H"),
  batch: kitchen("O H H -"),
  task: kitchen("O H H -"),
  shopping_line: kitchen("O H H -"),
  own_food_shelf: kitchen("O H H -"),
  own_food_label: kitchen("O H H H"),
  own_dish_work: kitchen("O H H -"),
  box_kit: kitchenOfChild("O H H H"),
  child_body: kitchenOfChild("O H H H"),
  leave_time: kitchenOfChild("O H H H"),
  pin: kitchenOfChild("O H H H"),
  // Who was invited to care for a child is the inviting home's business.
  invitation: kitchenOfChild("O C C -"),
  box_packing: {
    home: `${BOX_HOME}t.lunch_box_id)`,
    child: "(select l.child_id from lunch_box l where l.id = t.lunch_box_id)",
    may: { OWN: "O H H -", SHARED: "O H H -" },
  },
  box_item_note: {
    child: "(select i.child_id from box_item i where i.id = t.box_item_id)",
    may: { OWN: "O H - -", SHARED: "O H - -" },
  },
  box_block_note: {
    child: "(select k.child_id from box_block k where k.id = t.box_block_id)",
    may: { OWN: "O H - -", SHARED: "O H - -" },
  },
  exemption_note: {
    child: "(select e.child_id from exemption e where e.id = t.exemption_id)",
    may: { OWN: "O H - -", SHARED: "O H - -" },
  },
  // What a child of this home eats out of the other home's kitchen is seen; how it is made, what it costs and the rest are not.
  own_dish: {
    child: "(select i.child_id from box_item i where i.dish_key = t.key order by i.child_id = '$shared' desc limit 1)",
    may: { OWN: "O H H -", SHARED: "O H H -", ACROSS: "O - - -" },
  },
  own_dish_food: {
    child:
      "(select i.child_id from box_item i join own_dish d on d.key = i.dish_key where d.id = t.own_dish_id order by i.child_id = '$shared' desc limit 1)",
    may: { OWN: "O H - H", SHARED: "O H - H", ACROSS: "O - - -" },
  },
  own_food: {
    child:
      "(select i.child_id from box_item i join own_dish d on d.key = i.dish_key join own_dish_food f on f.own_dish_id = d.id where f.own_food_id = t.id order by i.child_id = '$shared' desc limit 1)",
    may: { OWN: "O H H -", SHARED: "O H H -", ACROSS: "O - - -" },
  },

  // Children: seen from each home of theirs.
  child: { child: "t.id", may: { OWN: "O - H -", SHARED: "O - H -" } },
  // Neither home can loosen what the other has recorded.
  allergy: { home: "t.recorded_by_household_id", may: { OWN: "O H H H", SHARED: "O H H H", ACROSS: "O - - -" } },
  child_disruption: child("O H - H"),
  enrolment: child("O H H -"),
  exemption: child("O H H H"),
  school_meal_day: child("O H - H"),
  school_provision: child("O H - H"),
  residence: { may: { OWN: "O - - -", SHARED: "O - - -", ACROSS: "O - - -" } },
  // Proposed by coordinators in their own home's name, answered by the other's; a row that stays as it is answers nothing.
  residence_pattern: {
    home: "t.proposed_by_household_id",
    may: { OWN: "O C - -", SHARED: "O C - -", ACROSS: "O - - -" },
  },
  residence_exception: {
    home: "t.proposed_by_household_id",
    may: { OWN: "O C - -", SHARED: "O C - -", ACROSS: "O - - -" },
  },
  // Either home says what came back and writes the note.
  box_return: child("O H H -"),
  handover: child("O H H -"),
  lunch_box: { home: `${BOX_HOME}t.id)`, may: { OWN: "O H H -", SHARED: "O H H -", ACROSS: "O - - -" } },
  box_item: { home: `${BOX_HOME}t.lunch_box_id)`, may: { OWN: "O H - -", SHARED: "O H - -", ACROSS: "O - - -" } },
  box_block: { home: `${BOX_HOME}t.lunch_box_id)`, may: { OWN: "O H - H", SHARED: "O H - H", ACROSS: "O - - -" } },

  // The log: read by the household, written by the database itself. Entries about a shared child are each home's own.
  change: { child: "null::uuid", may: { OWN: "O - - -" } },
  change_count: kitchen("O - - -"),
  change_detail: kitchen("O - - -"),

  // People.
  person: {
    home: "(select m.household_id from membership m where m.person_id = t.id order by m.since, m.household_id limit 1)",
    where: "t.id in ($coordinators)",
    may: { OWN: "O - C -" },
  },
  membership: kitchen("O - - -"),
  // An address is its carer's alone, whatever their role.
  feed_address: { home: "t.household_id", where: "t.person_id in ($coordinators)", may: { OWN: "C C C C" } },
  feed_event: { home: "t.household_id", where: "t.person_id in ($coordinators)", may: { OWN: "C C C C" } },
  confirmation: { home: ofPerson, where: "t.person_id in ($coordinators)", may: { OWN: "C C - C" } },
  idempotency_key: { home: ofPerson, where: "t.person_id in ($coordinators)", may: { OWN: "C C C -" } },

  // Schools: everybody signed in reads, who was appointed writes; members, schools and appointments by functions only.
  school: { school: "t.id", may: { SCHOOL: "* - A -", PUBLIC: "* - - -" } },
  school_class: asSchool("* A A -"),
  class_break: {
    school: "(select c.school_id from school_class c where c.id = t.school_class_id)",
    may: { SCHOOL: "* A A A", PUBLIC: "* - - -" },
  },
  school_term: asSchool("* A A A"),
  school_day: asSchool("* A A A"),
  rule_set_adoption: asSchool("* A - A"),
  appointment: { where: "t.school_id is not null", may: { SCHOOL: "A - - -" } },
  audit_entry: { may: { SCHOOL: "A A - -" } },
  rule_set: {
    school: "coalesce(t.school_id, (select c.school_id from school_class c where c.id = t.school_class_id))",
    may: { OWN: "O H H -", SHARED: "O H H -", SCHOOL: "* A A -", PUBLIC: "* - - -" },
  },
  rule_set_version: {
    child: "(select s.child_id from rule_set s where s.id = t.rule_set_id)",
    school:
      "(select coalesce(s.school_id, (select c.school_id from school_class c where c.id = s.school_class_id)) from rule_set s where s.id = t.rule_set_id)",
    may: { OWN: "O H H -", SHARED: "O H H -", SCHOOL: "* A A -", PUBLIC: "* - - -" },
  },
  rule: {
    child:
      "(select s.child_id from rule_set s join rule_set_version v on v.rule_set_id = s.id where v.id = t.rule_set_version_id)",
    school:
      "(select coalesce(s.school_id, (select c.school_id from school_class c where c.id = s.school_class_id)) from rule_set s join rule_set_version v on v.rule_set_id = s.id where v.id = t.rule_set_version_id)",
    may: { OWN: "O H - -", SHARED: "O H - -", SCHOOL: "* A - -", PUBLIC: "* - - -" },
  },
};

/** The migrations' own bookkeeping, of which the server's role has no part. */
export const bookkeeping = ["_prisma_migrations"];

/**
 * What the other home can read of a child's rows, column by column: rows are hidden by policies, columns by lying in another table.
 * A column that moves into one of these tables crosses the wall, so each is named by hand.
 */
export const acrossTheWall: Readonly<Record<string, string>> = {
  child: "id name date_of_birth diets dislikes appetite activity minutes_to_eat revision",
  allergy: "id child_id allergen food_kind avoid recorded_by_household_id",
  child_disruption: "id child_id kind date until ends_at reason reported_at",
  enrolment: "id child_id school_id school_class_id from_date until_date",
  exemption: "id child_id rule_set_id rule_key from_date until_date",
  school_meal_day: "id child_id weekday",
  school_provision: "id child_id weekday break_key food_id grams",
  residence: "id child_id household_id since",
  residence_pattern: "id child_id kind starts ends cycle state proposed_by_household_id proposed_at answered_at",
  residence_exception: "id change_id child_id date household_id state proposed_by_household_id proposed_at answered_at",
  box_return: "id child_id date break_key slot place dish_key came_back reported_at",
  handover:
    "id child_id week_start repeat avoid note box_place box_home_id ice_packs_place ice_packs_home_id flask_place flask_home_id revision",
  lunch_box: "id week_plan_id child_id date state packed_at current",
  box_item:
    "id lunch_box_id child_id break_key slot place dish_key grams pieces served energy_kcal carbohydrate_grams cuts allergens holding_case",
  box_block: "id lunch_box_id child_id place kind dish_key allergen diet rule_set rule says",
  own_dish: "id household_id key body removed",
  own_dish_food: "id own_dish_id own_food_id household_id",
  own_food: "id household_id key body removed",
  rule_set: "id key layer school_id school_class_id child_id jurisdiction confirmed copy_of_id",
  rule_set_version:
    "id rule_set_id version title language covers_food_from_home in_force_from in_force_until loaded_at ages digest withdrawn",
  rule: "id rule_set_version_id place rule_key kind level says source body",
};
