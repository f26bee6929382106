/** An app on a test database, asked in-process as a person would over the API. */
import { randomUUID } from "node:crypto";
import { createHash } from "node:crypto";
import { gzipSync } from "node:zlib";
import { graphql, type GraphQLSchema } from "graphql";
import type { App, Planner } from "../../src/app/app.js";
import { createRateLimits, rateKey } from "../../src/app/rate-limits.js";
import { readConfig } from "../../src/config.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { alternativesFor } from "../../src/domain/planner/alternatives.js";
import { planWeek } from "../../src/domain/planner/plan-week.js";
import { answerQuestion } from "../../src/domain/planner/questions.js";
import { createContextOpener } from "../../src/graphql/open-context.js";
import { listenForNotices, type Notices } from "../../src/graphql/notices.js";
import { buildSchema } from "../../src/graphql/schema.js";
import { useDatabase, type TestDatabase } from "./database.js";

export interface Answer {
  // What a query answers is as many shapes as there are queries.
  // eslint-disable-next-line @typescript-eslint/no-explicit-any
  readonly data: any;
  readonly errors: readonly { message: string; extensions?: Record<string, unknown> }[];
  /** SQL statements of the operation's read transaction, BEGIN and the setting included. */
  readonly statements: number;
}

export interface TestApp {
  readonly database: TestDatabase;
  readonly app: App;
  readonly schema: GraphQLSchema;
  readonly notices: Notices;
  /** @param subject of the token; null sends none */
  run(subject: string | null, query: string, variables?: Record<string, unknown>): Promise<Answer>;
}

/** Few steps, in this thread: the search itself is tested elsewhere. */
const inProcess: Planner = {
  plan({ brief, seed, compare }, onProgress) {
    onProgress?.(0, null);
    let problem = "";
    const hash = (text: string) => {
      problem = text;
      return createHash("sha256").update(text).digest("hex");
    };
    const outcome = planWeek(brief, { seed, steps: 60_000, hash });
    onProgress?.(100, outcome.kind === "PLANNED" ? Math.round(outcome.objectivePoints) : null);
    return Promise.resolve({ outcome, compared: compare, aloneMinutes: null, problem: gzipSync(problem) });
  },
  alternatives: (brief, draft, place) => Promise.resolve(alternativesFor(brief, draft, place)),
  ask: (question) => Promise.resolve(answerQuestion(question, indexCatalogue(question.brief.catalogue))),
};

export const newKey = (): string => randomUUID();

/** Call at the top of a test file. */
export function useApp(): TestApp {
  const database = useDatabase({ demo: true });
  let parts: { app: App; schema: GraphQLSchema; notices: Notices } | undefined;
  const ready = () => {
    if (!parts) throw new Error("The app is there from beforeAll on.");
    return parts;
  };
  beforeAll(async () => {
    const reference = await database.db.readReference();
    const app: App = {
      db: database.db,
      reference,
      index: indexCatalogue(reference.catalogue),
      planner: inProcess,
      prover: null,
      queue: null,
      rates: createRateLimits({
        takeRate: database.db.takeRate,
        // Everybody in a test comes from one address; how fast links may be guessed is asked in tests of its own.
        rates: readConfig({ NODE_ENV: "test", RATE_GUESSES: "0" }).rates,
        key: rateKey(database.serverUrl),
        clock: () => performance.now(),
        onError(error) {
          throw error;
        },
      }),
      now: () => new Date("2026-11-25T12:00:00Z"),
      planSteps: 60_000,
    };
    parts = { app, schema: buildSchema(), notices: await listenForNotices(database.db) };
  });
  afterAll(() => parts?.notices.stop());
  return {
    database,
    get app() {
      return ready().app;
    },
    get schema() {
      return ready().schema;
    },
    get notices() {
      return ready().notices;
    },
    async run(subject, source, variableValues = {}) {
      const { app, schema, notices } = ready();
      const { context, close } = await createContextOpener(app, notices)({ subject, requestId: "test" });
      try {
        const answer = await graphql({ schema, source, variableValues, contextValue: context });
        return {
          data: JSON.parse(JSON.stringify(answer.data ?? null)) as unknown,
          errors: (answer.errors ?? []).map(({ message, extensions }) => ({ message, extensions })),
          statements: subject === null ? 0 : context.reads.session().statements(),
        };
      } finally {
        await close();
      }
    },
  };
}
