import {
  administratorMutations,
  administratorQueries,
  administratorsOfSchool,
  administratorTypes,
  appointmentsOfMe,
} from "./administrator.resolvers.js";
import { changeMutations, changeSubscriptions, changeTypes, logOfHousehold, tickOfLine } from "./change.resolvers.js";
import { carerMutations, carerQueries, carersOfHousehold, carerTypes } from "./carer.resolvers.js";
import { complianceOfBox, complianceOfPlan, complianceQueries, complianceTypes } from "./compliance.resolvers.js";
import { erasureMutations, erasureOfChild } from "./erasure.resolvers.js";
import type { Resolvers } from "./generated.js";
import {
  differencesOfPlan,
  disruptionMutations,
  disruptionQueries,
  disruptionsOfHousehold,
  disruptionTypes,
} from "./disruption.resolvers.js";
import {
  askersOfItem,
  copiesOfSchool,
  familyRuleMutations,
  familyRuleTypes,
  noticesOfHousehold,
  ownRulesOfChild,
  rulesOfPlan,
} from "./family-rules.resolvers.js";
import { feedMutations, feedQueries, feedTypes } from "./feed.resolvers.js";
import { foodResolvers } from "./food.resolvers.js";
import { answeredAfterLeaving } from "./gone-since.js";
import { handoverMutations, handoverQueries, handoverTypes, returnedOfItem } from "./handover.resolvers.js";
import { householdResolvers } from "./household.resolvers.js";
import { foodOnLabels, labelLawQueries } from "./label-law.resolvers.js";
import { nodeResolvers } from "./node.resolvers.js";
import { ownLists, ownMutations, ownTypes } from "./own-catalogue.resolvers.js";
import { personResolvers } from "./person.resolvers.js";
import { DateTime, LocalDate, LocalTime } from "./scalars.js";
import { residenceMutations, residenceOfChild, residenceTypes } from "./residence.resolvers.js";
import { recheckResolvers } from "./recheck.resolvers.js";
import { rotaMutations, rotaOfHousehold, rotaSubscriptions, rotaTypes } from "./rota.resolvers.js";
import { ruleSetMutations, ruleSetQueries, ruleSetTypes } from "./rule-set.resolvers.js";
import { calendarMutations, calendarQueries, calendarTypes } from "./school-calendar.resolvers.js";
import { schoolResolvers } from "./school.resolvers.js";
import { factsOfTask, taskMutations } from "./task.resolvers.js";
import { latestOfTask, timetableOfPlan, timetableTypes } from "./timetable.resolvers.js";
import { weekResolvers } from "./week.resolvers.js";
import { whyOfItems, whyQueries, whyTypes } from "./why.resolvers.js";

const { Query: foodQueries, Food: plainFood, ...food } = foodResolvers;
const {
  Query: householdQueries,
  Mutation: householdMutations,
  Household: plainHousehold,
  Child: plainChild,
  ...household
} = householdResolvers;
const { Query: nodeQueries, ...node } = nodeResolvers;
const { Query: personQueries, Me: plainMe, ...person } = personResolvers;
const {
  Query: recheckQueries,
  Mutation: recheckMutations,
  Subscription: recheckSubscriptions,
  Box: boxOnBlocks,
  ...recheck
} = recheckResolvers;
const { RuleSet: plainRuleSet, ...ruleTypes } = ruleSetTypes;
const { Query: schoolQueries, School: plainSchool, ...school } = schoolResolvers;
const {
  Query: weekQueries,
  Mutation: weekMutations,
  Subscription: weekSubscriptions,
  Box: plainBox,
  BoxItem: plainItem,
  WeekPlan: plainPlan,
  Task: plainTask,
  ShoppingLine: plainLine,
  ...week
} = weekResolvers;

export const resolvers: Resolvers = {
  DateTime,
  LocalDate,
  LocalTime,
  ...food,
  Food: { ...plainFood, ...foodOnLabels },
  ...household,
  Household: {
    ...plainHousehold,
    ...carersOfHousehold,
    ...ownLists,
    ...disruptionsOfHousehold,
    ...noticesOfHousehold,
    ...logOfHousehold,
    ...rotaOfHousehold,
  },
  Child: { ...plainChild, ...ownRulesOfChild, ...residenceOfChild, ...erasureOfChild },
  ...node,
  ...ownTypes,
  ...person,
  ...carerTypes,
  Me: { ...plainMe, ...appointmentsOfMe },
  ...school,
  School: { ...plainSchool, ...administratorsOfSchool },
  ...administratorTypes,
  ...calendarTypes,
  ...ruleTypes,
  RuleSet: { ...plainRuleSet, ...copiesOfSchool },
  ...familyRuleTypes,
  ...feedTypes,
  ...complianceTypes,
  ...week,
  ...recheck,
  ...whyTypes,
  ...timetableTypes,
  ...rotaTypes,
  Task: { ...plainTask, ...latestOfTask, ...factsOfTask },
  ShoppingLine: { ...plainLine, ...tickOfLine },
  ...changeTypes,
  ...disruptionTypes,
  ...residenceTypes,
  ...handoverTypes,
  Box: { ...plainBox, ...boxOnBlocks, ...complianceOfBox },
  BoxItem: { ...plainItem, ...whyOfItems, ...askersOfItem, ...returnedOfItem },
  WeekPlan: { ...plainPlan, ...timetableOfPlan, ...differencesOfPlan, ...rulesOfPlan, ...complianceOfPlan },
  Query: {
    ...administratorQueries,
    ...calendarQueries,
    ...carerQueries,
    ...complianceQueries,
    ...disruptionQueries,
    ...feedQueries,
    ...foodQueries,
    ...handoverQueries,
    ...householdQueries,
    ...labelLawQueries,
    ...nodeQueries,
    ...personQueries,
    ...recheckQueries,
    ...ruleSetQueries,
    ...schoolQueries,
    ...weekQueries,
    ...whyQueries,
  },
  Mutation: answeredAfterLeaving({
    ...administratorMutations,
    ...calendarMutations,
    ...changeMutations,
    ...carerMutations,
    ...disruptionMutations,
    ...erasureMutations,
    ...familyRuleMutations,
    ...feedMutations,
    ...ownMutations,
    ...handoverMutations,
    ...residenceMutations,
    ...householdMutations,
    ...recheckMutations,
    ...rotaMutations,
    ...ruleSetMutations,
    ...taskMutations,
    ...weekMutations,
  }),
  Subscription: { ...weekSubscriptions, ...recheckSubscriptions, ...changeSubscriptions, ...rotaSubscriptions },
};
