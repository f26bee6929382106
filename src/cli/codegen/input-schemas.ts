/** Plugin of graphql-codegen: a zod schema for every input type of the SDL. */
import { getNamedType, isInputObjectType, type GraphQLInputObjectType, type GraphQLSchema } from "graphql";
import { zodOf } from "./zod-of.js";

/** @throws for an input type that holds itself: none does, and a client could not write down its ranges */
export function plugin(schema: GraphQLSchema): string {
  const types = Object.values(schema.getTypeMap()).filter(isInputObjectType);
  const written = inOrder(types).map((type) => {
    const fields = Object.values(type.getFields()).map((field) => `${field.name}: ${zodOf(field, (name) => name)}`);
    const one = type.isOneOf ? `.refine(exactlyOne, "Send exactly one of its fields.")` : "";
    return `const ${type.name} = z.strictObject({ ${fields.join(", ")} })${one}.check(within("${type.name}"));`;
  });
  const names = types.map(({ name }) => name);
  return `/** Made from schema/ by \`npm run codegen\`. */
import { z } from "zod";
import { exactlyOne, scalars } from "../scalars.js";

export type InputTypeName = ${names.map((name) => JSON.stringify(name)).join(" | ")};

/** @param within the check of a type's ranges and texts, which the SDL has no words for; it sees defaults filled in */
export const makeInputSchemas = (within: (type: InputTypeName) => z.core.CheckFn<unknown>) => {
${written.join("\n")}
return { ${names.join(", ")} } satisfies Record<InputTypeName, z.ZodType>;
};
`;
}

/** Those that others hold before those that hold them. */
function inOrder(types: readonly GraphQLInputObjectType[]): GraphQLInputObjectType[] {
  const placed = new Set<GraphQLInputObjectType>();
  const place = (type: GraphQLInputObjectType, holders: readonly GraphQLInputObjectType[]) => {
    if (holders.includes(type)) throw new Error(`${type.name} holds itself.`);
    for (const { type: field } of Object.values(type.getFields())) {
      const held = getNamedType(field);
      if (isInputObjectType(held) && !placed.has(held)) place(held, [...holders, type]);
    }
    placed.add(type);
  };
  for (const type of types) if (!placed.has(type)) place(type, []);
  return [...placed];
}
