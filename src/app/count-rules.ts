/** How many boxes of agreed weeks keep the rules of a school, or would break those of a document not loaded yet: numbers only. */
import { addDays, isCalendarDate } from "../domain/calendar/dates.js";
import { namesAllergen } from "../domain/rules/in-force.js";
import { countTables, type CountTables } from "../domain/rules/count-tables.js";
import type { RuleSetDocument } from "../../shared/rule-set.js";
import { weekdayCode } from "../../shared/codes.js";
import { countBoxes } from "../database/count-rules.js";
import { readSchoolsUnder } from "../database/rule-set.js";
import type { ReadTx } from "../database/database.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { audit } from "./audit.js";
import { invalid } from "./check-input.js";
import { readRuleSetDocument } from "./check-rule-set.js";
import type { FailureOf } from "./failures.js";
import {
  aboutOwner,
  checkForTarget,
  findAdministered,
  type AdministeredOwner,
  type RuleTarget,
} from "./load-rule-set.js";
import { before, once, type Attempt } from "./once.js";

/** Null: fewer than five, none among them. */
export interface RuleCount {
  /** The rule's id; null for all of them together. */
  readonly rule: string | null;
  /** Boxes of agreed weeks that it holds for. */
  readonly held: number | null;
  readonly boxes: number | null;
  readonly children: number | null;
  /** Weeks of a child. */
  readonly weeks: number | null;
}

export interface RuleImpact {
  readonly from: string;
  readonly until: string;
  readonly counts: readonly RuleCount[];
  /** Boxes with a dish of a family's own, which are not judged here. */
  readonly ownDishes: number | null;
  /** Ids of rules that are not counted: they advise, look back further than a week, or speak of what no box lists. */
  readonly notCounted: readonly string[];
}

/** Longer than any school year that is agreed upon. */
const MOST_DAYS = 400;
const FOREVER = "9999-12-31";
const isoWeekday = (day: (typeof weekdayCode.options)[number]) => weekdayCode.options.indexOf(day) + 1;

interface Counting {
  readonly owner: AdministeredOwner;
  /** Null for a document that is new. */
  readonly ruleSetId: string | null;
  readonly document: RuleSetDocument;
  readonly from: string;
  readonly until: string;
}

interface Counted {
  readonly owner: AdministeredOwner;
  readonly document: RuleSetDocument;
  readonly impact: RuleImpact;
}

async function count(app: App, tx: ReadTx, { owner, ruleSetId, document, from, until }: Counting): Promise<Counted> {
  const tables = countTables(document, app.index, app.reference.credits);
  const rows = await countBoxes(tx, {
    schoolIds: await readSchoolsUnder(tx, owner, ruleSetId),
    schoolClassId: owner.layer === "CLASS" ? owner.schoolClassId : null,
    from,
    until,
    ruleSetId,
    rules: boundsOf(document, tables),
    addends: tables.addends,
    dishes: app.index.dishes.map(({ key }) => key),
  });
  const impact = {
    from,
    until,
    counts: rows.map(({ rule, held, boxes, children, weeks }) => ({
      rule: rule === null ? null : document.rules[rule]!.id,
      held,
      boxes,
      children,
      weeks,
    })),
    ownDishes: rows[0]?.notCounted ?? null,
    notCounted: tables.notCounted.map((at) => document.rules[at]!.id),
  };
  return { owner, document, impact };
}

/** What the database needs of each bound. */
export const boundsOf = (document: RuleSetDocument, { rules }: CountTables) =>
  rules.map((counted) => {
    const rule = document.rules[counted.rule]!;
    const { ages } = rule;
    return {
      ...counted,
      exemptKey: namesAllergen(rule) ? null : rule.id,
      shortWeek: rule.shortWeek,
      splitWeek: rule.splitWeek ?? rule.shortWeek,
      breaks: rule.breaks ?? null,
      weekdays: rule.weekdays?.map(isoWeekday) ?? null,
      fromYears: Math.max(ages?.fromYears ?? 0, document.ages?.fromYears ?? 0),
      underYears: Math.min(ages?.underYears ?? 200, document.ages?.underYears ?? 200),
      firstDay: [document.inForceFrom, rule.inForceFrom ?? ""].sort().at(-1)!,
      lastDay: [document.inForceUntil ?? FOREVER, rule.inForceUntil ?? FOREVER].sort()[0]!,
    };
  });

