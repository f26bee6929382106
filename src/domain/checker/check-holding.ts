import type { Food } from "../../../shared/catalogue.js";
import type { EquipmentKind } from "../../../shared/codes.js";
import type { BreakBrief, ChildDayBrief } from "../brief.js";
import { minuteOfDay } from "./clock.js";
import type { Fault } from "./fault.js";
import { followItem, growsIn, heldHeat, type Carried } from "./holding-curve.js";
import { place } from "./week-read.js";
import type { ItemRead, WeekRead } from "./week-read.js";

/**
 * Not time/temperature-controlled by water activity and pH: US FDA Food Code 1-201.10, Table B (food that is not heated,
 * or heated and not packaged afterwards, the stricter of its two tables). An unknown figure counts as the worst column.
 */
function needsNoControl(food: Food): boolean {
  const activity = food.waterActivity?.value ?? 1;
  const ph = food.ph?.value ?? 14;
  if (activity < 0.88) return true;
  if (activity <= 0.9) return ph <= 5;
  if (activity <= 0.92) return ph <= 4.6;
  return ph < 4.2;
}

const needsCold = (read: ItemRead): boolean =>
  read.item.holding.case === "CHILLED" || read.item.holding.case === "REHEATED_AT_SCHOOL";

function checkCase(week: WeekRead, read: ItemRead, day: ChildDayBrief): Fault[] {
  const { item, dish, parts, child, box } = read;
  const at = place(read);
  const faults: Fault[] = [];
  const wrongCase = (holds: boolean): void => {
    if (!holds) faults.push({ kind: "HOLDING_CASE_WRONG", ...at });
  };
  wrongCase(dish.served === "EITHER" || dish.served === item.served);
  switch (item.holding.case) {
    case "CHILLED":
    case "AMBIENT":
      wrongCase(item.served === "COLD");
      break;
    case "NOT_CONTROLLED":
      wrongCase(item.served === "COLD" && parts.length > 0 && parts.every(({ food }) => needsNoControl(food)));
      break;
    case "FLASK":
      wrongCase(item.served === "WARM");
      if (!child.box.flask || !box.flask) faults.push({ kind: "FLASK_MISSING", ...at });
      break;
    case "REHEATED_AT_SCHOOL":
      wrongCase(item.served === "WARM");
      if (day.facility !== "REHEATING") faults.push({ kind: "NO_REHEATING", ...at });
      break;
  }
  if (needsCold(read)) {
    const { coldSources } = week.brief.holding;
    if (!(box.coldSources >= coldSources && child.box.coldSources >= box.coldSources)) {
      faults.push({
        kind: "COLD_SOURCES_MISSING",
        ...at,
        found: Math.min(box.coldSources, child.box.coldSources),
        limit: coldSources,
      });
    }
    if (!child.box.insulated) faults.push({ kind: "NOT_INSULATED", ...at });
  }
  return faults;
}

function checkMinutes(week: WeekRead, read: ItemRead, day: ChildDayBrief, atBreak: BreakBrief): Fault[] {
  const { item, dish } = read;
  const at = place(read);
  const limits = week.brief.holding;
  // From the door to the last bite: the end of the break, not its start.
  const minutes = minuteOfDay(atBreak.startsAt) + atBreak.minutes - minuteOfDay(day.leaveAt);
  const limit = {
    CHILLED: limits.chilledMinutes,
    REHEATED_AT_SCHOOL: limits.chilledMinutes,
    FLASK: limits.flaskMinutes,
    AMBIENT: day.hotDay === true ? limits.hotDayAmbientMinutes : limits.ambientMinutes,
    NOT_CONTROLLED: Number.POSITIVE_INFINITY,
  }[item.holding.case];
  const faults: Fault[] = [];
  if (!(minutes > 0 && item.holding.minutes === minutes))
    faults.push({ kind: "HOLDING_MINUTES_WRONG", ...at, found: item.holding.minutes, limit: minutes });
  // A printed limit may be tighter than the table (a heat model may tighten), never looser.
  const printed = item.holding.limitMinutes;
  if (!(minutes <= limit && minutes <= printed && printed <= limit))
    faults.push({ kind: "HOLDING_TOO_LONG", ...at, found: minutes, limit: Math.min(limit, printed) });
  if (!(minutes <= dish.goodForHours * 60))
    faults.push({ kind: "GOOD_FOR_TOO_SHORT", ...at, found: minutes, limit: dish.goodForHours * 60 });
  return faults;
}

/** Appliances that leave food hot. */
const heats: ReadonlySet<EquipmentKind> = new Set<EquipmentKind>([
  "HOB_BURNER",
  "OVEN",
  "STEAMER",
  "MICROWAVE",
  "TOASTER",
  "RICE_COOKER",
  "WAFFLE_IRON",
  "PRESSURE_COOKER",
]);

