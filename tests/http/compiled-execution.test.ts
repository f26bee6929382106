import { makeExecutableSchema } from "@graphql-tools/schema";
import fc from "fast-check";
import { execute, GraphQLError, parse, validate, type GraphQLSchema } from "graphql";
import { createCompiledExecutor } from "../../src/http/compiled-execution.js";
import { DateTime } from "../../src/graphql/scalars.js";

const typeDefs = /* GraphQL */ `
  scalar DateTime
  enum Size {
    SMALL
    LARGE
  }
  interface Node {
    id: ID!
  }
  type Box implements Node {
    id: ID!
    label: String
    size: Size!
    packedAt: DateTime
    grams(times: Int! = 1, plus: Float): Float!
    count: Int
    sealed: Boolean
    tags: [String!]
    inner: Box
    later: Box!
    rows: [Box]!
    mixed: [Box!]
    broken: String
    brokenForSure: String!
    missing: Box!
    wrongCount: Int
    wrongList: [Int]
    set: [String!]!
    method(word: String): String
    asked: String
    node: Node
  }
  type Query {
    box(id: ID = "first"): Box
    boxes: [Box!]!
    node: Node
    nothing: Box
    whoami: String!
    refused: String
  }
  type Mutation {
    box: Box!
  }
`;

type Row = { readonly id: string; readonly depth: number };
const calls = { count: 0 };

function buildSchema(): GraphQLSchema {
  const row = (id: string, depth = 0): Row & Record<string, unknown> => ({
    id,
    depth,
    label: depth % 2 === 0 ? `label of ${id}` : null,
    count: depth,
    sealed: depth === 1,
    packedAt: new Date(Date.UTC(2027, 0, 11, 7, depth)),
    tags: depth === 2 ? null : ["a", "b"],
    wrongCount: "many",
    wrongList: "many",
    set: new Set(["x", "y"]),
    method: ({ word }: { word?: string }) => `said ${word ?? "nothing"}`,
  });
  return makeExecutableSchema({
    typeDefs,
    resolvers: {
      DateTime,
      Size: { SMALL: 1, LARGE: 2 },
      Node: { __resolveType: () => "Box" },
      Query: {
        box: (_: unknown, { id }: { id: string }) => {
          calls.count += 1;
          return row(id);
        },
        boxes: async () => Promise.resolve([row("one"), row("two", 1)]),
        node: () => row("node"),
        whoami: (_: unknown, __: unknown, { person }: { person: string }) => person,
        refused: () => {
          throw new GraphQLError("No.", { extensions: { code: "BAD_USER_INPUT" } });
        },
      },
      Mutation: {
        box: () => {
          calls.count += 1;
          return null;
        },
      },
      Box: {
        size: ({ depth }: Row) => (depth % 2) + 1,
        grams: ({ depth }: Row, { times, plus }: { times: number; plus?: number | null }) =>
          depth * times + (plus ?? 0),
        inner: ({ id, depth }: Row) => (depth > 3 ? null : row(`${id}.in`, depth + 1)),
        later: async ({ id, depth }: Row) => Promise.resolve(row(`${id}.later`, depth + 1)),
        rows: ({ id, depth }: Row) => [row(`${id}.0`, depth + 1), null, row(`${id}.1`, depth + 2)],
        mixed: ({ id, depth }: Row) => [row(`${id}.now`, depth + 1), Promise.resolve(row(`${id}.soon`, depth + 1))],
        broken: () => Promise.reject(new Error("a bug")),
        brokenForSure: () => null,
        missing: () => null,
        asked: (_: Row, __: unknown, ___: unknown, info: { fieldName: string }) => info.fieldName,
        node: ({ id }: Row) => row(`${id}.node`),
      },
    },
  });
}

const schema = buildSchema();
const run = createCompiledExecutor(schema);
const contextValue = { person: "Ann" };

type Given = { variables?: Record<string, unknown>; operationName?: string };

async function answers(query: string, { variables = {}, operationName }: Given = {}) {
  const document = parse(query);
  const given = { document, operationName: operationName ?? null, variableValues: variables, contextValue };
  const theirs = await execute({ schema, ...given });
  // Twice: the second time the plan is there already.
  const ours = [await run(given), await run(given)];
  return { theirs: JSON.stringify(theirs), ours: ours.map((answer) => JSON.stringify(answer)) };
}

