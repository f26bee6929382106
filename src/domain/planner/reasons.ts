/** What an item of a planned week was chosen for: facts read off the plan, none of them a guess at another plan. */
import type { WeekBrief } from "../brief.js";
import { judgeAllergies } from "../catalogue/allergens.js";
import type { BatchPlan, Reason } from "../week.js";
import { labelsThroughPurchase } from "./candidates.js";
import type { Pick, SolvedWeek } from "./solved-week.js";

/** A share of a day's target worth telling: our estimate. */
const WORTH_TELLING_PERCENT = 25;
const TENTHS = 10;

/** @returns the reasons for each item of the solution, in the order of what a cook asks first */
export function giveReasons(
  input: SolvedWeek,
  picks: readonly Pick[],
  batches: readonly BatchPlan[],
): (pick: Pick) => Reason[] {
  const { brief } = input;
  const avoidersOf = countAvoiders(input);
  return (pick) => {
    const { place, dish } = pick;
    const reasons: Reason[] = [];
    if (place.pin !== null) reasons.push({ kind: "PINNED" });
    if (place.dishes.length === 1) reasons.push({ kind: "ONLY_CHOICE" });
    reasons.push(...sharedBases(brief, pick, batches));
    reasons.push(...savedMinutes(input, pick, picks), ...readyUsed(input, pick), ...doneEarly(input, pick));
    reasons.push(...filledNeed(input, pick));
    const avoiders = avoidersOf(place.child.id, place.place.slot);
    if (avoiders > 0)
      reasons.push({
        kind: "AVOIDS",
        allergens: place.child.allergies.map(({ allergen, foodKind }) => allergen ?? foodKind ?? "").filter(Boolean),
        dishes: avoiders,
      });
    const disliked = place.dishes.filter((other) => input.layout.refusalPoints(other, place) > 0).length;
    if (disliked > 0 && input.layout.refusalPoints(dish, place) === 0)
      reasons.push({ kind: "AVOIDS_DISLIKED", dishes: disliked });
    const remembered = brief.history.filter((row) => row.childId === place.child.id);
    if (remembered.length > 0 && !remembered.some((row) => row.dish === dish.derived.dish.key))
      reasons.push({ kind: "NEW_TASTE" });
    return reasons;
  };
}

function sharedBases(brief: WeekBrief, { place, dish }: Pick, batches: readonly BatchPlan[]): Reason[] {
  const { child, place: at } = place;
  return dish.derived.dish.bases.flatMap(({ base }): Reason[] => {
    const shared = batches.filter(
      (batch) =>
        batch.base === base && batch.feeds.some((feed) => feed.date === at.date && feed.childIds.includes(child.id)),
    );
    const feeds = shared.flatMap((batch) => batch.feeds);
    const withChildren = brief.children
      .map(({ id }) => id)
      .filter((id) => id !== child.id && feeds.some((feed) => feed.childIds.includes(id)));
    const dates = [...new Set(feeds.map((feed) => feed.date))].filter((date) => date !== at.date).sort();
    return withChildren.length > 0 || dates.length > 0 ? [{ kind: "SHARES_BASE", base, withChildren, dates }] : [];
  });
}

/**
 * The plan's own minutes counted with and without the portion, against a run and a finishing of its own: `alone - added`. A
 * portion that is the only one of its run saves nothing.
 */
