/** What a family app does: read the week, look for another fruit, put it there, settle the week. Run while `npm start` serves. */
import { newKey, signIn } from "./client.js";

interface Item {
  id: string;
  slot: string;
  dish: { key: string; name: string };
}
interface Week {
  id: string;
  revision: number;
  plan: { state: string; boxes: { date: string; child: { name: string }; items: Item[] }[] };
}
type Answer = { __typename: string; message?: string; week?: Week };

const WEEK = "id revision plan { state boxes { date child { name } items { id slot dish { key name } } } }";
const DAY = "2027-01-11";

const ask = await signIn("demo:ana");
const { me } = await ask<{ me: { households: { id: string; name: string; week: Week | null }[] } }>(
  `query Week($day: LocalDate!) { me { households { id name week(date: $day) { ${WEEK} } } } }`,
  { day: DAY },
);
const home = me.households[0]!;
let week = home.week;
if (!week) {
  const { planWeek } = await ask<{ planWeek: Answer }>(
    `mutation Plan($input: PlanWeekInput!) { planWeek(input: $input) { __typename ... on UserError { message } ... on WeekPayload { week { ${WEEK} } } } }`,
    { input: { idempotencyKey: newKey(), householdId: home.id, date: DAY, seenRevision: 0 } },
  );
  if (!planWeek.week) throw new Error(planWeek.message);
  week = planWeek.week;
}
const box = week.plan.boxes[0]!;
console.log(`${home.name}: ${box.child.name} on ${box.date}: ${box.items.map((item) => item.dish.name).join(", ")}`);

const fruit = box.items.find((item) => item.slot === "FRUIT")!;
const { alternatives } = await ask<{ alternatives: { dish: { key: string; name: string }; pointsMore: number }[] }>(
  "query Others($item: ID!) { alternatives(itemId: $item) { dish { key name } pointsMore } }",
  { item: fruit.id },
);
console.log(
  `instead of ${fruit.dish.name}: ${alternatives.map((other) => `${other.dish.name} (+${other.pointsMore})`).join(", ") || "nothing while all else stays as it is"}`,
);

const choice = alternatives[0];
if (choice) {
  const { swapItem } = await ask<{ swapItem: Answer }>(
    `mutation Swap($input: SwapItemInput!) { swapItem(input: $input) { __typename ... on UserError { message } ... on WeekPayload { week { ${WEEK} } } } }`,
    { input: { idempotencyKey: newKey(), itemId: fruit.id, dish: choice.dish.key, seenRevision: week.revision } },
  );
  console.log(swapItem.week ? `swapped; the week is at revision ${swapItem.week.revision}` : swapItem.message);
  week = swapItem.week ?? week;
}

const { agreeWeek } = await ask<{ agreeWeek: Answer }>(
  `mutation Agree($input: AgreeWeekInput!) { agreeWeek(input: $input) { __typename ... on UserError { message } ... on WeekPayload { week { ${WEEK} } } } }`,
  { input: { idempotencyKey: newKey(), weekId: week.id, seenRevision: week.revision } },
);
console.log(agreeWeek.week ? `agreed: ${agreeWeek.week.plan.state}` : agreeWeek.message);

const missing = { foodMissing: { foodKind: "apple", date: DAY, until: "2027-01-15" } };
const { disruptionOffer } = await ask<{
  disruptionOffer: { message?: string; difference?: { boxes: { date: string; child: { name: string } }[] } | null };
}>(
  `query Offer($home: ID!, $missing: DisruptionInput!) { disruptionOffer(householdId: $home, disruption: $missing) {
    ... on UserError { message } ... on DisruptionOffer { difference { boxes { date child { name } } } } } }`,
  { home: home.id, missing },
);
console.log(
  `without apples: ${disruptionOffer.message ?? (disruptionOffer.difference?.boxes.map(({ date, child }) => `${child.name} on ${date}`).join(", ") || "no box")} would change`,
);
