import type { RoleCode } from "../database/household.js";

/** Least role for each thing a carer can do in a household. Row policies say whose rows; this table says which verb. */
export const leastRole = {
  readHousehold: "OBSERVER",
  seeInvitations: "COORDINATOR",
  inviteCarers: "COORDINATOR",
  changeCarers: "COORDINATOR",
  leaveHousehold: "OBSERVER",
  inviteHomes: "COORDINATOR",
  joinChildren: "COORDINATOR",
  changeChildren: "COORDINATOR",
  arrangeResidence: "COORDINATOR",
  giveUpHome: "COORDINATOR",
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
  reportReturned: "HELPER",
  writeHandover: "HELPER",
  reportAbsence: "HELPER",
  reportDisruption: "HELPER",
  workOnTasks: "HELPER",
  workForOthers: "COORDINATOR",
  setDuties: "COOK",
  setAvailability: "HELPER",
  setAvailabilityOfOthers: "COORDINATOR",
  tickShopping: "HELPER",
  haveFeed: "HELPER",
  exportHousehold: "COORDINATOR",
  erase: "COORDINATOR",
} as const satisfies Record<string, RoleCode>;

export type Verb = keyof typeof leastRole;

const rank: Record<RoleCode, number> = { OBSERVER: 0, HELPER: 1, COOK: 2, COORDINATOR: 3 };

/** Everything the role reaches, in the order of the table. */
export const verbsOf = (role: RoleCode): readonly Verb[] =>
  (Object.keys(leastRole) as Verb[]).filter((verb) => may(role, verb));

export const may = (role: RoleCode, verb: Verb): boolean => rank[role] >= rank[leastRole[verb]];
