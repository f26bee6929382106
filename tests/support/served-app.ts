/** The app behind its real HTTP server and sockets, people who sign in, and households of their own. */
import { createHash } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createClient, type Client } from "graphql-ws";
import { WebSocket } from "ws";
import type { App, Planner } from "../../src/app/app.js";
import { readConfig } from "../../src/config.js";
import type { RoleCode } from "../../src/database/household.js";
import { readDemoFiles } from "../../src/database/seed.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { alternativesFor } from "../../src/domain/planner/alternatives.js";
import { planWeek } from "../../src/domain/planner/plan-week.js";
import { answerQuestion } from "../../src/domain/planner/questions.js";
import { familyFiles } from "../../src/family-files.js";
import { globalId } from "../../src/graphql/global-id.js";
import { createContextOpener } from "../../src/graphql/open-context.js";
import { createDevIssuer, type DemoPerson } from "../../src/http/dev-issuer.js";
import { createHttpServer, type HttpServer } from "../../src/http/server.js";
import { createVerifier } from "../../src/http/tokens.js";
import { startPlannerPool, type PlannerPool } from "../../src/jobs/planner-pool.js";
import { createLog } from "../../src/log.js";
import { PLAN_STEPS } from "../../src/plan-steps.js";
import { CHILD, ENROL, FOUND, PLAN } from "../graphql/documents.js";
import { newKey, useApp, type TestApp } from "./app.js";

const demo = readDemoFiles();
const classes = new Map(demo.schools.flatMap((school) => school.classes.map((entry) => [entry.key, entry.id])));

/** Client-side IDs of the demo's classes and schools. */
export const classId = (key: "reception" | "class-4" | "year-8"): string => globalId("SchoolClass", classes.get(key)!);
export const schoolId = (key: "primary" | "upper"): string =>
  globalId("School", demo.schools.find((school) => school.key === key)!.id);

export interface DishSeen {
  readonly key: string;
  readonly name: string;
}
export interface ItemSeen {
  readonly id: string;
  readonly breakKey: string;
  readonly slot: string;
  readonly place: number;
  readonly pinned: boolean;
  readonly dish: DishSeen;
  readonly labelsToRead: readonly { readonly key: string }[] | null;
}
export interface BoxSeen {
  readonly id: string;
  readonly date: string;
  readonly state: string;
  readonly child: { readonly id: string; readonly name: string };
  readonly items: readonly ItemSeen[];
}
export interface TaskSeen {
  readonly id: string;
  readonly kind: string;
  readonly session: string;
  readonly state: string;
  readonly takenBy: { readonly displayName: string } | null;
}
export interface WeekSeen {
  readonly id: string;
  readonly revision: number;
  readonly plan: {
    readonly id: string;
    readonly number: number;
    readonly state: string;
    readonly boxes: readonly BoxSeen[];
    readonly tasks: readonly TaskSeen[];
  };
}
/** What a mutation answers: whichever of these its document asks for and its case has. */
export interface Said {
  readonly __typename: string;
  readonly message: string;
  readonly issues: readonly {
    readonly field: string;
    readonly problem: string;
    readonly fix: string;
    /** Of a refused document instead of a field. */
    readonly path: string;
    readonly line: number;
  }[];
  readonly conflicts: readonly {
    readonly kind: string;
    readonly text: string;
    readonly wayOut: string;
    readonly session: string | null;
  }[];
  readonly neededRole: string;
  readonly usedFor: string;
  readonly currentRevision: number;
  readonly nearest: readonly string[];
  readonly foods: readonly { readonly key: string }[];
  readonly week: WeekSeen;
  readonly changedBoxes: readonly { readonly id: string; readonly date: string }[];
  readonly task: TaskSeen;
  readonly household: { readonly id: string; readonly revision: number };
  readonly child: { readonly id: string };
}

export interface Heard {
  /** Data of the events so far. */
  readonly events: readonly Record<string, unknown>[];
  /** Resolves when the subscription ended by itself; rejects when it was refused. */
  readonly ended: Promise<void>;
  /** Closes the socket. */
  leave(): Promise<void>;
}

export interface ServedApp {
  readonly inProcess: TestApp;
  readonly url: string;
  /** A person's bearer token. */
  tokenOf(person: string): Promise<string>;
  /** A person who may sign in; their name starts as their subject, unless one is given. */
  newcomer(as?: { readonly name: string }): string;
  /** One operation over HTTP; null sends no token. */
  ask<T>(person: string | null, query: string, variables?: Record<string, unknown>): Promise<T>;
  /** The same, errors and all. */
  post(
    person: string | null,
    query: string,
    variables?: Record<string, unknown>,
  ): Promise<{
    data: Record<string, unknown> | null;
    errors: readonly { message: string; extensions: Record<string, unknown> }[];
  }>;
  /** One mutation with a new key, unless the input brings its own. */
  send(person: string, mutation: string, input: Record<string, unknown>): Promise<Said>;
  /** What is served as a file, with the person's token; null sends none. */
  file(person: string | null, path: string): Promise<Response>;
  subscribe(person: string, query: string, variables: Record<string, unknown>): Promise<Heard>;
  /** A digest of every row of every table that requests write to. */
  everyRow(): Promise<string>;
  household(): HouseholdPlan;
}

