import { GraphQLError } from "graphql";

const MOST = 100;

/** A page size within 1 to 100. */
export function pageSize(first: number): number {
  if (Number.isInteger(first) && first >= 1 && first <= MOST) return first;
  throw new GraphQLError(`first is ${first}; ask for 1 to ${MOST}.`, { extensions: { code: "BAD_USER_INPUT" } });
}

/** Keyset cursors: the key of the last row, opaque to clients. */
export const cursorOf = (key: string): string => Buffer.from(key, "utf8").toString("base64url");
export function keyOf(cursor: string | null | undefined): string | null {
  if (cursor == null) return null;
  const key = Buffer.from(cursor, "base64url").toString("utf8");
  // Only the exact spelling we would have written is a cursor, and no key of ours holds a control character.
  if (cursorOf(key) === cursor && !/\p{Cc}/u.test(key)) return key;
  throw new GraphQLError("after is no cursor of this list; send the endCursor of the page before, or leave it out.", {
    extensions: { code: "BAD_USER_INPUT" },
  });
}

/** @param rows one more than the page, when there is more */
export function pageOf<T>(rows: readonly T[], first: number, key: (row: T) => string) {
  const nodes = rows.slice(0, first);
  const last = nodes.at(-1);
  return {
    nodes,
    pageInfo: { endCursor: last === undefined ? null : cursorOf(key(last)), hasNextPage: rows.length > first },
  };
}
