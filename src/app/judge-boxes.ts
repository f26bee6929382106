/** Which stored boxes no longer pass, and why: what the independent checker and the labels say of them today. */
import type { HouseholdRow } from "../database/household.js";
import type { BlockToSave } from "../database/recheck.js";
import { boxKey } from "../domain/box-key.js";
import type { WeekBrief } from "../domain/brief.js";
import { judgeAllergies } from "../domain/catalogue/allergens.js";
import type { CatalogueIndex } from "../domain/catalogue/derive.js";
import { checkWeek } from "../domain/checker/check-week.js";
import type { Fault, FaultKind } from "../domain/checker/fault.js";
import type { BoxPlan, WeekDraft } from "../domain/week.js";
import { enrolmentOn, isSchoolDay, type KitchenUpset } from "./assemble-brief.js";
import { EATEN_IN_THE_OTHER_HOME } from "./other-home.js";

/**
 * Faults that block a box. The others are the kitchen's (minutes, batches, tasks, shopping, compartments), house rules, or
 * figures printed beside a box that is itself still right.
 */
const blocking: Partial<Record<FaultKind, BlockToSave["kind"]>> = {
  ALLERGEN: "ALLERGEN",
  MAY_CONTAIN: "MAY_CONTAIN",
  KEPT_OUT: "KEPT_OUT",
  DIET: "DIET",
  CHOKING: "CHOKING",
  CUT_NOT_PRINTED: "CHOKING",
  HOLDING_TOO_LONG: "HOLDING",
  HOLDING_CASE_WRONG: "HOLDING",
  HOLDING_MODEL_EXCEEDED: "HOLDING",
  HOT_WHEN_PACKED: "HOLDING",
  COLD_SOURCES_MISSING: "HOLDING",
  NOT_INSULATED: "HOLDING",
  FLASK_MISSING: "HOLDING",
  GOOD_FOR_TOO_SHORT: "HOLDING",
  NO_REHEATING: "NO_REHEATING",
  RULE_BROKEN: "RULE",
  NOT_KNOWN: "RULE_NOT_JUDGED",
  RULE_NOT_JUDGED: "RULE_NOT_JUDGED",
  PLACE_EMPTY: "BREAKS_CHANGED",
  PLACE_UNKNOWN: "BREAKS_CHANGED",
  BREAK_UNKNOWN: "BREAKS_CHANGED",
};

const isHouseRule = (fault: Fault) => fault.ruleSet === EATEN_IN_THE_OTHER_HOME;
const nothingElse = {
  dish: null,
  food: null,
  allergen: null,
  diet: null,
  ruleSet: null,
  rule: null,
  says: null,
} as const;

/** A box that was to be made with what the kitchen has to do without. What is packed, and what is cooked already, is made. */
function upsetBy(
  fault: Fault,
  upset: KitchenUpset,
  brief: WeekBrief,
  draft: WeekDraft,
): { readonly kind: BlockToSave["kind"]; readonly boxes: readonly { childId: string; date: string }[] } | null {
  const isMade = (base: string | null | undefined, session: string | undefined) =>
    brief.made.some((made) => made.base === base && made.session === session);
  const boxesOf = (childIds: readonly string[], dates: readonly string[]) =>
    childIds.flatMap((childId) => dates.map((date) => ({ childId, date })));
  if (fault.kind === "OUT_OF") {
    const { childId, date, base, session } = fault;
    if (childId !== undefined && date !== undefined) return { kind: "FOOD_MISSING", boxes: [{ childId, date }] };
    if (isMade(base, session)) return null;
    const feeds = draft.batches
      .filter((batch) => batch.base === base && batch.session === session)
      .flatMap((batch) => batch.feeds);
    return { kind: "FOOD_MISSING", boxes: feeds.flatMap((feed) => boxesOf(feed.childIds, [feed.date])) };
  }
  if (fault.kind === "EQUIPMENT_NOT_OWNED" || fault.kind === "EQUIPMENT_OVERBOOKED") {
    const task = draft.tasks.find(({ key }) => key === fault.task);
    if (!task || !upset.broken.has(fault.equipment ?? "") || isMade(task.base, task.session)) return null;
    return { kind: "APPLIANCE_BROKEN", boxes: boxesOf(task.childIds, task.forDates) };
  }
  if (fault.kind === "SESSION_OVER_MINUTES" || fault.kind === "TASK_OUTSIDE_SESSION") {
    const date = brief.sessions.find(({ key, kind }) => key === fault.session && kind === "MORNING")?.date;
    if (date === undefined || !upset.mornings.has(date)) return null;
    return { kind: "SHORT_MORNING", boxes: draft.boxes.filter((box) => box.date === date) };
  }
  return null;
}

