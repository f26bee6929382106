/** Every mutation with an input that succeeds, so that one test can ask the same of all of them. */
import type { RoleCode } from "../../src/database/household.js";
import { ownKey } from "../../src/app/own-catalogue.js";
import { globalId } from "../../src/graphql/global-id.js";
import { calendar, event } from "../support/calendar-file.js";
import {
  classId,
  localOf,
  schoolId,
  type BoxSeen,
  type Household,
  type ServedApp,
  type WeekSeen,
} from "../support/served-app.js";
import { DAY } from "./documents.js";

export interface Mutation {
  readonly field: string;
  /** The least role that may send it. */
  readonly needs: RoleCode;
  /** What it answers when the thing it is about is not there or not the sender's. */
  readonly missing: string;
  /** The inputs that name that thing. */
  readonly names: readonly string[];
  /** May arrange what it needs; the rows of a home are to be counted after it was asked. */
  input(home: Household, week: WeekSeen): Record<string, unknown> | Promise<Record<string, unknown>>;
  /** Makes another request of it. */
  readonly other: Record<string, unknown>;
}

const itemOf = (week: WeekSeen, slot: string) => week.plan.boxes[0]!.items.find((item) => item.slot === slot)!;
const openTasks = (week: WeekSeen) => week.plan.tasks.filter((task) => task.state === "OPEN" && task.kind !== "PACK");
const openTask = (week: WeekSeen) => openTasks(week)[0]!;
const ofWeek = (week: WeekSeen) => ({ seenRevision: week.revision });
const nothingThere = (name: string) => ({ missing: "NothingThere", names: [name] });
const householdGone = { missing: "HouseholdNotFound", names: ["householdId"] };
/** `Household.change` adds household and revision. */
const kitchen = (field: string, needs: RoleCode, input: Record<string, unknown>, other: Record<string, unknown>) => ({
  field,
  needs,
  ...householdGone,
  input: () => input,
  other,
});

export const weekMutations: readonly Mutation[] = [
  {
    field: "planWeek",
    needs: "COOK",
    ...householdGone,
    input: (home, week) => ({ householdId: home.id, date: DAY, ...ofWeek(week) }),
    other: { replanAgreed: true },
  },
  {
    field: "pinItem",
    needs: "COOK",
    ...nothingThere("itemId"),
    input: (_, week) => ({ itemId: itemOf(week, "FRUIT").id, ...ofWeek(week) }),
    other: { seenRevision: 999 },
  },
  {
    field: "unpinItem",
    needs: "COOK",
    ...nothingThere("itemId"),
    input: (_, week) => ({ itemId: itemOf(week, "FRUIT").id, ...ofWeek(week) }),
    other: { seenRevision: 999 },
  },
  {
    field: "swapItem",
    needs: "COOK",
    ...nothingThere("itemId"),
    input: (_, week) => ({ itemId: itemOf(week, "MAIN").id, dish: itemOf(week, "MAIN").dish.key, ...ofWeek(week) }),
    other: { dish: "something-else" },
  },
  {
    field: "markPacked",
    needs: "HELPER",
    ...nothingThere("boxId"),
    input: (_, week) => ({ boxId: week.plan.boxes[0]!.id, packedAt: `${DAY}T07:10:00Z`, ...ofWeek(week) }),
    other: { packedAt: `${DAY}T07:11:00Z` },
  },
  {
    field: "takeTask",
    needs: "HELPER",
    ...nothingThere("taskId"),
    input: (_, week) => ({ taskId: openTask(week).id, ...ofWeek(week) }),
    other: { seenRevision: 0 },
  },
  {
    field: "finishTask",
    needs: "HELPER",
    ...nothingThere("taskId"),
    input: (_, week) => ({ taskId: openTask(week).id, ...ofWeek(week) }),
    other: { minutes: 2.5 },
  },
  {
    field: "releaseTask",
    needs: "HELPER",
    ...nothingThere("taskId"),
    input: (home, week) => afterTask(home, week, "takeTask"),
    other: { seenRevision: 0 },
  },
  {
    field: "handTask",
    needs: "HELPER",
    ...nothingThere("taskId"),
    input: async (home, week) => ({
      ...(await afterTask(home, week, "takeTask")),
      personId: await coordinatorOf(home),
    }),
    other: { seenRevision: 0 },
  },
  {
    field: "undoTask",
    needs: "HELPER",
    ...nothingThere("taskId"),
    // Of the last day: nothing is packed yet that holds it.
    input: (home, week) => afterTask(home, week, "finishTask", openTasks(week).at(-1)),
    other: { seenRevision: 0 },
  },
  {
    field: "tickShoppingLine",
    needs: "HELPER",
    ...nothingThere("lineId"),
    input: async (home, week) => ({ lineId: await lineToBuy(home), ticked: true, ...ofWeek(week) }),
    other: { ticked: false },
  },
  {
    field: "mendWeek",
    needs: "COOK",
    ...nothingThere("weekId"),
    input: (_, week) => ({ weekId: week.id, ...ofWeek(week) }),
    other: { seenRevision: 999 },
  },
  {
    field: "agreeWeek",
    needs: "COORDINATOR",
    ...nothingThere("weekId"),
    input: (_, week) => ({ weekId: week.id, ...ofWeek(week) }),
    other: { seenRevision: 999 },
  },
  {
    field: "reportAbsence",
    needs: "HELPER",
    ...householdGone,
    input: (home, week) => ({
      householdId: home.id,
      childId: home.children[0],
      date: week.plan.boxes.at(-1)!.date,
      ...ofWeek(week),
    }),
    other: { reason: "a day out" },
  },
  {
    field: "reportDisruption",
    needs: "HELPER",
    ...householdGone,
    input: (home, week) => ({
      householdId: home.id,
      disruption: { shortMorning: { date: "2027-01-14", minutes: 600 } },
      ...ofWeek(week),
    }),
    other: { disruption: { shortMorning: { date: "2027-01-14", minutes: 9 } } },
  },
  {
    field: "withdrawDisruption",
    needs: "HELPER",
    ...householdGone,
    input: withdrawal,
    other: { seenRevision: 999 },
  },
  {
    field: "reportReturned",
    needs: "HELPER",
    ...householdGone,
    async input(home) {
      const box = await boxOfToday(home);
      const entries = [{ itemId: box.items[0]!.id, cameBack: "SOME" }];
      return { householdId: home.id, seenRevision: await home.revision(), boxId: box.id, entries };
    },
    other: { boxId: "another" },
  },
];

