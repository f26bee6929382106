/** HiGHS behind the solver that the bound asks for. Nothing it says is trusted: every bound is worked out again from its duals. */
import { createRequire } from "node:module";
import type { Highs } from "highs";
import type { LinearAnswer, LinearSolver, OpenSolver, SolvingMethod } from "../domain/planner/bound/growing-program.js";
import { COST_UNITS, type LinearModel } from "../domain/planner/bound/linear-model.js";

/** The package declares its loader in a way that a module of this kind cannot call. */
const loadHighs = createRequire(import.meta.url)("highs") as () => Promise<Highs>;

const OPTIMAL = 7;
const INFEASIBLE = 8;
const NO_LIMIT = 2_147_483_647;
/** The solver offers to stop at every iteration; only so many offers lead to a question. */
const OFFERS_A_QUESTION = 16;

/** The solver's tolerances are made for costs near one: it counts in points. */
const POINT = 1000 * COST_UNITS;

/** Loads the solver; what it answers opens a model at a time. */
export async function openHighs(): Promise<OpenSolver> {
  const highs = await loadHighs();
  return (model, method) => openSolver(highs, model, method);
}

const matrixOf = (model: LinearModel) => ({
  format: "csr" as const,
  numRows: model.rowLower.length,
  numCols: model.cost.length,
  starts: model.rowStart,
  indices: model.rowColumn,
  values: model.rowValue,
});

function openSolver(highs: Highs, model: LinearModel, method: SolvingMethod): LinearSolver {
  const columns = model.cost.length;
  const lp = highs.createModel({
    numCols: columns,
    numRows: model.rowLower.length,
    colCost: model.cost.map((cost) => cost / POINT),
    colLower: model.lower,
    colUpper: model.upper,
    rowLower: model.rowLower,
    rowUpper: model.rowUpper,
    matrix: matrixOf(model),
  });
  // Perturbed costs have to be put right again after every program, which a warm start seldom repays.
  const simplex = {
    solver: "simplex",
    simplex_strategy: 1,
    presolve: "off",
    dual_simplex_cost_perturbation_multiplier: 0,
  };
  const { basic } = highs.constants.basisStatus;
  let rows = model.rowLower.length;
  lp.options.set({ output_flag: false });
  if (method === "SIMPLEX") lp.options.set(simplex);
  else lp.options.set({ solver: "ipm", run_crossover: method === "CROSSOVER" ? "on" : "off" });
  return {
    solve({ lower, upper }, from, shouldStop, mostIterations = NO_LIMIT): LinearAnswer {
      lp.options.set({ simplex_iteration_limit: mostIterations });
      lp.changeColsBounds({ kind: "range", from: 0, to: columns - 1 }, lower, upper);
      if (from !== null) {
        const { colStatus, rowStatus } = from as { colStatus: Int32Array; rowStatus: Int32Array };
        lp.setBasis({ colStatus, rowStatus: Int32Array.from({ length: rows }, (_, row) => rowStatus[row] ?? basic) });
      }
      let offers = 0;
      const offer = (event: { interrupt(): void }): undefined => {
        offers += 1;
        if (offers % OFFERS_A_QUESTION === 0 && shouldStop()) event.interrupt();
      };
      const { simplexInterrupt, ipmInterrupt } = highs.constants.callbackType;
      const { modelStatus } = lp.run({ [simplexInterrupt]: offer, [ipmInterrupt]: offer });
      if (method === "CROSSOVER") lp.options.set(simplex);
      const { colValue, rowDual } = lp.getSolution();
      const common = { objective: lp.getObjectiveValue() * POINT, values: colValue };
      if (modelStatus === INFEASIBLE) {
        const ray = lp.getDualRay() as { values: Float64Array } | undefined;
        return { ...common, status: "INFEASIBLE", duals: ray?.values ?? new Float64Array(rows), basis: null };
      }
      const optimal = modelStatus === OPTIMAL;
      return {
        ...common,
        status: optimal ? "OPTIMAL" : "LIMIT",
        duals: rowDual.map((dual) => dual * POINT),
        basis: optimal ? lp.getBasis() : null,
      };
    },
    addRows(added): void {
      lp.addRows({ lower: added.rowLower, upper: added.rowUpper, matrix: matrixOf(added) });
      rows += added.rowLower.length;
    },
    close: () => lp.dispose(),
  };
}
