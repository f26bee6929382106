import { globalId } from "../../src/graphql/global-id.js";
import { localOf, useServedApp, type Household } from "../support/served-app.js";
import { DAY, FINISH, PREP, TAKE } from "./documents.js";

const served = useServedApp();
const [sunday, friday] = ["2027-01-10", "2027-01-15"];

interface Named {
  readonly id: string;
  readonly displayName: string;
}
interface Rota {
  readonly rota: readonly {
    readonly key: string;
    readonly kind: string;
    readonly startsAt: string;
    readonly carers: number;
    readonly handsOnMinutes: number;
    readonly isPlanned: boolean;
    readonly onDuty: readonly Named[];
  }[];
  readonly fairness: {
    readonly from: string;
    readonly othersMinutes: number;
    readonly carers: readonly {
      readonly person: Named;
      readonly minutesDone: number;
      readonly sharePercent: number;
      readonly minutesAhead: number;
    }[];
  };
  readonly rotaProposal: {
    readonly token: string;
    readonly isFairest: boolean;
    readonly sessions: readonly {
      readonly session: { readonly key: string };
      readonly onDuty: readonly Named[];
      readonly openHands: number;
    }[];
    readonly minutes: readonly { readonly person: Named; readonly minutes: number }[];
  };
  readonly availability: readonly {
    readonly person: Named;
    readonly weekday: string;
    readonly kind: string;
    readonly minutes: number;
  }[];
}
const PERSON = "{ id displayName }";
const ROTA = `query Rota($id: ID!, $from: LocalDate!, $to: LocalDate!) { household(id: $id) {
  rota(from: $from, to: $to) { key kind startsAt carers handsOnMinutes isPlanned onDuty ${PERSON} }
  fairness(asOf: $to) { from othersMinutes carers { person ${PERSON} minutesDone sharePercent minutesAhead } }
  rotaProposal(from: $from, to: $to) { token isFairest sessions { session { key } onDuty ${PERSON} openHands } minutes { person ${PERSON} minutes } }
  availability { person ${PERSON} weekday kind minutes } } }`;
const seen = async (home: Household, person = home.coordinator, from = sunday, to = friday) =>
  (await served.ask<{ household: Rota }>(person, ROTA, { id: home.id, from, to })).household;

const saying = (field: string) => {
  const type = `${field[0]!.toUpperCase()}${field.slice(1)}Input!`;
  return `mutation M($input: ${type}) { ${field}(input: $input) { __typename ... on UserError { message }
    ... on InvalidInput { issues { field fix } } ... on NotPermitted { neededRole } ... on RotaPayload { household { revision } } } }`;
};
const change = (home: Household, field: string, input: Record<string, unknown>, person = home.coordinator) =>
  home.change(saying(field), input, person);
const personId = async (person: string) =>
  (await served.ask<{ me: { person: { id: string } } }>(person, "{ me { person { id } } }")).me.person.id;

let home: Household;
let ids: Record<"COORDINATOR" | "COOK" | "HELPER" | "OBSERVER", string>;
beforeAll(async () => {
  home = await served.household().child().carer("COOK").carer("HELPER").carer("OBSERVER").planned(DAY).found();
  const entries = await Promise.all(
    Object.entries(home.carers).map(async ([role, person]) => [role, await personId(person)] as const),
  );
  ids = Object.fromEntries(entries) as typeof ids;
});

