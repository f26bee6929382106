import { spawn, type ChildProcess } from "node:child_process";
import { once } from "node:events";
import { graphql, parse, subscribe, type ExecutionResult } from "graphql";
import type { App, PlanJob } from "../../src/app/app.js";
import { giveUpPlanJob, planWeekInBackground, workOnPlanJob } from "../../src/app/plan-in-background.js";
import type { Notice } from "../../src/database/database.js";
import { allowUseOf } from "../../src/database/migrate.js";
import { explainPlanJob } from "../../src/graphql/explain.js";
import { localId } from "../../src/graphql/global-id.js";
import { createContextOpener } from "../../src/graphql/open-context.js";
import { openQueue, prepareQueue, type JobQueue } from "../../src/jobs/queue.js";
import { createLog } from "../../src/log.js";
import { workOnJobs } from "../../src/work-on-jobs.js";
import { DAY, HOMES } from "../graphql/documents.js";
import { newKey, useApp } from "../support/app.js";

const parts = useApp();
let queue: JobQueue;
let app: App;
const children: ChildProcess[] = [];
const quiet = createLog("silent");

const BACKGROUND = `mutation Background($input: PlanWeekInBackgroundInput!) { planWeekInBackground(input: $input) {
  __typename ... on UserError { message } ... on PlanQueued { weekStart steps } } }`;
const PROGRESS = `subscription Progress($id: ID!) { planProgress(householdId: $id) { weekStart percent bestPoints failure } }`;

beforeAll(async () => {
  const { schema } = await prepareQueue(parts.database.ownerUrl);
  await allowUseOf(parts.database.ownerUrl, schema);
  queue = await openQueue(parts.database.serverUrl, { lookSeconds: 1, expireSeconds: 12 });
  // A thorough search of a third of an ordinary one's moves: far less than the queue waits for a job, on a busy machine too.
  app = { ...parts.app, queue, planSteps: 2_000 };
});
beforeEach(async () => {
  const { owner } = parts.database;
  await owner`delete from noonpail_jobs.job`;
  await owner`delete from week`;
});
afterAll(async () => {
  for (const child of children) if (child.exitCode === null && child.signalCode === null) child.kill("SIGKILL");
  await queue.stop();
});

async function ask(person: string, source: string, variableValues: Record<string, unknown>): Promise<any> {
  const { context, close } = await createContextOpener(app, parts.notices)({ subject: person, requestId: "test" });
  const answer = await graphql({ schema: parts.schema, source, variableValues, contextValue: context });
  await close();
  expect(answer.errors).toBeUndefined();
  return JSON.parse(JSON.stringify(answer.data));
}

/** The worker as `npm run worker` starts it; a number of moves of its own, which no job may take. */
async function startWorker(): Promise<ChildProcess> {
  const child = spawn(process.execPath, ["--import", "tsx", "src/worker.ts"], {
    env: {
      ...process.env,
      NODE_OPTIONS: "",
      DATABASE_URL: parts.database.serverUrl,
      LOG_LEVEL: "info",
      PLAN_STEPS: "70000",
      BOUND_SECONDS: "0",
    },
  });
  children.push(child);
  let said = "";
  await new Promise<void>((resolve, reject) => {
    child.stdout.on("data", (text) => {
      said += String(text);
      if (said.includes('"working"')) resolve();
    });
    child.stderr.on("data", (text) => (said += String(text)));
    child.once("exit", () => reject(new Error(`the worker left: ${said}`)));
  });
  return child;
}

/** Notices from now on, and a wait for one. */
async function hear() {
  const notices: Notice[] = [];
  let look = (): void => undefined;
  const stop = await parts.database.db.listen(
    (notice) => {
      // The log grows with every change; what is listened for here is what jobs announce.
      if (notice.kind !== "CHANGED") notices.push(notice);
      look();
    },
    () => undefined,
  );
  const until = (test: (notice: Notice) => boolean) =>
    new Promise<void>((resolve) => {
      look = () => {
        if (notices.some(test)) resolve();
      };
      look();
    });
  return { notices, until, stop };
}

const plans = () => parts.database.owner<{ number: number; created_by_id: string; steps: number }[]>`
  select number, created_by_id, steps from week_plan order by number`;
const jobs = () => parts.database.owner<{ name: string; state: string; data: PlanJob }[]>`
  select name, state::text, data from noonpail_jobs.job order by created_on`;
/** A worker in this process, with a queue of its own that ends with the test. */
async function workHere(worker: App): Promise<() => Promise<void>> {
  const own = await openQueue(parts.database.serverUrl, { lookSeconds: 1 });
  await workOnJobs(worker, own, quiet);
  return () => own.stop();
}
const homeOf = async (person: string) =>
  (await ask(person, HOMES, { day: DAY })).me.households[0] as { id: string; week: { revision: number } | null };
