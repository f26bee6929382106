import { newKey } from "../support/app.js";
import { useServedApp, type Household } from "../support/served-app.js";
import { DAY, FOUND, LOAD, PLAN } from "./documents.js";
import {
  administrator,
  carerMutations,
  documentOf,
  inputNow,
  kitchenMutations,
  schoolDocumentOf,
  schoolInputNow,
  schoolMutations,
  weekMutations,
  withoutRevision,
} from "./every-mutation.js";

const served = useServedApp();
let home: Household;
beforeAll(async () => {
  home = await served.household().child().planned(DAY).found();
});

// The week first: a child without a school, added among the others, would stop it.
const dated = [...weekMutations, ...kitchenMutations].map((mutation) => [mutation.field, mutation] as const);
const carers = carerMutations.map((mutation) => [mutation.field, mutation] as const);
// Handing over comes last: after it the sender coordinates no more.
const order = [...dated, ...carers.filter(([field]) => field !== "handOverCoordination")];
/** Other carers' tasks do not overtake each other, nor do ticks. */
const anyRevision = ["takeTask", "releaseTask", "handTask", "finishTask", "undoTask", "tickShoppingLine"];

describe("a mutation sent again", () => {
  it.each(order)("%s with the same key is done once, however many arrive together", async (_, mutation) => {
    const input = { idempotencyKey: newKey(), ...(await inputNow(mutation, home)) };
    const document = documentOf(mutation.field);
    const send = (change: Record<string, unknown> = {}) =>
      served.send(home.coordinator, document, { ...input, ...change });
    const start = await served.everyRow();
    const together = await Promise.all([send(), send(), send()]);
    expect(new Set(together.map(({ __typename }) => __typename)).size).toBe(1);
    expect(together[0].__typename).toMatch(/Payload$/);
    const done = await served.everyRow();
    expect(done).not.toBe(start);

    expect(await send()).toEqual(together[0]);
    expect(await send(mutation.other)).toMatchObject({ __typename: "KeyReused", usedFor: mutation.field });
    // The key belongs to the action too.
    const another = mutation.field === "setStock" ? "setEquipment" : "setStock";
    const elsewhere = { equipment: [{ kind: "OVEN", units: 1 }], entries: [{ food: "apple-raw", grams: 1 }] };
    const reused = await served.send(home.coordinator, documentOf(another), {
      idempotencyKey: input.idempotencyKey,
      householdId: home.id,
      seenRevision: await home.revision(),
      ...(another === "setStock" ? { entries: elsewhere.entries } : { equipment: elsewhere.equipment }),
    });
    expect(reused).toMatchObject({ __typename: "KeyReused", usedFor: mutation.field });
    expect(await served.everyRow()).toBe(done);
  });

  it.each(dated.filter(([field]) => !anyRevision.includes(field)))(
    "%s on a reading that is out of date changes nothing and says which revision is current",
    async (_, mutation) => {
      const input = await inputNow(mutation, home);
      const before = await served.everyRow();
      for (const seenRevision of [Number(input["seenRevision"]) - 1, Number(input["seenRevision"]) + 1, -1]) {
        const refused = await served.send(home.coordinator, documentOf(mutation.field), { ...input, seenRevision });
        expect(refused).toMatchObject({ __typename: "RevisionPassed", currentRevision: input["seenRevision"] });
      }
      expect(await served.everyRow()).toBe(before);
    },
  );

  it("a key that is too short or too long is refused before anything happens", async () => {
    // What an input is about may have to be arranged first.
    const inputs = [];
    for (const [field, mutation] of order) inputs.push({ field, input: await inputNow(mutation, home) });
    const before = await served.everyRow();
    for (const { field, input } of inputs) {
      for (const idempotencyKey of ["", "1234567", "x".repeat(101)]) {
        const refused = await served.send(home.coordinator, documentOf(field), { ...input, idempotencyKey });
        expect(refused.issues.map(({ field }) => field)).toEqual(["idempotencyKey"]);
      }
    }
    expect(await served.everyRow()).toBe(before);
  });

  it("a refused request leaves its key free for the same attempt, put right", async () => {
    const idempotencyKey = newKey();
    const stock = documentOf("setStock");
    const refused = await home.change(stock, { idempotencyKey, entries: [{ food: "no-such-food", grams: 1 }] });
    expect(refused.__typename).toBe("InvalidInput");
    expect((await home.change(stock, { idempotencyKey, seenRevision: 0, entries: [] })).__typename).toBe(
      "RevisionPassed",
    );
    expect((await home.change(stock, { idempotencyKey, entries: [] })).__typename).toBe("KitchenPayload");
  });

  it("two people may use the same key for different things", async () => {
    const idempotencyKey = newKey();
    const found = (name: string) =>
      served.send(served.newcomer(), FOUND, { idempotencyKey, name, timeZone: "UTC", currency: "EUR" });
    const [one, two] = [await found("One"), await found("Two")];
    expect([one.__typename, two.__typename]).toEqual(["CreateHouseholdPayload", "CreateHouseholdPayload"]);
    expect(one.household.id).not.toBe(two.household.id);
  });

  it("a week planned by two people at once for the first time is planned by one of them", async () => {
    const shared = await served.household().child().carer("COOK").found();
    const input = { householdId: shared.id, date: DAY, seenRevision: 0 };
    const answers = await Promise.all(
      [shared.coordinator, shared.carers.COOK!].map((person) => served.send(person, PLAN, input)),
    );
    expect(answers.map(({ __typename }) => __typename).sort()).toEqual(["RevisionPassed", "WeekPayload"]);
    expect(await shared.week(DAY)).toMatchObject({ revision: 1, plan: { number: 1 } });
  });

  it("one rule set document loaded three times at once is one version", async () => {
    const { me } = await served.ask<{ me: { administers: { id: string }[] } }>(
      "demo:ruth",
      "{ me { administers { id } } }",
    );
    const document = JSON.stringify({
      format: "noonpail-rule-set/1",
      key: "once-only",
      title: "Once only",
      layer: "SCHOOL",
      coversFoodFromHome: true,
      language: "en",
      version: 1,
      inForceFrom: "2027-06-01",
      rules: [
        {
          id: "no-kiwi",
          kind: "EXCLUDE",
          says: "No kiwi.",
          level: "FORBID",
          source: "own rule of an invented school",
          matches: { anyOf: [{ kinds: ["kiwi"] }] },
        },
      ],
    });
    const input = { schoolId: me.administers[0]!.id, seenRevision: 0, document };
    const same = { ...input, idempotencyKey: newKey() };
    const answers = await Promise.all([1, 2, 3].map(() => served.send("demo:ruth", LOAD, same)));
    expect(answers.map(({ __typename }) => __typename)).toEqual(Array(3).fill("LoadRuleSetPayload"));
    const before = await served.everyRow();
    expect(await served.send("demo:ruth", LOAD, { ...same, seenRevision: 1 })).toMatchObject({
      __typename: "KeyReused",
    });
    expect(await served.send("demo:ruth", LOAD, input)).toMatchObject({
      __typename: "RevisionPassed",
      currentRevision: 1,
    });
    expect(await served.everyRow()).toBe(before);
  });
});

