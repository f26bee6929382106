/** A household as one tree, by one statement, with the reader's rights. */
import type {
  AllergenCode,
  AllergenGroupCode,
  DietCode,
  EquipmentKind,
  FacilityCode,
  SlotCode,
  WeekdayCode,
  WindowKind,
} from "../../shared/codes.js";
import type { LabelBrief } from "../domain/brief.js";
import type { ReadTx } from "./database.js";

export type RoleCode = "COORDINATOR" | "COOK" | "HELPER" | "OBSERVER";

export interface PersonRow {
  readonly id: string;
  readonly displayName: string;
}
export interface CarerRow {
  readonly person: PersonRow;
  readonly role: RoleCode;
  readonly since: string;
}
export interface PrepTimeRow {
  readonly kind: WindowKind;
  readonly weekday: WeekdayCode;
  readonly startsAt: string;
  readonly handsOnMinutes: number;
  readonly elapsedMinutes: number;
  readonly carers: number;
  readonly effort: number;
}
export interface PrepTimeExceptionRow {
  readonly kind: WindowKind;
  readonly date: string;
  readonly startsAt: string;
  readonly handsOnMinutes: number;
  readonly elapsedMinutes: number;
  readonly carers: number;
}
export interface StockRow {
  readonly food: string;
  readonly grams: number;
}
export interface LeftoverRow {
  readonly id: string;
  readonly base: string;
  readonly grams: number;
  readonly cookedOn: string;
  readonly lastSafeDay: string;
}
export interface FreezerStockRow {
  readonly id: string;
  readonly base: string;
  readonly grams: number;
  readonly frozenOn: string;
  readonly useBy: string;
}
export interface LabelCheckRow {
  readonly food: string;
  readonly contains: readonly AllergenCode[];
  readonly mayContain: readonly AllergenCode[];
  readonly kinds: NonNullable<LabelBrief["kinds"]>;
  readonly readOn: string;
}
export interface BreakRow {
  readonly key: string;
  readonly name: string;
  readonly startsAt: string;
  readonly minutes: number;
  readonly slots: readonly SlotCode[];
  /** Null: the school gives none. */
  readonly energyShare: number | null;
}
export interface SchoolClassRow {
  readonly id: string;
  readonly schoolId: string;
  readonly name: string;
  readonly facility: FacilityCode;
  readonly breaks: readonly BreakRow[];
}
export interface TermRow {
  readonly name: string;
  readonly firstDay: string;
  readonly lastDay: string;
}
export interface SchoolDayRow {
  readonly date: string;
  readonly kind: "HOLIDAY" | "EARLY_FINISH" | "TRIP";
  readonly title: string;
  readonly endsAt: string | null;
  readonly schoolClassId: string | null;
}
export interface SchoolRow {
  readonly id: string;
  readonly name: string;
  readonly timeZone: string;
  readonly jurisdiction: string | null;
  /** Goes up with every change of its days and facilities. */
  readonly revision: number;
  readonly classes: readonly SchoolClassRow[];
  readonly terms: readonly TermRow[];
  readonly days: readonly SchoolDayRow[];
}
export interface EnrolmentRow {
  readonly schoolId: string;
  readonly schoolClassId: string;
  readonly fromDate: string;
  readonly untilDate: string | null;
}
export interface AllergyRow {
  readonly allergen: AllergenCode | AllergenGroupCode | null;
  readonly foodKind: string | null;
  /** The stricter of what the child's homes have recorded. */
  readonly avoid: "TRACES" | "INGREDIENTS";
  /** Whether this household has a record of its own; only that one can be taken back here. */
  readonly recordedHere: boolean;
}
/** Food or milk the school gives a child. */
export interface ProvisionRow {
  readonly food: string;
  readonly grams: number;
  /** Null: every school day. */
  readonly weekday: WeekdayCode | null;
  /** Null: at any break. */
  readonly breakKey: string | null;
}
/** A rule that rests for a child on a clinician's note. */
export interface ExemptionRow {
  readonly id: string;
  readonly ruleSetId: string;
  /** The rule's id in its document. */
  readonly rule: string;
  /** First and last day. */
  readonly from: string;
  readonly until: string;
  /** Of the home that entered it; null for the other. */
  readonly note: { readonly clinician: string; readonly note: string } | null;
}
export interface ChildRow {
  readonly id: string;
  readonly name: string;
  readonly dateOfBirth: string;
  readonly diets: readonly DietCode[];
  readonly dislikes: readonly string[];
  readonly appetite: number;
  readonly activity: "INACTIVE" | "LOW_ACTIVE" | "ACTIVE" | "VERY_ACTIVE";
  readonly minutesToEat: number;
  readonly revision: number;
  readonly allergies: readonly AllergyRow[];
  readonly enrolments: readonly EnrolmentRow[];
  readonly schoolMealDays: readonly WeekdayCode[];
  readonly provisions: readonly ProvisionRow[];
  /** In the order in which they begin. */
  readonly exemptions: readonly ExemptionRow[];
  /** Of this household only; null where it never entered one. */
  readonly body: {
    readonly sex: "FEMALE" | "MALE" | null;
    readonly weightKg: number | null;
    readonly heightCm: number | null;
  } | null;
  readonly boxKit: {
    readonly compartments: readonly { readonly ml: number; readonly leakProof: boolean }[];
    readonly coldSources: number;
    readonly insulated: boolean;
    readonly flask: boolean;
  } | null;
  readonly leaveTimes: readonly { readonly weekday: WeekdayCode; readonly leaveAt: string }[];
}
export interface HouseholdRow {
  readonly id: string;
  readonly name: string;
  readonly timeZone: string;
  readonly weekStart: WeekdayCode;
  readonly unitSystem: "METRIC" | "US_CUSTOMARY";
  readonly currency: string;
  readonly energyMethod: "NASEM_2023" | "IOM_2005";
  readonly keepsOut: readonly (AllergenCode | AllergenGroupCode)[];
  readonly refrigeratorMl: number;
  readonly freezerMl: number;
  readonly revision: number;
  readonly myRole: RoleCode;
  readonly carers: readonly CarerRow[];
  readonly children: readonly ChildRow[];
  readonly equipment: readonly { readonly kind: EquipmentKind; readonly units: number }[];
  readonly prepTimes: readonly PrepTimeRow[];
  readonly prepTimeExceptions: readonly PrepTimeExceptionRow[];
  /** In date order. */
  readonly hotDays: readonly string[];
  readonly stock: readonly StockRow[];
  readonly leftovers: readonly LeftoverRow[];
  readonly freezerStock: readonly FreezerStockRow[];
  readonly labelChecks: readonly LabelCheckRow[];
  /** Every school a child of the household is enrolled in. */
  readonly schools: readonly SchoolRow[];
}

