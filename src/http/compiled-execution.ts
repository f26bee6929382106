import {
  execute,
  getArgumentValues,
  getNamedType,
  getOperationAST,
  getVariableValues,
  GraphQLBoolean,
  GraphQLID,
  GraphQLString,
  isLeafType,
  isListType,
  isNonNullType,
  isObjectType,
  Kind,
  type DocumentNode,
  type ExecutionResult,
  type FieldNode,
  type GraphQLField,
  type GraphQLFieldResolver,
  type GraphQLLeafType,
  type GraphQLObjectType,
  type GraphQLOutputType,
  type GraphQLResolveInfo,
  type GraphQLSchema,
  type SelectionSetNode,
} from "graphql";

export type Execution = {
  readonly document: DocumentNode;
  readonly operationName?: string | null | undefined;
  readonly variableValues?: Readonly<Record<string, unknown>> | null | undefined;
  readonly contextValue: unknown;
};

/** Thrown where an answer needs more than the plain case: an error, a null that must not be, an unusual value. */
class Uncommon extends Error {}

/** One execution of a plan. */
type Run = {
  readonly context: unknown;
  /** Coerced arguments by slot. */
  readonly args: readonly Readonly<Record<string, unknown>>[];
  /** What still has to be filled in; none of them rejects. */
  pending: Promise<void>[];
  uncommon: boolean;
};

type Complete = (value: unknown, run: Run) => unknown;

type PlannedField = {
  readonly key: string;
  readonly name: string;
  /** Null: the property of that name. */
  readonly resolve: GraphQLFieldResolver<unknown, unknown> | null;
  readonly slot: number;
  readonly complete: Complete;
};

type Arguments = { readonly field: GraphQLField<unknown, unknown>; readonly node: FieldNode };

type Plan = { readonly fields: readonly PlannedField[]; readonly args: readonly Arguments[] };

const NO_ARGUMENTS = Object.freeze({});
/** Fields whose resolver asks for it are never planned. */
const NO_INFO = undefined as unknown as GraphQLResolveInfo;

/**
 * Executes queries by a plan made once per document: which resolver fills which key, and how its value is completed. Plans
 * know the plain case only, which is nearly every answer: objects, lists and leaves, without directives or abstract types.
 * For any other document, and whenever something goes wrong on the way, graphql-js executes from the start and its answer
 * counts, so results and errors are always the reference implementation's. Reading twice is allowed: by section 6.2.1 of
 * the GraphQL specification queries have no side effects. Mutations and subscriptions are left to graphql-js.
 */
export function createCompiledExecutor(schema: GraphQLSchema): (execution: Execution) => Promise<ExecutionResult> {
  const plans = new WeakMap<DocumentNode, Map<string, Plan | null>>();
  const planOf = (document: DocumentNode, operationName: string | null): Plan | null => {
    let ofDocument = plans.get(document);
    if (ofDocument === undefined) plans.set(document, (ofDocument = new Map<string, Plan | null>()));
    const name = operationName ?? "";
    let plan = ofDocument.get(name);
    if (plan === undefined) ofDocument.set(name, (plan = makePlan(schema, document, operationName)));
    return plan;
  };
  return async (execution) => {
    const { document, operationName = null, variableValues, contextValue } = execution;
    const plan = planOf(document, operationName);
    const data = plan === null ? null : await runPlan(schema, plan, execution);
    if (data !== null) return { data };
    return execute({ schema, document, operationName, variableValues: variableValues ?? null, contextValue });
  };
}

/** Null when something uncommon happened. */
async function runPlan(
  schema: GraphQLSchema,
  plan: Plan,
  execution: Execution,
): Promise<Record<string, unknown> | null> {
  const { document, operationName, variableValues, contextValue } = execution;
  let data: Record<string, unknown>;
  const pending: Promise<void>[] = [];
  let run: Run;
  try {
    const definitions = getOperationAST(document, operationName)?.variableDefinitions ?? [];
    const { coerced } = getVariableValues(schema, definitions, variableValues ?? {});
    if (coerced === undefined) return null;
    run = {
      context: contextValue,
      args: plan.args.map(({ field, node }) => getArgumentValues(field, node, coerced)),
      pending,
      uncommon: false,
    };
    data = fillObject(plan.fields, undefined, run);
  } catch {
    return null;
  }
  while (run.pending.length > 0) {
    const batch = run.pending;
    run.pending = [];
    await Promise.all(batch);
    if (run.uncommon) return null;
  }
  return data;
}

function fillObject(fields: readonly PlannedField[], source: unknown, run: Run): Record<string, unknown> {
  const filled: Record<string, unknown> = {};
  for (const { key, name, resolve, slot, complete } of fields) {
    const value =
      resolve === null
        ? (source as Record<string, unknown>)[name]
        : resolve(source, slot < 0 ? NO_ARGUMENTS : run.args[slot]!, run.context, NO_INFO);
    if (isPromise(value)) {
      filled[key] = null; // keeps the place of the key
      fillLater(value, run, (settled) => (filled[key] = complete(settled, run)));
    } else filled[key] = complete(value, run);
  }
  return filled;
}

