/** Asks the API itself: may this person have that done? A reading that is out of date keeps what is allowed from happening. */
import { isInterfaceType } from "graphql";
import { newKey } from "../support/app.js";
import type { Household, ServedApp } from "../support/served-app.js";
import { localOf } from "../support/served-app.js";
import {
  administrator,
  documentOf,
  everyMutation,
  inputNow,
  jurisdictionMutations,
  schoolDocumentOf,
  schoolInputNow,
  schoolMutations,
} from "../graphql/every-mutation.js";
import { DAY } from "../graphql/documents.js";
import { globalId } from "../../src/graphql/global-id.js";
import { mutations, nodes } from "./mutations.js";
import { actors, type Actor, type Cell } from "./sql-cells.js";

/** Answers that let nobody through. */
const SHUT = new Set([
  "NotPermitted",
  "NotAppointed",
  "HouseholdNotFound",
  "ChildNotFound",
  "NothingThere",
  "SchoolNotFound",
  "InvitationNotFound",
]);
const ROLE = {
  O: ["OBSERVER", "HELPER", "COOK", "COORDINATOR"],
  H: ["HELPER", "COOK", "COORDINATOR"],
  K: ["COOK", "COORDINATOR"],
  C: ["COORDINATOR"],
} as const;
const JURISDICTION = "Access";

/** Mutations of the schema that nobody has said anything about, and lines about mutations that are not there. */
export function unspokenMutations(served: ServedApp): string[] {
  const offered = Object.keys(served.inProcess.schema.getMutationType()!.getFields());
  return [
    ...offered.filter((field) => mutations[field] === undefined),
    ...Object.keys(mutations).filter((field) => !offered.includes(field)),
  ];
}

interface Asked {
  readonly field: string;
  readonly document: string;
  readonly input: Record<string, unknown>;
}

async function everyAsking(served: ServedApp, home: Household, second: Household, subject: string): Promise<Asked[]> {
  const found: Asked[] = [];
  for (const mutation of everyMutation)
    found.push({
      field: mutation.field,
      document: documentOf(mutation.field),
      input: await inputNow(mutation, home),
    });
  for (const mutation of schoolMutations)
    found.push({
      field: mutation.field,
      document: schoolDocumentOf(mutation.field),
      input: await schoolInputNow(mutation, served),
    });
  for (const { field, input } of jurisdictionMutations)
    found.push({ field, document: schoolDocumentOf(field), input: input(subject, JURISDICTION) });
  const guess = { token: "A".repeat(43) };
  const own: [string, Record<string, unknown>][] = [
    ["createHousehold", { name: "Another", timeZone: "Europe/London", currency: "GBP" }],
    ["acceptInvitation", guess],
    ["acceptHomeInvitation", { ...guess, householdId: home.id }],
    // A first step, which asks for the second.
    ["eraseMe", {}],
    ["renameMe", { displayName: "Somebody" }],
    ["leaveHousehold", { householdId: second.id }],
  ];
  for (const [field, input] of own) found.push({ field, document: ownDocument(field), input });
  // What is sent for real is about somebody who asks nothing here; the coordinator gives coordination away last.
  const moved = new Map<string, string>();
  for (const field of MOVES) moved.set(field, globalId("Person", await home.join("HELPER")));
  const about = (asked: Asked): Asked =>
    moved.has(asked.field) ? { ...asked, input: { ...asked.input, personId: moved.get(asked.field) } } : asked;
  return found.map(about).sort((a, b) => Number(a.field === LAST) - Number(b.field === LAST));
}
const LAST = "handOverCoordination";
const MOVES = ["changeRole", "removeCarer", LAST];
const ownDocument = (field: string) =>
  `mutation M($input: ${field[0]!.toUpperCase()}${field.slice(1)}Input!) { ${field}(input: $input) { __typename } }`;

