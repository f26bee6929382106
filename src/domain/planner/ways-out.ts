/**
 * The smallest changes with which a week that cannot be planned can be. Each is made in the brief and the week planned again; one
 * that leaves no week is not listed. What keeps a child safe or fed, and what school and family forbid, is not among them.
 */
import type { EquipmentKind } from "../../../shared/codes.js";
import type { HouseRule, PlaceBrief, SessionBrief, WeekBrief } from "../brief.js";
import { addDays, minutesOf, timeOf } from "../calendar/dates.js";
import type { CatalogueIndex } from "../catalogue/derive.js";
import type { WishTotals } from "../week.js";
import { findCandidates, isAt } from "./candidates.js";
import { findClashes, isMet, type ClashOptions, type ClashSet } from "./clashes.js";
import { findPlaceConflicts, findReachConflicts } from "./conflicts.js";
import { judgePlannability } from "./feasibility.js";
import { sessionKey } from "../kitchen/session-key.js";
import { formulate } from "./formulate.js";
import { replan } from "./replan.js";
import { inTimeOrder, withMeans, type Requirement } from "./requirements.js";

/** One change a household can make itself. */
export type Change =
  | ({ readonly kind: "UNPIN"; readonly dish: string } & PlaceBrief)
  | { readonly kind: "RELAX_HOUSE_RULE"; readonly rule: HouseRule; readonly date: string }
  | { readonly kind: "GET_FOOD"; readonly foodKind: string }
  /** So many cold sources in all, in an insulated bag. */
  | { readonly kind: "COLD_SOURCES"; readonly childId: string; readonly coldSources: number }
  | { readonly kind: "FLASK"; readonly childId: string }
  /** More minutes of hands and of clock; a morning begins so much earlier. */
  | { readonly kind: "MORE_MINUTES"; readonly session: string; readonly date: string; readonly minutes: number }
  | {
      readonly kind: "EXTRA_SESSION";
      readonly window: "EVENING" | "MORNING";
      readonly date: string;
      readonly startsAt: string;
      readonly minutes: number;
    }
  /** The largest compartment grows. */
  | { readonly kind: "BIGGER_BOX"; readonly childId: string; readonly moreMl: number }
  | { readonly kind: "MORE_EQUIPMENT"; readonly equipment: EquipmentKind }
  | { readonly kind: "REFRIGERATOR_ROOM"; readonly moreMl: number }
  /** No box from home that day. */
  | { readonly kind: "SCHOOL_MEAL"; readonly childId: string; readonly date: string };

export interface VerifiedWayOut {
  /** All of them together; none can be left out. */
  readonly changes: readonly Change[];
  /** Of the week that was planned with them. */
  readonly wishes: WishTotals;
}

export interface WaysOutOptions extends ClashOptions {
  /** Days before it are over and cannot be changed. */
  readonly notBefore?: string;
}

const MOST_WAYS = 5;
/** Clashes mended one after the other, at most. */
const MOST_CHANGES = 4;
/** The week with the changes is found by the search for any week; so much of a search makes it a good one. */
const REPLAN_STEPS = 10_000;

/** From the smallest up; our own order of what is least trouble. */
const trouble: readonly Change["kind"][] = [
  "UNPIN",
  "RELAX_HOUSE_RULE",
  "GET_FOOD",
  "COLD_SOURCES",
  "FLASK",
  "MORE_MINUTES",
  "EXTRA_SESSION",
  "BIGGER_BOX",
  "REFRIGERATOR_ROOM",
  "MORE_EQUIPMENT",
  "SCHOOL_MEAL",
];

const minuteSteps = [5, 10, 15, 20, 30, 45, 60, 90];
const extraMinutes = [20, 30, 45, 60];
const boxSteps = [100, 200, 400, 800];
const roomSteps = [2_000, 5_000, 10_000];
const MOST_COLD_SOURCES = 6;
const EVENING_STARTS_AT = "19:30";

/**
 * Ways out of a clash, the least trouble first, at most five. Where no single change is enough, one way of several changes, each
 * for a clash that was left. Empty when nothing the household can do itself was found to help, or the search was stopped.
 */
export function findWaysOut(
  brief: WeekBrief,
  index: CatalogueIndex,
  clashes: ClashSet,
  options: WaysOutOptions,
): VerifiedWayOut[] {
  const stopped = (): boolean => options.shouldStop?.() === true;
  const ways: VerifiedWayOut[] = [];
  const partial: Change[][] = [];
  for (const ladder of laddersFor(brief, clashes, options.notBefore ?? "")) {
    if (ways.length === MOST_WAYS || stopped()) break;
    const from = ladder.findIndex((change) => isMet(apply(brief, change), index, clashes, options));
    if (from < 0) continue;
    const way = firstThatWorks(brief, index, ladder.slice(from), options);
    if (way === null) partial.push(ladder.slice(from));
    else ways.push(way);
  }
  if (ways.length > 0) return ways;
  for (const ladder of partial) {
    if (ways.length === MOST_WAYS || stopped()) break;
    const way = mendAlike(brief, index, ladder, options);
    if (way !== null) ways.push(way);
  }
  const [first] = partial;
  if (ways.length > 0 || first === undefined) return ways;
  const several = mendOneByOne(brief, index, first[0]!, options);
  return several === null ? [] : [several];
}

