/** The few lines a client needs: sign in at the development issuer, send one operation. */
const SERVER = "http://127.0.0.1:4000";

export type Client = <T>(query: string, variables?: Record<string, unknown>) => Promise<T>;

/** @param person subject of a demo person, such as "demo:ana" */
export async function signIn(person: string, server = SERVER): Promise<Client> {
  const answer = await fetch(`${server}/dev/token`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ person }),
  });
  if (!answer.ok) throw new Error(`No token for ${person}: ${await answer.text()}. Is "npm start" running?`);
  const { access_token: token } = (await answer.json()) as { access_token: string };
  return async <T>(query: string, variables: Record<string, unknown> = {}): Promise<T> => {
    const response = await fetch(`${server}/graphql`, {
      method: "POST",
      headers: { "content-type": "application/json", authorization: `Bearer ${token}` },
      body: JSON.stringify({ query, variables }),
    });
    const { data, errors } = (await response.json()) as { data?: T; errors?: { message: string }[] };
    if (errors?.length || data === undefined)
      throw new Error(errors?.map((error) => error.message).join("; ") ?? "no data");
    return data;
  };
}

/** A new key for every attempt; the same key when the same attempt is repeated. */
export const newKey = (): string => crypto.randomUUID();
