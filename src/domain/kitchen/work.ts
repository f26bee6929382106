/** Turns a chosen week (boxes, batches) into the work of each prep session, before anyone has put it on the clock. */
import type { Base, Dish, DishStep, Food } from "../../../shared/catalogue.js";
import type { EquipmentKind } from "../../../shared/codes.js";
import type { SessionBrief, WeekBrief } from "../brief.js";
import { addDays } from "../calendar/dates.js";
import { widenAllergy } from "../catalogue/allergens.js";
import type { CatalogueIndex } from "../catalogue/derive.js";
import { compare } from "../compare.js";
import type { BatchPlan, BoxPlan, ReadyUse, TaskPlan } from "../week.js";

/**
 * A task that is not on the clock yet. Durations in minutes, tenths count; everything else as in `TaskPlan`. Each
 * appliance is held from the start of the task for its own `minutes`, which may reach past the end of the task (a mould
 * that cools).
 */
export type Work = Omit<TaskPlan, "startsAt" | "handsFreeAt" | "endsAt" | "latestStartsAt" | "carer"> & {
  /** "HH:MM" on the day of the session: the task has ended by then (a box, before its child leaves). */
  readonly mustEndBy: string | null;
};

/**
 * Closing one box: fetch box and cold sources, then place each item, close and label.
 * 1.5 min a box and 0.5 min an item are our own estimate, not measured in a kitchen.
 */
const PACK_MINUTES_PER_BOX = 1.5;
const PACK_MINUTES_PER_ITEM = 0.5;
/** Moving a portion from freezer to refrigerator: our own estimate. */
const DEFROST_MINUTES = 0.5;

/** Hands-on minutes to pack one box with `items` items. */
export function packMinutesPerBox(items: number): number {
  return PACK_MINUTES_PER_BOX + PACK_MINUTES_PER_ITEM * items;
}

/** Vessels the food stays in until it has set; with one of them in a step, only they stay busy while it cools. */
const MOULDS: ReadonlySet<EquipmentKind> = new Set<EquipmentKind>(["CAKE_MOULD_SET", "MUFFIN_TRAY"]);

/** Which steps: all of them in the morning, or the split between the evening before and that morning. */
export type FinishPart = "ALL" | "EVENING" | "MORNING_REST";

/**
 * Steps are done in order, so only the leading run of steps that may be done the evening before can be moved there; a
 * later step that would allow it still waits for the morning step before it.
 */
export function finishSteps(dish: Dish, part: FinishPart): readonly DishStep[] {
  const firstMorning = dish.steps.findIndex((step) => !step.eveningBefore);
  const evening = firstMorning === -1 ? dish.steps.length : firstMorning;
  if (part === "ALL") return dish.steps;
  return part === "EVENING" ? dish.steps.slice(0, evening) : dish.steps.slice(evening);
}

export interface FinishMinutes {
  /** Hands-on minutes once per dish and session. */
  readonly fixed: number;
  readonly perPortion: number;
  /** Unit-minutes one go of the appliance takes (two burners for 10 min: 20). One row per kind. */
  readonly equipment: readonly { readonly kind: EquipmentKind; readonly minutes: number }[];
  /** The smallest go among the steps that use an appliance; 0: no limit. */
  readonly portionsPerGo: number;
}

/**
 * What finishing a dish takes, in the very figures of `listWork`. `portionsAtOnce` (at least 1) only lengthens the hold
 * of appliances that are busy while hands work; a go never takes more than its capacity. With several goes the
 * equipment figure is not below the truth: every go carries the fixed hands-on minutes here, in the kitchen only the
 * first does.
 */
export function finishLoad(dish: Dish, part: FinishPart, portionsAtOnce = 1): FinishMinutes {
  const steps = finishSteps(dish, part);
  const held = new Map<EquipmentKind, number>();
  let portionsPerGo = 0;
  for (const step of steps) {
    const portions = Math.min(portionsAtOnce, step.batchPortions ?? portionsAtOnce);
    const handsOn = step.handsOnFixedMinutes + step.handsOnPerPortionMinutes * portions;
    for (const use of stepEquipment(step, handsOn))
      held.set(use.kind, (held.get(use.kind) ?? 0) + use.units * use.minutes);
    if (step.equipment.length > 0 && step.batchPortions !== null) {
      portionsPerGo = portionsPerGo === 0 ? step.batchPortions : Math.min(portionsPerGo, step.batchPortions);
    }
  }
  return {
    fixed: steps.reduce((sum, step) => sum + step.handsOnFixedMinutes, 0),
    perPortion: steps.reduce((sum, step) => sum + step.handsOnPerPortionMinutes, 0),
    equipment: [...held].map(([kind, minutes]) => ({ kind, minutes })),
    portionsPerGo,
  };
}

