/** Secrets that travel in a link or an address: told once, kept as a digest alone. */
import { createHash, randomBytes } from "node:crypto";

/** Bytes; 256 bits are not guessed, so a plain digest of them needs no salt. */
const SECRET_BYTES = 32;
/** They in base64url. */
const SECRET = /^[\w-]{43}$/;

export const freshSecret = (): string => randomBytes(SECRET_BYTES).toString("base64url");

/** SHA-256 as hex of a secret; null for a text that cannot be one. Nothing but this leaves the process. */
export const digestOf = (secret: string): string | null =>
  SECRET.test(secret) ? createHash("sha256").update(secret).digest("hex") : null;
