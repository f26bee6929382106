/** Who says so: from the key of a rule set and the id of a rule, as planner and checker name them, back to where they stand. */
import type { Rule } from "../../shared/rule-set.js";
import type { ChildRow, HouseholdRow, SchoolClassRow, SchoolRow } from "../database/household.js";
import type { RuleSetRow } from "../database/school.js";
import type { BoxRow } from "../database/week.js";
import { ageOn, weekdayOf } from "../domain/calendar/dates.js";
import { bindsBoxes, enrolmentOn, exemptOn, isMeantFor, ruleSetsFor } from "./assemble-brief.js";

export interface RuleOrigin {
  readonly rule: Rule;
  /** In the version that holds on the day. */
  readonly row: RuleSetRow;
  /** Whose rule it is, or whose the family wrote down; null for a jurisdiction's and a family's own. */
  readonly school: SchoolRow | null;
  readonly schoolClass: SchoolClassRow | null;
}

/** What holds for the children of a household. */
export interface RulesOfHome {
  readonly household: HouseholdRow;
  readonly rows: readonly RuleSetRow[];
}

/** The rule sets that bind a child's box on a date; none on a day without a school. */
export function ruleSetsOn({ household, rows }: RulesOfHome, child: ChildRow, date: string): readonly RuleSetRow[] {
  const enrolment = enrolmentOn(child, date);
  const school = household.schools.find(({ id }) => id === enrolment?.schoolId);
  return enrolment && school ? ruleSetsFor(rows, child, school, enrolment.schoolClassId, date) : [];
}

function everySetOf({ household, rows }: RulesOfHome, child: ChildRow): readonly RuleSetRow[] {
  const isOfChild = (row: RuleSetRow) =>
    child.enrolments.some(({ schoolId, schoolClassId }) => {
      const school = household.schools.find(({ id }) => id === schoolId);
      return school !== undefined && isMeantFor(row, child, school, schoolClassId) && bindsBoxes(row, school);
    });
  return rows.filter(isOfChild).reverse();
}

export function originOf({ household }: RulesOfHome, row: RuleSetRow, rule: Rule): RuleOrigin {
  const schoolId = row.copyOfId ?? row.schoolId;
  const school = household.schools.find(({ id }) => id === schoolId) ?? null;
  return { rule, row, school, schoolClass: school?.classes.find(({ id }) => id === row.schoolClassId) ?? null };
}

export interface NamedRule {
  readonly childId: string;
  /** In the order to look in; none: whatever is on record, the newest version first. */
  readonly dates: readonly string[];
  /** Key of the rule set. */
  readonly ruleSet: string;
  readonly rule: string;
  /** The sentence, or the source, where two rule sets of one key hold for the child. */
  readonly says?: string | null | undefined;
  readonly source?: string | null | undefined;
}

/**
 * Null where nobody says so (any more): a rule that was withdrawn since, or a house rule in the form of one, such as what was
 * eaten in the other home.
 */
export function findOrigin(home: RulesOfHome, { childId, dates, ruleSet, rule, says, source }: NamedRule) {
  const child = home.household.children.find(({ id }) => id === childId);
  if (!child) return null;
  const rows = dates.length > 0 ? dates.flatMap((date) => ruleSetsOn(home, child, date)) : everySetOf(home, child);
  const found = rows
    .filter(({ document }) => document.key === ruleSet)
    .flatMap((row) => row.document.rules.filter(({ id }) => id === rule).map((entry) => originOf(home, row, entry)));
  const fits = ({ rule: entry }: RuleOrigin) =>
    (says == null || entry.says === says) && (source == null || entry.source === source);
  return found.find(fits) ?? found[0] ?? null;
}

export interface ObeyedRule {
  readonly childId: string;
  readonly origin: RuleOrigin;
  readonly dates: readonly string[];
}

/** Whether the rule speaks to the child's age and the weekday, within its own dates. */
function isMeant({ document }: RuleSetRow, rule: Rule, child: ChildRow, date: string): boolean {
  const age = ageOn(child.dateOfBirth, date);
  const { inForceFrom = date, inForceUntil = date, weekdays } = rule;
  return (
    inForceFrom <= date &&
    date <= inForceUntil &&
    (weekdays === undefined || weekdays.includes(weekdayOf(date))) &&
    [document.ages, rule.ages].every((ages) => (ages?.fromYears ?? age) <= age && age < (ages?.underYears ?? age + 1))
  );
}

/**
 * The rules that boxes were planned under: of each rule set the version named in `versions` ("key@version") that held on the
 * day. By child, rule set and rule.
 */
export function rulesObeyed(
  home: RulesOfHome,
  boxes: readonly Pick<BoxRow, "childId" | "date">[],
  versions: readonly string[],
): ObeyedRule[] {
  const known = new Set(versions);
  const obeyed = {
    household: home.household,
    rows: home.rows.filter(({ document }) => known.has(`${document.key}@${document.version}`)),
  };
  return home.household.children.flatMap((child) => {
    const found = new Map<string, { origin: RuleOrigin; dates: string[] }>();
    for (const { date } of boxes.filter(({ childId }) => childId === child.id)) {
      const rows = ruleSetsOn(obeyed, child, date);
      const rests = exemptOn(child, rows, date);
      for (const [at, row] of rows.entries())
        for (const rule of row.document.rules) {
          const isResting = rests.some((entry) => entry.at === at && entry.rule === rule.id);
          if (isResting || !isMeant(row, rule, child, date)) continue;
          const key = `${row.id}/${row.document.version}/${rule.id}`;
          const before = found.get(key);
          if (before) before.dates.push(date);
          else found.set(key, { origin: originOf(home, row, rule), dates: [date] });
        }
    }
    return [...found.values()].map(({ origin, dates }) => ({ childId: child.id, origin, dates }));
  });
}

/** Who speaks, and since when, in a sentence. */
export function sayOrigin({ rule, row: { document, confirmed }, school, schoolClass }: RuleOrigin): string {
  const { title, version, inForceFrom, inForceUntil } = document;
  const from = rule.inForceFrom !== undefined && rule.inForceFrom > inForceFrom ? rule.inForceFrom : inForceFrom;
  const until = rule.inForceUntil ?? inForceUntil;
  const who = saidBy({ row: { document, confirmed }, school });
  const where = schoolClass === null ? "" : `, for ${schoolClass.name}`;
  const copied = ` The family wrote it down as what ${school?.name ?? "the school"} asks for.`;
  const doubt = confirmed ? "" : `${document.layer === "CHILD" ? copied : ""} The school has not confirmed it.`;
  const dates = `in force from ${from}${until === undefined ? "" : ` to ${until}`}`;
  return `${who}${where}: ${rule.says} (${title}, version ${version}, ${dates}; source: ${rule.source})${doubt}`;
}

export function saidBy({
  row,
  school,
}: {
  readonly row: Pick<RuleSetRow, "document" | "confirmed">;
  readonly school: SchoolRow | null;
}): string {
  switch (row.document.layer) {
    case "CHILD":
      return "the family";
    case "JURISDICTION":
      return row.document.jurisdiction ?? "the jurisdiction";
    case "SCHOOL":
    case "CLASS":
      return school?.name ?? "the school";
  }
}
