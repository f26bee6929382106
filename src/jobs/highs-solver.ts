/** HiGHS behind the solver that the bound asks for. Nothing it says is trusted: every bound is worked out again from its duals. */
import { createRequire } from "node:module";
import type { Highs } from "highs";
import type { LinearAnswer, LinearSolver, OpenSolver } from "../domain/planner/bound/branch-tree.js";
import type { LinearModel } from "../domain/planner/bound/linear-model.js";

/** The package declares its loader in a way that a module of this kind cannot call. */
const loadHighs = createRequire(import.meta.url)("highs") as () => Promise<Highs>;

const OPTIMAL = 7;
const INFEASIBLE = 8;
const NO_LIMIT = 2_147_483_647;
/** The solver offers to stop at every iteration; only so many offers lead to a question. */
const OFFERS_A_QUESTION = 16;

/** Loads the solver; what it answers opens a model at a time. */
export async function openHighs(): Promise<OpenSolver> {
  const highs = await loadHighs();
  return (model, method) => openSolver(highs, model, method);
}

function openSolver(highs: Highs, model: LinearModel, method: Parameters<OpenSolver>[1]): LinearSolver {
  const columns = model.cost.length;
  const rows = model.rowLower.length;
  const lp = highs.createModel({
    numCols: columns,
    numRows: rows,
    colCost: model.cost,
    colLower: model.lower,
    colUpper: model.upper,
    rowLower: model.rowLower,
    rowUpper: model.rowUpper,
    matrix: {
      format: "csr",
      numRows: rows,
      numCols: columns,
      starts: model.rowStart,
      indices: model.rowColumn,
      values: model.rowValue,
    },
  });
  lp.options.set({ output_flag: false, solver: method === "INTERIOR_POINT" ? "ipm" : "simplex" });
  if (method === "INTERIOR_POINT") lp.options.set({ run_crossover: "off" });
  else lp.options.set({ simplex_strategy: 1, presolve: "off" });
  return {
    solve({ lower, upper }, from, shouldStop, mostIterations = NO_LIMIT): LinearAnswer {
      lp.options.set({ simplex_iteration_limit: mostIterations });
      lp.changeColsBounds({ kind: "range", from: 0, to: columns - 1 }, lower, upper);
      if (from !== null) lp.setBasis(from as ReturnType<typeof lp.getBasis>);
      let offers = 0;
      const offer = (event: { interrupt(): void }): undefined => {
        offers += 1;
        if (offers % OFFERS_A_QUESTION === 0 && shouldStop()) event.interrupt();
      };
      const { simplexInterrupt, ipmInterrupt } = highs.constants.callbackType;
      const { modelStatus } = lp.run({ [simplexInterrupt]: offer, [ipmInterrupt]: offer });
      const { colValue, rowDual } = lp.getSolution();
      const common = { objective: lp.getObjectiveValue(), values: colValue };
      if (modelStatus === INFEASIBLE) {
        const ray = lp.getDualRay() as { values: Float64Array } | undefined;
        return { ...common, status: "INFEASIBLE", duals: ray?.values ?? new Float64Array(rows), basis: null };
      }
      const optimal = modelStatus === OPTIMAL;
      return {
        ...common,
        status: optimal ? "OPTIMAL" : "LIMIT",
        duals: rowDual,
        basis: optimal ? lp.getBasis() : null,
      };
    },
    close: () => lp.dispose(),
  };
}
