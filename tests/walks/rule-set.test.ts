/** The README's rule set, changed: looked at, counted, loaded, and in the next plan of a household that is held to it. */
import { readFileSync } from "node:fs";
import { parse, stringify } from "yaml";
import type { RuleSetDocument } from "../../shared/rule-set.js";
import { AGREE, DAY, LOAD } from "../graphql/documents.js";
import { schoolId, useServedApp, type Household } from "../support/served-app.js";

const served = useServedApp();
const RUTH = "demo:ruth";
const example = readFileSync("shared/examples/rule-set.yaml", "utf8");
const HOMES = 5;

const CHECK = `query Check($input: RuleSetDocumentInput!) { ruleSetCheck(input: $input) { ... on UserError { message }
  ... on RuleSetCheck { errors { path line problem } warnings { path } comparedWith unchanged
    difference { fields { field } rules { kind rule { key } fields { field before after } } } } } }`;
const IMPACT = `mutation Impact($input: CountRuleSetImpactInput!) { countRuleSetImpact(input: $input) { __typename ... on UserError { message }
  ... on RuleSetCounts { from all { held boxes children weeks } rules { rule boxes children } notCounted } } }`;
const VERDICT = `query Why($id: ID!, $dish: String!) { household(id: $id) { children { id
  verdicts(date: "2027-01-12", dish: $dish) { ... on Verdicts { places { allowed exclusion { kind text source whoSaysSo { saidBy rule { key } ruleSet { key version layer } } } } } } } } }`;
const OBEYED = `query Obeyed($id: ID!) { week(householdId: $id, date: "${DAY}") { plan { origin { ruleSetVersions } rulesObeyed { dates whoSaysSo { rule { key } ruleSet { version } } } } } }`;

const mainsOf = async (home: Household) =>
  (await home.week(DAY))!.plan.boxes.flatMap(({ date, items }) =>
    items.flatMap(({ slot, dish }) => (slot === "MAIN" ? [{ date, dish: dish.key }] : [])),
  );

it("goes from the office's file through check, impact and load into a household's next plan, which says so", async () => {
  const ask = async (document: string) =>
    (await served.ask<{ ruleSetCheck: any }>(RUTH, CHECK, { input: { schoolId: schoolId("primary"), document } }))
      .ruleSetCheck;
  const load = (document: string, seenRevision: number): Promise<any> =>
    served.send(RUTH, LOAD, { schoolId: schoolId("primary"), seenRevision, document });

  // As it stands in the README.
  expect(await ask(example)).toMatchObject({ errors: [], comparedWith: null, unchanged: false });
  expect(await load(example, 0)).toMatchObject({ __typename: "LoadRuleSetPayload", ruleSet: { version: 1 } });
  const homes: Household[] = [];
  for (let at = 0; at < HOMES; at += 1) {
    const home = await served.household().child({ dateOfBirth: "2018-05-07" }, "class-4").planned(DAY).found();
    const { id, revision } = (await home.week(DAY))!;
    const agreed = await served.send(home.coordinator, AGREE, { weekId: id, seenRevision: revision });
    expect(agreed.__typename).toBe("WeekPayload");
    homes.push(home);
  }

  // The office takes Tuesday's mains of these five off the list, and a slip of the pen is found first.
  const mains = await Promise.all(
    homes.map(async (home) => (await mainsOf(home)).find(({ date }) => date === "2027-01-12")!.dish),
  );
  const next: RuleSetDocument = parse(example);
  next.version = 2;
  next.rules.push({
    id: "off-the-list",
    kind: "EXCLUDE",
    level: "FORBID",
    says: "These mains made a mess of the hall.",
    source: "own rule of an invented school",
    shortWeek: "PRORATE",
    matches: { anyOf: [{ dishes: [...new Set(mains)] }] },
  });
  const slip = stringify(next).replace("kind: EXCLUDE", "kind: EXCLUD");
  const { errors } = await ask(slip);
  expect(errors).toHaveLength(1);
  expect(slip.split("\n")[errors[0].line - 1]).toContain("EXCLUD");
  expect(await load(slip, 1)).toMatchObject({ __typename: "DocumentRefused" });

  const document = stringify(next);
  const check = await ask(document);
  expect(check).toMatchObject({ errors: [], comparedWith: 1, unchanged: false });
  expect(check.difference).toEqual({
    fields: [],
    rules: [{ kind: "ADDED", rule: { key: "off-the-list" }, fields: [] }],
  });

  const broken = (await Promise.all(homes.map(mainsOf))).map((list) => list.filter(({ dish }) => mains.includes(dish)));
  const impact: any = await served.send(RUTH, IMPACT, { schoolId: schoolId("primary"), document });
  expect(impact.all).toMatchObject({ boxes: broken.flat().length, children: HOMES, weeks: HOMES });
  expect(impact.rules).toContainEqual({ rule: "off-the-list", boxes: broken.flat().length, children: HOMES });
  expect(JSON.stringify(impact)).not.toContain("Ari");

  expect(await load(document, 1)).toMatchObject({ ruleSet: { version: 2 } });
  const [home] = homes as [Household];
  const blocked = (await home.week(DAY))!.plan.boxes.filter(({ state }) => state === "BLOCKED").map(({ date }) => date);
  expect(blocked).toEqual(broken[0]!.map(({ date }) => date));

  // The next plan obeys it and says so.
  expect((await home.plan(DAY, { replanAgreed: true })).__typename).toBe("WeekPayload");
  const after = await mainsOf(home);
  expect(after.map(({ dish }) => dish).filter((dish) => mains.includes(dish))).toEqual([]);
  const obeyed = await served.ask<any>(home.coordinator, OBEYED, { id: home.id });
  expect(obeyed.week.plan.origin.ruleSetVersions).toContain("quillbrook-primary-spring@2");
  const held = obeyed.week.plan.rulesObeyed.find(({ whoSaysSo }: any) => whoSaysSo.rule.key === "off-the-list");
  expect(held).toMatchObject({ whoSaysSo: { ruleSet: { version: 2 } } });
  expect(held.dates).toHaveLength(5);
  const why = await served.ask<any>(home.coordinator, VERDICT, {
    id: home.id,
    child: home.children[0],
    dish: mains[0],
  });
  const places = why.household.children[0].verdicts.places as any[];
  expect(places.map(({ allowed }) => allowed)).toEqual(places.map(() => false));
  expect(places[0].exclusion).toMatchObject({
    kind: "RULE",
    source: "own rule of an invented school",
    whoSaysSo: {
      saidBy: "Quillbrook Primary School",
      rule: { key: "off-the-list" },
      ruleSet: { key: "quillbrook-primary-spring", version: 2, layer: "SCHOOL" },
    },
  });

  // Sent again, nothing is loaded twice.
  expect(await load(document, 2)).toMatchObject({
    __typename: "LoadRuleSetPayload",
    unchanged: true,
    ruleSet: { version: 2 },
  });
});

test("the README shows the file that the walk begins with", () => {
  const shown = readFileSync("README.md", "utf8")
    .split("<!-- example:rule-set -->")[1]
    ?.split("<!-- /example:rule-set -->")[0];
  expect(shown?.replace(/^\s*```\w*\n/, "").replace(/```\s*$/, "")).toBe(example);
});