/** Today, of which a box may have come back. */
const TODAY = "2026-11-25";
async function boxOfToday(home: Household): Promise<BoxSeen> {
  if (!(await home.week(TODAY))) expect((await home.plan(TODAY)).__typename).toBe("WeekPayload");
  return (await home.week(TODAY))!.plan.boxes.find(({ date }) => date === TODAY)!;
}

async function lineToBuy(home: Household): Promise<string> {
  const found = await home.ask<{ week: { plan: { shopping: { id: string }[] } } }>(
    `query Lines($id: ID!) { node(id: $id) { ... on Household { week(date: "${DAY}") { plan { shopping { id } } } } } }`,
    home.id,
  );
  return found.week.plan.shopping[0]!.id;
}

/** A task that the coordinator has just taken or done. */
async function afterTask(
  home: Household,
  week: WeekSeen,
  field: string,
  task = openTask(week),
): Promise<Record<string, unknown>> {
  const about = { taskId: task.id, ...ofWeek(week) };
  const done = await home.change(documentOf(field), { householdId: undefined, ...about });
  expect(done.__typename).toBe("TaskPayload");
  return about;
}
const coordinatorOf = async (home: Household): Promise<string> => {
  const query = "query Carers($id: ID!) { node(id: $id) { ... on Household { carers { role person { id } } } } }";
  const { carers } = await home.ask<{ carers: { role: string; person: { id: string } }[] }>(query, home.id);
  return carers.find(({ role }) => role === "COORDINATOR")!.person.id;
};

/** A report to take back, of a week that nobody has planned: nothing else of the home changes. */
async function withdrawal(home: Household): Promise<Record<string, unknown>> {
  const reported = (await home.change(
    "mutation Report($input: ReportDisruptionInput!) { reportDisruption(input: $input) { ... on DisruptionPayload { disruption { id } } } }",
    { disruption: { shortMorning: { date: "2027-01-20", minutes: 20 } }, seenRevision: 0 },
  )) as unknown as { disruption: { id: string } };
  return { householdId: home.id, disruptionId: reported.disruption.id, seenRevision: 0 };
}