describe("the rota", () => {
  it("lists the sessions the kitchen gives time to and those of the plan, with what is to be done in them", async () => {
    const { rota } = await seen(home);
    // The usual kitchen: Sunday afternoon, the evenings before school and the mornings of school.
    expect(rota.map(({ key }) => key)).toEqual([
      "weekend-2027-01-10",
      "evening-2027-01-10",
      ...["11", "12", "13", "14"].flatMap((day) => [`morning-2027-01-${day}`, `evening-2027-01-${day}`]),
      "morning-2027-01-15",
    ]);
    const { week } = await served.ask<{
      week: { plan: { sessions: { key: string; startsAt: string; handsOnMinutes: number }[] } };
    }>(
      home.coordinator,
      `query W($id: ID!) { week(householdId: $id, date: "${DAY}") { plan { sessions { key startsAt handsOnMinutes } } } }`,
      { id: home.id },
    );
    for (const row of rota) {
      const session = week.plan.sessions.find(({ key }) => key === row.key);
      expect(row).toMatchObject({
        isPlanned: true,
        carers: 1,
        handsOnMinutes: session?.handsOnMinutes ?? 0,
        onDuty: [],
      });
      if (session) expect(row.startsAt).toBe(session.startsAt);
    }
    const later = (await seen(home, home.coordinator, "2027-01-18", "2027-01-18")).rota;
    expect(later.map(({ key, handsOnMinutes, isPlanned }) => [key, handsOnMinutes, isPlanned])).toEqual([
      ["morning-2027-01-18", 30, false],
      ["evening-2027-01-18", 25, false],
    ]);
  });

  it("says who is on, until somebody else is, and loses whoever leaves the household", async () => {
    const session = "morning-2027-01-18";
    const onDuty = async () =>
      (await seen(home, home.coordinator, "2027-01-18", "2027-01-18")).rota[0]!.onDuty.map(({ id }) => id);
    const set = (personIds: readonly string[]) =>
      change(home, "setDuties", { duties: [{ session, personIds }] }, home.carers.COOK);
    expect((await set([ids.HELPER, ids.COOK])).__typename).toBe("RotaPayload");
    expect((await onDuty()).sort()).toEqual([ids.HELPER, ids.COOK].sort());
    await set([ids.HELPER]);
    expect(await onDuty()).toEqual([ids.HELPER]);
    const gone = served.newcomer();
    const { database } = served.inProcess;
    const goneId = await personId(gone);
    await database.addCarer(localOf(goneId), localOf(home.id), "HELPER");
    await set([goneId]);
    expect(await onDuty()).toEqual([goneId]);
    await database.owner`delete from membership where person_id = ${localOf(goneId)}`;
    expect(await onDuty()).toEqual([]);
    await set([]);
  });

  it("refuses sessions there are not and carers who do not help", async () => {
    const before = await served.everyRow();
    const set = (session: string, personIds: readonly string[] = [ids.HELPER]) =>
      change(home, "setDuties", { duties: [{ session, personIds }] });
    for (const session of ["morning-2027-01-16", "lunch-2027-01-11", "morning-2027-02-30", "morning", ""]) {
      const refused = await set(session);
      expect([session, refused.__typename, refused.issues[0]!.field]).toEqual([
        session,
        "InvalidInput",
        "duties.0.session",
      ]);
    }
    const said = new Set<string>();
    for (const nobody of [
      ids.OBSERVER,
      await personId("demo:leo"),
      globalId("Person", "00000000-0000-4000-8000-000000000000"),
      home.id,
      "",
    ]) {
      const refused = await set("morning-2027-01-11", [nobody]);
      expect(refused.__typename).toBe("HelperNotFound");
      said.add(refused.message);
    }
    expect(said.size).toBe(1);
    expect((await set("morning-2027-01-11", [ids.COOK, ids.COOK])).__typename).toBe("InvalidInput");
    const twice = { duties: ["a", "b"].map(() => ({ session: "morning-2027-01-11", personIds: [] })) };
    expect((await change(home, "setDuties", twice)).__typename).toBe("InvalidInput");
    expect((await change(home, "setDuties", { duties: [] })).__typename).toBe("InvalidInput");
    for (const [from, to] of [
      ["2027-01-11", "2027-01-10"],
      ["2027-01-11", "2027-03-14"],
    ] as const) {
      const { errors } = await served.post(home.coordinator, ROTA, { id: home.id, from, to });
      expect(errors[0]!.extensions["code"]).toBe("BAD_USER_INPUT");
      const accept = await change(home, "acceptRota", { from, to, proposal: "x" });
      expect(accept.issues[0]!.field).toBe("to");
    }
    expect(await served.everyRow()).toBe(before);
  });
});

describe("availability", () => {
  it("is said by each carer for themselves, by a coordinator for anybody, and replaced by the next", async () => {
    const entries = [{ weekday: "TUESDAY", kind: "MORNING", minutes: 0 }];
    const say = (person: string, input: object) => change(home, "setAvailability", { entries, ...input }, person);
    expect((await say(home.carers.HELPER!, {})).__typename).toBe("RotaPayload");
    expect(await say(home.carers.HELPER!, { personId: ids.COOK })).toMatchObject({
      __typename: "NotPermitted",
      neededRole: "COORDINATOR",
    });
    expect((await say(home.coordinator, { personId: ids.COOK })).__typename).toBe("RotaPayload");
    expect((await say(home.coordinator, { personId: ids.OBSERVER })).__typename).toBe("HelperNotFound");
    const { availability } = await seen(home, home.carers.OBSERVER);
    expect(availability.map(({ person, ...entry }) => [person.id, entry]).sort()).toEqual(
      [ids.HELPER, ids.COOK].sort().map((id) => [id, entries[0]]),
    );
    for (const wrong of [{ minutes: 601 }, { minutes: -1 }])
      expect((await say(home.coordinator, { entries: [{ ...entries[0], ...wrong }] })).issues[0]!.field).toBe(
        "entries.0.minutes",
      );
    for (const personOf of [ids.HELPER, ids.COOK]) await say(home.coordinator, { personId: personOf, entries: [] });
    expect((await seen(home)).availability).toEqual([]);
  });
});

