import graphql from "@graphql-eslint/eslint-plugin";
import tseslint from "typescript-eslint";

const noEnvironment = {
  selector: "MemberExpression[object.name='process'][property.name='env']",
  message: "The environment is read once, in src/config.ts; take the value you need as an argument.",
};
const noClock = {
  selector: "NewExpression[callee.name='Date'][arguments.length=0], CallExpression[callee.name='Date']",
  message: "Domain code has no clock: take the moment as an argument.",
};
const noMachineMaths = {
  // These may round differently from one machine to the next; the same seed has to give the same plan on each.
  selector:
    "CallExpression[callee.object.name='Math'][callee.property.name=/^(exp|expm1|log|log2|log10|log1p|pow|sin|cos|tan|sinh|cosh|tanh|asin|acos|atan|atan2|asinh|acosh|atanh|cbrt|hypot)$/]",
  message: "Not exact to the last bit on every machine: the planner uses integers and tables.",
};

export default tseslint.config(
  {
    ignores: [
      "**/node_modules/",
      "dist/",
      "coverage/",
      ".noonpail/",
      "src/database/generated/",
      "src/graphql/generated.ts",
      "shared/generated/",
      "tests/bench/peers/",
    ],
  },

  {
    files: ["**/*.ts"],
    extends: [tseslint.configs.recommendedTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    linterOptions: { reportUnusedDisableDirectives: "error" },
    rules: {
      eqeqeq: ["error", "always", { null: "ignore" }],
      "no-console": "error",
      "no-restricted-syntax": ["error", noEnvironment],
      "@typescript-eslint/consistent-type-imports": "error",
      "@typescript-eslint/switch-exhaustiveness-check": "error",
      // Taking a field off with `{ secret: _secret, ...rest }` is the plain way to leave it out.
      "@typescript-eslint/no-unused-vars": ["error", { ignoreRestSiblings: true }],
      // Codes that come over the wire are plain strings and numbers; comparing them with an enum is what they are for.
      "@typescript-eslint/no-unsafe-enum-comparison": "off",
      // Rooms are plain objects of closures; none of their functions has a `this` to lose.
      "@typescript-eslint/unbound-method": "off",
      // A function with nothing to wait for keeps its async signature where a contract asks for a promise.
      "@typescript-eslint/require-await": "off",
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
    },
  },
  {
    files: ["src/domain/**/*.ts"],
    rules: {
      "no-restricted-syntax": ["error", noEnvironment, noClock],
      "no-restricted-properties": [
        "error",
        { object: "Date", property: "now", message: "Domain code has no clock: take the moment as an argument." },
        {
          object: "performance",
          property: "now",
          message: "Domain code has no clock: take the moment as an argument.",
        },
        {
          object: "Math",
          property: "random",
          message: "Domain code has no dice: take the random source as an argument.",
        },
      ],
    },
  },
  {
    files: ["src/domain/planner/**/*.ts"],
    rules: { "no-restricted-syntax": ["error", noEnvironment, noClock, noMachineMaths] },
  },
  { files: ["src/config.ts"], rules: { "no-restricted-syntax": "off" } },
  { files: ["src/cli/**/*.ts", "shared/examples/*.ts"], rules: { "no-console": "off" } },
  { files: ["tests/**/*.ts"], rules: { "no-console": "off", "no-restricted-syntax": "off" } },
  {
    // An answer has the shape of the query beside it; a type for each would say the query twice.
    files: ["tests/graphql/**/*.ts", "tests/walks/**/*.ts", "tests/jobs/**/*.ts"],
    rules: Object.fromEntries(
      [
        "explicit-any",
        "unsafe-assignment",
        "unsafe-member-access",
        "unsafe-call",
        "unsafe-return",
        "unsafe-argument",
      ].map((rule) => [`@typescript-eslint/no-${rule}`, "off"]),
    ),
  },

  {
    files: ["schema/*.graphql"],
    languageOptions: { parser: graphql.parser, parserOptions: { graphQLConfig: { schema: "schema/*.graphql" } } },
    plugins: { "@graphql-eslint": graphql },
    rules: {
      "@graphql-eslint/known-type-names": "error",
      "@graphql-eslint/known-directives": "error",
      "@graphql-eslint/unique-type-names": "error",
      "@graphql-eslint/unique-field-definition-names": "error",
      "@graphql-eslint/unique-enum-value-names": "error",
      "@graphql-eslint/possible-type-extension": "error",
      "@graphql-eslint/provided-required-arguments": "error",
      "@graphql-eslint/value-literals-of-correct-type": "error",
      "@graphql-eslint/no-unreachable-types": "error",
      "@graphql-eslint/no-hashtag-description": "error",
      "@graphql-eslint/no-scalar-result-type-on-mutation": "error",
      "@graphql-eslint/require-deprecation-reason": "error",
      "@graphql-eslint/require-nullable-fields-with-oneof": "error",
      "@graphql-eslint/description-style": ["error", { style: "inline" }],
      "@graphql-eslint/require-description": ["error", { rootField: true }],
      "@graphql-eslint/input-name": ["error", { checkInputType: true, caseSensitiveInputType: false }],
      "@graphql-eslint/naming-convention": [
        "error",
        {
          types: "PascalCase",
          FieldDefinition: "camelCase",
          InputValueDefinition: "camelCase",
          Argument: "camelCase",
          DirectiveDefinition: "camelCase",
          EnumValueDefinition: "UPPER_CASE",
          // Verbs first for what people do; questions are named by what they answer.
          "FieldDefinition[parent.name.value=Query]": { forbiddenPrefixes: ["get", "list", "find", "query"] },
          InputObjectTypeDefinition: { requiredSuffixes: ["Input"] },
          UnionTypeDefinition: { requiredSuffixes: ["Result"] },
        },
      ],
    },
  },
);
