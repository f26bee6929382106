import { classId, localOf, schoolId, useServedApp } from "../support/served-app.js";
import { DAY, FINISH, LEFTOVERS, LOAD, PREP, RELAX, STOCK, TAKE } from "./documents.js";

const served = useServedApp();

interface Kitchen {
  readonly week: {
    readonly plan: {
      readonly batches: readonly {
        readonly base: { readonly key: string };
        readonly session: string;
        readonly state: string;
      }[];
      readonly tasks: readonly { readonly id: string; readonly kind: string; readonly session: string }[];
      readonly shopping: readonly {
        readonly food: { readonly key: string };
        readonly neededGrams: number;
        readonly fromStockGrams: number;
        readonly packs: number;
      }[];
    };
  };
}
const kitchenOf = async (person: string, id: string) =>
  (
    await served.ask<Kitchen>(
      person,
      `query Kitchen($id: ID!) { week(householdId: $id, date: "${DAY}") { plan { batches { base { key } session state }
        tasks { id kind session } shopping { food { key } neededGrams fromStockGrams packs } } } }`,
      { id },
    )
  ).week.plan;

/** What the newest plan takes from leftovers and the freezer; no field of the API shows it. */
async function usedUp(householdId: string): Promise<readonly { readonly date: string }[]> {
  const [row] = await served.inProcess.database.owner<{ uses: { date: string }[] }[]>`
    select ready_uses as uses from week_plan where household_id = ${localOf(householdId)} and state <> 'REPLACED'`;
  return row!.uses;
}

describe("what a carer says is obeyed by the next plan", () => {
  it("takes from the cupboard what is said to be there, before anything is bought", async () => {
    const home = await served.household().child().planned(DAY).found();
    const bought = (await kitchenOf(home.coordinator, home.id)).shopping.find(({ packs }) => packs > 0)!;
    expect(bought.fromStockGrams).toBe(0);
    await home.change(STOCK, { entries: [{ food: bought.food.key, grams: 50_000 }] });
    expect((await home.plan(DAY)).__typename).toBe("WeekPayload");
    const line = (await kitchenOf(home.coordinator, home.id)).shopping.find(({ food }) => food.key === bought.food.key);
    // Dishes may have changed with what is there; what is needed of it is not bought.
    expect(line === undefined || (line.packs === 0 && line.fromStockGrams === line.neededGrams)).toBe(true);
  });

  it("does nothing in a session that has no minutes on that one day", async () => {
    const home = await served.household().child().found();
    const session = "evening-2027-01-12";
    const none = { kind: "EVENING", date: "2027-01-12", startsAt: "19:30", handsOnMinutes: 0, elapsedMinutes: 0 };
    await home.change(PREP, { prepTimes: [none] });
    expect((await home.plan(DAY)).__typename).toBe("WeekPayload");
    const { tasks, batches } = await kitchenOf(home.coordinator, home.id);
    expect([...tasks, ...batches].filter((entry) => entry.session === session)).toEqual([]);
  });

  it("keeps what was cooked: a finished base stays where it was, and is done", async () => {
    const home = await served.household().child().carer("HELPER").planned(DAY).found();
    const { revision } = (await home.week(DAY))!;
    const { tasks, batches } = await kitchenOf(home.coordinator, home.id);
    const task = tasks.find(({ kind }) => kind === "BASE")!;
    const made = batches.filter(({ session }) => session === task.session).map(({ base }) => base.key);
    const work = { taskId: task.id, seenRevision: revision };
    // Taking twice is still taking; another carer cannot finish it meanwhile.
    for (let times = 0; times < 2; times += 1)
      expect((await served.send(home.carers.HELPER!, TAKE, work)).task.state).toBe("TAKEN");
    expect(await served.send(home.coordinator, FINISH, work)).toMatchObject({ __typename: "TaskHeld" });
    expect((await served.send(home.carers.HELPER!, FINISH, work)).task.state).toBe("DONE");
    const done = (await kitchenOf(home.coordinator, home.id)).batches.filter(({ state }) => state === "DONE");
    expect(done).toHaveLength(1);
    expect(made).toContain(done[0]!.base.key);
    expect((await home.plan(DAY)).__typename).toBe("WeekPayload");
    expect((await kitchenOf(home.coordinator, home.id)).batches).toContainEqual(done[0]);
  });

  it("lets a house rule rest on one day, where it stood in the way of a swap", async () => {
    const home = await served.household().child().planned(DAY).found();
    const again = async () => {
      const { plan, revision } = (await home.week(DAY))!;
      const mains = plan.boxes.map(({ items }) => items.find(({ slot }) => slot === "MAIN")!);
      return served.send(
        home.coordinator,
        "mutation Swap($input: SwapItemInput!) { swapItem(input: $input) { __typename ... on SwapRefused { conflicts { kind } } } }",
        { itemId: mains[3]!.id, dish: mains[0]!.dish.key, seenRevision: revision },
      );
    };
    const refused = await again();
    expect(refused.__typename).toBe("SwapRefused");
    expect(refused.conflicts.map(({ kind }) => kind)).toContain("DISH_REPEATS");
    for (const rule of ["DISH_REPEATS", "STARCH_CHANGES"])
      expect((await home.change(RELAX, { rule, date: "2027-01-14" })).__typename).toBe("KitchenPayload");
    expect((await again()).conflicts?.map(({ kind }) => kind) ?? []).not.toContain("DISH_REPEATS");
  });

  it("uses no leftover after its last safe day", async () => {
    const home = await served.household().child().found();
    const say = (cookedOn: string) =>
      home.change(LEFTOVERS, { leftovers: [{ base: "tomato-sauce", grams: 2_000, cookedOn }] });
    // Four days chilled, the day of cooking counted: over before the week begins.
    expect((await say("2027-01-06")).__typename).toBe("KitchenPayload");
    expect((await home.plan(DAY)).__typename).toBe("WeekPayload");
    expect(await usedUp(home.id)).toEqual([]);
    expect((await say("2027-01-10")).__typename).toBe("KitchenPayload");
    expect((await home.plan(DAY)).__typename).toBe("WeekPayload");
    for (const { date } of await usedUp(home.id)) expect(date <= "2027-01-13").toBe(true);
  });
});

