/** After the search: fewer packs for the same week, where a dish can be had in another's place for next to nothing. */
import type { Food } from "../../../shared/catalogue.js";
import { countPacks, inStock, whatIsBought } from "../shopping/shopping.js";
import { listBatches } from "./base-plan.js";
import { evaluate } from "./evaluate.js";
import type { Solution, SolvedBatch } from "./problem.js";
import { POINT, type ProblemTables } from "./problem-tables.js";
import type { SolvedWeek } from "./solved-week.js";
import { createSnapshot } from "./week-state.js";
import { wishes } from "./wishes.js";
import { atWorkbench, type Workbench } from "./workbench.js";

/** At most this part of the found week's points may be given away for packs, all changes together: one two-hundredth. */
const TOLERANCE = 200;
/** Weight of a broken rule: none is broken for a pack. */
const RULE_WEIGHT = 1 << 20;

interface Bought {
  readonly food: number;
  /** As sold. */
  readonly grams: number;
}

/** Some places with one dish, which another takes in all of them. */
interface Swap {
  readonly positions: readonly number[];
  /** Candidate index per position. */
  readonly candidates: readonly number[];
  /** Minor units, while the batches stay. */
  readonly saved: number;
}

/**
 * The same week with fewer or cheaper packs to buy, or the very same solution. One dish gives way to another, for one child, for
 * all who have it that day, or for the whole week. A swap is taken when every hard row holds, no more packs are bought, and the
 * money saved at the till, at the price the wishes put on money, is worth more than the points it loses; all swaps together lose
 * at most 0.5 % of the found objective. Objective and terms are those of the week that comes back, so whatever is proved of the
 * problem holds for it. Deterministic: no dice.
 * @param tries swaps that are worked out in full, at most
 */
export function polishPacks(week: SolvedWeek, tries: number): Solution {
  return atWorkbench(week.problem, (workbench) => polishAt(workbench, week, tries));
}

function polishAt({ tables, week: state }: Workbench, week: SolvedWeek, tries: number): Solution {
  const { problem, solution } = week;
  const till = createTill(week);
  const snapshot = createSnapshot(tables);
  state.setWeight(RULE_WEIGHT);
  state.restore(snapshotOf(tables, solution));
  if (state.penalty() !== 0 || state.objective() !== solution.objective) return solution;

  const most = solution.objective + Math.floor(solution.objective / TOLERANCE);
  const picks = [...solution.picks];
  let batches = solution.batches;
  let cost = till.cost(picks, batches);
  let packs = till.packs(picks, batches);
  let left = tries;
  let isBetter = false;
  for (let improved = true; improved && left > 0;) {
    improved = false;
    for (const swap of promising(week, till, picks, batches)) {
      if (left === 0) break;
      // An earlier swap of the same list may have changed one of its places.
      if (!swap.positions.every((p) => dishAt(week, picks, p) === dishAt(week, picks, swap.positions[0]!))) continue;
      const objective = state.objective();
      const bearable = Math.min(most, objective + Math.floor(swap.saved * wishes.costPerMinorUnit * POINT) - 1);
      const numbered = swap.positions.map((p, at) => tables.candidateStart[p]! + swap.candidates[at]!);
      if (numbered.length === 1 && state.isHopeless(swap.positions[0]!, numbered[0]!, bearable)) continue;
      left -= 1;
      state.begin();
      swap.positions.forEach((p, at) => state.pick(p, numbered[at]!));
      if (state.leastTotal(bearable) > bearable) {
        state.undo();
        continue;
      }
      state.settle();
      const lost = state.objective() - objective;
      if (state.penalty() !== 0 || state.objective() > bearable) {
        state.undo();
        continue;
      }
      state.save(snapshot);
      const moved = [...picks];
      swap.positions.forEach((p, at) => (moved[p] = swap.candidates[at]!));
      const then = listBatches(tables, moved, snapshot.serve);
      const [costThen, packsThen] = [till.cost(moved, then), till.packs(moved, then)];
      const gained = Math.floor((cost - costThen) * wishes.costPerMinorUnit * POINT);
      if (packsThen > packs || costThen >= cost || gained <= lost) {
        state.undo();
        continue;
      }
      picks.splice(0, picks.length, ...moved);
      [batches, cost, packs] = [then, costThen, packsThen];
      improved = true;
      isBetter = true;
    }
  }
  if (!isBetter) return solution;
  state.save(snapshot);
  const polished = evaluate(problem, picks, listEvenings(tables, snapshot.evening), batches);
  if (!polished.feasible || polished.objective !== state.objective())
    throw new RangeError(`polish: kept ${state.objective()}, evaluated ${polished.objective}`);
  return { ...polished, steps: solution.steps };
}

const dishAt = ({ problem }: SolvedWeek, picks: readonly number[], position: number): number =>
  problem.positions[position]?.candidates[picks[position]!]?.dish ?? -1;

function snapshotOf(tables: ProblemTables, { picks, eveningFinish, batches }: Solution) {
  const snapshot = createSnapshot(tables);
  picks.forEach((candidate, p) => {
    const chosen = tables.candidateStart[p]! + candidate;
    snapshot.picks[p] = chosen;
    snapshot.evening[tables.candidateDish[chosen]! * tables.size.days + tables.dayAt[p]!] = 0;
  });
  for (const { dish, day } of eveningFinish) snapshot.evening[dish * tables.size.days + day] = 1;
  for (const { base, window, supply, child } of batches) {
    const lot = (base * tables.size.groups + Math.max(0, child)) * tables.size.days;
    supply.forEach((amount, day) => {
      if (amount > 0) snapshot.serve[lot + day] = window;
    });
  }
  return snapshot;
}

