import type { IncomingMessage } from "node:http";
import { fail, ok, type Result } from "../domain/result.js";
import { isJson } from "./media-type.js";
import { BODY_BYTES, DISCARDED_BYTES } from "./limits.js";

export type BodyFailure =
  | { readonly kind: "NotJson"; readonly contentType: string | null }
  | { readonly kind: "Compressed"; readonly encoding: string }
  | { readonly kind: "TooLarge"; readonly limitBytes: number }
  | { readonly kind: "BadJson" }
  | { readonly kind: "CutOff" };

/** Reads a JSON body of at most `BODY_BYTES`. */
export async function readJsonBody(req: IncomingMessage): Promise<Result<unknown, BodyFailure>> {
  const encoding = req.headers["content-encoding"];
  if (encoding !== undefined && encoding !== "identity") return fail({ kind: "Compressed", encoding });
  // Only JSON: a browser may send forms and plain text across sites without asking first, JSON never.
  const contentType = req.headers["content-type"];
  if (!isJson(contentType)) return fail({ kind: "NotJson", contentType: contentType ?? null });
  const bytes = await readBytes(req);
  if (!bytes.ok) return bytes;
  try {
    return ok(JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(bytes.value)));
  } catch {
    return fail({ kind: "BadJson" });
  }
}

function readBytes(req: IncomingMessage): Promise<Result<Buffer, BodyFailure>> {
  const tooLarge = fail<BodyFailure>({ kind: "TooLarge", limitBytes: BODY_BYTES });
  // A client still sending does not read: a little too much is swallowed so that it hears the answer, far too much is cut.
  if (Number(req.headers["content-length"] ?? 0) > DISCARDED_BYTES) return Promise.resolve(tooLarge);
  return new Promise((resolve) => {
    const chunks: Buffer[] = [];
    let size = 0;
    req.on("data", (chunk: Buffer) => {
      size += chunk.byteLength;
      if (size <= BODY_BYTES) chunks.push(chunk);
      else chunks.length = 0;
      if (size > DISCARDED_BYTES) resolve(tooLarge);
    });
    req.on("end", () => resolve(size > BODY_BYTES ? tooLarge : ok(Buffer.concat(chunks))));
    req.on("error", () => resolve(fail({ kind: "CutOff" })));
    req.on("close", () => resolve(fail({ kind: "CutOff" })));
  });
}
