/** A solved problem back in the household's words: boxes, batches, tasks on the clock, shopping, cautions, and why. */
import type { ChildBrief, ChildDayBrief, CompartmentBrief, WeekBrief } from "../brief.js";
import { addDays } from "../calendar/dates.js";
import { expandAllergen } from "../catalogue/allergens.js";
import { scheduleSessions, type TimetableFault } from "../kitchen/timetable.js";
import { listWork } from "../kitchen/work.js";
import { fail, ok, type Result } from "../result.js";
import { shop, whatIsBought } from "../shopping/shopping.js";
import { withSpareUses } from "../shopping/spare-uses.js";
import type {
  BatchPlan,
  BoxPlan,
  Caution,
  ItemPlan,
  ReadyUse,
  Reason,
  TaskPlan,
  WeekDraft,
  WishTotals,
} from "../week.js";
import { isAt, type CandidateDish } from "./candidates.js";
import { UNITS_PER_GRAM, type FormulationKey } from "./formulate.js";
import type { Problem, Solution } from "./problem.js";
import { giveReasons } from "./reasons.js";
import type { RuleRow } from "./rule-rows.js";
import type { Pick, SolvedWeek } from "./solved-week.js";
import { POINT } from "./problem-tables.js";

/** What the problem does not model and the week has to pass all the same. */
export type LayOutFault =
  | (TimetableFault & {
      /** Hands-on minutes of the session's work but for packing: what the search put there. */
      readonly plannedMinutes: number;
      /** The base that keeps the session longest, hands and waiting; null when none is made in it. */
      readonly longestBase: string | null;
    })
  | {
      readonly kind: "BoxDoesNotClose";
      readonly childId: string;
      readonly date: string;
      readonly ml: number;
      /** It would close if wet and dry food might lie together. */
      readonly mixes: boolean;
    };

/**
 * Lays out a feasible solution. Fails when a box's items do not fit its compartments one by one, or a session's work does not fit
 * its clock; every such fault is listed.
 */
export function layOut(input: SolvedWeek): Result<WeekDraft, LayOutFault[]> {
  const { brief, index, problem, layout, solution } = input;
  const picks = solution.picks.flatMap((candidate, position): Pick[] => {
    const place = layout.places[position];
    const dish = layout.options[position]?.[candidate];
    return place === undefined || dish === undefined ? [] : [{ place, dish, position }];
  });
  const supply = layOutSupply(input, picks);
  const reasonsFor = giveReasons(input, picks, supply.batches);
  const faults: LayOutFault[] = [];
  const boxes: BoxPlan[] = [];
  for (const child of brief.children) {
    for (const day of child.days) {
      const inBox = picks.filter(({ place }) => place.child === child && place.day === day);
      const dishes = inBox.map(({ dish }) => dish);
      const compartments = packBox(child.box.compartments, dishes);
      if (compartments === null) {
        const ml = inBox.reduce((sum, { dish }) => sum + (dish.inFlask ? 0 : dish.volumeMl), 0);
        const mixes = packBox(child.box.compartments, dishes, true) !== null;
        faults.push({ kind: "BoxDoesNotClose", childId: child.id, date: day.date, ml, mixes });
      } else boxes.push(layOutBox(input, child, day, inBox, compartments, reasonsFor));
    }
  }
  if (faults.length > 0) return fail(faults);

  const open = withoutPacked(brief, boxes);
  const eveningFinish = new Set(
    solution.eveningFinish.map(({ dish, day }) => `${layout.dishes[dish] ?? ""}@${layout.dates[day] ?? ""}`),
  );
  const work = listWork({
    brief,
    index,
    boxes: open,
    batches: supply.batches,
    readyUses: supply.readyUses,
    eveningFinish,
  });
  const timetable = scheduleSessions({ sessions: brief.sessions, equipment: brief.household.equipment, work });
  if (!timetable.ok)
    return fail(
      timetable.error.map((fault) => {
        const here = work.filter(({ session }) => session === fault.session);
        const bases = here
          .filter(({ kind }) => kind === "BASE")
          .map(({ base, handsOnMinutes, passiveMinutes }) => ({ base, minutes: handsOnMinutes + passiveMinutes }))
          .sort((a, b) => b.minutes - a.minutes);
        return {
          ...fault,
          plannedMinutes: here
            .filter(({ kind }) => kind !== "PACK")
            .reduce((sum, { handsOnMinutes }) => sum + handsOnMinutes, 0),
          longestBase: bases[0]?.base ?? null,
        };
      }),
    );
  const { tasks, sessions } = timetable.value;
  const shopping = withSpareUses({
    index,
    lines: shop({ index, boxes: open, batches: supply.batches, stock: brief.stock, labels: brief.labels }),
    openedOn: openingDays(input, open, supply.batches, tasks),
    nextWeek: addDays(brief.weekStart, 7),
    mayHave: childrenByDish(input),
    inStock: new Set(brief.stock.map((row) => row.food)),
  });
  const costMinor = shopping.reduce((sum, line) => sum + line.costMinor, 0);
  return ok({
    boxes,
    batches: supply.batches,
    readyUses: supply.readyUses,
    tasks,
    sessions,
    shopping,
    cautions: [
      ...listCautions(input, picks, boxes, supply.batches, tasks),
      ...listReadyUnused(brief, supply.readyUses),
    ],
    wishes: totalWishes(problem, layout, solution, picks, tasks, supply.batches, costMinor),
  });
}