const listEvenings = ({ size: { days } }: ProblemTables, evening: Uint8Array): { dish: number; day: number }[] =>
  Array.from(evening).flatMap((flag, at) => (flag === 1 ? [{ dish: Math.floor(at / days), day: at % days }] : []));

interface Till {
  /** Minor units for everything that has to be bought. */
  readonly cost: (picks: readonly number[], batches: readonly SolvedBatch[]) => number;
  readonly packs: (picks: readonly number[], batches: readonly SolvedBatch[]) => number;
  /** Cost when some places change and the batches stay. */
  readonly costAfter: (
    grams: Float64Array,
    picks: readonly number[],
    swap: Omit<Swap, "saved">,
    before: number,
  ) => number;
  readonly grams: (picks: readonly number[], batches: readonly SolvedBatch[]) => Float64Array;
  readonly costOf: (grams: Float64Array) => number;
}

/** What a choice of dishes costs in whole packs, by the same rounding as the shopping list. */
function createTill({ brief, index, problem, layout }: SolvedWeek): Till {
  const foods: Food[] = [];
  const numbers = new Map<string, number>();
  const number = (food: Food): number => {
    const known = numbers.get(food.key);
    if (known !== undefined) return known;
    numbers.set(food.key, foods.length);
    return foods.push(food) - 1;
  };
  const bought = (food: string, edibleGrams: number): Bought[] => {
    const line = whatIsBought(index, food, edibleGrams);
    return line === null ? [] : [{ food: number(line.food), grams: line.grams }];
  };
  const perPortion = new Map<string, readonly Bought[]>();
  const ofDish = layout.options.map((options, p) =>
    // Food of a packed box is bought and gone.
    layout.places[p]?.pin?.because === "PACKED"
      ? options.map(() => [])
      : options.map(({ derived, portion }) => {
          const key = `${derived.dish.key}@${portion.grams}`;
          const known = perPortion.get(key);
          if (known !== undefined) return known;
          const scale = portion.grams / derived.grams;
          const lines = derived.dish.ingredients.flatMap(({ food, grams }) => bought(food, grams * scale));
          perPortion.set(key, lines);
          return lines;
        }),
  );
  const ofBatch = layout.bases.map((key) =>
    (index.base(key)?.ingredients ?? []).flatMap(({ food, grams }) => bought(food, grams)),
  );
  const stock = foods.map(({ key }) => inStock(brief.stock, key));
  const packsOf = (food: number, grams: number): number => countPacks(foods[food]!, grams, stock[food]!).packs;

  const grams: Till["grams"] = (picks, batches) => {
    const sums = new Float64Array(foods.length);
    problem.positions.forEach((_, p) => {
      for (const line of ofDish[p]?.[picks[p]!] ?? []) sums[line.food]! += line.grams;
    });
    for (const batch of batches)
      for (const line of ofBatch[batch.base]!) sums[line.food]! += line.grams * batch.batches;
    return sums;
  };
  const costOf: Till["costOf"] = (sums) =>
    sums.reduce((sum, needed, food) => sum + packsOf(food, needed) * foods[food]!.pack.priceMinor, 0);
  return {
    grams,
    costOf,
    cost: (picks, batches) => costOf(grams(picks, batches)),
    packs: (picks, batches) => grams(picks, batches).reduce((sum, needed, food) => sum + packsOf(food, needed), 0),
    costAfter(sums, picks, swap, before) {
      const change = new Map<number, number>();
      const add = (lines: readonly Bought[], sign: 1 | -1): void => {
        for (const line of lines) change.set(line.food, (change.get(line.food) ?? 0) + sign * line.grams);
      };
      swap.positions.forEach((p, at) => {
        add(ofDish[p]![picks[p]!]!, -1);
        add(ofDish[p]![swap.candidates[at]!]!, 1);
      });
      let cost = before;
      for (const [food, by] of change) {
        const price = foods[food]!.pack.priceMinor;
        cost += (packsOf(food, sums[food]! + by) - packsOf(food, sums[food]!)) * price;
      }
      return cost;
    },
  };
}

/** Swaps that save money while the batches stay as they are, the most saving first. */
function promising(week: SolvedWeek, till: Till, picks: readonly number[], batches: readonly SolvedBatch[]): Swap[] {
  const { problem } = week;
  const grams = till.grams(picks, batches);
  const cost = till.costOf(grams);
  const optionOf = problem.positions.map(
    ({ candidates }) => new Map(candidates.map(({ dish }, candidate) => [dish, candidate])),
  );
  const groups = new Map<string, number[]>();
  problem.positions.forEach((position, p) => {
    if (position.fixed >= 0) return;
    const dish = dishAt(week, picks, p);
    for (const key of [`${dish}@${p}`, `${dish} on ${position.day}`, `${dish}`])
      groups.set(key, [...(groups.get(key) ?? []), p]);
  });
  const seen = new Set<string>();
  const swaps: Swap[] = [];
  for (const positions of groups.values()) {
    const name = positions.join();
    if (seen.has(name)) continue;
    seen.add(name);
    const [first] = positions;
    for (const { dish } of problem.positions[first!]!.candidates) {
      if (dish === dishAt(week, picks, first!)) continue;
      const candidates = positions.map((p) => optionOf[p]!.get(dish) ?? -1);
      if (candidates.includes(-1)) continue;
      const swap = { positions, candidates };
      const saved = cost - till.costAfter(grams, picks, swap, cost);
      if (saved > 0) swaps.push({ ...swap, saved });
    }
  }
  return swaps.sort((a, b) => b.saved - a.saved);
}
