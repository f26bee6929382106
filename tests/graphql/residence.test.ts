import { newKey } from "../support/app.js";
import { localOf, useServedApp, type BoxSeen, type Household } from "../support/served-app.js";
import { DAY, PACK, PLAN } from "./documents.js";

const served = useServedApp({ steps: 25_000 });
const [monday, tuesday, wednesday, thursday, friday] = [DAY, "2027-01-12", "2027-01-13", "2027-01-14", "2027-01-15"];

const SEEN = `proposal { id state proposedBy pattern { kind starts cycle } days { date here } } movedDays household { revision }`;
const ANSWER = `__typename ... on UserError { message } ... on InvalidInput { issues { field problem fix } } ... on ResidencePayload { ${SEEN} }
  ... on NotPermitted { neededRole }`;
const SET = `mutation Set($input: SetResidencePatternInput!) { setResidencePattern(input: $input) { ${ANSWER} ... on ProposalOpen { proposalId madeHere dates } ... on DayClosed { date boxState } } }`;
const PROPOSE = `mutation Propose($input: ProposeResidenceChangeInput!) { proposeResidenceChange(input: $input) { ${ANSWER} ... on ProposalOpen { proposalId madeHere dates } ... on DayClosed { date boxState } } }`;
const REPLY = `mutation Reply($input: AnswerResidenceChangeInput!) { answerResidenceChange(input: $input) { ${ANSWER} ... on ProposalSettled { state } ... on ForTheOtherHome { madeHere } ... on DayClosed { date boxState } } }`;
const WITHDRAW = `mutation Withdraw($input: WithdrawResidenceChangeInput!) { withdrawResidenceChange(input: $input) { ${ANSWER} ... on ProposalSettled { state } ... on ForTheOtherHome { madeHere } } }`;
const GIVE_UP = `mutation GiveUp($input: GiveUpHomeInput!) { giveUpHome(input: $input) { __typename ... on UserError { message } ... on KitchenPayload { household { children { name } } } } }`;

interface Answered {
  readonly __typename: string;
  readonly message: string;
  readonly issues: readonly { readonly field: string; readonly problem: string }[];
  readonly proposal: { readonly id: string; readonly state: string; readonly proposedBy: string } | null;
  readonly movedDays: readonly string[];
  readonly proposalId: string;
  readonly madeHere: boolean;
  readonly dates: readonly string[];
  readonly date: string;
  readonly state: string | null;
}
const change = async (home: Household, mutation: string, input: Record<string, unknown>, person?: string) =>
  (await home.change(mutation, input, person)) as unknown as Answered;

const daysSeen = async (home: Household, childId: string, from = monday, to = friday) =>
  (
    await home.ask<{ residenceDays: { date: string; here: boolean; source: string }[] }>(
      `query Days($id: ID!) { node(id: $id) { ... on Child { residenceDays(from: "${from}", to: "${to}") { date here source } } } }`,
      childId,
    )
  ).residenceDays;
/** H for each day the child wakes here, T for there. */
const lettersOf = async (home: Household, childId: string, from?: string, to?: string) =>
  (await daysSeen(home, childId, from, to)).map(({ here }) => (here ? "H" : "T")).join("");
const open = async (home: Household, childId: string) =>
  (
    await home.ask<{
      residenceProposals: { id: string; proposedBy: string; days: { date: string; here: boolean }[] }[];
    }>(
      `query Open($id: ID!) { node(id: $id) { ... on Child { residenceProposals { id state proposedBy proposedAt pattern { kind starts ends cycle } days { date here } } } } }`,
      childId,
    )
  ).residenceProposals;
const boxesOf = async (home: Household): Promise<readonly BoxSeen[]> => (await home.week(DAY))?.plan.boxes ?? [];
const datesOf = (boxes: readonly { readonly date: string }[]) => boxes.map(({ date }) => date);
const mainsOf = (boxes: readonly BoxSeen[]) =>
  boxes.flatMap(({ items }) => items.flatMap(({ slot, dish }) => (slot === "MAIN" ? dish.key : [])));

