/** What a rule set document is held against: who it is for, its versions, and the other rule sets that hold there. */
import type { RuleSetDocument } from "../../shared/rule-set.js";
import type { ReadTx } from "./database.js";
import { documentTree, newestOf, readRuleSets, type RuleSetRow } from "./school.js";

export type RuleOwner =
  | { readonly layer: "JURISDICTION"; readonly jurisdiction: string }
  | { readonly layer: "SCHOOL"; readonly schoolId: string }
  | { readonly layer: "CLASS"; readonly schoolId: string; readonly schoolClassId: string }
  | {
      readonly layer: "CHILD";
      readonly childId: string;
      /** The school whose rules it writes down until the school does. */
      readonly copyOfId: string | null;
    };

interface OwnerRow {
  readonly id: string;
  readonly layer: RuleOwner["layer"];
  readonly jurisdiction: string | null;
  readonly schoolId: string | null;
  readonly schoolClassId: string | null;
  readonly childId: string | null;
  readonly copyOfId: string | null;
  readonly timeZone: string | null;
  readonly documents: readonly RuleSetDocument[];
}

const ownerOf = (row: OwnerRow): RuleOwner => {
  switch (row.layer) {
    case "JURISDICTION":
      return { layer: row.layer, jurisdiction: row.jurisdiction! };
    case "SCHOOL":
      return { layer: row.layer, schoolId: row.schoolId! };
    case "CLASS":
      return { layer: row.layer, schoolId: row.schoolId!, schoolClassId: row.schoolClassId! };
    case "CHILD":
      return { layer: row.layer, childId: row.childId!, copyOfId: row.copyOfId };
  }
};

/** Where no school says what day it is. */
const NO_ZONE = "UTC";

/** SQL for one row per rule set `r`, before a condition on it. */
const withVersions = (tx: ReadTx) => tx`
  select r.id, r.layer, r.jurisdiction, coalesce(r.school_id, k.school_id) as "schoolId", r.school_class_id as "schoolClassId",
    r.child_id as "childId", r.copy_of_id as "copyOfId", s.time_zone as "timeZone",
    (select coalesce(json_agg(${documentTree(tx)} order by v.version), '[]') from rule_set_version v where v.rule_set_id = r.id) as documents
  from rule_set r left join school_class k on k.id = r.school_class_id left join school s on s.id = coalesce(r.school_id, k.school_id)`;

/** One rule set with its newest version; null when there is none or it is another family's own. */
export async function readRuleSetById(
  tx: ReadTx,
  id: string,
): Promise<{ owner: RuleOwner; newest: RuleSetDocument; timeZone: string } | null> {
  const [row] = await tx<OwnerRow[]>`${withVersions(tx)} where r.id = ${id}`;
  const newest = row?.documents.at(-1);
  return row && newest ? { owner: ownerOf(row), newest, timeZone: row.timeZone ?? NO_ZONE } : null;
}

const ofOwner = (tx: ReadTx, owner: RuleOwner) => {
  switch (owner.layer) {
    case "JURISDICTION":
      return tx`r.jurisdiction = ${owner.jurisdiction}`;
    case "SCHOOL":
      return tx`r.school_id = ${owner.schoolId}`;
    case "CLASS":
      return tx`r.school_class_id = ${owner.schoolClassId}`;
    case "CHILD":
      return tx`r.child_id = ${owner.childId}`;
  }
};

interface PlaceRow {
  readonly name: string;
  readonly timeZone: string;
  readonly jurisdiction: string | null;
  readonly classes: readonly { readonly id: string; readonly name: string; readonly breakKeys: readonly string[] }[];
}

/**
 * @param key of the document; null where it cannot be read
 * @returns the place without today, which is the caller's to say
 */
export async function readRulePlace(tx: ReadTx, owner: RuleOwner, key: string | null) {
  const [known] =
    key === null ? [] : await tx<OwnerRow[]>`${withVersions(tx)} where r.key = ${key} and ${ofOwner(tx, owner)}`;
  const versions = known?.documents ?? [];
  const ruleSetId = known?.id ?? null;
  if (owner.layer === "JURISDICTION")
    return {
      ruleSetId,
      timeZone: NO_ZONE,
      place: {
        layer: owner.layer,
        jurisdiction: owner.jurisdiction,
        school: null,
        schoolClass: null,
        classes: [],
        versions,
      },
    };
  const schoolId = owner.layer === "CHILD" ? owner.copyOfId : owner.schoolId;
  const [school] =
    schoolId === null
      ? []
      : await tx<PlaceRow[]>`
    select s.name, s.time_zone as "timeZone", s.jurisdiction,
      (select coalesce(json_agg(json_build_object('id', k.id, 'name', k.name,
        'breakKeys', (select coalesce(json_agg(b.key order by b.starts_at), '[]') from class_break b where b.school_class_id = k.id)) order by k.name), '[]')
        from school_class k where k.school_id = s.id) as classes
    from school s where s.id = ${schoolId}`;
  const others =
    schoolId === null ? [] : newestOf(await readRuleSets(tx, [schoolId], [])).filter(({ id }) => id !== ruleSetId);
  const classes = (school?.classes ?? []).filter(({ id }) => owner.layer !== "CLASS" || id === owner.schoolClassId);
  const holdsIn = (row: RuleSetRow, classId: string | null) =>
    row.schoolClassId === null || row.schoolClassId === classId;
  return {
    ruleSetId,
    timeZone: school?.timeZone ?? NO_ZONE,
    place: {
      layer: owner.layer,
      jurisdiction: owner.layer === "CHILD" ? null : (school?.jurisdiction ?? null),
      school: owner.layer === "CHILD" ? null : (school?.name ?? null),
      schoolClass: owner.layer === "CLASS" ? (classes[0]?.name ?? null) : null,
      // A school without classes yet has rules all the same.
      classes: (classes.length > 0 ? classes : [{ id: null, breakKeys: [] }]).map(({ id, breakKeys }) => ({
        breakKeys,
        others: others.filter((row) => holdsIn(row, id)).map(({ document }) => document),
      })),
      versions,
    },
  };
}

/** Schools a rule set is or would be for, of those that the reader administers. */
export async function readSchoolsUnder(tx: ReadTx, owner: RuleOwner, ruleSetId: string | null): Promise<string[]> {
  if (owner.layer === "CHILD") return [];
  if (owner.layer !== "JURISDICTION") return [owner.schoolId];
  const rows = await tx<{ id: string }[]>`
    select s.id from school s where s.id in (select app_appointed_school_ids()) and (s.jurisdiction = ${owner.jurisdiction}
      or s.id in (select a.school_id from rule_set_adoption a where a.rule_set_id = ${ruleSetId}))`;
  return rows.map(({ id }) => id);
}

/** Schools and classes by name, for documents that name theirs; null where there is none. */
export async function findNamedPlace(
  tx: ReadTx,
  school: string,
  schoolClass: string | null,
): Promise<{ schoolId: string; schoolClassId: string | null } | null> {
  const [row] = await tx<{ schoolId: string; schoolClassId: string | null }[]>`
    select s.id as "schoolId", k.id as "schoolClassId" from school s
    left join school_class k on k.school_id = s.id and k.name = ${schoolClass} where s.name = ${school}`;
  return row && (schoolClass === null || row.schoolClassId !== null) ? row : null;
}
