/** `GET /feed/<secret>.ics`: a carer's calendar feed, for calendar programs, which sign in as nobody. */
import { createHash } from "node:crypto";
import { answer, answerJson } from "./answer.js";
import type { PrefixRoute } from "./server.js";

/** @param readFeed the feed behind a secret as iCalendar text; null for a secret that opens nothing */
export const feedRoute = (readFeed: (secret: string) => Promise<string | null>): PrefixRoute => ({
  prefix: "/feed/",
  async answer(req, res, rest) {
    if (req.method !== "GET" && req.method !== "HEAD")
      return answerJson(res, 405, { message: "Use GET." }, { allow: "GET, HEAD" });
    // 32 bytes in base64url are 43 characters; anything else is no address, and is told nothing else.
    const secret = /^([\w-]{43})\.ics$/.exec(rest)?.[1];
    const text = secret === undefined ? null : await readFeed(secret);
    if (text === null)
      return answerJson(res, 404, {
        message: "There is no feed at this address. If it was yours, make a new address (renewFeedAddress).",
      });
    const etag = `"${createHash("sha256").update(text).digest("base64url")}"`;
    // Only the asker may keep it, and asks before showing it again: tasks change hands.
    const kept = { etag, "cache-control": "private, no-cache" };
    if (isKnown(req.headers["if-none-match"], etag)) return answer(res, 304, "", kept);
    answer(res, 200, text, { ...kept, "content-type": "text/calendar; charset=utf-8" });
  },
});

/** RFC 9110, 13.1.2: any of the tags, compared weakly, or any at all. */
const isKnown = (header: string | undefined, etag: string): boolean =>
  header !== undefined &&
  header.split(",").some((tag) => tag.trim() === "*" || tag.trim().replace(/^W\//, "") === etag);
