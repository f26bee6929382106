/** The operations that several tests send. */
export const DAY = "2027-01-11";

export const HOMES = `query Homes($day: LocalDate!) { me { person { displayName } administers { id name classes { id name } ruleSets { key version } }
  households { id name revision myRole children { id name } week(date: $day) { id revision plan { id number state
    boxes { id date state child { id name } packing { leaveAt packedBy { displayName } } items { id breakKey slot place pinned dish { key name }
      grams labelsToRead { key } note { why } } } tasks { id kind state text takenBy { displayName } } } } } } }`;

const WEEK = `__typename ... on UserError { message } ... on InvalidInput { issues { field problem fix } }
  ... on WeekPayload { changedBoxes { id date child { name } } week { id revision plan { number state boxes { id date state child { name }
    items { id breakKey slot dish { key } pinned } } } } }`;
const CLASHES = "{ conflicts { kind text wayOut date session child { name } } }";

export const PLAN = `mutation Plan($input: PlanWeekInput!) { planWeek(input: $input) { ${WEEK}
  ... on RevisionPassed { seenRevision currentRevision } ... on KeyReused { usedFor } ... on WeekAgreed { agreedAt }
  ... on OutsideTerm { weekStart nextSchoolDay } ... on NoSchool { children { name } } ... on NotPermitted { neededRole } ... on WeekInfeasible ${CLASHES} } }`;
export const PIN = `mutation Pin($input: PinItemInput!) { pinItem(input: $input) { ${WEEK} } }`;
export const UNPIN = `mutation Unpin($input: UnpinItemInput!) { unpinItem(input: $input) { ${WEEK} } }`;
export const SWAP = `mutation Swap($input: SwapItemInput!) { swapItem(input: $input) { ${WEEK} ... on DishUnknown { nearest } ... on SwapRefused ${CLASHES} ... on BoxClosed { state } } }`;
export const AGREE = `mutation Agree($input: AgreeWeekInput!) { agreeWeek(input: $input) { ${WEEK} ... on NotPermitted { neededRole } } }`;
export const PACK = `mutation Pack($input: MarkPackedInput!) { markPacked(input: $input) { ${WEEK} ... on LabelsUnread { foods { key } } ... on BoxClosed { state } } }`;
export const ABSENT = `mutation Absent($input: ReportAbsenceInput!) { reportAbsence(input: $input) { ${WEEK} ... on BoxClosed { state } ... on WeekInfeasible ${CLASHES} } }`;
export const TAKE = `mutation Take($input: TakeTaskInput!) { takeTask(input: $input) { __typename ... on UserError { message } ... on TaskHeld { holder { displayName } state } ... on TaskPayload { task { id state takenBy { displayName } } } } }`;
export const FINISH = `mutation Finish($input: FinishTaskInput!) { finishTask(input: $input) { __typename ... on UserError { message } ... on TaskPayload { task { state } } } }`;

const KITCHEN = `__typename ... on UserError { message } ... on InvalidInput { issues { field problem fix } } ... on NotPermitted { neededRole } ... on RevisionPassed { currentRevision }
  ... on KitchenPayload { household { revision kitchen { equipment { kind units } prepTimes { kind weekday handsOnMinutes } stock { food { key } grams } leftovers { base { key } grams cookedOn lastSafeDay } labelChecks { food { key } contains } } } }`;
export const STOCK = `mutation Stock($input: SetStockInput!) { setStock(input: $input) { ${KITCHEN} } }`;
export const LEFTOVERS = `mutation Leftovers($input: SetLeftoversInput!) { setLeftovers(input: $input) { ${KITCHEN} } }`;
export const PREP = `mutation Prep($input: SetPrepTimesInput!) { setPrepTimes(input: $input) { ${KITCHEN} } }`;
export const EQUIP = `mutation Equip($input: SetEquipmentInput!) { setEquipment(input: $input) { ${KITCHEN} } }`;
export const LABEL = `mutation Label($input: RecordLabelInput!) { recordLabel(input: $input) { ${KITCHEN} } }`;
export const RELAX = `mutation Relax($input: RelaxHouseRuleInput!) { relaxHouseRule(input: $input) { ${KITCHEN} } }`;

export const FOUND = `mutation Found($input: CreateHouseholdInput!) { createHousehold(input: $input) { __typename ... on UserError { message } ... on InvalidInput { issues { field fix } } ... on KeyReused { usedFor } ... on CreateHouseholdPayload { household { id revision myRole kitchen { equipment { kind } prepTimes { kind } } } } } }`;
export const CHILD = `mutation Child($input: CreateChildInput!) { createChild(input: $input) { __typename ... on UserError { message } ... on InvalidInput { issues { field problem fix } } ... on CreateChildPayload { child { id name ageYears(on: "2027-01-11") allergies { allergen avoid } dailyNeeds(on: "2027-01-11") { energyKcal energyMethod } } household { revision } } } }`;
export const ENROL = `mutation Enrol($input: EnrolChildInput!) { enrolChild(input: $input) { __typename ... on UserError { message } ... on InvalidInput { issues { field } } ... on EnrolChildPayload { child { enrolments { school { name } schoolClass { name breaks { key } } fromDate } } household { revision } } } }`;
export const LOAD = `mutation Load($input: LoadRuleSetInput!) { loadRuleSet(input: $input) { __typename ... on UserError { message } ... on InvalidInput { issues { field problem fix } } ... on DocumentRefused { issues { path line problem expected nearest } warnings { path line problem nearest } } ... on RevisionPassed { currentRevision } ... on LoadRuleSetPayload { unchanged ruleSet { id key version rules { key says } } } } }`;
