/** Why the week is as it is, as lines of at most 100 columns: what it comes to, what each main is for, what else would cost, and how much better any could be. */
import { sayPrice, sayReason, type Names } from "../app/say.js";
import { sayDay as dayName } from "../app/say-box-card.js";
import type { BoxItemRow, BoxRow, PlanRow } from "../database/week.js";
import type { PricedDish } from "../domain/planner/price.js";
import type { HouseholdRow } from "../database/household.js";
import { minutes, money, wrap } from "./print-week.js";

/** Of each main; the rest is asked for over the API. */
const MOST_REASONS = 2;

const dishName = (dish: string, names: Names): string => names.index.dish(dish)?.name ?? dish;

export function printWhy({ plan }: { readonly plan: PlanRow }, household: HouseholdRow, names: Names): string[] {
  const lines = ["WHY THIS WEEK", ...sayTotals(plan, household)];
  for (const box of plan.boxes) {
    const main = box.items.find(({ slot }) => slot === "MAIN");
    const all = main?.note?.reasons ?? [];
    // That it is not disliked says little where there is more to say.
    const telling = all.filter(({ kind }) => kind !== "AVOIDS_DISLIKED");
    const reasons = (telling.length > 0 ? telling : all).slice(0, MOST_REASONS);
    if (main === undefined || reasons.length === 0) continue;
    const why = reasons.map((reason) => sayReason(reason, names)).join("; ");
    lines.push(
      ...wrap("  ", `${dayName(box.date)}, ${names.child(box.childId)}: ${dishName(main.dish, names)} ${why}.`),
    );
  }
  return lines;
}

function sayTotals({ wishes }: PlanRow, household: HouseholdRow): string[] {
  const { handsOnMinutes, costMinor, spareBaseGrams, nutrientShortfallPercent } = wishes;
  return wrap(
    "  ",
    `It takes ${minutes(handsOnMinutes)} of hands-on work and ${money(costMinor, household.currency)} of food, leaves ${Math.round(spareBaseGrams)} g of what is cooked over, and misses the week's targets by ${Math.round(nutrientShortfallPercent)} % in all, summed over children and nutrients.`,
  );
}

/** How much better any week could be; nothing where nothing was proved. */
export function printGap(home: string, { certificate }: PlanRow): string[] {
  if (!certificate) return [];
  const { objectivePoints, boundPoints } = certificate;
  const gap = (100 * (objectivePoints - boundPoints)) / objectivePoints;
  return wrap(
    "  ",
    `${home}: by everything the plan weighs, minutes, cost, leftovers, needs and taste, the week counts ${Math.round(objectivePoints)} points, less being better. No week for this kitchen can be below ${Math.floor(boundPoints)}: at most ${Math.ceil(gap)} % of it could be saved by any other.`,
  );
}

/** What other dishes in the place of an item would cost the week. */
export function printPrices(box: BoxRow, item: BoxItemRow, priced: readonly PricedDish[], names: Names): string[] {
  if (priced.length === 0) return [];
  const place = `${names.child(box.childId)}, ${dayName(box.date)}`;
  return [
    "WHY NOT ANOTHER (each found by planning the week again; nothing is stored)",
    ...wrap("  ", `Instead of ${dishName(item.dish, names)} for ${place}:`),
    ...priced.flatMap(({ dish, price }) => wrap("    ", `${dishName(dish, names)}: ${sayPrice(price)}`)),
    "",
  ];
}
