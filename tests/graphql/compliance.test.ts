import { sentDocument, shutsOut } from "../support/sent-rules.js";
import { localOf, useServedApp, type Household } from "../support/served-app.js";
import { DAY } from "./documents.js";

const served = useServedApp({ steps: 25_000 });
const FRIDAY = "2027-01-15";
const younger = { dateOfBirth: "2018-05-07" };

const FINDING = `state date found atLeast atMost unit text foods { key } place { breakKey slot place name }
  whoSaysSo { saidBy confirmed rule { key } ruleSet { key layer version inForceFrom } school { name } }`;
const COMPLIANCE = `compliance { totals { met notMet notApplicable notKnown } dates rules { ${FINDING} } }`;
const CHECK = `query Check($home: ID!, $child: ID!, $date: LocalDate!, $items: [BoxCheckItemInput!]!) {
  boxCheck(householdId: $home, childId: $child, date: $date, items: $items) { __typename ... on UserError { message }
    ... on InvalidInput { issues { field problem fix } } ... on DishUnknown { nearest } ... on OutsideTerm { nextSchoolDay }
    ... on BoxCheck { cautions ${COMPLIANCE} } } }`;
const KEEP = `mutation Keep($input: KeepOwnRulesInput!) { keepOwnRules(input: $input) { __typename ... on UserError { message }
  ... on DocumentRefused { issues { path problem } } } }`;
const OF_PLAN = `query Plan($id: ID!) { week(householdId: $id, date: "${DAY}") { plan { ${COMPLIANCE} boxes { date ${COMPLIANCE} } } } }`;
const OF_CHILD = `query Boxes($id: ID!) { household(id: $id) { children { id boxes(from: "${DAY}", to: "${FRIDAY}") { date packing { leaveAt } ${COMPLIANCE} } } } }`;

interface Finding {
  readonly state: string;
  readonly date: string | null;
  readonly found: number | null;
  readonly atLeast: number | null;
  readonly atMost: number | null;
  readonly unit: string | null;
  readonly text: string;
  readonly place: {
    readonly breakKey: string;
    readonly slot: string;
    readonly place: number;
    readonly name: string;
  } | null;
  readonly whoSaysSo: {
    readonly saidBy: string;
    readonly rule: { readonly key: string };
    readonly ruleSet: { readonly key: string };
    readonly school: { readonly name: string } | null;
  };
}
interface Compliance {
  readonly totals: {
    readonly met: number;
    readonly notMet: number;
    readonly notApplicable: number;
    readonly notKnown: number;
  };
  readonly dates: readonly string[];
  readonly rules: readonly Finding[];
}
interface Checked {
  readonly __typename: string;
  readonly message: string;
  readonly issues: readonly { readonly field: string }[];
  readonly nearest: readonly string[];
  readonly nextSchoolDay: string | null;
  readonly cautions: readonly string[];
  readonly compliance: Compliance;
}
type Item = Record<string, unknown>;

const check = async (
  home: Household,
  items: readonly Item[],
  more: Record<string, unknown> = {},
  person = home.coordinator,
) =>
  (
    await served.ask<{ boxCheck: Checked }>(person, CHECK, {
      home: home.id,
      child: home.children[0],
      date: "2027-01-13",
      items,
      ...more,
    })
  ).boxCheck;
const food = (key: string, grams: number, slot = "FRUIT", more: Item = {}): Item => ({
  breakKey: "lunch",
  slot,
  food: key,
  grams,
  ...more,
});
const said = ({ rules }: Compliance, key: string) => rules.filter(({ whoSaysSo }) => whoSaysSo.rule.key === key);
const counted = (compliance: Compliance) => {
  const count = (state: string) => compliance.rules.filter((row) => row.state === state).length;
  return {
    met: count("MET"),
    notMet: count("NOT_MET"),
    notApplicable: count("NOT_APPLICABLE"),
    notKnown: count("NOT_KNOWN"),
  };
};

const fruit = { matches: { anyOf: [{ groups: ["FRUIT"] }] } };
const ownRules = sentDocument({
  key: "own",
  title: "Our own",
  layer: "CHILD",
  rules: [
    shutsOut("no-kiwi", { kinds: ["kiwi"] }),
    shutsOut("fruit-grams", {}, { kind: "AMOUNT", ...fruit, unit: "GRAMS", per: "BOX", atLeast: 80 }),
    shutsOut("sodium", {}, { kind: "NUTRIENT", matches: undefined, nutrient: "NA", per: "BOX", atMost: 500 }),
    shutsOut(
      "fish-dish",
      {},
      {
        kind: "FREQUENCY",
        matches: { anyOf: [{ protein: ["FISH"] }] },
        counts: "ITEMS",
        per: "BOX",
        atLeast: 1,
        level: "ADVISE",
      },
    ),
    shutsOut("finger-food", {}, { kind: "SERVING", matches: undefined, fingerFoodOnly: true, level: "ADVISE" }),
    shutsOut("later", { kinds: ["apple"] }, { inForceFrom: "2027-03-01" }),
  ],
});

