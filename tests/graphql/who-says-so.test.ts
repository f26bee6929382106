import { newKey } from "../support/app.js";
import { sentDocument, shutsOut } from "../support/sent-rules.js";
import {
  classId,
  localOf,
  schoolId,
  useServedApp,
  type Household,
  type Said,
  type WeekSeen,
} from "../support/served-app.js";
import { AGREE, DAY, LOAD } from "./documents.js";

const served = useServedApp({ steps: 25_000 });
const [monday, , wednesday, thursday, friday] = [
  "2027-01-11",
  "2027-01-12",
  "2027-01-13",
  "2027-01-14",
  "2027-01-15",
] as const;
const younger = { dateOfBirth: "2018-05-07" };

const ORIGIN = `whoSaysSo { saidBy confirmed text jurisdiction rule { key says level source } ruleSet { key title layer version inForceFrom inForceUntil }
  school { name } schoolClass { name } }`;
const BOXES = `query Boxes($id: ID!) { household(id: $id) { children { id boxes(from: "${DAY}", to: "${friday}") { date state packing { leaveAt }
  blockedBecause { kind text ${ORIGIN} } items { slot dish { key } } } } } }`;
const PLAN = `query Plan($id: ID!) { week(householdId: $id, date: "${DAY}") { plan { origin { ruleSetVersions } cautions { kind date ${ORIGIN} }
  rulesObeyed { dates child { name } ${ORIGIN} } boxes { date items { breakKey slot dish { key } askedForBy { rule { key } saidBy } } } } } }`;
const VERDICTS = `query V($id: ID!, $dish: String!) { node(id: $id) { ... on Child { verdicts(date: "${wednesday}", dish: $dish) { ... on Verdicts {
  places { allowed exclusion { kind source ${ORIGIN} } } } } } } }`;
const PRICE = `query P($home: ID!, $child: ID!, $dish: String!) { priceOfDish(householdId: $home, childId: $child, date: "${wednesday}", breakKey: "lunch",
  slot: MAIN, dish: $dish) { __typename ... on DishNotOffered { kind ${ORIGIN} } } }`;
const REFUSED = `mutation Plan($input: PlanWeekInput!) { planWeek(input: $input) { __typename ... on WeekInfeasible { clash { members { kind ${ORIGIN} } } } } }`;
const CONFLICTS = `mutation Plan($input: PlanWeekInput!) { planWeek(input: $input) { ... on WeekInfeasible { conflicts { kind ${ORIGIN} } } } }`;
const KEEP = `mutation K($input: KeepOwnRulesInput!) { keepOwnRules(input: $input) { __typename ... on UserError { message } ... on OwnRulesPayload { ruleSet { id } } } }`;
const OFFER =
  "query Offer($id: ID!) { mendingOffer(weekId: $id) { possible changedBoxes { date items { slot dish { key } } } } }";
const HEARD = "subscription Heard($id: ID!) { boxesBlocked(householdId: $id) { date state reasons { text } } }";
const WITHDRAW = `mutation W($input: WithdrawRuleSetInput!) { withdrawRuleSet(input: $input) { __typename ... on UserError { message } } }`;
const ADOPT = `mutation A($input: AdoptRuleSetInput!) { adoptRuleSet(input: $input) { __typename ... on UserError { message } } }`;

interface Origin {
  readonly saidBy: string;
  readonly confirmed: boolean;
  readonly text: string;
  readonly rule: { readonly key: string; readonly source: string };
  readonly ruleSet: { readonly key: string; readonly version: number };
}
interface Box {
  readonly date: string;
  readonly state: string;
  readonly blockedBecause: readonly { readonly kind: string; readonly whoSaysSo: Origin | null }[];
  readonly items: readonly { readonly slot: string; readonly dish: { readonly key: string } }[];
}
const boxesOf = async ({ coordinator, id }: Household) =>
  (await served.ask<{ household: { children: { boxes: Box[] }[] } }>(coordinator, BOXES, { id })).household.children[0]!
    .boxes;
const blockedOn = async (home: Household) =>
  (await boxesOf(home)).filter(({ state }) => state === "BLOCKED").map(({ date }) => date);
const weekOf = async (home: Household): Promise<WeekSeen> => (await home.week(DAY))!;
const mainOf = ({ items }: Pick<Box, "items">) => items.find(({ slot }) => slot === "MAIN")!.dish.key;

