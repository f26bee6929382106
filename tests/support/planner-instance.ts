import type { Band, Candidate, Position, Problem, Target } from "../../src/domain/planner/problem.js";

/** An invented week in the planner's mathematical model, as the instance files hold it (one JSON document each). */
export interface PlannerInstance {
  readonly name: string;
  readonly instance: {
    readonly D: number;
    readonly slots: readonly { readonly name: string }[];
    readonly nLunch: number;
    readonly dishes: readonly {
      readonly type: string;
      readonly nut: readonly number[];
      readonly bases: readonly { readonly b: number; readonly amt: number }[];
      readonly finFixed: number;
      readonly finPer: number;
      readonly eq: readonly number[];
      readonly starch: number;
      readonly legume: number;
      readonly fried: number;
      readonly oily: number;
      readonly treat: number;
    }[];
    readonly bases: readonly {
      readonly keep: number;
      readonly fixed: number;
      readonly perBatch: number;
      readonly batch: number;
      readonly maxBatches: number;
      readonly eqPerBatch: readonly number[];
      readonly windows: readonly number[];
      readonly wasteP: number;
    }[];
    readonly children: readonly {
      readonly scale: number;
      readonly dayLo: readonly number[];
      readonly dayHi: readonly number[];
      readonly weekHardLo: readonly number[];
      readonly weekHardHi: readonly number[];
      readonly weekTarget: readonly number[];
      readonly weekDir: readonly number[];
      readonly weekW: readonly number[];
      readonly rules: readonly {
        readonly kind: "legume" | "fried" | "oily" | "treat";
        readonly min: number;
        readonly max: number;
      }[];
      readonly cand: readonly (readonly number[])[];
      readonly coef: readonly (readonly number[])[];
    }[];
    readonly budget: readonly number[];
    readonly eqBudget: readonly number[];
    readonly effort: readonly number[];
  };
  /** What is known of it; not needed to plan it. */
  readonly reference?: { readonly bestObjective: number; readonly lowerBound: number };
}

const CLASSES = ["legume", "fried", "oily", "treat"] as const;
const NUTRIENTS = 11;
/** The weekly rows are over nutrients 3 to 10. */
const FIRST_WEEKLY = 3;
const NO_LIMIT = 1_000_000;

/** The instance as a `Problem`: no evening finishing, no storage, equipment limited on mornings only, treats twice a week. */
export function problemFromInstance({ instance }: PlannerInstance): Problem {
  const days = instance.D;
  const slots = instance.slots.length;
  const scaled = (value: number, scale: number): number => Math.round((value * scale) / 100);
  const positions: Position[] = [];
  const bands: Band[] = [];
  const targets: Target[] = [];
  instance.children.forEach((child, c) => {
    const candidatesOf = (slot: number): Candidate[] =>
      child.cand[slot]!.map((dish, k) => {
        const row = instance.dishes[dish]!;
        return {
          dish,
          cost: child.coef[slot]![k]!,
          q: [...row.nut.map((value) => scaled(value, child.scale)), ...CLASSES.map((kind) => row[kind])],
          bases: row.bases.map(({ b, amt }) => ({ base: b, amount: scaled(amt, child.scale) })),
        };
      });
    const perSlot = instance.slots.map((_, slot) => candidatesOf(slot));
    const week: number[] = [];
    for (let day = 0; day < days; day += 1) {
      const today: number[] = [];
      for (let slot = 0; slot < slots; slot += 1) {
        week.push(positions.length);
        today.push(positions.length);
        // Siblings' lunches are compared slot by slot; snacks are not, so theirs have numbers of their own.
        const compared = slot < instance.nLunch ? slot : slots * (c + 1) + slot;
        positions.push({ child: c, day, box: c * days + day, slot: compared, candidates: perSlot[slot]!, fixed: -1 });
      }
      child.dayLo.forEach((lo, n) => {
        const hi = child.dayHi[n]!;
        bands.push({
          name: `day ${n}`,
          measure: n,
          positions: today,
          lo: lo > 0 ? lo : null,
          hi: hi < NO_LIMIT ? hi : null,
        });
      });
    }
    child.weekTarget.forEach((target, i) => {
      const measure = FIRST_WEEKLY + i;
      const hi = child.weekHardHi[i]!;
      bands.push({
        name: `week ${measure}`,
        measure,
        positions: week,
        lo: child.weekHardLo[i]!,
        hi: hi < NO_LIMIT ? hi : null,
      });
      const direction = child.weekDir[i] === 1 ? 1 : -1;
      targets.push({ name: `week ${measure}`, measure, positions: week, target, direction, weight: child.weekW[i]! });
    });
    for (const { kind, min, max } of child.rules) {
      bands.push({ name: kind, measure: NUTRIENTS + CLASSES.indexOf(kind), positions: week, lo: min, hi: max });
    }
  });
  const firstDayOf = (window: number): number => (window === 0 ? 0 : window <= days ? window - 1 : window - 1 - days);
  return {
    days,
    children: instance.children.length,
    measures: NUTRIENTS + CLASSES.length,
    equipment: instance.eqBudget.length,
    dishes: instance.dishes.map((dish) => ({
      main: dish.type === "main",
      repeatMax: dish.treat === 1 ? 2 : 1,
      starch: dish.starch,
      morning: { fixed: dish.finFixed, perPortion: dish.finPer, equipment: dish.eq, portionsPerGo: 0 },
      split: null,
    })),
    bases: instance.bases.map((base) => ({
      fixed: base.fixed,
      perBatch: base.perBatch,
      batchAmount: base.batch,
      maxBatches: base.maxBatches,
      equipment: base.eqPerBatch,
      windows: base.windows.map((window) => ({
        window,
        firstDay: firstDayOf(window),
        lastDay: Math.min(days - 1, firstDayOf(window) + base.keep - 1),
      })),
      // Points per portion of 100 units.
      wastePerThousand: base.wasteP * 10,
      storageMl: 0,
    })),
    windows: instance.budget.map((minutes, w) => ({
      kind: w === 0 ? "WEEKEND" : w <= days ? "EVENING" : "MORNING",
      day: firstDayOf(w),
      minutes,
      effort: instance.effort[w]!,
      equipment: w > days ? instance.eqBudget : instance.eqBudget.map(() => NO_LIMIT),
    })),
    ready: [],
    positions,
    bands,
    targets,
    distinct: [],
    together: [],
    relaxed: { siblings: [], repeats: [], starch: [] },
    neighbours: Array.from({ length: days - 1 }, (_, day) => [day, day + 1] as const),
    refrigeratorMl: 0,
    stayClose: null,
    sharing: true,
  };
}
