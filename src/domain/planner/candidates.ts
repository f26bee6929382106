/** What may stand at each place of the week, and why everything else may not. Safety, school and kitchen only; taste is priced later. */
import type { Base, Dish, Food } from "../../../shared/catalogue.js";
import {
  slotCode,
  type AllergenCode,
  type DietCode,
  type EquipmentKind,
  type FacilityCode,
  type OriginCode,
  type SlotCode,
} from "../../../shared/codes.js";
import type { RuleKind } from "../../../shared/rule-set.js";
import type {
  BreakBrief,
  ChildBrief,
  ChildDayBrief,
  LabelBrief,
  PinBrief,
  PlaceBrief,
  SessionBrief,
  WeekBrief,
} from "../brief.js";
import { addDays, ageOn, minutesOf } from "../calendar/dates.js";
import { dietAllows, expandAllergen, judgeAllergies } from "../catalogue/allergens.js";
import type { CatalogueIndex, DerivedDish } from "../catalogue/derive.js";
import { judgeChoking } from "../food-safety/choking.js";
import { judgeHolding, type HoldingFault } from "../food-safety/holding.js";
import { comesHotOutOf } from "../kitchen/heat.js";
import { hasStood, hasStoodByMorning } from "../kitchen/standing.js";
import { baseMinutes, finishSteps, packMinutesPerBox, type FinishPart } from "../kitchen/work.js";
import { nutrientsGiven, type GivenNutrients } from "../nutrition/given-food.js";
import { dailyNeeds, type DailyNeeds } from "../nutrition/needs.js";
import { portionFor, type Portion } from "../nutrition/portion.js";
import { rulesInForce, servingLimits, type RuleInForce } from "../rules/in-force.js";
import { createRuleTables, type RuleTables } from "../rules/compile.js";
import { findUnknownFigure, judgeItem, type ItemRuleFailure } from "../rules/judge-item.js";
import type { CutPlan, HoldingPlan, ItemPlan } from "../week.js";

/** A dish that may stand at a place, as this child would get it there. */
export interface CandidateDish {
  readonly derived: DerivedDish;
  readonly portion: Portion;
  readonly served: ItemPlan["served"];
  readonly holding: HoldingPlan;
  readonly cuts: readonly CutPlan[];
  readonly labelsToRead: readonly string[];
  /** Item rules of level ADVISE it goes against. */
  readonly advised: readonly ItemRuleFailure[];
  /** Whole ml of this portion, rounded up. */
  readonly volumeMl: number;
  /** It travels in the flask, not in a compartment. */
  readonly inFlask: boolean;
}

export interface PlaceCandidates {
  readonly place: PlaceBrief;
  readonly child: ChildBrief;
  readonly day: ChildDayBrief;
  readonly break: BreakBrief;
  readonly needs: DailyNeeds;
  /** What the school gives the child that day. */
  readonly given: GivenNutrients;
  readonly dishes: readonly CandidateDish[];
  readonly pin: PinBrief | null;
}

export type ExclusionCause =
  | { readonly kind: "ALLERGEN" | "MAY_CONTAIN"; readonly allergen: string; readonly food: string }
  | { readonly kind: "KEPT_OUT"; readonly allergen: AllergenCode; readonly food: string }
  | { readonly kind: "DIET"; readonly diet: DietCode; readonly origins: readonly OriginCode[] }
  | {
      readonly kind: "CHOKING";
      readonly food: string;
      readonly class: string;
      readonly underAgeYears: number;
      readonly source: string;
    }
  | {
      readonly kind: "HOLDING" | "FACILITY";
      readonly fault: HoldingFault["kind"];
      readonly minutes: number;
      readonly limitMinutes: number;
      readonly mend: HoldingFault["mend"];
      readonly facility: FacilityCode;
      readonly source: string;
    }
  | {
      readonly kind: "RULE";
      readonly ruleSet: string;
      readonly rule: string;
      readonly ruleKind: RuleKind;
      readonly source: string;
    }
  | { readonly kind: "OUT_OF"; readonly foodKind: string }
  | {
      readonly kind: "EQUIPMENT";
      readonly equipment: EquipmentKind;
      readonly neededUnits: number;
      readonly haveUnits: number;
    }
  /** No session of this week can make the base, and none is ready. */
  | { readonly kind: "NO_SESSION"; readonly base: string }
  /** The steps that have to be done that morning take longer than there is before the child leaves. */
  | {
      readonly kind: "MORNING_TOO_SHORT";
      readonly session: string;
      readonly neededMinutes: number;
      readonly haveMinutes: number;
    }
  | { readonly kind: "VOLUME"; readonly ml: number; readonly compartmentMl: number };

