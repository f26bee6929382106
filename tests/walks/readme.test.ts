import { readFileSync } from "node:fs";
import { graphql } from "graphql";
import type { App } from "../../src/app/app.js";
import { planWeek as planHousehold } from "../../src/app/plan-week.js";
import { readDemoFiles } from "../../src/database/seed.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { createContextOpener } from "../../src/graphql/open-context.js";
import { buildSchema } from "../../src/graphql/schema.js";
import { startPlannerPool } from "../../src/jobs/planner-pool.js";
import { PLAN_STEPS } from "../../src/plan-steps.js";
import { useDatabase } from "../support/database.js";

const database = useDatabase({ demo: true });

/** The fenced block between two comments of the README. */
function exampleIn(readme: string, name: string): string {
  const part = readme.split(`<!-- example:${name} -->`)[1]?.split(`<!-- /example:${name} -->`)[0] ?? "";
  return part.replace(/^\s*```\w*\n/, "").replace(/```\s*$/, "");
}

/** What `npm run demo` and then the README's request answer, on this machine as on any other: seed and steps are fixed. */
test("the README shows the query it sends and the answer that comes back", async () => {
  const demo = readDemoFiles();
  const reference = await database.db.readReference();
  const planner = startPlannerPool(reference.catalogue);
  try {
    const app: App = {
      db: database.db,
      reference,
      index: indexCatalogue(reference.catalogue),
      planner,
      prover: null,
      queue: null,
      now: () => new Date("2026-11-25T12:00:00Z"),
      planSteps: PLAN_STEPS,
    };
    const ana = await database.db.signIn("demo:ana", "Ana");
    const home = demo.homes[0]!;
    const planned = await planHousehold(app, ana, {
      idempotencyKey: "readme-example",
      householdId: home.id,
      date: demo.residence.demoWeek,
      seenRevision: 0,
      replanAgreed: false,
    });
    expect(planned.ok).toBe(true);

    const request = JSON.parse(readFileSync("shared/examples/first-query.json", "utf8")) as {
      query: string;
      variables: Record<string, unknown>;
    };
    const nobody = () => {
      throw new Error("nobody listens here");
    };
    const silent = {
      onErased: () => undefined,
      erased: () => undefined,
      about: nobody,
      changes: { follow: nobody },
      stop: () => Promise.resolve(),
    };
    const { context, close } = await createContextOpener(app, silent)({ subject: "demo:ana", requestId: "readme" });
    const answer = await graphql({
      schema: buildSchema(),
      source: request.query,
      variableValues: request.variables,
      contextValue: context,
    });
    await close();
    const readme = readFileSync("README.md", "utf8");
    const words = (text: string) => text.split(/\s+/).filter(Boolean).join(" ");
    expect(words(exampleIn(readme, "query"))).toBe(words(request.query));
    expect(JSON.parse(exampleIn(readme, "answer"))).toEqual(JSON.parse(JSON.stringify(answer)));
  } finally {
    await planner.stop();
  }
});
