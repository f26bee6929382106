/** Moves of an ordinary search. At a third of it some weeks end without a feasible plan; at twice as many weeks gain about 3 %. */
export const PLAN_STEPS = 60_000;