export interface Exclusion {
  readonly childId: string;
  readonly date: string;
  readonly breakKey: string;
  readonly slot: SlotCode;
  readonly dish: string;
  readonly why: ExclusionCause;
}

export interface Candidates {
  /** By child, date, break and slot, in the order of the brief. */
  readonly places: readonly PlaceCandidates[];
  readonly exclusions: readonly Exclusion[];
}

/**
 * Every dish for every place, or the first cause that shuts it out there, asked in this order: what the household keeps out,
 * allergies, diets, choking, what the kitchen lacks, the morning's clock, rules, holding, space. Dislikes shut nothing out,
 * and what is packed already no longer asks the kitchen. Throws RangeError
 * on a brief whose rule set indices or times contradict each other.
 * @param shouldStop asked before every dish; its answer counts for nothing, as a part of the dishes would be no answer: who no
 *   longer wants any throws from it
 */
export function findCandidates(brief: WeekBrief, index: CatalogueIndex, shouldStop?: () => boolean): Candidates {
  const places: PlaceCandidates[] = [];
  const exclusions: Exclusion[] = [];
  const labels = labelsThroughPurchase(brief);
  const kitchen = createKitchenFilter(brief, index, labels);
  const tables = createRuleTables(labels, brief.credits);
  const inSlot = new Map(
    slotCode.options.map((slot) => [slot, index.dishes.filter((dish) => dish.slots.includes(slot))]),
  );
  for (const child of brief.children) {
    const judgeForChild = createChildFilter(brief, child, labels);
    const [firstDay] = child.days;
    if (firstDay === undefined) continue;
    // One day's needs for the whole week: a child does not grow out of a portion from Monday to Friday.
    const needs = dailyNeeds(child, firstDay.date, brief.household.energyMethod);
    /** What a dish comes to at a place, for days that are alike. */
    const fittedAlike = new Map<string, Map<string, CandidateDish | ExclusionCause>>();
    for (const day of child.days) {
      const rules = rulesInForce(brief, child, day);
      const age = ageOn(child.dateOfBirth, day.date);
      const given = nutrientsGiven(day, child.allergies, (key) => index.food(key));
      const alike = JSON.stringify([
        day.breaks,
        day.given ?? [],
        day.leaveAt,
        day.facility,
        day.hotDay ?? false,
        minutesSinceMorning(brief.sessions, day),
        age,
        rules.map(({ ruleSet, rule }) => [ruleSet, rule.id]),
        brief.sessions
          .filter(({ kind, date }) => kind === "EVENING" && date === addDays(day.date, -1))
          .map(({ handsOnMinutes, elapsedMinutes }) => [handsOnMinutes, elapsedMinutes]),
      ]);
      const fitted = fittedAlike.get(alike) ?? new Map<string, CandidateDish | ExclusionCause>();
      fittedAlike.set(alike, fitted);
      const items = day.breaks.reduce((sum, pause) => sum + pause.slots.length, 0);
      for (const pause of day.breaks) {
        const givenKcal = nutrientsGiven(day, child.allergies, (key) => index.food(key), pause.key).of("ENERC_KCAL");
        pause.slots.forEach((slot, position) => {
          const place: PlaceBrief = { childId: child.id, date: day.date, breakKey: pause.key, slot, position };
          const pin = brief.pins.find((candidate) => isAt(candidate, place)) ?? null;
          const dishes: CandidateDish[] = [];
          for (const dish of inSlot.get(slot) ?? []) {
            shouldStop?.();
            const key = `${pause.key}/${slot}/${dish.key}`;
            const derived = index.derived(dish.key);
            const packed = pin?.because === "PACKED" && pin.dish === dish.key;
            const cause =
              kitchen.judgeFood(derived) ??
              judgeForChild(derived, age) ??
              (packed ? null : kitchen.judgeWork(dish, derived, day, items));
            const found =
              cause ??
              fitted.get(key) ??
              fitToPlace({
                brief,
                labels,
                child,
                day,
                age,
                pause,
                slot,
                derived,
                rules,
                tables,
                energyKcal: needs.energyKcal,
                givenKcal,
              });
            if (cause === null) fitted.set(key, found);
            if ("kind" in found) {
              exclusions.push({
                childId: child.id,
                date: day.date,
                breakKey: pause.key,
                slot,
                dish: dish.key,
                why: found,
              });
            } else {
              dishes.push(found);
            }
          }
          places.push({ place, child, day, break: pause, needs, given, dishes, pin });
        });
      }
    }
  }
  return { places, exclusions };
}

