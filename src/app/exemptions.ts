/**
 * Rules of a school or jurisdiction that rest for one child on a clinician's note, on the days of the note. Both homes know which
 * rule rests, the note stays with the home that entered it. A rule that keeps an allergen out never rests.
 */
import type { Food } from "../../shared/catalogue.js";
import { exemptionInput } from "../../shared/inputs.js";
import type { MatcherClause, Rule } from "../../shared/rule-set.js";
import type { ReadTx } from "../database/database.js";
import { readHousehold, type ChildRow, type HouseholdRow } from "../database/household.js";
import { readRuleSets, type RuleSetRow } from "../database/school.js";
import { addDays, daysBetween, isCalendarDate } from "../domain/calendar/dates.js";
import { widenAllergy } from "../domain/catalogue/allergens.js";
import { fail, ok, type Result } from "../domain/result.js";
import { namesAllergen } from "../domain/rules/in-force.js";
import type { App } from "./app.js";
import { enrolmentOn, ruleSetsFor } from "./assemble-brief.js";
import { changeHousehold, livesHere, type HouseholdChangeFailure } from "./change-household.js";
import { checkInput, invalid } from "./check-input.js";
import type { FailureOf } from "./failures.js";
import { fromDate, toDate, todayIn } from "./local-day.js";
import { queueRecheck, recheckNow, touching } from "./recheck.js";

/** Longest an exemption lasts before a clinician is asked again. */
const MOST_DAYS = 366;

interface ExemptionChange {
  readonly idempotencyKey: string;
  readonly householdId: string | null;
  readonly seenRevision: number;
}
export interface RecordExemption extends ExemptionChange {
  readonly childId: string | null;
  readonly ruleSetId: string | null;
  /** The rule's id in its document. */
  readonly rule: string;
  readonly from: string;
  readonly until: string;
  readonly clinician: string;
  readonly note: string;
}
export interface EndExemption extends ExemptionChange {
  readonly exemptionId: string | null;
  /** First day on which the rule holds again. */
  readonly from: string;
}
type Changed<E> = Promise<
  Result<{ childId: string; householdId: string; exemptionId: string }, HouseholdChangeFailure | E>
>;
type RecordFailure = FailureOf<"ChildNotFound" | "ExemptionRefused">;

/** Whether everything a clause picks by food, kind or group has one allergen in common. */
function picksAllergen(clause: MatcherClause, foods: readonly Food[]): boolean {
  const { foods: keys, kinds, groups } = clause;
  if ((kinds ?? []).some((foodKind) => widenAllergy({ allergen: null, foodKind }).allergens.size > 0)) return true;
  if (keys === undefined && kinds === undefined && groups === undefined) return false;
  const picked = foods.filter(
    ({ key, kind, group }) =>
      (keys ?? [key]).includes(key) && (kinds ?? [kind]).includes(kind) && (groups ?? [group]).includes(group),
  );
  const [first] = picked;
  return (
    first !== undefined && first.allergens.some((code) => picked.every(({ allergens }) => allergens.includes(code)))
  );
}

/** It names an allergen, or shuts out what always carries one, such as peanut butter by its kind. */
const keepsAllergenOut = (rule: Rule, foods: readonly Food[]): boolean =>
  namesAllergen(rule) || (rule.kind === "EXCLUDE" && rule.matches.anyOf.some((clause) => picksAllergen(clause, foods)));

/** The rule as it binds the child's boxes on the first of these days on which it does. */
function ruleHolding(
  household: HouseholdRow,
  child: ChildRow,
  rows: readonly RuleSetRow[],
  { ruleSetId, rule, from, until }: RecordExemption,
): Rule | undefined {
  const versions = rows.filter(({ id }) => id === ruleSetId);
  for (let date = from; date <= until && versions.length > 0; date = addDays(date, 1)) {
    const enrolment = enrolmentOn(child, date);
    const school = household.schools.find(({ id }) => id === enrolment?.schoolId);
    if (!enrolment || !school) continue;
    const [row] = ruleSetsFor(versions, child, school, enrolment.schoolClassId, date);
    const found = row?.document.rules.find(({ id }) => id === rule);
    if (found) return found;
  }
  return undefined;
}

async function readHolding(read: ReadTx, householdId: string, input: RecordExemption) {
  const household = await readHousehold(read, householdId);
  const child = household?.children.find(({ id }) => id === input.childId);
  if (!household || !child) throw new Error("a child that lives here cannot be read");
  const schools = household.schools.map(({ id }) => id);
  const rows = await readRuleSets(read, schools, [child.id]);
  return { household, child, rows, rule: ruleHolding(household, child, rows, input) };
}

