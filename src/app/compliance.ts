/**
 * How boxes keep the rules of school and family, planned ones and one that a parent typed in: the rules engine's word on each,
 * with who says so. Rules as they are today. Nothing is stored.
 */
import { servedForm, type SlotCode } from "../../shared/codes.js";
import type { Food } from "../../shared/catalogue.js";
import type { Matcher, Rule } from "../../shared/rule-set.js";
import type { ChildRow } from "../database/household.js";
import type { RuleSetRow } from "../database/school.js";
import type { BoxRow } from "../database/week.js";
import type { ChildBrief, ChildDayBrief, LabelBrief, WeekBrief } from "../domain/brief.js";
import { isCalendarDate, minutesOf, weekdayOf } from "../domain/calendar/dates.js";
import { judgeAllergies, type AllergyVerdict } from "../domain/catalogue/allergens.js";
import type { CatalogueIndex } from "../domain/catalogue/derive.js";
import { indexWithOwn } from "../domain/catalogue/own-rows.js";
import { nearest } from "../domain/nearest.js";
import { labelsThroughPurchase } from "../domain/planner/candidates.js";
import { servedAlone } from "../domain/planner/verdicts.js";
import { fail, ok, type Result } from "../domain/result.js";
import { compileRuleSets } from "../domain/rules/compile.js";
import { matchersOf } from "../../shared/rule-set.js";
import {
  judgeWeek,
  type EatenBox,
  type EatenItem,
  type RuleJudgement,
  type RuleState,
} from "../domain/rules/judge-week.js";
import { matches } from "../domain/rules/match.js";
import type { App } from "./app.js";
import { childBriefOf, enrolmentOn, exemptOn, isSchoolDay, nextSchoolDay, weekStartOf } from "./assemble-brief.js";
import { invalid } from "./check-input.js";
import type { FailureOf, InputIssue } from "./failures.js";
import { originOf, ruleSetsOn, type RuleOrigin, type RulesOfHome } from "./rule-origins.js";

export interface RuleFinding extends RuleJudgement {
  readonly origin: RuleOrigin;
}
export interface Compliance {
  readonly householdId: string;
  readonly findings: readonly RuleFinding[];
  /** Days that were judged together. */
  readonly dates: readonly string[];
  /** Names what the places hold, foods on their own among them. */
  readonly index: CatalogueIndex;
}

/** What the boxes are judged by. */
export interface Judged {
  readonly app: App;
  readonly home: RulesOfHome;
  /** Every dish that may stand in a box here or in the other home. */
  readonly index: CatalogueIndex;
  /** Boxes of the weeks before, for rules that look back. */
  readonly history: WeekBrief["history"];
}

/** A stored box as the engine reads it. */
export const eatenBox = ({ childId, date, items }: BoxRow): EatenBox => ({
  childId,
  date,
  items: items.map(({ breakKey, slot, place, dish, grams, holdingCase }) => ({
    breakKey,
    slot,
    position: place,
    dish,
    grams,
    holding: { case: holdingCase },
  })),
});

const labelsOf = ({ app, home }: Judged): readonly LabelBrief[] =>
  labelsThroughPurchase({ labels: home.household.labelChecks, catalogue: app.reference.catalogue });

/**
 * One day of a child at school, whichever home packs: the rule sets that bind its box and the breaks there are. Null on a day on
 * which no school is known.
 */
function schoolDay(home: RulesOfHome, child: ChildRow, date: string, sets: RuleSetRow[]): ChildDayBrief | null {
  const enrolment = enrolmentOn(child, date);
  const school = home.household.schools.find(({ id }) => id === enrolment?.schoolId);
  const schoolClass = school?.classes.find(({ id }) => id === enrolment?.schoolClassId);
  if (!school || !schoolClass) return null;
  const endsAt = school.days
    .filter((day) => day.date === date && (day.schoolClassId === null || day.schoolClassId === schoolClass.id))
    .flatMap((day) => day.endsAt ?? [])
    .sort()[0];
  const holding = ruleSetsOn(home, child, date);
  const places = holding.map((row) => {
    const at = sets.indexOf(row);
    return at >= 0 ? at : sets.push(row) - 1;
  });
  return {
    date,
    weekday: weekdayOf(date),
    leaveAt: "00:00",
    breaks: schoolClass.breaks
      .filter(({ startsAt }) => endsAt === undefined || minutesOf(startsAt) < minutesOf(endsAt))
      .map((entry) => ({ ...entry, energyShare: entry.energyShare ?? 0 })),
    facility: schoolClass.facility,
    ruleSets: places,
    exempt: exemptOn(child, holding, date).map(({ at, rule }) => ({ ruleSet: places[at]!, rule })),
  };
}