/**
 * The labels on record, carried over to what is made of the labelled food: the label of dry lentils speaks for cooked ones.
 */
export function labelsThroughPurchase(brief: Pick<WeekBrief, "labels" | "catalogue">): readonly LabelBrief[] {
  const made = brief.catalogue.foods.flatMap((food) =>
    food.boughtAs === null
      ? []
      : brief.labels
          .filter((label) => label.food === food.boughtAs?.food)
          .map((label) => ({ ...label, food: food.key })),
  );
  return [...brief.labels, ...made];
}

/** Whether two places are one. */
export function isAt(left: PlaceBrief, right: PlaceBrief): boolean {
  return (
    left.childId === right.childId &&
    left.date === right.date &&
    left.breakKey === right.breakKey &&
    left.position === right.position
  );
}

/** Minutes from the first hand to a closed box, for one portion of a dish's steps: cooling runs beside later steps unless the mould is held. */
export function chainMinutes(dish: Dish, part: FinishPart): number {
  let clock = 0;
  let ready = 0;
  for (const step of finishSteps(dish, part)) {
    clock += step.handsOnFixedMinutes + step.handsOnPerPortionMinutes + step.passiveMinutes;
    ready = Math.max(ready, clock + step.coolMinutes);
    if (step.heldWhileCooling) clock += step.coolMinutes;
  }
  return Math.max(clock, ready);
}

/** Minutes from the start of the morning session until the box has to be closed and gone; null without a session that morning. */
export function morningMinutes(sessions: readonly SessionBrief[], day: ChildDayBrief): number | null {
  const session = sessions.find((candidate) => candidate.kind === "MORNING" && candidate.date === day.date);
  if (session === undefined) return null;
  return Math.min(session.elapsedMinutes, minutesOf(day.leaveAt) - minutesOf(session.startsAt));
}

/** Minutes from the start of the morning session, when the first pan may come off the heat, to leaving; 0 without a session. */
function minutesSinceMorning(sessions: readonly SessionBrief[], day: ChildDayBrief): number {
  const session = sessions.find((candidate) => candidate.kind === "MORNING" && candidate.date === day.date);
  return session === undefined ? 0 : Math.max(0, minutesOf(day.leaveAt) - minutesOf(session.startsAt));
}

/** The evening before a date, if the household cooks then and the session can hold the dish's evening steps. */
export function canFinishEveningBefore(sessions: readonly SessionBrief[], dish: Dish, date: string): boolean {
  if (finishSteps(dish, "EVENING").length === 0) return false;
  const eve = addDays(date, -1);
  const session = sessions.find((candidate) => candidate.kind === "EVENING" && candidate.date === eve);
  return session !== undefined && session.handsOnMinutes > 0 && chainMinutes(dish, "EVENING") <= session.elapsedMinutes;
}

/** Whether what is cooked for a dish can be done, and so be cold, by the morning it is packed. */
function isColdByMorning(sessions: readonly SessionBrief[], dish: Dish, date: string): boolean {
  if (comesHotOutOf(dish, "MORNING_REST")) return false;
  return !comesHotOutOf(dish, "EVENING") || canFinishEveningBefore(sessions, dish, date);
}

/** A food and what is bought to make it. */
function rowsOf(index: CatalogueIndex, food: Food): Food[] {
  const bought = food.boughtAs === null ? undefined : index.food(food.boughtAs.food);
  return bought === undefined ? [food] : [food, bought];
}

/**
 * The food kind a base cannot be cooked for want of, in a session or (without one) in any; null when nothing is missing. What is cooked
 * already is not asked.
 */
export function missingKind(
  brief: WeekBrief,
  index: CatalogueIndex,
  base: Base,
  session?: SessionBrief,
): string | null {
  const kinds = base.ingredients.flatMap(({ food: key }) => {
    const food = index.food(key);
    return food === undefined ? [] : rowsOf(index, food).map((row) => row.kind);
  });
  return kinds.find((kind) => brief.outOf.includes(kind) || isMissing(session, kind)) ?? null;
}

const isMissing = (session: SessionBrief | undefined, foodKind: string): boolean =>
  session?.without?.foodKinds.includes(foodKind) === true;