const ownFood = {
  name: "Teff flour",
  kind: "teff",
  group: "WHOLE_GRAIN",
  origins: ["PLANT"],
  nutrients: { energyKcal: 366, fatGrams: 2.4, totalCarbohydrateGrams: 73, fibreGrams: 8, proteinGrams: 13 },
  label: { contains: [], mayContain: ["WHEAT"], readOn: "2026-11-20" },
  chokingClasses: [],
  pack: { grams: 500, priceMinor: 320 },
  shopSection: "DRY_GOODS",
};
const ownDish = {
  name: "Apple slices with a pinch of nothing",
  slots: ["FRUIT"],
  ingredients: [{ food: "apple-raw", grams: 90, form: "SLICED_THIN" }],
  portion: { grams: 90, stepGrams: 10 },
  steps: [{ text: "Slice the apple.", handsOnFixedMinutes: 1, handsOnPerPortionMinutes: 2 }],
  served: "COLD",
  goodForHours: 6,
  spill: "DRY",
  volumeMl: 150,
  starch: "NONE",
  protein: "NONE",
  processing: [],
  cookedInFat: false,
};
/** Saved first, then taken off again: each needs the one before. */
const ownMutations: readonly Mutation[] = [
  kitchen("saveOwnFood", "COOK", { food: ownFood }, { food: { ...ownFood, wholeGrain: true } }),
  kitchen("saveOwnDish", "COOK", { dish: ownDish }, { dish: { ...ownDish, treat: true } }),
  {
    ...kitchen("removeOwnDish", "COOK", {}, { key: "own-another" }),
    input: (home) => ({ key: ownKey(ownDish.name, localOf(home.id)) }),
  },
  {
    ...kitchen("removeOwnFood", "COOK", {}, { key: "own-another" }),
    input: (home) => ({ key: ownKey(ownFood.name, localOf(home.id)) }),
  },
];
const ownRule = {
  id: "no-kiwi",
  kind: "EXCLUDE",
  says: "No kiwi on a Friday.",
  level: "FORBID",
  source: "the family's own",
  weekdays: ["FRIDAY"],
  matches: { anyOf: [{ kinds: ["kiwi"] }] },
};
const ownRules = (version: number) =>
  JSON.stringify({
    format: "noonpail-rule-set/1",
    key: "no-kiwi-on-fridays",
    title: "No kiwi on Fridays",
    layer: "CHILD",
    coversFoodFromHome: true,
    language: "en",
    version,
    inForceFrom: "2027-02-01",
    rules: [ownRule],
  });
interface RulesSeen {
  readonly ownRules: readonly { readonly id: string; readonly version: number; readonly withdrawn: boolean }[];
  readonly exemptions: readonly { readonly id: string }[];
}
const KEEP = `mutation Keep($input: KeepOwnRulesInput!) { keepOwnRules(input: $input) { __typename
  ... on OwnRulesPayload { child { ownRules { id version withdrawn } exemptions { id } } } } }`;
const RECORD_NOTE = `mutation Record($input: RecordExemptionInput!) { recordExemption(input: $input) { __typename
  ... on ExemptionPayload { child { ownRules { id version withdrawn } exemptions { id } } } } }`;
const RULES_SEEN =
  "query Rules($id: ID!) { node(id: $id) { ... on Child { ownRules { id version withdrawn } exemptions { id } } } }";
const pastry = (day: number) => ({
  ruleSetId: globalId("RuleSet", "d0e00000-0000-4000-8000-000000000403"),
  rule: "pastry",
  from: `2027-02-${day}`,
  until: "2027-06-30",
  clinician: "A. Dietitian",
  note: "Extra energy in small portions until the summer.",
});
/** Kept before it is dropped, recorded before it is ended: what is not there yet is arranged. */
const familyMutations: readonly Mutation[] = [
  {
    field: "keepOwnRules",
    needs: "COORDINATOR",
    ...householdGone,
    async input(home) {
      const { ownRules: own } = await home.ask<RulesSeen>(RULES_SEEN, home.children[0]!);
      return { childId: home.children[0], document: ownRules((own[0]?.version ?? 0) + 1) };
    },
    other: { document: ownRules(99) },
  },
  {
    field: "dropOwnRules",
    needs: "COORDINATOR",
    ...householdGone,
    async input(home) {
      let [own] = (await home.ask<RulesSeen>(RULES_SEEN, home.children[0]!)).ownRules;
      if (!own || own.withdrawn) {
        const document = ownRules((own?.version ?? 0) + 1);
        const { child } = (await home.change(KEEP, { childId: home.children[0], document })) as unknown as {
          child: RulesSeen;
        };
        own = child.ownRules[0]!;
      }
      return { ruleSetId: own.id, from: "2027-03-01", seenRevision: await home.revision() };
    },
    other: { from: "2027-03-02" },
  },
  {
    field: "recordExemption",
    needs: "COORDINATOR",
    ...householdGone,
    async input(home) {
      const { exemptions } = await home.ask<RulesSeen>(RULES_SEEN, home.children[0]!);
      return { childId: home.children[0], ...pastry(10 + exemptions.length) };
    },
    other: { rule: "fried-or-coated" },
  },
  {
    field: "endExemption",
    needs: "COORDINATOR",
    ...householdGone,
    async input(home) {
      let [found] = (await home.ask<RulesSeen>(RULES_SEEN, home.children[0]!)).exemptions;
      if (!found) {
        const { child } = (await home.change(RECORD_NOTE, { childId: home.children[0], ...pastry(20) })) as unknown as {
          child: RulesSeen;
        };
        found = child.exemptions[0]!;
      }
      return { exemptionId: found.id, from: "2027-03-01", seenRevision: await home.revision() };
    },
    other: { from: "2027-03-02" },
  },
];

