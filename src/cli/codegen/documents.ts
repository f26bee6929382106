/** Plugins of graphql-codegen: each operation as a `Document`, and the texts of all of them by their SHA-256. */
import { createHash } from "node:crypto";
import {
  Kind,
  print,
  stripIgnoredCharacters,
  typeFromAST,
  valueFromASTUntyped,
  visit,
  type DocumentNode,
  type FragmentDefinitionNode,
  type GraphQLInputType,
  type GraphQLSchema,
  type OperationDefinitionNode,
} from "graphql";
import { zodOf } from "./zod-of.js";

interface DocumentFile {
  readonly document?: DocumentNode;
}
interface Operation {
  readonly node: OperationDefinitionNode;
  readonly name: string;
  /** With the fragments it reaches, without what means nothing. */
  readonly text: string;
  /** Lower-case hex of the text's SHA-256. */
  readonly hash: string;
}

/** Lower-case hex, as in a SHA256 hex document identifier of GraphQL over HTTP. */
export const hashOf = (text: string): string => createHash("sha256").update(text, "utf8").digest("hex");

const capital = (word: string) => word[0]!.toUpperCase() + word.slice(1);

function operationsOf(files: readonly DocumentFile[]): Operation[] {
  const definitions = files.flatMap(({ document }) => document?.definitions ?? []);
  const fragments = new Map(
    definitions.flatMap((node) => (node.kind === Kind.FRAGMENT_DEFINITION ? [[node.name.value, node]] : [])),
  );
  return definitions
    .filter((node) => node.kind === Kind.OPERATION_DEFINITION)
    .map((node) => {
      const name = node.name?.value;
      if (name === undefined) throw new Error("Every operation of shared/operations needs a name.");
      const parts = [node, ...reached(node, fragments)];
      const text = stripIgnoredCharacters(parts.map(print).join("\n"));
      return { node, name, text, hash: hashOf(text) };
    })
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** The fragments a definition spreads, and those that they spread, each once, by name. */
function reached(
  node: OperationDefinitionNode,
  fragments: ReadonlyMap<string, FragmentDefinitionNode>,
): FragmentDefinitionNode[] {
  const found = new Map<string, FragmentDefinitionNode>();
  const look = (definition: OperationDefinitionNode | FragmentDefinitionNode) =>
    visit(definition, {
      FragmentSpread({ name: { value: name } }) {
        const fragment = fragments.get(name);
        if (!fragment) throw new Error(`No fragment is named ${name}.`);
        if (found.has(name)) return;
        found.set(name, fragment);
        look(fragment);
      },
    });
  look(node);
  return [...found].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, fragment]) => fragment);
}

/** Added to the types that `typescript-operations` makes. */
export const documents = {
  plugin(schema: GraphQLSchema, files: readonly DocumentFile[]) {
    const content = operationsOf(files).map(({ node, name, text, hash }) => {
      const variables = (node.variableDefinitions ?? []).map(({ variable, type, defaultValue }) => {
        const field = {
          type: typeFromAST(schema, type as never) as GraphQLInputType,
          defaultValue: defaultValue && valueFromASTUntyped(defaultValue),
        };
        return `${variable.name.value}: ${zodOf(field, (input) => `inputSchemas.${input}`)}`;
      });
      const types = `${name}${capital(node.operation)}`;
      return `export const ${name}: Document<${types}, ${types}Variables> = {
  name: "${name}",
  kind: "${node.operation}",
  id: "sha256:${hash}",
  text: ${JSON.stringify(text)},
  variables: () => z.strictObject({ ${variables.join(", ")} }),
};`;
    });
    return {
      prepend: [
        "/** Made from schema/ and shared/operations/ by `npm run codegen`. */",
        'import { z } from "zod";',
        'import type { Document } from "../document.js";',
        'import { inputSchemas } from "../input-schemas.js";',
        'import { scalars } from "../scalars.js";',
      ],
      content: content.join("\n\n"),
    };
  },
};

/** Text by hash, for the server. */
export const persisted = {
  plugin: (_schema: GraphQLSchema, files: readonly DocumentFile[]): string =>
    JSON.stringify(Object.fromEntries(operationsOf(files).map(({ hash, text }) => [hash, text])), null, 2) + "\n",
};
