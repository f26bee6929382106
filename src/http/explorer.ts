import { createHash } from "node:crypto";
import type { IncomingMessage, ServerResponse } from "node:http";
import { promisify } from "node:util";
import { gunzip, gzip } from "node:zlib";
import type { DemoPerson } from "./dev-issuer.js";
import { answer } from "./answer.js";
import { SIGN_IN_SCRIPT, signInStrip } from "./explorer-sign-in.js";

export type ExplorerPage = {
  /** The page, gzip-compressed: it carries a whole editor, 9 MB unpacked. */
  readonly compressed: Buffer;
  readonly etag: string;
  /** Content-Security-Policy under which it runs. */
  readonly policy: string;
};

type ExplorerOptions = {
  /** The document shown first, usually with a comment on how to sign in. */
  readonly defaultQuery: string;
  /** Who may sign in by the strip at the top; empty hides it. */
  readonly people: readonly DemoPerson[];
};

/** A lunch box, drawn by us. */
const ICON = `data:image/svg+xml,${encodeURIComponent(
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><path d="M11 9V6a2 2 0 0 1 2-2h6a2 2 0 0 1 2 2v3" fill="none" stroke="#8a5a18" stroke-width="2.5"/><rect x="3" y="9" width="26" height="18" rx="4" fill="#e2a33b"/><path d="M3 17h26M16 17v10" stroke="#8a5a18" stroke-width="2"/></svg>',
)}`;
const LOGO = `<img src="${ICON}" alt="" width="32" height="32">`;
const TITLE = "Noonpail explorer";

/** Builds the page: one self-contained document that asks no other host for anything. */
export async function renderExplorer({ defaultQuery, people }: ExplorerOptions): Promise<ExplorerPage> {
  // Loaded at first use: nobody who only asks the API should wait for an editor.
  const { renderGraphiQL } = await import("@graphql-yoga/render-graphiql");
  const shell = { title: TITLE, favicon: ICON };
  const [before = "", after = ""] = halves(renderGraphiQL(shell), JSON.stringify(shell));
  const options = { ...shell, logo: LOGO, endpoint: "/graphql", subscriptionsProtocol: "WS", defaultQuery };
  // Written as a script, so "<" must not be able to end it; and a function cannot be written as JSON.
  const json = JSON.stringify(options).replaceAll("<", "\\u003c").slice(0, -1);
  const page = `${before}${json},"connectionParams":() => ({ authorization: window.noonpailAuthorization() })}${after}`;
  const [head = "", body = ""] = halves(page, '<div id="root"></div>');
  const html = `${head}${signInStrip(people)}<div id="root"></div><script>${SIGN_IN_SCRIPT}</script>${body}`;
  const compressed = await promisify(gzip)(html);
  return { compressed, etag: `"${digest(compressed).slice(0, 27)}"`, policy: policyFor(html) };
}

/** Serves the page made by `render`, which is called once, at the first visit. */
export function createExplorer(options: ExplorerOptions): (req: IncomingMessage, res: ServerResponse) => Promise<void> {
  let made: Promise<ExplorerPage> | null = null;
  return async (req, res) => {
    made ??= renderExplorer(options);
    const page = await made;
    const headers = {
      "content-type": "text/html; charset=utf-8",
      "content-security-policy": page.policy,
      "cache-control": "no-cache",
      etag: page.etag,
      vary: "accept-encoding",
    };
    if (req.headers["if-none-match"] === page.etag) return answer(res, 304, "", headers);
    const zipped = /\bgzip\b/.test(String(req.headers["accept-encoding"] ?? ""));
    if (zipped) return answer(res, 200, page.compressed, { ...headers, "content-encoding": "gzip" });
    answer(res, 200, await promisify(gunzip)(page.compressed), headers);
  };
}

/**
 * Only the scripts in the page run, named by their hash; only this host is asked. The editor sets styles as it goes, so
 * inline styles stay allowed, and it starts its workers from blobs.
 */
function policyFor(html: string): string {
  const scripts = [...html.matchAll(/<script>([\s\S]*?)<\/script>/g)].map(
    ([, code = ""]) => `'sha256-${digest(code)}'`,
  );
  return [
    "default-src 'none'",
    `script-src ${scripts.join(" ")}`,
    "worker-src blob:",
    "style-src 'unsafe-inline'",
    "img-src data:",
    "font-src data:",
    "connect-src 'self'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join("; ");
}

const digest = (data: string | Buffer): string => createHash("sha256").update(data).digest("base64");

/** What stands before and after the last occurrence of `mark`. */
function halves(text: string, mark: string): [string, string] {
  const at = text.lastIndexOf(mark);
  if (at < 0) throw new Error(`The explorer's page no longer contains ${mark.slice(0, 40)}.`);
  return [text.slice(0, at), text.slice(at + mark.length)];
}
