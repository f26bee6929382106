/**
 * Facts of the trade checked here: fermented batter made at the weekend serves Monday; dough is kneaded the night before (both
 * common practice).
 */
import { createHash } from "node:crypto";
import { describe, expect, test } from "@jest/globals";
import type { ChildBrief, PinBrief, SessionBrief, WeekBrief } from "../../src/domain/brief.js";
import { addDays } from "../../src/domain/calendar/dates.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { checkWeek } from "../../src/domain/checker/check-week.js";
import { hasStood } from "../../src/domain/kitchen/standing.js";
import { findCandidates, type CandidateDish } from "../../src/domain/planner/candidates.js";
import { planWeek } from "../../src/domain/planner/plan-week.js";
import { eldest, monday, sessions, threeChildren } from "../support/demo-brief.js";

const tuesday = addDays(monday, 1);
const BATTER = "rice-lentil-batter";
const DOUGH = "flatbread-dough";
const FLATBREAD = "flatbread-dal-carrot";
const hash = (text: string): string => createHash("sha256").update(text).digest("hex");

/** A part-time pupil: little more than two hours from the door to the end of lunch, which a flask holds. */
const leavingAtTen: ChildBrief = { ...eldest, days: eldest.days.map((day) => ({ ...day, leaveAt: "10:00" })) };

const weekendOn = (date: string): SessionBrief[] =>
  sessions.map((session) =>
    session.kind === "WEEKEND" ? { ...session, key: `weekend-${date}`, date, startsAt: "16:00" } : session,
  );
const saturday = weekendOn(addDays(monday, -2));
const sunday = weekendOn(addDays(monday, -1));

function brief(of: ChildBrief, when: readonly SessionBrief[], pins: readonly PinBrief[] = []): WeekBrief {
  const week = threeChildren({ children: [of], sessions: when, pins });
  const steamer = [{ kind: "CAKE_MOULD_SET", units: 2 } as const];
  return { ...week, household: { ...week.household, equipment: [...week.household.equipment, ...steamer] } };
}

function pinned(of: ChildBrief, date: string, dish: string): PinBrief {
  const breakKey = of.days[0]!.breaks.find((pause) => pause.slots.includes("MAIN"))!.key;
  const position = of.days[0]!.breaks.find(({ key }) => key === breakKey)!.slots.indexOf("MAIN");
  return { childId: of.id, date, breakKey, slot: "MAIN", position, dish, because: "PINNED" };
}

const offered = (week: WeekBrief, date: string): string[] => {
  const batterDishes = new Set(
    week.catalogue.dishes.filter((dish) => dish.bases.some(({ base }) => base === BATTER)).map(({ key }) => key),
  );
  return findCandidates(week, indexCatalogue(week.catalogue))
    .places.filter(({ place }) => place.date === date && place.slot === "MAIN")
    .flatMap(({ dishes }) => dishes.map(({ derived }) => derived.dish.key))
    .filter((key) => batterDishes.has(key));
};

const isFlatbread = ({ derived }: CandidateDish): boolean => derived.dish.key === FLATBREAD;

function planned(week: WeekBrief) {
  const outcome = planWeek(week, { seed: 1, steps: 20_000, hash });
  if (outcome.kind !== "PLANNED") throw new Error(JSON.stringify(outcome.conflicts));
  expect(checkWeek(week, outcome.draft)).toEqual([]);
  return outcome.draft;
}