/** An appliance among these that cannot be used in a session, null when there is none. */
export const brokenIn = (
  session: SessionBrief | undefined,
  uses: readonly { readonly kind: EquipmentKind }[],
): EquipmentKind | null => uses.find(({ kind }) => session?.without?.equipment.includes(kind))?.kind ?? null;

/** What shuts a dish out of this kitchen this week, whoever eats it; each answer is worked out once. */
function createKitchenFilter(brief: WeekBrief, index: CatalogueIndex, labels: readonly LabelBrief[]) {
  const { equipment, keepsOut } = brief.household;
  const keptOut = new Set(keepsOut.flatMap((allergen) => expandAllergen(allergen)));
  const outOf = new Set(brief.outOf);
  const unitsOf = (kind: EquipmentKind): number =>
    equipment.filter((owned) => owned.kind === kind).reduce((sum, owned) => sum + owned.units, 0);
  const lacking = (uses: readonly { kind: EquipmentKind; units: number }[]): ExclusionCause | null => {
    const use = uses.find((needed) => needed.units > unitsOf(needed.kind));
    return use === undefined
      ? null
      : { kind: "EQUIPMENT", equipment: use.kind, neededUnits: use.units, haveUnits: unitsOf(use.kind) };
  };
  const isReady = (base: string): boolean =>
    brief.ready.some((ready) => ready.base === base) || brief.made.some((made) => made.base === base);
  const judgeBase = (key: string): ExclusionCause | null => {
    const base = index.base(key);
    if (base === undefined || isReady(key)) return null;
    const foodKind = missingKind(brief, index, base);
    if (foodKind !== null) return { kind: "OUT_OF", foodKind };
    const missing = lacking(base.equipment);
    if (missing !== null) return missing;
    const load = baseMinutes(base, 1, equipment);
    const fitting = brief.sessions.filter(
      (session) =>
        base.windows.includes(session.kind) &&
        load.handsOn <= session.handsOnMinutes &&
        load.handsOn + load.passive <= session.elapsedMinutes,
    );
    if (fitting.length === 0) return { kind: "NO_SESSION", base: key };
    const lacks = fitting.map((session) => lacksIn(session, base));
    return lacks.includes(null) ? null : lacks[0]!;
  };
  /** What a base cannot be made for want of in one session. */
  const lacksIn = (session: SessionBrief, base: Base): ExclusionCause | null => {
    const foodKind = missingKind(brief, index, base, session);
    if (foodKind !== null) return { kind: "OUT_OF", foodKind };
    const broken = brokenIn(session, base.equipment);
    return broken === null ? null : brokenCause(broken, base.equipment);
  };
  const brokenCause = (
    equipment: EquipmentKind,
    uses: readonly { kind: EquipmentKind; units: number }[],
  ): ExclusionCause => ({
    kind: "EQUIPMENT",
    equipment,
    neededUnits: uses.reduce((most, use) => (use.kind === equipment ? Math.max(most, use.units) : most), 0),
    haveUnits: 0,
  });
  /**
   * What a dish cannot be finished for want of on one morning and the evening before. A food has to be there for both, for nobody knows
   * yet when it will be finished; of the appliances it is enough that one of the two ways can do without what is broken.
   */
  const judgeDay = rememberCause(
    ({ derived, date }: { derived: DerivedDish; date: string }) => `${derived.dish.key}@${date}`,
    ({ derived: { dish, ingredients }, date }) => {
      const morning = brief.sessions.find((session) => session.kind === "MORNING" && session.date === date);
      const evening = canFinishEveningBefore(brief.sessions, dish, date)
        ? brief.sessions.find((session) => session.kind === "EVENING" && session.date === addDays(date, -1))
        : undefined;
      if (morning?.without === undefined && evening?.without === undefined) return null;
      for (const { food, viaBase } of ingredients) {
        if (viaBase !== null) continue;
        const row = rowsOf(index, food).find(({ kind }) => isMissing(morning, kind) || isMissing(evening, kind));
        if (row !== undefined) return { kind: "OUT_OF", foodKind: row.kind };
      }
      const uses = (part: FinishPart) => finishSteps(dish, part).flatMap((step) => step.equipment);
      const broken = brokenIn(morning, uses("ALL"));
      if (broken === null) return null;
      const isSplitPossible =
        evening !== undefined &&
        brokenIn(evening, uses("EVENING")) === null &&
        brokenIn(morning, uses("MORNING_REST")) === null;
      return isSplitPossible ? null : brokenCause(broken, uses("ALL"));
    },
  );
  /**
   * A base that has to stand must be ready for the session that takes it: the evening before where the dish may be finished then,
   * for nobody knows yet whether it will, else the morning. Every session whose product the morning could take has to make it.
   */
  const judgeStanding = rememberCause(
    ({ dish, date }: { dish: Dish; date: string }) => `${dish.key}@${date}`,
    ({ dish, date }) => {
      const evening = canFinishEveningBefore(brief.sessions, dish, date)
        ? brief.sessions.find((session) => session.kind === "EVENING" && session.date === addDays(date, -1))
        : undefined;
      for (const { base: key } of dish.bases) {
        const base = index.base(key);
        if (base?.restMinutes == null) continue;
        const inDate = brief.sessions.filter(
          (session) =>
            base.windows.includes(session.kind) &&
            hasStoodByMorning(brief.sessions, base, session, date) &&
            date <= addDays(session.date, base.keepsChilledDays - (session.kind === "EVENING" ? 0 : 1)),
        );
        const late = inDate.some((session) => evening !== undefined && !hasStood(base, session, evening));
        if (late || (inDate.length === 0 && !isReady(key))) return { kind: "NO_SESSION", base: key };
      }
      return null;
    },
  );
  const judgeFood = rememberCause(
    (derived: DerivedDish) => derived.dish.key,
    (derived) => {
      for (const { food } of derived.ingredients) {
        const labelled = labels.filter((label) => label.food === food.key).flatMap((label) => label.contains);
        const always = rowsOf(index, food).flatMap((row) => row.allergens);
        const allergen = [...always, ...labelled].find((named) => keptOut.has(named));
        if (allergen !== undefined) return { kind: "KEPT_OUT", allergen, food: food.key };
      }
      return null;
    },
  );
  const judgeMeans = rememberCause(
    (derived: DerivedDish) => derived.dish.key,
    ({ dish, ingredients }) => {
      for (const { food, viaBase } of ingredients) {
        const row = rowsOf(index, food).find(({ kind }) => outOf.has(kind));
        if (row !== undefined && viaBase === null) return { kind: "OUT_OF", foodKind: row.kind };
      }
      const causes = [
        ...dish.steps.map((step) => lacking(step.equipment)),
        ...dish.bases.map((use) => judgeBase(use.base)),
      ];
      return causes.find((cause) => cause !== null) ?? null;
    },
  );
  const judgeMorning = rememberCause(
    ({ dish, day, items }: { dish: Dish; day: ChildDayBrief; items: number }) =>
      `${dish.key}@${day.date}/${day.leaveAt}/${items}`,
    ({ dish, day, items }) => {
      const have = morningMinutes(brief.sessions, day);
      const part = canFinishEveningBefore(brief.sessions, dish, day.date) ? "MORNING_REST" : "ALL";
      const needed = chainMinutes(dish, part) + packMinutesPerBox(items);
      if (have !== null && needed <= have) return null;
      const haveMinutes = Math.max(0, have ?? 0);
      return {
        kind: "MORNING_TOO_SHORT",
        session: `morning-${day.date}`,
        neededMinutes: Math.ceil(needed),
        haveMinutes,
      };
    },
  );
  return {
    judgeFood,
    judgeWork: (dish: Dish, derived: DerivedDish, day: ChildDayBrief, items: number): ExclusionCause | null =>
      judgeMeans(derived) ??
      judgeDay({ derived, date: day.date }) ??
      judgeStanding({ dish, date: day.date }) ??
      judgeMorning({ dish, day, items }),
  };
}