/** Every rule over these boxes: each child's days are those of its boxes, and a week's limits hold over them. */
export function judgeBoxesByRules(judged: Judged, boxes: readonly EatenBox[]): Compliance {
  const { home, app, index, history } = judged;
  const { household } = home;
  const sets: RuleSetRow[] = [];
  const dates = [...new Set(boxes.map(({ date }) => date))].sort();
  const children = household.children.flatMap((child): ChildBrief[] => {
    const days = dates.flatMap((date) => {
      const isPacked = boxes.some((box) => box.childId === child.id && box.date === date);
      return (isPacked ? schoolDay(home, child, date, sets) : null) ?? [];
    });
    return days.length === 0 ? [] : [childBriefOf(household, child, days, days[0]!.date)];
  });
  const documents = sets.map(({ document }) => document);
  const rules = compileRuleSets(documents, index, labelsOf(judged), app.reference.credits);
  const weekStart = weekStartOf(dates[0] ?? "2000-01-01", household.weekStart);
  return {
    householdId: household.id,
    dates,
    index,
    findings: judgeWeek({ weekStart, children, history }, rules, boxes).map((found) => ({
      ...found,
      origin: originOf(home, sets[found.ruleSet]!, found.rule),
    })),
  };
}

/** What is said of one box among those it was judged with: its own, and what holds over all the days. */
export const ofOneBox = (compliance: Compliance, childId: string, date: string): Compliance => ({
  ...compliance,
  findings: compliance.findings.filter((row) => row.childId === childId && (row.date === null || row.date === date)),
});

export const totalsOf = ({ findings }: Compliance) => {
  const count = (state: RuleState) => findings.filter((row) => row.state === state).length;
  return {
    met: count("MET"),
    notMet: count("NOT_MET"),
    notApplicable: count("NOT_APPLICABLE"),
    notKnown: count("NOT_KNOWN"),
  };
};

export interface TypedItem {
  readonly breakKey: string;
  readonly slot: SlotCode;
  readonly dish?: string | null;
  readonly food?: string | null;
  readonly form: string;
  readonly grams: number;
}
export interface TypedBox {
  readonly childId: string | null;
  readonly date: string;
  readonly items: readonly TypedItem[];
}
export interface BoxCheck {
  readonly compliance: Compliance;
  /** What the child avoids and the box holds, each once. */
  readonly avoided: readonly Exclude<AllergyVerdict, { kind: "CLEAR" }>[];
}

const MOST_ITEMS = 40;
const MOST_GRAMS = 2000;

type ReadItem = EatenItem & { readonly alone: Food | null };

function readItems(
  items: readonly TypedItem[],
  { app, index }: Judged,
  breakKeys: readonly string[],
): Result<readonly ReadItem[], FailureOf<"InvalidInput" | "DishUnknown">> {
  const issues: InputIssue[] = [];
  const complain = (field: string, problem: string, fix: string) => void issues.push({ field, problem, fix });
  if (items.length === 0 || items.length > MOST_ITEMS)
    complain("items", `${items.length} items cannot be a box`, `Send 1 to ${MOST_ITEMS}.`);
  const read: ReadItem[] = [];
  for (const [at, { breakKey, slot, dish, food, form, grams }] of items.slice(0, MOST_ITEMS).entries()) {
    const field = (name: string) => `items.${at}.${name}`;
    const servedAs = servedForm.safeParse(form);
    const row = food == null ? undefined : index.food(food);
    if ((dish == null) === (food == null))
      complain(field("dish"), "an item is a dish or a food", "Give one of the two.");
    if (!breakKeys.includes(breakKey))
      complain(field("breakKey"), `"${breakKey}" is no break of that day`, `Use one of ${breakKeys.join(", ")}.`);
    if (!(grams > 0 && grams <= MOST_GRAMS))
      complain(field("grams"), `${grams} g cannot be an item`, `Send more than 0 and at most ${MOST_GRAMS}.`);
    if (!servedAs.success)
      complain(field("form"), `"${form}" is no form`, `Use one of ${servedForm.options.join(", ")}.`);
    if (food != null && !row) {
      const keys = app.reference.catalogue.foods.map(({ key }) => key);
      const near = nearest(food, keys).join(", ");
      complain(field("food"), `"${food}" is no food of the catalogue`, `Did you mean ${near}?`);
    }
    if (dish != null && !index.dish(dish))
      return fail({
        kind: "DishUnknown",
        dish,
        nearest: nearest(
          dish,
          index.dishes.map(({ key }) => key),
        ),
      });
    const alone = row && servedAs.success ? servedAlone(row, servedAs.data) : null;
    const before = read.filter((item) => item.breakKey === breakKey && item.slot === slot);
    read.push({ breakKey, slot, position: before.length, dish: alone?.key ?? dish ?? "", grams, alone: row ?? null });
  }
  return issues.length > 0 ? fail({ kind: "InvalidInput", issues }) : ok(read);
}