/**
 * @param judged the boxes "childId@date" that may be blocked; the rest of the week counts, but stays as it is
 * @param packed those of them that are packed already: their labels have to be read and clear, and the kitchen has nothing more to do for them
 * @param upset what the kitchen has to do without; null where boxes are made and it is past asking
 * @returns the boxes that do not pass, each with its reasons in a fixed order
 */
export function judgeBoxes(
  index: CatalogueIndex,
  household: HouseholdRow,
  brief: WeekBrief,
  draft: WeekDraft,
  judged: ReadonlySet<string>,
  packed: ReadonlySet<string>,
  upset: KitchenUpset | null,
): ReadonlyMap<string, readonly BlockToSave[]> {
  const found = new Map<string, Map<string, BlockToSave>>();
  const block = (box: string, reason: Partial<BlockToSave> & Pick<BlockToSave, "kind">) => {
    if (!judged.has(box)) return;
    const full: BlockToSave = { ...nothingElse, ...reason };
    const reasons = found.get(box) ?? new Map<string, BlockToSave>();
    const { kind, dish, allergen, diet, ruleSet, rule } = full;
    const same = JSON.stringify([kind, dish, allergen, diet, ruleSet, rule]);
    // One sentence per dish and allergen: a second food in the same dish adds nothing.
    if (!reasons.has(same)) reasons.set(same, full);
    found.set(box, reasons);
  };
  const faults = checkWeek(brief, draft);
  for (const fault of faults) {
    const upsetting = upset && upsetBy(fault, upset, brief, draft);
    for (const box of upsetting?.boxes ?? [])
      if (!packed.has(boxKey(box)))
        block(boxKey(box), { kind: upsetting!.kind, dish: fault.dish ?? null, food: fault.food ?? null });
    const kind = blocking[fault.kind];
    if (kind === undefined || fault.childId === undefined || isHouseRule(fault)) continue;
    const reason = { kind, ...factsOf(brief, fault) };
    if (fault.date !== undefined) block(boxKey({ childId: fault.childId, date: fault.date }), reason);
    else if (kind === "RULE_NOT_JUDGED")
      for (const box of boxesUnder(brief, draft, fault)) block(boxKey(box), { ...reason, dish: null });
    else for (const box of boxesTooMany(brief, draft, judged, fault)) block(boxKey(box), reason);
  }
  for (const box of draft.boxes) {
    const child = brief.children.find((row) => row.id === box.childId);
    if (!child?.days.some((day) => day.date === box.date))
      block(boxKey(box), { kind: hasSchool(household, box) ? "NOT_DUE" : "NO_SCHOOL" });
    for (const { dish } of box.items) {
      if (!isWhole(brief, dish)) {
        block(boxKey(box), { kind: "DISH_UNKNOWN", dish });
        continue;
      }
      if (!child || index.dish(dish) === undefined) continue;
      const verdict = judgeAllergies(child.allergies, index.derived(dish), brief.labels);
      if (verdict.kind === "CLEAR") continue;
      if (verdict.kind === "CLEAR_IF_LABEL_READ") {
        if (packed.has(boxKey(box)))
          for (const food of verdict.foods) block(boxKey(box), { kind: "LABEL_UNREAD", dish, food });
        continue;
      }
      // The checker names the very allergen; this adds what only a label says of a single food.
      const named = [...(found.get(boxKey(box))?.values() ?? [])].some(
        (reason) => reason.dish === dish && (reason.kind === "ALLERGEN" || reason.kind === "MAY_CONTAIN"),
      );
      const { allergen, food } = verdict;
      if (!named)
        block(boxKey(box), { kind: verdict.kind === "CONTAINS" ? "ALLERGEN" : "MAY_CONTAIN", dish, allergen, food });
    }
  }
  const inOrder = (reasons: Iterable<[string, BlockToSave]>) =>
    [...reasons].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, reason]) => reason);
  return new Map([...found].map(([box, reasons]) => [box, inOrder(reasons)]));
}