const PROPOSE = `mutation Propose($input: ProposeResidenceChangeInput!) { proposeResidenceChange(input: $input) { __typename
  ... on ResidencePayload { proposal { id } } } }`;
interface ProposalsSeen {
  readonly residenceProposals: readonly {
    readonly id: string;
    readonly proposedBy: string;
    readonly pattern: object | null;
  }[];
}
const PROPOSALS_SEEN =
  "query Proposals($id: ID!) { node(id: $id) { ... on Child { residenceProposals { id proposedBy pattern { kind } } } } }";
/** A child of the home with another home, added for this once the week of today is planned: one without a school would stop it. */
const sharedChildren = new Map<string, string>();
async function sharedChild(home: Household): Promise<string> {
  await boxOfToday(home);
  const known = sharedChildren.get(home.id) ?? (await childOfTwoHomes(home));
  sharedChildren.set(home.id, known);
  return known;
}
async function childOfTwoHomes(home: Household): Promise<string> {
  const made = await home.change(
    "mutation Make($input: CreateChildInput!) { createChild(input: $input) { ... on CreateChildPayload { child { id } } } }",
    { name: "Cy", dateOfBirth: "2019-02-03", compartments: [{ ml: 600, leakProof: true }], leaveAt: "08:00" },
  );
  await home.otherHome(made.child.id);
  return made.child.id;
}
/** A proposal of single days that stands open, made on this side or the other; one day later each time it is made anew. */
let proposedDays = 0;
async function proposal(home: Household, proposedBy: "THIS_HOME" | "OTHER_HOME"): Promise<string> {
  const childId = await sharedChild(home);
  const other = await home.otherHome(childId);
  const { residenceProposals } = await home.ask<ProposalsSeen>(PROPOSALS_SEEN, childId);
  const open = residenceProposals.find((row) => row.pattern === null && row.proposedBy === proposedBy);
  if (open) return open.id;
  const by = proposedBy === "THIS_HOME" ? home : other;
  proposedDays += 1;
  const dates = [`2027-08-${String(proposedDays).padStart(2, "0")}`];
  const made = (await by.change(PROPOSE, { childId, dates, wakesHere: by === other })) as unknown as {
    proposal: { id: string };
  };
  return made.proposal.id;
}
/** With proposals to answer and a child to give up. */
const twoHomesMutations: readonly Mutation[] = [
  {
    field: "setResidencePattern",
    needs: "COORDINATOR",
    ...householdGone,
    async input(home) {
      const childId = await sharedChild(home);
      return { childId, kind: "ALTERNATE_WEEKS", starts: "2027-09-06", seenRevision: await home.revision() };
    },
    other: { kind: "TWO_TWO_THREE" },
  },
  {
    field: "proposeResidenceChange",
    needs: "COORDINATOR",
    ...householdGone,
    async input(home) {
      const childId = await sharedChild(home);
      return { childId, dates: ["2027-07-05"], wakesHere: false, seenRevision: await home.revision() };
    },
    other: { dates: ["2027-07-06"] },
  },
  {
    field: "answerResidenceChange",
    needs: "COORDINATOR",
    ...householdGone,
    async input(home) {
      const proposalId = await proposal(home, "OTHER_HOME");
      return { proposalId, accept: true, seenRevision: await home.revision() };
    },
    other: { accept: false },
  },
  {
    field: "withdrawResidenceChange",
    needs: "COORDINATOR",
    ...householdGone,
    async input(home) {
      const proposalId = await proposal(home, "THIS_HOME");
      return { proposalId, seenRevision: await home.revision() };
    },
    other: { proposalId: "another" },
  },
  {
    field: "giveUpHome",
    needs: "COORDINATOR",
    ...householdGone,
    async input(home) {
      await boxOfToday(home);
      return { childId: await childOfTwoHomes(home), seenRevision: await home.revision() };
    },
    other: { childId: "another" },
  },
  {
    field: "writeHandover",
    needs: "HELPER",
    ...householdGone,
    async input(home) {
      const written = await home.handoverRevision(home.children[0]!, TODAY);
      return { childId: home.children[0], date: TODAY, note: "Late on Friday.", seenRevision: written };
    },
    other: { note: "Late on Thursday." },
  },
];

