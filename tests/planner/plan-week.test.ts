import { createHash } from "node:crypto";
import { describe, expect, test } from "@jest/globals";
import { ruleSetDocument } from "../../shared/rule-set.js";
import type { PlaceBrief, WeekBrief } from "../../src/domain/brief.js";
import { addDays } from "../../src/domain/calendar/dates.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { checkWeek } from "../../src/domain/checker/check-week.js";
import { alternativesFor } from "../../src/domain/planner/alternatives.js";
import { planWeek, type WeekOutcome } from "../../src/domain/planner/plan-week.js";
import type { WeekDraft } from "../../src/domain/week.js";
import {
  eldest,
  eldestLeavingAtNine,
  middle,
  monday,
  ruleSets,
  schoolDates,
  sessions,
  threeChildren,
  twoChildren,
  youngest,
} from "../support/demo-brief.js";

const STEPS = 30_000;
const hash = (text: string): string => createHash("sha256").update(text).digest("hex");
const plan = (brief: WeekBrief, seed = 1, steps = STEPS): WeekOutcome => planWeek(brief, { seed, steps, hash });
const planned = (brief: WeekBrief, seed = 1, steps = STEPS): Extract<WeekOutcome, { kind: "PLANNED" }> => {
  const outcome = plan(brief, seed, steps);
  if (outcome.kind !== "PLANNED") throw new Error(JSON.stringify(outcome.conflicts));
  return outcome;
};
const conflictsOf = (brief: WeekBrief) => {
  const outcome = plan(brief);
  return outcome.kind === "INFEASIBLE" ? outcome.conflicts : [];
};
const itemsOf = (draft: WeekDraft): (PlaceBrief & { dish: string })[] =>
  draft.boxes.flatMap((box) =>
    box.items.map(({ breakKey, slot, position, dish }) => ({
      childId: box.childId,
      date: box.date,
      breakKey,
      slot,
      position,
      dish,
    })),
  );
const changed = (before: WeekDraft, after: WeekDraft): number => {
  const key = ({ dish: _dish, ...place }: PlaceBrief & { dish: string }): string => JSON.stringify(place);
  const dishes = new Map(itemsOf(before).map((item) => [key(item), item.dish]));
  return itemsOf(after).filter((item) => dishes.get(key(item)) !== item.dish).length;
};

const brief = threeChildren();
const index = indexCatalogue(brief.catalogue);
const week = planned(brief);

