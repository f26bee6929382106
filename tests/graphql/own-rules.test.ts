import { sentDocument, shutsOut } from "../support/sent-rules.js";
import { classId, localOf, schoolId, useServedApp, type Household, type Said } from "../support/served-app.js";
import { DAY, LOAD } from "./documents.js";

const served = useServedApp({ steps: 25_000 });
const FRIDAY = "2027-01-15";
const younger = { dateOfBirth: "2018-05-07" };

const SET = `id key layer title version confirmed withdrawn inForceFrom copyOf { name } differsFromSchool { rules { kind rule { key } fields { field } } }`;
const PAYLOAD = `__typename ... on UserError { message } ... on InvalidInput { issues { field problem fix } }
  ... on OwnRulesPayload { unchanged ruleSet { ${SET} } child { id } household { id revision ruleNotices { from text copy { key } schoolRuleSets { key } } } }`;
const KEEP = `mutation Keep($input: KeepOwnRulesInput!) { keepOwnRules(input: $input) { ${PAYLOAD} ... on DocumentRefused { issues { path line problem } } } }`;
const DROP = `mutation Drop($input: DropOwnRulesInput!) { dropOwnRules(input: $input) { ${PAYLOAD} ... on NothingThere { what } } }`;
const OWN = `query Own($id: ID!) { household(id: $id) { ruleNotices { from text child { name } copy { ${SET} } schoolRuleSets { key } }
  children { id ownRules { ${SET} } boxes(from: "${DAY}", to: "${FRIDAY}") { date state blockedBecause { kind text whoSaysSo { saidBy confirmed } } items { slot dish { key } } } } } }`;

interface SetSeen {
  readonly id: string;
  readonly key: string;
  readonly version: number;
  readonly confirmed: boolean;
  readonly withdrawn: boolean;
  readonly copyOf: { readonly name: string } | null;
  readonly differsFromSchool: {
    readonly rules: readonly {
      readonly kind: string;
      readonly rule: { readonly key: string };
      readonly fields: readonly { readonly field: string }[];
    }[];
  } | null;
}
interface HomeSeen {
  readonly ruleNotices: readonly {
    readonly from: string;
    readonly text: string;
    readonly child: { readonly name: string };
    readonly copy: SetSeen;
    readonly schoolRuleSets: readonly { readonly key: string }[];
  }[];
  readonly children: readonly {
    readonly id: string;
    readonly ownRules: readonly SetSeen[];
    readonly boxes: readonly {
      readonly date: string;
      readonly state: string;
      readonly blockedBecause: readonly {
        readonly text: string;
        readonly whoSaysSo: { readonly saidBy: string; readonly confirmed: boolean } | null;
      }[];
      readonly items: readonly { readonly slot: string; readonly dish: { readonly key: string } }[];
    }[];
  }[];
}
type Kept = Said & { readonly unchanged: boolean; readonly ruleSet: SetSeen };

const seen = async (person: string, id: string) =>
  (await served.ask<{ household: HomeSeen }>(person, OWN, { id })).household;
const keep = async (
  home: Household,
  document: string,
  more: Record<string, unknown> = {},
  childId = home.children[0],
) => (await home.change(KEEP, { childId, document, ...more })) as Kept;
const drop = async (home: Household, ruleSetId: string, from: string) =>
  (await home.change(DROP, { ruleSetId, from })) as Kept;
const blockedOn = ({ children }: HomeSeen) =>
  children[0]!.boxes.filter(({ state }) => state === "BLOCKED").map(({ date }) => date);
const ownDocument = (change: Partial<Parameters<typeof sentDocument>[0]> = {}) =>
  sentDocument({ key: "own", layer: "CHILD", rules: [shutsOut("no-kiwi", { kinds: ["kiwi"] })], ...change });

/** The child's other home reads along and packs nothing. */
async function withOtherHome(here: Household): Promise<Household> {
  const there = await served.household().found();
  const { addHome, owner } = served.inProcess.database;
  await addHome(localOf(here.children[0]!), localOf(there.id));
  await owner`update residence set since = '2027-06-01' where household_id = ${localOf(there.id)}`;
  return there;
}