/** The first of the two steps that taking an allergy back needs, once for each home. */
const firstSteps = new Map<string, string>();
async function removal(home: Household): Promise<Record<string, unknown>> {
  const about = { childId: home.children[0], foodKind: "kiwi" };
  if (!firstSteps.has(home.id)) {
    expect((await home.change(documentOf("recordAllergy"), about)).__typename).toBe("AllergyPayload");
    const asked = (await home.change(
      "mutation Ask($input: RemoveAllergyInput!) { removeAllergy(input: $input) { ... on ConfirmationNeeded { token } } }",
      about,
    )) as unknown as { token: string };
    firstSteps.set(home.id, asked.token);
  }
  return { ...about, token: firstSteps.get(home.id), seenRevision: await home.revision() };
}

export const kitchenMutations: readonly Mutation[] = [
  kitchen("setStock", "COOK", { entries: [{ food: "apple-raw", grams: 700 }] }, { entries: [] }),
  kitchen(
    "setLeftovers",
    "COOK",
    { leftovers: [{ base: "tomato-sauce", grams: 300, cookedOn: "2027-01-10" }] },
    { leftovers: [] },
  ),
  kitchen(
    "setPrepTimes",
    "COOK",
    {
      prepTimes: [
        { kind: "MORNING", weekday: "MONDAY", startsAt: "06:40", handsOnMinutes: 32, elapsedMinutes: 60 },
        { kind: "EVENING", date: "2027-01-12", startsAt: "19:00", handsOnMinutes: 30, elapsedMinutes: 60 },
      ],
    },
    { prepTimes: [{ kind: "MORNING", weekday: "MONDAY", startsAt: "06:30", handsOnMinutes: 9, elapsedMinutes: 60 }] },
  ),
  kitchen(
    "setEquipment",
    "COOK",
    { equipment: [{ kind: "STEAMER", units: 1 }] },
    { equipment: [{ kind: "OVEN", units: 2 }] },
  ),
  kitchen(
    "recordLabel",
    "HELPER",
    { food: "raisins", contains: [], mayContain: ["SESAME"], readOn: "2026-11-20" },
    { mayContain: [] },
  ),
  {
    field: "removeAllergy",
    needs: "COORDINATOR",
    ...householdGone,
    input: removal,
    other: { loosenTo: "INGREDIENTS" },
  },
  {
    field: "recordAllergy",
    needs: "COOK",
    ...householdGone,
    input: (home) => ({ childId: home.children[0], allergen: "LUPIN" }),
    other: { allergen: "CELERY" },
  },
  kitchen("setKeepsOut", "COORDINATOR", { allergens: ["LUPIN"] }, { allergens: [] }),
  kitchen("setHotDays", "COOK", { dates: ["2027-06-28"] }, { dates: ["2027-06-29"] }),
  kitchen("relaxHouseRule", "COORDINATOR", { rule: "STARCH_CHANGES", date: "2027-01-13" }, { rule: "DISH_REPEATS" }),
  kitchen(
    "createChild",
    "COORDINATOR",
    {
      name: "Bo",
      dateOfBirth: "2019-02-03",
      compartments: [{ ml: 600, leakProof: true }],
      leaveAt: "08:00",
      allergies: [{ allergen: "SESAME" }],
    },
    { name: "Bob" },
  ),
  {
    field: "enrolChild",
    needs: "COORDINATOR",
    ...householdGone,
    input: (home) => ({ childId: home.children[0], schoolClassId: classId("class-4"), fromDate: "2027-04-12" }),
    other: { fromDate: "2027-04-13" },
  },
  {
    ...kitchen("setDuties", "COOK", {}, { duties: [{ session: "morning-2027-01-12", personIds: [] }] }),
    input: async (home) => ({ duties: [{ session: "morning-2027-01-11", personIds: [await coordinatorOf(home)] }] }),
  },
  {
    ...kitchen("acceptRota", "COOK", {}, { to: "2027-02-06" }),
    async input(home) {
      const days = { from: "2027-02-01", to: "2027-02-05" };
      const query = `query Proposal($id: ID!) { node(id: $id) { ... on Household { rotaProposal(from: "${days.from}", to: "${days.to}") { token } } } }`;
      const { rotaProposal } = await home.ask<{ rotaProposal: { token: string } }>(query, home.id);
      return { ...days, proposal: rotaProposal.token };
    },
  },
  kitchen(
    "setAvailability",
    "HELPER",
    { entries: [{ weekday: "MONDAY", kind: "MORNING", minutes: 20 }] },
    { entries: [] },
  ),
  kitchen("setEnergyMethod", "COORDINATOR", { method: "IOM_2005" }, { method: "NASEM_2023" }),
  {
    field: "setSchoolProvision",
    needs: "COORDINATOR",
    ...householdGone,
    input: (home) => ({ childId: home.children[0], entries: [{ food: "milk-whole", grams: 206 }] }),
    other: { entries: [] },
  },
  ...ownMutations,
  ...familyMutations,
  ...twoHomesMutations,
];

