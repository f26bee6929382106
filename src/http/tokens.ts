import {
  createRemoteJWKSet,
  errors,
  jwtVerify,
  type JWTHeaderParameters,
  type JWTPayload,
  type JWTVerifyGetKey,
} from "jose";
import { z } from "zod";
import type { Config } from "../config.js";
import { fail, ok, type Result } from "../domain/result.js";

export type VerifiedToken = {
  readonly subject: string;
  /** The `name` claim as it stands; null where there is none. */
  readonly name: string | null;
  readonly expiresAt: Date;
};

export type TokenFailure = {
  readonly kind:
    | "MissingToken"
    | "MalformedToken"
    | "ExpiredToken"
    | "NotYetValid"
    | "WrongAudience"
    | "WrongIssuer"
    | "WrongKind"
    | "WrongClient"
    | "BadSignature"
    | "AlgorithmRefused";
};

/**
 * Checks one `Authorization` value, `Bearer <token>`.
 * @throws when the issuer's keys cannot be fetched: an outage, not the caller's fault
 */
export type Verify = (authorization: string | undefined) => Promise<Result<VerifiedToken, TokenFailure>>;

/** Asymmetric only: with a shared-secret algorithm allowed, a public key would do as the secret (RFC 8725, 2.1 and 3.1). */
const ALGORITHMS = ["ES256", "RS256", "EdDSA"];

/** Seconds two machines' clocks may differ. */
const CLOCK_TOLERANCE = 5;

/** Characters; longer than any honest token, short enough that refusing costs nothing. */
const LONGEST_TOKEN = 8_192;

/** OpenID Connect Core 1.0, section 2, "sub". */
const LONGEST_SUBJECT = 255;

/**
 * Header types by what is accepted; a token without one counts as "jwt", as many issuers leave it out. RFC 9068, section 2.1, gives
 * access tokens theirs.
 */
const TYPES = { access: ["at+jwt", "jwt"], id: ["jwt"] } as const satisfies Record<
  Config["tokens"]["accepts"],
  unknown
>;

/**
 * Checks of RFC 8725: algorithm list (3.1), all cryptography (3.3), issuer and subject (3.8), audience (3.9), no key or address taken
 * from the token itself (3.10), type (3.11), rules that no other kind of token passes (3.12).
 */
export function createVerifier(config: Pick<Config, "tokens">, keys: JWTVerifyGetKey): Verify {
  const { issuer, audience } = config.tokens;
  return async (authorization) => {
    if (authorization === undefined || authorization.trim() === "") return fail({ kind: "MissingToken" });
    const token = /^Bearer +([\w-]+\.[\w-]*\.[\w-]*)$/i.exec(authorization.trim())?.[1];
    if (token === undefined || token.length > LONGEST_TOKEN) return fail({ kind: "MalformedToken" });
    try {
      const { payload, protectedHeader } = await jwtVerify(token, keys, {
        issuer,
        audience,
        algorithms: ALGORITHMS,
        clockTolerance: CLOCK_TOLERANCE,
        requiredClaims: ["sub", "exp"],
      });
      const { sub, exp, name } = payload;
      if (typeof sub !== "string" || sub === "" || sub.length > LONGEST_SUBJECT || exp === undefined)
        return fail({ kind: "MalformedToken" });
      const other = otherPurpose(config.tokens, protectedHeader, payload);
      if (other !== null) return fail({ kind: other });
      return ok({ subject: sub, name: typeof name === "string" ? name : null, expiresAt: new Date(exp * 1000) });
    } catch (error) {
      const kind = failureKind(error);
      if (kind === null) throw error;
      return fail({ kind });
    }
  };
}