/** The day each food is first taken from its pack: when the first task is done that handles it, else with the first box it is in. */
function openingDays(
  { brief, index }: SolvedWeek,
  boxes: readonly BoxPlan[],
  batches: readonly BatchPlan[],
  tasks: readonly TaskPlan[],
): Map<string, string> {
  const dateOf = new Map(brief.sessions.map(({ key, date }) => [key, date]));
  const days = new Map<string, string>();
  const open = (food: string, date: string): void => {
    const key = whatIsBought(index, food, 0)?.food.key;
    if (key !== undefined && date < (days.get(key) ?? "~")) days.set(key, date);
  };
  const openDish = (dish: string, date: string): void =>
    index.dish(dish)?.ingredients.forEach(({ food }) => open(food, date));
  for (const { base, session, made } of batches)
    if (!made) index.base(base)?.ingredients.forEach(({ food }) => open(food, dateOf.get(session) ?? "~"));
  for (const { dish, session } of tasks) if (dish !== null) openDish(dish, dateOf.get(session) ?? "~");
  for (const box of boxes) for (const item of box.items) openDish(item.dish, box.date);
  return days;
}

/** Who could have had each dish at some place of the week, in the order of the children. */
function childrenByDish({ layout }: SolvedWeek): Map<string, string[]> {
  const children = new Map<string, string[]>();
  layout.places.forEach(({ child }, p) => {
    for (const { derived } of layout.options[p] ?? []) {
      const ids = children.get(derived.dish.key) ?? [];
      if (!ids.includes(child.id)) ids.push(child.id);
      children.set(derived.dish.key, ids);
    }
  });
  return children;
}

/** Leftovers that no box eats up, and frozen portions that would not last into the next week. */
function listReadyUnused(brief: WeekBrief, uses: readonly ReadyUse[]): Caution[] {
  return brief.ready.flatMap(({ id, base, grams, from, lastDate }): Caution[] => {
    const used = uses.filter(({ readyId }) => readyId === id).reduce((sum, use) => sum + use.grams, 0);
    const left = Math.floor(grams - used);
    const keeps = from === "FREEZER" && lastDate >= addDays(brief.weekStart, 7);
    return left < 1 || keeps ? [] : [{ kind: "READY_UNUSED", readyId: id, base, from, grams: left, lastDate }];
  });
}