/** Few steps, in this thread: one child's week is found with them, and the search itself is tested elsewhere. */
const fewSteps: Planner = {
  plan({ brief, seed, steps, compare }, onProgress) {
    onProgress?.(0, null);
    const hash = (text: string) => createHash("sha256").update(text).digest("hex");
    const outcome = planWeek(brief, { seed, steps, hash });
    onProgress?.(100, outcome.kind === "PLANNED" ? Math.round(outcome.objectivePoints) : null);
    return Promise.resolve({ outcome, compared: compare, aloneMinutes: null, problem: null });
  },
  alternatives: (brief, draft, place) => Promise.resolve(alternativesFor(brief, draft, place)),
  ask: (question) => Promise.resolve(answerQuestion(question, indexCatalogue(question.brief.catalogue))),
};

/** Call at the top of a test file. No request may end in an error nobody foresaw. */
export function useServedApp(options: { pool?: boolean; steps?: number; env?: NodeJS.ProcessEnv } = {}): ServedApp {
  const inProcess = useApp();
  const people: DemoPerson[] = [...demo.people];
  const unexpected: unknown[] = [];
  const clients: Client[] = [];
  const tokens = new Map<string, string>();
  let running: { server: HttpServer; url: string; directory: string; pool: PlannerPool | null } | undefined;
  const ready = () => {
    if (!running) throw new Error("The server is there from beforeAll on.");
    return running;
  };

  beforeAll(async () => {
    const directory = await mkdtemp(join(tmpdir(), "noonpail-served-"));
    const config = readConfig({ NODE_ENV: "test", PORT: "0", DATA_DIR: directory, ...options.env });
    const issuer = await createDevIssuer(config, people);
    const log = createLog("error", { write: (line: string) => void unexpected.push(JSON.parse(line)) });
    const pool = options.pool ? startPlannerPool(inProcess.app.reference.catalogue, { threads: 2 }) : null;
    const app: App = {
      ...inProcess.app,
      planner: pool ?? fewSteps,
      prover: null,
      planSteps: options.steps ?? (pool ? PLAN_STEPS : 8_000),
    };
    const verify = createVerifier(config, issuer.keys);
    const server = createHttpServer({
      config,
      log,
      schema: inProcess.schema,
      openContext: createContextOpener(app, inProcess.notices),
      verify,
      issuer,
      isReady: () => Promise.resolve({ ready: true, checks: {} }),
      below: familyFiles(app, verify),
      explorerQuery: "{ me { person { displayName } } }",
    });
    const { url } = await server.start();
    running = { server, url, directory, pool };
  });
  afterEach(() => expect(unexpected.splice(0)).toEqual([]));
  afterAll(async () => {
    if (!running) return;
    for (const client of clients) await client.dispose();
    await running.server.stop();
    await running.pool?.stop();
    await rm(running.directory, { recursive: true, force: true });
  });

  async function tokenOf(person: string): Promise<string> {
    const known = tokens.get(person);
    if (known !== undefined) return known;
    const response = await fetch(`${ready().url}/dev/token`, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ person }),
    });
    expect(response.status).toBe(200);
    const { access_token: token } = (await response.json()) as { access_token: string };
    tokens.set(person, token);
    return token;
  }

  const served: ServedApp = {
    inProcess,
    tokenOf,
    get url() {
      return ready().url;
    },
    newcomer(as) {
      const subject = `test:${newKey()}`;
      people.push({ subject, name: as?.name ?? subject, about: "Somebody of this test" });
      return subject;
    },
    async post(person, query, variables = {}) {
      const response = await fetch(`${ready().url}/graphql`, {
        method: "POST",
        headers: {
          "content-type": "application/json",
          ...(person === null ? {} : { authorization: `Bearer ${await tokenOf(person)}` }),
        },
        body: JSON.stringify({ query, variables }),
      });
      const { data, errors } = (await response.json()) as Partial<Awaited<ReturnType<ServedApp["post"]>>>;
      return { data: data ?? null, errors: errors ?? [] };
    },
    async ask<T>(person: string | null, query: string, variables?: Record<string, unknown>) {
      const { data, errors } = await served.post(person, query, variables);
      expect(errors).toEqual([]);
      return data as T;
    },
    async send(person, mutation, input) {
      const data = await served.ask<Record<string, Said>>(person, mutation, {
        input: { idempotencyKey: newKey(), ...input },
      });
      return Object.values(data)[0]!;
    },
    async file(person, path) {
      const headers: Record<string, string> =
        person === null ? {} : { authorization: `Bearer ${await tokenOf(person)}` };
      return fetch(`${ready().url}${path}`, { headers });
    },
    async subscribe(person, query, variables) {
      const client = createClient({
        url: `${ready().url.replace("http", "ws")}/graphql`,
        webSocketImpl: WebSocket,
        connectionParams: { authorization: `Bearer ${await tokenOf(person)}` },
        retryAttempts: 0,
        lazy: false,
        onNonLazyError: () => undefined,
      });
      clients.push(client);
      const events: Record<string, unknown>[] = [];
      const ended = new Promise<void>((resolve, reject) => {
        client.subscribe<Record<string, unknown>>(
          { query, variables },
          {
            next: ({ data, errors }) => events.push(data ?? { errors }),
            error: (refusal) => reject(new Error(JSON.stringify(refusal))),
            complete: resolve,
          },
        );
      });
      // The protocol acknowledges no single subscription: a second one on the same socket that ends at once tells that
      // the first has arrived, and its reads have a moment to end.
      await new Promise<void>((resolve) =>
        client.subscribe(
          { query: "query { __typename }" },
          { next: () => undefined, error: () => resolve(), complete: resolve },
        ),
      );
      await new Promise((resolve) => setTimeout(resolve, 150));
      return { events, ended, leave: async () => client.dispose() };
    },
    async everyRow() {
      const { owner } = inProcess.database;
      const tables = await owner<{ name: string }[]>`
        select c.relname as name from pg_class c join pg_namespace n on n.oid = c.relnamespace
        where n.nspname = 'public' and c.relkind = 'r' and c.relname not in ('food', 'base', 'base_ingredient', 'dish', 'dish_base',
          'dish_ingredient', 'dish_step', 'reference_table', 'person') order by 1`;
      const digests = await Promise.all(
        tables.map(async ({ name }) => {
          const [row] = await owner<{ rows: number; digest: string | null }[]>`
            select count(*)::int as rows, md5(string_agg(t::text, '|' order by t::text)) as digest from ${owner(name)} t`;
          return `${name} ${row!.rows} ${row!.digest ?? "-"}`;
        }),
      );
      return digests.join("\n");
    },
    household: () => planHousehold(served),
  };
  return served;
}

