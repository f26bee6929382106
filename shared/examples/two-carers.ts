/**
 * Two carers reach for one task and one hears what the other does; then one reads a label and packs a box, and gets a calendar
 * address for what is theirs to do. At the end the child's other home reads the handover note, sees the boxes without anything of this
 * kitchen, and declines to swap a night. Run while `npm start` serves, after family-app.
 */
import {
  AnswerResidenceChange,
  BoxesOfChild,
  Changes,
  Fairness,
  FinishTask,
  Handover,
  MarkPacked,
  MyHomes,
  ProposeResidenceChange,
  RecordLabel,
  RenewFeedAddress,
  ResidenceOf,
  RotaProposal,
  TakeTask,
  Timetable,
  WriteHandover,
} from "../generated/operations.js";
import { signIn } from "./sign-in.js";

const DAY = "2027-01-11";
/** On the server's clock, should it not be ours. */
const TODAY = process.argv[3] ?? new Date().toISOString().slice(0, 10);
const tom = signIn("demo:tom");
const iris = signIn("demo:iris");
const home = async () => (await tom.ask(MyHomes, { day: DAY })).me.households[0]!;

const { id: householdId, changeCursor, week } = await home();
if (!week) throw new Error("Plan the week first: run family-app.");

const { week: timed } = await tom.ask(Timetable, { householdId, week: DAY });
const morning = timed?.plan.sessions.find(({ key }) => key === `morning-${DAY}`);
if (morning?.timing) {
  const { leastMinutes, provenShortest, latestStartsAt } = morning.timing;
  const share = morning.carers.map(({ carer, handsOnMinutes }) => `carer ${carer} ${handsOnMinutes} min`).join(", ");
  const bound = provenShortest ? "no order of the tasks is shorter" : `at least ${leastMinutes} min in any order`;
  console.log(`the morning: ${morning.startsAt} to ${morning.endsAt} (${share}), begin by ${latestStartsAt}; ${bound}`);
}

const task = week.plan.tasks.find(({ state }) => state === "OPEN");
if (!task) throw new Error("Every task is taken: start with an empty data folder.");
const seen = new Promise<string>((resolve) =>
  iris.follow(
    Changes,
    { householdId, after: changeCursor },
    {
      onEvent({ changes: { task: about, by } }) {
        if (about?.id === task.id && about.takenBy)
          resolve(`${about.takenBy.displayName} (told by ${by?.displayName})`);
      },
      cursorOf: ({ changes }) => changes.cursor,
      withCursor: (variables, after) => ({ ...variables, after }),
    },
  ),
);
const take = (carer: typeof tom) => carer.send(TakeTask, { taskId: task.id, seenRevision: week.revision });
const [first, second] = await Promise.all([take(tom), take(iris)]);
console.log(`${task.startsAt} ${task.text}`);
console.log(`Tom: ${first.__typename} ${first.__typename === "TaskPayload" ? "" : first.message}`);
console.log(`Iris: ${second.__typename} ${second.__typename === "TaskPayload" ? "" : second.message}`);
console.log(`Iris sees that it is held by ${await seen}`);

const [holder, taken] = first.__typename === "TaskPayload" ? [tom, first] : [iris, second];
if (taken.__typename === "TaskPayload") {
  const done = await holder.send(FinishTask, { taskId: task.id, seenRevision: taken.revision, minutes: 12 });
  console.log(`done in 12 minutes: ${done.__typename}`);
}
const { household: fair } = await tom.ask(Fairness, { householdId, day: DAY });
for (const { person, minutesDone, minutesAhead } of fair?.fairness.carers ?? [])
  console.log(`  ${person.displayName}: ${minutesDone} min done, ${minutesAhead} min taken`);
const { household: kitchen } = await tom.ask(RotaProposal, { householdId, from: DAY, to: "2027-01-15" });
for (const { session, onDuty } of kitchen?.rotaProposal.sessions ?? [])
  console.log(`  ${session.key}: ${onDuty.map(({ displayName }) => displayName).join(", ") || "nobody"} could be on`);

