import type { SessionBrief } from "../brief.js";
import type { BatchPlan } from "../week.js";
import { dayNumber, instant } from "./clock.js";
import type { Fault } from "./fault.js";
import { groupBy } from "./week-read.js";
import type { WeekRead } from "./week-read.js";

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
/** Grams of rounding a batch may carry: amounts are planned in hundredths and may be stored in whole grams. */
const batchTolerance = 1;

/** First day a session's product counts for: an evening cooks for the next day, everything else for its own. */
const firstDay = (session: SessionBrief): number => dayNumber(session.date) + (session.kind === "EVENING" ? 1 : 0);

function checkBatch(week: WeekRead, batch: BatchPlan): Fault[] {
  const base = week.bases.get(batch.base);
  const session = week.sessions.get(batch.session);
  const at = { base: batch.base, session: batch.session };
  const faults: Fault[] = [];
  const fed = sum(batch.feeds.map((feed) => feed.grams));
  if (
    !(Math.abs(fed + batch.spareGrams - batch.grams) <= batchTolerance) ||
    batch.spareGrams < 0 ||
    batch.feeds.some((feed) => !(feed.grams > 0))
  ) {
    faults.push({ kind: "FEEDS_DO_NOT_ADD_UP", ...at, found: fed + batch.spareGrams, limit: batch.grams });
  }
  if (!base) return faults;
  const whole = Number.isInteger(batch.batches) && batch.batches > 0;
  if (!whole || !(Math.abs(batch.batches * base.batchGrams - batch.grams) <= batchTolerance)) {
    faults.push({ kind: "BATCH_GRAMS_WRONG", ...at, found: batch.grams, limit: batch.batches * base.batchGrams });
  }
  if (!session) return faults;
  if (!base.windows.includes(session.kind)) faults.push({ kind: "WINDOW_NOT_ALLOWED", ...at });
  for (const { date, childIds } of batch.feeds) {
    const last = firstDay(session) + base.keepsChilledDays - 1;
    if (dayNumber(date) > last)
      faults.push({
        kind: "FED_OUT_OF_DATE",
        ...at,
        date,
        found: dayNumber(date) - firstDay(session) + 1,
        limit: base.keepsChilledDays,
      });
    const leaves = week.brief.children.flatMap((child) =>
      child.days
        .filter((day) => day.date === date && childIds.includes(child.id))
        .map((day) => instant(date, day.leaveAt)),
    );
    const tooLate = leaves.some((leaveAt) => instant(session.date, session.startsAt) >= leaveAt);
    if (tooLate || dayNumber(date) < firstDay(session)) faults.push({ kind: "FED_BEFORE_MADE", ...at, date });
  }
  return faults;
}

/** The most batches of a base in one session; with sharing switched off every child's portion is cooked on its own. */
function checkBatchCounts(week: WeekRead): Fault[] {
  const together = groupBy(week.draft.batches, (batch) => {
    const whose = week.brief.sharing ? [] : batch.feeds.flatMap((feed) => feed.childIds);
    return JSON.stringify([batch.base, batch.session, [...new Set(whose)].sort()]);
  });
  return [...together.values()].flatMap((batches): Fault[] => {
    const [first] = batches;
    const limit = first && week.bases.get(first.base)?.maxBatches;
    const found = sum(batches.map((batch) => batch.batches));
    return first && limit !== undefined && found > limit
      ? [{ kind: "TOO_MANY_BATCHES", base: first.base, session: first.session, found, limit }]
      : [];
  });
}

/** What the items of each date take of each base is there: fed by batches and ready stock, neither too little nor unaccounted. */
function checkSupply(week: WeekRead): Fault[] {
  const rows: { base: string; date: string; need: number; supply: number; items: number }[] = [];
  for (const { dish, scale, box } of week.items) {
    for (const { base, grams } of dish.bases)
      rows.push({ base, date: box.date, need: grams * scale, supply: 0, items: 1 });
  }
  for (const { base, feeds } of week.draft.batches)
    for (const { date, grams } of feeds) rows.push({ base, date, need: 0, supply: grams, items: 0 });
  for (const { base, date, grams } of week.draft.readyUses) rows.push({ base, date, need: 0, supply: grams, items: 0 });
  return [...groupBy(rows, (row) => JSON.stringify([row.base, row.date])).values()].flatMap((group): Fault[] => {
    const [first] = group;
    if (!first) return [];
    const at = { base: first.base, date: first.date };
    const need = sum(group.map((row) => row.need));
    const supply = sum(group.map((row) => row.supply));
    // One gram per item for portions rounded one by one.
    const tolerance = Math.max(1, sum(group.map((row) => row.items)));
    if (!(supply >= need - tolerance)) return [{ kind: "BASE_SHORT", ...at, found: supply, limit: need }];
    return supply > need + tolerance ? [{ kind: "SUPPLY_UNUSED", ...at, found: supply, limit: need }] : [];
  });
}