/** Items of a packed box need no more work and no more shopping. */
function withoutPacked(brief: WeekBrief, boxes: readonly BoxPlan[]): BoxPlan[] {
  const packed = brief.pins.filter((pin) => pin.because === "PACKED");
  return boxes
    .map((box) => ({
      ...box,
      items: box.items.filter(
        (item) => !packed.some((pin) => isAt(pin, { ...item, childId: box.childId, date: box.date })),
      ),
    }))
    .filter((box) => box.items.length > 0);
}

/**
 * A compartment for every item (-1: the flask), so that volumes add up to no more than each holds, wet food lies in a leak-proof one
 * and never beside dry food; null when there is none. Largest first, an empty compartment before a shared one, with backtracking:
 * a box has few items.
 * @param mayMix wet beside dry after all: only to find out what keeps a box from closing
 */
export function packBox(
  compartments: readonly CompartmentBrief[],
  dishes: readonly CandidateDish[],
  mayMix = false,
): number[] | null {
  const order = dishes.map((_, item) => item).filter((item) => dishes[item]?.inFlask === false);
  const volume = (item: number): number => dishes[item]?.volumeMl ?? 0;
  const spill = (item: number): string | undefined => dishes[item]?.derived.dish.spill;
  const isWet = (item: number): boolean => spill(item) === "WET";
  order.sort((a, b) => volume(b) - volume(a) || a - b);
  const left = compartments.map(({ ml }) => ml);
  const inside = compartments.map((): number[] => []);
  const at = dishes.map(() => -1);
  const mixes = (item: number, others: readonly number[]): boolean => {
    const together = [item, ...others].map(spill);
    return !mayMix && together.includes("WET") && together.includes("DRY");
  };
  const fill = (next: number): boolean => {
    const item = order[next];
    if (item === undefined) return true;
    const choices = compartments
      .map(({ leakProof }, c) => ({ c, leakProof, free: left[c] ?? 0, others: inside[c] ?? [] }))
      .filter(
        ({ free, leakProof, others }) => free >= volume(item) && (leakProof || !isWet(item)) && !mixes(item, others),
      )
      .sort(
        (a, b) =>
          a.others.length - b.others.length ||
          Number(a.leakProof && !isWet(item)) - Number(b.leakProof && !isWet(item)) ||
          a.free - b.free ||
          a.c - b.c,
      );
    for (const { c, free, others } of choices) {
      left[c] = free - volume(item);
      inside[c] = [...others, item];
      at[item] = c;
      if (fill(next + 1)) return true;
      left[c] = free;
      inside[c] = others;
    }
    return false;
  };
  return fill(0) ? at : null;
}

function layOutBox(
  { brief }: SolvedWeek,
  child: ChildBrief,
  day: ChildDayBrief,
  inBox: readonly Pick[],
  compartments: readonly number[],
  reasonsFor: (pick: Pick) => Reason[],
): BoxPlan {
  const items = inBox.map(({ place, dish, position }, i): ItemPlan => {
    const { derived, portion } = dish;
    const carbohydrate = derived.missing.some((gap) => gap.nutrient === "CHOCDF")
      ? undefined
      : derived.nutrients.CHOCDF;
    return {
      breakKey: place.place.breakKey,
      slot: place.place.slot,
      position: place.place.position,
      dish: derived.dish.key,
      grams: portion.grams,
      pieces: portion.pieces,
      served: dish.served,
      energyKcal: Math.round((derived.nutrients.ENERC_KCAL ?? 0) * portion.scale),
      carbohydrateGrams: carbohydrate === undefined ? null : Math.round(carbohydrate * portion.scale * 10) / 10,
      compartment: compartments[i] ?? -1,
      cuts: dish.cuts,
      holding: dish.holding,
      labelsToRead: dish.labelsToRead,
      pinned: place.pin !== null,
      why: reasonsFor({ place, dish, position }),
    };
  });
  const chilled = inBox.some(
    ({ dish }) => dish.holding.case === "CHILLED" || dish.holding.case === "REHEATED_AT_SCHOOL",
  );
  const cutlery = new Set(inBox.map(({ dish }) => dish.derived.dish.cutlery));
  return {
    childId: child.id,
    date: day.date,
    leaveAt: day.leaveAt,
    // As many as the item that asks for most was judged with.
    coldSources: inBox.reduce(
      (most, { dish }) => Math.max(most, dish.holding.forecast?.coldSources ?? 0),
      chilled ? Math.min(child.box.coldSources, brief.holding.coldSources) : 0,
    ),
    flask: inBox.some(({ dish }) => dish.inFlask),
    cutlery: (["SPOON", "FORK", "CHOPSTICKS"] as const).filter((tool) => cutlery.has(tool)),
    items,
  };
}

