/**
 * A family's own rules: rule sets of one child, its copy of what a school asks for among them. Both homes of the child see
 * them and may change them, no administrator does. A version is never edited; one without rules withdraws the set.
 */
import type { ReadTx, Tx } from "../database/database.js";
import { readHousehold, type ChildRow, type HouseholdRow } from "../database/household.js";
import { readRulePlace, readRuleSetById } from "../database/rule-set.js";
import { newestOf, readRuleSets, type RuleSetRow } from "../database/school.js";
import { isCalendarDate } from "../domain/calendar/dates.js";
import { fail, ok, type Result } from "../domain/result.js";
import { copyDifference } from "../domain/rules/copy-difference.js";
import type { DocumentDifference } from "../domain/rules/document-difference.js";
import { withdrawnFrom } from "../domain/rules/withdrawn.js";
import type { App } from "./app.js";
import { bindsBoxes, isMeantFor } from "./assemble-brief.js";
import { changeHousehold, livesHere, type HouseholdChangeFailure } from "./change-household.js";
import { invalid } from "./check-input.js";
import {
  checkRuleSet,
  knownWords,
  readRuleSetDocument,
  type ReadRuleSet,
  type RuleSetPlace,
} from "./check-rule-set.js";
import type { FailureOf } from "./failures.js";
import { addVersion } from "./load-rule-set.js";
import { todayIn } from "./local-day.js";
import { queueRecheck, recheckNow, touching } from "./recheck.js";

interface OwnRulesChange {
  readonly idempotencyKey: string;
  readonly householdId: string | null;
  readonly seenRevision: number;
}
export interface KeepOwnRules extends OwnRulesChange {
  readonly childId: string | null;
  /** A family's copy of what this school asks for; undefined: rules of its own. Null names no school. */
  readonly copyOfSchoolId?: string | null | undefined;
  readonly document: string;
}
export interface DropOwnRules extends OwnRulesChange {
  readonly ruleSetId: string | null;
  /** First day on which it asks for nothing. */
  readonly from: string;
}
export interface OwnRulesRef {
  readonly householdId: string;
  readonly childId: string;
  readonly ruleSetId: string;
  /** The newest version said the same already. */
  readonly unchanged: boolean;
}
type Kept = Omit<OwnRulesRef, "householdId">;
type KeepFailure = HouseholdChangeFailure | FailureOf<"ChildNotFound" | "SchoolNotFound" | "DocumentRefused">;
type DropFailure = HouseholdChangeFailure | FailureOf<"NothingThere">;

/** Where the child eats from a box, today or from an enrolment to come, with the other rule sets that hold there. */
function classesOf(
  household: HouseholdRow,
  child: ChildRow,
  rows: readonly RuleSetRow[],
  ruleSetId: string | null,
  today: string,
): RuleSetPlace["classes"] {
  return child.enrolments
    .filter(({ untilDate }) => untilDate === null || untilDate >= today)
    .flatMap(({ schoolId, schoolClassId }) => {
      const school = household.schools.find(({ id }) => id === schoolId);
      const schoolClass = school?.classes.find(({ id }) => id === schoolClassId);
      if (!school || !schoolClass) return [];
      return [
        {
          breakKeys: schoolClass.breaks.map(({ key }) => key),
          others: newestOf(rows)
            .filter((row) => row.id !== ruleSetId && isMeantFor(row, child, school, schoolClassId))
            .filter((row) => bindsBoxes(row, school))
            .map(({ document }) => document),
        },
      ];
    });
}

