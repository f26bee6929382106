import {
  getNullableType,
  isInputObjectType,
  isListType,
  isRequiredInputField,
  type GraphQLArgument,
  type GraphQLInputType,
} from "graphql";
import { globalId } from "../../src/graphql/global-id.js";
import { buildSchema } from "../../src/graphql/schema.js";
import { readDemoFiles } from "../../src/database/seed.js";
import { anyValue } from "../support/any-input.js";
import { newKey, useApp } from "../support/app.js";
import { schoolId } from "../support/served-app.js";

// OWASP API Security Top 10 2023, API4 "Unrestricted Resource Consumption": "maximum number of elements in arrays". The transport
// takes 1000 entries at most (tests/graphql/operation-limits.test.ts); here each action is asked past it, in process.
const ENTRIES = 10_001;
const app = useApp();
const schema = buildSchema();

/** Where lists lie inside an input, as paths of field names; `*` is an entry of a list. */
function listsIn(type: GraphQLInputType, path: readonly string[] = []): (readonly string[])[] {
  const bare = getNullableType(type);
  if (isListType(bare)) return [path, ...listsIn(bare.ofType, [...path, "*"])];
  if (!isInputObjectType(bare)) return [];
  return Object.values(bare.getFields()).flatMap((field) => listsIn(field.type, [...path, field.name]));
}

/** An acceptable value but for the list at the path. */
function withLongList(
  type: GraphQLInputType,
  path: readonly string[],
  given: Readonly<Record<string, unknown>>,
): unknown {
  const bare = getNullableType(type);
  if (isListType(bare)) {
    const item = bare.ofType;
    if (path.length === 0) return Array.from({ length: ENTRIES }, () => anyValue(item, given));
    return [withLongList(item, path.slice(1), given)];
  }
  if (!isInputObjectType(bare)) throw new Error("the path leads nowhere");
  const [next, ...rest] = path;
  return Object.fromEntries(
    Object.values(bare.getFields())
      .filter((field) => field.name === next || isRequiredInputField(field) || field.name in given)
      .map(({ name, type: of }) => [
        name,
        name === next ? withLongList(of, rest, given) : name in given ? given[name] : anyValue(of, given),
      ]),
  );
}

type Place = {
  readonly kind: "query" | "mutation";
  readonly field: string;
  readonly argument: GraphQLArgument;
  readonly path: readonly string[];
};
const roots = [
  ["query", schema.getQueryType()!],
  ["mutation", schema.getMutationType()!],
] as const;
const places: Place[] = roots.flatMap(([kind, root]) =>
  Object.values(root.getFields()).flatMap((field) =>
    field.args.flatMap((argument) =>
      listsIn(argument.type).map((path) => ({ kind, field: field.name, argument, path })),
    ),
  ),
);
const named = places.map(
  (place) => [`${place.field}(${[place.argument.name, ...place.path].join(".")})`, place] as const,
);

it("there are lists to try, at the root of operations only", () => {
  expect(places.length).toBeGreaterThan(25);
  const deeper = Object.values(schema.getTypeMap()).flatMap((type) =>
    "getFields" in type &&
    !isInputObjectType(type) &&
    !type.name.startsWith("__") &&
    !["Query", "Mutation"].includes(type.name)
      ? Object.values(type.getFields()).flatMap((field) =>
          (field as { args: readonly GraphQLArgument[] }).args
            .filter(({ type: of }) => listsIn(of).length > 0)
            .map(({ name }) => `${type.name}.${field.name}(${name})`),
        )
      : [],
  );
  expect(deeper).toEqual([]);
});

it.each(named)("%s of 10,001 entries is refused by name, in few words", async (_, { kind, field, argument, path }) => {
  const { me } = (await app.run("demo:ana", "{ me { households { id children { id name } } } }")).data as {
    me: { households: { id: string; children: { id: string }[] }[] };
  };
  const household = me.households[0]!;
  const administrator = readDemoFiles().people.find(({ subject }) => /ruth/.test(subject))!.subject;
  const given = {
    idempotencyKey: newKey(),
    householdId: household.id,
    childId: household.children[0]!.id,
    schoolId: schoolId("primary"),
    schoolClassId: globalId("SchoolClass", readDemoFiles().schools[0]!.classes[0]!.id),
    seenRevision: 1,
    name: "Sample",
    handsOnMinutes: 1,
    elapsedMinutes: 10,
    weekday: "MONDAY",
  };
  const variables = Object.fromEntries(
    (kind === "query" ? schema.getQueryType()! : schema.getMutationType()!)
      .getFields()
      [field]!.args.map(({ name, type }) => [
        name,
        name === argument.name
          ? withLongList(type, path, given)
          : name in given
            ? given[name as keyof typeof given]
            : anyValue(type, given),
      ]),
  );
  const args = (kind === "query" ? schema.getQueryType()! : schema.getMutationType()!).getFields()[field]!.args;
  const document = `${kind} Q(${args.map(({ name, type }) => `$${name}: ${String(type)}`).join(", ")}) { ${field}(${args
    .map(({ name }) => `${name}: $${name}`)
    .join(", ")}) { __typename ... on UserError { message } ... on InvalidInput { issues { field problem fix } } } }`;
  const person = /school/i.test(field) && !/Provision/.test(field) ? administrator : "demo:ana";
  const { data, errors } = await app.run(person, document, variables);
  expect(errors).toEqual([]);
  const answer = (data as Record<string, { __typename: string; issues?: { field: string }[] }>)[field]!;
  // The complaint is about the list itself, not about what the samples in it are.
  const at = [
    ...(argument.name === "input" ? [] : [argument.name]),
    ...path.map((step) => (step === "*" ? "0" : step)),
  ].join(".");
  expect([answer.__typename, answer.issues?.map((issue) => issue.field)]).toEqual([
    "InvalidInput",
    expect.arrayContaining([at]),
  ]);
  expect(JSON.stringify(answer).length).toBeLessThan(40_000);
});