describe("batter that ferments overnight", () => {
  test("from Saturday's session is steamed on Sunday evening and eaten cold on Monday", () => {
    const week = brief(eldest, saturday, [pinned(eldest, monday, "steamed-rice-cakes-dal")]);
    const draft = planned(week);
    const batch = draft.batches.find(({ base }) => base === BATTER);
    expect(batch?.session).toBe(`weekend-${addDays(monday, -2)}`);
    expect(batch?.feeds.map(({ date }) => date)).toContain(monday);
    const task = draft.tasks.find(({ base }) => base === BATTER);
    expect(task?.text).toMatch(/Let it stand at least 11 h before it is used\.$/);
  });

  test("from Sunday's session is not ready for Monday's cold box and serves Tuesday's", () => {
    expect(offered(brief(eldest, sunday), monday)).toEqual([]);
    expect(offered(brief(eldest, sunday), tuesday)).toContain("steamed-rice-cakes-dal");
    const draft = planned(brief(eldest, sunday, [pinned(eldest, tuesday, "steamed-rice-cakes-dal")]));
    expect(draft.batches.find(({ base }) => base === BATTER)?.feeds.map(({ date }) => date)).toEqual([tuesday]);
  });

  test("from Sunday's session is griddled on Monday morning for a warm box", () => {
    const warm = offered(brief(leavingAtTen, sunday), monday);
    expect(warm).toContain("rice-lentil-vegetable-puffs");
    const draft = planned(brief(leavingAtTen, sunday, [pinned(leavingAtTen, monday, "rice-lentil-vegetable-puffs")]));
    expect(draft.batches.find(({ base }) => base === BATTER)?.feeds.map(({ date }) => date)).toEqual([monday]);
  });

  test("from a Sunday session that ends at midnight is not ready on Monday morning", () => {
    const late = sunday.map((session) => (session.kind === "WEEKEND" ? { ...session, startsAt: "21:30" } : session));
    expect(offered(brief(leavingAtTen, late), monday)).toEqual([]);
  });
});

/** A dough that is kneaded in the evening only and has to stand eight hours, baked with the dish on the day itself. */
function standingDough(week: WeekBrief): WeekBrief {
  const bases = week.catalogue.bases.map((base) =>
    base.key === DOUGH ? { ...base, windows: ["EVENING" as const], restMinutes: 480 } : base,
  );
  const dishes = week.catalogue.dishes.map((dish) =>
    dish.key === FLATBREAD ? { ...dish, steps: dish.steps.map((step) => ({ ...step, eveningBefore: false })) } : dish,
  );
  return { ...week, catalogue: { ...week.catalogue, bases, dishes } };
}

describe("dough kneaded the night before", () => {
  test("stands overnight and is baked for the next day's box, beyond the end of its session", () => {
    const week = standingDough(brief(leavingAtTen, sessions, [pinned(leavingAtTen, tuesday, FLATBREAD)]));
    const draft = planned(week);
    const batch = draft.batches.find(
      ({ base, feeds }) => base === DOUGH && feeds.some(({ date }) => date === tuesday),
    )!;
    expect(batch.session).toMatch(/^evening-/);
    expect(batch.session < `evening-${tuesday}`).toBe(true);
    const task = draft.tasks.find(({ base, session }) => base === DOUGH && session === batch.session)!;
    expect(task.passiveMinutes).toBeLessThan(60);
    expect(task.text).toMatch(/Let it stand at least 8 h before it is used\.$/);
  });

  test("that stands too long for the night is not offered the next morning", () => {
    const night = (restMinutes: number): string[] => {
      const week = standingDough(brief(leavingAtTen, sessions));
      const bases = week.catalogue.bases.map((base) => (base.key === DOUGH ? { ...base, restMinutes } : base));
      return findCandidates(week, indexCatalogue({ ...week.catalogue, bases }))
        .places.filter(({ place, dishes }) => place.slot === "MAIN" && dishes.some(isFlatbread))
        .map(({ place }) => place.date);
    };
    // From 20:30 on Sunday to 06:50 on Monday are 620 minutes.
    expect(night(620)).toContain(monday);
    expect(night(621)).not.toContain(monday);
    expect(night(621)).toContain(tuesday);
  });
});

test("readiness is counted from the session's end over midnight, to the minute", () => {
  const week = brief(eldest, sunday);
  const base = { ...week.catalogue.bases.find(({ key }) => key === BATTER)!, restMinutes: 740 };
  const [weekend, , morning] = sunday as [SessionBrief, SessionBrief, SessionBrief];
  // 16:00 + 150 min + 740 min = 06:50 the next day.
  expect(morning.startsAt).toBe("06:50");
  expect(hasStood(base, weekend, morning)).toBe(true);
  expect(hasStood({ ...base, restMinutes: 741 }, weekend, morning)).toBe(false);
  expect(hasStood({ ...base, restMinutes: null }, morning, weekend)).toBe(true);
});
