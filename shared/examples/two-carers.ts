/**
 * Two carers reach for one task and each hears what the other does; then one reads a label and packs a box. Run while
 * `npm start` serves, after family-app.
 */
import { Changes, MarkPacked, MyHomes, RecordLabel, TakeTask, Timetable } from "../generated/operations.js";
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
tom.close();
iris.close();
