import { coolingTemperatures, worseAccepted } from "./acceptance.js";
import { checkProblem } from "./check-problem.js";
import { listBatches } from "./base-plan.js";
import { evaluate } from "./evaluate.js";
import { createMoveProposer } from "./moves.js";
import type { Clash, Problem, SearchOptions, Solution } from "./problem.js";
import { buildTables, POINT } from "./problem-tables.js";
import type { ProblemTables } from "./problem-tables.js";
import { createRandomStream, type RandomStream } from "./random.js";
import { createSnapshot, createWeekState } from "./week-state.js";
import type { Snapshot, WeekState } from "./week-state.js";

/** Cooling from 20 points down by about 1/83 a level: 192 levels end at about 2 points. */
const FIRST_TEMPERATURE = 20 * POINT;
const LEVELS = 192;
const RATIO = 64750;

/** Weight of penalties against the objective: where it starts, and its range. */
const FIRST_WEIGHT = 16;
const LEAST_WEIGHT = 4;
const MOST_WEIGHT = 4096;
/** Steps between looks at how often the week was feasible; the weight then moves by an eighth. Fewer in a short search. */
const MOST_WEIGHT_STEPS = 1024;
const LEAST_WEIGHT_STEPS = 32;
const LOOKS = 96;

/** Steps for a whole cooling, in looks at every candidate: a small week has time for several, from different ends. */
const SWEEPS_A_COOLING = 40;
const MOST_COOLINGS = 12;

/** Steps between two questions whether to stop. */
const STOP_STEPS = 256;

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

  const search = new Search(problem, options);
  search.run();
  return search.solution();
}

class Search {
  private readonly tables: ProblemTables;
  private readonly week: WeekState;
  private readonly best: Snapshot;
  private bestPenalty = Infinity;
  private bestObjective = Infinity;
  private steps = 0;
  private weight = FIRST_WEIGHT;
  private stopped = false;
  private lastReport = -1;

  constructor(
    private readonly problem: Problem,
    private readonly options: SearchOptions,
  ) {
    this.tables = buildTables(problem);
    this.week = createWeekState(this.tables);
    this.best = createSnapshot(this.tables);
    this.week.setWeight(this.weight);
  }

  run(): void {
    this.start();
    this.keepIfBetter();
    // A given week says what is eaten, not when it is finished and cooked: that is arranged first, the picks untouched.
    this.descend(this.options.steps, this.options.start === undefined);
    const sweep = this.tables.candidateStart[this.tables.positions]!;
    const polish = Math.min(Math.floor(this.options.steps / 10), 4 * sweep);
    // Pairs of picks, where the week is so small that trying them all costs less than it is worth.
    const pairs = (sweep * sweep) / 2;
    const pairing = pairs * 4 <= this.options.steps ? Math.floor(Math.min(this.options.steps / 3, 6 * pairs)) : 0;
    const limit = this.options.steps - polish - pairing;
    const random = createRandomStream(this.options.seed);
    // A given week is where the search should stay near: it is not left for another start.
    const coolings =
      this.options.start === undefined
        ? Math.max(1, Math.min(MOST_COOLINGS, Math.floor(limit / (SWEEPS_A_COOLING * sweep))))
        : 1;
    for (let cooling = 1; cooling <= coolings && !this.stopped; cooling += 1) {
      if (cooling > 1) this.shuffle(random);
      this.anneal(random, Math.floor((limit * cooling) / coolings));
    }
    this.returnToBest();
    this.descend(this.options.steps - pairing);
    if (pairing > 0) {
      this.returnToBest();
      this.descendByPairs(this.options.steps);
    }
    this.returnToBest();
  }

  solution(): Solution {
    const { tables, best } = this;
    const evening = Array.from(best.evening).flatMap((flag, index) => {
      const dish = Math.floor(index / tables.days);
      const day = index % tables.days;
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
    for (let position = 0; position < tables.positions; position += 1) {
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
  private shuffle(random: RandomStream): void {
    const { tables, week } = this;
    week.begin();
    for (const position of tables.free) {
      const first = tables.candidateStart[position]!;
      week.pick(position, first + random.below(tables.candidateStart[position + 1]! - first));
    }
    week.settle();
    if (this.bestPenalty > 0) this.weight = Math.min(MOST_WEIGHT, this.weight * 8);
    week.setWeight(this.weight);
  }

  /** One cooling, from where the week stands to `limit` steps in all. */
  private anneal(random: RandomStream, limit: number): void {
    const { week } = this;
    const propose = createMoveProposer(this.tables, week, random);
    const temperatures = coolingTemperatures(FIRST_TEMPERATURE, LEVELS, RATIO);
    const from = this.steps;
    const length = Math.max(1, limit - from);
    const weightSteps = Math.max(
      LEAST_WEIGHT_STEPS,
      Math.min(MOST_WEIGHT_STEPS, Math.floor(this.options.steps / LOOKS)),
    );
    let total = this.total();
    let feasible = 0;
    while (!this.ends(limit)) {
      const temperature = temperatures[Math.floor(((this.steps - from) * LEVELS) / length)]!;
      this.steps += 1;
      week.begin();
      const most = total + worseAccepted(temperature, random.next());
      if (propose(most)) {
        if (week.leastTotal() > most) week.undo();
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
    if (feasibleSteps * 5 < ofSteps) this.weight = Math.min(MOST_WEIGHT, this.weight + Math.max(1, this.weight >> 3));
    else if (feasibleSteps * 2 > ofSteps) this.weight = Math.max(LEAST_WEIGHT, this.weight - (this.weight >> 3));
    this.week.setWeight(this.weight);
  }

  private returnToBest(): void {
    this.week.restore(this.best);
    this.weight = MOST_WEIGHT;
    this.week.setWeight(MOST_WEIGHT);
  }

  /** One step: the change if it lowers the total, else none. */
  private attempt(change: () => boolean): boolean {
    const { week } = this;
    const total = this.total();
    this.steps += 1;
    week.begin();
    if (!change()) return false;
    if (week.leastTotal() >= total) {
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
      for (let position = 0; position < tables.positions; position += 1) {
        if (this.ends(limit)) return;
        const dish = tables.candidateDish[week.picks[position]!]!;
        if (this.attempt(() => week.toggleEvening(dish, tables.dayAt[position]!))) improved = true;
      }
      for (let base = 0; base < tables.bases; base += 1) {
        if (!week.usesBase(base)) continue;
        if (this.ends(limit)) return;
        if (this.attempt(() => (week.replan(base), true))) improved = true;
      }
    }
  }
}
