import type { PlanAnswer } from "./app.js";

/** The week that is left when its last box has fallen away. */
export const nothingToPack: PlanAnswer = {
  outcome: {
    kind: "PLANNED",
    draft: {
      boxes: [],
      batches: [],
      readyUses: [],
      tasks: [],
      sessions: [],
      shopping: [],
      cautions: (["LABELS", "CHOKING", "HOLDING", "NUTRITION"] as const).map((about) => ({ kind: "GENERAL", about })),
      wishes: {
        handsOnMinutes: 0,
        costMinor: 0,
        spareBaseGrams: 0,
        nutrientShortfallPercent: 0,
        refusalPoints: 0,
        monotonyPoints: 0,
        objectivePoints: 0,
      },
    },
    seed: 0,
    steps: 0,
    problemHash: "no box is left",
    objectivePoints: 0,
  },
  compared: false,
  aloneMinutes: null,
  problem: null,
};
