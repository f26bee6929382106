import type { Resolvers } from "./generated.js";
import { foodResolvers } from "./food.resolvers.js";
import { householdResolvers } from "./household.resolvers.js";
import { nodeResolvers } from "./node.resolvers.js";
import { personResolvers } from "./person.resolvers.js";
import { DateTime, LocalDate, LocalTime } from "./scalars.js";
import { schoolResolvers } from "./school.resolvers.js";
import { weekResolvers } from "./week.resolvers.js";

const { Query: foodQueries, ...food } = foodResolvers;
const { Query: householdQueries, Mutation: householdMutations, ...household } = householdResolvers;
const { Query: nodeQueries, ...node } = nodeResolvers;
const { Query: personQueries, ...person } = personResolvers;
const { Query: schoolQueries, Mutation: schoolMutations, ...school } = schoolResolvers;
const { Query: weekQueries, Mutation: weekMutations, ...week } = weekResolvers;

export const resolvers: Resolvers = {
  DateTime,
  LocalDate,
  LocalTime,
  ...food,
  ...household,
  ...node,
  ...person,
  ...school,
  ...week,
  Query: { ...foodQueries, ...householdQueries, ...nodeQueries, ...personQueries, ...schoolQueries, ...weekQueries },
  Mutation: { ...householdMutations, ...schoolMutations, ...weekMutations },
};