const boxes = week.plan.boxes.filter(({ date }) => date === DAY);
const box = boxes.find(({ items }) => items.some(({ labelsToRead }) => labelsToRead?.length)) ?? boxes[0]!;
const pack = async () => {
  const { week: now } = await home();
  return iris.send(MarkPacked, {
    boxId: box.id,
    seenRevision: now!.revision,
    packedAt: `${box.date}T07:10:00Z`,
  });
};
let packed = await pack();
console.log(
  `${box.child.name}'s box: ${packed.__typename} ${packed.__typename === "WeekPayload" ? "" : packed.message}`,
);
if (packed.__typename === "LabelsUnread") {
  for (const food of packed.foods) {
    const label = await iris.send(RecordLabel, {
      householdId,
      seenRevision: (await home()).revision,
      food: food.key,
      contains: [],
      mayContain: [],
      readOn: TODAY,
    });
    console.log(`label of ${food.name} read: ${label.__typename}`);
  }
  packed = await pack();
  console.log(
    `${box.child.name}'s box: ${packed.__typename} ${packed.__typename === "WeekPayload" ? "" : packed.message}`,
  );
}

const address = await holder.send(RenewFeedAddress, { householdId });
if (address.__typename === "FeedAddressPayload" && address.path !== null) {
  const feed = await (await fetch(new URL(address.path, process.argv[2] ?? "http://127.0.0.1:4000"))).text();
  const events = feed.match(/^BEGIN:VEVENT/gm)?.length ?? 0;
  console.log(`a calendar program that has the address sees ${events} of their tasks`);
}

const leo = signIn("demo:leo");
const other = (await leo.ask(MyHomes, { day: DAY })).me.households[0]!;
const child = other.children[0]!;
const { handover: before } = await tom.ask(Handover, { householdId, childId: child.id, day: DAY });
const written = await tom.send(WriteHandover, {
  householdId,
  childId: child.id,
  date: DAY,
  seenRevision: before?.revision ?? 0,
  note: "The blue lid leaks; keep it upright.",
  box: "WITH_CHILD",
  flask: "THIS_HOME",
});
console.log(`note about ${child.name}: ${written.__typename}`);
const { handover: read } = await leo.ask(Handover, { householdId: other.id, childId: child.id, day: DAY });
console.log(`${other.name} reads: ${read?.note} The box is ${read?.box}, the flask ${read?.flask}.`);
const { node } = await leo.ask(BoxesOfChild, { childId: child.id, from: DAY, to: "2027-01-15" });
for (const { date, state, items } of (node && "boxes" in node && node.boxes) || [])
  console.log(`  ${date} ${state}: ${items.map(({ dish }) => dish.name).join(", ")}`);

// A night that Ana's home would like to swap; Leo's has the other half of the say.
const ana = signIn("demo:ana");
const SWAP = "2027-02-10";
const nights = await leo.ask(ResidenceOf, { childId: child.id, from: SWAP, to: SWAP });
const night = nights.node && "residenceDays" in nights.node ? nights.node.residenceDays[0] : undefined;
const proposed = await ana.send(ProposeResidenceChange, {
  householdId,
  childId: child.id,
  seenRevision: (await home()).revision,
  dates: [SWAP],
  wakesHere: night?.here === true,
});
console.log(`a night swapped, says Ana's home: ${proposed.__typename}`);
if (proposed.__typename === "ResidencePayload" && proposed.proposal) {
  const theirs = (await leo.ask(MyHomes, { day: DAY })).me.households[0]!;
  const answered = await leo.send(AnswerResidenceChange, {
    householdId: theirs.id,
    seenRevision: theirs.revision,
    proposalId: proposed.proposal.id,
    accept: false,
  });
  console.log(`Leo's home declines: ${answered.__typename}; the child wakes where it was agreed`);
}
ana.close();
leo.close();
tom.close();
iris.close();