const request = (householdId: string, date = DAY) => ({
  idempotencyKey: newKey(),
  householdId,
  date,
  seenRevision: 0,
});

it("a job outlives a worker that is killed over it: another plans it, once, as the person who asked", async () => {
  const home = await homeOf("demo:ana");
  const first = await startWorker();
  const before = await hear();
  const input = request(home.id);
  const queued = await ask("demo:ana", BACKGROUND, { input });
  expect(queued.planWeekInBackground).toEqual({ __typename: "PlanQueued", weekStart: DAY, steps: 20_000 });
  // The search has begun: that is when it dies.
  await before.until(({ kind }) => kind === "PLAN_PROGRESS");
  first.kill("SIGKILL");
  expect(await once(first, "exit")).toEqual([null, "SIGKILL"]);
  await before.stop();
  expect(await plans()).toEqual([]);
  expect(await jobs()).toMatchObject([{ state: "active" }]);

  const after = await hear();
  const second = await startWorker();
  await after.until(({ kind }) => kind === "PLAN_CHANGED");
  // Told to stop, it lets the job end in the table too.
  second.kill("SIGTERM");
  expect(await once(second, "exit")).toEqual([0, null]);
  await after.stop();

  const ana = await parts.database.db.signIn("demo:ana", "Ana");
  const planned = await plans();
  expect(planned).toMatchObject([{ number: 1, created_by_id: ana }]);
  // A week that does not fit the clock is searched for again, and every move counts.
  expect(planned[0]!.steps).toBeGreaterThanOrEqual(20_000);
  expect(await jobs()).toMatchObject([{ state: "completed" }]);
  expect((await homeOf("demo:ana")).week).toMatchObject({ revision: 1 });
  const percents = after.notices.flatMap((notice) => (notice.kind === "PLAN_PROGRESS" ? [notice.percent] : []));
  expect(percents[0]).toBe(0);
  expect(percents.at(-1)).toBe(100);
  expect(percents).toEqual(percents.toSorted((a, b) => a - b));
}, 90_000);

it("one key queues one job, also when it is sent three times at once", async () => {
  const home = await homeOf("demo:ana");
  const input = request(home.id);
  const answers = await Promise.all([1, 2, 3].map(() => ask("demo:ana", BACKGROUND, { input })));
  for (const answer of answers) expect(answer.planWeekInBackground.__typename).toBe("PlanQueued");
  expect(await jobs()).toHaveLength(1);
  expect(await ask("demo:ana", BACKGROUND, { input: { ...input, replanAgreed: true } })).toMatchObject({
    planWeekInBackground: { __typename: "KeyReused" },
  });
  expect(await jobs()).toHaveLength(1);
});

it("two people who happen on the same key each get their own job", async () => {
  const ana = await homeOf("demo:ana");
  const other = await parts.database.newPerson("Sam");
  const household = localId("Household", ana.id)!;
  await parts.database.addCarer(other, household, "COORDINATOR");
  const input = { ...request(ana.id), householdId: household, replanAgreed: false };
  const askedBy = [await parts.database.db.signIn("demo:ana", "Ana"), other];
  for (const personId of askedBy) expect(await planWeekInBackground(app, personId, input)).toMatchObject({ ok: true });
  expect((await jobs()).map(({ data }) => data.personId)).toEqual(askedBy);
});

it("a key that could not be kept leaves no job behind", async () => {
  const home = await homeOf("demo:ana");
  const broken: App = {
    ...app,
    queue: {
      ...queue,
      async send(job, tx) {
        await queue.send(job, tx);
        throw new Error("the connection is lost");
      },
    },
  };
  const ana = await parts.database.db.signIn("demo:ana", "Ana");
  const input = { ...request(home.id), householdId: localId("Household", home.id), replanAgreed: false };
  await expect(planWeekInBackground(broken, ana, input)).rejects.toThrow("the connection is lost");
  expect(await jobs()).toEqual([]);
  expect(await planWeekInBackground(app, ana, input)).toMatchObject({ ok: true });
  expect(await jobs()).toHaveLength(1);
});