interface Need {
  readonly childId: string;
  grams: number;
}

/** Whole-gram batches and what they feed: children in order of the brief take from the day's supply, ready food first. */
function layOutSupply(
  { brief, index, problem, layout, solution }: SolvedWeek,
  picks: readonly Pick[],
): { batches: BatchPlan[]; readyUses: ReadyUse[] } {
  /** Per base and day, what is still to be handed out. */
  const needs = new Map<string, Need[]>();
  for (const { place, position } of picks) {
    const candidate = problem.positions[position]?.candidates[solution.picks[position] ?? -1];
    for (const { base, amount } of candidate?.bases ?? []) {
      const key = `${base}/${layout.dates.indexOf(place.place.date)}`;
      const rows = needs.get(key) ?? [];
      const row = rows.find((need) => need.childId === place.child.id);
      if (row === undefined) rows.push({ childId: place.child.id, grams: amount / UNITS_PER_GRAM });
      else row.grams += amount / UNITS_PER_GRAM;
      needs.set(key, rows);
    }
  }
  const handOut = (base: number, day: number, units: number, child: number): BatchPlan["feeds"][number] => {
    let left = units / UNITS_PER_GRAM;
    const childIds: string[] = [];
    for (const need of needs.get(`${base}/${day}`) ?? []) {
      if (child >= 0 && need.childId !== brief.children[child]?.id) continue;
      const taken = Math.min(left, need.grams);
      if (taken <= 0) continue;
      need.grams -= taken;
      left -= taken;
      childIds.push(need.childId);
    }
    return { date: layout.dates[day] ?? "", childIds, grams: units / UNITS_PER_GRAM };
  };

  const readyUses: ReadyUse[] = [];
  const madeFeeds = brief.made.map((): BatchPlan["feeds"][number][] => []);
  for (const use of [...solution.readyUse].sort((a, b) => a.day - b.day || a.ready - b.ready)) {
    const source = layout.ready[use.ready];
    const base = problem.ready[use.ready]?.base;
    if (source === undefined || base === undefined) continue;
    const feed = handOut(base, use.day, use.amount, -1);
    if (source.kind === "MADE") addFeed(madeFeeds[source.index] ?? [], feed);
    else {
      const readyId = brief.ready[source.index]?.id ?? "";
      const same = readyUses.findIndex((row) => row.readyId === readyId && row.date === feed.date);
      const before = readyUses[same];
      const row = {
        readyId,
        base: layout.bases[base] ?? "",
        date: feed.date,
        grams: feed.grams + (before?.grams ?? 0),
      };
      if (before === undefined) readyUses.push(row);
      else readyUses[same] = row;
    }
  }
  const made = brief.made.map(({ base, session, batches }, m): BatchPlan => {
    const grams = batches * Math.floor(index.base(base)?.batchGrams ?? 0);
    return batchPlan({ base, session, batches, grams, made: true }, madeFeeds[m] ?? []);
  });
  const planned = solution.batches.map((batch): BatchPlan => {
    const feeds = batch.supply.flatMap((units, day) =>
      units > 0 ? [handOut(batch.base, day, units, batch.child)] : [],
    );
    const grams = (batch.batches * (problem.bases[batch.base]?.batchAmount ?? 0)) / UNITS_PER_GRAM;
    const session = layout.sessions[batch.window] ?? "";
    return batchPlan(
      { base: layout.bases[batch.base] ?? "", session, batches: batch.batches, grams, made: false },
      feeds,
    );
  });
  return { batches: [...made, ...planned], readyUses };
}