/** A child who has woken in the first home only, with the week planned there, and a second home that asks for days. */
async function twoHomes(): Promise<{ here: Household; there: Household; ari: string }> {
  const here = await served.household().child().planned(DAY).found();
  const ari = here.children[0]!;
  return { here, there: await here.otherHome(ari), ari };
}
/** Proposes from one home and accepts in the other. */
async function agree(from: Household, to: Household, mutation: string, input: Record<string, unknown>) {
  const proposed = await change(from, mutation, input);
  expect(proposed.__typename).toBe("ResidencePayload");
  const accepted = await change(to, REPLY, { proposalId: proposed.proposal!.id, accept: true });
  expect(accepted.__typename).toBe("ResidencePayload");
  return accepted;
}

describe("a pattern between two homes", () => {
  let here: Household;
  let there: Household;
  let ari: string;
  let proposalId: string;
  beforeAll(async () => {
    ({ here, there, ari } = await twoHomes());
  });

  it("is proposed by one home and holds for nobody until the other accepts", async () => {
    const proposed = await change(here, SET, { childId: ari, kind: "TWO_TWO_FIVE_FIVE", starts: monday });
    expect(proposed).toMatchObject({
      __typename: "ResidencePayload",
      movedDays: [],
      proposal: {
        state: "PROPOSED",
        proposedBy: "THIS_HOME",
        pattern: { kind: "TWO_TWO_FIVE_FIVE", starts: monday },
        days: [],
      },
    });
    proposalId = proposed.proposal!.id;
    expect(await daysSeen(here, ari)).toEqual(
      [monday, tuesday, wednesday, thursday, friday].map((date) => ({ date, here: true, source: "USUAL" })),
    );
    const [seen] = await open(there, ari);
    const turned = [..."HHTTHHHHHTTTTT"].map((letter) => (letter === "H" ? "OTHER_HOME" : "THIS_HOME"));
    expect(seen).toMatchObject({
      id: proposalId,
      proposedBy: "OTHER_HOME",
      pattern: { kind: "TWO_TWO_FIVE_FIVE", starts: monday, ends: null, cycle: turned },
    });
    // Nobody of the other home is named, and no household.
    const said = JSON.stringify(seen);
    for (const name of [here.coordinator, localOf(here.id), here.id]) expect(said).not.toContain(name);
  });

  it("is answered by the home that did not make it, and withdrawn by the one that did", async () => {
    expect(await change(here, REPLY, { proposalId, accept: true })).toMatchObject({
      __typename: "ForTheOtherHome",
      madeHere: true,
    });
    expect(await change(there, WITHDRAW, { proposalId })).toMatchObject({
      __typename: "ForTheOtherHome",
      madeHere: false,
    });
    expect(await lettersOf(here, ari)).toBe("HHHHH");
  });

  it("a second proposal about the same is told of the first, with the way out for either home", async () => {
    const fromThere = await change(there, SET, { childId: ari, kind: "ALTERNATE_WEEKS", starts: monday });
    expect(fromThere).toMatchObject({ __typename: "ProposalOpen", proposalId, madeHere: false, dates: [] });
    expect(fromThere.message).toContain("answerResidenceChange");
    const fromHere = await change(here, SET, { childId: ari, kind: "ALTERNATE_WEEKS", starts: monday });
    expect(fromHere).toMatchObject({ __typename: "ProposalOpen", proposalId, madeHere: true });
    expect(fromHere.message).toContain("withdrawResidenceChange");
  });

  it("accepted, moves the days at once: their boxes fall away in the home that loses them, and both homes are told", async () => {
    const before = (await here.week(DAY))!;
    expect(datesOf(before.plan.boxes)).toEqual([monday, tuesday, wednesday, thursday, friday]);
    const heard = await served.subscribe(
      there.coordinator,
      "subscription Boxes($id: ID!) { boxesBlocked(householdId: $id) { date } }",
      { id: there.id },
    );
    const accepted = await change(there, REPLY, { proposalId, accept: true });
    expect(accepted).toMatchObject({
      __typename: "ResidencePayload",
      movedDays: [wednesday, thursday],
      proposal: { state: "ACCEPTED", proposedBy: "OTHER_HOME" },
    });
    expect(await daysSeen(here, ari)).toEqual(
      [..."HHTTH"].map((letter, at) => ({ date: `2027-01-${11 + at}`, here: letter === "H", source: "PATTERN" })),
    );
    expect(await lettersOf(there, ari)).toBe("TTHHT");
    expect(datesOf(await boxesOf(here))).toEqual([monday, tuesday, friday]);
    expect(await open(here, ari)).toEqual([]);
    // Who had the week open before plans nothing by it.
    const late = await served.send(here.coordinator, PLAN, {
      householdId: here.id,
      date: DAY,
      seenRevision: before.revision,
    });
    expect(late.__typename).toBe("RevisionPassed");
    for (let tries = 0; tries < 250 && heard.events.length < 2; tries += 1)
      await new Promise((resolve) => setTimeout(resolve, 20));
    // The box of the day is no more: there is none to be read.
    expect(heard.events).toEqual([{ boxesBlocked: null }, { boxesBlocked: null }]);
  });

  it("each home plans the days it packs now, and what is eaten in one counts in the other", async () => {
    expect((await there.plan(DAY)).__typename).toBe("WeekPayload");
    expect(datesOf(await boxesOf(there))).toEqual([wednesday, thursday]);
    expect((await here.plan(DAY)).__typename).toBe("WeekPayload");
    const [mine, theirs] = [await boxesOf(here), await boxesOf(there)];
    expect(datesOf(mine)).toEqual([monday, tuesday, friday]);
    const mains = mainsOf([...mine, ...theirs]);
    expect(mains).toHaveLength(5);
    // A main comes once a week, whichever home packs it.
    expect(new Set(mains).size).toBe(5);
    const twice = new Map<string, number>();
    for (const { dish } of [...mine, ...theirs].flatMap(({ items }) => items))
      twice.set(dish.key, (twice.get(dish.key) ?? 0) + 1);
    expect(Math.max(...twice.values())).toBeLessThanOrEqual(2);
  });

  it("a weekly minimum is asked of each home for the days it packs, and each sees what the other fulfilled", async () => {
    const document = JSON.stringify({
      format: "noonpail-rule-set/1",
      key: "fruit-every-day",
      title: "Fruit",
      layer: "CHILD",
      coversFoodFromHome: true,
      language: "en",
      version: 1,
      inForceFrom: "2026-12-01",
      rules: [
        {
          id: "five-fruits",
          kind: "FREQUENCY",
          says: "Five pieces of fruit a week.",
          level: "FORBID",
          source: "the family's own",
          counts: "ITEMS",
          per: "WEEK",
          weeks: 1,
          atLeast: 5,
          shortWeek: "PRORATE",
          matches: { anyOf: [{ slots: ["FRUIT"] }] },
        },
      ],
    });
    const kept = await here.change(
      "mutation Keep($input: KeepOwnRulesInput!) { keepOwnRules(input: $input) { __typename } }",
      { childId: ari, document },
    );
    expect(kept.__typename).toBe("OwnRulesPayload");
    const query = `query Kept($id: ID!) { node(id: $id) { ... on Child { boxes(from: "${monday}", to: "${friday}") { date compliance { dates rules { state atLeast found whoSaysSo { rule { key } } } } } } } }`;
    interface Kept {
      readonly boxes: readonly {
        readonly date: string;
        readonly compliance: {
          readonly dates: readonly string[];
          readonly rules: readonly {
            readonly state: string;
            readonly atLeast: number | null;
            readonly found: number | null;
            readonly whoSaysSo: { readonly rule: { readonly key: string } };
          }[];
        };
      }[];
    }
    const [seenHere, seenThere] = [await here.ask<Kept>(query, ari), await there.ask<Kept>(query, ari)];
    expect(seenHere).toEqual(seenThere);
    const fruits = seenHere.boxes.map(({ date, compliance }) => {
      const found = compliance.rules.find(({ whoSaysSo }) => whoSaysSo.rule.key === "five-fruits")!;
      return [date, compliance.dates.length, found.atLeast, found.state];
    });
    // Five a week are three in three days and two in two.
    expect(fruits).toEqual([
      [monday, 3, 3, "MET"],
      [tuesday, 3, 3, "MET"],
      [wednesday, 2, 2, "MET"],
      [thursday, 2, 2, "MET"],
      [friday, 3, 3, "MET"],
    ]);
  });

  it("once answered it stays answered", async () => {
    for (const [home, mutation, input] of [
      [there, REPLY, { proposalId, accept: false }],
      [here, WITHDRAW, { proposalId }],
    ] as const)
      expect(await change(home, mutation, input)).toMatchObject({ __typename: "ProposalSettled", state: "ACCEPTED" });
    expect(await lettersOf(here, ari)).toBe("HHTTH");
  });

  it("gives way to the one that begins next, and both homes read which one holds on a day", async () => {
    await agree(there, here, SET, { childId: ari, kind: "ALTERNATE_WEEKS", starts: "2027-02-01" });
    // Begun by the other home, which has the first week.
    expect(await lettersOf(here, ari, "2027-01-29", "2027-02-15")).toBe("HHHTTTTTTTHHHHHHHT");
    const patternOn = (home: Household, on: string) =>
      home.ask<{ residencePattern: unknown }>(
        `query On($id: ID!) { node(id: $id) { ... on Child { residencePattern(on: "${on}") { kind starts } } } }`,
        ari,
      );
    expect(await patternOn(there, "2027-01-31")).toEqual({
      residencePattern: { kind: "TWO_TWO_FIVE_FIVE", starts: monday },
    });
    expect(await patternOn(here, "2027-02-01")).toEqual({
      residencePattern: { kind: "ALTERNATE_WEEKS", starts: "2027-02-01" },
    });
    expect(await patternOn(here, "2027-01-10")).toEqual({ residencePattern: null });
  });
});

