/** What a calendar feed shows next: what is wanted now, held against what it has shown before. */

/** One piece of a carer's work. Instants are milliseconds since 1970. */
export interface FeedEntry {
  /** The same for the same work, whatever plan it is in. */
  readonly uid: string;
  readonly startsAt: number;
  /** Later than `startsAt`. */
  readonly endsAt: number;
  readonly summary: string;
  readonly description: string;
  /** Whether to remind before it begins. */
  readonly reminds: boolean;
}

/** What is remembered of an event between two readings. */
export interface FeedMark {
  readonly uid: string;
  /** RFC 5545, 3.8.7.4: 0 at first, one more with every change. */
  readonly sequence: number;
  readonly fingerprint: string;
  readonly startsAt: number;
  readonly endsAt: number;
  readonly changedAt: number;
  /** Null while it is on. */
  readonly cancelledAt: number | null;
}

export interface FeedEvent {
  readonly mark: FeedMark;
  /** Null for one that was called off: of that nothing but the time is kept. */
  readonly entry: FeedEntry | null;
}

export interface FeedStep {
  /** In time order. */
  readonly events: readonly FeedEvent[];
  readonly changed: readonly FeedMark[];
  /** UIDs that need not be remembered any longer. */
  readonly forgotten: readonly string[];
}

/** Four weeks: past work is shown, and what was called off is repeated, so long that every subscriber has read it. */
export const FEED_KEEPS_MS = 28 * 86_400_000;

/** @param fingerprintOf of equal entries equal, of different ones different */
export function nextFeed(
  wanted: readonly FeedEntry[],
  before: readonly FeedMark[],
  now: number,
  fingerprintOf: (entry: FeedEntry) => string,
): FeedStep {
  const oldest = now - FEED_KEEPS_MS;
  const marks = new Map(before.map((mark) => [mark.uid, mark]));
  const events: FeedEvent[] = [];
  const changed: FeedMark[] = [];
  const forgotten: string[] = [];
  const keep = (mark: FeedMark, entry: FeedEntry | null) => {
    if (mark !== marks.get(mark.uid)) changed.push(mark);
    events.push({ mark, entry });
  };
  const shown = wanted.filter(({ endsAt }) => endsAt >= oldest);
  for (const entry of shown) {
    const known = marks.get(entry.uid);
    const fingerprint = fingerprintOf(entry);
    if (known?.fingerprint === fingerprint && known.cancelledAt === null) keep(known, entry);
    else {
      const { uid, startsAt, endsAt } = entry;
      const sequence = known === undefined ? 0 : known.sequence + 1;
      keep({ uid, sequence, fingerprint, startsAt, endsAt, changedAt: now, cancelledAt: null }, entry);
    }
  }
  const still = new Set(shown.map(({ uid }) => uid));
  for (const mark of before) {
    if (still.has(mark.uid)) continue;
    if (mark.endsAt < oldest || (mark.cancelledAt !== null && mark.cancelledAt < oldest)) forgotten.push(mark.uid);
    else if (mark.cancelledAt !== null) keep(mark, null);
    else keep({ ...mark, sequence: mark.sequence + 1, changedAt: now, cancelledAt: now }, null);
  }
  events.sort((a, b) => a.mark.startsAt - b.mark.startsAt || (a.mark.uid < b.mark.uid ? -1 : 1));
  return { events, changed, forgotten };
}
