/** Schools and the rule sets that hold there. */
import type { RuleSetDocument } from "../../shared/rule-set.js";
import type { ReadTx } from "./database.js";
import { schoolTree, type PersonRow, type SchoolRow } from "./household.js";

export interface RuleSetRow {
  readonly id: string;
  readonly confirmed: boolean;
  readonly schoolId: string | null;
  readonly schoolClassId: string | null;
  readonly childId: string | null;
  /** A family's copy only: the school whose rules it writes down. */
  readonly copyOfId: string | null;
  /** Jurisdiction sets only: schools that adopted it, and the jurisdiction where it covers food from home by itself. */
  readonly adoptedBy: readonly string[];
  readonly jurisdiction: string | null;
  /** The document as it was loaded, rules in order. */
  readonly document: RuleSetDocument;
}

/** SQL for the document of one version `v` of rule set `r`. */
export const documentTree = (tx: ReadTx) => tx`json_strip_nulls(json_build_object(
  'format', 'noonpail-rule-set/1', 'key', r.key, 'title', v.title, 'layer', r.layer, 'jurisdiction', r.jurisdiction,
  'coversFoodFromHome', v.covers_food_from_home, 'language', v.language, 'version', v.version,
  'inForceFrom', v.in_force_from, 'inForceUntil', v.in_force_until, 'ages', v.ages, 'withdrawn', case when v.withdrawn then true end,
  'rules', (select coalesce(json_agg(u.body order by u.place), '[]') from rule u where u.rule_set_version_id = v.id)))`;

/** SQL for one row per version `v` of rule sets `r`, before a condition on them. */
const ruleSetVersions = (tx: ReadTx) => tx`
    select json_build_object('id', r.id, 'confirmed', r.confirmed, 'schoolId', coalesce(r.school_id, k.school_id), 'schoolClassId', r.school_class_id,
      'childId', r.child_id, 'copyOfId', r.copy_of_id, 'jurisdiction', r.jurisdiction,
      'adoptedBy', (select coalesce(json_agg(a.school_id), '[]') from rule_set_adoption a where a.rule_set_id = r.id), 'document', ${documentTree(tx)}) as tree
    from rule_set r join rule_set_version v on v.rule_set_id = r.id
    left join school_class k on k.id = r.school_class_id`;

/** The newest version of one rule set; null when there is none or it is another family's own. */
export async function readRuleSet(tx: ReadTx, id: string): Promise<RuleSetRow | null> {
  const [row] = await tx<
    { tree: RuleSetRow }[]
  >`${ruleSetVersions(tx)} where r.id = ${id} order by v.version desc limit 1`;
  return row?.tree ?? null;
}

/** The newest version of each rule set of a jurisdiction, by key. */
export async function readRuleSetsOfJurisdiction(tx: ReadTx, jurisdiction: string): Promise<RuleSetRow[]> {
  const rows = await tx<{ tree: RuleSetRow }[]>`${ruleSetVersions(tx)} where r.jurisdiction = ${jurisdiction}
    and v.version = (select max(n.version) from rule_set_version n where n.rule_set_id = r.id) order by r.key`;
  return rows.map((row) => row.tree);
}

/** Every version of a rule set as it was loaded, oldest first. */
export async function readVersions(tx: ReadTx, id: string): Promise<RuleSetDocument[]> {
  const rows = await tx<{ tree: RuleSetRow }[]>`${ruleSetVersions(tx)} where r.id = ${id} order by v.version`;
  return rows.map((row) => row.tree.document);
}

/** The newest version of each rule set; rows come oldest version first. */
export const newestOf = (rows: readonly RuleSetRow[]): RuleSetRow[] => [
  ...new Map(rows.map((row) => [row.id, row])).values(),
];

/** The school that a class belongs to; null when there is no such class. */
export async function findSchoolOfClass(tx: ReadTx, classId: string): Promise<string | null> {
  const [row] = await tx<
    { schoolId: string }[]
  >`select school_id as "schoolId" from school_class where id = ${classId}`;
  return row?.schoolId ?? null;
}

export async function findSchoolByName(tx: ReadTx, name: string): Promise<string | null> {
  const [row] = await tx<{ id: string }[]>`select id from school where name = ${name}`;
  return row?.id ?? null;
}

export async function readSchools(tx: ReadTx, ids: readonly string[]): Promise<SchoolRow[]> {
  const rows = await tx<
    { tree: SchoolRow }[]
  >`select ${schoolTree(tx)} as tree from school s where s.id in ${tx(ids as string[])} order by s.name`;
  return rows.map((row) => row.tree);
}