describe("single days between two homes", () => {
  let here: Household;
  let there: Household;
  let ari: string;
  beforeAll(async () => {
    ({ here, there, ari } = await twoHomes());
  });

  it("declined, nothing moves", async () => {
    const proposed = await change(there, PROPOSE, { childId: ari, dates: [friday], wakesHere: true });
    expect(await open(here, ari)).toMatchObject([{ proposedBy: "OTHER_HOME", days: [{ date: friday, here: false }] }]);
    expect(await change(here, REPLY, { proposalId: proposed.proposal!.id, accept: false })).toMatchObject({
      __typename: "ResidencePayload",
      movedDays: [],
      proposal: { state: "DECLINED" },
    });
    expect(await lettersOf(here, ari)).toBe("HHHHH");
    expect(datesOf(await boxesOf(here))).toHaveLength(5);
  });

  it("asked for by both homes at once, one proposal stands and the other home is told of it", async () => {
    const [one, two] = await Promise.all([
      change(here, PROPOSE, { childId: ari, dates: [thursday, friday], wakesHere: false }),
      change(there, PROPOSE, { childId: ari, dates: [friday], wakesHere: true }),
    ]);
    expect([one.__typename, two.__typename].sort()).toEqual(["ProposalOpen", "ResidencePayload"]);
    const refused = one.__typename === "ProposalOpen" ? one : two;
    expect(refused.dates).toContain(friday);
    const [standing] = await open(here, ari);
    expect(refused.proposalId).toBe(standing!.id);
    const maker = standing!.proposedBy === "THIS_HOME" ? here : there;
    expect((await change(maker, WITHDRAW, { proposalId: standing!.id })).proposal).toMatchObject({
      state: "WITHDRAWN",
    });
    expect(await lettersOf(here, ari)).toBe("HHHHH");
  });

  it("accepted and withdrawn at once, exactly one of the two happens", async () => {
    const { proposal } = await change(there, PROPOSE, { childId: ari, dates: [friday], wakesHere: true });
    const [yes, back] = await Promise.all([
      change(here, REPLY, { proposalId: proposal!.id, accept: true }),
      change(there, WITHDRAW, { proposalId: proposal!.id }),
    ]);
    expect([yes.__typename, back.__typename].sort()).toEqual(["ProposalSettled", "ResidencePayload"]);
    const accepted = yes.__typename === "ResidencePayload";
    expect((accepted ? back : yes).state).toBe(accepted ? "ACCEPTED" : "WITHDRAWN");
    expect(await lettersOf(here, ari)).toBe(accepted ? "HHHHT" : "HHHHH");
    if (!accepted) await agree(there, here, PROPOSE, { childId: ari, dates: [friday], wakesHere: true });
    expect(datesOf(await boxesOf(here))).toEqual([monday, tuesday, wednesday, thursday]);
  });

  it("a day that was moved can be moved back, and the later word holds", async () => {
    await agree(here, there, PROPOSE, { childId: ari, dates: [friday], wakesHere: true });
    expect(await daysSeen(here, ari, friday, friday)).toEqual([{ date: friday, here: true, source: "EXCEPTION" }]);
    expect((await here.plan(DAY)).__typename).toBe("WeekPayload");
    expect(datesOf(await boxesOf(here))).toHaveLength(5);
  });

  it("a day whose box is packed moves neither by proposal nor by answer, and nothing else of the proposal does", async () => {
    const { proposal } = await change(there, PROPOSE, { childId: ari, dates: [monday, thursday], wakesHere: true });
    const week = (await here.week(DAY))!;
    const box = week.plan.boxes.find(({ date }) => date === monday)!;
    const foods = box.items.flatMap(({ labelsToRead }) => (labelsToRead ?? []).map(({ key }) => key));
    for (const food of new Set(foods))
      await here.change("mutation L($input: RecordLabelInput!) { recordLabel(input: $input) { __typename } }", {
        food,
        contains: [],
        mayContain: [],
        readOn: "2026-11-20",
      });
    const packed = await served.send(here.coordinator, PACK, {
      boxId: box.id,
      packedAt: `${monday}T07:10:00Z`,
      seenRevision: (await here.week(DAY))!.revision,
    });
    expect(packed.__typename).toBe("WeekPayload");
    const before = await served.everyRow();
    expect(await change(here, REPLY, { proposalId: proposal!.id, accept: true })).toMatchObject({
      __typename: "DayClosed",
      date: monday,
      boxState: "PACKED",
    });
    expect(await change(there, PROPOSE, { childId: ari, dates: [tuesday, monday], wakesHere: true })).toMatchObject({
      __typename: "ProposalOpen",
    });
    expect(await served.everyRow()).toBe(before);
    await change(there, WITHDRAW, { proposalId: proposal!.id });
    expect(await change(there, PROPOSE, { childId: ari, dates: [tuesday, monday], wakesHere: true })).toMatchObject({
      __typename: "DayClosed",
      date: monday,
      boxState: "PACKED",
    });
    expect(await lettersOf(here, ari)).toBe("HHHHH");
  });

  it("a home that planned by what held before stores no box for a day that has moved meanwhile", async () => {
    const { proposal } = await change(there, PROPOSE, { childId: ari, dates: ["2027-01-20"], wakesHere: true });
    // The first plan of that week, and the answer while it is being searched for.
    const [planned] = await Promise.all([
      here.plan("2027-01-18"),
      change(here, REPLY, { proposalId: proposal!.id, accept: true }),
    ]);
    expect(planned.__typename).toBe("WeekPayload");
    const mine = (await here.week("2027-01-18"))?.plan.boxes ?? [];
    expect(datesOf(mine)).not.toContain("2027-01-20");
    expect((await there.plan("2027-01-18")).__typename).toBe("WeekPayload");
    expect(datesOf((await there.week("2027-01-18"))!.plan.boxes)).toEqual(["2027-01-20"]);
  });

  it("a whole week given away is planned empty, and its work is off the list", async () => {
    const week = [18, 19, 21, 22].map((day) => `2027-01-${day}`);
    await agree(here, there, PROPOSE, { childId: ari, dates: week, wakesHere: false });
    const left = (await here.week("2027-01-18"))!;
    expect(left.plan.boxes).toEqual([]);
    expect(left.plan.tasks.length).toBeGreaterThan(0);
    expect((await here.plan("2027-01-18")).__typename).toBe("WeekPayload");
    expect((await here.week("2027-01-18"))!.plan).toMatchObject({ boxes: [], tasks: [] });
  });
});

