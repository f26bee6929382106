import { randomUUID } from "node:crypto";
import type { IncomingMessage, ServerResponse } from "node:http";

/** Safe on every answer: nothing here is meant to be sniffed, framed or kept by a shared cache. */
const ALWAYS = {
  "x-content-type-options": "nosniff",
  "referrer-policy": "no-referrer",
  "cross-origin-resource-policy": "same-origin",
  // For a browser that shows an answer as a page all the same.
  "content-security-policy": "default-src 'none'; frame-ancestors 'none'",
  "x-frame-options": "DENY",
};

/** Writes a whole body at once. */
export function answer(
  res: ServerResponse,
  status: number,
  body: string | Buffer,
  headers: Readonly<Record<string, string>>,
): void {
  const bytes = typeof body === "string" ? Buffer.from(body, "utf8") : body;
  res.writeHead(status, { ...ALWAYS, "cache-control": "no-store", ...headers, "content-length": bytes.byteLength });
  res.end(res.req.method === "HEAD" ? undefined : bytes);
}

export const answerJson = (
  res: ServerResponse,
  status: number,
  body: unknown,
  headers: Readonly<Record<string, string>> = {},
): void =>
  answer(res, status, JSON.stringify(body) + "\n", { "content-type": "application/json; charset=utf-8", ...headers });

/** The caller's `X-Request-Id` if it is a plain word of 8 to 64 characters (it goes into logs), else a new one. */
export function requestIdOf(req: IncomingMessage): string {
  const given = req.headers["x-request-id"];
  return typeof given === "string" && /^[A-Za-z0-9._-]{8,64}$/.test(given) ? given : randomUUID();
}