describe("a planned week", () => {
  test.each([1, 2, 3, 4, 5])("passes the independent checker for three children, seed %i", (seed) => {
    expect(checkWeek(brief, planned(brief, seed).draft)).toEqual([]);
  });

  test.each([1, 2, 3, 4, 5])(
    "passes the independent checker for two children in a smaller kitchen, seed %i",
    (seed) => {
      const small = twoChildren();
      expect(checkWeek(small, planned(small, seed).draft)).toEqual([]);
    },
  );

  test("never puts a nut in the box of a child who avoids them", () => {
    const nuts = [
      "ALMOND",
      "HAZELNUT",
      "WALNUT",
      "CASHEW",
      "PECAN",
      "BRAZIL_NUT",
      "PISTACHIO",
      "MACADAMIA",
      "PINE_NUT",
      "PEANUT",
    ];
    for (const { dish } of itemsOf(week.draft).filter((item) => item.childId === middle.id)) {
      for (const allergen of index.derived(dish).allergens) expect(nuts).not.toContain(allergen);
    }
  });

  test("gives fruit and nothing else at a fruit-only break", () => {
    const morning = itemsOf(week.draft).filter(
      (item) => item.breakKey === "morning-break" && item.childId !== eldest.id,
    );
    expect(morning).toHaveLength(10);
    for (const { dish } of morning) {
      expect(index.derived(dish).ingredients.every(({ food }) => food.group === "FRUIT")).toBe(true);
    }
  });

  test("gives each box with a main between 80 and 125 % of its breaks' share of the day's energy", () => {
    const [, arun] = brief.children;
    const share = 0.38;
    const energies = week.draft.boxes
      .filter((box) => box.childId === arun?.id)
      .map((box) => box.items.reduce((sum, item) => sum + item.energyKcal, 0));
    // 8.7 years, active, sex and size not given. Medians of the growth charts: 131.7 cm and 27.7 kg, 131.2 cm and 27.9 kg;
    // by the equations 1892 and 1684 kcal, so 1788.
    for (const kcal of energies) {
      expect(kcal).toBeGreaterThanOrEqual(0.8 * 1788 * share);
      expect(kcal).toBeLessThanOrEqual(1.25 * 1788.5 * share);
    }
  });

  test("is the same week for the same seed, and says which problem it solved", () => {
    expect(planned(brief)).toEqual(week);
    expect(week.problemHash).toMatch(/^[0-9a-f]{64}$/);
    expect(planned(threeChildren({ outOf: ["broccoli"] })).problemHash).not.toBe(week.problemHash);
  });

  test("sharing saves hands-on minutes against cooking every portion on its own", () => {
    const alone = planned(threeChildren({ sharing: false }));
    expect(checkWeek(threeChildren({ sharing: false }), alone.draft)).toEqual([]);
    expect(week.draft.wishes.handsOnMinutes).toBeLessThan(alone.draft.wishes.handsOnMinutes);
    const shared = week.draft.boxes.flatMap((box) => box.items).flatMap((item) => item.why);
    expect(shared.some((reason) => reason.kind === "SHARES_BASE" && reason.withChildren.length > 0)).toBe(true);
  });

  test("uses the leftover before it cooks the same base again", () => {
    const used = week.draft.readyUses.reduce((sum, use) => sum + use.grams, 0);
    expect(used).toBeLessThanOrEqual(300);
    const feeds = week.draft.batches.filter((batch) => batch.base === "tomato-sauce").flatMap((batch) => batch.feeds);
    const early = feeds.filter((feed) => feed.date <= addDays(monday, 2));
    expect(early.length === 0 || used === 300).toBe(true);
  });

  test("a short week is planned and judged by its packed days", () => {
    const short = threeChildren({
      children: [youngest, middle, eldest].map((child) => ({ ...child, days: child.days.slice(1, 4) })),
    });
    expect(checkWeek(short, planned(short).draft)).toEqual([]);
  });
});

