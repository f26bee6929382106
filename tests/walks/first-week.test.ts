import { useServedApp, classId, type Said } from "../support/served-app.js";
import { AGREE, CHILD, DAY, ENROL, FOUND, PLAN, STOCK } from "../graphql/documents.js";

// The planner in its worker threads, with the search a person gets.
const served = useServedApp({ pool: true });
const box = [
  { ml: 700, leakProof: true },
  { ml: 250, leakProof: false },
  { ml: 250, leakProof: true },
  { ml: 200, leakProof: false },
];

/** From signing in for the first time to the first agreed week, each step as a family app would send it. */
test("a newcomer founds a household, adds two children and hears a first week being planned", async () => {
  const carer = served.newcomer();
  const founded = await served.send(carer, FOUND, { name: "Weir cottage", timeZone: "Europe/London", currency: "GBP" });
  const householdId = founded.household.id;
  let revision = founded.household.revision;
  const change = async (mutation: string, input: Record<string, unknown>): Promise<Said> => {
    const said = await served.send(carer, mutation, { householdId, seenRevision: revision, ...input });
    expect(said.__typename).toMatch(/Payload$/);
    revision = said.household.revision;
    return said;
  };
  for (const [name, dateOfBirth, attends] of [
    ["Una", "2013-08-14", "year-8"],
    ["Per", "2018-06-01", "class-4"],
  ] as const) {
    const { child } = await change(CHILD, { name, dateOfBirth, compartments: box, leaveAt: "08:10" });
    await change(ENROL, { childId: child.id, schoolClassId: classId(attends), fromDate: "2026-09-01" });
  }
  await change(STOCK, { entries: [{ food: "rice-white-raw", grams: 1000 }] });

  const about = { id: householdId };
  const progress = await served.subscribe(
    carer,
    "subscription Progress($id: ID!) { planProgress(householdId: $id) { weekStart percent bestPoints } }",
    about,
  );
  const changes = await served.subscribe(
    carer,
    "subscription Changes($id: ID!) { weekChanged(householdId: $id) { revision plan { state boxes { date child { name } } } } }",
    about,
  );
  const stranger = await served.subscribe(
    served.newcomer(),
    "subscription Theirs($id: ID!) { weekChanged(householdId: $id) { revision } }",
    about,
  );
  const planned = await served.send(carer, PLAN, { householdId, date: DAY, seenRevision: 0 });
  expect(planned.__typename).toBe("WeekPayload");
  expect(planned.changedBoxes).toHaveLength(10);
  expect(
    (await served.send(carer, AGREE, { weekId: planned.week.id, seenRevision: planned.week.revision })).week.plan.state,
  ).toBe("AGREED");

  await until(() => changes.events.length >= 2);
  // Each event is read when it arrives: the first may show the agreement already, and none shows an older week than the one before.
  const revisions = changes.events.map((event) => (event["weekChanged"] as { revision: number }).revision);
  expect(revisions).toEqual([...revisions].sort((a, b) => a - b));
  expect(revisions.at(-1)).toBe(2);
  expect(revisions).toHaveLength(2);
  expect(changes.events[0]).toMatchObject({ weekChanged: { plan: { state: expect.any(String) as string } } });
  const heard = progress.events.map((event) => event["planProgress"] as Progress);
  const percents = heard.map(({ percent }) => percent);
  expect(percents[0]).toBe(0);
  expect(percents.at(-1)).toBe(100);
  expect(percents.length).toBeGreaterThan(3);
  expect(heard.every(({ weekStart }) => weekStart === DAY)).toBe(true);
  expect(heard.at(-1)!.bestPoints).not.toBeNull();
  expect(percents).toEqual([...percents].sort((a, b) => a - b));
  await stranger.ended;
  expect(stranger.events).toEqual([]);

  // What sharing saves was worked out beside the plan.
  const { week } = await served.ask<{ week: { plan: { sharing: { handsOnMinutesShared: number } | null } } }>(
    carer,
    "query Gain($id: ID!, $day: LocalDate!) { week(householdId: $id, date: $day) { plan { sharing { handsOnMinutesShared savedMinutes } } } }",
    { ...about, day: DAY },
  );
  expect(week.plan.sharing!.handsOnMinutesShared).toBeGreaterThan(0);
});

interface Progress {
  readonly weekStart: string;
  readonly percent: number;
  readonly bestPoints: number | null;
}

async function until(holds: () => boolean): Promise<void> {
  for (let tries = 0; !holds(); tries += 1) {
    if (tries > 500) throw new Error("waited 5 s in vain");
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}

test("a subscription to a household that is not there, or not one's own, ends without a word", async () => {
  const home = await served.household().found();
  for (const id of ["", "nonsense", home.id]) {
    for (const field of ["weekChanged", "planProgress"]) {
      const heard = await served.subscribe(
        served.newcomer(),
        `subscription Theirs($id: ID!) { ${field}(householdId: $id) { weekStart } }`,
        { id },
      );
      await heard.ended;
      expect(heard.events).toEqual([]);
    }
  }
});