/** The change made wherever it can be made alike: what clashes on one morning often clashes on the others too. */
function mendAlike(
  brief: WeekBrief,
  index: CatalogueIndex,
  ladder: readonly Change[],
  options: WaysOutOptions,
): VerifiedWayOut | null {
  for (const change of ladder) {
    const everywhere = alike(brief, change).filter((row) => !("date" in row) || row.date >= (options.notBefore ?? ""));
    if (everywhere.length < 2) return null;
    if (planWith(brief, index, everywhere, options) !== null) return withoutNeedless(brief, index, everywhere, options);
  }
  return null;
}

function alike(brief: WeekBrief, change: Change): Change[] {
  const dates = [...new Set(brief.children.flatMap(({ days }) => days.map(({ date }) => date)))].sort();
  switch (change.kind) {
    case "MORE_MINUTES": {
      const kind = brief.sessions.find(({ key }) => key === change.session)?.kind;
      return brief.sessions
        .filter((row) => row.kind === kind)
        .map(({ key, date }) => ({ ...change, session: key, date }));
    }
    case "RELAX_HOUSE_RULE":
      return dates.map((date) => ({ ...change, date }));
    case "COLD_SOURCES":
    case "FLASK":
    case "BIGGER_BOX":
      return brief.children.map(({ id }) => ({ ...change, childId: id }));
    case "SCHOOL_MEAL":
      return (brief.children.find(({ id }) => id === change.childId)?.days ?? [])
        .map(({ date }) => ({ ...change, date }))
        .filter(({ childId, date }) => isOpen(brief, childId, date));
    case "UNPIN":
    case "GET_FOOD":
    case "EXTRA_SESSION":
    case "REFRIGERATOR_ROOM":
    case "MORE_EQUIPMENT":
      return [change];
  }
}

/** Changes that are enough together, less those that are not needed. */
function withoutNeedless(
  brief: WeekBrief,
  index: CatalogueIndex,
  enough: readonly Change[],
  options: WaysOutOptions,
): VerifiedWayOut | null {
  let changes = enough;
  for (const change of enough) {
    const fewer = changes.filter((other) => other !== change);
    if (planWith(brief, index, fewer, options) !== null) changes = fewer;
  }
  const wishes = planWith(brief, index, changes, options);
  return wishes === null ? null : { changes, wishes };
}

function firstThatWorks(
  brief: WeekBrief,
  index: CatalogueIndex,
  ladder: readonly Change[],
  options: WaysOutOptions,
): VerifiedWayOut | null {
  const last = ladder.at(-1);
  // Most often the first is enough; when not even the last is, the ones between are not tried.
  const first = ladder[0];
  if (first === undefined || last === undefined) return null;
  const wishes = planWith(brief, index, [first], options);
  if (wishes !== null) return { changes: [first], wishes };
  if (first === last || planWith(brief, index, [last], options) === null) return null;
  for (const change of ladder.slice(1)) {
    const found = planWith(brief, index, [change], options);
    if (found !== null) return { changes: [change], wishes: found };
  }
  return null;
}

/** A change that mends one clash and leaves another: the next clash is looked for and mended, and so on. */
function mendOneByOne(
  brief: WeekBrief,
  index: CatalogueIndex,
  first: Change,
  options: WaysOutOptions,
): VerifiedWayOut | null {
  let changes: readonly Change[] = [first];
  while (changes.length < MOST_CHANGES) {
    const changed = changes.reduce(apply, brief);
    const left = findClashes(changed, index, options);
    if (left === null || options.shouldStop?.() === true) return null;
    const next = laddersFor(changed, left, options.notBefore ?? "")
      .map((ladder) => ladder.find((change) => isMet(apply(changed, change), index, left, options)))
      .find((change) => change !== undefined);
    if (next === undefined) return null;
    changes = [...changes, next];
    if (planWith(brief, index, changes, options) === null) continue;
    return withoutNeedless(brief, index, changes, options);
  }
  return null;
}

