/** May this dish or food stand in a child's box on a day: judged as the planner judges, without planning. */
import type { ReadTx } from "../database/database.js";
import { addDays, isCalendarDate } from "../domain/calendar/dates.js";
import { judgeDish, judgeFood, type PlaceVerdict } from "../domain/planner/verdicts.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { nextSchoolDay } from "./assemble-brief.js";
import { invalid } from "./check-input.js";
import type { FailureOf } from "./failures.js";
import { nearest } from "../domain/nearest.js";
import { readWeekInputs } from "./read-brief.js";

export interface JudgePlaces {
  readonly householdId: string;
  readonly childId: string;
  readonly date: string;
  readonly dish: string | null;
  readonly food: string | null;
}

/** @param read the reader's own transaction */
export async function judgePlaces(
  app: App,
  read: <T>(query: (tx: ReadTx) => Promise<T>) => Promise<T>,
  { householdId, childId, date, dish, food }: JudgePlaces,
): Promise<Result<readonly PlaceVerdict[], FailureOf<"InvalidInput" | "DishUnknown" | "OutsideTerm">>> {
  if (!isCalendarDate(date))
    return fail(invalid("date", `${date} is no day of the calendar`, "Send a real date as YYYY-MM-DD."));
  if ((dish === null) === (food === null))
    return fail(invalid("dish", "a verdict is about one dish or one food", "Give dish or food, not both."));
  const inputs = await read((tx) => readWeekInputs(app, tx, householdId, date));
  if (!inputs) throw new Error("a child's household cannot be read");
  // Nothing is pinned, packed or past here: the question is what the rules say of that day.
  const brief = { ...inputs.assemble(), pins: [] };
  const at = { childId, date };
  const due = brief.children.some((child) => child.id === childId && child.days.some((day) => day.date === date));
  if (!due) {
    const next = nextSchoolDay(inputs.household, addDays(date, 1));
    return fail({ kind: "OutsideTerm", weekStart: inputs.weekStart, nextSchoolDay: next });
  }
  if (dish !== null) {
    const row = inputs.index.dish(dish);
    const keys = inputs.index.dishes.map(({ key }) => key);
    return row
      ? ok(judgeDish(brief, inputs.index, at, row))
      : fail({ kind: "DishUnknown", dish, nearest: nearest(dish, keys) });
  }
  const row = inputs.index.food(food ?? "");
  if (row) return ok(judgeFood(brief, at, row));
  const keys = brief.catalogue.foods.map(({ key }) => key);
  return fail(
    invalid("food", `"${food}" is no food of the catalogue`, `Did you mean ${nearest(food ?? "", keys).join(", ")}?`),
  );
}
