/** What the rules engine found, in words. */
import type { AllergyVerdict } from "../domain/catalogue/allergens.js";
import type { CatalogueIndex } from "../domain/catalogue/derive.js";
import type { JudgedUnit, RuleReason } from "../domain/rules/judge-week.js";
import type { RuleFinding } from "./compliance.js";
import { plain } from "./say.js";

const units: Readonly<Record<JudgedUnit, string>> = {
  GRAMS: "g",
  ML: "ml",
  CUPS: "cups",
  OZ_EQ: "oz eq",
  OZ_EQ_MYPLATE: "oz eq (MyPlate)",
  KCAL: "kcal",
  G: "g",
  MG: "mg",
  UG: "µg",
  ITEMS: "items",
  KINDS: "kinds",
  DAYS: "days",
  SHARE: "of the whole",
  PERCENT_OF_ENERGY: "% of energy",
};

const because: Readonly<Record<RuleReason, string>> = {
  NOT_IN_FORCE: "It is not in force then.",
  OTHER_AGE: "It is for children of another age.",
  OTHER_WEEKDAY: "It is for other days of the week.",
  OTHER_BREAK: "It is for a break that there is not.",
  EXEMPT: "It rests for this child on a clinician's note.",
  SHORT_WEEK: "It does not judge a week of so few boxes.",
  SPLIT_WEEK: "It does not judge a week in which it begins or ends.",
  NOTHING_TO_MEASURE: "Nothing of what it is about is in there.",
  FIGURE_MISSING: "A figure is missing",
  DISH_UNKNOWN: "A dish is no longer in the catalogue.",
  EARLIER_WEEKS: "The weeks before count too, and not all of them are on record.",
  NOT_IN_THE_BOX: "What it asks does not show in a list of dishes and foods.",
  NO_ENERGY: "There is no energy to take a share of.",
};

/** Three digits at most behind the point. */
const figure = (value: number): number => Math.round(value * 1000) / 1000;

const single: Partial<Readonly<Record<JudgedUnit, string>>> = {
  ITEMS: "item",
  KINDS: "kind",
  DAYS: "day",
  CUPS: "cup",
};

function sayAmount(value: number, unit: JudgedUnit | null): string {
  const shown = figure(value);
  if (unit === null) return `${shown}`;
  return `${shown} ${(shown === 1 ? single[unit] : undefined) ?? units[unit]}`;
}

function sayLimits({ atLeast, atMost, unit }: RuleFinding): string {
  const parts = [
    atLeast === null ? null : `at least ${sayAmount(atLeast, unit)}`,
    atMost === null ? null : `at most ${sayAmount(atMost, unit)}`,
  ].filter((part) => part !== null);
  return parts.join(" and ");
}

const states = { MET: "Kept", NOT_MET: "Not kept", NOT_APPLICABLE: "Asks nothing here", NOT_KNOWN: "Not known" };

/** @example "Not kept: 3 items, at most 2 items. Deep-fried food at most twice a week." */
export function sayFinding(finding: RuleFinding, index: CatalogueIndex): string {
  const { state, reason, found, unit, foods, place, rule } = finding;
  const limits = sayLimits(finding);
  const measured = found === null ? "" : sayAmount(found, unit);
  const facts = [measured, limits].filter((part) => part !== "").join(", ");
  const at = place === null ? "" : ` (${index.dish(place.dish)?.name ?? place.dish})`;
  const missing = foods.map((key) => index.food(key)?.name ?? key).join(", ");
  const why =
    reason === null ? "" : reason === "FIGURE_MISSING" ? ` ${because[reason]}: ${missing}.` : ` ${because[reason]}`;
  return `${states[state]}${at}${facts === "" ? "" : `: ${facts}`}.${why} ${rule.says}`;
}

/** What a typed-in box holds that the child avoids, and what nobody looked at. */
export function sayBoxCautions(
  avoided: readonly Exclude<AllergyVerdict, { kind: "CLEAR" }>[],
  child: string,
  index: CatalogueIndex,
): string[] {
  const name = (key: string) => index.food(key)?.name ?? key;
  return [
    ...avoided.map((verdict) => {
      switch (verdict.kind) {
        case "CONTAINS":
          return `${name(verdict.food)} contains ${plain(verdict.allergen)}, which ${child} avoids.`;
        case "MAY_CONTAIN":
          return `${name(verdict.food)} may contain ${plain(verdict.allergen)}, and ${child} avoids traces.`;
        case "CLEAR_IF_LABEL_READ":
          return `Read the labels for what ${child} avoids: ${verdict.foods.map(name).join(", ")}.`;
      }
    }),
    "Only rules and what the child avoids were looked at. Whether it keeps until the break and is cut safely for the child's age is not: cold food needs cold sources, hot food a flask, and an adult watches young children eat.",
  ];
}
