/** What another dish would cost a planned week, and what clashes in one that cannot be planned. Reads, asks the planner, stores nothing. */
import type { RuleSetDocument } from "../../shared/rule-set.js";
import type { SlotCode } from "../../shared/codes.js";
import { addDays, isCalendarDate } from "../domain/calendar/dates.js";
import { MOST_ALTERNATIVES, type DishPrice, type PricedDish } from "../domain/planner/price.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { nextSchoolDay } from "./assemble-brief.js";
import { invalid } from "./check-input.js";
import { draftOf } from "./draft-of.js";
import type { FailureOf } from "./failures.js";
import { openItem, placeOf } from "./items.js";
import { nearest } from "../domain/nearest.js";
import { openWeek } from "./plan-week.js";

/** @returns null when there is no such item in a current plan of the reader's */
export async function pricedAlternativesOf(
  app: App,
  personId: string,
  itemId: string | null,
  first: number,
  signal?: AbortSignal,
): Promise<{ readonly householdId: string; readonly priced: readonly PricedDish[] } | null> {
  const opened = await openItem(app, personId, itemId, "readHousehold");
  if (!opened.ok) return null;
  const { inputs, week, item } = opened.value;
  const most = Math.max(0, Math.min(first, MOST_ALTERNATIVES));
  const priced = await app.planner.ask(
    {
      kind: "PRICE_ALTERNATIVES",
      brief: inputs.assemble(),
      draft: draftOf(week.plan),
      place: placeOf(item),
      first: most,
    },
    signal,
  );
  return { householdId: week.householdId, priced };
}

export interface PriceOfDish {
  readonly householdId: string | null;
  readonly childId: string | null;
  readonly date: string;
  readonly breakKey: string;
  readonly slot: SlotCode;
  /** Counts places of the same slot in the break, from 0. */
  readonly place: number;
  readonly dish: string;
}

export interface PriceFound {
  readonly householdId: string;
  readonly found: Exclude<DishPrice, { kind: "NO_PLACE" }>;
  /** The rule sets that were obeyed, to quote from. */
  readonly ruleSets: readonly RuleSetDocument[];
}

export async function priceOfDish(
  app: App,
  personId: string,
  about: PriceOfDish,
  signal?: AbortSignal,
): Promise<
  Result<
    PriceFound,
    FailureOf<
      | "InvalidInput"
      | "HouseholdNotFound"
      | "ChildNotFound"
      | "NothingThere"
      | "NotPermitted"
      | "DishUnknown"
      | "OutsideTerm"
    >
  >
> {
  const { childId, date, breakKey, slot, dish } = about;
  if (!isCalendarDate(date))
    return fail(invalid("date", `${date} is no day of the calendar`, "Send a real date as YYYY-MM-DD."));
  const opened = await openWeek(app, personId, about.householdId, date, "readHousehold");
  if (!opened.ok) return opened;
  const { household, before, index, weekStart, assemble } = opened.value;
  if (childId === null || !household.children.some((child) => child.id === childId))
    return fail({ kind: "ChildNotFound" });
  if (!before) return fail({ kind: "NothingThere", what: "week" });
  if (!index.dish(dish)) {
    const keys = index.dishes.map(({ key }) => key);
    return fail({ kind: "DishUnknown", dish, nearest: nearest(dish, keys) });
  }
  const brief = assemble();
  const day = brief.children.find(({ id }) => id === childId)?.days.find((row) => row.date === date);
  if (!day) return fail({ kind: "OutsideTerm", weekStart, nextSchoolDay: nextSchoolDay(household, addDays(date, 1)) });
  const at = { childId, date, breakKey, slot, nth: about.place };
  const found = await app.planner.ask({ kind: "PRICE_DISH", brief, draft: draftOf(before.plan), at, dish }, signal);
  if (found.kind === "NO_PLACE") {
    const places = day.breaks.map(({ key, slots }) => `${key} (${slots.join(", ").toLowerCase()})`);
    return fail(invalid("breakKey", "that day has no such place", `The day has ${places.join("; ")}.`));
  }
  return ok({ householdId: household.id, found, ruleSets: brief.ruleSets });
}
