import type { CodegenConfig } from "@graphql-codegen/cli";

/**
 * What a resolver is handed for a type whose row is not spelled like its SDL. One line per type, written
 * `TypeName: "./room/file.js#Name as NameRow"`, the path as seen from src/graphql; the alias keeps the row's name
 * apart from the SDL type's.
 */
const mappers: Record<string, string> = {};

const config: CodegenConfig = {
  schema: "schema/*.graphql",
  importExtension: ".js",
  emitLegacyCommonJSImports: false,
  generates: {
    "src/graphql/generated.ts": {
      plugins: ["typescript", "typescript-resolvers"],
      config: {
        useTypeImports: true,
        enumsAsTypes: true,
        strictScalars: true,
        defaultScalarType: "unknown",
        scalars: {
          ID: "string",
          // Rows read as JSON carry times as text, rows read by the ORM as Date.
          DateTime: { input: "Date", output: "Date | string" },
          LocalDate: "string",
          LocalTime: "string",
        },
        contextType: "./context.js#GraphqlContext",
        // A union or interface value says which member it is; nobody guesses from its fields.
        resolversNonOptionalTypename: { unionMember: true, interfaceImplementingType: true },
        // Rows and domain values are readonly all the way down; a resolver may hand them over as they are.
        immutableTypes: true,
        mappers,
      },
    },
  },
};

export default config;
