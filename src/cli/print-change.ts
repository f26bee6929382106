/** One thing that upset the week and what it changes, as lines of at most 100 columns: what to do differently, nothing else. */
import type { Names } from "../app/say.js";
import type { HouseholdRow } from "../database/household.js";
import type { ItemPlan } from "../domain/week.js";
import type { BoxChange, ShoppingChange, WeekDifference } from "../domain/week-difference.js";
import { sayDay as dayName } from "../app/say-box-card.js";
import { list, minutes, money, sessionTitle, wrap } from "./print-week.js";

/** Minutes by which a session has to grow or shrink before anybody plans the evening otherwise. */
const WORTH_SAYING = 3;

/** Where one dish gives way to another at the same place; the rest of the box stays. */
function printBoxChange({ childId, date, before, after }: BoxChange, names: Names): string[] {
  const who = `${dayName(date)}, ${names.child(childId)}`;
  const dish = (item: ItemPlan) => names.index.dish(item.dish)?.name ?? item.dish;
  if (after.length === 0) return wrap("    ", `${who}: no box.`);
  const isAt = (a: ItemPlan, b: ItemPlan) =>
    a.breakKey === b.breakKey && a.slot === b.slot && a.position === b.position;
  const parts = [
    ...before.flatMap((was) => {
      const is = after.find((item) => isAt(item, was));
      if (is === undefined) return `no ${dish(was)}`;
      if (is.dish !== was.dish) return `${dish(is)} instead of ${dish(was)}`;
      return is.grams === was.grams ? [] : `${dish(is)}, ${Math.round(is.grams)} g now`;
    }),
    ...after.filter((item) => !before.some((was) => isAt(was, item))).map(dish),
  ];
  return wrap("    ", `${who}: ${parts.join("; ")}.`);
}

const foods = (lines: readonly ShoppingChange[], names: Names): string =>
  list(lines.map(({ food, packs, packGrams }) => `${names.index.food(food)?.name ?? food} ${packs} x ${packGrams} g`));

/**
 * @param text what happened, as a sentence
 * @param difference null: the week stays as it is
 * @param boxes of the week
 */
export function printChange(
  text: string,
  difference: WeekDifference | null,
  boxes: number,
  household: HouseholdRow,
  names: Names,
): string[] {
  const title = wrap("", `IF SOMETHING HAPPENS (nothing is stored): ${text}`);
  if (difference === null) return [...title, "  The week stays as it is.", ""];
  const changed = difference.boxes.length;
  const lines = [
    ...title,
    `  ${changed === 0 ? "No box changes" : `${changed} of ${boxes} boxes ${changed === 1 ? "changes" : "change"}`}, the others stay as they are.`,
    ...difference.boxes.flatMap((box) => printBoxChange(box, names)),
  ];
  const base = (key: string) => names.index.base(key)?.name ?? key;
  for (const { base: key, session, before, after } of difference.batches) {
    const where = `${base(key)} on ${sessionTitle(session)}`;
    if (after === null) lines.push(...wrap("  DO NOT COOK ", `${where}.`));
    else if (before === null) lines.push(...wrap("  COOK ", `${where}, ${Math.round(after.grams)} g.`));
    else if (before.batches !== after.batches)
      lines.push(...wrap("  COOK ", `${where}: ${after.batches} instead of ${before.batches} batches.`));
  }
  const work = difference.sessions.filter(({ handsOnMinutesMore }) => Math.abs(handsOnMinutesMore) >= WORTH_SAYING);
  const { handsOnMinutes, costMinor } = difference.more;
  const sum = `${minutes(Math.abs(handsOnMinutes))} ${handsOnMinutes < 0 ? "less" : "more"} in all`;
  const where = work.map(
    ({ session, handsOnMinutesMore: more }) =>
      `${sessionTitle(session)} ${minutes(Math.abs(more))} ${more > 0 ? "more" : "less"}`,
  );
  lines.push(...wrap("  WORK ", `${[...where, sum].join("; ")}.`));
  if (difference.toBuy.length > 0) lines.push(...wrap("  BUY ", `${foods(difference.toBuy, names)}.`));
  if (difference.notNeeded.length > 0) lines.push(...wrap("  NOT NEEDED ", `${foods(difference.notNeeded, names)}.`));
  if (costMinor !== 0)
    lines.push(`  In all ${money(Math.abs(costMinor), household.currency)} ${costMinor > 0 ? "more" : "less"} to pay.`);
  return [...lines, ""];
}