/** Asks `judge` once per key. */
function rememberCause<T>(
  keyOf: (input: T) => string,
  judge: (input: T) => ExclusionCause | null,
): (input: T) => ExclusionCause | null {
  const known = new Map<string, ExclusionCause | null>();
  return (input) => {
    const key = keyOf(input);
    const found = known.get(key);
    if (found !== undefined) return found;
    const cause = judge(input);
    known.set(key, cause);
    return cause;
  };
}

/** What shuts a dish out for a child on a date wherever it is eaten: allergies, diets, choking. */
function createChildFilter(
  brief: WeekBrief,
  child: ChildBrief,
  labels: readonly LabelBrief[],
): (derived: DerivedDish, age: number) => ExclusionCause | null {
  const judge = (derived: DerivedDish, age: number): ExclusionCause | null => {
    const verdict = judgeAllergies(child.allergies, derived, labels);
    if (verdict.kind === "CONTAINS") return { kind: "ALLERGEN", allergen: verdict.allergen, food: verdict.food };
    if (verdict.kind === "MAY_CONTAIN") return { kind: "MAY_CONTAIN", allergen: verdict.allergen, food: verdict.food };
    const diet = child.diets.find((code) => !dietAllows([code], derived.origins));
    if (diet !== undefined) return { kind: "DIET", diet, origins: derived.origins };
    const choking = judgeChoking(age, derived, brief.choking);
    if (choking.allowed) return null;
    const { rule, food } = choking;
    return { kind: "CHOKING", food, class: rule.class, underAgeYears: rule.underAgeYears, source: rule.source };
  };
  const remember = rememberCause(
    ({ derived, age }: { derived: DerivedDish; age: number }) => `${derived.dish.key}@${age}`,
    ({ derived, age }) => judge(derived, age),
  );
  return (derived, age) => remember({ derived, age });
}