describe("rules over a box or a week", () => {
  const own = { level: "FORBID", says: "An invented rule.", source: "own rule of an invented school" };
  const cheese = { anyOf: [{ groups: ["CHEESE"] }] };
  const fruit = { anyOf: [{ groups: ["FRUIT"], slots: ["FRUIT"] }] };
  const grain = { anyOf: [{ groups: ["GRAIN", "WHOLE_GRAIN", "BREAD"] }] };
  const rules = [
    {
      id: "items-at-most",
      kind: "FREQUENCY",
      counts: "ITEMS",
      per: "WEEK",
      atMost: 2,
      matches: { anyOf: [{ starch: ["BATTER_CAKE", "FLATBREAD", "GRAIN", "NOODLE"], slots: ["MAIN"] }] },
    },
    { id: "kinds-at-least", kind: "FREQUENCY", counts: "KINDS", per: "WEEK", atLeast: 9, matches: fruit },
    { id: "kinds-at-most", kind: "FREQUENCY", counts: "KINDS", per: "WEEK", atMost: 4, matches: fruit },
    {
      id: "days-at-most",
      kind: "FREQUENCY",
      counts: "DAYS",
      per: "WEEK",
      atMost: 1,
      matches: { anyOf: [{ groups: ["CHEESE", "YOGURT"] }] },
    },
    {
      id: "grams-in-the-box",
      kind: "AMOUNT",
      unit: "GRAMS",
      per: "BOX",
      atLeast: 170,
      matches: { anyOf: [{ groups: ["FRUIT"] }] },
    },
    { id: "grams-in-the-week", kind: "AMOUNT", unit: "GRAMS", per: "WEEK", atMost: 20, matches: cheese },
    {
      id: "share-of-grams",
      kind: "SHARE",
      unit: "GRAMS",
      atLeast: 60,
      part: { anyOf: [{ wholeGrain: true }] },
      whole: grain,
    },
    {
      id: "share-of-items",
      kind: "SHARE",
      unit: "ITEMS",
      atLeast: 0.8,
      part: { anyOf: [{ wholeGrain: true }] },
      whole: grain,
    },
    { id: "fibre-in-the-box", kind: "NUTRIENT", nutrient: "FIBTG", per: "BOX", atLeast: 9 },
    { id: "salt-over-the-week", kind: "NUTRIENT", nutrient: "NA", per: "WEEK_MEAN", atMost: 380 },
    { id: "saturates-of-energy", kind: "NUTRIENT", nutrient: "FASAT", per: "BOX", as: "PERCENT_OF_ENERGY", atMost: 8 },
    {
      id: "not-together",
      kind: "TOGETHER",
      first: { anyOf: [{ groups: ["MEAT", "POULTRY", "FISH", "EGG", "PULSE"] }] },
      second: { anyOf: [{ allergens: ["MILK"] }] },
    },
  ];
  const under = (rule: object, level = "FORBID"): WeekBrief => {
    const extra = ruleSetDocument.parse({
      format: "noonpail-rule-set/1",
      key: "extra",
      title: "Extra",
      layer: "SCHOOL",
      coversFoodFromHome: true,
      language: "en-GB",
      version: 1,
      inForceFrom: "2026-09-01",
      rules: [{ ...own, ...rule, level }],
    });
    const children = [youngest, middle, eldest].map((child) => ({
      ...child,
      days: child.days.map((day) => ({ ...day, ruleSets: [...day.ruleSets, ruleSets.length] })),
    }));
    return threeChildren({ ruleSets: [...ruleSets, extra], children });
  };

  test.each(rules.map((rule) => [rule.id, rule] as const))(
    "a week that broke the rule is planned anew to keep it: %s",
    (id, rule) => {
      const ruled = under(rule);
      // Of a few weeks without the rule one breaks it, or the rule asks for nothing here.
      const breaks = ({ draft }: { draft: WeekDraft }): boolean =>
        checkWeek(ruled, draft).some((fault) => fault.kind === "RULE_BROKEN" && fault.rule === id);
      expect(breaks(week) || [2, 3, 4, 5].some((seed) => breaks(planned(brief, seed)))).toBe(true);
      expect(checkWeek(ruled, planned(ruled).draft)).toEqual([]);
    },
  );

  test("advice does not stop a week; what it does not meet travels with the plan", () => {
    const advised = under({ id: "much-fibre", kind: "NUTRIENT", nutrient: "FIBTG", per: "BOX", atLeast: 60 }, "ADVISE");
    const { draft } = planned(advised);
    expect(draft.cautions).toContainEqual({
      kind: "ADVICE_NOT_MET",
      childId: youngest.id,
      date: monday,
      ruleSet: "extra",
      rule: "much-fibre",
    });
  });

  test("a share of energy of what carries none is refused openly, not passed over", () => {
    const salt = { kind: "NUTRIENT", nutrient: "NA", per: "BOX", as: "PERCENT_OF_ENERGY", atMost: 1 };
    expect(conflictsOf(under({ id: "salt-of-energy", ...salt }))).toContainEqual(
      expect.objectContaining({ kind: "RULE_NOT_JUDGED", facts: { ruleSet: "extra", rule: "salt-of-energy" } }),
    );
  });

  test("a rule no dish can meet is named with what could be reached", () => {
    const conflicts = conflictsOf(
      under({ id: "much-fibre", kind: "NUTRIENT", nutrient: "FIBTG", per: "BOX", atLeast: 60 }),
    );
    expect(conflicts).toContainEqual(
      expect.objectContaining({
        kind: "RULE_OUT_OF_REACH",
        childId: youngest.id,
        date: monday,
        facts: expect.objectContaining({ rule: "much-fibre" }),
      }),
    );
  });
});