/** Everything the document is held against, read anew inside the change. */
async function readPlace(read: ReadTx, app: App, householdId: string, childId: string, sent: ReadRuleSet) {
  const household = await readHousehold(read, householdId);
  const child = household?.children.find(({ id }) => id === childId);
  if (!household || !child) throw new Error("a child that lives here cannot be read");
  const key = "document" in sent ? sent.document.key : null;
  const found = await readRulePlace(read, { layer: "CHILD", childId, copyOfId: null }, key);
  const rows = await readRuleSets(
    read,
    household.schools.map(({ id }) => id),
    [childId],
  );
  const today = todayIn(household.timeZone, app.now());
  return {
    child,
    ruleSetId: found.ruleSetId,
    copyOfId: rows.find(({ id }) => id === found.ruleSetId)?.copyOfId ?? null,
    place: { ...found.place, today, classes: classesOf(household, child, rows, found.ruleSetId, today) },
  };
}

/** Two homes that change a child's own rules take turns. */
const lockOwnRules = (tx: Tx, childId: string) =>
  tx.$executeRaw`select pg_advisory_xact_lock(hashtextextended(${`own-rules/${childId}`}, 0))`;

/** A document of the CHILD layer, as a new version of the rule set of its key. What says the same already changes nothing. */
export async function keepOwnRules(
  app: App,
  personId: string,
  input: KeepOwnRules,
): Promise<Result<OwnRulesRef, KeepFailure>> {
  const sent = readRuleSetDocument(input.document);
  const kept = await changeHousehold<Kept, KeepFailure>(
    app,
    {
      personId,
      action: "keepOwnRules",
      key: input.idempotencyKey,
      input,
      householdId: input.householdId,
      seenRevision: input.seenRevision,
      verb: "keepOwnRules",
    },
    async (tx, householdId) => {
      const { childId, copyOfSchoolId: stated } = input;
      if (childId === null || !(await livesHere(tx, childId, householdId))) return fail({ kind: "ChildNotFound" });
      if (stated === null) return fail({ kind: "SchoolNotFound" });
      await lockOwnRules(tx, childId);
      const { child, ruleSetId, copyOfId, place } = await app.db.readAs(personId, (read) =>
        readPlace(read, app, householdId, childId, sent),
      );
      if (stated !== undefined && !child.enrolments.some(({ schoolId }) => schoolId === stated))
        return fail({ kind: "SchoolNotFound" });
      if (ruleSetId !== null && stated !== undefined && stated !== copyOfId)
        return fail(
          invalid("copyOfSchoolId", "is not what this rule set was kept as", "Leave it out, or give another key."),
        );
      const check = checkRuleSet(sent, knownWords(app), place);
      const { document } = check;
      if (document === null || check.errors.length > 0)
        return fail({ kind: "DocumentRefused", issues: check.errors, warnings: check.warnings });
      if (check.unchanged && ruleSetId !== null) return ok({ childId, ruleSetId, unchanged: true });
      const added = await addVersion(tx, {
        personId,
        owner: { layer: "CHILD", childId, copyOfId: ruleSetId === null ? (stated ?? null) : copyOfId },
        ruleSetId,
        document,
        seen: place.versions.at(-1)?.version ?? 0,
      });
      if (!added.ok) return added;
      await queueRecheck(app, tx, touching({ childIds: [childId] }));
      return ok({ childId, ruleSetId: added.value, unchanged: false });
    },
  );
  if (kept.ok && !kept.value.unchanged) await recheckNow(app, touching({ childIds: [kept.value.childId] }));
  return kept;
}

