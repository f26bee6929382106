import { randomUUID } from "node:crypto";
import { link, mkdir, readFile, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { calculateJwkThumbprint, createLocalJWKSet, exportJWK, generateKeyPair, importJWK, SignJWT } from "jose";
import type { JSONWebKeySet, JWK, JWTVerifyGetKey } from "jose";
import type { Config } from "../config.js";
import { fail, ok, type Result } from "../domain/result.js";

/** A demo person who may sign in without a password. Invented, like all demo data. */
export type DemoPerson = { readonly subject: string; readonly name: string; readonly about: string };

export type TokenAnswer = { readonly access_token: string; readonly token_type: "Bearer"; readonly expires_in: number };

/** Signs tokens for the demo people, so that a newcomer needs no account anywhere. */
export type DevIssuer = {
  readonly people: readonly DemoPerson[];
  /** Verifies what this issuer signed. */
  readonly keys: JWTVerifyGetKey;
  /** Public keys only. */
  readonly jwks: JSONWebKeySet;
  /** OpenID Connect Discovery 1.0, section 3, as far as a verifier needs it. */
  readonly configuration: Readonly<Record<string, unknown>>;
  /** A token for one demo person, valid for eight hours. */
  issueToken(subject: string): Promise<Result<TokenAnswer, { kind: "UnknownPerson"; known: readonly string[] }>>;
};

/** Seconds. A working day, so that nobody signs in twice while trying things out. */
const LIFETIME = 8 * 60 * 60;

const KEY_FILE = "development-issuer-key.json";

/**
 * Opens the built-in issuer. Its key lives in `dataDir`, so tokens outlive a restart.
 * @throws in production, and when an outside issuer is configured
 */
export async function createDevIssuer(
  config: Pick<Config, "production" | "dataDir" | "tokens">,
  people: readonly DemoPerson[],
): Promise<DevIssuer> {
  if (config.production) throw new Error("The development issuer is refused in production. Set OIDC_ISSUER.");
  if (config.tokens.kind !== "development")
    throw new Error(
      "OIDC_ISSUER names an outside issuer; the development issuer stays off. Unset it to sign in as a demo person.",
    );
  const { issuer, audience } = config.tokens;
  const secret = await readKey(config.dataDir);
  const key = await importJWK(secret, "ES256");
  const kid = await calculateJwkThumbprint(secret);
  const { d: _private, ...open } = secret;
  const jwks: JSONWebKeySet = { keys: [{ ...open, kid, alg: "ES256", use: "sig" }] };

  return {
    people,
    jwks,
    keys: createLocalJWKSet(jwks),
    configuration: {
      issuer,
      jwks_uri: `${issuer}/dev/jwks.json`,
      token_endpoint: `${issuer}/dev/token`,
      response_types_supported: ["token"],
      subject_types_supported: ["public"],
      id_token_signing_alg_values_supported: ["ES256"],
    },
    async issueToken(subject) {
      const person = people.find((one) => one.subject === subject);
      if (!person) return fail({ kind: "UnknownPerson", known: people.map((one) => one.subject) });
      // RFC 9068, sections 2.1 and 2.2: type and claims of an access token; the name is an identity claim (2.2.2).
      const token = await new SignJWT({ client_id: "explorer", name: person.name })
        .setProtectedHeader({ alg: "ES256", kid, typ: "at+jwt" })
        .setJti(randomUUID())
        .setIssuer(issuer)
        .setAudience(audience)
        .setSubject(subject)
        .setIssuedAt()
        .setExpirationTime(`${LIFETIME}s`)
        .sign(key);
      return ok({ access_token: token, token_type: "Bearer", expires_in: LIFETIME });
    },
  };
}

/** Reads the private key, making it first if there is none. Two processes that start at once end with the same key. */
async function readKey(dataDir: string): Promise<JWK> {
  const file = join(dataDir, KEY_FILE);
  const kept = await readFile(file, "utf8").catch((error: NodeJS.ErrnoException) => {
    if (error.code === "ENOENT") return null;
    throw error;
  });
  if (kept === null) {
    await keepNewKey(dataDir, file);
    return readKey(dataDir);
  }
  try {
    const jwk = JSON.parse(kept) as JWK;
    await importJWK(jwk, "ES256");
    if (jwk.d !== undefined) return jwk;
  } catch {
    // falls through: whatever is wrong with it, the way out is the same
  }
  throw new Error(`${file} holds no usable signing key. Delete it; a new one is made at the next start.`);
}

async function keepNewKey(dataDir: string, file: string): Promise<void> {
  const { privateKey } = await generateKeyPair("ES256", { extractable: true });
  await mkdir(dataDir, { recursive: true });
  const draft = `${file}.${randomUUID()}`;
  await writeFile(draft, JSON.stringify(await exportJWK(privateKey)), { mode: 0o600 });
  // A link appears whole or not at all, and fails if another process was first: then theirs is the key.
  await link(draft, file).catch((error: NodeJS.ErrnoException) => {
    if (error.code !== "EEXIST") throw error;
  });
  await rm(draft);
}