function factsOf(brief: WeekBrief, fault: Fault): Omit<BlockToSave, "kind"> {
  const rule = brief.ruleSets
    .filter((document) => document.key === fault.ruleSet)
    .flatMap((document) => document.rules)
    .find((entry) => entry.id === fault.rule);
  return {
    dish: fault.dish ?? null,
    food: fault.food ?? null,
    allergen: fault.allergen ?? null,
    diet: fault.diet ?? null,
    ruleSet: fault.ruleSet ?? null,
    rule: fault.rule ?? null,
    says: rule?.says ?? null,
  };
}

/** Boxes of the days on which a rule set is in force: what cannot be judged there is not let through. */
function boxesUnder(brief: WeekBrief, draft: WeekDraft, { childId, ruleSet }: Fault): readonly BoxPlan[] {
  const days = brief.children
    .filter((child) => child.id === childId)
    .flatMap((child) => child.days)
    .filter((day) => day.ruleSets.some((at) => brief.ruleSets[at]?.key === ruleSet));
  return draft.boxes.filter((box) => box.childId === childId && days.some((day) => day.date === box.date));
}

/**
 * A limit of the whole week names no box. Too much: the last boxes that add to it are blocked, as few as bring the week
 * below the limit without them. Too little: no box is wrong by itself, so none is blocked.
 */
function boxesTooMany(
  brief: WeekBrief,
  draft: WeekDraft,
  judged: ReadonlySet<string>,
  fault: Fault,
): readonly BoxPlan[] {
  const tooMuch = ({ found, limit }: Fault) => found !== undefined && limit !== undefined && found > limit;
  if (!tooMuch(fault)) return [];
  const open = draft.boxes
    .filter((box) => box.childId === fault.childId && judged.has(boxKey(box)))
    .sort((a, b) => (a.date < b.date ? 1 : -1));
  const chosen: BoxPlan[] = [];
  let found = fault.found!;
  for (const box of open) {
    const boxes = draft.boxes.filter((other) => other !== box && !chosen.includes(other));
    const left = checkWeek(brief, { ...draft, boxes }).find(
      (other) =>
        other.kind === fault.kind &&
        other.childId === fault.childId &&
        other.ruleSet === fault.ruleSet &&
        other.rule === fault.rule &&
        other.date === undefined &&
        tooMuch(other),
    );
    if (left !== undefined && left.found! >= found) continue;
    chosen.push(box);
    if (left === undefined) return chosen;
    found = left.found!;
  }
  return chosen;
}

/** Whether the catalogue still has the dish and everything in it. */
function isWhole({ catalogue }: WeekBrief, key: string): boolean {
  const dish = catalogue.dishes.find((row) => row.key === key);
  const has = (food: string) => catalogue.foods.some((row) => row.key === food);
  return (
    dish !== undefined &&
    dish.ingredients.every(({ food }) => has(food)) &&
    dish.bases.every((use) =>
      catalogue.bases.find((base) => base.key === use.base)?.ingredients.every(({ food }) => has(food)),
    )
  );
}

/** Whether the child's class has school on the day at all. */
function hasSchool(household: HouseholdRow, { childId, date }: BoxPlan): boolean {
  const child = household.children.find((row) => row.id === childId);
  const enrolment = child ? enrolmentOn(child, date) : null;
  const school = household.schools.find((row) => row.id === enrolment?.schoolId);
  return enrolment !== null && school !== undefined && isSchoolDay(school, enrolment.schoolClassId, date);
}