/** By a newer version without rules, from a day on: what was in force stays on record. */
export async function dropOwnRules(
  app: App,
  personId: string,
  input: DropOwnRules,
): Promise<Result<OwnRulesRef, DropFailure>> {
  const { from } = input;
  if (!isCalendarDate(from))
    return fail(invalid("from", `${from} is no day of the calendar`, "Send a real date as YYYY-MM-DD."));
  const dropped = await changeHousehold<Kept, DropFailure>(
    app,
    {
      personId,
      action: "dropOwnRules",
      key: input.idempotencyKey,
      input,
      householdId: input.householdId,
      seenRevision: input.seenRevision,
      verb: "keepOwnRules",
    },
    async (tx, householdId) => {
      const { ruleSetId } = input;
      const nothing = fail({ kind: "NothingThere", what: "rule set" } as const);
      if (ruleSetId === null) return nothing;
      const found = await app.db.readAs(personId, (read) => readRuleSetById(read, ruleSetId));
      if (found?.owner.layer !== "CHILD" || !(await livesHere(tx, found.owner.childId, householdId))) return nothing;
      const { owner } = found;
      await lockOwnRules(tx, owner.childId);
      const { household, newest } = await app.db.readAs(personId, async (read) => ({
        household: await readHousehold(read, householdId),
        newest: (await readRuleSetById(read, ruleSetId))!.newest,
      }));
      const today = todayIn(household!.timeZone, app.now());
      if (newest.withdrawn === true)
        return fail(invalid("ruleSetId", "is dropped already", "Keep a new version to put rules in force again."));
      if (from < today)
        return fail(invalid("from", `${from} is past`, `Send ${today} or later: boxes were planned under it.`));
      const document = withdrawnFrom(newest, from);
      const added = await addVersion(tx, { personId, owner, ruleSetId, document, seen: newest.version });
      if (!added.ok) return added;
      await queueRecheck(app, tx, touching({ childIds: [owner.childId] }));
      return ok({ childId: owner.childId, ruleSetId, unchanged: false });
    },
  );
  if (dropped.ok) await recheckNow(app, touching({ childIds: [dropped.value.childId] }));
  return dropped;
}

/** The newest version of each of a child's own rule sets, by key; dropped ones among them. */
export const ownRulesOf = (rows: readonly RuleSetRow[], childId: string): RuleSetRow[] =>
  newestOf(rows).filter((row) => row.childId === childId);

/** What the school that a copy was made of asks for by now: the newest version of each set it loaded or took over, if any. */
export function schoolRuleSetsOf(
  copy: RuleSetRow,
  child: ChildRow,
  household: HouseholdRow,
  rows: readonly RuleSetRow[],
  today: string,
): RuleSetRow[] {
  const school = household.schools.find(({ id }) => id === copy.copyOfId);
  if (!school) return [];
  const classes = child.enrolments
    .filter(({ schoolId, untilDate }) => schoolId === school.id && (untilDate === null || untilDate >= today))
    .map(({ schoolClassId }) => schoolClassId);
  return newestOf(rows).filter(
    (row) =>
      row.confirmed &&
      row.childId === null &&
      (row.jurisdiction === null || row.adoptedBy.includes(school.id)) &&
      row.document.withdrawn !== true &&
      (row.document.inForceUntil ?? today) >= today &&
      bindsBoxes(row, school) &&
      classes.some((schoolClassId) => isMeantFor(row, child, school, schoolClassId)),
  );
}

/** The school has loaded rules, and the family still keeps its copy. */
export interface RuleNotice {
  readonly childId: string;
  readonly copy: RuleSetRow;
  readonly schoolRuleSets: readonly RuleSetRow[];
  /** First day on which one of them holds. */
  readonly from: string;
}

export function ruleNotices(household: HouseholdRow, rows: readonly RuleSetRow[], today: string): RuleNotice[] {
  return household.children.flatMap((child) =>
    ownRulesOf(rows, child.id).flatMap((copy): RuleNotice[] => {
      if (copy.copyOfId === null || copy.document.withdrawn === true) return [];
      const schoolRuleSets = schoolRuleSetsOf(copy, child, household, rows, today);
      const [from] = schoolRuleSets.map(({ document }) => document.inForceFrom).sort();
      return from === undefined ? [] : [{ childId: child.id, copy, schoolRuleSets, from }];
    }),
  );
}

/** A copy beside what the school asks for; null while the school asks for nothing of its own. */
export function differsFromSchool(copy: RuleSetRow, schools: readonly RuleSetRow[]): DocumentDifference | null {
  if (schools.length === 0 || copy.document.withdrawn === true) return null;
  return copyDifference(
    copy.document.rules,
    schools.flatMap(({ document }) => document.rules),
  );
}