describe("fairness", () => {
  it("counts what was done as long as it took, else by estimate, and what is taken ahead", async () => {
    const { week } = await served.ask<{
      week: { plan: { tasks: { id: string; kind: string; session: string; handsOnMinutes: number }[] } };
    }>(
      home.coordinator,
      `query T($id: ID!) { week(householdId: $id, date: "${DAY}") { plan { tasks { id kind session handsOnMinutes } } } }`,
      { id: home.id },
    );
    const finishing = week.plan.tasks.filter(({ kind }) => kind === "FINISH");
    const [one, two] = finishing;
    const last = finishing.find(({ session }) => session === `morning-${friday}`)!;
    const say = (person: string, document: string, input: object) =>
      served.send(person, document, { seenRevision: 0, ...input });
    await say(home.carers.HELPER!, FINISH, { taskId: one!.id, minutes: 31.5 });
    await say(home.carers.COOK!, FINISH, { taskId: two!.id });
    await say(home.carers.COOK!, TAKE, { taskId: last.id });
    const { fairness } = await seen(home);
    const of = (id: string) => fairness.carers.find(({ person }) => person.id === id)!;
    const all = 31.5 + two!.handsOnMinutes;
    expect(fairness.from).toBe("2026-12-19");
    expect(fairness.carers.map(({ person }) => person.id)).not.toContain(ids.OBSERVER);
    expect(of(ids.HELPER)).toMatchObject({ minutesDone: 31.5, minutesAhead: 0 });
    expect(of(ids.HELPER).sharePercent).toBeCloseTo((100 * 31.5) / all, 1);
    expect(of(ids.COOK)).toMatchObject({ minutesDone: two!.handsOnMinutes, minutesAhead: last.handsOnMinutes });
    expect(of(ids.COORDINATOR)).toMatchObject({ minutesDone: 0, sharePercent: 0 });
    // 28 days later they are over.
    const over = (await seen(home, home.coordinator, "2027-02-12", "2027-02-12")).fairness;
    expect([over.from, ...over.carers.map(({ minutesDone }) => minutesDone)]).toEqual(["2027-01-16", 0, 0, 0]);
    // A new plan keeps them, though its work may be other work.
    await home.plan(DAY);
    expect((await seen(home)).fairness.carers.map(({ minutesDone }) => minutesDone)).toEqual(
      fairness.carers.map(({ minutesDone }) => minutesDone),
    );
  });
});