async function withOtherHome(here: Household): Promise<Household> {
  const there = await served.household().found();
  const { addHome, owner } = served.inProcess.database;
  await addHome(localOf(here.children[0]!), localOf(there.id));
  await owner`update residence set since = '2027-06-01' where household_id = ${localOf(there.id)}`;
  return there;
}
type Loaded = Said & { readonly ruleSet: { readonly id: string } };
const CLASS_4 = { schoolId: schoolId("primary"), schoolClassId: classId("class-4") };
/** For class 4 unless it is said where; ends with the week, so that no other test meets it. */
async function load(
  change: Parameters<typeof sentDocument>[0],
  seenRevision = 0,
  where: Record<string, unknown> = CLASS_4,
  person = "demo:ruth",
) {
  const document = sentDocument({ layer: "CLASS", inForceUntil: friday, ...change });
  const loaded = (await served.send(person, LOAD, { ...where, seenRevision, document })) as Loaded;
  expect([loaded.__typename, loaded.issues]).toEqual(["LoadRuleSetPayload", undefined]);
  return loaded.ruleSet.id;
}
const until = async (test: () => boolean) => {
  for (let tries = 0; tries < 100 && !test(); tries += 1) await new Promise((wake) => setTimeout(wake, 30));
};

describe("every rule of a plan", () => {
  it("is listed with the days it held and the version of each, whatever is loaded afterwards", async () => {
    const key = `obeyed-${newKey().slice(0, 8)}`;
    const rule = shutsOut("no-fig", { kinds: ["fig"] });
    await load({ key, rules: [rule] });
    await load({ key, version: 2, inForceFrom: wednesday, rules: [rule] }, 1);
    const home = await served.household().child(younger, "class-4").planned(DAY).found();
    await load({ key, version: 3, inForceFrom: thursday, rules: [shutsOut("no-date", { kinds: ["date"] })] }, 2);
    interface Seen {
      readonly rulesObeyed: readonly { readonly dates: readonly string[]; readonly whoSaysSo: Origin }[];
      readonly boxes: readonly {
        readonly items: readonly {
          readonly breakKey: string;
          readonly askedForBy: readonly { rule: { key: string } }[];
        }[];
      }[];
    }
    const { plan } = (await served.ask<{ week: { plan: Seen } }>(home.coordinator, PLAN, { id: home.id })).week;
    const obeyed = plan.rulesObeyed.filter(({ whoSaysSo }) => whoSaysSo.ruleSet.key === key);
    expect(obeyed.map(({ dates, whoSaysSo }) => [whoSaysSo.ruleSet.version, whoSaysSo.rule.key, dates])).toEqual([
      [1, "no-fig", [monday, "2027-01-12"]],
      [2, "no-fig", [wednesday, thursday, friday]],
    ]);
    expect(obeyed[1]).toMatchObject({
      child: { name: "Ari" },
      whoSaysSo: {
        saidBy: "Quillbrook Primary School",
        confirmed: true,
        jurisdiction: null,
        rule: { says: "Not in the box: no-fig.", level: "FORBID", source: "own rule of an invented school" },
        ruleSet: { title: "Rules of a test", layer: "CLASS", inForceFrom: wednesday, inForceUntil: friday },
        school: { name: "Quillbrook Primary School" },
        schoolClass: { name: "Class 4" },
      },
    });
    expect(obeyed[1]!.whoSaysSo.text).toBe(
      `Quillbrook Primary School, for Class 4: Not in the box: no-fig. (Rules of a test, version 2, in force from ${wednesday} to ${friday}; source: own rule of an invented school)`,
    );
    // What stands at the morning break stands there because the school wants fruit and nothing else.
    const morning = plan.boxes.flatMap(({ items }) => items.filter(({ breakKey }) => breakKey === "morning-break"));
    expect(morning.length).toBeGreaterThan(3);
    for (const { askedForBy } of morning)
      expect(askedForBy.map(({ rule: { key: asks } }) => asks)).toEqual(
        expect.arrayContaining(["fruit-only-in-the-morning", "fruit-every-day"]),
      );
  });

  it("is named where it shuts a dish out, where its advice is not kept, and where no week is found", async () => {
    const home = await served.household().child().planned(DAY).found();
    const dish = mainOf((await boxesOf(home))[0]!);
    const own = (version: number, rules: readonly Record<string, unknown>[]) => ({
      childId: home.children[0],
      document: sentDocument({
        key: "own",
        layer: "CHILD",
        version,
        inForceFrom: version === 1 ? "2026-09-01" : "2026-11-25",
        rules,
      }),
    });
    const shut = shutsOut("not-this", { dishes: [dish] });
    const advice = shutsOut("fruit-elsewhere", { slots: ["FRUIT"] }, { level: "ADVISE" });
    expect((await home.change(KEEP, own(1, [shut, advice]))).__typename).toBe("OwnRulesPayload");
    const family = { saidBy: "the family", confirmed: true, school: null, ruleSet: { key: "own", version: 1 } };
    const asked = await served.ask<{ node: { verdicts: { places: { exclusion: unknown }[] } } }>(
      home.coordinator,
      VERDICTS,
      {
        id: home.children[0],
        dish,
      },
    );
    expect(asked.node.verdicts.places[0]!.exclusion).toMatchObject({
      kind: "RULE",
      source: "own rule of an invented school",
      whoSaysSo: { ...family, rule: { key: "not-this" } },
    });
    const { priceOfDish } = await served.ask<{ priceOfDish: unknown }>(home.coordinator, PRICE, {
      home: home.id,
      child: home.children[0],
      dish,
    });
    expect(priceOfDish).toMatchObject({
      __typename: "DishNotOffered",
      kind: "RULE",
      whoSaysSo: { ...family, rule: { key: "not-this" } },
    });
    expect((await home.plan(DAY)).__typename).toBe("WeekPayload");
    const { plan } = (
      await served.ask<{ week: { plan: { cautions: { kind: string; whoSaysSo: unknown }[] } } }>(
        home.coordinator,
        PLAN,
        {
          id: home.id,
        },
      )
    ).week;
    const advised = plan.cautions.filter(({ kind }) => kind === "ADVICE_NOT_MET");
    for (const { whoSaysSo } of advised) expect(whoSaysSo).toMatchObject({ rule: { level: "ADVISE" } });
    expect(advised.map(({ whoSaysSo }) => whoSaysSo)).toContainEqual(
      expect.objectContaining({
        ...family,
        ruleSet: expect.objectContaining(family.ruleSet) as unknown,
        rule: expect.objectContaining({ key: "fruit-elsewhere" }) as unknown,
      }),
    );
    for (const { kind, whoSaysSo } of plan.cautions) if (kind === "GENERAL") expect(whoSaysSo).toBeNull();

    expect((await home.change(KEEP, own(2, [shutsOut("no-main", { slots: ["MAIN"] })]))).__typename).toBe(
      "OwnRulesPayload",
    );
    const refused = await served.ask<{
      planWeek: { clash: { members: { kind: string; whoSaysSo: Origin | null }[] } };
    }>(home.coordinator, REFUSED, {
      input: { idempotencyKey: newKey(), householdId: home.id, date: DAY, seenRevision: (await weekOf(home)).revision },
    });
    const members = refused.planWeek.clash.members;
    const rule = members.find(({ kind }) => kind === "RULE")!;
    expect(rule.whoSaysSo).toMatchObject({ saidBy: "the family", ruleSet: { version: 2 }, rule: { key: "no-main" } });
    for (const { kind, whoSaysSo } of members) if (kind !== "RULE") expect(whoSaysSo).toBeNull();

    const noSalt = shutsOut(
      "no-salt",
      {},
      { kind: "NUTRIENT", matches: undefined, nutrient: "NA", per: "BOX", atMost: 1 },
    );
    expect((await home.change(KEEP, own(3, [noSalt]))).__typename).toBe("OwnRulesPayload");
    const { planWeek } = await served.ask<{ planWeek: { conflicts: { kind: string; whoSaysSo: Origin | null }[] } }>(
      home.coordinator,
      CONFLICTS,
      {
        input: {
          idempotencyKey: newKey(),
          householdId: home.id,
          date: DAY,
          seenRevision: (await weekOf(home)).revision,
        },
      },
    );
    expect(planWeek.conflicts.filter(({ whoSaysSo }) => whoSaysSo !== null)).toContainEqual({
      kind: "RULE_OUT_OF_REACH",
      whoSaysSo: expect.objectContaining({ saidBy: "the family", text: expect.stringContaining("no-salt") }) as unknown,
    });
  });
});

