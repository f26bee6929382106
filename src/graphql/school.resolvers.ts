import { newestOf, readSchoolPage } from "../database/school.js";
import { shareOfBreak } from "../domain/nutrition/meal-share.js";
import { requirePerson } from "./context.js";
import { globalId, localId } from "./global-id.js";
import type { Resolvers } from "./generated.js";
import { keyOf, pageOf, pageSize } from "./page.js";

export const schoolResolvers: Pick<Resolvers, "School" | "SchoolClass" | "ClassBreak"> & {
  Query: Pick<NonNullable<Resolvers["Query"]>, "school" | "schools">;
} = {
  Query: {
    async school(_, { id }, context) {
      requirePerson(context);
      const local = localId("School", id);
      return local === null ? null : ((await context.reads.schools([local]))[0] ?? null);
    },
    async schools(_, { first, after }, context) {
      requirePerson(context);
      const size = pageSize(first);
      const rows = await context.reads.session().read((tx) => readSchoolPage(tx, size + 1, keyOf(after)));
      return pageOf(rows, size, (school) => school.name);
    },
  },
  School: {
    id: (school) => globalId("School", school.id),
    async ruleSets(school, _, context) {
      return newestOf(await context.reads.ruleSets(school.id));
    },
  },
  SchoolClass: { id: (schoolClass) => globalId("SchoolClass", schoolClass.id) },
  ClassBreak: {
    energyShare: (pause, _, { app }) => shareOfBreak(pause, app.reference.mealShares).share,
    energyShareSource: (pause, _, { app }) => shareOfBreak(pause, app.reference.mealShares).source,
  },
};