const PEOPLE =
  "query People($id: ID!) { node(id: $id) { ... on Household { carers { person { id } role } invitations { id } } } }";
interface PeopleSeen {
  readonly carers: readonly { readonly person: { readonly id: string }; readonly role: string }[];
  readonly invitations: readonly { readonly id: string }[];
}
/** Somebody who may be sent away, and a link that may be taken back: arranged where there is none. */
async function otherCarer(home: Household): Promise<Record<string, unknown>> {
  const { carers } = await home.ask<PeopleSeen>(PEOPLE, home.id);
  const other = carers.find(({ role }) => role !== "COORDINATOR");
  return { householdId: home.id, personId: other?.person.id ?? globalId("Person", await home.join("HELPER")) };
}
async function openInvitation(home: Household): Promise<Record<string, unknown>> {
  const { invitations } = await home.ask<PeopleSeen>(PEOPLE, home.id);
  if (invitations[0]) return { invitationId: invitations[0].id };
  const made = (await home.change(
    "mutation Invite($input: InviteCarerInput!) { inviteCarer(input: $input) { ... on InvitationPayload { invitation { id } } } }",
    { role: "HELPER", seenRevision: undefined },
  )) as unknown as { invitation: { id: string } };
  return { invitationId: made.invitation.id };
}
/** Who cares for a household; nothing here is out of date. The last of them gives coordination away. */
export const carerMutations: readonly Mutation[] = [
  {
    field: "inviteCarer",
    needs: "COORDINATOR",
    ...householdGone,
    input: (home) => ({ householdId: home.id, role: "COOK" }),
    other: { role: "HELPER" },
  },
  {
    field: "inviteHome",
    needs: "COORDINATOR",
    ...householdGone,
    input: (home) => ({ householdId: home.id, childId: home.children[0] }),
    other: { expiresInHours: 24 },
  },
  {
    field: "withdrawInvitation",
    needs: "COORDINATOR",
    missing: "InvitationNotFound",
    names: ["invitationId"],
    input: openInvitation,
    other: { invitationId: "another" },
  },
  {
    field: "changeRole",
    needs: "COORDINATOR",
    ...householdGone,
    input: async (home) => ({ ...(await otherCarer(home)), role: "OBSERVER" }),
    other: { role: "COOK" },
  },
  {
    field: "removeCarer",
    needs: "COORDINATOR",
    ...householdGone,
    input: otherCarer,
    other: { personId: "another" },
  },
  {
    field: "handOverCoordination",
    needs: "COORDINATOR",
    ...householdGone,
    input: async (home) => ({ ...(await otherCarer(home)), role: "COOK" }),
    other: { role: "HELPER" },
  },
];
/** What people do for themselves, whatever their role: tests/graphql/invitations.test.ts and carers.test.ts ask them. */
export const ownMattersMutations = ["acceptInvitation", "acceptHomeInvitation", "leaveHousehold", "renameMe"];

/** Needs a queue beside the server to succeed: tests/jobs/queue.test.ts sends it twice, here it is refused. */
const queuedMutation: Mutation = {
  field: "planWeekInBackground",
  needs: "COOK",
  ...householdGone,
  input: (home, week) => ({ householdId: home.id, date: DAY, ...ofWeek(week) }),
  other: { replanAgreed: true },
};

/** Of the sender's own feed: nothing there can be out of date. */
const feedMutations: readonly Mutation[] = ["renewFeedAddress", "closeFeed"].map((field) => ({
  field,
  needs: "HELPER",
  ...householdGone,
  input: (home) => ({ householdId: home.id }),
  other: {},
}));

const ofFirstChild = (home: Household) => ({ householdId: home.id, childId: home.children[0] });
/** Their two steps are in tests/graphql/erasure.test.ts: here nobody gets past the first. */
const erasureMutations: readonly Mutation[] = [
  { field: "eraseChild", needs: "COORDINATOR", ...householdGone, input: ofFirstChild, other: {} },
  { field: "withdrawErasure", needs: "COORDINATOR", ...householdGone, input: ofFirstChild, other: {} },
  {
    field: "eraseHousehold",
    needs: "COORDINATOR",
    ...householdGone,
    input: (home) => ({ householdId: home.id }),
    other: {},
  },
];
/** Of nobody but the sender; in the same test. */
export const ownMutation = "eraseMe";