function fillLater(value: PromiseLike<unknown>, run: Run, fill: (settled: unknown) => void): void {
  run.pending.push(
    Promise.resolve(value)
      .then(fill)
      .catch(() => {
        run.uncommon = true;
      }),
  );
}

const isPromise = (value: unknown): value is PromiseLike<unknown> =>
  typeof value === "object" && value !== null && typeof (value as { then?: unknown }).then === "function";

function makePlan(schema: GraphQLSchema, document: DocumentNode, operationName: string | null): Plan | null {
  const operation = getOperationAST(document, operationName);
  const root = schema.getQueryType();
  if (operation?.operation !== "query" || !root || (operation.directives ?? []).length > 0) return null;
  const args: Arguments[] = [];
  try {
    return { fields: planFields(root, [operation.selectionSet], { schema, document, args }), args };
  } catch (error) {
    if (error instanceof Uncommon) return null;
    throw error;
  }
}

type Making = { readonly schema: GraphQLSchema; readonly document: DocumentNode; readonly args: Arguments[] };

function planFields(type: GraphQLObjectType, sets: readonly SelectionSetNode[], making: Making): PlannedField[] {
  if (type.isTypeOf) throw new Uncommon();
  const found = new Map<string, FieldNode[]>();
  for (const set of sets) collectFields(type, set, making, found, new Set());
  return [...found].map(([key, nodes]) => planField(type, key, nodes, making));
}

/** "CollectFields" of the specification, section 6.3.2, for a type that is known beforehand. */
function collectFields(
  type: GraphQLObjectType,
  set: SelectionSetNode,
  making: Making,
  found: Map<string, FieldNode[]>,
  visited: Set<string>,
): void {
  for (const selection of set.selections) {
    if ((selection.directives ?? []).length > 0) throw new Uncommon();
    if (selection.kind === Kind.FIELD) {
      const key = (selection.alias ?? selection.name).value;
      if (key === "__proto__") throw new Uncommon();
      found.set(key, [...(found.get(key) ?? []), selection]);
      continue;
    }
    const fragment = selection.kind === Kind.INLINE_FRAGMENT ? selection : fragmentOf(selection.name.value, making);
    if (selection.kind === Kind.FRAGMENT_SPREAD) {
      if (visited.has(selection.name.value)) continue;
      visited.add(selection.name.value);
    }
    const condition = fragment.typeCondition ? making.schema.getType(fragment.typeCondition.name.value) : type;
    // A condition on an interface or union would need the possible types; the plain case names the object itself.
    if (condition !== type) throw new Uncommon();
    collectFields(type, fragment.selectionSet, making, found, visited);
  }
}

function fragmentOf(name: string, { document }: Making) {
  for (const definition of document.definitions)
    if (definition.kind === Kind.FRAGMENT_DEFINITION && definition.name.value === name) return definition;
  throw new Uncommon();
}

function planField(type: GraphQLObjectType, key: string, nodes: readonly FieldNode[], making: Making): PlannedField {
  const node = nodes[0]!;
  const name = node.name.value;
  if (name === "__typename") return { key, name, resolve: () => type.name, slot: -1, complete: (value) => value };
  const field = type.getFields()[name];
  if (field === undefined || (field.resolve && field.resolve.length > 3)) throw new Uncommon();
  const slot = field.args.length === 0 ? -1 : making.args.push({ field, node }) - 1;
  const sets = nodes.flatMap((entry) => (entry.selectionSet ? [entry.selectionSet] : []));
  const complete = planValue(field.type, sets, making);
  return { key, name, resolve: field.resolve ?? null, slot, complete };
}

function planValue(type: GraphQLOutputType, sets: readonly SelectionSetNode[], making: Making): Complete {
  if (isNonNullType(type)) {
    const inner = planValue(type.ofType, sets, making);
    return (value, run) => {
      const completed = inner(value, run);
      if (completed === null) throw new Uncommon();
      return completed;
    };
  }
  if (isListType(type)) {
    const inner = planValue(type.ofType, sets, making);
    return (value, run) => {
      if (value === null || value === undefined) return null;
      if (!Array.isArray(value)) throw new Uncommon();
      const filled = new Array<unknown>(value.length);
      for (let at = 0; at < value.length; at += 1) {
        const entry: unknown = value[at];
        if (isPromise(entry)) fillLater(entry, run, (settled) => (filled[at] = inner(settled, run)));
        else filled[at] = inner(entry, run);
      }
      return filled;
    };
  }
  if (isLeafType(type)) return planLeaf(type);
  const named = getNamedType(type);
  if (!isObjectType(named)) throw new Uncommon();
  const fields = planFields(named, sets, making);
  return (value, run) => {
    if (value === null || value === undefined) return null;
    if (value instanceof Error) throw value;
    return fillObject(fields, value, run);
  };
}

function planLeaf(type: GraphQLLeafType): Complete {
  // What these scalars do with a value that already has their type, without the detour.
  const own =
    type === GraphQLString || type === GraphQLID ? "string" : type === GraphQLBoolean ? "boolean" : "none of its own";
  return (value) => {
    if (typeof value === own) return value;
    if (value === null || value === undefined) return null;
    const serialized: unknown = type.serialize(value);
    if (serialized === null || serialized === undefined) throw new Uncommon();
    return serialized;
  };
}