const usualChild = {
  name: "Ari",
  dateOfBirth: "2013-05-20",
  compartments: [
    { ml: 850, leakProof: true },
    { ml: 300, leakProof: false },
    { ml: 300, leakProof: false },
    { ml: 300, leakProof: true },
    { ml: 250, leakProof: false },
  ],
  flask: true,
  leaveAt: "08:10",
};
type ChildInput = Partial<typeof usualChild> & Record<string, unknown>;

/** Steps towards a household, taken in order by `found`. */
export interface HouseholdPlan {
  /** @param attends null for a child without a school */
  child(input?: ChildInput, attends?: Parameters<typeof classId>[0] | null): HouseholdPlan;
  carer(role: RoleCode): HouseholdPlan;
  /** Plans the week that holds the day. */
  planned(date: string): HouseholdPlan;
  found(): Promise<Household>;
}

export interface Household {
  readonly id: string;
  readonly coordinator: string;
  /** Subjects by role, the coordinator included. */
  readonly carers: Readonly<Partial<Record<RoleCode, string>>>;
  /** Client-side IDs of the children in the order they were added. */
  readonly children: readonly string[];
  revision(): Promise<number>;
  /** Null when nothing has been planned for it. */
  week(date: string): Promise<WeekSeen | null>;
  /** What a query of one node, by `$id`, answers its coordinator. */
  ask<T>(query: string, id: string): Promise<T>;
  /** Sends a change of the household with its current revision. */
  change(mutation: string, input: Record<string, unknown>, person?: string): Promise<Said>;
  plan(date: string, input?: Record<string, unknown>): Promise<Said>;
  /**
   * Another home of a child, with a box and leaving times of its own; the same one each time it is asked for. Where nothing is
   * agreed the child goes on waking here.
   */
  otherHome(childId: string): Promise<Household>;
  /** Of the handover note of the child and week; 0 when nothing has been written. */
  handoverRevision(childId: string, date: string): Promise<number>;
  /** A new person becomes a carer, the one of this role in `carers`; answers their row's ID. */
  join(role: RoleCode): Promise<string>;
}

