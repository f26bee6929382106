import { newKey } from "../support/app.js";
import { documentOf, noKiwi, textOf, yaml } from "../support/rule-documents.js";
import { classId, localOf, schoolId, useServedApp } from "../support/served-app.js";
import { DAY } from "./documents.js";

const served = useServedApp();
const RUTH = "demo:ruth";
const COUNTY = "Invented County";

const REFUSED = `__typename ... on UserError { message } ... on InvalidInput { issues { field problem fix } }`;
const ISSUES = "{ path line problem expected nearest }";
const LOADED = `${REFUSED} ... on DocumentRefused { issues ${ISSUES} warnings ${ISSUES} } ... on RevisionPassed { currentRevision }
  ... on LoadRuleSetPayload { unchanged ruleSet { id key version withdrawn document } }`;
const LOAD = `mutation M($input: LoadRuleSetInput!) { loadRuleSet(input: $input) { ${LOADED} } }`;
const WITHDRAW = `mutation M($input: WithdrawRuleSetInput!) { withdrawRuleSet(input: $input) { ${REFUSED} ... on RevisionPassed { currentRevision }
  ... on LoadRuleSetPayload { ruleSet { id version withdrawn inForceFrom rules { key } } } } }`;
const ADOPT = `mutation M($input: AdoptRuleSetInput!) { adoptRuleSet(input: $input) { ${REFUSED} ... on SchoolPayload { school { id } } } }`;
const COUNTS = `${REFUSED} ... on RuleSetCounts { from until all { rule held boxes children weeks } rules { rule held boxes children weeks } ownDishes notCounted }`;
const IMPACT = `mutation M($input: CountRuleSetImpactInput!) { countRuleSetImpact(input: $input) { ${COUNTS} ... on DocumentRefused { issues ${ISSUES} } } }`;
const COMPLIANCE = `mutation M($input: CountRuleSetComplianceInput!) { countRuleSetCompliance(input: $input) { ${COUNTS} } }`;
const CHECK = `query C($input: RuleSetDocumentInput!) { ruleSetCheck(input: $input) { ${REFUSED} ... on RuleSetCheck { errors ${ISSUES} warnings ${ISSUES}
  comparedWith unchanged difference { fields { field before after } rules { kind rule { key } fields { field } } } } } }`;

const here = { schoolId: schoolId("primary") };
// What a mutation answers is as many shapes as there are documents.
type Answer = Record<string, unknown> & { readonly __typename: string };
const send = (person: string, mutation: string, input: object) =>
  served.send(person, mutation, input as Record<string, unknown>) as unknown as Promise<Answer>;
const load = (text: string, seenRevision = 0, input: object = {}, person = RUTH) =>
  send(person, LOAD, { ...here, seenRevision, document: text, ...input });
const check = async (text: string, input: object = {}, person = RUTH) =>
  (await served.ask<{ ruleSetCheck: Answer }>(person, CHECK, { input: { ...here, document: text, ...input } }))
    .ruleSetCheck;

const keyed = (key: string, change: object = {}) => textOf({ key, ...change });
const idOf = (loaded: Answer): string => (loaded["ruleSet"] as { id: string }).id;

/** Somebody appointed by hand to a jurisdiction. */
async function appointedTo(jurisdiction: string): Promise<string> {
  const subject = served.newcomer();
  const { database } = served.inProcess;
  const person = await database.db.signIn(subject, subject);
  await database.owner`insert into appointment (person_id, jurisdiction) values (${person}, ${jurisdiction})`;
  return subject;
}

describe("checking a document", () => {
  it("says every complaint with its line, for JSON and YAML, and stores nothing", async () => {
    const before = await served.everyRow();
    expect(await check(yaml)).toMatchObject({
      errors: [],
      comparedWith: null,
      unchanged: false,
      difference: { rules: [{ kind: "ADDED", rule: { key: "no-kiwi" } }] },
    });
    expect((await check(yaml.replace("EXCLUDE", "EXCLUD")))["errors"]).toMatchObject([
      { path: "rules.0.kind", line: 12, nearest: ["EXCLUDE", "ONLY", "SERVING"] },
    ]);
    expect((await check("{"))["errors"]).toMatchObject([{ path: "", line: 1 }]);
    expect(await served.everyRow()).toBe(before);
  });

  it("is for the school's administrator", async () => {
    expect((await check(yaml, {}, "demo:ana")).__typename).toBe("NotAppointed");
    expect((await check(yaml, { schoolId: schoolId("upper") })).__typename).toBe("NotAppointed");
    expect((await check(yaml, { schoolId: "nonsense" })).__typename).toBe("SchoolNotFound");
    expect((await check(yaml, { schoolId: null, jurisdiction: "England" })).__typename).toBe("NotAppointed");
    expect(await check(yaml, { jurisdiction: "England" })).toMatchObject({
      __typename: "InvalidInput",
      issues: [{ field: "jurisdiction" }],
    });
    expect(await check(yaml, { schoolClassId: classId("year-8") })).toMatchObject({
      __typename: "InvalidInput",
      issues: [{ field: "schoolClassId" }],
    });
  });
});

