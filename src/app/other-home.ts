/** The house rules across two homes: what a child eats from the other home's boxes this week counts here too. */
import type { RuleSetDocument } from "../../shared/rule-set.js";
import type { PlanningFacts } from "../database/planning.js";
import { addDays, weekdayOf } from "../domain/calendar/dates.js";
import type { CatalogueIndex } from "../domain/catalogue/derive.js";

type Rule = RuleSetDocument["rules"][number];

/** Key of the rule set below; it is a house rule in the form of a school's. */
export const EATEN_IN_THE_OTHER_HOME = "eaten-in-the-other-home";
const SOURCE = "house rule: variety counts over both homes";
const MOST_OF_ONE_DISH = 2;

/**
 * One rule set per child, in the ordinary format, so that planner and checker obey it like any other; null when the other
 * home packs nothing this week. A main eaten there is not repeated here, another dish at most once more, and the starch
 * of a main is not the starch of the day before or after. Days on which the rule rests are left out.
 */
export function rulesFromOtherHome(
  facts: PlanningFacts,
  index: CatalogueIndex,
  childId: string,
  weekStart: string,
): RuleSetDocument | null {
  const eaten = facts.elsewhere.filter((entry) => entry.childId === childId && index.dish(entry.dish) !== undefined);
  if (eaten.length === 0) return null;
  const rests = (rule: "DISH_REPEATS" | "STARCH_CHANGES", date: string) =>
    facts.relaxations.some((entry) => entry.rule === rule && entry.date === date);
  const counted = eaten.filter((entry) => !rests("DISH_REPEATS", entry.date));
  const rules: Rule[] = [];
  const mains = [...new Set(counted.filter((entry) => entry.slot === "MAIN").map((entry) => entry.dish))].sort();
  if (mains.length > 0) {
    rules.push({
      id: "main-once-a-week",
      kind: "EXCLUDE",
      says: "A main comes once a week, whichever home packs it.",
      level: "FORBID",
      source: SOURCE,
      shortWeek: "PRORATE",
      matches: { anyOf: [{ dishes: mains }] },
    });
  }
  const others = counted.filter((entry) => entry.slot !== "MAIN").map((entry) => entry.dish);
  for (const dish of [...new Set(others)].sort()) {
    const left = MOST_OF_ONE_DISH - others.filter((other) => other === dish).length;
    const common = {
      says: "Any other dish comes at most twice a week, whichever home packs it.",
      level: "FORBID" as const,
      source: SOURCE,
      shortWeek: "PRORATE" as const,
      matches: { anyOf: [{ dishes: [dish] }] },
    };
    rules.push(
      left > 0
        ? {
            ...common,
            id: `twice-a-week-${dish}`.slice(0, 60),
            kind: "FREQUENCY",
            counts: "ITEMS",
            per: "WEEK",
            weeks: 1,
            atMost: left,
          }
        : { ...common, id: `twice-a-week-${dish}`.slice(0, 60), kind: "EXCLUDE" },
    );
  }
  for (const entry of eaten.filter((row) => row.slot === "MAIN")) {
    const starch = index.dish(entry.dish)!.starch;
    if (starch === "NONE" || rests("STARCH_CHANGES", entry.date)) continue;
    const neighbours = [addDays(entry.date, -1), addDays(entry.date, 1)].filter(
      (date) => !rests("STARCH_CHANGES", date),
    );
    if (neighbours.length === 0) continue;
    rules.push({
      id: `starch-changes-${entry.date}`,
      kind: "EXCLUDE",
      says: "The starch of the main changes from day to day, whichever home packs it.",
      level: "FORBID",
      source: SOURCE,
      shortWeek: "PRORATE",
      weekdays: neighbours.map(weekdayOf),
      matches: { anyOf: [{ slots: ["MAIN"], starch: [starch] }] },
    });
  }
  if (rules.length === 0) return null;
  return {
    format: "noonpail-rule-set/1",
    key: EATEN_IN_THE_OTHER_HOME,
    title: "Eaten in the other home this week",
    layer: "CHILD",
    coversFoodFromHome: true,
    language: "en",
    version: 1,
    inForceFrom: weekStart,
    inForceUntil: addDays(weekStart, 6),
    rules,
  };
}
