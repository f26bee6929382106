import { coolingTemperatures, worseAccepted } from "./acceptance.js";
import { checkProblem } from "./check-problem.js";
import { listBatches } from "./base-plan.js";
import { evaluate } from "./evaluate.js";
import type { Moves } from "./moves.js";
import type { Clash, Problem, SearchOptions, Solution } from "./problem.js";
import { POINT } from "./problem-tables.js";
import type { ProblemTables } from "./problem-tables.js";
import { createRandomStream, type RandomStream } from "./random.js";
import { createSnapshot } from "./week-state.js";
import type { Snapshot, WeekState } from "./week-state.js";
import { atWorkbench, type Workbench } from "./workbench.js";

/** Temperatures of a cooling. */
const LEVELS = 192;
interface Coolings {
  /** Where both end, thousandths of a point. */
  readonly end: number;
  readonly fromNew: Float64Array;
  readonly fromBest: Float64Array;
}
/** From 20 points to 2 or to 1 (from the best week on from 8), or from 10 to 0.3 (from 4): how fine depends on how much picks differ. */
const COOLINGS: readonly Coolings[] = (
  [
    { end: 2 * POINT, first: 20 * POINT, ratio: 64750, again: 8 * POINT, ratioAgain: 65062 },
    { end: POINT, first: 20 * POINT, ratio: 64521, again: 8 * POINT, ratioAgain: 64831 },
    { end: (3 * POINT) / 10, first: 10 * POINT, ratio: 64345, again: 4 * POINT, ratioAgain: 64658 },
  ] as const
).map(({ end, first, ratio, again, ratioAgain }) => ({
  end,
  fromNew: coolingTemperatures(first, LEVELS, ratio),
  fromBest: coolingTemperatures(again, LEVELS, ratioAgain),
}));
/** A cooling should end at this part of what the picks of a place differ by, or below. */
const ENDS_AT = 5;

/** Weight of penalties against the objective: where it starts, and its range. */
const FIRST_WEIGHT = 16;
const LEAST_WEIGHT = 4;
const MOST_WEIGHT = 4096;
/** Steps between looks at how often the week was feasible; the weight then moves by an eighth. Fewer in a short search. */
const MOST_WEIGHT_STEPS = 1024;
const LEAST_WEIGHT_STEPS = 32;
const LOOKS = 96;

/**
 * Steps for a whole cooling, in looks at every candidate, and coolings at most. The first half start anew, as weeks differ most in
 * the bases they found early; the others warm the best week up again, once there is one that breaks no rule.
 */
const SWEEPS_A_COOLING = 16;
const MOST_COOLINGS = 12;

/** Steps in a search that stays near a given week: so many looks at every candidate, and no fewer than the other. More only while it breaks rules. */
const SWEEPS_NEAR = 8;
const LEAST_NEAR = 10_000;
/** One in so many of them goes to the boxes that broke. */
const MENDING = 3;
const MOST_MENDINGS = 6;

/** Steps between two questions whether to stop. */
const STOP_STEPS = 64;

/**
 * A good week for the problem: simulated annealing over the picks and the finishing choices, with the base plan as a derived
 * decision (see `createBasePlanner`), hard rows as penalties of adaptive weight, then a descent over single picks. Only integers
 * are added and compared, so that a problem, a seed and a number of steps give the same week on any machine.
 *
 * Objective and terms are in thousandths of a point. Weekly targets: floor(1000 x weight x 100 x missed / target) each.
 * When no feasible week was met the least violating one comes back with its clashes; a position without candidates comes back as
 * clash EMPTY, unsearched, its pick -1.
 *
 * @throws RangeError when the problem or the options fail `checkProblem` (ask it first), or when the sums kept move by move
 * disagree with `evaluate`: both are bugs of the caller or of this module, never of the household's wishes.
 */
export function solve(problem: Problem, options: SearchOptions): Solution {
  const checked = checkProblem(problem, options);
  if (!checked.ok) {
    const fault = checked.error[0]!;
    throw new RangeError(`planner problem: ${fault.kind} at ${fault.place}`);
  }
  const empty = problem.positions.flatMap((position): Clash[] =>
    position.candidates.length > 0
      ? []
      : [{ kind: "EMPTY", name: "", child: position.child, day: position.day, window: -1, excess: 1 }],
  );
  if (empty.length > 0) {
    return {
      feasible: false,
      picks: problem.positions.map((position) => (position.candidates.length === 0 ? -1 : Math.max(0, position.fixed))),
      eveningFinish: [],
      batches: [],
      readyUse: [],
      objective: 0,
      terms: { picks: 0, minutes: 0, waste: 0, targets: 0, distance: 0 },
      clashes: empty,
      steps: 0,
    };
  }

  // Looking a problem over and laying it out in tables takes as long as many moves; an answer here would leave no week to give back.
  options.shouldStop?.();
  return atWorkbench(problem, (workbench) => {
    const search = new Search(problem, options, workbench);
    search.run();
    return search.solution();
  });
}

