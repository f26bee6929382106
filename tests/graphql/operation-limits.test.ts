import { getDirectiveValues, getNamedType, getOperationAST, isObjectType, parse } from "graphql";
import { createCostCount } from "../../src/http/operation-cost.js";
import { useServedApp, type Household } from "../support/served-app.js";
import { DAY, HOMES } from "./documents.js";

const served = useServedApp({ steps: 25_000 });
let home: Household;
beforeAll(async () => {
  home = await served
    .household()
    .child({ allergies: [{ allergen: "EGG", avoid: "TRACES" }] })
    .child({ name: "Bo", dateOfBirth: "2018-02-03" }, "class-4")
    .child({ name: "Cleo", dateOfBirth: "2021-11-30", flask: false }, "reception")
    .planned(DAY)
    .found();
});

/** Most of what a week and a household hold, so that their lists can be measured. */
const EVERYTHING = `query Everything($id: ID!, $day: LocalDate!) { household(id: $id) { keepsOut carers { role }
  children { diets dislikes allergies { allergen } enrolments { fromDate schoolClass { breaks { slots } } } provisions { grams }
    boxes(from: "2027-01-11", to: "2027-01-15") { date } dailyNeeds(on: $day) { breaks { breakKey } sources { __typename } } }
  kitchen { equipment { kind } prepTimes { kind } hotDays stock { grams } leftovers { grams } labelChecks { contains } } }
  week(householdId: $id, date: $day) { plan { origin { ruleSetVersions }
    boxes { date items { slot allergens cuts { cut } labelsToRead { key } askedForBy { __typename } holdingCurve { minute }
      note { why } dish { slots bases { grams } ingredients { grams } steps { text } nutrients { tag } } }
      card { parts { items { slot } } lines cutlery cautions } compliance { rules { state foods { key } } } }
    batches { grams feeds { grams children { name } } } tasks { kind children { name } forDates equipment handles }
    shopping { packs spareUses { __typename } } readyUses { __typename } cautions { kind } rulesObeyed { dates }
    sessions { tasks { kind } carers { tasks { kind } } appliances { uses { __typename } } } } } }`;

/** Every list of an answer with the name of its field, and how many fields the answer has in all. */
function lists(answer: unknown, typeName: string, found: Map<string, number>): number {
  const type = served.inProcess.schema.getType(typeName);
  if (!isObjectType(type) || typeof answer !== "object" || answer === null) return 0;
  let fields = 0;
  for (const [key, value] of Object.entries(answer)) {
    const field = type.getFields()[key];
    fields += 1;
    if (!field) continue;
    const entries = Array.isArray(value) ? (value as unknown[]) : [value];
    if (Array.isArray(value))
      found.set(`${typeName}.${key}`, Math.max(entries.length, found.get(`${typeName}.${key}`) ?? 0));
    for (const entry of entries) fields += lists(entry, getNamedType(field.type).name, found);
  }
  return fields;
}

it("a planned week of three children fits the sizes that the schema assumes, and costs no more than was reckoned", async () => {
  const variables = { id: home.id, day: DAY };
  const data = await served.ask(home.coordinator, EVERYTHING, variables);
  const found = new Map<string, number>();
  const answered = lists(data, "Query", found);
  const beyond = [...found].filter(([name, length]) => {
    const [type, field] = name.split(".") as [string, string];
    const { astNode } = (
      served.inProcess.schema.getType(type) as never as { getFields(): Record<string, { astNode: never }> }
    ).getFields()[field]!;
    const size = getDirectiveValues(served.inProcess.schema.getDirective("listSize")!, astNode) as {
      assumedSize: number;
    };
    return length > size.assumedSize;
  });
  expect(found.size).toBeGreaterThan(30);
  expect(beyond).toEqual([]);
  const document = parse(EVERYTHING);
  const cost = createCostCount(served.inProcess.schema)({ document, operation: getOperationAST(document)!, variables });
  if (typeof cost === "string") throw new Error(cost);
  expect(answered).toBeGreaterThan(3_000);
  expect(cost.fields).toBeGreaterThanOrEqual(answered);
});

const TOO_DEAR = `query Dear($day: LocalDate!) { me { households { week(date: $day) { plan { boxes { items { pricedAlternatives(first: 5)
  { dish { ingredients { food { key } } } } } } } } } } }`;

async function authorization(person: string): Promise<string> {
  const response = await fetch(`${served.url}/dev/token`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ person }),
  });
  return `Bearer ${((await response.json()) as { access_token: string }).access_token}`;
}

describe("over HTTP", () => {
  it("a question that costs too much is refused before anything of it runs, and the same asked for less is answered", async () => {
    const { data, errors } = await served.post(home.coordinator, TOO_DEAR, { day: DAY });
    expect([data, errors.map(({ extensions }) => extensions["code"])]).toEqual([null, ["QUERY_LIMIT"]]);
    await served.ask(home.coordinator, HOMES, { day: DAY });
  });

  it("goes by the variables of each request, though the document was seen before", async () => {
    const query = "query Page($n: Int!) { dishes(first: $n) { nodes { ingredients { food { nutrients { tag } } } } } }";
    expect((await served.post(home.coordinator, query, { n: 1 })).errors).toEqual([]);
    expect((await served.post(home.coordinator, query, { n: 100 })).errors[0]?.extensions["code"]).toBe("QUERY_LIMIT");
    expect((await served.post(home.coordinator, query, { n: 2 })).errors).toEqual([]);
  });

  it("lists that are too long and inputs that are too deep are named, whatever they were meant for", async () => {
    const query = "mutation Stock($input: SetStockInput!) { setStock(input: $input) { __typename } }";
    const input = { idempotencyKey: "12345678", householdId: home.id, seenRevision: 1 };
    const long = await served.post(home.coordinator, query, { input: { ...input, entries: Array(10_001).fill(1) } });
    expect(long.errors[0]?.message).toBe("variables.input.entries has 10001 entries. Send at most 1000 at a time.");
    // Written by hand: no serializer goes that deep.
    const entries = `${"[".repeat(50_000)}${"]".repeat(50_000)}`;
    const response = await fetch(`${served.url}/graphql`, {
      method: "POST",
      headers: { "content-type": "application/json", authorization: await authorization(home.coordinator) },
      body: `{"query": ${JSON.stringify(query)}, "variables": {"input": {"entries": ${entries}}}}`,
    });
    expect(JSON.stringify(await response.json())).toContain("lies more than 20 levels deep");
  });

  it("a body of a million entries is too large to be read", async () => {
    const { errors } = await served.post(home.coordinator, "query Q($n: [Int!]) { me { person { id } } }", {
      n: Array(1_000_000).fill(1),
    });
    expect(errors.map(({ extensions }) => extensions["code"])).toEqual(["BAD_REQUEST"]);
  });
});