describe("a week that cannot be", () => {
  test("a kitchen with no minutes is told which session is too short, and by how much", () => {
    const conflicts = conflictsOf(
      threeChildren({ sessions: sessions.map((session) => ({ ...session, handsOnMinutes: 0 })) }),
    );
    expect(conflicts).toContainEqual({
      kind: "SESSION_TOO_SHORT",
      childId: null,
      date: monday,
      session: `morning-${monday}`,
      facts: { neededMinutes: 12, haveMinutes: 0 },
      wayOut: ["ADD_MINUTES", "FEWER_BOXES"],
    });
  });

  test("an empty place counts what shut its dishes out", () => {
    const conflicts = conflictsOf(
      threeChildren({ children: [{ ...youngest, box: { ...youngest.box, coldSources: 0 } }] }),
    );
    const lunch = conflicts.find((row) => row.kind === "NO_DISH_LEFT" && row.facts.slot === "MAIN");
    expect(lunch).toMatchObject({ childId: youngest.id, date: monday });
    expect(lunch?.facts.HOLDING).toBeGreaterThan(20);
    expect(lunch?.wayOut).toContain("COLD_SOURCES");
  });

  test("a pin that a safety rule forbids is refused by name", () => {
    const pin = {
      childId: middle.id,
      date: monday,
      breakKey: "lunch",
      slot: "EXTRA",
      position: 3,
      dish: "walnut-fig-pieces",
      because: "PINNED",
    } as const;
    expect(conflictsOf(threeChildren({ pins: [pin] }))).toEqual([
      {
        kind: "PIN_NOT_ALLOWED",
        childId: middle.id,
        date: monday,
        session: null,
        facts: { breakKey: "lunch", slot: "EXTRA", dish: "walnut-fig-pieces", reason: "ALLERGEN" },
        wayOut: ["CHANGE_PIN"],
      },
    ]);
  });

  test("a household without a child has nothing to pack", () => {
    expect(conflictsOf(threeChildren({ children: [] }))).toMatchObject([{ kind: "NOTHING_TO_PACK" }]);
  });
});

