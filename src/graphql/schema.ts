import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { makeExecutableSchema } from "@graphql-tools/schema";
import type { GraphQLSchema } from "graphql";
import { resolvers } from "./resolvers.js";

/** The SDL of schema/ joined with its resolvers. */
export function buildSchema(directory = fileURLToPath(new URL("../../schema", import.meta.url))): GraphQLSchema {
  const typeDefs = readdirSync(directory)
    .filter((name) => name.endsWith(".graphql"))
    .sort()
    .map((name) => readFileSync(join(directory, name), "utf8"));
  return makeExecutableSchema({ typeDefs, resolvers });
}