/**
 * How much the candidates of a place differ, thousandths of a point: what the cheapest fourth of them costs more than the cheapest at
 * most, on average over the free places.
 */
function spreadOfPicks({ free, candidateStart, candidateCost }: ProblemTables): number {
  let sum = 0;
  for (const position of free) {
    const costs = candidateCost.slice(candidateStart[position], candidateStart[position + 1]).sort();
    sum += costs[(costs.length - 1) >> 2]! - costs[0]!;
  }
  return free.length === 0 ? 0 : sum / free.length;
}

class Search {
  private readonly tables: ProblemTables;
  private readonly week: WeekState;
  private readonly moves: Moves;
  private readonly best: Snapshot;
  private bestPenalty = Infinity;
  private bestObjective = Infinity;
  private steps = 0;
  private weight = FIRST_WEIGHT;
  private readonly mostWeight: number;
  private readonly coolings: Coolings;
  /** Steps in all that the search means to make. */
  private budget = 0;
  private stopped = false;
  private lastReport = -1;

  constructor(
    private readonly problem: Problem,
    private readonly options: SearchOptions,
    { tables, week, moves }: Workbench,
  ) {
    this.tables = tables;
    this.week = week;
    this.moves = moves;
    this.best = createSnapshot(this.tables);
    // A box kept must never be worth a rule broken.
    this.mostWeight = MOST_WEIGHT + (problem.stayClose?.pointsPerBox ?? 0);
    this.week.setWeight(this.weight);
    const end = spreadOfPicks(tables) / ENDS_AT;
    this.coolings = COOLINGS.find((some) => some.end <= end) ?? COOLINGS.at(-1)!;
  }

  run(): void {
    const { start, steps } = this.options;
    const sweep = this.tables.size.candidates;
    const isNear = start !== undefined && this.problem.stayClose !== null;
    this.budget = isNear ? Math.min(steps, Math.max(LEAST_NEAR, SWEEPS_NEAR * sweep)) : steps;
    this.start();
    this.keepIfBetter();
    // A given week says what is eaten, not when it is finished and cooked: that is arranged first, the picks untouched.
    if (start !== undefined) this.descend(this.budget, false);
    const random = createRandomStream(this.options.seed);
    const broken = isNear ? this.placesToMend() : this.tables.free.subarray(0, 0);
    if (broken.length > 0) {
      // What broke is mended by itself first, if it can be, from several starts; then the rest may move too.
      const length = Math.floor((this.budget - this.steps) / MENDING / MOST_MENDINGS);
      for (let mending = 1; mending <= MOST_MENDINGS && this.bestPenalty > 0; mending += 1) {
        if (mending > 1) this.shuffle(random, broken);
        this.anneal(random, this.steps + length, this.coolings.fromNew, broken);
      }
      this.returnToBest(this.weight);
    }
    // From here on no box may change, or stay, at the price of a rule.
    if (isNear) this.weight = FIRST_WEIGHT + this.problem.stayClose.pointsPerBox;
    this.week.setWeight(this.weight);
    this.search(random, sweep);
    if (this.bestPenalty > 0 && this.budget < steps) {
      this.budget = steps;
      this.search(random, sweep);
    }
  }

  /** Free places of the boxes in which an agreed dish can no longer be had. */
  private placesToMend(): Int32Array {
    const { size, candidateOfDish, boxAt, free } = this.tables;
    const broken = new Set<number>();
    this.problem.stayClose?.dishAt.forEach((dish, p) => {
      if (dish >= 0 && candidateOfDish[p * size.dishes + dish]! < 0) broken.add(boxAt[p]!);
    });
    return free.filter((position) => broken.has(boxAt[position]!));
  }

