/** Two carers reach for one task, then one reads a label and packs a box. Run while `npm start` serves, after family-app. */
import { newKey, signIn } from "./client.js";

interface Task {
  id: string;
  kind: string;
  state: string;
  startsAt: string;
  text: string;
}
interface Box {
  id: string;
  date: string;
  state: string;
  child: { name: string };
  items: { labelsToRead: { key: string; name: string }[] }[];
}
interface Session {
  key: string;
  startsAt: string;
  endsAt: string;
  timing: { leastMinutes: number; provenShortest: boolean; latestStartsAt: string } | null;
  carers: { carer: number; handsOnMinutes: number }[];
}
interface Home {
  id: string;
  revision: number;
  week: { revision: number; plan: { tasks: Task[]; boxes: Box[]; sessions: Session[] } } | null;
}
type Answer = { __typename: string; message?: string };

const DAY = "2027-01-11";
const HOME = `query Home($day: LocalDate!) { me { households { id revision week(date: $day) { revision plan {
  tasks { id kind state startsAt text } sessions { key startsAt endsAt timing { leastMinutes provenShortest latestStartsAt } carers { carer handsOnMinutes } } boxes(date: $day) { id date state child { name } items { labelsToRead { key name } } } } } } } }`;

const tom = await signIn("demo:tom");
const iris = await signIn("demo:iris");
const home = async () => (await tom<{ me: { households: Home[] } }>(HOME, { day: DAY })).me.households[0]!;

const { week } = await home();
if (!week) throw new Error("Plan the week first: run family-app.");
const morning = week.plan.sessions.find(({ key }) => key === `morning-${DAY}`);
if (morning?.timing) {
  const { leastMinutes, provenShortest, latestStartsAt } = morning.timing;
  const share = morning.carers.map(({ carer, handsOnMinutes }) => `carer ${carer} ${handsOnMinutes} min`).join(", ");
  console.log(
    `the morning: ${morning.startsAt} to ${morning.endsAt} (${share}), begin by ${latestStartsAt}; ${provenShortest ? "no order of the tasks is shorter" : `at least ${leastMinutes} min in any order`}`,
  );
}
const task = week.plan.tasks.find((entry) => entry.state === "OPEN")!;
const TAKE =
  "mutation Take($input: TakeTaskInput!) { takeTask(input: $input) { __typename ... on UserError { message } } }";
const take = (carer: typeof tom) =>
  carer<{ takeTask: Answer }>(TAKE, {
    input: { idempotencyKey: newKey(), taskId: task.id, seenRevision: week.revision },
  });
const [first, second] = await Promise.all([take(tom), take(iris)]);
console.log(`${task.startsAt} ${task.text}`);
console.log(`Tom: ${first.takeTask.__typename} ${first.takeTask.message ?? ""}`);
console.log(`Iris: ${second.takeTask.__typename} ${second.takeTask.message ?? ""}`);

const PACK =
  "mutation Pack($input: MarkPackedInput!) { markPacked(input: $input) { __typename ... on UserError { message } } }";
const pack = async (box: Box) => {
  const now = await home();
  const input = {
    idempotencyKey: newKey(),
    boxId: box.id,
    seenRevision: now.week!.revision,
    packedAt: `${box.date}T07:10:00Z`,
  };
  return (await iris<{ markPacked: Answer }>(PACK, { input })).markPacked;
};
const box =
  week.plan.boxes.find((entry) => entry.items.some((item) => item.labelsToRead.length > 0)) ?? week.plan.boxes[0]!;
let packed = await pack(box);
console.log(`${box.child.name}'s box: ${packed.__typename} ${packed.message ?? ""}`);
if (packed.__typename === "LabelsUnread") {
  const foods = new Map(box.items.flatMap((item) => item.labelsToRead).map((food) => [food.key, food.name]));
  for (const [food, name] of foods) {
    const { revision, id } = await home();
    const { recordLabel } = await iris<{ recordLabel: Answer }>(
      "mutation Label($input: RecordLabelInput!) { recordLabel(input: $input) { __typename ... on UserError { message } } }",
      {
        input: {
          idempotencyKey: newKey(),
          householdId: id,
          seenRevision: revision,
          food,
          contains: [],
          mayContain: [],
          readOn: new Date().toISOString().slice(0, 10),
        },
      },
    );
    console.log(`label of ${name} read: ${recordLabel.__typename}`);
  }
  packed = await pack(box);
  console.log(`${box.child.name}'s box: ${packed.__typename} ${packed.message ?? ""}`);
}
