import type {
  Band,
  Candidate,
  FinishLoad,
  Position,
  Problem,
  ProblemWindow,
  Target,
} from "../../src/domain/planner/problem.js";
import { createRandomStream } from "../../src/domain/planner/random.js";

/** How large a random week is, and which parts of the problem it uses beyond picks, bands, targets and bases. */
export interface RandomProblemShape {
  readonly children: number;
  readonly days: number;
  readonly slots: number;
  /** Candidates per position. */
  readonly choices: number;
  readonly bases: number;
  /** Evening finishing, storage, ready supply, distinct counts, not-together, equipment per go. */
  readonly everything: boolean;
  /** Budgets as a share of a generous week, in percent: 100 hardly binds. */
  readonly tightness: number;
}

/** Tenths of a minute that no morning has. */
const NO_MORNING = 1_000_000;

const MEASURES = 4;
/** Measures 0 and 1 are amounts; 2 and 3 say membership of a class. */
const FIRST_CLASS = 2;

/** A week drawn from `seed`; many are feasible, some are not. */
export function drawProblem(seed: number, shape: RandomProblemShape): Problem {
  const random = createRandomStream(seed);
  const between = (least: number, most: number): number => least + random.below(most - least + 1);
  const chance = (percent: number): boolean => random.below(100) < percent;
  const { children, days, slots, choices, everything } = shape;
  const budget = (generous: number): number => Math.floor((generous * shape.tightness) / 100);

  const finish = (): FinishLoad => ({
    fixed: between(10, 40),
    perPortion: between(2, 12),
    equipment: [chance(40) ? between(20, 60) : 0],
    portionsPerGo: everything && chance(50) ? 1 : 0,
  });
  const dishesPerSlot = choices + 1;
  const dishes = Array.from({ length: slots * dishesPerSlot }, (_, v) => {
    const drawn = {
      main: v < dishesPerSlot,
      repeatMax: v < dishesPerSlot ? 1 : 2,
      starch: v < dishesPerSlot ? random.below(3) - 1 : -1,
      morning: finish(),
      split: everything && chance(25) ? { evening: finish(), morning: { ...finish(), perPortion: 1 } } : null,
    };
    // Every other dish that the evening may finish has to be finished then.
    return drawn.split !== null && v % 2 === 0 ? { ...drawn, morning: { ...drawn.morning, fixed: NO_MORNING } } : drawn;
  });
  const usesOf = dishes.map(() =>
    shape.bases > 0 && chance(60) ? [{ base: random.below(shape.bases), amount: between(40, 120) }] : [],
  );
  const classOf = dishes.map(() => [chance(40) ? 1 : 0, chance(40) ? 1 : 0]);
  const amountOf = dishes.map(() => [between(50, 200), between(0, 90)]);

  const windows: ProblemWindow[] = [
    { kind: "WEEKEND", day: 0, minutes: budget(500), effort: between(1, 3), equipment: [budget(300)] },
  ];
  for (let day = 0; day < days; day += 1) {
    if (day > 0) {
      windows.push({ kind: "EVENING", day, minutes: budget(260), effort: between(3, 5), equipment: [budget(150)] });
    }
    windows.push({ kind: "MORNING", day, minutes: budget(300), effort: between(5, 8), equipment: [budget(200)] });
  }
  const bases = Array.from({ length: shape.bases }, () => {
    const keep = between(1, 3);
    const offered = windows.flatMap((window, w) =>
      window.kind === "MORNING" && chance(60)
        ? []
        : [{ window: w, firstDay: window.day, lastDay: Math.min(days - 1, window.day + keep - 1) }],
    );
    return {
      fixed: between(20, 90),
      perBatch: between(5, 25),
      batchAmount: between(80, 260),
      maxBatches: between(1, 3),
      equipment: [chance(50) ? between(10, 60) : 0],
      windows: offered,
      wastePerThousand: between(0, 150),
      storageMl: everything ? between(100, 600) : 0,
    };
  });

  const positions: Position[] = [];
  const bands: Band[] = [];
  const targets: Target[] = [];
  for (let child = 0; child < children; child += 1) {
    const scale = between(70, 130);
    const scaled = (value: number): number => Math.round((value * scale) / 100);
    const week: number[] = [];
    for (let day = 0; day < days; day += 1) {
      const box: number[] = [];
      for (let slot = 0; slot < slots; slot += 1) {
        const offered = Array.from({ length: dishesPerSlot }, (_, i) => slot * dishesPerSlot + i);
        offered.splice(random.below(offered.length), dishesPerSlot - choices);
        const candidates = offered.map((dish): Candidate => ({
          dish,
          cost: between(0, 60),
          q: [...amountOf[dish]!.map(scaled), ...classOf[dish]!],
          bases: usesOf[dish]!.map(({ base, amount }) => ({ base, amount: scaled(amount) })),
          ...(everything ? { kinds: [0, dish % 3] } : {}),
        }));
        box.push(positions.length);
        week.push(positions.length);
        positions.push({ child, day, box: child * days + day, slot, candidates, fixed: -1 });
      }
      const middle = scaled(125 * slots);
      bands.push({ name: `day ${day}`, measure: 0, positions: box, lo: middle - 70 * slots, hi: middle + 60 * slots });
    }
    bands.push({
      name: "class",
      measure: FIRST_CLASS,
      positions: week,
      lo: chance(50) ? 1 : null,
      hi: days * slots - 1,
    });
    targets.push({
      name: "more",
      measure: 1,
      positions: week,
      target: between(40, 60) * days,
      direction: 1,
      weight: 3,
    });
    targets.push({
      name: "less",
      measure: 0,
      positions: week,
      target: between(90, 130) * days,
      direction: -1,
      weight: 2,
    });
  }
  const allOf = (child: number): number[] => positions.flatMap((position, p) => (position.child === child ? [p] : []));
  return {
    days,
    children,
    measures: MEASURES,
    equipment: 1,
    dishes,
    bases,
    windows,
    ready:
      everything && shape.bases > 0 && chance(50)
        ? [{ base: random.below(shape.bases), amount: between(30, 150), firstDay: 0, lastDay: between(0, days - 1) }]
        : [],
    positions,
    bands,
    targets,
    distinct: everything
      ? [
          { name: "days", counts: "DAYS", measure: FIRST_CLASS, positions: allOf(0), atLeast: 1, atMost: -1 },
          { name: "kinds", counts: "KINDS", measure: FIRST_CLASS + 1, positions: allOf(0), atLeast: 0, atMost: 2 },
        ]
      : [],
    together: everything ? [{ name: "apart", first: FIRST_CLASS, second: FIRST_CLASS + 1, boxes: [0] }] : [],
    relaxed: {
      siblings: everything && chance(20) ? [0] : [],
      repeats: everything && chance(20) ? [days - 1] : [],
      starch: everything && chance(20) ? [0] : [],
    },
    neighbours: Array.from({ length: days - 1 }, (_, day) => [day, day + 1] as const),
    refrigeratorMl: everything ? between(400, 1500) : 1_000_000,
    stayClose: null,
    sharing: true,
  };
}

/** Numbers of the weeks that are small enough to try everything. */
export const tinySeeds: readonly number[] = Array.from({ length: 28 }, (_, i) => i + 1);
/** A week small enough to try everything, some tight; with `everything` false without the rules that only few weeks have. */
export const drawTinyWeek = (seed: number, everything = true): Problem =>
  drawProblem(seed, {
    children: 1 + (seed % 2),
    days: 2 + (seed % 3 === 0 ? 1 : 0),
    slots: seed % 2 === 0 ? 2 : 1,
    choices: 2 + (seed % 2),
    bases: 2,
    everything,
    tightness: seed % 4 === 0 ? 45 : 90,
  });