/** Whether a token that is sound was made for something else than signing in here. */
function otherPurpose(
  { accepts, clients, audience }: Config["tokens"],
  header: JWTHeaderParameters,
  payload: JWTPayload,
): "WrongKind" | "WrongClient" | null {
  // RFC 7515, section 4.1.9: media types, in whatever case, "application/" may be left out.
  const type = (header.typ ?? "JWT").toLowerCase().replace(/^application\//, "");
  if (!(TYPES[accepts] as readonly string[]).includes(type)) return "WrongKind";
  // Security events (RFC 8417, 2.2), logout tokens among them (OpenID Connect Back-Channel Logout 1.0, 2.4).
  if (payload["events"] !== undefined) return "WrongKind";
  const { azp, client_id: client } = payload;
  if (accepts === "id") {
    // OpenID Connect Core 1.0, 3.1.3.7, steps 3 to 5; its audience is the client.
    if (azp !== undefined && azp !== audience) return "WrongClient";
    return azp === undefined && Array.isArray(payload.aud) && payload.aud.length > 1 ? "WrongClient" : null;
  }
  if (isIdToken(payload)) return "WrongKind";
  const named = [client, azp].filter((each) => each !== undefined);
  const known =
    clients === null || (named.length > 0 && named.every((each) => typeof each === "string" && clients.includes(each)));
  return known ? null : "WrongClient";
}

/**
 * Claims that only an ID token has: hashes of what came with it (OpenID Connect Core 1.0, 3.1.3.6 and 3.3.2.11); or the nonce of its
 * request (2) where nothing says which client may do what, as an access token does (RFC 9068, 2.2 and 2.2.3).
 */
const isIdToken = (payload: JWTPayload): boolean =>
  payload["at_hash"] !== undefined ||
  payload["c_hash"] !== undefined ||
  (payload["nonce"] !== undefined && payload["client_id"] === undefined && payload["scope"] === undefined);

function failureKind(error: unknown): TokenFailure["kind"] | null {
  if (error instanceof errors.JWTExpired) return "ExpiredToken";
  if (error instanceof errors.JWTClaimValidationFailed) {
    if (error.claim === "aud") return "WrongAudience";
    if (error.claim === "iss") return "WrongIssuer";
    return error.claim === "nbf" && error.reason === "check_failed" ? "NotYetValid" : "MalformedToken";
  }
  if (error instanceof errors.JOSEAlgNotAllowed) return "AlgorithmRefused";
  if (
    error instanceof errors.JWSSignatureVerificationFailed ||
    error instanceof errors.JWKSNoMatchingKey ||
    error instanceof errors.JWKSMultipleMatchingKeys
  )
    return "BadSignature";
  if (
    error instanceof errors.JWTInvalid ||
    error instanceof errors.JWSInvalid ||
    error instanceof errors.JOSENotSupported
  )
    return "MalformedToken";
  return null;
}

const SENTENCES: Record<TokenFailure["kind"], string> = {
  MissingToken: "Sign in: send the header Authorization: Bearer <token>.",
  MalformedToken:
    "The token cannot be read. Send Authorization: Bearer <token> with a signed token that has sub and exp.",
  ExpiredToken: "The token has expired. Get a new one and try again.",
  NotYetValid: "The token is not valid yet. Check the clock of the machine that issued it.",
  WrongAudience: "The token was issued for another service.",
  WrongIssuer: "The token comes from an issuer this server does not accept.",
  WrongKind: "The token was made for something else than signing in here. Send the kind of token this server takes.",
  WrongClient: "The token was issued to an application this server does not accept.",
  BadSignature: "The token's signature does not fit the issuer's keys. Get a new token.",
  AlgorithmRefused: `The token is signed in a way this server does not accept; it takes ${ALGORITHMS.join(", ")}.`,
};

/** What to tell the person, with the way out. */
export const explainToken = (failure: TokenFailure): string => SENTENCES[failure.kind];

const discovery = z.object({ issuer: z.string(), jwks_uri: z.url() });

/** Milliseconds to wait for the issuer. */
const ISSUER_PATIENCE = 5_000;

/**
 * The public keys of an outside issuer, fetched when first needed and kept for ten minutes; an unknown key id fetches
 * again, at most every 30 s. Without a configured address they are found by OpenID Connect Discovery 1.0, section 4.
 */
export function remoteKeys(config: Pick<Config, "tokens">): JWTVerifyGetKey {
  let keys: Promise<JWTVerifyGetKey> | null = null;
  return async (header, token) => {
    keys ??= find(config).catch((error: unknown) => {
      keys = null; // the next request tries again
      throw error;
    });
    return (await keys)(header, token);
  };
}

async function find({ tokens }: Pick<Config, "tokens">): Promise<JWTVerifyGetKey> {
  const address = tokens.jwksUrl ?? (await discover(tokens.issuer));
  return createRemoteJWKSet(new URL(address), {
    timeoutDuration: ISSUER_PATIENCE,
    cooldownDuration: 30_000,
    cacheMaxAge: 600_000,
  });
}

async function discover(issuer: string): Promise<string> {
  const address = `${issuer.replace(/\/$/, "")}/.well-known/openid-configuration`;
  const answer = await fetch(address, { signal: AbortSignal.timeout(ISSUER_PATIENCE), redirect: "error" });
  if (!answer.ok) throw new Error(`The issuer answered ${answer.status} at ${address}. Check OIDC_ISSUER.`);
  const found = discovery.parse(await answer.json());
  // Section 4.3: the document's issuer must be the one it was asked from, or one issuer could speak for another.
  if (found.issuer !== issuer)
    throw new Error(`${address} speaks for ${found.issuer}, not for ${issuer}. Check OIDC_ISSUER.`);
  if (issuer.startsWith("https:") && !found.jwks_uri.startsWith("https:"))
    throw new Error(`${address} names keys at an address without https. Set OIDC_JWKS_URL.`);
  return found.jwks_uri;
}