/** Null: no such household, or not one of the reader's. `child` and `household` name the tables the fragments correlate with. */
export async function readHousehold(tx: ReadTx, id: string): Promise<HouseholdRow | null> {
  const [row] = await tx<{ tree: HouseholdRow }[]>`
    select json_build_object(
      'id', h.id, 'name', h.name, 'timeZone', h.time_zone, 'weekStart', h.week_start, 'unitSystem', h.unit_system, 'currency', h.currency, 'energyMethod', h.energy_method,
      'keepsOut', h.keeps_out, 'refrigeratorMl', h.refrigerator_ml, 'freezerMl', h.freezer_ml, 'revision', h.revision,
      'myRole', (select m.role from membership m where m.household_id = h.id and m.person_id = app_person_id()),
      'carers', (select coalesce(json_agg(json_build_object('person', json_build_object('id', p.id, 'displayName', p.display_name), 'role', m.role, 'since', m.since) order by m.since, p.display_name), '[]')
        from membership m join person p on p.id = m.person_id where m.household_id = h.id),
      'children', (select coalesce(json_agg(json_build_object(
          'id', c.id, 'name', c.name, 'dateOfBirth', c.date_of_birth, 'diets', c.diets, 'dislikes', c.dislikes, 'appetite', c.appetite,
          'activity', c.activity, 'minutesToEat', c.minutes_to_eat, 'revision', c.revision,
          'allergies', (select coalesce(json_agg(json_build_object('allergen', a.allergen, 'foodKind', a.food_kind, 'avoid', a.avoid, 'recordedHere', a.here) order by a.allergen, a.food_kind), '[]')
            from (select y.allergen, y.food_kind, case when bool_or(y.avoid = 'TRACES') then 'TRACES' else 'INGREDIENTS' end as avoid,
                bool_or(coalesce(y.recorded_by_household_id, h.id) = h.id) as here
              from allergy y where y.child_id = c.id group by y.allergen, y.food_kind) a),
          'enrolments', (select coalesce(json_agg(json_build_object('schoolId', e.school_id, 'schoolClassId', e.school_class_id, 'fromDate', e.from_date, 'untilDate', e.until_date) order by e.from_date), '[]') from enrolment e where e.child_id = c.id),
          'schoolMealDays', (select coalesce(json_agg(s.weekday order by s.weekday), '[]') from school_meal_day s where s.child_id = c.id),
          'provisions', (select coalesce(json_agg(json_build_object('food', f.key, 'grams', p.grams, 'weekday', p.weekday, 'breakKey', p.break_key) order by f.key, p.weekday, p.break_key), '[]')
            from school_provision p join food f on f.id = p.food_id where p.child_id = c.id),
          'exemptions', (select coalesce(json_agg(json_build_object('id', x.id, 'ruleSetId', x.rule_set_id, 'rule', x.rule_key, 'from', x.from_date, 'until', x.until_date,
              'note', (select json_build_object('clinician', n.clinician, 'note', n.note) from exemption_note n where n.exemption_id = x.id and n.household_id = h.id)) order by x.from_date, x.id), '[]')
            from exemption x where x.child_id = c.id),
          'body', (select json_build_object('sex', b.sex, 'weightKg', b.weight_kg, 'heightCm', b.height_cm) from child_body b where b.child_id = c.id and b.household_id = h.id),
          'boxKit', (select json_build_object('compartments', k.compartments, 'coldSources', k.cold_sources, 'insulated', k.insulated, 'flask', k.flask) from box_kit k where k.child_id = c.id and k.household_id = h.id),
          'leaveTimes', (select coalesce(json_agg(json_build_object('weekday', l.weekday, 'leaveAt', l.leave_at)), '[]') from leave_time l where l.child_id = c.id and l.household_id = h.id)
        ) order by c.date_of_birth desc, c.id), '[]')
        from child c join residence r on r.child_id = c.id where r.household_id = h.id),
      'equipment', (select coalesce(json_agg(json_build_object('kind', e.kind, 'units', e.units) order by e.kind), '[]') from equipment e where e.household_id = h.id),
      'prepTimes', (select coalesce(json_agg(json_build_object('kind', t.kind, 'weekday', t.weekday, 'startsAt', t.starts_at, 'handsOnMinutes', t.hands_on_minutes, 'elapsedMinutes', t.elapsed_minutes, 'carers', t.carers, 'effort', t.effort) order by t.kind, t.weekday), '[]') from prep_time t where t.household_id = h.id),
      'prepTimeExceptions', (select coalesce(json_agg(json_build_object('kind', t.kind, 'date', t.date, 'startsAt', t.starts_at, 'handsOnMinutes', t.hands_on_minutes, 'elapsedMinutes', t.elapsed_minutes, 'carers', t.carers) order by t.date), '[]') from prep_time_exception t where t.household_id = h.id),
      'hotDays', (select coalesce(json_agg(d.date order by d.date), '[]') from hot_day d where d.household_id = h.id),
      'stock', (select coalesce(json_agg(json_build_object('food', e.key, 'grams', e.grams) order by e.key), '[]') from (
          select f.key, s.grams from stock s join food f on f.id = s.food_id where s.household_id = h.id
          union all select f.key, s.stock_grams from own_food_shelf s join own_food f on f.id = s.own_food_id
            where s.household_id = h.id and s.stock_grams > 0 and not f.removed) e),
      'leftovers', (select coalesce(json_agg(json_build_object('id', l.id, 'base', b.key, 'grams', l.grams, 'cookedOn', l.cooked_on, 'lastSafeDay', l.last_safe_day) order by l.cooked_on, b.key), '[]') from leftover l join base b on b.id = l.base_id where l.household_id = h.id),
      'freezerStock', (select coalesce(json_agg(json_build_object('id', l.id, 'base', b.key, 'grams', l.grams, 'frozenOn', l.frozen_on, 'useBy', l.use_by) order by l.use_by, b.key), '[]') from freezer_stock l join base b on b.id = l.base_id where l.household_id = h.id),
      'labelChecks', (select coalesce(json_agg(json_build_object('food', e.key, 'contains', e.contains, 'mayContain', e.may_contain, 'kinds', e.kinds, 'readOn', e.read_on) order by e.key), '[]') from (
          select f.key, l.contains, l.may_contain, l.kinds, l.read_on from label_check l join food f on f.id = l.food_id where l.household_id = h.id
          union all select f.key, l.contains, l.may_contain, l.kinds, l.read_on from own_food_label l join own_food f on f.id = l.own_food_id
            where l.household_id = h.id and not f.removed) e),
      'schools', (select coalesce(json_agg(${schoolTree(tx)} order by s.name), '[]') from school s
        where s.id in (select e.school_id from enrolment e join residence r on r.child_id = e.child_id where r.household_id = h.id))
    ) as tree
    from household h where h.id = ${id}`;
  return row?.tree ?? null;
}

