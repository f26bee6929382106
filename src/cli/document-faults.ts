import { parse, specifiedRules, validate, type GraphQLSchema, type ValidationRule } from "graphql";
import { hashOf } from "./codegen/documents.js";

export type Documents = Readonly<Record<string, string>>;

/**
 * Why an app that sends one of these would be refused: one line each.
 * @param limits what the server asks of a document besides
 */
export function documentFaults(
  schema: GraphQLSchema,
  documents: Documents,
  limits: { readonly maxTokens?: number; readonly rules?: readonly ValidationRule[] } = {},
): string[] {
  const { maxTokens, rules = [] } = limits;
  return Object.entries(documents).flatMap(([hash, text]) => {
    const named = `${/^\w+ \w+/.exec(text)?.[0] ?? "a document"} (${hash.slice(0, 12)})`;
    if (hashOf(text) !== hash) return [`${named}: the text is not the one that was shipped under this hash`];
    try {
      const document = parse(text, maxTokens === undefined ? {} : { maxTokens });
      const errors = validate(schema, document, [...specifiedRules, ...rules]);
      return errors.map(({ message }) => `${named}: ${message}`);
    } catch (error) {
      return [`${named}: ${error instanceof Error ? error.message : String(error)}`];
    }
  });
}

/** What went out once and is no longer on record: an app in use would stop working. */
export const takenBack = (before: Documents, now: Documents): string[] =>
  Object.keys(before)
    .filter((hash) => now[hash] !== before[hash])
    .map((hash) => `${hash.slice(0, 12)} was shipped and is not on record any more`);