describe("a school's mutation sent again", () => {
  const cases = schoolMutations.map((mutation) => [mutation.field, mutation] as const);

  it.each(cases)("%s with the same key is done once, however many arrive together", async (field, mutation) => {
    const input = { idempotencyKey: newKey(), ...(await schoolInputNow(mutation, served)) };
    const send = (change: Record<string, unknown> = {}) =>
      served.send(administrator, schoolDocumentOf(field), { ...input, ...change });
    const start = await served.everyRow();
    const together = await Promise.all([send(), send(), send()]);
    expect(new Set(together.map(({ __typename }) => __typename)).size).toBe(1);
    expect(together[0].__typename).toMatch(/Payload$|^RuleSetCounts$/);
    const done = await served.everyRow();
    expect(done).not.toBe(start);

    expect(await send()).toEqual(together[0]);
    expect(await send(mutation.other)).toMatchObject({ __typename: "KeyReused", usedFor: field });
    // The key belongs to the action too.
    const another = schoolMutations.find((other) => other.field !== field && other.field !== "loadRuleSet")!;
    const reused = await served.send(administrator, schoolDocumentOf(another.field), {
      ...(await schoolInputNow(another, served)),
      idempotencyKey: input.idempotencyKey,
    });
    expect(reused).toMatchObject({ __typename: "KeyReused", usedFor: field });
    expect(await served.everyRow()).toBe(done);
  });

  it.each(cases.filter(([field]) => !withoutRevision.includes(field)))(
    "%s on a reading that is out of date changes nothing and says what is current",
    async (field, mutation) => {
      const input = await schoolInputNow(mutation, served);
      const before = await served.everyRow();
      for (const seenRevision of [Number(input["seenRevision"]) - 1, Number(input["seenRevision"]) + 1, -1]) {
        const refused = await served.send(administrator, schoolDocumentOf(field), { ...input, seenRevision });
        expect(refused).toMatchObject({ __typename: "RevisionPassed", currentRevision: input["seenRevision"] });
      }
      expect(await served.everyRow()).toBe(before);
    },
  );

  it.each(cases)("%s with a key that is too short or too long is refused", async (field, mutation) => {
    const input = await schoolInputNow(mutation, served);
    const before = await served.everyRow();
    for (const idempotencyKey of ["", "1234567", "x".repeat(101)]) {
      const refused = await served.send(administrator, schoolDocumentOf(field), { ...input, idempotencyKey });
      expect(refused.issues.map((issue) => issue.field)).toEqual(["idempotencyKey"]);
    }
    expect(await served.everyRow()).toBe(before);
  });
});