/** SQL for one school `s` with classes, breaks, terms and days. */
export const schoolTree = (tx: ReadTx) => tx`json_build_object(
  'id', s.id, 'name', s.name, 'timeZone', s.time_zone, 'jurisdiction', s.jurisdiction, 'revision', s.revision,
  'classes', (select coalesce(json_agg(json_build_object('id', k.id, 'schoolId', k.school_id, 'name', k.name, 'facility', k.facility,
      'breaks', (select coalesce(json_agg(json_build_object('key', b.key, 'name', b.name, 'startsAt', b.starts_at, 'minutes', b.minutes, 'slots', b.slots, 'energyShare', b.energy_share) order by b.starts_at), '[]') from class_break b where b.school_class_id = k.id)
    ) order by k.name), '[]') from school_class k where k.school_id = s.id),
  'terms', (select coalesce(json_agg(json_build_object('name', t.name, 'firstDay', t.first_day, 'lastDay', t.last_day) order by t.first_day), '[]') from school_term t where t.school_id = s.id),
  'days', (select coalesce(json_agg(json_build_object('date', d.date, 'kind', d.kind, 'title', d.title, 'endsAt', d.ends_at, 'schoolClassId', d.school_class_id) order by d.date), '[]') from school_day d where d.school_id = s.id)
)`;

/** The person of the token with the IDs of their households and of the schools they administer. */
export async function readMe(
  tx: ReadTx,
): Promise<{ id: string; displayName: string; householdIds: string[]; schoolIds: string[] } | null> {
  const [row] = await tx<{ tree: { id: string; displayName: string; householdIds: string[]; schoolIds: string[] } }[]>`
    select json_build_object('id', p.id, 'displayName', p.display_name,
      'householdIds', (select coalesce(json_agg(m.household_id order by m.since, m.household_id), '[]') from membership m where m.person_id = p.id),
      'schoolIds', (select coalesce(json_agg(s), '[]') from app_appointed_school_ids() s)) as tree
    from person p where p.id = app_person_id()`;
  return row?.tree ?? null;
}