function savedMinutes({ brief, problem, layout, solution }: SolvedWeek, pick: Pick, picks: readonly Pick[]): Reason[] {
  const candidate = problem.positions[pick.position]?.candidates[solution.picks[pick.position] ?? -1];
  const day = layout.dates.indexOf(pick.place.place.date);
  if (candidate === undefined || !problem.sharing) return [];
  let tenths = 0;
  for (const { base, amount } of candidate.bases) {
    const row = problem.bases[base];
    const run = solution.batches.find((batch) => batch.base === base && (batch.supply[day] ?? 0) > 0);
    if (row === undefined || run === undefined) continue;
    const portion = Math.min(amount, run.supply[day] ?? 0);
    const total = run.supply.reduce((sum, units) => sum + units, 0);
    const minutesFor = (units: number): number =>
      units > 0 ? row.fixed + row.perBatch * Math.ceil(units / row.batchAmount) : 0;
    tenths += Math.max(0, minutesFor(portion) - (minutesFor(total) - minutesFor(total - portion)));
  }
  const together = picks.filter(
    (other) =>
      other.place.place.date === pick.place.place.date && other.dish.derived.dish.key === pick.dish.derived.dish.key,
  );
  const finish = problem.dishes[candidate.dish];
  if (together.length > 1 && finish !== undefined) {
    const isEarly = solution.eveningFinish.some((row) => row.dish === candidate.dish && row.day === day);
    const split = isEarly ? finish.split : null;
    tenths += split === null ? finish.morning.fixed : split.evening.fixed + split.morning.fixed;
  }
  if (tenths <= 0) return [];
  const withChildren = brief.children
    .map(({ id }) => id)
    .filter((id) => id !== pick.place.child.id && together.some(({ place }) => place.child.id === id));
  return [{ kind: "SAVES_MINUTES", minutes: tenths / TENTHS, withChildren }];
}

function readyUsed({ brief, problem, layout, solution }: SolvedWeek, { place, dish }: Pick): Reason[] {
  const day = layout.dates.indexOf(place.place.date);
  return dish.derived.dish.bases.flatMap(({ base }): Reason[] => {
    const use = solution.readyUse.find(
      (row) => row.day === day && layout.bases[problem.ready[row.ready]?.base ?? -1] === base,
    );
    const source = use === undefined ? undefined : layout.ready[use.ready];
    if (source === undefined) return [];
    const from = source.kind === "MADE" ? "COOKED" : (brief.ready[source.index]?.from ?? "COOKED");
    return [{ kind: "USES_READY", base, from }];
  });
}

function doneEarly({ problem, layout, solution }: SolvedWeek, { place, position }: Pick): Reason[] {
  const dish = problem.positions[position]?.candidates[solution.picks[position] ?? -1]?.dish ?? -1;
  const day = layout.dates.indexOf(place.place.date);
  const isEarly = solution.eveningFinish.some((row) => row.dish === dish && row.day === day);
  const split = problem.dishes[dish]?.split;
  if (!isEarly || split == null) return [];
  const tenths = split.evening.fixed + split.evening.perPortion;
  return tenths > 0 ? [{ kind: "DONE_EVENING_BEFORE", minutes: tenths / TENTHS }] : [];
}

function filledNeed({ problem, layout }: SolvedWeek, { place, dish, position }: Pick): Reason[] {
  const days = new Set(layout.places.filter((other) => other.child === place.child).map((other) => other.place.date))
    .size;
  const candidate = problem.positions[position]?.candidates[place.dishes.indexOf(dish)];
  const filled = layout.targets
    .filter((target) => target.direction === 1 && target.positions.includes(position))
    .map(({ nutrient, measure, target }) => ({
      nutrient,
      percentOfTarget: Math.round(((candidate?.q[measure] ?? 0) * 100 * days) / target),
    }))
    .sort((a, b) => b.percentOfTarget - a.percentOfTarget)[0];
  return filled !== undefined && filled.percentOfTarget >= WORTH_TELLING_PERCENT
    ? [{ kind: "FILLS_NEED", ...filled }]
    : [];
}

/** How many dishes for a slot hold, or may hold, what a child avoids; asked once per child and slot. */
function countAvoiders({ brief, index }: SolvedWeek): (childId: string, slot: string) => number {
  const known = new Map<string, number>();
  const labels = labelsThroughPurchase(brief);
  return (childId, slot) => {
    const key = `${childId}/${slot}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const allergies = brief.children.find(({ id }) => id === childId)?.allergies ?? [];
    const count =
      allergies.length === 0
        ? 0
        : index.dishes.filter((dish) => {
            if (!dish.slots.some((one) => one === slot)) return false;
            const { kind } = judgeAllergies(allergies, index.derived(dish.key), labels);
            return kind === "CONTAINS" || kind === "MAY_CONTAIN";
          }).length;
    known.set(key, count);
    return count;
  };
}