/** Every mutation of a household. */
export const everyMutation: readonly Mutation[] = [
  ...kitchenMutations,
  ...weekMutations,
  ...carerMutations,
  ...feedMutations,
  ...erasureMutations,
  queuedMutation,
];

/** Founds what all the others are about; tests/graphql/household.test.ts sends it again and with mistakes. */
export const foundingMutation = "createHousehold";

interface SchoolSeen {
  readonly revision: number;
  readonly ruleSets: readonly { readonly id: string; readonly key: string; readonly version: number }[];
  /** Of another jurisdiction, not adopted here. */
  readonly elsewhere: readonly { readonly id: string }[];
}
interface SchoolMutation {
  readonly field: string;
  /** The input that names the school, the class or the rule set. */
  readonly names: "schoolId" | "schoolClassId" | "ruleSetId";
  input(school: SchoolSeen): Record<string, unknown>;
  /** Makes another request of it. */
  readonly other: Record<string, unknown>;
}

/** Whom the demo's primary school appointed. */
export const administrator = "demo:ruth";
const ofSchool = ({ revision }: SchoolSeen) => ({ schoolId: schoolId("primary"), seenRevision: revision });
const tripDay = { date: "2027-03-02", schoolClassId: classId("class-4") };

const extraTerm = { name: "Extra", firstDay: "2027-08-02", lastDay: "2027-08-06" };
const oneBreak = { key: "lunch", name: "Lunch", startsAt: "11:25", minutes: 25, slots: ["MAIN", "FRUIT"] };

const sentAgain = (version: number, kind = "kiwi") =>
  JSON.stringify({
    format: "noonpail-rule-set/1",
    key: "sent-again",
    title: "Sent again",
    layer: "SCHOOL",
    coversFoodFromHome: true,
    language: "en",
    version,
    inForceFrom: "2027-06-01",
    rules: [
      {
        id: `no-${kind}`,
        kind: "EXCLUDE",
        says: `No ${kind}.`,
        level: "FORBID",
        source: "own rule of an invented school",
        matches: { anyOf: [{ kinds: [kind] }] },
      },
    ],
  });
const ownSet = (ruleSets: SchoolSeen["ruleSets"]) =>
  ruleSets.find(({ key }) => key === "quillbrook-primary-food-from-home")!;

/** In this order: a day or a term is set before it is taken back. */
export const schoolMutations: readonly SchoolMutation[] = [
  {
    field: "setFacility",
    names: "schoolClassId",
    input: ({ revision }) => ({
      schoolClassId: classId("class-4"),
      facility: "REFRIGERATOR",
      seenRevision: revision,
    }),
    other: { facility: "REHEATING" },
  },
  {
    field: "setSchoolDay",
    names: "schoolId",
    input: (school) => ({ ...ofSchool(school), ...tripDay, kind: "TRIP", title: "To the woods" }),
    other: { title: "To the river" },
  },
  {
    field: "removeSchoolDay",
    names: "schoolId",
    input: (school) => ({ ...ofSchool(school), ...tripDay }),
    other: { date: "2027-03-03" },
  },
  {
    field: "setTerm",
    names: "schoolId",
    input: (school) => ({ ...ofSchool(school), ...extraTerm }),
    other: { name: "Another" },
  },
  {
    field: "removeTerm",
    names: "schoolId",
    input: (school) => ({ ...ofSchool(school), firstDay: extraTerm.firstDay }),
    other: { firstDay: "2027-08-03" },
  },
  {
    field: "addSchoolClass",
    names: "schoolId",
    input: (school) => ({ ...ofSchool(school), name: "Class 5", facility: "NEITHER", breaks: [oneBreak] }),
    other: { name: "Class 6" },
  },
  {
    field: "changeSchoolClass",
    names: "schoolClassId",
    input: ({ revision }) => ({
      schoolClassId: classId("reception"),
      breaks: [{ ...oneBreak, minutes: 30 }],
      seenRevision: revision,
    }),
    other: { name: "Reception class" },
  },
  {
    field: "loadCalendar",
    names: "schoolId",
    input: (school) => ({
      ...ofSchool(school),
      calendar: calendar(event("UID:woods", "CATEGORIES:TRIP", "SUMMARY:Woods", "DTSTART;VALUE=DATE:20270309")),
    }),
    other: { calendar: "" },
  },
  {
    field: "loadRuleSet",
    names: "schoolId",
    input: ({ ruleSets }) => {
      const version = ruleSets.find((set) => set.key === "sent-again")?.version ?? 0;
      return { schoolId: schoolId("primary"), seenRevision: version, document: sentAgain(version + 1) };
    },
    other: { seenRevision: 999 },
  },
  {
    field: "countRuleSetImpact",
    names: "schoolId",
    input: ({ ruleSets }) => {
      const version = ruleSets.find((set) => set.key === "sent-again")?.version ?? 0;
      return { schoolId: schoolId("primary"), document: sentAgain(version + 1, "fig") };
    },
    other: { document: sentAgain(9) },
  },
  {
    field: "countRuleSetCompliance",
    names: "ruleSetId",
    input: ({ ruleSets }) => ({ ruleSetId: ownSet(ruleSets).id, from: "2027-01-11", until: "2027-01-15" }),
    other: { until: "2027-01-16" },
  },
  {
    field: "adoptRuleSet",
    names: "schoolId",
    input: ({ elsewhere }) => ({ schoolId: schoolId("primary"), ruleSetId: elsewhere[0]!.id }),
    other: { adopted: false },
  },
  {
    field: "withdrawRuleSet",
    names: "ruleSetId",
    input: ({ ruleSets }) => {
      const { id, version } = ownSet(ruleSets);
      return { ruleSetId: id, seenRevision: version, from: "2027-07-01" };
    },
    other: { from: "2027-07-02" },
  },
];
/** Their answers have nothing to be out of date. */
export const withoutRevision = [
  "countRuleSetImpact",
  "countRuleSetCompliance",
  "adoptRuleSet",
  "appoint",
  "dismiss",
  "registerSchool",
];