describe("a box that a parent typed in", () => {
  let home: Household;
  beforeAll(async () => {
    home = await served
      .household()
      .child({ allergies: [{ allergen: "PEANUT" }] })
      .found();
    const kept = await home.change(KEEP, { childId: home.children[0], document: ownRules });
    expect([kept.__typename, kept.issues]).toEqual(["OwnRulesPayload", undefined]);
  });

  it("is told of every rule whether it is kept, with the figure, the limit and who says so", async () => {
    const { compliance } = await check(home, [
      food("apple-raw", 90),
      food("kiwi-raw", 60),
      food("raisins", 20, "EXTRA"),
    ]);
    // 90 g of apple and 60 g of kiwi; raisins are of another group.
    expect(said(compliance, "fruit-grams")).toMatchObject([
      { state: "MET", found: 150, atLeast: 80, atMost: null, unit: "GRAMS", place: null, date: "2027-01-13" },
    ]);
    expect(said(compliance, "no-kiwi")).toMatchObject([
      { state: "NOT_MET", place: { breakKey: "lunch", slot: "FRUIT", place: 1 } },
    ]);
    expect(said(compliance, "no-kiwi")[0]!.text).toMatch(/^Not kept \(.*kiwi.*\)\. Not in the box: no-kiwi\.$/);
    // USDA FoodData Central, per 100 g: apple 1, kiwi 3, raisins 11 mg of sodium; 0.9 + 1.8 + 2.2.
    expect(said(compliance, "sodium")[0]).toMatchObject({ state: "MET", atMost: 500, unit: "MG" });
    expect(said(compliance, "sodium")[0]!.found).toBeCloseTo(4.9, 5);
    expect(said(compliance, "later")).toMatchObject([{ state: "NOT_APPLICABLE", date: null }]);
    expect(said(compliance, "no-sweets")).toMatchObject([
      { state: "MET", whoSaysSo: { saidBy: "Quillbrook Upper School", school: { name: "Quillbrook Upper School" } } },
    ]);
    expect(said(compliance, "no-kiwi")[0]!.whoSaysSo).toMatchObject({
      saidBy: "the family",
      confirmed: true,
      school: null,
    });
    expect(compliance.totals).toEqual(counted(compliance));
    expect(Object.values(compliance.totals).reduce((sum, count) => sum + count, 0)).toBe(compliance.rules.length);
  });

  it("is not known to keep what no food on its own shows", async () => {
    const { compliance } = await check(home, [food("salmon-cooked", 60, "MAIN"), food("apple-raw", 70)]);
    expect(said(compliance, "fruit-grams")).toMatchObject([{ state: "NOT_MET", found: 70, atLeast: 80 }]);
    // Salmon is fish, but which family of dishes it belongs to stands on no row.
    expect(said(compliance, "fish-dish")).toMatchObject([{ state: "NOT_KNOWN" }]);
    expect(said(compliance, "finger-food")).toMatchObject([{ state: "NOT_KNOWN" }]);
    expect(said(compliance, "no-glass")).toMatchObject([{ state: "NOT_KNOWN" }]);
  });

  it("is warned of what the child avoids, whatever the rules say", async () => {
    const { cautions } = await check(home, [food("peanut-butter", 20, "EXTRA", { form: "SPREAD_THIN" })]);
    expect(cautions[0]).toMatch(/contains peanut, which Ari avoids/i);
    expect(cautions.at(-1)).toContain("is not");
  });

  it("that cannot be a box is refused, each mistake with its place", async () => {
    const wrong = await check(home, [
      food("no-such-food", 10),
      { breakKey: "supper", slot: "FRUIT", food: "apple-raw", grams: 0, form: "PEELED" },
      { breakKey: "lunch", slot: "FRUIT", grams: 20 },
    ]);
    expect(wrong.issues.map(({ field }) => field)).toEqual([
      "items.0.food",
      "items.1.breakKey",
      "items.1.grams",
      "items.1.form",
      "items.2.dish",
    ]);
    expect((await check(home, [])).issues.map(({ field }) => field)).toEqual(["items"]);
    const many = await check(
      home,
      Array.from({ length: 41 }, () => food("apple-raw", 5)),
    );
    expect(many.issues.map(({ field }) => field)).toEqual(["items"]);
    const dish = await check(home, [{ breakKey: "lunch", slot: "FRUIT", dish: "orange-segment", grams: 80 }]);
    expect(dish).toMatchObject({ __typename: "DishUnknown" });
    expect(dish.nearest).toContain("orange-segments");
    expect(await check(home, [food("apple-raw", 90)], { date: "2027-01-16" })).toMatchObject({
      __typename: "OutsideTerm",
      nextSchoolDay: "2027-01-18",
    });
  });

  it("is for members of the child's household only, and leaves no trace", async () => {
    const before = await served.everyRow();
    const stranger = served.newcomer();
    expect((await check(home, [food("apple-raw", 90)], {}, stranger)).__typename).toBe("HouseholdNotFound");
    expect((await check(home, [food("apple-raw", 90)], {}, "demo:ruth")).__typename).toBe("HouseholdNotFound");
    expect((await check(home, [food("apple-raw", 90)], { child: "nonsense" })).__typename).toBe("ChildNotFound");
    await check(home, [food("apple-raw", 90)]);
    expect(await served.everyRow()).toBe(before);
    const { errors } = await served.post(null, CHECK, { home: home.id, child: home.children[0], date: DAY, items: [] });
    expect(errors).toMatchObject([{ extensions: { code: "UNAUTHENTICATED" } }]);
  });
});