describe("a school's rules", () => {
  const document = (version: number, inForceFrom: string, kinds: readonly string[]) =>
    JSON.stringify({
      format: "noonpail-rule-set/1",
      key: "class-fruit",
      title: "Fruit of the class",
      layer: "CLASS",
      coversFoodFromHome: true,
      language: "en",
      version,
      inForceFrom,
      rules: [
        {
          id: "no-such-fruit",
          kind: "EXCLUDE",
          says: "Not this fruit, please.",
          level: "FORBID",
          source: "own rule of an invented school",
          matches: { anyOf: [{ kinds }] },
        },
      ],
    });
  const load = (seenRevision: number, text: string) =>
    served.send("demo:ruth", LOAD, {
      schoolId: schoolId("primary"),
      schoolClassId: classId("class-4"),
      seenRevision,
      document: text,
    });
  const rulesOf = async (person: string, id: string) =>
    (
      await served.ask<{ week: { plan: { origin: { ruleSetVersions: string[] } } } }>(
        person,
        `query Rules($id: ID!) { week(householdId: $id, date: "${DAY}") { plan { origin { ruleSetVersions } } } }`,
        { id },
      )
    ).week.plan.origin.ruleSetVersions.filter((name) => name.startsWith("class-fruit"));

  it("of one class hold for that class, from the day they are in force, in the version of that day", async () => {
    expect((await load(0, document(1, "2026-09-01", ["banana"]))).__typename).toBe("LoadRuleSetPayload");
    const inClass = await served.household().child({ dateOfBirth: "2018-05-07" }, "class-4").planned(DAY).found();
    const beside = await served.household().child({ dateOfBirth: "2022-03-19" }, "reception").planned(DAY).found();
    expect(await rulesOf(inClass.coordinator, inClass.id)).toEqual(["class-fruit@1"]);
    expect(await rulesOf(beside.coordinator, beside.id)).toEqual([]);
    // Version 2 begins on Wednesday: both hold in this week, each on its days.
    expect((await load(1, document(2, "2027-01-13", ["apple"]))).__typename).toBe("LoadRuleSetPayload");
    const { week } = await inClass.plan(DAY);
    expect(await rulesOf(inClass.coordinator, inClass.id)).toEqual(["class-fruit@1", "class-fruit@2"]);
    const dishesOn = (dates: readonly string[]) =>
      week.plan.boxes
        .filter(({ date }) => dates.includes(date))
        .flatMap(({ items }) => items.map(({ dish }) => dish.key));
    const late = dishesOn(["2027-01-13", "2027-01-14", "2027-01-15"]);
    expect(late.length).toBeGreaterThan(10);
    expect(late.filter((key) => key.startsWith("apple"))).toEqual([]);
    expect(dishesOn(["2027-01-11", "2027-01-12"]).filter((key) => key.includes("banana"))).toEqual([]);
    // A version that is loaded is never edited: the next one has the next number.
    const edited = await load(2, document(2, "2027-01-13", ["pear"]));
    expect(edited).toMatchObject({ __typename: "DocumentRefused", issues: [{ path: "version", line: 1 }] });
  });

  it("are read by anyone who is signed in, the newest version of each", async () => {
    const { school } = await served.ask<{ school: { name: string; ruleSets: { key: string; version: number }[] } }>(
      served.newcomer(),
      "query School($id: ID!) { school(id: $id) { name ruleSets { key version } } }",
      { id: schoolId("primary") },
    );
    expect(school.name).toBe("Quillbrook Primary School");
    expect(school.ruleSets).toContainEqual({ key: "class-fruit", version: 2 });
    expect(new Set(school.ruleSets.map(({ key }) => key)).size).toBe(school.ruleSets.length);
    expect(
      await served.ask(served.newcomer(), "query School($id: ID!) { school(id: $id) { name } }", { id: "nonsense" }),
    ).toEqual({ school: null });
  });
});