function stepEquipment(step: DishStep, handsOnMinutes: number): TaskPlan["equipment"] {
  const hasMould = step.equipment.some((use) => MOULDS.has(use.kind));
  return step.equipment.map((use) => {
    const cooling = step.heldWhileCooling && (!hasMould || MOULDS.has(use.kind)) ? step.coolMinutes : 0;
    return { kind: use.kind, units: use.units, minutes: handsOnMinutes + step.passiveMinutes + cooling };
  });
}

export interface BaseMinutes {
  readonly handsOn: number;
  readonly passive: number;
  readonly equipment: TaskPlan["equipment"];
}

/**
 * What `batches` batches of a base take in one session: set-up once, hands-on per batch, and as many batches side by
 * side as the kitchen's units allow, the rest one round after the other. hands-on + passive is the shortest the session
 * can be.
 */
export function baseMinutes(base: Base, batches: number, equipment: WeekBrief["household"]["equipment"]): BaseMinutes {
  const handsOn = base.fixedHandsOnMinutes + base.perBatchHandsOnMinutes * batches;
  const sideBySide = base.equipment.reduce((most, use) => {
    const units = equipment.find((owned) => owned.kind === use.kind)?.units ?? 0;
    return Math.max(1, Math.min(most, Math.floor(units / use.units)));
  }, batches);
  const rounds = base.equipment.length === 0 ? 1 : Math.ceil(batches / sideBySide);
  const busy = rounds * base.equipmentMinutes;
  const passive =
    rounds === 1
      ? base.passiveMinutes
      : Math.max(
          base.passiveMinutes + (rounds - 1) * Math.min(base.equipmentMinutes, base.passiveMinutes),
          busy - handsOn,
        );
  // The catalogue does not say whether hands work at the appliance or before it: it is held for both.
  const held = Math.min(handsOn + busy, handsOn + passive);
  return {
    handsOn,
    passive,
    equipment: base.equipment.map((use) => ({ kind: use.kind, units: use.units * sideBySide, minutes: held })),
  };
}

export interface WorkInput {
  readonly brief: WeekBrief;
  readonly index: CatalogueIndex;
  /** What is still to be packed: an item of a packed box asks for no more work. */
  readonly boxes: readonly BoxPlan[];
  readonly batches: readonly BatchPlan[];
  readonly readyUses: readonly ReadyUse[];
  /** `${dish}@${date}`: the steps that allow it are done the evening before. */
  readonly eveningFinish: ReadonlySet<string>;
}

/** One dish on one date, for every child who has it (for one child when the household does not share). */
interface Finish {
  readonly date: string;
  readonly dish: Dish;
  readonly key: string;
  readonly childIds: string[];
  portions: number;
  /** Every portion goes hot into a flask: letting it cool first would be the one thing not to do. */
  hot: boolean;
}

/**
 * All work of the week: BASE for each batch not made yet, DEFROST the evening before, FINISH step by step with one task
 * per go of an appliance, COOL after it, PACK for each box. A predecessor in `after` may lie in an earlier session.
 * `after`: base before finishing in the same session, steps in order (a step waits for cooling only when the food cools
 * in its mould), everything of a box, cooled, before it is packed.
 */
