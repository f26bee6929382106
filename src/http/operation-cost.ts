/** What one operation may cost at most, worked out before it runs: fields of its answer, lists counted with their entries. */
import {
  getDirectiveValues,
  getVariableValues,
  GraphQLError,
  print,
  type DocumentNode,
  type GraphQLField,
  type GraphQLSchema,
  type OperationDefinitionNode,
} from "graphql";
import { getComplexity, type ComplexityEstimatorArgs } from "graphql-query-complexity";
import { z } from "zod";

/** An operation that was found valid, and the variables it came with. */
export type AskedOperation = {
  readonly document: DocumentNode;
  readonly operation: OperationDefinitionNode;
  readonly variables: Readonly<Record<string, unknown>>;
};

export type OperationCost = {
  /** Fields of the answer, each 1 or its `@cost`, every entry of a list counted with all that is asked of it. */
  readonly fields: number;
  /** Whether it asks for anything that keeps a thread of the planner busy. */
  readonly searches: boolean;
};

/** Fields and fragments that are looked at before the counting itself is refused: fragments can double level by level. */
const MOST_NODES = 10_000;

/** What the SDL says of a field's size and weight. */
type FieldCost = { readonly weight: number; readonly searches: boolean; size(args: Record<string, unknown>): number };

const listSize = z.object({
  assumedSize: z.int().min(0).nullish(),
  slicingArguments: z.array(z.string()).nullish(),
  sizedFields: z.array(z.string()).nullish(),
  requireOneSlicingArgument: z.boolean().nullish(),
});

/**
 * Reads `@cost` and `@listSize` of a schema.
 * @returns the cost of an operation; MISFIT when its variables are not what it declares, which its execution tells in full;
 *   UNCOUNTABLE when its fragments unfold too far
 * @throws GraphQLError BAD_USER_INPUT where an argument cannot be what a variable makes it
 */
export function createCostCount(
  schema: GraphQLSchema,
): (asked: AskedOperation) => OperationCost | "MISFIT" | "UNCOUNTABLE" {
  const known = new WeakMap<GraphQLField<unknown, unknown>, FieldCost>();
  const costOf = (field: GraphQLField<unknown, unknown>): FieldCost => {
    const before = known.get(field);
    if (before) return before;
    const read = readCost(schema, field);
    known.set(field, read);
    return read;
  };
  const estimate = ({ field, args, childComplexity, context }: ComplexityEstimatorArgs): number => {
    const cost = costOf(field);
    if (cost.searches) (context as unknown as { searches: boolean }).searches = true;
    return cost.weight + cost.size(args) * childComplexity;
  };
  // Counting takes some 0.2 ms. Documents are kept by the server, so an operation that was counted comes again as the same node.
  const counted = new WeakMap<OperationDefinitionNode, OperationCost>();
  return ({ document, operation, variables }) => {
    const before = counted.get(operation);
    if (before) return before;
    const seen = { searches: false };
    try {
      const fields = getComplexity({
        schema,
        query: document,
        variables: { ...variables },
        estimators: [estimate],
        context: seen,
        maxQueryNodes: MOST_NODES,
        ...(operation.name && { operationName: operation.name.value }),
      });
      const cost = { fields, searches: seen.searches };
      if (!variesWithVariables(operation)) counted.set(operation, cost);
      return cost;
    } catch (error) {
      if (!(error instanceof GraphQLError)) throw error;
      if (getVariableValues(schema, operation.variableDefinitions ?? [], variables).errors) return "MISFIT";
      // An argument that does not fit has its place in the document; what is beside it would run uncounted.
      if (error.nodes)
        throw new GraphQLError(error.message, { nodes: error.nodes, extensions: { code: "BAD_USER_INPUT" } });
      return "UNCOUNTABLE";
    }
  };
}

/** Sizes are Int arguments, and what is skipped or included is Boolean; a variable of no other type changes what is counted. */
const variesWithVariables = ({ variableDefinitions = [] }: OperationDefinitionNode): boolean =>
  variableDefinitions.some(({ type }) => /^(Int|Boolean)!?$/.test(print(type)));

/** A list that says no size counts as one entry; a test sees to it that only the schema's own introspection has such lists. */
function readCost(schema: GraphQLSchema, field: GraphQLField<unknown, unknown>): FieldCost {
  const given = <T>(name: string, read: (values: Record<string, unknown>) => T): T | null => {
    const directive = schema.getDirective(name);
    const values = directive && field.astNode ? getDirectiveValues(directive, field.astNode) : undefined;
    return values ? read(values) : null;
  };
  const weight = given("cost", (values) => z.coerce.number().positive().parse(values["weight"]));
  const sized = given("listSize", (values) => listSize.parse(values));
  const slicing = sized?.slicingArguments ?? [];
  const assumed = sized?.assumedSize ?? 1;
  return {
    weight: weight ?? 1,
    searches: weight !== null,
    size(args) {
      const asked = slicing.map((name) => args[name]).filter((value) => typeof value === "number");
      return asked.length > 0 ? Math.max(0, ...asked) : assumed;
    },
  };
}