/** Fields of a clause that only a dish states: a food on its own has none of them on record. */
const ofDishes = ["dishes", "starch", "protein", "cutlery", "spill", "cookedInFat"] as const;
const asksOfDishes = ({ anyOf }: Matcher): boolean => anyOf.some((clause) => ofDishes.some((field) => field in clause));

/** Whether foods on their own leave open what a rule found in a box: nobody knows their cutlery, their kind of dish, or their ml. */
function isLeftOpen(
  { rule, state, found, atMost }: RuleJudgement,
  items: readonly ReadItem[],
  isMeant: IsMeant,
): boolean {
  const alone = items.filter((item) => item.alone !== null);
  if (alone.length === 0 || state === "NOT_APPLICABLE") return false;
  // What is too much is too much, whatever else there is.
  const isTooMuch = state === "NOT_MET" && (rule.kind === "EXCLUDE" || (found ?? 0) > (atMost ?? Infinity));
  if (isTooMuch) return false;
  if (rule.kind === "SERVING") return rule.fingerFoodOnly === true;
  if (matchersOf(rule).some(({ matcher }) => asksOfDishes(matcher))) return true;
  const inMl = (rule.kind === "AMOUNT" || rule.kind === "SHARE") && rule.unit === "ML";
  return inMl && alone.some((item) => item.alone?.densityGramsPerMl === null && isMeant(rule, item));
}
type IsMeant = (rule: Rule, item: ReadItem) => boolean;

/**
 * A box somebody typed in, in place of that day's box of the week as it is planned. Rules only; what the child avoids is named
 * beside them.
 * @param week the child's other boxes of the week, those that the same home packs
 */
export function checkTypedBox(
  judged: Judged,
  { childId, date, items }: TypedBox,
  week: readonly EatenBox[],
): Result<BoxCheck, FailureOf<"InvalidInput" | "ChildNotFound" | "DishUnknown" | "OutsideTerm">> {
  const { household } = judged.home;
  if (!isCalendarDate(date))
    return fail(invalid("date", `${date} is no day of the calendar`, "Send a real date as YYYY-MM-DD."));
  const child = household.children.find(({ id }) => id === childId);
  if (!child) return fail({ kind: "ChildNotFound" });
  const enrolment = enrolmentOn(child, date);
  const school = household.schools.find(({ id }) => id === enrolment?.schoolId);
  const day = schoolDay(judged.home, child, date, []);
  if (!day || !enrolment || !school || !isSchoolDay(school, enrolment.schoolClassId, date))
    return fail({
      kind: "OutsideTerm",
      weekStart: weekStartOf(date, household.weekStart),
      nextSchoolDay: nextSchoolDay(household, date),
    });
  const read = readItems(
    items,
    judged,
    day.breaks.map(({ key }) => key),
  );
  if (!read.ok) return read;
  const alone = new Map(
    items.flatMap(({ food, form }) => {
      const row = food == null ? undefined : judged.index.food(food);
      const dish = row && servedAlone(row, servedForm.parse(form));
      return dish ? [[dish.key, dish] as const] : [];
    }),
  );
  const own = { version: judged.index.version, foods: [], dishes: [...alone.values()] };
  const index = indexWithOwn(judged.app.reference.catalogue, judged.index, own);
  const labels = labelsOf(judged);
  const isMeant: IsMeant = (rule, { dish, slot }) =>
    matchersOf(rule).some(({ matcher }) => matches(matcher, { derived: index.derived(dish), slot, labels }));
  const box: EatenBox = { childId: child.id, date, items: read.value };
  const others = week.filter((other) => other.childId === child.id && other.date !== date);
  const whole = judgeBoxesByRules({ ...judged, index }, [...others, box]);
  const { findings, ...rest } = ofOneBox(whole, child.id, date);
  const verdicts = read.value
    .map(({ dish }) => judgeAllergies(child.allergies, index.derived(dish), household.labelChecks))
    .flatMap((verdict) => (verdict.kind === "CLEAR" ? [] : [verdict]));
  return ok({
    compliance: {
      ...rest,
      findings: findings.map((row) =>
        isLeftOpen(row, read.value, isMeant) ? { ...row, state: "NOT_KNOWN", reason: "NOT_IN_THE_BOX" } : row,
      ),
    },
    avoided: [...new Map(verdicts.map((verdict) => [JSON.stringify(verdict), verdict])).values()],
  });
}
