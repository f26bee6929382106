/**
 * One invented child of seven in the usual kitchen, at the demo's primary school (no nuts, nothing kept cold, nothing
 * reheated), and two consecutive weeks of it: the second knows what was in the boxes of the first.
 */
import { readFileSync } from "node:fs";
import type { SessionBrief, WeekBrief } from "../../src/domain/brief.js";
import { ruleSetDocument } from "../../shared/rule-set.js";
import { usualEquipment, usualPrepTimes } from "../../src/app/usual-kitchen.js";
import { addDays } from "../../src/domain/calendar/dates.js";
import type { CoverageRequirement } from "../../src/domain/catalogue/coverage.js";
import type { WeekDraft } from "../../src/domain/week.js";
import { monday, twoChildren } from "./demo-brief.js";

const weekdays = ["MONDAY", "TUESDAY", "WEDNESDAY", "THURSDAY", "FRIDAY"] as const;
const primary = ruleSetDocument.parse(
  JSON.parse(
    readFileSync(new URL("../../seeds/reference/rule-sets/quillbrook-primary.json", import.meta.url), "utf8"),
  ) as unknown,
);

/** The usual hours before each school day of a week that starts on a Monday, in time order. */
function usualSessions(weekStart: string): SessionBrief[] {
  const sunday = addDays(weekStart, -1);
  const dateOf = (weekday: string): string => {
    const day = weekdays.findIndex((name) => name === weekday);
    return day < 0 ? sunday : addDays(weekStart, day);
  };
  return usualPrepTimes
    .map(({ kind, weekday, ...rest }): SessionBrief => {
      const date = dateOf(weekday);
      return { ...rest, key: `${kind.toLowerCase()}-${date}`, kind: kind as SessionBrief["kind"], date };
    })
    .sort((a, b) => (`${a.date} ${a.startsAt}` < `${b.date} ${b.startsAt}` ? -1 : 1));
}

const leak = (ml: number) => ({ ml, leakProof: true });
const dry = (ml: number) => ({ ml, leakProof: false });

/** The week from `weekStart` of a child with exactly the allergies, to the last trace, and the diets of one row of the coverage table. */
export function weekFor(
  { allergens, diets }: CoverageRequirement,
  weekStart: string = monday,
  history: WeekBrief["history"] = [],
): WeekBrief {
  return twoChildren({
    weekStart,
    household: {
      id: "row",
      name: "Usual kitchen",
      currency: "GBP",
      keepsOut: [],
      equipment: usualEquipment,
      refrigeratorMl: 20_000,
    },
    sessions: usualSessions(weekStart),
    children: [
      {
        id: "child",
        name: "Robin",
        dateOfBirth: "2019-06-04",
        sex: null,
        weightKg: null,
        heightCm: null,
        activity: "LOW_ACTIVE",
        appetite: 1,
        diets,
        dislikes: [],
        minutesToEat: 20,
        allergies: allergens.map((allergen) => ({ allergen, foodKind: null, avoid: "TRACES" })),
        schoolName: "Quillbrook Primary School",
        box: {
          compartments: [leak(550), dry(220), dry(220), leak(220), dry(150)],
          coldSources: 2,
          insulated: true,
          flask: false,
        },
        days: weekdays.map((weekday, day) => ({
          date: addDays(weekStart, day),
          weekday,
          leaveAt: "08:15",
          breaks: [
            {
              key: "morning-break",
              name: "Morning break",
              startsAt: "10:00",
              minutes: 15,
              slots: ["FRUIT"],
              energyShare: 0.08,
            },
            {
              key: "lunch",
              name: "Lunch",
              startsAt: "11:25",
              minutes: 25,
              slots: ["MAIN", "VEGETABLE", "FRUIT", "EXTRA"],
              energyShare: 0.3,
            },
          ],
          facility: "NEITHER",
          ruleSets: [0],
        })),
      },
    ],
    ruleSets: [primary],
    stock: [],
    labels: [],
    history,
  });
}

/** What the boxes of a week leave for the next week to know. */
export function historyOf(draft: WeekDraft): WeekBrief["history"] {
  return draft.boxes.flatMap(({ childId, date, items }) => items.map(({ dish }) => ({ childId, date, dish })));
}