  /** Coolings and the descents after them, until `budget` steps in all. */
  private search(random: RandomStream, sweep: number): void {
    const { budget } = this;
    const from = this.steps;
    const polish = Math.min(Math.floor(budget / 10), 4 * sweep);
    // Pairs of picks, where the week is so small that trying them all costs less than it is worth.
    const pairs = (sweep * sweep) / 2;
    const weeks = this.countWeeks();
    const isTiny = weeks * 4 <= budget;
    const pairing = isTiny ? weeks : pairs * 4 <= budget ? Math.floor(Math.min(budget / 3, 6 * pairs)) : 0;
    const length = Math.max(0, budget - polish - pairing - from);
    // A given week is where the search should stay near: it is not left for another start.
    const coolings =
      this.options.start === undefined
        ? Math.max(1, Math.min(MOST_COOLINGS, Math.floor(length / (SWEEPS_A_COOLING * sweep))))
        : 1;
    const starts = Math.ceil(coolings / 2);
    for (let cooling = 1; cooling <= coolings && !this.stopped; cooling += 1) {
      const isNew = cooling <= starts || this.bestPenalty > 0;
      if (!isNew) this.returnToBest(this.weight);
      else if (cooling > 1) this.shuffle(random);
      this.anneal(
        random,
        from + Math.floor((length * cooling) / coolings),
        isNew ? this.coolings.fromNew : this.coolings.fromBest,
      );
    }
    this.returnToBest();
    this.descend(budget - pairing);
    if (pairing > 0) {
      this.returnToBest();
      if (isTiny) this.tryEveryPick(budget);
      else this.descendByPairs(budget);
    }
    this.returnToBest();
  }

  solution(): Solution {
    const { tables, best } = this;
    const evening = Array.from(best.evening).flatMap((flag, index) => {
      const dish = Math.floor(index / tables.size.days);
      const day = index % tables.size.days;
      return flag === 1 && this.week.portions(dish, day) > 0 ? [{ dish, day }] : [];
    });
    const picks = Array.from(best.picks, (candidate, position) => candidate - tables.candidateStart[position]!);
    const result = evaluate(this.problem, picks, evening, listBatches(tables, picks, best.serve));
    if (result.objective !== this.bestObjective || result.feasible !== (this.bestPenalty === 0)) {
      throw new RangeError(`planner sums: kept ${this.bestObjective}, evaluated ${result.objective}`);
    }
    return { ...result, steps: this.steps };
  }

  /** The given week, or the cheapest candidate everywhere. */
  private start(): void {
    const { tables, week, options } = this;
    week.begin();
    for (let position = 0; position < tables.size.positions; position += 1) {
      const first = tables.candidateStart[position]!;
      const fixed = this.problem.positions[position]!.fixed;
      let chosen = first;
      if (fixed >= 0) chosen = first + fixed;
      else if (options.start !== undefined) chosen = first + options.start[position]!;
      else {
        for (let candidate = first; candidate < tables.candidateStart[position + 1]!; candidate += 1) {
          if (tables.candidateCost[candidate]! < tables.candidateCost[chosen]!) chosen = candidate;
        }
      }
      week.pick(position, chosen);
    }
    week.settle();
  }

  private total(): number {
    return this.week.objective() + this.weight * this.week.penalty();
  }

  private keepIfBetter(): void {
    const penalty = this.week.penalty();
    if (penalty > this.bestPenalty) return;
    const objective = this.week.objective();
    if (penalty === this.bestPenalty && objective >= this.bestObjective) return;
    this.bestPenalty = penalty;
    this.bestObjective = objective;
    this.week.save(this.best);
    if (penalty === 0 && this.options.onBetter !== undefined) {
      const hundredth = Math.floor((this.steps * 100) / Math.max(1, this.options.steps));
      if (hundredth > this.lastReport) {
        this.lastReport = hundredth;
        this.options.onBetter(objective, this.steps);
      }
    }
  }

  /** True when the search must end: at `limit` steps or when asked to. */
  private ends(limit: number): boolean {
    if (this.steps >= limit || this.stopped) return true;
    if (this.steps % STOP_STEPS === 0 && this.options.shouldStop?.() === true) this.stopped = true;
    return this.stopped;
  }

  /** Another place to start from; where no feasible week was met yet, one in which breaking a rule costs more. */
  private shuffle(random: RandomStream, free = this.tables.free): void {
    const { tables, week } = this;
    week.begin();
    for (const position of free) {
      const first = tables.candidateStart[position]!;
      week.pick(position, first + random.below(tables.candidateStart[position + 1]! - first));
    }
    week.settle();
    if (this.bestPenalty > 0) this.weight = Math.min(this.mostWeight, this.weight * 8);
    week.setWeight(this.weight);
  }