describe("an answer by a plan is the answer of graphql-js", () => {
  test.each<[string, string, Given?]>([
    ["fields and aliases", "{ box { id again: id label tags packedAt size sealed count __typename } }"],
    [
      "arguments, defaults and variables",
      "query ($n: Int!, $p: Float) { box(id: 7) { a: grams b: grams(times: $n, plus: $p) c: grams(plus: 1.5) } }",
      { variables: { n: 3 } },
    ],
    ["lists with nulls in them", "{ box { rows { id tags } } boxes { id rows { inner { id } } } }"],
    ["promises, alone and in lists", "{ boxes { later { id later { id } } mixed { id } } }"],
    [
      "fragments, merged",
      "{ box { ...A inner { id } ... on Box { inner { label later { id } } } ...A } } fragment A on Box { size inner { count } }",
    ],
    ["the operation that was named", "query One { box { id } } query Two { nothing { id } }", { operationName: "Two" }],
    ["the person in the context", "{ whoami }"],
    ["rows with methods", '{ box { method(word: "hi") } }'],
    ["other iterables than arrays", "{ box { set } }"],
    ["resolvers that ask what they resolve", "{ box { asked } }"],
    [
      "skip and include",
      "query ($no: Boolean!) { box { id @skip(if: $no) label @include(if: $no) } }",
      { variables: { no: true } },
    ],
    ["interfaces", "{ node { id ... on Box { label } } box { node { __typename id } } }"],
    ["introspection", '{ __type(name: "Box") { name } __schema { queryType { name } } }'],
    ["a key that would change an object's prototype", "{ box { __proto__: id } }"],
    ["refusals", "{ refused whoami }"],
    ["bugs in a resolver", "{ box { id broken } }"],
    ["a null that must not be", "{ box { id inner { brokenForSure } } boxes { missing { id } } }"],
    ["values of the wrong kind", "{ box { wrongCount wrongList } }"],
    ["variables of the wrong kind", "query ($n: Int!) { box { grams(times: $n) } }", { variables: { n: "three" } }],
    ["a missing variable", "query ($n: Int!) { box { grams(times: $n) } }"],
    ["mutations", "mutation { box { id } }"],
  ])("%s", async (_, query, given) => {
    const { theirs, ours } = await answers(query, given);
    expect(ours).toEqual([theirs, theirs]);
  });

  test("whatever is asked", async () => {
    const leaf = fc.constantFrom(
      "id",
      "label",
      "size",
      "packedAt",
      "grams(times: 2)",
      "count",
      "sealed",
      "tags",
      "__typename",
      "method",
      "asked",
      "set",
    );
    const wrong = fc.constantFrom(
      "broken",
      "brokenForSure",
      "wrongCount",
      "wrongList",
      "missing { id }",
      "node { id }",
      "id @skip(if: true)",
    );
    const { selection } = fc.letrec<{ selection: string; field: string }>((tie) => ({
      selection: fc.array(tie("field"), { minLength: 1, maxLength: 4 }).map((fields) => `{ ${fields.join(" ")} }`),
      field: fc.oneof(
        { depthSize: "small", withCrossShrink: true },
        { weight: 6, arbitrary: leaf },
        { weight: 1, arbitrary: wrong },
        {
          weight: 5,
          arbitrary: fc
            .tuple(fc.constantFrom("inner", "later", "rows", "mixed"), tie("selection"))
            .map(([name, inner]) => `${name} ${inner}`),
        },
        { weight: 2, arbitrary: tie("selection").map((inner) => `... on Box ${inner}`) },
        { weight: 1, arbitrary: tie("selection").map((inner) => `... ${inner}`) },
      ),
    }));
    await fc.assert(
      fc.asyncProperty(fc.constantFrom("box", "boxes", "nothing"), selection, async (start, inner) => {
        const query = `{ ${start} ${inner} }`;
        fc.pre(validate(schema, parse(query)).length === 0);
        const { theirs, ours } = await answers(query);
        expect(ours).toEqual([theirs, theirs]);
      }),
      { numRuns: 300 },
    );
  });
});

test("the plain case asks every resolver once, and only what went wrong is asked again", async () => {
  const ask = async (query: string) => {
    calls.count = 0;
    await run({ document: parse(query), contextValue, variableValues: {} });
    return calls.count;
  };
  expect(await ask("{ box { id later { id } mixed { label } } }")).toBe(1);
  expect(await ask("{ box { id broken } }")).toBe(2);
});

test("a mutation is never run twice, whatever goes wrong", async () => {
  calls.count = 0;
  const answer = await run({ document: parse("mutation { box { id } }"), contextValue, variableValues: {} });
  expect(answer.errors).toHaveLength(1);
  expect(calls.count).toBe(1);
});