/** Days asked about, both included. */
function checkSpan(from: string, until: string): FailureOf<"InvalidInput"> | null {
  for (const [field, date] of Object.entries({ from, until }))
    if (!isCalendarDate(date))
      return invalid(field, `${date} is no day of the calendar`, "Send a real date as YYYY-MM-DD.");
  if (until < from) return invalid("until", `${until} lies before ${from}`, "Send a later day.");
  return addDays(from, MOST_DAYS) < until
    ? invalid("until", `is more than ${MOST_DAYS} days after ${from}`, "Ask about a shorter time.")
    : null;
}

export interface CountImpact extends RuleTarget {
  readonly idempotencyKey: string;
  readonly document: string;
}

type ImpactFailure = FailureOf<"InvalidInput" | "DocumentRefused" | "SchoolNotFound" | "NotAppointed" | "KeyReused">;
type ComplianceFailure = FailureOf<"InvalidInput" | "NothingThere" | "NotAppointed" | "KeyReused">;

/** What agreed weeks would break if a document were loaded, from the day it would begin. Asking is in the audit list. */
export async function countImpact(
  app: App,
  personId: string,
  input: CountImpact,
): Promise<Result<RuleImpact, ImpactFailure>> {
  const attempt = { personId, action: "countRuleSetImpact", key: input.idempotencyKey, input };
  const known = await before<RuleImpact>(app, attempt);
  if (known) return known;
  const sent = readRuleSetDocument(input.document);
  const counted = await app.db.readAs(personId, async (read): Promise<Result<Counted, ImpactFailure>> => {
    const checked = await checkForTarget(app, read, input, sent);
    if (!checked.ok) return checked;
    const { check, owner, ruleSetId, place } = checked.value;
    const { document, errors, warnings } = check;
    if (document === null || errors.length > 0) return fail({ kind: "DocumentRefused", issues: errors, warnings });
    const from = document.inForceFrom > place.today ? document.inForceFrom : place.today;
    const last = addDays(from, MOST_DAYS);
    const until = document.inForceUntil !== undefined && document.inForceUntil < last ? document.inForceUntil : last;
    return ok(await count(app, read, { owner, ruleSetId, document, from, until }));
  });
  return counted.ok ? keep(app, attempt, counted.value) : counted;
}

export interface CountCompliance {
  readonly idempotencyKey: string;
  readonly ruleSetId: string | null;
  readonly from: string;
  readonly until: string;
}

/** How boxes of agreed weeks keep the newest version of a rule set. */
export async function countCompliance(
  app: App,
  personId: string,
  input: CountCompliance,
): Promise<Result<RuleImpact, ComplianceFailure>> {
  const { from, until } = input;
  const span = checkSpan(from, until);
  if (span) return fail(span);
  const attempt = { personId, action: "countRuleSetCompliance", key: input.idempotencyKey, input };
  const known = await before<RuleImpact>(app, attempt);
  if (known) return known;
  const { ruleSetId } = input;
  const counted = await app.db.readAs(personId, async (read): Promise<Result<Counted, ComplianceFailure>> => {
    const found = await findAdministered(read, ruleSetId);
    if (!found.ok) return found;
    const { owner, newest: document } = found.value;
    return ok(await count(app, read, { owner, ruleSetId, document, from, until }));
  });
  return counted.ok ? keep(app, attempt, counted.value) : counted;
}

/** Counting reads only, for as long as it takes; what was asked and answered is written after it. */
function keep(app: App, attempt: Attempt, { owner, document, impact }: Counted) {
  return once<RuleImpact, never>(app, attempt, async (tx) => {
    const { from, until } = impact;
    await audit(tx, attempt.personId, {
      action: "IMPACT_COUNTED",
      ...aboutOwner(owner),
      details: { key: document.key, version: document.version, from, until },
    });
    return ok(impact);
  });
}
