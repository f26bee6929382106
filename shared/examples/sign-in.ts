/** Signs demo people in at the development issuer; a real app gets its tokens from the issuer that `OIDC_ISSUER` names. */
import { WebSocket } from "ws";
import { createClient, type Client } from "../client.js";

const SERVER = process.argv[2] ?? "http://127.0.0.1:4000";

/** @param person subject of a demo person, such as "demo:ana" */
export function signIn(person: string, server = SERVER): Client {
  let kept: string | null = null;
  return createClient({
    url: `${server}/graphql`,
    documents: "hash",
    WebSocket,
    async token(renew) {
      if (kept === null || renew) kept = await tokenFor(person, server);
      return kept;
    },
  });
}

async function tokenFor(person: string, server: string): Promise<string> {
  const answer = await fetch(`${server}/dev/token`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ person }),
  });
  if (!answer.ok) throw new Error(`No token for ${person}: ${await answer.text()}`);
  return ((await answer.json()) as { access_token: string }).access_token;
}
