import { ApolloArmor } from "@escape.tech/graphql-armor";
import { GraphQLError, type ValidationContext, type ValidationRule } from "graphql";

/** Bytes of a request body or of one WebSocket message. A whole week's mutation is a few kilobytes. */
export const BODY_BYTES = 256 * 1024;

/** Bytes of a too large body that are still read and thrown away, so that the sender gets to hear why. */
export const DISCARDED_BYTES = 8 * 1024 * 1024;

/** Words and signs of one document. */
export const DOCUMENT_TOKENS = 2_000;

/** Levels of fields in one operation; fragments neither add nor hide any. */
const DEPTH = 12;
const ALIASES = 30;
const DIRECTIVES = 20;

/**
 * Cost of one operation: 1 per field and 2 per object, times 1.5 per level, times the size asked for in `first` or `last`.
 * It bounds the shape of a question, not the rows behind it: every list that grows is paged.
 */
const COST = 20_000;

/** The code of a refusal by one of the rules below. */
export const QUERY_LIMIT = "QUERY_LIMIT";

/** Subscriptions one socket may hold. */
export const SUBSCRIPTIONS_PER_SOCKET = 20;

type Reject = (context: ValidationContext | null, error: GraphQLError) => void;

/** A refusal that says what to do; the library's own sentence carries the figures. */
const refuseWith =
  (advice: string): Reject =>
  (context, error) =>
    context?.reportError(
      new GraphQLError(`${error.message.replace(/^Syntax Error: /, "")} ${advice}`, {
        extensions: { code: QUERY_LIMIT },
      }),
    );

/** The validation rules that bound what one operation may ask for, the same over HTTP and WebSocket. */
export function limitRules(): ValidationRule[] {
  const rule = <T extends object>(settings: T, advice: string) => ({
    ...settings,
    propagateOnRejection: false,
    onReject: [refuseWith(advice)],
  });
  return new ApolloArmor({
    maxDepth: rule({ n: DEPTH, flattenFragments: true }, "Ask for the deeper part in a second query."),
    maxAliases: rule({ n: ALIASES }, "Send the rest in a second query."),
    maxDirectives: rule({ n: DIRECTIVES }, "Send the rest in a second query."),
    costLimit: rule({ maxCost: COST, flattenFragments: true }, "Ask for fewer fields, or for fewer rows at a time."),
    // Tokens are counted by the parser; suggestions are taken out where errors are written.
    maxTokens: { enabled: false },
    blockFieldSuggestion: { enabled: false },
  }).protect().validationRules;
}
