/** Links are guessed slowly: OWASP API Security Top 10 2023, API2 "Broken Authentication", asks for as much. */
import { graphql } from "graphql";
import type { RateLimits } from "../../src/app/rate-limits.js";
import { fail, ok } from "../../src/domain/result.js";
import { createContextOpener } from "../../src/graphql/open-context.js";
import { newKey, useApp } from "../support/app.js";

const parts = useApp();
const QUERY = "query I($token: String!) { invitation(token: $token) { householdName } }";
const ACCEPT = "mutation A($input: AcceptInvitationInput!) { acceptInvitation(input: $input) { __typename } }";
const token = "A".repeat(43);

it.each([
  ["looked up", QUERY, () => ({ token })],
  ["accepted", ACCEPT, () => ({ input: { idempotencyKey: newKey(), token } })],
])(
  "a link that is %s counts as a guess, by address and by person, before it is looked up",
  async (_, source, input) => {
    const asked: string[] = [];
    const rates: RateLimits = {
      take(kind, who) {
        asked.push(`${kind} ${who}`);
        return Promise.resolve(asked.length > 4 ? fail({ kind: "RateLimited", retryAfterSeconds: 7 }) : ok(null));
      },
    };
    const open = createContextOpener({ ...parts.app, rates }, parts.notices);
    const ask = async () => {
      const { context, close } = await open({ subject: "demo:tom", requestId: "test", address: "192.0.2.1" });
      const answer = await graphql({ schema: parts.schema, source, variableValues: input(), contextValue: context });
      await close();
      return (answer.errors ?? []).map(({ extensions }) => extensions);
    };
    expect(await ask()).toEqual([]);
    expect(await ask()).toEqual([]);
    expect(await ask()).toEqual([{ code: "RATE_LIMITED", retryAfterSeconds: 7 }]);
    const person = await parts.database.db.signIn("demo:tom", "-");
    expect(asked.slice(0, 2)).toEqual(["guess invitation 192.0.2.1", `guess invitation ${person}`]);
  },
);