it("the family hears in a sentence why a job left no plan, dated by the week it was for", async () => {
  const home = await homeOf("demo:ana");
  const { context, close } = await createContextOpener(app, parts.notices)({ subject: "demo:ana", requestId: "test" });
  const heard = (await subscribe({
    schema: parts.schema,
    document: parse(PROGRESS),
    variableValues: { id: home.id },
    contextValue: context,
  })) as AsyncIterableIterator<ExecutionResult>;
  // Thursday: the week begins on the Monday before.
  await ask("demo:ana", BACKGROUND, { input: request(home.id, "2027-01-14") });
  await ask("demo:ana", BACKGROUND, { input: request(home.id, "2027-01-14") });
  const stop = await workHere(app);
  let told: Record<string, unknown>;
  do {
    const { value } = (await heard.next()) as { value: ExecutionResult };
    told = value.data!["planProgress"] as Record<string, unknown>;
  } while (told["failure"] === null);
  await heard.return!();
  await close();
  await stop();
  // The first of the two made the week; what the second had seen has passed.
  expect(told).toEqual({
    weekStart: DAY,
    percent: 100,
    bestPoints: null,
    failure: explainPlanJob({ kind: "RevisionPassed", seenRevision: 0, currentRevision: 1 }),
  });
  expect(await plans()).toMatchObject([{ number: 1 }]);
});

it("a job that comes again after its plan was stored stores no second one and reports no failure", async () => {
  const home = await homeOf("demo:ana");
  await ask("demo:ana", BACKGROUND, { input: request(home.id) });
  const job = (await jobs())[0]!.data;
  const { notices, until, stop } = await hear();
  expect(await workOnPlanJob(app, job, explainPlanJob)).toMatchObject({ ok: true });
  // As when the worker dies between the plan and the note that the job is done.
  expect(await workOnPlanJob(app, job, explainPlanJob)).toMatchObject({ ok: true });
  expect(await giveUpPlanJob(app, job, explainPlanJob)).toMatchObject({ ok: true });
  // Notices keep their order: when this one is here, so is everything before it.
  await parts.database.db.announce({ kind: "PLAN_FAILED", householdId: "the", weekStart: "last", failure: "one" });
  await until((notice) => notice.kind === "PLAN_FAILED" && notice.householdId === "the");
  await stop();
  expect(notices.filter(({ kind }) => kind === "PLAN_FAILED")).toHaveLength(1);
  expect(await plans()).toMatchObject([{ number: 1 }]);
});

it("a person removed from the household after asking plans nothing there any more", async () => {
  const home = await homeOf("demo:ana");
  const household = localId("Household", home.id)!;
  const leaver = await parts.database.newPerson("Robin");
  await parts.database.addCarer(leaver, household, "COORDINATOR");
  const input = { ...request(home.id), householdId: household, replanAgreed: false };
  expect(await planWeekInBackground(app, leaver, input)).toMatchObject({ ok: true });
  await parts.database.owner`delete from membership where person_id = ${leaver}`;
  const { notices, until, stop: stopHearing } = await hear();
  const stop = await workHere(app);
  await until(({ kind }) => kind === "PLAN_FAILED");
  await stop();
  await stopHearing();
  expect(notices).toEqual([
    {
      kind: "PLAN_FAILED",
      householdId: household,
      weekStart: DAY,
      failure: explainPlanJob({ kind: "HouseholdNotFound" }),
    },
  ]);
  expect(await plans()).toEqual([]);
  expect(await parts.database.owner`select 1 from week`).toHaveLength(0);
  // A refusal is an answer: it is not tried again.
  expect(await jobs()).toMatchObject([{ state: "completed" }]);
});

it("a job that breaks off every time is given up after four attempts, and the family hears it", async () => {
  const home = await homeOf("demo:ana");
  await ask("demo:ana", BACKGROUND, { input: request(home.id) });
  let attempts = 0;
  const breaking: App = {
    ...app,
    planner: {
      ...app.planner,
      plan() {
        attempts += 1;
        return Promise.reject(new Error("the thread died"));
      },
    },
  };
  const { notices, until, stop: stopHearing } = await hear();
  const stop = await workHere(breaking);
  await until(({ kind }) => kind === "PLAN_FAILED");
  await stop();
  await stopHearing();
  expect(attempts).toBe(4);
  expect(notices).toMatchObject([{ kind: "PLAN_FAILED", weekStart: DAY, failure: explainPlanJob({ kind: "GaveUp" }) }]);
  expect(await plans()).toEqual([]);
}, 20_000);

it("the server may use the queue's tables and change none of them", async () => {
  const [rights] = await parts.database.owner<{ owns: number; creates: boolean; truncates: number; missing: number }[]>`
    select count(*) filter (where pg_has_role('noonpail_server', c.relowner, 'member'))::int as owns,
      has_schema_privilege('noonpail_server', 'noonpail_jobs', 'create') as creates,
      count(*) filter (where has_table_privilege('noonpail_server', c.oid, 'truncate, references, trigger'))::int as truncates,
      count(*) filter (where not has_table_privilege('noonpail_server', c.oid, 'insert'))::int as missing
    from pg_class c where c.relnamespace = 'noonpail_jobs'::regnamespace and c.relkind in ('r', 'p')`;
  expect(rights).toEqual({ owns: 0, creates: false, truncates: 0, missing: 0 });
});