/** A page of schools by name, after the name given. */
export async function readSchoolPage(tx: ReadTx, first: number, afterName: string | null): Promise<SchoolRow[]> {
  const rows = await tx<{ tree: SchoolRow }[]>`select ${schoolTree(tx)} as tree from school s
    where ${afterName === null ? tx`true` : tx`s.name > ${afterName}`} order by s.name limit ${first}`;
  return rows.map((row) => row.tree);
}

/**
 * Every version of every rule set that can hold for these schools and children: the schools' own, their classes', adopted
 * jurisdiction sets and those of the school's jurisdiction of which any version covers food from home, and the children's own.
 */
export async function readRuleSets(
  tx: ReadTx,
  schoolIds: readonly string[],
  childIds: readonly string[],
): Promise<RuleSetRow[]> {
  const rows = await tx<{ tree: RuleSetRow }[]>`
    ${ruleSetVersions(tx)}
    where r.school_id = any(${schoolIds as string[]}::uuid[]) or k.school_id = any(${schoolIds as string[]}::uuid[]) or r.child_id = any(${childIds as string[]}::uuid[])
      or r.id in (select a.rule_set_id from rule_set_adoption a where a.school_id = any(${schoolIds as string[]}::uuid[]))
      or (r.jurisdiction in (select s.jurisdiction from school s where s.id = any(${schoolIds as string[]}::uuid[]))
        and exists (select from rule_set_version h where h.rule_set_id = r.id and h.covers_food_from_home))
    order by case r.layer when 'JURISDICTION' then 1 when 'SCHOOL' then 2 when 'CLASS' then 3 else 4 end, r.key, v.version`;
  return rows.map((row) => row.tree);
}

export interface AppointmentRow {
  readonly person: PersonRow;
  /** One of the two is null. */
  readonly schoolId: string | null;
  readonly jurisdiction: string | null;
  readonly since: string;
}

/** Of a school, its jurisdiction's included, or of a jurisdiction; empty for whoever does not administer it. */
export async function readAppointments(
  tx: ReadTx,
  of: { readonly schoolId: string } | { readonly jurisdiction: string },
): Promise<AppointmentRow[]> {
  const [schoolId, jurisdiction] = "schoolId" in of ? [of.schoolId, null] : [null, of.jurisdiction];
  const rows = await tx<{ tree: AppointmentRow }[]>`
    select json_build_object('person', json_build_object('id', a.person_id, 'displayName', a.display_name), 'schoolId', a.school_id,
      'jurisdiction', a.jurisdiction, 'since', a.since) as tree from app_appointments(${schoolId}::uuid, ${jurisdiction}::text) a`;
  return rows.map((row) => row.tree);
}

/** The reader's own. */
export async function readOwnAppointments(tx: ReadTx): Promise<AppointmentRow[]> {
  const rows = await tx<{ tree: AppointmentRow }[]>`
    select json_build_object('person', json_build_object('id', p.id, 'displayName', p.display_name), 'schoolId', a.school_id,
      'jurisdiction', a.jurisdiction, 'since', a.since) as tree
    from appointment a join person p on p.id = a.person_id where a.person_id = app_person_id() order by a.since, a.id`;
  return rows.map((row) => row.tree);
}

export interface AuditRow {
  readonly id: string;
  /** RFC 3339. */
  readonly at: string;
  readonly action: string;
  /** Null: the operator, or somebody who is gone. */
  readonly person: PersonRow | null;
  /** Who was appointed or dismissed. */
  readonly about: PersonRow | null;
  readonly schoolId: string | null;
  readonly jurisdiction: string | null;
  readonly details: Readonly<Record<string, unknown>>;
}

/** A page of what was done, the newest first; empty for whoever does not administer it. */
export async function readAudit(
  tx: ReadTx,
  of: { readonly schoolId: string } | { readonly jurisdiction: string },
  first: number,
  after: { readonly at: string; readonly id: string } | null,
): Promise<AuditRow[]> {
  const [schoolId, jurisdiction] = "schoolId" in of ? [of.schoolId, null] : [null, of.jurisdiction];
  const rows = await tx<{ tree: AuditRow }[]>`
    select json_build_object('id', e.id, 'at', e.at, 'action', e.action,
      'person', case when e.person_id is not null then json_build_object('id', e.person_id, 'displayName', e.person_name) end,
      'about', case when e.about_id is not null then json_build_object('id', e.about_id, 'displayName', e.about_name) end,
      'schoolId', e.school_id, 'jurisdiction', e.jurisdiction, 'details', e.details) as tree
    from app_audit(${schoolId}::uuid, ${jurisdiction}::text, ${after?.at ?? null}::timestamptz, ${after?.id ?? null}::uuid, ${first}) e`;
  return rows.map((row) => row.tree);
}
