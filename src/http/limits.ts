import { ApolloArmor } from "@escape.tech/graphql-armor";
import { GraphQLError, type GraphQLSchema, type ValidationContext, type ValidationRule } from "graphql";
import { createCostCount, type AskedOperation } from "./operation-cost.js";

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
 * Cost of one operation, in fields of its answer at the sizes the schema states (`@listSize`, `@cost`). A whole week of a
 * family with everything about its boxes comes to 11,000, that of a person with three homes to 32,000; an answer of 4,000
 * real fields takes 10 ms of processor time, so the most holds the event loop for about an eighth of a second.
 */
const COST = 50_000;

/** The code of a refusal by one of the rules below. */
export const QUERY_LIMIT = "QUERY_LIMIT";

/** Entries of one list in the variables, at any depth; each input has a smaller bound of its own. */
const LIST_ENTRIES = 1_000;
/** Lists and objects inside one another in the variables. The deepest input has four. */
const NESTING = 20;

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
    // Counted where the variables are known, by the sizes of the schema: see `createCostLimit`.
    costLimit: { enabled: false },
    // Tokens are counted by the parser; suggestions are taken out where errors are written.
    maxTokens: { enabled: false },
    blockFieldSuggestion: { enabled: false },
  }).protect().validationRules;
}

const refused = (sentence: string) =>
  new GraphQLError(sentence, { extensions: { code: QUERY_LIMIT, http: { status: 400 } } });
const tooMuch = (sentence: string) => refused(`${sentence} Ask for fewer fields, or for fewer rows at a time.`);

/** The first list that is too long or thing that lies too deep, in a sentence; null when there is none. */
function excessIn(value: unknown, path: string, levels: number): string | null {
  if (typeof value !== "object" || value === null) return null;
  if (levels === 0) return `${path.slice(0, 100)} lies more than ${NESTING} levels deep. No input here is that deep.`;
  if (Array.isArray(value) && value.length > LIST_ENTRIES)
    return `${path.slice(0, 100)} has ${value.length} entries. Send at most ${LIST_ENTRIES} at a time.`;
  for (const [key, inner] of Object.entries(value)) {
    const found = excessIn(inner, `${path}.${key}`, levels - 1);
    if (found !== null) return found;
  }
  return null;
}

export type CostLimit = (asked: AskedOperation) => { readonly searches: boolean };

/**
 * Bounds what a valid operation may cost with the variables it came with, the same over HTTP and WebSocket.
 * @returns whether the operation begins a search of the planner
 * @throws GraphQLError QUERY_LIMIT
 */
export function createCostLimit(schema: GraphQLSchema): CostLimit {
  const count = createCostCount(schema);
  return (asked) => {
    const excess = excessIn(asked.variables, "variables", NESTING);
    if (excess !== null) throw refused(excess);
    const cost = count(asked);
    if (cost === "UNCOUNTABLE") throw tooMuch("The fragments of this operation unfold into too many fields.");
    // Variables that do not fit are refused, and told of, before anything is resolved.
    if (cost === "MISFIT") return { searches: false };
    if (cost.fields > COST) throw tooMuch(`This operation costs ${cost.fields} of at most ${COST}.`);
    return cost;
  };
}