function addFeed(feeds: BatchPlan["feeds"][number][], feed: BatchPlan["feeds"][number]): void {
  const same = feeds.findIndex((row) => row.date === feed.date);
  const before = feeds[same];
  if (before === undefined) feeds.push(feed);
  else
    feeds[same] = {
      date: feed.date,
      childIds: [...new Set([...before.childIds, ...feed.childIds])],
      grams: before.grams + feed.grams,
    };
}

function batchPlan(batch: Omit<BatchPlan, "feeds" | "spareGrams">, feeds: BatchPlan["feeds"]): BatchPlan {
  return { ...batch, feeds, spareGrams: batch.grams - feeds.reduce((sum, feed) => sum + feed.grams, 0) };
}

/** Advice over a box or a week that the picks do not meet. */
function isMet(row: RuleRow, picks: readonly Pick[]): boolean {
  const bound = picks.filter(({ position }) => row.positions.includes(position));
  if (row.row === "TOGETHER") {
    const has = (measure: typeof row.first): boolean => bound.some(({ dish, place }) => measure(dish, place) > 0);
    return !(has(row.first) && has(row.second));
  }
  if (row.row === "SUM") {
    const sum = bound.reduce((total, { dish, place }) => total + row.measure(dish, place), 0);
    return sum >= (row.atLeast ?? sum) && sum <= (row.atMost ?? sum);
  }
  const matching = bound.filter(({ dish, place }) => row.measure(dish, place) > 0);
  const found = new Set(
    matching.flatMap(({ dish, place }) =>
      row.counts === "DAYS" ? [place.place.date] : (row.kindOf(dish, place) ?? []),
    ),
  ).size;
  return found >= row.atLeast && found <= (row.atMost ?? found);
}

/** Bases that are cooked before they are kept: they have to be cold soon. */
const heatedKinds: ReadonlySet<string> = new Set(["GRAIN", "PULSE", "VEGETABLE", "SAUCE", "FILLING", "PROTEIN"]);

