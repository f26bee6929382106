import type { Food } from "../../../shared/catalogue.js";
import type { EquipmentKind } from "../../../shared/codes.js";
import type { BreakBrief, ChildDayBrief } from "../brief.js";
import { minuteOfDay } from "./clock.js";
import type { Fault } from "./fault.js";
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
    AMBIENT: limits.ambientMinutes,
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

/** Food that travels cold was cold when the box was closed: nothing in it was heated, or still cooling, that same morning. */
function checkColdStart(week: WeekRead, read: ItemRead): Fault[] {
  if (!needsCold(read) || read.packed) return [];
  const { dish, box, child } = read;
  const thatMorning = (key: string): boolean => {
    const session = week.sessions.get(key);
    return session?.kind === "MORNING" && session.date === box.date;
  };
  const finishing = week.draft.tasks.filter(
    (task) =>
      task.dish === dish.key &&
      task.forDates.includes(box.date) &&
      task.childIds.includes(child.id) &&
      thatMorning(task.session),
  );
  const heated = finishing.some((task) => task.kind === "COOL" || task.equipment.some((use) => heats.has(use.kind)));
  const cooked = week.draft.batches.some(
    (batch) =>
      thatMorning(batch.session) &&
      batch.feeds.some((feed) => feed.date === box.date) &&
      dish.bases.some((use) => use.base === batch.base) &&
      (week.bases.get(batch.base)?.equipment ?? []).some((use) => heats.has(use.kind)),
  );
  return heated || cooked ? [{ kind: "HOT_WHEN_PACKED", ...place(read) }] : [];
}

/** Time and temperature of every item from leaving home to the end of its break, recomputed from clock times. */
export function checkHolding(week: WeekRead): Fault[] {
  return week.items.flatMap((read) => {
    const { day, atBreak } = read;
    if (!day || !atBreak) return [];
    return [...checkCase(week, read, day), ...checkMinutes(week, read, day, atBreak), ...checkColdStart(week, read)];
  });
}