/** People and homes for asking; what is answered asks for every cell of these mutations x actors, of all when none is named. */
export async function mutationAsker(
  served: ServedApp,
): Promise<{ ask(fields?: readonly string[]): Promise<Cell[]>; read(): Promise<Cell[]> }> {
  const home = await served.household().child().carer("OBSERVER").carer("HELPER").carer("COOK").planned(DAY).found();
  const there = await served.household().found();
  const far = await served.household().child().found();
  const { addHome, addCarer, owner, db } = served.inProcess.database;
  // For leaving: the same people care for another household too.
  const second = await served.household().found();
  for (const [role, person] of Object.entries(home.carers) as [keyof Household["carers"], string][])
    await addCarer(await db.signIn(person, person), localOf(second.id), role);
  await addHome(localOf(home.children[0]!), localOf(there.id));
  await owner`update residence set since = '2027-06-01' where household_id = ${localOf(there.id)}`;
  const appointer = served.newcomer();
  await owner`insert into appointment (person_id, jurisdiction) values (${await db.signIn(appointer, appointer)}, ${JURISDICTION})`;
  const appointed = served.newcomer();
  await db.signIn(appointed, appointed);
  const people: Record<Actor, string | null> = {
    OBSERVER: home.carers.OBSERVER!,
    HELPER: home.carers.HELPER!,
    COOK: home.carers.COOK!,
    COORDINATOR: home.coordinator,
    OTHER_HOME: there.coordinator,
    STRANGER: far.coordinator,
    ADMINISTRATOR: administrator,
    NOBODY: null,
  };
  const all = await everyAsking(served, home, second, appointed);
  const ask = async (fields?: readonly string[]) => {
    const cells: Cell[] = [];
    for (const { field, document, input } of all.filter(({ field }) => fields?.includes(field) ?? true)) {
      const letter = mutations[field];
      const stale = "seenRevision" in input ? { ...input, seenRevision: 2_000_000_000 } : input;
      const asking: [Actor | "JURISDICTION", string | null][] = actors.map((actor) => [actor, people[actor]]);
      if (letter === "J") asking.push(["JURISDICTION", appointer]);
      for (const [actor, person] of asking) {
        const { data, errors } = await served.post(person, document, { input: { idempotencyKey: newKey(), ...stale } });
        const said = (data?.[field] as { __typename: string } | undefined)?.__typename;
        const refused = errors.some(({ extensions }) => extensions["code"] === "UNAUTHENTICATED");
        if (said === undefined && !refused) throw new Error(`${field} as ${actor}: ${JSON.stringify(errors)}`);
        const expected =
          letter === "*"
            ? actor !== "NOBODY"
            : letter === "A"
              ? actor === "ADMINISTRATOR"
              : letter === "J"
                ? actor === "JURISDICTION"
                : letter !== undefined && (ROLE[letter] as readonly string[]).includes(actor);
        cells.push({
          what: field,
          verb: "MUTATION",
          scope: "OWN",
          actor: actor as Actor,
          expected,
          got: said !== undefined && (letter === "*" || !SHUT.has(said)),
        });
      }
    }
    // In one's own household's name, with the newest reading, about a child who does not live there.
    for (const { field, document, input } of all.filter(({ field }) => fields?.includes(field) ?? true)) {
      if (!("childId" in input) || !("householdId" in input)) continue;
      const foreign = {
        ...input,
        householdId: far.id,
        ...("seenRevision" in input && { seenRevision: await far.revision() }),
      };
      const { data, errors } = await served.post(far.coordinator, document, {
        input: { idempotencyKey: newKey(), ...foreign },
      });
      const said = (data?.[field] as { __typename: string } | undefined)?.__typename;
      if (said === undefined) throw new Error(`${field} about a foreign child: ${JSON.stringify(errors)}`);
      cells.push({
        what: field,
        verb: "MUTATION",
        scope: "FOREIGN child",
        actor: "STRANGER",
        expected: false,
        got: !SHUT.has(said),
      });
    }
    return cells;
  };
  const read = async () => {
    const cells: Cell[] = [];
    for (const [type, id] of await everyNode(served, home)) {
      for (const actor of actors) {
        const { data, errors } = await served.post(people[actor], "query N($id: ID!) { node(id: $id) { id } }", { id });
        const odd = errors.find(({ extensions }) => extensions["code"] !== "UNAUTHENTICATED");
        if (odd) throw new Error(`${type} as ${actor}: ${JSON.stringify(odd)}`);
        const letter = nodes[type];
        const carer = ["OBSERVER", "HELPER", "COOK", "COORDINATOR"].includes(actor);
        const expected = letter === "*" ? actor !== "NOBODY" : carer || (letter === "B" && actor === "OTHER_HOME");
        cells.push({ what: type, verb: "READ", scope: "OWN", actor, expected, got: (data?.["node"] ?? null) !== null });
      }
    }
    return cells;
  };
  return { ask, read };
}

/** One thing of every type that has an ID, the household's own where it is a household's. */
async function everyNode(served: ServedApp, home: Household): Promise<[string, string][]> {
  const { owner } = served.inProcess.database;
  const householdId = localOf(home.id);
  const [base] = await owner<{ id: string }[]>`select id from base limit 1`;
  await owner`insert into leftover (household_id, base_id, grams, cooked_on, last_safe_day) values (${householdId}, ${base!.id}, 9, ${DAY}, ${DAY})`;
  await owner`insert into freezer_stock (household_id, base_id, grams, frozen_on, use_by) values (${householdId}, ${base!.id}, 9, ${DAY}, ${DAY})`;
  const first = async (table: string, where = "true") =>
    (await owner.unsafe<{ id: string }[]>(`select id from ${table} where ${where} limit 1`))[0]!.id;
  const own = `household_id = '${householdId}'`;
  const plan = `week_plan_id in (select id from week_plan where ${own} and state <> 'REPLACED')`;
  const shared = `child_id = '${localOf(home.children[0]!)}'`;
  const rows: [string, string][] = [
    ["Week", await first("week", own)],
    ["WeekPlan", await first("week_plan", `${own} and state <> 'REPLACED'`)],
    ["Box", await first("lunch_box", `${plan} and ${shared}`)],
    ["BoxItem", await first("box_item", `lunch_box_id in (select id from lunch_box where ${plan} and ${shared})`)],
    ["Batch", await first("batch", plan)],
    ["Task", await first("task", plan)],
    ["ShoppingLine", await first("shopping_line", plan)],
    ["Leftover", await first("leftover", own)],
    ["FreezerStock", await first("freezer_stock", own)],
    ["School", await first("school")],
    ["SchoolClass", await first("school_class")],
    ["RuleSet", await first("rule_set", "layer = 'JURISDICTION'")],
    ["Dish", await first("dish")],
  ];
  const [boss] = await owner<
    { id: string }[]
  >`select person_id as id from membership where ${owner.unsafe(own)} and role = 'COORDINATOR'`;
  return [
    ["Household", home.id],
    ["Child", home.children[0]!],
    ["Person", globalId("Person", boss!.id)],
    ...rows.map(([type, id]): [string, string] => [type, globalId(type, id)]),
  ];
}

/** Types with an ID that nobody has said anything about, and lines about types that are not there. */
export function unspokenNodes(served: ServedApp): string[] {
  const { schema } = served.inProcess;
  const node = schema.getType("Node");
  const offered = isInterfaceType(node) ? schema.getPossibleTypes(node).map(({ name }) => name) : [];
  return [
    ...offered.filter((name) => nodes[name] === undefined),
    ...Object.keys(nodes).filter((name) => !offered.includes(name)),
  ];
}
