/** How long a client waits before it tries again, and how often. */
export interface Patience {
  /** Milliseconds before the second try; twice as much before each further one. */
  readonly first: number;
  /** Milliseconds; no wait is longer. */
  readonly most: number;
  /** Tries of one operation, or of one event that cannot be read; a lost socket is opened again without end. */
  readonly tries: number;
}
export const usualPatience: Patience = { first: 250, most: 15_000, tries: 6 };

/**
 * Milliseconds before the try after `tried` of them: doubling, of which a random half, so that many clients of a server that
 * restarts do not come at one moment.
 * @param random from 0 to 1
 */
export const waitBefore = ({ first, most }: Patience, tried: number, random: number): number =>
  Math.min(most, first * 2 ** Math.min(tried - 1, 30)) * (0.5 + random / 2);

/** Milliseconds that a Retry-After header asks for, in seconds or as a date (RFC 9110, 10.2.3); null when it says nothing. */
export function retryAfter(header: string | null, now: number): number | null {
  if (header === null) return null;
  if (/^\d{1,9}$/.test(header.trim())) return Number(header) * 1000;
  const date = Date.parse(header);
  return Number.isNaN(date) ? null : Math.max(0, date - now);
}