describe("loading", () => {
  it("takes YAML, and the same again under another key loads nothing", async () => {
    const text = yaml.replace("house-rules", "written-by-hand");
    const first = await load(text);
    expect(first).toMatchObject({ __typename: "LoadRuleSetPayload", unchanged: false, ruleSet: { version: 1 } });
    expect(JSON.parse((first["ruleSet"] as { document: string }).document)).toEqual(
      documentOf({ key: "written-by-hand" }),
    );
    const again = await load(keyed("written-by-hand"), 1);
    expect(again).toMatchObject({ unchanged: true, ruleSet: { id: idOf(first), version: 1 } });
  });

  it("refused leaves nothing behind", async () => {
    const before = await served.everyRow();
    for (const text of [
      "",
      "{",
      keyed("half", { rules: [noKiwi, noKiwi] }),
      keyed("half", { version: 2 }),
      keyed("half", { inForceFrom: "0000-01-01" }),
    ])
      expect((await load(text)).__typename).toBe("DocumentRefused");
    expect(await load(keyed("half"), 3)).toMatchObject({ __typename: "RevisionPassed", currentRevision: 0 });
    expect((await load(keyed("half"), 0, {}, "demo:ana")).__typename).toBe("NotAppointed");
    expect((await load(keyed("half"), 0, { schoolId: schoolId("upper") })).__typename).toBe("NotAppointed");
    expect(await served.everyRow()).toBe(before);
  });

  it("by two administrators at the same time makes one version", async () => {
    const other = await appointedTo("England");
    const texts = [keyed("raced"), keyed("raced", { title: "The other's" })];
    const answers = await Promise.all([load(texts[0]!), load(texts[1]!, 0, {}, other)]);
    // Who comes second is told that the version has passed, or already while looking that its number is taken.
    const second = answers.map(({ __typename }) => __typename).filter((kind) => kind !== "LoadRuleSetPayload");
    expect(second).toHaveLength(1);
    expect(["RevisionPassed", "DocumentRefused"]).toContain(second[0]);
    const [row] = await served.inProcess.database.owner<{ count: number }[]>`
      select count(*)::int as count from rule_set_version v join rule_set r on r.id = v.rule_set_id where r.key = 'raced'`;
    expect(row!.count).toBe(1);
  });

  it("version after version is listed with what each changed, newest first", async () => {
    const first = await load(keyed("grown"));
    await load(keyed("grown", { version: 2, rules: [noKiwi, { ...noKiwi, id: "no-kiwi-juice" }] }), 1);
    const { node } = await served.ask<{ node: { versions: unknown[] } }>(
      served.newcomer(),
      "query N($id: ID!) { node(id: $id) { ... on RuleSet { versions { version difference { rules { kind rule { key } } } } } } }",
      { id: idOf(first) },
    );
    expect(node.versions).toEqual([
      { version: 2, difference: { rules: [{ kind: "ADDED", rule: { key: "no-kiwi-juice" } }] } },
      { version: 1, difference: { rules: [{ kind: "ADDED", rule: { key: "no-kiwi" } }] } },
    ]);
  });
});

describe("withdrawing", () => {
  it("is a newer version that asks for nothing, and once is enough", async () => {
    const ruleSetId = idOf(await load(keyed("short-lived")));
    const withdraw = (input: object = {}, person = RUTH) =>
      send(person, WITHDRAW, { ruleSetId, seenRevision: 1, from: "2027-02-01", ...input });
    expect((await withdraw({}, "demo:ana")).__typename).toBe("NotAppointed");
    expect(await withdraw({ seenRevision: 4 })).toMatchObject({ __typename: "RevisionPassed", currentRevision: 1 });
    expect(await withdraw({ from: "2026-11-24" })).toMatchObject({
      __typename: "InvalidInput",
      issues: [{ field: "from" }],
    });
    expect((await withdraw({ ruleSetId: "nonsense" })).__typename).toBe("NothingThere");
    expect(await withdraw()).toMatchObject({
      ruleSet: { version: 2, withdrawn: true, inForceFrom: "2027-02-01", rules: [] },
    });
    expect(await withdraw({ seenRevision: 2 })).toMatchObject({
      __typename: "InvalidInput",
      issues: [{ field: "ruleSetId" }],
    });
  });
});