/** Minutes from the first that was heated, or set to cool, for this item that morning to leaving home; null when nothing was. */
function heatedBefore(week: WeekRead, read: ItemRead): number | null {
  const { dish, box, child } = read;
  const thatMorning = (key: string): boolean => {
    const session = week.sessions.get(key);
    return session?.kind === "MORNING" && session.date === box.date;
  };
  const began = [
    ...week.draft.tasks
      .filter(
        (task) =>
          task.dish === dish.key &&
          task.forDates.includes(box.date) &&
          task.childIds.includes(child.id) &&
          thatMorning(task.session) &&
          (task.kind === "COOL" || task.equipment.some((use) => heats.has(use.kind))),
      )
      .map((task) => task.startsAt),
    ...week.draft.batches
      .filter(
        (batch) =>
          thatMorning(batch.session) &&
          batch.feeds.some((feed) => feed.date === box.date) &&
          dish.bases.some((use) => use.base === batch.base) &&
          (week.bases.get(batch.base)?.equipment ?? []).some((use) => heats.has(use.kind)),
      )
      .map((batch) => week.sessions.get(batch.session)?.startsAt ?? box.leaveAt),
  ].map((time) => Math.max(0, minuteOfDay(box.leaveAt) - minuteOfDay(time)));
  return began.length > 0 ? Math.max(...began) : null;
}

/** Food that travels cold was cold when the box was closed: nothing in it was heated, or still cooling, that same morning. */
function checkColdStart(week: WeekRead, read: ItemRead): Fault[] {
  if (!needsCold(read) || read.packed) return [];
  return heatedBefore(week, read) === null ? [] : [{ kind: "HOT_WHEN_PACKED", ...place(read) }];
}

/**
 * How far the printed figures may lie on the mild side of the checker's own: it reckons heat capacity from fewer parts and
 * integrates otherwise. Minutes, °C, log10.
 */
const TOLERANCE = { minutes: 3, celsius: 0.5, log10: 0.03 } as const;

/** How the item is carried by its printed case and what was done that morning; null where nothing needs control. */
function carriedHow(read: ItemRead, day: ChildDayBrief, heated: number | null): Carried | null {
  const hotDay = day.hotDay === true;
  switch (read.item.holding.case) {
    case "NOT_CONTROLLED":
      return null;
    case "FLASK":
      return { way: "FLASK" };
    case "AMBIENT":
      return heated === null ? { way: "COLD", hotDay } : { way: "WARM" };
    case "CHILLED":
    case "REHEATED_AT_SCHOOL":
      return { way: "CHILLED", coldSources: Math.min(read.box.coldSources, read.child.box.coldSources), hotDay };
  }
}

/** Heat and growth worked out again: the item within the limits to its last bite, nothing printed that is milder. */
function checkModel(week: WeekRead, read: ItemRead, day: ChildDayBrief, atBreak: BreakBrief): Fault[] {
  const { model } = week.brief.holding;
  const { item, parts } = read;
  const heated = heatedBefore(week, read);
  const carried = carriedHow(read, day, heated);
  const minutes = minuteOfDay(atBreak.startsAt) + atBreak.minutes - minuteOfDay(day.leaveAt);
  // Without a cold source there is nothing to reckon with; that is a fault of its own.
  const bare = carried?.way === "CHILLED" && carried.coldSources < 1;
  if (model === undefined || carried === null || bare || !(minutes > 0)) return [];
  const before = carried.way === "WARM" ? (heated ?? 0) : 0;
  const printed = item.holding.limitMinutes;
  const asked = before + Math.max(minutes, printed) + 1;
  const own = followItem(
    model,
    carried,
    heldHeat(model.parameters, parts, item.grams),
    growsIn(model, parts),
    Math.min(asked, 24 * 60),
  );
  const at = place(read);
  const limit = own.goodUntil - before;
  const faults: Fault[] = [];
  if (minutes > limit + TOLERANCE.minutes)
    faults.push({ kind: "HOLDING_MODEL_EXCEEDED", ...at, found: minutes, limit: Math.max(0, limit) });
  if (printed > Math.max(0, limit) + TOLERANCE.minutes)
    faults.push({ kind: "HOLDING_LIMIT_LOOSE", ...at, found: printed, limit: Math.max(0, limit) });
  const { forecast } = item.holding;
  if (forecast === undefined) return faults;
  const grown = own.grown[before + minutes] ?? 0;
  const warmest = own.warmest[before + minutes] ?? 0;
  if (!(forecast.growthLog10 >= grown - TOLERANCE.log10))
    faults.push({ kind: "HOLDING_FORECAST_MILD", ...at, found: forecast.growthLog10, limit: grown });
  else if (!(forecast.mostCelsius >= warmest - TOLERANCE.celsius))
    faults.push({ kind: "HOLDING_FORECAST_MILD", ...at, found: forecast.mostCelsius, limit: warmest });
  return faults;
}

/** Time and temperature of every item from leaving home to the end of its break, recomputed from clock times. */
export function checkHolding(week: WeekRead): Fault[] {
  return week.items.flatMap((read) => {
    const { day, atBreak } = read;
    if (!day || !atBreak) return [];
    return [
      ...checkCase(week, read, day),
      ...checkMinutes(week, read, day, atBreak),
      ...checkColdStart(week, read),
      ...checkModel(week, read, day, atBreak),
    ];
  });
}