describe("a planned week", () => {
  it("keeps every forbidding rule; a week's limits are judged over its boxes, and each box says its own", async () => {
    const home = await served.household().child(younger, "class-4").planned(DAY).found();
    interface Seen {
      readonly week: {
        readonly plan: {
          readonly compliance: Compliance;
          readonly boxes: readonly { date: string; compliance: Compliance }[];
        };
      };
    }
    const { plan } = (await served.ask<Seen>(home.coordinator, OF_PLAN, { id: home.id })).week;
    expect(plan.compliance.dates).toHaveLength(5);
    expect(plan.compliance.rules.filter(({ state }) => state === "NOT_MET")).toEqual([]);
    expect(plan.compliance.totals).toEqual(counted(plan.compliance));
    // At most twice a week, over all five boxes at once.
    const [fried] = said(plan.compliance, "fried-or-coated");
    expect(fried).toMatchObject({ state: "MET", date: null, atMost: 2, unit: "ITEMS" });
    expect(said(plan.compliance, "no-nuts").map(({ date }) => date)).toEqual(plan.compliance.dates);
    for (const { date, compliance } of plan.boxes) {
      expect(new Set(compliance.rules.map((row) => row.date))).toEqual(new Set([date, null]));
      const same = plan.compliance.rules.filter((row) => row.date === date || row.date === null);
      expect(compliance.rules).toEqual(same);
    }
    // Typed in instead of Monday's box, two slices of ham are too many for the week, whatever its other days hold.
    const ham = food("ham-sliced", 20, "EXTRA");
    const typed = await check(home, [ham, ham, food("apple-raw", 80)], { date: DAY });
    expect(typed.compliance.dates).toEqual(plan.compliance.dates);
    const [meat] = said(typed.compliance, "meat-products");
    expect(meat).toMatchObject({ state: "NOT_MET", date: null, atMost: 1, unit: "ITEMS" });
    expect(meat!.found).toBeGreaterThanOrEqual(2);
    expect(said(typed.compliance, "fruit-every-day")).toMatchObject([{ state: "MET", found: 1, date: DAY }]);
  });

  it("is told to the child's other home as far as it sees the boxes, and to nobody else", async () => {
    const here = await served.household().child(younger, "class-4").planned(DAY).found();
    const there = await served.household().found();
    const { addHome, owner } = served.inProcess.database;
    await addHome(localOf(here.children[0]!), localOf(there.id));
    await owner`update residence set since = '2027-06-01' where household_id = ${localOf(there.id)}`;
    interface Seen {
      readonly household: {
        readonly children: readonly { readonly boxes: readonly { packing: unknown; compliance: Compliance }[] }[];
      } | null;
    }
    const boxesOf = async ({ coordinator, id }: Household) =>
      (await served.ask<Seen>(coordinator, OF_CHILD, { id })).household!.children[0]!.boxes;
    const [ours, theirs] = [await boxesOf(here), await boxesOf(there)];
    expect(theirs.map(({ packing }) => packing)).toEqual(Array(5).fill(null));
    expect(theirs.map(({ compliance }) => compliance)).toEqual(ours.map(({ compliance }) => compliance));
    const stranger = await served.ask<Seen>(served.newcomer(), OF_CHILD, { id: here.id });
    expect(stranger.household).toBeNull();
  });
});
