import { readFileSync } from "node:fs";
import {
  getDirectiveValues,
  getIntrospectionQuery,
  getNamedType,
  getNullableType,
  getOperationAST,
  isInterfaceType,
  isListType,
  isObjectType,
  parse,
  specifiedRules,
  validate,
  type GraphQLField,
} from "graphql";
import { buildSchema } from "../../src/graphql/schema.js";
import { createCostLimit, DOCUMENT_TOKENS, limitRules } from "../../src/http/limits.js";
import { createCostCount } from "../../src/http/operation-cost.js";
import { readPersistedDocuments } from "../../src/http/persisted-documents.js";
import { anyVariables } from "../support/any-input.js";
import * as documents from "./documents.js";

// The directives and what they mean: GraphQL Cost Directives Specification (IBM, draft of 2021), "@cost", "@listSize".
// What is asked for: OWASP API Security Top 10 2023, API4 "Unrestricted Resource Consumption"; the questions that try it are
// the usual ones against GraphQL servers (OWASP GraphQL Cheat Sheet, "DoS Prevention").
const schema = buildSchema();
const count = createCostCount(schema);
const limit = createCostLimit(schema);

const ask = (text: string, variables: Record<string, unknown> = {}, operationName?: string) => {
  const document = parse(text, { maxTokens: DOCUMENT_TOKENS });
  return { document, operation: getOperationAST(document, operationName)!, variables };
};
const costOf = (text: string, variables?: Record<string, unknown>) => {
  const cost = count(ask(text, variables));
  if (typeof cost === "string") throw new Error(cost);
  return cost.fields;
};
/** The first complaint about an operation, or null when it may run. */
const complaint = (text: string, variables?: Record<string, unknown>): string | null => {
  try {
    const asked = ask(text, variables);
    const [error] = validate(schema, asked.document, [...specifiedRules, ...limitRules()]);
    if (error) return error.message;
    limit(asked);
    return null;
  } catch (error) {
    return (error as Error).message;
  }
};

type Sized = { assumedSize?: number | null; slicingArguments?: readonly string[]; sizedFields?: readonly string[] };
const fields = Object.values(schema.getTypeMap()).flatMap((type) =>
  (isObjectType(type) || isInterfaceType(type)) && !type.name.startsWith("__")
    ? Object.values(type.getFields()).map((field) => ({ name: `${type.name}.${field.name}`, owner: type.name, field }))
    : [],
);
const sizeOf = (field: GraphQLField<unknown, unknown>): Sized | undefined =>
  getDirectiveValues(schema.getDirective("listSize")!, field.astNode!);

describe("the schema", () => {
  it("states a size for every list, and a sized field that is there for every page", () => {
    const cut = new Set(
      fields.flatMap(({ field }) =>
        (sizeOf(field)?.sizedFields ?? []).map((name) => `${getNamedType(field.type).name}.${name}`),
      ),
    );
    const lists = fields.filter(({ field }) => isListType(getNullableType(field.type)));
    expect(lists.length).toBeGreaterThan(150);
    expect(lists.filter(({ name, field }) => !cut.has(name) && !sizeOf(field)).map(({ name }) => name)).toEqual([]);
    expect([...cut].filter((name) => !lists.some((list) => list.name === name))).toEqual([]);
  });

  it("takes sizes from arguments that exist, and lets the size be asked for wherever there is one", () => {
    for (const { name, field } of fields) {
      const size = sizeOf(field);
      const slicing = field.args
        .map((argument) => argument.name)
        .filter((argument) => /^(first|last|limit)$/.test(argument));
      expect([name, size?.slicingArguments ?? []]).toEqual([name, slicing]);
      // Without either the size would be a guess of ours.
      if (size && slicing.length === 0) expect([name, size.assumedSize]).toEqual([name, expect.any(Number)]);
    }
  });
});

