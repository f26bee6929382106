import { sentDocument, shutsOut } from "../support/sent-rules.js";
import { classId, localOf, schoolId, useServedApp, type Household, type Said } from "../support/served-app.js";
import { DAY, LOAD } from "./documents.js";

const served = useServedApp({ steps: 25_000 });
const [monday, tuesday, wednesday] = ["2027-01-11", "2027-01-12", "2027-01-13"] as const;
const FRIDAY = "2027-01-15";
const younger = { dateOfBirth: "2018-05-07" };

const REFUSALS = `__typename ... on UserError { message } ... on InvalidInput { issues { field problem fix } }`;
const EXEMPTION = `id rule says from until note { clinician note } ruleSet { key }`;
const RECORD = `mutation Record($input: RecordExemptionInput!) { recordExemption(input: $input) { ${REFUSALS} ... on ExemptionRefused { reason says }
  ... on ExemptionPayload { exemption { ${EXEMPTION} } } } }`;
const END = `mutation End($input: EndExemptionInput!) { endExemption(input: $input) { ${REFUSALS} ... on ExemptionPayload { exemption { ${EXEMPTION} } } } }`;
const SEEN = `query Seen($id: ID!) { household(id: $id) { children { exemptions { ${EXEMPTION} } boxes(from: "${DAY}", to: "${FRIDAY}") { date state
  compliance { rules { state date whoSaysSo { rule { key } } } } items { slot dish { key } } } } } }`;
const CAUTIONS = `query C($id: ID!) { week(householdId: $id, date: "${DAY}") { plan { cautions { kind text child { name } whoSaysSo { saidBy rule { key says } } }
  rulesObeyed { dates whoSaysSo { rule { key } } } boxes { date card { cautions } } } } }`;

type Recorded = Said & {
  readonly reason: string;
  readonly says: string | null;
  readonly exemption: { readonly id: string; readonly until: string; readonly note: unknown } | null;
};
interface ChildSeen {
  readonly exemptions: readonly { readonly id: string; readonly until: string; readonly note: unknown }[];
  readonly boxes: readonly {
    readonly date: string;
    readonly state: string;
    readonly compliance: {
      readonly rules: readonly { state: string; date: string; whoSaysSo: { rule: { key: string } } }[];
    };
    readonly items: readonly { readonly slot: string; readonly dish: { readonly key: string } }[];
  }[];
}
const seen = async ({ coordinator, id }: Household) =>
  (await served.ask<{ household: { children: readonly ChildSeen[] } }>(coordinator, SEEN, { id })).household
    .children[0]!;
const blockedOn = ({ boxes }: ChildSeen) => boxes.filter(({ state }) => state === "BLOCKED").map(({ date }) => date);

let loads = 0;
/** Loads a rule set of its own for class 4 and answers its ID; it ends with the week, so that no other test meets it. */
async function load(rules: readonly Record<string, unknown>[], dates: Record<string, unknown> = {}) {
  loads += 1;
  const loaded = (await served.send("demo:ruth", LOAD, {
    schoolId: schoolId("primary"),
    schoolClassId: classId("class-4"),
    seenRevision: 0,
    document: sentDocument({ key: `exempt-${loads}`, layer: "CLASS", rules, inForceUntil: FRIDAY, ...dates }),
  })) as Said & { ruleSet: { id: string } };
  expect(loaded.__typename).toBe("LoadRuleSetPayload");
  return loaded.ruleSet.id;
}
/** One rule set for all that only has to be refused. */
let ruleSetId: string;
beforeAll(async () => {
  ruleSetId = await load([
    shutsOut("no-lupin", { allergens: ["LUPIN"] }),
    shutsOut("no-peanut-butter", { kinds: ["peanut"] }),
    shutsOut("either", { kinds: ["kiwi"] }, { matches: { anyOf: [{ kinds: ["kiwi"] }, { allergens: ["CELERY"] }] } }),
    shutsOut(
      "apart",
      {},
      {
        kind: "TOGETHER",
        matches: undefined,
        first: { anyOf: [{ kinds: ["kiwi"] }] },
        second: { anyOf: [{ allergens: ["LUPIN"] }] },
      },
    ),
    shutsOut("no-kiwi", { kinds: ["kiwi"] }),
  ]);
});
const note = { clinician: "Dr. A. Example", note: "Needs more energy in small portions." };
const record = async (home: Household, input: Record<string, unknown>, child = home.children[0]) =>
  (await home.change(RECORD, {
    childId: child,
    ruleSetId,
    rule: "no-kiwi",
    from: monday,
    until: FRIDAY,
    ...note,
    ...input,
  })) as Recorded;