const WEEK = `query Week($id: ID!, $date: LocalDate!) { week(householdId: $id, date: $date) { id revision plan { id number state
  boxes { id date state child { id name } items { id breakKey slot place pinned dish { key name } labelsToRead { key } } }
  tasks { id kind session state takenBy { displayName } } } } }`;

function planHousehold(served: ServedApp): HouseholdPlan {
  const steps: ((
    home: Household & { children: string[]; carers: Partial<Record<RoleCode, string>> },
  ) => Promise<void>)[] = [];
  const plan: HouseholdPlan = {
    child(input = {}, attends = "year-8") {
      steps.push(async (home) => {
        const made = await home.change(CHILD, { ...usualChild, ...input });
        expect(made.__typename).toBe("CreateChildPayload");
        home.children.push(made.child.id);
        if (attends === null) return;
        const enrolled = await home.change(ENROL, {
          childId: made.child.id,
          schoolClassId: classId(attends),
          fromDate: "2026-09-01",
        });
        expect(enrolled.__typename).toBe("EnrolChildPayload");
      });
      return plan;
    },
    carer(role) {
      steps.push(async (home) => {
        await home.join(role);
      });
      return plan;
    },
    planned(date) {
      steps.push(async (home) => {
        expect((await home.plan(date)).__typename).toBe("WeekPayload");
      });
      return plan;
    },
    async found() {
      const coordinator = served.newcomer();
      const made = await served.send(coordinator, FOUND, {
        name: "Test kitchen",
        timeZone: "Europe/London",
        currency: "GBP",
      });
      expect(made.__typename).toBe("CreateHouseholdPayload");
      const { id } = made.household;
      const others = new Map<string, Promise<Household>>();
      const home = {
        id,
        coordinator,
        carers: { COORDINATOR: coordinator } as Partial<Record<RoleCode, string>>,
        children: [] as string[],
        async revision() {
          const { household } = await served.ask<{ household: { revision: number } }>(
            coordinator,
            "query Revision($id: ID!) { household(id: $id) { revision } }",
            { id },
          );
          return household.revision;
        },
        async week(date: string) {
          return (await served.ask<{ week: WeekSeen | null }>(coordinator, WEEK, { id, date })).week;
        },
        async ask<T>(query: string, id: string) {
          return (await served.ask<{ node: T }>(coordinator, query, { id })).node;
        },
        async change(mutation: string, input: Record<string, unknown>, person = coordinator) {
          return served.send(person, mutation, { householdId: id, seenRevision: await home.revision(), ...input });
        },
        async join(role: RoleCode) {
          const person = served.newcomer();
          const { database } = served.inProcess;
          const personId = await database.db.signIn(person, person);
          await database.addCarer(personId, localOf(id), role);
          home.carers[role] = person;
          return personId;
        },
        async plan(date: string, input: Record<string, unknown> = {}) {
          const seenRevision = (await home.week(date))?.revision ?? 0;
          return served.send(coordinator, PLAN, { householdId: id, date, seenRevision, ...input });
        },
        async handoverRevision(childId: string, date: string) {
          const query =
            "query Note($id: ID!, $childId: ID!, $date: LocalDate!) { handover(householdId: $id, childId: $childId, date: $date) { revision } }";
          const { handover } = await served.ask<{ handover: { revision: number } }>(coordinator, query, {
            id,
            childId,
            date,
          });
          return handover.revision;
        },
        otherHome(childId: string) {
          const known = others.get(childId) ?? addOtherHome(served, childId);
          others.set(childId, known);
          return known;
        },
      };
      for (const step of steps) await step(home);
      return home;
    },
  };
  return plan;
}

async function addOtherHome(served: ServedApp, childId: string): Promise<Household> {
  const home = await served.household().found();
  const { owner } = served.inProcess.database;
  const [child, household] = [localOf(childId), localOf(home.id)];
  await owner`insert into residence (child_id, household_id, since) values (${child}, ${household}, '2099-01-01')`;
  await owner`insert into box_kit (child_id, household_id, compartments, cold_sources, insulated, flask)
    values (${child}, ${household}, ${owner.json(usualChild.compartments)}, 2, true, ${usualChild.flask})`;
  await owner`insert into leave_time (child_id, household_id, weekday, leave_at)
    select ${child}, ${household}, d, ${usualChild.leaveAt} from unnest(array['MONDAY', 'TUESDAY', 'WEDNESDAY', 'THURSDAY', 'FRIDAY']) d`;
  return home;
}

/** The row's ID inside a client-side one, for arranging things behind the wall. */
export const localOf = (id: string): string => Buffer.from(id, "base64url").toString("utf8").split(":")[1]!;