describe("the cost of an operation", () => {
  it("is one for each field, and a list's entries times what is asked of each", () => {
    expect(costOf("{ me { person { displayName } } }")).toBe(3);
    // me, households, and id and name of each of three.
    expect(costOf("{ me { households { id name } } }")).toBe(2 + 3 * 2);
    expect(costOf("{ me { a: households { id } b: households { id } } }")).toBe(1 + 2 * (1 + 3));
    expect(costOf("{ me { households { id } households @skip(if: true) { name } } }")).toBe(2 + 3);
  });

  it("goes by the size that is asked for, as a literal, a variable, the variable's default or the argument's", () => {
    const query = "query Q($n: Int! = 7) { dishes(first: $n) { nodes { name } } }";
    const page = (n: number) => 1 + n * (1 + 1);
    expect(costOf("{ dishes(first: 100) { nodes { name } } }")).toBe(page(100));
    expect(costOf(query, { n: 50 })).toBe(page(50));
    expect(costOf(query)).toBe(page(7));
    expect(costOf("{ dishes { nodes { name } } }")).toBe(page(20));
    expect(costOf("{ dishes(first: -5) { nodes { name } } }")).toBe(page(0));
  });

  it("of one document is counted anew where a size or a condition may differ, and is else the same", () => {
    const paged = ask("query Q($n: Int!) { dishes(first: $n) { nodes { name } } }");
    const shown = ask("query Q($all: Boolean!) { me { households @include(if: $all) { id } person { id } } }");
    const named = ask("query Q($id: ID!) { household(id: $id) { id } }");
    const fieldsOf = (asked: typeof paged, variables: Record<string, unknown>) => count({ ...asked, variables });
    expect([fieldsOf(paged, { n: 1 }), fieldsOf(paged, { n: 9 })]).toMatchObject([{ fields: 3 }, { fields: 19 }]);
    expect([fieldsOf(shown, { all: false }), fieldsOf(shown, { all: true })]).toMatchObject([
      { fields: 3 },
      { fields: 7 },
    ]);
    expect(fieldsOf(named, { id: "a" })).toBe(fieldsOf(named, { id: "b" }));
  });

  it("is the dearest member of a union, with fragments counted where they are spread", () => {
    const clash = "... on SwapRefused { conflicts { kind } }";
    const both = `mutation M($i: SwapItemInput!) { swapItem(input: $i) { ... on DishUnknown { nearest } ${clash} } }`;
    const one = `mutation M($i: SwapItemInput!) { swapItem(input: $i) { ${clash} } }`;
    const input = { i: { idempotencyKey: "12345678", itemId: "x", dish: "y", seenRevision: 1 } };
    expect(costOf(both, input)).toBe(costOf(one, input));
    expect(costOf("{ me { ...P ...P } } fragment P on Me { person { id } }")).toBe(1 + 2 * 2);
  });

  it("leaves variables that do not fit to whoever executes it", () => {
    expect(count(ask("query Q($n: Int!) { dishes(first: $n) { nodes { name } } }", { n: "many" }))).toBe("MISFIT");
  });
});