describe("a family's own rules", () => {
  it("block what is planned against them in both homes; dropped, the boxes pass again and nothing is deleted", async () => {
    const here = await served.household().child().planned(DAY).found();
    const there = await withOtherHome(here);
    const main = (await seen(here.coordinator, here.id)).children[0]!.boxes[2]!;
    const dish = main.items.find(({ slot }) => slot === "MAIN")!.dish.key;
    const document = ownDocument({ rules: [shutsOut("not-this", { dishes: [dish] })] });
    // The other home keeps it: a child's own rules are the family's, not one kitchen's.
    const kept = await keep(there, document, {}, here.children[0]);
    expect(kept).toMatchObject({ __typename: "OwnRulesPayload", unchanged: false, ruleSet: { confirmed: true } });
    for (const home of [here, there]) {
      const now = await seen(home.coordinator, home.id);
      expect(blockedOn(now)).toEqual([main.date]);
      expect(now.children[0]!.ownRules).toMatchObject([
        { key: "own", version: 1, copyOf: null, differsFromSchool: null },
      ]);
      const [reason] = now.children[0]!.boxes.find(({ date }) => date === main.date)!.blockedBecause;
      expect(reason).toMatchObject({ whoSaysSo: { saidBy: "the family", confirmed: true } });
    }
    expect(await drop(here, kept.ruleSet.id, "2026-11-25")).toMatchObject({ ruleSet: { version: 2, withdrawn: true } });
    const after = await seen(here.coordinator, here.id);
    expect(blockedOn(after)).toEqual([]);
    expect(after.children[0]!.ownRules).toMatchObject([{ key: "own", version: 2, withdrawn: true }]);
    const versions = await served.ask<{ node: { versions: { version: number; rules: unknown[] }[] } }>(
      here.coordinator,
      "query V($id: ID!) { node(id: $id) { ... on RuleSet { versions { version rules { key } } } } }",
      { id: kept.ruleSet.id },
    );
    expect(versions.node.versions.map(({ version, rules }) => [version, rules.length])).toEqual([
      [2, 0],
      [1, 1],
    ]);
  });

  it("said again change nothing; a changed text under the same number is refused with its line", async () => {
    const home = await served.household().child().found();
    await keep(home, ownDocument());
    expect(await keep(home, ownDocument())).toMatchObject({ unchanged: true, ruleSet: { version: 1 } });
    const changed = await keep(home, ownDocument({ title: "Changed" }));
    expect(changed.__typename).toBe("DocumentRefused");
    expect(changed.issues.map(({ path, line }) => [path, line])).toEqual([
      ["version", 1],
      ["inForceFrom", 1],
    ]);
    const next = await keep(home, ownDocument({ title: "Changed", version: 2, inForceFrom: "2026-12-01" }));
    expect(next).toMatchObject({ unchanged: false, ruleSet: { version: 2 } });
  });

  it("are refused where they are for another layer, clash with the school's, or are no document at all", async () => {
    const home = await served.household().child().found();
    const layer = await keep(home, ownDocument({ layer: "SCHOOL" }));
    expect(layer).toMatchObject({ __typename: "DocumentRefused", issues: [{ path: "layer" }] });
    expect((await keep(home, "{")).__typename).toBe("DocumentRefused");
    // Under the key of a house rule its faults would block nothing.
    const houseRule = await keep(home, ownDocument({ key: "eaten-in-the-other-home" }));
    expect(houseRule).toMatchObject({ __typename: "DocumentRefused", issues: [{ path: "key" }] });
    // The upper school keeps confectionery out; a family cannot ask for it every day.
    const sweets = { matches: { anyOf: [{ groups: ["CONFECTIONERY"] }] }, counts: "ITEMS", per: "BOX", atLeast: 1 };
    const daily = await keep(
      home,
      ownDocument({ rules: [{ ...shutsOut("sweets-daily", {}), kind: "FREQUENCY", ...sweets }] }),
    );
    expect(daily).toMatchObject({ __typename: "DocumentRefused" });
    expect(daily.issues.map(({ problem }) => problem).join()).toContain("no-sweets");
    expect((await seen(home.coordinator, home.id)).children[0]!.ownRules).toEqual([]);
  });

  it("are nobody else's: a stranger, a school's administrator and another family's child find nothing", async () => {
    const home = await served.household().child().found();
    const kept = await keep(home, ownDocument());
    const stranger = await served.household().child().found();
    for (const person of [stranger.coordinator, "demo:ruth"]) {
      const { node } = await served.ask<{ node: unknown }>(person, "query N($id: ID!) { node(id: $id) { id } }", {
        id: kept.ruleSet.id,
      });
      expect(node).toBeNull();
    }
    expect((await keep(stranger, ownDocument(), {}, home.children[0])).__typename).toBe("ChildNotFound");
    expect((await drop(stranger, kept.ruleSet.id, "2027-01-01")).__typename).toBe("NothingThere");
    // A school's rule set is no family's to drop.
    const ofSchool = await served.ask<{ school: { ruleSets: { id: string }[] } }>(
      home.coordinator,
      "query S($id: ID!) { school(id: $id) { ruleSets { id } } }",
      { id: schoolId("upper") },
    );
    expect((await drop(home, ofSchool.school.ruleSets[0]!.id, "2027-01-01")).__typename).toBe("NothingThere");
    const past = await drop(home, kept.ruleSet.id, "2026-11-24");
    expect(past.issues.map(({ field }) => field)).toEqual(["from"]);
    const twice = [await drop(home, kept.ruleSet.id, "2026-11-25"), await drop(home, kept.ruleSet.id, "2026-11-25")];
    expect(twice.map(({ __typename }) => __typename)).toEqual(["OwnRulesPayload", "InvalidInput"]);
  });
});