function checkReady(week: WeekRead): Fault[] {
  const { brief, draft } = week;
  const faults: Fault[] = [];
  for (const [readyId, uses] of groupBy(draft.readyUses, (use) => use.readyId)) {
    const ready = brief.ready.find((row) => row.id === readyId);
    if (!ready || uses.some((use) => use.base !== ready.base)) {
      faults.push({ kind: "READY_UNKNOWN", readyId });
      continue;
    }
    for (const { date } of uses) {
      if (date < ready.firstDate || date > ready.lastDate)
        faults.push({ kind: "READY_OUT_OF_DATE", readyId, base: ready.base, date });
    }
    const found = sum(uses.map((use) => use.grams));
    if (!(found <= ready.grams + batchTolerance))
      faults.push({ kind: "READY_OVERDRAWN", readyId, base: ready.base, found, limit: ready.grams });
  }
  return faults;
}

/** What is cooked stays in the plan, and the plan claims nothing cooked that is not. */
function checkMade(week: WeekRead): Fault[] {
  const { made } = week.brief;
  const claimed = week.draft.batches.filter((batch) => batch.made);
  const cooked = (
    rows: readonly { base: string; session: string; batches: number }[],
    at: { base: string; session: string },
  ): number => sum(rows.filter((row) => row.base === at.base && row.session === at.session).map((row) => row.batches));
  return [
    ...made
      .filter((row) => cooked(claimed, row) < cooked(made, row))
      .map(({ base, session }): Fault => ({ kind: "MADE_BATCH_MISSING", base, session })),
    ...claimed
      .filter((row) => cooked(claimed, row) > cooked(made, row))
      .map(({ base, session }): Fault => ({ kind: "BATCH_NOT_MADE", base, session })),
  ];
}

/**
 * Each night the refrigerator holds what is fed later: as many whole batches' storage as the remaining grams fill. A
 * session's product is kept from the night after it (an evening's from that same night).
 */
function checkRefrigerator(week: WeekRead): Fault[] {
  const kept = week.draft.batches.flatMap((batch) => {
    const base = week.bases.get(batch.base);
    const session = week.sessions.get(batch.session);
    return base && session ? [{ batch, base, from: dayNumber(session.date) }] : [];
  });
  const nights = new Set(
    kept.flatMap(({ batch, from }) => batch.feeds.flatMap(({ date }) => range(from, dayNumber(date)))),
  );
  return [...nights].flatMap((night): Fault[] => {
    const found = sum(
      kept
        .filter(({ from }) => from <= night)
        .map(({ batch, base }) => {
          const later = sum(batch.feeds.filter(({ date }) => dayNumber(date) > night).map(({ grams }) => grams));
          return Math.ceil(later / base.batchGrams - 1e-6) * base.storageMl;
        }),
    );
    const limit = week.brief.household.refrigeratorMl;
    return found > limit ? [{ kind: "REFRIGERATOR_TOO_FULL", found, limit, ...nightDate(kept, night) }] : [];
  });
}

/** Whole numbers from `from` up to but not including `to`; a week at most, whatever a broken plan says. */
function range(from: number, to: number): number[] {
  return Array.from({ length: Math.max(0, Math.min(14, to - from) || 0) }, (_, index) => from + index);
}

/** The date whose boxes come after that night, when something is fed on it. */
function nightDate(kept: readonly { batch: BatchPlan }[], night: number): { date?: string } {
  const date = kept.flatMap(({ batch }) => batch.feeds).find((feed) => dayNumber(feed.date) === night + 1)?.date;
  return date === undefined ? {} : { date };
}

/** Batches, what they feed, ready stock and cold storage. */
export function checkBatches(week: WeekRead): Fault[] {
  return [
    ...week.draft.batches.flatMap((batch) => checkBatch(week, batch)),
    ...checkBatchCounts(week),
    ...checkSupply(week),
    ...checkReady(week),
    ...checkMade(week),
    ...checkRefrigerator(week),
  ];
}