  /** One cooling, from where the week stands to `limit` steps in all. */
  private anneal(random: RandomStream, limit: number, temperatures: Float64Array, free = this.tables.free): void {
    const { week, moves } = this;
    moves.aim(random, free);
    const from = this.steps;
    const length = Math.max(1, limit - from);
    const weightSteps = Math.max(LEAST_WEIGHT_STEPS, Math.min(MOST_WEIGHT_STEPS, Math.floor(this.budget / LOOKS)));
    let total = this.total();
    let feasible = 0;
    while (!this.ends(limit)) {
      const temperature = temperatures[Math.floor(((this.steps - from) * LEVELS) / length)]!;
      this.steps += 1;
      week.begin();
      const most = total + worseAccepted(temperature, random.next());
      if (moves.propose(most)) {
        if (week.leastTotal(most) > most) week.undo();
        else {
          week.settle();
          const moved = this.total();
          if (moved <= most) {
            total = moved;
            this.keepIfBetter();
          } else week.undo();
        }
      }
      if (week.penalty() === 0) feasible += 1;
      if (this.steps % weightSteps === 0) {
        this.adaptWeight(feasible, weightSteps);
        total = this.total();
        feasible = 0;
      }
    }
  }

  private adaptWeight(feasibleSteps: number, ofSteps: number): void {
    if (feasibleSteps * 5 < ofSteps)
      this.weight = Math.min(this.mostWeight, this.weight + Math.max(1, this.weight >> 3));
    else if (feasibleSteps * 2 > ofSteps) this.weight = Math.max(LEAST_WEIGHT, this.weight - (this.weight >> 3));
    this.week.setWeight(this.weight);
  }

  private returnToBest(weight = this.mostWeight): void {
    this.week.restore(this.best);
    this.weight = weight;
    this.week.setWeight(weight);
  }

  /** One step: the change if it lowers the total, else none. */
  private attempt(change: () => boolean): boolean {
    const { week } = this;
    const total = this.total();
    this.steps += 1;
    week.begin();
    if (!change()) return false;
    if (week.leastTotal(total - 1) >= total) {
      week.undo();
      return false;
    }
    week.settle();
    if (this.total() < total) {
      this.keepIfBetter();
      return true;
    }
    week.undo();
    return false;
  }

  /** Picks of all free places together; more than can be counted is Infinity. */
  private countWeeks(): number {
    const { candidateStart, free } = this.tables;
    return free.reduce((weeks, position) => weeks * (candidateStart[position + 1]! - candidateStart[position]!), 1);
  }

  /** Every combination of picks in turn, each taken when it helps: for weeks so small that this costs less than searching. */
  private tryEveryPick(limit: number): void {
    const { tables, week } = this;
    const { candidateStart, free } = tables;
    const weeks = this.countWeeks();
    for (let number = 0; number < weeks && !this.ends(limit); number += 1) {
      this.attempt(() => {
        let rest = number;
        for (const position of free) {
          const first = candidateStart[position]!;
          const count = candidateStart[position + 1]! - first;
          week.pick(position, first + (rest % count));
          rest = Math.floor(rest / count);
        }
        return true;
      });
    }
  }

  /** Sweeps over all pairs of picks of two places, taking each change that helps, until none does. */
  private descendByPairs(limit: number): void {
    const { tables, week } = this;
    const { candidateStart, free } = tables;
    for (let improved = true; improved;) {
      improved = false;
      for (const [index, left] of free.entries()) {
        for (const right of free.slice(index + 1)) {
          for (let one = candidateStart[left]!; one < candidateStart[left + 1]!; one += 1) {
            for (let other = candidateStart[right]!; other < candidateStart[right + 1]!; other += 1) {
              if (this.ends(limit)) return;
              const change = (): boolean => {
                week.pick(left, one);
                week.pick(right, other);
                return true;
              };
              if (this.attempt(change)) improved = true;
            }
          }
        }
      }
    }
  }

  /** Sweeps over all picks, finishing choices and bases, taking each change that helps, until none does. */
  private descend(limit: number, withPicks = true): void {
    const { tables, week } = this;
    for (let improved = true; improved;) {
      improved = false;
      for (const position of withPicks ? tables.free : []) {
        for (
          let candidate = tables.candidateStart[position]!;
          candidate < tables.candidateStart[position + 1]!;
          candidate += 1
        ) {
          if (candidate === week.picks[position]) continue;
          if (this.ends(limit)) return;
          if (this.attempt(() => (week.pick(position, candidate), true))) improved = true;
        }
      }
      for (let position = 0; position < tables.size.positions; position += 1) {
        if (this.ends(limit)) return;
        const dish = tables.candidateDish[week.picks[position]!]!;
        if (this.attempt(() => week.toggleEvening(dish, tables.dayAt[position]!))) improved = true;
      }
      for (let base = 0; base < tables.size.bases; base += 1) {
        if (!week.usesBase(base)) continue;
        if (this.ends(limit)) return;
        if (this.attempt(() => (week.replan(base), true))) improved = true;
      }
    }
  }
}