describe("a version that comes into force inside an agreed week", () => {
  it("blocks the boxes of its days that fail, in both homes, tells them, is mended; withdrawn, they pass again", async () => {
    const here = await served.household().child(younger, "class-4").planned(DAY).found();
    const there = await withOtherHome(here);
    const { id: weekId, revision } = await weekOf(here);
    expect((await served.send(here.coordinator, AGREE, { weekId, seenRevision: revision })).__typename).toBe(
      "WeekPayload",
    );
    const boxes = await boxesOf(here);
    const [first, , , fourth] = boxes;
    const key = `mid-week-${newKey().slice(0, 8)}`;
    const heard = [
      await served.subscribe(here.coordinator, HEARD, { id: here.id }),
      await served.subscribe(there.coordinator, HEARD, { id: there.id }),
    ];
    await load({ key, rules: [shutsOut("nothing-planned", { kinds: ["durian"] })] });
    expect(await blockedOn(here)).toEqual([]);
    // Monday's main is shut out too, but not on a Monday before the version holds.
    const mains = [mainOf(first!), mainOf(fourth!)];
    const ruleSetId = await load(
      { key, version: 2, inForceFrom: wednesday, rules: [shutsOut("not-these", { dishes: mains })] },
      1,
    );
    for (const home of [here, there]) {
      expect(await blockedOn(home)).toEqual([thursday]);
      const [reason] = (await boxesOf(home)).find(({ date }) => date === thursday)!.blockedBecause;
      expect(reason).toMatchObject({
        kind: "RULE",
        whoSaysSo: { ruleSet: { key, version: 2, inForceFrom: wednesday } },
      });
    }
    for (const { events } of heard) {
      await until(() => events.length > 0);
      expect(events.map((event) => event["boxesBlocked"])).toMatchObject([{ date: thursday, state: "BLOCKED" }]);
    }
    const { mendingOffer } = await served.ask<{
      mendingOffer: { possible: boolean; changedBoxes: { date: string; items: Box["items"] }[] };
    }>(here.coordinator, OFFER, { id: weekId });
    expect(mendingOffer.possible).toBe(true);
    expect(mendingOffer.changedBoxes.map(({ date }) => date)).toEqual([thursday]);
    expect(mains).not.toContain(mainOf(mendingOffer.changedBoxes[0]!));
    const withdrawn = await served.send("demo:ruth", WITHDRAW, { ruleSetId, seenRevision: 2, from: wednesday });
    expect(withdrawn.__typename).toBe("LoadRuleSetPayload");
    expect([await blockedOn(here), await blockedOn(there)]).toEqual([[], []]);
    expect(await boxesOf(here)).toEqual(boxes);
  });

  it("touches nothing before its first day", async () => {
    const home = await served.household().child(younger, "class-4").planned(DAY).found();
    const boxes = await boxesOf(home);
    await load({
      key: `next-month-${newKey().slice(0, 8)}`,
      inForceFrom: "2027-02-01",
      inForceUntil: "2027-02-28",
      rules: [shutsOut("none-of-these", { dishes: boxes.map(mainOf) })],
    });
    expect(await boxesOf(home)).toEqual(boxes);
  });
});

