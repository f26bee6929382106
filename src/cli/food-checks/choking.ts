/** Choking forms by age against published advice for carers of young children. */
import type { ChokingClass, ServedForm } from "../../../shared/codes.js";
import type { ChokingRule } from "../../domain/brief.js";
import { ageOn } from "../../domain/calendar/dates.js";
import { judgeChoking } from "../../domain/food-safety/choking.js";
import type { OutsideCheck } from "./check.js";

const england = "England, Help for early years providers: food safety (Department for Education, 2023), under 5 years";
const fns = "USDA Food and Nutrition Service, Reducing the Risk of Choking in Young Children at Mealtimes";
const caring = "Caring for Our Children, 2nd ed. 2002, food preparation guidelines";
const myPlate = "USDA MyPlate, preschoolers: choking hazards";
const cdc = "CDC, Infant and Toddler Nutrition: Choking Hazards (2020)";
const aap = "American Academy of Pediatrics list, as reported";

type Verdict = "as it is" | "to be cut" | "kept out";

/** What becomes of one food in one form. */
function verdict(rules: readonly ChokingRule[], ageYears: number, of: ChokingClass, form: ServedForm): Verdict {
  const food = { key: "food", chokingClasses: [of] };
  const judged = judgeChoking(ageYears, { ingredients: [{ food, form }] }, rules);
  if (!judged.allowed) return "kept out";
  return judged.cuts.length > 0 ? "to be cut" : "as it is";
}

export function chokingChecks(rules: readonly ChokingRule[]): OutsideCheck[] {
  const says = (
    id: string,
    about: string,
    source: string,
    [ageYears, of, form]: readonly [number, ChokingClass, ServedForm],
    expected: Verdict,
  ): OutsideCheck => ({ id, about, source, expected, tolerance: 0, found: verdict(rules, ageYears, of, form) });
  const ruleOf = (of: ChokingClass) => rules.find((rule) => rule.class === of);
  const cutOf = (of: ChokingClass, word: RegExp): boolean => word.test(ruleOf(of)?.cut ?? "");
  return [
    says("CH-1a", "whole grapes at 4 years", england, [4, "GRAPE_LIKE", "WHOLE"], "to be cut"),
    {
      id: "CH-1b",
      about: "the cut of grapes that the box card prints: lengthways into quarters",
      source: england,
      expected: true,
      tolerance: 0,
      found: cutOf("GRAPE_LIKE", /lengthways into quarters/),
    },
    says("CH-1c", "halved grapes at 4 years", england, [4, "GRAPE_LIKE", "HALVED"], "to be cut"),
    says("CH-1d", "quartered grapes at 4 years", england, [4, "GRAPE_LIKE", "QUARTERED_LENGTHWAYS"], "as it is"),
    ...(
      [
        ["a", "the day before the fifth birthday", "2026-09-07", "kept out"],
        ["b", "on the fifth birthday", "2026-09-08", "as it is"],
      ] as const
    ).map(([letter, when, date, expected]) =>
      says(
        `CH-2${letter}`,
        `whole almonds ${when}`,
        england,
        [ageOn("2021-09-08", date), "WHOLE_NUT", "WHOLE"],
        expected,
      ),
    ),
    says("CH-3", "popcorn at 3 years", `${caring}; ${aap}`, [3, "POPCORN", "WHOLE"], "kept out"),
    says("CH-4a", "apple in cubes at 3 years", `${fns}; ${england}`, [3, "HARD_RAW", "CUBED"], "to be cut"),
    {
      id: "CH-4b",
      about: "largest piece of raw apple below 5 years, mm (half an inch)",
      source: `${fns}; ${caring}`,
      expected: 12.7,
      tolerance: 0.5,
      found: ruleOf("HARD_RAW")?.largestPieceMm ?? 0,
    },
    says("CH-5a", "cheddar in cubes at 3 years", england, [3, "FIRM_CHEESE", "CUBED"], "to be cut"),
    says("CH-5b", "cheddar grated at 3 years", england, [3, "FIRM_CHEESE", "GRATED"], "as it is"),
    says("CH-5c", "cheddar in strips at 3 years", england, [3, "FIRM_CHEESE", "STRIPS"], "as it is"),
    says("CH-6a", "frankfurter in rounds at 4 years", `${myPlate}; ${caring}`, [4, "SAUSAGE", "ROUNDS"], "to be cut"),
    says("CH-6b", "frankfurter in strips at 4 years", `${myPlate}; ${caring}`, [4, "SAUSAGE", "STRIPS"], "as it is"),
    says("CH-melon", "melon balls at 4 years", england, [4, "MELON_BALL", "WHOLE"], "to be cut"),
    says("CH-cherry", "whole cherries at 4 years", england, [4, "STONE_FRUIT", "WHOLE"], "to be cut"),
    says("CH-seeds", "whole seeds at 4 years", england, [4, "WHOLE_SEED", "WHOLE"], "kept out"),
    says(
      "CH-butter-a",
      "a lump of nut butter at 4 years",
      `${myPlate}; ${caring}`,
      [4, "NUT_BUTTER", "CHUNKS"],
      "to be cut",
    ),
    says(
      "CH-butter-b",
      "nut butter spread thin at 4 years",
      `${myPlate}; ${caring}`,
      [4, "NUT_BUTTER", "SPREAD_THIN"],
      "as it is",
    ),
    says("CH-meat", "meat in chunks at 4 years", `${england}; ${myPlate}`, [4, "MEAT_PIECE", "CHUNKS"], "to be cut"),
    says("CH-bones", "fish with bones at 12 years", `${england}; ${cdc}`, [12, "BONY_FISH", "CHUNKS"], "to be cut"),
    says(
      "CH-jelly",
      "marshmallows and jelly cubes at 4 years",
      `${england}; ${caring}`,
      [4, "MARSHMALLOW_JELLY", "CUBED"],
      "kept out",
    ),
    says("CH-sweet", "hard sweets at 4 years", `${england}; ${caring}`, [4, "HARD_SWEET", "WHOLE"], "kept out"),
    says("CH-crisp-a", "crisps at 3 years", `${cdc}; ${myPlate}`, [3, "CRISP_PRETZEL", "WHOLE"], "kept out"),
    says("CH-crisp-b", "crisps at 4 years", `${cdc}; ${myPlate}`, [4, "CRISP_PRETZEL", "WHOLE"], "as it is"),
    says(
      "CH-stick-a",
      "raw carrot in matchsticks at 3 years",
      `${fns}; ${england}`,
      [3, "HARD_RAW", "MATCHSTICKS"],
      "as it is",
    ),
    says(
      "CH-stick-b",
      "carrot cooked soft at 3 years",
      `${fns}; ${england}`,
      [3, "HARD_RAW", "COOKED_SOFT"],
      "as it is",
    ),
  ];
}