describe("a week planned again", () => {
  const agreed = itemsOf(week.draft);

  test("an absent child moves nothing else", () => {
    const after = planned(
      threeChildren({
        stayCloseTo: agreed,
        children: [{ ...youngest, days: youngest.days.slice(0, 3) }, middle, eldest],
      }),
    );
    expect(changed(week.draft, after.draft)).toBe(0);
  });

  describe("what the kitchen lacks on one day", () => {
    const day = schoolDates[2]!;
    const later = week.draft.boxes.filter(({ date }) => date > day);
    const lacking = (without: NonNullable<WeekBrief["sessions"][number]["without"]>) =>
      threeChildren({
        stayCloseTo: agreed,
        sessions: brief.sessions.map((row) => (row.date === day ? { ...row, without } : row)),
      });
    const changedOn = (after: WeekDraft) =>
      [...new Set(itemsOf(after).map((item) => item.date))].filter((date) => {
        const of = (draft: WeekDraft) => JSON.stringify(itemsOf(draft).filter((item) => item.date === date));
        return of(after) !== of(week.draft);
      });
    const kindsOn = (boxes: WeekDraft["boxes"]) =>
      boxes.flatMap((box) =>
        box.items.flatMap((item) =>
          index
            .derived(item.dish)
            .ingredients.flatMap(({ food, viaBase }) =>
              viaBase === null && food.boughtAs === null ? [food.kind] : [],
            ),
        ),
      );

    // What the evening may finish for the next day needs the food then.
    test("a food changes boxes of that day or the next and no others, though they have it too", () => {
      const eaten = kindsOn(week.draft.boxes.filter(({ date }) => date === day));
      const foodKind = kindsOn(later).find((kind) => eaten.includes(kind));
      const after = planned(lacking({ equipment: [], foodKinds: [foodKind!] }));
      expect(checkWeek(lacking({ equipment: [], foodKinds: [foodKind!] }), after.draft)).toEqual([]);
      expect(changedOn(after.draft)).toContain(day);
      expect([day, addDays(day, 1)]).toEqual(expect.arrayContaining(changedOn(after.draft)));
      const gone = planned(threeChildren({ stayCloseTo: agreed, outOf: [foodKind!] }));
      expect(changed(week.draft, gone.draft)).toBeGreaterThan(changed(week.draft, after.draft));
    });

    test("an appliance is used in no session of that day, and in the others as before", () => {
      const kind = "HOB_BURNER";
      const usedOn = (draft: WeekDraft) =>
        new Set(
          draft.tasks.flatMap((task) =>
            task.equipment.some((use) => use.kind === kind) ? [task.session.slice(-10)] : [],
          ),
        );
      const after = planned(lacking({ equipment: [kind], foodKinds: [] }));
      expect(checkWeek(lacking({ equipment: [kind], foodKinds: [] }), after.draft)).toEqual([]);
      expect(usedOn(after.draft)).not.toContain(day);
      expect(usedOn(after.draft).size).toBeGreaterThan(0);
    });
  });

  test("packed boxes and cooked batches stay, and nothing cooked is cooked or bought again", () => {
    const second = schoolDates[1] ?? "";
    const pins = agreed.filter((item) => item.date <= second).map((item) => ({ ...item, because: "PACKED" as const }));
    const done = new Set(
      brief.sessions
        .filter((session) => session.date < second || session.key === `morning-${second}`)
        .map((session) => session.key),
    );
    const made = week.draft.batches
      .filter((batch) => done.has(batch.session))
      .map(({ base, session, batches }) => ({ base, session, batches }));
    const midweek = threeChildren({ stayCloseTo: agreed, pins, made, outOf: ["banana"] });
    const after = planned(midweek);
    expect(checkWeek(midweek, after.draft)).toEqual([]);
    expect(after.draft.tasks.some((task) => done.has(task.session))).toBe(false);
    expect(itemsOf(after.draft).filter((item) => item.date <= second)).toEqual(
      agreed.filter((item) => item.date <= second),
    );
  });

  test("a pinned dish stands where it was pinned", () => {
    const pin = {
      childId: eldest.id,
      date: monday,
      breakKey: "lunch",
      slot: "MAIN",
      position: 0,
      dish: "dal-and-rice",
      because: "PINNED",
    } as const;
    const pinned = threeChildren({ pins: [pin], children: [youngest, middle, eldestLeavingAtNine] });
    const { draft } = planned(pinned);
    expect(checkWeek(pinned, draft)).toEqual([]);
    expect(draft.boxes.flatMap((box) => box.items).filter((item) => item.pinned)).toMatchObject([
      { dish: "dal-and-rice" },
    ]);
  });
});

describe("alternatives to an item", () => {
  const item = itemsOf(week.draft).find((row) => row.childId === middle.id && row.slot === "VEGETABLE");
  if (item === undefined) throw new Error("no vegetable");
  const { dish, ...place } = item;
  const offered = alternativesFor(brief, week.draft, place);

  test("are at most five other dishes for the place, the cheapest first", () => {
    expect(offered.length).toBeGreaterThan(0);
    expect(offered.length).toBeLessThanOrEqual(5);
    expect(offered.map((row) => row.dish)).not.toContain(dish);
    const deltas = offered.map((row) => row.objectiveDelta);
    expect([...deltas].sort((a, b) => a - b)).toEqual(deltas);
  });

  test("each gives a week that passes the checker with every other item in its place", () => {
    for (const alternative of offered) {
      const pins = itemsOf(week.draft).map((row) => ({
        ...row,
        dish:
          row.childId === place.childId &&
          row.date === place.date &&
          row.breakKey === place.breakKey &&
          row.position === place.position
            ? alternative.dish
            : row.dish,
        because: "PINNED" as const,
      }));
      const swapped = threeChildren({ pins });
      expect(checkWeek(swapped, planned(swapped, 1, 2_000).draft)).toEqual([]);
    }
  });

  test("a packed item has none", () => {
    expect(alternativesFor(threeChildren({ pins: [{ ...item, because: "PACKED" }] }), week.draft, place)).toEqual([]);
  });
});