export async function recordExemption(app: App, personId: string, input: RecordExemption): Changed<RecordFailure> {
  const checked = checkInput(exemptionInput, input);
  if (!checked.ok) return checked;
  const { from, until, clinician, note } = checked.value;
  for (const [field, date] of Object.entries({ from, until }))
    if (!isCalendarDate(date))
      return fail(invalid(field, `${date} is no day of the calendar`, "Send a real date as YYYY-MM-DD."));
  if (until < from) return fail(invalid("until", `${until} lies before ${from}`, `Send ${from} or later.`));
  if (daysBetween(from, until) >= MOST_DAYS)
    return fail(
      invalid(
        "until",
        "is more than a year later",
        `Send ${addDays(from, MOST_DAYS - 1)} or earlier, and ask again then.`,
      ),
    );
  const recorded = await changeHousehold<
    { childId: string; exemptionId: string },
    HouseholdChangeFailure | RecordFailure
  >(
    app,
    {
      personId,
      action: "recordExemption",
      key: input.idempotencyKey,
      input,
      householdId: input.householdId,
      seenRevision: input.seenRevision,
      verb: "recordExemption",
    },
    async (tx, householdId) => {
      const { childId, ruleSetId } = input;
      if (childId === null || !(await livesHere(tx, childId, householdId))) return fail({ kind: "ChildNotFound" });
      const holding = await app.db.readAs(personId, (read) => readHolding(read, householdId, input));
      const { household, child, rows, rule } = holding;
      const refuse = (reason: FailureOf<"ExemptionRefused">["reason"]) =>
        fail({ kind: "ExemptionRefused", reason, says: rule?.says ?? null } as const);
      if (rows.some((row) => row.id === ruleSetId && row.childId !== null)) return refuse("FAMILYS_OWN");
      if (ruleSetId === null || rule === undefined) return refuse("DOES_NOT_HOLD");
      if (keepsAllergenOut(rule, app.reference.catalogue.foods)) return refuse("NAMES_ALLERGEN");
      const today = todayIn(household.timeZone, app.now());
      if (until < today) return fail(invalid("until", `${until} is past`, `Send ${today} or later.`));
      if (child.exemptions.some((row) => row.ruleSetId === ruleSetId && row.rule === rule.id && row.from === from))
        return fail(
          invalid("from", "an exemption from this rule begins that day already", "End it first, or send another day."),
        );
      const { id } = await tx.exemption.create({
        data: { childId, ruleSetId, ruleKey: rule.id, fromDate: toDate(from), untilDate: toDate(until) },
        select: { id: true },
      });
      await tx.exemptionNote.create({ data: { exemptionId: id, householdId, clinician, note }, select: { id: true } });
      await queueRecheck(app, tx, touching({ childIds: [childId] }));
      return ok({ childId, exemptionId: id });
    },
  );
  if (recorded.ok) await recheckNow(app, touching({ childIds: [recorded.value.childId] }));
  return recorded;
}

/** From either home: the rule holds again. One that has not begun is taken back altogether. */
export async function endExemption(
  app: App,
  personId: string,
  input: EndExemption,
): Changed<FailureOf<"NothingThere">> {
  const { from, exemptionId } = input;
  if (!isCalendarDate(from))
    return fail(invalid("from", `${from} is no day of the calendar`, "Send a real date as YYYY-MM-DD."));
  const ended = await changeHousehold<
    { childId: string; exemptionId: string },
    HouseholdChangeFailure | FailureOf<"NothingThere">
  >(
    app,
    {
      personId,
      action: "endExemption",
      key: input.idempotencyKey,
      input,
      householdId: input.householdId,
      seenRevision: input.seenRevision,
      verb: "recordExemption",
    },
    async (tx, householdId) => {
      const found =
        exemptionId === null
          ? null
          : await tx.exemption.findUnique({
              where: { id: exemptionId },
              select: { id: true, childId: true, fromDate: true, untilDate: true },
            });
      if (!found || !(await livesHere(tx, found.childId, householdId)))
        return fail({ kind: "NothingThere", what: "exemption" });
      const home = await tx.household.findUniqueOrThrow({ where: { id: householdId }, select: { timeZone: true } });
      const today = todayIn(home.timeZone, app.now());
      if (from < today)
        return fail(invalid("from", `${from} is past`, `Send ${today} or later: boxes were planned under it.`));
      if (from > fromDate(found.untilDate))
        return fail(
          invalid(
            "from",
            "it is over by then",
            `Send ${fromDate(found.untilDate)} or earlier; a longer one is recorded anew.`,
          ),
        );
      if (from <= fromDate(found.fromDate)) await tx.exemption.deleteMany({ where: { id: found.id } });
      else
        await tx.exemption.update({
          where: { id: found.id },
          data: { untilDate: toDate(addDays(from, -1)) },
          select: { id: true },
        });
      await queueRecheck(app, tx, touching({ childIds: [found.childId] }));
      return ok({ childId: found.childId, exemptionId: found.id });
    },
  );
  if (ended.ok) await recheckNow(app, touching({ childIds: [ended.value.childId] }));
  return ended;
}
