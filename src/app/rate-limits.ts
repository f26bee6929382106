/**
 * How fast a person or an address may ask. The buckets stand in the database, so that several servers count together; each
 * server takes a second's worth of tokens at a time and gives them out itself, so that few requests cost a statement.
 *
 * What that leaves open, with S servers and a limit of n a minute: over any span at most n + n * minutes + S * n / 60 get through,
 * and somebody may have to wait while S - 1 servers still hold n / 60 tokens each.
 */
import { createHmac, hkdfSync, randomBytes } from "node:crypto";
import type { RateKind } from "../config.js";
import type { TakeRate } from "../database/database.js";
import { OperatorError } from "../domain/operator-error.js";
import { fail, ok, type Result } from "../domain/result.js";

/** Whole seconds, 1 or more, until it is worth trying again. */
export type RateRefusal =
  | { readonly kind: "RateLimited"; readonly retryAfterSeconds: number }
  /** The database does not say: nobody is let through uncounted. */
  | { readonly kind: "RatesUnknown"; readonly retryAfterSeconds: number };

export interface RateLimits {
  /**
   * Takes one token.
   * @param who the subject of a verified token, or an address; it is kept as a keyed hash only
   */
  take(kind: RateKind, who: string): Promise<Result<null, RateRefusal>>;
}

interface RateOptions {
  readonly takeRate: TakeRate;
  /** Tokens a minute of each kind; 0: no limit. */
  readonly rates: Readonly<Record<RateKind, number>>;
  /** Secret; servers that count together have the same. */
  readonly key: Uint8Array;
  /** Milliseconds that only ever grow. */
  readonly clock: () => number;
  readonly onError: (error: unknown) => void;
}

/** What this server knows of a bucket. */
interface Holding {
  tokens: number;
  /** Tokens in hand are given back to nobody; after this they count as spent. */
  goodUntil: number;
  refusedUntil: number;
}

const HELD_FOR_MS = 10_000;
/** A database that takes longer has other troubles than this statement. */
const PATIENCE_MS = 2_000;
/** After a failure nobody asks it again for so long, or every request would wait for its own. */
const REST_MS = 1_000;
const MOST_HOLDINGS = 20_000;

/**
 * The key of the buckets' names: every server that knows the database's password has the same one, and it is stored nowhere
 * (HKDF with SHA-256, RFC 5869). Without a password each process counts for itself.
 */
export function rateKey(databaseUrl: string): Uint8Array {
  const { password } = new URL(databaseUrl);
  return password === ""
    ? randomBytes(32)
    : new Uint8Array(hkdfSync("sha256", decodeURIComponent(password), "", "noonpail rate buckets", 32));
}

export function createRateLimits({ takeRate, rates, key, clock, onError }: RateOptions): RateLimits {
  const holdings = new Map<string, Holding>();
  const reserving = new Map<string, Promise<boolean>>();
  let awayUntil = -Infinity;

  /** Fetches tokens, or the time until there are some; false when the database does not answer. */
  async function reserve(bucket: string, perMinute: number): Promise<boolean> {
    try {
      const { granted, retryAfterMs } = await inTime(
        takeRate(bucket, Math.max(1, Math.floor(perMinute / 60)), perMinute),
      );
      const now = clock();
      holdings.delete(bucket); // so that the newest stands last
      if (holdings.size >= MOST_HOLDINGS) holdings.delete(holdings.keys().next().value!);
      holdings.set(bucket, { tokens: granted, goodUntil: now + HELD_FOR_MS, refusedUntil: now + retryAfterMs });
      return true;
    } catch (error) {
      if (clock() >= awayUntil) onError(error);
      awayUntil = clock() + REST_MS;
      return false;
    } finally {
      reserving.delete(bucket);
    }
  }

  return {
    async take(kind, who) {
      const perMinute = rates[kind];
      if (perMinute === 0) return ok(null);
      const bucket = createHmac("sha256", key).update(`${kind} ${who}`).digest("base64url").slice(0, 24);
      for (;;) {
        const held = holdings.get(bucket);
        const now = clock();
        if (held && held.tokens > 0 && now < held.goodUntil) {
          held.tokens -= 1;
          return ok(null);
        }
        if (held && now < held.refusedUntil) return refuse("RateLimited", held.refusedUntil - now);
        if (now < awayUntil) return refuse("RatesUnknown", awayUntil - now);
        const under = reserving.get(bucket) ?? reserve(bucket, perMinute);
        reserving.set(bucket, under);
        if (!(await under)) return refuse("RatesUnknown", REST_MS);
      }
    },
  };
}

const refuse = (kind: RateRefusal["kind"], milliseconds: number): Result<never, RateRefusal> =>
  fail({ kind, retryAfterSeconds: Math.max(1, Math.ceil(milliseconds / 1000)) });

async function inTime<T>(answer: Promise<T>): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new OperatorError(`No answer within ${PATIENCE_MS} ms.`)), PATIENCE_MS);
  });
  try {
    return await Promise.race([answer, late]);
  } finally {
    clearTimeout(timer);
  }
}

/** What the one who has to wait is told, whatever they came by. */
export interface RateNotice {
  readonly message: string;
  /** Of a GraphQL error. */
  readonly code: "RATE_LIMITED" | "UNAVAILABLE";
  /** RFC 6585, section 4, and RFC 9110, section 15.6.4. */
  readonly status: 429 | 503;
  /** For Retry-After too (RFC 9110, section 10.2.3). */
  readonly retryAfterSeconds: number;
}

export function noticeOf({ kind, retryAfterSeconds }: RateRefusal): RateNotice {
  const again = `Try again in ${retryAfterSeconds} s.`;
  switch (kind) {
    case "RateLimited":
      return { message: `Too many requests. ${again}`, code: "RATE_LIMITED", status: 429, retryAfterSeconds };
    case "RatesUnknown":
      return {
        message: `The service cannot answer just now. ${again}`,
        code: "UNAVAILABLE",
        status: 503,
        retryAfterSeconds,
      };
  }
}
