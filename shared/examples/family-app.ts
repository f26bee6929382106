/**
 * What a family app does: read the week, look for another fruit, put it there, settle the week, and hear of every change as it
 * happens. Run while `npm start` serves: `npx tsx shared/examples/family-app.ts`, with the server's address if it is another.
 */
import {
  AgreeWeek,
  Alternatives,
  Changes,
  DisruptionOffer,
  InvitationOffer,
  InviteCarer,
  MyHomes,
  PlanWeek,
  SwapItem,
  WithdrawInvitation,
} from "../generated/operations.js";
import { signIn } from "./sign-in.js";

const DAY = "2027-01-11";
const ana = signIn("demo:ana");

const { me } = await ana.ask(MyHomes, { day: DAY });
const home = me.households[0]!;

// From where the answer stands on, nothing is missed and nothing told twice, however often the connection is lost.
const heard: string[] = [];
const following = ana.follow(
  Changes,
  { householdId: home.id, after: home.changeCursor },
  {
    onEvent: ({ changes: { kind, verb, by } }) => heard.push(`${kind} ${verb} by ${by?.displayName ?? "the server"}`),
    cursorOf: ({ changes }) => changes.cursor,
    withCursor: (variables, after) => ({ ...variables, after }),
  },
);

let week = home.week;
if (!week) {
  const planned = await ana.send(PlanWeek, { householdId: home.id, date: DAY, seenRevision: 0 });
  if (planned.__typename !== "WeekPayload") throw new Error(planned.message);
  week = planned.week;
}
const box = week.plan.boxes[0]!;
console.log(`${home.name}: ${box.child.name} on ${box.date}: ${box.items.map(({ dish }) => dish.name).join(", ")}`);

const fruit = box.items.find(({ slot }) => slot === "FRUIT")!;
const { alternatives } = await ana.ask(Alternatives, { itemId: fruit.id });
const others = alternatives.map(({ dish, pointsMore }) => `${dish.name} (+${pointsMore})`).join(", ");
console.log(`instead of ${fruit.dish.name}: ${others || "nothing while all else stays as it is"}`);

const choice = alternatives[0];
if (choice) {
  const swapped = await ana.send(SwapItem, {
    itemId: fruit.id,
    dish: choice.dish.key,
    seenRevision: week.revision,
  });
  if (swapped.__typename === "WeekPayload") week = swapped.week;
  console.log(
    swapped.__typename === "WeekPayload" ? `swapped; the week is at revision ${week.revision}` : swapped.message,
  );
}

const agreed = await ana.send(AgreeWeek, { weekId: week.id, seenRevision: week.revision });
console.log(agreed.__typename === "WeekPayload" ? `agreed: ${agreed.week.plan.state}` : agreed.message);

const { disruptionOffer } = await ana.ask(DisruptionOffer, {
  householdId: home.id,
  disruption: { foodMissing: { foodKind: "apple", date: DAY, until: "2027-01-15" } },
});
if (disruptionOffer.__typename === "DisruptionOffer") {
  const boxes = disruptionOffer.difference?.boxes.map(({ date, child }) => `${child.name} on ${date}`) ?? [];
  console.log(`without apples: ${boxes.join(", ") || "no box"} would change`);
} else console.log(`without apples: ${disruptionOffer.message}`);

const invited = await ana.send(InviteCarer, { householdId: home.id, role: "HELPER" });
if (invited.__typename !== "InvitationPayload") throw new Error(invited.message);
const { invitation: offer } = await ana.ask(InvitationOffer, { token: invited.token ?? "" });
console.log(`a link invites to ${offer?.householdName} as ${offer?.role}, until ${offer?.expiresAt}`);
const { id: invitationId } = invited.invitation;
console.log(`taken back: ${(await ana.send(WithdrawInvitation, { invitationId })).__typename}`);

// The last entries may still be on their way.
const end = (await ana.ask(MyHomes, { day: DAY })).me.households[0]!.changeCursor;
for (let tries = 0; following.cursor() !== end && home.changeCursor !== end && tries < 100; tries++)
  await new Promise((resolve) => setTimeout(resolve, 50));
console.log(`heard meanwhile: ${heard.join(", ") || "nothing"}`);
ana.close();
