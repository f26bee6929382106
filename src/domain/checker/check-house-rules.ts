import type { HouseRule } from "../brief.js";
import { dayNumber } from "./clock.js";
import type { Fault } from "./fault.js";
import { groupBy } from "./week-read.js";
import type { ItemRead, WeekRead } from "./week-read.js";

const placeKey = ({ item }: ItemRead): string => [item.breakKey, item.slot, item.position].join("|");

function compareSiblings(date: string, first: readonly ItemRead[], second: readonly ItemRead[]): Fault[] {
  const byPlace = new Map(second.map((read) => [placeKey(read), read]));
  const pairs = first.flatMap((read) => {
    const other = byPlace.get(placeKey(read));
    return other ? [{ read, other, differ: read.dish.key !== other.dish.key }] : [];
  });
  const [start] = pairs;
  if (!start) return [];
  const at = { childId: start.read.child.id, otherChildId: start.other.child.id, date };
  const faults = pairs
    .filter(({ read, differ }) => read.item.slot === "MAIN" && !differ)
    .map(({ read }): Fault => ({
      kind: "SIBLINGS_ALIKE",
      ...at,
      breakKey: read.item.breakKey,
      slot: "MAIN",
      dish: read.dish.key,
    }));
  // Two boxes that share a single place can differ in no more than that one.
  const wanted = Math.min(2, pairs.length);
  const found = pairs.filter(({ differ }) => differ).length;
  if (found < wanted) faults.push({ kind: "SIBLINGS_ALIKE", ...at, found, limit: wanted });
  return faults;
}

/** Siblings differ, dishes do not repeat, starch changes from day to day; a rule relaxed for a date is silent there. */
export function checkHouseRules(week: WeekRead): Fault[] {
  const faults: Fault[] = [];
  const relaxed = (rule: HouseRule, date: string): boolean =>
    week.brief.relaxations.some((row) => row.rule === rule && row.date === date);

  for (const [date, onDate] of groupBy(week.items, (read) => read.box.date)) {
    if (relaxed("SIBLINGS_DIFFER", date)) continue;
    const boxes = [...groupBy(onDate, (read) => read.child.id).values()];
    boxes.forEach((first, index) => {
      for (const second of boxes.slice(index + 1)) faults.push(...compareSiblings(date, first, second));
    });
  }

  for (const [childId, eaten] of groupBy(week.items, (read) => read.child.id)) {
    const counted = eaten.filter((read) => !relaxed("DISH_REPEATS", read.box.date));
    for (const [dish, times] of groupBy(counted, (read) => read.dish.key)) {
      const asMain = times.filter((read) => read.item.slot === "MAIN").length;
      if (asMain > 1) faults.push({ kind: "DISH_REPEATED", childId, dish, slot: "MAIN", found: asMain, limit: 1 });
      else if (times.length > 2) faults.push({ kind: "DISH_REPEATED", childId, dish, found: times.length, limit: 2 });
    }
    for (const [date, inBox] of groupBy(eaten, (read) => read.box.date)) {
      for (const [dish, twice] of groupBy(inBox, (read) => read.dish.key)) {
        if (twice.length > 1)
          faults.push({ kind: "TWICE_IN_ONE_BOX", childId, date, dish, found: twice.length, limit: 1 });
      }
    }
    const mains = eaten.filter(
      (read) => read.item.slot === "MAIN" && read.dish.starch !== "NONE" && !relaxed("STARCH_CHANGES", read.box.date),
    );
    for (const read of mains) {
      const before = mains.find(
        (other) => dayNumber(read.box.date) - dayNumber(other.box.date) === 1 && other.dish.starch === read.dish.starch,
      );
      if (before) faults.push({ kind: "STARCH_REPEATED", childId, date: read.box.date, dish: read.dish.key });
    }
  }
  return faults;
}
