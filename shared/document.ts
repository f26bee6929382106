import type { z } from "zod";

/**
 * One operation with all it needs: its text, its name for a server that has it on record, and a schema for its variables.
 * Made from operations/ by `npm run codegen`.
 * @typeParam Result `data` of an answer without errors
 * @typeParam Variables what the operation is sent with
 */
export interface Document<Result, Variables> {
  readonly name: string;
  readonly kind: "query" | "mutation" | "subscription";
  /** SHA-256 of the text, as GraphQL over HTTP writes a document's identifier (working draft, appendix Persisted Documents). */
  readonly id: string;
  readonly text: string;
  /** Strict: refuses what the server would refuse, and ranges besides. */
  readonly variables: () => z.ZodType;
  /** Never there: it ties the two types to the document. */
  readonly types?: (variables: Variables) => Result;
}
/** Any of them. */
export type SomeDocument = Document<unknown, never>;
