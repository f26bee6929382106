/** Before anything secret that came with a request is looked up, such as an invitation's link. */
import { ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import type { RateRefusal } from "./rate-limits.js";

/** Who tries. */
export interface Guesser {
  /** As the transport tells it; an IPv6 network counts as one. */
  readonly address: string;
  /** Null for somebody who is not signed in. */
  readonly personId: string | null;
}

/**
 * Counts one attempt, right or wrong, by the address and by the person, so that neither another account nor another line makes
 * guessing faster. Call it before the look-up and answer alike whether the thing was there or not.
 * @param what of a kind, such as "invitation": each kind is counted for itself
 */
export async function limitGuessing(
  { rates }: Pick<App, "rates">,
  { address, personId }: Guesser,
  what: string,
): Promise<Result<null, RateRefusal>> {
  const byAddress = await rates.take("guess", `${what} ${address}`);
  if (!byAddress.ok || personId === null) return byAddress;
  const byPerson = await rates.take("guess", `${what} ${personId}`);
  return byPerson.ok ? ok(null) : byPerson;
}