describe("what cannot be agreed", () => {
  let here: Household;
  let there: Household;
  let ari: string;
  let alone: Household;
  beforeAll(async () => {
    ({ here, there, ari } = await twoHomes());
    alone = await served.household().child().carer("COOK").carer("OBSERVER").found();
  });

  it("a child of one home has its pattern at once, from its coordinator", async () => {
    const [only] = alone.children;
    const set = await change(alone, SET, { childId: only, kind: "SAME_HOME", starts: monday });
    expect(set).toMatchObject({ __typename: "ResidencePayload", proposal: null, movedDays: [] });
    expect(await daysSeen(alone, only!, monday, monday)).toEqual([{ date: monday, here: true, source: "PATTERN" }]);
    for (const role of ["COOK", "OBSERVER"] as const)
      expect(
        await change(alone, SET, { childId: only, kind: "SAME_HOME", starts: tuesday }, alone.carers[role]),
      ).toMatchObject({ __typename: "NotPermitted", neededRole: "COORDINATOR" });
  });

  it("every complaint names the field and the way out, and nothing is written", async () => {
    const [only] = alone.children;
    const before = await served.everyRow();
    const patterns: readonly (readonly [Household, string, Record<string, unknown>, string])[] = [
      [here, SET, { childId: ari, kind: "ALTERNATE_WEEKS", starts: "2026-11-24" }, "starts"],
      [here, SET, { childId: ari, kind: "ALTERNATE_WEEKS", starts: "2028-11-24" }, "starts"],
      [here, SET, { childId: ari, kind: "OWN_CYCLE", starts: monday }, "cycle"],
      [here, SET, { childId: ari, kind: "OWN_CYCLE", starts: monday, cycle: [] }, "cycle"],
      [here, SET, { childId: ari, kind: "OWN_CYCLE", starts: monday, cycle: Array(57).fill("THIS_HOME") }, "cycle"],
      [here, SET, { childId: ari, kind: "TWO_TWO_THREE", starts: monday, cycle: ["THIS_HOME"] }, "cycle"],
      [alone, SET, { childId: only, kind: "ALTERNATE_WEEKS", starts: monday }, "kind"],
      [alone, PROPOSE, { childId: only, dates: [monday], wakesHere: false }, "childId"],
      [here, PROPOSE, { childId: ari, dates: [], wakesHere: false }, "dates"],
      [here, PROPOSE, { childId: ari, dates: [monday, monday], wakesHere: false }, "dates.1"],
      [here, PROPOSE, { childId: ari, dates: ["2026-11-24"], wakesHere: false }, "dates.0"],
      [here, PROPOSE, { childId: ari, dates: [monday, "2027-12-24"], wakesHere: false }, "dates.1"],
      [here, PROPOSE, { childId: ari, dates: [tuesday], wakesHere: true }, "dates.0"],
    ];
    for (const [home, mutation, input, field] of patterns) {
      const refused = await change(home, mutation, input);
      expect([refused.__typename, refused.issues?.[0]?.field]).toEqual(["InvalidInput", field]);
      expect(refused.message.length).toBeGreaterThan(20);
    }
    const many = Array.from(
      { length: 63 },
      (_, at) => `2027-0${at < 31 ? 3 : 5}-${String((at % 31) + 1).padStart(2, "0")}`,
    );
    expect((await change(here, PROPOSE, { childId: ari, dates: many, wakesHere: false })).__typename).toBe(
      "InvalidInput",
    );
    expect(await served.everyRow()).toBe(before);
  });

  it("days that went by while nobody answered stay as they were", async () => {
    const { proposal } = await change(here, PROPOSE, { childId: ari, dates: ["2026-11-25"], wakesHere: false });
    const { owner } = served.inProcess.database;
    await owner`update residence_exception set date = '2026-11-24' where change_id = ${localOf(proposal!.id)}`;
    const late = await change(there, REPLY, { proposalId: proposal!.id, accept: true });
    expect(late).toMatchObject({ __typename: "DayClosed", date: "2026-11-24", boxState: null });
    expect(late.message).toContain("is over");
    await change(here, WITHDRAW, { proposalId: proposal!.id });
  });

  it("another family learns nothing and decides nothing", async () => {
    const { proposal } = await change(here, SET, { childId: ari, kind: "ALTERNATE_WEEKS", starts: monday });
    const before = await served.everyRow();
    const stranger = alone.coordinator;
    const seenRevision = await alone.revision();
    const mine = { householdId: alone.id, seenRevision };
    const theirs = { householdId: here.id, seenRevision: await here.revision() };
    const proposalId = proposal!.id;
    const day = { childId: ari, dates: [monday], wakesHere: true };
    const pattern = { childId: ari, kind: "SAME_HOME", starts: monday };
    const refusals: readonly (readonly [string, Record<string, unknown>, string])[] = [
      [SET, { ...mine, ...pattern }, "ChildNotFound"],
      [SET, { ...theirs, ...pattern }, "HouseholdNotFound"],
      [PROPOSE, { ...mine, ...day }, "ChildNotFound"],
      [PROPOSE, { ...theirs, ...day }, "HouseholdNotFound"],
      [REPLY, { ...mine, proposalId, accept: true }, "NothingThere"],
      [REPLY, { ...theirs, proposalId, accept: true }, "HouseholdNotFound"],
      [WITHDRAW, { ...mine, proposalId }, "NothingThere"],
      [WITHDRAW, { ...mine, proposalId: "nothing" }, "NothingThere"],
      [GIVE_UP, { ...mine, childId: ari }, "ChildNotFound"],
      [GIVE_UP, { ...theirs, childId: ari }, "HouseholdNotFound"],
    ];
    for (const [mutation, input, kind] of refusals)
      expect([mutation.slice(9, 14), (await served.send(stranger, mutation, input)).__typename]).toEqual([
        mutation.slice(9, 14),
        kind,
      ]);
    // Nor does a home of the child act in the other's name.
    expect(
      (await served.send(there.coordinator, WITHDRAW, { ...theirs, idempotencyKey: newKey(), proposalId })).__typename,
    ).toBe("HouseholdNotFound");
    expect(await served.everyRow()).toBe(before);
    await change(here, WITHDRAW, { proposalId });
  });

  it("of more than two homes nobody can tell who has to agree", async () => {
    const third = await served.household().found();
    await served.inProcess.database.addHome(localOf(ari), localOf(third.id));
    const refused = await change(here, PROPOSE, { childId: ari, dates: [monday], wakesHere: false });
    expect(refused).toMatchObject({ __typename: "InvalidInput", issues: [{ field: "childId" }] });
    expect((await change(third, GIVE_UP, { childId: ari })).__typename).toBe("KitchenPayload");
  });
});