/** The wishes of a week planned with the changes made; null when none was found whose sessions and boxes hold. */
function planWith(
  brief: WeekBrief,
  index: CatalogueIndex,
  changes: readonly Change[],
  { seed, steps, shouldStop }: WaysOutOptions,
): WishTotals | null {
  if (shouldStop?.() === true) return null;
  const changed = changes.reduce(apply, brief);
  const candidates = findCandidates(changed, index, shouldStop);
  if (changed.children.length === 0 || findPlaceConflicts(changed, index, candidates).length > 0) return null;
  const { problem, layout } = formulate(changed, index, candidates, undefined, shouldStop);
  if (findReachConflicts(problem, layout).length > 0) return null;
  const stop = shouldStop === undefined ? {} : { shouldStop };
  const any = judgePlannability(problem, { seed, steps: 2 * steps, triesAll: false, ...stop });
  if (any.kind === "UNPLANNABLE") return null;
  const week = replan(changed, index, candidates, { seed, steps: REPLAN_STEPS, start: any.picks, ...stop });
  return week.ok ? week.value.draft.wishes : null;
}

/** Changes that could mend each member, the least trouble first; every ladder climbs from small to large. */
function laddersFor(brief: WeekBrief, { members }: ClashSet, notBefore: string): Change[][] {
  const ladders = members.flatMap((member) => changesFor(brief, member));
  const open = ladders
    .map((ladder) => ladder.filter((change) => !("date" in change) || change.date >= notBefore))
    .filter((ladder) => ladder.length > 0);
  const rank = (ladder: readonly Change[]): number => trouble.indexOf(ladder[0]!.kind);
  return [...new Map(open.map((ladder) => [JSON.stringify(ladder), ladder])).values()].sort(
    (a, b) => rank(a) - rank(b),
  );
}

function changesFor(brief: WeekBrief, member: Requirement): Change[][] {
  switch (member.kind) {
    case "PIN": {
      const { kind: _kind, because, ...place } = member;
      return because === "PINNED" ? [[{ kind: "UNPIN", ...place }]] : [];
    }
    case "HOUSE_RULE":
      return [[{ kind: "RELAX_HOUSE_RULE", rule: member.rule, date: member.date }]];
    case "OUT_OF":
      return [[{ kind: "GET_FOOD", foodKind: member.foodKind }]];
    case "EQUIPMENT":
    case "EQUIPMENT_TIME":
      return [[{ kind: "MORE_EQUIPMENT", equipment: member.equipment }]];
    case "REFRIGERATOR":
      return [roomSteps.map((moreMl) => ({ kind: "REFRIGERATOR_ROOM", moreMl }))];
    case "BOX_SPACE":
      return [boxSteps.map((moreMl) => ({ kind: "BIGGER_BOX", childId: member.childId, moreMl }))];
    case "BOX":
      return isOpen(brief, member.childId, member.date)
        ? [[{ kind: "SCHOOL_MEAL", childId: member.childId, date: member.date }]]
        : [];
    case "HOLDING": {
      const box = brief.children.find(({ id }) => id === member.childId)?.box;
      if (box === undefined) return [];
      const least = box.insulated ? box.coldSources + 1 : Math.max(1, box.coldSources);
      const counts = Array.from({ length: Math.max(0, MOST_COLD_SOURCES - least + 1) }, (_, more) => least + more);
      return [
        counts
          .filter((coldSources) => coldSources >= brief.holding.coldSources)
          .map((coldSources) => ({ kind: "COLD_SOURCES", childId: member.childId, coldSources })),
        box.flask ? [] : [{ kind: "FLASK", childId: member.childId }],
      ];
    }
    case "SESSION":
      return sessionChanges(brief, member.session);
    // Facts of safety and growth, and what school and family ask: nothing here gives way.
    case "ALLERGY":
    case "KEPT_OUT":
    case "DIET":
    case "CHOKING":
    case "RULE":
    case "ENERGY":
    case "NUTRIENT":
    case "BOX_REPEATS":
      return [];
  }
}

const isOpen = ({ pins }: WeekBrief, childId: string, date: string): boolean =>
  !pins.some((pin) => pin.because === "PACKED" && pin.childId === childId && pin.date === date);

function sessionChanges(brief: WeekBrief, key: string): Change[][] {
  const session = brief.sessions.find((row) => row.key === key);
  if (session === undefined) {
    const date = key.replace(/^morning-/, "");
    const leaving = brief.children
      .flatMap(({ days }) => days.filter((day) => day.date === date))
      .map((day) => day.leaveAt);
    const [first] = leaving.sort();
    if (first === undefined) return [];
    return [
      extraMinutes.map((minutes) => ({
        kind: "EXTRA_SESSION",
        window: "MORNING",
        date,
        startsAt: earlier(first, minutes),
        minutes,
      })),
    ];
  }
  const { date, kind } = session;
  const more = minuteSteps
    .filter((minutes) => kind !== "MORNING" || earlier(session.startsAt, minutes) < session.startsAt)
    .map((minutes): Change => ({ kind: "MORE_MINUTES", session: key, date, minutes }));
  const eve = kind === "MORNING" ? addDays(date, -1) : date;
  const hasEvening = brief.sessions.some((row) => row.kind === "EVENING" && row.date === eve);
  if (kind === "EVENING" || hasEvening) return [more];
  return [
    more,
    extraMinutes.map((minutes) => ({
      kind: "EXTRA_SESSION",
      window: "EVENING",
      date: eve,
      startsAt: EVENING_STARTS_AT,
      minutes,
    })),
  ];
}