describe("a jurisdiction's rule set", () => {
  it("that does not cover food from home holds only in the school that adopts it", async () => {
    const person = await appointedTo(COUNTY);
    const text = keyed("county", {
      layer: "JURISDICTION",
      jurisdiction: COUNTY,
      coversFoodFromHome: false,
      inForceFrom: "2026-09-01",
    });
    expect((await load(text, 0, { schoolId: null, jurisdiction: COUNTY })).__typename).toBe("NotAppointed");
    const ruleSetId = idOf(await load(text, 0, { schoolId: null, jurisdiction: COUNTY }, person));
    const adopt = (adopted: boolean, by = RUTH) => send(by, ADOPT, { ...here, ruleSetId, adopted });
    expect((await adopt(true, "demo:ana")).__typename).toBe("NotAppointed");
    const home = await served.household().child({ dateOfBirth: "2018-05-07" }, "class-4").found();
    const planned = async () => {
      expect((await home.plan(DAY)).__typename).toBe("WeekPayload");
      const { week } = await served.ask<{ week: { plan: { origin: { ruleSetVersions: string[] } } } }>(
        home.coordinator,
        `query W($id: ID!) { week(householdId: $id, date: "${DAY}") { plan { origin { ruleSetVersions } } } }`,
        { id: home.id },
      );
      return week.plan.origin.ruleSetVersions.includes("county@1");
    };
    expect(await planned()).toBe(false);
    expect((await adopt(true)).__typename).toBe("SchoolPayload");
    expect(await planned()).toBe(true);
    expect((await adopt(false)).__typename).toBe("SchoolPayload");
    expect(await planned()).toBe(false);
  });
});

describe("counting", () => {
  it("answers in numbers only, none below five, and is noted", async () => {
    const home = await served.household().child({ dateOfBirth: "2018-05-07" }, "class-4").planned(DAY).found();
    const week = (await home.week(DAY))!;
    const agreed = await served.send(
      home.coordinator,
      "mutation M($input: AgreeWeekInput!) { agreeWeek(input: $input) { __typename } }",
      { weekId: week.id, seenRevision: week.revision },
    );
    expect(agreed.__typename).toBe("WeekPayload");
    const fewest = {
      ...noKiwi,
      id: "much",
      kind: "NUTRIENT",
      matches: undefined,
      nutrient: "ENERC_KCAL",
      per: "BOX",
      atLeast: 9000,
    };
    const text = keyed("counted", { rules: [fewest, { ...noKiwi, level: "ADVISE" }] });
    const impact = await send(RUTH, IMPACT, { ...here, document: text });
    expect(impact).toMatchObject({
      __typename: "RuleSetCounts",
      from: "2027-01-11",
      // Five boxes hold the rule; how many of them one child's break is not told.
      all: { rule: null, held: null, boxes: null, children: null, weeks: null },
      rules: [{ rule: "much", held: null, boxes: null, children: null }],
      notCounted: ["no-kiwi"],
    });
    expect(JSON.stringify(impact)).not.toContain("Ari");
    const ruleSetId = idOf(await load(text));
    const comply = (input: object = {}, person = RUTH) =>
      send(person, COMPLIANCE, { ruleSetId, from: DAY, until: "2027-01-15", ...input });
    expect(await comply()).toMatchObject({ all: { held: null, boxes: null, children: null } });
    expect(await comply({ from: "2027-03-01", until: "2027-03-05" })).toMatchObject({
      all: { held: null, boxes: null },
    });
    expect((await comply({}, "demo:ana")).__typename).toBe("NotAppointed");
    expect(await comply({ until: "2027-01-10" })).toMatchObject({
      __typename: "InvalidInput",
      issues: [{ field: "until" }],
    });
    expect((await send("demo:ana", IMPACT, { ...here, document: text })).__typename).toBe("NotAppointed");
    expect((await send(RUTH, IMPACT, { ...here, document: "{" })).__typename).toBe("DocumentRefused");
    const [row] = await served.inProcess.database.owner<{ count: number }[]>`
      select count(*)::int as count from audit_entry where action = 'IMPACT_COUNTED' and school_id = ${localOf(here.schoolId)}`;
    expect(row!.count).toBe(3);
  });

  it("with a key that was used answers as before", async () => {
    const input = { ...here, document: keyed("counted-again"), idempotencyKey: newKey() };
    const first = await send(RUTH, IMPACT, input);
    expect(first.__typename).toBe("RuleSetCounts");
    expect(await send(RUTH, IMPACT, input)).toEqual(first);
  });
});
