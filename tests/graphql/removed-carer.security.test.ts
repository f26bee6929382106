import { localOf, useServedApp, type Household } from "../support/served-app.js";
import { AGREE, DAY, PIN, STOCK } from "./documents.js";

// OWASP API Security Top 10 2023, API1 "Broken Object Level Authorization": rights are asked for with every access, not at sign-in.
const served = useServedApp();
let home: Household;
beforeAll(async () => {
  home = await served.household().child().carer("COOK").planned(DAY).found();
});

const READ = `query Read($id: ID!, $week: ID!, $item: ID!, $day: LocalDate!) { household(id: $id) { id } node(id: $week) { id }
  item: node(id: $item) { id } week(householdId: $id, date: $day) { id } me { households { id } } }`;

it("a carer who was removed reads and changes nothing more, though the token still holds", async () => {
  const cook = home.carers.COOK!;
  const week = (await home.week(DAY))!;
  const item = week.plan.boxes[0]!.items[0]!.id;
  const variables = { id: home.id, week: week.id, item, day: DAY };
  expect(await served.ask(cook, READ, variables)).toMatchObject({ household: { id: home.id }, week: { id: week.id } });

  const { owner, db } = served.inProcess.database;
  const person = await db.signIn(cook, cook);
  await owner`delete from membership where household_id = ${localOf(home.id)} and person_id = ${person}`;
  expect(await served.ask(cook, READ, variables)).toEqual({
    household: null,
    node: null,
    item: null,
    week: null,
    me: { households: [] },
  });
  const before = await served.everyRow();
  const seenRevision = week.revision;
  const kitchen = { householdId: home.id, seenRevision: 1, entries: [{ food: "apple-raw", grams: 1 }] };
  const answers = [
    await served.send(cook, PIN, { itemId: item, seenRevision }),
    await served.send(cook, AGREE, { weekId: week.id, seenRevision }),
    await served.send(cook, STOCK, kitchen),
  ];
  expect(answers.map(({ __typename }) => __typename)).toEqual(["NothingThere", "NothingThere", "HouseholdNotFound"]);
  expect(await served.everyRow()).toBe(before);
});