describe("a jurisdiction's rule set", () => {
  it("about the schools' own meals touches boxes only once the school takes it over; one about boxes does at once", async () => {
    const { database } = served.inProcess;
    const clerk = served.newcomer();
    const person = await database.db.signIn(clerk, clerk);
    await database.owner`insert into appointment (person_id, jurisdiction) values (${person}, 'England')`;
    const home = await served.household().child(younger, "class-4").planned(DAY).found();
    const dish = mainOf((await boxesOf(home))[2]!);
    const document = (key: string) => ({
      key,
      layer: "JURISDICTION" as const,
      jurisdiction: "England",
      rules: [shutsOut("not-this", { dishes: [dish] })],
    });
    const England = { jurisdiction: "England" };
    const about = newKey().slice(0, 8);
    const ruleSetId = await load({ ...document(`meals-${about}`), coversFoodFromHome: false }, 0, England, clerk);
    expect(await blockedOn(home)).toEqual([]);
    const adopt = (adopted: boolean) =>
      served.send("demo:ruth", ADOPT, { schoolId: schoolId("primary"), ruleSetId, adopted });
    expect((await adopt(true)).__typename).toBe("SchoolPayload");
    expect(await blockedOn(home)).toEqual([wednesday]);
    const [reason] = (await boxesOf(home))[2]!.blockedBecause;
    expect(reason).toMatchObject({ whoSaysSo: { saidBy: "England", jurisdiction: "England", school: null } });
    expect((await adopt(false)).__typename).toBe("SchoolPayload");
    expect(await blockedOn(home)).toEqual([]);
    const boxes = await load({ ...document(`boxes-${about}`), coversFoodFromHome: true }, 0, England, clerk);
    expect(await blockedOn(home)).toEqual([wednesday]);
    const end = { ruleSetId: boxes, seenRevision: 1, from: "2026-11-25" };
    expect((await served.send(clerk, WITHDRAW, end)).__typename).toBe("LoadRuleSetPayload");
    expect(await blockedOn(home)).toEqual([]);
  });
});
