/**
 * npm run bench:rules: boxes judged a second by the largest standard there is, on one core, beside the same engine without tables,
 * where every matcher is held against every item anew. `-- FILE` takes another rule document; `--weeks N`, `--seed S`.
 */
import { readdirSync, readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import type { CreditTable } from "../../shared/credits.js";
import { ruleSetDocument, type RuleSetDocument } from "../../shared/rule-set.js";
import type { ChildBrief, LabelBrief, WeekBrief } from "../../src/domain/brief.js";
import { indexCatalogue, type DerivedDish } from "../../src/domain/catalogue/derive.js";
import { compileRuleSets, type RuleTables } from "../../src/domain/rules/compile.js";
import { amountPerGram, roundCredit } from "../../src/domain/rules/credits.js";
import { judgeWeek, type EatenBox } from "../../src/domain/rules/judge-week.js";
import { meantBy } from "../../src/domain/rules/match.js";
import { nutrientIn } from "../../src/domain/rules/nutrient-in.js";
import { eldest, middle, threeChildren, youngest } from "../support/demo-brief.js";
import { drawBoxes } from "../support/random-rules.js";
import { cpuMs, median, printHold, printMachine, printTable, quantile } from "./machine.js";

const { values: options, positionals } = parseArgs({
  allowPositionals: true,
  options: { weeks: { type: "string", default: "400" }, seed: { type: "string", default: "1" } },
});
const ROUNDS = 9;
const BOXES_A_SECOND = 10_000;

const folder = new URL("../../seeds/reference/rule-sets/", import.meta.url);
const parse = (text: string): RuleSetDocument => ruleSetDocument.parse(JSON.parse(text));
const document =
  positionals[0] === undefined
    ? readdirSync(folder)
        .filter((name) => name.endsWith(".json"))
        .map((name) => parse(readFileSync(new URL(name, folder), "utf8")))
        .reduce((largest, next) => (next.rules.length > largest.rules.length ? next : largest))
    : parse(readFileSync(positionals[0], "utf8"));

const brief = threeChildren();
const index = indexCatalogue(brief.catalogue);

type Weeks = readonly { readonly week: WeekBrief; readonly boxes: readonly EatenBox[] }[];

/** Three children of three ages, five lunches each, boxes drawn without regard to the rules. */
function drawWeeks(count: number, seed: number): Weeks {
  const births = ["2018-05-20", "2014-05-20", "2010-05-20"];
  const children = [youngest, middle, eldest].map((child, at): ChildBrief => ({
    ...child,
    dateOfBirth: births[at]!,
    days: child.days.map((day) => ({ ...day, ruleSets: [0] })),
  }));
  const week: WeekBrief = { ...brief, ruleSets: [document], children, history: [] };
  return Array.from({ length: count }, (_, at) => ({ week, boxes: drawBoxes(week, index, seed * 1000 + at).boxes }));
}

/** The tables' questions answered from the rows each time. */
function withoutTables(labels: readonly LabelBrief[], credits: CreditTable): RuleTables {
  const dishes: { derived: DerivedDish; slot: Parameters<RuleTables["numberOf"]>[1] }[] = [];
  return {
    credits,
    numberOf: (derived, slot) => dishes.push({ derived, slot }) - 1,
    tableOf(matcher) {
      const meantAt = (item: number) => meantBy(matcher, { ...dishes[item]!, labels });
      const perGram: ReturnType<RuleTables["tableOf"]>["perGram"] = (unit, item) => {
        const meant = meantAt(item);
        return meant === null
          ? { perGram: 0, unknown: [] }
          : amountPerGram(unit, dishes[item]!.derived, meant, credits);
      };
      return {
        at(item) {
          const meant = meantAt(item);
          return meant === null ? null : { meant, kinds: [...new Set(meant.ingredients.map(({ food }) => food.kind))] };
        },
        perGram,
        amount: (unit, item, grams) => roundCredit(unit, perGram(unit, item).perGram * grams, credits),
      };
    },
    nutrient: (nutrient, item) => nutrientIn(dishes[item]!.derived, nutrient),
  };
}

type Judge = (week: WeekBrief, boxes: readonly EatenBox[]) => number;

/** Boxes a second of processor time, round by round; every round has a judge of its own. */
function rates(weeks: Weeks, judgeOfRound: () => Judge): number[] {
  const boxes = weeks.reduce((sum, { boxes: own }) => sum + own.length, 0);
  return Array.from({ length: ROUNDS }, () => {
    const began = cpuMs();
    const judge = judgeOfRound();
    let judgements = 0;
    for (const { week, boxes: own } of weeks) judgements += judge(week, own);
    if (judgements === 0) throw new Error("nothing was judged");
    return (1000 * boxes) / (cpuMs() - began);
  });
}

function benchJudging(): void {
  const weeks = drawWeeks(Number(options.weeks), Number(options.seed));
  for (const dish of index.dishes) index.derived(dish.key);
  const compile = (week: WeekBrief) => compileRuleSets(week.ruleSets, index, week.labels, week.credits);
  const first = weeks[0]!;

  const cold = Array.from({ length: ROUNDS }, () => {
    const began = performance.now();
    judgeWeek(first.week, compile(first.week), first.boxes);
    return performance.now() - began;
  });
  const shared = compile(first.week);
  const rows: [string, number[]][] = [
    ["tables filled", rates(weeks, () => (week, boxes) => judgeWeek(week, shared, boxes).length)],
    [
      "compiled once a round",
      rates(weeks, () => {
        const compiled = compile(first.week);
        return (week, boxes) => judgeWeek(week, compiled, boxes).length;
      }),
    ],
    ["compiled for every week", rates(weeks, () => (week, boxes) => judgeWeek(week, compile(week), boxes).length)],
    [
      "without tables",
      rates(weeks.slice(0, Math.max(1, Math.round(weeks.length / 10))), () => (week, boxes) => {
        const tables = withoutTables(week.labels, week.credits);
        return judgeWeek(week, { documents: week.ruleSets, index, tables }, boxes).length;
      }),
    ],
  ];
  const judged = judgeWeek(first.week, shared, first.boxes).length;
  console.log(
    `${document.key}, ${document.rules.length} rules; ${weeks.length} weeks of ${first.boxes.length} boxes, ` +
      `${first.boxes.reduce((sum, { items }) => sum + items.length, 0)} items and ${judged} judgements; ` +
      `processor time, medians of ${ROUNDS} rounds (lowest, highest)`,
  );
  printTable(
    ["boxes a second", "median", "lowest", "highest"],
    rows.map(([name, found]) => [
      name,
      ...[median(found), quantile(found, 0), quantile(found, 1)].map((rate) => Math.round(rate).toLocaleString("en")),
    ]),
  );
  console.log(`compiled and the first week judged: ${median(cold).toFixed(1)} ms (median of ${ROUNDS})`);
  printHold("boxes a second, compiling included", median(rows[1]![1]), { atLeast: BOXES_A_SECOND });
}

printMachine();
benchJudging();