const MINUTES_A_DAY = 1440;
const earlier = (time: string, minutes: number): string =>
  timeOf((minutesOf(time) - minutes + MINUTES_A_DAY) % MINUTES_A_DAY);

/** The brief with one change made. */
export function apply(brief: WeekBrief, change: Change): WeekBrief {
  const withBox = (
    childId: string,
    change: (box: WeekBrief["children"][number]["box"]) => Partial<WeekBrief["children"][number]["box"]>,
  ): WeekBrief => ({
    ...brief,
    children: brief.children.map((child) =>
      child.id === childId ? { ...child, box: { ...child.box, ...change(child.box) } } : child,
    ),
  });
  switch (change.kind) {
    case "UNPIN":
      return { ...brief, pins: brief.pins.filter((pin) => !isAt(pin, change)) };
    case "RELAX_HOUSE_RULE":
      return { ...brief, relaxations: [...brief.relaxations, { rule: change.rule, date: change.date }] };
    case "GET_FOOD":
      return {
        ...brief,
        outOf: brief.outOf.filter((kind) => kind !== change.foodKind),
        sessions: brief.sessions.map((row) => withMeans(row, new Set(), new Set([change.foodKind]))),
      };
    case "COLD_SOURCES":
      return withBox(change.childId, () => ({ coldSources: change.coldSources, insulated: true }));
    case "FLASK":
      return withBox(change.childId, () => ({ flask: true }));
    case "BIGGER_BOX":
      return withBox(change.childId, ({ compartments }) => {
        const largest = compartments.reduce((most, { ml }, c) => (ml > (compartments[most]?.ml ?? -1) ? c : most), 0);
        return {
          compartments: compartments.map((row, c) => (c === largest ? { ...row, ml: row.ml + change.moreMl } : row)),
        };
      });
    case "MORE_MINUTES":
      return {
        ...brief,
        sessions: brief.sessions.map((row) => (row.key === change.session ? longer(row, change.minutes) : row)),
      };
    case "EXTRA_SESSION":
      return { ...brief, sessions: withSession(brief.sessions, change) };
    case "MORE_EQUIPMENT":
      return {
        ...brief,
        household: {
          ...brief.household,
          equipment: [...brief.household.equipment, { kind: change.equipment, units: 1 }],
        },
        // One more can be used when the kitchen's own cannot.
        sessions: brief.sessions.map((row) => withMeans(row, new Set([change.equipment]), new Set())),
      };
    case "REFRIGERATOR_ROOM":
      return {
        ...brief,
        household: { ...brief.household, refrigeratorMl: brief.household.refrigeratorMl + change.moreMl },
      };
    case "SCHOOL_MEAL": {
      const isDropped = (row: { readonly childId: string; readonly date: string }): boolean =>
        row.childId === change.childId && row.date === change.date;
      return {
        ...brief,
        pins: brief.pins.filter((pin) => !isDropped(pin)),
        stayCloseTo: brief.stayCloseTo.filter((row) => !isDropped(row)),
        children: brief.children
          .map((child) =>
            child.id === change.childId
              ? { ...child, days: child.days.filter(({ date }) => date !== change.date) }
              : child,
          )
          .filter(({ days }) => days.length > 0),
      };
    }
  }
}

const longer = (session: SessionBrief, minutes: number): SessionBrief => ({
  ...session,
  ...(session.kind === "MORNING" ? { startsAt: earlier(session.startsAt, minutes) } : {}),
  handsOnMinutes: session.handsOnMinutes + minutes,
  elapsedMinutes: session.elapsedMinutes + minutes,
});

function withSession(
  sessions: readonly SessionBrief[],
  { window, date, startsAt, minutes }: Extract<Change, { kind: "EXTRA_SESSION" }>,
): SessionBrief[] {
  const added: SessionBrief = {
    key: sessionKey(window, date),
    kind: window,
    date,
    startsAt,
    handsOnMinutes: minutes,
    elapsedMinutes: minutes,
    carers: 1,
    // As dear as the dearest session of its kind the household has: nobody has offered it yet.
    effort: sessions.reduce((most, row) => (row.kind === window ? Math.max(most, row.effort) : most), 1),
  };
  return [...sessions, added].sort(inTimeOrder);
}
