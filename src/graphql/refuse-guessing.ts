import { GraphQLError } from "graphql";
import { limitGuessing } from "../app/limit-guessing.js";
import { noticeOf } from "../app/rate-limits.js";
import type { GraphqlContext } from "./context.js";

/**
 * To be called before a secret that came with a request is looked up.
 * @param what of a kind, such as "invitation"
 * @throws GraphQLError RATE_LIMITED with the seconds to wait after too many tries
 */
export async function refuseGuessing(context: GraphqlContext, what: string): Promise<void> {
  const may = await limitGuessing(context.app, context, what);
  if (may.ok) return;
  const { message, code, retryAfterSeconds } = noticeOf(may.error);
  throw new GraphQLError(message, { extensions: { code, retryAfterSeconds } });
}