describe("what people ask", () => {
  const known = Object.entries<string>(documents).filter(([, text]) => /^(query|mutation|subscription)\b/.test(text));
  const first = JSON.parse(readFileSync("shared/examples/first-query.json", "utf8")) as { query: string };

  it.each(known)("%s of the tests may run", (_, text) => {
    const asked = ask(text);
    expect(validate(schema, asked.document, [...specifiedRules, ...limitRules()])).toEqual([]);
    const variables = anyVariables(schema, asked.operation);
    expect(count({ ...asked, variables })).toEqual({ fields: expect.any(Number), searches: expect.any(Boolean) });
    asked.variables = variables;
    expect(() => limit(asked)).not.toThrow();
  });

  it("the README's query and the explorer's may run", () => {
    expect(complaint(first.query, { day: "2027-01-11" })).toBeNull();
    const explorer = /const EXPLORER_QUERY = `([^`]+)`/.exec(readFileSync("src/main.ts", "utf8"))![1]!;
    expect(complaint(explorer)).toBeNull();
    expect(complaint(getIntrospectionQuery())).toBeNull();
  });

  it("the documents that ship with the clients may run", () => {
    const texts = [...readPersistedDocuments().values()];
    expect(texts.length).toBeGreaterThan(50);
    for (const text of texts)
      expect([text, complaint(text, anyVariables(schema, ask(text).operation))]).toEqual([text, null]);
  });
});

describe("what nobody needs is refused", () => {
  const repeat = (times: number, each: (n: number) => string) =>
    Array.from({ length: times }, (_, n) => each(n)).join(" ");

  it.each([
    [
      "weeks times boxes times items times prices of alternatives",
      '{ me { households { week(date: "2027-01-11") { plan { boxes { items { pricedAlternatives(first: 5) { dish { ingredients { food { key } } } } } } } } } } }',
      "This operation costs",
    ],
    [
      "children times boxes times items times nutrients of every ingredient",
      '{ me { households { children { boxes(from: "2027-01-01", to: "2027-12-31") { items { dish { ingredients { food { nutrients { tag } } } } } } } } } }',
      "This operation costs",
    ],
    ["a page of a billion", "{ dishes(first: 1000000000) { nodes { name } } }", "This operation costs"],
    [
      "10,000 aliases",
      `{ ${repeat(10_000, (n) => `a${n}: me { person { id } }`)} }`,
      "Syntax Error: Document contains more that 2000 tokens",
    ],
    ["100 aliases", `{ ${repeat(100, (n) => `a${n}: me { person { id } }`)} }`, "Aliases limit of 30 exceeded"],
    [
      "100 directives",
      `{ me { ${repeat(100, () => "person @include(if: true) { id }")} } }`,
      "Directives limit of 20 exceeded",
    ],
    [
      "a fragment that spreads itself",
      "{ me { ...A } } fragment A on Me { ...A }",
      'Cannot spread fragment "A" within itself',
    ],
    [
      "fragments that spread one another in a ring",
      "{ me { ...A } } fragment A on Me { ...B } fragment B on Me { ...C } fragment C on Me { person { id } ...A }",
      'Cannot spread fragment "A" within itself',
    ],
    [
      "fragments that double level by level",
      `{ me { ...F0 } } ${repeat(40, (n) => `fragment F${n} on Me { ...F${n + 1} ...F${n + 1} }`)} fragment F40 on Me { person { id } }`,
      "unfold into too many fields",
    ],
    [
      "introspection that goes in circles",
      "{ __schema { types { fields { type { fields { type { fields { type { fields { name } } } } } } } } } }",
      "Maximum introspection depth exceeded",
    ],
    [
      "more levels than any answer has",
      "{ node(id: 1) { ... on Box { items { ... on BoxItem { dish { bases { base { ingredients { food { seasons { months { a { b { c { d { e } } } } } } } } } } } } } } } }",
      "depth limit of 12 exceeded",
    ],
  ])("%s", (_, text, says) => {
    const began = complaint(text);
    expect(began).not.toBeNull();
    // Another rule may complain first where the question is also wrong; the one that is meant must be among them.
    const document = (() => {
      try {
        return parse(text, { maxTokens: DOCUMENT_TOKENS });
      } catch {
        return null;
      }
    })();
    const all =
      document === null
        ? []
        : validate(schema, document, [...specifiedRules, ...limitRules()]).map((error) => error.message);
    expect([began, ...all].join("\n")).toContain(says);
  });

  it("lists of more than 1000 entries and inputs nested 21 deep, wherever in the variables they are", () => {
    const query = "query Q($x: ID!) { node(id: $x) { id } }";
    const deep = (levels: number): unknown => (levels === 0 ? 1 : { in: deep(levels - 1) });
    expect(() => limit(ask(query, { x: "a", y: { list: Array(1_000).fill(1) } }))).not.toThrow();
    expect(() => limit(ask(query, { x: "a", y: { list: Array(1_001).fill(1) } }))).toThrow(
      "variables.y.list has 1001 entries. Send at most 1000 at a time.",
    );
    expect(() => limit(ask(query, { x: "a", y: deep(18) }))).not.toThrow();
    expect(() => limit(ask(query, { x: "a", y: deep(100_000 / 100) }))).toThrow("more than 20 levels deep");
  });
});