function listCautions(
  { brief, index, layout }: SolvedWeek,
  picks: readonly Pick[],
  boxes: readonly BoxPlan[],
  batches: readonly BatchPlan[],
  tasks: readonly TaskPlan[],
): Caution[] {
  const cautions: Caution[] = (["LABELS", "CHOKING", "HOLDING", "NUTRITION"] as const).map((about) => ({
    kind: "GENERAL",
    about,
  }));
  for (const child of brief.children) {
    const foods = new Set(picks.filter(({ place }) => place.child === child).flatMap(({ dish }) => dish.labelsToRead));
    const allergens = child.allergies.flatMap(({ allergen, foodKind }): string[] =>
      allergen === null ? (foodKind === null ? [] : [foodKind]) : [...expandAllergen(allergen)],
    );
    for (const food of [...foods].sort()) cautions.push({ kind: "READ_LABEL", childId: child.id, food, allergens });
  }
  for (const box of boxes) {
    const at = { childId: box.childId, date: box.date };
    if (box.coldSources > 0) cautions.push({ kind: "KEEP_COLD", ...at, coldSources: box.coldSources });
    for (const { dish, cuts, holding } of box.items) {
      for (const cut of new Set(cuts.map((row) => row.cut))) cautions.push({ kind: "CUT_FOR_AGE", ...at, dish, cut });
      if (holding.case === "FLASK") cautions.push({ kind: "PREHEAT_FLASK", ...at, dish });
      if (holding.case === "REHEATED_AT_SCHOOL") cautions.push({ kind: "REHEAT_THROUGH", ...at, dish });
    }
  }
  for (const { key: session } of brief.sessions) {
    const inSession = tasks.filter((task) => task.session === session);
    const handled = new Set(inSession.flatMap((task) => task.handles));
    if (handled.size > 0) cautions.push({ kind: "CLEAN_BETWEEN", session, allergens: [...handled].sort() });
  }
  for (const { base, session, made } of batches) {
    const row = index.base(base);
    const kept = row !== undefined && row.passiveMinutes > 0 && heatedKinds.has(row.kind);
    if (!made && kept) cautions.push({ kind: "COOL_QUICKLY", session, base });
  }
  for (const child of brief.children) cautions.push(...resting(brief, child));
  const unmet = new Set<string>();
  const advise = (childId: string, date: string | null, ruleSet: string, rule: string): void => {
    const key = [childId, date ?? "", ruleSet, rule].join("/");
    if (!unmet.has(key)) cautions.push({ kind: "ADVICE_NOT_MET", childId, date, ruleSet, rule });
    unmet.add(key);
  };
  for (const { place, dish } of picks) {
    for (const { ruleSet, ruleId } of dish.advised)
      advise(place.child.id, place.place.date, brief.ruleSets[ruleSet]?.key ?? "", ruleId);
  }
  for (const row of layout.advice) if (!isMet(row, picks)) advise(row.childId, row.date, row.ruleSet, row.rule.id);
  const counted = new Set(layout.targets.map((target) => target.nutrient));
  const missing = new Map(
    picks
      .flatMap(({ dish }) => dish.derived.missing)
      .filter((gap) => counted.has(gap.nutrient) || gap.nutrient === "ENERC_KCAL")
      .map((gap) => [`${gap.food}/${gap.nutrient}`, gap]),
  );
  for (const [, { food, nutrient }] of [...missing].sort(([a], [b]) => (a < b ? -1 : 1)))
    cautions.push({ kind: "FIGURE_MISSING", food, nutrient });
  return cautions;
}

/** The rules that rest for a child, each with the days on which it does. */
function resting({ ruleSets }: SolvedWeek["brief"], child: ChildBrief): Caution[] {
  const found = new Map<string, { readonly ruleSet: string; readonly rule: string; readonly dates: string[] }>();
  for (const { date, exempt = [] } of child.days)
    for (const { ruleSet: at, rule } of exempt) {
      const ruleSet = ruleSets[at]?.key ?? "";
      const key = `${ruleSet}/${rule}`;
      const before = found.get(key);
      if (before) before.dates.push(date);
      else found.set(key, { ruleSet, rule, dates: [date] });
    }
  return [...found.values()].map((row) => ({ kind: "RULE_RESTS", childId: child.id, ...row }));
}

function totalWishes(
  problem: Problem,
  layout: FormulationKey,
  solution: Solution,
  picks: readonly Pick[],
  tasks: readonly TaskPlan[],
  batches: readonly BatchPlan[],
  costMinor: number,
): WishTotals {
  const nutrientShortfallPercent = layout.targets.reduce((sum, { measure, positions, target, direction }) => {
    const found = positions.reduce(
      (total, p) => total + (problem.positions[p]?.candidates[solution.picks[p] ?? -1]?.q[measure] ?? 0),
      0,
    );
    return sum + Math.max(0, (direction * (target - found) * 100) / target);
  }, 0);
  const points = (of: FormulationKey["refusalPoints"]): number =>
    picks.reduce((sum, { dish, place }) => sum + of(dish, place), 0);
  return {
    handsOnMinutes: Math.round(tasks.reduce((sum, task) => sum + task.handsOnMinutes, 0) * 10) / 10,
    costMinor,
    spareBaseGrams: batches.filter((batch) => !batch.made).reduce((sum, batch) => sum + batch.spareGrams, 0),
    nutrientShortfallPercent: Math.round(nutrientShortfallPercent * 10) / 10,
    refusalPoints: points(layout.refusalPoints),
    monotonyPoints: points(layout.monotonyPoints),
    objectivePoints: solution.objective / POINT,
  };
}
