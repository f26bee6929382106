import { createClient } from "graphql-ws";
import { WebSocket } from "ws";
import { useServedApp } from "../support/served-app.js";

const served = useServedApp();
let id: string;
beforeAll(async () => {
  const { me } = await served.ask<{ me: { households: { id: string }[] } }>("demo:ana", "{ me { households { id } } }");
  id = me.households[0]!.id;
});

async function authorization(person: string): Promise<string> {
  const response = await fetch(`${served.url}/dev/token`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ person }),
  });
  return `Bearer ${((await response.json()) as { access_token: string }).access_token}`;
}

describe("over WebSocket", () => {
  const refusals = async (query: string, variables: Record<string, unknown>) => {
    const client = createClient({
      url: `${served.url.replace("http", "ws")}/graphql`,
      webSocketImpl: WebSocket,
      connectionParams: { authorization: await authorization("demo:ana") },
      retryAttempts: 0,
    });
    try {
      return await new Promise<readonly { message: string; extensions: { code: string } }[]>((resolve, reject) =>
        client.subscribe(
          { query, variables },
          {
            next: () => reject(new Error("was let through")),
            error: (errors) => resolve(errors as never),
            complete: () => resolve([]),
          },
        ),
      );
    } finally {
      await client.dispose();
    }
  };

  it("the same rules hold: cost, depth, aliases, directives, fragments and lists", async () => {
    const repeat = (times: number, each: (n: number) => string) =>
      Array.from({ length: times }, (_, n) => each(n)).join(" ");
    const progress = (selection: string, more = "") =>
      `subscription S($id: ID!) { weekChanged(householdId: $id) { ${selection} } } ${more}`;
    for (const [query, code] of [
      [
        progress(`plan { boxes { items { pricedAlternatives(first: 100) { dish { ingredients { grams } } } } } }`),
        "QUERY_LIMIT",
      ],
      [progress(repeat(31, (n) => `a${n}: revision`)), "QUERY_LIMIT"],
      [progress(repeat(21, () => "__typename @include(if: true)")), "QUERY_LIMIT"],
      [progress("...A", "fragment A on Week { ...A }"), "GRAPHQL_VALIDATION_FAILED"],
      [progress(repeat(2_000, () => "__typename")), "GRAPHQL_PARSE_FAILED"],
    ] as const) {
      expect([
        query.slice(0, 120),
        (await refusals(query, { id })).some((error) => error.extensions.code === code),
      ]).toEqual([query.slice(0, 120), true]);
    }
    const long = await refusals(progress("__typename"), { id, more: Array(1_001).fill(1) });
    expect(long[0]?.message).toContain("variables.more has 1001 entries");
  });
});