export function listWork(input: WorkInput): Work[] {
  const { brief, index } = input;
  const handled = listAvoided(brief);
  const sessions = new Set(brief.sessions.map((session) => session.key));
  const boxes = [...input.boxes].sort((a, b) => compare(a.date, b.date) || compare(a.childId, b.childId));
  const work: Work[] = [];
  /** Base and defrost tasks: what finishing in the same session has to wait for. */
  const supplies: { session: string; base: string; date: string; childIds: readonly string[]; key: string }[] = [];

  const foodsOfBase = (base: Base): Food[] =>
    base.ingredients.flatMap((ingredient) => {
      const food = index.food(ingredient.food);
      if (food === undefined) return [];
      const bought = food.boughtAs === null ? undefined : index.food(food.boughtAs.food);
      return bought === undefined ? [food] : [food, bought];
    });
  const foodsOfDish = (key: string): Food[] =>
    index.derived(key).ingredients.flatMap(({ food, bought }) => [food, bought]);

  const baseKeys = new Map<string, number>();
  for (const batch of input.batches) {
    const base = index.base(batch.base);
    if (batch.made || batch.batches === 0 || base === undefined) continue;
    const plainKey = `base:${batch.base}@${batch.session}`;
    const same = (baseKeys.get(plainKey) ?? 0) + 1;
    baseKeys.set(plainKey, same);
    const key = same === 1 ? plainKey : `${plainKey}#${same}`;
    const load = baseMinutes(base, batch.batches, brief.household.equipment);
    work.push({
      key,
      session: batch.session,
      kind: "BASE",
      base: batch.base,
      dish: null,
      text: `${base.name}, ${count(batch.batches, "batch", "batches")}: ${base.steps.join(" ")}${
        base.restMinutes == null ? "" : ` Let it stand at least ${inHours(base.restMinutes)} before it is used.`
      }`,
      childIds: distinct(batch.feeds.flatMap((feed) => feed.childIds)),
      forDates: distinct(batch.feeds.map((feed) => feed.date)),
      handsOnMinutes: load.handsOn,
      passiveMinutes: load.passive,
      equipment: load.equipment,
      after: [],
      handles: handled(foodsOfBase(base)),
      mustEndBy: null,
    });
    for (const feed of batch.feeds) supplies.push({ session: batch.session, base: batch.base, key, ...feed });
  }

  for (const use of input.readyUses) {
    const ready = brief.ready.find((candidate) => candidate.id === use.readyId);
    const base = index.base(use.base);
    if (ready?.from !== "FREEZER" || base === undefined) continue;
    const key = `defrost:${use.readyId}@${use.date}`;
    if (supplies.some((supply) => supply.key === key)) continue;
    const session = sessionBefore(brief.sessions, use.date);
    const grams = input.readyUses
      .filter((other) => other.readyId === use.readyId && other.date === use.date)
      .reduce((sum, other) => sum + other.grams, 0);
    const childIds = distinct(
      boxes
        .filter((box) => box.date === use.date && box.items.some((item) => usesBase(index.dish(item.dish), use.base)))
        .map((box) => box.childId),
    );
    work.push({
      key,
      session,
      kind: "DEFROST",
      base: use.base,
      dish: null,
      text: `Move ${Math.ceil(grams)} g of ${base.name} from the freezer to the refrigerator.`,
      childIds,
      forDates: [use.date],
      handsOnMinutes: DEFROST_MINUTES,
      passiveMinutes: 0,
      equipment: [],
      after: [],
      handles: handled(foodsOfBase(base)),
      mustEndBy: null,
    });
    supplies.push({ session, base: use.base, date: use.date, childIds, key });
  }

  const finishes = new Map<string, Finish>();
  const finishKey = (dish: string, box: BoxPlan): string =>
    brief.sharing ? `finish:${dish}@${box.date}` : `finish:${dish}@${box.date}/${box.childId}`;
  for (const box of boxes) {
    for (const item of box.items) {
      const dish = index.dish(item.dish);
      if (dish === undefined) throw new Error(`no dish ${item.dish} in the catalogue`);
      const key = finishKey(item.dish, box);
      const finish = finishes.get(key) ?? { date: box.date, dish, key, childIds: [], portions: 0, hot: true };
      finish.portions += 1;
      finish.hot &&= goesHot(item);
      if (!finish.childIds.includes(box.childId)) finish.childIds.push(box.childId);
      finishes.set(key, finish);
    }
  }

  /** Per finish: the tasks a box has to wait for, and the cooling besides that only a cold item waits for. */
  const doneWhen = new Map<string, { readonly done: string[]; readonly cooled: string[] }>();
  for (const finish of finishes.values()) {
    const evening = `evening-${addDays(finish.date, -1)}`;
    const split = input.eveningFinish.has(`${finish.dish.key}@${finish.date}`) && sessions.has(evening);
    const eveningSteps = split ? finishSteps(finish.dish, "EVENING").length : 0;
    const cooled: string[] = [];
    let before: string[] = [];
    finish.dish.steps.forEach((step, stepIndex) => {
      const session = stepIndex < eveningSteps ? evening : `morning-${finish.date}`;
      const opensSession = stepIndex === 0 || stepIndex === eveningSteps;
      const needed = !opensSession
        ? []
        : supplies.filter(
            (supply) =>
              supply.session === session &&
              supply.date === finish.date &&
              usesBase(finish.dish, supply.base) &&
              supply.childIds.some((childId) => finish.childIds.includes(childId)),
          );
      const perGo = step.batchPortions ?? finish.portions;
      const goes = Math.ceil(finish.portions / perGo);
      const next: string[] = [];
      for (let go = 0; go < goes; go += 1) {
        const portions = Math.min(perGo, finish.portions - go * perGo);
        const handsOn = (go === 0 ? step.handsOnFixedMinutes : 0) + step.handsOnPerPortionMinutes * portions;
        const key = `${finish.key}#${stepIndex + 1}${goes > 1 ? `.${go + 1}` : ""}`;
        // The first portions can move on while the next go is still cooking, when both steps go in the same portions.
        const ownBefore = before.length === goes ? before.slice(go, go + 1) : before;
        const common = {
          session,
          base: null,
          dish: finish.dish.key,
          childIds: finish.childIds,
          forDates: [finish.date],
          handles: handled(foodsOfDish(finish.dish.key)),
          mustEndBy: null,
        };
        const heading = `${finish.dish.name}, ${count(portions, "portion", "portions")}`;
        work.push({
          ...common,
          key,
          kind: "FINISH",
          text: `${heading}${goes > 1 ? ` (go ${go + 1} of ${goes})` : ""}: ${step.text}`,
          handsOnMinutes: handsOn,
          passiveMinutes: step.passiveMinutes,
          equipment: stepEquipment(step, handsOn),
          after: distinct([...needed.map((supply) => supply.key), ...ownBefore]),
        });
        let last = key;
        if (step.coolMinutes > 0 && (!finish.hot || step.heldWhileCooling)) {
          const coolKey = `${key}/cool`;
          work.push({
            ...common,
            key: coolKey,
            kind: "COOL",
            text: `${heading}: leave to cool for ${step.coolMinutes} min${step.heldWhileCooling ? " where it is" : ""}.`,
            handsOnMinutes: 0,
            passiveMinutes: step.coolMinutes,
            // A mould held meanwhile is part of the cooking task's own hold, so that nothing slips in between.
            equipment: [],
            after: [key],
          });
          cooled.push(coolKey);
          if (step.heldWhileCooling) last = coolKey;
        }
        next.push(last);
      }
      before = next;
    });
    doneWhen.set(finish.key, { done: before, cooled });
  }

  for (const box of boxes) {
    if (box.items.length === 0) continue;
    const childName = brief.children.find((child) => child.id === box.childId)?.name ?? box.childId;
    const dishes = distinct(box.items.map((item) => item.dish));
    work.push({
      key: `pack:${box.childId}@${box.date}`,
      session: `morning-${box.date}`,
      kind: "PACK",
      base: null,
      dish: null,
      text: `Pack the box of ${childName}: ${dishes.map((dish) => index.dish(dish)?.name ?? dish).join(", ")}.`,
      childIds: [box.childId],
      forDates: [box.date],
      handsOnMinutes: packMinutesPerBox(box.items.length),
      passiveMinutes: 0,
      equipment: [],
      after: distinct(
        box.items.flatMap((item) => {
          const when = doneWhen.get(finishKey(item.dish, box));
          if (when === undefined) return [];
          return goesHot(item) ? when.done : [...when.done, ...when.cooled];
        }),
      ),
      handles: handled(dishes.flatMap(foodsOfDish)),
      mustEndBy: box.leaveAt,
    });
  }
  return work;
}