describe("a proposal", () => {
  it("evens four weeks out, asks nobody who cannot, and is on the rota once it is accepted", async () => {
    const never = ["MONDAY", "TUESDAY", "WEDNESDAY", "THURSDAY", "FRIDAY"].map((weekday) => ({
      weekday,
      kind: "MORNING",
      minutes: 0,
    }));
    await change(home, "setAvailability", { personId: ids.HELPER, entries: never });
    await change(home, "setDuties", { duties: [{ session: "morning-2027-01-13", personIds: [ids.COOK] }] });
    const { rotaProposal: offer, rota, fairness } = await seen(home);
    const work = rota.filter(({ handsOnMinutes, key }) => handsOnMinutes > 0 && key !== "morning-2027-01-13");
    expect(offer.sessions.map(({ session }) => session.key)).toEqual(work.map(({ key }) => key));
    for (const { session, onDuty, openHands } of offer.sessions) {
      expect([onDuty.length, openHands]).toEqual([1, 0]);
      expect([ids.OBSERVER, ...(session.key.startsWith("morning") ? [ids.HELPER] : [])]).not.toContain(onDuty[0]!.id);
    }
    const done = fairness.carers.reduce((sum, { minutesDone }) => sum + minutesDone, 0);
    const all = offer.minutes.reduce((sum, { minutes }) => sum + minutes, 0);
    expect(all).toBeGreaterThan(done);
    expect(await seen(home, home.carers.OBSERVER)).toMatchObject({ rotaProposal: { token: offer.token } });
    const accept = (proposal: string, person?: string) =>
      change(home, "acceptRota", { from: sunday, to: friday, proposal }, person);
    expect(await accept(offer.token, home.carers.HELPER)).toMatchObject({
      __typename: "NotPermitted",
      neededRole: "COOK",
    });
    expect((await accept("another")).__typename).toBe("ProposalMoved");
    expect((await accept(offer.token, home.carers.COOK)).__typename).toBe("RotaPayload");
    const after = await seen(home);
    const onDuty = (key: string) => after.rota.find((row) => row.key === key)!.onDuty.map(({ id }) => id);
    for (const { session, onDuty: proposed } of offer.sessions)
      expect(onDuty(session.key)).toEqual(proposed.map(({ id }) => id));
    expect(onDuty("morning-2027-01-13")).toEqual([ids.COOK]);
    expect(after.rotaProposal.sessions).toEqual([]);
    expect((await accept(offer.token)).__typename).toBe("ProposalMoved");
  });

  it("for two pairs of hands names two carers, and says what nobody can take", async () => {
    const kitchen = await served.household().child().carer("HELPER").found();
    const prepTimes = [
      { kind: "MORNING", date: "2027-01-18", startsAt: "06:45", handsOnMinutes: 60, elapsedMinutes: 60, carers: 3 },
    ];
    expect((await kitchen.change(PREP, { prepTimes })).__typename).toBe("KitchenPayload");
    const { rotaProposal } = await seen(kitchen, kitchen.coordinator, "2027-01-18", "2027-01-18");
    const [morning] = rotaProposal.sessions;
    expect(new Set(morning!.onDuty.map(({ id }) => id)).size).toBe(2);
    expect(morning).toMatchObject({ session: { key: "morning-2027-01-18" }, openHands: 1 });
  });
});

describe("whoever is no carer of the household", () => {
  it("sees nothing of rota, fairness or availability, in the database neither", async () => {
    const other = await served.household().found();
    const { database } = served.inProcess;
    await change(home, "setAvailability", { entries: [{ weekday: "MONDAY", kind: "EVENING", minutes: 5 }] });
    await database.addHome(localOf(home.children[0]!), localOf(other.id));
    for (const person of [served.newcomer(), other.coordinator]) {
      const { household } = await served.ask<{ household: unknown }>(person, ROTA, {
        id: home.id,
        from: sunday,
        to: friday,
      });
      expect(household).toBeNull();
      const rows = await database.db.asPerson(localOf(await personId(person)), async (tx) => [
        await tx.duty.count(),
        await tx.availability.count(),
        await tx.reminder.count(),
        await tx.task.count(),
      ]);
      expect(rows).toEqual([0, 0, 0, 0]);
    }
    const own = await database.db.asPerson(localOf(ids.OBSERVER), (tx) => tx.duty.count());
    expect(own).toBeGreaterThan(0);
    await database.owner`delete from residence where household_id = ${localOf(other.id)}`;
  });

  it("writes none of it, and a helper says nothing for another, whatever the server lets through", async () => {
    const { db } = served.inProcess.database;
    const householdId = localOf(home.id);
    const duty = { householdId, session: "morning-2027-01-11", personId: localOf(ids.HELPER) };
    const can = { householdId, personId: localOf(ids.COOK), weekday: "MONDAY", kind: "MORNING", minutes: 5 };
    const reminder = {
      householdId,
      kind: "TASK_GETS_LATE",
      session: "s",
      taskKey: "t",
      aboutAt: new Date(0),
      dueAt: new Date(0),
    };
    for (const person of [localOf(await personId("demo:leo")), localOf(ids.OBSERVER)]) {
      await expect(db.asPerson(person, (tx) => tx.duty.createMany({ data: [duty] }))).rejects.toThrow(
        /row-level security/,
      );
      await expect(db.asPerson(person, (tx) => tx.availability.createMany({ data: [can] }))).rejects.toThrow(
        /row-level security/,
      );
      await expect(db.asPerson(person, (tx) => tx.reminder.createMany({ data: [reminder] }))).rejects.toThrow(
        /row-level security/,
      );
    }
    const helper = localOf(ids.HELPER);
    await expect(db.asPerson(helper, (tx) => tx.availability.createMany({ data: [can] }))).rejects.toThrow(
      /row-level security/,
    );
  });
});