interface PlaceInput {
  readonly brief: WeekBrief;
  readonly labels: readonly LabelBrief[];
  readonly child: ChildBrief;
  readonly day: ChildDayBrief;
  /** Completed years that day. */
  readonly age: number;
  readonly pause: BreakBrief;
  readonly slot: SlotCode;
  readonly derived: DerivedDish;
  readonly rules: readonly RuleInForce[];
  readonly tables: RuleTables;
  readonly energyKcal: number;
  /** Energy the school gives at the break. */
  readonly givenKcal: number;
}

/** Rules, holding and space at one place. */
function fitToPlace(input: PlaceInput): CandidateDish | ExclusionCause {
  const { brief, labels, child, day, age, pause, slot, derived, rules } = input;
  const { dish } = derived;
  const portion = portionFor({
    energyKcal: input.energyKcal,
    appetite: child.appetite,
    breakEnergyShare: pause.energyShare,
    slot,
    slots: pause.slots,
    slotShares: brief.slotShares,
    givenKcal: input.givenKcal,
    derived,
  });
  const item = { derived, slot, labels };
  const judged = judgeItem(rules, item, pause.key, portion.grams, input.tables);
  const forbidden = judged.forbidden[0] ?? findUnknownFigure(rules, item, pause.key, input.tables);
  if (forbidden !== undefined) {
    const set = brief.ruleSets[forbidden.ruleSet];
    const source = set?.rules.find((rule) => rule.id === forbidden.ruleId)?.source ?? "";
    return { kind: "RULE", ruleSet: set?.key ?? "", rule: forbidden.ruleId, ruleKind: forbidden.kind, source };
  }
  const serving = servingLimits(rules, pause.key);
  const holding = judgeHolding({
    dish,
    derived,
    grams: portion.grams,
    leaveAt: day.leaveAt,
    breakStartsAt: pause.startsAt,
    breakMinutes: pause.minutes,
    facility: day.facility,
    reheatingAllowed: serving.reheatingAllowed,
    box: child.box,
    limits: brief.holding,
    coldByMorning: isColdByMorning(brief.sessions, dish, day.date),
    cookedMinutesBefore: minutesSinceMorning(brief.sessions, day),
    hotDay: day.hotDay ?? false,
  });
  if (!holding.ok) {
    const { kind: fault, minutes, limitMinutes, mend } = holding.error;
    const kind = fault === "NeedsFlask" || fault === "NeedsReheating" ? "FACILITY" : "HOLDING";
    return { kind, fault, minutes, limitMinutes, mend, facility: day.facility, source: brief.holding.source };
  }
  const { served, ...plan } = holding.value;
  const inFlask = plan.case === "FLASK";
  const volumeMl = Math.ceil(dish.volumeMl * portion.scale - 1e-9);
  const compartmentMl = child.box.compartments
    .filter((compartment) => dish.spill !== "WET" || compartment.leakProof)
    .reduce((most, compartment) => Math.max(most, compartment.ml), 0);
  if (!inFlask && volumeMl > compartmentMl) return { kind: "VOLUME", ml: volumeMl, compartmentMl };
  const choking = judgeChoking(age, derived, brief.choking);
  const allergies = judgeAllergies(child.allergies, derived, labels);
  return {
    derived,
    portion,
    served,
    holding: plan,
    cuts: choking.allowed ? choking.cuts : [],
    labelsToRead: allergies.kind === "CLEAR_IF_LABEL_READ" ? allergies.foods : [],
    advised: judged.advised,
    volumeMl,
    inFlask,
  };
}