/**
 * What foods bring that some child of the household avoids: allergens they always have, what their labels on record name or
 * say they may contain, and single foods. Sorted.
 */
function listAvoided(brief: WeekBrief): (foods: readonly Food[]) => string[] {
  const avoided = new Set<string>(
    brief.children
      .flatMap((child) => child.allergies)
      .map(widenAllergy)
      .flatMap(({ allergens, kinds }) => [...allergens, ...kinds]),
  );
  const onLabel = new Map<string, string[]>();
  for (const { food, contains, mayContain, kinds: lookedFor = [] } of brief.labels) {
    const named = lookedFor.filter(({ says }) => says !== "CLEAR").map(({ kind }) => kind);
    onLabel.set(food, [...(onLabel.get(food) ?? []), ...contains, ...mayContain, ...named]);
  }
  return (foods) =>
    distinct(foods.flatMap(({ key, kind, allergens: always }) => [...always, kind, ...(onLabel.get(key) ?? [])]))
      .filter((name) => avoided.has(name))
      .sort();
}

/** The evening before `date`, else the last session before that morning, else that morning itself. */
function sessionBefore(sessions: readonly SessionBrief[], date: string): string {
  const evening = `evening-${addDays(date, -1)}`;
  const morning = `morning-${date}`;
  if (sessions.some((session) => session.key === evening)) return evening;
  return sessions.filter((session) => session.date < date).at(-1)?.key ?? morning;
}

const goesHot = (item: BoxPlan["items"][number]): boolean => item.holding.case === "FLASK";
const usesBase = (dish: Dish | undefined, base: string): boolean =>
  dish?.bases.some((use) => use.base === base) ?? false;
const distinct = (values: readonly string[]): string[] => [...new Set(values)];
const inHours = (minutes: number): string =>
  [`${Math.floor(minutes / 60)} h`, ...(minutes % 60 === 0 ? [] : [`${minutes % 60} min`])].join(" ");
const count = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;
