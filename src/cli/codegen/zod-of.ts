import {
  isEnumType,
  isInputObjectType,
  isListType,
  isNonNullType,
  isScalarType,
  type GraphQLInputField,
  type GraphQLInputType,
} from "graphql";

/** What is written for a value that may not be null. `of` names the schema of another input type. */
function present(type: GraphQLInputType, of: (inputType: string) => string): string {
  if (isNonNullType(type)) return present(type.ofType, of);
  if (isListType(type)) {
    const entry = type.ofType;
    return `z.array(${present(entry, of)}${isNonNullType(entry) ? "" : ".nullable()"})`;
  }
  if (isEnumType(type)) return `z.enum(${JSON.stringify(type.getValues().map(({ name }) => name))})`;
  if (isScalarType(type)) return `scalars.${type.name}`;
  if (isInputObjectType(type)) return of(type.name);
  throw new Error(`No schema can be written for ${String(type)}.`);
}

/**
 * The zod expression for a field or variable: required, or absent with a default, or absent and null alike. A default is
 * filled in, so that a check of ranges sees what the server would see.
 */
export function zodOf(
  { type, defaultValue }: Pick<GraphQLInputField, "type" | "defaultValue">,
  of: (inputType: string) => string,
): string {
  const value = present(type, of);
  if (defaultValue === undefined) return isNonNullType(type) ? value : `${value}.nullish()`;
  return `${value}${isNonNullType(type) ? "" : ".nullable()"}.default(${JSON.stringify(defaultValue)})`;
}