/** Of a jurisdiction's administrator, none with a revision; in this order, for an appointment is made before it is ended. */
export const jurisdictionMutations: readonly {
  readonly field: string;
  /** @param subject of somebody who has signed in */
  input(subject: string, jurisdiction: string): Record<string, unknown>;
  readonly other: Record<string, unknown>;
}[] = [
  { field: "appoint", input: (subject, jurisdiction) => ({ subject, jurisdiction }), other: { subject: "demo:tom" } },
  { field: "dismiss", input: (subject, jurisdiction) => ({ subject, jurisdiction }), other: { subject: "demo:tom" } },
  {
    field: "registerSchool",
    input: (subject, jurisdiction) => ({ name: `School of ${subject}`, timeZone: "Australia/Sydney", jurisdiction }),
    other: { timeZone: "Australia/Perth" },
  },
];

const PASSED = "... on RevisionPassed { seenRevision currentRevision }";
/** Their answers have nothing to be out of date either. */
const withoutWeek = [
  "inviteCarer",
  "inviteHome",
  "withdrawInvitation",
  "changeRole",
  "removeCarer",
  "handOverCoordination",
  "renewFeedAddress",
  "closeFeed",
  "eraseChild",
  "withdrawErasure",
  "eraseHousehold",
];
const asking = (field: string, refusals: string): string => {
  const input = `${field[0]!.toUpperCase()}${field.slice(1)}Input`;
  return `mutation Ask($input: ${input}!) { ${field}(input: $input) { __typename ... on UserError { message }
    ... on InvalidInput { issues { field problem fix } } ... on KeyReused { usedFor } ${refusals} } }`;
};
/** Asks a mutation for its kind and for the facts that every mutation of a household may be refused with. */
export const documentOf = (field: string): string =>
  asking(field, `${withoutWeek.includes(field) ? "" : PASSED} ... on NotPermitted { neededRole }`);
/** The same for a mutation of a school, where an appointment takes the place of a role. */
export const schoolDocumentOf = (field: string): string => asking(field, withoutRevision.includes(field) ? "" : PASSED);

/** The whole input of a school's mutation as it is now. */
export async function schoolInputNow(mutation: SchoolMutation, served: ServedApp): Promise<Record<string, unknown>> {
  const query = `query School($id: ID!) { school(id: $id) { revision ruleSets { id key version } }
    jurisdictionRuleSets(jurisdiction: "India") { id } }`;
  const { school, jurisdictionRuleSets } = await served.ask<{
    school: Omit<SchoolSeen, "elsewhere">;
    jurisdictionRuleSets: SchoolSeen["elsewhere"];
  }>(administrator, query, { id: schoolId("primary") });
  return mutation.input({ ...school, elsewhere: jurisdictionRuleSets });
}

/** The whole input of a mutation as it is now. */
export async function inputNow(mutation: Mutation, home: Household): Promise<Record<string, unknown>> {
  const week = await home.week(DAY);
  const about = kitchenMutations.includes(mutation)
    ? { householdId: home.id, seenRevision: await home.revision() }
    : {};
  return { ...about, ...(await mutation.input(home, week!)) };
}
