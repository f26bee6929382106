/** `GET /export/me` and `GET /export/household/<id>`, with the bearer token: a copy of the data as one JSON document, streamed. */
import type { ServerResponse } from "node:http";
import type { Result } from "../domain/result.js";
import { answerJson } from "./answer.js";
import type { PrefixRoute } from "./server.js";
import { explainToken, type VerifiedToken, type Verify } from "./tokens.js";

type Write = (out: (text: string) => Promise<void>) => Promise<void>;
export interface Exports {
  readonly verify: Verify;
  personOf(token: VerifiedToken): Promise<string>;
  me(personId: string): Write;
  /** @param id as the API gives it */
  household(
    personId: string,
    id: string,
  ): Promise<Result<Write, { readonly status: 403 | 404; readonly body: Readonly<Record<string, unknown>> }>>;
}

/** Each holds a connection to the database for as long as its reader takes. */
const MOST_AT_ONCE = 2;
/** A reader who takes nothing for so long is cut off. */
const STALLED_MS = 30_000;

class ReaderGone extends Error {}

export function exportRoute(exports: Exports): PrefixRoute {
  let running = 0;
  return {
    prefix: "/export/",
    async answer(req, res, rest) {
      if (req.method !== "GET") return answerJson(res, 405, { message: "Use GET." }, { allow: "GET" });
      const token = await exports.verify(req.headers.authorization);
      if (!token.ok)
        return answerJson(
          res,
          401,
          { kind: "Unauthenticated", reason: token.error.kind, message: explainToken(token.error) },
          { "www-authenticate": 'Bearer realm="noonpail"' },
        );
      const id = /^household\/([\w-]{1,200})$/.exec(rest)?.[1];
      if (rest !== "me" && id === undefined)
        return answerJson(res, 404, {
          kind: "NothingThere",
          message: "Nothing is served here. Try /export/me or /export/household/<id>.",
        });
      if (running >= MOST_AT_ONCE)
        return answerJson(
          res,
          503,
          { kind: "TooMany", message: "Other copies are being made. Try again in a minute." },
          { "retry-after": "60" },
        );
      running += 1;
      try {
        const personId = await exports.personOf(token.value);
        const found = id === undefined ? null : await exports.household(personId, id);
        if (found?.ok === false) return answerJson(res, found.error.status, found.error.body);
        await stream(res, found === null ? exports.me(personId) : found.value);
      } finally {
        running -= 1;
      }
    },
  };
}

/** @throws what reading throws; the answer is cut off then, so that nobody takes half of it for the whole */
async function stream(res: ServerResponse, write: Write): Promise<void> {
  res.writeHead(200, {
    "content-type": "application/json; charset=utf-8",
    "content-disposition": 'attachment; filename="noonpail-export.json"',
    "cache-control": "no-store",
    "x-content-type-options": "nosniff",
    "referrer-policy": "no-referrer",
  });
  try {
    await write((text) => taken(res, text));
    res.end();
  } catch (error) {
    res.destroy();
    if (!(error instanceof ReaderGone)) throw error;
  }
}

/** Resolves when the reader has room for more. */
const taken = (res: ServerResponse, text: string): Promise<void> =>
  new Promise((resolve, reject) => {
    if (res.destroyed) return reject(new ReaderGone());
    if (res.write(text)) return resolve();
    const settle = (done: () => void) => {
      clearTimeout(timer);
      res.off("drain", onDrain).off("close", onClose);
      done();
    };
    const onDrain = () => settle(resolve);
    const onClose = () => settle(() => reject(new ReaderGone()));
    const timer = setTimeout(onClose, STALLED_MS);
    res.once("drain", onDrain).once("close", onClose);
  });