describe("a home that is given up", () => {
  it("packs no more, ends what was agreed in its name, and keeps nothing of the child but its own past", async () => {
    const { here, there, ari } = await twoHomes();
    const { owner } = served.inProcess.database;
    await owner`insert into child_body (child_id, household_id, weight_kg) values (${localOf(ari)}, ${localOf(there.id)}, 40)`;
    const recorded = await there.change(
      "mutation R($input: RecordAllergyInput!) { recordAllergy(input: $input) { __typename } }",
      { childId: ari, foodKind: "kiwi" },
    );
    expect(recorded.__typename).toBe("AllergyPayload");
    await agree(here, there, SET, {
      childId: ari,
      kind: "ALTERNATE_WEEKS",
      starts: "2026-12-28",
      firstHome: "OTHER_HOME",
    });
    await agree(here, there, PROPOSE, { childId: ari, dates: [thursday], wakesHere: true });
    expect(await lettersOf(there, ari)).toBe("HHHTH");
    expect((await there.plan(DAY)).__typename).toBe("WeekPayload");
    expect(datesOf(await boxesOf(there))).toEqual([monday, tuesday, wednesday, friday]);

    expect((await change(there, GIVE_UP, { childId: ari })) as unknown).toMatchObject({
      __typename: "KitchenPayload",
      household: { children: [] },
    });
    expect(await lettersOf(here, ari, "2026-12-28", "2027-01-24")).toBe("H".repeat(28));
    // The week it had planned still reads, tasks and all, without the child.
    const plan = await served.ask<{ week: { plan: { boxes: unknown[]; tasks: { children: unknown[] }[] } } }>(
      there.coordinator,
      `query Left($id: ID!) { week(householdId: $id, date: "${DAY}") { plan { boxes { id } cautions { text child { name } } batches { feeds { children { name } } } tasks { text children { name } } } } }`,
      { id: there.id },
    );
    expect(plan.week.plan.boxes).toEqual([]);
    expect(plan.week.plan.tasks.flatMap(({ children }) => children)).toEqual([]);
    expect(await served.ask(there.coordinator, "query C($id: ID!) { node(id: $id) { id } }", { id: ari })).toEqual({
      node: null,
    });
    const kept = await owner`select 1 from child_body where household_id = ${localOf(there.id)}
      union all select 1 from leave_time where household_id = ${localOf(there.id)} union all select 1 from box_kit where household_id = ${localOf(there.id)}`;
    expect([...kept]).toEqual([]);
    // The home that is left plans the days, and the allergy holds until it takes it back.
    expect((await here.plan(DAY)).__typename).toBe("WeekPayload");
    expect(datesOf(await boxesOf(here))).toEqual([monday, tuesday, wednesday, thursday, friday]);
    const child = await here.ask<{ allergies: { foodKind: string | null }[] }>(
      "query A($id: ID!) { node(id: $id) { ... on Child { allergies { foodKind } } } }",
      ari,
    );
    expect(child.allergies.map(({ foodKind }) => foodKind)).toContain("kiwi");

    const last = await change(here, GIVE_UP, { childId: ari });
    expect(last).toMatchObject({ __typename: "OnlyHome" });
  });

  it("two that give the child up at once: one of them stays", async () => {
    const { here, there, ari } = await twoHomes();
    const both = await Promise.all([change(here, GIVE_UP, { childId: ari }), change(there, GIVE_UP, { childId: ari })]);
    expect(both.map(({ __typename }) => __typename).sort()).toEqual(["KitchenPayload", "OnlyHome"]);
  });
});
