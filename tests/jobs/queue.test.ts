import { spawn } from "node:child_process";
import { once } from "node:events";
import type { PlanJob } from "../../src/app/app.js";
import { workOnPlanJob } from "../../src/app/plan-in-background.js";
import type { Notice } from "../../src/database/database.js";
import { allowUseOf } from "../../src/database/migrate.js";
import { graphql } from "graphql";
import { createContextOpener } from "../../src/graphql/open-context.js";
import { openQueue, prepareQueue, type JobQueue } from "../../src/jobs/queue.js";
import { DAY, HOMES } from "../graphql/documents.js";
import { newKey, useApp } from "../support/app.js";

const parts = useApp();
let queue: JobQueue;

beforeAll(async () => {
  const { schema } = await prepareQueue(parts.database.ownerUrl);
  await allowUseOf(parts.database.ownerUrl, schema);
  queue = await openQueue(parts.database.serverUrl, { lookSeconds: 1, expireSeconds: 2 });
});
afterAll(() => queue.stop());

const BACKGROUND = `mutation Background($input: PlanWeekInBackgroundInput!) { planWeekInBackground(input: $input) {
  __typename ... on UserError { message } ... on PlanQueued { weekStart steps } } }`;

const ask = async (person: string, source: string, variableValues: Record<string, unknown>): Promise<any> => {
  const app = { ...parts.app, queue };
  const { context, close } = await createContextOpener(app, parts.notices)({ subject: person, requestId: "test" });
  const answer = await graphql({ schema: parts.schema, source, variableValues, contextValue: context });
  await close();
  expect(answer.errors).toBeUndefined();
  return JSON.parse(JSON.stringify(answer.data));
};
const plans = async () =>
  (await parts.database.owner<{ number: number }[]>`select number from week_plan order by number`).map(
    ({ number }) => number,
  );

it("a job outlives a worker that is killed with it in hand, runs again as the person who asked, and plans once", async () => {
  const home = (await ask("demo:ana", HOMES, { day: DAY })).me.households[0];
  const input = { idempotencyKey: newKey(), householdId: home.id, date: DAY, seenRevision: 0 };
  const queued = await ask("demo:ana", BACKGROUND, { input });
  expect(queued.planWeekInBackground).toMatchObject({ __typename: "PlanQueued", weekStart: DAY });
  expect(await ask("demo:ana", BACKGROUND, { input })).toEqual(queued);

  const worker = spawn(
    process.execPath,
    ["--import", "tsx", "tests/support/stuck-worker.ts", parts.database.serverUrl],
    {
      env: { ...process.env, NODE_OPTIONS: "" },
    },
  );
  await once(worker.stdout, "data");
  worker.kill("SIGKILL");
  await once(worker, "exit");
  expect(await plans()).toEqual([]);

  const outcomes: string[] = [];
  const done = new Promise<void>((resolve, reject) => {
    queue
      .work(async (job: PlanJob) => {
        const worked = await workOnPlanJob(parts.app, job);
        outcomes.push(worked.ok ? "planned" : worked.error.kind);
        resolve();
      })
      .catch(reject);
  });
  await done;
  expect(outcomes).toEqual(["planned"]);
  expect(await plans()).toEqual([1]);
  const after = (await ask("demo:ana", HOMES, { day: DAY })).me.households[0];
  expect(after.week).toMatchObject({ revision: 1 });
});

it("a job that ends without a plan says so to those who listen, and nothing is written", async () => {
  const notices: Notice[] = [];
  const stop = await parts.database.db.listen((notice) => notices.push(notice));
  const personId = await parts.database.db.signIn("demo:ana", "Ana");
  const { id } = (
    await parts.database.owner<
      { id: string }[]
    >`select household_id as id from membership where person_id = ${personId}`
  )[0]!;
  const before = await plans();
  const refused = await workOnPlanJob(parts.app, {
    personId,
    input: { idempotencyKey: newKey(), householdId: id, date: "2027-02-17", seenRevision: 0, replanAgreed: false },
  });
  expect(refused).toMatchObject({ ok: false, error: { kind: "OutsideTerm" } });
  await new Promise((resolve) => setTimeout(resolve, 200));
  await stop();
  expect(notices).toContainEqual(expect.objectContaining({ kind: "PLAN_PROGRESS", failure: "OutsideTerm" }));
  expect(await plans()).toEqual(before);
});

it("a person who left the household meanwhile plans nothing there any more", async () => {
  const leo = await parts.database.db.signIn("demo:leo", "Leo");
  const ana = await parts.database.db.signIn("demo:ana", "Ana");
  const { id } = (
    await parts.database.owner<{ id: string }[]>`select household_id as id from membership where person_id = ${ana}`
  )[0]!;
  const refused = await workOnPlanJob(parts.app, {
    personId: leo,
    input: { idempotencyKey: newKey(), householdId: id, date: DAY, seenRevision: 1, replanAgreed: false },
  });
  expect(refused).toMatchObject({ ok: false, error: { kind: "HouseholdNotFound" } });
});
