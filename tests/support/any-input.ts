/** Values that the schema's own types accept, made from the types alone; what an action makes of them is another question. */
import {
  getNullableType,
  isEnumType,
  isInputObjectType,
  isInputType,
  isListType,
  isRequiredInputField,
  typeFromAST,
  type GraphQLInputType,
  type GraphQLSchema,
  type OperationDefinitionNode,
} from "graphql";

const SCALARS: Readonly<Record<string, unknown>> = {
  ID: "aG91c2U",
  String: "sample-text",
  Int: 1,
  Float: 1,
  Boolean: true,
  LocalDate: "2027-01-11",
  LocalTime: "07:00",
  DateTime: "2027-01-11T07:00:00Z",
};

/** @param given values by field name, taken wherever an input has such a field */
export function anyValue(type: GraphQLInputType, given: Readonly<Record<string, unknown>> = {}): unknown {
  const bare = getNullableType(type);
  if (isListType(bare)) return [anyValue(bare.ofType, given)];
  if (isEnumType(bare)) return bare.getValues()[0]!.name;
  if (!isInputObjectType(bare)) {
    if (bare.name in SCALARS) return SCALARS[bare.name];
    throw new Error(`No sample of the scalar ${bare.name}; add one.`);
  }
  const fields = Object.values(bare.getFields());
  const chosen = bare.isOneOf
    ? fields.slice(0, 1)
    : fields.filter((field) => isRequiredInputField(field) || field.name in given);
  return Object.fromEntries(
    chosen.map(({ name, type: of }) => [name, name in given ? given[name] : anyValue(of, given)]),
  );
}

/** A value for every variable an operation declares. */
export function anyVariables(schema: GraphQLSchema, operation: OperationDefinitionNode): Record<string, unknown> {
  return Object.fromEntries(
    (operation.variableDefinitions ?? []).map(({ variable, type }) => {
      const named = typeFromAST(schema, type as never);
      if (!isInputType(named)) throw new Error(`$${variable.name.value} has no type that goes in.`);
      return [variable.name.value, anyValue(named)];
    }),
  );
}
