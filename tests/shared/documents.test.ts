/** The shipped operations: all of the API, within its limits, and never taken back. */
import { readdirSync, readFileSync } from "node:fs";
import { Kind, parse, type OperationDefinitionNode } from "graphql";
import type { Document } from "../../shared/document.js";
import * as generated from "../../shared/generated/operations.js";
import { hashOf } from "../../src/cli/codegen/documents.js";
import { documentFaults, takenBack } from "../../src/cli/document-faults.js";
import { buildSchema } from "../../src/graphql/schema.js";
import { DOCUMENT_TOKENS, limitRules } from "../../src/http/limits.js";
import { readPersistedDocuments } from "../../src/http/persisted-documents.js";

const schema = buildSchema();
const limits = { maxTokens: DOCUMENT_TOKENS, rules: limitRules() };
const documents: readonly Document<unknown, never>[] = Object.values(generated);
const operationOf = (text: string) =>
  parse(text).definitions.find((node): node is OperationDefinitionNode => node.kind === Kind.OPERATION_DEFINITION)!;
const rootsOf = (text: string) =>
  operationOf(text).selectionSet.selections.map((field) => (field.kind === Kind.FIELD ? field.name.value : ""));

test("every operation of the folder is a document, named and hashed as the server has it on record", () => {
  const written = readdirSync("shared/operations")
    .filter((file) => file.endsWith(".graphql"))
    .flatMap((file) => parse(readFileSync(`shared/operations/${file}`, "utf8")).definitions)
    .flatMap((node) => (node.kind === Kind.OPERATION_DEFINITION ? [node.name?.value] : []));
  expect(documents.map(({ name }) => name).sort()).toEqual(written.sort());
  const onRecord = readPersistedDocuments();
  for (const { name, kind, id, text } of documents) {
    expect(id).toBe(`sha256:${hashOf(text)}`);
    expect(onRecord.get(hashOf(text))).toBe(text);
    expect([operationOf(text).operation, operationOf(text).name?.value]).toEqual([kind, name]);
  }
});

test("every mutation and subscription can be sent where only documents on record are run", () => {
  const sent = new Set(documents.flatMap(({ text }) => rootsOf(text)));
  const roots = [schema.getMutationType(), schema.getSubscriptionType()].flatMap((type) =>
    Object.keys(type!.getFields()),
  );
  expect(roots.filter((field) => !sent.has(field))).toEqual([]);
});

test("every document is valid within the limits of the server", () => {
  expect(documentFaults(schema, Object.fromEntries(readPersistedDocuments()), limits)).toEqual([]);
});

describe("what went out with a client", () => {
  const record = (text: string) => ({ [hashOf(text)]: text });

  it("is at fault when the schema or the limits no longer take it, or its text was changed", () => {
    const gone = record("query Old{me{shoeSize}}");
    const deep = record(
      `query Deep{me{households{${'week(date:"2027-01-11"){plan{boxes{child{boxes(from:"2027-01-11",to:"2027-01-11"){'.repeat(3)}id${"}}}}}".repeat(3)}}}}`,
    );
    expect(documentFaults(schema, gone)).toEqual([expect.stringContaining('Cannot query field "shoeSize"')]);
    expect(documentFaults(schema, deep, limits).join()).toContain("limit");
    expect(documentFaults(schema, record("query Cut{"))).toEqual([expect.stringContaining("query Cut")]);
    expect(documentFaults(schema, { [hashOf("query A{me{person{id}}}")]: "query B{me{person{id}}}" })).toEqual([
      expect.stringContaining("not the one that was shipped"),
    ]);
  });

  it("stays on record", () => {
    const [old, young] = [record("query A{me{person{id}}}"), record("query B{me{person{id}}}")];
    expect(takenBack(old, { ...old, ...young })).toEqual([]);
    expect(takenBack({ ...old, ...young }, young)).toHaveLength(1);
  });
});
