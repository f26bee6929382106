import type { RoleCode } from "../database/household.js";

/** Least role for each thing a carer can do in a household. Row policies say whose rows; this table says which verb. */
export const leastRole = {
  readHousehold: "OBSERVER",
  changeChildren: "COORDINATOR",
  recordAllergy: "COOK",
  removeAllergy: "COORDINATOR",
  changeKitchen: "COOK",
  setKeepsOut: "COORDINATOR",
  changeStock: "COOK",
  keepOwnRules: "COORDINATOR",
  recordExemption: "COORDINATOR",
  recordLabel: "HELPER",
  changeOwnCatalogue: "COOK",
  relaxHouseRule: "COORDINATOR",
  planWeek: "COOK",
  changeItems: "COOK",
  agreeWeek: "COORDINATOR",
  packBox: "HELPER",
  reportAbsence: "HELPER",
  reportDisruption: "HELPER",
  workOnTasks: "HELPER",
  workForOthers: "COORDINATOR",
  setDuties: "COOK",
  setAvailability: "HELPER",
  setAvailabilityOfOthers: "COORDINATOR",
} as const satisfies Record<string, RoleCode>;

export type Verb = keyof typeof leastRole;

const rank: Record<RoleCode, number> = { OBSERVER: 0, HELPER: 1, COOK: 2, COORDINATOR: 3 };

export const may = (role: RoleCode, verb: Verb): boolean => rank[role] >= rank[leastRole[verb]];