describe("a family's copy of a school's rules", () => {
  const copied = [
    shutsOut("no-fizzy", { processing: ["FIZZY_DRINK"] }),
    shutsOut("no-crisps-at-all", { kinds: ["crisps"] }),
    shutsOut("no-kiwi", { kinds: ["kiwi"] }),
  ];

  it("is not confirmed; when the school loads its own, the family is told and shown what differs, and both hold", async () => {
    const home = await served.household().child(younger, "class-4").found();
    const there = await withOtherHome(home);
    const copy = await keep(home, ownDocument({ key: "copy", rules: copied }), { copyOfSchoolId: schoolId("primary") });
    expect(copy.ruleSet).toMatchObject({ confirmed: false, copyOf: { name: "Quillbrook Primary School" } });
    const loaded = await served.send("demo:ruth", LOAD, {
      schoolId: schoolId("primary"),
      schoolClassId: classId("class-4"),
      seenRevision: 0,
      document: sentDocument({
        key: "beside-a-copy",
        layer: "CLASS",
        inForceFrom: "2027-02-01",
        rules: [
          // The same under another name and in other words; the same name with another content; one that is new.
          shutsOut("crisps", { kinds: ["crisps"] }, { says: "Please leave crisps at home." }),
          shutsOut("no-kiwi", { kinds: ["kiwi", "grape"] }),
          shutsOut("no-gum", { kinds: ["chewing-gum"] }),
        ],
      }),
    });
    expect(loaded.__typename).toBe("LoadRuleSetPayload");
    for (const { coordinator, id } of [home, there]) {
      const now = await seen(coordinator, id);
      const notice = now.ruleNotices.find(({ copy: { key } }) => key === "copy")!;
      expect(notice.child.name).toBe("Ari");
      expect(notice.schoolRuleSets.map(({ key }) => key)).toContain("beside-a-copy");
      const changes = notice.copy.differsFromSchool!.rules;
      const kindOf = (key: string) => changes.filter(({ rule }) => rule.key === key).map(({ kind }) => kind);
      expect(["crisps", "no-crisps-at-all"].flatMap(kindOf)).toEqual([]);
      expect(kindOf("no-kiwi")).toEqual(["CHANGED"]);
      expect(kindOf("no-gum")).toEqual(["ADDED"]);
      expect(changes.find(({ rule }) => rule.key === "no-kiwi")!.fields).toEqual([{ field: "matches" }]);
    }
    await drop(home, copy.ruleSet.id, "2026-11-25");
    expect((await seen(home.coordinator, home.id)).ruleNotices).toEqual([]);
  });

  it("is of a school of the child, and stays the copy of that school", async () => {
    const home = await served.household().child().found();
    const document = ownDocument({ key: "copy" });
    expect((await keep(home, document, { copyOfSchoolId: schoolId("primary") })).__typename).toBe("SchoolNotFound");
    expect((await keep(home, document, { copyOfSchoolId: "nonsense" })).__typename).toBe("SchoolNotFound");
    await keep(home, document);
    const next = ownDocument({ key: "copy", version: 2, inForceFrom: "2026-12-01" });
    const moved = await keep(home, next, { copyOfSchoolId: schoolId("upper") });
    expect(moved.issues.map(({ field }) => field)).toEqual(["copyOfSchoolId"]);
  });
});