async function withOtherHome(here: Household): Promise<Household> {
  const there = await served.household().found();
  const { addHome, owner } = served.inProcess.database;
  await addHome(localOf(here.children[0]!), localOf(there.id));
  await owner`update residence set since = '2027-06-01' where household_id = ${localOf(there.id)}`;
  return there;
}

describe("an exemption on a clinician's note", () => {
  it("lets the boxes of its days pass, tells the plan's reader, and holds again once it is ended", async () => {
    const here = await served.household().child(younger, "class-4").planned(DAY).found();
    const there = await withOtherHome(here);
    const mains = (await seen(here)).boxes.map(({ items }) => items.find(({ slot }) => slot === "MAIN")!.dish.key);
    const rule = { rule: "not-these-mains" };
    const id = await load([shutsOut(rule.rule, { dishes: mains })]);
    expect(blockedOn(await seen(here))).toHaveLength(5);
    const recorded = await record(here, { ...rule, ruleSetId: id, from: tuesday, until: wednesday });
    expect(recorded).toMatchObject({ exemption: { ...rule, from: tuesday, until: wednesday, note } });
    expect(blockedOn(await seen(here))).toEqual([monday, "2027-01-14", FRIDAY]);
    const kept = (await seen(here)).boxes[1]!.compliance.rules.filter((row) => row.whoSaysSo.rule.key === rule.rule);
    expect(kept).toMatchObject([{ state: "NOT_APPLICABLE", date: tuesday }]);
    // The other home knows that the rule rests, and not why.
    const [theirs] = (await seen(there)).exemptions;
    expect(theirs).toMatchObject({ id: recorded.exemption!.id, note: null });

    expect((await here.plan(DAY)).__typename).toBe("WeekPayload");
    interface Told {
      readonly cautions: readonly { kind: string; text: string; whoSaysSo: { rule: { key: string } } | null }[];
      readonly rulesObeyed: readonly { dates: readonly string[]; whoSaysSo: { rule: { key: string } } }[];
      readonly boxes: readonly { date: string; card: { cautions: readonly string[] } }[];
    }
    const { plan } = (await served.ask<{ week: { plan: Told } }>(here.coordinator, CAUTIONS, { id: here.id })).week;
    const caution = plan.cautions.find(({ kind }) => kind === "RULE_RESTS")!;
    expect(caution).toMatchObject({ whoSaysSo: { saidBy: "Quillbrook Primary School", rule: { key: rule.rule } } });
    expect(caution.text).toMatch(/clinician's note .* Ari .*The school should know of it/);
    const obeyed = plan.rulesObeyed.find(({ whoSaysSo }) => whoSaysSo.rule.key === rule.rule)!;
    expect(obeyed.dates).toEqual([monday, "2027-01-14", FRIDAY]);
    for (const { date, card } of plan.boxes)
      expect(card.cautions.includes(caution.text)).toBe([tuesday, wednesday].includes(date as typeof tuesday));

    // Ended by the other home: safety's direction is open to both.
    const ended = (await there.change(END, { exemptionId: recorded.exemption!.id, from: wednesday })) as Recorded;
    expect(ended).toMatchObject({ exemption: { until: tuesday, note: null } });
    expect((await seen(here)).exemptions).toMatchObject([{ until: tuesday, note }]);
    const after = await seen(here);
    const onWednesday = after.boxes[2]!.items.find(({ slot }) => slot === "MAIN")!.dish.key;
    expect(blockedOn(after)).toEqual(mains.includes(onWednesday) ? [wednesday] : []);
  });

  it("is never given from a rule that keeps an allergen out, in whichever clause or by whichever word", async () => {
    const home = await served.household().child(younger, "class-4").found();
    const before = await served.everyRow();
    for (const rule of ["no-lupin", "no-peanut-butter", "either", "apart"])
      expect(await record(home, { rule })).toMatchObject({ __typename: "ExemptionRefused", reason: "NAMES_ALLERGEN" });
    expect(await served.everyRow()).toBe(before);
    expect((await record(home, {})).__typename).toBe("ExemptionPayload");
  });

  it("is not given from a family's own rule, nor from one that does not hold for the child then", async () => {
    const home = await served.household().child(younger, "class-4").found();
    const own = (await home.change(
      "mutation K($input: KeepOwnRulesInput!) { keepOwnRules(input: $input) { ... on OwnRulesPayload { ruleSet { id } } } }",
      {
        childId: home.children[0],
        document: sentDocument({ layer: "CHILD", rules: [shutsOut("mine", { kinds: ["fig"] })] }),
      },
    )) as unknown as { ruleSet: { id: string } };
    const refusedFor = async (input: Record<string, unknown>) => (await record(home, input)).reason;
    expect(await refusedFor({ ruleSetId: own.ruleSet.id, rule: "mine" })).toBe("FAMILYS_OWN");
    expect(await refusedFor({ rule: "no-such-rule" })).toBe("DOES_NOT_HOLD");
    expect(await refusedFor({ ruleSetId: "nonsense" })).toBe("DOES_NOT_HOLD");
    expect(await refusedFor({ from: "2027-01-18", until: "2027-02-18" })).toBe("DOES_NOT_HOLD");
    const elsewhere = await served.household().child().found();
    expect((await record(elsewhere, {})).reason).toBe("DOES_NOT_HOLD");
  });

  it("has real days within a year, and words of whoever wrote it", async () => {
    const home = await served.household().child(younger, "class-4").found();
    const fieldsOf = async (input: Record<string, unknown>) =>
      (await record(home, input)).issues.map(({ field }) => field);
    expect(await fieldsOf({ until: "2027-01-10" })).toEqual(["until"]);
    expect(await fieldsOf({ until: "2028-01-12" })).toEqual(["until"]);
    expect(await fieldsOf({ from: "2026-10-01", until: "2026-11-24" })).toEqual(["until"]);
    expect(await fieldsOf({ clinician: "", note: "" })).toEqual(["clinician", "note"]);
    expect((await record(home, { until: "2028-01-11" })).__typename).toBe("ExemptionPayload");
    expect(await fieldsOf({})).toEqual(["from"]);
    const { id } = (await seen(home)).exemptions[0]!;
    const end = async (from: string) => (await home.change(END, { exemptionId: id, from })) as Recorded;
    expect((await end("2026-11-24")).issues.map(({ field }) => field)).toEqual(["from"]);
    expect((await end("2028-01-12")).issues.map(({ field }) => field)).toEqual(["from"]);
    // Before it has begun it is taken back altogether.
    expect((await end("2026-12-01")).exemption).toBeNull();
    expect((await seen(home)).exemptions).toEqual([]);
    expect((await end("2026-12-01")).__typename).toBe("NothingThere");
  });

  it("is nobody's to give or to end but the child's own homes'", async () => {
    const home = await served.household().child(younger, "class-4").carer("COOK").found();
    const stranger = await served.household().found();
    const { exemption } = await record(home, {});
    expect((await record(stranger, {}, home.children[0])).__typename).toBe("ChildNotFound");
    const end = { exemptionId: exemption!.id, from: monday };
    expect((await stranger.change(END, end)).__typename).toBe("NothingThere");
    expect((await home.change(END, end, home.carers.COOK)).__typename).toBe("NotPermitted");
    expect((await seen(home)).exemptions).toHaveLength(1);
  });
});
