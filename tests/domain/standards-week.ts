/** Small weeks of one child under a shipped rule document, as the independent checker reads them. */
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import type { Dish, Food } from "../../shared/catalogue.js";
import type { CreditTable } from "../../shared/credits.js";
import { ruleSetDocument, type RuleSetDocument } from "../../shared/rule-set.js";
import { checkRules } from "../../src/domain/checker/check-rules.js";
import type { Fault } from "../../src/domain/checker/fault.js";
import { weekdayOn } from "../../src/domain/checker/clock.js";
import { readWeek } from "../../src/domain/checker/week-read.js";
import { tinyWeek } from "../support/tiny-week.js";

const folder = join(process.cwd(), "seeds", "reference", "rule-sets");
export const documentFiles: readonly string[] = readdirSync(folder).sort();
export const readText = (file: string): string => readFileSync(join(folder, file), "utf8");
export const readDocument = (file: string): RuleSetDocument => ruleSetDocument.parse(JSON.parse(readText(file)));
/** As a school adopts it: it covers food from home. */
export const adopted = (key: string): RuleSetDocument => ({ ...readDocument(`${key}.json`), coversFoodFromHome: true });

const { brief: tiny, draft: tinyDraft } = tinyWeek();
const anyFood = tiny.catalogue.foods.find(({ key }) => key === "apple")!;
const anyDish = tiny.catalogue.dishes.find(({ key }) => key === "apple-slices")!;
const anyItem = tinyDraft.boxes[0]!.items[0]!;
const anyBox = tinyDraft.boxes[0]!;
const anyChild = tiny.children[0]!;
const lunch = anyChild.days[0]!.breaks.find(({ key }) => key === "lunch")!;

export const food = (key: string, rest: Partial<Food>): Food => ({ ...anyFood, key, name: key, kind: key, ...rest });

/** What stands in a box: grams by food, and what is true of the dish. */
export interface Served {
  readonly grams: Readonly<Record<string, number>>;
  readonly dish?: Partial<Dish>;
  readonly slot?: "MAIN" | "VEGETABLE" | "FRUIT" | "EXTRA";
}

export interface ChildWeek {
  readonly document: RuleSetDocument;
  /** Of the child. */
  readonly bornOn: string;
  readonly foods: readonly Food[];
  /** The boxes by date; a day without one is not packed. */
  readonly boxes: Readonly<Record<string, readonly Served[]>>;
  /** Absent: the shipped table. */
  readonly credits?: CreditTable;
  readonly labels?: typeof tiny.labels;
}

/** Dates of the school days of a week from its Monday. */
export function schoolDays(monday: string, days = 5): string[] {
  const first = Date.parse(`${monday}T00:00:00Z`);
  return Array.from({ length: days }, (_, day) => new Date(first + day * 86_400_000).toISOString().slice(0, 10));
}

/** The same box on each of these days. */
export const everyDay = (dates: readonly string[], ...box: readonly Served[]): ChildWeek["boxes"] =>
  Object.fromEntries(dates.map((date) => [date, box]));

/** Every fault of the document's rules, in a week that is nothing else than these boxes. */
function rulesBroken({ document, bornOn, foods, boxes, credits = tiny.credits, labels = [] }: ChildWeek): Fault[] {
  const dishes: Dish[] = [];
  const packed = Object.entries(boxes).map(([date, served]) => ({
    ...anyBox,
    childId: "child",
    date,
    items: served.map(({ grams, dish, slot = "MAIN" }, position) => {
      const key = `dish-${dishes.length}`;
      const total = Object.values(grams).reduce((sum, amount) => sum + amount, 0);
      dishes.push({
        ...anyDish,
        ...dish,
        key,
        slots: [slot],
        portion: { kind: "CONTINUOUS", grams: total, stepGrams: 1 },
        ingredients: Object.entries(grams).map(([name, amount]) => ({ food: name, grams: amount, form: "MIXED_IN" })),
      });
      return { ...anyItem, slot, position, dish: key, grams: total };
    }),
  }));
  const days = Object.keys(boxes).map((date) => ({
    date,
    weekday: weekdayOn(date)!,
    leaveAt: "08:00",
    breaks: [lunch],
    facility: "NEITHER" as const,
    ruleSets: [0],
  }));
  const brief = {
    ...tiny,
    weekStart: Object.keys(boxes)[0]!,
    children: [{ ...anyChild, id: "child", dateOfBirth: bornOn, days }],
    catalogue: { ...tiny.catalogue, foods: [...foods], bases: [], dishes },
    ruleSets: [document],
    labels,
    history: [],
    credits,
  };
  return checkRules(readWeek(brief, { ...tinyDraft, boxes: packed }));
}

/** Faults of one rule, as "found/limit", rounded to thousandths; where nothing was measured, the kind of fault. */
export const faultsOf = (rule: string, week: ChildWeek): string[] =>
  rulesBroken(week)
    .filter((fault) => fault.rule === rule)
    .map(({ kind, found, limit }) => {
      const round = (value: number | undefined): number => Math.round((value ?? Number.NaN) * 1000) / 1000;
      return found === undefined ? kind : `${round(found)}/${round(limit)}`;
    });
