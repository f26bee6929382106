import { globalId } from "../../src/graphql/global-id.js";
import { useServedApp, type Household } from "../support/served-app.js";
import { DAY, LEFTOVERS } from "./documents.js";

const served = useServedApp();
const NODE = "query Any($id: ID!) { node(id: $id) { __typename id } }";
const OWN_RULES = globalId("RuleSet", "d0e00000-0000-4000-8000-000000000404");

/** One of every type that has an ID, as a member meets them in the tree. */
const TREE = `query Tree($id: ID!, $day: LocalDate!) { household(id: $id) { __typename id
  carers { person { __typename id } } kitchen { leftovers { __typename id } freezerStock { __typename id } }
  children { __typename id enrolments { school { __typename id ruleSets { __typename id } } schoolClass { __typename id } } }
  week(date: $day) { __typename id plan { __typename id boxes { __typename id items { __typename id dish { __typename id } } }
    batches { __typename id } tasks { __typename id } shopping { __typename id } } } } }`;

/** The first ID of each type, with how often the type came. */
function idsByType(tree: unknown): Map<string, string> {
  const found = new Map<string, string>();
  JSON.stringify(tree, (_, value: unknown) => {
    if (typeof value === "object" && value !== null && "id" in value && "__typename" in value)
      found.set(String(value.__typename), String(value.id));
    return value;
  });
  return found;
}

let home: Household;
let ids: Map<string, string>;
beforeAll(async () => {
  home = await served.household().child().planned(DAY).found();
  await home.change(LEFTOVERS, { leftovers: [{ base: "tomato-sauce", grams: 200, cookedOn: "2027-01-10" }] });
  const { database } = served.inProcess;
  await database.owner`insert into freezer_stock (household_id, base_id, grams, frozen_on, use_by)
    select h.id, b.id, 300, '2027-01-01', '2027-03-01' from household h, base b where h.name = 'Test kitchen' and b.key = 'tomato-sauce'`;
  ids = idsByType(await served.ask(home.coordinator, TREE, { id: home.id, day: DAY }));
});

describe("anything with an ID", () => {
  it("is found again by it", async () => {
    expect([...ids.keys()].sort()).toEqual([
      "Batch",
      "Box",
      "BoxItem",
      "Child",
      "Dish",
      "FreezerStock",
      "Household",
      "Leftover",
      "Person",
      "RuleSet",
      "School",
      "SchoolClass",
      "ShoppingLine",
      "Task",
      "Week",
      "WeekPlan",
    ]);
    for (const [type, id] of ids)
      expect(await served.ask(home.coordinator, NODE, { id })).toEqual({ node: { __typename: type, id } });
  });

  it("that belongs to a family is nothing to a stranger; dishes and schools are everybody's", async () => {
    const stranger = served.newcomer();
    const seen: string[] = [];
    for (const [type, id] of ids) {
      const { node } = await served.ask<{ node: { id: string } | null }>(stranger, NODE, { id });
      if (node) seen.push(type);
    }
    expect(seen.sort()).toEqual(["Dish", "RuleSet", "School", "SchoolClass"]);
  });

  it("that is a family's own rule set is theirs alone, not the school's administrator's", async () => {
    expect(await served.ask("demo:ana", NODE, { id: OWN_RULES })).toEqual({
      node: { __typename: "RuleSet", id: OWN_RULES },
    });
    for (const person of ["demo:ruth", "demo:leo"])
      expect(await served.ask(person, NODE, { id: OWN_RULES })).toEqual({ node: null });
  });

  it("answers with the fields of its type", async () => {
    const query = `query Any($id: ID!) { node(id: $id) { ... on Leftover { grams lastSafeDay base { key } }
      ... on SchoolClass { name breaks { key } } ... on RuleSet { key version rules { key } }
      ... on ShoppingLine { food { key } packs } ... on Batch { base { key } feeds { children { name } } }
      ... on FreezerStock { grams useBy } ... on Person { displayName } } }`;
    const read = async (type: string) =>
      (await served.ask<{ node: Record<string, unknown> }>(home.coordinator, query, { id: ids.get(type) })).node;
    expect(await read("Leftover")).toEqual({ grams: 200, lastSafeDay: "2027-01-13", base: { key: "tomato-sauce" } });
    expect(await read("FreezerStock")).toEqual({ grams: 300, useBy: "2027-03-01" });
    expect(await read("SchoolClass")).toMatchObject({
      name: "Year 8",
      breaks: [{ key: "morning-break" }, { key: "lunch" }],
    });
    expect(await read("RuleSet")).toMatchObject({ version: 1 });
    expect(await read("Person")).toEqual({ displayName: home.coordinator });
    expect(await read("Batch")).toMatchObject({
      feeds: expect.arrayContaining([{ children: [{ name: "Ari" }] }]) as unknown,
    });
    expect(Number((await read("ShoppingLine"))["packs"])).toBeGreaterThanOrEqual(0);
  });
});
